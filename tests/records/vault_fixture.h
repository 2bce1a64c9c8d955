// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <memory>
#include <string>

#include "core/records/health_store.h"
#include "core/records/session_store.h"
#include "core/records/vault.h"
#include "tests/records/folder.h"
#include "tests/records/sample_values.h"

namespace leadline::test {

/// So little that a test does not wait for it.
inline constexpr StretchingCost cheap{1, 8 * 1024};

inline SecretBytes secret_text(std::string_view text) {
    return SecretBytes::copy_of(text);
}

inline const std::string passphrase = "seven grey seals asleep";

/// The code of a failure; a failing expectation where there is none.
template <typename T>
ErrorCode code_of(const Result<T>& result) {
    EXPECT_FALSE(result.has_value());
    return result ? ErrorCode::not_found : result.error().code;
}

/// Records in a file, with a vault and a clock that only the test moves.
class VaultTest : public testing::Test {
protected:
    void set_up() {
        NewVault made = must(make_vault(VaultWay::passphrase, secret_text(passphrase), cheap));
        recovery_ = std::move(made.recovery_key);
        must(vault_->set_up(
            NewVault{made.vault_id, std::move(made.data_key), {}, std::move(made.wrapped)},
            "Mara"));
    }
    void unlock(const std::string& who = "Mara") {
        must(vault_->open_with_passphrase(secret_text(passphrase), who));
    }
    /// As after closing and opening the program.
    void start_anew() {
        vault_.reset();
        database_.reset();
        database_ = test::open(folder_.records());
        vault_ = std::make_unique<Vault>(*database_, [this] { return now_; });
    }
    AuditVerdict verify() { return must(vault_->trail().verify(vault_->audit_key())); }
    void run_sql(const QString& sql) { test::run(*database_, sql); }

    std::int64_t now_ = 1'783'152'900;  // 2026-07-04T08:15:00Z
    Folder folder_;
    std::unique_ptr<Database> database_ = test::open(folder_.records());
    std::unique_ptr<Vault> vault_ = std::make_unique<Vault>(*database_, [this] { return now_; });
    SecretBytes recovery_;
};

}  // namespace leadline::test
