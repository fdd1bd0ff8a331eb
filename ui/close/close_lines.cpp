#include "ui/close/close_lines.h"

#include "core/edit/merge_sheet.h"
#include "ui/form/book_options.h"
#include "ui/look/words.h"

#include <algorithm>

namespace ui::close {

using core::LineageHow;
using core::StripOutcome;

namespace {

class LineMaker {
public:
    LineMaker(const core::edit::Session& book, core::Day day) : m_book(book), m_day(day) {}

    Line line(LineageHow how, core::ColonyId moved, core::ColonyId host) const {
        Line l;
        l.how = how;
        l.moved = moved;
        l.host = host;
        l.movedName = nameOf(moved);
        l.hostName = nameOf(host);
        return l;
    }

    Line line(const core::MergeStrip& strip, int number) const {
        Line l = line(strip.how, strip.moved, strip.host);
        if (strip.id.value > 0) l.id = strip.id;
        l.number = core::edit::onSheet(strip) ? number : 0;
        l.outcome = strip.outcome;
        l.note = strip.note;
        const auto ended = endedBy(strip.moved);
        if (strip.outcome) l.stage = Stage::Written;
        if (strip.outcome == StripOutcome::Changed && ended)
            l.instead = unionText(ended->how, nameOf(ended->colony), nameOf(ended->into));
        if (!strip.outcome && ended && ended->into == strip.host && ended->how == strip.how) {
            l.stage = Stage::Elsewhere;
            l.outcome = StripOutcome::Done;
        }
        return l;
    }

    void draft(Line& l, const Drafted& d) const {
        l.stage = Stage::Drafted;
        l.outcome = d.strip.outcome;
        l.note = d.strip.note;
        l.asFact = d.asFact;
        if (const auto& x = d.strip.instead) l.instead = unionText(x->how, nameOf(x->moved), nameOf(x->host));
    }

private:
    QString nameOf(core::ColonyId id) const {
        const auto colony = m_book.colony(id);
        return colony ? form::nameOn(m_book, *colony, m_day) : look::dash();
    }
    /// The union or shake-out of that day by which it ended.
    std::optional<core::Lineage> endedBy(core::ColonyId colony) const {
        for (const core::Lineage& l : m_book.lineageOf(colony))
            if (l.colony == colony && l.day == m_day && l.how != LineageHow::Divided) return l;
        return std::nullopt;
    }

    const core::edit::Session& m_book;
    core::Day m_day;
};

std::vector<core::MergeStrip> plannedFor(const desk::Reading& reading, core::YardId yard) {
    const auto ix = reading.find(yard);
    return ix ? core::edit::stripsPlanned(reading.snapshot, reading.plan, *ix) : std::vector<core::MergeStrip>();
}

} // namespace

QString unionText(LineageHow how, const QString& moved, const QString& host) {
    return how == LineageHow::United ? QStringLiteral("%1 → %2").arg(moved, host)
                                     : WriteBack::tr("%1 shaken out into %2").arg(moved, host);
}

QString Line::title() const { return unionText(how, movedName, hostName); }

QString Line::outcomeText() const {
    if (stage == Stage::Elsewhere) return WriteBack::tr("done, in the book already");
    if (!outcome) return {};
    switch (*outcome) {
    case StripOutcome::Done:
        return asFact ? WriteBack::tr("done, as a fact") : WriteBack::tr("done");
    case StripOutcome::NotDone:
        return WriteBack::tr("not done");
    case StripOutcome::Changed:
        break;
    }
    return asFact ? WriteBack::tr("changed, as a fact") : WriteBack::tr("changed");
}

QString Line::spoken() const {
    QStringList parts{number > 0 ? WriteBack::tr("Strip %1: %2").arg(number).arg(title())
                                 : WriteBack::tr("Not on the sheet: %1").arg(title())};
    switch (stage) {
    case Stage::Open:
        parts << WriteBack::tr("nothing noted yet");
        break;
    case Stage::Drafted:
        parts << WriteBack::tr("%1, not written to the book yet").arg(outcomeText());
        break;
    case Stage::Written:
        parts << WriteBack::tr("%1, written").arg(outcomeText());
        break;
    case Stage::Elsewhere:
        parts << outcomeText();
        break;
    }
    for (const QString& more : {instead, note, problem})
        if (!more.isEmpty()) parts << more;
    return parts.join(QStringLiteral(". "));
}

int Lines::count(Stage stage) const {
    return static_cast<int>(std::ranges::count_if(lines, [&](const Line& l) { return l.stage == stage; }));
}

int Lines::firstOpen() const {
    const auto open = std::ranges::find_if(lines, [](const Line& l) { return l.stage == Stage::Open; });
    return open == lines.end() ? -1 : static_cast<int>(open - lines.begin());
}

Lines linesOf(const core::edit::Session& book, const desk::Reading& reading, core::YardId yard) {
    const LineMaker maker(book, reading.snapshot.on);
    Lines out;
    book.read(
        [&](const core::edit::EditContext& c) { out.day = core::edit::standingDay(c, yard, reading.snapshot.on); });
    std::vector<core::MergeStrip> strips;
    if (out.day) strips = book.stripsOf(out.day->id);
    if (strips.empty()) strips = out.planned = plannedFor(reading, yard);
    int number = 0;
    for (const core::MergeStrip& strip : strips) out.lines.push_back(maker.line(strip, ++number));
    return out;
}

Lines withDrafts(Lines out, const core::edit::Session& book, core::Day day, const std::vector<Drafted>& drafted) {
    const LineMaker maker(book, day);
    for (const Drafted& d : drafted) {
        const auto same = std::ranges::find_if(out.lines, [&](const Line& l) { return l.is(d); });
        if (same == out.lines.end()) {
            out.lines.push_back(maker.line(d.strip.how, d.strip.moved, d.strip.host));
            maker.draft(out.lines.back(), d);
        } else if (same->stage == Stage::Open) {
            maker.draft(*same, d);
        }
    }
    return out;
}

} // namespace ui::close
