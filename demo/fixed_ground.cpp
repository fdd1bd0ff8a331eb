#include "demo/fixed_ground.h"

#include <algorithm>

namespace demo {

namespace {

using core::FixedKind;
using core::FixedThing;
using core::MmPoint;

/// The ground that the hives take, with the gate at its origin.
struct Ground {
    int east = 0;
    int north = 0;
};

Ground groundOf(const DemoYard& yard) {
    Ground g;
    for (int n = 0; n < yard.hives; ++n) {
        const MmPoint at = hiveAt(yard, n);
        g.east = std::max(g.east, at.x);
        g.north = std::max(g.north, at.y);
    }
    return g;
}

class Drawer {
public:
    explicit Drawer(core::YardId yard) : m_yard(yard) {}
    void add(FixedKind kind, const QString& name, std::vector<MmPoint> points) {
        m_things.push_back({{}, m_yard, kind, name, std::move(points), {}});
    }
    void tree(MmPoint at, int radiusMm, const QString& name = {}) {
        m_things.push_back({{}, m_yard, FixedKind::Tree, name, {at}, core::Millimetres{radiusMm}});
    }
    std::vector<FixedThing> take() { return std::move(m_things); }

private:
    core::YardId m_yard;
    std::vector<FixedThing> m_things;
};

} // namespace

std::vector<FixedThing> fixedThingsOf(const DemoYard& yard, core::YardId id) {
    const Ground g = groundOf(yard);
    Drawer d(id);
    d.add(FixedKind::Hedge, {},
          {{-800, g.north + 1900},
           {g.east / 3, g.north + 2350},
           {2 * g.east / 3, g.north + 2050},
           {g.east + 1500, g.north + 2500}});
    d.add(FixedKind::Track, {}, {{-2500, -1900}, {g.east / 2, -1500}, {g.east + 2000, -2300}});
    switch (yard.code.at(0).unicode() % 4) {
    case 1: // Larkspur Bottom: A
        d.add(FixedKind::Water, QStringLiteral("pond"),
              {{g.east + 2300, 3300},
               {g.east + 3900, 2700},
               {g.east + 4900, 4600},
               {g.east + 4100, 6700},
               {g.east + 2600, 6000}});
        d.add(FixedKind::Shed, QStringLiteral("honey shed"),
              {{-4600, 3400}, {-1600, 3900}, {-1900, 5700}, {-4900, 5200}});
        d.tree({g.east + 2600, 9800}, 1300);
        d.tree({g.east + 3900, g.north - 800}, 1700);
        break;
    case 2:
        d.add(FixedKind::Fence, {}, {{g.east + 1900, -300}, {g.east + 2300, g.north + 900}});
        d.tree({-1900, 6200}, 1500);
        d.tree({-2100, g.north - 600}, 1100);
        break;
    case 3:
        d.add(FixedKind::Shed, {},
              {{g.east + 1800, 1500}, {g.east + 4200, 1500}, {g.east + 4200, 3300}, {g.east + 1800, 3300}});
        d.add(FixedKind::Fence, {}, {{-900, 1200}, {-1100, g.north + 1200}});
        break;
    default:
        d.add(FixedKind::Water, QStringLiteral("brook"),
              {{g.east + 1900, -200},
               {g.east + 2600, -200},
               {g.east + 3000, g.north / 2},
               {g.east + 2300, g.north + 1200},
               {g.east + 1700, g.north + 1200},
               {g.east + 2300, g.north / 2}});
        d.tree({-1700, 4200}, 1200);
        break;
    }
    return d.take();
}

} // namespace demo
