# shellcheck shell=bash
# SPDX-License-Identifier: MIT
# What start, test and deb share; sourced, never run. Sets `root` and `self`, and gives:
#   fail SENTENCE                             say it on stderr, exit 1
#   install_missing LIST...                   the Debian packages named in packaging/dependencies/LIST.txt
#   configure FOLDER CMAKE_ARGUMENT...        build/FOLDER with Ninja
#   build FOLDER [TARGET...]                  what was configured, on all cores that have memory for it, nicely
#   is_configured FOLDER SETTING...           whether build/FOLDER has these lines (NAME:TYPE=VALUE) in its cache
#   can_write FOLDER                          made if it is not there
#   go_without_display                        Qt paints to memory from here on, and does not complain of a missing login

root=$(cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.." && pwd -P)
self=packaging/${0##*/}

say() { printf '%s: %s\n' "$self" "$*"; }

fail() {
    printf '%s: %s\n' "$self" "$*" >&2
    exit 1
}

listed_packages() {
    local list
    for list in "$@"; do
        sed -e 's/#.*//' -e 's/[[:space:]]//g' -e '/^$/d' "$root/packaging/dependencies/$list.txt"
    done | LC_ALL=C sort -u
}

# Of the packages named on stdin, those that are not installed.
absent_packages() {
    local -a named
    mapfile -t named
    LC_ALL=C comm -23 <(printf '%s\n' "${named[@]}") \
        <(dpkg-query --show --showformat='${Package} ${db:Status-Status}\n' "${named[@]}" 2>/dev/null |
            sed -n 's/ installed$//p' | LC_ALL=C sort -u)
}

# Of the packages named, those that no package source of this machine has.
unknown_packages() {
    local name
    for name in "$@"; do
        LC_ALL=C apt-cache policy "$name" 2>/dev/null | grep '^  Candidate: [^(]' >/dev/null || printf '%s\n' "$name"
    done
}

# Sets the caller's `apt` to apt-get as root, asking nothing; fails where root is out of reach.
set_apt() {
    apt=(env DEBIAN_FRONTEND=noninteractive LC_ALL=C apt-get -q -y -o DPkg::Lock::Timeout=300 -o Dpkg::Use-Pty=0)
    if [[ $EUID -eq 0 ]]; then return 0; fi
    command -v sudo >/dev/null || return 1
    # With nobody there to type a password sudo can only work without one.
    if [[ ! -t 0 ]] && ! sudo -n true 2>/dev/null; then return 1; fi
    apt=(sudo "${apt[@]}")
}

install_missing() {
    local -a missing apt
    if ! command -v dpkg-query >/dev/null || ! command -v apt-get >/dev/null; then
        say "this is not a Debian system, so nothing is installed; what is needed: $(listed_packages "$@" | paste -sd' ')"
        return
    fi
    mapfile -t missing < <(listed_packages "$@" | absent_packages)
    if [[ ${#missing[@]} -eq 0 ]]; then return; fi

    local needs_root="missing ${missing[*]}, and installing them needs root: have whoever looks after this machine run: \
apt-get install --no-install-recommends ${missing[*]}"
    set_apt || fail "$needs_root"
    say "installing with what they depend on: ${missing[*]}"
    if [[ ${apt[0]} = sudo ]]; then sudo true || fail "$needs_root"; fi
    local updated=no fetched=yes
    if ! LC_ALL=C apt-get -q --simulate --no-install-recommends install "${missing[@]}" >/dev/null 2>&1; then
        refresh_package_lists
    fi
    if ! run_apt --no-install-recommends install "${missing[@]}" && [[ $updated = no ]]; then
        refresh_package_lists
        run_apt --no-install-recommends install "${missing[@]}" || true
    fi

    mapfile -t missing < <(printf '%s\n' "${missing[@]}" | absent_packages)
    if [[ ${#missing[@]} -eq 0 ]]; then return; fi
    if [[ $fetched = no ]]; then
        fail "could not fetch the list of packages, so ${missing[*]} cannot be installed: see to the network and start again"
    fi
    local -a unknown
    mapfile -t unknown < <(unknown_packages "${missing[@]}")
    if [[ ${#unknown[@]} -gt 0 ]]; then
        fail "no package source of this machine has ${unknown[*]}: Debian 12 has what Stonepenny needs in \"main\", see /etc/apt/sources.list"
    fi
    fail "could not install ${missing[*]}: apt-get says why above; put that right and start again"
}

# Sets the caller's `updated` and `fetched`; without some list the packages may be there all the same.
refresh_package_lists() {
    updated=yes
    say "fetching the list of packages first: apt-get update"
    run_apt -o APT::Update::Error-Mode=any update || fetched=no
}

run_apt() { (umask 022 && "${apt[@]}" "$@" </dev/null); }

# A core compiling Qt code takes up to 1.5 GB.
jobs_that_fit() {
    local cores gigabytes_and_half
    cores=$(nproc)
    gigabytes_and_half=$(awk '/^MemAvailable:/ { print int($2 / 1500000) }' /proc/meminfo 2>/dev/null || true)
    if [[ -n $gigabytes_and_half && $gigabytes_and_half -lt $cores ]]; then cores=$gigabytes_and_half; fi
    echo $((cores > 1 ? cores : 1))
}

can_write() { mkdir -p -- "$1" 2>/dev/null && [[ -w $1 ]]; }

is_configured() {
    local folder=$1 setting
    shift
    for setting in "$@"; do
        grep -qxF -- "$setting" "$root/build/$folder/CMakeCache.txt" 2>/dev/null || return 1
    done
}

configure() {
    local folder=$root/build/$1
    shift
    can_write "$folder" || fail "cannot write in $folder: clone Stonepenny into a folder of your own and start again"
    local -a options=(-G Ninja --log-level=NOTICE "$@")
    if command -v ccache >/dev/null; then options+=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache); fi
    # A folder that was moved or copied is configured afresh.
    if [[ -f $folder/CMakeCache.txt ]] && ! is_configured "${folder##*/}" "CMAKE_HOME_DIRECTORY:INTERNAL=$root"; then
        options+=(--fresh)
    fi
    cmake -S "$root" -B "$folder" "${options[@]}" ||
        fail "could not prepare the build: the message above names what CMake misses"
}

build() {
    local folder=$root/build/$1
    shift
    # Without these ccache keeps nothing that was compiled with precompiled headers.
    CCACHE_SLOPPINESS=${CCACHE_SLOPPINESS:-pch_defines,time_macros} nice cmake --build "$folder" --parallel "$(jobs_that_fit)" ${1+--target "$@"} ||
        fail "could not build: the first error above says where"
}

go_without_display() {
    export QT_QPA_PLATFORM=offscreen
    if [[ -n ${XDG_RUNTIME_DIR:-} ]]; then return; fi
    XDG_RUNTIME_DIR=$(mktemp -d)
    export XDG_RUNTIME_DIR
    trap 'rm -rf -- "$XDG_RUNTIME_DIR"' EXIT
}
