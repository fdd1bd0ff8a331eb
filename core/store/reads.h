#pragma once

#include "core/model/row_codec.h"
#include "core/model/rows.h"
#include "core/model/settings.h"
#include "core/store/database.h"
#include "core/store/row_store.h"

#include <QStringView>

#include <functional>
#include <optional>
#include <utility>
#include <vector>

// Typed reads of a few rows. All throw Error(Book) when the file fails. Names match without regard to case.

namespace core::store {

template <class T> std::optional<T> find(const Database& db, qint64 id) {
    const auto cells = readRow(db, tableOf<T>(), id);
    return cells ? std::optional<T>(fromRow<T>(id, *cells)) : std::nullopt;
}

std::optional<Visit> visit(const Database& db, VisitId id); ///< with its signs
std::optional<Visit> visitOn(const Database& db, ColonyId colony, Day day);
std::vector<Visit> visitsOf(const Database& db, ColonyId colony, int most);         ///< newest first, with signs
std::vector<std::pair<qint64, Sign>> signRowsOf(const Database& db, VisitId visit); ///< ids in table visit_sign

std::optional<Yard> yardNamed(const Database& db, QStringView name);
std::optional<Stand> standNamed(const Database& db, YardId yard, QStringView name);
std::optional<BoxKind> boxKindNamed(const Database& db, QStringView name);
std::vector<Colony> coloniesLabelled(const Database& db, QStringView label); ///< by since
std::vector<Colony> coloniesIn(const Database& db, BoxKindId kind);          ///< living and ended
/// `LABEL`: the one of that label with the latest `since` on or before `on`; `LABEL@SINCE`: that one, whatever the day.
std::optional<Colony> colonyNamed(const Database& db, QStringView name, Day on);

std::vector<Yard> yards(const Database& db);                                   ///< closed ones too, natural order
std::vector<BoxKind> boxKinds(const Database& db);                             ///< natural order
std::vector<FixedThing> fixedThingsOf(const Database& db, YardId yard);        ///< by id
std::vector<Person> people(const Database& db);                                ///< those not active too, natural order
std::vector<MergeDay> mergeDaysOf(const Database& db, YardId yard);            ///< by day, then variant
std::vector<MergeChoice> choicesOf(const Database& db, MergeDayId mergeDay);   ///< by id
std::vector<MergeStrip> stripsOf(const Database& db, MergeDayId mergeDay);     ///< by position
std::vector<DivideChoice> divideChoicesOf(const Database& db, MergeDayId day); ///< by id
std::vector<DivideStrip> divideStripsOf(const Database& db, MergeDayId day);   ///< by position
std::vector<Stand> standsOf(const Database& db, YardId yard);                  ///< removed ones too, natural order
std::vector<MergeDay> mergeDaysOn(const Database& db, Day day);                ///< of all yards, by yard, then variant

std::optional<Placement> openPlacement(const Database& db, ColonyId colony);
/// In time order: by since, the colony's own row first, an open one last.
std::vector<Placement> placementsOf(const Database& db, ColonyId colony);
std::vector<Placement> placementsAt(const Database& db, StandId stand);          ///< by since
std::vector<Placement> placementsAt(const Database& db, StandId stand, Day day); ///< since <= day <= until

std::vector<Lineage> lineageOf(const Database& db, ColonyId colony);    ///< on either side, by day
std::vector<Transfer> transfersOf(const Database& db, ColonyId colony); ///< on either side, by day
std::vector<Result> resultsOf(const Database& db, ColonyId colony);     ///< that name it, by day
std::vector<Treatment> treatmentsOf(const Database& db, ColonyId colony);
std::vector<Result> resultsOf(const Database& db, YardId yard);
std::vector<Treatment> treatmentsOf(const Database& db, YardId yard);

std::vector<Feeding> feedingsOf(const Database& db, ColonyId colony);          ///< by day
std::vector<Feeding> feedingsBetween(const Database& db, Day from, Day until); ///< both days included; by day
std::vector<Queen> queensOf(const Database& db, ColonyId colony);              ///< that headed it, by since
std::vector<Queen> queensRaisedFrom(const Database& db, ColonyId mother);      ///< by since
std::vector<Queen> queens(const Database& db);                                 ///< all, by colony, then since
std::vector<FileMapping> fileMappings(const Database& db);                     ///< natural order
std::vector<Phrase> phrases(const Database& db);                               ///< natural order of the brief
std::vector<Question> questions(const Database& db);                           ///< natural order
std::vector<Result> results(const Database& db);                               ///< all, by day
std::vector<Treatment> treatments(const Database& db);                         ///< all, by day
std::vector<Sample> samples(const Database& db);                               ///< all, by day taken
std::vector<Sample> samplesOf(const Database& db, ColonyId colony);            ///< by day taken
std::optional<Sample> sampleAnsweredBy(const Database& db, ResultId result);
std::vector<MiteFall> miteFalls(const Database& db, Day from, Day until); ///< both days included; by day
std::vector<MiteFall> miteFallsOf(const Database& db, ColonyId colony);   ///< by day
std::vector<StripsOut> stripsOut(const Database& db);                     ///< all, by day
std::vector<KitEnd> kitEnds(const Database& db);                          ///< all, by day
std::vector<Notifiable> notifiables(const Database& db);                  ///< by place, then disease
std::optional<Keeper> keeper(const Database& db);
/// Of all colonies, both days included, with signs; by day, then colony. `yard`: of hives that stood there that day.
std::vector<Visit> visitsBetween(const Database& db, Day from, Day until, std::optional<YardId> yard);

Settings settings(const Database& db);
/// Id and cells (name, value) of a stored setting; nullopt while it is at its default.
std::optional<std::pair<qint64, Row>> settingRow(const Database& db, QStringView name);

/// Days with a visit to a colony whose hive stood in that yard that day, oldest first, each once.
std::vector<Day> visitDays(const Database& db, YardId yard);
/// The latest day of any record; nullopt in an empty book.
std::optional<Day> lastDay(const Database& db);
/// The keys of all visits by colony and day, from an index: no row is read.
void eachVisitKey(const Database& db, const std::function<void(VisitId, ColonyId, Day)>& take);

} // namespace core::store
