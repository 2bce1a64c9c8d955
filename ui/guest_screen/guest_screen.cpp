// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/guest_screen.h"

#include <QActionGroup>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>
#include <QScreen>
#include <QStackedLayout>
#include <algorithm>
#include <array>

#include "ui/document/session_document.h"
#include "ui/guest_screen/afterwards_view.h"
#include "ui/guest_screen/breath_view.h"
#include "ui/guest_screen/ear_view.h"
#include "ui/guest_screen/ends_view.h"
#include "ui/guest_screen/kit_view.h"
#include "ui/guest_screen/numbers_view.h"
#include "ui/guest_screen/signal_check_view.h"
#include "ui/guest_screen/signals_view.h"
#include "ui/guest_screen/skills_view.h"
#include "ui/guest_screen/welcome_view.h"
#include "ui/guest_words/guest_punctuation.h"
#include "ui/words/finding_words.h"

namespace leadline {
namespace {

constexpr std::array<int, 6> offered_seconds{10, 20, 30, 60, 120, 300};

double bar_em(QSize size) {
    return size.height() > size.width() ? std::min(size.width() / 34.0, size.height() / 50.0)
                                        : std::min(size.width() / 70.0, size.height() / 38.0);
}

}  // namespace

int monitor_for_guests(int count, int taken) {
    for (int k = 0; k < count; ++k) {
        if (k != taken) return k;
    }
    return -1;
}

GuestScreen::GuestScreen(SessionDocument& document, QWidget* parent)
    : QWidget(parent, Qt::Window),
      control_(document),
      pages_(new QWidget(this)),
      bar_(new QWidget(this)),
      blank_(new QWidget(this)),
      draft_(new GuestLabel(TextRole::small, TextInk::quiet, this)),
      languages_(new QMenu(this)),
      menu_(new QMenu(this)) {
    setObjectName(QStringLiteral("guest_screen"));
    setWindowTitle(tr("Guest screen"));
    setAttribute(Qt::WA_DeleteOnClose);
    setFocusPolicy(Qt::StrongFocus);
    setMinimumSize(480, 360);
    resize(1280, 720);
    auto* stack = new QStackedLayout(pages_);
    views_ = {new WelcomeView(control_, pages_),     new GuestKitView(control_, pages_),
              new BreathView(control_, pages_),      new EarView(control_, pages_),
              new SignalsView(control_, pages_),     new NumbersView(control_, pages_),
              new SignalCheckView(control_, pages_), new SkillsView(control_, pages_),
              new EndsView(control_, pages_),        new AfterwardsView(control_, pages_)};
    for (ScreenView* view : views_) {
        // A page chooses its own size of type: its needs must not hold the window open.
        view->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
        stack->addWidget(view);
    }
    build_bar();
    build_menu();
    auto* column = screen_column(this);
    column->setSpacing(0);
    column->addWidget(pages_, 1);
    column->addWidget(draft_);
    column->addWidget(bar_);
    draft_->setAlignment(Qt::AlignCenter);
    blank_->setObjectName(QStringLiteral("blank"));
    blank_->setAutoFillBackground(true);
    QPalette black;
    black.setColor(QPalette::Window, Qt::black);
    blank_->setPalette(black);
    blank_->hide();

    connect(&control_, &GuestScreenControl::page_changed, this, &GuestScreen::show_page);
    connect(&control_, &GuestScreenControl::content_changed, this, &GuestScreen::take_words);
    connect(&control_, &GuestScreenControl::running_changed, this, &GuestScreen::take_words);
    connect(&control_, &GuestScreenControl::blank_changed, this, [this] {
        blank_->setGeometry(rect());
        blank_->setVisible(control_.is_blank());
        blank_->raise();
    });
    take_words();
    show_page();
}

void GuestScreen::build_bar() {
    auto* row = screen_row(bar_);
    const auto button = [&](const char* name) {
        auto* made = new GuestButton(bar_);
        made->setObjectName(QLatin1String(name));
        row->addWidget(made);
        return made;
    };
    back_ = button("screen_back");
    place_ = new GuestLabel(TextRole::body, TextInk::quiet, bar_);
    place_->setWordWrap(false);
    place_->setAlignment(Qt::AlignCenter);
    place_->setObjectName(QStringLiteral("screen_place"));
    row->addWidget(place_);
    next_ = button("screen_next");
    row->addStretch(1);
    run_ = button("screen_run");
    language_ = button("screen_language");
    more_ = button("screen_more");
    next_->set_strong(true);
    more_->setText(QStringLiteral("☰"));
    more_->setAccessibleName(tr("For the instructor"));
    connect(back_, &QPushButton::clicked, &control_, &GuestScreenControl::previous);
    connect(next_, &QPushButton::clicked, &control_, &GuestScreenControl::next);
    connect(run_, &QPushButton::clicked, this,
            [this] { control_.set_running(!control_.is_running()); });
    const auto pop_up = [this](GuestButton* from, QMenu* menu) {
        fill_menus();
        // Names in scripts of their own fonts can be wider than the menu reckons.
        int widest = 0;
        for (const QAction* action : menu->actions()) {
            widest = std::max(widest, menu->fontMetrics().horizontalAdvance(action->text()));
        }
        constexpr int tick_and_margins = 5;
        menu->setMinimumWidth(widest + tick_and_margins * menu->fontMetrics().height());
        const QSize needed = menu->sizeHint();
        menu->popup(from->mapToGlobal(QPoint(from->width() - needed.width(), -needed.height())));
    };
    connect(language_, &QPushButton::clicked, this, [=, this] { pop_up(language_, languages_); });
    connect(more_, &QPushButton::clicked, this, [=, this] { pop_up(more_, menu_); });
}

void GuestScreen::build_menu() {
    languages_->setObjectName(QStringLiteral("screen_languages"));
    menu_->setObjectName(QStringLiteral("screen_menu"));
    groups_ = menu_->addMenu(tr("Briefing for"));
    seconds_ = menu_->addMenu(tr("Time of a page"));
    QAction* calm = menu_->addAction(tr("Nothing glides"));
    calm->setObjectName(QStringLiteral("screen_calm"));
    calm->setCheckable(true);
    connect(calm, &QAction::toggled, &control_, &GuestScreenControl::set_calm);
    connect(&control_, &GuestScreenControl::settings_changed, calm,
            [this, calm] { calm->setChecked(control_.is_calm()); });
    menu_->addSeparator();
    menu_->addAction(tr("Language (L)"), language_, &QPushButton::click);
    menu_->addAction(tr("Run or pause (R)"), run_, &QPushButton::click);
    menu_->addAction(tr("Blank (B)"), this, [this] { control_.set_blank(true); });
    menu_->addAction(tr("Full screen (F11)"), this, &GuestScreen::toggle_full_screen);
    menu_->addAction(tr("Close (Esc)"), this, &QWidget::close);
    fill_menus();
}

void GuestScreen::fill_menus() {
    languages_->clear();
    for (const GuestLanguage& language : guest_languages()) {
        QAction* action = languages_->addAction(language.own_name);
        action->setCheckable(true);
        action->setChecked(language.tag == control_.tongue().language().tag);
        connect(action, &QAction::triggered, this,
                [this, tag = language.tag] { control_.set_language(tag); });
    }
    groups_->clear();
    const auto add_group = [&](const QString& name, const GroupId& id) {
        QAction* action = groups_->addAction(name);
        action->setCheckable(true);
        action->setChecked(id == control_.group());
        connect(action, &QAction::triggered, this, [this, id] { control_.set_group(id); });
    };
    add_group(tr("Everybody"), {});
    for (const Group& group : control_.document().session().groups) {
        QString name = subject_name(group.id, control_.document().session()).simplified();
        add_group(name.replace(u'&', QStringLiteral("&&")), group.id);
    }
    seconds_->clear();
    for (const int count : offered_seconds) {
        QAction* action = seconds_->addAction(tr("%n seconds", nullptr, count));
        action->setCheckable(true);
        action->setChecked(count == control_.seconds());
        connect(action, &QAction::triggered, this, [this, count] { control_.set_seconds(count); });
    }
}

ScreenView* GuestScreen::view(ScreenPage page) const {
    return views_[static_cast<std::size_t>(page)];
}

ScreenView* GuestScreen::view() const {
    return view(control_.stop().page);
}

void GuestScreen::show_page() {
    auto* stack = static_cast<QStackedLayout*>(pages_->layout());
    ScreenView* shown = view();
    // A focused button of the page before must not keep the keys.
    if (QWidget* focused = focusWidget(); focused != nullptr && pages_->isAncestorOf(focused)) {
        setFocus();
    }
    if (stack->currentWidget() != shown) stack->setCurrentWidget(shown);
    shown->refresh();
    take_words();
}

void GuestScreen::take_words() {
    const GuestTongue& tongue = control_.tongue();
    const auto say = [&](ScreenWord word) { return screen_word(word, tongue); };
    setLayoutDirection(control_.right_to_left() ? Qt::RightToLeft : Qt::LeftToRight);
    setLocale(tongue.locale());
    back_->setText(say(ScreenWord::back));
    next_->setText(say(ScreenWord::next));
    run_->setText(say(control_.is_running() ? ScreenWord::pause : ScreenWord::run));
    language_->setText(tongue.language().own_name);
    language_->setAccessibleName(
        labelled(say(ScreenWord::language), tongue.language().own_name, tongue));
    const int count = static_cast<int>(control_.stops().size());
    place_->setText(isolated(QStringLiteral("%1 / %2").arg(control_.index() + 1).arg(count)));
    place_->setAccessibleName(say(ScreenWord::page_of).arg(control_.index() + 1).arg(count));
    back_->setEnabled(control_.index() > 0);
    next_->setEnabled(control_.index() + 1 < count);
    run_->setEnabled(control_.index() + 1 < count);
    draft_->setText(say(ScreenWord::draft));
    draft_->setVisible(tongue.language().review == ReviewState::drafted);
    fit_bar();
}

QString GuestScreen::bar_state() const {
    QString state = QStringLiteral("%1 x %2 %3")
                        .arg(width())
                        .arg(height())
                        .arg(palette().color(QPalette::Base).name());
    for (const GuestButton* button : {back_, next_, run_, language_}) state += button->text();
    return state + draft_->text() + control_.tongue().language().font_family +
           (draft_->isHidden() ? u'-' : u'+') + (isRightToLeft() ? u'<' : u'>');
}

void GuestScreen::fit_bar() {
    // Words and window are mostly what they were.
    const QString state = bar_state();
    if (state == fitted_bar_) return;
    fitted_bar_ = state;
    TypeScale scale;
    scale.family = control_.tongue().language().font_family;
    scale.palette = screen_palette(shade_of(palette()));
    for (scale.em = bar_em(size()); scale.em > 8.0; scale.em *= 0.94) {
        scale_all(*bar_, scale);
        const int margin = qRound(scale.em * 0.5);
        bar_->layout()->setContentsMargins(margin, margin / 2, margin, margin / 2);
        if (bar_->layout()->totalMinimumSize().width() <= width()) break;
    }
    draft_->set_scale(scale);
    languages_->setFont(scaled_font(scale, TextRole::body));
    layout()->invalidate();
    layout()->activate();
    bar_->layout()->activate();
}

void GuestScreen::show_beside(const QScreen* taken) {
    const QList<QScreen*> screens = QGuiApplication::screens();
    const int place = monitor_for_guests(static_cast<int>(screens.size()),
                                         static_cast<int>(screens.indexOf(taken)));
    if (place >= 0) {
        setGeometry(screens.at(place)->geometry());
        showFullScreen();
    } else {
        showMaximized();
    }
}

QStringList GuestScreen::cut_off_words() const {
    QStringList cut;
    for (const GuestButton* button : bar_->findChildren<GuestButton*>()) {
        const QRect there(button->mapTo(this, QPoint(0, 0)), button->size());
        if (!button->words_fit() || !rect().contains(there)) cut << button->text();
    }
    if (draft_->isVisibleTo(this) && draft_->height() < draft_->heightForWidth(draft_->width())) {
        cut << draft_->text();
    }
    return cut;
}

void GuestScreen::keyPressEvent(QKeyEvent* event) {
    const bool mirrored = control_.right_to_left();
    const int key = event->key();
    // What is blank comes back with the next key, whichever it is.
    if (control_.is_blank() && key != Qt::Key_Escape) return control_.set_blank(false);
    switch (key) {
        case Qt::Key_Right:
            return mirrored ? control_.previous() : control_.next();
        case Qt::Key_Left:
            return mirrored ? control_.next() : control_.previous();
        case Qt::Key_PageDown:
        case Qt::Key_Space:
            return control_.next();
        case Qt::Key_PageUp:
        case Qt::Key_Backspace:
            return control_.previous();
        case Qt::Key_Home:
            return control_.go_to(0);
        case Qt::Key_End:
            return control_.go_to(static_cast<int>(control_.stops().size()) - 1);
        case Qt::Key_B:
        case Qt::Key_Period:
            return control_.set_blank(true);
        case Qt::Key_L:
            return language_->click();
        case Qt::Key_R:
            return run_->click();
        case Qt::Key_F11:
            return toggle_full_screen();
        case Qt::Key_Escape:
            close();
            return;
        default:
            break;
    }
    if (!view()->take_key(key)) QWidget::keyPressEvent(event);
}

void GuestScreen::mousePressEvent(QMouseEvent* event) {
    // The black cover lets the press through.
    if (control_.is_blank()) return control_.set_blank(false);
    QWidget::mousePressEvent(event);
}

void GuestScreen::toggle_full_screen() {
    if (isFullScreen()) {
        showNormal();
    } else {
        showFullScreen();
    }
}

void GuestScreen::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit_bar();
    blank_->setGeometry(rect());
}

void GuestScreen::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    setFocus();
    view()->refresh();
}

void GuestScreen::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && back_ != nullptr) fit_bar();
}

void GuestScreen::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.fillRect(rect(), screen_palette(shade_of(palette())).paper);
}

}  // namespace leadline
