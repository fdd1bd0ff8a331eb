#include "core/rules/limits.h"
#include "core/rules/missing.h"

// Patterns, so that paper can say them in Spanish (core/report/worksheet_spanish.cpp).

namespace core::rules {

namespace {

class MissingTeller {
public:
    MissingTeller(const Snapshot& s, const Missing& missing) : m_s(s), m_missing(missing) {}

    Sentence count() const {
        if (!m_missing.last) return {"Bees not counted."};
        return {"On %1 only one of its two boxes was counted.", {day()}};
    }
    Sentence old(const char* pattern, const char* limit) const { return {pattern, {day(), age(), limitOf(limit)}}; }
    Sentence moved() const {
        const Day* moved = m_missing.why.find<Day>("moved");
        return {"Bees or comb came or went on %1, after the count of %2.",
                {moved ? isoText(*moved) : QString(), day()}};
    }
    Sentence broodCheck() const {
        if (!m_missing.last) return {"Brood not checked for disease."};
        return {"Brood last checked on %1: that does not count on the day.", {day()}};
    }
    Sentence queen() const {
        if (m_missing.why.find<qint64>("virgin")) return {"A virgin queen on %1: does she lay?", {day()}};
        if (m_missing.why.names("queen.max_age_days"))
            return old("Queen or eggs seen last on %1, %2 days before; more than %3 is too old.", "queen.max_age_days");
        return {"Whether it has a queen is not known."};
    }
    Sentence broodFrames() const {
        if (!m_missing.last) return {"Brood frames not counted: they decide on a divide."};
        return old("Brood frames counted on %1, %2 days before; more than %3 is too old.", "4.13 brood_days");
    }
    Sentence weight() const {
        if (!m_missing.last) return {"Not weighed: no feed can be reckoned."};
        const auto* supers = m_missing.why.find<qint64>("honey boxes");
        if (supers && *supers > 0) return {"Weighed on %1 with honey boxes on: that does not count.", {day()}};
        return old("Weighed on %1, %2 days before; more than %3 is too old.", "weigh.max_age_days");
    }
    Sentence signs() const {
        const auto* names = m_missing.why.find<QString>("signs");
        return {"Seen: %1, on %2. Look again.", {names ? *names : QString(), day()}};
    }
    QString day() const { return m_missing.last ? isoText(*m_missing.last) : QString(); }

private:
    QString age() const { return QString::number(m_s.on - m_missing.last.value_or(m_s.on)); }
    QString limitOf(const char* name) const { return limitText(m_s.settings, name, m_missing.why.southern); }

    const Snapshot& m_s;
    const Missing& m_missing;
};

} // namespace

Sentence sentenceOf(const Snapshot& s, const Missing& missing) {
    const MissingTeller tell(s, missing);
    switch (missing.kind) {
    case MissingKind::Count:
        return tell.count();
    case MissingKind::CountOld:
        return tell.old("Bees counted on %1, %2 days before; more than %3 is too old.", "strength.max_age_days");
    case MissingKind::NoBees:
        return {"No bees seen on %1: does it live?", {tell.day()}};
    case MissingKind::CountBeforeTransfer:
        return tell.moved();
    case MissingKind::BroodCheck:
        return tell.broodCheck();
    case MissingKind::Queen:
        return tell.queen();
    case MissingKind::BroodFrames:
        return tell.broodFrames();
    case MissingKind::Room:
        return {"Brood frames and the stores of both boxes not all noted on %1: does it fit into one box?",
                {tell.day()}};
    case MissingKind::Weight:
        return tell.weight();
    case MissingKind::Signs:
        return tell.signs();
    }
    return {};
}

} // namespace core::rules
