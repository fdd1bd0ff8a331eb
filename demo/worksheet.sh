#!/usr/bin/env bash
# worksheet.sh BOOK DIR: the merge-day worksheet of the demo's first yard, as PDF and as one picture a page.
set -euo pipefail
cd "$(dirname "$0")/.."
book=$1 out=$2
mkdir -p "$out"
build/release/yardwright worksheet "$book" --on 2026-09-20 --yard "Larkspur Bottom" --pdf "$out/worksheet.pdf"
rm -f "$out"/worksheet-*.png
pdftoppm -r 100 -png "$out/worksheet.pdf" "$out/worksheet"
