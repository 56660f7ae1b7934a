/**
 * "10:42" by the clock of who asks, "10:42 UTC" where that is not known; `at` in milliseconds since 1970. `zone`: its
 * IANA name, null for the clock of this machine.
 */
export function clockTime(at: number, zone: string | null): string {
  if (zone === null) {
    const date = new Date(at);
    return `${String(date.getHours()).padStart(2, '0')}:${String(date.getMinutes()).padStart(2, '0')}`;
  }
  const time = new Date(at).toLocaleTimeString('en-GB', { timeZone: zone, hour: '2-digit', minute: '2-digit' });
  return zone === 'UTC' ? `${time} UTC` : time;
}

/** "2026-11-26" by the same clock. */
export const calendarDay = (at: number, zone: string | null): string =>
  new Date(at).toLocaleDateString('sv-SE', zone === null ? {} : { timeZone: zone });
