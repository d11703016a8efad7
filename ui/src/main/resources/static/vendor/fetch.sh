#!/usr/bin/env bash
# Fetches the browser libraries of this folder anew from their npm packages and checks their hashes.
# vega-interpreter is an ES module: its one import and one export are turned into the vega global.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$work"
take() { # package version file target
  npm pack --silent "$1@$2" >/dev/null
  tar xzf "$1-$2.tgz"
  cp "package/$3" "$here/$4"
  cp package/LICENSE "$here/LICENSE-$1.txt"
  rm -rf package
}
take vega 6.4.0 build/vega.min.js vega.min.js
take vega-lite 6.4.3 build/vega-lite.min.js vega-lite.min.js
take vega-embed 7.3.0 build/vega-embed.min.js vega-embed.min.js
take vega-interpreter 2.3.2 build/vega-interpreter.js vega-interpreter.js
cd "$here"
sed -i -e '/^\/\/# sourceMappingURL/d' ./*.min.js vega-interpreter.js
{
  printf "(function () {\n'use strict';\n"
  sed -e "s|^import { ascending, isString, DisallowedObjectProperties } from 'vega-util';|const { ascending, isString, DisallowedObjectProperties } = vega;|" \
    -e 's|^export { expression as expressionInterpreter };|vega.expressionInterpreter = expression;|' vega-interpreter.js
  printf '})();\n'
} > vega-interpreter.wrapped
mv vega-interpreter.wrapped vega-interpreter.js
sha256sum -c SHA256SUMS
