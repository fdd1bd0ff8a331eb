#include "tests/exchange/workbench.h"

#include "core/exchange/export.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <gtest/gtest.h>

namespace tests::exchange {

using core::exchange::FileKind;
using core::exchange::ImportFiles;
using core::exchange::ImportReport;

QDateTime StillClock::nowUtc() const { return {QDate(2026, 9, 20), QTime(12, 0), Qt::UTC}; }

core::Day StillClock::today() const { return core::dayOf(2026, 9, 20); }

Texts smallYard() {
    return {{QStringLiteral("yards.csv"), "yard,latitude_deg,longitude_deg,gate_x_m,gate_y_m,note\n"
                                          "Home,52.1,-2.9,0,-3,by the lane\n"
                                          "Hill,52.2,-2.9,,,\n"},
            {QStringLiteral("colonies.csv"),
             "colony,yard,stand,x_m,y_m,heading_deg,since,brood_boxes,box,queen_born,ended,end\n"
             "A,Home,1,0,0,180,2025-05-01,1,langstroth-10,2024,,\n"
             "B,Home,2,3,0,180,2025-05-01,2,langstroth-10,,,\n"
             "C,Hill,1,0,0,,2025-05-01,,,,,\n"
             "D,Hill,2,5,0,90,2025-05-01,1,langstroth-8,,2026-03-01,dead\n"}};
}

Texts smallYardWith(const Texts& others) {
    Texts texts = smallYard();
    for (const auto& [name, text] : others) texts[name] = text;
    return texts;
}

Workbench::Workbench() { EXPECT_TRUE(m_dir.isValid()); }

QString Workbench::folder(const QString& name) const {
    const QString path = name.isEmpty() ? m_dir.path() : m_dir.filePath(name);
    EXPECT_TRUE(QDir().mkpath(path));
    return path;
}

bool Workbench::bookThere() const { return QFileInfo::exists(book()); }

ImportFiles Workbench::write(const Texts& texts, const QString& name) const {
    ImportFiles files;
    const QDir dir(folder(name));
    for (const auto& [fileName, text] : texts) {
        QFile file(dir.filePath(fileName));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        EXPECT_EQ(file.write(text), text.size());
        for (const FileKind kind : core::exchange::kReadKinds)
            if (core::exchange::fileName(kind) == fileName) files.files.push_back({kind, file.fileName()});
    }
    return files;
}

ImportReport Workbench::import(const Texts& texts, bool dryRun) const {
    return core::exchange::importIntoBook(book(), m_clock, write(texts), dryRun);
}

Texts Workbench::exported() const {
    const QString out = folder() + QStringLiteral("/out");
    QDir(out).removeRecursively();
    const auto session = core::edit::Session::open(book(), m_clock, core::edit::Session::Access::ReadOnly);
    core::exchange::exportBook(*session, out);
    for (const char* file : {"history.csv", "changes.csv", "columns.csv"}) QFile::remove(out + u'/' + f(file));
    return textsOf(out);
}

QStringList Workbench::check() const { return open()->check(); }

std::unique_ptr<core::edit::Session> Workbench::open() const { return core::edit::Session::open(book(), m_clock); }

QStringList placesOf(const ImportReport& report) {
    QStringList places;
    for (const auto& fault : report.faults.kept())
        places << QStringLiteral("%1:%2: %3").arg(QFileInfo(fault.file).fileName()).arg(fault.line).arg(fault.column);
    return places;
}

Texts textsOf(const QString& folder) {
    Texts texts;
    const QDir dir(folder);
    for (const QString& name : dir.entryList(QDir::Files)) {
        QFile file(dir.filePath(name));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        texts[name] = file.readAll();
    }
    return texts;
}

} // namespace tests::exchange
