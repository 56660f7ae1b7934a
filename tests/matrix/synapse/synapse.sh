#!/usr/bin/env bash
# A real Matrix homeserver (Synapse) and a Python Matrix client (matrix-nio with
# libolm) for tests, unpacked from Debian packages into one folder. Nothing is
# installed on the machine: no service, no chroot, no root needed.
#
#   synapse.sh install [DIR]                     unpack once (does nothing if DIR is good)
#   synapse.sh start   DIR DATA PORT             start; PORT 0 picks a free one
#   synapse.sh stop    DATA
#   synapse.sh python  DIR SCRIPT [ARG...]       run a Python script inside the tree
#
# DIR may be given as "-": then $SYNAPSE_DIR, or a folder below the user's cache.
# Other variables: SYNAPSE_SUITES (default "sid sid testing"), SYNAPSE_MIRROR (default:
# the mirror that this machine's apt uses), SYNAPSE_START_SECONDS (default 60),
# SYNAPSE_EXTRA (YAML that is added to the configuration; of two equal keys the last counts).
# Exit codes: 0 fine, 1 failed, 2 wrong usage.
set -euo pipefail

SERVER_NAME=lyeward.test
PACKAGES=(matrix-synapse python3-matrix-nio python3-olm)
DEFAULT_DIR=${SYNAPSE_DIR:-${XDG_CACHE_HOME:-$HOME/.cache}/lyeward/synapse}
ME=${0##*/}

die() { printf '%s: %s\n' "$ME" "$1" >&2; exit "${2:-1}"; }
say() { printf '%s: %s\n' "$ME" "$1" >&2; }
usage() { sed -n '2,/^set /{/^set /d;s/^# \{0,1\}//;p}' "$0" >&2; exit 2; }
dir_of() { # the absolute path of the tree ("" and "-" mean the default)
  local d=$1
  case $d in '' | -) d=$DEFAULT_DIR ;; esac
  case $d in /*) ;; *) d=$PWD/$d ;; esac
  printf '%s\n' "${d%/}"
}

# Run the tree's own Python through the tree's own dynamic loader, so that the
# machine's C library and Python don't matter. --library-path is not inherited
# by child processes, as LD_LIBRARY_PATH would be.
tree_python() {
  local dir=$1 ld; shift
  for ld in "$dir"/usr/lib/*/ld-linux*.so.*; do
    [ -e "$ld" ] || die "no Synapse tree in $dir (run: $ME install $dir)"
    break
  done
  PYTHONHOME=$dir/usr PYTHONNOUSERSITE=1 PYTHONPATH='' PYTHONUTF8=1 PYTHONDONTWRITEBYTECODE='' \
    exec "$ld" --library-path "${ld%/*}" --argv0 "$dir/usr/bin/python3" \
    "$dir/usr/bin/python3" "$@"
}

# ---------------------------------------------------------------- install
# The machine's own Debian source, as "URI<tab>Signed-By". `apt-get indextargets`
# knows every source format, but needs lists; the files are read if it has none.
machine_mirror() {
  local uri='' key='' f line
  # shellcheck disable=SC2016
  uri=$(apt-get indextargets --format '$(REPO_URI) $(COMPONENT) $(RELEASE)' 'Created-By: Packages' 2>/dev/null |
    awk '$2 == "main" && $3 !~ /security|updates|backports/ && !n++ { print $1 }') || true
  for f in /etc/apt/sources.list.d/*.sources; do
    [ -e "$f" ] || continue
    line=$(awk 'function flush() { if (t && u != "" && s !~ /security/ && !done) { print u "\t" k; done = 1 } t = 0; u = s = k = "" }
      /^[[:space:]]*$/ { flush() } /^#/ { next }
      tolower($1) == "types:" { t = / deb( |$)/ } tolower($1) == "uris:" { u = $2 }
      tolower($1) == "suites:" { s = $0 } tolower($1) == "enabled:" && $2 == "no" { t = 0 }
      tolower($1) == "signed-by:" { k = $2 } END { flush() }' "$f")
    if [ -n "$line" ] && { [ -z "$uri" ] || [ "${line%%$'\t'*}" = "${uri%/}" ] || [ "${line%%$'\t'*}" = "${uri%/}/" ]; }; then
      uri=${line%%$'\t'*} key=${line#*$'\t'}; break
    fi
  done
  if [ -z "$uri" ]; then
    uri=$(cat /etc/apt/sources.list /etc/apt/sources.list.d/*.list 2>/dev/null |
      sed -n 's/^deb[[:space:]]\{1,\}\(\[[^]]*\][[:space:]]*\)\{0,1\}//p' |
      awk '$2 !~ /security|updates|backports/ && / main( |$)/ && !n++ { print $1 }') || true
  fi
  [ -n "$key" ] || key=/usr/share/keyrings/debian-archive-keyring.gpg
  [ -e "$key" ] || key=''
  printf '%s\t%s\n' "${SYNAPSE_MIRROR:-$uri}" "$key"
}

check_tree() { # prints the versions when the tree works
  (tree_python "$1" -c '
import contextlib, io
with contextlib.redirect_stdout(io.StringIO()):  # hides a harmless packaging remark
    import synapse.app.homeserver, olm
    from nio.crypto import ENCRYPTION_ENABLED
import importlib.metadata as m, synapse, sys
assert ENCRYPTION_ENABLED, "matrix-nio has no libolm"
print("synapse", synapse.__version__, "matrix-nio", m.version("matrix-nio"),
      "python-olm", m.version("python-olm"), "python", sys.version.split()[0])')
}

unpack() { # unpack SUITE into DIR.part
  local suite=$1 part=$2 mirror=$3 key=$4 apt=$2.apt deb n=0
  rm -rf "$part" "$apt"
  mkdir -p "$part" "$apt/lists/partial" "$apt/archives/partial"
  : >"$apt/status"
  printf 'Types: deb\nURIs: %s\nSuites: %s\nComponents: main\n%s' "$mirror" "$suite" \
    "${key:+Signed-By: $key$'\n'}" >"$apt/tree.sources"
  # A private state: the machine's lists, caches and dpkg database stay untouched.
  local opts=(-q -o Dir::Etc::sourcelist="$apt/tree.sources" -o Dir::Etc::sourceparts=/dev/null
    -o Dir::Etc::preferences=/dev/null -o Dir::Etc::preferencesparts=/dev/null
    -o Dir::State="$apt" -o Dir::State::lists="$apt/lists" -o Dir::State::status="$apt/status"
    -o Dir::Cache="$apt" -o Dir::Cache::archives="$apt/archives" -o Acquire::Retries=3
    -o Acquire::Languages=none -o APT::Sandbox::User="$(id -un)" -o Debug::NoLocking=1
    -o APT::Install-Recommends=false)
  # The clear here drops post-invoke hooks of the machine that need root.
  printf '#clear APT::Update::Post-Invoke-Success;\n#clear APT::Update::Post-Invoke;\n#clear DPkg::Post-Invoke;\n' >"$apt/apt.conf"
  say "reading the package lists of $suite"
  APT_CONFIG=$apt/apt.conf apt-get "${opts[@]}" update >"$apt/log" 2>&1 ||
    { cat "$apt/log" >&2; say "apt-get update failed for $suite"; return 1; }
  say "fetching ${PACKAGES[*]} and what they need"
  APT_CONFIG=$apt/apt.conf apt-get "${opts[@]}" install -y --download-only "${PACKAGES[@]}" >"$apt/log" 2>&1 ||
    { tail -n 25 "$apt/log" >&2; say "the packages of $suite cannot be had (does it hold all three at the moment?)"; return 1; }
  for deb in "$apt"/archives/*.deb; do
    dpkg-deb -x "$deb" "$part" || { say "cannot unpack ${deb##*/}"; return 1; }
    n=$((n + 1))
  done
  rm -rf "${part:?}/usr/share/doc" "${part:?}/usr/share/man" "${part:?}/usr/share/locale" "$apt"
  find "$part" -type f -perm /6000 -exec chmod a-s {} +
  say "unpacked $n packages"
}

cmd_install() {
  local dir versions suite mirror key done_at=$SECONDS tool
  dir=$(dir_of "${1:-}")
  if [ -e "$dir/.versions" ] && versions=$(check_tree "$dir" 2>/dev/null); then
    say "already there: $versions"; printf '%s\n' "$dir"; return
  fi
  for tool in apt-get dpkg-deb awk find; do
    command -v "$tool" >/dev/null || die "$tool is missing: this needs a Debian-like machine"
  done
  IFS=$'\t' read -r mirror key < <(machine_mirror)
  [ -n "$mirror" ] || die "found no Debian mirror in this machine's apt sources (set SYNAPSE_MIRROR)"
  mkdir -p "${dir%/*}"
  exec 9>"$dir.lock"
  if command -v flock >/dev/null; then
    flock 9 # another install into the same folder: wait, then use its tree
    if [ -e "$dir/.versions" ]; then say "already there"; printf '%s\n' "$dir"; return; fi
  fi
  # sid twice: a mirror may fail for a moment, or be in the middle of its update
  for suite in ${SYNAPSE_SUITES:-sid sid testing}; do
    unpack "$suite" "$dir.part" "$mirror" "$key" || continue
    if versions=$(check_tree "$dir.part" 2>"$dir.err"); then
      rm -rf "$dir"; mv "$dir.part" "$dir"; rm -f "$dir.err"
      printf '%s\n' "$versions" >"$dir/.versions"
      say "works: $versions ($suite, $((SECONDS - done_at)) s, $(du -sm "$dir" | cut -f1) MB)"
      printf '%s\n' "$dir"
      return
    fi
    cat "$dir.err" >&2; say "the tree from $suite does not run"
  done
  rm -rf "$dir.part" "$dir.part.apt" "$dir.err"
  die "no suite gave a working tree"
}

# ---------------------------------------------------------------- server
secret() { # a secret kept in DATA, made on first use
  [ -s "$1" ] || (umask 077; head -c 24 /dev/urandom | od -An -tx1 | tr -d ' \n' >"$1")
  cat "$1"
}

write_config() {
  local data=$1 port=$2
  [ -s "$data/signing.key" ] || (umask 077
    printf 'ed25519 a_test %s\n' "$(head -c 32 /dev/urandom | base64 | tr -d '=\n')" >"$data/signing.key")
  local fast='{per_second: 100000, burst_count: 100000}'
  (umask 077; cat >"$data/homeserver.yaml" <<YAML
# Written by $ME at every start: edit the script, not this file.
server_name: $SERVER_NAME
public_baseurl: http://127.0.0.1:$port/
pid_file: "$data/synapse.pid"
report_stats: false
listeners:
  - {port: $port, type: http, tls: false, bind_addresses: ["127.0.0.1"], resources: [{names: [client]}]}
database: {name: sqlite3, args: {database: "$data/homeserver.db"}}
log_config: "$data/log.yaml"
media_store_path: "$data/media"
signing_key_path: "$data/signing.key"
registration_shared_secret: $(secret "$data/registration.secret")
macaroon_secret_key: $(secret "$data/macaroon.secret")
form_secret: $(secret "$data/form.secret")
# No federation, nothing leaves the machine.
trusted_key_servers: []
suppress_key_server_warning: true
federation_domain_whitelist: []
url_preview_enabled: false
presence: {enabled: false}
enable_registration: false
bcrypt_rounds: 4
# Synapse answers a repeated /sync with the same token from a cache for two minutes
# by default; a restarted bot then waits on an old answer.
caches: {sync_response_cache_duration: 0s}
rc_message: $fast
rc_registration: $fast
rc_registration_token_validity: $fast
rc_login: {address: $fast, account: $fast, failed_attempts: $fast}
rc_admin_redaction: $fast
rc_joins: {local: $fast, remote: $fast}
rc_joins_per_room: $fast
rc_3pid_validation: $fast
rc_invites: {per_room: $fast, per_user: $fast, per_issuer: $fast}
rc_third_party_invite: $fast
rc_media_create: $fast
rc_presence: {per_user: $fast}
rc_delayed_event_mgmt: $fast
rc_room_creation: $fast
rc_reports: $fast
rc_user_directory: $fast
rc_key_requests: $fast
${SYNAPSE_EXTRA:-}
YAML
  )
  cat >"$data/log.yaml" <<YAML
version: 1
disable_existing_loggers: false
formatters: {line: {format: "%(asctime)s %(levelname)s %(name)s %(request)s %(message)s"}}
handlers: {file: {class: logging.FileHandler, filename: "$data/synapse.log", formatter: line, encoding: utf8}}
root: {level: ${SYNAPSE_LOG_LEVEL:-WARNING}, handlers: [file]}
YAML
}

answers() { # does 127.0.0.1:PORT answer /_matrix/client/versions?
  local status=''
  { exec 8<>"/dev/tcp/127.0.0.1/$1"; } 2>/dev/null || return 1
  printf 'GET /_matrix/client/versions HTTP/1.0\r\nHost: 127.0.0.1\r\n\r\n' >&8 2>/dev/null || true
  read -r -t 5 status <&8 || true
  exec 8>&- 8<&-
  case $status in *' 200 '*) return 0 ;; *) return 1 ;; esac
}
listening() { (exec 7<>"/dev/tcp/127.0.0.1/$1") 2>/dev/null; }
pid_of() { # the pid of the Synapse that runs on DATA, or nothing
  local pid
  pid=$(cat "$1/synapse.pid" 2>/dev/null) || return 1
  if [ -n "$pid" ] && kill -0 "$pid" 2>/dev/null &&
    tr '\0' ' ' <"/proc/$pid/cmdline" 2>/dev/null | grep -qF -- "$1/homeserver.yaml"; then
    printf '%s\n' "$pid"
  else
    return 1
  fi
}

cmd_start() {
  [ $# -eq 3 ] || usage
  local dir data=$2 port=$3 pid i limit=${SYNAPSE_START_SECONDS:-60}
  dir=$(dir_of "$1")
  [ -e "$dir/.versions" ] || die "no Synapse tree in $dir (run: $ME install $dir)"
  case $port in '' | *[!0-9]*) die "PORT must be a number, not '$port'" 2 ;; esac
  mkdir -p "$data/media"; data=$(cd "$data" && pwd)
  if pid=$(pid_of "$data"); then die "already running on $data with pid $pid"; fi
  if [ "$port" -eq 0 ]; then
    for i in 1 2 3 4 5 6 7 8 9 10; do
      port=$((20000 + (RANDOM * 32768 + RANDOM) % 12000))
      listening "$port" || break
    done
  fi
  if listening "$port"; then die "port $port on 127.0.0.1 is taken"; fi
  write_config "$data" "$port"
  rm -f "$data/synapse.pid"
  (
    exec 9>&- # not the install lock
    cd "$data"
    trap '' HUP
    tree_python "$dir" -m synapse.app.homeserver -c "$data/homeserver.yaml"
  ) >"$data/stdout.log" 2>&1 </dev/null &
  pid=$!
  printf '%s\n' "$pid" >"$data/synapse.pid"
  disown "$pid" 2>/dev/null || true
  for ((i = 0; i < limit * 10; i++)); do
    if ! kill -0 "$pid" 2>/dev/null; then
      rm -f "$data/synapse.pid"
      tail -n 20 "$data/stdout.log" "$data/synapse.log" >&2 2>/dev/null || true
      die "Synapse ended while starting (logs above, in $data)"
    fi
    if answers "$port"; then
      printf '%s\n' "$port" >"$data/port"
      printf 'base_url=http://127.0.0.1:%s\npid_file=%s\n' "$port" "$data/synapse.pid"
      return
    fi
    sleep 0.1
  done
  kill "$pid" 2>/dev/null || true
  tail -n 20 "$data/synapse.log" >&2 2>/dev/null || true
  die "Synapse did not answer on port $port within $limit s"
}

cmd_stop() {
  [ $# -eq 1 ] || usage
  local data=$1 pid i
  [ -d "$data" ] || die "no folder $data"
  data=$(cd "$data" && pwd)
  if ! pid=$(pid_of "$data"); then rm -f "$data/synapse.pid"; say "not running"; return; fi
  kill "$pid" 2>/dev/null || true
  for ((i = 0; i < 150; i++)); do
    if ! kill -0 "$pid" 2>/dev/null; then rm -f "$data/synapse.pid"; say "stopped"; return; fi
    sleep 0.1
  done
  kill -KILL "$pid" 2>/dev/null || true
  rm -f "$data/synapse.pid"
  say "stopped by SIGKILL after 15 s"
}

verb=${1:-}
[ $# -gt 0 ] && shift
case $verb in
  install) cmd_install "$@" ;;
  start) cmd_start "$@" ;;
  stop) cmd_stop "$@" ;;
  python) [ $# -ge 2 ] || usage; dir=$(dir_of "$1"); shift; tree_python "$dir" "$@" ;;
  *) usage ;;
esac
