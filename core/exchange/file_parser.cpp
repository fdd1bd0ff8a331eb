#include "core/exchange/file_parser.h"

#include "core/base/input_file.h"
#include "core/exchange/cells.h"
#include "core/exchange/csv_reader.h"
#include "core/exchange/mapping.h"
#include "core/exchange/parse_rows.h"

#include <QBuffer>
#include <QFile>
#include <QFileInfo>

#include <algorithm>

namespace core::exchange {

namespace {

using ParseRow = void (*)(Cells&, Drafts&);
constexpr ParseRow kParse[kFileKindCount] = {
    parseYard,       parseColony,  parseVisit,   parseTransfer, parseResult,   parseTreatment, parseLineage,
    parsePlacement,  parseBoxKind, parseSetting, parseClosing,  parseFeeding,  parseQueen,     parseKeeper,
    parseNotifiable, parseSample,  parseKitEnd,  parseMiteFall, parseStripsOut};

constexpr char kFileColumn[] = "file";
constexpr qint64 kMostRows = 5'000'000; ///< more would take gigabytes

/// One file being read.
class FileParser {
public:
    /// `original`: what is kept as the file's text; nullopt: what is read.
    /// `begin`: of the step that is told, in bytes.
    FileParser(QIODevice& device, const ImportFile& file, Parsed& parsed, Faults& faults, Ticker& ticker, qint64 begin,
               std::optional<QByteArray> original = {})
        : m_device(device),
          m_reader(device),
          m_file(file),
          m_parsed(parsed),
          m_faults(faults),
          m_ticker(ticker),
          m_begin(begin),
          m_original(std::move(original)) {
        m_layout.kind = file.kind;
        m_layout.path = file.path;
        m_layout.file = static_cast<qint32>(parsed.drafts.files.size());
        parsed.drafts.files.push_back(file.path);
    }

    void run() {
        if (!m_faults.none() || m_original) m_reader.forget();
        if (!readHeader()) return;
        while (readRow()) {
            if (m_ticker.due()) m_ticker.at(m_begin + m_device.pos());
            if (m_faults.none()) continue;
            m_reader.forget();
            m_parsed.drafts.dropRows();
        }
        if (m_faults.none())
            m_parsed.texts.push_back(
                {QFileInfo(m_file.path).fileName(), m_original ? *std::move(m_original) : m_reader.takeText()});
    }

private:
    void fault(qint64 line, const QString& column, const QString& what) {
        m_faults.add({m_file.path, line, column, what});
    }

    void trouble() {
        const CsvTrouble& t = m_reader.trouble();
        fault(t.line, t.cell < m_header.size() ? m_header[t.cell] : namelessColumn(t.cell), t.what);
    }

    bool readHeader() {
        const CsvReader::Found found = m_reader.next(m_record);
        if (found == CsvReader::Found::Trouble) {
            trouble();
            return false;
        }
        if (found == CsvReader::Found::End || m_record.blank()) {
            fault(1, kFileColumn, Say::tr("has no header, expected the names of the columns in its first line"));
            return false;
        }
        m_layout.decimalComma = m_reader.separator() == ';';
        for (size_t i = 0; i < m_record.size(); ++i) {
            const std::string_view cell = m_record.cell(i);
            m_header.push_back(QString::fromUtf8(cell.data(), static_cast<qsizetype>(cell.size())).trimmed());
        }
        return placeColumns();
    }

    bool placeColumns() {
        const auto columns = columnsOf(m_file.kind);
        m_layout.places.assign(columns.size(), -1);
        bool good = true;
        for (size_t i = 0; i < m_header.size(); ++i) good = placeColumn(i) && good;
        for (size_t i = 0; i < columns.size(); ++i) {
            if (!columns[i].required || m_layout.places[i] >= 0) continue;
            fault(1, QString::fromLatin1(columns[i].name), Say::tr("is missing, expected this column in the header"));
            good = false;
        }
        return good;
    }

    bool placeColumn(size_t at) {
        const QString& name = m_header[at];
        const auto columns = columnsOf(m_file.kind);
        const auto found =
            std::ranges::find_if(columns, [&](const Column& c) { return name == QLatin1StringView(c.name); });
        if (found == columns.end()) {
            const QString shown = name.isEmpty() ? namelessColumn(at) : name.left(60).simplified();
            fault(1, shown, Say::tr("is no column of %1, expected %2").arg(kindWords(m_file.kind), columnList()));
            return false;
        }
        int& place = m_layout.places[static_cast<size_t>(found - columns.begin())];
        if (place >= 0) {
            fault(1, name, Say::tr("stands twice in the header, expected it once"));
            return false;
        }
        place = static_cast<int>(at);
        return true;
    }

    QString columnList() const {
        QStringList names;
        for (const Column& c : columnsOf(m_file.kind)) names << QString::fromLatin1(c.name);
        return names.join(QStringLiteral(", "));
    }

    bool readRow() {
        const CsvReader::Found found = m_reader.next(m_record);
        if (found == CsvReader::Found::End) return false;
        if (found == CsvReader::Found::Trouble) {
            trouble();
            return !m_reader.trouble().stops;
        }
        if (m_record.blank()) return true;
        if (m_record.size() != m_header.size()) {
            wrongCount();
            return true;
        }
        if (++m_rows > kMostRows) {
            fault(m_record.line(), QString::fromLatin1(kFileColumn),
                  Say::tr("more than %1 rows, expected fewer: share them out").arg(kMostRows));
            return false;
        }
        Cells cells(m_layout, m_record, m_parsed.drafts.names, m_faults);
        kParse[static_cast<size_t>(m_file.kind)](cells, m_parsed.drafts);
        return true;
    }

    void wrongCount() {
        const size_t cells = m_record.size();
        const QString column = cells < m_header.size() ? m_header[cells] : namelessColumn(m_header.size());
        fault(m_record.line(), column,
              Say::tr("%1 cells in the row, expected %2 as in the header").arg(cells).arg(m_header.size()));
    }

    QIODevice& m_device;
    CsvReader m_reader;
    const ImportFile& m_file;
    Parsed& m_parsed;
    Faults& m_faults;
    Ticker& m_ticker;
    qint64 m_begin;
    Cells::Layout m_layout;
    CsvRecord m_record;
    std::optional<QByteArray> m_original;
    std::vector<QString> m_header;
    qint64 m_rows = 0;
};

} // namespace

void Drafts::dropRows() {
    yards.clear();
    boxKinds.clear();
    colonies.clear();
    placements.clear();
    visits.clear();
    transfers.clear();
    results.clear();
    treatments.clear();
    lineage.clear();
    settings.clear();
    closings.clear();
    feedings.clear();
    miteFalls.clear();
    queens.clear();
    keepers.clear();
    notifiables.clear();
    samples.clear();
    kitEnds.clear();
    stripsOut.clear();
}

namespace {

/// The users' own names of columns, for faults: "Gross (lb) (gross_kg)".
QHash<QString, QString> theirNames(const Mapping& mapping) {
    QHash<QString, QString> names;
    for (const ColumnMapping& c : mapping.columns)
        if (!c.from.isEmpty() && c.from != c.to) names.insert(c.to, QStringLiteral("%1 (%2)").arg(c.from, c.to));
    return names;
}

/// The whole of a file of another program as one of ours; nothing, after a fault, where it cannot be.
std::optional<QByteArray> oursOf(const QByteArray& bytes, const ImportFile& file, Faults& faults, Ticker& ticker,
                                 qint64 begin) {
    const auto fault = [&](const QString& what) {
        faults.add({file.path, 1, QString::fromLatin1(kFileColumn), what});
        return std::nullopt;
    };
    if (bytes.size() > kMostForeignBytes)
        return fault(Say::tr("a file larger than %1 MiB, expected smaller ones: share the rows out")
                         .arg(kMostForeignBytes >> 20));
    const auto decoded = decode(bytes, file.mapping->encoding);
    if (!decoded)
        return fault(file.mapping->encoding
                         ? Say::tr("is not text in %1, expected that").arg(word(*file.mapping->encoding))
                         : Say::tr("is no text, expected a CSV file"));
    const QStringList header = headerOf(decoded->text, file.mapping->forms.separator);
    if (header.isEmpty()) return fault(Say::tr("has no header, expected the names of the columns in its first line"));
    const auto troubles = mappingTroubles(*file.mapping, header);
    for (const MappingTrouble& t : troubles) faults.add({file.path, 1, t.column, t.what});
    if (!troubles.empty()) return std::nullopt;
    return translated(decoded->text, *file.mapping, file.path, faults, [&](qint64 at) {
        if (ticker.due()) ticker.at(begin + at / 2);
    });
}

/// More than is taken where there is more; in parts, so that a small file asks for little memory.
QByteArray wholeOf(QIODevice& device) {
    constexpr qint64 kPart = qint64(256) << 10;
    QByteArray all;
    while (all.size() <= kMostForeignBytes) {
        const QByteArray part = device.read(kPart);
        if (part.isEmpty()) break;
        all += part;
    }
    return all;
}

void parseForeign(QIODevice& device, const ImportFile& file, Parsed& parsed, Faults& faults, Ticker& ticker,
                  qint64 begin) {
    const QByteArray bytes = wholeOf(device);
    Faults found;
    const auto text = oursOf(bytes, file, found, ticker, begin);
    const QHash<QString, QString> names = theirNames(*file.mapping);
    if (text) {
        QBuffer ours;
        ours.setData(*text);
        ours.open(QIODevice::ReadOnly);
        parsed.drafts.columns.resize(parsed.drafts.files.size());
        parsed.drafts.columns.push_back(names);
        FileParser(ours, file, parsed, found, ticker, begin + bytes.size() / 2, bytes).run();
    }
    faults.addAll(found, [&](const QString& column) { return names.value(column, column); });
    if (!faults.none()) parsed.drafts.dropRows();
}

} // namespace

Parsed parseFiles(const ImportFiles& files, Faults& faults) {
    Parsed parsed;
    std::vector<ImportFile> ordered = files.files;
    std::ranges::stable_sort(ordered, {}, &ImportFile::kind);
    qint64 bytes = 0;
    for (const ImportFile& file : ordered) bytes += QFileInfo(file.path).size();
    Ticker ticker(files.progress.part(0, kRead, Say::tr("Reading the files")), bytes);
    qint64 begin = 0;
    for (const ImportFile& file : ordered) {
        QFile device(file.path);
        const QString other = noPlainFile(file.path);
        if (!other.isEmpty() || !device.open(QIODevice::ReadOnly)) {
            const QString why = other.isEmpty() ? device.errorString() : Say::tr("it is %1").arg(other);
            faults.add({file.path, 1, QString::fromLatin1(kFileColumn),
                        Say::tr("cannot be opened (%1), expected a readable CSV file").arg(why)});
            continue;
        }
        if (file.mapping)
            parseForeign(device, file, parsed, faults, ticker, begin);
        else
            FileParser(device, file, parsed, faults, ticker, begin).run();
        begin += device.size();
    }
    return parsed;
}

} // namespace core::exchange
