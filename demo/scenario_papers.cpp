#include "core/model/kit_words.h"
#include "demo/scenario.h"

namespace demo {

namespace {

core::Day inFall(int month, int day) { return core::dayOf(2026, month, day); }

/// Taken by Wren for the regional laboratory.
StorySample taken(const char* label, core::Disease disease, core::Day day, std::optional<core::Day> sent,
                  const char* answer = "") {
    core::Sample s;
    s.day = day;
    s.disease = disease;
    s.laboratory = QStringLiteral("regional laboratory");
    s.sent = sent;
    s.by = QStringLiteral("Wren");
    return {QString::fromLatin1(label), s, QString::fromLatin1(answer)};
}

/// A field kit's positive of the summer before, which a laboratory answered: a hold that has ended.
void addAnsweredSign(Story& story) {
    core::Result kit;
    kit.day = core::dayOf(2025, 6, 10);
    kit.verdict = core::Verdict::Positive;
    kit.method = core::Method::Field;
    kit.by = QStringLiteral("Wren");
    story.results.push_back({QStringLiteral("D3"), {}, kit});
    core::Result answer;
    answer.day = core::dayOf(2025, 6, 17);
    answer.by = QStringLiteral("regional laboratory");
    answer.paper = QStringLiteral("R-071");
    story.results.push_back({QStringLiteral("D3"), {}, answer});
    story.samples.push_back(taken("D3", core::Disease::Afb, answer.day, answer.day, "R-071"));
}

} // namespace

void addStoryPapers(Story& story) {
    using core::Disease;
    addAnsweredSign(story);
    story.samples.push_back(taken("C2", Disease::Afb, inFall(9, 14), inFall(9, 14), "R-118"));
    story.samples.push_back(taken("B1", Disease::Afb, inFall(9, 15), inFall(9, 15), "R-119"));
    story.samples.push_back(taken("B9", Disease::Efb, inFall(8, 20), inFall(8, 21))); // late on the merge day
    story.samples.back().sample.number = QStringLiteral("B9/1");
    story.samples.push_back(taken("C9", Disease::Afb, inFall(9, 17), inFall(9, 18)));
    story.samples.back().sample.note = QStringLiteral("two combs with sunken caps, one from the top box");
    story.samples.push_back(taken("A3", Disease::Afb, inFall(9, 18), {}));
    story.samples.back().sample.material = core::SampleMaterial::Honey;

    const QString ledge = QStringLiteral("Quarry Ledge");
    const QString box = QStringLiteral("langstroth-10");
    story.kit.push_back({QStringLiteral("C2"), ledge, {0, {}, box, core::kit::kQuarantined, {}, 2}});
    story.kit.push_back({QStringLiteral("C2"), ledge, {0, {}, box, core::kit::kSterilised, {}, 3}});
    core::KitEnd end;
    end.day = inFall(9, 18);
    end.part = box;
    end.count = 3;
    end.how = core::KitEndHow::Irradiated;
    end.by = QStringLiteral("Wren");
    end.paper = QStringLiteral("K-31");
    end.note = QStringLiteral("empty boxes, scraped before");
    story.kitEnds.push_back({QStringLiteral("C2"), ledge, end});
}

} // namespace demo
