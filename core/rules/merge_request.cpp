#include "core/rules/merge_request.h"

#include "core/rules/objections.h"
#include "core/rules/pairs.h"
#include "core/rules/pins.h"

#include <QStringList>

#include <algorithm>
#include <map>
#include <set>

namespace core::rules {

namespace {

int teams(const Settings& settings) { return std::max(1, settings.crewPeople / 2); }

/// The wishes of one yard, choice by choice.
class Reader {
public:
    Reader(const DayView& view, MergeRequest& out) : m_view(view), m_out(out) {
        for (const ColonyFacts& f : view.facts) m_byId.emplace(view.s.colony(f.colony).id, f.colony);
    }

    void read(const MergeWish& wish) {
        const auto yard = yardOf(wish.day.yard);
        if (!yard || wish.day.day != m_view.s.on) return;
        m_yard = *yard;
        m_day = wish.day.id;
        m_pinned.clear();
        readAll(wish.choices, MergeAsk::LeaveOut);
        readAll(wish.choices, MergeAsk::Forbid);
        readAll(wish.choices, MergeAsk::Pin);
        readAll(wish.choices, MergeAsk::Host);
        readAll(wish.choices, MergeAsk::Top);
        readLimit(wish.day);
        readDivides(wish.divides);
    }

private:
    std::optional<YardIx> yardOf(YardId id) const {
        for (size_t i = 0; i < m_view.s.yards.size(); ++i)
            if (m_view.s.yards[i].id == id) return YardIx{static_cast<qint32>(i)};
        return std::nullopt;
    }

    void readAll(const std::vector<MergeChoice>& choices, MergeAsk what) {
        for (const MergeChoice& choice : choices) {
            if (choice.what != what) continue;
            const auto colony = here(choice, choice.colony);
            if (!colony) continue;
            if (!choice.other) {
                m_out.request.leftOut.push_back(*colony);
                continue;
            }
            if (const auto other = here(choice, *choice.other)) readPair(choice, {*colony, *other});
        }
    }

    void readPair(const MergeChoice& choice, ColonyPair pair) {
        switch (choice.what) {
        case MergeAsk::Forbid:
            m_out.request.forbids.push_back(pair);
            break;
        case MergeAsk::Host:
            m_out.request.hosts.push_back(pair);
            break;
        case MergeAsk::Top:
            m_out.request.tops.push_back(pair);
            break;
        case MergeAsk::Pin:
            readPin(choice, pair);
            break;
        case MergeAsk::LeaveOut:
            break;
        }
    }

    void readPin(const MergeChoice& choice, ColonyPair pair) {
        const QString why = pinBarred(m_view, pair);
        if (!why.isEmpty())
            return unmet(choice, QStringLiteral("%1 and %2 cannot be pinned any more. %3")
                                     .arg(m_view.name(pair.first), m_view.name(pair.second), why));
        m_out.request.pins.push_back(pair);
        m_pinned.insert(pair);
    }

    /// What cannot be divided any more is in no plan: nothing is to be said of it.
    void readDivides(const std::vector<DivideChoice>& choices) {
        for (const DivideChoice& choice : choices)
            if (const auto at = m_byId.find(choice.colony); at != m_byId.end() && m_view.of(at->second).yard == m_yard)
                m_out.request.divideParts.emplace_back(at->second, choice.parts);
    }

    void readLimit(const MergeDay& day) {
        const auto most = mostUnionsOf(m_view.s.settings, day);
        if (!most) return;
        const auto pins = static_cast<int>(m_pinned.size());
        if (pins > *most)
            unmet(std::nullopt, QStringLiteral("%1 unions are pinned, and only %2 fit the limit: those pinned stay.")
                                    .arg(pins)
                                    .arg(*most));
        m_out.request.mostIn.push_back({m_yard, std::max(pins, *most)});
    }

    /// The colony, where it stands in the yard; else says that it does not.
    std::optional<ColonyIx> here(const MergeChoice& choice, ColonyId id) {
        const auto it = m_byId.find(id);
        if (it != m_byId.end() && m_view.of(it->second).yard == m_yard) return it->second;
        const SnapColony* colony = known(id);
        if (colony && colony->ended == m_view.s.on) return std::nullopt;
        unmet(choice, QStringLiteral("%1 does not stand in %2 any more: what was asked of it is passed over.")
                          .arg(colony ? colony->shown : QStringLiteral("A colony"), m_view.s.yard(m_yard).name));
        return std::nullopt;
    }
    const SnapColony* known(ColonyId id) const {
        for (const SnapColony& colony : m_view.s.colonies)
            if (colony.id == id) return &colony;
        return nullptr;
    }

    void unmet(const std::optional<MergeChoice>& choice, const QString& because) {
        m_out.unmet.push_back({m_day, choice, because});
    }

    const DayView& m_view;
    MergeRequest& m_out;
    std::map<ColonyId, ColonyIx> m_byId;
    YardIx m_yard;
    MergeDayId m_day;
    std::set<ColonyPair> m_pinned;
};

} // namespace

MergeRequest mergeRequest(const DayView& view, const std::vector<MergeWish>& wishes) {
    MergeRequest out;
    if (wishes.empty()) return out;
    Reader reader(view, out);
    for (const MergeWish& wish : wishes) reader.read(wish);
    return out;
}

int unionsWithin(const Settings& settings, int minutes) {
    return minutes / settings.crewMinutesPerUnion * teams(settings);
}

int minutesFor(const Settings& settings, int unions) {
    const int rounds = (unions + teams(settings) - 1) / teams(settings);
    return rounds * settings.crewMinutesPerUnion;
}

std::optional<int> mostUnionsOf(const Settings& settings, const MergeDay& day) {
    if (!day.minutes) return day.most;
    const int within = unionsWithin(settings, *day.minutes);
    return day.most ? std::min(*day.most, within) : within;
}

} // namespace core::rules
