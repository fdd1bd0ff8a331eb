#pragma once

#include "core/edit/edit_context.h"
#include "core/exchange/drafts.h"
#include "core/exchange/fault.h"
#include "core/exchange/import.h"

#include <QHash>
#include <QString>

#include <map>
#include <optional>
#include <vector>

// The book and the files together: what the book would hold after the import, by position. Rows of the book have their
// ids, new ones none until they are written.

namespace core::exchange {

struct YardEntry {
    Origin at;
    Yard row;
};

struct BoxEntry {
    Origin at;
    BoxKind row;
};

struct StandEntry {
    Origin at;
    Stand row; ///< `yard` not set for new ones
    int yard = -1;
};

/// A hive's stay on a stand: a Placement by position.
struct StayEntry {
    Origin at;
    int colony = -1;
    int stand = -1;
    Placement row; ///< `colony` and `stand` not set for new ones
    std::optional<Day> until;
};

struct ColonyEntry {
    Origin at;
    Colony row; ///< as it would be; `box` not set for new ones
    LabelId label;
    int box = -1;
    std::optional<Colony> stored; ///< as the book has it
    std::vector<int> stays;       ///< in time order once settled
    Origin endAt;                 ///< the row that ends it
    const char* endColumn = "ended";
    int endLineage = -1;  ///< its union or shake-out
    bool touched = false; ///< its stays or its end change
    bool isNew() const { return !at.inBook(); }
    /// The book has it as living, the files end it.
    bool endedNow() const { return stored && !stored->ended && row.ended; }
};

struct LineageEntry {
    Origin at;
    Lineage row; ///< colonies not set for new ones
    int colony = -1;
    int into = -1;
};

/// A file's row about colonies or a yard that is to be written, by position.
template <class Draft> struct RecordEntry {
    const Draft* draft = nullptr;
    int colony = -1; ///< of transfers: the giver
    int other = -1;  ///< of transfers: the receiver; of others: the yard
};

/// Strips out that are to be written.
struct StripsOutEntry {
    const StripsOutDraft* draft = nullptr;
    int colony = -1;
    qint64 treatment = 0;                  ///< of the book
    const TreatmentDraft* fresh = nullptr; ///< or of the files
};

struct SettingEntry {
    QString name;
    QString value; ///< canonical
};

/// The result that answers a sample: one of the files, or one of the book.
struct AnswerEntry {
    const ResultDraft* draft = nullptr;
    std::optional<ResultId> inBook;
};

/// What the checks read and fill. Made by readBook(); each merge and check adds to it and to the faults. `c` may be
/// read while the edit runs, no longer.
struct Ledger {
    Ledger(const edit::EditContext& context, Drafts& given, ImportReport& into, const ImportFiles& asked)
        : c(context), drafts(given), report(into), leaveOut(asked.leaveOutOtherwise), progress(asked.progress) {}

    const edit::EditContext& c;
    Drafts& drafts;
    ImportReport& report;
    bool leaveOut; ///< rows that say otherwise than the book
    Progress progress;
    Ticker ticker; ///< of the step that runs

    std::vector<YardEntry> yards;
    std::vector<BoxEntry> boxes;
    std::vector<StandEntry> stands;
    std::vector<ColonyEntry> colonies;
    std::vector<StayEntry> stays;
    std::vector<LineageEntry> lineage;
    std::vector<RecordEntry<VisitDraft>> visits;
    std::vector<RecordEntry<TransferDraft>> transfers;
    std::vector<RecordEntry<ResultDraft>> results;
    std::vector<RecordEntry<TreatmentDraft>> treatments;
    std::vector<RecordEntry<FeedingDraft>> feedings;
    std::vector<RecordEntry<MiteFallDraft>> miteFalls;
    std::vector<RecordEntry<QueenDraft>> queens; ///< `other`: the mother
    std::vector<Keeper> keepers;                 ///< to be written, one at most
    std::vector<Notifiable> notifiables;         ///< to be written
    std::vector<RecordEntry<SampleDraft>> samples;
    std::map<const SampleDraft*, AnswerEntry> answers; ///< of samples that are answered
    std::vector<RecordEntry<KitEndDraft>> kitEnds;
    std::vector<StripsOutEntry> stripsOut;
    std::vector<SettingEntry> settings;

    QHash<QString, int> yardByKey;
    QHash<QString, int> boxByKey;
    QHash<std::pair<int, QString>, int> standByKey; ///< yard's position, folded name
    QHash<qint64, int> yardById;
    QHash<qint64, int> boxById;
    QHash<qint64, int> standById;
    QHash<qint64, int> colonyById;
    std::vector<std::vector<int>> byLabel; ///< colonies of a label, by since

    void fault(Origin at, const char* column, const QString& what);
    KindCount& count(FileKind kind) { return report.counts[static_cast<size_t>(kind)]; }

    // Positions; −1, after a fault, where there is none.
    int yardNamed(const QString& name, Origin at);
    int boxNamed(const QString& name, Origin at);
    int colonyNamed(const ColonyRef& ref, Day day, Origin at, const char* column);
    /// The stand of this name in the yard, made where it is missing.
    int standFor(int yard, const PlaceDraft& place, Origin at);

    int addColony(ColonyEntry entry);
    int addStay(StayEntry entry);
    /// Faults a day outside the colony's life.
    bool checkLife(int colony, Day day, Origin at, const char* column);
    /// The colony for sentences: LABEL, or LABEL@SINCE where the label is used again.
    QString shown(int colony) const;
    QString lifeOf(int colony) const; ///< "2025-05-01 to 2026-03-14", "2025-05-01 on"
    /// "line 4 of colonies.csv", "the book"
    QString place(Origin at) const;
};

/// Everything below, in its order: afterwards the report has every fault and count.
void reconcile(Ledger& ledger);

/// Fills the ledger with what the book has of yards, boxes, stands, colonies, stays and lineage.
void readBook(Ledger& ledger);
void mergeBoxKinds(Ledger& ledger);
void mergeYards(Ledger& ledger);
void mergeColonies(Ledger& ledger);
void mergeLineage(Ledger& ledger);
void checkLabels(Ledger& ledger);
void checkLineage(Ledger& ledger);
void mergePlacements(Ledger& ledger);
void settleStays(Ledger& ledger);
void checkStands(Ledger& ledger);
void mergeVisits(Ledger& ledger);
void mergeTransfers(Ledger& ledger);
void mergeResults(Ledger& ledger);
void mergeTreatments(Ledger& ledger);
void mergeFeedings(Ledger& ledger);
void mergeMiteFalls(Ledger& ledger);
void mergeQueens(Ledger& ledger);
void mergeKeepers(Ledger& ledger);
void mergeNotifiables(Ledger& ledger);
/// After the results: a sample names its answer among them.
void mergeSamples(Ledger& ledger);
void mergeKitEnds(Ledger& ledger);
void mergeStripsOut(Ledger& ledger); ///< after the treatments
void mergeSettings(Ledger& ledger);
/// Records of the book dated after an end that the files give.
void checkEndedNow(Ledger& ledger);

} // namespace core::exchange
