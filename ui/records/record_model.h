#pragma once

#include "ui/records/record_rows.h"

#include <QAbstractListModel>

namespace ui::records {

/// The records of one colony, a row each.
class RecordModel : public QAbstractListModel {
    Q_OBJECT
public:
    enum Role { DayRole = Qt::UserRole + 1, TitleRole, WordsRole };

    using QAbstractListModel::QAbstractListModel;
    void setRows(std::vector<RecordRow> rows);
    const RecordRow& at(int row) const { return m_rows[static_cast<size_t>(row)]; }

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    std::vector<RecordRow> m_rows;
};

} // namespace ui::records
