#include "ui/board/variants.h"

#include "core/rules/merge_request.h"
#include "ui/board/boards.h"
#include "ui/look/words.h"

#include <algorithm>

namespace ui::board {

namespace {

namespace rules = core::rules;
using Joined = rules::PlanGist::Joined;

const Joined* pairIn(const rules::PlanGist& gist, const Joined& pair, size_t* order = nullptr) {
    for (size_t i = 0; i < gist.unions.size(); ++i) {
        const Joined& u = gist.unions[i];
        const bool same = u.moved == pair.moved && u.host == pair.host;
        if (!same && !(u.moved == pair.host && u.host == pair.moved)) continue;
        if (order) *order = i + 1;
        return &u;
    }
    return nullptr;
}

bool everywhereAlike(const std::vector<VariantFigures>& variants, const Joined& pair) {
    return std::ranges::all_of(variants, [&](const VariantFigures& v) {
        const Joined* u = pairIn(v.gist, pair);
        return u && u->host == pair.host && u->upper == pair.upper;
    });
}

QString upperText(const Joined& u) { return Boards::tr("%1 on top").arg(u.upper == u.host ? u.hostName : u.movedName); }

VariantPair rowOf(const std::vector<VariantFigures>& variants, const Joined& pair) {
    const auto arrow = [](const Joined& u) { return u.movedName + QStringLiteral(" → ") + u.hostName; };
    VariantPair row{arrow(pair), {}};
    for (const VariantFigures& v : variants) {
        size_t order = 0;
        const Joined* u = pairIn(v.gist, pair, &order);
        QString cell = u ? QStringLiteral("%1.").arg(order) : look::dash();
        if (u && u->host != pair.host) cell += u' ' + arrow(*u);
        if (u && u->host == pair.host && u->upper != pair.upper) cell += u' ' + upperText(*u);
        row.cells.push_back(cell);
    }
    return row;
}

} // namespace

std::vector<VariantFigures> variantFigures(const desk::Reading& reading, const core::edit::Session& book,
                                           const std::vector<core::MergeDay>& days) {
    std::vector<VariantFigures> out;
    const rules::DayView view = rules::viewOf(reading.snapshot, reading.facts, reading.plan.holds);
    for (const core::MergeDay& day : days) {
        const auto yard = reading.find(day.yard);
        if (!yard) continue;
        rules::PlanRequest request =
            rules::mergeRequest(view, {{day, book.choicesOf(day.id), book.divideChoicesOf(day.id)}}).request;
        request.yards = {*yard};
        const rules::Plan plan = rules::advise(reading.snapshot, request);
        out.push_back({day, plan.totals, rules::gistOf(reading.snapshot, plan, *yard),
                       rules::minutesFor(reading.snapshot.settings, plan.totals.unions)});
    }
    return out;
}

std::vector<VariantPair> differingPairs(const std::vector<VariantFigures>& variants) {
    std::vector<Joined> seen;
    std::vector<VariantPair> out;
    for (const VariantFigures& v : variants) {
        for (const Joined& u : v.gist.unions) {
            const bool known = std::ranges::any_of(seen, [&](const Joined& s) {
                return (s.moved == u.moved && s.host == u.host) || (s.moved == u.host && s.host == u.moved);
            });
            if (known) continue;
            seen.push_back(u);
            if (!everywhereAlike(variants, u)) out.push_back(rowOf(variants, u));
        }
    }
    return out;
}

} // namespace ui::board
