#include "ui/records/divide_form.h"

#include "core/edit/edits.h"
#include "core/edit/hive_row.h"
#include "ui/form/typed.h"
#include "ui/look/words.h"
#include "ui/records/hive_fields.h"
#include "ui/records/odd.h"
#include "ui/start/compass.h"

namespace ui::records {

namespace edit = core::edit;
using form::Values;

namespace {

const QString kBeside = QStringLiteral("beside");
constexpr int kLabelsTried = 400;

/// Stands that bear a hive that day or later.
std::vector<core::MmPoint> takenSpots(const edit::EditContext& c, core::YardId yard, core::Day day) {
    std::vector<core::MmPoint> out;
    for (const core::Stand& stand : c.standsOf(yard))
        for (const core::Placement& p : c.placementsAt(stand.id))
            if (!p.until || *p.until > day) {
                out.push_back(stand.at);
                break;
            }
    return out;
}

/// On from the mother's label, the first that nobody has had.
QString freeLabel(const edit::Session& book, const QString& from) {
    QString label;
    book.read([&](const edit::EditContext& c) {
        for (int step = 1; step <= kLabelsTried; ++step) {
            const auto next = edit::labelAfter(from, step);
            if (!next) return;
            if (!c.coloniesLabelled(*next).empty()) continue;
            label = *next;
            return;
        }
    });
    return label;
}

} // namespace

DivideForm::DivideForm(const edit::Session& book, const core::Colony& mother, core::Day day)
    : RecordForm(book), m_mother(mother), m_day(day) {
    book.read([&](const edit::EditContext& c) {
        for (const core::Placement& p : c.placementsOf(mother.id)) {
            m_stand = c.stand(p.stand);
            if (p.headingDeg) m_heading = *p.headingDeg;
        }
        if (m_stand) m_beside = spotBeside(m_stand->at, m_heading, takenSpots(c, m_stand->yard, day));
    });
}

QString DivideForm::title() const { return Records::tr("Divide of %1").arg(nameOf(m_mother.id, m_day)); }

QString DivideForm::saveText() const { return Records::tr("&Save divide"); }

std::vector<form::Field> DivideForm::fields() const {
    std::vector<form::Field> out = hiveFields(book());
    out.front().label = Records::tr("New &label");
    out.front().spoken = Records::tr("Label of the new colony");
    form::Field stand{.key = kStand,
                      .kind = form::Kind::Choice,
                      .label = Records::tr("S&tand"),
                      .spoken = Records::tr("Where the new colony is put")};
    if (m_beside && m_stand)
        stand.options.push_back(
            {kBeside, Records::tr("beside %1, %2")
                          .arg(m_mother.label, look::wayText(m_stand->at, *m_beside, book().settings().showLength))});
    if (m_stand)
        for (const core::Stand& s : freeStands(book(), m_stand->yard, m_day))
            stand.options.push_back({QString::number(s.id.value), Records::tr("stand %1, empty").arg(s.name)});
    out.insert(out.begin() + 1, {dayField(Records::tr("Day it was divided")), stand, headingField()});
    out.push_back(byField(Records::tr("&By"), Records::tr("Done by")));
    out.push_back(noteField());
    return out;
}

Values DivideForm::start() const {
    Values v;
    putHive(v, m_mother, book());
    v[kLabel] = freeLabel(book(), m_mother.label);
    v[kBroodBoxes] = QStringLiteral("1");
    v[kQueenBorn].clear();
    v[kDay] = form::typedDay(m_day);
    v[kHeading] = start::directionText(m_heading);
    return v;
}

core::Day DivideForm::dayOf(const Values& values) const { return form::dayOf(values, kDay, today()).value_or(m_day); }

void DivideForm::judge(form::Judge& judge, const Values& values) const {
    const auto day = judge.needDay(kDay);
    judgeHive(judge, values, book(), day.value_or(m_day), {});
    judgeHeading(judge, values);
    judge.need(kStand, Records::tr("There is no room beside it and no empty stand; carry a hive away first."));
    if (day && *day < m_mother.since)
        judge.add(kDay, Records::tr("%1 began on %2.").arg(m_mother.label, look::dayText(m_mother.since)));
}

QStringList DivideForm::odd(const Values& values) const {
    QStringList out;
    if (const auto odd = longAgo(dayOf(values), today())) out << *odd;
    const auto visits = book().visitsOf(m_mother.id, 1);
    const auto last = visits.empty() ? std::nullopt : std::optional(visits.front().day);
    if (const auto odd = beforeLastVisit(m_mother.label, dayOf(values), last)) out << *odd;
    return out;
}

edit::Edit DivideForm::edit(const Values& values) const {
    edit::Divide divide;
    divide.from = m_mother.id;
    readHive(values, book(), divide.made.colony);
    divide.made.colony.since = dayOf(values);
    divide.made.headingDeg = headingOf(values);
    const QString where = form::typed(values, kStand);
    if (where != kBeside) divide.made.stand.id = core::StandId{where.toLongLong()};
    if (m_stand) divide.made.stand.yard = m_stand->yard;
    if (where == kBeside && m_beside) divide.made.stand.at = *m_beside;
    divide.by = form::typed(values, kBy);
    divide.note = form::typed(values, kNote);
    return [divide](const edit::EditContext& c) { return edit::recordDivide(c, divide); };
}

} // namespace ui::records
