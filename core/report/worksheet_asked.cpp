#include "core/report/worksheet_part.h"

#include <algorithm>

// What was asked of the plan of the merge day, so that the crew does not take it for a slip.

namespace core::report {

namespace {

class Asked {
public:
    Asked(const SheetInput& in, Section& section) : m_in(in), m_section(section) {}

    void add(const rules::MergeWish& wish) {
        if (!wish.day.note.isEmpty()) add({}, wish.day.note);
        if (const auto most = rules::mostUnionsOf(m_in.s.settings, wish.day))
            add({}, m_in.say("At most %1 unions, as asked.").arg(*most));
        for (const MergeChoice& choice : wish.choices) add(choice);
    }
    void add(const std::vector<rules::Unmet>& unmet) {
        for (const rules::Unmet& u : unmet) add(m_in.say("Asked for, and not in this plan:"), u.because);
    }

private:
    void add(const MergeChoice& choice) {
        const QString first = nameOf(choice.colony);
        if (first.isEmpty()) return;
        const QString why = choice.note.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(choice.note);
        if (choice.what == MergeAsk::LeaveOut) add(first, m_in.say("left out, as asked.") + why);
        const QString second = choice.other ? nameOf(*choice.other) : QString();
        if (choice.what == MergeAsk::Forbid && !second.isEmpty())
            add(m_in.say.list({first, second}), m_in.say("not together, as asked.") + why);
    }
    /// The label of one that lives here; else empty.
    QString nameOf(ColonyId id) const {
        const auto found = std::ranges::find(m_in.s.colonies, id, &SnapColony::id);
        if (found == m_in.s.colonies.end() || !found->living()) return {};
        return found->shown;
    }
    void add(const QString& lead, const QString& text) {
        Block block;
        BlockPen pen(m_in.measure, block);
        block.height = pen.paragraph(0, 0, m_in.width, text, kText, lead);
        block.gapAfter = 1;
        m_section.blocks.push_back(std::move(block));
    }

    const SheetInput& m_in;
    Section& m_section;
};

} // namespace

Section askedSection(const SheetInput& in) {
    Section section;
    section.heading = in.say("As it was asked for");
    Asked asked(in, section);
    if (in.options.wish) asked.add(*in.options.wish);
    asked.add(in.options.unmet);
    return section;
}

} // namespace core::report
