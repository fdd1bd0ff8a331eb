#include "ui/records/result_form.h"

#include "core/edit/edits.h"
#include "core/edit/put_right.h"
#include "ui/form/typed.h"
#include "ui/records/odd.h"
#include "ui/records/record_words.h"

namespace ui::records {

namespace edit = core::edit;
using core::Method;
using core::Verdict;
using form::Kind;
using form::Values;

namespace {

const QString kDisease = QStringLiteral("disease");
const QString kVerdict = QStringLiteral("result");
const QString kMethod = QStringLiteral("method");
const QString kPaper = QStringLiteral("paper");

bool isPaper(const Values& v) {
    const auto verdict = chosenOf<Verdict>(v, kVerdict);
    return verdict == Verdict::Order || verdict == Verdict::Release;
}

} // namespace

ResultForm::ResultForm(const edit::Session& book, const Subject& about, core::Day day)
    : SubjectForm(book, about, day) {}

ResultForm::ResultForm(const edit::Session& book, const core::Result& was)
    : SubjectForm(book, {was.colony, was.yard}, was.day), m_was(was) {}

QString ResultForm::title() const {
    return m_was ? Records::tr("A result of %1").arg(subjectName()) : Records::tr("Result of %1").arg(subjectName());
}

QString ResultForm::saveText() const { return m_was ? Records::tr("&Save changes") : Records::tr("&Save result"); }

std::vector<form::Field> ResultForm::fields() const {
    std::vector<form::Field> out = subjectFields();
    out.push_back({.key = kDisease,
                   .kind = Kind::Choice,
                   .label = Records::tr("D&isease"),
                   .spoken = Records::tr("Disease"),
                   .options = choices<core::Disease>(diseaseWord)});
    out.push_back({.key = kVerdict,
                   .kind = Kind::Choice,
                   .label = Records::tr("&Result"),
                   .spoken = Records::tr("Result"),
                   .options = choices<Verdict>(verdictWord)});
    out.push_back({.key = kMethod,
                   .kind = Kind::Choice,
                   .label = Records::tr("&How"),
                   .spoken = Records::tr("How it was found"),
                   .options = choices<Method>(methodWord)});
    out.push_back(byField(Records::tr("&By"), Records::tr("Who says so")));
    out.back().hint = Records::tr("who says so");
    out.push_back({.key = kPaper,
                   .label = Records::tr("&Paper"),
                   .spoken = Records::tr("Number of the report or order"),
                   .hint = Records::tr("number of the report or order")});
    out.push_back(dayField(Records::tr("Day the sample was taken, or of the order or release")));
    out.push_back(noteField());
    return out;
}

Values ResultForm::start() const {
    Values v{{kDay, form::typedDay(day())}, {kVerdict, core::word(Verdict::Negative)}};
    putSubject(v);
    if (!m_was) return v;
    v[kDisease] = core::word(m_was->disease);
    v[kVerdict] = core::word(m_was->verdict);
    v[kMethod] = core::word(m_was->method);
    v[kBy] = m_was->by;
    v[kPaper] = m_was->paper;
    v[kNote] = m_was->note;
    return v;
}

void ResultForm::judge(form::Judge& judge, const Values& values) const {
    judge.need(kBy, Records::tr("Who says so? The laboratory's or inspector's name."));
    if (isPaper(values)) {
        judge.need(kPaper, Records::tr("An order or a release needs the number of its paper."));
        if (chosenOf<Method>(values, kMethod) != Method::Inspector)
            judge.add(kMethod, Records::tr("An order or a release comes from an inspector."));
    } else if (ofYard(values)) {
        judge.add(kVerdict, Records::tr("Only an order or a release names a whole yard."));
    }
    const auto on = judge.needDay(kDay);
    judgeSubject(judge, values, on.value_or(day()));
}

core::Result ResultForm::resultOf(const Values& values) const {
    core::Result r = m_was.value_or(core::Result{});
    r.day = form::dayOf(values, kDay, today()).value_or(day());
    const Subject of = subjectOf(values, r.day);
    r.colony = of.colony;
    r.yard = of.yard;
    r.disease = chosenOf<core::Disease>(values, kDisease);
    r.verdict = chosenOf<Verdict>(values, kVerdict);
    r.method = chosenOf<Method>(values, kMethod);
    r.by = form::typed(values, kBy);
    r.paper = form::typed(values, kPaper);
    r.note = form::typed(values, kNote);
    return r;
}

QStringList ResultForm::odd(const Values& values) const {
    const core::Result r = resultOf(values);
    QStringList out;
    if (m_was && m_was->day == r.day) return out;
    if (const auto odd = longAgo(r.day, today())) out << *odd;
    return out;
}

edit::Edit ResultForm::edit(const Values& values) const {
    const core::Result r = resultOf(values);
    if (m_was) return [r](const edit::EditContext& c) { return edit::changeResult(c, r); };
    return [r](const edit::EditContext& c) { return edit::logResult(c, r); };
}

std::optional<QString> ResultForm::meanwhile() const { return m_was ? movedSince(book(), *m_was) : std::nullopt; }

} // namespace ui::records
