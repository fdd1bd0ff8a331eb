#include "ui/exchange/busy.h"

#include <QApplication>
#include <QKeyEvent>
#include <QProgressBar>
#include <QPushButton>

namespace ui::exchange {

namespace ex = core::exchange;

namespace {

constexpr int kWhole = 1000;
constexpr qint64 kPaintsApartMs = 40;

/// Where a step begins and ends on the bar; measured on a million visits: reading and writing take about as long.
std::pair<int, int> spanOf(ex::ImportStep step) {
    switch (step) {
    case ex::ImportStep::Reading:
        return {0, 350};
    case ex::ImportStep::Checking:
        return {350, 450};
    case ex::ImportStep::Writing:
        break;
    }
    return {450, kWhole};
}

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

Busy::Busy(QWidget& window, QProgressBar& bar, QPushButton& stop)
    : m_window(window), m_bar(bar), m_stop(stop), m_focus(QApplication::focusWidget()) {
    m_bar.setRange(0, kWhole);
    m_bar.setValue(0);
    m_bar.show();
    m_stop.show();
    m_stop.setFocus(Qt::OtherFocusReason);
    connect(&m_stop, &QPushButton::clicked, this, [this] { m_stopped = true; });
    qApp->installEventFilter(this);
    m_since.start();
}

Busy::~Busy() {
    qApp->removeEventFilter(this);
    const bool hadKeys = m_stop.hasFocus();
    m_bar.hide();
    m_stop.hide();
    if (hadKeys && m_focus) m_focus->setFocus(Qt::OtherFocusReason);
}

ex::ImportWatch Busy::watch() {
    return [this](ex::ImportStep step, qint64 done, qint64 total) { return told(step, done, total); };
}

bool Busy::told(ex::ImportStep step, qint64 done, qint64 total) {
    if (done > 0 && m_since.elapsed() < kPaintsApartMs) return !m_stopped;
    const auto [from, to] = spanOf(step);
    const double share = total > 0 ? std::min(1.0, static_cast<double>(done) / static_cast<double>(total)) : 0.0;
    m_bar.setValue(from + static_cast<int>(share * (to - from)));
    QCoreApplication::processEvents();
    m_since.restart();
    return !m_stopped;
}

bool Busy::isOurs(const QObject* object) const {
    for (const QObject* o = object; o; o = o->parent())
        if (o == &m_stop || o == &m_bar) return true;
    return false;
}

bool Busy::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Timer) return !isOurs(watched);          // it comes again
    if (!isInput(event->type()) || watched->isWindowType()) return false; // a window hands its input to a widget
    if (event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        m_stopped = true;
        return true;
    }
    if (event->type() == QEvent::Close) event->ignore();
    return !isOurs(watched);
}

} // namespace ui::exchange
