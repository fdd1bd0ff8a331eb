#include "core/rules/plan.h"

#include <span>

// The plan's words: stable, never translated.

namespace core::rules {

namespace {

template <class E> QString wordAt(std::span<const char* const> words, E value) {
    return QString::fromLatin1(words[static_cast<size_t>(value)]);
}

} // namespace

QString cautionWord(CautionKind kind) {
    static constexpr const char* kWords[] = {"mites-high",    "masked",       "signs",    "count-before-transfer",
                                             "queen-unknown", "room-unknown", "near-afb", "drift-to-held",
                                             "lower-heavier"};
    return wordAt(kWords, kind);
}

QString queenPlanWord(QueenPlan plan) {
    static constexpr const char* kWords[] = {"leave-both", "remove-moved", "keep-moved", "keep-host"};
    return wordAt(kWords, plan);
}

QString classWord(StrengthClass c) {
    static constexpr const char* kWords[] = {"shake-out", "weak", "medium", "strong"};
    return wordAt(kWords, c);
}

QString unresolvedWord(Unresolved why) {
    static constexpr const char* kWords[] = {"no-count", "count-old", "no-bees", "no-host", "no-partner"};
    return wordAt(kWords, why);
}

QString boxActionWord(BoxAction action) {
    static constexpr const char* kWords[] = {"heavier-on-top", "reverse"};
    return wordAt(kWords, action);
}

QString dueWord(DueKind what) {
    static constexpr const char* kWords[] = {"union-check", "take-out", "result-awaited"};
    return wordAt(kWords, what);
}

} // namespace core::rules
