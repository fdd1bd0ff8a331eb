#pragma once

#include "core/rules/hold_sources.h"
#include "core/rules/hold_spread.h"

namespace core::rules {

/// A stay of a hive in one of a source's yards, within the days that count (rule 4.4.9).
struct ReachStay {
    ColonyIx colony;
    YardIx yard;
    Day arrived;
    Day until;      ///< its last day there
    Day sourceLast; ///< the source's last day there
    Day first;      ///< the first day that counts
};

/// Why a colony is held for the reach of one source.
struct ReachFact {
    struct Chain {
        std::vector<Gift> gifts;        ///< back from the colony, its own first
        std::optional<ReachStay> stood; ///< of the last giver, where it is not the source
    };
    ColonyIx colony;
    qint32 source = 0;   ///< position in the list of sources
    Day last;            ///< its last reach
    bool byGift = false; ///< the last reach is a gift
    std::vector<ReachStay> stays;
    std::vector<Chain> chains; ///< the latest gift first
};

/// Rule 4.4.9: who stands or stood in a source's yards, or received from one that did, and is not cleared.
class ReachTrace {
public:
    ReachTrace(const Evidence& e, Spread& spread);
    /// Adds a fact for each living colony that the source (`sources[at]`) holds.
    void trace(const std::vector<Source>& sources, qint32 at, std::vector<ReachFact>& facts);

private:
    struct Received {
        Gift gift;
        qint32 before;  // what had brought the giver in reach; −1: it is the source or stood there
        qint32 earlier; // of the same receiver; −1: none
    };
    struct Last {
        Day day;
        bool byGift;
    };
    struct SourceYard {
        YardIx yard;
        Day last;
    };
    std::vector<SourceYard> sourceYards() const;
    void findStays();
    std::span<const ReachStay> staysOf(ColonyIx colony) const;
    std::optional<Last> lastReach(ColonyIx colony, Day day) const;
    bool cleared(ColonyIx colony, Last last, Day day) const;
    bool passes(ColonyIx giver, Day day) const;
    bool receives(const Gift& gift);
    void collect(qint32 at, std::vector<ReachFact>& facts);
    ReachFact factOf(ColonyIx colony, qint32 at, Last last) const;
    ReachFact::Chain chainOf(qint32 received) const;

    const Evidence& e;
    Spread& m_spread;
    const Source* m_source = nullptr;
    Day m_from;                     // the first day that counts
    std::vector<ReachStay> m_stays; // by colony, then arrival
    std::vector<Received> m_received;
    std::vector<qint32> m_lastReceived; // of each colony in m_received; −1: none
    std::vector<ColonyIx> m_receivers;
};

} // namespace core::rules
