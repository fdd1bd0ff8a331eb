#include "core/edit/keeper.h"
#include "core/edit/merge_day.h"
#include "core/edit/put_right.h"
#include "tests/ui/picking.h"
#include "ui/entry/entry_page.h"
#include "ui/health/holds_page.h"
#include "ui/health/sign_notice.h"
#include "ui/health/what_now.h"
#include "ui/visit/visit_form.h"

#include <QFile>
#include <QPushButton>
#include <QTemporaryDir>

// The notice of a sign, in the real window: which ways of writing bring it up, what it says, how it goes.

namespace {

using namespace core;

struct NoticeOfSign : tests::Picking {
    ui::health::SignNotice* notice() const { return window->findChild<ui::health::SignNotice*>(); }
    std::string said(qsizetype line) const { return notice()->text().split(u'\n').value(line).toStdString(); }
    void signAt(const char* label, Day day, Sign what) const {
        write([&](const edit::EditContext& c) {
            Visit v;
            v.colony = book.idOf(QLatin1StringView(label));
            v.day = day;
            v.signs.add(what);
            return edit::logVisit(c, v);
        });
    }
    void result(const char* label, Day day, Disease disease, Verdict verdict, Method method) const {
        write([&](const edit::EditContext& c) {
            Result r;
            r.colony = book.idOf(QLatin1StringView(label));
            r.day = day;
            r.disease = disease;
            r.verdict = verdict;
            r.method = method;
            r.by = QStringLiteral("R. Tester");
            return edit::logResult(c, r);
        });
    }
    Day today() const { return book.clock().day; }
};

TEST_F(NoticeOfSign, ComesUpWhenAVisitWithASignIsSavedByKeys) {
    EXPECT_TRUE(notice()->isHidden());
    key(Qt::Key_Tab);
    key(Qt::Key_Tab);
    ASSERT_EQ(chosen(), "A2");
    QTest::keyClick(window.get(), Qt::Key_L, Qt::ControlModifier);
    const auto* form = window->page()->form();
    while (QApplication::focusWidget()->accessibleName() != QStringLiteral("Sign: foulbrood (American)")) {
        key(Qt::Key_Tab);
        ASSERT_TRUE(form->isAncestorOf(QApplication::focusWidget()));
    }
    key(Qt::Key_Space);
    EXPECT_TRUE(notice()->isHidden()) << "not saved yet";
    key(Qt::Key_Return);
    ASSERT_TRUE(notice()->isVisible()) << window->saying().toStdString();
    EXPECT_EQ(said(0), "American foulbrood suspected: A2 in Kiln Field on 15 Sep 2026.");
    EXPECT_EQ(said(1), ui::health::whatNow(Sign::Afb).toStdString());
    EXPECT_EQ(said(2), "6 hives are held by it on 15 Sep 2026: 6 of 6 in Kiln Field. They are in no union, shake-out "
                       "or divide; only a record lifts that.");
    EXPECT_FALSE(notice()->isAncestorOf(QApplication::focusWidget())) << "it takes no keys that were going elsewhere";
    key(Qt::Key_T, Qt::ControlModifier);
    EXPECT_TRUE(table()->isVisible()) << "it bars nothing";
    EXPECT_TRUE(notice()->isVisible());
}

TEST_F(NoticeOfSign, SaysWhomToTellWhereTheKeeperIs) {
    window->desk()->session().apply([](const core::edit::EditContext& c) {
        return core::edit::setKeeper(c, {{}, QStringLiteral("A. Keeper"), {}, {}, {}, QStringLiteral("New Zealand")});
    });
    signAt("A1", today(), Sign::Afb);
    EXPECT_NE(said(1).find("American foulbrood must be reported in New Zealand"), std::string::npos) << said(1);
    EXPECT_EQ(said(1).find(ui::health::whatNow(Sign::Afb).toStdString()), 0u) << "first what to do";
}

TEST_F(NoticeOfSign, LeadsToThoseHeldAndStaysUntilItIsPutAway) {
    signAt("A1", today(), Sign::Afb);
    QTest::keyClick(window.get(), Qt::Key_5, Qt::ControlModifier);
    const auto* held = window->findChild<ui::health::HoldsPage*>();
    EXPECT_TRUE(held->isVisible());
    EXPECT_TRUE(notice()->isVisible());
    EXPECT_TRUE(held->alarm().endsWith(ui::health::whatNow(Sign::Afb))) << "one text";
    QTest::keyClick(window.get(), Qt::Key_1, Qt::ControlModifier);
    EXPECT_TRUE(notice()->isVisible());
    notice()->healthButton()->setFocus();
    key(Qt::Key_Space);
    EXPECT_TRUE(held->isVisible());
    QTest::keyClick(window.get(), Qt::Key_N, Qt::ControlModifier | Qt::AltModifier);
    EXPECT_TRUE(notice()->isHidden());
    EXPECT_TRUE(notice()->text().isEmpty());
    EXPECT_TRUE(held->alarm().contains(QStringLiteral("A1"))) << "the holds stay";
    signAt("A2", today(), Sign::Afb);
    ASSERT_TRUE(notice()->isVisible()) << "another sign";
    notice()->putAwayButton()->setFocus();
    key(Qt::Key_Escape);
    EXPECT_TRUE(notice()->isHidden());
}

TEST_F(NoticeOfSign, SaysWhatToDoOfEachKindAndTheGravestOfSeveral) {
    signAt("A3", today(), Sign::BroodDoubt);
    EXPECT_EQ(said(0), "Brood in doubt: A3 in Kiln Field on 15 Sep 2026.");
    EXPECT_EQ(said(1), ui::health::whatNow(Sign::BroodDoubt).toStdString());
    EXPECT_EQ(said(2).substr(0, 59), "1 hive is held by it on 15 Sep 2026: 1 of 6 in Kiln Field. ");
    signAt("B1", today(), Sign::Efb);
    EXPECT_EQ(said(0), "European foulbrood seen: B1 in Mill Lane on 15 Sep 2026.");
    EXPECT_EQ(said(1), "Brood in doubt: A3 in Kiln Field on 15 Sep 2026.");
    EXPECT_EQ(said(2), ui::health::whatNow(Sign::Efb).toStdString());
    EXPECT_EQ(said(3).substr(0, 80),
              "2 hives are held by it on 15 Sep 2026: 1 of 6 in Kiln Field, 1 of 2 in Mill Lane");
    for (const Sign what : {Sign::Afb, Sign::Efb, Sign::BroodDoubt}) {
        const QString now = ui::health::whatNow(what);
        for (const char* part : {"stop", "close the hive", "clean hands and tools", "leave", "tell the inspector",
                                 "notifiable", "decides", "only advises"})
            EXPECT_TRUE(now.contains(QLatin1StringView(part))) << part;
    }
}

TEST_F(NoticeOfSign, ComesUpOfAFieldKitAndOfALaboratory) {
    result("A1", today(), Disease::Afb, Verdict::Positive, Method::Field);
    EXPECT_EQ(said(0), "American foulbrood suspected: A1 in Kiln Field on 15 Sep 2026.");
    result("A1", today(), Disease::Afb, Verdict::Positive, Method::Laboratory);
    EXPECT_EQ(said(0), "American foulbrood found: A1 in Kiln Field on 15 Sep 2026.");
    notice()->putAway();
    result("A2", today(), Disease::Afb, Verdict::Negative, Method::Laboratory);
    EXPECT_TRUE(notice()->isHidden()) << "a negative is no sign";
    result("A2", today(), Disease::Efb, Verdict::Positive, Method::Field);
    EXPECT_EQ(said(0), "European foulbrood seen: A2 in Kiln Field on 15 Sep 2026.");
}

TEST_F(NoticeOfSign, ComesUpOfTheGridWhichKeepsTheKeys) {
    QTest::keyClick(window.get(), Qt::Key_3, Qt::ControlModifier);
    auto* page = window->findChild<ui::entry::EntryPage*>();
    ASSERT_TRUE(page->isVisible());
    page->work().type(0, TallyColumn::Signs, QStringLiteral("a"));
    key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(notice()->isHidden()) << "it asks once more";
    key(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(notice()->isVisible()) << page->answer().toStdString();
    EXPECT_EQ(said(0), "American foulbrood suspected: A1 in Kiln Field on 15 Sep 2026.");
    EXPECT_TRUE(page->isAncestorOf(QApplication::focusWidget())) << "typing goes on";
}

TEST_F(NoticeOfSign, IsOfOneBook) {
    signAt("A1", today(), Sign::Afb);
    ASSERT_TRUE(notice()->isVisible());
    const tests::BookOfTest other;
    ASSERT_TRUE(window->openBook(other.path()));
    EXPECT_EQ(window->findChildren<ui::health::SignNotice*>().size(), 1);
    EXPECT_TRUE(notice()->isHidden());
}

TEST_F(NoticeOfSign, ComesUpOfAVisitThatIsChangedAndOfAnImport) {
    write([&](const edit::EditContext& c) {
        Visit v = c.visitsOf(book.idOf(QStringLiteral("A4")), 1).front();
        v.signs.add(Sign::BroodDoubt);
        return edit::changeVisit(c, v);
    });
    EXPECT_EQ(said(0), "Brood in doubt: A4 in Kiln Field on 14 Sep 2026.");
    notice()->putAway();
    write([&](const edit::EditContext& c) {
        Visit v = c.visitsOf(book.idOf(QStringLiteral("A4")), 1).front();
        v.note = QStringLiteral("looked twice");
        return edit::changeVisit(c, v);
    });
    EXPECT_TRUE(notice()->isHidden()) << "the sign is not a new one";

    QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("visits.csv")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("colony,date,signs\nA5,2026-09-15,chalkbrood\nB2,2026-09-13,afb\n");
    file.close();
    ASSERT_TRUE(window->importFolder(folder.path())) << dialogs.faults.join(u'\n').toStdString();
    EXPECT_EQ(said(0), "American foulbrood suspected: B2 in Mill Lane on 13 Sep 2026.");
}

TEST_F(NoticeOfSign, NamesTheMergeDaysThatItBreaksAndNoOthers) {
    const auto plan = [&](YardId yard, Day day, const char* pinned, const char* other) {
        edit::MergeAsked asked;
        asked.day.yard = yard;
        asked.day.day = day;
        MergeChoice pin;
        pin.colony = book.idOf(QLatin1StringView(pinned));
        pin.other = book.idOf(QLatin1StringView(other));
        asked.choices = {pin};
        write([&](const edit::EditContext& c) { return edit::saveMergeDay(c, asked); });
    };
    const auto& reading = window->desk()->reading();
    const auto yardOf = [&](const char* name) {
        return reading.snapshot.yard(*reading.snapshot.yardNamed(QString::fromLatin1(name))).id;
    };
    plan(yardOf("Kiln Field"), today() + 5, "A1", "A2");
    signAt("B1", today(), Sign::Afb);
    EXPECT_EQ(notice()->text().count(u'\n'), 2) << notice()->text().toStdString();
    signAt("A6", today(), Sign::Afb);
    EXPECT_EQ(said(3),
              "The merge day of Kiln Field on 20 Sep 2026 names what may not be touched: A1, A2. Plan it anew, "
              "and put no old worksheet into the field.");
}

TEST_F(NoticeOfSign, FollowsTheBook) {
    signAt("A1", today() - 3, Sign::Afb);
    ASSERT_TRUE(notice()->isVisible());
    result("A1", today() - 1, Disease::Afb, Verdict::Negative, Method::Laboratory);
    EXPECT_EQ(said(2), "No hive is held by it on 15 Sep 2026.") << "answered; put away by hand";
    ASSERT_TRUE(notice()->isVisible());
    notice()->putAway();
    signAt("A1", today() - 4, Sign::Afb);
    EXPECT_TRUE(notice()->isHidden()) << "of old, and answered since";

    signAt("A2", today(), Sign::Afb);
    ASSERT_TRUE(notice()->isVisible());
    dialogs.expectCorrection = true;
    dialogs.correctionAnswer = edit::Correction{QStringLiteral("R. Tester"), QStringLiteral("wrong hive")};
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(notice()->isHidden()) << "taken back";
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(notice()->isVisible()) << "and there again";
}

TEST_F(NoticeOfSign, CountsOnTheDayOfTheSignWhereAnEarlierOneIsShown) {
    window->desk()->setDay(today() - 10);
    signAt("A1", today() - 2, Sign::Afb);
    ASSERT_TRUE(notice()->isVisible());
    EXPECT_EQ(said(2).substr(0, 67), "6 hives are held by it on 13 Sep 2026: 6 of 6 in Kiln Field. They a");
    window->desk()->setDay(today());
    EXPECT_EQ(said(2).substr(0, 42), "6 hives are held by it on 15 Sep 2026: 6 o");
}

} // namespace
