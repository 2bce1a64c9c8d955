// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QApplication;

namespace leadline {

struct WindowOptions {
    QString file;          ///< session to open; empty: the newest on record, or a new one
    QString database;      ///< empty: the default place
    QString language;  ///< tag of the language to speak; empty: that of the records or the system
    QString pictures;      ///< folder to write a picture of every tab to, then quit; empty: no
    bool imperial = false;
    bool dark = false;
};

/// Speaks the language chosen (a tag; empty: none), else that of the system, else English, and
/// writes dates and numbers to match.
void speak_and_write(const QString& chosen);

/// Opens the window and runs until it is closed.
/// @returns the program's exit code
int run_window(QApplication& application, const WindowOptions& options);

}  // namespace leadline
