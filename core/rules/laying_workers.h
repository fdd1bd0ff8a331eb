#pragma once

#include "core/rules/reason.h"

// Colonies whose workers lay, and those that lack a queen in summer: what to do beside the plan. Common practice, no
// source, but for the days. Patterns, so that paper can say them in Spanish (core/report/worksheet_spanish_spring.cpp).

namespace core::rules {

/// Of a procedure, a part: its heading and its sentences.
struct Procedure {
    const char* heading = "";
    Sentences sentences;
};

/// Laying workers, in the order to read and do it. Such a colony is in no union, shake-out or divide (rules 4.7.3, 4.9,
/// 4.13) until a queen, eggs or a virgin is noted (rule 4.2).
std::vector<Procedure> layingWorkerProcedure();

/// For a colony that lacks a queen: other ways than a union, with the days of a queen raised from brood given that day.
Sentences queenTroubleWays(Day given);

} // namespace core::rules
