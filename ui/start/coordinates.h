#pragma once

#include "core/base/quantity.h"

#include <QString>
#include <QStringView>

#include <optional>

namespace ui::start {

/// Latitude and longitude as people type them: "51.9", "51,9", "-33.5", "33.5 S", "N 51° 54'", "51°54'30\" N". South
/// and west are negative; a sign together with a letter is no coordinate. nullopt for all else and out of range.
std::optional<double> parseLatitude(QStringView typed);
std::optional<double> parseLongitude(QStringView typed);
/// "51.9° N", "2.1° W": what the parsers read; up to six decimals.
QString latitudeText(double degrees);
QString longitudeText(double degrees);

/// Metres with a decimal point or comma, to the millimetre, within 10000 m of the yard's origin.
std::optional<qint32> parseMetresMm(QStringView typed);

} // namespace ui::start
