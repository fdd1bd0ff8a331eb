#include "core/edit/strips_out.h"

#include "core/base/natural_order.h"
#include "core/edit/edit_checks.h"
#include "core/edit/medicine_rows.h"
#include "core/edit/row_change.h"

#include <algorithm>

namespace core::edit {

namespace {

Treatment needTreatment(const EditContext& c, TreatmentId id) {
    auto treatment = c.find<Treatment>(id.value);
    if (!treatment) refuse(Edits::tr("That treatment is no longer in the book."));
    return *std::move(treatment);
}

StripsOut needStripsOut(const EditContext& c, StripsOutId id) {
    auto out = c.find<StripsOut>(id.value);
    if (!out) refuse(Edits::tr("That record is no longer in the book."));
    return *std::move(out);
}

void needTreated(const rules::MedicineBook& book, const Treatment& t, const StripsOut& out) {
    const auto treated = book.treated(t);
    if (std::find(treated.begin(), treated.end(), out.colony) == treated.end())
        refuse(Edits::tr("%1 was not treated with %2 on %3; expected a colony that was.")
                   .arg(book.name(out.colony, t.day), t.product, isoText(t.day)));
    if (out.day < t.day)
        refuse(Edits::tr("The treatment with %1 began on %2; %3 is before that.")
                   .arg(t.product, isoText(t.day), isoText(out.day)));
    if (!book.hiveOn(out.colony, out.day))
        refuse(Edits::tr("%1 had ended by %2, and was not united into another colony.")
                   .arg(book.name(out.colony, t.day), isoText(out.day)));
}

StripsOut checkedStripsOut(const EditContext& c, const rules::MedicineBook& book, const StripsOut& typed) {
    StripsOut out = typed;
    out.by = typed.by.trimmed();
    out.note = typed.note.trimmed();
    needColony(c, out.colony);
    const Treatment t = needTreatment(c, out.treatment);
    needTreated(book, t, out);
    for (const StripsOut& other : book.rows().stripsOut)
        if (other.id != out.id && other.treatment == out.treatment && other.colony == out.colony)
            refuse(Edits::tr("What %1 was treated with on %2 is out since %3 already.")
                       .arg(book.name(out.colony, t.day), isoText(t.day), isoText(other.day)));
    return out;
}

rules::MedicineBook bookOf(const EditContext& c, Day on) { return {medicineRows(c), on}; }

QString nameOf(const rules::MedicineBook& book, const Treatment& t, const StripsOut& out) {
    return Edits::tr("%1 came out of %2 on %3").arg(t.product, book.name(out.colony, t.day), isoText(out.day));
}

} // namespace

ChangeSet logStripsOut(const EditContext& c, const StripsOut& typed) {
    const auto book = bookOf(c, c.today());
    StripsOut out = typed;
    out.id = {};
    out = checkedStripsOut(c, book, out);
    out.id = StripsOutId{c.nextId(Table::StripsOut)};
    return {
        Edits::tr("Noted that %1").arg(nameOf(book, needTreatment(c, out.treatment), out)), {added(out)}, {}, {}, {}};
}

ChangeSet logStripsOutOfAll(const EditContext& c, TreatmentId treatment, Day day, const QString& by,
                            const QString& note) {
    const Treatment t = needTreatment(c, treatment);
    const auto book = bookOf(c, c.today());
    const auto known = [&](ColonyId colony) {
        const auto& out = book.rows().stripsOut;
        return std::any_of(out.begin(), out.end(),
                           [&](const StripsOut& s) { return s.treatment == treatment && s.colony == colony; });
    };
    ChangeSet change;
    qint64 id = c.nextId(Table::StripsOut);
    for (const ColonyId colony : book.treated(t)) {
        const auto hive = book.hiveOn(colony, day);
        if (known(colony) || !hive) continue;
        StripsOut out = checkedStripsOut(c, book, {{}, treatment, colony, day, by, note});
        out.id = StripsOutId{id++};
        change.rows.push_back(added(out));
    }
    if (change.rows.empty())
        refuse(Edits::tr("No hive has anything of the treatment with %1 on %2 in any more.")
                   .arg(t.product, isoText(t.day)));
    change.text = Edits::tr("Noted that %1 came out of hives on %3: %2")
                      .arg(t.product, QString::number(change.rows.size()), isoText(day));
    return change;
}

ChangeSet changeStripsOut(const EditContext& c, const StripsOut& typed) {
    const StripsOut old = needStripsOut(c, typed.id);
    const auto book = bookOf(c, c.today());
    const StripsOut now = checkedStripsOut(c, book, typed);
    if (old == now) return {};
    return {Edits::tr("Changed that %1").arg(nameOf(book, needTreatment(c, old.treatment), old)),
            {changed(old, now)},
            {},
            {},
            {}};
}

ChangeSet takeBackStripsOut(const EditContext& c, StripsOutId id) {
    const StripsOut old = needStripsOut(c, id);
    const auto book = bookOf(c, c.today());
    return {Edits::tr("Took back that %1").arg(nameOf(book, needTreatment(c, old.treatment), old)),
            {deleted(old)},
            {},
            {},
            {}};
}

void noteStripsOut(const EditContext& c, ColonyId hive, Day day, const QString& product, const QString& by,
                   ChangeSet& change) {
    const auto book = bookOf(c, day);
    qint64 id = c.nextId(Table::StripsOut);
    for (const rules::StripsIn& in : book.stripsIn()) {
        if (in.hive != hive) continue;
        const Treatment t = needTreatment(c, in.treatment);
        if (folded(t.product) != folded(product.trimmed())) continue;
        change.rows.push_back(added(StripsOut{StripsOutId{id++}, t.id, in.colony, day, by.trimmed(), {}}));
    }
}

void needStripsFit(const EditContext& c, TreatmentId id, const std::optional<Treatment>& now) {
    std::vector<StripsOut> out;
    c.each<StripsOut>([&](const StripsOut& row) {
        if (row.treatment == id) out.push_back(row);
    });
    if (out.empty()) return;
    if (!now)
        refuse(Edits::tr("It is recorded that it came out of a hive on %1; take that back first.")
                   .arg(isoText(out.front().day)));
    const auto book = bookOf(c, c.today());
    for (const StripsOut& row : out) needTreated(book, *now, row);
}

} // namespace core::edit
