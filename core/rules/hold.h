#pragma once

#include "core/model/snapshot.h"
#include "core/rules/reason.h"

#include <QString>

#include <vector>

namespace core::rules {

/// Kinds of hold in the order in which a colony's are listed.
enum class HoldKind { Order, AfbConfirmed, AfbSuspected, AfbContact, AfbYard, Efb, BroodDoubt, BroodNotChecked };
constexpr int kHoldKindCount = 8;

QString holdWord(HoldKind kind); ///< "afb-contact": stable, never translated
/// The plan's letter: O, F, S, C, Y, E, D, B.
QChar holdLetter(HoldKind kind);

/// Why one colony may be in no union, shake-out or divide. One a kind.
struct Hold {
    ColonyIx colony;
    HoldKind kind = HoldKind::BroodNotChecked;
    QString told; ///< every source, link and day: whole sentences
    QString lift; ///< what would lift it, one sentence
    Reason why;   ///< the same as data
    /// Of afb-contact and afb-yard: the sources, past ones too, that it is traced to; each once.
    std::vector<ColonyIx> sources = {};

    QString because() const { return told + u' ' + lift; } ///< all of it
};

/// Rule 4.4: the holds of all living colonies on the snapshot's day, by colony, then kind. Pure.
std::vector<Hold> holds(const Snapshot& s);

} // namespace core::rules
