#pragma once

#include "core/model/rows.h"
#include "demo/demo_book.h"

#include <QString>

#include <vector>

namespace demo {

/// One yard of the demo and the hives in it, before they have ids.
struct DemoYard {
    QString name;
    QString code; ///< its hives are code + number
    int hives = 0;
    double latitudeDeg = 0;
    double longitudeDeg = 0;
    bool story = false; ///< one of the five yards of the story
};

/// The yards that hold `size.colonies`: first the story's five if there is room, then yards of up to 50.
std::vector<DemoYard> demoYards(const DemoSize& size);

/// Where hive `number` (0-based) of a yard stands, and where its entrance looks.
core::MmPoint hiveAt(const DemoYard& yard, int number);
int headingOf(const DemoYard& yard, int number);

} // namespace demo
