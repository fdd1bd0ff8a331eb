#include "core/report/inspector_part.h"

#include "core/rules/calc/loss.h"
#include "core/rules/season_book.h"

#include <algorithm>

// Treatments in short; what was carried, given, joined; what began and ended; kit kept apart.

namespace core::report {

namespace {

const QString kMovedDate = QStringLiteral("date");

QString endWords(EndKind how) {
    switch (how) {
    case EndKind::Dead:
        return QStringLiteral("dead");
    case EndKind::Destroyed:
        return QStringLiteral("destroyed");
    case EndKind::United:
        return QStringLiteral("united");
    case EndKind::ShakenOut:
        return QStringLiteral("shaken out");
    case EndKind::Sold:
        break;
    }
    return QStringLiteral("sold");
}

QString howWords(LineageHow how) {
    switch (how) {
    case LineageHow::United:
        return QStringLiteral("united");
    case LineageHow::ShakenOut:
        return QStringLiteral("shaken out");
    case LineageHow::Divided:
        break;
    }
    return QStringLiteral("divided");
}

/// Colonies that a treatment of the yard reached: those that lived there that day.
int livingIn(const InspectorInput& in, const rules::ColonyPlaces& places, YardId yard, Day day) {
    int count = 0;
    for (size_t i = 0; i < in.s().colonies.size(); ++i) {
        const auto at = places.livingIn({static_cast<qint32>(i)}, day);
        if (at && in.s().yard(*at).id == yard) ++count;
    }
    return count;
}

QString whole(const std::optional<int>& n) { return n ? QString::number(*n) : QString(); }

QString amount(const Treatment& t) {
    if (!t.quantity) return {};
    const QString number = decimals(*t.quantity, 3);
    return t.unit.isEmpty() ? number : number + u' ' + t.unit;
}

} // namespace

PaperTable treatmentsTable(const InspectorInput& in) {
    const rules::ColonyPlaces places(in.s());
    PaperTable table;
    table.file = QStringLiteral("treatments");
    table.heading = QStringLiteral("Treatments, in short");
    table.note = QStringLiteral("The medicine book has every field of them.");
    table.none = QStringLiteral("No treatment is recorded in this period.");
    table.columns = {{QStringLiteral("Day"), kMovedDate},
                     {QStringLiteral("Colony or yard"), QStringLiteral("about"), false, true},
                     {QStringLiteral("Colonies"), QStringLiteral("colonies"), true},
                     {QStringLiteral("Product"), QStringLiteral("product")},
                     {QStringLiteral("Substance"), QStringLiteral("substance")},
                     {QStringLiteral("Quantity"), QStringLiteral("quantity_unit")},
                     {QStringLiteral("Batch"), QStringLiteral("batch")},
                     {QStringLiteral("Withdrawal, days"), QStringLiteral("withdrawal_days"), true},
                     {QStringLiteral("By"), QStringLiteral("by")}};
    for (const size_t i : in.found.treatments) {
        const Treatment& t = in.book.treatments[i];
        const int reached = t.colony ? 1 : livingIn(in, places, *t.yard, t.day);
        table.rows.push_back({isoText(t.day),
                              t.colony ? in.name(*t.colony) : QStringLiteral("yard %1").arg(in.yard(t.yard)),
                              QString::number(reached), t.product,
                              t.antibiotic ? t.substance + QStringLiteral(" (antibiotic)") : t.substance, amount(t),
                              t.batch, whole(t.withdrawalDays), t.by});
    }
    return table;
}

PaperTable movesTable(const InspectorInput& in) {
    PaperTable table;
    table.file = QStringLiteral("movements");
    table.heading = QStringLiteral("Hives carried between places");
    table.none = QStringLiteral("No hive was carried from one yard to another in this period, by the records.");
    table.columns = {{QStringLiteral("Day"), kMovedDate},
                     {QStringLiteral("Hives"), QStringLiteral("hives"), true},
                     {QStringLiteral("From"), QStringLiteral("from_yard")},
                     {QStringLiteral("To"), QStringLiteral("to_yard")},
                     {QStringLiteral("Which"), QStringLiteral("colonies"), false, true}};
    for (const rules::HiveMove& m : in.found.moves)
        table.rows.push_back({isoText(m.day), QString::number(m.colonies.size()), in.yard(m.from), in.yard(m.to),
                              in.names(m.colonies).join(QStringLiteral("; "))});
    return table;
}

PaperTable transfersTable(const InspectorInput& in) {
    PaperTable table;
    table.file = QStringLiteral("transfers");
    table.heading = QStringLiteral("Bees, comb, boxes and feed moved between colonies");
    table.none = QStringLiteral("No such transfer is recorded in this period.");
    table.columns = {{QStringLiteral("Day"), kMovedDate},
                     {QStringLiteral("What"), QStringLiteral("what")},
                     {QStringLiteral("How many"), QStringLiteral("count"), true},
                     {QStringLiteral("From"), QStringLiteral("from"), false, true},
                     {QStringLiteral("in"), QStringLiteral("from_yard")},
                     {QStringLiteral("To"), QStringLiteral("to"), false, true},
                     {QStringLiteral("in"), QStringLiteral("to_yard")},
                     {QStringLiteral("Note"), QStringLiteral("note")}};
    for (const rules::Between& b : in.found.transfers) {
        const Transfer& t = in.book.transfers[b.row];
        table.rows.push_back({isoText(t.day), word(t.what), whole(t.count), in.name(b.from), in.yardOf(b.from, t.day),
                              in.name(b.to), in.yardOf(b.to, t.day), t.note});
    }
    return table;
}

PaperTable lineageTable(const InspectorInput& in) {
    PaperTable table;
    table.file = QStringLiteral("unions_divides");
    table.heading = QStringLiteral("Unions, shake-outs and divides");
    table.none = QStringLiteral("No union, shake-out or divide is recorded in this period.");
    table.columns = {{QStringLiteral("Day"), kMovedDate},
                     {QStringLiteral("What"), QStringLiteral("how")},
                     {QStringLiteral("Colony"), QStringLiteral("colony"), false, true},
                     {QStringLiteral("Into"), QStringLiteral("into"), false, true},
                     {QStringLiteral("Yard"), QStringLiteral("yard")},
                     {QStringLiteral("By"), QStringLiteral("by")},
                     {QStringLiteral("Note"), QStringLiteral("note")}};
    for (const rules::Between& b : in.found.lineage) {
        const Lineage& l = in.book.lineage[b.row];
        table.rows.push_back(
            {isoText(l.day), howWords(l.how), in.name(b.from), in.name(b.to), in.yardOf(b.to, l.day), l.by, l.note});
    }
    return table;
}

PaperTable begunTable(const InspectorInput& in) {
    PaperTable table;
    table.file = QStringLiteral("begun");
    table.heading = QStringLiteral("Colonies that began in the period");
    table.note =
        QStringLiteral("New: bought, a swarm, or first written down. Where it came from stands in its note, if "
                       "it was noted.");
    table.none = QStringLiteral("No colony began in this period.");
    table.columns = {{QStringLiteral("Day"), kMovedDate},
                     {QStringLiteral("Colony"), QStringLiteral("colony"), false, true},
                     {QStringLiteral("Yard"), QStringLiteral("yard")},
                     {QStringLiteral("How"), QStringLiteral("how")},
                     {QStringLiteral("Note"), QStringLiteral("note")}};
    for (const rules::Began& b : in.found.began) {
        const auto row = std::ranges::find(in.book.begun, in.s().colony(b.colony).id, &Colony::id);
        table.rows.push_back(
            {isoText(b.day), in.name(b.colony), in.yard(b.yard),
             b.dividedFrom ? QStringLiteral("divided from %1").arg(in.name(*b.dividedFrom)) : QStringLiteral("new"),
             row == in.book.begun.end() ? QString() : row->note});
    }
    return table;
}

PaperTable endedTable(const InspectorInput& in) {
    PaperTable table;
    table.file = QStringLiteral("ended");
    table.heading = QStringLiteral("Colonies that ended in the period");
    table.none = QStringLiteral("No colony ended in this period.");
    table.columns = {{QStringLiteral("Day"), kMovedDate},
                     {QStringLiteral("Colony"), QStringLiteral("colony"), false, true},
                     {QStringLiteral("Yard"), QStringLiteral("yard")},
                     {QStringLiteral("End"), QStringLiteral("end")},
                     {QStringLiteral("Began"), QStringLiteral("since")}};
    for (const rules::Ended& e : in.found.ended)
        table.rows.push_back({isoText(e.day), in.name(e.colony), in.yard(e.yard), endWords(e.how),
                              isoText(in.s().colony(e.colony).since)});
    return table;
}

PaperTable lossTable(const InspectorInput& in) {
    PaperTable table;
    table.file = QStringLiteral("losses");
    table.heading = QStringLiteral("Losses");
    table.note = QStringLiteral(
        "Lost: dead and destroyed. At risk: those of the first day, divided, new and carried in, less those united, "
        "shaken out, sold and carried away, which are no losses (COLOSS BEEBOOK vol. II, epidemiology 1.3.3.1).");
    table.columns = {{QStringLiteral("Yard"), QStringLiteral("yard"), false, true},
                     {QStringLiteral("Dead"), QStringLiteral("dead"), true},
                     {QStringLiteral("Destroyed"), QStringLiteral("destroyed"), true},
                     {QStringLiteral("Lost"), QStringLiteral("lost"), true},
                     {QStringLiteral("of at risk"), QStringLiteral("at_risk"), true},
                     {QStringLiteral("Lost,\u00a0%"), QStringLiteral("lost_percent"), true},
                     {QStringLiteral("Sold (no loss)"), QStringLiteral("sold"), true}};
    for (const rules::YardOverTime& y : in.found.yards) {
        QStringList row{y.yard ? in.yard(*y.yard) : QStringLiteral("all together"), QString::number(y.count.dead),
                        QString::number(y.count.destroyed), QString::number(y.count.lost())};
        row << (y.lost ? QString::number(y.lost->of) : QString())
            << (y.lost ? QString::number(rules::calc::wholePercent(y.lost->found, y.lost->of)) : QString())
            << QString::number(y.count.sold);
        table.rows.push_back(row);
    }
    return table;
}

PaperTable kitTable(const InspectorInput& in) {
    PaperTable table;
    table.file = QStringLiteral("kit_kept_apart");
    table.heading = QStringLiteral("Kit kept apart (quarantined)");
    table.note = QStringLiteral("As the book counts it now: it keeps no days of that.");
    table.none = QStringLiteral("No kit is counted as kept apart.");
    table.columns = {{QStringLiteral("Where"), QStringLiteral("yard")},
                     {QStringLiteral("Part"), QStringLiteral("part"), false, true},
                     {QStringLiteral("How many"), QStringLiteral("count"), true},
                     {QStringLiteral("Came off"), QStringLiteral("came_off")},
                     {QStringLiteral("Because"), QStringLiteral("because")}};
    for (const rules::KitPile& p : in.book.kit)
        table.rows.push_back({in.yard(p.place.yard), p.place.part, QString::number(p.count),
                              p.place.colony ? in.name(*p.place.colony) : QString(),
                              p.hold ? p.hold->because : QString()});
    return table;
}

PaperTable kitEndsTable(const InspectorInput& in) {
    PaperTable table;
    table.file = QStringLiteral("kit_ends");
    table.heading = QStringLiteral("What became of kit that was kept apart");
    table.none = QStringLiteral("No end of such kit is recorded in this period.");
    table.columns = {{QStringLiteral("Day"), kMovedDate},
                     {QStringLiteral("Where"), QStringLiteral("yard")},
                     {QStringLiteral("Part"), QStringLiteral("part"), false, true},
                     {QStringLiteral("How many"), QStringLiteral("count"), true},
                     {QStringLiteral("Came off"), QStringLiteral("came_off")},
                     {QStringLiteral("End"), QStringLiteral("how")},
                     {QStringLiteral("By"), QStringLiteral("by")},
                     {QStringLiteral("Paper"), QStringLiteral("paper")},
                     {QStringLiteral("Note"), QStringLiteral("note")}};
    for (const KitEnd& e : in.book.kitEnds)
        table.rows.push_back({isoText(e.day), in.yard(e.yard), e.part, QString::number(e.count),
                              e.colony ? in.name(*e.colony) : QString(), word(e.how), e.by, e.paper, e.note});
    return table;
}

} // namespace core::report
