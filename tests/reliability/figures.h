#pragma once

#include <QtGlobal>

namespace tests::reliability {

/// Whether run.sh asks for all of it; ctest runs a short form.
bool longRun();
/// One figure of a run, for the table: added to the file that YW_FIGURES names, where it is set.
void figure(const char* harness, const char* what, qint64 value);

} // namespace tests::reliability
