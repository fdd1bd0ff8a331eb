#pragma once

#include "ui/plan/camera.h"

#include <QObject>
#include <QVariantAnimation>

namespace ui::plan {

/// The camera on its way from one part of a yard to another, zoom and all.
class Flight : public QObject {
    Q_OBJECT
public:
    explicit Flight(QObject* parent);

    /// Arrives within `milliseconds`; at once where that is 0.
    void go(const Camera& from, const Camera& to, int milliseconds);
    /// Where it is, it stays.
    void stop();
    bool on() const { return m_way.state() == QAbstractAnimation::Running; }

signals:
    void at(const ui::plan::Camera& camera);

private:
    void show(double done);

    QVariantAnimation m_way;
    Camera m_from, m_to;
};

} // namespace ui::plan
