#include "core/edit/divides_done.h"

#include "core/edit/edit_context.h"

namespace core::edit {

std::vector<rules::DivideDone> dividesDone(const Session& book) {
    std::vector<rules::DivideDone> out;
    book.read([&](const EditContext& c) {
        c.each<DivideStrip>([&](const DivideStrip& strip) {
            if (strip.outcome != StripOutcome::Done) return;
            if (const auto day = c.find<MergeDay>(strip.mergeDay.value))
                out.push_back({strip.colony, day->day, strip.queens});
        });
    });
    return out;
}

} // namespace core::edit
