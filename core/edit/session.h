#pragma once

#include "core/base/clock.h"
#include "core/base/progress.h"
#include "core/edit/change_set.h"
#include "core/edit/history.h"
#include "core/model/medicine_change.h"
#include "core/model/note_found.h"
#include "core/model/recorded_day.h"
#include "core/model/rows.h"
#include "core/model/snapshot.h"
#include "core/model/visit_list.h"

#include <QObject>
#include <QString>
#include <QStringList>

#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace core::store {
class Database;
}

namespace core::edit {

class EditContext;
enum class BooksStand;

/// An edit reads the few rows it needs and returns what to change; it writes nothing. Throws Error(BadData, Hold).
using Edit = std::function<ChangeSet(const EditContext&)>;

/// Who takes a record back on which a foulbrood hold rests, and why. Both must be given.
struct Correction {
    QString by;
    QString reason;
};

/// One open book, and its only writer. Every write is one ChangeSet: stale check, one transaction with its history
/// line, commit, then changed(). Undo and redo go through the same door and add lines; the undo and redo stacks are
/// read back from the history when a book is opened.
class Session : public QObject {
    Q_OBJECT
public:
    enum class Access { ReadWrite, ReadOnly };

    /// Makes an empty book with the shipped box kinds. Throws Error(Book) where the file exists or cannot be made.
    static std::unique_ptr<Session> create(const QString& path, const Clock& clock);
    /// Throws Error(Book): missing, not a book, damaged, newer than the program; BookHeld: by another (ReadWrite).
    static std::unique_ptr<Session> open(const QString& path, const Clock& clock, Access access = Access::ReadWrite);
    ~Session() override;

    QString path() const;
    bool readOnly() const;
    const Clock& clock() const;
    /// "by" of the history lines from now on, and whom others are told that has the book.
    void setAuthor(const QString& name);
    /// What edits, undo and redo tell, from now on, of the rows that they write. It may stop them until the commit:
    /// then nothing is written, and Stopped is thrown.
    void setProgress(const Progress& progress);
    /// Throws BookReplaced (core/base/book_replaced.h) where the file at path() is not, or no longer as, the one that
    /// is open: a sync program, or a hand, put another there. Each edit asks it before anything is written. A reader
    /// minds only whether it is the same file.
    void needOwnFile() const;
    /// Whether another program has written to the book since this was last asked, or the book opened: read it again
    /// then. False while something is being written. Throws Error(Book) when the file fails.
    bool changedElsewhere();
    /// A session that only reads becomes one that writes; what it shows is to be read again. Throws as open() does, and
    /// then still reads.
    void takeOver();
    /// The note of another machine (BookHeld::Known::Noted) is no longer true: it goes, and this session writes. Throws
    /// as takeOver().
    void overruleNote();

    /// Writes what the edit returns. nullopt: nothing changed, no line. Throws Error; then nothing is written.
    /// Error(Correction): the edit alters or deletes a record that a foulbrood hold rests on, or something stands
    /// against it (ChangeSet::against), and no correction came; the message names the holds.
    std::optional<HistoryLine> apply(const Edit& edit, const std::optional<Correction>& correction = {});

    /// Several edits as one: each reads what those before it made, the rules too; one line under `text`, one undo. The
    /// edits give row changes alone. All or none: what one throws is thrown on, and nothing is written.
    std::optional<HistoryLine> applyInTurn(const QString& text, const std::vector<Edit>& edits,
                                           const std::optional<Correction>& correction = {});

    std::optional<QString> undoText() const; ///< text of the edit that undo() would take back
    std::optional<QString> redoText() const;
    /// Throws Error(Correction) as apply() does. Nothing to undo: does nothing, returns nullopt.
    std::optional<HistoryLine> undo(const std::optional<Correction>& correction = {});
    std::optional<HistoryLine> redo(const std::optional<Correction>& correction = {});
    /// Takes the edit of any past line back, as a new line, though later ones stand, provided nothing later rests on
    /// it. Throws Error(BadData) with one sentence that says what does; Error(Correction) as apply().
    std::optional<HistoryLine> takeBack(qint64 seq, const std::optional<Correction>& correction = {});
    /// Why takeBack() would be refused, as far as a few reads tell; nullopt: it can be tried.
    std::optional<QString> takeBackBarred(qint64 seq) const;
    std::vector<HistoryLine> history(int most) const; ///< newest first
    /// At most `most` lines below `before` (nullopt: from the newest), after a look at no more than `look` of them.
    HistoryPage historyPage(const HistoryFilter& filter, std::optional<qint64> before, int most, int look) const;
    std::optional<HistoryDetail> historyDetail(qint64 seq) const;

    // Reads. All throw Error(Book) when the file fails.
    Snapshot snapshot(Day on) const;
    /// The hives of one yard on the day, read quickly. No hold can be judged from it (store/snapshot_reader.h).
    Snapshot yardGlance(YardId yard, Day on) const;
    /// All that the holds of any day rest on, and nothing else: for rules/holds_then.h.
    Snapshot snapshotForHolds() const;
    std::vector<Yard> yards() const;       ///< not closed, natural order
    std::vector<BoxKind> boxKinds() const; ///< natural order
    Settings settings() const;
    std::vector<MergeDay> mergeDays(YardId yard) const;              ///< by day, then variant
    std::vector<MergeChoice> choicesOf(MergeDayId day) const;        ///< by id
    std::vector<MergeStrip> stripsOf(MergeDayId day) const;          ///< by position
    std::vector<DivideChoice> divideChoicesOf(MergeDayId day) const; ///< by id
    std::vector<DivideStrip> divideStripsOf(MergeDayId day) const;   ///< by position
    std::vector<MergeDay> mergeDaysOn(Day day) const;                ///< of all yards, by yard, then variant
    std::vector<Person> people() const; ///< who keep the book, those not active any more too; natural order
    std::vector<Feeding> feedingsOf(ColonyId id) const;              ///< by day
    std::vector<Feeding> feedingsBetween(Day from, Day until) const; ///< of all colonies, both days included; by day
    std::vector<Queen> queensOf(ColonyId id) const;                  ///< that headed it, by since
    std::vector<Queen> queens() const;                               ///< all, by colony, then since
    std::vector<FileMapping> fileMappings() const;                   ///< natural order
    std::vector<Phrase> phrases() const;                             ///< natural order
    std::vector<Question> questions() const;                         ///< natural order
    std::vector<Result> results() const;                             ///< all, by day
    std::vector<Treatment> treatments() const;                       ///< all, by day
    /// What was altered in the medicine book, removed from it or put back, by treatment, then line of the history.
    std::vector<MedicineChange> medicineChanges() const;
    std::vector<Sample> samples() const;                        ///< all, by day
    std::vector<Sample> samplesOf(ColonyId id) const;           ///< by day
    std::vector<MiteFall> miteFalls(Day from, Day until) const; ///< counted on these days, both included; by day
    std::vector<MiteFall> miteFallsOf(ColonyId id) const;       ///< by day
    std::vector<StripsOut> stripsOut() const;                   ///< all, by day
    std::vector<KitEnd> kitEnds() const;                        ///< all, by day
    std::vector<Notifiable> notifiables() const;                ///< the book's own lines, by place, then disease
    std::optional<Keeper> keeper() const;
    QString bookTitle() const; ///< the file's name without its extension
    QString bookId() const;    ///< the uuid that it was made with
    std::optional<Yard> yard(YardId id) const;
    std::vector<Stand> standsOf(YardId id) const;           ///< removed ones too, natural order
    std::vector<FixedThing> fixedThingsOf(YardId id) const; ///< in the order they were drawn
    std::optional<Colony> colony(ColonyId id) const;
    std::vector<Placement> placementsOf(ColonyId id) const; ///< in time order
    std::vector<Lineage> lineageOf(ColonyId id) const;      ///< on either side, by day
    std::vector<Transfer> transfersOf(ColonyId id) const;   ///< on either side, by day
    std::vector<Result> resultsOf(ColonyId id) const;       ///< that name it, by day
    std::vector<Result> resultsOf(YardId id) const;
    std::vector<Treatment> treatmentsOf(ColonyId id) const; ///< that name it, by day
    std::vector<Treatment> treatmentsOf(YardId id) const;
    std::vector<Attachment> attachmentsOf(qint64 seq) const; ///< of a line of the history
    /// For a form that asks what an edit would ask: the same reads, outside an edit.
    /// With a `progress` its long statements can be stopped, too: throws Stopped.
    void read(const std::function<void(const EditContext&)>& take, const Progress& progress = {}) const;
    std::vector<Visit> visitsOf(ColonyId id, int most) const; ///< newest first
    /// Of all colonies, or of hives that stood in the yard on the visit's day; both days included; by day, then colony.
    std::vector<Visit> visitsBetween(Day from, Day until, std::optional<YardId> yard) const;
    /// Of many visits, those that the filter lets through: the first `most` in this order; and figures of all of them.
    std::vector<VisitId> visitsFound(const VisitFilter& filter, VisitOrder order, int most) const;
    VisitTotals visitTotals(const VisitFilter& filter) const;
    std::vector<Visit> visits(const std::vector<VisitId>& ids) const; ///< in this order; those that are there
    /// Notes with the words typed, newest first (store/note_words.h); whatever is typed is no fault.
    NotesFound notesFound(const QString& typed, int most) const;
    std::vector<Day> visitDays(YardId yard) const;            ///< days with a visit in that yard, oldest first
    std::vector<RecordedDay> recordedDays(YardId yard) const; ///< of its hives, by day, then kind
    std::vector<StandUse> standUses(YardId yard) const;       ///< of stands that were ever used
    /// A verified copy of the book: opened and checked. Throws Error(Book) where `to` exists or cannot be written.
    void backUp(const QString& to) const;
    /// How what is open here stands to another file of the book (compare_books.h).
    BooksStand standTo(const store::Database& there) const;
    /// What is wrong with the book, one sentence each (integrity, invariants, history against rows); empty: in order.
    QStringList check() const;
    std::optional<Day> lastDay() const; ///< the latest day of any record

signals:
    /// Once after each commit. Of `bulk` the table and ids alone: its rows are not given again.
    void changed(const core::edit::ChangeSet& what);

private:
    std::optional<HistoryLine> applyWhat(const std::function<ChangeSet()>& what,
                                         const std::optional<Correction>& correction);
    std::optional<HistoryLine> reverse(bool again, const std::optional<Correction>& correction);

    struct Private;
    explicit Session(std::unique_ptr<Private> d);
    std::unique_ptr<Private> d;
};

} // namespace core::edit
