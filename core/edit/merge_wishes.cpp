#include "core/edit/merge_wishes.h"

#include "core/edit/edit_context.h"
#include "core/edit/merge_sheet.h"

#include <set>

namespace core::edit {

namespace {

/// The one asked for, where it is saved; else the one that stands.
MergeDay shownOf(const EditContext& c, YardId yard, Day day, std::optional<int> variant) {
    if (variant)
        for (const MergeDay& d : c.mergeDaysOf(yard))
            if (d.day == day && d.variant == *variant) return d;
    return standingDay(c, yard, day).value_or(MergeDay{});
}

} // namespace

std::vector<rules::MergeWish> mergeWishes(const Session& book, Day day, const std::map<YardId, int>& variants) {
    std::set<YardId> yards;
    for (const MergeDay& d : book.mergeDaysOn(day)) yards.insert(d.yard);
    std::vector<rules::MergeWish> out;
    if (yards.empty()) return out;
    book.read([&](const EditContext& c) {
        for (const YardId yard : yards) {
            const auto asked = variants.find(yard);
            const MergeDay shown =
                shownOf(c, yard, day, asked == variants.end() ? std::nullopt : std::optional(asked->second));
            out.push_back({shown, c.choicesOf(shown.id), c.divideChoicesOf(shown.id)});
        }
    });
    return out;
}

} // namespace core::edit
