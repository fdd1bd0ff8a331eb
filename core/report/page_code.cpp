#include "core/report/page_code.h"

#include <QByteArray>

#include <algorithm>
#include <array>
#include <optional>

namespace core::report {

namespace {

constexpr char kLetters[] = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";
constexpr int kBits = 5;
constexpr size_t kCarrying = 15;
constexpr qsizetype kGroup = 4;
using Values = std::array<quint32, kCarrying>;

/// Times x in the field of 32 elements, x^5 = x^2 + 1.
quint32 timesX(quint32 v) { return (v << 1 ^ (v & 16U ? 0x25U : 0U)) & 31U; }

quint32 checkOf(const Values& values) {
    quint32 sum = 0;
    for (const quint32 v : values) sum = timesX(sum ^ v);
    return sum;
}

/// Writes numbers bit by bit into characters.
class Bits {
public:
    void put(quint64 value, int bits) {
        for (int i = bits - 1; i >= 0; --i, ++m_at)
            m_values[m_at / kBits] = m_values[m_at / kBits] << 1 | (value >> i & 1U);
    }
    quint64 take(int bits) {
        quint64 value = 0;
        for (int i = 0; i < bits; ++i, ++m_at)
            value = value << 1 | (m_values[m_at / kBits] >> (kBits - 1 - m_at % kBits) & 1U);
        return value;
    }
    Values& values() { return m_values; }

private:
    Values m_values{};
    size_t m_at = 0;
};

quint64 within(qint64 value, int bits) {
    return static_cast<quint64>(std::clamp<qint64>(value, 0, (qint64{1} << bits) - 1));
}

Day firstDay() { return dayOf(2000, 1, 1); }

} // namespace

quint32 bookMark(const QString& uuid) {
    quint64 hash = 1469598103934665603ULL; // FNV-1a
    for (const char c : uuid.toLower().toUtf8()) hash = (hash ^ static_cast<quint8>(c)) * 1099511628211ULL;
    return static_cast<quint32>((hash ^ hash >> 20 ^ hash >> 40) & 0xfffffU);
}

QString pageCodeText(const PageCode& code) {
    Bits bits;
    bits.put(code.book & 0xfffffU, 20);
    bits.put(within(code.yard, 14), 14);
    bits.put(within(code.day - firstDay(), 16), 16);
    bits.put(within(code.variant, 2), 2);
    bits.put(within(code.revision, 20), 20);
    bits.put(within(static_cast<qint64>(code.sheet), 3), 3);
    QString out;
    for (const quint32 v : bits.values()) out += QLatin1Char(kLetters[v]);
    out += QLatin1Char(kLetters[checkOf(bits.values())]);
    for (qsizetype at = 3 * kGroup; at > 0; at -= kGroup) out.insert(at, u'-');
    return out;
}

std::variant<PageCode, CodeFault> readPageCode(const QString& typed) {
    QString text;
    for (const QChar c : typed)
        if (!c.isSpace() && c.category() != QChar::Punctuation_Dash) text += c.toUpper();
    if (text.size() != kCarrying + 1) return CodeFault::Length;
    std::array<quint32, kCarrying + 1> all{};
    for (qsizetype i = 0; i < text.size(); ++i) {
        const char* at = std::find(kLetters, kLetters + 32, text.at(i).toLatin1());
        if (at == kLetters + 32) return CodeFault::Character;
        all[static_cast<size_t>(i)] = static_cast<quint32>(at - kLetters);
    }
    Bits bits;
    std::copy_n(all.begin(), kCarrying, bits.values().begin());
    if (checkOf(bits.values()) != all.back()) return CodeFault::Check;
    PageCode code;
    code.book = static_cast<quint32>(bits.take(20));
    code.yard = static_cast<qint64>(bits.take(14));
    code.day = firstDay() + static_cast<int>(bits.take(16));
    code.variant = static_cast<int>(bits.take(2));
    code.revision = static_cast<qint64>(bits.take(20));
    const auto sheet = bits.take(3);
    static_assert(kSheets == 8, "three bits: each of their values is a sheet");
    code.sheet = static_cast<Sheet>(sheet);
    return code;
}

} // namespace core::report
