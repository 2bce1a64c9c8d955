// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/saving_row.h"

#include <QHBoxLayout>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>
#include <utility>

namespace leadline {
namespace {

constexpr int whole = 100;

}  // namespace

SavingRow::SavingRow(QWidget* parent)
    : QWidget(parent),
      bar_(new QProgressBar(this)),
      stop_(new QPushButton(tr("Stop saving"), this)),
      moment_(new QTimer(this)),
      job_(nullptr, BackgroundJob::AtStop::finish) {
    setObjectName(QStringLiteral("saving_row"));
    bar_->setObjectName(QStringLiteral("saving_bar"));
    bar_->setAccessibleName(tr("Pages saved"));
    bar_->setRange(0, whole);
    stop_->setObjectName(QStringLiteral("saving_stop"));
    stop_->setAutoDefault(false);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(bar_, 1);
    row->addWidget(stop_);
    moment_->setSingleShot(true);
    hide();
    connect(moment_, &QTimer::timeout, this, &QWidget::show);
    connect(stop_, &QPushButton::clicked, &job_, &BackgroundJob::cancel);
    connect(&job_, &BackgroundJob::progressed, bar_,
            [this](double share) { bar_->setValue(static_cast<int>(share * whole)); });
}

void SavingRow::save(const QString& path, std::vector<Page> pages, PdfInfo info,
                     FileAccess access) {
    Q_ASSERT(!running());
    bar_->setValue(0);
    if (moment_ms_ > 0) {
        moment_->start(moment_ms_);
    } else {
        show();
    }
    job_.start(
        [path, pages = std::move(pages), info = std::move(info), access](const GoOn& go_on) {
            return write_pages_pdf(path, pages, info, access, go_on);
        },
        [this, path](const Result<int>& written) {
            moment_->stop();
            Q_EMIT ended(written, path);
            hide();
        });
}

}  // namespace leadline
