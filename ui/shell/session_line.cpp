// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/session_line.h"

#include <QComboBox>
#include <QDateEdit>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTimeEdit>
#include <QVBoxLayout>
#include <algorithm>
#include <initializer_list>

#include "core/planning/session_edits.h"
#include "ui/document/session_document.h"
#include "ui/widgets/elided_label.h"
#include "ui/widgets/theme.h"
#include "ui/widgets/wheel_guard.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

QTime qt_time(TimeOfDay time) {
    return QTime::fromMSecsSinceStartOfDay(time.minutes_after_midnight * 60'000);
}

TimeOfDay core_time(QTime time) { return TimeOfDay{time.msecsSinceStartOfDay() / 60'000}; }

QDate qt_date(Date date) {
    return {static_cast<int>(date.year()), static_cast<int>(unsigned(date.month())),
            static_cast<int>(unsigned(date.day()))};
}

Date core_date(QDate date) {
    return Date{std::chrono::year(date.year()),
                std::chrono::month(static_cast<unsigned>(date.month())),
                std::chrono::day(static_cast<unsigned>(date.day()))};
}

/// The site in what room there is: a long name must not widen the window.
class SiteName : public ElidedLabel {
public:
    explicit SiteName(QWidget* parent) : ElidedLabel(parent) {
        setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    }
    [[nodiscard]] QSize sizeHint() const override { return at_most(180); }
    [[nodiscard]] QSize minimumSizeHint() const override { return at_most(60); }

private:
    [[nodiscard]] QSize at_most(int width) const {
        const QSize whole = ElidedLabel::sizeHint();
        return {std::min(whole.width(), width), whole.height()};
    }
};

/// A small caption over a field, so that the line stays one row of fields and one of words.
QWidget* captioned(const QString& caption, QWidget* field, QWidget* parent) {
    auto* holder = new QWidget(parent);
    auto* layout = new QVBoxLayout(holder);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    auto* words = new QLabel(caption, holder);
    QFont small = words->font();
    small.setPointSizeF(small.pointSizeF() * 0.85);
    words->setFont(small);
    words->setBuddy(field);
    words->setForegroundRole(QPalette::PlaceholderText);
    layout->addWidget(words);
    layout->addWidget(field);
    return holder;
}

}  // namespace

SessionLine::SessionLine(SessionDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      title_(new QLineEdit(this)),
      date_(new QDateEdit(this)),
      meeting_(new QTimeEdit(this)),
      dive_(new QTimeEdit(this)),
      leader_(new QComboBox(this)),
      site_(new SiteName(this)),
      ready_(new QPushButton(this)) {
    setObjectName(QStringLiteral("session_line"));
    title_->setObjectName(QStringLiteral("session_title"));
    title_->setPlaceholderText(tr("Name of the session"));
    title_->setMaxLength(200);
    QFont large = title_->font();
    large.setPointSizeF(large.pointSizeF() * 1.2);
    large.setBold(true);
    title_->setFont(large);
    date_->setObjectName(QStringLiteral("session_date"));
    date_->setCalendarPopup(true);
    date_->setDisplayFormat(tr("ddd d MMM yyyy", "date; ddd, d, MMM and yyyy stay"));
    meeting_->setObjectName(QStringLiteral("session_meeting_time"));
    dive_->setObjectName(QStringLiteral("session_dive_time"));
    for (QTimeEdit* edit : {meeting_, dive_}) edit->setDisplayFormat(QStringLiteral("HH:mm"));
    for (QDateTimeEdit* edit : std::initializer_list<QDateTimeEdit*>{date_, meeting_, dive_}) {
        // A half-typed day or hour could lie before a dive of staff that is over by then.
        edit->setKeyboardTracking(false);
        guard_wheel(edit);
    }
    guard_wheel(leader_);
    leader_->setObjectName(QStringLiteral("session_leader"));
    leader_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    leader_->setMinimumWidth(90);
    leader_->setMaximumWidth(220);
    site_->setObjectName(QStringLiteral("session_site"));
    site_->setMinimumHeight(meeting_->sizeHint().height());  // in line with the fields
    ready_->setObjectName(QStringLiteral("session_readiness"));
    ready_->setFlat(true);
    ready_->setIconSize(QSize(20, 20));
    ready_->setCursor(Qt::PointingHandCursor);
    QFont bold = ready_->font();
    bold.setBold(true);
    ready_->setFont(bold);

    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(16, 8, 16, 8);
    layout->setSpacing(16);
    layout->addWidget(captioned(tr("Session"), title_, this), 3);
    layout->addWidget(captioned(tr("Date"), date_, this));
    layout->addWidget(captioned(tr("Meet"), meeting_, this));
    layout->addWidget(captioned(tr("Dive"), dive_, this));
    layout->addWidget(captioned(tr("Leads"), leader_, this));
    layout->addWidget(captioned(tr("Site"), site_, this), 1);
    layout->addWidget(ready_, 0, Qt::AlignVCenter);

    connect(title_, &QLineEdit::textEdited, this, [this](const QString& text) {
        static_cast<void>(document_.edit(tr("Rename session"), [&](Session& session) {
            session.title = text.toStdString();
        }, QStringLiteral("session/title")).has_value());
    });
    connect(date_, &QDateEdit::dateChanged, this, [this](QDate date) {
        const Result<Done> done = document_.edit(
            tr("Change date"),
            [&](Session& session) { move_to_date(session, core_date(date)); },
            QStringLiteral("session/date"));
        if (!done) refresh();
    });
    connect(meeting_, &QTimeEdit::timeChanged, this, [this](QTime time) {
        static_cast<void>(document_.edit(tr("Change meeting time"), [&](Session& session) {
            session.meeting_time = core_time(time);
        }, QStringLiteral("session/meeting")).has_value());
    });
    connect(dive_, &QTimeEdit::timeChanged, this, [this](QTime time) {
        const Result<Done> done = document_.edit(
            tr("Change dive time"),
            [&](Session& session) { session.dive_time = core_time(time); },
            QStringLiteral("session/dive"));
        if (!done) refresh();
    });
    connect(leader_, &QComboBox::activated, this, [this](int row) {
        const StaffId id(leader_->itemData(row).toString().toStdString());
        static_cast<void>(document_.edit(tr("Change who leads"), [&](Session& session) {
            session.leader = id;
        }).has_value());
    });
    connect(ready_, &QPushButton::clicked, this, &SessionLine::findings_requested);
    connect(&document_, &SessionDocument::changed, this, &SessionLine::refresh);
    refresh();
}

void SessionLine::refresh() {
    const Session& session = document_.session();
    const QSignalBlocker block_date(date_);
    const QSignalBlocker block_meeting(meeting_);
    const QSignalBlocker block_dive(dive_);
    const QString title = QString::fromStdString(session.title);
    if (title_->text() != title) {
        title_->setText(title);
        title_->setCursorPosition(0);  // of a long name the beginning is seen
    }
    if (date_->date() != qt_date(session.date)) date_->setDate(qt_date(session.date));
    meeting_->setTime(qt_time(session.meeting_time));
    dive_->setTime(qt_time(session.dive_time));
    leader_->clear();
    leader_->addItem(tr("Not named"), QString());
    for (const StaffMember& member : session.staff) {
        leader_->addItem(member.name.empty() ? tr("(no name)")
                                             : QString::fromStdString(member.name),
                         QString::fromStdString(member.id.text));
    }
    leader_->setCurrentIndex(
        std::max(0, leader_->findData(QString::fromStdString(session.leader.text))));
    const QString site = QString::fromStdString(session.site.name);
    site_->show_text(site.isEmpty() ? tr("Not named") : site);
    show_readiness();
}

void SessionLine::show_readiness() {
    const Readiness ready = document_.plan().readiness;
    const Inks colours = inks(palette());
    QString words;
    QColor ink = colours.note;
    if (ready.stops > 0) {
        words = tr("%n stops", nullptr, static_cast<int>(ready.stops));
        if (ready.cautions > 0)
            words +=
                QStringLiteral(" · ") + tr("%n care", nullptr, static_cast<int>(ready.cautions));
        ready_->setIcon(severity_icon(Severity::stop, palette()));
        ink = colours.stop;
    } else if (ready.cautions > 0) {
        words = tr("Ready · %n care", nullptr, static_cast<int>(ready.cautions));
        ready_->setIcon(severity_icon(Severity::caution, palette()));
        ink = colours.caution;
    } else {
        words = tr("Ready");
        ready_->setIcon(severity_icon(Severity::note, palette()));
    }
    if (ready.overruled > 0) {
        words +=
            QStringLiteral(" · ") + tr("%n set aside", nullptr, static_cast<int>(ready.overruled));
    }
    ready_->setText(words);
    QPalette own = palette();
    own.setColor(QPalette::ButtonText, ink);
    ready_->setPalette(own);
    ready_->setToolTip(tr("Show the findings"));
}

}  // namespace leadline
