#pragma once

#include "core/rules/hold_contact.h"
#include "core/rules/hold_efb.h"
#include "core/rules/hold_order.h"
#include "core/rules/hold_reach.h"
#include "core/rules/hold_unchecked.h"
#include "core/rules/hold_words.h"

namespace core::rules {

// Why a colony is held, in whole sentences that name every source, link and day, and last what would lift it. The
// facts are those of one colony and one kind.

Told orderReason(const Evidence& e, std::span<const OrderFact> facts);
Told confirmedReason(const Evidence& e, ColonyIx colony);
Told suspectedReason(const Evidence& e, ColonyIx colony);
Told contactReason(const Evidence& e, const std::vector<Source>& sources, std::span<const ContactFact> facts);
Told reachReason(const Evidence& e, const std::vector<Source>& sources, std::span<const ReachFact> facts);
Told efbReason(const Evidence& e, const EventFact& fact);
Told doubtReason(const Evidence& e, const EventFact& fact);
Told uncheckedReason(const Evidence& e, const UncheckedFact& fact);

} // namespace core::rules
