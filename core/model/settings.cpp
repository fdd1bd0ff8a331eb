#include "core/model/settings.h"

#include "core/model/setting_fields.h"

#include <QLatin1StringView>
#include <QStringList>

#include <type_traits>

namespace core {

namespace {

constexpr int kDecimals = 6; // Millionths
constexpr int kMostPerThousand = 1000;

template <class E> constexpr std::span<const char* const> choices();
constexpr const char* kJudges[] = {"mean", "top", "bottom"};
constexpr const char* kOrders[] = {"better-on-top", "weaker-on-top"};
constexpr const char* kWeakerQueens[] = {"leave", "remove"};
constexpr const char* kWeightUnits[] = {"kg", "lb"};
constexpr const char* kVolumes[] = {"l", "qt"};
constexpr const char* kLengths[] = {"m", "ft"};
template <> constexpr std::span<const char* const> choices<StrengthJudge>() { return kJudges; }
template <> constexpr std::span<const char* const> choices<BoxOrder>() { return kOrders; }
template <> constexpr std::span<const char* const> choices<WeakerQueen>() { return kWeakerQueens; }
template <> constexpr std::span<const char* const> choices<WeightUnit>() { return kWeightUnits; }
template <> constexpr std::span<const char* const> choices<VolumeUnit>() { return kVolumes; }
template <> constexpr std::span<const char* const> choices<LengthUnit>() { return kLengths; }

QString twoDigits(int value) { return QString::number(value).rightJustified(2, u'0'); }

// How each type is shown.
QString shown(int value) { return QString::number(value); }
QString shown(Quarters value) { return framesText(value); }
QString shown(Millionths value) { return decimalText(value.value, kDecimals); }
QString shown(MonthDay value) { return twoDigits(value.month) + u'-' + twoDigits(value.day); }
QString shown(const ValueTable& value) {
    QStringList parts;
    for (const int v : value) parts += QString::number(v);
    return parts.join(u' ');
}
template <class E> QString shown(E value) { return QLatin1StringView(choices<E>()[static_cast<size_t>(value)]); }

std::optional<qint64> wholeIn(QStringView text, qint64 least, qint64 most) {
    if (text.contains(u'.')) return std::nullopt;
    const auto value = parseDecimal(text, 0);
    return value && *value >= least && *value <= most ? value : std::nullopt;
}

// How each type is read.
bool read(QStringView text, const SettingField& field, int& into) {
    const auto value = wholeIn(text, field.least, field.most);
    if (value) into = static_cast<int>(*value);
    return value.has_value();
}

bool read(QStringView text, const SettingField& field, Quarters& into) {
    const auto hundredths = parseDecimal(text, 2);
    if (!hundredths || *hundredths % 25 != 0) return false;
    const qint64 quarters = *hundredths / 25;
    if (quarters < field.least || quarters > field.most) return false;
    into = {static_cast<qint32>(quarters)};
    return true;
}

bool read(QStringView text, const SettingField& field, Millionths& into) {
    const auto value = parseDecimal(text, kDecimals);
    if (!value || *value < field.least || *value > field.most) return false;
    into = {*value};
    return true;
}

bool read(QStringView text, const SettingField&, MonthDay& into) {
    constexpr int kDays[] = {31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    if (text.size() != 5 || text[2] != u'-') return false;
    const auto month = wholeIn(text.left(2), 1, 12);
    if (!month) return false;
    const auto day = wholeIn(text.mid(3), 1, kDays[*month - 1]);
    if (!day) return false;
    into = {static_cast<int>(*month), static_cast<int>(*day)};
    return true;
}

bool read(QStringView text, const SettingField&, ValueTable& into) {
    const QStringList parts = text.toString().simplified().split(u' ');
    ValueTable table{};
    if (parts.size() != static_cast<qsizetype>(table.size())) return false;
    for (size_t i = 0; i < table.size(); ++i) {
        const auto value = wholeIn(parts[static_cast<qsizetype>(i)], 0, kMostPerThousand);
        if (!value) return false;
        table[i] = static_cast<int>(*value);
    }
    into = table;
    return true;
}

template <class E> bool read(QStringView text, const SettingField&, E& into) {
    const auto words = choices<E>();
    for (size_t i = 0; i < words.size(); ++i) {
        if (text != QLatin1StringView(words[i])) continue;
        into = static_cast<E>(i);
        return true;
    }
    return false;
}

// The range of each type in words.
QString range(const SettingField& field, int) { return QStringLiteral("%1 to %2").arg(field.least).arg(field.most); }
QString range(const SettingField& field, Quarters) {
    return QStringLiteral("%1 to %2, in quarters")
        .arg(framesText({static_cast<qint32>(field.least)}), framesText({static_cast<qint32>(field.most)}));
}
QString range(const SettingField& field, Millionths) {
    return QStringLiteral("%1 to %2").arg(decimalText(field.least, kDecimals), decimalText(field.most, kDecimals));
}
QString range(const SettingField&, MonthDay) { return QStringLiteral("MM-DD, a day of the year"); }
QString range(const SettingField&, const ValueTable&) {
    return QStringLiteral("13 whole numbers 0 to 1000 with spaces between");
}
template <class E> QString range(const SettingField&, E) {
    const auto words = choices<E>();
    QString text = QLatin1StringView(words[0]);
    for (size_t i = 1; i < words.size(); ++i)
        text +=
            (i + 1 < words.size() ? QLatin1StringView(", ") : QLatin1StringView(" or ")) + QLatin1StringView(words[i]);
    return text;
}

} // namespace

QString rangeText(const SettingField& field) {
    const Settings defaults;
    const QString text = std::visit([&](auto member) { return range(field, defaults.*member); }, field.slot);
    return field.onlyStricter ? text + QLatin1StringView(" (only stricter)") : text;
}

QStringList choiceWords(const SettingField& field) {
    const Settings defaults;
    QStringList out;
    std::visit(
        [&](auto member) {
            using Kept = std::decay_t<decltype(defaults.*member)>;
            if constexpr (std::is_enum_v<Kept>)
                for (const char* word : choices<Kept>()) out += QLatin1StringView(word);
        },
        field.slot);
    return out;
}

QString slotText(const Settings& settings, const SettingField& field) {
    return std::visit([&](auto member) { return shown(settings.*member); }, field.slot);
}

bool readSlot(Settings& settings, const SettingField& field, QStringView text) {
    return std::visit([&](auto member) { return read(text.trimmed(), field, settings.*member); }, field.slot);
}

} // namespace core
