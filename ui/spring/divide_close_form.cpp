#include "ui/spring/divide_close_form.h"

#include "core/edit/edits.h"
#include "core/edit/hive_row.h"
#include "ui/form/typed.h"
#include "ui/look/words.h"
#include "ui/records/hive_fields.h"
#include "ui/spring/spring_words.h"

#include <algorithm>

namespace ui::spring {

namespace edit = core::edit;
using core::DivideQueens;
using core::StripOutcome;
using form::Values;

namespace {

constexpr int kLabelsTried = 400;

bool isDone(const Values& values) { return records::chosenOf<StripOutcome>(values, kOutcome) == StripOutcome::Done; }

QString outcomeText(StripOutcome outcome) {
    switch (outcome) {
    case StripOutcome::Done:
        return Spring::tr("done");
    case StripOutcome::NotDone:
        return Spring::tr("not done");
    case StripOutcome::Changed:
        break;
    }
    return Spring::tr("changed: something else was done");
}

QString standValue(const core::rules::NewPlace& place, size_t i) {
    return place.stand ? QString::number(place.stand->value) : QStringLiteral("new_%1").arg(i);
}

} // namespace

DivideCloseForm::DivideCloseForm(const edit::Session& book, Of of) : RecordForm(book), m_of(std::move(of)) {
    m_mother = book.colony(m_of.line.colony).value_or(core::Colony{});
    for (const core::Placement& p : book.placementsOf(m_of.line.colony))
        if (p.headingDeg) m_heading = *p.headingDeg;
}

QString DivideCloseForm::title() const {
    return Spring::tr("Divide of %1 on %2").arg(m_of.line.label, look::dayText(m_of.day));
}

QString DivideCloseForm::saveText() const { return Spring::tr("&Write it back"); }

int DivideCloseForm::rows() const { return std::max(1, std::max(m_of.line.parts, m_of.line.most) - 1); }

QStringList DivideCloseForm::freeLabels() const {
    QStringList labels;
    book().read([&](const edit::EditContext& c) {
        for (int step = 1; step <= kLabelsTried && labels.size() < rows(); ++step) {
            const auto next = edit::labelAfter(m_mother.label, step);
            if (!next) return;
            if (c.coloniesLabelled(*next).empty()) labels << *next;
        }
    });
    return labels;
}

std::vector<form::Field> DivideCloseForm::fields() const {
    std::vector<form::Field> out;
    out.push_back({.key = kOutcome,
                   .kind = form::Kind::Choice,
                   .label = Spring::tr("&Outcome"),
                   .spoken = Spring::tr("What came of the divide"),
                   .options = records::choices<StripOutcome>(outcomeText)});
    out.push_back({.key = kQueens,
                   .kind = form::Kind::Choice,
                   .label = Spring::tr("&Queens"),
                   .spoken = Spring::tr("How the new colonies come to queens"),
                   .options = records::choices<DivideQueens>(queensText),
                   .shown = isDone});
    std::vector<form::Option> stands;
    for (size_t i = 0; i < m_of.line.places.size(); ++i)
        stands.push_back({standValue(m_of.line.places[i], i),
                          placeText(m_of.line.places[i], m_of.line.at, book().settings().showLength)});
    for (const core::Stand& stand : records::freeStands(book(), m_of.yard, m_of.day)) {
        const QString value = QString::number(stand.id.value);
        if (std::ranges::find(stands, value, &form::Option::value) == stands.end())
            stands.push_back({value, Spring::tr("stand %1, empty").arg(stand.name)});
    }
    for (int i = 0; i < rows(); ++i) {
        out.push_back({.key = labelKey(i),
                       .label = Spring::tr("New label &%1").arg(i + 1),
                       .spoken = Spring::tr("Label of new colony %1; empty: not made").arg(i + 1),
                       .heading = i == 0 ? Spring::tr("New colonies") : QString(),
                       .shown = isDone});
        out.push_back({.key = standKey(i),
                       .kind = form::Kind::Choice,
                       .label = Spring::tr("stands on"),
                       .spoken = Spring::tr("Where new colony %1 stands").arg(i + 1),
                       .options = stands,
                       .shown = isDone});
    }
    for (form::Field& field : records::hiveFields(book()))
        if (field.key == records::kBox) {
            field.shown = isDone;
            out.push_back(std::move(field));
        }
    if (m_of.held)
        out.push_back({.key = kAsFact,
                       .kind = form::Kind::Tick,
                       .label = Spring::tr("It was &done though a hold stands: write it as a fact"),
                       .spoken = Spring::tr("Write it as a fact against the hold"),
                       .shown = isDone});
    out.push_back(byField(Spring::tr("&By"), Spring::tr("Done by")));
    out.push_back(noteField());
    return out;
}

Values DivideCloseForm::start() const {
    Values v;
    v[kOutcome] = core::word(StripOutcome::Done);
    v[kQueens] = core::word(m_of.queens.value_or(DivideQueens::Own));
    if (m_mother.box.value > 0) {
        Values hive;
        records::putHive(hive, m_mother, book());
        v[records::kBox] = hive[records::kBox];
    }
    const QStringList labels = freeLabels();
    for (int i = 0; i < rows(); ++i) {
        if (i < m_of.line.parts - 1) v[labelKey(i)] = labels.value(i);
        if (static_cast<size_t>(i) < m_of.line.places.size())
            v[standKey(i)] = standValue(m_of.line.places[static_cast<size_t>(i)], static_cast<size_t>(i));
    }
    v[records::kBy] = m_of.author;
    return v;
}

void DivideCloseForm::judge(form::Judge& judge, const Values& values) const {
    if (!isDone(values)) {
        if (records::chosenOf<StripOutcome>(values, kOutcome) == StripOutcome::Changed)
            judge.need(records::kNote, Spring::tr("What was done instead is to be noted."));
        return;
    }
    QStringList labels;
    bool any = false;
    for (int i = 0; i < rows(); ++i) {
        const QString label = form::typed(values, labelKey(i));
        if (label.isEmpty()) continue;
        any = true;
        if (labels.contains(label, Qt::CaseInsensitive))
            judge.add(labelKey(i), Spring::tr("%1 is named twice.").arg(label));
        labels << label;
        judge.need(standKey(i), Spring::tr("Where it stands is to be chosen."));
    }
    if (!any) judge.addLater(labelKey(0), Spring::tr("A divide makes at least one new colony: write its label."));
    for (int i = 0; i < rows(); ++i)
        for (int j = 0; j < i; ++j)
            if (!form::typed(values, labelKey(i)).isEmpty() && !form::typed(values, labelKey(j)).isEmpty() &&
                !form::typed(values, standKey(i)).isEmpty() &&
                form::typed(values, standKey(i)) == form::typed(values, standKey(j)))
                judge.add(standKey(i), Spring::tr("Two of them cannot stand on one stand."));
}

edit::NewColony DivideCloseForm::made(const Values& values, int i) const {
    edit::NewColony made;
    Values hive;
    records::putHive(hive, m_mother, book());
    hive[records::kBox] = form::typed(values, records::kBox);
    hive[records::kBroodBoxes] = QStringLiteral("1");
    hive[records::kQueenBorn].clear();
    hive[records::kLabel] = form::typed(values, labelKey(i));
    records::readHive(hive, book(), made.colony);
    made.colony.since = m_of.day;
    made.headingDeg = m_heading;
    made.stand.yard = m_of.yard;
    const QString where = form::typed(values, standKey(i));
    for (size_t k = 0; k < m_of.line.places.size(); ++k)
        if (where == standValue(m_of.line.places[k], k)) made.stand.at = m_of.line.places[k].at;
    if (!where.startsWith(QStringLiteral("new_"))) made.stand.id = core::StandId{where.toLongLong()};
    return made;
}

edit::Edit DivideCloseForm::edit(const Values& values) const {
    edit::DivideClose close;
    close.yard = m_of.yard;
    close.day = m_of.day;
    close.colony = m_of.line.colony;
    close.outcome = records::chosenOf<StripOutcome>(values, kOutcome);
    close.queens = records::chosenOf<DivideQueens>(values, kQueens);
    close.by = form::typed(values, records::kBy);
    close.note = form::typed(values, records::kNote);
    if (isDone(values))
        for (int i = 0; i < rows(); ++i)
            if (!form::typed(values, labelKey(i)).isEmpty()) close.made.push_back(made(values, i));
    const bool asFact = m_of.held && isDone(values) && form::typed(values, kAsFact) == form::kTicked;
    return [close, asFact](const edit::EditContext& c) {
        return asFact ? edit::closeDivideAsFact(c, close) : edit::closeDivide(c, close);
    };
}

} // namespace ui::spring
