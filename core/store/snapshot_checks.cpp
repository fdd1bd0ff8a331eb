#include "core/base/damaged.h"
#include "core/store/check_reach.h"
#include "core/store/snapshot_parts.h"

#include <algorithm>
#include <tuple>

namespace core::store {

namespace {

/// Rule 4.4.3.
bool clean(const SnapCheck& check, const Settings& settings) {
    const int asked =
        check.broodFrames < 0 ? settings.checkMinFrames : std::min<int>(settings.checkMinFrames, check.broodFrames);
    return check.checked >= 1 && check.checked >= asked && !check.signs.broodTrouble();
}

/// What a damaged file has beyond what a record can hold is no brood frame: it lifts nothing.
qint16 frameCount(int number) {
    if (number < -1 || number > 1000)
        throw Damaged(QStringLiteral("The book is damaged: a number of brood frames in it is none."));
    return static_cast<qint16>(number);
}

/// The checks of one colony, oldest first, from `from` on and back to its latest clean one.
void addChecks(SnapshotBuild& b, Statement& row, ColonyIx colony, Day from) {
    const size_t first = b.s.checks.size();
    bool anyClean = !b.s.colony(colony).living(); // that of an ended colony is asked for by nobody
    row.bind(1, b.s.colony(colony).id.value);
    while (row.step()) {
        SnapCheck check{colony, row.day(0), frameCount(row.small(1)), frameCount(row.optionalInt(2).value_or(-1)),
                        b.signs.of(row.integer(3))};
        if (check.day < from && anyClean) break;
        anyClean = anyClean || clean(check, b.s.settings);
        b.s.checks.push_back(check);
    }
    row.reset();
    std::reverse(b.s.checks.begin() + static_cast<std::ptrdiff_t>(first), b.s.checks.end());
}

} // namespace

void VisitSigns::add(qint64 visit, Sign sign) {
    if (m_signs.empty() || m_signs.back().first != visit) m_signs.push_back({visit, {}});
    m_signs.back().second.add(sign);
}

Signs VisitSigns::of(qint64 visit) const {
    const auto found = std::lower_bound(m_signs.begin(), m_signs.end(), visit,
                                        [](const auto& entry, qint64 id) { return entry.first < id; });
    return found != m_signs.end() && found->first == visit ? found->second : Signs{};
}

void readSigns(SnapshotBuild& b) {
    Statement row = b.db.prepare("SELECT visit, sign FROM visit_sign ORDER BY visit");
    while (row.step()) b.signs.add(row.integer(0), enumAt<Sign>(row, 1));
    // Rules look back only for these three; other signs count at a colony's latest visit alone.
    // CROSS JOIN: from the few signs to their visits, never the other way.
    Statement trouble =
        b.db.prepare("SELECT v.id, v.colony, v.day FROM (SELECT DISTINCT visit AS id FROM visit_sign WHERE sign IN "
                     "('afb', 'efb', 'brood-doubt')) s CROSS JOIN visit v ON v.id = s.id WHERE v.day <= ?");
    trouble.bind(1, b.s.on);
    while (trouble.step()) {
        const ColonyIx colony{colonyNamed(b, trouble.integer(1))};
        if (colony.value >= 0) b.s.signs.push_back({colony, trouble.day(2), b.signs.of(trouble.integer(0))});
    }
    std::sort(b.s.signs.begin(), b.s.signs.end(), [](const SnapSign& x, const SnapSign& y) {
        return std::tie(x.colony, x.day) < std::tie(y.colony, y.day);
    });
}

void readChecks(SnapshotBuild& b, Checks checks) {
    std::vector<Day> from(b.s.colonies.size(), Day{0});
    if (checks == Checks::Needed) from = checksNeededFrom(b.s);
    Statement row = b.db.prepare("SELECT day, brood_checked, brood_frames, id FROM visit INDEXED BY visit_check "
                                 "WHERE colony = ? AND day <= ? AND brood_checked >= 1 ORDER BY day DESC");
    row.bind(2, b.s.on);
    for (size_t i = 0; i < b.s.colonies.size(); ++i) {
        const ColonyIx colony{static_cast<qint32>(i)};
        if (b.s.colony(colony).living() || from[i] <= b.s.on) addChecks(b, row, colony, from[i]);
    }
}

} // namespace core::store
