#include "core/exchange/export_samples.h"

#include "core/exchange/cell_text.h"

#include <algorithm>

namespace core::exchange {

std::vector<QStringList> sampleRows(const edit::EditContext& c, const ExportNames& names) {
    std::vector<QStringList> rows;
    for (const Colony& colony : names.colonies())
        for (const Sample& s : c.samplesOf(colony.id)) {
            const auto answer = s.result ? c.find<Result>(s.result->value) : std::nullopt;
            rows.push_back({names.colony(s.colony, s.day), isoText(s.day), word(s.disease), word(s.material),
                            nameText(s.laboratory), nameText(s.number), cellText(s.sent),
                            answer ? word(answer->verdict) : QString(), answer ? nameText(answer->paper) : QString(),
                            cellText(s.lost), nameText(s.by), noteText(s.note)});
        }
    return rows;
}

std::vector<QStringList> kitEndRows(const edit::EditContext& c, const ExportNames& names) {
    std::vector<QStringList> rows;
    c.each<KitEnd>([&](const KitEnd& e) {
        const auto known = e.colony ? c.colony(*e.colony) : std::nullopt;
        const Day on = known ? std::max(e.day, known->since) : e.day;
        rows.push_back({isoText(e.day), names.yard(e.yard), nameText(e.part), names.colony(e.colony, on),
                        QString::number(e.count), word(e.how), nameText(e.by), nameText(e.paper), noteText(e.note)});
    });
    std::ranges::sort(rows, [](const QStringList& a, const QStringList& b) {
        return std::lexicographical_compare(a.begin(), a.end(), b.begin(), b.end());
    });
    return rows;
}

} // namespace core::exchange
