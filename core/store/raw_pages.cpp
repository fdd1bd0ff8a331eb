#include "core/store/raw_pages.h"

#include "core/base/error.h"
#include "core/store/book_file.h"

#include <QFile>

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <unistd.h>

namespace core::store {

namespace {

constexpr char kMagic[] = "SQLite format 3"; // its closing zero belongs to it
constexpr int kHeaderSize = 100;
constexpr int kLeafType = 13;
constexpr int kBranchType = 5;
constexpr qint64 kLargestRecord = 500'000'000; ///< as harden() allows

bool pageSizeOf(int value) { return value >= 512 && value <= 65536 && (value & (value - 1)) == 0; }

} // namespace

quint64 bigEndian(const QByteArray& bytes, qsizetype at, int size) {
    quint64 value = 0;
    for (int i = 0; i < size; ++i) value = value << 8 | static_cast<unsigned char>(bytes[at + i]);
    return value;
}

std::optional<RawNumber> rawNumber(const QByteArray& bytes, qsizetype at) {
    quint64 value = 0;
    for (int i = 0; i < 9; ++i) {
        if (at < 0 || at + i >= bytes.size()) return std::nullopt;
        const auto byte = static_cast<unsigned char>(bytes[at + i]);
        if (i == 8) return RawNumber{static_cast<qint64>(value << 8 | byte), 9};
        value = value << 7 | (byte & 0x7f);
        if (!(byte & 0x80)) return RawNumber{static_cast<qint64>(value), i + 1};
    }
    return std::nullopt;
}

RawPages::RawPages(const QString& path) : m_file(open(QFile::encodeName(path).constData(), O_RDONLY | O_CLOEXEC)) {
    const qint64 size = m_file < 0 ? -1 : lseek(m_file, 0, SEEK_END);
    if (size >= 0) {
        readHeader(size);
        return;
    }
    const QString why = QString::fromLocal8Bit(strerror(errno));
    if (m_file >= 0) close(m_file);
    throw Error(Error::Kind::Book, QStringLiteral("The book %1 cannot be read: access is denied.").arg(shownPath(path)),
                why);
}

RawPages::~RawPages() { close(m_file); }

void RawPages::readHeader(qint64 size) {
    const QByteArray header = bytes(0, kHeaderSize);
    if (header.size() == kHeaderSize) {
        const auto stored = static_cast<int>(bigEndian(header, 16, 2));
        const int pageSize = stored == 1 ? 65536 : stored;
        const auto reserved = static_cast<int>(bigEndian(header, 20, 1));
        m_headerSound = memcmp(header.constData(), kMagic, sizeof kMagic) == 0 && pageSizeOf(pageSize) &&
                        reserved <= 32 && bigEndian(header, 56, 4) == 1;
        if (m_headerSound) {
            m_pageSize = pageSize;
            m_usable = pageSize - reserved;
        }
    }
    m_count = (size + m_pageSize - 1) / m_pageSize;
}

QByteArray RawPages::bytes(qint64 from, qint64 size) const {
    QByteArray read(size, Qt::Uninitialized);
    qint64 got = 0;
    while (got < size) {
        const ssize_t n = pread(m_file, read.data() + got, static_cast<size_t>(size - got), from + got);
        if (n < 0 && errno == EINTR) continue;
        if (n <= 0) return {};
        got += n;
    }
    return read;
}

std::optional<QByteArray> RawPages::page(qint64 number) const {
    if (number < 1 || number > m_count) return std::nullopt;
    QByteArray read = bytes((number - 1) * m_pageSize, m_pageSize);
    if (read.size() != m_pageSize) return std::nullopt;
    return read;
}

namespace {

/// Which bytes of a page's content are spoken for.
class Claims {
public:
    Claims(int from, int to) : m_from(from), m_taken(static_cast<size_t>(std::max(0, to - from)), false) {}
    bool claim(qint64 at, qint64 size) {
        if (at < m_from || size < 0 || at - m_from + size > std::ssize(m_taken)) return false;
        for (qint64 i = at - m_from; i < at - m_from + size; ++i) {
            if (m_taken[static_cast<size_t>(i)]) return false;
            m_taken[static_cast<size_t>(i)] = true;
        }
        m_sum += size;
        return true;
    }
    qint64 left() const { return std::ssize(m_taken) - m_sum; }

private:
    int m_from;
    std::vector<bool> m_taken;
    qint64 m_sum = 0;
};

qint64 localSize(qint64 size, int usable) {
    const qint64 most = usable - 35;
    if (size <= most) return size;
    const qint64 least = (usable - 12) * 32 / 255 - 23;
    const qint64 kept = least + (size - least) % (usable - 4);
    return kept <= most ? kept : least;
}

/// The cell at `at` and how many bytes it takes; nullopt: none can be made out.
std::optional<std::pair<RawCell, qint64>> cellAt(const QByteArray& page, qsizetype at, bool leaf, int usable) {
    RawCell cell;
    qsizetype next = at;
    if (!leaf) {
        if (at + 4 > usable) return std::nullopt;
        cell.child = static_cast<qint64>(bigEndian(page, at, 4));
        next += 4;
    } else if (const auto size = rawNumber(page, at); size && size->value >= 2 && size->value <= kLargestRecord) {
        cell.size = size->value;
        next += size->size;
    } else {
        return std::nullopt;
    }
    const auto key = rawNumber(page, next);
    if (!key) return std::nullopt;
    cell.key = key->value;
    next += key->size;
    if (leaf) {
        const qint64 local = localSize(cell.size, usable);
        const bool more = local < cell.size;
        if (next + local + (more ? 4 : 0) > usable) return std::nullopt;
        cell.local = page.mid(next, local);
        next += local;
        if (more) {
            cell.overflow = static_cast<qint64>(bigEndian(page, next, 4));
            next += 4;
        }
    }
    return std::pair{std::move(cell), std::max<qint64>(next - at, 4)};
}

/// The gaps that SQLite keeps for later, in order.
bool claimFree(const QByteArray& page, qint64 first, int usable, Claims& claims) {
    qint64 before = 0;
    for (qint64 at = first; at != 0;) {
        if (at <= before || at + 4 > usable) return false;
        if (!claims.claim(at, static_cast<qint64>(bigEndian(page, at + 2, 2)))) return false;
        before = at;
        at = static_cast<qint64>(bigEndian(page, at, 2));
    }
    return true;
}

} // namespace

std::optional<RawPage> rawTablePage(const RawPages& pages, qint64 number) {
    const auto page = pages.page(number);
    if (!page) return std::nullopt;
    const qsizetype head = number == 1 ? kHeaderSize : 0;
    const auto type = static_cast<int>(bigEndian(*page, head, 1));
    if (type != kLeafType && type != kBranchType) return std::nullopt;
    RawPage taken;
    taken.leaf = type == kLeafType;
    const auto count = static_cast<qint64>(bigEndian(*page, head + 3, 2));
    const auto stored = static_cast<int>(bigEndian(*page, head + 5, 2));
    const int content = stored == 0 ? 65536 : stored;
    const qsizetype pointers = head + (taken.leaf ? 8 : 12);
    if (!taken.leaf) taken.last = static_cast<qint64>(bigEndian(*page, head + 8, 4));
    Claims claims(content, pages.usable());
    bool sound = content >= pointers + 2 * count && content <= pages.usable();
    qint64 before = INT64_MIN;
    for (qint64 i = 0; i < count && pointers + 2 * i + 2 <= pages.usable(); ++i) {
        const auto at = static_cast<qsizetype>(bigEndian(*page, pointers + 2 * i, 2));
        auto cell = cellAt(*page, at, taken.leaf, pages.usable());
        sound = sound && cell && claims.claim(at, cell->second) && (i == 0 || cell->first.key > before);
        if (!cell) continue;
        before = cell->first.key;
        taken.cells.push_back(std::move(cell->first));
    }
    sound = sound && claimFree(*page, static_cast<qint64>(bigEndian(*page, head + 1, 2)), pages.usable(), claims);
    taken.sound = sound && claims.left() == static_cast<qint64>(bigEndian(*page, head + 7, 1));
    return taken;
}

std::optional<QByteArray> wholeRecord(const RawPages& pages, const RawCell& cell, std::vector<qint64>& used) {
    QByteArray all = cell.local;
    qint64 next = cell.overflow;
    while (all.size() < cell.size) {
        const auto page = pages.page(next);
        if (!page || std::find(used.begin(), used.end(), next) != used.end()) return std::nullopt;
        used.push_back(next);
        next = static_cast<qint64>(bigEndian(*page, 0, 4));
        all += page->mid(4, std::min<qint64>(pages.usable() - 4, cell.size - all.size()));
    }
    if (cell.overflow != 0 && next != 0) return std::nullopt; // the chain does not end where the record does
    return all;
}

} // namespace core::store
