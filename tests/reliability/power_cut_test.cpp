#include "tests/reliability/figures.h"
#include "tests/reliability/workload.h"
#include "tests/support/cut_vfs.h"
#include "tests/support/little_memory.h"

#include "core/edit/edit_context.h"

#include <QDir>

#include <fstream>
#include <set>

// The power is cut at every operation of a day's work on the book's file and its journal. The work runs in one process
// that goes on afterwards: a program whose power is gone sees nothing more, so what counts is the disk as it was at
// that moment. Of each moment several disks are made, as they may be found, and opened.

namespace tests::reliability {

namespace {

using cut::Image;
using cut::Op;
using cut::Reach;

struct Figures {
    qint64 operations = 0;
    qint64 cuts = 0;  ///< disks, equal ones counted, too
    qint64 books = 0; ///< that were opened and checked: the different ones
    qint64 losses = 0;
};

class PowerCut : public testing::Test {
protected:
    /// Runs the work once to learn its states, then again and cuts at each `stride`-th operation.
    Figures cutThrough(int random, int stride, int seeds, bool littleMemory);
    bool m_lyingDisk = false;

private:
    void learn(int random);
    void cutNow(const cut::CutVfs& vfs, Op op, int seeds);
    void judge(const Image& image, const std::string& what);
    std::string faultOf(const QString& path);

    QString at(const char* name) const { return m_dir.filePath(QString::fromLatin1(name)); }

    QTemporaryDir m_dir;
    FixedClock m_clock;
    std::vector<Step> m_steps;
    std::vector<std::string> m_states;          ///< before the first step, after it, …
    size_t m_done = 0;                          ///< steps that have returned
    std::set<std::pair<size_t, size_t>> m_seen; ///< of the disks: a hash, and the steps done
    Figures m_figures;
};

void PowerCut::learn(int random) {
    for (const char* folder : {"files", "learnt", "cut", "after"}) QDir().mkpath(at(folder));
    Session::create(at("empty.yardwright"), m_clock);
    m_steps = workSteps(at("files"), random);
    const QString path = at("learnt/b.yardwright");
    copyFile(at("empty.yardwright"), path);
    const auto session = Session::open(path, m_clock);
    m_states = {stateOf(*session)};
    for (const Step& step : m_steps) {
        step.run(*session);
        m_states.push_back(stateOf(*session));
    }
    m_steps = workSteps(at("files"), random); // their dice anew
}

/// What is wrong with the book that was found, or nothing.
std::string PowerCut::faultOf(const QString& path) {
    try {
        const auto session = Session::open(path, m_clock);
        const std::string state = stateOf(*session);
        const bool before = state == m_states[m_done];
        const bool after = m_done < m_steps.size() && state == m_states[m_done + 1];
        if (!before && !after) {
            for (size_t i = 0; i < m_done; ++i)
                if (state == m_states[i])
                    return "edits that were acknowledged are lost: of " + std::to_string(m_done) + " there are " +
                           std::to_string(i);
            return "it is as it never was";
        }
        if (const QStringList wrong = session->check(); !wrong.isEmpty()) return wrong.join(u' ').toStdString();
        Yard yard;
        yard.name = QStringLiteral("the next");
        if (!session->apply([&](const EditContext& c) { return newYard(c, yard); }))
            return "the next edit does nothing";
    } catch (const Error& e) {
        return std::string("it cannot be used: ") + e.what() + ' ' + e.detail().toStdString();
    }
    return {};
}

void PowerCut::judge(const Image& image, const std::string& what) {
    ++m_figures.cuts;
    std::string all;
    for (const auto& [name, bytes] : image) all += name + '\0' + std::to_string(bytes.size()) + bytes;
    if (!m_seen.insert({std::hash<std::string>()(all), m_done}).second) return;
    ++m_figures.books;
    const QDir folder(at("after"));
    for (const QString& old : folder.entryList(QDir::Files | QDir::Hidden)) QFile::remove(folder.filePath(old));
    for (const auto& [name, bytes] : image)
        std::ofstream(folder.filePath(QString::fromStdString(name)).toStdString(), std::ios::binary) << bytes;
    const std::string fault = faultOf(folder.filePath(QStringLiteral("b.yardwright")));
    if (fault.empty()) return;
    ++m_figures.losses;
    if (m_figures.losses < 20 && !m_lyingDisk) ADD_FAILURE() << what << ": " << fault;
}

void PowerCut::cutNow(const cut::CutVfs& vfs, Op op, int seeds) {
    ++m_figures.operations;
    for (const Reach reach : cut::kReaches)
        for (int seed = 0; seed < (reach == Reach::Synced ? 1 : seeds); ++seed) {
            const auto number = static_cast<unsigned>(vfs.operations()) * 100 + static_cast<unsigned>(seed);
            judge(vfs.disk().after(reach, number), "operation " + std::to_string(vfs.operations()) + " (" + wordOf(op) +
                                                       "), " + wordOf(reach) + ", seed " + std::to_string(number) +
                                                       ", within step " + std::to_string(m_done + 1) + ' ' +
                                                       (m_done < m_steps.size() ? m_steps[m_done].name : "of closing"));
        }
}

Figures PowerCut::cutThrough(int random, int stride, int seeds, bool littleMemory) {
    learn(random);
    copyFile(at("empty.yardwright"), at("cut/b.yardwright"));
    cut::CutVfs vfs(at("cut").toStdString());
    std::optional<cut::LittleMemory> little;
    if (littleMemory) little.emplace();
    vfs.setLying(m_lyingDisk);
    vfs.setBefore([&](Op op) {
        if (vfs.operations() % stride == 0) cutNow(vfs, op, seeds);
    });
    {
        const auto session = Session::open(at("cut/b.yardwright"), m_clock);
        for (const Step& step : m_steps) {
            step.run(*session);
            ++m_done;
        }
    }
    return m_figures;
}

TEST_F(PowerCut, NoEditThatWasAcknowledgedIsLostAndNoneIsHalf) {
    const Figures found = longRun() ? cutThrough(100, 1, 3, false) : cutThrough(5, 61, 1, false);
    EXPECT_GT(found.operations, 20);
    EXPECT_EQ(found.losses, 0);
    figure("Power cut", "operations cut at", found.operations);
    figure("Power cut", "disks after a cut", found.cuts);
    figure("Power cut", "different ones, opened and checked", found.books, Sum::Cuts);
    figure("Power cut", "losses", found.losses, Sum::Losses);
}

TEST_F(PowerCut, NorWhereTheBooksFileIsWrittenBeforeTheCommit) {
    const Figures found = longRun() ? cutThrough(20, 1, 3, true) : cutThrough(0, 97, 1, true);
    EXPECT_GT(found.operations, 20);
    EXPECT_EQ(found.losses, 0);
    figure("Power cut, the file written before the commit", "operations cut at", found.operations);
    figure("Power cut, the file written before the commit", "disks after a cut", found.cuts);
    figure("Power cut, the file written before the commit", "different ones, opened and checked", found.books,
           Sum::Cuts);
    figure("Power cut, the file written before the commit", "losses", found.losses, Sum::Losses);
}

TEST_F(PowerCut, ALossIsFoundWhereTheDiskLies) {
    m_lyingDisk = true;
    EXPECT_GT(cutThrough(0, 97, 1, false).losses, 10);
}

} // namespace

} // namespace tests::reliability
