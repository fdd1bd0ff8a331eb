#include "ui/records/record_form.h"

#include "ui/form/book_options.h"
#include "ui/form/typed.h"
#include "ui/look/words.h"

#include <algorithm>

namespace ui::records {

namespace edit = core::edit;
using form::Field;
using form::Values;

std::vector<form::Problem> RecordForm::problems(const Values& values) const {
    form::Judge found(values, today());
    judge(found, values);
    if (!found.fine() || !quick()) return found.take();
    try {
        const edit::Edit tried = edit(values);
        m_book.read([&](const edit::EditContext& c) { tried(c); });
    } catch (const core::Error& e) {
        found.add({}, e.userMessage());
    }
    return found.take();
}

std::optional<core::Colony> RecordForm::judgeColony(form::Judge& judge, const Values& values, const QString& key,
                                                    core::Day on) const {
    if (!judge.need(key, Records::tr("Which colony? Its label, as it was that day."))) return std::nullopt;
    auto colony = form::colonyNamed(m_book, form::typed(values, key), on);
    if (!colony && begins(form::typed(values, key)))
        judge.addLater(key, Records::tr("No colony is called that; go on typing."));
    else if (!colony)
        judge.add(key,
                  Records::tr("No colony had the label %1 by %2.").arg(form::typed(values, key), look::dayText(on)));
    return colony;
}

bool RecordForm::begins(const QString& name) const {
    return std::ranges::any_of(m_names, [&](const form::Option& o) {
        return o.value.startsWith(name, Qt::CaseInsensitive) && o.value != name;
    });
}

core::ColonyId RecordForm::colonyOf(const Values& values, const QString& key, core::Day on) const {
    const auto colony = form::colonyNamed(m_book, form::typed(values, key), on);
    return colony ? colony->id : core::ColonyId{};
}

std::optional<core::YardId> RecordForm::yardOf(const Values& values, const QString& key) const {
    for (const core::Yard& yard : m_book.yards())
        if (yard.name == form::typed(values, key)) return yard.id;
    return std::nullopt;
}

QString RecordForm::nameOf(core::ColonyId colony, core::Day on) const {
    const auto found = m_book.colony(colony);
    return found ? form::nameOn(m_book, *found, on) : look::dash();
}

Field RecordForm::dayField(const QString& spoken) {
    return {.key = kDay, .kind = form::Kind::Day, .label = Records::tr("&Day"), .spoken = spoken};
}

Field RecordForm::byField(const QString& label, const QString& spoken) const {
    Field field{.key = kBy, .label = label, .spoken = spoken};
    for (const core::Person& person : m_book.people())
        if (person.active) field.options.push_back({person.name, {}});
    return field;
}

Field RecordForm::noteField() { return {.key = kNote, .label = Records::tr("&Note"), .spoken = Records::tr("Note")}; }

Field RecordForm::colonyField(const QString& key, const QString& label, const QString& spoken) const {
    if (m_names.empty()) m_names = form::colonyOptions(m_book);
    return {.key = key,
            .kind = form::Kind::Colony,
            .label = label,
            .spoken = spoken,
            .hint = Records::tr("label"),
            .options = m_names};
}

} // namespace ui::records
