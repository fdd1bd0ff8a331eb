#include "core/exchange/kept_mapping.h"

#include "core/base/error.h"
#include "core/base/natural_order.h"
#include "core/edit/file_mappings.h"

#include <algorithm>

namespace core::exchange {

namespace {

/// A name has no line end: it is read from one row, and blanks around and inside it are made plain.
constexpr QChar kBetween = u'\n';

QStringList plainNames(const QStringList& header) {
    QStringList names;
    for (const QString& name : header) names << name.simplified();
    return names;
}

std::optional<KeptMapping> keptOf(const FileMapping& row) {
    const auto mapping = mappingFromJson(row.form.toUtf8());
    if (!mapping || optionName(mapping->kind) != row.kind) return std::nullopt;
    return KeptMapping{row.id, row.name, row.header.split(kBetween), *mapping};
}

[[noreturn]] void noSuchName(const QString& name, const std::vector<FileMapping>& rows) {
    QStringList names;
    for (const FileMapping& row : rows) names << u'“' + row.name + u'”';
    throw Error(Error::Kind::BadData, names.isEmpty() ? noMappings(name)
                                                      : Say::tr("“%1” is no mapping of this book, expected one of %2.")
                                                            .arg(name, names.join(QStringLiteral(", "))));
}

} // namespace

QString noMappings(const QString& name) {
    return Say::tr("“%1” is no mapping of this book, expected the name of one; it has none.").arg(name);
}

edit::ChangeSet keepMapping(const edit::EditContext& c, const QString& name, const Mapping& mapping,
                            const QStringList& header) {
    if (!mappingFromJson(toJson(mapping)))
        throw Error(Error::Kind::BadData, Say::tr("This mapping has more columns, words or letters than one can have, "
                                                  "expected a smaller one."));
    return edit::keepFileMapping(
        c, {{}, name, optionName(mapping.kind), plainNames(header).join(kBetween), QString::fromUtf8(toJson(mapping))});
}

std::vector<KeptMapping> keptMappings(const edit::Session& session) {
    std::vector<KeptMapping> out;
    for (const FileMapping& row : session.fileMappings())
        if (auto kept = keptOf(row)) out.push_back(*std::move(kept));
    return out;
}

KeptMapping mappingNamed(const edit::Session& session, const QString& name) {
    const auto rows = session.fileMappings();
    const auto row = std::ranges::find_if(rows, [&](const FileMapping& m) { return folded(m.name) == folded(name); });
    if (row == rows.end()) noSuchName(name, rows);
    auto kept = keptOf(*row);
    if (!kept)
        throw Error(Error::Kind::BadData,
                    Say::tr("The mapping “%1” cannot be read by this program, expected one made with it: keep it anew.")
                        .arg(row->name));
    return *std::move(kept);
}

std::vector<KeptMapping> mappingsFor(const std::vector<KeptMapping>& kept, const QStringList& header) {
    QStringList wanted = plainNames(header);
    wanted.sort();
    std::vector<KeptMapping> out;
    for (const KeptMapping& m : kept) {
        QStringList names = m.header;
        names.sort();
        if (names == wanted) out.push_back(m);
    }
    return out;
}

} // namespace core::exchange
