// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/birth_date_line.h"

#include <QLocale>
#include <QRegularExpression>
#include <algorithm>
#include <array>

#include "ui/words/quantity_text.h"

namespace leadline {
namespace {

int month_number(const QString& word) {
    const QString wanted = word.toLower().remove(u'.');
    constexpr qsizetype least_letters = 3;
    if (wanted.size() < least_letters) return 0;
    for (const QLocale& locale : {QLocale(), QLocale(QLocale::English)}) {
        for (int month = 1; month <= 12; ++month) {
            const std::array names{locale.monthName(month),
                                   locale.monthName(month, QLocale::ShortFormat),
                                   locale.standaloneMonthName(month)};
            const bool named = std::any_of(names.begin(), names.end(), [&](const QString& name) {
                return name.toLower().remove(u'.') == wanted;
            });
            if (named) return month;
        }
    }
    return 0;
}

Result<Date> checked(int year, int month, int day, const QString& typed) {
    // Through the core's own reader, so that the bounds of years stand in one place.
    const QString iso = QStringLiteral("%1-%2-%3")
                            .arg(year, 4, 10, QChar(u'0'))
                            .arg(month, 2, 10, QChar(u'0'))
                            .arg(day, 2, 10, QChar(u'0'));
    Result<Date> date = parse_date(iso.toStdString(), "birth_date");
    if (date) return date;
    Error error = date.error();
    error.given = typed.toStdString();
    return error;
}

}  // namespace

Result<Date> read_typed_date(const QString& text) {
    const QString typed = text.simplified();
    static const QRegularExpression year_first(
        QStringLiteral(R"(^(\d{4})\s?[-/. ]\s?(\d{1,2})\s?[-/. ]\s?(\d{1,2})$)"));
    static const QRegularExpression day_first(
        QStringLiteral(R"(^(\d{1,2})\s?[-/. ]\s?(\d{1,2})\s?[-/. ]\s?(\d{4})$)"));
    // "de" and "del" belong to Spanish: "17 de mayo de 1990".
    static const QRegularExpression spelled_out(
        QStringLiteral(R"(^(\d{1,2})\.?\s?[-/ ]?\s?(?:de )?(\p{L}[\p{L}\p{M}]*\.?)\s?[-/ ]?\s?)"
                       R"((?:del? )?(\d{4})$)"),
        QRegularExpression::CaseInsensitiveOption);
    if (const auto match = year_first.match(typed); match.hasMatch()) {
        return checked(match.captured(1).toInt(), match.captured(2).toInt(),
                       match.captured(3).toInt(), typed);
    }
    if (const auto match = day_first.match(typed); match.hasMatch()) {
        return checked(match.captured(3).toInt(), match.captured(2).toInt(),
                       match.captured(1).toInt(), typed);
    }
    if (const auto match = spelled_out.match(typed); match.hasMatch()) {
        return checked(match.captured(3).toInt(), month_number(match.captured(2)),
                       match.captured(1).toInt(), typed);
    }
    return Error{ErrorCode::bad_date, "birth_date", typed.toStdString(), "YYYY-MM-DD"};
}

BirthDateLine::BirthDateLine(QWidget* parent) : QLineEdit(parent) {
    constexpr int longest = 40;
    setMaxLength(longest);
    setPlaceholderText(tr("Day/month/year"));
    setToolTip(tr("17/5/1990, 17 May 1990 or 1990-05-17"));
    connect(this, &QLineEdit::textEdited, this, &BirthDateLine::typing);
    connect(this, &QLineEdit::editingFinished, this, &BirthDateLine::finished);
}

void BirthDateLine::show_date(std::optional<Date> date) {
    if (date == shown_) return;
    shown_ = date;
    restore();
}

void BirthDateLine::restore() {
    dirty_ = false;
    setText(shown_ ? spelled(*shown_) : QString());
}

void BirthDateLine::report(std::optional<Date> date) {
    if (date == shown_) return;
    shown_ = date;
    Q_EMIT edited(date);
}

void BirthDateLine::typing() {
    if (!dirty_) before_ = shown_;
    dirty_ = true;
    const Result<Date> date = read_typed_date(text());
    if (date && latest_ && *date <= *latest_) report(*date);
}

void BirthDateLine::finished() {
    if (!dirty_) return;
    const QString typed = text().trimmed();
    if (typed.isEmpty()) {
        report(std::nullopt);
        restore();
        return;
    }
    const Result<Date> date = read_typed_date(typed);
    if (date) {
        report(*date);
        restore();
        return;
    }
    report(before_);
    restore();
    Q_EMIT not_a_date(typed);
}

}  // namespace leadline
