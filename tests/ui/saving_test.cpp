// SPDX-License-Identifier: GPL-3.0-or-later
#include <fcntl.h>
#include <gmock/gmock.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QApplication>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QDir>
#include <QFileDialog>
#include <QLineEdit>
#include <QMessageBox>
#include <QProcess>
#include <QProgressBar>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTimer>
#include <array>

#include "sheets_support.h"
#include "ui/sheet/briefing_tab.h"
#include "ui/sheet/page_preview.h"
#include "ui/sheet/pdf_path.h"
#include "ui/sheet/saving_row.h"
#include "ui_fixture.h"

namespace leadline::testing {
namespace {

using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::Not;

class SavingPdf : public DocumentTest {
protected:
    void SetUp() override {
        open("harbour-morning");
        tab_ = std::make_unique<BriefingTab>(document_);
        tab_->resize(1100, 760);
        tab_->show();
        tab_->set_pdf_path_chooser([this] { return path_; });
    }
    void click(const char* name) {
        QTest::mouseClick(child<QWidget>(*tab_, name), Qt::LeftButton);
    }
    bool said() {
        return QTest::qWaitFor([&] { return !tab_->status().isEmpty(); }, 60'000);
    }
    /// A page for each face of each guest's card, two languages each.
    void want_many_pages() {
        ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
            for (Guest& guest : session.guests) {
                guest.language = "en";
                guest.second_language = "de";
            }
        }).has_value());
        auto* size = child<QComboBox>(*tab_, "briefing_size");
        size->setFocus();
        QTest::keyClick(size, Qt::Key_End);
        ASSERT_GE(tab_->preview()->count(), 12);
    }
    QByteArray content(const QString& path) {
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
        return file.readAll();
    }
    void put(const QString& path, const char* text) {
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
    }
    QStringList names() const {
        return QDir(folder_.path()).entryList(QDir::Files | QDir::Hidden | QDir::System, QDir::Name);
    }
    std::string words_in(const QString& path) {
        QProcess reader;
        reader.start(QStringLiteral("pdftotext"), {path, QStringLiteral("-")});
        EXPECT_TRUE(reader.waitForFinished(60'000));
        return reader.readAllStandardOutput().toStdString();
    }
    QTemporaryDir folder_;
    QString path_ = folder_.filePath(QStringLiteral("cards.pdf"));
    std::unique_ptr<BriefingTab> tab_;
};

TEST_F(SavingPdf, WhatIsSavedIsWhatStoodThereAtTheClick) {
    const std::string before = document_.session().guests.front().name;
    click("briefing_save_pdf");
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.guests.front().name = "Zebedee";
    }).has_value());
    EXPECT_TRUE(all_words_on(tab_->preview()->pages()).contains(QStringLiteral("Zebedee")));
    ASSERT_TRUE(said());
    EXPECT_THAT(tab_->status().toStdString(), HasSubstr("cards.pdf"));
    EXPECT_THAT(words_in(path_), AllOf(HasSubstr(before), Not(HasSubstr("Zebedee"))));
}

TEST_F(SavingPdf, StoppedItLeavesTheOldFileAndNothingHalfWritten) {
    want_many_pages();
    put(path_, "old");
    child<SavingRow>(*tab_, "saving_row")->set_moment(0);
    click("briefing_save_pdf");
    auto* stop = child<QPushButton>(*tab_, "saving_stop");
    ASSERT_TRUE(stop->isVisible());
    stop->setFocus();
    QTest::keyClick(stop, Qt::Key_Space);
    ASSERT_TRUE(said());
    EXPECT_THAT(tab_->status().toStdString(), HasSubstr("nothing was changed"));
    EXPECT_EQ(content(path_), "old");
    EXPECT_EQ(names(), QStringList{QStringLiteral("cards.pdf")});
    EXPECT_FALSE(stop->isVisible());
    EXPECT_TRUE(child<QWidget>(*tab_, "briefing_save_pdf")->hasFocus());
    // And once more, to the end.
    click("briefing_save_pdf");
    ASSERT_TRUE(said());
    EXPECT_TRUE(content(path_).startsWith("%PDF"));
    EXPECT_EQ(names(), QStringList{QStringLiteral("cards.pdf")});
}

TEST_F(SavingPdf, TheWindowGoesOnWhileAPipeKeepsItWaiting) {
    const QByteArray pipe = QFile::encodeName(folder_.filePath(QStringLiteral("pipe")));
    ASSERT_EQ(mkfifo(pipe.constData(), 0600), 0);
    path_ = QFile::decodeName(pipe);
    click("briefing_save_pdf");
    auto* row = child<SavingRow>(*tab_, "saving_row");
    EXPECT_FALSE(row->isVisible());  // nothing flashes by
    ASSERT_TRUE(QTest::qWaitFor([&] { return row->isVisible(); }, 60'000));
    auto* bar = child<QProgressBar>(*tab_, "saving_bar");
    ASSERT_TRUE(QTest::qWaitFor([&] { return bar->value() == 100; }, 60'000));
    click("sheet_kit");
    EXPECT_EQ(tab_->kind(), SheetKind::kit);
    click("briefing_save_pdf");
    EXPECT_THAT(tab_->status().toStdString(), HasSubstr("still being saved"));

    const int reader = ::open(pipe.constData(), O_RDONLY | O_NONBLOCK | O_CLOEXEC);
    ASSERT_GE(reader, 0);
    QByteArray got;
    EXPECT_TRUE(QTest::qWaitFor(
        [&] {
            std::array<char, 65'536> part{};
            const ssize_t count = ::read(reader, part.data(), part.size());
            if (count > 0) got.append(part.data(), count);
            return count <= 0 && tab_->status().contains(path_);
        },
        60'000));
    ::close(reader);
    EXPECT_TRUE(got.startsWith("%PDF"));
    EXPECT_TRUE(got.trimmed().endsWith("%%EOF"));
    EXPECT_FALSE(row->isVisible());
}

TEST_F(SavingPdf, WhatWasBegunIsSavedThoughTheTabGoes) {
    click("briefing_save_pdf");
    tab_.reset();
    EXPECT_TRUE(content(path_).trimmed().endsWith("%%EOF"));
    EXPECT_EQ(names(), QStringList{QStringLiteral("cards.pdf")});
}

TEST(PdfPath, HasASuffixWhereNoneWasTyped) {
    const std::pair<const char*, const char*> names[] = {
        {"cards", "cards.pdf"},         {"cards.pdf", "cards.pdf"},
        {"CARDS.PDF", "CARDS.PDF"},     {"/a.b/cards", "/a.b/cards.pdf"},
        {"cards.txt", "cards.txt"},     {"Cove 12.6", "Cove 12.6.pdf"},
        {"12.6.2026", "12.6.2026.pdf"}, {"cards.", "cards.pdf"},
        {"Mr. Smith", "Mr. Smith.pdf"}, {"/no/such/folder/", "/no/such/folder/"},
        {"/dev/null", "/dev/null"},     {"/tmp", "/tmp"},
        {"", ""},
    };
    for (const auto& [typed, whole] : names) {
        EXPECT_EQ(with_pdf_suffix(QString::fromUtf8(typed)).toStdString(), whole) << typed;
    }
}

/// Answers the dialogs of saving as a person does: types the names, one each time it is asked, and
/// says whether a file is replaced.
class Answers : public QObject {
public:
    Answers(QStringList names, bool replace) : names_(std::move(names)), replace_(replace) {
        QObject::connect(&look_, &QTimer::timeout, this, [this] { look(); });
        look_.start(5);
    }
    int questions = 0;

private:
    void look() {
        QWidget* asked = QApplication::activeModalWidget();
        if (auto* dialog = qobject_cast<QFileDialog*>(asked)) {
            if (names_.isEmpty()) {
                dialog->reject();
                return;
            }
            auto* name = dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
            ASSERT_NE(name, nullptr);
            name->setText(names_.takeFirst());  // key by key a list of guesses would open
            auto* buttons = dialog->findChild<QDialogButtonBox*>(QStringLiteral("buttonBox"));
            ASSERT_NE(buttons, nullptr);
            QTest::mouseClick(buttons->button(QDialogButtonBox::Save), Qt::LeftButton);
        } else if (auto* box = qobject_cast<QMessageBox*>(asked)) {
            ++questions;
            EXPECT_EQ(box->objectName(), u"replace_question");
            const QString button = replace_ ? QStringLiteral("replace_accept")
                                            : QStringLiteral("replace_other");
            QTest::mouseClick(box->findChild<QPushButton*>(button), Qt::LeftButton);
        }
    }
    QStringList names_;
    bool replace_;
    QTimer look_;
};

class SavingDialog : public SavingPdf {
protected:
    void SetUp() override {
        SavingPdf::SetUp();
        tab_ = std::make_unique<BriefingTab>(document_);  // asks with its own dialog
        tab_->show();
        put(path_, "old");
    }
};

TEST_F(SavingDialog, AsksBeforeTheCompletedNameIsOverwritten) {
    const Answers answers({folder_.filePath(QStringLiteral("cards"))}, true);
    click("briefing_save_pdf");
    EXPECT_EQ(answers.questions, 1);
    ASSERT_TRUE(said());
    EXPECT_TRUE(content(path_).startsWith("%PDF"));
    EXPECT_EQ(names(), QStringList{QStringLiteral("cards.pdf")});
}

TEST_F(SavingDialog, AnotherNameIsAskedForWhereTheOldFileStays) {
    const Answers answers({folder_.filePath(QStringLiteral("cards")),
                           folder_.filePath(QStringLiteral("other"))},
                          false);
    click("briefing_save_pdf");
    EXPECT_EQ(answers.questions, 1);
    ASSERT_TRUE(said());
    EXPECT_EQ(content(path_), "old");
    EXPECT_TRUE(content(folder_.filePath(QStringLiteral("other.pdf"))).startsWith("%PDF"));
}

TEST_F(SavingDialog, NothingIsSavedWhereTheDialogIsLeft) {
    const Answers answers({folder_.filePath(QStringLiteral("cards"))}, false);
    click("briefing_save_pdf");
    EXPECT_EQ(answers.questions, 1);
    EXPECT_EQ(content(path_), "old");
    EXPECT_TRUE(tab_->status().isEmpty());
    EXPECT_EQ(names(), QStringList{QStringLiteral("cards.pdf")});
}

}  // namespace
}  // namespace leadline::testing
