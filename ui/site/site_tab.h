// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>
#include <vector>

#include "core/planning/finding.h"
#include "core/planning/session.h"

class QLabel;
class QScrollArea;

namespace leadline {

class PlaceForm;
class ProfilePanel;
class SessionDocument;

/// "Where and when, how deep, what can go wrong here?": the site and the day's conditions, the
/// rules that apply, the dive drawn as a profile, and the numbers of the place.
class SiteTab : public QWidget {
    Q_OBJECT
public:
    explicit SiteTab(SessionDocument& document, QWidget* parent = nullptr);
    ~SiteTab() override;

    /// Where the list of known sites comes from; without one there is no list.
    void set_site_finder(std::function<std::vector<Site>()> finder);
    /// Goes to what a finding is about: all that is said of the place concerns the whole session,
    /// so the drawing gets the focus.
    void show_subject(const Subject& subject);
    /// Goes to the field that a finding of this kind is about.
    void show_finding(FindingCode code);

private:
    [[nodiscard]] QScrollArea* left_column();
    [[nodiscard]] QScrollArea* right_column();
    void refresh_headline();

    SessionDocument& document_;
    PlaceForm* place_;
    ProfilePanel* profile_;
    QLabel* headline_;
    QScrollArea* left_ = nullptr;
    QScrollArea* right_ = nullptr;
};

}  // namespace leadline
