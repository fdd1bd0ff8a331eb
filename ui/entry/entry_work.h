#pragma once

#include "ui/entry/entry_desk.h"
#include "ui/visit/draft_cells.h"

#include <map>
#include <set>

namespace ui::entry {

enum class RowState { Blank, Typed, Wrong, Saved };

/// A hive of the yard on the day that is written down.
struct EntryRow {
    core::ColonyId colony;
    QString label;
    int boxes = 1;                    ///< brood boxes that day
    std::optional<core::Visit> onDay; ///< its visit of that day
    std::optional<core::Visit> last;  ///< the one before that day
};

/// The visits of one yard and day being written down, without widgets: the hives in walking order, what is half typed
/// of each, what stands against it, and its saving.
class EntryWork : public QObject {
    Q_OBJECT
public:
    EntryWork(desk::Desk& desk, EntryDesk& entry, QObject* parent);

    /// The hives of the yard shown, as they stand on the day that is carried. Throws Error(Book).
    void read();
    const std::vector<EntryRow>& rows() const { return m_rows; }
    std::optional<int> rowOf(core::ColonyId colony) const;
    /// By its whole label, or else the only one that begins so; without regard to case.
    std::optional<int> rowNamed(const QString& label) const;

    const Carried& carried() const { return m_carried; }
    /// Of the rows begun from now on. A new day is read at once.
    void setCarried(const Carried& carried);

    RowState state(int row) const;
    int count(RowState state) const;
    /// What is half typed and stands in no row here, as "B4 of 3 Sep".
    QStringList elsewhere() const;
    /// What is half typed of it; nullopt: nothing.
    std::optional<visit::VisitDraft> typed(int row) const;
    /// What typing goes on from: that, or the visit of the day, or a fresh one.
    visit::VisitDraft base(int row) const;
    /// As shown: the text of a cell, and that of the visit before.
    QString text(int row, core::TallyColumn column) const;
    QString lastText(int row, core::TallyColumn column) const;
    /// What is wrong with what is typed there; empty: nothing.
    QString problem(int row, core::TallyColumn column) const;
    /// A field of a box that the hive does not have is passed over.
    bool open(int row, core::TallyColumn column) const;
    void type(int row, core::TallyColumn column, const QString& text);
    void throwAway(int row);

    struct Answer {
        enum class Kind { Nothing, Saved, Refused, Asked } kind = Kind::Nothing;
        QString text = {};
        std::optional<visit::Field> field = {}; ///< that keeps it from being saved
    };
    /// The row's visit as one edit. What is odd in it is asked about once: saving again then saves. `asks` false: the
    /// question is not put now, so it is still to be asked.
    Answer save(int row, bool asks = true);
    /// The visit that the row's typing is of, for the form: nullopt: a new one.
    std::optional<core::Visit> changed(int row) const;

signals:
    void rowsRead();
    void rowChanged(int row);

private:
    const visit::VisitPlace& place(int row) const;
    core::VisitId visitOf(int row) const;
    const std::vector<visit::Problem>& problems(int row) const;
    QStringList odd(int row, const core::Visit& visit) const;
    EntryRow rowFor(core::ColonyId colony) const;
    void follow(core::ColonyId colony);

    desk::Desk& m_desk;
    EntryDesk& m_entry;
    Carried m_carried;
    std::vector<EntryRow> m_rows;
    std::set<std::pair<core::ColonyId, QString>> m_asked;
    mutable std::map<int, visit::VisitPlace> m_places;
    mutable std::map<int, std::vector<visit::Problem>> m_problems;
};

} // namespace ui::entry
