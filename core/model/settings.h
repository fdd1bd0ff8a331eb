#pragma once

#include "core/base/quantity.h"
#include "core/base/shown_units.h"

#include <QString>

#include <array>

namespace core {

/// A day of any year. Where a year does not have it (29 February), its month's last day is meant.
struct MonthDay {
    int month = 1;
    int day = 1;
    friend bool operator==(MonthDay, MonthDay) = default;
};

/// A decimal setting, exact, in millionths.
struct Millionths {
    qint64 value = 0;
    friend bool operator==(Millionths, Millionths) = default;
    double real() const { return static_cast<double>(value) / 1e6; }
};

enum class StrengthJudge { Mean, Top, Bottom };
enum class BoxOrder { BetterOnTop, WeakerOnTop };
enum class WeakerQueen { Leave, Remove };

/// Thousandths at 0..12 whole frames.
using ValueTable = std::array<int, 13>;

/// Every setting of the book with its default. Names, units, ranges and sources stand in setting_table.h.
struct Settings {
    StrengthJudge strengthJudge = StrengthJudge::Mean;
    int strengthMaxAgeDays = 30;
    Quarters shakeOutMax{8};
    Quarters mediumMin{20};
    Quarters strongMin{32};
    int queenMaxAgeDays = 45;
    int weighMaxAgeDays = 30;
    MonthDay fallStart{8, 20};
    MonthDay fallEnd{10, 20};
    MonthDay seasonStart{5, 1};
    // Holds: only ever stricter than these defaults.
    int checkMinFrames = 3;
    int checkFullFrames = 3;
    int checkMaxAgeDays = 150;
    int checkGraceDays = 30;
    int traceDays = 365;
    int traceMaskedDays = 548;
    int afbOwnResultDays = 42;
    int afbRecheckDays = 60;
    int afbYardBackDays = 60;
    int afbYardAfterDays = 365;
    int efbClearDays = 42;
    int efbBackDays = 42;
    int doubtRecheckDays = 21;
    int doubtBackDays = 42;
    // Cautions
    Millionths mitesSpring{2'000'000}; ///< mites per 100 bees
    Millionths mitesFall{3'000'000};
    Millionths dropSummer{10'000'000}; ///< mites a day on the board
    Millionths dropLate{1'000'000};
    Millionths afbNearM{1'000'000'000};
    Millionths afbRobM{2'000'000'000};
    Millionths moveDriftM{3'000'000};
    Millionths moveStepM{900'000};
    Millionths moveFarM{4'800'000'000};
    // Value of a union
    ValueTable winter{0, 50, 120, 300, 480, 640, 750, 820, 880, 905, 920, 928, 934};
    ValueTable divide{0, 0, 0, 0, 0, 0, 0, 400, 800, 900, 1000, 1000, 1000};
    int gainMin = 50;
    int gainMinQueen = 1;
    Millionths carryPerM{1'000'000}; ///< thousandths per metre carried
    BoxOrder order = BoxOrder::BetterOnTop;
    WeakerQueen weakerQueen = WeakerQueen::Leave;
    int shakePerHost = 1;
    // Feed
    Millionths singleKg{32'000'000};
    Millionths doubleKg{45'000'000};
    Millionths storesKgPerL{1'078'000};
    Millionths floorLidKg{5'000'000};
    Millionths boxKg{5'000'000};
    // Divides, follow-up
    int broodPerPart = 4;
    int beesPerPart = 5;
    int followUnionDays = 5;
    // Papers
    int recordsYears = 5;    ///< that the medicine book is kept
    int sampleLateDays = 21; ///< a sample without an answer is asked after
    // The crew of a merge day
    int crewMinutesPerUnion = 12;
    int crewPeople = 2;
    // How quantities are shown; the book keeps SI
    WeightUnit showWeight = WeightUnit::Kilograms;
    VolumeUnit showVolume = VolumeUnit::Litres;
    LengthUnit showLength = LengthUnit::Metres;

    ShownUnits shown() const { return {showWeight, showVolume, showLength}; }
    friend bool operator==(const Settings&, const Settings&) = default;
};

} // namespace core
