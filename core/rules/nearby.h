#pragma once

#include "core/rules/hold_evidence.h"
#include "core/rules/reason.h"

#include <QString>

#include <vector>

// Rule 4.5, near-afb: yards near the yard of a foulbrood source of today.

namespace core::rules {

/// Metres on a sphere of 6371.0 km between two yards; both coordinates of both are recorded.
double metresBetween(const SnapYard& a, const SnapYard& b);

/// Why a yard is near a source of another yard; an empty text where it is not.
struct NearAfb {
    QString because;
    Reason why;
};
/// By yard.
std::vector<NearAfb> nearAfb(const Evidence& evidence);

} // namespace core::rules
