#pragma once

#include "ui/time/time_scale.h"

#include <QWidget>

#include <functional>

namespace ui::life {

/// Months or years above rows in time. Knows the scale that the rows share; below the years there may be a strip.
class TimeRuler : public QWidget {
    Q_OBJECT
public:
    explicit TimeRuler(QWidget* parent);

    void setDays(core::Day first, core::Day last);
    void setRoom(int width); ///< of the rows, which may leave a bar at the right
    const time::TimeScale& scale() const { return m_scale; }
    /// What is painted below the years, so many pixels high.
    void setStrip(int high, std::function<void(QPainter&, const QRectF&)> paint);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    time::TimeScale m_scale;
    std::function<void(QPainter&, const QRectF&)> m_paint;
    int m_strip = 0;
    int m_room = 0; ///< 0: its own width
};

} // namespace ui::life
