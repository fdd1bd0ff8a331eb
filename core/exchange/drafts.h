#pragma once

#include "core/exchange/name_pool.h"
#include "core/model/rows.h"

#include <QHash>
#include <QString>

#include <compare>
#include <optional>
#include <vector>

// The rows of the files, typed and in range each by itself, with their references still by name.

namespace core::exchange {

/// Where a row stands. `line` 0: in the book.
struct Origin {
    qint32 file = -1; ///< position among the import's files
    qint32 line = 0;
    friend auto operator<=>(Origin, Origin) = default;
    bool inBook() const { return line == 0; }
};

struct YardDraft {
    Origin at;
    Yard row;
};

struct BoxKindDraft {
    Origin at;
    BoxKind row;
};

/// A place as colonies and placements name it.
struct PlaceDraft {
    QString yard;
    QString stand;
    MmPoint point;
    std::optional<int> headingDeg;
};

struct ColonyDraft {
    Origin at;
    Colony row; ///< `box` not set
    LabelId label;
    PlaceDraft place;
    QString box;
};

struct PlacementDraft {
    Origin at;
    ColonyRef colony;
    Day day;
    PlaceDraft place;
};

struct VisitDraft {
    Origin at;
    ColonyRef colony;
    Visit row; ///< `colony` not set
};

struct TransferDraft {
    Origin at;
    ColonyRef from;
    ColonyRef to;
    Transfer row; ///< colonies not set
};

/// A row about a colony or a yard: the one that is named.
struct SubjectDraft {
    std::optional<ColonyRef> colony;
    QString yard;
};

struct ResultDraft {
    Origin at;
    SubjectDraft subject;
    Result row;
};

struct TreatmentDraft {
    Origin at;
    SubjectDraft subject;
    Treatment row;
};

struct LineageDraft {
    Origin at;
    ColonyRef colony;
    ColonyRef into;
    Lineage row; ///< colonies not set
};

struct SettingDraft {
    Origin at;
    QString name;
    QString value; ///< with decimal points
};

/// What came of one strip of a merge day.
struct ClosingDraft {
    Origin at;
    QString yard;
    Day day;
    ColonyRef moved;
    ColonyRef host;
    StripOutcome outcome = StripOutcome::Done;
    QString note;
};

struct FeedingDraft {
    Origin at;
    ColonyRef colony;
    Feeding row; ///< `colony` not set
};

struct MiteFallDraft {
    Origin at;
    ColonyRef colony;
    MiteFall row; ///< `colony` not set
};

struct QueenDraft {
    Origin at;
    ColonyRef colony;
    std::optional<ColonyRef> mother;
    Queen row; ///< colonies not set
};

struct KeeperDraft {
    Origin at;
    Keeper row;
};

struct NotifiableDraft {
    Origin at;
    Notifiable row;
};

struct SampleDraft {
    Origin at;
    ColonyRef colony;
    Sample row;                    ///< `colony` and `result` not set
    std::optional<Verdict> answer; ///< its result's: positive or negative
    QString paper;                 ///< likewise
};

/// Ends of quarantined kit.
struct KitEndDraft {
    Origin at;
    std::optional<ColonyRef> colony;
    QString yard; ///< blank: the store room
    KitEnd row;   ///< colony and yard not set
};

/// What a treatment left in a hive is out.
struct StripsOutDraft {
    Origin at;
    ColonyRef colony; ///< treated
    QString yard;     ///< empty: the treatment is the colony's own
    Day treated;
    QString product;
    StripsOut row; ///< treatment and colony not set
};

struct Drafts {
    NamePool names;
    std::vector<QString> files; ///< path by Origin::file
    /// By Origin::file: the file's own name of a column of ours, where it has another.
    std::vector<QHash<QString, QString>> columns;
    QString shownColumn(qint32 file, const QString& ours) const {
        const auto of = static_cast<size_t>(file);
        return file < 0 || of >= columns.size() ? ours : columns[of].value(ours, ours);
    }
    std::vector<YardDraft> yards;
    std::vector<BoxKindDraft> boxKinds;
    std::vector<ColonyDraft> colonies;
    std::vector<PlacementDraft> placements;
    std::vector<VisitDraft> visits;
    std::vector<TransferDraft> transfers;
    std::vector<ResultDraft> results;
    std::vector<TreatmentDraft> treatments;
    std::vector<LineageDraft> lineage;
    std::vector<SettingDraft> settings;
    std::vector<ClosingDraft> closings;
    std::vector<FeedingDraft> feedings;
    std::vector<MiteFallDraft> miteFalls;
    std::vector<QueenDraft> queens;
    std::vector<KeeperDraft> keepers;
    std::vector<NotifiableDraft> notifiables;
    std::vector<SampleDraft> samples;
    std::vector<KitEndDraft> kitEnds;
    std::vector<StripsOutDraft> stripsOut;

    /// Of no use any more once a row has a fault.
    void dropRows();
};

} // namespace core::exchange
