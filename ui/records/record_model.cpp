#include "ui/records/record_model.h"

#include "ui/look/words.h"

namespace ui::records {

void RecordModel::setRows(std::vector<RecordRow> rows) {
    if (rows == m_rows) return;
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

int RecordModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant RecordModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    const RecordRow& row = at(index.row());
    switch (role) {
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole:
        //: A record in one line: day, what it is, its words
        return tr("%1, %2: %3").arg(look::dayText(row.day), row.title, row.words.isEmpty() ? look::dash() : row.words);
    case DayRole:
        return look::dayText(row.day);
    case TitleRole:
        return row.title;
    case WordsRole:
        return row.words;
    default:
        return {};
    }
}

} // namespace ui::records
