#include "core/exchange/export_kept.h"

#include "core/base/natural_order.h"
#include "core/exchange/cell_text.h"

#include <algorithm>

namespace core::exchange {

namespace {

QStringList feedingCells(const ExportNames& names, const Feeding& f) {
    return {names.colony(f.colony, f.day),
            isoText(f.day),
            word(f.what),
            f.mix,
            f.volume ? decimalText(f.volume->value, 3) : QString(),
            cellText(f.weight),
            nameText(f.by),
            noteText(f.note)};
}

QStringList miteFallCells(const ExportNames& names, const MiteFall& f) {
    return {names.colony(f.colony, f.day), isoText(f.day), QString::number(f.days),
            QString::number(f.mites),      nameText(f.by), noteText(f.note)};
}

QStringList queenCells(const ExportNames& names, const Queen& q) {
    return {names.colony(q.colony, q.since),
            isoText(q.since),
            cellText(q.until),
            cellText(q.fate),
            cellText(q.born),
            cellText(q.mark),
            nameText(q.tag),
            cellText(q.origin),
            nameText(q.source),
            names.colony(q.mother, q.since),
            noteText(q.note)};
}

} // namespace

std::vector<QStringList> feedingRows(const edit::EditContext& c, const ExportNames& names) {
    std::vector<QStringList> rows;
    for (const Colony& colony : names.colonies())
        for (const Feeding& f : c.feedingsOf(colony.id)) rows.push_back(feedingCells(names, f));
    return rows;
}

std::vector<QStringList> miteFallRows(const edit::EditContext& c, const ExportNames& names) {
    std::vector<QStringList> rows;
    for (const Colony& colony : names.colonies())
        for (const MiteFall& f : c.miteFallsOf(colony.id)) rows.push_back(miteFallCells(names, f));
    return rows;
}

std::vector<QStringList> queenRows(const edit::EditContext& c, const ExportNames& names) {
    std::vector<QStringList> rows;
    for (const Colony& colony : names.colonies())
        for (const Queen& q : c.queensOf(colony.id)) rows.push_back(queenCells(names, q));
    return rows;
}

std::vector<QStringList> keeperRows(const edit::EditContext& c) {
    std::vector<QStringList> rows;
    c.each<Keeper>([&](const Keeper& k) {
        rows.push_back(
            {nameText(k.name), noteText(k.address), nameText(k.contact), nameText(k.registration), nameText(k.place)});
    });
    return rows;
}

std::vector<QStringList> notifiableRows(const edit::EditContext& c) {
    std::vector<Notifiable> lines;
    c.each<Notifiable>([&](const Notifiable& n) { lines.push_back(n); });
    std::ranges::sort(lines, {}, &Notifiable::disease);
    std::ranges::stable_sort(lines, NaturalLess(), &Notifiable::place);
    std::vector<QStringList> rows;
    for (const Notifiable& n : lines)
        rows.push_back({n.place, word(n.disease), n.must ? QStringLiteral("yes") : QStringLiteral("no"),
                        nameText(n.tell), nameText(n.source)});
    return rows;
}

std::vector<QStringList> stripsOutRows(const edit::EditContext& c, const ExportNames& names) {
    std::vector<StripsOut> all;
    c.each<StripsOut>([&](const StripsOut& out) { all.push_back(out); });
    std::ranges::sort(all, {}, [&](const StripsOut& s) { return std::pair(s.treatment, names.rank(s.colony)); });
    std::vector<QStringList> rows;
    for (const StripsOut& out : all) {
        const auto t = c.find<Treatment>(out.treatment.value);
        if (!t) continue;
        rows.push_back({names.colony(out.colony, t->day), isoText(out.day), names.yard(t->yard), isoText(t->day),
                        t->product, nameText(out.by), noteText(out.note)});
    }
    return rows;
}

} // namespace core::exchange
