#include "tests/support/unsynced_vfs.h"

#include <sqlite3.h>

#include <map>
#include <stdexcept>

namespace tests {

struct UnsyncedVfs::Private : sqlite3_vfs {
    sqlite3_vfs* ordinary = nullptr;
    std::map<const sqlite3_io_methods*, sqlite3_io_methods> methods; ///< of the ordinary file system, less the sync
};

namespace {

std::int64_t g_asked = 0;

int countSync(sqlite3_file*, int) {
    ++g_asked;
    return SQLITE_OK;
}

int openFile(sqlite3_vfs* own, sqlite3_filename path, sqlite3_file* file, int flags, int* outFlags) {
    auto& vfs = *static_cast<UnsyncedVfs::Private*>(own);
    const int code = vfs.ordinary->xOpen(vfs.ordinary, path, file, flags, outFlags);
    if (!file->pMethods) return code;
    const auto known = vfs.methods.try_emplace(file->pMethods, *file->pMethods).first;
    known->second.xSync = countSync;
    file->pMethods = &known->second;
    return code;
}

int deleteFile(sqlite3_vfs* own, const char* path, int syncFolder) {
    auto& vfs = *static_cast<UnsyncedVfs::Private*>(own);
    g_asked += syncFolder ? 1 : 0;
    return vfs.ordinary->xDelete(vfs.ordinary, path, 0);
}

} // namespace

UnsyncedVfs::UnsyncedVfs() : d(std::make_unique<Private>()) {
    sqlite3_vfs* ordinary = sqlite3_vfs_find(nullptr);
    if (!ordinary) throw std::runtime_error("SQLite has no file system");
    static_cast<sqlite3_vfs&>(*d) = *ordinary;
    d->ordinary = ordinary;
    d->zName = "unsynced";
    d->pNext = nullptr;
    d->xOpen = openFile;
    d->xDelete = deleteFile;
    g_asked = 0;
    if (sqlite3_vfs_register(d.get(), 1) != SQLITE_OK) throw std::runtime_error("SQLite takes no file system");
}

UnsyncedVfs::~UnsyncedVfs() {
    sqlite3_vfs_unregister(d.get());
    sqlite3_vfs_register(d->ordinary, 1);
}

std::int64_t UnsyncedVfs::syncs() const { return g_asked; }

} // namespace tests
