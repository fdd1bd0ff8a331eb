#include "ui/plan/flight.h"

#include <cmath>

namespace ui::plan {

Flight::Flight(QObject* parent) : QObject(parent) {
    m_way.setStartValue(0.0);
    m_way.setEndValue(1.0);
    m_way.setEasingCurve(QEasingCurve::InOutCubic);
    connect(&m_way, &QVariantAnimation::valueChanged, this, [this](const QVariant& done) {
        if (on()) show(done.toDouble());
    });
    connect(&m_way, &QVariantAnimation::finished, this, [this] { show(1); });
}

void Flight::go(const Camera& from, const Camera& to, int milliseconds) {
    m_way.stop();
    m_from = from;
    m_to = to;
    if (milliseconds <= 0) return show(1);
    m_way.setDuration(milliseconds);
    m_way.start();
}

void Flight::stop() { m_way.stop(); }

/// The zoom by equal shares, as it is seen.
void Flight::show(double done) {
    Camera now = m_to;
    if (done < 1) {
        now.centre = m_from.centre + (m_to.centre - m_from.centre) * done;
        now.pixelsPerMetre = m_from.pixelsPerMetre * std::pow(m_to.pixelsPerMetre / m_from.pixelsPerMetre, done);
    }
    emit at(now);
}

} // namespace ui::plan
