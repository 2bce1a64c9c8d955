// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/skills_view.h"

#include <algorithm>

#include "ui/document/session_document.h"
#include "ui/guest_words/signal_words.h"

namespace leadline {
namespace {

constexpr double skill_picture_ems = 5.0;

}  // namespace

SkillsView::SkillsView(GuestScreenControl& control, QWidget* parent)
    : ScreenView(control, parent),
      title_(new GuestLabel(TextRole::title, TextInk::accent, this)),
      how_(new GuestLabel(TextRole::heading, TextInk::ink, this)),
      grid_(screen_grid()) {
    for (int k = 0; k < skill_count; ++k) {
        tiles_.push_back(new PictureTile(skill_picture_ems, true, this));
    }
    auto* column = screen_column(this);
    column->addWidget(title_);
    column->addWidget(how_);
    column->addLayout(grid_, 1);
}

void SkillsView::take_words() {
    const std::vector<Skill>& skills = control().document().session().skills;
    title_->setText(say(ScreenWord::skills));
    how_->setText(say(skills.empty() ? ScreenWord::no_skills : ScreenWord::skills_how));
    shown_.clear();
    for (std::size_t k = 0; k < tiles_.size(); ++k) {
        auto* tile = static_cast<PictureTile*>(tiles_[k]);
        tile->setVisible(k < skills.size());
        if (k >= skills.size()) continue;
        tile->set(skill_picture(skills[k]), skill_name(skills[k], tongue()), {},
                  skill_purpose(skills[k], tongue()));
        shown_.push_back(tile);
    }
}

void SkillsView::arrange(bool portrait) {
    const int count = static_cast<int>(shown_.size());
    fill_grid(*grid_, shown_, std::max(1, portrait ? 1 : (count > 6 ? 3 : 2)), true);
}

}  // namespace leadline
