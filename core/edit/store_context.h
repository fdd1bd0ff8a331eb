#pragma once

#include "core/edit/edit_context.h"
#include "core/store/database.h"

namespace core::edit {

/// Reads for an edit straight from the open book.
class StoreContext : public EditContext {
public:
    StoreContext(const store::Database& db, Day today) : m_db(db), m_today(today) {}

    Day today() const override { return m_today; }
    qint64 nextId(Table table) const override;
    std::optional<Row> row(Table table, qint64 id) const override;
    std::optional<Visit> visit(VisitId id) const override;
    std::optional<Visit> visitOn(ColonyId colony, Day day) const override;
    std::vector<std::pair<qint64, Row>> signRows(VisitId visit) const override;

    std::optional<Yard> yardNamed(QStringView name) const override;
    std::optional<Stand> standNamed(YardId yard, QStringView name) const override;
    std::optional<BoxKind> boxKindNamed(QStringView name) const override;
    std::optional<Colony> colonyNamed(QStringView name, Day on) const override;
    std::vector<Colony> coloniesLabelled(QStringView label) const override;

    std::optional<Placement> openPlacement(ColonyId colony) const override;
    std::vector<Placement> placementsOf(ColonyId colony) const override;
    std::vector<Placement> placementsAt(StandId stand) const override;
    std::vector<Placement> placementsAt(StandId stand, Day day) const override;
    std::vector<Stand> standsOf(YardId yard) const override;
    std::vector<Lineage> lineageOf(ColonyId colony) const override;
    std::vector<Transfer> transfersOf(ColonyId colony) const override;
    std::vector<Treatment> treatmentsOf(ColonyId colony) const override;
    std::vector<Treatment> treatmentsOf(YardId yard) const override;
    std::vector<Result> resultsOf(ColonyId colony) const override;
    std::vector<Result> resultsOf(YardId yard) const override;
    std::vector<Feeding> feedingsOf(ColonyId colony) const override;
    std::vector<Sample> samplesOf(ColonyId colony) const override;
    std::optional<Sample> sampleAnsweredBy(ResultId result) const override;
    std::vector<MiteFall> miteFallsOf(ColonyId colony) const override;
    std::vector<Queen> queensOf(ColonyId colony) const override;
    std::vector<Queen> queensRaisedFrom(ColonyId mother) const override;
    std::vector<MergeDay> mergeDaysOf(YardId yard) const override;
    std::vector<MergeChoice> choicesOf(MergeDayId mergeDay) const override;
    std::vector<MergeStrip> stripsOf(MergeDayId mergeDay) const override;
    std::vector<DivideChoice> divideChoicesOf(MergeDayId mergeDay) const override;
    std::vector<DivideStrip> divideStripsOf(MergeDayId mergeDay) const override;
    bool madeByCarry(StandId stand, ColonyId colony) const override;
    std::vector<Visit> visitsOf(ColonyId colony, int most) const override;
    int boxesAt(ColonyId colony, Day day, std::optional<int> visited) const override;
    Day boxesSince(ColonyId colony, Day day) const override;

    std::vector<Yard> yards() const override;
    std::vector<BoxKind> boxKinds() const override;
    std::vector<Colony> coloniesIn(BoxKindId kind) const override;
    std::optional<VisitId> visitAbove(BoxKindId kind, int frames) const override;
    Settings settings() const override;
    std::optional<std::pair<qint64, Row>> settingRow(QStringView name) const override;
    Snapshot snapshot(Day on) const override;

    void eachRow(Table table, const std::function<void(qint64 id, Row&& cells)>& take) const override;
    void eachVisitKey(const std::function<void(VisitId, ColonyId, Day)>& take) const override;

private:
    std::pair<Day, int> boxEvent(ColonyId colony, Day day, std::optional<int> visited) const;

    const store::Database& m_db;
    Day m_today;
};

} // namespace core::edit
