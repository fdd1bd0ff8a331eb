#include "ui/start/yard_form.h"

#include "core/base/error.h"
#include "core/edit/edits.h"
#include "core/edit/put_right.h"
#include "ui/form/judge.h"
#include "ui/form/typed.h"
#include "ui/start/coordinates.h"
#include "ui/start/field_keys.h"
#include "ui/start/new_hives.h"

#include <QCoreApplication>

#include <cmath>

namespace ui::start {

namespace edit = core::edit;
using form::Values;

namespace {

struct Yards {
    Q_DECLARE_TR_FUNCTIONS(Yards)
};

std::optional<core::Millimetres> metresOf(const Values& values, const QString& key) {
    const auto mm = parseMetresMm(form::typed(values, key));
    return mm ? std::optional(core::Millimetres{*mm}) : std::nullopt;
}

QString textOf(std::optional<core::Millimetres> mm) { return mm ? core::metresText(*mm) : QString(); }

} // namespace

YardForm::YardForm(const desk::Desk& desk, std::optional<core::YardId> yard) : m_desk(desk) {
    if (yard) m_before = desk.session().yard(*yard);
}

QString YardForm::title() const {
    return m_before ? Yards::tr("The yard %1").arg(m_before->name) : Yards::tr("A new yard");
}

QString YardForm::saveText() const { return m_before ? Yards::tr("&Save the yard") : Yards::tr("&Make the yard"); }

std::vector<form::Field> YardForm::fields() const {
    std::vector<form::Field> out{{.key = kName,
                                  .label = Yards::tr("&Name"),
                                  .spoken = Yards::tr("Name of the yard"),
                                  .hint = Yards::tr("as you call it")},
                                 {.key = kLatitude,
                                  .label = Yards::tr("&Latitude"),
                                  .spoken = Yards::tr("Latitude, used for the seasons"),
                                  .hint = Yards::tr("51.9 N or 33.5 S"),
                                  .note = [](const Values& v) { return seasonsOf(v); }},
                                 {.key = kLongitude,
                                  .label = Yards::tr("Lon&gitude"),
                                  .spoken = Yards::tr("Longitude; need not be known"),
                                  .hint = Yards::tr("2.1 W")}};
    for (form::Field& f : placeFields(Yards::tr("Gate: click on the plan, or type it"))) out.push_back(std::move(f));
    out.push_back(
        {.key = kNote, .kind = form::Kind::LongText, .label = Yards::tr("No&te"), .spoken = Yards::tr("Note")});
    return out;
}

Values YardForm::start() const {
    if (!m_before) return {};
    Values v;
    v[kName] = m_before->name;
    if (m_before->latitudeDeg) v[kLatitude] = latitudeText(*m_before->latitudeDeg);
    if (m_before->longitudeDeg) v[kLongitude] = longitudeText(*m_before->longitudeDeg);
    v[kX] = textOf(m_before->gateX);
    v[kY] = textOf(m_before->gateY);
    v[kNote] = m_before->note;
    return v;
}

QString YardForm::seasonsOf(const Values& values) {
    const QString typed = form::typed(values, kLatitude);
    if (typed.isEmpty()) return Yards::tr("Used for the seasons; without it they are those of the north.");
    const auto latitude = parseLatitude(typed);
    if (!latitude) return {};
    return *latitude < 0 ? Yards::tr("South: winter is in the middle of the year.")
                         : Yards::tr("North: winter is at the turn of the year.");
}

QString YardForm::nameOf(const Values& values) { return form::typed(values, kName); }

std::vector<form::Problem> YardForm::problems(const Values& values) const {
    form::Judge judge(values, m_desk.today());
    judge.need(kName, Yards::tr("The yard needs a name."));
    const auto unread = [&](const QString& key, bool read) { return !form::typed(values, key).isEmpty() && !read; };
    if (unread(kLatitude, parseLatitude(form::typed(values, kLatitude)).has_value()))
        judge.add(kLatitude, Yards::tr("A latitude from 0 to 90, such as 51.9 N, 33.5 S or 51°54' N."));
    if (unread(kLongitude, parseLongitude(form::typed(values, kLongitude)).has_value()))
        judge.add(kLongitude, Yards::tr("A longitude from 0 to 180, such as 2.1 W or 2.1 E."));
    for (const QString& key : {kX, kY})
        if (unread(key, metresOf(values, key).has_value()))
            judge.add(key, Yards::tr("Metres to the millimetre, at most 10000: 3, -3 or 2.5."));
    if (judge.fine() && !nameOf(values).isEmpty()) {
        try {
            m_desk.session().read([&](const edit::EditContext& c) { edit(values)(c); });
        } catch (const core::Error& e) {
            judge.add(kName, e.userMessage());
        }
    }
    return judge.take();
}

QStringList YardForm::odd(const Values& values) const {
    const auto latitude = parseLatitude(form::typed(values, kLatitude));
    if (!m_before || !latitude || !m_before->latitudeDeg || (*latitude < 0) == (*m_before->latitudeDeg < 0)) return {};
    return {Yards::tr("The yard moves to the other half of the earth, and its seasons by half a year.")};
}

core::Yard YardForm::yardOf(const Values& values) const {
    core::Yard yard = m_before.value_or(core::Yard{});
    yard.name = nameOf(values);
    const auto same = [&](const QString& key, const auto& before, auto parsed, const QString& shown) {
        return form::typed(values, key) == shown ? before : parsed(form::typed(values, key));
    };
    yard.latitudeDeg = same(kLatitude, yard.latitudeDeg, parseLatitude,
                            yard.latitudeDeg ? latitudeText(*yard.latitudeDeg) : QString());
    yard.longitudeDeg = same(kLongitude, yard.longitudeDeg, parseLongitude,
                             yard.longitudeDeg ? longitudeText(*yard.longitudeDeg) : QString());
    yard.gateX = metresOf(values, kX);
    yard.gateY = metresOf(values, kY);
    yard.note = form::typed(values, kNote);
    return yard;
}

edit::Edit YardForm::edit(const Values& values) const {
    const core::Yard yard = yardOf(values);
    if (isNew()) return [yard](const edit::EditContext& c) { return edit::newYard(c, yard); };
    return [yard](const edit::EditContext& c) { return edit::changeYard(c, yard); };
}

std::optional<QString> YardForm::meanwhile() const {
    if (!m_before) return std::nullopt;
    const auto now = m_desk.session().yard(m_before->id);
    if (!now) return Yards::tr("This yard is no longer in the book.");
    return *now == *m_before ? std::nullopt : std::optional(Yards::tr("This yard was changed meanwhile."));
}

plan::Sketch YardForm::sketch(const Values& values) {
    const auto x = metresOf(values, kX);
    const auto y = metresOf(values, kY);
    plan::Sketch out;
    out.gate = core::MmPoint{x.value_or(core::Millimetres{}).value, y.value_or(core::Millimetres{}).value};
    return out;
}

} // namespace ui::start
