#include "ui/records/end_form.h"

#include "core/edit/edits.h"
#include "core/edit/put_right.h"
#include "ui/form/typed.h"
#include "ui/look/end_words.h"
#include "ui/records/odd.h"

namespace ui::records {

namespace edit = core::edit;
using core::EndKind;
using form::Values;

namespace {
const QString kHow = QStringLiteral("how");
} // namespace

EndForm::EndForm(const edit::Session& book, const core::Colony& colony, core::Day day)
    : RecordForm(book), m_was(colony), m_day(colony.ended.value_or(day)) {}

QString EndForm::title() const { return Records::tr("End of %1").arg(nameOf(m_was.id, m_day)); }

QString EndForm::saveText() const { return m_was.ended ? Records::tr("&Save changes") : Records::tr("&Save its end"); }

std::vector<form::Field> EndForm::fields() const {
    return {{.key = kHow,
             .kind = form::Kind::Choice,
             .label = Records::tr("&How"),
             .spoken = Records::tr("How it ended"),
             .options = {{core::word(EndKind::Dead), Records::tr("found dead")},
                         {core::word(EndKind::Destroyed), Records::tr("destroyed")},
                         {core::word(EndKind::Sold), Records::tr("sold")}}},
            dayField(Records::tr("Day it ended"))};
}

Values EndForm::start() const {
    Values v{{kDay, form::typedDay(m_day)}};
    if (m_was.end) v[kHow] = core::word(*m_was.end);
    return v;
}

void EndForm::judge(form::Judge& judge, const Values&) const { judge.needDay(kDay); }

core::Day EndForm::dayOf(const Values& values) const { return form::dayOf(values, kDay, today()).value_or(m_day); }

QStringList EndForm::odd(const Values& values) const {
    const auto odd = longAgo(dayOf(values), today());
    return odd && dayOf(values) != m_was.ended ? QStringList{*odd} : QStringList{};
}

edit::Edit EndForm::edit(const Values& values) const {
    const core::ColonyId id = m_was.id;
    const core::Day day = dayOf(values);
    const auto how = chosenOf<EndKind>(values, kHow);
    if (m_was.ended) return [=](const edit::EditContext& c) { return edit::changeEnd(c, id, day, how); };
    return [=](const edit::EditContext& c) { return edit::endColony(c, id, day, how); };
}

std::optional<QString> EndForm::meanwhile() const {
    if (m_was.ended) return movedSince(book(), m_was);
    const auto now = book().colony(m_was.id);
    if (!now) return Records::tr("This colony was taken back meanwhile; its end cannot be saved.");
    if (now->ended) return Records::tr("%1 has ended meanwhile: %2.").arg(now->label, look::endText(*now));
    return std::nullopt;
}

} // namespace ui::records
