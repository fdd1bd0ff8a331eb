#pragma once

#include "core/edit/session.h"
#include "core/rules/kit_piles.h"

#include <QCoreApplication>

#include <vector>

namespace ui::kit {

/// Translation context of kit.
struct KitWords {
    Q_DECLARE_TR_FUNCTIONS(KitWords)
};

/// The kit of the book as people see it; what keeps some of it apart is judged by the snapshot. Throws Error(Book).
std::vector<core::rules::KitPile> pilesOf(const core::edit::Session& book, const core::Snapshot& s);

/// "to clean"
QString stateText(const QString& state);
/// "kept apart with A7 (afb-suspected): it leaves quarantine only burned or sterilised"
QString apartText(const core::Snapshot& s, const core::rules::KitPile& pile);
/// How kit that was kept apart at that place (the store room: no yard) ended, the latest three; empty: none did.
QString endsText(const core::edit::Session& book, const core::Snapshot& s, std::optional<core::YardId> yard);

} // namespace ui::kit
