# shellcheck shell=bash
# What this machine has: reads packages.txt, installs what is missing, counts jobs. For app/start and the scripts in tests.

packages_file="$(dirname -- "${BASH_SOURCE[0]}")/packages.txt"

# packages_of SECTION: the names in [SECTION], one a line.
packages_of() {
    local line in_section=no
    while IFS= read -r line; do
        line="${line%%#*}"
        line="${line//[[:space:]]/}"
        case "$line" in
            "") ;;
            "[$1]") in_section=yes ;;
            "["*) in_section=no ;;
            *) if [ "$in_section" = yes ]; then printf '%s\n' "$line"; fi ;;
        esac
    done <"$packages_file"
}

# packages_missing SECTION...: those not installed, one a line.
packages_missing() {
    local section name
    for section in "$@"; do
        while IFS= read -r name; do
            if [ "$(dpkg-query -W -f='${db:Status-Status}' "$name" 2>/dev/null)" != installed ]; then
                printf '%s\n' "$name"
            fi
        done < <(packages_of "$section")
    done
}

# packages_install WHO SECTION...: installs what is missing, or says in one sentence what to do, as WHO, and returns 1.
packages_install() {
    local who=$1 as_root=() missing=() log
    shift
    if ! command -v dpkg-query >/dev/null || ! command -v apt-get >/dev/null; then
        echo "$who: this is not Debian, so packages cannot be installed here; use Debian 12, or install by other means what $packages_file lists" >&2
        return 1
    fi
    mapfile -t missing < <(packages_missing "$@")
    if [ ${#missing[@]} -eq 0 ]; then return 0; fi
    if [ "$(id -u)" -ne 0 ]; then
        if ! command -v sudo >/dev/null; then
            echo "$who: packages are missing and only root can install them; as root run: apt-get update; apt-get install --no-install-recommends ${missing[*]}" >&2
            return 1
        fi
        as_root=(sudo)
    fi
    echo "$who: installing ${missing[*]}"
    log=$(mktemp)
    if "${as_root[@]}" apt-get update >"$log" 2>&1 &&
        "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive \
            apt-get install -y --no-install-recommends "${missing[@]}" >>"$log" 2>&1; then
        rm -f "$log"
        return 0
    fi
    tail -n 15 "$log" >&2
    echo "$who: apt-get could not install ${missing[*]}; see its words above, check the network, and start again" >&2
    rm -f "$log"
    return 1
}

# jobs_here: never more compilers at once than cores, or than memory allows at 1.5 GB each.
jobs_here() {
    local cores memory_kb by_memory
    cores=$(nproc)
    memory_kb=$(awk '/^MemTotal:/ {print $2}' /proc/meminfo 2>/dev/null || true)
    by_memory=$((${memory_kb:-3000000} / 1500000))
    if [ "$by_memory" -lt 1 ]; then by_memory=1; fi
    echo $((cores < by_memory ? cores : by_memory))
}
