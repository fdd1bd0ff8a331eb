#pragma once

#include <QString>
#include <QStringList>

#include <vector>

// Short texts for people who stand at a hive, each with its source. Only what somebody has read in the source stands
// here; figures that are known from memory alone do not. It never replaces a label, an inspector or the law.

namespace core::rules {

struct GuidanceLine {
    QString text;   ///< one or two sentences
    QString source; ///< as it is to be found again
};

struct GuidanceTopic {
    QString title; ///< "Ropiness and how it is tested"
    std::vector<GuidanceLine> lines;
};

const std::vector<GuidanceTopic>& guidance();

/// Topics that hold each of the words, in title, text or source, without regard to case; of those, positions in
/// guidance(). No words: all.
std::vector<size_t> guidanceWith(const QString& words);

} // namespace core::rules
