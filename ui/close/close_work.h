#pragma once

#include "ui/close/close_lines.h"
#include "ui/desk/desk.h"

#include <map>

namespace ui::close {

/// One merge day being written back, without widgets: what is noted of each strip (kept beside the book until it is
/// written), why a line cannot be written, and the writing of all of it as one edit.
class CloseWork : public QObject {
    Q_OBJECT
public:
    explicit CloseWork(desk::Desk& desk, QObject* parent = nullptr);

    const Lines& lines() const { return m_lines; }
    const std::vector<Drafted>& drafted() const { return m_draft; }
    /// Why nothing can be noted here; empty: it can.
    QString barred() const;
    /// A strip of the yard and day shown, with who writes; the colonies are the caller's.
    core::edit::StripClose fresh() const;
    /// What is noted of the line, or the line as a strip of which nothing is noted.
    core::edit::StripClose stripOf(int row) const;

    /// Reads the yard and day shown, and what was noted of them. Throws Error(Book).
    void read();
    /// Instead of what was noted of the same strip. Returns its row. Throws Error(Book).
    int note(const Drafted& drafted);
    void clear(int row);
    /// Something that is noted is not kept beside the book.
    bool behind() const;
    /// Keeps it now. Throws Error(Book).
    void catchUp();
    /// It is written though a rule stands against it, or no longer so.
    void turnFact(int row);
    /// All that is noted, as one edit. False: nothing was written; the line that stands against it has its sentence,
    /// and is badRow(). Throws Error where it is no line's matter.
    bool write();
    int badRow() const { return m_bad; }
    /// What is written of the line. Throws Error as Desk::save.
    bool takeBack(int row);

signals:
    void changed();

private:
    void keep();
    void show();
    void judge(const Drafted& drafted);
    int rowOf(const Drafted& drafted) const;
    std::vector<Drafted> inOrder() const;
    std::vector<core::edit::Edit> edits(const std::vector<Drafted>& order, int& at) const;
    QString textOf(const std::vector<Drafted>& order) const;

    using Key = std::tuple<core::LineageHow, core::ColonyId, core::ColonyId>;
    static Key keyOf(const Drafted& d) { return {d.strip.how, d.strip.moved, d.strip.host}; }

    desk::Desk& m_desk;
    core::YardId m_yard; ///< of what was read; 0: none
    core::Day m_day;
    std::vector<Drafted> m_draft;
    std::map<Key, QString> m_problems; ///< by what is noted
    Lines m_bare;                      ///< as the book says
    Lines m_lines;
    int m_bad = -1;
    std::map<std::pair<core::YardId, core::Day>, std::vector<Drafted>> m_waiting; ///< what the file lacks
};

} // namespace ui::close
