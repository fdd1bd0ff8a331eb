#include "ui/bulk/visits_form.h"

#include "core/edit/edit_context.h"
#include "ui/bulk/note_field.h"
#include "ui/form/typed.h"

namespace ui::bulk {

namespace edit = core::edit;
using form::Values;
using records::kBy;
using records::kDay;
using records::kNote;

namespace {

constexpr size_t kQuick = 30; ///< so many are tried with each keystroke

std::vector<core::Visit> visitsNow(const edit::Session& book, const std::vector<core::VisitId>& ids) {
    std::vector<core::Visit> out;
    book.read([&](const edit::EditContext& c) {
        for (const core::VisitId id : ids)
            if (auto visit = c.visit(id)) out.push_back(*std::move(visit));
    });
    return out;
}

template <class Of>
Common commonIn(const std::vector<core::Visit>& visits, Of of,
                const std::function<QString(const QString&)>& shown = {}) {
    QStringList values;
    for (const core::Visit& v : visits) values << of(v);
    return commonOf(values, shown);
}

void judgeFigure(form::Judge& judge, const VisitFigure& figure, const std::optional<QString>& text) {
    edit::VisitPut ignored;
    if (text && !figure.read(*text, ignored)) judge.add(figure.field.key, figure.expected);
}

} // namespace

VisitsForm::VisitsForm(const edit::Session& book, std::vector<core::VisitId> visits)
    : RecordForm(book), m_visits(std::move(visits)), m_was(visitsNow(book, m_visits)) {
    if (m_was.size() != m_visits.size() || m_was.empty())
        throw core::Error(core::Error::Kind::BadData, Bulk::tr("One of these visits is no longer in the book."));
    for (VisitFigure& figure : visitFigures(book.settings().showWeight)) {
        Common common = commonIn(m_was, figure.typed, figure.shown);
        m_figures.push_back({std::move(figure), std::move(common)});
    }
    m_day = commonIn(m_was, [](const core::Visit& v) { return form::typedDay(v.day); });
    m_by = commonIn(m_was, [](const core::Visit& v) { return v.by; });
    m_note = commonIn(m_was, [](const core::Visit& v) { return v.note; });
}

QString VisitsForm::title() const {
    return m_was.size() == 1 ? Bulk::tr("Change 1 visit") : Bulk::tr("Change %1 visits").arg(m_was.size());
}

QString VisitsForm::saveText() const {
    return m_was.size() == 1 ? Bulk::tr("C&hange 1 visit") : Bulk::tr("C&hange %1 visits").arg(m_was.size());
}

QString VisitsForm::hint() const {
    return Bulk::tr("Only what is typed anew is written, in all of them or in none; a dash — takes a figure out. "
                    "Enter saves, Escape leaves. One undo takes all of it back.");
}

std::vector<form::Field> VisitsForm::fields() const {
    std::vector<form::Field> out{mixedField(dayField(Bulk::tr("Day of the visits")), m_day),
                                 mixedField(byField(Bulk::tr("B&y"), Bulk::tr("Seen by")), m_by)};
    for (const Shown& s : m_figures)
        out.push_back(s.figure.field.kind == form::Kind::Choice ? mixedChoice(s.figure.field, s.common)
                                                                : mixedField(s.figure.field, s.common));
    addNoteFields(out, m_note);
    return out;
}

Values VisitsForm::start() const {
    Values v{{kDay, m_day.mixed ? QString() : m_day.value}, {kBy, m_by.mixed ? QString() : m_by.value}};
    for (const Shown& s : m_figures) v[s.figure.field.key] = startOf(s.figure.field, s.common);
    return v;
}

std::optional<QString> VisitsForm::writtenOf(const Shown& s, const Values& values) {
    return written(values, s.figure.field.key, s.common, s.figure.field.kind);
}

void VisitsForm::judge(form::Judge& judge, const Values& values) const {
    if (m_day.mixed)
        judge.day(kDay);
    else
        judge.needDay(kDay);
    for (const Shown& s : m_figures) judgeFigure(judge, s.figure, writtenOf(s, values));
    if (judge.fine() && nothingChanged(values)) judge.addLater({}, Bulk::tr("Nothing is typed anew yet."));
}

bool VisitsForm::quick() const { return m_was.size() <= kQuick; }

edit::VisitPut VisitsForm::putOf(const Values& values) const {
    edit::VisitPut put;
    if (written(values, kDay, m_day)) put.day = form::dayOf(values, kDay, today());
    put.by = written(values, kBy, m_by);
    put.note = noteOf(values);
    for (const Shown& s : m_figures)
        if (const auto text = writtenOf(s, values)) s.figure.read(*text, put);
    return put;
}

bool VisitsForm::nothingChanged(const Values& values) const {
    const edit::VisitPut put = putOf(values);
    if (put.day || put.by || put.note) return false;
    for (const Shown& s : m_figures)
        if (writtenOf(s, values)) return false;
    return true;
}

edit::Edit VisitsForm::edit(const Values& values) const {
    return [visits = m_visits, put = putOf(values)](const edit::EditContext& c) {
        return edit::changeVisits(c, visits, put);
    };
}

std::optional<QString> VisitsForm::meanwhile() const {
    const auto now = visitsNow(book(), m_visits);
    if (now.size() != m_was.size())
        return Bulk::tr("One of these visits was taken back meanwhile; the others cannot be changed from here.");
    if (now == m_was) return std::nullopt;
    return Bulk::tr("One of these visits was changed meanwhile. What is typed here stays; it is written over that.");
}

SameVisitForm::SameVisitForm(const edit::Session& book, std::vector<core::ColonyId> colonies, core::Day day, QString by)
    : RecordForm(book),
      m_colonies(std::move(colonies)),
      m_day(day),
      m_by(std::move(by)),
      m_figures(visitFigures(book.settings().showWeight)) {}

QString SameVisitForm::title() const {
    return m_colonies.size() == 1 ? Bulk::tr("A visit of 1 hive")
                                  : Bulk::tr("The same visit of %1 hives").arg(m_colonies.size());
}

QString SameVisitForm::saveText() const {
    return m_colonies.size() == 1 ? Bulk::tr("Save 1 &visit") : Bulk::tr("Save %1 &visits").arg(m_colonies.size());
}

std::vector<form::Field> SameVisitForm::fields() const {
    std::vector<form::Field> out{dayField(Bulk::tr("Day of the visits")),
                                 byField(Bulk::tr("B&y"), Bulk::tr("Seen by"))};
    for (const VisitFigure& figure : m_figures) out.push_back(figure.field);
    out.push_back(noteField());
    return out;
}

Values SameVisitForm::start() const { return {{kDay, form::typedDay(m_day)}, {kBy, m_by}}; }

core::Visit SameVisitForm::visitOf(const Values& values) const {
    edit::VisitPut put;
    for (const VisitFigure& figure : m_figures)
        if (const QString text = form::typed(values, figure.field.key); !text.isEmpty() && !saysNothing(text))
            figure.read(text, put);
    core::Visit like;
    like.day = form::dayOf(values, kDay, today()).value_or(m_day);
    like.by = form::typed(values, kBy);
    like.note = form::typed(values, kNote);
    return edit::withPut(like, put);
}

void SameVisitForm::judge(form::Judge& judge, const Values& values) const {
    judge.needDay(kDay);
    bool something = !form::typed(values, kNote).isEmpty();
    for (const VisitFigure& figure : m_figures) {
        const QString text = form::typed(values, figure.field.key);
        if (text.isEmpty() || saysNothing(text)) continue;
        something = true;
        judgeFigure(judge, figure, text);
    }
    if (judge.fine() && !something) judge.addLater({}, Bulk::tr("Nothing is filled in yet."));
}

bool SameVisitForm::quick() const { return m_colonies.size() <= kQuick; }

edit::Edit SameVisitForm::edit(const Values& values) const {
    return [colonies = m_colonies, like = visitOf(values)](const edit::EditContext& c) {
        return edit::logVisits(c, colonies, like);
    };
}

} // namespace ui::bulk
