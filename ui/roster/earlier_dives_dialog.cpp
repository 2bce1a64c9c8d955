// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/earlier_dives_dialog.h"

#include <QDate>
#include <QDialogButtonBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "ui/document/session_document.h"
#include "ui/roster/count_box.h"
#include "ui/roster/earlier_dives_delegate.h"
#include "ui/roster/earlier_dives_model.h"
#include "ui/roster/edit_table.h"
#include "ui/roster/guest_facts.h"
#include "ui/roster/marks.h"
#include "ui/roster/measures.h"
#include "ui/widgets/elided_label.h"
#include "ui/widgets/screen_room.h"
#include "ui/words/error_words.h"

namespace leadline {
namespace {

constexpr int most_extra_ascents = 20;

/// The column of a field of the session file.
int column_of(const QString& field) {
    const std::array fields{u"date", u"start", u"deepest_m", u"duration_min", u"ascents"};
    for (std::size_t i = 0; i < fields.size(); ++i) {
        if (field == QStringView(fields[i])) return static_cast<int>(i);
    }
    return 0;
}

}  // namespace

EarlierDivesDialog::EarlierDivesDialog(SessionDocument& document, const StaffId& member,
                                       DiveFinder finder, QWidget* parent)
    : QDialog(parent),
      document_(document),
      member_(member),
      finder_(std::move(finder)),
      model_(new EarlierDivesModel(document.units(), this)) {
    setObjectName(QStringLiteral("earlier_dives_dialog"));
    setWindowTitle(tr("Earlier dives"));
    auto* heading = new ElidedLabel(this);
    heading->setObjectName(QStringLiteral("earlier_dives_heading"));
    QFont large = heading->font();
    large.setPointSizeF(large.pointSizeF() * 1.2);
    large.setBold(true);
    heading->setFont(large);
    heading->show_text(tr("Earlier dives of %1").arg(name()));
    auto* why = new QLabel(tr("Dives of the seven days before this one count. Times are those of "
                              "this site's clock."),
                           this);
    why->setWordWrap(true);
    why->setForegroundRole(QPalette::PlaceholderText);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(margin, margin, margin, margin);
    column->setSpacing(spacing);
    column->addWidget(heading);
    column->addWidget(why);
    column->addWidget(build_table(), 1);
    column->addWidget(build_buttons());
    column->addWidget(build_message());
    column->addWidget(build_ascents());
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    buttons->button(QDialogButtonBox::Ok)->setObjectName(QStringLiteral("earlier_dives_ok"));
    buttons->button(QDialogButtonBox::Cancel)
        ->setObjectName(QStringLiteral("earlier_dives_cancel"));
    connect(buttons, &QDialogButtonBox::accepted, this, &EarlierDivesDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    column->addWidget(buttons);
    if (const StaffMember* staff = find_staff(document_.session(), member_)) {
        model_->show_dives(staff->earlier_dives);
        ascents_->show_count(staff->extra_ascents);
    }
    resize(within_screen(*this, sizeHint().expandedTo({620, 480})));
    refresh();
    if (model_->rowCount() > 0) {
        table_->setCurrentIndex(model_->index(0, 0));
        table_->setFocus();
    } else {
        add_->setFocus();
    }
}

// ---- building ----------------------------------------------------------------------------------

EarlierDivesDialog::~EarlierDivesDialog() {
    // An editor that is still open commits while the parts go one by one.
    disconnect(model_, nullptr, this, nullptr);
}

QWidget* EarlierDivesDialog::build_table() {
    stack_ = new QStackedWidget(this);
    table_ = new EditTable(QStringLiteral("earlier_dives_table"), tr("Earlier dives"), stack_);
    table_->setModel(model_);
    table_->setItemDelegate(new EarlierDivesDelegate(
        document_.units(), qt_date(document_.session().date), table_));
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    constexpr int date_letters = 20;
    table_->horizontalHeader()->setMinimumSectionSize(fontMetrics().averageCharWidth() * 8);
    table_->setColumnWidth(0, date_letters * fontMetrics().averageCharWidth());
    auto* empty = new QLabel(finder_ ? tr("No dives noted. Add the first one or take them from "
                                          "the records.")
                                     : tr("No dives noted. Add the first one."),
                             stack_);
    empty->setObjectName(QStringLiteral("earlier_dives_empty"));
    empty->setAlignment(Qt::AlignCenter);
    empty->setWordWrap(true);
    stack_->addWidget(table_);
    stack_->addWidget(empty);
    connect(table_, &EditTable::row_wanted, this, &EarlierDivesDialog::add);
    connect(table_, &EditTable::removal_wanted, this, &EarlierDivesDialog::remove);
    connect(model_, &QAbstractItemModel::rowsInserted, this, &EarlierDivesDialog::refresh);
    connect(model_, &QAbstractItemModel::rowsRemoved, this, &EarlierDivesDialog::refresh);
    connect(model_, &QAbstractItemModel::modelReset, this, &EarlierDivesDialog::refresh);
    connect(model_, &QAbstractItemModel::dataChanged, this,
            [this](const QModelIndex&, const QModelIndex&, const QList<int>& roles) {
                if (roles.isEmpty()) refresh();
            });
    return stack_;
}

QWidget* EarlierDivesDialog::build_buttons() {
    auto* holder = new QWidget(this);
    auto* row = new QHBoxLayout(holder);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(spacing);
    const auto make = [&](const QString& text, const char* object_name) {
        auto* button = new QPushButton(text, holder);
        button->setObjectName(QString::fromLatin1(object_name));
        button->setAutoDefault(false);
        row->addWidget(button);
        return button;
    };
    add_ = make(tr("&Add a dive"), "earlier_dives_add");
    add_->setToolTip(tr("Insert, in the table"));
    remove_ = make(tr("&Remove"), "earlier_dives_remove");
    remove_->setToolTip(tr("Delete, in the table"));
    remove_->setAccessibleName(tr("Remove the chosen dives"));
    row->addStretch();
    take_ = make(tr("&Take from the records"), "earlier_dives_take");
    take_->setToolTip(tr("Dives with a log in the last seven days that %1 led or helped in.")
                          .arg(name().left(60)));
    connect(add_, &QPushButton::clicked, this, &EarlierDivesDialog::add);
    connect(remove_, &QPushButton::clicked, this, &EarlierDivesDialog::remove);
    connect(take_, &QPushButton::clicked, this, &EarlierDivesDialog::take_from_records);
    const StaffMember* staff = find_staff(document_.session(), member_);
    const bool nameless = staff == nullptr || staff->name.empty();
    take_->setEnabled(finder_ && !nameless);
    if (!finder_) take_->setToolTip(tr("No records are open."));
    if (nameless) take_->setToolTip(tr("People are found by name: enter one first."));
    return holder;
}

QWidget* EarlierDivesDialog::build_message() {
    auto* holder = new QWidget(this);
    auto* row = new QHBoxLayout(holder);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(spacing);
    message_icon_ = new QLabel(holder);
    message_ = new QLabel(holder);
    message_->setObjectName(QStringLiteral("earlier_dives_message"));
    message_->setTextFormat(Qt::PlainText);
    message_->setWordWrap(true);
    row->addWidget(message_icon_, 0, Qt::AlignTop);
    row->addWidget(message_, 1);
    // Room for two lines, so that a message moves nothing.
    holder->setMinimumHeight(2 * fontMetrics().lineSpacing());
    return holder;
}

QWidget* EarlierDivesDialog::build_ascents() {
    auto* holder = new QWidget(this);
    auto* row = new QHBoxLayout(holder);
    row->setContentsMargins(0, 0, 0, spacing);
    row->setSpacing(margin);
    ascents_ = new CountBox(QStringLiteral("extra_ascents_box"), 0, most_extra_ascents, holder);
    auto* label =
        new QLabel(tr("&Expected ascents during this dive beside the last"), holder);
    label->setBuddy(ascents_);
    ascents_->setAccessibleName(tr("Expected ascents during this dive beside the last"));
    ascents_->setToolTip(tr("Going up with a guest or to train an ascent, and down again."));
    row->addWidget(label);
    row->addWidget(ascents_);
    row->addStretch();
    return holder;
}

// ---- doing -------------------------------------------------------------------------------------

QString EarlierDivesDialog::name() const {
    const StaffMember* staff = find_staff(document_.session(), member_);
    return staff != nullptr ? staff_name(*staff) : QString();
}

EarlierDive EarlierDivesDialog::suggested() const {
    constexpr int pause = 60;
    constexpr int minutes_a_day = 1440;
    const Session& session = document_.session();
    // Most often the same dive, earlier on the same day: start from what is planned here.
    EarlierDive dive;
    dive.deepest = Depth(Meters(0.0));
    for (const ProfilePoint& point : session.profile.points) {
        dive.deepest = std::max(dive.deepest, point.depth);
    }
    const int length = static_cast<int>(duration(session.profile).value() + 0.5);
    dive.duration = Minutes(std::clamp(length, 1, 240));
    const auto day = std::chrono::sys_days(session.date);
    int back = pause + length - session.dive_time.minutes_after_midnight;
    for (int tries = 0; tries <= most_earlier_dives; ++tries, back += pause + length) {
        // Minutes before this day's midnight; negative within the day.
        const int days = back > 0 ? (back + minutes_a_day - 1) / minutes_a_day : 0;
        dive.date = Date(day - std::chrono::days(days));
        dive.start = TimeOfDay{days * minutes_a_day - back};
        std::vector<EarlierDive> all = model_->dives();
        if (merge_dives(all, {dive}) == 1) break;
    }
    return dive;
}

void EarlierDivesDialog::add() {
    if (model_->rowCount() >= most_earlier_dives) {
        return say(tr("%1 dives are the most. Remove those that are long past.")
                       .arg(most_earlier_dives),
                   true);
    }
    const int row = model_->add(suggested());
    table_->edit_cell(model_->index(row, static_cast<int>(DiveColumn::date)));
}

void EarlierDivesDialog::remove() {
    const std::vector<int> rows = table_->chosen_rows();
    if (rows.empty() || model_->rowCount() == 0) return;
    for (const int row : rows) model_->remove(row);
    const int next = std::min(rows.back(), model_->rowCount() - 1);
    if (next < 0) return add_->setFocus();
    table_->setCurrentIndex(model_->index(next, 0));
    table_->setFocus();
}

void EarlierDivesDialog::take_from_records() {
    const StaffMember* staff = find_staff(document_.session(), member_);
    if (staff == nullptr || !finder_) return;
    const Session& session = document_.session();
    const Result<std::vector<EarlierDive>> found =
        finder_(staff->name, session.date, session.dive_time);
    if (!found) return say(words(found.error()), true);
    std::vector<EarlierDive> dives = model_->dives();
    const int added = static_cast<int>(merge_dives(dives, *found));
    const int known = static_cast<int>(found->size()) - added;
    if (added > 0) model_->show_dives(std::move(dives));
    if (!judge().isEmpty()) return;
    QString said = found->empty() ? tr("No dive of the last seven days is on record.")
                                  : tr("Taken over: %1.").arg(added);
    if (known > 0) said += u' ' + tr("In the table already: %1.").arg(known);
    say(said, false);
}

// ---- judging -----------------------------------------------------------------------------------

Session EarlierDivesDialog::changed() const {
    Session session = document_.session();
    for (StaffMember& staff : session.staff) {
        if (staff.id != member_) continue;
        staff.earlier_dives = model_->dives();
        staff.extra_ascents = ascents_->count().value_or(0);
    }
    return session;
}

QString EarlierDivesDialog::judge() {
    wrong_ = {};
    const Result<Done> checked = check(changed());
    if (checked) {
        model_->set_wrong(std::nullopt, {});
        return {};
    }
    Error error = checked.error();
    // "/staff/0/earlier_dives/2/start"
    const QStringList parts = QString::fromStdString(error.place).split(u'/');
    if (parts.size() == 6 && parts[3] == u"earlier_dives") {
        const int row = parts[4].toInt();
        wrong_ = model_->index(row, column_of(parts[5]));
        const EarlierDive& dive = model_->dives().at(static_cast<std::size_t>(row));
        error.place = tr("Dive of %1, %2").arg(text(dive.date), text(dive.start)).toStdString();
    }
    const QString said = words(error);
    model_->set_wrong(wrong_.isValid() ? std::optional(wrong_) : std::nullopt, said);
    return said;
}

void EarlierDivesDialog::refresh() {
    model_->set_palette(palette());
    stack_->setCurrentIndex(model_->rowCount() == 0 ? 1 : 0);
    remove_->setEnabled(model_->rowCount() > 0);
    const QString problem = judge();
    say(problem, !problem.isEmpty());
}

void EarlierDivesDialog::say(const QString& text, bool wrong) {
    constexpr int side = 18;
    message_->setText(text);
    message_icon_->setPixmap(
        mark_icon(wrong ? Mark::stop : Mark::done, palette()).pixmap(side, side));
    message_icon_->setVisible(!text.isEmpty());
    message_->setAccessibleDescription(text);
}

void EarlierDivesDialog::accept() {
    ascents_->interpretText();
    if (const QString problem = judge(); !problem.isEmpty()) {
        say(problem, true);
        if (wrong_.isValid()) table_->edit_cell(wrong_);
        return;
    }
    const Session after = changed();
    const Result<Done> done =
        document_.edit(tr("Change earlier dives of %1").arg(name()), [&](Session& session) {
            session.staff = after.staff;
        });
    if (!done) return say(words(done.error()), true);
    QDialog::accept();
}

void EarlierDivesDialog::changeEvent(QEvent* event) {
    QDialog::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && message_ != nullptr) refresh();
}

}  // namespace leadline
