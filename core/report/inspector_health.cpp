#include "core/report/inspector_part.h"

#include "core/report/worksheet_words.h"
#include "core/rules/calc/mites.h"

#include <algorithm>
#include <map>

// Holds, foulbrood found, signs, brood checks, visits, samples and results, mites.

namespace core::report {

namespace {

const QString kDate = QStringLiteral("date");

QString spaced(QString word) { return word.replace(u'-', u' '); }

QString answerOf(const InspectorInput& in, const Sample& sample) {
    if (sample.lost) return QStringLiteral("no longer awaited since %1").arg(isoText(*sample.lost));
    if (!sample.result) return QStringLiteral("awaited");
    const auto answer = std::ranges::find(in.book.answers, *sample.result, &Result::id);
    if (answer == in.book.answers.end()) return QStringLiteral("awaited");
    QString text = word(answer->verdict) + QStringLiteral(", ") + answer->by;
    if (!answer->paper.isEmpty()) text += QStringLiteral(", ") + answer->paper;
    return text;
}

} // namespace

PaperTable holdsTable(const InspectorInput& in) {
    const Words words(Language::English);
    PaperTable table;
    table.file = QStringLiteral("holds");
    table.heading = QStringLiteral("Held on the last day");
    table.note =
        QStringLiteral("A held colony is in no union, shake-out or divide; only a record lifts a hold. As known "
                       "on %1: records made of later days are not in this.")
            .arg(isoText(in.s().on));
    table.none = QStringLiteral("No colony of these yards was held on the last day. That is not “free of disease”.");
    const TableColumn yard{QStringLiteral("Yard"), QStringLiteral("yard")},
        colony{QStringLiteral("Colony"), QStringLiteral("colony"), false, true};
    table.columns = {colony, yard, {QStringLiteral("Hold, why, and what would lift it"), {}}};
    table.fileColumns = {yard, colony, {{}, QStringLiteral("hold")}, {{}, QStringLiteral("because")}};
    for (const rules::Hold& h : in.found.holds) {
        const QString where = in.yardOf(h.colony, in.s().on), title = words.holdTitle(h.kind);
        table.rows.push_back({in.name(h.colony), where, title + QStringLiteral(".\n") + h.because()});
        table.fileRows.push_back({where, in.name(h.colony), title, h.because()});
    }
    return table;
}

PaperTable findsTable(const InspectorInput& in) {
    PaperTable table;
    table.file = QStringLiteral("foulbrood_found");
    table.heading = QStringLiteral("Foulbrood seen or found");
    table.none = QStringLiteral("No sign of foulbrood and no positive is recorded. That is not “free of disease”.");
    table.columns = {{QStringLiteral("Day"), kDate},
                     {QStringLiteral("Disease"), QStringLiteral("disease")},
                     {QStringLiteral("Colony"), QStringLiteral("colony"), false, true},
                     {QStringLiteral("How"), QStringLiteral("how")},
                     {QStringLiteral("Yard"), QStringLiteral("yard")},
                     {QStringLiteral("Latitude,\u00a0°"), QStringLiteral("latitude_deg"), true},
                     {QStringLiteral("Longitude,\u00a0°"), QStringLiteral("longitude_deg"), true},
                     {QStringLiteral("Hives there that\u00a0day"), QStringLiteral("hives_in_yard"), true}};
    for (const rules::FoulbroodFind& f : in.found.finds) {
        const SnapYard& yard = in.s().yard(f.yard);
        const auto degrees = [](std::optional<double> value) { return value ? decimals(*value, 5) : QString(); };
        table.rows.push_back(
            {isoText(f.day), diseaseWords(f.disease), in.name(f.colony),
             f.method ? QStringLiteral("positive, %1").arg(word(*f.method)) : QStringLiteral("sign at a visit"),
             yard.name, degrees(yard.latitudeDeg), degrees(yard.longitudeDeg), QString::number(f.hives)});
    }
    return table;
}

PaperTable signsTable(const InspectorInput& in) {
    PaperTable table;
    table.file = QStringLiteral("signs");
    table.heading = QStringLiteral("Signs of disease seen at visits");
    table.none = QStringLiteral("No signs are recorded in this period. That is not “free of disease”.");
    table.columns = {{QStringLiteral("Day"), kDate},
                     {QStringLiteral("Yard"), QStringLiteral("yard")},
                     {QStringLiteral("Colony"), QStringLiteral("colony"), false, true},
                     {QStringLiteral("Signs"), QStringLiteral("signs")},
                     {QStringLiteral("By"), QStringLiteral("by")},
                     {QStringLiteral("Note"), QStringLiteral("note")}};
    for (const rules::SeenAt& at : in.found.signs) {
        const Visit& v = in.book.visits[at.row];
        table.rows.push_back({isoText(v.day), in.yard(at.yard), in.name(at.colony), signWords(v.signs), v.by, v.note});
    }
    return table;
}

/// On paper those of one day, yard and finding in one row; in the file a row each.
PaperTable checksTable(const InspectorInput& in) {
    PaperTable table;
    table.file = QStringLiteral("brood_checks");
    table.heading = QStringLiteral("Brood checks");
    table.note =
        QStringLiteral("Visits at which brood frames were examined for disease; behind each colony how many, of "
                       "how many brood frames.");
    table.none = QStringLiteral("No brood check is recorded in this period.");
    const TableColumn day{QStringLiteral("Day"), kDate}, yard{QStringLiteral("Yard"), QStringLiteral("yard")},
        finding{QStringLiteral("Finding"), QStringLiteral("finding")}, by{QStringLiteral("By"), QStringLiteral("by")};
    table.columns = {day, yard, finding, by, {QStringLiteral("Colonies"), {}}};
    table.fileColumns = {day,
                         yard,
                         {{}, QStringLiteral("colony")},
                         {{}, QStringLiteral("frames_examined")},
                         {{}, QStringLiteral("brood_frames")},
                         finding,
                         by};
    std::map<QStringList, size_t> rowOf;
    for (const rules::SeenAt& at : in.found.checks) {
        const Visit& v = in.book.visits[at.row];
        const QString examined = QString::number(*v.broodChecked);
        const QString of = v.broodFrames ? QString::number(*v.broodFrames) : QString();
        const QString found = v.signs.empty() ? QStringLiteral("no signs recorded") : signWords(v.signs);
        table.fileRows.push_back({isoText(v.day), in.yard(at.yard), in.name(at.colony), examined, of, found, v.by});
        const QStringList same{isoText(v.day), in.yard(at.yard), found, v.by};
        const QString one =
            in.name(at.colony) +
            QStringLiteral(":\u00a0%1\u00a0of\u00a0%2").arg(examined, of.isEmpty() ? QStringLiteral("—") : of);
        const auto [row, fresh] = rowOf.emplace(same, table.rows.size());
        if (fresh)
            table.rows.push_back(same + QStringList{one});
        else
            table.rows[row->second].back() += QStringLiteral("; ") + one;
    }
    return table;
}

PaperTable uncheckedTable(const InspectorInput& in) {
    PaperTable table;
    table.file = QStringLiteral("without_brood_check");
    table.heading = QStringLiteral("Living on the last day, without a brood check in the period");
    table.none = QStringLiteral("Each colony that lived there on the last day had a brood check in the period.");
    if (in.found.living.empty()) table.none.clear();
    table.columns = {{QStringLiteral("Yard"), QStringLiteral("yard"), false, true},
                     {QStringLiteral("How many"), QStringLiteral("colonies_without"), true},
                     {QStringLiteral("Colonies"), QStringLiteral("colonies")}};
    for (const YardIx yard : in.book.yards) {
        std::vector<ColonyIx> here;
        for (const ColonyIx c : in.found.unchecked)
            if (const SnapStay* stay = in.s().placeOf(c); stay && stay->yard == yard) here.push_back(c);
        if (!here.empty())
            table.rows.push_back(
                {in.yard(yard), QString::number(here.size()), in.names(here).join(QStringLiteral("; "))});
    }
    return table;
}

PaperTable visitsTable(const InspectorInput& in) {
    PaperTable table;
    table.file = QStringLiteral("visits");
    table.heading = QStringLiteral("Days of inspection");
    table.none = QStringLiteral("No visit is recorded in this period.");
    table.columns = {{QStringLiteral("Day"), kDate},
                     {QStringLiteral("Yard"), QStringLiteral("yard"), false, true},
                     {QStringLiteral("Colonies visited"), QStringLiteral("colonies_visited"), true},
                     {QStringLiteral("Brood examined"), QStringLiteral("colonies_brood_examined"), true},
                     {QStringLiteral("By"), QStringLiteral("by")}};
    for (const rules::VisitDay& d : in.found.visitDays)
        table.rows.push_back({isoText(d.day), in.yard(d.yard), QString::number(d.visited), QString::number(d.checked),
                              d.by.join(QStringLiteral(", "))});
    return table;
}

PaperTable samplesTable(const InspectorInput& in) {
    PaperTable table;
    table.file = QStringLiteral("samples");
    table.heading = QStringLiteral("Samples sent to laboratories");
    table.note = QStringLiteral("Taken in the period, or before it and without an answer now.");
    table.none = QStringLiteral("No sample is recorded in this period.");
    table.columns = {{QStringLiteral("Taken"), QStringLiteral("taken")},
                     {QStringLiteral("Yard"), QStringLiteral("yard")},
                     {QStringLiteral("Colony"), QStringLiteral("colony"), false, true},
                     {QStringLiteral("For"), QStringLiteral("disease")},
                     {QStringLiteral("Sample of"), QStringLiteral("sample_of")},
                     {QStringLiteral("Laboratory"), QStringLiteral("laboratory")},
                     {QStringLiteral("Number"), QStringLiteral("number")},
                     {QStringLiteral("Sent"), QStringLiteral("sent")},
                     {QStringLiteral("Answer"), QStringLiteral("answer")}};
    for (const rules::SeenAt& at : in.found.samples) {
        const Sample& s = in.book.samples[at.row];
        table.rows.push_back({isoText(s.day), in.yard(at.yard), in.name(at.colony), diseaseWords(s.disease),
                              word(s.material), s.laboratory, s.number, s.sent ? isoText(*s.sent) : QString(),
                              answerOf(in, s)});
    }
    return table;
}

PaperTable resultsTable(const InspectorInput& in) {
    PaperTable table;
    table.file = QStringLiteral("results");
    table.heading = QStringLiteral("Results, orders and releases");
    table.note = QStringLiteral("The day is that on which the sample was taken, or of the order or release.");
    table.none = QStringLiteral("No result, order or release is recorded in this period.");
    table.columns = {{QStringLiteral("Day"), kDate},
                     {QStringLiteral("Colony or yard"), QStringLiteral("about"), false, true},
                     {QStringLiteral("Disease"), QStringLiteral("disease")},
                     {QStringLiteral("Result"), QStringLiteral("result")},
                     {QStringLiteral("Method"), QStringLiteral("method")},
                     {QStringLiteral("By"), QStringLiteral("by")},
                     {QStringLiteral("Paper"), QStringLiteral("paper")},
                     {QStringLiteral("Note"), QStringLiteral("note")}};
    for (const size_t i : in.found.results) {
        const Result& r = in.book.results[i];
        table.rows.push_back({isoText(r.day),
                              r.colony ? in.name(*r.colony) : QStringLiteral("yard %1").arg(in.yard(r.yard)),
                              diseaseWords(r.disease), spaced(word(r.verdict)), word(r.method), r.by, r.paper, r.note});
    }
    return table;
}

PaperTable miteTable(const InspectorInput& in) {
    PaperTable table;
    table.file = QStringLiteral("mite_samples");
    table.heading = QStringLiteral("Mites on samples of bees");
    table.note =
        QStringLiteral("Interval: exact, of 95 %, taking each mite to sit on a bee of its own (an assumption).");
    table.none = QStringLiteral("No sample of bees was counted for mites in this period.");
    table.columns = {{QStringLiteral("Day"), kDate},
                     {QStringLiteral("Yard"), QStringLiteral("yard")},
                     {QStringLiteral("Colony"), QStringLiteral("colony"), false, true},
                     {QStringLiteral("Mites"), QStringLiteral("mites"), true},
                     {QStringLiteral("Bees"), QStringLiteral("bees"), true},
                     {QStringLiteral("Mites per 100 bees"), QStringLiteral("mites_per_100_bees"), true},
                     {QStringLiteral("Interval"), QStringLiteral("interval_per_100_bees"), true},
                     {QStringLiteral("By"), QStringLiteral("by")}};
    for (const rules::SeenAt& at : in.found.miteSamples) {
        const Visit& v = in.book.visits[at.row];
        const rules::calc::MiteSample sample{*v.mites, *v.miteSample};
        const auto interval = rules::calc::mitesInterval(sample);
        table.rows.push_back(
            {isoText(v.day), in.yard(at.yard), in.name(at.colony), QString::number(*v.mites),
             QString::number(*v.miteSample), QString::number(rules::calc::mitesPerHundred(sample), 'f', 1),
             interval ? QStringLiteral("%1 to %2").arg(interval->low, 0, 'f', 1).arg(interval->high, 0, 'f', 1)
                      : QString(),
             v.by});
    }
    return table;
}

PaperTable fallTable(const InspectorInput& in) {
    PaperTable table;
    table.file = QStringLiteral("mite_fall");
    table.heading = QStringLiteral("Mites fallen onto the board");
    table.note = QStringLiteral("Another method: mites a day are never turned into mites per 100 bees.");
    table.none = QStringLiteral("No fall of mites was counted in this period.");
    table.columns = {{QStringLiteral("Counted"), QStringLiteral("counted")},
                     {QStringLiteral("Yard"), QStringLiteral("yard")},
                     {QStringLiteral("Colony"), QStringLiteral("colony"), false, true},
                     {QStringLiteral("Days"), QStringLiteral("days_on_board"), true},
                     {QStringLiteral("Mites"), QStringLiteral("mites"), true},
                     {QStringLiteral("Mites a day"), QStringLiteral("mites_a_day"), true},
                     {QStringLiteral("By"), QStringLiteral("by")},
                     {QStringLiteral("Note"), QStringLiteral("note")}};
    for (const rules::SeenAt& at : in.found.falls) {
        const MiteFall& f = in.book.falls[at.row];
        table.rows.push_back({isoText(f.day), in.yard(at.yard), in.name(at.colony), QString::number(f.days),
                              QString::number(f.mites),
                              QString::number(rules::calc::mitesADay(f.mites, f.days), 'f', 1), f.by, f.note});
    }
    return table;
}

} // namespace core::report
