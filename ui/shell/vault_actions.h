// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QIcon>
#include <QObject>

class QAction;
class QActionGroup;
class QMainWindow;
class QMenu;
class QPalette;
class QToolButton;

namespace leadline {

class IdleLock;
class RecordKeeper;
class VaultAccess;

/// The menu "Health vault", the lock mark in the status line, and locking when nobody is there.
/// Owned by the window.
class VaultActions : public QObject {
    Q_OBJECT
public:
    VaultActions(QMainWindow& window, VaultAccess& access, RecordKeeper& keeper);
    [[nodiscard]] IdleLock* idle_lock() const { return idle_; }

Q_SIGNALS:
    /// Something worth a line at the foot of the window.
    void said(const QString& text);

private:
    void build_menu();
    void build_idle_menu(QMenu& menu);
    void build_mark();
    void update_state();
    void set_up_or_unlock();
    void tell_sealed(int answers);
    void lock();

    QMainWindow& window_;
    VaultAccess& access_;
    RecordKeeper& keeper_;
    IdleLock* idle_;
    QAction* open_ = nullptr;
    QAction* lock_ = nullptr;
    QAction* passphrase_ = nullptr;
    QAction* recovery_ = nullptr;
    QAction* trail_ = nullptr;
    QToolButton* mark_ = nullptr;
    QString sealed_;  ///< what was said of answers sealed by the vault being set up
};

/// A padlock, shut or open, in the ink of the text.
QIcon padlock_icon(bool shut, const QPalette& palette);

}  // namespace leadline
