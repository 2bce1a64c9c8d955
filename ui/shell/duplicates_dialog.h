// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <vector>

#include "core/records/duplicates.h"
#include "core/records/guest_store.h"

class QGridLayout;
class QLabel;
class QPushButton;
class QRadioButton;

namespace leadline {

class HealthStore;

/// Pairs of persons who may be one, one pair at a time: merge them, keep them apart, or go on. A merge
/// can be taken back at once, or later from the list of guests.
class DuplicatesDialog : public QDialog {
    Q_OBJECT
public:
    /// @param health  for taking a merge back; nullptr: as with a locked vault
    DuplicatesDialog(Database& database, std::vector<DuplicatePair> pairs, HealthStore* health,
                     QWidget* parent);

Q_SIGNALS:
    /// Persons were merged, or a merge was taken back.
    void changed();

private:
    void show_pair();
    bool are_shown(const DuplicatePair& pair);
    void show_person(int side, const KnownGuest& person);
    void merge();
    void keep_apart();
    void go_on();
    void take_back();
    void say(const QString& text);

    Database& database_;
    HealthStore* health_;
    std::vector<DuplicatePair> pairs_;
    std::size_t at_ = 0;
    qint64 last_merge_ = 0;
    std::size_t last_at_ = 0;
    QLabel* which_;
    QLabel* why_;
    QLabel* care_;
    QLabel* said_;
    QWidget* both_;
    QRadioButton* keep_[2];
    std::vector<QLabel*> values_;  // facts of the left, then of the right
    QPushButton* merge_;
    QPushButton* apart_;
    QPushButton* later_;
    QPushButton* back_;
};

}  // namespace leadline
