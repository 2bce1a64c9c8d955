// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include "tests/app/vault_secrets.h"

// A day with the vault leaves nothing readable behind: in no file that the program wrote, wherever
// it wrote it, and in nothing it said; not even when it was killed.

namespace leadline {
namespace {

using ::testing::AnyOf;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

/// A secret in the ways in which it may stand in a file.
std::vector<QByteArray> forms_of(const std::string& secret) {
    const QByteArray utf8 = QByteArray::fromStdString(secret);
    const QString text = QString::fromUtf8(utf8);
    const QByteArray utf16(reinterpret_cast<const char*>(text.utf16()),
                           text.size() * qsizetype(sizeof(QChar)));
    QByteArray escaped = utf8;
    escaped.replace('"', "\\\"");
    // The first letters alone: what comes after them shifts the digits of base 64.
    const QByteArray base64 = utf8.left(utf8.size() / 3 * 3).toBase64();
    return {utf8, utf8.toLower(), utf16, utf8.toHex(), base64, escaped};
}

struct Findings {
    std::vector<std::string> names;  ///< of the files looked at, from the folder
    std::vector<std::string> found;  ///< "FILE: SECRET"
};

void look_into(const QByteArray& bytes, const QString& name, Findings& findings) {
    findings.names.push_back(name.toStdString());
    for (const std::string& secret : test::all_secrets()) {
        for (const QByteArray& form : forms_of(secret)) {
            if (!bytes.contains(form)) continue;
            findings.found.push_back(name.toStdString() + ": " + secret);
            break;
        }
    }
}

QByteArray pdf_bytes(const QString& path) {
    QProcess process;
    process.start(QStringLiteral("pdftotext"), {path, QStringLiteral("-")});
    EXPECT_TRUE(process.waitForFinished(60'000));
    return process.readAllStandardOutput();
}

/// Runs a day in a folder that is also its home, and looks into all that is there afterwards.
class VaultDay : public ::testing::Test {
protected:
    void live(const QString& how) {
        QProcess process;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        for (const char* place : {"HOME", "TMPDIR", "XDG_DATA_HOME", "XDG_CONFIG_HOME",
                                  "XDG_CACHE_HOME", "XDG_STATE_HOME", "XDG_RUNTIME_DIR"}) {
            const QString path = folder_.filePath(QString::fromLatin1(place).toLower());
            ASSERT_TRUE(QDir().mkpath(path));
            QFile::setPermissions(
                path, QFileDevice::ReadOwner | QFileDevice::WriteOwner | QFileDevice::ExeOwner);
            environment.insert(QString::fromLatin1(place), path);
        }
        environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
        // Never the keyring of whoever runs the tests.
        environment.insert(QStringLiteral("DBUS_SESSION_BUS_ADDRESS"),
                           QStringLiteral("unix:path=/nowhere/bus"));
        process.setProcessEnvironment(environment);
        process.setWorkingDirectory(folder_.path());
        process.start(QStringLiteral(LEADLINE_VAULT_DAY), {folder_.path(), how});
        ASSERT_TRUE(process.waitForFinished(120'000));
        crashed_ = process.exitStatus() == QProcess::CrashExit;
        code_ = process.exitCode();
        out_ = process.readAllStandardOutput();
        err_ = process.readAllStandardError();
    }
    Findings look() {
        Findings findings;
        look_into(out_, QStringLiteral("stdout"), findings);
        look_into(err_, QStringLiteral("stderr"), findings);
        const QDir root(folder_.path());
        QDirIterator files(folder_.path(), QDir::Files | QDir::Hidden | QDir::System,
                           QDirIterator::Subdirectories);
        while (files.hasNext()) {
            QFile file(files.next());
            EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << file.fileName().toStdString();
            const QString name = root.relativeFilePath(file.fileName());
            look_into(file.readAll(), name, findings);
            if (name.endsWith(QStringLiteral(".pdf"))) {
                look_into(pdf_bytes(file.fileName()), name + QStringLiteral(" as text"), findings);
            }
        }
        return findings;
    }

    QTemporaryDir folder_;
    bool crashed_ = false;
    int code_ = -1;
    QByteArray out_;
    QByteArray err_;
};

TEST_F(VaultDay, LeavesNothingReadable) {
    ASSERT_NO_FATAL_FAILURE(live(QStringLiteral("clean")));
    ASSERT_FALSE(crashed_);
    ASSERT_EQ(code_, 0) << err_.toStdString();
    const Findings findings = look();
    EXPECT_THAT(findings.found, IsEmpty());
    // That there was something to look into.
    EXPECT_THAT(findings.names, Contains("records.sqlite"));
    EXPECT_THAT(findings.names, Contains(HasSubstr("before-schema-")));
    EXPECT_THAT(findings.names, Contains("session.json"));
    EXPECT_THAT(findings.names, Contains("cards.pdf as text"));
    EXPECT_THAT(out_.toStdString(), HasSubstr("\"findings\""));
    // The failures were said, and without what failed.
    EXPECT_THAT(err_.toStdString(), HasSubstr("does not open the vault"));
    EXPECT_THAT(err_.toStdString(), HasSubstr("vault is locked"));
}

TEST_F(VaultDay, LeavesNothingReadableWhenKilled) {
    ASSERT_NO_FATAL_FAILURE(live(QStringLiteral("kill")));
    ASSERT_TRUE(crashed_);
    const Findings findings = look();
    EXPECT_THAT(findings.found, IsEmpty());
    EXPECT_THAT(findings.names, Contains("records.sqlite-wal"));
    EXPECT_THAT(findings.names, Contains("records.sqlite-shm"));
}

TEST_F(VaultDay, LeavesNoCoreFileWhenItCrashes) {
    ASSERT_NO_FATAL_FAILURE(live(QStringLiteral("abort")));
    ASSERT_TRUE(crashed_);
    const Findings findings = look();
    EXPECT_THAT(findings.found, IsEmpty());
    EXPECT_THAT(findings.names, Not(Contains(HasSubstr("core"))));
}

TEST_F(VaultDay, TheSearchFindsEverySecretThatIsWrittenPlainly) {
    ASSERT_NO_FATAL_FAILURE(live(QStringLiteral("plain")));
    ASSERT_EQ(code_, 0) << err_.toStdString();
    const Findings findings = look();
    for (const std::string& secret : test::all_secrets()) {
        EXPECT_THAT(findings.found, Contains("plain.txt: " + secret));
        EXPECT_THAT(findings.found, Contains("stderr: " + secret));
        EXPECT_THAT(findings.found,
                    Contains(AnyOf("records.sqlite: " + secret, "records.sqlite-wal: " + secret)));
    }
    EXPECT_THAT(findings.found,
                Contains(HasSubstr(std::string("leadline.conf: ") + test::first_passphrase)));
}

TEST_F(VaultDay, AKeyringThatIsNotThereSaysSoAndWritesNoFileInstead) {
    ASSERT_NO_FATAL_FAILURE(live(QStringLiteral("keyring")));
    ASSERT_FALSE(crashed_);
    ASSERT_EQ(code_, 0);
    EXPECT_THAT(err_.toStdString(), HasSubstr("the keyring failed"));
    EXPECT_THAT(err_.toStdString(), HasSubstr("keyring does not answer"));
    EXPECT_THAT(look().found, IsEmpty());
}

}  // namespace
}  // namespace leadline
