#pragma once

#include "core/base/progress.h"
#include "core/model/row.h"
#include "core/store/history_rows.h"
#include "core/store/raw_layout.h"

#include <QString>

#include <array>
#include <memory>
#include <set>

class QTemporaryDir;

namespace core::store {

class BookLock;

/// What can be read of a damaged book, its file being left as it is: rows of pages that are whole are sure; rows of
/// others can be made out, and count only where something else says the same. Nothing of the file is run. A half
/// written edit (a journal beside it) is taken back in a copy first.
class Remains {
public:
    /// `like`: a sound copy of the book, which may say where its tables begin; empty: none. Throws Error(Book): it
    /// cannot be opened, is another program's or a newer one's, or nothing of it can be read; BookHeld; Stopped.
    Remains(const QString& path, const QString& like, const Progress& progress);
    ~Remains();
    Remains(const Remains&) = delete;
    Remains& operator=(const Remains&) = delete;

    QString bookId() const { return m_bookId; }          ///< empty: cannot be read
    bool layoutGuessed() const { return m_guessed; }     ///< its list of tables cannot be read
    bool halfEditLeft() const { return m_halfEditLeft; } ///< a journal beside it could not be played back
    qint64 pages() const { return m_pageCount; }
    qint64 badPages() const { return m_badPages; }

    const FoundTable& table(Table table) const { return m_tables[static_cast<size_t>(table)]; }
    const FoundTable& history() const { return m_history; }
    std::optional<Row> row(Table table, qint64 id) const;
    bool sure(Table table, qint64 id) const;
    /// nullopt: it cannot be read, or is no line. With blobs.
    std::optional<HistoryRow> line(qint64 seq) const;
    struct Part {
        qint64 seq = 0;
        int ofRange = 0;
        int part = 0;
        QByteArray rows;
    };
    const std::vector<Part>& parts() const { return m_parts; }
    bool partsLost() const { return m_partsLost; }

private:
    void prepare(const QString& path);
    void read(const RawPages& pages, const RawLayout& layout, const Progress& progress);
    void readStrays(const RawPages& pages, UsedPages used);
    void readParts(const FoundTable& table);

    std::unique_ptr<BookLock> m_lock;
    std::unique_ptr<QTemporaryDir> m_folder; ///< of the copy
    QString m_path;                          ///< what is read: the file, or its copy
    QString m_bookId;
    bool m_guessed = false;
    bool m_halfEditLeft = false;
    bool m_partsLost = false;
    qint64 m_pageCount = 0;
    qint64 m_badPages = 0;
    std::array<FoundTable, kTableCount> m_tables;
    FoundTable m_history;
    std::vector<Part> m_parts;
};

} // namespace core::store
