#pragma once

#include "core/edit/divide_day.h"
#include "core/rules/divide_work.h"
#include "ui/desk/desk.h"

#include <QString>

#include <optional>
#include <vector>

namespace ui::spring {

/// One divide of the merge day shown: to be done, left whole, or written back.
struct DivideLine {
    core::ColonyId colony;
    QString label;
    int parts = 1; ///< 1: left whole
    int most = 1;  ///< what the rule allows; 1: not known any more
    std::vector<core::rules::NewPlace> places;
    core::MmPoint at; ///< the mother's
    std::optional<core::StripOutcome> outcome;
    QString note;
    QString text; ///< "into 3: stand 12, 2.0 m north; …"

    bool leftWhole() const { return !outcome && parts < 2; }
};

struct DivideDay {
    int variant = 1;
    std::optional<core::DivideQueens> queens;
    std::vector<core::DivideChoice> choices;
    std::vector<DivideLine> lines; ///< those of the plan, left whole, written back; each in its order
    bool closed = false;           ///< something was written back: what is asked stays
};

/// Of the yard and day that the desk shows. Throws Error(Book).
DivideDay divideDay(const desk::Desk& desk);

/// What is asked when one colony is to come to so many parts (1: left whole; `most`: as the rule says).
core::edit::DividesAsked withParts(const desk::Desk& desk, const DivideDay& day, const DivideLine& line, int parts);
core::edit::DividesAsked withQueens(const desk::Desk& desk, const DivideDay& day,
                                    std::optional<core::DivideQueens> queens);

} // namespace ui::spring
