// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/planning/retention.h"
#include "core/records/duplicates.h"
#include "core/records/guest_store.h"
#include "core/records/person_merge.h"
#include "ui/shell/guest_file.h"
#include "ui/widgets/background_job.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;

namespace leadline {

class PeopleModel;
class RecordKeeper;

/// The guests on record: find one, see what is known, merge two who are one, write out or remove what
/// is kept of somebody. Once a month it says who is due for erasure; it erases nobody by itself.
class PeopleDialog : public QDialog {
    Q_OBJECT
public:
    /// @param keeper  has a database
    PeopleDialog(RecordKeeper& keeper, UnitSystem units, QWidget* parent);

    /// Opens sealed records for the file of a guest; without it they are only counted.
    SealedReader read_sealed;
    /// Who is at work, for the audit trail; empty: not known.
    std::string who;
    /// Asks for a file to write; replaced in tests.
    std::function<QString(const QString& suggested)> choose_path;
    /// The day; replaced in tests.
    std::function<Date()> today;
    /// Finds out who is due, once a month. Called by open() and exec() through showEvent().
    void look_for_due();

protected:
    void showEvent(QShowEvent* event) override;

private:
    void build_head();
    void build_table();
    void build_buttons();
    void update_count();
    void update_details();
    void show_due();
    void put_due_aside();
    void find_duplicates();
    void merge_selected();
    void offer(std::vector<DuplicatePair> pairs);
    void take_merge_back();
    void write_file();
    void remove_guest();
    void after_change();
    void say(const QString& text);
    [[nodiscard]] std::vector<KnownGuest> selected() const;
    [[nodiscard]] QString due_text(qint64 person) const;

    RecordKeeper& keeper_;
    Database& database_;
    UnitSystem units_;
    RetentionRules periods_;
    PeopleModel* model_;
    QLineEdit* search_;
    QLabel* count_;
    QWidget* strip_;
    QLabel* strip_text_;
    QTableView* table_;
    QLabel* details_;
    QLabel* said_;
    QPushButton* back_ = nullptr;
    QPushButton* merge_ = nullptr;
    QPushButton* write_ = nullptr;
    QPushButton* remove_ = nullptr;
    std::vector<PersonMerge> merges_;
    std::vector<DueErasure> due_;
    std::map<qint64, DueErasure> due_of_;
    bool looked_ = false;
    BackgroundJob looking_;
};

}  // namespace leadline
