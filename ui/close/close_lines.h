#pragma once

#include "ui/close/draft_file.h"
#include "ui/desk/reading.h"

#include <QCoreApplication>

#include <optional>
#include <vector>

namespace ui::close {

/// Translation context of the step.
struct WriteBack {
    Q_DECLARE_TR_FUNCTIONS(WriteBack)
};

enum class Stage {
    Open,     ///< nothing is noted
    Drafted,  ///< noted, not written yet
    Written,  ///< in the book
    Elsewhere ///< another record of the book says that it was done
};

/// One strip of the merge day, as it is shown.
struct Line {
    int number = 0; ///< on the worksheet; 0: it never was on it
    core::LineageHow how = core::LineageHow::United;
    core::ColonyId moved, host;
    QString movedName, hostName;
    Stage stage = Stage::Open;
    std::optional<core::StripOutcome> outcome;
    std::optional<core::MergeStripId> id; ///< where it is in the book
    QString note;
    QString instead; ///< the union or shake-out that it became
    bool asFact = false;
    QString problem; ///< why it cannot be written

    bool is(const Drafted& d) const { return d.about(how, moved, host); }
    bool about(core::ColonyId colony) const { return colony == moved || colony == host; }
    QString title() const;       ///< "K2 → K4", "K9 shaken out into K2"
    QString outcomeText() const; ///< "done", "not done", "changed"; of an open one empty
    QString spoken() const;
};

/// A union or shake-out in words: "K2 → K5", "K9 shaken out into K2".
QString unionText(core::LineageHow how, const QString& moved, const QString& host);

/// The strips of one merge day in the order of the worksheet, then what never was on it.
struct Lines {
    std::vector<Line> lines;
    std::optional<core::MergeDay> day; ///< that they are of; not set: none is in the book
    /// Not in the book yet: the strips of the plan as it stands, to be kept before the first is written.
    std::vector<core::MergeStrip> planned;

    int count(Stage stage) const;
    int firstOpen() const; ///< −1: none
};

/// As the book says, nothing noted. `reading`: of the merge day. Throws Error(Book).
Lines linesOf(const core::edit::Session& book, const desk::Reading& reading, core::YardId yard);
/// With what is noted; of a strip that is written nothing. Reads few rows: it may be asked with each key.
Lines withDrafts(Lines lines, const core::edit::Session& book, core::Day day, const std::vector<Drafted>& drafted);

} // namespace ui::close
