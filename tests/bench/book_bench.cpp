#include "tests/bench/scratch_book.h"

#include "core/rules/hold.h"

#include <benchmark/benchmark.h>

#include <chrono>

#include <fcntl.h>
#include <spawn.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

extern char** environ; // NOLINT

namespace {

struct Spent {
    bool done = false;
    double seconds = 0;
    double megabytes = 0; ///< peak resident set, of 10^6 bytes
};

/// The whole command as a user runs it: start, open, read, holds, plan, JSON into nothing.
Spent adviseBigBook() {
    const QByteArray book = bench::bigBookFile().toUtf8();
    const char* words[] = {YW_PROGRAM, "advise", book.constData(), "--on", "2026-09-20", "--json", nullptr};
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_addopen(&actions, STDOUT_FILENO, "/dev/null", O_WRONLY, 0);
    const auto start = std::chrono::steady_clock::now();
    pid_t pid = 0;
    Spent spent;
    if (posix_spawn(&pid, YW_PROGRAM, &actions, nullptr, const_cast<char**>(words), environ) != 0) return spent;
    rusage usage{};
    int status = 0;
    wait4(pid, &status, 0, &usage);
    spent.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    spent.megabytes = static_cast<double>(usage.ru_maxrss) * 1024 / 1e6;
    spent.done = WIFEXITED(status) && WEXITSTATUS(status) == 0;
    posix_spawn_file_actions_destroy(&actions);
    return spent;
}

void advise_book_s(benchmark::State& state) {
    bench::bigBookFile();
    for (auto _ : state) {
        const Spent spent = adviseBigBook();
        if (!spent.done) state.SkipWithError("advise failed");
        state.SetIterationTime(spent.seconds);
    }
}
BENCHMARK(advise_book_s)->UseManualTime()->Iterations(5)->Unit(benchmark::kSecond);

void advise_book_mb(benchmark::State& state) {
    Spent spent;
    for (auto _ : state) spent = adviseBigBook();
    if (!spent.done) state.SkipWithError("advise failed");
    state.counters["value"] = spent.megabytes;
}
BENCHMARK(advise_book_mb)->Iterations(1);

void holds_book_s(benchmark::State& state) {
    const auto session = bench::openBigBook();
    const core::Snapshot snapshot = session->snapshot(core::dayOf(2026, 9, 20));
    for (auto _ : state) benchmark::DoNotOptimize(core::rules::holds(snapshot));
}
BENCHMARK(holds_book_s)->Unit(benchmark::kSecond);

/// The same with hundreds of foulbrood sources.
void holds_troubled_s(benchmark::State& state) {
    const auto session = bench::openTroubledBook();
    const core::Snapshot snapshot = session->snapshot(core::dayOf(2026, 9, 20));
    for (auto _ : state) benchmark::DoNotOptimize(core::rules::holds(snapshot));
}
BENCHMARK(holds_troubled_s)->Unit(benchmark::kSecond);

} // namespace
