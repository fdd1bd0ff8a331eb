#include "core/report/inspector_pages.h"
#include "core/report/worksheet.h"
#include "tests/report/page_reading.h"
#include "tests/rules/hold_book.h"
#include "ui/board/board_rows.h"
#include "ui/card/card_content.h"
#include "ui/desk/reading.h"
#include "ui/health/held_rows.h"
#include "ui/look/rule_words.h"
#include "ui/plan/scene.h"

#include <gtest/gtest.h>

#include <algorithm>

// A hold is said in the same words wherever it shows: its title on the plan, the card, the board, the page Held, the
// worksheet, the tally sheet and the inspector's report; why it stands and what would lift it wherever there is room.

namespace {

using core::rules::Hold;
using core::rules::HoldKind;
using tests::rules::HoldBook;
namespace report = core::report;

/// A hold of one colony, and all that shows it.
class Shown {
public:
    Shown(const HoldBook& book, const char* on, const char* label, HoldKind kind)
        : m_reading(ui::desk::readingOf(book.on(QString::fromLatin1(on)))),
          m_colony(*m_reading.snapshot.livingNamed(QString::fromLatin1(label))),
          m_yard(m_reading.snapshot.placeOf(m_colony)->yard) {
        for (const Hold& h : m_reading.plan.holds)
            if (h.colony == m_colony && h.kind == kind) m_hold = &h;
    }
    bool stands() const { return m_hold != nullptr; }
    const Hold& hold() const { return *m_hold; }
    QString title() const { return ui::look::holdTitle(m_hold->kind); }
    QString within() const { return ui::look::holdWithin(m_hold->kind); }
    QString letter() const { return {core::rules::holdLetter(m_hold->kind)}; }
    const QString& name() const { return m_reading.snapshot.colony(m_colony).shown; }

    ui::plan::HiveMark plan() const {
        const auto scene =
            ui::plan::sceneOf(m_reading.snapshot, m_yard, m_reading.facts, m_reading.plan.holds, &m_reading.plan);
        return scene.hives[*scene.find(m_reading.snapshot.colony(m_colony).id)];
    }
    ui::card::CardContent card() const { return ui::card::cardOf(m_reading, m_colony); }
    std::vector<ui::board::BoardRow> board() const { return ui::board::boardRows(m_reading, m_yard); }
    std::vector<ui::board::BoardRow> held() const { return ui::health::heldRows(m_reading, {m_yard}).rows; }
    /// The words of a sheet, line breaks taken for spaces.
    QString sheet(report::Sheet which) const {
        report::WorksheetOptions options;
        options.sheet = which;
        QString out;
        for (const report::Page& page :
             report::worksheetPages(m_reading.snapshot, m_reading.plan, m_yard, options, tests::report::EvenMeasure()))
            out += tests::report::textOf(page) + u'\n';
        return out.replace(u'\n', u' ').replace(QChar(0xa0), u' ');
    }
    /// The inspector's table of holds: on paper, and as a file.
    report::PaperTable report() const {
        core::rules::InspectionBook book{m_reading.snapshot.on - 30, m_reading.snapshot, {m_yard}};
        for (const report::PaperTable& table : report::inspectorTables(book, core::rules::inspect(book), {}))
            if (table.file == QLatin1StringView("holds")) return table;
        return {};
    }

private:
    ui::desk::Reading m_reading;
    core::ColonyIx m_colony;
    core::YardIx m_yard;
    const Hold* m_hold = nullptr;
};

void expectRow(const std::vector<ui::board::BoardRow>& rows, const Shown& shown, const char* where) {
    const QString title = shown.name() + QStringLiteral(": ") + shown.within();
    for (const ui::board::BoardRow& row : rows) {
        if (row.title != title) continue;
        EXPECT_EQ(row.mark.toStdString(), shown.letter().toStdString()) << where;
        EXPECT_EQ(row.lines.join(u'|').toStdString(), shown.hold().told.toStdString()) << where;
        EXPECT_EQ(row.more.join(u'|').toStdString(), shown.hold().lift.toStdString()) << where;
        return;
    }
    ADD_FAILURE() << where << " does not say: " << title.toStdString();
}

/// Whether a row has the colony and these cells.
bool says(const std::vector<QStringList>& rows, const QString& colony, const QStringList& cells) {
    return std::ranges::any_of(rows, [&](const QStringList& row) {
        return row.contains(colony) &&
               std::ranges::all_of(cells, [&](const QString& cell) { return row.contains(cell); });
    });
}

void expectCard(const Shown& shown) {
    for (const ui::card::HoldText& text : shown.card().holds) {
        if (text.title != shown.title()) continue;
        EXPECT_EQ(text.letter.toStdString(), shown.letter().toStdString());
        EXPECT_EQ(text.because.toStdString(), shown.hold().told.toStdString());
        EXPECT_EQ(text.lift.toStdString(), shown.hold().lift.toStdString());
        return;
    }
    ADD_FAILURE() << "the card does not say: " << shown.title().toStdString();
}

void expectSame(const HoldBook& book, const char* on, const char* label, HoldKind kind) {
    const Shown shown(book, on, label, kind);
    ASSERT_TRUE(shown.stands());
    const auto plan = shown.plan();
    EXPECT_TRUE(plan.holdLetters.contains(shown.letter())) << plan.holdLetters.toStdString();
    EXPECT_TRUE(plan.holdWords.contains(shown.within())) << plan.holdWords.join(u'|').toStdString();
    EXPECT_TRUE(plan.spoken.contains(shown.within())) << "its tooltip: " << plan.spoken.toStdString();
    expectCard(shown);
    expectRow(shown.board(), shown, "the board");
    expectRow(shown.held(), shown, "the page Held");
    const QString worksheet = shown.sheet(report::Sheet::MergeDay);
    for (const QString& text : {shown.title(), shown.hold().told, shown.hold().lift})
        EXPECT_TRUE(worksheet.contains(text))
            << "worksheet, " << text.toStdString() << " in " << worksheet.toStdString();
    const QString tally = shown.sheet(report::Sheet::Tally);
    EXPECT_TRUE(tally.contains(shown.title())) << "tally sheet: " << tally.toStdString();
    EXPECT_TRUE(tally.contains(QLatin1Char(' ') + shown.letter() + QLatin1Char(' ')))
        << "its letter on the tally sheet";
    const auto report = shown.report();
    EXPECT_TRUE(says(report.rows, shown.name(), {shown.title() + QStringLiteral(".\n") + shown.hold().because()}));
    EXPECT_TRUE(says(report.fileRows, shown.name(), {shown.title(), shown.hold().because()})) << "as a file";
}

/// K1 and K2 in Home, H1 in Hill, all checked on 2026-06-01.
HoldBook checked() {
    HoldBook book;
    for (const char* label : {"K1", "K2"}) book.colony(label).check(label, QStringLiteral("2026-06-01"));
    return book.colony("H1", "Hill").check("H1", QStringLiteral("2026-06-01"));
}

TEST(SameHold, Order) {
    expectSame(checked().result("K1", QStringLiteral("2026-07-01"), "order", "inspector"), "2026-07-02", "K1",
               HoldKind::Order);
}

TEST(SameHold, OrderOfAYard) {
    expectSame(checked().ofYard("Hill", QStringLiteral("2026-07-01"), "order"), "2026-07-02", "H1", HoldKind::Order);
}

TEST(SameHold, FoulbroodConfirmed) {
    expectSame(checked().result("K1", QStringLiteral("2026-07-01"), "positive"), "2026-07-02", "K1",
               HoldKind::AfbConfirmed);
}

TEST(SameHold, FoulbroodSuspected) {
    expectSame(checked().sign("K1", QStringLiteral("2026-07-01")), "2026-07-02", "K1", HoldKind::AfbSuspected);
}

TEST(SameHold, ContactWithFoulbrood) {
    expectSame(checked().gift("K1", "H1", QStringLiteral("2026-06-20")).sign("K1", QStringLiteral("2026-07-01")),
               "2026-07-02", "H1", HoldKind::AfbContact);
}

TEST(SameHold, StoodWithFoulbrood) {
    expectSame(checked().sign("K1", QStringLiteral("2026-07-01")), "2026-07-02", "K2", HoldKind::AfbYard);
}

TEST(SameHold, EuropeanFoulbrood) {
    expectSame(checked().sign("K1", QStringLiteral("2026-07-01"), "efb"), "2026-07-02", "K1", HoldKind::Efb);
    expectSame(checked().gift("K1", "H1", QStringLiteral("2026-06-20")).sign("K1", QStringLiteral("2026-07-01"), "efb"),
               "2026-07-02", "H1", HoldKind::Efb);
}

TEST(SameHold, BroodInDoubt) {
    expectSame(checked().sign("K1", QStringLiteral("2026-07-01"), "brood-doubt"), "2026-07-02", "K1",
               HoldKind::BroodDoubt);
    expectSame(checked()
                   .antibiotic("K1", QStringLiteral("2026-03-01"))
                   .sign("K1", QStringLiteral("2026-07-01"), "brood-doubt"),
               "2026-07-02", "K1", HoldKind::BroodDoubt); // masked: the check that would lift it lies further off
}

TEST(SameHold, BroodNotChecked) {
    expectSame(HoldBook().colony("K1"), "2026-07-02", "K1", HoldKind::BroodNotChecked);
    expectSame(HoldBook().colony("K1").check("K1", QStringLiteral("2026-06-01"), 2, 6), "2026-07-02", "K1",
               HoldKind::BroodNotChecked);
    expectSame(checked().sign("K1", QStringLiteral("2026-07-01"), "efb"), "2026-07-02", "K1",
               HoldKind::BroodNotChecked);
}

} // namespace
