#include "ui/spring/divide_lines.h"

#include "ui/spring/spring_words.h"

#include <QStringList>

#include <algorithm>

namespace ui::spring {

namespace rules = core::rules;

namespace {

QString shownOutcome(core::StripOutcome outcome) {
    switch (outcome) {
    case core::StripOutcome::Done:
        return Spring::tr("divided");
    case core::StripOutcome::NotDone:
        return Spring::tr("not divided");
    case core::StripOutcome::Changed:
        break;
    }
    return Spring::tr("done otherwise");
}

class Writer {
public:
    Writer(const desk::Desk& desk, DivideDay& out) : m_desk(desk), m_r(desk.reading()), m_out(out) {}

    void write(core::YardId yard) {
        const auto ix = m_r.find(yard);
        if (!ix) return;
        if (const auto* wish = m_r.wishOf(yard)) {
            m_out.variant = wish->day.variant;
            m_out.queens = wish->day.queens;
            m_out.choices = wish->divides;
            strips(wish->day.id);
        }
        const auto stands = m_desk.session().standsOf(yard);
        for (const rules::DivideWork& work : rules::divideWork(m_r.snapshot, m_r.plan, *ix, stands)) planned(work);
        for (const core::DivideChoice& choice : m_out.choices)
            if (choice.parts < 2 && !has(choice.colony)) whole(choice, *ix);
        std::ranges::move(m_written, std::back_inserter(m_out.lines));
    }

private:
    void strips(core::MergeDayId day) {
        for (const core::DivideStrip& strip : m_desk.session().divideStripsOf(day)) {
            if (!strip.outcome) continue;
            m_out.closed = true;
            DivideLine line;
            line.colony = strip.colony;
            line.label = labelOf(strip.colony);
            line.parts = line.most = strip.parts;
            line.outcome = strip.outcome;
            line.note = strip.note;
            line.text = shownOutcome(*strip.outcome);
            if (*strip.outcome == core::StripOutcome::Done)
                line.text = Spring::tr("%1, queens: %2").arg(line.text, queensText(strip.queens));
            if (!strip.note.isEmpty()) line.text += QStringLiteral(" – ") + strip.note;
            m_written.push_back(std::move(line));
        }
    }
    void planned(const rules::DivideWork& work) {
        DivideLine line;
        line.colony = m_r.snapshot.colony(work.divide.colony).id;
        if (written(line.colony)) return;
        line.label = m_r.snapshot.colony(work.divide.colony).shown;
        line.parts = work.divide.parts;
        line.most = work.divide.most;
        line.places = work.places;
        line.at = m_r.snapshot.placeOf(work.divide.colony)->at;
        QStringList places;
        for (const rules::NewPlace& place : work.places)
            places << placeText(place, line.at, m_r.snapshot.settings.showLength);
        const QString parts = QString::number(line.parts), most = QString::number(line.most);
        const QString where = places.join(QStringLiteral("; "));
        line.text = line.parts < line.most ? Spring::tr("into %1 (%2 can be): %3").arg(parts, most, where)
                                           : Spring::tr("into %1: %2").arg(parts, where);
        line.note = noteOf(line.colony);
        m_out.lines.push_back(std::move(line));
    }
    void whole(const core::DivideChoice& choice, core::YardIx yard) {
        const auto ix = m_r.find(choice.colony);
        if (!ix || m_r.factsOf(*ix).yard != yard || written(choice.colony)) return;
        DivideLine line;
        line.colony = choice.colony;
        line.label = m_r.snapshot.colony(*ix).shown;
        line.note = choice.note;
        line.text = choice.note.isEmpty() ? Spring::tr("left whole") : Spring::tr("left whole: %1").arg(choice.note);
        m_out.lines.push_back(std::move(line));
    }
    bool has(core::ColonyId colony) const {
        return std::ranges::find(m_out.lines, colony, &DivideLine::colony) != m_out.lines.end();
    }
    bool written(core::ColonyId colony) const {
        return std::ranges::find(m_written, colony, &DivideLine::colony) != m_written.end();
    }
    QString noteOf(core::ColonyId colony) const {
        const auto at = std::ranges::find(m_out.choices, colony, &core::DivideChoice::colony);
        return at == m_out.choices.end() ? QString() : at->note;
    }
    QString labelOf(core::ColonyId colony) const {
        if (const auto ix = m_r.find(colony)) return m_r.snapshot.colony(*ix).shown;
        const auto row = m_desk.session().colony(colony);
        return row ? row->label : QString();
    }

    const desk::Desk& m_desk;
    const desk::Reading& m_r;
    DivideDay& m_out;
    std::vector<DivideLine> m_written;
};

core::edit::DividesAsked askedOf(const desk::Desk& desk, const DivideDay& day) {
    return {desk.yard().value_or(core::YardId{}), desk.day(), day.variant, day.queens, day.choices};
}

} // namespace

DivideDay divideDay(const desk::Desk& desk) {
    DivideDay day;
    if (desk.yard()) Writer(desk, day).write(*desk.yard());
    return day;
}

core::edit::DividesAsked withParts(const desk::Desk& desk, const DivideDay& day, const DivideLine& line, int parts) {
    core::edit::DividesAsked asked = askedOf(desk, day);
    std::erase_if(asked.choices, [&](const core::DivideChoice& x) { return x.colony == line.colony; });
    const bool asTheRule = parts > 1 && (line.leftWhole() || parts >= line.most);
    if (!asTheRule) asked.choices.push_back({{}, {}, line.colony, parts, line.note});
    return asked;
}

core::edit::DividesAsked withQueens(const desk::Desk& desk, const DivideDay& day,
                                    std::optional<core::DivideQueens> queens) {
    core::edit::DividesAsked asked = askedOf(desk, day);
    asked.queens = queens;
    return asked;
}

} // namespace ui::spring
