#include "core/exchange/kept_mapping.h"

#include "core/base/error.h"
#include "tests/exchange/workbench.h"

#include <QFileInfo>

#include <gtest/gtest.h>

// Mappings that the book keeps, by name, on files of other programs.

namespace tests::exchange {
namespace {

using namespace core::exchange;

Mapping scaleApp() {
    Mapping m;
    m.kind = FileKind::Visits;
    m.forms = {';', DecimalMark::Comma, DayOrder::DayMonthYear};
    m.columns = {{f("Hive"), f("colony"), CellUnit::Ours, {}, {}},
                 {f("Day"), f("date"), CellUnit::Ours, {}, {}},
                 {f("Gross (lb)"), f("gross_kg"), CellUnit::Pounds, {}, {}}};
    return m;
}

const QStringList kHeader{f("Day"), f("Hive"), f("Gross (lb)"), f("Battery")};
const QByteArray kFile = "Day;Hive;Gross (lb);Battery\n3.5.2026;A;100,5;ok\n4.5.2026;B;90;low\n";

/// smallYard() with a mapping kept as "Scale app".
class KeptMappingTest : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(bench.import(smallYard()).good());
        keep(f("Scale app"), scaleApp());
    }
    void keep(const QString& name, const Mapping& mapping) {
        const auto session = bench.open();
        session->apply([&](const core::edit::EditContext& c) { return keepMapping(c, name, mapping, kHeader); });
    }
    ImportReport importNamed(const QString& name, const Texts& texts, bool dryRun = false) {
        ImportFiles files = bench.write(texts);
        files.mapping = name;
        return importIntoBook(bench.book(), bench.clock(), files, dryRun);
    }
    QString refusal(const QString& name, const Texts& texts) {
        try {
            importNamed(name, texts);
        } catch (const core::Error& e) {
            EXPECT_EQ(e.kind(), core::Error::Kind::BadData);
            return e.userMessage();
        }
        return {};
    }
    Workbench bench;
};

TEST_F(KeptMappingTest, IsAppliedByName) {
    const auto dry = importNamed(f("scale APP"), {{f("visits.csv"), kFile}}, true);
    EXPECT_TRUE(dry.good());
    EXPECT_EQ(dry.of(FileKind::Visits).added, 2);
    const auto report = importNamed(f("scale APP"), {{f("visits.csv"), kFile}});
    ASSERT_TRUE(report.good()) << report.faults.lines().join(u'\n').toStdString();
    // 100.5 lb × 0.45359237 = 45.59 kg. Source: international pound of 1959, exact by definition.
    EXPECT_TRUE(bench.exported()[f("visits.csv")].contains("A,2026-05-03,,,,,,,,,,,,,45.59,"));
    EXPECT_EQ(bench.check(), QStringList());
}

TEST_F(KeptMappingTest, ReadsFilesOfItsKindAndLeavesOthersAsTheyAre) {
    const auto report = importNamed(
        f("Scale app"), {{f("visits.csv"), kFile}, {f("transfers.csv"), "date,from,to,what\n2026-05-05,A,B,feed\n"}});
    ASSERT_TRUE(report.good()) << report.faults.lines().join(u'\n').toStdString();
    EXPECT_EQ(report.of(FileKind::Transfers).added, 1);
    EXPECT_EQ(refusal(f("Scale app"), {{f("transfers.csv"), "date,from,to,what\n"}}),
              QStringLiteral("The mapping “Scale app” is for visits, expected a file of them (--visits FILE)."));
}

TEST_F(KeptMappingTest, OfAnUnknownNameIsRefusedWithThoseThatThereAre) {
    keep(f("Old sheet"), scaleApp());
    EXPECT_EQ(refusal(f("scales"), {{f("visits.csv"), kFile}}),
              QStringLiteral("“scales” is no mapping of this book, expected one of “Old sheet”, “Scale app”."));
    EXPECT_TRUE(bench.open()->visitsBetween({}, core::dayOf(9999, 12, 31), {}).empty());
}

TEST_F(KeptMappingTest, ThatDoesNotFitIsAFaultOfTheHeader) {
    const auto report = importNamed(f("Scale app"), {{f("visits.csv"), "Day;Hive;Weight\n3.5.2026;A;100\n"}});
    EXPECT_EQ(placesOf(report), QStringList(f("visits.csv:1: Gross (lb)")));
    EXPECT_FALSE(report.line);
}

TEST_F(KeptMappingTest, IsOfferedForTheSameHeaderInAnyOrder) {
    const auto kept = keptMappings(*bench.open());
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_EQ(kept[0].mapping, scaleApp());
    EXPECT_EQ(mappingsFor(kept, {f("Battery"), f("Hive"), f(" Day"), f("Gross (lb)")}).size(), 1U);
    EXPECT_TRUE(mappingsFor(kept, {f("Hive"), f("Day"), f("Gross (lb)")}).empty());
}

TEST_F(KeptMappingTest, IsExported) {
    EXPECT_TRUE(bench.exported()[f("mappings.csv")].startsWith("name,kind,header,form\nScale app,visits,\"Day\nHive"));
}

TEST_F(KeptMappingTest, OneOfABookOfSomeoneElseIsNoLargerThanIsOfUse) {
    const QByteArray json = toJson(scaleApp());
    EXPECT_TRUE(mappingFromJson(json));
    for (const char* separator : {"x", "\\\"", "\\n", " "})
        EXPECT_FALSE(mappingFromJson(
            QByteArray(json).replace("\"separator\":\";\"", QByteArray("\"separator\":\"") + separator + '"')))
            << separator;
    Mapping wordy = scaleApp();
    wordy.columns.push_back({{}, f("note"), CellUnit::Ours, QString(1001, u'x'), {}});
    EXPECT_FALSE(mappingFromJson(toJson(wordy)));
    EXPECT_THROW(keep(f("Wordy"), wordy), core::Error);
}

TEST_F(KeptMappingTest, OfAMissingBookIsRefused) {
    ImportFiles files = bench.write({{f("visits.csv"), kFile}});
    files.mapping = f("Scale app");
    const QString none = bench.folder() + f("/none.yardwright");
    EXPECT_THROW(importIntoBook(none, bench.clock(), files, false), core::Error);
    EXPECT_THROW(importIntoBook(none, bench.clock(), files, true), core::Error);
    EXPECT_FALSE(QFileInfo::exists(none));
}

} // namespace
} // namespace tests::exchange
