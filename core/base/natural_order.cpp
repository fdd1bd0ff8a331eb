#include "core/base/natural_order.h"

namespace core {

namespace {

bool isDigit(QChar c) { return c >= u'0' && c <= u'9'; }

/// The run at the start of `text`: all digits, or all other characters.
QStringView firstRun(QStringView text) {
    const bool digits = isDigit(text.front());
    qsizetype n = 1;
    while (n < text.size() && isDigit(text[n]) == digits) ++n;
    return text.left(n);
}

int compareNumbers(QStringView a, QStringView b) {
    while (a.size() > 1 && a.front() == u'0') a = a.mid(1);
    while (b.size() > 1 && b.front() == u'0') b = b.mid(1);
    if (a.size() != b.size()) return a.size() < b.size() ? -1 : 1;
    return a.compare(b);
}

int compareRuns(QStringView a, QStringView b) {
    const bool digitsA = isDigit(a.front());
    const bool digitsB = isDigit(b.front());
    if (digitsA != digitsB) return digitsA ? -1 : 1;
    return digitsA ? compareNumbers(a, b) : a.compare(b);
}

} // namespace

QString folded(QStringView text) {
    QString out;
    out.reserve(text.size());
    for (qsizetype i = 0; i < text.size(); ++i) {
        char32_t point = text[i].unicode();
        if (text[i].isHighSurrogate() && i + 1 < text.size() && text[i + 1].isLowSurrogate()) {
            point = QChar::surrogateToUcs4(text[i], text[i + 1]);
            ++i;
        }
        const char32_t fold = QChar::toCaseFolded(point);
        if (QChar::requiresSurrogates(fold)) {
            out += QChar(QChar::highSurrogate(fold));
            out += QChar(QChar::lowSurrogate(fold));
        } else {
            out += QChar(static_cast<char16_t>(fold));
        }
    }
    return out;
}

int naturalCompareFolded(QStringView a, QStringView b) {
    while (!a.isEmpty() && !b.isEmpty()) {
        const QStringView runA = firstRun(a);
        const QStringView runB = firstRun(b);
        if (const int order = compareRuns(runA, runB); order != 0) return order;
        a = a.mid(runA.size());
        b = b.mid(runB.size());
    }
    if (a.isEmpty() == b.isEmpty()) return 0;
    return a.isEmpty() ? -1 : 1;
}

int naturalCompare(QStringView a, QStringView b) {
    const int order = naturalCompareFolded(folded(a), folded(b));
    return order != 0 ? order : a.compare(b);
}

} // namespace core
