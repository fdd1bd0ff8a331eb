#include "core/edit/after_union.h"
#include "core/edit/edits.h"
#include "core/edit/put_right.h"
#include "core/edit/samples.h"
#include "core/edit/strips_out.h"
#include "tests/reliability/soak/hand.h"

// Results, samples, the medicine book.

namespace tests::soak {

namespace {

Verdict verdict(Hand& h) {
    if (h.sick && h.oneIn(6)) return h.oneOf({Verdict::Positive, Verdict::Positive, Verdict::Order});
    return h.oneIn(5) ? Verdict::Release : Verdict::Negative;
}

Result resultOf(Hand& h) {
    h.needFew(Table::Result);
    Result r;
    r.verdict = verdict(h);
    r.method = Method::Inspector;
    r.disease = static_cast<Disease>(h.upTo(1));
    if (h.oneIn(8) && r.verdict != Verdict::Positive)
        r.yard = h.yard();
    else
        r.colony = h.living();
    r.day = r.colony ? h.dayOf(*r.colony) : h.today - h.upTo(10);
    r.by = QStringLiteral("the inspector");
    r.paper = QString::number(h.upTo(99));
    r.note = h.note();
    return r;
}

ChangeSet resultNow(Hand& h, const EditContext& c) {
    Result now = h.any<Result>();
    if (h.oneIn(3)) now.day = h.near(now.day);
    if (h.oneIn(6)) now.verdict = verdict(h);
    now.note = h.note();
    return changeResult(c, now);
}

Treatment treatmentOf(Hand& h) {
    h.needFew(Table::Treatment);
    Treatment t;
    if (h.oneIn(6))
        t.yard = h.yard();
    else
        t.colony = h.living();
    t.day = t.colony ? h.dayOf(*t.colony) : h.today - h.upTo(5);
    t.product = h.oneOf({QStringLiteral("strips"), QStringLiteral("powder")});
    t.substance = QStringLiteral("salt");
    t.antibiotic = h.sick && h.oneIn(10);
    if (h.oneIn(2)) t.days = 7 + h.upTo(40);
    if (h.oneIn(2)) t.quantity = h.upTo(100) / 8.0;
    t.by = h.who();
    t.reason = h.note();
    return t;
}

ChangeSet treatmentNow(Hand& h, const EditContext& c) {
    Treatment now = h.any<Treatment>();
    if (h.oneIn(3)) now.day = h.near(now.day);
    now.quantity = h.upTo(100) / 8.0;
    now.reason = h.note();
    return changeTreatment(c, now);
}

ChangeSet stripsOut(Hand& h, const EditContext& c) {
    h.needFew(Table::StripsOut);
    const auto t = h.such<Treatment>([](const Treatment& x) { return x.colony.has_value(); });
    const ColonyId of = t.colony ? *t.colony : h.living();
    return logStripsOut(c, {{}, t.id, of, std::min(h.today, t.day + 5), h.who(), h.note()});
}

ChangeSet takenOut(Hand& h, const EditContext& c) {
    const auto t = h.such<Treatment>([](const Treatment& x) { return x.colony.has_value(); });
    return logTakenOut(c, *t.colony, std::min(h.today, t.day + 6), t.product, h.who());
}

Sample sampleOf(Hand& h) {
    h.needFew(Table::Sample);
    Sample s;
    s.colony = h.living();
    s.day = h.dayOf(s.colony);
    s.disease = static_cast<Disease>(h.upTo(1));
    s.material = static_cast<SampleMaterial>(h.upTo(4));
    s.laboratory = QStringLiteral("Hill laboratory");
    s.number = QString::number(h.upTo(500));
    return s;
}

Sample awaited(Hand& h) {
    return h.such<Sample>([](const Sample& s) { return !s.result; });
}

ChangeSet sampleNow(Hand& h, const EditContext& c) {
    Sample now = h.any<Sample>();
    now.number = QString::number(h.upTo(500));
    if (h.oneIn(4)) now.day = h.near(now.day);
    now.note = h.note();
    return changeSample(c, now);
}

ChangeSet setSome(Hand& h, const EditContext& c) {
    const auto set = [&](const char* name, const QString& value) {
        return setSetting(c, QString::fromLatin1(name), value);
    };
    switch (h.upTo(4)) {
    case 0:
        return set("gain.min", QString::number(h.upTo(6) * 50));
    case 1:
        return set("crew.people", QString::number(1 + h.upTo(8)));
    case 2:
        return set("sample.late_days", QString::number(10 + h.upTo(40)));
    case 3:
        return set("trace.days", QString::number(365 + h.upTo(3) * 30));
    default:
        return set("follow.union_days", QString::number(h.upTo(20)));
    }
}

const Kind kKinds[] = {
    {"setSetting", 3, setSome},
    {"logResult", 5, [](Hand& h, const EditContext& c) { return logResult(c, resultOf(h)); }},
    {"changeResult", 3, resultNow},
    {"takeBackResult", 9, [](Hand& h, const EditContext& c) { return takeBackResult(c, h.old<Result>().id); }},
    {"logTreatment", 5, [](Hand& h, const EditContext& c) { return logTreatment(c, treatmentOf(h)); }},
    {"changeTreatment", 4, treatmentNow},
    {"takeBackTreatment", 9, [](Hand& h, const EditContext& c) { return takeBackTreatment(c, h.old<Treatment>().id); }},
    {"logStripsOut", 3, stripsOut},
    {"logStripsOutOfAll", 2,
     [](Hand& h, const EditContext& c) {
         h.needFew(Table::StripsOut);
         const Treatment t = h.any<Treatment>();
         return logStripsOutOfAll(c, t.id, std::min(h.today, t.day + 5), h.who(), h.note());
     }},
    {"logTakenOut", 2, takenOut},
    {"changeStripsOut", 2,
     [](Hand& h, const EditContext& c) {
         StripsOut now = h.any<StripsOut>();
         now.day = h.near(now.day);
         now.note = h.note();
         return changeStripsOut(c, now);
     }},
    {"takeBackStripsOut", 9, [](Hand& h, const EditContext& c) { return takeBackStripsOut(c, h.old<StripsOut>().id); }},
    {"takeSample", 3, [](Hand& h, const EditContext& c) { return takeSample(c, sampleOf(h)); }},
    {"takeSamples", 1,
     [](Hand& h, const EditContext& c) {
         return takeSamples(c, {sampleOf(h), sampleOf(h)});
     }},
    {"changeSample", 2, sampleNow},
    {"sendSamples", 3,
     [](Hand& h, const EditContext& c) {
         const auto s = h.such<Sample>([](const Sample& x) { return !x.sent && !x.lost; });
         return sendSamples(c, {s.id}, std::min(h.today, s.day + 1));
     }},
    {"answerSample", 3,
     [](Hand& h, const EditContext& c) {
         return answerSample(c, awaited(h).id, {h.sick && h.oneIn(4), {}, QString::number(h.upTo(99)), h.note()});
     }},
    {"giveSampleUp", 1, [](Hand& h, const EditContext& c) { return giveSampleUp(c, awaited(h).id, h.today); }},
    {"takeBackSample", 9, [](Hand& h, const EditContext& c) { return takeBackSample(c, h.old<Sample>().id); }},
};

} // namespace

std::span<const Kind> healthKinds() { return kKinds; }

} // namespace tests::soak
