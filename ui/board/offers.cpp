#include "ui/board/offers.h"

#include "ui/board/boards.h"
#include <utility>

namespace ui::board {

namespace {

using core::MergeAsk;
using core::edit::asks;

const core::rules::Union* unionOfBoth(const desk::Reading& r, core::ColonyId a, core::ColonyId b) {
    const auto x = r.find(a), y = r.find(b);
    const core::rules::Union* u = x && y ? r.unionOf(*x) : nullptr;
    return u && (u->moved == *y || u->host == *y) ? u : nullptr;
}

Offer hostOffer(const desk::Reading& r, const core::edit::MergeChoices& asked, const core::rules::Union& u) {
    const core::ColonyId moved = r.snapshot.colony(u.moved).id, host = r.snapshot.colony(u.host).id;
    if (asks(asked, MergeAsk::Host, host, moved))
        return {MergeAsk::Host,
                false,
                host,
                moved,
                Boards::tr("host by the rule"),
                Boards::tr("Leave it to the rule which is the host")};
    return {MergeAsk::Host,
            true,
            moved,
            host,
            Boards::tr("%1 as host").arg(labelOf(r, moved)),
            Boards::tr("Make %1 the host, and carry %2").arg(labelOf(r, moved), labelOf(r, host))};
}

Offer topOffer(const desk::Reading& r, const core::edit::MergeChoices& asked, const core::rules::Union& u) {
    const core::ColonyId upper = r.snapshot.colony(u.upper).id, lower = r.snapshot.colony(u.lower).id;
    if (asks(asked, MergeAsk::Top, upper, lower))
        return {MergeAsk::Top,
                false,
                upper,
                lower,
                Boards::tr("boxes by the setting"),
                Boards::tr("Leave it to the setting whose box comes on top")};
    return {MergeAsk::Top,
            true,
            lower,
            upper,
            Boards::tr("%1 on top").arg(labelOf(r, lower)),
            Boards::tr("Put the box of %1 on top of that of %2").arg(labelOf(r, lower), labelOf(r, upper))};
}

} // namespace

QString labelOf(const desk::Reading& reading, core::ColonyId colony) {
    if (const auto ix = reading.find(colony)) return reading.snapshot.colony(*ix).shown;
    for (const core::SnapColony& c : reading.snapshot.colonies)
        if (c.id == colony) return c.shown;
    return Boards::tr("a colony that is gone");
}

std::vector<Offer> offersOfPair(const desk::Reading& r, const core::edit::MergeChoices& asked, core::ColonyId a,
                                core::ColonyId b) {
    const QString pair = labelOf(r, a) + QStringLiteral(" + ") + labelOf(r, b);
    if (asks(asked, MergeAsk::Forbid, a, b))
        return {{MergeAsk::Forbid, false, a, b, Boards::tr("allow"), Boards::tr("Allow %1 again").arg(pair)}};
    std::vector<Offer> out;
    if (asks(asked, MergeAsk::Pin, a, b))
        out.push_back({MergeAsk::Pin, false, a, b, Boards::tr("unpin"), Boards::tr("Unpin %1").arg(pair)});
    else
        out.push_back({MergeAsk::Pin, true, a, b, Boards::tr("pin"), Boards::tr("Pin %1").arg(pair)});
    out.push_back({MergeAsk::Forbid, true, a, b, Boards::tr("not"), Boards::tr("Forbid %1").arg(pair)});
    const core::rules::Union* u = unionOfBoth(r, a, b);
    if (!u) return out;
    for (const core::ColonyIx ix : {u->moved, u->host})
        out.push_back(offerOfColony(r, asked, r.snapshot.colony(ix).id));
    out.push_back(hostOffer(r, asked, *u));
    out.push_back(topOffer(r, asked, *u));
    return out;
}

Offer offerOfColony(const desk::Reading& r, const core::edit::MergeChoices& asked, core::ColonyId colony) {
    const QString name = labelOf(r, colony);
    if (asks(asked, MergeAsk::LeaveOut, colony))
        return {MergeAsk::LeaveOut,
                false,
                colony,
                {},
                Boards::tr("take in again"),
                Boards::tr("Take %1 into the plan again").arg(name)};
    return {MergeAsk::LeaveOut,
            true,
            colony,
            {},
            Boards::tr("leave %1 out…").arg(name),
            Boards::tr("Leave %1 out…").arg(name)};
}

Offer takingBack(const desk::Reading& r, const core::MergeChoice& choice) {
    return {choice.what,
            false,
            choice.colony,
            choice.other.value_or(core::ColonyId{}),
            Boards::tr("take back"),
            Boards::tr("Take back: %1").arg(choiceText(r, choice))};
}

core::edit::MergeChoices taken(const core::edit::MergeChoices& asked, const Offer& o, const QString& why) {
    using namespace core::edit;
    if (!o.on) return without(asked, o.ask, o.a, o.b);
    switch (o.ask) {
    case MergeAsk::Pin:
        return withPin(asked, o.a, o.b);
    case MergeAsk::Forbid:
        return withForbid(asked, o.a, o.b);
    case MergeAsk::LeaveOut:
        return withLeftOut(asked, o.a, why);
    case MergeAsk::Host:
        return withHost(asked, o.a, o.b);
    case MergeAsk::Top:
        break;
    }
    return withTop(asked, o.a, o.b);
}

QString choiceText(const desk::Reading& r, const core::MergeChoice& choice) {
    const QString a = labelOf(r, choice.colony);
    const QString b = choice.other ? labelOf(r, *choice.other) : QString();
    switch (choice.what) {
    case MergeAsk::Pin:
        return Boards::tr("%1 + %2 pinned").arg(a, b);
    case MergeAsk::Forbid:
        return Boards::tr("%1 + %2 not together").arg(a, b);
    case MergeAsk::LeaveOut:
        return choice.note.isEmpty() ? Boards::tr("%1 left out").arg(a)
                                     : Boards::tr("%1 left out: %2").arg(a, choice.note);
    case MergeAsk::Host:
        return Boards::tr("%1 is the host of %2").arg(a, b);
    case MergeAsk::Top:
        break;
    }
    return Boards::tr("The box of %1 on top of that of %2").arg(a, b);
}

} // namespace ui::board
