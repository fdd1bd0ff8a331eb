#include "core/edit/edits.h"
#include "core/edit/hive_row.h"
#include "core/edit/phrases.h"
#include "core/edit/put_right.h"
#include "tests/ui/hand.h"
#include "tests/ui/open_window.h"
#include "ui/entry/entry_page.h"
#include "ui/settings/phrases_page.h"
#include "ui/settings/settings_dialog.h"
#include "ui/visit/visit_form.h"

#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QProcess>
#include <QPushButton>
#include <QSettings>

#include <iostream>

namespace {

using core::TallyColumn;
using ui::visit::DraftJournal;

/// The page that visits are written down on, by keys alone.
struct WritingDown : tests::OpenWindow {
    std::unique_ptr<tests::Hand> hand;

    void SetUp() override {
        QSettings().clear();
        OpenWindow::SetUp();
        hand = std::make_unique<tests::Hand>(*window);
        open();
    }
    void open() const {
        hand->key(Qt::Key_3, Qt::ControlModifier);
        ASSERT_TRUE(page()->isVisible());
        ASSERT_TRUE(page()->grid()->line()) << "the first field has the keys";
        ASSERT_TRUE(page()->grid()->line()->hasFocus());
    }
    ui::entry::EntryPage* page() const { return window->findChild<ui::entry::EntryPage*>(); }
    ui::visit::VisitForm* form() const { return window->page()->form(); }
    /// "A2 brood": where the keys are.
    std::string where() const {
        const QModelIndex at = page()->grid()->currentIndex();
        const auto* model = page()->grid()->model();
        return at.siblingAtColumn(0).data().toString().toStdString() + " " +
               model->headerData(at.column(), Qt::Horizontal).toString().toStdString();
    }
    /// What is shown of a hive: its label's state, then its cells.
    std::string row(const char* label) const {
        const auto* model = page()->grid()->model();
        for (int r = 0; r < model->rowCount(); ++r) {
            if (model->index(r, 0).data().toString() != QLatin1StringView(label)) continue;
            std::string out = std::to_string(model->index(r, 0).data(ui::entry::EntryModel::StateRole).toInt());
            for (int c = 1; c < model->columnCount(); ++c)
                out += "|" + model->index(r, c).data().toString().toStdString();
            return out;
        }
        return "none";
    }
    QString journalPath() const { return DraftJournal(book.path(), window->desk()->session().bookId()).path(); }
    size_t visits(const char* label) const { return book.visitsOf(QLatin1StringView(label)).size(); }
    void enter() const { hand->key(Qt::Key_Return); }
};

TEST_F(WritingDown, GoesAlongTheWalkThroughWhatWasTypedBefore) {
    // typed before in this yard: above, queen, brood, check; a note is always offered
    EXPECT_EQ(where(), "A1 above");
    hand->type(QStringLiteral("4 1/4\te\t3\t3"));
    EXPECT_EQ(where(), "A1 check");
    EXPECT_EQ(row("A1"), "1|4 1/4|e|3|3|");
    enter();
    EXPECT_EQ(where(), "A1 note");
    EXPECT_EQ(visits("A1"), 1u) << "nothing is saved yet";
    enter();
    EXPECT_EQ(where(), "A2 above");
    EXPECT_EQ(row("A1"), "3|4.25|e|3|3|");
    const auto seen = book.visitsOf(QStringLiteral("A1"));
    ASSERT_EQ(seen.size(), 2u);
    EXPECT_EQ(seen[0].day, book.clock().day);
    EXPECT_EQ(seen[0].beesTop, core::Quarters{17});
    EXPECT_EQ(seen[0].queen, core::QueenSeen::Eggs);
    EXPECT_EQ(seen[0].broodChecked, 3);
    EXPECT_FALSE(seen[0].gross);
    EXPECT_EQ(window->desk()->chosen(), book.idOf(QStringLiteral("A2"))) << "the card follows";
    hand->key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(visits("A1"), 1u) << "one visit, one undo";
    EXPECT_EQ(row("A1"), "0|||||");
}

TEST_F(WritingDown, WhatCannotBeIsSaidBesideTheFieldAndStays) {
    hand->type(QStringLiteral("11"));
    EXPECT_EQ(row("A1"), "2|11||||");
    hand->key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(page()->answer().toStdString(), "The box has 10 frames.");
    EXPECT_EQ(where(), "A1 above");
    EXPECT_EQ(visits("A1"), 1u);
    hand->type(QStringLiteral("9\t5")); // what was typed is chosen whole; a number is no queen
    EXPECT_EQ(row("A1"), "2|9|5|||");
    hand->key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(where(), "A1 queen");
    EXPECT_EQ(page()->answer().toStdString().substr(0, 11), "One letter:");
    hand->type(QStringLiteral("n"));
    hand->key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(visits("A1"), 2u) << page()->answer().toStdString();
    EXPECT_EQ(where(), "A2 above");
}

TEST_F(WritingDown, ALabelIsTypedWhereTheSheetIsInAnotherOrder) {
    hand->key(Qt::Key_F9);
    hand->type(QStringLiteral("a5"));
    enter();
    EXPECT_EQ(where(), "A5 above");
    hand->key(Qt::Key_F9);
    hand->type(QStringLiteral("Z9"));
    enter();
    EXPECT_EQ(page()->answer().toStdString(), "No hive Z9 stands in this yard on that day.");
    hand->type(QStringLiteral("A2"));
    enter();
    EXPECT_EQ(where(), "A2 above");
}

TEST_F(WritingDown, EscapeLeavesTheCellThenTheRow) {
    hand->type(QStringLiteral("4\te"));
    hand->key(Qt::Key_Escape);
    EXPECT_EQ(row("A1"), "1|4||||") << "the cell as it was";
    hand->key(Qt::Key_Escape);
    EXPECT_FALSE(page()->answer().isEmpty());
    EXPECT_EQ(row("A1"), "1|4||||");
    hand->key(Qt::Key_Escape);
    EXPECT_EQ(row("A1"), "0|||||");
    EXPECT_FALSE(QFile::exists(journalPath()));
}

TEST_F(WritingDown, DayPeopleAndWeatherAreCarriedOver) {
    hand->key(Qt::Key_Escape);
    hand->type(QStringLiteral("13.9.\tSunny\tAna"));
    enter();
    EXPECT_EQ(where(), "A1 above");
    for (const char* label : {"A1", "A2"}) {
        hand->type(QStringLiteral("4"));
        hand->key(Qt::Key_Return, Qt::ControlModifier);
        ASSERT_EQ(visits(label), 2u) << page()->answer().toStdString();
        const core::Visit v = book.visitsOf(QLatin1StringView(label))[1];
        EXPECT_EQ(v.day, core::dayOf(2026, 9, 13));
        EXPECT_EQ(v.by.toStdString(), "Ana");
        EXPECT_EQ(v.note.toStdString(), "Sunny.");
    }
    hand->type(QStringLiteral("4\t\t\t\tcalm"));
    EXPECT_EQ(row("A3"), "1|4||||Sunny. calm") << "three fields passed, the note goes on";
}

TEST_F(WritingDown, FormAndGridAreOneVisit) {
    hand->type(QStringLiteral("4\te"));
    hand->key(Qt::Key_L, Qt::ControlModifier);
    ASSERT_TRUE(form()->isVisible()) << said();
    EXPECT_EQ(form()->draft()[ui::visit::Field::BeesTop].toStdString(), "4");
    EXPECT_EQ(form()->draft().queen, core::QueenSeen::Eggs);
    hand->type(QStringLiteral("½")); // the first field of the form has the keys
    EXPECT_EQ(row("A1"), "1|4½|e|||");
    page()->grid()->setFocus();
    hand->key(Qt::Key_Down);
    EXPECT_EQ(form()->place().label.toStdString(), "A2") << "the form turns with the row";
    hand->type(QStringLiteral("n"));
    EXPECT_EQ(form()->draft().queen, core::QueenSeen::None);
    EXPECT_EQ(row("A1").substr(0, 1), "1") << "what was typed of A1 is still there";
}

TEST_F(WritingDown, HalfTypedRowsAreThereAfterACrash) {
    hand->type(QStringLiteral("4\te"));
    hand->key(Qt::Key_Down);
    hand->type(QStringLiteral("x"));
    const QString file = journalPath();
    ASSERT_TRUE(QFile::copy(file, file + QStringLiteral(".then")));
    hand.reset();
    window.reset();
    QFile::remove(file);
    ASSERT_TRUE(QFile::rename(file + QStringLiteral(".then"), file));
    SetUp();
    EXPECT_EQ(row("A1"), "1|4|e|||");
    EXPECT_EQ(row("A2"), "2||x|||");
    hand->key(Qt::Key_Return, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(visits("A1"), 2u) << "those that can be are saved together";
    EXPECT_EQ(visits("A2"), 1u);
    EXPECT_EQ(where(), "A2 queen");
}

TEST_F(WritingDown, FoulbroodIsAskedAboutOnceAndColumnsAreChosenByKeys) {
    hand->key(Qt::Key_F4);
    QMenu* columns = page()->head()->columns();
    ASSERT_TRUE(columns->isVisible());
    for (int i = 0; i < 8; ++i) hand->key(Qt::Key_Down); // above, below, 2: above, 2: below, queen, brood, check, signs
    enter();
    hand->type(QStringLiteral("4\t\t\t\ta"));
    EXPECT_EQ(row("A1"), "1|4||||a|");
    hand->key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(visits("A1"), 1u);
    EXPECT_EQ(page()->answer().toStdString(), "American foulbrood seen. Save all the same? Enter again saves.");
    hand->key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(visits("A1"), 2u);
    EXPECT_TRUE(book.visitsOf(QStringLiteral("A1"))[0].signs.has(core::Sign::Afb));
}

TEST_F(WritingDown, SavedTogetherEachOddOneIsAskedAboutWhereItIsSeen) {
    page()->work().type(0, TallyColumn::Mites, QStringLiteral("8/3"));
    page()->work().type(1, TallyColumn::Mites, QStringLiteral("9/3"));
    const auto saveAll = [&] { hand->key(Qt::Key_Return, Qt::ControlModifier | Qt::ShiftModifier); };
    saveAll();
    EXPECT_EQ(visits("A1") + visits("A2"), 2u);
    EXPECT_EQ(page()->answer().toStdString().substr(0, 7), "8 mites");
    saveAll();
    EXPECT_EQ(visits("A1"), 2u);
    EXPECT_EQ(visits("A2"), 1u) << "its question was not seen yet";
    EXPECT_EQ(page()->answer().toStdString().substr(0, 7), "9 mites");
    saveAll();
    EXPECT_EQ(visits("A2"), 2u);
}

TEST_F(WritingDown, WhatWasThrownAwayIsAskedAboutAnew) {
    const auto begin = [&] { page()->work().type(0, TallyColumn::Signs, QStringLiteral("a")); };
    begin();
    EXPECT_EQ(page()->work().save(0).kind, ui::entry::EntryWork::Answer::Kind::Asked);
    page()->work().throwAway(0);
    begin();
    EXPECT_EQ(page()->work().save(0).kind, ui::entry::EntryWork::Answer::Kind::Asked);
    EXPECT_EQ(visits("A1"), 1u);
}

TEST_F(WritingDown, WhatIsTypedIsSeenWholeBesideTheVisitBefore) {
    const auto room = [&] {
        const QLineEdit* line = page()->grid()->line();
        return line->width() - line->fontMetrics().horizontalAdvance(line->text());
    };
    hand->type(QStringLiteral("10 1/4"));
    EXPECT_GE(room(), 8);
    for (int i = 0; i < 6; ++i) hand->key(Qt::Key_Backspace);
    EXPECT_LT(room(), page()->grid()->columnWidth(1) - 8) << "the figure before is seen again";
}

TEST_F(WritingDown, WhatIsHalfTypedOfAnotherDayIsNamed) {
    const auto toDay = [&](const char* day) {
        hand->key(Qt::Key_Escape);
        hand->type(QString::fromLatin1(day));
        enter();
    };
    toDay("14.9.");
    hand->type(QStringLiteral("9"));
    EXPECT_EQ(row("A1").substr(0, 3), "1|9");
    hand->key(Qt::Key_Down); // Escape there throws nothing away
    toDay("15.9.");
    EXPECT_EQ(row("A1").substr(0, 2), "0|") << "it is the change of the visit of the day before";
    const auto* count = page()->findChild<QLabel*>(QStringLiteral("entryCount"));
    EXPECT_TRUE(count->text().contains(QStringLiteral("half typed elsewhere: A1 of 14 Sep")))
        << count->text().toStdString();
}

TEST_F(WritingDown, MitesInBeesAreTypedAsTheyStandOnTheSheet) {
    ui::entry::EntryWork& work = page()->work();
    work.type(0, TallyColumn::Mites, QStringLiteral("3/300"));
    EXPECT_EQ(work.text(0, TallyColumn::Mites).toStdString(), "3");
    EXPECT_EQ(work.text(0, TallyColumn::Sample).toStdString(), "300");
    work.type(0, TallyColumn::Mites, QStringLiteral("4"));
    EXPECT_EQ(work.text(0, TallyColumn::Sample).toStdString(), "300");
}

TEST_F(WritingDown, AVisitOfTheDayIsChangedInItsRow) {
    hand->key(Qt::Key_Escape);
    hand->type(QStringLiteral("14.9."));
    enter();
    EXPECT_EQ(row("A1"), "3|3|e|4|4|");
    hand->type(QStringLiteral("3.5"));
    EXPECT_EQ(row("A1"), "1|3.5|e|4|4|");
    hand->key(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(visits("A1"), 1u);
    EXPECT_EQ(book.visitsOf(QStringLiteral("A1"))[0].beesTop, core::Quarters{14}) << page()->answer().toStdString();
}

TEST_F(WritingDown, AChangeOfAVisitThatIsTakenBackIsTypedStill) {
    hand->key(Qt::Key_Escape);
    hand->type(QStringLiteral("14.9."));
    enter();
    hand->type(QStringLiteral("5"));
    EXPECT_EQ(row("A1"), "1|5|e|4|4|");
    const core::VisitId was = book.visitsOf(QStringLiteral("A1"))[0].id;
    window->desk()->save(QStringLiteral("x"),
                         [&](const core::edit::EditContext& c) { return core::edit::takeBackVisit(c, was); });
    ASSERT_EQ(visits("A1"), 0u);
    EXPECT_EQ(row("A1"), "1|5|e|4|4|") << "as a new visit of that day";
    hand->key(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(visits("A1"), 1u) << page()->answer().toStdString();
    EXPECT_EQ(book.visitsOf(QStringLiteral("A1"))[0].beesTop, core::Quarters{20});
    EXPECT_EQ(row("A1"), "3|5|e|4|4|");
}

TEST_F(WritingDown, ABriefWordAndF2AreASentence) {
    const auto note = [&] { return row("A1").substr(row("A1").rfind('|') + 1); };
    hand->type(QStringLiteral("\t\t\t\tcalm, q"));
    hand->key(Qt::Key_F2);
    EXPECT_EQ(said(), "There are no quick sentences yet: Settings, Quick sentences.");
    for (const auto& [brief, sentence] : {std::pair("q", "Queen seen, laying well."), {"qn", "No queen found."}})
        window->desk()->save(QStringLiteral("x"), [&](const core::edit::EditContext& c) {
            return core::edit::addPhrase(c, QString::fromLatin1(brief), QString::fromLatin1(sentence));
        });
    hand->key(Qt::Key_F2);
    EXPECT_EQ(note(), "calm, Queen seen, laying well.");
    hand->type(QStringLiteral(" "));
    hand->key(Qt::Key_F2); // no word: the list of all
    ASSERT_NE(QApplication::activePopupWidget(), nullptr);
    hand->key(Qt::Key_Down);
    enter();
    EXPECT_EQ(note(), "calm, Queen seen, laying well. No queen found.");
    hand->key(Qt::Key_L, Qt::ControlModifier);
    ASSERT_TRUE(form()->isVisible());
    EXPECT_EQ(form()->note()->text().toStdString(), note());
    form()->note()->setFocus();
    form()->note()->end(false);
    hand->type(QStringLiteral(" Q"));
    hand->key(Qt::Key_F2);
    EXPECT_EQ(note(), "calm, Queen seen, laying well. No queen found. Queen seen, laying well.");
}

TEST_F(WritingDown, SentencesAreKeptInTheSettings) {
    hand->key(Qt::Key_Comma, Qt::ControlModifier);
    auto* page = window->findChild<ui::settings::PhrasesPage*>();
    ASSERT_NE(page, nullptr);
    window->findChild<ui::settings::SettingsDialog*>()->showPage(page);
    const auto type = [](QLineEdit* line, const char* text) {
        line->setFocus();
        line->selectAll();
        QTest::keyClicks(line, QString::fromLatin1(text));
    };
    type(page->brief(), "q");
    type(page->sentence(), "Queen seen.");
    QTest::keyClick(page->sentence(), Qt::Key_Return);
    EXPECT_EQ(page->list()->count(), 1) << page->problem().toStdString();
    type(page->brief(), "Q");
    type(page->sentence(), "Other.");
    QTest::keyClick(page->sentence(), Qt::Key_Return);
    EXPECT_EQ(page->problem().toStdString(), "q stands for another sentence already: “Queen seen.”");
    EXPECT_EQ(page->sentence()->text().toStdString(), "Other.") << "what was typed stays";
    page->list()->setCurrentRow(0);
    EXPECT_EQ(page->sentence()->text().toStdString(), "Queen seen.");
    type(page->sentence(), "Queen seen, marked.");
    QTest::mouseClick(page->changeButton(), Qt::LeftButton);
    EXPECT_EQ(page->list()->item(0)->text().toStdString(), "q · Queen seen, marked.");
    QTest::mouseClick(page->takeBackButton(), Qt::LeftButton);
    EXPECT_EQ(page->list()->count(), 0);
    EXPECT_EQ(book.history().front().toStdString(), "Took the quick sentence q from the book");
}

/// Sixty hives in a row, never visited.
struct SixtyVisits : ::testing::Test {
    QTemporaryDir folder;
    tests::FixedClock clock;
    tests::TestDialogs dialogs;
    QString path = folder.filePath(QStringLiteral("sixty.yardwright"));

    void SetUp() override {
        QSettings().clear();
        namespace edit = core::edit;
        const auto session = edit::Session::create(path, clock);
        core::Yard yard;
        yard.name = QStringLiteral("Kiln Field");
        session->apply([&](const edit::EditContext& c) { return edit::newYard(c, yard); });
        edit::HiveRow row;
        row.yard = session->yards().front().id;
        row.count = 60;
        row.firstLabel = QStringLiteral("H1");
        row.spacingMm = 1500;
        row.bearingDeg = 90;
        row.box = session->boxKinds().front().id;
        row.since = core::dayOf(2026, 5, 10);
        session->apply([&](const edit::EditContext& c) { return edit::addHiveRow(c, row); });
    }
    static QString strength(int i) { return core::framesText({4 + (i * 7) % 33}); }
    static QChar queen(int i) { return QStringLiteral("senve")[i % 5]; }
    static QString brood(int i) { return QString::number(1 + i % 8); }
    static QString weight(int i) { return QStringLiteral("%1.%2").arg(20 + i % 25).arg(i % 10); }
};

TEST_F(SixtyVisits, ByKeysAloneAreInTheBookOfAnotherProgram) {
    ui::window::MainWindow window(clock, dialogs);
    ASSERT_TRUE(window.openBook(path));
    window.resize(1440, 900);
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
    window.activateWindow();
    tests::Hand hand(window);
    hand.key(Qt::Key_3, Qt::ControlModifier);
    const auto* model = window.findChild<ui::entry::EntryGrid*>()->model();
    QStringList labels; // along the walk, as they would stand on the sheet
    for (int i = 0; i < model->rowCount(); ++i) labels << model->index(i, 0).data().toString();
    ASSERT_EQ(labels.size(), 60);
    const int before = hand.presses();
    for (int i = 0; i < 60; ++i) { // below and note are passed over
        hand.type(strength(i) + QStringLiteral("\t\t") + queen(i) + u'\t' + brood(i) + u'\t' + brood(i) + u'\t' +
                  weight(i));
        hand.key(Qt::Key_Return);
        hand.key(Qt::Key_Return);
    }
    const int presses = hand.presses() - before;
    std::cout << "key presses a visit: " << presses / 60.0 << '\n';
    EXPECT_LT(presses, 25 * 60);
    EXPECT_EQ(hand.clicks(), 0);
#ifdef YW_PROGRAM
    QProcess other;
    other.start(QStringLiteral(YW_PROGRAM), {QStringLiteral("export"), path, QStringLiteral("--to"), folder.path()});
    ASSERT_TRUE(other.waitForFinished(60000));
    EXPECT_EQ(other.exitCode(), 0) << other.readAllStandardError().toStdString();
    QFile file(folder.filePath(QStringLiteral("visits.csv")));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    QStringList lines = QString::fromUtf8(file.readAll()).split(QStringLiteral("\r\n"), Qt::SkipEmptyParts);
    if (lines.size() == 1) lines = lines.front().split(u'\n', Qt::SkipEmptyParts);
    ASSERT_EQ(lines.size(), 61);
    const QStringList columns = lines.front().split(u',');
    const auto cell = [&](const QString& line, const char* name) {
        return line.split(u',').value(columns.indexOf(QLatin1StringView(name))).toStdString();
    };
    for (const QString& line : lines.mid(1)) {
        const auto i = static_cast<int>(labels.indexOf(QString::fromStdString(cell(line, "colony"))));
        ASSERT_GE(i, 0) << line.toStdString();
        EXPECT_EQ(cell(line, "date"), "2026-09-15");
        EXPECT_EQ(cell(line, "bees_top"), strength(i).toStdString());
        EXPECT_EQ(cell(line, "queen"), core::word(*core::queenOfLetter(queen(i))).toStdString());
        EXPECT_EQ(cell(line, "brood_frames"), brood(i).toStdString());
        EXPECT_EQ(cell(line, "brood_checked"), brood(i).toStdString());
        EXPECT_EQ(QString::fromStdString(cell(line, "gross_kg")).toDouble(), weight(i).toDouble());
    }
#endif
}

} // namespace
