// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QApplication>
#include <QDir>
#include <QImage>
#include <QLineEdit>
#include <QListWidget>
#include <QPainter>
#include <QPrinter>
#include <QProcess>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTimer>

#include "ui/sheet/briefing_tab.h"
#include "ui/sheet/cards.h"
#include "ui/sheet/page_preview.h"
#include "ui/sheet/pdf.h"
#include "ui/sheet/print.h"
#include "ui_fixture.h"

namespace leadline::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

std::string output_of(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    EXPECT_TRUE(process.waitForFinished(60'000)) << program.toStdString();
    EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
    return process.readAllStandardOutput().toStdString();
}

class SheetPdf : public DocumentTest {
protected:
    void SetUp() override { open("harbour-morning"); }

    QString write(const char* name = "cards.pdf") {
        const QString path = folder_.filePath(QString::fromUtf8(name));
        const CardSelection selection =
            select_cards(document_.session(), document_.plan(), UnitSystem::metric);
        const Result<int> pages =
            write_cards_pdf(path, selection.cards, CardSize::a6_on_a4, QStringLiteral("Cards"));
        EXPECT_TRUE(pages.has_value());
        return path;
    }
    QTemporaryDir folder_;
};

TEST_F(SheetPdf, HoldsTheTextOfEveryCard) {
    const std::string text = output_of(QStringLiteral("pdftotext"), {write(), QStringLiteral("-")});
    EXPECT_THAT(text, HasSubstr("Oluwaseun Adébáyò"));
    EXPECT_THAT(text, HasSubstr("Nguyễn Thị Minh Châu"));
    EXPECT_THAT(text, HasSubstr("Étienne Beauchêne"));
    EXPECT_THAT(text, HasSubstr("Never hold your breath"));
}

TEST_F(SheetPdf, KeepsLettersApartSoThatWordsAreFound) {
    const std::string text = output_of(QStringLiteral("pdftotext"), {write(), QStringLiteral("-")});
    EXPECT_THAT(text, HasSubstr("No flying"));  // not joined to one letter
    EXPECT_THAT(text, HasSubstr("fill your BCD"));
}

TEST_F(SheetPdf, HoldsNothingPrivate) {
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        for (Guest& guest : session.guests) {
            guest.note = "SECRETNOTE";
            guest.birth_date =
                Date{std::chrono::year(1987), std::chrono::month(11), std::chrono::day(23)};
            guest.body_mass = Kilograms(137.0);
            guest.body_height = Meters(1.93);
            guest.screening.outcome = ScreeningOutcome::physician_required;
            guest.screening.physician_approval_seen = true;
        }
        session.site.emergency_plan = "SECRETPLAN";
    }).has_value());
    const QString path = folder_.filePath(QStringLiteral("private.pdf"));
    std::vector<CardContent> cards;
    for (const Guest& guest : document_.session().guests) {
        cards.push_back(
            card_content(document_.session(), document_.plan(), guest, UnitSystem::metric));
    }
    ASSERT_TRUE(write_cards_pdf(path, cards, CardSize::a6_on_a4, {}).has_value());
    const std::string text = output_of(QStringLiteral("pdftotext"), {path, QStringLiteral("-")});
    EXPECT_THAT(text, HasSubstr("Oluwaseun"));
    for (const char* secret : {"SECRET", "1987", "137", "193", "1.93", "physician", "Lungs"}) {
        EXPECT_THAT(text, Not(HasSubstr(secret)));
    }
}

TEST_F(SheetPdf, EmbedsEveryFont) {
    const std::string fonts = output_of(QStringLiteral("pdffonts"), {write()});
    std::istringstream lines(fonts);
    std::string line;
    int seen = 0;
    for (int row = 0; std::getline(lines, line); ++row) {
        if (row < 2) continue;
        ++seen;
        // name, type, encoding, then: embedded, subset, with a map to Unicode.
        EXPECT_THAT(line, ::testing::ContainsRegex(" yes +(yes|no) +yes +[0-9]"));
    }
    EXPECT_GT(seen, 0);
}

TEST_F(SheetPdf, NamesItself) {
    const std::string info = output_of(QStringLiteral("pdfinfo"), {write()});
    EXPECT_THAT(info, HasSubstr("Title:           Cards"));
    EXPECT_THAT(info, HasSubstr("Pages:           2"));
    EXPECT_THAT(info, HasSubstr("A4"));
}

TEST_F(SheetPdf, AFolderThatIsNotThereIsAnError) {
    const CardSelection selection =
        select_cards(document_.session(), document_.plan(), UnitSystem::metric);
    const Result<int> result = write_cards_pdf(QStringLiteral("/no/such/folder/cards.pdf"),
                                               selection.cards, CardSize::a6_on_a4, {});
    ASSERT_FALSE(result.has_value());
    EXPECT_EQ(result.error().code, ErrorCode::file_unwritable);
}

TEST_F(SheetPdf, AFailureLeavesTheOldFileAsItWas) {
    const QString path = folder_.filePath(QStringLiteral("old.pdf"));
    QFile old(path);
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write("old");
    old.close();
    EXPECT_FALSE(write_cards_pdf(path, {}, CardSize::a6_on_a4, {}).has_value());
    ASSERT_TRUE(old.open(QIODevice::ReadOnly));
    EXPECT_EQ(old.readAll().toStdString(), "old");
}

/// Share of the pixels of two pictures of the same page that differ strongly.
double difference(const QImage& a, const QImage& b) {
    const QImage small_a = a.scaled(210, 297).convertToFormat(QImage::Format_Grayscale8);
    const QImage small_b = b.scaled(210, 297).convertToFormat(QImage::Format_Grayscale8);
    int differing = 0;
    for (int y = 0; y < small_a.height(); ++y) {
        for (int x = 0; x < small_a.width(); ++x) {
            const int delta =
                qGray(small_a.pixel(x, y)) - qGray(small_b.pixel(x, y));
            differing += std::abs(delta) > 80 ? 1 : 0;
        }
    }
    return static_cast<double>(differing) / (small_a.width() * small_a.height());
}

TEST_F(SheetPdf, ThePreviewIsWhatThePdfShows) {
    const QString path = write();
    const QString stem = folder_.filePath(QStringLiteral("page"));
    output_of(QStringLiteral("pdftoppm"), {QStringLiteral("-png"), QStringLiteral("-r"),
                                           QStringLiteral("102"), QStringLiteral("-singlefile"),
                                           path, stem});
    const QImage printed(stem + QStringLiteral(".png"));
    ASSERT_FALSE(printed.isNull());
    const CardSelection selection =
        select_cards(document_.session(), document_.plan(), UnitSystem::metric);
    const std::vector<Page> pages = card_pages(selection.cards, CardSize::a6_on_a4);
    QImage drawn(printed.size(), QImage::Format_RGB32);
    drawn.fill(Qt::white);
    QPainter painter(&drawn);
    painter.setRenderHint(QPainter::Antialiasing);
    SheetPainter().paint(painter, pages.front(), 102.0 / 25.4);
    painter.end();
    EXPECT_LT(difference(printed, drawn), 0.04);
    // The measure can tell: another page differs far more.
    QImage other(printed.size(), QImage::Format_RGB32);
    other.fill(Qt::white);
    EXPECT_GT(difference(printed, other), 0.10);
}

TEST_F(SheetPdf, ThePrinterGetsTheSamePages) {
    const CardSelection selection =
        select_cards(document_.session(), document_.plan(), UnitSystem::metric);
    const std::vector<Page> pages = card_pages(selection.cards, CardSize::quarter_letter);
    QPrinter printer(QPrinter::HighResolution);
    const QString path = folder_.filePath(QStringLiteral("printed.pdf"));
    printer.setOutputFileName(path);
    printer.setOutputFormat(QPrinter::PdfFormat);
    prepare_printer(printer, Paper::letter);
    const PrintOutcome outcome = print_pages(printer, pages);
    EXPECT_TRUE(outcome.started);
    EXPECT_EQ(outcome.pages, 2);
    const QStringList quiet{QStringLiteral("-layout"), path, QStringLiteral("-")};
    const std::string printed = output_of(QStringLiteral("pdftotext"), quiet);
    const QString saved = folder_.filePath(QStringLiteral("saved.pdf"));
    ASSERT_TRUE(write_pages_pdf(saved, pages, {}).has_value());
    EXPECT_EQ(printed, output_of(QStringLiteral("pdftotext"),
                                 {QStringLiteral("-layout"), saved, QStringLiteral("-")}));
    EXPECT_THAT(output_of(QStringLiteral("pdfinfo"), {path}), HasSubstr("612 x 792 pts"));
}

class BriefingTabTest : public SheetPdf {
protected:
    void click(BriefingTab& tab, const char* name) {
        QTest::mouseClick(child<QWidget>(tab, name), Qt::LeftButton);
    }
};

TEST_F(BriefingTabTest, ShowsEveryCardAndTurnsPages) {
    BriefingTab tab(document_);
    tab.resize(1000, 700);
    tab.show();
    EXPECT_EQ(tab.preview()->count(), 2);
    click(tab, "briefing_next");
    EXPECT_EQ(tab.preview()->current(), 1);
    QTest::keyClick(tab.preview(), Qt::Key_PageUp);
    EXPECT_EQ(tab.preview()->current(), 0);
}

TEST_F(BriefingTabTest, SavesThePdfWithAClick) {
    BriefingTab tab(document_);
    const QString path = folder_.filePath(QStringLiteral("clicked.pdf"));
    tab.set_pdf_path_chooser([&] { return path; });
    tab.show();
    click(tab, "briefing_save_pdf");
    EXPECT_THAT(output_of(QStringLiteral("pdftotext"), {path, QStringLiteral("-")}),
                HasSubstr("Étienne"));
    EXPECT_THAT(tab.status().toStdString(), HasSubstr("clicked.pdf"));
}

TEST_F(BriefingTabTest, SaysWhyAPdfCannotBeSaved) {
    BriefingTab tab(document_);
    tab.set_pdf_path_chooser([] { return QStringLiteral("/no/such/folder/x.pdf"); });
    tab.show();
    click(tab, "briefing_save_pdf");
    EXPECT_THAT(tab.status().toStdString(), HasSubstr("/no/such/folder/x.pdf"));
}

TEST_F(BriefingTabTest, NoneAndAllTickTheCards) {
    BriefingTab tab(document_);
    tab.show();
    click(tab, "briefing_none");
    EXPECT_EQ(tab.preview()->count(), 0);
    EXPECT_FALSE(child<QWidget>(tab, "briefing_save_pdf")->isEnabled());
    click(tab, "briefing_all");
    EXPECT_EQ(tab.preview()->count(), 2);
}

TEST_F(BriefingTabTest, AStopTakesTheCardAwayAtOnce) {
    BriefingTab tab(document_);
    tab.show();
    const QStringList before = words_on(tab.preview()->pages().front());
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.guests[1].screening.outcome = ScreeningOutcome::unanswered;
    }).has_value());
    const QStringList after = words_on(tab.preview()->pages().front());
    EXPECT_TRUE(before.join(u' ').contains(QStringLiteral("Oluwaseun")));
    EXPECT_FALSE(after.join(u' ').contains(QStringLiteral("Oluwaseun")));
}

TEST_F(BriefingTabTest, SaysThatNoPrinterIsInstalled) {
    BriefingTab tab(document_);
    tab.set_printer_check([] { return false; });
    tab.show();
    click(tab, "briefing_print");
    EXPECT_THAT(tab.status().toStdString(), HasSubstr("No printer is installed"));
}

TEST_F(BriefingTabTest, OutOfSightNothingIsSetUntilItIsShown) {
    BriefingTab tab(document_);
    EXPECT_EQ(tab.preview()->count(), 0);
    tab.show();
    EXPECT_EQ(tab.preview()->count(), 2);
    tab.hide();
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.guests.resize(3);
    }).has_value());
    EXPECT_EQ(tab.preview()->count(), 2);
    tab.show();
    EXPECT_EQ(tab.preview()->count(), 1);
}

TEST_F(BriefingTabTest, ADecisionWithItsReasonGivesTheCardBack) {
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.guests[0].screening.outcome = ScreeningOutcome::unanswered;
    }).has_value());
    BriefingTab tab(document_);
    tab.show();
    const auto shows_first = [&] {
        const QString first = QString::fromStdString(document_.session().guests[0].name);
        return words_on(tab.preview()->pages().front()).contains(first.simplified());
    };
    EXPECT_FALSE(shows_first());
    auto* list = child<QListWidget>(tab, "card_list");
    list->setCurrentRow(0);
    bool answered = false;
    QTimer::singleShot(0, &tab, [&] {
        auto* dialog = QApplication::activeModalWidget();
        ASSERT_NE(dialog, nullptr);
        auto* accept = dialog->findChild<QPushButton*>(QStringLiteral("overrule_accept"));
        EXPECT_FALSE(accept->isEnabled());  // not without a reason
        QTest::keyClicks(dialog->findChild<QWidget*>(QStringLiteral("overrule_reason")),
                         QStringLiteral("Asked aloud, all answered no"));
        auto* by = dialog->findChild<QLineEdit*>(QStringLiteral("overrule_by"));
        by->setText(QStringLiteral("Komang Aryawan"));
        answered = accept->isEnabled();
        QTest::mouseClick(accept, Qt::LeftButton);
    });
    click(tab, "briefing_overrule");
    EXPECT_TRUE(answered);
    ASSERT_EQ(document_.session().overrules.size(), 1U);
    EXPECT_EQ(document_.session().overrules.front().reason, "Asked aloud, all answered no");
    EXPECT_TRUE(shows_first());
}

TEST_F(BriefingTabTest, ShowAsksForWhatStopsTheCard) {
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& session) {
        session.guests[1].screening.outcome = ScreeningOutcome::unanswered;
    }).has_value());
    BriefingTab tab(document_);
    tab.show();
    std::vector<Subject> asked;
    QObject::connect(&tab, &BriefingTab::subject_requested, &tab,
                     [&](const Subject& subject) { asked.push_back(subject); });
    child<QListWidget>(tab, "card_list")->setCurrentRow(0);
    EXPECT_FALSE(child<QWidget>(tab, "briefing_show")->isEnabled());
    child<QListWidget>(tab, "card_list")->setCurrentRow(1);
    click(tab, "briefing_show");
    ASSERT_EQ(asked.size(), 1U);
    EXPECT_EQ(asked.front(), Subject(document_.session().guests[1].id));
}

TEST_F(BriefingTabTest, QuarterLetterIsOneChoiceAway) {
    BriefingTab tab(document_);
    tab.show();
    auto* size = child<QWidget>(tab, "briefing_size");
    size->setFocus();
    QTest::keyClick(size, Qt::Key_Down);
    EXPECT_EQ(tab.preview()->pages().front().paper, Paper::letter);
}

}  // namespace
}  // namespace leadline::testing
