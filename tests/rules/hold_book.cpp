#include "tests/rules/hold_book.h"

#include "tests/support/csv_snapshot.h"

#include <gtest/gtest.h>

namespace tests::rules {

using core::rules::Hold;

namespace {

QString text(const char* latin1) { return QString::fromLatin1(latin1); }

} // namespace

QString moved(const char* date, int days) { return isoText(*core::parseIsoDay(text(date)) + days); }

HoldBook::HoldBook() {
    for (const auto& [yard, latitude] :
         {std::pair("Home", "52.1"), std::pair("Hill", "52.2"), std::pair("South", "-41.3")})
        add("yards", {{"yard", text(yard)}, {"latitude_deg", text(latitude)}, {"longitude_deg", "14.5"}});
}

HoldBook& HoldBook::add(const char* kind, support::CsvRow row) {
    m_tables[text(kind)].push_back(std::move(row));
    return *this;
}

HoldBook& HoldBook::colony(const char* label, const char* yard, const char* since) {
    return add("colonies",
               {{"colony", text(label)}, {"yard", text(yard)}, {"stand", text(label)}, {"since", text(since)}});
}

HoldBook& HoldBook::ended(const char* label, const char* yard, const QString& ended, const char* end) {
    return add("colonies", {{"colony", text(label)},
                            {"yard", text(yard)},
                            {"stand", text(label)},
                            {"since", "2024-05-01"},
                            {"ended", ended},
                            {"end", text(end)}});
}

HoldBook& HoldBook::carried(const char* label, const QString& date, const char* yard) {
    return add("placements", {{"colony", text(label)}, {"date", date}, {"yard", text(yard)}, {"stand", text(label)}});
}

HoldBook& HoldBook::check(const char* colony, const QString& date, int checked, int frames, const char* signs) {
    return add("visits", {{"colony", text(colony)},
                          {"date", date},
                          {"brood_frames", frames < 0 ? QString() : QString::number(frames)},
                          {"brood_checked", QString::number(checked)},
                          {"signs", text(signs)}});
}

HoldBook& HoldBook::sign(const char* colony, const QString& date, const char* sign) {
    return add("visits", {{"colony", text(colony)}, {"date", date}, {"signs", text(sign)}});
}

HoldBook& HoldBook::gift(const char* from, const char* to, const QString& date, const char* what) {
    return add("transfers", {{"date", date}, {"from", text(from)}, {"to", text(to)}, {"what", text(what)}});
}

HoldBook& HoldBook::lineage(const char* colony, const char* into, const QString& date, const char* how) {
    return add("lineage", {{"date", date}, {"how", text(how)}, {"colony", text(colony)}, {"into", text(into)}});
}

HoldBook& HoldBook::result(const char* colony, const QString& date, const char* result, const char* method,
                           const char* disease) {
    return add("results", {{"colony", text(colony)},
                           {"date", date},
                           {"disease", text(disease)},
                           {"result", text(result)},
                           {"method", text(method)},
                           {"by", "Ines"},
                           {"paper", "P-1"}});
}

HoldBook& HoldBook::ofYard(const char* yard, const QString& date, const char* result, const char* disease) {
    return add("results", {{"yard", text(yard)},
                           {"date", date},
                           {"disease", text(disease)},
                           {"result", text(result)},
                           {"method", "inspector"},
                           {"by", "Ines"},
                           {"paper", "P-2"}});
}

HoldBook& HoldBook::antibiotic(const char* colony, const QString& date) {
    return add("treatments", {{"colony", text(colony)}, {"date", date}, {"antibiotic", "yes"}});
}

HoldBook& HoldBook::antibioticInYard(const char* yard, const QString& date) {
    return add("treatments", {{"yard", text(yard)}, {"date", date}, {"antibiotic", "yes"}});
}

HoldBook& HoldBook::set(const char* name, const char* value) {
    return add("settings", {{"name", text(name)}, {"value", text(value)}});
}

core::Snapshot HoldBook::on(const QString& date) const {
    return support::snapshotOf(m_tables, *core::parseIsoDay(date));
}

Kinds HoldBook::kinds(const char* colony, const QString& date) const {
    const core::Snapshot s = on(date);
    EXPECT_TRUE(s.livingNamed(text(colony))) << colony << " does not live on " << date.toStdString();
    Kinds kinds;
    for (const Hold& hold : core::rules::holds(s))
        if (s.colony(hold.colony).shown == text(colony)) kinds.insert(holdWord(hold.kind).toStdString());
    return kinds;
}

bool HoldBook::held(const char* colony, const char* kind, const QString& date) const {
    return kinds(colony, date).contains(kind);
}

Hold HoldBook::hold(const char* colony, const char* kind, const QString& date) const {
    const core::Snapshot s = on(date);
    for (const Hold& hold : core::rules::holds(s))
        if (s.colony(hold.colony).shown == text(colony) && holdWord(hold.kind) == text(kind)) return hold;
    ADD_FAILURE() << colony << " is not held as " << kind << " on " << date.toStdString();
    return {};
}

} // namespace tests::rules
