#include "tests/reliability/figures.h"
#include "tests/reliability/file_work.h"
#include "tests/support/cut_vfs.h"

#include <QDir>

#include <csignal>
#include <fstream>
#include <set>

#include <sys/wait.h>
#include <unistd.h>

// What is done to whole files is cut at its operations: those of SQLite, and those past it (cut_calls.cpp: renaming,
// exchanging, removing, syncing). The power goes, and several disks are made as they may be found; or the process is
// killed there, by SIGKILL. Each is then opened and gone on with.

namespace tests::reliability {

namespace {

using cut::Image;
using cut::Op;
using cut::Reach;

class FilesCut : public testing::TestWithParam<FileWork> {
protected:
    FilesCut() {
        for (const char* folder : {"before", "cut", "after"}) QDir().mkpath(at(folder));
        GetParam().prepare(at("before"));
    }

    QString at(const char* name) const { return m_dir.filePath(QString::fromLatin1(name)); }
    void fill(const QString& folder) const;
    /// Runs the work in the folder "cut", filled; `before` each operation.
    void work(const std::function<void(const cut::CutVfs&, Op)>& before, const std::function<void()>& said) const;
    qint64 operations() const;
    /// Of how many operations one is cut at, so that there are `most` of them.
    static qint64 strideFor(qint64 operations, qint64 most) { return std::max<qint64>(1, operations / most); }
    void judge(const Image& image, int said, const std::string& what);
    void cutNow(const cut::CutVfs& vfs, Op op, int said, int seeds);
    int killedAt(qint64 operation) const;

    qint64 m_cuts = 0;
    qint64 m_books = 0;
    qint64 m_losses = 0;

private:
    QTemporaryDir m_dir;
    std::set<std::pair<size_t, int>> m_seen;
};

void empty(const QDir& folder) {
    for (const QString& old : folder.entryList(QDir::Files | QDir::Hidden)) QFile::remove(folder.filePath(old));
}

void FilesCut::fill(const QString& folder) const {
    empty(QDir(folder));
    const QDir from(at("before"));
    for (const QString& name : from.entryList(QDir::Files | QDir::Hidden))
        copyFile(from.filePath(name), QDir(folder).filePath(name));
}

void FilesCut::work(const std::function<void(const cut::CutVfs&, Op)>& before,
                    const std::function<void()>& said) const {
    cut::CutVfs vfs(at("cut").toStdString());
    vfs.setOldSystem(GetParam().oldSystem);
    vfs.setBefore([&](Op op) { before(vfs, op); });
    GetParam().run(at("cut"), said);
    before(vfs, Op::Read); // once more: all is done
}

qint64 FilesCut::operations() const {
    fill(at("cut"));
    qint64 all = 0;
    work([&](const cut::CutVfs& vfs, Op) { all = vfs.operations(); }, [] {});
    return all;
}

void FilesCut::judge(const Image& image, int said, const std::string& what) {
    ++m_cuts;
    std::string all;
    for (const auto& [name, bytes] : image) all += name + '\0' + std::to_string(bytes.size()) + bytes;
    if (!m_seen.insert({std::hash<std::string>()(all), said}).second) return;
    ++m_books;
    const QDir folder(at("after"));
    empty(folder);
    for (const auto& [name, bytes] : image)
        std::ofstream(folder.filePath(QString::fromStdString(name)).toStdString(), std::ios::binary) << bytes;
    const std::string fault = GetParam().faultOf(folder.path(), said);
    if (fault.empty()) return;
    if (++m_losses < 10) ADD_FAILURE() << GetParam().name << ", " << what << ": " << fault;
}

void FilesCut::cutNow(const cut::CutVfs& vfs, Op op, int said, int seeds) {
    for (const Reach reach : cut::kReaches)
        for (int seed = 0; seed < (reach == Reach::Synced ? 1 : seeds); ++seed) {
            const auto number =
                seedOfRun() + static_cast<unsigned>(vfs.operations()) * 100 + static_cast<unsigned>(seed);
            judge(vfs.disk().after(reach, number), said,
                  "operation " + std::to_string(vfs.operations()) + " (" + wordOf(op) + "), " + wordOf(reach) +
                      ", seed " + std::to_string(number) + ", said " + std::to_string(said));
        }
}

/// How often it said that something was done before it was killed; -1: it was over before that operation.
int FilesCut::killedAt(qint64 operation) const {
    int ends[2];
    if (pipe(ends) != 0) throw std::runtime_error("no pipe");
    const pid_t child = fork();
    if (child == 0) {
        try {
            work(
                [&](const cut::CutVfs& vfs, Op) {
                    if (vfs.operations() == operation) kill(getpid(), SIGKILL);
                },
                [&] {
                    if (write(ends[1], "x", 1) != 1) _exit(2);
                });
        } catch (const Error& e) {
            fprintf(stderr, "child: %s %s\n", e.what(), e.detail().toUtf8().constData());
            _exit(3);
        }
        _exit(0);
    }
    close(ends[1]);
    int said = 0;
    for (char one = 0; read(ends[0], &one, 1) == 1;) ++said;
    close(ends[0]);
    int status = 0;
    waitpid(child, &status, 0);
    if (WIFSIGNALED(status)) return said;
    EXPECT_EQ(WEXITSTATUS(status), 0) << GetParam().name;
    return -1;
}

TEST_P(FilesCut, ByThePowerAreAsBeforeOrWhole) {
    const qint64 all = operations();
    const bool few = all < 50; // then at each, in many ways
    const qint64 stride = few ? 1 : strideFor(all, longRun() ? 400 : 2);
    const qint64 first = seedOfRun() % stride;
    qint64 operationsCut = 0;
    int said = 0;
    fill(at("cut"));
    work(
        [&](const cut::CutVfs& vfs, Op op) {
            const bool over = op == Op::Read;
            if (!over && vfs.operations() % stride != first) return;
            ++operationsCut;
            cutNow(vfs, op, said, few ? (longRun() ? 100 : 4) : (longRun() ? 2 : 1));
        },
        [&] { ++said; });
    EXPECT_GT(said, 0);
    EXPECT_EQ(m_losses, 0);
    const std::string harness = "Power cut, " + GetParam().name;
    figure(harness.c_str(), ("operations cut at, of " + std::to_string(all)).c_str(), operationsCut);
    figure(harness.c_str(), "different disks, opened and checked", m_books, Sum::Cuts);
    figure(harness.c_str(), "losses", m_losses, Sum::Losses);
}

TEST_P(FilesCut, ByAKillAreAsBeforeOrWhole) {
    const qint64 all = operations();
    const qint64 stride = strideFor(all, longRun() ? 150 : 2);
    qint64 kills = 0;
    for (qint64 at = 1 + seedOfRun() % stride; at <= all; at += stride) {
        fill(this->at("cut"));
        const int said = killedAt(at);
        if (said < 0) break;
        ++kills;
        const std::string fault = GetParam().faultOf(this->at("cut"), said);
        if (fault.empty()) continue;
        ++m_losses;
        ADD_FAILURE() << GetParam().name << ", killed at operation " << at << ": " << fault;
    }
    EXPECT_GT(kills, 0);
    const std::string harness = "Process killed (SIGKILL), " + GetParam().name;
    figure(harness.c_str(), ("kills, at operations of " + std::to_string(all)).c_str(), kills, Sum::Kills);
    figure(harness.c_str(), "losses", m_losses, Sum::Losses);
}

INSTANTIATE_TEST_SUITE_P(Each, FilesCut, testing::ValuesIn(fileWorks()));

} // namespace

} // namespace tests::reliability
