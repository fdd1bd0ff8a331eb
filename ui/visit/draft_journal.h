#pragma once

#include "ui/visit/visit_draft.h"

#include <QString>

#include <vector>

namespace ui::visit {

/// A visit that is typed and not in the book yet; one a colony, and one for each visit of the book that is changed.
struct HalfTyped {
    core::ColonyId colony;
    core::VisitId was; ///< the one that is changed; 0: a new one
    VisitDraft draft;
    bool about(core::ColonyId c, core::VisitId w) const { return colony == c && was == w; }
};

/// What is half typed, in a file beside the book: a line is added with each key, so that what was typed is there again
/// whatever ended the program. The last line about a visit is the one that counts.
class DraftJournal {
public:
    /// `bookId`: the uuid of the book; another book that takes the file's place is not given what was typed for this.
    DraftJournal(const QString& book, const QString& bookId)
        : m_path(book + QStringLiteral(".half-typed-") + bookId.left(8)) {}

    QString path() const { return m_path; }
    /// In the order they were begun. A last line that was cut short is passed over. Throws Error(Book) where the file
    /// cannot be read.
    std::vector<HalfTyped> all() const;
    /// Handed to the system when it returns. Throws Error(Book).
    void add(const HalfTyped& now);
    void addGone(core::ColonyId colony, core::VisitId was);
    /// These alone; without any the file goes. Throws Error(Book).
    void keepOnly(const std::vector<HalfTyped>& all);

private:
    void append(const QByteArray& line) const;

    QString m_path;
};

} // namespace ui::visit
