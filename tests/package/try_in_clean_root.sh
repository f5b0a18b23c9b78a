#!/usr/bin/env bash
# Installs the Debian package on a bare Debian 12, uses it there as a person would, and removes it again.
# Takes some minutes and the network; not one of the tests that always run.
#
#   try_in_clean_root.sh PACKAGE.deb [PICTURE.png]     the picture is of the window
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
arguments=("$@")
package=${1:?a package, made with: cpack --config build/CPackConfig.cmake}
picture=${2:-}
# shellcheck source=tests/package/clean_root.sh
source "$here/clean_root.sh"

step() { printf '== %s\n' "$*"; }

step "lintian"
lintian --fail-on error --suppress-tags bad-distribution-in-changes-file "$package"

step "a bare system"
make_clean_root
before=$(inside dpkg-query -f '${Package}\n' -W | sort)
cp "$package" "$root/tmp/bastewright.deb"

step "the package and only what it needs"
inside apt-get -qq install -y --no-install-recommends /tmp/bastewright.deb >/dev/null
after=$(inside dpkg-query -f '${Package}\n' -W | sort)
echo "$(comm -13 <(echo "$before") <(echo "$after") | wc -l) packages came with it"
mkdir -m 700 "$root/home/quilter/.run"
inside chown quilter: /home/quilter/.run
as_person bastewright --version

step "every screen"
as_person env QT_QPA_PLATFORM=offscreen bastewright --self-test

step "a plan, its check, the sheets"
demo=/usr/share/doc/bastewright/examples/harbour-lights.bastewright.json
as_person bastewright plan $demo --json /home/quilter/plan.json >"$root/home/quilter/plan.txt"
head -5 "$root/home/quilter/plan.txt"
as_person bastewright check $demo /home/quilter/plan.json
as_person bastewright sheets $demo --out /home/quilter/sheets
head -c 5 "$root"/home/quilter/sheets/*-a4.pdf >/dev/null
for sheet in "$root"/home/quilter/sheets/*.pdf; do
  pdfinfo "$sheet" | grep -E '^(Title|Pages|Page size)'
done

step "the window, with a job that was double-clicked"
inside cp $demo "/home/quilter/My quilt.bastewright.json"
exec 3<>"$root/tmp/display"
Xvfb -displayfd 3 -screen 0 1280x800x24 -nolisten tcp 2>/dev/null &
display=$!
trap 'kill $display 2>/dev/null || true; leave_clean_root' EXIT
for _ in $(seq 50); do [ -s "$root/tmp/display" ] && break; sleep 0.1; done
DISPLAY=:$(tr -d '\n' <"$root/tmp/display")
export DISPLAY BASTEWRIGHT_TELL_PLACES=/home/quilter/.run/places
as_person bastewright "/home/quilter/My quilt.bastewright.json" &
window=$!
for _ in $(seq 300); do
  grep -q '^toTable .* 1$' "$root$BASTEWRIGHT_TELL_PLACES" 2>/dev/null && break
  kill -0 $window
  sleep 0.2
done
grep -q '^toTable .* 1$' "$root$BASTEWRIGHT_TELL_PLACES" # planned: the session can be begun
[ -z "$picture" ] || { sleep 1; import -window root "$picture"; }
kill "$(pgrep -P $window)" # the program itself, not the shell that waits for it
wait $window 2>/dev/null || true
kill $display
unset DISPLAY BASTEWRIGHT_TELL_PLACES

step "what a desktop makes of the file"
inside apt-get -qq install -y --no-install-recommends xdg-utils desktop-file-utils shared-mime-info libfile-mimeinfo-perl >/dev/null
kind=$(as_person xdg-mime query filetype "/home/quilter/My quilt.bastewright.json")
opens=$(as_person xdg-mime query default application/x-bastewright-job)
echo "$kind, opened by $opens"
[ "$kind" = application/x-bastewright-job ] && [ "$opens" = bastewright.desktop ]

step "removed; the person's quilts stay"
library=$root/home/quilter/.local/share/bastewright/library.sqlite
sum=$(sha256sum <"$library")
files=$(inside dpkg -L bastewright)
inside apt-get -qq purge -y bastewright >/dev/null
[ "$(sha256sum <"$library")" = "$sum" ]
while read -r file; do
  [ ! -f "$root$file" ] || { echo "$file is left behind" >&2; exit 1; }
done <<<"$files"
find "$root/home/quilter" -type f -not -name '.bash*' -not -name .profile -printf '%P\n' | sort
echo "All of it worked."
