#include "core/exchange/foreign_look.h"

#include "core/exchange/csv_reader.h"
#include "core/exchange/foreign_cells.h"
#include "core/model/words.h"

#include <QBuffer>

#include <algorithm>
#include <utility>

namespace core::exchange {

namespace {

constexpr size_t kLookRows = 2000;
constexpr qsizetype kLookBytes = 256 << 10;

template <class E> QStringList listOf() {
    QStringList out;
    for (const char* w : wordsOf<E>()) out << QLatin1StringView(w);
    return out;
}

/// What the first rows need, ending with a line.
QByteArray headOf(const QByteArray& text) {
    if (text.size() <= kLookBytes) return text;
    const qsizetype end = text.lastIndexOf('\n', kLookBytes);
    return text.left(end < 0 ? kLookBytes : end + 1);
}

} // namespace

FileKind guessedKind(const QByteArray& text, const CellForms& forms) {
    FileKind best = FileKind::Visits;
    int most = 0;
    for (const FileKind kind : kReadKinds) {
        const Mapping m = proposedMapping(kind, text, forms);
        int fits = 0;
        for (const Column& c : columnsOf(kind)) {
            const bool given = std::ranges::any_of(
                m.columns, [&](const ColumnMapping& column) { return column.to == QLatin1StringView(c.name); });
            fits += given ? (c.required ? 2 : 1) : (c.required ? -2 : 0);
        }
        if (fits <= most) continue;
        best = kind;
        most = fits;
    }
    return best;
}

QStringList wordsOfColumn(FileKind kind, const QString& column) {
    const auto is = [&](FileKind of, const char* name) { return kind == of && column == QLatin1StringView(name); };
    if (is(FileKind::Visits, "queen")) return listOf<QueenSeen>();
    if (is(FileKind::Visits, "signs")) return listOf<Sign>();
    if (is(FileKind::Colonies, "end")) return listOf<EndKind>();
    if (is(FileKind::Transfers, "what")) return listOf<TransferKind>();
    if (is(FileKind::Results, "disease")) return listOf<Disease>();
    if (is(FileKind::Results, "result")) return listOf<Verdict>();
    if (is(FileKind::Results, "method")) return listOf<Method>();
    if (is(FileKind::Lineage, "how")) return listOf<LineageHow>();
    if (is(FileKind::Feedings, "what")) return listOf<FeedKind>();
    if (is(FileKind::Queens, "fate")) return listOf<QueenFate>();
    if (is(FileKind::Queens, "mark")) return listOf<QueenMark>();
    if (is(FileKind::Queens, "origin")) return listOf<QueenOrigin>();
    if (is(FileKind::Notifiables, "disease")) return listOf<Reportable>();
    if (is(FileKind::Notifiables, "must")) return {QStringLiteral("yes"), QStringLiteral("no")};
    if (is(FileKind::Samples, "disease")) return listOf<Disease>();
    if (is(FileKind::Samples, "material")) return listOf<SampleMaterial>();
    if (is(FileKind::Samples, "answer")) return {word(Verdict::Positive), word(Verdict::Negative)};
    if (is(FileKind::KitEnds, "how")) return listOf<KitEndHow>();
    if (is(FileKind::Treatments, "antibiotic")) return {QStringLiteral("yes"), QStringLiteral("no")};
    return {};
}

QStringList wordsInFile(const QByteArray& text, char separator, const QString& column, int most) {
    QStringList out;
    const auto rows = firstRows(headOf(text), separator, kLookRows);
    const auto at = headerOf(text, separator).indexOf(column);
    for (size_t r = 1; r < rows.size() && at >= 0 && out.size() < most; ++r) {
        if (at >= static_cast<qsizetype>(rows[r].size())) continue;
        const QString cell = QString::fromUtf8(rows[r][static_cast<size_t>(at)]).trimmed();
        if (!cell.isEmpty() && !out.contains(cell, Qt::CaseInsensitive)) out << cell;
    }
    return out;
}

QStringList samplesOf(const QByteArray& text, char separator) {
    QStringList out;
    const auto rows = firstRows(headOf(text), separator, kLookRows);
    if (rows.empty()) return out;
    out.resize(static_cast<qsizetype>(rows[0].size()));
    for (size_t r = 1; r < rows.size(); ++r)
        for (size_t i = 0; i < rows[r].size() && i < rows[0].size(); ++i)
            if (QString& sample = out[static_cast<qsizetype>(i)]; sample.isEmpty())
                sample = QString::fromUtf8(rows[r][i]).simplified();
    return out;
}

std::vector<RowSeen> firstRowsSeen(const QByteArray& text, const Mapping& mapping, size_t most) {
    std::vector<RowSeen> out;
    if (mapping.columns.empty()) return out;
    Faults unread;
    QBuffer ours;
    ours.setData(translated(headOf(text), mapping, {}, unread));
    ours.open(QIODevice::ReadOnly);
    CsvReader reader(ours, ',');
    CsvRecord record;
    for (bool header = true; out.size() < most;) {
        const CsvReader::Found found = reader.next(record);
        if (found == CsvReader::Found::End || (found == CsvReader::Found::Trouble && reader.trouble().stops)) break;
        if (found == CsvReader::Found::Trouble || record.blank()) continue;
        if (std::exchange(header, false)) continue;
        RowSeen row{record.line(), {}};
        for (size_t i = 0; i < record.size(); ++i) {
            const std::string_view cell = record.cell(i);
            row.cells << QString::fromUtf8(cell.data(), static_cast<qsizetype>(cell.size()));
        }
        out.push_back(std::move(row));
    }
    return out;
}

} // namespace core::exchange
