#!/usr/bin/env bash
# The fuzzers for as long as you like: each target under clang's libFuzzer with the address and undefined-behaviour
# sanitizers, one at a time, beginning with the corpus. What breaks something is kept, said, and ends that target.
# Usage: bash tests/fuzz/run.sh [SECONDS for each target, 600] [TARGET...]
#        YW_FUZZ_KEEP=1 …          afterwards the corpus gets what reaches code that it does not, and no more
#        YW_FUZZ_BUILD=DIR …       builds there instead of build/fuzz
#        YW_FIGURES=FILE …         adds a line a figure: harness TAB what TAB number TAB inputs
set -euo pipefail
cd "$(dirname "$0")/../.."
seconds=${1:-600}
shift || true
targets=("$@")
[ ${#targets[@]} -gt 0 ] || targets=(book csv drafts history mapping salvage settings words)
build=${YW_FUZZ_BUILD:-$PWD/build/fuzz}

bash demo/install.sh
bash demo/install.sh tests/fuzz/packages.txt
{ cmake --preset fuzz -B "$build" && cmake --build "$build" --target "${targets[@]/#/fuzz_}"; } >&2

TMPDIR=$(mktemp -d "$([ -w /dev/shm ] && echo /dev/shm || echo "${TMPDIR:-/tmp}")/yw-fuzz-XXXXXX")
export TMPDIR QT_LOGGING_RULES='*=false' ASAN_OPTIONS=detect_leaks=0 UBSAN_OPTIONS=print_stacktrace=1
trap 'rm -rf "$TMPDIR"' EXIT
found=$build/found
mkdir -p "$found"
bad=0
for target in "${targets[@]}"; do
    rm -rf "$TMPDIR"/* # books of a process that ended in the middle
    mkdir -p "$build/corpus/$target"
    log=$build/$target.log
    status=0
    words=()
    [ ! -e "tests/fuzz/$target.dict" ] || words=("-dict=tests/fuzz/$target.dict")
    "$build/fuzz_$target" -max_total_time="$seconds" -timeout=25 -rss_limit_mb=3000 -malloc_limit_mb=1500 -max_len=4096 \
        -detect_leaks=0 -print_final_stats=1 "${words[@]}" -artifact_prefix="$found/$target-" \
        "$build/corpus/$target" "tests/fuzz/corpus/$target" >"$log" 2>&1 || status=$?
    inputs=$(sed -n 's/^stat::number_of_executed_units: *//p' "$log")
    [ $status -eq 0 ] || bad=$((bad + 1))
    echo "$target: ${inputs:-?} inputs, $([ $status -eq 0 ] && echo nothing broken || echo "BROKEN: the end of $log")"
    [ $status -eq 0 ] || tail -n 30 "$log"
    if [ -n "${YW_FIGURES:-}" ]; then
        printf 'Fuzzing, libFuzzer\t%s\t%s\tinputs\n' "inputs of $target" "${inputs:-0}" >>"$YW_FIGURES"
        printf 'Fuzzing, libFuzzer\t%s\t%s\t-\n' "findings of $target" "$((status != 0))" >>"$YW_FIGURES"
    fi
    if [ -n "${YW_FUZZ_KEEP:-}" ] && [ $status -eq 0 ]; then
        "$build/fuzz_$target" -merge=1 -timeout=25 -detect_leaks=0 "tests/fuzz/corpus/$target" "$build/corpus/$target" \
            >>"$log" 2>&1
    fi
done
exit $((bad > 0))
