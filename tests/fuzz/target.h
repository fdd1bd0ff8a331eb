#pragma once

#include <QByteArray>
#include <QString>

#include <random>
#include <span>
#include <stdexcept>

// Programs that read whatever bytes come: each target takes one input, and throws Broken where something that must
// hold for any input does not. What is run on them: fuzz_test (the corpus and seeded changes of it, with every build)
// and, built with clang, libFuzzer (run.sh).

namespace tests::fuzz {

/// A property that an input broke. libFuzzer takes it for a crash.
class Broken : public std::runtime_error {
public:
    explicit Broken(const QString& what) : std::runtime_error(what.toStdString()) {}
};

inline void need(bool holds, const char* what, const QString& more = {}) {
    if (!holds) throw Broken(QString::fromUtf8(what) + (more.isEmpty() ? more : QStringLiteral(": ") + more));
}

struct Target {
    const char* name; ///< its corpus is tests/fuzz/corpus/NAME, its words tests/fuzz/NAME.dict
    void (*one)(const QByteArray& input);
    qsizetype mostBytes;  ///< of an input made at random
    bool patches = false; ///< its inputs are changes of a book (book_patch.h)
};

void csvOne(const QByteArray& input);
void mappingOne(const QByteArray& input);
void salvageOne(const QByteArray& input);
void settingsOne(const QByteArray& input);
void bookOne(const QByteArray& input);
void draftsOne(const QByteArray& input);
void historyOne(const QByteArray& input);
void wordsOne(const QByteArray& input);

std::span<const Target> targets();
/// nullptr: there is none of that name.
const Target* targetNamed(const char* name);

/// A book input changed in its own language (book_patch.h): a line added, left out or with other numbers.
QByteArray changedPatch(const QByteArray& input, std::mt19937& random);

} // namespace tests::fuzz
