#pragma once

#include "core/edit/salvage.h"
#include "core/edit/told_rows.h"

namespace core::edit {

/// What is put into the new book.
struct SalvagedBook {
    const store::Database& rows; ///< what was kept, in order; its history is not read
    const store::Remains& remains;
    const ToldRows& told;
    bool keepHistory = false; ///< all of it is there, and the rows are as it left them
    QString sentence;
    QString at; ///< UTC, ISO 8601
    QString account;
    QString note; ///< of the records that hold hives for doubt; empty: none is needed
    Day day;
};

struct Written {
    QStringList problems; ///< what its check says
    int tornTexts = 0;    ///< texts kept with lines of the history (an import's file) that are lost
};

/// Makes a whole book at `path`, which does not exist: rows, then one line of the history with all of them and the
/// account, or the old history and one more line. Throws Error(Book), Stopped.
Written writeSalvaged(const SalvagedBook& book, const QString& path, const Progress& progress);

/// What the history says of itself, a line each, for people.
QByteArray historyText(const ToldRows& told);

} // namespace core::edit
