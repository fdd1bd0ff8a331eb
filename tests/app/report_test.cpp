#include "tests/app/program.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QProcess>
#include <QTemporaryDir>

namespace {

/// A book of two yards, brought in by files, and the report of it by command.
class ReportCommand : public testing::Test {
protected:
    QTemporaryDir dir;
    QString book = dir.filePath("b.yardwright");
    QString pdf = dir.filePath("report.pdf");
    QString folder = dir.filePath("report");

    void SetUp() override {
        const std::pair<const char*, const char*> files[] = {
            {"keeper", "name,address,contact,registration,place\n"
                       "Ines Beispiel,\"1 Long Lane\nOver Yonder\",0000 123,REG-77,New Zealand\n"},
            {"yards", "yard,latitude_deg,longitude_deg\nNorth,47.5,-30.25\nSouth,47.6,-30.5\n"},
            {"colonies", "colony,yard,stand,x_m,y_m,since,ended,end\n"
                         "N1,North,1,0,0,2025-05-01,,\nN2,North,2,4,0,2025-05-01,,\n"
                         "N3,North,3,8,0,2025-05-01,2026-02-01,dead\nN4,North,4,12,0,2026-05-10,,\n"
                         "S1,South,1,0,0,2025-05-01,,\n"},
            {"placements", "colony,date,yard,stand,x_m,y_m\nN2,2026-06-01,South,9,30,0\n"},
            {"visits", "colony,date,bees_top,brood_frames,brood_checked,signs,mites,mite_sample,by,note\n"
                       "N1,2026-07-01,7.25,6,6,,3,300,Ada,\n"
                       "S1,2026-07-02,5,5,4,afb,,,Bo,closed up at once\n"
                       "N1,2025-06-01,4,4,4,chalkbrood,,,Ada,before the period\n"},
            {"transfers", "date,from,to,what,count\n2026-07-05,N1,S1,frames,2\n"},
            {"results", "colony,yard,date,disease,result,method,by,paper\n"
                        "S1,,2026-07-03,afb,positive,laboratory,State Laboratory,R-9\n"},
            {"treatments", "colony,yard,date,product,substance,batch,quantity,unit,withdrawal_days,by\n"
                           ",North,2026-08-01,Thymol wafers,thymol,B-42,2,wafers,0,Ada\n"}};
        QStringList words = {"import", book};
        for (const auto& [name, text] : files) {
            const QString path = dir.filePath(QString::fromLatin1(name) + ".csv");
            writeFile(path, text);
            words << QString("--") + name << path;
        }
        const Ran ran = runProgram(words);
        ASSERT_EQ(ran.status, 0) << ran.err.constData();
    }
    Ran made(const QString& to, const QStringList& more = {}) {
        return runProgram(QStringList{"report", book, "--to", to, "--from", "2025-10-01", "--until", "2026-09-20"} +
                          more);
    }
    QString text() const {
        QProcess process;
        process.start("pdftotext", {"-layout", pdf, "-"});
        EXPECT_TRUE(process.waitForFinished(30'000));
        return QString::fromUtf8(process.readAllStandardOutput()).simplified();
    }
    QString file(const QString& name) const { return QString::fromUtf8(bytesOf(folder + '/' + name + ".csv")); }
};

/// What an authority asks, and where it stands.
struct Asked {
    const char* item;
    const char* onPaper; ///< in the text of the PDF
    const char* file;    ///< without ".csv"
    const char* cell;    ///< in that file
};

// Australian Honey Bee Industry Biosecurity Code of Practice, part B (mpba.org.au/hive-management).
const Asked kAskedByAuthorities[] = {
    {"inspection dates", "Days of inspection", "visits", "2026-07-01,North,1,1,Ada"},
    {"strength", "7.25 2026-07-01", "colonies", "7.25,2026-07-01"},
    {"pests", "Signs of disease seen at visits", "signs", "American foulbrood"},
    {"how they were found", "sign at a visit", "foulbrood_found", "sign at a visit"},
    {"how they were found, by a test", "positive, laboratory", "foulbrood_found", "\"positive, laboratory\""},
    {"actions", "closed up at once", "signs", "closed up at once"},
    {"tests for AFB: method, date, laboratory, result", "State Laboratory", "results",
     "2026-07-03,S1,American foulbrood,positive,laboratory,State Laboratory,R-9"},
    {"hive movements: dates, numbers, places", "Hives carried between places", "movements",
     "2026-06-01,1,North,South,N2"},
    {"bees and hives brought in: date", "Colonies that began in the period", "begun", "2026-05-10,N4,North,new"},
    {"training", "Training of those who inspect", "report", "Training of those who inspect,not kept in this book"},
    // WOAH Terrestrial Code art. 4.14.3.
    {"registration", "REG-77", "report", "Registration,REG-77"},
    {"expected places", "Places expected in the next 12 months", "report",
     "Places expected in the next 12 months,not kept in this book"},
    {"mean number of colonies a place", "Mean", "places", "colonies_mean"},
    {"owner's name", "Ines Beispiel", "report", "Name,Ines Beispiel"},
    {"owner's address", "Over Yonder", "report", "Over Yonder"},
    // Goodwin and Van Eaton, Elimination of AFB without the use of drugs, ch. 8: a report of American foulbrood.
    {"date found", "2026-07-02", "foulbrood_found", "2026-07-02,American foulbrood,S1"},
    {"location", "-30.5", "foulbrood_found", "South,47.6,-30.5"},
    {"number of hives", "Hives", "foulbrood_found", "South,47.6,-30.5,2"},
    {"telephone", "0000 123", "report", "Contact,0000 123"},
};

TEST_F(ReportCommand, HoldsWhatAuthoritiesAskOnPaperAndInFiles) {
    ASSERT_EQ(made(pdf).status, 0);
    ASSERT_EQ(made(folder).status, 0);
    const QString paper = text();
    for (const Asked& asked : kAskedByAuthorities) {
        EXPECT_TRUE(paper.contains(QString::fromUtf8(asked.onPaper))) << asked.item << ": " << asked.onPaper;
        const QString csv = file(QString::fromUtf8(asked.file));
        EXPECT_TRUE(csv.contains(QString::fromUtf8(asked.cell))) << asked.item << ":\n" << csv.toStdString();
    }
}

TEST_F(ReportCommand, SaysNoMoreThanIsRecorded) {
    ASSERT_EQ(made(pdf).status, 0);
    ASSERT_EQ(made(folder).status, 0);
    QString paper = text();
    EXPECT_TRUE(paper.contains("no signs recorded"));
    EXPECT_TRUE(paper.contains("Local apiary law and inspectors decide."));
    EXPECT_TRUE(paper.contains("page 1 of"));
    EXPECT_TRUE(paper.contains("revision 1"));
    // WOAH Terrestrial Code art. 9.2.1: "no signs" is not "free".
    paper.remove("does not mean free of disease").remove(QStringLiteral("That is not “free of disease”"));
    EXPECT_FALSE(paper.contains("free of", Qt::CaseInsensitive)) << paper.toStdString();
    EXPECT_FALSE(paper.contains("before the period")) << "of another year";
    EXPECT_FALSE(file("signs").contains("chalkbrood"));
    EXPECT_TRUE(file("without_brood_check").contains("North,1,N4")) << file("without_brood_check").toStdString();
    EXPECT_TRUE(file("without_brood_check").contains("South,1,N2"));
    EXPECT_TRUE(file("brood_checks").contains("2026-07-01,North,N1,6,6,no signs recorded,Ada"));
    EXPECT_TRUE(file("mite_samples").contains("2026-07-01,North,N1,3,300,1.0,"));
    EXPECT_TRUE(file("treatments").contains("yard North,2,Thymol wafers,thymol,2 wafers,B-42,0,Ada"));
    EXPECT_TRUE(file("transfers").contains("2026-07-05,frames,2,N1,North,S1,South,"));
    // 3 + 1 new − 1 carried away = 3 at risk, 1 dead: 33 % (COLOSS BEEBOOK vol. II, epidemiology 1.3.3.1).
    EXPECT_TRUE(file("losses").contains("North,1,0,1,3,33,0")) << file("losses").toStdString();
    EXPECT_TRUE(file("holds").contains("S1,American foulbrood confirmed,")) << file("holds").toStdString();
}

TEST_F(ReportCommand, OfSomeYardsSaysNothingOfOthers) {
    ASSERT_EQ(made(folder, {"--yard", "north"}).status, 0);
    EXPECT_FALSE(file("places").contains("South"));
    EXPECT_FALSE(file("places").contains("all together"));
    EXPECT_FALSE(file("results").contains("R-9"));
    EXPECT_TRUE(file("movements").contains("N2")) << "it left a yard asked for";
    EXPECT_FALSE(file("holds").contains("S1,American foulbrood confirmed,"));
}

TEST_F(ReportCommand, TheTwelveMonthsUpToTheLastDayWhereNothingElseIsSaid) {
    ASSERT_EQ(runProgram({"report", book, "--to", folder, "--until", "2026-09-20"}).status, 0);
    EXPECT_TRUE(file("report").contains("First day,2025-09-21"));
    EXPECT_TRUE(file("report").contains("Last day,2026-09-20"));
}

TEST_F(ReportCommand, ErrorsAreTheContracts) {
    EXPECT_EQ(runProgram({"report", book}).status, 2) << "no --to";
    EXPECT_EQ(runProgram({"report", book, "--to", pdf, "--from", "yesterday"}).status, 2);
    const Ran turned = runProgram({"report", book, "--to", pdf, "--from", "2026-09-21", "--until", "2026-09-20"});
    EXPECT_EQ(turned.status, 2);
    EXPECT_TRUE(turned.err.contains("--from 2026-09-21 lies after --until 2026-09-20")) << turned.err.constData();
    const Ran unknown = made(pdf, {"--yard", "Nowhere"});
    EXPECT_EQ(unknown.status, 4);
    EXPECT_TRUE(unknown.err.contains("“Nowhere” is no yard of this book")) << unknown.err.constData();
    EXPECT_FALSE(QFile::exists(pdf));
    EXPECT_EQ(runProgram({"report", dir.filePath("none.yardwright"), "--to", pdf}).status, 5);
    EXPECT_EQ(made(dir.filePath("no/such/folder/r.pdf")).status, 5);
    writeFile(dir.filePath("taken"), "a file");
    EXPECT_EQ(made(dir.filePath("taken")).status, 5) << "a file stands where the folder would be";
}

} // namespace
