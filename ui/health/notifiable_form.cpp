#include "ui/health/notifiable_form.h"

#include "core/base/error.h"
#include "core/edit/notifiables.h"
#include "ui/form/judge.h"
#include "ui/form/typed.h"
#include "ui/health/health_words.h"

#include <algorithm>

namespace ui::health {

namespace rules = core::rules;

namespace {

const QString kNotifiedPlace = QStringLiteral("place");
const QString kNotifiedDisease = QStringLiteral("disease");
const QString kNotifiedMust = QStringLiteral("must");
const QString kNotifiedTell = QStringLiteral("tell");
const QString kNotifiedSource = QStringLiteral("source");
const QString kNotifiedNo = QStringLiteral("no");

std::vector<form::Option> diseaseOptions() {
    std::vector<form::Option> options;
    for (size_t i = 0; i < core::wordsOf<core::Reportable>().size(); ++i) {
        const auto disease = static_cast<core::Reportable>(i);
        options.push_back({core::word(disease), rules::reportableText(disease)});
    }
    return options;
}

} // namespace

NotifiableForm::NotifiableForm(const core::edit::Session& book, std::optional<rules::NotifiableLine> line)
    : m_book(book), m_line(std::move(line)) {}

QString NotifiableForm::title() const {
    return m_line ? Health::tr("%1 in %2").arg(rules::reportableText(m_line->row.disease), m_line->row.place)
                  : Health::tr("What must be reported");
}

QString NotifiableForm::saveText() const {
    return m_line && m_line->own ? Health::tr("&Save the change") : Health::tr("&Add line");
}

std::vector<form::Field> NotifiableForm::fields() const {
    std::vector<form::Option> places;
    for (const QString& place : rules::notifiablePlaces(m_book.notifiables())) places.push_back({place});
    return {{.key = kNotifiedPlace,
             .label = Health::tr("&Place"),
             .spoken = Health::tr("Country or state"),
             .options = std::move(places)},
            {.key = kNotifiedDisease,
             .kind = form::Kind::Choice,
             .label = Health::tr("&Disease or pest"),
             .spoken = Health::tr("Disease or pest"),
             .options = diseaseOptions()},
            {.key = kNotifiedMust,
             .kind = form::Kind::Choice,
             .label = Health::tr("&Reported"),
             .spoken = Health::tr("Whether it must be reported"),
             .options = {{form::kTicked, Health::tr("must be reported")},
                         {kNotifiedNo, Health::tr("need not be reported")}}},
            {.key = kNotifiedTell,
             .label = Health::tr("&Whom to tell"),
             .spoken = Health::tr("Whom to tell: office, telephone, how soon"),
             .hint = Health::tr("Office, telephone, how soon")},
            {.key = kNotifiedSource,
             .label = Health::tr("S&ource"),
             .spoken = Health::tr("Where that is written"),
             .hint = Health::tr("Law, letter, page, with its date")}};
}

form::Values NotifiableForm::start() const {
    if (!m_line) {
        const auto keeper = m_book.keeper();
        return {{kNotifiedPlace, keeper ? keeper->place : QString()},
                {kNotifiedDisease, core::word(core::Reportable::Afb)},
                {kNotifiedMust, form::kTicked}};
    }
    const core::Notifiable& row = m_line->row;
    return {{kNotifiedPlace, row.place},
            {kNotifiedDisease, core::word(row.disease)},
            {kNotifiedMust, row.must ? form::kTicked : kNotifiedNo},
            {kNotifiedTell, row.tell},
            {kNotifiedSource, row.source}};
}

std::vector<form::Problem> NotifiableForm::problems(const form::Values& values) const {
    form::Judge judge(values, m_book.clock().today());
    if (!judge.need(kNotifiedPlace, Health::tr("A country or state."))) return judge.take();
    try {
        core::edit::checkedNotifiable(rowOf(values));
    } catch (const core::Error& e) {
        judge.add({}, e.userMessage());
    }
    return judge.take();
}

core::Notifiable NotifiableForm::rowOf(const form::Values& values) const {
    core::Notifiable row = m_line ? m_line->row : core::Notifiable{};
    row.place = form::typed(values, kNotifiedPlace);
    row.disease = core::fromWord<core::Reportable>(form::typed(values, kNotifiedDisease)).value_or(row.disease);
    row.must = form::typed(values, kNotifiedMust) != kNotifiedNo;
    row.tell = form::typed(values, kNotifiedTell);
    row.source = form::typed(values, kNotifiedSource);
    return row;
}

core::edit::Edit NotifiableForm::edit(const form::Values& values) const {
    const core::Notifiable row = rowOf(values);
    if (m_line && m_line->own)
        return [row](const core::edit::EditContext& c) { return core::edit::changeNotifiable(c, row); };
    return [row](const core::edit::EditContext& c) { return core::edit::addNotifiable(c, row); };
}

std::optional<QString> NotifiableForm::meanwhile() const {
    if (!m_line || !m_line->own) return std::nullopt;
    const auto lines = m_book.notifiables();
    const auto now = std::ranges::find(lines, m_line->row.id, &core::Notifiable::id);
    if (now == lines.end()) return Health::tr("This line was taken back meanwhile.");
    if (*now == m_line->row) return std::nullopt;
    return Health::tr("This line was changed meanwhile. What is typed here stays; saving writes it over that change.");
}

} // namespace ui::health
