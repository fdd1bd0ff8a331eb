#pragma once

#include "core/report/block.h"

#include <QString>

#include <vector>

namespace core::report {

/// Something to fill in by hand: a box to tick and its words, words and a line to write on, or words alone.
struct Field {
    enum class Kind { Tick, Line, Words };
    Kind kind = Kind::Tick;
    QString words;
    double line = 0; ///< mm to write on, after the words
};
inline Field tickField(const QString& words) { return {Field::Kind::Tick, words, 0}; }
inline Field lineField(const QString& words, double mm) { return {Field::Kind::Line, words, mm}; }
inline Field wordsField(const QString& words) { return {Field::Kind::Words, words, 0}; }

/// One after the other from x on, in as many rows as they need, each row high enough for a gloved hand. Returns the y
/// below.
double fieldRows(BlockPen& pen, double x, double y, double width, const std::vector<Field>& fields,
                 const Type& type = kLarge);

} // namespace core::report
