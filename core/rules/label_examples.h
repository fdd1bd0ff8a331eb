#pragma once

#include <QString>

#include <vector>

namespace core::rules {

/// What one label says, as an example: of that product and place, not of the substance. The label of the product at
/// hand decides.
struct LabelExample {
    const char* substance; ///< as it is found in what is typed: "thymol"
    const char* product;   ///< kind, place, year
    const char* says;
    const char* source;
};

/// Of substances whose name the text holds, without regard to case; of others none.
std::vector<LabelExample> labelExamples(const QString& substance);

/// As one text for a form; empty: no example is known.
QString labelExamplesText(const QString& substance);

} // namespace core::rules
