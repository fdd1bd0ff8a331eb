#include "app/commands.h"

#include "app/demo_file.h"
#include "app/interrupt.h"
#include "core/base/error.h"
#include "core/edit/compare_books.h"
#include "core/edit/edits.h"
#include "core/edit/session.h"
#include "core/edit/whole_book.h"
#include "core/model/setting_table.h"
#include "ui/copies/copies_text.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace app {

namespace {

using core::edit::Session;

QString settingsJson(const core::Settings& settings) {
    QJsonArray list;
    for (const core::SettingInfo& info : core::settingTable())
        list.append(QJsonObject{{QStringLiteral("name"), info.name},
                                {QStringLiteral("value"), core::settingText(settings, info.name)},
                                {QStringLiteral("default"), info.defaultValue},
                                {QStringLiteral("unit"), info.unit},
                                {QStringLiteral("range"), info.range},
                                {QStringLiteral("source"), info.source}});
    return QString::fromUtf8(QJsonDocument(list).toJson());
}

} // namespace

int runNew(const QStringList& words, const core::Clock& clock, Streams) {
    const Arguments a(words, {}, {QStringLiteral("BOOK")});
    Session::create(a.word(QStringLiteral("BOOK")), clock);
    return 0;
}

int runSet(const QStringList& words, const core::Clock& clock, Streams) {
    const Arguments a(words, {}, {QStringLiteral("BOOK"), QStringLiteral("NAME"), QStringLiteral("VALUE")});
    const auto session = Session::open(a.word(QStringLiteral("BOOK")), clock);
    session->apply([&](const core::edit::EditContext& c) {
        return core::edit::setSetting(c, a.word(QStringLiteral("NAME")), a.word(QStringLiteral("VALUE")));
    });
    return 0;
}

int runSettings(const QStringList& words, const core::Clock& clock, Streams io) {
    const Arguments a(words, {{QStringLiteral("json"), false}}, {QStringLiteral("BOOK")});
    const auto session = Session::open(a.word(QStringLiteral("BOOK")), clock, Session::Access::ReadOnly);
    const core::Settings settings = session->settings();
    if (a.has(QStringLiteral("json"))) {
        io.out << settingsJson(settings);
        return 0;
    }
    for (const core::SettingInfo& info : core::settingTable()) {
        const QString value = core::settingText(settings, info.name);
        io.out << info.name << " = " << value << (info.unit.isEmpty() ? QString() : QLatin1Char(' ') + info.unit);
        if (value != info.defaultValue) io.out << " (default " << info.defaultValue << ')';
        io.out << "\n    " << info.meaning << " Range: " << info.range << ". Source: " << info.source << ".\n";
    }
    return 0;
}

int runBackup(const QStringList& words, const core::Clock& clock, Streams io) {
    const Arguments a(words, {{QStringLiteral("to")}}, {QStringLiteral("BOOK")});
    const QString book = a.word(QStringLiteral("BOOK"));
    const QString stamp = clock.nowUtc().toString(QStringLiteral("yyyy-MM-dd-hhmmss"));
    const QString to = a.value(QStringLiteral("to")).value_or(book + QStringLiteral(".backup-") + stamp);
    {
        Interrupt interrupt;
        core::edit::backUpBookAt(book, to, interrupt.progress());
    }
    io.out << to << '\n';
    return 0;
}

int runCheck(const QStringList& words, const core::Clock&, Streams io) {
    const Arguments a(words, {}, {QStringLiteral("BOOK")});
    QStringList problems;
    {
        Interrupt interrupt;
        problems = core::edit::checkBookAt(a.word(QStringLiteral("BOOK")), interrupt.progress());
    }
    for (const QString& problem : problems) io.out << problem << '\n';
    if (problems.isEmpty()) io.out << "The book is in order.\n";
    return problems.isEmpty() ? 0 : 3;
}

int runCompare(const QStringList& words, const core::Clock&, Streams io) {
    const Arguments a(words, {}, {QStringLiteral("BOOK"), QStringLiteral("COPY")});
    const QString copy = a.word(QStringLiteral("COPY"));
    io.out << ui::copies::wholeText(copy, core::edit::compareBooks(a.word(QStringLiteral("BOOK")), copy));
    return 0;
}

int runDemo(const QStringList& words, const core::Clock& clock, Streams) {
    const Arguments a(words, {{QStringLiteral("colonies")}, {QStringLiteral("years")}, {QStringLiteral("seed")}},
                      {QStringLiteral("BOOK")});
    demo::DemoSize size;
    size.colonies = a.count(QStringLiteral("colonies"), 1, 200'000).value_or(size.colonies);
    size.years = a.count(QStringLiteral("years"), 1, 20).value_or(size.years);
    size.seed = static_cast<std::uint64_t>(a.count(QStringLiteral("seed"), 0, 2'147'483'647).value_or(1));
    Interrupt interrupt;
    makeDemo(a.word(QStringLiteral("BOOK")), clock, size, interrupt.progress());
    return 0;
}

} // namespace app
