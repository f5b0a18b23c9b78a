#!/usr/bin/env bash
# How much of src the tests run, lines and branches by part: of the core (measures, job, plan, ways,
# planners, checker, session), which fails under 95 % of lines or 85 % of branches, and of what stands on Qt
# (language, store, sheets, view, page, app), which is printed. A build of its own and slow, so not one of the
# tests that always run.
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
install_packages "${build_packages[@]}" "${run_packages[@]}" "${test_packages[@]}" gcovr

build=${1:-$root/build-coverage}
shift || true
cmake -S "$root" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Debug -DBASTEWRIGHT_PRECOMPILED=OFF \
  -DCMAKE_CXX_FLAGS_DEBUG="-O1 --coverage -DNDEBUG" >/dev/null
ninja -C "$build"
find "$build" -name '*.gcda' -delete
export QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software FONTCONFIG_FILE="$root/tests/support/fonts.conf"
ctest --test-dir "$build" --output-on-failure --parallel "$((2 * $(nproc)))" "$@"
gcovr --root "$root" --object-directory "$build" -j "$(nproc)" \
  --exclude-throw-branches --exclude-unreachable-branches --gcov-ignore-parse-errors \
  --filter "$root/src/" --json-summary "$build/coverage.json" \
  --sort-uncovered --txt "$build/coverage.txt"
python3 - "$build/coverage.json" <<'END'
import collections, json, sys
CORE = ("measures", "job", "plan", "ways", "planners", "checker", "session")
parts = collections.defaultdict(lambda: [0, 0, 0, 0])
for file in json.load(open(sys.argv[1]))["files"]:
    folders = file["filename"].split("/")
    part = "/".join(folders[1:3]) if folders[1] == "planners" else folders[1]
    for name in (part, "the core" if folders[1] in CORE else "on Qt"):
        for at, what in enumerate(("line_covered", "line_total", "branch_covered", "branch_total")):
            parts[name][at] += file[what]
print(f"{'part':20} {'lines':>8} {'branches':>9}")
for part, (lines, of_lines, branches, of_branches) in sorted(parts.items(), key=lambda p: (" " in p[0], p[0])):
    print(f"{part:20} {100 * lines / of_lines:7.1f}% {100 * branches / max(1, of_branches):8.1f}%")
lines, of_lines, branches, of_branches = parts["the core"]
sys.exit(lines < 0.95 * of_lines or branches < 0.85 * of_branches)
END
