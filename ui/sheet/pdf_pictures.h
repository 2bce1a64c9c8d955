// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QStringList>
#include <vector>

#include "ui/sheet/layout.h"

namespace leadline {

/// How finely is drawn into a PDF [dots per inch].
inline constexpr int pdf_dots_per_inch = 1200;
/// Side of the square page on which a picture is drawn [PostScript points, 1/72 in].
inline constexpr int picture_page_points = 100;

/// The pictures on pages, each once, in a stable order.
QStringList pictures_on(const std::vector<Page>& pages);

/// A PDF/A-1b with one square page for each picture. From it a document takes a picture once, however
/// often it shows it. Empty when nothing could be drawn.
QByteArray picture_pages(const QStringList& names);

}  // namespace leadline
