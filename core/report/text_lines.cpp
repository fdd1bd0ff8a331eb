#include "core/report/text_lines.h"

#include <QRegularExpression>

namespace core::report {

namespace {

/// How many characters of the word fit; at least one, and never half of a surrogate pair.
qsizetype fitting(const TextMeasure& measure, const QString& word, const Type& type, double width) {
    qsizetype n = word.size();
    while (n > 1 && measure.widthMm(word.left(n), type.pointSize, type.bold) > width) --n;
    return n > 1 && word.at(n - 1).isHighSurrogate() ? n - 1 : n;
}

/// Lines are filled one after the other.
class Lines {
public:
    Lines(const TextMeasure& measure, const Type& type, double width, double firstWidth)
        : m_measure(measure), m_type(type), m_width(width), m_room(firstWidth) {}

    void add(const QString& word) {
        const QString longer = m_line.isEmpty() ? word : m_line + u' ' + word;
        if (fits(longer)) {
            m_line = longer;
            return;
        }
        if (!m_line.isEmpty() || m_room < m_width) end();
        QString rest = word;
        while (!fits(rest) && rest.size() > 1) {
            const qsizetype n = fitting(m_measure, rest, m_type, m_room);
            if (n >= rest.size()) break;
            m_line = rest.left(n);
            rest = rest.mid(n);
            end();
        }
        m_line = rest;
    }
    QStringList take() {
        if (!m_line.isEmpty()) end();
        return m_lines;
    }

private:
    bool fits(const QString& text) const { return m_measure.widthMm(text, m_type.pointSize, m_type.bold) <= m_room; }
    void end() {
        m_lines << m_line;
        m_line.clear();
        m_room = m_width;
    }

    const TextMeasure& m_measure;
    const Type& m_type;
    double m_width;
    double m_room;
    QString m_line;
    QStringList m_lines;
};

} // namespace

/// A number stays with its unit.
static QString glued(QString text) {
    static const QRegularExpression kUnit(QStringLiteral("(\\d) (m|kg|L|km|ft|lb|qt)(?!\\w)"));
    return text.replace(kUnit, QStringLiteral("\\1\u00a0\\2"));
}

QStringList wrapped(const TextMeasure& measure, const QString& text, const Type& type, double width,
                    double firstWidth) {
    Lines lines(measure, type, width, firstWidth);
    for (const QString& word : glued(text).split(u' ', Qt::SkipEmptyParts)) lines.add(word);
    return lines.take();
}

QString elided(const TextMeasure& measure, const QString& text, const Type& type, double width) {
    if (measure.widthMm(text, type.pointSize, type.bold) <= width) return text;
    for (qsizetype n = text.size() - 1; n > 0; --n) {
        const QString shorter = text.left(n).trimmed() + QChar(0x2026);
        if (measure.widthMm(shorter, type.pointSize, type.bold) <= width) return shorter;
    }
    return QString(QChar(0x2026));
}

} // namespace core::report
