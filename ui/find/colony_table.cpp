#include "ui/find/colony_table.h"

namespace ui::find {

ColonyTable::ColonyTable(ColonyModel* model, QWidget* parent) : ColumnTable(parent) {
    takeModel(model);
    setObjectName(QStringLiteral("colonyTable"));
    setAccessibleName(tr("Table of colonies"));
    for (const ColonyColumn c : {ColonyColumn::Stand, ColonyColumn::Weighed, ColonyColumn::Ended, ColonyColumn::Asked})
        setColumnHidden(static_cast<int>(c), true); // shown by the menu of columns
}

} // namespace ui::find
