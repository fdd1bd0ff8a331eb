#include "demo/ground.h"

#include "demo/chance.h"

#include <algorithm>
#include <array>

namespace demo {

namespace {

constexpr int kStoryColonies = 96;

// The story's yards lie in mid-ocean; Thistle Acre and Quarry Ledge 700 m apart (0.0063° of latitude).
const std::array<DemoYard, 5>& storyYards() {
    static const std::array<DemoYard, 5> kYards = {{
        {QStringLiteral("Larkspur Bottom"), QStringLiteral("A"), 36, 46.9, -30.1, true},
        {QStringLiteral("Thistle Acre"), QStringLiteral("B"), 24, 47.0, -30.0, true},
        {QStringLiteral("Quarry Ledge"), QStringLiteral("C"), 14, 47.0063, -30.0, true},
        {QStringLiteral("Upper Tansy"), QStringLiteral("D"), 18, 47.1, -30.2, true},
        {QStringLiteral("Foxglove Rise"), QStringLiteral("E"), 4, 47.2, -30.0, true},
    }};
    return kYards;
}

/// A, B, … Z, AA, AB, …
QString codeOf(int yard) {
    QString code;
    for (int n = yard; n >= 0; n = n / 26 - 1) code.prepend(QChar(static_cast<char16_t>('A' + n % 26)));
    return code;
}

QString nameOf(int yard) {
    constexpr std::array kFirst = {"Sorrel", "Bramble", "Clover",  "Yarrow", "Heather", "Teasel",  "Mallow",
                                   "Borage", "Campion", "Comfrey", "Vetch",  "Burdock", "Hawkbit", "Betony",
                                   "Gorse",  "Sedge",   "Alder",   "Hazel",  "Rowan",   "Willow"};
    constexpr std::array kSecond = {"Bank",  "Hollow", "Field", "Corner", "Rise",  "Edge",    "Dell",
                                    "Slope", "Nook",   "Piece", "Bottom", "Strip", "Terrace", "Holm",
                                    "Shelf", "Fold",   "Gap",   "Lea",    "Knoll", "Turn"};
    const auto n = static_cast<size_t>(yard);
    const QString name = QString::fromLatin1(kFirst[n % kFirst.size()]) + QLatin1Char(' ') +
                         QString::fromLatin1(kSecond[(n / kFirst.size() + n) % kSecond.size()]);
    const size_t round = n / (kFirst.size() * kSecond.size());
    return round == 0 ? name : name + QStringLiteral(" %1").arg(round + 1);
}

} // namespace

std::vector<DemoYard> demoYards(const DemoSize& size) {
    std::vector<DemoYard> yards;
    int left = size.colonies;
    if (size.story && left >= kStoryColonies) {
        yards.assign(storyYards().begin(), storyYards().end());
        left -= kStoryColonies;
    }
    for (int n = 0; left > 0; ++n) {
        DemoYard yard;
        yard.name = nameOf(n);
        yard.code = codeOf(static_cast<int>(yards.size()));
        yard.hives = std::min(left, size.yardSize);
        yard.latitudeDeg = 44.0 + 0.02 * (n % 100);
        yard.longitudeDeg = -34.0 + 0.03 * (n / 100);
        left -= yard.hives;
        yards.push_back(yard);
    }
    return yards;
}

namespace {

int hivesPerRow(const DemoYard& yard) { return yard.hives > 30 ? 9 : yard.hives > 20 ? 8 : 6; }

} // namespace

core::MmPoint hiveAt(const DemoYard& yard, int number) {
    // Rows of hives in pairs, bowed a little as rows along a slope are, each row set off against the one before.
    const int perRow = hivesPerRow(yard);
    const int row = number / perRow;
    const int place = number % perRow;
    const int along = place * 1250 + (place / 2) * 450;
    const int bow = (place - perRow / 2) * (place - perRow / 2) * 40;
    const int uneven =
        chance(160, 7, static_cast<std::uint64_t>(yard.code.at(0).unicode()), static_cast<std::uint64_t>(number));
    return {1800 + along + (row % 2) * 500, 2200 + row * 2900 + bow + uneven};
}

int headingOf(const DemoYard& yard, int number) {
    const int perRow = hivesPerRow(yard);
    const int turned = (number % perRow - perRow / 2) * -3;
    return (180 + turned + 360) % 360;
}

} // namespace demo
