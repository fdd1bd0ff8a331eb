#pragma once

#include "core/base/progress.h"

#include <thread>

struct sqlite3;

namespace core::store {

/// While it lives, the statements of one connection look now and then whether `progress` is to stop, and throw Stopped
/// then. How far they are nobody knows: what was told last is told again. The watch must not touch that connection.
/// Declared after what is to be rolled back or closed when it stops.
class Watched {
public:
    Watched(sqlite3* connection, Progress progress);
    ~Watched();
    Watched(const Watched&) = delete;
    Watched& operator=(const Watched&) = delete;

private:
    sqlite3* m_connection;
    Progress m_progress;
    std::jthread m_look; ///< a check of all pages is one instruction of SQLite: it is interrupted from beside
};

/// Throws Stopped where a call of SQLite failed because of that.
void throwStopped(int code);

} // namespace core::store
