// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/briefing_tab.h"

#include <gmock/gmock.h>

#include <QApplication>
#include <QComboBox>
#include <QElapsedTimer>
#include <QFileInfo>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTimer>
#include <QUndoStack>

#include "sheets_support.h"
#include "ui/sheet/card_list.h"
#include "ui/sheet/page_preview.h"
#include "ui/sheet/sheet_bar.h"
#include "ui_fixture.h"

namespace leadline::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

class BriefingSheetsTest : public DocumentTest {
protected:
    void SetUp() override {
        open("mountain-lake");
        tab_ = std::make_unique<BriefingTab>(document_);
        tab_->resize(1100, 760);
        tab_->show();
    }
    void click(const char* name) {
        QTest::mouseClick(child<QWidget>(*tab_, name), Qt::LeftButton);
    }
    /// Saves with a click and waits until the tab says how it went.
    void save() {
        click("briefing_save_pdf");
        EXPECT_TRUE(QTest::qWaitFor([&] { return !tab_->status().isEmpty(); }, 60'000));
    }
    std::string words() { return all_words_on(tab_->preview()->pages()).toStdString(); }
    std::string summary() { return child<QLabel>(*tab_, "briefing_summary")->text().toStdString(); }
    /// Chooses a row of a box by the keyboard alone.
    void pick(const char* name, int row) {
        auto* box = child<QComboBox>(*tab_, name);
        box->setFocus();
        QTest::keyClick(box, Qt::Key_Home);
        for (int i = 0; i < row; ++i) QTest::keyClick(box, Qt::Key_Down);
        EXPECT_EQ(box->currentIndex(), row) << name;
    }
    QTemporaryDir folder_;
    std::unique_ptr<BriefingTab> tab_;
};

TEST_F(BriefingSheetsTest, ALongNameIsNeverCutWithinALetter) {
    // At every place where the cut may fall, one half of a letter of two.
    for (int before = 0; before < 4; ++before) {
        const std::string name = [&] {
            std::string all(static_cast<std::size_t>(before), 'a');
            for (int k = 0; k < 40; ++k) all += "\U0001F30A";
            return all;
        }();
        ASSERT_TRUE(document_
                        .edit(QStringLiteral("x"),
                              [&](Session& session) { session.guests[0].name = name; })
                        .has_value());
        auto* list = child<QListWidget>(*tab_, "card_list");
        list->setCurrentRow(0);
        for (const QString& text :
             {list->item(0)->text(), child<QLabel>(*tab_, "card_editor_who")->text()}) {
            EXPECT_TRUE(text.contains(QChar(0x2026))) << text.toStdString();
            EXPECT_TRUE(text.isValidUtf16()) << before << ": " << text.toStdString();
        }
    }
}

TEST_F(BriefingSheetsTest, EverySheetIsAClickAway) {
    const std::pair<const char*, const char*> sheets[] = {
        {"sheet_beach", "Heads, air, log"},       {"sheet_skills", "What each is for"},
        {"sheet_kit", "To pack in all"},          {"sheet_emergency", "Position for rescuers"},
        {"sheet_pictures", "Talk with your hands"}, {"sheet_cards", "Jakob"},
    };
    for (const auto& [name, shown] : sheets) {
        click(name);
        EXPECT_THAT(words(), HasSubstr(shown)) << name;
    }
}

TEST_F(BriefingSheetsTest, AChangeOfTheSessionIsShownOnce) {
    for (const char* name : {"sheet_cards", "sheet_beach"}) {
        click(name);
        QSignalSpy shown(tab_->preview(), &PagePreview::page_changed);
        ASSERT_TRUE(document_.edit(QStringLiteral("Rename"), [&](Session& session) {
            session.guests.front().name = std::string("Renamed for ") + name;
        }));
        EXPECT_EQ(shown.count(), 1) << name;
        EXPECT_THAT(words(), HasSubstr("Renamed for"));
    }
}

TEST_F(BriefingSheetsTest, TheArrowKeysGoThroughTheSheets) {
    auto* first = child<QPushButton>(*tab_, "sheet_cards");
    tab_->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(tab_.get()));
    first->setFocus();
    for (int i = 1; i < sheet_kind_count; ++i) {
        QTest::keyClick(tab_->focusWidget(), Qt::Key_Right);
        EXPECT_EQ(static_cast<int>(tab_->kind()), i);
        EXPECT_GT(tab_->preview()->count(), 0);
    }
}

TEST_F(BriefingSheetsTest, ShowsOnlyTheChoicesOfTheSheet) {
    const auto visible = [&](const char* name) { return child<QWidget>(*tab_, name)->isVisible(); };
    EXPECT_TRUE(visible("card_list"));
    EXPECT_TRUE(visible("briefing_size"));
    EXPECT_FALSE(visible("briefing_paper"));
    click("sheet_beach");
    EXPECT_FALSE(visible("card_list"));
    EXPECT_TRUE(visible("briefing_group"));
    EXPECT_TRUE(visible("briefing_paper"));
    EXPECT_FALSE(visible("briefing_skills"));
    click("sheet_skills");
    EXPECT_TRUE(visible("briefing_skills"));
    click("sheet_pictures");
    EXPECT_TRUE(visible("picture_language"));
    EXPECT_FALSE(visible("briefing_group"));
}

TEST_F(BriefingSheetsTest, PaperIsChosenByKeyboard) {
    click("sheet_beach");
    EXPECT_EQ(tab_->preview()->pages().front().paper, Paper::a4);
    pick("briefing_paper", 1);
    EXPECT_EQ(tab_->preview()->pages().front().paper, Paper::letter);
}

TEST_F(BriefingSheetsTest, OneGroupOrAll) {
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.groups.push_back(Group{GroupId("other"), "Heron", StaffId(), StaffId()});
        session.guests[0].group = GroupId("other");
    }).has_value());
    click("sheet_beach");
    EXPECT_EQ(tab_->preview()->count(), 2);
    pick("briefing_group", 2);
    EXPECT_EQ(tab_->preview()->count(), 1);
    EXPECT_THAT(words(), HasSubstr("Heron"));
    EXPECT_THAT(words(), Not(HasSubstr("Eleanor")));
    // The choice outlasts an edit, and ends with its group.
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.title = "Another";
    }).has_value());
    EXPECT_EQ(tab_->preview()->count(), 1);
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.groups.pop_back();
        session.guests[0].group = GroupId();
    }).has_value());
    EXPECT_EQ(child<QComboBox>(*tab_, "briefing_group")->currentIndex(), 0);
    EXPECT_THAT(summary(), HasSubstr("in no group"));
}

TEST_F(BriefingSheetsTest, AGuestsLanguageAndUnitsAreChangedAndUndone) {
    auto* list = child<QListWidget>(*tab_, "card_list");
    list->setCurrentRow(1);
    const Session before = document_.session();
    pick("card_units", 2);
    EXPECT_EQ(document_.session().guests[1].units, UnitHabit::imperial);
    EXPECT_EQ(document_.session().guests[0].units, UnitHabit::house);
    auto* language = child<QComboBox>(*tab_, "card_language");
    const int english = language->findData(QStringLiteral("en"));
    ASSERT_GE(english, 0);
    pick("card_language", english);
    EXPECT_EQ(document_.session().guests[1].language, "en");
    while (document_.undo_stack()->canUndo()) document_.undo_stack()->undo();
    EXPECT_EQ(document_.session(), before);
    EXPECT_EQ(child<QComboBox>(*tab_, "card_units")->currentIndex(), 0);
}

TEST_F(BriefingSheetsTest, SeveralGuestsAreChangedAtOnce) {
    auto* list = child<QListWidget>(*tab_, "card_list");
    list->setFocus();
    list->setCurrentRow(0);
    QTest::keyClick(list, Qt::Key_A, Qt::ControlModifier);
    EXPECT_THAT(child<QLabel>(*tab_, "card_editor_who")->text().toStdString(), HasSubstr("4 guests"));
    pick("card_units", 1);
    for (const Guest& guest : document_.session().guests) EXPECT_EQ(guest.units, UnitHabit::metric);
    EXPECT_EQ(document_.undo_stack()->count(), 1);
    EXPECT_EQ(list->selectedItems().size(), 4);
}

TEST_F(BriefingSheetsTest, TwiceTheSameLanguageIsOne) {
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.guests[0].language = "en";
        session.guests[0].second_language = "de";
    }).has_value());
    child<QListWidget>(*tab_, "card_list")->setCurrentRow(0);
    auto* second = child<QComboBox>(*tab_, "card_second_language");
    EXPECT_EQ(second->currentData().toString(), u"de");
    second->setFocus();
    QTest::keyClick(second, Qt::Key_Home);
    QTest::keyClick(second, Qt::Key_Down);  // English, after "None"
    EXPECT_EQ(document_.session().guests[0].second_language, "");
}

TEST_F(BriefingSheetsTest, DifferentLanguagesAreNotPretendedAlike) {
    auto* list = child<QListWidget>(*tab_, "card_list");
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.guests[0].language = "en";
        session.guests[1].language = "xh";
    }).has_value());
    list->selectAll();
    EXPECT_EQ(child<QComboBox>(*tab_, "card_language")->currentIndex(), -1);
    list->setCurrentRow(1);
    EXPECT_THAT(child<QComboBox>(*tab_, "card_language")->currentText().toStdString(),
                HasSubstr("Xhosa (no cards yet)"));
}

TEST_F(BriefingSheetsTest, GuestsWithoutTheirLanguageAreNamed) {
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.guests[3].language = "xh";
        session.staff.front().languages.push_back("xh");
    }).has_value());
    EXPECT_THAT(summary(), HasSubstr("no translation yet"));
    EXPECT_THAT(summary(), HasSubstr("Eleanor Fitzwilliam (Xhosa)"));
    const auto* entry = child<QListWidget>(*tab_, "card_list")->item(3);
    EXPECT_THAT(entry->text().toStdString(), HasSubstr("English, no Xhosa yet"));
}

TEST_F(BriefingSheetsTest, SkillsAreChosenAndUndone) {
    click("sheet_skills");
    EXPECT_THAT(words(), HasSubstr("Share air"));
    const auto with_dialog = [&](auto act) {
        bool acted = false;
        QTimer::singleShot(0, tab_.get(), [&] {
            QWidget* dialog = QApplication::activeModalWidget();
            ASSERT_NE(dialog, nullptr);
            act(*dialog);
            acted = true;
        });
        click("briefing_skills");
        EXPECT_TRUE(acted);
    };
    const auto untick = [&](QWidget& dialog) {
        auto* list = dialog.findChild<QListWidget*>(QStringLiteral("skills_list"));
        list->setFocus();
        list->setCurrentRow(static_cast<int>(Skill::share_air));
        QTest::keyClick(list, Qt::Key_Space);
    };
    with_dialog([&](QWidget& dialog) {
        untick(dialog);
        QTest::keyClick(&dialog, Qt::Key_Escape);
    });
    EXPECT_EQ(document_.session().skills.size(), std::size_t{skill_count});
    with_dialog([&](QWidget& dialog) {
        untick(dialog);
        QTest::mouseClick(dialog.findChild<QPushButton*>(QStringLiteral("skills_accept")),
                          Qt::LeftButton);
    });
    EXPECT_EQ(document_.session().skills.size(), std::size_t{skill_count} - 1);
    EXPECT_THAT(words(), Not(HasSubstr("Share air")));
    document_.undo_stack()->undo();
    EXPECT_EQ(document_.session().skills.size(), std::size_t{skill_count});
}

TEST_F(BriefingSheetsTest, EverySheetIsSaved) {
    for (const char* name : {"sheet_cards", "sheet_beach", "sheet_skills", "sheet_kit",
                             "sheet_emergency", "sheet_pictures"}) {
        click(name);
        const QString path = folder_.filePath(QString::fromLatin1(name) + QStringLiteral(".pdf"));
        tab_->set_pdf_path_chooser([&] { return path; });
        save();
        EXPECT_THAT(tab_->status().toStdString(), HasSubstr(path.toStdString()));
        EXPECT_GT(QFileInfo(path).size(), 1000) << name;
        // Ages and health: for the one who saved it alone.
        const bool others = QFileInfo(path).permissions().testAnyFlags(
            QFileDevice::ReadGroup | QFileDevice::ReadOther);
        EXPECT_FALSE(others && tab_->kind() == SheetKind::beach);
    }
}

TEST_F(BriefingSheetsTest, SaysWhyNothingIsSavedOrPrinted) {
    click("sheet_kit");
    tab_->set_pdf_path_chooser([] { return QStringLiteral("/no/such/folder/x.pdf"); });
    save();
    EXPECT_THAT(tab_->status().toStdString(), HasSubstr("/no/such/folder/x.pdf"));
    tab_->set_printer_check([] { return false; });
    click("briefing_print");
    EXPECT_THAT(tab_->status().toStdString(), HasSubstr("No printer is installed"));
}

TEST_F(BriefingSheetsTest, WithoutGuestsOrGroupsItSaysSo) {
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.guests.clear();
        session.groups.clear();
        session.site.emergency_line.clear();
    }).has_value());
    EXPECT_EQ(tab_->preview()->count(), 0);
    EXPECT_FALSE(child<QWidget>(*tab_, "card_editor")->isEnabled());
    click("sheet_beach");
    EXPECT_EQ(tab_->preview()->count(), 0);
    EXPECT_FALSE(child<QWidget>(*tab_, "briefing_save_pdf")->isEnabled());
    click("sheet_kit");
    EXPECT_THAT(words(), HasSubstr("No guests yet"));
    click("sheet_emergency");
    EXPECT_THAT(summary(), HasSubstr("No number is entered"));
}

TEST_F(BriefingSheetsTest, LettersWithoutAFontAreNamed) {
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.guests[0].name = "\xF3\xB0\x80\x80 Private";  // a letter for private use
    }).has_value());
    auto* letters = child<QLabel>(*tab_, "briefing_letters");
    QTRY_VERIFY(letters->isVisible());
    EXPECT_THAT(letters->text().toStdString(), HasSubstr("Private"));
    click("sheet_emergency");
    QTest::qWait(0);
    EXPECT_FALSE(letters->isVisible());
}

TEST_F(BriefingSheetsTest, FortyGuestsKeepTheWindowFree) {
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session = crowded(session, 40);
        for (std::size_t i = 0; i < session.guests.size(); ++i) {
            session.guests[i].name = "Guest number " + std::to_string(i);
            session.guests[i].screening.outcome = ScreeningOutcome::clear;
        }
    }).has_value());
    // A generous bound for slow machines and sanitizers; measured figures stand in the history.
    constexpr qint64 most_milliseconds = 1500;
    for (const char* name : {"sheet_beach", "sheet_skills", "sheet_kit", "sheet_pictures"}) {
        QElapsedTimer timer;
        timer.start();
        click(name);
        const qint64 spent = timer.elapsed();
        EXPECT_LT(spent, most_milliseconds) << name;
        RecordProperty(name, std::to_string(spent));
        EXPECT_GT(tab_->preview()->count(), 0);
    }
}

}  // namespace
}  // namespace leadline::testing
