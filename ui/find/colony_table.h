#pragma once

#include "ui/find/colony_model.h"
#include "ui/table/column_table.h"

namespace ui::find {

class ColonyTable : public table::ColumnTable {
    Q_OBJECT
public:
    ColonyTable(ColonyModel* model, QWidget* parent);
};

} // namespace ui::find
