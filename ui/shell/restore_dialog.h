// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <QString>

#include "core/records/restore.h"

class QTableWidget;

namespace leadline {

/// What putting back a copy would change: asks before it is done.
class RestoreDialog : public QDialog {
    Q_OBJECT
public:
    /// @param name  the copy in words: when it was made, or its file
    RestoreDialog(const QString& name, const RestorePreview& preview, QWidget* parent);

private:
    [[nodiscard]] QString summary(const RestorePreview& preview) const;
    QTableWidget* session_table(const RestorePreview& preview);
    QTableWidget* content_table(const RestorePreview& preview);
};

}  // namespace leadline
