#include "ui/copies/lines_list.h"

#include "ui/copies/copies_text.h"
#include "ui/history/history_words.h"
#include "ui/history/roomy_cells.h"

#include <QHeaderView>

namespace ui::copies {

namespace {
constexpr int kWhen = 0;
constexpr int kWhat = 1;
constexpr int kBy = 2;
} // namespace

LinesList::LinesList(const QString& name, QWidget* parent) : QTreeWidget(parent) {
    setAccessibleName(name);
    setRootIsDecorated(false);
    setUniformRowHeights(true);
    setItemDelegate(new history::RoomyCells(this));
    setHeaderLabels({tr("When"), tr("What"), tr("By")});
    header()->setStretchLastSection(false);
    header()->setSectionResizeMode(kWhat, QHeaderView::Stretch);
    const int letter = fontMetrics().averageCharWidth();
    header()->resizeSection(kWhen, letter * 20);
    header()->resizeSection(kBy, letter * 12);
}

void LinesList::fill(const core::edit::BooksCompared::Side& side) {
    clear();
    for (const core::edit::HistoryLine& line : side.lines) {
        const QString note = history::noteText(line);
        const QString what = note.isEmpty() ? line.text : tr("%1 (%2)").arg(line.text, note);
        auto* item = new QTreeWidgetItem(QStringList{stampText(line.at), what, line.by});
        item->setData(kWhen, Qt::UserRole, line.seq);
        item->setToolTip(kWhat, what);
        addTopLevelItem(item);
    }
    const qint64 more = side.count - static_cast<qint64>(side.lines.size());
    if (more > 0) addTopLevelItem(new QTreeWidgetItem(QStringList{QString(), tr("and %1 earlier ones").arg(more)}));
}

std::optional<qint64> LinesList::chosen() const {
    const QTreeWidgetItem* item = currentItem();
    if (!item || !item->data(kWhen, Qt::UserRole).isValid()) return {};
    return item->data(kWhen, Qt::UserRole).toLongLong();
}

} // namespace ui::copies
