#include "ui/window/yard_list.h"

#include "ui/look/colours.h"
#include "ui/look/type.h"
#include "ui/plan/paint_hive.h"

#include <QLabel>
#include <QListView>
#include <QPainter>
#include <QVBoxLayout>

namespace ui::window {

namespace {
constexpr int kWideInDigits = 25;
constexpr int kLeastWide = 170;
constexpr int kMostWide = 340;

/// Where hives would be set down; refused: in orange, and barred.
void paintMark(QPainter& p, const QRectF& frame, bool refused, const look::Colours& c) {
    p.setPen(QPen(refused ? c.warn : c.planned, 2, Qt::DashLine));
    p.setBrush(c.paper);
    p.drawRoundedRect(frame.adjusted(1, 1, -1, -1), 4, 4);
    if (refused) plan::hatch(p, QPolygonF(QRectF(frame.left() + 1, frame.top() + 1, 9, frame.height() - 2)), 7, c);
}
} // namespace

void YardModel::show(const desk::Reading& reading) {
    std::vector<desk::YardLine> lines = desk::yardLines(reading);
    const bool same = lines.size() == m_lines.size();
    if (!same) beginResetModel();
    m_lines = std::move(lines);
    if (!same) return endResetModel();
    if (!m_lines.empty()) emit dataChanged(index(0), index(rowCount() - 1));
}

int YardModel::rowOf(core::YardId yard) const {
    for (size_t i = 0; i < m_lines.size(); ++i)
        if (m_lines[i].yard == yard) return static_cast<int>(i);
    return -1;
}

void YardModel::mark(std::optional<core::YardId> yard, bool refused) {
    if (yard == m_marked && refused == m_refused) return;
    m_marked = yard;
    m_refused = refused;
    if (!m_lines.empty()) emit dataChanged(index(0), index(rowCount() - 1));
}

int YardModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

QVariant YardModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const desk::YardLine& line = at(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return line.name;
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
        return tr("%1, %2, %3")
            .arg(line.name, line.hives == 1 ? tr("1 hive") : tr("%1 hives").arg(line.hives), line.status);
    default:
        return {};
    }
}

void YardDelegate::paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const YardModel& model = *static_cast<const YardModel*>(index.model());
    const desk::YardLine& line = model.at(index.row());
    const look::Colours c = look::coloursOf(*option.widget);
    p->save();
    p->setRenderHint(QPainter::Antialiasing, true);
    const bool chosen = option.state & QStyle::State_Selected;
    const QRectF frame = QRectF(option.rect).adjusted(8, 2, -8, -2);
    if (chosen) {
        const bool focus = option.state & QStyle::State_HasFocus;
        p->setPen(QPen(focus ? c.planned : c.rule, focus ? 2 : 1));
        p->setBrush(c.paper);
        p->drawRoundedRect(frame.adjusted(0.5, 0.5, -0.5, -0.5), 4, 4);
    }
    if (model.marked(index.row())) paintMark(*p, frame, model.refused(), c);
    QFont name = option.font;
    name.setBold(chosen);
    const QRectF inner = frame.adjusted(12, 6, -12, -6);
    const QFontMetricsF metrics(name);
    p->setFont(option.font);
    p->setPen(c.quiet);
    const QString count = QString::number(line.hives);
    const double wide = QFontMetricsF(option.font).horizontalAdvance(count) + 8;
    p->drawText(inner, Qt::AlignRight | Qt::AlignTop, count);
    p->setFont(name);
    p->setPen(c.ink);
    p->drawText(inner, Qt::AlignLeft | Qt::AlignTop,
                metrics.elidedText(line.name, Qt::ElideRight, inner.width() - wide));
    p->setFont(look::lesserFont(option.font));
    p->setPen(c.quiet);
    const QString status = QFontMetricsF(p->font()).elidedText(line.status, Qt::ElideRight, inner.width());
    p->drawText(inner, Qt::AlignLeft | Qt::AlignBottom, status);
    p->restore();
}

QSize YardDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    const double high = QFontMetricsF(option.font).height() + QFontMetricsF(look::lesserFont(option.font)).height();
    return {180, static_cast<int>(high) + 18};
}

YardList::YardList(QWidget* parent) : QWidget(parent), m_model(new YardModel(this)), m_list(new QListView(this)) {
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 12, 0, 8);
    all->setSpacing(4);
    auto* title = new QLabel(tr("&Yards"), this);
    title->setProperty("quiet", true);
    title->setContentsMargins(20, 0, 20, 2);
    title->setBuddy(m_list);
    all->addWidget(title);
    m_list->setModel(m_model);
    m_list->setItemDelegate(new YardDelegate(m_list));
    m_list->setAccessibleName(tr("Yards"));
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setUniformItemSizes(true);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->viewport()->setAutoFillBackground(false);
    all->addWidget(m_list, 1);
    sizeToText();
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& now) {
        if (!m_telling && now.isValid()) emit chosen(m_model->at(now.row()).yard);
    });
}

void YardList::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) sizeToText();
}

void YardList::sizeToText() {
    setMinimumWidth(std::clamp(kWideInDigits * fontMetrics().horizontalAdvance(u'0'), kLeastWide, kMostWide));
}

hand::HandGuide::Yards YardList::asTarget() {
    const auto at = [this](const QPoint& global) -> std::optional<core::YardId> {
        const QPoint inside = m_list->viewport()->mapFromGlobal(global);
        const QModelIndex row = m_list->viewport()->rect().contains(inside) ? m_list->indexAt(inside) : QModelIndex();
        return row.isValid() ? std::optional(m_model->at(row.row()).yard) : std::nullopt;
    };
    return {at, [this](std::optional<core::YardId> yard, bool refused) { m_model->mark(yard, refused); }};
}

void YardList::show(const desk::Reading& reading, std::optional<core::YardId> yard) {
    m_telling = true;
    m_model->show(reading);
    const int row = yard ? m_model->rowOf(*yard) : -1;
    m_list->setCurrentIndex(row < 0 ? QModelIndex() : m_model->index(row));
    m_telling = false;
}

} // namespace ui::window
