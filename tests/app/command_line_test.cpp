// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <map>
#include <nlohmann/json.hpp>

#include "ui/guest_words/card_words.h"

// The program itself, run as a user at a terminal would.

namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

struct Outcome {
    int code = -1;
    std::string out;
    std::string err;
};

Outcome run(const QStringList& arguments, const QString& folder = {}, bool display = true,
            const QString& system_language = {}) {
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    if (!system_language.isEmpty()) {
        environment.insert(QStringLiteral("LC_ALL"), system_language);
        environment.remove(QStringLiteral("LANGUAGE"));
    }
    if (!display) {
        environment.remove(QStringLiteral("DISPLAY"));
        environment.remove(QStringLiteral("WAYLAND_DISPLAY"));
        environment.remove(QStringLiteral("QT_QPA_PLATFORM"));
    }
    process.setProcessEnvironment(environment);
    if (!folder.isEmpty()) process.setWorkingDirectory(folder);
    process.start(QStringLiteral(LEADLINE_PROGRAM), arguments);
    EXPECT_TRUE(process.waitForFinished(120'000));
    return {process.exitStatus() == QProcess::NormalExit ? process.exitCode() : -2,
            process.readAllStandardOutput().toStdString(),
            process.readAllStandardError().toStdString()};
}

QString sample(const char* name) {
    return QStringLiteral(LEADLINE_SOURCE_DIR "/sample-sessions/") + QString::fromUtf8(name) +
           QStringLiteral(".json");
}

QString broken(const QString& name) {
    return QStringLiteral(LEADLINE_TEST_DATA_DIR "/broken/") + name;
}

/// Text of a PDF as a reader would copy it.
std::string pdf_text(const QString& path) {
    QProcess process;
    process.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path,
                                                QStringLiteral("-")});
    EXPECT_TRUE(process.waitForFinished(60'000));
    return process.readAllStandardOutput().toStdString();
}

/// Names of the guests of a session file.
std::vector<std::string> guest_names(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    const auto json = nlohmann::json::parse(file.readAll().toStdString());
    std::vector<std::string> names;
    for (const auto& guest : json.at("guests")) names.push_back(guest.at("name"));
    return names;
}

/// The languages that the guests of a session file read, a guest a language.
std::vector<std::string> guest_languages_of(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    const auto json = nlohmann::json::parse(file.readAll().toStdString());
    std::vector<std::string> languages;
    for (const auto& guest : json.at("guests")) languages.push_back(guest.at("language"));
    return languages;
}

TEST(CommandLine, SpeaksTheLanguageAskedFor) {
    const Outcome outcome = run({QStringLiteral("--language"), QStringLiteral("de"),
                                 QStringLiteral("plan"), sample("salt-cove")});
    EXPECT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_THAT(outcome.out, HasSubstr("Stand: 0 Stopp"));
}

TEST(CommandLine, SpeaksTheLanguageOfTheSystemOrEnglish) {
    const QStringList plan{QStringLiteral("plan"), sample("salt-cove")};
    EXPECT_THAT(run(plan, {}, true, QStringLiteral("de_AT.UTF-8")).out,
                HasSubstr("Stand: 0 Stopp"));
    EXPECT_THAT(run(plan, {}, true, QStringLiteral("is_IS.UTF-8")).out,
                HasSubstr("Readiness: 0 stop"));
}

TEST(CommandLine, NamesTheLanguagesWhenAskedForAnother) {
    const Outcome outcome = run({QStringLiteral("--language"), QStringLiteral("xx"),
                                 QStringLiteral("plan"), sample("salt-cove")});
    EXPECT_EQ(outcome.code, 2);
    EXPECT_THAT(outcome.err, HasSubstr("\"xx\" is no language of the window. There are: en, de"));
}

TEST(CommandLine, NumbersInJsonAreTheSameInEveryLanguage) {
    const QStringList plan{QStringLiteral("plan"), QStringLiteral("--json"), sample("salt-cove")};
    const auto english = nlohmann::json::parse(run(plan).out);
    const auto german =
        nlohmann::json::parse(run(plan, {}, true, QStringLiteral("de_DE.UTF-8")).out);
    EXPECT_EQ(english.at("guests"), german.at("guests"));
}

class EachSample : public ::testing::TestWithParam<const char*> {};

TEST_P(EachSample, PlansAndMayDive) {
    const Outcome outcome = run({QStringLiteral("plan"), sample(GetParam())});
    EXPECT_EQ(outcome.code, 0) << outcome.out << outcome.err;
    EXPECT_THAT(outcome.out, HasSubstr("Readiness: 0 stop"));
}

TEST_P(EachSample, GivesJsonWhoseKeysNameTheirUnits) {
    const Outcome outcome =
        run({QStringLiteral("plan"), sample(GetParam()), QStringLiteral("--json")});
    ASSERT_EQ(outcome.code, 0) << outcome.err;
    const auto json = nlohmann::json::parse(outcome.out);
    EXPECT_THAT(outcome.out, HasSubstr("\"bottom_pressure_bar\""));
    EXPECT_TRUE(json.contains("findings"));
    EXPECT_EQ(json.at("guests").size(), guest_names(sample(GetParam())).size());
}

TEST_P(EachSample, GivesACardForEveryGuest) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("cards.pdf"));
    const Outcome outcome =
        run({QStringLiteral("cards"), sample(GetParam()), QStringLiteral("--output"), path});
    ASSERT_EQ(outcome.code, 0) << outcome.err;
    // A reader may get a Han letter as its look-alike radical: NFKC makes them one.
    const QString text =
        QString::fromStdString(pdf_text(path)).normalized(QString::NormalizationForm_KC);
    for (const std::string& name : guest_names(sample(GetParam()))) {
        // A long name may be broken over two lines: its first word must stand there.
        const QString word = QString::fromStdString(name).split(u' ').first();
        // Readers give back right-to-left letters in the order drawn and in their joined forms, not
        // as written; the page itself is right.
        if (word.isRightToLeft()) continue;
        EXPECT_TRUE(text.contains(word)) << name;
    }
    // The one rule in every guest's own language.
    const QString letters = QString(text).remove(QRegularExpression(QStringLiteral("\\s")));
    std::map<QString, int> rules;
    for (const std::string& language : guest_languages_of(sample(GetParam()))) {
        ++rules[leadline::card_word(leadline::CardWord::never_hold_breath,
                                   leadline::GuestTongue::of(language))];
    }
    for (const auto& [rule, count] : rules) {
        const QString bare = QString(rule).remove(QRegularExpression(QStringLiteral("\\s")));
        EXPECT_EQ(letters.count(bare), count) << rule.toStdString();
    }
}

TEST_P(EachSample, GivesEverySheet) {
    QTemporaryDir folder;
    for (const QString& kind : {QStringLiteral("beach"), QStringLiteral("skills"),
                               QStringLiteral("kit"), QStringLiteral("emergency"),
                               QStringLiteral("pictures")}) {
        const QString path = folder.filePath(kind + QStringLiteral(".pdf"));
        const Outcome outcome =
            run({QStringLiteral("sheet"), sample(GetParam()), QStringLiteral("--kind"), kind,
                 QStringLiteral("--output"), path});
        ASSERT_EQ(outcome.code, 0) << outcome.err;
        EXPECT_THAT(pdf_text(path), Not(IsEmpty())) << kind.toStdString();
        const auto others =
            QFile::permissions(path) & (QFileDevice::ReadGroup | QFileDevice::ReadOther);
        EXPECT_TRUE(kind != QStringLiteral("beach") || !others) << "staff only";
    }
}

/// What a PDF says of itself: its title and the language of its pages.
std::string pdf_info(const QString& path) {
    QProcess process;
    process.start(QStringLiteral("pdfinfo"), {path});
    EXPECT_TRUE(process.waitForFinished(60'000));
    return process.readAllStandardOutput().toStdString();
}
std::string pdf_language(const QString& path) {
    QProcess process;
    process.start(QStringLiteral("qpdf"),
                  {QStringLiteral("--qdf"), path, QStringLiteral("-")});
    EXPECT_TRUE(process.waitForFinished(60'000));
    const QString all = QString::fromLatin1(process.readAllStandardOutput());
    return QRegularExpression(QStringLiteral("/Lang \\(([^)]*)\\)")).match(all).captured(1).toStdString();
}

TEST(CommandLine, ThePicturesAreInTheLanguageOfTheGuestsNotOfTheWindow) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("pictures.pdf"));
    QStringList call{QStringLiteral("sheet"), sample("salt-cove"), QStringLiteral("--kind"),
                     QStringLiteral("pictures"), QStringLiteral("--language"), QStringLiteral("de"),
                     QStringLiteral("--output"), path};
    const auto rule = [](const char* tag) {
        return leadline::card_word(leadline::CardWord::never_hold_breath,
                                   leadline::GuestTongue::of(tag)).toStdString();
    };
    ASSERT_EQ(run(call).code, 0);
    EXPECT_THAT(pdf_text(path), HasSubstr(rule("en")));
    EXPECT_EQ(pdf_language(path), "en");
    call << QStringLiteral("--guest-language") << QStringLiteral("fr,it");
    const Outcome both = run(call);
    ASSERT_EQ(both.code, 0) << both.err;
    EXPECT_THAT(pdf_text(path), HasSubstr(rule("it")));
    EXPECT_EQ(pdf_language(path), "fr");
    EXPECT_THAT(pdf_info(path), HasSubstr(": Bilder"));
    for (const char* wrong : {"xh", "fr,xh", "fr,it,de", ","}) {
        QStringList bad = call;
        bad.back() = QString::fromLatin1(wrong);
        const Outcome refused = run(bad);
        EXPECT_EQ(refused.code, 2) << wrong;
        EXPECT_THAT(refused.err, HasSubstr("zh-Hans")) << wrong;
    }
}

TEST(CommandLine, CardsComeInEverySizeAndSayWhichAreDrafts) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("cards.pdf"));
    const std::pair<const char*, const char*> sizes[] = {
        {"a6", "(A4)"},         {"a6-paper", "297 x 420"}, {"a5", "(A4)"},
        {"a5-paper", "(A5)"},  {"a4", "(A4)"},        {"quarter-letter", "(letter)"},
        {"half-letter", "(letter)"}, {"letter", "(letter)"},
    };
    for (const auto& [size, paper] : sizes) {
        const Outcome outcome =
            run({QStringLiteral("cards"), sample("mountain-lake"), QStringLiteral("--size"),
                 QString::fromLatin1(size), QStringLiteral("--output"), path});
        ASSERT_EQ(outcome.code, 0) << outcome.err;
        EXPECT_THAT(pdf_info(path), HasSubstr(paper)) << size;
        EXPECT_THAT(outcome.err, HasSubstr("German: a draft, not checked by a speaker."));
    }
    const Outcome refused =
        run({QStringLiteral("cards"), sample("mountain-lake"), QStringLiteral("--size"),
             QStringLiteral("a3"), QStringLiteral("--output"), path});
    EXPECT_EQ(refused.code, 2);
    EXPECT_THAT(refused.err, HasSubstr("a6, a6-paper, a5"));
}

TEST(CommandLine, SaysWhichSheetsThereAre) {
    const Outcome outcome =
        run({QStringLiteral("sheet"), sample("salt-cove"), QStringLiteral("--kind"),
             QStringLiteral("menu"), QStringLiteral("--output"), QStringLiteral("x.pdf")});
    EXPECT_EQ(outcome.code, 2);
    EXPECT_THAT(outcome.err, HasSubstr("beach, skills, kit, emergency, pictures"));
    const Outcome nowhere = run({QStringLiteral("sheet"), sample("salt-cove")});
    EXPECT_EQ(nowhere.code, 2);
    EXPECT_THAT(nowhere.err, HasSubstr("--output"));
}

TEST_P(EachSample, GivesQuarterLetterCardsToo) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("cards.pdf"));
    const Outcome outcome =
        run({QStringLiteral("cards"), sample(GetParam()), QStringLiteral("--letter"),
             QStringLiteral("--imperial"), QStringLiteral("--output"), path});
    ASSERT_EQ(outcome.code, 0) << outcome.err;
    const std::string text = pdf_text(path);
    EXPECT_THAT(text, HasSubstr("psi"));
    EXPECT_THAT(text, Not(HasSubstr(" bar")));
}

INSTANTIATE_TEST_SUITE_P(Samples, EachSample,
                         ::testing::Values("salt-cove", "mountain-lake", "harbour-morning",
                                           "finished-dive"),
                         [](const auto& one) {
                             std::string name = one.param;
                             std::erase(name, '-');
                             return name;
                         });

TEST(CommandLine, ReviewsAFinishedDive) {
    const Outcome outcome =
        run({QStringLiteral("review"), sample("finished-dive"), QStringLiteral("--json")});
    // The sample holds one exceeded limit on purpose, so a stop stands.
    EXPECT_EQ(outcome.code, 1) << outcome.err;
    const auto json = nlohmann::json::parse(outcome.out);
    EXPECT_THAT(outcome.out, HasSubstr("actual_rmv_l_per_min"));
    EXPECT_FALSE(json.at("findings").empty());
}

TEST(CommandLine, ReviewWithoutALogIsBadInput) {
    const Outcome outcome = run({QStringLiteral("review"), sample("salt-cove")});
    EXPECT_EQ(outcome.code, 2);
    EXPECT_THAT(outcome.err, HasSubstr("log"));
}

TEST(CommandLine, BadInputNamesFilePlaceAndRemedy) {
    const QDir folder(QStringLiteral(LEADLINE_TEST_DATA_DIR "/broken"));
    const QStringList names = folder.entryList({QStringLiteral("*.json")}, QDir::Files);
    ASSERT_GE(names.size(), 12);
    for (const QString& name : names) {
        const Outcome outcome = run({QStringLiteral("plan"), broken(name)});
        EXPECT_EQ(outcome.code, 2) << name.toStdString();
        EXPECT_THAT(outcome.out, IsEmpty()) << name.toStdString();
        EXPECT_THAT(outcome.err, HasSubstr(name.toStdString()));
    }
}

TEST(CommandLine, AMissingFileIsBadInput) {
    const Outcome outcome = run({QStringLiteral("plan"), QStringLiteral("/no/such/file.json")});
    EXPECT_EQ(outcome.code, 2);
    EXPECT_THAT(outcome.err, HasSubstr("/no/such/file.json"));
}

TEST(CommandLine, CardsAreRefusedWhileAStopStands) {
    QTemporaryDir folder;
    QFile source(sample("salt-cove"));
    ASSERT_TRUE(source.open(QIODevice::ReadOnly));
    auto json = nlohmann::json::parse(source.readAll().toStdString());
    json["guests"][0]["screening"].erase("outcome");
    const QString path = folder.filePath(QStringLiteral("open-question.json"));
    QFile target(path);
    ASSERT_TRUE(target.open(QIODevice::WriteOnly));
    target.write(QByteArray::fromStdString(json.dump()));
    target.close();

    const QString cards = folder.filePath(QStringLiteral("cards.pdf"));
    const Outcome outcome =
        run({QStringLiteral("cards"), path, QStringLiteral("--output"), cards});
    EXPECT_EQ(outcome.code, 1);
    const std::string refused = json["guests"][0]["name"];
    EXPECT_THAT(outcome.err, HasSubstr(refused));
    EXPECT_THAT(pdf_text(cards), Not(HasSubstr(refused)));
    EXPECT_EQ(run({QStringLiteral("plan"), path}).code, 1);
}

TEST(CommandLine, AnUnwritableOutputIsBadInput) {
    const Outcome outcome = run({QStringLiteral("cards"), sample("salt-cove"),
                                 QStringLiteral("--output"), QStringLiteral("/no/such/x.pdf")});
    EXPECT_EQ(outcome.code, 2);
    EXPECT_THAT(outcome.err, HasSubstr("/no/such/x.pdf"));
}

TEST(CommandLine, HelpAndVersion) {
    const Outcome help = run({QStringLiteral("--help")}, {}, false);
    EXPECT_EQ(help.code, 0);
    for (const char* word : {"plan", "cards", "review", "--json", "--output", "--database"}) {
        EXPECT_THAT(help.out, HasSubstr(word));
    }
    const Outcome version = run({QStringLiteral("--version")}, {}, false);
    EXPECT_EQ(version.code, 0);
    EXPECT_THAT(version.out, HasSubstr("leadline "));
}

TEST(CommandLine, MisuseSaysHowToCallIt) {
    for (const QStringList& arguments :
         {QStringList{QStringLiteral("plan")}, QStringList{QStringLiteral("--nonsense")},
          QStringList{QStringLiteral("cards"), sample("salt-cove")}}) {
        const Outcome outcome = run(arguments);
        EXPECT_EQ(outcome.code, 2);
        EXPECT_THAT(outcome.err, HasSubstr("--help"));
    }
}

TEST(CommandLine, WithoutADisplayTheSessionIsShownAndTheCardsAreWritten) {
    QTemporaryDir folder;
    const Outcome outcome = run({sample("salt-cove")}, folder.path(), false);
    EXPECT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_THAT(outcome.err, HasSubstr("No display"));
    EXPECT_THAT(outcome.out, HasSubstr("Readiness"));
    EXPECT_TRUE(QFile::exists(folder.filePath(QStringLiteral("salt-cove-cards.pdf"))));
}

TEST(CommandLine, PicturesOfEveryTabCanBeMade) {
    QTemporaryDir folder;
    const Outcome outcome =
        run({sample("salt-cove"), QStringLiteral("--pictures"),
             folder.filePath(QStringLiteral("p")), QStringLiteral("--database"),
             QStringLiteral(":memory:")});
    EXPECT_EQ(outcome.code, 0) << outcome.err;
    const QDir made(folder.filePath(QStringLiteral("p")));
    const auto pages = made.entryList({QStringLiteral("guest-screen-*.png")}).size();
    EXPECT_EQ(pages, 13) << "stops of the guest screen";
    EXPECT_EQ(made.entryList({QStringLiteral("*.png")}).size() - pages, 8) << "tabs";
}

TEST(CommandLine, OpeningASampleLeavesTheRecordsEmpty) {
    QTemporaryDir folder;
    const QString database = folder.filePath(QStringLiteral("records.sqlite"));
    run({sample("salt-cove"), QStringLiteral("--pictures"), folder.filePath(QStringLiteral("p")),
         QStringLiteral("--database"), database});
    const Outcome again =
        run({sample("salt-cove"), QStringLiteral("--pictures"),
             folder.filePath(QStringLiteral("p")), QStringLiteral("--database"), database});
    EXPECT_EQ(again.code, 0);
    QFile file(database);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const std::string first_guest = guest_names(sample("salt-cove")).front();
    EXPECT_THAT(file.readAll().toStdString(), Not(HasSubstr(first_guest)));
}

}  // namespace
