#pragma once

#include "core/rules/kit_piles.h"
#include "core/rules/lifted_holds.h"
#include "ui/board/board_rows.h"
#include "ui/records/record_rows.h"

#include <QString>

#include <map>
#include <optional>
#include <vector>

namespace ui::health {

/// A row of the page Samples, and the record that it is about.
struct PaperRow {
    board::BoardRow row;
    std::optional<records::RecordRow> record; ///< not set: of none, or nothing that is put right here
    std::optional<core::Sample> sample;       ///< the record is this sample
};

/// What the rows are made of, as the book stands today.
struct PaperBook {
    core::Day today;
    core::Snapshot snapshot; ///< of today
    std::vector<core::Sample> samples;
    std::vector<core::Result> results;
    std::vector<core::KitEnd> kitEnds;
    std::map<core::ColonyId, core::ColonyIx> byId; ///< living and ended
    std::optional<core::YardId> only;              ///< rows of this yard alone; not set: of all

    QString name(core::ColonyId colony) const;
    std::optional<core::YardId> yardOf(core::ColonyId colony) const; ///< where it stands, or stood last
    QString yardName(core::YardId yard) const;
    bool shows(std::optional<core::ColonyId> colony, std::optional<core::YardId> yard) const;
    const core::Result* result(core::ResultId id) const;
};
/// Throws Error(Book).
PaperBook paperBook(const core::edit::Session& book, core::Snapshot today, std::optional<core::YardId> only);

/// Not sent yet, late, awaited, in, given up.
std::vector<PaperRow> sampleRows(const PaperBook& book);
/// Orders and releases with who and which paper; findings of laboratories and inspectors; field kits.
std::vector<PaperRow> resultRows(const PaperBook& book);
/// Who stands near a foulbrood source, each limit with where it comes from.
std::vector<PaperRow> nearRows(const PaperBook& book);
/// Kit that is kept apart still, then how kit that was kept apart ended.
std::vector<PaperRow> kitRows(const PaperBook& book, const std::vector<core::rules::KitPile>& piles);
/// Holds that stand no more, with what ended them. `whole`: that they were worked out of.
std::vector<PaperRow> liftedRows(const PaperBook& book, const core::Snapshot& whole,
                                 const std::vector<core::rules::LiftedHold>& lifted);

/// "2 not sent yet · 3 awaited, 1 of them late"; empty: neither.
QString awaitedText(const PaperBook& book);

} // namespace ui::health
