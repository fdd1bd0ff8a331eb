#include "ui/records/colony_form.h"

#include "core/edit/edits.h"
#include "core/edit/put_right.h"
#include "ui/form/typed.h"
#include "ui/records/hive_fields.h"
#include "ui/records/odd.h"
#include "ui/start/compass.h"

#include <algorithm>
#include <iterator>

namespace ui::records {

namespace edit = core::edit;
using form::Values;

namespace {

const QString kSince = QStringLiteral("since");

form::Field sinceField() {
    return {.key = kSince,
            .kind = form::Kind::Day,
            .label = Records::tr("S&ince"),
            .spoken = Records::tr("Day the colony began")};
}

} // namespace

ColonyForm::ColonyForm(const edit::Session& book, const core::Colony& was) : RecordForm(book), m_was(was) {
    for (const core::Placement& place : book.placementsOf(was.id))
        if (place.first) m_place.emplace(book, place);
}

QString ColonyForm::title() const { return Records::tr("Data of %1").arg(nameOf(m_was.id, m_was.since)); }

QString ColonyForm::saveText() const { return Records::tr("&Save changes"); }

std::vector<form::Field> ColonyForm::fields() const {
    std::vector<form::Field> out = hiveFields(book());
    out.insert(out.begin() + 1, sinceField());
    out.push_back(noteField());
    if (!m_place) return out;
    std::vector<form::Field> place = m_place->fields();
    place.front().heading = Records::tr("Its first place");
    std::ranges::move(place, std::back_inserter(out));
    return out;
}

Values ColonyForm::start() const {
    Values v{{kSince, form::typedDay(m_was.since)}, {kNote, m_was.note}};
    putHive(v, m_was, book());
    if (m_place) m_place->put(v);
    return v;
}

void ColonyForm::judge(form::Judge& judge, const Values& values) const {
    const auto since = judge.needDay(kSince);
    judgeHive(judge, values, book(), since.value_or(m_was.since), m_was.id);
    if (m_place) m_place->judge(judge, values);
}

edit::Edit ColonyForm::edit(const Values& values) const {
    core::Colony now = m_was;
    readHive(values, book(), now);
    now.since = form::dayOf(values, kSince, today()).value_or(m_was.since);
    now.note = form::typed(values, kNote);
    if (!m_place) return [now](const edit::EditContext& c) { return edit::changeColony(c, now); };
    const edit::PlaceChange place = m_place->placeOf(values);
    return [=](const edit::EditContext& c) { return edit::changeBeginning(c, now, place); };
}

std::optional<QString> ColonyForm::meanwhile() const {
    const auto moved = movedSince(book(), m_was);
    if (moved || !m_place) return moved;
    // A later carry ends it; that is none of this form's.
    core::Placement was = m_place->was();
    for (const core::Placement& p : book().placementsOf(m_was.id))
        if (p.id == was.id) was.until = p.until;
    return movedSince(book(), was);
}

NewColonyForm::NewColonyForm(const edit::Session& book, core::YardId yard, const std::optional<core::Colony>& before)
    : RecordForm(book), m_yard(yard), m_before(before) {
    if (!before) return;
    const auto places = book.placementsOf(before->id);
    if (!places.empty()) m_place = places.back();
}

QString NewColonyForm::title() const {
    if (m_before) return Records::tr("New colony on the stand of %1").arg(m_before->label);
    const auto yard = book().yard(m_yard);
    return Records::tr("New colony in %1").arg(yard ? yard->name : QString());
}

QString NewColonyForm::saveText() const { return Records::tr("&Save colony"); }

std::vector<form::Field> NewColonyForm::fields() const {
    std::vector<form::Field> out = hiveFields(book());
    form::Field stand{.key = kStand,
                      .kind = form::Kind::Choice,
                      .label = Records::tr("S&tand"),
                      .spoken = Records::tr("Empty stand it is put on")};
    for (const core::Stand& s : freeStands(book(), m_yard, today()))
        stand.options.push_back({QString::number(s.id.value), Records::tr("stand %1").arg(s.name)});
    out.insert(out.begin() + 1, {sinceField(), stand, headingField()});
    out.push_back(noteField());
    return out;
}

/// The label is proposed where it is free today: from the day after the end on.
Values NewColonyForm::start() const {
    Values v{{kSince, form::typedDay(today())}, {kHeading, QStringLiteral("S")}};
    if (!m_before) return v;
    putHive(v, *m_before, book());
    v[kQueenBorn].clear();
    if (m_place) {
        v[kStand] = QString::number(m_place->stand.value);
        std::optional<int> heading;
        for (const core::Placement& p : book().placementsOf(m_before->id))
            if (p.headingDeg) heading = p.headingDeg;
        if (heading) v[kHeading] = start::directionText(*heading);
    }
    return v;
}

core::Day NewColonyForm::sinceOf(const Values& values) const {
    return form::dayOf(values, kSince, today()).value_or(today());
}

void NewColonyForm::judge(form::Judge& judge, const Values& values) const {
    const auto since = judge.needDay(kSince);
    judgeHive(judge, values, book(), since.value_or(today()), {});
    judgeHeading(judge, values);
    judge.need(kStand, Records::tr("No stand of this yard is empty; a new hive can be placed on the plan."));
}

QStringList NewColonyForm::odd(const Values& values) const {
    const auto odd = longAgo(sinceOf(values), today());
    return odd ? QStringList{*odd} : QStringList{};
}

edit::Edit NewColonyForm::edit(const Values& values) const {
    edit::NewColony made;
    readHive(values, book(), made.colony);
    made.colony.since = sinceOf(values);
    made.colony.note = form::typed(values, kNote);
    made.stand.id = core::StandId{form::typed(values, kStand).toLongLong()};
    made.stand.yard = m_yard;
    made.headingDeg = headingOf(values);
    return [made](const edit::EditContext& c) { return edit::addColony(c, made); };
}

} // namespace ui::records
