#pragma once

#include "core/edit/merge_day.h"

#include <QString>

#include <utility>
#include <vector>

namespace ui::close {

/// What is noted of one strip and not written to the book yet.
struct Drafted {
    core::edit::StripClose strip;
    bool asFact = false; ///< written though a rule stands against it
    bool about(core::LineageHow how, core::ColonyId moved, core::ColonyId host) const {
        return strip.how == how && strip.moved == moved && strip.host == host;
    }
};

/// The notes of all merge days of a book that are not written yet, in a file beside it: what was typed is there again
/// when the book is opened, whatever ended the program.
class DraftFile {
public:
    /// `bookId`: the uuid of the book; another book that lies there by now is not given its notes, and keeps them.
    DraftFile(const QString& book, QString bookId)
        : m_path(book + QStringLiteral(".unwritten")), m_bookId(std::move(bookId)) {}

    QString path() const { return m_path; }

    struct Notes {
        std::vector<Drafted> all; ///< in the order they were noted
        /// What is to be said where some could not be read, or were noted before notes said of which book they are;
        /// empty: nothing.
        QString lost;
    };
    /// Where some cannot be read, the file as it is goes under another name beside it. Throws Error(Book) where none
    /// can: then it stays.
    Notes of(core::YardId yard, core::Day day) const;
    /// Those of this yard and day are `now`; on the disk when it returns. Without any left the file goes. Throws
    /// Error(Book); then it is as it was.
    void keep(core::YardId yard, core::Day day, const std::vector<Drafted>& now) const;

private:
    struct Kept {
        Drafted note;
        QString book; ///< the uuid; empty: noted by an older version
    };
    struct Found {
        std::vector<Kept> all;
        QString lost;
    };
    static bool take(const QByteArray& text, std::vector<Kept>& out);
    static QByteArray textOf(const std::vector<Kept>& all);
    bool ours(const Kept& kept, core::YardId yard, core::Day day) const;
    Found all() const;
    void write(const std::vector<Kept>& all) const;
    QString putAside() const;

    QString m_path;
    QString m_bookId;
};

} // namespace ui::close
