#include "ui/health/round_rows.h"

#include "ui/health/health_words.h"
#include "ui/look/words.h"

#include <algorithm>

namespace ui::health {

using core::rules::RoundGroup;
using core::rules::RoundStop;
using core::rules::RoundYard;

namespace {

board::BoardRow section(const QString& title) {
    board::BoardRow row;
    row.kind = board::RowKind::Section;
    row.title = title;
    return row;
}

/// "looked at 24 Aug, 2 of 4 frames"
QString lookedText(const RoundStop& stop, core::Day on) {
    if (!stop.looked) return Health::tr("brood never looked at");
    const QString day = look::dayTextFrom(*stop.looked, on);
    return stop.broodFrames < 0
               ? Health::tr("looked at %1, %2 frames").arg(day).arg(stop.examined)
               : Health::tr("looked at %1, %2 of %3 frames").arg(day).arg(stop.examined).arg(stop.broodFrames);
}

/// Why it is on the round, and what else is to be known of its check.
QStringList whys(const core::Snapshot& s, const RoundYard& round, const RoundStop& stop) {
    QStringList out;
    if (stop.lacks) out << stop.lacks->told;
    if (stop.until && *stop.until < round.fall)
        out << Health::tr("Its check of %1 counts until %2, no longer on %3.")
                   .arg(look::dayTextFrom(*stop.checked, s.on), look::dayTextFrom(*stop.until, s.on),
                        look::dayTextFrom(round.fall, s.on));
    if (stop.masked)
        out << Health::tr("Masked: the antibiotic of %1 can hide foulbrood. Such a check counts, but lifts no other "
                          "hold.")
                   .arg(look::dayTextFrom(*stop.masked, s.on));
    if (stop.group == RoundGroup::Traced) out << Health::tr("Held: visited after the others.");
    if (stop.group == RoundGroup::Signs) out << Health::tr("Held for signs of its own: visited last of all.");
    if (stop.group == RoundGroup::Closed)
        out << Health::tr("Foulbrood is suspected or confirmed: it stays closed, only the inspector says what more.");
    return out;
}

board::BoardRow rowOf(const core::Snapshot& s, const RoundYard& round, const RoundStop& stop, const QString& before) {
    board::BoardRow row;
    row.colony = s.colony(stop.colony).id;
    row.title = before + s.colony(stop.colony).shown;
    row.right = stop.until && *stop.until >= round.fall
                    ? Health::tr("counts until %1").arg(look::dayTextFrom(*stop.until, s.on))
                    : lookedText(stop, s.on);
    const QStringList why = whys(s, round, stop);
    if (!why.isEmpty()) row.lines = {why.join(u' ')};
    return row;
}

} // namespace

std::vector<board::BoardRow> roundRows(const desk::Reading& reading, const RoundYard& round) {
    const core::Snapshot& s = reading.snapshot;
    std::vector<board::BoardRow> rows;
    if (!round.walk.empty())
        rows.push_back(section(Health::tr("To check, in walking order; those that are held last")));
    int number = 0;
    for (const RoundStop& stop : round.walk) rows.push_back(rowOf(s, round, stop, Health::tr("%1. ").arg(++number)));
    if (!round.closed.empty()) rows.push_back(section(Health::tr("Not on the round: they stay closed")));
    for (const RoundStop& stop : round.closed) rows.push_back(rowOf(s, round, stop, {}));
    if (!round.sure.empty())
        rows.push_back(section(Health::tr("A check still counts on %1").arg(look::dayText(round.fall))));
    for (const RoundStop& stop : round.sure) rows.push_back(rowOf(s, round, stop, {}));
    return rows;
}

QString roundSummary(const desk::Reading& reading, const RoundYard& round) {
    const size_t open = round.walk.size() + round.closed.size();
    const auto none = std::ranges::count_if(round.walk, [](const RoundStop& stop) { return !stop.until; }) +
                      std::ranges::count_if(round.closed, [](const RoundStop& stop) { return !stop.until; });
    const QString yard = reading.snapshot.yard(round.yard).name;
    const QString fall = look::dayText(round.fall);
    if (open == 0)
        return Health::tr("%1: each of %2 hives has a brood check that still counts on %3.")
            .arg(yard)
            .arg(round.hives())
            .arg(fall);
    const QString then = Health::tr("%1: %2 of %3 hives have no brood check that will still count on %4")
                             .arg(yard, QString::number(open), QString::number(round.hives()), fall);
    if (round.fall == reading.snapshot.on) return Health::tr("%1.").arg(then);
    return Health::tr("%1; none that counts on %2: %3.")
        .arg(then, look::dayText(reading.snapshot.on), QString::number(none));
}

QString roundFrom(const desk::Reading& reading, const RoundYard& round) {
    if (round.fall == reading.snapshot.on)
        return Health::tr("The fall unions have begun: what is not checked is in none of them.");
    const QString from = look::dayText(round.from), fall = look::dayText(round.fall);
    return round.from > reading.snapshot.on
               ? Health::tr("The fall unions begin on %1: only a check on or after %2 will count then.").arg(fall, from)
               : Health::tr("The fall unions begin on %1: a check from %2 on counts then.").arg(fall, from);
}

} // namespace ui::health
