#include "core/report/fields.h"

namespace core::report {

namespace {

constexpr double kRow = 8;        // mm from one row to the next
constexpr double kBetween = 6;    // mm between two fields
constexpr double kAfterWords = 2; // mm to the line, and from the box

double wideOf(const BlockPen& pen, const Field& field, const Type& type) {
    const double words = pen.width(field.words, type);
    if (field.kind == Field::Kind::Words) return words;
    return words + kAfterWords + (field.kind == Field::Kind::Line ? field.line : kTickSide);
}

/// Returns the y below its words.
double setField(BlockPen& pen, double x, double y, double room, const Field& field, const Type& type) {
    const double wordsTop = y + kTickSide - lineHeight(type.pointSize) + 0.6;
    if (field.kind == Field::Kind::Words) return pen.paragraph(x, wordsTop, room, field.words, type);
    if (field.kind == Field::Kind::Tick) {
        pen.frame({x, y, kTickSide, kTickSide}, 0.45);
        const double indent = kTickSide + kAfterWords;
        return pen.paragraph(x + indent, wordsTop, room - indent, field.words, type);
    }
    const double below = pen.paragraph(x, wordsTop, room - field.line - kAfterWords, field.words, type);
    const double at = x + std::min(pen.width(field.words, type), room - field.line - kAfterWords) + kAfterWords;
    pen.stroke({at, y + kTickSide + 0.4}, {at + field.line, y + kTickSide + 0.4}, 0.3);
    return below;
}

} // namespace

double fieldRows(BlockPen& pen, double x, double y, double width, const std::vector<Field>& fields, const Type& type) {
    double at = x;
    double below = y + kRow;
    for (const Field& field : fields) {
        const double wide = wideOf(pen, field, type);
        if (at > x && at + wide > x + width) {
            at = x;
            y = below;
            below = y + kRow;
        }
        below = std::max(below, setField(pen, at, y, x + width - at, field, type) + kRow - kTickSide);
        at += wide + kBetween;
    }
    return fields.empty() ? y : below;
}

} // namespace core::report
