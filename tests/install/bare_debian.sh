#!/usr/bin/env bash
# Installs a package on a bare Debian 12 in a folder of its own, uses it as a plain user without a screen, removes it and looks for what it
# left behind. Needs root, debootstrap and a mirror: bare_debian.sh PACKAGE.deb [MIRROR]; without one this machine's own is taken
set -euo pipefail
package=$(realpath "$1")
mirror=${2:-$(grep -hvE '^ *#' /etc/apt/sources.list /etc/apt/sources.list.d/* 2>/dev/null | grep -oE 'https?://[^ ]+' | head -1 || true)}
if [ "$(id -u)" != 0 ] || ! command -v debootstrap >/dev/null; then
  echo "Not root, or debootstrap is missing: the package was not tried on a bare Debian." >&2
  exit 0
fi
# In a view of the mounts of its own, so that what is mounted below goes with this script.
[ -n "${GRITWRIGHT_OWN_MOUNTS:-}" ] || GRITWRIGHT_OWN_MOUNTS=1 exec unshare --mount "$0" "$@"
bare=$(mktemp -d /var/tmp/gritwright-bare-XXXXXX)
trap 'umount "$bare/proc" 2>/dev/null || true; rm -rf --one-file-system "$bare"' EXIT
[ -n "${GRITWRIGHT_BARE:-}" ] && cp -a "$GRITWRIGHT_BARE/." "$bare"
[ -e "$bare/etc/debian_version" ] || debootstrap --variant=minbase bookworm "$bare" "$mirror" >/dev/null
chmod 755 "$bare"  # it is the root folder of a plain user in there
# A program finds its data by where it lies itself, which /proc tells.
mount --bind /proc "$bare/proc"
inside() { LC_ALL=C DEBIAN_FRONTEND=noninteractive chroot "$bare" "$@"; }
# What a package manager writes about packages is not the package's.
files() { (cd "$bare" && find . -xdev \( -path ./proc -o -path ./sys -o -path ./dev -o -path ./tmp -o -path ./var/cache -o -path ./var/log -o -path ./var/lib/apt -o -path ./var/lib/dpkg \) -prune -o -print | sort); }

inside apt-get -q update >/dev/null
inside useradd --create-home grower
files >"$bare/tmp/before"
inside dpkg-query -W -f '${Package}\n' >"$bare/tmp/packages-before"
cp "$package" "$bare/tmp/gritwright.deb"
inside apt-get -q install -y --no-install-recommends /tmp/gritwright.deb >"$bare/tmp/apt.log" || { cat "$bare/tmp/apt.log"; exit 1; }
as_grower() { inside su grower -c "cd && QT_QPA_PLATFORM=offscreen $*"; }
as_grower gritwright --version | grep 'built on Boost'
as_grower gritwright-desktop --version | grep 'built on Qt'
as_grower gritwright mix /usr/share/gritwright/demo-data/mixes/pines.json --pot /usr/share/gritwright/demo-data/containers/tray_01.json | grep -q 'air'
as_grower gritwright catalogue check >/dev/null
as_grower gritwright-desktop --shots shots
# As it starts from the menu: it makes the grower's record, which is the owner's alone, and stays.
as_grower "timeout 20 gritwright-desktop; [ \$? = 124 ]"
record=$bare/home/grower/.local/share/gritwright/record.gritwright
[ "$(stat -c %a "$record")" = 600 ] || { echo "the grower's record is not the grower's alone" >&2; exit 1; }
[ "$(find "$bare/home/grower/shots" -name '*.png' -size +10k | wc -l)" -ge 20 ] || { echo "too few pictures were written" >&2; exit 1; }

inside apt-get -q purge -y gritwright >/dev/null
inside apt-get -q autoremove --purge -y >/dev/null
inside userdel --remove grower 2>/dev/null
inside dpkg-query -W -f '${Package}\n' | diff "$bare/tmp/packages-before" - || { echo "other packages than before" >&2; exit 1; }
grep -v '^./home/grower' "$bare/tmp/before" >"$bare/tmp/expected"
left=$(files | comm -13 "$bare/tmp/expected" - | grep -i gritwright || true)
[ -z "$left" ] || { echo "left behind:" "$left" >&2; exit 1; }
echo "Installed, used and removed on a bare Debian $(cat "$bare/etc/debian_version"); files beyond those of before: $(files | comm -13 "$bare/tmp/expected" - | wc -l)"
