#include "ui/plan/layout.h"

#include <QFontMetricsF>
#include <QTransform>

#include <algorithm>
#include <cmath>

namespace ui::plan {

namespace {

/// In two lines, parted at the blank nearest to its middle; empty where it has but one blank.
QString wrapped(const QString& text) {
    if (text.count(u' ') < 2) return {};
    qsizetype best = -1;
    for (qsizetype at = text.indexOf(u' '); at >= 0; at = text.indexOf(u' ', at + 1))
        if (best < 0 || std::abs(2 * at - text.size()) < std::abs(2 * best - text.size())) best = at;
    QString out = text;
    out[best] = u'\n';
    return out;
}

QStaticText shaped(const QString& text, const QFont& font) {
    QStaticText t(text);
    t.setTextFormat(Qt::PlainText);
    if (text.contains(u'\n')) {
        const QFontMetricsF metrics(font);
        double wide = 0;
        for (const QString& line : text.split(u'\n')) wide = std::max(wide, metrics.horizontalAdvance(line));
        t.setTextOption(QTextOption(Qt::AlignHCenter));
        t.setTextWidth(std::ceil(wide) + 1);
    }
    t.setPerformanceHint(QStaticText::AggressiveCaching);
    t.prepare(QTransform(), font);
    return t;
}

} // namespace

Texts::Texts(const Scene& scene, const QFont& font) : m_labelFont(font), m_lineFont(font), m_badgeFont(font) {
    const double size = font.pointSizeF() > 0 ? font.pointSizeF() : 10;
    m_labelFont.setBold(true);
    if (font.pixelSize() > 0) { // on paper, where the painter scales pixels
        m_lineFont.setPixelSize(std::max(12, static_cast<int>(std::lround(font.pixelSize() * 0.85))));
    } else {
        m_labelFont.setPointSizeF(size);
        m_lineFont.setPointSizeF(size * 0.85);
    }
    m_badgeFont = m_labelFont;
    m_lineHeight = QFontMetricsF(m_lineFont).height();
    for (const HiveMark& h : scene.hives) {
        m_labels.push_back(shaped(h.label, m_labelFont));
        m_labelSizes.push_back(m_labels.back().size());
        const QString brief = h.bees && h.bees->value > 0 ? core::framesText(*h.bees) : QString();
        m_lineTexts.push_back({h.line, wrapped(h.line), h.line.startsWith(brief) ? brief : QString()});
    }
    m_lines.resize(scene.hives.size());
}

const QStaticText& Texts::line(size_t hive, LineForm form) const {
    std::optional<QStaticText>& text = m_lines[hive][static_cast<size_t>(form)];
    if (!text) text = shaped(m_lineTexts[hive][static_cast<size_t>(form)], m_lineFont);
    return *text;
}

double Texts::width(const QString& lesserText) const { return QFontMetricsF(m_lineFont).horizontalAdvance(lesserText); }

} // namespace ui::plan
