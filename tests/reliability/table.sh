#!/usr/bin/env bash
# Makes tests/reliability/figures.md of the figures that the harness wrote (YW_FIGURES), and puts its sums into the
# README between its two marks. Nobody writes these numbers by hand.
# Usage: bash tests/reliability/table.sh FIGURES.tsv "WHAT RUN IT WAS" [TIMES]
#        FIGURES: harness TAB what TAB number TAB sum; TIMES: what ran TAB its seconds
set -euo pipefail
figures=$(realpath "$1")
times=${3:+$(realpath "$3")}
cd "$(dirname "$0")"
sums() {
    echo "Figures of \`tests/reliability\`: $1."
    echo
    echo "| in all | number |"
    echo "| --- | ---: |"
    awk -F'\t' '
        { sum[$4] += $3 }
        END {
            split("faults cuts kills inputs edits losses", keys, " ")
            word["faults"] = "write faults injected"
            word["cuts"] = "disks after a power cut, opened and checked"
            word["kills"] = "kills survived"
            word["inputs"] = "inputs fuzzed"
            word["edits"] = "edits soaked"
            word["losses"] = "losses"
            for (i = 1; i <= 6; ++i) if (keys[i] in sum) printf "| %s | %d |\n", word[keys[i]], sum[keys[i]]
        }' "$figures"
}
{
    sums "$2"
    echo
    echo "| harness | figure | number |"
    echo "| --- | --- | ---: |"
    awk -F'\t' '{ printf "| %s | %s | %d |\n", $1, $2, $3 }' "$figures"
    if [ -n "$times" ]; then
        echo
        awk -F'\t' '{ all = all (NR > 1 ? ", " : "") $1 " " sprintf("%.1f", $2 / 60) }
                    END { print "Minutes each: " all "." }' "$times"
    fi
} >figures.md
{
    sums "$2"
    echo
    echo "Each harness's own figures: [tests/reliability/figures.md](tests/reliability/figures.md)."
} >sums.new
awk 'FNR == NR { table = table $0 "\n"; next }
     /<!-- reliability: end -->/ { inside = 0 }
     !inside { print }
     /<!-- reliability: begin -->/ { inside = 1; printf "%s", table }' sums.new ../../README.md >../../README.new
mv ../../README.new ../../README.md
rm sums.new
