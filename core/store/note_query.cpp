#include "core/store/note_words.h"

#include <QStringList>

#include <algorithm>

namespace core::store {

namespace {

/// What the words of a note are made of, near enough: without any of it a text has no word.
bool hasWord(const QString& text) {
    const auto points = text.toUcs4();
    return std::any_of(points.begin(), points.end(), [](uint point) { return QChar::isLetterOrNumber(point); });
}

QString quoted(QString text) { return u'"' + text.replace(u'"', QStringLiteral("\"\"")) + u'"'; }

/// Splits at blanks outside double quotes. `open`: the last part may go on.
QStringList partsOf(const QString& typed, bool* open) {
    QStringList parts;
    QString part;
    bool inQuotes = false;
    const auto end = [&] {
        if (hasWord(part)) parts << part;
        part.clear();
    };
    *open = false;
    for (const QChar c : typed) {
        if (c == u'"') {
            end();
            inQuotes = !inQuotes;
        } else if (!inQuotes && (c.isSpace() || c.category() == QChar::Other_Control)) {
            end();
        } else {
            part += c.unicode() < u' ' ? QChar(u' ') : c;
        }
    }
    *open = hasWord(part) && part.back().isLetterOrNumber();
    end();
    return parts;
}

} // namespace

QString noteQuery(const QString& typed) {
    bool open = false;
    // Half a character of two units would swallow what follows it.
    QStringList parts = partsOf(QString::fromUtf8(typed.toUtf8()), &open);
    if (parts.isEmpty()) return {};
    for (QString& part : parts) part = quoted(part);
    if (open) parts.back() += QStringLiteral(" *");
    return parts.join(QStringLiteral(" AND "));
}

} // namespace core::store
