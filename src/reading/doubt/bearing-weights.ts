/** What each sign of a note weighs for its bearing on the pot and against it, in tenths of a logit: learned, `npm run generate:bearing`. */
export const weights = ` *:-7
 *~A:-7
 *~F:-4
 +:2
 +~ a:-6
 +~0:5
 +~<:-1
 +~=:-4
 +~A:-6
 +~F:-8
 +~W:-6
 .:6
 .~%:4
 .~0:4
 ::1
 :~ a:4
 :~ about:-4
 :~ all:6
 :~ as:-3
 :~ do:-1
 :~ does:-3
 :~ g:-3
 :~ goggl:-6
 :~ good:-5
 :~ half:7
 :~ i'd:5
 :~ i:4
 :~ in:4
 :~ is:-8
 :~ it:2
 :~ its:-1
 :~ ive:1
 :~ kitchen:1
 :~ me:-8
 :~ melt:-9
 :~ my:1
 :~ no:2
 :~ none:6
 :~ one:-7
 :~ re:-2
 :~ soap:-6
 :~ the:-1
 :~ too:3
 :~ what:3
 :~ why:-4
 :~ winter:-2
 :~ with:1
 :~ yes:4
 :~%:-7
 :~0:-7
 :~<:-3
 :~=:-5
 :~>:-6
 :~A:-1
 :~L:-2
 :~N:2
 :~S:-5
 :~T:-3
 :~W:-2
 :~X:-3
 :~b:-5
 :~d:-4
 :~l:-8
 :~t:-5
 :~v:-7
 :~w:4
 =:-2
 =~ =:-6
 =~0:-4
 =~=:-5
 =~>:-2
 =~F:-1
 =~e:2
 =~l:-7
 ?:-3
 a:-2
 about:-3
 about~ a:6
 about~ an:-4
 about~ it:-3
 about~ right:-2
 about~ superfat:-9
 about~ the:2
 about~ to:-5
 about~%:-3
 about~0:-2
 about~<:4
 about~>:-6
 about~F:-5
 about~b:5
 about~d:-2
 about~t:-6
 about~v:3
 about~w:3
 above:3
 above~ is:3
 above~d:-7
 abt:-7
 accident:3
 accord:6
 accord~ to:6
 account:7
 acros:2
 acros~ the:8
 actual:8
 actual~N:6
 add:1
 added:7
 added~ a:2
 added~ it:5
 added~ the:3
 added~<:-7
 added~=:-9
 added~v:7
 added~w:5
 adds:-10
 adds~ up:-9
 add~ a:1
 add~ it:-7
 add~ the:-5
 add~ to:3
 add~<:-4
 add~=:-4
 add~F:3
 add~w:-6
 advice:2
 afresh:-7
 after:1
 afternoon:1
 afterward:2
 after~ a:-2
 after~ christma:-7
 after~ cook:2
 after~ cure:-2
 after~ i:3
 after~ it:7
 after~ last:1
 after~ pour:5
 after~ strain:3
 after~ that:-6
 after~ the:-1
 after~ this:-8
 after~0:-8
 after~t:-5
 again:-2
 against:3
 against~ the:5
 again~ ::4
 again~ ?:-2
 again~ after:-3
 again~ and:-10
 again~ for:-6
 again~ with:5
 age:-9
 ages:-3
 ages~ to:-5
 ago:-8
 agre:-5
 agree:-6
 agree~ with:-5
 aim:6
 aim~ at:1
 aim~ for:6
 air:-2
 air~ cupboard:-1
 aisle:3
 aleppo:-6
 alike:7
 alkali:-7
 all:1
 allergen:-6
 allergic:8
 allergic~ to:-7
 allergy:5
 allotment:-4
 allow:-6
 all~ ::-3
 all~ ?:-3
 all~ and:5
 all~ at:4
 all~ but:8
 all~ by:-7
 all~ day:-5
 all~ down:7
 all~ fats:-7
 all~ first:1
 all~ g:-9
 all~ good:-8
 all~ grams:-8
 all~ i:4
 all~ in:-2
 all~ is:-7
 all~ my:-5
 all~ of:-1
 all~ on:-6
 all~ over:-6
 all~ right:-8
 all~ that:-2
 all~ the:-2
 all~ there:4
 all~ together:-8
 all~ told:-2
 all~ up:-5
 all~ week:3
 all~ weigh:-2
 all~0:1
 all~F:5
 all~L:-2
 all~W:-6
 all~b:-3
 all~e:10
 almost:2
 alone:-1
 along:11
 along~ the:-1
 along~ with:7
 already:8
 already~ dissolv:6
 already~ in:5
 already~ put:8
 already~ so:2
 alright:-4
 alright~ ?:-1
 alright~ for:-5
 also:3
 also~w:5
 alter:3
 although:4
 altogether:-6
 alu:-2
 aluminium:-2
 alway:-3
 alway~ did:-6
 alway~ said:-3
 alway~ with:6
 am:2
 american:-8
 ammonia:-6
 amount:3
 amount~ ?:-4
 amount~ g:-4
 amount~ of:-1
 am~ a:-5
 am~ from:-7
 an:-3
 and~ a:-4
 and~ about:-6
 and~ add:-9
 and~ added:-2
 and~ after:-1
 and~ again:5
 and~ all:7
 and~ an:-5
 and~ another:-10
 and~ asked:-4
 and~ at:-8
 and~ bang:-1
 and~ blend:-5
 and~ both:-1
 and~ by:1
 and~ call:3
 and~ came:-7
 and~ clear:-2
 and~ cook:4
 and~ cool:3
 and~ couldnt:-1
 and~ do:-4
 and~ does:-5
 and~ dont:-7
 and~ even:4
 and~ everyth:-3
 and~ fill:3
 and~ for:1
 and~ forgot:-4
 and~ found:5
 and~ gave:1
 and~ give:3
 and~ glov:-1
 and~ go:-1
 and~ goggl:-3
 and~ got:-7
 and~ had:-1
 and~ half:-5
 and~ hard:-5
 and~ has:1
 and~ have:-5
 and~ he:1
 and~ her:-5
 and~ his:-8
 and~ honest:-6
 and~ how:-6
 and~ i'd:-2
 and~ i:6
 and~ if:3
 and~ in:-3
 and~ into:3
 and~ is:-1
 and~ it:-3
 and~ itll:-4
 and~ its:-3
 and~ ive:-2
 and~ keep:-8
 and~ kept:1
 and~ last:-5
 and~ leave:-1
 and~ left:4
 and~ let:-6
 and~ lost:-7
 and~ me:-1
 and~ melt:-6
 and~ mine:1
 and~ mixed:-2
 and~ my:1
 and~ neither:4
 and~ never:-2
 and~ nobody:-2
 and~ none:6
 and~ not:-1
 and~ noth:-4
 and~ now:4
 and~ of:4
 and~ off:-5
 and~ once:-1
 and~ one:-1
 and~ only:3
 and~ pour:3
 and~ put:5
 and~ said:-4
 and~ says:2
 and~ see:-5
 and~ she:-5
 and~ since:1
 and~ smell:-1
 and~ so:2
 and~ soap:-3
 and~ some:4
 and~ someth:8
 and~ sprinkle:-1
 and~ start:-5
 and~ stay:-3
 and~ still:-1
 and~ stirr:-8
 and~ straight:-5
 and~ strain:-4
 and~ stuck:6
 and~ swear:-8
 and~ tell:-5
 and~ that:6
 and~ thats:-1
 and~ the:-3
 and~ then:4
 and~ ther:3
 and~ there:4
 and~ they:-5
 and~ this:4
 and~ those:1
 and~ tipp:7
 and~ to:-5
 and~ together:1
 and~ took:9
 and~ turn:-5
 and~ use:4
 and~ used:3
 and~ wait:-2
 and~ want:-5
 and~ wants:-4
 and~ warm:-1
 and~ was:5
 and~ we:1
 and~ weigh:1
 and~ went:-5
 and~ whats:1
 and~ when:-3
 and~ whether:-6
 and~ white:-6
 and~ will:-3
 and~ with:-5
 and~ would:-6
 and~ yes:-2
 and~ you:-1
 and~%:-3
 and~0:2
 and~=:-4
 and~A:-4
 and~B:-1
 and~F:-4
 and~L:-6
 and~N:7
 and~S:-3
 and~W:1
 and~X:2
 and~b:-11
 and~e:-3
 and~l:-7
 and~t:-6
 and~v:3
 and~w:-2
 another:3
 another~ day:-5
 another~0:9
 another~<:7
 another~t:-6
 another~v:-2
 another~w:-6
 answer:-6
 answer~ ::-5
 answer~ is:-2
 answer~ the:-5
 any:-2
 anybody:1
 anyhow:-2
 anyone:-8
 anyone~ know:2
 anyone~ tried:-4
 anyth:-5
 anyth~ else:-1
 anyth~ in:-2
 anyth~ off:-4
 anyth~ wrong:-4
 anyway:-6
 anywhere:1
 anywhere~ near:-7
 any~A:-3
 any~S:-7
 an~ earlier:-7
 an~ envelope:-4
 an~ extra:4
 an~ eye:-2
 an~ hour:-6
 an~ old:-4
 an~ older:-1
 an~I:-5
 an~L:5
 apart:-10
 approx:2
 app~ puts:-4
 april:-1
 apron:-6
 are:-2
 arent:1
 are~ dry:4
 are~ for:2
 are~ from:-7
 are~ full:-2
 are~ in:-7
 are~ no:-6
 are~ not:-8
 are~ right:-5
 are~ still:-9
 are~ the:-3
 are~ what:-1
 are~0:2
 are~=:-4
 are~F:-2
 argu:-7
 arithmetic:-8
 arm:-6
 around:-4
 around~ the:-5
 around~%:1
 around~0:-4
 around~d:-3
 around~w:-1
 arriv:-4
 as:4
 ash:-9
 ashes:-6
 ash~ and:-6
 ash~ on:-7
 aside:-5
 ask:-4
 asked:-8
 asked~ about:-5
 asked~ for:-2
 asked~ if:-7
 asked~ whether:-5
 asks:-8
 ask~ ::-3
 ask~ about:-7
 ask~ for:-5
 ask~ me:1
 ask~ you:-5
 asleep:-7
 assay:7
 as~ a:1
 as~ above:-7
 as~ alway:7
 as~ anyth:3
 as~ before:5
 as~ ever:-8
 as~ far:-4
 as~ i:6
 as~ if:1
 as~ in:-3
 as~ is:6
 as~ it:-4
 as~ its:-1
 as~ list:-4
 as~ long:-9
 as~ much:1
 as~ on:-5
 as~ print:7
 as~ promis:-7
 as~ snow:-4
 as~ the:3
 as~ well:3
 as~ written:-7
 as~ you:-7
 as~0:1
 as~A:4
 as~F:-2
 as~I:-8
 as~L:-4
 as~X:-5
 at:-2
 ate:4
 attempt:-6
 attempt~0:-5
 attic:-3
 at~ a:-8
 at~ all:-3
 at~ around:-5
 at~ christma:-2
 at~ church:-7
 at~ day:-8
 at~ easter:-7
 at~ first:-5
 at~ half:-8
 at~ hour:2
 at~ it:5
 at~ least:-3
 at~ light:1
 at~ liquid:-3
 at~ me:3
 at~ minute:-3
 at~ my:-3
 at~ once:-3
 at~ our:-7
 at~ room:-4
 at~ rough:-1
 at~ school:-7
 at~ that:1
 at~ the:1
 at~ thin:-9
 at~ this:-5
 at~ trace:6
 at~ week:-6
 at~%:4
 at~0:-3
 at~<:9
 at~=:-9
 at~b:2
 at~d:-4
 at~e:3
 at~t:-9
 at~w:-3
 august:3
 aunt:-4
 aunti:-3
 auntie:4
 aunts:3
 aunt~ in:-5
 aunt~ says:-5
 aunt~ sent:1
 autumn:-10
 average:-3
 away:-3
 away~ and:2
 awful:1
 a~ ::-7
 a~ baby:-1
 a~ bad:-8
 a~ bag:1
 a~ bar:-10
 a~ batch:-8
 a~ battery:1
 a~ beginner:-2
 a~ bigger:-1
 a~ bit:-2
 a~ blanket:-3
 a~ blend:7
 a~ bowl:-9
 a~ box:-6
 a~ brick:-1
 a~ bucket:-6
 a~ can:1
 a~ candle:-7
 a~ carton:-2
 a~ castile:1
 a~ cheese:-7
 a~ chip:-6
 a~ class:-6
 a~ clean:2
 a~ cold:-5
 a~ cool:-1
 a~ corner:-8
 a~ cow:1
 a~ crack:-2
 a~ crisp:-5
 a~ crumb:-6
 a~ crust:8
 a~ customer:-4
 a~ dark:-4
 a~ day:-2
 a~ different:-6
 a~ drawer:-6
 a~ dream:-4
 a~ drop:2
 a~ dry:-8
 a~ face:-6
 a~ fair:5
 a~ fami:-5
 a~ fan:-3
 a~ farm:2
 a~ few:4
 a~ fifth:3
 a~ finger:-6
 a~ fresh:-2
 a~ friend:-1
 a~ full:-2
 a~ glass:3
 a~ glug:5
 a~ good:10
 a~ half:3
 a~ handful:-2
 a~ heap:8
 a~ hole:-3
 a~ hurry:-6
 a~ jam:-7
 a~ jar:1
 a~ jug:-2
 a~ kitchen:-1
 a~ knob:7
 a~ ladle:5
 a~ lady:-5
 a~ library:-3
 a~ lid:-4
 a~ lidd:-2
 a~ light:-2
 a~ line:1
 a~ list:2
 a~ little:5
 a~ loaf:-5
 a~ long:-1
 a~ lot:-6
 a~ lump:5
 a~ man:-3
 a~ milk:-1
 a~ minute:-4
 a~ mix:7
 a~ month:-11
 a~ mould:-5
 a~ mug:7
 a~ new:-7
 a~ nice:-2
 a~ night:-5
 a~ number:-2
 a~ page:-7
 a~ paper:-5
 a~ paste:-1
 a~ pdf:-3
 a~ pencil:-7
 a~ photo:-6
 a~ pinch:-1
 a~ plain:-9
 a~ proper:-5
 a~ puddle:3
 a~ quarter:5
 a~ question:-3
 a~ reader:-6
 a~ ready:3
 a~ recipe:-1
 a~ rock:-4
 a~ round:-2
 a~ row:-7
 a~ scale:-8
 a~ second:-5
 a~ sensible:-3
 a~ shade:-4
 a~ shoe:-3
 a~ shoebox:-3
 a~ silicone:-6
 a~ sink:-5
 a~ skin:-3
 a~ skull:-7
 a~ slip:3
 a~ slow:-6
 a~ small:2
 a~ smaller:-3
 a~ soap:-7
 a~ soft:-7
 a~ softer:-6
 a~ spatula:-5
 a~ splash:6
 a~ spoon:-2
 a~ spoonful:-2
 a~ steel:-7
 a~ stir:-4
 a~ superfat:3
 a~ tenth:4
 a~ thermometer:-6
 a~ thin:-2
 a~ thing:-4
 a~ third:4
 a~ time:-7
 a~ tin:1
 a~ tiny:3
 a~ touch:-2
 a~ towel:-1
 a~ tray:-5
 a~ treat:-6
 a~ tub:-6
 a~ twentieth:3
 a~ typo:2
 a~ very:-6
 a~ video:-5
 a~ volcano:-3
 a~ warm:-4
 a~ water:-3
 a~ week:-8
 a~ wet:2
 a~ whole:3
 a~ wire:-2
 a~ woman:-6
 a~ year:-8
 a~ yes:-3
 a~ zap:-5
 a~%:2
 a~0:4
 a~<:7
 a~=:-7
 a~>:2
 a~A:-4
 a~F:-3
 a~K:-2
 a~L:-4
 a~N:8
 a~X:2
 a~b:3
 a~e:-9
 a~r:4
 a~t:-5
 a~w:6
 b:-1
 babcia:-5
 babi:-6
 baby:1
 back:-4
 background:-3
 back~ ::-4
 back~ a:1
 back~ and:4
 back~ for:2
 back~ in:-6
 back~ of:-4
 back~ on:-6
 back~ out:6
 back~ the:-2
 back~ till:9
 back~ to:-6
 back~ up:5
 bacon:-5
 bad:1
 badly:-2
 bag:5
 bags:-4
 bag~ of:3
 bag~ says:-2
 bak:-7
 bakery:-9
 bak~ paper:-7
 balanc:-3
 balance:4
 balanc~ ?:-3
 balcony:2
 balls:-4
 balm:-6
 bang:-8
 bang~ it:-4
 bar:-4
 bare:-6
 bare~ got:-3
 bark:1
 barn:-4
 barrel:-6
 bars:-10
 bars~ +:-8
 bars~ ::-5
 bars~ about:-1
 bars~ and:-4
 bars~ are:-4
 bars~ at:-2
 bars~ come:-3
 bars~ each:-5
 bars~ for:-6
 bars~ from:-5
 bars~ i:-2
 bars~ in:-3
 bars~ of:-6
 bars~ on:-5
 bars~ out:-6
 bars~ so:-3
 bars~ to:-5
 bars~ went:-7
 bars~ were:-4
 bars~ with:-6
 bars~0:-7
 bars~t:-3
 bars~w:-5
 bar~ ::-3
 bar~ ?:-7
 bar~ all:-4
 bar~ and:-4
 bar~ at:-3
 bar~ for:-7
 bar~ from:-7
 bar~ i:1
 bar~ in:-3
 bar~ is:3
 bar~ no:-2
 bar~ of:-7
 bar~ since:-1
 bar~ so:3
 bar~ with:4
 bar~0:-4
 basic:-4
 bastille:-8
 batch:-5
 batch~ ::-2
 batch~ and:-9
 batch~ before:-7
 batch~ but:3
 batch~ ever:2
 batch~ had:-2
 batch~ i:4
 batch~ in:1
 batch~ is:1
 batch~ log:-3
 batch~ no:-3
 batch~ of:-5
 batch~ record:-2
 batch~ sheet:-4
 batch~ that:-1
 batch~ was:-6
 batch~ with:-3
 batch~0:-7
 bath:-8
 bathroom:5
 bathroom~ scale:7
 batter:-3
 batteri:-5
 battery:4
 battery~ died:6
 bazaar:-4
 bc:8
 bc~ i:3
 be:2
 beach:-5
 beads:5
 beaker:3
 bear:-6
 beard:-4
 bear~ with:-5
 beat:-4
 became:4
 became~0:7
 because~ a:-4
 because~ he:-8
 because~ i:-2
 because~ it:6
 because~ its:-6
 because~ last:1
 because~ my:5
 because~ of:-2
 because~ she:-2
 because~ thats:1
 because~ the:3
 because~F:-7
 become:-1
 bed:-7
 bee:-7
 beech:-5
 beef:-8
 beef~=:-4
 beekeeper:-8
 been:3
 been~ at:4
 been~ in:1
 been~ mak:-6
 been~ on:-6
 been~ open:7
 been~ stand:4
 been~ told:-6
 been~t:-1
 bees:-3
 before:-1
 beforehand:-5
 before~ and:2
 before~ anyone:-6
 before~ i:-4
 before~ it:1
 before~ me:3
 before~ pour:7
 before~ saturday:-5
 before~ so:-8
 before~ that:-8
 before~ the:2
 before~ they:-6
 before~ this:-8
 before~ we:-3
 before~ weigh:-8
 before~ with:-6
 before~ you:-12
 before~t:-6
 began:-6
 begin:-6
 beginn:-2
 beginner':-8
 beginner:-11
 behav:-6
 behind:-1
 behind~ the:3
 beige:-9
 being:-2
 believe:-1
 bell:-1
 belong:-2
 belong~ to:2
 below:-3
 below~ the:-4
 below~0:2
 below~d:-6
 bench:3
 besid:4
 beside:5
 beside~ it:3
 beside~ the:-1
 best:-11
 best~ before:-6
 bet:-6
 better:-5
 better~ than:2
 between:-1
 between~ the:5
 between~0:6
 be~ ?:-6
 be~ a:7
 be~ about:-6
 be~ bother:4
 be~ clear:-6
 be~ cut:-2
 be~ exact:6
 be~ for:2
 be~ gentle:-3
 be~ honest:-2
 be~ hot:-5
 be~ in:-7
 be~ mild:-6
 be~ ok:-3
 be~ on:5
 be~ patient:-8
 be~ right:2
 be~ sure:-3
 be~ the:-5
 be~ too:-4
 be~%:-10
 be~0:4
 be~N:9
 be~b:6
 be~e:10
 be~w:6
 bicycle:-6
 big:1
 bigger:1
 bigger~ pot:-3
 bigger~ than:5
 big~ batch:-8
 big~ kettle:6
 big~ one:3
 big~ pot:-3
 bin:-3
 binn:5
 bin~ it:-4
 birds:-3
 birthday:-4
 biscuit:-7
 bit:1
 bite:-6
 bites:-2
 bits:1
 bits~ of:2
 bit~ at:-4
 bit~ by:-3
 bit~ greasy:-2
 bit~ less:1
 bit~ like:-4
 bit~ more:3
 bit~ of:2
 bit~ on:-8
 bit~ over:-7
 bit~ so:-3
 bit~ soft:-5
 bit~ the:1
 bit~ under:-1
 black:-4
 blame:-8
 blame~ the:-6
 blanket:-7
 blender:-4
 blender~ and:-6
 blender~ died:-3
 blender~t:-6
 blend~ and:-6
 blend~ at:-1
 blend~ for:-2
 blend~ pour:-2
 blend~ till:-4
 blend~ to:-3
 blend~ with:8
 blend~t:-5
 blind:2
 blob:-1
 block:1
 block~ of:1
 blog:1
 blog~ i:-2
 blood:-6
 blue:-2
 board:3
 boat:3
 boiler:-8
 boil~ down:-4
 boil~ flat:3
 boil~ in:7
 boil~ it:-5
 boil~ off:5
 boil~ over:6
 boil~ the:-2
 bonjour:-4
 bonsoir:-4
 book:-4
 book~ ::-1
 book~ says:-6
 born:-5
 borrow:-3
 boss:-2
 both:-2
 bother:-5
 bother~ to:4
 bother~ with:5
 both~ alkali:-5
 both~ are:-7
 both~ feel:-1
 both~ lyes:-2
 both~ of:2
 both~ times:-6
 both~ units:-4
 both~ were:-7
 bottl:-2
 bottle:3
 bottle~ and:4
 bottle~ before:-5
 bottle~ gave:2
 bottle~ in:-6
 bottle~ is:4
 bottle~ of:-3
 bottle~ on:-4
 bottle~ ran:-1
 bottle~ said:6
 bottle~ says:5
 bottle~ was:11
 bottle~ with:-1
 bottl~ of:-5
 bought:-4
 bought~ a:-6
 bought~ the:-6
 bought~0:-7
 bought~>:-6
 bowl:1
 bowls:3
 bowl~ and:-3
 bowl~ in:-9
 bowl~ is:-6
 bowl~ of:-1
 bowl~ on:7
 bowl~ with:-1
 bowl~w:1
 box:-2
 boxes:-4
 box~ and:-2
 box~ lined:-2
 box~ with:-4
 box~t:-1
 boy:-1
 boyfriend:-1
 boys:4
 brand:-5
 brave:-3
 bread:-2
 break:-8
 breakfast:-1
 breathe:-2
 brewery:-4
 brick:-1
 brim:-3
 bring:-11
 bring~ it:-4
 bring~ the:-8
 broke:-1
 broken:4
 brother~ in:-8
 brought:7
 brown:-8
 brown~ paper:-4
 brush:-4
 btw:3
 bubbl:-4
 bubble:-4
 bubbl~ and:1
 bucket:-4
 bucket~ of:-8
 bucket~ so:-5
 bucket~ with:-8
 burn:-7
 burnt:-3
 burst:-3
 burst~ of:-2
 bus:-4
 but:-1
 butcher:-4
 butcher~ gave:-10
 button:-5
 but~ before:-1
 but~ he:-6
 but~ here:-6
 but~ i'd:-3
 but~ i:1
 but~ im:-8
 but~ is:-6
 but~ it:-7
 but~ my:-1
 but~ no:3
 but~ not:-4
 but~ now:-3
 but~ only:-7
 but~ she:-4
 but~ that:-6
 but~ thats:-5
 but~ the:7
 but~ then:2
 but~ there:-4
 but~ they:-6
 but~ this:-1
 but~ those:-4
 but~ what:3
 but~F:-9
 buy~ the:-1
 by:1
 by~ ::-7
 by~ a:8
 by~ accident:3
 by~ bit:-3
 by~ easter:-6
 by~ eye:10
 by~ hand:-7
 by~ it:-5
 by~ itself:2
 by~ me:-5
 by~ mistake:6
 by~ modern:-3
 by~ my:2
 by~ noon:-4
 by~ spoon:-6
 by~ the:3
 by~ then:-4
 by~ today:-3
 by~ volume:2
 by~ week:-6
 by~ weight:-4
 by~<:7
 by~N:-4
 by~b:-2
 by~t:-6
 by~w:-4
 b~ ::3
 b~A:-4
 b~F:-6
 c:-5
 cake:-1
 cakes:-5
 calculat:-1
 calculate:2
 calculator:-7
 call:4
 calls:-11
 calls~ it:-6
 call~ it:5
 call~ that:2
 call~ the:-1
 call~F:5
 came~ back:3
 came~ from:-1
 came~ in:-3
 came~ off:1
 came~ out:-1
 came~ to:8
 came~ up:2
 can:-1
 candl:-7
 candle:-1
 candle~B:-3
 candl~ and:-6
 canister:-1
 cannot:-6
 cans:-2
 cant:3
 cant~ be:-1
 cant~ find:3
 cant~ get:-7
 cant~ remember:6
 cant~ say:-2
 cant~ stand:6
 can~ and:1
 can~ anyone:-2
 can~ be:-2
 can~ bear:-4
 can~ is:3
 can~ of:5
 can~ see:2
 can~ somebody:-6
 can~ someone:5
 can~ stand:-7
 can~ still:-5
 can~ tell:-2
 can~ the:-2
 can~ u:1
 can~ use:-6
 can~ you:2
 cap:-2
 capping:-7
 car:-8
 caramel:-4
 carbonate:6
 card:-1
 cardboard:1
 card~ for:-4
 card~ is:3
 card~ no:-4
 care:1
 caretaker:-7
 carpet:-3
 carri:6
 carri~ it:4
 carri~ on:4
 carry:-8
 carton:-3
 cast:-7
 castile:-6
 cat:-2
 cat~ got:6
 cat~ had:1
 cat~ has:-7
 cat~ is:-4
 caught:1
 cauldron:-2
 caviti:-7
 ceil:-7
 cell:2
 cellar:-11
 certain:3
 certifi:-10
 certificate:5
 chair:-5
 chang:-4
 change:-3
 change~ the:-4
 chang~ ::5
 chang~ my:7
 chang~ the:-7
 charg:-3
 charge:-4
 chat:-5
 cheap:-8
 cheaper:-6
 cheaper~ than:-8
 check:-4
 check~ ::-1
 check~ before:1
 check~ by:-8
 check~ it:-7
 check~ me:-2
 check~ my:-8
 check~ out:-4
 check~ please:-5
 check~ pls:-4
 check~ that:-7
 check~ the:-5
 check~ this:-4
 check~A:-6
 cheese:-3
 cheese~ wire:-5
 chemist:-7
 chemistry:-3
 chemistry~ teacher:3
 child:-8
 children:-6
 chill:-7
 chip:3
 chips:4
 chisel:-4
 choir:1
 choose:-4
 chopp:-2
 christma:-6
 christma~0:-6
 chuck:4
 chuck~ in:7
 church:-8
 claim:-2
 clarity:-6
 class:-3
 class~ ::-5
 class~ i:-5
 clean:-5
 clean~ the:-6
 clean~ up:1
 clean~F:-5
 clear:-9
 clearer:1
 clear~ after:-2
 clear~ and:-5
 clear~ as:-9
 clear~ at:-7
 clear~ in:-6
 climb:-9
 climb~ out:-3
 climb~ to:-6
 cling:-4
 cling~ film:-4
 cling~ to:3
 clock:-4
 clos:-2
 close:-3
 close~ to:-5
 cloth:-6
 cloud:4
 cloudy:-2
 cloudy~ for:-4
 club:-2
 clubs:-4
 clump:1
 co:-1
 coat:-6
 coins:3
 cold:-7
 cold~ and:-1
 cold~ from:-7
 cold~ press:-5
 cold~ proces:-5
 cold~L:6
 cold~W:-5
 colleague:-6
 colloidal:2
 colour:-10
 column:-6
 com:4
 combin:3
 combine:-2
 combine~ blend:-2
 comes~ by:1
 comes~ from:-4
 comes~ in:2
 comes~ out:3
 comes~ to:1
 come~ back:-7
 come~ down:-4
 come~ off:-1
 come~ out:2
 come~ to:5
 comma:1
 comma~ is:-7
 comment:-8
 compar:-3
 compare:-9
 compar~ with:1
 complain:-4
 complaint:-7
 complain~ about:-4
 complete:2
 computer:-3
 confetti:-4
 confirm:-9
 confirm~ the:-6
 confus:1
 contain:6
 convert:-10
 cook:2
 cooker:-2
 cooker~ ::-3
 cooker~ before:3
 cooker~ is:-5
 cooker~ on:-3
 cooks:-2
 cook~ ::-6
 cook~ ?:-6
 cook~ about:1
 cook~ and:-1
 cook~ at:-4
 cook~ for:-3
 cook~ i:-3
 cook~ in:-7
 cook~ is:5
 cook~ it:1
 cook~ on:-4
 cook~ once:-3
 cook~ part:-6
 cook~ so:6
 cook~ the:-6
 cook~ until:-1
 cook~ was:-11
 cook~ when:-7
 cook~ with:1
 cook~=:-1
 cook~F:-7
 cook~t:-5
 cool:-4
 cools:-7
 cool~ down:-1
 cool~ i:-3
 cool~ it:-5
 cool~ the:-8
 cool~ to:-3
 cool~ under:-4
 copi:2
 copi~ from:3
 copi~ it:-2
 copi~ off:2
 copi~ out:-6
 copi~ straight:-7
 copi~ the:-1
 copy:1
 cork:-6
 corner:-11
 correct:1
 correction:6
 correct~ ?:-2
 correct~ or:-3
 cos:7
 cost:-6
 costs:-14
 costs~ me:-2
 costs~0:-5
 costs~t:-7
 cost~ ::-8
 cost~ eur:-2
 cost~ me:-5
 cost~ per:-2
 cost~ sheet:-5
 cost~0:-5
 cost~t:-3
 could:-1
 couldnt:6
 couldnt~ be:8
 couldnt~ get:7
 couldnt~ tell:1
 could~ be:10
 could~ have:-5
 could~ not:7
 could~ someone:-5
 could~ the:-7
 could~ you:-2
 council:-6
 count:2
 counter:5
 country:3
 county:-4
 count~ in:-2
 count~ it:6
 count~ the:-3
 count~ with:5
 course:-7
 course~ i:-4
 course~ in:-3
 cousin:-1
 cover:-5
 cover~ it:-5
 cover~ with:-6
 cow:2
 cows:-6
 cp:-5
 crack:-3
 crackling:1
 crack~ on:-6
 craft:-1
 crate:-7
 creamy:-7
 cried:-8
 crisp:-5
 crisp~ tube:-5
 crock:-2
 crockpot:-3
 crock~ pot:2
 cross:-2
 cross~ out:-1
 crumb:-2
 crumbl:-6
 crumble:-5
 crumb~ and:7
 crumb~ at:3
 crush:-6
 crust:8
 crystal:-3
 cubes:-7
 cubes~ and:-3
 cubes~ of:1
 cubes~ the:-6
 cubes~w:-4
 cup:2
 cupboard:-1
 cupboard~ and:3
 cupcake:-8
 cups:-4
 cup~ and:-6
 cup~ on:1
 cup~ weigh:-2
 cup~ with:-6
 cur:-7
 cure:-8
 cured:-5
 cure~ ::-3
 cure~ for:-4
 cure~ till:-3
 cure~ until:-1
 cure~t:-1
 curry:-5
 custard:-7
 customer:-10
 cuts:-7
 cutt:-6
 cutter:-9
 cut~ ::-4
 cut~ after:-3
 cut~ at:-7
 cut~ in:-3
 cut~ into:-6
 cut~ it:2
 cut~ next:-2
 cut~ off:-1
 cut~ on:-4
 cut~ the:7
 cut~ them:-2
 cut~ too:-4
 cut~ with:-5
 cut~0:-6
 cut~b:-5
 cut~t:-2
 c~ ::-3
 c~ at:-3
 c~0:-7
 d:-5
 dad:-5
 dads:-2
 dads~t:-2
 dag:-2
 dag~ ::-1
 dairy:5
 damp:6
 dare:2
 dark:-9
 das:-8
 date:-6
 dates:-8
 date~ ::-2
 date~t:-6
 daughter':-9
 daughter:2
 daughter~ who:-6
 day:-3
 days:-6
 day~ and:-3
 day~ at:-5
 day~ before:3
 day~ i:-4
 day~ it:-7
 day~ so:3
 day~ then:-5
 day~0:-6
 day~t:-5
 de:-5
 dead:-4
 deal:6
 dear:2
 dear~ all:3
 dear~ group:-4
 december:-6
 decent:-6
 decid:1
 decimal:-7
 deep:3
 degre:-7
 demineralis:-7
 dent:-9
 deodoris:-9
 diary:-4
 dictat:2
 dictat~ this:-3
 did:4
 didnt:5
 didnt~ weigh:5
 did~ for:-1
 did~ i:-3
 did~ in:-11
 did~ my:-1
 did~ not:4
 did~ that:1
 did~ the:3
 did~ you:-7
 did~=:-3
 died:1
 died~ at:4
 difference:-5
 different:-7
 digit:-1
 digital:-7
 dilut:-5
 dilute:-8
 dilution:4
 dinner:2
 disaster:-9
 discount:2
 dish~ soap:6
 display:6
 dissolv:4
 dissolve:4
 dissolve~ it:-7
 dissolve~ the:4
 dissolve~=:-7
 dissolv~ in:1
 dissolv~ the:-1
 dissolv~ together:-1
 dissolv~<:2
 dissolv~=:-4
 do:-4
 doctor:-9
 does:-5
 doesnt:-2
 doesnt~ mind:-5
 doesnt~ smell:-4
 does~ anybody:-4
 does~ anyone:2
 does~ her:-3
 does~ hers:1
 does~ it:-3
 does~ my:-6
 does~ not:-4
 does~ the:-3
 does~ this:-1
 does~%:-8
 does~F:-5
 does~b:-6
 does~w:2
 dog:1
 dogs:-7
 dog~ got:9
 doing:2
 doing~ it:-5
 doing~ the:2
 doing~ this:2
 done:-6
 dont:-3
 dont~ ask:6
 dont~ be:-7
 dont~ care:3
 dont~ get:5
 dont~ know:6
 dont~ laugh:-2
 dont~ panic:-6
 dont~ trust:-5
 dont~ want:-8
 door:-4
 doorbell:3
 doors:-8
 dos:-2
 dose:8
 dose~ of:9
 dot:-6
 doubl:9
 double:-7
 double~ boiler:-7
 double~ check:-2
 doubt:1
 down:2
 down~ and:-3
 down~ by:5
 down~ from:1
 down~ the:-1
 down~ with:6
 do~ ?:-6
 do~ a:-6
 do~ for:-5
 do~ i:4
 do~ in:-9
 do~ it:-2
 do~ not:-5
 do~ the:-5
 do~ this:-5
 do~ we:-5
 do~ with:3
 do~ you:-6
 do~F:-3
 draft:-6
 drag:-7
 drain:5
 drama:-4
 drank:6
 draw:1
 drawer:-4
 drawer~ lined:-2
 drawn:4
 dream:-5
 drew:-6
 dried:-2
 drill:-4
 drink:-4
 drip:-8
 drips:-9
 dropp:4
 dropp~ below:-4
 dropp~ the:1
 drops~ of:2
 drop~ of:3
 drop~ the:-5
 drop~ to:-4
 drove:-2
 drown:-6
 drum:6
 dry:3
 dry~ cup:-3
 dry~ hands:5
 dry~ skin:-9
 dry~ so:2
 dry~ until:2
 duck:-8
 dump:-3
 dur:5
 dust:4
 e:-5
 each:-1
 each~ and:-5
 each~ of:-5
 each~ time:-1
 earlier:-4
 early:-9
 easier:-7
 easter:-6
 easy:-7
 eat:-2
 eats:-8
 eczema:3
 edge:-3
 edges:-2
 edit:1
 edition:1
 edit~ ::3
 either:6
 elbow:-5
 else:1
 else~ in:1
 else~ no:-3
 empti:3
 empty:-3
 empty~ and:-4
 emulsion:-7
 enamel:-9
 enamel~ pot:-6
 end:3
 ended:7
 ended~ up:-1
 ends:-10
 end~ ?:-5
 end~ after:2
 end~ and:3
 end~ i:-1
 end~ is:-10
 end~ it:7
 end~ of:-2
 end~ piece:-6
 end~ so:1
 english:-5
 english~ i:-6
 english~ is:-4
 enough:-2
 enough~ ?:-5
 enough~ for:-4
 enough~ or:-6
 enough~ to:-3
 entire:-4
 entry:-3
 envelope:-4
 equal:1
 equal~ parts:1
 equal~ weight:-6
 error:-3
 eur:-4
 euro:-6
 even:-7
 evening:-5
 even~ all:-4
 even~ class:-4
 even~ in:-4
 ever:-10
 every:-6
 everybody:-10
 everyday:-4
 everyday~ bar:-4
 everyone:-6
 everyone~ who:1
 everyth:5
 everyth~ ::-3
 everyth~ and:-5
 everyth~ at:1
 everyth~ else:1
 everyth~ in:-5
 everyth~ is:2
 everyth~ was:-3
 everywhere:-4
 every~ one:4
 every~ time:2
 every~t:-5
 ex:-5
 exact:-8
 exact~ as:-10
 exact~ one:-1
 exam:-6
 except:7
 except~ for:-1
 except~ that:-4
 except~ the:4
 exces:3
 excuse:-6
 excuse~ my:-3
 excuse~ the:-6
 expect:-5
 expensive:-4
 explain:-1
 export:-4
 export~ from:-3
 extra:6
 extra~ fat:7
 extra~ virgin:-6
 extra~A:-4
 extra~F:-4
 eye:8
 eyebrow:-8
 eyes:-5
 eyes~ on:-1
 eye~ over:-2
 f:-6
 face:-6
 faces:-7
 face~ bar:-4
 facial:2
 facial~ bar:-5
 fact:5
 faded:-9
 fades:-4
 fail:4
 fails:-3
 fail~ me:-3
 faint:-7
 faint~ of:-6
 fair:3
 fair~ ::-4
 falls:-6
 false:-6
 false~ trace:-6
 famili:-7
 fan:-5
 fancy:5
 far:-4
 farm:-1
 farm~ shop:4
 far~ as:-4
 far~ too:1
 fast:-8
 faster:2
 faster~ than:-6
 fat:4
 father:-2
 father~ in:3
 fats:1
 fats~ ::-4
 fats~ ?:-4
 fats~ and:-1
 fats~ are:-4
 fats~ at:-5
 fats~ in:-8
 fats~ is:-4
 fats~ melt:-1
 fats~ or:-5
 fats~ were:-6
 fat~ ::1
 fat~ ?:-6
 fat~ and:2
 fat~ g:-4
 fat~ grams:-5
 fat~ in:-3
 fat~ is:1
 fat~ left:3
 fat~ of:-6
 fat~ so:-1
 fat~ was:-7
 fault:2
 favour:1
 february:-8
 feed:1
 feed~ store:3
 feels:-7
 feels~ a:-5
 feels~ like:-7
 feel~ the:-1
 feet:2
 fell:-2
 fell~ in:1
 fell~ on:1
 felt:-1
 felt~ like:-3
 fence:-5
 fete:1
 few:5
 field:-8
 fifth:2
 fifth~ of:7
 fig:-5
 fight:3
 figure:7
 file:2
 files:-4
 fill:2
 fills:-7
 fills~ my:-8
 fills~ the:-1
 fills~0:-4
 fill~ in:-5
 fill~ the:5
 fill~ to:2
 fill~ up:4
 fill~0:1
 film:-7
 film~ on:-5
 filter:-2
 final:-2
 find:7
 finds:-5
 find~ the:2
 find~F:2
 fine:-6
 finer:-4
 fine~ ?:-5
 fine~ and:-2
 fine~ but:-5
 fine~ for:-6
 fine~ or:-6
 finish:3
 finish~ paste:-7
 finish~ with:6
 fire:-8
 firm:7
 firmer:-2
 first:-6
 first~ ::-1
 first~ and:-2
 first~ attempt:-8
 first~ ever:-4
 first~ go:-2
 first~ hour:-2
 first~ i:1
 first~ it:-3
 first~ lot:4
 first~ one:-2
 first~ so:8
 first~ soap:-1
 first~ the:-3
 first~ then:-9
 first~ time:4
 first~ to:-4
 first~ try:-4
 first~ went:-2
 first~0:3
 first~F:-1
 first~t:4
 fish:-1
 fish~ out:1
 fit:-3
 fits:-4
 fits~ the:-5
 fit~ ?:1
 fit~ the:3
 fixed:-11
 fizz:-1
 flak:4
 flake:9
 flame:-6
 flat:1
 flatmate:-1
 flat~ and:-4
 flat~ boil:2
 flat~ for:1
 flat~ in:-6
 float:-3
 float~ an:-4
 floor:3
 floor~ and:-4
 fluid:4
 fluid~ ounc:8
 foam:-5
 foams:-8
 foam~ from:-5
 foam~ over:6
 fold:-2
 folder:-7
 fold~ in:1
 folk:-9
 folks:-7
 follow:-1
 forever:-6
 forever~ to:-5
 forgett:-1
 forget~ the:-1
 forgiv:-9
 forgive:-5
 forgot:5
 forgotten:4
 forgot~ it:2
 forgot~ the:-1
 forgot~ to:3
 form:-7
 formula:-4
 forum:-9
 for~ a:-3
 for~ about:2
 for~ after:2
 for~ ages:-1
 for~ all:-2
 for~ an:-4
 for~ babi:-7
 for~ baby:4
 for~ both:4
 for~ candl:-7
 for~ christma:-2
 for~ days:-6
 for~ each:4
 for~ floor:-3
 for~ free:4
 for~ fry:-2
 for~ gram:5
 for~ half:5
 for~ hands:1
 for~ her:1
 for~ his:-4
 for~ it:-5
 for~ laundry:3
 for~ looks:-4
 for~ luck:5
 for~ me:1
 for~ more:1
 for~ my:1
 for~ next:-4
 for~ no:5
 for~ noth:-6
 for~ once:7
 for~ one:4
 for~ our:-2
 for~ people:-4
 for~ read:-4
 for~ salad:-10
 for~ saturday:3
 for~ shav:-4
 for~ skin:-9
 for~ soap:-7
 for~ some:-6
 for~ that:-1
 for~ the:2
 for~ these:1
 for~ this:-2
 for~ those:-4
 for~ today:2
 for~ us:1
 for~ wash:-2
 for~ what:3
 for~ word:-7
 for~ years:-3
 for~ you:-8
 for~ your:2
 for~%:6
 for~0:-6
 for~=:-5
 for~>:1
 for~A:-1
 for~B:-2
 for~F:1
 for~L:-6
 for~N:-5
 for~S:-9
 for~T:-6
 for~W:-1
 for~X:1
 for~b:-1
 for~d:-8
 for~e:-6
 for~t:-7
 for~v:-3
 found:7
 found~ a:1
 found~ it:5
 found~ on:2
 found~ out:4
 found~ the:6
 found~ this:-7
 fractionat:11
 fram:-9
 free:-1
 freeze:-5
 freezer:-2
 freezer~ for:-7
 freezer~ in:-2
 freezer~ paper:-4
 freeze~ the:-6
 fresh:-1
 friday:3
 friday~ and:-4
 fridge:-2
 fridge~ for:-6
 fridge~ overnight:-7
 fried:2
 friend':-4
 friend:-6
 friend~ says:-6
 friend~ who:5
 frighten:-5
 from~ ::-8
 from~ a:2
 from~ an:-4
 from~ another:-1
 from~ before:-2
 from~ graz:-3
 from~ it:-3
 from~ krakow:-2
 from~ last:-6
 from~ me:-4
 from~ my:-4
 from~ our:1
 from~ portugal:1
 from~ sunday:8
 from~ that:1
 from~ what:-6
 from~ work:3
 from~0:-4
 from~=:-2
 from~F:-5
 from~L:-7
 from~t:-9
 from~w:-8
 front:-1
 front~ of:-7
 froze:3
 frozen:-1
 frozen~ cubes:-3
 frozen~ in:1
 frozen~ to:-7
 frozen~w:-10
 froze~ it:2
 fruit:-5
 fry:2
 fryer:4
 full:7
 fully:-1
 full~ of:-3
 fume:-6
 fumes:-9
 fun:-11
 funnel:2
 funny:-5
 further:5
 fwd:-2
 fwd~ ::-2
 f~0:-6
 g:-4
 garage:-8
 garden:-6
 gas:-6
 gate:-7
 gave:3
 gave~ me:5
 gave~ out:8
 gave~ the:1
 gave~ up:5
 gave~ us:1
 gave~0:-8
 gel:-3
 gell:-3
 gel~ ::-4
 gel~ phase:-6
 generou:5
 gent:-7
 gentle:-2
 gentler:5
 german:-4
 get:-4
 gets:-5
 gets~ a:2
 gets~ the:-6
 gets~0:-3
 gett:-7
 get~ a:3
 get~ it:4
 get~ the:2
 get~ to:-8
 get~0:-6
 get~F:3
 ghana:-7
 gift:-8
 gifts:-5
 girl:-2
 giv:-9
 give:-3
 given:-4
 gives:-9
 gives~ me:-6
 gives~ the:-6
 gives~%:5
 gives~0:-7
 give~ it:-6
 give~ me:1
 give~ or:4
 give~ the:-3
 give~ to:-2
 glad:-1
 glass:-2
 glass~ and:6
 glass~ of:6
 glossy:-3
 glov:-9
 glov~ and:-4
 glov~ on:-5
 glug:6
 glug~ of:4
 go:-1
 goat:2
 goats:-2
 goats~ are:2
 goes:-6
 goes~ away:-3
 goes~ into:-5
 goes~ off:-5
 goes~ on:-8
 goes~ up:-8
 goggl:-10
 goggl~ and:-4
 goggl~ on:-3
 going:3
 going~ by:-5
 going~ in:4
 going~ to:-1
 gone:4
 gone~ after:-5
 gone~ by:-10
 gone~ in:1
 gone~ to:-1
 gone~ up:-2
 gonna:4
 good:-1
 good~ ?:-4
 good~ bit:9
 good~ day:-4
 good~ enough:-1
 good~ even:-3
 good~ for:-7
 good~ glug:6
 good~ morn:-5
 good~ one:-5
 good~ or:-2
 good~ pot:-2
 good~ to:-2
 good~F:-10
 good~t:-6
 goose:4
 got:5
 got~ a:-5
 got~ in:-2
 got~ into:6
 got~ it:-1
 got~ my:-7
 got~ round:5
 got~ swapp:1
 got~ the:-4
 got~ to:5
 got~ too:1
 got~ wet:3
 got~0:-5
 got~=:-4
 got~S:-3
 got~b:3
 go~ ?:-3
 go~ at:4
 go~ by:3
 go~ clear:1
 go~ into:-9
 go~ on:-8
 go~ out:2
 go~ over:-5
 go~ rancid:-6
 go~ to:-3
 go~ up:3
 go~ with:10
 go~ wrong:-4
 grabb:6
 grade:4
 grain:-6
 grainy:-6
 gram:-3
 gramm:-9
 grams:-1
 grams~ ::-8
 grams~ and:-2
 grams~ cost:-2
 grams~ for:-1
 grams~ i:5
 grams~ so:-10
 grams~A:-4
 gram~ for:5
 grand:-5
 grandad:5
 granddad:1
 granddaughter:-5
 grandma:1
 grandmother:-7
 grandmother~ had:-2
 grandpa:2
 grandson:5
 granny:-2
 grans:-5
 grat:1
 grate:-2
 grateful:-1
 grate~ the:-6
 gravy:-1
 graz:-6
 greas:-1
 grease:-3
 greasy:1
 great~ aunt:-2
 green:-5
 green~ and:3
 green~ one:-2
 greeting:-5
 greeting~ from:-6
 grey:-2
 grind:-4
 grind~ the:-2
 grocer:-4
 ground:-8
 group:2
 group~ ::-3
 group~ of:-5
 grown:4
 guess:9
 guess~ the:-2
 guest:-9
 guild:-8
 g~ ::-6
 g~ cost:-2
 g~ oz:-3
 g~e:-8
 ha:2
 habit:2
 had:2
 hadnt:8
 had~ a:-7
 had~ already:8
 had~ been:4
 had~ come:4
 had~ cool:-5
 had~ dropp:-2
 had~ gone:8
 had~ in:-3
 had~ it:4
 had~ melt:4
 had~ no:-3
 had~ only:-1
 had~ set:1
 had~ some:-2
 had~ that:-1
 had~ the:-3
 had~ to:-5
 had~0:-5
 had~<:-6
 had~=:1
 had~>:-5
 had~F:2
 had~N:-4
 had~X:4
 had~b:8
 hair:-1
 half:5
 halfway:-6
 halfway~ through:3
 half~ a:4
 half~ and:-5
 half~ as:3
 half~ batch:6
 half~ is:3
 half~ of:2
 half~ size:3
 half~ the:-1
 half~A:-7
 half~F:1
 half~I:-4
 half~W:-6
 hall:-6
 hallo:-2
 hallo~ my:-2
 halv:7
 halve:-2
 halv~ it:-6
 hammer:4
 hand:-2
 handful:1
 handful~ of:-6
 handle:-3
 handout:2
 handout~0:-5
 hands~ ?:-4
 hands~ are:2
 handwrit:4
 handy:-7
 hand~ ::1
 hand~ and:-1
 hand~ in:-5
 hand~ on:3
 hand~ out:-6
 hand~ soap:-5
 hand~ warm:-1
 hand~ with:-4
 hang:5
 hangs:-5
 happen:1
 happy:-3
 happy~ with:-5
 hard:-6
 harden:-7
 harder:-5
 harder~ bar:-5
 hardnes:-6
 hardware:-2
 hardware~ store:-5
 hard~ after:-1
 hard~ and:-5
 hard~ any:-7
 hard~ as:-6
 hard~ smell:-4
 hard~ to:6
 hard~W:-7
 harm:-6
 harsh:-10
 has:2
 hasnt:-5
 has~ a:1
 has~ anyone:-5
 has~ become:-2
 has~ cool:-7
 has~ done:-6
 has~ it:2
 has~ made:-3
 has~ moved:-6
 has~ no:-3
 has~ the:4
 has~ to:-5
 has~=:-5
 has~F:6
 has~N:-1
 hate:-3
 hav:-2
 have:-1
 havent:3
 have~ a:-9
 have~ asked:2
 have~ been:-1
 have~ done:-1
 have~ enough:2
 have~ gone:3
 have~ had:3
 have~ i:-7
 have~ it:2
 have~ made:-5
 have~ never:1
 have~ no:-4
 have~ not:-7
 have~ the:3
 have~ to:-10
 have~ used:-3
 have~0:-4
 have~=:-6
 have~>:-5
 have~F:3
 hdpe:-6
 he:-3
 head:-1
 heap:9
 heap~ spoon:1
 heard:3
 heart:-3
 heat:-12
 heats:-6
 heats~ up:-4
 heat~ and:-3
 heat~ i:-3
 heat~ off:-3
 heat~ the:-5
 heaven:-6
 heavy:4
 heavy~ ?:-6
 heavy~ or:-6
 hed:4
 height:-6
 held:9
 held~ the:2
 hell:-3
 hello:-4
 hello~ from:-1
 help:5
 helps:-2
 help~ with:2
 hence:-4
 hence~ the:-10
 hens:-8
 her:-5
 heres:-7
 heres~ my:-1
 heres~ the:-5
 heres~ what:-7
 here~ ::-2
 here~ and:-5
 here~ goes:-3
 here~ i:4
 here~ in:-5
 here~ is:1
 here~ it:-6
 here~ so:-4
 here~ we:-9
 hers:-12
 herself:-7
 hers~ and:-5
 hers~ with:-8
 her~ hands:-6
 her~ life:-5
 her~ own:-3
 her~ soap:-5
 her~A:-5
 her~F:-10
 hes:3
 hey:-5
 he~ also:-8
 he~ has:-3
 he~ is:-8
 he~ says:3
 he~ was:-7
 hid:-10
 high:-6
 him:-6
 himself:4
 his:-6
 hiss:2
 his~A:-6
 hit:2
 hit~ it:-8
 hive:-7
 hives:-5
 hiya:2
 hi~ everyone:-5
 hm:1
 hmm:4
 hob:-1
 hola:-2
 holds:-5
 holds~ a:3
 holds~0:-3
 holds~v:-8
 holds~w:-7
 hold~ ?:-3
 hold~ back:4
 hold~ the:3
 hold~ up:-3
 hole:-5
 holes:-8
 holiday:-10
 home~ and:5
 honest:5
 hood:-7
 hope:2
 hope~ it:-5
 hope~ the:-3
 hot:-8
 hotter:-6
 hotter~ than:-4
 hot~ or:-5
 hour:-3
 hour~ and:-5
 hour~ then:-2
 hour~0:1
 house:5
 house~ smell:-5
 how:1
 how~ does:-3
 how~ i:3
 how~ it:-1
 how~ long:-7
 how~ many:-6
 how~ much:8
 how~ my:-7
 how~ the:-8
 how~ to:-9
 how~ we:-6
 hp:-4
 hp~ in:-3
 hubby:2
 huge:5
 humidity:-1
 humidity~%:-4
 hurry:-4
 hurt:-2
 hurts:-5
 husband:3
 husband~ says:-6
 husband~ think:-9
 husband~ who:-8
 hydrogenat:1
 i'd:1
 i'd~ already:4
 i'd~ be:-7
 i'd~ guess:8
 i'd~ have:-8
 i'd~ like:4
 i'd~ love:-5
 i'd~ never:-6
 i'd~ pour:-1
 i'd~ put:3
 i'd~ rather:-1
 i'd~ read:5
 i'd~ say:4
 i'd~ use:-6
 i'd~ weigh:2
 i:3
 idea:-2
 idea~ which:5
 idk:5
 ie:7
 ie~=:-7
 if:-3
 if~ anyone:-2
 if~ i:1
 if~ im:4
 if~ it:4
 if~ its:-3
 if~ my:1
 if~ somebody:-7
 if~ that:4
 if~ the:-5
 if~ ther:-6
 if~ this:3
 if~ ur:-8
 if~ you:-4
 if~ your:-8
 if~ youre:-7
 if~ yours:-5
 if~ youve:-7
 if~A:-5
 if~F:-7
 if~b:-5
 ignore:6
 ignore~ the:7
 ill:1
 ill~ do:-4
 im:2
 impatient:-7
 im~ a:-2
 im~ after:7
 im~ at:-10
 im~ doing:-3
 im~ going:2
 im~ in:-7
 im~ mak:3
 im~ not:2
 im~ on:2
 im~ told:-3
 im~ using:6
 im~0:-4
 in:1
 inch:2
 includ:4
 includ~ the:10
 individual:-7
 individual~ mould:-7
 infus:5
 infus~ with:5
 ingredient:-4
 ingredient~ g:-3
 ingredient~ grams:-4
 ingredient~ oz:-6
 ingredient~ weight:-3
 inside:-4
 insist:7
 instant:-3
 instead:4
 instead~ of:-1
 instruction:1
 insulate:-9
 internet:-3
 into:-1
 into~ a:-8
 into~ cubes:-6
 into~ it:1
 into~ mould:-3
 into~ oils:-3
 into~ one:-7
 into~ that:4
 into~ the:3
 into~ this:6
 into~0:-5
 into~=:-4
 into~W:-7
 into~v:-4
 in~ ::1
 in~ ?:5
 in~ a:-2
 in~ about:-1
 in~ after:6
 in~ all:-8
 in~ an:-6
 in~ and:-2
 in~ another:7
 in~ april:-7
 in~ as:2
 in~ at:2
 in~ august:1
 in~ batch:-4
 in~ before:8
 in~ between:-6
 in~ blend:-7
 in~ burst:-2
 in~ by:1
 in~ case:-7
 in~ class:1
 in~ cold:-7
 in~ cubes:-6
 in~ dag:-2
 in~ each:-5
 in~ every:-3
 in~ fact:4
 in~ first:-4
 in~ for:10
 in~ front:-8
 in~ g:1
 in~ grams:-10
 in~ half:2
 in~ her:-9
 in~ hers:-8
 in~ his:-7
 in~ hot:-7
 in~ i:5
 in~ it:1
 in~ its:7
 in~ january:-5
 in~ july:-5
 in~ june:-7
 in~ last:-1
 in~ law:-2
 in~ laws:-4
 in~ march:-10
 in~ maybe:4
 in~ mould:-5
 in~ my:-1
 in~ no:-8
 in~ october:-1
 in~ ohio:-6
 in~ on:-6
 in~ once:11
 in~ one:3
 in~ or:3
 in~ order:-6
 in~ ounc:-1
 in~ our:4
 in~ place:1
 in~ plus:-5
 in~ red:2
 in~ short:-5
 in~ slow:-2
 in~ small:-6
 in~ so:6
 in~ spr:-6
 in~ step:-5
 in~ steps:5
 in~ summer:-7
 in~ that:2
 in~ the:-2
 in~ there:6
 in~ this:1
 in~ time:1
 in~ tiny:6
 in~ to:-4
 in~ too:2
 in~ total:-6
 in~ truth:2
 in~ under:-3
 in~ week:-4
 in~ went:6
 in~ when:-4
 in~ which:1
 in~ winter:-3
 in~ with:5
 in~ your:-1
 in~0:-6
 in~<:2
 in~=:-5
 in~>:-3
 in~F:-3
 in~I:-7
 in~L:1
 in~N:7
 in~W:-4
 in~b:-8
 in~e:2
 in~l:-1
 in~r:-5
 in~t:-6
 in~v:-10
 in~w:1
 ish:-6
 isnt:6
 isnt~ in:4
 isnt~ it:5
 issue:-2
 is~ a:2
 is~ about:-6
 is~ actual:3
 is~ all:-2
 is~ already:1
 is~ alway:-1
 is~ an:4
 is~ and:-5
 is~ as:-2
 is~ at:-5
 is~ below:-4
 is~ cheap:-6
 is~ clear:-4
 is~ correct:-8
 is~ dear:-1
 is~ done:2
 is~ dry:4
 is~ enough:-5
 is~ exact:-8
 is~ fine:-9
 is~ finish:1
 is~ for:-4
 is~ from:1
 is~ going:4
 is~ gone:-6
 is~ good:-9
 is~ grams:2
 is~ hard:-1
 is~ her:-3
 is~ hot:-5
 is~ in:3
 is~ it:-3
 is~ just:-8
 is~ left:-2
 is~ like:-2
 is~ love:-3
 is~ meant:-3
 is~ mine:-7
 is~ more:-3
 is~ my:-1
 is~ near:-7
 is~ no:-6
 is~ normal:-6
 is~ not:-3
 is~ noth:-2
 is~ now:6
 is~ off:3
 is~ ok:-7
 is~ okay:-1
 is~ on:1
 is~ one:3
 is~ only:-11
 is~ our:-5
 is~ out:2
 is~ over:2
 is~ plenty:1
 is~ real:10
 is~ right:2
 is~ safe:-2
 is~ she:-2
 is~ short:2
 is~ small:-4
 is~ so:-1
 is~ sold:4
 is~ step:-2
 is~ still:1
 is~ technical:9
 is~ that:-4
 is~ the:-3
 is~ there:-4
 is~ thick:-5
 is~ this:-8
 is~ to:1
 is~ too:1
 is~ weigh:-3
 is~ what:4
 is~ where:-9
 is~ whether:-7
 is~ why:-7
 is~ with:11
 is~ worth:-5
 is~ written:-1
 is~0:4
 is~<:-5
 is~=:-5
 is~>:-6
 is~A:-1
 is~F:6
 is~L:3
 is~N:9
 is~S:1
 is~T:-7
 is~b:5
 is~d:-2
 is~e:-6
 is~l:-1
 is~t:-9
 is~v:-2
 it:2
 itch:-2
 item:-3
 item~ grams:-3
 itll:-3
 itll~ be:1
 its:1
 itself:-5
 itself~ off:-1
 its~ a:3
 its~ about:-6
 its~ all:-2
 its~ as:-8
 its~ been:-6
 its~ clear:-6
 its~ cook:6
 its~ date:-2
 its~ fine:-5
 its~ for:6
 its~ gone:2
 its~ hot:-5
 its~ in:-4
 its~ just:-6
 its~ like:-1
 its~ made:4
 its~ meant:-1
 its~ my:1
 its~ not:-4
 its~ on:-7
 its~ only:-3
 its~ own:-4
 its~ place:5
 its~ ready:-7
 its~ sitt:-5
 its~ the:-2
 its~ time:-5
 its~ too:1
 its~ weight:-7
 its~ what:5
 its~0:8
 its~=:-6
 its~A:5
 its~N:6
 its~b:-2
 its~d:-6
 its~l:3
 its~t:1
 it~ ::-7
 it~ ?:-3
 it~ a:2
 it~ about:-6
 it~ add:-5
 it~ after:-2
 it~ alone:-7
 it~ already:2
 it~ and:-2
 it~ another:3
 it~ anyway:-10
 it~ as:-3
 it~ at:1
 it~ away:-4
 it~ back:-2
 it~ bad:7
 it~ be:3
 it~ because:3
 it~ before:-4
 it~ behav:-4
 it~ bit:5
 it~ but:-7
 it~ came:-1
 it~ can:-6
 it~ check:-8
 it~ clear:-3
 it~ climb:-4
 it~ come:-4
 it~ comes:3
 it~ cooks:-3
 it~ cool:1
 it~ cools:-5
 it~ correct:-5
 it~ cost:-4
 it~ crack:-5
 it~ crumbl:-1
 it~ cut:-4
 it~ did:-6
 it~ didnt:2
 it~ do:-4
 it~ does:-1
 it~ doesnt:1
 it~ down:2
 it~ dried:3
 it~ drop:-4
 it~ enough:-4
 it~ every:-5
 it~ first:1
 it~ fits:-6
 it~ flat:-5
 it~ foam:3
 it~ for:-2
 it~ gets:-4
 it~ go:-4
 it~ goes:2
 it~ good:-6
 it~ got:2
 it~ had:-2
 it~ hard:-3
 it~ has:-1
 it~ heats:-5
 it~ here:-5
 it~ holds:-5
 it~ i:-1
 it~ if:-6
 it~ in:-2
 it~ into:-11
 it~ is:4
 it~ isnt:4
 it~ its:-6
 it~ last:-1
 it~ lasts:-4
 it~ lather:-7
 it~ like:-6
 it~ look:7
 it~ looks:-5
 it~ makes:2
 it~ matter:2
 it~ may:-3
 it~ melts:-4
 it~ needs:-4
 it~ never:-2
 it~ next:-3
 it~ no:4
 it~ now:-7
 it~ off:5
 it~ ok:-4
 it~ once:-7
 it~ only:2
 it~ or:-6
 it~ outside:-4
 it~ past:-9
 it~ plus:-5
 it~ real:3
 it~ right:-1
 it~ safe:1
 it~ said:6
 it~ sat:-1
 it~ says:2
 it~ seiz:4
 it~ set:3
 it~ sets:-3
 it~ should:-2
 it~ since:-2
 it~ sit:2
 it~ smell:-1
 it~ stand:-1
 it~ stay:5
 it~ still:-6
 it~ stink:-5
 it~ sweat:-7
 it~ takes:-5
 it~ the:-6
 it~ then:-2
 it~ there:-9
 it~ thicken:4
 it~ through:-9
 it~ times:-1
 it~ to:2
 it~ took:-6
 it~ trac:-2
 it~ turn:-3
 it~ turns:1
 it~ twice:3
 it~ under:-5
 it~ until:-3
 it~ up:1
 it~ wants:-4
 it~ was:2
 it~ went:1
 it~ when:4
 it~ will:-6
 it~ with:-7
 it~ without:3
 it~ wont:-6
 it~ would:-3
 it~ wouldnt:5
 it~ wrong:-5
 it~ zapp:2
 it~ zaps:-7
 it~%:1
 it~0:1
 it~=:-5
 it~A:-3
 it~F:-2
 it~S:-5
 it~b:5
 it~t:-7
 ive~ a:2
 ive~ been:-6
 ive~ bought:4
 ive~ come:6
 ive~ done:-6
 ive~ gone:8
 ive~ got:-2
 ive~ had:-7
 ive~ just:2
 ive~ made:-5
 ive~ never:-8
 ive~ no:-1
 ive~ not:-5
 ive~ only:2
 ive~ read:-6
 ive~ seen:-7
 ive~ since:4
 ive~ tried:-6
 ive~ used:-1
 ive~ weigh:6
 ivory:-5
 i~ ?:-8
 i~ actual:2
 i~ add:-6
 i~ added:6
 i~ alway:-3
 i~ am:5
 i~ asked:-6
 i~ began:-9
 i~ believe:2
 i~ blame:-6
 i~ boil:1
 i~ bought:-4
 i~ bring:-5
 i~ buy:-5
 i~ call:-1
 i~ came:3
 i~ can:-10
 i~ cant:-4
 i~ carri:10
 i~ caught:2
 i~ chang:-6
 i~ check:-9
 i~ chuck:8
 i~ copi:3
 i~ copy:-5
 i~ count:-3
 i~ did:4
 i~ didnt:1
 i~ dilut:-8
 i~ dilute:-4
 i~ dissolv:2
 i~ dissolve:4
 i~ do:-4
 i~ dont:3
 i~ doubl:7
 i~ drain:8
 i~ dropp:1
 i~ empti:11
 i~ ended:-2
 i~ ever:-7
 i~ fill:9
 i~ final:-7
 i~ finish:-1
 i~ first:-4
 i~ fish:13
 i~ fold:-4
 i~ follow:1
 i~ forgot:-2
 i~ found:-2
 i~ freeze:2
 i~ froze:-2
 i~ gave:-3
 i~ get:-5
 i~ give:-3
 i~ go:1
 i~ got:-1
 i~ guess:8
 i~ had:-2
 i~ hadnt:5
 i~ halv:4
 i~ hand:-4
 i~ hate:-3
 i~ held:2
 i~ honest:10
 i~ hope:-2
 i~ just:2
 i~ keep:-2
 i~ kept:3
 i~ knock:5
 i~ know:-6
 i~ learn:-5
 i~ leave:2
 i~ left:10
 i~ let:3
 i~ like:-4
 i~ lost:7
 i~ made:-1
 i~ make:-8
 i~ may:3
 i~ mean:-2
 i~ meant:-6
 i~ measur:-4
 i~ mess:-6
 i~ mix:-6
 i~ mixed:3
 i~ must:5
 i~ near:-5
 i~ need:1
 i~ never:3
 i~ notic:8
 i~ ok:1
 i~ once:-11
 i~ open:-2
 i~ own:2
 i~ paid:-4
 i~ panick:-3
 i~ plan:-5
 i~ plann:-4
 i~ press:-7
 i~ print:-5
 i~ promis:3
 i~ put:4
 i~ ran:-2
 i~ read:3
 i~ real:-3
 i~ realis:5
 i~ reckon:-2
 i~ render:-2
 i~ replac:3
 i~ rins:10
 i~ round:5
 i~ run:-8
 i~ said:-8
 i~ saw:6
 i~ say:3
 i~ scrap:8
 i~ see:6
 i~ sell:-4
 i~ set:-2
 i~ shall:1
 i~ shook:6
 i~ should:1
 i~ siev:-1
 i~ skipp:6
 i~ smell:1
 i~ soap:-4
 i~ split:-2
 i~ sprinkl:-5
 i~ stir:-6
 i~ stirr:4
 i~ stopp:9
 i~ strain:-1
 i~ swapp:11
 i~ swear:2
 i~ take:-5
 i~ teach:-5
 i~ tell:-8
 i~ test:-3
 i~ think:3
 i~ thought:-2
 i~ threw:3
 i~ tipp:1
 i~ told:-2
 i~ took:3
 i~ topp:-1
 i~ translate:-3
 i~ tried:-4
 i~ trust:-3
 i~ turn:-4
 i~ type:2
 i~ typed:8
 i~ use:-5
 i~ used:1
 i~ usual:1
 i~ wait:-4
 i~ want:2
 i~ warm:-6
 i~ was:-5
 i~ wash:-2
 i~ wasnt:3
 i~ weigh:1
 i~ went:5
 i~ will:-6
 i~ wiped:-9
 i~ work:-8
 i~ would:1
 i~ write:-10
 i~ wrote:5
 i~K:-8
 jam~ jar:2
 january:-9
 january~ and:-5
 jar:3
 jars:-7
 jars~ of:-5
 jar~ and:6
 jar~ of:7
 jar~ so:-3
 jelly:-5
 job:4
 join:2
 join~ the:4
 jug's:6
 jug:2
 jugs:2
 jug~ ::2
 jug~ and:3
 jug~ from:3
 jug~ in:-8
 jug~ is:-9
 jug~ of:4
 jug~ on:-7
 jug~ so:7
 jug~ to:7
 jug~ was:-4
 july:-3
 jump:5
 jumps:3
 june:-11
 just~ a:-3
 just~ as:-3
 just~ for:-7
 just~ the:4
 just~ want:-11
 just~ what:-5
 just~F:-5
 k:2
 keep:-8
 keeps:-8
 keeps~ it:-5
 keeps~ the:-3
 keep~ a:-4
 keep~ in:-6
 keep~ it:-8
 keep~ my:-7
 keep~ the:1
 keep~0:-6
 keep~t:-3
 kept:3
 kept~ back:1
 kept~ in:-4
 kept~ the:-1
 kept~0:2
 kettle:7
 key:-5
 kg:2
 kg~ cost:-2
 kid:8
 kidd:-7
 kids:-2
 kill:-7
 kilo:5
 kilo~ in:-3
 kilo~ is:1
 kilo~ of:-7
 kind:-1
 kinda:2
 kind~ check:-7
 kind~ of:-2
 kind~ regard:-4
 kind~ with:4
 kiss:-6
 kitchen~ and:3
 kitchen~ bar:-7
 kitchen~ is:-3
 kitchen~ scale:7
 kitchen~ so:-4
 kitchen~ soap:-1
 kitchen~ was:-7
 knew:-6
 knife:-9
 knob:8
 knob~ of:8
 knock:3
 knock~ a:-2
 knock~ the:5
 know:3
 knows:3
 knows~ how:6
 know~ ::-5
 know~ how:2
 know~ i:-5
 know~ if:3
 know~ is:-8
 know~ it:1
 know~ its:-4
 know~ that:3
 know~ the:-1
 know~ what:-4
 know~ whether:-4
 know~ which:2
 krakow:-2
 k~0:-9
 l:-5
 la:-5
 lab:-5
 label:1
 labell:-3
 label~ ::-8
 label~ on:-6
 label~ says:4
 label~0:-7
 ladi:-4
 ladl:11
 ladle:7
 ladle~ of:4
 lads:-3
 lady:-2
 lady~ at:-5
 lady~ in:-4
 lady~ on:-4
 land:2
 last:-6
 lasts:-7
 last~ autumn:-5
 last~ batch:-7
 last~ bit:4
 last~ minute:6
 last~ month:5
 last~ night:-6
 last~ of:-6
 last~ one:-6
 last~ time:-5
 last~ week:2
 last~ weeks:4
 last~ winter:-6
 last~ year:-4
 last~ years:-2
 last~0:2
 last~F:-5
 late:-1
 later:-2
 later~ on:-6
 lather:-5
 lather~ is:-2
 lather~ like:-6
 lather~ was:-4
 laugh:2
 laugh~ at:-2
 laundry:-1
 laundry~ bar:-8
 laundry~ bars:-3
 laundry~ soap:-3
 law:-2
 laws:-4
 law~ who:-5
 lb:2
 lb~ oz:-7
 leak:-3
 learn:-8
 learn~ from:-3
 learn~ that:2
 least:-3
 least~t:-1
 leav:-5
 leave:-3
 leave~ it:-2
 leave~ out:-8
 leave~ the:-4
 leave~t:-1
 leav~ a:-4
 leav~ the:-8
 leeds:3
 left:1
 leftover~F:-3
 left~ and:2
 left~ for:-9
 left~ from:5
 left~ it:1
 left~ of:-7
 left~ on:1
 left~ out:-1
 left~ over:-6
 left~ so:-1
 left~ to:2
 length:-4
 less:4
 lesson:-5
 less~ of:5
 less~ than:-1
 less~F:-2
 less~W:-3
 let:-1
 lets:1
 letter:3
 let~ cool:-2
 let~ it:-3
 let~ me:-8
 let~ the:-3
 let~ them:3
 let~ us:-7
 let~ your:-8
 level:-1
 library:-4
 library~ book:-4
 lidd:-2
 lids:-5
 lid~ and:-7
 lid~ of:-7
 lid~ off:2
 lid~ on:-5
 lie:-6
 life:-1
 lift:4
 lift~ the:2
 lighter:-5
 light~ on:3
 like:-2
 liked:-4
 likes:-5
 likes~ it:3
 likewise:3
 like~ a:-3
 like~ alway:-8
 like~ an:-6
 like~ candle:-6
 like~ cheese:-6
 like~ cold:-5
 like~ custard:-5
 like~ i:-7
 like~ it:-1
 like~ mad:2
 like~ mash:-4
 like~ me:-3
 like~ my:2
 like~ noth:-2
 like~ paper:2
 like~ porridge:4
 like~ sandpaper:-5
 like~ someone:-1
 like~ soup:-6
 like~ stone:-5
 like~ that:-6
 like~ the:-8
 like~ thin:-4
 like~ this:1
 like~ to:-4
 like~ wet:4
 like~ you:-3
 like~%:1
 like~0:8
 like~F:-5
 like~L:-6
 like~S:-4
 like~U:-7
 like~X:-4
 like~t:7
 like~w:6
 limit:-5
 line:7
 lined:-6
 lined~ w:-5
 lined~ with:-2
 linen:-4
 line~ ::6
 line~ the:-3
 lino:-5
 lip:-5
 lip~ balm:-5
 liquid:3
 liquid~ and:-3
 liquid~ soap:-2
 liquor:7
 list:3
 list~ for:-8
 list~ i:3
 list~ is:-2
 litre:3
 little:1
 little~ ?:-6
 little~ of:-1
 little~A:1
 little~F:-6
 little~W:3
 live:-6
 lived:-7
 lives:-6
 lives~ in:-6
 loaf:-3
 loaf~ ::-5
 loaf~ mold:-2
 loaf~ mould:-3
 loaf~ tin:-3
 loav:-4
 local:-5
 lock:-8
 loft:-3
 log:-1
 log~ ::-3
 lol:-3
 long:-3
 longer:1
 longer~ than:-6
 long~ as:-7
 long~ sleev:-4
 long~ story:6
 long~ time:-4
 look:3
 looks:-10
 looks~ like:-5
 looks~ ok:-1
 look~ a:3
 look~ at:-6
 look~ for:1
 look~ it:-6
 look~ of:1
 look~ ok:-3
 look~ over:-6
 look~ right:-5
 loosen:9
 loosen~ it:6
 lose:-2
 lost:3
 lost~ a:-1
 lost~ my:-1
 lost~ the:-7
 lot:-2
 lotion:7
 lots:-7
 lots~ of:-5
 lot~ ?:-1
 lot~ of:2
 lot~ to:-3
 lot~0:3
 loud:-8
 love:-6
 loves:4
 love~ a:2
 love~ and:-2
 love~ but:-5
 love~ it:-5
 love~ to:-3
 low:-3
 lower:5
 lowest:-5
 lowest~ flame:-5
 low~ and:-3
 low~ for:3
 low~ heat:-1
 low~ in:1
 low~t:-3
 luck:3
 lucki:-6
 lucky:-5
 lukewarm:-6
 lump:5
 lumps:-5
 lumpy:7
 lump~ of:-1
 lunch:-7
 lurker:-4
 luxury:-4
 lye's:5
 lye:1
 lyes:-7
 lyes~ together:-6
 lying:4
 lyon:-5
 l~0:-4
 m:-6
 machine:-6
 made:1
 made~ ::-6
 made~ a:3
 made~ for:-9
 made~ from:-3
 made~ hers:-6
 made~ in:-6
 made~ it:3
 made~ my:-2
 made~ of:-4
 made~ on:-5
 made~ soap:-2
 made~ the:7
 made~ this:-4
 made~ up:7
 made~ with:-8
 made~0:9
 made~t:-1
 magazine:-3
 mak:9
 make:1
 maker:-5
 makes:-5
 makes~ a:-8
 makes~ it:-3
 makes~ no:-4
 makes~ sense:-3
 makes~ the:-5
 makes~ up:8
 makes~0:-6
 makes~T:-9
 makes~b:-4
 make~ a:-7
 make~ exact:-3
 make~ it:7
 make~ sense:-3
 make~ soap:-5
 make~ the:-7
 make~ this:-4
 mak~ it:6
 mak~ the:-4
 mak~ this:-1
 mama:-9
 man:-5
 many:1
 march:-10
 margin:-3
 marit:-5
 mark:5
 market:-7
 marta:4
 mash:-4
 mash~ potato:-4
 mass:-6
 mate:-1
 material:-7
 maths:4
 matter:3
 matter~ to:4
 may:1
 maybe:8
 maybe~ a:6
 maybe~0:5
 maybe~<:-1
 maybe~t:-6
 maybe~w:2
 may~ be:1
 may~ have:6
 may~ i:-4
 me:-1
 mean:-2
 means:-2
 meant:-1
 meant~ to:-1
 meanwhile:4
 mean~ the:4
 mean~ to:-6
 measur:4
 measure:1
 measur~ cup:4
 measur~ it:1
 measur~ jug:7
 measur~ the:2
 mechanic:1
 medium:-4
 meets:-3
 melt:-3
 melts:-9
 melts~ at:-4
 melt~ and:3
 melt~ at:-4
 melt~ by:-8
 melt~ everyth:4
 melt~ first:-7
 melt~ i:-8
 melt~ in:8
 melt~ it:3
 melt~ on:-5
 melt~ the:-7
 melt~ together:1
 melt~ with:3
 melt~=:-2
 melt~F:-3
 member:1
 memory:5
 men:-5
 merci:-4
 mess:-6
 mess~ up:-5
 met:-1
 method:-5
 method~ ::-5
 metric:-6
 me~ ?:4
 me~ a:1
 me~ about:-3
 me~ and:1
 me~ as:1
 me~ at:3
 me~ before:-5
 me~ but:-2
 me~ for:-2
 me~ how:-7
 me~ i:-2
 me~ if:-4
 me~ in:-4
 me~ it:-5
 me~ its:-7
 me~ on:-1
 me~ that:-3
 me~ the:5
 me~ this:-4
 me~ to:-6
 me~ where:4
 me~ whether:-2
 me~ with:2
 me~0:-10
 me~t:-6
 microwave:1
 middle:-6
 middle~ of:3
 might:-1
 might~ have:5
 mild:3
 milder:-1
 milk:-7
 milk~ carton:-7
 mill:-7
 min:7
 mind:5
 mind~ the:-2
 mine:-3
 mines:1
 mine~ from:1
 mine~ had:-3
 mine~ has:-3
 mine~ in:-6
 mine~ is:7
 mine~ took:-6
 mine~ was:2
 mine~ with:5
 mini:1
 minimum:2
 minus:6
 minus~ the:8
 minus~ whatever:8
 minute:-4
 minute~0:-7
 min~ .:6
 misread:12
 miss:3
 miss~ the:4
 mistak:2
 mistake:4
 mistake~ and:-7
 mix:3
 mixed:4
 mixed~ at:-7
 mixed~ in:6
 mixed~ it:4
 mixed~ the:2
 mixer:-5
 mix~ at:-2
 mix~ the:2
 mix~A:-2
 mk:-4
 ml:11
 mm:-8
 mode:3
 modern:-4
 mold:3
 molds:4
 mold~ holds:-5
 mold~ is:1
 moment:-7
 moms:-2
 mon:5
 monday:-1
 money:4
 month:-1
 month~ i:-3
 month~0:-6
 moon:-3
 mopp:5
 mopp~ up:6
 more:3
 more~ and:-1
 more~ fat:-6
 more~ like:10
 more~ of:3
 more~ or:-4
 more~ than:-2
 more~A:4
 more~F:4
 morn:-1
 morn~ all:-1
 morn~ and:1
 most:4
 most~ of:9
 mother:-1
 mother~ and:-7
 mother~ did:4
 mother~ in:1
 mould:-1
 mouldy:5
 mould~ ::-6
 mould~ a:-5
 mould~ and:-3
 mould~ bang:-4
 mould~ for:-3
 mould~ holds:-4
 mould~ in:-4
 mould~ is:2
 mould~ of:-8
 mould~ on:-5
 mould~ so:-8
 mould~ the:-5
 mould~ was:-5
 mould~ with:-8
 mould~0:-1
 mould~t:-4
 mould~v:-4
 mov:1
 move:-5
 moved:3
 moved~ to:2
 moves:-1
 mrs:2
 much:-1
 much~ ?:-5
 much~ and:5
 much~ as:-6
 much~ fat:-4
 much~ for:-7
 much~ of:-4
 much~ superfat:-5
 much~A:-4
 much~F:-3
 much~W:5
 muffin:-6
 mug:5
 multip:5
 mum~ says:-4
 museum:-6
 mush:-4
 must:-4
 must~ be:-9
 mutton:2
 myself:-3
 my~ arm:-3
 my~ aunt:-5
 my~ aunts:1
 my~ babcia:-4
 my~ bars:-4
 my~ bathroom:7
 my~ book:3
 my~ boss:-1
 my~ boyfriend:-1
 my~ brother':4
 my~ brother:-3
 my~ colleague:-4
 my~ country:5
 my~ dad:-8
 my~ dads:3
 my~ daughter':-8
 my~ daughter:2
 my~ earlier:3
 my~ elbow:-4
 my~ english:-2
 my~ everyday:-3
 my~ ex:-5
 my~ father:-3
 my~ first:-1
 my~ flatmate:-4
 my~ friend:3
 my~ glass:-1
 my~ good:-6
 my~ granddaughter:-5
 my~ grandfather:1
 my~ grandmother:-11
 my~ grandson:1
 my~ great:-1
 my~ hand:-1
 my~ hands:-9
 my~ handwrit:-7
 my~ head:-1
 my~ husband:-5
 my~ kilo:-3
 my~ kitchen:3
 my~ last:-9
 my~ laundry:-4
 my~ little:3
 my~ mind:8
 my~ mold:-7
 my~ mother:-1
 my~ mums:-7
 my~ nan:-6
 my~ nans:-2
 my~ neighbour:-1
 my~ nephew:-5
 my~ niece:-2
 my~ notebook:6
 my~ notes:-2
 my~ number:-2
 my~ old:-2
 my~ own:2
 my~ partner:-2
 my~ paste:-7
 my~ phone:-4
 my~ plan:-3
 my~ question:-2
 my~ recipe:-3
 my~ scale:3
 my~ sheet:-3
 my~ sister:-8
 my~ skin:3
 my~ slow:-3
 my~ soap:-2
 my~ son:-1
 my~ spreadsheet:-4
 my~ superfat:1
 my~ table:-7
 my~ teacher:-7
 my~ third:-4
 my~ thumb:-2
 my~ tongue:-2
 my~ usual:-9
 my~ very:-5
 my~ wife:2
 my~ wifes:-3
 my~%:-2
 my~0:-7
 my~F:-2
 my~K:-7
 my~L:-9
 my~S:-6
 my~W:3
 my~l:-7
 my~t:3
 my~w:3
 m~A:-8
 m~F:-3
 n:-1
 name:-10
 name~ ::-3
 nan:-9
 nans:-2
 natural:-7
 nb:1
 near:-5
 nearer:4
 nearer~0:5
 near~ enough:4
 near~ the:-3
 near~%:-10
 near~d:-1
 near~t:4
 need:-5
 needs:-6
 needs~ a:-5
 needs~ the:-8
 need~ ::-2
 need~ a:-5
 need~ it:5
 need~ more:-5
 need~ the:-6
 need~ to:1
 negative:3
 neighbor:-9
 neighbour:-3
 neither:4
 neither~ of:-1
 nephew:-2
 nerv:-8
 nervou:-3
 net:2
 never:-1
 never~ above:-6
 never~ added:8
 never~ again:-9
 never~ bother:-7
 never~ check:-7
 never~ did:-8
 never~ fail:-2
 never~ fails:-3
 never~ go:-9
 never~ got:7
 never~ had:-1
 never~ happen:8
 never~ in:-5
 never~ let:-3
 never~ made:9
 never~ once:-1
 never~ set:5
 never~ the:-8
 never~ went:-9
 new:-3
 news:-6
 newsletter:1
 newspaper:-7
 new~ bottle:-4
 new~ here:-3
 new~ one:6
 new~ scale:-5
 new~ to:-3
 next:-8
 next~ door:-3
 next~ month:-7
 next~ morn:1
 next~ one:-8
 next~ time:-7
 next~ to:6
 next~ year:-3
 nice:-2
 nicer:-6
 niece:2
 night:-5
 night~ and:-3
 night~ before:-5
 nil:2
 no:-1
 nobody:-3
 nobody~ answer:-2
 nobody~ had:5
 nobody~ has:1
 nobody~ will:-1
 none:5
 none~ at:-7
 none~ in:-3
 none~ of:1
 none~ the:-3
 nonna:-8
 noon:-6
 normal:-7
 normal~ ?:-6
 normal~ one:-4
 north:-4
 nose:-9
 not:1
 note:7
 notebook:-2
 notebook~ ::-6
 notebook~ p:-3
 notebook~ says:3
 notebook~ the:-2
 notes:-4
 notes~ ::1
 notes~ app:-5
 notes~ from:-7
 noth:-6
 noth~ and:-5
 noth~ at:-5
 noth~ but:-6
 noth~ else:-1
 noth~ in:-2
 noth~ only:-4
 notic:6
 notice:1
 notic~ the:3
 notic~ when:6
 not~ ?:-3
 not~ a:-9
 not~ at:-4
 not~ be:-8
 not~ for:-5
 not~ going:2
 not~ in:1
 not~ like:-7
 not~ more:-5
 not~ on:7
 not~ sure:2
 not~ that:-6
 not~ the:-3
 not~ to:-9
 not~ too:-5
 not~ touch:-5
 not~ use:-2
 not~ what:-3
 not~0:-5
 not~A:-4
 not~F:9
 not~b:7
 not~e:11
 not~w:-1
 nought:-1
 november:-3
 now:3
 nowhere:-6
 now~ ::-6
 now~ ?:3
 now~ and:-4
 now~ i:-1
 now~ in:-1
 now~ it:2
 now~ its:6
 now~ my:4
 now~ on:4
 now~ so:-8
 now~ the:3
 now~F:3
 no~ ?:-2
 no~ ash:-5
 no~ difference:-8
 no~ gel:-5
 no~ good:-3
 no~ harm:-6
 no~ i:-5
 no~ idea:2
 no~ it:5
 no~ longer:6
 no~ need:-7
 no~ other:-7
 no~ reason:-5
 no~ scale:1
 no~ smell:-3
 no~ sorry:2
 no~ superfat:-7
 no~ time:-5
 no~ wait:-7
 no~ white:-3
 no~ zap:-6
 no~0:2
 no~F:10
 no~I:5
 no~S:-7
 no~W:4
 no~X:-8
 number:-6
 number~ ?:-4
 number~ and:2
 number~ are:2
 number~ hold:-2
 number~ i:-5
 number~ is:-3
 number~0:-10
 nurse:-3
 n~ it:-2
 n~=:-5
 n~F:4
 o'clock:-3
 o:-5
 oat:-8
 oat~X:-3
 obvious:-4
 obvs:-6
 odd:-6
 odds:-6
 of:2
 off:3
 offcut:-5
 offer:-6
 office:-7
 off~ ?:-1
 off~ a:1
 off~ and:4
 off~ at:-9
 off~ by:-1
 off~ for:5
 off~ i:-6
 off~ in:4
 off~ it:1
 off~ my:-2
 off~ the:3
 off~ what:10
 off~0:-6
 off~l:3
 often:-7
 of~ about:-5
 of~ all:-6
 of~ ammonia:-5
 of~ anyth:-9
 of~ batter:-9
 of~ clean:-5
 of~ cold:1
 of~ course:-2
 of~ doors:-7
 of~ dried:-2
 of~ each:6
 of~ everyth:3
 of~ extra:-1
 of~ eyes:-2
 of~ fat:2
 of~ fats:1
 of~ her:1
 of~ it:1
 of~ last:4
 of~ melt:6
 of~ mine:-5
 of~ my:-3
 of~ noth:-6
 of~ oil:1
 of~ oils:-3
 of~ old:6
 of~ one:2
 of~ our:-4
 of~ paste:-8
 of~ plain:1
 of~ rough:-2
 of~ soap:2
 of~ some:3
 of~ stirr:-7
 of~ sunday:-9
 of~ that:7
 of~ the:3
 of~ these:-7
 of~ this:1
 of~ us:1
 of~ warm:-3
 of~ wet:-5
 of~ what:-4
 of~ which:-1
 of~ you:-5
 of~ your:-7
 of~%:3
 of~0:-8
 of~=:1
 of~>:-7
 of~A:1
 of~B:3
 of~C:5
 of~F:-3
 of~I:-4
 of~K:3
 of~L:8
 of~M:-5
 of~N:9
 of~T:-1
 of~U:5
 of~W:3
 of~X:-6
 of~b:-1
 of~t:-2
 of~v:-7
 of~w:-7
 oh:1
 ohio:-6
 oh~ and:2
 oil:4
 oils:-1
 oils~ and:-4
 oils~ are:-3
 oils~ as:1
 oils~ at:-5
 oils~ because:-5
 oils~ come:-5
 oils~ g:-4
 oils~ in:-3
 oils~ or:-1
 oils~ to:-1
 oils~ were:4
 oils~>:-2
 oily:6
 oil~ ?:-7
 oil~ and:-1
 oil~ at:4
 oil~ from:1
 oil~ g:-5
 oil~ grams:-5
 oil~ in:-4
 oil~ is:1
 oil~ of:2
 oil~ on:-3
 oil~ to:1
 oil~ was:-1
 oil~ weight:-6
 ok:-2
 okay:-4
 okay~ ?:-5
 okay~ for:-5
 okay~ so:-1
 ok~ ?:-2
 ok~ before:-3
 ok~ for:-6
 ok~ or:-2
 ok~ so:3
 ok~ to:-4
 ok~ with:-6
 old:1
 older:2
 oldest:-7
 old~ and:2
 old~ blanket:-2
 old~ days:-4
 old~ one:-5
 old~ pillowcase:-5
 old~ recipe:-6
 old~ sheet:1
 old~ soap:-7
 old~ tub:4
 old~A:4
 old~F:1
 olej:-3
 olej~F:-3
 oma:-4
 omg:-6
 on:-1
 once:-5
 once~ a:3
 once~ and:1
 once~ i:1
 once~ in:-1
 once~ it:3
 once~ its:-2
 once~ the:-3
 one:-4
 ones:-8
 ones~ are:-7
 one~ ::-4
 one~ ?:-2
 one~ after:-8
 one~ and:4
 one~ at:6
 one~ bar:-7
 one~ batch:-6
 one~ block:2
 one~ bottle:-1
 one~ can:-4
 one~ corner:-2
 one~ for:-2
 one~ from:-9
 one~ go:3
 one~ had:-5
 one~ has:-3
 one~ in:1
 one~ into:-1
 one~ is:-2
 one~ jug:-1
 one~ last:-8
 one~ of:5
 one~ on:-7
 one~ pan:-6
 one~ pot:-6
 one~ since:5
 one~ sorry:-6
 one~ the:1
 one~ thing:3
 one~ time:-3
 one~ to:-7
 one~ weigh:-7
 one~ went:-4
 one~ who:-7
 one~ with:-6
 one~ without:-5
 one~0:2
 one~F:-2
 one~t:-1
 one~w:-7
 onion:2
 only:3
 only~ a:2
 only~ about:7
 only~ after:-8
 only~ does:2
 only~ for:2
 only~ gave:6
 only~ got:-9
 only~ had:11
 only~ have:-5
 only~ if:-1
 only~ notic:2
 only~ one:-1
 only~ put:2
 only~ so:-4
 only~ the:1
 only~ then:-10
 only~ there:-5
 only~ want:-11
 only~ when:2
 only~ whether:-6
 only~0:12
 only~=:-9
 only~F:-10
 only~l:-1
 onto:-1
 onto~ the:2
 on~ ::-4
 on~ a:-8
 on~ and:-8
 on~ before:-5
 on~ day:1
 on~ glov:-3
 on~ her:-2
 on~ here:-8
 on~ high:-5
 on~ i:5
 on~ it:-5
 on~ its:-2
 on~ low:-5
 on~ me:-5
 on~ monday:-7
 on~ my:-2
 on~ offer:-6
 on~ one:-5
 on~ our:2
 on~ page:-6
 on~ paper:2
 on~ purpose:-1
 on~ saturday:-2
 on~ slow:-2
 on~ sunday:-2
 on~ that:-3
 on~ the:1
 on~ them:-6
 on~ this:4
 on~ thursday:2
 on~ to:-4
 on~ tue:-1
 on~ tuesday:-5
 on~ we:-8
 on~ with:9
 on~ your:-3
 on~0:-9
 on~>:-7
 on~A:4
 on~F:5
 on~t:-4
 oops:6
 open:1
 opens:4
 open~ a:-9
 open~ all:6
 open~ since:7
 open~ the:-2
 open~ window:-4
 open~0:2
 operator:-5
 operator~ ::-4
 opinion:-8
 opinion~ on:-4
 optional:5
 or:-3
 order:-8
 order~ of:-2
 ordinary:3
 original:-4
 or~ am:-8
 or~ did:-8
 or~ do:-4
 or~ does:-5
 or~ is:-7
 or~ it:-6
 or~ just:-5
 or~ less:-4
 or~ more:-7
 or~ no:-7
 or~ not:-3
 or~ should:-4
 or~ take:4
 or~ the:-2
 or~ thereabout:3
 or~ too:-3
 or~ was:1
 or~ will:-4
 or~0:1
 or~A:-7
 or~N:-5
 other:-3
 otherwise:-8
 otherwise~ it:-8
 other~ and:-2
 other~ half:2
 other~ way:-4
 other~0:3
 other~W:-7
 ought:-6
 ought~ to:-6
 ounc:6
 ounce:-4
 ounc~ for:6
 our:-2
 ours:-11
 ours~ is:-7
 our~ club:3
 our~ course:-4
 our~ group:-10
 our~ own:-2
 our~ teacher:-7
 our~ town:-2
 our~ village:6
 out:2
 outdoor:-7
 outside:-9
 outside~ and:-1
 outside~ on:-6
 out~ ::-7
 out~ a:-1
 out~ after:-1
 out~ again:4
 out~ and:4
 out~ at:3
 out~ by:3
 out~ for:4
 out~ i:-8
 out~ in:-4
 out~ like:-7
 out~ of:-1
 out~ right:-4
 out~ so:4
 out~ the:-3
 out~ to:11
 out~ what:4
 out~ with:2
 out~0:3
 out~=:-3
 out~A:-4
 out~N:1
 oval:-4
 oven:-9
 oven~ at:-4
 over:1
 overfat:2
 overheat:-3
 overnight:-1
 overnight~ at:-4
 over~ ?:-6
 over~ a:2
 over~ and:3
 over~ before:-5
 over~ for:6
 over~ from:3
 over~ half:-6
 over~ in:7
 over~ it:2
 over~ that:2
 over~ the:-4
 over~ to:1
 over~%:-9
 over~0:1
 over~d:-2
 over~t:-5
 own:3
 own~ ::-3
 own~ a:-4
 own~ line:-4
 own~0:-2
 own~F:2
 oyl:-4
 oz:2
 oz~ g:-5
 p:-6
 pack:1
 packet:6
 packet~ of:-2
 packs~ of:-4
 paddle:-7
 page~ ::-6
 page~ for:-6
 page~ is:-4
 page~ sorry:-5
 page~0:-3
 paid~ for:6
 paid~0:-7
 pail:-9
 paint:7
 pair:3
 pairs:-7
 pair~ of:1
 pale:-11
 pan:2
 panic:-7
 panick:1
 pantry:-5
 pan~ and:2
 paper~ and:-4
 paper~ cup:4
 paper~0:-4
 paper~t:-3
 parcel:4
 parent:-2
 parish:-7
 participant:3
 partner:-1
 part~ ?:3
 part~ of:3
 part~0:-9
 pass:-10
 passt:-5
 passt~ das:-5
 pass~ the:-4
 past:2
 paste:-9
 paste~ ::3
 paste~ in:-6
 paste~ is:-5
 paste~ to:-6
 paste~ went:-2
 paste~ with:-5
 pastry:2
 past~ from:-5
 past~ its:-4
 past~0:-2
 patch:-5
 patience:-7
 patient:-7
 pay:-1
 pcs:-6
 pct:-7
 pdf:-8
 peak:-6
 pearl:1
 pellet:3
 pencil:-2
 pencill:8
 pencil~ and:5
 people:-11
 people~ ask:-4
 people~ in:-3
 people~ who:-9
 people~0:-1
 per:-3
 percent:4
 percentag:-2
 perfect:-8
 perhap:8
 perhap~0:5
 period:-5
 person:-9
 per~ bar:-4
 per~ batch:1
 per~ kilo:-3
 petra:5
 ph:-9
 pharmacist:1
 pharmacy:-6
 phase:-7
 phase~ a:-3
 phase~ b:-3
 phase~ c:-2
 phenolphthalein:6
 phone:1
 phone~ and:7
 phone~ is:-5
 phone~ rang:7
 phone~ read:-8
 photo:-5
 ph~ strip:-7
 pick:-3
 pick~ up:1
 picture:-8
 piec:-3
 piece:-1
 piece~ for:-6
 piece~ of:6
 piec~ of:5
 piec~0:-5
 pig:-10
 pilar:1
 pillowcase:-5
 pinch~ of:-3
 pink:2
 pitcher:-4
 place:4
 place~ of:4
 plain:-2
 plain~ white:-2
 plain~F:-5
 plain~W:7
 plan:-2
 plann:-2
 plann~ to:1
 plan~ for:2
 plastic:3
 plastic~ cup:3
 plastic~ jug:4
 plate:3
 play:-4
 pleas:-1
 please:6
 please~ ?:1
 please~ be:-6
 please~ check:-1
 please~ dont:-10
 please~ excuse:-4
 please~ look:-8
 please~ my:6
 please~ tell:1
 please~ verify:-8
 plenty:-7
 plenty~ for:-6
 plenty~ of:-4
 pls~ check:-3
 plumber:-3
 plus:2
 plus~ a:4
 plus~ an:4
 plus~ another:4
 plus~ the:7
 plus~0:-4
 plus~<:-7
 plus~=:-5
 plus~w:-7
 plz:-5
 pocket:2
 point:-4
 poland:-2
 polish:-2
 polypropylene:-5
 poor:-9
 popcorn:5
 pops:-3
 porch:-5
 porridge:3
 portion:-2
 portugal:1
 possible:-6
 post:-3
 postage:-2
 postal:2
 postal~ scale:2
 postman:2
 post~ this:-6
 post~t:-2
 pot:1
 potato:-7
 potato~ then:-3
 pots:-2
 pot~ ::-5
 pot~ at:-5
 pot~ for:-9
 pot~ holds:2
 pot~ i:-6
 pot~ is:-5
 pot~ of:-2
 pot~ off:-7
 pot~ oils:-8
 pot~ was:4
 pot~ with:1
 pour:5
 pours:-7
 pour~ ::-6
 pour~ and:3
 pour~ at:-9
 pour~ cover:-1
 pour~ in:5
 pour~ into:-3
 pour~ it:1
 pour~ off:4
 pour~ on:2
 pour~ out:7
 pour~ the:-6
 pour~0:4
 pour~=:3
 pour~>:-7
 pour~A:-3
 pour~F:-1
 pour~t:-3
 pour~w:-10
 powder:3
 powder~0:6
 power:-2
 power~ cut:7
 pp:-6
 ppl:-7
 practical:-7
 prefer:5
 premix:-8
 prep:-4
 present:-2
 press:-4
 press~ in:-7
 press~ into:-2
 press~ it:-3
 press~0:-8
 pretty:-8
 pretty~ but:-6
 previou:2
 pric:-6
 price:-6
 print:3
 printout:-6
 print~ on:1
 print~0:-9
 prob:3
 probab:2
 proces:-1
 proces~ ::-2
 proces~ crock:-3
 proces~ in:-2
 professor:3
 project:-7
 promis:-3
 promise:1
 promis~ to:1
 proper:-3
 proud:-7
 ps:3
 pub:-4
 puck:-2
 pucks:-3
 puck~ dual:-6
 pudd:-7
 puddle:3
 pull:2
 pump:-1
 pure:1
 pure~F:-6
 purity:8
 purpose:-1
 push:-7
 put:3
 puts:-6
 puts~ everyth:-4
 put~ a:3
 put~ in:5
 put~ it:-2
 put~ on:-1
 put~ the:2
 put~ them:-4
 put~ together:-5
 put~0:-1
 put~<:-6
 put~=:-8
 put~>:3
 put~F:4
 put~w:-1
 q:-9
 qty:-5
 quantiti:6
 quantity:-4
 quantity~ of:-4
 quarter:8
 quarter~ of:6
 question:-4
 question~ ::-6
 question~ from:-3
 question~ is:-4
 question~ to:-1
 quick:-8
 quicker:-3
 quicker~ than:-5
 quick~ one:-3
 quite:1
 quot:-5
 q~ ::-3
 r:-2
 rack:-6
 rack~ and:-1
 radiator:-4
 radio:-8
 rain:-1
 rainy:-6
 rais:-5
 ran:4
 rancid:1
 rancid~ so:8
 rang:5
 ran~ dry:3
 ran~ out:2
 ran~ short:3
 ran~ the:-7
 rate:-4
 rather:5
 rather~ have:-1
 rather~ than:5
 raw:3
 re:-4
 reach:-5
 reach~ the:5
 reach~d:-6
 read:1
 reader:-1
 reads:3
 reads~ in:-5
 ready:3
 ready~ for:-6
 ready~ made:2
 ready~ mixed:4
 ready~ to:-9
 read~ it:-5
 read~ that:-5
 read~ the:-3
 read~ this:-4
 read~0:-1
 read~F:4
 read~b:-1
 real:2
 realis:5
 reality:2
 real~ have:-4
 real~A:-4
 real~N:4
 reason:-2
 rebatch:4
 recall:6
 receipt:8
 recheck:2
 recip:-8
 recipe:-3
 recipe~ ::-3
 recipe~ ?:-3
 recipe~ and:-7
 recipe~ card:-1
 recipe~ for:2
 recipe~ from:-6
 recipe~ i:-4
 recipe~ in:3
 recipe~ is:-2
 recipe~ of:-4
 recipe~ on:-3
 recipe~ was:2
 reckon:5
 reckon~ it:-1
 record:-1
 record~0:-7
 red:4
 refill:3
 refin:2
 regard:-6
 remain:-8
 remainder:5
 remain~0:2
 remark:-7
 remark~ ::-2
 remember:3
 remember~ it:-6
 render:-8
 render~ it:2
 render~ the:-6
 render~ twice:-5
 render~=:-4
 render~w:-6
 repeat:-6
 replac:6
 replace:-6
 replace~ it:5
 replac~ by:6
 replac~ the:-1
 reply:-7
 report:-5
 rescu:1
 rescue:5
 rest:3
 rest~ is:2
 rest~ of:-1
 rest~ was:-2
 rest~t:-2
 retir:-8
 rev:-8
 rev~0:-7
 re~ ::-4
 ribbon:-6
 rice:-3
 rich:-10
 rid:-3
 rid~ of:-3
 right:-2
 right~ ?:-2
 right~ about:1
 right~ amount:-5
 right~ and:-4
 right~ at:3
 right~ before:1
 right~ but:7
 right~ for:-8
 right~ on:3
 right~ or:-3
 right~ so:-5
 right~ the:-2
 right~ to:-5
 right~ with:-7
 rim:-2
 ring:-7
 ring~t:-1
 rins:2
 rinse:-4
 rinse~ the:-2
 rins~ the:-1
 rises:-4
 roast:-1
 rock:-6
 roll:-6
 roof:1
 room:-3
 room~ for:2
 room~ temp:-5
 room~ temperature:-1
 room~0:-5
 rough:2
 rough~d:-1
 rough~w:2
 round:1
 round~ and:-3
 round~ it:-2
 round~ the:3
 round~ to:3
 row:2
 row~0:5
 rspo:-7
 rubb:-1
 rugby:-3
 rugby~ club:-3
 ruin:-6
 rule:-10
 rules:1
 run:-2
 runn:-7
 runny:8
 runs:-3
 run~ it:-7
 run~ out:-8
 run~ the:-4
 rush:-1
 rustic:-8
 ruth:2
 s0ap:-5
 s:-7
 sack:-2
 sack~ of:-1
 safety:-3
 safe~ ?:-4
 safe~ side:4
 safe~ to:-2
 said~ a:3
 said~ it:-2
 said~ my:6
 said~ no:-8
 said~ so:-8
 said~ that:-4
 said~ the:-1
 said~ yes:-7
 said~0:-2
 said~b:6
 salad:-7
 sale:-6
 salt:4
 same~ amount:7
 same~ as:-8
 same~ bar:-3
 same~ fats:1
 same~ for:-2
 same~ in:2
 same~ number:-8
 same~ oils:-4
 same~ pot:2
 same~ recipe:6
 same~ thing:-3
 same~ weight:10
 same~F:-1
 same~b:6
 sample:-7
 sandpaper:-5
 sane:-4
 sane~ ?:-3
 sang:-8
 sanity:-4
 sanity~ check:-4
 saponification:3
 sat:1
 saturday:-3
 sat~ in:1
 sat~ on:-6
 sat~t:-4
 saucer:-5
 save:1
 saved:-1
 saves:-7
 savon:-3
 saw:8
 saw~ it:1
 saw~ the:7
 say:5
 says:3
 says~ ::-6
 says~ and:2
 says~ but:-3
 says~ i:1
 says~ it:-3
 says~ its:-8
 says~ min:7
 says~ my:-8
 says~ that:2
 says~ the:-3
 says~0:6
 says~>:1
 says~A:1
 says~F:-2
 says~b:-1
 says~e:4
 says~t:-1
 says~v:2
 says~w:4
 say~ a:6
 say~ how:1
 say~ it:-9
 say~ its:-5
 say~ so:1
 say~ thats:-6
 say~ the:-9
 say~%:4
 say~0:10
 say~F:-7
 say~b:10
 say~w:7
 scal:-2
 scale:4
 scale~ ::-2
 scale~ and:-10
 scale~ at:6
 scale~ but:-9
 scale~ died:4
 scale~ does:-9
 scale~ for:-8
 scale~ jumps:4
 scale~ only:3
 scale~ reads:-1
 scale~ says:1
 scale~ shows:1
 scale~ so:-9
 scale~ switch:3
 scale~ that:-2
 scale~ was:5
 scale~ with:-1
 scale~w:-7
 scar:-4
 school:-3
 school~ fair:4
 science:-6
 scoop:6
 scorch:-3
 scrap:8
 scrape:-1
 scrap~ it:-3
 scrap~ the:5
 scratch:-12
 screen:1
 scribbl:-3
 scrubb:-6
 scrubb~ the:-6
 scum:2
 seal:-3
 season:5
 second:1
 second~ day:-6
 second~ go:2
 second~ half:4
 second~ one:-4
 second~ opinion:-4
 second~ pair:-1
 second~ time:2
 second~ try:-2
 secret:-7
 see:2
 seed:-5
 seem:7
 seems:-7
 seen:-1
 see~ a:-7
 see~ here:3
 see~ how:-5
 see~ if:-8
 see~ it:-8
 see~ me:-5
 see~ that:3
 see~ through:-7
 see~ what:1
 seiz:-1
 self:-1
 sell:-7
 seller:4
 sells:5
 sells~ at:-4
 sell~ at:-2
 send:1
 sense:2
 sensible:-5
 sensible~ ?:-5
 sensitive:1
 sent:4
 sent~ me:3
 separat:-7
 separate:-10
 september:-6
 serv:3
 set:3
 sets:-8
 sets~ in:-4
 sett:-2
 settl:-2
 set~ aside:-6
 set~ in:-7
 set~ it:7
 set~ on:-5
 set~ the:-5
 set~ to:4
 set~ up:-4
 sf:6
 shade:-6
 shall:2
 shampoo:1
 shampoo~ bar:-6
 share:5
 sharp:-2
 shav:-5
 shave:-5
 shave~ puck:-4
 shave~ soap:-4
 shav~ puck:-4
 shav~ soap:-1
 she:-6
 shed:-5
 sheep:3
 sheet:3
 sheet~ ::-2
 sheet~ and:5
 sheet~ for:1
 sheet~ says:4
 sheet~ sorry:-5
 sheet~0:-9
 shelf:-3
 shelf~ for:-2
 shes:-7
 shes~0:-3
 she~ also:2
 she~ alway:-2
 she~ asked:-3
 she~ did:-7
 she~ does:-2
 she~ gets:-8
 she~ got:-6
 she~ had:-6
 she~ has:-5
 she~ is:-5
 she~ made:-4
 she~ never:1
 she~ right:-2
 she~ said:-2
 she~ says:-4
 she~ stirr:-2
 she~ swear:-3
 she~ told:-1
 she~ used:-5
 she~ wants:4
 she~ was:1
 she~ who:-2
 she~ wrote:-1
 shift:-2
 shine:-8
 shiny:-8
 shoe:-3
 shoebox:-3
 shoebox~ lined:-2
 shoe~ box:-3
 shook:3
 shop:3
 shopp:-8
 shopp~ list:-4
 shops:-2
 shop~ and:5
 shop~ had:4
 shop~ soap:3
 short:4
 shortage:-5
 short~ ::3
 short~ ?:-7
 short~ burst:-2
 short~ of:-7
 short~ on:-2
 short~ so:4
 should:-1
 should~ be:-2
 should~ come:-1
 should~ have:-1
 should~ i:-6
 should~ read:9
 should~ say:4
 shout:-7
 show:-4
 shower:-8
 shows~ whole:-8
 shows~0:-2
 shows~w:3
 show~b:1
 shrink:-6
 shut:1
 shut~ in:3
 shy:1
 side:-2
 sides:-5
 sideway:-7
 side~ of:4
 sieve:-1
 siev~ it:-1
 sign:-4
 silicone:-8
 silicone~ loaf:-5
 silicone~ mould:-4
 sill:-6
 silly:10
 simp:-3
 simple:-6
 since:3
 since~ about:-5
 since~ i:-3
 since~ it:4
 since~ last:3
 since~ my:5
 since~ spr:3
 since~ the:3
 since~ then:3
 since~0:-7
 since~F:3
 sink:-1
 sink~ and:-5
 sink~ of:-4
 sis:-4
 sister':3
 sister:-9
 sister~ in:-5
 sister~ says:-3
 sits:-1
 sits~ in:-7
 sitt:3
 sitt~ in:-2
 sitt~ on:4
 size:2
 size~ of:-3
 skin:-4
 skin~ and:-4
 skin~ is:4
 skin~ off:-5
 skip:5
 skipp:12
 skipp~ it:5
 skipp~ the:8
 skip~ the:1
 skull:-7
 slab:-7
 sleep:-7
 sleev:-4
 slept:-5
 slic:-6
 slice:-6
 slid:-2
 slimy:-9
 slip:2
 slipp:9
 slipp~ and:6
 sliver:-6
 slosh:-3
 slow:-4
 slow~ cooker:-5
 slow~ into:-5
 slush:-7
 small:-3
 smaller:2
 small~ print:5
 smell:-6
 smell~ a:-5
 smell~ faint:-6
 smell~ is:-7
 smell~ it:3
 smell~ like:-2
 smell~ of:-6
 smell~ the:-3
 smelt:4
 smoke:-5
 smooth:-9
 sneeze:-5
 sniff:1
 snow~ white:-3
 so:1
 soak:6
 soap':2
 soap:-8
 soaper:-5
 soaps:-9
 soap~ ::-4
 soap~ ?:-1
 soap~ again:-5
 soap~ and:-4
 soap~ at:-6
 soap~ attempt:-2
 soap~ day:-1
 soap~ diary:-6
 soap~ for:-5
 soap~ from:-6
 soap~ i:-4
 soap~ in:-6
 soap~ is:-8
 soap~ like:-4
 soap~ my:-6
 soap~ of:-5
 soap~ on:-6
 soap~ paste:-1
 soap~ since:-4
 soap~ the:-3
 soap~ to:-2
 soap~ w:-7
 soap~ was:-5
 soap~ with:-4
 soap~0:-5
 soft:-6
 softer:1
 soft~ after:-4
 soft~ as:-8
 soft~ at:-3
 soft~ for:-4
 soft~ in:-4
 soft~ so:4
 soft~ soap:-4
 sold:-7
 sold~ at:-2
 sold~ out:-5
 sold~0:-4
 soleseife:-6
 solid:-4
 solution~ and:-2
 solution~ plus:-6
 some:2
 somebody:-3
 somebody~ asked:-5
 somebody~ check:-3
 somebody~ else:-4
 somebody~ here:2
 somebody~ look:-6
 somebody~ run:-6
 somebody~ tell:2
 somebody~ with:-3
 someone:1
 someone~ at:-7
 someone~ in:-8
 someone~ look:-8
 someone~ tell:4
 someone~ to:-6
 someone~ with:-7
 someth~ else:-2
 someth~ like:2
 somewhere:-1
 some~ of:3
 some~ people:-8
 some~0:-5
 some~F:-4
 some~N:4
 some~X:-3
 son:-1
 soon:-6
 sooner:-4
 sooner~ than:-4
 sorry:1
 sorry~ for:-5
 sorry~ if:2
 sorry~ it:-6
 sorry~ my:-4
 sorry~ the:4
 sort:3
 sort~ of:-6
 sound:-7
 sound~ like:-8
 sound~ right:2
 soup:-4
 sour:-1
 source:4
 source~ ::5
 so~ ::-6
 so~ ?:2
 so~ a:3
 so~ all:2
 so~ another:6
 so~ before:-4
 so~ call:5
 so~ did:-3
 so~ do:-2
 so~ does:-5
 so~ dont:2
 so~ excuse:-5
 so~ far:-2
 so~ fast:-3
 so~ for:-7
 so~ good:4
 so~ half:2
 so~ here:-5
 so~ hot:-5
 so~ i'd:-6
 so~ i:-5
 so~ if:-4
 so~ in:4
 so~ is:3
 so~ it:2
 so~ its:5
 so~ ive:-6
 so~ just:5
 so~ keep:-6
 so~ little:-8
 so~ maybe:2
 so~ much:-6
 so~ my:5
 so~ no:4
 so~ noth:-2
 so~ now:-4
 so~ of:6
 so~ on:-3
 so~ please:1
 so~ sorry:-7
 so~ take:2
 so~ that:-7
 so~ thats:6
 so~ the:1
 so~ ther:4
 so~ there:-4
 so~ this:-5
 so~ those:2
 so~ um:3
 so~ we:-3
 so~ what:5
 so~ whats:3
 so~ who:4
 so~ you:-1
 so~%:-7
 so~0:7
 so~=:3
 so~N:11
 so~b:-1
 so~e:-10
 so~l:-6
 so~t:-3
 so~w:-2
 spa:2
 space:-6
 spain:-7
 spare:-6
 spatula:-6
 speak:-1
 speed:-6
 spell:-9
 spend:-7
 spent:1
 spill:-5
 spilt:2
 splash:4
 splash~ of:3
 split:2
 split~ it:2
 spoon:-1
 spoonful:4
 spoonful~ in:1
 spoonful~ of:-3
 spoon~ and:2
 spoon~ at:-6
 spoon~ by:-6
 spoon~ for:2
 spoon~ in:-5
 spoon~ into:-4
 spoon~ it:-5
 spoon~ of:2
 spoon~ slipp:7
 spot:-8
 spots:-2
 spots~ after:-2
 spot~ on:-5
 spr:1
 spray:-8
 spreadsheet:-6
 sprinkl:-8
 sprinkle:-2
 sprinkle~ the:-2
 sprinkl~=:-1
 spr~ and:1
 spr~ i:-1
 squeez:7
 sry:1
 stable:-4
 stack:-2
 stag:-7
 stage:-3
 stage~ at:-3
 stain:-9
 stainles:-5
 stall:1
 stamp:-12
 stamp~ and:-6
 stand:-6
 standard:-6
 stand~ ::-2
 stand~ at:-6
 stand~ for:-3
 stand~ in:-1
 stand~ it:4
 stand~ on:5
 stand~ the:-2
 stand~ there:-6
 stand~ up:1
 stank:-6
 start:-1
 start~ ::-4
 start~ and:-7
 start~ at:-2
 start~ the:-5
 start~ to:-6
 start~ with:5
 start~t:-6
 static:1
 stay:4
 stays:-6
 stays~ as:2
 stays~ in:-6
 stay~ a:1
 stay~ at:2
 stay~ clear:4
 stay~ cloudy:-2
 stay~ in:8
 stay~ on:1
 stay~ soft:-7
 steam:-11
 steel:1
 steel~ jug:-5
 steel~ pot:-6
 step:-6
 steps:2
 steps~ of:4
 step~0:-1
 stick:1
 sticker:-4
 sticky:1
 stick~ blend:-3
 stick~ blender:-10
 stiff:4
 still:2
 still~ a:-8
 still~ cloudy:2
 still~ good:5
 still~ got:-6
 still~ had:4
 still~ have:-2
 still~ in:5
 still~ like:-8
 still~ ok:-8
 still~ on:4
 still~ sitt:7
 still~ smell:-4
 still~ soap:-7
 still~ soft:-2
 still~ stand:4
 sting:-7
 stingy:2
 stink:-8
 stir:-4
 stirr~ and:-5
 stirr~ every:-6
 stirr~ for:-2
 stirr~ in:4
 stirr~ into:5
 stirr~ it:-6
 stirr~ one:-5
 stirr~ the:-3
 stirr~ with:-6
 stirr~t:-2
 stirs:-6
 stir~ by:-5
 stir~ every:-1
 stir~ for:-2
 stir~ in:-1
 stir~ it:2
 stir~ the:-8
 stir~ till:-3
 stir~ until:-3
 stir~ with:-4
 stir~0:-5
 stir~=:-3
 stir~t:-5
 stock:1
 stone:-1
 stood~ at:3
 stood~ in:2
 stop:-8
 stopp:8
 stopp~ at:9
 stops:-4
 stor:-2
 store:1
 store~ the:-7
 story:1
 stove:5
 straight:-3
 straight~ away:-3
 straight~ from:-5
 straight~ into:-7
 straight~ out:3
 straight~ to:1
 strain:6
 strainer:-8
 strain~ it:-4
 strain~ the:-1
 strain~ through:-9
 streak:-7
 stream:-3
 street:-4
 strength:3
 stretch:4
 strike:3
 strip:-7
 stripp:-6
 stripp~ the:-6
 strip~ says:-7
 strip~0:-2
 strong:4
 stronger:2
 strong~ ?:-8
 strong~ for:-5
 struck:5
 struck~ out:2
 stuck:4
 stuck~ in:4
 stuck~ to:2
 stuff:-2
 stupid:-7
 style:-4
 subject:-2
 subject~ ::-3
 such:2
 suds:-6
 suggest:-1
 suits:-5
 sum:-1
 summer:-1
 summer~ and:6
 sums:-1
 sun:2
 sunday:1
 sunday~ ::-4
 sunday~ and:1
 sunday~ in:-7
 sunday~ roast:1
 superfat:6
 superfat~ ::4
 superfat~ ?:-3
 superfat~ and:-7
 superfat~ at:1
 superfat~ did:-10
 superfat~ do:-5
 superfat~ for:2
 superfat~ i:-1
 superfat~ in:3
 superfat~ is:-12
 superfat~ of:-9
 superfat~ on:-11
 superfat~ should:-10
 superfat~%:3
 superfat~0:2
 supermarket:-4
 supplier:1
 suppose:-1
 sure:3
 sure~ about:-10
 sure~ of:3
 surface:-6
 surviv:1
 survive:-7
 suspect:5
 swap:-5
 swapp:7
 swapp~ for:4
 swapp~ the:2
 swapp~F:5
 swaps:-10
 swap~ the:-1
 swear:3
 swear~ by:-2
 swear~ it:-8
 swear~ to:7
 sweat:-7
 sweat~ in:-2
 sweet:-2
 swirl:-7
 swirl~ with:-4
 switch:1
 switch~ itself:-1
 switch~ off:-6
 switch~ to:-1
 swore:-5
 t:-7
 ta:-5
 tabl:-6
 table:2
 tablespoon:5
 table~ is:-7
 table~0:-8
 tabs:-5
 taffy:-9
 tag:1
 tak:6
 take:3
 taken:3
 takes:-13
 takes~ about:-1
 takes~ its:-5
 takes~ the:-3
 takes~=:-1
 takes~t:-5
 take~ it:-7
 take~ off:-4
 take~ that:5
 take~ the:-6
 take~ your:3
 take~0:-8
 take~=:-4
 take~w:-9
 talk:-6
 tall:-6
 tan:-7
 tap:-1
 tape:-8
 tared:7
 target:1
 tast:-9
 taste:3
 taught:-6
 taught~ me:-4
 teach:-1
 teacher:-3
 team:-3
 technical:9
 technical~ grade:9
 telephone:-5
 tell:-4
 tells~ me:2
 tell~ me:2
 tell~ my:-8
 tell~ them:-6
 tell~ us:-9
 tell~ whether:2
 temp:-5
 temperature:-10
 temps:-5
 temp~d:-1
 tenth:3
 tenth~ of:3
 term:-4
 test:-3
 tester:3
 test~ ::-5
 test~ at:-10
 test~ it:4
 test~ ok:-3
 test~ with:-6
 text:-4
 than:-1
 thank:-6
 thank~ for:-5
 thank~ to:-3
 thank~ you:-5
 than~ a:-1
 than~ i:3
 than~ it:3
 than~ my:2
 than~ that:-5
 than~ the:-4
 than~ usual:3
 than~d:-4
 that:5
 thats:-1
 thats~ a:-6
 thats~ all:-5
 thats~ how:5
 thats~ it:-6
 thats~ my:-6
 thats~ the:-12
 thats~ what:6
 thats~ why:-7
 thats~>:-2
 thats~l:-10
 that~ ?:4
 that~ a:-6
 that~ about:-7
 that~ and:4
 that~ be:3
 that~ bit:4
 that~ day:9
 that~ enough:-2
 that~ from:-6
 that~ goes:-2
 that~ has:-5
 that~ i'd:-4
 that~ i:1
 that~ im:2
 that~ in:-1
 that~ into:-3
 that~ is:1
 that~ isnt:1
 that~ it:-7
 that~ its:-2
 that~ look:-2
 that~ makes:-8
 that~ matter:6
 that~ mine:5
 that~ much:1
 that~ my:2
 that~ never:6
 that~ nobody:3
 that~ noth:-5
 that~ off:5
 that~ okay:-2
 that~ on:3
 that~ one:-5
 that~ out:4
 that~ right:-2
 that~ she:2
 that~ solution:-8
 that~ sound:-1
 that~ still:-6
 that~ the:4
 that~ ther:-6
 that~ too:-6
 that~ was:-8
 that~ way:-1
 that~ we:-7
 that~ went:-4
 that~ with:1
 that~ you:-5
 that~0:9
 that~=:-6
 that~A:-3
 that~F:1
 that~L:3
 that~b:6
 thaw:-2
 the:1
 their:-6
 them:-2
 themselv:-1
 them~ ::-2
 them~ and:-4
 them~ for:-2
 them~ in:1
 them~ is:-2
 them~ out:-5
 them~ to:-6
 them~ together:4
 them~0:-4
 them~t:-6
 then:-1
 then~ ?:1
 then~ a:2
 then~ add:-3
 then~ at:-4
 then~ i:3
 then~ in:-6
 then~ into:-5
 then~ it:4
 then~ its:-7
 then~ like:-4
 then~ my:3
 then~ pour:-6
 then~ stir:-3
 then~ stirr:-2
 then~ the:-9
 then~ weigh:-8
 then~0:3
 then~<:2
 then~=:-4
 then~>:-2
 then~A:-6
 then~F:-4
 then~S:-5
 then~W:1
 then~e:-6
 then~t:-6
 then~v:5
 ther:2
 there:4
 thereabout:3
 therefore:3
 there~ ?:-7
 there~ and:1
 there~ are:-1
 there~ because:1
 there~ enough:-3
 there~ may:4
 there~ so:-5
 there~ too:4
 there~ was:-2
 there~ were:3
 there~ with:-6
 thermometer:-9
 ther~ a:-2
 ther~ also:2
 ther~ no:-8
 ther~0:3
 ther~F:-5
 these:-5
 these~ are:-5
 these~ days:6
 these~ fats:-5
 these~ oils:-5
 they:-4
 theyd:4
 theyll:-3
 they~ are:6
 they~ do:-7
 they~ had:-1
 they~ say:1
 they~ went:2
 they~ were:-6
 the~ above:6
 the~ allotment:-4
 the~ amount:-2
 the~ answer:-3
 the~ app:2
 the~ attic:-3
 the~ autumn:-7
 the~ baby:1
 the~ back:2
 the~ bag:3
 the~ balance:-5
 the~ balcony:2
 the~ bar:2
 the~ bars:-11
 the~ batch:-4
 the~ bath:-7
 the~ bathroom:2
 the~ batter:-8
 the~ battery:-1
 the~ beaker:5
 the~ beginn:-2
 the~ bell:-9
 the~ bench:-5
 the~ best:-5
 the~ big:-1
 the~ bin:-2
 the~ birds:-3
 the~ bit:-3
 the~ block:4
 the~ blog:-4
 the~ blue:2
 the~ board:2
 the~ book:-4
 the~ bottl:-7
 the~ bottle:6
 the~ bottom:-1
 the~ bowl:6
 the~ boys:5
 the~ brim:-3
 the~ bubbl:-2
 the~ bucket:2
 the~ bus:-3
 the~ candle:-5
 the~ canister:7
 the~ car:-8
 the~ card:-3
 the~ caretaker:-7
 the~ cat:1
 the~ ceil:-5
 the~ cellar:-9
 the~ certifi:-6
 the~ certificate:3
 the~ cheap:-6
 the~ chemist:-2
 the~ children:2
 the~ choir:-6
 the~ christma:2
 the~ church:-5
 the~ class:-7
 the~ clean:-1
 the~ clock:-3
 the~ club:-2
 the~ clubs:-1
 the~ co:-1
 the~ cold:1
 the~ column:-3
 the~ comma:4
 the~ comment:-7
 the~ cook:-1
 the~ cooker:4
 the~ cool:-7
 the~ corner:-6
 the~ cost:-6
 the~ counter:5
 the~ county:-4
 the~ course:3
 the~ crock:1
 the~ crockpot:-1
 the~ crumb:1
 the~ cubes:-5
 the~ cup:-3
 the~ cupboard:-1
 the~ cure:-10
 the~ dairy:1
 the~ date:-8
 the~ day:-3
 the~ decimal:-4
 the~ difference:2
 the~ discount:-2
 the~ dish:5
 the~ display:1
 the~ dog:1
 the~ door:-4
 the~ dot:-6
 the~ doubl:-7
 the~ double:-2
 the~ drain:2
 the~ drawer:1
 the~ drum:8
 the~ edge:-4
 the~ edges:-1
 the~ empty:-8
 the~ end:3
 the~ ends:-7
 the~ even:-7
 the~ face:-7
 the~ fami:1
 the~ fat:-4
 the~ fats:2
 the~ feed:3
 the~ fence:-5
 the~ figur:-5
 the~ figure:4
 the~ finish:-4
 the~ first:-2
 the~ flak:6
 the~ flat:-3
 the~ floor:6
 the~ foam:-9
 the~ freezer:-11
 the~ front:1
 the~ fryer:2
 the~ full:5
 the~ fumes:-7
 the~ funnel:4
 the~ garage:-9
 the~ garden:-4
 the~ gas:-4
 the~ glass:1
 the~ goat:4
 the~ goats:4
 the~ goggl:-3
 the~ good:-3
 the~ gram:-7
 the~ greasy:-8
 the~ green:1
 the~ half:5
 the~ hall:-6
 the~ hand:-4
 the~ handout:3
 the~ hands:3
 the~ hard:-5
 the~ hardware:-1
 the~ heat:-7
 the~ hens:-8
 the~ hob:-1
 the~ holiday:-3
 the~ hood:-6
 the~ hot:2
 the~ house:7
 the~ internet:-3
 the~ jars:-6
 the~ jug:-2
 the~ kettle:7
 the~ kids:-5
 the~ kilo:6
 the~ kitchen:-3
 the~ label:5
 the~ lads:-3
 the~ lady:-5
 the~ last:1
 the~ laundry:-3
 the~ leaflet:2
 the~ letter:3
 the~ library:-6
 the~ lid:1
 the~ light:-6
 the~ line:5
 the~ liquid:7
 the~ list:10
 the~ litre:7
 the~ loaf:-3
 the~ log:-7
 the~ long:2
 the~ lot:3
 the~ lowest:-5
 the~ machine:-5
 the~ man:-4
 the~ margin:-1
 the~ mark:3
 the~ market:-4
 the~ mash:-1
 the~ mass:-4
 the~ measur:2
 the~ mechanic:2
 the~ melt:-1
 the~ mess:-4
 the~ microwave:1
 the~ middle:-6
 the~ mill:-4
 the~ miss:5
 the~ mix:6
 the~ mold:1
 the~ month:-5
 the~ moon:-2
 the~ morn:-6
 the~ most:-10
 the~ mould:-3
 the~ name:-7
 the~ neighbour:-3
 the~ next:-5
 the~ night:-5
 the~ normal:-5
 the~ number:2
 the~ oil:2
 the~ oils:1
 the~ old:-1
 the~ one:2
 the~ ones:-3
 the~ only:-7
 the~ open:2
 the~ order:-6
 the~ original:1
 the~ other:2
 the~ outside:-1
 the~ oven:-8
 the~ packet:8
 the~ page:-5
 the~ pan:3
 the~ pantry:-7
 the~ paper:8
 the~ parish:-7
 the~ past:1
 the~ paste:-4
 the~ patience:-4
 the~ phone:4
 the~ photo:4
 the~ picture:-5
 the~ place:8
 the~ plain:-5
 the~ plastic:2
 the~ plate:5
 the~ point:-2
 the~ porch:-5
 the~ post:1
 the~ postman:3
 the~ pot:1
 the~ potato:-7
 the~ pour:-6
 the~ powder:4
 the~ power:-4
 the~ present:2
 the~ price:-7
 the~ printout:-6
 the~ question:-9
 the~ rack:-5
 the~ radiator:-4
 the~ radio:-6
 the~ rain:-3
 the~ ready:6
 the~ real:-9
 the~ reason:-8
 the~ recipe:1
 the~ record:1
 the~ remain:-3
 the~ render:-4
 the~ rest:1
 the~ right:-8
 the~ roof:2
 the~ row:-6
 the~ rugby:-3
 the~ sack:-4
 the~ safe:4
 the~ salad:1
 the~ same:1
 the~ scale:-2
 the~ school:2
 the~ scum:2
 the~ second:3
 the~ sf:-5
 the~ shed:-2
 the~ sheet:8
 the~ shelf:-3
 the~ shop:4
 the~ shops:-7
 the~ shower:-7
 the~ side:5
 the~ sink:2
 the~ skin:-5
 the~ slip:-2
 the~ slow:-3
 the~ smell:1
 the~ soap':2
 the~ soap:-3
 the~ spatula:-2
 the~ spoon:-2
 the~ spr:-6
 the~ stall:2
 the~ start:1
 the~ steel:6
 the~ step:1
 the~ stick:-9
 the~ stirr:-8
 the~ stove:5
 the~ suds:-3
 the~ sum:-2
 the~ summer:-1
 the~ sums:1
 the~ sun:1
 the~ sunday:5
 the~ superfat:-4
 the~ supermarket:-4
 the~ surface:-6
 the~ swirl:-4
 the~ table:2
 the~ tap:-5
 the~ teacher:-3
 the~ temperature:-4
 the~ test:1
 the~ thermometer:-5
 the~ thing:-3
 the~ third:-2
 the~ thread:-5
 the~ thursday:-5
 the~ tiles:8
 the~ time:2
 the~ tin:5
 the~ top:-3
 the~ trace:-1
 the~ train:-5
 the~ tray:-2
 the~ trimming:2
 the~ tub:2
 the~ unrefin:-6
 the~ usual:6
 the~ varnish:-5
 the~ very:-2
 the~ village:-3
 the~ wall:-5
 the~ war:-8
 the~ wardrobe:-3
 the~ warm:2
 the~ wash:-6
 the~ way:4
 the~ weather:-6
 the~ weekend:-8
 the~ weigh:6
 the~ weight:5
 the~ white:1
 the~ whole:-1
 the~ window:-6
 the~ windowsill:3
 the~ winter:-5
 the~ wire:-3
 the~ wood:-3
 the~ wooden:-4
 the~ word:-5
 the~ workshop:-4
 the~ worktop:-1
 the~ wrong:5
 the~ yard:-5
 the~ year:-7
 the~<:-6
 the~=:-3
 the~>:-1
 the~A:1
 the~B:-8
 the~C:-13
 the~F:5
 the~I:4
 the~K:4
 the~L:-2
 the~M:3
 the~N:-2
 the~T:-7
 the~W:4
 the~X:-5
 the~b:5
 the~l:-1
 the~t:-1
 the~v:-7
 the~w:-6
 thick:-3
 thicken:-3
 thicker:-10
 thick~ like:-5
 thick~ trace:-3
 thin:-3
 thing:-1
 thing~ ?:-6
 thing~ and:-3
 thing~ i:-7
 thing~ in:-5
 think~ ?:-7
 think~ about:2
 think~ i:8
 think~ it:1
 think~ my:1
 think~ of:-7
 think~ that:-9
 think~ the:5
 thinn:6
 thin~ stream:-3
 thin~ trace:-9
 third:2
 third~ attempt:-6
 third~ go:3
 third~ of:1
 third~ time:-6
 this:2
 this~ ::3
 this~ ?:-7
 this~ a:-4
 this~ and:-8
 this~ batch:-1
 this~ be:-2
 this~ because:-6
 this~ before:-3
 this~ but:-6
 this~ for:5
 this~ from:2
 this~ house:4
 this~ i:-4
 this~ in:-1
 this~ is:-5
 this~ loaf:3
 this~ look:-4
 this~ morn:2
 this~ ok:-2
 this~ on:-6
 this~ one:6
 this~ ones:-5
 this~ or:-6
 this~ pot:2
 this~ recipe:-8
 this~ right:-2
 this~ time:5
 this~ to:-5
 this~ was:-4
 this~ way:-3
 this~ week:-2
 this~ weekend:2
 this~ with:-8
 this~ year:4
 this~0:-6
 this~F:3
 tho:-9
 those~ are:2
 those~ days:-5
 those~ fats:-1
 those~ oils:-3
 those~ who:3
 those~0:3
 though:2
 thought:2
 thought~ ?:-4
 thought~ i'd:-7
 thought~ i:-3
 thought~ it:-4
 thought~ on:-7
 though~ i:2
 thread:-7
 threw:6
 threw~ in:7
 threw~ the:-4
 through:2
 throughout:-1
 through~ a:-2
 through~ an:-11
 through~ it:-3
 through~ the:4
 throw:-5
 thrown:7
 throw~ it:-1
 thru:1
 thumb:-4
 thursday:-6
 thx:-5
 tight:-1
 til:-4
 tiles:8
 till~ it:4
 till~ its:-1
 till~ the:-2
 till~0:-5
 time:-3
 timer:-8
 times:2
 times~ i:3
 times~ in:-8
 times~ the:1
 times~0:9
 time~ ::-1
 time~ and:-5
 time~ because:2
 time~ i'd:-1
 time~ i:-1
 time~ in:4
 time~ is:-4
 time~ it:-9
 time~ ive:-1
 time~ lurker:-4
 time~ post:-4
 time~ so:3
 time~ the:2
 time~ to:-4
 time~ with:-7
 time~t:-6
 tins:-6
 tins~ of:-3
 tiny:-2
 tin~ and:-2
 tin~ is:-6
 tin~ of:-4
 tin~ was:-1
 tin~ with:-9
 tip:-3
 tipp:6
 tipp~ in:6
 tipp~ the:-2
 tips:-5
 tip~ ::-6
 title:-2
 title~ ::-4
 to:-1
 toast:-5
 today:-4
 today~ ::4
 today~ ?:-5
 today~ and:1
 toddler:5
 together:-1
 together~ ?:-3
 together~ in:-5
 together~ with:-5
 told:-6
 told~ her:-4
 told~ me:-3
 told~ us:-7
 told~F:-1
 tom:-2
 tomato:5
 tomorrow:-6
 tongue:-2
 tonight:5
 tonight~ ::-7
 tonight~ ?:-2
 too:1
 took:3
 took~ a:-6
 took~ ages:-4
 took~ forever:2
 took~ it:-2
 took~ me:-8
 took~ near:-1
 took~ off:1
 took~ the:2
 took~0:-1
 took~<:2
 took~=:-10
 took~>:-6
 took~N:5
 took~l:4
 took~t:-10
 took~w:-5
 tools:-6
 too~ ?:-8
 too~ and:3
 too~ cold:-5
 too~ dry:-3
 too~ early:-6
 too~ fast:-2
 too~ hard:-2
 too~ harsh:-3
 too~ high:-5
 too~ hot:-6
 too~ late:-1
 too~ little:2
 too~ low:2
 too~ many:5
 too~ much:-4
 too~ quick:5
 too~ sharp:-3
 too~ soft:-4
 too~ soon:-6
 too~ strong:-2
 top:1
 topp:10
 topp~ it:4
 topp~ the:6
 topp~ up:5
 top~ for:-4
 top~ is:-5
 top~ of:2
 top~ shelf:-6
 top~ which:-5
 total~ of:-8
 touch:-5
 touch~ it:-6
 touch~ the:-7
 towel:-5
 towel~ over:-4
 towel~ round:-5
 towel~t:-1
 town:1
 to~ a:2
 to~ about:-1
 to~ add:-3
 to~ ask:-6
 to~ be:3
 to~ bed:-4
 to~ buy:-6
 to~ check:-6
 to~ come:3
 to~ cool:-10
 to~ cut:-4
 to~ everyone:2
 to~ find:-4
 to~ finish:6
 to~ get:-4
 to~ grate:-1
 to~ hand:1
 to~ have:3
 to~ hear:2
 to~ help:6
 to~ her:-7
 to~ hold:2
 to~ it:1
 to~ keep:-5
 to~ know:-6
 to~ light:-3
 to~ look:-8
 to~ me:1
 to~ melt:-8
 to~ my:1
 to~ open:-7
 to~ pour:-2
 to~ put:4
 to~ remember:-8
 to~ rough:-3
 to~ self:-1
 to~ sell:-3
 to~ set:3
 to~ slush:-8
 to~ soap:-5
 to~ someth:-7
 to~ spare:-1
 to~ spoon:-5
 to~ take:4
 to~ tell:-1
 to~ test:-7
 to~ that:-5
 to~ the:-1
 to~ thicken:-2
 to~ this:-8
 to~ throw:-4
 to~ trace:-9
 to~ try:-4
 to~ unmould:-5
 to~ use:-2
 to~ wait:3
 to~ wash:3
 to~ waste:6
 to~ weigh:-6
 to~ write:1
 to~ you:-5
 to~%:5
 to~<:5
 to~=:-3
 to~>:5
 to~F:-9
 to~T:-4
 to~X:-7
 to~b:-4
 to~d:-4
 to~e:-3
 to~t:4
 to~w:-6
 trac:-8
 trace:1
 trace~ ::-7
 trace~ add:3
 trace~ after:-5
 trace~ and:-8
 trace~ at:-2
 trace~ because:7
 trace~ came:-4
 trace~ i:-6
 trace~ in:-7
 trace~ stir:-5
 trace~ then:-2
 trace~ was:-5
 trace~0:-6
 trace~t:-7
 track:4
 tractor:-4
 trac~ after:-2
 trac~ in:-5
 trade:-10
 trail:-3
 train:-6
 translat:-4
 translate:-4
 translat~ from:-3
 translucent:-3
 tray:-5
 trays:-3
 treat:-3
 trial:-8
 trick:-10
 trick~ for:-5
 tried:-12
 tried~ it:-2
 trimming:-1
 tripl:-6
 trouble:-3
 true:-1
 trust:-6
 trust~ it:-6
 trust~ the:-5
 truth:1
 try:-13
 try~ it:-6
 try~ to:-2
 tub:-1
 tube:-5
 tubs:3
 tub~ ::-7
 tub~ and:-8
 tub~ is:-6
 tub~ of:-3
 tub~ says:-8
 tue:-3
 tuesday:-1
 tue~t:-1
 turn:-2
 turns~ out:6
 turns~0:-5
 turn~ it:-2
 turn~ out:6
 turn~ the:-2
 turn~ to:1
 turn~S:-4
 tutor:-2
 twentieth:3
 twice:2
 twice~ a:-4
 twice~ and:3
 twice~ before:-8
 twice~ i:5
 twice~ with:-6
 typ:-8
 type:4
 typed:8
 typed~ the:6
 typo:2
 u:-8
 ugh:-1
 ugly:-7
 um:2
 uncl:-5
 uncle:-3
 under:-5
 underneath:-6
 understand:-6
 under~ a:-3
 under~ it:-3
 under~ the:3
 under~0:-10
 under~d:-3
 under~t:-3
 under~w:-8
 unit:-3
 units:-7
 unit~ ::-3
 unmold:-7
 unmould:-7
 unmould~ after:-5
 unmould~t:-1
 unrefin:-8
 unsaponifi:10
 unscent:-7
 until:-1
 until~ a:-5
 until~ both:-1
 until~ i:-5
 until~ its:-3
 until~ the:4
 until~ you:-2
 until~t:-1
 up:5
 update:3
 upon:3
 up~ ::2
 up~ ?:-6
 up~ again:-7
 up~ by:3
 up~ for:-6
 up~ i:-7
 up~ in:-4
 up~ like:-5
 up~ my:-2
 up~ on:8
 up~ so:1
 up~ the:4
 up~ there:5
 up~ to:4
 up~ with:3
 up~0:9
 ur:-6
 use:-3
 used:3
 used~ a:-1
 used~ for:1
 used~ it:1
 used~ that:3
 used~ the:6
 used~ to:-10
 used~ up:1
 used~0:-3
 used~=:-7
 used~>:-4
 used~F:-3
 used~L:4
 used~N:-3
 used~l:-2
 used~w:-1
 uses:-3
 use~ ?:-3
 use~ a:-2
 use~ for:-1
 use~ in:-3
 use~ it:-7
 use~ the:-4
 use~ up:5
 use~=:1
 use~>:3
 use~F:-7
 use~I:-4
 use~N:-2
 use~l:-3
 using:1
 using~=:-6
 usual:2
 us~ the:-1
 vanish:-4
 varnish:-5
 vegan:-10
 vegetable:-4
 vegetarian:-8
 verdict:-4
 verify:-7
 verify~ the:-6
 version:-5
 version~0:4
 very~ first:-5
 very~ nice:-5
 vet:-7
 video:-6
 village:-3
 village~ hall:-1
 virgin:-7
 voice:3
 volcano:-8
 volume:2
 w:1
 wait:-6
 waits:2
 wait~ for:-7
 wait~ i:-7
 wait~ till:-3
 wait~ until:-6
 wait~t:-3
 walk:4
 wall:-3
 want:4
 wants:-4
 wants~ a:-4
 wants~ it:-4
 wants~ me:-3
 wants~ some:-1
 wants~ the:-6
 wants~ to:-4
 want~ a:-5
 want~ the:5
 want~ to:-2
 want~%:1
 want~0:6
 want~F:-9
 war:-9
 wardrobe:-4
 warm:-6
 warmth:-6
 warm~ in:-5
 warm~ it:-4
 warm~ oils:3
 warm~ the:-9
 warm~ to:-6
 warm~F:-4
 warn:-7
 was:5
 wash:-7
 wash~ it:4
 wash~ the:-3
 wash~ with:-8
 wasnt:14
 wasnt~ enough:1
 wast:4
 waste:-1
 was~ all:3
 was~ already:5
 was~ at:-5
 was~ call:1
 was~ clean:-3
 was~ clear:-7
 was~ cold:2
 was~ done:2
 was~ empty:10
 was~ fine:-2
 was~ finish:6
 was~ for:-1
 was~ full:1
 was~ going:-5
 was~ gone:-3
 was~ hard:-7
 was~ hot:-3
 was~ in:3
 was~ it:-4
 was~ like:2
 was~ made:-3
 was~ meant:4
 was~ melt:4
 was~ my:-4
 was~ near:5
 was~ never:-1
 was~ no:-3
 was~ not:10
 was~ off:9
 was~ old:-5
 was~ on:2
 was~ one:5
 was~ only:1
 was~ open:6
 was~ out:3
 was~ over:3
 was~ pour:3
 was~ ready:-1
 was~ real:5
 was~ right:-5
 was~ so:4
 was~ stand:7
 was~ still:1
 was~ stirr:-3
 was~ that:-6
 was~ the:-5
 was~ there:5
 was~ thick:-4
 was~ told:2
 was~ too:-5
 was~ under:-6
 was~ very:-8
 was~ warm:-5
 was~ weigh:5
 was~ what:-3
 was~ with:1
 was~%:-6
 was~0:-3
 was~<:5
 was~=:-8
 was~>:-9
 was~A:3
 was~F:3
 was~L:5
 was~N:4
 was~X:7
 was~b:3
 was~d:-9
 was~e:6
 was~l:-8
 was~t:-6
 was~v:3
 was~w:5
 watch:-5
 watch~ the:-6
 water:2
 water~ bath:-6
 waxy:-5
 way:2
 way~ in:7
 way~ of:-7
 way~ round:-1
 we:1
 wear:-8
 wear~ goggl:-4
 weather:-7
 wed:1
 wedd:-2
 wedd~ favour:2
 wednesday:-6
 week:-4
 week~ and:-9
 week~ so:3
 week~0:-9
 weigh:-1
 weight:2
 weight~ ::-8
 weight~ and:2
 weight~ g:-3
 weight~ in:3
 weight~ made:-7
 weight~ of:-3
 weight~ oz:-5
 weight~ so:-6
 weight~A:-5
 weigh~ ?:5
 weigh~ a:-5
 weigh~ after:-5
 weigh~ again:4
 weigh~ and:-4
 weigh~ anyth:-2
 weigh~ as:3
 weigh~ by:6
 weigh~ everyth:-9
 weigh~ i:-6
 weigh~ my:2
 weigh~ on:3
 weigh~ one:-4
 weigh~ out:-6
 weigh~ the:3
 weigh~0:2
 weigh~<:-6
 weigh~=:-7
 weigh~F:-3
 weigh~e:8
 weigh~l:-2
 weigh~w:-10
 welcome:-5
 well:-1
 well~ and:-5
 well~ as:-3
 well~ be:7
 well~ have:7
 went:3
 went~ a:5
 went~ above:-6
 went~ away:-7
 went~ back:-1
 went~ brown:-6
 went~ by:-3
 went~ clear:-7
 went~ cloudy:-7
 went~ dark:-3
 went~ down:5
 went~ for:6
 went~ from:-10
 went~ in:7
 went~ into:4
 went~ off:1
 went~ on:3
 went~ over:2
 went~ the:-5
 went~ through:1
 went~ to:-4
 went~ up:1
 went~ with:3
 went~ without:2
 went~ wrong:-4
 went~ yellow:-7
 went~=:-7
 went~S:-6
 were:2
 were~ at:-6
 were~ on:-5
 were~0:2
 were~F:-2
 were~w:-1
 wet:6
 wet~ cloth:-4
 wet~ dog:-4
 weve:-3
 we~ count:-5
 we~ cut:-6
 we~ did:4
 we~ do:3
 we~ got:-7
 we~ had:1
 we~ have:-5
 we~ keep:-6
 we~ made:-8
 we~ make:3
 we~ pour:-4
 we~ put:-6
 we~ render:-3
 we~ say:3
 we~ took:1
 we~ use:-7
 we~ used:-4
 we~ want:5
 we~ went:-2
 we~ were:5
 what:3
 whatever:6
 whatever~ the:9
 whatever~ was:10
 whats:2
 whats~ in:3
 whats~ the:-4
 what~ a:-6
 what~ came:6
 what~ did:-4
 what~ do:3
 what~ does:-8
 what~ g:-4
 what~ happen:-7
 what~ how:-8
 what~ i'd:3
 what~ i:8
 what~ im:4
 what~ is:-5
 what~ it:3
 what~ my:-1
 what~ remain:1
 what~ she:-4
 what~ superfat:-10
 what~ they:5
 what~ was:-3
 what~ we:-2
 what~ would:-7
 what~ you:-2
 what~ youd:-1
 when:-2
 whenever:-1
 when~ both:-6
 when~ cut:-5
 when~ i:1
 when~ it:3
 when~ its:-1
 when~ the:3
 when~ wash:3
 when~ you:1
 when~F:-9
 where:4
 where~ i:-4
 where~ it:6
 where~ she:-7
 where~ the:3
 where~ you:2
 whether:-4
 whether~ it:-3
 whether~ the:1
 whether~F:-7
 whether~b:-5
 which:2
 which~ bring:-1
 which~ has:-2
 which~ i:5
 which~ is:-5
 which~ makes:-5
 which~ of:2
 which~ one:6
 which~ the:1
 which~ was:-5
 which~F:-6
 while:-3
 while~ i:6
 while~ it:-1
 while~ the:-9
 whipp:3
 whisk:-6
 white:-7
 whiteboard:-8
 whiter:-4
 white~ and:1
 white~ as:-7
 white~ powder:-4
 white~ spots:-4
 white~F:-2
 whole:1
 whole~ grams:-8
 whole~ thing:3
 whole~ time:-3
 whos:-3
 whose:4
 whos~ right:-3
 who~ asked:-6
 who~ cant:2
 who~ does:1
 who~ has:-3
 who~ is:-6
 who~ knows:5
 who~ taught:-1
 why:-9
 why~ ?:-4
 why~ does:-3
 why~ i:-5
 why~ it:-5
 why~ its:-4
 why~ the:-7
 why~F:-2
 width:-5
 wife:-1
 wifes:-3
 wife~ likes:-5
 wife~ says:2
 will:-7
 will~ ask:1
 will~ be:-8
 will~ climb:-5
 will~ do:-6
 will~ it:-3
 will~ need:-1
 will~ that:-3
 will~ the:-5
 will~ this:-2
 wind:-5
 window:-10
 windowsill:1
 window~ open:-8
 winter:-6
 winter~ and:1
 winter~ bar:-1
 winter~ hands:-7
 winter~ i:-5
 wipe:-6
 wiped:-2
 wire:-5
 wish:4
 within:-8
 within~t:-7
 without:5
 without~ a:-8
 without~ it:1
 without~ my:-1
 without~ the:2
 without~F:-1
 with~ a:-2
 with~ all:-6
 with~ an:-4
 with~ another:1
 with~ bak:-4
 with~ both:-3
 with~ everyth:6
 with~ freezer:-4
 with~ glov:-2
 with~ goggl:-3
 with~ it:-1
 with~ its:-3
 with~ more:4
 with~ my:-9
 with~ no:-3
 with~ noth:5
 with~ one:4
 with~ only:-7
 with~ some:3
 with~ that:2
 with~ the:2
 with~ this:2
 with~ us:-4
 with~ wet:-4
 with~ what:5
 with~%:8
 with~0:-3
 with~<:-1
 with~=:-3
 with~>:-6
 with~B:-1
 with~C:3
 with~F:-7
 with~I:-6
 with~L:-7
 with~N:1
 with~S:-9
 with~U:1
 with~b:-1
 with~e:-5
 with~l:-8
 with~w:3
 woman:-10
 woman~ at:-2
 women:-4
 wonder:7
 wonky:-9
 wont:-3
 wood:-6
 wooden:-3
 wooden~ box:-3
 wooden~ mould:-7
 wooden~ one:-5
 wooden~ spoon:2
 wood~ stove:-4
 words:-6
 word~ for:-7
 work:-3
 works:-8
 worksheet:-5
 workshop:-4
 worktop:-1
 work~ ?:-2
 work~ in:2
 work~ it:3
 work~ out:-7
 work~ with:3
 worri:3
 worry:-1
 worry~ is:2
 worth:1
 worth~ of:4
 would:-2
 wouldnt:4
 wouldnt~ dissolve:8
 would~ a:-4
 would~ be:-2
 would~ do:-6
 would~ have:-4
 would~ it:-1
 would~ like:4
 would~ love:1
 would~ not:-6
 would~ somebody:1
 would~ take:1
 would~ the:-7
 would~ you:2
 wrap:-7
 wrapp:-11
 wrapper:-6
 wrapp~ in:-6
 wrapp~ it:-6
 wrap~ in:-1
 wrist:-4
 writ:-5
 write:-6
 write~ down:-3
 write~ the:-7
 write~ up:-5
 written:3
 written~ ?:-5
 written~ on:-6
 wrong~ ?:-5
 wrong~ with:-6
 wrote~ ::-4
 wrote~ in:1
 wrote~ it:3
 wrote~ on:-6
 wrote~ that:-5
 wrote~ this:-2
 wrote~F:4
 wrote~e:-1
 wt:-8
 w~ a:-9
 w~ my:-3
 w~ the:1
 w~ w:1
 w~=:-4
 xmas:2
 x~0:3
 x~F:-10
 yall:-6
 yard:-8
 year:-6
 years:-7
 years~ ago:-2
 year~ and:1
 year~ i:-6
 year~ in:-6
 year~ is:4
 year~0:-6
 yellow:-10
 yes:-3
 yesterday:-5
 yes~ i:-1
 yes~ its:-9
 yes~ no:-4
 yes~ or:-1
 yes~ the:-3
 yet:6
 yield:2
 yield~ ::-1
 yield~0:3
 you:-3
 youd:-3
 youll:-3
 young:-3
 your:-9
 youre:-8
 yours:-2
 your~ arm:-2
 your~ own:2
 your~ skin:-4
 your~A:-6
 your~F:-4
 youve:-10
 you~ ?:-2
 you~ all:-6
 you~ and:-5
 you~ are:-4
 you~ ask:2
 you~ asked:-2
 you~ call:-8
 you~ can:-3
 you~ cant:-6
 you~ check:-4
 you~ could:-11
 you~ cut:-3
 you~ do:2
 you~ dont:-7
 you~ feel:-3
 you~ for:-7
 you~ get:-4
 you~ go:-7
 you~ have:1
 you~ know:5
 you~ like:-4
 you~ look:-3
 you~ lot:-3
 you~ make:-6
 you~ need:-7
 you~ pour:-7
 you~ put:-7
 you~ read:1
 you~ say:-1
 you~ see:1
 you~ should:5
 you~ start:3
 you~ tell:3
 you~ think:-8
 you~ to:-3
 you~ trust:-1
 you~ use:-3
 you~ wait:-3
 you~ want:-10
 you~ weigh:-6
 you~ will:3
 you~ wont:2
 you~ work:-2
 zap:-8
 zapp:5
 zappy:-4
 zaps:2
 zap~ test:-3
 zero:4
 zero~ the:6
 üf:-8
%%:-2
%0:-9
%:7
%<:-6
%=:-1
%>:-8
%A:5
%F:-1
%K:-6
%N:2
%S:-5
%W:1
%X:2
%b:-1
%l:-4
%t:-7
%w:3
%~ ?:-2
%~ and:-5
%~ by:1
%~ extra:7
%~ flak:3
%~ for:8
%~ in:-2
%~ is:-3
%~ less:-3
%~ liquid:7
%~ on:5
%~ or:3
%~ over:3
%~ pure:-6
%~ purity:-4
%~ sf:-5
%~ so:5
%~ solution:-2
%~ superfat:3
%~ with:3
%~=:-5
%~A:5
%~F:-5
%~K:-6
%~W:-4
%~X:2
0%:-8
00:-5
0:4
0<:-3
0=:1
0>:-2
0A:-2
0B:1
0C:5
0F:-2
0I:4
0K:-7
0M:3
0N:4
0S:-4
0T:1
0W:2
0X:-5
0b:-3
0d:-3
0l:-3
0r:-2
0t:-6
0v:-8
0w:-5
0~ =:-8
0~ a:-12
0~ after:2
0~ all:5
0~ and:-1
0~ are:3
0~ as:6
0~ at:-1
0~ b:-7
0~ bar:-7
0~ bars:-7
0~ batch:-3
0~ because:9
0~ before:4
0~ big:-3
0~ block:2
0~ both:-3
0~ bottl:-7
0~ bucket:-5
0~ but:-4
0~ by:-1
0~ c:-5
0~ cakes:-3
0~ can:-5
0~ caviti:-6
0~ children:-5
0~ comment:-3
0~ cubes:-1
0~ cut:3
0~ degre:-4
0~ drops:-9
0~ empty:1
0~ evening:-4
0~ except:5
0~ famili:-5
0~ fat:-4
0~ fats:-10
0~ for:-7
0~ from:2
0~ full:-6
0~ gives:-5
0~ goats:-8
0~ goes:-4
0~ good:-1
0~ group:-6
0~ guest:-4
0~ had:-10
0~ i:6
0~ if:-3
0~ in:-2
0~ into:4
0~ is:2
0~ it:-1
0~ its:-1
0~ jars:-2
0~ kitchen:-4
0~ lather:-3
0~ left:-8
0~ like:-4
0~ little:-8
0~ loaf:-3
0~ lyes:-8
0~ made:-7
0~ more:-7
0~ mould:-1
0~ my:5
0~ n:-1
0~ night:-5
0~ no:4
0~ not:3
0~ now:1
0~ of:3
0~ off:-1
0~ oil:-7
0~ oils:-4
0~ on:7
0~ once:2
0~ one:-3
0~ or:5
0~ out:2
0~ p:-8
0~ pcs:-6
0~ people:-7
0~ per:-4
0~ percent:6
0~ piec:-2
0~ please:8
0~ plus:2
0~ pour:-5
0~ pupil:1
0~ right:-3
0~ round:-1
0~ scal:-8
0~ she:-1
0~ silicone:-2
0~ since:5
0~ slic:-5
0~ small:-7
0~ so:-6
0~ someth:1
0~ spoon:1
0~ still:-9
0~ superfat:8
0~ that:-3
0~ thats:3
0~ the:4
0~ then:3
0~ thing:-7
0~ this:3
0~ times:-3
0~ tins:-4
0~ to:3
0~ towel:-7
0~ until:-9
0~ w:5
0~ was:-4
0~ weigh:-4
0~ went:4
0~ were:2
0~ when:4
0~ which:-3
0~ winter:-4
0~ with:-7
0~ x:2
0~ zap:-7
0~ ×:-8
0~0:-3
0~A:-6
0~F:-4
0~L:-1
0~N:-1
0~S:1
0~W:-3
0~X:5
0~b:-10
0~t:-6
0~w:-3
<%:2
<0:-3
<:3
<<:-3
<=:-4
<>:-3
<A:5
<C:2
<F:2
<I:-8
<K:8
<L:5
<N:-3
<S:-2
<W:-5
<d:-5
<l:-8
<v:-3
<w:-1
<~ +:-6
<~ and:5
<~ because:2
<~ i:-6
<~ in:-1
<~ less:-3
<~ more:8
<~ of:3
<~ short:2
<~ so:-1
<~ the:5
<~C:2
<~F:4
<~I:-4
<~L:-4
<~S:-3
<~W:-7
<~X:-6
=%:-11
=0:6
=:-4
=<:-4
==:-3
=>:-2
=A:-3
=F:-3
=I:-3
=K:-1
=L:-1
=N:4
=S:-1
=W:-2
=X:-2
=b:-4
=d:-2
=r:-4
=t:-3
=v:-7
=w:-3
=~ +:-5
=~ ::4
=~ =:-8
=~ after:-1
=~ and:-7
=~ as:3
=~ at:-4
=~ bag:-8
=~ block:-8
=~ check:-2
=~ clean:-4
=~ cold:-1
=~ did:-2
=~ dissolv:-6
=~ does:-1
=~ for:-4
=~ free:-7
=~ from:-2
=~ goes:-3
=~ good:-1
=~ i:-6
=~ im:-7
=~ in:-2
=~ into:-5
=~ is:1
=~ it:-6
=~ its:1
=~ melt:-4
=~ mk:-5
=~ my:2
=~ no:-4
=~ not:-12
=~ of:-2
=~ ok:-2
=~ on:-2
=~ so:-4
=~ superfat:-7
=~ that:-7
=~ then:-4
=~ too:-3
=~ with:4
=~%:-6
=~0:6
=~<:-5
=~=:-2
=~A:-3
=~F:-3
=~L:-3
=~W:-3
=~X:-3
=~t:-1
>%:-2
>0:-6
>:-2
><:-3
>=:-2
>>:-5
>A:-4
>F:-4
>K:-5
>L:1
>W:-5
>e:-11
>l:-5
>t:-2
>w:-5
>~ and:-1
>~ i:-7
>~ in:-2
>~ is:-4
>~ of:-6
>~ oils:-1
>~ so:-5
>~ the:-6
>~A:-3
>~F:4
>~L:-2
>~W:-4
A%:4
A0:5
A:1
A=:-3
AA:2
AB:4
AC:-8
AF:3
AI:-7
AL:1
AN:-6
AS:-2
AW:-3
Ae:2
Al:-8
Ar:-8
At:-4
Aw:-4
A~ +:-1
A~ ::5
A~ ?:-8
A~ a:-8
A~ about:-4
A~ all:1
A~ alright:-5
A~ and:-1
A~ as:8
A~ bag:3
A~ be:-3
A~ because:-5
A~ before:-7
A~ but:-2
A~ by:-1
A~ came:-5
A~ can:-1
A~ check:-7
A~ comes:5
A~ cool:2
A~ correct:-9
A~ dissolv:-2
A~ does:-8
A~ down:3
A~ figure:3
A~ fine:-3
A~ fit:-6
A~ fits:-4
A~ from:7
A~ g:-8
A~ gets:-5
A~ goes:-10
A~ good:-7
A~ got:7
A~ had:3
A~ half:-7
A~ has:5
A~ heavy:2
A~ here:7
A~ i:4
A~ if:4
A~ in:-1
A~ into:-4
A~ is:5
A~ it:4
A~ its:5
A~ jug:-5
A~ left:-3
A~ like:-4
A~ look:2
A~ looks:-2
A~ no:-8
A~ not:5
A~ of:2
A~ ok:-6
A~ okay:-4
A~ on:-8
A~ one:-7
A~ only:2
A~ or:-4
A~ over:-8
A~ paste:2
A~ per:3
A~ please:-7
A~ pls:-4
A~ pot:6
A~ ready:-3
A~ real:-8
A~ right:-6
A~ row:-3
A~ sensible:-5
A~ she:-8
A~ slow:-3
A~ so:3
A~ soap:-3
A~ sprinkl:-2
A~ still:-9
A~ stuck:-1
A~ that:-9
A~ the:-4
A~ then:-2
A~ there:2
A~ too:-9
A~ tub:5
A~ up:7
A~ was:-1
A~ weigh:8
A~ went:2
A~ when:1
A~ where:3
A~ which:1
A~ with:-6
A~ wrong:-5
A~ you:4
A~%:-6
A~<:2
A~=:-2
A~>:-6
A~A:-5
A~F:-2
A~L:3
A~W:1
A~d:-5
A~e:-3
A~r:-6
A~t:5
A~v:-2
B0:-4
B:3
BF:4
B~ and:-9
B~ in:-2
B~ so:-6
C%:-7
C:6
C<:1
CA:5
CW:1
Cv:5
C~ at:4
C~ in:5
C~ is:-3
C~%:-7
C~<:-5
F%:2
F0:-1
F:1
F<:4
F=:-3
FA:-3
FB:5
FF:-1
FI:-4
FK:-3
FL:1
FN:5
FS:-9
FT:-6
FU:3
FX:2
Fd:-3
Fe:1
Fl:-6
Fr:6
Ft:-3
Fv:-7
Fw:1
F~ +:2
F~ ::4
F~ =:2
F~ ?:-7
F~ a:2
F~ about:-2
F~ add:3
F~ after:4
F~ again:2
F~ all:1
F~ alone:-4
F~ altogether:-1
F~ and:1
F~ are:4
F~ as:3
F~ at:2
F~ back:5
F~ bar:-6
F~ bars:-12
F~ batch:-7
F~ because:6
F~ beef:-5
F~ before:-3
F~ block:-2
F~ bottle:-7
F~ but:-3
F~ by:-1
F~ came:1
F~ can:-5
F~ clean:-3
F~ cold:-5
F~ comes:-10
F~ could:4
F~ count:-8
F~ does:-5
F~ down:7
F~ extra:6
F~ figure:1
F~ fills:-9
F~ first:-6
F~ for:-4
F~ free:-6
F~ from:-5
F~ g:-7
F~ gent:-6
F~ gives:-8
F~ go:-3
F~ goes:-10
F~ gone:-3
F~ got:8
F~ grams:-6
F~ had:-2
F~ half:-2
F~ has:-6
F~ here:4
F~ i'd:4
F~ i:2
F~ if:-7
F~ im:7
F~ in:1
F~ instead:5
F~ into:-5
F~ isnt:-1
F~ it:4
F~ its:2
F~ ive:8
F~ jar:-4
F~ jug:4
F~ keeps:-7
F~ l:-3
F~ last:-9
F~ left:1
F~ like:3
F~ line:7
F~ look:3
F~ looks:-3
F~ makes:-3
F~ may:-1
F~ melt:-10
F~ melts:-6
F~ my:3
F~ n:4
F~ never:10
F~ next:-6
F~ no:-7
F~ not:4
F~ of:-1
F~ on:-5
F~ once:-4
F~ one:-12
F~ only:1
F~ or:-8
F~ out:3
F~ over:-5
F~ oyl:-4
F~ packet:9
F~ paste:-7
F~ ran:2
F~ read:1
F~ real:-6
F~ render:-6
F~ right:-5
F~ rspo:-7
F~ says:-4
F~ sets:-4
F~ should:2
F~ since:3
F~ smell:-10
F~ so:5
F~ soap:-5
F~ soaps:-7
F~ stand:-6
F~ stay:8
F~ stays:-1
F~ still:4
F~ stirr:-3
F~ strain:4
F~ stuck:2
F~ takes:-7
F~ than:2
F~ that:-5
F~ thats:3
F~ the:-3
F~ then:1
F~ there:4
F~ thicken:-8
F~ this:-1
F~ through:-6
F~ tin:-2
F~ to:4
F~ together:3
F~ too:-5
F~ trac:-10
F~ tub:-3
F~ turn:8
F~ twice:3
F~ until:8
F~ up:2
F~ used:-4
F~ w:2
F~ warm:-4
F~ was:-2
F~ weigh:-6
F~ went:-2
F~ were:-1
F~ when:1
F~ while:3
F~ will:-7
F~ would:2
F~ wouldnt:-2
F~ you:4
F~0:4
F~<:2
F~=:-2
F~>:-1
F~A:-4
F~F:-4
F~N:6
F~W:-2
F~d:-3
F~e:-1
F~t:-10
I0:2
I:2
IA:-3
II:2
IL:4
IW:-1
Ib:-6
Id:4
Iw:-7
I~ +:-3
I~ ::2
I~ and:-1
I~ bath:-1
I~ first:-5
I~ had:8
I~ in:-7
I~ is:-1
I~ it:7
I~ round:-8
I~ so:-6
I~ tray:1
I~ was:7
I~<:2
K%:-6
K0:-10
K:1
K=:-1
K>:-7
KA:-7
KF:-6
KL:-4
KW:-3
Kd:-7
Kr:2
Kt:-3
K~ ::-6
K~ and:-5
K~ g:-7
K~ in:-3
K~ into:2
K~ is:3
K~ mixed:4
K~ my:-9
K~ of:-6
K~ on:4
K~ was:-4
K~%:-8
K~>:-7
K~A:-2
L:2
L<:-5
L>:4
LA:-6
LF:-1
LI:4
LL:2
LN:3
LS:6
LU:-4
LW:2
LX:-2
Lb:1
Le:3
Ll:-6
Lt:-2
Lv:-6
Lw:-2
L~ ::-10
L~ a:1
L~ after:-2
L~ at:-1
L~ bar:-7
L~ bars:-5
L~ batch:-7
L~ because:2
L~ boil:3
L~ by:-1
L~ cold:-1
L~ flat:5
L~ from:10
L~ frozen:-8
L~ goes:-7
L~ i:-2
L~ in:-1
L~ instead:-8
L~ is:1
L~ it:-1
L~ no:-7
L~ of:7
L~ on:4
L~ out:6
L~ over:3
L~ pot:-6
L~ same:8
L~ so:2
L~ soap:-7
L~ stage:-4
L~ thaw:-5
L~ the:5
L~ to:3
L~ towel:2
L~ was:4
L~ went:4
L~ which:7
L~ with:4
L~0:-2
L~=:-1
L~>:-2
L~X:-4
L~b:8
L~l:-9
L~t:-4
L~w:1
M0:3
M:3
MA:3
M~ and:-4
M~ in:4
M~ is:2
M~ soap:-8
M~ was:1
N0:5
N:10
N<:-2
NA:-5
NL:2
NN:-2
Nb:4
Nl:2
Nt:-8
Nw:4
N~ after:-1
N~ and:-9
N~ as:1
N~ at:-1
N~ because:2
N~ from:11
N~ i:9
N~ if:1
N~ in:1
N~ instead:-2
N~ is:-3
N~ it:9
N~ or:-6
N~ same:8
N~ since:7
N~ that:-2
N~ the:6
N~ to:4
N~ was:-5
N~ where:8
N~ which:2
N~ would:-7
N~N:-1
S%:-8
S0:-6
S:-5
S<:-3
SF:-8
SL:-5
SN:8
SS:-5
SX:-3
Sd:-1
St:-5
Sv:-4
Sw:-4
S~ ::-5
S~ a:-6
S~ and:-1
S~ as:-1
S~ at:-6
S~ because:3
S~ blend:-4
S~ fades:-3
S~ for:-6
S~ from:-5
S~ goes:-4
S~ i:-7
S~ in:1
S~ is:6
S~ leav:-5
S~ mould:-7
S~ no:-2
S~ once:-3
S~ only:7
S~ powder:-4
S~ smell:-6
S~ spots:-5
S~ the:-4
S~ then:-4
S~ was:1
S~ when:-5
S~ which:-5
S~0:-4
S~<:-3
S~S:-4
S~w:-4
T0:-3
T:-8
TF:-4
T~ of:-4
T~ oils:-3
U0:-1
U:5
UF:2
Ut:-3
U~ i:-7
U~ in:2
U~ stage:-3
W%:-7
W0:7
W:1
W<:5
W=:-3
W>:-3
WA:-1
WF:-4
WI:-2
WL:7
WS:-2
WW:3
Wb:1
Wd:-5
We:-2
Wl:-1
Wr:1
Wt:-1
Wv:-4
W~ +:-2
W~ =:-6
W~ ?:-8
W~ a:6
W~ after:-3
W~ all:-1
W~ and:-2
W~ as:4
W~ at:4
W~ because:4
W~ before:3
W~ boil:-2
W~ but:1
W~ by:-1
W~ clear:-5
W~ does:-6
W~ down:3
W~ first:-5
W~ for:-5
W~ from:-6
W~ g:-8
W~ got:-4
W~ here:-4
W~ i:7
W~ in:-2
W~ into:-8
W~ is:2
W~ it:2
W~ let:-3
W~ looks:-6
W~ makes:-8
W~ never:-5
W~ on:-9
W~ or:5
W~ out:-9
W~ outdoor:-1
W~ since:1
W~ so:-2
W~ that:-5
W~ the:3
W~ then:-1
W~ to:-9
W~ too:7
W~ was:9
W~ went:4
W~ when:7
W~ which:4
W~ with:1
W~ would:-5
W~0:2
W~<:1
W~=:-3
W~A:-4
W~r:-6
W~t:-1
W~v:-3
X%:2
X:-2
X<:1
X=:-7
X>:-2
XA:-4
XC:-7
XF:-3
XL:4
XN:9
XS:-2
XW:2
XX:-1
Xl:3
Xt:-4
Xv:-4
Xw:-1
X~ ::-2
X~ ?:-6
X~ a:-7
X~ at:-6
X~ bar:4
X~ bars:-7
X~ came:-5
X~ dissolv:-10
X~ fine:-4
X~ for:2
X~ from:-7
X~ goes:-3
X~ ground:-7
X~ i:4
X~ in:-2
X~ is:-6
X~ it:-5
X~ makes:-1
X~ no:-4
X~ of:-7
X~ on:-2
X~ so:-4
X~ the:-6
X~ this:1
X~ to:-11
X~ was:3
X~ went:2
X~0:2
X~<:-5
X~L:2
X~W:-2
X~v:-3
X~w:-5
^ *:-7
^ ::4
^ =:-5
^ a:-1
^ about:12
^ add:1
^ added:10
^ after:2
^ all:1
^ also:-3
^ alway:3
^ am:-4
^ an:5
^ and:-7
^ answer:-1
^ any:-7
^ anyone:-9
^ anyth:-4
^ are:-3
^ as:4
^ ask:-8
^ at:-1
^ attempt:-5
^ b:-8
^ back:-8
^ bar:-5
^ bars:-6
^ base:-4
^ basic:-4
^ batch:-9
^ be:-7
^ because:-1
^ been:-6
^ before:-8
^ between:6
^ big:-7
^ bit:3
^ blend:-7
^ blender:-7
^ blue:-5
^ boil:3
^ bonsoir:-4
^ book:-9
^ both:-8
^ bottle:9
^ bought:-7
^ box:-4
^ bring:-1
^ bubbl:-7
^ but:-10
^ by:-5
^ c:-5
^ came:1
^ castile:-7
^ chang:3
^ check:-11
^ christma:-4
^ clear:1
^ cold:-4
^ combine:-4
^ comment:-4
^ confetti:-5
^ cook:-2
^ cool:-2
^ copi:-4
^ correct:3
^ correction:8
^ cost:-9
^ could:-3
^ couldnt:8
^ cousin:-1
^ cover:-6
^ crock:-3
^ crockpot:-5
^ cure:-4
^ cured:-5
^ cut:-3
^ d:-5
^ dad:2
^ dads:-5
^ date:-2
^ day:-8
^ dear:3
^ did:-1
^ didnt:3
^ dissolv:-4
^ dissolve:-2
^ do:-3
^ does:-3
^ dog:3
^ done:-4
^ dont:-11
^ doubl:3
^ dropp:-1
^ e:-4
^ earlier:-6
^ edit:1
^ ended:4
^ enough:-6
^ entry:2
^ even:-2
^ every:-5
^ everyone:-6
^ everyth:3
^ expect:-7
^ export:-4
^ f:-6
^ fat:-7
^ fats:-9
^ fill:-7
^ fills:-4
^ fine:-3
^ first:-2
^ for:3
^ forgot:-2
^ found:7
^ freeze:-6
^ friend:-2
^ from:-3
^ g:-6
^ gave:-6
^ gel:-7
^ gell:4
^ give:-7
^ glov:-3
^ goat:-6
^ goes:-4
^ goggl:-5
^ going:1
^ gonna:5
^ good:-5
^ got:-8
^ grams:-6
^ gran:2
^ grandad:-1
^ grandma:-5
^ grandmother:-1
^ grandpa:3
^ granny:-4
^ grans:-2
^ grat:-7
^ greeting:-6
^ had:4
^ half:1
^ hallo:-2
^ hand:2
^ handout:-4
^ hard:-5
^ has:-5
^ have:-7
^ he:-4
^ heat:-7
^ hello:-3
^ help:5
^ her:1
^ here:-8
^ heres:-7
^ hers:-7
^ hes:3
^ hey:-5
^ hi:1
^ his:-6
^ hiya:2
^ hola:-2
^ hope:-2
^ hot:1
^ how:-11
^ hp:-4
^ hubby:3
^ i'd:3
^ i:-1
^ if:-10
^ ignore:2
^ im:3
^ in:-6
^ ingredient:-4
^ instead:10
^ into:-2
^ is:-7
^ it:4
^ item:-3
^ itll:-2
^ its:-4
^ ive:-6
^ jug:5
^ keep:5
^ kept:-1
^ kids:-5
^ kind:-1
^ knock:2
^ label:-10
^ last:-4
^ lather:-6
^ laundry:-5
^ leave:-3
^ left:-2
^ leftover:-7
^ let:-1
^ lid:1
^ like:-3
^ line:-3
^ liquid:-5
^ list:-8
^ log:-5
^ lol:-5
^ long:-5
^ look:-5
^ looks:-4
^ lost:-6
^ lot:-6
^ love:-4
^ lye's:6
^ m:-5
^ made:4
^ make:7
^ makes:-2
^ many:-4
^ market:-6
^ meanwhile:-1
^ measur:-1
^ mind:-2
^ mine:-8
^ mines:3
^ mix:-7
^ mixed:-4
^ mold:-6
^ morn:-6
^ mould:-6
^ mum:-6
^ mums:5
^ must:-4
^ my:-3
^ n:-9
^ name:-3
^ nb:1
^ need:-4
^ nephew:1
^ never:-4
^ new:-1
^ next:-11
^ nice:-5
^ no:3
^ nobody:-3
^ none:-6
^ normal:1
^ note:1
^ notebook:-6
^ notes:-1
^ noth:-10
^ now:1
^ number:-2
^ o:-5
^ oat:-6
^ of:-1
^ oh:1
^ oil:-6
^ oils:-3
^ ok:-3
^ okay:-4
^ old:-4
^ on:-6
^ once:-3
^ one:1
^ or:-4
^ other:-5
^ our:-5
^ ours:-5
^ out:1
^ outside:-5
^ oven:-3
^ page:-4
^ paid:-2
^ passt:-3
^ past:-4
^ paste:1
^ people:-5
^ per:1
^ ph:-5
^ phase:-3
^ phone:-3
^ photo:-8
^ plain:-6
^ plan:-5
^ plann:-6
^ please:1
^ pls:-6
^ plus:3
^ post:5
^ pot:6
^ prep:-2
^ press:-5
^ pretty:-1
^ print:-9
^ ps:3
^ pull:3
^ purity:8
^ put:-4
^ q:-7
^ question:-7
^ quick:-4
^ rain:5
^ ran:4
^ re:-4
^ read:4
^ reader:2
^ ready:-4
^ recipe:-6
^ remark:-7
^ render:-3
^ replac:-2
^ rest:-3
^ result:-5
^ right:-6
^ room:-5
^ safe:-4
^ same:1
^ sat:-5
^ scal:4
^ scale:7
^ scoop:-4
^ scrap:4
^ sells:-4
^ set:-5
^ sf:-3
^ shav:-3
^ shave:-4
^ she:-5
^ shes:-3
^ should:-4
^ since:5
^ sis:1
^ sister:-1
^ slow:-5
^ smell:-7
^ snow:2
^ so:-6
^ soap:-8
^ soft:-3
^ sold:-7
^ some:2
^ somebody:-2
^ someone:-3
^ somewhere:1
^ sound:-4
^ source:5
^ spill:-2
^ split:2
^ spoon:-3
^ sry:-9
^ stamp:-5
^ start:-9
^ step:-1
^ stick:-7
^ still:-2
^ stir:-4
^ stirr:-4
^ strain:3
^ student:3
^ subject:-3
^ sum:-4
^ sunday:-9
^ superfat:1
^ swap:3
^ swapp:3
^ swirl:-8
^ switch:-5
^ take:-3
^ tare:1
^ teacher:1
^ tell:-9
^ test:-6
^ text:-6
^ thank:-6
^ thats:-3
^ the:-2
^ then:-3
^ ther:-6
^ there:-2
^ these:-1
^ they:-10
^ third:-3
^ this:3
^ those:3
^ thought:-2
^ threw:8
^ thx:-4
^ tip:-5
^ title:-4
^ to:1
^ today:1
^ tonight:-4
^ too:-1
^ took:2
^ total:-4
^ towel:-4
^ trac:2
^ trace:-4
^ translat:-3
^ tried:-4
^ try:-4
^ tub:-7
^ turn:-4
^ unit:-3
^ unmould:-5
^ update:1
^ use:2
^ used:4
^ using:-8
^ version:-9
^ very:-7
^ wait:4
^ want:2
^ warm:-7
^ was:-4
^ wash:-7
^ we:1
^ wed:1
^ week:-5
^ weigh:-8
^ weight:-9
^ well:-6
^ went:2
^ were:3
^ weve:-7
^ what:-7
^ whats:-6
^ when:-8
^ which:-8
^ while:-2
^ who:-4
^ whoever:-4
^ whole:5
^ whos:-3
^ why:-7
^ will:-4
^ with:-4
^ work:-3
^ worksheet:-5
^ workshop:-3
^ would:-2
^ wrapp:-9
^ write:2
^ written:4
^ wrote:-3
^ x:-9
^ years:3
^ yes:-9
^ yesterday:-7
^ yield:2
^ you:-7
^ youll:3
^ zap:-4
^%:-7
^0:-5
^<:-1
^=:-4
^>:-11
^C:-12
^F:1
^I:-3
^K:-2
^L:-1
^M:1
^N:-2
^S:-9
^T:-5
^U:2
^X:-5
^b:1
^d:-4
^e:-9
^l:7
^r:4
^v:-1
^w:-3
any:-2
b%:-3
b0:3
b:3
bA:3
bF:-4
bL:10
bN:6
bW:9
bb:-7
bt:-5
bw:-1
b~ ?:10
b~ a:-3
b~ after:-7
b~ and:-7
b~ as:-7
b~ bars:-6
b~ because:-4
b~ before:3
b~ but:7
b~ by:7
b~ fine:-4
b~ for:7
b~ i:2
b~ if:7
b~ in:-2
b~ is:6
b~ it:3
b~ my:4
b~ not:-4
b~ of:1
b~ on:-4
b~ or:7
b~ right:-9
b~ still:3
b~ the:5
b~ then:7
b~ too:1
b~ was:5
b~ with:1
b~ x:-7
b~0:-8
b~L:1
d%:-5
d0:-8
d:-6
d=:-3
dA:-6
dF:-9
dI:-6
dK:-4
dL:-6
dS:-1
dX:-2
db:-4
dd:-4
dt:-1
dv:-1
dw:-1
d~ ::-1
d~ ?:-3
d~ and:-4
d~ at:-3
d~ blend:-1
d~ both:-2
d~ by:-4
d~ for:-4
d~ here:-2
d~ in:-4
d~ into:-1
d~ it:-6
d~ no:-5
d~ oils:-1
d~ or:-3
d~ pour:-2
d~ so:-8
d~ stirr:-2
d~ the:-7
d~ then:-6
d~ trace:-1
d~ when:-8
d~A:-7
d~t:-1
e%:-6
e0:4
e:3
e=:-2
e>:-5
eA:-1
eF:-1
eN:10
eW:-3
eX:5
ee:-6
et:5
e~ +:5
e~ all:1
e~ and:-4
e~ as:4
e~ but:12
e~ for:-1
e~ g:-10
e~ grams:-5
e~ in:8
e~ is:5
e~ minus:7
e~ of:3
e~ on:-3
e~ or:8
e~ was:11
e~ with:10
e~A:-1
e~F:-4
e~W:-3
l%:-6
l0:3
l:-3
l=:-5
l>:-5
lA:2
lF:-7
lL:-1
lN:2
lW:-4
lX:-5
ll:-7
long:1
lt:1
lv:-7
lw:-5
l~ and:-6
l~ as:-7
l~ for:3
l~ i:-8
l~ in:-9
l~ is:-3
l~ of:-2
l~ on:2
l~ right:-1
l~ the:-6
l~ was:-6
l~ went:2
l~ with:2
l~L:2
l~t:-6
no figure:-6
no name:-6
r%:-7
r0:2
r:2
r>:-5
rA:1
rF:9
rK:3
rW:-3
rt:-7
r~ as:-10
r~ by:2
r~K:3
short:-6
t%:-5
t0:-2
t:-5
t<:7
t=:-3
t>:-1
tA:1
tF:-5
tK:-3
tL:-5
tN:-4
tS:-1
tU:-5
tX:-6
tb:-2
td:-1
te:-10
tl:-9
tt:-2
tv:-1
tw:-2
t~ ::1
t~ ?:-7
t~ a:-4
t~ add:5
t~ added:1
t~ after:-7
t~ ago:-9
t~ all:-6
t~ and:-3
t~ at:-4
t~ because:-9
t~ before:4
t~ blend:-3
t~ both:-3
t~ but:-1
t~ by:-6
t~ can:-4
t~ cook:-3
t~ cover:-2
t~ cure:-1
t~ cured:-2
t~ cut:-1
t~ day:-2
t~ did:-4
t~ each:-1
t~ edges:-5
t~ flat:-5
t~ for:1
t~ from:-8
t~ gel:-3
t~ i:-4
t~ if:-6
t~ in:-9
t~ into:-3
t~ is:-8
t~ it:-6
t~ its:1
t~ ive:-6
t~ later:-8
t~ lid:-6
t~ lined:-1
t~ loaf:-3
t~ long:-2
t~ makes:-1
t~ mash:-2
t~ melt:-2
t~ mine:-7
t~ mix:-5
t~ mould:-2
t~ my:-5
t~ no:-4
t~ now:-7
t~ of:2
t~ off:-2
t~ oils:-2
t~ old:3
t~ on:-7
t~ or:-4
t~ paste:-9
t~ pot:3
t~ pour:-4
t~ ready:-4
t~ rest:-8
t~ since:-6
t~ so:-3
t~ still:-6
t~ stir:-1
t~ stirr:-5
t~ the:-5
t~ then:-6
t~ they:-3
t~ till:-3
t~ to:-6
t~ trace:-5
t~ under:-1
t~ unmould:-4
t~ until:-4
t~ used:-2
t~ wait:-2
t~ was:-6
t~ we:-5
t~ weigh:-2
t~ when:-5
t~ which:-2
t~ with:2
t~ yes:2
t~ zap:-1
t~0:-2
t~=:-2
t~A:-4
t~F:-2
t~K:-2
t~L:-3
t~S:-1
t~U:-4
t~W:2
t~X:-6
t~b:-4
t~d:-2
t~t:-5
v0:-5
v=:3
vA:3
vC:1
vF:-3
vK:8
vL:3
vN:6
vS:-3
vW:6
vX:-3
vb:-2
vd:-1
vl:-6
vt:3
vv:4
vw:1
v~ a:-5
v~ and:1
v~ at:-3
v~ bottle:-1
v~ can:-9
v~ for:-4
v~ i:2
v~ in:-4
v~ is:-8
v~ of:2
v~ one:-3
v~ or:-2
v~ pot:-9
v~ so:-1
v~ to:5
v~C:3
v~S:-1
v~W:3
v~X:-3
w%:-6
w0:2
w<:-12
w=:-6
w>:4
wC:7
wF:1
wI:-3
wL:-1
wN:1
wS:-5
wW:-1
wX:2
wb:2
wd:3
wl:-12
wt:-10
wv:-1
w~ a:3
w~ after:-6
w~ as:-7
w~ at:-6
w~ cubes:-6
w~ dissolv:1
w~ empty:-1
w~ for:-1
w~ fresh:-8
w~ from:-8
w~ goes:-7
w~ in:-4
w~ instead:-12
w~ it:-1
w~ loaf:-4
w~ more:-2
w~ mould:3
w~ no:-2
w~ of:1
w~ on:-3
w~ one:-1
w~ or:-4
w~ out:-9
w~ per:2
w~ so:-3
w~ steps:1
w~ the:-6
w~ to:-4
w~ together:-7
w~ was:5
w~ wet:-7
w~ when:-7
w~0:3
w~C:4
w~I:3
w~L:-9
w~N:-1
w~S:-4
w~X:-6
w~w:-3`;
