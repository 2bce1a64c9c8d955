// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/main_window.h"

#include <QCloseEvent>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QTabBar>
#include <QTabWidget>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "core/files/session_file.h"
#include "core/files/text_file.h"
#include "ui/debrief/debrief_tab.h"
#include "ui/document/resources.h"
#include "ui/document/session_document.h"
#include "ui/gas/gas_tab.h"
#include "ui/roster/roster_tab.h"
#include "ui/sheet/briefing_tab.h"
#include "ui/shell/findings_panel.h"
#include "ui/shell/session_line.h"
#include "ui/shell/unsaved_question.h"
#include "ui/shell/vault_access.h"
#include "ui/shell/vault_actions.h"
#include "ui/shell/window_actions.h"
#include "ui/site/site_tab.h"
#include "ui/widgets/theme.h"
#include "ui/words/error_words.h"

namespace leadline {
namespace {

constexpr int findings_width = 300;
constexpr int findings_letters = 34;  // the least width at which their sentences read well

/// A page that scrolls where the screen is smaller than the page needs.
QScrollArea* scrolling_page(QWidget* page) {
    auto* area = new QScrollArea;
    area->setObjectName(page->objectName() + QStringLiteral("_page"));
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    area->setWidget(page);
    return area;
}

/// The tab on which a finding can be put right.
MainWindow::Tab tab_for(const Finding& finding) {
    switch (finding.code) {
        case FindingCode::depth_over_limit:
        case FindingCode::depth_over_usual:
        case FindingCode::bottom_below_limit:
        case FindingCode::water_too_cold:
        case FindingCode::minutes_over_limit:
        case FindingCode::visibility_low:
        case FindingCode::current_strong:
        case FindingCode::waves_high:
        case FindingCode::descent_too_fast:
        case FindingCode::ear_step_over_locking:
        case FindingCode::no_rules_chosen:
        case FindingCode::emergency_line_missing: return MainWindow::site_tab;
        case FindingCode::ascent_too_fast:
            // Planned for everybody, or logged by one guest.
            return std::holds_alternative<GuestId>(finding.subject) ? MainWindow::debrief_tab
                                                                    : MainWindow::site_tab;
        case FindingCode::cold_before_end:
        case FindingCode::group_unlikely_to_finish:
        case FindingCode::sharing_may_not_last:
        case FindingCode::ends_below_reserve:
        case FindingCode::minimum_gas_above_reserve:
        case FindingCode::staff_gas_below_minimum: return MainWindow::gas_tab;
        case FindingCode::logged_too_deep:
        case FindingCode::logged_depth_over_limit:
        case FindingCode::logged_below_reserve:
        case FindingCode::logged_longer:
        case FindingCode::log_missing:
        case FindingCode::head_count_open: return MainWindow::debrief_tab;
        default: return MainWindow::roster_tab;
    }
}

}  // namespace

MainWindow::MainWindow(SessionDocument& document, RecordKeeper& keeper, QWidget* parent)
    : QMainWindow(parent),
      document_(document),
      keeper_(keeper),
      health_(new VaultAccess(document, keeper, this)),
      tabs_(new QTabWidget(this)),
      findings_(new FindingsPanel(document, this)) {
    setObjectName(QStringLiteral("main_window"));
    resize(1320, 860);
    choose_open_path = [this] {
        return QFileDialog::getOpenFileName(this, tr("Open a session"), QString(),
                                            tr("Sessions (*.json);;All files (*)"));
    };
    choose_export_path = [this] {
        return QFileDialog::getSaveFileName(this, tr("Write the session to a file"),
                                            QStringLiteral("session.json"),
                                            tr("Sessions (*.json)"));
    };
    build_tabs();
    build_notice();
    build_message_line();

    auto* line = new SessionLine(document_, this);
    // Only the tabs' pages scroll on a small screen: the findings stay in sight beside them.
    findings_->setMinimumWidth(std::max(findings_->minimumSizeHint().width(),
                                        fontMetrics().averageCharWidth() * findings_letters));
    auto* splitter = new QSplitter(this);
    splitter->setObjectName(QStringLiteral("work"));
    splitter->addWidget(tabs_);
    splitter->addWidget(findings_);
    splitter->setStretchFactor(0, 1);
    splitter->setStretchFactor(1, 0);
    splitter->setSizes({1000, findings_width});
    splitter->setCollapsible(0, false);
    splitter->setCollapsible(1, true);
    auto* central = new QWidget(this);
    auto* layout = new QVBoxLayout(central);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(notice_);
    layout->addWidget(line);
    layout->addWidget(splitter, 1);
    layout->addWidget(message_line_);
    setCentralWidget(central);
    new WindowActions(*this);
    auto* vault = new VaultActions(*this, *health_, keeper_);
    connect(vault, &VaultActions::said, this,
            [this](const QString& text) { show_message(text, Severity::note); });

    connect(line, &SessionLine::findings_requested, this, [this, splitter] {
        // Somebody may have folded them away.
        if (splitter->sizes().back() == 0) splitter->setSizes({1000, findings_width});
        findings_->focus_list();
    });
    connect(findings_, &FindingsPanel::subject_requested, this, &MainWindow::show_finding);
    connect(&document_, &SessionDocument::refused, this,
            [this](const QString& text) { show_message(text, Severity::stop); });
    connect(&document_, &SessionDocument::changed, this, [this] {
        update_title();
        // What is not saved stays said until it is.
        if (!keeper_.has_unsaved()) message_line_->hide();
    });
    connect(&keeper_, &RecordKeeper::save_failed, this, [this](const QString& text) {
        show_message(tr("Not saved. %1").arg(text), Severity::stop);
        says_not_saved_ = true;
    });
    connect(&keeper_, &RecordKeeper::unsaved_changed, this, [this](bool unsaved) {
        update_title();
        // It may be saved long after the edit: what else is said by then stays.
        if (!unsaved && says_not_saved_) message_line_->hide();
    });
    connect(&keeper_, &RecordKeeper::kept_changed, this, &MainWindow::update_notice);
    connect(&keeper_, &RecordKeeper::database_changed, this, &MainWindow::update_notice);
    update_title();
    update_notice();
}

void MainWindow::build_tabs() {
    tabs_->setObjectName(QStringLiteral("tabs"));
    tabs_->setAccessibleName(tr("The five questions"));
    tabs_->setDocumentMode(true);
    QFont font = tabs_->font();
    font.setPointSizeF(font.pointSizeF() * 1.1);
    tabs_->tabBar()->setFont(font);
    tabs_->tabBar()->setObjectName(QStringLiteral("tab_bar"));
    roster_ = new RosterTab(document_, this);
    site_ = new SiteTab(document_, this);
    gas_ = new GasTab(document_, this);
    briefing_ = new BriefingTab(document_, this);
    debrief_ = new DebriefTab(document_, this);
    // Site and gas have areas of their own that scroll.
    tabs_->addTab(scrolling_page(roster_), tr("&1 Roster"));
    tabs_->addTab(site_, tr("&2 Site"));
    tabs_->addTab(gas_, tr("&3 Gas"));
    tabs_->addTab(scrolling_page(briefing_), tr("&4 Briefing Sheet"));
    tabs_->addTab(scrolling_page(debrief_), tr("&5 Debrief"));
    roster_->set_health_access(health_);
    roster_->set_guest_finder([this](const QString& text) { return keeper_.find_guests(text); });
    if (keeper_.has_database()) {
        connect_screening();
        roster_->set_dive_finder([this](const std::string& name, Date date, TimeOfDay time) {
            return keeper_.find_dives(name, date, time);
        });
    }
    site_->set_site_finder([this] { return keeper_.sites(); });
    connect(briefing_, &BriefingTab::subject_requested, this,
            [this](const Subject& subject) { show_subject(subject, roster_tab); });
}

void MainWindow::connect_screening() {
    const QString setting = QStringLiteral("answers_kept");
    const QString all = QStringLiteral("all");
    roster_->set_check_finder([this](const Guest& guest) { return keeper_.last_check(guest); });
    roster_->set_answers_kept(keeper_.setting(setting) == all ? AnswersKept::all
                                                              : AnswersKept::flagged);
    connect(roster_, &RosterTab::answers_kept_chosen, this, [this, setting, all](AnswersKept kept) {
        keeper_.put_setting(setting,
                            kept == AnswersKept::all ? all : QStringLiteral("flagged"));
    });
}

void MainWindow::build_notice() {
    notice_ = new QWidget(this);
    notice_->setObjectName(QStringLiteral("notice"));
    notice_->setAutoFillBackground(true);
    notice_->setBackgroundRole(QPalette::AlternateBase);
    notice_text_ = new QLabel(notice_);
    notice_text_->setObjectName(QStringLiteral("notice_text"));
    notice_keep_ = new QPushButton(tr("&Keep in my records"), notice_);
    notice_keep_->setObjectName(QStringLiteral("notice_keep"));
    auto* layout = new QHBoxLayout(notice_);
    layout->setContentsMargins(16, 4, 16, 4);
    layout->addWidget(notice_text_, 1);
    layout->addWidget(notice_keep_);
    connect(notice_keep_, &QPushButton::clicked, this, [this] {
        if (const Result<Done> done = keeper_.keep(); !done) {
            show_message(words(done.error()), Severity::stop);
        } else {
            show_message(tr("Kept. Every change is saved from now on."), Severity::note);
        }
    });
}

void MainWindow::build_message_line() {
    message_line_ = new QWidget(this);
    message_line_->setObjectName(QStringLiteral("message_line"));
    message_line_->setAutoFillBackground(true);
    message_line_->setBackgroundRole(QPalette::Base);
    message_icon_ = new QLabel(message_line_);
    message_text_ = new QLabel(message_line_);
    message_text_->setObjectName(QStringLiteral("message_text"));
    message_text_->setWordWrap(true);
    message_text_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* close = new QToolButton(message_line_);
    close->setObjectName(QStringLiteral("message_close"));
    close->setText(tr("Close"));
    close->setAccessibleName(tr("Close the message"));
    auto* layout = new QHBoxLayout(message_line_);
    layout->setContentsMargins(16, 6, 16, 6);
    layout->addWidget(message_icon_);
    layout->addWidget(message_text_, 1);
    layout->addWidget(close);
    connect(close, &QToolButton::clicked, message_line_, &QWidget::hide);
    message_line_->hide();
}

void MainWindow::show_message(const QString& message, Severity severity) {
    says_not_saved_ = false;
    constexpr int icon_side = 20;
    message_icon_->setPixmap(severity_icon(severity, palette()).pixmap(icon_side, icon_side));
    message_text_->setText(message);
    message_line_->show();
}

QString MainWindow::message() const {
    return message_line_->isHidden() ? QString() : message_text_->text();
}

bool MainWindow::write_session_file() {
    const QString path = choose_export_path();
    if (path.isEmpty()) return false;
    const Result<Done> done = write_text_file(path.toStdString(), write_session(document_.file()));
    if (!done) {
        show_message(words(done.error()), Severity::stop);
        return false;
    }
    show_message(tr("Written to %1. The file holds names and who may dive: keep it safe.").arg(path),
                 Severity::note);
    return true;
}

bool MainWindow::may_leave_session() {
    while (!keeper_.save_again()) {
        switch (ask_about_unsaved(keeper_.unsaved_reason(), this)) {
            case UnsavedAnswer::try_again: break;
            case UnsavedAnswer::write_file:
                if (write_session_file()) return true;
                break;
            case UnsavedAnswer::give_up: return true;
            case UnsavedAnswer::stay: return false;
        }
    }
    return true;
}

void MainWindow::closeEvent(QCloseEvent* event) { event->setAccepted(may_leave_session()); }

bool MainWindow::open_file(const QString& path) {
    if (!may_leave_session()) return false;
    const QString name = QFileInfo(path).fileName();
    const Result<std::string> content = read_text_file(path.toStdString());
    if (!content) {
        show_message(words(content.error()), Severity::stop);
        return false;
    }
    Result<SessionFile> file =
        read_session(*content, resource_text(QStringLiteral("schema/session.schema.json")));
    if (!file) {
        show_message(words(file.error(), name), Severity::stop);
        return false;
    }
    const QString before = file_name_;
    file_name_ = name;
    if (const Result<Done> done = keeper_.open_unkept(std::move(file).value()); !done) {
        file_name_ = before;
        show_message(words(done.error(), name), Severity::stop);
        return false;
    }
    return true;
}

void MainWindow::show_tab(Tab tab) { tabs_->setCurrentIndex(tab); }

void MainWindow::show_finding(const Finding& finding) {
    show_subject(finding.subject, tab_for(finding));
}

void MainWindow::show_subject(const Subject& subject, Tab tab) {
    show_tab(tab);
    switch (tab) {
        case roster_tab: roster_->show_subject(subject); break;
        case site_tab: site_->show_subject(subject); break;
        case gas_tab: gas_->show_subject(subject); break;
        case debrief_tab: debrief_->show_subject(subject); break;
        case briefing_tab: break;
    }
}

void MainWindow::update_notice() {
    notice_->setVisible(!keeper_.is_kept());
    notice_keep_->setVisible(keeper_.has_database());
    notice_text_->setText(
        keeper_.has_database()
            ? tr("Opened from the file %1: changes are not kept.").arg(file_name_)
            : tr("The records could not be opened: changes are not kept."));
    update_title();
}

void MainWindow::update_title() {
    const QString title = QString::fromStdString(document_.session().title);
    // Qt puts its mark of unsaved changes in place of [*].
    setWindowTitle(title.isEmpty() ? tr("Leadline[*]") : tr("%1[*] – Leadline").arg(title));
    setWindowModified(keeper_.has_unsaved());
}

}  // namespace leadline
