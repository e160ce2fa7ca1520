# Sourced by compiler/demo.sh and tests/run.sh: installs from Debian what is missing, and nothing else.
# usage: set_up [more packages…]

as_root() {
  if [ "$(id -u)" -eq 0 ]; then "$@"; else sudo "$@"; fi
}

# The packages of the list that are not installed, on one line.
missing_packages() {
  for package in "$@"; do
    dpkg -s "$package" 2>/dev/null | grep -q '^Status: install ok installed' || printf '%s ' "$package"
  done
}

install_packages() {
  as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends "$@"
}

set_up() {
  # shellcheck disable=SC2046,SC2086 # the list is split into words on purpose
  set -- $(missing_packages g++ cmake ninja-build pkg-config libcmark-gfm-dev libcmark-gfm-extensions-dev \
    libxapian-dev libcli11-dev doctest-dev libyaml-dev libsqlite3-dev "$@")
  [ $# -eq 0 ] && return 0
  echo "installing: $*"
  install_packages "$@" >/dev/null 2>&1 && return 0
  as_root apt-get update -q && install_packages "$@"
}
