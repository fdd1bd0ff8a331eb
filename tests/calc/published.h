#pragma once

#include <gtest/gtest.h>

#include <initializer_list>

/// One figure that others printed. `source` names title, year and table. The README of core/rules/calc says how many
/// rows of this kind stand in these tests, and from how many sources; readme_test counts them.
struct Published {
    const char* source;
    double got;
    double want;
    double within;
};

inline void expectPublished(std::initializer_list<Published> rows) {
    for (const Published& row : rows) EXPECT_NEAR(row.got, row.want, row.within) << row.source;
}
