#include "ui/life/stays.h"

#include "core/edit/edit_context.h"
#include "ui/look/rule_words.h"
#include "ui/look/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace ui::life {

namespace {

struct StayWords {
    Q_DECLARE_TR_FUNCTIONS(ui::life::StayWords)
};

} // namespace

std::vector<Stay> staysOf(const core::edit::Session& session, core::ColonyId colony, core::Day on) {
    std::vector<Stay> out;
    const core::LengthUnit unit = session.settings().showLength;
    std::optional<core::Stand> before;
    session.read([&](const core::edit::EditContext& c) {
        for (const core::Placement& p : c.placementsOf(colony)) {
            const auto stand = c.stand(p.stand);
            if (!stand || p.since > on) continue;
            const auto yard = c.yard(stand->yard);
            Stay stay{p.since, p.until, yard ? yard->name : look::dash(), stand->name, p.headingDeg, {}};
            if (stay.until && *stay.until > on) stay.until.reset();
            if (!stay.headingDeg && !out.empty()) stay.headingDeg = out.back().headingDeg;
            if (before && before->yard == stand->yard)
                stay.carried = look::distanceOf(before->at, stand->at, unit);
            else if (before)
                stay.carried = StayWords::tr("from %1").arg(out.back().yard);
            before = stand;
            out.push_back(stay);
        }
    });
    return out;
}

std::vector<records::RecordRow> stayRows(const std::vector<Stay>& stays) {
    std::vector<records::RecordRow> rows;
    for (auto s = stays.rbegin(); s != stays.rend(); ++s) {
        QStringList words;
        words << (s->until ? StayWords::tr("until %1").arg(look::dayText(*s->until)) : StayWords::tr("until now"));
        words << (s->headingDeg ? StayWords::tr("entrance %1").arg(look::compassText(*s->headingDeg))
                                : StayWords::tr("entrance not recorded"));
        if (!s->carried.isEmpty()) words << StayWords::tr("carried %1").arg(s->carried);
        rows.push_back({records::RecordKind::Carry, 0, s->since, StayWords::tr("%1 · stand %2").arg(s->yard, s->stand),
                        words.join(QStringLiteral(" · ")), false});
    }
    return rows;
}

} // namespace ui::life
