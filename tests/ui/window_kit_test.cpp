#include "core/edit/edits.h"
#include "core/edit/kit.h"
#include "core/edit/put_right.h"
#include "core/model/kit_words.h"
#include "tests/ui/picking.h"
#include "ui/form/form_panel.h"
#include "ui/kit/kit_model.h"
#include "ui/kit/kit_window.h"
#include "ui/look/colours.h"

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTableView>

namespace {

using namespace core::kit;

/// The window of kit, opened by its keys.
struct KeepingKit : tests::Picking {
    void SetUp() override {
        Picking::SetUp();
        QTest::keyClick(window.get(), Qt::Key_K, Qt::ControlModifier);
        ASSERT_NE(kit(), nullptr);
        ASSERT_TRUE(QTest::qWaitForWindowExposed(kit()));
        kit()->activateWindow();
        kit()->table()->setFocus();
    }
    ui::kit::KitWindow* kit() const { return window->findChild<ui::kit::KitWindow*>(); }
    QString cell(int row, int column) const {
        return kit()->model()->index(row, column).data(Qt::DisplayRole).toString();
    }
    /// "floor — — — — —; lid 3 1 — — —"
    std::string table() const {
        QStringList rows;
        for (int row = 0; row < kit()->model()->rowCount(); ++row) {
            QStringList cells;
            for (int column = 0; column < kit()->model()->columnCount(); ++column) cells << cell(row, column);
            rows << cells.join(u' ');
        }
        return rows.join(QStringLiteral("; ")).toStdString();
    }
    void choose(const QString& part, const QString& state, std::optional<core::ColonyId> colony = {}) const {
        const QModelIndex at = kit()->model()->indexOf({yardShown(), part, state, colony});
        ASSERT_TRUE(at.isValid()) << table();
        kit()->table()->setCurrentIndex(at);
        kit()->table()->setFocus();
    }
    std::optional<core::YardId> yardShown() const { return window->desk()->yard(); }
    void dies(const char* label, bool suspected) const {
        const core::ColonyId id = book.idOf(QLatin1StringView(label));
        if (suspected)
            write([&](const core::edit::EditContext& c) {
                core::Visit v;
                v.colony = id;
                v.day = book.clock().day;
                v.signs.add(core::Sign::Afb);
                return core::edit::logVisit(c, v);
            });
        write([&](const core::edit::EditContext& c) {
            return core::edit::endColony(c, id, book.clock().day, core::EndKind::Dead);
        });
    }
    void set(const char* field, const QString& value) const {
        kit()->panel()->setValue(QString::fromLatin1(field), value);
    }
    std::string shownProblem() const {
        QStringList texts;
        for (const QLabel* label : kit()->panel()->findChildren<QLabel*>())
            if (label->isVisible() && label->property("warns").toBool() && !label->text().isEmpty())
                texts << label->text();
        return texts.join(u' ').toStdString();
    }
};

TEST_F(KeepingKit, StartsAtTheYardShownWithThePartsOfAHive) {
    EXPECT_EQ(kit()->places()->currentItem()->text(), "Kiln Field");
    EXPECT_EQ(kit()->places()->item(0)->text(), "Store room");
    EXPECT_EQ(table(), "floor — — — — —; inner cover — — — — —; langstroth-10 — — — — —; lid — — — — —");
}

TEST_F(KeepingKit, IsCountedByKeys) {
    choose(kLid, kUsable);
    key(Qt::Key_C);
    ASSERT_NE(kit()->panel()->form(), nullptr);
    EXPECT_EQ(kit()->panel()->values()["part"], kLid);
    set("count", QStringLiteral("7"));
    kit()->panel()->save();
    EXPECT_EQ(book.history().front(), "Counted kit: lid, usable, in Kiln Field: 7");
    EXPECT_NE(table().find("lid 7 — — — —"), std::string::npos) << table();
    EXPECT_EQ(kit()->said().toStdString(), "Counted kit: lid, usable, in Kiln Field: 7 · saved");
    EXPECT_TRUE(kit()->table()->hasFocus()) << "the keys go on in the table";
    QTest::keyClick(kit(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_NE(table().find("lid — — — — —"), std::string::npos) << table();
}

TEST_F(KeepingKit, WhatCannotBeIsSaidAndStaysTyped) {
    key(Qt::Key_A);
    set("part", QStringLiteral("feeder"));
    set("state", kQuarantined);
    set("count", QStringLiteral("2"));
    const size_t lines = book.history().size();
    kit()->panel()->save();
    EXPECT_NE(shownProblem().find("Which colony?"), std::string::npos) << shownProblem();
    EXPECT_EQ(kit()->panel()->values()["part"], "feeder");
    EXPECT_EQ(book.history().size(), lines);
    set("colony", QStringLiteral("A2"));
    kit()->panel()->save();
    EXPECT_EQ(book.history().front(), "Counted kit: feeder, quarantined, in Kiln Field, off A2: 2");
    EXPECT_EQ(table().find("feeder · off A2 — — 2 — —"), 0u) << table();
}

TEST_F(KeepingKit, WhatTheDeadLeaveIsCleanedAndCarried) {
    dies("A1", false);
    EXPECT_EQ(table(), "floor — 1 — — —; inner cover — 1 — — —; langstroth-10 — 1 — — —; lid — 1 — — —");
    choose(kLid, kToClean);
    key(Qt::Key_M);
    ASSERT_NE(kit()->panel()->form(), nullptr);
    EXPECT_EQ(kit()->panel()->values()["state"], kUsable) << "what becomes of it most often";
    kit()->panel()->save();
    EXPECT_NE(table().find("lid 1 — — — —"), std::string::npos) << table();
}

TEST_F(KeepingKit, WhatCameOffASuspectedColonyIsKeptApart) {
    dies("A1", true);
    const core::ColonyId a1 = [&] {
        std::optional<core::Colony> found;
        session().read([&](const core::edit::EditContext& c) { found = c.colonyNamed(u"A1", book.clock().day); });
        return found.value().id;
    }();
    choose(kLid, kQuarantined, a1);
    const auto* apart = kit()->findChild<QLabel*>(QStringLiteral("kitApart"));
    EXPECT_EQ(apart->text().toStdString().find("lid is kept apart with A1 (afb-suspected). It is never offered"), 0u)
        << apart->text().toStdString();
    const size_t lines = book.history().size();
    key(Qt::Key_M);
    set("state", kUsable);
    kit()->panel()->save();
    EXPECT_NE(shownProblem().find("leaves quarantine only burned or sterilised"), std::string::npos) << shownProblem();
    EXPECT_EQ(kit()->panel()->values()["state"], kUsable) << "what was chosen stays";
    EXPECT_EQ(book.history().size(), lines);
    set("state", kBurned);
    kit()->panel()->save();
    EXPECT_NE(shownProblem().find("Who did it, or saw to it?"), std::string::npos) << shownProblem();
    set("by", QStringLiteral("Ana"));
    kit()->panel()->save();
    EXPECT_EQ(book.history().front(),
              "Kit in Kiln Field: 1 × lid, quarantined, is now burned (off A1): burned on 2026-09-15 by Ana");
    EXPECT_EQ(kit()->findChild<QLabel*>(QStringLiteral("kitEnds"))->text().toStdString(),
              "Ended here: 1 × lid off A1, burned on 15 Sep 2026 by Ana.");
    choose(kFloor, kQuarantined, a1);
    dialogs.expectCorrection = true; // and no answer is given
    key(Qt::Key_Delete);
    EXPECT_EQ(dialogs.asked.size(), 1);
    EXPECT_EQ(book.history().size(), lines + 1) << "nothing is lost sight of without a reason and a name";
}

TEST_F(KeepingKit, EachPlaceHasItsOwn) {
    choose(kFloor, kUsable);
    key(Qt::Key_Return);
    set("count", QStringLiteral("3"));
    kit()->panel()->save();
    choose(kFloor, kUsable);
    key(Qt::Key_M);
    set("count", QStringLiteral("2"));
    kit()->panel()->setValue(QStringLiteral("yard"), QStringLiteral("/"));
    kit()->panel()->save();
    EXPECT_EQ(book.history().front(), "Kit carried: 2 × floor, usable, from Kiln Field to the store room");
    EXPECT_EQ(table().find("floor 1 — — — —"), 0u) << table();
    kit()->places()->setCurrentRow(0);
    EXPECT_EQ(table().find("floor 2 — — — —"), 0u) << table();
}

TEST_F(KeepingKit, AClosedYardShowsTheKitThatIsStillThere) {
    core::Yard old;
    old.name = QStringLiteral("Old Lane");
    write([&](const core::edit::EditContext& c) { return core::edit::newYard(c, old); });
    for (const core::Yard& y : session().yards())
        if (y.name == old.name) old = y;
    const auto places = [&] {
        QStringList all;
        for (int i = 0; i < kit()->places()->count(); ++i) all << kit()->places()->item(i)->text();
        return all.join(u'|').toStdString();
    };
    write([&](const core::edit::EditContext& c) { return core::edit::countKit(c, {old.id, kLid, kUsable}, 2); });
    old.closed = true;
    write([&](const core::edit::EditContext& c) { return core::edit::changeYard(c, old); });
    EXPECT_EQ(places(), "Store room|Kiln Field|Mill Lane|Old Lane (closed)");
}

TEST_F(KeepingKit, TurnsDarkAndBackWithTheSystem) {
    const QPalette before = QApplication::palette();
    for (const bool dark : {true, false}) {
        QApplication::setPalette(ui::look::paletteOf(ui::look::colours(dark)));
        QApplication::processEvents();
        const QColor ground = kit()->grab().toImage().pixelColor(2, kit()->height() - 3);
        EXPECT_EQ(ground.name().toStdString(), ui::look::colours(dark).desk.name().toStdString());
    }
    QApplication::setPalette(before);
}

TEST_F(KeepingKit, EveryPartHasANameAndIsReachedByTab) {
    for (const QWidget* w : std::initializer_list<QWidget*>{kit()->places(), kit()->table()})
        EXPECT_FALSE(w->accessibleName().isEmpty());
    EXPECT_EQ(kit()->model()->index(0, 1).data(Qt::AccessibleTextRole).toString(), "floor, usable: not counted");
    kit()->places()->setFocus();
    key(Qt::Key_Tab);
    EXPECT_TRUE(kit()->table()->hasFocus());
    key(Qt::Key_Tab);
    EXPECT_TRUE(kit()->countButton()->hasFocus());
    key(Qt::Key_Escape);
    EXPECT_FALSE(kit()->isVisible());
}

} // namespace
