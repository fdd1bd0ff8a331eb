#include "ui/entry/entry_grid.h"

#include "ui/entry/entry_columns.h"
#include "ui/entry/entry_delegate.h"

#include <QApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QScopedValueRollback>
#include <QScrollBar>

namespace ui::entry {

namespace {
constexpr int kPage = 10; // rows
constexpr int kLabelDigits = 9;
} // namespace

EntryGrid::EntryGrid(EntryWork& work, EntryModel& model, QWidget* parent)
    : QTableView(parent), m_work(work), m_model(model) {
    setModel(&model);
    setItemDelegate(
        new EntryDelegate([this](QLineEdit& line, const QKeyEvent& key) { return pressed(line, key); }, this));
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setWordWrap(false);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setAccessibleName(tr("Visits of the day, a row a hive"));
    verticalHeader()->hide();
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    connect(&model, &QAbstractItemModel::modelReset, this, &EntryGrid::fitColumns);
    connect(this, &QTableView::clicked, this, [this](const QModelIndex& at) {
        if (at.column() == 0)
            goTo(at.row(), {}, true);
        else
            openLine();
    });
    fitColumns();
}

int EntryGrid::row() const { return currentIndex().isValid() ? currentIndex().row() : -1; }

bool EntryGrid::hasKeys() const {
    const QWidget* focus = QApplication::focusWidget();
    return focus && (focus == this || isAncestorOf(focus));
}

QLineEdit* EntryGrid::line() const { return qobject_cast<QLineEdit*>(indexWidget(currentIndex())); }

/// Columns by their text; a note takes what is left.
void EntryGrid::fitColumns() {
    const int digit = fontMetrics().horizontalAdvance(u'0');
    verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 10);
    int left = viewport()->width();
    std::optional<int> note;
    for (int section = 0; section < m_model.columnCount(); ++section) {
        const auto column = m_model.columnAt(section);
        if (column == core::TallyColumn::Note) {
            note = section;
            continue;
        }
        const QString head = m_model.headerData(section, Qt::Horizontal, Qt::DisplayRole).toString();
        const int width =
            std::max((column ? digitsOf(*column) : kLabelDigits) * digit, fontMetrics().horizontalAdvance(head) + 16);
        setColumnWidth(section, width);
        left -= width;
    }
    if (note) setColumnWidth(*note, std::max(left, digitsOf(core::TallyColumn::Note) * digit));
}

std::optional<int> EntryGrid::openSection(int row, int from, int by) const {
    for (int section = from; section >= 1 && section < m_model.columnCount(); section += by)
        if (const auto column = m_model.columnAt(section); column && m_work.open(row, *column)) return section;
    return std::nullopt;
}

void EntryGrid::goTo(int row, std::optional<int> section, bool keys) {
    if (row < 0 || row >= m_model.rowCount()) return;
    const auto at = section ? section : openSection(row, 1, 1);
    setCurrentIndex(m_model.index(row, at.value_or(0)));
    scrollTo(currentIndex());
    if (!section) horizontalScrollBar()->setValue(0);
    if (keys || hasKeys()) openLine();
}

void EntryGrid::openLine() {
    if (m_opening || !isVisible()) return;
    const QScopedValueRollback opening(m_opening, true);
    if (QLineEdit* open = line()) return open->setFocus(Qt::OtherFocusReason);
    if (!currentIndex().isValid() || !(m_model.flags(currentIndex()) & Qt::ItemIsEditable))
        return setFocus(Qt::OtherFocusReason);
    edit(currentIndex());
    QLineEdit* open = line();
    setFocusProxy(open);
    if (open && m_model.columnAt(currentIndex().column()) == core::TallyColumn::Note) open->end(false);
}

void EntryGrid::currentChanged(const QModelIndex& now, const QModelIndex& before) {
    const bool keys = hasKeys();
    QTableView::currentChanged(now, before);
    if (now.row() != before.row()) emit rowMoved();
    if (keys && now.isValid()) openLine();
}

void EntryGrid::focusInEvent(QFocusEvent* event) {
    QTableView::focusInEvent(event);
    if (m_opening) return;
    if (!currentIndex().isValid()) goTo(0);
    openLine();
}

/// Where nothing can be typed: on a label, in a book that is only read.
void EntryGrid::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return goOn(false);
    if (event->key() == Qt::Key_Escape) return emit leaveAsked();
    QTableView::keyPressEvent(event);
}

void EntryGrid::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) fitColumns();
}

void EntryGrid::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    fitColumns();
}

bool EntryGrid::pressed(QLineEdit& line, const QKeyEvent& key) {
    const bool control = key.modifiers() & Qt::ControlModifier;
    emit keyTyped();
    switch (key.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (control && key.modifiers() & Qt::ShiftModifier)
            emit saveAllAsked();
        else if (control)
            emit saveAsked(false);
        else
            goOn(false);
        return true;
    case Qt::Key_Tab:
        if (control) return false;
        goOn(true);
        return true;
    case Qt::Key_Backtab:
        if (control) return false;
        goBack();
        return true;
    case Qt::Key_Escape:
        return escape(line);
    case Qt::Key_F2:
        if (m_model.columnAt(currentIndex().column()) != core::TallyColumn::Note) return false;
        emit phraseAsked(line);
        return true;
    default:
        return !control && acrossOrDown(line, key.key());
    }
}

/// Left and right go among the letters of a cell first, once one of them was touched.
bool EntryGrid::acrossOrDown(QLineEdit& line, int key) {
    const QModelIndex at = currentIndex();
    const bool whole = line.selectedText() == line.text();
    const auto to = [&](std::optional<int> row, std::optional<int> section) {
        if (row && section && *row >= 0 && *row < m_model.rowCount()) goTo(*row, section, true);
        return true;
    };
    switch (key) {
    case Qt::Key_Up:
        return to(at.row() - 1, at.column());
    case Qt::Key_Down:
        return to(at.row() + 1, at.column());
    case Qt::Key_PageUp:
        return to(std::max(at.row() - kPage, 0), at.column());
    case Qt::Key_PageDown:
        return to(std::min(at.row() + kPage, m_model.rowCount() - 1), at.column());
    case Qt::Key_Left:
        return (whole || line.cursorPosition() == 0) && to(at.row(), openSection(at.row(), at.column() - 1, -1));
    case Qt::Key_Right:
        return (whole || line.cursorPosition() == line.text().size()) &&
               to(at.row(), openSection(at.row(), at.column() + 1, 1));
    default:
        return false;
    }
}

void EntryGrid::goOn(bool byTab) {
    if (!currentIndex().isValid()) return;
    if (const auto next = openSection(row(), currentIndex().column() + 1, 1))
        goTo(row(), next, true);
    else
        emit saveAsked(byTab);
}

void EntryGrid::leaveForward() { focusNextChild(); }

void EntryGrid::goBack() {
    if (const auto before = openSection(row(), currentIndex().column() - 1, -1)) return goTo(row(), before, true);
    if (row() > 0) return goTo(row() - 1, openSection(row() - 1, m_model.columnCount() - 1, -1), true);
    focusPreviousChild();
}

/// First what was typed into the cell, then the row.
bool EntryGrid::escape(QLineEdit& line) {
    const QString start = line.property("start").toString();
    if (line.text() == start) return emit leaveAsked(), true;
    m_model.setData(currentIndex(), start, Qt::EditRole);
    line.setText(start);
    line.selectAll();
    return true;
}

} // namespace ui::entry
