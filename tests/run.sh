#!/usr/bin/env bash
# Installs what the tests need on Debian 12, builds everything with warnings as errors and runs every
# test without a display.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
# shellcheck source=src/packages.sh
source "$root/src/packages.sh"
install_packages "${build_packages[@]}" "${run_packages[@]}" "${test_packages[@]}"

build="$root/build-tests"
cmake -S "$root" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DBASTEWRIGHT_UNITY=ON -DBASTEWRIGHT_BENCH=ON >/dev/null
ninja -C "$build"

export QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software FONTCONFIG_FILE="$root/tests/support/fonts.conf"
export XDG_RUNTIME_DIR=${XDG_RUNTIME_DIR:-$(mktemp -d)}
# Counted in halves of a processor, one more than there are: tests of the window wait more than they work
# and take one half, the others two (tests/CMakeLists.txt).
ctest --test-dir "$build" --output-on-failure --parallel "$((2 * $(nproc) + 2))" "$@" && exit 0
echo
echo "The tests that failed, once more, each alone: what fails again is wrong; what passes now depends on"
echo "how busy the machine is, which is a fault of the test."
ctest --test-dir "$build" --output-on-failure --rerun-failed --parallel 1
