#include "core/rules/limits.h"

#include "core/model/setting_fields.h"
#include "core/model/setting_table.h"
#include "core/rules/season.h"

#include <cmath>

namespace core::rules {

namespace {

constexpr char kAssumed[] = "assumption";
constexpr char kPractice[] = "assumption (common practice, no source)";

using FixedValue = std::variant<int, Quarters, MonthDay, const char*>;

struct FixedLimit {
    const char* name;
    FixedValue value;
    const char* unit;
    const char* source;
    const char* meaning;
};

const FixedLimit kFixed[] = {
    {"4.4.10 season_start", fixed::kCheckSeason, "", kAssumed,
     "A brood check from before this day counts for some days only. South: six months later."},
    {"4.5 sample_days", fixed::kSampleDays, "days", kAssumed, "A mite sample older than this gives no caution."},
    {"4.5 spring_months", "January to July", "", kAssumed,
     "When the lower limit of mites holds. South: July to January."},
    {"4.5 fall_months", "August to December", "", kAssumed,
     "When the higher limit of mites holds. South: February to June."},
    {"4.5 heavier_frames", fixed::kMuchHeavier, "frames", kAssumed,
     "So many frames of stores more in the lower box give a caution."},
    {"4.6 most_frames", fixed::kMostValued, "frames", kAssumed, "More frames of bees are valued as so many."},
    {"4.7.7 boxes", 1, "box", kPractice, "Each colony of a union comes into so many brood boxes."},
    {"4.7.8 boxes", 2, "boxes", kPractice, "The bees of a union fit into so many boxes."},
    {"4.9 union_thousandths", fixed::kUnionDisturbed, "thousandths", kAssumed,
     "A shake-out goes to a union only where that is worth so much more."},
    {"4.11 reverse_from", fixed::kReverseFrom, "", kPractice, "First day to reverse boxes. South: six months later."},
    {"4.11 reverse_to", fixed::kReverseTo, "", kPractice, "Last day to reverse boxes. South: six months later."},
    {"4.13 divide_from", fixed::kDivideFrom, "", kAssumed, "First day to divide. South: six months later."},
    {"4.13 divide_to", fixed::kDivideTo, "", kAssumed, "Last day to divide. South: six months later."},
    {"4.13 brood_days", fixed::kBroodDays, "days", kAssumed,
     "Brood frames noted longer ago do not count for a divide."},
    {"4.13 parts", fixed::kLeastParts, "parts", kAssumed, "A divide makes at least so many."},
    {"4.14 listed_before", fixed::kListedBefore, "days", kAssumed, "A check is listed so long before its day."},
    {"4.14 union_check_for", fixed::kUnionCheckFor, "days", kAssumed, "A look at a union is listed so long after it."},
    {"4.14 take_out_for", fixed::kTakeOutFor, "days", kAssumed,
     "A treatment to take out is listed so long past its end."},
    {"4.14 result_for", fixed::kResultFor, "days", kAssumed,
     "A result on a colony that ended under suspicion is awaited so long past its end."},
};

const FixedLimit* fixedNamed(const char* name) {
    for (const FixedLimit& f : kFixed)
        if (sameName(f.name, name)) return &f;
    return nullptr;
}

QString withUnit(const QString& number, const char* unit) {
    return unit[0] ? QStringLiteral("%1 %2").arg(number, QString::fromUtf8(unit)) : number;
}

/// "1 day", "30 days".
QString counted(int n, const char* unit) {
    if (n != 1) return withUnit(QString::number(n), unit);
    if (sameName(unit, "colonies")) return QStringLiteral("1 colony");
    QString one = QString::fromUtf8(unit);
    if (one.endsWith(u's')) one.chop(1);
    return unit[0] ? QStringLiteral("1 %1").arg(one) : QStringLiteral("1");
}

QString converted(double value, int decimals) {
    const double scale = std::pow(10.0, decimals);
    return decimalText(std::llround(value * scale), decimals);
}

/// Decimal settings: quantities in the units shown.
QString millionthsText(Millionths value, const char* unit, const ShownUnits& shown) {
    const QString plain = decimalText(value.value, 6);
    if (sameName(unit, "kg"))
        return shown.weight == WeightUnit::Kilograms
                   ? plain + QStringLiteral(" kg")
                   : decimalText(weightTenths(value.value, shown.weight), 1) + QStringLiteral(" lb");
    if (sameName(unit, "m"))
        return shown.length == LengthUnit::Metres
                   ? plain + QStringLiteral(" m")
                   : converted(value.real() * 1000 / millimetresIn(shown.length), 1) + QStringLiteral(" ft");
    if (sameName(unit, "thousandths per m"))
        return shown.length == LengthUnit::Metres
                   ? plain + QStringLiteral(" a metre")
                   : converted(value.real() * millimetresIn(shown.length) / 1000, 3) + QStringLiteral(" a foot");
    if (sameName(unit, "kg per litre")) {
        constexpr double kLitresInQuart = 0.946352946;
        const bool quarts = shown.volume == VolumeUnit::Quarts;
        const bool pounds = shown.weight == WeightUnit::Pounds;
        if (!quarts && !pounds) return plain + QStringLiteral(" kg a litre");
        const double made = value.real() / kilogramsIn(shown.weight) * (quarts ? kLitresInQuart : 1);
        return QStringLiteral("%1 %2 a %3")
            .arg(converted(made, 3), unitSign(shown.weight),
                 quarts ? QStringLiteral("quart") : QStringLiteral("litre"));
    }
    if (sameName(unit, "mites per 100 bees")) return plain + QStringLiteral(" in 100");
    return withUnit(plain, unit);
}

struct SettingText {
    const Settings& settings;
    const SettingField& field;
    bool southern;

    QString operator()(int Settings::*slot) const { return counted(settings.*slot, field.unit); }
    QString operator()(Quarters Settings::*slot) const { return withUnit(framesText(settings.*slot), field.unit); }
    QString operator()(Millionths Settings::*slot) const {
        return millionthsText(settings.*slot, field.unit, settings.shown());
    }
    QString operator()(MonthDay Settings::*slot) const { return dayOfYearText(settings.*slot, southern); }
    template <class T> QString operator()(T Settings::*) const {
        return slotText(settings, field).replace(u'-', u' '); // words of a choice, numbers of a table
    }
};

QString fixedText(const FixedLimit& f, bool southern) {
    if (const auto* n = std::get_if<int>(&f.value)) return counted(*n, f.unit);
    if (const auto* q = std::get_if<Quarters>(&f.value)) return withUnit(framesText(*q), f.unit);
    if (const auto* md = std::get_if<MonthDay>(&f.value)) return dayOfYearText(*md, southern);
    const bool spring = sameName(f.name, "4.5 spring_months");
    if (southern) return spring ? QStringLiteral("July to January") : QStringLiteral("February to June");
    return QString::fromUtf8(std::get<const char*>(f.value));
}

} // namespace

QString dayOfYearText(MonthDay md, bool southern) {
    static constexpr const char* kMonths[] = {"January", "February", "March",     "April",   "May",      "June",
                                              "July",    "August",   "September", "October", "November", "December"};
    constexpr int kPlainYear = 2001;
    const QDate date = toDate(dayInYear(kPlainYear, md, southern));
    const bool leap = md.month == 2 && md.day == 29 && !southern;
    return QStringLiteral("%1 %2").arg(leap ? md.day : date.day()).arg(QLatin1StringView(kMonths[date.month() - 1]));
}

std::vector<const char*> fixedLimitNames() {
    std::vector<const char*> out;
    for (const FixedLimit& f : kFixed) out.push_back(f.name);
    return out;
}

Limit limitOf(const Settings& settings, const char* name, bool southern) {
    Limit out;
    out.name = QString::fromUtf8(name);
    out.value = limitText(settings, name, southern);
    if (const FixedLimit* f = fixedNamed(name)) {
        out.source = QString::fromUtf8(f->source);
        out.meaning = QString::fromUtf8(f->meaning);
        out.isSetting = false;
    }
    for (const SettingField& field : settingFields()) {
        if (!sameName(field.name, name)) continue;
        out.source = QString::fromUtf8(field.source);
        out.meaning = QString::fromUtf8(field.meaning);
    }
    out.assumption = out.source.startsWith(QLatin1StringView("assumption"));
    return out;
}

std::vector<Limit> limitsOf(const Settings& settings, const Reason& reason) {
    std::vector<Limit> out;
    for (const char* name : reason.limits) out.push_back(limitOf(settings, name, reason.southern));
    return out;
}

QString limitText(const Settings& settings, const char* name, bool southern) {
    if (const FixedLimit* f = fixedNamed(name)) return fixedText(*f, southern);
    for (const SettingField& field : settingFields())
        if (sameName(field.name, name)) return std::visit(SettingText{settings, field, southern}, field.slot);
    return {};
}

} // namespace core::rules
