#include "tests/support/csv_tables.h"
#include "tests/support/random_book.h"

#include <gtest/gtest.h>

#include <map>
#include <string>

// What the invented books of holds_judged_test hold: each kind of record that a hold can rest on or be lifted by.

namespace tests::rules {
namespace {

using support::CsvRow;
using support::CsvTables;
using Counts = std::map<QString, int>;

constexpr std::uint64_t kBooks = 200;
constexpr int kOften = 20;

QString cell(const CsvRow& row, const char* column) {
    const auto found = row.find(QString::fromLatin1(column));
    return found == row.end() ? QString() : found->second;
}

QString aimOf(const CsvRow& row) {
    return cell(row, "yard").isEmpty() ? QStringLiteral(" of a colony ") : QStringLiteral(" of a yard ");
}

class Census {
public:
    Counts counts;

    void add(const CsvTables& tables) {
        m_tables = &tables;
        addVisits();
        addResults();
        addColonies();
        for (const CsvRow& row : rows("transfers")) count("transfer " + cell(row, "what"));
        for (const CsvRow& row : rows("lineage")) count(cell(row, "how"));
        for (const CsvRow& row : rows("treatments"))
            count("treatment" + aimOf(row) + (cell(row, "antibiotic") == u"yes" ? "antibiotic" : "other"));
        for (const CsvRow& row : rows("placements")) count("carry " + half(cell(row, "yard")));
        for (const CsvRow& row : rows("settings")) count("setting " + cell(row, "name"));
    }

private:
    std::vector<CsvRow> rows(const char* kind) const {
        const auto found = m_tables->find(QString::fromLatin1(kind));
        return found == m_tables->end() ? std::vector<CsvRow>{} : found->second;
    }

    void count(const QString& what) { ++counts[what]; }

    QString half(const QString& yard) const {
        for (const CsvRow& row : rows("yards"))
            if (cell(row, "yard") == yard) {
                const QString latitude = cell(row, "latitude_deg");
                return latitude.isEmpty() ? "nowhere" : latitude.startsWith(u'-') ? "south" : "north";
            }
        return "lost";
    }

    void addVisits() {
        for (const CsvRow& row : rows("visits")) {
            for (const QString& sign : cell(row, "signs").split(u' ', Qt::SkipEmptyParts)) count("sign " + sign);
            const QString brood = cell(row, "brood_frames");
            const QString checked = cell(row, "brood_checked");
            count(checked.isEmpty()                       ? "brood not looked at"
                  : brood.isEmpty()                       ? "checked, brood not noted"
                  : brood == checked && brood.toInt() > 2 ? "full check"
                  : brood == checked                      ? "little brood, all checked"
                                                          : "part of the brood checked");
        }
    }

    void addResults() {
        for (const CsvRow& row : rows("results"))
            count(cell(row, "disease") + u' ' + cell(row, "result") + aimOf(row) + cell(row, "method"));
    }

    void addColonies() {
        std::map<QString, int> lives;
        for (const CsvRow& row : rows("colonies")) {
            count("colony " + half(cell(row, "yard")));
            if (!cell(row, "end").isEmpty()) count("end " + cell(row, "end"));
            if (++lives[cell(row, "colony")] > 1) count("label used again");
        }
    }

    const CsvTables* m_tables = nullptr;
};

QStringList kindsWanted() {
    QStringList wanted{"brood not looked at",
                       "checked, brood not noted",
                       "full check",
                       "part of the brood checked",
                       "label used again",
                       "little brood, all checked",
                       "united",
                       "shaken-out",
                       "divided"};
    for (const char* sign : {"afb", "efb", "brood-doubt", "chalkbrood", "sacbrood", "nosema", "deformed-wings"})
        wanted << QString("sign ") + sign;
    for (const QString disease : {"afb", "efb"}) {
        for (const char* method : {"laboratory", "inspector", "field"})
            for (const char* result : {" positive", " negative"}) wanted << disease + result + " of a colony " + method;
        for (const char* writ : {" release", " order"})
            for (const char* aim : {" of a colony ", " of a yard "}) wanted << disease + writ + aim + "inspector";
    }
    for (const char* what : {"frames", "brood", "bees", "box", "feed"}) wanted << QString("transfer ") + what;
    for (const char* aim : {"colony", "yard"})
        for (const char* kind : {"antibiotic", "other"}) wanted << QString("treatment of a %1 %2").arg(aim, kind);
    for (const char* where : {"north", "south", "nowhere"})
        wanted << QString("carry ") + where << QString("colony ") + where;
    for (const char* end : {"dead", "destroyed", "sold", "united", "shaken-out"}) wanted << QString("end ") + end;
    return wanted;
}

TEST(RandomBook, EachKindOfRecordOccursOften) {
    Census census;
    for (std::uint64_t seed = 1; seed <= kBooks; ++seed) {
        CsvTables tables;
        for (const auto& [file, text] : support::randomBook(seed).files)
            tables[QString::fromStdString(file).chopped(4)] = support::rowsOfCsv(QString::fromStdString(text));
        census.add(tables);
    }
    for (const QString& kind : kindsWanted())
        EXPECT_GE(census.counts[kind], kOften) << kind.toStdString() << ": " << census.counts[kind];
    EXPECT_EQ(std::count_if(census.counts.begin(), census.counts.end(),
                            [](const auto& entry) { return entry.first.startsWith(u"setting "); }),
              14);
}

} // namespace
} // namespace tests::rules
