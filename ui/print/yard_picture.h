#pragma once

#include "core/report/worksheet.h"
#include "core/rules/facts.h"
#include "ui/plan/layout.h"
#include "ui/plan/scene.h"

#include <QRectF>

class QPainter;

namespace ui::print {

/// The yard's drawing of the window (ui/plan), in black ink on paper.
class YardPicture {
public:
    YardPicture(const core::Snapshot& s, const core::rules::Plan& plan, core::YardIx yard,
                core::report::Language language, const std::vector<core::FixedThing>& fixed = {});

    /// `area` in mm of the painter, which counts in mm; `ground` in metres (x east, y south) is what must be seen.
    /// `enlarged`: type and pens, for large print.
    void paint(QPainter& p, const QRectF& area, const QRectF& ground, double enlarged = 1) const;

    /// What a painted drawing looks like inside, for tests: hives without a label for want of room, the size of the
    /// smallest text in points.
    struct Fit {
        double pixelsPerMetre = 0;
        int labelPixels = 0;
        int unlabelled = 0;
        double leastPoints = 0;
    };
    Fit fitOf(const QRectF& area, const QRectF& ground, double enlarged = 1) const;

private:
    struct Drawn;
    Drawn draw(const QSizeF& view, const QRectF& ground) const;
    static bool hideGateOnText(Drawn& d, const QRectF& gate);
    Drawn drawAt(const QSizeF& view, const QRectF& ground, int labelPixels, bool lines) const;

    plan::Scene m_scene;
    QString m_gate;
};

} // namespace ui::print
