#include "core/exchange/for_spreadsheets.h"

#include "core/edit/edits.h"

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

} // namespace
