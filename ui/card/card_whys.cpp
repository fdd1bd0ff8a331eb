#include "ui/card/card_whys.h"

#include "core/rules/finding_words.h"
#include "core/rules/given_up.h"
#include "ui/look/reason_text.h"
#include "ui/look/rule_words.h"

#include <QCoreApplication>

namespace ui::card {

namespace {

namespace rules = core::rules;

struct Whys {
    Q_DECLARE_TR_FUNCTIONS(Whys)
};

class Writer {
public:
    Writer(const desk::Reading& reading, core::ColonyIx colony)
        : m_r(reading), m_s(reading.snapshot), m_colony(colony) {}

    std::vector<WhyText> all() {
        addUnions();
        addLeftOver();
        for (const rules::BoxOrderAdvice& b : m_r.plan.boxOrder)
            if (b.colony == m_colony) add(Whys::tr("Boxes"), b.because, b.why);
        for (const rules::Feed& f : m_r.plan.feed)
            if (f.colony == m_colony) add(Whys::tr("Feed"), textOf(sentencesOf(m_s, f)), f.why);
        for (const rules::Divide& d : m_r.plan.divides)
            if (d.colony == m_colony) add(Whys::tr("Divide"), textOf(sentencesOf(m_s, d)), d.why);
        for (const rules::Due& d : m_r.plan.due)
            if (d.colony == m_colony) add(look::dueText(d.what), textOf(sentencesOf(m_s, d)), d.why);
        addSaidElsewhere();
        return std::move(m_whys);
    }

private:
    void add(const QString& title, const QString& text, const rules::Reason& why) {
        m_whys.push_back({text, title, look::rulesText(m_s, why), look::reasonTip(m_s, why)});
    }

    void addUnions() {
        if (const rules::Union* u = m_r.unionOf(m_colony)) add(Whys::tr("Union"), u->because.mid(0, 2).join(u' '), u->why);
        for (const rules::ShakeOut& o : m_r.plan.shakeOuts)
            if (o.colony == m_colony) add(Whys::tr("Shake-out"), o.because, o.why);
    }

    void addLeftOver() {
        for (const rules::Alone& a : m_r.plan.alone) {
            if (a.colony != m_colony) continue;
            QString text = textOf(sentencesOf(m_s, a));
            if (a.atRisk) text += u' ' + givenUpText(m_r, m_colony);
            add(a.atRisk ? Whys::tr("Alone, at risk") : Whys::tr("Alone"), text, a.why);
        }
        for (const rules::UnresolvedColony& u : m_r.plan.unresolved)
            if (u.colony == m_colony) add(Whys::tr("Not settled"), textOf(sentencesOf(m_s, u)), u.reason);
        for (const rules::Separate& s : m_r.plan.separate)
            if (s.colony == m_colony) add(Whys::tr("Kept apart"), textOf(sentencesOf(m_s, s)), s.why);
    }

    void addSaidElsewhere() {
        for (const rules::Hold& h : m_r.holdsOf(m_colony)) add(look::holdTitle(h.kind), {}, h.why);
        for (const rules::ColonyCaution& c : m_r.plan.cautions)
            if (c.colony == m_colony) add(Whys::tr("Caution"), {}, c.caution.why);
    }

    const desk::Reading& m_r;
    const core::Snapshot& m_s;
    core::ColonyIx m_colony;
    std::vector<WhyText> m_whys;
};

} // namespace

std::vector<WhyText> whysOf(const desk::Reading& reading, core::ColonyIx colony) {
    return Writer(reading, colony).all();
}

QString givenUpText(const desk::Reading& r, core::ColonyIx colony) {
    const auto given = rules::givenUp(r.snapshot, r.facts, r.plan, {colony});
    return given.empty() ? QString() : textOf(sentencesOf(r.snapshot, given.front()));
}

} // namespace ui::card
