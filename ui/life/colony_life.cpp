#include "ui/life/colony_life.h"

#include "core/edit/edit_context.h"
#include "ui/form/book_options.h"
#include "ui/look/words.h"

#include <algorithm>

namespace ui::life {

namespace {

constexpr int kAll = -1;

/// Treatments of the colony, and of yards on days on which it stood there.
std::vector<core::Treatment> treatmentsOf(const core::edit::EditContext& c, core::ColonyId colony, bool& southern) {
    auto out = c.treatmentsOf(colony);
    for (const core::Placement& p : c.placementsOf(colony)) {
        const auto stand = c.stand(p.stand);
        if (!stand) continue;
        if (const auto yard = c.yard(stand->yard)) southern = yard->latitudeDeg.value_or(0) < 0;
        for (const core::Treatment& t : c.treatmentsOf(stand->yard)) {
            const bool there = p.since <= t.day && (!p.until || t.day <= *p.until);
            if (there && std::ranges::find(out, t.id, &core::Treatment::id) == out.end()) out.push_back(t);
        }
    }
    std::ranges::stable_sort(out, {}, &core::Treatment::day);
    return out;
}

template <class T> void upTo(std::vector<T>& rows, core::Day T::*day, core::Day on) {
    std::erase_if(rows, [&](const T& row) { return row.*day > on; });
}

} // namespace

std::optional<ColonyLife> lifeOf(const core::edit::Session& book, core::ColonyId id, core::Day on) {
    const auto colony = book.colony(id);
    if (!colony || colony->since > on) return std::nullopt;
    ColonyLife life;
    life.colony = *colony;
    life.last = std::min(on, colony->ended.value_or(on));
    life.name = form::nameOn(book, *colony, life.last);
    life.lineage = book.lineageOf(id);
    life.queens = book.queensOf(id);
    life.settings = book.settings();
    book.read([&](const core::edit::EditContext& c) {
        life.visits = c.visitsOf(id, kAll);
        life.treatments = treatmentsOf(c, id, life.southern);
    });
    std::ranges::reverse(life.visits);
    upTo(life.visits, &core::Visit::day, on);
    upTo(life.lineage, &core::Lineage::day, on);
    upTo(life.queens, &core::Queen::since, on);
    upTo(life.treatments, &core::Treatment::day, on);
    for (const core::Lineage& l : life.lineage) {
        const core::ColonyId other = l.colony == id ? l.into : l.colony;
        const auto found = book.colony(other);
        life.names[other] = found ? form::nameOn(book, *found, l.day) : look::dash();
    }
    return life;
}

} // namespace ui::life
