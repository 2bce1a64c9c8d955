// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/people_dialog.h"

#include <QDate>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>
#include <chrono>
#include <utility>

#include "core/files/text_file.h"
#include "core/records/fold.h"
#include "ui/document/resources.h"
#include "ui/shell/duplicates_dialog.h"
#include "ui/shell/people_model.h"
#include "ui/shell/record_keeper.h"
#include "ui/shell/removal_dialog.h"
#include "ui/widgets/screen_room.h"
#include "ui/words/error_words.h"
#include "ui/words/name_words.h"
#include "ui/words/quantity_text.h"

namespace leadline {

namespace {

const QString looked_setting = QStringLiteral("due_looked_at");

Date current_day() {
    const QDate day = QDate::currentDate();
    return Date{std::chrono::year(day.year()),
                std::chrono::month(static_cast<unsigned>(day.month())),
                std::chrono::day(static_cast<unsigned>(day.day()))};
}

/// A file name from a guest's name: what every file system takes.
QString file_name(const std::string& name) {
    QString text;
    for (const QChar letter : folded(QString::fromStdString(name))) {
        text += letter.isLetterOrNumber() ? letter : QChar(u'-');
    }
    return QStringLiteral("guest-") + text.left(60) + QStringLiteral(".html");
}

}  // namespace

PeopleDialog::PeopleDialog(RecordKeeper& keeper, UnitSystem units, QWidget* parent)
    : QDialog(parent),
      keeper_(keeper),
      database_(*keeper.database()),
      units_(units),
      model_(new PeopleModel(database_, this)),
      search_(new QLineEdit(this)),
      count_(new QLabel(this)),
      strip_(new QWidget(this)),
      strip_text_(new QLabel(strip_)),
      table_(new QTableView(this)),
      details_(new QLabel(this)),
      said_(new QLabel(this)) {
    setWindowTitle(tr("Guests on record"));
    setObjectName(QStringLiteral("people_dialog"));
    resize(within_screen(*this, {860, 620}));
    today = current_day;
    choose_path = [this](const QString& suggested) {
        return QFileDialog::getSaveFileName(this, tr("Write all that is kept of this guest"),
                                            suggested,
                                            tr("Page to read (*.html);;Data (*.json)"));
    };
    periods_ = load_retention_rules().value_or({});
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 16, 16, 16);
    layout->setSpacing(8);
    build_head();
    build_table();
    layout->addWidget(details_);
    layout->addWidget(said_);
    build_buttons();
    connect(model_, &PeopleModel::failed, this, &PeopleDialog::say);
    update_count();
    update_details();
    search_->setFocus();
}

void PeopleDialog::build_head() {
    auto* layout = qobject_cast<QVBoxLayout*>(this->layout());
    search_->setObjectName(QStringLiteral("people_search"));
    search_->setPlaceholderText(tr("Find by name, phone or e-mail"));
    search_->setAccessibleName(tr("Find a guest by name, phone or e-mail"));
    search_->setClearButtonEnabled(true);
    count_->setObjectName(QStringLiteral("people_count"));
    auto* row = new QHBoxLayout;
    row->addWidget(search_, 1);
    row->addWidget(count_);
    layout->addLayout(row);
    connect(search_, &QLineEdit::textChanged, this, [this](const QString& text) {
        said_->clear();
        model_->search(text);
        update_count();
        update_details();
    });

    strip_->setObjectName(QStringLiteral("people_due"));
    strip_->setAutoFillBackground(true);
    strip_->setBackgroundRole(QPalette::AlternateBase);
    strip_text_->setObjectName(QStringLiteral("people_due_text"));
    strip_text_->setWordWrap(true);
    auto* show = new QPushButton(tr("&Show them"), strip_);
    show->setObjectName(QStringLiteral("people_due_show"));
    auto* aside = new QPushButton(tr("In a &month"), strip_);
    aside->setObjectName(QStringLiteral("people_due_aside"));
    for (QPushButton* button : {show, aside}) button->setAutoDefault(false);
    auto* strip = new QHBoxLayout(strip_);
    strip->setContentsMargins(8, 4, 8, 4);
    strip->addWidget(strip_text_, 1);
    strip->addWidget(show);
    strip->addWidget(aside);
    strip_->hide();
    layout->addWidget(strip_);
    connect(show, &QPushButton::clicked, this, &PeopleDialog::show_due);
    connect(aside, &QPushButton::clicked, this, &PeopleDialog::put_due_aside);
}

void PeopleDialog::build_table() {
    table_->setObjectName(QStringLiteral("people_table"));
    table_->setAccessibleName(tr("Guests on record"));
    table_->setModel(model_);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setShowGrid(false);
    table_->setWordWrap(false);
    table_->setTabKeyNavigation(false);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    QHeaderView* header = table_->horizontalHeader();
    header->setHighlightSections(false);
    header->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    header->setSectionResizeMode(QHeaderView::Interactive);
    header->setSectionResizeMode(PeopleModel::name_column, QHeaderView::Stretch);
    const QFontMetrics metrics(table_->font());
    const int room = metrics.horizontalAdvance(QStringLiteral("MM"));
    const auto width = [&](const QString& widest) {
        return metrics.horizontalAdvance(widest) + room;
    };
    int date_width = 0;
    for (unsigned month = 1; month <= 12; ++month) {
        const Date longest{std::chrono::year{2000}, std::chrono::month{month}, std::chrono::day{28}};
        date_width = std::max(date_width, width(spelled(longest)));
    }
    header->resizeSection(PeopleModel::born_column, date_width);
    header->resizeSection(PeopleModel::phone_column, width(QStringLiteral("+00 000 0000 0000")));
    header->resizeSection(PeopleModel::last_column,
                          std::max(date_width, width(tr("Last session"))));
    header->resizeSection(PeopleModel::sessions_column, width(tr("Sessions")));
    qobject_cast<QVBoxLayout*>(layout())->addWidget(table_, 1);

    details_->setObjectName(QStringLiteral("people_details"));
    details_->setTextFormat(Qt::PlainText);
    details_->setWordWrap(true);
    details_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    constexpr int detail_lines = 4;
    details_->setMinimumHeight((detail_lines + 1) * metrics.lineSpacing());
    details_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    said_->setObjectName(QStringLiteral("people_said"));
    said_->setWordWrap(true);
    connect(table_->selectionModel(), &QItemSelectionModel::selectionChanged, this,
            &PeopleDialog::update_details);
    connect(model_, &QAbstractItemModel::modelReset, this, &PeopleDialog::update_details);
}

void PeopleDialog::build_buttons() {
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    const auto add = [&](const QString& text, const char* name, void (PeopleDialog::*action)()) {
        QPushButton* button = buttons->addButton(text, QDialogButtonBox::ActionRole);
        button->setObjectName(QString::fromUtf8(name));
        button->setAutoDefault(false);
        connect(button, &QPushButton::clicked, this, action);
        return button;
    };
    add(tr("Who is here t&wice…"), "people_duplicates", &PeopleDialog::find_duplicates);
    merge_ = add(tr("Mer&ge two…"), "people_merge", &PeopleDialog::merge_selected);
    merge_->setToolTip(tr("Select two guests who are one person"));
    back_ = add(tr("Take a merge &back"), "people_unmerge", &PeopleDialog::take_merge_back);
    write_ = add(tr("Write to a &file…"), "people_write", &PeopleDialog::write_file);
    remove_ = add(tr("&Remove…"), "people_remove", &PeopleDialog::remove_guest);
    buttons->button(QDialogButtonBox::Close)->setAutoDefault(false);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    layout()->addWidget(buttons);
}

void PeopleDialog::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    look_for_due();
}

std::vector<KnownGuest> PeopleDialog::selected() const {
    std::vector<KnownGuest> persons;
    const QItemSelection selection = table_->selectionModel()->selection();
    // With all selected this would read all: what is asked for is whether it is one, or two.
    for (const QItemSelectionRange& range : selection) {
        for (int row = range.top(); row <= range.bottom() && persons.size() < 3; ++row) {
            if (const auto person = model_->person(row)) persons.push_back(*person);
        }
    }
    return persons;
}

void PeopleDialog::update_count() {
    const int count = model_->rowCount();
    if (model_->is_cut()) {
        count_->setText(tr("More than %L1 found").arg(PeopleModel::most_found));
    } else if (search_->text().simplified().isEmpty()) {
        count_->setText(tr("%Ln guests", nullptr, count));
    } else {
        count_->setText(count == 0 ? tr("Nobody found") : tr("%Ln found", nullptr, count));
    }
}

QString PeopleDialog::due_text(qint64 person) const {
    const auto found = due_of_.find(person);
    if (found == due_of_.end()) return {};
    QStringList kinds;
    for (const KeptKind kind : found->second.kinds) {
        switch (kind) {
            case KeptKind::health: kinds += tr("health answers"); break;
            case KeptKind::contacts: kinds += tr("phone and e-mail"); break;
            case KeptKind::identity: kinds += tr("everything that tells who it was"); break;
        }
    }
    return tr("Due for erasure: %1.").arg(kinds.join(QStringLiteral(", ")));
}

void PeopleDialog::update_details() {
    const std::vector<KnownGuest> persons = selected();
    const bool one = persons.size() == 1;
    merge_->setEnabled(persons.size() == 2);
    write_->setEnabled(one);
    remove_->setEnabled(one);
    merges_ = one ? PersonMerges(database_).into(persons[0].row).value_or({})
                  : std::vector<PersonMerge>();
    back_->setVisible(!merges_.empty());
    if (!one) {
        details_->setText(persons.empty() ? tr("Select a guest to see what is known.")
                          : persons.size() == 2
                              ? tr("Two selected: merge them if they are one person.")
                              : tr("Several selected."));
        return;
    }
    const Guest& guest = persons[0].guest;
    QStringList known;
    const auto add = [&](const QString& what) {
        if (!what.isEmpty()) known += what;
    };
    add(QString::fromStdString(guest.email));
    add(language_name(guest.language));
    if (guest.body_mass) add(text(*guest.body_mass, units_));
    if (guest.body_height) add(height_text(*guest.body_height, units_));
    if (guest.shoe_size_eu) add(tr("shoe %1").arg(*guest.shoe_size_eu));
    if (guest.measured_rmv) add(tr("air use %1").arg(text(*guest.measured_rmv, units_)));
    if (guest.dives_before)
        add(tr("%n dives before", nullptr, static_cast<int>(*guest.dives_before)));
    QStringList lines{QString::fromStdString(guest.name), known.join(QStringLiteral(" · "))};
    if (!merges_.empty()) {
        QStringList names;
        for (const PersonMerge& merge : merges_) names += merge.merged_name;
        lines += tr("Merged into this guest: %1").arg(names.join(QStringLiteral(", ")));
    }
    const QString due = due_text(persons[0].row);
    if (!due.isEmpty()) lines += due;
    details_->setText(lines.join(u'\n'));
}

void PeopleDialog::look_for_due() {
    if (looked_) return;
    looked_ = true;
    const QString last = keeper_.setting(looked_setting).value_or(QString());
    const Result<Date> day = parse_date(last.toStdString(), {});
    const Date now = today();
    if (periods_.rules.empty() || !is_time_to_look(day ? std::optional(*day) : std::nullopt, now)) {
        return;
    }
    using Found = Result<std::vector<DueErasure>>;
    looking_.start(
        [path = database_.path(), periods = periods_, now](const GoOn&) -> Found {
            const auto database = Database::open(path);
            if (!database) return database.error();
            int least = periods.rules.front().erase_after_months;
            for (const RetentionRule& rule : periods.rules) {
                least = std::min(least, rule.erase_after_months);
            }
            // A day more than the shortest period: months are not equally long.
            const Date before(std::chrono::sys_days(months_later(now, -least)) +
                              std::chrono::days(5));
            const auto facts = kept_facts(**database, before);
            if (!facts) return facts.error();
            return due_for_erasure(periods, *facts, now);
        },
        [this](Found found) {
            // Records that cannot be read say so where they are read for the table.
            due_ = std::move(found).value_or({});
            for (const DueErasure& due : due_) due_of_[due.person] = due;
            if (due_.empty()) return;
            strip_text_->setText(
                tr("%Ln guests are due for erasure by the centre's periods. Nothing is erased by "
                   "itself.",
                   nullptr, static_cast<int>(due_.size())));
            strip_->show();
            update_details();
        });
}

void PeopleDialog::show_due() {
    std::vector<qint64> persons;
    for (const DueErasure& due : due_) persons.push_back(due.person);
    search_->clear();
    model_->list(std::move(persons));
    put_due_aside();
    count_->setText(tr("%L1 due for erasure").arg(due_.size()));
    if (model_->rowCount() > 0) table_->selectRow(0);
    table_->setFocus();
}

void PeopleDialog::put_due_aside() {
    keeper_.put_setting(looked_setting, QString::fromStdString(to_text(today())));
    strip_->hide();
}

void PeopleDialog::find_duplicates() {
    using Pairs = Result<std::vector<DuplicatePair>>;
    std::optional<Pairs> pairs =
        work_behind_box(this, tr("Looking for guests on record twice…"), true,
                        [path = database_.path()](const GoOn& go_on) -> Pairs {
                            const auto database = Database::open(path);
                            if (!database) return database.error();
                            return Duplicates(**database).find(go_on);
                        });
    if (!pairs) return;
    if (!*pairs) return say(words(pairs->error()));
    offer(std::move(**pairs));
}

void PeopleDialog::merge_selected() {
    const std::vector<KnownGuest> persons = selected();
    if (persons.size() != 2) return;
    DuplicatePair pair;
    pair.first = std::min(persons[0].row, persons[1].row);
    pair.second = std::max(persons[0].row, persons[1].row);
    const Guest& one = persons[0].guest;
    const Guest& other = persons[1].guest;
    pair.names = likeness(folded(QString::fromStdString(one.name)),
                          folded(QString::fromStdString(other.name)));
    pair.same_birth_date = one.birth_date && one.birth_date == other.birth_date;
    pair.birth_dates_differ =
        one.birth_date && other.birth_date && one.birth_date != other.birth_date;
    pair.same_phone = !one.phone.empty() && one.phone == other.phone;
    pair.same_email = !one.email.empty() && one.email == other.email;
    offer({pair});
}

void PeopleDialog::offer(std::vector<DuplicatePair> pairs) {
    DuplicatesDialog dialog(database_, std::move(pairs), keeper_.health_store(), this);
    connect(&dialog, &DuplicatesDialog::changed, this, &PeopleDialog::after_change);
    dialog.exec();
}

void PeopleDialog::take_merge_back() {
    if (merges_.empty()) return;
    const QString name = merges_.front().merged_name;
    const Result<Done> undone = 
        PersonMerges(database_, keeper_.health_store()).undo(merges_.front().id);
    after_change();
    say(undone ? tr("Taken back: %1 is a guest of their own again.").arg(name)
               : words(undone.error()));
}

void PeopleDialog::write_file() {
    const std::vector<KnownGuest> persons = selected();
    if (persons.size() != 1) return;
    const Result<GuestDossier> dossier = read_dossier(database_, persons[0].row);
    if (!dossier) return say(words(dossier.error()));
    const QString path = choose_path(file_name(persons[0].guest.name));
    if (path.isEmpty()) return;
    const auto sealed = read_sealed ? read_sealed(persons[0].row) : std::nullopt;
    const bool json = path.endsWith(QStringLiteral(".json"), Qt::CaseInsensitive);
    const std::string content = json ? guest_json(*dossier, sealed, today()).toStdString()
                                     : guest_page(*dossier, sealed, today(), units_).toStdString();
    const Result<Done> written = 
        write_text_file(path.toStdString(), content, FileAccess::owner_only);
    say(written ? tr("Written to %1. It holds personal data: hand it to nobody but the guest.")
                      .arg(path)
                : words(written.error()));
}

void PeopleDialog::remove_guest() {
    const std::vector<KnownGuest> persons = selected();
    if (persons.size() != 1) return;
    // What is typed but not on record would be gone when the session is read anew.
    if (!keeper_.save_again()) {
        return say(tr("Nobody is removed while the open session is not saved. %1")
                       .arg(keeper_.unsaved_reason()));
    }
    const qint64 person = persons[0].row;
    const Result<RemovalPreview> preview = PersonRemoval(database_).preview(person);
    if (!preview) return say(words(preview.error()));
    RemovalDialog dialog(*preview, leadline::keeps_longer(periods_, preview->last_session, today()),
                         this);
    if (dialog.exec() != QDialog::Accepted) return;
    const KeptKind kind = dialog.kind();
    const bool copies = dialog.copies_too();
    struct Removed {
        Result<RemovalOutcome> outcome;
        Result<int> copies = 0;
    };
    const std::optional<Removed> removed = work_behind_box(
        this, tr("Removing the guest…"), false,
        [=, path = database_.path(), by = who](const GoOn&) -> Removed {
            const auto database = Database::open(path);
            if (!database) return {database.error()};
            PersonRemoval removal(**database);
            Removed done{removal.remove(person, kind, by)};
            if (done.outcome && copies) done.copies = removal.remove_copies();
            return done;
        });
    due_of_.erase(person);
    std::erase_if(due_, [person](const DueErasure& due) { return due.person == person; });
    // The open session may hold the guest.
    keeper_.reload();
    after_change();
    if (!removed->outcome) return say(words(removed->outcome.error()));
    if (!removed->copies) return say(tr("Removed. %1").arg(words(removed->copies.error())));
    say(removed->outcome->swept
            ? tr("Removed.")
            : tr("Removed. Another program reads the records: close it, and Leadline after it, so "
                 "that nothing is left on the disk."));
}

void PeopleDialog::after_change() {
    model_->reload();
    update_count();
    update_details();
}

void PeopleDialog::say(const QString& text) { said_->setText(text); }

}  // namespace leadline
