#pragma once

#include "tests/support/cut_vfs.h"

#include <sqlite3.h>

// What may happen to a book's disk, and what is said of it. The codes are those that SQLite's unix file system gives
// for what the system says (os_unix.c): it calls a write that a disk by now read-only refuses a failing one, too.

namespace tests::reliability {

using cut::Op;

struct Trouble {
    const char* name;
    Op op;
    int code;
    const char* sentence;
};

inline constexpr const char* kFull = "The disk is full: nothing was written. Make room and try again.";
inline constexpr const char* kFailed =
    "The disk failed while the book was read or written: nothing was changed. Try again; if "
    "it fails again, copy the book to another disk.";
inline constexpr const char* kNotRead = ///< before anything was to be written
    "The disk failed while the book was read. Try again; if it fails again, copy the book to another disk.";
inline constexpr const char* kReadOnly =
    "The book cannot be written here: the file or its folder is read-only. Nothing was "
    "written. Allow it, or copy the book to where it may be written.";
inline constexpr const char* kNoFile =
    "The book, or a file beside it, cannot be opened: nothing was written. Is its folder still there, and may it be "
    "written?";

inline constexpr const char* kNoMemory =
    "This computer has no memory left: nothing was written. Close other programs and try again.";

inline constexpr Trouble kTroubles[] = {
    {"a full disk", Op::Write, SQLITE_FULL, kFull},
    {"no room for the journal", Op::Create, SQLITE_FULL, kFull},
    {"a failing write", Op::Write, SQLITE_IOERR_WRITE, kFailed},
    {"a failing sync", Op::Sync, SQLITE_IOERR_FSYNC, kFailed},
    {"a failing read", Op::Read, SQLITE_IOERR_READ, kFailed},
    {"a journal that cannot be deleted", Op::Delete, SQLITE_IOERR_DELETE, kFailed},
    {"a file that cannot be shortened", Op::Truncate, SQLITE_IOERR_TRUNCATE, kFailed},
    {"a journal that cannot be made", Op::Create, SQLITE_CANTOPEN, kNoFile},
    {"a folder that may not be written", Op::Create, SQLITE_READONLY_DIRECTORY, kReadOnly},
    {"no memory for a read", Op::Read, SQLITE_IOERR_NOMEM, kNoMemory},
};

inline constexpr const char* kMoved =
    "The book's file was moved, renamed or deleted while it was open: nothing was written. "
    "Put it back, or open it where it is now.";

} // namespace tests::reliability
