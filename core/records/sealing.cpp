// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/sealing.h"

#include <sodium.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <QString>

#include <array>
#include <new>
#include <stdexcept>
#include <utility>

#include "core/physics/range.h"

namespace leadline {

namespace {

static_assert(key_size == crypto_aead_xchacha20poly1305_ietf_KEYBYTES);
static_assert(key_size == crypto_generichash_BYTES);
static_assert(salt_size == crypto_pwhash_SALTBYTES);

constexpr int nonce_size = int(crypto_aead_xchacha20poly1305_ietf_NPUBBYTES);
constexpr std::size_t tag_size = crypto_aead_xchacha20poly1305_ietf_ABYTES;

constexpr qint64 most_passes = 20;
constexpr qint64 least_memory_bytes = 8 * 1024;
constexpr qint64 most_memory_bytes = qint64(1024) * 1024 * 1024;

void start_library() {
    // Chooses the fastest code for this machine and opens the system's random numbers; once.
    static const int started = sodium_init();
    if (started < 0) throw std::runtime_error("libsodium: no random numbers");
}

const unsigned char* raw(std::string_view text) {
    return reinterpret_cast<const unsigned char*>(text.data());
}
const unsigned char* raw(const QByteArray& bytes) {
    return reinterpret_cast<const unsigned char*>(bytes.constData());
}
unsigned char* raw(QByteArray& bytes) {
    return reinterpret_cast<unsigned char*>(bytes.data());
}

std::size_t size_of(const QByteArray& bytes) {
    return std::size_t(bytes.size());
}

}  // namespace

void SecretBytes::Release::operator()(unsigned char* memory) const {
    // Overwrites before it lets go.
    sodium_free(memory);
}

SecretBytes::SecretBytes(std::size_t size) {
    start_library();
    // Never of no bytes, so that data() is never null where something was asked for.
    memory_.reset(static_cast<unsigned char*>(sodium_malloc(size == 0 ? 1 : size)));
    if (!memory_) throw std::bad_alloc();
    sodium_memzero(memory_.get(), size);
    size_ = size;
}

SecretBytes::SecretBytes(SecretBytes&& other) noexcept
    : memory_(std::move(other.memory_)), size_(std::exchange(other.size_, 0)) {}

SecretBytes& SecretBytes::operator=(SecretBytes&& other) noexcept {
    memory_ = std::move(other.memory_);
    size_ = std::exchange(other.size_, 0);
    return *this;
}

SecretBytes SecretBytes::random(std::size_t size) {
    SecretBytes secret(size);
    randombytes_buf(secret.data(), size);
    return secret;
}

SecretBytes SecretBytes::copy_of(std::string_view bytes) {
    SecretBytes secret(bytes.size());
    std::copy(bytes.begin(), bytes.end(), secret.data());
    return secret;
}

std::string_view SecretBytes::view() const {
    if (empty()) return {};
    return {reinterpret_cast<const char*>(memory_.get()), size_};
}

void SecretBytes::wipe() {
    memory_.reset();
    size_ = 0;
}

void wipe(std::string& text) {
    sodium_memzero(text.data(), text.size());
    text.clear();
}

void wipe(QByteArray& bytes) {
    // data() would first copy bytes that are shared, and leave the others as they are.
    if (bytes.isDetached()) sodium_memzero(bytes.data(), size_of(bytes));
    bytes.clear();
}

void wipe(QString& text) {
    if (text.isDetached()) {
        sodium_memzero(text.data(), std::size_t(text.size()) * sizeof(QChar));
    }
    text.clear();
}

void shield_process_memory() {
    // Where the system refuses either, the other still stands; the vault is no less encrypted.
    static_cast<void>(prctl(PR_SET_DUMPABLE, 0, 0, 0, 0));
    const rlimit none{0, 0};
    static_cast<void>(setrlimit(RLIMIT_CORE, &none));
}

QByteArray random_bytes(int size) {
    start_library();
    QByteArray bytes(size, '\0');
    randombytes_buf(bytes.data(), size_of(bytes));
    return bytes;
}

Fields& Fields::add(std::string_view text) {
    add(qint64(text.size()));
    bytes_.append(text.data(), qsizetype(text.size()));
    return *this;
}

Fields& Fields::add(const QByteArray& bytes) {
    return add(std::string_view(bytes.constData(), size_of(bytes)));
}

Fields& Fields::add(qint64 number) {
    constexpr unsigned bits_of_a_byte = 8;
    auto rest = quint64(number);
    for (std::size_t i = 0; i < sizeof(rest); ++i, rest >>= bits_of_a_byte) {
        bytes_.append(char(rest & 0xffU));
    }
    return *this;
}

Sealed seal(const SecretBytes& key, std::string_view text, const QByteArray& binding) {
    Sealed sealed{random_bytes(nonce_size), QByteArray(qsizetype(text.size() + tag_size), '\0')};
    crypto_aead_xchacha20poly1305_ietf_encrypt(raw(sealed.bytes), nullptr, raw(text), text.size(),
                                               raw(binding), size_of(binding), nullptr,
                                               raw(sealed.nonce), key.data());
    return sealed;
}

Result<SecretBytes> unseal(const SecretBytes& key, const Sealed& sealed,
                           const QByteArray& binding) {
    const Error unreadable{ErrorCode::sealed_unreadable, {}, {}, {}};
    if (key.size() != key_size || sealed.nonce.size() != nonce_size ||
        size_of(sealed.bytes) < tag_size) {
        return unreadable;
    }
    SecretBytes text(size_of(sealed.bytes) - tag_size);
    const int opened = crypto_aead_xchacha20poly1305_ietf_decrypt(
        text.data(), nullptr, nullptr, raw(sealed.bytes), size_of(sealed.bytes), raw(binding),
        size_of(binding), raw(sealed.nonce), key.data());
    if (opened != 0) return unreadable;
    return text;
}

QByteArray hash_of(const QByteArray& bytes) {
    start_library();
    QByteArray hash(qsizetype(key_size), '\0');
    crypto_generichash(raw(hash), key_size, raw(bytes), size_of(bytes), nullptr, 0);
    return hash;
}

QByteArray keyed_hash_of(const SecretBytes& key, const QByteArray& bytes) {
    QByteArray hash(qsizetype(key_size), '\0');
    crypto_generichash(raw(hash), key_size, raw(bytes), size_of(bytes), key.data(), key.size());
    return hash;
}

SecretBytes derived_key(const SecretBytes& key, const QByteArray& purpose) {
    SecretBytes derived(key_size);
    crypto_generichash(derived.data(), key_size, raw(purpose), size_of(purpose), key.data(),
                       key.size());
    return derived;
}

bool same_bytes(const QByteArray& one, const QByteArray& other) {
    return one.size() == other.size() &&
           sodium_memcmp(one.constData(), other.constData(), size_of(one)) == 0;
}

StretchingCost moderate_cost() {
    return {crypto_pwhash_OPSLIMIT_MODERATE, crypto_pwhash_MEMLIMIT_MODERATE};
}

Result<SecretBytes> stretched(std::string_view passphrase, const QByteArray& salt,
                              StretchingCost cost) {
    if (const auto error =
            outside_range("passes", double(cost.passes), 1, double(most_passes), "")) {
        return *error;
    }
    if (const auto error =
            outside_range("memory", double(cost.memory_bytes), double(least_memory_bytes),
                          double(most_memory_bytes), "bytes")) {
        return *error;
    }
    if (salt.size() != salt_size) {
        return Error{ErrorCode::out_of_range, "salt", std::to_string(salt.size()),
                     std::to_string(salt_size)};
    }
    SecretBytes key(key_size);
    const int made = crypto_pwhash(key.data(), key_size, passphrase.data(), passphrase.size(),
                                   raw(salt), static_cast<unsigned long long>(cost.passes),
                                   std::size_t(cost.memory_bytes), crypto_pwhash_ALG_ARGON2ID13);
    if (made != 0) {
        constexpr qint64 mebibyte = 1024 * 1024;
        return Error{ErrorCode::key_stretching_failed,
                     {},
                     {},
                     std::to_string(cost.memory_bytes / mebibyte) + " MiB"};
    }
    return key;
}

}  // namespace leadline
