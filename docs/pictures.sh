#!/usr/bin/env bash
# Makes the pictures in docs/pictures from the real window and the real sheets of the demo hull. Needs what tests/run installs, and
# no display.
set -euo pipefail
root=$(cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.." && pwd -P)
build="$root/build/dev"
cmake -C "$root/tests/presets/dev.cmake" -S "$root" -B "$build" -G Ninja >/dev/null
cmake --build "$build" --target window_pictures fayline
QT_QPA_PLATFORM=offscreen "$build/tests/ui/window/window_pictures" "$root/docs/pictures"

# Sheets of the whole demo hull.
work=$(mktemp -d)
trap 'rm -rf -- "$work"' EXIT
fayline="$build/app/fayline"
"$fayline" demo --to "$work/hull.fayline" >/dev/null
"$fayline" sheets "$work/hull.fayline" --to "$work" >/dev/null
for sheet in F16 keel planks; do
    pdftoppm -r 72 -gray -png -singlefile "$work/$sheet.pdf" "$root/docs/pictures/sheet-$sheet"
done
echo "pictures: $root/docs/pictures"
