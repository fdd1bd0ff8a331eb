#include "core/edit/salvage_lost.h"

#include "core/edit/change_fields.h"
#include "core/edit/edit_checks.h"
#include "core/store/row_store.h"

#include <algorithm>
#include <string>

namespace core::edit {

namespace {

constexpr qsizetype kMostRuns = 40;

/// The cell of the first of these columns that the table has.
std::optional<Value> cellNamed(Table table, const Row& row, std::initializer_list<const char*> names) {
    const auto columns = columnsOf(table);
    for (const char* name : names)
        for (size_t i = 0; i < columns.size() && i < row.size(); ++i)
            if (std::string_view(columns[i]) == name && row[i].index() != 0) return row[i];
    return std::nullopt;
}

QString textIn(const std::optional<Value>& cell) {
    const auto* text = cell ? std::get_if<QString>(&*cell) : nullptr;
    return text ? *text : QString();
}

bool isFoulbrood(const Row& sign) {
    const auto* word = std::get_if<QString>(&sign[1]);
    return word && (*word == QLatin1String("afb") || *word == QLatin1String("efb"));
}

std::optional<qint64> besideIn(const store::Database& db, Table table, qint64 id, bool before) {
    const std::string sql = std::string(before ? "SELECT max(id) FROM " : "SELECT min(id) FROM ") + tableName(table) +
                            (before ? " WHERE id < ?" : " WHERE id > ?");
    store::Statement row = db.prepare(sql);
    row.bind(1, id);
    return row.step() && !row.isNull(0) ? std::optional(row.integer(0)) : std::nullopt;
}

std::vector<store::IdSpan> joined(std::vector<store::IdSpan> spans) {
    std::ranges::sort(spans, {}, &store::IdSpan::from);
    std::vector<store::IdSpan> all;
    for (const store::IdSpan& span : spans) {
        if (!all.empty() && (all.back().to == INT64_MAX || span.from <= all.back().to + 1))
            all.back().to = std::max(all.back().to, span.to);
        else
            all.push_back(span);
    }
    return all;
}

} // namespace

QString LostWords::labelOf(qint64 colony) const {
    store::Statement row = m_kept.prepare("SELECT label FROM colony WHERE id = ?");
    row.bind(1, colony);
    if (row.step()) return row.text(0);
    const auto told = m_told.of(Table::Colony, colony);
    return told.row ? textIn(cellNamed(Table::Colony, *told.row, {"label"})) : Edits::tr("a hive that is lost");
}

QString LostWords::named(Table table, const Row& row) const {
    if (table == Table::VisitSign) return signNamed(row);
    QString name = textIn(cellNamed(table, row, {"label", "name", "short", "place"}));
    if (name.isEmpty())
        if (const auto colony = cellNamed(table, row, {"colony", "giver", "moved"}))
            if (const auto* id = std::get_if<qint64>(&*colony)) name = labelOf(*id);
    const QString day = textIn(cellNamed(table, row, {"day", "since"}));
    if (name.isEmpty()) return day;
    return day.isEmpty() ? name : QStringLiteral("%1 %2").arg(name, day);
}

QString LostWords::between(Table table, qint64 from, qint64 to) const {
    const auto name = [&](const std::optional<qint64>& id) {
        const auto row = id ? store::readRow(m_kept, table, *id) : std::nullopt;
        return row ? named(table, *row) : QString();
    };
    const QString before = name(besideIn(m_kept, table, from, true));
    const QString after = name(besideIn(m_kept, table, to, false));
    if (!before.isEmpty() && !after.isEmpty()) return Edits::tr(", written between %1 and %2").arg(before, after);
    if (!before.isEmpty()) return Edits::tr(", written after %1").arg(before);
    return after.isEmpty() ? QString() : Edits::tr(", written before %1").arg(after);
}

QString LostWords::writtenBy(Table table, qint64 id) const {
    const auto told = m_told.of(table, id);
    const auto line = told.seq > 0 && !told.byBackup ? m_told.line(told.seq) : std::nullopt;
    return line ? Edits::tr(" (“%1”, %2)").arg(line->sentence, line->at.left(10)) : QString();
}

/// "A3 2026-09-04: American foulbrood"
QString LostWords::signNamed(const Row& row) const {
    const auto* visit = std::get_if<qint64>(&row[0]);
    const auto* sign = std::get_if<QString>(&row[1]);
    if (!visit || !sign) return {};
    auto of = store::readRow(m_kept, Table::Visit, *visit);
    if (!of) of = m_told.of(Table::Visit, *visit).row;
    return Edits::tr("%1: %2").arg(of ? named(Table::Visit, *of) : Edits::tr("a visit that is lost"), wordText(*sign));
}

/// What of the lost signs was foulbrood, or may have been: by name, whatever else is too much to name.
QStringList LostWords::foulbrood(const std::set<qint64>& lost, bool more) const {
    QStringList words;
    QStringList known;
    qint64 unknown = 0;
    for (const qint64 id : lost) {
        const auto told = m_told.of(Table::VisitSign, id);
        unknown += !told.row;
        if (told.row && isFoulbrood(*told.row)) known << signNamed(*told.row);
    }
    if (!known.isEmpty())
        words << Edits::tr("Signs of foulbrood are among the lost ones: %1.").arg(known.join(QStringLiteral("; ")));
    if (unknown > 0)
        words << Edits::tr("Of the lost signs nothing says which %1 were: each may have been foulbrood.").arg(unknown);
    if (more) words << Edits::tr("Signs of foulbrood may be among those of which nothing says how many there were.");
    return words;
}

QStringList LostWords::ofSignsAlone() const {
    QStringList names;
    store::Statement row = m_kept.prepare("SELECT visit, sign FROM visit_sign WHERE sign IN ('afb', 'efb') AND visit "
                                          "NOT IN (SELECT id FROM visit) ORDER BY visit");
    while (row.step()) names << signNamed({row.integer(0), row.text(1)});
    if (names.isEmpty()) return {};
    return {Edits::tr("Signs of foulbrood whose visit is lost, so that they cannot stand in the new book: %1.")
                .arg(names.join(QStringLiteral("; ")))};
}

QStringList LostWords::of(Table table, const std::set<qint64>& lost, const std::vector<store::IdSpan>& spans) const {
    QStringList words;
    if (table == Table::VisitSign) words << foulbrood(lost, !spans.empty());
    qint64 more = 0;
    for (auto at = lost.begin(); at != lost.end();) {
        const qint64 first = *at;
        qint64 last = first;
        QStringList names;
        for (; at != lost.end() && *at <= last + 1; ++at) {
            last = *at;
            const auto told = m_told.of(table, last);
            if (told.row && names.size() < 12) names << named(table, *told.row);
        }
        if (words.size() >= kMostRuns) {
            more += last - first + 1;
            continue;
        }
        const QString what =
            Edits::tr("Lost: %1").arg(recordsText(table, last - first + 1)) +
            (names.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(names.join(QStringLiteral(", ")))) +
            between(table, first, last) + writtenBy(table, first) + u'.';
        words << what;
    }
    if (more > 0) words << Edits::tr("Lost besides: %1.").arg(recordsText(table, more));
    for (const store::IdSpan& span : joined(spans)) {
        if (words.size() > 2 * kMostRuns) break;
        words << Edits::tr("There may have been more among %1%2: how many, nothing says.")
                     .arg(recordsText(table, 2).section(u' ', 1), span.from == INT64_MIN && span.to == INT64_MAX
                                                                      ? QString()
                                                                      : between(table, span.from, span.to));
    }
    return words;
}

} // namespace core::edit
