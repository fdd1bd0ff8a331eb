#pragma once

#include "ui/look/colours.h"

namespace ui::look {

/// What stands in a yard besides hives. Graphics alone, at least 3 to 1 on paper; no text has these, and nothing is
/// told by them only.
struct GroundColours {
    QColor leaf;  ///< hedges and trees
    QColor water; ///< ponds and brooks
    QColor built; ///< fences, tracks, sheds
};

/// Of the light or dark window, or of black print.
GroundColours groundColours(const Colours& c);

} // namespace ui::look
