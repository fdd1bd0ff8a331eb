#pragma once

#include "core/rules/explain.h"
#include "core/rules/plan.h"
#include "tests/support/csv_snapshot.h"

#include <QString>

#include <map>
#include <optional>

namespace tests::rules {

using Cells = std::map<QString, QString>;

/// A small book for one test, row by row as its files would hold it. A colony stands in the yard "Y", is checked clean
/// on `kChecked` (so that nothing holds it on the days around `kFall`), and is otherwise as its cells say.
class PlanBook {
public:
    /// `cells` overrides: x_m, y_m, box, brood_boxes, yard, stand, since ... Returns itself.
    PlanBook& colony(const QString& label, Cells cells = {});
    /// Without a brood check of its own: held as brood-not-checked.
    PlanBook& unchecked(const QString& label, Cells cells = {});
    PlanBook& visit(const QString& label, const QString& date, Cells cells);
    /// A count of bees with a queen seen, on the day before kFall: what most tests need.
    PlanBook& bees(const QString& label, const QString& frames, Cells more = {});
    PlanBook& row(const QString& kind, Cells cells);
    PlanBook& set(const QString& name, const QString& value);
    PlanBook& yard(const QString& name, Cells cells = {});

    const support::CsvTables& tables() const { return m_tables; }
    core::Snapshot on(const QString& day) const;
    core::rules::Plan plan(const QString& day, const core::rules::PlanRequest& request = {}) const;

private:
    support::CsvTables m_tables;
};

inline const QString kFall = QStringLiteral("2026-09-15");    // in both seasons of 4.3
inline const QString kCounted = QStringLiteral("2026-09-14"); // the day before
inline const QString kChecked = QStringLiteral("2026-07-01"); // a clean brood check of that day still counts

/// The colony of that label, living on the snapshot's day.
core::ColonyIx named(const core::Snapshot& s, const QString& label);

/// "A>B" for each union, moved to host, in order of work, with spaces between.
QString unionsOf(const core::Snapshot& s, const core::rules::Plan& plan);
/// The parts of rule 4.7 that stand against A and B: "2 7".
QString against(const core::Snapshot& s, const QString& a, const QString& b);

} // namespace tests::rules
