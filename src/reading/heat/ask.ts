/** Which question about heat a text asks, if any. A recipe that only speaks of temperatures asks none. */

import type { Reader } from '../index.ts';
import type { RecipeReading } from '../reading.ts';
import { Claims } from './claims.ts';
import { type HeatLine, heatLine } from './line.ts';
import { vessel as vesselWord } from './pot.ts';
import { readingsOf } from './readings.ts';
import { scentOf } from './scent.ts';

export type HeatQuestion = 'solution' | 'mix' | 'cool' | 'scent' | 'cook';

/** Without one of these words only a text that weighs neither fat nor alkali can ask about heat: about a scent. */
const hint =
  /bucket|stainless|steel|container|vessel|hdpe|pyrex|altitude|hot|heat|temp|warm|cool|\bice\b|frozen|flash|scent|fragran|essential|\beos?\b|°|º|degree|celsius|fahrenheit|boil|melt|cook|process|\bhp\b|stage|\btrace\b|minute|\bmins?\b|how long|alumin|jug|pitcher|bowl|glass|plastic|\d ?[cf]\b/i;

const judge =
  / (?:is|are|was|will) (?:my |the |this |that |it |these |all )*(?:lye|recipe|naoh|koh|amounts?|numbers|superfat|sf|A\d+|maths?|lye amount) (?:[a-z]+ ){0,3}?(?:ok|okay|right|correct|good|fine|enough|heavy|high|low|off|too|legit) | (?:check|verify|double check|review|critique) (?:my |this |the |me |please |over )*(?:recipe|lye|A\d+|numbers|maths?|amounts?) | (?:lye|A\d+) (?:right|ok|okay|correct) \? | (?:sounds?|looks?|seems?) (?:about |all )?(?:right|ok|okay|good|fine|correct|off|wrong) /;

const time =
  / (?:how long|how much longer|how many (?:minutes|hours|mins)|how soon|when|until|till|time to|what time|long till|wait) /;
/** A question for the time, no instruction ("when it has cooled, pour"). */
const asksTime =
  / (?:how long|how much longer|how many (?:minutes|hours|mins)|how soon|what time|when (?:will|is|does|can|do|should|would|could)) /;
const heat =
  / (?:how (?:hot|warm|high)|hot|hottest|warmest|peak\w*|max\w* temp\w*|temp|temps|temperature|temperatures|heat|heats|heating|boil|boils|boiling|overheat\w*|steam\w*|degrees|too hot|adiabatic|exotherm\w*|melt|melts|volcano|erupt\w*) /;
const mixing =
  / (?:(?:what|which|how) (?:[a-z]+ ){0,3}?(?:temp\w*|hot|warm)|(?:a|the) (?:mix|blend|batter|mixture) (?:of|at) T\d+|what (?:must|should|do|does) (?:[a-z]+ |[A-Z]\d+ ){0,4}?(?:be|need)|(?:blend|mix|mixed|mixing|combined|final|batter|emulsion|mixture|mixes|resulting) (?:temp\w*|be|end|get|come)|temp\w* (?:when|after|once|if|of the mix|of the blend|\?)|when (?:they|i|we|you) (?:mix|combine|meet|pour)|when (?:mixed|mixing|combined|combining)|false trace|(?:everything|all|it|they|wax|fats?|oils?|F\d+) (?:be |stay |still |is |are |remain |fully )*melted|solidif\w*|harden\w*|seize|meets?|end up|what will (?:[a-z]+ ){0,4}?be|what (?:do|will|would) (?:i|we|you) (?:get|have)|(?:stay|stays|remain|keep|keeps) (?:[a-z]+ )?(?:liquid|fluid|clear|molten)|too (?:hot|cold|cool) to (?:mix|combine)|(?:ok|okay|fine) to (?:mix|combine)) /;
const cooking =
  / (?:hot process\w*|hot processed|hp|htcp|hthp|cook|cooks|cooking|cooked|crockpot|crock pot|slow cooker|slowcooker|applesauce|apple sauce|mashed potato\w*|vaseline|petroleum jelly|gel stage|zap|zap test) /;
const cookAsk =
  / (?:how \?|when is|how (?:do|to|long|can|should|does|much longer|hot)|what (?:temp\w*|stages?|happens|should|are|heat|does|setting)|which (?:stage|temp\w*)|stages?|steps|too (?:hot|cold|low)|hot enough|big enough|how big|what size|which (?:pot|size)|done|ready|finished|walk me|instructions|guide|ceiling|scorch\w*|climb\w*|rising|rise|rose|volcano|overflow\w*|ok|okay|boil\w*) /;
const scenting =
  / (?:flash ?point|flashpoint|flashpoints|flash|fp|how much|how many|how long|wait|ready|ok|okay|when|add|adding|load|usage|rate|percent|grams|allergens?|declare|label|ifra|share|oils?|fats?|too (?:much|little)|enough|sds|msds|sheet|evaporate\w*|burn off|blend|eo|scent|fragrance|temp\w*|hot|cool\w*|put in|goes in|go in|use) | P\d+ /;
const vessel =
  / (?:aluminium|aluminum|alu|glass|pyrex|plastic|hdpe|pyrex|pp|pet|polypropylene|stainless|steel|enamel|stoneware|ceramic|copper|zinc|galvani[sz]ed|tin|cast iron|silicone|jug|pitcher|bowl|bucket|jar|container|vessel|mason) /;

/** No question is longer, characters; in one as short as this the words below are not looked for first. */
const longest = 1500;
const short = 300;
/** A text as long, as words and placeholders, is a recipe written up. */
const writtenUp = 500;

/** Whether a text has any word of heat or scent; cheap. */
export const speaksOfHeat = (text: string): boolean => hint.test(text);

/** Whether somebody wants the recipe judged, whatever else the post tells. */
export const wantsVerdict = ({ text }: HeatLine): boolean => judge.test(text);

export function heatQuestion(reader: Reader, text: string, recipe: RecipeReading): HeatQuestion | null {
  const weighs = recipe.fats.length > 0 || recipe.alkali.length > 0;
  if (text.length > longest || (weighs && text.length > short && !speaksOfHeat(text))) return null;
  return askedIn(heatLine(reader, text), recipe);
}

const sentencesOf = (text: string): readonly string[] =>
  text.split(/(?<= [.?!]) | \n /).map((one) => ` ${one.trim()} `);

/** A question about the cook in a post that holds a recipe: not "how much superfat have I now?", nor "olive …, lye …, ok?". */
function asksOfCook(sentence: string): boolean {
  // "how long before I can wash with it": of the cure
  if (/ (?:how long|how soon|when) .*\b(?:wash|shower|bathe|use it|use them|sell|gift|give it|cured?) /.test(sentence))
    return false;
  // "what does my lye look like?"
  if (ofFigures.test(sentence) && !ofPot.test(sentence)) return false;
  const how =
    / (?:how|walk me|steps|stages|guide|when (?:is|are|do|does|can|will|should|would)|(?:what|which) (?:temp\w*|heat|setting|stages?|happens|should|pot|size)) /.test(
      sentence,
    );
  const judged = (/ F\d+ /.test(sentence) && / A\d+ /.test(sentence)) || / (?:zappy|harsh|heavy|safe) /.test(sentence);
  return (how || (/ \? /.test(sentence) && !judged)) && cookAsk.test(sentence);
}

const ofFigures = / (?:A\d+|lye|superfat|sf|recipe|numbers|figures|amounts?|naoh|koh) /;
const ofPot =
  / (?:cook\w*|hp|hot|pot|stages?|gel\w*|crock\w*|slow cooker|temp\w*|heat\w*|degrees|long|minutes|hours|soon|ready|done|zap\w*|applesauce|boil\w*|volcano|rise|rising|climb\w*) /;

/** Asked beside a whole recipe: how hot its lye gets, how much ice; when its scent may go in. */
const asksOfLye =
  / how (?:hot|warm) (?:[a-z]+ ){0,4}?(?:A\d+|L\d+|solution|water|it|this|that) (?:[a-z]+ ){0,3}?(?:get|become|be|gets|reach|go) | how much (?:of the water )?(?:[a-z]+ )?(?:ice|I\d+) /;
const pot = / (?:pot|gel|oven|cooker|crock\w*|mould|mold|batter|soap) /;
const asksOfScent =
  /(?:^| (?:and|or|but|,)) (?:(?:and|so|at|or|but) )*(?:when|how soon|how cool|what temp\w*|which temp\w*|flash ?point\w*) (?:can|may|should|do|does|will|is|could|must|of) (?:[^?]* )?(?:S\d+|scent|fragrance|eo|essential oils?) /;

function askedIn(line: HeatLine, recipe: RecipeReading): HeatQuestion | null {
  const { text } = line;
  const [fats, alkali] = [recipe.fats.length > 0, recipe.alkali.length > 0];
  if (fats && alkali && wantsVerdict(line)) return null;
  const weighed = (text.match(/ G\d+(?= )/g)?.length ?? 0) > 1;
  const warm = weighed
    ? / (?:T\d+|(?:at|is|are|lye|oils?|fats?|A\d+|L\d+) N\d+)(?= )/g
    : / (?:T\d+|(?:to|until|till|below|under|reach|hit|target) N\d+)(?= )/g;
  const temperatures = text.match(warm)?.length ?? 0;
  const scent = / S\d+ /.test(text);
  const readings =
    temperatures > 0 || / [CM]\d+ | t = [NM]/.test(text) ? readingsOf(new Claims(line)).readings.length : 0;
  const cools =
    readings > 1 && (time.test(text) || / (?:target|to|reach\w*|below|under|down|room|cool\w*|want|until) /.test(text));
  const generic = / (?:oils?|fats?) /.test(text) && / [AL]\d+ /.test(text) && !alkali && !fats;
  if (generic && temperatures > 1 && mixing.test(text)) return 'mix';
  if (fats && alkali) {
    // a recipe written up tells at how many degrees it is mixed, and asks nothing by that
    const isWrittenUp =
      text.length > writtenUp && !sentencesOf(text).some((one) => / \? /.test(one) && mixing.test(one));
    if (temperatures > 0 && mixing.test(text) && !isWrittenUp) return 'mix';
    if (temperatures > 1 && asksTime.test(text)) return 'cool';
    const sentences = sentencesOf(text);
    if (cooking.test(text) && sentences.some(asksOfCook)) return 'cook';
    if (sentences.some((one) => scent && asksOfScent.test(one))) return 'scent';
    return sentences.some((one) => asksOfLye.test(one) && !pot.test(one)) ? 'solution' : null;
  }
  if (alkali) {
    // Fats without weights, or a verdict wanted: a recipe that has to be asked about.
    if (/ F\d+ /.test(text) && !/ how (?:hot|warm) /.test(text)) return null;
    if (
      cools ||
      (temperatures > 1 && asksTime.test(text) && / (?:now|currently|is at|its at|reads|at the moment) /.test(text))
    )
      return 'cool';
    if (/ T\d+ /.test(text) || heat.test(text) || asksTime.test(text) || / I\d+ | ice /.test(text)) return 'solution';
    return vessel.test(text) && / (?:\?|can|could|is|ok|okay|which|what|may|should) /.test(text) ? 'solution' : null;
  }
  if (fats && !scent) {
    const falls = / from [TN]\d+ (?:down )?to [TN]\d+ /.test(text);
    return asksTime.test(text) && (falls || temperatures > 1) ? 'cool' : null;
  }
  if (cools || (/ t = [NM]\d+ /.test(text) && / (?:target|room|ambient|when) /.test(text))) return 'cool';
  if (scent && scenting.test(text) && !/ V\d+ | (?:weigh|weighs|cup|cups|tsp|tbsp) /.test(text)) {
    if (fats && !/ (?:flash\w*|how much (?:of )?(?:S\d+|eo|scent|fragrance)|when|load) /.test(text)) return null;
    // "Which oils can I add above 70 °C?" asks for scents, not for a time.
    if (/ (?:which|what) (?:[a-z]+ )?S\d+ | why /.test(text)) return 'scent';
    const claims = new Claims(line);
    scentOf(claims);
    return claims.left().length > 0 ? 'cool' : 'scent';
  }
  if (fats) return null;
  if (/ (?:flash ?point|flashpoint|flashpoints|flash points) /.test(text)) return 'scent';
  if (scent && / (?:sds|msds|data sheet|safety sheet) /.test(text)) return 'scent';
  const falls =
    / (?:to|target|until|till|under|below) [TN]\d+ /.test(text) &&
    new RegExp(` (?:soap|batch|batter|oils?|fats?|${vesselWord}) `).test(text);
  if (temperatures > 1 && falls) return 'cool';
  if (temperatures > 1 && time.test(text)) return 'cool';
  const named = / F\d+ .* F\d+ /.test(text) && / A\d+ /.test(text);
  if (cooking.test(text) && !/ cool/.test(text) && (named ? sentencesOf(text).some(asksOfCook) : cookAsk.test(text)))
    return 'cook';
  if (
    temperatures > 0 &&
    time.test(text) &&
    / (?:cool\w*|pot|soap|batch|batter|lye|oils?|fats?|mould|mold|jug|cooker|room|reach|drop|it|its|down|L\d+|A\d+) /.test(
      text,
    )
  )
    return 'cool';
  if (temperatures > 0 && / too (?:hot|warm) /.test(text) && / (?:soap|pot|cooker|batter|paste|batch) /.test(text))
    return 'cook';
  // "how long until 60 if it's 61 now": nothing but bare figures.
  const bare = (text.match(/ N\d+(?= )/g)?.length ?? 0) > 1 && !/ [A-MO-Z]\d+ /.test(text);
  if (bare && asksTime.test(text) && / (?:cool\w*|room|pot|soap|batter|lye|now) /.test(text)) return 'cool';
  // "Can I mix the lye in my aluminium saucepan?"
  if (
    / [AL]\d+ /.test(text) &&
    vessel.test(text) &&
    / (?:can|could|may|is|are|does|ok|okay|which|safe|should) /.test(text)
  )
    return 'solution';
  // A solution by its strength alone: "how hot does 33 % lye get".
  return / [AL]\d+ /.test(text) && / [PR]\d+ /.test(text) && / (?:how hot|peak|boil\w*|temp\w*) /.test(text)
    ? 'solution'
    : null;
}
