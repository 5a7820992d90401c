#!/usr/bin/env bash
# Makes the pictures in docs/pictures from the real window on the demo hull. Needs what tests/run installs, and no display.
set -euo pipefail
root=$(cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.." && pwd -P)
build="$root/build/dev"
cmake -C "$root/tests/presets/dev.cmake" -S "$root" -B "$build" -G Ninja >/dev/null
cmake --build "$build" --target window_pictures
QT_QPA_PLATFORM=offscreen "$build/tests/ui/window/window_pictures" "$root/docs/pictures"
echo "pictures: $root/docs/pictures"
