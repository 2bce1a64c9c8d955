// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/pdf.h"

#include <QBuffer>
#include <QFile>
#include <QMarginsF>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <algorithm>
#include <filesystem>
#include <map>
#include <string_view>

#include "ui/guest_words/typed_text.h"
#include "ui/sheet/pdf_finish.h"
#include "ui/sheet/pdf_pictures.h"
#include "ui/sheet/sheet_painter.h"

namespace leadline {
namespace {

constexpr double dots_per_mm = pdf_dots_per_inch / 25.4;

QPageSize::PageSizeId size_id(Paper paper) {
    switch (paper) {
        case Paper::a4: return QPageSize::A4;
        case Paper::letter: return QPageSize::Letter;
        case Paper::a5: return QPageSize::A5;
        case Paper::a6: return QPageSize::A6;
    }
    return QPageSize::A4;
}

QPageLayout page_layout(const Page& page) {
    return QPageLayout(QPageSize(size_id(page.paper)),
                       page.landscape ? QPageLayout::Landscape : QPageLayout::Portrait,
                       QMarginsF(0, 0, 0, 0));
}

Error unwritable(const QString& path, const QString& reason) {
    return {ErrorCode::file_unwritable, path.toStdString(), reason.toStdString(), {}};
}

/// The pages without their pictures; empty when the painter could not begin or go on, or may not.
QByteArray drawn_pages(const std::vector<Page>& pages, const GoOn& go_on) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!buffer.open(QIODevice::WriteOnly)) return {};
    QPdfWriter writer(&buffer);
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
    writer.setResolution(pdf_dots_per_inch);
    writer.setPageLayout(page_layout(pages.front()));
    QPainter painter;
    if (!painter.begin(&writer)) return {};
    SheetPainter sheets;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (!go_on(static_cast<double>(i) / static_cast<double>(pages.size()))) return {};
        if (i > 0 && !(writer.setPageLayout(page_layout(pages[i])) && writer.newPage())) return {};
        sheets.paint(painter, pages[i], dots_per_mm, false);
    }
    if (!painter.end()) return {};
    return bytes;
}

/// The complete file; `cancelled` where it was stopped.
Result<QByteArray> document_of(const std::vector<Page>& pages, const PdfInfo& info,
                               const QString& path, const GoOn& go_on) {
    const Error stopped{ErrorCode::cancelled, path.toStdString(), {}, {}};
    constexpr double drawn_share = 0.9;
    bool going = true;
    const QByteArray drawn = drawn_pages(pages, [&](double share) {
        going = going && (!go_on || go_on(share * drawn_share));
        return going;
    });
    if (!going) return stopped;
    Result<QByteArray> whole = finished_pdf(drawn, pages, info);
    if (!whole) return unwritable(path, QString::fromStdString(whole.error().given));
    if (go_on && !go_on(1.0)) return stopped;
    return whole;
}

std::filesystem::path system_path(const QString& path) {
    return QFile::encodeName(path).toStdString();
}

}  // namespace

Result<int> write_pages_pdf(const QString& path, const std::vector<Page>& pages,
                            const PdfInfo& info, FileAccess access, const GoOn& go_on) {
    if (pages.empty()) return Error{ErrorCode::bad_count, "pages", "0", "1 or more"};
    if (is_written_through(system_path(path))) {
        const Result<QByteArray> bytes = document_of(pages, info, path, go_on);
        if (!bytes) return bytes.error();
        const std::string_view whole(bytes->constData(), static_cast<std::size_t>(bytes->size()));
        if (const auto sent = write_through(system_path(path), whole); !sent) return sent.error();
        return static_cast<int>(pages.size());
    }
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly)) return unwritable(path, file.errorString());
    // Before the first byte is in it.
    if (access == FileAccess::owner_only &&
        !file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner)) {
        file.cancelWriting();
        return unwritable(path, file.errorString());
    }
    const Result<QByteArray> bytes = document_of(pages, info, path, go_on);
    if (!bytes) {
        file.cancelWriting();
        return bytes.error();
    }
    if (file.write(*bytes) != bytes->size()) {
        const QString reason = file.errorString();
        file.cancelWriting();
        return unwritable(path, reason);
    }
    if (!file.commit()) return unwritable(path, file.errorString());
    return static_cast<int>(pages.size());
}

Result<int> write_pages_pdf(const QString& path, const std::vector<Page>& pages,
                            const QString& title, FileAccess access) {
    return write_pages_pdf(path, pages, PdfInfo{title, {}, {}}, access);
}

Result<int> write_cards_pdf(const QString& path, const std::vector<CardContent>& cards,
                            CardSize size, const PdfInfo& info) {
    return write_pages_pdf(path, card_pages(cards, size), info);
}

Result<int> write_cards_pdf(const QString& path, const std::vector<CardContent>& cards,
                            CardSize size, const QString& title) {
    return write_cards_pdf(path, cards, size, PdfInfo{title, {}, {}});
}

PdfInfo card_document(const Session& session, const std::vector<CardContent>& cards) {
    PdfInfo info;
    info.title = typed_line(session.title);
    const StaffMember* leader = find_staff(session, session.leader);
    if (leader != nullptr) info.author = typed_line(leader->name);
    std::map<std::string, int> faces;
    for (const CardContent& card : cards) ++faces[card.language];
    std::vector<std::pair<std::string, int>> most(faces.begin(), faces.end());
    std::stable_sort(most.begin(), most.end(),
                     [](const auto& a, const auto& b) { return a.second > b.second; });
    for (const auto& [tag, count] : most) info.languages << QString::fromStdString(tag);
    return info;
}

}  // namespace leadline
