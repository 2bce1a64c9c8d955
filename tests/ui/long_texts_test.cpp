// SPDX-License-Identifier: GPL-3.0-or-later
// The tabs in a language whose texts are two fifths longer than English, on a small laptop's
// screen: what would be cut off is named.
#include <gmock/gmock.h>

#include <QApplication>
#include <QDialog>
#include <QLabel>
#include <QRegularExpression>
#include <QTabWidget>
#include <QTranslator>
#include <algorithm>
#include <cmath>

#include "cut_off_texts.h"
#include "page_room.h"
#include "ui/roster/earlier_dives_dialog.h"
#include "ui/roster/red_list_dialog.h"
#include "ui/roster/stock_dialog.h"
#include "ui/shell/audit_dialog.h"
#include "ui/shell/backups_dialog.h"
#include "ui/shell/people_dialog.h"
#include "ui/shell/sessions_dialog.h"
#include "ui/shell/vault_passphrase_dialog.h"
#include "ui/shell/vault_set_up_dialog.h"
#include "ui/widgets/overrule_dialog.h"
#include "vault_fixture.h"

namespace leadline::testing {
namespace {

/// Every text and two fifths of it again, in words of its own length.
class LongTranslator final : public QTranslator {
public:
    QString translate(const char* /*context*/, const char* source, const char* /*note*/,
                      int /*count*/) const override {
        const QString text = QString::fromUtf8(source);
        // Keys, formats and units stay as they are.
        static const QRegularExpression word(QStringLiteral("\\p{L}{3,}"));
        if (text.startsWith(u"Ctrl+") || text.contains(u"yyyy") || !text.contains(word))
            return text;
        constexpr double more = 0.4;
        auto letters = static_cast<qsizetype>(std::ceil(double(text.size()) * more));
        QString result = text;
        // A longer word, then more words of the length that words have.
        constexpr qsizetype a_word = 7;
        const qsizetype on_the_last = std::min<qsizetype>(letters, 3);
        if (text.back().isLetter()) result += QString(on_the_last, u'n');
        letters -= text.back().isLetter() ? on_the_last : 0;
        while (letters > 1) {
            const qsizetype length = std::min(letters - 1, a_word);
            result += u' ' + QString(length, u'n');
            letters -= length + 1;
        }
        return result;
    }
    [[nodiscard]] bool isEmpty() const override { return false; }
};

class LongTexts : public VaultWindow {
protected:
    void SetUp() override {
        QCoreApplication::installTranslator(&longer_);
        VaultWindow::SetUp();
        window_->resize(1366, 768);
        ASSERT_TRUE(window_->open_file(sample_path("finished-dive")));
    }
    void TearDown() override {
        window_.reset();
        QCoreApplication::removeTranslator(&longer_);
    }

    void expect_none(const CutOffTexts& texts, const std::string& where) {
        EXPECT_TRUE(texts.found().isEmpty()) << where << "\n"
                                             << texts.found().join(u'\n').toStdString();
    }
    void judge_dialog(QDialog& dialog) {
        dialog.show();
        QCoreApplication::processEvents();
        CutOffTexts texts;
        texts.judge_all(dialog);
        expect_none(texts, dialog.windowTitle().toStdString());
        EXPECT_LE(dialog.width(), 1366) << dialog.windowTitle().toStdString();
        EXPECT_LE(dialog.height(), 768) << dialog.windowTitle().toStdString();
        picture(dialog, QString::fromLatin1(dialog.metaObject()->className()));
        dialog.close();
    }
    /// For looking at, where a folder for pictures is named.
    static void picture(QWidget& widget, const QString& name) {
        if (!qEnvironmentVariableIsSet("LEADLINE_PICTURES")) return;
        widget.grab().save(qEnvironmentVariable("LEADLINE_PICTURES") + u'/' +
                           QString(name).remove(u':') + QStringLiteral(".png"));
    }

    LongTranslator longer_;
};

TEST_F(LongTexts, NothingIsCutOffInTheTabs) {
    for (int tab = 0; tab < window_->tabs()->count(); ++tab) {
        window_->tabs()->setCurrentIndex(tab);
        QCoreApplication::processEvents();
        QCoreApplication::processEvents();
        CutOffTexts texts;
        texts.judge_all(*window_);
        expect_none(texts, "tab " + std::to_string(tab + 1));
        // A part of a page may scroll by itself; a page that scrolls as a whole fits.
        if (const auto* area = qobject_cast<QScrollArea*>(window_->tabs()->currentWidget())) {
            EXPECT_LE(needed_by(*area).width(), area->viewport()->width()) << "tab " << tab + 1;
        }
        picture(*window_, QString::number(tab));
    }
    EXPECT_LE(window_->minimumSizeHint().width(), 1366);
    EXPECT_LE(window_->minimumSizeHint().height(), 768);
    EXPECT_EQ(window_->size(), QSize(1366, 768));
}

TEST_F(LongTexts, NothingIsCutOffInTheDialogs) {
    SessionsDialog sessions(*keeper_, window_.get());
    judge_dialog(sessions);
    PeopleDialog people(*keeper_, UnitSystem::metric, window_.get());
    judge_dialog(people);
    BackupsDialog backups(*keeper_, window_.get());
    judge_dialog(backups);
    StockDialog stock(document_, window_.get());
    judge_dialog(stock);
    RedListDialog red_list(keeper_->sessions_to_come(document_.session().date), document_.rules(),
                           window_.get());
    judge_dialog(red_list);
    EarlierDivesDialog dives(document_, document_.session().staff.front().id, {}, window_.get());
    judge_dialog(dives);
    OverruleDialog overrule(FindingText{QStringLiteral("Blue"),
                                        QStringLiteral("Too deep."),
                                        QStringLiteral("Stay shallower."),
                                        {}},
                            QStringLiteral("Mara"), window_.get());
    judge_dialog(overrule);
    VaultSetUpDialog set_up(access(), window_.get());
    judge_dialog(set_up);
    make_vault_directly();
    VaultPassphraseDialog passphrase(access(), window_.get());
    judge_dialog(passphrase);
    AuditDialog audit(access(), window_.get());
    judge_dialog(audit);
}

TEST(CutOffTextsTest, ATextThatIsCutOffIsSeen) {
    QWidget box;
    QLabel label(QStringLiteral("A text that is longer than its place"), &box);
    label.setGeometry(0, 0, 40, 20);
    CutOffTexts texts;
    texts.judge(label);
    EXPECT_EQ(texts.found().size(), 1);
}

}  // namespace
}  // namespace leadline::testing
