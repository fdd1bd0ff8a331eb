#include "core/edit/change_writer.h"
#include "core/edit/edit_checks.h"
#include "core/edit/session.h"
#include "core/edit/session_private.h"
#include "core/edit/take_back.h"

namespace core::edit {

namespace {

std::optional<QString> textOf(const std::optional<UndoStep>& step) {
    return step ? std::optional(step->text) : std::nullopt;
}

} // namespace

std::optional<QString> Session::undoText() const { return textOf(d->undoTops().undo); }

std::optional<QString> Session::redoText() const { return textOf(d->undoTops().redo); }

std::optional<HistoryLine> Session::undo(const std::optional<Correction>& correction) {
    return reverse(false, correction);
}

std::optional<HistoryLine> Session::redo(const std::optional<Correction>& correction) {
    return reverse(true, correction);
}

std::optional<HistoryLine> Session::reverse(bool again, const std::optional<Correction>& correction) {
    d->needWritable();
    d->needFile();
    const auto step = again ? d->undoTops().redo : d->undoTops().undo;
    if (!step) return std::nullopt;
    ChangeSet change;
    HistoryLine line;
    {
        store::Transaction transaction(*d->db);
        change = reversal(*d->db, step->last);
        change.text = (again ? Edits::tr("Done again: %1") : Edits::tr("Undone: %1")).arg(step->text);
        line = d->write(change, again ? store::HistoryKind::Redo : store::HistoryKind::Undo, step->doneAs, correction);
        d->commit(transaction);
    }
    d->wrote(line);
    for (BulkInsert& range : change.bulk) range.row = nullptr;
    emit changed(change);
    return line;
}

std::optional<HistoryLine> Session::takeBack(qint64 seq, const std::optional<Correction>& correction) {
    d->needWritable();
    d->needFile();
    ChangeSet change;
    HistoryLine line;
    {
        store::Transaction transaction(*d->db);
        change = takeBackOf(*d->db, seq);
        line = d->write(change, store::HistoryKind::Undo, seq, correction,
                        [&] { needSoundBook(*d->db, change, d->clock->today()); });
        d->commit(transaction);
    }
    d->wrote(line);
    for (BulkInsert& range : change.bulk) range.row = nullptr;
    emit changed(change);
    return line;
}

std::optional<QString> Session::takeBackBarred(qint64 seq) const {
    if (readOnly()) return Edits::tr("The book is open for reading only: nothing can be changed here.");
    const store::ReadTransaction steady(*d->db);
    return edit::takeBackBarred(*d->db, seq);
}

} // namespace core::edit
