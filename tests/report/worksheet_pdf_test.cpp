#include "core/base/error.h"
#include "core/report/worksheet_words.h"
#include "core/rules/facts.h"
#include "demo/demo_book.h"
#include "tests/report/page_reading.h"
#include "tests/report/sample_yards.h"
#include "ui/print/font_measure.h"
#include "ui/print/worksheet_output.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <map>

namespace {

using namespace core::report;
using namespace tests::report;

struct FixedClock : core::Clock {
    QDateTime nowUtc() const override { return QDateTime(QDate(2026, 9, 20), QTime(12, 0), Qt::UTC); }
    core::Day today() const override { return core::dayOf(2026, 9, 20); }
};

struct Word {
    size_t page;
    Rect box; ///< mm
    QString text;
};

QString run(const QString& program, const QStringList& words) {
    QProcess process;
    process.start(program, words);
    EXPECT_TRUE(process.waitForFinished(30'000)) << program.toStdString();
    EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
    return QString::fromUtf8(process.readAllStandardOutput());
}

/// What `pdftotext -bbox` finds: every word with its rectangle.
std::vector<Word> wordsOf(const QString& pdf) {
    static const QRegularExpression kItem(
        "<page |<word xMin=\"([-\\d.]+)\" yMin=\"([-\\d.]+)\" xMax=\"([-\\d.]+)\" yMax=\"([-\\d.]+)\">([^<]*)</word>");
    constexpr double kMm = 25.4 / 72;
    std::vector<Word> out;
    size_t pages = 0;
    for (auto it = kItem.globalMatch(run("pdftotext", {"-bbox", pdf, "-"})); it.hasNext();) {
        const auto m = it.next();
        if (m.captured(5).isEmpty() && m.captured(0).startsWith("<page")) {
            ++pages;
            continue;
        }
        const double x = m.captured(1).toDouble() * kMm;
        const double y = m.captured(2).toDouble() * kMm;
        out.push_back(
            {pages - 1, {x, y, m.captured(3).toDouble() * kMm - x, m.captured(4).toDouble() * kMm - y}, m.captured(5)});
    }
    return out;
}

class WorksheetPdf : public testing::Test {
protected:
    ui::print::WorksheetPages made(const Sample& sample, Language language = Language::English, Paper paper = Paper::A4,
                                   bool large = false, Sheet sheet = Sheet::MergeDay) {
        WorksheetOptions options;
        options.sheet = sheet;
        options.book = "north-hollow";
        options.revision = 4;
        options.language = language;
        options.paper = paper;
        options.large = large;
        ui::print::WorksheetPages pages(sample.s, sample.plan, sample.yard, options);
        ui::print::writePdf(pages, "Worksheet", path());
        return pages;
    }
    QString path() const { return dir.filePath("sheet.pdf"); }

    QTemporaryDir dir;
};

/// The words of a strip as poppler finds them, in their order, spaces between.
QString textWithin(const std::vector<Word>& words, size_t page, const Rect& strip) {
    QStringList inside;
    for (const Word& w : words)
        if (w.page == page && within(w.box, strip)) inside << w.text;
    return u' ' + inside.join(' ').replace(QChar(0xa0), u' ') + u' ';
}

/// What every strip must say of its union: order, labels, whose box is where, heading, weights, distance.
QStringList factsOf(const Sample& sample, const core::rules::Union& u, Language language) {
    const Words say(language, sample.s.settings.shown());
    const auto name = [&](core::ColonyIx c) { return sample.s.colony(c).shown; };
    QStringList facts{QStringLiteral(" %1 ").arg(u.order),
                      name(u.moved) + " → " + name(u.host),
                      say("%1 on top").arg(name(u.upper)),
                      say("%1 below").arg(name(u.lower)),
                      say("Both entrances to %1.").arg(say.direction(u.headingDeg)),
                      say.distance(u.from, u.to)};
    const auto known = core::rules::colonyFacts(sample.s);
    const std::vector<core::ColonyIx> lifted = u.upper == u.host ? std::vector{u.moved, u.host} : std::vector{u.moved};
    for (const core::ColonyIx c : lifted)
        if (!known[static_cast<size_t>(c.value)].gross)
            facts
                << say("%1 not weighed: a full box can pass %2, two people or a barrow.").arg("%1", say.heavy()).mid(3);
    facts << say("To lift:") + u' ';
    return facts;
}

/// Each union's facts stand in its own strip, and no other union's labels do; one strip a union, whole on its page.
void expectLabelsInTheirStrips(const Sample& sample, const std::vector<Page>& pages, const std::vector<Word>& words,
                               Language language) {
    size_t strips = 0;
    for (size_t p = 0; p < pages.size(); ++p)
        for (const Zone& zone : pages[p].zones) {
            if (!zone.name.startsWith("union ")) continue;
            ++strips;
            const QString inside = textWithin(words, p, zone.rect);
            const int order = zone.name.mid(6).toInt();
            for (const auto& u : sample.plan.unions) {
                if (u.yard != sample.yard) continue;
                for (const core::ColonyIx c : {u.moved, u.host})
                    EXPECT_EQ(inside.contains(QRegularExpression("\\b" + sample.s.colony(c).shown + "\\b")),
                              u.order == order)
                        << zone.name.toStdString() << ": " << inside.toStdString();
                if (u.order != order) continue;
                for (const QString& fact : factsOf(sample, u, language))
                    EXPECT_TRUE(inside.contains(fact)) << fact.toStdString() << " in " << inside.toStdString();
            }
        }
    EXPECT_EQ(strips, sample.plan.unions.size());
}

void expectHeldNamed(const Sample& sample, const std::vector<Word>& words) {
    QString all;
    for (const Word& w : words) all += w.text + u' ';
    for (const core::rules::Hold& h : sample.plan.holds)
        EXPECT_TRUE(all.contains(QRegularExpression("\\b" + sample.s.colony(h.colony).shown + "\\b")));
}

void expectDrawingFits(const std::vector<Page>& pages, const ui::print::YardPicture& yard) {
    for (const Page& page : pages)
        for (const Mark& mark : page.marks)
            if (const auto* m = std::get_if<YardMark>(&mark)) {
                const auto fit = yard.fitOf({0, 0, m->area.width, m->area.height},
                                            {m->ground.x, m->ground.y, m->ground.width, m->ground.height}, m->enlarged);
                EXPECT_EQ(fit.unlabelled, 0);
                EXPECT_GE(fit.leastPoints, 9);
            }
}

void expectSound(const Sample& sample, const ui::print::WorksheetPages& made, const QString& pdf,
                 Language language = Language::English, bool large = false) {
    const std::vector<Word> words = wordsOf(pdf);
    expectLabelsInTheirStrips(sample, made.pages(), words, language);
    expectHeldNamed(sample, words);
    expectDrawingFits(made.pages(), made.yard());
    EXPECT_EQ(faultsOf(made.pages(), ui::print::FontMeasure(), large ? 16 : 11).join("\n").toStdString(), "");
    const Page& page = made.pages().front();
    for (const Word& w : words)
        EXPECT_TRUE(within(w.box, {0, 0, page.width, page.height})) << w.page << ' ' << w.text.toStdString();
}

Sample plannedYard(const core::Snapshot& s, core::YardIx yard) {
    Sample sample{s, yard, {}};
    core::rules::PlanRequest request;
    request.yards = {yard};
    sample.plan = core::rules::advise(s, request);
    return sample;
}

void expectFontsEmbedded(const QString& pdf) {
    const QStringList lines = run("pdffonts", {pdf}).split('\n', Qt::SkipEmptyParts).mid(2);
    ASSERT_FALSE(lines.isEmpty());
    for (const QString& line : lines) EXPECT_TRUE(line.contains(QRegularExpression("\\byes\\b"))) << line.toStdString();
}

// Source of the unions: tests/data/yards/README.md, kiln-field.
TEST_F(WorksheetPdf, KilnFieldHasItsLabelsInItsStripsAsRealText) {
    const Sample sample = workedYard("kiln-field", "Kiln Field", "2026-09-15");
    const auto pages = made(sample);
    expectSound(sample, pages, path());
    const QString text = run("pdftotext", {"-layout", path(), "-"});
    for (const char* part : {"K2 → K4", "K3 → K11", "K6 → K5", "page 1 of 5", "page 5 of 5"})
        EXPECT_TRUE(text.contains(QString::fromUtf8(part))) << part << "\nin:\n" << text.toStdString();
}

TEST_F(WorksheetPdf, SixtyHivesKeepLabelsAndStripsTogether) {
    const Sample sample = yardOf60();
    ASSERT_GE(sample.plan.unions.size(), 15u);
    const auto pages = made(sample);
    expectSound(sample, pages, path());
}

TEST_F(WorksheetPdf, EveryYardOfTheDemoIsSound) {
    const FixedClock clock;
    const auto session = core::edit::Session::create(dir.filePath("demo.yardwright"), clock);
    demo::fillDemoBook(*session, {});
    const core::Snapshot s = session->snapshot(demo::demoMergeDay());
    ASSERT_GE(s.yards.size(), 3u);
    for (size_t i = 0; i < s.yards.size(); ++i) {
        const Sample sample = plannedYard(s, core::YardIx{static_cast<qint32>(i)});
        for (const Language language : {Language::English, Language::Spanish})
            for (const Paper paper : {Paper::A4, Paper::Letter}) {
                expectSound(sample, made(sample, language, paper), path(), language);
                expectFontsEmbedded(path());
            }
    }
}

TEST_F(WorksheetPdf, EveryYardOfTheDemoIsSoundInLargePrint) {
    const FixedClock clock;
    const auto session = core::edit::Session::create(dir.filePath("demo.yardwright"), clock);
    demo::fillDemoBook(*session, {});
    const core::Snapshot s = session->snapshot(demo::demoMergeDay());
    for (size_t i = 0; i < s.yards.size(); ++i) {
        const Sample sample = plannedYard(s, core::YardIx{static_cast<qint32>(i)});
        const Language language = i % 2 == 0 ? Language::English : Language::Spanish;
        const Paper paper = i % 3 == 0 ? Paper::Letter : Paper::A4;
        expectSound(sample, made(sample, language, paper, true), path(), language, true);
    }
}

/// What stands in a row's box, by the last part of the zone's name.
std::map<QString, QString> boxesOf(const std::vector<Word>& words, size_t page, const Page& made, const QString& row) {
    std::map<QString, QString> out;
    for (const Zone& zone : made.zones)
        if (zone.name.startsWith(row + ": "))
            out[zone.name.mid(row.size() + 2)] = textWithin(words, page, zone.rect).simplified();
    return out;
}

void expectRowOfItsOwn(const Sample& sample, const QString& label, const QString& inside) {
    EXPECT_TRUE(inside.contains(' ' + label + ' ')) << inside.toStdString();
    for (const auto& f : core::rules::colonyFacts(sample.s)) {
        const QString& other = sample.s.colony(f.colony).shown;
        if (other == label || f.yard != sample.yard) continue;
        EXPECT_FALSE(inside.contains(' ' + other + ' ')) << other.toStdString() << " in " << inside.toStdString();
    }
}

// Poppler finds each word of the tally sheet in its own box.
TEST_F(WorksheetPdf, EachWordOfTheTallySheetStandsInItsOwnBox) {
    const Sample sample = workedYard("kiln-field", "Kiln Field", "2026-09-15");
    for (const Language language : {Language::English, Language::Spanish})
        for (const Paper paper : {Paper::A4, Paper::Letter})
            for (const bool large : {false, true}) {
                const bool english = language == Language::English;
                const auto pages = made(sample, language, paper, large, Sheet::Tally);
                const std::vector<Word> words = wordsOf(path());
                int rows = 0;
                for (size_t p = 0; p < pages.pages().size(); ++p)
                    for (const Zone& zone : pages.pages()[p].zones) {
                        if (!zone.name.startsWith("tally K") || zone.name.contains(": ")) continue;
                        ++rows;
                        expectRowOfItsOwn(sample, zone.name.mid(6), textWithin(words, p, zone.rect));
                        auto boxes = boxesOf(words, p, pages.pages()[p], zone.name);
                        EXPECT_TRUE(boxes["queen"].contains(english ? "workers lay" : "ponen obreras"));
                        EXPECT_TRUE(boxes["signs"].contains(english ? "doubt" : "duda"));
                        EXPECT_EQ(boxes["mites"], "/");
                        EXPECT_EQ(boxes["note"], english ? "Note:" : "Nota:");
                        for (const char* empty : {"above", "below", "brood", "checked", "stores", "supers", "weight"})
                            EXPECT_EQ(boxes.at(empty), "") << empty;
                    }
                EXPECT_EQ(rows, 12);
                EXPECT_EQ(faultsOf(pages.pages(), ui::print::FontMeasure(), large ? 16 : 11).join("\n").toStdString(),
                          "");
                for (const Word& w : words)
                    EXPECT_TRUE(within(w.box, {0, 0, pages.pages()[0].width, pages.pages()[0].height}));
            }
}

TEST_F(WorksheetPdf, FontsAreEmbedded) {
    made(workedYard("kiln-field", "Kiln Field", "2026-09-15"));
    expectFontsEmbedded(path());
}

TEST_F(WorksheetPdf, ReplacesAFileAndLeavesItWhereItCannotBeWritten) {
    const Sample sample = workedYard("kiln-field", "Kiln Field", "2026-09-15");
    QFile old(path());
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write("old");
    old.close();
    const auto pages = made(sample);
    EXPECT_GT(QFile(path()).size(), 1000);
    try {
        ui::print::writePdf(pages, "Worksheet", dir.filePath("no/such/folder/sheet.pdf"));
        FAIL() << "written";
    } catch (const core::Error& e) {
        EXPECT_EQ(e.kind(), core::Error::Kind::Book);
        EXPECT_TRUE(e.userMessage().contains("sheet.pdf"));
    }
    EXPECT_EQ(QDir(dir.path()).entryList(QDir::Files), QStringList{"sheet.pdf"});
}

} // namespace
