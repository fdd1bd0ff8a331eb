#include "tests/support/cut_vfs.h"

#include <cerrno>
#include <fcntl.h>
#include <string>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

// What programs ask of the system past SQLite: names given, exchanged and taken away, files and folders synced. A
// program that has this file has its own and Qt's calls come here, as the first definition of a name counts; the living
// CutVfs is told of those in its folder. They then do what they always do.

namespace {

using tests::cut::CutVfs;
using tests::cut::Disk;
using tests::cut::Op;

bool isThere(const char* path) {
    struct stat is {};
    return lstat(path, &is) == 0;
}

/// The living one where it knows the file.
CutVfs* whoKnows(const char* path) {
    CutVfs* vfs = CutVfs::living();
    return vfs && vfs->knows(path) ? vfs : nullptr;
}

int failed(int error = EIO) {
    errno = error;
    return -1;
}

int renamed(const char* from, const char* to, unsigned flags) noexcept {
    const auto go = [&] { return static_cast<int>(syscall(SYS_renameat2, AT_FDCWD, from, AT_FDCWD, to, flags)); };
    const bool taken = (flags & RENAME_NOREPLACE) != 0 && isThere(to);
    const bool nobody = (flags & RENAME_EXCHANGE) != 0 && !isThere(to);
    CutVfs* vfs = whoKnows(from);
    if (!vfs || taken || nobody) return go();
    if (flags != 0 && vfs->oldSystem()) return failed(EINVAL);
    if ((flags & RENAME_EXCHANGE) != 0) vfs->knows(to);
    const auto note = [&](Disk& disk) {
        if ((flags & RENAME_EXCHANGE) != 0)
            disk.exchange(vfs->nameOf(from), vfs->nameOf(to));
        else
            disk.rename(vfs->nameOf(from), vfs->nameOf(to));
    };
    return vfs->begin(Op::Rename, note) ? go() : failed();
}

} // namespace

extern "C" {

int renameat2(int fromFolder, const char* from, int toFolder, const char* to, unsigned flags) noexcept {
    if (fromFolder == AT_FDCWD && toFolder == AT_FDCWD) return renamed(from, to, flags);
    return static_cast<int>(syscall(SYS_renameat2, fromFolder, from, toFolder, to, flags));
}

int rename(const char* from, const char* to) noexcept { return renamed(from, to, 0); }

int link(const char* there, const char* name) noexcept {
    const auto go = [&] { return static_cast<int>(syscall(SYS_linkat, AT_FDCWD, there, AT_FDCWD, name, 0)); };
    CutVfs* vfs = whoKnows(there);
    if (!vfs || isThere(name)) return go();
    return vfs->begin(Op::Rename, [&](Disk& disk) { disk.link(vfs->nameOf(there), vfs->nameOf(name)); }) ? go()
                                                                                                         : failed();
}

int unlink(const char* path) noexcept {
    const auto go = [&] { return static_cast<int>(syscall(SYS_unlinkat, AT_FDCWD, path, 0)); };
    CutVfs* vfs = whoKnows(path);
    if (!vfs) return go();
    return vfs->begin(Op::Delete, [&](Disk& disk) { disk.remove(vfs->nameOf(path)); }) ? go() : failed();
}

int fsync(int file) {
    const auto go = [&] { return static_cast<int>(syscall(SYS_fsync, file)); };
    CutVfs* vfs = CutVfs::living();
    char path[4096];
    const ssize_t length =
        vfs ? readlink(("/proc/self/fd/" + std::to_string(file)).c_str(), path, sizeof path - 1) : -1;
    if (length < 0) return go();
    path[length] = '\0';
    const bool folder = vfs->isFolder(path);
    if (!folder && !vfs->knows(path)) return go();
    if (!vfs->begin(Op::Sync, [](Disk&) {})) return failed();
    if (folder)
        vfs->syncFolder();
    else
        vfs->syncFile(path);
    return 0;
}

} // extern "C"
