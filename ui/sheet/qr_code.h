// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <optional>

#include "ui/sheet/layout.h"

namespace leadline {

/// Fields in a row of the largest code that a card carries, and the bytes it holds at error correction
/// level M with its note that the text is UTF-8 (ECI 26).
/// @source  ISO/IEC 18004:2015, tables 1 and 7: version 11, 61 fields, 251 bytes without the note
///          (from memory); that 248 are left with it is measured: a test encodes as much
inline constexpr int most_code_fields = 61;
inline constexpr int most_code_bytes = 248;
/// The least size of a field that a phone reads off paper at arm's length [mm]. Common practice, no
/// source.
inline constexpr double least_code_field = 0.33;

/// A text as a QR code, error correction level M, with the note that it is UTF-8; its rect is empty.
/// No value for an empty text and for more than a code can hold.
std::optional<QrItem> qr_code(const QByteArray& utf8);

}  // namespace leadline
