#include "core/edit/merge_day.h"
#include "core/edit/session.h"
#include "core/report/page_code.h"
#include "tests/app/program.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

namespace {

struct FixedClock : core::Clock {
    QDateTime nowUtc() const override { return QDateTime(QDate(2026, 9, 15), QTime(12, 0), Qt::UTC); }
    core::Day today() const override { return core::dayOf(2026, 9, 15); }
};

/// Kiln Field (tests/data/yards), whose worksheet goes to PDF by command.
class WorksheetCommand : public testing::Test {
protected:
    QTemporaryDir dir;
    QString book = dir.filePath("b.yardwright");
    QString pdf = dir.filePath("sheet.pdf");
    FixedClock clock;

    void SetUp() override {
        const QString folder = QStringLiteral(YW_TEST_DATA "/yards/kiln-field");
        QStringList words = {"import", book};
        for (const QString& file : QDir(folder).entryList({"*.csv"}))
            words << "--" + QString(file).chopped(4).replace('_', '-') << folder + '/' + file;
        ASSERT_EQ(runProgram(words).status, 0);
    }
    Ran made(const QStringList& more = {}) {
        return runProgram(QStringList{"worksheet", book, "--on", "2026-09-15", "--yard", "Kiln Field", "--pdf", pdf} +
                          more);
    }
    QString text() const {
        QProcess process;
        process.start("pdftotext", {pdf, "-"});
        EXPECT_TRUE(process.waitForFinished(30'000));
        return QString::fromUtf8(process.readAllStandardOutput()).simplified();
    }
    core::report::PageCode code() const {
        static const QRegularExpression kCode("\\b\\w{4}-\\w{4}-\\w{4}-\\w{4}\\b");
        return std::get<core::report::PageCode>(core::report::readPageCode(kCode.match(text()).captured()));
    }
    /// A file with a clean check of K7 on 2026-09-15.
    QString visitOfK7() const {
        QFile file(dir.filePath("visits.csv"));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write("colony,date,brood_frames,brood_checked\nK7,2026-09-15,7,7\n");
        return file.fileName();
    }
    /// Saves a merge day of that variant that leaves K2 out.
    QString saveLeavingOutK2(int variant) {
        const auto session = core::edit::Session::open(book, clock);
        const core::Snapshot s = session->snapshot(clock.today());
        core::edit::MergeAsked asked;
        asked.day.yard = s.yards.front().id;
        asked.day.day = clock.today();
        asked.day.variant = variant;
        core::MergeChoice out;
        out.what = core::MergeAsk::LeaveOut;
        for (const core::SnapColony& c : s.colonies)
            if (c.shown == QLatin1StringView("K2")) out.colony = c.id;
        out.note = QStringLiteral("its stand is under water");
        asked.choices = {out};
        session->apply([&](const core::edit::EditContext& c) { return core::edit::saveMergeDay(c, asked); });
        return session->bookId();
    }
};

TEST_F(WorksheetCommand, IsOfTheMergeDaySavedElseOfTheAdvice) {
    ASSERT_EQ(made().status, 0);
    EXPECT_TRUE(text().contains(QStringLiteral("K2 → K4")));
    EXPECT_EQ(code().variant, 0);
    const QString id = saveLeavingOutK2(2);
    ASSERT_EQ(made().status, 0);
    const QString sheet = text();
    EXPECT_FALSE(sheet.contains(QStringLiteral("K2 →"))) << sheet.toStdString();
    EXPECT_TRUE(sheet.contains("K2 left out, as asked. (its stand is under water)"));
    EXPECT_TRUE(sheet.contains("plan 2, revision 1"));
    EXPECT_EQ(code().book, core::report::bookMark(id));
    EXPECT_EQ(code().variant, 2);
    EXPECT_EQ(code().revision, 1);
    EXPECT_EQ(code().day, clock.today());
}

TEST_F(WorksheetCommand, OnlyReadsTheBook) {
    saveLeavingOutK2(1);
    const QByteArray before = bytesOf(book);
    ASSERT_EQ(made().status, 0);
    EXPECT_EQ(bytesOf(book), before);
}

TEST_F(WorksheetCommand, AsksForWhatIsThere) {
    saveLeavingOutK2(1);
    EXPECT_EQ(made({"--variant", "1"}).status, 0);
    const Ran none = made({"--variant", "3"});
    EXPECT_EQ(none.status, 4);
    EXPECT_TRUE(none.err.contains("variant 3")) << none.err.toStdString();
    EXPECT_EQ(made({"--variant", "4"}).status, 2);
    EXPECT_EQ(made({"--sheet", "nonsense"}).status, 2);
    EXPECT_EQ(made({"--language", "fr"}).status, 2);
}

TEST_F(WorksheetCommand, MakesEachSheetInEachLanguageAndSize) {
    for (const char* sheet : {"walk", "checks", "shake-outs", "storing", "laying-workers"}) {
        ASSERT_EQ(made({"--sheet", sheet, "--language", "es", "--paper", "letter", "--large"}).status, 0) << sheet;
        EXPECT_TRUE(text().contains("página 1 de ")) << sheet;
    }
}

TEST_F(WorksheetCommand, MakesTheTallySheetAndTheCardOfOneColony) {
    saveLeavingOutK2(1);
    ASSERT_EQ(made({"--sheet", "tally"}).status, 0);
    EXPECT_TRUE(text().startsWith("Visits, Kiln Field")) << text().toStdString();
    EXPECT_TRUE(text().contains("12 colonies"));
    EXPECT_EQ(code().variant, 0) << "it is of no plan";
    EXPECT_EQ(code().sheet, core::report::Sheet::Tally);
    const QStringList card{"worksheet", book, "--on", "2026-09-15", "--pdf", pdf, "--sheet", "card", "--colony"};
    ASSERT_EQ(runProgram(card + QStringList{"k2"}).status, 0);
    EXPECT_TRUE(text().startsWith("K2 · Kiln Field")) << text().toStdString();
    EXPECT_TRUE(text().contains("page 1 of 1"));
    EXPECT_EQ(code().sheet, core::report::Sheet::Card);
    const Ran none = runProgram(card + QStringList{"K99"});
    EXPECT_EQ(none.status, 4);
    EXPECT_TRUE(none.err.contains("K99")) << none.err.toStdString();
    EXPECT_EQ(made({"--sheet", "card"}).status, 2) << "whose?";
    EXPECT_EQ(made({"--colony", "K2"}).status, 2);
}

TEST_F(WorksheetCommand, MakesTheTallySheetOfThoseWhoseBroodIsToBeChecked) {
    // tests/data/yards/kiln-field: of K7 two of seven frames were looked at, of all others enough
    ASSERT_EQ(made({"--sheet", "tally", "--unchecked"}).status, 0);
    EXPECT_TRUE(text().contains("Only hives whose brood is to be checked")) << text().toStdString();
    EXPECT_TRUE(text().contains("K7")) << text().toStdString();
    EXPECT_FALSE(text().contains("K2")) << text().toStdString();
    EXPECT_TRUE(text().contains("page 1 of 1"));
    EXPECT_EQ(made({"--unchecked"}).status, 2) << "of a tally sheet alone";
    const Ran checked = runProgram({"import", book, "--visits", visitOfK7()});
    ASSERT_EQ(checked.status, 0) << checked.err.toStdString();
    const Ran none = made({"--sheet", "tally", "--unchecked"});
    EXPECT_EQ(none.status, 4);
    EXPECT_TRUE(none.err.contains("lacks a brood check")) << none.err.toStdString();
}

} // namespace
