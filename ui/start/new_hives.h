#pragma once

#include "core/base/quantity.h"
#include "ui/desk/desk.h"
#include "ui/form/form.h"
#include "ui/plan/sketch.h"

#include <QSet>

// What the forms of hives to come have in common.

namespace ui::start {

/// What the next hives are like, as typed: what the last ones were, until a book is closed.
struct Kept {
    QString spacing = QStringLiteral("1.5");
    QString bearing = QStringLiteral("E");
    QString heading = QStringLiteral("S");
    QString box;
    QString broodBoxes = QStringLiteral("1");
    QString since;
};

std::optional<core::BoxKind> boxNamed(const core::edit::Session& session, const QString& name);
/// The kind that most of the living are in; of an empty book the one of ten frames.
QString usualBox(const desk::Desk& desk);

/// Labels of the living today, folded: case means nothing.
QSet<QString> labelsInUse(const desk::Desk& desk);
/// The first label of the next hives of this yard that nobody has: on from its greatest (K12: K13), else of the
/// yard's first letters. Empty: none found.
QString nextLabel(const desk::Desk& desk, core::YardId yard);

/// Where the next row begins: three metres behind the gate, or behind the yard's hives as seen from it.
core::MmPoint nextRowStart(const desk::Desk& desk, core::YardId yard);

/// The stands of this yard that bear no hive on the day shown, in natural order. On a past day those that are known to
/// have been there: between their first use and their last, or still there. Throws Error(Book).
std::vector<plan::StandMark> emptyStands(const desk::Desk& desk, core::YardId yard);
/// `s`: of the day, with all hives of the yard.
std::vector<plan::StandMark> emptyStands(const core::edit::Session& session, const core::Snapshot& s,
                                         core::YardId yard);

/// The hive of this yard, standing today, to which one at `at` would be too near.
std::optional<QString> tooNear(const desk::Desk& desk, core::YardId yard, core::MmPoint at);

/// A mark for what is to come.
plan::HiveMark markOf(const core::BoxKind& box, const QString& label, core::MmPoint at, int headingDeg, int boxes);

// Fields that several forms have.

form::Field boxField(const core::edit::Session& session);
form::Field broodBoxesField();
form::Field headingField();
form::Field sinceField();
/// East and north of the yard's origin, in metres.
std::vector<form::Field> placeFields(const QString& heading);
std::optional<core::MmPoint> placeOf(const form::Values& values);
void putPlace(form::Values& values, core::MmPoint at);

} // namespace ui::start
