#!/usr/bin/env bash
# smoke.sh PROGRAM: a short run of the program through the main job, in a scratch folder.
set -euo pipefail
program=$(realpath "$1")
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
cd "$scratch"

fail() { echo "smoke: $*" >&2; exit 1; }
status() { # status EXPECTED COMMAND...: fails unless the command exits so
    local expected=$1 got=0
    shift
    "$@" >out.txt 2>err.txt || got=$?
    [ "$got" -eq "$expected" ] || { cat err.txt >&2; fail "exit $got, expected $expected: $*"; }
}

status 0 "$program" --version
status 2 "$program" advise
status 5 "$program" advise missing.yardwright --on 2026-09-20
status 0 "$program" demo demo.yardwright
status 5 "$program" demo demo.yardwright
status 0 "$program" check demo.yardwright
status 0 "$program" advise demo.yardwright --on 2026-09-20 --json
grep -q '"unite"' out.txt || fail "no unions in the plan"
status 2 "$program" advise demo.yardwright --on 2026-13-20
status 4 "$program" advise demo.yardwright --on 2026-09-20 --yard Nowhere
status 0 "$program" explain demo.yardwright --on 2026-09-20 A2 A3
status 0 "$program" due demo.yardwright --on 2026-09-20
status 0 "$program" export demo.yardwright --to first
status 0 "$program" import second.yardwright --yards first/yards.csv --colonies first/colonies.csv \
    --visits first/visits.csv --transfers first/transfers.csv --results first/results.csv \
    --treatments first/treatments.csv --lineage first/lineage.csv --placements first/placements.csv \
    --box-kinds first/box_kinds.csv --settings first/settings.csv \
    --feedings first/feedings.csv --queens first/queens.csv \
    --mite-falls first/mite_falls.csv --samples first/samples.csv --kit-ends first/kit_ends.csv \
    --keeper first/keeper.csv
status 0 "$program" export second.yardwright --to second
for file in first/*.csv; do # those that are read back
    case $file in first/fixed_things.csv | first/kit.csv | first/history.csv | first/changes.csv) continue ;; esac
    cmp -s "$file" "second/${file#first/}" || fail "$file differs after import and export"
done
status 4 "$program" set demo.yardwright afb.recheck_days 59
status 0 "$program" set demo.yardwright afb.recheck_days 61
status 0 "$program" worksheet demo.yardwright --on 2026-09-20 --yard "Larkspur Bottom" --pdf sheet.pdf
pdftotext sheet.pdf sheet.txt
grep -q 'Larkspur Bottom' sheet.txt || fail "the worksheet does not name its yard"
status 0 "$program" backup demo.yardwright --to copy.yardwright
status 0 "$program" check copy.yardwright
echo "smoke: the program does the main job"
