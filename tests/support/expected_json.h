#pragma once

#include <QJsonObject>

#include <string>

namespace tests::support {

/// Each key that `expected` names must stand in `got` and say the same; `caution_kinds` is the set of kinds of the
/// cautions. `where`: for what a failed check says.
void expectSays(const QJsonObject& got, const QJsonObject& expected, const std::string& where);

/// The worked answer of a folder of tests/data/yards.
QJsonObject workedAnswer(const QString& folder);

} // namespace tests::support
