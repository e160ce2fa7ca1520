#!/bin/sh
# Builds everything and runs every test; the last line counts what passed and what failed.
# usage: sh tests/run.sh   (BENCHLORE_QUICK=1 leaves out the sanitizers and fuzzing; BENCHLORE_TIDY=1 adds clang-tidy)
set -u
cd "$(dirname "$0")/.." || exit 2
. tests/set-up.sh

build=build
logs=$build/logs
passed=0
failed=0

pass() { passed=$((passed + $1)); }
fail() { failed=$((failed + $1)); }

# One step that either works or does not: step NAME COMMAND…
step() {
  name=$1
  shift
  echo "== $name"
  if "$@" >"$logs/step.log" 2>&1; then
    pass 1
  else
    fail 1
    tail -n 60 "$logs/step.log"
    echo "FAILED: $name"
    return 1
  fi
}

# Adds the numbers that a test printed: doctest's line, a line `N passed, N failed`, or lines `ok` and `not ok`.
numbers_of() {
  awk '
    /^\[doctest\] test cases:/ { split($0, f, "|"); sub(/^ */, "", f[2]); sub(/^ */, "", f[3]); p = f[2] + 0; n = f[3] + 0; total = 1 }
    /^[0-9]+ passed, [0-9]+ failed/ { p = $1; n = $3; total = 1 }
    /^ok / { oks++ }
    /^not ok / { bad++ }
    END { if (!total) { p = oks + 0; n = bad + 0 } print p, n }' "$1"
}

# Runs one test program or script: run NAME COMMAND…
run() {
  name=$1
  shift
  start=$(date +%s)
  "$@" >"$logs/test.log" 2>&1
  status=$?
  # shellcheck disable=SC2046
  set -- $(numbers_of "$logs/test.log")
  good=$1
  bad=$2
  # A crash, or an end without any count, is a failure of its own.
  if [ "$status" -ne 0 ] && [ "$bad" -eq 0 ]; then bad=1; fi
  if [ "$good" -eq 0 ] && [ "$bad" -eq 0 ]; then bad=1; fi
  pass "$good"
  fail "$bad"
  printf '%-36s %5d passed %3d failed %4d s\n' "$name" "$good" "$bad" $(($(date +%s) - start))
  if [ "$bad" -gt 0 ]; then tail -n 80 "$logs/test.log"; fi
}

# The programs that ctest knows in a build folder.
programs() {
  ctest --test-dir "$1" -N | sed -n 's/^ *Test *#[0-9]*: //p'
}

run_programs() {
  for program in $(programs "$1"); do
    case $program in
    $2) run "$3$program" "$1/$program" ;;
    esac
  done
}

# What the sanitizers run: the layers that read what others wrote.
sanitized="unit_base unit_quantity unit_record unit_notes unit_decode"

run_scripts() {
  for script in "$1"/*.mjs; do
    if [ -e "$script" ]; then run "$script" node "$script"; fi
  done
}

check_format() {
  find compiler tests -name '*.cpp' -o -name '*.h' | xargs clang-format --dry-run -Werror
}

# Every source, two at a time; see .clang-tidy.
check_tidy() {
  find compiler -name '*.cpp' | xargs -P 2 -n 4 clang-tidy -p "$build" --quiet
}

install_node_modules() {
  mkdir -p "$build/node"
  if cmp -s tests/outside/package.json "$build/node/package.json" && [ -d "$build/node/node_modules" ]; then return 0; fi
  cp tests/outside/package.json "$build/node/" &&
    (cd "$build/node" && npm install --ignore-scripts --no-audit --no-fund) || {
    rm -f "$build/node/package.json"
    return 1
  }
}

# The deliberate findings make the build end with 1.
publish_demonstration() {
  "$build/benchlore" build --content content --out "$build/site"
  [ $? -eq 1 ]
}

fuzz() {
  name=$(basename "$1" .cpp)
  mkdir -p "$build/fuzz"
  step "fuzz $name for 10 s" "build-fuzz/$name" -max_total_time=10 -max_len=4096 -rss_limit_mb=1024 \
    "-artifact_prefix=$build/fuzz/$name-"
}

node_packages=
command -v node >/dev/null 2>&1 || node_packages="nodejs npm"
tools=
command -v clang-format >/dev/null 2>&1 || tools="clang-format"
command -v clang-tidy >/dev/null 2>&1 || tools="$tools clang-tidy"
# shellcheck disable=SC2086
set_up units sqlite3 xapian-tools ngspice kicad-symbols chromium clang libclang-rt-14-dev $node_packages $tools || exit 2

mkdir -p "$logs"
step "configure" cmake -G Ninja -B "$build" -DCMAKE_BUILD_TYPE=Release
step "build" ninja -C "$build"
step "format" check_format
run_programs "$build" '*' ''

export BENCHLORE_BUILD="$PWD/$build" BENCHLORE_NODE="$PWD/$build/node" BENCHLORE_SITE="$PWD/$build/site"
step "publish the demonstration shop" publish_demonstration
step "npm packages of the outside tests" install_node_modules
run_scripts tests/outside
run_scripts tests/browser

if [ -z "${BENCHLORE_QUICK:-}" ]; then
  step "configure with sanitizers" cmake -G Ninja -B build-sanitize -DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_FLAGS=-O1 \
    -DBENCHLORE_SANITIZE=ON
  step "build with sanitizers" ninja -C build-sanitize $sanitized
  for program in $sanitized; do run "sanitized $program" "build-sanitize/$program"; done
  if [ -n "${BENCHLORE_TIDY:-}" ]; then step "clang-tidy" check_tidy; fi
  step "configure with fuzzing" cmake -G Ninja -B build-fuzz -DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_FLAGS=-O1 \
    -DCMAKE_CXX_COMPILER=clang++ -DBENCHLORE_FUZZ=ON
  step "build with fuzzing" ninja -C build-fuzz fuzz_targets
  for target in tests/fuzz/*_fuzz.cpp; do
    if [ -e "$target" ]; then fuzz "$target"; fi
  done
fi

echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
