/** Whether the post asks how much alkali its fats need, rather than whether what it has is right. */
export function asksForAlkali(text: string): boolean {
  return /\b(how much|what amount|how many|need|work out|calculate|figure out|find|wieviel|wie viel|combien|cuanta|quanta)\b|\?\?|lye\s*[:=-]?\s*\?|naoh\s*[:=-]?\s*\?/i.test(
    text,
  );
}
