#pragma once

#include "ui/desk/desk.h"
#include "ui/plan/plan_view.h"
#include "ui/time/date_bar.h"
#include "ui/time/day_veil.h"
#include "ui/time/glance.h"
#include "ui/time/player.h"

#include <QObject>

namespace ui::time {

/// Turns the desk to the day that is asked for on the date bar, plays through days, keeps past days locked, and tells
/// the bar what is recorded of the yard shown.
class TimeDesk : public QObject {
    Q_OBJECT
public:
    TimeDesk(desk::Desk& desk, plan::PlanView& plan, Dialogs& dialogs, QWidget* parent);

    DateBar* bar() const { return m_bar; }
    DayVeil* veil() const { return m_veil; }
    bool playing() const { return m_player.playing(); }
    /// How far after today the days go.
    void setAhead(int days);

    void goTo(core::Day day);
    void today();
    /// From the day shown to the last one in view, or through all in view where it stands at their end. Again: stops.
    void play();
    void focusField();
    /// A whole reading that took no longer than this is done at each step; else the yard alone is drawn until the hand
    /// rests.
    void setFluentMs(double ms) { m_fluentMs = ms; }
    bool glancing() const { return m_glancing; }

private:
    void connectBar();
    void follow();
    void readRecords();
    void showDays();
    void showDay(core::Day day);
    void ask(core::Day day, bool on);
    void show(core::Day day);
    void showWhole(core::Day day);
    void glance(core::Day day);
    void rest();
    void settle();
    void setOffer();
    QString barText(core::Day day) const;

    desk::Desk& m_desk;
    plan::PlanView& m_plan;
    Dialogs& m_dialogs;
    DateBar* m_bar;
    DayVeil* m_veil;
    Player m_player;
    QTimer m_soon; ///< when the events that wait are through
    QTimer m_rest; ///< the hand rests
    Glance m_glance;
    bool m_glancing = false; ///< the plan shows a day that is not the desk's yet
    bool m_onlyReads = false;
    double m_fluentMs = 25;
    double m_wholeMs = 0; ///< of the last whole reading; 0: none yet
    core::Day m_asked;
    std::optional<core::YardId> m_yard; ///< that the records are of
    int m_ahead = 0;
    bool m_ownStep = false; ///< the day alone changes, the records stay
};

} // namespace ui::time
