// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QApplication>
#include <QDir>
#include <QLineEdit>
#include <QListWidget>
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

    QTemporaryDir folder_;
};

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
    // A printer's file may name another letter of the same shape, and another kind of space.
    const auto letters = [](const std::string& text) {
        QString all = QString::fromStdString(text).normalized(QString::NormalizationForm_KC);
        return all.removeIf([](QChar one) { return one.isSpace(); });
    };
    const QString printed = letters(output_of(QStringLiteral("pdftotext"), quiet));
    const QString saved = folder_.filePath(QStringLiteral("saved.pdf"));
    ASSERT_TRUE(write_pages_pdf(saved, pages, PdfInfo{}).has_value());
    EXPECT_EQ(printed, letters(output_of(QStringLiteral("pdftotext"),
                                         {QStringLiteral("-layout"), saved, QStringLiteral("-")})));
    EXPECT_THAT(output_of(QStringLiteral("pdfinfo"), {path}), HasSubstr("612 x 792 pts"));
}

TEST_F(SheetPdf, ThePrinterTurnsPagesThatLie) {
    const CardSelection selection =
        select_cards(document_.session(), document_.plan(), UnitSystem::metric);
    const std::vector<Page> pages = card_pages(selection.cards, CardSize::a5_on_a4);
    QPrinter printer(QPrinter::HighResolution);
    const QString path = folder_.filePath(QStringLiteral("turned.pdf"));
    printer.setOutputFileName(path);
    printer.setOutputFormat(QPrinter::PdfFormat);
    prepare_printer(printer, Paper::a4);
    EXPECT_EQ(print_pages(printer, pages).pages, 4);
    EXPECT_THAT(output_of(QStringLiteral("pdfinfo"), {path}), HasSubstr("842 x 595 pts"));
}

class BriefingTabTest : public SheetPdf {
protected:
    void click(BriefingTab& tab, const char* name) {
        QTest::mouseClick(child<QWidget>(tab, name), Qt::LeftButton);
    }
    /// Saves with a click and waits until the tab says how it went.
    void save(BriefingTab& tab) {
        click(tab, "briefing_save_pdf");
        EXPECT_TRUE(QTest::qWaitFor([&] { return !tab.status().isEmpty(); }, 60'000));
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
    save(tab);
    EXPECT_THAT(output_of(QStringLiteral("pdftotext"), {path, QStringLiteral("-")}),
                HasSubstr("Étienne"));
    EXPECT_THAT(tab.status().toStdString(), HasSubstr("clicked.pdf"));
}

TEST_F(BriefingTabTest, SaysWhyAPdfCannotBeSaved) {
    BriefingTab tab(document_);
    tab.set_pdf_path_chooser([] { return QStringLiteral("/no/such/folder/x.pdf"); });
    tab.show();
    save(tab);
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
