#include "ui/season/season_desk.h"

#include "core/rules/season.h"
#include "ui/look/words.h"
#include "ui/print/book_origin.h"

#include <algorithm>
#include <set>

namespace ui::season {

namespace rules = core::rules;

SeasonDesk::SeasonDesk(desk::Desk& desk, QObject* parent) : QObject(parent), m_desk(desk) {
    connect(&m_desk, &desk::Desk::read, this, [this] {
        forget();
        emit changed();
    });
    connect(&m_desk, &desk::Desk::yardChanged, this, [this] {
        if (m_allYards) return;
        forgetSpan();
        emit changed();
    });
}

void SeasonDesk::setAllYards(bool all) {
    if (all == m_allYards) return;
    m_allYards = all;
    forgetSpan();
    emit changed();
}

void SeasonDesk::setSpan(Span span) {
    if (span == m_span) return;
    m_span = span;
    forgetSpan();
    emit changed();
}

std::optional<core::YardIx> SeasonDesk::yard() const {
    const auto yard = m_allYards ? std::nullopt : m_desk.yard();
    return yard ? reading().find(*yard) : std::nullopt;
}

/// Of all yards: where there are northern ones, as there.
bool SeasonDesk::southern() const {
    const auto& yards = reading().snapshot.yards;
    if (const auto one = yard()) return reading().snapshot.yard(*one).southern();
    return !yards.empty() && std::ranges::all_of(yards, &core::SnapYard::southern);
}

bool SeasonDesk::limited() const {
    constexpr size_t kMany = 3000; // colonies, living or ended: some 300,000 visits in ten years
    return m_span == Span::AllYears && !yard() && reading().snapshot.colonies.size() > kMany;
}

core::Day SeasonDesk::from() const {
    switch (limited() ? Span::TwelveMonths : m_span) {
    case Span::Season:
        return rules::latestStart(day(), reading().snapshot.settings.seasonStart, southern());
    case Span::TwelveMonths:
        return core::dayOf(core::toDate(day()).addYears(-1)) + 1;
    case Span::AllYears:
        break;
    }
    core::Day first = day();
    const auto only = yard();
    for (const core::SnapStay& stay : reading().snapshot.stays)
        if (!only || stay.yard == *only) first = std::min(first, stay.since);
    return first;
}

QString SeasonDesk::where() const {
    if (const auto one = yard()) return reading().snapshot.yard(*one).name;
    return reading().snapshot.yards.empty() ? tr("no yard") : tr("all yards");
}

QString SeasonDesk::spanText() const {
    return tr("%1 to %2").arg(look::dayTextFrom(from(), day()), look::dayText(day()));
}

QString SeasonDesk::foot() const {
    return tr("%1 · revision %2 · %3")
        .arg(m_desk.session().bookTitle())
        .arg(print::revisionOf(m_desk.session()))
        .arg(look::dayText(day()));
}

void SeasonDesk::forget() {
    m_queens.reset();
    m_ledger.reset();
    forgetSpan();
}

void SeasonDesk::forgetSpan() {
    m_before.reset();
    m_visits = {};
    m_feedings = {};
}

rules::SeasonBook SeasonDesk::book() {
    if (!m_before) readVisits();
    return {m_before->on + 1, *m_before, reading().snapshot, yard(), m_visits, m_feedings};
}

void SeasonDesk::readVisits() {
    const core::Day first = from();
    core::Snapshot before = session().snapshot(first - 1);
    m_visits = visitsSince(first);
    m_feedings = session().feedingsBetween(first, day());
    m_before = std::move(before);
}

std::vector<core::Visit> SeasonDesk::visitsSince(core::Day first) const {
    const auto only = yard();
    auto visits =
        session().visitsBetween(first, day(), only ? std::optional(reading().snapshot.yard(*only).id) : std::nullopt);
    if (only) addVisitsElsewhere(visits, first);
    return visits;
}

/// A colony that came to the yard or left it was visited in other yards, too: what was seen there goes with it.
void SeasonDesk::addVisitsElsewhere(std::vector<core::Visit>& visits, core::Day first) const {
    constexpr int kAll = 1'000'000;
    const core::Snapshot& s = reading().snapshot;
    const auto only = yard();
    std::set<core::VisitId> known;
    for (const core::Visit& v : visits) known.insert(v.id);
    for (size_t i = 0; i < s.colonies.size(); ++i) {
        const auto stays = s.staysOf({static_cast<qint32>(i)});
        const auto here = [&](const core::SnapStay& stay) { return stay.yard == *only; };
        const bool came = std::ranges::any_of(stays, here) && !std::ranges::all_of(stays, here);
        if (!came || (s.colonies[i].ended && *s.colonies[i].ended < first)) continue;
        for (core::Visit& v : m_desk.session().visitsOf(s.colonies[i].id, kAll))
            if (v.day >= first && v.day <= day() && known.insert(v.id).second) visits.push_back(std::move(v));
    }
    std::ranges::stable_sort(visits, {}, &core::Visit::day);
}

const std::vector<core::Queen>& SeasonDesk::queens() {
    if (!m_queens) m_queens = m_desk.session().queens();
    return *m_queens;
}

const std::vector<rules::LedgerYear>& SeasonDesk::ledger() {
    if (!m_ledger) m_ledger = rules::ledger(reading().snapshot);
    return *m_ledger;
}

} // namespace ui::season
