#include "core/edit/carrying.h"

#include "core/edit/edit_checks.h"
#include "core/edit/row_change.h"
#include "core/rules/yard_moves.h"

#include <QStringList>

#include <algorithm>
#include <map>

namespace core::edit {

namespace {

void checkDay(const EditContext& c, const Colony& colony, const Placement& open, Day day) {
    needLife(c, colony, day);
    if (colony.ended)
        refuse(Edits::tr("%1 ended on %2; its hive is no longer carried.")
                   .arg(shownName(c, colony, day), isoText(*colony.ended)));
    if (day < open.since)
        refuse(Edits::tr("%1 was carried on %2; an earlier carry cannot be added after it.")
                   .arg(shownName(c, colony, day), isoText(open.since)));
}

const Stand* standAt(const std::vector<Stand>& stands, MmPoint at) {
    // A stand in use before one that was taken away.
    const Stand* found = nullptr;
    for (const Stand& stand : stands)
        if (stand.at == at && (!found || (found->removed && !stand.removed))) found = &stand;
    return found;
}

bool comesBack(const EditContext& c, const OnTheWay& hive) {
    if (!hive.today || !hive.before) return false;
    const auto home = c.stand(hive.before->stand);
    return home && home->yard == hive.to.yard && home->at == hive.to.to;
}

/// Sets hives down one after the other, in one change.
class SettingDown {
public:
    explicit SettingDown(const EditContext& c) : m_c(c), m_nextPlacement(c.nextId(Table::Placement)) {}

    void checkGround(const std::vector<OnTheWay>& hives);
    /// The carry of that day is gone, or the open place ends.
    void leave(const OnTheWay& hive);
    void arrive(const OnTheWay& hive);
    /// First carry of the day: the open place has ended, a new one begins. A second one alone keeps its row.
    void moveAlone(const OnTheWay& hive);
    void dropStands(const std::vector<OnTheWay>& hives);
    std::vector<RowChange> take() { return std::move(m_change.rows); }

private:
    std::vector<Stand>& standsOf(YardId yard);
    Stand standFor(const OnTheWay& hive);

    const EditContext& m_c;
    qint64 m_nextPlacement;
    qint64 m_newStands = 0;
    std::map<YardId, std::vector<Stand>> m_stands; ///< with those that the change makes
    std::vector<StandId> m_taken;
    ChangeSet m_change;
};

std::vector<Stand>& SettingDown::standsOf(YardId yard) {
    const auto found = m_stands.find(yard);
    return found != m_stands.end() ? found->second : m_stands.emplace(yard, m_c.standsOf(yard)).first->second;
}

void SettingDown::checkGround(const std::vector<OnTheWay>& hives) {
    std::vector<ColonyId> together;
    for (const OnTheWay& hive : hives) together.push_back(hive.colony.id);
    for (size_t i = 0; i < hives.size(); ++i) {
        const CarryTo& to = hives[i].to;
        needBareGround(m_c, standsOf(to.yard), to.to, together, to.day);
        for (size_t j = 0; j < i; ++j)
            if (hives[j].to.yard == to.yard &&
                squaredDistance(hives[j].to.to, to.to) < qint64(kStandApartMm) * kStandApartMm)
                refuse(Edits::tr("%1 and %2 would stand on one another; hives stand at least 0.3 m apart.")
                           .arg(hives[j].colony.label, hives[i].colony.label));
    }
}

/// The stand at that point, which the change makes or brings back where there is none.
Stand SettingDown::standFor(const OnTheWay& hive) {
    std::vector<Stand>& stands = standsOf(hive.to.yard);
    if (const Stand* old = standAt(stands, hive.to.to)) {
        m_taken.push_back(old->id);
        return standAgain(*old, m_change);
    }
    const Stand fresh{StandId{m_c.nextId(Table::Stand) + m_newStands++}, hive.to.yard, nextStandName(stands),
                      hive.to.to, false};
    m_change.rows.push_back(added(fresh));
    m_taken.push_back(fresh.id);
    stands.push_back(fresh);
    return fresh;
}

void SettingDown::leave(const OnTheWay& hive) {
    if (hive.today) {
        m_change.rows.push_back(deleted(*hive.today));
        return;
    }
    Placement left = hive.open;
    left.until = hive.to.day;
    m_change.rows.push_back(changed(hive.open, left));
}

void SettingDown::arrive(const OnTheWay& hive) {
    if (comesBack(m_c, hive)) {
        Placement open = *hive.before;
        open.until.reset();
        m_change.rows.push_back(changed(*hive.before, open));
        m_taken.push_back(open.stand);
        return;
    }
    const Stand there = standFor(hive);
    std::optional<int> heading = hive.to.headingDeg;
    if (!heading && hive.today) heading = hive.today->headingDeg;
    m_change.rows.push_back(added(Placement{PlacementId{m_nextPlacement++}, hive.colony.id, there.id, heading,
                                            hive.to.day, std::nullopt, false}));
}

void SettingDown::moveAlone(const OnTheWay& hive) {
    if (!hive.today || comesBack(m_c, hive)) {
        leave(hive);
        return arrive(hive);
    }
    Placement moved = *hive.today;
    moved.stand = standFor(hive).id;
    if (hive.to.headingDeg) moved.headingDeg = hive.to.headingDeg;
    m_change.rows.push_back(changed(*hive.today, moved));
}

void SettingDown::dropStands(const std::vector<OnTheWay>& hives) {
    for (const OnTheWay& hive : hives)
        if (hive.today && std::find(m_taken.begin(), m_taken.end(), hive.today->stand) == m_taken.end())
            dropStandOf(m_c, *hive.today, m_change);
}

} // namespace

OnTheWay onTheWay(const EditContext& c, const CarryTo& carry) {
    constexpr int kFarthestMm = 10'000'000;
    constexpr int kLastHeading = 359;
    OnTheWay hive;
    hive.to = carry;
    hive.colony = needColony(c, carry.colony);
    if (hive.colony.ended) checkDay(c, hive.colony, {}, carry.day);
    const auto open = c.openPlacement(carry.colony);
    const auto stand = open ? c.stand(open->stand) : std::nullopt;
    if (!stand) refuse(Edits::tr("%1 stands on no stand.").arg(hive.colony.label));
    hive.open = *open;
    hive.stand = *stand;
    checkDay(c, hive.colony, *open, carry.day);
    if (open->since == carry.day && !open->first) {
        hive.today = open;
        const auto all = c.placementsOf(carry.colony);
        if (all.size() > 1) hive.before = all[all.size() - 2];
    }
    needYard(c, carry.yard);
    if (hive.movesNowhere()) return hive;
    if (std::max(std::abs(carry.to.x), std::abs(carry.to.y)) > kFarthestMm)
        refuse(Edits::tr("A stand lies at most 10000 m from the yard's origin."));
    checkRange(carry.headingDeg, 0, kLastHeading, Edits::tr("Heading"));
    return hive;
}

std::vector<RowChange> setDown(const EditContext& c, const std::vector<OnTheWay>& hives) {
    SettingDown down(c);
    down.checkGround(hives);
    if (hives.size() == 1) {
        down.moveAlone(hives.front());
    } else {
        for (const OnTheWay& hive : hives) down.leave(hive);
        for (const OnTheWay& hive : hives) down.arrive(hive);
    }
    down.dropStands(hives);
    return down.take();
}

std::function<QString(const EditContext&)> againstYards(const std::vector<OnTheWay>& hives) {
    std::vector<std::pair<ColonyId, YardId>> moves;
    for (const OnTheWay& hive : hives)
        if (!hive.staysInYard()) moves.emplace_back(hive.colony.id, hive.to.yard);
    if (moves.empty()) return {};
    return [moves, day = hives.front().to.day](const EditContext& c) {
        QStringList against = rules::againstYardMoves(c.snapshot(day), moves);
        if (against.isEmpty() && day < c.today()) against = rules::againstYardMoves(c.snapshot(c.today()), moves);
        if (against.isEmpty()) return QString();
        return Edits::tr("Refused: %1 While a foulbrood or order hold stands in either yard, no hive goes from one to "
                         "the other; the inspector decides. Where it has been carried all the same, that is recorded "
                         "as a fact: give a reason and a name.")
            .arg(against.join(u' '));
    };
}

} // namespace core::edit
