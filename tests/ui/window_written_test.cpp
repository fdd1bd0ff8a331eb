#include "tests/ui/picking.h"
#include "ui/after/after_page.h"
#include "ui/close/close_page.h"
#include "ui/merge/merge_place.h"

#include <QListView>
#include <QMenu>

namespace {

/// The real window, from the merge day to what is due of it, by keys alone.
struct WrittenBack : tests::Picking {
    template <class Page> Page* step() const { return window->findChild<Page*>(); }
    std::string problems() const { return session().check().join(u'\n').toStdString(); }
};

TEST_F(WrittenBack, AndLookedAfterByKeysAlone) {
    QTest::keyClick(window.get(), Qt::Key_3, Qt::AltModifier);
    auto* close = step<ui::close::ClosePage>();
    ASSERT_TRUE(close->isVisible());
    EXPECT_TRUE(close->list()->hasFocus()) << "the keys are there at once";
    const auto& lines = close->work().lines().lines;
    ASSERT_GE(lines.size(), 2u);
    const core::ColonyId host = lines[0].host, moved = lines[0].moved;
    QCoreApplication::processEvents();
    EXPECT_EQ(window->desk()->chosen(), moved) << "the plan shows the strip's hive";
    key(Qt::Key_D);
    EXPECT_EQ(window->desk()->chosen(), lines[1].moved);
    key(Qt::Key_W);
    EXPECT_TRUE(session().colony(moved)->ended);
    EXPECT_EQ(problems(), "");
    QTest::keyClick(window.get(), Qt::Key_4, Qt::AltModifier);
    auto* after = step<ui::after::AfterPage>();
    ASSERT_TRUE(after->isVisible());
    EXPECT_TRUE(after->list()->hasFocus());
    ASSERT_GE(after->model().rowAbout(host), 0) << "its check is listed at once";
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(session().colony(moved)->ended) << "one undo for the day";
    EXPECT_LT(after->model().rowAbout(host), 0);
    EXPECT_EQ(problems(), "");
}

TEST_F(WrittenBack, WhatIsDueGoesToPaper) {
    std::optional<core::report::Sheet> shown;
    ui::window::Paper paper;
    paper.preview = [&](QWidget*, const ui::window::PaperJob& job) {
        shown = job.choice.sheet;
        return false;
    };
    window->setPaper(paper);
    QTest::keyClick(window.get(), Qt::Key_4, Qt::AltModifier);
    key(Qt::Key_S);
    EXPECT_EQ(shown, core::report::Sheet::Checks);
}

TEST_F(WrittenBack, TheMenuHasWhatAStepCanDo) {
    QTest::keyClick(window.get(), Qt::Key_3, Qt::AltModifier);
    QMenu menu;
    window->page()->merge()->fill(&menu);
    QStringList texts;
    for (const QAction* a : menu.actions()) texts << a->text();
    EXPECT_TRUE(texts.contains(QStringLiteral("Write the day\tW"))) << texts.join(u'|').toStdString();
    EXPECT_TRUE(texts.contains(QStringLiteral("Not done…\tN")));
}

} // namespace
