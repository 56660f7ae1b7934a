/** Time zones by their IANA names, as the machine's own tables have them: none of our own. */

export type Zone =
  | { readonly ok: true; readonly zone: string }
  /** Names that may have been meant. */
  | { readonly ok: false; readonly candidates: readonly string[] };

const folded = (name: string): string =>
  name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[\s_]+/g, '_');

/** "europe/berlin", "Berlin", "new york", "UTC". A fixed offset is none: it would be wrong for half of the year. */
export function zoneOf(said: string): Zone {
  const wanted = folded(said.trim());
  if (/^(?:utc|gmt|z)$/.test(wanted)) return { ok: true, zone: 'UTC' };
  const all = Intl.supportedValuesOf('timeZone');
  const cities = all.filter((zone) => {
    const name = folded(zone);
    return name === wanted || name.endsWith(`/${wanted}`);
  });
  const [only, second] = cities;
  if (only !== undefined && second === undefined) return { ok: true, zone: only };
  if (cities.length > 1) return { ok: false, candidates: cities };
  // names of old, such as Europe/Kiev, are known to `Intl` without being listed
  const known = /\//.test(wanted) ? canonical(said.trim()) : null;
  if (known) return { ok: true, zone: known };
  const near = all.filter((zone) => folded(zone).includes(wanted)).slice(0, 4);
  return { ok: false, candidates: wanted.length > 2 ? near : [] };
}

function canonical(name: string): string | null {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: name }).resolvedOptions().timeZone;
  } catch {
    return null;
  }
}
