#include "tests/rules/plan_digest.h"

namespace tests::rules {

using namespace core;
using namespace core::rules;

namespace {

class Digest {
public:
    Digest(const Snapshot& s, const Plan& plan, const std::map<QString, QString>& names)
        : m_s(s), m_plan(plan), m_names(names) {}

    QStringList lines() {
        addHolds();
        for (const Union& u : m_plan.unions) addUnion(u);
        for (const ShakeOut& so : m_plan.shakeOuts) addShakeOut(so);
        for (const Separate& separate : m_plan.separate) add({"separate", name(separate.colony)});
        for (const Alone& a : m_plan.alone)
            add({"alone", name(a.colony), framesText(a.frames), classWord(a.strengthClass), a.atRisk ? "at risk" : ""});
        for (const UnresolvedColony& u : m_plan.unresolved) add({"unresolved", name(u.colony), unresolvedWord(u.why)});
        addOthers();
        const Totals& t = m_plan.totals;
        add({"totals", number(t.colonies), number(t.unions), number(t.shakeOuts), number(t.gain),
             number(t.expectedAsIs), number(t.expectedPlanned), number(t.boxesFreed)});
        return m_lines;
    }

private:
    void add(const QStringList& cells) { m_lines << cells.join(u' '); }
    static QString number(qint64 n) { return QString::number(n); }

    QString name(ColonyIx c) const { return called(m_s.colony(c).shown); }
    QString called(const QString& word) const {
        const auto found = m_names.find(word);
        return found == m_names.end() ? word : found->second;
    }

    static QString words(const std::vector<Caution>& cautions) {
        QStringList out;
        for (const Caution& c : cautions) out << cautionWord(c.kind);
        return out.join(u'+');
    }

    void addHolds() {
        for (const Hold& hold : m_plan.holds) {
            QStringList cells{"hold", name(hold.colony), holdWord(hold.kind)};
            for (const ColonyIx source : hold.sources) cells << name(source);
            add(cells);
        }
    }

    void addUnion(const Union& u) {
        QStringList cells{"union",
                          called(m_s.yard(u.yard).name),
                          number(u.order),
                          name(u.moved),
                          name(u.host),
                          name(u.lower),
                          name(u.upper),
                          framesText(u.movedFrames),
                          framesText(u.hostFrames),
                          framesText(u.frames),
                          queenPlanWord(u.queen),
                          number(u.carryTenths),
                          number(u.gain),
                          words(u.cautions),
                          u.pinned ? "pinned" : "",
                          number(u.steps.size())};
        for (const ColonyIx c : u.consolidate) cells << name(c);
        add(cells);
    }

    void addShakeOut(const ShakeOut& so) {
        add({"shake-out", called(m_s.yard(so.yard).name), name(so.colony), name(so.into),
             so.intoUnion ? "union" : "colony", framesText(so.frames), number(so.carryTenths),
             so.removeQueen ? "remove" : "none", words(so.cautions)});
    }

    void addOthers() {
        for (const BoxOrderAdvice& b : m_plan.boxOrder) add({"boxes", name(b.colony), boxActionWord(b.action)});
        for (const Feed& f : m_plan.feed)
            add({"feed", name(f.colony), number(f.shortTenthsKg), number(f.halfLitres), number(f.shortMillionthsKg)});
        for (const ColonyCaution& c : m_plan.cautions) add({"caution", name(c.colony), cautionWord(c.caution.kind)});
        for (const Divide& d : m_plan.divides)
            add({"divide", name(d.colony), number(d.parts), framesText(d.frames), number(d.broodFrames)});
        for (const Due& d : m_plan.due) add({"due", name(d.colony), dueWord(d.what), number(d.on - m_plan.on)});
    }

    const Snapshot& m_s;
    const Plan& m_plan;
    const std::map<QString, QString>& m_names;
    QStringList m_lines;
};

QString placeText(MmPoint p) { return QString::number(p.x) + u' ' + QString::number(p.y); }

} // namespace

QStringList digestOf(const Snapshot& s, const Plan& plan, const std::map<QString, QString>& names) {
    return Digest(s, plan, names).lines();
}

QStringList sentencesOf(const Plan& plan) {
    QStringList out;
    const auto addAll = [&](const std::vector<Caution>& cautions) {
        for (const Caution& c : cautions) out << c.because;
    };
    for (const Hold& hold : plan.holds) out << hold.because();
    for (const Union& u : plan.unions) {
        out << u.because << u.steps << u.stand << placeText(u.from) << placeText(u.to);
        out << QString::number(u.headingDeg);
        addAll(u.cautions);
    }
    for (const ShakeOut& so : plan.shakeOuts) {
        out << so.because << placeText(so.from) << placeText(so.to);
        addAll(so.cautions);
    }
    for (const BoxOrderAdvice& b : plan.boxOrder) out << b.because;
    for (const ColonyCaution& c : plan.cautions) out << c.caution.because;
    return out;
}

} // namespace tests::rules
