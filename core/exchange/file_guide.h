#pragma once

#include <QString>
#include <QStringList>

#include <vector>

namespace core::exchange {

/// One column of an exported file, or, without `column`, the file itself. The list is resources/export/columns.csv.
struct ColumnGuide {
    QString file;   ///< "visits.csv"
    QString column; ///< empty: of the file
    QString unit;   ///< empty: none
    QString meaning;
    QString allowed;  ///< words with a space between, or a range; empty: any text or number
    QString empty;    ///< what an empty cell says; "never": there is none
    QStringList from; ///< columns of the book that it tells, "visit.day"; of a file: "import" where an import reads it
};

const std::vector<ColumnGuide>& columnGuides();

/// The header of the guide that is written beside the files, and its rows: the list, then each setting.
QStringList guideHeader();
std::vector<QStringList> guideRows();

/// The list as a page in Markdown.
QString guidePage();

} // namespace core::exchange
