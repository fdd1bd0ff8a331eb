#include "ui/season/season_place.h"

#include "ui/look/paged.h"
#include "ui/season/season_page.h"

#include <QCoreApplication>

namespace ui::season {

namespace {
struct PlaceWords {
    Q_DECLARE_TR_FUNCTIONS(ui::season::PlaceWords)
};
} // namespace

void addSeasonPages(look::Paged& pages, desk::Desk& desk, Dialogs& dialogs) {
    auto* season = new SeasonDesk(desk, &pages);
    const auto add = [&](const QString& title, const QString& tip, Shown (*show)(SeasonDesk&), bool spans) {
        auto* page = new SeasonPage(*season, dialogs, {title, show, spans}, &pages);
        pages.addPage(title, tip, page);
    };
    add(PlaceWords::tr("Strength"), PlaceWords::tr("Frames of bees, week by week"), strengthShown, true);
    add(PlaceWords::tr("Mites"), PlaceWords::tr("Mites in 100 bees against the threshold"), mitesShown, true);
    add(PlaceWords::tr("Feed"), PlaceWords::tr("Feed given, and what is still needed"), feedShown, true);
    add(PlaceWords::tr("Queens"), PlaceWords::tr("Queens by age"), queensShown, false);
    add(PlaceWords::tr("Winter loss"), PlaceWords::tr("What winters took, with the interval"), lossShown, false);
}

} // namespace ui::season
