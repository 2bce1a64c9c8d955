// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/vault.h"

#include <gmock/gmock.h>

#include "tests/records/vault_fixture.h"

namespace leadline {
namespace {

using test::cheap;
using test::code_of;
using test::must;
using test::passphrase;
using test::secret_text;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;

class VaultKeys : public test::VaultTest {
protected:
    Result<Done> try_with(const std::string& text) {
        return vault_->open_with_passphrase(secret_text(text), "Mara");
    }
    std::string written_key() {
        std::string text;
        for (const std::string& group : recovery_groups(recovery_)) text += group + " ";
        return text;
    }
};

TEST_F(VaultKeys, ThereIsNoneAtFirst) {
    EXPECT_FALSE(must(vault_->is_set_up()));
    EXPECT_FALSE(vault_->is_open());
    EXPECT_EQ(vault_->record_key(), nullptr);
    EXPECT_TRUE(must(vault_->identity()).isEmpty());
    EXPECT_EQ(code_of(try_with(passphrase)), ErrorCode::vault_not_set_up);
    EXPECT_EQ(code_of(vault_->data_key_to_wrap()), ErrorCode::vault_locked);
}

TEST_F(VaultKeys, SettingUpOpensIt) {
    set_up();
    EXPECT_TRUE(must(vault_->is_set_up()));
    EXPECT_TRUE(vault_->is_open());
    EXPECT_EQ(vault_->who(), "Mara");
    EXPECT_THAT(must(vault_->ways()), ElementsAre(VaultWay::passphrase, VaultWay::recovery));
    EXPECT_EQ(must(vault_->identity()).size(), 16);
}

TEST_F(VaultKeys, TheSecondVaultIsRefusedAndTheFirstStays) {
    set_up();
    Result<NewVault> other =
        make_vault(VaultWay::passphrase, secret_text("another passphrase"), cheap);
    EXPECT_EQ(code_of(vault_->set_up(must(std::move(other)), "Jo")), ErrorCode::vault_exists);
    vault_->lock();
    unlock();
}

TEST_F(VaultKeys, LockedItKeepsNothing) {
    set_up();
    vault_->lock();
    EXPECT_FALSE(vault_->is_open());
    EXPECT_EQ(vault_->record_key(), nullptr);
    EXPECT_EQ(vault_->audit_key(), nullptr);
    EXPECT_EQ(vault_->who(), "");
    vault_->lock();  // again is nothing
}

TEST_F(VaultKeys, OpensAfterAStartOnlyWithTheRightPassphrase) {
    set_up();
    start_anew();
    EXPECT_FALSE(vault_->is_open());
    const Result<Done> wrong = try_with("seven grey seals awake");
    EXPECT_EQ(code_of(wrong), ErrorCode::vault_wrong_key);
    EXPECT_EQ(wrong.error().place, "passphrase");
    EXPECT_THAT(test::in_words(wrong.error()), Not(HasSubstr("seals")));
    EXPECT_FALSE(vault_->is_open());
    now_ += 1;
    unlock();
}

TEST_F(VaultKeys, WrongTriesWaitLongerAndLonger) {
    set_up();
    vault_->lock();
    std::vector<int> waits;
    for (int i = 0; i < 11; ++i) {
        EXPECT_EQ(code_of(try_with("wrong passphrase")), ErrorCode::vault_wrong_key) << i;
        waits.push_back(must(vault_->seconds_to_wait()));
        now_ += waits.back() - 1;
        const Result<Done> early = try_with(passphrase);
        EXPECT_EQ(code_of(early), ErrorCode::vault_must_wait) << i;
        EXPECT_EQ(early.error().given, "1");
        now_ += 1;
    }
    EXPECT_THAT(waits, ElementsAre(1, 2, 4, 8, 16, 32, 64, 128, 256, 300, 300));
    unlock();
    EXPECT_EQ(must(vault_->seconds_to_wait()), 0);
    vault_->lock();
    EXPECT_EQ(code_of(try_with("wrong passphrase")), ErrorCode::vault_wrong_key);
    EXPECT_EQ(must(vault_->seconds_to_wait()), 1);
}

TEST_F(VaultKeys, TheWaitOutlastsTheProgramAndAClockPutBack) {
    set_up();
    vault_->lock();
    for (int i = 0; i < 4; ++i) {
        EXPECT_EQ(code_of(try_with("wrong passphrase")), ErrorCode::vault_wrong_key);
        now_ += 8;
    }
    now_ -= 5;
    start_anew();
    EXPECT_EQ(must(vault_->seconds_to_wait()), 5);
    now_ -= 86'400;
    EXPECT_EQ(must(vault_->seconds_to_wait()), 8);
    EXPECT_EQ(code_of(try_with(passphrase)), ErrorCode::vault_must_wait);
}

TEST_F(VaultKeys, ATryThatNeverEndsCountsAsWrong) {
    set_up();
    vault_->lock();
    must(vault_->begin_try(VaultWay::passphrase));
    start_anew();
    EXPECT_EQ(must(vault_->seconds_to_wait()), 1);
}

TEST_F(VaultKeys, TheRecoveryKeyOpensItWithoutWaiting) {
    set_up();
    vault_->lock();
    EXPECT_EQ(code_of(try_with("wrong passphrase")), ErrorCode::vault_wrong_key);
    EXPECT_EQ(code_of(vault_->open_with_recovery_key("abc", "Mara")),
              ErrorCode::recovery_key_mistyped);
    must(vault_->open_with_recovery_key(written_key(), "Mara"));
    EXPECT_TRUE(vault_->is_open());
}

TEST_F(VaultKeys, ANewRecoveryKeyMakesTheOldOneWorthless) {
    set_up();
    const std::string old = written_key();
    recovery_ = must(vault_->new_recovery_key());
    vault_->lock();
    const Result<Done> done = vault_->open_with_recovery_key(old, "Mara");
    EXPECT_EQ(code_of(done), ErrorCode::vault_wrong_key);
    EXPECT_EQ(done.error().place, "recovery");
    must(vault_->open_with_recovery_key(written_key(), "Mara"));
}

TEST_F(VaultKeys, AKeyInTheKeyringOpensIt) {
    const SecretBytes key = SecretBytes::random(key_size);
    must(vault_->set_up(must(make_vault(VaultWay::keyring, key, cheap)), "Mara"));
    EXPECT_THAT(must(vault_->ways()), ElementsAre(VaultWay::keyring, VaultWay::recovery));
    vault_->lock();
    for (const std::size_t size : {0U, 16U, 32U, 65U}) {
        EXPECT_EQ(code_of(vault_->open_with_keyring_key(SecretBytes::random(size), "Mara")),
                  ErrorCode::vault_wrong_key);
    }
    must(vault_->open_with_keyring_key(key, "Mara"));
    EXPECT_EQ(code_of(vault_->begin_try(VaultWay::passphrase)), ErrorCode::not_found);
}

TEST_F(VaultKeys, APassphraseIsChangedWithoutTouchingTheDataKey) {
    set_up();
    const SecretBytes before = must(vault_->data_key_to_wrap());
    const std::string fresh = "a boat called nothing much";
    EXPECT_EQ(code_of(vault_->change_passphrase(secret_text("not the old one"), secret_text(fresh),
                                                cheap, "Mara")),
              ErrorCode::vault_wrong_key);
    now_ += 1;
    EXPECT_EQ(code_of(vault_->change_passphrase(secret_text(passphrase), secret_text("short"),
                                                cheap, "Mara")),
              ErrorCode::passphrase_length);
    must(vault_->change_passphrase(secret_text(passphrase), secret_text(fresh), cheap, "Mara"));
    vault_->lock();
    EXPECT_EQ(code_of(try_with(passphrase)), ErrorCode::vault_wrong_key);
    now_ += 1;
    must(try_with(fresh));
    EXPECT_EQ(must(vault_->data_key_to_wrap()).view(), before.view());
    EXPECT_FALSE(verify().fault.has_value());
    vault_->lock();
    EXPECT_EQ(code_of(vault_->change_passphrase(secret_text(fresh), secret_text(passphrase), cheap,
                                                "Mara")),
              ErrorCode::vault_locked);
}

TEST_F(VaultKeys, WaysAreAddedAndTakenAwayButNeverTheLast) {
    set_up();
    const SecretBytes key = SecretBytes::random(key_size);
    must(vault_->add_way(VaultWay::keyring, key, {}));
    must(vault_->remove_way(VaultWay::passphrase));
    must(vault_->remove_way(VaultWay::recovery));
    EXPECT_EQ(code_of(vault_->remove_way(VaultWay::recovery)), ErrorCode::not_found);
    EXPECT_EQ(code_of(vault_->remove_way(VaultWay::keyring)), ErrorCode::vault_last_way);
    vault_->lock();
    EXPECT_EQ(code_of(vault_->remove_way(VaultWay::keyring)), ErrorCode::vault_locked);
    EXPECT_EQ(code_of(vault_->add_way(VaultWay::recovery, key, {})), ErrorCode::vault_locked);
    must(vault_->open_with_keyring_key(key, "Mara"));
    EXPECT_FALSE(verify().fault.has_value());
}

TEST_F(VaultKeys, AWrappedKeyMovedToAnotherWayOrCostOpensNothing) {
    set_up();
    vault_->lock();
    run_sql(u"UPDATE vault_keys SET passes = 2 WHERE way = 'passphrase'"_qs);
    EXPECT_EQ(code_of(try_with(passphrase)), ErrorCode::vault_wrong_key);
    run_sql(
        u"UPDATE vault_keys SET passes = 1, memory_bytes = 1099511627776 "
        "WHERE way = 'passphrase'"_qs);
    now_ += 1;
    EXPECT_EQ(code_of(try_with(passphrase)), ErrorCode::out_of_range);
    EXPECT_FALSE(vault_->is_open());
}

TEST_F(VaultKeys, KeysOfOnePassphraseDifferBetweenVaults) {
    const NewVault one = must(make_vault(VaultWay::passphrase, secret_text(passphrase), cheap));
    const NewVault two = must(make_vault(VaultWay::passphrase, secret_text(passphrase), cheap));
    EXPECT_NE(one.data_key.view(), two.data_key.view());
    EXPECT_NE(one.wrapped.front().salt, two.wrapped.front().salt);
    WrappedKey foreign = one.wrapped.front();
    foreign.vault_id = two.vault_id;
    EXPECT_EQ(code_of(unwrap(foreign, secret_text(passphrase))), ErrorCode::vault_wrong_key);
}

TEST(Passphrase, IsMeasuredInCharacters) {
    EXPECT_EQ(code_of(check_passphrase("eleven char")), ErrorCode::passphrase_length);
    EXPECT_TRUE(check_passphrase("twelve chars").has_value());
    EXPECT_EQ(code_of(check_passphrase("ééééé")), ErrorCode::passphrase_length);
    EXPECT_TRUE(check_passphrase("éééééééééééé").has_value());
    EXPECT_TRUE(check_passphrase(std::string(256, 'x')).has_value());
    const Result<Done> longer = check_passphrase(std::string(257, 'x'));
    EXPECT_EQ(code_of(longer), ErrorCode::passphrase_length);
    EXPECT_EQ(longer.error(), (Error{ErrorCode::passphrase_length, {}, "257", "12 to 256"}));
}

}  // namespace
}  // namespace leadline
