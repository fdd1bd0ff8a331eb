#include "app/colony_names.h"
#include "app/commands.h"

#include "core/edit/session.h"
#include "core/report/plan_json.h"
#include "core/report/plan_text.h"
#include "core/rules/explain.h"
#include "core/rules/finding_words.h"
#include "core/rules/plan.h"

#include <QJsonDocument>

namespace app {

namespace {

/// JSON is SI in every word, whatever units the book shows.
void inSi(core::Snapshot& s) {
    s.settings.showWeight = core::WeightUnit::Kilograms;
    s.settings.showVolume = core::VolumeUnit::Litres;
    s.settings.showLength = core::LengthUnit::Metres;
}

core::Snapshot snapshotOf(const Arguments& a, const core::Clock& clock) {
    const core::Day on = a.day(QStringLiteral("on"));
    const auto session =
        core::edit::Session::open(a.word(QStringLiteral("BOOK")), clock, core::edit::Session::Access::ReadOnly);
    return session->snapshot(on);
}

core::rules::PlanRequest requestOf(const Arguments& a, const core::Snapshot& s) {
    core::rules::PlanRequest request;
    for (const QString& name : a.values(QStringLiteral("yard"))) request.yards.push_back(yardCalled(s, name));
    for (const QString& pin : a.values(QStringLiteral("pin")))
        request.pins.push_back(pairCalled(s, QStringLiteral("pin"), pin));
    for (const QString& forbid : a.values(QStringLiteral("forbid")))
        request.forbids.push_back(pairCalled(s, QStringLiteral("forbid"), forbid));
    request.most = a.count(QStringLiteral("most"), 0, 1'000'000);
    return request;
}

void printJson(QTextStream& out, const QJsonObject& object) {
    out << QString::fromUtf8(QJsonDocument(object).toJson());
}

} // namespace

int runAdvise(const QStringList& words, const core::Clock& clock, Streams io) {
    const Arguments a(words,
                      {{QStringLiteral("on")},
                       {QStringLiteral("yard"), true, true},
                       {QStringLiteral("pin"), true, true},
                       {QStringLiteral("forbid"), true, true},
                       {QStringLiteral("most")},
                       {QStringLiteral("json"), false}},
                      {QStringLiteral("BOOK")});
    a.count(QStringLiteral("most"), 0, 1'000'000); // usage comes before the book
    core::Snapshot s = snapshotOf(a, clock);
    if (a.has(QStringLiteral("json"))) inSi(s);
    core::rules::Plan plan = core::rules::advise(s, requestOf(a, s));
    if (a.has(QStringLiteral("json"))) dropReasons(plan);
    if (a.has(QStringLiteral("json")))
        printJson(io.out, core::report::planJson(s, plan));
    else
        core::report::writePlanText(io.out, s, plan);
    return 0;
}

int runExplain(const QStringList& words, const core::Clock& clock, Streams io) {
    const Arguments a(words, {{QStringLiteral("on")}},
                      {QStringLiteral("BOOK"), QStringLiteral("A"), QStringLiteral("B")});
    const core::Snapshot s = snapshotOf(a, clock);
    const auto first = colonyCalled(s, a.word(QStringLiteral("A")));
    const auto second = colonyCalled(s, a.word(QStringLiteral("B")));
    io.out << core::report::explanationText(s.settings, core::rules::explain(s, first, second));
    return 0;
}

int runDue(const QStringList& words, const core::Clock& clock, Streams io) {
    const Arguments a(words, {{QStringLiteral("on")}, {QStringLiteral("json"), false}}, {QStringLiteral("BOOK")});
    const core::Snapshot s = snapshotOf(a, clock);
    const core::rules::Plan plan = core::rules::advise(s, {});
    if (a.has(QStringLiteral("json")))
        printJson(io.out, core::report::dueJson(s, plan.due));
    else
        io.out << core::report::dueText(s, plan.due);
    return 0;
}

} // namespace app
