#include "ui/window/open_book.h"

#include "core/base/book_held.h"
#include "ui/desk/file_trouble.h"

#include <QCoreApplication>

namespace ui::window {

namespace {

struct Opening {
    Q_DECLARE_TR_FUNCTIONS(Opening)
};

} // namespace

QString onlyReadSince(const core::Error& against, const core::Clock& clock) {
    if (const auto* held = dynamic_cast<const core::BookHeld*>(&against)) return desk::heldSentence(*held, clock);
    return Opening::tr("%1 Here it can only be read.").arg(against.userMessage());
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
