#include "tests/rules/plan_book.h"

#include <QStringList>

#include <stdexcept>

namespace tests::rules {

using namespace core;

namespace {

void overlay(Cells& cells, const Cells& more) {
    for (const auto& [column, value] : more) cells[column] = value;
}

} // namespace

PlanBook& PlanBook::unchecked(const QString& label, Cells cells) {
    if (!m_tables.contains("yards")) yard("Y");
    const auto number = m_tables["colonies"].size();
    Cells row{{"colony", label},
              {"yard", "Y"},
              {"stand", "S" + QString::number(number + 1)},
              {"x_m", QString::number(number)},
              {"y_m", "0"},
              {"since", "2025-01-01"}};
    overlay(row, cells);
    return this->row("colonies", row);
}

PlanBook& PlanBook::colony(const QString& label, Cells cells) {
    unchecked(label, cells);
    return visit(label, kChecked, {{"brood_frames", "5"}, {"brood_checked", "5"}});
}

PlanBook& PlanBook::visit(const QString& label, const QString& date, Cells cells) {
    cells["colony"] = label;
    cells["date"] = date;
    return row("visits", cells);
}

PlanBook& PlanBook::bees(const QString& label, const QString& frames, Cells more) {
    Cells cells{{"bees_top", frames}, {"queen", "eggs"}};
    overlay(cells, more);
    return visit(label, kCounted, cells);
}

PlanBook& PlanBook::row(const QString& kind, Cells cells) {
    m_tables[kind].push_back(std::move(cells));
    return *this;
}

PlanBook& PlanBook::set(const QString& name, const QString& value) {
    return row("settings", {{"name", name}, {"value", value}});
}

PlanBook& PlanBook::yard(const QString& name, Cells cells) {
    cells["yard"] = name;
    return row("yards", cells);
}

Snapshot PlanBook::on(const QString& day) const { return support::snapshotOf(m_tables, *parseIsoDay(day)); }

core::rules::Plan PlanBook::plan(const QString& day, const core::rules::PlanRequest& request) const {
    return core::rules::advise(on(day), request);
}

ColonyIx named(const Snapshot& s, const QString& label) {
    const auto found = s.livingNamed(label);
    if (!found) throw std::runtime_error("no colony " + label.toStdString());
    return *found;
}

QString unionsOf(const Snapshot& s, const core::rules::Plan& plan) {
    QStringList out;
    for (const core::rules::Union& u : plan.unions) out += s.colony(u.moved).label + '>' + s.colony(u.host).label;
    return out.join(' ');
}

QString against(const Snapshot& s, const QString& a, const QString& b) {
    QStringList out;
    for (const core::rules::Objection& o : core::rules::explain(s, named(s, a), named(s, b)).objections)
        out += QString(o.rule).remove("4.7.");
    return out.join(' ');
}

} // namespace tests::rules
