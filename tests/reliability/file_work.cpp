#include "tests/reliability/file_work.h"

#include "tests/reliability/figures.h"

#include "core/edit/backups.h"
#include "core/edit/edit_context.h"
#include "core/exchange/import.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <csignal>
#include <sqlite3.h>
#include <sys/wait.h>
#include <unistd.h>

namespace tests::reliability {

namespace {

const Clock& clockOfWorks() {
    static const FixedClock clock;
    return clock;
}

QString bookIn(const QString& folder) { return folder + QStringLiteral("/b.yardwright"); }
QString asideIn(const QString& folder) { return folder + QStringLiteral("/b before.yardwright"); }

std::unique_ptr<Session> openIn(const QString& path) { return Session::open(path, clockOfWorks()); }

void addYard(Session& session, const QString& name) {
    session.apply([&](const EditContext& c) {
        Yard yard;
        yard.name = name;
        return newYard(c, yard);
    });
}

std::string stateAt(const QString& path) { return stateOf(*openIn(path)); }

/// A state of a sound book at `path`; what is wrong with it goes to `fault`.
std::string soundState(const QString& path, std::string& fault) {
    const auto session = openIn(path);
    if (const QStringList wrong = session->check(); !wrong.isEmpty()) fault = wrong.join(u' ').toStdString();
    return stateOf(*session);
}

/// What throws is a fault too.
std::function<std::string(const QString&, int)> judged(std::function<std::string(const QString&, int)> look) {
    return [look = std::move(look)](const QString& folder, int said) -> std::string {
        try {
            return look(folder, said);
        } catch (const Error& e) {
            return std::string("it cannot be used: ") + e.what() + ' ' + e.detail().toStdString();
        }
    };
}

// A new book

FileWork newBook() {
    FileWork work;
    work.name = "a new book";
    work.prepare = [](const QString&) {};
    work.run = [](const QString& folder, const std::function<void()>& said) {
        const auto session = Session::create(bookIn(folder), clockOfWorks());
        said();
        addYard(*session, QStringLiteral("North"));
        said();
    };
    work.faultOf = judged([](const QString& folder, int said) -> std::string {
        const QString path = bookIn(folder);
        const bool there = QFileInfo::exists(path);
        if (!there && said > 0) return "the new book is lost";
        const auto session = there ? openIn(path) : Session::create(path, clockOfWorks());
        if (const QStringList wrong = session->check(); !wrong.isEmpty()) return wrong.join(u' ').toStdString();
        if (session->boxKinds().empty()) return "the new book is half";
        const size_t yards = session->yards().size();
        if (yards > 1 || (said > 1 && yards != 1)) return "its first yard is lost";
        addYard(*session, QStringLiteral("South"));
        return session->yards().size() == yards + 1 ? "" : "the next edit does nothing";
    });
    return work;
}

FileWork importedNew() {
    FileWork work;
    work.name = "an import that makes a book";
    work.prepare = [](const QString&) {};
    work.run = [](const QString& folder, const std::function<void()>& said) {
        using core::exchange::FileKind;
        const QString from = QStringLiteral(YW_TEST_DATA "/yards/kiln-field/");
        core::exchange::ImportFiles files;
        files.files = {{FileKind::Yards, from + QStringLiteral("yards.csv")},
                       {FileKind::Colonies, from + QStringLiteral("colonies.csv")},
                       {FileKind::Visits, from + QStringLiteral("visits.csv")}};
        if (!core::exchange::importIntoBook(bookIn(folder), clockOfWorks(), files, false).good()) return;
        said();
    };
    const auto run = work.run;
    work.faultOf = judged([run](const QString& folder, int said) -> std::string {
        if (!QFileInfo::exists(bookIn(folder))) {
            if (said > 0) return "the imported book is lost";
            run(folder, [] {}); // again
        }
        std::string fault;
        soundState(bookIn(folder), fault);
        return openIn(bookIn(folder))->history(2).size() == 1 ? fault : "the imported book is half";
    });
    return work;
}

// An older book that is opened

QString golden(int version) { return QStringLiteral(YW_SOURCE_DIR "/tests/golden/version-%1.yardwright").arg(version); }

FileWork migrated(int version) {
    FileWork work;
    work.name = "a book of version " + std::to_string(version);
    const auto whole = std::make_shared<std::string>();
    work.prepare = [=](const QString& folder) {
        copyFile(golden(version), bookIn(folder));
        QFile::setPermissions(bookIn(folder), QFile::ReadOwner | QFile::WriteOwner);
        if (!whole->empty()) return;
        const QTemporaryDir elsewhere;
        copyFile(bookIn(folder), bookIn(elsewhere.path()));
        *whole = stateAt(bookIn(elsewhere.path()));
    };
    work.run = [](const QString& folder, const std::function<void()>& said) {
        openIn(bookIn(folder));
        said();
    };
    work.faultOf = judged([=](const QString& folder, int said) -> std::string {
        std::string fault;
        if (soundState(bookIn(folder), fault) != *whole) return "the migrated book is not as it is without a cut";
        const QString kept = folder + QStringLiteral("/b.version-%1.yardwright").arg(version);
        if (!QFileInfo::exists(kept)) return said > 0 ? "the copy of before is lost" : fault;
        if (soundState(kept, fault) != *whole) return "the copy of before is not what it was";
        return fault;
    });
    return work;
}

// Backups

QByteArray bytesOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

constexpr size_t kOldBackups = 12;

/// A book with backups of the day before, more of them than are kept; then one edit more.
void prepareBackups(const QString& folder) {
    auto session = Session::create(bookIn(folder), clockOfWorks());
    addYard(*session, QStringLiteral("North"));
    BackupRun run(*session, folder);
    while (run.step(0)) {
    }
    const QString made = run.made().path;
    const QString day = QStringLiteral("2026-09-20T120000Z");
    for (int hour = 0; hour < static_cast<int>(kOldBackups); ++hour)
        copyFile(made, QString(made).replace(day, QStringLiteral("2026-09-19T%1").arg(hour, 2, 10, QLatin1Char('0')) +
                                                      QStringLiteral("0000Z")));
    QFile::remove(made);
    addYard(*session, QStringLiteral("South"));
}

FileWork backup() {
    FileWork work;
    work.name = "a backup";
    work.prepare = prepareBackups;
    work.run = [](const QString& folder, const std::function<void()>& said) {
        const auto session = openIn(bookIn(folder));
        BackupRun run(*session, folder);
        while (run.step(0)) {
        }
        said();
    };
    work.faultOf = judged([](const QString& folder, int said) -> std::string {
        std::string fault;
        const auto session = openIn(bookIn(folder));
        const std::string state = stateOf(*session);
        if (session->yards().size() != 2) return "the book is not as it was";
        bool newOne = false;
        std::vector<QByteArray> old;
        for (const Backup& b : backupsIn(folder, session->bookId())) {
            if (b.at.date() != QDate(2026, 9, 20)) {
                old.push_back(bytesOf(b.path));
                if (old.front() != old.back()) return "an old backup is not what it was";
                continue;
            }
            newOne = true;
            if (soundState(b.path, fault) != state) return "the new backup is not the book";
        }
        if (said > 0 && !newOne) return "the backup is lost";
        if (!newOne && old.size() != kOldBackups) return "old backups went and the new one is not there";
        return fault;
    });
    return work;
}

FileWork copy() {
    FileWork work;
    work.name = "a copy";
    work.prepare = [](const QString& folder) {
        addYard(*Session::create(bookIn(folder), clockOfWorks()), QStringLiteral("North"));
    };
    work.run = [](const QString& folder, const std::function<void()>& said) {
        openIn(bookIn(folder))->backUp(asideIn(folder));
        said();
    };
    work.faultOf = judged([](const QString& folder, int said) -> std::string {
        std::string fault;
        const std::string state = soundState(bookIn(folder), fault);
        if (!QFileInfo::exists(asideIn(folder))) return said > 0 ? "the copy is lost" : fault;
        return soundState(asideIn(folder), fault) == state ? fault : "the copy is half";
    });
    return work;
}

// A backup that takes the book's place

QString backupFileIn(const QString& folder) { return folder + QStringLiteral("/then.yardwright"); }

/// As a program leaves the book that is killed while it writes: a part of an edit in the file, a journal beside it.
void leaveHalf(const QString& path) {
    const pid_t child = fork();
    if (child == 0) {
        sqlite3* db = nullptr;
        if (sqlite3_open(path.toUtf8().constData(), &db) != SQLITE_OK) _exit(1);
        constexpr char kHalf[] = "PRAGMA cache_size = 1; PRAGMA cache_spill = 1; BEGIN IMMEDIATE; "
                                 "UPDATE yard SET name = name || 'x'; UPDATE box_kind SET name = 'half ' || id; "
                                 "CREATE TABLE half AS SELECT * FROM box_kind, yard; UPDATE yard SET name = 'half';";
        sqlite3_exec(db, kHalf, nullptr, nullptr, nullptr);
        sqlite3_db_cacheflush(db);
        kill(getpid(), SIGKILL);
    }
    int status = 0;
    waitpid(child, &status, 0);
    if (!QFileInfo(path + QStringLiteral("-journal")).size()) throw std::runtime_error("no journal was left");
}

FileWork restored(const char* name, bool half, bool oldSystem) {
    FileWork work;
    work.name = name;
    work.oldSystem = oldSystem;
    const auto states = std::make_shared<std::pair<std::string, std::string>>(); // the backup's, the book's
    work.prepare = [=](const QString& folder) {
        auto session = Session::create(bookIn(folder), clockOfWorks());
        addYard(*session, QStringLiteral("North"));
        session->backUp(backupFileIn(folder));
        states->first = stateOf(*session);
        addYard(*session, QStringLiteral("South"));
        states->second = stateOf(*session);
        session.reset();
        if (half) leaveHalf(bookIn(folder));
    };
    work.run = [](const QString& folder, const std::function<void()>& said) {
        putInPlace(backupFileIn(folder), bookIn(folder), asideIn(folder));
        said();
    };
    work.faultOf = judged([=](const QString& folder, int said) -> std::string {
        std::string fault;
        const std::string now = soundState(bookIn(folder), fault);
        if (now != states->first && (said > 0 || now != states->second)) return "the book is neither of the two";
        if (soundState(backupFileIn(folder), fault) != states->first) return "the backup is not what it was";
        const auto kept = [&](const QString& path) {
            return QFileInfo::exists(path) && stateAt(path) == states->second;
        };
        if (now == states->first && !kept(asideIn(folder))) return "the book of before is lost";
        // Asked again, it is done, and the book of before is there still.
        const QString again = folder + QStringLiteral("/b before, again.yardwright");
        putInPlace(backupFileIn(folder), bookIn(folder), again);
        if (stateAt(bookIn(folder)) != states->first) return "asked again, it is not done";
        if (!kept(asideIn(folder)) && !kept(again)) return "asked again, the book of before is lost";
        return fault;
    });
    return work;
}

} // namespace

std::vector<FileWork> fileWorks() {
    std::vector<FileWork> works = {newBook(),
                                   importedNew(),
                                   backup(),
                                   copy(),
                                   restored("a backup put in the book's place", false, false),
                                   restored("a backup put in the place of a half written book", true, false),
                                   restored("a backup put in the book's place on a plain disk", false, true)};
    for (int version = 1; QFileInfo::exists(golden(version + 1)); ++version)
        if (version == 1 || longRun()) works.push_back(migrated(version));
    return works;
}

} // namespace tests::reliability
