#include "core/exchange/foreign_cells.h"
#include "core/exchange/foreign_look.h"
#include "core/exchange/mapping.h"
#include "core/exchange/text_source.h"
#include "tests/exchange/workbench.h"

#include <QStringEncoder>

#include <gtest/gtest.h>

// Files of other programs. Source: own calculation, unless said.

namespace tests::exchange {
namespace {

using namespace core::exchange;

const QByteArray kGerman = "Volk;Datum;Waben oben;Gewicht;Weisel;Notiz\r\n"
                           "a;14.08.2026;3,25;61,2;ja;\"ruhig; \"\"sanft\"\"\"\r\n"
                           "\r\n"
                           "B;3.9.26;4;;nein;läuft\r\n";

ColumnMapping column(const char* from, const char* to, CellUnit unit = CellUnit::Ours) {
    return {QString::fromUtf8(from), f(to), unit, {}, {}};
}

Mapping germanVisits() {
    Mapping m;
    m.kind = FileKind::Visits;
    m.forms = {';', DecimalMark::Comma, DayOrder::DayMonthYear};
    m.columns = {column("Volk", "colony"), column("Datum", "date"), column("Waben oben", "bees_top"),
                 column("Gewicht", "gross_kg", CellUnit::Pounds), column("Notiz", "note")};
    ColumnMapping queen = column("Weisel", "queen");
    queen.words = {{f("ja"), f("seen")}, {f("nein"), f("none")}};
    m.columns.push_back(queen);
    return m;
}

TEST(Decode, FindsTheEncodingByMarkByZerosAndByForm) {
    const QString text = QStringLiteral("colony,note\nA,läuft – gut\n");
    for (const auto& [encoding, flags, found] :
         {std::tuple{QStringConverter::Utf8, QStringConverter::Flag::Default, Encoding::Utf8},
          std::tuple{QStringConverter::Utf8, QStringConverter::Flag::WriteBom, Encoding::Utf8},
          std::tuple{QStringConverter::Utf16LE, QStringConverter::Flag::Default, Encoding::Utf16Little},
          std::tuple{QStringConverter::Utf16LE, QStringConverter::Flag::WriteBom, Encoding::Utf16Little},
          std::tuple{QStringConverter::Utf16BE, QStringConverter::Flag::Default, Encoding::Utf16Big},
          std::tuple{QStringConverter::Utf16BE, QStringConverter::Flag::WriteBom, Encoding::Utf16Big}}) {
        QStringEncoder encoder(encoding, flags);
        const QByteArray bytes = encoder(text);
        const auto decoded = decode(bytes);
        ASSERT_TRUE(decoded);
        EXPECT_EQ(decoded->encoding, found);
        EXPECT_EQ(QString::fromUtf8(decoded->text), text);
    }
    // 0xE4 is ä, 0x96 the en dash, 0x80 the euro sign. Source: WHATWG Encoding Standard, index windows-1252, from
    // memory.
    const auto western = decode("A,l\xE4uft \x96 5 \x80\n");
    ASSERT_TRUE(western);
    EXPECT_EQ(western->encoding, Encoding::Windows1252);
    EXPECT_EQ(QString::fromUtf8(western->text), QStringLiteral("A,läuft – 5 €\n"));
}

TEST(Decode, RefusesWhatIsNotOfTheEncodingAskedFor) {
    EXPECT_FALSE(decode("l\xE4uft", Encoding::Utf8));
    EXPECT_FALSE(decode("abc", Encoding::Utf16Little)) << "an odd number of bytes";
    EXPECT_FALSE(decode("\x81", Encoding::Windows1252)) << "not assigned";
    EXPECT_TRUE(decode("l\xE4uft", Encoding::Windows1252));
}

TEST(Decode, EndsEveryLineWithLf) {
    EXPECT_EQ(decode("a\rb\rc")->text, "a\nb\nc");
    EXPECT_EQ(decode("a\r\nb\r\n")->text, "a\nb\n");
    EXPECT_EQ(decode("a\r\rb\n")->text, "a\n\nb\n");
}

TEST(Forms, AreSeenFromTheFirstRows) {
    const FoundForms german = formsOf(kGerman);
    EXPECT_EQ(german.forms, (CellForms{';', DecimalMark::Comma, DayOrder::DayMonthYear}));
    EXPECT_FALSE(german.daysDoubtful);
    EXPECT_FALSE(german.decimalDoubtful);
    EXPECT_EQ(formsOf("colony\tdate\nA, B\t2026-08-14\n").forms.separator, '\t');
    EXPECT_EQ(formsOf("a|b|c\n1,5|2|3\n").forms, (CellForms{'|', DecimalMark::Comma, DayOrder::YearMonthDay}));
    EXPECT_EQ(formsOf("colony,date\nA,8/14/2026\n").forms.days, DayOrder::MonthDayYear);
    EXPECT_TRUE(formsOf("colony,date\nA,8/9/2026\n").daysDoubtful);
    EXPECT_TRUE(formsOf("colony,date\nA,8/14/2026\nB,14/8/2026\n").daysDoubtful);
    EXPECT_TRUE(formsOf("a;b\n1,5;2.5\n").decimalDoubtful);
    EXPECT_EQ(formsOf("").forms, CellForms{});
}

TEST(ForeignCells, DaysOfEachOrderBecomeIso) {
    EXPECT_EQ(isoDayCell("3.9.2026", DayOrder::DayMonthYear), "2026-09-03");
    EXPECT_EQ(isoDayCell(" 9/3/26 ", DayOrder::MonthDayYear), "2026-09-03");
    EXPECT_EQ(isoDayCell("2026/9/3 14:05", DayOrder::YearMonthDay), "2026-09-03");
    EXPECT_EQ(isoDayCell("2026-09-03T10:00:00Z", DayOrder::YearMonthDay), "2026-09-03");
    EXPECT_EQ(isoDayCell("3.9.2026", DayOrder::YearMonthDay), "3.9.2026") << "left for the reader to refuse";
    EXPECT_EQ(isoDayCell("next week", DayOrder::DayMonthYear), "next week");
    EXPECT_EQ(isoDayCell("31.2.2026", DayOrder::DayMonthYear), "2026-02-31") << "no day, which the reader refuses";
}

TEST(ForeignCells, NumbersGetAPointAndOurUnit) {
    EXPECT_EQ(numberCell("3,25", DecimalMark::Comma), "3.25");
    EXPECT_EQ(numberCell("1'234.5", DecimalMark::Point), "1234.5");
    EXPECT_EQ(numberCell("3,25", DecimalMark::Point), "3,25") << "left for the reader to refuse";
    EXPECT_EQ(scaledCell("10", 0.45359237), "4.535924");
    EXPECT_EQ(scaledCell("heavy", 0.5), "heavy");
}

TEST(MappingTest, IsProposedWhereTheNamesAreAlikeAndToldWhatIsMissing) {
    const QByteArray text = "Colony;GROSS kg;Bees-Top;Weather\nA;1;2;3\n";
    const Mapping m = proposedMapping(FileKind::Visits, text, formsOf(text).forms);
    QStringList pairs;
    for (const ColumnMapping& c : m.columns) pairs << c.from + u'>' + c.to;
    EXPECT_EQ(pairs, QStringList({f("Colony>colony"), f("Bees-Top>bees_top"), f("GROSS kg>gross_kg")}));
    const auto troubles = mappingTroubles(m, headerOf(text, ';'));
    ASSERT_EQ(troubles.size(), 1U);
    EXPECT_EQ(troubles[0].column, f("date"));
    EXPECT_EQ(troubles[0].what, f("is given by nothing, expected a column of the file or one value for all rows"));
    EXPECT_TRUE(mappingTroubles(germanVisits(), headerOf(kGerman, ';')).empty());
    EXPECT_EQ(mappingTroubles(germanVisits(), {f("Volk"), f("Volk")}).size(), 6U);
}

TEST(MappingTest, KeepsTheLineOfEachRow) {
    Faults faults;
    const QByteArray ours = translated(decode(kGerman)->text, germanVisits(), f("x.csv"), faults);
    EXPECT_TRUE(faults.none());
    EXPECT_EQ(ours, QByteArray("colony,date,bees_top,gross_kg,note,queen\n"
                               "a,2026-08-14,3.25,27.759853,\"ruhig; \"\"sanft\"\"\",seen\n"
                               "\n"
                               "B,2026-09-03,4,,läuft,none\n"));
    const QByteArray broken =
        "Volk;Datum;Waben oben;Gewicht;Weisel;Notiz\nA;1.1.2026\nB;1.1.2026;1;1;ja;\"zwei\nZeilen\"\n"
        "C;1.1.2026;1;1;ja;x\n";
    const QByteArray kept = translated(broken, germanVisits(), f("x.csv"), faults);
    ASSERT_EQ(faults.kept().size(), 1U);
    EXPECT_EQ(faults.kept()[0].line, 2);
    EXPECT_EQ(kept.split('\n').at(2).left(2), "B,");
    EXPECT_EQ(kept.split('\n').at(4).left(2), "C,");
}

TEST(MappingTest, IsTheSameAfterJson) {
    Mapping m = germanVisits();
    EXPECT_EQ(mappingFromJson(toJson(m)), m);
    m.encoding = Encoding::Windows1252;
    m.columns.push_back({{}, f("by"), CellUnit::Ours, f("Me"), {}});
    EXPECT_EQ(mappingFromJson(toJson(m)), m);
    EXPECT_EQ(mappingFromJson("{}"), std::nullopt);
    EXPECT_EQ(mappingFromJson("no json"), std::nullopt);
    EXPECT_EQ(mappingFromJson(toJson(m).replace("\"dmy\"", "\"xyz\"")), std::nullopt);
}

TEST(ForeignLook, GuessesTheKindByTheColumns) {
    const auto guess = [](const char* header) { return guessedKind(QByteArray(header) + "\n", {}); };
    EXPECT_EQ(guess("Colony,Date,Gross KG"), FileKind::Visits);
    EXPECT_EQ(guess("date,from,to,what,count"), FileKind::Transfers);
    EXPECT_EQ(guess("Colony,Yard,Stand,X m,Y m,Since"), FileKind::Colonies);
    EXPECT_EQ(guess("yard,latitude deg"), FileKind::Yards);
    EXPECT_EQ(guess("Colony,Date,What,Amount L"), FileKind::Feedings);
    EXPECT_EQ(guess("Colony,Since,Until,Fate,Born"), FileKind::Queens);
    EXPECT_EQ(guess("Volk,Datum"), FileKind::Visits) << "nothing fits";
    EXPECT_EQ(guess(""), FileKind::Visits);
}

TEST(MappingTest, FeedAndQueensAreReadWithOneToo) {
    Mapping feed;
    feed.kind = FileKind::Feedings;
    feed.forms = {';', DecimalMark::Comma, DayOrder::DayMonthYear};
    feed.columns = {column("Volk", "colony"), column("Datum", "date"), column("Futter", "what"),
                    column("lb", "amount_kg", CellUnit::Pounds)};
    feed.columns[2].words = {{f("Teig"), f("fondant")}};
    EXPECT_EQ(mappingFromJson(toJson(feed)), feed) << "kept under a name and read again";
    Faults faults;
    EXPECT_EQ(translated("Volk;Datum;Futter;lb\nA;5.8.2026;Teig;5,5\n", feed, {}, faults),
              "colony,date,what,amount_kg\nA,2026-08-05,fondant,2.494758\n");
    Mapping queens;
    queens.kind = FileKind::Queens;
    queens.forms = feed.forms;
    queens.columns = {column("Volk", "colony"), column("ab", "since"), column("bis", "until")};
    EXPECT_EQ(translated("Volk;ab;bis\nA;5.8.2025;9.6.2026\n", queens, {}, faults),
              "colony,since,until\nA,2025-08-05,2026-06-09\n");
    EXPECT_TRUE(faults.none());
    EXPECT_TRUE(wordsOfColumn(FileKind::Queens, f("fate")).contains(f("superseded")));
}

TEST(ForeignLook, ShowsWordsSamplesAndRowsAsTheyWouldComeIn) {
    EXPECT_EQ(wordsInFile(kGerman, ';', f("Weisel"), 8), QStringList({f("ja"), f("nein")}));
    EXPECT_EQ(wordsInFile(kGerman, ';', f("Weisel"), 1), QStringList(f("ja")));
    EXPECT_TRUE(wordsInFile(kGerman, ';', f("None"), 8).isEmpty());
    EXPECT_TRUE(wordsOfColumn(FileKind::Visits, f("queen")).contains(f("seen")));
    EXPECT_TRUE(wordsOfColumn(FileKind::Visits, f("note")).isEmpty());
    EXPECT_EQ(samplesOf(kGerman, ';').value(3), f("61,2"));
    const auto rows = firstRowsSeen(decode(kGerman)->text, germanVisits(), 10);
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0].line, 2);
    EXPECT_EQ(rows[0].cells.mid(0, 4), QStringList({f("a"), f("2026-08-14"), f("3.25"), f("27.759853")}));
    EXPECT_EQ(rows[1].line, 4);
    EXPECT_EQ(rows[1].cells.value(5), f("none"));
    EXPECT_TRUE(firstRowsSeen("", germanVisits(), 10).empty());
}

ImportFiles mapped(const Workbench& bench, const QByteArray& bytes, Mapping mapping) {
    ImportFiles files = bench.write({{f("visits.csv"), bytes}}, f("foreign"));
    files.files[0].mapping = std::move(mapping);
    return files;
}

TEST(MappedImport, BringsTheRowsInAndKeepsTheFileAsItWas) {
    const Workbench bench;
    ASSERT_TRUE(bench.import(smallYard()).good());
    QStringEncoder utf16(QStringConverter::Utf16LE, QStringConverter::Flag::WriteBom);
    const QByteArray bytes = utf16(QString::fromUtf8(kGerman));
    const auto session = bench.open();
    const auto report = importFiles(*session, mapped(bench, bytes, germanVisits()), false);
    ASSERT_TRUE(report.good()) << report.faults.lines().join(u'\n').toStdString();
    EXPECT_EQ(report.of(FileKind::Visits).added, 2);
    EXPECT_EQ(session->attachmentsOf(report.line->seq).at(0).text, bytes);
    const QByteArray visits = bench.exported()[f("visits.csv")];
    EXPECT_TRUE(visits.contains("27.76")) << visits.toStdString();
    EXPECT_TRUE(visits.contains("3.25")) << visits.toStdString();
    // The same file again is recognised row by row.
    const auto again = importFiles(*session, mapped(bench, bytes, germanVisits()), false);
    ASSERT_TRUE(again.good());
    EXPECT_EQ(again.of(FileKind::Visits).passedOver, 2);
    EXPECT_FALSE(again.line);
    ASSERT_TRUE(session->undo());
    EXPECT_EQ(session->check(), QStringList());
}

TEST(MappedImport, NamesFaultsByTheFilesOwnLinesAndColumns) {
    const Workbench bench;
    ASSERT_TRUE(bench.import(smallYard()).good());
    QByteArray bytes = kGerman;
    bytes.replace("3.9.26;4;", "3.9.26;4,1;");
    const auto session = bench.open();
    const auto report = importFiles(*session, mapped(bench, bytes, germanVisits()), false);
    ASSERT_EQ(report.faults.count(), 1);
    EXPECT_EQ(report.faults.kept()[0].line, 4);
    EXPECT_EQ(report.faults.kept()[0].column, f("Waben oben (bees_top)"));
    EXPECT_TRUE(report.faults.kept()[0].what.contains(f("frames in multiples of 0.25")));
    EXPECT_FALSE(report.line);
}

TEST(MappedImport, AMappingThatDoesNotFitTheFileIsSaidOnce) {
    const Workbench bench;
    ASSERT_TRUE(bench.import(smallYard()).good());
    const auto session = bench.open();
    const auto report = importFiles(*session, mapped(bench, "Colony,Day\nA,x\n", germanVisits()), false);
    ASSERT_EQ(report.faults.count(), 6) << report.faults.lines().join(u'\n').toStdString();
    EXPECT_EQ(report.faults.kept()[0].text().section(u'/', -1),
              QStringLiteral("visits.csv:1: Volk: is not in the file's first row, expected it there"));
}

} // namespace
} // namespace tests::exchange
