#include "tests/edit/edit_fixture.h"

#include "core/edit/edit_context.h"
#include "core/edit/row_change.h"

namespace tests::edit {

namespace {

class Bulk : public EditTest {
protected:
    YardId yard = newYard(QStringLiteral("North"));
    ColonyId k5 = newColony(yard, QStringLiteral("5"), {0, 0}, dayOf(1900, 1, 1));

    /// `count` visits of the colony, one a day, each third with a sign.
    ChangeSet visits(const EditContext& c, qint64 count, Day from) const {
        const qint64 firstVisit = c.nextId(Table::Visit);
        ChangeSet change;
        change.text = QStringLiteral("Imported %1 visits").arg(count);
        change.bulk.push_back({Table::Visit, firstVisit, count, [=, this](qint64 i) {
                                   Visit v;
                                   v.colony = k5;
                                   v.day = from + static_cast<int>(i);
                                   v.beesTop = Quarters{static_cast<qint32>(i % 40)};
                                   v.note = QStringLiteral("n° %1").arg(i);
                                   return toRow(v);
                               }});
        change.bulk.push_back({Table::VisitSign, c.nextId(Table::VisitSign), count / 3, [=](qint64 i) {
                                   return Row{firstVisit + i * 3, QStringLiteral("chalkbrood")};
                               }});
        change.attachments.push_back({QStringLiteral("visits.csv"), QByteArray("colony,date\n").repeated(100)});
        return change;
    }
    std::optional<HistoryLine> import(qint64 count, Day from = dayOf(1900, 1, 1)) {
        return apply([&](const EditContext& c) { return visits(c, count, from); });
    }
};

TEST_F(Bulk, IsOneLineAndOneUndoStepWithTheSameRowsAfterRedo) {
    const auto before = rowsText(path());
    ASSERT_TRUE(import(25'000)); // more than two packed parts
    const auto after = rowsText(path());
    EXPECT_NE(after, before);
    session->undo();
    EXPECT_EQ(rowsText(path()), before);
    EXPECT_EQ(problems(), "");
    reopen();
    EXPECT_EQ(session->redoText(), "Imported 25000 visits");
    session->redo();
    EXPECT_EQ(rowsText(path()), after);
    session->undo();
    session->redo();
    EXPECT_EQ(rowsText(path()), after);
    EXPECT_EQ(problems(), "");
}

TEST_F(Bulk, AnUndoThatIsStoppedChangesNothingAndOnePastStoppingGoesThrough) {
    ASSERT_TRUE(import(6'000));
    const auto after = rowsText(path());
    const auto lines = session->history(10).size();
    int tellings = 0;
    const auto undoneWith = [&](int most) {
        tellings = 0;
        session->setProgress(
            Progress([&](const QString&, double) { return ++tellings < most; }, {}, std::chrono::milliseconds(0)));
        try {
            return session->undo().has_value();
        } catch (const Stopped&) {
            return false;
        }
    };
    for (const int most : {1, 5, 20}) {
        EXPECT_FALSE(undoneWith(most));
        EXPECT_EQ(rowsText(path()), after) << most;
        EXPECT_EQ(session->history(10).size(), lines);
        EXPECT_EQ(problems(), "");
    }
    QStringList past;
    session->setProgress(Progress([&](const QString&, double) { return past.isEmpty(); }, {},
                                  std::chrono::milliseconds(0), [&](const QString& what) { past << what; }));
    EXPECT_TRUE(session->undo());
    EXPECT_EQ(past, QStringList(QStringLiteral("Writing…")));
    session->setProgress({});
    EXPECT_TRUE(session->redo());
    EXPECT_EQ(rowsText(path()), after);
    EXPECT_EQ(problems(), "");
}

TEST_F(Bulk, KeepsTheImportedTextForAudit) {
    const auto line = import(10);
    const auto kept = session->attachmentsOf(line->seq);
    ASSERT_EQ(kept.size(), 1u);
    EXPECT_EQ(kept[0].name, "visits.csv");
    EXPECT_EQ(kept[0].text, QByteArray("colony,date\n").repeated(100));
}

TEST_F(Bulk, TellsListenersOfTheRangesAlone) {
    ChangeSet told;
    QObject::connect(session.get(), &Session::changed, [&](const ChangeSet& change) { told = change; });
    import(10);
    ASSERT_EQ(told.bulk.size(), 2u);
    EXPECT_EQ(told.bulk[0].count, 10);
    EXPECT_FALSE(told.bulk[0].row);
    session->undo();
    ASSERT_EQ(told.gone.size(), 2u);
    EXPECT_EQ(told.gone[0].table, Table::VisitSign) << "in reverse: what points to a row goes before it";
    EXPECT_TRUE(told.bulk.empty());
}

TEST_F(Bulk, WritesNothingWhenOneRowIsRefused) {
    const auto before = rowsText(path());
    const Thrown thrown = thrownBy([&] {
        apply([&](const EditContext& c) {
            ChangeSet change = visits(c, 100, dayOf(1900, 1, 1));
            change.bulk[0].row = [inner = change.bulk[0].row](qint64 i) {
                Row row = inner(i);
                if (i == 70) row[2] = qint64(9); // brood boxes
                return row;
            };
            return change;
        });
    });
    EXPECT_EQ(thrown.kind, Error::Kind::BadData);
    EXPECT_EQ(rowsText(path()), before);
    EXPECT_EQ(session->history(100).size(), 2u);
}

TEST_F(Bulk, IsNotUndoneWhereARowOfItIsMissing) {
    import(100);
    rawSql(path(), "DELETE FROM visit WHERE note = 'n° 50'");
    const auto before = rowsText(path());
    EXPECT_NE(thrownBy([&] { session->undo(); }).message.find("changed meanwhile"), std::string::npos);
    EXPECT_EQ(rowsText(path()), before);
    EXPECT_EQ(problems(), "note-words: The search over all notes has a note that is not there: visit 51.\n"
                          "Table visit has 99 rows; by the history it should have 100.");
}

TEST_F(Bulk, LaterEditsOfItsRowsAreUndoneFirstAndComeBack) {
    import(30);
    const auto imported = rowsText(path());
    apply([&](const EditContext& c) {
        const Visit old = c.visitOn(k5, dayOf(1900, 1, 3)).value();
        Visit now = old;
        now.note = QStringLiteral("corrected");
        return ChangeSet{QStringLiteral("Corrected a visit"), {changed(old, now)}, {}, {}, {}};
    });
    const auto corrected = rowsText(path());
    session->undo();
    session->undo();
    session->redo();
    EXPECT_EQ(rowsText(path()), imported);
    session->redo();
    EXPECT_EQ(rowsText(path()), corrected);
    EXPECT_EQ(problems(), "");
}

} // namespace

} // namespace tests::edit
