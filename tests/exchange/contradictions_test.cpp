#include "tests/exchange/fault_cases.h"

// What is wrong between rows, or between rows and the book.

namespace tests::exchange {
namespace {

constexpr char kColonies[] = "colony,yard,stand,x_m,y_m,since,ended,end\n";
constexpr char kVisits[] = "colony,date,boxes,upper_bees_top,upper_stores_frames\n";
constexpr char kTransfers[] = "date,from,to,what,count\n";
constexpr char kTreatments[] = "colony,yard,date,product,substance\n";
constexpr char kLineage[] = "date,how,colony,into,by\n";
constexpr char kPlacements[] = "colony,date,yard,stand,x_m,y_m,heading_deg\n";
constexpr char kResults[] = "colony,yard,date,disease,result,method,by,paper\n";

QByteArray rows(const char* header, const char* text) { return QByteArray(header) + text; }

/// The same fault whether all comes in one import or the rest is in the book already.
void expectBoth(const FaultCase& c) {
    expectFaultsTogether(c);
    expectFaultsAgainstBook({}, c);
}

void expectBoth(const char* name, const char* file, const QByteArray& text, const QStringList& places) {
    expectBoth({name, {{f(file), text}}, places});
}

TEST(Contradictions, NamesThatAreNotThere) {
    expectBoth("visit of no colony", "visits.csv", rows(kVisits, "Z,2026-05-01,,,\n"), {f("visits.csv:2: colony")});
    expectBoth("carry to no yard", "placements.csv", rows(kPlacements, "A,2026-05-01,Moor,1,0,0,\n"),
               {f("placements.csv:2: yard")});
    expectBoth("order for no yard", "results.csv", rows(kResults, ",Moor,2026-05-01,afb,order,inspector,x,1\n"),
               {f("results.csv:2: yard")});
}

TEST(Contradictions, DaysOutsideALife) {
    expectBoth("visit before", "visits.csv", rows(kVisits, "A,2025-04-30,,,\n"), {f("visits.csv:2: date")});
    expectBoth("visit after", "visits.csv", rows(kVisits, "D,2026-03-02,,,\nD,2026-03-01,,,\n"),
               {f("visits.csv:2: date")});
    expectBoth("treatment after", "treatments.csv", rows(kTreatments, "D,,2026-03-02,x,x\n"),
               {f("treatments.csv:2: date")});
    expectBoth("to the dead", "transfers.csv", rows(kTransfers, "2026-03-02,A,D,feed,\n"), {f("transfers.csv:2: to")});
    expectBoth("bees of the dead", "transfers.csv", rows(kTransfers, "2026-03-02,D,A,bees,\n2026-03-02,D,A,brood,\n"),
               {f("transfers.csv:2: from"), f("transfers.csv:3: from")});
    expectBoth("result before", "results.csv", rows(kResults, "A@2025-05-01,,2025-04-30,afb,negative,laboratory,x,\n"),
               {f("results.csv:2: date")});
    expectBoth("carry after", "placements.csv", rows(kPlacements, "D,2026-03-02,Home,8,9,9,\n"),
               {f("placements.csv:2: date")});
    expectBoth("divide of the dead", "lineage.csv", rows(kLineage, "2026-03-02,divided,D,A,\n"),
               {f("lineage.csv:2: into"), f("lineage.csv:2: date")});
}

TEST(Contradictions, OneVisitADay) {
    expectBoth("twice", "visits.csv", rows(kVisits, "A,2026-05-01,,,\na,2026-05-01,,,\n"), {f("visits.csv:3: date")});
    expectFaultsAgainstBook(
        {{f("visits.csv"), rows(kVisits, "A,2026-05-01,1,,\n")}},
        {"otherwise", {{f("visits.csv"), rows(kVisits, "A,2026-05-01,2,,\n")}}, {f("visits.csv:2: boxes")}});
}

TEST(Contradictions, UpperBoxOfAColonyInOne) {
    expectBoth("one box", "visits.csv", rows(kVisits, "A,2026-05-01,,3,\n"), {f("visits.csv:2: upper_bees_top")});
    expectBoth("its stores", "visits.csv", rows(kVisits, "A,2026-05-01,,,3\n"),
               {f("visits.csv:2: upper_stores_frames")});
    expectBoth("brought down", "visits.csv", rows(kVisits, "B,2026-06-01,,3,\nB,2026-05-01,1,,\n"),
               {f("visits.csv:2: upper_bees_top")});
    expectFaultsAgainstBook(
        {{f("visits.csv"), rows(kVisits, "B,2026-06-01,,3,\n")}},
        {"brought down before", {{f("visits.csv"), rows(kVisits, "B,2026-05-01,1,,\n")}}, {f("visits.csv:2: boxes")}});
}

TEST(Contradictions, OneColonyAStandADay) {
    expectBoth("both live", "colonies.csv", rows(kColonies, "E,Home,1,0,0,2026-01-01,,\n"),
               {f("colonies.csv:2: stand")});
    expectBoth("the dead stood there", "colonies.csv", rows(kColonies, "E,Hill,2,5,0,2026-02-28,,\n"),
               {f("colonies.csv:2: stand")});
    expectBoth("carried onto", "placements.csv", rows(kPlacements, "A,2026-05-01,Home,2,3,0,\n"),
               {f("placements.csv:2: stand")});
    expectBoth("for a day", "placements.csv", rows(kPlacements, "A,2026-05-01,Home,2,3,0,\nA,2026-05-02,Home,1,0,0,\n"),
               {f("placements.csv:2: stand")});
}

TEST(Contradictions, OnePositionAStand) {
    expectBoth("east", "colonies.csv", rows(kColonies, "E,Hill,2,6,0,2026-03-02,,\n"), {f("colonies.csv:2: x_m")});
    expectBoth("north", "placements.csv", rows(kPlacements, "A,2026-05-01,Hill,2,5,0.001,\n"),
               {f("placements.csv:2: y_m")});
}

TEST(Contradictions, OneColonyALabelADay) {
    expectBoth("both live", "colonies.csv", rows(kColonies, "a,Home,8,9,9,2026-01-01,,\n"),
               {f("colonies.csv:2: colony")});
    expectBoth("one day", "colonies.csv", rows(kColonies, "D,Home,8,9,9,2026-03-01,,\n"),
               {f("colonies.csv:2: colony")});
    expectBoth("before, still living", "colonies.csv", rows(kColonies, "A,Home,8,9,9,2024-01-01,,\n"),
               {f("colonies.csv:2: colony")});
}

TEST(Contradictions, EndsAndLineage) {
    expectBoth("with itself", "lineage.csv", rows(kLineage, "2026-05-01,united,A,a,\n"), {f("lineage.csv:2: into")});
    expectBoth("transfer with itself", "transfers.csv", rows(kTransfers, "2026-05-01,A,A,feed,\n"),
               {f("transfers.csv:2: to")});
    expectBoth("into one ended", "lineage.csv", rows(kLineage, "2026-03-02,united,A,D,\n"), {f("lineage.csv:2: into")});
    const FaultCase otherDay{"the dead united", {{f("lineage.csv"), rows(kLineage, "2026-02-01,united,D,A,\n")}}, {}};
    const FaultCase otherEnd{"united, not dead", {{f("lineage.csv"), rows(kLineage, "2026-03-01,united,D,A,\n")}}, {}};
    expectFaultsTogether({otherDay.name, otherDay.files, {f("colonies.csv:5: ended")}});
    expectFaultsAgainstBook({}, {otherDay.name, otherDay.files, {f("lineage.csv:2: date")}});
    expectFaultsTogether({otherEnd.name, otherEnd.files, {f("colonies.csv:5: end")}});
    expectFaultsAgainstBook({}, {otherEnd.name, otherEnd.files, {f("lineage.csv:2: how")}});
    expectBoth("twice", "lineage.csv", rows(kLineage, "2026-05-01,united,A,B,\n2026-05-01,shaken-out,A,C,\n"),
               {f("lineage.csv:3: colony")});
    expectBoth("the same twice", "lineage.csv", rows(kLineage, "2026-05-01,united,A,B,\n2026-05-01,united,A,B,\n"),
               {f("lineage.csv:3: colony")});
    expectBoth("circle of two", "lineage.csv", rows(kLineage, "2026-05-01,united,A,B,\n2026-05-01,united,B,A,\n"),
               {f("lineage.csv:2: into"), f("lineage.csv:3: into")});
    expectBoth("circle of three, one leads in", "lineage.csv",
               rows(kLineage, "2026-03-01,united,A,B,\n2026-03-01,shaken-out,B,C,\n2026-03-01,united,C,A,\n"),
               {f("lineage.csv:2: into"), f("lineage.csv:3: into"), f("lineage.csv:4: into")});
    expectBoth("divide into an old one", "lineage.csv", rows(kLineage, "2026-05-01,divided,A,B,\n"),
               {f("lineage.csv:2: into")});
    expectBoth("end without lineage", "colonies.csv", rows(kColonies, "E,Home,8,9,9,2026-01-01,2026-02-01,united\n"),
               {f("colonies.csv:2: end")});
}

TEST(Contradictions, ColonyRowAgainstLineage) {
    const char* colonies = "colony,yard,stand,x_m,y_m,since,ended,end\nE,Home,8,9,9,2026-01-01,%1,%2\n";
    const auto with = [&](const char* ended, const char* end) {
        return Texts{{f("colonies.csv"), QString::fromLatin1(colonies).arg(f(ended), f(end)).toUtf8()},
                     {f("lineage.csv"), rows(kLineage, "2026-02-01,united,E,B,\n")}};
    };
    expectBoth({"another day", with("2026-02-02", "united"), {f("colonies.csv:2: ended")}});
    expectBoth({"another end", with("2026-02-01", "dead"), {f("colonies.csv:2: end")}});
    expectBoth({"shaken out", with("2026-02-01", "shaken-out"), {f("colonies.csv:2: end")}});
}

TEST(Contradictions, OwnAncestor) {
    const QByteArray colonies = rows(kColonies, "E,Home,8,9,9,2026-05-01,,\nF,Home,9,12,9,2026-05-01,,\n");
    expectFaultsAgainstBook({},
                            {"of each other",
                             {{f("colonies.csv"), colonies},
                              {f("lineage.csv"), rows(kLineage, "2026-05-01,divided,E,F,\n2026-05-01,divided,F,E,\n")}},
                             {f("lineage.csv:2: into"), f("lineage.csv:3: into")}});
    expectFaultsAgainstBook({},
                            {"two mothers",
                             {{f("colonies.csv"), colonies},
                              {f("lineage.csv"), rows(kLineage, "2026-05-01,divided,A,E,\n2026-05-01,divided,B,E,\n")}},
                             {f("lineage.csv:3: into")}});
}

TEST(Contradictions, Placements) {
    expectBoth("two of a day", "placements.csv",
               rows(kPlacements, "A,2026-05-01,Home,8,9,9,\nA,2026-05-01,Home,9,12,9,\n"),
               {f("placements.csv:3: date")});
    expectBoth("before its life", "placements.csv", rows(kPlacements, "A@2025-05-01,2025-04-30,Home,8,9,9,\n"),
               {f("placements.csv:2: date")});
    expectFaultsAgainstBook({{f("placements.csv"), rows(kPlacements, "A,2026-05-01,Home,8,9,9,90\n")}},
                            {"otherwise",
                             {{f("placements.csv"), rows(kPlacements, "A,2026-05-01,Home,8,9,9,\n")}},
                             {f("placements.csv:2: heading_deg")}});
}

TEST(Contradictions, SameKeyOtherwise) {
    const char* yards = "yard,latitude_deg,longitude_deg,gate_x_m,gate_y_m,note\n";
    const char* colonies = "colony,yard,stand,x_m,y_m,heading_deg,since,brood_boxes,box,queen_born,ended,end\n";
    const auto expect = [&](const char* name, const char* file, const QByteArray& text, const char* column) {
        expectFaultsAgainstBook({{f("box_kinds.csv"), "box,frames,width_mm\ndeep,9,400\n"}},
                                {name, {{f(file), text}}, {QStringLiteral("%1:2: %2").arg(f(file), f(column))}});
    };
    expect("latitude", "yards.csv", rows(yards, "Home,52.2,-2.9,0,-3,by the lane\n"), "latitude_deg");
    expect("blank note", "yards.csv", rows(yards, "Home,52.1,-2.9,0,-3,\n"), "note");
    expect("gate", "yards.csv", rows(yards, "Home,52.1,-2.9,0,,by the lane\n"), "gate_y_m");
    expect("frames", "box_kinds.csv", "box,frames\nDEEP,10\n", "frames");
    expect("width", "box_kinds.csv", "box,frames,width_mm\ndeep,9,401\n", "width_mm");
    expect("shipped", "box_kinds.csv", "box,frames\nlangstroth-10,9\n", "frames");
    expect("stand", "colonies.csv", rows(colonies, "A,Home,8,0,0,180,2025-05-01,1,langstroth-10,2024,,\n"), "stand");
    expect("heading", "colonies.csv", rows(colonies, "A,Home,1,0,0,90,2025-05-01,1,langstroth-10,2024,,\n"),
           "heading_deg");
    expect("boxes", "colonies.csv", rows(colonies, "A,Home,1,0,0,180,2025-05-01,2,langstroth-10,2024,,\n"),
           "brood_boxes");
    expect("box", "colonies.csv", rows(colonies, "A,Home,1,0,0,180,2025-05-01,1,deep,2024,,\n"), "box");
    expect("queen", "colonies.csv", rows(colonies, "A,Home,1,0,0,180,2025-05-01,1,langstroth-10,,,\n"), "queen_born");
    expect("alive again", "colonies.csv", rows(colonies, "D,Hill,2,5,0,90,2025-05-01,1,langstroth-8,,,\n"), "ended");
    expect("another end", "colonies.csv",
           rows(colonies, "D,Hill,2,5,0,90,2025-05-01,1,langstroth-8,,2026-03-01,sold\n"), "end");
}

TEST(Contradictions, RowsTwice) {
    expectBoth("yard", "yards.csv", "yard\nMoor\nmoor\n", {f("yards.csv:3: yard")});
    expectBoth("box", "box_kinds.csv", "box,frames\ndeep,9\ndeep,9\n", {f("box_kinds.csv:3: box")});
    expectBoth("colony", "colonies.csv", rows(kColonies, "E,Home,8,9,9,2026-01-01,,\nE,Home,8,9,9,2026-01-01,,\n"),
               {f("colonies.csv:3: colony")});
    expectBoth("setting", "settings.csv", "name,value\ntrace.days,400\ntrace.days,401\n", {f("settings.csv:3: name")});
}

TEST(Contradictions, AnEndBeforeWhatTheBookHas) {
    const char* ended = "A,Home,1,0,0,180,2025-05-01,1,langstroth-10,2024,2026-04-30,dead\n";
    const QByteArray colonies = smallYard()[f("colonies.csv")].split('\n')[0] + '\n' + ended;
    const auto expect = [&](const char* file, const QByteArray& before) {
        expectFaultsAgainstBook({{f(file), before}},
                                {file, {{f("colonies.csv"), colonies}}, {f("colonies.csv:2: ended")}});
    };
    expect("visits.csv", rows(kVisits, "A,2026-05-01,,,\n"));
    expect("transfers.csv", rows(kTransfers, "2026-05-01,A,B,bees,\n"));
    expect("transfers.csv", rows(kTransfers, "2026-05-01,B,A,feed,\n"));
    expect("treatments.csv", rows(kTreatments, "A,,2026-05-01,x,x\n"));
    expect("placements.csv", rows(kPlacements, "A,2026-05-01,Home,8,9,9,\n"));
    expect("lineage.csv", rows(kLineage, "2026-05-01,united,B,A,\n"));
    expectFaultsAgainstBook(
        {{f("visits.csv"), rows(kVisits, "A,2026-05-01,,,\n")}},
        {"by lineage", {{f("lineage.csv"), rows(kLineage, "2026-04-30,united,A,B,\n")}}, {f("lineage.csv:2: date")}});
}

TEST(Contradictions, AFileThatIsNotThere) {
    const Workbench bench;
    auto files = bench.write(smallYard());
    files.files.push_back({core::exchange::FileKind::Visits, bench.folder() + f("/none.csv")});
    files.files.push_back({core::exchange::FileKind::Transfers, bench.folder()});
    const auto report = importIntoBook(bench.book(), bench.clock(), files, false);
    EXPECT_EQ(placesOf(report).mid(0, 1), QStringList{f("none.csv:1: file")});
    EXPECT_EQ(report.faults.count(), 2);
    EXPECT_FALSE(bench.bookThere());
}

TEST(Contradictions, ManyFaultsAreCounted) {
    QByteArray visits = "colony,date\n";
    for (int i = 0; i < 120; ++i) visits += "A,never\n";
    const Workbench bench;
    const auto report = bench.import(smallYardWith({{f("visits.csv"), visits}}));
    EXPECT_EQ(report.faults.count(), 120);
    EXPECT_EQ(report.faults.lines().size(), 51);
    EXPECT_TRUE(report.faults.lines().last().contains(f("70")));
}

} // namespace
} // namespace tests::exchange
