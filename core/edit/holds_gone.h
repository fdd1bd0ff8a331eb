#pragma once

#include "core/base/day.h"

#include <QStringList>

namespace core::store {
class Database;
}

namespace core::edit {

/// Holds of the book `here`, on the day and on the last day of its records, that `there` would not have in its place,
/// as "A2: afb-suspected"; all kinds but brood-not-checked. One that rests on other records there is named too.
/// `sameIds`: a colony has one id in both; else one of another name is another.
QStringList holdsGone(const store::Database& here, const store::Database& there, bool sameIds, Day today);

/// The first of them, and how many more: "A2: afb-suspected, A3: afb-yard and 12 more".
QString fewHolds(const QStringList& holds, qsizetype most = 8);

} // namespace core::edit
