#!/usr/bin/env bash
# Installs what is missing and runs every test under ASan and UBSan, a run of the program through the main job among them.
set -euo pipefail
cd "$(dirname "$0")/.."
bash demo/install.sh

cmake --preset asan >/dev/null
cmake --build --preset asan | tail -n 3
export ASAN_OPTIONS=detect_leaks=${YARDWRIGHT_LEAKS:-0} UBSAN_OPTIONS=print_stacktrace=1
# In memory, where there is room for them, the books of the tests do not wait for the disk at each edit.
if [ -w /dev/shm ] && [ "$(df --output=avail /dev/shm | tail -n 1)" -gt 2000000 ]; then
    TMPDIR=$(mktemp -d /dev/shm/yardwright-tests-XXXXXX)
    chmod 755 "$TMPDIR" # tests that give up their rights go on in it
    export TMPDIR
    trap 'rm -rf "$TMPDIR"' EXIT
fi
ctest --preset asan -j "$(nproc)" --no-tests=error
