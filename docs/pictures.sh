#!/usr/bin/env bash
# Makes the pictures in docs/pictures from the real window and the real sheets of the demo hull. Needs what tests/run installs, and
# no display.
set -euo pipefail
root=$(cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.." && pwd -P)
build="$root/build/dev"
cmake -C "$root/tests/presets/dev.cmake" -S "$root" -B "$build" -G Ninja >/dev/null
cmake --build "$build" --target window_pictures fayline
QT_QPA_PLATFORM=offscreen "$build/tests/ui/window/window_pictures" "$root/docs/pictures"

# Sheets, of a copy with heels, arms and planks decided.
work=$(mktemp -d)
trap 'rm -rf -- "$work"' EXIT
fayline="$build/app/fayline"
"$fayline" demo --to "$work/hull.fayline" >/dev/null
"$fayline" decide "$work/hull.fayline" --why "pictures" heel.kind=wood_screw heel.count=2 heel.gauge=14 "heel.length=3 in" \
    heel.metal=c65100_h02 "heel.counterbore=3/8 in" arm.kind=bolt arm.count=3 "arm.diameter=3/8 in" arm.metal=c65500_h02 \
    "planking.thickness=1 in" planking.strakes=12 plank.kind=wood_screw plank.count=2 plank.gauge=12 \
    "plank.length=1-3/4 in" plank.metal=c65100_h02 >/dev/null
"$fayline" sheets "$work/hull.fayline" --to "$work" >/dev/null
for sheet in F16 keel planks; do
    pdftoppm -r 72 -gray -png -singlefile "$work/$sheet.pdf" "$root/docs/pictures/sheet-$sheet"
done
echo "pictures: $root/docs/pictures"
