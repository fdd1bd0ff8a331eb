#include "ui/kit/kit_book.h"

#include "core/edit/edit_context.h"
#include "core/model/kit_words.h"
#include "ui/look/words.h"
#include "ui/records/record_words.h"

#include <algorithm>

namespace ui::kit {

std::vector<core::rules::KitPile> pilesOf(const core::edit::Session& book, const core::Snapshot& s) {
    std::vector<core::Kit> lots;
    book.read([&](const core::edit::EditContext& c) {
        c.each<core::Kit>([&](const core::Kit& lot) { lots.push_back(lot); });
    });
    return core::rules::kitPiles(lots, core::rules::kitHolds(s, core::rules::coloniesOf(lots)));
}

QString stateText(const QString& state) {
    if (state == core::kit::kToClean) return KitWords::tr("to clean");
    if (state == core::kit::kQuarantined) return KitWords::tr("quarantined");
    if (state == core::kit::kBurned) return KitWords::tr("burned");
    if (state == core::kit::kSterilised) return KitWords::tr("sterilised");
    return KitWords::tr("usable");
}

QString apartText(const core::Snapshot& s, const core::rules::KitPile& pile) {
    const auto colony = std::find_if(s.colonies.begin(), s.colonies.end(),
                                     [&](const core::SnapColony& c) { return c.id == pile.place.colony; });
    const QString name = colony == s.colonies.end() ? KitWords::tr("its colony") : colony->shown;
    if (!pile.hold) return KitWords::tr("kept apart with %1").arg(name);
    return KitWords::tr("kept apart with %1 (%2)").arg(name, core::rules::holdWord(pile.hold->kind));
}

QString endsText(const core::edit::Session& book, const core::Snapshot& s, std::optional<core::YardId> yard) {
    constexpr int kTold = 3;
    QStringList told;
    int more = 0;
    const auto ends = book.kitEnds();
    for (auto e = ends.rbegin(); e != ends.rend(); ++e) {
        if (e->yard != yard) continue;
        if (told.size() == kTold) {
            ++more;
            continue;
        }
        const auto colony = std::ranges::find(s.colonies, e->colony.value_or(core::ColonyId{}), &core::SnapColony::id);
        const QString kit = QStringLiteral("%1 × %2").arg(QString::number(e->count), e->part);
        told << KitWords::tr("%1, %2 on %3 by %4")
                    .arg(colony == s.colonies.end() ? kit : KitWords::tr("%1 off %2").arg(kit, colony->shown),
                         records::kitEndWord(e->how), look::dayText(e->day), e->by);
    }
    if (told.isEmpty()) return {};
    QString text = KitWords::tr("Ended here: %1.").arg(told.join(QStringLiteral("; ")));
    if (more > 0) text += u' ' + KitWords::tr("%1 more: Health, Samples.").arg(more);
    return text;
}

} // namespace ui::kit
