#pragma once

#include "core/model/snapshot.h"
#include "core/rules/plan.h"

#include <QJsonArray>
#include <QJsonObject>

namespace core::report {

/// The JSON of `advise`: frames are numbers in quarters, gains integers in thousandths, metres and kilograms to 0.1.
QJsonObject planJson(const Snapshot& s, const rules::Plan& plan);

/// The JSON of `due`: {"on": ..., "due": [...]}.
QJsonObject dueJson(const Snapshot& s, const std::vector<rules::Due>& due);

} // namespace core::report
