#include "tests/support/csv_colonies.h"

#include "core/base/natural_order.h"

#include <algorithm>
#include <set>

namespace tests::support {

using namespace core;

void ColonyNames::add(const QString& label, Day since, ColonyIx ix) { m_bySince[folded(label)][since] = ix; }

ColonyIx ColonyNames::at(const QString& name, Day date) const {
    const qsizetype sign = name.lastIndexOf(u'@');
    const auto lives = m_bySince.find(folded(sign < 0 ? name : name.left(sign)));
    if (lives == m_bySince.end()) throw std::runtime_error("no such colony: " + name.toStdString());
    if (sign >= 0) return lives->second.at(*parseIsoDay(QStringView(name).mid(sign + 1)));
    auto after = lives->second.upper_bound(date);
    if (after == lives->second.begin()) throw std::runtime_error("no such colony yet: " + name.toStdString());
    return std::prev(after)->second;
}

namespace {

struct Life {
    const CsvRow* row = nullptr;
    SnapColony colony;
    std::optional<Day> ended; ///< also after the day asked for
};

qint32 boxKindOf(const Snapshot& s, const QString& name) {
    const QString wanted = name.isEmpty() ? QStringLiteral("langstroth-10") : name;
    for (size_t i = 0; i < s.boxKinds.size(); ++i)
        if (folded(s.boxKinds[i].name) == folded(wanted)) return static_cast<qint32>(i);
    throw std::runtime_error("no such box kind: " + wanted.toStdString());
}

std::vector<Life> livesOf(const Snapshot& s, const CsvTables& tables) {
    std::vector<Life> lives;
    for (const CsvRow& row : rowsOf(tables, u"colonies")) {
        Life& life = lives.emplace_back();
        life.row = &row;
        life.colony.id = {static_cast<qint64>(lives.size())};
        life.colony.label = cell(row, u"colony");
        life.colony.since = day(row, u"since");
        life.ended = dayIfAny(row, u"ended");
        if (life.ended) life.colony.end = enumOf<EndKind>(row, u"end");
        life.colony.boxKind = boxKindOf(s, cell(row, u"box"));
        life.colony.broodBoxes = whole(row, u"brood_boxes").value_or(1);
        life.colony.queenBorn = whole(row, u"queen_born");
    }
    return lives;
}

void endByLineage(std::vector<Life>& lives, const CsvTables& tables) {
    ColonyNames names;
    for (size_t i = 0; i < lives.size(); ++i)
        names.add(lives[i].colony.label, lives[i].colony.since, ColonyIx{static_cast<qint32>(i)});
    for (const CsvRow& row : rowsOf(tables, u"lineage")) {
        const LineageHow how = enumOf<LineageHow>(row, u"how");
        if (how == LineageHow::Divided) continue;
        const Day d = day(row, u"date");
        Life& life = lives[static_cast<size_t>(names.at(cell(row, u"colony"), d).value)];
        life.ended = d;
        life.colony.end = how == LineageHow::United ? EndKind::United : EndKind::ShakenOut;
    }
}

// LABEL@SINCE where the plain label names a later colony on that day.
void nameLives(std::vector<Life>& lives, Day on) {
    std::map<QString, Day> latest;
    for (const Life& life : lives) {
        Day& since = latest[folded(life.colony.label)];
        if (life.colony.since <= on) since = std::max(since, life.colony.since);
    }
    for (Life& life : lives) {
        const bool plain = latest.at(folded(life.colony.label)) == life.colony.since;
        life.colony.shown = plain ? life.colony.label : life.colony.label + u'@' + isoText(life.colony.since);
    }
}

SnapStay stayOf(const Snapshot& s, const CsvRow& row, ColonyIx ix, Day since) {
    SnapStay stay;
    stay.colony = ix;
    const auto yard = s.yardNamed(cell(row, u"yard"));
    if (!yard) throw std::runtime_error("no such yard: " + cell(row, u"yard").toStdString());
    stay.yard = *yard;
    stay.standName = cell(row, u"stand");
    stay.at = {millimetres(row, u"x_m"), millimetres(row, u"y_m")};
    stay.since = since;
    return stay;
}

void addStays(Snapshot& s, const CsvTables& tables, const ColonyNames& names, const std::vector<Life>& lives) {
    std::map<ColonyIx, std::map<Day, const CsvRow*>> carries;
    for (const CsvRow& row : rowsOf(tables, u"placements")) {
        const Day d = day(row, u"date");
        if (d <= s.on) carries[names.at(cell(row, u"colony"), d)][d] = &row;
    }
    std::map<std::pair<YardIx, QString>, qint64> stands;
    for (size_t i = 0; i < s.colonies.size(); ++i) {
        const ColonyIx ix{static_cast<qint32>(i)};
        int heading = whole(*lives[i].row, u"heading_deg").value_or(180);
        std::vector<SnapStay> own{stayOf(s, *lives[i].row, ix, s.colonies[i].since)};
        own.back().headingDeg = heading;
        for (const auto& [d, row] : carries[ix]) {
            own.back().until = d;
            own.push_back(stayOf(s, *row, ix, d));
            heading = whole(*row, u"heading_deg").value_or(heading);
            own.back().headingDeg = heading;
        }
        own.back().until = s.colonies[i].ended;
        for (SnapStay& stay : own) {
            qint64& id = stands[{stay.yard, folded(stay.standName)}];
            if (id == 0) id = static_cast<qint64>(stands.size());
            stay.stand = {id};
            s.stays.push_back(stay);
        }
    }
}

} // namespace

ColonyNames addColonies(Snapshot& s, const CsvTables& tables) {
    std::vector<Life> lives = livesOf(s, tables);
    endByLineage(lives, tables);
    nameLives(lives, s.on);
    for (Life& life : lives)
        if (life.ended && *life.ended <= s.on) life.colony.ended = life.ended;
    std::erase_if(lives, [&](const Life& life) { return life.colony.since > s.on; });
    std::stable_sort(lives.begin(), lives.end(), [](const Life& a, const Life& b) {
        if (a.colony.living() != b.colony.living()) return a.colony.living();
        return naturalCompare(a.colony.shown, b.colony.shown) < 0;
    });
    ColonyNames names;
    for (const Life& life : lives) {
        names.add(life.colony.label, life.colony.since, ColonyIx{static_cast<qint32>(s.colonies.size())});
        s.colonies.push_back(life.colony);
        s.latest.emplace_back().boxes = life.colony.broodBoxes;
    }
    addStays(s, tables, names, lives);
    return names;
}

} // namespace tests::support
