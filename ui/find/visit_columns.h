#pragma once

#include "core/base/shown_units.h"
#include "core/model/rows.h"
#include "core/model/visit_list.h"

#include <QString>

#include <optional>

namespace ui::find {

enum class VisitColumn { Colony, Yard, Day, Bees, Stores, Queen, Brood, Signs, Supers, Weight, Mites, By, Note };
constexpr int kVisitColumns = 13;

QString columnTitle(VisitColumn column);
/// By what the list is sorted where its heading is clicked; nullopt: it is not sorted by that.
std::optional<core::VisitKey> sortKey(VisitColumn column);
bool isNumber(VisitColumn column);

/// One visit as it is listed.
struct VisitLine {
    core::Visit visit;
    QString colony; ///< its label
    QString yard;   ///< where it stood that day
};
/// "—" where nothing is recorded.
QString cellText(const VisitLine& line, VisitColumn column, core::WeightUnit unit);

} // namespace ui::find
