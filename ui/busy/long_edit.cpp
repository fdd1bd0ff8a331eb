#include "ui/busy/long_edit.h"

#include "core/edit/session.h"
#include "ui/busy/panel.h"

#include <QApplication>

#include <algorithm>

namespace ui::busy {

namespace {

constexpr std::chrono::milliseconds kTellsApart(40);
constexpr int kNarrowest = 480; ///< what is smaller has no room for the panel

QWidget& inFront(QWidget& window) {
    QWidget* active = QApplication::activeWindow();
    return active && active->width() >= kNarrowest ? *active : window;
}

} // namespace

LongEdit::LongEdit(core::edit::Session& session, QWidget& window, int soonMs)
    : m_session(session), m_window(inFront(window)), m_soonMs(soonMs) {
    m_since.start();
    m_session.setProgress(core::Progress([this](const QString& what, double share) { return tell(what, share); }, {},
                                         std::min(kTellsApart, std::chrono::milliseconds(soonMs)),
                                         [this](const QString& what) { pastStopping(what); }));
}

LongEdit::~LongEdit() { m_session.setProgress({}); }

bool LongEdit::tell(const QString& what, double share) {
    if (!m_panel && (share <= 0 || m_since.elapsed() < m_soonMs)) return true;
    if (!m_panel)
        m_panel = std::make_unique<Panel>(tr("The book is being changed…"), m_window, Others::Wait, Keys::Stay);
    m_panel->busy().show(what, share);
    QCoreApplication::processEvents();
    return !m_panel->busy().stopped();
}

void LongEdit::pastStopping(const QString& what) {
    if (!m_panel) return;
    m_panel->busy().pastStopping(what);
    QCoreApplication::processEvents();
}

} // namespace ui::busy
