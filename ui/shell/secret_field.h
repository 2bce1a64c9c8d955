// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/records/sealing.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QProgressBar;
class QWidget;

namespace leadline {

// Parts that the dialogs of the health vault share.

/// A field for a passphrase: dots for letters, no suggestions, no copying out.
QLineEdit* passphrase_field(const char* name, QWidget* parent);

/// What stands in a field, as UTF-8; the field is emptied. The toolkit may have kept copies of
/// single edits in memory until then, which cannot be overwritten.
SecretBytes take_secret(QLineEdit& field);

/// Who is at the computer: one of the staff, or a typed name.
QComboBox* who_field(const QStringList& names, QWidget* parent);
QString who_in(const QComboBox& field);

/// A line for what went wrong, which keeps its place while it is empty.
QLabel* trouble_line(QWidget* parent);
/// Says what is wrong, with the mark of a stop before it; an empty text says nothing.
void say_trouble(QLabel& line, const QString& text);

/// Runs to and fro while long work is done; hidden otherwise, in its place.
QProgressBar* busy_bar(QWidget* parent);

/// Gives a dialog the height that its broken texts need at a width. Left to itself it takes no more
/// than two thirds of the screen, and fields overlap on a small one.
void size_for_texts(QWidget& dialog, int width);

QLabel* wrapped_text(const QString& text, QWidget* parent);

}  // namespace leadline
