#include "core/store/table_walk.h"

#include <algorithm>

namespace core::store {

namespace {

constexpr int kDeepest = 20; ///< as SQLite's own trees

class TreeWalk {
public:
    TreeWalk(const RawPages& pages, FoundTable& table, UsedPages& used, const std::function<bool()>& goOn)
        : m_pages(pages), m_table(table), m_used(used), m_goOn(goOn) {}

    void down(qint64 number, IdSpan span, int depth) {
        if (m_stopped || (m_goOn && !m_goOn())) {
            m_stopped = true;
            return;
        }
        const auto page =
            depth < kDeepest && m_used.insert(number).second ? rawTablePage(m_pages, number) : std::nullopt;
        if (!page) return lose(span, true);
        if (page->leaf) return leaf(*page, span);
        branch(*page, span, depth);
    }

private:
    void lose(IdSpan span, bool branch) {
        ++m_table.badPages;
        m_table.lost.push_back(span);
        m_table.branchLost = m_table.branchLost || branch;
    }

    void branch(const RawPage& page, IdSpan span, int depth) {
        if (!page.sound) lose(span, true);
        qint64 from = span.from;
        for (const RawCell& cell : page.cells) {
            if (cell.key < from || cell.key > span.to) continue; // said already: the page is not sound
            down(cell.child, {from, cell.key}, depth + 1);
            if (cell.key == INT64_MAX) return;
            from = cell.key + 1;
        }
        if (from <= span.to) down(page.last, {from, span.to}, depth + 1);
    }

    void leaf(const RawPage& page, IdSpan span) {
        std::map<qint64, FoundRow> rows;
        std::vector<qint64> torn; ///< rows whose record goes on where nothing can be read
        bool sound = page.sound;
        for (const RawCell& cell : page.cells) {
            std::vector<qint64> more;
            auto record = wholeRecord(m_pages, cell, more);
            for (const qint64 number : more)
                if (!m_used.insert(number).second) record.reset();
            const bool within = span.has(cell.key);
            const bool read = record && rawRecord(*record, m_table.shape);
            if (!within || (!read && cell.overflow == 0)) sound = false;
            if (within && read) rows.try_emplace(cell.key, FoundRow{*std::move(record), true});
            if (within && !read) torn.push_back(cell.key);
        }
        if (!sound) lose(span, false);
        for (auto& [id, row] : rows) {
            row.sure = sound;
            m_table.rows.insert_or_assign(id, std::move(row));
        }
        for (const qint64 id : torn) m_table.lost.push_back({id, id});
    }

    const RawPages& m_pages;
    FoundTable& m_table;
    UsedPages& m_used;
    const std::function<bool()>& m_goOn;
    bool m_stopped = false;
};

} // namespace

bool FoundTable::mayLack(qint64 id) const {
    return std::ranges::any_of(lost, [id](const IdSpan& span) { return span.has(id); });
}

void walkTable(const RawPages& pages, FoundTable& table, UsedPages& used, const std::function<bool()>& goOn) {
    if (table.root < 1) {
        table.lost.push_back({});
        table.branchLost = true;
        return;
    }
    TreeWalk(pages, table, used, goOn).down(table.root, {}, 0);
}

bool wholeLeaf(const RawPages& pages, qint64 number, const RecordShape& shape, std::map<qint64, FoundRow>& rows,
               UsedPages& used) {
    const auto page = rawTablePage(pages, number);
    if (!page || !page->leaf || !page->sound) return false;
    for (const RawCell& cell : page->cells) {
        std::vector<qint64> more;
        auto record = wholeRecord(pages, cell, more);
        for (const qint64 next : more)
            if (!used.insert(next).second) record.reset();
        if (!record || !rawRecord(*record, shape)) return false;
        rows.try_emplace(cell.key, FoundRow{*std::move(record), true});
    }
    return true;
}

} // namespace core::store
