#include "core/report/inspector_part.h"

#include "core/rules/season_book.h"

#include <algorithm>
#include <cmath>

namespace core::report {

QString InspectorInput::name(ColonyId id) const {
    const auto at = std::ranges::find(s().colonies, id, &SnapColony::id);
    return at == s().colonies.end() ? QString() : at->shown;
}

QString InspectorInput::yard(std::optional<YardId> id) const {
    if (!id) return QStringLiteral("store room");
    const auto at = std::ranges::find(s().yards, *id, &SnapYard::id);
    return at == s().yards.end() ? QString() : at->name;
}

QString InspectorInput::yardOf(ColonyIx c, Day day) const {
    const SnapStay* last = nullptr;
    for (const SnapStay& stay : s().staysOf(c))
        if (stay.since <= day) last = &stay;
    return last ? yard(last->yard) : QString();
}

QStringList InspectorInput::names(const std::vector<ColonyIx>& colonies) const {
    QStringList out;
    for (const ColonyIx c : colonies) out << name(c);
    return out;
}

QString diseaseWords(Disease disease) {
    return disease == Disease::Afb ? QStringLiteral("American foulbrood") : QStringLiteral("European foulbrood");
}

QString signWords(Signs signs) {
    static constexpr const char* kWords[] = {"American foulbrood", "European foulbrood", "brood in doubt",
                                             "chalkbrood",         "sacbrood",           "nosema",
                                             "deformed wings"};
    QStringList out;
    for (size_t i = 0; i < std::size(kWords); ++i)
        if (signs.has(static_cast<Sign>(i))) out << QString::fromLatin1(kWords[i]);
    return out.join(QStringLiteral(", "));
}

QString decimals(double number, int most) {
    QString text = QString::number(number, 'f', most);
    while (text.contains(u'.') && (text.endsWith(u'0') || text.endsWith(u'.'))) text.chop(1);
    return text;
}

namespace {

QString degrees(std::optional<double> value) { return value ? decimals(*value, 5) : QString(); }

QString yardOrAll(const InspectorInput& in, const std::optional<YardIx>& yard) {
    return yard ? in.yard(*yard) : QStringLiteral("all together");
}

} // namespace

PaperTable placesTable(const InspectorInput& in) {
    PaperTable table;
    table.file = QStringLiteral("places");
    table.heading = QStringLiteral("Places");
    table.note = QStringLiteral("Mean: of the colonies that stood there as each day of the period ended.");
    table.none = QStringLiteral("No hive stood anywhere.");
    table.columns = {{QStringLiteral("Yard"), QStringLiteral("yard"), false, true},
                     {QStringLiteral("Latitude,\u00a0°"), QStringLiteral("latitude_deg"), true},
                     {QStringLiteral("Longitude,\u00a0°"), QStringLiteral("longitude_deg"), true},
                     {QStringLiteral("Colonies first day"), QStringLiteral("colonies_start"), true},
                     {QStringLiteral("Colonies last day"), QStringLiteral("colonies_end"), true},
                     {QStringLiteral("Mean"), QStringLiteral("colonies_mean"), true}};
    for (const rules::YardOverTime& y : in.found.yards) {
        const SnapYard* yard = y.yard ? &in.s().yard(*y.yard) : nullptr;
        table.rows.push_back({yardOrAll(in, y.yard), yard ? degrees(yard->latitudeDeg) : QString(),
                              yard ? degrees(yard->longitudeDeg) : QString(), QString::number(y.count.start),
                              QString::number(y.count.end), QString::number(y.mean, 'f', 1)});
    }
    return table;
}

PaperTable countsTable(const InspectorInput& in) {
    PaperTable table;
    table.file = QStringLiteral("counts");
    table.heading = QStringLiteral("How many, and what became of them");
    table.note = QStringLiteral("First day (as it begins) + divided + new + carried in − united − shaken out − dead − "
                                "destroyed − sold − carried out = last day (as it ends).");
    const std::pair<const char*, int rules::LedgerCount::*> counts[] = {
        {"First day|start", &rules::LedgerCount::start}, {"Divided|divided", &rules::LedgerCount::divided},
        {"New|new", &rules::LedgerCount::begun},         {"Carried in|carried_in", &rules::LedgerCount::movedIn},
        {"United|united", &rules::LedgerCount::united},  {"Shaken out|shaken_out", &rules::LedgerCount::shakenOut},
        {"Dead|dead", &rules::LedgerCount::dead},        {"Destroyed|destroyed", &rules::LedgerCount::destroyed},
        {"Sold|sold", &rules::LedgerCount::sold},        {"Carried out|carried_out", &rules::LedgerCount::movedOut},
        {"Last day|end", &rules::LedgerCount::end}};
    table.columns = {{QStringLiteral("Yard"), QStringLiteral("yard"), false, true}};
    for (const auto& [names, slot] : counts) {
        const QStringList both = QString::fromLatin1(names).split(u'|');
        table.columns.push_back({both[0], both[1], true});
    }
    for (const rules::YardOverTime& y : in.found.yards) {
        QStringList row{yardOrAll(in, y.yard)};
        for (const auto& [names, slot] : counts) row << QString::number(y.count.*slot);
        table.rows.push_back(row);
    }
    return table;
}

PaperTable coloniesTable(const InspectorInput& in) {
    PaperTable table;
    table.file = QStringLiteral("colonies");
    table.heading = QStringLiteral("Colonies on the last day, by place");
    table.note = QStringLiteral("Strength: frames of bees by the latest count that still stands, and its day.");
    table.none = QStringLiteral("No colony lived in these yards on the last day.");
    table.columns = {{QStringLiteral("Yard"), QStringLiteral("yard")},
                     {QStringLiteral("Stand"), QStringLiteral("stand")},
                     {QStringLiteral("Colony"), QStringLiteral("colony"), false, true},
                     {QStringLiteral("Since"), QStringLiteral("since")},
                     {QStringLiteral("Box"), QStringLiteral("box")},
                     {QStringLiteral("Brood boxes"), QStringLiteral("brood_boxes"), true},
                     {QStringLiteral("Frames of bees"), QStringLiteral("strength_frames"), true},
                     {QStringLiteral("Counted"), QStringLiteral("counted_on")}};
    for (const ColonyIx c : in.found.living) {
        const SnapStay* stay = in.s().placeOf(c);
        const SnapColony& colony = in.s().colony(c);
        const rules::ColonyFacts& facts = in.found.facts[static_cast<size_t>(c.value)];
        table.rows.push_back({stay ? in.yard(stay->yard) : QString(), stay ? stay->standName : QString(), colony.shown,
                              isoText(colony.since), in.s().boxKindOf(c).name, QString::number(facts.boxes),
                              facts.lastCount ? framesText(*facts.lastCount) : QString(),
                              facts.counted ? isoText(*facts.counted) : QString()});
    }
    return table;
}

} // namespace core::report
