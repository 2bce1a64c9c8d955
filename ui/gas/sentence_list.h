// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

#include "ui/gas/gas_words.h"

class QGridLayout;
class QLabel;

namespace leadline {

/// Sentences under one another, each with the shape of its severity before it.
class SentenceList : public QWidget {
    Q_OBJECT
public:
    explicit SentenceList(QWidget* parent = nullptr);
    void show_sentences(const std::vector<GasSentence>& sentences);

private:
    struct Row {
        QLabel* icon = nullptr;
        QLabel* text = nullptr;
    };
    QGridLayout* grid_;
    std::vector<Row> rows_;
};

}  // namespace leadline
