#include "core/exchange/text_source.h"

#include "core/exchange/utf8.h"

#include <QStringDecoder>

#include <array>
#include <string_view>

namespace core::exchange {

namespace {

constexpr char kUtf8Mark[] = "\xEF\xBB\xBF";
constexpr char kLittleMark[] = "\xFF\xFE";
constexpr char kBigMark[] = "\xFE\xFF";
constexpr qsizetype kLook = 4096;

/// Windows-1252 from 0x80 to 0x9F; 0: not assigned. Source: WHATWG Encoding Standard, index windows-1252, from memory.
constexpr std::array<char16_t, 32> kWindows1252 = {0x20AC, 0,      0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021,
                                                   0x02C6, 0x2030, 0x0160, 0x2039, 0x0152, 0,      0x017D, 0,
                                                   0,      0x2018, 0x2019, 0x201C, 0x201D, 0x2022, 0x2013, 0x2014,
                                                   0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0,      0x017E, 0x0178};

Encoding guessed(const QByteArray& bytes) {
    if (bytes.startsWith(kUtf8Mark)) return Encoding::Utf8;
    if (bytes.startsWith(kLittleMark)) return Encoding::Utf16Little;
    if (bytes.startsWith(kBigMark)) return Encoding::Utf16Big;
    // Of mostly Latin text in UTF-16 every other byte is zero.
    const qsizetype look = std::min(bytes.size(), kLook) / 2 * 2;
    qsizetype even = 0, odd = 0;
    for (qsizetype i = 0; i < look; ++i) (i % 2 == 0 ? even : odd) += bytes[i] == '\0' ? 1 : 0;
    if (odd > look / 4 && even == 0) return Encoding::Utf16Little;
    if (even > look / 4 && odd == 0) return Encoding::Utf16Big;
    const std::string_view view(bytes.constData(), static_cast<size_t>(bytes.size()));
    return firstBadUtf8(view) == std::string_view::npos ? Encoding::Utf8 : Encoding::Windows1252;
}

std::optional<QByteArray> fromUtf16(const QByteArray& bytes, QStringConverter::Encoding encoding) {
    if (bytes.size() % 2 != 0) return std::nullopt;
    QStringDecoder decoder(encoding);
    QString text = decoder(bytes);
    if (decoder.hasError()) return std::nullopt;
    if (text.startsWith(QChar::ByteOrderMark)) text.remove(0, 1);
    return text.toUtf8();
}

std::optional<QByteArray> fromWindows1252(const QByteArray& bytes) {
    QString text;
    text.reserve(bytes.size());
    for (const char byte : bytes) {
        const auto code = static_cast<unsigned char>(byte);
        const bool special = code >= 0x80 && code <= 0x9F;
        const char16_t c = special ? kWindows1252[code - 0x80] : char16_t{code};
        if (special && c == 0) return std::nullopt;
        text.append(QChar(c));
    }
    return text.toUtf8();
}

std::optional<QByteArray> fromUtf8(const QByteArray& bytes) {
    const QByteArray text = bytes.startsWith(kUtf8Mark) ? bytes.mid(3) : bytes;
    const std::string_view view(text.constData(), static_cast<size_t>(text.size()));
    return firstBadUtf8(view) == std::string_view::npos ? std::optional(text) : std::nullopt;
}

/// CRLF and CR alone become LF.
void endLinesWithLf(QByteArray& text) {
    if (!text.contains('\r')) return;
    char* to = text.data();
    const char* const end = to + text.size();
    for (const char* from = to; from != end; ++from) {
        if (*from != '\r')
            *to++ = *from;
        else if (from + 1 == end || from[1] != '\n')
            *to++ = '\n';
    }
    text.resize(to - text.constData());
}

} // namespace

std::optional<Decoded> decode(const QByteArray& bytes, std::optional<Encoding> asked) {
    const Encoding encoding = asked.value_or(guessed(bytes));
    std::optional<QByteArray> text;
    switch (encoding) {
    case Encoding::Utf8:
        text = fromUtf8(bytes);
        break;
    case Encoding::Utf16Little:
        text = fromUtf16(bytes, QStringConverter::Utf16LE);
        break;
    case Encoding::Utf16Big:
        text = fromUtf16(bytes, QStringConverter::Utf16BE);
        break;
    case Encoding::Windows1252:
        text = fromWindows1252(bytes);
        break;
    }
    if (!text) return std::nullopt;
    endLinesWithLf(*text);
    return Decoded{*std::move(text), encoding};
}

QString word(Encoding encoding) {
    switch (encoding) {
    case Encoding::Utf8:
        return QStringLiteral("utf-8");
    case Encoding::Utf16Little:
        return QStringLiteral("utf-16-le");
    case Encoding::Utf16Big:
        return QStringLiteral("utf-16-be");
    case Encoding::Windows1252:
        break;
    }
    return QStringLiteral("windows-1252");
}

} // namespace core::exchange
