#include "ui/health/paper_rows.h"

#include "core/rules/sample_state.h"
#include "ui/health/health_words.h"
#include "ui/look/words.h"
#include "ui/records/record_words.h"

#include <algorithm>

namespace ui::health {

namespace rules = core::rules;
using board::BoardRow;
using rules::SampleState;

namespace {

PaperRow section(const QString& title, size_t count) {
    PaperRow out;
    out.row.kind = board::RowKind::Section;
    out.row.title = count > 0 ? Health::tr("%1 (%2)").arg(title).arg(count) : title;
    return out;
}

PaperRow note(const QString& text) {
    PaperRow out;
    out.row.kind = board::RowKind::Note;
    out.row.lines << text;
    return out;
}

QString placed(const PaperBook& book, core::ColonyId colony) {
    const auto yard = book.only ? std::nullopt : book.yardOf(colony);
    return yard ? Health::tr("%1 in %2").arg(book.name(colony), book.yardName(*yard)) : book.name(colony);
}

QString daysText(int days) { return days == 1 ? Health::tr("1 day") : Health::tr("%1 days").arg(days); }

/// "no day since" says nothing: sent today is said so.
QString sentText(const PaperBook& book, const core::Sample& s) {
    const int days = book.today - *s.sent;
    const QString day = look::dayTextFrom(*s.sent, book.today);
    return days < 1 ? Health::tr("sent %1").arg(day) : Health::tr("sent %1, %2 ago").arg(day, daysText(days));
}

QString sampleRight(const PaperBook& book, const core::Sample& s, SampleState state) {
    switch (state) {
    case SampleState::NotSent:
        return Health::tr("taken %1").arg(look::dayTextFrom(s.day, book.today));
    case SampleState::Awaited:
    case SampleState::Late:
        return sentText(book, s);
    case SampleState::GivenUp:
        return Health::tr("since %1").arg(look::dayTextFrom(*s.lost, book.today));
    case SampleState::In:
        break;
    }
    const core::Result* answer = book.result(*s.result);
    return answer ? records::verdictWord(answer->verdict) : look::dash();
}

QString sampleLine(const PaperBook& book, const core::Sample& s) {
    QStringList parts{records::diseaseWord(s.disease), Health::tr("to %1").arg(s.laboratory)};
    if (!s.number.isEmpty()) parts << Health::tr("number %1").arg(s.number);
    const QString taken = Health::tr("taken %1").arg(look::dayTextFrom(s.day, book.today));
    parts << (s.by.isEmpty() ? taken : Health::tr("%1 by %2").arg(taken, s.by));
    if (const core::Result* answer = s.result ? book.result(*s.result) : nullptr) {
        if (answer->by != s.laboratory) parts << Health::tr("answered by %1").arg(answer->by);
        if (!answer->paper.isEmpty()) parts << Health::tr("paper %1").arg(answer->paper);
    }
    if (!s.note.isEmpty()) parts << s.note;
    return parts.join(QStringLiteral(", "));
}

PaperRow sampleRow(const PaperBook& book, const core::Sample& s, SampleState state) {
    PaperRow out;
    out.row.colony = s.colony;
    out.row.title = Health::tr("%1 · %2").arg(placed(book, s.colony), records::materialWord(s.material));
    out.row.right = sampleRight(book, s, state);
    out.row.lines << sampleLine(book, s);
    if (state == SampleState::Late)
        out.row.cautions << Health::tr("Late: no answer in %1 (asked after from %2 on). Ask the laboratory.")
                                .arg(daysText(book.today - *s.sent), daysText(book.snapshot.settings.sampleLateDays));
    out.record = records::RecordRow{records::RecordKind::Sample, s.id.value, s.day, Health::tr("Sample"), {}, false};
    out.sample = s;
    return out;
}

QString groupTitle(SampleState state) {
    switch (state) {
    case SampleState::NotSent:
        return Health::tr("Not sent yet");
    case SampleState::Late:
        return Health::tr("Awaited, late");
    case SampleState::Awaited:
        return Health::tr("Awaited");
    case SampleState::In:
        return Health::tr("In");
    case SampleState::GivenUp:
        break;
    }
    return Health::tr("Given up");
}

/// What lifts it: a release that names the same, for the same disease, on its day or later.
const core::Result* releaseOf(const PaperBook& book, const core::Result& order) {
    for (const core::Result& r : book.results)
        if (r.verdict == core::Verdict::Release && r.disease == order.disease && r.colony == order.colony &&
            r.yard == order.yard && r.day >= order.day)
            return &r;
    return nullptr;
}

/// What a finding of a field kit does (rules 4.4.4 and 4.4.11).
QString fieldText(const core::Result& r) {
    if (r.verdict == core::Verdict::Negative)
        return Health::tr("A field kit's negative is kept and shown; it changes nothing.");
    return r.disease == core::Disease::Afb
               ? Health::tr(
                     "A field kit's positive counts as a sign: it holds until a laboratory or an inspector answers.")
               : Health::tr("A field kit's positive holds as a sign does.");
}

PaperRow resultRow(const PaperBook& book, const core::Result& r) {
    PaperRow out;
    out.row.colony = r.colony;
    const QString of = r.colony ? placed(book, *r.colony) : book.yardName(*r.yard);
    out.row.title = Health::tr("%1: %2").arg(of, records::verdictWord(r.verdict));
    out.row.right = look::dayText(r.day);
    QStringList parts{records::diseaseWord(r.disease), records::methodWord(r.method), Health::tr("by %1").arg(r.by)};
    if (!r.paper.isEmpty()) parts << Health::tr("paper %1").arg(r.paper);
    if (!r.note.isEmpty()) parts << r.note;
    out.row.lines << parts.join(QStringLiteral(", "));
    if (r.verdict == core::Verdict::Order) {
        const core::Result* release = releaseOf(book, r);
        if (release)
            out.row.lines[0] +=
                Health::tr("; released on %1, paper %2").arg(look::dayText(release->day), release->paper);
        else
            out.row.cautions << Health::tr("In force: no release names it.");
    }
    if (r.method == core::Method::Field) out.row.lines[0] += QStringLiteral(". ") + fieldText(r);
    const QString title = r.yard ? Health::tr("Result of the yard") : Health::tr("Result");
    out.record = records::RecordRow{records::RecordKind::Result, r.id.value, r.day, title, {}, r.yard.has_value()};
    return out;
}

} // namespace

QString PaperBook::name(core::ColonyId colony) const {
    const auto found = byId.find(colony);
    return found == byId.end() ? look::dash() : snapshot.colony(found->second).shown;
}

std::optional<core::YardId> PaperBook::yardOf(core::ColonyId colony) const {
    const auto found = byId.find(colony);
    const core::SnapStay* place = found == byId.end() ? nullptr : snapshot.placeOf(found->second);
    return place ? std::optional(snapshot.yard(place->yard).id) : std::nullopt;
}

QString PaperBook::yardName(core::YardId yard) const {
    const auto found = std::ranges::find(snapshot.yards, yard, &core::SnapYard::id);
    return found == snapshot.yards.end() ? look::dash() : found->name;
}

bool PaperBook::shows(std::optional<core::ColonyId> colony, std::optional<core::YardId> yard) const {
    return !only || yard == only || (colony && yardOf(*colony) == only);
}

const core::Result* PaperBook::result(core::ResultId id) const {
    const auto found = std::ranges::find(results, id, &core::Result::id);
    return found == results.end() ? nullptr : &*found;
}

PaperBook paperBook(const core::edit::Session& book, core::Snapshot today, std::optional<core::YardId> only) {
    PaperBook out;
    out.today = today.on;
    out.snapshot = std::move(today);
    out.samples = book.samples();
    out.results = book.results();
    out.kitEnds = book.kitEnds();
    for (size_t i = 0; i < out.snapshot.colonies.size(); ++i)
        out.byId.emplace(out.snapshot.colonies[i].id, core::ColonyIx{static_cast<qint32>(i)});
    out.only = only;
    return out;
}

std::vector<PaperRow> sampleRows(const PaperBook& book) {
    std::vector<PaperRow> out;
    for (const SampleState state :
         {SampleState::Late, SampleState::NotSent, SampleState::Awaited, SampleState::In, SampleState::GivenUp}) {
        std::vector<PaperRow> group;
        for (const core::Sample& s : book.samples)
            if (book.shows(s.colony, {}) &&
                rules::sampleState(s, book.today, book.snapshot.settings.sampleLateDays) == state)
                group.push_back(sampleRow(book, s, state));
        if (group.empty()) continue;
        // What waits longest comes first; of what is done, the latest.
        if (state == SampleState::In || state == SampleState::GivenUp) std::ranges::reverse(group);
        out.push_back(section(groupTitle(state), group.size()));
        out.insert(out.end(), group.begin(), group.end());
    }
    if (out.empty())
        out.push_back(note(book.only ? Health::tr("No sample of a hive of this yard is in the book.")
                                     : Health::tr("No sample is in the book.")));
    return out;
}

std::vector<PaperRow> resultRows(const PaperBook& book) {
    using core::Method;
    using core::Verdict;
    const auto isPaper = [](const core::Result& r) {
        return r.verdict == Verdict::Order || r.verdict == Verdict::Release;
    };
    std::vector<PaperRow> out;
    const auto add = [&](const QString& title, auto belongs) {
        std::vector<PaperRow> group;
        for (const core::Result& r : book.results)
            if (book.shows(r.colony, r.yard) && belongs(r)) group.push_back(resultRow(book, r));
        if (group.empty()) return;
        std::ranges::reverse(group);
        out.push_back(section(title, group.size()));
        out.insert(out.end(), group.begin(), group.end());
    };
    add(Health::tr("Orders and releases"), isPaper);
    add(Health::tr("Found by laboratories and inspectors"),
        [&](const core::Result& r) { return !isPaper(r) && r.method != Method::Field; });
    add(Health::tr("Field kits at the hive"), [&](const core::Result& r) { return r.method == Method::Field; });
    if (out.empty())
        out.push_back(note(book.only ? Health::tr("No result, order or release of this yard is in the book.")
                                     : Health::tr("No result, order or release is in the book.")));
    return out;
}

QString awaitedText(const PaperBook& book) {
    int toSend = 0, awaited = 0, late = 0;
    for (const core::Sample& s : book.samples) {
        if (!book.shows(s.colony, {})) continue;
        const SampleState state = rules::sampleState(s, book.today, book.snapshot.settings.sampleLateDays);
        toSend += state == SampleState::NotSent;
        late += state == SampleState::Late;
        awaited += state == SampleState::Awaited || state == SampleState::Late;
    }
    QStringList parts;
    if (toSend > 0) parts << Health::tr("%1 not sent yet").arg(toSend);
    if (awaited > 0)
        parts << (late > 0 ? Health::tr("%1 awaited, %2 of them late").arg(awaited).arg(late)
                           : Health::tr("%1 awaited").arg(awaited));
    return parts.join(QStringLiteral(" · "));
}

} // namespace ui::health
