#include "core/edit/change_writer.h"
#include "core/edit/history_detail.h"
#include "core/edit/history_reader.h"
#include "core/edit/medicine_lines.h"
#include "core/edit/session.h"
#include "core/edit/session_private.h"
#include "core/edit/store_context.h"
#include "core/edit/whole_book.h"
#include "core/store/backup.h"
#include "core/store/note_words.h"
#include "core/store/reads.h"
#include "core/store/snapshot_reader.h"
#include "core/store/visit_list.h"
#include "core/store/watched.h"
#include "core/store/yard_days.h"

#include <QFileInfo>

#include <algorithm>

namespace core::edit {

HistoryLine shownLine(const store::HistoryRow& row) {
    HistoryLine line;
    line.seq = row.seq;
    line.at = QDateTime::fromString(row.at, Qt::ISODateWithMs);
    line.by = row.by;
    line.text = row.sentence;
    line.reason = row.reason;
    line.kind = static_cast<HistoryLine::Kind>(row.kind);
    line.of = row.ofSeq;
    return line;
}

QString Session::path() const { return d->db->path(); }

bool Session::readOnly() const { return d->db->readOnly(); }

const Clock& Session::clock() const { return *d->clock; }

std::vector<HistoryLine> Session::history(int most) const {
    std::vector<HistoryLine> lines;
    for (const store::HistoryRow& row : store::listHistory(*d->db, most)) lines.push_back(shownLine(row));
    return lines;
}

HistoryPage Session::historyPage(const HistoryFilter& filter, std::optional<qint64> before, int most, int look) const {
    const store::ReadTransaction steady(*d->db);
    return HistoryReader(*d->db, filter).page(before, most, look);
}

std::optional<HistoryDetail> Session::historyDetail(qint64 seq) const {
    const store::ReadTransaction steady(*d->db);
    return edit::historyDetail(*d->db, seq);
}

Snapshot Session::snapshot(Day on) const { return store::readSnapshot(*d->db, on); }

Snapshot Session::snapshotForHolds() const { return store::readForHolds(*d->db); }

Snapshot Session::yardGlance(YardId yard, Day on) const { return store::readYardGlance(*d->db, yard, on); }

std::vector<Yard> Session::yards() const {
    std::vector<Yard> all = store::yards(*d->db);
    std::erase_if(all, [](const Yard& yard) { return yard.closed; });
    return all;
}

std::vector<BoxKind> Session::boxKinds() const { return store::boxKinds(*d->db); }

Settings Session::settings() const { return store::settings(*d->db); }

std::vector<FixedThing> Session::fixedThingsOf(YardId id) const { return store::fixedThingsOf(*d->db, id); }

std::vector<MergeDay> Session::mergeDaysOn(Day day) const { return store::mergeDaysOn(*d->db, day); }
std::vector<MergeDay> Session::mergeDays(YardId yard) const { return store::mergeDaysOf(*d->db, yard); }

std::vector<MergeChoice> Session::choicesOf(MergeDayId day) const { return store::choicesOf(*d->db, day); }

std::vector<MergeStrip> Session::stripsOf(MergeDayId day) const { return store::stripsOf(*d->db, day); }

std::vector<DivideChoice> Session::divideChoicesOf(MergeDayId day) const { return store::divideChoicesOf(*d->db, day); }

std::vector<DivideStrip> Session::divideStripsOf(MergeDayId day) const { return store::divideStripsOf(*d->db, day); }

std::vector<Person> Session::people() const { return store::people(*d->db); }

std::vector<Feeding> Session::feedingsOf(ColonyId id) const { return store::feedingsOf(*d->db, id); }

std::vector<Feeding> Session::feedingsBetween(Day from, Day until) const {
    return store::feedingsBetween(*d->db, from, until);
}

std::vector<Queen> Session::queensOf(ColonyId id) const { return store::queensOf(*d->db, id); }

std::vector<Queen> Session::queens() const { return store::queens(*d->db); }

std::vector<FileMapping> Session::fileMappings() const { return store::fileMappings(*d->db); }

std::vector<Phrase> Session::phrases() const { return store::phrases(*d->db); }

std::vector<Question> Session::questions() const { return store::questions(*d->db); }

std::vector<Result> Session::results() const { return store::results(*d->db); }

std::vector<Treatment> Session::treatments() const { return store::treatments(*d->db); }

std::vector<MedicineChange> Session::medicineChanges() const { return edit::medicineChanges(*d->db); }

std::vector<Sample> Session::samples() const { return store::samples(*d->db); }

std::vector<Sample> Session::samplesOf(ColonyId id) const { return store::samplesOf(*d->db, id); }

std::vector<MiteFall> Session::miteFalls(Day from, Day until) const { return store::miteFalls(*d->db, from, until); }

std::vector<MiteFall> Session::miteFallsOf(ColonyId id) const { return store::miteFallsOf(*d->db, id); }

std::vector<StripsOut> Session::stripsOut() const { return store::stripsOut(*d->db); }

std::vector<KitEnd> Session::kitEnds() const { return store::kitEnds(*d->db); }

std::vector<Notifiable> Session::notifiables() const { return store::notifiables(*d->db); }

std::optional<Keeper> Session::keeper() const { return store::keeper(*d->db); }

QString Session::bookTitle() const { return QFileInfo(path()).completeBaseName(); }

QString Session::bookId() const { return d->db->bookId(); }

std::optional<Yard> Session::yard(YardId id) const { return store::find<Yard>(*d->db, id.value); }

std::vector<Stand> Session::standsOf(YardId id) const { return store::standsOf(*d->db, id); }

std::optional<Colony> Session::colony(ColonyId id) const { return store::find<Colony>(*d->db, id.value); }

std::vector<Placement> Session::placementsOf(ColonyId id) const { return store::placementsOf(*d->db, id); }

std::vector<Lineage> Session::lineageOf(ColonyId id) const { return store::lineageOf(*d->db, id); }

std::vector<Transfer> Session::transfersOf(ColonyId id) const { return store::transfersOf(*d->db, id); }

std::vector<Result> Session::resultsOf(ColonyId id) const { return store::resultsOf(*d->db, id); }

std::vector<Result> Session::resultsOf(YardId id) const { return store::resultsOf(*d->db, id); }

std::vector<Treatment> Session::treatmentsOf(ColonyId id) const { return store::treatmentsOf(*d->db, id); }

std::vector<Treatment> Session::treatmentsOf(YardId id) const { return store::treatmentsOf(*d->db, id); }

std::vector<Attachment> Session::attachmentsOf(qint64 seq) const { return edit::attachmentsOf(*d->db, seq); }

void Session::read(const std::function<void(const EditContext&)>& take, const Progress& progress) const {
    const store::ReadTransaction steady(*d->db);
    std::optional<store::Watched> watched;
    if (progress.stopAsked()) watched.emplace(d->db->handle(), progress);
    take(StoreContext(*d->db, d->clock->today()));
}

std::vector<Visit> Session::visitsOf(ColonyId id, int most) const { return store::visitsOf(*d->db, id, most); }

std::vector<Visit> Session::visitsBetween(Day from, Day until, std::optional<YardId> yard) const {
    return store::visitsBetween(*d->db, from, until, yard);
}

std::vector<VisitId> Session::visitsFound(const VisitFilter& filter, VisitOrder order, int most) const {
    return store::visitsFound(*d->db, filter, order, most);
}

VisitTotals Session::visitTotals(const VisitFilter& filter) const { return store::visitTotals(*d->db, filter); }

std::vector<Visit> Session::visits(const std::vector<VisitId>& ids) const {
    const store::ReadTransaction steady(*d->db);
    std::vector<Visit> visits;
    for (const VisitId id : ids)
        if (auto visit = store::visit(*d->db, id)) visits.push_back(*std::move(visit));
    return visits;
}

NotesFound Session::notesFound(const QString& typed, int most) const {
    const store::ReadTransaction steady(*d->db);
    return store::notesFound(*d->db, typed, most);
}

std::vector<Day> Session::visitDays(YardId yard) const { return store::visitDays(*d->db, yard); }

std::vector<RecordedDay> Session::recordedDays(YardId yard) const { return store::recordedDays(*d->db, yard); }

std::vector<StandUse> Session::standUses(YardId yard) const { return store::standUses(*d->db, yard); }

void Session::backUp(const QString& to) const { store::copyBook(*d->db, to); }

QStringList Session::check() const { return bookProblems(*d->db); }

std::optional<Day> Session::lastDay() const { return store::lastDay(*d->db); }

} // namespace core::edit
