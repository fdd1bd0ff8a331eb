#pragma once

#include "ui/time/day_words.h"
#include "ui/time/time_scale.h"

#include <QWidget>

namespace ui::time {

/// The line of a yard's days, with what is recorded on them, and a knob on the day that is shown. By mouse (dragged,
/// clicked, wheel to zoom), by keys, and as a slider for screen readers. Knows no session: it says what was asked for.
class Strip : public QWidget {
    Q_OBJECT
public:
    explicit Strip(QWidget* parent = nullptr);

    void setRecords(Records records);
    const Records& records() const { return m_records; }
    /// All the days that can be shown, and the present among them.
    void setDays(core::Day first, core::Day last, core::Day today);
    void setDay(core::Day day);
    core::Day day() const { return m_day; }
    core::Day first() const { return m_scale.first(); }
    core::Day last() const { return m_scale.last(); }
    core::Day today() const { return m_today; }
    const TimeScale& scale() const { return m_scale; }
    bool dragging() const { return m_dragging; }
    void showAll();
    void showDays(int days); ///< around the day that is shown
    void zoomBy(double factor);
    /// A day of the range, as asked by a screen reader.
    void askFor(core::Day day);
    /// "15 Sep 2026: 12 visits"
    QString spoken(core::Day day) const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

signals:
    /// `on`: more may follow at once, the drag or the key is still down.
    void dayAsked(core::Day day, bool on);
    void dropped();   ///< a drag or a held key has ended
    void playAsked(); ///< the space bar

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool event(QEvent* event) override;

private:
    std::optional<core::Day> dayOfKey(const QKeyEvent& event) const;
    bool zoomKey(const QKeyEvent& event);
    core::Day nearby(double x) const;
    void settleScale();
    void tell();
    int lineY() const;
    void paintLine(QPainter& p) const;
    void paintMarks(QPainter& p) const;
    void paintRecords(QPainter& p) const;
    void paintKnob(QPainter& p) const;

    TimeScale m_scale;
    Records m_records;
    int m_mostVisits = 1; ///< on one day
    core::Day m_day, m_today;
    bool m_dragging = false;
    bool m_held = false; ///< a key repeats
};

} // namespace ui::time
