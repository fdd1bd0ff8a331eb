#!/usr/bin/env bash
# Sets up, makes the invented demo book, and opens it in the window. Without a display it prints the worksheet and
# pictures of the window into build/demo/ and says where.
set -euo pipefail
cd "$(dirname "$0")/.."
bash demo/setup.sh

out=build/demo
program=build/release/yardwright
mkdir -p "$out"
rm -f "$out/demo.yardwright"
"$program" demo "$out/demo.yardwright"

if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
    exec "$program" "$out/demo.yardwright"
fi
bash demo/worksheet.sh "$out/demo.yardwright" "$out"
bash demo/screenshots.sh "$out/demo.yardwright" "$out"
echo "No display here. The main job's results are in $PWD/$out:"
ls -1 "$out"
