#include "core/rules/hold_evidence.h"

#include <algorithm>

namespace core::rules {

namespace {

constexpr int Settings::*kUpwards[] = {
    &Settings::checkMinFrames,   &Settings::checkFullFrames, &Settings::traceDays,        &Settings::traceMaskedDays,
    &Settings::afbOwnResultDays, &Settings::afbRecheckDays,  &Settings::afbYardBackDays,  &Settings::afbYardAfterDays,
    &Settings::efbClearDays,     &Settings::efbBackDays,     &Settings::doubtRecheckDays, &Settings::doubtBackDays};
constexpr int Settings::*kDownwards[] = {&Settings::checkMaxAgeDays, &Settings::checkGraceDays};

} // namespace

Settings strictLimits(const Settings& settings) {
    const Settings defaults;
    Settings limits = settings;
    for (const auto limit : kUpwards) limits.*limit = std::max(settings.*limit, defaults.*limit);
    for (const auto limit : kDownwards) limits.*limit = std::min(settings.*limit, defaults.*limit);
    return limits;
}

Evidence::Evidence(const Snapshot& snapshot)
    : s(snapshot),
      limits(strictLimits(snapshot.settings)),
      gifts(s),
      standing(s, gifts),
      findings(findingsOf(s)),
      treated(s, gifts, standing),
      checks(s, limits, treated) {}

} // namespace core::rules
