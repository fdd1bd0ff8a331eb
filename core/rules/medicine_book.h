#pragma once

#include "core/model/medicine_change.h"
#include "core/model/rows.h"
#include "core/model/settings.h"

#include <map>
#include <optional>
#include <vector>

// The medicine book: what each entry of it says, where the colonies stood, until when honey is not taken, how long it
// is kept. It shows what is recorded; labels, veterinarians and local law decide.

namespace core::rules {

/// The rows that the book is made of, whole tables in any order.
struct MedicineRows {
    std::vector<Yard> yards;
    std::vector<Stand> stands;
    std::vector<Colony> colonies;
    std::vector<Placement> placements;
    std::vector<Lineage> lineage;
    std::vector<Treatment> treatments;
    std::vector<StripsOut> stripsOut;
    std::vector<MedicineChange> changes; ///< by treatment, then line
    std::optional<Keeper> keeper;
    Settings settings;
};

/// Where a treated hive stood, from the treatment to the end of the waiting time.
struct MedicinePlace {
    ColonyId colony;
    StandId stand;
    Day since;
    std::optional<Day> until; ///< it was carried away or ended; not set: it stands there still
};

/// Of what is written of a withdrawal, what can be counted.
enum class Withdrawal {
    Counted,
    NotRecorded,    ///< days of withdrawal: never 0
    LastDayUnknown, ///< neither how long it was in the hive nor when it came out is recorded
    StillIn,        ///< its time is over and strips are in the hive: it counts from the day they come out
};

struct MedicineEntry {
    Treatment row;                       ///< as it stands; of a struck one as it stood last
    bool struck = false;                 ///< taken back: no longer in force, still to be read
    std::vector<MedicineChange> changes; ///< by line of the history
    std::vector<ColonyId> colonies;      ///< treated, in natural order
    std::vector<MedicinePlace> places;   ///< by colony, then day
    std::vector<StripsOut> out;          ///< by day
    Day lastDay;                         ///< of the treatment; where strips came out later, the last of these days
    Withdrawal withdrawal = Withdrawal::NotRecorded;
    std::optional<Day> honeyFrom; ///< no honey before; exactly where it is counted
    Day keptUntil;                ///< the first day on which it need not be kept any more
};

/// Which entries: all that is set must hold. The period is met where a day of the treatment lies in it.
struct MedicineAsked {
    std::optional<Day> from = {};
    std::optional<Day> until = {};
    std::optional<YardId> yard = {};     ///< the yard's, or a colony's that stood there that day
    std::optional<ColonyId> colony = {}; ///< its own, or its yard's that day
};

/// Strips of a treatment that no record says are out.
struct StripsIn {
    TreatmentId treatment;
    ColonyId colony; ///< treated
    ColonyId hive;   ///< living: the colony itself, or the one it was united into since
    Day due;         ///< the treatment's last day
};

class MedicineBook {
public:
    MedicineBook(MedicineRows rows, Day today);

    const MedicineRows& rows() const { return m_rows; }
    Day today() const { return m_today; }

    std::vector<MedicineEntry> entries(const MedicineAsked& asked = {}) const; ///< by day, then number
    /// By due day, then colony; of treatments with days in the hive, but not of antibiotics. Those whose last day is
    /// more than a year past are asked for no more (an assumption).
    std::vector<StripsIn> stripsIn() const;

    const Yard* yard(YardId id) const;
    const Colony* colony(ColonyId id) const;
    const Stand* stand(StandId id) const;
    /// LABEL, or LABEL@SINCE where that names another on the day.
    QString name(ColonyId id, Day day) const;
    QString yardName(YardId id) const;
    /// The yard in which its hive stands, or stood last.
    QString yardNow(ColonyId id) const;
    /// "K5", or the yard's name.
    QString subject(const Treatment& t) const;
    std::vector<ColonyId> treated(const Treatment& t) const;
    /// The living colony that its hive went into by unions, or itself, as it was on the day.
    std::optional<ColonyId> hiveOn(ColonyId id, Day day) const;

private:
    MedicineEntry entryOf(const Treatment& row, bool struck, std::vector<MedicineChange> changes) const;
    void addOfTreatment(TreatmentId id, std::vector<MedicineEntry>& entries) const;
    void count(MedicineEntry& entry) const;
    void addPlaces(MedicineEntry& entry) const;
    bool anyIn(const MedicineEntry& entry) const;
    bool fits(const MedicineEntry& entry, const MedicineAsked& asked) const;
    bool stoodThen(const Placement& p, Day day) const;
    bool isOut(TreatmentId treatment, ColonyId colony) const;

    MedicineRows m_rows;
    Day m_today;
    std::map<TreatmentId, const Treatment*> m_treatments;
    std::map<TreatmentId, std::vector<MedicineChange>> m_changes;
    std::map<TreatmentId, std::vector<StripsOut>> m_out;
    std::map<ColonyId, const Colony*> m_colonies;
    std::map<QString, std::vector<const Colony*>> m_byLabel; ///< folded; by since
    std::map<ColonyId, std::vector<Placement>> m_places;     ///< in time order
    std::map<YardId, std::vector<Placement>> m_ofYard;
    std::map<YardId, const Yard*> m_yards;
    std::map<StandId, const Stand*> m_stands;
    std::map<ColonyId, Lineage> m_unitedInto;
};

} // namespace core::rules
