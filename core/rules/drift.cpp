#include "core/rules/drift.h"

#include <QStringList>

#include <algorithm>
#include <cstdlib>
#include <set>

namespace core::rules {

namespace {

__extension__ using Wide = __int128;

constexpr int kAlikeDeg = 45;

int turnBetween(int a, int b) {
    const int turn = std::abs(a - b) % 360;
    return std::min(turn, 360 - turn);
}

} // namespace

bool withinDrift(const Settings& settings, MmPoint a, MmPoint b) {
    const Wide limit = settings.moveDriftM.value; // micrometres
    return Wide(squaredDistance(a, b)) * 1'000'000 <= limit * limit;
}

std::vector<DriftTo> driftFrom(const Snapshot& s, const SnapStay& emptied, std::span<const Hold> holds,
                               std::span<const Moved> moved) {
    std::set<ColonyIx> held;
    for (const Hold& hold : holds) held.insert(hold.colony);
    std::vector<DriftTo> out;
    for (size_t i = 0; i < s.livingCount(); ++i) {
        const ColonyIx colony{static_cast<qint32>(i)};
        const SnapStay* stay = s.placeOf(colony);
        if (!stay || stay->yard != emptied.yard || colony == emptied.colony) continue;
        const auto away =
            std::find_if(moved.begin(), moved.end(), [colony](const Moved& m) { return m.colony == colony; });
        const auto at = away == moved.end() ? std::optional(stay->at) : away->to;
        if (!at || !withinDrift(s.settings, emptied.at, *at)) continue;
        out.push_back(
            {colony, *at, held.contains(colony), turnBetween(stay->headingDeg, emptied.headingDeg) < kAlikeDeg});
    }
    const auto likelier = [&](const DriftTo& a, const DriftTo& b) {
        const qint64 farA = distanceTenths(emptied.at, a.at);
        const qint64 farB = distanceTenths(emptied.at, b.at);
        return farA != farB ? farA < farB : a.looksAlike && !b.looksAlike;
    };
    std::stable_sort(out.begin(), out.end(), likelier);
    return out;
}

QString driftName(const Snapshot& s, ColonyIx colony, MmPoint emptied, MmPoint at) {
    const LengthUnit unit = s.settings.showLength;
    return QStringLiteral("%1 (%2 %3)")
        .arg(s.colony(colony).shown, decimalText(distanceTenths(emptied, at, unit), 1), unitSign(unit));
}

QString driftSentence(const Snapshot& s, const QString& name, MmPoint emptied, std::span<const DriftTo> to) {
    constexpr qsizetype kMost = 3;
    QStringList named;
    int more = 0;
    for (const DriftTo& d : to) {
        const QString text = driftName(s, d.colony, emptied, d.at);
        if (d.held)
            named += QStringLiteral("held ") + text;
        else if (named.size() < kMost)
            named += text;
        else
            ++more;
    }
    if (more > 0) named += QStringLiteral("%1 more").arg(more);
    const QString looked = QStringLiteral("Foragers will look for %1 at its old place; ").arg(name);
    if (named.isEmpty()) return looked + QStringLiteral("no hive stands near it.");
    const QString last = named.takeLast();
    const bool one = named.isEmpty() && more == 0;
    const QString all = named.isEmpty() ? last : named.join(QLatin1StringView(", ")) + QStringLiteral(" and ") + last;
    return looked + all + (one ? QStringLiteral(" stands next to it.") : QStringLiteral(" stand next to it."));
}

} // namespace core::rules
