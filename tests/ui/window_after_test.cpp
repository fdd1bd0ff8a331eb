#include "core/edit/put_right.h"
#include "tests/ui/closing.h"
#include "ui/after/after_page.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QListView>
#include <QProcess>
#include <QPushButton>

namespace {

using core::rules::DueKind;

/// Afterwards, on the day of the test's book: A1 was united into A2 nine days before, A4 into A5 two days before; A6
/// was treated and the strips are to come out today.
struct After : tests::StepShown<ui::after::AfterPage> {
    std::map<std::string, core::ColonyId> ids; ///< read while all live
    After() {
        for (const char* label : {"A1", "A2", "A3", "A4", "A5", "A6"}) ids[label] = idOf(label);
    }
    void SetUp() override {
        tests::StepShown<ui::after::AfterPage>::SetUp();
        unite("A1", "A2", today() - 9);
        unite("A4", "A5", today() - 2);
        core::Treatment t;
        t.colony = ids["A6"];
        t.day = today() - 42;
        t.product = QStringLiteral("Strips");
        t.substance = QStringLiteral("formic acid");
        t.days = 42;
        write([&](const core::edit::EditContext& c) { return core::edit::logTreatment(c, t); });
        page->list()->setFocus();
        goTo("A2");
    }
    core::Day today() const { return book.clock().day; }
    /// Its visit of the day before today is taken back: it was not looked at since.
    void unite(const char* moved, const char* host, core::Day day) {
        const core::ColonyId from = ids.at(moved), into = ids.at(host);
        const core::VisitId before = session().visitsOf(into, 1).front().id;
        write([&](const core::edit::EditContext& c) {
            core::Visit v = *c.visit(before);
            v.day = day - 1;
            return core::edit::changeVisit(c, v);
        });
        const core::VisitId moving = session().visitsOf(from, 1).front().id;
        write([&](const core::edit::EditContext& c) {
            core::Visit v = *c.visit(moving);
            v.day = day - 1;
            return core::edit::changeVisit(c, v);
        });
        core::Lineage l;
        l.day = day;
        l.how = core::LineageHow::United;
        l.colony = from;
        l.into = into;
        write([&](const core::edit::EditContext& c) { return core::edit::recordUnionWhateverHolds(c, l); });
    }
    void goTo(const char* label) {
        const int row = page->model().rowAbout(ids.at(label));
        ASSERT_GE(row, 0) << label;
        page->list()->setCurrentIndex(page->list()->model()->index(row, 0));
    }
    std::string shown() const {
        QStringList out;
        for (int i = 0; i < page->model().rowCount(); ++i) {
            const auto& row = page->model().at(i);
            out << (row.heading.isEmpty() ? row.name + u' ' + core::rules::dueWord(row.what) : row.heading + u':');
        }
        return out.join(u' ').toStdString();
    }
    QWidget* field(const char* name) const {
        auto* found = page->panel()->findChild<QWidget*>(QStringLiteral("field.") + QLatin1StringView(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    core::Visit lastVisit(const char* label) const { return session().visitsOf(ids.at(label), 1).front(); }
};

TEST_F(After, OverdueComesFirst) {
    EXPECT_EQ(shown(), "Overdue: A2 union-check Today: A6 take-out To come: A5 union-check");
    EXPECT_EQ(page->model().at(1).when(today()).toStdString(), "11 Sep, 4 days over");
}

TEST_F(After, ThreeAnswersByKeysAreAVisitAndTheCheckIsOver) {
    key(Qt::Key_P);
    key(Qt::Key_Q);
    key(Qt::Key_Q); // none seen
    key(Qt::Key_E);
    EXPECT_EQ(said.toStdString(), "A2: paper gone · no queen seen · eggs");
    key(Qt::Key_Return);
    EXPECT_EQ(shown(), "Today: A6 take-out To come: A5 union-check");
    EXPECT_EQ(lastVisit("A2").day, today());
    EXPECT_EQ(lastVisit("A2").queen, core::QueenSeen::Eggs);
    EXPECT_EQ(did.toStdString(), "Checked the union of A2 on 2026-09-15: paper gone, no queen seen, eggs");
    EXPECT_EQ(problems(), "");
    desk->undo();
    EXPECT_EQ(shown(), "Overdue: A2 union-check Today: A6 take-out To come: A5 union-check");
}

TEST_F(After, SeenYesterdayIsWrittenAsOfYesterday) {
    auto* seen = page->findChild<QWidget*>(QStringLiteral("afterSeen"));
    seen->setFocus();
    key(Qt::Key_A, Qt::ControlModifier);
    type("never");
    page->list()->setFocus();
    key(Qt::Key_E);
    key(Qt::Key_Return);
    EXPECT_NE(said.indexOf(QStringLiteral("is no day")), -1) << said.toStdString();
    EXPECT_TRUE(seen->hasFocus());
    key(Qt::Key_A, Qt::ControlModifier);
    type("yesterday");
    page->list()->setFocus();
    key(Qt::Key_Return);
    EXPECT_EQ(lastVisit("A2").day, today() - 1);
    EXPECT_EQ(lastVisit("A2").note.toStdString(), "Union check: eggs.");
}

TEST_F(After, NeitherQueenNorEggsAsksOneQuestion) {
    for (const Qt::Key k : {Qt::Key_Q, Qt::Key_Q, Qt::Key_E, Qt::Key_E}) key(k);
    const size_t before = historyLines();
    key(Qt::Key_Return);
    EXPECT_EQ(historyLines(), before);
    EXPECT_NE(said.indexOf(QStringLiteral("Is it queenless?")), -1);
    key(Qt::Key_Z);
    EXPECT_EQ(lastVisit("A2").queen, core::QueenSeen::None);
    EXPECT_EQ(problems(), "");
    desk->undo();
    goTo("A2");
    for (const Qt::Key k : {Qt::Key_Q, Qt::Key_Q, Qt::Key_E, Qt::Key_E, Qt::Key_Return, Qt::Key_Return}) key(k);
    EXPECT_EQ(lastVisit("A2").queen, core::QueenSeen::Unknown) << "only what was seen";
}

TEST_F(After, AFailedUnionThatDiedEndsWithItsBroodAskedAbout) {
    key(Qt::Key_X);
    for (int i = 0; i < 3; ++i) key(Qt::Key_Down); // dead
    key(Qt::Key_Return);
    EXPECT_TRUE(page->panel()->isVisible()) << "the brood is asked about";
    EXPECT_NE(said.indexOf(QStringLiteral("looked at for foulbrood")), -1) << said.toStdString();
    EXPECT_TRUE(field("brood")->hasFocus());
    for (int i = 0; i < 4; ++i) key(Qt::Key_Down); // signs of American foulbrood
    key(Qt::Key_Return);
    EXPECT_FALSE(page->panel()->isVisible());
    EXPECT_EQ(session().colony(ids["A2"])->end, core::EndKind::Dead);
    EXPECT_TRUE(lastVisit("A2").signs.has(core::Sign::Afb));
    EXPECT_NE(did.indexOf(QStringLiteral("inspector")), -1) << did.toStdString();
    EXPECT_EQ(shown(), "Today: A2 result-awaited A6 take-out To come: A5 union-check") << "its result is awaited";
    EXPECT_EQ(problems(), "");
    goTo("A2");
    key(Qt::Key_R);
    EXPECT_TRUE(page->panel()->isVisible()) << "of one that lives no more too";
}

TEST_F(After, ADeadColonyThatNothingWasDueOf) {
    key(Qt::Key_L);
    key(Qt::Key_A, Qt::ControlModifier);
    type("A3");
    key(Qt::Key_Tab);
    type("starved");
    key(Qt::Key_Tab);
    key(Qt::Key_Down); // not looked at
    key(Qt::Key_Return);
    EXPECT_EQ(session().colony(ids["A3"])->end, core::EndKind::Dead);
    EXPECT_EQ(did.toStdString(),
              "A3 was found dead on 2026-09-15. Cause: starved. Nothing is known of its brood: keep its comb "
              "closed and apart until somebody has looked");
    EXPECT_FALSE(lastVisit("A3").broodChecked);
    EXPECT_TRUE(page->list()->hasFocus());
    EXPECT_EQ(problems(), "");
}

TEST_F(After, TakenOutIsNoted) {
    goTo("A6");
    key(Qt::Key_T);
    EXPECT_EQ(did.toStdString(), "Took Strips out of A6 on 2026-09-15");
    EXPECT_EQ(problems(), "");
}

TEST_F(After, OfOneYardOrOfAll) {
    core::Yard mill;
    mill.name = QStringLiteral("Mill Lane");
    write([&](const core::edit::EditContext& c) { return core::edit::newYard(c, mill); });
    const std::string all = shown();
    for (const core::Yard& y : session().yards())
        if (y.name == mill.name) desk->setYard(y.id);
    EXPECT_EQ(shown(), all);
    key(Qt::Key_Y);
    EXPECT_EQ(shown(), "");
    EXPECT_EQ(labelled("afterWhere").toStdString(), "Nothing is due in Mill Lane on 15 Sep 2026.");
    page->list()->setFocus();
    key(Qt::Key_Y);
    EXPECT_EQ(shown(), all);
}

TEST_F(After, AnotherDayShownChangesNothingOfWhatIsDueToday) {
    const std::string now = shown();
    desk->setDay(today() - 30);
    EXPECT_EQ(shown(), now);
}

#ifdef YW_PROGRAM
TEST_F(After, TheCommandListsTheSame) {
    QProcess program;
    program.start(QStringLiteral(YW_PROGRAM), {QStringLiteral("due"), book.path(), QStringLiteral("--on"),
                                               core::isoText(today()), QStringLiteral("--json")});
    ASSERT_TRUE(program.waitForFinished());
    ASSERT_EQ(program.exitCode(), 0) << program.readAllStandardError().toStdString();
    QJsonArray listed = QJsonDocument::fromJson(program.readAllStandardOutput())[QStringLiteral("due")].toArray();
    int at = 0;
    for (int i = 0; i < page->model().rowCount(); ++i) {
        const auto& row = page->model().at(i);
        if (!row.heading.isEmpty()) continue;
        ASSERT_LT(at, listed.size());
        const QJsonObject other = listed[at++].toObject();
        EXPECT_EQ(other[QStringLiteral("colony")].toString(), row.name);
        EXPECT_EQ(other[QStringLiteral("what")].toString(), core::rules::dueWord(row.what));
        EXPECT_EQ(other[QStringLiteral("on")].toString(), core::isoText(row.on));
    }
    EXPECT_EQ(at, listed.size());
    EXPECT_EQ(at, 3);
}
#endif

} // namespace
