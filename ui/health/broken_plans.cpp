#include "ui/health/broken_plans.h"

#include "ui/health/health_words.h"
#include "ui/look/words.h"

#include <QSet>

namespace ui::health {

namespace {

/// Held colonies that a merge day names, each once, as they are shown.
class Barred {
public:
    Barred(const desk::Reading& reading, const std::set<core::ColonyId>& held) : m_reading(reading), m_held(held) {}
    void look(core::ColonyId colony) {
        const auto ix = m_reading.find(colony);
        if (ix && m_held.contains(colony)) m_names.insert(m_reading.snapshot.colony(*ix).shown);
    }
    QStringList take() { return {std::exchange(m_names, {}).values()}; }

private:
    const desk::Reading& m_reading;
    const std::set<core::ColonyId>& m_held;
    QSet<QString> m_names;
};

} // namespace

QStringList brokenPlans(const desk::Desk& desk) {
    const desk::Reading& reading = desk.reading();
    std::set<core::ColonyId> held;
    for (const core::rules::Hold& h : reading.plan.holds) held.insert(reading.snapshot.colony(h.colony).id);
    return brokenPlans(desk, held);
}

QStringList brokenPlans(const desk::Desk& desk, const std::set<core::ColonyId>& held) {
    const core::edit::Session& book = desk.session();
    Barred barred(desk.reading(), held);
    QStringList out;
    for (const core::Yard& yard : book.yards())
        for (const core::MergeDay& day : book.mergeDays(yard.id)) {
            if (day.day < desk.today()) continue;
            for (const core::MergeStrip& strip : book.stripsOf(day.id))
                if (!strip.outcome) {
                    barred.look(strip.moved);
                    barred.look(strip.host);
                }
            for (const core::MergeChoice& choice : book.choicesOf(day.id))
                if (choice.what == core::MergeAsk::Pin) {
                    barred.look(choice.colony);
                    if (choice.other) barred.look(*choice.other);
                }
            for (const core::DivideStrip& strip : book.divideStripsOf(day.id))
                if (!strip.outcome) barred.look(strip.colony);
            QStringList names = barred.take();
            if (names.isEmpty()) continue;
            names.sort();
            out << Health::tr("The merge day of %1 on %2 names what may not be touched: %3. Plan it anew, and put no "
                              "old worksheet into the field.")
                       .arg(yard.name, look::dayText(day.day), names.join(QStringLiteral(", ")));
        }
    return out;
}

} // namespace ui::health
