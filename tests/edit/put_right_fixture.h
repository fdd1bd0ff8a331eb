#pragma once

#include "core/edit/put_right.h"
#include "tests/edit/edit_fixture.h"

namespace tests::edit {

inline const Day kDay = dayOf(2026, 9, 10);

class PutRight : public EditTest {
protected:
    YardId north = newYard(QStringLiteral("North"));
    ColonyId k5 = newColony(north, QStringLiteral("5"), {0, 0});
    ColonyId k6 = newColony(north, QStringLiteral("6"), {2000, 0});

    using Work = std::function<ChangeSet(const EditContext&)>;
    std::string refusal(const Work& e) {
        const auto before = rowsText(path());
        const Thrown thrown = thrownBy([&] { apply(e); });
        EXPECT_EQ(thrown.kind, Error::Kind::BadData);
        EXPECT_EQ(rowsText(path()), before);
        return thrown.message;
    }
    /// Applies it, and sees that its undo gives the rows back; the text of its line.
    std::string done(const Work& e, const std::optional<Correction>& why = {}) {
        const auto before = rowsText(path());
        const auto line = session->apply(e, why);
        if (!line) return {};
        const auto after = rowsText(path());
        EXPECT_EQ(problems(), "");
        session->undo(why);
        EXPECT_EQ(rowsText(path()), before);
        session->redo(why);
        EXPECT_EQ(rowsText(path()), after);
        return line->text.toStdString();
    }
    void log(ColonyId colony, Day day, const std::function<void(Visit&)>& more = {}) {
        Visit v;
        v.colony = colony;
        v.day = day;
        v.broodFrames = 4;
        v.broodChecked = 4;
        if (more) more(v);
        visit(v);
    }
    void end(ColonyId colony, Day day, EndKind how = EndKind::Dead) {
        apply([=](const EditContext& c) { return endColony(c, colony, day, how); });
    }
    void unite(ColonyId colony, ColonyId into, Day day, LineageHow how = LineageHow::United) {
        apply([=](const EditContext& c) { return recordUnion(c, {{}, day, how, colony, into, {}, {}}); });
    }
    void give(ColonyId from, ColonyId to, Day day, TransferKind what = TransferKind::Frames) {
        apply([=](const EditContext& c) { return logTransfer(c, {{}, day, from, to, what, {}, {}}); });
    }
    ColonyId divide(ColonyId from, const QString& label, MmPoint at, Day day) {
        Divide d;
        d.from = from;
        d.made.colony.label = label;
        d.made.colony.since = day;
        d.made.colony.box = BoxKindId{1};
        d.made.stand.yard = north;
        d.made.stand.at = at;
        std::optional<ColonyId> id;
        apply([&](const EditContext& c) {
            id = ColonyId{c.nextId(Table::Colony)};
            return recordDivide(c, d);
        });
        return *id;
    }
    ColonyId again(const QString& label, Day since, const Stand& stand) {
        NewColony fresh;
        fresh.colony.label = label;
        fresh.colony.since = since;
        fresh.colony.box = BoxKindId{1};
        fresh.stand = stand;
        std::optional<ColonyId> id;
        apply([&](const EditContext& c) {
            id = ColonyId{c.nextId(Table::Colony)};
            return addColony(c, fresh);
        });
        return *id;
    }
    Visit visitOf(ColonyId colony, Day day) {
        std::optional<Visit> v;
        session->read([&](const EditContext& c) { v = c.visitOn(colony, day); });
        return v.value();
    }
    Work colony(ColonyId id, const std::function<void(Colony&)>& more) {
        Colony now = session->colony(id).value();
        more(now);
        return [=](const EditContext& c) { return changeColony(c, now); };
    }
    Work visitNow(ColonyId id, Day day, const std::function<void(Visit&)>& more) {
        Visit now = visitOf(id, day);
        more(now);
        return [=](const EditContext& c) { return changeVisit(c, now); };
    }
    Work lineage(LineageId id, const std::function<void(Lineage&)>& more) {
        return [=](const EditContext& c) {
            Lineage now = c.find<Lineage>(id.value).value();
            more(now);
            return changeLineage(c, now);
        };
    }
    static Work back(VisitId id) {
        return [=](const EditContext& c) { return takeBackVisit(c, id); };
    }
    static Work back(LineageId id) {
        return [=](const EditContext& c) { return takeBackLineage(c, id); };
    }
    static Work back(ColonyId id) {
        return [=](const EditContext& c) { return takeBackColony(c, id); };
    }
    static Work endBack(ColonyId id) {
        return [=](const EditContext& c) { return takeBackEnd(c, id); };
    }
};

} // namespace tests::edit
