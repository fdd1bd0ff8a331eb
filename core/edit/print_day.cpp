#include "core/edit/print_day.h"

#include "core/edit/divide_day.h"
#include "core/edit/edit_checks.h"
#include "core/edit/merge_day_checks.h"
#include "core/edit/merge_sheet.h"

#include <algorithm>

namespace core::edit {

namespace {

MergeDayId needSaved(const EditContext& c, const PrintedSheet& printed) {
    const auto day = mergeDayAt(c, printed.yard, printed.day, printed.variant);
    if (!day) refuse(Edits::tr("That merge day is no longer in the book."));
    return day->id;
}

ChangeSet saveWhereNone(const EditContext& c, const PrintedSheet& printed) {
    if (mergeDayAt(c, printed.yard, printed.day, printed.variant)) return {};
    MergeAsked asked;
    asked.day.yard = printed.yard;
    asked.day.day = printed.day;
    asked.day.variant = printed.variant;
    return saveMergeDay(c, asked);
}

bool cameOfIt(const auto& strips) {
    return std::ranges::any_of(strips, [](const auto& strip) { return strip.outcome.has_value(); });
}

} // namespace

PrintedSheet printedSheet(const Snapshot& s, const rules::Plan& plan, YardIx yard,
                          const std::optional<MergeDay>& saved) {
    PrintedSheet out;
    out.yard = s.yard(yard).id;
    out.day = plan.on;
    if (saved) out.variant = saved->variant;
    out.strips = stripsPlanned(s, plan, yard);
    for (const rules::Divide& d : plan.divides) {
        const SnapStay* stay = s.placeOf(d.colony);
        if (!stay || stay->yard != yard) continue;
        DivideStrip strip;
        strip.position = static_cast<int>(out.divides.size()) + 1;
        strip.colony = s.colony(d.colony).id;
        strip.parts = d.parts;
        if (saved && saved->queens) strip.queens = *saved->queens;
        out.divides.push_back(strip);
    }
    return out;
}

std::vector<Edit> recordPrint(const PrintedSheet& printed) {
    return {[printed](const EditContext& c) { return saveWhereNone(c, printed); },
            [printed](const EditContext& c) { return printMergeDay(c, needSaved(c, printed), printed.strips); },
            [printed](const EditContext& c) { return printDivides(c, needSaved(c, printed), printed.divides); }};
}

bool closingBegan(const Session& book, YardId yard, Day day) {
    for (const MergeDay& d : book.mergeDays(yard))
        if (d.day == day && (cameOfIt(book.stripsOf(d.id)) || cameOfIt(book.divideStripsOf(d.id)))) return true;
    return false;
}

} // namespace core::edit
