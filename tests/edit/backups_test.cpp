#include "core/edit/backups.h"

#include "tests/edit/edit_fixture.h"

#include <QDir>
#include <QFile>

namespace tests::edit {

namespace {

QDateTime at(int year, int month, int day, int hour = 12) {
    return QDateTime(QDate(year, month, day), QTime(hour, 0), Qt::UTC);
}

struct MovedClock : Clock {
    QDateTime now = at(2026, 9, 20);
    QDateTime nowUtc() const override { return now; }
    Day today() const override { return dayOf(2026, 9, 20); }
};

/// Day by day `perDay` backups for so many days, each time those that are outlived go.
std::vector<QDateTime> keptAfter(int days, int perDay) {
    std::vector<QDateTime> all;
    for (int i = 0; i < days * perDay; ++i) {
        const QDateTime now = at(2024, 1, 1, 0).addSecs(i * 86400LL / perDay);
        all.push_back(now);
        std::vector<size_t> gone = outlived(all, now);
        std::ranges::sort(gone, std::greater<>());
        for (const size_t g : gone) all.erase(all.begin() + static_cast<std::ptrdiff_t>(g));
    }
    return all;
}

TEST(Outlived, KeepsTenNewestADayForThirtyDaysAndAMonthForAYear) {
    const auto kept = keptAfter(800, 4);
    // Four a day: of today and the two days before all (ten), of the 27 days before those one each, and of the ten
    // months before the last 30 days one each; own calculation, counted by hand from 2026-03-10 back.
    const QDateTime now = at(2024, 1, 1, 0).addDays(800).addSecs(-6 * 3600);
    std::set<QDate> days;
    std::set<std::pair<int, int>> months;
    for (const QDateTime& t : kept) {
        if (t.daysTo(now) < 30) days.insert(t.date());
        months.insert({t.date().year(), t.date().month()});
    }
    EXPECT_EQ(days.size(), 30u);
    EXPECT_EQ(months.size(), 12u);
    EXPECT_LE(kept.size(), 10u + 30u + 12u);
    for (int i = 0; i < 10; ++i) // the newest ten are there
        EXPECT_EQ(kept[kept.size() - 1 - static_cast<size_t>(i)], now.addSecs(-i * 6 * 3600));
}

TEST(Outlived, ABackupOfLongAgoIsKeptWhileThereAreFew) {
    EXPECT_TRUE(outlived({at(2001, 1, 1), at(2026, 9, 20)}, at(2026, 9, 20)).empty());
    EXPECT_TRUE(outlived({}, at(2026, 9, 20)).empty());
    std::vector<QDateTime> many(11, at(2001, 1, 1));
    for (size_t i = 0; i < many.size(); ++i) many[i] = many[i].addSecs(static_cast<qint64>(i));
    EXPECT_EQ(outlived(many, at(2026, 9, 20)), std::vector<size_t>{0});
}

class Backups : public testing::Test {
protected:
    Backups() {
        session = Session::create(path(), clock);
        addYard(QStringLiteral("North"));
    }
    QString path() const { return dir.filePath(QStringLiteral("home.yardwright")); }
    QString shelf() const { return dir.filePath(QStringLiteral("shelf")); }
    void addYard(const QString& name) {
        session->apply([&](const EditContext& c) {
            Yard yard;
            yard.name = name;
            return core::edit::newYard(c, yard);
        });
    }
    ColonyId addHive(const QString& label, MmPoint at) {
        NewColony hive;
        hive.colony.label = label;
        hive.colony.since = dayOf(2026, 5, 1);
        hive.colony.box = session->boxKinds().front().id;
        hive.stand.yard = session->yards().front().id;
        hive.stand.at = at;
        session->apply([&](const EditContext& c) { return addColony(c, hive); });
        const Snapshot s = session->snapshot(clock.today());
        return s.colony(s.livingNamed(label).value()).id;
    }
    void sign(ColonyId colony, Sign seen, int daysAgo = 0) {
        Visit v;
        v.colony = colony;
        v.day = clock.today() - daysAgo;
        v.signs.add(seen);
        session->apply([&](const EditContext& c) { return logVisit(c, v); });
    }
    std::string holdsGoneWith(const Backup& backup) {
        return compareWith(*session, backup.path).holds.join(QStringLiteral("; ")).toStdString();
    }
    Backup backUp() {
        BackupRun run(*session, shelf());
        while (run.step(5)) {
        }
        return run.made();
    }
    void later(int days) { clock.now = clock.now.addDays(days); }
    std::vector<Backup> there() const { return backupsIn(shelf(), session->bookId()); }

    QTemporaryDir dir;
    MovedClock clock;
    std::unique_ptr<Session> session;
};

TEST_F(Backups, AreMadeCheckedAndFoundByName) {
    EXPECT_TRUE(backupNeeded(*session, shelf()));
    const Backup made = backUp();
    EXPECT_EQ(made.seq, session->history(1).front().seq);
    EXPECT_FALSE(backupNeeded(*session, shelf()));
    const auto all = there();
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].path, made.path);
    EXPECT_EQ(all[0].title, "home");
    EXPECT_EQ(all[0].at, clock.now);
    EXPECT_GT(all[0].bytes, 0);
    EXPECT_EQ(rowsText(made.path), rowsText(path()));
    addYard(QStringLiteral("South"));
    EXPECT_TRUE(backupNeeded(*session, shelf()));
}

// Title, the id's beginning and the number of the last line are in a backup's name; two copies of a book may share all.
TEST_F(Backups, ThatOfAnotherCopyOfTheBookIsNone) {
    QDir().mkdir(dir.filePath(QStringLiteral("stick")));
    const QString copy = dir.filePath(QStringLiteral("stick/")) + QFileInfo(path()).fileName();
    session->backUp(copy);
    addYard(QStringLiteral("South"));
    const Backup made = backUp();
    EXPECT_FALSE(backupNeeded(*session, shelf()));
    const auto other = Session::open(copy, clock);
    other->apply([](const EditContext& c) {
        Yard yard;
        yard.name = QStringLiteral("East");
        return newYard(c, yard);
    });
    ASSERT_EQ(other->history(1).front().seq, made.seq);
    ASSERT_EQ(other->bookTitle(), made.title);
    EXPECT_TRUE(backupNeeded(*other, shelf()));
    EXPECT_FALSE(backupNeeded(*session, shelf()));
}

TEST_F(Backups, ABookWrittenMeanwhileIsCopiedAsItIsInTheEnd) {
    BackupRun run(*session, shelf());
    ASSERT_TRUE(run.step(0));
    ASSERT_LT(run.share(), 1);
    addYard(QStringLiteral("South"));
    while (run.step(1)) {
    }
    EXPECT_EQ(rowsText(run.made().path), rowsText(path()));
    EXPECT_EQ(run.made().seq, session->history(1).front().seq);
}

TEST_F(Backups, GivenUpLeavesNothing) {
    {
        BackupRun run(*session, shelf());
        run.step(0);
    }
    EXPECT_TRUE(QDir(shelf()).entryList(QDir::Files | QDir::Hidden).isEmpty());
}

TEST_F(Backups, OthersFilesInTheFolderAreNeverTouched) {
    QDir().mkpath(shelf());
    const QStringList others = {QStringLiteral("notes.txt"), QStringLiteral("home.yardwright"),
                                QStringLiteral("home.00000000.2020-01-01T000000Z.1.yardwright")};
    for (const QString& name : others) {
        QFile file(QDir(shelf()).filePath(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    }
    for (int i = 0; i < 13; ++i) {
        backUp();
        addYard(QStringLiteral("Y%1").arg(i));
        clock.now = clock.now.addSecs(60);
    }
    EXPECT_EQ(there().size(), 10u); // of one day: the newest ten
    for (const QString& name : others) EXPECT_TRUE(QFile::exists(QDir(shelf()).filePath(name))) << name.toStdString();
}

TEST_F(Backups, ADamagedBookTakesNoBackupAway) {
    for (int i = 0; i < 10; ++i) {
        backUp();
        addYard(QStringLiteral("Y%1").arg(i));
        clock.now = clock.now.addSecs(60);
    }
    ASSERT_EQ(there().size(), 10u);
    QFile file(path());
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    constexpr int kPage = 4096;
    file.seek(3 * kPage);
    file.write(QByteArray(40 * kPage, 'x'));
    file.close();
    EXPECT_FALSE(thrownBy([&] { backUp(); }).message.empty());
    EXPECT_EQ(there().size(), 10u);
    EXPECT_EQ(QDir(shelf()).entryList(QDir::Files | QDir::Hidden).size(), 10);
}

TEST_F(Backups, ComparedSayWhatIsLostAndWhatDiffers) {
    const Backup made = backUp();
    addYard(QStringLiteral("South"));
    session->undo();
    addYard(QStringLiteral("East"));
    const BackupCompared compared = compareWith(*session, made.path);
    EXPECT_TRUE(compared.sameBook);
    EXPECT_TRUE(compared.earlier);
    EXPECT_TRUE(compared.problems.isEmpty());
    EXPECT_EQ(compared.lost, 3);
    ASSERT_EQ(compared.lostLines.size(), 3u);
    EXPECT_EQ(compared.lostLines[0].text, "Added yard East");
    ASSERT_EQ(compared.counts.size(), 1u);
    EXPECT_EQ(compared.counts[0].now, "2 yards");
    EXPECT_EQ(compared.counts[0].then, "1 yard");
}

TEST_F(Backups, ComparedNameTheHoldsThatWouldGo) {
    const ColonyId a2 = addHive(QStringLiteral("A2"), {0, 0});
    const Backup before = backUp();
    sign(a2, Sign::Chalkbrood, 2); // holds nothing
    EXPECT_EQ(holdsGoneWith(before), "");
    sign(a2, Sign::Efb, 1);
    EXPECT_EQ(holdsGoneWith(before), "A2: efb");
    clock.now = clock.now.addSecs(60);
    const Backup after = backUp();
    EXPECT_EQ(holdsGoneWith(after), "");
    const ColonyId a9 = addHive(QStringLiteral("A9"), {9000, 0}); // not in it at all
    sign(a9, Sign::BroodDoubt);
    EXPECT_EQ(holdsGoneWith(after), "A9: brood-doubt");
    sign(a2, Sign::Efb);
    EXPECT_EQ(holdsGoneWith(after), "A2: efb (some of what it rests on); A9: brood-doubt");
}

TEST_F(Backups, PutInPlaceThoughAHoldGoesKeepsTheReasonTheNameAndTheHoldsInTheHistory) {
    const ColonyId a2 = addHive(QStringLiteral("A2"), {0, 0});
    const Backup made = backUp();
    const std::string then = rowsText(path());
    sign(a2, Sign::Afb);
    const std::string now = rowsText(path());
    const PutBack why{QStringLiteral(" Ana "), QStringLiteral("spoilt by an import"),
                      compareWith(*session, made.path).holds, clock.now};
    ASSERT_EQ(why.holds, QStringList(QStringLiteral("A2: afb-suspected")));
    session.reset();
    const QString aside = dir.filePath(QStringLiteral("aside.yardwright"));
    PutBack none = why;
    none.reason = QStringLiteral("  ");
    EXPECT_EQ(thrownBy([&] { putInPlace(made.path, path(), aside, {}, none); }).kind, Error::Kind::BadData);
    EXPECT_EQ(rowsText(path()), now);
    EXPECT_FALSE(QFile::exists(aside));
    putInPlace(made.path, path(), aside, {}, why);
    EXPECT_EQ(rowsText(path()), then);
    EXPECT_EQ(rowsText(aside), now);
    EXPECT_EQ(rowsText(made.path), then);
    session = Session::open(path(), clock);
    EXPECT_EQ(session->check().join(u'\n').toStdString(), "");
    const HistoryLine line = session->history(1).front();
    EXPECT_EQ(line.seq, made.seq + 1);
    EXPECT_EQ(line.by, "Ana");
    EXPECT_EQ(line.reason, "spoilt by an import");
    EXPECT_EQ(line.text, "Put this backup in the book's place. Holds that went: A2: afb-suspected");
    const auto kept = session->attachmentsOf(line.seq);
    ASSERT_EQ(kept.size(), 1u);
    EXPECT_EQ(kept[0].text, "A2: afb-suspected\n");
}

TEST_F(Backups, OfACopyThatWentItsOwnWayAreNotEarlier) {
    const Backup made = backUp();
    {
        const auto copy = Session::open(made.path, clock);
        copy->apply([](const EditContext& c) {
            Yard yard;
            yard.name = QStringLiteral("Elsewhere");
            return core::edit::newYard(c, yard);
        });
    }
    addYard(QStringLiteral("South"));
    const BackupCompared compared = compareWith(*session, made.path);
    EXPECT_TRUE(compared.sameBook);
    EXPECT_FALSE(compared.earlier);
    EXPECT_EQ(compared.lost, static_cast<int>(session->history(1000).size()));
}

TEST_F(Backups, PutInPlaceIsTheBookAndTheOneOfBeforeIsKept) {
    const Backup made = backUp();
    const std::string then = rowsText(path());
    addYard(QStringLiteral("South"));
    const std::string now = rowsText(path());
    session.reset();
    const QString aside = dir.filePath(QStringLiteral("aside.yardwright"));
    putInPlace(made.path, path(), aside);
    EXPECT_EQ(rowsText(path()), then);
    EXPECT_EQ(rowsText(aside), now);
    EXPECT_TRUE(Session::open(path(), clock)->check().isEmpty());
    EXPECT_EQ(rowsText(made.path), then);
}

TEST_F(Backups, WhatCannotTakeThePlaceChangesNothing) {
    const Backup made = backUp();
    addYard(QStringLiteral("South"));
    const std::string now = rowsText(path());
    session.reset();
    const QString aside = dir.filePath(QStringLiteral("aside.yardwright"));
    ASSERT_TRUE(QFile::copy(made.path, aside));
    EXPECT_FALSE(thrownBy([&] { putInPlace(made.path, path(), aside); }).message.empty());
    EXPECT_EQ(rowsText(path()), now);
    QFile damaged(made.path);
    ASSERT_TRUE(damaged.resize(damaged.size() / 2));
    QFile::remove(aside);
    EXPECT_FALSE(thrownBy([&] { putInPlace(made.path, path(), aside); }).message.empty());
    EXPECT_EQ(rowsText(path()), now);
    EXPECT_FALSE(QFile::exists(aside));
    EXPECT_FALSE(QFile::exists(path() + QStringLiteral(".restored")));
}

QByteArray bytesIn(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

class OldBackups : public Backups, public testing::WithParamInterface<int> {};

// Books as each released version made them (tests/golden).
TEST_P(OldBackups, AreComparedAndPutInPlaceInACopyThatIsUpToDateAndStayAsTheyAre) {
    const QString old = dir.filePath(QStringLiteral("old.yardwright"));
    const QString book = dir.filePath(QStringLiteral("grown.yardwright"));
    const QString golden = QStringLiteral(YW_SOURCE_DIR "/tests/golden/version-%1.yardwright").arg(GetParam());
    for (const QString& to : {old, book}) {
        ASSERT_TRUE(QFile::copy(golden, to));
        ASSERT_TRUE(QFile::setPermissions(to, QFile::ReadOwner | QFile::WriteOwner));
    }
    const QByteArray before = bytesIn(old);
    session = Session::open(book, clock); // brought up to date
    const std::string then = rowsText(book);
    addYard(QStringLiteral("Later"));
    const BackupCompared compared = compareWith(*session, old);
    EXPECT_TRUE(compared.sameBook && compared.earlier);
    EXPECT_EQ(compared.problems.join(u'\n').toStdString(), "");
    EXPECT_EQ(compared.lost, 1);
    session.reset();
    putInPlace(old, book, dir.filePath(QStringLiteral("aside.yardwright")));
    EXPECT_EQ(rowsText(book), then);
    EXPECT_TRUE(Session::open(book, clock)->check().isEmpty());
    EXPECT_TRUE(bytesIn(old) == before);
    EXPECT_EQ(QDir(dir.path()).entryList({QStringLiteral("old*")}, QDir::Files),
              QStringList(QStringLiteral("old.yardwright")));
}

INSTANTIATE_TEST_SUITE_P(EachVersion, OldBackups, testing::Values(1, 4, 6, 7));

} // namespace

} // namespace tests::edit
