// Charts as they are drawn: light, dark, without colour, on paper, with one point, with none and with ten years.
// With YW_CHART_PICTURES=DIR the pictures are kept there to be looked at.

#include "charting.h"

#include "core/base/error.h"
#include "ui/chart/chart_output.h"
#include "ui/chart/paint_chart.h"
#include "ui/look/type.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QImage>
#include <QPainter>
#include <QTemporaryDir>

namespace {

using namespace charting;
using ui::look::Colours;

constexpr QSize kLarge(760, 420), kCard(300, 140);

QImage pictureOf(const Chart& chart, const QSize& size, const Colours& c) {
    QImage image(size, QImage::Format_RGB32);
    image.fill(c.paper);
    QPainter p(&image);
    paintChart(p, chart, layOut(chart, size, ui::look::textFont(QFont())), c);
    p.end();
    return image;
}

void keep(const QImage& image, const QString& name) {
    const QString dir = qEnvironmentVariable("YW_CHART_PICTURES");
    if (!dir.isEmpty()) image.save(dir + '/' + name + ".png");
}

/// Pixels within `box` that are not the ground.
int inked(const QImage& image, const QRectF& box, const QColor& ground) {
    int count = 0;
    const QRect within = box.toAlignedRect() & image.rect();
    for (int y = within.top(); y <= within.bottom(); ++y)
        for (int x = within.left(); x <= within.right(); ++x) count += image.pixelColor(x, y) != ground;
    return count;
}

struct Dress {
    const char* name;
    Colours colours;
};
std::vector<Dress> dresses() {
    return {
        {"light", ui::look::colours(false)}, {"dark", ui::look::colours(true)}, {"paper", ui::look::printColours()}};
}

TEST(ChartPictures, DrawWhatIsThereInEveryDress) {
    for (const Named& named : all())
        for (const Dress& dress : dresses())
            for (const QSize& size : {kLarge, kCard}) {
                if (size == kCard && dress.name == std::string("paper")) continue; // cards are not printed
                SCOPED_TRACE(std::string(named.name) + " " + dress.name);
                const QImage image = pictureOf(named.chart, size, dress.colours);
                keep(image, QStringLiteral("%1-%2-%3").arg(named.name, dress.name).arg(size.width()));
                const ChartLayout l = layOut(named.chart, size, ui::look::textFont(QFont()));
                EXPECT_GT(inked(image, l.title.box, dress.colours.paper), 20);
                if (l.empty) {
                    EXPECT_GT(inked(image, l.none.box, dress.colours.paper), 20);
                    continue;
                }
                for (size_t i = 0; i < l.points.size(); ++i)
                    for (const PlacedPoint& p : l.points[i])
                        EXPECT_GT(inked(image, QRectF(p.where - QPointF(3, 3), QSizeF(6, 6)), dress.colours.paper), 4)
                            << "series " << i << " at " << p.at;
            }
}

TEST(ChartPictures, WithoutColourSeriesDiffer) {
    // The same line, as the first, second, third and fourth series of a chart: no two look alike in grey.
    std::vector<QImage> seen;
    for (size_t nth = 0; nth < 4; ++nth) {
        Chart c = strength();
        c.series.resize(4);
        for (int i = 0; i < 6; ++i)
            c.series[nth].points.push_back({day(2026, 4, 1).number + 20 * i, 2.0 + i % 3, {}, {}, {}});
        const QImage grey = pictureOf(c, kLarge, ui::look::printColours()).convertToFormat(QImage::Format_Grayscale8);
        for (const QImage& other : seen) {
            int differ = 0;
            for (int y = 0; y < grey.height(); ++y)
                for (int x = 0; x < grey.width(); ++x)
                    differ += (grey.pixel(x, y) > 0xff808080) != (other.pixel(x, y) > 0xff808080);
            EXPECT_GT(differ, 60) << "series " << nth;
        }
        seen.push_back(grey);
    }
}

TEST(ChartPictures, AHoldIsHatchedInGreyToo) {
    Chart with = season();
    Chart without = with;
    std::erase_if(without.marks, [](const Mark& m) { return m.kind == MarkKind::Hold; });
    const Colours paper = ui::look::printColours();
    const ChartLayout l = layOut(with, kLarge, ui::look::textFont(QFont()));
    const auto band = std::ranges::find_if(
        l.marks, [&](const PlacedMark& m) { return m.to > m.from && with.marks[m.mark].kind == MarkKind::Hold; });
    ASSERT_NE(band, l.marks.end());
    const QRectF box(QPointF(band->from + 2, l.plot.top()), QPointF(band->to - 2, l.plot.bottom()));
    EXPECT_GT(inked(pictureOf(with, kLarge, paper), box, paper.paper),
              inked(pictureOf(without, kLarge, paper), box, paper.paper) + 150);
}

TEST(ChartPictures, GoToPdfPngAndCsv) {
    QTemporaryDir dir;
    std::vector<Chart> charts;
    for (const Named& named : all()) charts.push_back(named.chart);
    const QString pdf = dir.filePath(QStringLiteral("charts.pdf"));
    writeChartPdf(charts, {QStringLiteral("Larkspur · 15 Sep 2026")}, pdf);
    QFile file(pdf);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray bytes = file.readAll();
    EXPECT_EQ(bytes.count("/Type /Page\n"), static_cast<qsizetype>(charts.size()));
    EXPECT_FALSE(bytes.contains("/Subtype /Image")) << "vectors alone";
    const QString png = dir.filePath(QStringLiteral("chart.png"));
    writeChartPng(season(), png);
    EXPECT_GT(QImage(png).width(), 2000);
    const QString csv = dir.filePath(QStringLiteral("chart.csv"));
    writeChartCsv(mites(), csv);
    QFile table(csv);
    ASSERT_TRUE(table.open(QIODevice::ReadOnly));
    EXPECT_TRUE(table.readAll().contains("2026-08-01,4,2.1,6.9,12 in 300 bees\n"));
    if (const QString to = qEnvironmentVariable("YW_CHART_PICTURES"); !to.isEmpty()) {
        QFile::copy(pdf, to + "/charts.pdf");
        QFile::copy(png, to + "/chart-300dpi.png");
    }
    EXPECT_THROW(writeChartPdf(charts, {}, QStringLiteral("/no/such/folder/x.pdf")), core::Error);
}

} // namespace
