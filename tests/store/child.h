#pragma once

#include <functional>
#include <string>

/// Runs `work` in a child process and returns the text that it returns; "killed" when it ended otherwise.
/// `asNobody`: without root's rights, so that read-only folders are read-only.
std::string inChild(const std::function<std::string()>& work, bool asNobody = false);

/// A child process that runs `work` and then waits, holding what it holds, until it is killed.
class HoldingChild {
public:
    /// Returns when `work` is done. Throws std::runtime_error when the child failed.
    explicit HoldingChild(const std::function<void()>& work);
    ~HoldingChild() { kill(); }
    HoldingChild(const HoldingChild&) = delete;
    HoldingChild& operator=(const HoldingChild&) = delete;
    void kill(); ///< SIGKILL, and waits for its end

private:
    int m_pid = -1;
};
