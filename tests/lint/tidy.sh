#!/usr/bin/env bash
# clang-tidy over src, clazy (level 1) over the parts with Qt. Slow, so not one of the tests that always run.
#
#   tidy.sh [BUILD] [WHAT]     build-tests; only files whose path holds WHAT
#
# Each file is read as the build compiles it, without the precompiled headers of g++.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
build=$(realpath "${1:-$root/build-tests}")
what=${2:-}
read_by=$(mktemp -d)
trap 'rm -rf "$read_by"' EXIT
python3 - "$build" "$read_by" "$root" <<'END'
import json, pathlib, re, sys
build, out, root = map(pathlib.Path, sys.argv[1:])
kept = []
for entry in json.loads((build / "compile_commands.json").read_text()):
    file = pathlib.Path(entry["file"])
    if not file.is_relative_to(root / "src"):
        continue
    command = re.sub(r"^.*?(?=/\S*c\+\+ )", "", entry["command"])  # without the compiler cache
    command = re.sub(r" -include \S+cmake_pch\.hxx| -Winvalid-pch| -fpch-preprocess", "", command)
    command = re.sub(r" -Wduplicated-cond| -Wlogical-op| -Wno-restrict", "", command)  # clang has them not
    kept.append({**entry, "command": command})
(out / "compile_commands.json").write_text(json.dumps(kept))
(out / "files").write_text("".join(entry["file"] + "\n" for entry in kept))
END
cd "$root"
found=0
grep -F -- "$what" "$read_by/files" >"$read_by/chosen"
echo "== clang-tidy: $(wc -l <"$read_by/chosen") files"
xargs -P "${JOBS:-$(nproc)}" -n 4 clang-tidy --quiet -p "$read_by" <"$read_by/chosen" 2>/dev/null || found=1
grep -E '/src/(language|sheets|view|page|app)/' "$read_by/chosen" >"$read_by/qt" || true
echo "== clazy: $(wc -l <"$read_by/qt") files"
CLAZY_CHECKS=level1 xargs -r -P "${JOBS:-$(nproc)}" -n 4 clazy-standalone -p "$read_by" \
  --header-filter="$root/src/.*" <"$read_by/qt" 2>&1 | grep -E 'warning:|error:' | sort -u >"$read_by/clazy" || true
cat "$read_by/clazy"
[ ! -s "$read_by/clazy" ] || found=1
[ "$found" -eq 0 ] && echo "Nothing found."
exit "$found"
