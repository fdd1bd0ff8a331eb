#include "tests/store/child.h"

#include <array>
#include <csignal>
#include <exception>
#include <grp.h>
#include <stdexcept>
#include <sys/wait.h>
#include <unistd.h>

namespace {

constexpr uid_t kNobody = 65534;

void dropRights() {
    if (geteuid() != 0) return;
    if (setgroups(0, nullptr) != 0 || setgid(kNobody) != 0 || setuid(kNobody) != 0) _exit(9);
}

std::string readAll(int file) {
    std::string text;
    std::array<char, 4096> buffer{};
    for (ssize_t n = 0; (n = read(file, buffer.data(), buffer.size())) > 0;)
        text.append(buffer.data(), static_cast<size_t>(n));
    return text;
}

void writeAll(int file, const std::string& text) {
    if (write(file, text.data(), text.size()) < 0) _exit(8);
}

} // namespace

std::string inChild(const std::function<std::string()>& work, bool asNobody) {
    int ends[2];
    if (pipe(ends) != 0) throw std::runtime_error("pipe");
    const pid_t pid = fork();
    if (pid == 0) {
        close(ends[0]);
        if (asNobody) dropRights();
        try {
            writeAll(ends[1], work());
        } catch (const std::exception& e) {
            writeAll(ends[1], std::string("exception: ") + e.what());
        }
        _exit(0);
    }
    close(ends[1]);
    std::string text = readAll(ends[0]);
    close(ends[0]);
    int status = 0;
    waitpid(pid, &status, 0);
    return WIFEXITED(status) && WEXITSTATUS(status) == 0 ? text : "killed";
}

HoldingChild::HoldingChild(const std::function<void()>& work) {
    int ends[2];
    if (pipe(ends) != 0) throw std::runtime_error("pipe");
    m_pid = fork();
    if (m_pid == 0) {
        close(ends[0]);
        try {
            work();
            writeAll(ends[1], "ok");
        } catch (const std::exception& e) {
            writeAll(ends[1], e.what());
        }
        close(ends[1]);
        while (true) pause();
    }
    close(ends[1]);
    const std::string said = readAll(ends[0]);
    close(ends[0]);
    if (said != "ok") {
        kill();
        throw std::runtime_error("child: " + said);
    }
}

void HoldingChild::kill() {
    if (m_pid < 0) return;
    ::kill(m_pid, SIGKILL);
    waitpid(m_pid, nullptr, 0);
    m_pid = -1;
}
