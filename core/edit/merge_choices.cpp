#include "core/edit/merge_choices.h"

#include <algorithm>
#include <utility>

namespace core::edit {

namespace {

bool ofThese(const MergeChoice& x, ColonyId a, ColonyId b) {
    return x.other && ((x.colony == a && *x.other == b) || (x.colony == b && *x.other == a));
}

bool about(const MergeChoice& x, ColonyId colony) { return x.colony == colony || x.other == colony; }

MergeChoice choice(MergeAsk what, ColonyId colony, std::optional<ColonyId> other = {}) {
    MergeChoice out;
    out.what = what;
    out.colony = colony;
    out.other = other;
    return out;
}

} // namespace

const MergeChoice* findChoice(const MergeChoices& choices, MergeAsk what, ColonyId a, ColonyId b) {
    const bool ordered = what == MergeAsk::Host || what == MergeAsk::Top;
    const auto it = std::ranges::find_if(choices, [&](const MergeChoice& x) {
        if (x.what != what) return false;
        if (what == MergeAsk::LeaveOut) return x.colony == a;
        return ordered ? x.colony == a && x.other == b : ofThese(x, a, b);
    });
    return it == choices.end() ? nullptr : &*it;
}

bool asks(const MergeChoices& choices, MergeAsk what, ColonyId a, ColonyId b) {
    return findChoice(choices, what, a, b) != nullptr;
}

MergeChoices withPin(MergeChoices choices, ColonyId a, ColonyId b) {
    if (asks(choices, MergeAsk::Pin, a, b)) return choices;
    std::erase_if(choices, [&](const MergeChoice& x) {
        if (x.what == MergeAsk::Pin) return about(x, a) || about(x, b);
        if (x.what == MergeAsk::LeaveOut) return x.colony == a || x.colony == b;
        return x.what == MergeAsk::Forbid && ofThese(x, a, b);
    });
    choices.push_back(choice(MergeAsk::Pin, a, b));
    return choices;
}

MergeChoices withForbid(MergeChoices choices, ColonyId a, ColonyId b) {
    if (asks(choices, MergeAsk::Forbid, a, b)) return choices;
    std::erase_if(choices, [&](const MergeChoice& x) { return ofThese(x, a, b); });
    choices.push_back(choice(MergeAsk::Forbid, a, b));
    return choices;
}

MergeChoices withLeftOut(MergeChoices choices, ColonyId colony, const QString& why) {
    std::erase_if(choices, [&](const MergeChoice& x) { return x.what == MergeAsk::Pin && about(x, colony); });
    const auto stands = std::ranges::find_if(
        choices, [&](const MergeChoice& x) { return x.what == MergeAsk::LeaveOut && x.colony == colony; });
    MergeChoice now = stands == choices.end() ? choice(MergeAsk::LeaveOut, colony) : *stands;
    now.note = why.trimmed();
    if (stands == choices.end())
        choices.push_back(now);
    else
        *stands = now;
    return choices;
}

MergeChoices withHost(MergeChoices choices, ColonyId host, ColonyId moved) {
    if (asks(choices, MergeAsk::Host, host, moved)) return choices;
    choices = without(std::move(choices), MergeAsk::Host, host, moved);
    choices.push_back(choice(MergeAsk::Host, host, moved));
    return choices;
}

MergeChoices withTop(MergeChoices choices, ColonyId upper, ColonyId lower) {
    if (asks(choices, MergeAsk::Top, upper, lower)) return choices;
    choices = without(std::move(choices), MergeAsk::Top, upper, lower);
    choices.push_back(choice(MergeAsk::Top, upper, lower));
    return choices;
}

MergeChoices without(MergeChoices choices, MergeAsk what, ColonyId a, ColonyId b) {
    std::erase_if(choices, [&](const MergeChoice& x) {
        return x.what == what && (what == MergeAsk::LeaveOut ? x.colony == a : ofThese(x, a, b));
    });
    return choices;
}

} // namespace core::edit
