#pragma once

#include "core/base/quantity.h"

#include <optional>

// How quantities are shown. The book and every rule keep SI; only what is shown or typed is converted, with the exact
// factors 1 lb = 0.45359237 kg, 1 ft = 0.3048 m, 1 US liquid quart = 0.946352946 l. Rounding: weights, distances and
// feed to 0.1, half up, from the kept value and not from an SI figure that is rounded already. Feed is first rounded
// up to half a litre by its rule; that amount is what is converted.

namespace core {

enum class WeightUnit { Kilograms, Pounds };
enum class VolumeUnit { Litres, Quarts };
enum class LengthUnit { Metres, Feet };

struct ShownUnits {
    WeightUnit weight = WeightUnit::Kilograms;
    VolumeUnit volume = VolumeUnit::Litres;
    LengthUnit length = LengthUnit::Metres;
    friend bool operator==(const ShownUnits&, const ShownUnits&) = default;
};

QString unitSign(WeightUnit unit); ///< "kg", "lb"
QString unitSign(VolumeUnit unit); ///< "L", "qt"
QString unitSign(LengthUnit unit); ///< "m", "ft"

/// A scale reading: kilograms to 0.01 as it is kept ("32.5"), pounds to 0.1 ("71.7"). Without the unit.
QString weightNumber(Decagrams weight, WeightUnit unit);
/// Tenths of the unit of millionths of a kilogram, half up.
qint64 weightTenths(qint64 millionthsKg, WeightUnit unit);
/// A typed weight, decimal point or comma: kilograms to 0.01, pounds to 0.1; kept to 0.01 kg. What weightNumber()
/// shows in pounds reads back as a weight that shows the same. Only nullopt says that it is no such number; the range
/// is not looked at.
std::optional<Decagrams> parseWeight(QStringView text, WeightUnit unit);

/// Feed as it was given: litres to 0.001 as it is kept ("10.5"), quarts to 0.1 ("11.1"). Without the unit.
QString volumeNumber(Millilitres volume, VolumeUnit unit);
/// As parseWeight(): litres to 0.001, quarts to 0.1; kept to a millilitre.
std::optional<Millilitres> parseVolume(QStringView text, VolumeUnit unit);

/// Tenths of the unit: of feed in half litres.
qint64 feedTenths(qint64 halfLitres, VolumeUnit unit);

/// Tenths of the unit between two points, half up, exactly from the millimetres.
qint64 distanceTenths(MmPoint a, MmPoint b, LengthUnit unit);
/// Tenths of the unit of a length in millimetres, half up.
qint64 lengthTenths(qint64 millimetres, LengthUnit unit);
/// So many kilograms are one of the unit.
double kilogramsIn(WeightUnit unit);
/// So many millimetres are one of the unit.
double millimetresIn(LengthUnit unit);

} // namespace core
