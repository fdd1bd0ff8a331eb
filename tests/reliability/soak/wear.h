#pragma once

#include <QString>
#include <QtGlobal>

#include <chrono>
#include <vector>

namespace tests::soak {

/// How a run stands after some of its edits.
struct Wear {
    qint64 edits = 0;
    double seconds = 0;  ///< spent on edits so far, checks of the whole book left out
    qint64 resident = 0; ///< bytes of memory of this process
    qint64 fileBytes = 0;
    qint64 rows = 0; ///< of all tables but the history
};

/// Runs but while it is stopped.
class Stopwatch {
public:
    void go() { m_since = std::chrono::steady_clock::now(); }
    void stop() { m_spent += std::chrono::steady_clock::now() - m_since; }
    double seconds() const { return std::chrono::duration<double>(m_spent).count(); }

private:
    std::chrono::steady_clock::time_point m_since;
    std::chrono::steady_clock::duration m_spent{};
};

/// Resident memory of this process in bytes, from /proc/self/statm.
qint64 residentBytes();

/// What a line through the points of the second half rises by an edit (least squares): bytes of memory.
double memoryAnEdit(const std::vector<Wear>& wear);
/// Growth of the file in bytes an edit from one share of the run to another (0..1).
double fileAnEdit(const std::vector<Wear>& wear, double from, double to);
/// Edits a second from one share of the run to another.
double speed(const std::vector<Wear>& wear, double from, double to);

} // namespace tests::soak
