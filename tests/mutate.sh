#!/usr/bin/env bash
# Breaks the rules on purpose, one place at a time, and shows that some test dies of it: tests/mutants/mutants.txt
# lists the places. All mutants are built into one program and switched by YW_MUTANT, so there is one build.
# Usage: bash tests/mutate.sh [FOLDER]   (scratch, default build/mutants; some minutes of all cores)
# Last line: "N mutants, N killed, N equivalent"; status 1 where one lives that is not named as equivalent.
set -euo pipefail
cd "$(dirname "$0")/.."
scratch=${1:-build/mutants}
mkdir -p "$scratch/src"
git ls-files | tar -cf - -T - | tar -xf - -C "$scratch/src"
perl tests/mutants/apply.pl "$scratch/src" tests/mutants/mutants.txt >"$scratch/list"
cmake -S "$scratch/src" -B "$scratch/build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DYARDWRIGHT_TESTS=ON -DYARDWRIGHT_UNITY=OFF \
    -DCMAKE_CXX_FLAGS="-include $PWD/tests/mutants/mutant.h -Wno-error" >/dev/null
cmake --build "$scratch/build" --target rules_test holds_test | tail -n 1

judge() { # NUMBER SCRATCH: prints "killed NUMBER" or "lives NUMBER"
    for test in rules_test holds_test; do
        if ! YW_MUTANT=$1 timeout 300 "$2/build/$test" --gtest_fail_fast --gtest_brief=1 >/dev/null 2>&1; then
            echo "killed $1"
            return
        fi
    done
    echo "lives $1"
}
export -f judge
judge 0 "$scratch" | grep -q '^lives' || { echo "the tests fail without any mutant" >&2; exit 1; }
cut -f1 "$scratch/list" | xargs -P "$(nproc)" -I{} bash -c 'judge {} "$0"' "$scratch" >"$scratch/verdicts"

total=0 killed=0 equivalent=0 lives=0
while IFS=$'\t' read -r number rule place becomes why; do
    total=$((total + 1))
    if grep -qx "killed $number" "$scratch/verdicts"; then
        killed=$((killed + 1))
        [ -z "$why" ] || echo "named as equivalent, but killed: rule $rule, $place"
    elif [ -n "$why" ]; then
        equivalent=$((equivalent + 1))
        echo "equivalent: rule $rule, $place -> $becomes: $why"
    else
        lives=$((lives + 1))
        echo "lives: rule $rule, $place -> $becomes"
    fi
done <"$scratch/list"
echo "$total mutants, $killed killed, $equivalent equivalent"
[ "$lives" -eq 0 ]
