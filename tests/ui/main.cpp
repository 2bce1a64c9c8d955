// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QApplication>
#include <QStandardPaths>

#include "ui/widgets/theme.h"
#include "ui/words/window_language.h"

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    ::testing::InitGoogleTest(&argc, argv);
    QStandardPaths::setTestModeEnabled(true);  // never the user's own folders
    QApplication application(argc, argv);
    QLocale::setDefault(QLocale::c());
    leadline::speak(QStringLiteral("en"));
    leadline::apply_theme(application, leadline::Shade::light);
    return RUN_ALL_TESTS();
}
