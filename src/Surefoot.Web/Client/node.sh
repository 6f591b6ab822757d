# Sourced by ./start and ./test: the studio's browser parts are bundled with Node 20; it is not needed to run them.
node_is_new_enough() { command -v node > /dev/null && command -v npm > /dev/null && [ "$(node -p 'parseInt(process.versions.node)')" -ge 20 ]; }
if ! node_is_new_enough && command -v apt-get > /dev/null; then
  as_root=""
  [ "$(id -u)" = 0 ] || as_root=sudo
  echo "Installing Node.js, which bundles the studio's browser parts ..."
  $as_root apt-get update -qq
  $as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends nodejs npm > /dev/null
fi
if ! node_is_new_enough; then
  echo "The studio's browser parts are bundled with Node.js 20 or later and npm; they were not found on this machine." >&2
  exit 2
fi
