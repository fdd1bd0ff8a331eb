#include "tests/store/snapshot_text.h"

using namespace core;

namespace {

QString text(Day day) { return isoText(day); }
QString text(int number) { return QString::number(number); }
QString text(double number) { return QString::number(number, 'g', 17); }
QString text(Quarters q) { return framesText(q); }
QString text(const QString& t) { return t; }
QString text(MmPoint p) { return QStringLiteral("(%1 %2)").arg(p.x).arg(p.y); }
QString text(Signs s) { return QString::number(s.bits, 2); }
template <class E>
requires std::is_enum_v<E> QString text(E value) { return word(value); }
template <class T> QString text(const std::optional<T>& value) { return value ? text(*value) : QStringLiteral("-"); }

template <class... T> QString line(const char* kind, const T&... values) {
    return (QStringList{QLatin1String(kind)} << ... << text(values)).join(u' ');
}

QString name(const Snapshot& s, ColonyIx ix) { return ix.value < 0 ? QStringLiteral("-") : s.colony(ix).shown; }
QString name(const Snapshot& s, YardIx ix) { return ix.value < 0 ? QStringLiteral("-") : s.yard(ix).name; }

QStringList latestLines(const QString& colony, const SnapLatest& l) {
    QStringList lines{line("latest", colony, l.visit, l.visitSigns, l.boxes)};
    if (l.count)
        lines << line("count", colony, l.count->day, l.count->top, l.count->bottom, l.count->upperTop,
                      l.count->upperBottom, l.count->stores, l.count->upperStores, l.count->broodFrames,
                      l.count->boxes);
    if (l.weight) lines << line("weight", colony, l.weight->day, l.weight->gross.value, l.weight->supers);
    if (l.stores) lines << line("stores", colony, l.stores->day, l.stores->stores, l.stores->upper);
    if (l.brood) lines << line("brood", colony, l.brood->day, l.brood->broodFrames);
    if (l.mites) lines << line("mites", colony, l.mites->day, l.mites->mites, l.mites->sample);
    for (const SnapQueen& q : l.queen) lines << line("queen", colony, q.day, q.seen);
    return lines;
}

void addColonies(const Snapshot& s, QStringList& lines) {
    for (size_t i = 0; i < s.colonies.size(); ++i) {
        const SnapColony& c = s.colonies[i];
        // The position is part of it: the living first, in natural order.
        lines << line("colony", static_cast<int>(i), c.shown, c.label, c.since, c.ended,
                      c.ended ? word(c.end) : QString(), s.boxKinds[static_cast<size_t>(c.boxKind)].name, c.broodBoxes,
                      c.queenBorn);
        lines << latestLines(c.shown, s.latest[i]);
    }
    for (const SnapStay& stay : s.stays)
        lines << line("stay", name(s, stay.colony), name(s, stay.yard), stay.standName, stay.at, stay.headingDeg,
                      stay.since, stay.until);
}

} // namespace

QStringList linesOf(const Snapshot& s) {
    QStringList lines;
    for (const SnapYard& y : s.yards) lines << line("yard", y.name, y.latitudeDeg, y.longitudeDeg, y.gate);
    for (const SnapBoxKind& b : s.boxKinds) lines << line("box", b.name, b.frames);
    addColonies(s, lines);
    for (const SnapTransfer& t : s.transfers) lines << line("transfer", t.day, name(s, t.from), name(s, t.to), t.what);
    for (const SnapLineage& l : s.lineage) lines << line("lineage", l.day, l.how, name(s, l.colony), name(s, l.into));
    for (const SnapResult& r : s.results)
        lines << line("result", r.day, name(s, r.colony), name(s, r.yard), r.disease, r.verdict, r.method, r.by,
                      r.paper);
    for (const SnapTreatment& t : s.treatments)
        lines << line("treatment", t.day, name(s, t.colony), name(s, t.yard), t.antibiotic ? 1 : 0, t.days, t.product);
    for (const SnapCheck& c : s.checks)
        lines << line("check", name(s, c.colony), c.day, int(c.checked), int(c.broodFrames), c.signs);
    for (const SnapSign& g : s.signs)
        if (g.signs.broodTrouble()) lines << line("sign", name(s, g.colony), g.day, g.signs);
    lines.sort();
    return lines;
}
