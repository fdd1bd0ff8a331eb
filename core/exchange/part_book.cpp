#include "core/exchange/part_book.h"

#include "core/base/error.h"
#include "core/exchange/fault.h"
#include "core/store/disk_names.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRandomGenerator>

namespace core::exchange {

namespace {

Error cannotBeMade(const QString& path, const QString& why) {
    return Error(Error::Kind::Book,
                 Say::tr("The book %1 cannot be made: %2.").arg(QDir::toNativeSeparators(path), why));
}

} // namespace

PartBook::PartBook(const QString& path) : m_path(path) {
    const QFileInfo file(path);
    const QFileInfo folder(file.absolutePath());
    if (!folder.isDir()) throw cannotBeMade(path, Say::tr("its folder is missing"));
    if (!folder.isWritable()) throw cannotBeMade(path, Say::tr("its folder cannot be written"));
    if (file.fileName().isEmpty() || file.isSymLink()) throw cannotBeMade(path, Say::tr("this is no name of a file"));
    m_part = QStringLiteral("%1/.%2.%3-%4")
                 .arg(file.absolutePath(), file.fileName().left(100))
                 .arg(QCoreApplication::applicationPid())
                 .arg(QRandomGenerator::global()->generate());
}

PartBook::~PartBook() {
    for (const char* suffix : {"", "-journal", "-lock"}) QFile::remove(m_part + QLatin1StringView(suffix));
}

void PartBook::keep() {
    int error = store::syncFile(m_part);
    if (error == 0) error = store::giveName(m_part, m_path);
    if (error == 0) error = store::syncFolderOf(m_path);
    if (error != 0) throw cannotBeMade(m_path, qt_error_string(error));
}

} // namespace core::exchange
