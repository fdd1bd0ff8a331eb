#include "core/edit/question.h"

#include "core/base/natural_order.h"
#include "core/edit/edit_checks.h"
#include "core/edit/row_change.h"
#include "core/rules/question.h"

namespace core::edit {

namespace {

Question needQuestion(const EditContext& c, QuestionId id) {
    auto question = c.find<Question>(id.value);
    if (!question) refuse(Edits::tr("That question is no longer in the book."));
    return *std::move(question);
}

Question checkedQuestion(const EditContext& c, Question q) {
    q.name = checkedName(q.name, Edits::tr("Name"));
    if (q.about != QLatin1String("colonies")) refuse(Edits::tr("A question is asked of the colonies."));
    const auto ask = rules::readAsk(q.ask);
    if (!ask) refuse(Edits::tr("A question needs one to four conditions, each with a value that it can have."));
    q.ask = rules::askJson(*ask);
    c.each<Question>([&](const Question& other) {
        if (other.id != q.id && folded(other.name) == folded(q.name))
            refuse(Edits::tr("There is a question of the name %1 already.").arg(other.name));
    });
    return q;
}

} // namespace

ChangeSet keepQuestion(const EditContext& c, const Question& typed) {
    Question q = typed;
    q.id = {c.nextId(Table::Question)};
    q = checkedQuestion(c, q);
    return {Edits::tr("Kept the question %1").arg(q.name), {added(q)}, {}, {}, {}};
}

ChangeSet changeQuestion(const EditContext& c, const Question& typed) {
    const Question old = needQuestion(c, typed.id);
    const Question now = checkedQuestion(c, typed);
    if (now == old) return {};
    QString text = Edits::tr("Changed the question %1").arg(now.name);
    Question marked = old;
    marked.onPlan = now.onPlan;
    if (now == marked)
        text = (now.onPlan ? Edits::tr("What the question %1 finds is marked on the plan")
                           : Edits::tr("What the question %1 finds is no longer marked on the plan"))
                   .arg(now.name);
    return {text, {changed(old, now)}, {}, {}, {}};
}

ChangeSet takeBackQuestion(const EditContext& c, QuestionId id) {
    const Question q = needQuestion(c, id);
    return {Edits::tr("Took back the question %1").arg(q.name), {deleted(q)}, {}, {}, {}};
}

} // namespace core::edit
