// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QAbstractButton>
#include <QApplication>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLabel>
#include <QListView>
#include <QLocale>
#include <QMenu>
#include <QMenuBar>
#include <QTabBar>
#include <QTabWidget>
#include <QTableView>

#include "cut_off_texts.h"
#include "core/records/person_removal.h"
#include "core/records/setting_store.h"
#include "speaking.h"
#include "ui/document/resources.h"
#include "ui/gas/lever_delegate.h"
#include "ui/roster/birth_date_line.h"
#include "ui/roster/lead_sizes.h"
#include "ui/roster/stock_dialog.h"
#include "ui/shell/backups_dialog.h"
#include "ui/shell/language_menu.h"
#include "ui/shell/people_dialog.h"
#include "ui/shell/removal_dialog.h"
#include "ui/shell/sessions_dialog.h"
#include "ui/shell/vault_passphrase_dialog.h"
#include "ui/shell/vault_set_up_dialog.h"
#include "ui/site/profile_refusal.h"
#include "ui/site/profile_view.h"
#include "ui/words/error_words.h"
#include "ui/words/finding_words.h"
#include "ui/words/guest_name.h"
#include "ui/words/name_words.h"
#include "ui/words/quantity_text.h"
#include "ui/words/question_words.h"
#include "ui/words/range_words.h"
#include "ui/words/rule_words.h"
#include "ui/words/window_language.h"
#include "vault_fixture.h"

namespace leadline::testing {
namespace {

using ::testing::AnyOf;
using ::testing::StartsWith;

TEST(WindowLanguages, EnglishComesFirstAndGermanIsBuilt) {
    ASSERT_FALSE(window_languages().empty());
    EXPECT_EQ(window_languages().front().tag, english);
    EXPECT_THAT(offered_tags(), ::testing::Contains("de"));
}

TEST(WindowLanguages, TheChoiceGoesBeforeTheSystemAndTheSystemBeforeEnglish) {
    const QString de = QStringLiteral("de");
    EXPECT_EQ(language_for(de, {QStringLiteral("en-GB")}), de);
    EXPECT_EQ(language_for({}, {QStringLiteral("de-AT"), english}), de);
    EXPECT_EQ(language_for({}, {QStringLiteral("is-IS"), QStringLiteral("de")}), de)
        << "the next best of the system's languages";
    EXPECT_EQ(language_for({}, {QStringLiteral("is")}), english);
    EXPECT_EQ(language_for({}, {}), english);
    EXPECT_EQ(language_for(QStringLiteral("xx"), {QStringLiteral("de")}), de)
        << "a language that was taken out again";
}

TEST(WindowLanguages, DatesAndNumbersFollowTheLanguage) {
    const QLocale austria(QStringLiteral("de_AT"));
    EXPECT_EQ(locale_for(QStringLiteral("de"), austria), austria);
    EXPECT_EQ(locale_for(QStringLiteral("de"), QLocale::c()).decimalPoint(), u",");
    EXPECT_EQ(locale_for(english, QLocale::c()), QLocale::c());
    const QLocale away = locale_for(english, austria);
    EXPECT_EQ(away.language(), QLocale::English);
    EXPECT_EQ(away.territory(), QLocale::Austria);
}

TEST(WindowLanguages, TheWindowSpeaksGermanAndEnglishAgain) {
    {
        const Speaking german(QStringLiteral("de"));
        EXPECT_EQ(label(Severity::caution), u"Achtung");
        EXPECT_EQ(language_name("en"), u"Englisch");
        EXPECT_EQ(
            spelled(Date{std::chrono::year(1994), std::chrono::month(3), std::chrono::day(18)}),
            QStringLiteral("18. März 1994"));
        EXPECT_EQ(text(Meters(7.5), UnitSystem::metric), QStringLiteral("7,5\u00A0m"));
        EXPECT_EQ(QApplication::translate("QPlatformTheme", "Cancel"), u"Abbrechen")
            << "Qt's own words: package qt6-translations-l10n";
    }
    EXPECT_EQ(label(Severity::caution), u"Care");
}

TEST(WindowLanguages, CountsHaveTheirForms) {
    const auto guests = [](int count) {
        return QApplication::translate("leadline::GroupList", "%n guests", nullptr, count);
    };
    EXPECT_EQ(guests(1), u"1 guest");
    EXPECT_EQ(guests(2), u"2 guests");
    EXPECT_EQ(guests(0), u"0 guests");
    const Speaking german(QStringLiteral("de"));
    EXPECT_EQ(guests(1), u"1 Gast");
    EXPECT_EQ(guests(2), u"2 Gäste");
}

TEST(WindowLanguages, EachSaysHowFarItCanBeTrusted) {
    QFile file(QStringLiteral(":/leadline/translations/review.json"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QJsonObject states =
        QJsonDocument::fromJson(file.readAll()).object().value(u"window").toObject();
    for (const WindowLanguage& language : window_languages()) {
        EXPECT_THAT(states.value(language.tag).toObject().value(u"state").toString().toStdString(),
                    AnyOf("written", "drafted", "checked"))
            << language.tag.toStdString();
    }
}

TEST(WindowLanguages, EveryHealthQuestionIsHandedToTheTranslators) {
    const Result<Questionnaire> questions = load_questionnaire();
    ASSERT_TRUE(questions.has_value());
    std::vector<std::string> asked;
    for (const QuestionTheme& theme : questions->themes) {
        asked.push_back(theme.title);
        if (!theme.question.empty()) asked.push_back(theme.question);
        for (const FollowUp& follow_up : theme.follow_ups) asked.push_back(follow_up.question);
    }
    EXPECT_THAT(translated_health_texts(), ::testing::UnorderedElementsAreArray(asked));
    const Speaking german(QStringLiteral("de"));
    for (const std::string& text : asked) {
        // A title may be the same word: "Operation".
        if (!text.ends_with('?')) continue;
        EXPECT_NE(health_question(text), QString::fromStdString(text)) << text;
    }
}

class LanguageWindow : public VaultWindow {};

TEST_F(LanguageWindow, AChoiceIsKeptForTheNextStart) {
    auto* german = action("action_language_de");
    EXPECT_TRUE(action("action_language_")->isChecked());
    german->trigger();
    EXPECT_EQ(keeper_->setting(QString::fromLatin1(language_setting)), u"de");
    EXPECT_THAT(window_->message().toStdString(), StartsWith("Kept."));
    start();
    EXPECT_TRUE(action("action_language_de")->isChecked());
    EXPECT_FALSE(action("action_language_")->isChecked());
    action("action_language_")->trigger();
    EXPECT_EQ(language_for(*keeper_->setting(QString::fromLatin1(language_setting)), {}), english);
}

TEST_F(LanguageWindow, OtherRecordsBringTheirOwnChoice) {
    action("action_language_de")->trigger();
    ASSERT_TRUE(keeper_->close_records().has_value());
    {
        Result<std::unique_ptr<Database>> other = Database::open(database_path());
        ASSERT_TRUE(other.has_value());
        ASSERT_TRUE(SettingStore(**other)
                        .put(QString::fromLatin1(language_setting), QStringLiteral("fr"))
                        .has_value());
    }
    ASSERT_TRUE(keeper_->reopen_records(document_.file()).has_value());
    EXPECT_TRUE(action("action_language_fr")->isChecked());
    EXPECT_FALSE(action("action_language_de")->isChecked());
}

TEST(WindowLanguages, EveryTitleOfRulesIsHandedToTheTranslators) {
    const Result<RuleBook> rules = load_rule_book();
    ASSERT_TRUE(rules.has_value());
    std::vector<std::string> titles;
    for (const RuleSet& set : rules->sets) titles.push_back(set.title);
    EXPECT_THAT(translated_rule_titles(), ::testing::UnorderedElementsAreArray(titles));
    EXPECT_EQ(rule_set_title("Our own rules"), QStringLiteral("Our own rules"));
}

TEST(WindowLanguages, ASourceThatIsNoneSaysSoInTheLanguage) {
    const std::string law = "A law, article 3";
    EXPECT_EQ(rule_source(law), QStringLiteral("A law, article 3"));
    const Speaking german(QStringLiteral("de"));
    const QString none = label(Standing::common_practice);
    EXPECT_EQ(rule_source("common practice, no source"), none);
    EXPECT_EQ(rule_source("common practice, no source: 50 bar"),
              none + QStringLiteral(": „50 bar“"));
    EXPECT_EQ(rule_source("common practice, no source; a law says 24"),
              none + QStringLiteral("; „a law says 24“"));
    EXPECT_EQ(rule_source(law), QStringLiteral("„A law, article 3“"));
    EXPECT_EQ(rule_source(""), QString());
}

/// The window and its dialogs, in each language.
class InEachLanguage : public VaultWindow, public ::testing::WithParamInterface<std::string> {
protected:
    void SetUp() override {
        speaking_ = std::make_unique<Speaking>(QString::fromStdString(GetParam()));
        VaultWindow::SetUp();
    }
    void TearDown() override {
        window_.reset();
        speaking_.reset();
    }

    static QChar mnemonic_of(const QString& text) {
        const QKeySequence keys = QKeySequence::mnemonic(text);
        return keys.isEmpty() ? QChar() : QChar(keys[0].key());
    }
    void take(std::map<QChar, QStringList>& owners, const QString& text) {
        if (const QChar key = mnemonic_of(text); !key.isNull()) owners[key] << text;
    }
    void expect_one_owner(const std::map<QChar, QStringList>& owners, const std::string& where) {
        for (const auto& [key, texts] : owners) {
            EXPECT_EQ(texts.size(), 1) << where << ": Alt+" << key.toLatin1() << " for "
                                       << texts.join(u", ").toStdString();
        }
    }
    void expect_nothing_cut_off(const QWidget& root, const std::string& where) {
        CutOffTexts texts;
        texts.judge_all(root);
        EXPECT_TRUE(texts.found().isEmpty()) << where << "\n"
                                             << texts.found().join(u'\n').toStdString();
    }
    std::map<QChar, QStringList> owners_in(const QWidget& root) {
        std::map<QChar, QStringList> owners;
        for (const QWidget* widget : root.findChildren<QWidget*>()) {
            if (!widget->isVisible() || !widget->isEnabled()) continue;
            if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) {
                take(owners, button->text());
            }
            if (const auto* label = qobject_cast<const QLabel*>(widget);
                label != nullptr && label->buddy() != nullptr) {
                take(owners, label->text());
            }
            if (const auto* bar = qobject_cast<const QTabBar*>(widget)) {
                for (int i = 0; i < bar->count(); ++i) take(owners, bar->tabText(i));
            }
            if (const auto* bar = qobject_cast<const QMenuBar*>(widget)) {
                for (const QAction* menu : bar->actions()) take(owners, menu->text());
            }
        }
        return owners;
    }
    /// What is drawn and no widget: the lines of the dive's chart and the names of levers.
    void expect_whole_lines() {
        for (const ProfileView* view : window_->findChildren<ProfileView*>()) {
            if (!view->isVisible()) continue;
            for (const ProfileLabel& label : view->scene().labels) {
                EXPECT_FALSE(label.text.contains(QChar(0x2026))) << label.text.toStdString();
            }
        }
        for (const QListView* list :
             window_->findChildren<QListView*>(QStringLiteral("lever_list"))) {
            if (!list->isVisible()) continue;
            for (int row = 0; row < list->model()->rowCount(); ++row) {
                const QModelIndex index = list->model()->index(row, 0);
                EXPECT_TRUE(LeverDelegate::name_is_whole(index, list->font(),
                                                         list->viewport()->width()))
                    << index.data().toString().toStdString();
            }
        }
    }
    void judge_menu(const QMenu& menu) {
        std::map<QChar, QStringList> owners;
        for (const QAction* entry : menu.actions()) {
            take(owners, entry->text());
            if (entry->menu() != nullptr) judge_menu(*entry->menu());
        }
        expect_one_owner(owners, menu.title().toStdString());
    }
    void judge_dialog(QDialog& dialog) {
        dialog.show();
        QCoreApplication::processEvents();
        expect_one_owner(owners_in(dialog), dialog.windowTitle().toStdString());
        expect_nothing_cut_off(dialog, dialog.windowTitle().toStdString());
        dialog.close();
    }
    std::unique_ptr<Speaking> speaking_;
};

TEST_P(InEachLanguage, AltKeysHaveOneOwnerAndNothingIsCutOff) {
    for (const char* name : {"salt-cove", "finished-dive"}) {
        ASSERT_TRUE(window_->open_file(sample_path(name)));
        for (int tab = 0; tab < window_->tabs()->count(); ++tab) {
            window_->tabs()->setCurrentIndex(tab);
            QCoreApplication::processEvents();
            expect_one_owner(owners_in(*window_),
                             name + std::string(" tab ") + std::to_string(tab + 1));
            expect_whole_lines();
        }
    }
    for (const QAction* menu : window_->menuBar()->actions()) judge_menu(*menu->menu());
    SessionsDialog sessions(*keeper_, window_.get());
    judge_dialog(sessions);
    PeopleDialog people(*keeper_, UnitSystem::metric, window_.get());
    judge_dialog(people);
    BackupsDialog backups(*keeper_, window_.get());
    judge_dialog(backups);
    StockDialog stock(document_, window_.get());
    judge_dialog(stock);
    RemovalPreview preview;
    preview.name = "Noura al-Farsi";
    preview.merged_names = {QStringLiteral("Nora Farsi")};
    preview.mentions = 2;
    preview.backups = 3;
    const RetentionRule year{.kind = KeptKind::identity,
                             .erase_after_months = 60,
                             .keep_at_least_months = 12,
                             .source = "An invented law on the keeping of safety sheets, "
                                       "articles 12 to 15: a sheet is kept for a year"};
    RemovalDialog removal(preview, &year, window_.get());
    judge_dialog(removal);
    VaultSetUpDialog set_up(access(), window_.get());
    judge_dialog(set_up);
    make_vault_directly();
    VaultPassphraseDialog passphrase(access(), window_.get());
    judge_dialog(passphrase);
}

TEST_P(InEachLanguage, KeysAndDatesStayWhatTheProgramUnderstands) {
    const char* format = "ddd d MMM yyyy";
    for (const char* part : {"ddd", "d", "MMM", "yyyy"}) {
        EXPECT_TRUE(QApplication::translate("leadline::SessionLine", format,
                                            "date; ddd, d, MMM and yyyy stay")
                        .contains(QString::fromLatin1(part)))
            << part;
    }
    for (const char* keys :
         {"Ctrl+Shift+S", "Ctrl+Shift+O", "Ctrl+Shift+G", "Ctrl+Shift+R", "Ctrl+Y"}) {
        const QString translated = QApplication::translate("leadline::WindowActions", keys);
        EXPECT_EQ(QKeySequence(translated), QKeySequence(QString::fromLatin1(keys))) << keys;
    }
}

TEST_P(InEachLanguage, WhatIsWrittenIntoALineCanBeReadAgain) {
    for (unsigned month = 1; month <= 12; ++month) {
        const Date date = day(2001, month, 9);
        const Result<Date> read = read_typed_date(spelled(date));
        ASSERT_TRUE(read.has_value()) << spelled(date).toStdString();
        EXPECT_EQ(*read, date);
    }
    const std::vector<Kilograms> sizes{Kilograms(0.5), Kilograms(1.25), Kilograms(2.0)};
    EXPECT_EQ(read_lead_sizes(lead_sizes_text(sizes, UnitSystem::metric), UnitSystem::metric),
              sizes);
}

TEST_P(InEachLanguage, ARangeIsSaidInTheLanguage) {
    const bool is_english = GetParam() == "en";
    const Error error{ErrorCode::out_of_range, "/site/depth", "70", "-0.5 to 60"};
    EXPECT_EQ(words(error).contains(QStringLiteral("-0.5 to 60")), is_english);
    EXPECT_EQ(range_words(error.allowed) == QStringLiteral("-0.5 to 60"), is_english);
    EXPECT_EQ(range_words("2026-07-01 08:00 to 2026-07-08 08:00").contains(QStringLiteral(" to ")),
              is_english);
    EXPECT_EQ(range_words("Row to Boat"), QStringLiteral("Row to Boat"));
    EXPECT_EQ(range_words("200 to 350 K") == QStringLiteral("200 to 350 K"), is_english);
    EXPECT_TRUE(range_words("200 to 350 K").endsWith(QStringLiteral(" 350 K")));
    EXPECT_TRUE(range_words("0 to 1000 bar min/L").endsWith(QStringLiteral("1000 bar min/L")));
    EXPECT_EQ(range_words("0 to 200 characters") == QStringLiteral("0 to 200 characters"),
              is_english);
    EXPECT_EQ(range_words(""), QString());
}

TEST_P(InEachLanguage, TitlesAndSourcesOfRulesAreSaidInTheLanguage) {
    const bool is_english = GetParam() == "en";
    const Result<RuleBook> rules = load_rule_book();
    ASSERT_TRUE(rules.has_value());
    for (const RuleSet& set : rules->sets) {
        // A number of a standard, and what a language has the same name for.
        if (set.id.text == "iso-11121-2017") continue;
        if (GetParam() == "fr" && set.id.text == "france-code-du-sport") continue;
        EXPECT_EQ(rule_set_title(set.title) == QString::fromStdString(set.title), is_english)
            << set.title;
    }
    const QString source = rule_source("A law, article 3");
    EXPECT_EQ(source == QStringLiteral("A law, article 3"), is_english) << source.toStdString();
    EXPECT_TRUE(source.contains(QStringLiteral("A law, article 3")));
}

TEST_P(InEachLanguage, ARemovedGuestIsNamedInTheLanguage) {
    const bool is_english = GetParam() == "en";
    const QString stored = QString::fromLatin1(removed_name);
    const QString shown = guest_name(removed_name);
    EXPECT_EQ(shown == stored, is_english);
    EXPECT_EQ(guest_name("Guest removed first"), QStringLiteral("Guest removed first"));
    const GuestId first = first_guest();
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.guests.front().name = removed_name;
    }));
    EXPECT_EQ(subject_name(Subject(first), document_.session()), shown);
    const auto* table = child<QTableView>(*window_, "guest_table");
    QStringList names;
    for (int row = 0; row < table->model()->rowCount(); ++row) {
        for (int column = 0; column < table->model()->columnCount(); ++column) {
            names << table->model()->index(row, column).data().toString();
        }
    }
    EXPECT_TRUE(names.contains(shown));
    EXPECT_EQ(document_.session().guests.front().name, removed_name);
    RemovalDialog removal(RemovalPreview{}, nullptr, window_.get());
    EXPECT_TRUE(child<QLabel>(removal, "removal_stays")->text().contains(shown));
}

TEST_P(InEachLanguage, ARefusalHasTheDecimalSignOfTheLanguage) {
    const QString sign = QLocale().decimalPoint();
    EXPECT_EQ(number_words(QStringLiteral("-0.5")), QString(u"-0" + sign + u'5'));
    EXPECT_EQ(number_words(QStringLiteral("400.5 K")), QString(u"400" + sign + u"5 K"));
    EXPECT_EQ(number_words(QStringLiteral("2.mask")), QStringLiteral("2.mask"));
    const Error error{ErrorCode::out_of_range, "/site/depth", "0.05", "0.1 to 60.5 m"};
    const QString said = words(error);
    for (const QString& number : {QString(u"0" + sign + u"05"), QString(u"0" + sign + u"1"),
                                  QString(u"60" + sign + u"5 m")}) {
        EXPECT_TRUE(said.contains(number)) << said.toStdString();
    }
    const Error choice{ErrorCode::not_a_choice, "/site/name", "1.5", "Row"};
    EXPECT_TRUE(words(choice).contains(QStringLiteral("1.5")))
        << "what a person wrote stays as it was written";
}

TEST_P(InEachLanguage, AFileAndWhatIsWrongWithItStandApartByTheColonOfTheLanguage) {
    const Error error{ErrorCode::out_of_range, "/site/depth", "70", "0 to 60"};
    const QString colon = GetParam() == "fr" ? QStringLiteral("\u00a0: ") : QStringLiteral(": ");
    EXPECT_EQ(words(error, QStringLiteral("a.json")),
              QString(u"a.json" + colon + words(error)));
}

TEST_P(InEachLanguage, ADiveTooLongIsRefusedWithARangeAndNoMost) {
    const Error error{ErrorCode::out_of_range, "/profile/points/3/time_min", "250.5", "0 to 240"};
    const QString said = profile_refusal(error);
    EXPECT_TRUE(said.contains(range_words(error.allowed))) << said.toStdString();
    EXPECT_FALSE(said.contains(QStringLiteral("höchstens"))) << said.toStdString();
}

INSTANTIATE_TEST_SUITE_P(Languages, InEachLanguage, ::testing::ValuesIn(offered_tags()),
                         [](const auto& language) { return language.param; });

}  // namespace
}  // namespace leadline::testing
