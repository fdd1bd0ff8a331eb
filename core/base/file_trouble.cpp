#include "core/base/file_trouble.h"

#include "core/base/input_file.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileDevice>
#include <QFileInfo>

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <initializer_list>

namespace core {

namespace {

struct Files {
    Q_DECLARE_TR_FUNCTIONS(Files)
};

/// What the system said; Qt hands it on as text alone.
bool saidAny(const QFileDevice& file, std::initializer_list<int> codes) {
    return std::ranges::any_of(codes,
                               [&](int code) { return file.errorString() == QString::fromLocal8Bit(strerror(code)); });
}

FileTrouble notAllowed() {
    return {Files::tr("access to it is denied"), Files::tr("Allow it, or choose another place.")};
}

} // namespace

FileTrouble troubleOf(const QFileDevice& file) {
    const QFileInfo at(file.fileName());
    if (!QFileInfo(at.absolutePath()).isDir())
        return {Files::tr("its folder is not there"), Files::tr("Put it back, or choose another place.")};
    if (const QString other = noPlainFile(file.fileName()); !other.isEmpty())
        return {Files::tr("%1 of that name stands there").arg(other), Files::tr("Rename it, or choose another name.")};
    if (saidAny(file, {ENOSPC, EDQUOT, EFBIG}))
        return {Files::tr("the disk is full"), Files::tr("Make room and try again.")};
    if (saidAny(file, {EROFS})) return {Files::tr("the disk is read-only"), Files::tr("Choose another place.")};
    if (saidAny(file, {EACCES, EPERM}) || file.error() == QFileDevice::PermissionsError) return notAllowed();
    if (saidAny(file, {EIO, ENXIO, ENODEV}))
        return {Files::tr("the disk failed"), Files::tr("Try again, or choose a place on another disk.")};
    // A write that stopped half-way has no other word of the system: there was no more room.
    if (file.error() == QFileDevice::WriteError || file.error() == QFileDevice::ResourceError)
        return {Files::tr("the disk is full"), Files::tr("Make room and try again.")};
    return {file.errorString(), Files::tr("Try again, or choose another place.")};
}

QString cannotWriteText(const QFileDevice& file) {
    const FileTrouble trouble = troubleOf(file);
    return Files::tr("%1 cannot be written: %2. %3")
        .arg(QDir::toNativeSeparators(file.fileName()), trouble.why, trouble.advice);
}

} // namespace core
