// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/roster_tab.h"

#include <QAbstractButton>
#include <QAction>
#include <QEvent>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "core/files/booking_csv.h"
#include "core/files/text_file.h"
#include "ui/roster/booking_import_dialog.h"
#include "ui/roster/bulk_page.h"
#include "ui/roster/crew_panel.h"
#include "ui/roster/guest_editor.h"
#include "ui/roster/guest_filter.h"
#include "ui/roster/guest_model.h"
#include "ui/roster/guest_table.h"
#include "ui/roster/measures.h"
#include "ui/roster/notice_strip.h"
#include "ui/roster/roster_edits.h"
#include "ui/roster/stock_dialog.h"
#include "ui/words/error_words.h"

namespace leadline {
namespace {

QLabel* friendly(const QString& object_name, QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setObjectName(object_name);
    label->setAlignment(Qt::AlignCenter);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

}  // namespace

RosterTab::RosterTab(SessionDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      model_(new GuestModel(document, this)),
      filter_(new GuestFilter(this)) {
    setObjectName(QStringLiteral("roster_tab"));
    filter_->setSourceModel(model_);
    build_actions();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(margin, margin, margin, margin);
    column->addWidget(build_splitters());
    connect_parts();
    refresh();
    select_row(0);
}

// ---- building ----------------------------------------------------------------------------------

void RosterTab::build_actions() {
    add_action_ = new QAction(tr("Add guest"), this);
    add_action_->setObjectName(QStringLiteral("add_guest_action"));
    add_action_->setShortcuts({QKeySequence(Qt::Key_Insert),
                               QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N)});
    remove_action_ = new QAction(tr("Remove guest"), this);
    remove_action_->setObjectName(QStringLiteral("remove_guest_action"));
    find_action_ = new QAction(tr("Find guest"), this);
    find_action_->setObjectName(QStringLiteral("find_guest_action"));
    find_action_->setShortcut(QKeySequence::Find);
    import_action_ = new QAction(tr("&Import a booking list…"), this);
    import_action_->setObjectName(QStringLiteral("import_bookings_action"));
    export_action_ = new QAction(tr("&Export the guests…"), this);
    export_action_->setObjectName(QStringLiteral("export_guests_action"));
    addActions({add_action_, remove_action_, find_action_, import_action_, export_action_});
    connect(import_action_, &QAction::triggered, this, &RosterTab::import_bookings);
    connect(export_action_, &QAction::triggered, this, &RosterTab::export_guests);
    choose_booking_list = [this] {
        return QFileDialog::getOpenFileName(this, tr("Import a booking list"), QString(),
                                            tr("Lists (*.csv *.tsv *.txt);;All files (*)"));
    };
    choose_guest_file = [this] {
        return QFileDialog::getSaveFileName(this, tr("Export the guests"),
                                            QStringLiteral("guests.csv"), tr("Lists (*.csv)"));
    };
    connect(add_action_, &QAction::triggered, this, &RosterTab::add_guest);
    connect(remove_action_, &QAction::triggered, this, &RosterTab::remove_guests);
    connect(find_action_, &QAction::triggered, this, &RosterTab::focus_search);
}

QBoxLayout* RosterTab::build_bar(QWidget* parent) {
    search_ = new QLineEdit(parent);
    search_->setObjectName(QStringLiteral("guest_search"));
    search_->setAccessibleName(tr("Find a guest or a group"));
    search_->setPlaceholderText(tr("Find a guest or a group (Ctrl+F)"));
    search_->setClearButtonEnabled(true);
    search_->installEventFilter(this);
    for (auto* clear : search_->findChildren<QAbstractButton*>()) {
        clear->setObjectName(QStringLiteral("clear_search"));
        clear->setAccessibleName(tr("Show all guests again"));
    }
    add_ = new QPushButton(tr("&Add guest"), parent);
    add_->setObjectName(QStringLiteral("add_guest"));
    add_->setToolTip(tr("Insert or Ctrl+Shift+N"));
    remove_ = new QPushButton(tr("Remove guest"), parent);
    remove_->setObjectName(QStringLiteral("remove_guest"));
    remove_->setToolTip(tr("Delete, in the table. Can be undone."));
    stock_ = new QPushButton(tr("Kit in stock…"), parent);
    stock_->setObjectName(QStringLiteral("open_stock"));
    stock_->setToolTip(tr("Cylinders, suits and lead that there are to hand out."));
    lists_ = new QPushButton(tr("Lists"), parent);
    lists_->setObjectName(QStringLiteral("guest_lists"));
    lists_->setToolTip(tr("Take guests from a booking list, or write them to one."));
    auto* menu = new QMenu(lists_);
    menu->addActions({import_action_, export_action_});
    lists_->setMenu(menu);
    auto* row = new QHBoxLayout;
    row->setSpacing(spacing);
    row->addWidget(search_, 1);
    row->addWidget(add_);
    row->addWidget(remove_);
    row->addWidget(stock_);
    row->addWidget(lists_);
    return row;
}

QWidget* RosterTab::build_splitters() {
    across_ = new QSplitter(Qt::Horizontal, this);
    across_->setObjectName(QStringLiteral("roster_splitter"));
    across_->setChildrenCollapsible(false);
    across_->setHandleWidth(margin);
    across_->addWidget(build_left());
    across_->addWidget(build_right());
    across_->setStretchFactor(0, 1);
    across_->setStretchFactor(1, 0);
    crew_ = new CrewPanel(document_, this);
    down_ = new QSplitter(Qt::Vertical, this);
    down_->setObjectName(QStringLiteral("crew_splitter"));
    down_->setChildrenCollapsible(false);
    down_->setHandleWidth(spacing);
    down_->addWidget(across_);
    down_->addWidget(crew_);
    down_->setStretchFactor(0, 1);
    down_->setStretchFactor(1, 0);
    return down_;
}

QWidget* RosterTab::build_left() {
    auto* top = new QWidget(this);
    auto* column = new QVBoxLayout(top);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing);
    column->addLayout(build_bar(top));
    notice_ = new NoticeStrip(*document_.undo_stack(), top);
    column->addWidget(notice_);
    table_stack_ = new QStackedWidget(top);
    table_ = new GuestTable(table_stack_);
    table_->setModel(filter_);
    table_->setSortingEnabled(true);
    table_->sortByColumn(-1, Qt::AscendingOrder);
    table_->fit_columns();
    empty_ = friendly(QStringLiteral("roster_empty"), table_stack_);
    table_stack_->addWidget(table_);
    table_stack_->addWidget(empty_);
    column->addWidget(table_stack_, 1);
    return top;
}

QWidget* RosterTab::build_right() {
    right_ = new QStackedWidget(this);
    editor_ = new GuestEditor(document_, right_);
    bulk_ = new BulkPage(document_, right_);
    nobody_ = friendly(QStringLiteral("editor_empty"), right_);
    right_->addWidget(nobody_);
    right_->addWidget(editor_);
    right_->addWidget(bulk_);
    constexpr int letters = 45;
    right_->setMinimumWidth(letters * fontMetrics().averageCharWidth());
    return right_;
}

void RosterTab::connect_parts() {
    connect(&document_, &SessionDocument::changed, this, &RosterTab::refresh);
    connect(&document_, &SessionDocument::opened, this, &RosterTab::start_anew);
    connect(search_, &QLineEdit::textChanged, this, &RosterTab::search);
    connect(add_, &QPushButton::clicked, add_action_, &QAction::trigger);
    connect(remove_, &QPushButton::clicked, remove_action_, &QAction::trigger);
    connect(stock_, &QPushButton::clicked, this, &RosterTab::open_stock);
    connect(notice_, &NoticeStrip::undone, this, [this] {
        if (!removed_.empty()) select(removed_.front());
        table_->setFocus();
    });
    connect(table_, &GuestTable::edit_wanted, this, &RosterTab::edit_selected);
    connect(table_, &GuestTable::remove_wanted, this, &RosterTab::remove_guests);
    connect(table_->selectionModel(), &QItemSelectionModel::selectionChanged, this,
            &RosterTab::selection_changed);
    connect(editor_, &GuestEditor::left, this, [this] { table_->setFocus(); });
    connect(editor_->screening(), &ScreeningPage::answers_kept_chosen, this,
            &RosterTab::answers_kept_chosen);
    connect(editor_, &GuestEditor::unread_complaint, notice_, &NoticeStrip::say);
    connect(crew_, &CrewPanel::refused, notice_, &NoticeStrip::say);
    connect(crew_, &CrewPanel::opened, this, [this](bool open) {
        // Closed, the strip is as high as its heading and leaves the rest to the table.
        crew_->setMaximumHeight(open ? QWIDGETSIZE_MAX : crew_->minimumSizeHint().height());
        constexpr int part_of_guests = 3;
        constexpr int part_of_crew = 2;
        const int all = down_->height();
        down_->setSizes(open ? QList<int>{all * part_of_guests / 5, all * part_of_crew / 5}
                             : QList<int>{all, 0});
    });
    crew_->set_open(false);
}

// ---- keeping up --------------------------------------------------------------------------------

void RosterTab::refresh() {
    const QScopedValueRollback guard(refreshing_, true);
    model_->refresh();
    table_->setColumnHidden(static_cast<int>(GuestColumn::consent), !model_->any_consent());
    crew_->refresh();
    update_empty_state();
    if (selected().empty() && filter_->rowCount() > 0) select_row(last_row_);
    selection_changed();
}

void RosterTab::start_anew() {
    last_row_ = 0;
    notice_->clear();
    search_->clear();
    table_->clearSelection();
}

void RosterTab::update_empty_state() {
    if (model_->rowCount() == 0) {
        empty_->setText(tr("No guests yet. Add the first one (Ins) or open a session."));
    } else if (filter_->rowCount() == 0) {
        empty_->setText(
            tr("Nobody is called \"%1\". Esc shows all guests again.").arg(search_->text()));
    }
    nobody_->setText(model_->rowCount() == 0
                         ? QString()
                         : tr("Choose a guest to see who it is, what the health questions came to "
                              "and what was handed out."));
    table_stack_->setCurrentIndex(filter_->rowCount() == 0 ? 1 : 0);
    remove_->setEnabled(filter_->rowCount() > 0);
    remove_action_->setEnabled(filter_->rowCount() > 0);
}

void RosterTab::search(const QString& text) {
    const std::vector<GuestId> before = selected();
    filter_->set_search(text);
    update_empty_state();
    // The guest in the editor stays when found; otherwise the first one found comes up.
    if (selected().empty()) {
        select_row(0);
    } else if (before.size() == 1) {
        filter_->keep(before.front());
    }
}

// ---- selection ---------------------------------------------------------------------------------

std::vector<GuestId> RosterTab::selected() const {
    std::vector<GuestId> ids;
    QModelIndexList rows = table_->selectionModel()->selectedRows();
    std::sort(rows.begin(), rows.end());
    for (const QModelIndex& row : rows) {
        ids.push_back(model_->id_at(filter_->mapToSource(row).row()));
    }
    return ids;
}

bool RosterTab::select(const GuestId& guest) {
    const int source = model_->row_of(guest);
    if (source < 0) return false;
    filter_->keep(guest);
    select_row(filter_->mapFromSource(model_->index(source, 0)).row());
    return true;
}

void RosterTab::select_row(int row) {
    const int last = filter_->rowCount() - 1;
    if (last < 0) return selection_changed();
    const QModelIndex index = filter_->index(std::clamp(row, 0, last), 0);
    table_->selectionModel()->setCurrentIndex(
        index, QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    table_->scrollTo(index);
}

void RosterTab::selection_changed() {
    const std::vector<GuestId> ids = selected();
    remove_->setText(ids.size() > 1 ? tr("Remove %n guests", nullptr, static_cast<int>(ids.size()))
                                    : tr("Remove guest"));
    if (ids.empty()) {
        if (!refreshing_ || filter_->rowCount() == 0) right_->setCurrentWidget(nobody_);
        return;
    }
    last_row_ = table_->selectionModel()->selectedRows().front().row();
    if (ids.size() > 1) {
        bulk_->show_guests(ids);
        right_->setCurrentWidget(bulk_);
        return;
    }
    filter_->keep(ids.front());
    editor_->show_guest(ids.front());
    right_->setCurrentWidget(editor_);
}

// ---- doing -------------------------------------------------------------------------------------

void RosterTab::add_guest() {
    if (document_.session().guests.size() >= most_guests) {
        return notice_->say(
            tr("A session holds %1 guests at most. Open another for the rest.").arg(most_guests));
    }
    GuestId id;
    const std::string name =
        tr("Guest %1").arg(document_.session().guests.size() + 1).toStdString();
    // Typing the name goes on in the same undo step, so that one Undo takes the guest away again.
    const QString merge_key =
        QString::fromStdString(next_guest_id(document_.session()).text) + QStringLiteral("/name");
    const Result<Done> done = document_.edit(
        tr("Add guest"), [&](Session& session) { id = leadline::add_guest(session, name); },
        merge_key);
    if (!done) return notice_->say(words(done.error()));
    notice_->clear();
    if (select(id)) editor_->focus_name();
}

void RosterTab::remove_guests() {
    const std::vector<GuestId> ids = selected();
    if (ids.empty()) return;
    const Guest* first = find_guest(document_.session(), ids.front());
    const QString who = ids.size() == 1 && first != nullptr
                            ? QString::fromStdString(first->name)
                            : tr("%n guests", nullptr, static_cast<int>(ids.size()));
    const Result<Done> done =
        document_.edit(tr("Remove %1").arg(who),
                       [&](Session& session) { leadline::remove_guests(session, ids); });
    if (!done) return notice_->say(words(done.error()));
    removed_ = ids;
    notice_->say_with_undo(tr("Removed %1").arg(who));
}

void RosterTab::edit_selected() {
    const std::vector<GuestId> ids = selected();
    if (ids.size() > 1) return bulk_->focus_first();
    if (!ids.empty()) editor_->focus_page();
}

void RosterTab::set_guest_finder(GuestFinder finder) {
    editor_->set_guest_finder(std::move(finder));
}

void RosterTab::set_health_access(HealthAccess* access) {
    editor_->screening()->set_health_access(access);
}

void RosterTab::set_check_finder(CheckFinder finder) {
    editor_->screening()->set_check_finder(std::move(finder));
}

void RosterTab::set_answers_kept(AnswersKept kept) {
    editor_->screening()->set_answers_kept(kept);
}

void RosterTab::set_dive_finder(DiveFinder finder) { crew_->set_dive_finder(std::move(finder)); }

void RosterTab::open_stock() {
    auto* dialog = new StockDialog(document_, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void RosterTab::import_bookings() {
    const QString path = choose_booking_list();
    if (path.isEmpty()) return;
    auto* dialog = new BookingImportDialog(document_, path, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this, [this, dialog] {
        const std::vector<Guest>& guests = document_.session().guests;
        const auto added = static_cast<std::size_t>(dialog->added());
        if (added == 0 || added > guests.size()) return;
        select(guests[guests.size() - added].id);
        table_->setFocus();
        removed_.clear();
        notice_->say_with_undo(
            tr("Added %n guests from the list", nullptr, static_cast<int>(added)));
    });
    dialog->open();
}

void RosterTab::export_guests() {
    const QString path = choose_guest_file();
    if (path.isEmpty()) return;
    const Result<Done> done =
        write_text_file(path.toStdString(), write_booking_csv(document_.session()));
    if (!done) return notice_->say(words(done.error()));
    notice_->say(tr("Written to %1: names, birth dates, sizes, contacts and notes. Health answers "
                    "and consent are not in it, unless a note speaks of them: read the notes "
                    "before you pass it on.")
                     .arg(path));
}

void RosterTab::show_subject(const Subject& subject) {
    if (const auto* guest = std::get_if<GuestId>(&subject)) {
        if (!select(*guest)) return;
        editor_->show_page(editor_->worst_page());
        editor_->focus_page();
    } else if (const auto* group = std::get_if<GroupId>(&subject)) {
        if (find_group(document_.session(), *group) != nullptr) crew_->focus_group(*group);
    } else if (const auto* member = std::get_if<StaffId>(&subject)) {
        if (find_staff(document_.session(), *member) != nullptr) crew_->focus_member(*member);
    }
}

void RosterTab::focus_search() {
    search_->setFocus(Qt::ShortcutFocusReason);
    search_->selectAll();
}

// ---- events ------------------------------------------------------------------------------------

bool RosterTab::eventFilter(QObject* watched, QEvent* event) {
    if (watched == search_ && event->type() == QEvent::KeyPress) {
        switch (static_cast<QKeyEvent*>(event)->key()) {
            case Qt::Key_Escape: search_->clear(); return true;
            case Qt::Key_Down:
            case Qt::Key_Return:
            case Qt::Key_Enter: table_->setFocus(); return true;
            default: break;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void RosterTab::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && model_ != nullptr) model_->set_palette(palette());
}

void RosterTab::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (sized_) return;
    sized_ = true;
    constexpr int part_of_editor = 33;  // percent
    across_->setSizes({width() * (100 - part_of_editor) / 100, width() * part_of_editor / 100});
    // With room enough, groups and staff are in sight from the start.
    constexpr int roomy = 800;
    crew_->set_open(height() >= roomy);
}

QSize RosterTab::sizeHint() const { return {1180, 680}; }

}  // namespace leadline
