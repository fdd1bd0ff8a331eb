#include "ui/bulk/colonies_form.h"

#include "core/edit/bulk_change.h"
#include "ui/bulk/note_field.h"
#include "ui/form/typed.h"
#include "ui/records/hive_fields.h"

namespace ui::bulk {

namespace edit = core::edit;
using form::Values;
using records::kBox;
using records::kBroodBoxes;
using records::kQueenBorn;

namespace {

constexpr int kFirstYear = 1990; // as the files'
constexpr int kLastYear = 2100;

std::vector<core::Colony> coloniesNow(const edit::Session& book, const std::vector<core::ColonyId>& ids) {
    std::vector<core::Colony> out;
    for (const core::ColonyId id : ids)
        if (auto colony = book.colony(id)) out.push_back(*std::move(colony));
    return out;
}

/// "1" is said as "one".
QString shownIn(const form::Field& field, const QString& value) {
    for (const form::Option& option : field.options)
        if (option.value == value && !option.text.isEmpty()) return option.text;
    return value;
}

} // namespace

ColoniesForm::ColoniesForm(const edit::Session& book, std::vector<core::ColonyId> colonies)
    : RecordForm(book), m_colonies(std::move(colonies)), m_was(coloniesNow(book, m_colonies)) {
    if (m_was.size() != m_colonies.size() || m_was.empty())
        throw core::Error(core::Error::Kind::BadData, Bulk::tr("One of these colonies is no longer in the book."));
    std::vector<Values> had(m_was.size());
    for (size_t i = 0; i < m_was.size(); ++i) records::putHive(had[i], m_was[i], book);
    for (form::Field& field : records::hiveFields(book)) {
        if (field.key == records::kLabel) continue;
        QStringList values;
        for (const Values& v : had) values << form::typed(v, field.key);
        m_common[field.key] = commonOf(values, [&](const QString& value) { return shownIn(field, value); });
        m_fields.push_back(std::move(field));
    }
    QStringList notes;
    for (const core::Colony& colony : m_was) notes << colony.note;
    m_note = commonOf(notes);
}

QString ColoniesForm::title() const {
    return m_was.size() == 1 ? Bulk::tr("Data of 1 colony") : Bulk::tr("Data of %1 colonies").arg(m_was.size());
}

QString ColoniesForm::saveText() const {
    return m_was.size() == 1 ? Bulk::tr("C&hange 1 colony") : Bulk::tr("C&hange %1 colonies").arg(m_was.size());
}

QString ColoniesForm::hint() const {
    return Bulk::tr("Only what is typed anew is written, in all of them or in none; a dash — takes a figure out. "
                    "Enter saves, Escape leaves. One undo takes all of it back.");
}

std::vector<form::Field> ColoniesForm::fields() const {
    std::vector<form::Field> out;
    for (const form::Field& field : m_fields)
        out.push_back(field.kind == form::Kind::Choice ? mixedChoice(field, m_common.at(field.key))
                                                       : mixedField(field, m_common.at(field.key)));
    addNoteFields(out, m_note);
    return out;
}

Values ColoniesForm::start() const {
    Values v;
    for (const form::Field& field : m_fields) v[field.key] = startOf(field, m_common.at(field.key));
    return v;
}

void ColoniesForm::judge(form::Judge& judge, const Values& values) const {
    const auto born = written(values, kQueenBorn, m_common.at(kQueenBorn));
    if (born && !born->isEmpty()) judge.whole(kQueenBorn, kFirstYear, kLastYear);
    bool something = noteOf(values).has_value();
    for (const form::Field& field : m_fields)
        something |= written(values, field.key, m_common.at(field.key)).has_value();
    if (judge.fine() && !something) judge.addLater({}, Bulk::tr("Nothing is typed anew yet."));
}

edit::Edit ColoniesForm::edit(const Values& values) const {
    edit::ColonyPut put;
    if (const auto box = written(values, kBox, m_common.at(kBox)))
        for (const core::BoxKind& kind : book().boxKinds())
            if (kind.name == *box) put.box = kind.id;
    if (const auto boxes = written(values, kBroodBoxes, m_common.at(kBroodBoxes))) put.broodBoxes = boxes->toInt();
    if (const auto born = written(values, kQueenBorn, m_common.at(kQueenBorn)))
        put.queenBorn = born->isEmpty() ? std::optional<int>() : std::optional(born->toInt());
    put.note = noteOf(values);
    return [colonies = m_colonies, put](const edit::EditContext& c) { return edit::changeColonies(c, colonies, put); };
}

std::optional<QString> ColoniesForm::meanwhile() const {
    const auto now = coloniesNow(book(), m_colonies);
    if (now == m_was) return std::nullopt;
    if (now.size() != m_was.size())
        return Bulk::tr("One of these colonies was taken back meanwhile; the others cannot be changed from here.");
    return Bulk::tr("One of these colonies was changed meanwhile. What is typed here stays; it is written over that.");
}

} // namespace ui::bulk
