#pragma once

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QUuid>

#include <functional>
#include <map>
#include <stdexcept>

namespace tests {

/// Puts a book at `path` as `make(path)` makes it, with an id of its own. It is made once a program under `name`, and
/// copied from then on: making it takes longer than most tests. `idOf(path)` says the id that the made one has.
inline void putBook(const char* name, const QString& path, const std::function<void(const QString&)>& make,
                    const std::function<QString(const QString&)>& idOf) {
    struct Made {
        QByteArray bytes, id;
    };
    static std::map<QByteArray, Made> all;
    Made& made = all[name];
    if (made.bytes.isEmpty()) {
        const QTemporaryDir folder;
        const QString book = folder.filePath(QStringLiteral("made.yardwright"));
        make(book);
        QFile file(book);
        if (!file.open(QIODevice::ReadOnly) || QDir(folder.path()).entryList(QDir::Files).size() != 1)
            throw std::runtime_error("the book to copy is not one whole file");
        made = {file.readAll(), idOf(book).toLatin1()};
        if (made.bytes.count(made.id) != 1) throw std::runtime_error("the book to copy does not name its id once");
    }
    QByteArray bytes = made.bytes;
    bytes.replace(made.id, QUuid::createUuid().toByteArray(QUuid::WithoutBraces));
    QFile file(path);
    if (!file.open(QIODevice::NewOnly) || file.write(bytes) != bytes.size())
        throw std::runtime_error("no copy of a book");
}

} // namespace tests
