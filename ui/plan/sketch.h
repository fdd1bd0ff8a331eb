#pragma once

#include "ui/look/colours.h"
#include "ui/plan/camera.h"
#include "ui/plan/layout.h"

#include <memory>
#include <optional>
#include <vector>

class QPainter;

namespace ui::plan {

/// A hive that is to come; of its mark label, place, heading and outline are drawn.
struct Ghost {
    HiveMark mark;
    bool refused = false; ///< it cannot stand there
};

/// What is drawn over a yard before it is made.
struct Sketch {
    std::vector<Ghost> hives;
    std::optional<core::MmPoint> gate;
    bool empty() const { return hives.empty() && !gate; }
};

/// Lays a sketch out as the yard itself is, and draws it in blue; what is refused in orange, crossed out.
class SketchLayer {
public:
    SketchLayer();
    ~SketchLayer();

    void set(Sketch sketch, const QFont& font);
    void setFont(const QFont& font);
    const Sketch& sketch() const { return m_sketch; }
    /// What must be in view, x east and y south; null: nothing.
    QRectF metres() const;
    /// The ghost under this pixel of the view.
    std::optional<size_t> ghostAt(const QPointF& viewPixel, const Camera& camera, double magnified) const;
    /// In the view's own pixels.
    void paint(QPainter& p, const Camera& camera, double magnified, const look::Colours& c) const;

private:
    Layout laidOut(const Camera& camera, double magnified) const;

    Sketch m_sketch;
    Scene m_scene; ///< the ghosts alone
    std::unique_ptr<Texts> m_texts;
};

} // namespace ui::plan
