#include "ui/time/day_words.h"

#include "ui/look/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <array>

namespace ui::time {

namespace {

struct Days {
    Q_DECLARE_TR_FUNCTIONS(Days)
};

bool earlier(const core::RecordedDay& record, core::Day day) { return record.day < day; }
bool later(core::Day day, const core::RecordedDay& record) { return day < record.day; }

/// The words for one, and for more.
struct Counted {
    const char* one;
    const char* more;
};
constexpr std::array<Counted, core::kRecordedCount> kWords = {{
    {QT_TRANSLATE_NOOP("ui::time::Days", "1 visit"), QT_TRANSLATE_NOOP("ui::time::Days", "%1 visits")},
    {QT_TRANSLATE_NOOP("ui::time::Days", "1 hive set up"), QT_TRANSLATE_NOOP("ui::time::Days", "%1 hives set up")},
    {QT_TRANSLATE_NOOP("ui::time::Days", "1 hive came"), QT_TRANSLATE_NOOP("ui::time::Days", "%1 hives came")},
    {QT_TRANSLATE_NOOP("ui::time::Days", "1 hive carried"), QT_TRANSLATE_NOOP("ui::time::Days", "%1 hives carried")},
    {QT_TRANSLATE_NOOP("ui::time::Days", "1 hive left"), QT_TRANSLATE_NOOP("ui::time::Days", "%1 hives left")},
    {QT_TRANSLATE_NOOP("ui::time::Days", "1 union"), QT_TRANSLATE_NOOP("ui::time::Days", "%1 unions")},
    {QT_TRANSLATE_NOOP("ui::time::Days", "1 shaken out"), QT_TRANSLATE_NOOP("ui::time::Days", "%1 shaken out")},
    {QT_TRANSLATE_NOOP("ui::time::Days", "1 divide"), QT_TRANSLATE_NOOP("ui::time::Days", "%1 divides")},
    {QT_TRANSLATE_NOOP("ui::time::Days", "1 colony ended"), QT_TRANSLATE_NOOP("ui::time::Days", "%1 colonies ended")},
    {QT_TRANSLATE_NOOP("ui::time::Days", "1 gift"), QT_TRANSLATE_NOOP("ui::time::Days", "%1 gifts")},
    {QT_TRANSLATE_NOOP("ui::time::Days", "1 result"), QT_TRANSLATE_NOOP("ui::time::Days", "%1 results")},
    {QT_TRANSLATE_NOOP("ui::time::Days", "1 treatment"), QT_TRANSLATE_NOOP("ui::time::Days", "%1 treatments")},
}};

} // namespace

std::span<const core::RecordedDay> recordsIn(const Records& records, core::Day first, core::Day last) {
    const auto begin = std::lower_bound(records.begin(), records.end(), first, earlier);
    const auto end = std::upper_bound(begin, records.end(), last, later);
    return {begin, end};
}

std::optional<core::Day> dayAfter(const Records& records, core::Day day) {
    const auto found = std::upper_bound(records.begin(), records.end(), day, later);
    return found == records.end() ? std::nullopt : std::optional(found->day);
}

std::optional<core::Day> dayBefore(const Records& records, core::Day day) {
    const auto found = std::lower_bound(records.begin(), records.end(), day, earlier);
    return found == records.begin() ? std::nullopt : std::optional((found - 1)->day);
}

QString recordWords(std::span<const core::RecordedDay> records) {
    std::array<int, core::kRecordedCount> counts{};
    for (const core::RecordedDay& r : records) counts[static_cast<size_t>(r.what)] += r.count;
    QStringList parts;
    for (size_t i = 0; i < counts.size(); ++i) {
        if (counts[i] == 1) parts << Days::tr(kWords[i].one);
        if (counts[i] > 1) parts << Days::tr(kWords[i].more).arg(counts[i]);
    }
    return parts.join(QStringLiteral(" · "));
}

QString yardWords(core::Day day, core::Day today, const QString& records) {
    const QString which =
        day == today ? Days::tr("The yard today") : Days::tr("The yard on %1").arg(look::dayText(day));
    return records.isEmpty() ? which : Days::tr("%1: %2").arg(which, records);
}

} // namespace ui::time
