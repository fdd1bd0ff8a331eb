#include "ui/life/family_list.h"

#include "ui/close/row_frame.h"
#include "ui/life/family_words.h"
#include "ui/look/colours.h"
#include "ui/look/type.h"

#include <QPainter>
#include <QWidget>

#include <algorithm>

namespace ui::life {

namespace {

constexpr double kAbove = 4;
constexpr double kSide = 10;

class Slice {
public:
    Slice(QPainter& p, const QStyleOptionViewItem& option, const Family& family, const time::TimeScale& scale,
          size_t row)
        : m_p(p),
          m_option(option),
          m_family(family),
          m_scale(scale),
          m_row(row),
          m_area(option.rect),
          m_c(look::coloursOf(*option.widget)),
          m_name(option.font),
          m_lesser(look::lesserFont(option.font)) {
        m_name.setBold(true);
        m_line = m_area.top() + kAbove + QFontMetricsF(m_name).height() + 8;
    }

    void paint() {
        close::paintRowFrame(m_p, m_option, m_area, m_c, false);
        for (const KinTie& t : m_family.ties) paintTie(t);
        paintLife();
        for (const KinTie& t : m_family.ties)
            if (t.into == m_row) paintArrow(t);
        paintWords();
    }

private:
    double xOf(core::Day day) const { return m_area.left() + m_scale.xOf(day); }
    const Kin& kin() const { return m_family.kin[m_row]; }

    void paintTie(const KinTie& t) {
        const auto [upper, lower] = std::minmax(t.from, t.into);
        if (m_row < upper || m_row > lower) return;
        QPen pen(m_c.ink, 1.2, Qt::SolidLine, Qt::FlatCap);
        if (t.how == core::LineageHow::United) pen.setWidthF(2.4);
        if (t.how == core::LineageHow::ShakenOut) pen.setDashPattern({2, 2});
        m_p.setPen(pen);
        const double x = xOf(t.day);
        m_p.drawLine(QPointF(x, m_row == upper ? m_line : m_area.top()),
                     QPointF(x, m_row == lower ? m_line : m_area.bottom() + 1));
    }

    void paintLife() {
        const bool asked = m_row == m_family.asked;
        const double from = xOf(kin().since), to = xOf(kin().ended.value_or(m_family.last));
        m_p.setPen(QPen(asked ? m_c.planned : m_c.ink, asked ? 4 : 2, Qt::SolidLine, Qt::FlatCap));
        m_p.drawLine(QPointF(from, m_line), QPointF(std::max(to, from + 2), m_line));
        m_p.setPen(QPen(m_c.ink, 1.5));
        if (!kin().ended) { // it goes on
            m_p.drawLine(QPointF(to, m_line), QPointF(to - 5, m_line - 4));
            m_p.drawLine(QPointF(to, m_line), QPointF(to - 5, m_line + 4));
        } else if (kin().end == core::EndKind::Dead || kin().end == core::EndKind::Destroyed) {
            m_p.drawLine(QPointF(to - 4, m_line - 4), QPointF(to + 4, m_line + 4));
            m_p.drawLine(QPointF(to - 4, m_line + 4), QPointF(to + 4, m_line - 4));
            if (kin().end == core::EndKind::Destroyed) m_p.drawRect(QRectF(to - 5, m_line - 5, 10, 10));
        } else if (kin().end == core::EndKind::Sold) {
            m_p.drawLine(QPointF(to, m_line - 5), QPointF(to, m_line + 5));
        }
    }

    void paintArrow(const KinTie& t) {
        const double x = xOf(t.day), up = t.from < t.into ? -1 : 1;
        m_p.setPen(Qt::NoPen);
        m_p.setBrush(m_c.ink);
        const double tip = m_line + 2 * up;
        m_p.drawPolygon(QPolygonF({{x, tip}, {x - 4, tip + 7 * up}, {x + 4, tip + 7 * up}}));
        m_p.setBrush(Qt::NoBrush);
    }

    /// At the beginning of its line, or as far left as they need.
    void paintWords() {
        const QString years = yearsText(kin());
        const QFontMetricsF name(m_name), lesser(m_lesser);
        const double wide = name.horizontalAdvance(kin().name) + 8 + lesser.horizontalAdvance(years);
        const double most = m_area.right() - kSide - wide;
        const double left = std::max(m_area.left() + kSide, std::min(xOf(kin().since), most));
        const QRectF box(left, m_area.top() + kAbove, std::min(wide, m_area.right() - kSide - left), name.height());
        const bool chosen = m_option.state & QStyle::State_Selected;
        QColor ground = chosen ? m_c.paper : m_c.desk;
        ground.setAlphaF(0.85F);
        m_p.fillRect(box.adjusted(-2, 0, 2, 0), ground);
        m_p.setFont(m_name);
        m_p.setPen(m_c.ink);
        m_p.drawText(box, Qt::AlignLeft | Qt::AlignVCenter, kin().name);
        m_p.setFont(m_lesser);
        m_p.setPen(m_c.quiet);
        const double from = name.horizontalAdvance(kin().name) + 8;
        m_p.drawText(box.adjusted(from, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                     lesser.elidedText(years, Qt::ElideRight, box.width() - from));
    }

    QPainter& m_p;
    const QStyleOptionViewItem& m_option;
    const Family& m_family;
    const time::TimeScale& m_scale;
    size_t m_row;
    QRectF m_area;
    look::Colours m_c;
    QFont m_name, m_lesser;
    double m_line = 0;
};

} // namespace

void FamilyModel::setFamily(Family family) {
    beginResetModel();
    m_family = std::move(family);
    endResetModel();
}

int FamilyModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_family.kin.size());
}

QVariant FamilyModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    const auto row = static_cast<size_t>(index.row());
    if (role == Qt::DisplayRole) return m_family.kin[row].name;
    if (role == Qt::AccessibleTextRole || role == Qt::ToolTipRole) return kinText(m_family, row);
    return {};
}

void FamilyDelegate::paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    p->save();
    p->setRenderHint(QPainter::Antialiasing);
    Slice(*p, option, m_model.family(), m_scale, static_cast<size_t>(index.row())).paint();
    p->restore();
}

QSize FamilyDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    return {100, static_cast<int>(kAbove + QFontMetricsF(option.font).height() + 22)};
}

} // namespace ui::life
