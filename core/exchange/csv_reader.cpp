#include "core/exchange/csv_reader.h"

#include "core/exchange/fault.h"
#include "core/exchange/utf8.h"

#include <QFileDevice>

#include <utility>

namespace core::exchange {

namespace {

constexpr qint64 kReadChunk = 1 << 18;

} // namespace

CsvReader::CsvReader(QIODevice& device) : m_device(device) {}

CsvReader::CsvReader(QIODevice& device, char separator) : m_device(device), m_separator(separator), m_told(true) {}

void CsvReader::forget() {
    m_keep = false;
    m_text = QByteArray();
}

bool CsvReader::fill() {
    QByteArray chunk = m_device.read(kReadChunk);
    if (chunk.isEmpty()) return false;
    m_read += chunk.size();
    if (m_keep) m_text += chunk;
    m_chunk = std::move(chunk);
    m_at = 0;
    return true;
}

void CsvReader::begin() {
    m_begun = true;
    QByteArray head;
    while (head.indexOf('\n') < 0 && head.size() <= kMostRowBytes && fill()) head += m_chunk;
    m_chunk = head;
    m_at = head.startsWith("\xEF\xBB\xBF") ? 3 : 0;
    if (m_told) return;
    const qsizetype end = head.indexOf('\n');
    const QByteArray line = end < 0 ? head : head.left(end);
    m_separator = line.contains(';') && !line.contains(',') ? ';' : ',';
}

CsvReader::Step CsvReader::bad(const CsvRecord& record, QString what) {
    if (!m_troubled) m_trouble = {record.m_line, record.m_ends.size(), std::move(what), false};
    m_troubled = true;
    m_state = Cell::Skipping;
    return Step::More;
}

CsvReader::Found CsvReader::stop(const CsvRecord& record, QString what) {
    m_trouble = {record.m_line, record.m_ends.size(), std::move(what), true};
    m_stopped = true;
    return Found::Trouble;
}

CsvReader::Step CsvReader::lineEnd(CsvRecord& record) {
    record.m_ends.push_back(record.m_text.size());
    return m_troubled ? Step::Bad : Step::Row;
}

CsvReader::Step CsvReader::plain(char c, CsvRecord& record) {
    if (c == m_separator) {
        record.m_ends.push_back(record.m_text.size());
        m_state = Cell::Start;
        return Step::More;
    }
    if (c == '"') {
        if (m_state == Cell::Plain)
            return bad(record, Say::tr("a quotation mark inside a cell, expected the whole cell in quotation marks and "
                                       "each one inside doubled"));
        m_state = Cell::Quoted;
        m_quoteLine = m_line;
        return Step::More;
    }
    m_state = Cell::Plain;
    record.m_text.push_back(c);
    return Step::More;
}

CsvReader::Step CsvReader::afterQuote(char c, CsvRecord& record) {
    if (c == '"') {
        record.m_text.push_back('"');
        m_state = Cell::Quoted;
        return Step::More;
    }
    if (c != m_separator)
        return bad(record, Say::tr("text after a closing quotation mark, expected a separator or the line's end"));
    record.m_ends.push_back(record.m_text.size());
    m_state = Cell::Start;
    return Step::More;
}

CsvReader::Step CsvReader::take(char c, CsvRecord& record) {
    ++m_rowBytes;
    if (c == '\n') ++m_line;
    if (c == '\0' && m_state != Cell::Skipping)
        return bad(record, Say::tr("a NUL byte, expected UTF-8 text (is this a CSV file?)"));
    if (m_state == Cell::Quoted) {
        if (c == '"')
            m_state = Cell::QuoteInQuoted;
        else
            record.m_text.push_back(c);
        return Step::More;
    }
    if (c == '\n') return lineEnd(record);
    if (m_state == Cell::Skipping) return Step::More;
    if (std::exchange(m_carriage, c == '\r'))
        return bad(record, Say::tr("a carriage return inside a line, expected lines ended by LF or CRLF"));
    if (c == '\r') return Step::More;
    return m_state == Cell::QuoteInQuoted ? afterQuote(c, record) : plain(c, record);
}

void CsvReader::takeRun(CsvRecord& record) {
    const char* const begin = m_chunk.constData() + m_at;
    const char* const end = m_chunk.constData() + m_chunk.size();
    const char* at = begin;
    while (at != end && *at != m_separator && *at != '"' && *at != '\r' && *at != '\n' && *at != '\0') ++at;
    record.m_text.append(begin, at);
    m_at += at - begin;
    m_rowBytes += at - begin;
}

CsvReader::Found CsvReader::finish(CsvRecord& record) {
    size_t cell = 0;
    const size_t wrong = firstBadUtf8(record.m_text);
    if (wrong == std::string_view::npos) return Found::Record;
    while (record.m_ends[cell] <= wrong) ++cell;
    m_trouble = {record.m_line, cell, Say::tr("bytes that are not UTF-8, expected UTF-8 text"), false};
    return Found::Trouble;
}

CsvReader::Found CsvReader::tooLong(const CsvRecord& record) {
    if (m_state == Cell::Quoted)
        return stop(record, Say::tr("a quotation mark opened in line %1 is not closed within 1 MiB, expected its end")
                                .arg(m_quoteLine));
    return stop(record, Say::tr("a row longer than 1 MiB, expected shorter ones"));
}

CsvReader::Found CsvReader::atEnd(CsvRecord& record) {
    m_stopped = true;
    const auto* file = qobject_cast<const QFileDevice*>(&m_device);
    if (file && file->error() != QFileDevice::NoError)
        return stop(record, Say::tr("cannot be read (%1), expected a readable file").arg(file->errorString()));
    if (m_state == Cell::Quoted)
        return stop(record,
                    Say::tr("a quotation mark opened in line %1 is not closed, expected its end").arg(m_quoteLine));
    if (m_rowBytes == 0) return Found::End;
    return lineEnd(record) == Step::Row ? finish(record) : Found::Trouble;
}

CsvReader::Found CsvReader::next(CsvRecord& record) {
    if (!m_begun) begin();
    if (m_stopped) return Found::End;
    record.m_text.clear();
    record.m_ends.clear();
    record.m_line = m_line;
    m_state = Cell::Start;
    m_troubled = m_carriage = false;
    m_rowBytes = 0;
    while (true) {
        if (m_at >= m_chunk.size() && !fill()) return atEnd(record);
        if (m_read > kMostFileBytes)
            return stop(record, Say::tr("a file larger than 512 MiB, expected smaller ones: share the rows out"));
        if (m_state == Cell::Plain && !m_carriage) takeRun(record);
        if (m_rowBytes > kMostRowBytes) return tooLong(record);
        if (m_at >= m_chunk.size()) continue;
        const Step step = take(m_chunk[m_at++], record);
        if (step == Step::Row) return finish(record);
        if (step == Step::Bad) return Found::Trouble;
    }
}

} // namespace core::exchange
