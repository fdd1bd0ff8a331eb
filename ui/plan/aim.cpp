#include "ui/plan/aim.h"

namespace ui::plan {

void Aim::start(Way way, core::MmPoint at) {
    m_on = true;
    m_way = way;
    m_at = at;
    m_gripped = false;
}

void Aim::stop() {
    m_on = false;
    m_gripped = false;
}

void Aim::go(core::MmPoint at) {
    if (at == m_at) return;
    m_at = at;
    emit moved(at);
}

void Aim::hover(core::MmPoint at) {
    if (m_on && m_way == Way::Follows) go(at);
}

void Aim::click(core::MmPoint at) {
    if (!m_on) return;
    if (m_way == Way::Follows) {
        go(at);
        return emit put(at);
    }
    m_at = at;
    emit moved(at); // even where it was: it need not be typed yet
}

void Aim::grip(core::MmPoint under) {
    if (!m_on || m_way != Way::Stays) return;
    m_gripped = true;
    m_gripUnder = under;
    m_gripAt = m_at;
}

void Aim::drag(core::MmPoint at) {
    if (m_gripped) go(at);
}

void Aim::nudge(core::MmPoint by) {
    if (m_on) go(m_at + by);
}

void Aim::enter() {
    if (m_on) emit put(m_at);
}

void Aim::escape() {
    if (!m_on) return;
    if (m_gripped) { // the drag alone is taken back
        m_gripped = false;
        return go(m_gripAt);
    }
    emit left();
}

} // namespace ui::plan
