#include "core/rules/divide_dates.h"

#include "core/rules/calc/new_queen.h"

namespace core::rules {

namespace {

constexpr char kCell[] = "cell: MacFawn, Making Splits; swarm-control booklet";
constexpr char kEmergency[] = "raised by the bees: Fell, Morse (abstract); MacFawn, Making Splits";
constexpr char kLaying[] = "emerged to laying: MacFawn, Making Splits; the day to look is an assumption";
constexpr char kCapped[] = "egg to capped worker: life-stage tables; the day to look is an assumption";
constexpr char kPractice[] = "common practice, no source";

// Of a queen in a cage: common practice, no source.
constexpr int kOutFirst = 3, kOutLast = 5;
constexpr int kEggsFirst = 7, kEggsLast = 14;

std::vector<DivideDate> boughtDates(Day divided) {
    return {{DivideCheckKind::QueenOut, {divided + kOutFirst, divided + kOutLast}, divided + kOutLast, kPractice},
            {DivideCheckKind::Eggs, {divided + kEggsFirst, divided + kEggsLast}, divided + kEggsLast, kPractice}};
}

} // namespace

std::vector<DivideDate> divideDates(DivideQueens queens, Day divided) {
    if (queens == DivideQueens::Bought) return boughtDates(divided);
    const bool cells = queens == DivideQueens::Cells;
    const auto days = calc::newQueenDays(cells ? calc::QueenFrom::CellSealed : calc::QueenFrom::QueenLost, divided);
    // A cell that is given is sealed by then: it may open from the next day on.
    const calc::DayRange emerges = cells ? calc::DayRange{divided + 1, days.emerges.last} : days.emerges;
    const int sooner = days.emerges.first - emerges.first;
    const calc::DayRange mayLay{days.mayLay.first - sooner, days.mayLay.last};
    const calc::DayRange capped{mayLay.first + (days.lookAgain - days.look), days.lookAgain};
    return {{DivideCheckKind::CellEmerged, emerges, emerges.last, cells ? kCell : kEmergency},
            {DivideCheckKind::Mated, mayLay, mayLay.first, kLaying},
            {DivideCheckKind::Eggs, mayLay, days.look, kLaying},
            {DivideCheckKind::WorkerBrood, capped, days.lookAgain, kCapped}};
}

const char* divideCheckWords(DivideCheckKind what) {
    switch (what) {
    case DivideCheckKind::CellEmerged:
        return "look whether the queen cell has opened at its tip";
    case DivideCheckKind::QueenOut:
        return "look whether the bought queen is out of her cage";
    case DivideCheckKind::Mated:
        return "from here on she may be mated and lay: leave her alone until the next look";
    case DivideCheckKind::Eggs:
        return "look for eggs, one in a cell";
    case DivideCheckKind::WorkerBrood:
        break;
    }
    return "look whether her brood is capped flat, as a worker's";
}

Sentence sentenceOf(const DivideDate& date) {
    return {"%1; between %2 and %3 (%4).",
            {QString::fromUtf8(divideCheckWords(date.what)), isoText(date.range.first), isoText(date.range.last),
             QString::fromUtf8(date.source)}};
}

} // namespace core::rules
