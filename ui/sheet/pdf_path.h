// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <functional>

class QWidget;

namespace leadline {

/// The name under which a PDF is saved: with ".pdf" behind what has no suffix ("cards", "Cove 12.6").
/// Another suffix, a folder, a pipe and a device stay as they are.
QString with_pdf_suffix(const QString& path);

/// Asks where a PDF goes until there is a name that may be written to.
/// @param choose  asks for the path, and by itself before that very name is overwritten; empty: no
/// @returns the path with its suffix; empty: do not save
QString choose_pdf_path(QWidget* parent, const std::function<QString()>& choose);

}  // namespace leadline
