#!/usr/bin/env bash
# How much of the core the tests run: lines and branches of measures, job, plan, planners, checker and
# session. Fails under 95 % of lines or 85 % of branches. A build of its own, without Qt and slow, so not
# one of the tests that always run.
#
#   coverage.sh [BUILD] [ctest arguments]      build-coverage
#
# Left out are branches that exist only because a call could throw (running out of memory), those the
# compiler makes unreachable, and assertions: the programmer's errors, which no input provokes; and the few
# counts that threads have spoilt (below nought).
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
# shellcheck source=src/packages.sh
source "$root/src/packages.sh"
install_packages "${build_packages[@]}" "${test_packages[@]}" gcovr

build=${1:-$root/build-coverage}
shift || true
cmake -S "$root" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Debug -DBASTEWRIGHT_APP=OFF -DBASTEWRIGHT_PRECOMPILED=OFF \
  -DCMAKE_CXX_FLAGS_DEBUG="-O1 --coverage -DNDEBUG" >/dev/null
ninja -C "$build"
find "$build" -name '*.gcda' -delete
ctest --test-dir "$build" --output-on-failure --parallel "$(nproc)" "$@"
gcovr --root "$root" --object-directory "$build" -j "$(nproc)" \
  --exclude-throw-branches --exclude-unreachable-branches --gcov-ignore-parse-errors \
  --filter "$root/src/(measures|job|plan|planners|checker|session)/" --json-summary "$build/coverage.json" \
  --sort-uncovered --txt "$build/coverage.txt"
python3 - "$build/coverage.json" <<'END'
import collections, json, sys
parts = collections.defaultdict(lambda: [0, 0, 0, 0])
for file in json.load(open(sys.argv[1]))["files"]:
    folders = file["filename"].split("/")
    part = "/".join(folders[1:3]) if folders[1] == "planners" else folders[1]
    for name in (part, "core"):
        for at, what in enumerate(("line_covered", "line_total", "branch_covered", "branch_total")):
            parts[name][at] += file[what]
print(f"{'part':20} {'lines':>8} {'branches':>9}")
for part, (lines, of_lines, branches, of_branches) in sorted(parts.items(), key=lambda p: (p[0] == "core", p[0])):
    print(f"{part:20} {100 * lines / of_lines:7.1f}% {100 * branches / max(1, of_branches):8.1f}%")
lines, of_lines, branches, of_branches = parts["core"]
sys.exit(lines < 0.95 * of_lines or branches < 0.85 * of_branches)
END
