#!/usr/bin/env bash
# Makes the pictures in docs/pictures from the real window and the real sheets of the demo hull. Needs what tests/run installs, and
# no display.
set -euo pipefail
root=$(cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.." && pwd -P)
build="$root/build/dev"
cmake -C "$root/tests/presets/dev.cmake" -S "$root" -B "$build" -G Ninja >/dev/null
cmake --build "$build" --target window_pictures fayline
work=$(mktemp -d)
trap 'rm -rf -- "$work"' EXIT
fayline="$build/app/fayline"
"$fayline" demo --to "$work/hollin.fayline" >/dev/null

# Of all the pictures that can be made, those that docs/pictures keeps.
mkdir "$work/pictures"
QT_QPA_PLATFORM=offscreen "$build/tests/ui/window/window_pictures" "$work/pictures" "$work/hollin.fayline"
"$fayline" sheets "$work/hollin.fayline" --to "$work" >/dev/null
for sheet in F16 keel planks; do
    pdftoppm -r 72 -gray -png -singlefile "$work/$sheet.pdf" "$work/pictures/sheet-$sheet"
done
for kept in "$root"/docs/pictures/*.png; do cp -- "$work/pictures/$(basename "$kept")" "$kept"; done
echo "pictures: $root/docs/pictures"
