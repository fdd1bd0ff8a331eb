#pragma once

#include "core/edit/session.h"
#include "core/exchange/mapping.h"

#include <optional>
#include <vector>

// Mappings kept in the book under names.

namespace core::exchange {

struct KeptMapping {
    FileMappingId id;
    QString name;
    QStringList header; ///< of the file that it was made for
    Mapping mapping;
};

/// Kept under the name, in place of one that has it without regard to case. Throws Error(BadData).
edit::ChangeSet keepMapping(const edit::EditContext& c, const QString& name, const Mapping& mapping,
                            const QStringList& header);
/// Natural order. Those that this program cannot read are left out.
std::vector<KeptMapping> keptMappings(const edit::Session& session);
/// Without regard to case. Throws Error(BadData): no such name, with those that there are; or it cannot be read.
KeptMapping mappingNamed(const edit::Session& session, const QString& name);
/// That a book has none, and so not this one.
QString noMappings(const QString& name);
/// Those made for a file with just these names in its first row, whatever their order.
std::vector<KeptMapping> mappingsFor(const std::vector<KeptMapping>& kept, const QStringList& header);

} // namespace core::exchange
