#pragma once

#include <QByteArray>
#include <QString>

#include <memory>
#include <optional>
#include <vector>

// A book's file read page by page without SQLite, for one that SQLite refuses. The layout is that of SQLite's file
// format (its published description). Nothing is ever written, nothing of the file is run.

namespace core::store {

/// The pages of a file; a sector that the disk cannot read is a page that is not there.
class RawPages {
public:
    /// Throws Error(Book) where the file cannot be opened.
    explicit RawPages(const QString& path);
    ~RawPages();
    RawPages(const RawPages&) = delete;
    RawPages& operator=(const RawPages&) = delete;

    int pageSize() const { return m_pageSize; }
    int usable() const { return m_usable; }  ///< bytes of a page that hold content
    qint64 count() const { return m_count; } ///< begun ones too
    bool headerSound() const { return m_headerSound; }
    /// nullopt: past the end, cut short, or not readable. Pages count from 1.
    std::optional<QByteArray> page(qint64 number) const;

private:
    QByteArray bytes(qint64 from, qint64 size) const;
    void readHeader(qint64 size);

    int m_file;
    int m_pageSize = 4096;
    int m_usable = 4096;
    qint64 m_count = 0;
    bool m_headerSound = false;
};

quint64 bigEndian(const QByteArray& bytes, qsizetype at, int size);
/// A number of one to nine bytes; nullopt where the bytes end before it does.
struct RawNumber {
    qint64 value = 0;
    int size = 0;
};
std::optional<RawNumber> rawNumber(const QByteArray& bytes, qsizetype at);

/// One entry of a page of a table: a leaf's row, or a branch's child.
struct RawCell {
    qint64 key = 0;      ///< the row's id; of a branch the greatest of its child
    qint64 child = 0;    ///< of a branch
    qint64 size = 0;     ///< of the row's record
    QByteArray local;    ///< as much of it as lies on this page
    qint64 overflow = 0; ///< where it goes on; 0: it does not
};

/// A page of a table's tree, taken apart.
struct RawPage {
    bool leaf = true;
    bool sound = false; ///< every byte of it is accounted for; else `cells` are those that can be made out
    std::vector<RawCell> cells;
    qint64 last = 0; ///< of a branch: the child after all cells
};
/// nullopt: it is no page of a table.
std::optional<RawPage> rawTablePage(const RawPages& pages, qint64 number);

/// The whole record of a leaf's cell; nullopt where a page that it goes on to cannot be read. Adds those pages.
std::optional<QByteArray> wholeRecord(const RawPages& pages, const RawCell& cell, std::vector<qint64>& used);

} // namespace core::store
