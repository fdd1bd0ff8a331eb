#include "core/model/fixed_shape.h"
#include "tests/edit/every_edit.h"

#include "core/model/fixed_shape.h"

// Those of merge days and of the drawing.

namespace tests::edit {

FixedThing EveryEdit::thing() {
    FixedThing t;
    t.yard = YardId{1 + upTo(1)};
    t.kind = static_cast<FixedKind>(upTo(5));
    if (upTo(1)) t.name = QStringLiteral("thing %1").arg(upTo(3));
    for (int i = 0; i < leastPoints(t.kind); ++i) t.points.push_back(m_some.point());
    if (t.kind == FixedKind::Shed) t.points = rectangleOf(t.points[0], t.points[1], t.points[2]);
    if (t.kind == FixedKind::Tree) t.radius = Millimetres{500 + upTo(2000)};
    return t;
}

std::pair<std::string, ChangeSet> EveryEdit::merged(const EditContext& c) {
    const auto there = any<MergeDay>(c);
    const YardId yard{1 + upTo(1)};
    StripClose strip{there ? there->yard : yard,
                     there ? there->day : day() + 20,
                     upTo(3) ? LineageHow::United : LineageHow::ShakenOut,
                     colony(c),
                     colony(c),
                     static_cast<StripOutcome>(upTo(2)),
                     upTo(2) ? QStringLiteral("as it came") : QString(),
                     {}};
    MergeAsked asked;
    if (there && upTo(1)) asked.day = *there;
    if (asked.day.id.value == 0) asked.day.yard = yard;
    if (asked.day.id.value == 0) asked.day.day = day() + 20;
    for (int n = upTo(3); n > 0; --n) {
        const auto what = static_cast<MergeAsk>(upTo(4));
        const auto other = what == MergeAsk::LeaveOut ? std::nullopt : std::optional(colony(c));
        asked.choices.push_back({{}, {}, what, colony(c), other, {}});
    }
    switch (upTo(5)) {
    case 0:
        if (upTo(2) == 0)
            strip.instead = DoneInstead{upTo(1) ? LineageHow::United : LineageHow::ShakenOut, colony(c), colony(c)};
        return {"closeStrip", closeStrip(c, strip)};
    case 5: {
        const auto written = any<MergeStrip>(c);
        return {"reopenStrip", reopenStrip(c, written ? written->id : MergeStripId{1})};
    }
    case 1:
        return {"takeBackMergeDay", takeBackMergeDay(c, there ? there->id : MergeDayId{1})};
    case 2: {
        MergeStrip printed;
        printed.moved = strip.moved;
        printed.host = printed.moved == strip.host ? ColonyId{printed.moved.value % 3 + 1} : strip.host;
        printed.upper = printed.host;
        return {"printMergeDay", printMergeDay(c, there ? there->id : MergeDayId{1}, {printed})};
    }
    default:
        return {"saveMergeDay", saveMergeDay(c, asked)};
    }
}

std::pair<std::string, ChangeSet> EveryEdit::divided(const EditContext& c) {
    const auto there = any<MergeDay>(c);
    DividesAsked asked{there ? there->yard : YardId{1 + upTo(1)}, there ? there->day : day() + 20, 1, {}, {}};
    if (there) asked.variant = there->variant;
    if (upTo(2)) asked.queens = static_cast<DivideQueens>(upTo(2));
    for (int n = upTo(2); n > 0; --n) asked.choices.push_back({{}, {}, colony(c), 1 + upTo(3), {}});
    DivideClose close{asked.yard, asked.day, colony(c), DivideQueens::Own, static_cast<StripOutcome>(upTo(2)),
                      {},         {},        {}};
    if (upTo(2)) close.note = QStringLiteral("as it came");
    for (int n = upTo(2); n > 0; --n) close.made.push_back(divideDraft(c).made);
    switch (upTo(4)) {
    case 0:
    case 1:
        return {"closeDivide", closeDivide(c, close)};
    case 2: {
        DivideStrip printed;
        printed.colony = colony(c);
        return {"printDivides", printDivides(c, there ? there->id : MergeDayId{1}, {printed})};
    }
    default:
        return {"askDivides", askDivides(c, asked)};
    }
}

std::pair<std::string, ChangeSet> EveryEdit::surveyed(const EditContext& c) {
    const YardId yard{1 + upTo(1)};
    switch (upTo(6)) {
    case 0:
    case 1: {
        std::vector<StandMove> moves;
        for (const Stand& stand : c.standsOf(yard))
            if (!stand.removed && upTo(2) == 0) moves.push_back({stand.id, m_some.point() + MmPoint{upTo(40), 0}});
        return {"moveStands", moveStands(c, yard, moves)};
    }
    case 2: {
        const ColonyId first = colony(c);
        return {"turnHives", turnHives(c, yard, {{first, upTo(359)}})};
    }
    case 3:
        return {"putGate", putGate(c, yard, m_some.point())};
    case 4: {
        FixedThing now = thing();
        now.id = FixedThingId{1 + upTo(3)};
        return {"changeFixedThing", changeFixedThing(c, now)};
    }
    case 5:
        return upTo(2) ? std::pair("addFixedThing", addFixedThing(c, thing()))
                       : std::pair("takeBackFixedThing", takeBackFixedThing(c, FixedThingId{1 + upTo(3)}));
    default:
        return {"addFixedThing", addFixedThing(c, thing())};
    }
}

} // namespace tests::edit
