// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/screen_view.h"

#include <QEvent>
#include <algorithm>

#include "ui/guest_screen/water_scene.h"

namespace leadline {
namespace {

constexpr double smallest_em = 7.0;
constexpr double page_margin_ems = 0.9;

void invalidate_layout(QLayout& layout) {
    for (int k = 0; k < layout.count(); ++k) {
        if (QLayout* inner = layout.itemAt(k)->layout()) invalidate_layout(*inner);
    }
    layout.invalidate();
}

/// Lets go of what layouts remember of their parts' sizes, innermost first: they would only hear of
/// changes when the event loop comes round.
void invalidate_layouts(QWidget& root) {
    for (QObject* child : root.children()) {
        if (auto* widget = qobject_cast<QWidget*>(child)) invalidate_layouts(*widget);
    }
    if (root.layout() != nullptr) invalidate_layout(*root.layout());
    root.updateGeometry();
}

/// The largest body text that a page of a size is set in: few words need not fill it.
double largest_em(QSize size) {
    const double wide = size.width();
    const double high = size.height();
    return high > wide ? std::min(wide / 24.0, high / 36.0) : std::min(wide / 50.0, high / 27.0);
}

}  // namespace

ScreenView::ScreenView(GuestScreenControl& control, QWidget* parent)
    : QWidget(parent), control_(control) {
    setFocusPolicy(Qt::NoFocus);
    connect(&control_, &GuestScreenControl::content_changed, this, [this] {
        if (isVisible()) update_words();
    });
}

QString ScreenView::say(ScreenWord word) const {
    return screen_word(word, control_.tongue());
}

bool ScreenView::take_key(int /*key*/) {
    return false;
}

void ScreenView::refresh() {
    take_words();
    fit();
}

void ScreenView::update_words() {
    const QString family = tongue().language().font_family;
    take_words();
    arrange(is_portrait());
    scale_all(*this, scale_);
    const bool keeps = family == scale_.family && all_states_fit();
    show_present();
    if (keeps) {
        settle();
    } else {
        fit();
    }
}

bool ScreenView::all_states_fit() {
    for (int state = 0; state < state_count(); ++state) {
        show_state(state);
        invalidate_layouts(*this);
        if (!fits()) return false;
    }
    return true;
}

void ScreenView::apply(double em) {
    scale_.em = em;
    scale_all(*this, scale_);
    const int margin = std::max(2, qRound(em * page_margin_ems));
    if (layout() != nullptr) layout()->setContentsMargins(margin, margin, margin, margin / 2);
}

bool ScreenView::fits() const {
    if (layout() == nullptr) return true;
    if (layout()->totalMinimumSize().width() > width()) return false;
    const int needed = layout()->hasHeightForWidth() ? layout()->totalMinimumHeightForWidth(width())
                                                     : layout()->totalMinimumSize().height();
    return needed <= height();
}

void ScreenView::fit() {
    if (width() < 50 || height() < 50) return;
    scale_.family = tongue().language().font_family;
    scale_.palette = screen_palette(shade_of(palette()));
    arrange(is_portrait());
    double high = largest_em(size());
    apply(high);
    if (!all_states_fit()) {
        double low = std::min(smallest_em, high);
        constexpr int halvings = 5;
        for (int k = 0; k < halvings; ++k) {
            const double middle = (low + high) / 2.0;
            apply(middle);
            (all_states_fit() ? low : high) = middle;
        }
        apply(low);
    }
    show_present();
    settle();
}

void ScreenView::settle() {
    invalidate_layouts(*this);
    if (layout() != nullptr) layout()->activate();
    update();
}

void ScreenView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit();
}

void ScreenView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::ApplicationPaletteChange && isVisible()) fit();
}

QStringList ScreenView::cut_off_words() const {
    QStringList cut;
    const auto outside = [this](const QWidget& part) {
        const QRect there(part.mapTo(this, QPoint(0, 0)), part.size());
        return !rect().contains(there);
    };
    for (const GuestLabel* label : findChildren<GuestLabel*>()) {
        if (!label->isVisibleTo(this) || label->text().isEmpty()) continue;
        const QRect needed = label->fontMetrics().boundingRect(
            QRect(0, 0, label->width(), 100000), int(Qt::TextWordWrap) | int(label->alignment()),
            label->text());
        if (needed.height() > label->height() + 1 || needed.width() > label->width() + 1 ||
            outside(*label)) {
            cut << label->text();
        }
    }
    for (const GuestButton* button : findChildren<GuestButton*>()) {
        if (!button->isVisibleTo(this)) continue;
        if (!button->words_fit() || outside(*button)) cut << button->text();
    }
    for (const WaterScene* scene : findChildren<WaterScene*>()) {
        for (const SceneWords& words : scene->words()) {
            if (!words_fit(words) || !QRectF(scene->rect()).contains(words.box)) cut << words.text;
        }
    }
    return cut;
}

QVBoxLayout* screen_column(QWidget* parent) {
    auto* column = new QVBoxLayout(parent);
    column->setContentsMargins(0, 0, 0, 0);
    return column;
}

QHBoxLayout* screen_row(QWidget* parent) {
    auto* row = new QHBoxLayout(parent);
    row->setContentsMargins(0, 0, 0, 0);
    return row;
}

QGridLayout* screen_grid(QWidget* parent) {
    auto* grid = new QGridLayout(parent);
    grid->setContentsMargins(0, 0, 0, 0);
    return grid;
}

void fill_grid(QGridLayout& grid, const std::vector<QWidget*>& widgets, int columns, bool fill) {
    while (grid.count() > 0) delete grid.takeAt(0);
    for (int column = 0; column < grid.columnCount(); ++column) {
        grid.setColumnStretch(column, column < columns ? 1 : 0);
    }
    const int count = static_cast<int>(widgets.size());
    for (int place = 0; place < count; ++place) {
        const int column = place % columns;
        const bool last = place + 1 == count;
        grid.addWidget(widgets[static_cast<std::size_t>(place)], place / columns, column, 1,
                       fill && last ? columns - column : 1);
        grid.setColumnStretch(column, 1);
    }
    for (int row = 0; row < grid.rowCount(); ++row) {
        grid.setRowStretch(row, row * columns < count ? 1 : 0);
    }
}

PictureTile::PictureTile(double picture_ems, bool beside, QWidget* parent)
    : ScreenTile(parent),
      picture_(new PictureView(picture_ems, this)),
      name_(new GuestLabel(TextRole::heading, TextInk::accent, this)),
      value_(new GuestLabel(TextRole::heading, TextInk::ink, this)),
      text_(new GuestLabel(TextRole::small, TextInk::ink, this)) {
    QBoxLayout* box = beside ? static_cast<QBoxLayout*>(screen_row(this))
                             : static_cast<QBoxLayout*>(screen_column(this));
    for (GuestLabel* label : {name_, value_, text_}) label->set_narrow();
    auto* words = screen_column();
    words->addStretch();
    words->addWidget(name_);
    words->addWidget(value_);
    words->addWidget(text_);
    words->addStretch();
    box->addWidget(picture_, 0, beside ? Qt::AlignVCenter : Qt::AlignHCenter);
    box->addLayout(words, 1);
    if (!beside) {
        for (GuestLabel* label : {name_, value_, text_}) label->setAlignment(Qt::AlignHCenter);
    }
}

void PictureTile::set(const QString& picture, const QString& name, const QString& value,
                      const QString& text) {
    picture_->set_picture(picture);
    picture_->setVisible(!picture.isEmpty());
    picture_->setAccessibleName(name);
    name_->setText(name);
    name_->setVisible(!name.isEmpty());
    value_->setText(value);
    value_->setVisible(!value.isEmpty());
    text_->setText(text);
    text_->setVisible(!text.isEmpty());
}

GuestPicker::GuestPicker(GuestScreenControl& control, QWidget* parent)
    : QWidget(parent),
      control_(control),
      prompt_(new GuestLabel(TextRole::body, TextInk::quiet, this)),
      grid_(screen_grid()) {
    auto* column = screen_column(this);
    column->addWidget(prompt_);
    column->addLayout(grid_);
}

void GuestPicker::take_words() {
    const std::vector<const Guest*> guests = control_.guests();
    const std::vector<QString> names = first_names(guests);
    std::vector<GuestId> ids;
    for (const Guest* guest : guests) ids.push_back(guest->id);
    if (ids != ids_) {
        // The one who was pressed may be the reason: it goes when its turn is over.
        for (QWidget* button : buttons_) {
            button->hide();
            button->deleteLater();
        }
        buttons_.clear();
        ids_ = ids;
        for (std::size_t k = 0; k < ids_.size(); ++k) {
            auto* button = new GuestButton(this);
            button->setObjectName(QStringLiteral("guest_%1").arg(k));
            button->setCheckable(true);
            connect(button, &QPushButton::clicked, this,
                    [this, id = ids_[k]] {
                        // Pressed again, it is let go.
                        const Guest* picked = control_.guest();
                        control_.set_guest(picked != nullptr && picked->id == id ? GuestId() : id);
                    });
            buttons_.push_back(button);
            button->show();
        }
        arrange(portrait_);
    }
    for (std::size_t k = 0; k < ids_.size(); ++k) {
        auto* button = static_cast<GuestButton*>(buttons_[k]);
        button->setText(names[k]);
        button->setChecked(control_.guest() != nullptr && control_.guest()->id == ids_[k]);
    }
    prompt_->setText(screen_word(ids_.empty() ? ScreenWord::no_guests : ScreenWord::pick_name,
                                 control_.tongue()));
}

void GuestPicker::arrange(bool portrait) {
    portrait_ = portrait;
    const int columns = portrait ? 3 : 6;
    fill_grid(*grid_, buttons_, std::clamp(static_cast<int>(buttons_.size()), 1, columns));
}

void GuestPicker::step(int by) {
    if (ids_.empty()) return;
    const int count = static_cast<int>(ids_.size());
    int place = by > 0 ? -1 : 0;
    for (int k = 0; k < count; ++k) {
        if (control_.guest() != nullptr &&
            control_.guest()->id == ids_[static_cast<std::size_t>(k)]) {
            place = k;
        }
    }
    place = (place + by + count) % count;
    control_.set_guest(ids_[static_cast<std::size_t>(place)]);
}

}  // namespace leadline
