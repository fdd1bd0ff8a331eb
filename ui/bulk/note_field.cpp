#include "ui/bulk/note_field.h"

#include "ui/form/typed.h"
#include "ui/records/record_form.h"

namespace ui::bulk {

namespace {
const QString kHow = QStringLiteral("note_how");
const QString kInstead = QStringLiteral("instead");
} // namespace

void addNoteFields(std::vector<form::Field>& fields, const Common& common) {
    const QString there = common.mixed ? mixedText(common) : common.value;
    form::Field note{.key = records::kNote,
                     .kind = form::Kind::LongText,
                     .label = Bulk::tr("&Note"),
                     .spoken = Bulk::tr("Note, written in each of them"),
                     .hint = there.isEmpty() ? QString() : Bulk::tr("there now: %1").arg(there)};
    form::Field how{
        .key = kHow,
        .kind = form::Kind::Choice,
        .label = Bulk::tr("It is written"),
        .spoken = Bulk::tr("After the note that is there, or instead of it"),
        .options = {{QString(), Bulk::tr("after what is there")}, {kInstead, Bulk::tr("instead of what is there")}}};
    how.shown = [](const form::Values& values) { return !form::typed(values, records::kNote).isEmpty(); };
    fields.push_back(std::move(note));
    fields.push_back(std::move(how));
}

std::optional<core::edit::PutNote> noteOf(const form::Values& values) {
    const QString text = form::typed(values, records::kNote);
    if (text.isEmpty()) return std::nullopt;
    if (saysNothing(text)) return core::edit::PutNote{};
    return core::edit::PutNote{text, form::typed(values, kHow) != kInstead};
}

} // namespace ui::bulk
