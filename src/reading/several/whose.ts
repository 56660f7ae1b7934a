/** Whose a recipe is: the writer's own, hers or his, by what stands ahead of it or by what a clause calls it. */
import { relations } from '../words/cue-words.ts';

export type Owner = 'mine' | 'theirs';
export type Sex = 'hers' | 'his';

export const noun = '(?:one|recipe|version|batch|list|bar|soap|lot|loaf|sheet|pot|card|mix|column|page)(?!\\p{L})';
export const kin = `(?:${relations.replaceAll(' ', '|')})`;

const owners: Readonly<Record<Owner, RegExp>> = {
  mine: new RegExp(
    `\\b(?:mine|(?<!\\b(?:on|by) )my own|my ${noun}|what i (?:made|make|did|took|take|use|used|poured|weighed))(?!\\p{L})`,
    'iu',
  ),
  theirs: new RegExp(
    `\\b(?:hers|theirs|yours|(?:her|his|their|your) ${noun})(?!\\p{L})|\\b(?:my|our|a|the) ${kin}(?:['’]s| (?:makes|made|gave|does|did|uses|used|wrote|sent|takes|took))\\b`,
    'iu',
  ),
};

/** In running text, where no apostrophe and no noun is sure to stand. */
const does = '(?:makes?|made|gave|does|did|do|uses?|used|wrote|sent|takes?|took|has|had|is|was|puts?|says?)';
let made: typeof owners | null = null;
const spoken = (): typeof owners => {
  made ??= {
    mine: new RegExp(
      `\\b(?:mine|ours|my own|me(?= ?[:=])|my ${noun}|(?:i|we|i['’]?m|i['’]?ve|i['’]?d|i['’]?ll)(?= ))(?!\\p{L})`,
      'iu',
    ),
    theirs: new RegExp(
      `(?<!\\p{L})(?:hers|theirs|yours|your ${noun}|his(?= (?:is|was|has|had|one|${noun})|\\W*$)|(?:her|his|their) ${noun}|(?:her|him|them)(?= ?[:=])|(?:she|he)['’]?s got|${kin}['’]?s|${kin}(?= (?:\\p{L}+ )?${does}(?!\\p{L}))|(?:she|he|they) (?:\\p{L}+ )?${does})(?!\\p{L})`,
      'iu',
    ),
  };
  return made;
};

const sexes: Readonly<Record<Sex, RegExp>> = {
  hers: /\b(?:hers?|she|shes|(?:sister|sis|mother|mum|mom|mam|mama|aunt|auntie|gran|granny|grandma|grandmother|nan|nana|wife|daughter|girlfriend|gf|niece|stepmum)['’]?s?)\b/i,
  his: /\b(?:his|he|hes|him|(?:brother|bro|father|dad|papa|uncle|grandad|grandpa|grandfather|husband|hubby|son|boyfriend|bf|nephew|stepdad)['’]?s?)\b/i,
};

/** The one of two kinds that words tell; null where they tell of both. */
export const oneOf = <A, B>(
  words: string,
  [a, isA]: readonly [A, RegExp],
  [b, isB]: readonly [B, RegExp],
): A | B | null => (isA.test(words) === isB.test(words) ? null : isA.test(words) ? a : b);

export const ownerOf = (words: string, isSpoken: boolean): Owner | null => {
  const { mine, theirs } = isSpoken ? spoken() : owners;
  return oneOf(words, ['mine', mine] as const, ['theirs', theirs] as const);
};

export const sexOf = (words: string): Sex | null =>
  oneOf(words, ['hers', sexes.hers] as const, ['his', sexes.his] as const);
