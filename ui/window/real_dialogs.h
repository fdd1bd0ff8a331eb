#pragma once

#include "ui/dialogs.h"

namespace ui::window {

/// As one name of a file, in whatever folder: a yard called "../x" leads to no other one.
QString asFileName(QString words);

/// Asks on the screen, over the active window.
class RealDialogs : public Dialogs {
public:
    void showError(const core::Error& error) override;
    void showFaults(const QString& title, const QStringList& faults) override;
    std::optional<QString> bookToOpen() override;
    std::optional<QString> bookToMake() override;
    std::optional<QString> folderOfCsv() override;
    std::optional<QString> csvToRead() override;
    std::optional<QString> pdfToWrite(const QString& suggestedName) override;
    std::optional<QString> fileToWrite(const QString& title, const QString& suggestedName) override;
    std::optional<print::PaperChoice> paperToUse(const print::PaperChoice& usual) override;
    std::optional<core::edit::Correction> correction(const QString& what, const QString& message) override;
    bool leaveAnyway(const QString& why) override;
};

} // namespace ui::window
