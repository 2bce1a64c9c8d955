// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <QString>
#include <memory>
#include <optional>

#include "core/files/booking_csv.h"

class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QTableView;

namespace leadline {

class BookingModel;
class MeaningHeader;
class SessionDocument;

/// A booking list, shown with what was understood of it: what each column means, what has to be
/// asked, what is wrong or doubtful, who is there already. Taken over together, as one undoable
/// step, or not at all. The list is read outside the window's thread.
class BookingImportDialog : public QDialog {
    Q_OBJECT
public:
    /// @param document  outlives the dialog
    /// @param path      of the list
    BookingImportDialog(SessionDocument& document, const QString& path, QWidget* parent = nullptr);
    ~BookingImportDialog() override;
    void accept() override;
    /// Whether the list as the choices have it now is shown.
    [[nodiscard]] bool is_ready() const { return table_ != nullptr && running_ == 0; }
    /// How many guests were added; 0 before accept().
    [[nodiscard]] int added() const { return added_; }

private:
    using TablePointer = std::shared_ptr<const BookingTable>;
    struct Question {
        QLabel* mark = nullptr;
        QLabel* text = nullptr;
        QComboBox* choice = nullptr;
    };
    QWidget* build_questions();
    Question build_question(const char* object_name, const QString& name, int row);
    QWidget* build_list();
    QWidget* build_foot();

    void read();
    void take_table(const Result<TablePointer>& table);
    void understand();
    void take_preview(BookingPreview preview, const BookingChoices& choices);
    void fit_columns();
    void refresh_questions();
    void refresh_foot();
    void show_current();
    void say(const QString& text, bool error);
    void go_to(const QModelIndex& cell);
    [[nodiscard]] BookingChoices choices() const;

    SessionDocument& document_;
    QString path_;
    TablePointer table_;
    BookingModel* model_;
    int running_ = 0;     ///< pieces of work that have not come back
    int generation_ = 0;  ///< of the choices; what comes back for older ones is dropped
    int added_ = 0;
    QString said_of_list_;
    bool fitted_ = false;  ///< the columns, to what was first understood

    QLabel* facts_ = nullptr;
    QWidget* questions_ = nullptr;
    Question date_order_;
    Question mass_unit_;
    Question height_unit_;
    QProgressBar* progress_ = nullptr;
    QTableView* view_ = nullptr;
    MeaningHeader* header_ = nullptr;
    QLabel* message_icon_ = nullptr;
    QLabel* message_ = nullptr;
    QLabel* summary_ = nullptr;
    QPushButton* next_ = nullptr;
    QPushButton* leave_out_ = nullptr;
    QPushButton* add_ = nullptr;
};

}  // namespace leadline
