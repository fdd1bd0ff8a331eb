#pragma once

#include "core/model/rows.h"
#include "core/model/snapshot.h"
#include "core/report/page.h"
#include "core/report/sheet.h"
#include "core/rules/divide_checks.h"
#include "core/rules/merge_request.h"
#include "core/rules/plan.h"

#include <QString>

#include <optional>
#include <vector>

namespace core::report {

enum class Language { English, Spanish };
enum class Paper { A4, Letter };

struct WorksheetOptions {
    Paper paper = Paper::A4;
    Language language = Language::English;
    bool large = false;                   ///< large print: no text under 16 pt
    QString book;                         ///< its title
    QString bookId;                       ///< its uuid, for the code on each page
    qint64 revision = 0;                  ///< number of the book's last history line
    std::optional<rules::MergeWish> wish; ///< the merge day planned by, as it is saved; not set: none is
    bool begun = false;              ///< the day has begun to be written back: the sheet in the field has other numbers
    std::vector<rules::Unmet> unmet; ///< of the wish
    std::vector<rules::DivideDone> divided; ///< divides done, for the looks at their colonies
    std::optional<Day> printedOn;           ///< not set: not printed on the pages
    Sheet sheet = Sheet::MergeDay;
    std::vector<Stand> stands;          ///< of the yard: where new hives may stand; none given: bare ground
    std::optional<DivideQueens> queens; ///< of the divides; not set: not chosen yet
    std::optional<ColonyId> colony;     ///< of a card
    std::vector<Visit> visits;          ///< its last ones, newest first
    std::vector<ColonyId>
        round; ///< of a tally sheet: these of the yard alone, in this order; none given: all, as one walks
};

/// The merge-day worksheet of one yard: what must not be touched, the drawing, a strip a union in walking order,
/// shake-outs, lists, kit, checks, cautions; or one of the shorter sheets. Nothing is less than 11 pt; no strip is
/// split over pages. Each strip is a zone of its page, "union N", "shake-out LABEL", "walk LABEL", "check LABEL",
/// "tally LABEL", and each of its boxes "tally LABEL: queen".
/// `plan` is of the snapshot's day; other yards are passed over.
std::vector<Page> worksheetPages(const Snapshot& s, const rules::Plan& plan, YardIx yard,
                                 const WorksheetOptions& options, const TextMeasure& measure);

} // namespace core::report
