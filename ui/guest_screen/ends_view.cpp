// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/ends_view.h"

#include <algorithm>
#include <optional>

#include "ui/document/session_document.h"
#include "ui/guest_words/guest_punctuation.h"
#include "ui/guest_words/signal_words.h"

namespace leadline {
namespace {

constexpr double reason_picture_ems = 4.2;
constexpr std::size_t reasons = 7;
// More would leave no room for words that are read from the back row.
constexpr int most_own_numbers = 6;

}  // namespace

QString low_on_air_words(const GuestScreenControl& control) {
    const Plan& plan = control.document().plan();
    const std::vector<const Guest*> guests = control.guests();
    const std::vector<QString> names = first_names(guests);
    std::optional<Bars> highest;
    bool all_known = true;
    QStringList numbers;
    QStringList own;
    for (std::size_t k = 0; k < guests.size(); ++k) {
        const GuestGas* gas = find_gas(plan, guests[k]->id);
        if (gas == nullptr || !gas->has_cylinder) {
            all_known = false;
            continue;
        }
        highest = highest ? std::max(*highest, gas->signal_pressure) : gas->signal_pressure;
        numbers << control.figures().signal_at(gas->signal_pressure);
        const GuestFigures figures(control.tongue(), control.units_of(*guests[k]));
        own << isolated(labelled(isolated(names[k]), figures.signal_at(gas->signal_pressure),
                                 control.tongue()));
    }
    QStringList lines;
    if (highest) {
        // The highest of all comes first: whoever takes it for the own signals early, never late.
        lines << screen_word(ScreenWord::end_air, control.tongue())
                     .arg(control.figures().signal_at(*highest));
        numbers.removeDuplicates();
        if (numbers.size() > 1 && own.size() <= most_own_numbers) {
            lines << own.join(QStringLiteral(" · "));
        }
    }
    if (!highest || !all_known) {
        lines << screen_word(ScreenWord::end_air_unknown, control.tongue());
    }
    return lines.join(u'\n');
}

EndsView::EndsView(GuestScreenControl& control, QWidget* parent)
    : ScreenView(control, parent),
      title_(new GuestLabel(TextRole::title, TextInk::accent, this)),
      all_(new GuestLabel(TextRole::heading, TextInk::ink, this)),
      slow_(new GuestLabel(TextRole::heading, TextInk::ink, this)),
      grid_(screen_grid()),
      standing_(new GuestLabel(TextRole::small, TextInk::quiet, this)) {
    for (std::size_t k = 0; k < reasons; ++k) {
        tiles_.push_back(new PictureTile(reason_picture_ems, true, this));
    }
    auto* column = screen_column(this);
    column->addWidget(title_);
    column->addWidget(all_);
    column->addLayout(grid_, 1);
    column->addWidget(slow_);
    column->addWidget(standing_);
}

void EndsView::take_words() {
    const GuestFigures figures = control().figures();
    const Plan& plan = control().document().plan();
    title_->setText(say(ScreenWord::ends));
    all_->setText(say(ScreenWord::ends_all));
    slow_->setText(say(ScreenWord::ends_slow));
    const GroupGas* group = find_gas(plan, control().group());
    const Minutes time =
        group != nullptr ? group->ends_at : duration(control().document().session().profile);
    const auto set = [&](std::size_t place, const QString& picture, const QString& text) {
        auto* tile = static_cast<PictureTile*>(tiles_.at(place));
        tile->set(picture, {}, text, {});
        tile->picture()->setAccessibleName({});
    };
    set(0, signal_picture(HandSignal::low_on_air), low_on_air_words(control()));
    set(1, QLatin1String(clock_picture),
        say(ScreenWord::end_time).arg(figures.minutes_at_most(time)));
    set(2, signal_picture(HandSignal::up), say(ScreenWord::end_wish));
    set(3, signal_picture(HandSignal::ears), say(ScreenWord::end_ears));
    set(4, signal_picture(HandSignal::cold), say(ScreenWord::end_cold));
    set(5, signal_picture(HandSignal::up), say(ScreenWord::end_sign));
    set(6, signal_picture(HandSignal::stay_together), say(ScreenWord::end_lost));
    standing_->setText(say(ScreenWord::standing));
}

void EndsView::arrange(bool portrait) {
    fill_grid(*grid_, tiles_, portrait ? 1 : 2, true);
}

}  // namespace leadline
