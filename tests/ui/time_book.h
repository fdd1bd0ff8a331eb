#pragma once

#include "tests/ui/book_of_test.h"

#include "core/edit/edits.h"
#include "core/edit/session.h"
#include "tests/support/made_book.h"

namespace tests {

/// A book with a past: Kiln Field has hives B1 to B4 since 10 May 2026. B1 to B3 were counted on 3 Jun, B2 united into
/// B3 on 20 Jun, B4 carried on 1 Jul, and B1 bore a sign of American foulbrood at its visit of 3 Jul; B1 and B3 were
/// counted again on 20 Aug. Larkspur Bottom has been empty always. The clock stands at 15 Sep 2026.
class BookWithPast {
public:
    BookWithPast() {
        putBook(
            "with past", path(), [this](const QString& at) { make(at); },
            [this](const QString& at) { return core::edit::Session::open(at, m_clock)->bookId(); });
        yardsOf(*reader());
    }

    QString path() const { return m_folder.filePath(QStringLiteral("past.yardwright")); }
    const FixedClock& clock() const { return m_clock; }
    core::YardId yard() const { return m_yard; }
    core::YardId emptyYard() const { return m_empty; }
    std::unique_ptr<core::edit::Session> reader() const {
        return core::edit::Session::open(path(), m_clock, core::edit::Session::Access::ReadOnly);
    }
    core::ColonyId idOf(const char* label) const { return idIn(*reader(), label); }

private:
    void make(const QString& at) {
        using namespace core::edit;
        const auto session = Session::create(at, m_clock);
        for (const char* name : {"Kiln Field", "Larkspur Bottom"}) {
            core::Yard yard;
            yard.name = QLatin1StringView(name);
            session->apply([&](const EditContext& c) { return newYard(c, yard); });
        }
        yardsOf(*session);
        for (int i = 0; i < 4; ++i) {
            NewColony hive;
            hive.colony.label = QStringLiteral("B%1").arg(i + 1);
            hive.colony.since = core::dayOf(2026, 5, 10);
            hive.colony.box = session->boxKinds().front().id;
            hive.stand.yard = m_yard;
            hive.stand.at = {i * 2000, 0};
            hive.headingDeg = 180;
            session->apply([&](const EditContext& c) { return addColony(c, hive); });
        }
        const core::Day june = core::dayOf(2026, 6, 3);
        visit(*session, "B1", june, 20);
        visit(*session, "B2", june, 12);
        visit(*session, "B3", june, 16);
        core::Lineage united;
        united.day = core::dayOf(2026, 6, 20);
        united.colony = idIn(*session, "B2");
        united.into = idIn(*session, "B3");
        united.how = core::LineageHow::United;
        session->apply([&](const EditContext& c) { return recordUnion(c, united); });
        const core::ColonyId b4 = idIn(*session, "B4");
        session->apply([&](const EditContext& c) { return carryHive(c, b4, {6000, 3000}, core::dayOf(2026, 7, 1)); });
        visit(*session, "B1", core::dayOf(2026, 7, 3), {}, true);
        visit(*session, "B1", core::dayOf(2026, 8, 20), 28);
        visit(*session, "B3", core::dayOf(2026, 8, 20), 30);
    }

    void yardsOf(const core::edit::Session& session) {
        for (const core::Yard& yard : session.yards())
            (yard.name == QStringLiteral("Kiln Field") ? m_yard : m_empty) = yard.id;
    }
    static core::ColonyId idIn(const core::edit::Session& session, const char* label) {
        const core::Snapshot s = session.snapshot(core::dayOf(2026, 5, 20));
        return s.colony(s.livingNamed(QString::fromLatin1(label)).value()).id;
    }
    void visit(core::edit::Session& session, const char* label, core::Day day, std::optional<int> bees,
               bool sign = false) const {
        core::Visit v;
        v.colony = idIn(session, label);
        v.day = day;
        if (bees) v.beesTop = core::Quarters{*bees};
        v.broodFrames = 4;
        v.broodChecked = 4;
        if (sign) v.signs.add(core::Sign::Afb);
        session.apply([&](const core::edit::EditContext& c) { return core::edit::logVisit(c, v); });
    }

    QTemporaryDir m_folder;
    FixedClock m_clock;
    core::YardId m_yard, m_empty;
};

} // namespace tests
