#pragma once

#include "core/base/progress.h"

#include <QElapsedTimer>
#include <QObject>
#include <QPointer>

class QProgressBar;
class QPushButton;
class QWidget;

namespace ui::busy {

/// What goes on in the program meanwhile.
enum class Others {
    Wait, ///< no timer of the rest of the program runs: the book is being written
    GoOn, ///< what only reads and paints
};

enum class Keys {
    ToStop, ///< the stop button is given the keys
    Stay,   ///< nothing is left, and so nothing taken for typed to its end; Esc stops
};

/// While something long is done, the window is painted and the stop button (or Esc) works, and no other input does, so
/// that nobody edits the book meanwhile.
class Busy : public QObject {
    Q_OBJECT
public:
    Busy(QWidget& window, QProgressBar& bar, QPushButton& stop, Others others = Others::Wait, Keys keys = Keys::ToStop);
    ~Busy() override;

    /// For work on this thread: what it tells is shown at once.
    core::Progress progress();
    void show(const QString& what, double share);
    /// It can no longer be stopped: `what` says what is done then.
    void pastStopping(const QString& what);
    bool stopped() const { return m_stopped; } ///< whether it was asked to

signals:
    void told(const QString& what);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void stop();
    bool isOurs(const QObject* object) const;
    bool isAsked(const QObject* object) const;

    QWidget& m_window;
    QProgressBar& m_bar;
    QPushButton& m_stop;
    Others m_others;
    QString m_tip; ///< of the stop button, before
    QPointer<QWidget> m_focus;
    bool m_stopped = false;
    bool m_past = false;
};

} // namespace ui::busy
