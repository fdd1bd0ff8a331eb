#pragma once

#include "core/base/day.h"

#include <cstddef>
#include <span>
#include <vector>

// Rows of a drawing in time: each colony a line from left to right, each gift an upright stroke between two of them.

namespace core::report {

/// A line from its first to its last day.
struct TimeRow {
    Day from;
    Day until;
};

/// A stroke between two rows (by position in the list of rows, different ones) on its day.
struct TimeStroke {
    Day day;
    size_t a = 0;
    size_t b = 0;
};

/// How often strokes go through the line of a row that lies between their two, in this order of rows (each once).
int crossingsOf(std::span<const TimeRow> rows, std::span<const TimeStroke> strokes, std::span<const size_t> order);

/// An order of the rows, begun as they are given, in which swapping no two neighbours leaves fewer crossings. The least
/// of all it need not be.
std::vector<size_t> quietOrder(std::span<const TimeRow> rows, std::span<const TimeStroke> strokes);

} // namespace core::report
