#include "ui/records/place_form.h"

#include "ui/form/book_options.h"
#include "ui/form/typed.h"
#include "ui/look/words.h"
#include "ui/records/hive_fields.h"
#include "ui/records/odd.h"
#include "ui/start/compass.h"
#include "ui/start/coordinates.h"
#include "ui/start/new_hives.h"

#include <algorithm>

namespace ui::records {

namespace edit = core::edit;
using form::Values;

namespace {

const QString kElsewhere = QStringLiteral("elsewhere");

bool isElsewhere(const Values& values) { return form::typed(values, kStand) == kElsewhere; }

} // namespace

PlaceFields::PlaceFields(const edit::Session& book, const core::Placement& was) : m_book(book), m_was(was) {
    book.read([&](const edit::EditContext& c) { m_stand = c.stand(was.stand).value_or(core::Stand{}); });
}

std::vector<form::Field> PlaceFields::fields() const {
    const auto yard = m_book.yard(m_stand.yard);
    form::Field stand{.key = kStand,
                      .kind = form::Kind::Choice,
                      .label = Records::tr("S&tand"),
                      .spoken = Records::tr("Where it was put")};
    stand.options.push_back({QString::number(m_stand.id.value),
                             Records::tr("stand %1 of %2").arg(m_stand.name, yard ? yard->name : look::dash())});
    const auto own = m_book.placementsOf(m_was.colony); // where it stood before or after
    const auto known = [&](const core::Stand& s) {
        return std::ranges::any_of(own, [&](const core::Placement& p) { return p.stand == s.id; });
    };
    for (const core::Stand& s : freeStands(m_book, m_stand.yard, m_was.since))
        if (!known(s))
            stand.options.push_back({QString::number(s.id.value), Records::tr("stand %1, empty").arg(s.name)});
    stand.options.push_back({kElsewhere, Records::tr("another place")});
    std::vector<form::Field> out{std::move(stand),
                                 {.key = kYard,
                                  .kind = form::Kind::Yard,
                                  .label = Records::tr("&Yard"),
                                  .spoken = Records::tr("Yard it was put in"),
                                  .options = form::yardOptions(m_book),
                                  .shown = isElsewhere}};
    for (form::Field& f : start::placeFields({})) {
        f.shown = isElsewhere;
        out.push_back(std::move(f));
    }
    out.push_back(headingField());
    if (!m_was.first) out.back().hint = Records::tr("as before");
    return out;
}

void PlaceFields::put(Values& values) const {
    values[kStand] = QString::number(m_stand.id.value);
    if (const auto yard = m_book.yard(m_stand.yard)) values[kYard] = yard->name;
    start::putPlace(values, m_stand.at);
    if (m_was.headingDeg) values[kHeading] = start::directionText(*m_was.headingDeg);
}

void PlaceFields::judge(form::Judge& judge, const Values& values) const {
    judgeHeading(judge, values);
    if (!isElsewhere(values)) return;
    for (const QString& key : {QStringLiteral("x"), QStringLiteral("y")})
        if (judge.need(key, Records::tr("Where did it stand?")) && !start::parseMetresMm(form::typed(values, key)))
            judge.add(key, Records::tr("Metres to the millimetre, at most 10000: 3, -3 or 2.5."));
}

edit::PlaceChange PlaceFields::placeOf(const Values& values) const {
    edit::PlaceChange now;
    now.headingDeg = headingOf(values);
    now.since = m_was.since;
    if (!isElsewhere(values)) {
        now.stand.id = core::StandId{form::typed(values, kStand).toLongLong()};
        return now;
    }
    for (const core::Yard& yard : m_book.yards())
        if (yard.name == form::typed(values, kYard)) now.stand.yard = yard.id;
    now.stand.at = start::placeOf(values).value_or(m_stand.at);
    return now;
}

PlaceForm::PlaceForm(const edit::Session& book, const core::Placement& was) : RecordForm(book), m_place(book, was) {}

QString PlaceForm::title() const {
    const core::Placement& was = m_place.was();
    return Records::tr("%1 carried on %2").arg(nameOf(was.colony, was.since), look::dayText(was.since));
}

QString PlaceForm::saveText() const { return Records::tr("&Save changes"); }

std::vector<form::Field> PlaceForm::fields() const {
    std::vector<form::Field> out = m_place.fields();
    out.insert(out.begin(), dayField(Records::tr("Day it was carried")));
    return out;
}

Values PlaceForm::start() const {
    Values v{{kDay, form::typedDay(m_place.was().since)}};
    m_place.put(v);
    return v;
}

core::Day PlaceForm::dayOf(const Values& values) const {
    return form::dayOf(values, kDay, today()).value_or(m_place.was().since);
}

void PlaceForm::judge(form::Judge& judge, const Values& values) const {
    judge.needDay(kDay);
    m_place.judge(judge, values);
}

QStringList PlaceForm::odd(const Values& values) const {
    const auto odd = longAgo(dayOf(values), today());
    return odd && dayOf(values) != m_place.was().since ? QStringList{*odd} : QStringList{};
}

edit::Edit PlaceForm::edit(const Values& values) const {
    edit::PlaceChange now = m_place.placeOf(values);
    now.since = dayOf(values);
    const core::PlacementId id = m_place.was().id;
    return [=](const edit::EditContext& c) { return edit::changePlacement(c, id, now); };
}

std::optional<QString> PlaceForm::meanwhile() const { return movedSince(book(), m_place.was()); }

} // namespace ui::records
