#pragma once

#include "ui/dialogs.h"

#include <QObject>

namespace ui::window {

/// Where the book fails under one press of a key, everything that shows it fails: that is said once. All else is asked
/// as it is.
class OneError : public QObject, public Dialogs {
public:
    OneError(Dialogs& real, QObject* parent) : QObject(parent), m_real(real) {}

    void showError(const core::Error& error) override;
    void showFaults(const QString& title, const QStringList& faults) override { m_real.showFaults(title, faults); }
    std::optional<QString> bookToOpen() override { return m_real.bookToOpen(); }
    std::optional<QString> bookToMake() override { return m_real.bookToMake(); }
    std::optional<QString> folderOfCsv() override { return m_real.folderOfCsv(); }
    std::optional<QString> csvToRead() override { return m_real.csvToRead(); }
    std::optional<QString> pdfToWrite(const QString& suggestedName) override {
        return m_real.pdfToWrite(suggestedName);
    }
    std::optional<QString> fileToWrite(const QString& title, const QString& suggestedName) override {
        return m_real.fileToWrite(title, suggestedName);
    }
    std::optional<print::PaperChoice> paperToUse(const print::PaperChoice& usual) override;
    std::optional<core::edit::Correction> correction(const QString& what, const QString& message) override {
        return m_real.correction(what, message);
    }
    bool leaveAnyway(const QString& why) override { return m_real.leaveAnyway(why); }

private:
    Dialogs& m_real;
    bool m_said = false; ///< since the window last rested
};

} // namespace ui::window
