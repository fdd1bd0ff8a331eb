#!/usr/bin/env bash
# Builds and runs the benchmarks: one line a figure, `name value unit`, and nothing else on standard output.
# The big book (20,000 colonies, ten years) is made once, in build/bench/.
set -euo pipefail
cd "$(dirname "$0")/../.."
bash demo/install.sh >&2
{ cmake --preset release -B build/bench -DYARDWRIGHT_BENCH=ON && cmake --build build/bench; } >&2
QT_QPA_PLATFORM=offscreen exec build/bench/yw_bench
