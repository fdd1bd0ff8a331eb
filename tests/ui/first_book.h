#pragma once

#include "tests/ui/book_of_test.h"
#include "tests/ui/hand.h"
#include "tests/ui/test_dialogs.h"
#include "ui/form/form_panel.h"
#include "ui/plan/plan_view.h"
#include "ui/window/work_page.h"

#include <gtest/gtest.h>

#include <QPushButton>
#include <QTest>

namespace tests {

/// The real window with no book in it, and a folder to make one in.
struct FirstBook : ::testing::Test {
    QTemporaryDir folder;
    FixedClock clock;
    TestDialogs dialogs;
    std::unique_ptr<ui::window::MainWindow> window;
    std::unique_ptr<Hand> hand;

    QString path() const { return folder.filePath(QStringLiteral("first.yardwright")); }
    void SetUp() override {
        dialogs.made = path();
        window = std::make_unique<ui::window::MainWindow>(clock, dialogs);
        window->resize(1440, 900);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        window->activateWindow();
        hand = std::make_unique<Hand>(*window);
    }
    void TearDown() override { hand.reset(); }

    ui::plan::PlanView* plan() const { return window->page()->plan(); }
    ui::desk::Desk& desk() const { return *window->desk(); }
    std::string said() const { return window->saying().toStdString(); }
    QPushButton* button(const char* name) const { return window->findChild<QPushButton*>(QLatin1StringView(name)); }
    bool formOpen() const { return window->page()->panel()->form() != nullptr; }

    /// A book with one yard in it and nothing else.
    void beginYard(const QString& name = QStringLiteral("Kiln Field")) {
        hand->key(Qt::Key_N, Qt::ControlModifier);
        hand->click(button("nameFirstYard"));
        hand->type(name);
        hand->key(Qt::Key_Return);
        ASSERT_TRUE(desk().yard()) << said();
    }

    /// What stands in the yard shown, from the file by a session of its own: "K1 0,0 180".
    QStringList standing() const {
        const auto reader = core::edit::Session::open(path(), clock, core::edit::Session::Access::ReadOnly);
        const core::Snapshot s = reader->snapshot(clock.day);
        QStringList out;
        for (size_t i = 0; i < s.colonies.size(); ++i) {
            const core::ColonyIx ix{static_cast<qint32>(i)};
            const core::SnapStay* stay = s.placeOf(ix);
            if (!stay || !s.colony(ix).living()) continue;
            out << QStringLiteral("%1 %2,%3 %4")
                       .arg(s.colony(ix).label, core::metresText({stay->at.x}), core::metresText({stay->at.y}))
                       .arg(stay->headingDeg);
        }
        return out;
    }
    size_t lines() const {
        return core::edit::Session::open(path(), clock, core::edit::Session::Access::ReadOnly)->history(10000).size();
    }
};

} // namespace tests
