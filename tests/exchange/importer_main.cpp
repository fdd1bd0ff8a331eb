// Imports the CSV files of a folder into a book: importer BOOK FOLDER. The kill test ends it at any moment.

#include "core/base/error.h"
#include "core/exchange/import.h"

#include <QCoreApplication>
#include <QDir>

#include <cstdio>

int main(int argc, char** argv) {
    const QCoreApplication app(argc, argv);
    const QStringList words = QCoreApplication::arguments();
    if (words.size() != 3) return 2;
    core::exchange::ImportFiles files;
    for (const auto kind : core::exchange::kFileKinds) {
        const QString path = QDir(words[2]).filePath(core::exchange::fileName(kind));
        if (QFile::exists(path)) files.files.push_back({kind, path});
    }
    try {
        const auto report = core::exchange::importIntoBook(words[1], core::SystemClock(), files, false);
        return report.good() ? 0 : 4;
    } catch (const core::Error& e) {
        std::fprintf(stderr, "%s\n", e.what());
        return 5;
    }
}
