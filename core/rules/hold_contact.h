#pragma once

#include "core/rules/hold_sources.h"
#include "core/rules/hold_spread.h"

#include <map>

namespace core::rules {

/// Why a colony is held for contact with one source.
struct ContactFact {
    ColonyIx colony;
    qint32 source = 0; ///< position in the list of sources
    Day last;          ///< its last contact
    /// Each the gifts that lead from the source to the colony, the colony's own first, or the other way where it gave;
    /// the latest contact first.
    std::vector<std::vector<Gift>> chains;
};

/// Rules 4.4.7 and 4.4.8: who is exposed by a source and not answered.
class ContactTrace {
public:
    ContactTrace(const Evidence& e, Spread& spread);
    /// Adds a fact for each living colony that the source (`sources[at]`) holds.
    void trace(const std::vector<Source>& sources, qint32 at, std::vector<ContactFact>& facts);

private:
    struct Contact {
        Gift gift;
        qint32 before;  // the contact through which the giver was exposed; −1: it is the source or gave to it
        qint32 earlier; // of the same receiver; −1: none
    };
    struct Gave { // to the source, or to what became the source
        Gift gift;
        qint32 through; // of `gift.to`, where that is not the source itself: its own entry
    };
    struct Part { // a colony that counts as the source, up to a day
        ColonyIx colony;
        Day until;
        qint32 through; // in m_gave, how it became the source's; −1: the source
    };
    void findGivers();
    void addGiver(const Gift& gift, qint32 through);
    std::optional<Day> lastContact(ColonyIx colony) const;
    bool answered(ColonyIx colony, Day day) const;
    bool passes(ColonyIx giver, Day day) const;
    bool receives(const Gift& gift);
    void collect(qint32 at, std::vector<ContactFact>& facts);
    ContactFact factOf(ColonyIx colony, qint32 at) const;
    void appendGave(ColonyIx giver, std::vector<Gift>& chain) const;
    void clean();

    const Evidence& e;
    Spread& m_spread;
    const Source* m_source = nullptr;
    std::vector<Contact> m_contacts;
    std::vector<Gave> m_gave;
    std::vector<Part> m_parts;
    /// The latest gift to a past source after its window: it exposes nobody, but an exposed giver must answer after it.
    std::map<ColonyIx, Gift> m_gaveLate;
    std::vector<qint32> m_lastContact; // of each colony in m_contacts, −1: none
    std::vector<qint32> m_lastGave;    // of each colony in m_gave, −1: none
    std::vector<Day> m_partUntil;      // of each colony in m_parts
    std::vector<ColonyIx> m_exposed;
};

} // namespace core::rules
