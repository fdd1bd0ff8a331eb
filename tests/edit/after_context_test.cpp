#include "core/edit/after_context.h"
#include "tests/edit/every_edit.h"

#include "tests/edit/edit_fixture.h"

#include <sstream>

namespace tests::edit {

namespace {

/// What the reads say, in the order in which they say it.
class Told {
public:
    explicit Told(const EditContext& context) : c(context) {}

    std::string text() {
        for (qint64 id = 1; id <= kIds; ++id) {
            addColony(ColonyId{id});
            addRows("at", c.placementsAt(StandId{id}));
            addRows("at that day", c.placementsAt(StandId{id}, dayOf(2026, 5, 20)));
        }
        for (qint64 id = 1; id <= 4; ++id) addYard(YardId{id});
        addRows("yards", c.yards());
        addRows("kinds", c.boxKinds());
        for (const BoxKind& kind : c.boxKinds()) addRows("in", c.coloniesIn(kind.id));
        for (const char* name : {"N", "0", "1", "2"}) {
            const QString label = QString::fromLatin1(name);
            m_out << "named " << (c.yardNamed(label) ? c.yardNamed(label)->id.value : 0);
            m_out << ' ' << (c.boxKindNamed(QStringLiteral("own-") + label) ? "own" : "none");
            for (qint64 yard = 1; yard <= 2; ++yard) m_out << ' ' << (c.standNamed(YardId{yard}, label) ? "s" : "-");
            const auto colony = c.colonyNamed(label, dayOf(2026, 5, 20));
            m_out << ' ' << (colony ? colony->id.value : 0) << '\n';
        }
        return m_out.str();
    }

private:
    static constexpr qint64 kIds = 25;

    void addCells(qint64 id, const Row& cells) {
        m_out << id;
        for (const Value& cell : cells) {
            m_out << '|';
            if (const auto* n = std::get_if<qint64>(&cell)) m_out << *n;
            if (const auto* r = std::get_if<double>(&cell)) m_out << *r;
            if (const auto* t = std::get_if<QString>(&cell)) m_out << t->toStdString();
        }
        m_out << '\n';
    }
    template <class T> void addRows(const char* what, const std::vector<T>& rows) {
        m_out << what << '\n';
        for (const T& row : rows) addCells(row.id.value, toRow(row));
    }
    void addColony(ColonyId id) {
        const auto colony = c.colony(id);
        if (!colony) return;
        addCells(id.value, toRow(*colony));
        addRows("labelled", c.coloniesLabelled(colony->label));
        addRows("places", c.placementsOf(id));
        m_out << "open " << (c.openPlacement(id) ? c.openPlacement(id)->id.value : 0) << '\n';
        addRows("lineage", c.lineageOf(id));
        addRows("transfers", c.transfersOf(id));
        addRows("treatments", c.treatmentsOf(id));
        addRows("results", c.resultsOf(id));
        addRows("feedings", c.feedingsOf(id));
        addRows("samples", c.samplesOf(id));
        addRows("mite falls", c.miteFallsOf(id));
        addRows("queens", c.queensOf(id));
        addRows("raised", c.queensRaisedFrom(id));
        for (const int most : {1, -1}) addVisits(c.visitsOf(id, most));
        for (int i = 0; i < 90; i += 10) {
            const Day day = colony->since + i;
            m_out << "boxes " << c.boxesAt(id, day) << ' ' << isoText(c.boxesSince(id, day)).toStdString() << ' '
                  << (c.visitOn(id, day) ? c.visitOn(id, day)->id.value : 0) << '\n';
        }
    }
    void addVisits(const std::vector<Visit>& visits) {
        addRows("visits", visits);
        for (const Visit& v : visits) {
            m_out << "signs " << int(v.signs.bits) << ' ' << int(c.visit(v.id)->signs.bits) << '\n';
            for (const auto& [id, cells] : c.signRows(v.id)) addCells(id, cells);
        }
    }
    void addYard(YardId id) {
        addRows("stands", c.standsOf(id));
        addRows("treatments", c.treatmentsOf(id));
        addRows("results", c.resultsOf(id));
    }

    const EditContext& c;
    std::ostringstream m_out;
};

class AfterContextTest : public EditTest {};

TEST_F(AfterContextTest, ReadsWhatTheBookSaysOnceTheRowsAreWritten) {
    EveryEdit edits(11);
    newYard(QStringLiteral("N"));
    newYard(QStringLiteral("S"));
    for (int i = 0; i < 6; ++i) newColony(YardId{1 + i % 2}, QString::number(i), {i * 1000, 0});
    int written = 0;
    for (int i = 0; i < 250 && !HasFailure(); ++i) {
        std::string tried;
        std::string told;
        ChangeSet change;
        try {
            session->read([&](const EditContext& c) {
                std::tie(tried, change) = edits.next(c);
                told = Told(AfterContext(c, change.rows)).text();
            });
        } catch (const Error&) {
            continue; // refused
        }
        const Correction why{QStringLiteral("Ana"), QStringLiteral("slip")};
        if (!session->apply([&](const EditContext&) { return change; }, why)) continue;
        session->read([&](const EditContext& c) { EXPECT_EQ(told, Told(c).text()) << tried; });
        ++written;
    }
    EXPECT_GT(written, 60);
}

TEST_F(AfterContextTest, GivesNewIdsAfterThoseThatArePutIntoIt) {
    session->read([&](const EditContext& c) {
        AfterContext after(c);
        EXPECT_EQ(after.nextId(Table::Yard), 1);
        Yard yard;
        yard.name = QStringLiteral("N");
        const ChangeSet first = core::edit::newYard(after, yard);
        after.add(first.rows);
        EXPECT_EQ(after.nextId(Table::Yard), 2);
        EXPECT_EQ(thrownBy([&] { core::edit::newYard(after, yard); }).message, "There is a yard N already.");
        after.add(inverse(first.rows));
        EXPECT_FALSE(after.yardNamed(u"N"));
    });
}

} // namespace

} // namespace tests::edit
