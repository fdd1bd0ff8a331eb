#include "ui/busy/busy.h"

#include <QApplication>
#include <QKeyEvent>
#include <QProgressBar>
#include <QPushButton>

#include <utility>

namespace ui::busy {

namespace {

constexpr int kWhole = 1000;
constexpr std::chrono::milliseconds kPaintsApart(40);

bool isInput(QEvent::Type type) {
    switch (type) {
    case QEvent::MouseButtonPress:
    case QEvent::MouseButtonRelease:
    case QEvent::MouseButtonDblClick:
    case QEvent::KeyPress:
    case QEvent::KeyRelease:
    case QEvent::Shortcut:
    case QEvent::ShortcutOverride:
    case QEvent::Wheel:
    case QEvent::ContextMenu:
    case QEvent::DragEnter:
    case QEvent::Drop:
    case QEvent::TouchBegin:
    case QEvent::InputMethod:
    case QEvent::Close:
        return true;
    default:
        return false;
    }
}

} // namespace

Busy::Busy(QWidget& window, QProgressBar& bar, QPushButton& stop, Others others, Keys keys)
    : m_window(window),
      m_bar(bar),
      m_stop(stop),
      m_others(others),
      m_tip(stop.toolTip()),
      m_focus(keys == Keys::ToStop ? QApplication::focusWidget() : nullptr) {
    m_bar.setRange(0, kWhole);
    m_bar.setValue(0);
    m_bar.show();
    m_stop.setEnabled(true);
    m_stop.show();
    if (keys == Keys::ToStop) m_stop.setFocus(Qt::OtherFocusReason);
    connect(&m_stop, &QPushButton::clicked, this, &Busy::stop);
    qApp->installEventFilter(this);
}

Busy::~Busy() {
    qApp->removeEventFilter(this);
    const bool hadKeys = m_stop.hasFocus() || !m_stop.isEnabled();
    m_bar.hide();
    m_stop.hide();
    m_stop.setToolTip(m_tip);
    if (hadKeys && m_focus) m_focus->setFocus(Qt::OtherFocusReason);
}

core::Progress Busy::progress() {
    return core::Progress(
        [this](const QString& what, double share) {
            show(what, share);
            QCoreApplication::processEvents();
            return !m_stopped;
        },
        {}, kPaintsApart,
        [this](const QString& what) {
            pastStopping(what);
            QCoreApplication::processEvents();
        });
}

void Busy::show(const QString& what, double share) {
    m_bar.setValue(static_cast<int>(share * kWhole));
    if (!m_stopped && !m_past) emit told(what);
}

void Busy::pastStopping(const QString& what) {
    if (std::exchange(m_past, true)) return;
    m_stop.setEnabled(false);
    m_stop.setToolTip(tr("It can no longer be stopped"));
    emit told(tr("%1 This can no longer be stopped.").arg(what));
}

void Busy::stop() {
    if (m_stopped || m_past) return;
    m_stopped = true;
    m_stop.setEnabled(false);
    emit told(tr("Stopping…"));
}

bool Busy::isOurs(const QObject* object) const {
    for (const QObject* o = object; o; o = o->parent())
        if (o == &m_stop || o == &m_bar) return true;
    return false;
}

/// Of a dialog that was opened over the window meanwhile: an error that has to be closed.
bool Busy::isAsked(const QObject* object) const {
    const QWidget* dialog = QApplication::activeModalWidget();
    if (!dialog || dialog == m_window.window()) return false;
    for (const QObject* o = object; o; o = o->parent())
        if (o == dialog) return true;
    return false;
}

bool Busy::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Timer) return m_others == Others::Wait && !isOurs(watched); // it comes again
    if (!isInput(event->type()) || watched->isWindowType()) return false; // a window hands its input to a widget
    if (isAsked(watched)) return false;
    if (event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        stop();
        return true;
    }
    if (event->type() == QEvent::Close) event->ignore();
    return !isOurs(watched);
}

} // namespace ui::busy
