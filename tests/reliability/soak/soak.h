#pragma once

#include "tests/reliability/soak/hand.h"
#include "tests/reliability/soak/wear.h"

#include "core/base/clock.h"
#include "core/base/error.h"

#include <functional>
#include <memory>

namespace tests::soak {

struct Plan {
    unsigned seed = 1;
    qint64 edits = 1500;
    int editsADay = 20;
    int reopenEvery = 150;
    int checkEvery = 500; ///< edits: all of the book against all that is known of it
    int watchEvery = 10;  ///< steps: the holds before and after
    qint64 season = 300;  ///< edits; in every eighth of them foulbrood comes
    int turnEvery = 2;    ///< steps: the kind that was done least so far, whatever its weight
    Size size = {};
};

struct SoakClock : Clock {
    Day day = core::dayOf(2026, 5, 1);
    QDateTime nowUtc() const override { return QDateTime(toDate(day), QTime(12, 0), Qt::UTC); }
    Day today() const override { return day; }
};

/// One book over many edits of all kinds, undos, redos, takings back, imports and reopenings, all by one seed. What is
/// not as it must be fails the test, which says the seed and the step.
class Soak {
public:
    Soak(const Plan& plan, const QString& folder);
    ~Soak();

    void run();
    /// How often each kind of edit went through; "undo", "redo", "take back", "reopen" and the like too.
    const std::map<std::string, qint64>& done() const { return m_done; }
    /// By kind and sentence, its numbers as #.
    const std::map<std::string, std::map<std::string, int>>& refusals() const { return m_refusals; }
    const std::vector<Wear>& wear() const { return m_wear; }
    qint64 edits() const { return m_edits; } ///< lines of the history that were acknowledged
    qint64 losses() const { return m_losses; }
    qint64 checks() const { return m_checks; }
    QString path() const;

private:
    using Act = std::function<std::optional<HistoryLine>(const std::optional<Correction>&)>;

    bool goesOn() const;
    void step();
    void edit();
    void editTogether();
    void import();
    void undoSome();
    bool undoOne();
    bool redoOne();
    void takeBack();
    qint64 lineToTakeBack();
    void reopen();
    const Kind& nextKind();
    /// Does it as the window would: where a reason is asked for, mostly with one.
    bool act(const std::string& name, const Act& what);
    std::optional<HistoryLine> asked(const Act& what);
    void refused(const std::string& name, const Error& e, bool unwritten);
    void acknowledged(const HistoryLine& line);

    void take(const ChangeSet& what);
    void open();
    void checkAll();
    void checkFile();
    void undoAll();
    void note();

    Plan m_plan;
    QString m_folder;
    SoakClock m_clock;
    Shadow m_shadow;
    Hand m_hand;
    std::vector<Kind> m_kinds;
    std::vector<qint64> m_tries;
    int m_weights = 0;
    std::unique_ptr<Session> m_session;

    qint64 m_edits = 0, m_steps = 0, m_losses = 0, m_checks = 0, m_opened = 0, m_checked = 0;
    qint64 m_last = 0; ///< the newest line acknowledged
    bool m_changed = false, m_adds = false;
    std::string m_doing;
    std::vector<qint64> m_divides;         ///< lines that wrote what came of one
    std::vector<quint64> m_undos, m_redos; ///< what the rows were before each
    std::map<std::string, qint64> m_done;
    std::map<std::string, std::map<std::string, int>> m_refusals;
    std::vector<Wear> m_wear;
    Stopwatch m_watch;
};

} // namespace tests::soak
