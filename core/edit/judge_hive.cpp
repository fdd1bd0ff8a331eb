#include "core/edit/edit_checks.h"
#include "core/edit/judge.h"

#include <algorithm>

namespace core::edit {

namespace {

constexpr Day kNever{INT32_MAX};

bool overlap(const Placement& p, const Placement& q) {
    return p.since < q.until.value_or(kNever) && q.since < p.until.value_or(kNever);
}

[[noreturn]] void refuseShared(const EditContext& c, const Colony& colony, const Placement& taken) {
    const QString other = shownName(c, needColony(c, taken.colony), taken.since);
    const QString name = shownName(c, colony, colony.since);
    const QString stand = c.stand(taken.stand).value_or(Stand{}).name;
    if (taken.until)
        refuse(Edits::tr("%1 stood on stand %2 from %3 to %4; %5 cannot stand there then.")
                   .arg(other, stand, isoText(taken.since), isoText(*taken.until), name));
    refuse(Edits::tr("%1 stands on stand %2 since %3; %4 cannot stand there then.")
               .arg(other, stand, isoText(taken.since), name));
}

Quarters fullestBox(const Visit& v) {
    Quarters most;
    for (const auto& count : {v.beesTop, v.beesBottom, v.upperBeesTop, v.upperBeesBottom, v.stores, v.upperStores})
        most = std::max(most, count.value_or(Quarters{}));
    return most;
}

} // namespace

void judgePlaces(const EditContext& after, const Colony& colony) {
    const auto places = after.placementsOf(colony.id);
    for (size_t i = 0; i < places.size(); ++i) {
        const auto next = i + 1 < places.size() ? std::optional(places[i + 1].since) : colony.ended;
        if (places[i].until != next || (i == 0 && places[i].since != colony.since))
            refuse(Edits::tr("The places of %1 would not follow one another day by day.")
                       .arg(shownName(after, colony, colony.since)));
        for (const Placement& other : after.placementsAt(places[i].stand))
            if (other.colony != colony.id && overlap(places[i], other)) refuseShared(after, colony, other);
    }
}

void judgeCounts(const EditContext& after, const Colony& colony) {
    const auto kind = after.boxKind(colony.box);
    if (!kind) refuse(Edits::tr("That box kind is not in the book."));
    std::vector<Day> unions;
    for (const Lineage& l : after.lineageOf(colony.id))
        if (l.into == colony.id && l.how == LineageHow::United) unions.push_back(l.day);
    std::pair<Day, int> said{colony.since, colony.broodBoxes};
    const auto visits = after.visitsOf(colony.id, -1);
    for (auto at = visits.rbegin(); at != visits.rend(); ++at) {
        const Visit& v = *at;
        if (v.boxes) said = {v.day, *v.boxes};
        const bool united =
            std::any_of(unions.begin(), unions.end(), [&](Day day) { return day <= v.day && day >= said.first; });
        if (countsUpper(v) && !united && said.second == 1)
            refuse(Edits::tr("The visit of %1 on %2 counts an upper box; the colony would be in one brood box then.")
                       .arg(shownName(after, colony, v.day), isoText(v.day)));
        if (const Quarters most = fullestBox(v); most.value > 4 * kind->frames)
            refuse(Edits::tr("The visit of %1 on %2 counts %3 frames in a box; a box of %4 holds %5.")
                       .arg(shownName(after, colony, v.day), isoText(v.day), framesText(most), kind->name,
                            QString::number(kind->frames)));
    }
}

} // namespace core::edit
