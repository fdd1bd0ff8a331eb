#include <benchmark/benchmark.h>

#include <QApplication>

#include <cstdio>
#include <string>

// Prints one line a figure, `name value unit`. A figure's name ends in its unit: _s, _ms, _mb, _percent or _ratio, or
// has it before the percentile: _ms_p99.

namespace {

std::string unitOf(const std::string& name) {
    for (const char* unit : {"_ms_", "_s_"})
        if (name.find(unit) != std::string::npos) return std::string(unit).substr(1, std::string(unit).size() - 2);
    return name.substr(name.rfind('_') + 1);
}

/// Only our lines on standard output. A benchmark that counts something puts it into the counter "value".
class LineReporter : public benchmark::BenchmarkReporter {
public:
    bool ReportContext(const Context&) override { return true; }
    void ReportRuns(const std::vector<Run>& runs) override {
        for (const Run& run : runs) {
            const std::string name = run.run_name.function_name;
            if (run.error_occurred) {
                std::fprintf(stderr, "%s: %s\n", name.c_str(), run.error_message.c_str());
                continue;
            }
            const auto counted = run.counters.find("value");
            const double value = counted != run.counters.end() ? double(counted->second) : run.GetAdjustedRealTime();
            std::printf("%s %.4g %s\n", name.c_str(), value, unitOf(name).c_str());
            std::fflush(stdout);
        }
    }
};

} // namespace

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    LineReporter reporter;
    benchmark::RunSpecifiedBenchmarks(&reporter);
    return 0;
}
