#include "tests/ui/open_window.h"

#include <QAccessible>

namespace {

/// The plan as a screen reader meets it.
struct PlanAccess : tests::OpenWindow {
    QAccessibleInterface* list = nullptr;

    void SetUp() override {
        tests::OpenWindow::SetUp();
        list = QAccessible::queryAccessibleInterface(plan());
        ASSERT_NE(list, nullptr);
    }
    std::string nameOf(int hive) const { return list->child(hive)->text(QAccessible::Name).toStdString(); }
};

TEST_F(PlanAccess, IsAListWithARowAHive) {
    EXPECT_EQ(list->role(), QAccessible::List);
    EXPECT_EQ(list->text(QAccessible::Name), QStringLiteral("Yard plan"));
    ASSERT_EQ(list->childCount(), 6);
    for (int i = 0; i < 6; ++i) {
        QAccessibleInterface* hive = list->child(i);
        ASSERT_NE(hive, nullptr);
        EXPECT_TRUE(hive->isValid());
        EXPECT_EQ(hive->role(), QAccessible::ListItem);
        EXPECT_EQ(hive->parent(), list);
        EXPECT_EQ(list->indexOfChild(hive), i);
        EXPECT_EQ(list->child(i), hive) << "asked twice it is the same";
    }
    EXPECT_EQ(list->child(6), nullptr);
    EXPECT_EQ(nameOf(0), "A1, 3 frames, weak, stand 1");
    EXPECT_EQ(nameOf(2), "A3, 4 frames, weak, held: brood not checked, stand 3");
}

TEST_F(PlanAccess, AHiveIsWhereItIsDrawn) {
    for (int i = 0; i < 6; ++i) {
        const QRect rect = list->child(i)->rect();
        const QPoint centre = plan()->mapToGlobal(at(("A" + std::to_string(i + 1)).c_str()));
        EXPECT_TRUE(rect.contains(centre)) << i;
        EXPECT_EQ(list->childAt(centre.x(), centre.y()), list->child(i));
    }
    EXPECT_EQ(list->childAt(plan()->mapToGlobal(ground({0, 4000})).x(), plan()->mapToGlobal(ground({0, 4000})).y()),
              nullptr);
}

TEST_F(PlanAccess, ThePressActionChooses) {
    auto* action = list->child(3)->actionInterface();
    ASSERT_NE(action, nullptr);
    ASSERT_TRUE(action->actionNames().contains(QAccessibleActionInterface::pressAction()));
    action->doAction(QAccessibleActionInterface::pressAction());
    EXPECT_EQ(window->desk()->chosen(), book.idOf(QStringLiteral("A4")));
    EXPECT_TRUE(list->child(3)->state().selected);
    EXPECT_TRUE(list->child(3)->state().focused);
    EXPECT_FALSE(list->child(2)->state().selected);
    EXPECT_EQ(list->focusChild(), list->child(3));
}

TEST_F(PlanAccess, TheHiveChosenByKeysIsAnnounced) {
    std::vector<core::ColonyId> announced;
    QObject::connect(plan(), &ui::plan::PlanView::hiveFocused, plan(),
                     [&](core::ColonyId colony) { announced.push_back(colony); });
    QTest::keyClick(plan(), Qt::Key_Tab);
    QTest::keyClick(plan(), Qt::Key_Tab);
    ASSERT_EQ(window->desk()->chosen(), book.idOf(QStringLiteral("A2")));
    const std::vector<core::ColonyId> both{book.idOf(QStringLiteral("A1")), book.idOf(QStringLiteral("A2"))};
    EXPECT_EQ(announced, both);
    EXPECT_EQ(list->focusChild(), list->child(1));
    EXPECT_TRUE(list->child(1)->state().focused);
    window->desk()->choose(book.idOf(QStringLiteral("A5")));
    EXPECT_EQ(announced, both) << "chosen elsewhere, the focus did not move";
    EXPECT_TRUE(list->child(4)->state().selected);
    plan()->clearFocus();
    EXPECT_FALSE(list->child(4)->state().focused);
}

TEST_F(PlanAccess, AHiveThatIsGoneIsNotValid) {
    QAccessibleInterface* hive = list->child(0);
    auto scene = plan()->scene();
    scene.hives.erase(scene.hives.begin());
    plan()->setScene(scene);
    EXPECT_FALSE(hive->isValid());
    EXPECT_EQ(list->childCount(), 5);
    EXPECT_EQ(nameOf(0).substr(0, 2), "A2");
}

} // namespace
