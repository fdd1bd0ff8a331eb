#include "ui/after/due_delegate.h"

#include "ui/after/due_model.h"
#include "ui/close/row_frame.h"
#include "ui/look/type.h"

#include <QPainter>

#include <algorithm>

namespace ui::after {

using core::rules::DueKind;

namespace {

constexpr double kSide = 12; // between the list's edge and a row
constexpr double kHigh = 7;  // above and below the words

/// One question: a box (ticked, struck, or blank) and its letter and word; on a new line where it has no room.
class Questions {
public:
    Questions(QPainter* p, const QRectF& area, const QFont& font, const look::Colours& c)
        : m_p(p), m_area(area), m_font(font), m_c(c), m_x(area.left()), m_y(area.top()) {}

    void add(const QString& words, std::optional<bool> answer) {
        const QFontMetricsF metrics(m_font);
        const double side = metrics.height() * 0.8;
        const double wide = side + 6 + metrics.horizontalAdvance(words);
        if (m_x > m_area.left() && m_x + wide > m_area.right()) {
            m_x = m_area.left();
            m_y += metrics.height() + 4;
        }
        if (m_p) draw(QRectF(m_x, m_y + metrics.height() * 0.1, side, side), words, answer, wide);
        m_x += wide + 16;
        m_high = m_y + metrics.height() + 2 - m_area.top();
    }
    double height() const { return m_high; }

private:
    void draw(const QRectF& box, const QString& words, std::optional<bool> answer, double wide) {
        m_p->setPen(QPen(m_c.ink, 1.2));
        m_p->setBrush(m_c.paper);
        m_p->drawRoundedRect(box, 2, 2);
        const auto at = [&](double x, double y) {
            return QPointF(box.left() + x * box.width(), box.top() + y * box.height());
        };
        m_p->setPen(QPen(answer == false ? m_c.warn : m_c.planned, 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        if (answer == true) m_p->drawPolyline(QPolygonF{at(0.2, 0.5), at(0.42, 0.78), at(0.92, 0.08)});
        if (answer == false) {
            m_p->drawLine(at(0.25, 0.25), at(0.75, 0.75));
            m_p->drawLine(at(0.75, 0.25), at(0.25, 0.75));
        }
        m_p->setFont(m_font);
        m_p->setPen(m_c.ink);
        m_p->drawText(QRectF(box.right() + 6, box.top() - 20, wide, box.height() + 40), Qt::AlignVCenter, words);
    }

    QPainter* m_p;
    QRectF m_area;
    QFont m_font;
    const look::Colours& m_c;
    double m_x, m_y, m_high = 0;
};

double questions(QPainter* p, const QRectF& area, const Answers& answers, const QFont& font, const look::Colours& c) {
    Questions row(p, area, font, c);
    row.add(Afterwards::tr("P paper gone"), answers.paperGone);
    row.add(Afterwards::tr("Q one queen"), answers.oneQueen);
    row.add(Afterwards::tr("E eggs"), answers.eggs);
    return row.height();
}

} // namespace

DueDelegate::DueDelegate(const DueModel& model, QObject* parent) : QStyledItemDelegate(parent), m_model(model) {}

double DueDelegate::lay(QPainter* p, const DueRow& row, const QRectF& area, const QFont& font,
                        const look::Colours& c) const {
    const QFont lesser = look::lesserFont(font);
    double y = area.top() + kHigh;
    const double left = area.left() + 10;
    const double width = std::max(area.width() - 20, 40.0);
    const auto add = [&](const QString& words, const QFont& f, const QColor& colour) {
        y += close::wordsIn(p, QRectF(left, y, width, 1e5), words, f, colour);
    };
    if (!row.heading.isEmpty()) {
        y += 4;
        add(row.heading, lesser, row.heading == Afterwards::tr("Overdue") ? c.warnText : c.quiet);
        return y + 2 - area.top();
    }
    QFont bold = font;
    bold.setBold(true);
    add(row.title, bold, c.ink);
    add(QStringLiteral("%1 · %2").arg(row.yard, row.when(m_model.today())), lesser, row.late > 0 ? c.warnText : c.ink);
    add(row.why, lesser, c.quiet);
    if (row.what == DueKind::UnionCheck) {
        y += 4;
        y += questions(p, QRectF(left, y, width, 1e5), row.answers, lesser, c);
    }
    return y + kHigh - area.top();
}

void DueDelegate::paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const look::Colours c = look::coloursOf(*option.widget);
    p->save();
    p->setRenderHint(QPainter::Antialiasing, true);
    const QRectF area = QRectF(option.rect).adjusted(kSide, 0, -kSide, 0);
    close::paintRowFrame(*p, option, area, c, m_model.at(index.row()).heading.isEmpty());
    lay(p, m_model.at(index.row()), area, option.font, c);
    p->restore();
}

QSize DueDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const QRectF area(0, 0, m_width - 2 * kSide, 1e5);
    const double high = lay(nullptr, m_model.at(index.row()), area, option.font, look::coloursOf(*option.widget));
    return {m_width, static_cast<int>(high) + 1};
}

} // namespace ui::after
