#include "core/report/contact_pages.h"

#include "core/report/contact_drawing.h"
#include "core/rules/hold_words.h"

#include <set>

namespace core::report {

using rules::ContactLink;
using rules::ContactWay;
using rules::GiftKind;

namespace {

QString kindText(GiftKind kind) {
    switch (kind) {
    case GiftKind::Frames:
        return QStringLiteral("frames");
    case GiftKind::Brood:
        return QStringLiteral("brood");
    case GiftKind::Bees:
        return QStringLiteral("bees");
    case GiftKind::Box:
        return QStringLiteral("a box");
    case GiftKind::Feed:
        return QStringLiteral("feed");
    case GiftKind::United:
        return QStringLiteral("union");
    case GiftKind::ShakenOut:
        return QStringLiteral("shake-out");
    case GiftKind::Divided:
        break;
    }
    return QStringLiteral("divide");
}

QString span(Day since, Day until) {
    return since == until ? isoText(since) : QStringLiteral("%1 to %2").arg(isoText(since), isoText(until));
}

} // namespace

std::vector<ContactLine> contactLines(const Snapshot& s, const ContactTold& told) {
    std::vector<ContactLine> lines;
    for (const ContactLink& link : told.contacts.links)
        lines.push_back({isoText(link.gift.day), kindText(link.gift.kind), s.colony(link.gift.from).shown,
                         s.colony(link.gift.to).shown, link.steps, told.contacts.far(link)});
    for (const rules::YardContact& c : told.yards)
        lines.push_back({span(c.since, c.until), QStringLiteral("stood in %1").arg(s.yard(c.yard).name),
                         s.colony(c.colony).shown, s.colony(told.contacts.of).shown, std::nullopt, c.colony});
    return lines;
}

QString chainSentence(const Snapshot& s, const rules::Contacts& contacts, ColonyIx colony) {
    const auto chain = contacts.chainTo(colony);
    if (chain.empty()) return {};
    QStringList gifts;
    for (const rules::Gift& gift : chain) gifts << rules::giftText(s, gift);
    const bool onwards = contacts.way == ContactWay::Onwards;
    const QString& one = s.colony(contacts.of).shown;
    const QString& other = s.colony(colony).shown;
    return QStringLiteral("%1 to %2: %3.")
        .arg(onwards ? one : other, onwards ? other : one, gifts.join(QStringLiteral("; ")));
}

QString contactSummary(const ContactTold& told) {
    std::set<ColonyIx> stood;
    for (const rules::YardContact& c : told.yards) stood.insert(c.colony);
    const size_t linked = told.contacts.reached.size();
    return QStringLiteral("%1 linked by gifts %2 from %3 to %4; %5 stood in a yard with it.")
        .arg(linked == 1 ? QStringLiteral("1 colony is") : QStringLiteral("%1 colonies are").arg(linked))
        .arg(told.contacts.way == ContactWay::Onwards ? QStringLiteral("that it passed on")
                                                      : QStringLiteral("that came to it"))
        .arg(isoText(told.from), isoText(told.until))
        .arg(stood.size());
}

namespace {

Section listSection(const Snapshot& s, const ContactTold& told, const TextMeasure& measure, double width) {
    Section section;
    section.heading = QStringLiteral("Each contact");
    for (const ContactLine& line : contactLines(s, told)) {
        Block block;
        BlockPen pen(measure, block);
        const QString steps = !line.steps        ? QString()
                              : *line.steps == 1 ? QStringLiteral(" (directly)")
                                                 : QStringLiteral(" (over %1 gifts)").arg(*line.steps);
        const QString words = line.steps ? QStringLiteral("%1: %2 → %3%4").arg(line.what, line.from, line.to, steps)
                                         : QStringLiteral("%1 %2").arg(line.from, line.what);
        block.height = pen.paragraph(0, 0, width, QStringLiteral(" ") + words, kText, line.when, 6);
        block.gapAfter = 0.8;
        section.blocks.push_back(std::move(block));
    }
    return section;
}

Section drawingSection(const Snapshot& s, const ContactTold& told, std::span<const rules::Hold> holds,
                       const TextMeasure& measure, double width) {
    const ContactDrawing drawing = contactDrawing(s, told.contacts, holds, told.from, told.until, 26);
    Section section;
    section.heading = QStringLiteral("In time");
    section.note = contactKey();
    if (drawing.left > 0) section.note += QStringLiteral(" Not drawn, but listed: %1 farther ones.").arg(drawing.left);
    section.blocks.push_back(contactBlock(drawing, measure, width));
    return section;
}

} // namespace

std::vector<Page> contactPages(const Snapshot& s, const ContactTold& told, std::span<const rules::Hold> holds,
                               const PageOrigin& origin, const TextMeasure& measure) {
    const PageSize size = pageSize(origin.paper);
    PageTexts texts =
        textsFrom(origin, QStringLiteral("Contacts of %1").arg(s.colony(told.contacts.of).shown), contactSummary(told));
    texts.foot = QStringLiteral("Contacts that are not in the book are not here. Inspector and local law decide.");
    return pagesOf({drawingSection(s, told, holds, measure, size.contentWidth()),
                    listSection(s, told, measure, size.contentWidth())},
                   texts, size, measure);
}

} // namespace core::report
