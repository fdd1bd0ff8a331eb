#include "core/edit/edit_context.h"
#include "core/edit/salvage.h"
#include "core/rules/hold.h"
#include "tests/fuzz/book_patch.h"
#include "tests/fuzz/scratch.h"
#include "tests/fuzz/target.h"

#include <QDir>
#include <QFile>

#include <algorithm>
#include <set>

// A damaged book, changed in the language of book_patch.h: what can be read of it becomes a book that opens, in
// which no hive has lost a hold and whose every fault is said; the damaged file stays as it is.

namespace tests::fuzz {

using namespace core;
using edit::Salvage;
using edit::SalvageAccount;
using edit::Session;

namespace {

const QString kPlace = QStringLiteral("damaged");
const QString kDamaged = QStringLiteral("damaged/book.yardwright");
const QString kNew = QStringLiteral("damaged/new.yardwright");
const QString kStrange = QStringLiteral("damaged/other.txt");
const QByteArray kStrangeText = "a file of someone else\n";

std::set<qint64> heldIn(const Session& session) {
    const Snapshot s = session.snapshot(clock().today());
    std::set<qint64> held;
    for (const rules::Hold& hold : rules::holds(s)) held.insert(s.colony(hold.colony).id.value);
    return held;
}

/// Colonies that are held in the file as it is; nullopt: it cannot be read, or its check finds something.
std::optional<std::set<qint64>> heldBefore() {
    try {
        const auto session = Session::open(scratch(kDamaged), clock(), Session::Access::ReadOnly);
        if (!session->check().isEmpty()) return std::nullopt;
        return heldIn(*session);
    } catch (const Error&) {
        return std::nullopt;
    }
}

void needCounted(const SalvageAccount& account) {
    for (const edit::SalvagedTable& t : account.tables) {
        const qint64 least = std::min({t.kept, t.fromHistory, t.fromBackup, t.against, t.added, t.leftOut, t.lost});
        need(least >= 0, "what is counted is no less than nothing", QString::number(least));
    }
    need(!edit::accountText(account).isEmpty(), "an account says something");
}

void needSaid(const SalvageAccount& account, const std::optional<std::set<qint64>>& before) {
    const auto session = Session::open(scratch(kNew), clock());
    const QStringList problems = session->check();
    need(problems == account.problems, "what is not in order in the new book is said", problems.value(0));
    if (!before) return;
    const std::set<qint64> after = heldIn(*session);
    std::set<qint64> there;
    session->read([&](const edit::EditContext& c) {
        c.each<Colony>([&](const Colony& colony) { there.insert(colony.id.value); });
    });
    for (const qint64 id : *before)
        need(after.contains(id) || !there.contains(id), "held before, held after", QString::number(id));
}

void salvaged(const std::optional<std::set<qint64>>& before) {
    std::unique_ptr<Salvage> salvage;
    try {
        salvage = Salvage::read({scratch(kDamaged), {}, {}, scratch(kNew)}, clock());
        needCounted(salvage->account());
        need(fileBytes(salvage->write(scratch(kNew))).size() > 0, "the account lies beside the new book");
    } catch (const Error& e) {
        needWellSaid(e);
        need(!QFile::exists(scratch(kNew)), "a book that could not be made is not there", e.userMessage());
        return;
    }
    needSaid(salvage->account(), before);
}

} // namespace

void salvageOne(const QByteArray& input) {
    emptyFolder(kPlace);
    const auto given = patchedBook(input, scratch(kStrange).toUtf8());
    if (!given || given->journal || given->wal) return; // what lies beside a book is the target `book`'s
    writeFile(scratch(kStrange), kStrangeText);
    writeFile(scratch(kDamaged), given->book);
    const auto before = heldBefore();
    salvaged(before);
    need(fileBytes(scratch(kDamaged)) == given->book, "the damaged book stays as it is");
    need(fileBytes(scratch(kStrange)) == kStrangeText, "no other file is touched");
}

} // namespace tests::fuzz
