#include "core/exchange/for_spreadsheets.h"

#include "core/base/error.h"
#include "core/edit/edits.h"
#include "core/exchange/table_folder.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

namespace {

using namespace core;

// OWASP, "CSV Injection": cells that begin with = + - @, tab or carriage return (from memory).
TEST(ForSpreadsheets, WhatLooksLikeAFormulaGetsAnApostropheAndANumberStaysOne) {
    const std::pair<const char*, const char*> cells[] = {
        {"", ""},          {"K5", "K5"},      {"-3.25", "-3.25"},       {"+2", "+2"},
        {"=1+2", "'=1+2"}, {"-2+3", "'-2+3"}, {"+cmd", "'+cmd"},        {"@SUM(A1)", "'@SUM(A1)"},
        {"\tx", "'\tx"},   {"\rx", "'\rx"},   {"'already", "'already"}, {"a=b", "a=b"},
        {"-", "'-"},
    };
    for (const auto& [cell, safe] : cells)
        EXPECT_EQ(exchange::cellForSpreadsheets(QString::fromLatin1(cell)).toStdString(), safe);
}

TEST(ForSpreadsheets, FilesSayInTheirNameWhatTheyAreForAndLeaveOthersAlone) {
    const QTemporaryDir dir;
    const SystemClock clock;
    const auto session = edit::Session::create(dir.filePath(QStringLiteral("b.yardwright")), clock);
    session->apply([](const edit::EditContext& c) {
        Yard yard;
        yard.name = QStringLiteral("=North, \"far\"");
        return edit::newYard(c, yard);
    });
    const QDir out(dir.filePath(QStringLiteral("out")));
    exchange::exportForSpreadsheets(*session, out.path());
    QFile file(out.filePath(QStringLiteral("yards.for-spreadsheets.csv")));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().contains("\n\"'=North, \"\"far\"\"\","));
    for (const QString& name : out.entryList(QDir::Files | QDir::Dirs | QDir::Hidden | QDir::NoDotAndDotDot))
        EXPECT_TRUE(name.endsWith(QStringLiteral(".for-spreadsheets.csv"))) << name.toStdString();
}

QByteArray bytesOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("missing");
}

// A book exported into the folder has a results.csv too, of other columns: a report never takes its place.
TEST(ForSpreadsheets, TablesReplaceTheirOwnFilesButNoneOfOtherColumns) {
    const QTemporaryDir dir;
    const QString out = dir.path(), begun = out + QStringLiteral("/begun.csv"),
                  results = out + QStringLiteral("/results.csv");
    const QString day = QStringLiteral("date"), about = QStringLiteral("about"), one = QStringLiteral("1");
    exchange::writeTables(out, {{QStringLiteral("results"), {day, about}, {}}});
    exchange::writeTables(out, {{QStringLiteral("results"), {day, about}, {{one, one}}}});
    EXPECT_EQ(bytesOf(results), "date,about\n1,1\n");
    try {
        exchange::writeTables(out, {{QStringLiteral("begun"), {day}, {}}, {QStringLiteral("results"), {day}, {{one}}}});
        ADD_FAILURE() << "wrote over another file";
    } catch (const Error& e) {
        EXPECT_EQ(e.kind(), Error::Kind::Book);
        EXPECT_TRUE(e.userMessage().contains(QStringLiteral("has other columns"))) << e.userMessage().toStdString();
    }
    EXPECT_EQ(bytesOf(results), "date,about\n1,1\n");
    EXPECT_FALSE(QFile::exists(begun)) << "all or none";
}

} // namespace
