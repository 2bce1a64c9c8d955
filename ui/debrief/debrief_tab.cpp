// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/debrief/debrief_tab.h"

#include <QBuffer>
#include <QEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableView>
#include <QTimeEdit>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/debrief/debrief_model.h"
#include "ui/debrief/log_chart.h"
#include "ui/debrief/log_edits.h"
#include "ui/debrief/number_delegate.h"
#include "ui/document/session_document.h"
#include "ui/widgets/theme.h"
#include "ui/widgets/wheel_guard.h"
#include "ui/words/error_words.h"
#include "ui/words/finding_words.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

constexpr int icon_side = 18;
constexpr int most_heads = 500;
constexpr int longest_name = 320;  // pixels of a name within a sentence

QTime qt_time(TimeOfDay time) {
    return QTime::fromMSecsSinceStartOfDay(time.minutes_after_midnight * 60'000);
}

TimeOfDay core_time(QTime time) { return TimeOfDay{time.msecsSinceStartOfDay() / 60'000}; }

/// The shape of a severity for rich text, where no icon can stand.
QString shape_html(Severity severity, const QPalette& palette, int side) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    severity_icon(severity, palette).pixmap(side * 2, side * 2).toImage().save(&buffer, "PNG");
    return QStringLiteral("<img width='%1' height='%1' src='data:image/png;base64,%2'>")
        .arg(side)
        .arg(QString::fromLatin1(bytes.toBase64()));
}

QPushButton* button(const QString& text, const char* name, QWidget* parent) {
    auto* made = new QPushButton(text, parent);
    made->setObjectName(QString::fromLatin1(name));
    return made;
}

QLabel* caption(const QString& text, QWidget* buddy, QWidget* parent) {
    auto* made = new QLabel(text, parent);
    made->setBuddy(buddy);
    return made;
}

}  // namespace

DebriefTab::DebriefTab(SessionDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      model_(new DebriefModel(document, this)),
      pages_(new QStackedWidget(this)),
      message_(new QLabel(this)),
      message_icon_(new QLabel(this)),
      time_in_(new QTimeEdit(this)),
      time_out_(new QTimeEdit(this)),
      heads_in_(new QSpinBox(this)),
      heads_out_(new QSpinBox(this)),
      heads_icon_(new QLabel(this)),
      heads_words_(new QLabel(this)),
      note_(new QLineEdit(this)),
      lowest_(new QLabel(this)),
      table_(new QTableView(this)),
      chart_(new LogChart(document, this)),
      findings_(new QLabel(this)),
      use_one_(button(tr("Use this &breathing rate"), "debrief_use_one", this)),
      use_all_(button(tr("Use it for &all"), "debrief_use_all", this)) {
    setObjectName(QStringLiteral("debrief_tab"));
    choose_log_path_ = [this] {
        return QFileDialog::getOpenFileName(this, tr("Open a log"), QString(),
                                            tr("Sessions (*.json);;All files (*)"));
    };
    message_->setObjectName(QStringLiteral("debrief_message"));
    message_->setWordWrap(true);
    auto* message_line = new QHBoxLayout;
    message_line->addWidget(message_icon_, 0, Qt::AlignTop);
    message_line->addWidget(message_, 1);
    pages_->setObjectName(QStringLiteral("debrief_pages"));
    pages_->addWidget(build_empty());
    pages_->addWidget(build_log());
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 16, 16, 16);
    layout->setSpacing(8);
    layout->addWidget(pages_, 1);
    layout->addLayout(message_line);

    connect_head();
    connect(&document_, &SessionDocument::changed, this, &DebriefTab::refresh);
    connect(&document_, &SessionDocument::refused, this, [this](const QString& text) {
        if (isVisible()) say(text, Severity::stop);
        refresh_head();  // the fields show again what stands
    });
    refresh();
}

QWidget* DebriefTab::build_empty() {
    auto* page = new QWidget(this);
    auto* heading = new QLabel(tr("No log yet"), page);
    QFont large = heading->font();
    large.setPointSizeF(large.pointSizeF() * 1.5);
    heading->setFont(large);
    auto* words = new QLabel(
        tr("After the dive, enter each guest's pressure and time, or open a file that holds the "
           "log. Planned and actual then stand side by side."),
        page);
    words->setWordWrap(true);
    words->setMaximumWidth(520);
    auto* start = button(tr("Start the &log"), "debrief_start", page);
    auto* open = button(tr("&Open a log file…"), "debrief_open", page);
    connect(start, &QPushButton::clicked, this, &DebriefTab::start_log);
    connect(open, &QPushButton::clicked, this, &DebriefTab::open_log);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(start);
    buttons->addWidget(open);
    buttons->addStretch();
    auto* column = new QVBoxLayout;
    column->addStretch();
    column->addWidget(heading);
    column->addWidget(words);
    column->addLayout(buttons);
    column->addStretch();
    auto* layout = new QHBoxLayout(page);
    layout->addStretch();
    layout->addLayout(column);
    layout->addStretch();
    return page;
}

QWidget* DebriefTab::build_head() {
    auto* head = new QWidget(this);
    time_in_->setObjectName(QStringLiteral("debrief_time_in"));
    time_out_->setObjectName(QStringLiteral("debrief_time_out"));
    heads_in_->setObjectName(QStringLiteral("debrief_heads_in"));
    heads_out_->setObjectName(QStringLiteral("debrief_heads_out"));
    heads_words_->setObjectName(QStringLiteral("debrief_heads_words"));
    note_->setObjectName(QStringLiteral("debrief_note"));
    note_->setPlaceholderText(tr("What should be remembered"));
    QFont big = heads_in_->font();
    big.setPointSizeF(big.pointSizeF() * 1.4);
    big.setBold(true);
    for (QSpinBox* box : {heads_in_, heads_out_}) {
        box->setRange(0, most_heads);
        box->setFont(big);
        box->setKeyboardTracking(false);
        guard_wheel(box);
    }
    for (QTimeEdit* edit : {time_in_, time_out_}) {
        edit->setDisplayFormat(QStringLiteral("HH:mm"));
        edit->setKeyboardTracking(false);
        guard_wheel(edit);
    }
    auto* open = button(tr("&Open a log file…"), "debrief_open_other", head);
    auto* remove = button(tr("Remove the lo&g"), "debrief_remove", head);
    connect(open, &QPushButton::clicked, this, &DebriefTab::open_log);
    connect(remove, &QPushButton::clicked, this, &DebriefTab::remove_log);
    auto* times = new QHBoxLayout;
    times->setSpacing(8);
    times->addWidget(caption(tr("&In at"), time_in_, head));
    times->addWidget(time_in_);
    times->addWidget(caption(tr("o&ut at"), time_out_, head));
    times->addWidget(time_out_);
    times->addSpacing(24);
    times->addWidget(caption(tr("Hea&ds in"), heads_in_, head));
    times->addWidget(heads_in_);
    times->addWidget(caption(tr("ba&ck"), heads_out_, head));
    times->addWidget(heads_out_);
    times->addWidget(heads_icon_);
    times->addWidget(heads_words_);
    times->addStretch();
    // Beside the note, which gives way: all in one row would be too wide for a small screen.
    auto* notes = new QHBoxLayout;
    notes->setSpacing(8);
    notes->addWidget(caption(tr("&Note"), note_, head));
    notes->addWidget(note_, 1);
    notes->addWidget(open);
    notes->addWidget(remove);
    auto* layout = new QVBoxLayout(head);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    layout->addLayout(times);
    layout->addLayout(notes);
    return head;
}

QWidget* DebriefTab::build_findings() {
    findings_->setObjectName(QStringLiteral("debrief_findings"));
    findings_->setWordWrap(true);
    findings_->setTextFormat(Qt::RichText);
    findings_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    findings_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* area = new QScrollArea(this);
    area->setObjectName(QStringLiteral("debrief_findings_area"));
    area->setAccessibleName(tr("What the log shows"));
    area->setWidget(findings_);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setMinimumWidth(260);
    return area;
}

QWidget* DebriefTab::build_log() {
    auto* page = new QWidget(this);
    lowest_->setObjectName(QStringLiteral("debrief_answer"));
    lowest_->setWordWrap(true);
    QFont answer = lowest_->font();
    answer.setPointSizeF(answer.pointSizeF() * 1.15);
    answer.setBold(true);
    lowest_->setFont(answer);
    table_->setObjectName(QStringLiteral("debrief_table"));
    table_->setAccessibleName(tr("Planned and actual for each guest"));
    table_->setModel(model_);
    table_->setItemDelegate(new NumberDelegate(document_, table_));
    table_->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                            QAbstractItemView::AnyKeyPressed);
    table_->setSelectionBehavior(QAbstractItemView::SelectItems);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setTabKeyNavigation(false);
    table_->setShowGrid(false);
    table_->setAlternatingRowColors(true);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 14);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setMinimumSectionSize(fontMetrics().averageCharWidth() * 5);
    table_->viewport()->installEventFilter(this);
    table_->horizontalHeader()->setHighlightSections(false);
    table_->setWordWrap(false);
    table_->setFrameShape(QFrame::NoFrame);
    // On a small screen the page scrolls before the guests are gone from it.
    constexpr int fewest_rows = 4;
    table_->setMinimumHeight(table_->horizontalHeader()->sizeHint().height() +
                             fewest_rows * table_->verticalHeader()->defaultSectionSize() +
                             table_->horizontalScrollBar()->sizeHint().height() + 4);
    connect(use_one_, &QPushButton::clicked, this, [this] { use_measured(false); });
    connect(use_all_, &QPushButton::clicked, this, [this] { use_measured(true); });
    connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this, [this] {
        chart_->set_current(current_guest());
        refresh_findings();
    });

    auto* use = new QHBoxLayout;
    auto* hint = new QLabel(tr("Double-click or type to enter pressures and times."), page);
    hint->setForegroundRole(QPalette::PlaceholderText);
    use->addWidget(hint, 1);
    use->addWidget(use_one_);
    use->addWidget(use_all_);
    auto* upper = new QWidget(page);
    auto* upper_layout = new QVBoxLayout(upper);
    upper_layout->setContentsMargins(0, 0, 0, 0);
    upper_layout->addWidget(table_, 1);
    upper_layout->addLayout(use);
    auto* lower = new QSplitter(Qt::Horizontal, page);
    lower->addWidget(chart_);
    lower->addWidget(build_findings());
    lower->setStretchFactor(0, 3);
    lower->setStretchFactor(1, 2);
    auto* halves = new QSplitter(Qt::Vertical, page);
    halves->addWidget(upper);
    halves->addWidget(lower);
    halves->setStretchFactor(0, 1);
    halves->setStretchFactor(1, 1);
    halves->setChildrenCollapsible(false);
    auto* layout = new QVBoxLayout(page);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(12);
    layout->addWidget(build_head());
    layout->addWidget(lowest_);
    layout->addWidget(halves, 1);
    return page;
}

void DebriefTab::connect_head() {
    const auto edit = [this](const QString& key, const std::function<void(DiveLog&)>& change) {
        static_cast<void>(document_
                              .edit_log(
                                  tr("Change the log"),
                                  [&](std::optional<DiveLog>& log) {
                                      if (log) change(*log);
                                  },
                                  QStringLiteral("log/") + key)
                              .has_value());
    };
    connect(time_in_, &QTimeEdit::timeChanged, this, [edit](QTime time) {
        edit(QStringLiteral("in"), [&](DiveLog& log) { log.time_in = core_time(time); });
    });
    connect(time_out_, &QTimeEdit::timeChanged, this, [edit](QTime time) {
        edit(QStringLiteral("out"), [&](DiveLog& log) { log.time_out = core_time(time); });
    });
    connect(heads_in_, &QSpinBox::valueChanged, this, [edit](int heads) {
        edit(QStringLiteral("heads_in"), [&](DiveLog& log) { log.heads_in = heads; });
    });
    connect(heads_out_, &QSpinBox::valueChanged, this, [edit](int heads) {
        edit(QStringLiteral("heads_out"), [&](DiveLog& log) { log.heads_out = heads; });
    });
    connect(note_, &QLineEdit::textEdited, this, [edit](const QString& text) {
        edit(QStringLiteral("note"), [&](DiveLog& log) { log.note = text.toStdString(); });
    });
}

void DebriefTab::refresh() {
    pages_->setCurrentIndex(document_.log() ? 1 : 0);
    say({}, Severity::note);
    if (!document_.log()) return;
    if (!table_->currentIndex().isValid() && model_->rowCount() > 0) {
        table_->setCurrentIndex(model_->index(0, DebriefModel::end_column));
    }
    refresh_head();
    refresh_findings();
    fit_names();
}

bool DebriefTab::eventFilter(QObject* watched, QEvent* event) {
    if (watched == table_->viewport() && event->type() == QEvent::Resize) fit_names();
    return QWidget::eventFilter(watched, event);
}

/// Names take what the numbers leave, but never less than a name needs to be told from another.
void DebriefTab::fit_names() {
    constexpr int least_letters = 16;
    QHeaderView* header = table_->horizontalHeader();
    const int left_over = table_->viewport()->width() - header->length() +
                          header->sectionSize(DebriefModel::name_column);
    header->setSectionResizeMode(DebriefModel::name_column, QHeaderView::Fixed);
    header->resizeSection(DebriefModel::name_column,
                          std::max(left_over, fontMetrics().averageCharWidth() * least_letters));
}

void DebriefTab::refresh_head() {
    if (!document_.log()) return;
    const DiveLog& log = *document_.log();
    const QSignalBlocker in(time_in_);
    const QSignalBlocker out(time_out_);
    const QSignalBlocker heads_in(heads_in_);
    const QSignalBlocker heads_out(heads_out_);
    time_in_->setTime(qt_time(log.time_in));
    time_out_->setTime(qt_time(log.time_out));
    heads_in_->setValue(log.heads_in);
    heads_out_->setValue(log.heads_out);
    const QString note = QString::fromStdString(log.note);
    if (note_->text() != note) note_->setText(note);
    const bool agree = log.heads_in == log.heads_out;
    heads_icon_->setPixmap(severity_icon(agree ? Severity::note : Severity::stop, palette())
                               .pixmap(icon_side, icon_side));
    heads_words_->setText(agree ? tr("All back") : tr("Stop: count again"));
}

void DebriefTab::refresh_findings() {
    if (!document_.review()) return;
    QStringList answers;
    for (const GroupReview& group : document_.review()->groups) {
        const QString answer = answer_for(group);
        if (!answer.isEmpty()) answers << answer;
    }
    lowest_->setText(answers.join(u'\n'));
    findings_->setText(findings_html());
    const auto& divers = document_.review()->divers;
    const GuestId current = current_guest();
    const auto known = [](const DiverReview& diver) { return diver.actual_rmv.has_value(); };
    use_all_->setEnabled(std::any_of(divers.begin(), divers.end(), known));
    use_one_->setEnabled(std::any_of(divers.begin(), divers.end(), [&](const DiverReview& diver) {
        return diver.guest == current && known(diver);
    }));
}

QString DebriefTab::short_name(const QString& name) const {
    return fontMetrics().elidedText(name, Qt::ElideRight, longest_name);
}

/// Who came back with the least air, or what is still to be entered to tell.
QString DebriefTab::answer_for(const GroupReview& group) const {
    const Session& session = document_.session();
    const auto& divers = document_.review()->divers;
    const auto open = std::count_if(divers.begin(), divers.end(), [&](const DiverReview& diver) {
        return diver.group == group.group && !diver.entered;
    });
    const QString name = short_name(subject_name(group.group, session));
    if (!group.lowest_guest) {
        return open > 0 ? tr("%1: enter each guest's end pressure and minutes.").arg(name)
                        : QString();
    }
    const QString lowest = short_name(subject_name(*group.lowest_guest, session));
    if (open > 0) {
        return tr("%1: %2 came back with the least air so far; still to enter: %3.")
            .arg(name, lowest, QString::number(open));
    }
    if (!group.planned_limiting_guest) {
        return tr("%1: %2 came back with the least air.").arg(name, lowest);
    }
    if (*group.planned_limiting_guest == *group.lowest_guest) {
        return tr("%1: %2 came back with the least air, as planned.").arg(name, lowest);
    }
    return tr("%1: %2 came back with the least air; %3 was expected to.")
        .arg(name, lowest, short_name(subject_name(*group.planned_limiting_guest, session)));
}

QString DebriefTab::findings_html() const {
    QString html;
    for (const Finding& finding : document_.review()->findings) {
        const FindingText said = words(finding, document_.session(), document_.units());
        html += QStringLiteral("<p>") + shape_html(finding.severity, palette(), icon_side - 4) +
                QStringLiteral(" <b>") + label(finding.severity).toHtmlEscaped() +
                QStringLiteral("</b> · ") + short_name(said.about).toHtmlEscaped() +
                QStringLiteral("<br>") + said.what.toHtmlEscaped() + u' ' +
                said.remedy.toHtmlEscaped() + QStringLiteral("</p>");
    }
    if (!html.isEmpty()) return html;
    const auto& divers = document_.review()->divers;
    const bool all = std::all_of(divers.begin(), divers.end(),
                                 [](const DiverReview& diver) { return diver.entered; });
    return all ? tr("No limit was exceeded.") : QString();
}

void DebriefTab::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && document_.log()) {
        refresh_head();
        refresh_findings();
    }
}

GuestId DebriefTab::current_guest() const {
    return GuestId(table_->currentIndex().data(DebriefModel::guest_role).toString().toStdString());
}

void DebriefTab::start_log() {
    static_cast<void>(document_
                          .edit_log(tr("Start the log"),
                                    [&](std::optional<DiveLog>& log) {
                                        log = started_log(document_.session(), document_.plan());
                                    })
                          .has_value());
    if (document_.log()) table_->setFocus();
}

void DebriefTab::open_log() {
    const QString path = choose_log_path_();
    if (path.isEmpty()) return;
    if (const Result<Done> done = load_log(document_, path); !done) {
        const QString name = QFileInfo(path).fileName();
        const bool names_file = done.error().place == path.toStdString();
        say(words(done.error(), names_file ? QString() : name), Severity::stop);
    }
}

void DebriefTab::remove_log() {
    static_cast<void>(
        document_
            .edit_log(tr("Remove the log"), [](std::optional<DiveLog>& log) { log.reset(); })
            .has_value());
}

void DebriefTab::use_measured(bool all) {
    std::vector<GuestId> guests{current_guest()};
    if (all) {
        guests.clear();
        for (const Guest& guest : document_.session().guests) guests.push_back(guest.id);
    }
    const int changed = use_as_measured(document_, guests);
    if (changed == 0) {
        say(tr("No rate could be taken over."), Severity::note);
    } else {
        say(tr("%n guests will be planned with the rate breathed here.", nullptr, changed),
            Severity::note);
    }
}

void DebriefTab::say(const QString& text, Severity severity) {
    message_->setVisible(!text.isEmpty());
    message_icon_->setVisible(!text.isEmpty());
    message_icon_->setPixmap(severity_icon(severity, palette()).pixmap(icon_side, icon_side));
    message_->setText(text);
}

void DebriefTab::show_subject(const Subject& subject) {
    const auto* guest = std::get_if<GuestId>(&subject);
    const int row = guest != nullptr ? model_->row_of(*guest) : -1;
    if (row >= 0) {
        table_->setCurrentIndex(model_->index(row, DebriefModel::end_column));
        table_->setFocus();
    } else {
        heads_out_->setFocus();
    }
}

}  // namespace leadline
