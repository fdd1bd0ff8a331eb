#pragma once

#include "ui/plan/scene.h"

#include <cmath>
#include <random>

namespace tests {

/// A yard of `count` hives strewn at random, no two nearer than 1.2 m, of every state, with unions and shake-outs
/// between hives up to about 9 m apart.
class Scattered {
public:
    Scattered(int count, unsigned seed) : m_random(seed) {
        m_scene.yard = QStringLiteral("Strewn");
        const double side = std::sqrt(count * 3.4); // metres: about as dense as seven out of ten random darts allow
        while (static_cast<int>(m_scene.hives.size()) < count) {
            const core::MmPoint at{below(static_cast<int>(side * 1300)), -below(static_cast<int>(side * 770))};
            if (freeOf(at)) addHive(at);
        }
        m_scene.gate = {-1500, -static_cast<qint32>(side * 400)};
        m_used.assign(m_scene.hives.size(), false);
        for (int k = 0; k < count; ++k) addMove(k % 5 == 4);
    }
    const ui::plan::Scene& scene() const { return m_scene; }

private:
    int below(int n) { return static_cast<int>(m_random() % static_cast<unsigned>(n)); }

    bool freeOf(core::MmPoint at) const {
        for (const ui::plan::HiveMark& h : m_scene.hives)
            if (core::squaredDistance(h.at, at) < qint64{1200} * 1200) return false;
        return true;
    }

    void addHive(core::MmPoint at) {
        ui::plan::HiveMark m;
        const int number = static_cast<int>(m_scene.hives.size()) + 1;
        m.colony = {number};
        m.label = below(8) == 0 ? QStringLiteral("Larkspur %1").arg(number) : QStringLiteral("K%1").arg(number);
        m.at = at;
        m.headingDeg = below(3) == 0 ? below(360) : below(8) * 45;
        m.boxes = below(4) == 0 ? 2 : 1;
        m.line = QStringLiteral("not counted since 5 Aug");
        if (below(9) > 0) {
            m.bees = core::Quarters{below(60)};
            m.line = core::framesText(*m.bees) + QStringLiteral(" frames");
        }
        if (below(7) == 0) m.holdLetters = below(3) == 0 ? QStringLiteral("FCY") : QStringLiteral("B");
        m.layingWorkers = below(15) == 0;
        m.feedHalfLitres = below(4) == 0 ? 1 + below(30) : 0;
        m_scene.hives.push_back(m);
    }

    double apart(size_t a, size_t b) const {
        const std::vector<ui::plan::HiveMark>& hives = m_scene.hives;
        return std::sqrt(static_cast<double>(core::squaredDistance(hives[a].at, hives[b].at))) / 1000;
    }

    void addMove(bool shake) {
        const auto a = static_cast<size_t>(below(static_cast<int>(m_scene.hives.size())));
        const auto b = static_cast<size_t>(below(static_cast<int>(m_scene.hives.size())));
        if (a == b || m_used[a] || m_used[b] || apart(a, b) > 9) return;
        if (m_scene.hives[a].held() || m_scene.hives[b].held()) return;
        m_used[a] = m_used[b] = true;
        const QString metres = QStringLiteral("%1 m").arg(apart(a, b), 0, 'f', 1);
        if (shake)
            m_scene.shakes.push_back({a, b});
        else
            m_scene.unions.push_back({static_cast<int>(m_scene.unions.size()) + 1, a, b, metres});
    }

    std::mt19937 m_random;
    ui::plan::Scene m_scene;
    std::vector<bool> m_used;
};

} // namespace tests
