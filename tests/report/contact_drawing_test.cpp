#include "core/report/contact_drawing.h"
#include "core/report/worksheet_flow.h"

#include "tests/report/page_reading.h"
#include "tests/rules/hold_book.h"

#include <gtest/gtest.h>

#include <set>

namespace {

using namespace core;
using namespace core::report;
using tests::report::EvenMeasure;
using tests::rules::HoldBook;
using tests::rules::moved;

constexpr auto kFrom = "2024-09-20";
constexpr auto kOn = "2026-09-20";

const char* const kLabels[] = {"K1", "K2", "K3", "K4", "K5", "K6", "K7", "K8", "K9", "K10", "K11", "K12"};

/// Twelve colonies, each of which gives to the next one two months later, in an order that their labels do not have;
/// besides, some gifts between others.
HoldBook chainBook() {
    HoldBook book;
    for (const char* label : kLabels) book.colony(label);
    const int chain[] = {0, 7, 3, 11, 1, 9, 5, 2, 10, 4, 8, 6};
    for (int i = 1; i < 12; ++i)
        book.gift(kLabels[chain[i - 1]], kLabels[chain[i]], moved("2024-10-01", 60 * (i - 1)),
                  i % 4 == 0 ? "feed" : "brood");
    book.gift("K8", "K2", "2026-01-10").gift("K4", "K10", "2026-03-02").gift("K2", "K6", "2026-04-10");
    return book;
}

ContactDrawing drawingOf(const Snapshot& s, const char* label, rules::ContactWay way, size_t most = 40) {
    const rules::Gifts gifts(s);
    const Day from = *parseIsoDay(QString(kFrom));
    const auto contacts = rules::contactsOf(gifts, s.colonies.size(), *s.colonyNamed(QString(label)), from, s.on, way);
    return contactDrawing(s, contacts, rules::holds(s), from, s.on, most);
}

int crossings(const ContactDrawing& d, std::vector<size_t> order) {
    std::vector<TimeRow> rows;
    std::vector<TimeStroke> strokes;
    for (const ContactRow& row : d.rows) rows.push_back(row.line);
    for (const ContactStroke& s : d.strokes) strokes.push_back(s.stroke);
    return crossingsOf(rows, strokes, order);
}

TEST(ContactDrawing, OfAChainOfTwelveCrossesNothingThatSwappingTwoRowsWouldAvoid) {
    const Snapshot s = chainBook().on(kOn);
    for (const auto& [label, way] :
         {std::pair("K1", rules::ContactWay::Onwards), std::pair("K7", rules::ContactWay::Back)}) {
        const ContactDrawing d = drawingOf(s, label, way);
        ASSERT_EQ(d.rows.size(), 12u);
        EXPECT_EQ(d.rows[d.asked].label.toStdString(), label);
        std::vector<size_t> order(12);
        for (size_t i = 0; i < 12; ++i) order[i] = i;
        const int as = crossings(d, order);
        for (size_t i = 0; i + 1 < 12; ++i) {
            std::swap(order[i], order[i + 1]);
            EXPECT_GE(crossings(d, order), as) << label << " place " << i;
            std::swap(order[i], order[i + 1]);
        }
    }
}

TEST(ContactDrawing, TellsHoldsEndsAndTheFirstLinks) {
    HoldBook book = HoldBook().colony("A").colony("B").ended("C", "Home", "2026-06-01", "united");
    book.gift("A", "C", "2026-05-01").lineage("C", "B", "2026-06-01", "united").gift("A", "B", "2026-07-01", "feed");
    book.sign("A", "2026-08-01");
    const ContactDrawing d = drawingOf(book.on(kOn), "A", rules::ContactWay::Onwards);
    ASSERT_EQ(d.rows.size(), 3u);
    std::map<std::string, ContactRow> rows;
    for (const ContactRow& row : d.rows) rows[row.label.toStdString()] = row;
    EXPECT_TRUE(rows["A"].letters.contains(u'S'));
    EXPECT_TRUE(rows["B"].letters.contains(u'C'));
    EXPECT_TRUE(rows["C"].ended);
    EXPECT_EQ(isoText(rows["C"].line.until).toStdString(), "2026-06-01");
    EXPECT_EQ(isoText(rows["B"].reached.value()).toStdString(), "2026-06-01");
    ASSERT_EQ(d.strokes.size(), 3u);
    for (const ContactStroke& stroke : d.strokes)
        EXPECT_EQ(stroke.first, stroke.kind != rules::GiftKind::Feed) << "it was reached before it was fed";
}

TEST(ContactDrawing, SaysHowManyAreLeftOut) {
    const ContactDrawing d = drawingOf(chainBook().on(kOn), "K1", rules::ContactWay::Onwards, 5);
    EXPECT_EQ(d.rows.size(), 5u);
    EXPECT_EQ(d.left, 7u);
}

/// How the upright strokes between the two rows look: "0.5 mm, dash 0.6 0.9" each.
QStringList strokesOf(rules::GiftKind kind, bool first) {
    ContactDrawing d;
    d.from = *parseIsoDay(QString(kFrom));
    d.until = *parseIsoDay(QString(kOn));
    d.rows = {{{0}, QStringLiteral("A"), {}, {d.from, d.until}, {}, false},
              {{1}, QStringLiteral("B"), {}, {d.from, d.until}, d.from + 300, false}};
    d.strokes = {{{d.from + 300, 0, 1}, kind, first}};
    QStringList looks;
    const EvenMeasure measure;
    for (const Mark& mark : contactBlock(d, measure, 170).marks) {
        const auto* path = std::get_if<PathMark>(&mark);
        const double rows[] = {contactRow(0).y + contactRow(0).height / 2, contactRow(1).y + contactRow(1).height / 2};
        if (!path || path->points.size() != 2 || path->points[0].y != rows[0] || path->points[1].y != rows[1]) continue;
        QString look = QStringLiteral("%1 mm").arg(path->lineWidth);
        for (const double part : path->dash) look += QStringLiteral(" %1").arg(part);
        looks << look;
    }
    return looks;
}

TEST(ContactDrawing, ReadsInGreyscaleByStrokesAndMarksAlone) {
    using rules::GiftKind;
    std::set<QStringList> looks;
    for (const GiftKind kind : {GiftKind::Frames, GiftKind::Feed, GiftKind::United, GiftKind::Divided}) {
        EXPECT_FALSE(strokesOf(kind, true).isEmpty());
        EXPECT_NE(strokesOf(kind, true), strokesOf(kind, false)) << "the first link is bolder";
        looks.insert(strokesOf(kind, true));
    }
    EXPECT_EQ(looks.size(), 4u) << "solid, dotted, double, dashed";
    EXPECT_EQ(strokesOf(GiftKind::United, true).size(), 2);
    // Paper has black, grey and white alone; here nothing is paler than black.
    const EvenMeasure measure;
    const auto block = contactBlock(drawingOf(chainBook().on(kOn), "K1", rules::ContactWay::Onwards), measure, 170);
    int marks = 0;
    for (const Mark& mark : block.marks) {
        ++marks;
        if (const auto* path = std::get_if<PathMark>(&mark)) {
            EXPECT_EQ(path->line, Ink::Black);
            EXPECT_TRUE(!path->filled || path->fill == Ink::Black);
        }
        if (const auto* circle = std::get_if<CircleMark>(&mark)) {
            EXPECT_EQ(circle->fill, Ink::Black);
        }
        if (const auto* text = std::get_if<TextMark>(&mark)) {
            EXPECT_EQ(text->ink, Ink::Black);
        }
    }
    EXPECT_GT(marks, 60);
}

TEST(ContactDrawing, KeepsItsTextsApartAndInside) {
    const EvenMeasure measure;
    const PageSize size = pageSize(Paper::A4);
    for (const int rows : {1, 2, 12}) {
        Section section;
        section.heading = QStringLiteral("Contacts");
        section.note = contactKey();
        section.blocks.push_back(
            contactBlock(drawingOf(chainBook().on(kOn), "K1", rules::ContactWay::Onwards, static_cast<size_t>(rows)),
                         measure, size.contentWidth()));
        const auto pages = pagesOf({section}, {}, size, measure);
        EXPECT_EQ(tests::report::faultsOf(pages, measure).join("\n").toStdString(), "") << rows;
        EXPECT_GT(tests::report::textsOf(pages.front()).size(), 3u + static_cast<size_t>(rows));
    }
}

} // namespace
