#pragma once

#include "ui/plan/drag_machine.h"

#include <QPoint>
#include <QString>

#include <optional>
#include <vector>

namespace ui::plan {

/// To which hives the foragers of an emptied stand are likely to drift.
struct Drift {
    struct To {
        core::MmPoint at;
        QString metres; ///< "1.2 m"
        bool held = false;
        friend bool operator==(const To&, const To&) = default;
    };
    core::MmPoint from;
    std::vector<To> to;
    friend bool operator==(const Drift&, const Drift&) = default;
};

/// What is said and drawn of hives in the hand.
struct CarryWords {
    QString line;          ///< for the status line
    QString beside;        ///< beside the gripped hive, a few words; empty: nothing
    QString caution;       ///< a second line there, in orange
    bool refused = false;  ///< they cannot be set down there
    bool byHold = false;   ///< refused by a hold: hatched
    bool proposes = false; ///< set down there, something else than a carry is proposed
    std::vector<Drift> drift;
};

/// Knows the rules and what is around the plan, where hives are in the hand.
class CarryGuide {
public:
    virtual ~CarryGuide() = default;
    virtual CarryWords wordsOf(const Carry& carry) = 0;
    /// The yard that is shown at this point of the screen, outside the plan.
    virtual std::optional<core::YardId> yardAt(const QPoint& global) = 0;
    /// The hand is empty again.
    virtual void emptied() = 0;
};

} // namespace ui::plan
