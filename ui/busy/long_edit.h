#pragma once

#include "core/base/progress.h"

#include <QCoreApplication>
#include <QElapsedTimer>

#include <memory>

class QWidget;

namespace core::edit {
class Session;
}

namespace ui::busy {

class Panel;

/// While it lives, an edit of `session` on this thread that writes many rows and takes its time shows the panel over
/// the window in front, and can be stopped. One that is soon done shows nothing.
class LongEdit {
    Q_DECLARE_TR_FUNCTIONS(ui::busy::LongEdit)
public:
    static constexpr int kSoonMs = 300;

    LongEdit(core::edit::Session& session, QWidget& window, int soonMs = kSoonMs);
    ~LongEdit();
    LongEdit(const LongEdit&) = delete;
    LongEdit& operator=(const LongEdit&) = delete;

private:
    bool tell(const QString& what, double share);
    void pastStopping(const QString& what);

    core::edit::Session& m_session;
    QWidget& m_window;
    int m_soonMs;
    QElapsedTimer m_since;
    std::unique_ptr<Panel> m_panel;
};

} // namespace ui::busy
