/** Whether a text tells of an accident with lye or raw soap. */
export function tellsOfAccident(_text: string): boolean {
  return false;
}
