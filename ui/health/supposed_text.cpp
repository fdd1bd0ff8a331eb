#include "ui/health/supposed_text.h"

#include "core/base/natural_order.h"
#include "ui/health/health_words.h"
#include "ui/look/rule_words.h"

#include <algorithm>
#include <map>

namespace ui::health {

QString supposedText(const core::Snapshot& s, core::ColonyIx colony, const std::vector<core::rules::HeldThen>& more) {
    std::map<core::ColonyId, QStringList> kinds;
    for (const core::rules::HeldThen& h : more) kinds[h.colony] << look::holdWithin(h.kind);
    std::map<qint32, QStringList> byYard;
    for (qint32 i = 0; i < static_cast<qint32>(s.colonies.size()); ++i) {
        const auto held = kinds.find(s.colony({i}).id);
        const core::SnapStay* place = s.placeOf({i});
        if (held == kinds.end() || !place) continue;
        byYard[place->yard.value] << Health::tr("%1 (%2)").arg(s.colony({i}).shown,
                                                               held->second.join(QStringLiteral(", ")));
    }
    const QString name = s.colony(colony).shown;
    if (kinds.empty())
        return Health::tr("Were %1 positive today, no hold would stand that does not stand already.").arg(name);
    QStringList yards;
    for (auto& [yard, names] : byYard) {
        std::ranges::sort(names, core::NaturalLess());
        yards << Health::tr("%1: %2").arg(s.yard({yard}).name, names.join(QStringLiteral(", ")));
    }
    const QString count = kinds.size() == 1 ? Health::tr("1 colony") : Health::tr("%1 colonies").arg(kinds.size());
    return Health::tr(
               "Supposed only, nothing is written: were %1 positive today, %2 would be held that are not, or more "
               "gravely: %3.")
        .arg(name, count, yards.join(QStringLiteral("; ")));
}

} // namespace ui::health
