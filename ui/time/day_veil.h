#pragma once

#include <QString>
#include <QWidget>

namespace ui::time {

/// Over a drawing that is not of the present: a frame all round, and which day it is. Mouse and keys pass through.
class DayVeil : public QWidget {
    Q_OBJECT
public:
    explicit DayVeil(QWidget* over);

    /// Empty: the present, nothing is drawn.
    void setText(const QString& text);
    QString text() const { return m_text; }

protected:
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QString m_text;
};

} // namespace ui::time
