#include "core/edit/salvage_files.h"

#include "core/edit/edit_checks.h"
#include "core/store/book_file.h"
#include "core/store/book_mark.h"

#include <QFile>
#include <QFileInfo>

namespace core::edit {

QString salvageTextPath(const QString& book) {
    const QFileInfo file(book);
    return file.absolutePath() + u'/' + file.completeBaseName() + Edits::tr(" - what was salvaged.txt");
}

void writeSalvageText(const QString& path, const QString& text) {
    QFile file(path);
    const QByteArray bytes = text.toUtf8();
    if (file.open(QIODevice::WriteOnly | QIODevice::NewOnly) && file.write(bytes) == bytes.size() && file.flush())
        return;
    throw Error(Error::Kind::Book, Edits::tr("%1 cannot be written.").arg(store::shownPath(path)));
}

void needNewName(const QString& book) {
    for (const QString& path : {book, salvageTextPath(book)})
        if (QFileInfo::exists(path) || QFileInfo(path).isSymLink())
            throw Error(Error::Kind::Book,
                        Edits::tr("%1 exists already: a new book needs a new name.").arg(store::shownPath(path)));
}

void needOtherPlace(const SalvageFrom& from) {
    if (from.to.isEmpty()) return;
    if (store::sameFile(from.damaged, from.to))
        throw Error(Error::Kind::Book, Edits::tr("%1 is the damaged book itself, which stays as it is: the new book "
                                                 "needs a name of its own.")
                                           .arg(store::shownPath(from.to)));
    needNewName(from.to);
}

} // namespace core::edit
