#include "core/report/fields.h"
#include "core/report/worksheet_part.h"
#include "core/rules/finding_words.h"

#include <algorithm>

// What is due by the records, printed by itself: boxes to tick at the hive.

namespace core::report {

using rules::Due;
using rules::DueKind;

namespace {

constexpr double kFigure = 16;
constexpr double kRemark = 60; // mm to write on

/// "A2": who was united into it on the day that the check looks back to.
QStringList unitedWith(const SheetInput& in, const Due& due) {
    QStringList names;
    const Day* day = due.why.find<Day>("united");
    for (const SnapLineage& row : in.s.lineage)
        if (day && row.how == LineageHow::United && row.into == due.colony && row.day == *day)
            names << in.name(row.colony);
    return names;
}

std::vector<Field> fieldsOf(const SheetInput& in, DueKind what) {
    const auto remark = lineField(in.say("else:"), kRemark);
    switch (what) {
    case DueKind::UnionCheck:
        return {tickField(in.say("paper gone")), tickField(in.say("one queen")),  tickField(in.say("eggs")),
                tickField(in.say("peaceful")),   tickField(in.say("brood well")), remark};
    case DueKind::TakeOut:
        return {tickField(in.say("all taken out")), lineField(in.say("how many"), kFigure),
                tickField(in.say("kept for disposal as the label says")), remark};
    case DueKind::ResultAwaited:
        return {tickField(in.say("negative")), tickField(in.say("positive")),
                lineField(in.say("paper no."), 2 * kFigure), lineField(in.say("sample of"), 2 * kFigure), remark};
    }
    return {};
}

QString sentence(const SheetInput& in, const Due& due) {
    return dueTitle(in, due) + QStringLiteral(". ") + in.say(sentencesOf(in.s, due));
}

Block dueBlock(const SheetInput& in, const Due& due) {
    Block block;
    BlockPen pen(in.measure, block);
    const double wide = in.width - kIndent;
    pen.tick(0, 0.8, {});
    const QString when = in.say.weekday(due.on);
    const double whenWide = pen.width(when, kStrong);
    pen.line(in.width - 1, 0.6, when, kStrong, Align::Right);
    double y = pen.paragraph(kIndent, 0, wide - whenWide - 5, in.name(due.colony), kLabel);
    y = pen.paragraph(kIndent, y, wide, sentence(in, due), kText);
    y = fieldRows(pen, kIndent, y + 1.2, wide, fieldsOf(in, due.what));
    pen.stroke({0, y + 0.6}, {in.width, y + 0.6}, 0.2);
    block.height = y + 0.8;
    block.zone = QStringLiteral("check %1").arg(in.name(due.colony));
    block.zoneWidth = in.width;
    return block;
}

/// A look at the new colony of a divide.
Block divideBlock(const SheetInput& in, const rules::DivideDue& due) {
    Block block;
    BlockPen pen(in.measure, block);
    const double wide = in.width - kIndent;
    pen.tick(0, 0.8, {});
    const QString when = in.say.weekday(due.date.look);
    pen.line(in.width - 1, 0.6, when, kStrong, Align::Right);
    double y = pen.paragraph(kIndent, 0, wide - pen.width(when, kStrong) - 5, in.name(due.colony), kLabel);
    const QString of = in.say("Divided from %1 on %2.").arg(in.name(due.mother), in.say.day(due.divided, in.plan.on));
    y = pen.paragraph(kIndent, y, wide, of + u' ' + in.say(rules::Sentences{sentenceOf(due.date)}), kText);
    y = fieldRows(pen, kIndent, y + 1.2, wide,
                  {tickField(in.say("as it should be")), tickField(in.say("not yet: look again")),
                   lineField(in.say("else:"), kRemark)});
    pen.stroke({0, y + 0.6}, {in.width, y + 0.6}, 0.2);
    block.height = y + 0.8;
    block.zone = QStringLiteral("check %1").arg(in.name(due.colony));
    block.zoneWidth = in.width;
    return block;
}

} // namespace

QString dueTitle(const SheetInput& in, const Due& due) {
    QString text = in.say.due(due.what);
    if (const QStringList with = unitedWith(in, due); !with.isEmpty())
        text += QStringLiteral(", ") + in.say("with %1").arg(in.say.list(with));
    text[0] = text.at(0).toUpper();
    return text;
}

Section dueSection(const SheetInput& in) {
    Section section;
    section.heading = in.say("Look, and tick");
    // common practice, no source
    section.note = in.say("Eggs are enough: nobody needs to see the queen. Where paper is left, tear it and look again "
                          "in three days. Where brood is not plainly healthy: close up and note it.");
    for (const Due& due : in.plan.due)
        if (in.here(due.colony)) section.blocks.push_back(dueBlock(in, due));
    for (const rules::DivideDue& due : rules::divideChecks(in.s, in.options.divided))
        if (in.here(due.colony)) section.blocks.push_back(divideBlock(in, due));
    return section;
}

} // namespace core::report
