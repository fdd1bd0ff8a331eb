#include "core/report/plan_json.h"

namespace core::report {

using namespace rules;

namespace {

double frames(Quarters q) { return q.frames(); }
double tenths(qint64 value) { return static_cast<double>(value) / 10.0; }

QJsonArray texts(const QStringList& list) { return QJsonArray::fromStringList(list); }

/// One JSON object an element.
template <class T, class Write> QJsonArray arrayOf(const std::vector<T>& rows, Write write) {
    QJsonArray out;
    for (const T& row : rows) out.append(write(row));
    return out;
}

class Writer {
public:
    explicit Writer(const Snapshot& s) : m_s(s) {}

    QString name(ColonyIx c) const { return m_s.colony(c).shown; }

    QJsonObject hold(const Hold& h) const {
        return {{"colony", name(h.colony)}, {"kind", holdWord(h.kind)}, {"because", h.because()}};
    }

    QJsonArray cautions(const std::vector<Caution>& list) const {
        return arrayOf(list, [](const Caution& c) {
            return QJsonObject{{"kind", cautionWord(c.kind)}, {"because", c.because}};
        });
    }

    QJsonObject unite(const Union& u) const {
        const auto nameOf = [this](ColonyIx c) { return name(c); };
        return {{"yard", m_s.yard(u.yard).name},
                {"order", u.order},
                {"moved", name(u.moved)},
                {"host", name(u.host)},
                {"stand", u.stand},
                {"lower", name(u.lower)},
                {"upper", name(u.upper)},
                {"moved_frames", frames(u.movedFrames)},
                {"host_frames", frames(u.hostFrames)},
                {"frames", frames(u.frames)},
                {"consolidate", arrayOf(u.consolidate, nameOf)},
                {"queen", queenPlanWord(u.queen)},
                {"heading_deg", u.headingDeg},
                {"carry_m", tenths(u.carryTenths)},
                {"gain", u.gain},
                {"cautions", cautions(u.cautions)},
                {"because", texts(u.because)},
                {"steps", texts(u.steps)}};
    }

    QJsonObject shakeOut(const ShakeOut& shaken) const {
        return {{"colony", name(shaken.colony)},
                {"into", name(shaken.into)},
                {"frames", frames(shaken.frames)},
                {"carry_m", tenths(shaken.carryTenths)},
                {"queen", shaken.removeQueen ? "remove" : "none"},
                {"cautions", cautions(shaken.cautions)},
                {"because", shaken.because}};
    }

    QJsonObject separate(ColonyIx c) const { return {{"colony", name(c)}, {"why", "laying-workers"}}; }

    QJsonObject alone(const Alone& a) const {
        return {{"colony", name(a.colony)},
                {"frames", frames(a.frames)},
                {"class", classWord(a.strengthClass)},
                {"at_risk", a.atRisk}};
    }

    QJsonObject unresolved(const UnresolvedColony& u) const {
        return {{"colony", name(u.colony)}, {"why", unresolvedWord(u.why)}};
    }

    QJsonObject boxOrder(const BoxOrderAdvice& b) const {
        return {{"colony", name(b.colony)}, {"do", boxActionWord(b.action)}, {"because", b.because}};
    }

    QJsonObject feed(const Feed& f) const {
        return {{"colony", name(f.colony)}, {"short_kg", tenths(f.shortTenthsKg)}, {"litres", f.halfLitres / 2.0}};
    }

    QJsonObject caution(const ColonyCaution& c) const {
        return {{"colony", name(c.colony)}, {"kind", cautionWord(c.caution.kind)}, {"because", c.caution.because}};
    }

    QJsonObject divide(const Divide& d) const {
        return {{"colony", name(d.colony)},
                {"parts", d.parts},
                {"frames", frames(d.frames)},
                {"brood_frames", d.broodFrames}};
    }

    QJsonObject due(const Due& d) const {
        return {{"colony", name(d.colony)}, {"what", dueWord(d.what)}, {"on", isoText(d.on)}};
    }

    /// An array of rows, each written by one of the above.
    template <class T, class R> QJsonArray list(const std::vector<T>& rows, R (Writer::*write)(const T&) const) const {
        return arrayOf(rows, [&](const T& row) { return (this->*write)(row); });
    }

private:
    const Snapshot& m_s;
};

QJsonObject totals(const Totals& t) {
    return {{"colonies", t.colonies},           {"unions", t.unions},
            {"shake_outs", t.shakeOuts},        {"gain", t.gain},
            {"expected_as_is", t.expectedAsIs}, {"expected_planned", t.expectedPlanned},
            {"boxes_freed", t.boxesFreed}};
}

} // namespace

QJsonObject planJson(const Snapshot& s, const Plan& plan) {
    const Writer w(s);
    QJsonArray separate;
    for (const Separate& apart : plan.separate) separate.append(w.separate(apart.colony));
    return {{"on", isoText(plan.on)},
            {"yards", arrayOf(plan.yards, [&](YardIx yard) { return s.yard(yard).name; })},
            {"holds", w.list(plan.holds, &Writer::hold)},
            {"unite", w.list(plan.unions, &Writer::unite)},
            {"shake_out", w.list(plan.shakeOuts, &Writer::shakeOut)},
            {"separate", separate},
            {"alone", w.list(plan.alone, &Writer::alone)},
            {"unresolved", w.list(plan.unresolved, &Writer::unresolved)},
            {"order_boxes", w.list(plan.boxOrder, &Writer::boxOrder)},
            {"feed", w.list(plan.feed, &Writer::feed)},
            {"cautions", w.list(plan.cautions, &Writer::caution)},
            {"divide", w.list(plan.divides, &Writer::divide)},
            {"due", w.list(plan.due, &Writer::due)},
            {"totals", totals(plan.totals)}};
}

QJsonObject dueJson(const Snapshot& s, const std::vector<Due>& due) {
    return {{"on", isoText(s.on)}, {"due", Writer(s).list(due, &Writer::due)}};
}

} // namespace core::report
