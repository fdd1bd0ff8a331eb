#pragma once

#include "core/report/contact_pages.h"

#include <QAbstractTableModel>

#include <vector>

namespace ui::health {

/// The list of contacts: gifts, then hives that stood in a yard with the one asked for.
class ContactModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum class Column { When, What, From, To, Steps };

    using QAbstractTableModel::QAbstractTableModel;

    void show(std::vector<core::report::ContactLine> lines);
    const core::report::ContactLine& at(int row) const { return m_lines[static_cast<size_t>(row)]; }
    /// The first line about it; −1: none.
    int rowAbout(core::ColonyIx colony) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    std::vector<core::report::ContactLine> m_lines;
};

} // namespace ui::health
