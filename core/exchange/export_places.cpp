#include "core/exchange/cell_text.h"
#include "core/exchange/export_rows.h"
#include "core/model/setting_table.h"

#include <algorithm>

namespace core::exchange {

namespace {

QString metres(qint32 mm) { return metresText(Millimetres{mm}); }

/// yard, stand, x_m, y_m
QStringList placeCells(const ExportNames& names, const Stand& stand) {
    return {names.yard(stand.yard), stand.name, metres(stand.at.x), metres(stand.at.y)};
}

} // namespace

void exportYards(const ExportNames& names, CsvWriter& out) {
    for (const Yard& row : names.yards())
        out.row({row.name, cellText(row.latitudeDeg), cellText(row.longitudeDeg), cellText(row.gateX),
                 cellText(row.gateY), noteText(row.note)});
}

void exportBoxKinds(const ExportNames& names, CsvWriter& out) {
    for (const BoxKind& row : names.boxKinds())
        out.row({row.name, QString::number(row.frames), cellText(row.widthMm), cellText(row.lengthMm),
                 cellText(row.heightMm), cellText(row.tare)});
}

void exportColonies(const edit::EditContext& c, const ExportNames& names, CsvWriter& out) {
    for (const Colony& row : names.colonies()) {
        const std::vector<Placement> places = c.placementsOf(row.id);
        const auto first = std::ranges::find_if(places, &Placement::first);
        if (first == places.end()) continue;
        QStringList cells{row.label};
        cells << placeCells(names, names.stand(first->stand));
        cells << cellText(first->headingDeg) << isoText(row.since) << QString::number(row.broodBoxes)
              << names.box(row.box) << cellText(row.queenBorn) << cellText(row.ended) << cellText(row.end);
        out.row(cells);
    }
}

void exportPlacements(const edit::EditContext& c, const ExportNames& names, CsvWriter& out) {
    for (const Colony& row : names.colonies()) {
        for (const Placement& place : c.placementsOf(row.id)) {
            if (place.first) continue;
            QStringList cells{names.colony(row.id, place.since), isoText(place.since)};
            cells << placeCells(names, names.stand(place.stand)) << cellText(place.headingDeg);
            out.row(cells);
        }
    }
}

void exportSettings(const edit::EditContext& c, CsvWriter& out) {
    const Settings settings = c.settings();
    for (const SettingInfo& info : settingTable()) {
        const QString value = settingText(settings, info.name);
        if (value != info.defaultValue) out.row({info.name, value});
    }
}

} // namespace core::exchange
