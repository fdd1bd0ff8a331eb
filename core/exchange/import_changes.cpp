#include "core/exchange/import_changes.h"

#include "core/exchange/import_order.h"
#include "core/model/row_codec.h"
#include "core/model/setting_table.h"

#include <algorithm>
#include <map>

namespace core::exchange {

namespace {

using edit::BulkInsert;
using edit::ChangeSet;

/// Writes the ledger's new and changed rows into a ChangeSet.
class ChangeBuilder {
public:
    explicit ChangeBuilder(Ledger& ledger) : m_ledger(ledger), m_order(importOrder(ledger)) {}

    ChangeSet build() {
        orderRecords(m_ledger, m_order);
        giveIds();
        reviveStands();
        updateColonies();
        updateStays();
        insertPlaces();
        insertRecords();
        writeSettings();
        m_change.text = sentence();
        return std::move(m_change);
    }

private:
    template <class Entry> static auto& at(std::vector<Entry>& entries, int position) {
        return entries[static_cast<size_t>(position)];
    }

    /// The ids of the table's new rows, from its next free one on.
    template <class Entry> void number(Table table, const std::vector<int>& order, std::vector<Entry>& entries) {
        qint64 id = m_ledger.c.nextId(table);
        for (const int i : order) at(entries, i).row.id.value = id++;
    }

    void giveIds() {
        number(Table::Yard, m_order.yards, m_ledger.yards);
        number(Table::BoxKind, m_order.boxes, m_ledger.boxes);
        number(Table::Stand, m_order.stands, m_ledger.stands);
        number(Table::Colony, m_order.colonies, m_ledger.colonies);
        number(Table::Placement, m_order.stays, m_ledger.stays);
        number(Table::Lineage, m_order.lineage, m_ledger.lineage);
        for (const int i : m_order.stands) {
            StandEntry& stand = at(m_ledger.stands, i);
            stand.row.yard = at(m_ledger.yards, stand.yard).row.id;
        }
        for (const int i : m_order.colonies) {
            ColonyEntry& colony = at(m_ledger.colonies, i);
            colony.row.box = at(m_ledger.boxes, colony.box).row.id;
        }
        for (const int i : m_order.stays) {
            StayEntry& stay = at(m_ledger.stays, i);
            stay.row.colony = colonyId(stay.colony);
            stay.row.stand = at(m_ledger.stands, stay.stand).row.id;
            stay.row.until = stay.until;
        }
        for (const int i : m_order.lineage) {
            LineageEntry& entry = at(m_ledger.lineage, i);
            entry.row.colony = colonyId(entry.colony);
            entry.row.into = colonyId(entry.into);
        }
    }

    ColonyId colonyId(int position) const { return m_ledger.colonies[static_cast<size_t>(position)].row.id; }

    template <class T> void update(const T& before, const T& after) {
        m_change.rows.push_back({tableOf<T>(), before.id.value, toRow(before), toRow(after)});
    }

    /// A stand taken off the plan stands again where a hive comes to it.
    void reviveStands() {
        std::vector<bool> revived(m_ledger.stands.size());
        for (const int i : m_order.stays) {
            const int position = at(m_ledger.stays, i).stand;
            StandEntry& stand = at(m_ledger.stands, position);
            if (!stand.row.removed || revived[static_cast<size_t>(position)]) continue;
            Stand back = stand.row;
            back.removed = false;
            update(stand.row, back);
            revived[static_cast<size_t>(position)] = true;
        }
    }

    void updateColonies() {
        for (const ColonyEntry& colony : m_ledger.colonies) {
            const bool otherQueen = colony.stored && colony.stored->queenBorn != colony.row.queenBorn;
            if (colony.endedNow() || otherQueen) update(*colony.stored, colony.row);
            if (!colony.endedNow()) continue;
            const auto& bearers = m_ledger.byLabel[static_cast<size_t>(colony.label.value)];
            m_labelHandedOn = m_labelHandedOn ||
                              std::ranges::any_of(bearers, [&](int i) { return at(m_ledger.colonies, i).isNew(); });
        }
    }

    void updateStays() {
        for (const StayEntry& stay : m_ledger.stays) {
            if (!stay.at.inBook() || stay.until == stay.row.until) continue;
            Placement now = stay.row;
            now.until = stay.until;
            update(stay.row, now);
            m_staysChange = true;
        }
    }

    /// New rows as one range, or one by one after the changes above: where a label or a stand changes hands, the one
    /// who had it must leave first.
    void insert(Table table, size_t count, bool oneByOne, const std::function<Row(qint64)>& row) {
        if (count == 0) return;
        const qint64 first = m_ledger.c.nextId(table);
        if (!oneByOne) {
            m_change.bulk.push_back({table, first, static_cast<qint64>(count), row});
            return;
        }
        for (qint64 i = 0; i < static_cast<qint64>(count); ++i)
            m_change.rows.push_back({table, first + i, std::nullopt, row(i)});
    }

    template <class Entry>
    void insertOrdered(Table table, const std::vector<int>& order, const std::vector<Entry>& entries, bool oneByOne) {
        insert(table, order.size(), oneByOne, [order, &entries](qint64 i) {
            return toRow(entries[static_cast<size_t>(order[static_cast<size_t>(i)])].row);
        });
    }

    void insertPlaces() {
        insertOrdered(Table::Yard, m_order.yards, m_ledger.yards, false);
        insertOrdered(Table::BoxKind, m_order.boxes, m_ledger.boxes, false);
        insertOrdered(Table::Stand, m_order.stands, m_ledger.stands, false);
        insertOrdered(Table::Colony, m_order.colonies, m_ledger.colonies, m_labelHandedOn);
        insertOrdered(Table::Placement, m_order.stays, m_ledger.stays, m_labelHandedOn || m_staysChange);
        insertOrdered(Table::Lineage, m_order.lineage, m_ledger.lineage, m_labelHandedOn);
    }

    void insertRecords() {
        const Ledger& l = m_ledger;
        insert(Table::Visit, l.visits.size(), m_labelHandedOn, [&l](qint64 i) {
            const auto& entry = l.visits[static_cast<size_t>(i)];
            Visit row = entry.draft->row;
            row.colony = l.colonies[static_cast<size_t>(entry.colony)].row.id;
            return toRow(row);
        });
        insertSigns();
        insert(Table::Transfer, l.transfers.size(), m_labelHandedOn, [&l](qint64 i) {
            const auto& entry = l.transfers[static_cast<size_t>(i)];
            Transfer row = entry.draft->row;
            row.from = l.colonies[static_cast<size_t>(entry.colony)].row.id;
            row.to = l.colonies[static_cast<size_t>(entry.other)].row.id;
            return toRow(row);
        });
        insertAbout(Table::Result, l.results);
        insertAbout(Table::Treatment, l.treatments);
        insertKept();
        insertPapers();
        insertSamples();
        insertStripsOut();
    }

    void insertKept() {
        const Ledger& l = m_ledger;
        insert(Table::Feeding, l.feedings.size(), m_labelHandedOn, [&l](qint64 i) {
            const auto& entry = l.feedings[static_cast<size_t>(i)];
            Feeding row = entry.draft->row;
            row.colony = l.colonies[static_cast<size_t>(entry.colony)].row.id;
            return toRow(row);
        });
        insert(Table::MiteFall, l.miteFalls.size(), m_labelHandedOn, [&l](qint64 i) {
            const auto& entry = l.miteFalls[static_cast<size_t>(i)];
            MiteFall row = entry.draft->row;
            row.colony = l.colonies[static_cast<size_t>(entry.colony)].row.id;
            return toRow(row);
        });
        insert(Table::Queen, l.queens.size(), m_labelHandedOn, [&l](qint64 i) {
            const auto& entry = l.queens[static_cast<size_t>(i)];
            Queen row = entry.draft->row;
            row.colony = l.colonies[static_cast<size_t>(entry.colony)].row.id;
            if (entry.other >= 0) row.mother = l.colonies[static_cast<size_t>(entry.other)].row.id;
            return toRow(row);
        });
    }

    /// Treatments of the files have their numbers by now, in their order.
    void insertStripsOut() {
        const Ledger& l = m_ledger;
        const qint64 first = m_ledger.c.nextId(Table::Treatment);
        std::map<const TreatmentDraft*, qint64> ids;
        for (size_t i = 0; i < l.treatments.size(); ++i) ids[l.treatments[i].draft] = first + static_cast<qint64>(i);
        insert(Table::StripsOut, l.stripsOut.size(), true, [&l, ids](qint64 i) {
            const StripsOutEntry& entry = l.stripsOut[static_cast<size_t>(i)];
            StripsOut row = entry.draft->row;
            row.colony = l.colonies[static_cast<size_t>(entry.colony)].row.id;
            row.treatment = TreatmentId{entry.fresh ? ids.at(entry.fresh) : entry.treatment};
            return toRow(row);
        });
    }

    void insertPapers() {
        const Ledger& l = m_ledger;
        insert(Table::Keeper, l.keepers.size(), false,
               [&l](qint64 i) { return toRow(l.keepers[static_cast<size_t>(i)]); });
        insert(Table::Notifiable, l.notifiables.size(), false,
               [&l](qint64 i) { return toRow(l.notifiables[static_cast<size_t>(i)]); });
    }

    /// Of the new results, once they are in order.
    std::map<const ResultDraft*, qint64> resultIds() const {
        std::map<const ResultDraft*, qint64> ids;
        qint64 id = m_ledger.c.nextId(Table::Result);
        for (const auto& entry : m_ledger.results) ids.emplace(entry.draft, id++);
        return ids;
    }

    void insertSamples() {
        const Ledger& l = m_ledger;
        insert(Table::Sample, l.samples.size(), m_labelHandedOn, [&l, ids = resultIds()](qint64 i) {
            const auto& entry = l.samples[static_cast<size_t>(i)];
            Sample row = entry.draft->row;
            row.colony = l.colonies[static_cast<size_t>(entry.colony)].row.id;
            if (const auto answer = l.answers.find(entry.draft); answer != l.answers.end())
                row.result = answer->second.inBook.value_or(
                    ResultId{answer->second.draft ? ids.at(answer->second.draft) : qint64(0)});
            return toRow(row);
        });
        insert(Table::KitEnd, l.kitEnds.size(), m_labelHandedOn, [&l](qint64 i) {
            const auto& entry = l.kitEnds[static_cast<size_t>(i)];
            KitEnd row = entry.draft->row;
            if (entry.colony >= 0) row.colony = l.colonies[static_cast<size_t>(entry.colony)].row.id;
            if (entry.other >= 0) row.yard = l.yards[static_cast<size_t>(entry.other)].row.id;
            return toRow(row);
        });
    }

    /// Rows about a colony or a yard.
    template <class Draft> void insertAbout(Table table, const std::vector<RecordEntry<Draft>>& entries) {
        const Ledger& l = m_ledger;
        insert(table, entries.size(), m_labelHandedOn, [&l, &entries](qint64 i) {
            const auto& entry = entries[static_cast<size_t>(i)];
            auto row = entry.draft->row;
            if (entry.colony >= 0)
                row.colony = l.colonies[static_cast<size_t>(entry.colony)].row.id;
            else
                row.yard = l.yards[static_cast<size_t>(entry.other)].row.id;
            return toRow(row);
        });
    }

    void insertSigns() {
        const qint64 firstVisit = m_ledger.c.nextId(Table::Visit);
        std::vector<std::pair<qint64, Sign>> signs;
        for (size_t i = 0; i < m_ledger.visits.size(); ++i) {
            const Signs of = m_ledger.visits[i].draft->row.signs;
            for (size_t s = 0; s < wordsOf<Sign>().size() && !of.empty(); ++s)
                if (of.has(static_cast<Sign>(s)))
                    signs.emplace_back(firstVisit + static_cast<qint64>(i), static_cast<Sign>(s));
        }
        const size_t count = signs.size();
        insert(Table::VisitSign, count, m_labelHandedOn, [signs = std::move(signs)](qint64 i) {
            const auto& [visit, sign] = signs[static_cast<size_t>(i)];
            return Row{visit, word(sign)};
        });
    }

    void writeSettings() {
        qint64 next = m_ledger.c.nextId(Table::Setting);
        for (const SettingEntry& entry : m_ledger.settings) {
            const auto stored = m_ledger.c.settingRow(entry.name);
            RowChange row{Table::Setting, stored ? stored->first : next++, std::nullopt, std::nullopt};
            if (stored) row.before = stored->second;
            if (entry.value != settingNamed(entry.name)->defaultValue) row.after = Row{entry.name, entry.value};
            m_change.rows.push_back(std::move(row));
        }
    }

    QString sentence() const {
        QStringList parts;
        for (const FileKind kind : kReadKinds) {
            const KindCount& count = m_ledger.report.of(kind);
            if (count.added + count.changed > 0)
                parts << QStringLiteral("%1 %2").arg(kindWords(kind)).arg(count.added + count.changed);
        }
        return Say::tr("Imported %1").arg(parts.join(QStringLiteral(", ")));
    }

    Ledger& m_ledger;
    ImportOrder m_order;
    ChangeSet m_change;
    bool m_labelHandedOn = false;
    bool m_staysChange = false;
};

} // namespace

edit::ChangeSet importChanges(Ledger& ledger) { return ChangeBuilder(ledger).build(); }

} // namespace core::exchange
