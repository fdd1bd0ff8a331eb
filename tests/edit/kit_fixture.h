#pragma once

#include "core/edit/kit.h"
#include "core/model/kit_words.h"
#include "tests/edit/put_right_fixture.h"

#include <QStringList>

namespace tests::edit {

inline const Correction kInspected{QStringLiteral("Ana"), QStringLiteral("the inspector has seen it")};

/// The book's kit as people see it.
class KitTest : public PutRight {
protected:
    KitTest() { clock.day = kDay; }

    std::vector<rules::KitPile> piles() const {
        std::vector<Kit> lots;
        std::map<ColonyId, rules::KitHold> held;
        session->read([&](const EditContext& c) {
            c.each<Kit>([&](const Kit& lot) { lots.push_back(lot); });
            held = rules::kitHolds(c.snapshot(c.today()), rules::coloniesOf(lots));
        });
        return rules::kitPiles(lots, held);
    }
    /// "North lid usable 3; store floor quarantined 5 1": the colony's label before the count.
    std::string kit() const {
        QStringList told;
        for (const rules::KitPile& pile : piles()) {
            QStringList words{pile.place.yard ? session->yard(*pile.place.yard)->name : QStringLiteral("store"),
                              pile.place.part, pile.place.state};
            if (pile.place.colony) words << session->colony(*pile.place.colony)->label;
            told << (words << QString::number(pile.count)).join(u' ');
        }
        return told.join(QLatin1StringView("; ")).toStdString();
    }
    static KitPlace at(std::optional<YardId> yard, const QString& part, const QString& state,
                       std::optional<ColonyId> colony = {}) {
        return {yard, part, state, colony};
    }
    static Work count(const KitPlace& pile, int count) {
        return [=](const EditContext& c) { return countKit(c, pile, count); };
    }
    static Work move(const KitPlace& from, int count, std::optional<YardId> yard, const QString& state,
                     std::optional<ColonyId> colony = {}) {
        KitMove move{from, count, yard, state, colony, {}};
        const bool ends = state == core::kit::kBurned || state == core::kit::kSterilised;
        if (from.state == core::kit::kQuarantined && ends) move.end = ending(state);
        return [=](const EditContext& c) { return moveKit(c, move); };
    }
    static KitEnding ending(const QString& state) {
        return {state == core::kit::kBurned ? KitEndHow::Burned : KitEndHow::Irradiated,
                kDay,
                QStringLiteral("Ana"),
                QStringLiteral("K-7"),
                {}};
    }
    /// A sign of American foulbrood at a visit.
    void suspect(ColonyId colony, Day day) {
        log(colony, day, [](Visit& v) { v.signs.add(Sign::Afb); });
    }
    void result(ColonyId colony, Day day, Verdict verdict) {
        Result r;
        r.colony = colony;
        r.day = day;
        r.verdict = verdict;
        r.method = verdict == Verdict::Release ? Method::Inspector : Method::Laboratory;
        r.by = QStringLiteral("office");
        r.paper = QStringLiteral("7");
        apply([&](const EditContext& c) { return logResult(c, r); });
    }
    Thrown thrown(const Work& e) {
        const auto before = rowsText(path());
        const Thrown thrown = thrownBy([&] { apply(e); });
        EXPECT_EQ(rowsText(path()), before);
        return thrown;
    }
};

} // namespace tests::edit
