#include "core/model/row_days.h"

#include <gtest/gtest.h>

namespace core {

namespace {

TEST(RowDays, OnlyDaysOfTheCalendarExist) {
    Row row(columnsOf(Table::Sample).size());
    ASSERT_EQ(dayColumns(Table::Sample).size(), 3U); // taken, sent, lost
    EXPECT_TRUE(daysExist(Table::Sample, row));
    for (const size_t column : dayColumns(Table::Sample)) {
        for (const char* day : {"2026-02-30", "2025-02-29", "2026-04-31", "2026-13-01", "2026-2-03", "x"}) {
            row[column] = QString::fromLatin1(day);
            EXPECT_FALSE(daysExist(Table::Sample, row)) << day;
        }
        row[column] = QStringLiteral("2024-02-29");
        EXPECT_TRUE(daysExist(Table::Sample, row));
    }
}

} // namespace

} // namespace core
