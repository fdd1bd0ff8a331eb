#pragma once

#include "core/base/id.h"
#include "core/base/quantity.h"
#include "ui/look/colours.h"
#include "ui/plan/camera.h"
#include "ui/plan/layout.h"

#include <optional>
#include <vector>

class QPainter;

namespace ui::plan {

/// A rubber band over the yard: from where bare ground was pressed to where the pointer is. Its corner stays on the
/// ground while the yard is scrolled or zoomed.
class Band {
public:
    void press(const QPointF& viewPixel, const Camera& camera, bool adding);
    /// False while it is still a click.
    bool moveTo(const QPointF& viewPixel);
    bool pressed() const { return m_from.has_value(); } ///< or drawn
    bool drawn() const { return m_drawn; }
    bool adding() const { return m_adding; } ///< to what is selected already
    void end();

    /// Positions of the hives whose middle it holds.
    std::vector<size_t> holds(const Scene& scene, const Camera& camera) const;
    void paint(QPainter& p, const Layout& layout, const std::vector<size_t>& held, const Camera& camera,
               const look::Colours& c) const;

private:
    QRectF rect(const Camera& camera) const;

    std::optional<core::MmPoint> m_from;
    QPointF m_pressed, m_now; ///< pixels of the view
    bool m_drawn = false;
    bool m_adding = false;
};

} // namespace ui::plan
