#pragma once

#include "core/edit/merge_day.h"

#include <QString>

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
    explicit DraftFile(const QString& book) : m_path(book + QStringLiteral(".unwritten")) {}

    QString path() const { return m_path; }

    struct Notes {
        std::vector<Drafted> all; ///< in the order they were noted
        QString lost;             ///< what is to be said where some could not be read; empty: all could
    };
    /// Where some cannot be read, the file as it is goes under another name beside it. Throws Error(Book) where none
    /// can: then it stays.
    Notes of(core::YardId yard, core::Day day) const;
    /// Those of this yard and day are `now`; on the disk when it returns. Without any left the file goes. Throws
    /// Error(Book); then it is as it was.
    void keep(core::YardId yard, core::Day day, const std::vector<Drafted>& now) const;

private:
    Notes all() const;
    void write(const std::vector<Drafted>& all) const;
    QString putAside() const;

    QString m_path;
};

} // namespace ui::close
