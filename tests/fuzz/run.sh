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

for target in "${targets[@]}"; do
  found="$build/corpus/$target"
  kept="$root/tests/fuzz/corpus/$target"
  mkdir -p "$found" "$build/findings"
  options=(-max_total_time="$seconds" -timeout=5 -rss_limit_mb=1024 -malloc_limit_mb=512 -print_final_stats=1
           -artifact_prefix="$build/findings/$target-")
  case $target in
    length) options+=(-max_len=80) ;;
    request) options+=(-max_len=12000) ;;
    *) options+=(-max_len=16000 -dict="$root/tests/fuzz/json.dict") ;;
  esac
  echo "== $target, $seconds s"
  "$build/tests/fuzz/fuzz_$target" "${options[@]}" "$found" "$kept"
done
echo "No finding."
