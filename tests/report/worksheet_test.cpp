#include "core/report/worksheet_words.h"
#include "tests/report/page_reading.h"
#include "tests/report/print_sample.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QRegularExpression>
#include <QSet>

namespace {

using namespace core::report;
using namespace tests::report;

constexpr Sheet kSheets[] = {Sheet::MergeDay, Sheet::Walk,          Sheet::Checks, Sheet::ShakeOuts,
                             Sheet::Storing,  Sheet::LayingWorkers, Sheet::Tally};
static_assert(std::size(kSheets) + 1 == core::report::kSheets, "and the card, whose colony has to be said");

void expectNoFaults(const Sample& sample, const Print& print) {
    for (const Language language : {Language::English, Language::Spanish})
        for (const Paper paper : {Paper::A4, Paper::Letter}) {
            const auto pages = pagesFor(sample, language, paper, print);
            EXPECT_EQ(faultsOf(pages, EvenMeasure(), print.large ? 16 : 11).join("\n").toStdString(), "");
        }
}

TEST(Worksheet, NothingIsSmallOffThePageOverOtherTextOrOutOfItsBox) {
    for (const Sample& sample : {kilnField(), workedYard("brook-end", "Brook End", "2026-09-20"),
                                 workedYard("tansy-lane", "Tansy Lane", "2026-05-05"), yardOf60(), heldYard(30, false),
                                 heldYard(30, true), longNamedYard()})
        for (const bool large : {false, true})
            for (const Sheet sheet : kSheets) expectNoFaults(sample, {large, sheet});
}

TEST(Worksheet, TheCheckSeesTextOverText) {
    Page page;
    page.marks = {TextMark{{50, 50}, "one", 11}, TextMark{{51, 51}, "two", 10}, TextMark{{205, 50}, "three", 11},
                  TextMark{{95, 100}, "across", 11}};
    page.zones = {{"box", {20, 90, 80, 30}}};
    EXPECT_EQ(faultsOf({page}, EvenMeasure()).size(), 4);
    page.zones = {{"box", {20, 90, 80, 300}}};
    EXPECT_EQ(faultsOf({page}, EvenMeasure()).size(), 5) << "the box runs into the foot";
}

TEST(Worksheet, EveryUnionHasItsStripWholeAndInOrder) {
    for (const Sample& sample : {kilnField(), yardOf60()}) {
        const std::vector<Page> pages = pagesFor(sample);
        const std::vector<Zone> strips = zonesNamed(pages, "union ");
        ASSERT_EQ(strips.size(), sample.plan.unions.size());
        ASSERT_FALSE(strips.empty());
        for (size_t i = 0; i < strips.size(); ++i) {
            EXPECT_EQ(strips[i].name, QStringLiteral("union %1").arg(i + 1));
            EXPECT_TRUE(within(strips[i].rect, {10, 10, pages[0].width - 20, pages[0].height - 20}));
        }
    }
}

TEST(Worksheet, AStripHoldsTheLabelsOfItsUnionAndOfNoOther) {
    const Sample sample = yardOf60();
    ASSERT_GE(sample.plan.unions.size(), 15u);
    for (const Page& page : pagesFor(sample))
        for (const Zone& zone : page.zones) {
            if (!zone.name.startsWith("union ")) continue;
            const auto& u = sample.plan.unions[static_cast<size_t>(zone.name.mid(6).toInt() - 1)];
            QString words;
            for (const TextMark& text : textsOf(page))
                if (within(inkOf(text, EvenMeasure()), zone.rect)) words += text.text + u' ';
            for (const auto& other : sample.plan.unions)
                for (const core::ColonyIx c : {other.moved, other.host}) {
                    const QRegularExpression label("\\b" + sample.s.colony(c).shown + "\\b");
                    EXPECT_EQ(words.contains(label), other.order == u.order)
                        << zone.name.toStdString() << ": " << words.toStdString();
                }
        }
}

TEST(Worksheet, EveryHeldColonyIsNamedFirstWithWhatLiftsIt) {
    for (const Sample& sample : {kilnField(), yardOf60(), workedYard("brook-end", "Brook End", "2026-09-20")}) {
        const std::vector<Page> pages = pagesFor(sample);
        const QString text = flowing(pages);
        const QString held = text.left(text.indexOf("Hatched: held"));
        ASSERT_FALSE(sample.plan.holds.empty());
        for (const core::rules::Hold& h : sample.plan.holds)
            EXPECT_TRUE(held.contains(QRegularExpression("\\b" + sample.s.colony(h.colony).shown + "\\b")));
        EXPECT_TRUE(held.contains("lifted by"));
        EXPECT_TRUE(held.contains("What may still be done:"));
    }
}

TEST(Worksheet, ThirtyHeldForTheSameReasonShareOneEntry) {
    const std::vector<Page> pages = pagesFor(heldYard(30, false));
    const QString text = flowing(pages);
    EXPECT_EQ(text.count("Brood not checked"), 1);
    for (int i = 1; i <= 30; ++i)
        EXPECT_TRUE(text.contains(QRegularExpression(QStringLiteral("\\bH%1\\b").arg(i)))) << i;
}

TEST(Worksheet, LongLabelsAreWholeEvenWhereTheyBreak) {
    const Sample sample = heldYard(8, true);
    QString text = allText(pagesFor(sample));
    text.remove(u'\n').remove(u' ');
    for (const core::SnapColony& c : sample.s.colonies) EXPECT_TRUE(text.contains(c.shown)) << c.shown.toStdString();
}

TEST(Worksheet, EachPageSaysItsNumberYardDayBookAndRevision) {
    const std::vector<Page> pages = pagesFor(yardOf60());
    ASSERT_GT(pages.size(), 3u);
    for (size_t i = 0; i < pages.size(); ++i) {
        const QString text = textOf(pages[i]);
        for (const QString& part :
             {QStringLiteral("page %1 of %2").arg(i + 1).arg(pages.size()), QStringLiteral("Long Acre"),
              QStringLiteral("Sunday 20 September 2026"), QStringLiteral("north-hollow"), QStringLiteral("revision 4")})
            EXPECT_TRUE(text.contains(part)) << i << part.toStdString();
    }
}

// Source: own calculation from the yard's visits: K2, carried, 27 kg; K4's box 29 kg less 5 for floor and lid; K6, in
// two boxes, 36 less an empty box of 5; K5's box 28 less 5.
TEST(Worksheet, SaysWhatThereIsToLiftAndToMix) {
    Sample sample = kilnField();
    const QString text = flowing(pagesFor(sample));
    for (const char* part : {"K2 27 kg, K4 24 kg; over 25 kg: two people or a barrow",
                             "K3 26 kg, K11 26 kg; over 25 kg", "K6 up to 31 kg, K5 23 kg; over 25 kg"})
        EXPECT_TRUE(text.contains(part)) << part << "\nin:\n" << text.toStdString();
    EXPECT_TRUE(text.contains("none of these is a safe weight"));
    // 11.5 litres of 0.8844 kg of sugar each are 10.17 kg, and half as much water
    EXPECT_TRUE(text.contains("syrup: 11.5 L in all, of 10.2 kg of sugar and 5.1 kg of water"));
    sample.s.settings.order = core::BoxOrder::WeakerOnTop;
    for (core::rules::Union& u : sample.plan.unions) std::swap(u.lower, u.upper);
    EXPECT_TRUE(flowing(pagesFor(sample)).contains("To lift: K2 27 kg; over 25 kg")) << "the host's box stays";
}

// Source: tests/data/yards/README.md, kiln-field.
TEST(Worksheet, KilnFieldSaysWhatToDo) {
    const QString text = flowing(pagesFor(kilnField()));
    for (const char* part : {"Merge day, Kiln Field",
                             "Tuesday 15 September 2026",
                             "12 colonies · 3 unions · 1 shaken out · 1 held",
                             "K2 → K4",
                             "carry 4.0 m to stand 4",
                             "4 + 5.25 = 9.25 frames",
                             "K3 → K11",
                             "keep that of K3; K11 has none",
                             "K6 → K5",
                             "Bring K6 down to one box, where that is not done: 4 frames",
                             "Both entrances to the south-east",
                             "K9 → K10",
                             "Laying workers",
                             "Count too old",
                             "9.5 L",
                             "3 sheets of newspaper",
                             "lids 4, floors 4, boxes 2",
                             "syrup: 11.5 L",
                             "Sunday 20 September 2026: look whether the union took",
                             "done not done changed:"})
        EXPECT_TRUE(text.contains(part)) << part << "\nin:\n" << text.toStdString();
}

TEST(Worksheet, AQueenThatLaysOnlyDronesIsNotSaidToBeMissing) {
    Sample sample = kilnField();
    for (size_t i = 0; i < sample.s.colonies.size(); ++i)
        if (sample.s.colonies[i].shown == u"K11") sample.s.latest[i].queen.back().seen = core::QueenSeen::DroneLayer;
    const QString text = flowing(pagesFor(sample));
    EXPECT_TRUE(text.contains("keep that of K3; that of K11 lays only drones")) << text.toStdString();
    EXPECT_TRUE(text.contains("1. First find and remove the drone-laying queen of K11."));
    EXPECT_FALSE(text.contains("K11 has none"));
    EXPECT_TRUE(flowing(pagesFor(sample, Language::Spanish)).contains("conservar la de K3; la de K11 es zanganera"));
}

TEST(Worksheet, SaysTheCareThatPrintsAndWhoDecides) {
    const QString text = flowing(pagesFor(kilnField()));
    for (const char* part : {"25 kg", "Never work alone", "adrenaline", "dry grass", "Robbing.",
                             "The label and the "
                             "veterinarian decide",
                             "notifiable nearly everywhere", "call the inspector", "tables that are an assumption"})
        EXPECT_TRUE(text.contains(part)) << part;
}

TEST(Worksheet, AFoulbroodColonyIsNotSaidToBeFed) {
    const QString text = flowing(pagesFor(workedYard("brook-end", "Brook End", "2026-07-12")));
    EXPECT_FALSE(text.contains("suspected it may be looked at, fed"));
    const QString sick = flowing(pagesFor(workedYard("brook-end", "Brook End", "2026-07-11")));
    EXPECT_TRUE(sick.contains("It is not fed.")) << sick.toStdString();
}

TEST(Worksheet, AYardWithoutAdviceSaysSo) {
    const QString text = flowing(pagesFor(heldYard(3, false)));
    EXPECT_TRUE(text.contains("No union and no shake-out is advised here on this day."));
}

TEST(Worksheet, SpanishHasEveryPhraseThatThePagesUse) {
    QSet<QString> phrases;
    for (const char* part :
         {"worksheet",         "worksheet_asked", "worksheet_cautions", "worksheet_divides", "worksheet_drawing",
          "worksheet_holds",   "worksheet_kit",   "worksheet_lift",     "worksheet_due",     "worksheet_laying",
          "worksheet_storing", "worksheet_lists", "worksheet_stack",    "worksheet_steps",   "worksheet_unions",
          "worksheet_walk",    "tally",           "tally_card",         "tally_form",        "tally_row"}) {
        QFile file(QStringLiteral(YW_SOURCE_DIR "/core/report/%1.cpp").arg(part));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << part;
        const QString source = QString::fromUtf8(file.readAll());
        static const QRegularExpression kSaid("say\\(\\s*((?:\"[^\"]*\"\\s*)+)\\)");
        for (auto it = kSaid.globalMatch(source); it.hasNext();)
            phrases << it.next().captured(1).remove(QRegularExpression("\"\\s*\"")).trimmed().chopped(1).mid(1);
    }
    EXPECT_GT(phrases.size(), 40);
    for (const QString& phrase : phrases) EXPECT_TRUE(Words::known(phrase, Language::Spanish)) << phrase.toStdString();
}

// A pattern is a literal that ends as a sentence does.
TEST(Worksheet, SpanishHasEverySentenceOfTheFindings) {
    QSet<QString> patterns;
    for (const char* part : {"consolidation", "missing_words", "finding_words", "given_up", "divide_dates",
                             "divide_work", "laying_workers"}) {
        QFile file(QStringLiteral(YW_SOURCE_DIR "/core/rules/%1.cpp").arg(part));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << part;
        const QString source = QString::fromUtf8(file.readAll());
        static const QRegularExpression kLiteral("((?:\"[^\"\\n]*\"\\s*)+)");
        for (auto it = kLiteral.globalMatch(source); it.hasNext();) {
            const QString all =
                it.next().captured(1).remove(QRegularExpression("\"\\s*\"")).trimmed().chopped(1).mid(1);
            if (all.endsWith(u'.') || all.endsWith(u'?')) patterns << all;
        }
    }
    EXPECT_GT(patterns.size(), 35);
    for (const QString& p : patterns) EXPECT_TRUE(Words::known(p, Language::Spanish)) << p.toStdString();
}

TEST(Worksheet, SpanishLeavesNoEnglishButTheReasonsOfHolds) {
    const Sample sample = kilnField();
    const QString text = flowing(pagesFor(sample, Language::Spanish));
    EXPECT_TRUE(text.contains("martes 15 de septiembre de 2026") || text.contains("martes, 15 de septiembre"))
        << text.toStdString();
    EXPECT_TRUE(text.contains("Los motivos de abajo están en inglés."));
    const QString afterHolds = text.mid(text.indexOf("Rayada:"));
    for (const char* english : {" the ", " of ", " and ", " is ", " not ", "Queen", "carry", "look", "frames"})
        EXPECT_FALSE(afterHolds.contains(english)) << english << "\nin:\n" << afterHolds.toStdString();
}

Sample inPoundsQuartsAndFeet(Sample sample) {
    sample.s.settings.showWeight = core::WeightUnit::Pounds;
    sample.s.settings.showVolume = core::VolumeUnit::Quarts;
    sample.s.settings.showLength = core::LengthUnit::Feet;
    sample.plan = core::rules::advise(sample.s, {});
    return sample;
}

// Figures as in plan_text_test.cpp: own calculation by the factors of
// tests/base/shown_units_test.cpp.
TEST(Worksheet, FollowsTheUnitsShown) {
    const QRegularExpression metric(QStringLiteral("\\d (m|kg|L)\\b"));
    for (const Language language : {Language::English, Language::Spanish}) {
        const Sample sample = inPoundsQuartsAndFeet(kilnField());
        const std::vector<Page> pages = pagesFor(sample, language);
        const QString text = flowing(pages);
        // 27 kg are 59.5 lb, 24 kg 52.9; 10.17 kg of sugar 22.42 lb, rounded up to a tenth
        for (const char* part :
             {"23.7 ft", "10.0 qt", "22.0 lb", "K2 60 lb, K4 53 lb; ", "55 lb", "12.2 qt", "22.5 lb", "11.3 lb"})
            EXPECT_TRUE(text.contains(QLatin1StringView(part))) << part << "\nin:\n" << text.toStdString();
        EXPECT_FALSE(text.contains(metric)) << metric.match(text).captured().toStdString();
        EXPECT_EQ(faultsOf(pages, EvenMeasure()).join("\n").toStdString(), "");
    }
    EXPECT_TRUE(flowing(pagesFor(kilnField())).contains(metric));
}

// Reviewed by eye once; `YW_UPDATE_GOLDEN=1` writes it anew.
TEST(Worksheet, KilnFieldAsReviewed) {
    const QString path = QStringLiteral(YW_SOURCE_DIR "/tests/golden/worksheet-kiln-field.txt");
    const QString now = dumpOf(pagesFor(kilnField()));
    QFile file(path);
    if (qEnvironmentVariableIsSet("YW_UPDATE_GOLDEN")) {
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(now.toUtf8());
        return;
    }
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(QString::fromUtf8(file.readAll()).toStdString(), now.toStdString());
}

} // namespace
