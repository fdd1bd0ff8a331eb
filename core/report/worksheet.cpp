#include "core/report/worksheet.h"

#include "core/report/enlarge.h"
#include "core/report/page_code.h"
#include "core/report/tally.h"
#include "core/report/worksheet_flow.h"
#include "core/report/worksheet_part.h"

namespace core::report {

namespace {

constexpr double kLargePoints = 16; // of the smallest type in large print; common guidance, from memory

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
        break;
    case Sheet::Walk:
        return in.say("Before the merge day, %1");
    case Sheet::Checks:
        return in.say("Checks due, %1");
    case Sheet::ShakeOuts:
        return in.say("Shaking out, %1");
    case Sheet::Storing:
        return in.say("Kit that comes free, %1");
    case Sheet::LayingWorkers:
        return in.say("Laying workers, %1");
    case Sheet::Tally:
        return in.say("Visits, %1");
    case Sheet::Card:
        if (const auto colony = cardColony(in)) return in.briefly(*colony) + QStringLiteral(" · %1");
        break;
    }
    return in.say("Merge day, %1");
}

QString summaryOf(const SheetInput& in, const WorksheetOptions& options) {
    const Counts n = countsOf(in);
    QStringList parts{in.say.longDay(in.plan.on)};
    if (options.sheet == Sheet::MergeDay || options.sheet == Sheet::Tally)
        parts << in.say.count(n.colonies, "1 colony", "%1 colonies");
    if (options.sheet == Sheet::MergeDay)
        parts << in.say.count(n.unions, "1 union", "%1 unions")
              << in.say.count(n.shakeOuts, "1 shaken out", "%1 shaken out");
    if (options.sheet == Sheet::MergeDay || options.sheet == Sheet::Tally)
        parts << in.say.count(n.held, "1 held", "%1 held");
    return parts.join(QStringLiteral(" · "));
}

/// The merge day that the sheet is of.
const MergeDay* dayPlanned(const WorksheetOptions& options) {
    return options.wish && !forVisits(options.sheet) ? &options.wish->day : nullptr;
}

PageCode codeOf(const SheetInput& in, const WorksheetOptions& options) {
    PageCode code;
    const MergeDay* day = dayPlanned(options);
    code.book = bookMark(options.bookId);
    code.yard = in.s.yard(in.yard).id.value;
    code.day = in.plan.on;
    code.variant = day ? day->variant : 0;
    code.revision = day ? day->revision : options.revision;
    code.sheet = options.sheet;
    return code;
}

PageTexts textsOf(const SheetInput& in, const WorksheetOptions& options) {
    const QString& yard = in.s.yard(in.yard).name;
    PageTexts t;
    t.title = titleOf(in, options.sheet).arg(yard);
    t.summary = summaryOf(in, options);
    const bool narrow = options.large;
    t.running = yard + QStringLiteral(" · ") + (narrow ? isoText(in.plan.on) : in.say.longDay(in.plan.on));
    t.page = in.say("page %1 of %2");
    t.continued = in.say("(continued)");
    t.foot = narrow ? in.say("Bee law, inspectors and labels decide.")
                    : in.say("A full box can pass %1. Bee law, inspectors and labels decide.").arg(in.say.heavy());
    t.book = options.book;
    t.revision = in.say("revision %1").arg(options.revision);
    if (const MergeDay* day = dayPlanned(options))
        t.revision = in.say("plan %1, revision %2").arg(day->variant).arg(day->revision) + QStringLiteral(" · ") +
                     in.say("book %1").arg(options.revision);
    if (options.printedOn) t.revision += QStringLiteral(" · ") + in.say("printed %1").arg(isoText(*options.printedOn));
    t.code = pageCodeText(codeOf(in, options));
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

std::vector<Section> mergeDaySections(const SheetInput& in, const WorksheetOptions& options, double pageRoom) {
    const Section held = heldSection(in);
    std::vector<Section> sections{
        held.blocks.empty() ? saying(in, in.say("No colony of this yard is held on this day.")) : held,
        drawingSection(in, pageRoom)};
    if (options.begun)
        sections.push_back(
            saying(in, in.say("A part of this day is written back already. What is left is planned anew: "
                              "its numbers are not those of the sheet in the field.")));
    const Section unions = unionSection(in);
    const Section shakeOuts = shakeOutSection(in);
    sections.push_back(unions.blocks.empty() && shakeOuts.blocks.empty()
                           ? saying(in, in.say("No union and no shake-out is advised here on this day."))
                           : unions);
    sections.push_back(shakeOuts);
    sections.push_back(divideSection(in, options));
    for (const auto part : {separateSection, askedSection, openSection, boxSection, feedSection, mindSection,
                            kitSection, checkSection, storingSection, careSection})
        sections.push_back(part(in));
    return sections;
}

std::vector<Section> sectionsOf(const SheetInput& in, const WorksheetOptions& options, double pageRoom) {
    const auto orSaying = [&](const Section& section, const char* sentence) {
        return section.blocks.empty() ? saying(in, in.say(sentence)) : section;
    };
    switch (options.sheet) {
    case Sheet::MergeDay:
        break;
    case Sheet::Walk:
        return {orSaying(walkSection(in), "Nothing is missing for a plan of this day."), consolidateSection(in)};
    case Sheet::Checks:
        return {orSaying(dueSection(in), "Nothing is due here.")};
    case Sheet::ShakeOuts:
        return {orSaying(shakeOutSection(in), "No colony is to be shaken out here on this day.")};
    case Sheet::Storing:
        return {orSaying(storingSection(in), "No kit comes free here on this day.")};
    case Sheet::LayingWorkers:
        return {orSaying(layingWorkersSection(in), "No colony here that is not held is known to have laying workers.")};
    case Sheet::Tally:
        return tallySections(in);
    case Sheet::Card:
        return cardSections(in);
    }
    return mergeDaySections(in, options, pageRoom);
}

/// Large print: the same pages, laid out on smaller paper and enlarged.
double enlargement(const WorksheetOptions& options) { return options.large ? kLargePoints / kText.pointSize : 1; }

} // namespace

std::vector<Page> worksheetPages(const Snapshot& s, const rules::Plan& plan, YardIx yard,
                                 const WorksheetOptions& options, const TextMeasure& measure) {
    const std::vector<rules::ColonyFacts> facts = rules::colonyFacts(s);
    const Words say(options.language, s.settings.shown());
    const double by = enlargement(options);
    const PageSize size = reduced(forVisits(options.sheet) ? tallySize(options) : pageSize(options.paper), by);
    const SheetInput in{s, plan, yard, facts, say, measure, size.contentWidth(), size.contentHeight(), options};
    const std::vector<Section> sections = sectionsOf(in, options, in.height - 12);
    return enlarged(pagesOf(sections, textsOf(in, options), size, measure), by);
}

} // namespace core::report
