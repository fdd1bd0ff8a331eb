#pragma once

#include <QObject>

#include <atomic>
#include <functional>
#include <vector>

class QThread;

namespace ui::desk {

/// Works something out beside the window, which nobody should wait for; what is asked last counts.
class Beside : public QObject {
public:
    explicit Beside(QObject* parent);
    ~Beside() override; ///< waits until the work has seen that it is stopped

    /// Runs in the window's thread once the work is done.
    using Found = std::function<void()>;
    /// Touches nothing of the window's; asks `stopped` now and then and returns at once where it says so.
    using Work = std::function<Found(const std::function<bool()>& stopped)>;
    /// Instead of what was asked before.
    void start(Work work);
    void stop();

private:
    std::atomic<int> m_run = 0;
    std::vector<QThread*> m_threads;
};

} // namespace ui::desk
