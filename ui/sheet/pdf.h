// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <vector>

#include "core/files/text_file.h"
#include "core/physics/result.h"
#include "ui/sheet/card_content.h"
#include "ui/sheet/card_layout.h"

namespace leadline {

/// Writes laid-out pages as PDF/A-1b with the fonts inside. The file appears whole or not at all: it
/// is written beside its place and renamed once it is complete; an older file stays until then.
///
/// @param title  of the document, shown by readers
/// @param access  who may read the file
/// @returns the number of pages; file_unwritable with the system's reason, or bad_count where there
///          is nothing to write
Result<int> write_pages_pdf(const QString& path, const std::vector<Page>& pages,
                            const QString& title, FileAccess access = FileAccess::usual);

/// Lays out cards and writes them likewise.
Result<int> write_cards_pdf(const QString& path, const std::vector<CardContent>& cards,
                            CardSize size, const QString& title);

}  // namespace leadline
