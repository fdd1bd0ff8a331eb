#include "core/edit/question.h"

#include "core/edit/edit_context.h"
#include "core/rules/question.h"
#include "tests/edit/edit_fixture.h"

namespace tests::edit {

namespace {

class Questions : public EditTest {
protected:
    static Question
    ask(const QString& name,
        const QString& json = QStringLiteral(R"({"all":[{"how":"below","than":32,"what":"weight"}]})")) {
        return {{}, name, QStringLiteral("colonies"), json, false};
    }
    std::optional<HistoryLine> keep(const Question& q) {
        return apply([&](const EditContext& c) { return keepQuestion(c, q); });
    }
    std::optional<HistoryLine> change(const Question& q) {
        return apply([&](const EditContext& c) { return changeQuestion(c, q); });
    }
    std::string refused(const std::function<void()>& work) const { return thrownBy(work).message; }
};

TEST_F(Questions, AreKeptChangedTakenBackAndUndone) {
    EXPECT_EQ(keep(ask(QStringLiteral(" Light ")))->text, "Kept the question Light");
    reopen();
    ASSERT_EQ(session->questions().size(), 1u);
    Question light = session->questions().front();
    EXPECT_EQ(light.name, "Light");
    EXPECT_EQ(rules::readAsk(light.ask), (rules::Ask{{rules::AskWhat::Weight, rules::AskHow::Below, 32}}));
    light.onPlan = true;
    EXPECT_EQ(change(light)->text, "What the question Light finds is marked on the plan");
    EXPECT_FALSE(change(light)) << "it says so already";
    light.name = QStringLiteral("Too light");
    EXPECT_EQ(change(light)->text, "Changed the question Too light");
    EXPECT_EQ(problems(), "");
    apply([&](const EditContext& c) { return takeBackQuestion(c, light.id); });
    EXPECT_TRUE(session->questions().empty());
    while (session->undo()) continue;
    EXPECT_TRUE(session->questions().empty());
    while (session->redo()) continue;
    EXPECT_TRUE(session->questions().empty());
    session->undo();
    EXPECT_EQ(session->questions(), std::vector<Question>{light});
    EXPECT_EQ(problems(), "");
}

TEST_F(Questions, RefusalsNameWhatIsWrong) {
    keep(ask(QStringLiteral("Light")));
    EXPECT_EQ(refused([&] { keep(ask(QStringLiteral("LIGHT"))); }), "There is a question of the name Light already.");
    EXPECT_EQ(refused([&] { keep(ask({})); }), "Name: expected 1 to 60 characters, found 0.");
    EXPECT_EQ(refused([&] { keep(ask(QStringLiteral("Odd"), QStringLiteral("{}"))); }),
              "A question needs one to four conditions, each with a value that it can have.");
    Question visits = ask(QStringLiteral("Visits"));
    visits.about = QStringLiteral("visits");
    EXPECT_EQ(refused([&] { keep(visits); }), "A question is asked of the colonies.");
    Question gone = ask(QStringLiteral("Gone"));
    gone.id = {7};
    EXPECT_EQ(refused([&] { change(gone); }), "That question is no longer in the book.");
    EXPECT_EQ(refused([&] { apply([](const EditContext& c) { return takeBackQuestion(c, {7}); }); }),
              "That question is no longer in the book.");
    EXPECT_EQ(session->questions().size(), 1u);
}

} // namespace

} // namespace tests::edit
