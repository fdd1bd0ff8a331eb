#pragma once

#include "core/edit/session.h"
#include "ui/dialogs.h"
#include "ui/find/visit_columns.h"

#include <QAbstractTableModel>

#include <map>
#include <vector>

namespace ui::find {

/// Visits out of many: their ids in the order asked for, at most so many at once, and of those seen their rows, read a
/// few dozen at a time. More are asked for as the end comes near.
class VisitModel : public QAbstractTableModel {
    Q_OBJECT
public:
    VisitModel(const core::edit::Session& session, Dialogs& dialogs, QObject* parent);

    /// Asks anew. Throws Error(Book).
    void show(const core::VisitFilter& filter);
    void clear();
    const core::VisitFilter& filter() const { return m_filter; }
    const core::VisitTotals& totals() const { return m_totals; }
    core::VisitId visitAt(int row) const { return m_ids[static_cast<size_t>(row)]; }
    const VisitLine& lineAt(int row) const;
    std::optional<int> rowOf(core::VisitId visit) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    bool canFetchMore(const QModelIndex& parent) const override;
    void fetchMore(const QModelIndex& parent) override;
    void sort(int column, Qt::SortOrder order = Qt::AscendingOrder) override;

private:
    void ask();
    void readPage(int row) const;
    VisitLine lineOf(const core::Visit& visit) const;

    const core::edit::Session& m_session;
    Dialogs& m_dialogs;
    core::VisitFilter m_filter;
    core::VisitOrder m_order;
    core::VisitTotals m_totals;
    core::WeightUnit m_unit = core::WeightUnit::Kilograms;
    int m_most;
    bool m_asked = false;
    std::vector<core::VisitId> m_ids;
    mutable std::map<core::VisitId, VisitLine> m_lines; ///< of those seen
};

} // namespace ui::find
