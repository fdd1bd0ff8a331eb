#include "ui/records/odd.h"

#include "core/rules/strength.h"
#include "ui/look/words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cstdlib>

namespace ui::records {

namespace {

struct Odd {
    Q_DECLARE_TR_FUNCTIONS(Odd)
};

QString agoText(int days) { return days == 1 ? Odd::tr("the day before") : Odd::tr("%1 days before").arg(days); }

std::optional<QString> jump(const core::Visit& visit, const std::vector<core::Visit>& others,
                            core::StrengthJudge judge) {
    const auto now = countedBees(visit, judge);
    if (!now) return std::nullopt;
    for (const core::Visit& other : others) {
        const auto before = countedBees(other, judge);
        if (other.day >= visit.day || !before) continue;
        const int days = visit.day - other.day;
        if (days > kJumpDays || std::abs(now->value - before->value) < kJump.value) return std::nullopt;
        return Odd::tr("%1 of bees, and %2 %3.").arg(look::framesOf(*now), core::framesText(*before), agoText(days));
    }
    return std::nullopt;
}

/// A queen was looked for and not there, and none was seen since; brood of hers would have hatched by now.
std::optional<QString> broodOfNone(const core::Visit& visit, const std::vector<core::Visit>& others) {
    using core::QueenSeen;
    if (visit.broodFrames.value_or(0) < 1) return std::nullopt;
    if (visit.queen && visit.queen != QueenSeen::None && visit.queen != QueenSeen::Unknown) return std::nullopt;
    std::optional<core::Day> without;
    for (const core::Visit& other : others) {
        if (other.day >= visit.day || !other.queen || other.queen == QueenSeen::Unknown) continue;
        if (other.queen != QueenSeen::None) break;
        without = other.day;
    }
    if (!without || visit.day - *without < kBroodGoneDays) return std::nullopt;
    return Odd::tr("Brood, and no queen was there on %1 or since; brood of hers would have hatched.")
        .arg(look::dayText(*without));
}

/// A digit too many, or a scale that was read wrong.
std::optional<QString> weightJump(const core::Visit& visit, const std::vector<core::Visit>& others,
                                  core::WeightUnit unit) {
    if (!visit.gross) return std::nullopt;
    for (const core::Visit& other : others) {
        if (other.day >= visit.day || !other.gross) continue;
        const int days = visit.day - other.day;
        if (days > kJumpDays || std::abs(visit.gross->value - other.gross->value) < kWeightJump.value)
            return std::nullopt;
        return Odd::tr("%1, and %2 %3.")
            .arg(look::weightOf(*visit.gross, unit), look::weightOf(*other.gross, unit), agoText(days));
    }
    return std::nullopt;
}

std::optional<QString> moreMitesThanBees(const core::Visit& visit) {
    if (!visit.mites || !visit.miteSample || *visit.mites <= *visit.miteSample) return std::nullopt;
    return Odd::tr("%1 mites on %2 bees.").arg(*visit.mites).arg(*visit.miteSample);
}

constexpr int kVisitsBefore = 60; // enough to find what a visit is odd against

} // namespace

std::optional<QString> longAgo(core::Day day, core::Day today) {
    if (today - day <= kLongAgoDays) return std::nullopt;
    return Odd::tr("%1 is more than a year ago.").arg(look::dayText(day));
}

std::optional<QString> beforeLastVisit(const QString& colony, core::Day day, std::optional<core::Day> lastVisit) {
    if (!lastVisit || day >= *lastVisit) return std::nullopt;
    return Odd::tr("%1 was looked at on %2, after that day; what was counted then stands.")
        .arg(colony, look::dayText(*lastVisit));
}

std::optional<core::Quarters> countedBees(const core::Visit& v, core::StrengthJudge judge) {
    const auto lower = core::rules::boxBees(v.beesTop, v.beesBottom, judge);
    const auto upper = core::rules::boxBees(v.upperBeesTop, v.upperBeesBottom, judge);
    if (!lower && !upper) return std::nullopt;
    return lower.value_or(core::Quarters{}) + upper.value_or(core::Quarters{});
}

QStringList oddVisit(const core::Visit& visit, const std::vector<core::Visit>& others, core::StrengthJudge judge,
                     core::Day today, core::WeightUnit unit) {
    QStringList out;
    for (const auto& odd : {longAgo(visit.day, today), jump(visit, others, judge), broodOfNone(visit, others),
                            weightJump(visit, others, unit), moreMitesThanBees(visit)})
        if (odd) out << *odd;
    return out;
}

QStringList oddVisit(const core::edit::Session& book, const core::Visit& visit, const std::optional<core::Visit>& was) {
    auto others = book.visitsOf(visit.colony, kVisitsBefore);
    std::erase_if(others, [&](const core::Visit& v) { return v.id == visit.id; });
    const core::Settings settings = book.settings();
    const auto all = [&](const core::Visit& v) {
        return oddVisit(v, others, settings.strengthJudge, book.clock().today(), settings.showWeight);
    };
    QStringList found = all(visit);
    if (was)
        for (const QString& old : all(*was)) found.removeAll(old);
    return found;
}

} // namespace ui::records
