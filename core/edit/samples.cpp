#include "core/edit/samples.h"

#include "core/edit/edit_checks.h"
#include "core/edit/edits.h"
#include "core/edit/put_right.h"
#include "core/edit/row_change.h"

#include <algorithm>

namespace core::edit {

namespace {

QString sampledName(const EditContext& c, const Sample& s) { return shownName(c, needColony(c, s.colony), s.day); }

/// "the sample of 5 taken on 2026-09-10 (afb, brood)".
QString sampleName(const EditContext& c, const Sample& s) {
    return Edits::tr("the sample of %1 taken on %2 (%3, %4)")
        .arg(sampledName(c, s), isoText(s.day), word(s.disease), word(s.material));
}

void checkDays(const Sample& s) {
    if (s.sent && *s.sent < s.day)
        refuse(Edits::tr("Sent: %1 is before it was taken, on %2.").arg(isoText(*s.sent), isoText(s.day)));
    const Day from = s.sent.value_or(s.day);
    if (s.lost && *s.lost < from)
        refuse(Edits::tr("Given up: %1 is before it was taken or sent, on %2.").arg(isoText(*s.lost), isoText(from)));
    if (s.lost && s.result) refuse(Edits::tr("A sample that is answered is not given up."));
}

Sample checkedSample(const EditContext& c, const Sample& typed) {
    Sample s = typed;
    s.laboratory = typed.laboratory.trimmed();
    if (s.laboratory.isEmpty()) refuse(Edits::tr("Laboratory: expected where the sample goes, found nothing."));
    s.number = typed.number.trimmed();
    s.by = typed.by.trimmed();
    s.note = typed.note.trimmed();
    const Colony colony = needColony(c, s.colony);
    if (s.day < colony.since) needLife(c, colony, s.day);
    checkDays(s);
    return s;
}

Sample needSample(const EditContext& c, SampleId id) {
    auto sample = c.find<Sample>(id.value);
    if (!sample) refuse(Edits::tr("That sample is no longer in the book."));
    return *std::move(sample);
}

/// An answer of a laboratory to that sample, whatever day it names.
bool answers(const Result& r, const Sample& s) {
    const bool finding = r.verdict == Verdict::Positive || r.verdict == Verdict::Negative;
    return finding && r.method != Method::Field && r.colony == s.colony && r.disease == s.disease;
}

Sample answeredBy(const Sample& s, ResultId result) {
    Sample now = s;
    now.result = result;
    now.lost.reset();
    return now;
}

/// The result follows the day of its sample.
void moveAnswer(const EditContext& c, const Sample& now, ChangeSet& change) {
    const auto old = c.find<Result>(now.result->value);
    if (!old || old->day == now.day) return;
    Result moved = *old;
    moved.day = now.day;
    change.rows.push_back(changed(*old, moved));
}

} // namespace

ChangeSet takeSample(const EditContext& c, const Sample& typed) { return takeSamples(c, {typed}); }

ChangeSet takeSamples(const EditContext& c, const std::vector<Sample>& typed) {
    if (typed.empty()) return {};
    ChangeSet change;
    qint64 id = c.nextId(Table::Sample);
    Sample first;
    for (const Sample& each : typed) {
        Sample s = checkedSample(c, each);
        if (s.result || s.lost) refuse(Edits::tr("A sample that is taken now is neither answered nor given up."));
        s.id = SampleId{id++};
        change.rows.push_back(added(s));
        if (change.rows.size() == 1) first = s;
    }
    change.text = typed.size() == 1 ? Edits::tr("Took a sample of %1 on %2 (%3, %4) for %5")
                                          .arg(sampledName(c, first), isoText(first.day), word(first.disease),
                                               word(first.material), first.laboratory)
                                    : Edits::tr("Took samples of %1 colonies").arg(typed.size());
    return change;
}

ChangeSet changeSample(const EditContext& c, const Sample& typed) {
    const Sample old = needSample(c, typed.id);
    Sample now = typed;
    now.result = old.result;
    now = checkedSample(c, now);
    if (now == old) return {};
    if (old.result && (now.colony != old.colony || now.disease != old.disease))
        refuse(Edits::tr("It is answered: colony and disease are those of its result. Take the answer back first."));
    ChangeSet change;
    change.text = Edits::tr("Changed %1").arg(sampleName(c, old));
    change.rows.push_back(changed(old, now));
    if (now.result) moveAnswer(c, now, change);
    return change;
}

ChangeSet sendSamples(const EditContext& c, const std::vector<SampleId>& samples, Day day) {
    ChangeSet change;
    for (const SampleId id : samples) {
        const Sample old = needSample(c, id);
        if (old.sent)
            refuse(Edits::tr("It is written as sent already, on %1: %2.").arg(isoText(*old.sent), sampleName(c, old)));
        Sample now = old;
        now.sent = day;
        now = checkedSample(c, now);
        change.rows.push_back(changed(old, now));
        change.text = Edits::tr("Sent %1 to %2 on %3").arg(sampleName(c, old), old.laboratory, isoText(day));
    }
    if (samples.size() > 1) change.text = Edits::tr("Sent %1 samples on %2").arg(samples.size()).arg(isoText(day));
    return change;
}

ChangeSet answerSample(const EditContext& c, SampleId id, const SampleAnswer& answer) {
    const Sample old = needSample(c, id);
    if (old.result) refuse(Edits::tr("The answer to %1 is in the book.").arg(sampleName(c, old)));
    Result r;
    r.colony = old.colony;
    r.day = old.day;
    r.disease = old.disease;
    r.verdict = answer.positive ? Verdict::Positive : Verdict::Negative;
    r.method = Method::Laboratory;
    r.by = answer.by.trimmed().isEmpty() ? old.laboratory : answer.by;
    r.paper = answer.paper;
    r.note = answer.note;
    ChangeSet change = logResult(c, r);
    change.rows.resize(1); // whichever sample it would be taken for: this one is named
    change.rows.push_back(changed(old, answeredBy(old, ResultId{change.rows.front().id})));
    change.text = Edits::tr("Answer to %1: %2").arg(sampleName(c, old), word(r.verdict));
    return change;
}

ChangeSet giveSampleUp(const EditContext& c, SampleId id, Day day) {
    const Sample old = needSample(c, id);
    if (old.lost) refuse(Edits::tr("It is given up already, since %1.").arg(isoText(*old.lost)));
    Sample now = old;
    now.lost = day;
    now = checkedSample(c, now);
    return {Edits::tr("Gave up %1 on %2").arg(sampleName(c, old), isoText(day)), {changed(old, now)}, {}, {}, {}};
}

ChangeSet takeBackSample(const EditContext& c, SampleId id) {
    const Sample old = needSample(c, id);
    const QString text = Edits::tr("Took back %1").arg(sampleName(c, old));
    return {old.result ? Edits::tr("%1; its result stays").arg(text) : text, {deleted(old)}, {}, {}, {}};
}

void answerAwaited(const EditContext& c, const Result& r, ChangeSet& change) {
    if (!r.colony || r.method != Method::Laboratory) return;
    std::vector<Sample> awaiting = c.samplesOf(*r.colony);
    std::erase_if(awaiting, [&](const Sample& s) { return s.result || s.lost || s.day != r.day || !answers(r, s); });
    if (awaiting.size() != 1) return;
    change.rows.push_back(changed(awaiting.front(), answeredBy(awaiting.front(), r.id)));
    change.text = Edits::tr("%1; it answers the sample of that day").arg(change.text);
}

void followAnswer(const EditContext& c, const Result& old, const std::optional<Result>& now, ChangeSet& change) {
    const auto sample = c.sampleAnsweredBy(old.id);
    if (!sample || change.empty()) return;
    Sample follows = *sample;
    if (now && answers(*now, *sample)) {
        if (now->day == sample->day) return;
        follows.day = now->day;
        follows = checkedSample(c, follows);
    } else {
        follows.result.reset();
        change.text = Edits::tr("%1; its sample is awaited again").arg(change.text);
    }
    // Before its result goes: a row may not name one that is not there.
    change.rows.insert(change.rows.begin(), changed(*sample, follows));
}

} // namespace core::edit
