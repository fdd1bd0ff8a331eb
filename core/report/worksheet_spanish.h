#pragma once

#include <QString>

#include <span>

namespace core::report {

struct SpanishPair {
    const char* english;
    const char* spanish;
};
/// Of the rules' sentences.
std::span<const SpanishPair> spanishReasons();
/// Of divides, of queen trouble and of laying workers.
std::span<const SpanishPair> spanishSpring();

/// Of the sheets for visits.
std::span<const SpanishPair> spanishTally();

/// The worksheet's phrase in Spanish (UTF-8), by its English text; nullptr where there is none.
const char* spanishOf(const QString& english);

} // namespace core::report
