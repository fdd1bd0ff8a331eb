#include "demo/scenario.h"

namespace demo {

namespace {

core::Day on(int month, int day, int year = 2026) { return core::dayOf(year, month, day); }

StoryTransfer gave(const char* from, const char* to, core::TransferKind what, int count, core::Day day) {
    core::Transfer t;
    t.day = day;
    t.what = what;
    t.count = count;
    return {QString::fromLatin1(from), QString::fromLatin1(to), t};
}

StoryResult found(const char* label, core::Disease disease, core::Verdict verdict, core::Method method, const char* by,
                  const char* paper, core::Day day) {
    core::Result r;
    r.day = day;
    r.disease = disease;
    r.verdict = verdict;
    r.method = method;
    r.by = QString::fromLatin1(by);
    r.paper = QString::fromLatin1(paper);
    return {QString::fromLatin1(label), QString(), r};
}

void addTreatments(Story& story) {
    core::Treatment strips;
    strips.day = on(8, 10);
    strips.product = QStringLiteral("thymol wafers");
    strips.substance = QStringLiteral("thymol");
    strips.quantity = 2;
    strips.unit = QStringLiteral("wafers a hive");
    strips.method = QStringLiteral("on the top bars");
    strips.days = 42;
    strips.withdrawalDays = 0;
    strips.by = QStringLiteral("Wren");
    story.treatments.push_back({QString(), QStringLiteral("Upper Tansy"), strips});

    core::Treatment acid;
    acid.day = on(8, 4, 2025);
    acid.product = QStringLiteral("formic acid strips");
    acid.substance = QStringLiteral("formic acid");
    acid.quantity = 2;
    acid.unit = QStringLiteral("strips a hive");
    acid.method = QStringLiteral("on the top bars");
    acid.days = 7;
    acid.withdrawalDays = 0;
    acid.by = QStringLiteral("Alder");
    story.treatments.push_back({QString(), QStringLiteral("Thistle Acre"), acid});

    core::Treatment antibiotic;
    antibiotic.day = on(10, 5, 2025);
    antibiotic.product = QStringLiteral("oxytetracycline powder");
    antibiotic.substance = QStringLiteral("oxytetracycline");
    antibiotic.antibiotic = true;
    antibiotic.prescriber = QStringLiteral("the veterinarian");
    antibiotic.days = 21;
    antibiotic.withdrawalDays = 180;
    antibiotic.by = QStringLiteral("Alder");
    story.treatments.push_back({QStringLiteral("A22"), QString(), antibiotic});
}

void addLineage(Story& story) {
    core::Lineage divided;
    divided.day = on(5, 12);
    divided.how = core::LineageHow::Divided;
    divided.by = QStringLiteral("Wren");
    story.lineage.push_back({QStringLiteral("D1"), QStringLiteral("D16"), divided});
    StoryColony daughter;
    daughter.label = QStringLiteral("D16");
    daughter.since = divided.day;
    story.colonies.push_back(daughter);

    core::Lineage united;
    united.day = on(9, 16);
    united.how = core::LineageHow::United;
    united.by = QStringLiteral("Wren");
    story.lineage.push_back({QStringLiteral("D17"), QStringLiteral("D4"), united});
    StoryColony carried;
    carried.label = QStringLiteral("D17");
    carried.ended = united.day;
    carried.end = core::EndKind::United;
    story.colonies.push_back(carried);
}

} // namespace

void addStoryRecords(Story& story) {
    using core::Disease;
    using core::Method;
    using core::TransferKind;
    using core::Verdict;
    StoryColony deep;
    deep.label = QStringLiteral("A34");
    deep.box = QStringLiteral("dadant-12");
    story.colonies.push_back(deep);
    story.transfers.push_back(gave("A18", "A17", TransferKind::Brood, 1, on(9, 16)));
    story.transfers.push_back(gave("C2", "B3", TransferKind::Frames, 2, on(8, 27)));
    story.transfers.push_back(gave("A20", "A25", TransferKind::Feed, 1, on(9, 15)));
    story.results.push_back(
        found("C2", Disease::Afb, Verdict::Positive, Method::Laboratory, "regional laboratory", "R-118", on(9, 14)));
    story.results.push_back(
        found("B12", Disease::Afb, Verdict::Order, Method::Inspector, "district inspector", "N-17", on(9, 15)));
    story.results.push_back(
        found("B1", Disease::Afb, Verdict::Negative, Method::Laboratory, "regional laboratory", "R-119", on(9, 15)));
    addTreatments(story);
    addLineage(story);
    addStoryPapers(story);
}

} // namespace demo
