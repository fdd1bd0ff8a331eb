#include "core/edit/edit_checks.h"
#include "core/edit/row_change.h"
#include "core/edit/survey.h"
#include "core/model/fixed_shape.h"

namespace core::edit {

namespace {

FixedThing needFixed(const EditContext& c, FixedThingId id) {
    auto thing = c.find<FixedThing>(id.value);
    if (!thing) refuse(Edits::tr("That thing is no longer in the drawing."));
    return *std::move(thing);
}

QString kindText(FixedKind kind) {
    switch (kind) {
    case FixedKind::Fence:
        return Edits::tr("fence");
    case FixedKind::Hedge:
        return Edits::tr("hedge");
    case FixedKind::Shed:
        return Edits::tr("shed");
    case FixedKind::Water:
        return Edits::tr("water");
    case FixedKind::Track:
        return Edits::tr("track");
    case FixedKind::Tree:
        break;
    }
    return Edits::tr("tree");
}

/// "the hedge", or "the hedge North side" where it has a name.
QString theThing(const FixedThing& thing) {
    const QString kind = kindText(thing.kind);
    return thing.name.isEmpty() ? Edits::tr("the %1").arg(kind) : Edits::tr("the %1 “%2”").arg(kind, thing.name);
}

QString drawingText(const EditContext& c, YardId yard, const QString& what) {
    return Edits::tr("Corrected the drawing of %1: %2").arg(needYard(c, yard).name, what);
}

void checkShape(const FixedThing& thing) {
    const auto problem = shapeProblem(thing.kind, thing.points);
    if (!problem) return;
    const QString kind = kindText(thing.kind);
    const auto count = QString::number(thing.points.size());
    switch (*problem) {
    case ShapeProblem::TooFewPoints:
        refuse(Edits::tr("The %1 needs at least %2 points, found %3.")
                   .arg(kind, QString::number(leastPoints(thing.kind)), count));
    case ShapeProblem::TooManyPoints:
        refuse(Edits::tr("The %1 has too many points: %2.").arg(kind, count));
    case ShapeProblem::TooFar:
        refuse(Edits::tr("A point of the %1: expected at most 10000 m from the yard's origin.").arg(kind));
    case ShapeProblem::NoLength:
        refuse(Edits::tr("Two points of the %1 that follow each other are one.").arg(kind));
    case ShapeProblem::NoRectangle:
        refuse(Edits::tr("The four corners of the %1 make no rectangle.").arg(kind));
    }
}

/// What is typed and drawn of it, new or not; its id is set.
FixedThing checkedFixed(const FixedThing& typed) {
    FixedThing thing = typed;
    if (!thing.name.trimmed().isEmpty())
        thing.name = checkedName(typed.name, Edits::tr("Name"));
    else
        thing.name.clear();
    checkShape(thing);
    if (thing.kind != FixedKind::Tree)
        thing.radius.reset();
    else if (!thing.radius || thing.radius->value < kLeastRadiusMm || thing.radius->value > kMostRadiusMm)
        refuse(Edits::tr("Radius of the tree: expected 0.1 to 50 m."));
    return thing;
}

QString changeText(const FixedThing& old, const FixedThing& now) {
    if (old.name != now.name && old.points == now.points && old.radius == now.radius)
        return now.name.isEmpty() ? Edits::tr("%1 has no name any more").arg(theThing(old))
                                  : Edits::tr("named %1 “%2”").arg(theThing(old), now.name);
    if (old.points == now.points) return Edits::tr("changed %1").arg(theThing(old));
    if (old.points.size() == now.points.size() && !old.points.empty()) {
        const MmPoint step = now.points.front() - old.points.front();
        bool together = true;
        for (size_t i = 0; i < old.points.size(); ++i) together &= now.points[i] - old.points[i] == step;
        if (together) return Edits::tr("moved %1 by %2 m").arg(theThing(old), decimalText(distanceTenths({}, step), 1));
    }
    return Edits::tr("changed the shape of %1").arg(theThing(old));
}

} // namespace

ChangeSet addFixedThing(const EditContext& c, const FixedThing& typed) {
    FixedThing thing = checkedFixed(typed);
    thing.id = FixedThingId{c.nextId(Table::FixedThing)};
    const QString kind = kindText(thing.kind);
    const QString what =
        thing.name.isEmpty() ? Edits::tr("added %1").arg(kind) : Edits::tr("added %1 “%2”").arg(kind, thing.name);
    return {drawingText(c, thing.yard, what), {added(thing)}, {}, {}, {}};
}

ChangeSet changeFixedThing(const EditContext& c, const FixedThing& typed) {
    const FixedThing old = needFixed(c, typed.id);
    FixedThing now = checkedFixed(typed);
    now.yard = old.yard;
    if (now == old) return {};
    return {drawingText(c, old.yard, changeText(old, now)), {changed(old, now)}, {}, {}, {}};
}

ChangeSet takeBackFixedThing(const EditContext& c, FixedThingId id) {
    const FixedThing old = needFixed(c, id);
    return {drawingText(c, old.yard, Edits::tr("took back %1").arg(theThing(old))), {deleted(old)}, {}, {}, {}};
}

} // namespace core::edit
