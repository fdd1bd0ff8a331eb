#include "tests/support/csv_visits.h"

#include <QRegularExpression>

#include <algorithm>

namespace tests::support {

using namespace core;

namespace {

struct VisitRow {
    ColonyIx colony;
    Day day;
    const CsvRow* row = nullptr;
    Signs signs;
};

Signs signsOf(const CsvRow& row) {
    Signs signs;
    static const QRegularExpression separators(QStringLiteral("[ ;]+"));
    for (const QString& text : cell(row, u"signs").split(separators, Qt::SkipEmptyParts)) {
        const auto sign = fromWord<Sign>(text);
        if (!sign) throw std::runtime_error("not a sign: " + text.toStdString());
        signs.add(*sign);
    }
    return signs;
}

std::vector<VisitRow> visitsOf(const Snapshot& s, const CsvTables& tables, const ColonyNames& names) {
    std::vector<VisitRow> visits;
    for (const CsvRow& row : rowsOf(tables, u"visits")) {
        const Day d = day(row, u"date");
        if (d <= s.on) visits.push_back({names.at(cell(row, u"colony"), d), d, &row, signsOf(row)});
    }
    std::sort(visits.begin(), visits.end(), [](const VisitRow& a, const VisitRow& b) {
        return std::pair(a.colony, a.day) < std::pair(b.colony, b.day);
    });
    return visits;
}

std::optional<Quarters> quarters(const CsvRow& row, QStringView column) {
    const auto hundredths = scaled(row, column, 2);
    return hundredths ? std::optional(Quarters{static_cast<qint32>(*hundredths / 25)}) : std::nullopt;
}

std::optional<Day> lastUnion(const Snapshot& s, ColonyIx ix, Day upTo) {
    std::optional<Day> last;
    for (const SnapLineage& l : s.lineage)
        if (l.how == LineageHow::United && l.into == ix && l.day <= upTo) last = l.day;
    return last;
}

// What a colony's visits have told so far.
struct Latest {
    SnapLatest& out;
    std::optional<std::pair<Day, int>> boxes; // the latest visit with boxes

    int boxesOn(const Snapshot& s, ColonyIx ix, Day d) const {
        const auto united = lastUnion(s, ix, d);
        if (united && (!boxes || *united >= boxes->first)) return 2;
        return boxes ? boxes->second : s.colony(ix).broodBoxes;
    }
};

void addQueen(SnapLatest& out, const VisitRow& v) {
    if (cell(*v.row, u"queen").isEmpty()) return;
    const QueenSeen seen = enumOf<QueenSeen>(*v.row, u"queen");
    const bool settles = seen == QueenSeen::Seen || seen == QueenSeen::Eggs || seen == QueenSeen::Virgin ||
                         seen == QueenSeen::LayingWorkers;
    if (settles) out.queen.clear();
    out.queen.push_back({v.day, seen});
}

void addCount(const Snapshot& s, Latest& latest, const VisitRow& v) {
    SnapCount count;
    count.day = v.day;
    count.top = quarters(*v.row, u"bees_top");
    count.bottom = quarters(*v.row, u"bees_bottom");
    count.upperTop = quarters(*v.row, u"upper_bees_top");
    count.upperBottom = quarters(*v.row, u"upper_bees_bottom");
    count.stores = quarters(*v.row, u"stores_frames");
    count.upperStores = quarters(*v.row, u"upper_stores_frames");
    count.broodFrames = whole(*v.row, u"brood_frames");
    count.boxes = latest.boxesOn(s, v.colony, v.day);
    if (count.top || count.bottom || count.upperTop || count.upperBottom) latest.out.count = count;
    if (count.stores || count.upperStores) latest.out.stores = SnapStores{v.day, count.stores, count.upperStores};
    if (count.broodFrames) latest.out.brood = SnapBrood{v.day, *count.broodFrames};
}

void addLatest(const Snapshot& s, Latest& latest, const VisitRow& v) {
    if (const auto boxes = whole(*v.row, u"boxes")) latest.boxes = {v.day, *boxes};
    latest.out.visit = v.day;
    latest.out.visitSigns = v.signs;
    addCount(s, latest, v);
    addQueen(latest.out, v);
    if (const auto gross = scaled(*v.row, u"gross_kg", 2))
        latest.out.weight = SnapWeight{v.day, {static_cast<qint32>(*gross)}, whole(*v.row, u"supers").value_or(0)};
    if (const auto mites = whole(*v.row, u"mites"))
        latest.out.mites = SnapMites{v.day, *mites, *whole(*v.row, u"mite_sample")};
}

void addFindings(Snapshot& s, const VisitRow& v) {
    if (!v.signs.empty()) s.signs.push_back({v.colony, v.day, v.signs});
    const int checked = whole(*v.row, u"brood_checked").value_or(0);
    const int brood = whole(*v.row, u"brood_frames").value_or(-1);
    if (checked >= 1)
        s.checks.push_back({v.colony, v.day, static_cast<qint16>(checked), static_cast<qint16>(brood), v.signs});
}

} // namespace

void addVisits(Snapshot& s, const CsvTables& tables, const ColonyNames& names) {
    const auto visits = visitsOf(s, tables, names);
    size_t at = 0;
    for (size_t i = 0; i < s.colonies.size(); ++i) {
        const ColonyIx ix{static_cast<qint32>(i)};
        Latest latest{s.latest[i], {}};
        for (; at < visits.size() && visits[at].colony == ix; ++at) {
            addFindings(s, visits[at]);
            addLatest(s, latest, visits[at]);
        }
        latest.out.boxes = latest.boxesOn(s, ix, s.on);
        if (!s.colonies[i].living()) s.latest[i] = {};
    }
}

} // namespace tests::support
