#include "tests/edit/edit_fixture.h"
#include "tests/edit/random_edits.h"

namespace tests::edit {

namespace {

class RandomTakeBack : public EditTest, public testing::WithParamInterface<unsigned> {
protected:
    void edit() {
        try {
            session->apply([&](const EditContext& c) { return m_edits.next(c); });
        } catch (const Error& e) {
            EXPECT_TRUE(e.kind() == Error::Kind::BadData || e.kind() == Error::Kind::Hold) << e.what();
        }
    }
    /// A line of any age: taken back or refused in a sentence; then undo and redo lead away and back again.
    void takeBack() {
        const auto lines = session->history(60);
        if (lines.empty()) return;
        const auto& line = lines[static_cast<size_t>(m_edits.upTo(static_cast<int>(lines.size()) - 1))];
        const auto before = rowsText(path());
        try {
            session->takeBack(line.seq, kWhy);
        } catch (const Error& e) {
            EXPECT_EQ(e.kind(), Error::Kind::BadData) << e.what();
            EXPECT_FALSE(e.userMessage().contains(QStringLiteral("breaks its rules")))
                << "the schema alone refused it: " << e.what();
            EXPECT_EQ(rowsText(path()), before);
            ++refused;
            return;
        }
        ++taken;
        const auto after = rowsText(path());
        session->redo(kWhy);
        EXPECT_EQ(rowsText(path()), before);
        session->undo(kWhy);
        EXPECT_EQ(rowsText(path()), after);
    }
    void step() {
        const int dice = m_edits.upTo(19);
        if (dice < 9)
            edit();
        else if (dice < 14)
            takeBack();
        else if (dice < 16)
            session->undo(kWhy);
        else if (dice < 19)
            session->redo(kWhy);
        else
            reopen();
    }

    const Correction kWhy{QStringLiteral("Ana"), QStringLiteral("wrong hive noted")};
    RandomEdits m_edits{GetParam()};
    int taken = 0;
    int refused = 0;
};

TEST_P(RandomTakeBack, LeavesUndoAndRedoWhole) {
    const auto empty = rowsText(path());
    newYard(QStringLiteral("N"));
    newYard(QStringLiteral("S"));
    for (int i = 0; i < 5; ++i) newColony(YardId{1}, QString::number(i), {i * 1000, 0});
    for (int i = 0; i < 200 && !HasFailure(); ++i) step();
    EXPECT_EQ(problems(), "");
    const auto rows = rowsText(path());
    int undone = 0;
    while (session->undo(kWhy)) ++undone;
    EXPECT_EQ(rowsText(path()), empty);
    for (int i = 0; i < undone; ++i) session->redo(kWhy);
    EXPECT_EQ(rowsText(path()), rows);
    EXPECT_EQ(problems(), "");
    EXPECT_GT(taken, 5) << "too few went through to show anything";
    EXPECT_GT(refused, 5);
}

INSTANTIATE_TEST_SUITE_P(Seeds, RandomTakeBack, testing::Values(1u, 2u, 3u, 4u));

} // namespace

} // namespace tests::edit
