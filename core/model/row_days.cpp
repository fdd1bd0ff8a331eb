#include "core/model/row_days.h"

#include "core/base/day.h"

#include <algorithm>
#include <string_view>

namespace core {

std::vector<size_t> dayColumns(Table table) {
    constexpr std::string_view kDays[] = {"day", "since", "ended", "until", "sent", "lost", "disposed", "bought"};
    std::vector<size_t> found;
    const auto columns = columnsOf(table);
    for (size_t i = 0; i < columns.size(); ++i)
        if (std::ranges::find(kDays, std::string_view(columns[i])) != std::end(kDays)) found.push_back(i);
    return found;
}

bool daysExist(Table table, const Row& row) {
    return std::ranges::all_of(dayColumns(table), [&row](size_t column) {
        const auto* day = column < row.size() ? std::get_if<QString>(&row[column]) : nullptr;
        return !day || parseIsoDay(*day);
    });
}

} // namespace core
