#!/usr/bin/env bash
# The long form: the power cut at every operation in all ways, every call to the disk failing, thousands of kills, every
# page spoilt. Writes tests/reliability/figures.md and puts it into the README. Some hours of one core.
# Usage: bash tests/reliability/run.sh
set -euo pipefail
cd "$(dirname "$0")/../.."
bash demo/install.sh
out=build/reliability
{ cmake --preset release -B "$out" -DYARDWRIGHT_TESTS=ON && cmake --build "$out" --target reliability_test; } >&2

figures=$PWD/$out/figures.tsv
rm -f "$figures"
SECONDS=0
YW_LONG=1 YW_FIGURES=$figures QT_QPA_PLATFORM=offscreen LC_ALL=C.UTF-8 "$out/reliability_test"
bash tests/reliability/table.sh "$figures" "all of it, release build, $((SECONDS / 60)) min"
