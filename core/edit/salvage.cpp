#include "core/edit/salvage.h"

#include "core/base/book_held.h"
#include "core/base/damaged.h"
#include "core/edit/change_fields.h"
#include "core/edit/edit_checks.h"
#include "core/edit/salvage_lost.h"
#include "core/edit/salvage_mend.h"
#include "core/edit/salvage_write.h"
#include "core/edit/session.h"
#include "core/edit/told_rows.h"
#include "core/store/book_file.h"
#include "core/store/disk_names.h"
#include "core/store/row_store.h"

#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>
#include <QUuid>

#include <algorithm>

namespace core::edit {

using store::Remains;

struct Salvage::Private {
    QTemporaryDir folder;
    QDateTime now;
    std::unique_ptr<Remains> remains;
    std::unique_ptr<store::Database> backup;
    std::unique_ptr<ToldRows> told;
    std::unique_ptr<store::Database> rows; ///< what is kept
    SalvageAccount account;
    QString note;
    std::array<std::set<qint64>, kTableCount> lost;
};

namespace {

/// Of these tables rules of holds read something (rule 4.4): where a row of them may be lost, so may a hold.
constexpr Table kHoldTables[] = {Table::Yard,      Table::Stand,     Table::Colony,   Table::Placement,
                                 Table::Visit,     Table::VisitSign, Table::Transfer, Table::Result,
                                 Table::Treatment, Table::Lineage,   Table::Setting};

/// A share of the whole.
Remains::Watch part(const Salvage::Watch& watch, double from, double to) {
    if (!watch) return {};
    return [watch, from, to](double share) { return watch(from + (to - from) * share); };
}

bool sound(const QString& path, const Clock& clock) {
    try {
        return Session::open(path, clock, Session::Access::ReadOnly)->check().isEmpty();
    } catch (const Error&) {
        return false;
    }
}

/// What one row becomes. Against: it was there once and speaks against a hive; whether it still stood is lost.
enum class Fate { Read, FromHistory, FromBackup, Against, Gone, Lost };

bool isOneOf(const Row& row, size_t column, std::initializer_list<const char*> words) {
    const auto* text = column < row.size() ? std::get_if<QString>(&row[column]) : nullptr;
    return text && std::ranges::any_of(words, [&](const char* word) { return *text == QLatin1String(word); });
}

/// A sign of foulbrood or a doubt of it.
bool isTrouble(const Row& sign) { return isOneOf(sign, 1, {"afb", "efb", "brood-doubt"}); }

/// A positive or an order.
bool isAgainst(const Row& result) { return isOneOf(result, 4, {"positive", "order"}); }

class Choosing {
public:
    Choosing(const Remains& remains, const ToldRows& told) : m_remains(remains), m_told(told) {
        if (told.whole()) return;
        std::set<qint64> signs;
        for (const auto& [id, row] : remains.table(Table::VisitSign).rows) signs.insert(id);
        told.addIds(Table::VisitSign, signs);
        for (const qint64 id : signs)
            for (const auto& row : {remains.row(Table::VisitSign, id), told.of(Table::VisitSign, id).row})
                if (row && isTrouble(*row))
                    if (const auto* visit = std::get_if<qint64>(&(*row)[0])) m_troubled.insert(*visit);
    }

    Fate of(Table table, qint64 id, std::optional<Row>& row) const {
        const ToldRows::Told told = m_told.of(table, id);
        row = m_remains.row(table, id);
        const bool there = row.has_value();
        const bool sure = there && m_remains.sure(table, id);
        const bool same = there && told.row == row;
        if (told.firm && !told.exists) return Fate::Gone;
        if (same || (sure && !(told.firm && told.row))) return Fate::Read;
        if (told.firm && told.row) {
            row = told.row;
            return told.byBackup ? Fate::FromBackup : Fate::FromHistory;
        }
        row.reset();
        if (!there && !told.firm && !(told.exists && m_remains.table(table).mayLack(id))) return Fate::Gone;
        if (told.firm || !told.exists || !told.row || !speaksAgainst(table, id, *told.row)) return Fate::Lost;
        row = told.row;
        return Fate::Against;
    }

private:
    bool speaksAgainst(Table table, qint64 id, const Row& row) const {
        if (table == Table::Result) return isAgainst(row);
        if (table == Table::VisitSign) return isTrouble(row);
        return table == Table::Visit && m_troubled.contains(id);
    }

    std::set<qint64> m_troubled; ///< visits
    const Remains& m_remains;
    const ToldRows& m_told;
};

} // namespace

namespace {

/// Reads and chooses, step by step.
class Reading {
public:
    Reading(Salvage::Watch watch, const SalvageFrom& from, const Clock& clock, SalvageAccount& account)
        : m_watch(std::move(watch)), m_from(from), m_clock(clock), m_account(account) {}

    std::vector<Backup> candidates(const QString& bookId) const {
        if (!m_from.backup.isEmpty()) {
            Backup named;
            named.path = m_from.backup;
            named.at = QFileInfo(named.path).lastModified().toUTC();
            return {named};
        }
        if (m_from.backupFolder.isEmpty()) return {};
        if (!bookId.isEmpty()) return backupsIn(m_from.backupFolder, bookId);
        return backupsTitled(m_from.backupFolder, QFileInfo(m_from.damaged).completeBaseName());
    }

    /// The newest of the candidates that is in order, as this program reads it; empty: none is.
    QString soundBackup(const QString& bookId, const QString& folder) {
        for (const Backup& backup : candidates(bookId)) {
            try {
                const QString path = upToDate(backup.path, folder);
                if (sound(path, m_clock)) {
                    m_account.backup = backup;
                    return path;
                }
            } catch (const Error&) {
                // damaged too, or gone: the next one
            }
            if (!m_from.backup.isEmpty())
                throw Error(Error::Kind::Book, Edits::tr("The backup %1 is not in order itself: name another, or none.")
                                                   .arg(store::shownPath(backup.path)));
        }
        return {};
    }

private:
    Salvage::Watch m_watch;
    const SalvageFrom& m_from;
    const Clock& m_clock;
    SalvageAccount& m_account;
};

std::unique_ptr<Remains> remainsOf(const QString& path, const QString& like, const Salvage::Watch& watch) {
    return std::make_unique<Remains>(path, like, part(watch, 0, 0.4));
}

QString wrongSentence(const Remains& r) {
    if (r.layoutGuessed())
        return Edits::tr("The file's list of its tables cannot be read; of its %1 pages %2 more cannot, or not whole.")
            .arg(r.pages())
            .arg(r.badPages());
    if (r.badPages() > 0)
        return Edits::tr("Of the file's %1 pages %2 cannot be read, or not whole.").arg(r.pages()).arg(r.badPages());
    if (r.halfEditLeft()) return Edits::tr("The last change was written by half and cannot be taken back.");
    return Edits::tr("Every page of the file that holds records can be read.");
}

} // namespace

Salvage::Salvage(std::unique_ptr<Private> own) : d(std::move(own)) {}

Salvage::~Salvage() = default;

const SalvageAccount& Salvage::account() const { return d->account; }

namespace {

/// The file's remains and a backup of it, where there is one.
void readBoth(const SalvageFrom& from, const Clock& clock, const Salvage::Watch& watch, const QString& folder,
              SalvageAccount& account, std::unique_ptr<Remains>& remains, std::unique_ptr<store::Database>& backup) {
    Reading reading(watch, from, clock, account);
    QString like;
    try {
        remains = remainsOf(from.damaged, {}, watch);
        like = reading.soundBackup(remains->bookId(), folder);
        if (remains->layoutGuessed() && !like.isEmpty()) {
            remains.reset();
            remains = remainsOf(from.damaged, like, watch);
        }
    } catch (const BookHeld&) {
        throw;
    } catch (const Error&) {
        // A backup may tell where its tables begin.
        if (remains || like.isEmpty()) like = reading.soundBackup({}, folder);
        if (like.isEmpty() || remains) throw;
        remains = remainsOf(from.damaged, like, watch);
    }
    if (like.isEmpty()) return;
    backup = store::Database::open(like, store::Access::ReadOnly);
    const auto last = store::listHistory(*backup, 1);
    if (!from.backup.isEmpty() && account.backup && !last.empty())
        account.backup->at = QDateTime::fromString(last.front().at, Qt::ISODateWithMs);
}

} // namespace

namespace {

/// The tables' rows, each as it is chosen, into a book of their own.
class Keeping {
public:
    Keeping(const Remains& remains, const ToldRows& told, const store::Database& to, Salvage::Watch watch)
        : m_remains(remains), m_told(told), m_choosing(remains, told), m_to(to), m_watch(std::move(watch)) {}

    QStringList leftOut; ///< what was read and is not of the book

    SalvagedTable keep(Table table, std::set<qint64>& lost) {
        SalvagedTable counted;
        counted.table = table;
        std::set<qint64> ids;
        for (const auto& [id, row] : m_remains.table(table).rows) ids.insert(id);
        m_told.addIds(table, ids);
        m_inserter.emplace(m_to, table);
        qint64 strays = 0;
        for (const qint64 id : ids) {
            tick(table);
            std::optional<Row> row;
            Fate fate = m_choosing.of(table, id, row);
            if (row && fate != Fate::Gone && !inserted(table, id, *row)) fate = Fate::Lost;
            strays += fate == Fate::Gone && m_remains.sure(table, id);
            counted.disputed += fate != Fate::Read && fate != Fate::Lost && m_remains.sure(table, id);
            count(counted, fate);
            if (fate == Fate::Lost) lost.insert(id);
        }
        counted.mayLack = !m_told.whole() && !m_remains.table(table).lost.empty();
        if (strays > 0)
            leftOut << Edits::tr("%1 left out: the history knows nothing of them, or took them back.")
                           .arg(recordsText(table, strays));
        return counted;
    }

private:
    static void count(SalvagedTable& counted, Fate fate) {
        counted.kept += fate != Fate::Gone && fate != Fate::Lost;
        counted.fromHistory += fate == Fate::FromHistory;
        counted.fromBackup += fate == Fate::FromBackup;
        counted.against += fate == Fate::Against;
        counted.lost += fate == Fate::Lost;
    }

    /// False where our own rules refuse the row.
    bool inserted(Table table, qint64 id, const Row& row) {
        try {
            m_inserter->insert(id, row);
            return true;
        } catch (const Error& e) {
            if (e.kind() != Error::Kind::BadData) throw;
            m_inserter.emplace(m_to, table); // the failed one cannot go on
            return false;
        }
    }

    void tick(Table table) {
        constexpr int kApart = 4096;
        if (!m_watch || ++m_ticks % kApart != 0) return;
        if (!m_watch(static_cast<double>(table) / kTableCount)) throw Remains::Stopped();
    }

    const Remains& m_remains;
    const ToldRows& m_told;
    Choosing m_choosing;
    const store::Database& m_to;
    std::optional<store::BulkInserter> m_inserter;
    Salvage::Watch m_watch;
    int m_ticks = 0;
};

bool holdsInDoubt(const SalvageAccount& account, const Remains& remains, const ToldRows& told) {
    if (!told.whole() || remains.halfEditLeft()) return true;
    return std::ranges::any_of(account.tables, [](const SalvagedTable& t) {
        return (t.lost > 0 || t.mayLack || t.disputed > 0) &&
               std::ranges::find(kHoldTables, t.table) != std::end(kHoldTables);
    });
}

bool anythingLost(const SalvageAccount& account) {
    return std::ranges::any_of(account.tables, [](const SalvagedTable& t) { return t.lost > 0 || t.mayLack; });
}

void countLines(const ToldRows& told, SalvageAccount& account) {
    for (qint64 seq = 1; seq <= told.lastLine(); ++seq) account.linesKept += told.line(seq).has_value();
    account.linesMissing = told.lastLine() - account.linesKept;
    account.linesEndUnknown = told.endMissing();
    if (!account.backup) return;
    constexpr qsizetype kShown = 5;
    account.sinceBackup = told.lastLine() - told.backupLast();
    for (qint64 seq = told.lastLine(); seq > told.backupLast() && account.sinceBackupLines.size() < kShown; --seq)
        if (const auto line = told.line(seq)) account.sinceBackupLines << line->sentence;
}

} // namespace

std::unique_ptr<Salvage> Salvage::read(const SalvageFrom& from, const Clock& clock, const Watch& watch) {
    auto own = std::make_unique<Private>();
    Private& p = *own;
    p.now = clock.nowUtc();
    SalvageAccount& account = p.account;
    account.damaged = QFileInfo(from.damaged).fileName();
    account.day = clock.today();
    try {
        readBoth(from, clock, watch, p.folder.path(), account, p.remains, p.backup);
        p.told = std::make_unique<ToldRows>(*p.remains, p.backup.get());
        if (p.backup && !p.told->backupAgrees()) {
            account.backupRefused = Edits::tr("The backup is not asked: its changes are not those of this book.");
            account.backup.reset();
        }
        account.wrong = wrongSentence(*p.remains);
        p.rows = store::Database::create(p.folder.filePath(QStringLiteral("rows.yardwright")));
        p.rows->exec("PRAGMA foreign_keys = OFF");
        store::Transaction transaction(*p.rows);
        p.rows->exec("DELETE FROM box_kind");
        Keeping keeping(*p.remains, *p.told, *p.rows, part(watch, 0.4, 0.9));
        for (int i = 0; i < kTableCount; ++i)
            account.tables.push_back(keeping.keep(static_cast<Table>(i), p.lost[static_cast<size_t>(i)]));
        account.leftOut << keeping.leftOut;
        for (const SalvagedTable& t : account.tables)
            if (t.against > 0)
                account.mended << Edits::tr(
                                      "%1 taken as the history or the backup last says: against a hive, and whether "
                                      "they were taken back since is lost.")
                                      .arg(recordsText(t.table, t.against));
        countLines(*p.told, account);
        const LostWords words(*p.rows, *p.told);
        for (int i = 0; i < kTableCount; ++i) {
            const auto table = static_cast<Table>(i);
            const bool open = account.tables[static_cast<size_t>(i)].mayLack;
            account.lost << words.of(table, p.lost[static_cast<size_t>(i)],
                                     open ? p.remains->table(table).lost : std::vector<store::IdSpan>());
        }
        account.historyKept =
            p.told->whole() && !anythingLost(account) && !p.remains->partsLost() && !p.remains->bookId().isEmpty();
        if (!account.historyKept) mendRemains(*p.rows, account);
        if (holdsInDoubt(account, *p.remains, *p.told)) {
            p.note = Edits::tr("Disease not ruled out: the book was damaged, and records of it may be lost (salvaged "
                               "from %1).")
                         .arg(account.damaged);
            p.rows->exec("SAVEPOINT held");
            account.held = holdForDoubt(*p.rows, p.note, account.day);
            if (account.historyKept) p.rows->exec("ROLLBACK TO held");
            p.rows->exec("RELEASE held");
        }
        transaction.commit();
    } catch (const Remains::Stopped&) {
        return nullptr;
    }
    if (watch && !watch(1)) return nullptr;
    return std::unique_ptr<Salvage>(new Salvage(std::move(own)));
}

namespace {

/// Removed again unless it got its name.
struct PartFile {
    QString path;
    ~PartFile() {
        for (const char* end : {"", "-journal", "-lock"}) QFile::remove(path + QLatin1String(end));
    }
};

QString textPathOf(const QString& book) {
    const QFileInfo file(book);
    return file.absolutePath() + u'/' + file.completeBaseName() + Edits::tr(" - what was salvaged.txt");
}

void writeText(const QString& path, const QString& text) {
    QFile file(path);
    const QByteArray bytes = text.toUtf8();
    if (file.open(QIODevice::WriteOnly | QIODevice::NewOnly) && file.write(bytes) == bytes.size() && file.flush())
        return;
    throw Error(Error::Kind::Book, Edits::tr("%1 cannot be written.").arg(store::shownPath(path)));
}

} // namespace

std::optional<QString> Salvage::write(const QString& to, const Watch& watch) {
    const QString text = textPathOf(to);
    for (const QString& path : {to, text})
        if (QFileInfo::exists(path) || QFileInfo(path).isSymLink())
            throw Error(Error::Kind::Book,
                        Edits::tr("%1 exists already: a new book needs a new name.").arg(store::shownPath(path)));
    const QString folder = QFileInfo(to).absolutePath();
    const PartFile made{folder + QStringLiteral("/.new-") + QUuid::createUuid().toString(QUuid::Id128).left(12) +
                        QStringLiteral(".yardwright")};
    SalvagedBook book{*d->rows, *d->remains, *d->told, d->account.historyKept, {}, {}, {}, {}, d->account.day};
    book.sentence = Edits::tr("Salvaged from %1 on %2").arg(d->account.damaged, isoText(d->account.day));
    book.at = d->now.toUTC().toString(Qt::ISODateWithMs);
    book.account = accountText(d->account);
    book.note = d->note;
    try {
        Written written = writeSalvaged(book, made.path, watch);
        if (d->account.historyKept && !written.problems.isEmpty()) {
            // What was read as the history does not go with the rows after all: it starts anew.
            QFile::remove(made.path);
            d->account.historyKept = book.keepHistory = false;
            if (!d->note.isEmpty()) holdForDoubt(*d->rows, d->note, d->account.day);
            book.account = accountText(d->account);
            written = writeSalvaged(book, made.path, watch);
        }
        d->account.problems = written.problems;
        d->account.tornTexts = written.tornTexts;
        if (watch && !watch(1)) return std::nullopt;
    } catch (const Remains::Stopped&) {
        return std::nullopt;
    } catch (const Error& e) {
        store::throwNaming(e, to, made.path);
    }
    writeText(text, accountText(d->account));
    store::syncFile(made.path);
    if (store::giveName(made.path, to) != 0) {
        QFile::remove(text);
        throw Error(Error::Kind::Book,
                    Edits::tr("%1 cannot be made: the name is taken or not allowed.").arg(store::shownPath(to)));
    }
    store::syncFolderOf(to);
    return text;
}

bool mayBeSalvaged(const Error& said, const QString& path) {
    const QFileInfo file(path);
    const bool named = file.isFile() && file.suffix() == QLatin1String("yardwright");
    return dynamic_cast<const Damaged*>(&said) || (named && dynamic_cast<const NoBook*>(&said));
}

} // namespace core::edit
