#include "ui/form/typed.h"

#include "core/base/quantity.h"
#include "ui/look/words.h"

#include <QCoreApplication>
#include <QLocale>

namespace ui::form {

namespace {

struct Typed {
    Q_DECLARE_TR_FUNCTIONS(Typed)
};

constexpr int kMostWhole = 1'000'000'000;
constexpr int kMostDecimals = 6;

std::optional<core::Day> checked(const QDate& date) {
    if (!date.isValid() || date.year() < 1 || date.year() > 9999) return std::nullopt;
    return core::dayOf(date);
}

/// Day and month alone: the last such day up to today.
std::optional<core::Day> lastSuch(int day, int month, core::Day today) {
    const int year = core::toDate(today).year();
    for (int back = 0; back <= 8; ++back) { // 29 February comes again within eight years
        const QDate date(year - back, month, day);
        if (date.isValid() && core::dayOf(date) <= today) return core::dayOf(date);
    }
    return std::nullopt;
}

std::optional<core::Day> ofNumbers(const QString& text, core::Day today) {
    QStringList parts = text.split(u'.');
    if (parts.size() == 3 && parts.last().trimmed().isEmpty()) parts.removeLast();
    if (parts.size() < 2 || parts.size() > 3) return std::nullopt;
    std::vector<int> numbers;
    for (const QString& part : parts) {
        const auto n = core::parseDecimal(part.trimmed(), 0);
        if (!n || *n < 1 || *n > 9999) return std::nullopt;
        numbers.push_back(static_cast<int>(*n));
    }
    if (numbers.size() == 2) return lastSuch(numbers[0], numbers[1], today);
    const int year = numbers[2] < 100 ? 2000 + numbers[2] : numbers[2];
    return checked(QDate(year, numbers[1], numbers[0]));
}

/// "15 Sep 2026", "15 September", in the user's language or in English.
std::optional<core::Day> ofWords(const QString& text, core::Day today) {
    for (const QLocale& locale : {QLocale(), QLocale::c()}) {
        for (const char* pattern : {"d MMM yyyy", "d MMMM yyyy"})
            if (const auto day = checked(locale.toDate(text, QLatin1StringView(pattern)))) return day;
        for (const char* pattern : {"d MMM yyyy", "d MMMM yyyy"}) // 2000 was a leap year
            if (const QDate date = locale.toDate(text + QStringLiteral(" 2000"), QLatin1StringView(pattern));
                date.isValid())
                return lastSuch(date.day(), date.month(), today);
    }
    return std::nullopt;
}

} // namespace

QString typed(const Values& values, const QString& key) {
    const auto it = values.find(key);
    return it == values.end() ? QString() : it->second.trimmed();
}

bool ticked(const Values& values, const QString& key) { return typed(values, key) == kTicked; }

std::optional<int> wholeOf(const Values& values, const QString& key) {
    const auto n = core::parseDecimal(typed(values, key), 0);
    return n && *n >= -kMostWhole && *n <= kMostWhole ? std::optional(static_cast<int>(*n)) : std::nullopt;
}

std::optional<qint64> scaledOf(const Values& values, const QString& key, int decimals) {
    QString text = typed(values, key);
    text.replace(u',', u'.');
    return core::parseDecimal(text, decimals);
}

std::optional<double> decimalOf(const Values& values, const QString& key) {
    if (!scaledOf(values, key, kMostDecimals)) return std::nullopt;
    return typed(values, key).replace(u',', u'.').toDouble(); // the nearest double, as files read it
}

std::optional<core::Day> dayOf(const Values& values, const QString& key, core::Day today) {
    return parseDay(typed(values, key), today);
}

std::optional<core::Day> parseDay(QStringView text, core::Day today) {
    const QString plain = text.toString().simplified();
    if (plain.isEmpty()) return std::nullopt;
    if (const auto iso = core::parseIsoDay(plain)) return iso;
    if (plain.compare(Typed::tr("today"), Qt::CaseInsensitive) == 0) return today;
    if (plain.compare(Typed::tr("yesterday"), Qt::CaseInsensitive) == 0) return today - 1;
    if (const auto day = ofNumbers(plain, today)) return day;
    return ofWords(plain, today);
}

QString typedDay(core::Day day) { return look::dayText(day); }

QString typedDay(std::optional<core::Day> day) { return day ? typedDay(*day) : QString(); }

QString typedWhole(std::optional<int> value) { return value ? QString::number(*value) : QString(); }

QString typedDecimal(std::optional<double> value) {
    return value ? QString::number(*value, 'g', QLocale::FloatingPointShortest) : QString();
}

} // namespace ui::form
