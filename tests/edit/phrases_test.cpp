#include "tests/edit/edit_fixture.h"

#include "core/edit/edit_context.h"
#include "core/edit/phrases.h"

namespace tests::edit {

namespace {

class Phrases : public EditTest {
protected:
    void add(const QString& brief, const QString& sentence) {
        ASSERT_TRUE(apply([&](const EditContext& c) { return addPhrase(c, brief, sentence); }));
    }
    QStringList shown() const {
        QStringList out;
        for (const Phrase& p : session->phrases()) out << p.brief + QStringLiteral(" = ") + p.sentence;
        return out;
    }
    Phrase phrase() const { return session->phrases().front(); }
    QString refused(const QString& brief, const QString& sentence) {
        return QString::fromStdString(thrownBy([&] { add(brief, sentence); }).message);
    }
};

TEST_F(Phrases, AreKeptInNaturalOrder) {
    add(QStringLiteral("q10"), QStringLiteral("Ten."));
    add(QStringLiteral(" q9 "), QStringLiteral("  Queen seen,\n laying well. "));
    EXPECT_EQ(shown(), (QStringList{"q9 = Queen seen, laying well.", "q10 = Ten."}));
    reopen();
    EXPECT_EQ(shown().size(), 2);
    EXPECT_EQ(problems(), "");
}

TEST_F(Phrases, ABriefWordStandsForOneSentence) {
    add(QStringLiteral("Åx"), QStringLiteral("One."));
    EXPECT_EQ(refused(QStringLiteral("åX"), QStringLiteral("Two.")).toStdString(),
              "Åx stands for another sentence already: “One.”");
    EXPECT_EQ(refused(QStringLiteral("two words"), QStringLiteral("x")).toStdString(),
              "Brief word: expected one word of at most 12 characters, found “two words”.");
    EXPECT_EQ(refused(QStringLiteral("thirteenlong1"), QStringLiteral("x")).toStdString(),
              "Brief word: expected one word of at most 12 characters, found “thirteenlong1”.");
    EXPECT_EQ(refused(QStringLiteral("a"), QStringLiteral("  ")).toStdString(),
              "Sentence: expected 1 to 500 characters, found 0.");
    EXPECT_EQ(refused(QStringLiteral("a"), QString(501, u'x')).toStdString(),
              "Sentence: expected 1 to 500 characters, found 501.");
    EXPECT_EQ(shown(), QStringList("Åx = One."));
    add(QStringLiteral("twelvelong12"), QString(500, u'x'));
}

TEST_F(Phrases, AreChangedTakenBackAndUndone) {
    add(QStringLiteral("q"), QStringLiteral("Queen seen."));
    Phrase now = phrase();
    EXPECT_FALSE(apply([&](const EditContext& c) { return changePhrase(c, now); })) << "nothing changed";
    now.sentence = QStringLiteral("Queen seen, marked.");
    now.brief = QStringLiteral("Q");
    apply([&](const EditContext& c) { return changePhrase(c, now); });
    EXPECT_EQ(shown(), QStringList("Q = Queen seen, marked."));
    EXPECT_EQ(session->undoText(), "Changed the quick sentence Q: “Queen seen, marked.”");
    apply([&](const EditContext& c) { return takeBackPhrase(c, now.id); });
    EXPECT_TRUE(shown().isEmpty());
    EXPECT_EQ(thrownBy([&] { apply([&](const EditContext& c) { return takeBackPhrase(c, now.id); }); }).message,
              "That quick sentence is no longer in the book.");
    session->undo();
    session->undo();
    EXPECT_EQ(shown(), QStringList("q = Queen seen."));
    session->undo();
    EXPECT_TRUE(shown().isEmpty());
    session->redo();
    EXPECT_EQ(shown(), QStringList("q = Queen seen."));
    EXPECT_EQ(problems(), "");
}

} // namespace

} // namespace tests::edit
