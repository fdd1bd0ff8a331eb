#include "core/edit/undo_stack.h"

#include <set>

namespace core::edit {

namespace {

using store::HistoryKind;
using store::HistoryRow;

/// Reads lines newest first until it knows both tops.
class TopFinder {
public:
    void take(const HistoryRow& line) {
        const qint64 step = line.ofSeq.value_or(line.seq);
        const bool toldAlready = !m_known.insert(step).second; // by a later line of the same step
        const bool undone = line.kind == HistoryKind::Undo;
        if (!toldAlready && undone && !m_redo && !m_edited) m_redo = {step, line.seq, {}};
        if (!toldAlready && !undone && !m_undo) m_undo = {step, line.seq, {}};
        m_edited = m_edited || line.kind == HistoryKind::Do; // what was undone before that is not done again
    }
    bool knows() const { return m_undo && (m_redo || m_edited); }

    std::optional<UndoStep> undo() const { return m_undo; }
    std::optional<UndoStep> redo() const { return m_redo; }

private:
    std::set<qint64> m_known;
    std::optional<UndoStep> m_undo;
    std::optional<UndoStep> m_redo;
    bool m_edited = false;
};

void addText(const store::Database& db, std::optional<UndoStep>& step) {
    if (!step) return;
    store::Statement read = db.prepare("SELECT sentence FROM history WHERE seq = ?");
    read.bind(1, step->doneAs);
    if (read.step()) step->text = read.text(0);
}

} // namespace

UndoTops undoTops(const store::Database& db) {
    UndoTops tops;
    // Mostly the newest lines tell; a long run of undos asks for more of them.
    for (int most = 64;; most *= 8) {
        const auto lines = store::listHistory(db, most);
        TopFinder finder;
        for (size_t i = 0; i < lines.size() && !finder.knows(); ++i) finder.take(lines[i]);
        tops = {finder.undo(), finder.redo()};
        if (finder.knows() || lines.size() < static_cast<size_t>(most)) break;
    }
    addText(db, tops.undo);
    addText(db, tops.redo);
    return tops;
}

} // namespace core::edit
