#include "tests/edit/every_edit.h"

#include "core/edit/keeper.h"
#include "core/edit/notifiables.h"
#include "core/edit/phrases.h"
#include "core/model/fixed_shape.h"
#include "core/model/kit_words.h"
#include "core/rules/question.h"

namespace tests::edit {

namespace {

/// A note or none, without a throw of the dice.
QString noteOf(int n) { return n % 3 == 0 ? QString() : QStringLiteral("Bees “%1” on ü%2").arg(n % 5).arg(n % 4); }

} // namespace

ColonyId EveryEdit::colony(const EditContext& c) {
    const auto found = any<Colony>(c);
    return found ? found->id : ColonyId{1};
}

std::pair<std::string, ChangeSet> EveryEdit::next(const EditContext& c) {
    const int dice = upTo(15);
    if (dice > 14) return upTo(1) ? (upTo(1) ? phrase(c) : papers(c)) : together(c);
    if (dice > 13) return upTo(2) ? headed(c) : upTo(1) ? fed(c) : fallen(c);
    if (dice == 13 && upTo(2) == 0) return question(c);
    if (dice == 12 && upTo(1)) return sampled(c);
    if (dice > 12) return kit(c);
    if (dice > 11) return divided(c);
    if (dice > 10) return merged(c);
    if (dice > 9) return surveyed(c);
    if (dice < 5) return made(c);
    return dice < 7 ? changed(c) : takenBack(c);
}

std::pair<std::string, ChangeSet> EveryEdit::made(const EditContext& c) {
    switch (upTo(18)) {
    case 0:
        return {"some edit", m_some.next(c)};
    case 1:
    case 2:
        return {"logVisit", visit(c)};
    case 3:
    case 4:
        return {"recordDivide", recordDivide(c, divideDraft(c))};
    case 11:
        return {"endColony", endColony(c, colony(c), day() + 20, upTo(1) ? EndKind::Dead : EndKind::Sold)};
    case 12:
        return {"logTransfer",
                logTransfer(c, {{}, day(), colony(c), colony(c), static_cast<TransferKind>(upTo(4)), {}, {}})};
    case 9:
    case 13:
    case 14:
        return {"recordUnion", unite(c)};
    case 5:
        return {"addHiveRow", row(c)};
    case 6:
        return {"logResult", result(c)};
    case 7:
        return upTo(1) ? std::pair<std::string, ChangeSet>{"logTreatment", treatment(c)} : stripped(c);
    case 8:
        return {"newBoxKind", boxKind(c)};
    case 15:
        return {"swapHives", swapHives(c, colony(c), colony(c), day() + 20)};
    case 16:
        return {"carryHives", carrySome(c)};
    case 10:
        return {"addStand", addStand(c, YardId{1 + upTo(1)}, {}, m_some.point())};
    default:
        return {"carryHive", carryHive(c, colony(c), m_some.point(), day() + 20)};
    }
}

std::pair<std::string, ChangeSet> EveryEdit::phrase(const EditContext& c) {
    const auto old = any<Phrase>(c);
    const QString brief = QStringLiteral("q%1").arg(upTo(5));
    const QString sentence = QStringLiteral("Queen seen %1.").arg(upTo(3));
    if (!old || upTo(1)) return {"addPhrase", addPhrase(c, brief, sentence)};
    if (upTo(2) == 0) return {"takeBackPhrase", takeBackPhrase(c, old->id)};
    return {"changePhrase", changePhrase(c, {old->id, brief, sentence})};
}

std::pair<std::string, ChangeSet> EveryEdit::papers(const EditContext& c) {
    const QString n = QString::number(upTo(3));
    if (upTo(2) == 0)
        return {"setKeeper",
                setKeeper(c, {{}, QStringLiteral("Keeper ") + n, n, {}, {}, QStringLiteral("Place ") + n})};
    if (upTo(4) == 0) return {"takeBackKeeper", takeBackKeeper(c)};
    const auto old = any<Notifiable>(c);
    Notifiable line{{}, QStringLiteral("Place ") + n, static_cast<Reportable>(upTo(4)), upTo(1) == 0, n, {}};
    if (!old || upTo(1)) return {"addNotifiable", addNotifiable(c, line)};
    if (upTo(2) == 0) return {"takeBackNotifiable", takeBackNotifiable(c, old->id)};
    line.id = old->id;
    return {"changeNotifiable", changeNotifiable(c, line)};
}

ChangeSet EveryEdit::unite(const EditContext& c) {
    const auto how = upTo(1) ? LineageHow::United : LineageHow::ShakenOut;
    return recordUnion(c, {{}, day() + 20, how, colony(c), colony(c), {}, {}});
}

/// One step aside, often onto places that others of them leave.
ChangeSet EveryEdit::carrySome(const EditContext& c) {
    const Day on = day() + 20;
    std::vector<CarryTo> carries;
    for (int i = 0; i <= upTo(3); ++i) {
        const ColonyId id = colony(c);
        const auto open = c.openPlacement(id);
        const auto stand = open ? c.stand(open->stand) : std::nullopt;
        if (stand) carries.push_back({id, stand->yard, stand->at + MmPoint{1000, 0}, {}, on});
    }
    return carryHives(c, carries);
}

void EveryEdit::see(Visit& v) {
    v.beesTop = Quarters{upTo(36)};
    if (upTo(3) == 0) v.boxes = 1 + upTo(1);
    if (upTo(3) == 0) v.upperBeesTop = Quarters{upTo(36)};
    v.broodFrames = v.broodChecked = 3 + upTo(3);
    v.signs = {};
    if (upTo(8) == 0) v.signs.add(static_cast<Sign>(upTo(2)));
    if (upTo(3) == 0) v.signs.add(Sign::Chalkbrood);
    v.note = noteOf(v.beesTop->value);
}

ChangeSet EveryEdit::visit(const EditContext& c) {
    Visit v;
    v.colony = colony(c);
    v.day = day();
    see(v);
    return logVisit(c, v);
}

Divide EveryEdit::divideDraft(const EditContext& c) {
    Divide d;
    d.from = colony(c);
    d.made.colony.label = QString::number(upTo(60));
    d.made.colony.since = day();
    d.made.colony.box = BoxKindId{1};
    d.made.stand.yard = YardId{1 + upTo(1)};
    d.made.stand.at = m_some.point();
    return d;
}

ChangeSet EveryEdit::row(const EditContext& c) {
    HiveRow r;
    r.yard = YardId{1 + upTo(1)};
    r.count = 1 + upTo(2);
    r.firstLabel = QString(QChar(u'A' + static_cast<char16_t>(upTo(25))));
    r.start = m_some.point();
    r.bearingDeg = upTo(359);
    r.box = BoxKindId{1 + upTo(5)};
    r.since = day();
    return addHiveRow(c, r);
}

ChangeSet EveryEdit::result(const EditContext& c) {
    Result r;
    r.day = day();
    r.verdict = upTo(2) ? Verdict::Negative : static_cast<Verdict>(upTo(3));
    r.method = Method::Inspector;
    r.disease = static_cast<Disease>(upTo(1));
    r.by = QStringLiteral("the inspector");
    r.paper = QStringLiteral("7");
    r.note = noteOf(r.day.number);
    if (upTo(9) == 0)
        r.yard = YardId{1 + upTo(1)};
    else
        r.colony = colony(c);
    return logResult(c, r);
}

ChangeSet EveryEdit::treatment(const EditContext& c) {
    Treatment t;
    t.colony = colony(c);
    t.day = day();
    t.product = QStringLiteral("powder");
    t.substance = QStringLiteral("salt");
    t.antibiotic = upTo(1) == 0;
    if (upTo(1)) t.days = 7;
    t.reason = noteOf(t.day.number);
    return logTreatment(c, t);
}

ChangeSet EveryEdit::boxKind(const EditContext& c) {
    BoxKind kind;
    kind.name = QStringLiteral("own-%1").arg(upTo(3));
    kind.frames = 6 + upTo(8);
    return newBoxKind(c, kind);
}

std::pair<std::string, ChangeSet> EveryEdit::changed(const EditContext& c) {
    switch (upTo(12)) {
    case 11:
    case 12:
        return {"changePlacement", placementNow(c)};
    case 0:
    case 1:
        return {"changeColony", colonyNow(c)};
    case 2:
    case 3:
        return {"changeVisit", visitNow(c)};
    case 4:
        return {"changeTransfer", transferNow(c)};
    case 5:
        return {"changeResult", resultNow(c)};
    case 6:
        return {"changeTreatment", treatmentNow(c)};
    case 7:
    case 8:
        return {"changeLineage", lineageNow(c)};
    case 9:
        return upTo(1) ? std::pair("changeYard", yardNow(c)) : std::pair("changeBoxKind", boxKindNow(c));
    default: {
        const ColonyId id = colony(c);
        const auto ended = c.colony(id).value_or(Colony{}).ended;
        return {"changeEnd", changeEnd(c, id, near(ended.value_or(day())), upTo(1) ? EndKind::Dead : EndKind::Sold)};
    }
    }
}

ChangeSet EveryEdit::colonyNow(const EditContext& c) {
    auto now = any<Colony>(c);
    if (!now) return {};
    if (upTo(2) == 0) now->since = near(now->since);
    if (upTo(2) == 0) now->label = QString::number(upTo(60));
    if (upTo(2) == 0) now->broodBoxes = 1 + upTo(1);
    if (upTo(2) == 0) now->box = BoxKindId{1 + upTo(7)};
    now->note = noteOf(now->since.number + now->broodBoxes);
    return changeColony(c, *now);
}

ChangeSet EveryEdit::visitNow(const EditContext& c) {
    const auto found = any<Visit>(c);
    if (!found) return {};
    Visit now = c.visit(found->id).value();
    if (upTo(1)) now.day = near(now.day);
    if (upTo(1)) see(now);
    return changeVisit(c, now);
}

ChangeSet EveryEdit::transferNow(const EditContext& c) {
    auto now = any<Transfer>(c);
    if (!now) return {};
    now->day = near(now->day);
    now->what = static_cast<TransferKind>(upTo(4));
    now->note = noteOf(now->day.number);
    if (upTo(1)) now->to = colony(c);
    return changeTransfer(c, *now);
}

ChangeSet EveryEdit::resultNow(const EditContext& c) {
    auto now = any<Result>(c);
    if (!now) return {};
    now->day = near(now->day);
    if (upTo(2) == 0) now->verdict = static_cast<Verdict>(upTo(3));
    return changeResult(c, *now);
}

ChangeSet EveryEdit::treatmentNow(const EditContext& c) {
    auto now = any<Treatment>(c);
    if (!now) return {};
    now->day = near(now->day);
    now->antibiotic = !now->antibiotic;
    now->reason = noteOf(now->day.number);
    return changeTreatment(c, *now);
}

ChangeSet EveryEdit::lineageNow(const EditContext& c) {
    auto now = any<Lineage>(c);
    if (!now) return {};
    now->day = near(now->day);
    now->note = QString::number(upTo(3));
    return changeLineage(c, *now);
}

ChangeSet EveryEdit::placementNow(const EditContext& c) {
    const auto was = any<Placement>(c);
    if (!was) return {};
    PlaceChange now{c.stand(was->stand).value(), was->headingDeg, was->since};
    if (!was->first && upTo(1)) now.since = near(now.since);
    if (upTo(1)) now.headingDeg = upTo(359);
    if (upTo(1)) now.stand = {{}, YardId{1 + upTo(1)}, {}, m_some.point(), false};
    return changePlacement(c, was->id, now);
}

ChangeSet EveryEdit::yardNow(const EditContext& c) {
    auto now = any<Yard>(c);
    if (!now) return {};
    now->name = QString::number(upTo(5));
    now->latitudeDeg = upTo(100) - 50;
    now->note = noteOf(now->name.toInt());
    now->closed = upTo(4) == 0;
    return changeYard(c, *now);
}

ChangeSet EveryEdit::boxKindNow(const EditContext& c) {
    auto now = c.boxKind(BoxKindId{6 + upTo(1)}); // the users' own
    if (!now) return {};
    now->frames = 6 + upTo(8);
    return changeBoxKind(c, *now);
}

std::pair<std::string, ChangeSet> EveryEdit::takenBack(const EditContext& c) {
    const qint64 id = 1 + upTo(14);
    switch (upTo(11)) {
    case 11:
        return {"takeBackEnd", takeBackEnd(c, colony(c))};
    case 0:
        return {"takeBackVisit", takeBackVisit(c, VisitId{id})};
    case 1:
        return {"takeBackTransfer", takeBackTransfer(c, TransferId{id})};
    case 2:
        return {"takeBackResult", takeBackResult(c, ResultId{id})};
    case 3:
        return {"takeBackTreatment", takeBackTreatment(c, TreatmentId{id})};
    case 4:
    case 5:
        return {"takeBackLineage", takeBackLineage(c, LineageId{1 + upTo(5)})};
    case 6:
        return {"takeBackEnd", takeBackEnd(c, colony(c))};
    case 7:
        return {"takeBackCarry", takeBackCarry(c, PlacementId{id})};
    case 8:
        return {"takeBackColony", takeBackColony(c, colony(c))};
    case 9:
        return upTo(1) ? std::pair("takeBackYard", takeBackYard(c, YardId{1 + upTo(3)}))
                       : std::pair("takeBackBoxKind", takeBackBoxKind(c, BoxKindId{5 + upTo(2)}));
    default:
        return {"takeBackStand", takeBackStand(c, StandId{id})};
    }
}

KitPlace EveryEdit::pile(const EditContext& c) {
    if (const auto lot = any<Kit>(c); lot && upTo(2) > 0) return {lot->yard, lot->part, lot->state, lot->colony};
    KitPlace place;
    if (upTo(1)) place.yard = YardId{1 + upTo(1)};
    place.part = kit::kLid;
    place.state = kit::states()[upTo(4)];
    place.colony = colony(c);
    return place;
}

std::pair<std::string, ChangeSet> EveryEdit::mapping(const EditContext& c) {
    const auto there = any<FileMapping>(c);
    if (upTo(2) == 0) return {"takeBackFileMapping", takeBackFileMapping(c, there ? there->id : FileMappingId{1})};
    const QString name = QStringLiteral("Scale %1").arg(upTo(3));
    return {"keepFileMapping",
            keepFileMapping(c, {{}, name, QStringLiteral("visits"), QString::number(upTo(9)), QStringLiteral("{}")})};
}

std::pair<std::string, ChangeSet> EveryEdit::kit(const EditContext& c) {
    if (upTo(5) == 0) return mapping(c);
    const KitPlace place = pile(c);
    switch (upTo(4)) {
    case 0:
        return {"takeBackKit", takeBackKit(c, place)};
    case 1:
    case 2:
        return {"countKit", countKit(c, place, upTo(4))};
    default: {
        const KitPlace to = pile(c);
        const KitEnding end{
            to.state == kit::kBurned ? KitEndHow::Burned : KitEndHow::Dipped, day(), QStringLiteral("Ana"), {}, {}};
        return {"moveKit", moveKit(c, {place, 1 + upTo(2), to.yard, to.state, to.colony, end})};
    }
    }
}

std::pair<std::string, ChangeSet> EveryEdit::fed(const EditContext& c) {
    if (const auto old = any<Feeding>(c); old && upTo(2) > 0) {
        if (upTo(1)) return {"takeBackFeeding", takeBackFeeding(c, old->id)};
        Feeding now = *old;
        now.day = near(old->day);
        return {"changeFeeding", changeFeeding(c, now)};
    }
    Feeding f;
    f.colony = colony(c);
    f.day = day();
    f.mix = QStringLiteral("3:2");
    f.volume = Millilitres{500 + upTo(9500)};
    Feeding other = f;
    other.colony = colony(c);
    return {"logFeedings", logFeedings(c, {f, other})};
}

std::pair<std::string, ChangeSet> EveryEdit::fallen(const EditContext& c) {
    if (const auto old = any<MiteFall>(c); old && upTo(2) > 0) {
        if (upTo(1)) return {"takeBackMiteFall", takeBackMiteFall(c, old->id)};
        MiteFall now = *old;
        now.day = near(old->day);
        return {"changeMiteFall", changeMiteFall(c, now)};
    }
    MiteFall f;
    f.colony = colony(c);
    f.day = day();
    f.days = 1 + upTo(6);
    f.mites = upTo(40);
    return {"logMiteFall", logMiteFall(c, f)};
}

std::pair<std::string, ChangeSet> EveryEdit::headed(const EditContext& c) {
    std::optional<QueenBefore> before;
    if (upTo(2)) before = QueenBefore{static_cast<QueenFate>(upTo(6)), {}};
    if (const auto old = any<Queen>(c); old && upTo(3) > 0) {
        switch (upTo(3)) {
        case 0:
            return {"takeBackQueen", takeBackQueen(c, old->id)};
        case 1:
            return {"endQueen", endQueen(c, old->id, near(old->since) + 3, static_cast<QueenFate>(upTo(6)))};
        case 2:
            return {"moveQueen", moveQueen(c, old->id, colony(c), old->since + upTo(20), before)};
        default: {
            Queen now = *old;
            now.since = near(old->since);
            now.born = 2020 + upTo(6);
            return {"changeQueen", changeQueen(c, now)};
        }
        }
    }
    Queen q;
    q.colony = colony(c);
    q.since = day();
    if (upTo(1)) q.born = 2020 + upTo(6);
    if (upTo(1)) q.mother = colony(c);
    return {"newQueen", newQueen(c, q, before)};
}

std::pair<std::string, ChangeSet> EveryEdit::question(const EditContext& c) {
    Question q{{}, QString::number(upTo(4)), QStringLiteral("colonies"), {}, upTo(1) == 0};
    q.ask = rules::askJson(rules::readyAsk(static_cast<rules::ReadyAsk>(upTo(3))));
    const auto found = any<Question>(c);
    if (!found || upTo(2) == 0) return {"keepQuestion", keepQuestion(c, q)};
    q.id = found->id;
    return upTo(1) ? std::pair("changeQuestion", changeQuestion(c, q))
                   : std::pair("takeBackQuestion", takeBackQuestion(c, q.id));
}

} // namespace tests::edit
