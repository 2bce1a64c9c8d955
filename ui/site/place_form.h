// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>
#include <string>
#include <vector>

#include "core/planning/session.h"

class QComboBox;
class QCompleter;
class QFormLayout;
class QLineEdit;
class QPlainTextEdit;
class QStandardItemModel;
class QToolButton;

namespace leadline {

class QuantityBox;
class SessionDocument;

/// The site: name, entry, water, where to meet and what to do in an emergency.
class PlaceForm : public QWidget {
    Q_OBJECT
public:
    explicit PlaceForm(SessionDocument& document, QWidget* parent = nullptr);

    /// Where the known sites come from; asked each time the list is about to be shown.
    void set_site_finder(std::function<std::vector<Site>()> finder);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void add_name_row(QFormLayout& form);
    void add_water_rows(QFormLayout& form);
    void add_emergency_rows(QFormLayout& form);
    QLineEdit* text_field(const QString& name, int longest, const QString& what,
                          std::string Site::*field);
    void refresh();
    void load_known_sites();
    void show_known_sites();
    void take_known_site(int row);
    void edit(const QString& what, const QString& key, const std::function<void(Site&)>& change);
    void plan_text_changed();

    SessionDocument& document_;
    std::function<std::vector<Site>()> finder_;
    std::vector<Site> known_;
    QLineEdit* name_;
    QStandardItemModel* known_names_;
    QCompleter* completer_;
    QToolButton* known_button_;
    QComboBox* entry_;
    QuantityBox* altitude_;
    QuantityBox* latitude_;
    QComboBox* water_;
    QuantityBox* salinity_;
    QuantityBox* bottom_;
    QLineEdit* meeting_place_;
    QLineEdit* emergency_line_;
    QPlainTextEdit* emergency_plan_;
};

}  // namespace leadline
