#include "tests/support/cut_vfs.h"

#include <sqlite3.h>

#include <array>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <new>
#include <stdexcept>
#include <utility>

namespace tests::cut {

namespace {

CutVfs* theLiving = nullptr;

std::string bytesOf(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

} // namespace

struct CutVfs::Private : sqlite3_vfs {
    sqlite3_vfs* ordinary = nullptr;
    std::string folder;
    Disk disk;
    std::function<void(Op)> before;
    std::array<std::int64_t, 7> counts{};
    std::optional<Fault> fault;
    std::int64_t toFail = 0;
    int plugged = 0; ///< how often it was taken out
    bool lying = false;
    bool oldSystem = false;
    bool failing = false;
    bool everFailed = false;
    bool deleting = false; ///< the ordinary file system does, of which the disk knows already

    bool watches(const char* path) const { return path && std::string_view(path).starts_with(folder); }
    std::string nameOf(const char* path) const { return std::string(path).substr(folder.size()); }

    /// Counts the operation, tells of it where it changes the disk (`note` has the disk know of it first, as under
    /// way); the code that it fails with, or SQLITE_OK.
    int begin(Op op, const std::function<void()>& note = {}) {
        ++counts[static_cast<size_t>(op)];
        if (fault && (fault->op ? *fault->op == op : op != Op::Read)) {
            if (--toFail == 0 || (failing && fault->lasting)) {
                failing = everFailed = true;
                return fault->code;
            }
        }
        if (note) note();
        if (before && op != Op::Read) {
            sqlite3_vfs_register(ordinary, 1);
            before(op);
            sqlite3_vfs_register(this, 1);
        }
        return SQLITE_OK;
    }
};

namespace {

using Vfs = CutVfs::Private;

/// An open file; that of the ordinary file system lies behind it in the same memory.
struct File : sqlite3_file {
    Vfs* vfs;
    int number;       ///< on the disk; -1: not watched
    int plugged;      ///< when it was opened
    bool syncsFolder; ///< a journal's first sync syncs the folder, too
    sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};

File& fileOf(sqlite3_file* file) { return *static_cast<File*>(file); }
const sqlite3_io_methods& realOf(sqlite3_file* file) { return *fileOf(file).real()->pMethods; }

int closeFile(sqlite3_file* file) { return realOf(file).xClose(fileOf(file).real()); }

bool gone(const File& f) { return f.number >= 0 && f.plugged != f.vfs->plugged; }

int readFile(sqlite3_file* file, void* to, int size, sqlite3_int64 at) {
    File& f = fileOf(file);
    if (gone(f)) return SQLITE_IOERR_READ;
    if (f.number >= 0)
        if (const int code = f.vfs->begin(Op::Read); code != SQLITE_OK) return code;
    return realOf(file).xRead(f.real(), to, size, at);
}

int writeFile(sqlite3_file* file, const void* from, int size, sqlite3_int64 at) {
    File& f = fileOf(file);
    if (gone(f)) return SQLITE_IOERR_WRITE;
    if (f.number >= 0) {
        const auto note = [&] {
            f.vfs->disk.write(f.number, at, std::string(static_cast<const char*>(from), static_cast<size_t>(size)));
        };
        if (const int code = f.vfs->begin(Op::Write, note); code != SQLITE_OK) return code;
    }
    return realOf(file).xWrite(f.real(), from, size, at);
}

int truncateFile(sqlite3_file* file, sqlite3_int64 size) {
    File& f = fileOf(file);
    if (f.number >= 0) {
        const auto note = [&] { f.vfs->disk.truncate(f.number, size); };
        if (const int code = f.vfs->begin(Op::Truncate, note); code != SQLITE_OK) return code;
    }
    return realOf(file).xTruncate(f.real(), size);
}

/// The disk knows it as synced; the real file need not be, which is quicker.
int syncFile(sqlite3_file* file, int flags) {
    File& f = fileOf(file);
    if (gone(f)) return SQLITE_IOERR_FSYNC;
    if (f.number < 0) return realOf(file).xSync(f.real(), flags);
    if (const int code = f.vfs->begin(Op::Sync); code != SQLITE_OK) return code;
    if (f.vfs->lying) return SQLITE_OK;
    f.vfs->disk.syncFile(f.number);
    // As SQLite's own unix file system does (os_unix.c, UNIXFILE_DIRSYNC).
    if (std::exchange(f.syncsFolder, false)) f.vfs->disk.syncFolder();
    return SQLITE_OK;
}

int sizeOfFile(sqlite3_file* file, sqlite3_int64* size) { return realOf(file).xFileSize(fileOf(file).real(), size); }
int lockFile(sqlite3_file* file, int lock) { return realOf(file).xLock(fileOf(file).real(), lock); }
int unlockFile(sqlite3_file* file, int lock) { return realOf(file).xUnlock(fileOf(file).real(), lock); }
int checkLock(sqlite3_file* file, int* out) { return realOf(file).xCheckReservedLock(fileOf(file).real(), out); }
int controlFile(sqlite3_file* file, int op, void* arg) {
    return realOf(file).xFileControl(fileOf(file).real(), op, arg);
}
int sectorSize(sqlite3_file* file) { return realOf(file).xSectorSize(fileOf(file).real()); }
int deviceTraits(sqlite3_file* file) { return realOf(file).xDeviceCharacteristics(fileOf(file).real()); }

// Version 1: no shared memory and no mapping, which would write past us.
constexpr sqlite3_io_methods kMethods = {1,           closeFile,  readFile,     writeFile,  truncateFile,
                                         syncFile,    sizeOfFile, lockFile,     unlockFile, checkLock,
                                         controlFile, sectorSize, deviceTraits, nullptr,    nullptr,
                                         nullptr,     nullptr,    nullptr,      nullptr};

/// A file that lies there and was not made through us: its bytes and its name are not synced.
int madePastUs(Vfs& vfs, const std::string& name, std::string bytes) {
    const int number = vfs.disk.create(name);
    if (!bytes.empty()) vfs.disk.write(number, 0, std::move(bytes));
    return number;
}

/// The file's number on the disk, which it is given where it is new.
int numberFor(Vfs& vfs, const char* path, int flags) {
    const std::string name = vfs.nameOf(path);
    if (const int known = vfs.disk.fileOf(name); known >= 0) return known;
    int there = 0;
    vfs.ordinary->xAccess(vfs.ordinary, path, SQLITE_ACCESS_EXISTS, &there);
    if (there) return madePastUs(vfs, name, bytesOf(path));
    return (flags & SQLITE_OPEN_CREATE) ? -2 : -1;
}

int openFile(sqlite3_vfs* own, sqlite3_filename path, sqlite3_file* file, int flags, int* outFlags) {
    Vfs& vfs = *static_cast<Vfs*>(own);
    File* f = new (file) File();
    f->vfs = &vfs;
    f->plugged = vfs.plugged;
    f->pMethods = nullptr;
    f->number = -1;
    constexpr int kWatched = SQLITE_OPEN_MAIN_DB | SQLITE_OPEN_MAIN_JOURNAL | SQLITE_OPEN_WAL;
    if (vfs.watches(path) && (flags & kWatched)) {
        f->number = numberFor(vfs, path, flags);
        const auto note = [&] { f->number = vfs.disk.create(vfs.nameOf(path)); };
        if (f->number == -2)
            if (const int code = vfs.begin(Op::Create, note); code != SQLITE_OK) return code;
        f->syncsFolder = (flags & SQLITE_OPEN_CREATE) && (flags & (SQLITE_OPEN_MAIN_JOURNAL | SQLITE_OPEN_WAL));
    }
    const int code = vfs.ordinary->xOpen(vfs.ordinary, path, f->real(), flags, outFlags);
    if (f->real()->pMethods) f->pMethods = &kMethods;
    return code;
}

int deleteFile(sqlite3_vfs* own, const char* path, int syncFolder) {
    Vfs& vfs = *static_cast<Vfs*>(own);
    if (!vfs.watches(path) || vfs.disk.fileOf(vfs.nameOf(path)) < 0)
        return vfs.ordinary->xDelete(vfs.ordinary, path, syncFolder);
    const auto note = [&] { vfs.disk.remove(vfs.nameOf(path)); };
    if (const int code = vfs.begin(Op::Delete, note); code != SQLITE_OK) return code;
    vfs.deleting = true;
    const int code = vfs.ordinary->xDelete(vfs.ordinary, path, 0);
    vfs.deleting = false;
    if (code == SQLITE_OK && syncFolder) vfs.disk.syncFolder();
    return code;
}

} // namespace

const char* wordOf(Op op) {
    constexpr const char* kWords[] = {"write", "truncate", "sync", "delete", "create", "read", "rename"};
    return kWords[static_cast<size_t>(op)];
}

CutVfs::CutVfs(const std::string& folder) : d(std::make_unique<Private>()) {
    sqlite3_vfs* ordinary = sqlite3_vfs_find(nullptr);
    if (!ordinary) throw std::runtime_error("SQLite has no file system");
    static_cast<sqlite3_vfs&>(*d) = *ordinary;
    d->ordinary = ordinary;
    d->folder = folder + '/';
    for (const auto& there : std::filesystem::directory_iterator(folder))
        if (there.is_regular_file()) d->disk.addFile(there.path().filename().string(), bytesOf(there.path().string()));
    d->zName = "cut";
    d->pNext = nullptr;
    d->szOsFile = static_cast<int>(sizeof(File)) + ordinary->szOsFile;
    d->xOpen = openFile;
    d->xDelete = deleteFile;
    if (sqlite3_vfs_register(d.get(), 1) != SQLITE_OK) throw std::runtime_error("SQLite takes no file system");
    theLiving = this;
}

CutVfs::~CutVfs() {
    theLiving = nullptr;
    sqlite3_vfs_unregister(d.get());
    sqlite3_vfs_register(d->ordinary, 1);
}

const Disk& CutVfs::disk() const { return d->disk; }

std::int64_t CutVfs::operations() const {
    std::int64_t all = 0;
    for (size_t i = 0; i < d->counts.size(); ++i)
        if (static_cast<Op>(i) != Op::Read) all += d->counts[i];
    return all;
}

std::int64_t CutVfs::count(Op op) const { return d->counts[static_cast<size_t>(op)]; }

void CutVfs::setBefore(std::function<void(Op)> before) { d->before = std::move(before); }

void CutVfs::setLying(bool lying) { d->lying = lying; }

void CutVfs::setOldSystem(bool old) { d->oldSystem = old; }

bool CutVfs::oldSystem() const { return d->oldSystem; }

void CutVfs::fail(const Fault& fault) {
    d->fault = fault;
    d->toFail = fault.at;
    d->failing = d->everFailed = false;
}

bool CutVfs::failed() const { return d->everFailed; }

void CutVfs::mend() { d->fault.reset(); }

void CutVfs::takeOut() { ++d->plugged; }

CutVfs* CutVfs::living() { return theLiving; }

bool CutVfs::knows(const std::string& path) {
    if (d->deleting || !d->watches(path.c_str())) return false;
    if (d->disk.fileOf(nameOf(path)) >= 0) return true;
    if (!std::filesystem::is_regular_file(path)) return false;
    madePastUs(*d, nameOf(path), bytesOf(path));
    return true;
}

bool CutVfs::isFolder(const std::string& path) const { return path + '/' == d->folder; }

bool CutVfs::begin(Op op, const std::function<void(Disk&)>& note) {
    return d->begin(op, [&] { note(d->disk); }) == SQLITE_OK;
}

std::string CutVfs::nameOf(const std::string& path) const { return d->nameOf(path.c_str()); }

void CutVfs::syncFile(const std::string& path) {
    if (!d->lying) d->disk.syncFile(d->disk.fileOf(nameOf(path)));
}

void CutVfs::syncFolder() {
    if (!d->lying) d->disk.syncFolder();
}

} // namespace tests::cut
