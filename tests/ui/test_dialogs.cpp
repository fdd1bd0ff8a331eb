#include "tests/ui/test_dialogs.h"

#include <gtest/gtest.h>

namespace tests {

void TestDialogs::showError(const core::Error& error) {
    errors << error.userMessage();
    if (!expectError) ADD_FAILURE() << "an error was shown: " << error.what();
}

void TestDialogs::showFaults(const QString&, const QStringList& shown) { faults << shown; }

std::optional<QString> TestDialogs::bookToOpen() {
    ADD_FAILURE() << "asked for a book to open";
    return std::nullopt;
}

std::optional<QString> TestDialogs::bookToMake() {
    if (!made) ADD_FAILURE() << "asked for a book to make";
    return made;
}

std::optional<QString> TestDialogs::folderOfCsv() {
    if (!folder) ADD_FAILURE() << "asked for a folder";
    return folder;
}

std::optional<QString> TestDialogs::csvToRead() {
    if (!csv) ADD_FAILURE() << "asked for a CSV file";
    return csv;
}

std::optional<QString> TestDialogs::pdfToWrite(const QString&) {
    if (!pdf) ADD_FAILURE() << "asked for a PDF";
    return pdf;
}

std::optional<QString> TestDialogs::fileToWrite(const QString& title, const QString& suggestedName) {
    if (!file) ADD_FAILURE() << "asked for a file: " << title.toStdString();
    suggested = suggestedName;
    return file;
}

std::optional<ui::print::PaperChoice> TestDialogs::paperToUse(const ui::print::PaperChoice& usual) {
    usualPaper = usual;
    if (cancelPaper) return std::nullopt;
    return paper ? paper : usual;
}

std::optional<core::edit::Correction> TestDialogs::correction(const QString& what, const QString& message) {
    asked << message;
    if (!expectCorrection) ADD_FAILURE() << "a correction was asked for: " << what.toStdString();
    return correctionAnswer;
}

bool TestDialogs::leaveAnyway(const QString& why) {
    leaving << why;
    if (!leave) ADD_FAILURE() << "asked whether to leave the book: " << why.toStdString();
    return leave.value_or(true);
}

} // namespace tests
