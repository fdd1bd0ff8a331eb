#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

/// What the program did: exit status (−1: it crashed or hung), standard output and standard error.
struct Ran {
    int status = -1;
    QByteArray out;
    QByteArray err;
    QStringList errorLines() const { return QString::fromUtf8(err).split('\n', Qt::SkipEmptyParts); }
};

/// Runs the real program as a second process, at most two minutes.
Ran runProgram(const QStringList& words);

/// The whole of a file; empty where there is none.
QByteArray bytesOf(const QString& path);
void writeFile(const QString& path, const QByteArray& bytes);
