#include "core/report/worksheet_part.h"
#include "core/rules/limits.h"

// Cautions (rule 4.5). English says what the rules say; Spanish says it again from the same facts.

namespace core::report {

using rules::Caution;
using rules::CautionKind;

namespace {

QString names(const SheetInput& in, const std::vector<ColonyIx>& colonies) {
    QStringList out;
    for (const ColonyIx c : colonies) out << in.name(c);
    return in.say.list(out);
}

/// "Limit: 3 in 100, August to December, 45 days.": what the rules name of it.
QString limits(const SheetInput& in, const Caution& caution) {
    QStringList values;
    for (const rules::Limit& l : limitsOf(in.s.settings, caution.why))
        if (l.name != QLatin1StringView("order")) values << in.say(rules::Sentences{{"%1", {l.value}}});
    return values.isEmpty() ? QString() : in.say("Limit: %1.").arg(values.join(QStringLiteral(", ")));
}

QString mitesText(const SheetInput& in, const Caution& caution, const std::vector<ColonyIx>& colonies) {
    QStringList out;
    for (const ColonyIx c : colonies)
        if (const auto& m = in.of(c).mites)
            out << in.say("%1: %2 in 100 bees").arg(in.name(c), QString::number(100.0 * m->mites / m->sample, 'f', 1));
    return out.join(QStringLiteral("; ")) + QStringLiteral(". ") + limits(in, caution);
}

/// The facts of each colony, one after the other as the rule found them.
template <class Fn> QString eachColony(const Caution& caution, Fn say) {
    QStringList out;
    std::optional<ColonyIx> of;
    std::vector<rules::Fact> own;
    const auto take = [&] {
        if (of) out << say(*of, own);
        own.clear();
    };
    for (const rules::Fact& fact : caution.why.facts) {
        const auto* colony = std::get_if<ColonyIx>(&fact.value);
        if (colony && fact.name == std::string_view("colony")) {
            take();
            of = *colony;
        } else {
            own.push_back(fact);
        }
    }
    take();
    return out.join(u' ');
}

template <class T> T valueOf(const std::vector<rules::Fact>& facts, std::string_view name) {
    for (const rules::Fact& fact : facts)
        if (fact.name == name)
            if (const T* value = std::get_if<T>(&fact.value)) return *value;
    return {};
}

QString signsText(const SheetInput& in, const Caution& caution) {
    return eachColony(caution, [&](ColonyIx c, const std::vector<rules::Fact>& facts) {
        QStringList seen;
        for (const QString& sign : valueOf<QString>(facts, "signs").split(QStringLiteral(", ")))
            seen << in.say(rules::Sentences{{"%1", {sign}}});
        return in.say("%1: %2, seen on %3.")
            .arg(in.name(c), seen.join(QStringLiteral(", ")), in.say.day(valueOf<Day>(facts, "seen"), in.plan.on));
    });
}

QString transferText(const SheetInput& in, const Caution& caution) {
    return eachColony(caution, [&](ColonyIx c, const std::vector<rules::Fact>& facts) {
        return in.say("%1: counted on %2; bees or comb went in or out on %3.")
            .arg(in.name(c), in.say.day(valueOf<Day>(facts, "counted"), in.plan.on),
                 in.say.day(valueOf<Day>(facts, "moved"), in.plan.on));
    });
}

QString driftText(const SheetInput& in, const Caution& caution) {
    QStringList held;
    for (const rules::Fact& fact : caution.why.facts)
        if (const auto* colony = std::get_if<ColonyIx>(&fact.value)) held << in.name(*colony);
    return in.say("Foragers may drift from the emptied stand to %1, held, within %2.")
        .arg(in.say.list(held), in.say.reach(in.s.settings.moveDriftM));
}

QString heavierText(const SheetInput& in, const Caution& caution) {
    const std::vector<rules::Fact>& facts = caution.why.facts;
    return in.say("%1, below, holds %2 of stores; %3, above, only %4.")
        .arg(in.name(valueOf<ColonyIx>(facts, "below")), in.say.frames(valueOf<Quarters>(facts, "stores below")),
             in.name(valueOf<ColonyIx>(facts, "above")), in.say.frames(valueOf<Quarters>(facts, "stores above")));
}

QString spanishText(const SheetInput& in, const Caution& caution, const std::vector<ColonyIx>& colonies) {
    const std::vector<ColonyIx>& whose = caution.colonies.empty() ? colonies : caution.colonies;
    switch (caution.kind) {
    case CautionKind::MitesHigh:
        return mitesText(in, caution, whose);
    case CautionKind::Masked:
        return in.say("%1: an antibiotic may have hidden foulbrood at the last clean check.").arg(names(in, whose)) +
               u' ' + limits(in, caution);
    case CautionKind::Signs:
        return signsText(in, caution);
    case CautionKind::CountBeforeTransfer:
        return transferText(in, caution);
    case CautionKind::QueenUnknown:
        return (in.say("%1: no laying queen is known.").arg(names(in, whose)) + u' ' + limits(in, caution)).trimmed();
    case CautionKind::RoomUnknown:
        return in.say("%1: brood and stores were not noted; whether all fits into one box is not known.")
            .arg(names(in, whose));
    case CautionKind::NearAfb:
        return in.say("Another yard with American foulbrood lies within %1.").arg(in.say.reach(in.s.settings.afbNearM));
    case CautionKind::DriftToHeld:
        return driftText(in, caution);
    case CautionKind::LowerHeavier:
        return heavierText(in, caution);
    }
    return {};
}

} // namespace

QString cautionText(const SheetInput& in, const Caution& caution, const std::vector<ColonyIx>& colonies) {
    return in.say.language() == Language::Spanish ? spanishText(in, caution, colonies) : caution.because;
}

} // namespace core::report
