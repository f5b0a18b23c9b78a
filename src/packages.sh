# Debian 12 packages that Bastewright needs; sourced by src/start.sh and tests/run.sh.
# docs/dependencies.md says what each is for.

build_packages=(
  cmake ninja-build ccache g++ pkg-config
  qt6-base-dev qt6-declarative-dev qt6-declarative-dev-tools qt6-svg-dev
  qt6-tools-dev qt6-tools-dev-tools qt6-l10n-tools libgl1-mesa-dev
  libcups2-dev libqrencode-dev libspdlog-dev libsqlite3-dev nlohmann-json3-dev libexpected-dev
)
run_packages=(
  qml6-module-qtqml qml6-module-qtqml-workerscript qml6-module-qtqml-models
  qml6-module-qtquick qml6-module-qtquick-controls qml6-module-qtquick-templates
  qml6-module-qtquick-layouts qml6-module-qtquick-window qml6-module-qtquick-dialogs
  qml6-module-qtquick-shapes qml6-module-qt-labs-folderlistmodel qml6-module-qt-labs-settings
  fonts-dejavu-core fonts-noto-core
)
test_packages=(
  libgtest-dev libgmock-dev libbenchmark-dev qml6-module-qttest
  xvfb xauth xdotool dbus at-spi2-core gir1.2-atspi-2.0 python3-gi zbar-tools imagemagick poppler-utils cups-daemon cups-client libxml2-utils
  librsvg2-bin glpk-utils coinor-cbc python3 python3-jsonschema
  clang-format-14 desktop-file-utils appstream shared-mime-info dpkg-dev file
)

# Installs what is missing of the packages named; says so and stops where it cannot.
install_packages() {
  local missing=() package
  for package in "$@"; do
    dpkg-query -W -f='${Status}' "$package" 2>/dev/null | grep -q 'ok installed' || missing+=("$package")
  done
  [ ${#missing[@]} -eq 0 ] && return 0
  local as_root=()
  if [ "$(id -u)" -ne 0 ]; then
    if ! command -v sudo >/dev/null; then
      echo "These packages are missing and neither root nor sudo is there to install them: ${missing[*]}" >&2
      return 1
    fi
    as_root=(sudo)
  fi
  echo "Installing ${#missing[@]} packages."
  local apt=("${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get -qq -o DPkg::Lock::Timeout=300)
  "${apt[@]}" update
  "${apt[@]}" install -y --no-install-recommends "${missing[@]}" >/dev/null
}
