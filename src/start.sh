#!/usr/bin/env bash
# Installs what Bastewright needs on Debian 12, builds it and opens the demo job. With no display it
# plans the demo, prints the plan and writes the sheets instead.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
# shellcheck source=src/packages.sh
source "$root/src/packages.sh"
install_packages "${build_packages[@]}" "${run_packages[@]}"

build="$root/build"
cmake -S "$root" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DBASTEWRIGHT_UNITY=ON -DBASTEWRIGHT_TESTS=OFF >/dev/null
ninja -C "$build" bastewright

program="$build/src/app/bastewright"
demo="$root/assets/demo/harbour-lights.json"
if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
  exec "$program" "$demo"
fi
mkdir -p "$build/demo"
export XDG_RUNTIME_DIR=${XDG_RUNTIME_DIR:-$(mktemp -d)}
"$program" plan "$demo" --json "$build/demo/plan.json"
"$program" sheets "$demo" --out "$build/demo"
echo "There is no display, so no window was opened. The plan and the sheets are in $build/demo."
