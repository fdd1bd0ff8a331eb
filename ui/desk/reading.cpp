#include "ui/desk/reading.h"

#include "core/rules/question.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <set>

namespace ui::desk {

namespace {

struct Readings {
    Q_DECLARE_TR_FUNCTIONS(Readings)
};

struct Tally {
    int hives = 0;
    int unions = 0;
    int held = 0;
    int counted = 0;
};

QString statusOf(const Tally& t) {
    if (t.hives == 0) return Readings::tr("no hives");
    QStringList parts;
    if (t.unions > 0) parts << (t.unions == 1 ? Readings::tr("1 union") : Readings::tr("%1 unions").arg(t.unions));
    if (t.held > 0) parts << Readings::tr("%1 held").arg(t.held);
    if (t.counted == 0) parts << Readings::tr("not counted");
    return parts.isEmpty() ? Readings::tr("nothing to do") : parts.join(QStringLiteral(" · "));
}

} // namespace

std::optional<core::ColonyIx> Reading::find(core::ColonyId colony) const {
    const auto it = byId.find(colony);
    return it == byId.end() ? std::nullopt : std::optional(it->second);
}

std::optional<core::YardIx> Reading::find(core::YardId yard) const {
    for (size_t i = 0; i < snapshot.yards.size(); ++i)
        if (snapshot.yards[i].id == yard) return core::YardIx{static_cast<qint32>(i)};
    return std::nullopt;
}

std::vector<core::rules::Hold> Reading::holdsOf(core::ColonyIx colony) const {
    std::vector<core::rules::Hold> out;
    for (const core::rules::Hold& h : plan.holds)
        if (h.colony == colony) out.push_back(h);
    return out;
}

const core::rules::Union* Reading::unionOf(core::ColonyIx colony) const {
    for (const core::rules::Union& u : plan.unions)
        if (u.moved == colony || u.host == colony) return &u;
    return nullptr;
}

const core::rules::MergeWish* Reading::wishOf(core::YardId yard) const {
    for (const core::rules::MergeWish& wish : wishes)
        if (wish.day.yard == yard) return &wish;
    return nullptr;
}

Reading readingOf(core::Snapshot snapshot, std::vector<core::rules::MergeWish> wishes) {
    Reading r;
    r.snapshot = std::move(snapshot);
    r.facts = core::rules::colonyFacts(r.snapshot);
    r.wishes = std::move(wishes);
    core::rules::AskedPlan asked = core::rules::adviseAsAsked(r.snapshot, r.wishes);
    r.plan = std::move(asked.plan);
    r.unmet = std::move(asked.unmet);
    r.request = std::move(asked.request);
    for (size_t i = 0; i < r.facts.size(); ++i)
        r.byId.emplace(r.snapshot.colonies[i].id, core::ColonyIx{static_cast<qint32>(i)});
    return r;
}

QStringList Reading::askedOf(core::ColonyIx colony) const {
    QStringList names;
    for (const Asked& a : asked)
        if (std::ranges::binary_search(a.found, colony)) names << a.question.name;
    return names;
}

std::vector<core::rules::ColonyFigures> Reading::figures() const {
    return core::rules::colonyFigures(snapshot, facts, plan.holds, plan.due);
}

void askQuestions(Reading& reading, const std::vector<core::Question>& questions) {
    reading.asked.clear();
    std::vector<core::rules::ColonyFigures> figures;
    for (const core::Question& q : questions) {
        const auto ask = q.onPlan ? core::rules::readAsk(q.ask) : std::nullopt;
        if (!ask) continue;
        if (figures.empty()) figures = reading.figures();
        core::rules::Answer found = core::rules::answer(reading.snapshot, figures, *ask);
        reading.asked.push_back({q, std::move(found.found), found.noFigure});
    }
}

std::vector<YardLine> yardLines(const Reading& reading) {
    std::vector<Tally> tallies(reading.snapshot.yards.size());
    const auto of = [&tallies](core::YardIx yard) -> Tally& { return tallies[static_cast<size_t>(yard.value)]; };
    for (const core::rules::ColonyFacts& f : reading.facts) {
        if (f.yard.value < 0) continue;
        ++of(f.yard).hives;
        if (f.strength) ++of(f.yard).counted;
    }
    for (const core::rules::Union& u : reading.plan.unions) ++of(u.yard).unions;
    std::set<core::ColonyIx> held;
    for (const core::rules::Hold& h : reading.plan.holds)
        if (held.insert(h.colony).second && reading.factsOf(h.colony).yard.value >= 0)
            ++of(reading.factsOf(h.colony).yard).held;
    std::vector<YardLine> out;
    for (size_t i = 0; i < tallies.size(); ++i)
        out.push_back(
            {reading.snapshot.yards[i].id, reading.snapshot.yards[i].name, tallies[i].hives, statusOf(tallies[i])});
    return out;
}

} // namespace ui::desk
