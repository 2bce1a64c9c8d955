// SPDX-License-Identifier: GPL-3.0-or-later
#include <fcntl.h>
#include <gmock/gmock.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <algorithm>
#include <csignal>
#include <sstream>

#include "sheet_fixture.h"
#include "ui/sheet/pdf.h"

namespace leadline::testing {
namespace {

using ::testing::ContainsRegex;
using ::testing::HasSubstr;
using ::testing::Not;

std::string output_of(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    EXPECT_TRUE(process.waitForFinished(60'000)) << program.toStdString();
    EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
    return process.readAllStandardOutput().toStdString();
}

class PdfDocument : public ::testing::Test {
protected:
    QString write(const std::vector<CardContent>& cards, const PdfInfo& info = {},
                  CardSize size = CardSize::a6_on_a4) {
        const QString path = folder_.filePath(QStringLiteral("cards.pdf"));
        const Result<int> pages = write_cards_pdf(path, cards, size, info);
        EXPECT_TRUE(pages.has_value());
        return path;
    }
    static QString text_of(const QString& path) {
        return QString::fromStdString(
            output_of(QStringLiteral("pdftotext"), {path, QStringLiteral("-")}));
    }
    QTemporaryDir folder_;
};

TEST_F(PdfDocument, EveryWordIsFoundInEveryLanguage) {
    for (const GuestLanguage& language : guest_languages()) {
        // Shapes of joined letters come back as such, and in the order they are seen.
        if (language.right_to_left) continue;
        auto cards = faces_of(sample("salt-cove").session, UnitSystem::metric, language.tag);
        cards.resize(1);
        const QString text = bare(text_of(write(cards, {}, CardSize::a6)));
        // Lines of neighbours may be read in turn: every word by itself.
        for (const QString& words : all_words(cards.front())) {
            for (const QString& word : words.split(u' ')) {
                if (language.tag == "ja" || language.tag == "zh-Hans") {
                    for (const QChar letter : bare(word)) {
                        EXPECT_TRUE(text.contains(letter)) << word.toStdString();
                    }
                } else {
                    EXPECT_TRUE(text.contains(bare(word)))
                        << language.tag << ": " << word.toStdString();
                }
            }
        }
    }
}

TEST_F(PdfDocument, LettersAreThoseThatWereWritten) {
    const QString text = text_of(write(faces_of(sample("many-tongues").session, UnitSystem::metric)));
    for (const char* name : {"佐藤", "健太郎", "欧阳晓明", "김서연", "Émilien", "Вероника",
                             "Brzęczyszczykiewicz"}) {
        EXPECT_TRUE(text.contains(QString::fromUtf8(name))) << name;
    }
    EXPECT_FALSE(text.contains(u'\t'));
}

TEST_F(PdfDocument, EmbedsEveryFontAndIsSound) {
    const QString path = write(faces_of(sample("many-tongues").session, UnitSystem::metric));
    std::istringstream lines(output_of(QStringLiteral("pdffonts"), {path}));
    std::string line;
    int seen = 0;
    for (int row = 0; std::getline(lines, line); ++row) {
        if (row < 2) continue;
        ++seen;
        // name, type, encoding, then: embedded, subset, with a map to Unicode.
        EXPECT_THAT(line, ContainsRegex(" yes +(yes|no) +yes +[0-9]"));
    }
    EXPECT_GE(seen, 3);
    EXPECT_THAT(output_of(QStringLiteral("qpdf"), {QStringLiteral("--check"), path}),
                HasSubstr("No syntax or stream encoding errors"));
}

std::string structure_of(const QString& path) {
    return output_of(QStringLiteral("qpdf"),
                     {QStringLiteral("--qdf"), QStringLiteral("--object-streams=disable"), path,
                      QStringLiteral("-")});
}

TEST_F(PdfDocument, SaysWhatItIsInBothPlaces) {
    PdfInfo info;
    info.title = QStringLiteral("Früh & <spät>");
    info.author = QStringLiteral("Łucja \"Lu\" O’Neill");
    info.languages = {QStringLiteral("de"), QStringLiteral("ar")};
    const QString path = write(faces_of(sample("salt-cove").session, UnitSystem::metric), info);
    const std::string about = output_of(QStringLiteral("pdfinfo"), {path});
    EXPECT_THAT(about, HasSubstr("Title:           Früh & <spät>"));
    EXPECT_THAT(about, HasSubstr("Author:          Łucja \"Lu\" O’Neill"));
    EXPECT_THAT(about, HasSubstr("Creator:         Leadline"));
    EXPECT_THAT(about, HasSubstr("PDF version:     1.4"));
    const std::string metadata =
        output_of(QStringLiteral("pdfinfo"), {QStringLiteral("-meta"), path});
    EXPECT_THAT(metadata, HasSubstr("Früh &amp; &lt;spät&gt;"));
    EXPECT_THAT(metadata, HasSubstr("Łucja &quot;Lu&quot; O’Neill"));
    EXPECT_THAT(metadata, HasSubstr("<rdf:li>de</rdf:li><rdf:li>ar</rdf:li>"));
    EXPECT_THAT(metadata, HasSubstr("<pdfaid:part>1</pdfaid:part>"));
    EXPECT_THAT(metadata, HasSubstr("begin=\"\uFEFF\""));
    const std::string structure = structure_of(path);
    const auto holds = [&](const char* words) {
        return structure.find(words) != std::string::npos;
    };
    EXPECT_TRUE(holds("/Lang (de)"));
    EXPECT_TRUE(holds("/OutputIntent"));
    EXPECT_FALSE(holds("/ObjStm"));
    // PDF/A-1 knows no transparency: the only mask there may be is none.
    EXPECT_EQ(structure.find("/SMask "), structure.find("/SMask /None"));
    EXPECT_FALSE(holds("/Group"));
}

TEST_F(PdfDocument, WithoutAuthorAndLanguagesItIsInEnglish) {
    const QString path = write(faces_of(sample("salt-cove").session, UnitSystem::metric));
    EXPECT_NE(structure_of(path).find("/Lang (en)"), std::string::npos);
    EXPECT_THAT(output_of(QStringLiteral("pdfinfo"), {path}), Not(HasSubstr("Author:")));
}

TEST_F(PdfDocument, TheSessionGivesTitleAuthorAndLanguages) {
    const Session session = sample("harbour-morning").session;
    const PdfInfo info = card_document(session, faces_of(session, UnitSystem::metric, "en"));
    EXPECT_EQ(info.title, u"Harbour morning");
    EXPECT_EQ(info.author, u"Komang Aryawan");
    EXPECT_EQ(info.languages, QStringList{QStringLiteral("en")});
}

TEST_F(PdfDocument, StoresEveryPictureOnce) {
    const auto forms = [&](const QString& path) {
        const std::string structure = structure_of(path);
        std::size_t count = 0;
        for (std::size_t at = structure.find("/Subtype /Form"); at != std::string::npos;
             at = structure.find("/Subtype /Form", at + 1)) {
            ++count;
        }
        return count;
    };
    const auto cards = faces_of(sample("many-tongues").session, UnitSystem::metric, "en");
    const std::size_t one = forms(write({cards.front()}));
    EXPECT_EQ(one, 18U);  // ten signals, the one at the figure, seven pieces of kit
    EXPECT_EQ(forms(write(cards)), one);
}

/// Share of the pixels of two pictures of the same page that differ strongly.
double difference(const QImage& a, const QImage& b) {
    const QImage small_a = a.scaled(210, 297).convertToFormat(QImage::Format_Grayscale8);
    const QImage small_b = b.scaled(210, 297).convertToFormat(QImage::Format_Grayscale8);
    int differing = 0;
    for (int y = 0; y < small_a.height(); ++y) {
        for (int x = 0; x < small_a.width(); ++x) {
            const int delta = qGray(small_a.pixel(x, y)) - qGray(small_b.pixel(x, y));
            differing += std::abs(delta) > 80 ? 1 : 0;
        }
    }
    return static_cast<double>(differing) / (small_a.width() * small_a.height());
}

TEST_F(PdfDocument, ShowsWhatThePreviewShowsOnEverySize) {
    for (const CardSize size : card_sizes()) {
        const auto cards = faces_of(sample("harbour-morning").session, UnitSystem::metric);
        const Page page = card_pages(cards, size).front();
        const QString stem = folder_.filePath(QStringLiteral("page"));
        output_of(QStringLiteral("pdftoppm"),
                  {QStringLiteral("-png"), QStringLiteral("-r"), QStringLiteral("102"),
                   QStringLiteral("-singlefile"), write(cards, {}, size), stem});
        const QImage printed(stem + QStringLiteral(".png"));
        ASSERT_FALSE(printed.isNull());
        QImage drawn(printed.size(), QImage::Format_RGB32);
        drawn.fill(Qt::white);
        QPainter painter(&drawn);
        SheetPainter().paint(painter, page, 102.0 / 25.4);
        painter.end();
        EXPECT_LT(difference(printed, drawn), 0.04) << static_cast<int>(size);
        // The measure can tell: an empty page differs far more.
        QImage other(printed.size(), QImage::Format_RGB32);
        other.fill(Qt::white);
        EXPECT_GT(difference(printed, other), 0.08);
    }
}

TEST_F(PdfDocument, AFolderThatIsNotThereIsAnError) {
    const auto cards = faces_of(sample("salt-cove").session, UnitSystem::metric);
    const Result<int> result = write_cards_pdf(QStringLiteral("/no/such/folder/cards.pdf"), cards,
                                               CardSize::a6_on_a4, PdfInfo{});
    ASSERT_FALSE(result.has_value());
    EXPECT_EQ(result.error().code, ErrorCode::file_unwritable);
    EXPECT_EQ(result.error().place, "/no/such/folder/cards.pdf");
}

TEST_F(PdfDocument, AFailureLeavesTheOldFileAsItWas) {
    const QString path = folder_.filePath(QStringLiteral("old.pdf"));
    QFile old(path);
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write("old");
    old.close();
    EXPECT_FALSE(write_cards_pdf(path, {}, CardSize::a6_on_a4, PdfInfo{}).has_value());
    ASSERT_TRUE(old.open(QIODevice::ReadOnly));
    EXPECT_EQ(old.readAll().toStdString(), "old");
}

/// While it lives no file may grow beyond so many bytes: as on a disk that is full.
class FullDisk {
public:
    explicit FullDisk(rlim_t bytes) : signal_(std::signal(SIGXFSZ, SIG_IGN)) {
        getrlimit(RLIMIT_FSIZE, &before_);
        rlimit small = before_;
        small.rlim_cur = bytes;
        setrlimit(RLIMIT_FSIZE, &small);
    }
    ~FullDisk() {
        setrlimit(RLIMIT_FSIZE, &before_);
        std::signal(SIGXFSZ, signal_);
    }
    FullDisk(const FullDisk&) = delete;
    FullDisk& operator=(const FullDisk&) = delete;

private:
    rlimit before_{};
    void (*signal_)(int);
};

TEST_F(PdfDocument, AFullDiskLeavesTheOldFileAndNoHalfOne) {
    const auto cards = faces_of(sample("salt-cove").session, UnitSystem::metric);
    const std::vector<Page> pages = card_pages(cards, CardSize::a6);
    const QString path = folder_.filePath(QStringLiteral("old.pdf"));
    QFile old(path);
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write("old");
    old.close();
    for (const rlim_t bytes : {rlim_t{0}, rlim_t{100}, rlim_t{20'000}}) {
        Result<int> result = 0;
        {
            const FullDisk full(bytes);
            result = write_pages_pdf(path, pages, PdfInfo{});
        }
        ASSERT_FALSE(result.has_value()) << bytes;
        EXPECT_EQ(result.error().code, ErrorCode::file_unwritable);
        EXPECT_EQ(result.error().place, path.toStdString());
        EXPECT_FALSE(result.error().given.empty()) << "the system's reason";
        ASSERT_TRUE(old.open(QIODevice::ReadOnly));
        EXPECT_EQ(old.readAll().toStdString(), "old");
        old.close();
        EXPECT_EQ(QDir(folder_.path()).entryList(QDir::Files | QDir::Hidden),
                  QStringList{QStringLiteral("old.pdf")});
    }
    EXPECT_TRUE(write_pages_pdf(path, pages, PdfInfo{}).has_value());
}

TEST_F(PdfDocument, APlaceThatIsNoFileIsAnErrorAndStays) {
    const auto cards = faces_of(sample("salt-cove").session, UnitSystem::metric);
    ASSERT_TRUE(QDir(folder_.path()).mkdir(QStringLiteral("cards.pdf")));
    for (const QString& path : QStringList{folder_.filePath(QStringLiteral("cards.pdf")),
                                           folder_.path(), folder_.filePath(QString()), QString()}) {
        const Result<int> result = write_cards_pdf(path, cards, CardSize::a6, PdfInfo{});
        ASSERT_FALSE(result.has_value()) << path.toStdString();
        EXPECT_EQ(result.error().code, ErrorCode::file_unwritable);
        EXPECT_FALSE(result.error().given.empty());
    }
    EXPECT_TRUE(QFileInfo(folder_.filePath(QStringLiteral("cards.pdf"))).isDir());
}

TEST_F(PdfDocument, APipeIsWrittenToAndStaysOne) {
    auto cards = faces_of(sample("salt-cove").session, UnitSystem::metric, "en");
    cards.resize(1);
    const QString path = folder_.filePath(QStringLiteral("pipe"));
    const QByteArray name = QFile::encodeName(path);
    ASSERT_EQ(mkfifo(name.constData(), 0600), 0);
    const int reader = open(name.constData(), O_RDONLY | O_NONBLOCK);
    ASSERT_GE(reader, 0);
    constexpr int room = 1 << 20;  // what anybody may ask for: holds a page
    ASSERT_GE(fcntl(reader, F_SETPIPE_SZ, room), room);
    const Result<int> pages = write_cards_pdf(path, cards, CardSize::a6, PdfInfo{});
    EXPECT_EQ(pages.value_or(0), 1);
    QByteArray got(room, '\0');
    got.resize(std::max<ssize_t>(0, read(reader, got.data(), room)));
    close(reader);
    EXPECT_TRUE(got.startsWith("%PDF"));
    EXPECT_TRUE(got.trimmed().endsWith("%%EOF"));
    struct stat there {};
    ASSERT_EQ(stat(name.constData(), &there), 0);
    EXPECT_TRUE(S_ISFIFO(there.st_mode));
}

TEST_F(PdfDocument, TheTitleIsCleanWhateverWasPasted) {
    Session session = sample("salt-cove").session;
    session.title = "Early\x01 \u202Esession\n2";
    session.guests.resize(1);
    const auto cards = faces_of(session, UnitSystem::metric, "en");
    EXPECT_EQ(card_document(session, cards).title, u"Early session 2");
}

TEST_F(PdfDocument, ForTheOwnerAloneNobodyElseReadsIt) {
    const auto cards = faces_of(sample("salt-cove").session, UnitSystem::metric);
    const QString path = folder_.filePath(QStringLiteral("own.pdf"));
    ASSERT_TRUE(write_pages_pdf(path, card_pages(cards, CardSize::a6), PdfInfo{},
                                FileAccess::owner_only)
                    .has_value());
    const QFileDevice::Permissions others = QFileDevice::ReadGroup | QFileDevice::WriteGroup |
                                            QFileDevice::ReadOther | QFileDevice::WriteOther;
    EXPECT_EQ(QFile::permissions(path) & others, QFileDevice::Permissions());
}

}  // namespace
}  // namespace leadline::testing
