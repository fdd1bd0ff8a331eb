#include "ui/board/difference_words.h"

#include "ui/board/boards.h"
#include <cstdlib>
#include <map>

namespace ui::board {

namespace {

namespace rules = core::rules;
using rules::PlanChange;

QString unionsText(int unions) { return unions == 1 ? Boards::tr("1 union") : Boards::tr("%1 unions").arg(unions); }

QString titleOf(PlanChange what) {
    switch (what) {
    case PlanChange::UnionWent:
        return Boards::tr("Went: %1.");
    case PlanChange::UnionCame:
        return Boards::tr("Came: %1.");
    case PlanChange::HostTurned:
        return Boards::tr("Turned round: %1.");
    case PlanChange::BoxesTurned:
        return Boards::tr("Boxes turned: %1.");
    case PlanChange::GainChanged:
        return Boards::tr("Worth more or less: %1.");
    case PlanChange::ShakeOutWent:
        return Boards::tr("Not shaken out now: %1.");
    case PlanChange::ShakeOutCame:
        return Boards::tr("Shaken out now: %1.");
    case PlanChange::ShakeOutElsewhere:
        return Boards::tr("Shaken out elsewhere: %1.");
    case PlanChange::LeftAlone:
        break;
    }
    return Boards::tr("Alone now: %1.");
}

QString textOf(const rules::PlanChangeRow& row) {
    const auto& p = row.pair;
    const QString arrow = Boards::tr("%1 → %2").arg(p.movedName, p.hostName);
    switch (row.what) {
    case PlanChange::UnionWent:
    case PlanChange::UnionCame:
        return Boards::tr("%1 (%2)").arg(arrow, gainText(p.gain));
    case PlanChange::GainChanged:
        return Boards::tr("%1 (%2, before %3)").arg(arrow, gainText(p.gain), gainText(row.gainBefore));
    case PlanChange::BoxesTurned:
        return Boards::tr("%1 on top in %2").arg(p.upper == p.host ? p.hostName : p.movedName, arrow);
    case PlanChange::ShakeOutWent:
    case PlanChange::ShakeOutCame:
    case PlanChange::ShakeOutElsewhere:
        return Boards::tr("%1 before %2").arg(p.movedName, p.hostName);
    case PlanChange::HostTurned:
        return arrow;
    case PlanChange::LeftAlone:
        break;
    }
    return row.atRisk ? Boards::tr("%1 (at risk)").arg(p.movedName) : p.movedName;
}

} // namespace

QString gainText(qint64 thousandths) {
    const qint64 hundredths = (std::abs(thousandths) + 5) / 10; // half up, exactly
    const QString text = QStringLiteral("%1.%2").arg(hundredths / 100).arg(hundredths % 100, 2, 10, QLatin1Char('0'));
    return thousandths < 0 && hundredths > 0 ? u'-' + text : text;
}

QString differenceHead(const rules::PlanDifference& d) {
    if (d.none())
        return Boards::tr("The plan stays as it was: %1, gain %2.").arg(unionsText(d.unions), gainText(d.gain));
    const QString now = Boards::tr("%1, gain %2").arg(unionsText(d.unions), gainText(d.gain));
    const QString before = Boards::tr("%1, gain %2").arg(unionsText(d.unionsBefore), gainText(d.gainBefore));
    return now == before ? Boards::tr("Still %1.").arg(now) : Boards::tr("Now %1; before %2.").arg(now, before);
}

QStringList differenceLines(const rules::PlanDifference& d, qsizetype most) {
    std::map<PlanChange, QStringList> kinds;
    for (const rules::PlanChangeRow& row : d.rows) kinds[row.what] << textOf(row);
    QStringList out;
    for (auto& [what, texts] : kinds) {
        const qsizetype more = most > 0 ? texts.size() - most : 0;
        if (more > 1) texts = texts.mid(0, most) << Boards::tr("and %1 more").arg(more);
        out << titleOf(what).arg(texts.join(QStringLiteral(", ")));
    }
    return out;
}

} // namespace ui::board
