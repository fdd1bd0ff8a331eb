#include "ui/desk/beside.h"

#include <QThread>

namespace ui::desk {

Beside::Beside(QObject* parent) : QObject(parent) {}

Beside::~Beside() {
    stop();
    for (QThread* thread : m_threads) {
        thread->wait();
        delete thread;
    }
}

void Beside::stop() { ++m_run; }

void Beside::start(Work work) {
    const int run = ++m_run;
    std::erase_if(m_threads, [](QThread* thread) {
        if (!thread->isFinished()) return false;
        delete thread;
        return true;
    });
    auto* thread = QThread::create([this, run, work = std::move(work)] {
        const auto stopped = [this, run] { return m_run != run; };
        try {
            Found found = work(stopped);
            if (stopped() || !found) return;
            QMetaObject::invokeMethod(
                this,
                [this, run, found = std::move(found)] {
                    if (m_run == run) found();
                },
                Qt::QueuedConnection);
        } catch (const std::exception& e) {
            qWarning("work beside the window: %s", e.what());
        }
    });
    m_threads.push_back(thread);
    thread->start(QThread::LowPriority);
}

} // namespace ui::desk
