#include "core/edit/salvage.h"

#include "core/base/damaged.h"
#include "core/edit/change_fields.h"
#include "core/edit/edit_checks.h"
#include "core/edit/salvage_files.h"
#include "core/edit/salvage_keep.h"
#include "core/edit/salvage_lost.h"
#include "core/edit/salvage_mend.h"
#include "core/edit/salvage_read.h"
#include "core/edit/salvage_write.h"
#include "core/store/book_file.h"

#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdlib>

namespace core::edit {

struct Salvage::Private {
    QTemporaryDir folder;
    QDateTime now;
    SalvageSources from;
    std::unique_ptr<ToldRows> told;
    std::unique_ptr<store::Database> rows; ///< what is kept
    SalvageAccount account;
    QString note;
    std::array<std::set<qint64>, kTableCount> lost;

    void keepRows(const Progress& progress);
    void sayLost();
    void mend();
    void recount();
    bool holdsInDoubt() const;
    Written written(const QString& path, const Progress& progress);
};

namespace {

/// Of these tables rules of holds read something (rule 4.4): where a row of them may be lost, so may a hold.
constexpr Table kHoldTables[] = {Table::Yard,      Table::Stand,     Table::Colony,   Table::Placement,
                                 Table::Visit,     Table::VisitSign, Table::Transfer, Table::Result,
                                 Table::Treatment, Table::Lineage,   Table::Setting};

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

void Salvage::Private::keepRows(const Progress& progress) {
    rows = store::Database::create(folder.filePath(QStringLiteral("rows.yardwright")));
    rows->exec("PRAGMA foreign_keys = OFF");
    store::Transaction transaction(*rows);
    rows->exec("DELETE FROM box_kind");
    Keeping keeping(*from.remains, *told, *rows, progress);
    for (int i = 0; i < kTableCount; ++i)
        account.tables.push_back(keeping.keep(static_cast<Table>(i), lost[static_cast<size_t>(i)]));
    account.leftOut << keeping.leftOut;
    for (const SalvagedTable& t : account.tables)
        if (t.against > 0)
            account.mended << Edits::tr("%1 taken as the history or the backup last says: against a hive, and whether "
                                        "they were taken back since is lost.")
                                  .arg(recordsText(t.table, t.against));
    transaction.commit();
}

void Salvage::Private::sayLost() {
    const LostWords words(*rows, *told);
    for (int i = 0; i < kTableCount; ++i) {
        const auto table = static_cast<Table>(i);
        const bool open = account.tables[static_cast<size_t>(i)].mayLack;
        account.lost << words.of(table, lost[static_cast<size_t>(i)],
                                 open ? from.remains->table(table).lost : std::vector<store::IdSpan>());
    }
    account.lost << words.ofSignsAlone();
}

bool Salvage::Private::holdsInDoubt() const {
    if (!told->whole() || from.remains->halfEditLeft()) return true;
    return std::ranges::any_of(account.tables, [](const SalvagedTable& t) {
        return (t.lost > 0 || t.mayLack || t.disputed > 0) &&
               std::ranges::find(kHoldTables, t.table) != std::end(kHoldTables);
    });
}

/// What a step has added to the tables, or taken from them; none does both with one of them.
void Salvage::Private::recount() {
    for (SalvagedTable& t : account.tables) {
        const qint64 there = store::countRows(*rows, t.table);
        (there > t.kept ? t.added : t.leftOut) += std::abs(there - t.kept);
        t.kept = there;
    }
}

void Salvage::Private::mend() {
    store::Transaction transaction(*rows);
    if (!account.historyKept) {
        mendRemains(*rows, account);
        recount();
    }
    if (holdsInDoubt()) {
        note = Edits::tr("Disease not ruled out: the book was damaged, and records of it may be lost (salvaged from "
                         "%1).")
                   .arg(account.damaged);
        rows->exec("SAVEPOINT held");
        account.held = holdForDoubt(*rows, note, account.day);
        recount();
        if (account.historyKept) rows->exec("ROLLBACK TO held"); // they become changes of a line of their own
        rows->exec("RELEASE held");
    }
    transaction.commit();
}

Salvage::Salvage(std::unique_ptr<Private> own) : d(std::move(own)) {}

Salvage::~Salvage() = default;

const SalvageAccount& Salvage::account() const { return d->account; }

std::unique_ptr<Salvage> Salvage::read(const SalvageFrom& from, const Clock& clock, const Progress& progress) {
    constexpr double kRead = 0.5;
    needOtherPlace(from);
    auto own = std::make_unique<Private>();
    Private& p = *own;
    p.now = clock.nowUtc();
    SalvageAccount& account = p.account;
    account.damaged = QFileInfo(from.damaged).fileName();
    account.day = clock.today();
    p.from = readSources(from, p.folder.path(), account, progress.part(0, kRead));
    p.told = std::make_unique<ToldRows>(*p.from.remains, p.from.backup.get());
    if (p.from.backup && !p.told->backupAgrees()) {
        account.backupRefused = Edits::tr("The backup is not asked: its changes are not those of this book.");
        account.backup.reset();
    }
    p.keepRows(progress.part(kRead, 1));
    countLines(*p.told, account);
    p.sayLost();
    account.historyKept = p.told->whole() && !anythingLost(account) && !p.from.remains->partsLost() &&
                          !p.from.remains->bookId().isEmpty();
    p.mend();
    progress.at(1);
    return std::unique_ptr<Salvage>(new Salvage(std::move(own)));
}

Written Salvage::Private::written(const QString& path, const Progress& progress) {
    SalvagedBook book{*rows, *from.remains, *told, account.historyKept, {}, {}, {}, note, account.day};
    book.sentence = Edits::tr("Salvaged from %1 on %2").arg(account.damaged, isoText(account.day));
    book.at = now.toUTC().toString(Qt::ISODateWithMs);
    book.account = accountText(account);
    return writeSalvaged(book, path, progress);
}

QString Salvage::write(const QString& to, const Progress& progress) {
    needNewName(to);
    const QString text = salvageTextPath(to);
    const store::PartFile made(QFileInfo(to).absolutePath());
    try {
        Written written = d->written(made.path, progress);
        if (d->account.historyKept && !written.problems.isEmpty()) {
            // What was read as the history does not go with the rows after all: it starts anew.
            QFile::remove(made.path);
            d->account.historyKept = false;
            if (!d->note.isEmpty()) holdForDoubt(*d->rows, d->note, d->account.day);
            written = d->written(made.path, progress);
        }
        d->account.problems = written.problems;
        d->account.tornTexts = written.tornTexts;
        progress.at(1);
    } catch (const Error& e) {
        store::throwNaming(e, to, made.path);
    }
    writeSalvageText(text, accountText(d->account));
    try {
        store::keepAs(made.path, to);
    } catch (const Error&) {
        if (!QFileInfo::exists(to)) QFile::remove(text);
        throw;
    }
    return text;
}

bool mayBeSalvaged(const Error& said, const QString& path) {
    const QFileInfo file(path);
    const bool named = file.isFile() && file.suffix() == QLatin1String("yardwright");
    return dynamic_cast<const Damaged*>(&said) || (named && dynamic_cast<const NoBook*>(&said));
}

} // namespace core::edit
