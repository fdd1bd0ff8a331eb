#include "tests/edit/edit_fixture.h"

#include "core/edit/edit_context.h"
#include "core/edit/people.h"

namespace tests::edit {

namespace {

class People : public EditTest {
protected:
    void add(const QString& name) {
        ASSERT_TRUE(apply([&](const EditContext& c) { return addPerson(c, name); }));
    }
    QStringList shown() const {
        QStringList names;
        for (const Person& p : session->people()) names << p.name + QLatin1String(p.active ? "" : " (not active)");
        return names;
    }
    Person person(const QString& name) const {
        for (const Person& p : session->people())
            if (p.name == name) return p;
        throw std::runtime_error("no such person");
    }
};

TEST_F(People, AreListedInNaturalOrderAndSurviveReopening) {
    add(QStringLiteral(" Keeper 10 "));
    add(QStringLiteral("Keeper 9"));
    EXPECT_EQ(shown(), (QStringList{"Keeper 9", "Keeper 10"}));
    reopen();
    EXPECT_EQ(shown(), (QStringList{"Keeper 9", "Keeper 10"}));
    EXPECT_EQ(problems(), "");
}

TEST_F(People, OfOneNameAreOne) {
    add(QStringLiteral("Åse"));
    EXPECT_EQ(thrownBy([&] { add(QStringLiteral("åSE")); }).message, "Åse is among the people of the book already.");
    EXPECT_EQ(thrownBy([&] { add(QStringLiteral("  ")); }).message, "Name: expected 1 to 60 characters, found 0.");
    EXPECT_EQ(session->history(10).size(), 1u);
}

TEST_F(People, LeaveTheListAndComeBackToIt) {
    add(QStringLiteral("Ana"));
    Person ana = person(QStringLiteral("Ana"));
    ana.active = false;
    apply([&](const EditContext& c) { return changePerson(c, ana); });
    EXPECT_EQ(shown(), QStringList("Ana (not active)"));
    EXPECT_FALSE(apply([&](const EditContext& c) { return changePerson(c, ana); })) << "nothing changed";
    add(QStringLiteral("ana"));
    EXPECT_EQ(shown(), QStringList("ana")) << "the same person, as it was typed last";
    session->undo();
    session->undo();
    EXPECT_EQ(shown(), QStringList("Ana"));
    EXPECT_EQ(problems(), "");
}

TEST_F(People, AreRenamedButNotToAnother) {
    add(QStringLiteral("Ana"));
    add(QStringLiteral("Bo"));
    const PersonId bo = person(QStringLiteral("Bo")).id;
    EXPECT_EQ(thrownBy([&] { apply([&](const EditContext& c) {
                                 return changePerson(c, {bo, "ANA", true});
                             }); }).kind,
              Error::Kind::BadData);
    apply([&](const EditContext& c) { return changePerson(c, {bo, "BO", true}); });
    EXPECT_EQ(shown(), (QStringList{"Ana", "BO"}));
    EXPECT_EQ(session->undoText(), "Changed the name Bo to BO among the people of the book");
}

TEST_F(People, CanBeTakenBack) {
    add(QStringLiteral("Ana"));
    const PersonId ana = person(QStringLiteral("Ana")).id;
    apply([&](const EditContext& c) { return takeBackPerson(c, ana); });
    EXPECT_TRUE(session->people().empty());
    EXPECT_EQ(thrownBy([&] { apply([&](const EditContext& c) { return takeBackPerson(c, ana); }); }).message,
              "That person is no longer in the book.");
    session->undo();
    EXPECT_EQ(shown(), QStringList("Ana"));
}

} // namespace

} // namespace tests::edit
