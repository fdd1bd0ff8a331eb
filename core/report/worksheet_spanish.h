#pragma once

#include <QString>

namespace core::report {

/// The worksheet's phrase in Spanish (UTF-8), by its English text; nullptr where there is none.
const char* spanishOf(const QString& english);

} // namespace core::report
