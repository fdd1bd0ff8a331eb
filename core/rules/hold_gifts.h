#pragma once

#include "core/model/snapshot.h"

#include <span>
#include <vector>

namespace core::rules {

enum class GiftKind { Frames, Brood, Bees, Box, Feed, United, ShakenOut, Divided };

/// Rule 4.4.1: a transfer, a union, a shake-out or a divide, from giver to receiver.
struct Gift {
    Day day;
    ColonyIx from;
    ColonyIx to;
    GiftKind kind = GiftKind::Frames;
    bool beesOrComb() const { return kind != GiftKind::Feed; }
    bool lineage() const { return kind >= GiftKind::United; }
};

/// All gifts of a snapshot, by day, by giver and by receiver.
class Gifts {
public:
    explicit Gifts(const Snapshot& s);
    std::span<const Gift> all() const { return m_all; }
    /// In the order of days.
    std::span<const Gift> from(ColonyIx giver) const { return of(m_from, m_fromStart, giver); }
    std::span<const Gift> to(ColonyIx receiver) const { return of(m_to, m_toStart, receiver); }
    /// Position of a gift that `to` gave, among all.
    size_t positionTo(const Gift& gift) const { return static_cast<size_t>(&gift - m_to.data()); }

private:
    static std::span<const Gift> of(const std::vector<Gift>& gifts, const std::vector<qint32>& start, ColonyIx ix);
    std::vector<Gift> m_all, m_from, m_to;
    std::vector<qint32> m_fromStart, m_toStart;
};

} // namespace core::rules
