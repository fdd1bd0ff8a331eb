#include "ui/table/column_table.h"

#include <QActionGroup>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>
#include <QStyledItemDelegate>

namespace ui::table {

namespace {
constexpr int kWidestInDigits = 27;
constexpr int kRowsMeasured = 64; // for the width of a column
constexpr int kNameColumn = 0;    // always shown
constexpr int kBeside = 8;        // pixels left and right of a text, as in the headings

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

ColumnTable::ColumnTable(QWidget* parent) : QTableView(parent) {
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
    horizontalHeader()->setResizeContentsPrecision(kRowsMeasured);
    setItemDelegate(new CellDelegate(this));
}

void ColumnTable::takeModel(QAbstractItemModel* model) {
    setModel(model);
    setSortingEnabled(true);
    sortByColumn(kNameColumn, Qt::AscendingOrder);
    sizeRows();
}

int ColumnTable::columnsOfModel() const { return model()->columnCount(); }

void ColumnTable::fitColumnsOnce() {
    if (!m_fitted) fitColumns();
}

void ColumnTable::fitColumns() {
    m_fitted = true;
    const int widest = kWidestInDigits * fontMetrics().horizontalAdvance(u'0');
    resizeColumnsToContents();
    for (int c = 0; c < columnsOfModel(); ++c) setColumnWidth(c, std::min(columnWidth(c), widest));
}

QByteArray ColumnTable::columns() const { return m_fitted ? horizontalHeader()->saveState() : QByteArray(); }

void ColumnTable::putBackColumns(const QByteArray& columns) {
    if (columns.isEmpty()) return;
    const QByteArray before = horizontalHeader()->saveState();
    if (!horizontalHeader()->restoreState(columns) || horizontalHeader()->count() != columnsOfModel()) {
        horizontalHeader()->restoreState(before);
        return;
    }
    m_fitted = true;
    setColumnHidden(kNameColumn, false);
    sortByColumn(horizontalHeader()->sortIndicatorSection(), horizontalHeader()->sortIndicatorOrder());
}

QString ColumnTable::title(int column) const {
    return model()->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
}

void ColumnTable::fill(QMenu& menu) {
    menu.clear();
    for (int c = 0; c < columnsOfModel(); ++c) {
        QAction* shown = menu.addAction(title(c));
        shown->setCheckable(true);
        shown->setChecked(!isColumnHidden(c));
        shown->setEnabled(c != kNameColumn);
        connect(shown, &QAction::toggled, this, [this, c](bool on) { setColumnHidden(c, !on); });
    }
    menu.addSeparator();
    QMenu* sort = menu.addMenu(tr("&Sort by"));
    auto* one = new QActionGroup(sort);
    for (int c = 0; c < columnsOfModel(); ++c) {
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
    connect(menu.addAction(tr("As &wide as their text")), &QAction::triggered, this, &ColumnTable::fitColumns);
    menu.addAction(tr("Alt+← and Alt+→ in the table move a column"))->setEnabled(false);
}

void ColumnTable::moveColumn(int by) {
    QHeaderView* head = horizontalHeader();
    if (!currentIndex().isValid()) return;
    const int from = head->visualIndex(currentIndex().column());
    int to = from + by;
    while (to >= 0 && to < head->count() && head->isSectionHidden(head->logicalIndex(to))) to += by;
    if (to >= 0 && to < head->count()) head->moveSection(from, to);
}

void ColumnTable::keyPressEvent(QKeyEvent* event) {
    const bool across = event->key() == Qt::Key_Left || event->key() == Qt::Key_Right;
    if (across && event->modifiers() == Qt::AltModifier) return moveColumn(event->key() == Qt::Key_Left ? -1 : 1);
    QTableView::keyPressEvent(event);
}

void ColumnTable::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange) sizeRows();
}

/// Columns keep their share of the text's size.
void ColumnTable::sizeRows() {
    verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 8);
    const int digit = fontMetrics().horizontalAdvance(u'0');
    for (int c = 0; m_fitted && m_digit > 0 && digit != m_digit && c < columnsOfModel(); ++c)
        if (!isColumnHidden(c)) setColumnWidth(c, columnWidth(c) * digit / m_digit);
    m_digit = digit;
}

} // namespace ui::table
