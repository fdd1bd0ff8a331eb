#pragma once

#include "core/base/day.h"
#include "core/model/row.h"
#include "core/model/row_codec.h"
#include "core/model/rows.h"
#include "core/model/snapshot.h"

#include <QStringView>

#include <functional>
#include <optional>
#include <vector>

namespace core::edit {

/// What an edit may read: the few rows it asks for, as they stand inside its own transaction. Lists are ordered as
/// said; all throw Error(Book) when the file fails.
class EditContext {
public:
    virtual ~EditContext() = default;

    virtual Day today() const = 0;
    /// The id that the next new row of this table takes; a second new row of the same edit takes the one after, and so
    /// on. Settings have no ids of their own: a changed setting takes any id (see settingRow).
    virtual qint64 nextId(Table table) const = 0;

    // One row.
    virtual std::optional<Row> row(Table table, qint64 id) const = 0;
    template <class T> std::optional<T> find(qint64 id) const {
        const auto cells = row(tableOf<T>(), id);
        return cells ? std::optional<T>(fromRow<T>(id, *cells)) : std::nullopt;
    }
    std::optional<Yard> yard(YardId id) const { return find<Yard>(id.value); }
    std::optional<Stand> stand(StandId id) const { return find<Stand>(id.value); }
    std::optional<BoxKind> boxKind(BoxKindId id) const { return find<BoxKind>(id.value); }
    std::optional<Colony> colony(ColonyId id) const { return find<Colony>(id.value); }
    virtual std::optional<Visit> visit(VisitId id) const = 0; ///< with its signs
    virtual std::optional<Visit> visitOn(ColonyId colony, Day day) const = 0;
    /// The visit_sign rows of a visit with their ids.
    virtual std::vector<std::pair<qint64, Row>> signRows(VisitId visit) const = 0;

    // By name: without regard to case.
    virtual std::optional<Yard> yardNamed(QStringView name) const = 0;
    virtual std::optional<Stand> standNamed(YardId yard, QStringView name) const = 0;
    virtual std::optional<BoxKind> boxKindNamed(QStringView name) const = 0;
    /// `LABEL`: the colony of that label with the latest `since` on or before `on`. `LABEL@SINCE`: that one, whatever
    /// the day.
    virtual std::optional<Colony> colonyNamed(QStringView name, Day on) const = 0;
    virtual std::vector<Colony> coloniesLabelled(QStringView label) const = 0; ///< by since

    // Of one colony, yard or stand.
    virtual std::optional<Placement> openPlacement(ColonyId colony) const = 0;
    virtual std::vector<Placement> placementsOf(ColonyId colony) const = 0; ///< in time order, the colony's own first
    virtual std::vector<Placement> placementsAt(StandId stand) const = 0;   ///< by since
    /// Those whose hive stands on the stand that day: since <= day <= until.
    virtual std::vector<Placement> placementsAt(StandId stand, Day day) const = 0;
    virtual std::vector<Stand> standsOf(YardId yard) const = 0;             ///< removed ones too; natural order
    virtual std::vector<Lineage> lineageOf(ColonyId colony) const = 0;      ///< on either side; by day
    virtual std::vector<Transfer> transfersOf(ColonyId colony) const = 0;   ///< on either side; by day
    virtual std::vector<Treatment> treatmentsOf(ColonyId colony) const = 0; ///< naming it, not its yard; by day
    virtual std::vector<Treatment> treatmentsOf(YardId yard) const = 0;     ///< naming it; by day
    virtual std::vector<Result> resultsOf(ColonyId colony) const = 0;       ///< naming it, not its yard; by day
    virtual std::vector<Result> resultsOf(YardId yard) const = 0;           ///< naming it; by day
    virtual std::vector<Feeding> feedingsOf(ColonyId colony) const = 0;     ///< by day
    virtual std::vector<MiteFall> miteFallsOf(ColonyId colony) const = 0;   ///< by day
    virtual std::vector<Queen> queensOf(ColonyId colony) const = 0;         ///< that headed it, by since
    virtual std::vector<Queen> queensRaisedFrom(ColonyId mother) const = 0; ///< by since
    virtual std::vector<Sample> samplesOf(ColonyId colony) const = 0;       ///< by day taken
    virtual std::optional<Sample> sampleAnsweredBy(ResultId result) const = 0;
    /// The stand was made by the very edit that first put this colony's hive on it.
    virtual bool madeByCarry(StandId stand, ColonyId colony) const = 0;
    virtual std::vector<Visit> visitsOf(ColonyId colony, int most) const = 0; ///< newest first, with signs; −1: all
    /// Brood boxes on that day (rule 4.0); `visited`: what a visit of that day, not yet in the book, says.
    virtual int boxesAt(ColonyId colony, Day day, std::optional<int> visited = {}) const = 0;
    /// The day of the visit or union that decides boxesAt(); the colony's `since` where none does.
    virtual Day boxesSince(ColonyId colony, Day day) const = 0;
    virtual std::vector<MergeDay> mergeDaysOf(YardId yard) const = 0;                 ///< by day, then variant
    virtual std::vector<MergeChoice> choicesOf(MergeDayId mergeDay) const = 0;        ///< by id
    virtual std::vector<MergeStrip> stripsOf(MergeDayId mergeDay) const = 0;          ///< by position
    virtual std::vector<DivideChoice> divideChoicesOf(MergeDayId mergeDay) const = 0; ///< by id
    virtual std::vector<DivideStrip> divideStripsOf(MergeDayId mergeDay) const = 0;   ///< by position

    // Small wholes.
    virtual std::vector<Yard> yards() const = 0;                      ///< closed ones too, natural order
    virtual std::vector<BoxKind> boxKinds() const = 0;                ///< natural order
    virtual std::vector<Colony> coloniesIn(BoxKindId kind) const = 0; ///< living and ended, by id
    /// A visit, of a colony in such boxes, that counts more frames of bees or stores in one box than `frames`.
    virtual std::optional<VisitId> visitAbove(BoxKindId kind, int frames) const = 0;
    virtual Settings settings() const = 0;
    /// The stored row of a setting: its id and cells (name, value); nullopt while it is at its default.
    virtual std::optional<std::pair<qint64, Row>> settingRow(QStringView name) const = 0;
    virtual Snapshot snapshot(Day on) const = 0; ///< for what a rule decides; the whole book's

    // Whole tables, for imports: in id order, one pass, nothing held.
    virtual void eachRow(Table table, const std::function<void(qint64 id, Row&& cells)>& take) const = 0;
    template <class T, class Fn> void each(Fn&& take) const {
        eachRow(tableOf<T>(), [&](qint64 id, Row&& cells) { take(fromRow<T>(id, cells)); });
    }
    /// The keys of all visits from an index: no row is read.
    virtual void eachVisitKey(const std::function<void(VisitId, ColonyId, Day)>& take) const = 0;
};

} // namespace core::edit
