#include "core/base/error.h"
#include "tests/ui/yard_of_test.h"
#include "ui/print/plan_output.h"
#include "ui/print/plan_parts.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QXmlStreamReader>

#include <cmath>
#include <set>

namespace {

using ui::print::PlanSheet;
using ui::print::PlanSheetJob;

constexpr int kDpi = 300;
constexpr double kDotsPerMm = kDpi / 25.4;

QString run(const QString& program, const QStringList& words) {
    QProcess process;
    process.start(program, words);
    EXPECT_TRUE(process.waitForFinished(60'000)) << program.toStdString();
    EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
    return QString::fromUtf8(process.readAllStandardOutput());
}

PlanSheetJob jobOf(ui::plan::Scene scene) {
    PlanSheetJob job;
    job.scene = std::move(scene);
    job.book = QStringLiteral("north-hollow");
    job.revision = 4;
    job.day = core::dayOf(2026, 9, 15);
    job.printedOn = core::dayOf(2026, 9, 16);
    return job;
}

/// Two hives that look south, the way between them in millimetres of the ground.
ui::plan::Scene twoHives(core::MmPoint from, core::MmPoint to) {
    ui::plan::Scene scene;
    scene.yard = QStringLiteral("Two");
    scene.gate = {from.x, from.y - 2000};
    for (const core::MmPoint at : {from, to}) {
        ui::plan::HiveMark m;
        m.colony = {static_cast<qint64>(scene.hives.size()) + 1};
        m.label = QStringLiteral("T%1").arg(m.colony.value);
        m.at = at;
        m.bees = core::Quarters{20};
        scene.hives.push_back(m);
    }
    return scene;
}

struct OnPaper : testing::Test {
    QTemporaryDir dir;
    QString file(const char* ending) const { return dir.filePath(QStringLiteral("plan") + QLatin1StringView(ending)); }

    /// The page as a printer would lay it down, in shades of grey.
    QImage rendered(const PlanSheet& sheet, int page = 1) const {
        ui::print::writePlanPdf(sheet.job(), file(".pdf"));
        run("pdftoppm", {"-r", QString::number(kDpi), "-gray", "-f", QString::number(page), "-l", QString::number(page),
                         "-singlefile", "-png", file(".pdf"), dir.filePath("page")});
        return QImage(dir.filePath("page.png")).convertToFormat(QImage::Format_Grayscale8);
    }
    QString text(int page = 1) const {
        return run("pdftotext",
                   {"-f", QString::number(page), "-l", QString::number(page), "-layout", file(".pdf"), "-"});
    }
};

/// Middle of the ink within `reach` mm of a point, in mm of the page: of a hive that is its outline.
QPointF inkAround(const QImage& page, const QPointF& mm, double reach) {
    QRect ink;
    const QRect seen = QRectF((mm - QPointF(reach, reach)) * kDotsPerMm, QSizeF(2 * reach, 2 * reach) * kDotsPerMm)
                           .toAlignedRect()
                           .intersected(page.rect());
    for (int y = seen.top(); y <= seen.bottom(); ++y)
        for (int x = seen.left(); x <= seen.right(); ++x)
            if (qGray(page.pixel(x, y)) < 90) ink |= QRect(x, y, 1, 1);
    EXPECT_FALSE(ink.isEmpty());
    return QRectF(ink).center() / kDotsPerMm;
}

/// The longest dark line along a row of the page, in mm.
double longestLine(const QImage& page, const QRectF& mm) {
    int longest = 0;
    const QRect seen = QRectF(mm.topLeft() * kDotsPerMm, mm.size() * kDotsPerMm).toRect().intersected(page.rect());
    for (int y = seen.top(); y <= seen.bottom(); ++y)
        for (int x = seen.left(), length = 0; x <= seen.right(); ++x) {
            length = qGray(page.pixel(x, y)) < 90 ? length + 1 : 0;
            longest = std::max(longest, length);
        }
    return longest / kDotsPerMm;
}

TEST_F(OnPaper, TheWayBetweenTwoHivesIsThatOfTheScale) {
    struct Case {
        core::MmPoint from, to;
        int scale;
    };
    for (const Case& c : {Case{{0, 0}, {6000, 0}, 50}, Case{{0, 0}, {15'500, 0}, 100}, Case{{0, 0}, {38'000, 0}, 200},
                          Case{{0, 0}, {0, 17'500}, 100}}) {
        const PlanSheet sheet(jobOf(twoHives(c.from, c.to)));
        ASSERT_EQ(sheet.scale(), c.scale) << c.to.x << ' ' << c.to.y;
        const QImage page = rendered(sheet);
        EXPECT_TRUE(text().contains(QStringLiteral("1:%1").arg(c.scale))) << text().toStdString();
        const double reach = 500.0 / c.scale * 0.5 + 2.2;
        const QPointF between = inkAround(page, sheet.placeOf({2}), reach) - inkAround(page, sheet.placeOf({1}), reach);
        const double real = std::hypot(c.to.x - c.from.x, c.to.y - c.from.y) / c.scale;
        EXPECT_NEAR(std::hypot(between.x(), between.y()), real, 0.5) << "1:" << c.scale;
    }
}

TEST_F(OnPaper, TheScaleBarIsRightThoughThePlanIsNotToScale) {
    const PlanSheet sheet(jobOf(tests::yardOf(400, 2.2, 3)));
    ASSERT_FALSE(sheet.scale()) << *sheet.scale();
    const QImage page = rendered(sheet);
    const QString all = text();
    EXPECT_TRUE(all.contains("not to scale"));
    EXPECT_TRUE(all.contains("measure by the scale bar"));
    const auto bar = QRegularExpression("\\b(\\d+) m\\b").match(all);
    ASSERT_TRUE(bar.hasMatch()) << all.toStdString();
    const QSizeF size = sheet.sizeMm();
    const double line = longestLine(page, {size.width() - 90, size.height() - 43, 77, 11});
    EXPECT_NEAR(line, bar.captured(1).toInt() * sheet.mmPerMetre(), 0.5);
}

TEST_F(OnPaper, EveryLabelIsThereOfASmallAMiddlingAndALargeYard) {
    for (const int count : {1, 12, 60, 400}) {
        const PlanSheet sheet(jobOf(tests::yardOf(count, 2.2, 7)));
        EXPECT_EQ(sheet.unlabelled() == 0, count < 400) << count << ": of the largest, parts follow";
        ui::print::writePlanPdf(sheet.job(), file(".pdf"));
        const QString all = run("pdftotext", {file(".pdf"), "-"}); // a union's number may stand close before a label
        int missing = 0;
        for (const auto& h : sheet.job().scene.hives)
            missing += all.contains(QRegularExpression(h.label + QStringLiteral("(?!\\d)"))) ? 0 : 1;
        EXPECT_EQ(missing, 0) << count;
    }
}

TEST_F(OnPaper, EachHiveOfAYardInPartsIsOnOneOfThem) {
    const auto sheets = ui::print::planSheets(jobOf(tests::yardOf(400, 2.2, 7)));
    ASSERT_GT(sheets.size(), 2u);
    std::set<qint64> hives;
    size_t all = 0;
    for (size_t i = 1; i < sheets.size(); ++i) {
        EXPECT_EQ(sheets[i]->unlabelled(), 0) << i;
        for (const auto& h : sheets[i]->job().scene.hives) hives.insert(h.colony.value);
        all += sheets[i]->job().scene.hives.size();
    }
    EXPECT_EQ(hives.size(), 400u);
    EXPECT_EQ(all, 400u) << "each on one";
    ui::print::writePlanPdf(sheets.front()->job(), file(".pdf"));
    EXPECT_TRUE(text(2).contains(QStringLiteral("part 1 of %1").arg(sheets.size() - 1)));
    EXPECT_TRUE(text(1).contains("No room here for the labels of"));
}

TEST_F(OnPaper, ItSaysWhatItIsAndThatItAdvises) {
    auto scene = tests::yardOf(12, 2, 7);
    scene.hives[3].holdLetters = QStringLiteral("B");
    const PlanSheet sheet(jobOf(scene));
    ui::print::writePlanPdf(sheet.job(), file(".pdf"));
    const QString all = text();
    for (const char* part : {"Rows", "The yard on 15 Sep 2026", "12 hives", "north-hollow, revision 4",
                             "printed 16 Sep 2026", "B = Brood not checked", "Yardwright advises"})
        EXPECT_TRUE(all.contains(QString::fromUtf8(part))) << part << " in\n" << all.toStdString();
    EXPECT_EQ(sheet.pages(), 1);
    const QStringList fonts = run("pdffonts", {file(".pdf")}).split('\n', Qt::SkipEmptyParts).mid(2);
    ASSERT_FALSE(fonts.isEmpty());
    for (const QString& line : fonts) EXPECT_TRUE(line.contains(QRegularExpression("\\byes\\b"))) << line.toStdString();
}

TEST_F(OnPaper, SelectedHivesAreFramedAndListedInTheirOrder) {
    PlanSheetJob job = jobOf(tests::yardOf(12, 2, 7));
    const PlanSheet plain(job);
    const QImage before = rendered(plain);
    for (const int i : {4, 1, 9}) job.selected.push_back(job.scene.hives[static_cast<size_t>(i)].colony);
    const PlanSheet sheet(job);
    EXPECT_NE(rendered(sheet), before);
    EXPECT_EQ(sheet.pages(), 2);
    EXPECT_TRUE(text().contains("Framed: M5, M2, M10"));
    const QString list = text(2);
    EXPECT_LT(list.indexOf("M5"), list.indexOf("M2"));
    EXPECT_LT(list.indexOf("M2"), list.indexOf("M10"));
    EXPECT_FALSE(list.contains(QRegularExpression("\\bM3\\b")));
}

TEST_F(OnPaper, AnSvgHasEveryLabelAndTheSheetsSize) {
    for (const int count : {12, 400}) {
        const auto picture = ui::print::planPicture(jobOf(tests::yardOf(count, 2.2, 7)));
        const PlanSheet& sheet = *picture;
        EXPECT_EQ(sheet.unlabelled(), 0) << count << ": on a sheet as large as that needs";
        ui::print::writePlanSvg(sheet.job(), file(".svg"));
        QFile svg(file(".svg"));
        ASSERT_TRUE(svg.open(QIODevice::ReadOnly));
        QXmlStreamReader xml(&svg);
        std::set<QString> texts;
        QString width;
        while (!xml.atEnd()) {
            xml.readNext();
            if (xml.isStartElement() && xml.name() == u"svg") width = xml.attributes().value("width").toString();
            if (xml.isCharacters()) texts.insert(xml.text().trimmed().toString());
        }
        EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
        EXPECT_TRUE(width.endsWith("mm")) << width.toStdString();
        EXPECT_NEAR(width.chopped(2).toDouble(), sheet.sizeMm().width(), 0.5);
        int missing = 0;
        for (const auto& h : sheet.job().scene.hives) missing += texts.contains(h.label) ? 0 : 1;
        EXPECT_EQ(missing, 0) << count;
    }
}

TEST_F(OnPaper, APictureHasItsDotsAndIsInkOnWhite) {
    const PlanSheet sheet(jobOf(tests::yardOf(60, 2, 7)));
    ui::print::writePlanPng(sheet.job(), file(".png"));
    const QImage picture(file(".png"));
    const QSize expected = (sheet.sizeMm() * kDotsPerMm).toSize();
    EXPECT_EQ(picture.size(), expected);
    EXPECT_NEAR(picture.dotsPerMeterX(), kDpi / 0.0254, 1);
    qint64 dark = 0, coloured = 0;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x) {
            const QRgb dot = picture.pixel(x, y);
            dark += qGray(dot) < 90 ? 1 : 0;
            coloured += std::abs(qRed(dot) - qBlue(dot)) + std::abs(qRed(dot) - qGreen(dot)) > 12 ? 1 : 0;
        }
    EXPECT_GT(dark, 40'000) << "not blank";
    EXPECT_EQ(coloured, 0) << "black ink alone: nothing is told by colour";
    EXPECT_EQ(picture.pixelColor(2, 2), QColor(Qt::white));
}

/// Hatching and letter, in shades of grey: a held hive's outline holds more ink than one that is not.
TEST_F(OnPaper, AHeldHiveIsToldApartInGrey) {
    auto scene = twoHives({0, 0}, {3000, 0});
    for (auto& h : scene.hives) h.bees = core::Quarters{0};
    scene.hives[1].holdLetters = QStringLiteral("F");
    const PlanSheet sheet(jobOf(scene));
    const QImage page = rendered(sheet);
    const auto ink = [&](core::ColonyId colony) {
        const QPointF at = sheet.placeOf(colony) * kDotsPerMm;
        int dark = 0;
        for (int y = -30; y <= 30; ++y)
            for (int x = -30; x <= 30; ++x) dark += qGray(page.pixel((at + QPointF(x, y)).toPoint())) < 90 ? 1 : 0;
        return dark;
    };
    EXPECT_GT(ink({2}), ink({1}) + 200);
    EXPECT_TRUE(text().contains(QRegularExpression("\\bF\\b")));
}

TEST_F(OnPaper, LetterPaperHasItsOwnSize) {
    PlanSheetJob job = jobOf(tests::yardOf(12, 2, 7));
    job.paper = core::report::Paper::Letter;
    const PlanSheet sheet(job);
    const QSizeF size = sheet.sizeMm();
    EXPECT_NEAR(std::min(size.width(), size.height()), 215.9, 0.2);
    EXPECT_NEAR(std::max(size.width(), size.height()), 279.4, 0.2);
}

TEST_F(OnPaper, AnEmptyYardIsASheetToo) {
    ui::plan::Scene scene;
    scene.yard = QStringLiteral("Bare");
    const PlanSheet sheet(jobOf(scene));
    ui::print::writePlanPdf(sheet.job(), file(".pdf"));
    EXPECT_TRUE(text().contains("Bare"));
}

TEST_F(OnPaper, WhereItCannotBeWrittenNothingIs) {
    const PlanSheet sheet(jobOf(tests::yardOf(12, 2, 7)));
    for (const auto write : {ui::print::writePlanPdf, ui::print::writePlanSvg, ui::print::writePlanPng}) {
        try {
            write(sheet.job(), dir.filePath("no/such/folder/plan.x"));
            FAIL() << "written";
        } catch (const core::Error& e) {
            EXPECT_EQ(e.kind(), core::Error::Kind::Book);
            EXPECT_TRUE(e.userMessage().contains("plan.x"));
        }
    }
    EXPECT_TRUE(QDir(dir.path()).entryList(QDir::Files).isEmpty());
}

} // namespace
