#include "core/report/worksheet_part.h"
#include "core/rules/calc/full_box.h"
#include "core/rules/calc/lift_limits.h"

#include <algorithm>
#include <cmath>

// What there is to lift at a union, of the hives that were weighed.

namespace core::report {

namespace calc = rules::calc;

namespace {

/// What a union lifts: the hive that is carried, and the host's box where it comes off its floor.
std::vector<ColonyIx> lifted(const rules::Union& u) {
    return u.upper == u.host ? std::vector{u.moved, u.host} : std::vector{u.moved};
}

/// At most: the carried hive with its floor and lid, of two boxes with one; the host's box alone. Kilograms.
double liftKg(const SheetInput& in, const rules::Union& u, ColonyIx c) {
    const Settings& settings = in.s.settings;
    const double box = calc::broodBoxKg(*in.of(c).gross, in.of(c).boxes, settings).high;
    return box + (c == u.moved ? settings.floorLidKg.real() : 0);
}

} // namespace

QString liftText(const SheetInput& in, const rules::Union& u) {
    QStringList loads, unknown;
    double heaviest = 0;
    for (const ColonyIx c : lifted(u)) {
        const rules::ColonyFacts& f = in.of(c);
        if (!f.gross) {
            unknown << in.briefly(c);
            continue;
        }
        const double kg = liftKg(in, u, c);
        loads << (f.boxes == 1 ? in.say("%1 %2") : in.say("%1 up to %2")).arg(in.briefly(c), in.say.load(kg));
        heaviest = std::max(heaviest, std::ceil(kg));
    }
    QString text = loads.join(QStringLiteral(", "));
    const auto passed = calc::limitsPassed(heaviest);
    if (!passed.empty()) text += in.say("; over %1: two people or a barrow").arg(in.say.limit(passed.back().kg));
    if (!text.isEmpty()) text += QStringLiteral(". ");
    if (!unknown.isEmpty())
        text += in.say("%1 not weighed: a full box can pass %2, two people or a barrow.")
                    .arg(in.say.list(unknown), in.say.heavy());
    return text.trimmed();
}

} // namespace core::report
