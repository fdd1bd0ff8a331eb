#include "core/edit/history_detail.h"

#include "core/edit/change_words.h"
#include "core/edit/edit_checks.h"
#include "core/edit/history_reader.h"
#include "core/edit/rows_then.h"
#include "core/edit/store_context.h"

namespace core::edit {

namespace {

class NamesThen : public RowNames {
public:
    NamesThen(const store::Database& db, qint64 seq, const HistoryRecord& record, bool standing)
        : m_rows(db, seq, record, standing), m_context(db, Day{}) {}

    QString colony(ColonyId id, std::optional<Day> day) const override {
        const auto colony = find<Colony>(id.value);
        if (!colony) return unknown();
        if (m_context.colony(id) != colony) return colony->label; // as it was
        return shownName(m_context, *colony, day.value_or(colony->since));
    }
    QString yard(YardId id) const override {
        const auto yard = find<Yard>(id.value);
        return yard ? yard->name : unknown();
    }
    QString stand(StandId id) const override {
        const auto stand = find<Stand>(id.value);
        return stand ? Edits::tr("%1 in %2").arg(stand->name, yard(stand->yard)) : unknown();
    }
    QString boxKind(BoxKindId id) const override {
        const auto kind = find<BoxKind>(id.value);
        return kind ? kind->name : unknown();
    }
    QString visit(VisitId id) const override {
        const auto visit = find<Visit>(id.value);
        if (!visit) return unknown();
        return Edits::tr("%1 on %2").arg(colony(visit->colony, visit->day), isoText(visit->day));
    }

private:
    static QString unknown() { return Edits::tr("(not known any more)"); }
    template <class T> std::optional<T> find(qint64 id) const {
        const auto row = m_rows.row(tableOf<T>(), id);
        return row ? std::optional<T>(fromRow<T>(id, *row)) : std::nullopt;
    }

    RowsThen m_rows;
    StoreContext m_context;
};

} // namespace

std::optional<HistoryDetail> historyDetail(const store::Database& db, qint64 seq, int most, const Progress& progress) {
    const auto line = store::readHistory(db, seq);
    if (!line) return std::nullopt;
    HistoryDetail detail;
    detail.line = lineNow(db, *line);
    const HistoryRecord record = decode(line->changes);
    const auto latest = store::latestOfStep(db, line->ofSeq.value_or(seq));
    const bool standing = latest && latest->seq >= seq && latest->kind != store::HistoryKind::Undo;
    const NamesThen names(db, seq, record, standing);
    for (const RowRange& range : record.inserted)
        detail.changes.push_back(rangeWords(range.table, range.count, ChangeWords::How::Added));
    for (const RowRange& range : record.deleted)
        detail.changes.push_back(rangeWords(range.table, range.count, ChangeWords::How::TakenAway));
    for (const RowChange& row : record.rows) {
        if (!progress.goesOn()) throw Stopped();
        if (detail.changes.size() < static_cast<size_t>(most))
            detail.changes.push_back(changeWords(row, names));
        else
            ++detail.more;
    }
    return detail;
}

} // namespace core::edit
