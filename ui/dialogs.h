#pragma once

#include "core/base/error.h"
#include "core/edit/session.h"

#include <QDebug>
#include <QString>
#include <QStringList>

#include <optional>
#include <utility>

namespace ui::print {
struct PaperChoice;
}

namespace ui {

/// Every question to the user goes through here: the real ones ask on the screen, tests answer as they were told.
struct Dialogs {
    virtual ~Dialogs() = default;

    virtual void showError(const core::Error& error) = 0;
    /// Many sentences at once, e.g. an import's faults.
    virtual void showFaults(const QString& title, const QStringList& faults) = 0;
    virtual std::optional<QString> bookToOpen() = 0;
    virtual std::optional<QString> bookToMake() = 0;
    virtual std::optional<QString> folderOfCsv() = 0;
    /// One file, of whatever program.
    virtual std::optional<QString> csvToRead() = 0;
    virtual std::optional<QString> pdfToWrite(const QString& suggestedName) = 0;
    /// `title` says what of; its ending (".svg") is that of the name.
    virtual std::optional<QString> fileToWrite(const QString& title, const QString& suggestedName) = 0;
    /// How a sheet is to be printed, before it goes to preview, printer or PDF. Nothing: it is not printed.
    virtual std::optional<print::PaperChoice> paperToUse(const print::PaperChoice& usual) = 0;
    /// A record on which a foulbrood hold rests is to be taken back: `message` names the holds that would change.
    /// Both name and reason, or nothing.
    virtual std::optional<core::edit::Correction> correction(const QString& what, const QString& message) = 0;
    /// Something typed would be lost by it, as `why` says: whether the book is left nonetheless.
    virtual bool leaveAnyway(const QString& why) = 0;
};

/// Every slot that can throw runs in here: Qt does not let an exception leave a slot.
template <class Fn> void guarded(Dialogs& dialogs, Fn&& work) {
    try {
        std::forward<Fn>(work)();
    } catch (const core::Error& e) {
        qWarning().noquote() << e.what() << e.detail();
        dialogs.showError(e);
    } catch (const std::exception& e) {
        const core::Error unknown(core::Error::Kind::Internal, QString::fromUtf8(e.what()));
        qWarning().noquote() << unknown.what();
        dialogs.showError(unknown);
    }
}

} // namespace ui
