/**
 * What words mean in a tale of an accident: one letter each, in English, German, French and Spanish, with a few Italian
 * words. Written as `plainOf` leaves them: lower case, no accents, ß as ss, œ as oe, ñ as n.
 */

const words: Readonly<Record<string, readonly string[]>> = {
  // A alkali, raw soap among it; S soap, which only bites when it is raw
  A: [
    'abflussreiniger rohrreiniger deboucheur desatascador lye naoh koh caustic caustics hydroxide batter chemical',
    'alkali solution flake flakes pearls paste',
    'lauge laugen natronlauge kalilauge seifenlauge seifenleim atznatron atzkali atznatrons laugenperlen',
    'soude lessive potasse hydroxyde',
    'sosa soza lejia hidroxido potasa',
  ],
  S: ['soap soaps soaping bar bars loaf loaves seife seifen seifenstuck savon savons jabon jabones sapone'],
  // where it went: E eye, P part of the body, T airways, Y what is worn, G the room
  E: [
    'eye eyes eys eyse eyeball eyeballs eyelid eyelids eyelash eyelashes lens lenses contacts cornea',
    'bloodshot pupil pupils blind blinded blindness erblindet aveugle ciego ciega',
    'auge augen auges augapfel augenlid augenlider kontaktlinse kontaktlinsen',
    'oeil loeil oeuil oeils yeux paupiere paupieres',
    'ojo ojos parpado parpados occhi occhio',
  ],
  P: [
    'hand hands hnd hnds hadn finger fingers fingr fingertip fingertips fingernail fingernails nail nails thumb',
    'thumbs',
    'knuckle knuckles arm arms forearm forearms elbow elbows wrist wrists shoulder shoulders armpit leg legs foot',
    'feet toe',
    'toes heel heels sole soles ankle ankles knee knees shin shins calf calves thigh thighs hip hips skin face',
    'forehead brow',
    'eyebrow cheek cheeks chin jaw lip lips mouth tooth teeth tongue neck belly stomach tummy lap front ear ears',
    'earlobe waist crotch',
    'nose nostril nostrils head scalp paw paws torso groin buttock bum barefoot barefooted snout muzzle beak claws',
    'butt tail whiskers breastbone cuticle',
    'beard moustache cleavage fingerprints backside breast breasts temple temples instep pinky',
    'hande handen handgelenk handgelenke handrucken handflache fingern fingerspitze fingerspitzen daumen',
    'fingernagel arme',
    'armen unterarm unterarme oberarm ellbogen ellenbogen schulter schultern bein beine beinen oberschenkel',
    'schenkel wade',
    'waden schienbein fuss fusse fussen fusssohle zeh zehe zehen knochel ferse fersen haut gesicht stirn wange',
    'wangen kinn',
    'zeigefinger barfuss pfotchen schnauze schnabel lippe lippen mund zunge zahne nacken bauch schoss ohr ohren',
    'nase nasenloch kopf pfote pfoten',
    'main mains doigt doigts pouce pouces ongle ongles peau bras avantbras poignet poignets coude coudes epaule',
    'epaules',
    'jambe jambes cuisse cuisses genou genoux mollet mollets tibia pied pieds orteil orteils cheville chevilles',
    'talon visage torse',
    'joue joues menton levre levres bouche langue cou nez narine narines oreille oreilles tete ventre patte pattes',
    'mano manos dedo dedos pulgar muneca munecas codo codos brazo brazos antebrazo hombro hombros pierna piernas',
    'muslo',
    'muslos rodilla rodillas tobillo tobillos piel cara carita manita manitas dedito ojito rostro mejilla mejillas',
    'barbilla labio labios boca lengua cuello',
    'descalzo descalza nariz oreja orejas cabeza barriga panza pata patas pelle viso',
  ],
  T: [
    'throat oesophagus esophagus gullet windpipe lung lungs chest airways hals lunge lungen brust rachen gorge poumon poumons poitrine garganta pulmon',
    'pulmones',
    'pecho gola',
  ],
  Y: [
    'shoe shoes slipper slippers crocs sneaker sneakers clog clogs shorts skirt dress bra hoodie jumper sweater',
    'sleeve sleeves sock socks boot boots sandal sandals shirt jeans trousers pants tshirt blouse coat apron',
    'leggings',
    'armel hose socke socken schuh schuhe hausschuh hausschuhe pantoffeln sandale sandalen stiefel hemd manche',
    'manches',
    'chaussure chaussures chaussette chaussettes pantoufle chausson botte bottes pantalon manga mangas zapato',
    'zapatos',
    'zapatilla zapatillas calcetin calcetines bota botas camisa',
  ],
  // l gloves, which are meant to be met by lye
  l: ['glove gloves handschuh handschuhe handschuhen gant gants guante guantes'],
  G: [
    'floor bench counter countertop worktop table tabletop kitchen stove sink carpet hob boden tisch arbeitsplatte',
    'herd',
    'plan table evier mesa encimera suelo cocina fregadero',
  ],
  W: ['me myself meself mysen him himself hisself herself us them themselves mir mich ihm ihn moi'],
  O: [
    'my his her their our both bare wet mein meine meiner meinem meinen sein seine seinem seinen ihr ihre ihrem',
    'ihren unser unsere die der den dem la les ma mes mon sa ses lui notre el los las mi mis su sus il',
  ],
  y: ['your yours'],
  t: [
    'the a an one left right linke linken linkes rechte rechten rechtes gauche droit droite derecho derecha',
    'izquierda',
  ],
  z: ['it some this that something'],
  i: ['in into ins im dans en negli nell'],
  o: [
    'below beneath between against under at toward towards around near above am zwischen on onto over down up upon off across auf uber',
    'sur sobre sulla aufs ubers encima dessus unter sous bajo',
  ],
  f: ['for wear wearing protection mask fur pour para per porter tragen schutzbrille lunettes gafas'],
  // p what soap is made in and with
  p: [
    'pot mould mold moulds molds crockpot cooker volcano blender mixer whisk spatula cauldron jug pitcher bucket topf purierstab stabmixer',
    'becher',
    'mixing stirring blending whisking pouring unmoulded unmolded unmoulding granules pellets beads kugelchen ruhren umruhren anruhren remuant',
    'melangeant melange batir batiendo removiendo mezclando mezclar seifesieden seifensieden soapmaking krug',
    'casserole cocotte mixeur fouet pichet olla batidora jarra',
  ],
  // whom
  C: [
    'son sons daughter daughters daughtr boy boys girl girls child children kid kids kiddo kiddos baby toddler',
    'toddlers',
    'infant grandma grandpa gran nan nana granny grandson granddaughter grandmother grandfather mum mom mother dad',
    'father',
    'husband hubby wife partner boyfriend girlfriend friend brother sister nephew niece aunt uncle cousin neighbor',
    'neighbour someone somebody roommate flatmate dog dogs doggo puppy pup cat cats kitty kitten pet hen chicken',
    'bird rabbit bunny',
    'terrier spaniel labrador collie poodle retriever bulldog beagle dachshund whippet greyhound hound mutt pug',
    'staffy hen tomcat moggy tabby siamese coon gentleman lady woman man mate colleague student pupil',
    'hamster parrot budgie canary duck chick goat horse ferret tortoise pets',
    'papa mama meerschweinchen wellensittich ente schaf ziege kleinste kleinster kaninchen vogel papagei huhn',
    'nachbar nachbarin kollege kollegin sohn tochter kinder kleinkind bub madchen frau ehemann oma opa enkel',
    'enkelin bruder schwester freund freundin',
    'hund hundin welpe katze kater',
    'fils fille enfant enfants gamin gamine bebe mari femme frere soeur mamie papi ami amie voisin voisine chien',
    'chienne',
    'cobaye chiot chaton lapin oiseau perroquet poule collegue',
    'hijo hija hijos nino nina ninos nieto nieta marido esposo esposa mujer hermano hermana abuela abuelo amigo',
    'amiga perro',
    'perra hijita hijito perrito gato gata gatito cachorro nene nena crio cria suegra cunada conejo pajaro loro',
    'gallina vecino vecina figlio figlia',
  ],
  b: [
    'touched bit bite bites bitten biting stepped stepping crawled grabbed played pecked gnawed nibbled',
    'mouthed',
    'poked walked getreten gebissen angefasst gefasst gegriffen geknabbert knabbert angeknabbert biss trat griff',
    'fasste nibbling gnawing mordu mordille touche mordio mordi mordisco agarro cogio piso toco pise',
  ],
  // what happened: R has happened, s may yet; the same for H and h (with u, a burn), D and d
  R: [
    'splashed splattered spattered sprayed squirted spurted spilled spilt spat spit gushed spewed flicked flung splat',
    'sloshed',
    'splosh sploshed plopped popped squirt droplet foamed bubbled overflowed covered coated slopped gushed faceful eyeful',
    'explodiert geplatzt gespritzt spritzte spritzer verschuttet verschutte gekleckert geschwappt schwappte',
    'ubergekocht umgekippt',
    'eclaboussure eclaboussures eclabousse eclaboussee gicle giclee projete projetee explose renverse renversee',
    'asperge deborde saute',
    'cayo cayeron caido exploto reboso chorreo salpique salpicaron salpico salpicado salpicada salpicadura',
    'salpicaduras salto derramo derrame derramado derramada vertio schizzata',
    'schizzato',
  ],
  // m what ran or fell, of whatever kind; w what does no harm
  m: ['ran dripped trickled dribbled leaked leaking landed slid'],
  w: [
    'water oil oils olive coconut castor sunflower shea cocoa almond lard tallow butter wax milk cream coffee tea charcoal flour',
    'juice beer wine honey syrup scent fragrance perfume eo eos lavender mica clay colour color dye paint alcohol',
  ],
  s: ['splash splashes splashing splatter spill spills spilling'],
  r: [
    'got gets get getting went came hit fell flew jumped knocked tipped toppled touching handling',
    'poured dropped stuck rubbed soaked drenched soaking exploded erupted wiped',
    'rubbing',
    'scratched caught',
    'bekommen abbekommen abgekriegt gekriegt gekommen gelaufen getropft gekippt geschuttet gefallen gerieben',
    'ausgelaufen',
    'recu tombe tombee coule frotte essuye marche',
    'entraron meti restregue froto frote entro metio restregue toque',
  ],
  H: [
    'burned burnt burns burning burnin stings stinging stung numb peeling bleeding tingling',
    'tingle tingly watering streaming smarting smarts itching throbs throbbing prickle prickles prickling prickly',
    'smarted',
    'brennt brennen brannte verbrannt verbrannte veratzt veratzte schmerzt kribbelt juckt beisst prickelt sticht',
    'brannten',
    'brule brulee brulent brulait brulures pique piquent picote ronge demange demangent irritent grattent',
    'tranen trant tranten escozor ardor quemazon hormiguea ardio pican lagrimeo lloran queme quemo quemado quemada',
    'queman arde arden ardia ardiendo escuece bruciato brucia',
  ],
  h: [
    'sting hurt hurts hurting sore itch red raw slippery slimy slick gritty irritated swollen swelling',
    'pain painful pink pinkish weeping wrinkled wrinkly soapy tight jelly inflamed puffy',
    'feuerrot knallrot entzundet wund wunde ausschlag rot rote rotes gerotet weh schmerzen blase blasen geschwollen',
    'glitschig schmierig taub',
    'irritee irrites plaie rouge rouges rougeur rougeurs cloque cloques ampoule gonfle gonflee glissant glissante',
    'glissants mal douleur irrite',
    'rojo roja rojos rojas ampolla ampollas duele duelen dolor hinchado hinchada resbaloso resbalosa irritado',
    'irritada irritaron irrito inflamado pelada llaga ronchas pica',
  ],
  // J harm that nothing else in a kitchen does to a body
  J: ['blister blisters blistered blistering scald scalds scalded welt welts gashed maimed'],
  // n cries of pain; c help that is given; a food that is no longer any; e long past
  n: ['ow ouch crying cries screaming screams weint schreit pleure hurle llora grita'],
  c: ['tended'],
  a: ['tainted'],
  e: ['longago'],
  u: ['burn sunburn sonnenbrand verbrennung veratzung brulure quemadura quemaduras ustione'],
  D: [
    'sucked drank drunk swallowed swallows swallowing ingested ingesting gulped gulp sipped sip swig swigged',
    'mouthful mouthfuls',
    'getrunken verschluckt geschluckt schluck genippt trank',
    'avale avalee avaler bu gorgee gorgees',
    'trague tragaron sorbio trago tragado tragar sorbo bebio bebi bebido ingerido ingerito bevuto',
  ],
  d: ['swallow drink ingest boire trinken beber'],
  L: [
    'tasting chewing eating ate eaten licked licks licking lapped chewed tasted tastes eats gulps',
    'putzt frass leckte schleckte genascht probiert gekostet gefressen gegessen geleckt abgeleckt geschleckt',
    'aufgeleckt leckt frisst',
    'leche lechee lechent mange mangee lape croque goute',
    'comio lamio lamido comi lami chupe chupo chupado probo probe mangiato',
  ],
  B: [
    'breathed breathing inhaled inhaling sniffed snuffed snorted lungful eingeatmet',
    'aspiro inhalo respiro respire inhale aspire respirado inhalado aspirado inalato',
  ],
  V: [
    'fumes fume vapour vapor vapours vapors steam mist dust gas dampfe dampf laugendampfe laugendampf rauch staub',
    'vapeurs vapeur fumee fumees poussiere vapores humo humos polvo vapori',
  ],
  K: [
    'drooling drools gulping gaping foaming gasping limp unresponsive retching spluttering sneezing unwell bleed bleeds sangra',
    'sangre cough coughing coughed choking choked gagging dizzy lightheaded wheezing wheeze breathless sick',
    'nauseous nausea vomit',
    'vomiting vomited puking rash headache coughs wheezes chokes faint fainted fainting unconscious collapsed asthma',
    'husten huste hustet hustete gehustet schwindlig schwindelig ubel sabbert speichelt schwindel schlecht kopfweh',
    'kopfschmerzen bewusstlos ohnmachtig erbricht erbrochen atemnot',
    'bave etouffe toux tousse toussent vertige vertiges vomi vomit evanoui evanouie nausee nausees',
    'babea babeando tos tosiendo toso mareado mareada toser mareo vomitando vomito desmayo desmayado desmayada ahogo',
    'cantsee',
  ],
  Z: ['cantbreathe'],
  v: ['vinegar rinse flush wash essig vinaigre vinagre'],
  // k: taken for something else
  k: [
    'wrong mistake accidentally thinking thought mistaking mistook',
    'versehentlich versehen falsche falschen verwechselt dachte',
    'croyait croyant erreur accidentellement creyendo pensando equivocado accidente',
  ],
  // what makes it none; I an instruction
  N: [
    'dont never avoid avoids avoiding without nothing no not none prevent prevents protect protects careful keep',
    'keeps',
    'didnt hasnt havent hadnt wont nobody noone nicht keine kein ohne schutzen schutzt vermeiden ne pas evitar evite eviter sans proteger',
    'protege sin non fernhalten jamais nunca',
  ],
  I: ['always otherwise immer stets sonst toujours sinon siempre hay'],
  j: [
    'itchy waxy sensitive dry oily mature empfindlich empfindliche trockene sensible seche seches seca harsh hard',
    'gentle mild easy bad good kind soft nice',
  ],
  M: ['will would might may gonna gunna does going shall want wants could kann konnte peut pourrait puede podria'],
  F: ['if case unless falls wenn si'],
  Q: ['what how who should was que comment cosa wer quoi faire hago hacer tun'],
  // g guards of the eyes, which count as wear (f) unless a phrase says that lye got behind them
  g: ['goggles glasses'],
  // q: what is told by a phrase
  q: [
    'palm palms aid firstaid accident everywhere breathe see fire sehen luft vois veo respirar respirer atmen',
    'figure pie',
    'pies',
  ],
  X: ['antidote gegengift antidoto poisoned poisoning vergiftet vergiftung intoxicado intoxique empoisonne envenenado'],
  '-': ['and but so then because und aber et mais y pero'],
};

/**
 * Every word with its letter, one a line: searched as it is, since a table of them costs every start more. The bundle
 * takes this text instead of the lists.
 */
export const lines = Object.entries(words)
  .map(([letter, said]) => `\n${said.join(' ').replaceAll(' ', `:${letter}\n`)}:${letter}\n`)
  .join('');
