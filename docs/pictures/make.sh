#!/usr/bin/env bash
# Makes the pictures of the documents with the program itself, so that they show what it is like now:
# every screen as the self-test walks through it, and pages of the sheets. A few minutes.
#
#   make.sh [PROGRAM]      build-tests/src/app/bastewright without it
#
# Needs pngquant, poppler-utils and librsvg2-bin.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(cd "$here/../.." && pwd)
program=${1:-$root/build-tests/src/app/bastewright}
job=$root/assets/demo/harbour-lights.json
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir -m 700 "$work/home"
export HOME=$work/home XDG_RUNTIME_DIR=$work/home LC_ALL=C.UTF-8 TZ=UTC
export QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software

# Fewer colours make them small; with fewer than these the rings of people lose theirs.
keep() { pngquant --strip --speed 1 --quality 60-98 96 - <"$1" >"$here/$2.png"; }

"$program" --picture-screens "$work/screens" "$job" --size 1280x800
while read -r stop name; do
  keep "$work/screens/$stop.png" "$name"
done <<'END'
shelf-examples-open shelf
guide-people guide
plan plan
pad-length number-pad
basting-rows rows
layers-cloth layers
pane-room room
people-at-a-side people
pane-ways ways
trial trial
pane-lanes lanes
pane-rehearsal rehearsal
print print
table-middle table-middle
table-step table-step
table-check table-check
table-changes table-changes
END

"$program" sheets "$job" --out "$work/sheets" --with passes --paper a4 >/dev/null
sheets=$work/sheets/harbour-lights-a4.pdf
page() { # the first page that has these words, as a picture
  local number=1 last
  last=$(pdfinfo "$sheets" | sed -n 's/^Pages: *//p')
  until pdftotext -f $number -l $number "$sheets" - | grep -q -- "$1"; do
    number=$((number + 1))
    [ "$number" -le "$last" ] || { echo "No page says '$1'." >&2; exit 1; }
  done
  pdftoppm -png -r 80 -f $number -l $number -singlefile "$sheets" "$work/$2"
  keep "$work/$2.png" "$2"
}
page 'Pass 2 of' sheet-pass
page "From where you stand" sheet-helper

for size in 48 128 256; do
  rsvg-convert -w $size -h $size "$root/assets/icon/bastewright.svg" |
    pngquant --strip 64 - >"$root/assets/icon/bastewright-$size.png"
done
python3 "$root/tests/lint/drawing.py" "$root" >"$here/parts.svg"
du -ch "$here"/*.png | tail -1
