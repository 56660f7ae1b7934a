#!/usr/bin/env bash
# Writes tests/outside/gnu-units.generated.json: what GNU units (Debian package `units`) makes of a few hundred pairs.
#   tests/outside/gnu-units.sh > tests/outside/gnu-units.generated.json
set -euo pipefail

declare -A mass=([g]=gram [kg]=kg [mg]=mg [dag]=dekagram [oz]=ounce [lb]=lb [stone]=stone [oz-troy]=troyounce [t]=tonne)
declare -A volume=([mL]=ml [cL]=cl [dL]=dl [L]=liter [floz]=usfluidounce [floz-imperial]=brfluidounce [cup]=cup
  [cup-metric]=metriccup [cup-imperial]=brcup [tbsp]=ustablespoon
  [tbsp-australian]=australiatablespoon [tsp]=usteaspoon [pint]=uspint [pint-imperial]=brpint
  [quart]=usquart [quart-imperial]=brquart [gallon]=usgallon [gallon-imperial]=brgallon [in3]='in^3')
declare -A length=([cm]=cm [mm]=mm [m]=m [in]=inch [ft]=foot [yd]=yard)
declare -A time=([s]=s [min]=min [h]=hour [d]=day [wk]=week)

rows=()
pair() { # value, our from, our to, their from, their to
  rows+=("[$1, \"$2\", \"$3\", $(units --terse --digits 15 -- "$4" "$5")]")
}
all() {
  local -n table=$1
  local from to
  for from in $(printf '%s\n' "${!table[@]}" | sort); do
    for to in $(printf '%s\n' "${!table[@]}" | sort); do
      [ "$from" = "$to" ] || pair "$2" "$from" "$to" "$2 ${table[$from]}" "${table[$to]}"
    done
  done
}
all mass 3.7
all volume 2.25
all length 12.5
all time 1.5
for value in -40 0 25.5 93 212; do
  pair "$value" '°C' '°F' "tempC($value)" tempF
  pair "$value" '°F' '°C' "tempF($value)" tempC
  pair "$value" '°C' K "tempC($value)" K
  pair "$value" '°F' K "tempF($value)" K
done
for value in 0.5 273.15 400; do
  pair "$value" K '°C' "$value K" tempC
  pair "$value" K '°F' "$value K" tempF
done

printf '{\n  "version": "%s",\n  "command": "tests/outside/gnu-units.sh",\n  "pairs": [\n' "$(units --version | head -1)"
printf '    %s' "${rows[0]}"
printf ',\n    %s' "${rows[@]:1}"
printf '\n  ]\n}\n'
