#include "ui/start/compass.h"
#include "ui/start/coordinates.h"

#include <gtest/gtest.h>

namespace {

using namespace ui::start;

// Sixteen winds, 22.5° apart, clockwise from north. Source: common practice, no source.
TEST(Direction, DegreesAndCompassWordsAreUnderstood) {
    const std::pair<const char*, int> understood[] = {
        {"0", 0},   {"360", 0},   {"135", 135},        {" 135° ", 135},         {"n", 0},
        {"NE", 45}, {"SE", 135},  {"south-east", 135}, {"South East", 135},     {"southeast", 135},
        {"W", 270}, {"nnw", 338}, {"NNE", 23},         {"west-south-west", 248}};
    for (const auto& [typed, degrees] : understood)
        EXPECT_EQ(parseDirection(QString::fromUtf8(typed)), degrees) << typed;
}

TEST(Direction, AnythingElseIsNot) {
    for (const char* typed : {"", "361", "-1", "90.5", "NN", "up", "S 5", "south-south", "1e2"})
        EXPECT_FALSE(parseDirection(QString::fromUtf8(typed))) << typed;
}

TEST(Direction, WhatIsShownIsReadBack) {
    for (int degrees = 0; degrees < 360; ++degrees) EXPECT_EQ(parseDirection(directionText(degrees)), degrees);
    EXPECT_EQ(directionText(180), QStringLiteral("S"));
    EXPECT_EQ(directionText(181), QStringLiteral("181"));
    EXPECT_EQ(directionWords(137), QStringLiteral("south-east (137°)"));
    EXPECT_EQ(directionWords(355), QStringLiteral("north (355°)"));
}

TEST(Latitude, SignsLettersMinutesAndCommasAreUnderstood) {
    const std::pair<const char*, double> understood[] = {
        {"51.9", 51.9},     {"51,9", 51.9},   {"-33.5", -33.5},          {"−33.5", -33.5},
        {"33.5 S", -33.5},  {"33.5s", -33.5}, {"S 33.5", -33.5},         {"N 51° 54'", 51.9},
        {"51°54′ N", 51.9}, {"51.9°", 51.9},  {"51° 54' 36\" N", 51.91}, {"90", 90},
        {"-90", -90},       {"0", 0}};
    for (const auto& [typed, degrees] : understood) {
        const auto got = parseLatitude(QString::fromUtf8(typed));
        ASSERT_TRUE(got) << typed;
        EXPECT_NEAR(*got, degrees, 1e-9) << typed;
    }
}

TEST(Latitude, AnythingElseIsNot) {
    for (const char* typed : {"", "N", "S", "90.1", "91", "-33.5 S", "N 51 S", "51.9 E", "51° 60'", "51.5° 30'",
                              "north", "51 54", "1e1", "51.9 N N"})
        EXPECT_FALSE(parseLatitude(QString::fromUtf8(typed))) << typed;
}

TEST(Longitude, HasItsOwnLettersAndRange) {
    EXPECT_EQ(parseLongitude(u"2.1 W"), -2.1);
    EXPECT_EQ(parseLongitude(u"180"), 180);
    EXPECT_FALSE(parseLongitude(u"180.5"));
    EXPECT_FALSE(parseLongitude(u"2.1 S"));
}

TEST(Coordinates, WhatIsShownIsReadBack) {
    EXPECT_EQ(latitudeText(51.9), QStringLiteral("51.9° N"));
    EXPECT_EQ(latitudeText(-33.5), QStringLiteral("33.5° S"));
    EXPECT_EQ(longitudeText(-2.1), QStringLiteral("2.1° W"));
    for (const double degrees : {51.9, -33.123456, 0.0, -90.0})
        EXPECT_NEAR(*parseLatitude(latitudeText(degrees)), degrees, 1e-9);
}

TEST(Metres, ToTheMillimetre) {
    EXPECT_EQ(parseMetresMm(u"2.125"), 2125);
    EXPECT_EQ(parseMetresMm(u"-3"), -3000);
    EXPECT_EQ(parseMetresMm(u"0,5 m"), 500);
    EXPECT_FALSE(parseMetresMm(u"2.1255"));
    EXPECT_FALSE(parseMetresMm(u"10001"));
    EXPECT_FALSE(parseMetresMm(u"two"));
    EXPECT_FALSE(parseMetresMm(u""));
}

} // namespace
