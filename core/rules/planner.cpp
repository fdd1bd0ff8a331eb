#include "core/rules/plan.h"

#include "core/rules/box_order.h"
#include "core/rules/cautions.h"
#include "core/rules/compose.h"
#include "core/rules/divides.h"
#include "core/rules/due.h"
#include "core/rules/feed.h"
#include "core/rules/left_over.h"
#include "core/rules/limits.h"
#include "core/rules/merge_request.h"
#include "core/rules/shake_outs.h"
#include "core/rules/totals.h"
#include "core/rules/unions.h"
#include "core/rules/work_order.h"

#include <algorithm>

namespace core::rules {

namespace {

std::vector<YardIx> yardsAskedFor(const Snapshot& s, const PlanRequest& request) {
    std::vector<YardIx> yards = request.yards;
    if (yards.empty())
        for (size_t i = 0; i < s.yards.size(); ++i) yards.push_back({static_cast<qint32>(i)});
    std::sort(yards.begin(), yards.end());
    yards.erase(std::unique(yards.begin(), yards.end()), yards.end());
    return yards;
}

/// What the plan does with a colony, by living colony.
struct Part {
    bool united = false;
    bool shakenOut = false;
    bool receives = false; ///< others are shaken out into it, or into its union
};

/// Fills a plan step by step; each step reads what those before it decided.
class Planner {
public:
    Planner(DayView view, const PlanRequest& request)
        : m_request(request), m_view(std::move(view)), m_cautions(m_view) {
        const Snapshot& s = m_view.s;
        m_plan.on = s.on;
        m_plan.yards = yardsAskedFor(s, request);
        m_part.resize(m_view.facts.size());
        for (const ColonyFacts& f : m_view.facts)
            if (std::binary_search(m_plan.yards.begin(), m_plan.yards.end(), f.yard)) m_living.push_back(f.colony);
    }

    Plan plan() {
        addUnions();
        addShakeOuts();
        addOthers();
        addFeed();
        m_plan.due = dueChecks(m_view, m_plan.yards);
        m_plan.totals = totalsOf(m_view, m_plan, m_living);
        takeHolds();
        return std::move(m_plan);
    }

private:
    Part& partOf(ColonyIx c) { return m_part[static_cast<size_t>(c.value)]; }

    /// Out of the view, last: twice the words and reasons of a troubled book would be too many.
    void takeHolds() {
        for (Hold& hold : m_view.holds)
            if (std::binary_search(m_living.begin(), m_living.end(), hold.colony))
                m_plan.holds.push_back(std::move(hold));
    }

    void addUnions() {
        for (const ChosenPair& pair : chooseUnions(m_view, m_plan.yards, m_request)) {
            m_plan.unions.push_back(composeUnion(m_view, pair));
            m_plan.unions.back().cautions = m_cautions.of(m_plan.unions.back());
            partOf(pair.a).united = partOf(pair.b).united = true;
        }
        orderWork(m_view, m_plan.unions);
    }

    void addShakeOuts() {
        for (const ChosenShakeOut& chosen : chooseShakeOuts(m_view, m_plan.yards, m_plan.unions, m_request.leftOut)) {
            m_plan.shakeOuts.push_back(composeShakeOut(m_view, m_cautions, chosen, m_plan.unions));
            partOf(chosen.colony).shakenOut = true;
            partOf(chosen.into).receives = true;
        }
    }

    void addOthers() {
        for (const ColonyIx c : m_living) {
            const Part& part = partOf(c);
            addPlace(c, part);
            if (!part.united && !part.shakenOut)
                for (BoxOrderAdvice& advice : boxOrderOf(m_view, c)) m_plan.boxOrder.push_back(std::move(advice));
            if (!part.united && !part.shakenOut && !part.receives)
                for (Caution& caution : m_cautions.of(c)) m_plan.cautions.push_back({c, std::move(caution)});
            if (!part.united) addDivide(c);
        }
    }

    void addDivide(ColonyIx c) {
        auto divide = divideOf(m_view, c);
        if (!divide) return;
        for (const auto& [colony, parts] : m_request.divideParts)
            if (colony == c) divide->parts = std::min(divide->parts, parts);
        if (divide->parts >= fixed::kLeastParts) m_plan.divides.push_back(*std::move(divide));
    }

    /// The one list that a colony stands in, the first that fits.
    void addPlace(ColonyIx c, const Part& part) {
        const ColonyFacts& f = m_view.of(c);
        if (m_view.held(c)) return;
        if (f.layingWorkers)
            m_plan.separate.push_back({c, whySeparate(m_view, c)});
        else if (!f.strength)
            addUnresolved(c, whyNoStrength(f.noStrength));
        else if (part.united || part.shakenOut)
            return;
        else if (toShakeOut(m_view, c))
            addUnresolved(c, Unresolved::NoHost);
        else if (f.lacksQueen)
            addUnresolved(c, Unresolved::NoPartner);
        else
            m_plan.alone.push_back({c, *f.strength, *f.strengthClass, atRisk(*f.strengthClass), whyAlone(m_view, c)});
    }

    void addUnresolved(ColonyIx c, Unresolved why) {
        m_plan.unresolved.push_back({c, why, whyUnresolved(m_view, c, why)});
    }

    static bool atRisk(StrengthClass c) { return c == StrengthClass::Weak || c == StrengthClass::ShakeOut; }

    static Unresolved whyNoStrength(NoStrength why) {
        switch (why) {
        case NoStrength::NoBees:
            return Unresolved::NoBees;
        case NoStrength::CountOld:
            return Unresolved::CountOld;
        case NoStrength::NoCount:
            break;
        }
        return Unresolved::NoCount;
    }

    void addFeed() {
        for (const Union& united : m_plan.unions)
            if (const auto feed = feedOf(m_view, united)) m_plan.feed.push_back(*feed);
        for (const ColonyIx c : m_living) {
            if (partOf(c).united || partOf(c).shakenOut) continue;
            if (const auto feed = feedOf(m_view, c)) m_plan.feed.push_back(*feed);
        }
        std::sort(m_plan.feed.begin(), m_plan.feed.end(),
                  [](const Feed& a, const Feed& b) { return a.colony < b.colony; });
    }

    const PlanRequest& m_request;
    DayView m_view;
    Cautions m_cautions;
    Plan m_plan;
    std::vector<Part> m_part;       ///< by living colony
    std::vector<ColonyIx> m_living; ///< of the yards asked for
};

} // namespace

Plan advise(const Snapshot& s, const PlanRequest& request) { return Planner(viewOf(s), request).plan(); }

AskedPlan adviseAsAsked(const Snapshot& s, const std::vector<MergeWish>& wishes) {
    DayView view = viewOf(s);
    MergeRequest asked = mergeRequest(view, wishes);
    Plan plan = Planner(std::move(view), asked.request).plan();
    return {std::move(plan), std::move(asked.unmet), std::move(asked.request)};
}

} // namespace core::rules
