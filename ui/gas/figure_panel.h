// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <string>
#include <vector>

#include "ui/gas/sentence_list.h"

class QLabel;
class QToolButton;

namespace leadline {

class FigureTable;
class SessionDocument;

/// A page of figures: the answer in sentences, a table, one line on what they are good for, and
/// "Why?" for what they follow from. While it is hidden it waits with its refreshing.
class FigurePanel : public QWidget {
    Q_OBJECT
public:
    ~FigurePanel() override;

protected:
    struct Words {
        QString name;    ///< object names start with it: "body" gives "body_answer"
        QString empty;   ///< shown instead while has_rows() is false
        QString safety;
        QString why;     ///< accessible name of "Why?"
    };
    FigurePanel(SessionDocument& document, QWidget* parent);
    /// Builds the page and fills it. The last call of a constructor, as it asks for what follows.
    void build(FigureTable* table, const Words& words);

    [[nodiscard]] SessionDocument& document() const { return document_; }
    [[nodiscard]] FigureTable& table() const { return *table_; }

    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] virtual bool has_rows() const = 0;
    virtual void refresh_rows() = 0;
    [[nodiscard]] virtual std::vector<GasSentence> answers() const = 0;
    /// @param id  of the row that is current; empty: none
    [[nodiscard]] virtual std::vector<GasSentence> reasons(const std::string& id) const = 0;

    void follow_document();
    void refresh();
    void refresh_reasons();
    void show_reasons(bool shown);

    SessionDocument& document_;
    SentenceList* answers_;
    QLabel* empty_;
    QWidget* body_;
    FigureTable* table_ = nullptr;
    QToolButton* why_;
    SentenceList* reasons_;
    bool stale_ = false;  ///< something changed while the panel was hidden
};

}  // namespace leadline
