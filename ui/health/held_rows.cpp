#include "ui/health/held_rows.h"

#include "ui/health/health_words.h"
#include "ui/health/what_now.h"

#include <algorithm>
#include <set>

namespace ui::health {

namespace rules = core::rules;
using rules::HoldKind;

namespace {

std::vector<const rules::Hold*> holdsIn(const desk::Reading& reading, core::YardIx yard) {
    std::vector<const rules::Hold*> found;
    for (const rules::Hold& h : reading.plan.holds)
        if (reading.factsOf(h.colony).yard == yard) found.push_back(&h);
    return found;
}

board::BoardRow heading(const QString& title) {
    board::BoardRow row;
    row.kind = board::RowKind::Section;
    row.title = title;
    return row;
}

} // namespace

HeldRows heldRows(const desk::Reading& reading, const std::vector<core::YardIx>& yards) {
    HeldRows out;
    for (const core::YardIx yard : yards) {
        const auto here = [&](const rules::ColonyFacts& f) { return f.yard == yard; };
        const auto hives = static_cast<int>(std::ranges::count_if(reading.facts, here));
        auto holds = holdsIn(reading, yard);
        out.hives += hives;
        if (holds.empty()) continue;
        std::set<core::ColonyIx> held;
        for (const rules::Hold* h : holds) held.insert(h->colony);
        out.held += static_cast<int>(held.size());
        out.rows.push_back(heading(
            Health::tr("%1: %2 of %3 hives").arg(reading.snapshot.yard(yard).name).arg(held.size()).arg(hives)));
        std::ranges::stable_sort(holds, {}, &rules::Hold::kind);
        for (const rules::Hold* h : holds) out.rows.push_back(board::holdRow(reading.snapshot, *h));
    }
    return out;
}

QString alarmText(const desk::Reading& reading, const std::vector<core::YardIx>& yards) {
    QStringList suspected;
    for (const core::YardIx yard : yards)
        for (const rules::Hold* h : holdsIn(reading, yard))
            if (h->kind == HoldKind::AfbConfirmed || h->kind == HoldKind::AfbSuspected)
                suspected << Health::tr("%1 in %2")
                                 .arg(reading.snapshot.colony(h->colony).shown, reading.snapshot.yard(yard).name);
    suspected.removeDuplicates();
    if (suspected.isEmpty()) return {};
    constexpr qsizetype kNamed = 6;
    QString names = suspected.mid(0, kNamed).join(QStringLiteral(", "));
    if (suspected.size() > kNamed) names += Health::tr(" and %1 more").arg(suspected.size() - kNamed);
    return Health::tr("American foulbrood, suspected or confirmed: %1. %2").arg(names, whatNow(core::Sign::Afb));
}

} // namespace ui::health
