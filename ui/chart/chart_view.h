#pragma once

#include "ui/chart/chart.h"
#include "ui/chart/chart_layout.h"

#include <QPixmap>
#include <QWidget>

namespace ui::chart {

/// One chart, drawn; read by keys (arrows from stop to stop, Home, End) and by the mouse over it. Enter, or a click,
/// asks to open it large.
class ChartView : public QWidget {
    Q_OBJECT
public:
    explicit ChartView(QWidget* parent = nullptr);

    void setChart(Chart chart);
    const Chart& chart() const { return m_chart; }
    const ChartLayout& layedOut() const; ///< at its size now
    /// What is read: by the mouse where it is over a stop, else by the keys; empty: nothing yet.
    QString reading() const;
    std::optional<int> stop() const; ///< its `at`
    void setStop(int at);            ///< the stop nearest to it
    void setLowest(int height);      ///< pixels; scaled with the text

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

signals:
    void readingChanged(const QString& reading);
    void openAsked();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void goTo(size_t stop);
    void hover(std::optional<size_t> stop);
    void tell();
    std::optional<size_t> shownStop() const { return m_hovered ? m_hovered : m_stop; }
    QRectF inside() const;

    Chart m_chart;
    mutable std::optional<ChartLayout> m_layout;
    QPixmap m_picture; ///< null: to be drawn anew
    std::optional<size_t> m_stop, m_hovered;
    int m_lowest = 180;
};

} // namespace ui::chart
