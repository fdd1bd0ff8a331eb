#include "tests/app/program.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QProcess>

Ran runProgram(const QStringList& words) {
    QProcess process;
    process.start(QStringLiteral(YW_PROGRAM), words);
    Ran ran;
    if (!process.waitForFinished(120'000)) {
        process.kill();
        process.waitForFinished();
        ADD_FAILURE() << "hung: " << words.join(' ').toStdString();
        return ran;
    }
    ran.out = process.readAllStandardOutput();
    ran.err = process.readAllStandardError();
    if (process.exitStatus() == QProcess::NormalExit) ran.status = process.exitCode();
    return ran;
}

QByteArray bytesOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

void writeFile(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly)) << path.toStdString();
    ASSERT_EQ(file.write(bytes), bytes.size());
}
