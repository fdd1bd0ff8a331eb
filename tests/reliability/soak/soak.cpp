#include "tests/reliability/soak/soak.h"

#include "core/edit/print_day.h"
#include "core/exchange/import.h"
#include "tests/reliability/soak/hold_watch.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>

#include <algorithm>
#include <cstdio>

namespace tests::soak {

namespace {

constexpr size_t kUndosKnown = 64;
constexpr int kPoints = 40; ///< at which the wear is noted, and one before
/// In one of so many foulbrood comes. Where anything holds, an edit of a record costs several readings of the book.
constexpr qint64 kSeasons = 8;
const Correction kWhy{QStringLiteral("Keeper 1"), QStringLiteral("wrong hive noted")};

/// Told apart by its words alone: else the sentences of a long run, each with a day or a label of its own, fill the
/// memory that is being measured.
std::string withoutFigures(const char* sentence) {
    static const QRegularExpression figures(QStringLiteral("\\d+"));
    return QString::fromUtf8(sentence).replace(figures, QStringLiteral("#")).toStdString();
}

bool adds(const ChangeSet& what) {
    return !what.bulk.empty() || std::ranges::any_of(what.rows, [](const RowChange& row) {
        if (!row.before) return true;
        if (row.table != Table::Colony || !row.after) return false;
        return !fromRow<Colony>(row.id, *row.before).ended && fromRow<Colony>(row.id, *row.after).ended;
    });
}

} // namespace

Soak::Soak(const Plan& plan, const QString& folder)
    : m_plan(plan),
      m_folder(folder),
      m_hand(plan.seed, m_shadow, plan.size),
      m_kinds(allKinds()),
      m_tries(m_kinds.size()) {
    for (const Kind& kind : m_kinds) m_weights += kind.weight;
    m_session = Session::create(path(), m_clock);
    m_shadow.read(*m_session);
    open();
}

Soak::~Soak() = default;

QString Soak::path() const { return m_folder + QStringLiteral("/soaked.yardwright"); }

void Soak::open() {
    m_session.reset();
    m_session = Session::open(path(), m_clock);
    QObject::connect(m_session.get(), &Session::changed, [this](const ChangeSet& what) { take(what); });
    m_opened = m_edits;
}

void Soak::take(const ChangeSet& what) {
    m_changed = true;
    m_adds = adds(what);
    m_shadow.take(*m_session, what);
}

void Soak::run() {
    SCOPED_TRACE("seed " + std::to_string(m_plan.seed));
    m_watch.go();
    note();
    try {
        while (goesOn() && !testing::Test::HasFailure()) step();
        m_watch.stop();
        checkAll();
        if (!testing::Test::HasFailure()) undoAll();
    } catch (const std::exception& e) {
        const auto* own = dynamic_cast<const Error*>(&e);
        ADD_FAILURE() << m_doing << ": " << e.what() << (own ? own->detail().toStdString() : "");
    }
    if (testing::Test::HasFailure()) ADD_FAILURE() << "seed " << m_plan.seed << ", step " << m_steps << ", " << m_doing;
}

/// A short run goes on for a while until every kind has happened.
bool Soak::goesOn() const {
    if (m_edits < m_plan.edits) return true;
    return m_edits < 3 * m_plan.edits && std::ranges::any_of(m_kinds, [this](const Kind& kind) {
               const auto at = m_done.find(kind.name);
               return at == m_done.end() || at->second == 0;
           });
}

void Soak::step() {
    ++m_steps;
    m_clock.day = core::dayOf(2026, 5, 1) + static_cast<int>(m_edits / m_plan.editsADay);
    m_hand.today = m_clock.day;
    m_hand.sick = m_edits / m_plan.season % kSeasons == 2;
    const int dice = m_hand.upTo(999);
    if (dice < 35)
        undoSome();
    else if (dice < 60)
        takeBack();
    else if (dice < 64)
        import();
    else if (dice < 70)
        editTogether();
    else
        edit();
    if (m_edits - m_opened >= m_plan.reopenEvery) reopen();
    if (m_edits - m_checked >= m_plan.checkEvery) checkAll();
    if (m_edits * kPoints / m_plan.edits >= static_cast<qint64>(m_wear.size())) note();
}

void Soak::note() {
    m_watch.stop();
    const Wear w{m_edits,         m_watch.seconds(),        m_watch.worked(),
                 residentBytes(), QFileInfo(path()).size(), m_shadow.rowCount()};
    m_wear.push_back(w);
    if (qEnvironmentVariableIsSet("YW_SOAK_TELL")) {
        std::printf("%8lld edits %8.2f s %8.2f s worked %8lld kB %10lld bytes %6lld rows\n",
                    static_cast<long long>(w.edits), w.seconds, w.worked, static_cast<long long>(w.resident / 1000),
                    static_cast<long long>(w.fileBytes), static_cast<long long>(w.rows));
        std::fflush(stdout);
    }
    m_watch.go();
}

const Kind& Soak::nextKind() {
    size_t at = 0;
    if (m_shadow.living().size() * 2 < m_plan.size.living && m_hand.oneIn(2)) { // a book begins
        const std::string name = m_shadow.rows(Table::Yard).size() < 2 ? "newYard" : "addColony";
        at = static_cast<size_t>(std::ranges::find(m_kinds, name, &Kind::name) - m_kinds.begin());
    } else if (m_hand.oneIn(m_plan.turnEvery)) {
        // Its tries count a little, so that one that cannot be done at present lets others have their turn.
        std::vector<qint64> turns;
        for (size_t i = 0; i < m_kinds.size(); ++i) turns.push_back(m_done[m_kinds[i].name] * 40 + m_tries[i]);
        at = static_cast<size_t>(std::ranges::min_element(turns) - turns.begin());
    } else {
        int dice = m_hand.upTo(m_weights - 1);
        while (dice >= m_kinds[at].weight) dice -= m_kinds[at++].weight;
    }
    ++m_tries[at];
    return m_kinds[at];
}

std::optional<HistoryLine> Soak::asked(const Act& what) {
    std::optional<HoldWatch> watch;
    if (m_steps % m_plan.watchEvery == 0) watch.emplace(*m_session, m_clock.day);
    m_changed = m_adds = false;
    try {
        auto line = what({});
        // What only takes away or alters lifts no hold unasked.
        if (watch && m_changed && !m_adds) {
            EXPECT_EQ(watch->lifted(*m_session), "") << m_doing;
        }
        return line;
    } catch (const Error& e) {
        if (e.kind() != Error::Kind::Correction) throw;
    }
    EXPECT_FALSE(m_changed) << m_doing << " asked for a reason, and wrote";
    ++m_done["a reason asked for"];
    if (m_hand.oneIn(6)) return std::nullopt; // rather not
    auto line = what(kWhy);
    EXPECT_EQ(line ? line->reason : kWhy.reason, kWhy.reason) << m_doing;
    return line;
}

void Soak::acknowledged(const HistoryLine& line) {
    EXPECT_TRUE(m_changed) << m_doing;
    EXPECT_EQ(line.seq, m_last + 1) << m_doing;
    m_last = line.seq;
    ++m_edits;
    if (m_doing.starts_with("closeDivide")) m_divides.push_back(line.seq);
}

void Soak::refused(const std::string& name, const Error& e, bool unwritten) {
    EXPECT_TRUE(e.kind() == Error::Kind::BadData || e.kind() == Error::Kind::Hold)
        << name << ": " << e.what() << e.detail().toStdString();
    EXPECT_FALSE(e.userMessage().isEmpty());
    EXPECT_FALSE(m_changed) << name << " was refused, and wrote";
    EXPECT_TRUE(unwritten) << name << " was judged sound, and not written: " << e.what() << e.detail().toStdString();
    ++m_done["refused"];
    ++m_refusals[name][withoutFigures(e.what())];
}

bool Soak::act(const std::string& name, const Act& what) {
    m_doing = name;
    const quint64 before = m_shadow.hash();
    const auto line = asked(what);
    if (!line) {
        EXPECT_EQ(m_shadow.hash(), before) << name;
        return false;
    }
    acknowledged(*line);
    ++m_done[name];
    if (m_undos.size() == kUndosKnown) m_undos.erase(m_undos.begin());
    m_undos.push_back(before);
    m_redos.clear();
    return true;
}

void Soak::edit() {
    const Kind& kind = nextKind();
    std::optional<ChangeSet> made;
    const auto once = [&](const EditContext& c) {
        if (!made) made = kind.make(m_hand, c);
        return *made;
    };
    m_changed = false;
    try {
        act(kind.name, [&](const auto& why) { return m_session->apply(once, why); });
    } catch (const Nothing&) {
        ++m_refusals[kind.name]["nothing of the kind"];
    } catch (const Error& e) {
        refused(kind.name, e, !made);
    }
}

/// A worksheet goes to paper: several edits as one.
void Soak::editTogether() {
    PrintedSheet sheet;
    std::vector<Edit> edits;
    m_changed = false;
    try {
        sheet.yard = m_hand.yard();
        sheet.day = m_clock.day;
        MergeStrip strip;
        strip.moved = m_hand.living();
        strip.host = m_hand.otherLiving(strip.moved);
        strip.upper = strip.host;
        sheet.strips.push_back(strip);
        const QString text = QStringLiteral("A worksheet went to paper");
        if (m_shadow.rows(Table::MergeDay).size() > 16) return;
        act("recordPrint", [&](const auto& why) { return m_session->applyInTurn(text, recordPrint(sheet), why); });
    } catch (const Nothing&) {
        return;
    } catch (const Error& e) {
        refused("recordPrint", e, true);
    }
}

void Soak::import() {
    m_doing = "import";
    if (m_shadow.rows(Table::Visit).size() > m_plan.size.rowsATable) return;
    QByteArray text = "colony,date,bees_top,queen,brood_frames,brood_checked,note\n";
    for (const qint64 id : m_shadow.living()) {
        const Colony colony = *m_session->colony(ColonyId{id});
        const Day day = std::max(colony.since, m_clock.day - m_hand.upTo(40));
        text += colony.label.toUtf8() + ',' + isoText(day).toLatin1() + ",3.25,eggs,5,5,as written down that day\n";
        if (text.size() > 600) break;
    }
    QFile file(m_folder + QStringLiteral("/visits.csv"));
    if (!file.open(QIODevice::WriteOnly) || file.write(text) != text.size()) throw std::runtime_error("cannot write");
    file.close();
    exchange::ImportFiles files;
    files.leaveOutOtherwise = true;
    files.files.push_back({exchange::FileKind::Visits, file.fileName()});
    act("import", [&](const auto&) { return exchange::importFiles(*m_session, files, false).line; });
}

void Soak::undoSome() {
    const int most = 1 + m_hand.upTo(3);
    int undone = 0;
    while (undone < most && undoOne()) ++undone;
    for (int again = m_hand.upTo(undone); again > 0 && redoOne(); --again) continue;
}

bool Soak::undoOne() {
    m_doing = "undo";
    const quint64 before = m_shadow.hash();
    const auto line = asked([&](const auto& why) { return m_session->undo(why); });
    if (!line) return false;
    acknowledged(*line);
    ++m_done["undo"];
    if (!m_undos.empty()) {
        EXPECT_EQ(m_shadow.hash(), m_undos.back()) << line->text.toStdString();
        m_undos.pop_back();
    }
    m_redos.push_back(before);
    return true;
}

bool Soak::redoOne() {
    m_doing = "redo";
    const quint64 before = m_shadow.hash();
    const auto line = asked([&](const auto& why) { return m_session->redo(why); });
    if (!line) return false;
    acknowledged(*line);
    ++m_done["redo"];
    if (!m_redos.empty()) {
        EXPECT_EQ(m_shadow.hash(), m_redos.back()) << line->text.toStdString();
        m_redos.pop_back();
    }
    m_undos.push_back(before);
    return true;
}

/// What came of a divide has no edit that takes it back.
qint64 Soak::lineToTakeBack() {
    if (!m_divides.empty() && m_hand.oneIn(3)) {
        const qint64 seq = m_divides.front();
        m_divides.erase(m_divides.begin());
        return seq;
    }
    const int reach = static_cast<int>(std::min<qint64>(m_last, m_hand.oneIn(200) ? 20'000 : 60));
    return m_last - m_hand.upTo(reach - 1);
}

/// A line of the last ones, now and then of any age, is taken back out of turn; redo and undo lead there and back.
void Soak::takeBack() {
    m_doing = "take back";
    if (m_last == 0) return;
    const qint64 seq = lineToTakeBack();
    m_changed = false;
    const quint64 before = m_shadow.hash();
    try {
        const auto line = asked([&](const auto& why) { return m_session->takeBack(seq, why); });
        if (!line) return;
        acknowledged(*line);
    } catch (const Error& e) {
        EXPECT_FALSE(e.userMessage().contains(QStringLiteral("breaks its rules"))) << e.what();
        return refused("take back", e, true);
    }
    ++m_done["take back"];
    m_undos = {};
    m_redos = {before};
    if (m_hand.oneIn(2) && redoOne() && m_hand.oneIn(2)) undoOne();
    m_undos.clear();
    m_redos.clear();
}

void Soak::reopen() {
    m_doing = "reopen";
    open();
    ++m_done["reopen"];
    const auto newest = m_session->history(1);
    const qint64 there = newest.empty() ? 0 : newest.front().seq;
    m_losses += std::max<qint64>(0, m_last - there);
    EXPECT_EQ(there, m_last);
}

void Soak::checkAll() {
    m_watch.stop();
    m_doing = "check";
    ++m_checks;
    const std::string table = m_shadow.differing(*m_session);
    EXPECT_EQ(table, "") << "the book's rows are not as changed() told";
    if (!table.empty()) ++m_losses;
    m_session.reset();
    checkFile();
    m_watch.go();
    reopen();
    m_checked = m_edits;
}

/// The back half of a run's last edits goes, and comes again.
void Soak::undoAll() {
    const quint64 rows = m_shadow.hash();
    int undone = 0;
    m_undos.clear();
    m_redos.clear();
    while (undone < 200 && m_session->undo(kWhy)) ++undone;
    for (int i = 0; i < undone; ++i) EXPECT_TRUE(m_session->redo(kWhy));
    EXPECT_EQ(m_shadow.hash(), rows) << undone << " edits undone and done again";
    EXPECT_EQ(m_shadow.differing(*m_session), "");
}

} // namespace tests::soak
