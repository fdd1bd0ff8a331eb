#pragma once

#include "core/edit/session.h"
#include "core/report/row_order.h"

#include <functional>
#include <optional>
#include <vector>

namespace ui::life {

/// One colony of a family, a line in time.
struct Kin {
    core::ColonyId colony;
    QString name; ///< that means it on its last day
    core::Day since;
    std::optional<core::Day> ended;
    std::optional<core::EndKind> end;
};

/// Bees of one came to another: `from` and `into` by place in Family::kin.
struct KinTie {
    size_t from = 0;
    size_t into = 0;
    core::Day day;
    core::LineageHow how = core::LineageHow::Divided;
};

/// Whence the bees of a colony came and where they went, by divides, unions and shake-outs alone, along the days: what
/// a forebear got or gave after its bees had gone on is not of the family.
struct Family {
    core::Day last;       ///< living colonies are drawn up to it
    size_t asked = 0;     ///< place of the colony asked for
    std::vector<Kin> kin; ///< from the top
    std::vector<KinTie> ties;
    int left = 0; ///< colonies that are not drawn, the farthest
};

/// What of a family is looked up: colonies, and the lineage rows on either side of one.
struct FamilyBook {
    std::function<std::optional<core::Colony>(core::ColonyId)> colony;
    std::function<std::vector<core::Lineage>(core::ColonyId)> lineage; ///< by day
    std::function<QString(const core::Colony&, core::Day)> name;
};

/// Up to `on`, at most `most` colonies; in an order of rows with few ties through others. Empty for a colony that is
/// not in the book.
Family familyOf(const FamilyBook& book, core::ColonyId colony, core::Day on, size_t most = 40);
Family familyOf(const core::edit::Session& session, core::ColonyId colony, core::Day on, size_t most = 40);

/// How often ties go through the line of another.
int crossingsOf(const Family& family);

} // namespace ui::life
