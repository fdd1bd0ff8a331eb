#include "tests/reliability/salvaged.h"

#include "core/edit/edit_context.h"
#include "core/exchange/import.h"
#include "core/rules/hold.h"
#include "core/store/row_store.h"

#include <QFile>

#include <gtest/gtest.h>

namespace tests::reliability {

namespace {

QByteArray fileBytes(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

std::set<qint64> heldIn(const Session& session, Day on) {
    std::set<qint64> held;
    const Snapshot s = session.snapshot(on);
    for (const rules::Hold& hold : rules::holds(s)) held.insert(s.colony(hold.colony).id.value);
    return held;
}

/// Visits as a range, whose rows stand in their table alone: clean checks, and signs of foulbrood in some.
QByteArray manyVisits() {
    QByteArray text = "colony,date,bees_top,queen,brood_frames,brood_checked,signs,note\n";
    for (int i = 0; i < 240; ++i)
        text += QByteArray::number(1 + i % 6) + ',' + isoText(dayOf(2026, 7, 20) + i / 6).toLatin1() +
                ",4.5,seen,5,5," +
                (i == 100   ? "afb"
                 : i == 171 ? "brood-doubt"
                            : "") +
                ",nothing to add on that day\n";
    return text;
}

/// What a row may have been made to say where something else is lost.
bool mendedOnly(Table table, const Row& before, const Row& after) {
    const auto columns = columnsOf(table);
    const auto may = [&](std::string_view column) {
        switch (table) {
        case Table::Visit:
            return column == "boxes" || column == "note";
        case Table::Colony:
            return column == "end_kind" || column == "note";
        case Table::Placement:
            return column == "stand" || column == "until";
        case Table::Sample:
            return column == "result";
        case Table::Queen:
            return column == "mother";
        default:
            return false;
        }
    };
    for (size_t i = 0; i < columns.size(); ++i)
        if (before[i] != after[i] && !may(columns[i])) return false;
    return true;
}

/// Tables that get rows in the place of lost ones, or those that hold hives.
bool mayGain(Table table) {
    return table == Table::Yard || table == Table::Stand || table == Table::BoxKind || table == Table::Colony ||
           table == Table::Placement || table == Table::Visit || table == Table::VisitSign;
}

void compareRows(const WholeBook& a, const WholeBook& b, const SalvageAccount& account, const std::string& what) {
    const bool changed = !account.mended.isEmpty() || account.held > 0;
    for (const SalvagedTable& t : account.tables) {
        const std::string name = tableName(t.table);
        const auto& before = a.of(t.table);
        qint64 there = 0;
        for (const auto& [id, row] : b.of(t.table)) {
            const auto at = before.find(id);
            if (at == before.end() || at->second != row) {
                const bool gained = at == before.end() && changed && (mayGain(t.table) || t.against > 0);
                const bool placed = at != before.end() && (t.lost > 0 || t.leftOut > 0 || t.mayLack) && changed &&
                                    (mayGain(t.table) || t.against > 0);
                const bool mended = at != before.end() && changed && mendedOnly(t.table, at->second, row);
                EXPECT_TRUE(gained || placed || mended) << what << ": invented or altered: " << name << ' ' << id;
            }
            there += at != before.end();
        }
        const bool said = t.lost > 0 || t.mayLack || !account.leftOut.isEmpty() || account.linesMissing > 0 ||
                          account.linesEndUnknown;
        EXPECT_TRUE(there == std::ssize(before) || said) << what << ": lost and not said: " << name;
    }
}

} // namespace

void importVisits(Session& session, const QString& path, const QByteArray& text) {
    writeText(path, text);
    exchange::ImportFiles files;
    files.files.push_back({exchange::FileKind::Visits, path});
    if (!exchange::importFiles(session, files, false).good()) throw std::runtime_error("the import has faults");
}

WholeBook wholeBook(const QString& path, const Clock& clock) {
    WholeBook book;
    const auto session = Session::open(path, clock, Session::Access::ReadOnly);
    book.held = heldIn(*session, clock.today());
    for (const HistoryLine& line : session->history(1'000'000))
        book.history += std::to_string(line.seq) + ' ' + line.text.toStdString() + '\n';
    const auto db = store::Database::open(path, store::Access::ReadOnly);
    for (int i = 0; i < kTableCount; ++i)
        store::eachRow(*db, static_cast<Table>(i),
                       [&](qint64 id, Row&& row) { book.rows[static_cast<size_t>(i)].emplace(id, std::move(row)); });
    return book;
}

void makeHeldBook(Session& session, const QString& folder, int random, const QString& backup) {
    const std::vector<Step> steps = workSteps(folder, random);
    const auto some = std::ssize(steps) - random;
    for (auto i = 0; i < some; ++i) steps[static_cast<size_t>(i)].run(session);
    importVisits(session, folder + QStringLiteral("/many.csv"), manyVisits());
    for (auto i = some; i < std::ssize(steps); ++i) steps[static_cast<size_t>(i)].run(session);
    session.apply([](const EditContext& c) {
        Result order;
        order.yard = YardId{1};
        order.day = dayOf(2026, 9, 1);
        order.verdict = Verdict::Order;
        order.method = Method::Inspector;
        order.by = QStringLiteral("Office");
        order.paper = QStringLiteral("7/26");
        return logResult(c, order);
    });
    session.backUp(backup);
    session.apply([](const EditContext& c) {
        Result found;
        found.colony = ColonyId{5};
        found.day = dayOf(2026, 9, 3);
        found.disease = Disease::Efb;
        found.verdict = Verdict::Positive;
        found.method = Method::Laboratory;
        found.by = QStringLiteral("Laboratory");
        return logResult(c, found);
    });
    session.apply([](const EditContext& c) {
        Visit v;
        v.colony = ColonyId{6};
        v.day = dayOf(2026, 9, 4);
        v.signs.add(Sign::Afb);
        v.note = QString(6000, u'ä'); // goes on over several pages
        return logVisit(c, v);
    });
}

std::optional<SalvageAccount> salvageAndCompare(const WholeBook& original, const SalvageFrom& from, const QString& to,
                                                const Clock& clock, const std::string& what) {
    const QByteArray before = fileBytes(from.damaged);
    std::unique_ptr<Salvage> salvage;
    try {
        salvage = Salvage::read(from, clock);
    } catch (const Error& e) {
        EXPECT_EQ(e.kind(), Error::Kind::Book) << what << ": " << e.what();
        EXPECT_TRUE(fileBytes(from.damaged) == before) << what;
        return std::nullopt;
    }
    const QString text = salvage->write(to);
    const SalvageAccount account = salvage->account();
    salvage.reset();
    EXPECT_TRUE(QFile::exists(text)) << what;
    EXPECT_TRUE(fileBytes(from.damaged) == before) << what << ": the damaged file was written";
    EXPECT_EQ(account.problems.join(u'\n').toStdString(), "") << what;
    const WholeBook after = wholeBook(to, clock);
    compareRows(original, after, account, what);
    for (const SalvagedTable& t : account.tables)
        EXPECT_EQ(t.kept, std::ssize(after.of(t.table))) << what << ": miscounted: " << tableName(t.table);
    for (const qint64 id : original.held)
        EXPECT_TRUE(after.held.contains(id) || !after.of(Table::Colony).contains(id))
            << what << ": held before, not after: colony " << id;
    if (account.nothingLost()) {
        EXPECT_TRUE(original.rows == after.rows) << what;
        EXPECT_EQ(original.held, after.held) << what;
        EXPECT_TRUE(!account.historyKept || after.history.find(original.history) != std::string::npos) << what;
    }
    QFile::remove(to);
    QFile::remove(text);
    return account;
}

} // namespace tests::reliability
