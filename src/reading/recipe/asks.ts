import type { RecipeReading } from '../reading.ts';

/** Whoever asks for something uses one of these: patterns as long as those below cost the more the first time. */
const asking =
  'give send tell can could would will please pls plz want wish like love need what how work calculate figure find wie combien cuanta quanta ?'.split(
    ' ',
  );
const isAsking = (text: string): boolean => asking.some((word) => text.includes(word));

const wishes = (text: string): boolean => wished.test(text) || which.test(text);

export function wishesAlkali(text: string): boolean {
  const said = text.toLowerCase();
  return isAsking(said) && wishes(said);
}

/** "Could you do the lye for …", "give me the NaOH", "I only want to know the lye". */
const wished =
  /\b(?:(?:give|send|tell) (?:me|us)|(?:can|could|would|will|please)(?: you| someone| somebody| anyone)?(?: please)? (?:do|run|reckon|get|give)(?: me| us)?|(?:want|wish|like|love) to (?:know|have)) (?:the |my )?(?:lye|naoh|koh|alkali|caustic)\b(?! (?:is|right|ok|okay)\b)|\b(?:need|want)(?: to (?:know|have))?(?: the| my)? (?:grams?|ounces|oz|weight|amount|figure|number) (?:of|for) (?:the |my )?(?:lye|naoh|koh|alkali|caustic)\b/;

/** "What is the lye amount?", "whats the new lye for this", "what I need from you is the lye amount". */
const which =
  /\b(?:what(?:['’]?s| is| are| would be| will)? (?:the |my )?(?:new |right |correct |total )?(?:lye|naoh|koh|caustic soda|hydroxide)\b|(?:lye|naoh|koh) (?:please|pls|plz)\b|(?:need|want)\b[^.?!\n\d]{0,24}\b(?:lye|naoh|koh|alkali) (?:amount|weight|figure)\b(?! (?:is|was|to be|checked|confirmed|looked)\b))/m;

/** Whether the post asks how much alkali its fats need, rather than whether what it has is right. */
export function asksForAlkali(text: string): boolean {
  const said = text.toLowerCase();
  return (
    isAsking(said) &&
    (wishes(said) ||
      /\b(how much|what amount|how many|need|work out|calculate|figure out|find|wieviel|wie viel|combien|cuanta|quanta)\b|\?\?|(?:lye|alkali|koh)\s*[:=-]?\s*\?|naoh\s*[:=-]?\s*\?/.test(
        said,
      ))
  );
}

const ownLye =
  /\bhow (?:much|many grams of) (?:of the |of )?(?:lye|naoh|koh|caustic soda|(?:sodium|potassium) hydroxide|alkali)\b[^.?!\n\d]{0,12}\b(?:do|should|must|will|would|shall|can) i (?:have to |need to )?(?:need|weigh|use|take|put)\b/i;
const ownSuperfat =
  /\b(?:i(?:['’]?d| would)? (?:want|like|prefer|need|rather|will|am|aim)|i['’]?m|at|with|for)\b[^.?!\n]{0,50}\d ?(?:%|percent|per cent) ?super ?fat/i;

/**
 * "175 g lye, at 1 % she says … I want it at 6 % superfat. How much sodium hydroxide do I weigh?": the lye that is listed is
 * not the one that is asked for.
 */
export const wantsOwnLye = (text: string, { fats, alkali, superfat, doubts }: RecipeReading): boolean =>
  fats.length > 0 &&
  alkali.length > 0 &&
  superfat !== null &&
  doubts.length === 0 &&
  ownLye.test(text) &&
  ownSuperfat.test(text);
