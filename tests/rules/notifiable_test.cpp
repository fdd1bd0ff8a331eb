#include "core/rules/notifiable.h"

#include <gtest/gtest.h>

#include <array>

namespace tests::rules {

namespace {

using namespace core;
using namespace core::rules;

constexpr std::array kAll = {Reportable::Afb, Reportable::Efb, Reportable::SmallHiveBeetle, Reportable::Tropilaelaps,
                             Reportable::Varroa};

struct Said {
    const char* place;
    Reportable disease;
    const char* source; ///< part of the line's source
};

// Bee Diseases and Pests Control (England) Order 2006 SI 342 and sister orders, NBU leaflet "Statutory procedures"; for
// Scotland gov.scot, "Honey bee health: guidance": AFB, EFB, small hive beetle, Tropilaelaps.
// EU Reference Laboratory for bee health, leaflet "American foulbrood": AFB in the EU (trade).
// NZ AFB Management Agency, "AFB Reporting and Destruction Form". Queensland Government, "American foulbrood".
// Bienenseuchen-Verordnung § 10(1): AFB in Germany.
// European Commission, Small hive beetle outbreaks (Reg. 2016/429 art. 18, 2018/1882): in the EU, so in Germany.
const Said kSaid[] = {
    {"England", Reportable::Afb, "SI 342"},
    {"England", Reportable::Efb, "SI 342"},
    {"England", Reportable::SmallHiveBeetle, "SI 342"},
    {"England", Reportable::Tropilaelaps, "SI 342"},
    {"Wales", Reportable::Afb, "sister orders"},
    {"Wales", Reportable::Efb, "sister orders"},
    {"Wales", Reportable::SmallHiveBeetle, "sister orders"},
    {"Wales", Reportable::Tropilaelaps, "sister orders"},
    {"Scotland", Reportable::Afb, "gov.scot"},
    {"Scotland", Reportable::Efb, "gov.scot"},
    {"Scotland", Reportable::SmallHiveBeetle, "gov.scot"},
    {"Scotland", Reportable::Tropilaelaps, "gov.scot"},
    {"European Union", Reportable::Afb, "EU Reference Laboratory"},
    {"European Union", Reportable::SmallHiveBeetle, "European Commission"},
    {"Germany", Reportable::Afb, "Bienenseuchen-Verordnung"},
    {"Germany", Reportable::SmallHiveBeetle, "European Commission"},
    {"New Zealand", Reportable::Afb, "Pest Management Plan) Order 1998"},
    {"Queensland", Reportable::Afb, "Queensland Government"},
};

TEST(Notifiable, EachShippedLineIsWhatItsSourceSays) {
    for (const Said& said : kSaid) {
        const auto line = mustReport(QString::fromUtf8(said.place), said.disease, {});
        ASSERT_TRUE(line) << said.place << ' ' << word(said.disease).toStdString();
        EXPECT_TRUE(line->row.must) << said.place;
        EXPECT_FALSE(line->own);
        EXPECT_TRUE(line->row.source.contains(QString::fromUtf8(said.source))) << line->row.source.toStdString();
    }
    EXPECT_EQ(shippedNotifiables().size(), std::size(kSaid)) << "a line that no source above speaks for";
}

TEST(Notifiable, WhatNoSourceSaysIsNotKnown) {
    for (const char* place : {"Germany", "New Zealand", "Queensland", "European Union"})
        EXPECT_FALSE(mustReport(QString::fromUtf8(place), Reportable::Efb, {})) << place;
    for (const QString& place : notifiablePlaces({}))
        EXPECT_FALSE(mustReport(place, Reportable::Varroa, {})) << place.toStdString();
    for (const Reportable disease : kAll) EXPECT_FALSE(mustReport(QStringLiteral("Atlantis"), disease, {}));
    EXPECT_FALSE(mustReport({}, Reportable::Afb, {}));
}

TEST(Notifiable, PlacesStandInNaturalOrderWithoutRegardToCase) {
    EXPECT_EQ(notifiablePlaces({}),
              QStringLiteral("England|European Union|Germany|New Zealand|Queensland|Scotland|Wales").split(u'|'));
    const std::vector<Notifiable> own{{NotifiableId{1}, "england", Reportable::Varroa, false, {}, {}},
                                      {NotifiableId{2}, "Atlantis", Reportable::Afb, true, {}, {}}};
    EXPECT_EQ(notifiablePlaces(own).size(), 8);
    EXPECT_EQ(notifiablePlaces(own).front(), "Atlantis");
    EXPECT_EQ(notifiableLines(QStringLiteral(" ENGLAND "), own).size(), 5u);
    EXPECT_TRUE(mustReport(QStringLiteral("new zealand"), Reportable::Afb, own));
}

TEST(Notifiable, TheBooksOwnLineStandsInThePlaceOfTheShippedOne) {
    const std::vector<Notifiable> own{
        {NotifiableId{7}, "queensland", Reportable::Afb, true, "the hot line", "a letter of 2026"}};
    const auto line = mustReport(QStringLiteral("Queensland"), Reportable::Afb, own);
    ASSERT_TRUE(line);
    EXPECT_TRUE(line->own);
    EXPECT_EQ(line->row.tell, "the hot line");
    EXPECT_EQ(notifiableLines(own).size(), shippedNotifiables().size()) << "once, not twice";
    EXPECT_EQ(notifiableLines(own).size(), std::size(kSaid));
}

TEST(Notifiable, TheSentenceSaysWhomToTellAndWhoDecides) {
    const auto text = [](const char* place, Reportable disease, const std::vector<Notifiable>& own = {}) {
        return reportText(QString::fromUtf8(place), disease, own).toStdString();
    };
    // AFB Reporting and Destruction Form: 7 days to notify the agency after becoming aware.
    EXPECT_EQ(
        text("New Zealand", Reportable::Afb),
        "American foulbrood must be reported in New Zealand: tell the AFB Management Agency, within 7 days of "
        "becoming aware (AFB Reporting and Destruction Form, afb.org.nz, under the Biosecurity (National AFB Pest "
        "Management Plan) Order 1998). The authority decides, rules change: look it up.");
    EXPECT_NE(text("Queensland", Reportable::Afb).find(": tell your authority, at once ("), std::string::npos);
    EXPECT_EQ(text("Atlantis", Reportable::Afb),
              "Whether American foulbrood must be reported in Atlantis is not known here: ask your authority. It is "
              "notifiable nearly everywhere. The authority decides, rules change: look it up.");
    EXPECT_EQ(text("", Reportable::Efb),
              "Whose rules hold here is not recorded: ask your authority whether European "
              "foulbrood must be reported. The authority decides, rules change: look it up.");
    EXPECT_EQ(text("Wales", Reportable::Efb, {{NotifiableId{1}, "Wales", Reportable::Efb, false, {}, {}}}),
              "European foulbrood need not be reported in Wales, as this book has it. The authority decides, rules "
              "change: look it up.");
    for (const Reportable disease : kAll)
        for (const char* place : {"", "Atlantis", "Wales"})
            EXPECT_NE(text(place, disease).find("The authority decides"), std::string::npos);
    EXPECT_EQ(reportable(Disease::Afb), Reportable::Afb);
    EXPECT_EQ(reportable(Disease::Efb), Reportable::Efb);
}

} // namespace

} // namespace tests::rules
