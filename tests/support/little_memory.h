#pragma once

#include <sqlite3.h>

namespace tests::cut {

/// SQLite has little memory while this lives: it writes pages of the book's file long before a commit, and reads them
/// again.
struct LittleMemory {
    LittleMemory() { sqlite3_soft_heap_limit64(1); }
    ~LittleMemory() { sqlite3_soft_heap_limit64(0); }
    LittleMemory(const LittleMemory&) = delete;
    LittleMemory& operator=(const LittleMemory&) = delete;
};

} // namespace tests::cut
