#!/usr/bin/env bash
# Installs the Debian packages of demo/packages.txt, or of the list given, that are not there yet. Quiet when all is there.
set -euo pipefail
list=${1:-$(cd "$(dirname "$0")" && pwd)/packages.txt}

missing=()
while read -r package; do
    state=$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null || true)
    [ "$state" = installed ] || missing+=("$package")
done < <(grep -v '^#' "$list")
[ ${#missing[@]} -eq 0 ] && exit 0

root=()
if [ "$(id -u)" -ne 0 ]; then
    if ! command -v sudo >/dev/null; then
        echo "Needs root, or sudo, to install: ${missing[*]}" >&2
        exit 1
    fi
    root=(sudo)
fi
log=$(mktemp)
trap 'rm -f "$log"' EXIT
echo "Installing ${#missing[@]} Debian packages: ${missing[*]}" >&2
export DEBIAN_FRONTEND=noninteractive
if ! { "${root[@]}" apt-get update && "${root[@]}" apt-get install -y --no-install-recommends "${missing[@]}"; } >"$log" 2>&1; then
    cat "$log" >&2
    exit 1
fi
