#!/usr/bin/env bash
# The long form of all that is done to a book: release build, two at a time. Writes tests/reliability/figures.md and puts
# it into the README. About 90 minutes on two cores, by the times of its jobs.
# Usage: bash tests/reliability/run.sh            all of it, and the table
#        bash tests/reliability/run.sh NAME...    these alone, without the table
#        YW_SEED=N …                              again with the dice of a run: each prints its seed
#        YW_RELIABILITY_BUILD=DIR …               builds there instead of build/reliability
#
# To add one: a line in `jobs`, the long ones first: "NAME|TARGETS|COMMAND". TARGETS are built (blanks between; none
# where the command builds for itself). COMMAND runs in a shell at the repository's root with
#   YW_LONG=1              do all of it, not the short form
#   YW_FIGURES=FILE        add a line a figure: harness TAB what TAB number TAB sum; `sum` says which line of the table's
#                          head it is added to: cuts faults kills inputs edits losses, or -. From C++: figures.h
#   YW_BUILD=DIR           where the targets lie
#   YW_SEED                what its dice begin with; print it
# and fails where anything was lost.
set -euo pipefail
cd "$(dirname "$0")/../.."
jobs=(
    'million|soak_test|$YW_BUILD/soak_test --gtest_filter=*Million*'
    'soak|soak_test|$YW_BUILD/soak_test --gtest_filter=*AsAUsers*:SoakKinds*'
    'cuts|reliability_test|$YW_BUILD/reliability_test --gtest_filter=PowerCut*'
    'file-cuts|reliability_test|$YW_BUILD/reliability_test --gtest_filter=*FilesCut*'
    'window-kills|window_kill_test|TMPDIR=/dev/shm $YW_BUILD/window_kill_test'
    'kills|reliability_test|$YW_BUILD/reliability_test --gtest_filter=Kill*'
    'faults|reliability_test|$YW_BUILD/reliability_test --gtest_filter=DiskFault*:Vanished*:AnotherFile*'
    'window-faults|window_fault_test|TMPDIR=/dev/shm $YW_BUILD/window_fault_test'
    'fuzz||bash tests/fuzz/run.sh 110'
    'seeds|fuzz_test|$YW_BUILD/fuzz_test'
    'damage|reliability_test|$YW_BUILD/reliability_test --gtest_filter=*Damage*:SpoiltFile*'
    'salvage|reliability_test|$YW_BUILD/reliability_test --gtest_filter=Salvag*'
)

export YW_BUILD=${YW_RELIABILITY_BUILD:-$PWD/build/reliability} YW_LONG=1 QT_QPA_PLATFORM=offscreen LC_ALL=C.UTF-8
wanted() { [ $# -eq 1 ] || [[ " ${*:2} " == *" $1 "* ]]; }
chosen=()
targets=()
for job in "${jobs[@]}"; do
    IFS='|' read -r name needs command <<<"$job"
    wanted "$name" "$@" || continue
    chosen+=("$job")
    read -ra more <<<"$needs"
    targets+=("${more[@]}")
done
[ ${#chosen[@]} -gt 0 ] || { echo "no such job: $*" >&2; exit 2; }

bash demo/install.sh
if [ ${#targets[@]} -gt 0 ]; then
    { cmake --preset release -B "$YW_BUILD" -DYARDWRIGHT_TESTS=ON && cmake --build "$YW_BUILD" --target "${targets[@]}"; } >&2
fi

logs=$YW_BUILD/reliability-logs
rm -rf "$logs"
mkdir -p "$logs"
run() { # NAME COMMAND
    local begun=$SECONDS status=0
    YW_FIGURES=$logs/$1.tsv bash -c "$2" >"$logs/$1.log" 2>&1 || status=$?
    printf '%s\t%d\n' "$1" $((SECONDS - begun)) >"$logs/$1.time"
    if [ $status -eq 0 ]; then echo "$1: held, $((SECONDS - begun)) s"; return; fi
    echo "$1: DID NOT HOLD, $((SECONDS - begun)) s; the end of $logs/$1.log:"
    tail -n 40 "$logs/$1.log"
    touch "$logs/failed"
}
SECONDS=0
running=0
for job in "${chosen[@]}"; do
    IFS='|' read -r name needs command <<<"$job"
    if [ $running -eq 2 ]; then wait -n; running=1; fi
    run "$name" "$command" &
    running=$((running + 1))
done
wait
[ ! -e "$logs/failed" ] || exit 1
[ $# -eq 0 ] || exit 0
for job in "${chosen[@]}"; do cat "$logs/${job%%|*}.tsv"; done >"$logs/figures.tsv"
cat "$logs"/*.time >"$logs/times"
bash tests/reliability/table.sh "$logs/figures.tsv" \
    "all of it, release build, two at a time, $((SECONDS / 60)) min; $(date +%F)" "$logs/times"
