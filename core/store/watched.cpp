#include "core/store/watched.h"

#include <condition_variable>
#include <mutex>
#include <sqlite3.h>
#include <utility>

namespace core::store {

namespace {

constexpr int kInstructionsApart = 5'000;
constexpr std::chrono::milliseconds kLooksApart(20);

int isToStop(void* progress) { return static_cast<const Progress*>(progress)->goesOn() ? 0 : 1; }

} // namespace

Watched::Watched(sqlite3* connection, Progress progress) : m_connection(connection), m_progress(std::move(progress)) {
    sqlite3_progress_handler(m_connection, kInstructionsApart, isToStop, &m_progress);
    if (const StopAsked asked = m_progress.stopAsked())
        m_look = std::jthread([asked, connection](const std::stop_token& over) {
            std::mutex lock;
            std::condition_variable_any wait;
            std::unique_lock held(lock);
            while (!wait.wait_for(held, over, kLooksApart, [&] { return over.stop_requested(); }))
                if (asked()) sqlite3_interrupt(connection);
        });
}

Watched::~Watched() {
    m_look = {};
    sqlite3_progress_handler(m_connection, 0, nullptr, nullptr);
}

void throwStopped(int code) {
    if ((code & 0xff) == SQLITE_INTERRUPT) throw Stopped();
}

} // namespace core::store
