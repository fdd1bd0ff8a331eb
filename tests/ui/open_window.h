#pragma once

#include "tests/ui/book_of_test.h"
#include "tests/ui/test_dialogs.h"
#include "ui/plan/plan_view.h"
#include "ui/window/main_window.h"
#include "ui/window/work_page.h"

#include <gtest/gtest.h>

#include <QTest>

namespace tests {

/// The real window on a fresh book, shown and active; input only by mouse and keys.
struct OpenWindow : ::testing::Test {
    BookOfTest book;
    TestDialogs dialogs;
    std::unique_ptr<ui::window::MainWindow> window;

    void SetUp() override {
        window = std::make_unique<ui::window::MainWindow>(book.clock(), dialogs);
        ASSERT_TRUE(window->openBook(book.path()));
        window->resize(1440, 900);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        window->activateWindow();
        plan()->setFocus();
    }
    ui::plan::PlanView* plan() const { return window->page()->plan(); }
    QPoint at(const char* label) const { return plan()->viewPointOf(book.idOf(QLatin1StringView(label))).toPoint(); }
    QPoint ground(core::MmPoint where) const { return plan()->camera().toView(where).toPoint(); }

    void drag(const QPoint& from, const QPoint& to, bool release = true) const {
        QTest::mousePress(plan(), Qt::LeftButton, {}, from);
        for (int i = 1; i <= 5; ++i) QTest::mouseMove(plan(), from + (to - from) * i / 5);
        if (release) QTest::mouseRelease(plan(), Qt::LeftButton, {}, to);
    }
    std::string said() const { return window->saying().toStdString(); }
};

} // namespace tests
