// SPDX-License-Identifier: GPL-3.0-or-later
#include <benchmark/benchmark.h>

#include <QFile>
#include <QGuiApplication>
#include <QTemporaryDir>
#include <QXmlStreamWriter>
#include <cstdio>

#include "core/files/session_file.h"
#include "core/files/text_file.h"
#include "ui/document/resources.h"
#include "ui/sheet/cards.h"
#include "ui/sheet/pdf.h"

// What 200 cards cost: their content, their layout, the whole PDF.
//
//   cmake --preset release -DLEADLINE_BENCH=ON && cmake --build --preset release
//   QT_QPA_PLATFORM=offscreen build/release/tests/bench/leadline_cards_bench
//
// With --pdf FILE it writes the cards once; with --fodt FILE it writes the same words and pictures as a
// text document, for cards_against_libreoffice.sh.

namespace {

using namespace leadline;

constexpr int card_count = 200;

struct Crowd {
    Session session;
    Plan planned;
};

/// A session of 200 guests, no two with the same name or kit.
const Crowd& crowd() {
    static const Crowd made = [] {
        const std::string path = std::string(LEADLINE_SOURCE_DIR) + "/sample-sessions/salt-cove.json";
        const auto text = read_text_file(path);
        const auto file = text ? read_session(*text, resource_text(QStringLiteral(
                                                         "schema/session.schema.json")))
                               : Result<SessionFile>(text.error());
        const auto rules = load_rule_book();
        if (!file || !rules) std::abort();
        Crowd all;
        all.session = file->session;
        const std::vector<Guest> patterns = all.session.guests;
        all.session.guests.clear();
        for (int i = 0; i < card_count; ++i) {
            Guest guest = patterns[static_cast<std::size_t>(i) % patterns.size()];
            guest.id = GuestId("guest-" + std::to_string(i + 1));
            guest.name += " " + std::to_string(i + 1);
            guest.language = "en";
            guest.second_language.clear();
            guest.kit.regulator = "R" + std::to_string(i + 1);
            all.session.guests.push_back(guest);
        }
        const auto planned = plan(all.session, *rules, 100);
        if (!planned) std::abort();
        all.planned = *planned;
        return all;
    }();
    return made;
}

std::vector<CardContent> contents() {
    std::vector<CardContent> cards;
    for (const Guest& guest : crowd().session.guests) {
        cards.push_back(card_content(crowd().session, crowd().planned, guest, UnitSystem::metric));
    }
    return cards;
}

void bench_content(benchmark::State& state) {
    for (auto _ : state) benchmark::DoNotOptimize(contents());
}
BENCHMARK(bench_content)->Unit(benchmark::kMillisecond);

void bench_layout(benchmark::State& state) {
    const std::vector<CardContent> cards = contents();
    for (auto _ : state) benchmark::DoNotOptimize(card_pages(cards, CardSize::a6_on_a4));
}
BENCHMARK(bench_layout)->Unit(benchmark::kMillisecond);

void bench_pdf(benchmark::State& state) {
    const std::vector<Page> pages = card_pages(contents(), CardSize::a6_on_a4);
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("cards.pdf"));
    for (auto _ : state) {
        const auto written = write_pages_pdf(path, pages, PdfInfo{});
        if (!written) state.SkipWithError("not written");
    }
}
BENCHMARK(bench_pdf)->Unit(benchmark::kMillisecond);

int write_pdf(const QString& path) {
    const std::vector<CardContent> cards = contents();
    const auto written =
        write_cards_pdf(path, cards, CardSize::a6_on_a4, card_document(crowd().session, cards));
    return written ? 0 : 1;
}

void bench_all(benchmark::State& state) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("cards.pdf"));
    for (auto _ : state) {
        if (write_pdf(path) != 0) state.SkipWithError("not written");
    }
}
BENCHMARK(bench_all)->Unit(benchmark::kMillisecond);

/// The same words and pictures as a flat OpenDocument text, a page a card.
class TextDocument {
public:
    explicit TextDocument(QFile& file) : xml_(&file) {
        xml_.writeStartDocument();
        for (const auto& [uri, prefix] :
             {std::pair(office_, u"office"), std::pair(text_, u"text"), std::pair(draw_, u"draw"),
              std::pair(svg_, u"svg"), std::pair(style_, u"style"), std::pair(fo_, u"fo")}) {
            xml_.writeNamespace(uri, QString::fromUtf16(prefix));
        }
        xml_.writeStartElement(office_, QStringLiteral("document"));
        xml_.writeAttribute(office_, QStringLiteral("mimetype"),
                            QStringLiteral("application/vnd.oasis.opendocument.text"));
        xml_.writeStartElement(office_, QStringLiteral("automatic-styles"));
        xml_.writeStartElement(style_, QStringLiteral("style"));
        xml_.writeAttribute(style_, QStringLiteral("name"), QStringLiteral("start"));
        xml_.writeAttribute(style_, QStringLiteral("family"), QStringLiteral("paragraph"));
        xml_.writeEmptyElement(style_, QStringLiteral("paragraph-properties"));
        xml_.writeAttribute(fo_, QStringLiteral("break-before"), QStringLiteral("page"));
        xml_.writeEndElement();
        xml_.writeEndElement();
        xml_.writeStartElement(office_, QStringLiteral("body"));
        xml_.writeStartElement(office_, QStringLiteral("text"));
    }
    ~TextDocument() { xml_.writeEndDocument(); }
    TextDocument(const TextDocument&) = delete;
    TextDocument& operator=(const TextDocument&) = delete;

    void add(const CardContent& card) {
        const QStringList words = all_words(card);
        for (qsizetype i = 0; i < words.size(); ++i) {
            xml_.writeStartElement(text_, QStringLiteral("p"));
            if (i == 0) xml_.writeAttribute(text_, QStringLiteral("style-name"), QStringLiteral("start"));
            xml_.writeCharacters(words[i]);
            xml_.writeEndElement();
        }
        xml_.writeStartElement(text_, QStringLiteral("p"));
        picture(card.low_on_air.picture);
        for (const CardKit& item : card.kit) picture(item.picture);
        for (const CardSignal& hand : card.hand_signals) picture(hand.picture);
        xml_.writeEndElement();
    }

private:
    void picture(const QString& name) {
        QFile drawing(name);
        if (!drawing.open(QIODevice::ReadOnly)) return;
        xml_.writeStartElement(draw_, QStringLiteral("frame"));
        xml_.writeAttribute(text_, QStringLiteral("anchor-type"), QStringLiteral("as-char"));
        xml_.writeAttribute(svg_, QStringLiteral("width"), QStringLiteral("10mm"));
        xml_.writeAttribute(svg_, QStringLiteral("height"), QStringLiteral("10mm"));
        xml_.writeStartElement(draw_, QStringLiteral("image"));
        xml_.writeTextElement(office_, QStringLiteral("binary-data"),
                              QString::fromLatin1(drawing.readAll().toBase64()));
        xml_.writeEndElement();
        xml_.writeEndElement();
    }
    static QString space(const char* name) {
        return QStringLiteral("urn:oasis:names:tc:opendocument:xmlns:") + QLatin1String(name);
    }
    const QString office_ = space("office:1.0");
    const QString text_ = space("text:1.0");
    const QString draw_ = space("drawing:1.0");
    const QString svg_ = space("svg-compatible:1.0");
    const QString style_ = space("style:1.0");
    const QString fo_ = space("xsl-fo-compatible:1.0");
    QXmlStreamWriter xml_;
};

int write_text_document(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly)) return 1;
    TextDocument document(file);
    for (const CardContent& card : contents()) document.add(card);
    return 0;
}

}  // namespace

int main(int argc, char** argv) {
    QGuiApplication application(argc, argv);
    const QStringList arguments = QGuiApplication::arguments();
    if (arguments.size() == 3 && arguments[1] == u"--pdf") return write_pdf(arguments[2]);
    if (arguments.size() == 3 && arguments[1] == u"--fodt") return write_text_document(arguments[2]);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
