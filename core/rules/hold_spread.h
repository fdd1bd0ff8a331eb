#pragma once

#include "core/rules/hold_gifts.h"

namespace core::rules {

/// Carries something along gifts in the order of days, the gifts of one day in any order, touching only the colonies
/// that it reaches. Reused from run to run; each run leaves it clean.
class Spread {
public:
    Spread(const Gifts& gifts, size_t colonies);

    /// What this colony gives from that day on is looked at, if not from earlier on. Only before run().
    void touch(ColonyIx colony, Day from);

    /// `passes(ColonyIx giver, Day)`: whether what it gives that day carries; asked again when it received that day.
    /// `receives(const Gift&)`: notes the gift; true where the receiver may now pass on what it did not before.
    template <class Passes, class Receives> void run(Passes passes, Receives receives);

private:
    struct Event {
        Day day;
        qint32 colony;
        friend bool operator<(Event a, Event b) { return a.day > b.day; } // the earliest on top of the heap
    };
    std::span<const Gift> rest(qint32 colony) const; ///< its gifts not yet passed
    void push(qint32 colony);
    void arrive(qint32 colony, Day day);
    void collect(Day day);
    void finish();
    void clean();

    const Gifts& m_gifts;
    std::vector<qint32> m_next; // of each colony: its first gift not yet passed; −1: not touched
    std::vector<Day> m_passed;  // the last day on which it passed on
    std::vector<Event> m_heap;
    std::vector<qint32> m_touched;
    std::vector<qint32> m_today;
};

template <class Passes, class Receives> void Spread::run(Passes passes, Receives receives) {
    while (!m_heap.empty()) {
        const Day day = m_heap.front().day;
        collect(day);
        for (size_t i = 0; i < m_today.size(); ++i) {
            const qint32 giver = m_today[i];
            if (m_passed[static_cast<size_t>(giver)] == day || !passes(ColonyIx{giver}, day)) continue;
            m_passed[static_cast<size_t>(giver)] = day;
            for (const Gift& gift : rest(giver)) {
                if (gift.day != day) break;
                if (receives(gift)) arrive(gift.to.value, day);
            }
        }
        finish();
    }
    clean();
}

} // namespace core::rules
