// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QString>
#include <QTest>
#include <QWidget>
#include <memory>

#include "core/files/session_file.h"
#include "core/files/text_file.h"
#include "ui/document/resources.h"
#include "ui/document/session_document.h"
#include "ui/words/error_words.h"

namespace leadline::testing {

inline Date day(int year, unsigned month, unsigned of_month) {
    return Date{std::chrono::year(year), std::chrono::month(month), std::chrono::day(of_month)};
}

inline QString sample_path(const char* name) {
    return QStringLiteral(LEADLINE_SOURCE_DIR "/sample-sessions/") + QString::fromUtf8(name) +
           QStringLiteral(".json");
}

/// A sample session; a failing expectation and an empty file when it cannot be read.
inline SessionFile sample(const char* name) {
    const Result<std::string> text = read_text_file(sample_path(name).toStdString());
    EXPECT_TRUE(text.has_value()) << name;
    if (!text) return {};
    Result<SessionFile> file =
        read_session(*text, resource_text(QStringLiteral("schema/session.schema.json")));
    EXPECT_TRUE(file.has_value()) << (file ? "" : words(file.error()).toStdString());
    return file ? *file : SessionFile{};
}

inline RuleBook rules() {
    const Result<RuleBook> book = load_rule_book();
    EXPECT_TRUE(book.has_value());
    return book.value_or({});
}

/// A document with a sample open.
class DocumentTest : public ::testing::Test {
protected:
    void open(const char* name) {
        ASSERT_TRUE(document_.open(sample(name)).has_value());
    }
    /// The child of a widget with an object name; fails the test when there is none.
    template <typename Widget>
    static Widget* child(const QWidget& parent, const char* name) {
        auto* found = parent.findChild<Widget*>(QString::fromUtf8(name));
        EXPECT_NE(found, nullptr) << "no " << name;
        return found;
    }
    SessionDocument document_{rules()};
};

}  // namespace leadline::testing
