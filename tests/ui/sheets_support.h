// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include "core/planning/session.h"
#include "ui/sheet/layout.h"

namespace leadline::testing {

/// What is wrong on a page: letters outside the frame or on those of another text, items off the
/// page, type under `least_points`. Empty: nothing.
QStringList faults_of(const Page& page, double least_points = 8.0);

/// The page's words in one line, no-break spaces as spaces.
QString all_words_on(const std::vector<Page>& pages);

/// A session with as long a text everywhere as a session file lets in, and `guests` guests in its
/// first group.
Session crowded(Session session, int guests);

/// Without guests, site, plan of emergency, groups or skills.
Session bare_session(Session session);

}  // namespace leadline::testing
