#include "tests/edit/every_edit.h"

#include "tests/edit/edit_fixture.h"
#include "tests/support/rounds.h"

#include <map>
#include <set>

namespace tests::edit {

namespace {

/// One book, what its rows were after each edit that is not undone, and which edits went through.
class EveryEditModel : public EditTest {
public:
    void TestBody() override {}

    explicit EveryEditModel(unsigned seed) : m_edits(seed) {
        m_empty = rowsText(path());
        newYard(QStringLiteral("N"));
        newYard(QStringLiteral("S"));
        for (int i = 0; i < 6; ++i) {
            Visit v;
            v.colony = newColony(YardId{1 + i % 2}, QString::number(i), {i * 1000, 0});
            v.day = dayOf(2026, 5, 1);
            v.broodFrames = v.broodChecked = 5; // else no union or divide goes through
            visit(v);
        }
        m_rows = {rowsText(path())};
    }

    void step() {
        const int dice = m_edits.upTo(9);
        if (dice < 8)
            edit();
        else if (dice < 9)
            undo();
        else
            redo();
        EXPECT_EQ(rowsText(path()), m_rows[m_at]) << m_tried;
        EXPECT_EQ(problems(), "") << m_tried;
    }
    void undoAll() {
        while (session->undo(kWhy)) continue;
        EXPECT_EQ(rowsText(path()), m_empty);
        EXPECT_EQ(problems(), "");
    }
    const std::map<std::string, int>& done() const { return m_done; }
    int asked() const { return m_asked; }

private:
    void edit() {
        ChangeSet change;
        const auto work = [&](const EditContext& c) {
            auto [name, what] = m_edits.next(c);
            m_tried = name;
            return what;
        };
        m_tried = "an edit that was refused";
        try {
            session->read([&](const EditContext& c) { change = work(c); });
        } catch (const Error& e) {
            EXPECT_TRUE(e.kind() == Error::Kind::BadData || e.kind() == Error::Kind::Hold) << e.what();
            return;
        }
        if (apply(change)) kept();
    }
    /// Judged sound, it is written: only a hold that rests on it asks for a correction.
    bool apply(const ChangeSet& change) {
        const auto same = [&](const EditContext&) { return change; };
        try {
            return session->apply(same).has_value();
        } catch (const Error& e) {
            EXPECT_EQ(e.kind(), Error::Kind::Correction) << m_tried << ": " << e.what() << e.detail().toStdString();
            EXPECT_EQ(rowsText(path()), m_rows[m_at]) << m_tried;
        }
        ++m_asked;
        return session->apply(same, kWhy).has_value();
    }
    void kept() {
        ++m_done[m_tried];
        m_rows.resize(++m_at);
        m_rows.push_back(rowsText(path()));
    }
    void undo() {
        m_tried = "undo";
        if (m_at == 0) return; // what the book was made with stays until the end
        EXPECT_TRUE(session->undo(kWhy));
        --m_at;
    }
    void redo() {
        m_tried = "redo";
        EXPECT_EQ(session->redo(kWhy).has_value(), m_at + 1 < m_rows.size());
        if (m_at + 1 < m_rows.size()) ++m_at;
    }

    const Correction kWhy{QStringLiteral("Ana"), QStringLiteral("wrong hive noted")};
    EveryEdit m_edits;
    std::string m_empty;
    std::vector<std::string> m_rows;
    size_t m_at = 0;
    std::string m_tried;
    std::map<std::string, int> m_done;
    int m_asked = 0;
};

TEST(EveryEdit, KeepsTheBookInOrderAndIsUndoneToTheFirstState) {
    std::map<std::string, int> done;
    int asked = 0;
    for (unsigned seed = 1; seed <= static_cast<unsigned>(rounds(5)) && !testing::Test::HasFailure(); ++seed) {
        SCOPED_TRACE(seed);
        EveryEditModel model(seed);
        for (int i = 0; i < 260 && !testing::Test::HasFailure(); ++i) model.step();
        model.undoAll();
        for (const auto& [name, count] : model.done()) done[name] += count;
        asked += model.asked();
    }
    std::string told;
    for (const auto& [name, count] : done) told += name + ' ' + std::to_string(count) + '\n';
    EXPECT_GE(done.size(), 39u) << "kinds of edits that went through:\n" << told;
    EXPECT_GE(done["changePlacement"], 5) << told;
    EXPECT_GT(asked, 0) << told;
}

} // namespace

} // namespace tests::edit
