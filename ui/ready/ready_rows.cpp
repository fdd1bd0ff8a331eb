#include "ui/ready/ready_rows.h"

#include "core/rules/consolidation.h"
#include "ui/look/words.h"
#include "ui/ready/load_rows.h"

#include <algorithm>
#include <set>

namespace ui::ready {

using board::BoardRow;
using board::RowKind;
namespace rules = core::rules;

namespace {

void addSection(const QString& title, std::vector<BoardRow>& rows) {
    BoardRow row;
    row.kind = RowKind::Section;
    row.title = title;
    rows.push_back(row);
}

void addNote(const QString& text, std::vector<BoardRow>& rows) {
    BoardRow row;
    row.kind = RowKind::Note;
    row.lines = {text};
    rows.push_back(row);
}

/// Held for more than a missing brood check.
int heldOf(const desk::Reading& reading, core::YardIx yard) {
    std::set<core::ColonyIx> held;
    for (const rules::Hold& hold : reading.plan.holds)
        if (hold.kind != rules::HoldKind::BroodNotChecked && reading.factsOf(hold.colony).yard == yard)
            held.insert(hold.colony);
    return static_cast<int>(held.size());
}

/// "stand 4 · 4.5 frames, 17 Aug"
QString lastText(const desk::Reading& reading, core::ColonyIx colony) {
    const rules::ColonyFacts& f = reading.factsOf(colony);
    QStringList parts;
    if (const core::SnapStay* place = reading.snapshot.placeOf(colony))
        parts << Ready::tr("stand %1").arg(place->standName);
    if (f.lastCount && f.counted)
        parts << Ready::tr("%1, %2").arg(look::framesOf(*f.lastCount),
                                         look::dayTextFrom(*f.counted, reading.snapshot.on));
    return parts.join(QStringLiteral(" · "));
}

int hivesOf(const desk::Reading& reading, core::YardIx yard) {
    return static_cast<int>(std::count_if(reading.facts.begin(), reading.facts.end(),
                                          [&](const rules::ColonyFacts& f) { return f.yard == yard; }));
}

void addMissing(const desk::Reading& reading, core::YardIx yard, bool season, ReadyRows& out) {
    addSection(Ready::tr("Missing for a good plan, in walking order"), out.rows);
    if (!season)
        return addNote(Ready::tr("On this day no union and no divide is planned: it is out of season. Choose the day "
                                 "under Plan."),
                       out.rows);
    for (const rules::ColonyMissing& m : out.missing) {
        BoardRow row;
        row.colony = reading.snapshot.colony(m.colony).id;
        row.title = reading.snapshot.colony(m.colony).shown;
        row.right = lastText(reading, m.colony);
        QStringList sentences;
        for (const rules::Missing& what : m.what) sentences << rules::textOf({sentenceOf(reading.snapshot, what)});
        row.lines = {sentences.join(u' ')};
        row.why = m.what.front().why;
        for (size_t i = 1; i < m.what.size(); ++i) row.why.add(m.what[i].why);
        out.rows.push_back(std::move(row));
    }
    if (const int held = heldOf(reading, yard); held > 0)
        addNote(Ready::tr("Held hives take no part in the plan (%1 here): of them only the weight is asked, for feed.")
                    .arg(held),
                out.rows);
    if (out.missing.empty())
        addNote(hivesOf(reading, yard) == 0 ? Ready::tr("No hive stands here on this day.")
                                            : Ready::tr("Nothing: counts, queens, brood checks and weights all count "
                                                        "on this day."),
                out.rows);
}

void addOneBox(const desk::Reading& reading, core::YardIx yard, std::vector<BoardRow>& rows) {
    const auto all = rules::consolidations(reading.snapshot, reading.facts, reading.plan, yard);
    if (all.empty()) return;
    addSection(Ready::tr("Bring down to one box, some days ahead"), rows);
    for (const rules::Consolidation& c : all) {
        BoardRow row;
        row.colony = reading.snapshot.colony(c.colony).id;
        row.title = reading.snapshot.colony(c.colony).shown;
        row.right =
            Ready::tr("for union %1, with %2").arg(QString::number(c.order), reading.snapshot.colony(c.partner).shown);
        row.lines = {rules::textOf(rules::sentencesOf(c))};
        rows.push_back(std::move(row));
    }
}

} // namespace

ReadyRows readyRows(const desk::Reading& reading, core::YardIx yard, const std::vector<rules::KitPile>& piles) {
    ReadyRows out;
    const rules::DayView view = rules::viewOf(reading.snapshot, reading.facts, reading.plan.holds);
    out.missing = rules::missingIn(view, yard);
    const bool season = rules::planned(view, yard);
    addMissing(reading, yard, season, out);
    addOneBox(reading, yard, out.rows);
    addLoad(reading, yard, piles, out.rows);
    const int hives = hivesOf(reading, yard);
    if (season)
        out.summary = out.missing.empty()
                          ? Ready::tr("All %1 hives are looked over").arg(hives)
                          : Ready::tr("%1 of %2 hives lack something").arg(out.missing.size()).arg(hives);
    return out;
}

} // namespace ui::ready
