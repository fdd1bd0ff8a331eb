#include "ui/print/plan_parts.h"

#include "ui/print/plan_words.h"

#include <algorithm>
#include <numeric>

namespace ui::print {

namespace {

constexpr size_t kFewest = 8;    // hives of a part that is not split any more
constexpr int kMostLarger = 3;   // A1
constexpr qint32 kAround = 2000; // mm, of which stands are drawn around a part's hives

using Hives = std::vector<size_t>; ///< positions in the whole scene

/// Position in the part, for each that is in it.
template <class Mark>
std::vector<Mark> within(const std::vector<Mark>& marks, const Hives& part, size_t Mark::*a, size_t Mark::*b) {
    const auto at = [&part](size_t hive) { return std::find(part.begin(), part.end(), hive); };
    std::vector<Mark> out;
    for (Mark mark : marks) {
        const auto first = at(mark.*a);
        const auto second = at(mark.*b);
        if (first == part.end() || second == part.end()) continue;
        mark.*a = static_cast<size_t>(first - part.begin());
        mark.*b = static_cast<size_t>(second - part.begin());
        out.push_back(mark);
    }
    return out;
}

PlanSheetJob partOf(const PlanSheetJob& whole, const Hives& part) {
    PlanSheetJob job = whole;
    job.listed = false;
    plan::Scene& scene = job.scene;
    scene.hives.clear();
    QRect ground;
    for (const size_t i : part) {
        const plan::HiveMark& mark = whole.scene.hives[i];
        scene.hives.push_back(mark);
        ground |= QRect(mark.at.x, mark.at.y, 1, 1);
    }
    scene.unions = within(whole.scene.unions, part, &plan::UnionMark::moved, &plan::UnionMark::host);
    scene.shakes = within(whole.scene.shakes, part, &plan::ShakeMark::colony, &plan::ShakeMark::into);
    ground.adjust(-kAround, -kAround, kAround, kAround);
    std::erase_if(scene.stands, [&](const plan::StandMark& s) { return !ground.contains(s.at.x, s.at.y); });
    return job;
}

/// Across its longer side until every label has room.
void split(const PlanSheetJob& whole, Hives part, std::vector<PlanSheetJob>& out) {
    PlanSheetJob job = partOf(whole, part);
    if (part.size() <= kFewest || PlanSheet(job).unlabelled() == 0) return out.push_back(std::move(job));
    const auto at = [&whole](size_t i) { return whole.scene.hives[i].at; };
    const auto spread = [&](auto of) {
        const auto [least, most] =
            std::minmax_element(part.begin(), part.end(), [&](size_t a, size_t b) { return of(a) < of(b); });
        return static_cast<qint64>(of(*most)) - of(*least);
    };
    const bool wide = spread([&](size_t i) { return at(i).x; }) >= spread([&](size_t i) { return at(i).y; });
    std::stable_sort(part.begin(), part.end(),
                     [&](size_t a, size_t b) { return wide ? at(a).x < at(b).x : at(a).y > at(b).y; });
    const auto middle = part.begin() + static_cast<std::ptrdiff_t>(part.size() / 2);
    Hives first(part.begin(), middle);
    Hives second(middle, part.end());
    for (Hives* half : {&first, &second}) {
        std::sort(half->begin(), half->end());
        split(whole, std::move(*half), out);
    }
}

} // namespace

std::vector<std::unique_ptr<PlanSheet>> planSheets(const PlanSheetJob& job) {
    std::vector<std::unique_ptr<PlanSheet>> out;
    out.push_back(std::make_unique<PlanSheet>(job));
    if (out.front()->unlabelled() == 0 || job.scene.hives.size() <= kFewest) return out;
    Hives all(job.scene.hives.size());
    std::iota(all.begin(), all.end(), size_t{0});
    std::vector<PlanSheetJob> parts;
    split(job, std::move(all), parts);
    for (size_t i = 0; i < parts.size(); ++i) {
        parts[i].part = PlanWords::tr("part %1 of %2").arg(i + 1).arg(parts.size());
        out.push_back(std::make_unique<PlanSheet>(std::move(parts[i])));
    }
    return out;
}

std::unique_ptr<PlanSheet> planPicture(const PlanSheetJob& job) {
    PlanSheetJob larger = job;
    auto sheet = std::make_unique<PlanSheet>(larger);
    while (sheet->unlabelled() > 0 && larger.larger < kMostLarger) {
        ++larger.larger;
        sheet = std::make_unique<PlanSheet>(larger);
    }
    return sheet;
}

} // namespace ui::print
