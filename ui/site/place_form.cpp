// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/place_form.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QCompleter>
#include <QEvent>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QSignalBlocker>
#include <QStandardItemModel>
#include <QToolButton>
#include <array>

#include "ui/document/session_document.h"
#include "ui/widgets/quantity_box.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

constexpr int longest_plan = 2000;
constexpr int row_role = Qt::UserRole + 1;

/// Waters by their usual salinity: 35 the open ocean, 7 the middle of the Baltic (both from memory).
struct Water {
    const char* name;
    double salinity;
};
constexpr std::array waters{Water{QT_TRANSLATE_NOOP("leadline::PlaceForm", "Sea"), 35.0},
                            Water{QT_TRANSLATE_NOOP("leadline::PlaceForm", "Fresh water"), 0.0},
                            Water{QT_TRANSLATE_NOOP("leadline::PlaceForm", "Brackish"), 7.0}};

/// Index of the water with a salinity; past the last when it is none of them.
int water_of(double salinity) {
    for (std::size_t i = 0; i < waters.size(); ++i) {
        if (waters[i].salinity == salinity) return static_cast<int>(i);
    }
    return static_cast<int>(waters.size());
}

void show_text(QLineEdit* line, const std::string& text) {
    const QString wanted = QString::fromStdString(text);
    line->setToolTip(wanted.toHtmlEscaped());
    if (line->text() == wanted) return;
    line->setText(wanted);
    line->setCursorPosition(0);
}

}  // namespace

PlaceForm::PlaceForm(SessionDocument& document, QWidget* parent)
    : QWidget(parent), document_(document), known_names_(new QStandardItemModel(this)) {
    auto* form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    form->setVerticalSpacing(8);
    form->setHorizontalSpacing(16);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    add_name_row(*form);
    add_water_rows(*form);
    add_emergency_rows(*form);
    connect(&document_, &SessionDocument::changed, this, &PlaceForm::refresh);
    refresh();
}

QLineEdit* PlaceForm::text_field(const QString& name, int longest, const QString& what,
                                 std::string Site::*field) {
    auto* line = new QLineEdit;
    line->setObjectName(name);
    line->setMaxLength(longest);
    connect(line, &QLineEdit::textEdited, this, [this, what, name, field](const QString& text) {
        edit(what, name, [&](Site& site) { site.*field = text.toStdString(); });
    });
    return line;
}

void PlaceForm::add_name_row(QFormLayout& form) {
    name_ = text_field(QStringLiteral("site_name"), 200, tr("Change the site's name"), &Site::name);
    name_->setPlaceholderText(tr("Name of the site"));
    completer_ = new QCompleter(known_names_, this);
    completer_->setCaseSensitivity(Qt::CaseInsensitive);
    completer_->setFilterMode(Qt::MatchContains);
    completer_->setMaxVisibleItems(12);
    name_->setCompleter(completer_);
    name_->installEventFilter(this);
    completer_->popup()->setObjectName(QStringLiteral("site_known_list"));
    completer_->popup()->setAccessibleName(tr("Known sites"));
    connect(completer_, qOverload<const QModelIndex&>(&QCompleter::activated), this,
            [this](const QModelIndex& index) { take_known_site(index.data(row_role).toInt()); });
    // Walking through the list writes into the line; leaving it without a choice takes that back.
    connect(name_, &QLineEdit::editingFinished, this, &PlaceForm::refresh);
    known_button_ = new QToolButton;
    known_button_->setObjectName(QStringLiteral("site_known"));
    known_button_->setArrowType(Qt::DownArrow);
    known_button_->setAccessibleName(tr("Known sites"));
    known_button_->setToolTip(
        tr("Known sites from your records; choosing one fills in this form. Down opens the list."));
    known_button_->setFocusPolicy(Qt::StrongFocus);
    known_button_->hide();
    connect(known_button_, &QToolButton::clicked, this, &PlaceForm::show_known_sites);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(name_, 1);
    row->addWidget(known_button_);
    form.addRow(tr("&Name"), row);
    // A layout as field gives its label no buddy.
    if (auto* label = qobject_cast<QLabel*>(form.labelForField(row))) label->setBuddy(name_);
    name_->setAccessibleName(tr("Name of the site"));

    entry_ = new QComboBox;
    entry_->setObjectName(QStringLiteral("site_entry"));
    for (const Entry entry : {Entry::shore, Entry::boat, Entry::pool_steps}) {
        entry_->addItem(label(entry), static_cast<int>(entry));
    }
    connect(entry_, &QComboBox::activated, this, [this](int index) {
        edit(tr("Change the entry"), {}, [&](Site& site) {
            site.entry = static_cast<Entry>(entry_->itemData(index).toInt());
        });
    });
    form.addRow(tr("Entr&y"), entry_);
}

void PlaceForm::add_water_rows(QFormLayout& form) {
    bottom_ = new QuantityBox(QuantityKind::bottom_depth);
    bottom_->setObjectName(QStringLiteral("site_bottom_depth"));
    bottom_->allow_empty(tr("Not known"));
    bottom_->setToolTip(tr("The deepest a guest could sink there"));
    connect(bottom_, &QuantityBox::edited, this, [this](std::optional<double> meters) {
        edit(tr("Change the bottom depth"), {}, [&](Site& site) {
            site.bottom_depth.reset();
            if (meters) site.bottom_depth = Depth(Meters(*meters));
        });
    });
    form.addRow(tr("&Bottom depth"), bottom_);

    water_ = new QComboBox;
    water_->setObjectName(QStringLiteral("site_water"));
    for (const Water& water : waters) water_->addItem(tr(water.name));
    water_->addItem(tr("Other"));
    water_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    constexpr int letters = 6;
    water_->setMinimumContentsLength(letters);
    salinity_ = new QuantityBox(QuantityKind::salinity);
    salinity_->setObjectName(QStringLiteral("site_salinity"));
    salinity_->setAccessibleName(tr("Salinity"));
    salinity_->setToolTip(
        tr("Practical salinity, a number without unit: 0 fresh water, 35 open sea"));
    const auto set_salinity = [this](double value) {
        edit(tr("Change the salinity"), {},
             [&](Site& site) { site.salinity = PracticalSalinity{value}; });
    };
    connect(water_, &QComboBox::activated, this, [this, set_salinity](int index) {
        if (index < static_cast<int>(waters.size())) {
            set_salinity(waters[static_cast<std::size_t>(index)].salinity);
        } else {
            salinity_->setFocus(Qt::OtherFocusReason);
            salinity_->selectAll();
        }
    });
    connect(salinity_, &QuantityBox::edited, this, [set_salinity](std::optional<double> value) {
        set_salinity(value.value_or(35.0));
    });
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(water_, 1);
    row->addWidget(salinity_);
    form.addRow(tr("Water"), row);
    if (auto* label = qobject_cast<QLabel*>(form.labelForField(row))) label->setBuddy(water_);
    water_->setAccessibleName(tr("Kind of water"));

    altitude_ = new QuantityBox(QuantityKind::altitude);
    altitude_->setObjectName(QStringLiteral("site_altitude"));
    altitude_->setToolTip(tr("Of the water's surface above the sea"));
    connect(altitude_, &QuantityBox::edited, this, [this](std::optional<double> meters) {
        edit(tr("Change the altitude"), {}, [&](Site& site) {
            site.altitude = Altitude(Meters(meters.value_or(0.0)));
        });
    });
    form.addRow(tr("&Altitude"), altitude_);

    latitude_ = new QuantityBox(QuantityKind::latitude);
    latitude_->setObjectName(QStringLiteral("site_latitude"));
    latitude_->setToolTip(tr("North positive, south negative; gravity follows from it"));
    connect(latitude_, &QuantityBox::edited, this, [this](std::optional<double> degrees) {
        edit(tr("Change the latitude"), {}, [&](Site& site) {
            site.latitude = Degrees(degrees.value_or(0.0));
        });
    });
    form.addRow(tr("La&titude"), latitude_);
}

void PlaceForm::add_emergency_rows(QFormLayout& form) {
    meeting_place_ = text_field(QStringLiteral("site_meeting_place"), 500,
                                tr("Change the meeting place"), &Site::meeting_place);
    meeting_place_->setPlaceholderText(tr("Where guests come together"));
    form.addRow(tr("&Meeting place"), meeting_place_);
    emergency_line_ = text_field(QStringLiteral("site_emergency_line"), 200,
                                 tr("Change the emergency number"), &Site::emergency_line);
    emergency_line_->setPlaceholderText(tr("Printed on every card"));
    form.addRow(tr("Emergency n&umber"), emergency_line_);
    emergency_plan_ = new QPlainTextEdit;
    emergency_plan_->setObjectName(QStringLiteral("site_emergency_plan"));
    emergency_plan_->setTabChangesFocus(true);
    emergency_plan_->setPlaceholderText(
        tr("Oxygen, phone or radio, nearest chamber, the way out, how to recall"));
    emergency_plan_->setMinimumHeight(emergency_plan_->fontMetrics().lineSpacing() * 6);
    connect(emergency_plan_, &QPlainTextEdit::textChanged, this, &PlaceForm::plan_text_changed);
    auto* caption = new QLabel(tr("Emergency &plan"));
    caption->setBuddy(emergency_plan_);
    form.addRow(caption);
    form.addRow(emergency_plan_);
}

void PlaceForm::set_site_finder(std::function<std::vector<Site>()> finder) {
    finder_ = std::move(finder);
    known_button_->setVisible(static_cast<bool>(finder_));
}

void PlaceForm::edit(const QString& what, const QString& key,
                     const std::function<void(Site&)>& change) {
    const Result<Done> done =
        document_.edit(what, [&](Session& session) { change(session.site); }, key);
    if (!done) refresh();
}

void PlaceForm::plan_text_changed() {
    const QString text = emergency_plan_->toPlainText().left(longest_plan);
    edit(tr("Change the emergency plan"), QStringLiteral("site_emergency_plan"),
         [&](Site& site) { site.emergency_plan = text.toStdString(); });
    if (emergency_plan_->toPlainText() != text) refresh();
}

void PlaceForm::refresh() {
    const Site& site = document_.session().site;
    show_text(name_, site.name);
    show_text(meeting_place_, site.meeting_place);
    show_text(emergency_line_, site.emergency_line);
    const QString plan = QString::fromStdString(site.emergency_plan);
    if (emergency_plan_->toPlainText() != plan) {
        const QSignalBlocker blocker(emergency_plan_);
        emergency_plan_->setPlainText(plan);
    }
    entry_->setCurrentIndex(entry_->findData(static_cast<int>(site.entry)));
    for (QuantityBox* box : {altitude_, bottom_}) box->set_units(document_.units());
    altitude_->show_value(site.altitude.meters().value());
    latitude_->show_value(site.latitude.value());
    salinity_->show_value(site.salinity.value);
    water_->setCurrentIndex(water_of(site.salinity.value));
    bottom_->show_value(site.bottom_depth
                            ? std::optional<double>(site.bottom_depth->meters().value())
                            : std::nullopt);
}

void PlaceForm::load_known_sites() {
    if (!finder_) return;
    std::vector<Site> found = finder_();
    if (found == known_) return;  // the list on the screen keeps its rows
    known_ = std::move(found);
    known_names_->clear();
    for (std::size_t i = 0; i < known_.size(); ++i) {
        auto* item = new QStandardItem(QString::fromStdString(known_[i].name));
        item->setData(static_cast<int>(i), row_role);
        item->setEditable(false);
        known_names_->appendRow(item);
    }
}

bool PlaceForm::eventFilter(QObject* watched, QEvent* event) {
    if (watched == name_ && event->type() == QEvent::FocusIn) {
        // The list's own closing gives the focus back while a choice from it is under way.
        const auto* focus = dynamic_cast<QFocusEvent*>(event);
        if (focus != nullptr && focus->reason() != Qt::PopupFocusReason) load_known_sites();
    }
    if (watched == name_ && event->type() == QEvent::KeyPress && finder_) {
        const auto* key = dynamic_cast<QKeyEvent*>(event);
        if (key != nullptr && key->key() == Qt::Key_Down && !completer_->popup()->isVisible()) {
            show_known_sites();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void PlaceForm::show_known_sites() {
    name_->setFocus(Qt::OtherFocusReason);
    load_known_sites();
    completer_->setCompletionPrefix(QString());
    completer_->complete();
}

void PlaceForm::take_known_site(int row) {
    if (row < 0 || row >= static_cast<int>(known_.size())) return;
    const Site chosen = known_[static_cast<std::size_t>(row)];
    edit(tr("Take the site %1").arg(QString::fromStdString(chosen.name)), {},
         [&](Site& site) { site = chosen; });
    refresh();
}

}  // namespace leadline
