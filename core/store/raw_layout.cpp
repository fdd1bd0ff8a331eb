#include "core/store/raw_layout.h"

#include "core/base/damaged.h"
#include "core/model/row.h"
#include "core/store/book_file.h"
#include "core/store/migration.h"

#include <algorithm>

namespace core::store {

namespace {

/// One in so many tables may begin on a page that cannot be read, and the guess still be believed.
constexpr qint64 kOneBadIn = 4;
constexpr int kUuidLength = 36;

std::vector<QString> ourTables() {
    std::vector<QString> names{QStringLiteral("book"), QStringLiteral("history"), QStringLiteral("history_part")};
    for (int i = 0; i < kTableCount; ++i) names.push_back(QLatin1String(tableName(static_cast<Table>(i))));
    return names;
}

RawColumn::Type typeNamed(const QString& word) {
    if (word == QLatin1String("INTEGER")) return RawColumn::Type::Integer;
    if (word == QLatin1String("REAL")) return RawColumn::Type::Real;
    return word == QLatin1String("TEXT") ? RawColumn::Type::Text : RawColumn::Type::Blob;
}

RecordShape shapeIn(const Database& book, const QString& table) {
    RecordShape shape;
    shape.idFirst = false;
    Statement column = book.prepare("SELECT type, \"notnull\", pk FROM pragma_table_info(?) ORDER BY cid");
    column.bind(1, table);
    int keys = 0;
    while (column.step()) {
        keys += column.small(2) > 0;
        shape.idFirst = shape.idFirst || (shape.columns.empty() && column.small(2) == 1);
        shape.columns.push_back({typeNamed(column.text(0)), column.small(1) != 0});
    }
    shape.idFirst = shape.idFirst && keys == 1;
    shape.least = shape.columns.size();
    return shape;
}

std::map<QString, RecordShape> makeShapes() {
    std::map<QString, RecordShape> shapes;
    const std::span<const Migration> all = bookMigrations();
    for (size_t version = all.size(); version > 0; --version) {
        const auto book = Database::inMemory(all.first(version));
        for (const QString& table : ourTables()) {
            const RecordShape shape = shapeIn(*book, table);
            if (shape.columns.empty()) continue;
            const auto [known, isNew] = shapes.emplace(table, shape);
            if (!isNew) known->second.least = shape.least;
        }
    }
    return shapes;
}

Roots rootsOf(const Database& book) {
    Roots roots;
    Statement row = book.prepare("SELECT name, rootpage FROM sqlite_schema WHERE rootpage > 0");
    while (row.step()) roots.emplace(row.text(0), row.integer(1));
    return roots;
}

RecordShape schemaShape() {
    using Type = RawColumn::Type;
    return {false,
            {{Type::Text, true}, {Type::Text, true}, {Type::Text, true}, {Type::Integer, false}, {Type::Text, false}},
            5};
}

/// The file's own list of tables, as far as it can be read.
Roots storedRoots(const RawPages& pages, bool& whole) {
    FoundTable list;
    list.shape = schemaShape();
    list.root = 1;
    UsedPages used;
    walkTable(pages, list, used, {});
    whole = list.lost.empty();
    Roots roots;
    for (const auto& [id, row] : list.rows) {
        const auto values = rawRecord(row.record, list.shape);
        if (!row.sure || !values || (*values)[3].integer < 2) continue;
        roots.emplace(QString::fromUtf8((*values)[1].bytes), (*values)[3].integer);
    }
    return roots;
}

enum class Fit { Yes, No, Unreadable };

/// Whether a table of this shape may begin there: looks down to its first leaf.
Fit fitOf(const RawPages& pages, qint64 root, const RecordShape& shape) {
    for (int depth = 0; depth < 20; ++depth) {
        const auto page = rawTablePage(pages, root);
        if (!page || !page->sound) return Fit::Unreadable;
        if (!page->leaf) {
            root = page->cells.empty() ? page->last : page->cells.front().child;
            continue;
        }
        for (const RawCell& cell : page->cells) {
            std::vector<qint64> more;
            const auto record = wholeRecord(pages, cell, more);
            if (!record && cell.overflow) continue;
            if (!record || !rawRecord(*record, shape)) return Fit::No;
        }
        return Fit::Yes;
    }
    return Fit::No;
}

bool bookRowAt(const RawPages& pages, qint64 root) {
    const auto page = rawTablePage(pages, root);
    if (!page || !page->leaf || !page->sound || page->cells.size() != 1) return false;
    const auto values = rawRecord(page->cells[0].local, recordShapes().at(QStringLiteral("book")));
    return values && values->front().bytes.size() == kUuidLength;
}

/// Whether the file's pages are as a book of these roots has them, and nothing that is known of it says otherwise.
bool agrees(const RawPages& pages, const Roots& roots, const Roots& stored) {
    for (const auto& [name, root] : stored)
        if (const auto at = roots.find(name); at != roots.end() && at->second != root) return false;
    qint64 bad = 0;
    qint64 all = 0;
    for (const auto& [name, shape] : recordShapes()) {
        const auto at = roots.find(name);
        if (at == roots.end()) continue;
        const Fit fit = fitOf(pages, at->second, shape);
        if (fit == Fit::No) return false;
        ++all;
        bad += fit == Fit::Unreadable;
    }
    const auto book = roots.find(QStringLiteral("book"));
    const bool known = !stored.empty() || (book != roots.end() && bookRowAt(pages, book->second));
    return known && all > 0 && bad * kOneBadIn <= all;
}

int storedVersion(const RawPages& pages, const QString& path) {
    const auto first = pages.page(1);
    if (!first || !pages.headerSound()) return 0;
    const auto application = static_cast<qint32>(bigEndian(*first, 68, 4));
    const auto version = static_cast<qint32>(bigEndian(*first, 60, 4));
    if (application != 0 && application != kApplicationId)
        throw NoBook(QStringLiteral("%1 is not a book of this program.").arg(path));
    const int newest = bookMigrations().back().version;
    if (application == kApplicationId && version > newest && version < 1000) throw newerBook(path, version, newest);
    return application == kApplicationId && version >= 1 && version <= newest ? version : 0;
}

/// Where this program puts the tables of a new book, from its newest version on.
std::vector<Roots> usualRoots(int version) {
    std::vector<Roots> all;
    const std::span<const Migration> migrations = bookMigrations();
    for (int v = static_cast<int>(migrations.size()); v > 0; --v)
        if (version == 0 || v == version)
            all.push_back(rootsOf(*Database::inMemory(migrations.first(static_cast<size_t>(v)))));
    return all;
}

size_t tablesIn(const Roots& roots) {
    const auto& shapes = recordShapes();
    return static_cast<size_t>(
        std::ranges::count_if(shapes, [&](const auto& shape) { return roots.contains(shape.first); }));
}

} // namespace

const std::map<QString, RecordShape>& recordShapes() {
    static const auto shapes = makeShapes();
    return shapes;
}

RawLayout readLayout(const RawPages& pages, const QString& path, const Roots& like) {
    RawLayout layout;
    layout.version = storedVersion(pages, path);
    bool whole = false;
    layout.roots = storedRoots(pages, whole);
    std::vector<Roots> others = usualRoots(layout.version);
    if (whole && tablesIn(layout.roots) >= tablesIn(usualRoots(1).front())) return layout;
    others.insert(others.begin(), like);
    for (Roots& roots : others) {
        if (roots.empty() || !agrees(pages, roots, layout.roots)) continue;
        layout.guessed = true;
        layout.roots.merge(roots);
        return layout;
    }
    layout.guessed = true;
    return layout;
}

std::optional<UsedPages> freePages(const RawPages& pages) {
    const auto first = pages.page(1);
    if (!first || !pages.headerSound()) return std::nullopt;
    UsedPages free;
    const auto count = bigEndian(*first, 36, 4);
    auto trunk = static_cast<qint64>(bigEndian(*first, 32, 4));
    while (trunk != 0) {
        const auto page = pages.page(trunk);
        if (!page || !free.insert(trunk).second) return std::nullopt;
        const auto leaves = static_cast<qint64>(bigEndian(*page, 4, 4));
        if (leaves > pages.usable() / 4 - 2) return std::nullopt;
        for (qint64 i = 0; i < leaves; ++i)
            if (!free.insert(static_cast<qint64>(bigEndian(*page, 8 + 4 * i, 4))).second) return std::nullopt;
        trunk = static_cast<qint64>(bigEndian(*page, 0, 4));
    }
    if (free.size() != count) return std::nullopt;
    return free;
}

} // namespace core::store
