#include "ui/records/union_form.h"

#include "core/edit/edits.h"
#include "core/edit/put_right.h"
#include "ui/form/typed.h"
#include "ui/records/odd.h"
#include "ui/records/record_words.h"

namespace ui::records {

namespace edit = core::edit;
using core::LineageHow;
using form::Values;

UnionForm::UnionForm(const edit::Session& book, core::ColonyId about, core::Day day)
    : RecordForm(book), m_about(about), m_day(day) {}

QString UnionForm::title() const { return Records::tr("Unite or shake out %1").arg(nameOf(m_about, m_day)); }

QString UnionForm::saveText() const { return Records::tr("&Save"); }

std::vector<form::Field> UnionForm::fields() const {
    form::Field how{.key = kHow,
                    .kind = form::Kind::Choice,
                    .label = Records::tr("&How"),
                    .spoken = Records::tr("United or shaken out"),
                    .options = {{core::word(LineageHow::United), Records::tr("united")},
                                {core::word(LineageHow::ShakenOut), Records::tr("shaken out")}}};
    return {how, colonyField(kInto, Records::tr("&Into"), Records::tr("The colony that took the bees")),
            dayField(Records::tr("Day it was done")), byField(Records::tr("&By"), Records::tr("Done by")), noteField()};
}

Values UnionForm::start() const { return {{kDay, form::typedDay(m_day)}}; }

void UnionForm::judge(form::Judge& judge, const Values& values) const {
    const auto on = judge.needDay(kDay);
    const auto into = judgeColony(judge, values, kInto, on.value_or(m_day));
    if (into && into->id == m_about) judge.add(kInto, Records::tr("Another colony takes its bees."));
}

core::Lineage UnionForm::lineageOf(const Values& values) const {
    core::Lineage l;
    l.day = form::dayOf(values, kDay, today()).value_or(m_day);
    l.how = chosenOf<LineageHow>(values, kHow);
    l.colony = m_about;
    l.into = colonyOf(values, kInto, l.day);
    l.by = form::typed(values, kBy);
    l.note = form::typed(values, kNote);
    return l;
}

QStringList UnionForm::odd(const Values& values) const {
    const core::Lineage l = lineageOf(values);
    QStringList out;
    if (const auto odd = longAgo(l.day, today())) out << *odd;
    const auto visits = book().visitsOf(l.into, 1);
    const auto last = visits.empty() ? std::nullopt : std::optional(visits.front().day);
    if (const auto odd = beforeLastVisit(nameOf(l.into, l.day), l.day, last)) out << *odd;
    return out;
}

edit::Edit UnionForm::edit(const Values& values) const {
    const core::Lineage l = lineageOf(values);
    return [l](const edit::EditContext& c) { return edit::recordUnion(c, l); };
}

LineageForm::LineageForm(const edit::Session& book, const core::Lineage& was) : RecordForm(book), m_was(was) {}

QString LineageForm::title() const {
    const QString from = nameOf(m_was.colony, m_was.day);
    const QString into = nameOf(m_was.into, m_was.day);
    switch (m_was.how) {
    case LineageHow::United:
        return Records::tr("%1 united into %2").arg(from, into);
    case LineageHow::ShakenOut:
        return Records::tr("%1 shaken out into %2").arg(from, into);
    case LineageHow::Divided:
        return Records::tr("%2 divided from %1").arg(from, into);
    }
    return {};
}

QString LineageForm::saveText() const { return Records::tr("&Save changes"); }

std::vector<form::Field> LineageForm::fields() const {
    return {dayField(Records::tr("Day it was done")), byField(Records::tr("&By"), Records::tr("Done by")), noteField()};
}

Values LineageForm::start() const { return {{kDay, form::typedDay(m_was.day)}, {kBy, m_was.by}, {kNote, m_was.note}}; }

void LineageForm::judge(form::Judge& judge, const Values&) const { judge.needDay(kDay); }

edit::Edit LineageForm::edit(const Values& values) const {
    core::Lineage l = m_was;
    l.day = form::dayOf(values, kDay, today()).value_or(m_was.day);
    l.by = form::typed(values, kBy);
    l.note = form::typed(values, kNote);
    return [l](const edit::EditContext& c) { return edit::changeLineage(c, l); };
}

std::optional<QString> LineageForm::meanwhile() const { return movedSince(book(), m_was); }

} // namespace ui::records
