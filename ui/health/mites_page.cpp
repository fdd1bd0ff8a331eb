#include "ui/health/mites_page.h"

#include "ui/health/mite_shown.h"

#include <QCoreApplication>

namespace ui::health {

season::SeasonPage* mitesPage(desk::Desk& desk, Dialogs& dialogs, QWidget* parent) {
    auto* season = new season::SeasonDesk(desk, parent);
    const QString title = QCoreApplication::translate("ui::health::MitesPage", "Mites");
    return new season::SeasonPage(*season, dialogs, {title, mitesOfHealth, true}, parent);
}

} // namespace ui::health
