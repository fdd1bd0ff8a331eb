#include "core/edit/history_reader.h"

#include "core/base/natural_order.h"
#include "core/edit/session_private.h"

namespace core::edit {

namespace {

QString storedMoment(const std::optional<QDateTime>& at) {
    return at ? at->toUTC().toString(Qt::ISODateWithMs) : QString();
}

} // namespace

HistoryLine lineNow(const store::Database& db, const store::HistoryRow& row) {
    HistoryLine line = shownLine(row);
    if (row.kind != store::HistoryKind::Do) return line;
    const auto latest = store::latestOfStep(db, row.seq);
    line.takenBack = latest && latest->kind == store::HistoryKind::Undo;
    return line;
}

HistoryReader::HistoryReader(const store::Database& db, const HistoryFilter& filter)
    : m_db(db),
      m_text(folded(filter.text.trimmed())),
      m_from(storedMoment(filter.from)),
      m_until(storedMoment(filter.until)) {
    if (filter.colony) m_colony.emplace(db, *filter.colony);
    if (filter.yard) m_yard.emplace(db, *filter.yard);
}

bool HistoryReader::fits(const store::HistoryRow& line) const {
    if (!m_from.isEmpty() && line.at < m_from) return false;
    if (!m_until.isEmpty() && line.at >= m_until) return false;
    const auto has = [&](const QString& text) { return folded(text).contains(m_text); };
    if (!m_text.isEmpty() && !has(line.sentence) && !has(line.by) && !has(line.reason)) return false;
    if (!m_colony && !m_yard) return true;
    const HistoryRecord record = decode(store::historyChanges(m_db, line.seq));
    return (!m_colony || m_colony->of(line.seq, record)) && (!m_yard || m_yard->of(line.seq, record));
}

HistoryPage HistoryReader::page(std::optional<qint64> before, int most, int look) const {
    HistoryPage page;
    store::eachHistoryBefore(m_db, before, [&](const store::HistoryRow& line) {
        if (page.lines.size() == static_cast<size_t>(most) || look-- == 0) return false;
        if (fits(line)) page.lines.push_back(lineNow(m_db, line));
        page.next = line.seq;
        return true;
    });
    if (page.next == 1) page.next.reset(); // the first line of all
    return page;
}

} // namespace core::edit
