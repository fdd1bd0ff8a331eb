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
/// whatever ended the program. The last line about a visit is the one that counts. A line that was cut short harms
/// neither those before nor those after it.
class DraftJournal {
public:
    /// `bookId`: the uuid of the book; another book that takes the file's place is not given what was typed for this.
    DraftJournal(const QString& book, const QString& bookId)
        : m_path(book + QStringLiteral(".half-typed-") + bookId.left(8)) {}

    QString path() const { return m_path; }

    struct Found {
        std::vector<HalfTyped> all; ///< in the order they were begun
        int unread = 0;             ///< whole lines that say nothing; a last one that was cut short is none
    };
    /// Throws Error(Book) where the file cannot be read.
    Found read() const;
    /// The file as it is goes under another name beside it, which is returned. Throws Error(Book).
    QString putAside() const;

    /// Adds a line behind whatever is there; handed to the system when it returns. False: the file is not as this
    /// journal left it, so all must be written. Throws Error(Book); then the file is as it was.
    bool add(const HalfTyped& now);
    bool addGone(core::ColonyId colony, core::VisitId was);
    /// The same whatever the file is.
    void addAnyhow(const HalfTyped& now);
    /// These alone; without any the file goes. Throws Error(Book); then the file is as it was.
    void keepOnly(const std::vector<HalfTyped>& all);

private:
    bool append(const QByteArray& line);

    QString m_path;
    qint64 m_size = -1; ///< as it was left; -1: never written
};

} // namespace ui::visit
