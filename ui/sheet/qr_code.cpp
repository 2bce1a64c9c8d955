// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/qr_code.h"

#include <qrencode.h>

#include <memory>

namespace leadline {
namespace {

constexpr unsigned int utf8_designator = 26;

struct FreeInput {
    void operator()(QRinput* input) const { QRinput_free(input); }
};
struct FreeCode {
    void operator()(QRcode* code) const { QRcode_free(code); }
};

}  // namespace

std::optional<QrItem> qr_code(const QByteArray& utf8) {
    if (utf8.isEmpty()) return std::nullopt;
    const std::unique_ptr<QRinput, FreeInput> input(QRinput_new2(0, QR_ECLEVEL_M));
    if (input == nullptr || QRinput_appendECIheader(input.get(), utf8_designator) != 0) {
        return std::nullopt;
    }
    const QByteArray copy = utf8;
    // The library reads bytes as unsigned; the copy is never written to.
    const auto* bytes = reinterpret_cast<const unsigned char*>(copy.constData());
    if (QRinput_append(input.get(), QR_MODE_8, static_cast<int>(copy.size()), bytes) != 0) {
        return std::nullopt;
    }
    const std::unique_ptr<QRcode, FreeCode> code(QRcode_encodeInput(input.get()));
    if (code == nullptr) return std::nullopt;
    QrItem item;
    item.side = code->width;
    const qsizetype count = qsizetype{code->width} * code->width;
    item.fields.resize(count);
    for (qsizetype i = 0; i < count; ++i) {
        item.fields[i] = static_cast<char>(code->data[i] & 1U);
    }
    return item;
}

}  // namespace leadline
