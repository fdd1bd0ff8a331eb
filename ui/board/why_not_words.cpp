#include "ui/board/why_not_words.h"

#include "core/base/error.h"
#include "core/rules/explain.h"
#include "core/rules/merge_request.h"
#include "ui/board/boards.h"
#include "ui/board/difference_words.h"
#include "ui/board/limit_text.h"
#include "ui/board/offers.h"

#include <algorithm>

namespace ui::board {

namespace {

namespace rules = core::rules;
using core::MergeAsk;

class WhyNot {
public:
    WhyNot(const desk::Reading& r, core::ColonyIx a, core::ColonyIx b)
        : m_r(r), m_a(a), m_b(b), m_view(rules::viewOf(r.snapshot, r.facts, r.plan.holds)) {}

    WhyNotText text() {
        WhyNotText out;
        out.title = Boards::tr("%1 and %2").arg(name(m_a), name(m_b));
        const rules::Explanation e = rules::explain(m_view, m_a, m_b);
        const bool may = e.objections.empty();
        if (!may) out.lines << e.summary;
        for (const rules::Objection& o : e.objections) out.lines << Boards::tr("%1: %2").arg(o.rule, o.because);
        out.mayUnite = std::ranges::all_of(e.objections, [](const auto& o) { return o.rule == u"4.7.10"; });
        addPlanned(out.lines);
        addAsked(out.lines);
        if (may && !together()) addPrice(out.lines);
        if (may) out.lines << e.summary;
        return out;
    }

private:
    QString name(core::ColonyIx c) const { return m_r.snapshot.colony(c).shown; }
    core::ColonyId id(core::ColonyIx c) const { return m_r.snapshot.colony(c).id; }
    bool together() const {
        const rules::Union* u = m_r.unionOf(m_a);
        return u && (u->moved == m_b || u->host == m_b);
    }

    void addPlanned(QStringList& lines) const {
        if (together()) {
            lines << Boards::tr("The plan unites them.");
            return;
        }
        for (const core::ColonyIx c : {m_a, m_b})
            if (const rules::Union* u = m_r.unionOf(c))
                lines << Boards::tr("The plan has %1 → %2, gain %3.")
                             .arg(name(u->moved), name(u->host), gainText(u->gain));
    }

    void addAsked(QStringList& lines) const {
        const rules::MergeWish* wish = m_r.wishOf(m_r.snapshot.yard(m_r.factsOf(m_a).yard).id);
        if (!wish) return;
        for (const core::MergeChoice& x : wish->choices) {
            const bool pair = x.other && ((x.colony == id(m_a) && *x.other == id(m_b)) ||
                                          (x.colony == id(m_b) && *x.other == id(m_a)));
            const bool one = x.what == MergeAsk::LeaveOut && (x.colony == id(m_a) || x.colony == id(m_b));
            if (pair || one) lines << Boards::tr("As you asked: %1.").arg(choiceText(m_r, x));
        }
        if (wish->day.most || wish->day.minutes)
            lines << Boards::tr("As you asked: %1.").arg(limitText({wish->day.most, wish->day.minutes}));
    }

    /// What the yard's plan would be worth with the two pinned.
    void addPrice(QStringList& lines) const {
        const core::YardIx yard = m_r.factsOf(m_a).yard;
        std::vector<rules::MergeWish> wishes;
        if (const rules::MergeWish* wish = m_r.wishOf(m_r.snapshot.yard(yard).id)) wishes.push_back(*wish);
        rules::PlanRequest request = rules::mergeRequest(m_view, wishes).request;
        const auto touches = [this](const rules::ColonyPair& p) {
            return p.first == m_a || p.second == m_a || p.first == m_b || p.second == m_b;
        };
        std::erase_if(request.pins, touches);
        std::erase_if(request.forbids, [this](const rules::ColonyPair& p) {
            return (p.first == m_a && p.second == m_b) || (p.first == m_b && p.second == m_a);
        });
        std::erase_if(request.leftOut, [this](core::ColonyIx c) { return c == m_a || c == m_b; });
        request.pins.push_back({m_a, m_b});
        for (rules::YardMost& most : request.mostIn)
            most.unions = std::max(most.unions, static_cast<int>(request.pins.size()));
        request.yards = {yard};
        qint64 now = 0;
        for (const rules::Union& u : m_r.plan.unions) now += u.yard == yard ? u.gain : 0;
        const qint64 then = rules::advise(m_r.snapshot, request).totals.gain;
        lines << (then < now
                      ? Boards::tr("With the two pinned, all unions of the yard together would gain %1 instead of "
                                   "%2: the others are worth more.")
                      : Boards::tr("With the two pinned, all unions of the yard together would gain %1; now %2."))
                     .arg(gainText(then), gainText(now));
    }

    const desk::Reading& m_r;
    core::ColonyIx m_a, m_b;
    rules::DayView m_view;
};

} // namespace

WhyNotText whyNot(const desk::Reading& reading, core::ColonyIx a, core::ColonyIx b) {
    if (a == b)
        throw core::Error(
            core::Error::Kind::BadData,
            Boards::tr("%1 cannot be united with itself: name two colonies.").arg(reading.snapshot.colony(a).shown));
    return WhyNot(reading, a, b).text();
}

} // namespace ui::board
