#include "app/interrupt.h"

#include <atomic>
#include <csignal>
#include <cstdio>
#include <unistd.h>

namespace app {

namespace {

constexpr std::array kSignals{SIGINT, SIGTERM, SIGHUP};
std::atomic<int> asked = 0;
static_assert(std::atomic<int>::is_always_lock_free);

void ask(int signal) {
    asked = signal;
    std::signal(signal, SIG_DFL);
}

} // namespace

Interrupt::Interrupt() : m_terminal(isatty(STDERR_FILENO) == 1) {
    for (size_t i = 0; i < kSignals.size(); ++i) {
        m_before[i] = std::signal(kSignals[i], ask);
        if (m_before[i] == SIG_IGN) std::signal(kSignals[i], SIG_IGN); // nohup
    }
}

Interrupt::~Interrupt() {
    show({}, 0);
    for (size_t i = 0; i < kSignals.size(); ++i) std::signal(kSignals[i], m_before[i]);
}

core::Progress Interrupt::progress() {
    return core::Progress(
        [this](const QString& what, double share) {
            show(what, share);
            return asked == 0;
        },
        [] { return asked != 0; });
}

void Interrupt::show(const QString& what, double share) {
    if (!m_terminal || (what.isEmpty() && m_shown == 0)) return;
    const QString line = what.isEmpty() ? QString() : QStringLiteral("%1 %2 %").arg(what).arg(int(share * 100));
    const QByteArray shown = line.leftJustified(m_shown).toLocal8Bit();
    std::fprintf(stderr, "\r%s%s", shown.constData(), what.isEmpty() ? "\r" : "");
    std::fflush(stderr);
    m_shown = line.size();
}

void endAsAsked() {
    const int signal = asked;
    if (signal == 0) return;
    std::signal(signal, SIG_DFL);
    std::raise(signal);
}

} // namespace app
