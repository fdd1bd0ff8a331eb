#pragma once

#include "core/exchange/watch.h"

#include <QElapsedTimer>
#include <QObject>
#include <QPointer>

class QProgressBar;
class QPushButton;
class QWidget;

namespace ui::exchange {

/// While the book is read or written on this thread: the window is painted and the stop button (or Esc) works, and
/// nothing else does. Input of all windows is dropped and timers of the rest of the program wait, so that nobody reads
/// or edits the book amid the writing.
class Busy : public QObject {
    Q_OBJECT
public:
    Busy(QWidget& window, QProgressBar& bar, QPushButton& stop);
    ~Busy() override;

    /// For an import; after it stopped() says whether it was asked to.
    core::exchange::ImportWatch watch();
    bool stopped() const { return m_stopped; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    bool told(core::exchange::ImportStep step, qint64 done, qint64 total);
    bool isOurs(const QObject* object) const;

    QWidget& m_window;
    QProgressBar& m_bar;
    QPushButton& m_stop;
    QPointer<QWidget> m_focus;
    QElapsedTimer m_since;
    bool m_stopped = false;
};

} // namespace ui::exchange
