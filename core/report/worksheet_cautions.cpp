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

QString spanishText(const SheetInput& in, const Caution& caution, const std::vector<ColonyIx>& colonies) {
    const std::vector<ColonyIx>& whose = caution.colonies.empty() ? colonies : caution.colonies;
    switch (caution.kind) {
    case CautionKind::MitesHigh:
        return mitesText(in, caution, whose);
    case CautionKind::Masked:
        return in.say("%1: an antibiotic may have hidden foulbrood at the last clean check.").arg(names(in, whose)) +
               u' ' + limits(in, caution);
    case CautionKind::Signs:
        return in.say("%1: chalkbrood, sacbrood, nosema or deformed wings at the last visit.").arg(names(in, whose));
    case CautionKind::CountBeforeTransfer:
        return in.say("%1: bees or comb went in or out since the count.").arg(names(in, whose));
    case CautionKind::QueenUnknown:
        return (in.say("%1: no laying queen is known.").arg(names(in, whose)) + u' ' + limits(in, caution)).trimmed();
    case CautionKind::RoomUnknown:
        return in.say("%1: brood and stores were not noted; whether all fits into one box is not known.")
            .arg(names(in, whose));
    case CautionKind::NearAfb:
        return in.say("Another yard with American foulbrood lies within %1.").arg(in.say.reach(in.s.settings.afbNearM));
    case CautionKind::DriftToHeld:
        return in.say("Foragers may drift from the emptied stand to a held hive within %1.")
            .arg(in.say.reach(in.s.settings.moveDriftM));
    case CautionKind::LowerHeavier:
        return in.say("The box below holds at least 2 frames of stores more.");
    }
    return {};
}

} // namespace

QString cautionText(const SheetInput& in, const Caution& caution, const std::vector<ColonyIx>& colonies) {
    return in.say.language() == Language::Spanish ? spanishText(in, caution, colonies) : caution.because;
}

} // namespace core::report
