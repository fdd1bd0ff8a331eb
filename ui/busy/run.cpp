#include "ui/busy/run.h"

#include "ui/busy/panel.h"

#include <QCoreApplication>
#include <QEventLoop>
#include <QThread>
#include <QTimer>

#include <atomic>
#include <exception>
#include <memory>
#include <mutex>

namespace ui::busy {

namespace {

constexpr int kPaintsApartMs = 40;

/// What the work says, from its thread to the window's.
struct Said {
    std::mutex lock;
    QString what;
    double share = 0;
    bool past = false; ///< it can no longer be stopped
    std::atomic<bool> stop = false;

    core::Progress progress() {
        return core::Progress(
            [this](const QString& now, double done) {
                const std::lock_guard hold(lock);
                what = now;
                share = done;
                return !stop;
            },
            [this] { return stop.load(); }, std::chrono::milliseconds(20),
            [this](const QString& last) {
                const std::lock_guard hold(lock);
                what = last;
                past = true;
            });
    }
};

} // namespace

bool run(QWidget& window, const QString& sentence, const std::function<void(const core::Progress&)>& work) {
    Said said;
    std::exception_ptr failed;
    bool stopped = false;
    const std::unique_ptr<QThread> thread(QThread::create([&] {
        try {
            work(said.progress());
        } catch (const core::Stopped&) {
            stopped = true;
        } catch (...) {
            failed = std::current_exception();
        }
    }));
    {
        Panel panel(sentence, window, Others::GoOn);
        QTimer look;
        QObject::connect(&look, &QTimer::timeout, &panel, [&] {
            const std::lock_guard hold(said.lock);
            panel.busy().show(said.what, said.share);
            if (said.past) panel.busy().pastStopping(said.what);
        });
        look.start(kPaintsApartMs);
        QObject::connect(&panel.busy(), &Busy::told, &panel, [&] { said.stop = panel.busy().stopped(); });
        QCoreApplication::processEvents(); // it is seen, and can be stopped, before the work begins
        QEventLoop loop;
        QObject::connect(thread.get(), &QThread::finished, &loop, &QEventLoop::quit);
        thread->start();
        loop.exec();
        said.stop = !thread->isFinished(); // the program ends
        thread->wait();
    }
    if (failed) std::rethrow_exception(failed);
    return !stopped;
}

} // namespace ui::busy
