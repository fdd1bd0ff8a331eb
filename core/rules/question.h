#pragma once

#include "core/rules/colony_figures.h"

#include <QString>

#include <array>
#include <optional>
#include <span>
#include <vector>

// Questions asked of the book: conditions over what lists show of a colony, all of which must hold. No rule reads them.

namespace core::rules {

enum class AskWhat {
    DaysUnvisited,
    Strength,      ///< frames
    StrengthClass, ///< choice: words of StrengthClass
    Queen,         ///< choice: words of QueenSeen
    QueenAge,      ///< years
    Stores,        ///< frames
    Weight,        ///< kg, the last weighing
    WeighedIn,     ///< choice: month of the last weighing
    DaysUnweighed,
    BroodCheckCounts,     ///< choice: no, yes
    BroodCheckThisSeason, ///< choice: no, yes
    MitesPer100,
    Held, ///< choice: no, yes
    Boxes,
    DueWithin ///< days to the next check due; overdue is below 0
};
constexpr int kAskWhatCount = 15;

enum class AskHow { Below, AtMost, Is, IsNot, AtLeast, Above, NotRecorded };
constexpr int kAskHowCount = 7;

/// One condition. `than`: in frames, kg, years, days or mites in 100 bees; of a choice its position; of NotRecorded 0.
struct AskPart {
    AskWhat what = AskWhat::DaysUnvisited;
    AskHow how = AskHow::Above;
    double than = 0;
    friend bool operator==(const AskPart&, const AskPart&) = default;
};
using Ask = std::vector<AskPart>;
constexpr size_t kMostAskParts = 4;

/// What may be typed for `than`.
struct AskRange {
    double least = 0;
    double most = 0;
    int decimals = 0;
    bool choice = false; ///< positions least..most
};
AskRange askRange(AskWhat what);
/// Choices are compared with Is and IsNot alone, figures with all but these two; either may be not recorded.
bool fits(AskWhat what, AskHow how);

/// The figure of a colony; nullopt: not recorded.
std::optional<double> askedFigure(const Snapshot& s, const ColonyFigures& f, AskWhat what);

struct Answer {
    std::vector<ColonyIx> found; ///< living, in the snapshot's order
    int noFigure = 0;            ///< of which a figure is not recorded, and nothing else speaks against them
    friend bool operator==(const Answer&, const Answer&) = default;
};
/// An empty question finds nothing.
Answer answer(const Snapshot& s, std::span<const ColonyFigures> figures, const Ask& ask);

/// {"all":[{"what":"weight","how":"below","than":32}]}; words stable, never translated.
QString askJson(const Ask& ask);
/// Nothing where it is not such a text, has no condition or too many, or one that does not fit.
std::optional<Ask> readAsk(const QString& json);

/// Questions that are offered: an assumption of what is asked often.
enum class ReadyAsk { NotVisited, NoBroodCheck, OldQueen, LightInSeptember };
constexpr int kReadyAskCount = 4;
Ask readyAsk(ReadyAsk which);

} // namespace core::rules
