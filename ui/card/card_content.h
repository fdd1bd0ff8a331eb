#pragma once

#include "core/model/rows.h"
#include "ui/card/elevation.h"
#include "ui/desk/reading.h"

#include <QString>
#include <QStringList>

#include <utility>
#include <vector>

namespace ui::card {

struct HoldText {
    QString letter;
    QString title;
    QString because; ///< without its end
    QString lift;    ///< what would lift it
};

/// What the colony card says, as words.
struct CardContent {
    QString label;
    QString place;                                  ///< "Kiln Field · stand 4 · entrance south"
    std::vector<std::pair<QString, QString>> facts; ///< "Strength", "5.25 frames on 14 Sep, medium"
    std::vector<HoldText> holds;
    QStringList cautions;
    std::vector<std::pair<QString, QString>> visits; ///< day, what was seen; newest first
    Side side;
};

/// `visits`: newest first, those after the reading's day are passed over.
CardContent cardOf(const desk::Reading& reading, core::ColonyIx colony, const std::vector<core::Visit>& visits);

/// "5.25 frames, stores 3, eggs seen, 29 kg"
QString visitText(const core::Visit& visit);

} // namespace ui::card
