#include "tests/ui/book_of_test.h"

#include "core/edit/edits.h"
#include "tests/support/made_book.h"

#include <QTimeZone>

namespace tests {

namespace edit = core::edit;

QDateTime FixedClock::nowUtc() const { return QDateTime(core::toDate(day), QTime(9, 30), QTimeZone::utc()); }

QString BookOfTest::path() const { return m_folder.filePath(QStringLiteral("test.yardwright")); }

namespace {

core::ColonyId idIn(const edit::Session& session, const QString& label, core::Day day) {
    const core::Snapshot s = session.snapshot(day);
    return s.colony(s.livingNamed(label).value()).id;
}

void makeBook(const QString& path, const FixedClock& clock) {
    const auto session = edit::Session::create(path, clock);
    core::Yard yard;
    yard.name = QStringLiteral("Kiln Field");
    session->apply([&](const edit::EditContext& c) { return edit::newYard(c, yard); });
    const core::YardId yardId = session->yards().front().id;
    core::BoxKindId box;
    for (const core::BoxKind& kind : session->boxKinds())
        if (kind.name == QStringLiteral("langstroth-10")) box = kind.id;
    for (int i = 0; i < 6; ++i) {
        edit::NewColony colony;
        colony.colony.label = QStringLiteral("A%1").arg(i + 1);
        colony.colony.since = core::dayOf(2026, 5, 10);
        colony.colony.box = box;
        colony.colony.queenBorn = 2025;
        colony.stand.yard = yardId;
        colony.stand.at = {i * 2000, 0};
        colony.headingDeg = 180;
        session->apply([&](const edit::EditContext& c) { return edit::addColony(c, colony); });
        core::Visit visit;
        visit.colony = idIn(*session, colony.colony.label, clock.day);
        visit.day = clock.day - 1;
        visit.beesTop = core::Quarters{12 + 2 * i};
        visit.queen = core::QueenSeen::Eggs;
        visit.broodFrames = 4;
        if (i != 2) visit.broodChecked = 4;
        session->apply([&](const edit::EditContext& c) { return edit::logVisit(c, visit); });
    }
}

} // namespace

BookOfTest::BookOfTest() {
    putBook(
        "of test", path(), [this](const QString& at) { makeBook(at, m_clock); },
        [this](const QString& at) { return edit::Session::open(at, m_clock)->bookId(); });
}

std::unique_ptr<edit::Session> BookOfTest::reader() const {
    return edit::Session::open(path(), m_clock, edit::Session::Access::ReadOnly);
}

core::ColonyId BookOfTest::idOf(const QString& label) const { return idIn(*reader(), label, m_clock.day); }

core::MmPoint BookOfTest::placeOf(const QString& label) const {
    const core::Snapshot s = reader()->snapshot(m_clock.day);
    return s.placeOf(s.livingNamed(label).value())->at;
}

std::vector<core::Visit> BookOfTest::visitsOf(const QString& label) const {
    return reader()->visitsOf(idOf(label), 100);
}

std::vector<QString> BookOfTest::history() const {
    std::vector<QString> out;
    for (const edit::HistoryLine& line : reader()->history(1000)) out.push_back(line.text);
    return out;
}

} // namespace tests
