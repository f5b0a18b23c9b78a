#!/usr/bin/env bash
# Builds with sanitizers and runs the tests under them. Slow: hours on a small machine, so not in the gate.
#
#     tests/sanitize.sh [address|thread] [CTEST_ARGUMENT…]
#
# address: AddressSanitizer with leaks and UBSan, all tests. thread: ThreadSanitizer, those of the core, the
# session, the store and the view. JOBS says how many processes compile (all processors by default).
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
# shellcheck source=src/packages.sh
source "$root/src/packages.sh"
install_packages "${build_packages[@]}" "${run_packages[@]}" "${test_packages[@]}"

kind=${1:-address}
shift || true
case $kind in
  address) sanitizers=address,undefined ;;
  thread) sanitizers=thread ;;
  *) echo "tests/sanitize.sh [address|thread]: '$kind' is neither." >&2; exit 2 ;;
esac
build="$root/build-$kind"
# A build type of its own: assertions stay on, and the standard library checks its own.
cmake -S "$root" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Sanitize \
  -DCMAKE_CXX_FLAGS="-O1 -g1 -D_GLIBCXX_ASSERTIONS" -DBASTEWRIGHT_SANITIZE=$sanitizers >/dev/null

export QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software
export XDG_RUNTIME_DIR=${XDG_RUNTIME_DIR:-$(mktemp -d)}
export BASTEWRIGHT_SANITIZED=1 # tests that bound memory or time say how much more is fair
export BASTEWRIGHT_JOBS=${BASTEWRIGHT_JOBS:-24} # made jobs that are planned and checked; 100 without sanitizers
export ASAN_OPTIONS=detect_stack_use_after_return=1:strict_string_checks=1:abort_on_error=0
export UBSAN_OPTIONS=print_stacktrace=1
export LSAN_OPTIONS=suppressions=$root/tests/leaks.txt:print_suppressions=0
export TSAN_OPTIONS=suppressions=$root/tests/races.txt:second_deadlock_stack=1
jobs=${JOBS:-$(nproc)}
if [ "$kind" = thread ]; then
  targets=(test_measures test_job test_plan test_session test_session_properties test_store test_view test_page)
  ninja -C "$build" -j "$jobs" "${targets[@]}"
  for target in "${targets[@]}"; do
    echo "== $target"
    "$(find "$build/tests" -name "$target" -type f -perm -u+x | head -1)" --gtest_brief=1 "$@"
  done
else
  ninja -C "$build" -j "$jobs"
  # What is installed is of a release build, without the names that a debugger wants.
  ctest --test-dir "$build" --output-on-failure --exclude-regex '^package: ' "$@"
fi
