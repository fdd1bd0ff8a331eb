#pragma once

#include "core/rules/calc/clustered.h"

#include <vector>

// What other programs say on seeded inputs: tests/data/reference/intervals.json.

struct ExactRow {
    qint64 found = 0;
    qint64 of = 0;
    double level = 0, low = 0, high = 0;
};
struct BetaRow {
    double x = 0, a = 0, b = 0, below = 0;
};
struct StudentRow {
    int freedom = 0;
    double level = 0, t = 0;
};
struct ClusteredCase {
    std::vector<core::rules::calc::Counted> groups;
    double spread = 0, low = 0, high = 0;
};
struct MeanRow {
    int colonies = 0;
    double mean = 0, low = 0, high = 0;
};

std::vector<ExactRow> referenceExact();
std::vector<BetaRow> referenceBeta();
std::vector<StudentRow> referenceStudent();
std::vector<ClusteredCase> referenceClustered();
MeanRow referenceYardMean();
