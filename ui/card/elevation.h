#pragma once

#include "ui/desk/reading.h"
#include "ui/look/colours.h"

#include <QWidget>

#include <optional>
#include <vector>

namespace ui::card {

/// One box seen from the south, as a section: combs as lines, bees as filled height from below, stores from above.
struct SideBox {
    QString title; ///< "K4 on top"
    int combs = 10;
    std::optional<core::Quarters> bees;
    std::optional<core::Quarters> stores;
};

/// A hive, or two as united, from the side.
struct Side {
    std::vector<SideBox> boxes; ///< from the bottom up
    int headingDeg = 180;
    bool entranceInEach = false; ///< a union: both boxes have one
    bool newspaper = false;      ///< between the two
    bool queen = false;          ///< she is drawn; of a union the plan says which of the two
    std::optional<int> queenBorn;
    std::optional<core::QueenMark> queenMark; ///< as it was noted of her
    QString queenTag;                         ///< number on her disc
};

Side sideOf(const desk::Reading& reading, core::ColonyIx colony);
Side unitedSideOf(const desk::Reading& reading, const core::rules::Union& united);

/// The drawing with its words at the right.
class ElevationView : public QWidget {
    Q_OBJECT
public:
    explicit ElevationView(QWidget* parent = nullptr);
    void setSide(const Side& side);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    double high() const;
    Side m_side;
};

} // namespace ui::card
