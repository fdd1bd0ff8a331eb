#pragma once

#include "ui/dialogs.h"
#include "ui/print/paper_choice.h"

#include <QStringList>

namespace tests {

/// Answers as it was told; a question that was not expected fails the test.
struct TestDialogs : ui::Dialogs {
    std::optional<core::edit::Correction> correctionAnswer; ///< not set: answers with nothing
    bool expectCorrection = false;
    bool expectError = false;
    std::optional<bool> leave; ///< of leaveAnyway
    QStringList leaving;       ///< why it was asked
    std::optional<QString> folder;
    std::optional<QString> csv; ///< of csvToRead
    std::optional<QString> pdf;
    std::optional<QString> file;                      ///< of fileToWrite
    QString suggested;                                ///< its name, as last proposed
    std::optional<ui::print::PaperChoice> paper;      ///< not set: as is usual
    std::optional<ui::print::PaperChoice> usualPaper; ///< as last proposed
    bool cancelPaper = false;
    std::optional<QString> made; ///< the path of a new book
    QStringList errors;
    QStringList faults;
    QStringList asked;

    void showError(const core::Error& error) override;
    void showFaults(const QString& title, const QStringList& faults) override;
    std::optional<QString> bookToOpen() override;
    std::optional<QString> bookToMake() override;
    std::optional<QString> folderOfCsv() override;
    std::optional<QString> csvToRead() override;
    std::optional<QString> pdfToWrite(const QString& suggestedName) override;
    std::optional<QString> fileToWrite(const QString& title, const QString& suggestedName) override;
    std::optional<ui::print::PaperChoice> paperToUse(const ui::print::PaperChoice& usual) override;
    std::optional<core::edit::Correction> correction(const QString& what, const QString& message) override;
    bool leaveAnyway(const QString& why) override;
};

} // namespace tests
