#pragma once

#include <QString>

#include <chrono>
#include <functional>
#include <memory>

namespace core {

/// Thrown inside long work that was asked to stop; whoever does that work leaves everything as it was.
struct Stopped {};

/// Told now and then what long work is doing and how much of the whole is done, 0..1; false: stop. Comes on the thread
/// that works, and must be quick.
using Watch = std::function<bool(const QString& what, double share)>;
/// Whether it is to stop; asked from any thread.
using StopAsked = std::function<bool()>;
/// Told once, with what is done then: from here on it goes through, whoever asks.
using PastStopping = std::function<void(const QString& what)>;

/// What long work tells of itself; each of its steps is given a part of it. Without a watch nobody asks. A copy tells
/// the same watch. One thread at a time.
class Progress {
public:
    Progress() = default;
    /// Told no more often than `apart`, but for the beginning of each part. With `stopAsked`, what cannot tell (one
    /// long statement of SQLite) can be stopped, too.
    explicit Progress(Watch watch, StopAsked stopAsked = {},
                      std::chrono::milliseconds apart = std::chrono::milliseconds(20), PastStopping past = {});

    /// The stretch from..to of this one, 0..1; `what` is done in it, empty: as in this one.
    Progress part(double from, double to, const QString& what = {}) const;
    /// For a step that ends with a commit of its own and is not the last: its pastStopping() says nothing.
    Progress inner() const;
    /// Throws Stopped.
    void at(double share) const;
    void at(qint64 done, qint64 total) const;
    /// The last of all, a commit: from now on nobody is asked. Throws Stopped where it is to stop by then.
    void pastStopping(const QString& what) const;
    /// For callbacks that cannot throw: false where it is to stop.
    bool goesOn() const;
    /// Empty where nobody can ask.
    StopAsked stopAsked() const;

private:
    struct Shared;
    bool tell() const;

    std::shared_ptr<Shared> m_shared;
    double m_from = 0;
    double m_to = 1;
    bool m_inner = false;
    QString m_what;
};

/// Counts what a step of `total` has done.
class Ticker {
public:
    Ticker() = default;
    Ticker(Progress progress, qint64 total) : m_progress(std::move(progress)), m_total(total) { at(0); }

    /// Every few hundredth time.
    bool due() { return ++m_ticks % kApart == 0; }
    /// Throws Stopped.
    void at(qint64 done) const { m_progress.at(done, m_total); }
    /// After a step that took long. Throws Stopped.
    void look() const { at(m_ticks); }
    /// One more is done. Throws Stopped.
    void tick() {
        if (due()) at(m_ticks);
    }

private:
    static constexpr qint64 kApart = 256;
    Progress m_progress;
    qint64 m_total = 0;
    qint64 m_ticks = 0;
};

} // namespace core
