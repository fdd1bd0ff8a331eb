#include "tests/edit/edit_fixture.h"
#include "tests/edit/random_edits.h"

namespace tests::edit {

namespace {

class Undo : public EditTest {};

TEST_F(Undo, OfAnEmptyHistoryDoesNothing) {
    EXPECT_FALSE(session->undoText());
    EXPECT_FALSE(session->redoText());
    EXPECT_FALSE(session->undo());
    EXPECT_FALSE(session->redo());
    EXPECT_TRUE(session->history(10).empty());
}

TEST_F(Undo, GoesBackLastInFirstOutAndForwardAgainAfterReopening) {
    const auto empty = rowsText(path());
    newYard(QStringLiteral("A"));
    const auto a = rowsText(path());
    newYard(QStringLiteral("B"));
    const auto b = rowsText(path());
    newYard(QStringLiteral("C"));
    const auto c = rowsText(path());
    reopen();
    EXPECT_EQ(session->undo()->text, "Undone: Added yard C");
    EXPECT_EQ(rowsText(path()), b);
    session->undo();
    EXPECT_EQ(rowsText(path()), a);
    reopen();
    EXPECT_EQ(session->undoText(), "Added yard A");
    EXPECT_EQ(session->redoText(), "Added yard B");
    EXPECT_EQ(session->redo()->text, "Done again: Added yard B");
    EXPECT_EQ(session->redoText(), "Added yard C");
    session->undo();
    session->undo();
    EXPECT_EQ(rowsText(path()), empty);
    EXPECT_FALSE(session->undoText());
    reopen();
    session->redo();
    session->redo();
    session->redo();
    EXPECT_EQ(rowsText(path()), c);
    EXPECT_FALSE(session->redoText());
    EXPECT_EQ(session->history(100).size(), 11u) << "every undo and redo is a line of its own";
}

TEST_F(Undo, ANewEditEndsAllRedos) {
    newYard(QStringLiteral("A"));
    newYard(QStringLiteral("B"));
    session->undo();
    newYard(QStringLiteral("C"));
    EXPECT_FALSE(session->redoText());
    EXPECT_FALSE(session->redo());
    session->undo();
    EXPECT_EQ(session->redoText(), "Added yard C");
    EXPECT_EQ(session->undoText(), "Added yard A");
    session->undo();
    EXPECT_EQ(session->redoText(), "Added yard A");
}

class RandomUndo : public testing::TestWithParam<unsigned> {};

/// One book and what its rows were after each edit that is not undone.
class UndoModel : public EditTest {
public:
    void TestBody() override {}

    explicit UndoModel(unsigned seed) : m_edits(seed) {
        newYard(QStringLiteral("N"));
        newYard(QStringLiteral("S"));
        for (int i = 0; i < 5; ++i) newColony(YardId{1}, QString::number(i), {i * 1000, 0});
        m_rows = {rowsText(path())};
    }

    void step() {
        const int dice = m_edits.upTo(9);
        if (dice < 6)
            edit();
        else if (dice < 8)
            undo();
        else if (dice < 9)
            redo();
        else
            reopen();
        EXPECT_EQ(rowsText(path()), m_rows[m_at]);
    }
    size_t edits() const { return m_done; }
    std::string problemsNow() const { return problems(); }

private:
    void edit() {
        try {
            if (!session->apply([&](const EditContext& c) { return m_edits.next(c); })) return;
        } catch (const Error& e) {
            EXPECT_TRUE(e.kind() == Error::Kind::BadData || e.kind() == Error::Kind::Hold)
                << e.what() << e.detail().toStdString();
            return;
        }
        ++m_done;
        m_rows.resize(++m_at);
        m_rows.push_back(rowsText(path()));
    }
    void undo() {
        if (m_at == 0) return; // what the book was made with stays
        EXPECT_TRUE(session->undo(m_why));
        --m_at;
    }
    void redo() {
        EXPECT_EQ(session->redo(m_why).has_value(), m_at + 1 < m_rows.size());
        if (m_at + 1 < m_rows.size()) ++m_at;
    }

    RandomEdits m_edits;
    std::vector<std::string> m_rows;
    size_t m_at = 0;
    Correction m_why{QStringLiteral("A. Keeper"), QStringLiteral("a slip")}; ///< what a treatment asks for
    size_t m_done = 0;
};

TEST_P(RandomUndo, GivesTheSameRowsBackAndTheBookStaysInOrder) {
    UndoModel model(GetParam());
    for (int i = 0; i < 250; ++i) {
        model.step();
        if (testing::Test::HasFailure()) {
            ADD_FAILURE() << "seed " << GetParam() << ", step " << i;
            return;
        }
    }
    EXPECT_GT(model.edits(), 60u) << "too few edits went through to show anything";
    EXPECT_EQ(model.problemsNow(), "");
}

INSTANTIATE_TEST_SUITE_P(Seeds, RandomUndo, testing::Values(1u, 2u, 3u));

} // namespace

} // namespace tests::edit
