#include "core/base/quantity.h"

#include <array>
#include <cmath>

namespace core {

namespace {

constexpr std::array<qint64, 10> kPowers = {1, 10, 100, 1000, 10000, 100000, 1000000, 10000000, 100000000, 1000000000};

} // namespace

qint64 squaredDistance(MmPoint a, MmPoint b) {
    const qint64 dx = qint64(a.x) - b.x;
    const qint64 dy = qint64(a.y) - b.y;
    return dx * dx + dy * dy;
}

qint64 distanceTenths(MmPoint a, MmPoint b) {
    // n tenths are right when (n − 1/2)·100 mm <= distance < (n + 1/2)·100 mm; compared squared, in integers.
    const qint64 squared = squaredDistance(a, b);
    auto n = static_cast<qint64>(std::sqrt(static_cast<double>(squared)) / 100.0 + 0.5);
    const auto lower = [](qint64 tenths) { return (2 * tenths - 1) * 50; };
    while (n > 0 && lower(n) * lower(n) > squared) --n;
    while (lower(n + 1) * lower(n + 1) <= squared) ++n;
    return n;
}

QString decimalText(qint64 scaled, int decimals) {
    const qint64 power = kPowers.at(static_cast<size_t>(decimals));
    const qint64 whole = qAbs(scaled) / power;
    QString text = (scaled < 0 ? QStringLiteral("-") : QString()) + QString::number(whole);
    QString rest = QString::number(qAbs(scaled) % power).rightJustified(decimals, QLatin1Char('0'));
    while (rest.endsWith(QLatin1Char('0'))) rest.chop(1);
    if (!rest.isEmpty()) text += QLatin1Char('.') + rest;
    return text;
}

std::optional<qint64> parseDecimal(QStringView text, int decimals) {
    const bool negative = text.startsWith(u'-');
    if (negative || text.startsWith(u'+')) text = text.mid(1);
    qint64 value = 0;
    int seen = 0;
    int after = -1;
    for (const QChar c : text) {
        if (c == u'.' && after < 0) {
            after = 0;
            continue;
        }
        if (c < u'0' || c > u'9') return std::nullopt;
        ++seen;
        const int digit = c.unicode() - u'0';
        if (after >= 0 && ++after > decimals) {
            if (digit != 0) return std::nullopt;
            continue;
        }
        if (value > (INT64_MAX - digit) / 10) return std::nullopt;
        value = value * 10 + digit;
    }
    if (seen == 0) return std::nullopt;
    for (int i = qMax(after, 0); i < decimals; ++i) {
        if (value > INT64_MAX / 10) return std::nullopt;
        value *= 10;
    }
    return negative ? -value : value;
}

QString framesText(Quarters q) { return decimalText(qint64(q.value) * 25, 2); }
QString kilogramsText(Decagrams w) { return decimalText(w.value, 2); }
QString metresText(Millimetres mm) { return decimalText(mm.value, 3); }

} // namespace core
