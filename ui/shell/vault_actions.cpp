// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/vault_actions.h"

#include <QAction>
#include <QActionGroup>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>
#include <QPainter>
#include <QStatusBar>
#include <QToolButton>
#include <algorithm>
#include <array>

#include "ui/shell/audit_dialog.h"
#include "ui/shell/idle_lock.h"
#include "ui/shell/record_keeper.h"
#include "ui/shell/recovery_key_dialog.h"
#include "ui/shell/vault_access.h"
#include "ui/shell/vault_passphrase_dialog.h"
#include "ui/shell/vault_set_up_dialog.h"
#include "ui/shell/vault_unlock_dialog.h"

namespace leadline {
namespace {

const QString idle_setting = QStringLiteral("vault_idle_minutes");
/// 5 unless chosen otherwise: about as long as a guest is talked to without a look at the screen.
/// Common practice, no source.
constexpr int usual_idle_minutes = 5;
constexpr std::array idle_choices{1, 2, 5, 10, 30};

int idle_minutes(RecordKeeper& keeper) {
    const int minutes = keeper.setting(idle_setting).value_or(QString()).toInt();
    // What is not a choice (a setting changed by hand) must not leave the vault open for ever.
    const bool known =
        std::find(idle_choices.begin(), idle_choices.end(), minutes) != idle_choices.end();
    return known ? minutes : usual_idle_minutes;
}

}  // namespace

QIcon padlock_icon(bool shut, const QPalette& palette) {
    constexpr int side = 48;
    QPixmap pixmap(side, side);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor ink = palette.color(QPalette::WindowText);
    painter.setPen(QPen(ink, 5, Qt::SolidLine, Qt::FlatCap));
    // The shackle: over the body when shut, swung to the right of it when open.
    const double left = shut ? 15 : 26;
    painter.drawArc(QRectF(left, 6, 18, 22), 0, 180 * 16);
    painter.drawLine(QPointF(left, 16), QPointF(left, 24));
    painter.drawLine(QPointF(left + 18, 16), QPointF(left + 18, shut ? 24 : 19));
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    painter.drawRoundedRect(QRectF(8, 22, 32, 22), 3, 3);
    painter.end();
    return QIcon(pixmap);
}

VaultActions::VaultActions(QMainWindow& window, VaultAccess& access, RecordKeeper& keeper)
    : QObject(&window),
      window_(window),
      access_(access),
      keeper_(keeper),
      idle_(new IdleLock(this)) {
    setObjectName(QStringLiteral("vault_actions"));
    idle_->set_wait(std::chrono::minutes(idle_minutes(keeper_)));
    build_menu();
    build_mark();
    connect(idle_, &IdleLock::idle, this, &VaultActions::lock);
    connect(&access_, &HealthAccess::state_changed, this, &VaultActions::update_state);
    connect(&access_, &VaultAccess::waiting_sealed, this, &VaultActions::tell_sealed);
    update_state();
}

void VaultActions::build_menu() {
    auto* records = window_.findChild<QMenu*>(QStringLiteral("records_menu"));
    QMenu* menu = records != nullptr ? records->addMenu(tr("&Health vault"))
                                     : window_.menuBar()->addMenu(tr("&Health vault"));
    menu->setObjectName(QStringLiteral("vault_menu"));
    const auto add = [&](const QString& text, const char* name, auto act) {
        QAction* action = menu->addAction(text, this, act);
        action->setObjectName(QString::fromLatin1(name));
        return action;
    };
    open_ = add(tr("&Unlock…"), "action_vault_open", &VaultActions::set_up_or_unlock);
    open_->setShortcut(QKeySequence(tr("Ctrl+Shift+L")));
    lock_ = add(tr("&Lock"), "action_vault_lock", &VaultActions::lock);
    lock_->setShortcut(QKeySequence(tr("Ctrl+L")));
    build_idle_menu(*menu->addMenu(tr("Lock when &idle for")));
    menu->addSeparator();
    passphrase_ = add(tr("&Change the passphrase…"), "action_vault_passphrase", [this] {
        if (VaultPassphraseDialog(access_, &window_).exec() == QDialog::Accepted) {
            Q_EMIT said(tr("The passphrase was changed."));
        }
    });
    recovery_ = add(tr("New &recovery key…"), "action_vault_recovery", [this] {
        if (RecoveryKeyDialog(access_, &window_).exec() == QDialog::Accepted) {
            Q_EMIT said(tr("The new recovery key counts from now on. Destroy the old paper."));
        }
    });
    trail_ = add(tr("&Audit trail…"), "action_vault_trail",
                 [this] { AuditDialog(access_, &window_).exec(); });
}

void VaultActions::build_idle_menu(QMenu& menu) {
    auto* group = new QActionGroup(this);
    const int chosen = idle_minutes(keeper_);
    for (const int minutes : idle_choices) {
        QAction* action = menu.addAction(tr("%n minutes", nullptr, minutes));
        action->setObjectName(QStringLiteral("action_vault_idle_%1").arg(minutes));
        action->setCheckable(true);
        action->setChecked(minutes == chosen);
        group->addAction(action);
        connect(action, &QAction::triggered, this, [this, minutes] {
            keeper_.put_setting(idle_setting, QString::number(minutes));
            idle_->set_wait(std::chrono::minutes(minutes));
        });
    }
}

void VaultActions::build_mark() {
    mark_ = new QToolButton(&window_);
    mark_->setObjectName(QStringLiteral("vault_mark"));
    mark_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    mark_->setAutoRaise(true);
    mark_->setFocusPolicy(Qt::TabFocus);
    QStatusBar* line = window_.statusBar();
    line->setSizeGripEnabled(false);
    line->addPermanentWidget(mark_);
    connect(mark_, &QToolButton::clicked, this, [this] {
        if (access_.vault_state() == HealthAccess::State::open) {
            lock();
        } else {
            set_up_or_unlock();
        }
    });
}

void VaultActions::update_state() {
    using State = HealthAccess::State;
    const State state = access_.vault_state();
    const bool open = state == State::open;
    open_->setText(state == State::not_set_up ? tr("&Set up…") : tr("&Unlock…"));
    open_->setEnabled(state == State::not_set_up || state == State::locked);
    lock_->setEnabled(open);
    passphrase_->setText(!open || access_.has_way(VaultWay::passphrase)
                             ? tr("&Change the passphrase…")
                             : tr("&Add a passphrase…"));
    passphrase_->setEnabled(open);
    recovery_->setEnabled(open);
    trail_->setEnabled(open || state == State::locked);
    QString text = tr("Health vault locked");
    QString tip = tr("Unlock it (Ctrl+Shift+L)");
    if (state == State::not_kept) {
        text = tr("No health vault: the records are not open");
        tip.clear();
    } else if (state == State::not_set_up) {
        text = tr("Health vault not set up");
        tip = tr("Set it up");
    } else if (open) {
        text = tr("Health vault open: %1").arg(QString::fromStdString(access_.vault()->who()));
        tip = tr("Lock it (Ctrl+L)");
    }
    // The space keeps the words off the padlock.
    mark_->setText(u' ' + window_.fontMetrics().elidedText(text, Qt::ElideRight, 320));
    mark_->setAccessibleName(text);
    mark_->setToolTip(tip);
    mark_->setIcon(padlock_icon(!open, window_.palette()));
    mark_->setEnabled(state != State::not_kept);
    if (open) {
        idle_->start();
    } else {
        idle_->stop();
    }
}

void VaultActions::set_up_or_unlock() {
    using State = HealthAccess::State;
    sealed_.clear();
    if (access_.vault_state() == State::not_set_up) {
        if (VaultSetUpDialog(access_, &window_).exec() == QDialog::Accepted) {
            const QString open = tr("The health vault is set up and open. It locks by itself after "
                                    "%1 min without a key or a click.")
                                     .arg(idle_minutes(keeper_));
            Q_EMIT said(sealed_.isEmpty() ? open : QString(open + u' ' + sealed_));
        }
    } else if (access_.vault_state() == State::locked) {
        VaultUnlockDialog(access_, &window_).exec();
    }
}

void VaultActions::tell_sealed(int answers) {
    sealed_ = tr("%n answers an older version kept open are sealed now.", nullptr, answers);
    sealed_ += u' ' + tr("Copies made before still hold them: delete those in Records > Copies of "
                         "the records, and files named ...before-schema-*.");
    Q_EMIT said(sealed_);
}

void VaultActions::lock() {
    access_.lock();
}

}  // namespace leadline
