/** "10:42", by the clock of the place where the bot runs; `at` in milliseconds since 1970. */
export function clockTime(at: number): string {
  const date = new Date(at);
  return `${String(date.getHours()).padStart(2, '0')}:${String(date.getMinutes()).padStart(2, '0')}`;
}
