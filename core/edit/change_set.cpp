#include "core/edit/change_set.h"

#include <utility>

namespace core::edit {

std::vector<RowChange> inverse(const std::vector<RowChange>& rows) {
    std::vector<RowChange> back(rows.rbegin(), rows.rend());
    for (RowChange& row : back) std::swap(row.before, row.after);
    return back;
}

} // namespace core::edit
