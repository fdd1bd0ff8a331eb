#pragma once

#include "tests/edit/edit_fixture.h"

#include <functional>
#include <string>
#include <vector>

namespace tests::reliability {

using namespace tests::edit;

/// One thing that a beekeeper does: at most one line of the history.
struct Step {
    std::string name;
    std::function<void(Session&)> run;
};

/// A day's work of every kind: yards, hives, visits, carries, an import, many rows at once, undo, redo, a correction,
/// something taken back; then `random` edits of all kinds. The same every time. `folder` is for the files that are
/// imported.
std::vector<Step> workSteps(const QString& folder, int random);

/// All that a book holds, its history too, as text.
std::string stateOf(const Session& session);

void writeText(const QString& path, const QByteArray& text);
void copyFile(const QString& from, const QString& to);

} // namespace tests::reliability
