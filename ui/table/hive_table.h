#pragma once

#include "ui/table/column_table.h"
#include "ui/table/hive_model.h"

namespace ui::table {

/// The table beside the plan: the same hives, the same chosen one.
class HiveTable : public ColumnTable {
    Q_OBJECT
public:
    explicit HiveTable(QWidget* parent = nullptr);

    void showHives(const desk::Reading& reading, std::optional<core::YardIx> yard);
    /// `lead` is among them; it has the keys.
    void setSelected(const std::vector<core::ColonyId>& colonies, std::optional<core::ColonyId> lead);

signals:
    /// By hand: one or several, `lead` among them.
    void selectAsked(const std::vector<core::ColonyId>& colonies, core::ColonyId lead);
    void opened(core::ColonyId colony);

private:
    void tellSelected();

    HiveModel* m_hives;
    HiveSorter* m_sorter;
    bool m_telling = false;
};

} // namespace ui::table
