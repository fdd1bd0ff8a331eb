#include "ui/window/open_book.h"

#include "core/base/book_held.h"
#include "core/edit/whole_book.h"
#include "ui/busy/run.h"
#include "ui/desk/file_trouble.h"

#include <QCoreApplication>
#include <QFileInfo>

namespace ui::window {

namespace {

struct Opening {
    Q_DECLARE_TR_FUNCTIONS(Opening)
};

bool mayBeWritten(const QString& path) {
    const QFileInfo file(path);
    return file.isWritable() && QFileInfo(file.canonicalPath()).isWritable();
}

/// What cannot be looked at is not: opening it says why.
bool isOlder(const QString& path) {
    try {
        return core::edit::isOlderBook(path);
    } catch (const core::Error&) {
        return false;
    }
}

/// False: stopped. Where it cannot be, it cannot be read either.
bool broughtUpToDate(const QString& path, QWidget& window) {
    return !isOlder(path) ||
           busy::run(window, Opening::tr("The book of an older version is brought up to date…"),
                     [&](const core::Progress& progress) { core::edit::bringUpToDate(path, progress); });
}

} // namespace

QString onlyReadSince(const core::Error& against, const core::Clock& clock) {
    if (const auto* held = dynamic_cast<const core::BookHeld*>(&against)) return desk::heldSentence(*held, clock);
    return Opening::tr("%1 Here it can only be read.").arg(against.userMessage());
}

OpenedBook openOrRead(const QString& path, const core::Clock& clock, QWidget& window) {
    using core::edit::Session;
    if (!broughtUpToDate(path, window)) return {};
    try {
        return {Session::open(path, clock), {}};
    } catch (const core::Error& against) {
        try {
            return {Session::open(path, clock, Session::Access::ReadOnly), onlyReadSince(against, clock)};
        } catch (const core::Error&) {
            if (!mayBeWritten(path)) throw; // a disk for reading: why it cannot even be read
        }
        throw; // what stood against writing
    }
}

} // namespace ui::window
