// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

namespace leadline {

/// A name as it stands inside a sentence: whole up to 40 letters, then cut. Tables have all of it.
QString short_name(const QString& name);
/// "Ana, Ben, Cy, Dora, Eva and 4 more".
QString few_names(const QStringList& names);
/// Whether so many names say less than "all".
bool all_of_many(const QStringList& names);

}  // namespace leadline
