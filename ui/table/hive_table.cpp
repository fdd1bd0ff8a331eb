#include "ui/table/hive_table.h"

#include <QActionGroup>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>
#include <QScopedValueRollback>
#include <QStyledItemDelegate>

namespace ui::table {

namespace {
constexpr int kWidestInDigits = 27;
constexpr int kNameColumn = static_cast<int>(Column::Label); // always shown
constexpr int kBeside = 8;                                   // pixels left and right of a text, as in the headings

/// Text with room beside it, in line with its heading.
class CellDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        QStyleOptionViewItem cell = option;
        initStyleOption(&cell, index);
        cell.widget->style()->drawPrimitive(QStyle::PE_PanelItemViewItem, &cell, p, cell.widget);
        const QRect room = cell.rect.adjusted(kBeside, 0, -kBeside, 0);
        const bool chosen = cell.state & QStyle::State_Selected;
        p->setPen(cell.palette.color(chosen ? QPalette::HighlightedText : QPalette::Text));
        p->drawText(room, static_cast<int>(cell.displayAlignment) | Qt::TextSingleLine,
                    cell.fontMetrics.elidedText(cell.text, Qt::ElideRight, room.width()));
    }
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        return QStyledItemDelegate::sizeHint(option, index) + QSize(2 * kBeside, 0);
    }
};

} // namespace

HiveTable::HiveTable(QWidget* parent)
    : QTableView(parent), m_hives(new HiveModel(this)), m_sorter(new HiveSorter(this)) {
    m_sorter->setSourceModel(m_hives);
    setModel(m_sorter);
    setSortingEnabled(true);
    sortByColumn(kNameColumn, Qt::AscendingOrder);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::ExtendedSelection);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setWordWrap(false);
    verticalHeader()->hide();
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    horizontalHeader()->setStretchLastSection(true);
    horizontalHeader()->setSectionsMovable(true);
    horizontalHeader()->setHighlightSections(false);
    setAccessibleName(tr("Table of hives"));
    setItemDelegate(new CellDelegate(this));
    sizeRows();
    connect(selectionModel(), &QItemSelectionModel::selectionChanged, this, &HiveTable::tellSelected);
    connect(selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this](const QModelIndex& now) {
        if (selectionModel()->isSelected(now)) tellSelected(); // else what is selected follows
    });
    connect(this, &QTableView::activated, this, [this](const QModelIndex& at) {
        if (at.isValid()) emit opened(m_hives->colonyAt(m_sorter->mapToSource(at).row()));
    });
}

void HiveTable::showHives(const desk::Reading& reading, std::optional<core::YardIx> yard) {
    m_telling = true;
    m_hives->show(reading, yard);
    m_telling = false;
}

void HiveTable::tellSelected() {
    if (m_telling) return;
    std::vector<core::ColonyId> colonies;
    std::optional<core::ColonyId> lead;
    for (const QModelIndex& row : selectionModel()->selectedRows()) {
        colonies.push_back(m_hives->colonyAt(m_sorter->mapToSource(row).row()));
        if (row.row() == currentIndex().row()) lead = colonies.back();
    }
    if (!colonies.empty()) emit selectAsked(colonies, lead.value_or(colonies.back()));
}

void HiveTable::setSelected(const std::vector<core::ColonyId>& colonies, std::optional<core::ColonyId> lead) {
    const QScopedValueRollback telling(m_telling, true);
    const int column = currentIndex().isValid() ? currentIndex().column() : kNameColumn;
    const auto indexOf = [&](core::ColonyId colony) {
        const auto row = m_hives->rowOf(colony);
        return row ? m_sorter->mapFromSource(m_hives->index(*row, column)) : QModelIndex();
    };
    const QModelIndex current = lead ? indexOf(*lead) : QModelIndex();
    QItemSelection rows;
    for (const core::ColonyId colony : colonies)
        if (const QModelIndex at = indexOf(colony); at.isValid()) rows.select(at, at);
    if (current.isValid() && current != currentIndex())
        selectionModel()->setCurrentIndex(current, QItemSelectionModel::NoUpdate);
    selectionModel()->select(rows, QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
}

void HiveTable::fitColumnsOnce() {
    if (!m_fitted) fitColumns();
}

void HiveTable::fitColumns() {
    m_fitted = true;
    const int widest = kWidestInDigits * fontMetrics().horizontalAdvance(u'0');
    resizeColumnsToContents();
    for (int c = 0; c < m_hives->columnCount(); ++c) setColumnWidth(c, std::min(columnWidth(c), widest));
}

QByteArray HiveTable::columns() const { return m_fitted ? horizontalHeader()->saveState() : QByteArray(); }

void HiveTable::putBackColumns(const QByteArray& columns) {
    if (columns.isEmpty()) return;
    const QByteArray before = horizontalHeader()->saveState();
    if (!horizontalHeader()->restoreState(columns) || horizontalHeader()->count() != kColumns) {
        horizontalHeader()->restoreState(before);
        return;
    }
    m_fitted = true;
    setColumnHidden(kNameColumn, false);
    sortByColumn(horizontalHeader()->sortIndicatorSection(), horizontalHeader()->sortIndicatorOrder());
}

QString HiveTable::title(int column) const {
    return m_hives->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
}

void HiveTable::fill(QMenu& menu) {
    menu.clear();
    for (int c = 0; c < kColumns; ++c) {
        QAction* shown = menu.addAction(title(c));
        shown->setCheckable(true);
        shown->setChecked(!isColumnHidden(c));
        shown->setEnabled(c != kNameColumn);
        connect(shown, &QAction::toggled, this, [this, c](bool on) { setColumnHidden(c, !on); });
    }
    menu.addSeparator();
    QMenu* sort = menu.addMenu(tr("&Sort by"));
    auto* one = new QActionGroup(sort);
    for (int c = 0; c < kColumns; ++c) {
        QAction* by = sort->addAction(title(c));
        by->setCheckable(true);
        by->setChecked(horizontalHeader()->sortIndicatorSection() == c);
        one->addAction(by);
        connect(by, &QAction::triggered, this, [this, c] {
            const QHeaderView* head = horizontalHeader();
            const bool turned = head->sortIndicatorSection() == c && head->sortIndicatorOrder() == Qt::AscendingOrder;
            sortByColumn(c, turned ? Qt::DescendingOrder : Qt::AscendingOrder);
        });
    }
    connect(menu.addAction(tr("As &wide as their text")), &QAction::triggered, this, &HiveTable::fitColumns);
    menu.addAction(tr("Alt+← and Alt+→ in the table move a column"))->setEnabled(false);
}

void HiveTable::moveColumn(int by) {
    QHeaderView* head = horizontalHeader();
    if (!currentIndex().isValid()) return;
    const int from = head->visualIndex(currentIndex().column());
    int to = from + by;
    while (to >= 0 && to < head->count() && head->isSectionHidden(head->logicalIndex(to))) to += by;
    if (to >= 0 && to < head->count()) head->moveSection(from, to);
}

void HiveTable::keyPressEvent(QKeyEvent* event) {
    const bool across = event->key() == Qt::Key_Left || event->key() == Qt::Key_Right;
    if (across && event->modifiers() == Qt::AltModifier) return moveColumn(event->key() == Qt::Key_Left ? -1 : 1);
    QTableView::keyPressEvent(event);
}

void HiveTable::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange) sizeRows();
}

/// Columns keep their share of the text's size.
void HiveTable::sizeRows() {
    verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 8);
    const int digit = fontMetrics().horizontalAdvance(u'0');
    for (int c = 0; m_fitted && m_digit > 0 && digit != m_digit && c < kColumns; ++c)
        if (!isColumnHidden(c)) setColumnWidth(c, columnWidth(c) * digit / m_digit);
    m_digit = digit;
}

} // namespace ui::table
