#include "core/exchange/export_more.h"

#include "core/base/natural_order.h"
#include "core/edit/merge_day.h"
#include "core/exchange/cell_text.h"
#include "core/exchange/export_kept.h"
#include "core/exchange/export_samples.h"

#include <QSet>

#include <algorithm>

namespace core::exchange {

namespace {

using edit::EditContext;
using Rows = std::vector<QStringList>;

/// By part, state, place: those counted in the store room have no yard.
Rows kitRows(const EditContext& c, const ExportNames& names) {
    Rows rows;
    c.each<Kit>([&](const Kit& kit) {
        const Day since = kit.colony ? names.colonies()[static_cast<size_t>(names.rank(kit.colony))].since : Day{};
        rows.push_back(
            {names.yard(kit.yard), kit.part, kit.state, names.colony(kit.colony, since), QString::number(kit.count)});
    });
    std::ranges::sort(rows, [](const QStringList& a, const QStringList& b) {
        return std::lexicographical_compare(a.begin(), a.end(), b.begin(), b.end());
    });
    return rows;
}

Rows standRows(const EditContext& c, const ExportNames& names) {
    QSet<qint64> used;
    c.each<Placement>([&](const Placement& row) { used.insert(row.stand.value); });
    Rows rows;
    for (const Stand& stand : names.stands()) {
        if (used.contains(stand.id.value) && !stand.removed) continue;
        rows.push_back({names.yard(stand.yard), stand.name, metresText(Millimetres{stand.at.x}),
                        metresText(Millimetres{stand.at.y}),
                        stand.removed ? QStringLiteral("yes") : QStringLiteral("no")});
    }
    return rows;
}

Rows noteRows(const ExportNames& names) {
    Rows rows;
    for (const Colony& colony : names.colonies())
        if (!colony.note.isEmpty()) rows.push_back({colony.label, isoText(colony.since), colony.note});
    return rows;
}

Rows closedRows(const ExportNames& names) {
    Rows rows;
    for (const Yard& yard : names.yards())
        if (yard.closed) rows.push_back({yard.name});
    return rows;
}

Rows personRows(const EditContext& c) {
    std::vector<Person> people;
    c.each<Person>([&](const Person& person) { people.push_back(person); });
    std::ranges::sort(people, NaturalLess(), &Person::name);
    Rows rows;
    for (const Person& p : people) rows.push_back({p.name, p.active ? QStringLiteral("yes") : QStringLiteral("no")});
    return rows;
}

Rows mappingRows(const EditContext& c) {
    std::vector<FileMapping> mappings;
    c.each<FileMapping>([&](const FileMapping& m) { mappings.push_back(m); });
    std::ranges::sort(mappings, NaturalLess(), &FileMapping::name);
    Rows rows;
    for (const FileMapping& m : mappings) rows.push_back({m.name, m.kind, m.header, m.form});
    return rows;
}

Rows questionRows(const EditContext& c) {
    std::vector<Question> questions;
    c.each<Question>([&](const Question& q) { questions.push_back(q); });
    std::ranges::sort(questions, NaturalLess(), &Question::name);
    Rows rows;
    for (const Question& q : questions)
        rows.push_back({q.name, q.about, q.ask, q.onPlan ? QStringLiteral("yes") : QStringLiteral("no")});
    return rows;
}

Rows phraseRows(const EditContext& c) {
    std::vector<Phrase> phrases;
    c.each<Phrase>([&](const Phrase& phrase) { phrases.push_back(phrase); });
    std::ranges::sort(phrases, NaturalLess(), &Phrase::brief);
    Rows rows;
    for (const Phrase& p : phrases) rows.push_back({p.brief, p.sentence});
    return rows;
}

/// By yard, then in the order they were drawn; points as "x y" in metres, joined by "; ".
Rows fixedRows(const EditContext& c, const ExportNames& names) {
    const auto point = [](MmPoint p) { return metresText(Millimetres{p.x}) + u' ' + metresText(Millimetres{p.y}); };
    Rows rows;
    c.each<FixedThing>([&](const FixedThing& thing) {
        QStringList points;
        for (const MmPoint p : thing.points) points << point(p);
        rows.push_back({names.yard(thing.yard), word(thing.kind), thing.name, points.join(QStringLiteral("; ")),
                        cellText(thing.radius)});
    });
    std::ranges::stable_sort(rows, NaturalLess(), [](const QStringList& row) { return row.front(); });
    return rows;
}

QString numberText(const std::optional<int>& n) { return n ? QString::number(*n) : QString(); }

/// Merge days, what was asked of each, and what came of its strips.
struct MergeRows {
    Rows days, choices, strips, divideChoices, divideStrips;
};

MergeRows mergeRows(const EditContext& c, const ExportNames& names) {
    MergeRows rows;
    for (const Yard& yard : names.yards())
        for (const MergeDay& d : c.mergeDaysOf(yard.id)) {
            const QStringList of{yard.name, isoText(d.day), QString::number(d.variant)};
            rows.days.push_back(of + QStringList{numberText(d.most), numberText(d.minutes), QString::number(d.revision),
                                                 d.note, d.queens ? word(*d.queens) : QString()});
            for (const MergeChoice& x : c.choicesOf(d.id))
                rows.choices.push_back(of + QStringList{word(x.what), names.colony(x.colony, d.day),
                                                        names.colony(x.other, d.day), x.note});
            for (const MergeStrip& x : c.stripsOf(d.id))
                rows.strips.push_back(of + QStringList{edit::onSheet(x) ? QString::number(x.position) : QString(),
                                                       word(x.how), names.colony(x.moved, d.day),
                                                       names.colony(x.host, d.day), names.colony(x.upper, d.day),
                                                       x.outcome ? word(*x.outcome) : QString(), x.note});
            for (const DivideChoice& x : c.divideChoicesOf(d.id))
                rows.divideChoices.push_back(
                    of + QStringList{names.colony(x.colony, d.day), QString::number(x.parts), x.note});
            for (const DivideStrip& x : c.divideStripsOf(d.id))
                rows.divideStrips.push_back(of + QStringList{QString::number(x.position), names.colony(x.colony, d.day),
                                                             QString::number(x.parts), word(x.queens),
                                                             x.outcome ? word(*x.outcome) : QString(), x.note});
        }
    return rows;
}

} // namespace

void exportMore(const EditContext& c, const ExportNames& names, const QString& dir,
                std::vector<std::unique_ptr<CsvWriter>>& files, Ticker& ticker) {
    const auto add = [&](const char* file, const QStringList& columns, const Rows& rows) {
        if (rows.empty()) return;
        files.push_back(std::make_unique<CsvWriter>(dir, QString::fromLatin1(file), &ticker));
        files.back()->row(columns);
        for (const QStringList& row : rows) files.back()->row(row);
    };
    add("kit.csv", QStringLiteral("yard part state colony count").split(u' '), kitRows(c, names));
    add("stands.csv", QStringLiteral("yard stand x_m y_m removed").split(u' '), standRows(c, names));
    add("notes.csv", QStringLiteral("colony since note").split(u' '), noteRows(names));
    add("closed_yards.csv", {QStringLiteral("yard")}, closedRows(names));
    add("fixed_things.csv", QStringLiteral("yard kind name points_m radius_m").split(u' '), fixedRows(c, names));
    const MergeRows merge = mergeRows(c, names);
    const QString of = QStringLiteral("yard date variant ");
    add("merge_days.csv", (of + QStringLiteral("most minutes revision note queens")).split(u' '), merge.days);
    add("merge_choices.csv", (of + QStringLiteral("what colony other note")).split(u' '), merge.choices);
    add("merge_strips.csv", (of + QStringLiteral("position how moved host upper outcome note")).split(u' '),
        merge.strips);
    add("divide_choices.csv", (of + QStringLiteral("colony parts note")).split(u' '), merge.divideChoices);
    add("divide_strips.csv", (of + QStringLiteral("position colony parts queens outcome note")).split(u' '),
        merge.divideStrips);
    add("quick_sentences.csv", QStringLiteral("brief sentence").split(u' '), phraseRows(c));
    add("feedings.csv", header(FileKind::Feedings), feedingRows(c, names));
    add("mite_falls.csv", header(FileKind::MiteFalls), miteFallRows(c, names));
    add("queens.csv", header(FileKind::Queens), queenRows(c, names));
    add("keeper.csv", header(FileKind::Keeper), keeperRows(c));
    add("notifiable.csv", header(FileKind::Notifiables), notifiableRows(c));
    add("samples.csv", header(FileKind::Samples), sampleRows(c, names));
    add("kit_ends.csv", header(FileKind::KitEnds), kitEndRows(c, names));
    add("strips_out.csv", header(FileKind::StripsOut), stripsOutRows(c, names));
    add("people.csv", QStringLiteral("name active").split(u' '), personRows(c));
    add("questions.csv", QStringLiteral("name about ask on_plan").split(u' '), questionRows(c));
    add("mappings.csv", QStringLiteral("name kind header form").split(u' '), mappingRows(c));
}

} // namespace core::exchange
