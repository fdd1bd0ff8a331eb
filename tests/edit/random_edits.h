#pragma once

#include "tests/edit/edit_fixture.h"

#include "core/edit/edit_context.h"

#include <random>

namespace tests::edit {

/// Random edits of every kind on a small book; some are refused, and that is fine.
class RandomEdits {
public:
    explicit RandomEdits(unsigned seed) : m_dice(seed) {}

    int upTo(int most) { return std::uniform_int_distribution<int>(0, most)(m_dice); }
    Day day() { return dayOf(2026, 5, 1) + upTo(140); }
    MmPoint point() { return {upTo(8) * 500, upTo(4) * 500}; }
    ColonyId colony() { return ColonyId{1 + upTo(6)}; }

    ChangeSet next(const EditContext& c) {
        switch (upTo(10)) {
        case 0:
            return yard(c);
        case 1:
            return fresh(c);
        case 2:
            return logVisit(c, visit());
        case 3:
            return logTransfer(c, {{}, day(), colony(), colony(), static_cast<TransferKind>(upTo(4)), {}, {}});
        case 4:
            return result(c);
        case 5:
            return setting(c);
        case 6:
            return endColony(c, colony(), day(), upTo(1) ? EndKind::Dead : EndKind::Sold);
        case 7:
            return recordUnion(
                c, {{}, day(), upTo(1) ? LineageHow::United : LineageHow::ShakenOut, colony(), colony(), {}, {}});
        case 8:
            return treatment(c);
        default:
            return carryHive(c, colony(), point(), day());
        }
    }

private:
    ChangeSet yard(const EditContext& c) {
        Yard y;
        y.name = QString::number(upTo(5));
        return core::edit::newYard(c, y);
    }
    ChangeSet fresh(const EditContext& c) {
        NewColony n;
        n.colony.label = QString::number(upTo(20));
        n.colony.since = day();
        n.colony.box = BoxKindId{1 + upTo(4)};
        n.stand.yard = YardId{1 + upTo(1)};
        n.stand.at = point();
        return addColony(c, n);
    }
    Visit visit() {
        Visit v;
        v.colony = colony();
        v.day = day();
        v.beesTop = Quarters{upTo(40)};
        if (upTo(1)) v.broodFrames = v.broodChecked = 3 + upTo(5);
        if (upTo(2) == 0) v.signs.add(Sign::Chalkbrood);
        if (upTo(2) == 0) v.signs.add(Sign::Sacbrood);
        if (upTo(3) == 0) v.note = QStringLiteral("ü “quoted” 🐝");
        return v;
    }
    ChangeSet result(const EditContext& c) {
        Result r;
        r.colony = colony();
        r.day = day();
        r.by = QStringLiteral("the laboratory");
        return logResult(c, r);
    }
    ChangeSet treatment(const EditContext& c) {
        Treatment t;
        t.yard = YardId{1};
        t.day = day();
        t.product = QStringLiteral("strips");
        t.substance = QStringLiteral("acid");
        t.quantity = upTo(100) / 8.0;
        return logTreatment(c, t);
    }
    ChangeSet setting(const EditContext& c) {
        return setSetting(c, QStringLiteral("gain.min"), QString::number(upTo(3) * 50));
    }

    std::mt19937 m_dice;
};

} // namespace tests::edit
