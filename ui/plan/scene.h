#pragma once

#include "core/model/snapshot.h"
#include "core/rules/facts.h"
#include "core/rules/plan.h"

#include <QRectF>
#include <QString>

#include <optional>
#include <vector>

namespace core {
struct FixedThing;
}

namespace ui::plan {

/// One hive of the drawing.
struct HiveMark {
    core::ColonyId colony;
    QString label;
    QString line;          ///< below the label: "5.25 frames", "not counted since 5 Aug"
    QString strengthWord;  ///< "medium"; empty without a valid count
    QString stand;         ///< its name
    QStringList holdWords; ///< "brood not checked"
    QString asked;         ///< numbers of the questions that find it: "1 3" (Scene::asked)
    QString spoken;        ///< the whole of it for a screen reader
    core::MmPoint at;
    int headingDeg = 180; ///< where the entrance looks, clockwise from north
    int widthMm = 413;    ///< outside, across the combs
    int lengthMm = 505;   ///< outside, along the combs
    int combs = 10;
    int boxes = 1;
    std::optional<core::Quarters> bees; ///< not set: no valid count, drawn as "?"
    bool layingWorkers = false;
    QString holdLetters; ///< "B", "FCY": empty where nothing holds it
    int feedHalfLitres = 0;
    bool held() const { return !holdLetters.isEmpty(); }
};

/// A planned union as an arc; positions in Scene::hives.
struct UnionMark {
    int order = 1;
    size_t moved = 0;
    size_t host = 0;
    QString metres; ///< "7.2 m", "23.6 ft"
};

struct ShakeMark {
    size_t colony = 0;
    size_t into = 0;
};

/// A stand that bears no hive.
struct StandMark {
    core::StandId stand;
    QString name;
    core::MmPoint at;
};

/// A fence, hedge, shed, … of the ground; it is under everything else.
struct FixedMark {
    core::FixedThingId id;
    core::FixedKind kind = core::FixedKind::Hedge;
    QString word; ///< beside it: its name, or the word of its kind
    bool named = false;
    std::vector<core::MmPoint> points; ///< as core::FixedThing has them
    int radiusMm = 0;                  ///< of a tree
};

/// A question asked of the colonies, marked by its number, and how many of the yard it finds.
struct AskedMark {
    QString name;
    int found = 0;
};

/// What the drawing of one yard on one day shows, read by painter, table and tests alike.
struct Scene {
    QString yard;
    std::optional<core::Day> on;
    core::MmPoint gate;
    bool blank = false; ///< ground that is no yard yet: no gate
    core::ShownUnits units;
    std::vector<HiveMark> hives; ///< natural order of label
    std::vector<UnionMark> unions;
    std::vector<ShakeMark> shakes;
    std::vector<StandMark> stands; ///< empty ones, where they are to be drawn
    std::vector<FixedMark> fixed;  ///< in the order they were drawn
    std::vector<AskedMark> asked;  ///< numbered from 1

    std::optional<size_t> find(core::ColonyId colony) const;
};

/// `plan` is of the snapshot's day; its unions, shake-outs and feed of other yards are passed over. nullptr: none
/// drawn.
Scene sceneOf(const core::Snapshot& s, core::YardIx yard, const std::vector<core::rules::ColonyFacts>& facts,
              const std::vector<core::rules::Hold>& holds, const core::rules::Plan* plan);

/// Marks the hives that the next question finds; `colonies` of other yards are passed over.
void addAsked(Scene& scene, const QString& name, const std::vector<core::ColonyId>& colonies);

/// "hedge", in the window's language.
QString fixedWord(core::FixedKind kind);
/// What stands fixed in a yard, for its Scene: no snapshot has it.
std::vector<FixedMark> fixedMarks(const std::vector<core::FixedThing>& things);

/// Outside size of a hive: as recorded for its kind, else a ten-frame box of 413 × 505 mm with 38 mm a frame more or
/// less (common practice, no source).
void setOutline(HiveMark& mark, const core::SnapBoxKind& kind);

/// The ground that gate, hives and empty stands take, in metres: x east, y south.
QRectF metresOf(const Scene& scene);

/// How much larger than life the hives are drawn: as far as the nearest two stay apart, 1 to 1.8.
double magnification(const Scene& scene);

} // namespace ui::plan
