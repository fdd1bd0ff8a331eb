#include "core/report/worksheet_part.h"

#include <algorithm>

// The united hive from the side: lid, upper box, newspaper, lower box, floor. Combs are lines, those covered by bees
// thick ones from the middle outwards, combs of stores small squares above.

namespace core::report {

namespace {

constexpr double kBoxWide = 31;
constexpr double kBoxHigh = 15;
constexpr double kWordsLeft = kBoxWide + 4;

struct BoxContent {
    QString label;
    int combs = 10;
    Quarters bees;
    std::optional<Quarters> stores;
};

std::optional<Quarters> storesOf(const rules::ColonyFacts& f) {
    if (f.boxes == 1) return f.stores;
    if (!f.stores || !f.upperStores) return std::nullopt;
    return *f.stores + *f.upperStores;
}

BoxContent contentOf(const SheetInput& in, const rules::Union& u, ColonyIx colony) {
    return {in.briefly(colony), in.s.boxKindOf(colony).frames, colony == u.moved ? u.movedFrames : u.hostFrames,
            storesOf(in.of(colony))};
}

/// From the middle outwards, as a cluster sits.
int combAt(int rank, int combs) {
    const int middle = (combs - 1) / 2;
    return rank % 2 == 1 ? middle + (rank + 1) / 2 : middle - rank / 2;
}

void drawCombs(BlockPen& pen, const BoxContent& box, const Rect& r) {
    const double step = r.width / (box.combs + 0.6);
    const double top = r.y + 4.2;
    const double high = r.height - 5.4;
    std::vector<int> quarters(static_cast<size_t>(box.combs), 0);
    int left = box.bees.value;
    for (int rank = 0; rank < box.combs && left > 0; ++rank, left -= 4)
        quarters[static_cast<size_t>(std::clamp(combAt(rank, box.combs), 0, box.combs - 1))] = std::min(left, 4);
    for (int i = 0; i < box.combs; ++i) {
        const double x = r.x + step * (i + 0.8);
        pen.fill({x - 0.12, top, 0.24, high}, Ink::Grey);
        const double inked = high * quarters[static_cast<size_t>(i)] / 4;
        if (inked > 0) pen.fill({x - step * 0.27, top + high - inked, step * 0.54, inked}, Ink::Black);
    }
    const int stores = box.stores ? std::min(box.stores->value, 4 * box.combs) : 0;
    for (int i = 0; 4 * i < stores; ++i) {
        const double share = std::min(4, stores - 4 * i) / 4.0;
        const double x = r.x + step * (i + 0.8);
        pen.fill({x - step * 0.32, r.y + 1.2, step * 0.64 * share, 2}, Ink::Black);
    }
}

void drawBox(BlockPen& pen, const BoxContent& box, double x, double y) {
    const Rect r{x, y, kBoxWide, kBoxHigh};
    pen.frame(r, 0.45);
    drawCombs(pen, box, r);
    pen.fill({x + kBoxWide, y + kBoxHigh - 3, 1.4, 2.2}, Ink::Black); // the entrance
}

/// The words beside a box: who, where, bees, stores.
double boxWords(const SheetInput& in, BlockPen& pen, const BoxContent& box, const char* where, double x, double y) {
    const double width = kStackWidth - kWordsLeft;
    y = pen.paragraph(x + kWordsLeft, y, width, in.say(where).arg(box.label), kStrong);
    y = pen.line(x + kWordsLeft, y, in.say("bees %1").arg(framesText(box.bees)), kText);
    const QString stores = box.stores ? framesText(*box.stores) : QString(QChar(0x2014));
    return pen.paragraph(x + kWordsLeft, y, width, in.say("stores %1").arg(stores), kText);
}

} // namespace

double stackDrawing(const SheetInput& in, const rules::Union& u, BlockPen& pen, double x, double y) {
    const BoxContent upper = contentOf(in, u, u.upper);
    const BoxContent lower = contentOf(in, u, u.lower);
    pen.fill({x - 1, y, kBoxWide + 2, 1.6}, Ink::Black); // lid
    const double upperTop = y + 2.2;
    drawBox(pen, upper, x, upperTop);
    double words = boxWords(in, pen, upper, "%1 on top", x, y);
    const double paper = std::max(upperTop + kBoxHigh + 1.8, words + 2.2);
    pen.stroke({x - 1.5, paper}, {x + kBoxWide + 1.5, paper}, 0.9, {1.6, 0.8});
    words = pen.line(x + kWordsLeft, paper - 2.6, in.say("newspaper"), kText);
    const double lowerTop = paper + 1.8;
    drawBox(pen, lower, x, lowerTop);
    words = boxWords(in, pen, lower, "%1 below", x, std::max(words, lowerTop - 0.4));
    const double floor = lowerTop + kBoxHigh + 0.5;
    pen.fill({x - 2, floor, kBoxWide + 4, 1.1}, Ink::Black);
    return std::max(floor + 2, words);
}

} // namespace core::report
