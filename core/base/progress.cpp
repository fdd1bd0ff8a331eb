#include "core/base/progress.h"

#include <algorithm>
#include <atomic>

namespace core {

struct Progress::Shared {
    Watch watch;
    StopAsked stopAsked;
    std::chrono::steady_clock::duration apart;
    std::chrono::steady_clock::time_point told;
    QString what;
    double share = 0;
    bool stopped = false;
    PastStopping tellPast = {};
    std::atomic<bool> past = false;

    Shared(Watch tell, StopAsked asked, std::chrono::milliseconds between, PastStopping last)
        : watch(std::move(tell)),
          stopAsked(std::move(asked)),
          apart(between),
          told(std::chrono::steady_clock::now()),
          tellPast(std::move(last)) {}
};

Progress::Progress(Watch watch, StopAsked stopAsked, std::chrono::milliseconds apart, PastStopping past)
    : m_shared(watch ? std::make_shared<Shared>(std::move(watch), std::move(stopAsked), apart, std::move(past))
                     : nullptr) {}

Progress Progress::part(double from, double to, const QString& what) const {
    Progress part = *this;
    part.m_from = m_from + from * (m_to - m_from);
    part.m_to = m_from + to * (m_to - m_from);
    if (!what.isEmpty()) part.m_what = what;
    return part;
}

Progress Progress::inner() const {
    Progress inner = *this;
    inner.m_inner = true;
    return inner;
}

void Progress::at(double share) const {
    if (!m_shared) return;
    // The bar never goes back, whatever a step was thought to be.
    m_shared->share = std::max(m_shared->share, m_from + std::clamp(share, 0.0, 1.0) * (m_to - m_from));
    const bool begins = share <= 0;
    if (begins) m_shared->what = m_what;
    if (begins ? !tell() : !goesOn()) throw Stopped();
}

void Progress::at(qint64 done, qint64 total) const {
    at(total > 0 ? static_cast<double>(done) / static_cast<double>(total) : 0.0);
}

bool Progress::goesOn() const {
    if (!m_shared) return true;
    if (m_shared->stopped) return false;
    return std::chrono::steady_clock::now() - m_shared->told < m_shared->apart || tell();
}

void Progress::pastStopping(const QString& what) const {
    if (!m_shared || m_inner || m_shared->past) return;
    m_shared->share = std::max(m_shared->share, m_from);
    m_shared->what = what;
    if (m_shared->stopped || !tell()) throw Stopped();
    m_shared->past = true;
    if (m_shared->tellPast) m_shared->tellPast(what);
}

StopAsked Progress::stopAsked() const {
    if (!m_shared || !m_shared->stopAsked) return {};
    return [shared = m_shared] { return !shared->past && shared->stopAsked(); };
}

bool Progress::tell() const {
    const bool on = m_shared->watch(m_shared->what, m_shared->share) || m_shared->past;
    m_shared->stopped = m_shared->stopped || !on;
    m_shared->told = std::chrono::steady_clock::now();
    return !m_shared->stopped;
}

} // namespace core
