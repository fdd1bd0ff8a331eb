#include "core/edit/merge_wishes.h"

#include <algorithm>

namespace core::edit {

namespace {

const MergeDay& standing(const Session& book, const std::vector<MergeDay>& variants) {
    for (const MergeDay& day : variants)
        if (!book.stripsOf(day.id).empty() || !book.divideStripsOf(day.id).empty()) return day;
    return variants.front();
}

} // namespace

std::optional<MergeDay> standingMergeDay(const Session& book, YardId yard, Day day) {
    std::vector<MergeDay> variants = book.mergeDays(yard);
    std::erase_if(variants, [&](const MergeDay& d) { return d.day != day; });
    if (variants.empty()) return std::nullopt;
    return standing(book, variants);
}

std::vector<rules::MergeWish> mergeWishes(const Session& book, Day day, const std::map<YardId, int>& variants) {
    const std::vector<MergeDay> days = book.mergeDaysOn(day);
    std::vector<rules::MergeWish> out;
    for (auto from = days.begin(); from != days.end();) {
        const auto to = std::find_if(from, days.end(), [&](const MergeDay& d) { return d.yard != from->yard; });
        const std::vector<MergeDay> ofYard(from, to);
        const auto asked = variants.find(from->yard);
        auto shown = ofYard.end();
        if (asked != variants.end())
            shown = std::find_if(ofYard.begin(), ofYard.end(),
                                 [&](const MergeDay& d) { return d.variant == asked->second; });
        const MergeDay& chosen = shown == ofYard.end() ? standing(book, ofYard) : *shown;
        out.push_back({chosen, book.choicesOf(chosen.id), book.divideChoicesOf(chosen.id)});
        from = to;
    }
    return out;
}

} // namespace core::edit
