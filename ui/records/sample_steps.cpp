#include "core/edit/samples.h"
#include "ui/form/typed.h"
#include "ui/look/words.h"
#include "ui/records/record_words.h"
#include "ui/records/sample_form.h"

// What becomes of a sample: sent, answered, given up.

namespace ui::records {

namespace edit = core::edit;
using core::Sample;
using form::Kind;
using form::Values;

namespace {

const QString kAnswer = QStringLiteral("answer");
const QString kAnswerPaper = QStringLiteral("paper");
const QString kTogether = QStringLiteral("together");

QString answerNote(const Sample& sample, const Values& values) {
    const auto verdict = core::fromWord<core::Verdict>(form::typed(values, kAnswer));
    if (!verdict) return {};
    const QString day = look::dayText(sample.day);
    if (*verdict == core::Verdict::Positive)
        return Records::tr("The result is dated %1, when the sample was taken. Only an inspector's release ends it.")
            .arg(day);
    return Records::tr("The result is dated %1, when the sample was taken: it answers signs up to that day. A positive "
                       "it never ends.")
        .arg(day);
}

} // namespace

SampleAnswerForm::SampleAnswerForm(const edit::Session& book, const Sample& sample)
    : RecordForm(book), m_sample(sample) {}

QString SampleAnswerForm::title() const {
    return Records::tr("Answer to the sample of %1, taken on %2")
        .arg(nameOf(m_sample.colony, m_sample.day), look::dayText(m_sample.day));
}

QString SampleAnswerForm::saveText() const { return Records::tr("&Save the answer"); }

std::vector<form::Field> SampleAnswerForm::fields() const {
    std::vector<form::Field> out;
    out.push_back({.key = kAnswer,
                   .kind = Kind::Choice,
                   .label = diseaseWord(m_sample.disease),
                   .spoken = Records::tr("What was found"),
                   .options = {{QString(), Records::tr("not chosen")},
                               {core::word(core::Verdict::Negative), verdictWord(core::Verdict::Negative)},
                               {core::word(core::Verdict::Positive), verdictWord(core::Verdict::Positive)}},
                   .note = [sample = m_sample](const Values& values) { return answerNote(sample, values); }});
    out.push_back(byField(Records::tr("&By"), Records::tr("Who says so")));
    out.push_back({.key = kAnswerPaper,
                   .label = Records::tr("&Paper"),
                   .spoken = Records::tr("Number of the report"),
                   .hint = Records::tr("number of the report")});
    out.push_back(noteField());
    return out;
}

Values SampleAnswerForm::start() const { return {{kBy, m_sample.laboratory}}; }

void SampleAnswerForm::judge(form::Judge& judge, const Values&) const {
    judge.need(kAnswer, Records::tr("Negative or positive?"));
    judge.need(kBy, Records::tr("Who says so? The laboratory's name."));
}

edit::Edit SampleAnswerForm::edit(const Values& values) const {
    const edit::SampleAnswer answer{form::typed(values, kAnswer) == core::word(core::Verdict::Positive),
                                    form::typed(values, kBy), form::typed(values, kAnswerPaper),
                                    form::typed(values, kNote)};
    return [id = m_sample.id, answer](const edit::EditContext& c) { return edit::answerSample(c, id, answer); };
}

std::optional<QString> SampleAnswerForm::meanwhile() const { return movedSince(book(), m_sample); }

SampleDayForm::SampleDayForm(const edit::Session& book, const Sample& sample, Step step)
    : RecordForm(book), m_sample(sample), m_step(step) {}

QString SampleDayForm::title() const {
    const QString name = nameOf(m_sample.colony, m_sample.day);
    return m_step == Step::Sent ? Records::tr("The sample of %1 is sent").arg(name)
                                : Records::tr("The sample of %1 is given up").arg(name);
}

QString SampleDayForm::saveText() const { return Records::tr("&Save"); }

std::vector<core::SampleId> SampleDayForm::together(core::Day day) const {
    std::vector<core::SampleId> out{m_sample.id};
    for (const Sample& s : book().samples())
        if (s.id != m_sample.id && !s.sent && !s.result && !s.lost && s.laboratory == m_sample.laboratory &&
            s.day <= day)
            out.push_back(s.id);
    return out;
}

std::vector<form::Field> SampleDayForm::fields() const {
    std::vector<form::Field> out;
    if (m_step == Step::GivenUp) {
        out.push_back(dayField(Records::tr("Since when no answer is awaited")));
        out.back().note = [](const Values&) {
            return Records::tr("Lost, spoilt or never answered. It can be answered all the same, should the answer "
                               "come.");
        };
        return out;
    }
    out.push_back(dayField(Records::tr("Day on which it was sent")));
    const auto others = together(today()).size() - 1;
    if (others > 0)
        out.push_back({.key = kTogether,
                       .kind = Kind::Tick,
                       .label = others == 1
                                    ? Records::tr("And the &other one for %1").arg(m_sample.laboratory)
                                    : Records::tr("And the %1 &others for %2").arg(others).arg(m_sample.laboratory),
                       .spoken = Records::tr("The others for the same laboratory are sent too")});
    return out;
}

Values SampleDayForm::start() const { return {{kDay, form::typedDay(today())}, {kTogether, form::kTicked}}; }

void SampleDayForm::judge(form::Judge& judge, const Values&) const {
    const auto day = judge.needDay(kDay);
    const core::Day from = m_step == Step::Sent ? m_sample.day : m_sample.sent.value_or(m_sample.day);
    if (day && *day < from)
        judge.add(kDay, m_step == Step::Sent
                            ? Records::tr("It cannot be sent before it is taken, on %1.").arg(look::dayText(from))
                            : Records::tr("It cannot be given up before it is taken and sent."));
}

edit::Edit SampleDayForm::edit(const Values& values) const {
    const core::Day day = form::dayOf(values, kDay, today()).value_or(today());
    if (m_step == Step::GivenUp)
        return [id = m_sample.id, day](const edit::EditContext& c) { return edit::giveSampleUp(c, id, day); };
    const auto samples = form::ticked(values, kTogether) ? together(day) : std::vector{m_sample.id};
    return [samples, day](const edit::EditContext& c) { return edit::sendSamples(c, samples, day); };
}

std::optional<QString> SampleDayForm::meanwhile() const { return movedSince(book(), m_sample); }

} // namespace ui::records
