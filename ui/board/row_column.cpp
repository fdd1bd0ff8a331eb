#include "ui/board/row_column.h"

#include "ui/board/ask_sign.h"
#include "ui/look/barrier.h"
#include "ui/look/type.h"

#include <QPainter>

#include <algorithm>

namespace ui::board {

namespace {

constexpr double kIndent = 19; // of words beside a small sign
constexpr double kBetween = 6; // two chips
constexpr double kPad = 6;     // of a chip, left and right

QFont boldOf(QFont font) {
    font.setBold(true);
    return font;
}

double wide(const QFont& font, const QString& text) { return QFontMetricsF(font).horizontalAdvance(text); }

} // namespace

Column::Column(QPainter* p, double left, double top, double width, const QFont& font, const look::Colours& c,
               std::vector<Chip>* chips)
    : m_p(p),
      m_left(left),
      m_y(top),
      m_width(width),
      m_font(font),
      m_lesser(look::lesserFont(font)),
      m_c(c),
      m_chips(chips) {}

void Column::text(const QString& text, const QFont& font, const QColor& colour, double indent) {
    if (text.isEmpty()) return;
    const QRectF room(m_left + indent, m_y, std::max(m_width - indent, 40.0), 1e5);
    const QRectF taken = QFontMetricsF(font).boundingRect(room, Qt::TextWordWrap, text);
    if (m_p) {
        m_p->setFont(font);
        m_p->setPen(colour);
        m_p->drawText(room, Qt::TextWordWrap, text);
    }
    m_y += taken.height();
}

void Column::heading(const QString& title, const QString& right, const BoardRow& row) {
    const QFont bold = boldOf(m_font);
    const double high = QFontMetricsF(bold).height();
    const double chips = chipsWidth(row, row.offersAlways);
    const double taken = wide(bold, title) + 14 + (right.isEmpty() ? 0 : wide(m_lesser, right) + 10);
    const bool rightFits = taken <= m_width;
    const bool chipsFit = chips > 0 && taken + chips <= m_width;
    double edge = m_left + m_width;
    if (chipsFit) {
        edge -= chips;
        double x = edge;
        for (size_t i = 0; i < row.offersAlways; ++i) {
            chip(row, i, x, m_y + (high - chipHigh()) / 2);
            x += chipWidth(row.offers[i]) + kBetween;
        }
        edge -= 10;
    }
    if (m_p && rightFits) {
        m_p->setFont(m_lesser);
        m_p->setPen(m_c.ink);
        m_p->drawText(QRectF(m_left, m_y, edge - m_left, high), Qt::AlignRight | Qt::AlignVCenter, right);
    }
    const double whole = m_width;
    if (chipsFit) m_width -= chips + 10;
    text(title, bold, m_c.ink);
    m_width = whole;
    if (!rightFits) text(right, m_lesser, m_c.ink);
    if (chips > 0 && !chipsFit) offers(row, 0, row.offersAlways);
}

void Column::cautions(const QStringList& texts) {
    for (const QString& caution : texts) {
        gap(3);
        if (m_p) look::paintCaution(*m_p, QPointF(m_left, m_y + (QFontMetricsF(m_lesser).height() - 13) / 2), m_c);
        text(caution, m_lesser, m_c.ink, kIndent);
    }
}

void Column::asked(const BoardRow& row) {
    if (row.askedText.isEmpty()) return;
    gap(2);
    const QPointF at(m_left, m_y + (QFontMetricsF(m_lesser).height() - kAskSign) / 2);
    if (m_p) paintAskSign(*m_p, at, row.sign, m_c);
    text(row.askedText, boldOf(m_lesser), m_c.ink, kIndent);
}

void Column::offers(const BoardRow& row, size_t from, size_t to) {
    to = std::min(to, row.offers.size());
    if (from >= to) return;
    gap(4);
    double x = m_left;
    for (size_t i = from; i < to; ++i) {
        const double w = chipWidth(row.offers[i]);
        if (x > m_left && x + w > m_left + m_width) {
            x = m_left;
            m_y += chipHigh() + 4;
        }
        chip(row, i, x, m_y);
        x += w + kBetween;
    }
    m_y += chipHigh();
}

void Column::smallPrint(const BoardRow& row) {
    if (row.rules.isEmpty()) return;
    gap(4);
    text(row.rules, look::lesserFont(m_lesser), m_c.quiet);
}

double Column::chipWidth(const Offer& offer) const { return std::min(wide(m_lesser, offer.text) + 2 * kPad, m_width); }

double Column::chipHigh() const { return QFontMetricsF(m_lesser).height() + 4; }

double Column::chipsWidth(const BoardRow& row, size_t to) const {
    double sum = 0;
    for (size_t i = 0; i < std::min(to, row.offers.size()); ++i)
        sum += chipWidth(row.offers[i]) + (i > 0 ? kBetween : 0);
    return sum;
}

void Column::chip(const BoardRow& row, size_t offer, double x, double y) {
    const QRectF at(x, y, chipWidth(row.offers[offer]), chipHigh());
    if (m_chips && !m_p) m_chips->push_back({at, offer});
    if (!m_p) return;
    m_p->setPen(QPen(m_c.pale, 1));
    m_p->setBrush(m_c.paper);
    m_p->drawRoundedRect(at.adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
    m_p->setFont(m_lesser);
    m_p->setPen(m_c.planned);
    m_p->drawText(
        at.adjusted(kPad, 0, -kPad, 0), Qt::AlignCenter,
        QFontMetricsF(m_lesser).elidedText(row.offers[offer].text, Qt::ElideRight, at.width() - 2 * kPad + 1));
}

} // namespace ui::board
