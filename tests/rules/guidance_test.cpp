#include "core/rules/guidance.h"

#include <gtest/gtest.h>

namespace tests::rules {

namespace {

using namespace core::rules;

QString allText() {
    QString all;
    for (const GuidanceTopic& topic : guidance())
        for (const GuidanceLine& line : topic.lines) all += line.text + u'\n';
    return all;
}

TEST(Guidance, EachLineHasASourceAndIsShort) {
    constexpr qsizetype kLongest = 330; // own choice: what is read at a hive
    for (const GuidanceTopic& topic : guidance()) {
        EXPECT_FALSE(topic.title.isEmpty());
        EXPECT_FALSE(topic.lines.empty()) << topic.title.toStdString();
        for (const GuidanceLine& line : topic.lines) {
            EXPECT_FALSE(line.source.isEmpty()) << line.text.toStdString();
            EXPECT_LE(line.text.size(), kLongest) << line.text.toStdString();
            EXPECT_TRUE(line.text.endsWith(u'.')) << line.text.toStdString();
        }
    }
}

/// A part of the text beside a part of its source.
struct Fact {
    const char* text;
    const char* source;
};
const Fact kFacts[] = {
    // Queensland Government, "American foulbrood": up to 30 mm. Flottum, The Backyard Beekeeper: 1/2 to 1 inch.
    {"30 mm", "Queensland Government"},
    {"13 to 25 mm", "Flottum"},
    // Flottum, and an inspector's account from Colorado: a suspicion, confirmed by inspector or laboratory.
    {"inspector or a laboratory confirms", "Flottum"},
    // WOAH Terrestrial Code art. 9.2.1.
    {"show no signs are common", "WOAH"},
    // NZ AFB Management Agency, "Transferring frames".
    {"2,500 million spores", "Transferring frames"},
    // Goodwin and Van Eaton 1992: at least 35 years.
    {"at least 35 years", "Goodwin and Van Eaton"},
    // Aust. J. Agric. Res. 40:691-697: two months to a year; three of five.
    {"two months to a year", "40:691-697"},
    {"three of five", "40:691-697"},
    // Goodwin and Van Eaton manual ch. 7 and 9.
    {"all brood frames, with the bees shaken off", "Goodwin and Van Eaton"},
    {"once in spring and once in autumn", "Goodwin and Van Eaton"},
    // NZ AFB Management Agency, "Shaking bees off frames before inspecting".
    {"fewer than 50 sick cells", "Shaking bees off"},
    // DPIRD WA: 10 minutes at 160 °C, half microcrystalline and half paraffin wax.
    {"160 °C, at least ten minutes", "Western Australia"},
    // De Guzman et al. 2011; Can. J. Microbiol. 8:175-179.
    {"at least 15 kGy", "De Guzman"},
    {"15 to 20 kGy", "8:175-179"},
    // Lindström, Korpela, Fries 2008.
    {"within 1 km", "Apidologie"},
    // PLOS ONE 2019 table 1; Cramp; Cramp and Flottum.
    {"loose and rubbery", "PLOS ONE"},
    {"sac of fluid", "Cramp"},
    {"Hard mummies", "Cramp"},
    // Bienenseuchen-Verordnung § 11(1) no. 2 to 4.
    {"no colony comes in", "Bienenseuchen-Verordnung"},
    // Norfolk Beekeepers; pbka.info; honeybeesuite.com.
    {"Several eggs in a cell", "Norfolk"},
    {"about eight", "pbka.info"},
    {"two to three weeks", "honeybeesuite.com"},
};

TEST(Guidance, FactsStandBesideTheirSources) {
    for (const Fact& fact : kFacts) {
        bool found = false;
        for (const GuidanceTopic& topic : guidance())
            for (const GuidanceLine& line : topic.lines)
                found |= line.text.contains(QString::fromUtf8(fact.text)) &&
                         line.source.contains(QString::fromUtf8(fact.source));
        EXPECT_TRUE(found) << fact.text;
    }
}

TEST(Guidance, WhatNobodyHasReadOrIsWrongIsNotSaid) {
    // Known from memory alone: rope of 10 to 30 mm, antibiotics hiding it for 18 months, a million nosema spores a bee.
    for (const char* unread : {"10 to 30 mm", "18 months", "million spores per bee"})
        EXPECT_FALSE(allText().contains(QString::fromUtf8(unread))) << unread;
    // WOAH Terrestrial Code art. 9.2.1: no signs is not free.
    EXPECT_FALSE(allText().contains(QStringLiteral("colony is free of disease")));
    EXPECT_TRUE(allText().contains(QStringLiteral("never that a colony is free of foulbrood")))
        << allText().toStdString();
}

TEST(Guidance, IsFoundByWords) {
    EXPECT_EQ(guidanceWith({}).size(), guidance().size());
    EXPECT_EQ(guidanceWith(QStringLiteral("  ")).size(), guidance().size());
    const auto ropes = guidanceWith(QStringLiteral("MATCHSTICK thread"));
    ASSERT_EQ(ropes.size(), 1u);
    EXPECT_EQ(guidance()[ropes.front()].title, "Ropiness and how it is tested");
    EXPECT_EQ(guidanceWith(QStringLiteral("lindström")).size(), 1u) << "a source, in whatever case";
    EXPECT_TRUE(guidanceWith(QStringLiteral("hovercraft")).empty());
}

} // namespace

} // namespace tests::rules
