#pragma once

#include "core/base/day.h"

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>

namespace ui::time {

/// Plays through days at an even speed by the clock: where showing one takes longer than its time, days are passed over
/// and never queued. Between two days the window hears of mouse and keys.
class Player : public QObject {
    Q_OBJECT
public:
    explicit Player(QObject* parent);

    void play(core::Day from, core::Day to);
    void stop();
    bool playing() const { return m_timer.isActive(); }
    /// The time that a day is shown; the whole way takes half a minute at most.
    static double msPerDay(int days);

signals:
    void dayPlayed(core::Day day);
    void ended(); ///< at the last day, or stopped

private:
    void step();

    QTimer m_timer;
    QElapsedTimer m_clock;
    core::Day m_from, m_to, m_shown;
    double m_msPerDay = 1;
};

} // namespace ui::time
