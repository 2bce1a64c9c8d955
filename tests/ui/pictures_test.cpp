// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QImage>
#include <QPainter>
#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QSvgRenderer>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <set>

namespace leadline::testing {
namespace {

constexpr int field = 100;
constexpr int margin = 20;

QByteArray bytes_of(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return file.readAll();
}

QStringList svg_files(const QString& folder) {
    return QDir(folder).entryList({QStringLiteral("*.svg")}, QDir::Files, QDir::Name);
}

/// The picture on a clear ground, in the middle of an image that is `margin` larger on each side.
QImage drawn(const QString& path) {
    QSvgRenderer renderer(path);
    EXPECT_TRUE(renderer.isValid()) << path.toStdString();
    QImage image(field + 2 * margin, field + 2 * margin, QImage::Format_ARGB32);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    renderer.render(&painter, QRectF(margin, margin, field, field));
    return image;
}

/// One folder of pictures that a script draws.
class PictureFolder : public ::testing::TestWithParam<const char*> {
protected:
    [[nodiscard]] static QString name() { return QString::fromLatin1(GetParam()); }
    [[nodiscard]] static QString carried() { return QStringLiteral(":/leadline/") + name(); }
    [[nodiscard]] static QString source() {
        return QStringLiteral(LEADLINE_SOURCE_DIR "/resources/") + name();
    }
};

TEST_P(PictureFolder, CarriesEveryFileAndTellsWhereItComesFrom) {
    const QStringList files = svg_files(source());
    ASSERT_FALSE(files.isEmpty());
    EXPECT_EQ(files, svg_files(carried()));
    QStringList told;
    const QRegularExpression row(QStringLiteral("^\\| `([a-z0-9-]+\\.svg)` \\|"),
                                 QRegularExpression::MultilineOption);
    const QString sources =
        QString::fromUtf8(bytes_of(source() + QStringLiteral("/SOURCES.md")));
    for (auto found = row.globalMatch(sources); found.hasNext();) {
        told << found.next().captured(1);
    }
    told.sort();
    EXPECT_EQ(files, told);
}

TEST_P(PictureFolder, IsDrawnByItsScript) {
    const QString python = QStandardPaths::findExecutable(QStringLiteral("python3"));
    if (python.isEmpty()) GTEST_SKIP() << "no python3 here";
    const QTemporaryDir out;
    QProcess script;
    script.start(python, {source() + QStringLiteral("/make_") + name() + QStringLiteral(".py"),
                          out.path()});
    ASSERT_TRUE(script.waitForFinished());
    ASSERT_EQ(script.exitCode(), 0) << script.readAllStandardError().toStdString();
    EXPECT_EQ(svg_files(out.path()), svg_files(source()));
    for (const QString& file : svg_files(out.path())) {
        EXPECT_EQ(bytes_of(out.filePath(file)), bytes_of(source() + u'/' + file))
            << file.toStdString();
    }
}

TEST_P(PictureFolder, IsBlackAndWhitePathsOnly) {
    const std::set<QString> elements = {QStringLiteral("svg"), QStringLiteral("title"),
                                        QStringLiteral("g"), QStringLiteral("path")};
    const std::set<QString> inks = {QStringLiteral("#000"), QStringLiteral("#fff"),
                                    QStringLiteral("none")};
    for (const QString& file : svg_files(carried())) {
        QXmlStreamReader xml(bytes_of(carried() + u'/' + file));
        while (!xml.atEnd()) {
            if (xml.readNext() != QXmlStreamReader::StartElement) continue;
            EXPECT_TRUE(elements.contains(xml.name().toString())) << file.toStdString();
            for (const auto* paint : {"fill", "stroke"}) {
                const auto ink = xml.attributes().value(QLatin1String(paint));
                EXPECT_TRUE(ink.isEmpty() || inks.contains(ink.toString())) << file.toStdString();
            }
        }
        EXPECT_FALSE(xml.hasError()) << file.toStdString();
    }
}

// A card draws ten of them, and a whole boat's cards are printed at once.
TEST_P(PictureFolder, IsLean) {
    const QRegularExpression two_decimals(QStringLiteral("\\.\\d\\d"));
    for (const QString& file : svg_files(carried())) {
        const QByteArray svg = bytes_of(carried() + u'/' + file);
        EXPECT_LE(svg.count("<path"), 42) << file.toStdString();
        EXPECT_LE(svg.size(), 8000) << file.toStdString();
        EXPECT_FALSE(QString::fromUtf8(svg).contains(two_decimals)) << file.toStdString();
    }
}

TEST_P(PictureFolder, DrawsInsideItsSquareAndFillsIt) {
    const QRect square(margin, margin, field, field);
    for (const QString& file : svg_files(carried())) {
        EXPECT_EQ(QSvgRenderer(carried() + u'/' + file).defaultSize(), QSize(field, field));
        const QImage image = drawn(carried() + u'/' + file);
        QRect inked;
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x) {
                if (image.pixelColor(x, y).alpha() > 0) inked |= QRect(x, y, 1, 1);
            }
        }
        EXPECT_TRUE(square.contains(inked)) << file.toStdString();
        EXPECT_GE(qMax(inked.width(), inked.height()), field * 9 / 10) << file.toStdString();
    }
}

TEST_P(PictureFolder, HasNoTwoPicturesAlike) {
    std::set<QByteArray> seen;
    for (const QString& file : svg_files(carried())) {
        const QImage image = drawn(carried() + u'/' + file);
        const QByteArray pixels(reinterpret_cast<const char*>(image.constBits()),
                                image.sizeInBytes());
        EXPECT_TRUE(seen.insert(pixels).second) << file.toStdString();
    }
}

INSTANTIATE_TEST_SUITE_P(All, PictureFolder,
                         ::testing::Values("signals", "kit", "body", "skills"),
                         [](const auto& folder) { return std::string(folder.param); });

}  // namespace
}  // namespace leadline::testing
