#pragma once

#include <QtGlobal>

#include <functional>

namespace core::exchange {

enum class ImportStep { Reading, Checking, Writing };

/// Told every few thousand rows how much of a step is done (of `total`, in a measure of its own); false stops the
/// import: nothing is written then.
using ImportWatch = std::function<bool(ImportStep step, qint64 done, qint64 total)>;

/// Thrown inside an import that is stopped; no caller of importFiles meets it.
struct ImportStopped {};

/// Tells the watch now and then. Throws ImportStopped.
class Ticker {
public:
    explicit Ticker(const ImportWatch& watch) : m_watch(watch) {}

    void begin(ImportStep step, qint64 total) {
        m_step = step;
        m_total = total;
        m_ticks = 0;
        at(0);
    }
    /// Every few thousandth time.
    bool due() { return ++m_ticks % kApart == 0; }
    void at(qint64 done) const {
        if (m_watch && !m_watch(m_step, done, m_total)) throw ImportStopped();
    }
    /// One more of a step that counts.
    void tick() {
        if (due()) at(m_ticks);
    }

private:
    static constexpr qint64 kApart = 2048;
    ImportWatch m_watch;
    ImportStep m_step = ImportStep::Reading;
    qint64 m_total = 0;
    qint64 m_ticks = 0;
};

} // namespace core::exchange
