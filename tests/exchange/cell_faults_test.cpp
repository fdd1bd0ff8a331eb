#include "tests/exchange/fault_cases.h"

// What is wrong in one row or header by itself.

namespace tests::exchange {
namespace {

TEST(CellFaults, OfHeaders) {
    const std::vector<FaultCase> cases = {
        {"no header", {{f("visits.csv"), ""}}, {f("visits.csv:1: file")}},
        {"blank first line", {{f("visits.csv"), "\ncolony,date\n"}}, {f("visits.csv:1: file")}},
        {"unknown column", {{f("visits.csv"), "colony,date,colour\nA,2026-05-01,red\n"}}, {f("visits.csv:1: colour")}},
        {"nameless column", {{f("visits.csv"), "colony,date,\nA,2026-05-01,\n"}}, {f("visits.csv:1: column 3")}},
        {"column twice", {{f("visits.csv"), "colony,date,note,note\n"}}, {f("visits.csv:1: note")}},
        {"columns missing", {{f("visits.csv"), "note\n"}}, {f("visits.csv:1: colony"), f("visits.csv:1: date")}},
        {"of another kind",
         {{f("settings.csv"), "yard,note\n"}},
         {f("settings.csv:1: yard"), f("settings.csv:1: note"), f("settings.csv:1: name"), f("settings.csv:1: value")}},
    };
    for (const FaultCase& c : cases) expectFaults(c);
}

TEST(CellFaults, OfRows) {
    const std::vector<FaultCase> cases = {
        {"too few cells", {{f("visits.csv"), "colony,date,note\nA,2026-05-01\n"}}, {f("visits.csv:2: note")}},
        {"too many cells", {{f("visits.csv"), "colony,date,note\nA,2026-05-01,,\n"}}, {f("visits.csv:2: column 4")}},
        {"open quote", {{f("visits.csv"), "colony,date,note\nA,2026-05-01,\"x\n\n"}}, {f("visits.csv:2: note")}},
        {"not UTF-8", {{f("visits.csv"), "colony,date,note\nA,2026-05-01,\xFF\n"}}, {f("visits.csv:2: note")}},
        {"NUL", {{f("visits.csv"), QByteArray("colony,date,note\nA,2026-05-01,\0\n", 32)}}, {f("visits.csv:2: note")}},
        {"all faults, not the first",
         {{f("visits.csv"), "colony,date,boxes\n,2026-05-01,\nA,x,3\n"}},
         {f("visits.csv:2: colony"), f("visits.csv:3: date"), f("visits.csv:3: boxes")}},
        {"line of a row after a quoted line end",
         {{f("visits.csv"), "colony,date,note\nA,2026-05-01,\"x\ny\"\nA,x,\n"}},
         {f("visits.csv:4: date")}},
    };
    for (const FaultCase& c : cases) expectFaults(c);
}

/// One cell in an otherwise good row of a file with these columns.
struct CellCase {
    const char* file;
    const char* columns;
    const char* row; ///< %1: the cell
    const char* column;
    std::vector<const char*> bad;
    std::vector<const char*> good;
};

void expectCells(const CellCase& c) {
    const auto text = [&](const char* cell) {
        return (QString::fromUtf8(c.columns) + u'\n' + QString::fromUtf8(c.row).arg(QString::fromUtf8(cell)) + u'\n')
            .toUtf8();
    };
    for (const char* cell : c.bad)
        expectFaults({cell, {{f(c.file), text(cell)}}, {QStringLiteral("%1:2: %2").arg(f(c.file), f(c.column))}});
    for (const char* cell : c.good) {
        const Workbench bench;
        const auto report = bench.import(smallYardWith({{f(c.file), text(cell)}}), true);
        EXPECT_TRUE(report.good()) << c.column << " " << cell << report.faults.lines().join(u'\n').toStdString();
    }
}

TEST(CellFaults, OfYards) {
    const char* columns = "yard,latitude_deg,longitude_deg,gate_x_m,note";
    const char* file = "yards.csv";
    const auto row = [](const char* y) { return y; };
    expectCells({file,
                 columns,
                 row("Home,%1,,,\nHill,,,,"),
                 "latitude_deg",
                 {"90.01", "-90.5", "x", "1e1"},
                 {"90", "-90", "0", ""}});
    expectCells({file, columns, "Home,,%1,,\nHill,,,,", "longitude_deg", {"180.1", "-181"}, {"180", "-180"}});
    expectCells({file, columns, "Home,,,%1,\nHill,,,,", "gate_x_m", {"10000.001", "east"}, {"-10000", "0.0004"}});
    expectCells({file,
                 columns,
                 "%1,,,,\nHome,,,,\nHill,,,,",
                 "yard",
                 {" ", "A\tB", "a\x7f", "0123456789012345678901234567890123456789012345678901234567890"},
                 {"x", "with @", "ééééééééééééééééééééééééééééééééééééééééééééééééééééééééééé€"}});
}

TEST(CellFaults, OfColonies) {
    const char* columns = "colony,yard,stand,x_m,y_m,heading_deg,since,brood_boxes,box,queen_born,ended,end";
    const char* file = "colonies.csv";
    expectCells(
        {file, columns, "%1,Home,9,0,0,,2025-05-01,,,,,", "colony", {"", "A@B", "A\vB"}, {"é", " A ", "\"a,b\"\"\""}});
    expectCells({file, columns, "A,Home,%1,0,0,,2025-05-01,,,,,", "stand", {"", " "}, {"a@b"}});
    expectCells({file,
                 columns,
                 "A,Home,9,%1,0,,2025-05-01,,,,,",
                 "x_m",
                 {"", "10000.0001", "-10001", "1m"},
                 {"10000", "-10000", "1.23456"}});
    expectCells({file, columns, "A,Home,9,0,%1,,2025-05-01,,,,,", "y_m", {"", "99999999999999999999"}, {"-.5"}});
    expectCells(
        {file, columns, "A,Home,9,0,0,%1,2025-05-01,,,,,", "heading_deg", {"360", "-1", "north"}, {"0", "359", ""}});
    expectCells({file,
                 columns,
                 "A,Home,9,0,0,,%1,,,,,",
                 "since",
                 {"", "2025-02-29", "2025-5-1", "01.05.2025", "0000-01-01"},
                 {"2024-02-29"}});
    expectCells({file, columns, "A,Home,9,0,0,,2025-05-01,%1,,,,", "brood_boxes", {"0", "3", "1.5"}, {"1", "2", ""}});
    expectCells({file, columns, "A,Home,9,0,0,,2025-05-01,,%1,,,", "box", {"bee-box"}, {"LANGSTROTH-8", ""}});
    expectCells(
        {file, columns, "A,Home,9,0,0,,2025-05-01,,,%1,,", "queen_born", {"1989", "2101", "'24"}, {"1990", "2100"}});
    expectCells(
        {file, columns, "A,Home,9,0,0,,2025-05-01,,,,%1,dead", "ended", {"", "2025-04-30", "soon"}, {"2025-05-01"}});
    expectCells({file,
                 columns,
                 "A,Home,9,0,0,,2025-05-01,,,,2025-06-01,%1",
                 "end",
                 {"", "Dead", "united"},
                 {"sold", "destroyed"}});
    expectCells({file, columns, "A,%1,9,0,0,,2025-05-01,,,,,", "yard", {"", "Nowhere"}, {"HOME", " Hill "}});
}

TEST(CellFaults, OfVisits) {
    const char* file = "visits.csv";
    const auto one = [&](const char* column, std::vector<const char*> bad, std::vector<const char*> good) {
        const std::string columns = std::string("colony,date,") + column;
        expectCells({file, columns.c_str(), "B,2026-05-01,%1", column, std::move(bad), std::move(good)});
    };
    one("boxes", {"0", "3"}, {"1", "2", ""});
    for (const char* column :
         {"bees_top", "bees_bottom", "upper_bees_top", "upper_bees_bottom", "stores_frames", "upper_stores_frames"})
        one(column, {"-0.25", "3.1", "10.25", "1/4", "\"3,25\""}, {"0", "10", "3.25", "3.250", ""});
    one("queen", {"Seen", "yes"}, {"seen", "laying-workers", "unknown"});
    one("brood_frames", {"-1", "25", "2.5"}, {"0", "24", "7.0"});
    one("brood_checked", {"25"}, {"24"});
    one("signs", {"mould", "\"afb,efb\"", "afb mould"}, {"afb", "afb efb", "afb;efb; brood-doubt", ""});
    one("supers", {"11", "-1"}, {"0", "10"});
    one("gross_kg", {"300.01", "-0.5", "3O"}, {"0", "300", "32.995"});
    one("colony", {}, {});
    expectCells(
        {file, "colony,date,mites,mite_sample", "B,2026-05-01,%1,300", "mites", {"", "10001", "-1"}, {"0", "10000"}});
    expectCells({file,
                 "colony,date,mites,mite_sample",
                 "B,2026-05-01,3,%1",
                 "mite_sample",
                 {"", "0", "10001"},
                 {"1", "10000"}});
    expectCells(
        {file, "colony,date,brood_frames,brood_checked", "B,2026-05-01,5,%1", "brood_checked", {"6"}, {"5", "0", ""}});
    expectCells({file,
                 "colony,date",
                 "%1,2026-05-01",
                 "colony",
                 {"", "Z", "A@", "A@x", "A@2025-05-02", "A@B@2025-05-01", "@2025-05-01"},
                 {"b", " B ", "B@2025-05-01", "b @ 2025-05-01"}});
}

TEST(CellFaults, OfFramesAboveTheBox) {
    // D is in a langstroth-8.
    expectCells({"visits.csv", "colony,date,bees_top", "D,2026-02-01,%1", "bees_top", {"8.25"}, {"8"}});
    expectCells({"visits.csv", "colony,date,stores_frames", "D,2026-02-01,%1", "stores_frames", {"8.25"}, {"8"}});
}

TEST(CellFaults, OfTransfersAndLineage) {
    expectCells({"transfers.csv",
                 "date,from,to,what,count",
                 "2026-05-01,A,B,%1,1",
                 "what",
                 {"", "queen"},
                 {"frames", "brood", "bees", "box", "feed"}});
    expectCells({"transfers.csv",
                 "date,from,to,what,count",
                 "2026-05-01,A,B,feed,%1",
                 "count",
                 {"0", "1001", "1.5"},
                 {"", "1", "1000"}});
    expectCells({"transfers.csv", "date,from,to,what", "2026-05-01,A,%1,feed", "to", {"", "A", "Z"}, {"B"}});
    expectCells(
        {"lineage.csv", "date,how,colony,into", "2026-05-01,%1,A,B", "how", {"", "merged"}, {"united", "shaken-out"}});
}

TEST(CellFaults, OfResults) {
    const char* file = "results.csv";
    const char* columns = "colony,yard,date,disease,result,method,by,paper";
    expectCells({file, columns, "A,,2026-05-01,%1,negative,laboratory,lab,", "disease", {"", "AFB"}, {"afb", "efb"}});
    expectCells({file,
                 columns,
                 "A,,2026-05-01,afb,%1,inspector,lab,7",
                 "result",
                 {"", "clean"},
                 {"positive", "negative", "release", "order"}});
    expectCells({file,
                 columns,
                 "A,,2026-05-01,afb,negative,%1,lab,",
                 "method",
                 {"", "eye"},
                 {"laboratory", "inspector", "field"}});
    expectCells({file, columns, "A,,2026-05-01,afb,order,%1,lab,7", "method", {"laboratory", "field"}, {"inspector"}});
    expectCells({file, columns, "A,,2026-05-01,afb,release,inspector,lab,%1", "paper", {"", " "}, {"7"}});
    expectCells({file, columns, "A,,2026-05-01,afb,negative,laboratory,%1,", "by", {"", " "}, {"lab"}});
    expectCells({file,
                 columns,
                 ",Home,2026-05-01,afb,%1,inspector,lab,7",
                 "result",
                 {"positive", "negative"},
                 {"release", "order"}});
    expectCells({file, columns, "A,%1,2026-05-01,afb,order,inspector,lab,7", "yard", {"Home"}, {""}});
    expectCells({file, columns, "%1,,2026-05-01,afb,order,inspector,lab,7", "colony", {"", "Z"}, {"A"}});
}

TEST(CellFaults, OfTreatments) {
    const char* file = "treatments.csv";
    const auto one = [&](const char* column, std::vector<const char*> bad, std::vector<const char*> good) {
        const std::string columns = std::string("colony,yard,date,product,substance,") + column;
        expectCells({file, columns.c_str(), "A,,2026-05-01,strips,thymol,%1", column, std::move(bad), std::move(good)});
    };
    one("antibiotic", {"Yes", "1"}, {"yes", "no", ""});
    for (const char* column : {"quantity", "quantity_bought", "disposed_quantity"})
        one(column, {"-1", "two"}, {"0", "2.5"});
    for (const char* column : {"days", "withdrawal_days"}) one(column, {"-1", "1001", "1.5"}, {"0", "1000"});
    for (const char* column : {"bought", "disposed"}) one(column, {"2026-13-01"}, {"2026-01-31"});
    const char* columns = "colony,yard,date,product,substance";
    expectCells({file, columns, "A,,2026-05-01,%1,x", "product", {""}, {"strips"}});
    expectCells({file, columns, "A,,2026-05-01,x,%1", "substance", {""}, {"thymol"}});
    expectCells({file, columns, "A,%1,2026-05-01,x,x", "yard", {"Home"}, {""}});
    expectCells({file, columns, "%1,,2026-05-01,x,x", "colony", {""}, {"A"}});
    expectCells({file, columns, ",%1,2026-05-01,x,x", "yard", {"Nowhere"}, {"hill"}});
}

TEST(CellFaults, OfBoxKindsAndSettings) {
    expectCells({"box_kinds.csv", "box,frames", "deep,%1", "frames", {"", "0", "25", "1.5"}, {"1", "24"}});
    for (const char* column : {"width_mm", "length_mm", "height_mm"})
        expectCells({"box_kinds.csv",
                     (std::string("box,frames,") + column).c_str(),
                     "deep,9,%1",
                     column,
                     {"0", "2001"},
                     {"1", "2000", ""}});
    expectCells({"box_kinds.csv", "box,frames,tare_kg", "deep,9,%1", "tare_kg", {"-1", "100.1"}, {"0", "100"}});
    expectCells({"settings.csv", "name,value", "%1,40", "name", {"", "no.such"}, {"strength.max_age_days"}});
    expectCells({"settings.csv", "name,value", "trace.days,%1", "value", {"", "364", "x"}, {"365", "400"}});
    expectCells({"settings.csv",
                 "name,value",
                 "value.winter,%1",
                 "value",
                 {"1 2 3", "0 0 0 0 0 0 0 0 0 0 0 0 1001"},
                 {"0 1 2 3 4 5 6 7 8 9 10 11 1000"}});
}

} // namespace
} // namespace tests::exchange
