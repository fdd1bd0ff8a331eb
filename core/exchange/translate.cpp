#include "core/exchange/csv_reader.h"
#include "core/exchange/foreign_cells.h"
#include "core/exchange/mapping.h"

#include <QBuffer>

#include <algorithm>
#include <array>

// A file of another program row by row into one of ours.

namespace core::exchange {

namespace {

constexpr std::array kDays = {"date", "since", "until", "ended", "bought", "disposed"};
constexpr std::array kNumbers = {"latitude_deg",
                                 "longitude_deg",
                                 "gate_x_m",
                                 "gate_y_m",
                                 "x_m",
                                 "y_m",
                                 "heading_deg",
                                 "brood_boxes",
                                 "queen_born",
                                 "born",
                                 "amount_l",
                                 "amount_kg",
                                 "boxes",
                                 "bees_top",
                                 "bees_bottom",
                                 "upper_bees_top",
                                 "upper_bees_bottom",
                                 "stores_frames",
                                 "upper_stores_frames",
                                 "brood_frames",
                                 "brood_checked",
                                 "supers",
                                 "gross_kg",
                                 "mites",
                                 "mite_sample",
                                 "count",
                                 "quantity",
                                 "quantity_bought",
                                 "days",
                                 "withdrawal_days",
                                 "disposed_quantity",
                                 "frames",
                                 "width_mm",
                                 "length_mm",
                                 "height_mm",
                                 "tare_kg"};

template <size_t N> bool isOneOf(const std::array<const char*, N>& names, const QString& name) {
    return std::ranges::any_of(names, [&](const char* n) { return name == QLatin1StringView(n); });
}

/// Exact by definition: international yard and pound agreement of 1959.
double factorOf(CellUnit unit) {
    switch (unit) {
    case CellUnit::Pounds:
        return 0.45359237;
    case CellUnit::Feet:
        return 0.3048;
    case CellUnit::Inches:
        return 25.4; // to mm
    case CellUnit::Centimetres:
        return 10; // to mm
    case CellUnit::Ours:
        break;
    }
    return 1;
}

void appendCell(QByteArray& out, QByteArray cell) {
    if (!cell.contains(',') && !cell.contains('"') && !cell.contains('\n')) {
        out += cell;
        return;
    }
    cell.replace('"', "\"\"");
    out += '"' + cell + '"';
}

class Translator {
public:
    Translator(const Mapping& mapping, const QString& path, Faults& faults)
        : m_mapping(mapping), m_path(path), m_faults(faults) {}

    QByteArray run(const QByteArray& text, const std::function<void(qint64)>& told) {
        QBuffer buffer;
        buffer.setData(text);
        buffer.open(QIODevice::ReadOnly);
        CsvReader reader(buffer, m_mapping.forms.separator);
        reader.forget();
        for (bool first = true;; first = false) {
            const CsvReader::Found found = reader.next(m_record);
            if (found == CsvReader::Found::End) break;
            if (told) told(buffer.pos());
            if (found == CsvReader::Found::Trouble) {
                const CsvTrouble& t = reader.trouble();
                m_faults.add({m_path, t.line, namelessColumn(t.cell), t.what});
                if (t.stops) break;
            } else if (!m_record.blank()) {
                toLine(m_record.line());
                first ? header() : row();
            }
        }
        return std::move(m_out);
    }

private:
    void toLine(qint64 line) {
        while (m_line < line) newLine();
    }
    void newLine() {
        m_out += '\n';
        ++m_line;
    }

    void header() {
        QStringList names;
        for (size_t i = 0; i < m_record.size(); ++i) names << cellAt(i);
        m_cells = m_record.size();
        for (const ColumnMapping& c : m_mapping.columns) {
            m_places.push_back(c.from.isEmpty() ? -1 : static_cast<int>(names.indexOf(c.from)));
            appendCell(m_out, c.to.toUtf8());
            m_out += ',';
        }
        if (!m_mapping.columns.empty()) m_out.chop(1);
        newLine();
    }

    void row() {
        if (m_record.size() != m_cells) {
            m_faults.add(
                {m_path, m_record.line(), QString::number(std::min(m_record.size(), m_cells) + 1),
                 Say::tr("%1 cells in the row, expected %2 as in the header").arg(m_record.size()).arg(m_cells)});
            return;
        }
        const qsizetype begin = m_out.size();
        for (size_t i = 0; i < m_mapping.columns.size(); ++i) {
            if (i > 0) m_out += ',';
            appendCell(m_out, cellOf(m_mapping.columns[i], m_places[i]));
        }
        if (m_out.size() == begin) m_out += "\"\""; // one column, blank: a row, no empty line
        m_line += std::count(m_out.begin() + begin, m_out.end(), '\n');
        newLine();
    }

    QString cellAt(size_t i) const {
        const std::string_view cell = m_record.cell(i);
        return QString::fromUtf8(cell.data(), static_cast<qsizetype>(cell.size())).trimmed();
    }

    QByteArray cellOf(const ColumnMapping& c, int place) const {
        if (place < 0) return c.value.toUtf8();
        const std::string_view raw = m_record.cell(static_cast<size_t>(place));
        const QByteArray cell(raw.data(), static_cast<qsizetype>(raw.size()));
        if (!c.words.empty()) {
            const QString word = QString::fromUtf8(cell).trimmed();
            for (const auto& [theirs, ours] : c.words)
                if (word.compare(theirs, Qt::CaseInsensitive) == 0) return ours.toUtf8();
        }
        if (isOneOf(kDays, c.to)) return isoDayCell(cell, m_mapping.forms.days);
        if (!isOneOf(kNumbers, c.to)) return cell;
        const QByteArray number = numberCell(cell, m_mapping.forms.decimal);
        return c.unit == CellUnit::Ours ? number : scaledCell(number, factorOf(c.unit));
    }

    const Mapping& m_mapping;
    const QString& m_path;
    Faults& m_faults;
    CsvRecord m_record;
    std::vector<int> m_places; ///< by column of the mapping
    size_t m_cells = 0;
    qint64 m_line = 1; ///< on which the next row is written
    QByteArray m_out;
};

} // namespace

QByteArray translated(const QByteArray& text, const Mapping& mapping, const QString& path, Faults& faults,
                      const std::function<void(qint64)>& told) {
    return Translator(mapping, path, faults).run(text, told);
}

} // namespace core::exchange
