#include "ui/window/open_book.h"

#include "core/base/book_held.h"

#include <QCoreApplication>
#include <QLocale>

namespace ui::window {

namespace {

struct Opening {
    Q_DECLARE_TR_FUNCTIONS(Opening)
};

QString whoHasIt(const core::BookHolder& by) {
    if (by.who.isEmpty() && by.host.isEmpty()) return Opening::tr("Another window has this book open");
    if (by.who.isEmpty()) return Opening::tr("Another window on %1 has this book open").arg(by.host);
    if (by.host.isEmpty()) return Opening::tr("%1 has this book open").arg(by.who);
    return Opening::tr("%1 on %2 has this book open").arg(by.who, by.host);
}

QString sinceText(const QDateTime& since, const core::Clock& clock) {
    if (!since.isValid()) return {};
    const QDateTime here = since.toLocalTime();
    const bool thisDay = here.date() == clock.nowUtc().toLocalTime().date();
    return Opening::tr(" since %1")
        .arg(QLocale::c().toString(here, thisDay ? QStringLiteral("HH:mm") : QStringLiteral("d MMM, HH:mm")));
}

} // namespace

QString onlyReadSince(const core::Error& against, const core::Clock& clock) {
    const auto* held = dynamic_cast<const core::BookHeld*>(&against);
    if (!held) return Opening::tr("%1 Here it can only be read.").arg(against.userMessage());
    return Opening::tr("%1%2: here it can only be read.")
        .arg(whoHasIt(held->holder), sinceText(held->holder.since, clock));
}

OpenedBook openOrRead(const QString& path, const core::Clock& clock) {
    using core::edit::Session;
    try {
        return {Session::open(path, clock), {}};
    } catch (const core::Error& against) {
        try {
            return {Session::open(path, clock, Session::Access::ReadOnly), onlyReadSince(against, clock)};
        } catch (const core::Error&) {
            // for reading neither: what stood against writing is the thing to say
        }
        throw;
    }
}

} // namespace ui::window
