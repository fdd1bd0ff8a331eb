#pragma once

#include "core/model/snapshot.h"
#include "core/rules/hold.h"
#include "core/rules/reason.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <utility>
#include <vector>

// The plan of one day: what rules 4.5 to 4.14 say. Field for field the JSON of `advise`. Gains are thousandths of a
// spring colony, frames quarter frames, carries tenths of a metre.

namespace core::rules {

enum class CautionKind {
    MitesHigh,
    Masked,
    Signs,
    CountBeforeTransfer,
    QueenUnknown,
    RoomUnknown,
    NearAfb,
    DriftToHeld,
    LowerHeavier
};
struct Caution {
    CautionKind kind = CautionKind::MitesHigh;
    QString because;
    std::vector<ColonyIx> colonies = {}; ///< whose it is; none of near-afb, the union's of its own
    Reason why = {};
};
struct ColonyCaution {
    ColonyIx colony;
    Caution caution;
};

enum class QueenPlan { LeaveBoth, RemoveMoved, KeepMoved, KeepHost };

struct Union {
    YardIx yard;
    int order = 0; ///< in its yard, from 1
    ColonyIx moved, host;
    QString stand; ///< the host's
    MmPoint from, to;
    ColonyIx lower, upper;
    Quarters movedFrames, hostFrames, frames;
    std::vector<ColonyIx> consolidate; ///< brought down to one box first
    QueenPlan queen = QueenPlan::LeaveBoth;
    int headingDeg = 180;
    qint64 carryTenths = 0;
    int gain = 0;
    std::vector<Caution> cautions;
    QStringList because;
    QStringList steps;
    bool pinned = false;
    Reason why = {};
};

struct ShakeOut {
    YardIx yard;
    ColonyIx colony, into; ///< into: the host; of a union its host's label
    MmPoint from, to;
    bool intoUnion = false;
    Quarters frames;
    qint64 carryTenths = 0;
    bool removeQueen = true; ///< JSON `queen`: "remove" or "none"
    std::vector<Caution> cautions;
    QString because;
    Reason why = {};
};

enum class StrengthClass { ShakeOut, Weak, Medium, Strong };
struct Alone {
    ColonyIx colony;
    Quarters frames;
    StrengthClass strengthClass = StrengthClass::Weak;
    bool atRisk = false;
    Reason why = {};
};
enum class Unresolved { NoCount, CountOld, NoBees, NoHost, NoPartner };
struct UnresolvedColony {
    ColonyIx colony;
    Unresolved why = Unresolved::NoCount;
    Reason reason = {};
};
struct Separate {
    ColonyIx colony;
    Reason why = {};
};
enum class BoxAction { HeavierOnTop, Reverse };
struct BoxOrderAdvice {
    ColonyIx colony;
    BoxAction action = BoxAction::HeavierOnTop;
    QString because;
    Reason why = {};
};
struct Feed {
    ColonyIx colony; ///< of a union its host
    qint64 shortTenthsKg = 0;
    int halfLitres = 0;
    qint64 shortMillionthsKg = 0; ///< exact
    Reason why = {};
};
struct Divide {
    ColonyIx colony;
    int parts = 2;
    Quarters frames;
    int broodFrames = 0;
    Reason why = {};
    int most = 2; ///< parts that rule 4.13 allows; fewer may be asked for
};
enum class DueKind { UnionCheck, TakeOut, ResultAwaited };
struct Due {
    ColonyIx colony;
    DueKind what = DueKind::UnionCheck;
    Day on;
    Reason why = {};
};
struct Totals {
    int colonies = 0, unions = 0, shakeOuts = 0;
    qint64 gain = 0, expectedAsIs = 0, expectedPlanned = 0;
    int boxesFreed = 0;
};

struct Plan {
    Day on;
    std::vector<YardIx> yards; ///< those asked for, natural order
    std::vector<Hold> holds;   ///< of colonies of those yards
    std::vector<Union> unions;
    std::vector<ShakeOut> shakeOuts;
    std::vector<Separate> separate; ///< laying workers
    std::vector<Alone> alone;
    std::vector<UnresolvedColony> unresolved;
    std::vector<BoxOrderAdvice> boxOrder;
    std::vector<Feed> feed;
    std::vector<ColonyCaution> cautions;
    std::vector<Divide> divides;
    std::vector<Due> due;
    Totals totals;
};
// What each finding says in words: finding_words.h. What was given up for those left alone: given_up.h.

using ColonyPair = std::pair<ColonyIx, ColonyIx>;

struct YardMost {
    YardIx yard;
    int unions = 0;
};

/// What the user asks of a plan.
struct PlanRequest {
    std::vector<YardIx> yards; ///< empty: all
    std::vector<ColonyPair> pins;
    std::vector<ColonyPair> forbids;
    std::optional<int> most;       ///< at most so many unions over all the yards asked for
    std::vector<YardMost> mostIn;  ///< the same of one yard each; not together with `most`
    std::vector<ColonyIx> leftOut; ///< in no union and no shake-out, and no host
    std::vector<ColonyPair> hosts; ///< where these two unite, the first is the host, whatever 4.8 says
    std::vector<ColonyPair> tops;  ///< where these two unite, the box of the first comes on top, whatever 4.8 says
    std::vector<std::pair<ColonyIx, int>> divideParts = {}; ///< divided into so many at most; below 2: not at all
};

/// The plan. Throws Error(BadData) naming the rule where a pin cannot be (rule 4.7 less 10, shared colonies, a pin
/// that is forbidden or of a colony left out, more pins than `most` or `mostIn`, of a yard not asked for).
Plan advise(const Snapshot& s, const PlanRequest& request);

QString cautionWord(CautionKind kind);
QString queenPlanWord(QueenPlan plan);
QString classWord(StrengthClass c);
QString unresolvedWord(Unresolved why);
QString boxActionWord(BoxAction action);
QString dueWord(DueKind what);

} // namespace core::rules
