// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <vector>

#include "core/files/text_file.h"
#include "core/physics/go_on.h"
#include "core/physics/result.h"
#include "ui/sheet/card_content.h"
#include "ui/sheet/card_layout.h"

namespace leadline {

/// What a document says about itself, to readers of its file and to screen readers.
struct PdfInfo {
    QString title;
    QString author;         ///< who answers for it; may be empty
    QStringList languages;  ///< BCP 47 tags, that of most pages first; empty: English
};

/// Writes laid-out pages as PDF/A-1b with the fonts inside. The file appears whole or not at all: it
/// is written beside its place and renamed once it is complete; an older file stays until then. A pipe
/// or a device that stands there is written to and stays.
///
/// Uses nothing but its own values, so it may run beside the window.
///
/// @param access  who may read the file
/// @param go_on   asked before each page and once more before anything stands at the path
/// @returns the number of pages; file_unwritable with the system's reason, bad_count where there is
///          nothing to write, or cancelled
Result<int> write_pages_pdf(const QString& path, const std::vector<Page>& pages,
                            const PdfInfo& info, FileAccess access = FileAccess::usual,
                            const GoOn& go_on = {});
/// A document in English without an author.
Result<int> write_pages_pdf(const QString& path, const std::vector<Page>& pages,
                            const QString& title, FileAccess access = FileAccess::usual);

/// Lays out cards and writes them likewise.
Result<int> write_cards_pdf(const QString& path, const std::vector<CardContent>& cards,
                            CardSize size, const PdfInfo& info);
Result<int> write_cards_pdf(const QString& path, const std::vector<CardContent>& cards,
                            CardSize size, const QString& title);

/// The document of a session's cards: its title, who leads, the languages of the faces.
PdfInfo card_document(const Session& session, const std::vector<CardContent>& cards);

}  // namespace leadline
