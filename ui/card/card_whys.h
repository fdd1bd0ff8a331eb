#pragma once

#include "ui/card/why_list.h"
#include "ui/desk/reading.h"

#include <vector>

namespace ui::card {

/// Each finding of the plan about the colony in its sentence, with its rule and limits; what was given up where it is
/// left alone at risk. Of holds and cautions, which the card says elsewhere, only rule and limits.
std::vector<WhyText> whysOf(const desk::Reading& reading, core::ColonyIx colony);

/// "The best union it could have had: …", worked out now.
QString givenUpText(const desk::Reading& reading, core::ColonyIx colony);

} // namespace ui::card
