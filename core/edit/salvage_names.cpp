#include "core/edit/salvage_names.h"

#include "core/base/natural_order.h"
#include "core/edit/edit_checks.h"
#include "core/model/row.h"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace core::edit {

namespace {

using store::Statement;

/// Rows of a table whose key is not that of the name before it: their id, and what it is.
std::vector<std::pair<qint64, QString>> misfiled(const store::Database& db, const std::string& table,
                                                 const std::string& name) {
    std::vector<std::pair<qint64, QString>> rows;
    Statement row = db.prepare("SELECT id, " + name + ", key FROM " + table);
    while (row.step())
        if (QString key = folded(row.text(1)); key != row.text(2)) rows.emplace_back(row.integer(0), std::move(key));
    return rows;
}

} // namespace

void fileNames(const store::Database& db, SalvageAccount& account) {
    qint64 filed = 0;
    for (int i = 0; i < kTableCount; ++i) {
        const auto table = static_cast<Table>(i);
        const auto columns = columnsOf(table);
        const auto key = std::ranges::find(columns, std::string_view("key"));
        if (key == columns.end()) continue;
        const std::string name = tableName(table);
        for (const auto& [id, own] : misfiled(db, name, *(key - 1))) {
            db.prepare("UPDATE OR IGNORE " + name + " SET key = ? WHERE id = ?").bind(1, own).bind(2, id).run();
            filed += db.number("SELECT changes()");
        }
    }
    if (filed > 0)
        account.mended
            << Edits::tr("Names that were filed under another than their own: %1. They are found again.").arg(filed);
}

} // namespace core::edit
