#include "ui/desk/file_trouble.h"

#include "core/base/book_replaced.h"

#include <QCoreApplication>
#include <QLocale>

namespace ui::desk {

namespace {

using core::BookHeld;
using core::BookReplaced;
using Kind = FileTrouble::Kind;

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

Kind kindOf(BookReplaced::How how) {
    switch (how) {
    case BookReplaced::How::Gone:
        return Kind::Gone;
    case BookReplaced::How::Other:
        return Kind::Other;
    case BookReplaced::How::Rewritten:
        return Kind::Rewritten;
    }
    return Kind::None;
}

} // namespace

QString heldSentence(const BookHeld& held, const core::Clock& clock) {
    const QString who = whoHasIt(held.holder) + sinceText(held.holder.since, clock);
    if (held.known == BookHeld::Known::Locked) return Opening::tr("%1: here it can only be read.").arg(who);
    return Opening::tr(
               "%1, says a note that came with the folder. That machine cannot be asked from here: it may still "
               "be writing, or have stopped without taking its note away. Here the book can only be read; if it "
               "is closed there, change it here. Two who write at once make two books.")
        .arg(who);
}

FileTrouble troubleOf(const core::Error& error, const core::Clock& clock) {
    if (const auto* replaced = dynamic_cast<const BookReplaced*>(&error))
        return {kindOf(replaced->how), replaced->userMessage(), replaced->nowAt};
    if (const auto* held = dynamic_cast<const BookHeld*>(&error))
        return {held->known == BookHeld::Known::Noted ? Kind::Noted : Kind::Held, heldSentence(*held, clock), {}};
    return {};
}

} // namespace ui::desk
