#!/usr/bin/env bash
# Set-up: installs what is missing and builds the release preset. The program is then build/release/yardwright.
set -euo pipefail
cd "$(dirname "$0")/.."
bash demo/install.sh

log=$(mktemp)
trap 'rm -f "$log"' EXIT
if ! { cmake --preset release && cmake --build --preset release; } >"$log" 2>&1; then
    cat "$log" >&2
    exit 1
fi
