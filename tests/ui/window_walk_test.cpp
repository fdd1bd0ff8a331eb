#include "tests/ui/picking.h"
#include "ui/pick/walking_order.h"
#include "ui/visit/visit_form.h"
#include "ui/window/plan_paper.h"

#include <QAction>
#include <QContextMenuEvent>
#include <QFile>
#include <QImage>
#include <QLabel>
#include <QMenu>

namespace {

/// Several hives, and what is done with them together.
struct WithSeveral : tests::Picking {
    ui::visit::VisitForm* form() const { return window->page()->form(); }
    std::string step() const {
        const auto* label = form()->findChild<QLabel*>(QStringLiteral("visitStep"));
        return label && label->isVisible() ? label->text().toStdString() : std::string();
    }
    void select(std::initializer_list<const char*> labels) const {
        bool first = true;
        for (const char* label : labels) {
            QTest::mouseClick(plan(), Qt::LeftButton, first ? Qt::NoModifier : Qt::ControlModifier, at(label));
            first = false;
        }
    }
    void walk() const { QTest::keyClick(window.get(), Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier); }
    size_t visits(const char* label) const { return book.visitsOf(QLatin1StringView(label)).size(); }
    QMenu* menuAt(const QPoint& where, QContextMenuEvent::Reason why = QContextMenuEvent::Mouse) const {
        QContextMenuEvent asked(why, where, plan()->mapToGlobal(where));
        QApplication::sendEvent(plan(), &asked);
        return window->findChild<QMenu*>(QStringLiteral("planMenu"));
    }
    static bool offers(const QMenu& menu, const QAction* command) { return menu.actions().contains(command); }
};

TEST_F(WithSeveral, TheirVisitsFollowOneAnotherFromTheGate) {
    select({"A5", "A2", "A4"});
    walk();
    ASSERT_TRUE(form()->isVisible()) << said();
    // the gate is at 0, 0 and the hives stand east of it in a row: out and back, first the nearer (own calculation)
    EXPECT_EQ(form()->place().label.toStdString(), "A2");
    EXPECT_EQ(step().substr(0, 6), "1 of 3");
    EXPECT_EQ(said(), "1 of 3: visit of A2.");
    EXPECT_EQ(chosen(), "A2");
    EXPECT_EQ(selected(), "A2 A4 A5") << "they stay selected";
    type("4");
    key(Qt::Key_Return);
    EXPECT_EQ(form()->place().label.toStdString(), "A4");
    EXPECT_EQ(step().substr(0, 6), "2 of 3");
    EXPECT_FALSE(form()->dirty()) << "a fresh form";
    type("5");
    key(Qt::Key_Return);
    EXPECT_EQ(form()->place().label.toStdString(), "A5");
    type("6");
    key(Qt::Key_Return);
    EXPECT_FALSE(form()->isVisible());
    EXPECT_EQ(said(), "The walk is done: 3 of 3 hives visited.");
    for (const char* label : {"A2", "A4", "A5"}) EXPECT_EQ(visits(label), 2u) << label;
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(visits("A5"), 1u) << "each visit is one undo step";
    EXPECT_EQ(visits("A4"), 2u);
}

TEST_F(WithSeveral, AHiveIsPassedOverButNoTyping) {
    select({"A1", "A2"});
    walk();
    ASSERT_EQ(form()->place().label.toStdString(), "A1");
    type("4");
    walk();
    EXPECT_EQ(form()->place().label.toStdString(), "A1");
    EXPECT_EQ(said(), "This visit is not saved: Enter saves it and goes on.");
    key(Qt::Key_Backspace);
    walk();
    EXPECT_EQ(form()->place().label.toStdString(), "A2");
    walk();
    EXPECT_FALSE(form()->isVisible());
    EXPECT_EQ(said(), "The walk is done: 0 of 2 hives visited.");
    EXPECT_EQ(visits("A1"), 1u);
}

TEST_F(WithSeveral, EscapeLeavesTheWalk) {
    select({"A1", "A2", "A3"});
    walk();
    type("4");
    key(Qt::Key_Return);
    ASSERT_EQ(form()->place().label.toStdString(), "A2");
    key(Qt::Key_Escape);
    EXPECT_FALSE(form()->isVisible());
    EXPECT_EQ(said(), "The walk is left: 1 of 3 hives visited.");
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A5"));
    QTest::keyClick(window.get(), Qt::Key_L, Qt::ControlModifier);
    EXPECT_EQ(step(), "") << "a single visit is no walk";
    type("4");
    key(Qt::Key_Return);
    EXPECT_FALSE(form()->isVisible());
}

TEST_F(WithSeveral, AHiveGoneMeanwhileIsPassedOver) {
    select({"A1", "A2", "A3"});
    walk();
    write([&](const core::edit::EditContext& c) {
        return core::edit::endColony(c, book.idOf(QStringLiteral("A2")), book.clock().day, core::EndKind::Dead);
    });
    type("4");
    key(Qt::Key_Return);
    EXPECT_EQ(form()->place().label.toStdString(), "A3");
    EXPECT_EQ(step().substr(0, 6), "3 of 3");
}

TEST_F(WithSeveral, WithoutASelectionItSaysWhatIsMissing) {
    walk();
    EXPECT_FALSE(form()->isVisible());
    EXPECT_EQ(said(), "Select hives first: their visits are logged one after the other.");
}

TEST_F(WithSeveral, TheMenuOfOneHiveOfSeveralAndOfTheGround) {
    auto& c = *window->commands();
    QMenu* one = menuAt(at("A3"));
    ASSERT_NE(one, nullptr);
    EXPECT_EQ(chosen(), "A3") << "the hive under the pointer";
    EXPECT_EQ(one->actions().front()->text().toStdString(), "A3");
    EXPECT_TRUE(offers(*one, c.logVisit));
    EXPECT_TRUE(offers(*one, c.planPaper()->print));
    one->close();
    QTest::qWait(0);
    select({"A1", "A2"});
    QMenu* both = menuAt(at("A1"));
    ASSERT_NE(both, nullptr);
    EXPECT_EQ(selected(), "A1 A2") << "on one of them they stay";
    EXPECT_EQ(both->actions().front()->text().toStdString(), "2 hives selected");
    EXPECT_TRUE(offers(*both, c.pick()->visits));
    EXPECT_FALSE(offers(*both, c.logVisit));
    both->close();
    QTest::qWait(0);
    QMenu* key = menuAt({5, 5}, QContextMenuEvent::Keyboard);
    ASSERT_NE(key, nullptr);
    EXPECT_EQ(selected(), "A1 A2") << "the key does not ask where the pointer is";
    key->close();
    QTest::qWait(0);
    QMenu* bare = menuAt(ground({1000, 1500}));
    ASSERT_NE(bare, nullptr);
    EXPECT_EQ(selected(), "");
    EXPECT_EQ(bare->actions().front()->text().toStdString(), "Kiln Field");
}

TEST_F(WithSeveral, ThePlanGoesToFilesByTheMenu) {
    QTemporaryDir to;
    const auto* paper = window->commands()->planPaper();
    for (const auto& [command, name] : {std::pair{paper->pdf, "p.pdf"}, {paper->svg, "p.svg"}, {paper->png, "p.png"}}) {
        dialogs.file = to.filePath(QLatin1StringView(name));
        command->trigger();
        EXPECT_TRUE(QFile::exists(*dialogs.file)) << name;
        EXPECT_GT(QFile(*dialogs.file).size(), 2000) << name;
        EXPECT_EQ(said(), "The plan, 1:50, is in " + dialogs.file->toStdString() + ".");
    }
    EXPECT_FALSE(QImage(to.filePath(QStringLiteral("p.png"))).isNull());
    EXPECT_EQ(dialogs.suggested.toStdString(), "Kiln Field, plan.png");
    dialogs.file = to.filePath(QStringLiteral("no/such/p.pdf"));
    dialogs.expectError = true;
    paper->pdf->trigger();
    ASSERT_EQ(dialogs.errors.size(), 1);
    EXPECT_TRUE(dialogs.errors.front().contains(QStringLiteral("p.pdf")));
}

} // namespace
