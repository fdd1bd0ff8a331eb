#pragma once

#include "core/store/database.h"
#include "core/store/reads.h"
#include "core/store/row_store.h"

#include <QTemporaryDir>

#include <memory>

/// A book in a folder of its own, filled row by row without the edits: what the store does with rows is under test.
class TestBook {
public:
    TestBook() : m_path(m_dir.filePath("book.yardwright")), m_db(core::store::Database::create(m_path)) { hurry(); }

    const QString& path() const { return m_path; }
    QString folder() const { return m_dir.path(); }
    core::store::Database& db() { return *m_db; }
    void close() { m_db.reset(); }
    void reopen(core::store::Access access = core::store::Access::ReadWrite) {
        m_db.reset();
        m_db = core::store::Database::open(m_path, access);
        hurry();
    }

    /// Gives the row the next id and writes it.
    template <class T> T add(T row) {
        const core::Table table = core::tableOf<T>();
        const qint64 id = core::store::maxId(*m_db, table) + 1;
        row.id = {id};
        core::store::writeRow(*m_db, {table, id, std::nullopt, toRow(row)});
        return row;
    }

    core::Yard yard(const QString& name);
    core::Stand stand(const core::Yard& yard, const QString& name, core::MmPoint at = {});
    /// A colony on a new stand of its own, named as its label.
    core::Colony colony(const core::Yard& yard, const QString& label, core::Day since);
    void end(core::Colony& colony, core::Day day, core::EndKind how);
    core::Placement carry(const core::Colony& colony, const core::Stand& to, core::Day day,
                          std::optional<int> headingDeg = {});
    core::Visit visit(core::Visit visit); ///< with its signs
    core::Visit visit(const core::Colony& colony, core::Day day);
    void unite(core::Colony& colony, const core::Colony& into, core::Day day);
    /// Raw SQL on the closed file, past all our checks; opens it again.
    void breakWith(const char* sql);

private:
    /// The rows of tests need not survive a power cut.
    void hurry() { m_db->exec("PRAGMA synchronous = OFF"); }

    QTemporaryDir m_dir;
    QString m_path;
    std::unique_ptr<core::store::Database> m_db;
};

inline core::Day day(const char* iso) { return core::parseIsoDay(QString::fromLatin1(iso)).value(); }
