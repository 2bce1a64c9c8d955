// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/welcome_view.h"

#include "ui/document/session_document.h"
#include "ui/guest_words/card_words.h"

namespace leadline {

WelcomeView::WelcomeView(GuestScreenControl& control, QWidget* parent)
    : ScreenView(control, parent),
      parts_(screen_row()),
      title_(new GuestLabel(TextRole::shout, TextInk::accent, this)),
      names_(new GuestLabel(TextRole::title, TextInk::ink, this)),
      may_stop_(new GuestLabel(TextRole::body, TextInk::ink, this)),
      may_ask_(new GuestLabel(TextRole::body, TextInk::ink, this)),
      plan_title_(new GuestLabel(TextRole::heading, TextInk::accent, this)),
      standing_(new GuestLabel(TextRole::small, TextInk::quiet, this)) {
    auto* hello = screen_column();
    hello->addStretch(1);
    hello->addWidget(title_);
    hello->addWidget(names_);
    hello->addStretch(1);
    hello->addWidget(may_ask_);
    hello->addWidget(may_stop_);
    hello->addStretch(1);

    auto* tile = new ScreenTile(this);
    auto* facts = screen_column(tile);
    facts->addWidget(plan_title_);
    auto* grid = screen_grid();
    grid->setColumnStretch(1, 1);
    int row = 0;
    for (Fact& fact : facts_) {
        fact.label = new GuestLabel(TextRole::body, TextInk::quiet, tile);
        fact.label->setWordWrap(false);
        fact.value = new GuestLabel(TextRole::heading, TextInk::ink, tile);
        grid->addWidget(fact.label, row, 0, Qt::AlignTop);
        grid->addWidget(fact.value, row, 1, Qt::AlignTop);
        grid->setRowStretch(row, 1);
        ++row;
    }
    facts->addLayout(grid, 3);
    facts->addStretch(1);
    facts->addWidget(standing_);

    parts_->addLayout(hello, 1);
    parts_->addWidget(tile, 1);
    auto* all = screen_column(this);
    all->addLayout(parts_, 1);
}

QString WelcomeView::instructor() const {
    const Session& session = control().document().session();
    const Group* group = find_group(session, control().group());
    const StaffMember* member =
        find_staff(session, group != nullptr ? group->instructor : session.leader);
    return member != nullptr ? typed_text(member->name) : say(ScreenWord::not_set);
}

QString WelcomeView::place() const {
    const Site& site = control().document().session().site;
    QStringList words;
    for (const std::string& word : {site.meeting_place, site.name}) {
        const QString line = typed_text(word);
        if (!line.isEmpty()) words << line;
    }
    return words.isEmpty() ? say(ScreenWord::not_set) : words.join(QStringLiteral(" · "));
}

void WelcomeView::take_words() {
    const Session& session = control().document().session();
    const Plan& plan = control().document().plan();
    const GuestFigures figures = control().figures();
    title_->setText(say(ScreenWord::welcome));
    QStringList names;
    for (const QString& name : first_names(control().guests())) names << isolated(name);
    names_->setText(names.isEmpty() ? say(ScreenWord::no_guests)
                                    : tongue().locale().createSeparatedList(names));
    may_ask_->setText(say(ScreenWord::may_ask));
    may_stop_->setText(say(ScreenWord::may_stop));
    plan_title_->setText(say(ScreenWord::todays_dive));
    const GroupGas* group = find_gas(plan, control().group());
    const Minutes time = group != nullptr ? group->ends_at : duration(session.profile);
    const std::array<std::pair<QString, QString>, 5> shown{{
        // When to be there, as on the card: not when the dive starts.
        {card_word(CardWord::meet, tongue()),
         // The time goes to the next line with the year, never without the dot before it.
         figures.day(session.date) + QStringLiteral("\u00A0·\u00A0") +
             figures.time(session.meeting_time)},
        {say(ScreenWord::where), place()},
        {say(ScreenWord::with), instructor()},
        {say(ScreenWord::how_deep),
         say(ScreenWord::no_deeper).arg(figures.at_most(plan.environment.deepest.meters()))},
        {say(ScreenWord::how_long), say(ScreenWord::about_long).arg(figures.minutes_at_most(time))},
    }};
    for (std::size_t k = 0; k < facts_.size(); ++k) {
        facts_.at(k).label->setText(shown.at(k).first);
        facts_.at(k).value->setText(shown.at(k).second);
    }
    standing_->setText(say(ScreenWord::standing));
}

void WelcomeView::arrange(bool portrait) {
    parts_->setDirection(portrait ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

}  // namespace leadline
