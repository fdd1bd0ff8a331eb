#include "core/edit/kit_freed.h"

#include "core/edit/edit_checks.h"
#include "core/edit/kit_lots.h"
#include "core/edit/row_change.h"
#include "core/model/kit_words.h"

#include <algorithm>

namespace core::edit {

namespace {

constexpr int kCountedDays = 365;

/// Parts that come free off one colony.
struct Freed {
    ColonyId colony;
    QString part;
    int count = 0;
};

QString boxName(const EditContext& c, const Colony& colony) {
    const auto kind = c.boxKind(colony.box);
    return kind ? kind->name : QString();
}

std::vector<Freed> wholeHive(const EditContext& c, const Colony& colony, Day day) {
    return {{colony.id, kit::kFloor, 1},
            {colony.id, kit::kLid, 1},
            {colony.id, kit::kInnerCover, 1},
            {colony.id, boxName(c, colony), c.boxesAt(colony.id, day)}};
}

/// Boxes before the union, which itself makes the host's two.
int boxesBefore(const EditContext& c, const Colony& colony, const Lineage& lineage) {
    const auto visit = c.visitOn(colony.id, lineage.day);
    if (visit && visit->boxes) return *visit->boxes;
    return lineage.day > colony.since ? c.boxesAt(colony.id, lineage.day - 1) : colony.broodBoxes;
}

std::vector<Freed> ofUnion(const EditContext& c, const Lineage& lineage) {
    const Colony moved = needColony(c, lineage.colony);
    if (lineage.how == LineageHow::ShakenOut) return wholeHive(c, moved, lineage.day);
    const Colony host = needColony(c, lineage.into);
    std::vector<Freed> freed{{moved.id, kit::kFloor, 1}, {moved.id, kit::kLid, 1}, {moved.id, kit::kInnerCover, 1}};
    for (const Colony& colony : {moved, host})
        if (boxesBefore(c, colony, lineage) == 2) freed.push_back({colony.id, boxName(c, colony), 1});
    return freed;
}

std::optional<YardId> yardOf(const EditContext& c, ColonyId colony) {
    const auto places = c.placementsOf(colony);
    const auto stand = places.empty() ? std::nullopt : c.stand(places.back().stand);
    return stand ? std::optional(stand->yard) : std::nullopt;
}

void addLots(const EditContext& c, YardId yard, const std::vector<Freed>& freed, bool apart, ChangeSet& change) {
    qint64 next = c.nextId(Table::Kit);
    for (const Freed& f : freed) {
        if (f.part.isEmpty() || f.count == 0) continue;
        change.rows.push_back(
            added(Kit{next++, yard, f.part, apart ? kit::kQuarantined : kit::kToClean, f.colony, f.count}));
    }
    if (apart) change.text = Edits::tr("%1; its kit is quarantined").arg(change.text);
}

bool counted(const EditContext& c, Day day) { return c.today() - day <= kCountedDays; }

void takeLots(const EditContext& c, const std::vector<Freed>& freed, ChangeSet& change) {
    std::vector<Kit> lots;
    c.each<Kit>([&](const Kit& lot) {
        const bool of = std::any_of(freed.begin(), freed.end(), [&](const Freed& f) { return lot.colony == f.colony; });
        if (of && lot.state != kit::kBurned && lot.state != kit::kSterilised) lots.push_back(lot);
    });
    std::reverse(lots.begin(), lots.end()); // the latest first
    for (const Freed& f : freed) {
        std::vector<Kit> its;
        for (const Kit& lot : lots)
            if (lot.colony == f.colony && lot.part == f.part) its.push_back(lot);
        for (const KitPiece& piece : firstOf(its, f.count)) takeAway(piece, change);
    }
}

} // namespace

void addKitOfUnion(const EditContext& c, const Lineage& lineage, ChangeSet& change) {
    const auto yard = yardOf(c, lineage.colony);
    if (!yard || !counted(c, lineage.day)) return;
    const auto holds = rules::kitHolds(c.snapshot(std::max(lineage.day, c.today())), {lineage.colony, lineage.into});
    addLots(c, *yard, ofUnion(c, lineage), !holds.empty(), change);
}

void addKitOfEnd(const EditContext& c, const Colony& colony, Day day, EndKind how, ChangeSet& change) {
    const auto yard = yardOf(c, colony.id);
    if (!yard || !counted(c, day) || how == EndKind::Sold) return;
    const bool apart =
        how == EndKind::Destroyed || !rules::kitHolds(c.snapshot(std::max(day, c.today())), {colony.id}).empty();
    addLots(c, *yard, wholeHive(c, colony, day), apart, change);
}

void takeKitBack(const EditContext& c, const Colony& ended, ChangeSet& change) {
    if (ended.ended) takeLots(c, wholeHive(c, ended, *ended.ended), change);
}

void takeKitBack(const EditContext& c, const Lineage& lineage, ChangeSet& change) {
    takeLots(c, ofUnion(c, lineage), change);
}

} // namespace core::edit
