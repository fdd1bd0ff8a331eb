#include "core/exchange/csv_reader.h"

#include <QBuffer>

#include <gtest/gtest.h>

namespace {

using core::exchange::CsvReader;
using core::exchange::CsvRecord;

/// Rows as "line: a|b|c", troubles as "line/cell! what".
QStringList read(const QByteArray& text) {
    QBuffer buffer;
    buffer.setData(text);
    EXPECT_TRUE(buffer.open(QIODevice::ReadOnly));
    CsvReader reader(buffer);
    CsvRecord record;
    QStringList out;
    while (true) {
        const auto found = reader.next(record);
        if (found == CsvReader::Found::End) return out;
        if (found == CsvReader::Found::Trouble) {
            const auto& t = reader.trouble();
            out << QStringLiteral("%1/%2! %3").arg(t.line).arg(t.cell).arg(t.what);
            continue;
        }
        QStringList cells;
        for (size_t i = 0; i < record.size(); ++i) {
            const auto cell = record.cell(i);
            cells << QString::fromUtf8(cell.data(), static_cast<qsizetype>(cell.size()));
        }
        out << QStringLiteral("%1: %2").arg(record.line()).arg(cells.join(u'|'));
    }
}

bool startsWith(const QStringList& rows, const QStringList& starts) {
    if (rows.size() != starts.size()) return false;
    for (qsizetype i = 0; i < rows.size(); ++i)
        if (!rows[i].startsWith(starts[i])) return false;
    return true;
}

TEST(CsvReader, ReadsPlainRowsWithEitherLineEnd) {
    EXPECT_EQ(read("a,b\n1,2\n"), QStringList({"1: a|b", "2: 1|2"}));
    EXPECT_EQ(read("a,b\r\n1,2\r\n"), QStringList({"1: a|b", "2: 1|2"}));
    EXPECT_EQ(read("a,b\n1,"), QStringList({"1: a|b", "2: 1|"}));
    EXPECT_EQ(read(""), QStringList());
}

TEST(CsvReader, LeavesOutTheByteOrderMark) {
    EXPECT_EQ(read("\xEF\xBB\xBF"
                   "a,b\n"),
              QStringList({"1: a|b"}));
}

TEST(CsvReader, ReadsQuotedCells) {
    EXPECT_EQ(read("a,b\n\"x,y\",\"say \"\"so\"\"\"\n\"two\nlines\",z\nq,r\n"),
              QStringList({"1: a|b", "2: x,y|say \"so\"", "3: two\nlines|z", "5: q|r"}));
    EXPECT_EQ(read("\"a\",\"\"\r\n"), QStringList({"1: a|"}));
}

TEST(CsvReader, LetsTheHeaderDecideTheSeparator) {
    EXPECT_EQ(read("a;b\n1,5;2\n"), QStringList({"1: a|b", "2: 1,5|2"}));
    EXPECT_EQ(read("a,b;c\n1;2,3\n"), QStringList({"1: a|b;c", "2: 1;2|3"}));
}

TEST(CsvReader, GoesOnAfterABadRow) {
    EXPECT_TRUE(startsWith(read("a,b\n1,x\"y\n3,4\n"), {"1: a|b", "2/1! a quotation mark inside", "3: 3|4"}));
    EXPECT_TRUE(startsWith(read("a,b\n\"1\"x,2\n3,4\n"), {"1: a|b", "2/0! text after a closing", "3: 3|4"}));
    EXPECT_TRUE(startsWith(read("a,b\n1,\xC3(\n3,4\n"), {"1: a|b", "2/1! bytes that are not UTF-8", "3: 3|4"}));
    EXPECT_TRUE(startsWith(read(QByteArray("a,b\n1,x\0y\n3,4\n", 14)), {"1: a|b", "2/1! a NUL byte", "3: 3|4"}));
    EXPECT_TRUE(startsWith(read("a,b\r1,2\n3,4\n"), {"1/1! a carriage return", "2: 3|4"}));
}

TEST(CsvReader, RefusesIllFormedUtf8) {
    for (const char* bytes : {"\x80", "\xC0\xAF", "\xC1\xBF", "\xE0\x80\xAF", "\xED\xA0\x80", "\xF0\x80\x80\xAF",
                              "\xF5\x80\x80\x80", "\xF4\x90\x80\x80", "\xE2\x82"})
        EXPECT_TRUE(startsWith(read(QByteArray("a\n") + bytes + "\n"), {"1: a", "2/0! bytes that are not UTF-8"}))
            << bytes;
    EXPECT_EQ(read("é€😀\n"), QStringList({QStringLiteral("1: é€😀")}));
}

TEST(CsvReader, StopsAtAQuoteThatIsNeverClosed) {
    EXPECT_TRUE(startsWith(read("a,b\n1,2\n3,\"open\n4,5\n"),
                           {"1: a|b", "2: 1|2", "3/1! a quotation mark opened in line 3 is not closed"}));
}

/// Gives the same bytes again and again.
class Endless : public QIODevice {
public:
    explicit Endless(QByteArray again) : m_again(std::move(again)) {
        open(QIODevice::ReadOnly | QIODevice::Unbuffered);
    }
    qint64 given = 0;

protected:
    qint64 readData(char* data, qint64 size) override {
        for (qint64 i = 0; i < size; ++i) data[i] = m_again[static_cast<qsizetype>((given + i) % m_again.size())];
        given += size;
        return size;
    }
    qint64 writeData(const char*, qint64) override { return -1; }

private:
    QByteArray m_again;
};

TEST(CsvReader, ReadsNoMoreThanItsBounds) {
    for (const QByteArray& again : {QByteArray("x"), QByteArray("\""), QByteArray("\"x"), QByteArray(1, '\0')}) {
        Endless device(again);
        CsvReader reader(device);
        CsvRecord record;
        EXPECT_EQ(reader.next(record), CsvReader::Found::Trouble);
        EXPECT_TRUE(reader.trouble().stops);
        EXPECT_EQ(reader.next(record), CsvReader::Found::End);
        EXPECT_LE(device.given, 2 * CsvReader::kMostRowBytes);
    }
}

TEST(CsvReader, KeepsTheTextUntilToldToForget) {
    QBuffer buffer;
    buffer.setData("a,b\n\"1\",2\n");
    ASSERT_TRUE(buffer.open(QIODevice::ReadOnly));
    CsvReader reader(buffer);
    CsvRecord record;
    while (reader.next(record) != CsvReader::Found::End) {
    }
    EXPECT_EQ(reader.takeText(), QByteArray("a,b\n\"1\",2\n"));
}

} // namespace
