// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QtGlobal>
#include <cstddef>
#include <iosfwd>
#include <memory>
#include <string>
#include <string_view>

#include "core/physics/result.h"

class QDebug;

// What encrypts and what keeps secrets in memory; all of it is libsodium's.

namespace leadline {

/// Bytes that nobody else may see: a key, a passphrase, an opened record. Held in memory of its own
/// that is kept out of swap and core files where the system allows it, and overwritten when let go.
/// Cannot be copied by accident, nor printed.
class SecretBytes {
public:
    SecretBytes() = default;
    /// So many zero bytes. @throws std::bad_alloc when there is no memory for them
    explicit SecretBytes(std::size_t size);
    SecretBytes(SecretBytes&& other) noexcept;
    SecretBytes& operator=(SecretBytes&& other) noexcept;
    SecretBytes(const SecretBytes&) = delete;
    SecretBytes& operator=(const SecretBytes&) = delete;
    ~SecretBytes() = default;

    /// From the system's random number generator.
    static SecretBytes random(std::size_t size);
    static SecretBytes copy_of(std::string_view bytes);
    [[nodiscard]] SecretBytes clone() const { return copy_of(view()); }

    [[nodiscard]] unsigned char* data() { return memory_.get(); }
    [[nodiscard]] const unsigned char* data() const { return memory_.get(); }
    [[nodiscard]] std::size_t size() const { return size_; }
    [[nodiscard]] bool empty() const { return size_ == 0; }
    /// The bytes, for as long as this lives.
    [[nodiscard]] std::string_view view() const;
    /// Overwrites and lets go.
    void wipe();

    friend std::ostream& operator<<(std::ostream&, const SecretBytes&) = delete;
    friend QDebug operator<<(QDebug, const SecretBytes&) = delete;

private:
    struct Release {
        void operator()(unsigned char* memory) const;
    };
    std::unique_ptr<unsigned char, Release> memory_;
    std::size_t size_ = 0;
};

/// Overwrites a text that held a secret, in a way no optimiser leaves out.
void wipe(std::string& text);
void wipe(QByteArray& bytes);
void wipe(QString& text);

/// Keeps this process' memory out of core files and away from other processes of the same user.
/// To be called before the first secret is read; stays for the life of the process.
void shield_process_memory();

/// So many random bytes that are no secret: a nonce, a salt, an identity.
QByteArray random_bytes(int size);

/// A list of fields as bytes from which no other list makes the same: each stands behind its
/// length.
class Fields {
public:
    /// @param purpose  what the bytes are for, so that those of two purposes are never the same
    explicit Fields(std::string_view purpose) { add(purpose); }
    Fields& add(std::string_view text);
    Fields& add(const QByteArray& bytes);
    Fields& add(qint64 number);
    [[nodiscard]] const QByteArray& bytes() const { return bytes_; }

private:
    QByteArray bytes_;
};

inline constexpr std::size_t key_size = 32;

/// What sealing makes of a text.
struct Sealed {
    QByteArray nonce;  ///< 24 random bytes, new each time
    QByteArray bytes;  ///< as long as the text, and 16 bytes that show any change
};

/// Encrypts with XChaCha20-Poly1305 (Arciszewski, XChaCha: eXtended-nonce ChaCha and
/// AEAD_XChaCha20_Poly1305, draft-irtf-cfrg-xchacha-03, 2020, section 2; from memory).
/// @param key      of `key_size` bytes
/// @param binding  what the sealed text belongs to; unsealing needs the same
Sealed seal(const SecretBytes& key, std::string_view text, const QByteArray& binding);

/// The text. @returns sealed_unreadable, without place, when the key or the binding is another or a
/// bit was changed; which of these it is cannot be told
Result<SecretBytes> unseal(const SecretBytes& key, const Sealed& sealed, const QByteArray& binding);

/// BLAKE2b (Saarinen and Aumasson, The BLAKE2 Cryptographic Hash and MAC, RFC 7693, 2015; from
/// memory) of 32 bytes.
QByteArray hash_of(const QByteArray& bytes);
/// The same with a key of 16 to 64 bytes: only who has it can make or check the value.
QByteArray keyed_hash_of(const SecretBytes& key, const QByteArray& bytes);
/// As keyed_hash_of(), for a value that is a key itself.
SecretBytes derived_key(const SecretBytes& key, const QByteArray& purpose);
/// Compares in a time that does not tell where two values differ.
bool same_bytes(const QByteArray& one, const QByteArray& other);

/// What one guess of a passphrase costs whoever tries it.
struct StretchingCost {
    qint64 passes = 0;
    qint64 memory_bytes = 0;
    friend bool operator==(StretchingCost, StretchingCost) = default;
};

/// 3 passes over 256 MiB: the cost that libsodium calls moderate, about a second of a desk
/// computer.
StretchingCost moderate_cost();

inline constexpr int salt_size = 16;

/// A key made from a passphrase by Argon2id (Biryukov, Dinu, Khovratovich and Josefsson, Argon2
/// Memory-Hard Function, RFC 9106, 2021; from memory). Takes as long as the cost says: not for the
/// thread of the window.
/// @param salt  of `salt_size` bytes
/// @returns key_stretching_failed when the memory is not to be had; out_of_range for a cost outside
///          1 to 20 passes and 8 KiB to 1 GiB, which no record of ours has
Result<SecretBytes> stretched(std::string_view passphrase, const QByteArray& salt,
                              StretchingCost cost);

}  // namespace leadline
