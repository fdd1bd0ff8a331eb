#include "core/edit/file_mappings.h"

#include "core/base/natural_order.h"
#include "core/edit/edit_checks.h"
#include "core/edit/row_change.h"

namespace core::edit {

ChangeSet keepFileMapping(const EditContext& c, const FileMapping& given) {
    FileMapping now = given;
    now.name = checkedName(given.name, Edits::tr("Name"));
    if (now.kind.isEmpty() || now.header.trimmed().isEmpty() || now.form.isEmpty())
        refuse(Edits::tr("A way to read a file needs the names of the file's columns and what becomes of them."));
    std::optional<FileMapping> old;
    c.each<FileMapping>([&](const FileMapping& m) {
        if (folded(m.name) == folded(now.name)) old = m;
    });
    now.id = old ? old->id : FileMappingId{c.nextId(Table::FileMapping)};
    if (old == now) return {};
    if (!old) return {Edits::tr("Kept how to read a file as “%1”").arg(now.name), {added(now)}, {}, {}, {}};
    return {Edits::tr("Kept anew how to read a file as “%1”").arg(now.name), {changed(*old, now)}, {}, {}, {}};
}

ChangeSet takeBackFileMapping(const EditContext& c, FileMappingId id) {
    const auto old = c.find<FileMapping>(id.value);
    if (!old) refuse(Edits::tr("That way to read a file is no longer in the book."));
    return {Edits::tr("No longer kept: how to read a file as “%1”").arg(old->name), {deleted(*old)}, {}, {}, {}};
}

} // namespace core::edit
