#pragma once

#include <QString>
#include <QStringView>

#include <compare>
#include <optional>

namespace core {

/// Frames of bees or stores, in quarter frames: 3.25 frames = 13. Not recorded is std::nullopt, never 0.
struct Quarters {
    qint32 value = 0;
    friend auto operator<=>(Quarters, Quarters) = default;
    friend Quarters operator+(Quarters a, Quarters b) { return {a.value + b.value}; }
    double frames() const { return value / 4.0; }
};

/// Weight in hundredths of a kilogram (what a hive scale is kept to).
struct Decagrams {
    qint32 value = 0;
    friend auto operator<=>(Decagrams, Decagrams) = default;
    friend Decagrams operator+(Decagrams a, Decagrams b) { return {a.value + b.value}; }
    friend Decagrams operator-(Decagrams a, Decagrams b) { return {a.value - b.value}; }
    double kilograms() const { return value / 100.0; }
};

/// Liquid feed.
struct Millilitres {
    qint32 value = 0;
    friend auto operator<=>(Millilitres, Millilitres) = default;
    double litres() const { return value / 1000.0; }
};

/// Millimetres on a yard's ground.
struct Millimetres {
    qint32 value = 0;
    friend auto operator<=>(Millimetres, Millimetres) = default;
    double metres() const { return value / 1000.0; }
};

/// A point of a yard's plan: millimetres from the yard's origin, x east, y north.
struct MmPoint {
    qint32 x = 0;
    qint32 y = 0;
    friend auto operator<=>(MmPoint, MmPoint) = default;
    friend MmPoint operator+(MmPoint a, MmPoint b) { return {a.x + b.x, a.y + b.y}; }
    friend MmPoint operator-(MmPoint a, MmPoint b) { return {a.x - b.x, a.y - b.y}; }
};

/// Exact squared distance in mm².
qint64 squaredDistance(MmPoint a, MmPoint b);
/// Distance in tenths of a metre, rounded half up, exactly from the millimetres.
qint64 distanceTenths(MmPoint a, MmPoint b);

/// A decimal number kept as an integer count of 10^-decimals, shown without needless zeros: (325, 2) -> "3.25".
QString decimalText(qint64 scaled, int decimals);
/// "3.25" as an integer of 10^-decimals; sign and digits only, no exponent, no blanks, at most `decimals` digits after
/// the point that are not zero (else nullopt), and within qint64.
std::optional<qint64> parseDecimal(QStringView text, int decimals);

QString framesText(Quarters q);     ///< "3.25"
QString kilogramsText(Decagrams w); ///< "32.5"
QString metresText(Millimetres mm); ///< "-2.125"

} // namespace core
