#!/usr/bin/env bash
# Fuzzes what reads text from elsewhere with clang's libFuzzer under AddressSanitizer and UBSan.
#
#     tests/fuzz/run.sh [SECONDS [TARGET…]]      60 seconds each of all targets by default
#
# Starts from tests/fuzz/corpus, goes on with what earlier runs found in build-fuzz/corpus. An input that
# breaks a promise is kept in build-fuzz/findings: mend the reader and put the input into the corpus.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
# shellcheck source=src/packages.sh
source "$root/src/packages.sh"
install_packages cmake ninja-build ccache clang libclang-rt-14-dev nlohmann-json3-dev libexpected-dev

seconds=${1:-60}
shift || true
targets=("$@")
[ ${#targets[@]} -gt 0 ] || targets=(job plan event request length)

build="$root/build-fuzz"
# A build type of its own: assertions stay on.
cmake -S "$root" -B "$build" -G Ninja -DCMAKE_C_COMPILER=clang -DCMAKE_CXX_COMPILER=clang++ \
  -DCMAKE_BUILD_TYPE=Fuzz -DCMAKE_CXX_FLAGS="-O1 -gline-tables-only -D_GLIBCXX_ASSERTIONS" \
  -DBASTEWRIGHT_FUZZ=ON -DBASTEWRIGHT_APP=OFF -DBASTEWRIGHT_TESTS=OFF -DBASTEWRIGHT_PRECOMPILED=OFF -DBASTEWRIGHT_UNITY=ON \
  -DBASTEWRIGHT_SANITIZE=address,undefined,fuzzer-no-link >/dev/null
ninja -C "$build" "${targets[@]/#/fuzz_}"

fuzz() {
  local target=$1 found="$build/corpus/$1" kept="$root/tests/fuzz/corpus/$1" log="$build/$1.log"
  mkdir -p "$found" "$build/findings"
  local options=(-max_total_time="$seconds" -timeout=5 -rss_limit_mb=1024 -malloc_limit_mb=512 -print_final_stats=1
           -artifact_prefix="$build/findings/$target-")
  case $target in
    length) options+=(-max_len=80) ;;
    request) options+=(-max_len=12000) ;;
    *) options+=(-max_len=16000 -dict="$root/tests/fuzz/json.dict") ;;
  esac
  local failed=0
  "$build/tests/fuzz/fuzz_$target" "${options[@]}" "$found" "$kept" >"$log" 2>&1 || failed=$?
  echo "== $target, $seconds s"
  tail -n 60 "$log"
  return "$failed"
}
export -f fuzz
export root build seconds
# As many at a time as there are processors; the exit status of any is that of all.
printf '%s\n' "${targets[@]}" | xargs -P "$(nproc)" -I{} bash -c 'set -euo pipefail; fuzz {}'
echo "No finding."
