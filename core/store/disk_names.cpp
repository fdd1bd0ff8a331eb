#include "core/store/disk_names.h"

#include <QFile>
#include <QFileInfo>

#include <cerrno>
#include <cstdio>
#include <fcntl.h>
#include <unistd.h>

namespace core::store {

namespace {

int errorOf(int result) { return result == 0 ? 0 : errno; }

bool unknownToSystem(int error) { return error == EINVAL || error == ENOSYS; }

int syncAt(const QByteArray& path) {
    const int file = open(path.constData(), O_RDONLY | O_CLOEXEC);
    if (file < 0) return errno;
    const int error = errorOf(fsync(file));
    close(file);
    return error;
}

} // namespace

int giveName(const QString& from, const QString& to) {
    const QByteArray old = QFile::encodeName(from);
    const QByteArray name = QFile::encodeName(to);
    const int error = errorOf(renameat2(AT_FDCWD, old.constData(), AT_FDCWD, name.constData(), RENAME_NOREPLACE));
    if (!unknownToSystem(error)) return error;
    if (link(old.constData(), name.constData()) != 0) return errno;
    unlink(old.constData());
    return 0;
}

int replaceName(const QString& from, const QString& to) {
    return errorOf(rename(QFile::encodeName(from).constData(), QFile::encodeName(to).constData()));
}

int exchangeNames(const QString& one, const QString& other) {
    return errorOf(renameat2(AT_FDCWD, QFile::encodeName(one).constData(), AT_FDCWD,
                             QFile::encodeName(other).constData(), RENAME_EXCHANGE));
}

int syncFile(const QString& path) { return syncAt(QFile::encodeName(path)); }

int syncFolderOf(const QString& path) {
    const int error = syncAt(QFile::encodeName(QFileInfo(path).absolutePath()));
    // A folder that may be written and not read; a disk that syncs names by itself.
    return error == EACCES || unknownToSystem(error) ? 0 : error;
}

} // namespace core::store
