#include "core/base/input_file.h"

#include <QCoreApplication>
#include <QFile>

#include <sys/stat.h>

namespace core {

namespace {

struct Inputs {
    Q_DECLARE_TR_FUNCTIONS(Inputs)
};

} // namespace

QString noPlainFile(const QString& path) {
    struct stat found {};
    if (stat(QFile::encodeName(path).constData(), &found) != 0) return {};
    switch (found.st_mode & S_IFMT) {
    case S_IFREG:
        return {};
    case S_IFDIR:
        return Inputs::tr("a folder");
    case S_IFIFO:
        return Inputs::tr("a pipe");
    case S_IFSOCK:
        return Inputs::tr("a socket");
    default:
        return Inputs::tr("a device");
    }
}

} // namespace core
