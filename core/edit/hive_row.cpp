#include "core/edit/hive_row.h"

#include "core/edit/after_context.h"
#include "core/edit/edit_checks.h"
#include "core/edit/edits.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace core::edit {

namespace {

constexpr int kMostHives = 400;
constexpr int kFarthestApartMm = 100'000;
constexpr int kLastDegree = 359;
constexpr int kLongestStep = 1000;

bool isDigit(QChar ch) { return ch >= u'0' && ch <= u'9'; }
bool isLetter(QChar ch) { return (ch >= u'a' && ch <= u'z') || (ch >= u'A' && ch <= u'Z'); }

/// A leading zero keeps the number's width: K09, K10.
std::optional<QString> numberAfter(QStringView stem, QStringView digits, qint64 steps) {
    constexpr qsizetype kMostDigits = 15;
    if (digits.size() > kMostDigits) return std::nullopt;
    const qint64 number = digits.toLongLong() + steps;
    if (number < 0) return std::nullopt;
    const int width = digits.size() > 1 && digits.front() == u'0' ? static_cast<int>(digits.size()) : 1;
    return stem.toString() + QStringLiteral("%1").arg(number, width, 10, QLatin1Char('0'));
}

std::optional<QString> letterAfter(QStringView stem, QChar letter, qint64 steps) {
    const qint64 at = letter.toLower().unicode() - u'a' + steps;
    if (at < 0 || at >= 26) return std::nullopt;
    return stem.toString() + QChar(static_cast<char16_t>((letter.isUpper() ? u'A' : u'a') + at));
}

MmPoint spotOf(const HiveRow& row, int position) {
    const double turn = row.bearingDeg * std::numbers::pi / 180;
    const double far = double(std::clamp(row.spacingMm, 0, kFarthestApartMm)) * position;
    return {row.start.x + static_cast<qint32>(std::lround(far * std::sin(turn))),
            row.start.y + static_cast<qint32>(std::lround(far * std::cos(turn)))};
}

void checkRow(const EditContext& c, const HiveRow& row) {
    needYard(c, row.yard);
    checkRange(row.count, 1, kMostHives, Edits::tr("Hives"));
    checkRange(row.spacingMm, kStandApartMm, kFarthestApartMm, Edits::tr("Spacing in millimetres"));
    checkRange(row.bearingDeg, 0, kLastDegree, Edits::tr("Bearing"));
    checkRange(row.headingDeg, 0, kLastDegree, Edits::tr("Heading"));
    checkRange(row.labelStep, -kLongestStep, kLongestStep, Edits::tr("Step of the labels"));
    if (row.count > 1 && row.labelStep == 0) refuse(Edits::tr("Labels: expected a step up or down, found 0."));
}

/// The stand that is at the spot already, where one is.
Stand standAt(const std::vector<Stand>& stands, YardId yard, MmPoint at) {
    const auto there = std::find_if(stands.begin(), stands.end(), [&](const Stand& s) { return s.at == at; });
    return there == stands.end() ? Stand{{}, yard, {}, at, false} : *there;
}

NewColony hiveAt(const EditContext& c, const HiveRow& row, const RowSpot& spot) {
    NewColony hive;
    hive.colony.label = spot.label;
    hive.colony.since = row.since;
    hive.colony.box = row.box;
    hive.colony.broodBoxes = row.broodBoxes;
    hive.stand = standAt(c.standsOf(row.yard), row.yard, spot.at);
    hive.headingDeg = row.headingDeg;
    return hive;
}

} // namespace

std::optional<QString> labelAfter(const QString& label, int steps) {
    const QString text = label.trimmed();
    qsizetype stem = text.size();
    while (stem > 0 && isDigit(text[stem - 1])) --stem;
    if (stem < text.size()) return numberAfter(QStringView(text).left(stem), QStringView(text).mid(stem), steps);
    const bool oneLetter = stem > 0 && isLetter(text[stem - 1]) && (stem == 1 || !text[stem - 2].isLetter());
    if (!oneLetter) return std::nullopt;
    return letterAfter(QStringView(text).left(stem - 1), text[stem - 1], steps);
}

std::vector<RowSpot> rowSpots(const HiveRow& row) {
    std::vector<RowSpot> spots;
    const int count = std::min(row.count, kMostHives);
    const int step = std::clamp(row.labelStep, -kLongestStep, kLongestStep);
    for (int i = 0; i < count; ++i) {
        // One hive alone needs no label that goes on.
        const auto label = i == 0 ? std::optional(row.firstLabel.trimmed()) : labelAfter(row.firstLabel, i * step);
        if (!label) break;
        spots.push_back({*label, spotOf(row, i)});
    }
    return spots;
}

ChangeSet addHiveRow(const EditContext& c, const HiveRow& row) {
    checkRow(c, row);
    const auto spots = rowSpots(row);
    if (spots.size() < static_cast<size_t>(row.count))
        refuse(Edits::tr("First label: after %1 the labels do not go on to %2 hives; expected a number at its end, or "
                         "one letter.")
                   .arg(spots.back().label, QString::number(row.count)));
    AfterContext sofar(c);
    ChangeSet change;
    for (const RowSpot& spot : spots) {
        const ChangeSet one = addColony(sofar, hiveAt(sofar, row, spot));
        sofar.add(one.rows);
        change.rows.insert(change.rows.end(), one.rows.begin(), one.rows.end());
    }
    const QString yard = needYard(c, row.yard).name;
    change.text = row.count == 1 ? Edits::tr("Added %1 in %2").arg(spots.front().label, yard)
                                 : Edits::tr("Added a row of %1 hives in %2: %3 to %4")
                                       .arg(QString::number(row.count), yard, spots.front().label, spots.back().label);
    return change;
}

} // namespace core::edit
