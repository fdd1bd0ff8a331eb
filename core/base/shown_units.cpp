#include "core/base/shown_units.h"

#include <cmath>

namespace core {

namespace {

constexpr qint64 kPoundIn10Micrograms = 45'359'237;
constexpr qint64 kQuartInNanolitres = 946'352'946;
constexpr qint64 kTenQuartsIn = 10'000'000; // nanolitres of a millilitre, tenfold: of tenths of a quart
constexpr qint64 kTenthFootIn100thMm = 3048;

/// Half up, of numbers that are not negative.
constexpr qint64 rounded(qint64 above, qint64 below) { return (2 * above + below) / (2 * below); }

constexpr qint64 kMillionthsADecagram = 10'000;

qint64 feetTenths(MmPoint a, MmPoint b) {
    // n tenths are right when (n − 1/2)·30.48 mm <= distance < (n + 1/2)·30.48 mm; compared squared, in 25ths of a mm.
    const qint64 squared = squaredDistance(a, b) * 25 * 25;
    const auto lower = [](qint64 tenths) { return (2 * tenths - 1) * 381; };
    auto n = static_cast<qint64>(std::sqrt(static_cast<double>(squared)) / (2 * 381.0) + 0.5);
    while (n > 0 && lower(n) * lower(n) > squared) --n;
    while (lower(n + 1) * lower(n + 1) <= squared) ++n;
    return n;
}

} // namespace

QString unitSign(WeightUnit unit) { return unit == WeightUnit::Pounds ? QStringLiteral("lb") : QStringLiteral("kg"); }

QString unitSign(VolumeUnit unit) { return unit == VolumeUnit::Quarts ? QStringLiteral("qt") : QStringLiteral("L"); }

QString unitSign(LengthUnit unit) { return unit == LengthUnit::Feet ? QStringLiteral("ft") : QStringLiteral("m"); }

QString weightNumber(Decagrams weight, WeightUnit unit) {
    if (unit == WeightUnit::Kilograms) return kilogramsText(weight);
    return decimalText(weightTenths(weight.value * kMillionthsADecagram, unit), 1);
}

qint64 weightTenths(qint64 millionthsKg, WeightUnit unit) {
    return unit == WeightUnit::Pounds ? rounded(millionthsKg * 1000, kPoundIn10Micrograms)
                                      : rounded(millionthsKg, 100'000);
}

std::optional<Decagrams> parseWeight(QStringView text, WeightUnit unit) {
    const QString number = text.trimmed().toString().replace(u',', u'.');
    constexpr qint64 kMost = 1'000'000'000;
    const auto typed = parseDecimal(number, unit == WeightUnit::Pounds ? 1 : 2);
    if (!typed || *typed < 0 || *typed > kMost) return std::nullopt;
    const qint64 decagrams =
        unit == WeightUnit::Pounds ? rounded(*typed * kPoundIn10Micrograms, 1000 * kMillionthsADecagram) : *typed;
    return Decagrams{static_cast<qint32>(decagrams)};
}

QString volumeNumber(Millilitres volume, VolumeUnit unit) {
    if (unit == VolumeUnit::Litres) return decimalText(volume.value, 3);
    return decimalText(rounded(volume.value * kTenQuartsIn, kQuartInNanolitres), 1);
}

std::optional<Millilitres> parseVolume(QStringView text, VolumeUnit unit) {
    const QString number = text.trimmed().toString().replace(u',', u'.');
    constexpr qint64 kMost = 1'000'000'000;
    const auto typed = parseDecimal(number, unit == VolumeUnit::Quarts ? 1 : 3);
    if (!typed || *typed < 0 || *typed > kMost) return std::nullopt;
    const qint64 millilitres = unit == VolumeUnit::Quarts ? rounded(*typed * kQuartInNanolitres, kTenQuartsIn) : *typed;
    return Millilitres{static_cast<qint32>(millilitres)};
}

qint64 feedTenths(qint64 halfLitres, VolumeUnit unit) {
    constexpr qint64 kHalfLitreTenfold = 5'000'000'000; // nanolitres
    return unit == VolumeUnit::Quarts ? rounded(halfLitres * kHalfLitreTenfold, kQuartInNanolitres) : halfLitres * 5;
}

qint64 distanceTenths(MmPoint a, MmPoint b, LengthUnit unit) {
    return unit == LengthUnit::Feet ? feetTenths(a, b) : distanceTenths(a, b);
}

qint64 lengthTenths(qint64 millimetres, LengthUnit unit) {
    return unit == LengthUnit::Feet ? rounded(millimetres * 100, kTenthFootIn100thMm) : rounded(millimetres, 100);
}

double kilogramsIn(WeightUnit unit) { return unit == WeightUnit::Pounds ? 0.45359237 : 1; }

double millimetresIn(LengthUnit unit) { return unit == LengthUnit::Feet ? 304.8 : 1000; }

} // namespace core
