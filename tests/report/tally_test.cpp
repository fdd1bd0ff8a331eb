#include "core/report/tally.h"
#include "core/report/worksheet_words.h"
#include "core/rules/facts.h"
#include "core/rules/work_order.h"
#include "tests/report/page_reading.h"
#include "tests/report/print_sample.h"

#include <gtest/gtest.h>

// The tally sheet of a yard and the card of one colony, as marks.

namespace {

using namespace core::report;
using namespace tests::report;

constexpr Language kLanguages[] = {Language::English, Language::Spanish};
constexpr Paper kPapers[] = {Paper::A4, Paper::Letter};

std::vector<Page> tallyOf(const Sample& sample, Language language = Language::English, Paper paper = Paper::A4) {
    return pagesFor(sample, language, paper, {false, Sheet::Tally});
}

std::vector<core::ColonyIx> livingHere(const Sample& sample) {
    std::vector<core::ColonyIx> out;
    for (const auto& f : core::rules::colonyFacts(sample.s))
        if (f.yard == sample.yard) out.push_back(f.colony);
    return out;
}

/// The rows' zones, without those of their boxes.
std::vector<Zone> rowsOf(const std::vector<Page>& pages) {
    std::vector<Zone> rows = zonesNamed(pages, "tally ");
    std::erase_if(rows, [](const Zone& z) { return z.name.contains(": ") || z.name == "tally head"; });
    return rows;
}

TEST(Tally, HasARowAColonyInWalkingOrder) {
    for (const Sample& sample : {kilnField(), yardOf60()}) {
        const std::vector<core::ColonyIx> here = livingHere(sample);
        std::vector<core::MmPoint> stops;
        for (const core::ColonyIx c : here) stops.push_back(sample.s.placeOf(c)->at);
        QStringList expected, rows;
        for (const size_t at : core::rules::walkRound(sample.s.yard(sample.yard).gate, stops))
            expected << "tally " + sample.s.colony(here[at]).shown;
        for (const Zone& row : rowsOf(tallyOf(sample))) rows << row.name;
        EXPECT_EQ(rows.join(", ").toStdString(), expected.join(", ").toStdString());
    }
}

TEST(Tally, OfARoundItHasThoseAloneInTheOrderGiven) {
    const Sample sample = yardOf60();
    Print print;
    print.sheet = Sheet::Tally;
    for (const char* label : {"A40", "A3", "A7"})
        print.round.push_back(sample.s.colony(*sample.s.livingNamed(QString::fromLatin1(label))).id);
    for (const Language language : kLanguages) {
        const auto pages = pagesFor(sample, language, Paper::A4, print);
        QStringList rows;
        for (const Zone& row : rowsOf(pages)) rows << row.name;
        EXPECT_EQ(rows.join(", ").toStdString(), "tally A40, tally A3, tally A7");
        EXPECT_TRUE(flowing(pages).contains(language == Language::English
                                                ? QStringLiteral("Only hives whose brood is to be checked")
                                                : QStringLiteral("Solo colmenas cuya cría hay que revisar")))
            << flowing(pages).toStdString();
        EXPECT_EQ(faultsOf(pages, EvenMeasure(), 11).join("\n").toStdString(), "");
    }
}

TEST(Tally, EveryPageBeginsWithTheHeadAndSplitsNoRow) {
    const Sample sample = yardOf60();
    for (const Language language : kLanguages)
        for (const Paper paper : kPapers)
            for (const bool large : {false, true}) {
                const auto pages = pagesFor(sample, language, paper, {large, Sheet::Tally});
                ASSERT_GE(pages.size(), 10u);
                for (const Page& page : pages) {
                    const std::vector<Zone> heads = zonesNamed({page}, "tally head");
                    ASSERT_EQ(heads.size(), 1u);
                    for (const Zone& row : rowsOf({page})) EXPECT_GT(row.rect.y, heads.front().rect.y);
                    EXPECT_FALSE(rowsOf({page}).empty());
                }
                EXPECT_EQ(rowsOf(pages).size(), 60u);
                EXPECT_EQ(faultsOf(pages, EvenMeasure(), large ? 16 : 11).join("\n").toStdString(), "");
            }
}

// 12 mm and more for a gloved hand: common practice, no source
TEST(Tally, BoxesAreHighEnoughForAGloveAndInTheOrderOfTheEntryForm) {
    const auto pages = tallyOf(kilnField());
    const std::vector<Zone> boxes = zonesNamed(pages, "tally K2: ");
    QStringList names, expected;
    double x = -1, y = -1;
    for (const Zone& box : boxes) {
        names << box.name.mid(10);
        const bool words = names.last() == "note" || names.last() == "boxes";
        EXPECT_GE(box.rect.height, words ? 10 : 12) << box.name.toStdString();
        EXPECT_GE(box.rect.width, 13) << box.name.toStdString();
        EXPECT_TRUE(box.rect.y > y || box.rect.x > x) << "beside or below the one before";
        x = box.rect.x;
        y = box.rect.y;
    }
    for (const core::TallyColumn column : core::kTallyOrder)
        if (column != core::TallyColumn::Sample) expected << tallyName(column); // in the box of the mites
    EXPECT_EQ(names.join(", ").toStdString(), expected.join(", ").toStdString());
}

// Figures of tests/data/yards/kiln-field.
TEST(Tally, ARowSaysTheLastFigures) {
    const QString text = flowing(tallyOf(kilnField()));
    EXPECT_TRUE(text.contains("K2 stand 2 · 14 Sept: bees 4, weak, queen: eggs, stores 4, 27.0 kg"))
        << text.toStdString();
    EXPECT_TRUE(text.contains("S seen E eggs V virgin N none D drone-layer L workers lay")) << text.toStdString();
    EXPECT_TRUE(text.contains("clean C chalk A AFB S sac E EFB N nosema D doubt W wings")) << text.toStdString();
    const QString spanish = flowing(tallyOf(kilnField(), Language::Spanish));
    EXPECT_TRUE(spanish.contains("abejas 4, débil, reina: huevos, reservas 4, 27.0 kg")) << spanish.toStdString();
    for (const char* english : {" the ", " of ", " and ", " is ", "frames", "bees", "days", "queen", "Note"})
        EXPECT_FALSE(spanish.contains(english)) << english << "\nin:\n" << spanish.toStdString();
}

TEST(Tally, HeldColoniesAreMarkedWithLetterHatchingAndWhatMayBeDone) {
    const Sample sample = kilnField();
    ASSERT_FALSE(sample.plan.holds.empty());
    for (const Language language : kLanguages) {
        const auto pages = tallyOf(sample, language);
        const Words say(language);
        for (const core::rules::Hold& h : sample.plan.holds) {
            const QString name = "tally " + sample.s.colony(h.colony).shown;
            for (const Page& page : pages)
                for (const Zone& row : rowsOf({page})) {
                    if (row.name != name) continue;
                    QString text;
                    for (const TextMark& mark : textsOf(page))
                        if (within(inkOf(mark, EvenMeasure()), row.rect)) text += mark.text + u' ';
                    EXPECT_TRUE(text.contains(say.holdTitle(h.kind))) << text.toStdString();
                    EXPECT_TRUE(text.contains(core::rules::holdLetter(h.kind)));
                    int hatched = 0;
                    for (const Mark& mark : page.marks)
                        if (const auto* hatch = std::get_if<HatchMark>(&mark))
                            hatched += hatch->polygon.front().y >= row.rect.y - 0.1 &&
                                       hatch->polygon.front().y < row.rect.y + row.rect.height;
                    EXPECT_EQ(hatched, 1) << name.toStdString();
                }
        }
    }
}

// Rule 4.4: a colony with foulbrood stays closed: nothing invites to open it.
TEST(Tally, AColonyThatStaysClosedHasNoBoxesToCountIn) {
    Sample sample = kilnField();
    const core::ColonyIx colony = livingHere(sample).front();
    core::rules::Hold foul;
    foul.colony = colony;
    foul.kind = core::rules::HoldKind::AfbSuspected;
    sample.plan.holds = {foul};
    const QString name = "tally " + sample.s.colony(colony).shown + ": ";
    const auto pages = tallyOf(sample);
    const std::vector<Zone> boxes = zonesNamed(pages, name);
    ASSERT_EQ(boxes.size(), 1u);
    EXPECT_EQ(boxes.front().name, name + "note");
    EXPECT_TRUE(flowing(pages).contains("it stays closed where it stands; only the inspector says what more."));
}

TEST(Tally, ChecksDueStandInTheRow) {
    Sample sample = kilnField();
    const core::ColonyIx colony = livingHere(sample).front();
    core::rules::Reason treated{"4.14"};
    treated.fact("treated", sample.s.on - 42);
    sample.plan.due = {{colony, core::rules::DueKind::TakeOut, sample.s.on + 3, treated}};
    EXPECT_TRUE(flowing(tallyOf(sample)).contains("Take the treatment out (Friday 18 September)"));
    EXPECT_TRUE(flowing(tallyOf(sample, Language::Spanish)).contains("(viernes 18 de septiembre)") ||
                flowing(tallyOf(sample, Language::Spanish)).contains("(viernes, 18 de septiembre)"));
}

TEST(Tally, EachPageSaysYardDayNumberBookAndCode) {
    const auto pages = tallyOf(yardOf60());
    for (size_t i = 0; i < pages.size(); ++i) {
        const QString text = textOf(pages[i]);
        for (const QString& part : {QStringLiteral("page %1 of %2").arg(i + 1).arg(pages.size()),
                                    QStringLiteral("Long Acre"), QStringLiteral("20 September 2026"),
                                    QStringLiteral("north-hollow · revision 4"), QStringLiteral("inspectors")})
            EXPECT_TRUE(text.contains(part)) << part.toStdString() << " in " << text.toStdString();
    }
}

TEST(Tally, TheCardIsHalfASheetWithItsLastVisits) {
    for (const Sample& sample : {kilnField(), longNamedYard()})
        for (const Language language : kLanguages)
            for (const Paper paper : kPapers)
                for (const bool large : {false, true}) {
                    Print print = cardOf(sample, livingHere(sample).front());
                    print.large = large;
                    const auto pages = pagesFor(sample, language, paper, print);
                    EXPECT_EQ(pages.size(), 1u);
                    EXPECT_GT(pages.front().width, pages.front().height);
                    EXPECT_EQ(faultsOf(pages, EvenMeasure(), large ? 16 : 11).join("\n").toStdString(), "");
                    EXPECT_EQ(zonesNamed(pages, "last visits").size(), 1u);
                }
    const Sample sample = kilnField();
    const QString text = flowing(pagesFor(sample, Language::English, Paper::A4, cardOf(sample, livingHere(sample)[0])));
    for (const char* part : {"5.25 / 4.5 + 2.25 / —", "laying workers", "6 (6)", "32.1 kg", "4 / 300", "6 Sept"})
        EXPECT_TRUE(text.contains(QString::fromUtf8(part))) << part << " in " << text.toStdString();
}

TEST(Tally, TheCardOfOneThatDiedSinceIsEmpty) {
    const Sample sample = kilnField();
    Print print = cardOf(sample, livingHere(sample).front());
    print.card = core::ColonyId{999'999};
    EXPECT_TRUE(zonesNamed(pagesFor(sample, Language::English, Paper::A4, print), "tally").empty());
}

} // namespace
