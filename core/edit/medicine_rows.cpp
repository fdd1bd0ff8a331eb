#include "core/edit/medicine_rows.h"

#include "core/edit/edit_context.h"

namespace core::edit {

namespace {

template <class T> void readAll(const EditContext& c, std::vector<T>& rows) {
    c.each<T>([&](const T& row) { rows.push_back(row); });
}

} // namespace

rules::MedicineRows medicineRows(const EditContext& c) {
    rules::MedicineRows rows;
    readAll(c, rows.yards);
    readAll(c, rows.stands);
    readAll(c, rows.colonies);
    readAll(c, rows.placements);
    readAll(c, rows.lineage);
    readAll(c, rows.treatments);
    readAll(c, rows.stripsOut);
    c.each<Keeper>([&](const Keeper& keeper) { rows.keeper = keeper; });
    rows.settings = c.settings();
    return rows;
}

rules::MedicineBook medicineBook(const Session& session) {
    rules::MedicineRows rows;
    session.read([&](const EditContext& c) { rows = medicineRows(c); });
    rows.changes = session.medicineChanges();
    return rules::MedicineBook(std::move(rows), session.clock().today());
}

} // namespace core::edit
