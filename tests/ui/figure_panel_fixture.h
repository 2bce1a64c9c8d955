// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QLabel>
#include <QTableView>
#include <QTest>
#include <functional>
#include <memory>
#include <string>

#include "ui_fixture.h"

namespace leadline::testing {

/// A page of figures on a sample session, shown.
template <typename Panel>
class FigurePanelTest : public DocumentTest {
protected:
    explicit FigurePanelTest(const char* table_name) : table_name_(table_name) {}
    void SetUp() override { start("mountain-lake"); }
    void start(const char* sample_name) {
        open(sample_name);
        panel_ = std::make_unique<Panel>(document_);
        panel_->resize(1240, 760);
        panel_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(panel_.get()));
        table_ = child<QTableView>(*panel_, table_name_);
    }
    void change(const std::function<void(Session&)>& edit) {
        ASSERT_TRUE(document_.edit(QStringLiteral("test"), edit).has_value());
    }
    QModelIndex cell(int row, int column) const { return table_->model()->index(row, column); }
    std::string shown(int row, int column) const {
        return cell(row, column).data().toString().toStdString();
    }
    /// The sentences of a list that are to be seen.
    std::string said(const char* list) const {
        QStringList lines;
        for (const QLabel* label : panel_->template findChildren<QLabel*>()) {
            if (label->objectName().startsWith(QString::fromLatin1(list) + u'_') &&
                !label->isHidden()) {
                lines << label->text();
            }
        }
        return lines.join(u'\n').toStdString();
    }

    const char* table_name_;
    std::unique_ptr<Panel> panel_;
    QTableView* table_ = nullptr;
};

}  // namespace leadline::testing
