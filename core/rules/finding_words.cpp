#include "core/rules/finding_words.h"

#include "core/rules/limits.h"

namespace core::rules {

namespace {

/// A reason and the book's limits, as texts.
class Teller {
public:
    Teller(const Snapshot& s, const Reason& why) : m_s(s), m_why(why) {}

    QString limit(const char* name) const { return limitText(m_s.settings, name, m_why.southern); }
    /// The limit's number alone: "5" of "5 frames".
    QString number(const char* name) const { return limit(name).section(u' ', 0, 0); }
    QString day(const char* fact) const {
        const Day* day = m_why.find<Day>(fact);
        return day ? isoText(*day) : QString();
    }
    QString text(const char* fact) const {
        for (const Fact& f : m_why.facts)
            if (sameName(f.name, fact)) return factText(m_s, f);
        return {};
    }
    int age(const char* fact) const {
        const Day* day = m_why.find<Day>(fact);
        return day ? m_s.on - *day : 0;
    }
    bool has(const char* fact) const {
        for (const Fact& f : m_why.facts)
            if (sameName(f.name, fact)) return true;
        return false;
    }

private:
    const Snapshot& m_s;
    const Reason& m_why;
};

Sentence classSentence(const Teller& t, const Alone& a) {
    const QString frames = framesText(a.frames);
    const QString counted = t.day("counted");
    switch (a.strengthClass) {
    case StrengthClass::ShakeOut:
        return {"%1 frames of bees, counted on %2: the shake-out class (up to %3).",
                {frames, counted, t.number("class.shake_out_max")}};
    case StrengthClass::Weak:
        return {"%1 frames of bees, counted on %2: weak (above %3, below %4).",
                {frames, counted, t.number("class.shake_out_max"), t.number("class.medium_min")}};
    case StrengthClass::Medium:
        return {"%1 frames of bees, counted on %2: medium (from %3, below %4).",
                {frames, counted, t.number("class.medium_min"), t.number("class.strong_min")}};
    case StrengthClass::Strong:
        break;
    }
    return {"%1 frames of bees, counted on %2: strong (from %3).", {frames, counted, t.number("class.strong_min")}};
}

Sentence judgeSentence(StrengthJudge judge) {
    switch (judge) {
    case StrengthJudge::Top:
        return {"Of counts from above and from below the one from the top is taken (a setting).", {}};
    case StrengthJudge::Bottom:
        return {"Of counts from above and from below the one from the bottom is taken (a setting).", {}};
    case StrengthJudge::Mean:
        break;
    }
    return {"Of counts from above and from below the mean is taken (a setting).", {}};
}

QString massText(const Snapshot& s, Decagrams weight) {
    return QStringLiteral("%1 %2").arg(weightNumber(weight, s.settings.showWeight), unitSign(s.settings.showWeight));
}

/// Both of a union, in kilograms as they were weighed.
Decagrams weightsOf(const Reason& why) {
    Decagrams sum;
    for (const Fact& f : why.facts)
        if (const auto* w = std::get_if<Decagrams>(&f.value)) sum = sum + *w;
    return sum;
}

Sentence weightSentence(const Snapshot& s, const Feed& feed, const Teller& t) {
    const QString weighs = massText(s, weightsOf(feed.why));
    if (feed.why.names("tare.floor_lid_kg"))
        return feed.why.names("tare.box_kg")
                   ? Sentence{"The two weigh %1 together, less %2 for floor and lid and %3 for each of %4 boxes taken "
                              "away "
                              "(assumptions); a hive of two boxes is ready for winter at %5.",
                              {weighs, t.limit("tare.floor_lid_kg"), t.limit("tare.box_kg"), t.text("boxes taken away"),
                               t.limit("stores.double_kg")}}
                   : Sentence{
                         "The two weigh %1 together, less %2 for floor and lid (an assumption); a hive of two boxes "
                         "is ready for winter at %3.",
                         {weighs, t.limit("tare.floor_lid_kg"), t.limit("stores.double_kg")}};
    if (feed.why.names("stores.double_kg"))
        return {"It weighed %1 on %2; a hive of two boxes is ready for winter at %3.",
                {weighs, t.day("weighed"), t.limit("stores.double_kg")}};
    return {"It weighed %1 on %2; a hive of one box is ready for winter at %3.",
            {weighs, t.day("weighed"), t.limit("stores.single_kg")}};
}

} // namespace

void dropReasons(Plan& plan) {
    const auto drop = [](auto& findings) {
        for (auto& finding : findings) finding.why = {};
    };
    drop(plan.holds);
    drop(plan.separate);
    drop(plan.alone);
    drop(plan.boxOrder);
    drop(plan.feed);
    drop(plan.divides);
    drop(plan.due);
    for (UnresolvedColony& u : plan.unresolved) u.reason = {};
    for (ColonyCaution& c : plan.cautions) c.caution.why = {};
    for (Union& u : plan.unions) {
        u.why = {};
        drop(u.cautions);
    }
    for (ShakeOut& o : plan.shakeOuts) {
        o.why = {};
        drop(o.cautions);
    }
}

Sentences sentencesOf(const Snapshot& s, const Alone& a) {
    const Teller t(s, a.why);
    Sentences out{classSentence(t, a)};
    if (a.why.names("strength.judge")) out.push_back(judgeSentence(s.settings.strengthJudge));
    out.push_back({"By value tables that are an assumption, %1 in 1000 of such are alive in spring, and %2 in 1000 of "
                   "those are then divided.",
                   {t.text("alive in 1000"), t.text("divided in 1000")}});
    if (a.why.names("4.6 most_frames"))
        out.push_back({"More than %1 frames are valued as %1.", {t.number("4.6 most_frames")}});
    return out;
}

Sentences sentencesOf(const Snapshot& s, const UnresolvedColony& u) {
    const Teller t(s, u.reason);
    switch (u.why) {
    case Unresolved::NoCount:
        if (t.has("counted")) return {{"On %1 only one of its two boxes was counted.", {t.day("counted")}}};
        return t.has("began anew") ? Sentences{{"Its bees were not counted since it was united or divided on %1.",
                                                {t.day("began anew")}}}
                                   : Sentences{{"Its bees were never counted.", {}}};
    case Unresolved::CountOld:
        return {{"The last count, of %1, is %2 days old; more than %3 is too old.",
                 {t.day("counted"), t.text("days old"), t.limit("strength.max_age_days")}}};
    case Unresolved::NoBees:
        return {{"No bees were seen at the count of %1.", {t.day("counted")}}};
    case Unresolved::NoHost:
        return {{"%1 of bees are the shake-out class (up to %2), and no colony of the yard is free to take them: not "
                 "held, with a queen, above that class, and at most %3 a host.",
                 {t.text("frames"), t.number("class.shake_out_max"), t.limit("shake.per_host")}}};
    case Unresolved::NoPartner:
        break;
    }
    return {
        {"It lacks a queen (%1, %2), and no union with another of its yard that is allowed gains %3; queens are given "
         "from %4 to %5.",
         {t.text("queen"), t.day("queen noted"), t.limit("gain.min_queen"), t.limit("season.start"),
          t.limit("season.fall_end")}}};
}

Sentences sentencesOf(const Snapshot& s, const Separate& separate) {
    const Teller t(s, separate.why);
    return {
        {"Laying workers, noted on %1: they would kill a queen. No union, shake-out or divide until a queen, eggs or a "
         "virgin is seen.",
         {t.day("laying workers noted")}}};
}

Sentences sentencesOf(const Snapshot& s, const Feed& feed) {
    const Teller t(s, feed.why);
    return {weightSentence(s, feed, t),
            {"Syrup of two parts of sugar to one of water makes stores of %1.", {t.limit("syrup.stores_kg_per_l")}},
            {"A weight counts for %1; feed is advised from %2 to %3.",
             {t.limit("weigh.max_age_days"), t.limit("season.fall_start"), t.limit("season.fall_end")}}};
}

Sentences sentencesOf(const Snapshot& s, const Divide& d) {
    const Teller t(s, d.why);
    return {
        {"%1 frames of brood, noted on %2, and %3 frames of bees: each part needs %4 and %5 of bees (assumptions), and "
         "there are %6 at least.",
         {QString::number(d.broodFrames), t.day("brood noted"), framesText(d.frames), t.limit("divide.brood_per_part"),
          t.limit("divide.bees_per_part"), t.limit("4.13 parts")}},
        {"Divides are advised from %1 to %2; brood counts for %3.",
         {t.limit("4.13 divide_from"), t.limit("4.13 divide_to"), t.limit("4.13 brood_days")}}};
}

Sentences sentencesOf(const Snapshot& s, const Due& due) {
    const Teller t(s, due.why);
    switch (due.what) {
    case DueKind::UnionCheck:
        return {{"United on %1; it is looked at after %2, and listed from %3 before that day to %4 after the union.",
                 {t.day("united"), t.limit("follow.union_days"), t.limit("4.14 listed_before"),
                  t.limit("4.14 union_check_for")}}};
    case DueKind::TakeOut:
        return {{"%1 was given on %2 for %3 days; listed from %4 before its end to %5 past it.",
                 {t.text("product"), t.day("treated"), t.text("days"), t.limit("4.14 listed_before"),
                  t.limit("4.14 take_out_for")}}};
    case DueKind::ResultAwaited:
        break;
    }
    if (t.has("ended"))
        return {{"It ended on %1 under suspicion, by a sign of %2; a result is awaited for %3 more.",
                 {t.day("ended"), t.day("sign"), t.limit("4.14 result_for")}}};
    return {{"It is under suspicion, by a sign of %1, until a result answers it.", {t.day("sign")}}};
}

} // namespace core::rules
