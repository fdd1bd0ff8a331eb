#include "ui/board/board_rows.h"

#include "core/rules/calc/feeding.h"
#include "core/rules/finding_words.h"
#include "core/rules/laying_workers.h"
#include "core/rules/left_over.h"
#include "ui/board/asked_rows.h"
#include "ui/board/boards.h"
#include "ui/card/card_figures.h"
#include "ui/look/rule_words.h"
#include "ui/look/words.h"
#include "ui/spring/spring_words.h"

#include <algorithm>

namespace ui::board {

namespace {

namespace rules = core::rules;

class Writer {
public:
    Writer(const desk::Reading& reading, core::YardIx yard, bool mayAsk)
        : m_r(reading), m_plan(reading.plan), m_yard(yard), m_asks(reading, yard, mayAsk) {}

    std::vector<BoardRow> all() {
        holds();
        unions();
        shakeOuts();
        asked();
        separate();
        unresolved();
        boxOrder();
        feed();
        divides();
        due();
        alone();
        cautions();
        mites();
        if (m_rows.empty()) note(Boards::tr("Nothing is to be done in this yard on this day."));
        note(Boards::tr("The program only advises. Local apiary law, inspectors, veterinarians and labels decide; two "
                        "people or a barrow for a full box."));
        return std::move(m_rows);
    }

private:
    /// An ended colony, of which a result is still awaited, is where it stood last.
    bool here(core::ColonyIx c) const {
        if (static_cast<size_t>(c.value) < m_r.facts.size()) return m_r.factsOf(c).yard == m_yard;
        const core::SnapStay* last = m_r.snapshot.placeOf(c);
        return last && last->yard == m_yard;
    }
    QString name(core::ColonyIx c) const { return m_r.snapshot.colony(c).shown; }
    core::ColonyId id(core::ColonyIx c) const { return m_r.snapshot.colony(c).id; }

    void section(const QString& title, size_t count) {
        BoardRow row;
        row.kind = RowKind::Section;
        row.title = title;
        if (count > 1) row.right = QString::number(count);
        m_rows.push_back(row);
    }
    void note(const QString& text) {
        BoardRow row;
        row.kind = RowKind::Note;
        row.lines << text;
        m_rows.push_back(row);
    }
    void line(core::ColonyIx colony, const QString& title, const QString& right, const rules::Reason& why,
              const QStringList& lines = {}, const QStringList& cautions = {}) {
        BoardRow row;
        row.colony = id(colony);
        row.title = title;
        row.right = right;
        row.lines = lines;
        row.cautions = cautions;
        row.why = why;
        m_rows.push_back(row);
    }
    template <class T, class Fn> std::vector<T> ours(const std::vector<T>& from, Fn colonyOf) const {
        std::vector<T> out;
        std::ranges::copy_if(from, std::back_inserter(out), [&](const T& t) { return here(colonyOf(t)); });
        return out;
    }
    /// The sentences of a finding, a line each.
    template <class T> QStringList sentences(const T& finding) const {
        QStringList out;
        for (const rules::Sentence& s : sentencesOf(m_r.snapshot, finding)) out << rules::textOf({s});
        return out;
    }
    static QStringList reasons(const std::vector<rules::Caution>& cautions) {
        QStringList out;
        for (const rules::Caution& c : cautions) out << c.because;
        return out;
    }

    void holds() {
        const auto found = ours(m_plan.holds, [](const rules::Hold& h) { return h.colony; });
        if (!found.empty()) section(Boards::tr("Do not unite"), 0);
        for (const rules::Hold& h : found) m_rows.push_back(holdRow(m_r.snapshot, h));
    }

    void unions() {
        const auto found = ours(m_plan.unions, [](const rules::Union& u) { return u.host; });
        if (!found.empty()) section(Boards::tr("Unite, in this order"), 0);
        for (const rules::Union& u : found) {
            BoardRow row;
            row.kind = RowKind::Union;
            row.colony = id(u.host);
            row.other = id(u.moved);
            row.order = u.order;
            row.title = Boards::tr("%1 → %2").arg(name(u.moved), name(u.host));
            row.right = look::framesOf(u.frames);
            if (!u.because.isEmpty()) row.lines << u.because.front();
            row.more = u.because.mid(1);
            for (qsizetype i = 0; i < u.steps.size(); ++i) row.more << Boards::tr("%1. %2").arg(i + 1).arg(u.steps[i]);
            row.cautions = reasons(u.cautions);
            row.why = u.why;
            m_asks.addToUnion(row);
            m_rows.push_back(row);
        }
    }

    void shakeOuts() {
        const auto found = ours(m_plan.shakeOuts, [](const rules::ShakeOut& s) { return s.colony; });
        if (!found.empty()) section(Boards::tr("Shake out"), 0);
        for (const rules::ShakeOut& s : found) {
            line(s.colony, Boards::tr("%1 before %2").arg(name(s.colony), name(s.into)),
                 look::distanceOf(s.from, s.to, m_r.snapshot.settings.showLength), s.why, {s.because},
                 reasons(s.cautions));
            m_asks.addToColony(m_rows.back());
        }
    }

    void asked() {
        const auto found = m_asks.rows();
        if (!found.empty()) section(Boards::tr("As you asked"), found.size());
        m_rows.insert(m_rows.end(), found.begin(), found.end());
    }

    void separate() {
        const auto found = ours(m_plan.separate, [](const rules::Separate& s) { return s.colony; });
        if (!found.empty()) section(Boards::tr("Laying workers: another procedure"), 0);
        for (const rules::Separate& s : found) {
            line(s.colony, name(s.colony), {}, s.why, sentences(s));
            for (const rules::Procedure& part : rules::layingWorkerProcedure())
                for (const rules::Sentence& sentence : part.sentences) m_rows.back().more << rules::textOf({sentence});
        }
    }

    void unresolved() {
        const auto found = ours(m_plan.unresolved, [](const rules::UnresolvedColony& u) { return u.colony; });
        if (!found.empty()) section(Boards::tr("Not settled"), 0);
        for (const rules::UnresolvedColony& u : found) {
            const auto& f = m_r.factsOf(u.colony);
            QString why = look::unresolvedText(u.why);
            if (u.why == rules::Unresolved::CountOld && f.counted)
                why = Boards::tr("counted last on %1").arg(look::dayText(*f.counted));
            line(u.colony, name(u.colony), why, u.reason, sentences(u));
            if (u.why == rules::Unresolved::NoPartner)
                m_rows.back().more << rules::textOf(rules::queenTroubleWays(m_plan.on));
            m_asks.addToColony(m_rows.back());
        }
    }

    void boxOrder() {
        const auto found = ours(m_plan.boxOrder, [](const rules::BoxOrderAdvice& b) { return b.colony; });
        if (!found.empty()) section(Boards::tr("Boxes"), 0);
        for (const rules::BoxOrderAdvice& b : found)
            line(b.colony, name(b.colony),
                 b.action == rules::BoxAction::HeavierOnTop ? Boards::tr("heavier box on top")
                                                            : Boards::tr("swap the boxes"),
                 b.why, {b.because});
    }

    void feed() {
        const auto found = ours(m_plan.feed, [](const rules::Feed& f) { return f.colony; });
        const core::ShownUnits units = m_r.snapshot.settings.shown();
        if (!found.empty()) section(Boards::tr("Feed, syrup 2 : 1 by mass"), 0);
        for (const rules::Feed& f : found)
            line(f.colony, name(f.colony),
                 Boards::tr("%1, short of %2")
                     .arg(look::feedOf(f.halfLitres, units.volume),
                          look::shortWeightOf(f.shortMillionthsKg, units.weight)),
                 f.why, sentences(f) << mixText(f));
    }

    void divides() {
        const auto found = ours(m_plan.divides, [](const rules::Divide& d) { return d.colony; });
        if (!found.empty()) section(Boards::tr("Could be divided (an assumption)"), 0);
        for (const rules::Divide& d : found)
            line(d.colony, name(d.colony),
                 Boards::tr("into %1, from %2 and %3 of brood")
                     .arg(QString::number(d.parts), look::framesOf(d.frames), QString::number(d.broodFrames)),
                 d.why, sentences(d));
    }

    void due() {
        const auto found = ours(m_plan.due, [](const rules::Due& d) { return d.colony; });
        if (!found.empty()) section(Boards::tr("Due"), 0);
        for (const rules::Due& d : found)
            line(d.colony, Boards::tr("%1: %2").arg(name(d.colony), look::dueText(d.what)), look::shortDayText(d.on),
                 d.why, sentences(d));
        const auto looks = ours(m_r.divideDue, [](const rules::DivideDue& d) { return d.colony; });
        if (found.empty() && !looks.empty()) section(Boards::tr("Due"), 0);
        for (const rules::DivideDue& d : looks)
            line(d.colony, Boards::tr("%1: %2").arg(name(d.colony), spring::checkText(d.date.what)),
                 look::shortDayText(d.date.look), {},
                 {Boards::tr("Divided from %1 on %2.").arg(name(d.mother), look::dayText(d.divided)),
                  rules::textOf({sentenceOf(d.date)})});
    }

    void alone() {
        const auto found = ours(m_plan.alone, [](const rules::Alone& a) { return a.colony; });
        const bool fall = rules::beforeWinter(m_r.snapshot, m_yard);
        if (!found.empty()) section(fall ? Boards::tr("Alone through the winter") : Boards::tr("Left as they are"), 0);
        for (const rules::Alone& a : found) {
            const QString what = Boards::tr("%1, %2").arg(look::framesOf(a.frames), look::classText(a.strengthClass));
            line(a.colony, name(a.colony), a.atRisk && fall ? Boards::tr("%1, at risk").arg(what) : what, a.why,
                 sentences(a));
            m_rows.back().atRisk = a.atRisk && fall;
            m_asks.addToColony(m_rows.back());
        }
    }

    void cautions() {
        const auto found = ours(m_plan.cautions, [](const rules::ColonyCaution& c) { return c.colony; });
        if (!found.empty()) section(Boards::tr("Cautions besides"), 0);
        for (const rules::ColonyCaution& c : found)
            line(c.colony, name(c.colony), {}, c.caution.why, {}, {c.caution.because});
    }

    /// Sugar and water for what is short (core/rules/calc/feeding.h).
    QString mixText(const rules::Feed& f) const {
        const core::WeightUnit unit = m_r.snapshot.settings.showWeight;
        const auto mix = rules::calc::feedingFor(static_cast<double>(f.shortMillionthsKg) / 1e6, rules::calc::Mix{});
        const auto shown = [unit](double kg) { return QString::number(kg / core::kilogramsIn(unit), 'f', 1); };
        return Boards::tr(
                   "For what is short: %1 %3 of sugar and %2 %3 of water (stores of 18 % water and nothing lost: an "
                   "assumption).")
            .arg(shown(mix.sugarKg), shown(mix.waterKg), core::unitSign(unit));
    }

    void mites() {
        const QString text = card::yardMitesText(m_r, m_yard);
        if (text.isEmpty()) return;
        note(text);
        m_rows.back().tip = card::yardMitesSource();
    }

    const desk::Reading& m_r;
    const rules::Plan& m_plan;
    core::YardIx m_yard;
    AskedRows m_asks;
    std::vector<BoardRow> m_rows;
};

} // namespace

QString BoardRow::spoken() const {
    QStringList parts;
    if (kind == RowKind::Union) parts << Boards::tr("Union %1").arg(order);
    if (kind == RowKind::Hold) parts << Boards::tr("Hold %1").arg(mark);
    if (!title.isEmpty()) parts << title;
    if (!askedText.isEmpty()) parts << askedText;
    if (!right.isEmpty()) parts << right;
    parts << lines << cautions << more;
    if (!rules.isEmpty()) parts << rules;
    return parts.join(QStringLiteral(". "));
}

BoardRow holdRow(const core::Snapshot& s, const rules::Hold& hold) {
    BoardRow row;
    row.kind = RowKind::Hold;
    row.colony = s.colony(hold.colony).id;
    row.mark = QString(rules::holdLetter(hold.kind));
    row.title = Boards::tr("%1: %2").arg(s.colony(hold.colony).shown, look::holdWithin(hold.kind));
    row.lines << hold.told;
    row.more << hold.lift;
    row.why = hold.why;
    return row;
}

std::vector<BoardRow> boardRows(const desk::Reading& reading, core::YardIx yard, bool mayAsk) {
    return Writer(reading, yard, mayAsk).all();
}

QString expectedText(const desk::Reading& reading, core::YardIx) {
    const rules::Totals& t = reading.plan.totals;
    if (t.unions + t.shakeOuts == 0) return {};
    return Boards::tr("Expected in spring, all yards: %1 colonies as it is, %2 as planned (value tables are an "
                      "assumption).")
        .arg(look::coloniesText(t.expectedAsIs), look::coloniesText(t.expectedPlanned));
}

} // namespace ui::board
