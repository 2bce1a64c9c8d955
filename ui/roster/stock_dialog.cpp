// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/stock_dialog.h"

#include <QDialogButtonBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStringList>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/document/session_document.h"
#include "ui/roster/count_box.h"
#include "ui/roster/edit_table.h"
#include "ui/roster/lead_sizes.h"
#include "ui/roster/marks.h"
#include "ui/roster/measures.h"
#include "ui/roster/suit_stock_model.h"
#include "ui/widgets/screen_room.h"
#include "ui/words/error_words.h"

namespace leadline {
namespace {

constexpr int section = 24;

QLabel* heading(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    QFont bold = label->font();
    bold.setBold(true);
    label->setFont(bold);
    return label;
}

QLabel* faint(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setForegroundRole(QPalette::PlaceholderText);
    label->setWordWrap(true);
    return label;
}

int issued_of(const Session& session, const CylinderTypeId& type) {
    const auto is_it = [&](const auto& cylinder) { return cylinder && cylinder->type == type; };
    const auto guests = std::count_if(session.guests.begin(), session.guests.end(),
                                      [&](const Guest& one) { return is_it(one.kit.cylinder); });
    const auto staff = std::count_if(session.staff.begin(), session.staff.end(),
                                     [&](const StaffMember& one) { return is_it(one.cylinder); });
    return static_cast<int>(guests + staff);
}

}  // namespace

StockDialog::StockDialog(SessionDocument& document, QWidget* parent)
    : QDialog(parent),
      document_(document),
      suits_(new SuitStockModel(document.session(), this)) {
    setObjectName(QStringLiteral("stock_dialog"));
    setWindowTitle(tr("Kit in stock"));
    auto* halves = new QHBoxLayout;
    halves->setSpacing(section);
    auto* right = new QVBoxLayout;
    right->setSpacing(section);
    right->addWidget(build_suits(), 1);
    right->addWidget(build_lead());
    halves->addWidget(build_cylinders());
    halves->addLayout(right, 1);

    auto* message_line = new QHBoxLayout;
    message_line->setSpacing(spacing);
    message_icon_ = new QLabel(this);
    message_ = new QLabel(this);
    message_->setObjectName(QStringLiteral("stock_message"));
    message_->setTextFormat(Qt::PlainText);
    message_->setWordWrap(true);
    message_->setMinimumHeight(2 * fontMetrics().lineSpacing());
    message_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    message_line->addWidget(message_icon_, 0, Qt::AlignTop);
    message_line->addWidget(message_, 1);

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    buttons->button(QDialogButtonBox::Ok)->setObjectName(QStringLiteral("stock_ok"));
    buttons->button(QDialogButtonBox::Cancel)->setObjectName(QStringLiteral("stock_cancel"));
    connect(buttons, &QDialogButtonBox::accepted, this, &StockDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(margin, margin, margin, margin);
    column->setSpacing(margin);
    column->addWidget(faint(tr("What there is, kit handed out included. A part left empty is not "
                               "recorded, and nothing in it counts as missing."),
                            this));
    column->addLayout(halves, 1);
    column->addLayout(message_line);
    column->addWidget(buttons);
    resize(within_screen(*this, sizeHint().expandedTo({860, 560})));
    refresh();
}

// ---- building ----------------------------------------------------------------------------------

StockDialog::~StockDialog() {
    // An editor that is still open commits while the parts go one by one.
    disconnect(suits_, nullptr, this, nullptr);
}

QWidget* StockDialog::build_cylinders() {
    auto* part = new QWidget(this);
    auto* grid = new QGridLayout(part);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(margin);
    grid->setVerticalSpacing(spacing);
    grid->addWidget(heading(tr("Cylinders"), part), 0, 0);
    grid->addWidget(faint(tr("In stock"), part), 0, 1);
    const Session& session = document_.session();
    int row = 1;
    for (const CylinderType& type : cylinder_types()) {
        const QString name = text(type, document_.units());
        QString id = QString::fromStdString(type.id.text);
        auto* count = new CountBox(QStringLiteral("stock_%1").arg(id.replace(u'-', u'_')), 0,
                                   most_pieces, part);
        count->allow_empty();
        count->setAccessibleName(tr("%1, in stock").arg(name));
        for (const CylinderStock& held : session.stock.cylinders) {
            if (held.type == type.id) count->show_count(held.count);
        }
        auto* label = new QLabel(name, part);
        label->setBuddy(count);
        const int issued = issued_of(session, type.id);
        grid->addWidget(label, row, 0);
        grid->addWidget(count, row, 1);
        auto* out = faint(
            issued > 0 ? tr("%n handed out", nullptr, static_cast<int>(issued)) : QString(), part);
        out->setWordWrap(false);
        grid->addWidget(out, row, 2);
        connect(count, &CountBox::edited, this, &StockDialog::refresh);
        kinds_.push_back({type.id, count});
        ++row;
    }
    grid->setRowStretch(row, 1);
    return part;
}

QWidget* StockDialog::build_suits() {
    auto* part = new QWidget(this);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing);
    column->addWidget(heading(tr("Suits"), part));
    table_ = new EditTable(QStringLiteral("suit_stock_table"), tr("Suits in stock"), part);
    table_->setModel(suits_);
    table_->setItemDelegate(new SuitStockDelegate(table_));
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    column->addWidget(table_, 1);
    auto* row = new QHBoxLayout;
    row->setSpacing(spacing);
    const auto make = [&](const QString& text, const char* object_name) {
        auto* button = new QPushButton(text, part);
        button->setObjectName(QString::fromLatin1(object_name));
        button->setAutoDefault(false);
        row->addWidget(button);
        return button;
    };
    add_ = make(tr("&Add a suit"), "suit_stock_add");
    add_->setToolTip(tr("Insert, in the table"));
    remove_ = make(tr("&Remove"), "suit_stock_remove");
    remove_->setToolTip(tr("Delete, in the table"));
    remove_->setAccessibleName(tr("Remove the chosen suits"));
    row->addStretch();
    add_issued_ = make(tr("Add those &handed out"), "suit_stock_add_issued");
    column->addLayout(row);
    connect(add_, &QPushButton::clicked, this, &StockDialog::add_suit);
    connect(remove_, &QPushButton::clicked, this, &StockDialog::remove_suits);
    connect(add_issued_, &QPushButton::clicked, this, [this] { suits_->add_issued(); });
    connect(table_, &EditTable::row_wanted, this, &StockDialog::add_suit);
    connect(table_, &EditTable::removal_wanted, this, &StockDialog::remove_suits);
    connect(suits_, &QAbstractItemModel::rowsInserted, this, &StockDialog::refresh);
    connect(suits_, &QAbstractItemModel::rowsRemoved, this, &StockDialog::refresh);
    connect(suits_, &QAbstractItemModel::dataChanged, this,
            [this](const QModelIndex&, const QModelIndex&, const QList<int>& roles) {
                if (roles.isEmpty()) refresh();
            });
    return part;
}

QWidget* StockDialog::build_lead() {
    auto* part = new QWidget(this);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing);
    const bool metric = document_.units() == UnitSystem::metric;
    auto* label = heading(metric ? tr("&Lead pieces, kg") : tr("&Lead pieces, lb"), part);
    lead_ = new QLineEdit(part);
    lead_->setObjectName(QStringLiteral("lead_pieces_edit"));
    lead_->setAccessibleName(metric ? tr("Sizes of lead pieces in kilograms")
                                    : tr("Sizes of lead pieces in pounds"));
    lead_->setPlaceholderText(metric ? tr("For example 0.5 1 2") : tr("For example 1 2 3"));
    constexpr int longest = 300;
    lead_->setMaxLength(longest);
    label->setBuddy(lead_);
    lead_words_ = faint({}, part);
    lead_words_->setObjectName(QStringLiteral("lead_pieces_words"));
    column->addWidget(label);
    column->addWidget(lead_);
    column->addWidget(lead_words_);
    lead_shown_ = lead_sizes_text(document_.session().stock.lead_pieces, document_.units());
    lead_->setText(lead_shown_);
    connect(lead_, &QLineEdit::textChanged, this, &StockDialog::refresh);
    return part;
}

// ---- doing -------------------------------------------------------------------------------------

void StockDialog::add_suit() {
    if (suits_->rowCount() >= most_suit_kinds) {
        return say(tr("%1 labels are the most.").arg(most_suit_kinds));
    }
    const int row = suits_->add({{}, 1});
    table_->edit_cell(suits_->index(row, static_cast<int>(SuitColumn::suit)));
}

void StockDialog::remove_suits() {
    const std::vector<int> rows = table_->chosen_rows();
    if (rows.empty() || suits_->rowCount() == 0) return;
    for (const int row : rows) suits_->remove(row);
    const int next = std::min(rows.back(), suits_->rowCount() - 1);
    if (next < 0) return add_->setFocus();
    table_->setCurrentIndex(suits_->index(next, 0));
    table_->setFocus();
}

Stock StockDialog::stock() const {
    Stock held;
    for (const Kind& kind : kinds_) {
        if (const std::optional<int> count = kind.count->count()) {
            held.cylinders.push_back({kind.type, *count});
        }
    }
    // A row without a label is one not filled in.
    for (const SuitStock& suit : suits_->suits()) {
        if (!suit.suit.empty()) held.suits.push_back(suit);
    }
    // Untouched, the sizes keep digits that the line does not show.
    held.lead_pieces = lead_->text() == lead_shown_
                           ? document_.session().stock.lead_pieces
                           : read_lead_sizes(lead_->text(), document_.units())
                                 .value_or(std::vector<Kilograms>());
    return held;
}

// ---- judging -----------------------------------------------------------------------------------

QString StockDialog::judge() {
    wrong_ = {};
    if (!read_lead_sizes(lead_->text(), document_.units())) {
        suits_->set_wrong(std::nullopt, {});
        return tr("Lead pieces: \"%1\" is not a list of sizes. Write numbers with spaces between: "
                  "0.5 1 2.")
            .arg(lead_->text().left(60));
    }
    Session session = document_.session();
    session.stock = stock();
    const Result<Done> checked = check(session);
    if (checked) {
        suits_->set_wrong(std::nullopt, {});
        return {};
    }
    Error error = checked.error();
    // "/stock/suits/2/suit", "/stock/lead_pieces_kg/0"
    const QStringList parts = QString::fromStdString(error.place).split(u'/');
    if (parts.size() == 5 && parts[2] == u"suits") {
        int filled = parts[3].toInt();
        for (int row = 0; row < suits_->rowCount(); ++row) {
            if (suits_->suits()[static_cast<std::size_t>(row)].suit.empty()) continue;
            if (filled-- == 0) wrong_ = suits_->index(row, 0);
        }
        error.place = tr("Suits").toStdString();
    } else if (parts.size() >= 3 && parts[2] == u"lead_pieces_kg") {
        error.place = tr("Lead pieces, kg").toStdString();
    }
    const QString said = words(error);
    suits_->set_wrong(wrong_.isValid() ? std::optional(wrong_) : std::nullopt, said);
    return said;
}

void StockDialog::show_lead() {
    const auto sizes = read_lead_sizes(lead_->text(), document_.units());
    if (!sizes) return lead_words_->clear();
    if (sizes->empty()) {
        return lead_words_->setText(tr("Not recorded: whole kilograms are assumed."));
    }
    QStringList each;
    for (const Kilograms size : *sizes) {
        each << lead_sizes_text({size}, document_.units()) + QChar(0x00A0) +
                    (document_.units() == UnitSystem::metric ? tr("kg") : tr("lb"));
    }
    lead_words_->setText(each.join(QStringLiteral(" · ")));
}

void StockDialog::refresh() {
    if (message_ == nullptr) return;
    remove_->setEnabled(suits_->rowCount() > 0);
    add_issued_->setEnabled(suits_->lacks_issued());
    show_lead();
    say(judge());
}

void StockDialog::say(const QString& text) {
    constexpr int side = 18;
    message_->setText(text);
    message_->setAccessibleDescription(text);
    message_icon_->setPixmap(mark_icon(Mark::stop, palette()).pixmap(side, side));
    message_icon_->setVisible(!text.isEmpty());
}

void StockDialog::accept() {
    for (const Kind& kind : kinds_) kind.count->interpretText();
    if (const QString problem = judge(); !problem.isEmpty()) {
        say(problem);
        if (wrong_.isValid()) {
            table_->edit_cell(wrong_);
        } else {
            lead_->setFocus();
            lead_->selectAll();
        }
        return;
    }
    const Stock held = stock();
    const Result<Done> done = document_.edit(
        tr("Change kit in stock"), [&](Session& session) { session.stock = held; });
    if (!done) return say(words(done.error()));
    QDialog::accept();
}

}  // namespace leadline
