#include "core/edit/whole_book.h"

#include "core/edit/edit_checks.h"
#include "core/edit/history_check.h"
#include "core/edit/medicine_lines.h"
#include "core/store/backup.h"
#include "core/store/check.h"
#include "core/store/watched.h"

namespace core::edit {

QStringList bookProblems(const store::Database& db, const Progress& progress) {
    constexpr double kBook = 0.9; // of the whole, as measured on a book of 20,000 colonies
    const store::ReadTransaction steady(db);
    QStringList problems;
    for (const QString& problem : store::checkBook(db, progress.part(0, kBook, Edits::tr("Checking the book"))))
        problems << problem;
    const store::Watched watched(db.handle(), progress);
    progress.part(kBook, 1, Edits::tr("Comparing the history with the rows")).at(0);
    return problems << historyProblems(db) << medicineLineProblems(db);
}

QStringList checkBookAt(const QString& path, const Progress& progress) {
    return bookProblems(*store::Database::open(path, store::Access::ReadOnly), progress);
}

bool isOlderBook(const QString& path) { return store::Database::isOlder(path); }

void bringUpToDate(const QString& path, const Progress& progress) {
    const auto book = store::Database::open(path, store::Access::ReadWrite, progress);
    makeMedicineLines(*book);
}

void backUpBookAt(const QString& path, const QString& to, const Progress& progress) {
    store::copyBook(*store::Database::open(path, store::Access::ReadOnly), to,
                    progress.part(0, 1, Edits::tr("Copying the book")));
}

} // namespace core::edit
