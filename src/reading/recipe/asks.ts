export const wishesAlkali = (text: string): boolean => wished.test(text) || which.test(text);

/** "Could you do the lye for …", "give me the NaOH", "I only want to know the lye". */
const wished =
  /\b(?:(?:give|send|tell) (?:me|us)|(?:can|could|would|will|please)(?: you| someone| somebody| anyone)?(?: please)? (?:do|run|reckon|get|give)(?: me| us)?|(?:want|wish|like|love) to (?:know|have)) (?:the |my )?(?:lye|naoh|koh|alkali|caustic)\b(?! (?:is|right|ok|okay)\b)|\b(?:need|want)(?: to (?:know|have))?(?: the| my)? (?:grams?|ounces|oz|weight|amount|figure|number) (?:of|for) (?:the |my )?(?:lye|naoh|koh|alkali|caustic)\b/i;

/** "What is the lye amount?", "whats the new lye for this". */
const which =
  /\b(?:what(?:['’]?s| is| are| would be| will)? (?:the |my )?(?:new |right |correct |total )?(?:lye|naoh|koh|caustic soda|hydroxide)\b|(?:lye|naoh|koh) (?:please|pls|plz)\b|^need (?:the |my |a )?(?:lye|naoh|koh) (?:amount|weight|figure)\b)/im;

/** Whether the post asks how much alkali its fats need, rather than whether what it has is right. */
export function asksForAlkali(text: string): boolean {
  return (
    wishesAlkali(text) ||
    /\b(how much|what amount|how many|need|work out|calculate|figure out|find|wieviel|wie viel|combien|cuanta|quanta)\b|\?\?|(?:lye|alkali|koh)\s*[:=-]?\s*\?|naoh\s*[:=-]?\s*\?/i.test(
      text,
    )
  );
}
