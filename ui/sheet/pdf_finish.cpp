// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/pdf_finish.h"

#include <QDateTime>
#include <QXmlStreamWriter>
#include <map>
#include <memory>
#include <qpdf/Buffer.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>
#include <qpdf/QPDFWriter.hh>
#include <set>

#include "ui/sheet/pdf_pictures.h"
#include "ui/sheet/pdf_text_map.h"
#include "ui/sheet/type_setting.h"

namespace leadline {
namespace {

constexpr const char* producer = "Qt and libqpdf";
constexpr const char* creator = "Leadline";

QPDFObjectHandle text_object(const QString& text) {
    return QPDFObjectHandle::newUnicodeString(text.toStdString());
}

/// A stream compressed as the drawn ones are.
QPDFObjectHandle packed_stream(QPDF& pdf, const QByteArray& content) {
    constexpr int length_prefix = 4;  // qCompress puts the length before what zlib made
    const QByteArray packed = qCompress(content, 6).mid(length_prefix);
    QPDFObjectHandle stream = QPDFObjectHandle::newStream(&pdf, packed.toStdString());
    stream.getDict().replaceKey("/Filter", QPDFObjectHandle::newName("/FlateDecode"));
    return stream;
}

QByteArray number(double value) { return QByteArray::number(value, 'f', 3); }

/// Where a frame in millimetres lies, as the start of a matrix that takes a square of `side` there.
QByteArray matrix(const QRectF& rect, double side, double page_height) {
    const QRectF points(rect.topLeft() / mm_per_point, rect.size() / mm_per_point);
    return QByteArray::number(points.width() / side, 'f', 5) + " 0 0 " +
           QByteArray::number(points.height() / side, 'f', 5) + ' ' + number(points.left()) + ' ' +
           number(page_height - points.bottom()) + " cm ";
}

/// A code as a stencil of its dark fields, each a field large: no renderer blurs it.
QByteArray code_drawing(const QrItem& code, double page_height) {
    QByteArray rows;
    const int row_bytes = (code.side + 7) / 8;
    for (int row = 0; row < code.side; ++row) {
        QByteArray bits(row_bytes, '\0');
        for (int column = 0; column < code.side; ++column) {
            if (code.fields[row * code.side + column] == 0) continue;
            const unsigned int bit = 0x80U >> static_cast<unsigned int>(column % 8);
            bits[column / 8] = static_cast<char>(static_cast<unsigned char>(bits[column / 8]) | bit);
        }
        rows += bits.toHex();
    }
    const QByteArray side = QByteArray::number(code.side);
    return "q 0 g " + matrix(code.rect, 1.0, page_height) + "BI /W " + side + " /H " + side +
           " /IM true /D [1 0] /F /AHx ID " + rows + ">\nEI Q\n";
}

/// The pictures of a document, copied into it once each.
class Pictures {
public:
    Pictures(QPDF& target, const QStringList& names) {
        const QByteArray pages = picture_pages(names);
        if (pages.isEmpty()) return;
        // Kept, for the copies are read when the document is written.
        bytes_ = pages;
        source_ = std::make_unique<QPDF>();
        source_->processMemoryFile("pictures", bytes_.constData(),
                                   static_cast<std::size_t>(bytes_.size()));
        qsizetype i = 0;
        for (QPDFPageObjectHelper& page : QPDFPageDocumentHelper(*source_).getAllPages()) {
            if (i >= names.size()) break;
            forms_[names[i++]] = target.copyForeignObject(page.getFormXObjectForPage(false));
        }
    }
    /// Draws a picture, and notes what the page needs for it.
    QByteArray drawing(const PictureItem& picture, double page_height, QPDFObjectHandle& used) {
        const auto form = forms_.find(picture.name);
        if (form == forms_.end()) return {};
        const QByteArray name =
            "/Picture" + QByteArray::number(std::distance(forms_.begin(), form));
        used.replaceKey(name.toStdString(), form->second);
        return "q " + matrix(picture.rect, picture_page_points, page_height) + name + " Do Q\n";
    }

private:
    QByteArray bytes_;
    std::unique_ptr<QPDF> source_;
    std::map<QString, QPDFObjectHandle> forms_;
};

void add_drawings(QPDF& pdf, QPDFPageObjectHelper& pdf_page, const Page& page, Pictures& pictures) {
    QPDFObjectHandle media = pdf_page.getMediaBox();
    const double height =
        media.getArrayItem(3).getNumericValue() - media.getArrayItem(1).getNumericValue();
    QByteArray drawings;
    QPDFObjectHandle used = QPDFObjectHandle::newDictionary();
    for (const SheetItem& item : page.items) {
        if (const auto* picture = std::get_if<PictureItem>(&item)) {
            drawings += pictures.drawing(*picture, height, used);
        } else if (const auto* code = std::get_if<QrItem>(&item)) {
            drawings += code_drawing(*code, height);
        }
    }
    if (drawings.isEmpty()) return;
    QPDFObjectHandle object = pdf_page.getObjectHandle();
    QPDFObjectHandle resources = object.getKey("/Resources").shallowCopy();
    QPDFObjectHandle all = resources.getKey("/XObject");
    all = all.isDictionary() ? all.shallowCopy() : QPDFObjectHandle::newDictionary();
    for (const std::string& key : used.getKeys()) all.replaceKey(key, used.getKey(key));
    resources.replaceKey("/XObject", all);
    object.replaceKey("/Resources", resources);
    // What was drawn may leave its scale behind.
    pdf_page.addPageContents(packed_stream(pdf, "q\n"), true);
    pdf_page.addPageContents(packed_stream(pdf, "\nQ\n" + drawings), false);
}

/// Letters as they were written, in every font of a page that is not yet in `done`.
void correct_letters(QPDF& pdf, QPDFPageObjectHelper& page, PdfTextMap& letters,
                     std::set<QPDFObjGen>& done) {
    QPDFObjectHandle resources = page.getObjectHandle().getKey("/Resources");
    QPDFObjectHandle fonts = resources.getKey("/Font");
    if (!fonts.isDictionary()) return;
    for (const std::string& key : fonts.getKeys()) {
        QPDFObjectHandle font = fonts.getKey(key);
        if (!font.isDictionary() || !done.insert(font.getObjGen()).second) continue;
        QPDFObjectHandle map = font.getKey("/ToUnicode");
        if (!map.isStream()) continue;
        const std::shared_ptr<Buffer> data = map.getStreamData();
        const auto* bytes = reinterpret_cast<const char*>(data->getBuffer());
        const QByteArray old(bytes, static_cast<qsizetype>(data->getSize()));
        font.replaceKey("/ToUnicode", packed_stream(pdf, letters.corrected(old)));
    }
}

QString date_now() { return QDateTime::currentDateTimeUtc().toString(Qt::ISODate); }

/// "2026-06-20T08:15:00Z" as a PDF writes it.
QString pdf_date(const QString& iso) {
    QString digits = iso;
    digits.remove(u'-').remove(u':').remove(u'T').remove(u'Z');
    return QStringLiteral("D:") + digits + u'Z';
}

QStringList languages_of(const PdfInfo& info) {
    return info.languages.isEmpty() ? QStringList{QStringLiteral("en")} : info.languages;
}

class Metadata {
public:
    Metadata(const PdfInfo& info, const QString& date) : xml_(&bytes_) {
        xml_.writeProcessingInstruction(
            QStringLiteral("xpacket"),
            QStringLiteral("begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\""));
        xml_.writeNamespace(meta_, QStringLiteral("x"));
        xml_.writeStartElement(meta_, QStringLiteral("xmpmeta"));
        xml_.writeNamespace(rdf_, QStringLiteral("rdf"));
        xml_.writeStartElement(rdf_, QStringLiteral("RDF"));
        xml_.writeStartElement(rdf_, QStringLiteral("Description"));
        xml_.writeAttribute(rdf_, QStringLiteral("about"), QString());
        for (const auto& [uri, prefix] :
             {std::pair(dc_, u"dc"), std::pair(xmp_, u"xmp"), std::pair(pdf_, u"pdf"),
              std::pair(pdfa_, u"pdfaid")}) {
            xml_.writeNamespace(uri, QString::fromUtf16(prefix));
        }
        if (!info.title.isEmpty()) {
            const QStringList title{info.title};
            list(QStringLiteral("title"), QStringLiteral("Alt"), title, true);
        }
        if (!info.author.isEmpty()) {
            list(QStringLiteral("creator"), QStringLiteral("Seq"), {info.author}, false);
        }
        list(QStringLiteral("language"), QStringLiteral("Bag"), languages_of(info), false);
        xml_.writeTextElement(xmp_, QStringLiteral("CreatorTool"), QString::fromLatin1(creator));
        xml_.writeTextElement(xmp_, QStringLiteral("CreateDate"), date);
        xml_.writeTextElement(xmp_, QStringLiteral("ModifyDate"), date);
        xml_.writeTextElement(pdf_, QStringLiteral("Producer"), QString::fromLatin1(producer));
        xml_.writeTextElement(pdfa_, QStringLiteral("part"), QStringLiteral("1"));
        xml_.writeTextElement(pdfa_, QStringLiteral("conformance"), QStringLiteral("B"));
        xml_.writeEndElement();
        xml_.writeEndElement();
        xml_.writeEndElement();
        xml_.writeProcessingInstruction(QStringLiteral("xpacket"), QStringLiteral("end=\"w\""));
    }
    [[nodiscard]] const QByteArray& bytes() const { return bytes_; }

private:
    void list(const QString& name, const QString& kind, const QStringList& values, bool languages) {
        xml_.writeStartElement(dc_, name);
        xml_.writeStartElement(rdf_, kind);
        for (const QString& value : values) {
            xml_.writeStartElement(rdf_, QStringLiteral("li"));
            if (languages) {
                xml_.writeAttribute(QStringLiteral("xml:lang"), QStringLiteral("x-default"));
            }
            xml_.writeCharacters(value);
            xml_.writeEndElement();
        }
        xml_.writeEndElement();
        xml_.writeEndElement();
    }
    const QString meta_ = QStringLiteral("adobe:ns:meta/");
    const QString rdf_ = QStringLiteral("http://www.w3.org/1999/02/22-rdf-syntax-ns#");
    const QString dc_ = QStringLiteral("http://purl.org/dc/elements/1.1/");
    const QString xmp_ = QStringLiteral("http://ns.adobe.com/xap/1.0/");
    const QString pdf_ = QStringLiteral("http://ns.adobe.com/pdf/1.3/");
    const QString pdfa_ = QStringLiteral("http://www.aiim.org/pdfa/ns/id/");
    QByteArray bytes_;
    QXmlStreamWriter xml_;
};

void describe(QPDF& pdf, const PdfInfo& info) {
    const QString date = date_now();
    QPDFObjectHandle about = QPDFObjectHandle::newDictionary();
    if (!info.title.isEmpty()) about.replaceKey("/Title", text_object(info.title));
    if (!info.author.isEmpty()) about.replaceKey("/Author", text_object(info.author));
    about.replaceKey("/Creator", QPDFObjectHandle::newUnicodeString(creator));
    about.replaceKey("/Producer", QPDFObjectHandle::newUnicodeString(producer));
    about.replaceKey("/CreationDate", text_object(pdf_date(date)));
    about.replaceKey("/ModDate", text_object(pdf_date(date)));
    pdf.getTrailer().replaceKey("/Info", pdf.makeIndirectObject(about));

    // Not packed: PDF/A asks for metadata that can be read without unpacking.
    QPDFObjectHandle metadata =
        QPDFObjectHandle::newStream(&pdf, Metadata(info, date).bytes().toStdString());
    metadata.getDict().replaceKey("/Type", QPDFObjectHandle::newName("/Metadata"));
    metadata.getDict().replaceKey("/Subtype", QPDFObjectHandle::newName("/XML"));
    QPDFObjectHandle root = pdf.getRoot();
    root.replaceKey("/Metadata", metadata);
    root.replaceKey("/Lang", text_object(languages_of(info).front()));
    QPDFObjectHandle viewer = QPDFObjectHandle::newDictionary();
    viewer.replaceKey("/DisplayDocTitle", QPDFObjectHandle::newBool(true));
    root.replaceKey("/ViewerPreferences", viewer);
}

}  // namespace

Result<QByteArray> finished_pdf(const QByteArray& drawn, const std::vector<Page>& pages,
                                const PdfInfo& info) {
    try {
        QPDF pdf;
        pdf.processMemoryFile("drawn", drawn.constData(), static_cast<std::size_t>(drawn.size()));
        Pictures pictures(pdf, pictures_on(pages));
        PdfTextMap letters(pages);
        std::set<QPDFObjGen> corrected;
        std::size_t i = 0;
        for (QPDFPageObjectHelper& page : QPDFPageDocumentHelper(pdf).getAllPages()) {
            correct_letters(pdf, page, letters, corrected);
            if (i < pages.size()) add_drawings(pdf, page, pages[i++], pictures);
        }
        describe(pdf, info);
        QPDFWriter writer(pdf);
        writer.setOutputMemory();
        writer.setObjectStreamMode(qpdf_o_disable);  // PDF 1.4 has none
        writer.setStreamDataMode(qpdf_s_preserve);
        writer.write();
        const std::shared_ptr<Buffer> buffer = writer.getBufferSharedPointer();
        const auto* bytes = reinterpret_cast<const char*>(buffer->getBuffer());
        return QByteArray(bytes, static_cast<qsizetype>(buffer->getSize()));
    } catch (const std::exception& problem) {
        return Error{ErrorCode::file_unwritable, {}, problem.what(), {}};
    }
}

}  // namespace leadline
