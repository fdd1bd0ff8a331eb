#pragma once

#include "core/rules/calc/range.h"

#include <optional>
#include <span>

// Source: COLOSS BEEBOOK, varroa chapter 4.2.3.1 (mites per 100 bees of a wash or shake; bees counted, not assumed);
// Lee, Moon, Burkness, Hutchison, Spivak, J. Econ. Entomol. 103:1039-1050, 2010 (a yard by eight of its colonies). A
// count is never corrected by a recovery rate, and a mite fall never turned into mites per 100 bees.

namespace core::rules::calc {

/// One wash, roll or shake. mites >= 0, bees >= 1.
struct MiteSample {
    int mites = 0;
    int bees = 0;
};

double mitesPerHundred(const MiteSample& sample);

/// The exact interval of 95 %, in mites per 100 bees; nullopt for more mites than bees. An assumption: each mite sat on
/// a bee of its own.
std::optional<Range> mitesInterval(const MiteSample& sample);

/// Colonies of a yard to sample, whatever its size.
inline constexpr int kColoniesToSample = 8;
/// Bees of a sample, from a frame of the brood nest.
inline constexpr int kBeesToSample = 300;

struct YardMites {
    int colonies = 0; ///< with a sample
    double mean = 0;  ///< of the colonies' mites per 100 bees: each colony weighs alike
    double highest = 0;
    bool enough = false; ///< eight colonies, or all of a smaller yard
    /// Of the mean; nullopt for a single colony. 95 % by Student's t over the colonies. Own choice, an assumption:
    /// never narrower than the exact interval of all their bees together.
    std::optional<Range> interval;
};

/// nullopt without a sample. `inYard`: its living colonies.
std::optional<YardMites> yardMites(std::span<const MiteSample> samples, int inYard);

/// Mites a day on the board. days >= 1.
double mitesADay(int fallen, int days);

} // namespace core::rules::calc
