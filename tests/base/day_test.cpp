#include "core/base/day.h"

#include <gtest/gtest.h>

#include <QLocale>

using namespace core;

namespace {

// Own calculation, checked against QDate (proleptic Gregorian): every day of the leap cycles about the limits and of
// our own times, and one day in 17 of all the years 1 to 9999.
TEST(Day, AgreesWithQDate) {
    const qint32 first = dayOf(1, 1, 1).number;
    const qint32 last = dayOf(9999, 12, 31).number;
    EXPECT_EQ(first, QDate(1, 1, 1).toJulianDay());
    EXPECT_EQ(last, QDate(9999, 12, 31).toJulianDay());
    for (qint32 n = first; n <= last; n += (n % 146097 < 3000 ? 1 : 17)) {
        const QDate date = QDate::fromJulianDay(n);
        ASSERT_EQ(dayOf(date.year(), date.month(), date.day()).number, n);
        ASSERT_EQ(toDate({n}), date);
        ASSERT_EQ(dayOf(date), (Day{n}));
        const QString iso = isoText({n});
        ASSERT_EQ(iso, date.toString(Qt::ISODate));
        ASSERT_EQ(parseIsoDay(iso), (Day{n}));
        const QByteArray bytes = iso.toLatin1();
        ASSERT_EQ(parseIsoDay(bytes.constData(), bytes.size()), (Day{n}));
    }
}

TEST(Day, ReadsOnlyDaysThatAre) {
    for (const char* text :
         {"",           "2026-9-20",  "2026-09-20 ", " 2026-09-20", "2026/09/20", "20260920",        "0000-01-01",
          "2026-00-10", "2026-13-01", "2026-01-00",  "2026-01-32",  "2026-04-31", "2026-02-29",      "1900-02-29",
          "-026-09-20", "+026-09-20", "10000-01-01", "2026-09-2x",  "٢٠٢٦-٠٩-٢٠", "2026-09-20T00:00"}) {
        EXPECT_EQ(parseIsoDay(QString::fromUtf8(text)), std::nullopt) << text;
        EXPECT_EQ(parseIsoDay(text, static_cast<qsizetype>(qstrlen(text))), std::nullopt) << text;
    }
    EXPECT_EQ(parseIsoDay(u"2024-02-29"), dayOf(2024, 2, 29));
    EXPECT_EQ(parseIsoDay(u"2000-02-29"), dayOf(2000, 2, 29));
    EXPECT_EQ(parseIsoDay(u"0001-01-01"), dayOf(1, 1, 1));
}

TEST(Day, CountsDays) {
    EXPECT_EQ(dayOf(2026, 7, 16) + 60, dayOf(2026, 9, 14));
    EXPECT_EQ(dayOf(2026, 3, 1) - 1, dayOf(2026, 2, 28));
    EXPECT_EQ(dayOf(2024, 3, 1) - dayOf(2024, 2, 28), 2);
    EXPECT_LT(dayOf(2025, 12, 31), dayOf(2026, 1, 1));
}

} // namespace
