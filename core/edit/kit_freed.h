#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"

// Kit that comes free when a colony ends, counted into its yard in the same change, so that one undo takes both back.
// It comes in as `to-clean`, never as usable: nothing is offered that nobody has looked over and cleaned since bees
// lived in it. Off a colony that is held (any hold but a missing brood check), off both of a union where one is, and
// off one that was destroyed, it is quarantined with its colony. Ends of more than a year ago free nothing: that kit is
// long counted elsewhere. `c` is the book before the change.

namespace core::edit {

/// A union: the host's floor, lid and inner cover of the hive that is carried, and a box of each that is in two (it is
/// brought down to one first). A shake-out: floor, lid, inner cover and all boxes.
void addKitOfUnion(const EditContext& c, const Lineage& lineage, ChangeSet& change);
/// Dead or destroyed: floor, lid, inner cover and all boxes. Sold: its kit went with it.
void addKitOfEnd(const EditContext& c, const Colony& colony, Day day, EndKind how, ChangeSet& change);

/// The end, or the union, is taken back: what it freed goes from the lots of those colonies, as far as it lies to be
/// cleaned, usable or in quarantine still.
void takeKitBack(const EditContext& c, const Colony& ended, ChangeSet& change);
void takeKitBack(const EditContext& c, const Lineage& lineage, ChangeSet& change);

} // namespace core::edit
