#pragma once

// What nearly every file of core includes, parsed once a build (see CMakeLists.txt). No file may rely on it: each still
// includes what it uses.

#include <QByteArray>
#include <QCoreApplication>
#include <QDate>
#include <QDateTime>
#include <QHash>
#include <QString>
#include <QStringList>

#include <algorithm>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <span>
#include <variant>
#include <vector>
