#pragma once

#include "core/report/worksheet.h"
#include "ui/plan/scene.h"

#include <QPageLayout>
#include <QPointF>
#include <QRectF>
#include <QString>

#include <memory>
#include <optional>
#include <vector>

class QPainter;

namespace ui::print {

/// The drawing of a yard as it is shown, and what is said beside it.
struct PlanSheetJob {
    plan::Scene scene;
    QString book; ///< its title
    qint64 revision = 0;
    core::Day day; ///< of what is drawn
    core::Day printedOn;
    core::report::Paper paper = core::report::Paper::A4;
    /// Framed, and listed in this order with room to write; none: the yard alone.
    std::vector<core::ColonyId> selected;
    bool listed = true; ///< those selected
    QString part;       ///< "part 2 of 4", of a yard on several sheets
    int larger = 0;     ///< how often the sheet is doubled, for files: A3, A2, …
};

/// The plan of a yard on paper, black on white: to scale where one of the usual scales leaves room for every label,
/// else as large as it fits and said so. Of the paper's two ways round it takes the larger drawing.
class PlanSheet {
public:
    /// Throws Error(Internal) where no fonts are installed.
    explicit PlanSheet(PlanSheetJob job);
    ~PlanSheet();

    QPageLayout pageLayout() const; ///< without margins
    QSizeF sizeMm() const;
    std::optional<int> scale() const;             ///< 100: one to a hundred; nullopt: not to scale
    double mmPerMetre() const;                    ///< on the paper
    int unlabelled() const;                       ///< hives without a label, for want of room
    QPointF placeOf(core::ColonyId colony) const; ///< mm from the sheet's top left corner; a hive of the scene
    int pages() const;                            ///< the drawing, then lists of what is selected
    void paint(QPainter& p, int page) const;      ///< the painter counts in mm
    const PlanSheetJob& job() const { return m_job; }

private:
    struct Drawn;
    std::unique_ptr<Drawn> drawIn(bool landscape) const;
    QSizeF paper(bool landscape) const;
    QRectF area(bool landscape) const;
    QStringList footLines(double widthMm) const;
    void paintHead(QPainter& p) const;
    void paintFoot(QPainter& p) const;
    void paintList(QPainter& p, int page) const;
    int rowsAPage() const;
    QString scaleText() const;

    PlanSheetJob m_job;
    bool m_landscape = false;
    std::unique_ptr<Drawn> m_drawn;
};

} // namespace ui::print
