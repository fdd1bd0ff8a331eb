#include "core/report/worksheet.h"

#include "core/report/worksheet_flow.h"
#include "core/report/worksheet_part.h"

namespace core::report {

namespace {

struct Counts {
    int colonies = 0;
    int unions = 0;
    int shakeOuts = 0;
    int held = 0;
};

Counts countsOf(const SheetInput& in) {
    Counts n;
    for (const rules::ColonyFacts& f : in.facts) n.colonies += f.yard == in.yard ? 1 : 0;
    for (const rules::Union& u : in.plan.unions) n.unions += u.yard == in.yard ? 1 : 0;
    for (const rules::ShakeOut& o : in.plan.shakeOuts) n.shakeOuts += o.yard == in.yard ? 1 : 0;
    ColonyIx last;
    for (const rules::Hold& h : in.plan.holds) {
        if (!in.here(h.colony)) continue;
        if (h.colony != last) ++n.held;
        last = h.colony;
    }
    return n;
}

QString titleOf(const SheetInput& in, Sheet sheet) {
    switch (sheet) {
    case Sheet::MergeDay:
        return in.say("Merge day, %1");
    case Sheet::Walk:
        return in.say("Before the merge day, %1");
    }
    return {};
}

QString summaryOf(const SheetInput& in, const WorksheetOptions& options) {
    const Counts n = countsOf(in);
    QStringList parts{in.say.longDay(in.plan.on)};
    if (options.sheet == Sheet::Walk)
        parts << in.say.count(static_cast<int>(options.walk.size()), "1 colony", "%1 colonies");
    else
        parts << in.say.count(n.colonies, "1 colony", "%1 colonies") << in.say.count(n.unions, "1 union", "%1 unions")
              << in.say.count(n.shakeOuts, "1 shaken out", "%1 shaken out")
              << in.say.count(n.held, "1 held", "%1 held");
    return parts.join(QStringLiteral(" · "));
}

PageTexts textsOf(const SheetInput& in, const WorksheetOptions& options) {
    const QString& yard = in.s.yard(in.yard).name;
    PageTexts t;
    t.title = titleOf(in, options.sheet).arg(yard);
    t.summary = summaryOf(in, options);
    t.running = yard + QStringLiteral(" · ") + in.say.longDay(in.plan.on);
    t.page = in.say("page %1 of %2");
    t.continued = in.say("(continued)");
    t.foot = in.say("A full box can pass %1. Bee law, inspectors and labels decide.").arg(in.say.heavy());
    t.book = options.book;
    t.revision = in.say("revision %1").arg(options.revision);
    if (options.printedOn) t.revision += QStringLiteral(" · ") + in.say("printed %1").arg(isoText(*options.printedOn));
    return t;
}

/// One sentence where a section has nothing to say.
Section saying(const SheetInput& in, const QString& sentence) {
    Section section;
    Block block;
    BlockPen pen(in.measure, block);
    block.height = pen.paragraph(0, 0, in.width, sentence, kLarge);
    section.blocks.push_back(std::move(block));
    return section;
}

std::vector<Section> mergeDaySections(const SheetInput& in, double pageRoom) {
    const Section held = heldSection(in);
    std::vector<Section> sections{
        held.blocks.empty() ? saying(in, in.say("No colony of this yard is held on this day.")) : held,
        drawingSection(in, pageRoom)};
    const Section unions = unionSection(in);
    const Section shakeOuts = shakeOutSection(in);
    sections.push_back(unions.blocks.empty() && shakeOuts.blocks.empty()
                           ? saying(in, in.say("No union and no shake-out is advised here on this day."))
                           : unions);
    sections.push_back(shakeOuts);
    for (const auto part :
         {separateSection, openSection, boxSection, feedSection, mindSection, kitSection, checkSection, careSection})
        sections.push_back(part(in));
    return sections;
}

std::vector<Section> walkSections(const SheetInput& in, const WorksheetOptions& options) {
    const Section walk = walkSection(in, options.walk);
    return {walk.blocks.empty() ? saying(in, in.say("Nothing is missing: every colony can be judged.")) : walk,
            consolidateSection(in)};
}

} // namespace

std::vector<Page> worksheetPages(const Snapshot& s, const rules::Plan& plan, YardIx yard,
                                 const WorksheetOptions& options, const TextMeasure& measure) {
    const std::vector<rules::ColonyFacts> facts = rules::colonyFacts(s);
    const Words say(options.language, s.settings.shown());
    const PageSize size = pageSize(options.paper);
    const SheetInput in{s, plan, yard, facts, say, measure, size.contentWidth()};
    const std::vector<Section> sections =
        options.sheet == Sheet::Walk ? walkSections(in, options) : mergeDaySections(in, size.contentHeight() - 12);
    return pagesOf(sections, textsOf(in, options), size, measure);
}

} // namespace core::report
