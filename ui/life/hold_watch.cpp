#include "ui/life/hold_watch.h"

#include "core/rules/holds_over_time.h"
#include "core/rules/holds_then.h"

#include <QElapsedTimer>
#include <QThread>

#include <algorithm>

namespace ui::life {

namespace {

constexpr int kLeastApart = 7, kMostApart = 90;
constexpr qint64 kWork = 15'000; // milliseconds, about

/// As far apart as the book is large.
int apartFor(const core::Snapshot& whole, core::Day first, core::Day last) {
    QElapsedTimer timer;
    timer.start();
    core::rules::holdsThen(whole, last);
    const qint64 all = std::max<qint64>(timer.elapsed(), 1) * (last - first);
    return static_cast<int>(std::clamp<qint64>(all / kWork, kLeastApart, kMostApart));
}

} // namespace

HoldWatch::HoldWatch(QObject* parent) : QObject(parent) {}

HoldWatch::~HoldWatch() {
    stop();
    for (QThread* thread : m_threads) {
        thread->wait();
        delete thread;
    }
}

void HoldWatch::stop() { ++m_run; }

void HoldWatch::start(std::shared_ptr<const core::Snapshot> whole, core::ColonyId colony, core::Day first,
                      core::Day last) {
    const int run = ++m_run;
    std::erase_if(m_threads, [](QThread* thread) {
        if (!thread->isFinished()) return false;
        delete thread;
        return true;
    });
    auto* thread = QThread::create([this, run, whole = std::move(whole), colony, first, last] {
        const auto stopped = [this, run] { return m_run != run; };
        try {
            const int apart = apartFor(*whole, first, last);
            auto spans = core::rules::holdsOverTime(*whole, colony, first, last, apart, stopped);
            if (stopped()) return;
            QMetaObject::invokeMethod(
                this,
                [this, run, colony, spans = std::move(spans), apart] {
                    if (m_run == run) emit found(colony, spans, apart);
                },
                Qt::QueuedConnection);
        } catch (const std::exception& e) {
            qWarning("holds over time: %s", e.what());
        }
    });
    m_threads.push_back(thread);
    thread->start(QThread::LowPriority);
}

} // namespace ui::life
