#include "ui/window/places.h"

#include "ui/look/paged.h"
#include "ui/window/work_page.h"

#include <QCoreApplication>

namespace ui::window {

namespace {

struct Places {
    Q_DECLARE_TR_FUNCTIONS(ui::window::Places)
};

/// Shown once it has a page.
void add(WorkPage& page, Place place, look::Paged* pages) {
    if (pages->shown())
        page.addPlace(place, pages);
    else
        delete pages;
}

look::Paged* coloniesPlace(WorkPage& page, desk::Desk&, Dialogs&) {
    auto* pages = new look::Paged(Places::tr("Pages of the colonies"), &page);
    return pages;
}

look::Paged* visitsPlace(WorkPage& page, desk::Desk&, Dialogs&) {
    auto* pages = new look::Paged(Places::tr("Pages of the visits"), &page);
    return pages;
}

look::Paged* seasonPlace(WorkPage& page, desk::Desk&, Dialogs&) {
    auto* pages = new look::Paged(Places::tr("Pages of the season"), &page);
    return pages;
}

} // namespace

void addPlaces(WorkPage& page, desk::Desk& desk, Dialogs& dialogs) {
    add(page, Place::Colonies, coloniesPlace(page, desk, dialogs));
    add(page, Place::Visits, visitsPlace(page, desk, dialogs));
    add(page, Place::Season, seasonPlace(page, desk, dialogs));
}

} // namespace ui::window
