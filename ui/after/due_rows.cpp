#include "ui/after/due_rows.h"

#include "core/rules/due.h"
#include "core/rules/finding_words.h"
#include "ui/look/rule_words.h"
#include "ui/look/words.h"

namespace ui::after {

using core::rules::Due;
using core::rules::DueKind;

namespace {

QString answerText(std::optional<bool> value, const QString& yes, const QString& no, const QString& open) {
    return !value ? open : *value ? yes : no;
}

QStringList unitedWith(const core::Snapshot& s, const Due& due) {
    QStringList names;
    const core::Day* day = due.why.find<core::Day>("united");
    for (const core::SnapLineage& row : s.lineage)
        if (day && row.how == core::LineageHow::United && row.into == due.colony && row.day == *day)
            names << s.colony(row.colony).shown;
    return names;
}

DueRow rowOf(const core::Snapshot& s, const Due& due) {
    const core::SnapColony& colony = s.colony(due.colony);
    DueRow row;
    row.colony = colony.id;
    row.name = colony.shown;
    row.ended = colony.ended.has_value();
    if (const core::SnapStay* place = s.placeOf(due.colony)) row.yard = s.yard(place->yard).name;
    row.what = due.what;
    row.on = due.on;
    row.late = s.on - due.on;
    row.title = Afterwards::tr("%1: %2").arg(row.name, look::dueText(due.what));
    row.why = core::rules::textOf(core::rules::sentencesOf(s, due));
    if (const QStringList with = unitedWith(s, due); !with.isEmpty())
        row.why = Afterwards::tr("With %1. %2").arg(with.join(QStringLiteral(", ")), row.why);
    if (const QString* product = due.why.find<QString>("product")) row.product = *product;
    return row;
}

QString headingOf(const DueRow& row) {
    if (row.late > 0) return Afterwards::tr("Overdue");
    return row.late == 0 ? Afterwards::tr("Today") : Afterwards::tr("To come");
}

} // namespace

namespace {

QStringList parts(const Answers& a) {
    return {
        answerText(a.paperGone, Afterwards::tr("paper gone"), Afterwards::tr("paper not gone"),
                   Afterwards::tr("paper?")),
        answerText(a.oneQueen, Afterwards::tr("one queen"), Afterwards::tr("no queen seen"), Afterwards::tr("queen?")),
        answerText(a.eggs, Afterwards::tr("eggs"), Afterwards::tr("no eggs"), Afterwards::tr("eggs?"))};
}

} // namespace

QString Answers::text() const { return parts(*this).join(QStringLiteral(" · ")); }

QString Answers::known() const {
    const QStringList all = parts(*this);
    QStringList out;
    if (paperGone) out << all[0];
    if (oneQueen) out << all[1];
    if (eggs) out << all[2];
    return out.join(QStringLiteral(" · "));
}

QString DueRow::when(core::Day today) const {
    const QString day = look::dayTextFrom(on, today);
    if (late <= 0) return day;
    return late == 1 ? Afterwards::tr("%1, a day over").arg(day)
                     : Afterwards::tr("%1, %2 days over").arg(day).arg(late);
}

QString DueRow::spoken(core::Day today) const {
    if (!heading.isEmpty()) return heading;
    QStringList parts{title, when(today), yard, why};
    if (what == DueKind::UnionCheck) parts << answers.text();
    parts.removeAll(QString());
    return parts.join(QStringLiteral(". "));
}

std::vector<DueRow> dueRows(const core::Snapshot& s, const std::vector<Due>& due, std::optional<core::YardId> only,
                            const std::map<core::ColonyId, Answers>& answers) {
    std::vector<DueRow> out;
    QString heading;
    for (const Due& d : due) {
        const core::SnapStay* place = s.placeOf(d.colony);
        if (only && (!place || s.yard(place->yard).id != *only)) continue;
        DueRow row = rowOf(s, d);
        if (const auto it = answers.find(row.colony); it != answers.end()) row.answers = it->second;
        if (headingOf(row) != heading) {
            DueRow above;
            above.heading = heading = headingOf(row);
            out.push_back(std::move(above));
        }
        out.push_back(std::move(row));
    }
    return out;
}

std::vector<Due> dueOn(const core::Snapshot& s) {
    std::vector<core::YardIx> all;
    for (size_t i = 0; i < s.yards.size(); ++i) all.push_back(core::YardIx{static_cast<qint32>(i)});
    return core::rules::dueChecks(core::rules::viewOf(s), all);
}

} // namespace ui::after
