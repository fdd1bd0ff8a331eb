#include "ui/history/change_view.h"

#include "ui/history/roomy_cells.h"
#include "ui/look/words.h"

#include <QHeaderView>
#include <QStandardItemModel>

namespace ui::history {

using core::edit::ChangeWords;

namespace {

QStandardItem* itemOf(const QString& text, const QString& spoken = {}) {
    auto* item = new QStandardItem(text);
    item->setEditable(false);
    item->setToolTip(text);
    if (!spoken.isEmpty()) item->setAccessibleText(spoken);
    return item;
}

} // namespace

ChangeView::ChangeView(QWidget* parent) : QTreeView(parent), m_model(new QStandardItemModel(this)) {
    setModel(m_model);
    setAccessibleName(tr("What the change did, from what to what"));
    setEditTriggers(NoEditTriggers);
    setUniformRowHeights(true);
    setFrameShape(NoFrame);
    setTabKeyNavigation(false);
    header()->setSectionsMovable(false);
    setItemDelegate(new RoomyCells(this));
    clear();
}

void ChangeView::clear() {
    m_model->clear();
    m_model->setHorizontalHeaderLabels({tr("Record"), tr("Before"), tr("After")});
    header()->setSectionResizeMode(0, QHeaderView::Interactive);
    header()->setSectionResizeMode(1, QHeaderView::Stretch);
    header()->setSectionResizeMode(2, QHeaderView::Stretch);
    header()->resizeSection(0, fontMetrics().averageCharWidth() * 40);
}

void ChangeView::show(const core::edit::HistoryDetail& detail) {
    clear();
    const auto branch = [this](const QString& text) {
        QStandardItem* item = itemOf(text);
        QFont bold = font();
        bold.setBold(true);
        item->setFont(bold);
        m_model->appendRow(item);
        setFirstColumnSpanned(m_model->rowCount() - 1, {}, true);
        return item;
    };
    for (const ChangeWords& change : detail.changes) {
        const QString how = change.how == ChangeWords::How::Added       ? tr("%1: added")
                            : change.how == ChangeWords::How::TakenAway ? tr("%1: taken away")
                                                                        : QStringLiteral("%1");
        QStandardItem* record = branch(how.arg(change.what));
        for (const core::edit::FieldWords& f : change.fields) {
            const QString from = f.from.value_or(look::dash());
            const QString to = f.to.value_or(look::dash());
            const QString spoken = f.from && f.to ? tr("%1, from %2 to %3").arg(f.field, from, to)
                                                  : QStringLiteral("%1: %2").arg(f.field, f.to ? to : from);
            record->appendRow({itemOf(f.field, spoken), itemOf(from), itemOf(to)});
        }
    }
    if (detail.more > 0) branch(tr("and %1 more records").arg(detail.more));
    expandAll();
    scrollToTop();
    selectionModel()->setCurrentIndex(m_model->index(0, 0), QItemSelectionModel::NoUpdate); // where keys begin
}

} // namespace ui::history
