#include "ui/records/queen_end_form.h"

#include "core/edit/queens.h"
#include "ui/form/book_options.h"
#include "ui/form/typed.h"
#include "ui/look/queen_words.h"
#include "ui/look/words.h"
#include "ui/records/odd.h"
#include "ui/records/queen_fields.h"

namespace ui::records {

namespace edit = core::edit;
using core::QueenFate;
using form::Kind;
using form::Values;

namespace {

const QString kMovedTo = QStringLiteral("to");
const QString kOtherFate = QStringLiteral("other_fate");

bool isMove(const Values& values) { return form::typed(values, kFate) == core::word(QueenFate::Moved); }

core::Queen needHead(const edit::Session& book, const core::Colony& colony) {
    const auto queen = headOf(book, colony.id);
    if (!queen)
        throw core::Error(core::Error::Kind::BadData,
                          Records::tr("No queen of %1 is noted whose fate is open: note her with “New queen” first.")
                              .arg(colony.label));
    return *queen;
}

} // namespace

QueenEndForm::QueenEndForm(const edit::Session& book, const core::Colony& colony, core::Day day)
    : RecordForm(book), m_queen(needHead(book, colony)), m_day(day) {}

QString QueenEndForm::title() const {
    return Records::tr("What became of the queen of %1").arg(nameOf(m_queen.colony, m_day));
}

QString QueenEndForm::saveText() const { return Records::tr("&Save it"); }

std::vector<form::Field> QueenEndForm::fields() const {
    std::vector<form::Field> out;
    out.push_back({.key = kFate,
                   .kind = Kind::Choice,
                   .label = Records::tr("&What became of her"),
                   .spoken = Records::tr("What became of the queen"),
                   .options = fateOptions(true),
                   .note = [queen = shownQueen(m_queen)](const Values&) { return queen; }});
    out.push_back(dayField(Records::tr("Last day that she headed the colony")));
    form::Field to = colonyField(kMovedTo, Records::tr("&To"), Records::tr("Colony that she heads from then on"));
    to.hint = Records::tr("label; empty: none of this book");
    to.shown = isMove;
    out.push_back(std::move(to));
    out.push_back({.key = kOtherFate,
                   .kind = Kind::Choice,
                   .label = Records::tr("The one &before there"),
                   .spoken = Records::tr("What became of the queen that heads that colony"),
                   .options = fateOptions(true),
                   .shown = [this](const Values& values) { return otherOf(values).has_value(); },
                   .note =
                       [this](const Values& values) {
                           const auto other = otherOf(values);
                           return other ? shownQueen(*other) : QString();
                       }});
    return out;
}

Values QueenEndForm::start() const {
    return {{kDay, form::typedDay(m_day)},
            {kFate, core::word(QueenFate::Superseded)},
            {kOtherFate, core::word(QueenFate::Replaced)}};
}

core::Day QueenEndForm::dayOf(const Values& values) const { return form::dayOf(values, kDay, today()).value_or(m_day); }

std::optional<core::ColonyId> QueenEndForm::toOf(const Values& values) const {
    if (!isMove(values) || form::typed(values, kMovedTo).isEmpty()) return std::nullopt;
    const auto to = form::colonyNamed(book(), form::typed(values, kMovedTo), dayOf(values));
    return to ? std::optional(to->id) : std::nullopt;
}

std::optional<core::Queen> QueenEndForm::otherOf(const Values& values) const {
    const auto to = toOf(values);
    return to && *to != m_queen.colony ? headOf(book(), *to) : std::nullopt;
}

void QueenEndForm::judge(form::Judge& judge, const Values& values) const {
    const core::Day on = judge.needDay(kDay).value_or(m_day);
    if (!isMove(values) || form::typed(values, kMovedTo).isEmpty()) return;
    const auto to = judgeColony(judge, values, kMovedTo, on);
    if (to && to->id == m_queen.colony) judge.add(kMovedTo, Records::tr("She is moved from one colony to another."));
}

QStringList QueenEndForm::odd(const Values& values) const {
    const auto odd = longAgo(dayOf(values), today());
    return odd ? QStringList{*odd} : QStringList{};
}

edit::Edit QueenEndForm::edit(const Values& values) const {
    const core::QueenId id = m_queen.id;
    const core::Day day = dayOf(values);
    if (const auto to = toOf(values)) {
        std::optional<edit::QueenBefore> before;
        if (otherOf(values)) before = edit::QueenBefore{chosenOf<QueenFate>(values, kOtherFate), {}};
        return [=](const edit::EditContext& c) { return edit::moveQueen(c, id, *to, day, before); };
    }
    const auto fate = chosenOf<QueenFate>(values, kFate);
    return [=](const edit::EditContext& c) { return edit::endQueen(c, id, day, fate); };
}

std::optional<QString> QueenEndForm::meanwhile() const {
    const auto now = headOf(book(), m_queen.colony);
    if (now == m_queen) return std::nullopt;
    return Records::tr("The queens of this colony were changed meanwhile. Leave this form and begin it anew.");
}

} // namespace ui::records
