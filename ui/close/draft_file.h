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
    /// In the order they were noted. Throws Error(Book) where the file cannot be read.
    std::vector<Drafted> of(core::YardId yard, core::Day day) const;
    /// Those of this yard and day are `now`; on the disk when it returns. Without any left the file goes. Throws
    /// Error(Book).
    void keep(core::YardId yard, core::Day day, const std::vector<Drafted>& now) const;

private:
    std::vector<Drafted> all() const;

    QString m_path;
};

} // namespace ui::close
