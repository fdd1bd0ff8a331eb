#include "ui/backup/keeping.h"

#include "ui/backup/where.h"

#include <QFileInfo>

namespace ui::backup {

namespace {

constexpr int kAfterOpening = 20'000;
constexpr int kAfterEdit = 600'000;
constexpr int kTick = 20;
constexpr int kSlice = 8;
constexpr int kWholeSlice = 200;
constexpr qint64 kAtOnce = 64LL * 1024 * 1024; ///< a book up to this size is copied while its window closes

} // namespace

Keeping::Keeping(desk::Desk& desk, QObject* parent) : QObject(parent), m_desk(desk), m_afterEdit(kAfterEdit) {
    m_wait.setSingleShot(true);
    m_tick.setInterval(kTick);
    connect(&m_wait, &QTimer::timeout, this, &Keeping::look);
    connect(&m_tick, &QTimer::timeout, this, &Keeping::step);
    connect(&desk.session(), &core::edit::Session::changed, this, [this] {
        if (m_byItself && !m_wait.isActive() && !running()) m_wait.start(m_afterEdit);
    });
    m_wait.start(kAfterOpening);
}

Keeping::~Keeping() = default;

double Keeping::share() const { return m_run ? m_run->share() : 1; }

void Keeping::setPatience(int afterOpening, int afterEdit) {
    m_afterEdit = afterEdit;
    if (m_wait.isActive()) m_wait.start(afterOpening);
}

void Keeping::waitForAsking() {
    m_byItself = false;
    m_wait.stop();
}

void Keeping::look() {
    try {
        if (!running() && core::edit::backupNeeded(m_desk.session(), folder())) begin();
    } catch (const core::Error& e) {
        fail(e.userMessage());
    }
}

void Keeping::begin() {
    if (running()) return;
    m_wait.stop();
    try {
        m_run = std::make_unique<core::edit::BackupRun>(m_desk.session(), folder());
        m_tick.start();
        emit moved();
    } catch (const core::Error& e) {
        fail(e.userMessage());
    }
}

void Keeping::stop() {
    m_tick.stop();
    m_run.reset();
    emit moved();
}

void Keeping::step() {
    try {
        if (m_run->step(kSlice)) return emit moved();
        const core::edit::Backup backup = m_run->made();
        stop();
        emit made(backup);
    } catch (const core::Error& e) {
        fail(e.userMessage());
    }
}

void Keeping::fail(const QString& why) {
    stop();
    if (m_byItself) m_wait.start(m_afterEdit);
    emit failed(tr("No backup was made. %1").arg(why));
}

void Keeping::finish() {
    m_wait.stop();
    m_tick.stop();
    try {
        if (!m_run) {
            const core::edit::Session& session = m_desk.session();
            if (QFileInfo(session.path()).size() > kAtOnce || !core::edit::backupNeeded(session, folder())) return;
            m_run = std::make_unique<core::edit::BackupRun>(session, folder());
        }
        while (m_run->step(kWholeSlice)) {
        }
    } catch (const core::Error& e) {
        emit failed(tr("No backup was made. %1").arg(e.userMessage()));
    }
    m_run.reset();
}

} // namespace ui::backup
