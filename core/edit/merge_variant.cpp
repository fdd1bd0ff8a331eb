#include "core/edit/merge_variant.h"

#include "core/edit/edit_checks.h"
#include "core/edit/merge_day_checks.h"
#include "core/edit/merge_words.h"
#include "core/edit/row_change.h"

#include <algorithm>

namespace core::edit {

namespace {

std::vector<MergeDay> variantsOf(const EditContext& c, YardId yard, Day day) {
    std::vector<MergeDay> out = c.mergeDaysOf(yard);
    std::erase_if(out, [&](const MergeDay& d) { return d.day != day; });
    return out;
}

int firstFree(const std::vector<MergeDay>& variants) {
    for (int number = 1; number <= kMergeVariants; ++number)
        if (std::ranges::find(variants, number, &MergeDay::variant) == variants.end()) return number;
    refuse(Edits::tr("Three variants of a merge day stand side by side at most: drop one first."));
}

void copyAsked(const EditContext& c, MergeDayId from, MergeDayId to, ChangeSet& change) {
    qint64 next = c.nextId(Table::MergeChoice);
    for (MergeChoice choice : c.choicesOf(from)) {
        choice.id = {next++};
        choice.mergeDay = to;
        change.rows.push_back(added(choice));
    }
    next = c.nextId(Table::DivideChoice);
    for (DivideChoice choice : c.divideChoicesOf(from)) {
        choice.id = {next++};
        choice.mergeDay = to;
        change.rows.push_back(added(choice));
    }
}

} // namespace

ChangeSet addMergeVariant(const EditContext& c, YardId yard, Day day, std::optional<MergeDayId> of) {
    needYard(c, yard);
    std::vector<MergeDay> variants = variantsOf(c, yard, day);
    for (const MergeDay& variant : variants) needOpen(c, variant);
    ChangeSet change;
    qint64 next = c.nextId(Table::MergeDay);
    MergeDay copy;
    copy.yard = yard;
    copy.day = day;
    if (of) {
        copy = needMergeDay(c, *of);
        if (copy.yard != yard || copy.day != day) refuse(Edits::tr("That variant is of another merge day."));
    } else if (variants.empty()) {
        MergeDay proposed = copy;
        proposed.id = {next++};
        change.rows.push_back(added(proposed));
        variants.push_back(proposed);
    }
    copy.id = {next};
    copy.variant = firstFree(variants);
    copy.revision = 1;
    change.rows.push_back(added(copy));
    if (of) copyAsked(c, *of, copy.id, change);
    change.text = Edits::tr("Planned %1").arg(mergeDayName(c, copy, Case::Within));
    return change;
}

} // namespace core::edit
