// SPDX-License-Identifier: GPL-3.0-or-later
// The window in a language that puts every text into ⟦ ⟧: what stands outside was never handed to
// the translators.
#include <gmock/gmock.h>

#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QDirIterator>
#include <QDoubleSpinBox>
#include <QGroupBox>
#include <QHeaderView>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QMenu>
#include <QMenuBar>
#include <QPlainTextEdit>
#include <QRegularExpression>
#include <QSet>
#include <QSpinBox>
#include <QTabBar>
#include <QTextDocument>
#include <QTranslator>
#include <algorithm>

#include "ui/guest_words/guest_language.h"
#include "ui/roster/booking_import_dialog.h"
#include "ui/roster/earlier_dives_dialog.h"
#include "ui/roster/red_list_dialog.h"
#include "ui/roster/stock_dialog.h"
#include "ui/shell/audit_dialog.h"
#include "ui/shell/backups_dialog.h"
#include "ui/shell/duplicates_dialog.h"
#include "ui/shell/people_dialog.h"
#include "ui/shell/sessions_dialog.h"
#include "ui/shell/vault_passphrase_dialog.h"
#include "ui/shell/vault_set_up_dialog.h"
#include "ui/widgets/overrule_dialog.h"
#include "ui/words/finding_words.h"
#include "ui/words/name_words.h"
#include "ui/words/window_language.h"
#include "vault_fixture.h"

namespace leadline::testing {
namespace {

constexpr char16_t opening = u'⟦';
constexpr char16_t closing = u'⟧';

/// Puts every text it is asked for into brackets.
class BracketTranslator final : public QTranslator {
public:
    QString translate(const char* /*context*/, const char* source, const char* /*note*/,
                      int /*count*/) const override {
        const QString text = QString::fromUtf8(source);
        // Keys are no words.
        if (text.startsWith(u"Ctrl+") || text.isEmpty()) return text;
        return opening + text + closing;
    }
    [[nodiscard]] bool isEmpty() const override { return false; }
};

/// What stands outside of all brackets.
QString outside_brackets(const QString& text) {
    QString outside;
    int depth = 0;
    for (const QChar letter : text) {
        if (letter == opening) ++depth;
        if (depth == 0) outside += letter;
        if (letter == closing) depth = std::max(0, depth - 1);
    }
    return outside;
}

void add_words(const QString& text, QSet<QString>& words) {
    static const QRegularExpression word(QStringLiteral("[\\p{L}']{2,}"));
    for (auto match = word.globalMatch(text); match.hasNext();) {
        words.insert(match.next().captured().toLower());
    }
}

/// Texts of a file that are names or sentences of people, not the file's own choices ("calm").
void add_phrases(const QJsonValue& value, QStringList& phrases) {
    const QString text = value.toString();
    if (text.size() > 1 && (text != text.toLower() || text.contains(u' '))) phrases << text;
    for (const QJsonValue& entry : value.toArray()) add_phrases(entry, phrases);
    const QJsonObject object = value.toObject();
    for (const QJsonValue& entry : object) add_phrases(entry, phrases);
}

QStringList phrases_of_json(const QString& path) {
    QStringList phrases;
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    const QJsonDocument document = QJsonDocument::fromJson(file.readAll());
    EXPECT_TRUE(document.isObject()) << path.toStdString();
    add_phrases(QJsonValue(document.object()), phrases);
    return phrases;
}

class PseudoLanguage : public VaultWindow {
protected:
    void SetUp() override {
        QCoreApplication::installTranslator(&brackets_);
        VaultWindow::SetUp();
        allow_data();
    }
    void TearDown() override {
        window_.reset();
        QCoreApplication::removeTranslator(&brackets_);
    }

    /// Names, places and rules are data; names of languages come from ICU, units from the SI.
    void allow_data() {
        for (const char* name : {"salt-cove", "finished-dive", "mountain-lake"}) {
            data_ << phrases_of_json(sample_path(name));
        }
        QDirIterator rules(QStringLiteral(":/leadline/rules"), {QStringLiteral("*.json")});
        const QString unsourced = QStringLiteral("common practice, no source");
        while (rules.hasNext()) {
            for (const QString& phrase : phrases_of_json(rules.next())) {
                data_ << phrase;
                // These words are said in the language; what follows them is data.
                if (phrase.startsWith(unsourced) && phrase != unsourced) {
                    data_ << phrase.mid(unsourced.size());
                }
            }
        }
        for (const QString& tag : common_languages()) data_ << language_name(tag.toStdString());
        for (const char* tag : {"zu", "ga"}) data_ << language_name(tag);
        for (const WindowLanguage& language : window_languages()) data_ << language.own_name;
        for (const GuestLanguage& language : guest_languages()) data_ << language.own_name;
        for (const char* sample : {"Finished dive", "Harbour morning", "Many tongues",
                                   "Mountain lake", "Salt cove",
                                   "Leadline", "Mara"}) {
            data_ << QString::fromUtf8(sample);
        }
        data_ << folder_.path();
        // Names of days and months are the locale's.
        for (const auto format : {QLocale::LongFormat, QLocale::ShortFormat}) {
            for (int i = 1; i <= 12; ++i) data_ << QLocale().monthName(i, format);
            for (int i = 1; i <= 7; ++i) data_ << QLocale().dayName(i, format);
        }
        std::ranges::sort(data_, [](const QString& one, const QString& other) {
            return one.size() > other.size();
        });
        // What people typed for a mask: "standard", "small".
        add_words(QStringLiteral("standard small bar psi min cm kg lb ft hPa EU cu in inHg mm "
                                 "Ctrl Shift Del Ins Esc Alt Return"),
                  allowed_);
    }

    void judge(const QString& where, const QString& text) {
        QString plain = text;
        if (Qt::mightBeRichText(text)) {
            QTextDocument rich;
            rich.setHtml(text);
            plain = rich.toPlainText();
        }
        plain.remove(u'&');
        ++seen_;
        QString outside = outside_brackets(plain);
        for (const QString& name : data_) outside.replace(name, QStringLiteral(" "));
        QSet<QString> words;
        add_words(outside, words);
        for (const QString& word : words) {
            if (!allowed_.contains(word)) {
                found_.insert(where + QStringLiteral(": ") + text);
                return;
            }
        }
    }
    void judge_action(const QAction& action, const QString& where) {
        judge(where + QStringLiteral(" action"), action.text());
        judge(where + QStringLiteral(" action tip"), action.toolTip());
        if (action.menu() == nullptr) return;
        for (const QAction* inner : action.menu()->actions()) judge_action(*inner, where);
    }
    void judge_model(const QAbstractItemModel& model, const QModelIndex& parent,
                     const QString& where) {
        constexpr int most_rows = 30;
        for (int row = 0; row < std::min(most_rows, model.rowCount(parent)); ++row) {
            for (int column = 0; column < model.columnCount(parent); ++column) {
                const QModelIndex cell = model.index(row, column, parent);
                for (const int role :
                     {int(Qt::DisplayRole), int(Qt::ToolTipRole), int(Qt::AccessibleTextRole),
                      int(Qt::AccessibleDescriptionRole)}) {
                    judge(where + QStringLiteral(" cell %1 role %2").arg(column).arg(role),
                          cell.data(role).toString());
                }
                judge_model(model, cell, where);
            }
        }
        if (parent.isValid()) return;
        for (int column = 0; column < model.columnCount(); ++column) {
            for (const int role : {int(Qt::DisplayRole), int(Qt::ToolTipRole)}) {
                judge(where + QStringLiteral(" heading"),
                      model.headerData(column, Qt::Horizontal, role).toString());
            }
        }
    }
    void judge_widget(const QWidget& widget, const QString& place) {
        const QString where = place + u' ' + QString::fromUtf8(widget.metaObject()->className()) +
                              u' ' + widget.objectName();
        judge(where + QStringLiteral(" name"), widget.accessibleName());
        judge(where + QStringLiteral(" description"), widget.accessibleDescription());
        judge(where + QStringLiteral(" tip"), widget.toolTip());
        if (widget.isWindow()) judge(where + QStringLiteral(" title"), widget.windowTitle());
        for (const QAction* action : widget.actions()) judge_action(*action, where);
        if (const auto* label = qobject_cast<const QLabel*>(&widget)) judge(where, label->text());
        if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) {
            judge(where, button->text());
        }
        if (const auto* box = qobject_cast<const QGroupBox*>(&widget)) judge(where, box->title());
        if (const auto* line = qobject_cast<const QLineEdit*>(&widget)) {
            judge(where + QStringLiteral(" placeholder"), line->placeholderText());
        }
        if (const auto* edit = qobject_cast<const QPlainTextEdit*>(&widget)) {
            judge(where + QStringLiteral(" placeholder"), edit->placeholderText());
        }
        if (const auto* spin = qobject_cast<const QAbstractSpinBox*>(&widget)) {
            judge(where, spin->specialValueText());
        }
        if (const auto* spin = qobject_cast<const QSpinBox*>(&widget)) {
            judge(where + QStringLiteral(" affixes"), spin->prefix() + u' ' + spin->suffix());
        }
        if (const auto* spin = qobject_cast<const QDoubleSpinBox*>(&widget)) {
            judge(where + QStringLiteral(" affixes"), spin->prefix() + u' ' + spin->suffix());
        }
        if (const auto* bar = qobject_cast<const QTabBar*>(&widget)) {
            for (int i = 0; i < bar->count(); ++i) {
                judge(where, bar->tabText(i));
                judge(where, bar->tabToolTip(i));
            }
        }
        if (const auto* combo = qobject_cast<const QComboBox*>(&widget)) {
            judge_model(*combo->model(), {}, where);
        }
        if (const auto* view = qobject_cast<const QAbstractItemView*>(&widget);
            view != nullptr && view->model() != nullptr &&
            qobject_cast<const QHeaderView*>(&widget) == nullptr) {
            judge_model(*view->model(), {}, where);
        }
    }
    /// A widget and all in it, shown or not: a hidden part may be shown later.
    void judge_all(const QWidget& root, const QString& place) {
        judge_widget(root, place);
        for (const QWidget* widget : root.findChildren<QWidget*>()) judge_widget(*widget, place);
    }
    void judge_dialog(QDialog& dialog, const char* place) {
        dialog.show();
        QCoreApplication::processEvents();
        judge_all(dialog, QString::fromUtf8(place));
        dialog.close();
    }
    void expect_none() {
        EXPECT_GT(seen_, 50) << "the walk saw next to nothing";
        QStringList lines(found_.begin(), found_.end());
        lines.sort();
        EXPECT_TRUE(lines.isEmpty()) << lines.join(u'\n').toStdString();
    }

    BracketTranslator brackets_;
    QStringList data_;  ///< the longest first
    QSet<QString> allowed_;
    QSet<QString> found_;
    int seen_ = 0;
};

TEST_F(PseudoLanguage, ATextThatWasNotTranslatedIsSeen) {
    QLabel label(QStringLiteral("Forgotten words, ") + QApplication::translate("Any", "known"));
    judge_widget(label, QStringLiteral("test"));
    EXPECT_EQ(found_.size(), 1);
    label.setText(QApplication::translate("Any", "All of it") + QStringLiteral(" 12 kg"));
    found_.clear();
    judge_widget(label, QStringLiteral("test"));
    EXPECT_TRUE(found_.isEmpty());
}

TEST_F(PseudoLanguage, EveryTextOfTheTabsIsTranslated) {
    for (const char* name : {"salt-cove", "finished-dive", "mountain-lake"}) {
        ASSERT_TRUE(window_->open_file(sample_path(name)));
        for (int tab = 0; tab < window_->tabs()->count(); ++tab) {
            window_->tabs()->setCurrentIndex(tab);
            QCoreApplication::processEvents();
            for (QTabBar* bar : window_->findChildren<QTabBar*>()) {
                if (bar == window_->tabs()->tabBar() || !bar->isVisible()) continue;
                for (int page = 0; page < bar->count(); ++page) {
                    bar->setCurrentIndex(page);
                    QCoreApplication::processEvents();
                }
            }
        }
        judge_all(*window_, QString::fromUtf8(name));
    }
    expect_none();
}

TEST_F(PseudoLanguage, EveryTextOfTheDialogsIsTranslated) {
    SessionsDialog sessions(*keeper_, window_.get());
    judge_dialog(sessions, "sessions");
    PeopleDialog people(*keeper_, UnitSystem::metric, window_.get());
    judge_dialog(people, "people");
    BackupsDialog backups(*keeper_, window_.get());
    judge_dialog(backups, "copies");
    StockDialog stock(document_, window_.get());
    judge_dialog(stock, "stock");
    RedListDialog red_list(keeper_->sessions_to_come(document_.session().date), document_.rules(),
                           window_.get());
    judge_dialog(red_list, "red list");
    ASSERT_FALSE(document_.session().staff.empty());
    EarlierDivesDialog dives(document_, document_.session().staff.front().id, {}, window_.get());
    judge_dialog(dives, "earlier dives");
    ASSERT_FALSE(document_.plan().findings.empty());
    OverruleDialog overrule(
        words(document_.plan().findings.front(), document_.session(), UnitSystem::metric),
        QStringLiteral("Mara"), window_.get());
    judge_dialog(overrule, "overrule");
    VaultSetUpDialog set_up(access(), window_.get());
    judge_dialog(set_up, "set up");
    make_vault_directly();
    VaultPassphraseDialog passphrase(access(), window_.get());
    judge_dialog(passphrase, "passphrase");
    AuditDialog audit(access(), window_.get());
    judge_dialog(audit, "audit");
    expect_none();
}

}  // namespace
}  // namespace leadline::testing
