#include "ui/start/hive_form.h"

#include "core/base/error.h"
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

struct Hives {
    Q_DECLARE_TR_FUNCTIONS(Hives)
};

constexpr int kFirstQueen = 1990;
constexpr int kLastQueen = 2100;

} // namespace

HiveForm::HiveForm(const desk::Desk& desk, core::YardId yard, const Kept& kept, core::MmPoint at)
    : m_desk(desk), m_yard(desk.session().yard(yard).value_or(core::Yard{})), m_kept(kept), m_at(at) {}

QString HiveForm::title() const { return Hives::tr("Place hives in %1").arg(m_yard.name); }

QString HiveForm::saveText() const { return Hives::tr("&Put it down"); }

std::vector<form::Field> HiveForm::fields() const {
    std::vector<form::Field> out{{.key = kLabel,
                                  .label = Hives::tr("&Label"),
                                  .spoken = Hives::tr("Label of the hive"),
                                  .hint = QStringLiteral("K1")}};
    out.push_back(headingField());
    out.push_back(boxField(m_desk.session()));
    out.push_back(broodBoxesField());
    out.push_back(sinceField());
    out.push_back({.key = kQueen,
                   .kind = form::Kind::Whole,
                   .label = Hives::tr("&Queen of"),
                   .spoken = Hives::tr("Year in which the queen was born"),
                   .hint = QString::number(core::toDate(m_desk.today()).year())});
    for (form::Field& f : placeFields(Hives::tr("Click on the plan where it stands, or type it")))
        out.push_back(std::move(f));
    const auto stands = emptyStands(m_desk, m_yard.id);
    if (stands.empty()) return out;
    form::Field stand{.key = kStand,
                      .kind = form::Kind::Choice,
                      .label = Hives::tr("On s&tand"),
                      .spoken = Hives::tr("On an empty stand, or on bare ground"),
                      .options = {{QString(), Hives::tr("bare ground")}}};
    for (const plan::StandMark& s : stands) stand.options.push_back({s.name, Hives::tr("%1, empty").arg(s.name)});
    out.push_back(std::move(stand));
    return out;
}

Values HiveForm::start() const {
    Values v;
    v[kLabel] = nextLabel(m_desk, m_yard.id);
    v[kHeading] = m_kept.heading;
    v[kBox] = m_kept.box.isEmpty() ? usualBox(m_desk) : m_kept.box;
    v[kBrood] = m_kept.broodBoxes;
    v[kSince] = m_kept.since.isEmpty() || !m_desk.present() ? form::typedDay(m_desk.day()) : m_kept.since;
    putPlace(v, m_at);
    return v;
}

void HiveForm::keep(const Values& values, Kept& kept) {
    kept.heading = form::typed(values, kHeading);
    kept.box = form::typed(values, kBox);
    kept.broodBoxes = form::typed(values, kBrood);
    kept.since = form::typed(values, kSince);
}

std::optional<edit::NewColony> HiveForm::colonyOf(const Values& values) const {
    const auto heading = parseDirection(form::typed(values, kHeading));
    const auto at = placeOf(values);
    const auto box = boxNamed(m_desk.session(), form::typed(values, kBox));
    if (!heading || !at || !box) return std::nullopt;
    edit::NewColony made;
    made.colony.label = form::typed(values, kLabel);
    made.colony.since = form::dayOf(values, kSince, m_desk.today()).value_or(m_desk.today());
    made.colony.box = box->id;
    made.colony.broodBoxes = form::typed(values, kBrood) == QStringLiteral("2") ? 2 : 1;
    made.colony.queenBorn = form::wholeOf(values, kQueen);
    made.headingDeg = *heading;
    made.stand.yard = m_yard.id;
    made.stand.at = *at;
    for (const core::Stand& stand : m_desk.session().standsOf(m_yard.id))
        if (stand.at == *at && !stand.removed) made.stand = stand;
    return made;
}

std::vector<form::Problem> HiveForm::problems(const Values& values) const {
    form::Judge judge(values, m_desk.today());
    judge.need(kLabel, Hives::tr("The hive needs a label."));
    if (labelsInUse(m_desk).contains(form::typed(values, kLabel).toCaseFolded()))
        judge.add(kLabel, Hives::tr("%1 is in use.").arg(form::typed(values, kLabel)));
    if (judge.need(kHeading, Hives::tr("A direction is needed.")) && !parseDirection(form::typed(values, kHeading)))
        judge.add(kHeading, Hives::tr("A compass word such as S or SE, or whole degrees from 0 to 359."));
    judge.needDay(kSince);
    judge.whole(kQueen, kFirstQueen, kLastQueen);
    for (const QString& key : {QStringLiteral("x"), QStringLiteral("y")})
        if (judge.need(key, Hives::tr("Where does it stand?")) && !parseMetresMm(form::typed(values, key)))
            judge.add(key, Hives::tr("Metres to the millimetre, at most 10000: 3, -3 or 2.5."));
    if (const auto at = placeOf(values))
        if (const auto other = tooNear(m_desk, m_yard.id, *at))
            judge.add(QStringLiteral("x"), Hives::tr("%1 stands there; hives stand at least 0.3 m apart.").arg(*other));
    if (!judge.fine()) return judge.take();
    try {
        m_desk.session().read([&](const edit::EditContext& c) { edit(values)(c); });
    } catch (const core::Error& e) {
        judge.add({}, e.userMessage());
    }
    return judge.take();
}

edit::Edit HiveForm::edit(const Values& values) const {
    const edit::NewColony made = colonyOf(values).value_or(edit::NewColony{});
    return [made](const edit::EditContext& c) { return edit::addColony(c, made); };
}

plan::Sketch HiveForm::sketch(const Values& values) const {
    plan::Sketch out;
    const auto made = colonyOf(values);
    const auto box = made ? boxNamed(m_desk.session(), form::typed(values, kBox)) : std::nullopt;
    if (!box) return out;
    plan::Ghost ghost;
    ghost.mark =
        markOf(*box, made->colony.label, made->stand.at, made->headingDeg.value_or(180), made->colony.broodBoxes);
    ghost.refused = tooNear(m_desk, m_yard.id, made->stand.at).has_value();
    out.hives.push_back(std::move(ghost));
    return out;
}

} // namespace ui::start
