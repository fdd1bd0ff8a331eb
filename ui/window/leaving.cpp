#include "ui/window/leaving.h"

#include "ui/close/close_work.h"
#include "ui/entry/entry_desk.h"
#include "ui/window/work_page.h"

#include <QCoreApplication>

namespace ui::window {

namespace {

struct Leaving {
    Q_DECLARE_TR_FUNCTIONS(Leaving)
};

/// Why it cannot be kept; empty: it is.
template <class Keep> QString unkept(Keep&& keep) {
    try {
        keep();
        return {};
    } catch (const core::Error& e) {
        return e.userMessage();
    }
}

} // namespace

bool mayLeave(const WorkPage& page, Dialogs& dialogs) {
    QStringList lost;
    if (page.entry()->drafts().behind()) lost << unkept([&] { page.entry()->catchUp(); });
    for (close::CloseWork* work : page.findChildren<close::CloseWork*>())
        if (work->behind()) lost << unkept([&] { work->catchUp(); });
    lost.removeAll(QString());
    if (lost.isEmpty()) return true;
    return dialogs.leaveAnyway(
        Leaving::tr("%1\n\nClose the book nonetheless? What is typed and not saved is lost then.")
            .arg(lost.join(u'\n')));
}

} // namespace ui::window
