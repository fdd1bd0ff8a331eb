#pragma once

#include <QByteArray>
#include <QIODevice>
#include <QString>

#include <string>
#include <string_view>
#include <vector>

namespace core::exchange {

/// One row of a CSV file: the cells as UTF-8, unquoted. Reused from row to row.
class CsvRecord {
public:
    qint64 line() const { return m_line; } ///< on which the row begins, from 1
    size_t size() const { return m_ends.size(); }
    std::string_view cell(size_t at) const {
        const size_t begin = at == 0 ? 0 : m_ends[at - 1];
        return std::string_view(m_text).substr(begin, m_ends[at] - begin);
    }
    /// A line without any character.
    bool blank() const { return m_ends.size() == 1 && m_text.empty(); }

private:
    friend class CsvReader;
    qint64 m_line = 1;
    std::string m_text;
    std::vector<size_t> m_ends;
};

/// Where and why bytes are no CSV.
struct CsvTrouble {
    qint64 line = 1;
    size_t cell = 0; ///< position in its row, from 0
    QString what;
    bool stops = false; ///< nothing more is read
};

/// Reads RFC 4180: UTF-8, a BOM or none, LF or CRLF, quotes doubled within quotes; separated by commas, or by
/// semicolons when the first line has semicolons and no commas. Streams, bounded: a row of more than kMostRowBytes or a
/// file of more than kMostFileBytes ends the reading. After any other trouble it goes on with the next line.
class CsvReader {
public:
    static constexpr qint64 kMostRowBytes = 1 << 20;
    static constexpr qint64 kMostFileBytes = 512 << 20;

    /// `device` is open and outlives this.
    explicit CsvReader(QIODevice& device);
    /// Separated as said, whatever the first line has.
    CsvReader(QIODevice& device, char separator);

    enum class Found { Record, Trouble, End };
    Found next(CsvRecord& record);
    const CsvTrouble& trouble() const { return m_trouble; }
    char separator() const { return m_separator; }

    /// All bytes read so far; nothing after forget().
    QByteArray takeText() { return std::move(m_text); }
    /// Keeps no bytes from now on.
    void forget();

private:
    enum class Cell { Start, Plain, Quoted, QuoteInQuoted, Skipping };
    enum class Step { More, Row, Bad };

    bool fill();
    void begin();
    void takeRun(CsvRecord& record);
    Step take(char c, CsvRecord& record);
    Step plain(char c, CsvRecord& record);
    Step afterQuote(char c, CsvRecord& record);
    Step lineEnd(CsvRecord& record);
    Step bad(const CsvRecord& record, QString what);
    Found stop(const CsvRecord& record, QString what);
    Found atEnd(CsvRecord& record);
    Found finish(CsvRecord& record);
    Found tooLong(const CsvRecord& record);

    QIODevice& m_device;
    QByteArray m_text;  ///< what takeText() gives
    QByteArray m_chunk; ///< read, from m_at on not yet taken
    qsizetype m_at = 0;
    qint64 m_read = 0;
    qint64 m_line = 1;
    qint64 m_rowBytes = 0;
    qint64 m_quoteLine = 1;
    bool m_keep = true;
    bool m_begun = false;
    bool m_stopped = false;
    bool m_carriage = false; ///< a CR came just before, outside quotes
    bool m_troubled = false; ///< this row has trouble; it is given at the row's end
    Cell m_state = Cell::Start;
    char m_separator = ',';
    bool m_told = false; ///< the separator
    CsvTrouble m_trouble;
};

} // namespace core::exchange
