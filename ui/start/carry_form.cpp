#include "ui/start/carry_form.h"

#include "core/base/error.h"
#include "ui/form/book_options.h"
#include "ui/form/judge.h"
#include "ui/form/typed.h"
#include "ui/start/compass.h"
#include "ui/start/coordinates.h"
#include "ui/start/field_keys.h"

#include <QCoreApplication>

namespace ui::start {

namespace edit = core::edit;
using form::Values;

namespace {

struct Carries {
    Q_DECLARE_TR_FUNCTIONS(Carries)
};

} // namespace

CarryForm::CarryForm(const desk::Desk& desk, core::ColonyId colony) : m_desk(desk) {
    desk.session().read([&](const edit::EditContext& c) {
        const auto found = c.colony(colony);
        const auto open = c.openPlacement(colony);
        const auto stand = open ? c.stand(open->stand) : std::nullopt;
        if (!found || !stand)
            throw core::Error(core::Error::Kind::BadData,
                              Carries::tr("This hive stands nowhere: it cannot be carried."));
        m_colony = *found;
        m_open = *open;
        m_stand = *stand;
    });
}

QString CarryForm::title() const { return Carries::tr("Carry of %1").arg(m_colony.label); }

QString CarryForm::saveText() const { return Carries::tr("&Save carry"); }

std::vector<form::Field> CarryForm::fields() const {
    std::vector<form::Field> out{{.key = kDay,
                                  .kind = form::Kind::Day,
                                  .label = Carries::tr("&Day"),
                                  .spoken = Carries::tr("Day it was carried")},
                                 {.key = kYard,
                                  .kind = form::Kind::Yard,
                                  .label = Carries::tr("To &yard"),
                                  .spoken = Carries::tr("Yard it was carried to"),
                                  .options = form::yardOptions(m_desk.session()),
                                  .note = [this](const Values& values) { return papers(values); }}};
    form::Field heading = headingField();
    heading.label = Carries::tr("&Entrance looks");
    heading.hint = Carries::tr("as before");
    out.push_back(std::move(heading));
    for (form::Field& f : placeFields(Carries::tr("Click on the plan where it stands now, or type it")))
        out.push_back(std::move(f));
    return out;
}

Values CarryForm::start() const {
    Values v{{kDay, form::typedDay(m_desk.day())}};
    if (const auto yard = m_desk.session().yard(m_stand.yard)) v[kYard] = yard->name;
    return v;
}

/// What stands against it is asked for a reason and a name when it is saved (rule 4.15).
QString CarryForm::papers(const Values& values) const {
    const auto yard = yardOf(values);
    if (!yard || *yard == m_stand.yard) return {};
    return Carries::tr("Movement rules may ask for papers: the inspector knows. Held for foulbrood or by an order, no "
                       "hive goes from yard to yard.");
}

std::optional<core::YardId> CarryForm::yardOf(const Values& values) const {
    const auto ix = m_desk.reading().snapshot.yardNamed(form::typed(values, kYard));
    return ix ? std::optional(m_desk.reading().snapshot.yard(*ix).id) : std::nullopt;
}

std::optional<edit::CarryTo> CarryForm::carryOf(const Values& values) const {
    const auto yard = yardOf(values);
    const auto at = placeOf(values);
    const auto day = form::dayOf(values, kDay, m_desk.today());
    if (!yard || !at || !day) return std::nullopt;
    return edit::CarryTo{m_colony.id, *yard, *at, parseDirection(form::typed(values, kHeading)), *day};
}

std::vector<form::Problem> CarryForm::problems(const Values& values) const {
    form::Judge judge(values, m_desk.today());
    judge.needDay(kDay);
    const QString heading = form::typed(values, kHeading);
    if (!heading.isEmpty() && !parseDirection(heading))
        judge.add(kHeading, Carries::tr("A compass word such as S or SE, or whole degrees from 0 to 359."));
    for (const QString& key : {QStringLiteral("x"), QStringLiteral("y")})
        if (judge.need(key, Carries::tr("Where does it stand now?")) && !parseMetresMm(form::typed(values, key)))
            judge.add(key, Carries::tr("Metres to the millimetre, at most 10000: 3, -3 or 2.5."));
    const auto carry = carryOf(values);
    if (!judge.fine() || !carry) return judge.take();
    if (carry->yard == m_stand.yard && carry->to == m_stand.at)
        judge.add(QStringLiteral("x"), Carries::tr("It stands there already."));
    try {
        m_desk.session().read([&](const edit::EditContext& c) { edit::carryTo(c, *carry); });
    } catch (const core::Error& e) {
        judge.add({}, e.userMessage());
    }
    return judge.take();
}

edit::Edit CarryForm::edit(const Values& values) const {
    const edit::CarryTo carry = carryOf(values).value_or(edit::CarryTo{});
    return [carry](const edit::EditContext& c) { return edit::carryTo(c, carry); };
}

std::optional<QString> CarryForm::meanwhile() const {
    std::optional<core::Placement> now;
    m_desk.session().read([&](const edit::EditContext& c) { now = c.openPlacement(m_colony.id); });
    if (!now) return Carries::tr("%1 has ended meanwhile.").arg(m_colony.label);
    return *now == m_open ? std::nullopt : std::optional(Carries::tr("%1 was carried meanwhile.").arg(m_colony.label));
}

plan::Sketch CarryForm::sketch(const Values& values) const {
    plan::Sketch out;
    const auto yard = yardOf(values);
    const auto at = placeOf(values);
    const auto ix = m_desk.reading().find(m_colony.id);
    if (!yard || !at || !ix) return out;
    const core::SnapStay* stay = m_desk.reading().snapshot.placeOf(*ix);
    plan::Ghost ghost;
    plan::setOutline(ghost.mark, m_desk.reading().snapshot.boxKindOf(*ix));
    ghost.mark.label = m_colony.label;
    ghost.mark.at = *at;
    ghost.mark.headingDeg =
        parseDirection(form::typed(values, kHeading)).value_or(stay ? stay->headingDeg : ghost.mark.headingDeg);
    const auto other = tooNear(m_desk, *yard, *at);
    ghost.refused = other && *other != m_colony.label;
    out.hives.push_back(std::move(ghost));
    return out;
}

} // namespace ui::start
