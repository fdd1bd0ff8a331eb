#pragma once

#include "core/base/day.h"

#include <functional>
#include <iterator>
#include <map>

namespace core::rules {

/// What `judge` says of each of `days`, and between two that differ of further ones, by halves, until the day of the
/// change is known. What changes and changes back between two of `days` is not found. Empty once `stop` says so.
template <class State, class Days>
std::map<Day, State> judgedDays(const Days& days, const std::function<State(Day)>& judge,
                                const std::function<bool()>& stop) {
    std::map<Day, State> judged;
    const auto take = [&](Day day) {
        if (stop && stop()) return false;
        judged.emplace(day, judge(day));
        return true;
    };
    for (const Day day : days)
        if (!take(day)) return {};
    for (auto at = judged.begin(); at != judged.end() && std::next(at) != judged.end();) {
        const auto next = std::next(at);
        if (at->second == next->second || next->first - at->first < 2) {
            at = next;
            continue;
        }
        if (!take(at->first + (next->first - at->first) / 2)) return {};
    }
    return judged;
}

} // namespace core::rules
