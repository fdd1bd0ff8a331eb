#include "ui/health/what_now.h"

#include "core/rules/notifiable.h"
#include "ui/health/health_words.h"

namespace ui::health {

QString whatNow(core::Sign what) {
    if (what == core::Sign::Afb)
        return Health::tr("Now: stop work in the yard, close the hives, clean hands and tools, let nothing leave or "
                          "enter, and tell the inspector: it is notifiable nearly everywhere. The authority decides "
                          "what is done; the program only advises.");
    if (what == core::Sign::Efb)
        return Health::tr("Now: stop, close the hive, clean hands and tools before the next one, let no bees, combs or "
                          "boxes leave it, and tell the inspector where it is notifiable, as it is in many places. "
                          "Local law decides what is done; the program only advises.");
    return Health::tr("Now: stop, close the hive, clean hands and tools before the next one, and let no bees, combs or "
                      "boxes leave it. A doubt is foulbrood until a sample or a full check says otherwise: have it "
                      "looked at, and tell the inspector, as foulbrood is notifiable nearly everywhere. Local law "
                      "decides what is done; the program only advises.");
}

QString whomToTell(const core::edit::Session& session, core::Sign what) {
    const auto keeper = session.keeper();
    if (!keeper || keeper->place.isEmpty() || what == core::Sign::BroodDoubt) return {};
    const auto disease = what == core::Sign::Afb ? core::Reportable::Afb : core::Reportable::Efb;
    return core::rules::reportText(keeper->place, disease, session.notifiables());
}

} // namespace ui::health
