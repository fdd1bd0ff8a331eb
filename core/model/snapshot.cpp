#include "core/model/snapshot.h"

#include "core/base/natural_order.h"

#include <algorithm>

namespace core {

namespace {

template <class T> std::span<const T> rowsOf(const std::vector<T>& rows, ColonyIx ix) {
    const auto byColony = [](const T& a, const T& b) { return a.colony < b.colony; };
    T key{};
    key.colony = ix;
    const auto [first, last] = std::equal_range(rows.begin(), rows.end(), key, byColony);
    return {first, last};
}

} // namespace

std::span<const SnapStay> Snapshot::staysOf(ColonyIx ix) const { return rowsOf(stays, ix); }
std::span<const SnapCheck> Snapshot::checksOf(ColonyIx ix) const { return rowsOf(checks, ix); }
std::span<const SnapSign> Snapshot::signsOf(ColonyIx ix) const { return rowsOf(signs, ix); }

const SnapStay* Snapshot::placeOf(ColonyIx ix) const {
    const auto all = staysOf(ix);
    return all.empty() ? nullptr : &all.back();
}

std::optional<ColonyIx> Snapshot::colonyNamed(QStringView name) const {
    const qsizetype at = name.lastIndexOf(u'@');
    const QString key = folded((at < 0 ? name : name.left(at)).trimmed());
    const auto since = at < 0 ? std::nullopt : parseIsoDay(name.mid(at + 1).trimmed());
    if (at >= 0 && !since) return std::nullopt;
    std::optional<ColonyIx> found;
    for (size_t i = 0; i < colonies.size(); ++i) {
        const SnapColony& c = colonies[i];
        if (folded(c.label) != key || (since && c.since != *since)) continue;
        if (!found || colony(*found).since < c.since) found = ColonyIx{static_cast<qint32>(i)};
    }
    return found;
}

std::optional<ColonyIx> Snapshot::livingNamed(QStringView name) const {
    const auto found = colonyNamed(name);
    return found && colony(*found).living() ? found : std::nullopt;
}

std::optional<YardIx> Snapshot::yardNamed(QStringView name) const {
    const QString key = folded(name);
    for (size_t i = 0; i < yards.size(); ++i)
        if (folded(yards[i].name) == key) return YardIx{static_cast<qint32>(i)};
    return std::nullopt;
}

size_t Snapshot::livingCount() const {
    const auto firstEnded =
        std::partition_point(colonies.begin(), colonies.end(), [](const SnapColony& c) { return c.living(); });
    return static_cast<size_t>(firstEnded - colonies.begin());
}

} // namespace core
