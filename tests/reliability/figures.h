#pragma once

#include <QtGlobal>

namespace tests::reliability {

/// Whether run.sh asks for all of it; ctest runs a short form.
bool longRun();

/// What a run's dice begin with: YW_SEED, or one of chance. Printed, so that a run can be had again.
unsigned seedOfRun();

/// The line of the table's sum that a figure is added to.
enum class Sum { None, Cuts, Faults, Kills, Inputs, Edits, Losses };

/// One figure of a run, for the table: added to the file that YW_FIGURES names, where it is set.
void figure(const char* harness, const char* what, qint64 value, Sum sum = Sum::None);

} // namespace tests::reliability
