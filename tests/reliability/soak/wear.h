#pragma once

#include <QString>
#include <QtGlobal>

#include <chrono>
#include <vector>

namespace tests::soak {

/// How a run stands after some of its edits.
struct Wear {
    qint64 edits = 0;
    double seconds = 0;  ///< on the clock, checks of the whole book left out
    double worked = 0;   ///< of the processor alone: what other programs do and the disk waits for says nothing of it
    qint64 resident = 0; ///< bytes of memory of this process
    qint64 fileBytes = 0;
    qint64 rows = 0; ///< of all tables but the history
};

/// Seconds of the processor that this process has used so far, those of the system for it too.
double processorSeconds();

/// Runs but while it is stopped.
class Stopwatch {
public:
    void go() {
        m_since = std::chrono::steady_clock::now();
        m_workedSince = processorSeconds();
    }
    void stop() {
        m_seconds += std::chrono::duration<double>(std::chrono::steady_clock::now() - m_since).count();
        m_worked += processorSeconds() - m_workedSince;
    }
    double seconds() const { return m_seconds; }
    double worked() const { return m_worked; }

private:
    std::chrono::steady_clock::time_point m_since;
    double m_workedSince = 0, m_seconds = 0, m_worked = 0;
};

/// Resident memory of this process in bytes, from /proc/self/statm.
qint64 residentBytes();

/// What a line through the points of the second half rises by an edit (least squares): bytes of memory.
double memoryAnEdit(const std::vector<Wear>& wear);
/// Growth of the file in bytes an edit from one share of the run to another (0..1).
double fileAnEdit(const std::vector<Wear>& wear, double from, double to);
/// What an edit takes from one share of the run to another: microseconds of the processor, and on the clock.
double workAnEdit(const std::vector<Wear>& wear, double from, double to);
double waitAnEdit(const std::vector<Wear>& wear, double from, double to);
/// How many rows the book has from one share of the run to another, on the mean.
double rowsThere(const std::vector<Wear>& wear, double from, double to);

} // namespace tests::soak
