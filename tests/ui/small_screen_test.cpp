// SPDX-License-Identifier: GPL-3.0-or-later
// The window on the screens of small laptops, in each language: nothing widens it beyond the
// screen, and what matters most is seen without scrolling.
#include <gmock/gmock.h>

#include <QAbstractItemView>
#include <QHeaderView>
#include <QListView>
#include <QSplitter>
#include <QTabWidget>
#include <QTableView>

#include "page_room.h"
#include "speaking.h"
#include "ui/debrief/debrief_model.h"
#include "ui/gas/guest_gas_model.h"
#include "ui/shell/findings_model.h"
#include "vault_fixture.h"

namespace leadline::testing {
namespace {

const QSize large_type(960, 560);     // 1440 x 900 at 150 %, less a title bar
const QSize usual_laptop(1066, 660);  // 1600 x 1050 at 150 %, less a title bar
const QSize first_seen(1320, 860);    // as the window opens

class SmallScreen : public VaultWindow, public ::testing::WithParamInterface<std::string> {
protected:
    void SetUp() override {
        speaking_ = std::make_unique<Speaking>(QString::fromStdString(GetParam()));
        VaultWindow::SetUp();
    }
    void TearDown() override {
        window_.reset();
        speaking_.reset();
    }
    void show_sample(const char* name, QSize room, MainWindow::Tab tab) {
        ASSERT_TRUE(window_->open_file(sample_path(name)));
        window_->resize(room);
        window_->show_tab(tab);
        QCoreApplication::processEvents();
        QCoreApplication::processEvents();
        // For looking at, where a folder for pictures is named.
        if (qEnvironmentVariableIsSet("LEADLINE_PICTURES")) {
            window_->grab().save(QStringLiteral("%1/%2-%3-%4-%5.png")
                                     .arg(qEnvironmentVariable("LEADLINE_PICTURES"),
                                          QString::fromStdString(GetParam()))
                                     .arg(room.width())
                                     .arg(tab + 1)
                                     .arg(QString::fromUtf8(name)));
        }
        ASSERT_EQ(window_->size(), room) << name << " needs more than the screen has";
    }
    void fold_findings() {
        child<QSplitter>(*window_, "work")->setSizes({1, 0});
        QCoreApplication::processEvents();
        QCoreApplication::processEvents();
    }
    /// The columns up to one, which cannot be scrolled away from sight: each has the room that its
    /// heading and cells ask for, and all of it is seen.
    void expect_whole_columns(const char* name, int last) {
        const auto* table = child<QTableView>(*window_, name);
        const QHeaderView* header = table->horizontalHeader();
        for (int place = 0; place <= header->visualIndex(last); ++place) {
            const int column = header->logicalIndex(place);
            if (header->isSectionHidden(column)) continue;
            const int end = header->sectionViewportPosition(column) + header->sectionSize(column);
            EXPECT_LE(end, table->viewport()->width()) << name << " column " << column;
            if (place == 0) continue;  // names may be shortened, figures not
            for (int row = 0; row < table->model()->rowCount(); ++row) {
                const QModelIndex index = table->model()->index(row, column);
                EXPECT_GE(header->sectionSize(column),
                          table->fontMetrics().horizontalAdvance(index.data().toString()))
                    << name << " column " << column << " row " << row;
            }
        }
        EXPECT_TRUE(is_in_sight(*table->viewport(),
                                table->visualRect(table->model()->index(0, 0))
                                    .intersected(table->viewport()->rect())))
            << name;
    }
    std::unique_ptr<Speaking> speaking_;
};

TEST_P(SmallScreen, NoPageIsWiderThanTheScreenWithTheFindingsFoldedAway) {
    for (const char* name : {"harbour-morning", "finished-dive"}) {
        for (int tab = 0; tab < window_->tabs()->count(); ++tab) {
            show_sample(name, usual_laptop, static_cast<MainWindow::Tab>(tab));
            fold_findings();
            const auto areas = areas_in_sight(*window_->tabs());
            EXPECT_FALSE(areas.empty()) << "tab " << tab + 1;
            for (const QScrollArea* area : areas) {
                EXPECT_LE(needed_by(*area).width(), area->viewport()->width())
                    << name << " tab " << tab + 1 << ' ' << area->objectName().toStdString();
            }
        }
    }
}

TEST_P(SmallScreen, TheReadinessBringsFoldedFindingsBack) {
    show_sample("finished-dive", large_type, MainWindow::roster_tab);
    const auto* list = child<QListView>(*window_, "findings_list");
    fold_findings();
    EXPECT_FALSE(is_in_sight(*list, list->rect()));
    QTest::mouseClick(child<QPushButton>(*window_, "session_readiness"), Qt::LeftButton);
    QCoreApplication::processEvents();
    EXPECT_TRUE(is_in_sight(*list, list->rect()));
}

TEST_P(SmallScreen, WithLargeTypeTheWindowStaysOnTheScreen) {
    for (const char* name : {"salt-cove", "finished-dive"}) {
        for (int tab = 0; tab < window_->tabs()->count(); ++tab) {
            show_sample(name, large_type, static_cast<MainWindow::Tab>(tab));
        }
    }
}

TEST_P(SmallScreen, WithLargeTypeFindingsCanBeRead) {
    for (int tab = 0; tab < window_->tabs()->count(); ++tab) {
        show_sample("finished-dive", large_type, static_cast<MainWindow::Tab>(tab));
        auto* list = child<QListView>(*window_, "findings_list");
        ASSERT_GT(list->model()->rowCount(), 0);
        EXPECT_TRUE(is_in_sight(*list, list->rect())) << "tab " << tab + 1;
        const int letters = list->viewport()->width() / list->fontMetrics().averageCharWidth();
        EXPECT_GE(letters, 30) << "tab " << tab + 1;
        for (int row = 0; row < list->model()->rowCount(); ++row) {
            const QModelIndex index = list->model()->index(row, 0);
            const QRect place = list->visualRect(index);
            EXPECT_LE(place.width(), list->viewport()->width());
            constexpr int beside_text = 44;  // the shape and the margins
            const QRect words = list->fontMetrics().boundingRect(
                QRect(0, 0, place.width() - beside_text, 1000), Qt::TextWordWrap,
                index.data(FindingsModel::what_role).toString());
            EXPECT_LE(words.width(), place.width() - beside_text) << "a word is cut";
            EXPECT_GE(place.height(), words.height() + list->fontMetrics().height())
                << "a line is cut";
        }
        EXPECT_TRUE(is_in_sight(*list->viewport(), list->visualRect(list->model()->index(0, 0))))
            << "tab " << tab + 1;
    }
}

TEST_P(SmallScreen, WithLargeTypeAChosenFindingLeavesTheWindowOnTheScreen) {
    show_sample("finished-dive", large_type, MainWindow::roster_tab);
    auto* list = child<QListView>(*window_, "findings_list");
    for (int row = 0; row < list->model()->rowCount(); ++row) {
        list->setCurrentIndex(list->model()->index(row, 0));
        QCoreApplication::processEvents();
        EXPECT_EQ(window_->size(), large_type) << "row " << row;
        EXPECT_TRUE(is_in_sight(*list, list->rect())) << "row " << row;
        const auto* go = child<QPushButton>(*window_, "finding_go");
        EXPECT_TRUE(is_in_sight(*go, go->rect())) << "row " << row;
    }
}

TEST_P(SmallScreen, WithLargeTypeTheDebriefShowsAGuest) {
    show_sample("finished-dive", large_type, MainWindow::debrief_tab);
    const auto* table = child<QTableView>(*window_, "debrief_table");
    QRect row = table->visualRect(table->model()->index(0, 0));
    ASSERT_FALSE(row.isEmpty());
    EXPECT_TRUE(is_in_sight(*table->viewport(), row));
    constexpr int guests_at_once = 4;
    EXPECT_GE(table->viewport()->height(), guests_at_once * row.height());
}

TEST_P(SmallScreen, NoFigureIsCutInTheWindowAsItOpens) {
    show_sample("finished-dive", first_seen, MainWindow::debrief_tab);
    expect_whole_columns("debrief_table", DebriefModel::used_column);
    for (const char* name : {"finished-dive", "harbour-morning"}) {
        show_sample(name, first_seen, MainWindow::gas_tab);
        expect_whole_columns("gas_table", GuestGasModel::turn_column);
    }
}

INSTANTIATE_TEST_SUITE_P(Languages, SmallScreen, ::testing::ValuesIn(offered_tags()),
                         [](const auto& language) { return language.param; });

}  // namespace
}  // namespace leadline::testing
