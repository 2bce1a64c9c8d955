// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "ui/sheet/pdf.h"
#include "ui/sheet/sheets.h"

namespace leadline {

/// "Cards", "Beach sheet", …
QString sheet_name(SheetKind kind);

/// What the document of a sheet says about itself: the session and the kind of sheet, who leads, the
/// guests' languages of the page of pictures or else that of the window. Cards: see card_document.
PdfInfo sheet_document(const SheetChoice& choice, const Session& session);

}  // namespace leadline
