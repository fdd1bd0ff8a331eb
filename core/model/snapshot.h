#pragma once

#include "core/base/day.h"
#include "core/base/id.h"
#include "core/base/quantity.h"
#include "core/model/settings.h"
#include "core/model/words.h"

#include <QString>

#include <optional>
#include <span>
#include <vector>

namespace core {

/// Position of a row in one of the Snapshot's vectors; typed, so that a yard is never taken for a colony.
template <class Tag> struct Index {
    qint32 value = -1;
    friend auto operator<=>(Index, Index) = default;
};
using YardIx = Index<struct SnapYard>;
using ColonyIx = Index<struct SnapColony>;

struct SnapYard {
    YardId id;
    QString name;
    std::optional<double> latitudeDeg;
    std::optional<double> longitudeDeg;
    MmPoint gate;
    /// A yard of southern latitude: months move by six (rule 4.0).
    bool southern() const { return latitudeDeg.value_or(0) < 0; }
};

struct SnapColony {
    ColonyId id;
    QString label;
    QString shown; ///< how outputs name it on the day asked for: its label, or LABEL@SINCE where that names another
    Day since;
    std::optional<Day> ended; ///< only when on or before the snapshot's day
    EndKind end = EndKind::Dead;
    qint32 boxKind = 0; ///< position in Snapshot::boxKinds
    int broodBoxes = 1; ///< at first; see boxesAt
    std::optional<int> queenBorn;
    bool living() const { return !ended; }
};

struct SnapBoxKind {
    BoxKindId id;
    QString name;
    int frames = 10;
    std::optional<int> widthMm; ///< outside
    std::optional<int> lengthMm;
};

/// The hive of `colony` stood on this stand from `since` to `until`, both days included (on the day of a carry it
/// stands on both). `until` is not set for the last stay of a living colony. A carry dated on the colony's `since`
/// makes a first stay of that one day; one dated on its `ended` a last stay of that one day.
struct SnapStay {
    ColonyIx colony;
    YardIx yard;
    StandId stand;
    QString standName;
    MmPoint at;
    int headingDeg = 180; ///< resolved: a carry that left it blank keeps the one before
    Day since;
    std::optional<Day> until;
};

struct SnapTransfer {
    Day day;
    ColonyIx from;
    ColonyIx to;
    TransferKind what = TransferKind::Frames;
};

struct SnapLineage {
    Day day;
    LineageHow how = LineageHow::United;
    ColonyIx colony;
    ColonyIx into;
};

struct SnapResult {
    Day day;
    ColonyIx colony; ///< value < 0: of a yard
    YardIx yard;     ///< value < 0: of a colony
    Disease disease = Disease::Afb;
    Verdict verdict = Verdict::Negative;
    Method method = Method::Laboratory;
    QString by;
    QString paper;
};

struct SnapTreatment {
    Day day;
    ColonyIx colony; ///< value < 0: of a yard
    YardIx yard;     ///< value < 0: of a colony
    bool antibiotic = false;
    std::optional<int> days;
    QString product;
};

/// A visit that examined brood for disease (broodChecked >= 1).
struct SnapCheck {
    ColonyIx colony;
    Day day;
    qint16 checked = 0;
    qint16 broodFrames = -1; ///< −1: not recorded
    Signs signs;             ///< of the same visit
};

/// A visit with signs. One without afb, efb or brood-doubt may be left out: such signs count at a colony's latest visit
/// alone (SnapLatest::visitSigns).
struct SnapSign {
    ColonyIx colony;
    Day day;
    Signs signs;
};

/// The latest visit with any bees_* count.
struct SnapCount {
    Day day;
    std::optional<Quarters> top, bottom, upperTop, upperBottom;
    std::optional<Quarters> stores, upperStores;
    std::optional<int> broodFrames;
    int boxes = 1; ///< brood boxes on that day, by rule 4.0
};
struct SnapWeight {
    Day day;
    Decagrams gross;
    int supers = 0; ///< of that visit; not recorded: 0
};
struct SnapStores {
    Day day;
    std::optional<Quarters> stores, upper;
};
struct SnapBrood {
    Day day;
    int broodFrames = 0;
};
struct SnapMites {
    Day day;
    int mites = 0;
    int sample = 0;
};
struct SnapQueen {
    Day day;
    QueenSeen seen = QueenSeen::Unknown;
};

/// The latest of each kind of observation on or before the snapshot's day, whether or not rules still find it valid.
struct SnapLatest {
    std::optional<Day> visit; ///< the latest visit of any kind
    Signs visitSigns;         ///< its signs
    std::optional<SnapCount> count;
    std::optional<SnapWeight> weight;
    std::optional<SnapStores> stores;
    std::optional<SnapBrood> brood;
    std::optional<SnapMites> mites;
    /// Visits with a queen value, oldest first, from the latest `seen`, `eggs`, `virgin` or `laying-workers` on (from
    /// the first visit with one where there is none of these).
    std::vector<SnapQueen> queen;
    int boxes = 1; ///< brood boxes on the snapshot's day, by rule 4.0
};

/// All that a rule may see on one day: only what is dated on or before `on`, read once by the store. Colonies are in
/// natural order of `shown` among the living, then the ended; all other vectors are ordered as said.
struct Snapshot {
    Day on;
    Settings settings;
    std::vector<SnapYard> yards; ///< natural order of name
    std::vector<SnapBoxKind> boxKinds;
    std::vector<SnapColony> colonies;      ///< since <= on: first the living, then the ended, each in natural order
    std::vector<SnapStay> stays;           ///< by colony, then in time order
    std::vector<SnapTransfer> transfers;   ///< by day
    std::vector<SnapLineage> lineage;      ///< by day
    std::vector<SnapResult> results;       ///< by day
    std::vector<SnapTreatment> treatments; ///< by day
    /// By colony, then day. May leave out those that no hold or caution on the day can ask for.
    std::vector<SnapCheck> checks;
    std::vector<SnapSign> signs;    ///< by colony, then day
    std::vector<SnapLatest> latest; ///< one a colony, same order as colonies; empty for the ended

    const SnapColony& colony(ColonyIx ix) const { return colonies[static_cast<size_t>(ix.value)]; }
    const SnapYard& yard(YardIx ix) const { return yards[static_cast<size_t>(ix.value)]; }
    const SnapLatest& latestOf(ColonyIx ix) const { return latest[static_cast<size_t>(ix.value)]; }
    const SnapBoxKind& boxKindOf(ColonyIx ix) const { return boxKinds[static_cast<size_t>(colony(ix).boxKind)]; }
    /// The stays of one colony in time order. Binary search.
    std::span<const SnapStay> staysOf(ColonyIx ix) const;
    std::span<const SnapCheck> checksOf(ColonyIx ix) const;
    std::span<const SnapSign> signsOf(ColonyIx ix) const;
    /// Where a colony stands on the snapshot's day (its last stay); nullptr when it has none.
    const SnapStay* placeOf(ColonyIx ix) const;
    /// The colony, living or ended, that LABEL (the latest `since` of that label) or LABEL@SINCE means on the
    /// snapshot's day, matched without regard to case.
    std::optional<ColonyIx> colonyNamed(QStringView name) const;
    /// The same, where it is living.
    std::optional<ColonyIx> livingNamed(QStringView name) const;
    std::optional<YardIx> yardNamed(QStringView name) const;
    size_t livingCount() const;
};

} // namespace core
