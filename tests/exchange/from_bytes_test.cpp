#include "core/exchange/foreign_look.h"
#include "core/exchange/import.h"
#include "tests/exchange/workbench.h"

#include <QStringEncoder>

#include <gtest/gtest.h>

// The same three visits written in many ways, each from its bytes to the book, nothing said of the file but which
// columns are which.

namespace tests::exchange {
namespace {

using namespace core::exchange;

struct Way {
    const char* name;
    char separator;
    char decimal;
    const char* days; ///< of QDate::toString
    const char* lineEnd;
    const char* encoding; ///< "utf-8", "utf-8 bom", "utf-16-le", "utf-16-le bom", …, "windows-1252"
};

QString dayText(const Way& way, int month, int day) {
    return QDate(2026, month, day).toString(QLatin1StringView(way.days));
}

QString number(const Way& way, const char* text) { return f(text).replace(u'.', QLatin1Char(way.decimal)); }

QString textOf(const Way& way) {
    const QChar s = QLatin1Char(way.separator);
    const auto quoted = [&](const QString& cell) { return cell.contains(s) ? u'"' + cell + u'"' : cell; };
    QStringList lines{QStringList{f("Hive"), f("Day"), f("Frames"), f("Weight"), f("Queen"), f("Words")}.join(s)};
    lines
        << QStringList{f("A"),  dayText(way, 4, 21),          quoted(number(way, "3.25")), quoted(number(way, "61.5")),
                       f("JA"), QStringLiteral("läuft – 5 €")}
               .join(s);
    lines << QStringList{f("B"), dayText(way, 5, 2), f("4"), QString(), f("nein"), f("\"two ; , \"\"marks\"\"\"")}.join(
        s);
    lines << QStringList{f("C"), dayText(way, 12, 31), QString(), quoted(number(way, "20.25")), QString(), QString()}
                 .join(s);
    return lines.join(f(way.lineEnd)) + f(way.lineEnd);
}

QByteArray bytesOf(const Way& way) {
    const QString text = textOf(way);
    const QByteArray encoding(way.encoding);
    const auto flags = encoding.endsWith("bom") ? QStringConverter::Flag::WriteBom : QStringConverter::Flag::Default;
    if (encoding.startsWith("utf-8")) return QStringEncoder(QStringConverter::Utf8, flags)(text);
    if (encoding.startsWith("utf-16-le")) return QStringEncoder(QStringConverter::Utf16LE, flags)(text);
    if (encoding.startsWith("utf-16-be")) return QStringEncoder(QStringConverter::Utf16BE, flags)(text);
    QByteArray out = text.toLatin1();
    // 0x96 the en dash, 0x80 the euro sign. Source: WHATWG Encoding Standard, index windows-1252, from memory.
    out.replace("l\xE4uft ? 5 ?", "l\xE4uft \x96 5 \x80");
    return out;
}

/// Found in the file, but for the columns, their unit and words.
Mapping mappingOf(const QByteArray& bytes) {
    const QByteArray text = decode(bytes)->text;
    Mapping m = proposedMapping(FileKind::Visits, text, formsOf(text).forms);
    const std::pair<const char*, const char*> pairs[] = {
        {"Hive", "colony"}, {"Day", "date"}, {"Frames", "bees_top"}, {"Weight", "gross_kg"}, {"Words", "note"}};
    m.columns.clear();
    for (const auto& [from, to] : pairs) m.columns.push_back({f(from), f(to), CellUnit::Ours, {}, {}});
    m.columns[3].unit = CellUnit::Pounds;
    m.columns.push_back({f("Queen"), f("queen"), CellUnit::Ours, {}, {{f("ja"), f("eggs")}, {f("nein"), f("none")}}});
    return m;
}

class FromBytes : public testing::TestWithParam<Way> {};

TEST_P(FromBytes, ToTheBook) {
    const Workbench bench;
    ASSERT_TRUE(bench.import(smallYard()).good());
    const QByteArray bytes = bytesOf(GetParam());
    ImportFiles files = bench.write({{f("visits.csv"), bytes}});
    files.files[0].mapping = mappingOf(bytes);
    const auto report = importIntoBook(bench.book(), bench.clock(), files, false);
    ASSERT_TRUE(report.good()) << report.faults.lines().join(u'\n').toStdString();
    // 61.5 lb × 0.45359237 = 27.896 kg, 20.25 lb = 9.185 kg. Source: international pound of 1959, exact by definition.
    const QByteArray visits = bench.exported()[f("visits.csv")];
    const QByteArray header = visits.left(visits.indexOf('\n') + 1);
    EXPECT_EQ(QString::fromUtf8(visits.mid(header.size())),
              QString::fromUtf8("A,2026-04-21,,3.25,,,,,,eggs,,,,,27.9,,,,läuft – 5 €\n"
                                "B,2026-05-02,,4,,,,,,none,,,,,,,,,\"two ; , \"\"marks\"\"\"\n"
                                "C,2026-12-31,,,,,,,,,,,,,9.19,,,,\n"));
    EXPECT_EQ(bench.check(), QStringList());
}

const Way kWays[] = {
    {"Ours", ',', '.', "yyyy-MM-dd", "\n", "utf-8"},
    {"DecimalComma", ';', ',', "d.M.yyyy", "\r\n", "utf-8"},
    {"DecimalCommaQuoted", ',', ',', "dd.MM.yyyy", "\n", "utf-8"},
    {"Semicolon", ';', '.', "yyyy-MM-dd", "\n", "utf-8"},
    {"Tab", '\t', ',', "dd/MM/yyyy", "\r\n", "utf-8"},
    {"UprightBar", '|', '.', "M/d/yyyy", "\n", "utf-8"},
    {"Bom", ';', ',', "dd.MM.yyyy", "\r\n", "utf-8 bom"},
    {"Utf16Little", '\t', ',', "dd.MM.yyyy", "\r\n", "utf-16-le"},
    {"Utf16LittleBom", '\t', ',', "dd.MM.yyyy", "\r\n", "utf-16-le bom"},
    {"Utf16Big", ';', '.', "M/d/yyyy", "\n", "utf-16-be"},
    {"Utf16BigBom", ';', '.', "M/d/yyyy", "\n", "utf-16-be bom"},
    {"Windows1252", ';', ',', "dd.MM.yyyy", "\r\n", "windows-1252"},
    {"CarriageReturnOnly", ';', ',', "dd.MM.yyyy", "\r", "windows-1252"},
    {"CarriageReturnOnlyUtf16", ',', '.', "M/d/yyyy", "\r", "utf-16-le bom"},
};
INSTANTIATE_TEST_SUITE_P(Ways, FromBytes, testing::ValuesIn(kWays),
                         [](const auto& way) { return std::string(way.param.name); });

} // namespace
} // namespace tests::exchange
