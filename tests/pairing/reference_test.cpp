#include "tests/pairing/graphs.h"
#include "tests/pairing/greedy.h"

#include <gtest/gtest.h>

#include <fstream>
#include <map>
#include <sstream>
#include <string>

// What general-purpose libraries find on the same seeded inputs: tests/data/reference, where the script lies that wrote
// the files.

namespace {

using tests::pairing::Graph;

using Row = std::map<std::string, std::string>;

std::vector<std::string> cellsOf(const std::string& line) {
    std::vector<std::string> cells;
    std::istringstream text(line);
    for (std::string cell; std::getline(text, cell, ',');) {
        cells.push_back(cell);
    }
    return cells;
}

std::vector<Row> rowsOf(const std::string& name) {
    std::ifstream file(YW_TEST_DATA "/reference/" + name);
    std::string line;
    std::getline(file, line); // the library and its version
    std::getline(file, line);
    const std::vector<std::string> columns = cellsOf(line);
    std::vector<Row> rows;
    while (std::getline(file, line)) {
        const std::vector<std::string> cells = cellsOf(line);
        Row& row = rows.emplace_back();
        for (std::size_t i = 0; i < columns.size(); ++i) {
            row[columns[i]] = i < cells.size() ? cells[i] : "";
        }
    }
    return rows;
}

int number(const Row& row, const char* column) { return std::stoi(row.at(column)); }

/// That both sides made the same input.
template <class T> std::string checksumOf(const std::vector<T>& rows) {
    std::uint32_t sum = 0;
    for (const auto& [a, b, c] : rows) {
        for (const std::int64_t cell : {std::int64_t{a}, std::int64_t{b}, c}) {
            sum = sum * 31 + static_cast<std::uint32_t>(cell);
        }
    }
    return std::to_string(sum);
}

Graph graphOf(const Row& row) {
    const auto seed = static_cast<unsigned>(number(row, "seed"));
    const int size = number(row, "size");
    if (row.at("kind") == "circles") {
        return tests::pairing::circleGraph(seed, size);
    }
    return row.at("kind") == "yard" ? tests::pairing::yardGraph(seed, size) : tests::pairing::randomGraph(seed, size);
}

// Source: networkx 2.8.8, `max_weight_matching` (tests/data/reference/matchings.csv).
TEST(Reference, NetworkxFindsTheSameGreatestSums) {
    const std::vector<Row> rows = rowsOf("matchings.csv");
    ASSERT_GE(rows.size(), 360U);
    int large = 0;
    int losing = 0;
    for (const Row& row : rows) {
        const Graph graph = graphOf(row);
        SCOPED_TRACE(row.at("kind") + " " + row.at("seed"));
        ASSERT_EQ(graph.nodes, number(row, "nodes"));
        ASSERT_EQ(checksumOf(graph.edges), row.at("sum"));
        const std::int64_t best = core::pairing::maxWeightMatching(graph.nodes, graph.edges).weight;
        EXPECT_EQ(best, number(row, "best"));
        const std::int64_t greedy = tests::pairing::greedySum(graph.nodes, graph.edges);
        EXPECT_EQ(greedy, number(row, "greedy"));
        EXPECT_LE(greedy, best);
        large += graph.nodes >= 60;
        losing += greedy < best;
    }
    EXPECT_GT(large, 50);
    EXPECT_GT(losing, 200) << "greed does as well: too easy";
}

// Source: networkx 2.8.8 on the graph extended by nodes that take all but twice `most` away (matchings.csv).
TEST(Reference, NetworkxFindsTheSameGreatestSumsOfSoManyEdgesAtMost) {
    int limited = 0;
    for (const Row& row : rowsOf("matchings.csv")) {
        if (row.at("most").empty()) {
            continue;
        }
        const Graph graph = graphOf(row);
        SCOPED_TRACE(row.at("kind") + " " + row.at("seed"));
        const int most = number(row, "most");
        EXPECT_EQ(core::pairing::maxWeightMatchingAtMost(graph.nodes, graph.edges, most).weight,
                  number(row, "best_of_most"));
        limited += most > 0;
    }
    EXPECT_GT(limited, 150);
}

// Source: scipy 1.10.1, `optimize.linear_sum_assignment` (tests/data/reference/assignments.csv).
TEST(Reference, ScipyPlacesAsManyForTheSameSum) {
    const std::vector<Row> rows = rowsOf("assignments.csv");
    ASSERT_GE(rows.size(), 300U);
    int unplaced = 0;
    for (const Row& row : rows) {
        std::mt19937 random(static_cast<unsigned>(number(row, "seed")));
        const int guests = tests::pairing::pick(random, 1, 70);
        const int hosts = tests::pairing::pick(random, 1, 60);
        const int perHost = tests::pairing::pick(random, 1, 3);
        const auto offers = tests::pairing::randomOffers(random, guests, hosts);
        SCOPED_TRACE(row.at("seed"));
        ASSERT_EQ(checksumOf(offers), row.at("sum"));
        const auto answer = core::pairing::assignGuests(guests, hosts, perHost, offers);
        EXPECT_EQ(answer.placed, number(row, "placed"));
        EXPECT_EQ(answer.value, number(row, "value"));
        unplaced += guests - answer.placed;
    }
    EXPECT_GT(unplaced, 500) << "there is room for all: too easy";
}

} // namespace
