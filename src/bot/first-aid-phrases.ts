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
    '(?:hurts?|painful|sore|stings?)(?: (?:me|him|her|them|us))? (?:to breathe|(?:when|if|each time|every time) (?:i|she|he|they|we) breathes?)(?: in)?\\b',
    'breathing (?:in )?(?:hurts|is (?:sore|painful)|stings|burns)\\b',
    'passed out\\b',
    '(?:keeps? )?(?:paw|scratch|rubb)\\w*(?: and \\w+ing)? at (?:his|her|its|their) (?:mouth|face|muzzle|nose|tongue)\\b',
    '(?:(?:cant|wont) stop|keeps?) coughing\\b',
  ],
  ['$1', '(?:cant stop|wont stop|keeps?) (\\w+ing)\\b'],
  // a word of denial that denies no accident
  [
    'x',
    'no wait\\b',
    'without (?:thinking|noticing|looking)\\b',
    'not sure\\b',
    'do(?:nt| not) know\\b',
    'dont see\\b',
    '(?:did|do|was)nt (?:think|notice|reali[sz]\\w+|know|wear\\w*)\\b',
    '(?:not wearing|without|no) (?:any |my )?(?:gloves|goggles|mask)',
    '(?:keine|ohne|sans|sin) (?:handschuhe?|brille|gants|lunettes|guantes|gafas)',
  ],
  // told of long ago, or not sure that it matters
  [
    'longago',
    '(?:years?|months|decades|ages) ago\\b',
    'last (?:year|summer|winter|spring|autumn)\\b',
    '(?:back )?in (?:19|20)\\d\\d\\b',
    '(?:i|he|she|they|we) once\\b',
    'once i\\b',
    'when i was\\b',
    'as a (?:child|kid|student)\\b',
    'vor (?:\\w+ )?jahren\\b',
    'il y a \\w+ ans\\b',
    'hace (?:\\w+ )?anos\\b',
  ],
  ['x', '(?:if|whether) (?:it|this|that|any of it) (?:matters|counts|is (?:relevant|important))\\b'],
  ['prevent ', '(?:stop|keep) (?:\\w+ ){1,3}from (?=\\w+ing\\b)'],
  [
    'accidentally',
    'sin querer\\b',
    'sans (?:le )?faire expres\\b',
    'ohne absicht\\b',
    'aus ?versehen\\b',
    'by accident\\b',
    'didnt mean to\\b',
  ],
  ['what', '(?:know|knows|tell me|wonder\\w*|ask\\w*) (?:if|wenn|si)\\b'],
  // who
  [
    'child',
    '(?:year|month|yr)s? old\\b',
    '\\d+ ?yo\\b',
    'little ones?\\b',
    '(?:mein|unser|die|der|das)e? klein(?:e[rn]?|es)\\b(?! \\w+ (?:form|seife|stuck|topf|menge))',
    '(?:le|mon|ma|notre) chat(?:te)?\\b',
    '(?:mi|tu|su) papa\\b',
  ],
  // where
  [
    'on my hand',
    '(?:on|down|across) (?:my|his|her|its) back\\b',
    '(?:under|beneath|behind) (?:my|his|her|their) (?:wedding |engagement )?(?:ring|watch|bracelet|plaster|nails?)\\b',
  ],
  ['splashed on my hand', 'in(?:to)? (?:the|his|her|its|their) (?:fur|coat|beard|whiskers)\\b'],
  [
    'splashed on my ',
    '(?:all|down|straight|right|half) over (?:my|his|her|our) (?=(?:shirt|chest|top|jeans|trousers|legs?|arms?|hands?|face|feet|foot|lap|knees?|thighs?|shoes?|slippers?|socks?))',
  ],
  [
    'lye on my hand burning',
    '(?<!your )skin(?: \\w+){0,4} (?:feels|feeling|felt|is) (?:all |very |really |quite )?(?:soapy|slippery|slimy)\\b[^.!?\\n]{0,40}\\b(?:sting\\w*|burn\\w*|tingl\\w*|hurt\\w*|itch\\w*|smart\\w*|red|sore)\\b',
  ],
  ['on my shirt ', 'down (?:my|his|her) (?:top|front|back|vest|dungarees)\\b'],
  [
    'splashed in my eye',
    '(?:got|had|took|copped|get) (?:a|an|the) (?:\\w+ )?(?:faceful|face ?full|eyeful|eye ?full)\\b(?! of (?!lye|soap|batter|caustic|it\\b|fumes|steam|naoh))',
  ],
  [
    'my hand',
    '(?:her|his|its|their) (?:fur|coat)\\b',
    '(?:mi|mis|el|los|un|del) pies?\\b',
    '(?:my|his|her|their|both|left|right|(?<=(?:on|onto|in|into|over|across|down|inside|hit|hits|touched|burned|burnt|burns) )the) palms?\\b(?! (?:oil|kernel))',
    'the palms? of (?:my|his|her|the|one|a) ',
    'palms? (?=(?:is|are|feels?|looks?|has|have) (?:scald|burn|blister|red|raw|sting|sore|numb))',
  ],
  ['sur la face', 'a la figure\\b'],
  [
    'in my eye',
    '(?:under|behind|through|inside|past|into|around) (?:my |his |her |the )?(?:safety )?(?:goggles|glasses|contacts?|lens(?:es)?)\\b',
  ],
  [
    'on my hand',
    '(?:por )?dentro del? guantes?\\b',
    '(?:in|into|inside|through|under) (?:(?:my|his|her|the) )?(?:gloves?|(?<=(?:my|his|her) )hair)\\b',
    '(?:im|unter|durch) (?:(?:meinem|den) )?handschuhe?n?\\b',
    '(?:sous|dans|traverse|bajo) (?:(?:mes|mon|les?|mis?|el|los) )?(?:gants?|guantes?)\\b',
  ],
  // "moved house, boxes everywhere"
  ['over me', '(?<!\\b(?:box(?:es)?|toys|cats|dogs|kids|children|papers?|notes|books|snow) )everywhere\\b'],
  // what was done or felt
  ['vomited', '(?:threw|throw(?:ing|s)?|chucked) up\\b'],
  [
    'drank',
    '(?:took|had|taken|have|having) (?:a|an|one) (?:\\w+ )?(?:drink|sip|swig|gulp|mouthful)\\b',
    'se (?:le )?tomo\\b',
    '(?:been|were|was) drinking (?:at|from|out of|it)\\b',
    '(?:a (?:few|couple of) drops?|some|a bit|a little(?: lye)?|it|lye) (?:has |had |have )?(?:gone|went) down(?= ?(?:$|[.,!?;\\n]|at (?:the )?most|my throat|her throat|his throat|the wrong))',
  ],
  [
    'from jug',
    '(?:from|out of) (?:the|that|this|my|our) (?:cups?|mug|glass|bottle|jar|bowl|beaker|container)\\b(?! (?:of|with) (?:(?:the|goat|my) )?(?:milk|tea|coffee|water|juice))',
  ],
  // "goat's milk, so that it won't scald"
  ['milk', '(?:goat|horse|mare|sheep|ewe)s? ?milk\\b'],
  ['never', '(?:wouldnt|wont|doesnt|didnt|not|never) (?:scald|burn|scorch)\\b'],
  [
    'swallowed',
    'in(?:to)? (?:my|his|her|their|its) mouth\\b',
    'in (?:den|seinen|ihren|meinen) mund\\b',
    '(?:a|dans) (?:la|sa|ma) bouche\\b',
    '(?:a|en) la boca\\b',
  ],
  [
    'stepped in lye',
    '(?:stood|trod|stepped|walked|paddled) (?:right |straight )?in(?:to)? (?:it|the (?:lye|puddle|spill))\\b',
  ],
  ['swallowed lye', 'mist(?:ook|aken?|aking) (?:the |my |our )?(?:lye|naoh|caustic(?: soda)?|koh) for\\b'],
  ['inhaled', '(?:big|deep|good|full) breath\\b', 'breath of\\b'],
  ['burning', 'on fire\\b'],
  [
    'throat burning',
    'throat (?:feels|is|has gone|s) (?:a bit |all |really |very |so )?(?:warm|hot|tight|scratchy|raw|sore|rough|funny)\\b',
  ],
  ['licked poisoned', '(?:tooth|teeth|bite) ?marks? (?:in|on) (?:the|a|one|my|some)\\b'],
  ['$1 stinging', '(and|hands?|fingers?|arms?|skin|eyes?|face|lips?) stings?\\b'],
  [
    'burned',
    'skin off\\b',
    '(?:wont|cant|cannot|will not) (?:open|feel|move|get it off)\\b',
    '(?:turn(?:ed|ing)|gone|went|going|is|are|all|look(?:s|ing)?) (?:\\w+ly )?(?:white|pink|waxy|bleached|pale|grey)\\b',
    'se me (?:pelo|despellejo|hincho)\\b',
  ],
  ['burned ', 'eat(?:s|ing|en)? (?:at |into |through )?(?=(?:my|his|her) )'],
  ['burned skin', 'burn marks?\\b'],
  [
    'blistered',
    '(?:come|came|coming) up (?:in |all |really |so )*(?:bubbles|blisters|red|sore|raw|angry|a rash|welts)\\b',
    '(?:raw|red|sore|angry|white|gr[ea]y|black|dark) (?:patch(?:es)?|spots?|marks?)(?= (?:\\w+ )?(?:on|between|behind|under) (?:my|his|her|the) )',
    '(?:skin|fingers?|thumb|hands?|patch)(?: has|s| have| is| are)? (?:gone|turned|all|looks?) (?:see[- ]?through|transparent|translucent|jelly\\w*)\\b',
    '(?:sting|burn|hurt|itch)(?:s|es|ing|ed)? (?:so |really |quite )?(?:like (?:hell|mad|crazy|fire|anything)|badly|so bad|bad)\\b',
  ],
  [
    'blistered skin',
    'skin (?:is |has |just |was )*(?:coming|come|came|peeling|falling|fell|sliding|rubbing) (?:off|away)\\b',
  ],
  ['burning my eye', '(?:cant|cannot|wont|can ?not) (?:keep|get|hold) (?:it|them|(?:my|his|her) eyes?) open\\b'],
  [
    'tended',
    '(?:under|into|in) (?:the |a |cold |running |cool )+(?:tap|shower|faucet)\\b',
    'under (?:running|cold) water\\b',
    '(?<=\\b(?:is|am|are|been|im|hes|shes|theyre) )(?:still )?at the (?:tap|sink)\\b',
    'rins(?:ed|ing)\\b',
    'kitchen roll|ice pack|bandaged?|burn cream',
    'paramedics?|ambulance|hospital|krankenhaus|notarzt|urgences',
  ],
  [
    'tainted my ',
    '(?:landed|fell|got|splashed|dripped|dropped|spilled|ran|splattered) in(?:to)? (?:(?:my|his|her|the) )?(?:coffee|tea|drink|cup|mug|glass|juice|food|soup|dinner|lunch|sandwich)\\b',
  ],
  ['vomited', '(?:spat|spit|spitting) (?:(?:it|that|some|most)(?: of it)? )?(?:straight |right |back )*out\\b'],
  ['splashed on my ', '(?:stuck|clung|glued|sticking|stick) (?:on)?to (?:my|his|her) (?!glov)'],
  ['collapsed', '(?:lying|lies|lay) (?:still )?on (?:the|its|his|her) (?:floor|side|back|bottom)\\b'],
  ['ow', 'o+w+\\b', 'ouch+\\b', 'au+a+\\b', 'autsch\\b', 'aie+\\b'],
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
    'why (?:do|does) (?:everybody|everyone|people|they|so many|some)\\b',
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
    '(?:burn\\w* (?:my|his|her) \\w+ )?(?:on|with|by) (?:(?:the|my|hot|an?|slice|piece|bowl|cup|mug|of) )*(?:coffee|tea|soup|pizza|pie|toast|porridge|chips|oven|stove|kettle|iron)\\b',
    '(?:bees?|wasps?|hornets?|nettles?|mosquito\\w*)\\b(?![^.!?\\n]{0,120}\\b(?:lye|caustic|batter|soap)\\b)[^.!?\\n]{0,120}',
    '(?:plain|bath|tap|sea|rain) (?:bath )?water (?=(?:in|on|over|down) )',
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
    '(?:raw|fresh|hot|boiling|cooking|molten|half[ -]cooked|uncured|new|wet|unset) (?:\\w+ )?(?:soap|bar|loaf|log)s?\\b',
    '(?:frische|rohe|weiche|heisse)[mnrs]? (?:stuck )?seifen?\\w*',
    '(?:day|hour)s?[ -]old (?:\\w+ )?(?:soap|bar|loaf|batch)s?\\b',
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
  // as hot as it is, fat does as much
  ['batter', '(?:hot|boiling|scalding|smoking) (?:\\w+ )?(?:oils?|fats?|wax|lard|tallow|butter|syrup)\\b'],
  ['x', '(?:oat|salt|chilli|coconut|snow)[ -]?flakes?\\b'],
  // an acid that takes up alkali
  [
    'x',
    'eats? (?:up )?(?:some (?:of )?)?(?:the |your |my )?(?:alkali|lye|naoh)(?=[^.]*\\b(?:acid|citric|lemon|vinegar)\\b)',
    '(?<=\\b(?:acids?|vinegar|citric|lemon|juice|it|that|which|they) )eats? (?:up )?(?:some (?:of )?)?(?:the |your |my )?(?:alkali|lye|naoh)\\b',
  ],
  ['lye', 'soda caustica\\b', 'drain (?:cleaner|opener)s?\\b'],
  ['x', 'first ?aid (?:kit|box|course|supplies)\\b', 'erste hilfe (?:koffer|kasten)\\b', 'botiquin\\b'],
  [
    'poisoned',
    '(?:need|see|call|phone|ring) (?:a|an|the|my) (?:doctor|ambulance|vet|paramedics?|gp|medic)\\b',
    'emergency room\\b',
    'urgent care\\b',
    'poison (?:control|cent(?:re|er)|line)\\b',
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
    'bit by bit\\b',
    '(?:a|one|every|each|tiny|little|good|last) bits?\\b',
    'out of my hands\\b',
    '(?<!my )hands?[ -]on\\b',
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
    'burn(?:t|ed)? my fingers (?:with|on|at) (?:\\w+ ){0,2}(?:suppliers?|sellers?|shops?|deals?|prices?)\\b',
    'fingers crossed\\b',
    '(?:feet|hands) up\\b',
    '(?:cup|glass|mug|tea|coffee|phone) in hand\\b',
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
    '(?:jug|bottle|jar|pot|bowl|it) has an? (?:\\w+ )?(?:foot|neck|mouth|lip|arm|head)\\b',
    '(?:mouth|foot|feet|head|neck|heel|face|lip|shoulder) of (?:the|a|an)\\b',
    '(?:pied|tete|bras) d[ue] \\w+',
  ],
  [
    'x',
    '(?:arms?|hands?|feet|legs?|shoulders?|back|neck) (?:(?:is|are) )?(?:hurts?|aches?|aching|sore|tired|burn) (?:from|after) (?:all )?(?:(?:the|a|my|this) )?(?:\\w+ )?(?:stirring|whisking|mixing|grating|markets?|fairs?|day|weekend)\\b',
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
