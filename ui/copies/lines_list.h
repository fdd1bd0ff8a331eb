#pragma once

#include "core/edit/compare_books.h"

#include <QTreeWidget>

#include <optional>

namespace ui::copies {

/// What one of two books has that the other has not: its changes, newest first.
class LinesList : public QTreeWidget {
    Q_OBJECT
public:
    LinesList(const QString& name, QWidget* parent);

    void fill(const core::edit::BooksCompared::Side& side);
    /// The number of the line that the keys are on.
    std::optional<qint64> chosen() const;
};

} // namespace ui::copies
