// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/sealing.h"

#include <gtest/gtest.h>
#include <sodium.h>
#include <sys/prctl.h>
#include <sys/resource.h>

#include <array>
#include <cctype>
#include <set>
#include <type_traits>

#include "core/records/recovery_key.h"
#include "tests/records/folder.h"

namespace leadline {
namespace {

using test::must;

static_assert(!std::is_copy_constructible_v<SecretBytes>);
static_assert(!std::is_copy_assignable_v<SecretBytes>);

template <typename Value>
concept Printable = requires(std::ostream& out, const Value& value) {
    out << value;
};
static_assert(!Printable<SecretBytes>);

QByteArray hex(const char* text) {
    return QByteArray::fromHex(text);
}

SecretBytes secret(const QByteArray& bytes) {
    return SecretBytes::copy_of({bytes.constData(), std::size_t(bytes.size())});
}

std::string shown(const SecretBytes& bytes) {
    return std::string(bytes.view());
}

const QByteArray counting_key =
    hex("808182838485868788898a8b8c8d8e8f909192939495969798999a9b9c9d9e9f");

TEST(Sealing, OpensTheExampleOfTheDraft) {
    // Arciszewski, draft-irtf-cfrg-xchacha-03, 2020, appendix A.3.1; from memory. A wrong digit in
    // any of it would fail the tag.
    const Sealed sealed{hex("404142434445464748494a4b4c4d4e4f5051525354555657"),
                        hex("bd6d179d3e83d43b9576579493c0e939572a1700252bfaccbed2902c21396cbb"
                            "731c7f1b0b4aa6440bf3a82f4eda7e39ae64c6708c54c216cb96b72e1213b452"
                            "2f8c9ba40db5d945b11b69b982c1bb9e3f3fac2bc369488f76b2383565d3fff9"
                            "21f9664c97637da9768812f615c68b13b52e"
                            "c0875924c1c7987947deafd8780acf49")};
    EXPECT_EQ(shown(must(unseal(secret(counting_key), sealed, hex("50515253c0c1c2c3c4c5c6c7")))),
              "Ladies and Gentlemen of the class of '99: If I could offer you only one tip for the "
              "future, sunscreen would be it.");
}

TEST(Sealing, GivesBackWhatWasSealed) {
    const SecretBytes key = SecretBytes::random(key_size);
    const QByteArray binding = Fields("test").add(qint64(7)).bytes();
    for (const std::string& text : {std::string(), std::string("a"), std::string(100'000, 'x')}) {
        const Sealed sealed = seal(key, text, binding);
        EXPECT_EQ(sealed.bytes.size(), qsizetype(text.size() + 16));
        EXPECT_EQ(shown(must(unseal(key, sealed, binding))), text);
    }
}

TEST(Sealing, EveryChangedBitIsFound) {
    const SecretBytes key = SecretBytes::random(key_size);
    const QByteArray binding("binding");
    const Sealed sealed = seal(key, "asthma", binding);
    const auto flip = [](QByteArray bytes, int bit) {
        bytes[bit / 8] = char(bytes[bit / 8] ^ char(1 << (bit % 8)));
        return bytes;
    };
    for (int bit = 0; bit < sealed.bytes.size() * 8; ++bit) {
        const auto text = unseal(key, {sealed.nonce, flip(sealed.bytes, bit)}, binding);
        ASSERT_FALSE(text.has_value()) << bit;
        EXPECT_EQ(text.error().code, ErrorCode::sealed_unreadable);
    }
    for (int bit = 0; bit < sealed.nonce.size() * 8; ++bit) {
        EXPECT_FALSE(unseal(key, {flip(sealed.nonce, bit), sealed.bytes}, binding).has_value());
    }
    for (int bit = 0; bit < binding.size() * 8; ++bit) {
        EXPECT_FALSE(unseal(key, sealed, flip(binding, bit)).has_value());
    }
    EXPECT_FALSE(unseal(SecretBytes::random(key_size), sealed, binding).has_value());
}

TEST(Sealing, RefusesWhatCannotBeSealedText) {
    const SecretBytes key = SecretBytes::random(key_size);
    EXPECT_FALSE(unseal(key, {}, {}).has_value());
    EXPECT_FALSE(unseal(key, {QByteArray(24, 'n'), QByteArray(15, 'c')}, {}).has_value());
    EXPECT_FALSE(unseal(key, {QByteArray(12, 'n'), QByteArray(40, 'c')}, {}).has_value());
    EXPECT_FALSE(unseal(SecretBytes(), {QByteArray(24, 'n'), QByteArray(40, 'c')}, {}).has_value());
}

TEST(Sealing, TakesANewNonceEachTime) {
    const SecretBytes key = SecretBytes::random(key_size);
    std::set<QByteArray> nonces;
    for (int i = 0; i < 1000; ++i) nonces.insert(seal(key, "same", {}).nonce);
    EXPECT_EQ(nonces.size(), 1000U);
}

TEST(Fields, OfDifferentListsDiffer) {
    const auto bytes = [](const Fields& fields) { return fields.bytes(); };
    EXPECT_NE(bytes(Fields("p").add(std::string_view("ab")).add(std::string_view("c"))),
              bytes(Fields("p").add(std::string_view("a")).add(std::string_view("bc"))));
    EXPECT_NE(bytes(Fields("p").add(std::string_view("a")).add(std::string_view(""))),
              bytes(Fields("p").add(std::string_view("a"))));
    EXPECT_NE(bytes(Fields("p")), bytes(Fields("q")));
    EXPECT_NE(bytes(Fields("p").add(qint64(1))), bytes(Fields("p").add(qint64(256))));
    EXPECT_NE(bytes(Fields("p").add(qint64(-1))), bytes(Fields("p").add(qint64(255))));
}

TEST(Hash, IsBlake2b) {
    // "abc": Saarinen and Aumasson, RFC 7693, 2015, appendix A, has the value of 64 bytes (from
    // memory); those of 32 bytes and with a key were computed with CPython's hashlib.
    std::array<unsigned char, 64> full{};
    crypto_generichash(full.data(), full.size(), reinterpret_cast<const unsigned char*>("abc"), 3,
                       nullptr, 0);
    EXPECT_EQ(QByteArray(reinterpret_cast<const char*>(full.data()), 64).toHex(),
              "ba80a53f981c4d0d6a2797b69f12f6e94c212f14685ac4b74b12bb6fdbffa2d1"
              "7d87c5392aab792dc252d5de4533cc9518d38aa8dbf1925ab92386edd4009923");
    EXPECT_EQ(hash_of("abc").toHex(),
              "bddd813c634239723171ef3fee98579b94964e3bb1cb3e427262c8c068d52319");
    EXPECT_EQ(keyed_hash_of(secret(hex("000102030405060708090a0b0c0d0e0f"
                                       "101112131415161718191a1b1c1d1e1f")),
                            "abc")
                  .toHex(),
              "d63a32d3e44738d7907f964316c241adaba0abfeabc32349677578a15a203f7f");
}

TEST(Stretching, IsArgon2id) {
    // The example of Biryukov and others, RFC 9106, 2021, section 5.3, has a secret and associated
    // data, which libsodium does not take. This value was computed with Debian's argon2 1.0
    // (20190702), the reference implementation: 2 passes, 8 MiB, 1 lane.
    const SecretBytes key =
        must(stretched("correct horse battery", "sixteen-byte-slt", {2, qint64(8192) * 1024}));
    EXPECT_EQ(QByteArray::fromStdString(shown(key)).toHex(),
              "953ba435911e4658459a13e9a02ee6061b5a7043780210c0e3cba17136056327");
    // From the same authors' tests (password, somesalt; 2 passes, 64 MiB), from memory.
    EXPECT_EQ(crypto_pwhash_str_verify("$argon2id$v=19$m=65536,t=2,p=1$c29tZXNhbHQ$"
                                       "CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc",
                                       "password", 8),
              0);
}

TEST(Stretching, RefusesCostsThatNoRecordOfOursHas) {
    const QByteArray salt(salt_size, 's');
    for (const StretchingCost cost :
         {StretchingCost{0, 8192}, StretchingCost{21, 8192}, StretchingCost{1, 8191},
          StretchingCost{1, qint64(2) << 30}, StretchingCost{-1, -1}}) {
        const Result<SecretBytes> key = stretched("x", salt, cost);
        ASSERT_FALSE(key.has_value());
        EXPECT_EQ(key.error().code, ErrorCode::out_of_range);
    }
    EXPECT_FALSE(stretched("x", QByteArray(15, 's'), {1, 8192}).has_value());
}

TEST(Stretching, TheUsualCostIsModerate) {
    EXPECT_EQ(moderate_cost(), (StretchingCost{3, qint64(256) * 1024 * 1024}));
}

TEST(SecretBytes, MovesAndIsWiped) {
    SecretBytes one = SecretBytes::copy_of("abc");
    SecretBytes two = std::move(one);
    EXPECT_EQ(shown(two), "abc");
    EXPECT_TRUE(one.empty());  // NOLINT: what is left of it is the point
    two.wipe();
    EXPECT_TRUE(two.empty());
    EXPECT_EQ(two.view(), "");
    std::string text = "a passphrase longer than the small buffer";
    const char* place = text.data();
    const std::size_t size = text.size();
    wipe(text);
    EXPECT_EQ(std::string(place, size), std::string(size, '\0'));
}

TEST(ProcessMemory, IsKeptOutOfCoreFiles) {
    shield_process_memory();
    EXPECT_EQ(prctl(PR_GET_DUMPABLE, 0, 0, 0, 0), 0);
    rlimit limit{1, 1};
    ASSERT_EQ(getrlimit(RLIMIT_CORE, &limit), 0);
    EXPECT_EQ(limit.rlim_cur, 0U);
    EXPECT_EQ(limit.rlim_max, 0U);
}

TEST(RecoveryKey, ComesBackFromItsGroups) {
    for (int i = 0; i < 200; ++i) {
        const SecretBytes key = new_recovery_key();
        EXPECT_EQ(key.size(), recovery_key_size);
        const std::vector<std::string> groups = recovery_groups(key);
        ASSERT_EQ(groups.size(), std::size_t(recovery_key_groups));
        std::string dashed;
        std::string spaced;
        for (const std::string& group : groups) {
            EXPECT_EQ(group.size(), std::size_t(recovery_group_signs));
            EXPECT_EQ(group.find_first_of("01IOio"), std::string::npos);
            dashed += dashed.empty() ? group : '-' + group;
            for (const char sign : group) spaced += static_cast<char>(std::tolower(sign));
            spaced += " \n";
        }
        EXPECT_EQ(shown(must(read_recovery_key(dashed))), shown(key));
        EXPECT_EQ(shown(must(read_recovery_key(spaced))), shown(key));
    }
}

TEST(RecoveryKey, OneWrongSignOrTwoSwappedAreFound) {
    const std::string alphabet = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";
    const SecretBytes key = SecretBytes::copy_of("twenty bytes of a key");
    SecretBytes right(recovery_key_size);
    std::copy_n(key.data(), recovery_key_size, right.data());
    std::string text;
    for (const std::string& group : recovery_groups(right)) text += group;
    int passed = 0;
    for (std::size_t at = 0; at < text.size(); ++at) {
        for (const char sign : alphabet) {
            std::string wrong = text;
            wrong[at] = sign;
            if (wrong != text && read_recovery_key(wrong)) ++passed;
        }
        std::string swapped = text;
        if (at > 0) std::swap(swapped[at], swapped[at - 1]);
        if (swapped != text && read_recovery_key(swapped)) ++passed;
    }
    EXPECT_EQ(passed, 0);
    for (const std::string& broken :
         {std::string(), text.substr(1), text + "2", "0" + text.substr(1), std::string(36, '2'),
          std::string("\xff\xfe")}) {
        const Result<SecretBytes> read = read_recovery_key(broken);
        ASSERT_FALSE(read.has_value());
        EXPECT_EQ(read.error(), (Error{ErrorCode::recovery_key_mistyped, {}, {}, {}}));
    }
}

}  // namespace
}  // namespace leadline
