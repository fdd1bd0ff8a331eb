#pragma once

#include "ui/plan/scene.h"

#include <algorithm>
#include <cmath>
#include <random>

namespace tests {

/// A yard of `count` hives in rows `step` metres apart, a little crooked, some turned, some held, some united.
inline ui::plan::Scene yardOf(int count, double step, unsigned seed) {
    ui::plan::Scene s;
    s.yard = QStringLiteral("Rows");
    s.gate = {-3000, -2000};
    std::mt19937 random(seed);
    const auto below = [&random](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
    const int columns = static_cast<int>(std::ceil(std::sqrt(count * 1.6)));
    for (int i = 0; i < count; ++i) {
        ui::plan::HiveMark m;
        m.colony = {i + 1};
        m.label = QStringLiteral("M%1").arg(i + 1);
        m.at = {static_cast<qint32>(i % columns * step * 1000) + below(120),
                static_cast<qint32>(-i / columns * step * 1400) + below(120)};
        m.headingDeg = below(10) < 8 ? 180 : below(360);
        m.boxes = below(4) == 0 ? 2 : 1;
        m.line = QStringLiteral("not counted");
        if (below(12) > 0) {
            m.bees = core::Quarters{below(45)};
            m.line = core::framesText(*m.bees) + QStringLiteral(" frames");
        }
        if (below(14) == 0) m.holdLetters = below(4) == 0 ? QStringLiteral("FCY") : QStringLiteral("B");
        m.layingWorkers = below(50) == 0;
        m.feedHalfLitres = below(10) == 0 ? 1 + below(20) : 0;
        s.hives.push_back(m);
    }
    std::vector<bool> used(s.hives.size());
    for (int k = 0; k < count / 5; ++k) {
        const auto a = static_cast<size_t>(below(count));
        const size_t b = std::min(a + 1 + static_cast<size_t>(below(3) + below(3) * columns), s.hives.size() - 1);
        if (a == b || used[a] || used[b] || s.hives[a].held() || s.hives[b].held()) continue;
        used[a] = used[b] = true;
        const double far = std::hypot(s.hives[a].at.x - s.hives[b].at.x, s.hives[a].at.y - s.hives[b].at.y) / 1000;
        s.unions.push_back({static_cast<int>(s.unions.size()) + 1, a, b, QStringLiteral("%1 m").arg(far, 0, 'f', 1)});
    }
    return s;
}

} // namespace tests
