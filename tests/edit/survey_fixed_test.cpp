#include "core/edit/survey.h"
#include "core/model/fixed_shape.h"
#include "tests/edit/put_right_fixture.h"

namespace tests::edit {

namespace {

class SurveyFixed : public PutRight {
protected:
    FixedThing thing(FixedKind kind, std::vector<MmPoint> points, const QString& name = {}) const {
        FixedThing t;
        t.yard = north;
        t.kind = kind;
        t.name = name;
        t.points = std::move(points);
        if (kind == FixedKind::Tree) t.radius = Millimetres{1500};
        return t;
    }
    static Work add(const FixedThing& t) {
        return [=](const EditContext& c) { return addFixedThing(c, t); };
    }
    static Work change(const FixedThing& t) {
        return [=](const EditContext& c) { return changeFixedThing(c, t); };
    }
    FixedThing last() const { return session->fixedThingsOf(north).back(); }
};

const std::vector<MmPoint> kLine = {{-2000, 3000}, {4000, 3500}};

TEST_F(SurveyFixed, AreDrawnAndSurviveReopening) {
    EXPECT_EQ(done(add(thing(FixedKind::Hedge, kLine))), "Corrected the drawing of North: added hedge");
    EXPECT_EQ(done(add(thing(FixedKind::Tree, {{0, 9000}}, QStringLiteral(" the lime ")))),
              "Corrected the drawing of North: added tree “the lime”");
    EXPECT_EQ(done(add(thing(FixedKind::Shed, rectangleOf({0, -5000}, {3000, -4000}, {0, -2000})))),
              "Corrected the drawing of North: added shed");
    reopen();
    const auto things = session->fixedThingsOf(north);
    ASSERT_EQ(things.size(), 3u);
    EXPECT_EQ(things[0].points, kLine);
    EXPECT_EQ(things[1].name, "the lime");
    EXPECT_EQ(things[1].radius, Millimetres{1500});
    EXPECT_EQ(things[2].points.size(), 4u);
    EXPECT_TRUE(session->fixedThingsOf(newYard(QStringLiteral("South"))).empty());
}

TEST_F(SurveyFixed, RefuseWhatDrawsNothing) {
    EXPECT_EQ(refusal(add(thing(FixedKind::Fence, {{0, 0}}))), "The fence needs at least 2 points, found 1.");
    EXPECT_EQ(refusal(add(thing(FixedKind::Water, kLine))), "The water needs at least 3 points, found 2.");
    EXPECT_EQ(refusal(add(thing(FixedKind::Tree, kLine))), "The tree has too many points: 2.");
    EXPECT_EQ(refusal(add(thing(FixedKind::Track, {{0, 0}, {0, 0}}))),
              "Two points of the track that follow each other are one.");
    EXPECT_EQ(refusal(add(thing(FixedKind::Shed, {{0, 0}, {3000, 0}, {3000, 2000}, {500, 2000}}))),
              "The four corners of the shed make no rectangle.");
    EXPECT_EQ(refusal(add(thing(FixedKind::Hedge, {{0, 0}, {0, 10'000'001}}))),
              "A point of the hedge: expected at most 10000 m from the yard's origin.");
    EXPECT_EQ(refusal(add(thing(FixedKind::Hedge, std::vector<MmPoint>(201, MmPoint{})))),
              "The hedge has too many points: 201.");
    FixedThing tree = thing(FixedKind::Tree, {{0, 0}});
    tree.radius = Millimetres{99};
    EXPECT_EQ(refusal(add(tree)), "Radius of the tree: expected 0.1 to 50 m.");
    EXPECT_EQ(refusal(add(thing(FixedKind::Hedge, kLine, QString(61, u'x')))),
              "Name: expected 1 to 60 characters, found 61.");
}

TEST_F(SurveyFixed, AreMovedShapedAndNamed) {
    apply(add(thing(FixedKind::Hedge, kLine)));
    FixedThing now = last();
    for (MmPoint& p : now.points) p = p + MmPoint{600, 800};
    // Own calculation: 600 and 800 are 1,000 mm.
    EXPECT_EQ(done(change(now)), "Corrected the drawing of North: moved the hedge by 1 m");
    now.points.back() = {9000, 0};
    EXPECT_EQ(done(change(now)), "Corrected the drawing of North: changed the shape of the hedge");
    now.name = QStringLiteral("north side");
    EXPECT_EQ(done(change(now)), "Corrected the drawing of North: named the hedge “north side”");
    now.kind = FixedKind::Fence;
    EXPECT_EQ(done(change(now)), "Corrected the drawing of North: changed the hedge “north side”");
    now.name = QStringLiteral("  ");
    EXPECT_EQ(done(change(now)), "Corrected the drawing of North: the fence “north side” has no name any more");
    now.name.clear();
    EXPECT_EQ(done(change(now)), "") << "it says so already";
    EXPECT_EQ(last(), now);
    now.id = FixedThingId{99};
    EXPECT_EQ(refusal(change(now)), "That thing is no longer in the drawing.");
}

TEST_F(SurveyFixed, AreTakenBackOnceAndComeBackByUndo) {
    apply(add(thing(FixedKind::Water, {{0, 0}, {1000, 0}, {0, 1000}}, QStringLiteral("pond"))));
    const FixedThingId id = last().id;
    const auto back = [=](const EditContext& c) { return takeBackFixedThing(c, id); };
    EXPECT_EQ(done(back), "Corrected the drawing of North: took back the water “pond”");
    EXPECT_TRUE(session->fixedThingsOf(north).empty());
    EXPECT_EQ(refusal(back), "That thing is no longer in the drawing.");
}

TEST_F(SurveyFixed, KeepTheirYardInTheBook) {
    const YardId south = newYard(QStringLiteral("South"));
    FixedThing tree = thing(FixedKind::Tree, {{0, 0}});
    tree.yard = south;
    apply(add(tree));
    EXPECT_EQ(refusal([=](const EditContext& c) { return takeBackYard(c, south); }),
              "The drawing of South shows a thing of its own (tree); take that back first.");
}

TEST(FixedShape, IsReadOnlyAsItIsWritten) {
    const std::vector<MmPoint> points = {{0, 0}, {-1500, 250}, {10'000'000, -10'000'000}};
    EXPECT_EQ(pointsText(points), "0,0 -1500,250 10000000,-10000000");
    EXPECT_EQ(parsePoints(pointsText(points)), points);
    for (const char* bad :
         {"", "1", "1,", ",1", "1,2 ", "1,2  3,4", "01,2", "+1,2", "1,2,3", "1.5,2", "1,99999999999", "-0,1"})
        EXPECT_EQ(parsePoints(QString::fromLatin1(bad)), std::nullopt) << bad;
}

/// Own calculation, by hand: a side of 3 : 4 : 5 and a depth of 5 m to its left.
TEST(FixedShape, MakesARectangleOfASideAndAPointAcross) {
    const std::vector<MmPoint> expected = {{0, 0}, {3000, 4000}, {-1000, 7000}, {-4000, 3000}};
    EXPECT_EQ(rectangleOf({0, 0}, {3000, 4000}, {-4000, 3000}), expected);
    EXPECT_EQ(rectangleOf({0, 0}, {3000, 4000}, {-1000, 7000}), expected);
    EXPECT_EQ(shapeProblem(FixedKind::Shed, rectangleOf({7, 11}, {3019, 977}, {-1234, 1867})), std::nullopt);
    EXPECT_EQ(shapeProblem(FixedKind::Shed, rectangleOf({0, 0}, {3000, 4000}, {3000, 4000})), ShapeProblem::NoLength);
}

} // namespace

} // namespace tests::edit
