#!/usr/bin/env bash
# screenshots.sh [BOOK [DIR]]: the program's own pictures of its window, light and dark. Without arguments they are made
# of a fresh demo book and put into resources/pictures/ for the README.
set -euo pipefail
cd "$(dirname "$0")/.."
program=build/release/yardwright
book=${1:-}
out=${2:-resources/pictures}
if [ -z "$book" ]; then
    scratch=$(mktemp -d)
    trap 'rm -rf "$scratch"' EXIT
    book=$scratch/demo.yardwright
    "$program" demo "$book"
fi
mkdir -p "$out"
QT_QPA_PLATFORM=offscreen "$program" pictures "$book" --on 2026-09-20 --to "$out"
if [ "$out" = resources/pictures ]; then # of the worksheet its first page
    "$program" worksheet "$book" --on 2026-09-20 --yard "Larkspur Bottom" --pdf "$scratch/worksheet.pdf"
    pdftoppm -r 80 -f 1 -l 1 -png -singlefile "$scratch/worksheet.pdf" "$out/worksheet-1"
    "$program" worksheet "$book" --on 2026-09-20 --yard "Larkspur Bottom" --sheet tally --pdf "$scratch/tally.pdf"
    pdftoppm -r 80 -f 1 -l 1 -png -singlefile "$scratch/tally.pdf" "$out/tally-1"
fi
