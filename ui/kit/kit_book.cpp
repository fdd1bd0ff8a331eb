#include "ui/kit/kit_book.h"

#include "core/edit/edit_context.h"
#include "core/model/kit_words.h"

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

} // namespace ui::kit
