#include "ui/board/merge_desk.h"

#include "core/edit/merge_variant.h"
#include "core/edit/print_day.h"
#include "core/rules/pins.h"

#include <algorithm>

namespace ui::board {

namespace edit = core::edit;

MergeDesk::MergeDesk(desk::Desk& desk, Dialogs& dialogs, QObject* parent)
    : QObject(parent), m_desk(desk), m_dialogs(dialogs) {
    const auto again = [this] { guarded(m_dialogs, [this] { readAgain(); }); };
    connect(&desk, &desk::Desk::read, this, again);
    connect(&desk, &desk::Desk::yardChanged, this, again);
    again();
}

void MergeDesk::readAgain() {
    const desk::Reading& r = m_desk.reading();
    const auto yard = m_desk.yard() ? r.find(*m_desk.yard()) : std::nullopt;
    const edit::MergeAsked before = std::move(m_asked);
    m_asked = {};
    m_variants.clear();
    m_unmet.clear();
    m_closing = false;
    if (!yard) {
        m_difference.reset();
        return emit changed();
    }
    m_asked.day.yard = *m_desk.yard();
    m_asked.day.day = m_desk.day();
    if (const core::rules::MergeWish* wish = r.wishOf(*m_desk.yard())) m_asked = {wish->day, wish->choices};
    const auto& session = m_desk.session();
    for (const core::MergeDay& day : session.mergeDays(m_asked.day.yard))
        if (day.day == m_asked.day.day) m_variants.push_back(day);
    m_closing = edit::closingBegan(session, m_asked.day.yard, m_asked.day.day);
    for (const core::rules::Unmet& u : r.unmet)
        if (u.day == m_asked.day.id) m_unmet.push_back(u);
    const bool same = before.day.yard == m_asked.day.yard && before.day.day == m_asked.day.day;
    const bool asksOtherwise = before.day != m_asked.day || before.choices != m_asked.choices;
    auto now = core::rules::gistOf(r.snapshot, r.plan, *yard);
    auto difference = core::rules::differenceOf(m_gist, now);
    if (!same)
        m_difference.reset();
    else if (asksOtherwise || !difference.none())
        m_difference = std::move(difference);
    m_gist = std::move(now);
    emit changed();
}

QString MergeDesk::barred() const {
    if (m_closing)
        return tr("This day is being written back: what was planned stays as it was. Plan another day to ask anew.");
    return m_desk.writeBarred();
}

bool MergeDesk::mayAsk() {
    const QString why = barred();
    if (!why.isEmpty()) emit m_desk.said(why);
    return why.isEmpty();
}

bool MergeDesk::save(const edit::MergeAsked& asked) {
    bool saved = false;
    guarded(m_dialogs, [&] {
        saved = m_desk.save(tr("what is asked of the merge day"),
                            [asked](const edit::EditContext& c) { return edit::saveMergeDay(c, asked); });
    });
    return saved;
}

bool MergeDesk::saveAsked(edit::MergeChoices choices, const Limit& limit) {
    edit::MergeAsked now = m_asked;
    now.choices = std::move(choices);
    now.day.most = limit.most;
    now.day.minutes = limit.minutes;
    return save(now);
}

/// What stands against pinning two that the plan does not unite; empty: nothing.
QString MergeDesk::barredPin(const Offer& offer) const {
    const desk::Reading& r = m_desk.reading();
    const auto a = r.find(offer.a), b = r.find(offer.b);
    if (!a || !b) return tr("One of the two does not live on that day.");
    const core::rules::Union* u = r.unionOf(*a);
    if (u && (u->moved == *b || u->host == *b)) return {};
    return core::rules::pinBarred(core::rules::viewOf(r.snapshot, r.facts, r.plan.holds), {*a, *b});
}

bool MergeDesk::take(const Offer& offer, const QString& why) {
    if (!mayAsk()) return false;
    if (offer.on && offer.ask == core::MergeAsk::Pin) {
        const QString against = barredPin(offer);
        if (!against.isEmpty()) {
            const desk::Reading& r = m_desk.reading();
            emit m_desk.said(tr("%1 + %2 cannot be pinned. %3").arg(labelOf(r, offer.a), labelOf(r, offer.b), against));
            return false;
        }
    }
    return saveAsked(taken(m_asked.choices, offer, why), {m_asked.day.most, m_asked.day.minutes});
}

bool MergeDesk::limitTo(const Limit& limit) { return mayAsk() && saveAsked(m_asked.choices, limit); }

void MergeDesk::dropUnmet() {
    if (!mayAsk()) return;
    edit::MergeChoices left = m_asked.choices;
    bool limit = false;
    for (const core::rules::Unmet& u : m_unmet) {
        limit = limit || !u.choice;
        if (u.choice) std::erase_if(left, [&](const core::MergeChoice& x) { return x.id == u.choice->id; });
    }
    saveAsked(std::move(left), limit ? Limit{} : Limit{m_asked.day.most, m_asked.day.minutes});
}

void MergeDesk::addVariant() {
    if (!mayAsk()) return;
    const core::MergeDay of = m_asked.day;
    const bool kept = of.id.value != 0;
    guarded(m_dialogs, [&] {
        const bool saved = m_desk.save(tr("a variant of the merge day"), [=](const edit::EditContext& c) {
            return edit::addMergeVariant(c, of.yard, of.day, kept ? std::optional(of.id) : std::nullopt);
        });
        if (saved) m_desk.setVariant(of.yard, newest());
    });
}

/// The number of the variant that was added last.
int MergeDesk::newest() const {
    const auto last = std::ranges::max_element(m_variants, {}, [](const core::MergeDay& d) { return d.id; });
    return last == m_variants.end() ? 1 : last->variant;
}

void MergeDesk::showVariant(int variant) {
    if (variant == m_asked.day.variant) return;
    guarded(m_dialogs, [&] { m_desk.setVariant(m_asked.day.yard, variant); });
}

void MergeDesk::nextVariant() {
    if (m_variants.size() < 2) return emit m_desk.said(tr("There is only one variant of this merge day."));
    const auto here = std::ranges::find(m_variants, m_asked.day.variant, &core::MergeDay::variant);
    const auto next = here == m_variants.end() || here + 1 == m_variants.end() ? m_variants.begin() : here + 1;
    showVariant(next->variant);
}

void MergeDesk::dropVariant() {
    if (!mayAsk()) return;
    if (m_asked.day.id.value == 0) return emit m_desk.said(tr("Nothing is asked of this merge day."));
    const core::MergeDayId id = m_asked.day.id;
    guarded(m_dialogs, [&] {
        m_desk.save(tr("a variant of the merge day"),
                    [id](const edit::EditContext& c) { return edit::takeBackMergeDay(c, id); });
    });
}

} // namespace ui::board
