#pragma once

#include "core/rules/plan.h"

#include <vector>

// A second reading of rules 4.6, 4.7 and 4.9 that tries every way, slow and plain, for small yards.

namespace tests::rules {

/// What a test knows of one colony, straight from its rows.
struct PlainColony {
    int quarters = 0; ///< a valid strength
    bool held = false;
    bool layingWorkers = false;
    bool lacksQueen = false;
    bool virgin = false;
    int boxes = 1;
    int comb = -1;    ///< quarters of brood and stores, or -1: not all noted
    int boxKind = 0;  ///< any number
    int room = 40;    ///< quarters that one box holds
    int x = 0, y = 0; ///< whole metres
};

struct PlainYard {
    std::vector<PlainColony> colonies;
    bool forStrength = true; ///< the seasons of 4.3
    bool forQueens = true;
};

/// Rule 4.6, and the carry with 1 a metre.
int plainValue(int quarters);
int plainCarry(const PlainColony& a, const PlainColony& b);
bool plainMayUnite(const PlainYard& yard, int a, int b, bool lessPart10 = false);
int plainGain(const PlainYard& yard, int a, int b);

using PlainPair = std::pair<int, int>; ///< the smaller first

/// The greatest sum of gains of a set of unions that has the pins, none of `forbidden` and at most `most`.
long bestGain(const PlainYard& yard, const std::vector<PlainPair>& pins, const std::vector<PlainPair>& forbidden,
              int most);

struct BestShakeOuts {
    int count = 0;
    long value = 0;
};
/// Given the unions (a pair and which of the two is host), as many as possible, and then the greatest sum.
struct PlainUnion {
    int moved, host;
};
BestShakeOuts bestShakeOuts(const PlainYard& yard, const std::vector<PlainUnion>& unions, int perHost);
/// What one shake-out adds; `into` is a colony, or the host of one of the unions.
long plainShakeOutValue(const PlainYard& yard, const std::vector<PlainUnion>& unions, int colony, int into);
bool plainShakesOut(const PlainYard& yard, int colony);

} // namespace tests::rules
