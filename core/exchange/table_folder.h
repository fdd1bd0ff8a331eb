#pragma once

#include "core/base/progress.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace core::exchange {

/// A table to be one CSV file: its name without ".csv", a head, a row a line.
struct TableFile {
    QString name;
    QStringList head;
    std::vector<QStringList> rows;
};

/// Writes them into the folder, which is made where it is missing: each whole or not at all, and none before all are
/// ready. A file of the same name and head is replaced; others stay. They are for spreadsheets: no cell is a formula.
/// Throws Error(Book) where one cannot be written, or one of that name has another head: it is something else; Stopped.
void writeTables(const QString& dir, const std::vector<TableFile>& tables, const Progress& progress = {});

} // namespace core::exchange
