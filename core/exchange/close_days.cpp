#include "core/exchange/close_days.h"

#include "core/base/error.h"
#include "core/edit/edit_context.h"
#include "core/edit/merge_day.h"
#include "core/exchange/file_parser.h"

namespace core::exchange {

namespace {

/// What is wrong with one row, found while the rows are written in turn.
struct RowRefused {
    const char* column;
    QString what;
};

ColonyId colonyCalled(const edit::EditContext& c, const NamePool& names, const ColonyRef& ref, Day on,
                      const char* column) {
    QString name = names.shown(ref.label);
    if (ref.since) name += u'@' + isoText(*ref.since);
    const auto colony = c.colonyNamed(name, on);
    if (!colony) throw RowRefused{column, Say::tr("“%1” is no colony of the book on %2").arg(name, isoText(on))};
    return colony->id;
}

edit::StripClose stripOf(const edit::EditContext& c, const NamePool& names, const ClosingDraft& draft) {
    const auto yard = c.yardNamed(draft.yard);
    if (!yard) throw RowRefused{"yard", Say::tr("“%1” is no yard of the book").arg(draft.yard)};
    edit::StripClose strip;
    strip.yard = yard->id;
    strip.day = draft.day;
    strip.moved = colonyCalled(c, names, draft.moved, draft.day, "moved");
    strip.host = colonyCalled(c, names, draft.host, draft.day, "host");
    strip.outcome = draft.outcome;
    strip.note = draft.note;
    return strip;
}

/// One row as an edit; `at` then says which row is being judged.
edit::Edit rowEdit(const Parsed& parsed, const ClosingDraft& draft, const ClosingDraft*& at) {
    return [&parsed, &draft, &at](const edit::EditContext& c) {
        at = &draft;
        try {
            return edit::closeStrip(c, stripOf(c, parsed.drafts.names, draft));
        } catch (const Error& e) {
            if (e.kind() != Error::Kind::BadData && e.kind() != Error::Kind::Hold) throw;
            throw RowRefused{"outcome", e.userMessage()};
        }
    };
}

QString textOf(const std::vector<ClosingDraft>& rows) {
    QStringList days;
    for (const ClosingDraft& row : rows) days << Say::tr("%1 on %2").arg(row.yard, isoText(row.day));
    days.removeDuplicates();
    return days.size() == 1 ? Say::tr("Closed the merge day of %1").arg(days.first())
                            : Say::tr("Closed %1 merge days").arg(days.size());
}

void countOutcomes(const std::vector<ClosingDraft>& rows, CloseReport& report) {
    for (const ClosingDraft& row : rows)
        ++(row.outcome == StripOutcome::Done      ? report.done
           : row.outcome == StripOutcome::NotDone ? report.notDone
                                                  : report.changed);
}

} // namespace

CloseReport closeDays(edit::Session& session, const QString& path) {
    CloseReport report;
    const Parsed parsed = parseFiles({{{FileKind::Closings, path}}, {}}, report.faults);
    if (!report.good()) return report;
    const auto& rows = parsed.drafts.closings;
    const ClosingDraft* at = nullptr;
    std::vector<edit::Edit> edits;
    for (const ClosingDraft& row : rows) edits.push_back(rowEdit(parsed, row, at));
    try {
        report.line = session.applyInTurn(textOf(rows), edits);
        countOutcomes(rows, report);
    } catch (const RowRefused& refused) {
        report.faults.add({path, at ? at->at.line : 1, QString::fromLatin1(refused.column), refused.what});
    }
    return report;
}

} // namespace core::exchange
