#include "tests/app/program.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>

#include <algorithm>

namespace {

/// import BOOK with every CSV file of a folder.
/// What an export tells of the book beside what is read in again.
QStringList filesReadIn(const QString& folder) {
    QStringList files = QDir(folder).entryList({"*.csv"});
    for (const char* told : {"changes.csv", "columns.csv", "history.csv"}) files.removeAll(QLatin1String(told));
    return files;
}

QStringList importWords(const QString& book, const QString& folder) {
    QStringList words = {"import", book};
    for (const QString& file : filesReadIn(folder))
        words << "--" + QString(file).chopped(4).replace('_', '-') << folder + '/' + file;
    return words;
}

QString yardFolder(const QString& name) { return QStringLiteral(YW_TEST_DATA) + "/yards/" + name; }

QJsonObject jsonOf(const Ran& ran) { return QJsonDocument::fromJson(ran.out).object(); }

/// Every value of `expected` stands in `got`; `caution_kinds` is the set of kinds in `cautions`.
void expectAgrees(const QJsonValue& got, const QJsonValue& expected, const QString& where) {
    if (expected.isObject()) {
        const QJsonObject e = expected.toObject();
        for (auto it = e.begin(); it != e.end(); ++it) {
            if (it.key() == "caution_kinds") {
                QStringList kinds, wanted;
                for (const QJsonValue c : got.toObject().value("cautions").toArray())
                    kinds << c.toObject().value("kind").toString();
                for (const QJsonValue k : it.value().toArray()) wanted << k.toString();
                std::ranges::sort(kinds);
                std::ranges::sort(wanted);
                EXPECT_EQ(kinds, wanted) << where.toStdString();
                continue;
            }
            expectAgrees(got.toObject().value(it.key()), it.value(), where + '.' + it.key());
        }
    } else if (expected.isArray()) {
        ASSERT_EQ(got.toArray().size(), expected.toArray().size()) << where.toStdString();
        for (int i = 0; i < expected.toArray().size(); ++i)
            expectAgrees(got.toArray().at(i), expected.toArray().at(i), where + QString("[%1]").arg(i));
    } else {
        EXPECT_EQ(got, expected) << where.toStdString() << ": " << got.toVariant().toString().toStdString()
                                 << " against " << expected.toVariant().toString().toStdString();
    }
}

} // namespace

class WorkedYards : public testing::TestWithParam<const char*> {};

// Source: worked by hand from the rules (tests/data/yards/README.md).
TEST_P(WorkedYards, AdviseAgreesInEveryFieldCompared) {
    const QString folder = yardFolder(GetParam());
    QTemporaryDir dir;
    const QString book = dir.filePath("b.yardwright");
    const Ran imported = runProgram(importWords(book, folder));
    ASSERT_EQ(imported.status, 0) << imported.err.toStdString();
    const QJsonObject expected = QJsonDocument::fromJson(bytesOf(folder + "/expected.json")).object();
    ASSERT_FALSE(expected.isEmpty());
    const Ran advised = runProgram({"advise", book, "--on", expected.value("on").toString(), "--json"});
    ASSERT_EQ(advised.status, 0) << advised.err.toStdString();
    expectAgrees(jsonOf(advised), expected, GetParam());
    EXPECT_EQ(runProgram({"check", book}).status, 0);
}
INSTANTIATE_TEST_SUITE_P(All, WorkedYards, testing::Values("kiln-field", "brook-end", "tansy-lane"));

TEST(CommandLine, ShuffledRowsAndFilesGiveTheSameJson) {
    QTemporaryDir dir;
    const QString folder = yardFolder("brook-end");
    QStringList backwards = {"import", dir.filePath("two.yardwright")};
    QStringList files = QDir(folder).entryList({"*.csv"});
    std::ranges::reverse(files);
    for (const QString& name : files) {
        QList<QByteArray> lines = bytesOf(folder + '/' + name).split('\n');
        lines.removeAll(QByteArray());
        std::reverse(lines.begin() + 1, lines.end());
        writeFile(dir.filePath(name), lines.join('\n') + '\n');
        backwards << "--" + QString(name).chopped(4).replace('_', '-') << dir.filePath(name);
    }
    ASSERT_EQ(runProgram(importWords(dir.filePath("one.yardwright"), folder)).status, 0);
    ASSERT_EQ(runProgram(backwards).status, 0);
    const Ran one = runProgram({"advise", dir.filePath("one.yardwright"), "--on", "2026-09-20", "--json"});
    const Ran two = runProgram({"advise", dir.filePath("two.yardwright"), "--on", "2026-09-20", "--json"});
    EXPECT_EQ(one.status, 0);
    EXPECT_FALSE(one.out.isEmpty());
    EXPECT_EQ(one.out, two.out);
}

class OneYard : public testing::Test {
protected:
    void SetUp() override { ASSERT_EQ(runProgram(importWords(book, yardFolder("kiln-field"))).status, 0); }
    QTemporaryDir dir;
    QString book = dir.filePath("b.yardwright");
    Ran advise(const QStringList& more) {
        return runProgram(QStringList{"advise", book, "--on", "2026-09-15", "--json"} + more);
    }
};

TEST_F(OneYard, PinForbidAndMostAreObeyed) {
    const Ran forbidden = advise({"--forbid", "K3+K11", "--forbid", "K4+K2"});
    ASSERT_EQ(forbidden.status, 0) << forbidden.err.toStdString();
    for (const QJsonValue u : jsonOf(forbidden).value("unite").toArray()) {
        const QString moved = u.toObject().value("moved").toString();
        const QString host = u.toObject().value("host").toString();
        EXPECT_FALSE(moved == "K3" && host == "K11");
        EXPECT_FALSE(moved == "K2" && host == "K4");
    }
    const Ran pinned = advise({"--pin", "K6+K2", "--most", "1"});
    ASSERT_EQ(pinned.status, 0) << pinned.err.toStdString();
    ASSERT_EQ(jsonOf(pinned).value("unite").toArray().size(), 1);
    EXPECT_EQ(jsonOf(pinned).value("unite").toArray().at(0).toObject().value("gain").toInt(),
              619); // 4 + 4 frames, 5.385 m: 1584 - 480 - 480 - 5. Source: own calculation by rules 4.6 and 4.7
    // The best single union of the yard. Source: worked by hand (README there): K3 + K11, 1502.
    EXPECT_EQ(jsonOf(advise({"--most", "1"})).value("totals").toObject().value("gain").toInt(), 1502);
}

TEST_F(OneYard, JsonIsSiWhateverUnitsAreShown) {
    const Ran before = advise({});
    for (const auto& [name, value] : {std::pair("show.weight", "lb"), {"show.volume", "qt"}, {"show.length", "ft"}})
        ASSERT_EQ(runProgram({"set", book, name, value}).status, 0) << name;
    EXPECT_EQ(advise({}).out, before.out);
    EXPECT_FALSE(before.out.contains(" ft"));
    const Ran text = runProgram({"advise", book, "--on", "2026-09-15"});
    EXPECT_TRUE(text.out.contains("US quarts")) << text.out.toStdString();
    EXPECT_TRUE(text.out.contains(" ft"));
    // They travel with the book.
    ASSERT_EQ(runProgram({"export", book, "--to", dir.filePath("out")}).status, 0);
    const QString second = dir.filePath("second.yardwright");
    ASSERT_EQ(runProgram({"import", second, "--settings", dir.filePath("out/settings.csv")}).status, 0);
    EXPECT_EQ(runProgram({"settings", second}).out, runProgram({"settings", book}).out);
}

TEST_F(OneYard, APinThatCannotBeIsRefusedWithTheRule) {
    const Ran held = advise({"--pin", "K7+K2"});
    EXPECT_EQ(held.status, 4);
    EXPECT_TRUE(held.err.contains("4.7.2")) << held.err.toStdString();
    EXPECT_TRUE(held.out.isEmpty());
    EXPECT_EQ(advise({"--pin", "K2+K4", "--forbid", "K4+K2"}).status, 4);
    EXPECT_EQ(advise({"--pin", "K2+K4", "--pin", "K2+K6"}).status, 4);
    EXPECT_EQ(advise({"--pin", "K2+K4", "--pin", "K3+K11", "--most", "1"}).status, 4);
    EXPECT_EQ(advise({"--pin", "K2+Nobody"}).status, 4);
    EXPECT_EQ(advise({"--yard", "Nowhere"}).status, 4);
    EXPECT_EQ(advise({"--most", "many"}).status, 2);
}

TEST_F(OneYard, ExplainNamesEveryRuleThatStandsAgainst) {
    const Ran held = runProgram({"explain", book, "--on", "2026-09-15", "K7", "k8"});
    EXPECT_EQ(held.status, 0);
    EXPECT_TRUE(held.out.contains("4.7.2")) << held.out.toStdString();
    EXPECT_TRUE(held.out.contains("4.7.3")) << held.out.toStdString();
    const Ran good = runProgram({"explain", book, "--on", "2026-09-15", "K2", "K6"});
    EXPECT_EQ(good.status, 0);
    EXPECT_TRUE(good.out.contains("619")) << good.out.toStdString();
}

TEST_F(OneYard, HoldSettingsOnlyGetStricter) {
    EXPECT_EQ(runProgram({"set", book, "afb.recheck_days", "59"}).status, 4);
    EXPECT_EQ(runProgram({"set", book, "check.max_age_days", "151"}).status, 4);
    EXPECT_EQ(runProgram({"set", book, "afb.recheck_days", "61"}).status, 0);
    EXPECT_EQ(runProgram({"set", book, "no.such", "1"}).status, 4);
    const Ran listed = runProgram({"settings", book, "--json"});
    bool seen = false;
    for (const QJsonValue s : QJsonDocument::fromJson(listed.out).array())
        if (s.toObject().value("name").toString() == "afb.recheck_days") {
            seen = true;
            EXPECT_EQ(s.toObject().value("value").toVariant().toString(), "61");
            EXPECT_EQ(s.toObject().value("default").toVariant().toString(), "60");
        }
    EXPECT_TRUE(seen);
}

TEST_F(OneYard, ExportGivesBackWhatImportTook) {
    ASSERT_EQ(runProgram({"export", book, "--to", dir.filePath("first")}).status, 0);
    const QString second = dir.filePath("second.yardwright");
    ASSERT_EQ(runProgram(importWords(second, dir.filePath("first"))).status, 0);
    ASSERT_EQ(runProgram({"export", second, "--to", dir.filePath("second")}).status, 0);
    const QStringList files = filesReadIn(dir.filePath("first"));
    EXPECT_EQ(files.size(), 10);
    for (const QString& file : files)
        EXPECT_EQ(bytesOf(dir.filePath("first/" + file)), bytesOf(dir.filePath("second/" + file)))
            << file.toStdString();
    EXPECT_EQ(runProgram({"advise", second, "--on", "2026-09-15", "--json"}).out, advise({}).out);
}

TEST_F(OneYard, OutputsAndBooksThatCannotBeUsed) {
    EXPECT_EQ(runProgram({"new", book}).status, 5);
    EXPECT_EQ(runProgram({"export", book, "--to", "/proc/no/such"}).status, 5);
    EXPECT_EQ(runProgram({"backup", book, "--to", book}).status, 5);
    EXPECT_EQ(
        runProgram({"worksheet", book, "--on", "2026-09-15", "--yard", "Kiln Field", "--pdf", "/proc/no.pdf"}).status,
        5);
    const QString rubbish = dir.filePath("rubbish.yardwright");
    writeFile(rubbish, QByteArray(5000, '\x7f'));
    for (const QStringList& words : {QStringList{"check", rubbish},
                                     {"advise", rubbish, "--on", "2026-09-15"},
                                     {"import", rubbish, "--yards", yardFolder("kiln-field") + "/yards.csv"}}) {
        const Ran ran = runProgram(words);
        EXPECT_EQ(ran.status, 5) << words.join(' ').toStdString();
        EXPECT_EQ(ran.errorLines().size(), 1) << ran.err.toStdString();
    }
    EXPECT_EQ(bytesOf(rubbish), QByteArray(5000, '\x7f'));
}

TEST(CommandLine, UsageHelpAndTemplates) {
    EXPECT_EQ(runProgram({"--help"}).status, 0);
    const Ran one = runProgram({"worksheet", "--help"});
    EXPECT_EQ(one.status, 0);
    EXPECT_TRUE(one.out.startsWith("yardwright worksheet BOOK --on DATE")) << one.out.toStdString();
    EXPECT_TRUE(runProgram({"--version"}).out.startsWith("yardwright "));
    EXPECT_EQ(runProgram({"--nonsense"}).status, 2);
    EXPECT_EQ(runProgram({"advise"}).status, 2);
    EXPECT_EQ(runProgram({"advise", "x.yardwright", "--on", "tomorrow"}).status, 2);
    QTemporaryDir dir;
    ASSERT_EQ(runProgram({"template", dir.filePath("t")}).status, 0);
    EXPECT_EQ(QDir(dir.filePath("t")).entryList({"*.csv"}).size(), 10);
    ASSERT_EQ(runProgram(importWords(dir.filePath("b.yardwright"), dir.filePath("t"))).status, 0);
}
