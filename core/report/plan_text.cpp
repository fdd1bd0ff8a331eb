#include "core/report/plan_text.h"

#include "core/rules/finding_words.h"
#include "core/rules/limits.h"

#include <QStringList>
#include <QTextStream>

#include <algorithm>

namespace core::report {

using namespace rules;

namespace {

QString item(const QString& text) { return QLatin1StringView("  ") + text; }
QString detail(const QString& text) { return QLatin1StringView("      ") + text; }
QString tenthsText(qint64 tenths) { return decimalText(tenths, 1); }

QString volumeWord(VolumeUnit unit) {
    return unit == VolumeUnit::Quarts ? QStringLiteral("US quarts") : QStringLiteral("litres");
}

QString thousandths(qint64 value) {
    return QStringLiteral("%1.%2").arg(value / 1000).arg(value % 1000, 3, 10, QLatin1Char('0'));
}

QString whyUnresolved(Unresolved why) {
    switch (why) {
    case Unresolved::NoCount:
        return QStringLiteral("its bees are not counted");
    case Unresolved::CountOld:
        return QStringLiteral("its count of bees is too old");
    case Unresolved::NoBees:
        return QStringLiteral("no bees were seen at its last count");
    case Unresolved::NoHost:
        return QStringLiteral("to be shaken out, but no colony can take it");
    case Unresolved::NoPartner:
        break;
    }
    return QStringLiteral("lacks a queen, and no union fits");
}

QString whatIsDue(DueKind what) {
    switch (what) {
    case DueKind::UnionCheck:
        return QStringLiteral("look at the union");
    case DueKind::TakeOut:
        return QStringLiteral("take the treatment out");
    case DueKind::ResultAwaited:
        break;
    }
    return QStringLiteral("a result on American foulbrood is awaited");
}

QStringList dueLines(const Snapshot& s, const std::vector<Due>& due) {
    QStringList out;
    for (const Due& d : due)
        out += item(QStringLiteral("%1  %2: %3").arg(isoText(d.on), s.colony(d.colony).shown, whatIsDue(d.what)));
    return out;
}

class PlanWriter {
public:
    PlanWriter(QTextStream& out, const Snapshot& s, const Plan& plan)
        : m_out(out), m_s(s), m_plan(plan), m_units(s.settings.shown()) {}

    void write() {
        m_out << title();
        section("Held: do not unite, shake out or divide", &PlanWriter::holds);
        section("Unite, in this order", &PlanWriter::unions);
        section("Shake out", &PlanWriter::shakeOuts);
        section("Keep apart", &PlanWriter::separate);
        section("Leave alone", &PlanWriter::alone);
        section("Not decided", &PlanWriter::unresolved);
        section("Order of boxes", &PlanWriter::boxOrder);
        section("Feed, syrup of two parts of sugar to one of water by mass", &PlanWriter::feed);
        section("Divide (what a part needs is an assumption)", &PlanWriter::divides);
        section("Mind", &PlanWriter::cautions);
        section("Due", &PlanWriter::due);
        m_out << sums() << deference();
    }

private:
    /// Lines under a heading, which is left out where there are none.
    void section(const char* heading, void (PlanWriter::*lines)()) {
        m_heading = heading;
        (this->*lines)();
    }
    void line(const QString& text) {
        if (m_heading) m_out << '\n' << m_heading << '\n';
        m_heading = nullptr;
        m_out << text << '\n';
    }

    const QString& name(ColonyIx c) const { return m_s.colony(c).shown; }

    QString title() const {
        QStringList yards;
        for (const YardIx yard : m_plan.yards) yards += m_s.yard(yard).name;
        return QStringLiteral("Plan for %1, %2\n").arg(isoText(m_plan.on), yards.join(QLatin1StringView(", ")));
    }

    void holds() {
        for (const Hold& h : m_plan.holds)
            line(item(QStringLiteral("%1  %2: %3").arg(name(h.colony), holdWord(h.kind), h.because())));
    }

    void addCautions(const std::vector<Caution>& cautions) {
        for (const Caution& c : cautions) line(detail(QStringLiteral("! %1: %2").arg(cautionWord(c.kind), c.because)));
    }

    void unions() {
        for (const Union& u : m_plan.unions) {
            line(item(QStringLiteral("%1 %2. %3 → %4 on stand %5, %6 %7, gain %8")
                          .arg(m_s.yard(u.yard).name)
                          .arg(u.order)
                          .arg(name(u.moved), name(u.host), u.stand,
                               tenthsText(distanceTenths(u.from, u.to, m_units.length)), unitSign(m_units.length))
                          .arg(u.gain)));
            for (const QString& why : u.because) line(detail(why));
            for (const QString& step : u.steps) line(detail(QLatin1StringView("- ") + step));
            addCautions(u.cautions);
        }
    }

    void shakeOuts() {
        for (const ShakeOut& shaken : m_plan.shakeOuts) {
            line(item(QStringLiteral("%1 → %2: %3").arg(name(shaken.colony), name(shaken.into), shaken.because)));
            addCautions(shaken.cautions);
        }
    }

    void separate() {
        for (const Separate& apart : m_plan.separate)
            line(item(
                QStringLiteral("%1: laying workers; a way of its own, no ordinary union").arg(name(apart.colony))));
    }

    template <class T> QString words(const T& finding) const { return rules::textOf(sentencesOf(m_s, finding)); }

    void alone() {
        for (const Alone& a : m_plan.alone) {
            line(item(QStringLiteral("%1: %2 frames, %3%4")
                          .arg(name(a.colony), framesText(a.frames), classWord(a.strengthClass),
                               a.atRisk ? QStringLiteral(", at risk") : QString())));
            if (a.atRisk) line(detail(words(a)));
        }
    }

    void unresolved() {
        for (const UnresolvedColony& u : m_plan.unresolved)
            line(item(QStringLiteral("%1: %2. %3").arg(name(u.colony), whyUnresolved(u.why), words(u))));
    }

    void boxOrder() {
        for (const BoxOrderAdvice& b : m_plan.boxOrder)
            line(item(QStringLiteral("%1: %2. %3")
                          .arg(name(b.colony),
                               b.action == BoxAction::Reverse ? QStringLiteral("reverse the boxes")
                                                              : QStringLiteral("the heavier box on top"),
                               b.because)));
    }

    void feed() {
        for (const Feed& f : m_plan.feed) {
            line(
                item(QStringLiteral("%1: %2 %3 (%4 %5 short)")
                         .arg(name(f.colony), tenthsText(feedTenths(f.halfLitres, m_units.volume)),
                              volumeWord(m_units.volume), tenthsText(weightTenths(f.shortMillionthsKg, m_units.weight)),
                              unitSign(m_units.weight))));
            line(detail(words(f)));
        }
    }

    void divides() {
        for (const Divide& d : m_plan.divides) {
            line(item(QStringLiteral("%1: into %2 (%3 frames of bees, %4 of brood)")
                          .arg(name(d.colony))
                          .arg(d.parts)
                          .arg(framesText(d.frames))
                          .arg(d.broodFrames)));
            line(detail(words(d)));
        }
    }

    void cautions() {
        for (const ColonyCaution& c : m_plan.cautions)
            line(
                item(QStringLiteral("%1  %2: %3").arg(name(c.colony), cautionWord(c.caution.kind), c.caution.because)));
    }

    void due() {
        for (const QString& text : dueLines(m_s, m_plan.due)) line(text);
    }

    QString sums() const {
        const Totals& t = m_plan.totals;
        return QStringLiteral(
                   "\n%1 colonies; unions %2, shake-outs %3, boxes that come free %4.\n"
                   "Expected in spring: %5 colonies as they stand, %6 by this plan; the unions gain %7 less "
                   "their carries.\nThese figures rest on value tables that are an assumption, not on your own "
                   "winters.\n")
            .arg(t.colonies)
            .arg(t.unions)
            .arg(t.shakeOuts)
            .arg(t.boxesFreed)
            .arg(thousandths(t.expectedAsIs), thousandths(t.expectedPlanned), thousandths(t.gain));
    }

    QString deference() const {
        return QStringLiteral("This is advice. Apiary law, inspectors, veterinarians and labels decide.\n");
    }

    QTextStream& m_out;
    const char* m_heading = nullptr; ///< of the section, until its first line
    const Snapshot& m_s;
    const Plan& m_plan;
    const ShownUnits m_units;
};

} // namespace

void writePlanText(QTextStream& out, const Snapshot& s, const Plan& plan) { PlanWriter(out, s, plan).write(); }

QString planText(const Snapshot& s, const Plan& plan) {
    QString text;
    QTextStream out(&text);
    writePlanText(out, s, plan);
    return text;
}

QString dueText(const Snapshot& s, const std::vector<Due>& due) {
    if (due.empty()) return QStringLiteral("Nothing is due on %1.\n").arg(isoText(s.on));
    return QStringLiteral("Due on %1:\n").arg(isoText(s.on)) + dueLines(s, due).join(QLatin1Char('\n')) +
           QLatin1Char('\n');
}

namespace {

/// "by gain.min 50 thousandths (assumption)", a line a limit.
void addLimits(const Settings& settings, const Reason& why, QStringList& lines) {
    for (const Limit& limit : limitsOf(settings, why)) {
        const QString name = limit.isSetting ? limit.name : QStringLiteral("fixed by the rule:");
        lines += detail(QStringLiteral("by %1 %2 (%3)").arg(name, limit.value, limit.source));
    }
}

} // namespace

QString explanationText(const Settings& settings, const Explanation& explanation) {
    QStringList lines{explanation.summary};
    addLimits(settings, explanation.why, lines);
    for (const Objection& o : explanation.objections) {
        lines += item(o.rule + QLatin1StringView(": ") + o.because);
        addLimits(settings, o.why, lines);
    }
    const bool gainSaid = std::any_of(explanation.objections.begin(), explanation.objections.end(),
                                      [](const Objection& o) { return o.rule == QLatin1StringView("4.7.10"); });
    if (!explanation.objections.empty() && !gainSaid && explanation.gain)
        lines += item(QStringLiteral("The gain would be %1 thousandths of a spring colony (by value tables that are an "
                                     "assumption).")
                          .arg(*explanation.gain));
    return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

} // namespace core::report
