# A bare Debian 12 in a folder; sourced by the two scripts beside it. Needs root and debootstrap.
#
#   make_clean_root     makes it in $root, which is gone at the end
#   inside COMMAND      runs it there as root
#   as_person COMMAND   runs it there as a person called quilter
#
# Packages come from where this machine's own apt takes those of Debian 12, or from
# BASTEWRIGHT_MIRROR; BASTEWRIGHT_BASE is a tar of a bare system made before.

# The first source of this machine's apt that has Debian 12.
own_mirror() {
  apt-get indextargets --format '$(REPO_URI)' \
    'Created-By: Packages' 'Codename: bookworm' 'Component: main' | head -n 1
}

make_clean_root() {
  [ "$(id -u)" -eq 0 ] || { echo "Only root can make a clean root." >&2; exit 2; }
  if [ -z "${in_namespace:-}" ]; then # so that what is mounted is gone with this process
    in_namespace=1 exec unshare --mount "$BASH" "$0" "${arguments[@]}"
  fi
  local mirror=${BASTEWRIGHT_MIRROR:-$(own_mirror)}
  [ -n "$mirror" ] ||
    { echo "No source of apt has Debian 12; BASTEWRIGHT_MIRROR can name one." >&2; exit 2; }
  root=$(mktemp -d)
  chmod 755 "$root"
  trap leave_clean_root EXIT
  if [ -n "${BASTEWRIGHT_BASE:-}" ]; then
    tar -C "$root" -xf "$BASTEWRIGHT_BASE"
  else
    debootstrap --variant=minbase bookworm "$root" "$mirror" >/dev/null
  fi
  echo "deb $mirror bookworm main" >"$root/etc/apt/sources.list"
  printf '#!/bin/sh\nexit 101\n' >"$root/usr/sbin/policy-rc.d" # no services
  chmod 755 "$root/usr/sbin/policy-rc.d"
  cp /etc/resolv.conf "$root/etc/resolv.conf"
  mount -t proc proc "$root/proc"
  mount --rbind /dev "$root/dev"
  mount --make-rslave "$root/dev"
  inside apt-get -qq update
  inside useradd --create-home --shell /bin/bash quilter
}

leave_clean_root() {
  umount -l "$root/dev" "$root/proc" 2>/dev/null || true
  rm -rf --one-file-system "$root"
}

inside() {
  env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root LC_ALL=C.UTF-8 DEBIAN_FRONTEND=noninteractive \
    chroot "$root" "$@"
}

as_person() {
  env -i PATH=/usr/bin:/bin HOME=/home/quilter LC_ALL=C.UTF-8 XDG_RUNTIME_DIR=/home/quilter/.run \
    ${DISPLAY:+DISPLAY=$DISPLAY} ${BASTEWRIGHT_TELL_PLACES:+BASTEWRIGHT_TELL_PLACES=$BASTEWRIGHT_TELL_PLACES} \
    /usr/sbin/chroot --userspec=quilter:quilter "$root" "$@"
}
