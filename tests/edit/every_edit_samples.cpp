#include "core/model/kit_words.h"
#include "tests/edit/every_edit.h"

// Samples and ends of kit, among the random edits.

namespace tests::edit {

std::pair<std::string, ChangeSet> EveryEdit::sampled(const EditContext& c) {
    if (upTo(5) == 0) return kitEnded(c);
    const auto old = any<Sample>(c);
    if (!old || upTo(3) == 0) {
        Sample s;
        s.colony = colony(c);
        s.day = day();
        s.disease = static_cast<Disease>(upTo(1));
        s.material = static_cast<SampleMaterial>(upTo(4));
        s.laboratory = QStringLiteral("Hill laboratory");
        Sample other = s;
        other.colony = colony(c);
        return {"takeSamples", takeSamples(c, {s, other})};
    }
    switch (upTo(5)) {
    case 0:
        return {"takeBackSample", takeBackSample(c, old->id)};
    case 1:
        return {"sendSamples", sendSamples(c, {old->id}, near(old->day) + 2)};
    case 2:
        return {"giveSampleUp", giveSampleUp(c, old->id, near(old->day) + 30)};
    case 3: {
        Sample now = *old;
        now.day = near(old->day);
        now.colony = upTo(2) ? old->colony : colony(c);
        return {"changeSample", changeSample(c, now)};
    }
    default:
        return {"answerSample", answerSample(c, old->id, {upTo(3) == 0, {}, {}, {}})};
    }
}

std::pair<std::string, ChangeSet> EveryEdit::kitEnded(const EditContext& c) {
    const auto old = any<KitEnd>(c);
    if (old && upTo(1)) return {"takeBackKitEnd", takeBackKitEnd(c, old->id)};
    if (!old) return {"countKit", countKit(c, {YardId{1}, kit::kLid, kit::kQuarantined, colony(c)}, 1 + upTo(3))};
    KitEnd now = *old;
    now.day = near(old->day);
    now.how = static_cast<KitEndHow>(upTo(3));
    return {"changeKitEnd", changeKitEnd(c, now)};
}

} // namespace tests::edit
