#include "core/rules/question.h"

#include <algorithm>

namespace core::rules {

namespace {

/// 32 kg on the scale: an assumption (common practice in the half year of winter differs with the place; no source).
constexpr double kLightKg = 32;
constexpr int kSeptember = 9;

std::optional<double> number(const std::optional<int>& n) { return n ? std::optional<double>(*n) : std::nullopt; }
std::optional<double> frames(const std::optional<Quarters>& q) {
    return q ? std::optional(q->value / 4.0) : std::nullopt;
}

enum class Fit { Yes, No, NoFigure };

Fit fit(const std::optional<double>& figure, const AskPart& part) {
    if (part.how == AskHow::NotRecorded) return figure ? Fit::No : Fit::Yes;
    if (!figure) return Fit::NoFigure;
    const auto yes = [](bool holds) { return holds ? Fit::Yes : Fit::No; };
    switch (part.how) {
    case AskHow::Below:
        return yes(*figure < part.than);
    case AskHow::AtMost:
        return yes(*figure <= part.than);
    case AskHow::Is:
        return yes(*figure == part.than);
    case AskHow::IsNot:
        return yes(*figure != part.than);
    case AskHow::AtLeast:
        return yes(*figure >= part.than);
    case AskHow::Above:
        return yes(*figure > part.than);
    case AskHow::NotRecorded:
        break;
    }
    return Fit::No;
}

} // namespace

AskRange askRange(AskWhat what) {
    switch (what) {
    case AskWhat::DaysUnvisited:
    case AskWhat::DaysUnweighed:
        return {0, 9999, 0, false};
    case AskWhat::Strength:
    case AskWhat::Stores:
        return {0, 48, 2, false};
    case AskWhat::StrengthClass:
        return {0, 3, 0, true};
    case AskWhat::Queen:
        return {0, 6, 0, true};
    case AskWhat::QueenAge:
        return {0, 20, 0, false};
    case AskWhat::Weight:
        return {0, 300, 2, false};
    case AskWhat::WeighedIn:
        return {1, 12, 0, true};
    case AskWhat::BroodCheckCounts:
    case AskWhat::BroodCheckThisSeason:
    case AskWhat::Held:
        return {0, 1, 0, true};
    case AskWhat::MitesPer100:
        return {0, 100, 1, false};
    case AskWhat::Boxes:
        return {1, 2, 0, false};
    case AskWhat::DueWithin:
        return {-999, 30, 0, false};
    }
    return {};
}

bool fits(AskWhat what, AskHow how) {
    if (how == AskHow::NotRecorded) return true;
    return askRange(what).choice == (how == AskHow::Is || how == AskHow::IsNot);
}

std::optional<double> askedFigure(const Snapshot& s, const ColonyFigures& f, AskWhat what) {
    switch (what) {
    case AskWhat::DaysUnvisited:
        return f.daysUnvisited;
    case AskWhat::Strength:
        return frames(f.strength);
    case AskWhat::StrengthClass:
        return f.strengthClass ? std::optional<double>(static_cast<int>(*f.strengthClass)) : std::nullopt;
    case AskWhat::Queen:
        return f.queen == QueenSeen::Unknown ? std::nullopt : std::optional<double>(static_cast<int>(f.queen));
    case AskWhat::QueenAge:
        return number(f.queenAge);
    case AskWhat::Stores:
        return frames(f.stores);
    case AskWhat::Weight:
        return f.gross ? std::optional(f.gross->value / 100.0) : std::nullopt;
    case AskWhat::WeighedIn:
        return f.weighed ? std::optional<double>(toDate(*f.weighed).month()) : std::nullopt;
    case AskWhat::DaysUnweighed:
        return f.weighed ? std::optional<double>(s.on - *f.weighed) : std::nullopt;
    case AskWhat::BroodCheckCounts:
        return f.checkCounts;
    case AskWhat::BroodCheckThisSeason:
        return f.checkedThisSeason;
    case AskWhat::MitesPer100:
        return f.mitesPer100();
    case AskWhat::Held:
        return f.held();
    case AskWhat::Boxes:
        return f.boxes;
    case AskWhat::DueWithin:
        return f.dueOn ? std::optional<double>(*f.dueOn - s.on) : std::nullopt;
    }
    return std::nullopt;
}

Answer answer(const Snapshot& s, std::span<const ColonyFigures> figures, const Ask& ask) {
    Answer out;
    if (ask.empty()) return out;
    for (const ColonyFigures& f : figures) {
        if (!f.living) continue;
        Fit all = Fit::Yes;
        for (const AskPart& part : ask) {
            const Fit one = fit(askedFigure(s, f, part.what), part);
            if (one == Fit::No) all = Fit::No;
            if (one == Fit::NoFigure && all == Fit::Yes) all = Fit::NoFigure;
        }
        if (all == Fit::Yes) out.found.push_back(f.colony);
        if (all == Fit::NoFigure) ++out.noFigure;
    }
    return out;
}

Ask readyAsk(ReadyAsk which) {
    switch (which) {
    case ReadyAsk::NotVisited:
        return {{AskWhat::DaysUnvisited, AskHow::Above, 14}};
    case ReadyAsk::NoBroodCheck:
        return {{AskWhat::BroodCheckThisSeason, AskHow::Is, 0}};
    case ReadyAsk::OldQueen:
        return {{AskWhat::QueenAge, AskHow::Above, 2}};
    case ReadyAsk::LightInSeptember:
        return {{AskWhat::Weight, AskHow::Below, kLightKg}, {AskWhat::WeighedIn, AskHow::Is, kSeptember}};
    }
    return {};
}

} // namespace core::rules
