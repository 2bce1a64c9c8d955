// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/booking_import_dialog.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPointer>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QTableView>
#include <QThreadPool>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "core/files/text_file.h"
#include "ui/document/resources.h"
#include "ui/document/session_document.h"
#include "ui/roster/booking_model.h"
#include "ui/roster/marks.h"
#include "ui/roster/meaning_header.h"
#include "ui/roster/measures.h"
#include "ui/roster/roster_edits.h"
#include "ui/widgets/screen_room.h"
#include "ui/widgets/wheel_guard.h"
#include "ui/words/booking_text.h"
#include "ui/words/error_words.h"

namespace leadline {
namespace {

constexpr int mark_side = 18;

constexpr std::array date_orders{DateOrder::day_month_year, DateOrder::month_day_year,
                                 DateOrder::year_month_day};
constexpr std::array mass_units{MassUnit::kilograms, MassUnit::pounds};
constexpr std::array height_units{HeightUnit::centimeters, HeightUnit::meters, HeightUnit::inches,
                                  HeightUnit::feet_and_inches};

/// Does work in the pool and gives its result to a dialog, if that is still there, in its thread.
template <typename Work, typename Take>
void in_background(QWidget* dialog, Work work, Take take) {
    QThreadPool::globalInstance()->start(
        [there = QPointer<QWidget>(dialog), work = std::move(work), take = std::move(take)] {
            auto result = work();
            QMetaObject::invokeMethod(
                QCoreApplication::instance(),
                [there, take, result = std::move(result)]() mutable {
                    if (there != nullptr) take(std::move(result));
                },
                Qt::QueuedConnection);
        });
}

template <typename Choice, std::size_t count>
void offer(QComboBox& box, const std::array<Choice, count>& choices) {
    box.addItem(BookingImportDialog::tr("Choose…"));
    for (const Choice choice : choices) box.addItem(label(choice));
}

/// The one chosen; none: left to the list.
template <typename Choice, std::size_t count>
std::optional<Choice> chosen(const QComboBox& box, const std::array<Choice, count>& choices) {
    const bool by_hand = box.property("by_hand").toBool();
    if (!by_hand || box.currentIndex() <= 0) return std::nullopt;
    return choices[static_cast<std::size_t>(box.currentIndex() - 1)];
}

template <typename Choice, std::size_t count>
void show_answer(QComboBox& box, const BookingQuestion<Choice>& question,
                 const std::array<Choice, count>& choices) {
    const QSignalBlocker quiet(&box);
    int at = 0;
    for (std::size_t i = 0; i < count; ++i) {
        if (question.answer == choices[i]) at = static_cast<int>(i) + 1;
    }
    box.setCurrentIndex(at);
}

}  // namespace

BookingImportDialog::BookingImportDialog(SessionDocument& document, const QString& path,
                                         QWidget* parent)
    : QDialog(parent),
      document_(document),
      path_(path),
      model_(new BookingModel(document.units(), this)) {
    setObjectName(QStringLiteral("booking_import_dialog"));
    setWindowTitle(tr("Import a booking list"));
    facts_ = new QLabel(this);
    facts_->setObjectName(QStringLiteral("booking_facts"));
    facts_->setTextFormat(Qt::PlainText);
    facts_->setWordWrap(true);
    progress_ = new QProgressBar(this);
    progress_->setObjectName(QStringLiteral("booking_progress"));
    progress_->setRange(0, 0);
    progress_->setTextVisible(false);
    progress_->setAccessibleName(tr("Reading the list"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(margin, margin, margin, margin);
    column->setSpacing(spacing);
    column->addWidget(facts_);
    column->addWidget(progress_);
    column->addWidget(build_questions());
    column->addWidget(build_list(), 1);
    column->addWidget(build_foot());
    resize(within_screen(*this, {1100, 640}));
    read();
}

BookingImportDialog::~BookingImportDialog() { disconnect(model_, nullptr, this, nullptr); }

// ---- building ----------------------------------------------------------------------------------

QWidget* BookingImportDialog::build_questions() {
    questions_ = new QWidget(this);
    auto* grid = new QGridLayout(questions_);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(spacing);
    grid->setVerticalSpacing(spacing / 2);
    grid->setColumnStretch(3, 1);
    date_order_ = build_question("date_order", tr("&Dates are written as"), 0);
    mass_unit_ = build_question("mass_unit", tr("&Weights are in"), 1);
    height_unit_ = build_question("height_unit", tr("&Heights are in"), 2);
    offer(*date_order_.choice, date_orders);
    offer(*mass_unit_.choice, mass_units);
    offer(*height_unit_.choice, height_units);
    for (const Question& one : {date_order_, mass_unit_, height_unit_}) {
        connect(one.choice, &QComboBox::currentIndexChanged, this, [this, box = one.choice] {
            box->setProperty("by_hand", true);
            understand();
        });
    }
    questions_->hide();
    return questions_;
}

BookingImportDialog::Question BookingImportDialog::build_question(const char* object_name,
                                                                  const QString& name, int row) {
    auto* grid = static_cast<QGridLayout*>(questions_->layout());
    Question question;
    question.mark = new QLabel(questions_);
    question.mark->setFixedWidth(mark_side);
    question.choice = new QComboBox(questions_);
    question.choice->setObjectName(QString::fromLatin1(object_name));
    question.choice->setAccessibleName(QString(name).remove(u'&'));
    guard_wheel(question.choice);
    auto* asked = new QLabel(name, questions_);
    asked->setObjectName(QString::fromLatin1(object_name) + QStringLiteral("_label"));
    asked->setBuddy(question.choice);
    question.text = new QLabel(questions_);
    question.text->setObjectName(QString::fromLatin1(object_name) + QStringLiteral("_text"));
    question.text->setTextFormat(Qt::PlainText);
    question.text->setWordWrap(true);
    grid->addWidget(question.mark, row, 0);
    grid->addWidget(asked, row, 1);
    grid->addWidget(question.choice, row, 2);
    grid->addWidget(question.text, row, 3);
    return question;
}

QWidget* BookingImportDialog::build_list() {
    view_ = new QTableView(this);
    view_->setObjectName(QStringLiteral("booking_table"));
    view_->setAccessibleName(tr("The booking list"));
    header_ = new MeaningHeader(view_);
    view_->setHorizontalHeader(header_);
    view_->setModel(model_);
    view_->setWordWrap(false);
    view_->setAlternatingRowColors(true);
    view_->setTabKeyNavigation(false);
    view_->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    view_->setSelectionMode(QAbstractItemView::SingleSelection);
    view_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    connect(header_, &MeaningHeader::meanings_changed, this, &BookingImportDialog::understand);
    connect(view_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &BookingImportDialog::show_current);
    connect(model_, &BookingModel::ticks_changed, this, [this] {
        refresh_foot();
        show_current();
    });
    return view_;
}

QWidget* BookingImportDialog::build_foot() {
    auto* foot = new QWidget(this);
    auto* column = new QVBoxLayout(foot);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing);
    auto* line = new QHBoxLayout;
    line->setSpacing(spacing);
    message_icon_ = new QLabel(foot);
    message_icon_->setFixedWidth(mark_side);
    message_ = new QLabel(foot);
    message_->setObjectName(QStringLiteral("booking_message"));
    message_->setTextFormat(Qt::PlainText);
    message_->setWordWrap(true);
    message_->setMinimumHeight(2 * fontMetrics().lineSpacing());
    message_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    line->addWidget(message_icon_, 0, Qt::AlignTop);
    line->addWidget(message_, 1);
    column->addLayout(line);
    summary_ = new QLabel(foot);
    summary_->setObjectName(QStringLiteral("booking_summary"));
    summary_->setTextFormat(Qt::PlainText);
    auto* row = new QHBoxLayout;
    row->setSpacing(spacing);
    const auto make = [&](const QString& text, const char* object_name) {
        auto* button = new QPushButton(text, foot);
        button->setObjectName(QString::fromLatin1(object_name));
        button->setAutoDefault(false);
        row->addWidget(button);
        return button;
    };
    next_ = make(tr("&Next message"), "booking_next");
    next_->setToolTip(tr("The next cell with something to be looked at"));
    leave_out_ = make(tr("&Leave out rows with errors"), "booking_leave_out");
    row->addWidget(summary_, 1, Qt::AlignRight);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, foot);
    add_ = buttons->button(QDialogButtonBox::Ok);
    add_->setObjectName(QStringLiteral("booking_add"));
    buttons->button(QDialogButtonBox::Cancel)->setObjectName(QStringLiteral("booking_cancel"));
    row->addWidget(buttons);
    column->addLayout(row);
    connect(next_, &QPushButton::clicked, this,
            [this] { go_to(model_->next_problem(view_->currentIndex(), false)); });
    connect(leave_out_, &QPushButton::clicked, model_, &BookingModel::untick_errors);
    connect(buttons, &QDialogButtonBox::accepted, this, &BookingImportDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    return foot;
}

// ---- reading -----------------------------------------------------------------------------------

void BookingImportDialog::read() {
    ++running_;
    facts_->setText(tr("Reading %1…").arg(QFileInfo(path_).fileName()));
    refresh_foot();
    const std::string words = resource_text(QStringLiteral("booking/header-words.json"));
    in_background(
        this,
        [path = path_.toStdString(), words]() -> Result<TablePointer> {
            const Result<BookingWords> known = read_booking_words(words);
            if (!known) return known.error();
            const Result<std::string> bytes = read_text_file(path, largest_booking_file);
            if (!bytes) return bytes.error();
            Result<BookingTable> table = read_booking_table(*bytes, *known);
            if (!table) return table.error();
            return TablePointer(std::make_shared<const BookingTable>(std::move(*table)));
        },
        [this](const Result<TablePointer>& table) { take_table(table); });
}

void BookingImportDialog::take_table(const Result<TablePointer>& table) {
    --running_;
    const QString name = QFileInfo(path_).fileName();
    if (!table) {
        progress_->hide();
        facts_->setText(name);
        say(words(table.error()), true);
        return refresh_foot();
    }
    table_ = *table;
    QString facts = tr("%1: %2 rows.").arg(name).arg(table_->lines.size());
    if (table_->encoding == TextEncoding::windows_1252) {
        facts += u' ' + tr("The file does not say how its letters are written; they were read as "
                           "Windows-1252. Check names with accents.");
    }
    if (!table_->header_line) {
        facts += u' ' + tr("No headings were found: choose what each column means.");
    }
    said_of_list_ = facts;
    model_->set_table(table_);
    header_->set_meanings(first_choices(*table_).columns);
    QWidget* before = height_unit_.choice;
    for (QComboBox* choice : header_->choices()) {
        setTabOrder(before, choice);
        before = choice;
    }
    setTabOrder(before, view_);
    view_->setCurrentIndex(model_->index(0, 0));
    view_->setFocus();
    understand();
}

void BookingImportDialog::fit_columns() {
    constexpr int letters_least = 14;
    constexpr int letters_of_date = 25;  // "30 de septiembre de 1998", and a mark before it
    constexpr int letters_most = 32;
    const int letter = fontMetrics().averageCharWidth();
    header_->setResizeContentsPrecision(15);
    view_->verticalHeader()->setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("00000")));
    view_->resizeColumnsToContents();
    const std::vector<BookingField> meanings = header_->meanings();
    for (int i = 0; i < model_->columnCount(); ++i) {
        int least = 2 * letters_least * letter;
        if (i > 0) {
            const BookingField meaning = meanings[static_cast<std::size_t>(i - 1)];
            const bool is_date = meaning == BookingField::birth_date;
            // The choice over the column shows its meaning, and an arrow as wide as a line is high.
            const int named =
                fontMetrics().horizontalAdvance(label(meaning)) + 2 * fontMetrics().height();
            least = std::max((is_date ? letters_of_date : letters_least) * letter, named);
        }
        const int most = std::max(least, letters_most * letter);
        header_->resizeSection(i, std::clamp(header_->sectionSize(i), least, most));
    }
}

BookingChoices BookingImportDialog::choices() const {
    return {header_->meanings(), chosen(*date_order_.choice, date_orders),
            chosen(*mass_unit_.choice, mass_units), chosen(*height_unit_.choice, height_units)};
}

void BookingImportDialog::understand() {
    if (table_ == nullptr) return;
    ++running_;
    const int generation = ++generation_;
    const BookingChoices now = choices();
    progress_->show();
    in_background(
        this,
        [table = table_, now, session = document_.session()] {
            return preview_bookings(*table, now, session);
        },
        [this, generation, now](BookingPreview preview) {
            --running_;
            if (generation == generation_) {
                take_preview(std::move(preview), now);
            } else {
                refresh_foot();  // the last to come back may be one that no longer counts
            }
        });
}

void BookingImportDialog::take_preview(BookingPreview preview, const BookingChoices& choices) {
    progress_->hide();
    model_->set_preview(std::move(preview), choices);
    if (!fitted_) fit_columns();
    fitted_ = true;
    const bool says_language =
        std::find(choices.columns.begin(), choices.columns.end(), BookingField::language) !=
        choices.columns.end();
    facts_->setText(said_of_list_ +
                    (says_language ? QString()
                                   : u' ' + tr("No column says the language: English is put.")));
    refresh_questions();
    refresh_foot();
    show_current();
}

// ---- showing -----------------------------------------------------------------------------------

void BookingImportDialog::refresh_questions() {
    const auto show = [&](const Question& shown, const auto& question, const auto& all) {
        show_answer(*shown.choice, question, all);
        auto* asked = questions_->findChild<QLabel*>(shown.choice->objectName() +
                                                     QStringLiteral("_label"));
        for (QWidget* part : {static_cast<QWidget*>(shown.mark), static_cast<QWidget*>(asked),
                              static_cast<QWidget*>(shown.choice),
                              static_cast<QWidget*>(shown.text)}) {
            part->setVisible(question.arises);
        }
        const bool open = question.is_open();
        shown.mark->setPixmap(
            open ? mark_icon(Mark::caution, palette()).pixmap(mark_side, mark_side) : QPixmap());
        const QString example = QString::fromStdString(question.example);
        if (!open) {
            shown.text->setText(shown.choice->property("by_hand").toBool()
                                    ? QString()
                                    : tr("as the list itself says"));
        } else if (question.fitting.empty()) {
            shown.text->setText(
                tr("The list is written in more than one way. Choose one; the cells that do not "
                   "fit will be shown."));
        } else {
            shown.text->setText(tr("\"%1\" can be read in more than one way. Please choose.")
                                    .arg(example.isEmpty() ? tr("A cell") : example));
        }
        return question.arises;
    };
    const BookingPreview& preview = model_->preview();
    const bool dates = show(date_order_, preview.date_order, date_orders);
    const bool masses = show(mass_unit_, preview.mass_unit, mass_units);
    const bool heights = show(height_unit_, preview.height_unit, height_units);
    questions_->setVisible(dates || masses || heights);
}

void BookingImportDialog::refresh_foot() {
    const int count = model_->ticked();
    const int wrong = model_->ticked_with_error();
    const int repeats = model_->repeats_left_out();
    // A press adds nobody while an error stands but leads to it; what is counted can be added.
    add_->setText(tr("&Add %n guests", nullptr, count - wrong));
    add_->setEnabled(is_ready() && count > 0);
    next_->setEnabled(table_ != nullptr);
    leave_out_->setEnabled(wrong > 0);
    QStringList parts;
    if (wrong > 0) parts << tr("%n rows with errors", nullptr, wrong);
    if (repeats > 0) parts << tr("%n there already", nullptr, repeats);
    summary_->setText(parts.join(QStringLiteral(" · ")));
}

void BookingImportDialog::show_current() {
    const QModelIndex cell = view_->currentIndex();
    say(model_->sentences(cell).join(u'\n'), model_->is_error(cell));
}

void BookingImportDialog::say(const QString& text, bool error) {
    message_->setText(text);
    message_->setAccessibleDescription(text);
    const Mark mark = text.isEmpty() ? Mark::none : error ? Mark::stop : Mark::caution;
    message_icon_->setPixmap(mark_icon(mark, palette()).pixmap(mark_side, mark_side));
}

void BookingImportDialog::go_to(const QModelIndex& cell) {
    if (!cell.isValid()) return say(tr("There is nothing else to be looked at."), false);
    view_->setCurrentIndex(cell);
    view_->scrollTo(cell);
    view_->setFocus();
}

// ---- adding ------------------------------------------------------------------------------------

void BookingImportDialog::accept() {
    if (!is_ready()) return;
    const BookingPreview& preview = model_->preview();
    const auto ask = [&](const Question& question) {
        question.choice->setFocus();
        say(question.text->text(), true);
    };
    if (preview.date_order.is_open()) return ask(date_order_);
    if (preview.mass_unit.is_open()) return ask(mass_unit_);
    if (preview.height_unit.is_open()) return ask(height_unit_);
    if (model_->ticked_with_error() > 0) return go_to(model_->next_problem({}, true));
    const std::vector<Guest> guests = model_->guests();
    if (guests.empty()) return;
    constexpr std::size_t most = most_guests;
    const std::size_t room = most - std::min(document_.session().guests.size(), most);
    if (guests.size() > room) {
        return say(tr("A session holds %1 guests at most; there is room for %2 more. Untick some.")
                       .arg(most_guests)
                       .arg(room),
                   true);
    }
    const Result<Done> done =
        document_.edit(tr("Add %n guests", nullptr, static_cast<int>(guests.size())),
                       [&](Session& session) { add_guests(session, guests); });
    if (!done) return say(words(done.error()), true);
    added_ = static_cast<int>(guests.size());
    QDialog::accept();
}

}  // namespace leadline
