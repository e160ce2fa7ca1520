#!/bin/sh
# Builds the compiler and compiles the demonstration shop in content/ to public/.
set -eu
cd "$(dirname "$0")/.."
. tests/set-up.sh
set_up

cmake -G Ninja -B build -DCMAKE_BUILD_TYPE=Release >/dev/null
ninja -C build --quiet benchlore

# 1 says that the shop has findings; they are part of the demonstration.
status=0
build/benchlore build --content content --out public || status=$?
if [ "$status" -gt 1 ]; then exit "$status"; fi
echo "the site: file://$PWD/public/index.html"
