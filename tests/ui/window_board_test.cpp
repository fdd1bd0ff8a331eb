#include "tests/ui/arguing.h"

#include <QAction>
#include <QContextMenuEvent>
#include <QFile>
#include <QTemporaryDir>

// The plan of a merge day argued with. Sources: own calculation from the rules' text; the window's own sentences.

namespace {

using core::MergeAsk;
using ui::board::RowKind;

struct OnTheBoard : tests::Arguing {
    const core::rules::Union& first() const { return window->desk()->reading().plan.unions.front(); }
    QString label(core::ColonyIx c) const { return window->desk()->reading().snapshot.colony(c).label; }
    int firstRow() const { return list()->rows().rowAbout(window->desk()->reading().snapshot.colony(first().host).id); }
    /// Two that the plan does not unite, neither held.
    std::pair<const char*, const char*> apart() const {
        const char* const free[] = {"A1", "A2", "A4", "A5", "A6"};
        const auto& r = window->desk()->reading();
        for (const char* a : free)
            for (const char* b : free) {
                const auto* u = r.unionOf(*r.find(id(a)));
                if (a < b && !(u && (u->moved == *r.find(id(b)) || u->host == *r.find(id(b))))) return {a, b};
            }
        return {};
    }
    bool together(const char* a, const char* b) const {
        const auto& r = window->desk()->reading();
        const auto* u = r.unionOf(*r.find(id(a)));
        return u && (u->moved == *r.find(id(b)) || u->host == *r.find(id(b)));
    }
};

TEST_F(OnTheBoard, TwoSelectedOnThePlanArePinnedByKeyAndTheRestIsPlannedAnew) {
    const auto [a, b] = apart();
    ASSERT_NE(a, nullptr) << unions();
    const std::string before = unions();
    selectTwo(a, b);
    key(Qt::Key_I, Qt::ControlModifier);
    EXPECT_TRUE(together(a, b)) << unions() << said();
    EXPECT_NE(rows().find("pinned"), std::string::npos) << rows();
    EXPECT_EQ(asked().day.revision, 1);
    ASSERT_EQ(kept().size(), 1U) << "kept in the file at once";
    EXPECT_EQ(plan()->scene().unions.size(), window->desk()->reading().plan.unions.size()) << "the arcs follow";
    EXPECT_NE(difference().find("Came: "), std::string::npos) << difference();
    EXPECT_NE(difference().find("before "), std::string::npos) << difference();
    key(Qt::Key_I, Qt::ControlModifier);
    EXPECT_EQ(unions(), before) << "the same again unpins";
    EXPECT_EQ(asked().day.revision, 2);
    EXPECT_TRUE(kept().empty());
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(together(a, b)) << "undone: pinned again";
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(asked().day.id.value, 0) << "nothing is kept of the day any more";
}

TEST_F(OnTheBoard, APairIsForbiddenByItsButtonAndAllowedAgain) {
    const std::string before = unions();
    const QString moved = label(first().moved), host = label(first().host);
    press(firstRow(), MergeAsk::Forbid);
    EXPECT_FALSE(together(qPrintable(moved), qPrintable(host)));
    EXPECT_NE(difference().find(QStringLiteral("Went: %1 → %2").arg(moved, host).toStdString()), std::string::npos)
        << difference();
    const int row = rowOf(RowKind::Asked, "not together");
    press(row, MergeAsk::Forbid);
    EXPECT_EQ(unions(), before);
    EXPECT_EQ(rowOf(RowKind::Asked, "not together"), -1) << rows();
}

TEST_F(OnTheBoard, KeysOfTheListPinForbidAndTurn) {
    goTo(firstRow());
    const QString moved = label(first().moved), host = label(first().host);
    key(Qt::Key_P);
    EXPECT_TRUE(list()->rows().at(firstRow()).askedText.contains(QStringLiteral("pinned"))) << rows();
    goTo(list()->rows().rowAbout(id(qPrintable(host))));
    key(Qt::Key_H);
    const auto& r = window->desk()->reading();
    const auto* u = r.unionOf(*r.find(id(qPrintable(host))));
    ASSERT_NE(u, nullptr);
    EXPECT_EQ(label(u->host), moved) << "turned round";
    EXPECT_NE(difference().find("Turned round: "), std::string::npos) << difference();
    goTo(list()->rows().rowAbout(id(qPrintable(moved))));
    const core::ColonyIx upper = u->upper;
    key(Qt::Key_B);
    const auto* again = window->desk()->reading().unionOf(*window->desk()->reading().find(id(qPrintable(host))));
    ASSERT_NE(again, nullptr);
    EXPECT_NE(label(again->upper), label(upper));
    EXPECT_NE(difference().find("Boxes turned: "), std::string::npos) << difference();
    EXPECT_EQ(asked().choices.size(), 3U);
    EXPECT_EQ(asked().day.revision, 3);
}

TEST_F(OnTheBoard, OneIsLeftOutWithAWordWhy) {
    goTo(firstRow());
    const QString host = label(first().host);
    key(Qt::Key_E, Qt::ControlModifier);
    ASSERT_TRUE(board()->questions()->line()->isVisible());
    type("requeened last week");
    key(Qt::Key_Return);
    EXPECT_FALSE(board()->questions()->line()->isVisible());
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(kept()[0].note, QStringLiteral("requeened last week"));
    EXPECT_EQ(kept()[0].colony, id(qPrintable(host))) << "the one chosen";
    EXPECT_NE(rows().find("left out: requeened last week"), std::string::npos) << rows();
    EXPECT_EQ(window->desk()->reading().unionOf(*window->desk()->reading().find(id(qPrintable(host)))), nullptr);
    goTo(rowOf(RowKind::Asked, "left out"));
    key(Qt::Key_Delete);
    EXPECT_TRUE(kept().empty()) << "taken back by a key";
}

TEST_F(OnTheBoard, EscapeLeavesNobodyOut) {
    goTo(firstRow());
    key(Qt::Key_L);
    ASSERT_TRUE(board()->questions()->line()->isVisible());
    type("no");
    key(Qt::Key_Escape);
    EXPECT_FALSE(board()->questions()->line()->isVisible());
    EXPECT_TRUE(kept().empty());
    EXPECT_EQ(QApplication::focusWidget(), list());
}

TEST_F(OnTheBoard, ALimitIsUnionsOrHours) {
    ASSERT_GE(window->desk()->reading().plan.unions.size(), 2U);
    key(Qt::Key_M, Qt::ControlModifier);
    ASSERT_TRUE(board()->questions()->line()->isVisible());
    type("a few");
    key(Qt::Key_Return);
    EXPECT_TRUE(board()->questions()->line()->problem().contains(QStringLiteral("“a few” is no limit")));
    EXPECT_EQ(board()->questions()->line()->line()->text(), QStringLiteral("a few")) << "what was typed stays typed";
    EXPECT_EQ(asked().day.id.value, 0) << "and nothing was changed";
    board()->questions()->line()->line()->selectAll();
    type("1");
    key(Qt::Key_Return);
    EXPECT_EQ(window->desk()->reading().plan.unions.size(), 1U);
    EXPECT_EQ(asked().day.most, 1);
    EXPECT_NE(difference().find("Now 1 union"), std::string::npos) << difference();
    key(Qt::Key_M, Qt::ControlModifier);
    type("15 min");
    key(Qt::Key_Return);
    EXPECT_EQ(asked().day.minutes, 15);
    EXPECT_FALSE(asked().day.most);
    EXPECT_EQ(window->desk()->reading().plan.unions.size(), 1U) << "12 minutes a union of two people";
    key(Qt::Key_M, Qt::ControlModifier);
    EXPECT_EQ(board()->questions()->line()->line()->text(), QStringLiteral("15 min"));
    key(Qt::Key_Backspace);
    key(Qt::Key_Return);
    EXPECT_FALSE(asked().day.minutes);
    EXPECT_GE(window->desk()->reading().plan.unions.size(), 2U);
}

TEST_F(OnTheBoard, AHeldColonyIsNotPinnedAndTheRuleSaysWhy) {
    selectTwo("A1", "A3");
    key(Qt::Key_I, Qt::ControlModifier);
    EXPECT_TRUE(kept().empty());
    EXPECT_NE(said().find("A1 + A3 cannot be pinned"), std::string::npos) << said();
    EXPECT_NE(said().find("4.7.2"), std::string::npos) << said();
}

TEST_F(OnTheBoard, WhatCanBeNoMoreIsSaidAndDroppedByOneButton) {
    selectTwo("A1", "A2");
    key(Qt::Key_I, Qt::ControlModifier);
    ASSERT_TRUE(together("A1", "A2"));
    core::Visit visit;
    visit.colony = id("A2");
    visit.day = book.clock().day;
    visit.signs.add(core::Sign::Afb);
    visit.queen = core::QueenSeen::Eggs;
    session().apply([&](const core::edit::EditContext& c) { return core::edit::logVisit(c, visit); });
    EXPECT_FALSE(together("A1", "A2"));
    ASSERT_TRUE(board()->notices()->unmet()->isVisible());
    EXPECT_TRUE(board()->notices()->unmet()->text().contains(QStringLiteral("A1")))
        << board()->notices()->unmet()->text().toStdString();
    EXPECT_EQ(kept().size(), 1U) << "never dropped silently";
    QTest::mouseClick(board()->notices()->drop(), Qt::LeftButton);
    EXPECT_TRUE(kept().empty());
    EXPECT_FALSE(board()->notices()->unmet()->isVisible());
    EXPECT_TRUE(window->desk()->reading().holdsOf(*window->desk()->reading().find(id("A2"))).size() > 0)
        << "the hold stays";
}

TEST_F(OnTheBoard, WhyNotOfTwoSelectedAndOfTwoTyped) {
    selectTwo("A1", "A3");
    key(Qt::Key_Y, Qt::ControlModifier);
    ASSERT_TRUE(board()->questions()->whyNotView()->isVisible());
    EXPECT_TRUE(board()->questions()->whyNotView()->text().contains(QStringLiteral("4.7.2")))
        << board()->questions()->whyNotView()->text().toStdString();
    key(Qt::Key_Escape);
    EXPECT_FALSE(board()->questions()->whyNotView()->isVisible());
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A1"));
    key(Qt::Key_Y, Qt::ControlModifier);
    ASSERT_TRUE(board()->questions()->line()->isVisible());
    EXPECT_EQ(board()->questions()->line()->line()->text(), QStringLiteral("A1 + "));
    type("nobody");
    key(Qt::Key_Return);
    EXPECT_TRUE(board()->questions()->line()->problem().contains(QStringLiteral("No living colony is called nobody")))
        << board()->questions()->line()->problem().toStdString();
    board()->questions()->line()->line()->selectAll();
    type("a1 a2");
    key(Qt::Key_Return);
    ASSERT_TRUE(board()->questions()->whyNotView()->isVisible());
    EXPECT_FALSE(board()->questions()->line()->isVisible());
    EXPECT_TRUE(board()->questions()->whyNotView()->text().contains(QStringLiteral("may unite")))
        << board()->questions()->whyNotView()->text().toStdString();
}

TEST_F(OnTheBoard, ARowsMenuOffersTheSame) {
    goTo(firstRow());
    QContextMenuEvent asked(QContextMenuEvent::Keyboard, {}, {});
    QApplication::sendEvent(list()->viewport(), &asked);
    auto* menu = board()->findChild<QMenu*>(QStringLiteral("boardMenu"));
    ASSERT_NE(menu, nullptr);
    QStringList texts;
    QAction* forbid = nullptr;
    for (QAction* a : menu->actions()) {
        texts << a->text();
        if (a->text().startsWith(QStringLiteral("Forbid "))) forbid = a;
    }
    ASSERT_NE(forbid, nullptr) << texts.join(u'|').toStdString();
    EXPECT_EQ(texts.filter(QStringLiteral("Leave ")).size(), 2) << texts.join(u'|').toStdString();
    forbid->trigger();
    menu->close();
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(kept()[0].what, MergeAsk::Forbid);
}

TEST_F(OnTheBoard, ADayThatIsWrittenBackIsClosedToWishes) {
    core::edit::StripClose strip;
    strip.yard = *window->desk()->yard();
    strip.day = book.clock().day;
    strip.moved = window->desk()->reading().snapshot.colony(first().moved).id;
    strip.host = window->desk()->reading().snapshot.colony(first().host).id;
    strip.outcome = core::StripOutcome::NotDone;
    strip.note = QStringLiteral("rain");
    session().apply([&](const core::edit::EditContext& c) { return core::edit::closeStrip(c, strip); });
    EXPECT_TRUE(board()->notices()->closing()->isVisible());
    EXPECT_TRUE(board()->notices()->closing()->text().contains(QStringLiteral("written back")));
    for (int i = 0; i < list()->rows().rowCount(); ++i) EXPECT_TRUE(list()->rows().at(i).offers.empty()) << i;
    key(Qt::Key_M, Qt::ControlModifier);
    EXPECT_FALSE(board()->questions()->line()->isVisible());
    EXPECT_NE(said().find("written back"), std::string::npos) << said();
}

TEST_F(OnTheBoard, TheDifferenceStaysUntilTheNextChangeAndGoesWithTheDay) {
    press(firstRow(), MergeAsk::Pin);
    EXPECT_NE(difference().find("stays as it was"), std::string::npos) << difference();
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A6"));
    EXPECT_NE(difference(), "") << "choosing a hive changes nothing";
    emit board()->dayAsked(book.clock().day + 2);
    EXPECT_EQ(difference(), "");
    EXPECT_EQ(asked().day.id.value, 0) << "another day asks for itself";
    EXPECT_EQ(unions().empty(), false);
}

TEST_F(OnTheBoard, ARowChosenIsTheHiveChosen) {
    const int row = firstRow();
    QTest::mouseClick(list()->viewport(), Qt::LeftButton, {},
                      list()->visualRect(list()->rows().index(row)).topLeft() + QPoint(60, 14));
    EXPECT_EQ(window->desk()->chosen(), window->desk()->reading().snapshot.colony(first().host).id);
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A3"));
    ASSERT_TRUE(list()->current());
    EXPECT_TRUE(list()->rows().at(*list()->current()).about(id("A3")));
}

TEST_F(OnTheBoard, ThePlansMenuOffersItOfTheHiveClicked) {
    const QString host = label(first().host);
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at(qPrintable(host)));
    const QPoint where = at(qPrintable(host));
    QContextMenuEvent asked(QContextMenuEvent::Mouse, where, plan()->mapToGlobal(where));
    QApplication::sendEvent(plan(), &asked);
    auto* menu = window->page()->findChild<QMenu*>(QStringLiteral("planMenu"));
    ASSERT_NE(menu, nullptr);
    QAction* pin = nullptr;
    for (QAction* a : menu->actions())
        if (a->text().contains(QStringLiteral("Pin the pair"))) pin = a;
    ASSERT_NE(pin, nullptr);
    EXPECT_TRUE(pin->isEnabled());
    pin->trigger();
    menu->close();
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(kept()[0].what, MergeAsk::Pin);
}

TEST_F(OnTheBoard, MorePinsThanTheLimitStayAndTheLimitIsDroppedByTheButton) {
    selectTwo("A1", "A2");
    key(Qt::Key_I, Qt::ControlModifier);
    selectTwo("A4", "A5");
    key(Qt::Key_I, Qt::ControlModifier);
    key(Qt::Key_M, Qt::ControlModifier);
    type("1");
    key(Qt::Key_Return);
    EXPECT_TRUE(together("A1", "A2") && together("A4", "A5")) << unions();
    ASSERT_TRUE(board()->notices()->unmet()->isVisible());
    EXPECT_TRUE(board()->notices()->unmet()->text().contains(QStringLiteral("2 unions are pinned")))
        << board()->notices()->unmet()->text().toStdString();
    key(Qt::Key_X, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_FALSE(asked().day.most);
    EXPECT_EQ(kept().size(), 2U) << "the pins stay";
    EXPECT_FALSE(board()->notices()->unmet()->isVisible());
}

TEST_F(OnTheBoard, AWishOutlivesAKillAndIsThereWhenTheBookIsOpenedAgain) {
    press(firstRow(), MergeAsk::Forbid);
    const std::string asFirst = unions();
    QTemporaryDir copy;
    const QString path = copy.filePath(QStringLiteral("copy.yardwright"));
    ASSERT_TRUE(QFile::copy(book.path(), path)) << "as a crash would leave it";
    tests::TestDialogs none;
    ui::window::MainWindow second(book.clock(), none);
    ASSERT_TRUE(second.openBook(path));
    second.setPlace(ui::window::Place::MergeDay);
    const auto& r = second.desk()->reading();
    QStringList out;
    for (const auto& u : r.plan.unions)
        out << r.snapshot.colony(u.moved).label + u'>' + r.snapshot.colony(u.host).label;
    EXPECT_EQ(out.join(u' ').toStdString(), asFirst);
    EXPECT_EQ(second.page()->board()->merge().asked().choices.size(), 1U);
}

} // namespace
