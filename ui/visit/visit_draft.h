#pragma once

#include "core/base/shown_units.h"
#include "core/model/rows.h"

#include <QString>

#include <array>
#include <map>
#include <optional>
#include <vector>

namespace ui::visit {

/// The fields of a visit; those from Day on are kept as what they mean, all before them as typed.
enum class Field {
    BeesTop,
    BeesBottom,
    UpperTop,
    UpperBottom,
    Stores,
    UpperStores,
    Brood,
    Checked,
    Supers,
    Gross,
    Mites,
    Sample,
    By,
    Note,
    Day,
    Boxes,
    Queen,
    Signs
};
constexpr size_t kFields = 14; ///< that are kept as typed

/// A visit as it is typed; nothing in it need be right yet.
struct VisitDraft {
    core::Day day;
    std::optional<int> boxes; ///< not set: as before
    std::optional<core::QueenSeen> queen;
    core::Signs signs;
    std::array<QString, kFields> text;
    std::map<Field, QString> unread; ///< what stands in one of the others and means nothing there

    QString& operator[](Field f) { return text[static_cast<size_t>(f)]; }
    const QString& operator[](Field f) const { return text[static_cast<size_t>(f)]; }
    friend bool operator==(const VisitDraft&, const VisitDraft&) = default;
};

/// What a draft is judged against.
struct VisitPlace {
    core::ColonyId colony;
    QString label;
    core::Day since;
    std::optional<core::Day> ended;
    core::Day today;
    int frames = 10;                                           ///< of its box
    int boxesNow = 1;                                          ///< brood boxes where the visit does not say
    std::vector<core::Day> visited;                            ///< days that have another visit already
    std::optional<core::Visit> was;                            ///< the visit that is changed; not set: a new one
    core::WeightUnit weightUnit = core::WeightUnit::Kilograms; ///< what the weight is typed in
};

/// What is wrong in one field, or of the whole.
struct Problem {
    std::optional<Field> field;
    QString text;
};

/// All that keeps the draft from being saved; empty: it can be. A draft with nothing seen is a problem too.
std::vector<Problem> problems(const VisitDraft& draft, const VisitPlace& place);

/// A visit of the book as a draft.
VisitDraft draftOf(const core::Visit& visit, core::WeightUnit unit);

/// The visit, with the id of the one that is changed; only of a draft without problems.
core::Visit visitOf(const VisitDraft& draft, const VisitPlace& place);

} // namespace ui::visit
