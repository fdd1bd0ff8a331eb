#pragma once

#include "core/rules/facts.h"
#include "core/rules/plan.h"

#include <vector>

// What a merge day needs and what it frees, counted from the plan of one yard.

namespace core::rules {

/// What is loaded before leaving, in the order in which it is listed.
enum class KitThing {
    Newspaper, ///< sheets, one a union (common practice, no source)
    Straps,    ///< one a hive that is carried
    Barrow,    ///< one, where a hive is carried: or a second pair of hands
    QueenCages,
    Floors,      ///< of what divides make
    Lids,        ///< likewise
    InnerCovers, ///< likewise
    Boxes,       ///< likewise, of one kind
    SyrupHalfLitres,
    WaterSpray, ///< one: wet paper does not blow away
    Smoker,     ///< one, with fuel, water to put it out, hive tool, brush, gloves
    Pencil      ///< one
};

/// One line: what, and how many. Boxes are of `boxKind` (position in Snapshot::boxKinds); else −1.
struct KitLine {
    KitThing what = KitThing::Newspaper;
    qint64 count = 0;
    qint32 boxKind = -1;
    friend bool operator==(const KitLine&, const KitLine&) = default;
};

/// Parts that come free, by the plan. Every box emptied by consolidating, all of a colony shaken out; a union frees
/// the host's floor, and the lid and inner cover of the hive that is carried.
struct KitFreed {
    int floors = 0, lids = 0, innerCovers = 0;
    std::vector<KitLine> boxes; ///< by kind, KitThing::Boxes
    int boxesInAll() const;
};

struct KitToLoad {
    int unions = 0, shakeOuts = 0, carried = 0, parts = 0; ///< parts: colonies that divides make
    std::vector<KitLine> lines;                            ///< never of count 0
    KitFreed freed;
    /// How many of a thing, over all box kinds; 0 where it is not on the list.
    qint64 of(KitThing what) const;
};

/// `facts`: one a living colony, in the snapshot's order. Nothing to do in the yard: no lines at all.
KitToLoad kitToLoad(const Snapshot& s, const std::vector<ColonyFacts>& facts, const Plan& plan, YardIx yard);

/// A name in the book for what is counted there (model/kit_words.h): "floor", "lid", a box kind's; empty where kit is
/// not counted of it.
QString kitPartOf(const Snapshot& s, const KitLine& line);

} // namespace core::rules
