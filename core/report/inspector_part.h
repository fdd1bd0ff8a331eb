#pragma once

#include "core/report/paper_table.h"
#include "core/rules/inspection_report.h"

// Parts of the report for an inspector: one function a table. All read the same figures.

namespace core::report {

struct InspectorInput {
    const rules::InspectionBook& book;
    const rules::Inspection& found;

    const Snapshot& s() const { return book.s; }
    const QString& name(ColonyIx c) const { return s().colony(c).shown; }
    const QString& yard(YardIx y) const { return s().yard(y).name; }
    QString name(ColonyId id) const;              ///< empty: it began later
    QString yard(std::optional<YardId> id) const; ///< not set: the store room
    QString yardOf(ColonyIx c, Day day) const;    ///< where it stood, or had stood last
    QStringList names(const std::vector<ColonyIx>& colonies) const;
};

QString diseaseWords(Disease disease); ///< "American foulbrood"
QString signWords(Signs signs);        ///< "chalkbrood, nosema"; empty: none
QString decimals(double number, int most);

PaperTable placesTable(const InspectorInput& in);
PaperTable countsTable(const InspectorInput& in);
PaperTable coloniesTable(const InspectorInput& in);
PaperTable holdsTable(const InspectorInput& in);
PaperTable findsTable(const InspectorInput& in);
PaperTable signsTable(const InspectorInput& in);
PaperTable checksTable(const InspectorInput& in);
PaperTable uncheckedTable(const InspectorInput& in);
PaperTable visitsTable(const InspectorInput& in);
PaperTable samplesTable(const InspectorInput& in);
PaperTable resultsTable(const InspectorInput& in);
PaperTable treatmentsTable(const InspectorInput& in);
PaperTable movesTable(const InspectorInput& in);
PaperTable transfersTable(const InspectorInput& in);
PaperTable lineageTable(const InspectorInput& in);
PaperTable begunTable(const InspectorInput& in);
PaperTable endedTable(const InspectorInput& in);
PaperTable lossTable(const InspectorInput& in);
PaperTable miteTable(const InspectorInput& in);
PaperTable fallTable(const InspectorInput& in);
PaperTable kitTable(const InspectorInput& in);
PaperTable kitEndsTable(const InspectorInput& in);

} // namespace core::report
