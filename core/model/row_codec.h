#pragma once

#include "core/model/row.h"
#include "core/model/rows.h"

namespace core {

// Struct to cells and back, in the order of columnsOf(). Visit signs are rows of their own (Table::VisitSign).
// Days are ISO text, enums their words, quantities integers of the smallest unit, latitude and doses REAL.

Row toRow(const Yard&);
Row toRow(const Stand&);
Row toRow(const BoxKind&);
Row toRow(const Colony&);
Row toRow(const Placement&);
Row toRow(const Visit&);
Row toRow(const Transfer&);
Row toRow(const Result&);
Row toRow(const Treatment&);
Row toRow(const Lineage&);
Row toRow(const Kit&);
Row toRow(const Person&);
Row toRow(const FixedThing&);
Row toRow(const MergeDay&);
Row toRow(const MergeChoice&);
Row toRow(const MergeStrip&);
Row toRow(const DivideChoice&);
Row toRow(const DivideStrip&);
Row toRow(const Feeding&);
Row toRow(const Queen&);
Row toRow(const FileMapping&);
Row toRow(const Phrase&);
Row toRow(const Question&);
Row toRow(const Sample&);
Row toRow(const MiteFall&);
Row toRow(const StripsOut&);
Row toRow(const KitEnd&);
Row toRow(const Notifiable&);
Row toRow(const Keeper&);

/// Throws Error(Book) when a cell is not what the column holds.
template <class T> T fromRow(qint64 id, const Row& row);
template <> Yard fromRow<Yard>(qint64 id, const Row& row);
template <> Stand fromRow<Stand>(qint64 id, const Row& row);
template <> BoxKind fromRow<BoxKind>(qint64 id, const Row& row);
template <> Colony fromRow<Colony>(qint64 id, const Row& row);
template <> Placement fromRow<Placement>(qint64 id, const Row& row);
template <> Visit fromRow<Visit>(qint64 id, const Row& row);
template <> Transfer fromRow<Transfer>(qint64 id, const Row& row);
template <> Result fromRow<Result>(qint64 id, const Row& row);
template <> Treatment fromRow<Treatment>(qint64 id, const Row& row);
template <> Lineage fromRow<Lineage>(qint64 id, const Row& row);
template <> Kit fromRow<Kit>(qint64 id, const Row& row);
template <> Person fromRow<Person>(qint64 id, const Row& row);
template <> FixedThing fromRow<FixedThing>(qint64 id, const Row& row);
template <> MergeDay fromRow<MergeDay>(qint64 id, const Row& row);
template <> MergeChoice fromRow<MergeChoice>(qint64 id, const Row& row);
template <> MergeStrip fromRow<MergeStrip>(qint64 id, const Row& row);
template <> DivideChoice fromRow<DivideChoice>(qint64 id, const Row& row);
template <> DivideStrip fromRow<DivideStrip>(qint64 id, const Row& row);
template <> Feeding fromRow<Feeding>(qint64 id, const Row& row);
template <> Queen fromRow<Queen>(qint64 id, const Row& row);
template <> FileMapping fromRow<FileMapping>(qint64 id, const Row& row);
template <> Phrase fromRow<Phrase>(qint64 id, const Row& row);
template <> Question fromRow<Question>(qint64 id, const Row& row);
template <> Sample fromRow<Sample>(qint64 id, const Row& row);
template <> MiteFall fromRow<MiteFall>(qint64 id, const Row& row);
template <> StripsOut fromRow<StripsOut>(qint64 id, const Row& row);
template <> KitEnd fromRow<KitEnd>(qint64 id, const Row& row);
template <> Notifiable fromRow<Notifiable>(qint64 id, const Row& row);
template <> Keeper fromRow<Keeper>(qint64 id, const Row& row);

template <class T> constexpr Table tableOf();
template <> constexpr Table tableOf<Yard>() { return Table::Yard; }
template <> constexpr Table tableOf<Stand>() { return Table::Stand; }
template <> constexpr Table tableOf<BoxKind>() { return Table::BoxKind; }
template <> constexpr Table tableOf<Colony>() { return Table::Colony; }
template <> constexpr Table tableOf<Placement>() { return Table::Placement; }
template <> constexpr Table tableOf<Visit>() { return Table::Visit; }
template <> constexpr Table tableOf<Transfer>() { return Table::Transfer; }
template <> constexpr Table tableOf<Result>() { return Table::Result; }
template <> constexpr Table tableOf<Treatment>() { return Table::Treatment; }
template <> constexpr Table tableOf<Lineage>() { return Table::Lineage; }
template <> constexpr Table tableOf<Kit>() { return Table::Kit; }
template <> constexpr Table tableOf<Person>() { return Table::Person; }
template <> constexpr Table tableOf<FixedThing>() { return Table::FixedThing; }
template <> constexpr Table tableOf<MergeDay>() { return Table::MergeDay; }
template <> constexpr Table tableOf<MergeChoice>() { return Table::MergeChoice; }
template <> constexpr Table tableOf<MergeStrip>() { return Table::MergeStrip; }
template <> constexpr Table tableOf<DivideChoice>() { return Table::DivideChoice; }
template <> constexpr Table tableOf<DivideStrip>() { return Table::DivideStrip; }
template <> constexpr Table tableOf<Feeding>() { return Table::Feeding; }
template <> constexpr Table tableOf<Queen>() { return Table::Queen; }
template <> constexpr Table tableOf<FileMapping>() { return Table::FileMapping; }
template <> constexpr Table tableOf<Phrase>() { return Table::Phrase; }
template <> constexpr Table tableOf<Question>() { return Table::Question; }
template <> constexpr Table tableOf<Sample>() { return Table::Sample; }
template <> constexpr Table tableOf<MiteFall>() { return Table::MiteFall; }
template <> constexpr Table tableOf<StripsOut>() { return Table::StripsOut; }
template <> constexpr Table tableOf<KitEnd>() { return Table::KitEnd; }
template <> constexpr Table tableOf<Notifiable>() { return Table::Notifiable; }
template <> constexpr Table tableOf<Keeper>() { return Table::Keeper; }

} // namespace core
