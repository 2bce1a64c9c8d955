// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/findings_model.h"

#include "ui/document/session_document.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

bool same_text(const FindingText& a, const FindingText& b) {
    return a.about == b.about && a.what == b.what && a.remedy == b.remedy && a.source == b.source;
}

}  // namespace

FindingsModel::FindingsModel(SessionDocument& document, QObject* parent)
    : QAbstractListModel(parent), document_(document) {
    connect(&document_, &SessionDocument::changed, this, &FindingsModel::refresh);
    refresh();
}

int FindingsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(findings_.size());
}

QVariant FindingsModel::data(const QModelIndex& index, int role) const {
    const Finding* finding = finding_at(index.row());
    if (!index.isValid() || finding == nullptr) return {};
    const FindingText& text = texts_[static_cast<std::size_t>(index.row())];
    switch (role) {
        case severity_role: return static_cast<int>(finding->severity);
        case about_role: return text.about;
        case what_role: return text.what;
        case remedy_role: return text.remedy;
        case overruled_role:
            return finding->overruled_because
                       ? QVariant(QString::fromStdString(*finding->overruled_because))
                       : QVariant();
        case Qt::DisplayRole:
        case Qt::AccessibleTextRole:
            return with_colon(label(finding->severity), text.about + u". " + text.what);
        case Qt::ToolTipRole:
            return QString(text.source.isEmpty() ? text.remedy : text.remedy + u'\n' + text.source);
        default: return {};
    }
}

const Finding* FindingsModel::finding_at(int row) const {
    if (row < 0 || row >= static_cast<int>(findings_.size())) return nullptr;
    return &findings_[static_cast<std::size_t>(row)];
}

FindingText FindingsModel::text_at(int row) const {
    if (finding_at(row) == nullptr) return {};
    return texts_[static_cast<std::size_t>(row)];
}

void FindingsModel::refresh() {
    std::vector<Finding> findings = document_.plan().findings;
    if (document_.review()) {
        const auto& logged = document_.review()->findings;
        findings.insert(findings.end(), logged.begin(), logged.end());
    }
    std::vector<FindingText> texts;
    texts.reserve(findings.size());
    for (const Finding& finding : findings) {
        texts.push_back(words(finding, document_.session(), document_.units()));
    }
    // Most edits leave the findings as they are; then the list must not jump.
    bool same = findings.size() == findings_.size();
    for (std::size_t i = 0; same && i < findings.size(); ++i) {
        same = findings[i].severity == findings_[i].severity && same_text(texts[i], texts_[i]) &&
               findings[i].overruled_because == findings_[i].overruled_because &&
               key(findings[i]) == key(findings_[i]);
    }
    if (same) return;
    beginResetModel();
    findings_ = std::move(findings);
    texts_ = std::move(texts);
    endResetModel();
}

}  // namespace leadline
