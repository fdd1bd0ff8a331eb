#include "ui/health/mite_shown.h"

#include "ui/season/mite_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace ui::health {

namespace rules = core::rules;

namespace {
struct MiteList {
    Q_DECLARE_TR_FUNCTIONS(ui::health::MiteList)
};
} // namespace

MiteRows miteRows(const season::SeasonDesk& desk) {
    const core::Day first = desk.from() - rules::kBeforeTreating;
    const auto& session = desk.session();
    MiteRows rows;
    rows.visits = desk.visitsSince(first);
    std::erase_if(rows.visits, [](const core::Visit& v) { return !v.mites || !v.miteSample; });
    rows.falls = session.miteFalls(first, desk.day());
    rows.treatments = session.treatments();
    rows.out = session.stripsOut();
    return rows;
}

rules::TreatmentBook treatmentBook(const season::SeasonDesk& desk, const MiteRows& rows) {
    return {desk.reading().snapshot, desk.from(), desk.yard(), rows.visits, rows.falls, rows.treatments, rows.out};
}

season::Shown mitesOfHealth(season::SeasonDesk& desk) {
    const MiteRows rows = miteRows(desk);
    season::Shown shown;
    shown.parts = {washesPart(desk), washesOverTimePart(desk, rows), fallenPart(desk, rows),
                   treatmentsPart(desk, rows)};
    shown.sentences << season::decidersText();
    return shown;
}

QString someOf(const QStringList& named) {
    constexpr qsizetype kMost = 8;
    if (named.size() <= kMost) return named.join(QStringLiteral(", "));
    return MiteList::tr("%1 and %2 more")
        .arg(named.mid(0, kMost - 1).join(QStringLiteral(", ")))
        .arg(named.size() - kMost + 1);
}

std::vector<chart::Mark> treatmentMarks(const season::SeasonDesk& desk, const MiteRows& rows) {
    if (!desk.yard()) return {}; // of one yard they say nothing of the others
    std::vector<chart::Mark> marks;
    for (const rules::TreatmentSeen& t : rules::treatmentsSeen(treatmentBook(desk, rows))) {
        const auto last = t.days.last > t.days.first ? std::optional(std::min(t.days.last, desk.day())) : std::nullopt;
        marks.push_back({chart::MarkKind::Treatment, t.days.first, last, MiteList::tr("T"), t.treatment.product});
    }
    std::ranges::reverse(marks);
    return marks;
}

std::optional<bool> southernOf(const season::SeasonDesk& desk) {
    const core::Snapshot& s = desk.reading().snapshot;
    if (const auto yard = desk.yard()) return s.yard(*yard).southern();
    std::optional<bool> half;
    for (const core::SnapYard& yard : s.yards) {
        if (half && *half != yard.southern()) return std::nullopt;
        half = yard.southern();
    }
    return half.value_or(false);
}

} // namespace ui::health
