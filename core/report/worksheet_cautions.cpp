#include "core/report/worksheet_part.h"

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

/// Those of the colonies that the rules' sentence names first: "K2: …".
std::vector<ColonyIx> named(const SheetInput& in, const Caution& caution, const std::vector<ColonyIx>& colonies) {
    std::vector<ColonyIx> out;
    for (const ColonyIx c : colonies) {
        const QString lead = in.name(c) + u':';
        if (caution.because.startsWith(lead) || caution.because.contains(u' ' + lead)) out.push_back(c);
    }
    return out.empty() ? colonies : out;
}

QString mitesText(const SheetInput& in, const std::vector<ColonyIx>& colonies) {
    QStringList out;
    for (const ColonyIx c : colonies)
        if (const auto& m = in.of(c).mites)
            out << in.say("%1: %2 in 100 bees").arg(in.name(c), QString::number(100.0 * m->mites / m->sample, 'f', 1));
    return out.join(QStringLiteral("; ")) + u'.';
}

QString spanishText(const SheetInput& in, const Caution& caution, const std::vector<ColonyIx>& colonies) {
    const std::vector<ColonyIx> whose = named(in, caution, colonies);
    switch (caution.kind) {
    case CautionKind::MitesHigh:
        return mitesText(in, whose);
    case CautionKind::Masked:
        return in.say("%1: an antibiotic may have hidden foulbrood at the last clean check.").arg(names(in, whose));
    case CautionKind::Signs:
        return in.say("%1: chalkbrood, sacbrood, nosema or deformed wings at the last visit.").arg(names(in, whose));
    case CautionKind::CountBeforeTransfer:
        return in.say("%1: bees or comb went in or out since the count.").arg(names(in, whose));
    case CautionKind::QueenUnknown:
        return in.say("%1: no laying queen is known.").arg(names(in, whose));
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
