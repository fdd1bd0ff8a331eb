#include "ui/time/player.h"

#include <algorithm>

namespace ui::time {

namespace {
constexpr int kFrameMs = 25;
constexpr double kMostMsPerDay = 140;
constexpr double kWholeMs = 30'000;
} // namespace

Player::Player(QObject* parent) : QObject(parent) {
    m_timer.setSingleShot(true); // the next frame begins when this one is shown
    m_timer.setInterval(kFrameMs);
    connect(&m_timer, &QTimer::timeout, this, &Player::step);
}

double Player::msPerDay(int days) { return std::min(kMostMsPerDay, kWholeMs / std::max(days, 1)); }

void Player::play(core::Day from, core::Day to) {
    m_from = m_shown = from;
    m_to = to;
    m_msPerDay = msPerDay(to - from);
    m_clock.start();
    m_timer.start();
}

void Player::stop() {
    if (!playing()) return;
    m_timer.stop();
    emit ended();
}

void Player::step() {
    const int on = static_cast<int>(static_cast<double>(m_clock.elapsed()) / m_msPerDay);
    const core::Day day = std::min(m_from + on, m_to);
    m_timer.start();
    if (day != m_shown) {
        m_shown = day;
        emit dayPlayed(day);
    }
    if (m_shown == m_to) stop();
}

} // namespace ui::time
