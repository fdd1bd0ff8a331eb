#include "core/exchange/export.h"

#include "core/exchange/export_history.h"
#include "core/exchange/export_more.h"
#include "core/exchange/export_rows.h"
#include "core/exchange/fault.h"
#include "core/exchange/file_guide.h"

#include <memory>
#include <vector>

namespace core::exchange {

namespace {

using edit::EditContext;

void writeRows(FileKind kind, const EditContext& c, const ExportNames& names, CsvWriter& out) {
    switch (kind) {
    case FileKind::Yards:
        return exportYards(names, out);
    case FileKind::Colonies:
        return exportColonies(c, names, out);
    case FileKind::Visits:
        return exportVisits(c, names, out);
    case FileKind::Transfers:
        return exportTransfers(c, names, out);
    case FileKind::Results:
        return exportResults(c, names, out);
    case FileKind::Treatments:
        return exportTreatments(c, names, out);
    case FileKind::Lineage:
        return exportLineage(c, names, out);
    case FileKind::Placements:
        return exportPlacements(c, names, out);
    case FileKind::BoxKinds:
        return exportBoxKinds(names, out);
    case FileKind::Settings:
        return exportSettings(c, out);
    case FileKind::Closings: // none of the ten: see merge_strips.csv
    case FileKind::Feedings: // and these: see export_kept.h
    case FileKind::Queens:
    case FileKind::Keeper:
    case FileKind::Notifiables:
    case FileKind::Samples: // see export_samples.h
    case FileKind::KitEnds:
    case FileKind::MiteFalls:
    case FileKind::StripsOut:
        return;
    }
}

/// About: rows that were taken back are counted too.
qint64 rowsOf(const EditContext& c) {
    qint64 count = 0;
    for (int i = 0; i < kTableCount; ++i) count += c.nextId(static_cast<Table>(i)) - 1;
    return count;
}

} // namespace

void exportBook(const edit::Session& session, const QString& dir, const Progress& progress) {
    OutFolder folder(dir);
    Ticker ticker;
    std::vector<std::unique_ptr<CsvWriter>> files;
    session.read(
        [&](const EditContext& c) {
            ticker = Ticker(progress.part(0, 1, Say::tr("Writing the book as CSV files")), rowsOf(c));
            const ExportNames names(c, progress);
            for (const FileKind kind : kFileKinds) {
                files.push_back(std::make_unique<CsvWriter>(dir, fileName(kind), &ticker));
                files.back()->row(header(kind));
                writeRows(kind, c, names, *files.back());
            }
            exportMore(c, names, dir, files, ticker);
            const auto further = [&](const char* file, const QStringList& columns) -> CsvWriter& {
                files.push_back(std::make_unique<CsvWriter>(dir, QString::fromLatin1(file), &ticker));
                files.back()->row(columns);
                return *files.back();
            };
            CsvWriter& lines = further("history.csv", QStringLiteral("line at by kind of what reason").split(u' '));
            CsvWriter& fields =
                further("changes.csv", QStringLiteral("line record did field before after").split(u' '));
            exportHistory(session, lines, fields, progress);
            CsvWriter& guide = further("columns.csv", guideHeader());
            for (const QStringList& row : guideRows()) guide.row(row);
        },
        progress);
    commitAll(files, progress);
    folder.keep();
}

} // namespace core::exchange
