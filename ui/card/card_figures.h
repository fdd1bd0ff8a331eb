#pragma once

#include "ui/desk/reading.h"

#include <QString>

#include <vector>

namespace ui::card {

/// A figure worked out from what was noted, with where it comes from.
struct CardFigure {
    QString name;   ///< "Bees"
    QString text;   ///< "about 7,400 to 13,100"
    QString source; ///< shown when asked
};

/// Bees, brood, stores, mites and the days of a new queen, as far as something was noted (core/rules/calc).
std::vector<CardFigure> figuresOf(const desk::Reading& reading, core::ColonyIx colony);

/// "Mites in this yard: 2.1 in 100 on average over 8 colonies (1.0 to 3.2)."; empty without a sample of its colonies
/// young enough for rule 4.5.
QString yardMitesText(const desk::Reading& reading, core::YardIx yard);
QString yardMitesSource();

} // namespace ui::card
