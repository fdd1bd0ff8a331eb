#include "ui/find/question_form.h"

#include "core/base/error.h"
#include "core/edit/question.h"
#include "ui/find/question_words.h"
#include "ui/form/judge.h"
#include "ui/form/typed.h"

#include <QCoreApplication>

#include <algorithm>

namespace ui::find {

namespace rules = core::rules;

namespace {

struct AskForms {
    Q_DECLARE_TR_FUNCTIONS(Questions)
};

const QString kName = QStringLiteral("name");
const QString kOnPlan = QStringLiteral("onPlan");
constexpr int kParts = static_cast<int>(rules::kMostAskParts);

QString key(const char* what, int part) { return QString::fromLatin1(what) + QString::number(part); }
/// Choices stand in a field of their own, so that each has its own list.
QString choiceKey(rules::AskWhat what, int part) {
    return QStringLiteral("choice%1-%2").arg(static_cast<int>(what)).arg(part);
}

std::optional<rules::AskWhat> whatOf(const form::Values& values, int part) {
    const auto n = form::wholeOf(values, key("what", part));
    return n ? std::optional(static_cast<rules::AskWhat>(*n)) : std::nullopt;
}

std::optional<rules::AskHow> howOf(const form::Values& values, int part) {
    const auto what = whatOf(values, part);
    if (!what) return std::nullopt;
    const auto n = form::wholeOf(values, key(rules::askRange(*what).choice ? "howChoice" : "how", part));
    return n ? std::optional(static_cast<rules::AskHow>(*n)) : std::nullopt;
}

bool reached(const form::Values& values, int part) { return part == 0 || whatOf(values, part - 1).has_value(); }

form::Field choice(const QString& key, const QString& label, const QString& spoken, std::vector<form::Option> options,
                   std::function<bool(const form::Values&)> shown) {
    form::Field field;
    field.key = key;
    field.kind = form::Kind::Choice;
    field.label = label;
    field.spoken = spoken;
    field.options = std::move(options);
    field.shown = std::move(shown);
    return field;
}

std::vector<form::Option> hows(bool ofChoice) {
    const rules::AskWhat like = ofChoice ? rules::AskWhat::Held : rules::AskWhat::Weight;
    std::vector<form::Option> options;
    for (int h = 0; h < rules::kAskHowCount; ++h)
        if (rules::fits(like, static_cast<rules::AskHow>(h)))
            options.push_back({QString::number(h), howText(static_cast<rules::AskHow>(h))});
    return options;
}

void addPart(std::vector<form::Field>& fields, int part) {
    std::vector<form::Option> whats{{QString(), part == 0 ? AskForms::tr("choose") : AskForms::tr("nothing more")}};
    for (int w = 0; w < rules::kAskWhatCount; ++w)
        whats.push_back({QString::number(w), whatText(static_cast<rules::AskWhat>(w))});
    const QString n = QString::number(part + 1);
    fields.push_back(choice(key("what", part), part == 0 ? AskForms::tr("&What") : AskForms::tr("And what"),
                            AskForms::tr("Condition %1: what it is about").arg(n), std::move(whats),
                            [part](const form::Values& v) { return reached(v, part); }));
    fields.back().heading = part == 0 ? AskForms::tr("All of this must hold") : QString();
    const auto is = [part](bool ofChoice) {
        return [part, ofChoice](const form::Values& v) {
            const auto what = whatOf(v, part);
            return what && rules::askRange(*what).choice == ofChoice;
        };
    };
    fields.push_back(choice(key("how", part), AskForms::tr("How"),
                            AskForms::tr("Condition %1: how it is compared").arg(n), hows(false), is(false)));
    fields.push_back(choice(key("howChoice", part), AskForms::tr("How"),
                            AskForms::tr("Condition %1: how it is compared").arg(n), hows(true), is(true)));
    const auto valued = [part](const form::Values& v) { return howOf(v, part) != rules::AskHow::NotRecorded; };
    form::Field than;
    than.key = key("than", part);
    than.kind = form::Kind::Decimal;
    than.label = AskForms::tr("Value");
    than.spoken = AskForms::tr("Condition %1: the value").arg(n);
    than.shown = [number = is(false), valued](const form::Values& v) { return number(v) && valued(v); };
    fields.push_back(than);
    for (int w = 0; w < rules::kAskWhatCount; ++w) {
        const auto what = static_cast<rules::AskWhat>(w);
        const rules::AskRange range = rules::askRange(what);
        if (!range.choice) continue;
        std::vector<form::Option> options;
        for (int at = static_cast<int>(range.least); at <= static_cast<int>(range.most); ++at)
            options.push_back({QString::number(at), choiceText(what, at)});
        fields.push_back(
            choice(choiceKey(what, part), AskForms::tr("Value"), AskForms::tr("Condition %1: the value").arg(n),
                   std::move(options),
                   [part, what, valued](const form::Values& v) { return whatOf(v, part) == what && valued(v); }));
    }
}

std::optional<rules::AskPart> partOf(const form::Values& values, int part) {
    const auto what = whatOf(values, part);
    const auto how = howOf(values, part);
    if (!what || !how) return std::nullopt;
    if (*how == rules::AskHow::NotRecorded) return rules::AskPart{*what, *how, 0};
    const auto than = rules::askRange(*what).choice ? form::decimalOf(values, choiceKey(*what, part))
                                                    : form::decimalOf(values, key("than", part));
    if (!than) return std::nullopt;
    return rules::AskPart{*what, *how, *than};
}

} // namespace

QString QuestionForm::title() const {
    return isNew() ? AskForms::tr("A question of your own") : AskForms::tr("Change the question %1").arg(m_was.name);
}

QString QuestionForm::saveText() const {
    return isNew() ? AskForms::tr("&Keep the question") : AskForms::tr("&Save the change");
}

std::vector<form::Field> QuestionForm::fields() const {
    std::vector<form::Field> fields;
    form::Field name;
    name.key = kName;
    name.label = AskForms::tr("&Name");
    name.spoken = AskForms::tr("Name of the question");
    fields.push_back(name);
    for (int part = 0; part < kParts; ++part) addPart(fields, part);
    form::Field onPlan;
    onPlan.key = kOnPlan;
    onPlan.kind = form::Kind::Tick;
    onPlan.label = AskForms::tr("&Mark on the plan");
    onPlan.spoken = AskForms::tr("Mark the hives that it finds on the plan");
    fields.push_back(onPlan);
    return fields;
}

form::Values QuestionForm::start() const {
    form::Values values{{kName, m_was.name}};
    if (m_was.onPlan) values[kOnPlan] = form::kTicked;
    const auto ask = rules::readAsk(m_was.ask).value_or(rules::Ask{});
    for (int part = 0; part < kParts; ++part) {
        values[key("how", part)] = QString::number(static_cast<int>(rules::AskHow::Below));
        values[key("howChoice", part)] = QString::number(static_cast<int>(rules::AskHow::Is));
        for (int w = 0; w < rules::kAskWhatCount; ++w) {
            const rules::AskRange range = rules::askRange(static_cast<rules::AskWhat>(w));
            if (range.choice)
                values[choiceKey(static_cast<rules::AskWhat>(w), part)] =
                    QString::number(static_cast<int>(range.least));
        }
        if (static_cast<size_t>(part) >= ask.size()) continue;
        const rules::AskPart& p = ask[static_cast<size_t>(part)];
        const bool ofChoice = rules::askRange(p.what).choice;
        values[key("what", part)] = QString::number(static_cast<int>(p.what));
        values[key(ofChoice ? "howChoice" : "how", part)] = QString::number(static_cast<int>(p.how));
        if (p.how == rules::AskHow::NotRecorded) continue;
        values[ofChoice ? choiceKey(p.what, part) : key("than", part)] = form::typedDecimal(p.than);
    }
    return values;
}

std::vector<form::Problem> QuestionForm::problems(const form::Values& values) const {
    form::Judge judge(values, m_book.clock().today());
    judge.need(kName, AskForms::tr("A name, such as “Not visited for 14 days”."));
    judge.need(key("what", 0), AskForms::tr("What is asked for: choose one of the list."));
    for (int part = 0; part < kParts; ++part) {
        const auto what = whatOf(values, part);
        if (!what || !reached(values, part) || howOf(values, part) == rules::AskHow::NotRecorded) continue;
        const rules::AskRange range = rules::askRange(*what);
        if (range.choice || !judge.need(key("than", part), AskForms::tr("A figure to compare with."))) continue;
        judge.decimal(key("than", part), range.least, range.most, range.decimals);
    }
    if (!judge.fine()) return judge.take();
    try {
        m_book.read([&](const core::edit::EditContext& c) { edit(values)(c); });
    } catch (const core::Error& e) {
        if (e.kind() != core::Error::Kind::BadData) throw;
        judge.add(kName, e.userMessage());
    }
    return judge.take();
}

rules::Ask QuestionForm::askOf(const form::Values& values) const {
    rules::Ask ask;
    for (int part = 0; part < kParts && reached(values, part); ++part)
        if (const auto p = partOf(values, part)) ask.push_back(*p);
    return ask;
}

core::edit::Edit QuestionForm::edit(const form::Values& values) const {
    core::Question now = m_was;
    now.about = QStringLiteral("colonies");
    now.name = form::typed(values, kName);
    now.ask = rules::askJson(askOf(values));
    now.onPlan = form::ticked(values, kOnPlan);
    if (isNew()) return [now](const core::edit::EditContext& c) { return core::edit::keepQuestion(c, now); };
    return [now](const core::edit::EditContext& c) { return core::edit::changeQuestion(c, now); };
}

std::optional<QString> QuestionForm::meanwhile() const {
    if (isNew()) return std::nullopt;
    const auto all = m_book.questions();
    const auto now = std::ranges::find(all, m_was.id, &core::Question::id);
    if (now == all.end()) return AskForms::tr("This question was taken back meanwhile.");
    if (*now == m_was) return std::nullopt;
    return AskForms::tr(
        "This question was changed meanwhile. What is typed here stays; saving writes it over that change.");
}

} // namespace ui::find
