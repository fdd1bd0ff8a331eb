#pragma once

#include "core/edit/session.h"
#include "ui/form/form.h"

#include <optional>
#include <vector>

// Fields that the forms of queens share.

namespace ui::records {

inline const QString kFate = QStringLiteral("fate");
inline const QString kUntil = QStringLiteral("until");

/// The one that heads the colony, or headed it to its end.
std::optional<core::Queen> headOf(const core::edit::Session& book, core::ColonyId colony);
/// "born 2024, blue"; "since 1 May 2026" where nothing is recorded of her looks.
QString shownQueen(const core::Queen& queen);
std::vector<form::Option> fateOptions(bool movedToo);
/// A choice whose first option says that it is not recorded.
template <class E> std::vector<form::Option> maybe(const QString& none, QString (*shown)(E)) {
    std::vector<form::Option> out{{QString(), none}};
    for (size_t i = 0; i < core::wordsOf<E>().size(); ++i)
        out.push_back({core::word(static_cast<E>(i)), shown(static_cast<E>(i))});
    return out;
}

} // namespace ui::records
