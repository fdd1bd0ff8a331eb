#pragma once

#include "core/rules/facts.h"
#include "core/rules/hold.h"
#include "core/rules/plan.h"

#include <QColor>
#include <QString>

namespace ui::look {

// The rules' words as people read them.

QString holdTitle(core::rules::HoldKind kind);       ///< "Brood not checked"
QString holdWithin(core::rules::HoldKind kind);      ///< the same within a sentence: "brood not checked"
QString queenText(core::QueenSeen queen);            ///< "eggs seen"
QString classText(core::rules::StrengthClass c);     ///< "weak"
QString unresolvedText(core::rules::Unresolved why); ///< "not counted"
QString compassText(int headingDeg);                 ///< "south-east"
QString dueText(core::rules::DueKind what);
QString signsText(core::Signs signs); ///< "chalkbrood, nosema"

/// Spring colonies of thousandths: "4.7".
QString coloniesText(qint64 thousandths);

/// A queen's colour by her year: white for years ending in 1 or 6, yellow 2 and 7, red 3 and 8, green 4 and 9, blue 5
/// and 0. Source of the order: core/rules/calc/queen_mark.h.
struct QueenMark {
    QColor colour;
    QString name;
};
QueenMark queenMark(int year);

} // namespace ui::look
