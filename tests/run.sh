#!/usr/bin/env bash
# Sets up and runs every test: the release program built and tried once, then all tests under ASan and UBSan.
set -euo pipefail
cd "$(dirname "$0")/.."
bash demo/setup.sh
bash tests/smoke.sh build/release/yardwright

cmake --preset asan >/dev/null
cmake --build --preset asan | tail -n 3
export ASAN_OPTIONS=detect_leaks=${YARDWRIGHT_LEAKS:-0} UBSAN_OPTIONS=print_stacktrace=1
ctest --preset asan -j "$(nproc)" --no-tests=error
