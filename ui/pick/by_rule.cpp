#include "ui/pick/by_rule.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

namespace ui::pick {

namespace rules = core::rules;

namespace {

struct Select {
    Q_DECLARE_TR_FUNCTIONS(Select)
};

/// All that the plan of the day does something with.
std::set<core::ColonyIx> inPlan(const rules::Plan& plan) {
    std::set<core::ColonyIx> out;
    for (const rules::Union& u : plan.unions) out.insert({u.moved, u.host});
    for (const rules::ShakeOut& s : plan.shakeOuts) out.insert({s.colony, s.into});
    for (const rules::Feed& f : plan.feed) out.insert(f.colony);
    for (const rules::Separate& s : plan.separate) out.insert(s.colony);
    return out;
}

std::set<core::ColonyIx> heldAs(const rules::Plan& plan, std::optional<rules::HoldKind> kind) {
    std::set<core::ColonyIx> out;
    for (const rules::Hold& h : plan.holds)
        if (!kind || h.kind == *kind) out.insert(h.colony);
    return out;
}

bool weak(const rules::ColonyFacts& f) {
    return f.strengthClass == rules::StrengthClass::Weak || f.strengthClass == rules::StrengthClass::ShakeOut;
}

std::set<core::ColonyIx> named(Rule rule, const desk::Reading& r) {
    std::set<core::ColonyIx> out;
    switch (rule) {
    case Rule::Held:
        return heldAs(r.plan, {});
    case Rule::BroodNotChecked:
        return heldAs(r.plan, rules::HoldKind::BroodNotChecked);
    case Rule::InPlan:
        return inPlan(r.plan);
    case Rule::Due:
        for (const rules::Due& d : r.plan.due) out.insert(d.colony);
        return out;
    case Rule::Weak:
        for (const rules::ColonyFacts& f : r.facts)
            if (weak(f)) out.insert(f.colony);
        return out;
    case Rule::NotCounted:
        for (const rules::ColonyFacts& f : r.facts)
            if (!f.strength && f.noStrength != rules::NoStrength::NoBees) out.insert(f.colony);
        return out;
    }
    return out;
}

} // namespace

const std::vector<RuleWords>& ruleWords() {
    static const std::vector<RuleWords> kWords{
        {Rule::Weak, Select::tr("&Weak"), Select::tr("Weak on the day shown, or so small that they are shaken out"),
         Select::tr("weak"), Select::tr("No hive of this yard is weak by a count that is in force.")},
        {Rule::Held, Select::tr("&Held"), Select::tr("Held for whatever reason on the day shown"), Select::tr("held"),
         Select::tr("No hive of this yard is held.")},
        {Rule::Due, Select::tr("&Due for a check"), Select::tr("A check is due within 30 days, or overdue"),
         Select::tr("due for a check"), Select::tr("No check is due in this yard.")},
        {Rule::InPlan, Select::tr("In the &plan"),
         Select::tr("United, shaken out, set apart or fed by the plan of the day shown"), Select::tr("in the plan"),
         Select::tr("The plan of this day does nothing in this yard.")},
        {Rule::NotCounted, Select::tr("&Not counted"), Select::tr("Without a count of bees that is in force"),
         Select::tr("not counted"), Select::tr("Every hive of this yard has a count in force.")},
        {Rule::BroodNotChecked, Select::tr("&Brood not checked"),
         Select::tr("Without a brood check that counts in this season"), Select::tr("brood not checked"),
         Select::tr("No hive of this yard is held for want of a brood check.")}};
    return kWords;
}

std::vector<core::ColonyId> hivesBy(Rule rule, const desk::Reading& reading, core::YardIx yard) {
    const std::set<core::ColonyIx> those = named(rule, reading);
    std::vector<core::ColonyId> out;
    for (const rules::ColonyFacts& f : reading.facts)
        if (f.yard == yard && those.contains(f.colony)) out.push_back(reading.snapshot.colony(f.colony).id);
    return out;
}

std::vector<core::ColonyId> allHives(const desk::Reading& reading, core::YardIx yard) {
    std::vector<core::ColonyId> out;
    for (const rules::ColonyFacts& f : reading.facts)
        if (f.yard == yard) out.push_back(reading.snapshot.colony(f.colony).id);
    return out;
}

} // namespace ui::pick
