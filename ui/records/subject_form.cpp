#include "ui/records/subject_form.h"

#include "ui/form/book_options.h"
#include "ui/form/typed.h"

#include <algorithm>

namespace ui::records {

using form::Kind;
using form::Values;

namespace {
const QString kOf = QStringLiteral("of");
} // namespace

QString SubjectForm::subjectName() const {
    if (m_about.colony) return nameOf(*m_about.colony, m_day);
    const auto yard = m_about.yard ? book().yard(*m_about.yard) : std::nullopt;
    return yard ? yard->name : QString();
}

std::vector<form::Field> SubjectForm::subjectFields() const {
    const auto isYard = [](const Values& v) { return form::typed(v, kOf) == kYard; };
    form::Field colony = colonyField(kColony, Records::tr("&Colony"), Records::tr("Colony"));
    colony.shown = [isYard](const Values& v) { return !isYard(v); };
    form::Field yard{.key = kYard,
                     .kind = Kind::Yard,
                     .label = Records::tr("&Yard"),
                     .spoken = Records::tr("Yard"),
                     .options = form::yardOptions(book()),
                     .shown = isYard};
    const auto own = m_about.yard ? book().yard(*m_about.yard) : std::nullopt;
    if (own && own->closed) yard.options.push_back({own->name, {}});
    return {{.key = kOf,
             .kind = Kind::Choice,
             .label = Records::tr("&Of"),
             .spoken = Records::tr("Of one colony or of a whole yard"),
             .options = {{kColony, Records::tr("one colony")}, {kYard, Records::tr("a whole yard")}}},
            colony,
            yard};
}

void SubjectForm::putSubject(Values& values) const {
    values[kOf] = m_about.colony ? kColony : kYard;
    if (m_about.colony) values[kColony] = nameOf(*m_about.colony, m_day);
    if (const auto yard = m_about.yard ? book().yard(*m_about.yard) : std::nullopt) values[kYard] = yard->name;
}

bool SubjectForm::ofYard(const Values& values) const { return form::typed(values, kOf) == kYard; }

void SubjectForm::judgeSubject(form::Judge& judge, const Values& values, core::Day on) const {
    if (!ofYard(values))
        judgeColony(judge, values, kColony, on);
    else
        judge.need(kYard, Records::tr("Which yard?"));
}

Subject SubjectForm::subjectOf(const Values& values, core::Day on) const {
    if (!ofYard(values)) return {colonyOf(values, kColony, on), {}};
    auto yard = yardOf(values, kYard);
    return {{}, yard ? yard : m_about.yard};
}

} // namespace ui::records
