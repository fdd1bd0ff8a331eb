#pragma once

#include "core/edit/merge_choices.h"
#include "ui/desk/reading.h"

#include <QString>

#include <vector>

namespace ui::board {

/// One thing that can be asked of the plan here, or taken back.
struct Offer {
    core::MergeAsk ask = core::MergeAsk::Pin;
    bool on = true;      ///< false: what was asked is taken back
    core::ColonyId a, b; ///< Host: `a` becomes the host; Top: the box of `a` comes on top; LeaveOut: `a` alone
    QString text;        ///< of a button: "Pin"
    QString said;        ///< the whole of it, for menus and screen readers: "Pin K2 + K4"
    friend bool operator==(const Offer&, const Offer&) = default;
};

/// Of two colonies: pinned, forbidden; where the plan unites them also who is left out, which is the host and whose box
/// comes on top. Of a forbidden pair only that it is allowed again.
std::vector<Offer> offersOfPair(const desk::Reading& reading, const core::edit::MergeChoices& asked, core::ColonyId a,
                                core::ColonyId b);
/// Left out, or taken in again.
Offer offerOfColony(const desk::Reading& reading, const core::edit::MergeChoices& asked, core::ColonyId colony);
/// That what was asked is taken back.
Offer takingBack(const desk::Reading& reading, const core::MergeChoice& choice);

/// The choices with the offer taken.
core::edit::MergeChoices taken(const core::edit::MergeChoices& asked, const Offer& offer, const QString& why);

/// "K2 + K4 pinned", "K9 left out: requeened last week".
QString choiceText(const desk::Reading& reading, const core::MergeChoice& choice);
/// The label as it is shown that day; of one that lives no more that it is gone.
QString labelOf(const desk::Reading& reading, core::ColonyId colony);

} // namespace ui::board
