#!/usr/bin/env bash
# Makes tests/reliability/figures.md of the figures that the tests wrote (YW_FIGURES), and puts it into the README
# between its two marks. Nobody writes these numbers by hand.
# Usage: bash tests/reliability/table.sh FIGURES.tsv "WHAT RUN IT WAS"
set -euo pipefail
cd "$(dirname "$0")"
{
    echo "Figures of \`tests/reliability\`: $2."
    echo
    echo "| harness | figure | number |"
    echo "| --- | --- | ---: |"
    awk -F'\t' '{ printf "| %s | %s | %d |\n", $1, $2, $3 }' "$1"
} >figures.md
awk 'FNR == NR { table = table $0 "\n"; next }
     /<!-- reliability: end -->/ { inside = 0 }
     !inside { print }
     /<!-- reliability: begin -->/ { inside = 1; printf "%s", table }' figures.md ../../README.md >../../README.new
mv ../../README.new ../../README.md
