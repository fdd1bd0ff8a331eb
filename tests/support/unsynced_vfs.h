#pragma once

#include <cstdint>
#include <memory>

namespace tests {

/// While it lives, SQLite does with its files what it always does, save that nothing waits for the disk: syncs of files
/// and folders are counted and not done. One at a time; one thread.
class UnsyncedVfs {
public:
    UnsyncedVfs();
    ~UnsyncedVfs();
    UnsyncedVfs(const UnsyncedVfs&) = delete;
    UnsyncedVfs& operator=(const UnsyncedVfs&) = delete;

    std::int64_t syncs() const; ///< that were asked for

    struct Private;

private:
    std::unique_ptr<Private> d;
};

} // namespace tests
