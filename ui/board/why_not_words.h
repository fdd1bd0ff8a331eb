#pragma once

#include "ui/desk/reading.h"

#include <QString>
#include <QStringList>

namespace ui::board {

/// Why two colonies are not united, or what speaks for it.
struct WhyNotText {
    QString title; ///< "K2 and K7"
    QStringList lines;
    bool mayUnite = false; ///< they could be pinned
};
/// What rule 4.7 says of the two, what was asked of them, and, where they may unite and the plan unites them otherwise,
/// what the rest would give up. Of one yard that costs a plan of its own. Throws Error(BadData): twice the same.
WhyNotText whyNot(const desk::Reading& reading, core::ColonyIx a, core::ColonyIx b);

} // namespace ui::board
