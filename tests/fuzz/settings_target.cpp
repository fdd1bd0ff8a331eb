#include "core/edit/edits.h"
#include "core/model/setting_table.h"
#include "core/rules/hold.h"
#include "core/rules/plan.h"
#include "tests/fuzz/scratch.h"
#include "tests/fuzz/target.h"

#include <set>

// Settings, a line each: NAME=VALUE. Any that are taken must leave the rules at work, and no hold laxer (rule 4.4).

namespace tests::fuzz {

using namespace core;

namespace {

struct Line {
    QString name, value;
};

std::vector<Line> linesOf(const QByteArray& input) {
    std::vector<Line> lines;
    for (const QByteArray& line : input.split('\n'))
        if (const qsizetype at = line.indexOf('='); at > 0)
            lines.push_back({QString::fromUtf8(line.left(at)), QString::fromUtf8(line.mid(at + 1))});
    return lines;
}

void put(Settings& settings, const Line& line) {
    const Settings before = settings;
    const auto canonical = applySetting(settings, line.name, line.value);
    if (!canonical) {
        for (const SettingInfo& info : settingTable())
            need(settingText(settings, info.name) == settingText(before, info.name), "a refused value changes nothing");
        return;
    }
    need(settingNamed(line.name), "only known settings are taken", line.name);
    need(settingText(settings, line.name) == *canonical, "a setting says what was taken", line.name);
    Settings again;
    const auto same = applySetting(again, line.name, *canonical);
    need(same && *same == *canonical, "what a setting says is taken again", line.name);
}

std::set<std::pair<qint32, rules::HoldKind>> heldIn(const Snapshot& s) {
    std::set<std::pair<qint32, rules::HoldKind>> held;
    for (const rules::Hold& h : rules::holds(s)) held.insert({h.colony.value, h.kind});
    return held;
}

struct Day0 {
    Snapshot s;
    std::set<std::pair<qint32, rules::HoldKind>> held;
};

std::vector<Day0> daysAsBefore() {
    const auto session = copyOpened(yardsBook(), QStringLiteral("settings.yardwright"));
    std::vector<Day0> days;
    for (const Day day : {dayOf(2025, 9, 20), dayOf(2026, 5, 5), dayOf(2026, 9, 20)}) {
        Snapshot s = session->snapshot(day);
        auto held = heldIn(s);
        days.push_back({std::move(s), std::move(held)});
    }
    return days;
}

void needHeldStill(const Settings& settings) {
    static const std::vector<Day0> days = daysAsBefore();
    for (const Day0& day : days) {
        Snapshot s = day.s;
        s.settings = settings;
        const auto held = heldIn(s);
        for (const auto& [colony, kind] : day.held)
            need(held.contains({colony, kind}), "no setting makes a hold laxer",
                 s.colonies[static_cast<size_t>(colony)].label + u' ' + rules::holdWord(kind) + u' ' + isoText(s.on));
        rules::advise(s, {});
    }
}

/// Through the door that everyone uses: the book says what the settings say.
void keep(edit::Session& session, const Line& line, const Settings& wanted) {
    try {
        session.apply([&](const edit::EditContext& c) { return edit::setSetting(c, line.name, line.value); });
    } catch (const Error& e) {
        needWellSaid(e);
        return;
    }
    need(settingText(session.settings(), line.name) == settingText(wanted, line.name), "a book keeps what was taken",
         line.name);
}

} // namespace

void settingsOne(const QByteArray& input) {
    Settings settings;
    const std::vector<Line> lines = linesOf(input);
    for (const Line& line : lines) put(settings, line);
    needHeldStill(settings);
    if (lines.empty()) return;
    // One of them through a book, which is a hundred times as slow.
    const auto session = copyOpened(yardsBook(), QStringLiteral("set.yardwright"));
    const Line& last = lines.back();
    Settings alone;
    applySetting(alone, last.name, last.value);
    keep(*session, last, alone);
    const QStringList problems = session->check();
    need(problems.isEmpty(), "settings leave a sound book", problems.value(0));
}

} // namespace tests::fuzz
