#pragma once

#include "core/rules/hold_gifts.h"

namespace core::rules {

/// One stay of a hive in one yard, moves within the yard joined; both days included.
struct YardStay {
    ColonyIx colony;
    YardIx yard;
    Day since;
    Day until; ///< of a hive that stands there still: the snapshot's day
};

/// Rule 4.4.2: where hives stood; one that ended other than united stands on until the last gift taken from it.
class Standing {
public:
    Standing(const Snapshot& s, const Gifts& gifts);
    /// In time order.
    std::span<const YardStay> of(ColonyIx colony) const;
    std::span<const YardStay> in(YardIx yard) const;
    bool stoodIn(ColonyIx colony, YardIx yard, Day day) const;

private:
    void groupByYard(size_t yards);
    std::vector<YardStay> m_byColony, m_byYard;
    std::vector<qint32> m_colonyStart, m_yardStart;
};

} // namespace core::rules
