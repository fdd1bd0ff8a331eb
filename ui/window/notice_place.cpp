#include "ui/window/notice_place.h"

#include "ui/health/holds_page.h"
#include "ui/health/sign_notice.h"
#include "ui/look/paged.h"
#include "ui/window/main_window.h"
#include "ui/window/work_page.h"

#include <QBoxLayout>

namespace ui::window {

namespace {

/// The place Health with its page of holds, once the open form lets one leave.
void showHeld(MainWindow& window) {
    window.setPlace(Place::Health);
    auto* pages = qobject_cast<look::Paged*>(window.page()->middleOf(Place::Health));
    auto* held = window.findChild<health::HoldsPage*>();
    if (pages && held && window.page()->place() == Place::Health) pages->show(held);
}

void layNotice(MainWindow& window, Dialogs& dialogs) {
    auto* down = qobject_cast<QBoxLayout*>(window.centralWidget()->layout());
    auto* notice = new health::SignNotice(*window.desk(), dialogs, window.centralWidget());
    down->insertWidget(down->indexOf(window.page()->parentWidget()), notice);
    QObject::connect(notice, &health::SignNotice::healthAsked, &window, [&window] { showHeld(window); });
    QObject::connect(&window, &MainWindow::bookLeaving, notice, [notice] { delete notice; });
}

} // namespace

void wireSignNotice(MainWindow& window, Dialogs& dialogs) {
    QObject::connect(&window, &MainWindow::bookOpened, &window, [&] { layNotice(window, dialogs); });
}

} // namespace ui::window
