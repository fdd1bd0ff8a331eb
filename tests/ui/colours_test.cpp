#include "ui/look/ground_colours.h"

#include <gtest/gtest.h>

#include <QPalette>

namespace {

using ui::look::Colours;

void expectReadable(const Colours& c) {
    // Source: W3C, WCAG 2.2, success criterion 1.4.3: text 4.5 : 1; 1.4.11: graphics and focus marks 3 : 1.
    for (const QColor& ground : {c.paper, c.desk}) {
        for (const QColor& text : {c.ink, c.quiet, c.planned, c.warnText})
            EXPECT_GE(ui::look::contrast(text, ground), 4.5)
                << text.name().toStdString() << " on " << ground.name().toStdString();
        for (const QColor& line : {c.warn, c.grows, c.pale})
            EXPECT_GE(ui::look::contrast(line, ground), 3.0)
                << line.name().toStdString() << " on " << ground.name().toStdString();
    }
    for (const QColor& ground : {c.paper, c.desk, c.chosen}) {
        for (const QColor& focus : {c.planned, c.ink})
            EXPECT_GE(ui::look::contrast(focus, ground), 3.0) << "a focus mark on " << ground.name().toStdString();
        EXPECT_GE(ui::look::contrast(c.ink, ground), 4.5);
        EXPECT_GE(ui::look::contrast(c.quiet, ground), 4.5) << "edges of fields and lesser text";
    }
    EXPECT_GE(ui::look::contrast(c.onPlanned, c.planned), 4.5);
    EXPECT_GE(ui::look::contrast(c.onWarn, c.warn), 4.5);
}

TEST(Colours, ContrastIsAsWcagDefinesIt) {
    // Source: W3C, WCAG 2.2, "contrast ratio": black on white is 21 : 1, a colour on itself 1 : 1.
    EXPECT_NEAR(ui::look::contrast(Qt::black, Qt::white), 21.0, 1e-9);
    EXPECT_NEAR(ui::look::contrast(QColor(90, 120, 40), QColor(90, 120, 40)), 1.0, 1e-9);
    // Source: own calculation, 119/255 linearised by the same definition: (1 + 0.05) / (0.1845 + 0.05).
    EXPECT_NEAR(ui::look::contrast(QColor(119, 119, 119), Qt::white), 4.478, 0.001);
}

TEST(Colours, TextIsReadableInTheLight) { expectReadable(ui::look::colours(false)); }
TEST(Colours, TextIsReadableInTheDark) { expectReadable(ui::look::colours(true)); }

TEST(Colours, OfFixedThingsAreSeenOnTheGround) {
    for (const bool dark : {false, true})
        for (const auto& [leaf, water, built] : {ui::look::groundColours(ui::look::colours(dark))})
            for (const QColor& line : {leaf, water, built})
                EXPECT_GE(ui::look::contrast(line, ui::look::colours(dark).paper), 3.0) << line.name().toStdString();
}

TEST(Colours, LightOrDarkFollowsTheWindowOfThePalette) {
    QPalette palette;
    palette.setColor(QPalette::Window, QColor(240, 240, 240));
    EXPECT_FALSE(ui::look::coloursFor(palette).dark);
    palette.setColor(QPalette::Window, QColor(30, 30, 30));
    EXPECT_TRUE(ui::look::coloursFor(palette).dark);
}

} // namespace
