#pragma once

#include "tests/support/cut_disk.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace tests::cut {

/// What is done to a book's file, its journal, or a name beside it.
enum class Op { Write, Truncate, Sync, Delete, Create, Read, Rename };
const char* wordOf(Op op);

/// A call that fails, and all of its kind after it while `lasting`.
struct Fault {
    std::optional<Op> op; ///< nullopt: any but a reading
    std::int64_t at = 1;  ///< the how manieth of them, from now on
    int code = 0;         ///< SQLITE_FULL, …
    bool lasting = false;
};

/// While it lives, SQLite's files go through it: it does what the ordinary file system does, and for one folder keeps a
/// Disk that says what would be left if the power went. What lies there when it is made is on the disk. It can let any
/// call fail. A program that has cut_calls.cpp sends it what is done to names and synced past SQLite, too. One at a
/// time; one thread writes.
class CutVfs {
public:
    explicit CutVfs(const std::string& folder);
    ~CutVfs();
    CutVfs(const CutVfs&) = delete;
    CutVfs& operator=(const CutVfs&) = delete;

    const Disk& disk() const;
    /// Operations so far that change the disk: all but readings.
    std::int64_t operations() const;
    std::int64_t count(Op op) const;
    /// Called before each operation that changes the disk, which is on its way then: the disk has it as not synced.
    /// SQLite is as it always is meanwhile.
    void setBefore(std::function<void(Op)> before);
    /// A disk that says that it has synced and has not: for showing that the loss is found.
    void setLying(bool lying);
    /// A system, or a disk, that knows no rename but the plain one: none without replacing, no exchange.
    void setOldSystem(bool old);
    bool oldSystem() const;
    /// Counts from now on.
    void fail(const Fault& fault);
    /// Whether the fault has been met.
    bool failed() const;
    void mend(); ///< nothing fails any more
    /// As a disk that is taken out and put back: whatever is open now fails for ever, what is opened from now on works.
    void takeOut();

    /// The one that lives, or nullptr.
    static CutVfs* living();
    // For cut_calls.cpp. Paths are absolute.
    bool knows(const std::string& path); ///< a file of the folder that a program sees there
    bool isFolder(const std::string& path) const;
    /// Begins the operation: the disk has it as under way. False: it is to fail.
    bool begin(Op op, const std::function<void(Disk&)>& note);
    std::string nameOf(const std::string& path) const; ///< within the folder
    void syncFile(const std::string& path);
    void syncFolder();

    struct Private;

private:
    std::unique_ptr<Private> d;
};

} // namespace tests::cut
