#pragma once

#include "ui/plan/aim.h"
#include "ui/plan/band.h"
#include "ui/plan/camera.h"
#include "ui/plan/carry_guide.h"
#include "ui/plan/drag_machine.h"
#include "ui/plan/flight.h"
#include "ui/plan/layout.h"
#include "ui/plan/paint_scene.h"
#include "ui/plan/sketch.h"
#include "ui/plan/tool.h"

#include <QPixmap>
#include <QTimer>
#include <QWidget>

#include <memory>
#include <optional>

namespace ui::plan {

/// What part of a yard is in view, to come back to.
struct Sight {
    Camera camera;
    bool fitted = false; ///< the whole of it
};

/// The drawing of one yard: scrolled, zoomed, and hives carried about on it, by mouse and by keys. Knows no session: it
/// says what was asked for.
class PlanView : public QWidget {
    Q_OBJECT
public:
    explicit PlanView(QWidget* parent = nullptr);
    ~PlanView() override;

    /// The chosen hive and the part of the yard in view stay, unless it is another yard. What is shown whole stays so;
    /// on another day of the yard nothing is scaled anew while all is in view.
    void setScene(Scene scene);
    const Scene& scene() const { return m_scene; }
    void setChosen(std::optional<core::ColonyId> colony);
    /// The chosen hive and others with it; those that the scene does not have are passed over.
    void setSelected(std::vector<core::ColonyId> colonies);
    const std::vector<core::ColonyId>& selected() const { return m_selected; }
    /// What is looked for: ringed, `first` more so, until they are taken away by none.
    void setMarked(std::vector<core::ColonyId> colonies, std::optional<core::ColonyId> first);
    const std::vector<core::ColonyId>& marked() const { return m_marked; }
    /// The camera goes there, at once where the style does not animate; a hive of the scene.
    void flyTo(core::ColonyId colony);
    Sight sight() const { return {m_camera, m_fitted}; }
    void flyBack(const Sight& sight);
    /// Empty: hives may be carried. Else why not, said when it is tried.
    void setCarryBarred(const QString& why) { m_carryBarred = why; }
    /// Whom the plan asks while hives are in the hand; nullptr: nobody. Outlives its use here.
    void setCarryGuide(CarryGuide* guide) { m_guide = guide; }
    /// Where foragers are likely to drift to, until the next press, Escape, or another yard.
    void setDrift(std::vector<Drift> drift);
    const std::vector<Drift>& drift() const { return m_carry ? m_words.drift : m_drift; }
    /// Said in the middle of an empty drawing.
    void setEmptyText(const QString& text);
    /// Drawn over the yard until it is taken away by an empty one; comes into view, unless it is in the hand.
    void setSketch(Sketch sketch);
    const Sketch& sketch() const { return m_sketch.sketch(); }
    /// While it is on, mouse and keys of the bare ground are its own.
    Aim& aim() { return m_aim; }
    /// nullptr: the hand that carries hives. What the one before had under way is given up.
    void setTool(Tool* tool);
    Tool* tool() const { return m_tool; }

    const Camera& camera() const { return m_camera; }
    bool carrying() const { return m_drag.carrying(); }
    const std::optional<Carry>& carry() const { return m_carry; } ///< in the hand just now
    QPointF viewPointOf(core::ColonyId colony) const;             ///< for tests; a hive of the scene
    std::optional<core::ColonyId> chosenHive() const { return m_chosen; }
    QRect boxOf(core::ColonyId colony); ///< in the view; of a hive that is not drawn an empty one
    void pick(core::ColonyId colony);   ///< as by a click

public slots:
    void fit();
    void zoomIn();
    void zoomOut();
    void routeNow(); ///< arcs for just this zoom, without waiting for it to rest

signals:
    void chosen(std::optional<core::ColonyId> colony);
    /// Several, by hand; `lead`, the chosen one, is among them. (Of one alone chosen() tells.)
    void selectAsked(const std::vector<core::ColonyId>& colonies, core::ColonyId lead);
    void opened(core::ColonyId colony);
    void setDownAsked(const ui::plan::Carry& carry); ///< also where another hive stands
    void hiveFocused(core::ColonyId colony);         ///< the keys are on it now; screen readers are told
    void said(const QString& sentence);
    void carryingChanged(bool carrying);    ///< other edits wait meanwhile
    void standChosen(core::StandId stand);  ///< an empty one was clicked
    void standOpened(core::StandId stand);  ///< and twice
    void labelTyped(const QString& begins); ///< a letter or digit, or “/”: then it is empty
    void menuAsked(const QPoint& globalAt); ///< of what is selected, or of the yard

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void changeEvent(QEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    bool event(QEvent* event) override;
    bool focusNextPrevChild(bool next) override;

private:
    std::optional<size_t> hiveAt(const QPointF& viewPixel) const;
    std::optional<size_t> unionAt(const QPointF& viewPixel) const;
    const StandMark* standAt(const QPointF& viewPixel) const;
    std::optional<size_t> chosenAt() const;
    std::optional<size_t> chosenUnion() const;
    void choose(std::optional<size_t> hive);
    void toggle(size_t hive);
    void keepChosen();
    void walkTo(size_t hive);
    bool moveBand(const QMouseEvent& event);
    void setBandDown();
    void endBand();
    bool typedLabel(const QKeyEvent& event);
    void paintMarks(QPainter& p);
    void fly(Camera to);
    Touch touchAt(const QPointF& viewPixel, Qt::KeyboardModifiers modifiers) const;
    bool pressTool(const QMouseEvent& event);
    bool moveTool(const QMouseEvent& event);
    bool releaseTool(const QMouseEvent& event);
    bool toolKey(QKeyEvent* event);
    void zoomAt(double factor, const QPointF& at);
    void scroll(const QPointF& pixels);
    void bringIntoView(size_t hive);
    bool allInView() const;
    bool nudgeKey(QKeyEvent* event);
    bool aimKey(QKeyEvent* event);
    static std::optional<core::MmPoint> wayOfKey(const QKeyEvent& event);
    void clickGround(const QMouseEvent& event);
    bool pressAim(const QMouseEvent& event);
    bool moveAim(const QMouseEvent& event);
    core::MmPoint aimedAt(const QMouseEvent& event, core::MmPoint at) const;
    double magnificationNow() const;
    void showSketch();
    void tellSketch();
    void pressHive(size_t hive, const QMouseEvent& event);
    void dragTo(const QMouseEvent& event);
    std::vector<Picked> pickedWith(core::ColonyId hive) const;
    void setDown();
    std::optional<Carry> emptyHand();
    void abortCarry(const QString& why = {});
    void keepCarry(const Scene& next);
    void showCarry(const Carry& carry);
    CarryWords plainWords(const Carry& carry) const;
    void stale();
    void ensureLayout();
    void renderFrame();
    void drawPreview(QPainter& p) const;
    void drawDrift(QPainter& p) const;
    Shown shownNow() const;

    Scene m_scene;
    std::unique_ptr<Texts> m_texts;
    Layout m_layout;
    std::optional<Layout> m_routed; ///< the zoom that arcs were last routed at
    bool m_layoutStale = true;
    Camera m_camera;
    double m_magnified = 1;
    bool m_fitted = true; ///< all is shown, and stays so when the window grows
    std::optional<core::ColonyId> m_chosen;
    std::vector<core::ColonyId> m_selected;
    std::vector<core::ColonyId> m_kept; ///< of them, while Tab walks
    std::vector<core::ColonyId> m_marked;
    std::optional<core::ColonyId> m_markedFirst;
    Band m_band;
    size_t m_banded = 0; ///< hives in it, as last said
    Flight m_flight{this};
    Tool* m_tool = nullptr;
    bool m_toolPressed = false;
    Sprites m_sprites;
    QPixmap m_frame;
    bool m_frameStale = true;
    DragMachine m_drag;
    std::optional<Carry> m_carry;
    CarryWords m_words; ///< of m_carry
    CarryGuide* m_guide = nullptr;
    std::vector<Drift> m_drift;
    std::optional<core::ColonyId> m_pressedSelected; ///< chosen alone where the press stays a click
    std::optional<QPointF> m_scrollFrom;
    bool m_spaceHeld = false;
    bool m_groundPressed = false;
    QString m_carryBarred;
    QString m_emptyText;
    Aim m_aim;
    SketchLayer m_sketch;
    QTimer m_routeSoon;
    QTimer m_nudgeDone;
};

} // namespace ui::plan
