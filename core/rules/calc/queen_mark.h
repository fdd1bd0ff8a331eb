#pragma once

namespace core::rules::calc {

enum class QueenMark { White, Yellow, Red, Green, Blue };

/// The colour of a queen reared in that year: white for years that end in 1 or 6, yellow 2 and 7, red 3 and 8, green 4
/// and 9, blue 5 and 0. The year of rearing, not of purchase: a queen of the southern spring may carry the colour of
/// the calendar year before. Source: Launceston Beekeepers, Queen bee marking; badbeekeepingblog.com, 11 June 2019.
constexpr QueenMark queenMarkOf(int yearReared) {
    constexpr QueenMark kByDigit[] = {QueenMark::Blue, QueenMark::White, QueenMark::Yellow, QueenMark::Red,
                                      QueenMark::Green};
    return kByDigit[yearReared % 5];
}

/// "white", "yellow", "red", "green", "blue": a word for files and tests, not for people.
const char* markWord(QueenMark mark);

} // namespace core::rules::calc
