#include "tests/bench/scratch_book.h"

#include "core/edit/edit_context.h"
#include "core/model/row_codec.h"
#include "demo/chance.h"

#include <QFile>
#include <QFileInfo>

namespace bench {

namespace {

using core::Row;
using core::Table;

constexpr int kSources = 400;
constexpr int kEfb = 200;
constexpr int kBroughtIn = 2000;
constexpr int kColonies = 20'200;
constexpr std::uint64_t kSeed = 7;

int some(int range, int n, std::uint64_t what) {
    return demo::chance(range, kSeed, static_cast<std::uint64_t>(n), what);
}

core::Day someDay(int n, std::uint64_t what) { return core::dayOf(2025, 4, 20) + some(500, n, what); }

core::ColonyId colony(const core::edit::EditContext& c, int n) { return {c.nextId(Table::Colony) - kColonies + n}; }

core::Result finding(core::ColonyId of, core::Day day, core::Disease disease, core::Verdict verdict,
                     core::Method method) {
    core::Result r;
    r.colony = of;
    r.day = day;
    r.disease = disease;
    r.verdict = verdict;
    r.method = method;
    r.by = QStringLiteral("Ines");
    r.paper = verdict == core::Verdict::Release ? QStringLiteral("P-1") : QString();
    return r;
}

std::vector<core::Result> findings(const core::edit::EditContext& c) {
    std::vector<core::Result> out;
    for (int n = 0; n < kSources + kEfb; ++n) {
        const core::ColonyId of = colony(c, n % kSources * (kColonies / kSources) + some(kColonies / kSources, n, 1));
        const core::Day day = someDay(n, 2);
        const core::Method method = n % 4 == 3 ? core::Method::Field : core::Method::Laboratory;
        const core::Disease disease = n < kSources ? core::Disease::Afb : core::Disease::Efb;
        out.push_back(finding(of, day, disease, core::Verdict::Positive, method));
        if (n % 5 == 4) out.push_back(finding(of, day + 20, disease, core::Verdict::Release, core::Method::Inspector));
    }
    return out;
}

std::vector<core::Transfer> broughtIn(const core::edit::EditContext& c) {
    std::vector<core::Transfer> out;
    for (int n = 0; n < kBroughtIn; ++n) {
        const int from = some(kColonies, n, 3);
        core::Transfer t;
        t.day = someDay(n, 5);
        t.from = colony(c, from);
        t.to = colony(c, (from + 100 + some(kColonies - 200, n, 4)) % kColonies);
        t.what = core::TransferKind::Brood;
        out.push_back(t);
    }
    return out;
}

template <class T>
void add(core::edit::ChangeSet& change, const core::edit::EditContext& c, const std::vector<T>& rows) {
    qint64 id = c.nextId(core::tableOf<T>());
    for (const T& row : rows) change.rows.push_back({core::tableOf<T>(), id++, std::nullopt, core::toRow(row)});
}

} // namespace

std::unique_ptr<core::edit::Session> openTroubledBook() {
    static const core::SystemClock clock;
    const QString path = QFileInfo(bigBookFile()).path() + QStringLiteral("/troubled.yardwright");
    if (!QFile::exists(path)) {
        const QString making = path + QStringLiteral(".making");
        QFile::remove(making);
        QFile::copy(bigBookFile(), making);
        {
            const auto session = core::edit::Session::open(making, clock);
            session->setAuthor(QStringLiteral("Wren"));
            session->apply([](const core::edit::EditContext& c) {
                core::edit::ChangeSet change;
                change.text = QStringLiteral("Logged a bad year");
                add(change, c, findings(c));
                add(change, c, broughtIn(c));
                return change;
            });
        }
        QFile::rename(making, path);
    }
    return core::edit::Session::open(path, clock, core::edit::Session::Access::ReadOnly);
}

} // namespace bench
