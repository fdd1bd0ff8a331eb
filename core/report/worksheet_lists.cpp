#include "core/report/worksheet_part.h"
#include "core/rules/finding_words.h"
#include "core/rules/given_up.h"
#include "core/rules/laying_workers.h"
#include "core/rules/left_over.h"
#include "core/rules/limits.h"

#include <algorithm>
#include <map>

// The shorter lists of the paper: kept apart, open questions, order of boxes, feed, what to mind.

namespace core::report {

using rules::CautionKind;
using rules::Unresolved;

namespace {

constexpr double kTickLeft = 8; // words right of a box to tick

/// Labels in 14 pt, wrapped, and a sentence below; with a box to tick where it is work.
Block entry(const SheetInput& in, const QStringList& names, const QString& sentence, bool work) {
    Block block;
    BlockPen pen(in.measure, block);
    const double left = work ? kTickLeft : 0;
    if (work) pen.tick(0, 0.8, {});
    double y = pen.paragraph(left, 0, in.width - left, names.join(QStringLiteral(",  ")), kLabel);
    if (!sentence.isEmpty()) y = pen.paragraph(left, y, in.width - left, sentence, kText);
    block.height = y;
    block.gapAfter = 1.6;
    return block;
}

/// One colony a cell, two cells a row where there is room.
size_t feedColumns(const SheetInput& in) { return in.width < 150 ? 1 : 2; }

double feedCell(const SheetInput& in, BlockPen& pen, const rules::Feed& f, double x, double width) {
    pen.tick(x, 0.8, {});
    const QString litres = in.say.feed(f.halfLitres);
    const QString kg = in.say("(%1 short)").arg(in.say.shortWeight(f.shortMillionthsKg));
    const double right = x + width - 4;
    const double kgWide = pen.width(kg, kText);
    const double litresWide = pen.width(litres, kLabel);
    pen.line(right, 0.5, kg, kText, Align::Right);
    pen.line(right - kgWide - 3, 0, litres, kLabel, Align::Right);
    return pen.paragraph(x + kTickLeft, 0, right - kgWide - litresWide - 6 - x - kTickLeft, in.name(f.colony), kLabel);
}

} // namespace

Section separateSection(const SheetInput& in) {
    Section section;
    section.heading = in.say("Keep apart");
    QStringList names;
    for (const rules::Separate& apart : in.plan.separate)
        if (in.here(apart.colony)) names << in.name(apart.colony);
    if (!names.isEmpty())
        section.blocks.push_back(
            entry(in, names, in.say("Laying workers: no ordinary union. They would kill a queen."), false));
    return section;
}

namespace {

/// Those left alone at risk, with what the plan gave up for each while they are few.
void addAtRisk(const SheetInput& in, Section& section) {
    constexpr size_t kTold = 8;
    if (!rules::beforeWinter(in.s, in.yard)) return;
    std::vector<const rules::Alone*> atRisk;
    std::vector<ColonyIx> told;
    for (const rules::Alone& a : in.plan.alone) {
        if (!a.atRisk || !in.here(a.colony)) continue;
        atRisk.push_back(&a);
        if (told.size() < kTold) told.push_back(a.colony);
    }
    const auto given = rules::givenUp(in.s, in.facts, in.plan, told);
    for (size_t i = 0; i < atRisk.size(); ++i) {
        const rules::Alone& a = *atRisk[i];
        QString text = in.say("At risk over winter: %1, %2; in no union.")
                           .arg(in.say.strengthClass(a.strengthClass), in.say.frames(a.frames));
        if (i < given.size()) text += u' ' + in.say(sentencesOf(in.s, given[i]));
        section.blocks.push_back(entry(in, {in.name(a.colony)}, text, false));
    }
}

/// A limit as the rules show it, in the paper's language.
QString limit(const SheetInput& in, const char* name) {
    return in.say(rules::Sentences{{"%1", {rules::limitText(in.s.settings, name, in.s.yard(in.yard).southern())}}});
}

} // namespace

Section openSection(const SheetInput& in) {
    Section section;
    section.heading = in.say("Not decided, at risk, left alone");
    std::map<std::pair<Unresolved, QString>, QStringList> why;
    for (const rules::UnresolvedColony& u : in.plan.unresolved) {
        if (!in.here(u.colony)) continue;
        QString text = in.say(sentencesOf(in.s, u));
        if (u.why == Unresolved::NoPartner) text += u' ' + in.say(rules::queenTroubleWays(in.plan.on));
        why[{u.why, text}] << in.name(u.colony);
    }
    for (const auto& [reason, names] : why)
        section.blocks.push_back(
            entry(in, names, in.say.unresolved(reason.first) + QStringLiteral(". ") + reason.second, true));
    addAtRisk(in, section);
    QStringList left;
    for (const rules::Alone& a : in.plan.alone)
        if (in.here(a.colony) && !(a.atRisk && rules::beforeWinter(in.s, in.yard))) left << in.name(a.colony);
    if (!left.isEmpty()) section.blocks.push_back(entry(in, left, in.say("Left as they are."), false));
    return section;
}

Section boxSection(const SheetInput& in) {
    Section section;
    section.heading = in.say("Order of boxes");
    std::map<rules::BoxAction, QStringList> actions;
    for (const rules::BoxOrderAdvice& b : in.plan.boxOrder)
        if (in.here(b.colony)) actions[b.action] << in.name(b.colony);
    for (const auto& [action, names] : actions)
        section.blocks.push_back(entry(in, names,
                                       action == rules::BoxAction::Reverse
                                           ? in.say("Reverse the two boxes: the bees sit in the upper one alone. "
                                                    "Advised from %1 to %2.")
                                                 .arg(limit(in, "4.11 reverse_from"), limit(in, "4.11 reverse_to"))
                                           : in.say("Set the heavier box on top: the lower one holds more stores. "
                                                    "Advised from %1 to %2.")
                                                 .arg(limit(in, "season.fall_start"), limit(in, "season.fall_end")),
                                       true));
    return section;
}

Section feedSection(const SheetInput& in) {
    Section section;
    section.heading = in.say("Feed");
    section.note =
        in.say("Syrup of two parts of sugar to one of water by mass. Each held colony from its own can.") + u' ' +
        in.say("Ready for winter: %1 with one box, %2 with two; syrup makes stores of %3.")
            .arg(limit(in, "stores.single_kg"), limit(in, "stores.double_kg"), limit(in, "syrup.stores_kg_per_l"));
    std::vector<const rules::Feed*> feed;
    for (const rules::Feed& f : in.plan.feed)
        if (in.here(f.colony)) feed.push_back(&f);
    const size_t columns = feedColumns(in);
    const double width = in.width / static_cast<double>(columns);
    for (size_t i = 0; i < feed.size(); i += columns) {
        Block block;
        BlockPen pen(in.measure, block);
        for (size_t k = i; k < std::min(i + columns, feed.size()); ++k)
            block.height =
                std::max(block.height, feedCell(in, pen, *feed[k], static_cast<double>(k - i) * width, width));
        block.gapAfter = 1.6;
        section.blocks.push_back(std::move(block));
    }
    return section;
}

Section mindSection(const SheetInput& in) {
    Section section;
    section.heading = in.say("Mind, with the other colonies");
    struct Shared {
        CautionKind kind;
        QString text;
        QStringList names;
    };
    std::vector<Shared> list;
    for (const rules::ColonyCaution& c : in.plan.cautions) {
        if (!in.here(c.colony)) continue;
        const QString text = cautionText(in, c.caution, {c.colony});
        const auto same = std::find_if(list.begin(), list.end(),
                                       [&](const Shared& s) { return s.kind == c.caution.kind && s.text == text; });
        if (same == list.end())
            list.push_back({c.caution.kind, text, {in.name(c.colony)}});
        else
            same->names << in.name(c.colony);
    }
    for (const Shared& s : list) {
        Block block;
        BlockPen pen(in.measure, block);
        block.height = pen.paragraph(0, 0, in.width, s.text, kText,
                                     s.names.join(QStringLiteral(", ")) + QStringLiteral(" · ") +
                                         in.say.cautionTitle(s.kind) + u'.');
        block.gapAfter = 1;
        section.blocks.push_back(std::move(block));
    }
    return section;
}

Section checkSection(const SheetInput& in) {
    Section section;
    section.heading = in.say("Look afterwards");
    std::map<std::pair<Day, rules::DueKind>, QStringList> due;
    for (const rules::Due& d : in.plan.due)
        if (in.here(d.colony)) due[{d.on, d.what}] << in.name(d.colony);
    for (const rules::Union& u : in.plan.unions)
        if (u.yard == in.yard)
            due[{in.plan.on + in.s.settings.followUnionDays, rules::DueKind::UnionCheck}] << in.name(u.host);
    for (const auto& [when, names] : due)
        section.blocks.push_back(
            entry(in, names, in.say("%1: %2.").arg(in.say.longDay(when.first), in.say.due(when.second)), true));
    return section;
}

} // namespace core::report
