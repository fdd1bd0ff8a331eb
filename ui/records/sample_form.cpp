#include "ui/records/sample_form.h"

#include "core/edit/samples.h"
#include "ui/form/typed.h"
#include "ui/look/words.h"
#include "ui/records/odd.h"
#include "ui/records/record_words.h"

#include <algorithm>

namespace ui::records {

namespace edit = core::edit;
using core::Sample;
using form::Field;
using form::Kind;
using form::Values;

namespace {

const QString kSampleDisease = QStringLiteral("disease");
const QString kMaterial = QStringLiteral("material");
const QString kLaboratory = QStringLiteral("laboratory");
const QString kNumber = QStringLiteral("number");
const QString kSent = QStringLiteral("sent");
const QString kLost = QStringLiteral("lost");

} // namespace

SampleForm::SampleForm(const edit::Session& book, std::vector<core::ColonyId> colonies, core::Day day)
    : RecordForm(book), m_colonies(std::move(colonies)), m_day(day) {}

SampleForm::SampleForm(const edit::Session& book, const Sample& was)
    : RecordForm(book), m_colonies{was.colony}, m_day(was.day), m_was(was) {}

QString SampleForm::someName() const {
    return m_colonies.size() == 1 ? nameOf(m_colonies.front(), m_day) : Records::tr("%1 hives").arg(m_colonies.size());
}

QString SampleForm::title() const {
    return m_was ? Records::tr("A sample of %1").arg(someName()) : Records::tr("Sample of %1").arg(someName());
}

QString SampleForm::saveText() const {
    if (m_was) return Records::tr("&Save changes");
    return m_colonies.size() == 1 ? Records::tr("&Save sample")
                                  : Records::tr("&Save %1 samples").arg(m_colonies.size());
}

/// Those that samples went to, the latest first.
std::vector<form::Option> SampleForm::laboratories() const {
    std::vector<form::Option> out;
    const auto offer = [&out](const QString& name) {
        const bool there = std::ranges::any_of(out, [&](const form::Option& o) { return o.value == name; });
        if (!name.isEmpty() && !there) out.push_back({name, {}});
    };
    const auto samples = book().samples();
    for (auto s = samples.rbegin(); s != samples.rend(); ++s) offer(s->laboratory);
    const auto results = book().results();
    for (auto r = results.rbegin(); r != results.rend(); ++r)
        if (r->method == core::Method::Laboratory) offer(r->by);
    return out;
}

std::vector<Field> SampleForm::fields() const {
    std::vector<Field> out;
    out.push_back(
        {.key = kSampleDisease,
         .kind = Kind::Choice,
         .label = Records::tr("&Looked for"),
         .spoken = Records::tr("Disease that is looked for"),
         .options = choices<core::Disease>(diseaseWord),
         .note = [](const Values&) { return Records::tr("A sample holds and lifts nothing: its answer does."); }});
    out.push_back({.key = kMaterial,
                   .kind = Kind::Choice,
                   .label = Records::tr("Sample &of"),
                   .spoken = Records::tr("What the sample is of"),
                   .options = choices<core::SampleMaterial>(materialWord)});
    out.push_back({.key = kLaboratory,
                   .label = Records::tr("La&boratory"),
                   .spoken = Records::tr("Laboratory that it goes to"),
                   .hint = Records::tr("where it goes"),
                   .options = laboratories()});
    out.push_back({.key = kNumber,
                   .label = Records::tr("N&umber"),
                   .spoken = Records::tr("Number written on it"),
                   .hint = Records::tr("written on it")});
    out.push_back(dayField(Records::tr("Day on which it was taken")));
    out.back().label = Records::tr("&Taken");
    out.push_back({.key = kSent,
                   .kind = Kind::Day,
                   .label = Records::tr("S&ent"),
                   .spoken = Records::tr("Day on which it was sent"),
                   .hint = Records::tr("empty: not sent yet")});
    if (m_was && !m_was->result)
        out.push_back({.key = kLost,
                       .kind = Kind::Day,
                       .label = Records::tr("&Given up"),
                       .spoken = Records::tr("Since when no answer is awaited"),
                       .hint = Records::tr("empty: it is awaited")});
    out.push_back(byField(Records::tr("B&y"), Records::tr("Who took it")));
    out.push_back(noteField());
    return out;
}

Values SampleForm::start() const {
    Values v{{kDay, form::typedDay(m_day)}};
    const auto all = m_was ? std::vector<Sample>{} : book().samples();
    if (!m_was && all.empty()) return v;
    const Sample& from = m_was ? *m_was : all.back();
    v[kSampleDisease] = core::word(from.disease);
    v[kMaterial] = core::word(from.material);
    v[kLaboratory] = from.laboratory;
    if (!m_was) return v;
    v[kNumber] = from.number;
    v[kSent] = form::typedDay(from.sent);
    v[kLost] = form::typedDay(from.lost);
    v[kBy] = from.by;
    v[kNote] = from.note;
    return v;
}

Sample SampleForm::sampleOf(const Values& values) const {
    Sample s = m_was.value_or(Sample{});
    s.colony = m_colonies.front();
    s.day = form::dayOf(values, kDay, today()).value_or(m_day);
    s.disease = chosenOf<core::Disease>(values, kSampleDisease);
    s.material = chosenOf<core::SampleMaterial>(values, kMaterial);
    s.laboratory = form::typed(values, kLaboratory);
    s.number = form::typed(values, kNumber);
    s.sent = form::dayOf(values, kSent, today());
    s.lost = s.result ? std::nullopt : form::dayOf(values, kLost, today());
    s.by = form::typed(values, kBy);
    s.note = form::typed(values, kNote);
    return s;
}

void SampleForm::judge(form::Judge& judge, const Values& values) const {
    judge.need(kLaboratory, Records::tr("Which laboratory does it go to?"));
    const auto taken = judge.needDay(kDay);
    const auto sent = judge.day(kSent);
    if (taken && sent && *sent < *taken) judge.add(kSent, Records::tr("It cannot be sent before it is taken."));
    const auto lost = judge.day(kLost);
    if (taken && lost && *lost < sent.value_or(*taken))
        judge.add(kLost, Records::tr("It cannot be given up before it is taken and sent."));
    Q_UNUSED(values)
}

QStringList SampleForm::odd(const Values& values) const {
    const Sample s = sampleOf(values);
    QStringList out;
    if (m_was && m_was->day == s.day) return out;
    if (const auto odd = longAgo(s.day, today())) out << *odd;
    for (const core::ColonyId id : m_colonies) {
        const auto colony = book().colony(id);
        if (colony && colony->ended && s.day > *colony->ended)
            out << Records::tr("%1 ended on %2: the sample is of what it left behind.")
                       .arg(colony->label, look::dayText(*colony->ended));
    }
    return out;
}

edit::Edit SampleForm::edit(const Values& values) const {
    const Sample s = sampleOf(values);
    if (m_was) return [s](const edit::EditContext& c) { return edit::changeSample(c, s); };
    std::vector<Sample> all;
    for (const core::ColonyId id : m_colonies) {
        all.push_back(s);
        all.back().colony = id;
    }
    return [all](const edit::EditContext& c) { return edit::takeSamples(c, all); };
}

std::optional<QString> SampleForm::meanwhile() const { return m_was ? movedSince(book(), *m_was) : std::nullopt; }

} // namespace ui::records
