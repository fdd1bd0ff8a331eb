#include "tests/reliability/soak/wear.h"

#include <ctime>
#include <fstream>

#include <unistd.h>

namespace tests::soak {

namespace {

size_t placeOf(const std::vector<Wear>& wear, double share) {
    return static_cast<size_t>(share * static_cast<double>(wear.size() - 1) + 0.5);
}

const Wear& at(const std::vector<Wear>& wear, double share) { return wear.at(placeOf(wear, share)); }

} // namespace

qint64 residentBytes() {
    std::ifstream statm("/proc/self/statm");
    qint64 all = 0, resident = 0;
    statm >> all >> resident;
    return resident * sysconf(_SC_PAGESIZE);
}

double processorSeconds() {
    timespec used{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &used);
    return static_cast<double>(used.tv_sec) + static_cast<double>(used.tv_nsec) / 1e9;
}

double memoryAnEdit(const std::vector<Wear>& wear) {
    const size_t first = wear.size() / 2;
    const auto count = static_cast<double>(wear.size() - first);
    double x = 0, y = 0;
    for (size_t i = first; i < wear.size(); ++i) {
        x += static_cast<double>(wear[i].edits) / count;
        y += static_cast<double>(wear[i].resident) / count;
    }
    double xy = 0, xx = 0;
    for (size_t i = first; i < wear.size(); ++i) {
        const double dx = static_cast<double>(wear[i].edits) - x;
        xy += dx * (static_cast<double>(wear[i].resident) - y);
        xx += dx * dx;
    }
    return xx > 0 ? xy / xx : 0;
}

double fileAnEdit(const std::vector<Wear>& wear, double from, double to) {
    const Wear& a = at(wear, from);
    const Wear& b = at(wear, to);
    return static_cast<double>(b.fileBytes - a.fileBytes) / static_cast<double>(b.edits - a.edits);
}

double workAnEdit(const std::vector<Wear>& wear, double from, double to) {
    const Wear& a = at(wear, from);
    const Wear& b = at(wear, to);
    return (b.worked - a.worked) * 1e6 / static_cast<double>(b.edits - a.edits);
}

double waitAnEdit(const std::vector<Wear>& wear, double from, double to) {
    const Wear& a = at(wear, from);
    const Wear& b = at(wear, to);
    return (b.seconds - a.seconds) * 1e6 / static_cast<double>(b.edits - a.edits);
}

double rowsThere(const std::vector<Wear>& wear, double from, double to) {
    double sum = 0;
    const size_t first = placeOf(wear, from), last = placeOf(wear, to);
    for (size_t i = first; i <= last; ++i) sum += static_cast<double>(wear.at(i).rows);
    return sum / static_cast<double>(last - first + 1);
}

} // namespace tests::soak
