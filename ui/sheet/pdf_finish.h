// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <vector>

#include "core/physics/result.h"
#include "ui/sheet/pdf.h"

namespace leadline {

/// Completes a drawn document: puts in the pictures (each stored once) and the QR codes, the language
/// of its text, its author, and metadata that says the same in both places where a PDF has them.
///
/// @param drawn  a PDF/A-1b of these pages, without pictures and codes
/// @returns the complete file, still PDF/A-1b; file_unwritable with the reason for a document that
///          cannot be read, its place empty
/// @source  ISO 19005-1:2005, 6.7.3 and 6.7.11 (from memory): metadata in step, and how PDF/A-1b is
///          marked
Result<QByteArray> finished_pdf(const QByteArray& drawn, const std::vector<Page>& pages,
                                const PdfInfo& info);

}  // namespace leadline
