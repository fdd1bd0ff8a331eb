#include "core/rules/calc/new_queen.h"

#include "core/rules/calc/brood_days.h"

namespace core::rules::calc {

namespace {

DayRange emergence(QueenFrom from, Day day) {
    if (from == QueenFrom::QueenLost) return {day + 11, day + 17};
    if (from == QueenFrom::CellSealed) return {day + 7, day + 8};
    return {day, day};
}

DayRange later(const DayRange& from, int least, int most) { return {from.first + least, from.last + most}; }

constexpr int kWorkerSealed = static_cast<int>(kWorkerDays.sealed);
constexpr int kWorkerEmerges = static_cast<int>(kWorkerDays.emerges);

} // namespace

NewQueenDays newQueenDays(QueenFrom from, Day day) {
    NewQueenDays days;
    days.emerges = emergence(from, day);
    days.mayLay = later(days.emerges, 10, 14);
    days.look = days.mayLay.last;
    days.lookAgain = days.look + kWorkerSealed;
    days.firstWorkers = later(days.mayLay, kWorkerEmerges, kWorkerEmerges);
    return days;
}

DayRange layingWorkersFrom(Day queenLost) {
    const Day noOpenBrood = queenLost + kWorkerSealed;
    return {noOpenBrood + 14, noOpenBrood + 21};
}

} // namespace core::rules::calc
