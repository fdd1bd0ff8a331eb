#pragma once

#include <QString>
#include <QStringView>

#include <array>
#include <span>

namespace core::exchange {

/// The ten kinds of CSV file that hold a book, in the order in which they are told and written; what came of the strips
/// of a merge day; and what is written where there is any: feed given, queens, the keeper, what must be reported,
/// samples, ends of quarantined kit, mites fallen, strips out.
enum class FileKind {
    Yards,
    Colonies,
    Visits,
    Transfers,
    Results,
    Treatments,
    Lineage,
    Placements,
    BoxKinds,
    Settings,
    Closings,
    Feedings,
    Queens,
    Keeper,
    Notifiables,
    Samples,
    KitEnds,
    MiteFalls,
    StripsOut
};
constexpr int kFileKindCount = 19;
constexpr std::array<FileKind, 10> kFileKinds = {
    FileKind::Yards,      FileKind::Colonies, FileKind::Visits,     FileKind::Transfers, FileKind::Results,
    FileKind::Treatments, FileKind::Lineage,  FileKind::Placements, FileKind::BoxKinds,  FileKind::Settings};

/// Those that an import reads together.
constexpr std::array<FileKind, 18> kReadKinds = {
    FileKind::Yards,      FileKind::Colonies,  FileKind::Visits,     FileKind::Transfers,   FileKind::Results,
    FileKind::Treatments, FileKind::Lineage,   FileKind::Placements, FileKind::BoxKinds,    FileKind::Settings,
    FileKind::Feedings,   FileKind::Queens,    FileKind::Keeper,     FileKind::Notifiables, FileKind::Samples,
    FileKind::KitEnds,    FileKind::MiteFalls, FileKind::StripsOut};

/// A column of a kind, in the order of templates and exports. Required: column and cell must be there.
struct Column {
    const char* name;
    bool required;
};

std::span<const Column> columnsOf(FileKind kind);
/// "box_kinds.csv"
QString fileName(FileKind kind);
/// "box-kinds": the import's option without its dashes.
QString optionName(FileKind kind);
/// "box kinds": for sentences.
QString kindWords(FileKind kind);

} // namespace core::exchange
