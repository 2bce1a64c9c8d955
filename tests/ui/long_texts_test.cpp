// SPDX-License-Identifier: GPL-3.0-or-later
// The tabs in a language whose texts are two fifths longer than English, on a small laptop's
// screen: what would be cut off is named.
#include <gmock/gmock.h>

#include <QAbstractButton>
#include <QApplication>
#include <QHeaderView>
#include <QLabel>
#include <QRegularExpression>
#include <QSet>
#include <QTabBar>
#include <QTabWidget>
#include <QTranslator>
#include <algorithm>
#include <cmath>

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

    void note(const QWidget& widget, const QString& text, const QString& why) {
        found_.insert(QString::fromUtf8(widget.metaObject()->className()) + u' ' +
                      widget.objectName() + QStringLiteral(": \"") + text.left(60) +
                      QStringLiteral("\" ") + why);
    }
    void judge(const QWidget& widget) {
        if (const auto* label = qobject_cast<const QLabel*>(&widget);
            label != nullptr && !label->text().isEmpty()) {
            const int needed = label->wordWrap() ? label->heightForWidth(label->width())
                                                 : label->sizeHint().height();
            if (label->height() + 1 < needed) {
                note(widget, label->text(),
                     QStringLiteral("needs %1 px of height, has %2")
                         .arg(needed)
                         .arg(label->height()));
            }
            if (!label->wordWrap() && label->width() + 1 < label->minimumSizeHint().width()) {
                note(widget, label->text(),
                     QStringLiteral("needs %1 px, has %2")
                         .arg(label->minimumSizeHint().width())
                         .arg(label->width()));
            }
        }
        if (const auto* button = qobject_cast<const QAbstractButton*>(&widget);
            button != nullptr && !button->text().isEmpty()) {
            const int needed =
                button->fontMetrics().size(Qt::TextShowMnemonic, button->text()).width();
            if (button->width() < needed) {
                note(widget, button->text(),
                     QStringLiteral("needs %1 px, has %2").arg(needed).arg(button->width()));
            }
        }
        if (const auto* header = qobject_cast<const QHeaderView*>(&widget);
            header != nullptr && header->orientation() == Qt::Horizontal) {
            for (int section = 0; section < header->count(); ++section) {
                if (header->isSectionHidden(section)) continue;
                const QString text = header->model()
                                         ->headerData(section, Qt::Horizontal, Qt::DisplayRole)
                                         .toString();
                const int needed = header->fontMetrics().size(0, text).width();
                if (header->sectionSize(section) < needed) {
                    note(widget, text,
                         QStringLiteral("needs %1 px, has %2")
                             .arg(needed)
                             .arg(header->sectionSize(section)));
                }
            }
        }
        if (const auto* bar = qobject_cast<const QTabBar*>(&widget)) {
            for (int i = 0; i < bar->count(); ++i) {
                if (!bar->rect().contains(bar->tabRect(i))) {
                    note(widget, bar->tabText(i), QStringLiteral("out of sight"));
                }
            }
        }
        judge_place(widget);
    }
    /// Whether a widget that cannot be scrolled to stands outside of its parent.
    void judge_place(const QWidget& widget) {
        const QWidget* parent = widget.parentWidget();
        if (parent == nullptr || widget.isWindow() ||
            qobject_cast<const QLabel*>(&widget) == nullptr)
            return;
        if (widget.geometry().right() > parent->width()) {
            note(widget, {},
                 QStringLiteral("reaches %1 px out of its parent")
                     .arg(widget.geometry().right() - parent->width()));
        }
    }
    void judge_tab(int tab) {
        window_->tabs()->setCurrentIndex(tab);
        QCoreApplication::processEvents();
        QCoreApplication::processEvents();
        for (const QWidget* widget : window_->findChildren<QWidget*>()) {
            if (widget->isVisible()) judge(*widget);
        }
    }

    LongTranslator longer_;
    QSet<QString> found_;
};

TEST_F(LongTexts, NothingIsCutOffInTheTabs) {
    for (int tab = 0; tab < window_->tabs()->count(); ++tab) {
        found_.clear();
        judge_tab(tab);
        if (qEnvironmentVariableIsSet("LEADLINE_PICTURES")) {
            window_->grab().save(qEnvironmentVariable("LEADLINE_PICTURES") +
                                 QStringLiteral("/long-%1.png").arg(tab));
        }
        QStringList lines(found_.begin(), found_.end());
        lines.sort();
        EXPECT_TRUE(lines.isEmpty()) << "tab " << tab + 1 << "\n"
                                     << lines.join(u'\n').toStdString();
    }
    EXPECT_LE(window_->minimumSizeHint().width(), 1366);
    EXPECT_LE(window_->minimumSizeHint().height(), 768);
    EXPECT_EQ(window_->size(), QSize(1366, 768));
}

TEST_F(LongTexts, ATextThatIsCutOffIsSeen) {
    QWidget box;
    QLabel label(QStringLiteral("A text that is longer than its place"), &box);
    label.setGeometry(0, 0, 40, 20);
    judge(label);
    EXPECT_EQ(found_.size(), 1);
}

}  // namespace
}  // namespace leadline::testing
