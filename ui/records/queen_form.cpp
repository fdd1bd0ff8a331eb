#include "ui/records/queen_form.h"

#include "core/edit/queens.h"
#include "ui/form/typed.h"
#include "ui/look/queen_words.h"
#include "ui/look/rule_words.h"
#include "ui/look/words.h"
#include "ui/records/odd.h"
#include "ui/records/queen_fields.h"

namespace ui::records {

namespace edit = core::edit;
using core::Queen;
using core::QueenFate;
using form::Field;
using form::Kind;
using form::Values;

namespace {

const QString kBorn = QStringLiteral("born");
const QString kMark = QStringLiteral("mark");
const QString kTag = QStringLiteral("tag");
const QString kOrigin = QStringLiteral("origin");
const QString kSource = QStringLiteral("source");
const QString kMother = QStringLiteral("mother");

constexpr int kFirstBorn = 1990;
constexpr int kLastBorn = 2100;
/// Older ones are asked about. Common practice, no source.
constexpr int kOldYears = 5;

/// What colour is hers, and whether she bears it.
QString colourNote(const Values& values) {
    const auto born = form::wholeOf(values, kBorn);
    if (!born || *born < kFirstBorn || *born > kLastBorn) return {};
    const auto mark = core::fromWord<core::QueenMark>(form::typed(values, kMark));
    const QString odd = look::markMismatch(born, mark);
    return odd.isEmpty() ? Records::tr("Colour of %1: %2.").arg(QString::number(*born), look::queenMark(*born).name)
                         : odd;
}

} // namespace

std::optional<Queen> headOf(const edit::Session& book, core::ColonyId colony) {
    const auto queens = book.queensOf(colony);
    return queens.empty() || queens.back().until ? std::nullopt : std::optional(queens.back());
}

QString shownQueen(const Queen& queen) {
    const QString looks = look::looksText(queen);
    return looks.isEmpty() ? Records::tr("since %1").arg(look::dayText(queen.since)) : looks;
}

std::vector<form::Option> fateOptions(bool movedToo) {
    auto out = choices<QueenFate>(look::fateText);
    if (!movedToo) std::erase_if(out, [](const form::Option& o) { return o.value == core::word(QueenFate::Moved); });
    return out;
}

QueenForm::QueenForm(const edit::Session& book, core::ColonyId colony, core::Day day)
    : RecordForm(book), m_colony(colony), m_day(day), m_before(headOf(book, colony)) {}

QueenForm::QueenForm(const edit::Session& book, const Queen& was)
    : RecordForm(book), m_colony(was.colony), m_day(was.since), m_was(was) {}

QString QueenForm::title() const {
    const QString name = nameOf(m_colony, m_day);
    return m_was ? Records::tr("A queen of %1").arg(name) : Records::tr("New queen of %1").arg(name);
}

QString QueenForm::saveText() const { return m_was ? Records::tr("&Save changes") : Records::tr("&Save queen"); }

void QueenForm::addHerFields(std::vector<Field>& out) const {
    out.push_back({.key = kBorn,
                   .kind = Kind::Whole,
                   .label = Records::tr("&Born in"),
                   .spoken = Records::tr("Year that she was born in"),
                   .hint = Records::tr("year"),
                   .note = colourNote});
    out.push_back({.key = kMark,
                   .kind = Kind::Choice,
                   .label = Records::tr("&Mark"),
                   .spoken = Records::tr("Colour that she is marked with"),
                   .options = maybe<core::QueenMark>(Records::tr("not recorded"), look::markText)});
    out.push_back(
        {.key = kTag, .label = Records::tr("Number on her dis&c"), .spoken = Records::tr("Number on her disc")});
    out.push_back({.key = kOrigin,
                   .kind = Kind::Choice,
                   .label = Records::tr("&Origin"),
                   .spoken = Records::tr("Where she comes from"),
                   .options = maybe<core::QueenOrigin>(Records::tr("not recorded"), look::originText)});
    out.push_back({.key = kSource, .label = Records::tr("B&reeder or line"), .spoken = Records::tr("Breeder or line")});
    out.push_back(colonyField(kMother, Records::tr("Raised &from"), Records::tr("Colony that she was raised from")));
    out.push_back(noteField());
}

std::vector<Field> QueenForm::fields() const {
    std::vector<Field> out;
    out.push_back({.key = kDay,
                   .kind = Kind::Day,
                   .label = Records::tr("&Day"),
                   .spoken = Records::tr("Day from which she heads the colony")});
    if (!m_was && m_before)
        out.push_back({.key = kFate,
                       .kind = Kind::Choice,
                       .label = Records::tr("The one &before"),
                       .spoken = Records::tr("What became of the queen before"),
                       .options = fateOptions(true),
                       .note = [before = shownQueen(*m_before)](const Values&) { return before; }});
    addHerFields(out);
    if (!m_was) return out;
    out.push_back({.key = kFate,
                   .kind = Kind::Choice,
                   .label = Records::tr("&What became of her"),
                   .spoken = Records::tr("What became of her"),
                   .options = maybe<QueenFate>(Records::tr("she heads it, or not known"), look::fateText)});
    out.push_back({.key = kUntil,
                   .kind = Kind::Day,
                   .label = Records::tr("&Until"),
                   .spoken = Records::tr("Last day that she headed the colony"),
                   .shown = [](const Values& v) { return !form::typed(v, kFate).isEmpty(); }});
    return out;
}

Values QueenForm::start() const {
    Values v{{kDay, form::typedDay(m_day)}};
    if (!m_was && m_before) v[kFate] = core::word(QueenFate::Replaced);
    if (!m_was) return v;
    v[kBorn] = form::typedWhole(m_was->born);
    if (m_was->mark) v[kMark] = core::word(*m_was->mark);
    v[kTag] = m_was->tag;
    if (m_was->origin) v[kOrigin] = core::word(*m_was->origin);
    v[kSource] = m_was->source;
    if (m_was->mother) v[kMother] = nameOf(*m_was->mother, m_was->since);
    v[kNote] = m_was->note;
    if (m_was->fate) v[kFate] = core::word(*m_was->fate);
    v[kUntil] = form::typedDay(m_was->until);
    return v;
}

core::Day QueenForm::dayOf(const Values& values) const { return form::dayOf(values, kDay, today()).value_or(m_day); }

void QueenForm::judge(form::Judge& judge, const Values& values) const {
    judge.needDay(kDay);
    judge.whole(kBorn, kFirstBorn, kLastBorn);
    if (!form::typed(values, kMother).isEmpty()) judgeColony(judge, values, kMother, dayOf(values));
    if (m_was && !form::typed(values, kFate).isEmpty()) judge.needDay(kUntil);
}

Queen QueenForm::queenOf(const Values& values) const {
    Queen q = m_was.value_or(Queen{});
    q.colony = m_colony;
    q.since = dayOf(values);
    q.born = form::wholeOf(values, kBorn);
    q.mark = core::fromWord<core::QueenMark>(form::typed(values, kMark));
    q.tag = form::typed(values, kTag);
    q.origin = core::fromWord<core::QueenOrigin>(form::typed(values, kOrigin));
    q.source = form::typed(values, kSource);
    q.mother.reset();
    if (!form::typed(values, kMother).isEmpty()) q.mother = colonyOf(values, kMother, q.since);
    q.note = form::typed(values, kNote);
    if (!m_was) return q;
    q.fate = core::fromWord<QueenFate>(form::typed(values, kFate));
    q.until = q.fate ? form::dayOf(values, kUntil, today()) : std::nullopt;
    return q;
}

QStringList QueenForm::odd(const Values& values) const {
    const Queen q = queenOf(values);
    QStringList out;
    if (m_was && m_was->since == q.since && m_was->born == q.born && m_was->mark == q.mark) return out;
    if (const auto odd = longAgo(q.since, today()); odd && !(m_was && m_was->since == q.since)) out << *odd;
    if (const QString odd = look::markMismatch(q.born, q.mark); !odd.isEmpty()) out << odd;
    const int year = core::toDate(q.since).year();
    if (q.born && year - *q.born > kOldYears)
        out << Records::tr("She would have been %1 years old when she began to head the colony.").arg(year - *q.born);
    return out;
}

edit::Edit QueenForm::edit(const Values& values) const {
    const Queen q = queenOf(values);
    if (m_was) return [q](const edit::EditContext& c) { return edit::changeQueen(c, q); };
    std::optional<edit::QueenBefore> before;
    if (m_before) before = edit::QueenBefore{chosenOf<QueenFate>(values, kFate), {}};
    return [q, before](const edit::EditContext& c) { return edit::newQueen(c, q, before); };
}

std::optional<QString> QueenForm::meanwhile() const {
    if (m_was) return movedSince(book(), *m_was);
    if (headOf(book(), m_colony) == m_before) return std::nullopt;
    return Records::tr("The queens of this colony were changed meanwhile. Leave this form and begin it anew.");
}

} // namespace ui::records
