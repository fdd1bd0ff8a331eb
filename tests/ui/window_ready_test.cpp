#include "core/edit/edits.h"
#include "core/edit/kit.h"
#include "core/model/kit_words.h"
#include "tests/ui/picking.h"
#include "ui/board/row_list.h"
#include "ui/kit/kit_window.h"
#include "ui/merge/merge_place.h"
#include "ui/ready/ready_page.h"
#include "ui/visit/visit_form.h"

#include <QLabel>
#include <QListView>
#include <QPushButton>

namespace {

/// The step before a merge day, in the real window.
struct GettingReady : tests::Picking {
    void SetUp() override {
        Picking::SetUp();
        QTest::keyClick(window.get(), Qt::Key_1, Qt::AltModifier);
    }
    ui::ready::ReadyPage* page() const { return window->findChild<ui::ready::ReadyPage*>(); }
    ui::visit::VisitForm* form() const { return window->page()->form(); }
    /// "A3|stand 3 · 4 frames, 14 Sep|Brood not checked for disease. …"
    std::string row(const QString& title) const {
        for (int i = 0; i < page()->model().rowCount(); ++i) {
            const ui::board::BoardRow& r = page()->model().at(i);
            if (r.title == title)
                return QStringList{r.title, r.right, r.lines.join(u' '), r.cautions.join(u' ')}
                    .join(u'|')
                    .toStdString();
        }
        return {};
    }
    std::string order() const {
        QStringList labels;
        for (const auto& m : page()->missing()) labels << window->desk()->reading().snapshot.colony(m.colony).shown;
        return labels.join(u' ').toStdString();
    }
    void weigh(const char* label) const {
        write([&](const core::edit::EditContext& c) {
            core::Visit v;
            v.colony = book.idOf(QLatin1StringView(label));
            v.day = book.clock().day;
            v.gross = core::Decagrams{3500};
            return core::edit::logVisit(c, v);
        });
    }
};

TEST_F(GettingReady, IsTheFirstStepOfTheMergeDay) {
    ASSERT_TRUE(page()->isVisible());
    EXPECT_EQ(window->page()->place(), ui::window::Place::MergeDay);
    EXPECT_EQ(window->page()->merge()->step(), ui::merge::Step::GetReady);
    EXPECT_EQ(page()->summary().toStdString(), "Kiln Field · 15 Sep 2026 · 6 of 6 hives lack something");
    EXPECT_EQ(order(), "A1 A2 A3 A4 A5 A6") << "along the row from the gate and back (own calculation)";
    EXPECT_EQ(row(QStringLiteral("A3")),
              "A3|stand 3 · 4 frames, 14 Sep|Brood not checked for disease. Not weighed: no feed can be reckoned.|");
    QTest::keyClick(window.get(), Qt::Key_2, Qt::AltModifier);
    EXPECT_FALSE(page()->isVisible());
}

TEST_F(GettingReady, WhatIsNotedIsMissingNoMore) {
    weigh("A2");
    EXPECT_EQ(row(QStringLiteral("A2")), "");
    EXPECT_EQ(page()->summary().toStdString(), "Kiln Field · 15 Sep 2026 · 5 of 6 hives lack something");
    QTest::keyClick(window.get(), Qt::Key_2, Qt::AltModifier);
    weigh("A1");
    QTest::keyClick(window.get(), Qt::Key_1, Qt::AltModifier);
    EXPECT_EQ(order(), "A3 A4 A5 A6") << "what came while it was not shown";
}

TEST_F(GettingReady, ARowIsAsHighAsItsWords) {
    const auto high = [&] {
        for (int i = 0; i < page()->model().rowCount(); ++i)
            if (page()->model().at(i).title == QStringLiteral("A3"))
                return page()->list()->visualRect(page()->model().index(i)).height();
        return 0;
    };
    QApplication::processEvents();
    const int two = high(); // its brood, and its weight
    weigh("A3");
    QApplication::processEvents();
    EXPECT_LT(high(), two) << "one line less";
    EXPECT_GT(high(), two / 2);
}

TEST_F(GettingReady, TheWalkOpensOneVisitAfterTheOther) {
    weigh("A1");
    page()->list()->setFocus();
    key(Qt::Key_W);
    ASSERT_TRUE(form()->isVisible()) << said();
    EXPECT_EQ(form()->place().label.toStdString(), "A2");
    EXPECT_EQ(said(), "1 of 5: visit of A2.");
    type("4");
    key(Qt::Key_Return);
    EXPECT_EQ(form()->place().label.toStdString(), "A3");
    key(Qt::Key_Escape);
    EXPECT_TRUE(page()->isVisible()) << "back where it began";
    EXPECT_EQ(book.visitsOf(QStringLiteral("A2")).size(), 2u);
}

TEST_F(GettingReady, EnterVisitsTheHiveOfTheRow) {
    page()->list()->setFocus();
    for (int i = 0; i < 4 && chosen() != "A2"; ++i) key(Qt::Key_Down);
    ASSERT_EQ(chosen(), "A2") << "the plan follows";
    key(Qt::Key_Return);
    ASSERT_TRUE(form()->isVisible());
    EXPECT_EQ(form()->place().label.toStdString(), "A2");
}

TEST_F(GettingReady, TheChosenHiveIsFoundInTheList) {
    QTest::mouseClick(plan(), Qt::LeftButton, {}, at("A4"));
    const QModelIndex now = page()->list()->currentIndex();
    ASSERT_TRUE(now.isValid());
    EXPECT_EQ(page()->model().at(now.row()).title, "A4");
}

TEST_F(GettingReady, AYardWithoutBeesLacksNothing) {
    const auto end = [&](const char* label) {
        write([&](const core::edit::EditContext& c) {
            return core::edit::endColony(c, book.idOf(QLatin1StringView(label)), book.clock().day, core::EndKind::Sold);
        });
    };
    for (const char* label : {"A1", "A2", "A3", "A4", "A5", "A6"}) end(label);
    EXPECT_EQ(order(), "");
    EXPECT_FALSE(page()->walkButton()->isEnabled());
}

TEST_F(GettingReady, WhatIsToLoadIsOfferedFromUsableKitAlone) {
    const auto strap = [&](const QString& state, int count, std::optional<core::ColonyId> off = {}) {
        write([&](const core::edit::EditContext& c) {
            return core::edit::countKit(c, {std::nullopt, core::kit::kStrap, state, off}, count);
        });
    };
    const auto& plan = window->desk()->reading().plan;
    ASSERT_EQ(plan.unions.size(), 2u);
    EXPECT_EQ(row(QStringLiteral("2 sheets of newspaper")), "2 sheets of newspaper|||");
    EXPECT_EQ(row(QStringLiteral("2 straps")), "2 straps|||") << "not counted, not missed";
    strap(core::kit::kToClean, 5);
    EXPECT_EQ(row(QStringLiteral("2 straps")), "2 straps|||") << "to be cleaned: not offered";
    strap(core::kit::kUsable, 1);
    EXPECT_EQ(row(QStringLiteral("2 straps")), "2 straps|1 usable in the store room||1 short.");
    strap(core::kit::kQuarantined, 3, book.idOf(QStringLiteral("A1")));
    EXPECT_EQ(row(QStringLiteral("2 straps")),
              "2 straps|1 usable in the store room||1 short. 3 more in quarantine: not to be used.");
    strap(core::kit::kUsable, 4);
    EXPECT_EQ(row(QStringLiteral("2 straps")),
              "2 straps|4 usable in the store room||3 more in quarantine: not to be used.");
}

TEST_F(GettingReady, ItsSheetGoesToPaper) {
    std::optional<core::report::Sheet> shown;
    ui::window::Paper paper;
    paper.preview = [&](QWidget*, const ui::window::PaperJob& job) {
        shown = job.choice.sheet;
        return false;
    };
    window->setPaper(paper);
    page()->list()->setFocus();
    key(Qt::Key_S);
    EXPECT_EQ(shown, core::report::Sheet::Walk);
}

TEST_F(GettingReady, WhatItCanDoStandsInTheMenu) {
    QStringList texts;
    for (const QAction* action : page()->actions()) texts << action->text().remove(u'&');
    EXPECT_EQ(texts.join(u'|'), "Walk through what is missing|Sheet of what is missing…|Kit…");
    page()->actions().front()->trigger();
    EXPECT_TRUE(form()->isVisible());
}

TEST_F(GettingReady, ItsKitOpensBesideIt) {
    page()->list()->setFocus();
    key(Qt::Key_K);
    const auto* kit = window->findChild<ui::kit::KitWindow*>();
    ASSERT_NE(kit, nullptr);
    EXPECT_TRUE(kit->isVisible());
}

} // namespace
