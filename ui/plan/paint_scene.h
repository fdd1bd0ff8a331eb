#pragma once

#include "ui/look/colours.h"
#include "ui/plan/camera.h"
#include "ui/plan/layout.h"
#include "ui/plan/paint_hive.h"
#include "ui/plan/sprites.h"

class QPainter;

namespace ui::plan {

/// How the scene is drawn just now.
struct Shown {
    std::optional<size_t> chosen;
    std::vector<size_t> selected;      ///< framed as well
    bool focus = false;                ///< the view has the keyboard
    std::vector<size_t> pickedUp;      ///< ascending; drawn as ghosts, their preview comes on top (paintPreview)
    std::optional<size_t> chosenUnion; ///< drawn heavier
    double magnified = 1;              ///< hives, against life
    QString gateWord;                  ///< empty: in the window's language
};

/// Ground, hives, arcs and texts of what the camera sees, into the view's pixels.
void paintScene(QPainter& p, const Scene& scene, const Layout& layout, const Texts& texts, const Camera& camera,
                const Shown& shown, Sprites& sprites, const look::Colours& c);

/// The hive under the pointer while it is carried: at `at`, with a dimension line from where it stood and `text` (the
/// distance); `refused` draws it in orange.
void paintPreview(QPainter& p, const HiveMark& mark, const HivePlace& from, const QPointF& at, const QString& text,
                  bool refused, const Texts& texts, Detail detail, const look::Colours& c);

} // namespace ui::plan
