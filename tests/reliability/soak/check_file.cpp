#include "tests/reliability/soak/soak.h"

#include <gtest/gtest.h>

#include <cstdio>

#include <sys/wait.h>
#include <unistd.h>

namespace tests::soak {

/// In a process of its own: what a check of the whole history takes of memory is not the editing program's.
void Soak::checkFile() {
    std::fflush(nullptr);
    const pid_t child = fork();
    if (child == 0) {
        int problems = 1;
        try {
            const auto own = Session::open(path(), m_clock, Session::Access::ReadOnly);
            const QStringList found = own->check();
            for (const QString& problem : found) std::fprintf(stderr, "check: %s\n", qPrintable(problem));
            problems = found.isEmpty() ? 0 : 2;
        } catch (const Error& e) {
            std::fprintf(stderr, "check: %s %s\n", e.what(), qPrintable(e.detail()));
        }
        _exit(problems);
    }
    int status = -1;
    if (child > 0) waitpid(child, &status, 0);
    EXPECT_EQ(status, 0) << "the book's own check, or its history against its rows";
    if (status != 0) ++m_losses;
}

} // namespace tests::soak
