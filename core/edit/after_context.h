#pragma once

#include "core/edit/change_set.h"
#include "core/edit/edit_context.h"

#include <array>
#include <map>

namespace core::edit {

/// The book as it is once some row changes are written: what an edit is judged by that alters what is there, and what
/// the later parts of an edit of many parts read. snapshot(), madeByCarry(), visitAbove(), merge days and the
/// whole-table reads are of the book as it stands.
class AfterContext : public EditContext {
public:
    /// `book` outlives this.
    explicit AfterContext(const EditContext& book) : m_book(book) {}
    AfterContext(const EditContext& book, const std::vector<RowChange>& rows) : m_book(book) { add(rows); }
    void add(const std::vector<RowChange>& rows);

    Day today() const override { return m_book.today(); }
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
    std::vector<MiteFall> miteFallsOf(ColonyId colony) const override;
    std::vector<Queen> queensOf(ColonyId colony) const override;
    std::vector<Queen> queensRaisedFrom(ColonyId mother) const override;
    std::vector<Sample> samplesOf(ColonyId colony) const override;
    std::optional<Sample> sampleAnsweredBy(ResultId result) const override;
    std::vector<MergeDay> mergeDaysOf(YardId yard) const override { return m_book.mergeDaysOf(yard); }
    std::vector<MergeChoice> choicesOf(MergeDayId mergeDay) const override { return m_book.choicesOf(mergeDay); }
    std::vector<MergeStrip> stripsOf(MergeDayId mergeDay) const override { return m_book.stripsOf(mergeDay); }
    std::vector<DivideChoice> divideChoicesOf(MergeDayId day) const override { return m_book.divideChoicesOf(day); }
    std::vector<DivideStrip> divideStripsOf(MergeDayId day) const override { return m_book.divideStripsOf(day); }
    bool madeByCarry(StandId stand, ColonyId colony) const override { return m_book.madeByCarry(stand, colony); }
    std::vector<Visit> visitsOf(ColonyId colony, int most) const override;
    int boxesAt(ColonyId colony, Day day, std::optional<int> visited) const override;
    Day boxesSince(ColonyId colony, Day day) const override;

    std::vector<Yard> yards() const override;
    std::vector<BoxKind> boxKinds() const override;
    std::vector<Colony> coloniesIn(BoxKindId kind) const override;
    std::optional<VisitId> visitAbove(BoxKindId kind, int frames) const override {
        return m_book.visitAbove(kind, frames);
    }
    Settings settings() const override { return m_book.settings(); }
    std::optional<std::pair<qint64, Row>> settingRow(QStringView name) const override {
        return m_book.settingRow(name);
    }
    Snapshot snapshot(Day on) const override { return m_book.snapshot(on); }
    void eachRow(Table table, const std::function<void(qint64 id, Row&& cells)>& take) const override {
        m_book.eachRow(table, take);
    }
    void eachVisitKey(const std::function<void(VisitId, ColonyId, Day)>& take) const override {
        m_book.eachVisitKey(take);
    }

private:
    using Written = std::map<qint64, std::optional<Row>>; ///< nullopt: deleted
    const Written& written(Table table) const { return m_written[static_cast<size_t>(table)]; }
    /// `rows` of the book, less those written anew, with those written that match.
    template <class T, class Match> std::vector<T> merged(std::vector<T> rows, Match match) const;
    template <class T> std::optional<T> named(std::optional<T> found, const std::vector<T>& among) const;
    Visit withSigns(Visit visit) const;
    std::pair<Day, int> boxEvent(ColonyId colony, Day day, std::optional<int> visited) const;

    const EditContext& m_book;
    std::array<Written, kTableCount> m_written;
    mutable std::map<YardId, std::vector<Stand>> m_stands; ///< of the book: asked again and again
};

} // namespace core::edit
