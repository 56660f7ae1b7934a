/**
 * Turns of phrase that are one word in meaning, in the order in which they are read: what is put for them, and how they
 * are said, as regular expressions over text as `plainOf` leaves it.
 */
const turns: readonly (readonly [meaning: string, ...said: string[]])[] = [
  // what is lost
  ['cant$1', '(?:can ?not|cant) (breathe|see)(?= ?(?:$|[.,!?;\\n]|properly|anything|well|now|and|lye))'],
  [
    'cantsee',
    'sehe? (?:kaum|fast nichts|nichts mehr)\\b',
    'kann nichts mehr sehen\\b',
    '(?:ne |n)?vois (?:plus )?(?:rien|flou|plus)\\b',
    'no (?:puedo ver|veo)\\b',
  ],
  [
    'cantbreathe',
    '(?:krieg|bekomm)e? (?:\\w+ )?keine luft\\b',
    '(?:peux|arrive) pas a respirer\\b',
    'no puedo respirar\\b',
    '(?:hard|trouble|struggling) (?:to breathe|breathing)\\b',
    'short of breath\\b',
    'passed out\\b',
    '(?:(?:cant|wont) stop|keeps?) coughing\\b',
  ],
  ['$1', '(?:cant stop|wont stop|keeps?) (\\w+ing)\\b'],
  // a word of denial that denies no accident
  [
    'x',
    'no wait\\b',
    'not sure\\b',
    'do(?:nt| not) know\\b',
    'dont see\\b',
    '(?:did|do|was)nt (?:think|notice|reali[sz]\\w+|know|wear\\w*)\\b',
    '(?:not wearing|without|no) (?:any |my )?(?:gloves|goggles|mask)',
    '(?:keine|ohne|sans|sin) (?:handschuhe?|brille|gants|lunettes|guantes|gafas)',
  ],
  [
    'accidentally',
    'sin querer\\b',
    'sans (?:le )?faire expres\\b',
    'ohne absicht\\b',
    'aus ?versehen\\b',
    'didnt mean to\\b',
  ],
  ['what', '(?:know|knows|tell me|wonder\\w*|ask\\w*) (?:if|wenn|si)\\b'],
  // who
  [
    'child',
    '(?:year|month|yr)s? old\\b',
    'little ones?\\b',
    '(?:mein|unser)e? klein(?:e[rn]?|es)\\b',
    '(?:le|mon|ma|notre) chat(?:te)?\\b',
    '(?:mi|tu|su) papa\\b',
  ],
  // where
  [
    'my hand',
    '(?:her|his|its|their) (?:fur|coat)\\b',
    '(?:mi|mis|el|los|un|del) pies?\\b',
    '(?:my|his|her|their|both|left|right|the) palms?\\b(?! (?:oil|kernel))',
  ],
  ['sur la face', 'a la figure\\b'],
  [
    'in my eye',
    '(?:under|behind|through|inside|past|into|around) (?:my |his |her |the )?(?:goggles|glasses|contacts?|lens(?:es)?)\\b',
  ],
  [
    'on my hand',
    '(?:por )?dentro del? guantes?\\b',
    '(?:in|into|inside|through|under) (?:(?:my|his|her|the) )?(?:gloves?|(?<=(?:my|his|her) )hair)\\b',
    '(?:im|unter|durch) (?:(?:meinem|den) )?handschuhe?n?\\b',
    '(?:sous|dans|traverse|bajo) (?:(?:mes|mon|les?|mis?|el|los) )?(?:gants?|guantes?)\\b',
  ],
  ['over me', 'everywhere\\b'],
  // what was done or felt
  ['vomited', '(?:threw|throw(?:ing|s)?|chucked) up\\b'],
  [
    'drank',
    '(?:took|had|taken|have|having) (?:a|an|one) (?:\\w+ )?(?:drink|sip|swig|gulp|mouthful)\\b',
    'se (?:le )?tomo\\b',
  ],
  [
    'swallowed',
    'in(?:to)? (?:my|his|her|their|its) mouth\\b',
    'in (?:den|seinen|ihren|meinen) mund\\b',
    '(?:a|dans) (?:la|sa|ma) bouche\\b',
    '(?:a|en) la boca\\b',
  ],
  ['inhaled', '(?:big|deep|good|full) breath\\b', 'breath of\\b'],
  ['burning', 'on fire\\b'],
  [
    'burned',
    'skin off\\b',
    '(?:wont|cant|cannot|will not) (?:open|feel|move|get it off)\\b',
    '(?:turn(?:ed|ing)|gone|went|going|is|are|all|look(?:s|ing)?) (?:\\w+ly )?(?:white|pink|waxy|bleached|pale|grey)\\b',
    'se me (?:pelo|despellejo|hincho)\\b',
  ],
  ['burned ', 'eat(?:s|ing|en)? (?:at |into |through )?(?=(?:my|his|her) )'],
  ['burned skin', 'burn marks?\\b'],
  ['salpico mi piel', '(?:me|se) (?:le )?(?:cayo|cayeron|derramo|echo) (?:\\w+ ){0,2}encima\\b'],
  [
    'swallowed wrong',
    'it (?:was|is|were) (?:sugar|salt|water|juice|milk|lemonade|tea|coffee|flour)\\b',
    'que era (?:agua|azucar|sal)\\b',
    'que cetait (?:du sucre|du sel|de l ?eau)\\b',
    'es (?:sei|ist|war|ware) (?:wasser|zucker|salz)\\b',
  ],
  // asked of the work, and what burns that is no lye
  [
    'always',
    'when (?:can|may|is it)\\b',
    'ab wann\\b',
    'how (?:much|many|strong|soon)\\b',
    'wie ?viel\\b',
    'combien\\b',
    'cuant[oa]s?\\b',
    'quand (?:puis|peut|est)\\b',
    'cuando (?:se )?pued[oe]\\b',
  ],
  ['would ', 'do (?:you|people|we|they) (?=put|use|wear|mix|keep|store|add|weigh|let|leave)'],
  [
    'never',
    '(?:burn\\w* (?:my|his|her) \\w+ )?(?:on|with|by) (?:(?:the|my|hot) )*(?:coffee|tea|soup|oven|stove|kettle|iron)\\b',
  ],
  [
    'x',
    'lye (?:discount|calculator|amount|concentration|heavy|ratio|excess|content)\\b',
    '(?:more|less|enough|extra|too much|mas|plus de|mehr|weniger) (?:lye|sosa|soude|naoh|lauge)\\b',
  ],
  // what bites
  [
    'batter',
    'soap (?:goo|mix|mixture|dough|mass|slop|slurry|stuff|mess)\\b',
    '(?:raw|fresh|hot|uncured|new|wet|unset) (?:\\w+ )?(?:soap|bar)s?\\b',
    '(?:frische|rohe|weiche|heisse)[mnrs]? (?:stuck )?seifen?\\w*',
    'seife,? (?:die )?noch (?:nicht (?:reif|trocken)|roh|weich)\\b',
    'pate a savon\\b',
    'savon (?:frais|cru|chaud|pas (?:encore )?(?:sec|mur|fini))\\b',
    '(?:masa|pasta) de jabon\\b',
    'jabon (?:recien hecho|fresco|crudo|caliente|(?:aun )?sin curar)\\b',
  ],
  [
    'lye burn',
    '(?:chemical|caustic) burns?\\b',
    'brulures? (?:chimique|caustique)s?\\b',
    'quemaduras? quimicas?\\b',
    'chemische verbrennung\\b',
  ],
  ['lye', 'soda caustica\\b', 'drain (?:cleaner|opener)s?\\b'],
  ['x', 'first ?aid (?:kit|box|course|supplies)\\b', 'erste hilfe (?:koffer|kasten)\\b', 'botiquin\\b'],
  [
    'poisoned',
    'first ?aid\\b',
    'erste hilfe\\b',
    'premiers secours\\b',
    'primeros auxilios\\b',
    '(?:lye|caustic|soap) accident\\b',
  ],
  // what is no part of a body: work, products, parts of things, turns of speech, the test by tongue
  [
    'x',
    'sick of\\b',
    'out of my hands\\b',
    'hands?[ -]on\\b',
    '(?:by|on|at|in|first|second|other) hand\\b',
    'oh no\\b',
    'with bare hands\\b',
    '(?:a|thin|white) skin on\\b',
    'haut (?:obendrauf|oben|drauf|auf der (?:lauge|oberflache|seife))\\b',
    'peau (?:sur le dessus|en surface)\\b',
    '(?:caught|catch\\w*) (?:my|the) eye\\b',
    'eye(?: on|balled|balling|ing)\\b',
    '(?:always|just|to|only|usually) eyeball\\b',
    'fat fingers?\\b',
    'fingers crossed\\b',
    'head over heels\\b',
    'hands down\\b',
    '(?:arms?|elbows?) deep\\b',
    '(?:hande|finger) weg\\b',
    'augen auf\\b',
    'a ojo\\b',
    'ojo con\\b',
    'coup d[e ]*(?:main|oeil)\\b',
  ],
  [
    'x',
    '(?:hand|face|foot|skin|body)[ -](?:soap|bar|cream|wash|stir)\\w*',
    '(?:jabon|savon|seife) (?:de|a|fur|pour|para) (?:(?:l[ae]s?|die|das) )?\\w+',
    'nail (?:polish|varnish|brush)\\b',
  ],
  [
    'x',
    '(?:narrow|wide|long|bottle|jar|jug|blender|mixer) (?:neck|mouth|foot|head|face|arm)s?\\b',
    '(?:mouth|foot|feet|head|neck|heel|face|lip|shoulder) of (?:the|a|an)\\b',
    '(?:pied|tete|bras) d[ue] \\w+',
  ],
  [
    'x',
    '(?:arms?|hands?|shoulders?|back) (?:hurts?|aches?|sore|tired|burn) from (?:all )?(?:stirring|whisking|mixing|grating)\\b',
  ],
  [
    'x',
    '(?:test de la langue|prueba de la lengua|zungentest)\\b',
    '(?:pique|picote|pica|tingles?|zaps?) (?:sur |en |on )?(?:la |the |my )?(?:langue|tongue|lengua)\\b',
  ],
  ['mask', 'face (?:shield|mask)s?\\b'],
];

/** Made for the first text that speaks of a body: most never do. */
let phrases: readonly (readonly [RegExp, string])[] | null = null;

/** A text with its turns of phrase as single words. */
export function inPhrases(plain: string): string {
  phrases ??= turns.map(([meaning, ...said]) => [new RegExp(`\\b(?:${said.join('|')})`, 'g'), meaning] as const);
  let text = plain;
  for (const [phrase, meaning] of phrases) text = text.replace(phrase, meaning);
  return text;
}
