/** What each sign of a note weighs for its bearing on the pot and against it, in tenths of a logit: learned, `npm run generate:bearing`. */
export const weights = ` *:-7
 *~A:-7
 *~F:-3
 +:2
 +~ a:-5
 +~0:5
 +~<:-2
 +~=:-4
 +~A:-5
 +~F:-9
 +~W:-7
 .:7
 .~%:5
 .~0:4
 ::1
 :~ a:4
 :~ about:-5
 :~ all:5
 :~ as:-4
 :~ cook:-1
 :~ do:-2
 :~ does:-2
 :~ g:-3
 :~ goggl:-4
 :~ good:-6
 :~ half:6
 :~ i'd:5
 :~ i:5
 :~ in:5
 :~ is:-8
 :~ it:2
 :~ ive:1
 :~ kitchen:1
 :~ me:-7
 :~ melt:-9
 :~ no:2
 :~ none:8
 :~ one:-7
 :~ re:-2
 :~ soap:-6
 :~ the:-2
 :~ too:2
 :~ was:-5
 :~ weigh:1
 :~ what:3
 :~ why:-3
 :~ winter:-2
 :~ with:2
 :~ yes:4
 :~%:-6
 :~0:-5
 :~<:-3
 :~=:-5
 :~>:-8
 :~A:-1
 :~L:-1
 :~N:1
 :~S:-5
 :~T:-3
 :~W:-3
 :~X:-1
 :~b:-5
 :~d:-4
 :~e:-1
 :~l:-9
 :~t:-5
 :~v:-6
 :~w:2
 =:-2
 =~ =:-6
 =~0:-5
 =~=:-4
 =~>:-2
 =~l:-7
 ?:-3
 a:-2
 about:-2
 about~ a:5
 about~ an:-5
 about~ it:-2
 about~ right:-2
 about~ superfat:-8
 about~ the:3
 about~ to:-5
 about~%:-4
 about~0:-2
 about~<:5
 about~>:-6
 about~F:-5
 about~b:3
 about~d:-2
 about~t:-6
 about~v:3
 about~w:3
 above:4
 above~ is:3
 above~d:-6
 abt:-7
 accident:4
 accord:6
 accord~ to:6
 account:6
 acros:4
 acros~ the:6
 actual:9
 actual~N:4
 add:-2
 added:7
 added~ a:1
 added~ another:-2
 added~ at:-1
 added~ it:4
 added~ the:2
 added~ to:-8
 added~<:-6
 added~=:-10
 added~v:6
 added~w:3
 adds:-10
 adds~ up:-9
 add~ a:1
 add~ it:-7
 add~ the:-5
 add~ to:4
 add~ up:-1
 add~<:-3
 add~=:-4
 add~F:4
 add~w:-6
 advice:2
 afresh:-8
 after:1
 afterward:2
 after~ a:-1
 after~ an:1
 after~ christma:-6
 after~ cook:4
 after~ cure:-1
 after~ i:2
 after~ it:8
 after~ last:1
 after~ pour:3
 after~ strain:2
 after~ that:-5
 after~ the:-2
 after~ this:-10
 after~0:-7
 after~t:-5
 again:-1
 against:3
 against~ the:6
 again~ ::2
 again~ ?:2
 again~ after:-2
 again~ and:-10
 again~ at:-4
 again~ for:-7
 again~ with:4
 age:-7
 ages:-2
 ages~ to:-4
 ago:-9
 ago~ and:-1
 agre:-4
 agree:-7
 agree~ with:-3
 ahead:1
 aim:6
 aim~ for:6
 air:-2
 air~ cupboard:-1
 aisle:4
 aleppo:-5
 alike:8
 alkali:-6
 all:1
 allergen:-5
 allergic:6
 allergic~ to:-8
 allergy:6
 allotment:-4
 allow:-6
 all~ ::-3
 all~ ?:3
 all~ and:5
 all~ at:4
 all~ but:7
 all~ by:-7
 all~ day:-7
 all~ down:7
 all~ fats:-9
 all~ first:2
 all~ g:-9
 all~ good:-7
 all~ grams:-7
 all~ i:3
 all~ in:-9
 all~ is:-6
 all~ its:1
 all~ my:-7
 all~ of:-2
 all~ on:-8
 all~ over:-6
 all~ right:-9
 all~ that:-1
 all~ the:-5
 all~ there:4
 all~ together:-9
 all~ told:-2
 all~ up:-6
 all~ week:2
 all~ weigh:-1
 all~0:1
 all~=:-6
 all~F:3
 all~L:-3
 all~W:3
 all~b:-2
 all~e:7
 almost:2
 alone:-2
 along:9
 along~ the:-1
 along~ with:5
 already:7
 already~ dissolv:6
 already~ in:4
 already~ pour:-1
 already~ put:10
 already~ so:1
 alright:-4
 alright~ ?:-3
 alright~ for:-3
 also:3
 also~ a:-2
 also~=:-7
 also~w:6
 alter:4
 although:3
 altogether:-7
 alu:-3
 aluminium:-2
 alway:-3
 alway~ did:-6
 alway~ said:-6
 alway~ with:6
 am:1
 american:-8
 ammonia:-6
 amount:2
 amount~ ?:-4
 amount~ g:-3
 amount~ of:-1
 am~ a:-5
 am~ from:-6
 am~ i:-1
 an:-2
 and~ a:-4
 and~ about:-5
 and~ add:-6
 and~ added:-2
 and~ after:-1
 and~ again:3
 and~ all:7
 and~ an:-6
 and~ another:-9
 and~ asked:-6
 and~ at:-8
 and~ bang:-1
 and~ blend:-5
 and~ both:-1
 and~ by:1
 and~ call:3
 and~ came:-7
 and~ clear:-4
 and~ cook:4
 and~ cool:3
 and~ couldnt:-1
 and~ do:1
 and~ does:-4
 and~ dont:-5
 and~ even:2
 and~ every:-4
 and~ everyth:-2
 and~ fill:4
 and~ for:1
 and~ forgot:-3
 and~ found:5
 and~ gave:3
 and~ give:4
 and~ glov:-2
 and~ go:-2
 and~ goggl:-3
 and~ got:-9
 and~ half:-7
 and~ hard:-7
 and~ has:3
 and~ have:-5
 and~ he:2
 and~ her:-5
 and~ his:-9
 and~ honest:-6
 and~ how:-6
 and~ i'd:-2
 and~ i:5
 and~ if:3
 and~ im:-1
 and~ in:-2
 and~ into:3
 and~ is:-3
 and~ it:-4
 and~ itll:-6
 and~ its:-3
 and~ ive:-1
 and~ keep:-7
 and~ kept:1
 and~ last:-4
 and~ left:4
 and~ let:-5
 and~ lost:-8
 and~ me:-3
 and~ melt:-5
 and~ mine:1
 and~ mixed:-3
 and~ my:-1
 and~ neither:3
 and~ never:-1
 and~ no:1
 and~ nobody:-1
 and~ none:6
 and~ not:-3
 and~ noth:-2
 and~ now:2
 and~ of:2
 and~ off:-5
 and~ once:-1
 and~ one:-1
 and~ only:2
 and~ pour:3
 and~ put:3
 and~ said:-5
 and~ says:3
 and~ see:-4
 and~ she:-4
 and~ since:1
 and~ smell:-3
 and~ so:2
 and~ soap:-4
 and~ some:3
 and~ someth:7
 and~ sprinkle:-2
 and~ start:-5
 and~ stay:-5
 and~ still:-2
 and~ stir:-1
 and~ stirr:-8
 and~ straight:-5
 and~ strain:-5
 and~ stuck:7
 and~ swear:-8
 and~ swirl:2
 and~ tell:-4
 and~ that:6
 and~ thats:-1
 and~ the:-3
 and~ then:4
 and~ ther:6
 and~ there:4
 and~ they:-7
 and~ this:4
 and~ those:1
 and~ tipp:8
 and~ to:-5
 and~ together:2
 and~ took:10
 and~ turn:-4
 and~ use:4
 and~ used:3
 and~ wait:-2
 and~ want:-5
 and~ wants:-6
 and~ warm:-1
 and~ was:1
 and~ we:2
 and~ weigh:2
 and~ went:-5
 and~ when:-3
 and~ whether:-5
 and~ white:-6
 and~ will:-4
 and~ with:-3
 and~ would:-5
 and~ yes:-2
 and~ you:-2
 and~%:-4
 and~0:2
 and~<:1
 and~=:-4
 and~A:-3
 and~F:-5
 and~L:-5
 and~N:8
 and~S:-3
 and~X:1
 and~b:-11
 and~e:-1
 and~l:-7
 and~t:-6
 and~v:3
 and~w:-3
 another:3
 another~ day:-6
 another~0:9
 another~<:5
 another~t:-5
 another~v:-2
 another~w:-8
 answer:-3
 answer~ ::-6
 answer~ is:-2
 answer~ the:4
 any:-1
 anybody:1
 anyhow:-3
 anyone:-8
 anyone~ know:1
 anyone~ tried:-4
 anyth:-7
 anyth~ in:-3
 anyth~ off:-3
 anyth~ wrong:-3
 anyway:-4
 anywhere:-1
 anywhere~ near:-7
 any~A:-4
 any~S:-8
 an~ earlier:-7
 an~ envelope:-5
 an~ extra:5
 an~ eye:-2
 an~ hour:-7
 an~ old:-5
 an~ older:-2
 an~I:4
 an~L:4
 apart:-10
 app:-1
 approx:1
 app~ puts:-3
 april:-1
 apron:-5
 are:-1
 are~ a:-3
 are~ dry:4
 are~ for:3
 are~ from:-8
 are~ full:-2
 are~ in:-7
 are~ no:-6
 are~ not:-7
 are~ now:3
 are~ right:-5
 are~ still:-9
 are~ the:-4
 are~ what:1
 are~0:2
 are~=:-3
 are~F:-3
 argu:-9
 arithmetic:-7
 arm:-8
 around:-3
 around~ the:-4
 around~%:1
 around~0:-3
 around~d:-3
 around~w:-1
 arriv:-7
 as:3
 ash:-10
 ashes:-8
 ash~ and:-3
 ash~ on:-8
 aside:-5
 ask:-3
 asked:-7
 asked~ about:-6
 asked~ for:-4
 asked~ if:-4
 asked~ in:-2
 asked~ me:1
 asked~ whether:-5
 asks:-9
 ask~ ::-3
 ask~ about:-8
 ask~ for:-5
 ask~ you:-3
 asleep:-8
 assay:8
 as~ a:1
 as~ above:-6
 as~ alway:6
 as~ anyth:-4
 as~ before:6
 as~ ever:-7
 as~ far:-4
 as~ i:6
 as~ if:2
 as~ in:-1
 as~ is:6
 as~ it:-2
 as~ list:-4
 as~ long:-9
 as~ much:1
 as~ on:-6
 as~ one:1
 as~ print:6
 as~ promis:-6
 as~ she:2
 as~ snow:-4
 as~ the:4
 as~ well:3
 as~ written:-6
 as~ you:-8
 as~%:1
 as~0:1
 as~>:3
 as~A:4
 as~F:-2
 as~I:-10
 as~L:-5
 as~X:-4
 at:-2
 ate:6
 attempt:-6
 attempt~0:-4
 attic:-3
 at~ a:-7
 at~ all:-2
 at~ around:-4
 at~ christma:-3
 at~ church:-8
 at~ day:-7
 at~ easter:-5
 at~ first:-6
 at~ half:-7
 at~ home:2
 at~ hour:2
 at~ it:4
 at~ least:-3
 at~ light:1
 at~ liquid:-3
 at~ me:3
 at~ minute:-2
 at~ my:-4
 at~ once:-6
 at~ our:-6
 at~ room:-5
 at~ rough:-1
 at~ school:-6
 at~ that:1
 at~ the:1
 at~ thin:-6
 at~ this:-6
 at~ trace:6
 at~ week:-6
 at~ work:-1
 at~%:4
 at~0:-4
 at~<:7
 at~=:-9
 at~b:1
 at~d:-4
 at~e:3
 at~l:-5
 at~t:-10
 at~w:-4
 august:2
 aunt:-4
 aunti:-3
 auntie:4
 aunts:4
 aunt~ in:-5
 aunt~ says:-6
 aunt~ sent:1
 autumn:-10
 average:-4
 away:-2
 away~ and:1
 awful:1
 a~ ::-8
 a~ baby:-1
 a~ bad:-7
 a~ bag:4
 a~ bar:-9
 a~ batch:-8
 a~ beginner:-3
 a~ big:1
 a~ bigger:-1
 a~ biscuit:-1
 a~ bit:-2
 a~ blanket:-2
 a~ blend:8
 a~ block:6
 a~ bowl:-9
 a~ box:-6
 a~ brick:-1
 a~ bucket:-6
 a~ can:2
 a~ candle:-7
 a~ carton:-1
 a~ cheese:-6
 a~ chip:-5
 a~ class:-4
 a~ clean:2
 a~ cold:-7
 a~ corner:-8
 a~ cow:2
 a~ crack:-4
 a~ crisp:-5
 a~ crumb:-6
 a~ crust:8
 a~ customer:-5
 a~ dark:-5
 a~ day:-2
 a~ different:-5
 a~ double:-1
 a~ drawer:-7
 a~ dream:-4
 a~ drop:4
 a~ dry:-8
 a~ face:-6
 a~ fair:5
 a~ fami:-5
 a~ fan:-3
 a~ farm:2
 a~ few:5
 a~ fifth:2
 a~ finger:-6
 a~ first:-3
 a~ fresh:-2
 a~ friend:-3
 a~ full:-2
 a~ glass:2
 a~ glug:4
 a~ good:10
 a~ half:2
 a~ handful:-1
 a~ heap:9
 a~ hole:-3
 a~ hurry:-7
 a~ jam:-8
 a~ jar:1
 a~ jug:-2
 a~ kitchen:-1
 a~ knob:6
 a~ ladle:4
 a~ lady:-6
 a~ laundry:-8
 a~ library:-3
 a~ lid:-3
 a~ lidd:-3
 a~ light:-2
 a~ little:4
 a~ loaf:-6
 a~ lot:-4
 a~ lump:5
 a~ man:-2
 a~ milk:-2
 a~ minute:-4
 a~ mix:7
 a~ month:-11
 a~ mould:-4
 a~ mug:6
 a~ new:-7
 a~ nice:-3
 a~ night:-4
 a~ number:-1
 a~ page:-6
 a~ paper:-6
 a~ paste:-2
 a~ pdf:-3
 a~ pencil:-7
 a~ photo:-8
 a~ piece:1
 a~ pinch:-2
 a~ plain:-8
 a~ pot:1
 a~ proper:-5
 a~ puddle:3
 a~ quarter:5
 a~ question:-3
 a~ reader:-6
 a~ ready:3
 a~ recipe:-1
 a~ rock:-3
 a~ round:-1
 a~ row:-7
 a~ scale:-6
 a~ second:-4
 a~ sensible:-3
 a~ shade:-4
 a~ shoe:-4
 a~ shoebox:-4
 a~ silicone:-5
 a~ sink:-5
 a~ skin:-2
 a~ skull:-5
 a~ slip:2
 a~ slow:-6
 a~ small:2
 a~ smaller:-5
 a~ soap:-8
 a~ soft:-7
 a~ softer:-6
 a~ spatula:-6
 a~ spill:-1
 a~ splash:6
 a~ spoon:-3
 a~ spoonful:-3
 a~ steel:-6
 a~ stick:2
 a~ stir:-3
 a~ superfat:4
 a~ tenth:5
 a~ thermometer:-5
 a~ thin:-2
 a~ thing:-5
 a~ third:4
 a~ time:-7
 a~ tin:1
 a~ tiny:3
 a~ touch:-3
 a~ tray:-5
 a~ treat:-6
 a~ tub:-6
 a~ twentieth:3
 a~ typo:2
 a~ very:-6
 a~ video:-2
 a~ volcano:-6
 a~ warm:-3
 a~ water:-2
 a~ week:-8
 a~ wet:3
 a~ white:-2
 a~ whole:3
 a~ wire:-2
 a~ woman:-6
 a~ wooden:-1
 a~ year:-8
 a~ yes:-3
 a~ zap:-6
 a~%:2
 a~0:4
 a~<:6
 a~=:-7
 a~>:2
 a~A:-4
 a~F:-2
 a~K:-2
 a~L:-5
 a~N:7
 a~X:2
 a~b:4
 a~e:-8
 a~r:2
 a~t:-4
 a~v:-5
 a~w:6
 b:-1
 babcia:-5
 babi:-9
 baby:3
 baby~ bar:-6
 baby~ shower:-2
 back:-3
 background:-4
 back~ ::-5
 back~ a:1
 back~ and:3
 back~ at:-4
 back~ in:-7
 back~ of:-4
 back~ on:-8
 back~ out:5
 back~ till:9
 back~ to:-7
 back~ up:4
 bacon:-5
 badly:-2
 bag:5
 bags:-3
 bag~ of:5
 bag~ says:-2
 bak:-8
 bakery:-7
 bak~ paper:-7
 balanc:-4
 balance:3
 balanc~ ?:-4
 balcony:2
 balls:-5
 balm:-5
 bang:-8
 bang~ it:-4
 bar:-5
 bare:-6
 bare~ got:-2
 barn:-2
 barrel:-6
 bars:-9
 bars~ +:-7
 bars~ ::-5
 bars~ about:-1
 bars~ and:-6
 bars~ are:-6
 bars~ at:-2
 bars~ came:-1
 bars~ come:-5
 bars~ each:-4
 bars~ for:-6
 bars~ from:-5
 bars~ i:-2
 bars~ in:-5
 bars~ of:-7
 bars~ on:-4
 bars~ out:-7
 bars~ so:-3
 bars~ to:-4
 bars~ went:-8
 bars~ were:2
 bars~ with:-7
 bars~0:-6
 bars~t:-3
 bars~w:-6
 bar~ ::-2
 bar~ ?:-5
 bar~ all:-4
 bar~ and:-3
 bar~ at:-3
 bar~ costs:-4
 bar~ for:-7
 bar~ from:-7
 bar~ in:-4
 bar~ is:2
 bar~ no:-2
 bar~ of:-7
 bar~ since:-2
 bar~ so:1
 bar~ v:-6
 bar~ with:2
 bar~0:-5
 basic:-4
 bastille:-6
 batch:-5
 batch~ ::-2
 batch~ and:-7
 batch~ before:-9
 batch~ but:4
 batch~ ever:2
 batch~ for:1
 batch~ from:-6
 batch~ had:-2
 batch~ i:1
 batch~ in:2
 batch~ is:2
 batch~ log:-3
 batch~ no:-4
 batch~ of:-5
 batch~ record:-2
 batch~ sheet:-6
 batch~ was:-6
 batch~ with:-5
 batch~0:-6
 bath:-8
 bathroom:5
 bathroom~ scale:7
 batter:-4
 batteri:-5
 battery:3
 battery~ died:6
 bazaar:-4
 bc:8
 bc~ i:3
 be:3
 beach:-7
 beads:7
 beaker:3
 bear:-6
 beard:-4
 bear~ with:-5
 beat:-3
 became:4
 became~0:10
 because~ a:-2
 because~ he:-8
 because~ i:-3
 because~ it:7
 because~ its:-5
 because~ last:2
 because~ my:4
 because~ of:-3
 because~ she:-2
 because~ thats:1
 because~ the:3
 because~F:-7
 become:-2
 bed:-7
 bee:-6
 beech:-4
 beef:-8
 beef~=:-4
 beekeeper:-6
 been:2
 been~ at:4
 been~ mak:-5
 been~ on:-6
 been~ open:6
 been~ stand:4
 been~ told:-7
 been~t:-1
 bees:-3
 before:-1
 beforehand:-5
 before~ and:2
 before~ anyone:-7
 before~ i:-5
 before~ it:2
 before~ me:2
 before~ pour:6
 before~ saturday:-5
 before~ she:-1
 before~ so:-9
 before~ that:-8
 before~ the:2
 before~ they:-8
 before~ this:-9
 before~ we:-3
 before~ weigh:-8
 before~ with:-6
 before~ you:-12
 before~t:-4
 began:-5
 begin:-7
 beginn:-1
 beginner':-8
 beginner:-9
 behav:-6
 behind:-2
 behind~ the:2
 beige:-8
 being:-2
 bell:1
 belong:-1
 belong~ to:1
 below:-3
 below~ the:-4
 below~d:-5
 bench:3
 besid:4
 beside:5
 beside~ it:2
 best:-10
 best~ before:-4
 bet:-6
 better:-5
 better~ than:2
 between:-2
 between~ the:6
 between~0:7
 be~ ?:-6
 be~ a:6
 be~ about:-5
 be~ bother:2
 be~ clear:-4
 be~ cut:-2
 be~ exact:6
 be~ for:4
 be~ gentle:-2
 be~ honest:-1
 be~ hot:-4
 be~ in:-8
 be~ mild:-5
 be~ ok:-3
 be~ on:5
 be~ patient:-8
 be~ right:3
 be~ sure:-2
 be~ the:-4
 be~ too:-5
 be~%:-11
 be~0:4
 be~A:-7
 be~N:8
 be~b:6
 be~e:8
 be~w:5
 bicycle:-5
 big:2
 bigger:1
 bigger~ pot:-2
 bigger~ than:4
 big~ batch:-8
 big~ kettle:5
 big~ one:1
 big~ pot:-6
 bin:-3
 binn:4
 bin~ it:-4
 birds:-3
 birthday:-4
 biscuit:-7
 bit:1
 bite:-6
 bites:-2
 bits:-1
 bits~ of:2
 bit~ and:1
 bit~ at:-4
 bit~ by:-3
 bit~ greasy:-2
 bit~ like:-4
 bit~ more:3
 bit~ of:2
 bit~ on:-8
 bit~ over:-7
 bit~ so:-4
 bit~ soft:-6
 bit~ the:1
 bit~ under:-1
 black:-4
 blame:-7
 blame~ the:-6
 blanket:-7
 blend:-1
 blender:-5
 blender~ and:-5
 blender~ died:-4
 blender~t:-5
 blend~ and:-6
 blend~ at:-1
 blend~ for:-3
 blend~ in:1
 blend~ pour:-3
 blend~ till:-3
 blend~ to:-2
 blend~ with:6
 blend~t:-4
 blind:1
 blink:-2
 blob:-1
 block:1
 block~ of:-1
 blog:-2
 blog~ i:-2
 blood:-6
 blue:-1
 board:-1
 boat:3
 body:-1
 boiler:-6
 boil~ and:-11
 boil~ down:-3
 boil~ flat:6
 boil~ in:8
 boil~ it:-6
 boil~ off:6
 boil~ over:5
 boil~ the:-2
 bonjour:-4
 bonsoir:-4
 book:-4
 book~ ::-1
 book~ i:1
 book~ says:-6
 born:-5
 borrow:-3
 boss:-1
 both:-2
 bother:-4
 bother~ to:2
 bother~ with:4
 both~ alkali:-5
 both~ are:-8
 both~ at:2
 both~ feel:-1
 both~ lyes:-1
 both~ of:2
 both~ times:-6
 both~ units:-4
 both~ were:-5
 bottl:-1
 bottle:3
 bottle~ and:7
 bottle~ before:-4
 bottle~ gave:3
 bottle~ in:-6
 bottle~ is:4
 bottle~ of:-3
 bottle~ on:-4
 bottle~ said:5
 bottle~ says:6
 bottle~ so:1
 bottle~ was:11
 bottle~ with:-1
 bottl~ of:-4
 bottom:-1
 bottom~ of:1
 bought:-5
 bought~ a:-5
 bought~ the:-6
 bought~0:-6
 bought~>:-7
 bought~F:2
 bowls:2
 bowl~ and:-2
 bowl~ in:-10
 bowl~ is:-3
 bowl~ on:5
 bowl~w:3
 box:-2
 boxes:-4
 box~ and:-2
 box~ lined:-2
 box~ with:-3
 box~t:-1
 boy:-2
 boyfriend:-2
 boys:3
 brand:-6
 brave:-4
 bread:-2
 break:-8
 breakfast:-2
 breathe:-5
 brewery:-4
 brick:-2
 brim:-2
 bring:-11
 bring~ it:-3
 bring~ the:-8
 broken:4
 brother:2
 brother~ in:-9
 brought:6
 brown:-7
 brown~ paper:-4
 brush:-3
 btw:3
 bubbl:-5
 bubble:-4
 bubbl~ and:2
 bucket:-3
 bucket~ of:-9
 bucket~ so:-4
 bucket~ with:-7
 burn:-7
 burnt:-2
 burst:-3
 burst~ of:-2
 bus:-3
 but:-2
 butcher:-4
 butcher~ gave:-6
 button:-6
 but~ a:1
 but~ before:-1
 but~ first:-1
 but~ he:-6
 but~ here:-4
 but~ i'd:-3
 but~ i:2
 but~ im:-8
 but~ is:-6
 but~ it:-7
 but~ its:1
 but~ ive:-1
 but~ my:-1
 but~ no:3
 but~ not:-5
 but~ now:-5
 but~ only:-7
 but~ she:-5
 but~ that:-7
 but~ thats:-4
 but~ the:6
 but~ then:2
 but~ there:-4
 but~ they:-4
 but~ this:1
 but~ those:-5
 but~ what:4
 but~ with:-1
 but~0:1
 but~F:-7
 buy:-1
 buy~ the:-2
 by:2
 by~ ::-7
 by~ a:8
 by~ accident:4
 by~ bit:-3
 by~ easter:-5
 by~ eye:6
 by~ hand:-8
 by~ it:-6
 by~ itself:3
 by~ me:-3
 by~ mistake:6
 by~ modern:-4
 by~ my:2
 by~ noon:-3
 by~ spoon:-6
 by~ the:3
 by~ then:-4
 by~ today:-3
 by~ volume:1
 by~ week:-7
 by~ weight:-3
 by~<:6
 by~>:-5
 by~N:-3
 by~b:-3
 by~t:-7
 b~ ::4
 b~A:-5
 b~F:-6
 c:-5
 cakes:-6
 calculat:-1
 calculate:2
 calculator:-7
 call:2
 calls:-11
 calls~ it:-7
 call~ for:1
 call~ it:6
 call~ that:4
 call~ the:-3
 call~F:5
 came:1
 came~ back:3
 came~ from:-1
 came~ in:-4
 came~ off:1
 came~ out:-3
 came~ to:8
 came~ up:2
 can:-2
 candl:-7
 candle:-2
 candle~B:-3
 candl~ and:-5
 cannot:-5
 cans:-1
 cant:3
 cant~ be:-2
 cant~ find:4
 cant~ get:-7
 cant~ remember:7
 cant~ say:-3
 cant~ stand:5
 can~ anyone:-1
 can~ be:-2
 can~ bear:-4
 can~ is:4
 can~ of:5
 can~ see:3
 can~ somebody:-6
 can~ someone:-1
 can~ stand:-8
 can~ still:-5
 can~ take:-4
 can~ tell:-1
 can~ the:-3
 can~ use:-5
 can~ you:2
 cap:-2
 capping:-8
 car:-7
 caramel:-5
 carbonate:5
 card:1
 cardboard:1
 card~ for:-2
 card~ is:4
 card~ no:-4
 care:1
 caretaker:-7
 carpet:-4
 carri:5
 carri~ it:3
 carri~ on:4
 carry:-8
 carton:-1
 case:-1
 cast:-6
 castile:-7
 cast~ an:-3
 cat:-2
 cat~ got:6
 cat~ had:3
 cat~ has:-7
 cat~ is:-4
 caught:2
 cauldron:-3
 caviti:-7
 ceil:-8
 cell:1
 cellar:-10
 certain:5
 certifi:-8
 certificate:5
 chair:-4
 chang:-2
 change:-3
 change~ the:-4
 chang~ ::4
 chang~ my:5
 chang~ the:-7
 charg:-2
 charge:-4
 chat:-2
 cheap:-9
 cheaper:-5
 cheaper~ than:-7
 check:-4
 check~ ::-1
 check~ before:2
 check~ by:-8
 check~ it:-7
 check~ me:-2
 check~ mine:-3
 check~ my:-8
 check~ out:-3
 check~ please:-5
 check~ pls:-4
 check~ that:-7
 check~ the:-4
 check~ this:-4
 check~A:-5
 cheese:-1
 cheese~ wire:-6
 chemist:-8
 chemistry:-3
 chemistry~ teacher:3
 child:-7
 children:-4
 chill:-7
 chip:2
 chips:4
 chisel:-4
 choir:2
 choose:-3
 chopp:-3
 christma:-5
 christma~0:-6
 chuck:3
 chuck~ in:6
 church:-9
 ciao:-4
 claim:-1
 clarity:-6
 class:-3
 class~ ::-6
 class~ i:-5
 clean:-2
 clean~ the:-5
 clean~ up:4
 clean~F:-5
 clear:-8
 clearer:1
 clear~ after:-2
 clear~ and:-5
 clear~ as:-9
 clear~ at:-7
 clear~ in:-5
 clever:-8
 climb:-8
 climb~ out:-3
 climb~ to:-5
 cling:-4
 cling~ film:-3
 cling~ to:2
 clock:-4
 clos:-2
 close:-3
 close~ to:-6
 cloth:-5
 cloud:4
 cloudy~ for:-3
 club:-2
 clubs:-5
 clump:1
 co:-1
 coat:-6
 code:-6
 coins:1
 cold:-7
 cold~ and:-1
 cold~ from:-5
 cold~ press:-9
 cold~ proces:-6
 cold~L:6
 cold~W:-5
 colleague:-7
 colloidal:2
 colour:-8
 column:-5
 com:4
 combin:3
 combine:-2
 combine~ blend:-2
 come:1
 comes~ by:2
 comes~ from:-6
 comes~ in:1
 comes~ out:3
 come~ back:-5
 come~ down:-4
 come~ off:-3
 come~ out:2
 come~ to:4
 comma:2
 comma~ i:-2
 comma~ is:-6
 comment:-8
 commit:-1
 compar:-3
 compare:-8
 compar~ with:2
 complain:-5
 complaint:-7
 complain~ about:-5
 complete:4
 computer:-3
 confession:-1
 confetti:-5
 confirm:-8
 confirm~ the:-5
 confus:1
 contain:8
 convert:-10
 cook:2
 cooker:-2
 cooker~ ::-3
 cooker~ before:2
 cooker~ is:-5
 cooker~ on:-3
 cooks:-2
 cook~ ::-7
 cook~ ?:-7
 cook~ about:2
 cook~ and:-1
 cook~ at:-5
 cook~ for:-5
 cook~ i:-3
 cook~ in:-7
 cook~ is:4
 cook~ it:1
 cook~ on:-4
 cook~ once:-3
 cook~ part:-7
 cook~ so:6
 cook~ the:-6
 cook~ until:-1
 cook~ was:-11
 cook~ when:-5
 cook~ with:2
 cook~=:-1
 cook~F:-9
 cook~t:-4
 cool:-4
 cools:-7
 cool~ down:-1
 cool~ i:-3
 cool~ it:-6
 cool~ the:-7
 cool~ to:-2
 cool~ under:-4
 copi:4
 copi~ from:4
 copi~ it:-2
 copi~ off:1
 copi~ out:-6
 copi~ straight:-8
 copi~ the:-1
 copy:2
 cork:-7
 corner:-11
 correct:1
 correction:8
 correct~ ?:-1
 correct~ for:-1
 correct~ or:-3
 cos:8
 cost:-6
 costs:-14
 costs~ me:-1
 costs~0:-6
 costs~t:-5
 cost~ ::-6
 cost~ eur:-1
 cost~ me:-5
 cost~ per:-1
 cost~ sheet:-5
 cost~0:-5
 cost~t:-4
 could:-1
 couldnt:7
 couldnt~ be:5
 couldnt~ get:6
 couldnt~ tell:1
 could~ be:9
 could~ go:-1
 could~ have:-8
 could~ not:6
 could~ somebody:-2
 could~ someone:-5
 could~ the:-8
 could~ you:-2
 council:-4
 count:1
 counter:4
 countri:-4
 country:2
 country~ the:-4
 county:-5
 count~ in:-2
 count~ it:6
 count~ the:-2
 count~ with:6
 course:-6
 course~ i:-4
 course~ in:-2
 cousin:-1
 cousin~ so:1
 cover:-6
 cover~ cut:-1
 cover~ it:-4
 cover~ with:-6
 cow:2
 cows:-6
 cp:-4
 crack:-2
 crackl:3
 crackling:1
 crack~ along:-5
 crack~ on:-7
 crate:-7
 creamy:-6
 cried:-6
 crisp:-5
 crisp~ tube:-5
 crock:-2
 crockpot:-4
 crock~ pot:1
 cross:-2
 cross~ out:-1
 crumb:-1
 crumbl:-6
 crumble:-5
 crumb~ and:6
 crumb~ at:2
 crush:-6
 crust:8
 crystal:-4
 cubes:-7
 cubes~ and:-4
 cubes~ of:2
 cubes~ the:-6
 cubes~w:-5
 cup:2
 cupboard~ and:3
 cupcake:-7
 cups:-3
 cup~ and:-9
 cup~ on:1
 cup~ weigh:-5
 cup~ with:-6
 cur:-6
 cure:-8
 cured:-6
 cure~ ::-2
 cure~ for:-5
 cure~ till:-3
 cure~ until:-1
 cure~t:-1
 curry:-6
 custard:-6
 customer:-9
 cuts:-5
 cutt:-4
 cutter:-7
 cut~ ::-4
 cut~ after:-3
 cut~ at:-7
 cut~ in:-3
 cut~ into:-7
 cut~ it:2
 cut~ next:-2
 cut~ off:-2
 cut~ on:-4
 cut~ the:7
 cut~ them:-3
 cut~ too:-6
 cut~ with:-5
 cut~0:-6
 cut~b:-5
 cut~t:-2
 c~ ::-3
 c~ at:-3
 c~0:-7
 d:-5
 dad:-4
 dads:-2
 dads~t:-2
 daft:3
 dag:-2
 dag~ ::-1
 dairy:6
 damp:4
 dare:3
 dark:-10
 das:-7
 date:-7
 dates:-5
 date~ ::-2
 date~t:-6
 daughter':-8
 daughter:2
 daughter~ wants:-1
 daughter~ who:-4
 day:-3
 days:-5
 day~ and:-2
 day~ at:-5
 day~ before:3
 day~ i:-5
 day~ it:-4
 day~ so:3
 day~ then:-4
 day~0:-3
 day~t:-4
 de:-5
 dead:-2
 deal:6
 dear:3
 dear~ all:3
 dear~ group:-3
 december:-6
 decent:-7
 decid:-1
 decimal:-7
 deep:2
 deer:-3
 deer~ camp:-3
 degre:-7
 demineralis:-8
 demonstration:2
 dent:-8
 deodoris:-8
 diary:-4
 dictat:3
 dictat~ this:-4
 did:3
 didnt:4
 didnt~ weigh:6
 did~ and:1
 did~ for:-2
 did~ i:-5
 did~ in:-11
 did~ not:1
 did~ the:6
 did~ this:-1
 did~ weigh:-4
 did~ you:-8
 did~=:-3
 died:2
 died~ at:4
 difference:-6
 different:-7
 digital:-7
 dilut:-2
 dilute:-8
 dilution:4
 dinner:3
 disaster:-10
 discount:2
 dish~ soap:5
 display:6
 display~ said:-7
 dissolv:4
 dissolve:3
 dissolve~ it:-6
 dissolve~ the:3
 dissolve~=:-7
 dissolv~ the:-1
 dissolv~ together:-1
 dissolv~<:3
 dissolv~=:-5
 do:-4
 doctor:-8
 does:-5
 doesnt:-2
 doesnt~ mind:-6
 doesnt~ smell:-3
 does~ anybody:-4
 does~ anyone:3
 does~ her:-5
 does~ it:-4
 does~ my:-6
 does~ not:-2
 does~ the:-4
 does~ this:-1
 does~%:-5
 does~F:-6
 does~b:-4
 does~w:2
 dog:1
 dogs:-6
 dog~ got:8
 doing:3
 doing~ it:-4
 doing~ the:2
 doing~ this:2
 done:-5
 done~ i:-7
 done~ it:-1
 dont:-3
 dont~ ask:4
 dont~ be:-6
 dont~ care:3
 dont~ dare:-8
 dont~ get:3
 dont~ have:-6
 dont~ know:6
 dont~ panic:-5
 dont~ trust:-6
 dont~ want:-8
 door:-3
 doorbell:2
 doors:-8
 dos:-2
 dose:8
 dose~ of:8
 dot:-6
 doubl:8
 double:-6
 double~ boiler:-5
 double~ check:-3
 doubt:1
 down:1
 down~ and:-3
 down~ by:5
 down~ from:1
 down~ the:-2
 down~ to:1
 down~ with:4
 do~ ?:-7
 do~ a:-4
 do~ for:-6
 do~ i:3
 do~ in:-10
 do~ it:-2
 do~ not:-5
 do~ the:-6
 do~ this:-6
 do~ we:-4
 do~ with:-6
 do~ you:-4
 do~F:-3
 draft:-6
 drag:-7
 drain:3
 drama:-4
 drank:6
 drawer:-2
 drawer~ lined:-2
 drawn:2
 dream:-5
 dress:-10
 drew:-6
 dried:-1
 drill:-5
 drink:-4
 drip:-8
 drips:-4
 drop:-2
 dropp:5
 dropp~ below:-4
 dropp~ the:1
 drops:-1
 drops~ of:2
 drop~ of:3
 drop~ the:-6
 drop~ to:-3
 drove:-3
 drown:-7
 drum:6
 dry:2
 dry~ cup:-3
 dry~ hands:3
 dry~ skin:-7
 dry~ so:2
 dry~ until:1
 duck:-6
 dump:-5
 dur:4
 dust:5
 e:-5
 each:-1
 each~ and:-6
 each~ of:-4
 each~ time:-1
 earlier:-4
 early:-10
 easier:-7
 easter:-5
 easy:-8
 eat:-1
 eats:-6
 eczema:3
 edge:-3
 edges:-1
 edit:1
 edition:2
 edit~ ::3
 either:4
 elbow:-6
 else~ in:-1
 else~ no:-2
 empti:5
 empty:-2
 empty~ and:-3
 emulsion:-7
 enamel:-10
 enamel~ pot:-7
 end:3
 ended:7
 ended~ up:-2
 ends:-10
 end~ ?:-4
 end~ after:1
 end~ and:3
 end~ i:-1
 end~ is:-11
 end~ it:8
 end~ of:-2
 end~ piece:-7
 end~ up:-9
 english:-4
 english~ i:-5
 english~ is:-4
 enough:-1
 enough~ ?:-4
 enough~ for:-4
 enough~ or:-5
 enough~ to:-2
 entire:-5
 entry:-4
 envelope:-4
 equal~ parts:2
 equal~ weight:-5
 error:-2
 eur:-4
 euro:-5
 even:-7
 evening:-5
 even~ all:-4
 even~ class:-5
 even~ in:-5
 ever:-10
 every:-6
 everybody:-10
 everyday:-4
 everyday~ bar:-3
 everyone:-6
 everyone~ who:2
 everyth:4
 everyth~ ::-4
 everyth~ and:-6
 everyth~ at:1
 everyth~ else:1
 everyth~ in:-6
 everyth~ is:2
 everyth~ on:-1
 everyth~ was:-5
 everyth~ weigh:-9
 everywhere:-4
 every~ one:4
 every~ time:2
 every~t:-4
 ex:-6
 exact:-7
 exact~ as:-8
 exact~ like:1
 exact~ one:-2
 exam:-6
 except:7
 except~ that:-3
 except~ the:3
 exces:3
 excuse:-7
 excuse~ my:-3
 excuse~ the:-6
 expect:-4
 expensive:-5
 explain:-2
 export:-4
 export~ from:-3
 extra:6
 extra~ fat:8
 extra~ virgin:-5
 extra~A:-1
 extra~F:-3
 eye:5
 eyebrow:-5
 eyes:-4
 eye~ over:-2
 f:-6
 face:-6
 faces:-7
 face~ bar:-5
 facial:3
 facial~ bar:-5
 fact:5
 faded:-8
 fades:-6
 fail:2
 fails:-4
 fail~ me:-3
 faint:-6
 faint~ of:-5
 fair:3
 fair~ ::-5
 falls:-5
 false:-6
 false~ trace:-6
 fami:-1
 famili:-6
 fan:-6
 fancy:6
 far:-4
 farm:-1
 farm~ shop:3
 far~ as:-4
 far~ too:2
 fast:-8
 faster:1
 faster~ than:-6
 fat:4
 father:-1
 father~ in:3
 fats~ ::-4
 fats~ ?:-4
 fats~ and:-2
 fats~ are:-4
 fats~ at:-5
 fats~ in:-8
 fats~ is:-7
 fats~ melt:-1
 fats~ or:-5
 fats~ were:-6
 fat~ ::1
 fat~ ?:-6
 fat~ and:2
 fat~ g:-4
 fat~ grams:-5
 fat~ in:-5
 fat~ is:1
 fat~ left:5
 fat~ of:-8
 fat~ was:-6
 fault:3
 favour:2
 february:-8
 feed:2
 feed~ store:3
 feel:1
 feels:-7
 feels~ a:-4
 feels~ like:-5
 feet:2
 fell:-2
 fell~ in:1
 fell~ on:1
 felt:-1
 felt~ like:-2
 fence:-5
 fete:3
 few:5
 few~ drops:-7
 field:-8
 fifth:2
 fifth~ of:7
 fig:-4
 fight:4
 figure:7
 file:3
 files:-4
 fill:2
 fills:-6
 fills~ my:-7
 fills~ the:-1
 fills~0:-4
 fill~ in:-5
 fill~ it:-1
 fill~ the:4
 fill~ to:3
 fill~ up:4
 fill~0:2
 film:-6
 film~ on:-4
 filter:-3
 final:-2
 find:8
 finds:-3
 find~ the:2
 find~F:3
 fine:-5
 finer:-5
 fine~ ?:-4
 fine~ and:-2
 fine~ but:-4
 fine~ for:-6
 fine~ or:-4
 finger:1
 finish:2
 finish~ paste:-5
 finish~ with:5
 fire:-10
 firm:6
 first:-4
 first~ ::-1
 first~ and:-3
 first~ attempt:-6
 first~ batch:1
 first~ ever:-4
 first~ go:-2
 first~ hour:-1
 first~ i:-1
 first~ in:-3
 first~ it:-3
 first~ lot:4
 first~ one:-1
 first~ so:7
 first~ soap:-3
 first~ the:-2
 first~ then:-8
 first~ time:3
 first~ timer:-2
 first~ to:-3
 first~ try:-5
 first~ went:-2
 first~0:3
 first~t:3
 fish:-3
 fish~ out:-1
 fit:-3
 fits:-5
 fits~ the:-5
 fit~ the:2
 fixed:-10
 fizz:-3
 flak:5
 flake:8
 flame:-6
 flat:1
 flatmate:-1
 flat~ and:-5
 flat~ boil:1
 flat~ for:2
 flat~ in:-7
 float:-4
 float~ an:-4
 floor:2
 floor~ and:-3
 fluid:4
 fluid~ ounc:8
 foam:-4
 foams:-7
 foam~ from:-6
 foam~ over:6
 foil:1
 fold:-3
 folder:-7
 fold~ in:1
 folk:-8
 folks:-6
 follow:-2
 forever:-6
 forever~ to:-4
 forget:-1
 forgett:-1
 forgiv:-9
 forgive:-5
 forgot:4
 forgotten:4
 forgot~ it:3
 forgot~ to:3
 form:-8
 formula:-5
 forum:-9
 for~ a:-3
 for~ about:2
 for~ after:3
 for~ all:-1
 for~ an:-4
 for~ any:-5
 for~ babi:-8
 for~ baby:4
 for~ both:6
 for~ candl:-8
 for~ christma:-3
 for~ days:-5
 for~ each:4
 for~ every:-5
 for~ faces:-6
 for~ floor:-3
 for~ free:3
 for~ fry:-3
 for~ gram:5
 for~ half:5
 for~ hardnes:-1
 for~ his:-5
 for~ it:-3
 for~ laundry:3
 for~ looks:-6
 for~ luck:5
 for~ me:1
 for~ more:2
 for~ my:1
 for~ next:-3
 for~ no:4
 for~ noth:-5
 for~ once:7
 for~ one:3
 for~ our:-2
 for~ people:-5
 for~ read:-3
 for~ salad:-10
 for~ saturday:3
 for~ shav:-5
 for~ skin:-6
 for~ soap:-8
 for~ some:-7
 for~ test:-7
 for~ that:-1
 for~ the:2
 for~ these:-3
 for~ this:-2
 for~ those:-2
 for~ today:3
 for~ us:2
 for~ wash:-2
 for~ what:4
 for~ word:-6
 for~ years:-3
 for~ you:-7
 for~ your:2
 for~%:6
 for~0:-6
 for~=:-4
 for~>:-1
 for~A:-2
 for~B:-2
 for~F:1
 for~L:-5
 for~N:-6
 for~S:-9
 for~T:-6
 for~W:-1
 for~X:1
 for~b:-2
 for~d:-8
 for~e:-7
 for~t:-7
 for~v:-3
 found:6
 found~ a:1
 found~ in:-5
 found~ it:3
 found~ on:2
 found~ out:2
 found~ the:7
 found~ this:-9
 fourth:-7
 fractionat:12
 fram:-9
 free:-1
 freeze:-4
 freezer:-2
 freezer~ for:-6
 freezer~ in:-2
 freezer~ paper:-3
 freeze~ the:-6
 free~ lol:-4
 fresh:-2
 friday:2
 friday~ and:-2
 fridge:-2
 fridge~ for:-6
 fridge~ overnight:-7
 fried:2
 friend':-4
 friend:-6
 friend~ says:-6
 friend~ who:5
 friend~ with:-1
 frighten:-6
 from~ ::-7
 from~ a:2
 from~ an:-5
 from~ another:-1
 from~ graz:-3
 from~ it:-4
 from~ krakow:-2
 from~ last:-6
 from~ me:-3
 from~ memory:-1
 from~ my:-4
 from~ our:2
 from~ portugal:2
 from~ sunday:7
 from~ that:2
 from~ there:7
 from~ what:-8
 from~ work:3
 from~0:-4
 from~=:-2
 from~F:-5
 from~L:-6
 from~t:-10
 from~w:-9
 front~ of:-6
 froze:4
 frozen~ cubes:-3
 frozen~ in:1
 frozen~ to:-5
 frozen~w:-8
 froze~ it:3
 fruit:-5
 fry:3
 fryer:3
 full:7
 fully:1
 full~ bottle:-7
 full~ of:-5
 fume:-8
 fumes:-9
 fun:-10
 funny:-8
 further:5
 fwd:-2
 fwd~ ::-3
 f~0:-6
 g:-4
 garage:-4
 garden:-5
 gas:-4
 gate:-5
 gave:1
 gave~ it:1
 gave~ me:5
 gave~ out:8
 gave~ the:-4
 gave~ up:5
 gave~ us:1
 gave~0:-7
 gel:-3
 gell:-3
 gel~ ::-3
 gel~ phase:-7
 generou:5
 gent:-8
 gentle:-2
 gentler:4
 german:-4
 get:-3
 gets:-5
 gets~ a:3
 gets~ the:-5
 gets~0:-4
 gett:-7
 get~ it:2
 get~ the:2
 get~ to:-8
 get~0:-7
 get~F:4
 ghana:-7
 gift:-8
 gifts:-4
 girl:-2
 girls:-7
 giv:-7
 give:-2
 given:-3
 gives:-9
 gives~ me:-3
 gives~ the:-7
 gives~%:4
 gives~0:-7
 give~ it:-6
 give~ me:1
 give~ or:4
 give~ the:-4
 give~ to:-2
 glad:-1
 glass:-1
 glass~ and:5
 glass~ of:5
 glossy:-3
 glov:-9
 glov~ and:-7
 glov~ on:-4
 glug:7
 glug~ of:4
 goat:4
 goats:-1
 goats~ are:2
 goes:-6
 goes~ away:-3
 goes~ grainy:-2
 goes~ in:-2
 goes~ into:-5
 goes~ off:-5
 goes~ on:-8
 goes~ up:-8
 goggl:-9
 goggl~ and:-4
 goggl~ on:-3
 going:4
 going~ by:-5
 going~ in:4
 gone:4
 gone~ after:-6
 gone~ by:-11
 gone~ from:-4
 gone~ in:2
 gone~ up:-3
 gonna:3
 good:-2
 good~ ?:-4
 good~ bit:8
 good~ day:-4
 good~ enough:-1
 good~ even:-3
 good~ for:-7
 good~ glug:6
 good~ i:5
 good~ morn:-4
 good~ one:-6
 good~ or:-2
 good~ pot:-1
 good~ to:-2
 good~F:-9
 good~t:-5
 goose:-3
 got:4
 got~ a:-4
 got~ in:-1
 got~ into:6
 got~ it:-1
 got~ my:-7
 got~ round:2
 got~ swapp:2
 got~ the:-3
 got~ thick:-1
 got~ to:6
 got~ too:3
 got~ wet:2
 got~0:-7
 got~=:-4
 got~S:-4
 got~b:4
 go~ ?:-3
 go~ at:5
 go~ by:2
 go~ down:-1
 go~ in:-2
 go~ into:-10
 go~ on:-7
 go~ out:2
 go~ over:-6
 go~ rancid:-7
 go~ to:-3
 go~ up:3
 go~ with:10
 go~ wrong:-3
 grabb:6
 grade:4
 grain:-8
 grainy:-5
 gram:-3
 gramm:-8
 grams:-1
 grams~ ::-7
 grams~ and:-2
 grams~ cost:-2
 grams~ for:-2
 grams~ i:4
 grams~ of:2
 grams~ so:-10
 grams~A:-4
 grams~e:-4
 gram~ for:5
 grand:-5
 grandad:5
 granddaughter:-4
 grandmother:-8
 grandmother~ had:-3
 grandmother~ in:-6
 grandpa:2
 grandson:7
 granny:-2
 grans:-6
 grate:-3
 grateful:-2
 grate~ the:-6
 gravy:-1
 graz:-6
 greas:-2
 grease:-3
 great~ aunt:-2
 green:-2
 green~ and:4
 green~ one:-3
 greeting:-5
 greeting~ from:-5
 grind:-5
 grind~ the:-2
 grocer:-6
 ground:-9
 group:1
 group~ ::-3
 group~ of:-5
 grown:3
 guess:11
 guess~ the:-5
 guest:-6
 guild:-8
 g~ ::-6
 g~ cost:-2
 g~ oz:-3
 g~e:-8
 ha:2
 habit:3
 had:2
 hadnt:6
 had~ a:-6
 had~ already:9
 had~ been:5
 had~ come:4
 had~ cool:-7
 had~ dropp:-3
 had~ gone:8
 had~ in:-3
 had~ it:3
 had~ melt:2
 had~ no:-3
 had~ only:-1
 had~ set:2
 had~ some:-2
 had~ that:1
 had~ the:-1
 had~ to:-6
 had~0:-4
 had~<:-6
 had~>:-8
 had~F:2
 had~N:-5
 had~X:2
 had~b:7
 hair:-1
 half:5
 halfway:-5
 halfway~ through:6
 half~ a:3
 half~ and:-4
 half~ as:3
 half~ batch:5
 half~ is:3
 half~ of:1
 half~ size:2
 half~A:-5
 half~F:-1
 half~I:-5
 half~W:-8
 hall:-7
 hallo:-4
 hallo~ my:-2
 halv:5
 halve:-1
 halv~ it:-5
 hammer:3
 hand:-2
 handful:1
 handful~ of:-6
 handle:-3
 handout:1
 handout~0:-4
 hands:-1
 hands~ ?:-3
 hands~ after:-3
 hands~ are:1
 handwrit:3
 handy:-7
 hand~ in:-5
 hand~ on:4
 hand~ out:-8
 hand~ soap:-5
 hand~ warm:-1
 hand~ with:-4
 hang:5
 hangs:-7
 happen:2
 happy:3
 happy~ with:-7
 hard:-5
 harden:-8
 harder:-3
 harder~ bar:-2
 hardnes:-6
 hardware:-1
 hardware~ store:-5
 hard~ after:-2
 hard~ and:-4
 hard~ any:-6
 hard~ as:-7
 hard~ smell:-5
 hard~ to:4
 hard~W:-7
 harm:-5
 harsh:-10
 has:3
 hasnt:-7
 has~ anyone:-7
 has~ become:-3
 has~ been:-2
 has~ cool:-7
 has~ done:-5
 has~ dry:1
 has~ gone:-1
 has~ it:3
 has~ made:-4
 has~ moved:-8
 has~ no:-4
 has~ the:3
 has~ to:-4
 has~=:-5
 has~F:6
 hate:-5
 hates:-1
 hav:-2
 have:-1
 havent:4
 have~ a:-10
 have~ asked:3
 have~ done:-2
 have~ enough:2
 have~ gone:3
 have~ had:2
 have~ i:-6
 have~ in:-1
 have~ it:2
 have~ made:-5
 have~ my:-7
 have~ never:3
 have~ no:-3
 have~ not:-8
 have~ put:6
 have~ the:2
 have~ to:-9
 have~ used:-4
 have~0:-5
 have~=:-6
 have~>:-6
 have~F:3
 hdpe:-6
 he:-2
 head:-2
 heap:10
 heap~ spoon:1
 hear:-1
 heard:3
 heart:-2
 heat:-12
 heats:-6
 heats~ up:-5
 heat~ and:-3
 heat~ i:-3
 heat~ off:-3
 heat~ the:-5
 heaven:-8
 heavy:1
 heavy~ ?:-6
 heavy~ or:-4
 hed:4
 height:-6
 held:10
 hell:-5
 hello:-4
 hello~ from:-1
 hello~ i:-3
 help:7
 helps:-2
 help~ with:1
 hence:-4
 hence~ the:-9
 hens:-9
 her:-5
 heres:-7
 heres~ my:-1
 heres~ the:-6
 heres~ what:-7
 here~ ::-2
 here~ and:-3
 here~ are:-3
 here~ goes:-3
 here~ i:4
 here~ in:-5
 here~ is:2
 here~ it:-7
 here~ so:-3
 here~ we:-8
 hers:-10
 herself:-7
 hers~ and:-4
 hers~ is:-4
 hers~ with:-8
 her~ hands:-4
 her~ life:-6
 her~ own:-1
 her~ soap:-6
 her~A:-3
 her~F:-10
 hes:-1
 hey:-5
 he~ also:-7
 he~ has:-5
 he~ is:-1
 he~ says:6
 he~ was:-7
 hid:-10
 hide:-6
 high:-5
 him:-6
 himself:3
 his:-6
 hiss:2
 his~A:-5
 hit:1
 hit~ it:-6
 hive:-6
 hives:-5
 hiya:1
 hi~ all:1
 hi~ everyone:-3
 hmm:7
 hob:-1
 hola:-3
 hold:-1
 holds:-4
 holds~ a:3
 holds~0:-3
 holds~v:-5
 holds~w:-11
 hold~ ?:-2
 hold~ back:6
 hold~ the:4
 hold~ up:-3
 hole:-5
 holes:-9
 holiday:-10
 home:1
 home~ and:5
 honest:4
 hood:-9
 hope:2
 hope~ it:-6
 hope~ the:-4
 hot:-7
 hotter:-10
 hotter~ than:-5
 hot~ ?:-1
 hot~ or:-5
 hour:-3
 hour~ and:-4
 hour~ then:-3
 hour~ until:-1
 hour~0:1
 house:4
 house~ smell:-6
 how:2
 hows:-5
 how~ do:2
 how~ does:-5
 how~ i:3
 how~ it:2
 how~ long:-6
 how~ many:-7
 how~ much:8
 how~ my:-9
 how~ the:-9
 how~ to:-11
 how~ we:-6
 hp:-4
 hp~ in:-3
 hubby:2
 huge:5
 humidity:-2
 humidity~%:-4
 hurry:-4
 hurt:-2
 hurts:-4
 husband:1
 husband~ says:-5
 husband~ think:-10
 husband~ who:-7
 hydrogenat:1
 i'd:2
 i'd~ already:4
 i'd~ be:-7
 i'd~ do:-7
 i'd~ guess:9
 i'd~ have:-8
 i'd~ like:7
 i'd~ love:-4
 i'd~ never:-5
 i'd~ pour:-2
 i'd~ put:3
 i'd~ rather:-1
 i'd~ read:3
 i'd~ say:4
 i'd~ use:-8
 i'd~ weigh:3
 i:3
 idea:-2
 idea~ about:2
 idea~ which:4
 idk:2
 ie:5
 ie~=:-7
 if:-3
 if~ anyone:-2
 if~ i:2
 if~ im:3
 if~ it:2
 if~ its:-1
 if~ my:2
 if~ somebody:-6
 if~ someone:1
 if~ that:3
 if~ the:-7
 if~ ther:-5
 if~ this:3
 if~ ur:-7
 if~ you:-3
 if~ your:-6
 if~ youre:-7
 if~ yours:-4
 if~ youve:-7
 if~A:-4
 if~F:-6
 if~b:-5
 ignore:7
 ignore~ the:8
 ill~ do:-4
 ilse:-1
 im:1
 impatient:-8
 im~ a:-3
 im~ after:7
 im~ aim:2
 im~ ask:-2
 im~ at:-8
 im~ doing:-3
 im~ going:2
 im~ in:-7
 im~ mak:2
 im~ nervou:-8
 im~ on:2
 im~ told:-4
 im~ using:6
 im~0:-3
 inch:1
 incl:-1
 includ:4
 includ~ the:8
 individual:-7
 individual~ mould:-7
 infus:5
 infus~ with:4
 ingredient:-4
 ingredient~ amount:-3
 ingredient~ g:-3
 ingredient~ grams:-4
 ingredient~ oz:-6
 ingredient~ weight:-3
 inside:-4
 insist:6
 instant:-2
 instead:4
 insulate:-6
 internet:-2
 into:-1
 into~ a:-6
 into~ cubes:-7
 into~ it:1
 into~ mould:-4
 into~ oils:-4
 into~ one:-8
 into~ that:4
 into~ the:2
 into~ this:6
 into~0:-4
 into~=:-6
 into~W:-7
 into~b:1
 into~v:-3
 in~ ::3
 in~ ?:5
 in~ a:-2
 in~ about:-1
 in~ after:6
 in~ all:-8
 in~ an:-5
 in~ and:-2
 in~ another:6
 in~ april:-7
 in~ as:2
 in~ at:3
 in~ august:3
 in~ batch:-5
 in~ before:7
 in~ between:-6
 in~ blend:-8
 in~ burst:-2
 in~ by:1
 in~ case:-8
 in~ class:1
 in~ cold:-6
 in~ cubes:-6
 in~ dag:-1
 in~ each:-4
 in~ every:-3
 in~ fact:4
 in~ first:-7
 in~ for:10
 in~ front:-7
 in~ g:1
 in~ grams:-9
 in~ half:1
 in~ her:-9
 in~ here:-1
 in~ hers:-9
 in~ his:-9
 in~ hot:-7
 in~ i:5
 in~ it:2
 in~ its:7
 in~ january:-7
 in~ july:-8
 in~ june:-8
 in~ last:-1
 in~ law:-2
 in~ laws:-3
 in~ march:-10
 in~ may:2
 in~ maybe:5
 in~ mould:-5
 in~ my:-1
 in~ no:-5
 in~ november:-4
 in~ october:-1
 in~ ohio:-5
 in~ on:-5
 in~ once:8
 in~ one:3
 in~ or:3
 in~ order:-4
 in~ our:5
 in~ oz:-1
 in~ parts:-4
 in~ place:1
 in~ plus:-4
 in~ red:1
 in~ short:-4
 in~ slow:-2
 in~ small:-6
 in~ so:4
 in~ spr:-7
 in~ step:-6
 in~ steps:4
 in~ summer:-5
 in~ that:2
 in~ the:-2
 in~ there:5
 in~ tiny:7
 in~ to:-1
 in~ too:1
 in~ total:-6
 in~ truth:2
 in~ under:-4
 in~ week:-3
 in~ went:6
 in~ what:-6
 in~ when:-5
 in~ which:1
 in~ winter:-3
 in~ with:5
 in~ your:-1
 in~0:-7
 in~<:3
 in~=:-5
 in~>:-2
 in~F:-3
 in~I:-7
 in~L:3
 in~N:7
 in~W:-4
 in~b:-9
 in~e:3
 in~l:-2
 in~r:-6
 in~t:-6
 in~v:-9
 in~w:1
 ish:-6
 isnt:6
 isnt~ in:4
 isnt~ it:4
 issue:-2
 is~ a:2
 is~ about:-6
 is~ actual:4
 is~ all:-2
 is~ already:1
 is~ alway:-2
 is~ an:4
 is~ and:-5
 is~ as:-2
 is~ at:-7
 is~ below:-5
 is~ better:1
 is~ cheap:-5
 is~ clear:-4
 is~ com:1
 is~ correct:-9
 is~ done:1
 is~ dry:4
 is~ enough:-5
 is~ exact:-8
 is~ fine:-10
 is~ finish:2
 is~ for:-4
 is~ from:1
 is~ going:4
 is~ gone:-6
 is~ good:-8
 is~ grams:1
 is~ half:1
 is~ hard:-2
 is~ her:-3
 is~ hot:-6
 is~ in:2
 is~ it:-3
 is~ just:-9
 is~ left:-2
 is~ like:-3
 is~ love:-4
 is~ meant:-1
 is~ mine:-8
 is~ more:-1
 is~ near:-8
 is~ no:-7
 is~ normal:-5
 is~ not:-4
 is~ noth:-2
 is~ now:7
 is~ off:3
 is~ oil:1
 is~ ok:-6
 is~ on:-2
 is~ one:3
 is~ only:-10
 is~ our:-6
 is~ out:1
 is~ over:1
 is~ plenty:2
 is~ real:9
 is~ set:-1
 is~ she:-2
 is~ short:1
 is~ small:-4
 is~ so:-1
 is~ sold:4
 is~ step:-3
 is~ still:-1
 is~ technical:6
 is~ that:-3
 is~ the:-3
 is~ there:-3
 is~ thick:-4
 is~ this:-7
 is~ too:2
 is~ under:-2
 is~ weigh:-3
 is~ what:3
 is~ where:-8
 is~ whether:-7
 is~ why:-6
 is~ with:10
 is~ worth:-6
 is~ written:-1
 is~ wrong:-7
 is~0:5
 is~<:-6
 is~=:-5
 is~>:-6
 is~A:-2
 is~F:5
 is~L:5
 is~N:9
 is~S:1
 is~T:-6
 is~b:5
 is~d:-1
 is~e:-7
 is~r:3
 is~t:-8
 is~v:-2
 is~w:-2
 it:2
 itch:-2
 item:-3
 item~ grams:-3
 item~ qty:-1
 itll:2
 itll~ be:5
 its:1
 itself:-5
 itself~ off:-1
 its~ a:2
 its~ about:-6
 its~ all:-3
 its~ as:-7
 its~ been:-6
 its~ clear:-5
 its~ cook:5
 its~ date:-5
 its~ fine:-6
 its~ for:6
 its~ from:6
 its~ gone:1
 its~ hot:-6
 its~ in:-3
 its~ just:-7
 its~ like:1
 its~ made:3
 its~ meant:-1
 its~ my:1
 its~ not:-6
 its~ on:-6
 its~ only:-3
 its~ own:-3
 its~ place:5
 its~ ready:-6
 its~ sitt:-4
 its~ the:-2
 its~ time:-6
 its~ weight:-6
 its~ what:4
 its~0:7
 its~=:-6
 its~A:5
 its~F:1
 its~N:5
 its~b:-4
 its~d:-6
 its~l:3
 its~t:1
 it~ ::-7
 it~ ?:-2
 it~ a:1
 it~ about:-6
 it~ add:-4
 it~ after:-2
 it~ again:3
 it~ alone:-6
 it~ already:2
 it~ and:-4
 it~ another:3
 it~ anyway:-7
 it~ as:-2
 it~ away:-6
 it~ back:1
 it~ bad:8
 it~ be:2
 it~ because:4
 it~ before:-5
 it~ behav:-2
 it~ bit:5
 it~ but:-6
 it~ can:-5
 it~ check:-8
 it~ clear:-5
 it~ climb:-4
 it~ come:-4
 it~ comes:3
 it~ cooks:-4
 it~ cool:2
 it~ cools:-5
 it~ correct:-4
 it~ cost:-5
 it~ crack:-6
 it~ crumbl:-1
 it~ cut:-5
 it~ did:-3
 it~ didnt:2
 it~ do:-4
 it~ does:-1
 it~ doesnt:-1
 it~ down:1
 it~ dried:3
 it~ drop:-3
 it~ enough:-4
 it~ every:-3
 it~ exact:-9
 it~ first:1
 it~ fits:-5
 it~ flat:-6
 it~ foam:1
 it~ for:-2
 it~ from:1
 it~ gets:-5
 it~ gives:1
 it~ go:-5
 it~ goes:1
 it~ good:-6
 it~ got:2
 it~ had:-2
 it~ hard:-4
 it~ has:-1
 it~ heats:-5
 it~ here:-3
 it~ hold:-1
 it~ holds:-4
 it~ if:-4
 it~ in:-1
 it~ into:-10
 it~ is:4
 it~ it:2
 it~ its:-6
 it~ just:-1
 it~ last:-1
 it~ lasts:-6
 it~ lather:-7
 it~ like:-5
 it~ look:7
 it~ looks:-6
 it~ makes:2
 it~ matter:2
 it~ may:-5
 it~ melts:-3
 it~ mild:-5
 it~ moved:6
 it~ needs:-5
 it~ never:-1
 it~ next:-2
 it~ no:-4
 it~ now:-8
 it~ off:5
 it~ ok:-4
 it~ once:-7
 it~ or:-5
 it~ out:-1
 it~ outside:-6
 it~ over:1
 it~ past:-8
 it~ plus:-4
 it~ real:5
 it~ right:-1
 it~ safe:1
 it~ said:7
 it~ says:2
 it~ seiz:3
 it~ set:6
 it~ sets:-4
 it~ should:-4
 it~ since:-3
 it~ sit:2
 it~ smell:-2
 it~ stand:-1
 it~ stay:4
 it~ stays:1
 it~ still:-6
 it~ stink:-5
 it~ sweat:-6
 it~ takes:-5
 it~ the:-5
 it~ then:-2
 it~ there:-8
 it~ thicken:3
 it~ this:-1
 it~ through:-7
 it~ till:1
 it~ times:-1
 it~ to:3
 it~ today:-4
 it~ took:-6
 it~ trac:-2
 it~ turn:-3
 it~ turns:1
 it~ twice:1
 it~ under:-5
 it~ until:-6
 it~ up:1
 it~ wants:-5
 it~ was:1
 it~ weigh:-3
 it~ when:5
 it~ will:-6
 it~ with:-4
 it~ without:3
 it~ wont:-7
 it~ work:-2
 it~ would:-3
 it~ wouldnt:4
 it~ wrong:-5
 it~ zapp:6
 it~ zaps:-5
 it~%:1
 it~0:2
 it~=:-5
 it~A:-3
 it~F:-9
 it~S:-4
 it~b:4
 it~t:-8
 ive:-1
 ive~ a:2
 ive~ been:-6
 ive~ bought:3
 ive~ come:6
 ive~ done:-5
 ive~ gone:8
 ive~ got:-1
 ive~ had:-7
 ive~ made:-4
 ive~ never:-7
 ive~ no:-1
 ive~ not:-5
 ive~ only:2
 ive~ read:-6
 ive~ seen:-7
 ive~ since:4
 ive~ tried:-6
 ive~ used:-1
 ive~ weigh:-4
 ivory:-7
 i~ ?:-8
 i~ actual:-1
 i~ add:-4
 i~ added:3
 i~ alway:-3
 i~ am:4
 i~ ask:-1
 i~ began:-7
 i~ believe:3
 i~ blame:-6
 i~ bought:-10
 i~ bring:-5
 i~ buy:-3
 i~ call:-1
 i~ came:1
 i~ can:-9
 i~ cant:-4
 i~ carri:11
 i~ caught:2
 i~ chang:-7
 i~ check:-9
 i~ chuck:6
 i~ clean:1
 i~ commit:-1
 i~ copi:2
 i~ copy:-6
 i~ couldnt:1
 i~ count:-2
 i~ did:2
 i~ didnt:1
 i~ dilut:-8
 i~ dilute:-5
 i~ dissolv:1
 i~ dissolve:2
 i~ do:-7
 i~ dont:3
 i~ doubl:7
 i~ drain:9
 i~ dropp:1
 i~ empti:11
 i~ ended:-5
 i~ ever:-7
 i~ fill:10
 i~ final:-6
 i~ finish:-3
 i~ first:-5
 i~ fish:12
 i~ fold:-4
 i~ follow:2
 i~ forgot:-4
 i~ found:-2
 i~ freeze:1
 i~ froze:-1
 i~ gave:-2
 i~ get:-5
 i~ give:-4
 i~ got:-1
 i~ guess:10
 i~ had:-2
 i~ hadnt:4
 i~ halv:3
 i~ hand:-3
 i~ hate:-3
 i~ havent:-1
 i~ held:3
 i~ hit:-9
 i~ honest:10
 i~ hope:-2
 i~ just:2
 i~ keep:-4
 i~ kept:3
 i~ knock:4
 i~ know:-5
 i~ learn:-6
 i~ leave:2
 i~ left:10
 i~ let:3
 i~ like:-5
 i~ look:1
 i~ lost:7
 i~ make:-7
 i~ may:2
 i~ mean:-2
 i~ meant:-7
 i~ measur:-3
 i~ mess:-5
 i~ misread:2
 i~ mix:-7
 i~ mixed:4
 i~ must:3
 i~ near:-5
 i~ never:2
 i~ notic:8
 i~ ok:1
 i~ once:-10
 i~ open:-1
 i~ overdo:-5
 i~ paid:-4
 i~ panick:-2
 i~ plan:-5
 i~ plann:-4
 i~ press:-7
 i~ print:-6
 i~ promis:3
 i~ put:2
 i~ read:3
 i~ real:-2
 i~ realis:3
 i~ reckon:-2
 i~ remember:-2
 i~ render:-2
 i~ replac:4
 i~ rins:7
 i~ round:6
 i~ run:-8
 i~ said:-9
 i~ saw:9
 i~ scrap:9
 i~ see:5
 i~ sell:-3
 i~ set:-1
 i~ settl:-5
 i~ shook:6
 i~ short:-7
 i~ should:1
 i~ siev:-1
 i~ skipp:5
 i~ smell:1
 i~ soap:-3
 i~ sprinkl:-4
 i~ start:1
 i~ stir:-6
 i~ stirr:4
 i~ stopp:9
 i~ strain:-1
 i~ suppose:1
 i~ swapp:9
 i~ take:-5
 i~ teach:-6
 i~ tell:-7
 i~ test:-3
 i~ think:3
 i~ thought:-2
 i~ threw:3
 i~ tip:2
 i~ tipp:3
 i~ told:-1
 i~ took:2
 i~ topp:-1
 i~ translate:-3
 i~ tried:-1
 i~ trust:-3
 i~ turn:-3
 i~ type:1
 i~ typed:7
 i~ use:-4
 i~ used:1
 i~ usual:2
 i~ wait:-5
 i~ want:2
 i~ warm:-6
 i~ was:-7
 i~ wash:-2
 i~ wasnt:3
 i~ weigh:2
 i~ went:5
 i~ will:-7
 i~ wiped:-8
 i~ work:-8
 i~ would:2
 i~ write:-10
 i~ wrote:6
 i~K:-9
 jam:1
 jam~ jar:1
 january:-11
 january~ and:-4
 jar:3
 jars:-8
 jars~ of:-4
 jar~ and:8
 jar~ of:6
 jar~ so:-3
 jelly:-6
 job:4
 join:3
 join~ the:6
 judge:-1
 jug's:5
 jug:3
 jugs:2
 jug~ ::3
 jug~ and:3
 jug~ from:2
 jug~ in:-7
 jug~ is:-9
 jug~ of:4
 jug~ on:-7
 jug~ so:7
 jug~ to:6
 jug~ was:-4
 jug~ with:-1
 jug~w:2
 july:-3
 jump:5
 jumps:3
 jumps~ in:7
 june:-10
 just~ a:-2
 just~ as:-2
 just~ for:-7
 just~ the:3
 just~ want:-9
 just~ what:-6
 just~F:-4
 k:2
 keep:-8
 keeps:-8
 keeps~ it:-4
 keeps~ the:-2
 keep~ a:-5
 keep~ back:-1
 keep~ in:-5
 keep~ it:-8
 keep~ my:-8
 keep~0:-4
 keep~<:1
 keep~t:-3
 kept:2
 kept~ a:-1
 kept~ back:1
 kept~ in:-5
 kept~ the:2
 kept~0:2
 kettle:7
 key:-4
 kg:2
 kg~ cost:-2
 kid:9
 kidd:-7
 kids:-1
 kill:-6
 kilo:4
 kilo~ in:-4
 kilo~ of:-6
 kind:1
 kinda:4
 kind~ check:-8
 kind~ of:-1
 kind~ regard:-4
 kind~ with:3
 kiss:-5
 kitchen~ and:2
 kitchen~ bar:-6
 kitchen~ is:-4
 kitchen~ scale:5
 kitchen~ so:-4
 kitchen~ soap:-1
 kitchen~ was:-6
 knew:-7
 knife:-9
 knob:8
 knob~ of:8
 knock:3
 knock~ a:-2
 knock~ the:3
 know:4
 knows:4
 knows~ how:4
 know~ ::-5
 know~ but:-2
 know~ how:4
 know~ i:-5
 know~ if:3
 know~ is:-7
 know~ it:1
 know~ its:-3
 know~ that:4
 know~ the:-1
 know~ what:-5
 know~ whether:-6
 know~ which:4
 krakow:-2
 k~0:-10
 l:-5
 la:-5
 lab:-3
 labell:-3
 label~ ::-7
 label~ on:-7
 label~ says:5
 label~0:-6
 ladi:-4
 ladl:10
 ladle:6
 ladle~ of:3
 lads:-4
 lady:-3
 lady~ at:-5
 lady~ in:-5
 lady~ on:-5
 land:1
 last:-5
 lasts:-8
 last~ autumn:-4
 last~ batch:-7
 last~ bit:5
 last~ minute:7
 last~ month:3
 last~ night:-7
 last~ of:-6
 last~ one:-10
 last~ time:-5
 last~ week:1
 last~ weeks:2
 last~ winter:-8
 last~ year:-4
 last~ years:-3
 last~0:3
 last~F:-7
 late:-1
 later:-2
 later~ on:-6
 late~ mother:-6
 lather:-6
 lather~ is:-2
 lather~ like:-7
 lather~ was:-4
 laugh:2
 laugh~ at:-2
 laundry:2
 laundry~ bar:-7
 laundry~ bars:-2
 laundry~ soap:-4
 law:-2
 laws:-3
 law~ who:-5
 layer:3
 la~A:-4
 lb:1
 lb~ oz:-7
 leaflet~ from:-4
 leak:-3
 learn:-8
 learn~ from:-2
 learn~ that:2
 least:-3
 least~t:-1
 leav:-5
 leave:-4
 leave~ it:-2
 leave~ out:-7
 leave~ the:-3
 leave~ them:-3
 leave~t:-1
 leav~ a:-6
 leav~ the:-7
 leeds:4
 leftover:1
 leftover~F:-2
 left~ and:3
 left~ for:-9
 left~ from:6
 left~ in:-2
 left~ it:1
 left~ of:-7
 left~ on:1
 left~ out:-1
 left~ over:-5
 left~ the:1
 left~ to:3
 length:-3
 lent:-1
 less:4
 lesson:-6
 less~ of:5
 less~ than:-1
 less~F:-2
 less~W:-2
 lets:1
 letter:1
 let~ cool:-2
 let~ it:-4
 let~ me:-4
 let~ the:-4
 let~ them:4
 let~ us:-6
 let~ your:-6
 level:-1
 library:-6
 library~ book:-5
 lick:1
 lid:-2
 lidd:-3
 lids:-6
 lid~ and:-8
 lid~ of:-6
 lid~ off:2
 lid~ on:-6
 lie:-7
 life:2
 lift:3
 lift~ the:4
 lighter:-7
 light~ on:2
 light~ trace:-1
 like:-3
 liked:-6
 likes:-5
 likes~ it:5
 likewise:2
 like~ a:-4
 like~ alway:-8
 like~ an:-6
 like~ candle:-5
 like~ cheese:-7
 like~ cold:-5
 like~ custard:-5
 like~ i:-9
 like~ in:1
 like~ it:1
 like~ mad:1
 like~ mash:-4
 like~ me:-5
 like~ my:3
 like~ noth:-1
 like~ paper:3
 like~ porridge:3
 like~ sandpaper:-3
 like~ somebody:-2
 like~ someone:-1
 like~ soup:-4
 like~ stone:-5
 like~ that:-6
 like~ the:-7
 like~ thin:-3
 like~ to:-6
 like~ wet:-2
 like~ you:-2
 like~%:1
 like~0:3
 like~F:-7
 like~L:-8
 like~S:-4
 like~U:-7
 like~X:-3
 like~t:6
 like~w:6
 limit:-7
 line:7
 lined:-7
 lined~ w:-5
 lined~ with:-2
 linen:-3
 lines:-1
 line~ ::5
 line~ a:-4
 line~ the:-3
 lip:-6
 lip~ balm:-6
 liquid:1
 liquid~ ::1
 liquid~ and:-1
 liquid~ hand:-3
 liquor:8
 list:4
 list~ for:-9
 list~ i:4
 list~ is:-2
 litre:2
 little:1
 little~ ?:-6
 little~A:2
 little~F:-8
 little~W:2
 live:-4
 lived:-8
 lives:-6
 lives~ in:-6
 loaf:-4
 loaf~ ::-4
 loaf~ i:1
 loaf~ mold:-2
 loaf~ mould:-3
 loaf~ tin:-2
 loav:-4
 local:-5
 lock:-8
 loft:-4
 log~ ::-2
 lol:-2
 long:-3
 longer:-3
 longer~ than:-3
 long~ as:-6
 long~ one:1
 long~ sleev:-5
 long~ story:7
 long~ time:-4
 look:3
 looks:-10
 looks~ like:-4
 looks~ ok:-1
 look~ a:2
 look~ at:-5
 look~ for:2
 look~ it:-8
 look~ like:1
 look~ of:1
 look~ ok:-3
 look~ over:-6
 look~ right:-4
 loosen:8
 loosen~ it:7
 lose:-3
 loss:-2
 lost:3
 lost~ a:-1
 lost~ my:-1
 lost~ the:-8
 lot:-1
 lotion:8
 lots:-8
 lots~ of:-6
 lot~ ?:-1
 lot~ of:1
 lot~ to:-3
 lot~0:3
 loud:-8
 love:-7
 loves:2
 love~ a:2
 love~ and:-3
 love~ but:-3
 love~ it:-4
 love~ to:-4
 low:-2
 lower:7
 lowest:-5
 lowest~ flame:-5
 low~ and:-5
 low~ for:3
 low~ heat:-1
 low~ in:2
 low~t:-3
 luck:3
 lucki:-7
 lucky:-7
 lukewarm:-7
 lump:5
 lumps:-4
 lumpy:6
 lump~ of:-1
 lunch:-8
 lurker:-4
 luxury:-4
 lye's:5
 lye:1
 lyes:-6
 lyes~ together:-5
 lying:4
 lyon:-5
 l~0:-4
 m:-5
 machine:-6
 made:1
 made~ ::-5
 made~ a:3
 made~ for:-9
 made~ from:-3
 made~ hers:-7
 made~ in:-7
 made~ it:2
 made~ my:-2
 made~ of:-5
 made~ on:-5
 made~ soap:-2
 made~ the:5
 made~ this:-5
 made~ up:5
 made~ with:-7
 made~0:8
 made~t:-1
 magazine:-5
 mak:9
 make:1
 maker:-5
 maker~ ::-4
 makes:-4
 makes~ a:-8
 makes~ it:-3
 makes~ no:-5
 makes~ sense:-3
 makes~ the:-5
 makes~ up:7
 makes~T:-9
 makes~b:-6
 make~ a:-9
 make~ exact:-6
 make~ for:-6
 make~ it:7
 make~ sense:-3
 make~ soap:-3
 make~ the:-6
 make~ this:-5
 make~ up:-1
 mak~ it:6
 mak~ the:-4
 mak~ this:-1
 mama:-6
 man:-8
 march:-10
 margin:-2
 marit:-5
 mark:6
 market:-7
 market~ told:-2
 marks:1
 marta:4
 mash:-4
 mash~ potato:-3
 mass:-6
 mate:-1
 material:-7
 maths:3
 matter:4
 matter~ to:3
 may:1
 maybe:8
 maybe~ a:8
 maybe~0:5
 maybe~<:-2
 maybe~t:-7
 maybe~w:5
 may~ be:1
 may~ have:5
 may~ i:-6
 me:-1
 mean:-3
 means:-1
 meant:-1
 meant~ to:-1
 meanwhile:4
 mean~ the:3
 mean~ to:-5
 measur:4
 measure:1
 measur~ cup:4
 measur~ it:1
 measur~ jug:8
 measur~ the:2
 mechanic:3
 medium:-6
 meets:-2
 meine:-7
 melt:-1
 melts:-9
 melts~ at:-4
 melt~ and:3
 melt~ at:-5
 melt~ by:-8
 melt~ everyth:4
 melt~ first:-6
 melt~ i:-8
 melt~ in:7
 melt~ on:-6
 melt~ the:-6
 melt~ with:2
 melt~=:-3
 melt~F:1
 member:2
 memory:6
 men:-6
 mention:1
 merci:-4
 mess:-7
 mess~ up:-4
 met:-1
 method:-3
 method~ ::-6
 metric:-7
 me~ ?:4
 me~ about:-3
 me~ and:2
 me~ as:2
 me~ at:2
 me~ before:-5
 me~ but:-2
 me~ for:-1
 me~ how:-9
 me~ i:-2
 me~ if:-4
 me~ in:-3
 me~ it:-4
 me~ its:-5
 me~ on:-2
 me~ that:-1
 me~ the:2
 me~ this:-5
 me~ to:-7
 me~ where:2
 me~ whether:-2
 me~ with:3
 me~0:-8
 me~t:-7
 middle:-5
 middle~ of:4
 might~ have:4
 mild:-1
 mild~ ?:-5
 milk:-7
 milk~ carton:-7
 mill:-5
 min:7
 mind:5
 mind~ the:-2
 mine:-2
 mines:1
 mine~ ::2
 mine~ from:1
 mine~ had:-5
 mine~ has:-4
 mine~ in:-7
 mine~ is:7
 mine~ took:-6
 mine~ with:5
 mini:1
 minimum:2
 minus:6
 minus~ the:10
 minus~ whatever:6
 minute:-4
 minute~0:-7
 min~ .:6
 misread:10
 misread~ my:4
 miss:3
 miss~ the:4
 mistake:3
 mistake~ and:-7
 mix:3
 mixed:4
 mixed~ at:-6
 mixed~ in:5
 mixed~ it:3
 mixed~ the:1
 mixed~ up:-1
 mixed~ with:1
 mixer:-4
 mix~ at:-2
 mix~ the:2
 mix~A:-3
 mk:-4
 ml:11
 mm:-7
 mode:3
 modern:-5
 mold:2
 molds:3
 mold~ holds:-4
 mold~ is:2
 moment:-7
 moms:-2
 mon:4
 monday:-1
 money:3
 month:-2
 month~ i:-2
 month~0:-6
 moon:-5
 mopp:3
 mopp~ up:4
 more:3
 more~ and:-7
 more~ fat:-7
 more~ like:9
 more~ of:3
 more~ or:-2
 more~ than:-2
 more~A:5
 more~F:3
 morn:-1
 morn~ and:1
 morn~ from:-4
 most:5
 most~ of:8
 mother:-1
 mother~ and:-6
 mother~ did:3
 mother~ in:1
 mould:-1
 mouldy:4
 mould~ ::-5
 mould~ a:-6
 mould~ and:-2
 mould~ bang:-4
 mould~ by:-2
 mould~ for:-2
 mould~ holds:-4
 mould~ in:-4
 mould~ is:3
 mould~ of:-7
 mould~ on:-4
 mould~ so:-6
 mould~ the:-6
 mould~ was:-4
 mould~ with:-9
 mould~0:-2
 mould~t:-4
 mould~v:-4
 mov:1
 move:-3
 moved:3
 moved~ to:2
 mrs:3
 much:-1
 much~ ?:-5
 much~ and:6
 much~ as:-8
 much~ fat:-4
 much~ for:-9
 much~ of:-5
 much~ superfat:-5
 much~A:-3
 much~F:-3
 much~W:4
 muffin:-6
 mug:5
 multip:6
 mum~ says:-6
 museum:-8
 mush:-5
 must:-5
 must~ be:-8
 mutton:2
 myself:-5
 my~ arm:-5
 my~ aunt:-4
 my~ aunts:3
 my~ babcia:-5
 my~ bars:-5
 my~ bathroom:7
 my~ book:3
 my~ boyfriend:-2
 my~ brother':5
 my~ brother:-2
 my~ colleague:-4
 my~ country:5
 my~ cousin:-2
 my~ dad:-7
 my~ dads:3
 my~ daughter':-6
 my~ daughter:2
 my~ earlier:3
 my~ elbow:-6
 my~ english:-2
 my~ everyday:-3
 my~ ex:-6
 my~ father:-3
 my~ first:-2
 my~ flatmate:-4
 my~ friend:4
 my~ glass:-2
 my~ good:-5
 my~ granddaughter:-4
 my~ grandfather:1
 my~ grandmother:-9
 my~ grandson:5
 my~ great:-2
 my~ hair:-1
 my~ hand:-1
 my~ hands:-9
 my~ handwrit:-8
 my~ husband:-4
 my~ kilo:-3
 my~ kitchen:3
 my~ last:-10
 my~ laundry:-3
 my~ little:3
 my~ mate:-8
 my~ mind:6
 my~ mold:-8
 my~ mother:-2
 my~ mould:1
 my~ mum:-1
 my~ mums:-7
 my~ nan:-8
 my~ nans:-4
 my~ neighbour:-3
 my~ nephew:-6
 my~ niece:-2
 my~ notebook:6
 my~ notes:-1
 my~ number:-2
 my~ old:-2
 my~ own:3
 my~ partner:-1
 my~ paste:-5
 my~ phone:-5
 my~ plan:-3
 my~ question:-2
 my~ recipe:-2
 my~ scal:-6
 my~ scale:6
 my~ second:-3
 my~ sheet:-3
 my~ sister:-8
 my~ skin:2
 my~ slow:-5
 my~ soap:-2
 my~ son:1
 my~ spreadsheet:-4
 my~ sums:1
 my~ superfat:-2
 my~ table:-6
 my~ teacher:-6
 my~ third:-2
 my~ thumb:-1
 my~ tongue:-2
 my~ usual:-9
 my~ very:-7
 my~ whole:-5
 my~ wife:1
 my~ wifes:-3
 my~%:-2
 my~0:-6
 my~A:2
 my~F:-2
 my~K:-7
 my~L:-9
 my~S:-5
 my~W:5
 my~l:-5
 my~t:3
 my~w:3
 m~A:-8
 m~F:-3
 n:-1
 namaste:-4
 name:-10
 name~ ::-3
 nan:-10
 nans:-5
 natural:-6
 nb:1
 near:-5
 nearer:6
 nearer~0:4
 near~ enough:4
 near~ it:-2
 near~ the:-2
 near~%:-10
 near~0:-1
 near~d:-1
 near~t:4
 need:-5
 needs:-6
 needs~ a:-7
 needs~ the:-6
 need~ ::-2
 need~ a:-4
 need~ it:4
 need~ more:-7
 need~ the:-4
 negative:3
 neighbor:-6
 neighbour:-4
 neither:3
 neither~ of:-1
 nephew:-2
 nerv:-8
 nervou:-2
 never:-2
 never~ above:-5
 never~ added:4
 never~ again:-9
 never~ bother:-8
 never~ check:-7
 never~ did:-7
 never~ fail:-3
 never~ fails:-4
 never~ go:-10
 never~ got:6
 never~ happen:7
 never~ in:-5
 never~ let:-6
 never~ made:10
 never~ measur:-2
 never~ mind:-8
 never~ once:-2
 never~ set:5
 never~ the:-8
 never~ weigh:-2
 never~ went:-9
 new:-5
 news:-5
 newsletter:1
 newspaper:-9
 new~ bottle:-3
 new~ here:-2
 new~ one:4
 new~ scale:-4
 new~ to:-3
 next:-8
 next~ door:-6
 next~ month:-7
 next~ morn:2
 next~ one:-7
 next~ time:-10
 next~ to:4
 next~ year:-3
 nice:-1
 nicer:-6
 niece:2
 night:-5
 night~ and:-3
 night~ before:-6
 nil:2
 no:-1
 nobody:-3
 nobody~ answer:-3
 nobody~ had:4
 nobody~ has:1
 nobody~ will:-1
 none:5
 none~ at:-8
 none~ in:-2
 none~ of:-1
 none~ the:-3
 nonna:-8
 noon:-6
 nor:-1
 normal:-7
 normal~ ?:-5
 normal~ one:-3
 north:-3
 nose:-10
 note:7
 notebook:-2
 notebook~ ::-4
 notebook~ p:-3
 notebook~ says:3
 notebook~ the:-4
 notes:-3
 notes~ app:-5
 notes~ from:-6
 note~ ::-1
 noth:-5
 noth~ and:-3
 noth~ at:-6
 noth~ but:-4
 noth~ else:-2
 noth~ in:-4
 noth~ only:-4
 notic:8
 notice:1
 notic~ the:3
 notic~ when:7
 not~ ?:-2
 not~ a:-6
 not~ at:-4
 not~ bad:-5
 not~ be:-9
 not~ certain:5
 not~ fluid:-8
 not~ for:-5
 not~ going:2
 not~ in:2
 not~ like:-8
 not~ more:-6
 not~ on:8
 not~ so:-9
 not~ sure:4
 not~ that:-6
 not~ the:-2
 not~ to:-9
 not~ too:-4
 not~ touch:-5
 not~ use:-3
 not~ what:-3
 not~0:-5
 not~A:-3
 not~F:12
 not~b:6
 not~e:8
 nought:-1
 november:-5
 now:3
 nowhere:-8
 now~ ::-5
 now~ ?:2
 now~ and:-5
 now~ it:-1
 now~ its:5
 now~ my:4
 now~ on:3
 now~ so:-9
 now~ the:3
 now~F:2
 no~ ?:-2
 no~ ash:-4
 no~ difference:-7
 no~ gel:-5
 no~ good:-2
 no~ harm:-5
 no~ i:-6
 no~ idea:1
 no~ it:6
 no~ longer:4
 no~ more:-2
 no~ need:-5
 no~ other:-6
 no~ reason:-3
 no~ scale:2
 no~ smell:-3
 no~ sorry:1
 no~ superfat:-7
 no~ time:-4
 no~ wait:3
 no~ white:-3
 no~ zap:-6
 no~0:2
 no~F:9
 no~I:5
 no~S:-9
 no~W:3
 no~X:-8
 nr:-3
 nr~0:-3
 number:-5
 number~ ?:-4
 number~ and:2
 number~ are:1
 number~ hold:-1
 number~ i:-5
 number~ is:-3
 number~0:-10
 nurse:-4
 n~ it:-3
 n~=:-4
 n~F:3
 o'clock:-2
 o:-5
 oat:-8
 oat~X:-2
 obvious:-7
 obvs:-6
 october:1
 odd:-5
 odds:-6
 of:2
 off:4
 offcut:-5
 offer:-7
 office:-7
 off~ ?:-2
 off~ a:1
 off~ and:3
 off~ at:-10
 off~ by:-1
 off~ for:5
 off~ i:-7
 off~ in:2
 off~ it:3
 off~ my:-3
 off~ the:3
 off~ what:8
 off~ with:-1
 off~0:-6
 off~l:3
 off~w:-9
 often:-7
 of~ a:1
 of~ about:-5
 of~ all:-7
 of~ ammonia:-6
 of~ an:1
 of~ anyth:-9
 of~ batter:-7
 of~ clean:-6
 of~ cold:2
 of~ course:-1
 of~ doors:-7
 of~ dried:-3
 of~ each:7
 of~ everyth:5
 of~ extra:-1
 of~ eyes:-1
 of~ fat:3
 of~ fats:4
 of~ half:1
 of~ it:1
 of~ last:3
 of~ me:-2
 of~ melt:5
 of~ mine:-4
 of~ my:-3
 of~ noth:-7
 of~ oil:1
 of~ oils:-2
 of~ old:5
 of~ one:2
 of~ our:-5
 of~ paste:-7
 of~ roast:-1
 of~ rough:-1
 of~ soap:2
 of~ solution:-4
 of~ some:3
 of~ stirr:-8
 of~ sunday:-5
 of~ that:8
 of~ the:2
 of~ them:1
 of~ these:-5
 of~ those:-1
 of~ us:1
 of~ warm:-3
 of~ wet:-4
 of~ what:-2
 of~ which:-2
 of~ you:-5
 of~ your:-7
 of~%:2
 of~0:-7
 of~=:2
 of~>:-6
 of~A:2
 of~B:4
 of~C:5
 of~F:-4
 of~I:-4
 of~K:2
 of~L:7
 of~M:-6
 of~N:9
 of~T:-1
 of~U:1
 of~W:2
 of~X:-4
 of~b:-1
 of~t:-2
 of~v:-8
 of~w:-9
 oh:2
 ohio:-5
 oh~ and:1
 oil:4
 oils:-1
 oils~ ?:-1
 oils~ and:-4
 oils~ are:-3
 oils~ as:1
 oils~ at:-4
 oils~ because:-6
 oils~ but:-4
 oils~ come:-4
 oils~ g:-4
 oils~ i:-5
 oils~ in:-3
 oils~ to:-1
 oils~ were:3
 oils~ which:-7
 oils~>:-1
 oily:4
 oil~ ?:-7
 oil~ and:-2
 oil~ at:7
 oil~ g:-4
 oil~ grams:-5
 oil~ in:-4
 oil~ is:1
 oil~ on:-4
 oil~ to:2
 oil~ was:-1
 oil~ weight:-5
 ok:-2
 okay:-4
 okay~ ?:-4
 okay~ for:-4
 okay~ so:-2
 ok~ ?:-2
 ok~ before:-3
 ok~ for:-6
 ok~ like:-4
 ok~ or:-2
 ok~ so:3
 ok~ to:-4
 ok~ with:-6
 old:2
 older:2
 oldest:-8
 old~ and:2
 old~ blanket:-2
 old~ days:-4
 old~ notebook:-8
 old~ one:-4
 old~ pillowcase:-5
 old~ recipe:-6
 old~ soap:-2
 old~ tub:3
 old~A:4
 old~F:2
 olej:-3
 olej~F:-3
 oma:-4
 omg:-5
 on:-1
 once:-4
 once~ a:2
 once~ and:2
 once~ i:1
 once~ in:-1
 once~ it:2
 once~ its:-3
 once~ the:-3
 one:-3
 ones:-6
 ones~ are:-8
 one~ ::-6
 one~ ?:-3
 one~ after:-9
 one~ and:3
 one~ at:6
 one~ bar:-7
 one~ batch:-6
 one~ bowl:-9
 one~ can:-5
 one~ corner:-2
 one~ for:-3
 one~ from:-9
 one~ go:3
 one~ had:-6
 one~ has:-4
 one~ i:-1
 one~ in:1
 one~ into:-1
 one~ is:-2
 one~ jug:-2
 one~ last:-7
 one~ of:4
 one~ on:-7
 one~ pan:-7
 one~ pot:-5
 one~ since:5
 one~ sorry:-6
 one~ spoon:6
 one~ that:1
 one~ the:1
 one~ thing:3
 one~ time:-5
 one~ to:-7
 one~ weigh:-9
 one~ went:-5
 one~ who:-7
 one~ with:-6
 one~ without:-7
 one~0:1
 one~F:-2
 one~t:-1
 one~w:-7
 onion:1
 only:3
 only~ about:4
 only~ after:-8
 only~ does:4
 only~ for:2
 only~ gave:5
 only~ got:-6
 only~ had:8
 only~ have:-4
 only~ if:-1
 only~ notic:5
 only~ put:2
 only~ so:-5
 only~ then:-8
 only~ there:-3
 only~ want:-11
 only~ when:2
 only~ whether:-7
 only~0:12
 only~<:2
 only~=:-9
 only~F:-10
 only~l:-1
 onto:-1
 onto~ the:2
 on~ ::-3
 on~ a:-8
 on~ and:-4
 on~ before:-5
 on~ day:4
 on~ friday:1
 on~ glov:-2
 on~ her:-2
 on~ here:-9
 on~ high:-5
 on~ i:6
 on~ it:-5
 on~ its:-6
 on~ low:-5
 on~ me:-5
 on~ monday:-8
 on~ my:1
 on~ offer:-7
 on~ one:-6
 on~ our:2
 on~ page:-5
 on~ paper:-9
 on~ purpose:1
 on~ saturday:-2
 on~ slow:-2
 on~ sunday:-1
 on~ that:-1
 on~ the:1
 on~ them:-6
 on~ this:6
 on~ thursday:1
 on~ to:-2
 on~ tue:-1
 on~ tuesday:-5
 on~ we:-8
 on~ with:7
 on~ your:-4
 on~0:-8
 on~=:-4
 on~>:-8
 on~A:4
 on~F:5
 on~t:-3
 oops:4
 open:1
 opens:4
 open~ a:-8
 open~ all:5
 open~ since:8
 open~ the:-2
 open~ window:-5
 open~0:1
 operator:-5
 operator~ ::-4
 opinion:-8
 opinion~ on:-6
 optional:6
 or:-4
 order:-8
 order~ of:-5
 ordinary:3
 original:-4
 or~ a:1
 or~ am:-7
 or~ did:-8
 or~ do:-6
 or~ does:-5
 or~ is:-7
 or~ it:-6
 or~ just:-4
 or~ less:-2
 or~ more:-7
 or~ no:-6
 or~ not:-3
 or~ should:-3
 or~ so:1
 or~ take:4
 or~ the:-2
 or~ thereabout:3
 or~ too:-2
 or~ was:1
 or~ will:-3
 or~0:2
 or~A:-6
 or~N:-7
 other:-2
 otherwise:-8
 otherwise~ it:-8
 other~ and:-2
 other~ half:1
 other~ way:-4
 other~0:3
 other~W:-6
 other~w:1
 ought:-5
 ought~ to:-5
 ounc:5
 ounce:-3
 ounc~ for:6
 our:-1
 ours:-9
 ours~ is:-7
 our~ club:3
 our~ course:-3
 our~ group:-9
 our~ own:-3
 our~ teacher:-5
 our~ town:-2
 our~ village:5
 out:3
 outdoor:-6
 outside:-8
 outside~ and:-1
 outside~ of:-1
 outside~ on:-7
 out~ ::-7
 out~ a:1
 out~ again:4
 out~ and:3
 out~ at:2
 out~ by:4
 out~ for:3
 out~ from:-4
 out~ i:-8
 out~ in:-3
 out~ is:-9
 out~ like:-8
 out~ of:-1
 out~ right:-4
 out~ so:1
 out~ the:-2
 out~ to:10
 out~ what:4
 out~ with:3
 out~0:3
 out~=:-2
 out~A:-2
 out~N:1
 oval:-4
 oven:-9
 oven~ at:-4
 over:1
 overdo:-5
 overfat:2
 overheat:-6
 overnight~ at:-4
 over~ ?:-6
 over~ a:2
 over~ and:3
 over~ before:-6
 over~ for:5
 over~ from:3
 over~ half:-7
 over~ in:7
 over~ it:2
 over~ my:1
 over~ that:3
 over~ the:-4
 over~ this:1
 over~%:-8
 over~0:1
 over~d:-2
 over~t:-6
 own:2
 own~ ::-4
 own~ a:-3
 own~ line:-3
 own~0:-3
 own~F:3
 oyl:-4
 oyl~=:-6
 oz:2
 oz~ g:-3
 p:-6
 pack:-1
 packet:6
 packet~ of:-2
 packs:-1
 packs~ of:-4
 paddle:-6
 page:-1
 page~ ::-6
 page~ for:-5
 page~ is:-3
 page~ sorry:-5
 page~0:-2
 paid~ for:6
 paid~0:-7
 pail:-9
 paint:3
 pair:3
 pairs:-8
 pair~ of:-1
 pale:-11
 pan:2
 panic:-7
 panick:1
 pantry:-6
 pan~ and:1
 paper~ and:-4
 paper~ cup:6
 paper~0:-6
 paper~t:-5
 parcel:5
 parent:-3
 parish:-9
 participant:2
 partner:-2
 parts:-1
 part~ ?:5
 part~ of:3
 part~0:-9
 pass:-10
 passt:-5
 passt~ das:-5
 pass~ the:-3
 past:2
 paste:-9
 paste~ ::3
 paste~ in:-5
 paste~ is:-5
 paste~ to:-6
 paste~ went:-3
 paste~ with:-3
 pastry:3
 past~ from:-5
 past~ its:-6
 past~0:-2
 patch:-6
 patience:-6
 patient:-8
 pay:-1
 pcs:-5
 pct:-7
 pdf:-8
 peak:-6
 pearl:1
 pellet:2
 pencil:-2
 pencill:8
 pencil~ and:2
 people:-11
 people~ ask:-5
 people~ in:-2
 people~ who:-8
 people~0:-1
 per:-2
 percent:4
 percentag:-3
 perfect:-8
 perhap:9
 perhap~0:4
 period:-5
 person:-8
 per~ bar:-4
 per~ batch:2
 per~ kilo:-5
 petra:4
 ph:-9
 pharmacist:1
 pharmacy:-5
 phase:-7
 phase~ a:-3
 phase~ b:-3
 phase~ c:-2
 phenolphthalein:5
 phone:2
 phone~ and:7
 phone~ is:-5
 phone~ rang:8
 phone~ read:-7
 photo:-4
 photo~ of:-1
 ph~ strip:-7
 pick:-4
 pick~ up:-1
 picture:-9
 piec:-6
 piece~ for:-7
 piece~ of:6
 piec~ of:-2
 piec~0:-3
 pig:-8
 pilar:1
 pillowcase:-4
 pinch:-1
 pinch~ of:-3
 pink:2
 pitcher:-8
 place:5
 place~ of:4
 plain:-2
 plain~ white:-2
 plain~F:-6
 plain~W:5
 plan:-2
 plann:-2
 plann~ to:2
 plan~ for:2
 plastic:2
 plastic~ cup:3
 plastic~ jug:5
 plate:3
 play:-5
 pleas:-4
 please:4
 please~ ?:2
 please~ be:-6
 please~ check:-1
 please~ confirm:-7
 please~ dont:-9
 please~ excuse:-4
 please~ look:-8
 please~ my:6
 please~ verify:-8
 plenty:-7
 plenty~ for:-6
 plenty~ of:-3
 pls~ check:-4
 plumber:-3
 plus:2
 plus~ a:3
 plus~ an:4
 plus~ another:1
 plus~ the:6
 plus~0:-4
 plus~<:-6
 plus~=:-4
 plus~w:-6
 plz:-5
 point:-4
 poland:-2
 polish:-2
 polypropylene:-4
 poor:-8
 popcorn:5
 pops:-4
 porch:-4
 porridge:2
 portion:-1
 portugal:2
 possible:-5
 post:-5
 postal:1
 postal~ scale:1
 postman:1
 posts:-5
 post~ this:-6
 post~t:-2
 pot:1
 potato:-8
 potato~ then:-3
 pots:-3
 pot~ ::-4
 pot~ and:2
 pot~ at:-7
 pot~ for:-7
 pot~ holds:2
 pot~ i:-6
 pot~ is:-5
 pot~ of:-3
 pot~ off:-7
 pot~ oils:-9
 pot~ on:-1
 pot~ was:4
 pot~ went:-2
 pot~ with:2
 pot~0:1
 pound:1
 pour:5
 pours:-7
 pour~ ::-5
 pour~ at:-8
 pour~ cover:-1
 pour~ in:5
 pour~ into:-6
 pour~ off:2
 pour~ on:1
 pour~ out:6
 pour~ the:-7
 pour~0:3
 pour~=:2
 pour~>:-7
 pour~A:-5
 pour~F:-1
 pour~t:-3
 pour~w:-11
 powder:5
 powder~0:7
 power~ cut:6
 pp:-6
 ppl:-8
 practical:-7
 prefer:6
 premix:-8
 prep:-4
 present:-1
 press:-4
 press~ in:-6
 press~ into:-2
 press~ it:-3
 press~0:-8
 pretty:-8
 pretty~ but:-6
 previou:2
 pric:-5
 price:-7
 print:4
 printout:-5
 print~0:-8
 prob:3
 probab:1
 problem:-1
 proces:-1
 proces~ ::-2
 proces~ crock:-3
 proces~ in:-2
 proces~ slow:-2
 professor:3
 project:-6
 promis:-2
 promis~ to:1
 proper:-5
 proportion:4
 proud:-6
 ps:3
 pub:-4
 puck:-1
 pucks:-3
 puck~ dual:-6
 pudd:-5
 puddle:3
 pull:3
 pupil:-1
 pure:1
 pure~ and:-8
 pure~F:-4
 purity:6
 purpose:1
 push:-8
 put:3
 puts:-6
 puts~ everyth:-3
 put~ a:3
 put~ in:6
 put~ it:-2
 put~ the:1
 put~ them:-4
 put~ together:-5
 put~0:-2
 put~<:-7
 put~=:-8
 put~>:2
 put~F:4
 put~w:-1
 q:-8
 qty:-4
 qty~ g:-1
 quantiti:5
 quantity:-4
 quantity~ of:-4
 quarter:8
 quarter~ of:8
 question:-4
 question~ ::-6
 question~ from:-2
 question~ is:-5
 question~ mark:-1
 question~ to:-1
 quick:-7
 quicker:-3
 quicker~ than:-6
 quick~ one:-5
 quite:2
 quot:-5
 q~ ::-2
 r:-2
 rack:-5
 rack~ and:-1
 radiator:-4
 radio:-9
 rain:-1
 rainy:-5
 rainy~ sunday:-4
 rais:-8
 ran:4
 rancid:1
 rancid~ so:5
 rang:6
 ran~ dry:4
 ran~ out:2
 ran~ short:3
 ran~ the:-7
 rate:-5
 rather:5
 rather~ have:-1
 rather~ than:3
 raw:3
 re:-4
 reach:-5
 reach~ the:5
 reach~d:-7
 reader:-2
 reads:3
 reads~ in:-5
 ready:2
 ready~ dissolv:3
 ready~ for:-5
 ready~ in:-5
 ready~ made:3
 ready~ mixed:3
 ready~ to:-6
 read~ it:-5
 read~ that:-6
 read~ the:-3
 read~ this:-4
 read~0:-1
 read~F:3
 read~b:-1
 real:1
 realis:5
 reality:2
 real~ a:6
 real~ have:-3
 real~A:-2
 real~N:5
 reason:-1
 rebatch:4
 recall:6
 receipt:7
 recette:-4
 recheck:1
 recip:-9
 recipe:-2
 recipe~ ::-2
 recipe~ ?:-3
 recipe~ and:-5
 recipe~ card:-3
 recipe~ for:1
 recipe~ from:-6
 recipe~ i:-5
 recipe~ in:4
 recipe~ is:-1
 recipe~ of:-6
 recipe~ on:-6
 recipe~ was:2
 reckon:6
 reckon~ it:-1
 record:-2
 record~0:-8
 red:3
 refill:1
 refin:3
 regard:-6
 remain:-10
 remainder:7
 remain~0:3
 remark:-7
 remark~ ::-2
 remember:3
 remember~ it:-7
 render:-8
 render~ the:-7
 render~ twice:-5
 render~=:-4
 repeat:-6
 replac:6
 replace:-5
 replace~ it:3
 replac~ by:6
 replac~ the:-2
 reply:-5
 report:-4
 rescue:5
 rest:3
 rest~ is:3
 rest~ of:-2
 rest~ went:-1
 rest~t:-2
 retir:-8
 rev:-7
 rev~0:-7
 re~ ::-3
 ribbon:-5
 rice:-4
 rich:-9
 rid:-2
 rid~ of:-2
 right:-2
 right~ ?:-3
 right~ about:1
 right~ amount:-5
 right~ and:-5
 right~ at:1
 right~ but:7
 right~ for:-7
 right~ now:-5
 right~ on:-5
 right~ or:-3
 right~ so:-4
 right~ the:-2
 right~ to:-5
 right~ with:-8
 rim:-3
 ring:-7
 ring~t:-1
 rins:1
 rinse:-7
 rinse~ the:-4
 rins~ the:-1
 rises:-4
 roast:-2
 rock:-6
 roll:-7
 roof:1
 room:-1
 room~ for:3
 room~ temp:-4
 room~ temperature:-1
 room~0:-5
 rough:2
 rough~d:-1
 rough~w:1
 round:1
 round~ and:-3
 round~ it:-2
 round~ the:3
 round~ to:-5
 round~0:1
 row:2
 row~0:5
 rspo:-7
 rubb:-1
 rugby:-3
 rugby~ club:-3
 ruin:-3
 rule:-10
 rules:1
 run:-3
 runn:-9
 runny:6
 runs:-1
 run~ it:-7
 run~ out:-8
 run~ the:-4
 rush:-2
 rustic:-8
 ruth:2
 s0ap:-5
 s:-4
 sack:-3
 safe:-1
 safety:-4
 safe~ ?:-4
 safe~ side:4
 safe~ to:-2
 said~ a:4
 said~ my:5
 said~ no:-5
 said~ so:-7
 said~ that:-7
 said~ the:-2
 said~ yes:-6
 said~0:-1
 said~>:-5
 said~b:6
 salad:-6
 sale:-7
 salt:3
 same~ amount:6
 same~ as:-7
 same~ bar:-3
 same~ fats:1
 same~ for:-3
 same~ in:-1
 same~ number:-7
 same~ oils:-3
 same~ pot:2
 same~ recipe:6
 same~ thing:-3
 same~ weight:9
 same~b:6
 sample:-7
 sandpaper:-3
 sane:-5
 sane~ ?:-3
 sang:-8
 sanity:-5
 sanity~ check:-5
 saponification:3
 sat:4
 saturday:-2
 saturday~ market:-2
 sat~ in:-1
 sat~ on:-8
 sat~t:-4
 saucer:-5
 saves:-6
 savon:-3
 saw:8
 saw~ it:3
 saw~ the:7
 say:5
 says:4
 says~ ::-6
 says~ and:1
 says~ but:-5
 says~ he:5
 says~ i:1
 says~ it:-4
 says~ its:-7
 says~ min:7
 says~ my:-8
 says~ that:3
 says~ the:-2
 says~%:-1
 says~0:6
 says~=:-3
 says~>:3
 says~A:1
 says~F:-1
 says~b:-1
 says~e:6
 says~t:-1
 says~v:2
 says~w:2
 say~ a:7
 say~ how:1
 say~ it:-9
 say~ its:-4
 say~ so:1
 say~ that:2
 say~ thats:-5
 say~ the:-8
 say~%:3
 say~0:9
 say~F:-7
 say~b:8
 say~w:7
 scal:-2
 scale:3
 scale~ ::-1
 scale~ and:-7
 scale~ at:6
 scale~ before:-8
 scale~ but:-7
 scale~ died:5
 scale~ does:-8
 scale~ for:-9
 scale~ i:-7
 scale~ it:-6
 scale~ jumps:3
 scale~ only:5
 scale~ says:1
 scale~ shows:1
 scale~ so:-10
 scale~ switch:3
 scale~ was:4
 scale~ with:-2
 scale~w:-5
 scal~ to:3
 scar:-4
 school:-3
 school~ fair:4
 science:-7
 scoop:7
 scorch:-3
 scrap:7
 scrap~ the:7
 scratch:-11
 scribbl:-3
 scrubb:-6
 scrubb~ the:-6
 scum:2
 seal:-3
 season:4
 second~ batch:-7
 second~ day:-6
 second~ go:2
 second~ half:5
 second~ one:-4
 second~ opinion:-4
 second~ pair:-1
 second~ time:3
 second~ try:-1
 secret:-6
 see:1
 seed:-5
 seem:7
 seems:-6
 seen:-1
 see~ a:-7
 see~ here:1
 see~ how:-4
 see~ if:-5
 see~ it:-10
 see~ me:-4
 see~ that:4
 see~ through:-8
 see~ what:2
 seiz:-1
 self~ ::1
 sell:-8
 seller:5
 sells:3
 sells~ at:-3
 sell~ at:-1
 sense:1
 sensible:-4
 sensible~ ?:-3
 sensitive:3
 sent:3
 sent~ me:2
 separat:-6
 separate:-10
 september:-6
 serv:4
 serv~ ::-4
 set:4
 sets:-10
 sets~ in:-4
 sett:-2
 settl:-1
 settl~ on:-5
 set~ aside:-6
 set~ in:-7
 set~ it:7
 set~ on:-6
 set~ the:-4
 set~ to:3
 set~ up:-6
 sf:4
 shade:-6
 shall:2
 shampoo:2
 shampoo~ bar:-4
 shar:-1
 share:5
 sharp:-3
 shav:-5
 shave:-7
 shave~ puck:-3
 shave~ soap:-3
 shav~ puck:-4
 she:-5
 shed:-5
 sheep:-4
 sheet:2
 sheet~ ::-2
 sheet~ and:5
 sheet~ for:2
 sheet~ says:4
 sheet~ sorry:-4
 sheet~0:-8
 shelf:-3
 shelf~ for:-2
 shes:-8
 shes~0:-4
 she~ also:3
 she~ alway:-2
 she~ asked:-7
 she~ did:-5
 she~ does:-2
 she~ gets:-8
 she~ got:-5
 she~ had:-7
 she~ has:-6
 she~ is:-5
 she~ made:-5
 she~ never:2
 she~ right:-2
 she~ said:-2
 she~ says:-5
 she~ stirr:-2
 she~ swear:-2
 she~ told:-2
 she~ used:-7
 she~ wants:5
 she~ weigh:-1
 she~ would:-3
 she~ wrote:-1
 shift:-2
 shine:-7
 shiny:-9
 shoe:-3
 shoebox:-3
 shoebox~ lined:-2
 shoe~ box:-4
 shook:4
 shop:2
 shopp:-9
 shopp~ list:-5
 shops:-2
 shop~ and:4
 shop~ had:3
 shop~ soap:3
 short:3
 shortage:-4
 short~ ::3
 short~ ?:-7
 short~ burst:-1
 short~ of:-6
 short~ on:-1
 short~ so:5
 short~ the:3
 shot:1
 should:-1
 should~ be:-2
 should~ come:-1
 should~ have:1
 should~ i:-7
 should~ read:9
 should~ say:4
 shout:-7
 show:-4
 shower:-7
 shows:-1
 shows~ whole:-8
 shows~0:-4
 shows~w:2
 show~b:1
 shrink:-7
 shut:1
 shut~ in:3
 side:-2
 sides:-3
 sideway:-7
 side~ of:4
 sieve:-2
 sign:-5
 silicone:-7
 silicone~ loaf:-3
 silicone~ mould:-4
 sill:-6
 silly:9
 simp:-3
 simple:-4
 since:4
 since~ about:-4
 since~ i:-3
 since~ it:5
 since~ last:1
 since~ my:7
 since~ spr:1
 since~ the:3
 since~ then:2
 since~0:-9
 since~F:1
 since~t:3
 single:-2
 sink:-2
 sink~ and:-3
 sink~ of:-5
 sink~ with:-5
 sis:-4
 sister':2
 sister:-9
 sister~ in:-4
 sit:-1
 sits~ in:-6
 sitt:3
 sitt~ in:-3
 sitt~ on:4
 size:1
 size~ of:-3
 skin:-5
 skin~ and:-5
 skin~ is:5
 skin~ off:-5
 skin~ so:4
 skip:4
 skipp:12
 skipp~ it:5
 skipp~ the:8
 skip~ the:1
 skull:-5
 slab:-8
 sleep:-7
 sleev:-4
 slept:-4
 slic:-8
 slice:-6
 slid:-3
 slight:2
 slimy:-10
 slip:4
 slipp:11
 slipp~ and:8
 sliver:-6
 slosh:-2
 slow:-4
 slow~ cooker:-3
 slow~ into:-6
 slush:-6
 small:-3
 smaller:-1
 small~ print:4
 smell:-5
 smell~ a:-6
 smell~ faint:-5
 smell~ is:-7
 smell~ it:3
 smell~ like:-2
 smell~ of:-5
 smell~ the:-5
 smelt:3
 smelt~ like:-4
 smoke:-6
 smooth:-11
 sneeze:-1
 sniff:1
 snow:1
 snow~ white:-4
 so:2
 soak:8
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
 soap~ diary:-5
 soap~ for:-5
 soap~ from:-5
 soap~ i:-4
 soap~ in:-5
 soap~ is:-8
 soap~ it:-4
 soap~ like:-3
 soap~ my:-5
 soap~ of:-5
 soap~ on:-5
 soap~ paste:-1
 soap~ since:-4
 soap~ so:-2
 soap~ the:-3
 soap~ w:-6
 soap~ was:-5
 soap~ with:-3
 soap~0:-6
 soft:-7
 soften:-7
 softer:2
 soft~ after:-2
 soft~ and:-5
 soft~ as:-6
 soft~ at:-2
 soft~ for:-4
 soft~ in:-3
 soft~ so:3
 soft~ soap:-5
 sold:-7
 sold~ at:-2
 sold~ out:-4
 sold~0:-7
 soleseife:-6
 solid:-4
 solution~ and:-2
 solution~ plus:-6
 some:3
 somebody:-3
 somebody~ asked:-6
 somebody~ check:-3
 somebody~ else:-6
 somebody~ here:1
 somebody~ look:-6
 somebody~ run:-4
 somebody~ tell:2
 somebody~ to:-4
 somebody~ with:-3
 someone:-2
 someone~ at:-7
 someone~ check:1
 someone~ in:-8
 someone~ look:-6
 someone~ tell:-6
 someone~ to:-6
 someone~ with:-5
 someth:1
 someth~ else:-2
 someth~ like:-7
 somewhere:-1
 some~ of:3
 some~ people:-9
 some~0:-5
 some~F:-1
 some~N:6
 some~X:-2
 soon:-5
 sooner:-5
 sooner~ than:-5
 sorry~ about:-6
 sorry~ for:-4
 sorry~ if:1
 sorry~ it:-6
 sorry~ my:-4
 sorry~ the:3
 sort:4
 sort~ of:1
 sound:-7
 sound~ ?:-4
 sound~ like:-8
 sound~ right:3
 soup:-4
 source:-1
 source~ ::1
 south:-3
 so~ ::-7
 so~ ?:2
 so~ a:2
 so~ all:3
 so~ another:8
 so~ bear:-5
 so~ before:-3
 so~ call:6
 so~ did:-3
 so~ do:-2
 so~ does:-6
 so~ dont:1
 so~ excuse:-6
 so~ far:-2
 so~ fast:-2
 so~ for:-7
 so~ forgive:-4
 so~ good:4
 so~ half:3
 so~ here:-6
 so~ hot:-4
 so~ i'd:-10
 so~ i:-5
 so~ if:-5
 so~ in:5
 so~ is:3
 so~ it:2
 so~ its:5
 so~ ive:1
 so~ just:5
 so~ keep:-7
 so~ last:-8
 so~ little:-8
 so~ maybe:3
 so~ much:-6
 so~ my:1
 so~ no:3
 so~ noth:-1
 so~ now:-5
 so~ of:8
 so~ on:-3
 so~ please:2
 so~ sorry:-8
 so~ that:-8
 so~ thats:5
 so~ ther:4
 so~ there:-3
 so~ this:-4
 so~ those:2
 so~ um:3
 so~ we:-2
 so~ what:5
 so~ whats:4
 so~ who:4
 so~ you:-1
 so~%:-7
 so~0:7
 so~=:1
 so~>:-1
 so~F:-1
 so~N:11
 so~b:1
 so~e:-10
 so~l:-6
 so~t:-3
 so~w:-3
 spa:2
 space:-7
 spain:-6
 spare:-2
 spatula:-7
 speed:-6
 spell:-9
 spend:-6
 spent:1
 spill:-5
 spill~ on:1
 spilt:1
 splash:4
 splash~ of:2
 split~ it:-6
 split~ the:2
 spoon:-1
 spoonful:5
 spoonful~ in:2
 spoon~ and:2
 spoon~ at:-7
 spoon~ by:-6
 spoon~ for:2
 spoon~ in:-4
 spoon~ into:-3
 spoon~ it:-5
 spoon~ of:2
 spoon~ slipp:7
 spot:-9
 spots:-1
 spots~ after:-2
 spot~ on:-6
 spray:-8
 spreadsheet:-6
 sprinkl:-7
 sprinkle:-3
 sprinkle~ the:-3
 sprinkl~ over:-3
 sprinkl~=:-1
 squeez:6
 sry:2
 stable:-7
 stack:-2
 stag:-7
 stage:-2
 stage~ at:-3
 stain:-8
 stainles:-5
 stamp:-12
 stamp~ and:-4
 stand:-5
 standard:-5
 stand~ ::-3
 stand~ at:-6
 stand~ by:-5
 stand~ for:-3
 stand~ in:-2
 stand~ it:3
 stand~ on:4
 stand~ the:-3
 stand~ there:-2
 stand~ up:1
 stank:-4
 start:-1
 start~ ::-4
 start~ and:-9
 start~ at:-2
 start~ the:-4
 start~ to:-7
 start~ with:4
 start~t:-6
 static:1
 stay:3
 stays:-5
 stays~ as:2
 stays~ in:-7
 stay~ a:1
 stay~ at:2
 stay~ clear:3
 stay~ cloudy:-1
 stay~ in:9
 stay~ on:3
 stay~ soft:-7
 steam:-8
 steel:-1
 steel~ jug:-7
 steel~ pot:-4
 step:-5
 steps:2
 steps~ of:4
 stick:-2
 sticker:-5
 sticky:2
 stick~ blend:-2
 stick~ blender:-8
 stick~ to:1
 stiff:4
 still:2
 still~ a:-8
 still~ about:1
 still~ cloudy:1
 still~ fine:-2
 still~ good:4
 still~ got:-5
 still~ had:4
 still~ have:-3
 still~ in:4
 still~ like:-9
 still~ ok:-7
 still~ on:3
 still~ sitt:7
 still~ smell:-4
 still~ soap:-7
 still~ soft:-1
 still~ stand:3
 sting:-7
 stink:-7
 stir:-4
 stirr~ and:-5
 stirr~ every:-6
 stirr~ for:-3
 stirr~ in:5
 stirr~ into:5
 stirr~ it:-6
 stirr~ one:-5
 stirr~ the:-2
 stirr~ with:-5
 stirr~t:-2
 stirs:-5
 stir~ by:-4
 stir~ every:-1
 stir~ for:-2
 stir~ in:-1
 stir~ it:2
 stir~ the:-9
 stir~ till:-2
 stir~ until:-3
 stir~ with:-3
 stir~0:-6
 stir~=:-3
 stir~t:-2
 stock:1
 stone:-1
 stood~ at:3
 stood~ in:3
 stop:-9
 stopp:8
 stopp~ at:8
 stops:-4
 stor:-4
 store:1
 store~ the:-7
 story:1
 stove:4
 straight:-3
 straight~ away:-5
 straight~ from:-5
 straight~ into:-7
 straight~ out:4
 straight~ to:1
 strain:6
 strainer:-7
 strain~ it:-5
 strain~ the:-1
 strain~ through:-9
 streak:-6
 stream:-3
 street:-6
 strength:2
 stretch:3
 strike:3
 strip:-7
 stripp:-5
 stripp~ the:-6
 strip~ says:-8
 strip~0:-2
 strong:3
 stronger:2
 strong~ ?:-7
 strong~ for:-4
 struck:5
 struck~ out:3
 stuck:3
 stuck~ in:2
 stuck~ to:2
 student:-2
 stuff:-3
 stupid:-6
 style:-4
 subject:-3
 subject~ ::-3
 such:1
 suds:-6
 suit:-6
 suits:-4
 sum:-1
 summer:-1
 summer~ and:8
 sums:-1
 sun:3
 sunday:1
 sunday~ ::-5
 sunday~ in:-7
 sunday~ roast:1
 superfat:6
 superfat~ ::5
 superfat~ ?:-4
 superfat~ and:-6
 superfat~ because:-2
 superfat~ did:-9
 superfat~ do:-4
 superfat~ does:-7
 superfat~ for:3
 superfat~ i:-1
 superfat~ in:4
 superfat~ is:-12
 superfat~ of:-8
 superfat~ on:-10
 superfat~ should:-10
 superfat~%:3
 superfat~0:2
 supermarket:-5
 supplier:2
 sure:3
 sure~ about:-11
 sure~ of:2
 surface:-7
 survive:-4
 suspect:5
 swap:-6
 swapp:7
 swapp~ for:3
 swapp~ the:1
 swapp~F:5
 swaps:-10
 swap~ the:-1
 swear:4
 swear~ by:-3
 swear~ it:-7
 swear~ to:7
 sweat:-7
 sweat~ in:-2
 sweet:-4
 swirl:-8
 swirl~ with:-5
 switch:-1
 switch~ itself:-1
 switch~ off:-5
 switch~ to:-5
 swore:-4
 t:-7
 ta:-5
 tabl:-6
 table:3
 tablespoon:5
 table~ is:-6
 table~0:-8
 tabs:-4
 taffy:-10
 tag:-3
 tak:5
 take:3
 taken:3
 takes:-13
 takes~ about:-1
 takes~ its:-6
 takes~ me:-3
 takes~ the:-3
 takes~=:-1
 takes~t:-4
 take~ a:-5
 take~ it:-7
 take~ my:2
 take~ off:-3
 take~ that:5
 take~ the:-7
 take~ your:2
 take~0:-7
 take~=:-4
 take~w:-9
 talk:-7
 tall:-7
 tan:-6
 tap:1
 tape:-7
 tared:7
 target:1
 tast:-9
 taste:3
 taught:-7
 taught~ me:-3
 teach:-2
 teacher:-2
 team:-3
 teaspoon:1
 technical:10
 technical~ grade:7
 telephone:-4
 tell:-4
 tells:1
 tells~ me:3
 tell~ my:-7
 tell~ them:-6
 tell~ us:-8
 tell~ whether:2
 tell~ you:-1
 temp:-5
 temperature:-8
 temps:-6
 temp~d:-1
 tenth:3
 tenth~ of:4
 term:-4
 test:-3
 tester:1
 test~ ::-5
 test~ at:-10
 test~ batch:-6
 test~ it:4
 test~ ok:-3
 test~ with:-5
 text:-3
 than:-1
 thank:-6
 thank~ for:-6
 thank~ to:-1
 thank~ you:-5
 than~ a:-1
 than~ i:2
 than~ it:5
 than~ my:2
 than~ that:-5
 than~ the:-3
 than~ usual:3
 than~0:1
 than~d:-5
 that:4
 thats:-1
 thats~ a:-7
 thats~ all:-6
 thats~ how:3
 thats~ it:-6
 thats~ my:-5
 thats~ normal:-2
 thats~ the:-8
 thats~ what:6
 thats~ why:-7
 thats~>:-2
 thats~l:-11
 that~ ?:4
 that~ a:-7
 that~ about:-7
 that~ and:4
 that~ be:4
 that~ bit:3
 that~ come:-2
 that~ day:8
 that~ enough:-3
 that~ from:-7
 that~ goes:-1
 that~ had:1
 that~ has:-5
 that~ i'd:-4
 that~ i:2
 that~ im:1
 that~ in:-1
 that~ into:-2
 that~ is:2
 that~ isnt:2
 that~ it:-9
 that~ its:2
 that~ leave:-5
 that~ look:-2
 that~ makes:-7
 that~ matter:4
 that~ mine:4
 that~ much:-1
 that~ my:3
 that~ never:7
 that~ nobody:2
 that~ noth:-5
 that~ off:8
 that~ okay:-2
 that~ on:2
 that~ one:-5
 that~ out:4
 that~ real:-7
 that~ right:-2
 that~ she:1
 that~ so:-7
 that~ solution:-9
 that~ sound:-1
 that~ still:-2
 that~ the:4
 that~ ther:-6
 that~ too:-7
 that~ was:-8
 that~ we:-7
 that~ went:-2
 that~ what:-8
 that~ with:1
 that~ you:-4
 that~0:10
 that~=:-7
 that~A:-4
 that~F:1
 that~L:4
 that~b:5
 the:1
 their:-1
 their~ own:1
 them:-2
 them~ ::-3
 them~ and:-2
 them~ is:-2
 them~ out:-5
 them~ to:-7
 them~ together:4
 them~0:-2
 them~t:-4
 then:-2
 then~ a:-1
 then~ add:-4
 then~ another:4
 then~ at:-6
 then~ i:2
 then~ in:-5
 then~ into:-5
 then~ it:5
 then~ its:-6
 then~ like:-3
 then~ my:2
 then~ off:-1
 then~ pour:-5
 then~ stir:-4
 then~ stirr:-2
 then~ the:-9
 then~ weigh:-7
 then~0:4
 then~<:2
 then~=:-3
 then~>:-1
 then~A:-5
 then~F:-4
 then~S:-3
 then~W:1
 then~e:-5
 then~t:-5
 then~v:7
 then~w:-2
 ther:1
 there:3
 thereabout:3
 therefore:2
 there~ ?:-6
 there~ are:-1
 there~ because:1
 there~ enough:-4
 there~ is:1
 there~ may:5
 there~ so:-6
 there~ too:4
 there~ was:-1
 there~ were:3
 there~ with:-2
 thermometer:-10
 ther~ also:2
 ther~ no:-8
 ther~0:-1
 ther~F:-3
 these:-8
 these~ are:-5
 these~ days:5
 these~ fats:-2
 these~ oils:-3
 they:-4
 theyd:2
 theyll:-4
 theyre:-9
 they~ are:5
 they~ did:-3
 they~ do:-7
 they~ had:1
 they~ say:2
 they~ went:1
 they~ were:-6
 the~ above:5
 the~ air:1
 the~ allotment:-5
 the~ amount:-2
 the~ answer:-2
 the~ app:1
 the~ attic:-3
 the~ autumn:-8
 the~ baby:1
 the~ back:1
 the~ bag:3
 the~ balance:-5
 the~ balcony:2
 the~ bar:2
 the~ bars:-10
 the~ batch:-3
 the~ bath:-5
 the~ bathroom:1
 the~ batter:-8
 the~ battery:-1
 the~ beaker:5
 the~ beginn:-1
 the~ bell:-8
 the~ bench:-5
 the~ best:-4
 the~ big:-1
 the~ bin:-2
 the~ birds:-3
 the~ bit:-3
 the~ block:4
 the~ blog:-4
 the~ blue:1
 the~ board:3
 the~ book:-3
 the~ bottl:-6
 the~ bottle:6
 the~ bottom:-1
 the~ bowl:5
 the~ box:1
 the~ boys:4
 the~ brim:-2
 the~ bubbl:-6
 the~ bucket:1
 the~ bus:-2
 the~ camp:1
 the~ can:1
 the~ candle:-6
 the~ canister:6
 the~ car:-7
 the~ card:-6
 the~ caretaker:-7
 the~ cat:1
 the~ ceil:-6
 the~ cellar:-8
 the~ certifi:-8
 the~ certificate:3
 the~ cheap:-8
 the~ chemist:-2
 the~ children:1
 the~ choir:-5
 the~ church:-4
 the~ class:-5
 the~ clean:-1
 the~ clock:-4
 the~ club:-1
 the~ clubs:-2
 the~ co:-1
 the~ cold:1
 the~ column:-3
 the~ comma:4
 the~ comment:-6
 the~ cook:1
 the~ cooker:2
 the~ cool:-6
 the~ corner:-4
 the~ cost:-6
 the~ counter:4
 the~ county:-5
 the~ course:1
 the~ crockpot:-1
 the~ cubes:-5
 the~ cup:-1
 the~ cupboard:-2
 the~ cure:-11
 the~ date:-8
 the~ day:-3
 the~ decimal:-3
 the~ difference:-1
 the~ discount:-2
 the~ dish:4
 the~ dog:1
 the~ door:-1
 the~ dot:-6
 the~ doubl:-6
 the~ double:-2
 the~ drain:1
 the~ drum:8
 the~ dry:2
 the~ edge:-4
 the~ edges:-1
 the~ empty:-8
 the~ end:2
 the~ ends:-7
 the~ even:-10
 the~ face:-6
 the~ fami:1
 the~ farm:-1
 the~ fat:-4
 the~ fats:2
 the~ feed:3
 the~ fence:-5
 the~ figur:-3
 the~ figure:4
 the~ finish:-2
 the~ first:-2
 the~ flak:5
 the~ flat:-2
 the~ floor:6
 the~ foam:-10
 the~ freezer:-10
 the~ fridge:-1
 the~ fryer:2
 the~ full:7
 the~ fumes:-7
 the~ funnel:3
 the~ garage:-4
 the~ garden:-4
 the~ gas:-3
 the~ gel:-1
 the~ glass:1
 the~ goat:3
 the~ goats:3
 the~ goggl:-3
 the~ good:-3
 the~ gram:-6
 the~ greasy:-7
 the~ green:-1
 the~ half:4
 the~ hall:-6
 the~ hand:-2
 the~ handout:3
 the~ hands:-1
 the~ hard:-6
 the~ heat:-7
 the~ hens:-8
 the~ hob:-1
 the~ holiday:-2
 the~ hood:-6
 the~ hot:1
 the~ house:8
 the~ internet:-2
 the~ jars:-7
 the~ jug:-3
 the~ kettle:7
 the~ kids:-4
 the~ kilo:6
 the~ kitchen:-4
 the~ label:5
 the~ lads:-4
 the~ lady:-3
 the~ last:3
 the~ lather:-2
 the~ laundry:3
 the~ leaflet:2
 the~ letter:3
 the~ library:-6
 the~ lid:2
 the~ light:-5
 the~ line:6
 the~ liquid:6
 the~ list:10
 the~ litre:6
 the~ loaf:-3
 the~ log:-6
 the~ long:1
 the~ lot:1
 the~ lowest:-5
 the~ lump:-1
 the~ machine:-4
 the~ man:-5
 the~ margin:-2
 the~ mark:4
 the~ market:-6
 the~ mass:-4
 the~ measur:3
 the~ mechanic:3
 the~ melt:3
 the~ mess:-4
 the~ middle:-5
 the~ mill:-4
 the~ miss:4
 the~ mix:6
 the~ month:-4
 the~ moon:-4
 the~ morn:-7
 the~ most:-9
 the~ mould:-3
 the~ name:-8
 the~ neighbour:-3
 the~ next:-4
 the~ night:-6
 the~ normal:-4
 the~ oil:2
 the~ oils:1
 the~ old:-1
 the~ one:1
 the~ ones:-4
 the~ only:-8
 the~ open:3
 the~ order:-7
 the~ original:3
 the~ other:2
 the~ oven:-9
 the~ packet:7
 the~ page:-5
 the~ pan:4
 the~ pantry:-8
 the~ paper:8
 the~ parish:-9
 the~ part:-5
 the~ past:1
 the~ paste:-2
 the~ patience:-3
 the~ phone:3
 the~ photo:6
 the~ picture:-4
 the~ place:7
 the~ plain:-6
 the~ plan:1
 the~ plastic:3
 the~ plate:5
 the~ point:-2
 the~ porch:-4
 the~ postman:1
 the~ pot:-1
 the~ potato:-7
 the~ pour:-6
 the~ powder:4
 the~ power:-4
 the~ present:1
 the~ price:-7
 the~ printout:-5
 the~ question:-9
 the~ rack:-7
 the~ radiator:-4
 the~ radio:-7
 the~ rain:-3
 the~ ready:5
 the~ real:-7
 the~ reason:-7
 the~ record:1
 the~ remain:-2
 the~ render:-6
 the~ right:-8
 the~ rim:-1
 the~ roof:3
 the~ room:2
 the~ row:-6
 the~ rugby:-3
 the~ sack:-2
 the~ safe:4
 the~ salad:1
 the~ same:1
 the~ saturday:-2
 the~ scale:-3
 the~ school:1
 the~ scum:2
 the~ second:3
 the~ sf:-5
 the~ shed:-2
 the~ sheet:9
 the~ shelf:-3
 the~ shop:4
 the~ shops:-5
 the~ shower:-7
 the~ side:6
 the~ sides:-3
 the~ sink:1
 the~ size:1
 the~ skin:-3
 the~ slip:-2
 the~ slow:-4
 the~ small:2
 the~ soap':3
 the~ soap:-2
 the~ spatula:-1
 the~ spr:-7
 the~ spreadsheet:-5
 the~ stall:3
 the~ start:1
 the~ steel:1
 the~ step:-1
 the~ stick:-8
 the~ stirr:-7
 the~ stove:4
 the~ suds:-3
 the~ sum:-2
 the~ sums:1
 the~ sun:2
 the~ sunday:5
 the~ superfat:-5
 the~ supermarket:-4
 the~ surface:-7
 the~ swirl:-5
 the~ table:2
 the~ tap:-4
 the~ temperature:-5
 the~ test:2
 the~ thermometer:-5
 the~ thing:-2
 the~ third:-3
 the~ thread:-7
 the~ thursday:-6
 the~ tiles:8
 the~ time:1
 the~ tin:6
 the~ top:-3
 the~ towel:-3
 the~ train:-5
 the~ tray:-2
 the~ trimming:1
 the~ tub:2
 the~ unrefin:-6
 the~ usual:5
 the~ varnish:-6
 the~ very:-1
 the~ village:-2
 the~ wall:-7
 the~ war:-8
 the~ wardrobe:-4
 the~ warm:1
 the~ wash:-4
 the~ way:4
 the~ weather:-7
 the~ weekend:-8
 the~ weigh:8
 the~ weight:4
 the~ whisk:1
 the~ white:2
 the~ whole:-2
 the~ window:-8
 the~ windowsill:3
 the~ winter:-4
 the~ wire:-3
 the~ wood:-4
 the~ wooden:-5
 the~ word:-5
 the~ workshop:-3
 the~ worktop:-2
 the~ wrong:6
 the~ yard:-4
 the~ year:-8
 the~%:1
 the~<:-6
 the~=:-2
 the~>:-1
 the~A:2
 the~B:-9
 the~C:-12
 the~F:5
 the~I:4
 the~K:3
 the~L:-2
 the~M:3
 the~N:-1
 the~S:-1
 the~T:-7
 the~W:5
 the~X:-3
 the~b:5
 the~e:-2
 the~l:-1
 the~t:-3
 the~v:-7
 the~w:-7
 thick:-3
 thicken:-3
 thicker:-9
 thick~ as:1
 thick~ like:-6
 thick~ trace:-2
 thin:-6
 thing:-1
 thing~ ?:-7
 thing~ and:-2
 thing~ i:-8
 thing~ in:-6
 think~ ?:-7
 think~ about:1
 think~ i:8
 think~ it:1
 think~ my:2
 think~ of:-9
 think~ that:-8
 think~ the:5
 thinn:7
 thin~ stream:-3
 thin~ trace:-7
 third:2
 third~ attempt:-5
 third~ go:3
 third~ of:2
 third~ one:-2
 third~ time:-6
 this:3
 this~ ::3
 this~ ?:-6
 this~ a:-5
 this~ and:-8
 this~ at:1
 this~ batch:-1
 this~ be:-3
 this~ because:-6
 this~ before:-3
 this~ but:-5
 this~ for:6
 this~ from:1
 this~ house:3
 this~ i:-5
 this~ in:-1
 this~ is:-4
 this~ loaf:3
 this~ look:-3
 this~ morn:2
 this~ ok:-3
 this~ on:-7
 this~ one:6
 this~ ones:3
 this~ or:-6
 this~ pot:3
 this~ recipe:-9
 this~ right:-3
 this~ time:3
 this~ to:-5
 this~ was:-5
 this~ way:-4
 this~ week:-2
 this~ weekend:2
 this~ with:-7
 this~ year:5
 this~0:-7
 tho:-9
 those:-2
 those~ are:1
 those~ days:-5
 those~ fats:-1
 those~ oils:-2
 those~ who:4
 those~0:3
 though:1
 thought:1
 thought~ ?:-4
 thought~ i'd:-5
 thought~ i:-2
 thought~ it:-4
 thought~ on:-5
 though~ ?:-4
 though~ i:3
 thread:-7
 threw:5
 threw~ in:5
 threw~ the:-3
 through:2
 throughout:-1
 through~ a:-2
 through~ an:-12
 through~ it:-4
 through~ the:3
 throw:-6
 thrown:6
 throw~ it:-1
 thru:1
 thumb:-3
 thursday:-6
 thx:-5
 tick:-1
 til:-3
 tiles:6
 till~ it:3
 till~ its:-2
 till~ the:-1
 till~0:-5
 time:-3
 timer:-8
 times:2
 times~ i:3
 times~ in:-7
 times~ the:1
 times~0:10
 time~ ::1
 time~ and:-5
 time~ because:2
 time~ for:1
 time~ i:-2
 time~ in:3
 time~ is:-3
 time~ it:-9
 time~ ive:-1
 time~ lurker:-4
 time~ post:-4
 time~ so:4
 time~ the:1
 time~ to:-2
 time~ with:-5
 time~t:-5
 tins:-7
 tins~ of:-2
 tiny:-2
 tin~ is:-9
 tin~ of:-3
 tin~ was:-1
 tin~ with:-10
 tip:-2
 tipp:8
 tipp~ in:7
 tipp~ the:1
 tips:-5
 tip~ ::-5
 title:-3
 title~ ::-4
 to:-1
 toast:4
 today:-4
 today~ ::3
 today~ ?:-4
 today~ and:-4
 toddler:4
 together:-3
 together~ ?:-2
 together~ in:-4
 together~ so:2
 together~ with:-6
 told:-5
 told~ her:-4
 told~ me:-4
 told~ us:-5
 told~F:-2
 tom:-3
 tomato:6
 tomorrow:-6
 tongue:-2
 tongue~ test:1
 tonight:5
 tonight~ ::-5
 tonight~ ?:-3
 too:2
 took:3
 took~ a:-5
 took~ ages:-3
 took~ forever:3
 took~ it:-3
 took~ me:-8
 took~ near:-2
 took~ off:1
 took~ the:4
 took~0:-3
 took~<:2
 took~=:-9
 took~>:-3
 took~N:5
 took~l:3
 took~t:-12
 took~w:-6
 tools:-5
 too~ ?:-5
 too~ and:3
 too~ cold:-4
 too~ dry:-6
 too~ early:-7
 too~ fast:-3
 too~ hard:-3
 too~ harsh:-3
 too~ high:-6
 too~ hot:-8
 too~ late:-2
 too~ little:1
 too~ low:4
 too~ many:5
 too~ much:-5
 too~ quick:4
 too~ sharp:-3
 too~ soft:-5
 too~ soon:-6
 too~ strong:-3
 top:2
 topp:8
 topp~ it:4
 topp~ the:4
 topp~ up:4
 top~ for:-4
 top~ is:-4
 top~ of:1
 top~ shelf:-5
 top~ which:-5
 total:3
 total~ of:-8
 touch:-3
 touch~ it:-7
 touch~ the:-7
 towel:-5
 towel~ over:-4
 towel~ round:-6
 towel~t:-1
 town:1
 to~ a:1
 to~ add:-1
 to~ ask:-6
 to~ be:3
 to~ bed:-6
 to~ buy:-7
 to~ check:-6
 to~ come:3
 to~ cool:-9
 to~ cut:-2
 to~ do:-1
 to~ everyone:3
 to~ find:-5
 to~ finish:6
 to~ get:-4
 to~ grate:-1
 to~ hand:1
 to~ have:2
 to~ help:6
 to~ her:-6
 to~ hold:2
 to~ keep:-6
 to~ know:-4
 to~ light:-3
 to~ look:-7
 to~ mash:-2
 to~ me:1
 to~ melt:-8
 to~ open:-6
 to~ pour:-2
 to~ put:4
 to~ remember:-8
 to~ rough:-2
 to~ see:1
 to~ sell:-1
 to~ set:3
 to~ slush:-8
 to~ soap:-6
 to~ someth:-5
 to~ spare:-2
 to~ spoon:-6
 to~ start:-5
 to~ take:4
 to~ tare:-8
 to~ tell:-1
 to~ test:-8
 to~ that:-4
 to~ the:-1
 to~ thicken:-1
 to~ this:-9
 to~ throw:-6
 to~ trace:-10
 to~ try:-3
 to~ unmould:-6
 to~ use:-2
 to~ wait:2
 to~ wash:3
 to~ waste:5
 to~ weigh:-7
 to~ work:1
 to~ write:1
 to~ you:-5
 to~%:4
 to~<:6
 to~=:-3
 to~>:5
 to~F:-9
 to~T:-3
 to~X:-6
 to~b:-5
 to~d:-4
 to~e:-3
 to~t:4
 to~w:-5
 trac:-9
 trace:2
 trace~ ::-1
 trace~ add:4
 trace~ after:-5
 trace~ and:-6
 trace~ at:-2
 trace~ because:7
 trace~ came:-5
 trace~ for:3
 trace~ i:-7
 trace~ in:-7
 trace~ pour:-5
 trace~ stir:-5
 trace~ then:-2
 trace~ was:-3
 trace~0:-6
 trace~t:-6
 trace~w:-4
 track:4
 tractor:-6
 trac~ after:-3
 trac~ in:-3
 trade:-9
 trail:-4
 train:-6
 translat:-4
 translate:-4
 translat~ from:-3
 translucent:-3
 tray:-5
 trays:-4
 treat:-3
 trees:1
 trial:-8
 trick:-8
 trick~ for:-4
 tried:-8
 tried~ it:1
 trim:-6
 trimm:1
 trimming:-1
 tripl:-8
 trouble:-4
 true:-1
 trust:-4
 trust~ it:-2
 trust~ the:-4
 truth:1
 try:-14
 try~ it:-6
 try~ to:-1
 tub:-1
 tube:-5
 tubs:3
 tub~ ::-7
 tub~ and:-8
 tub~ is:-3
 tub~ of:-3
 tub~ says:-6
 tue:-2
 tuesday:-2
 tuesday~ ::-4
 tue~t:-1
 turn:-2
 turns~ out:6
 turns~0:-5
 turn~ it:-2
 turn~ out:4
 turn~ the:-3
 turn~ to:2
 turn~S:-5
 tutor:-3
 twentieth:3
 twice:1
 twice~ a:-3
 twice~ and:5
 twice~ before:-9
 twice~ i:4
 twice~ with:-7
 typ:-7
 type:3
 typed:7
 typed~ the:6
 type~ ::-7
 typo:3
 u:-5
 ugly:-5
 um:2
 uncl:-5
 uncle:-3
 under:-5
 underneath:-6
 understand:-6
 under~ a:-2
 under~ it:-3
 under~ the:3
 under~0:-9
 under~d:-3
 under~t:-3
 under~w:-7
 unit:-3
 units:-6
 unit~ ::-3
 unles:2
 unmold:-7
 unmould:-6
 unmould~ after:-5
 unmould~t:-1
 unrefin:-9
 unsaponifi:10
 unscent:-6
 until~ a:-4
 until~ both:-1
 until~ i:-1
 until~ it:-1
 until~ its:-4
 until~ the:4
 until~ you:-3
 until~t:-1
 up:6
 update:3
 update~ ::1
 upon:4
 up~ ::1
 up~ ?:-6
 up~ a:-6
 up~ again:-8
 up~ and:2
 up~ at:1
 up~ by:4
 up~ for:-7
 up~ i:-8
 up~ in:-3
 up~ like:-4
 up~ my:-1
 up~ on:7
 up~ so:2
 up~ the:4
 up~ there:6
 up~ to:4
 up~ with:1
 up~0:9
 ur:-6
 us:-1
 use:-3
 used:3
 used~ a:-2
 used~ all:-10
 used~ it:-1
 used~ that:6
 used~ the:6
 used~ to:-8
 used~ up:1
 used~0:-4
 used~=:-8
 used~>:-4
 used~F:-5
 used~L:3
 used~N:-3
 used~l:-4
 used~w:-2
 uses:-3
 use~ ?:-2
 use~ a:-1
 use~ in:-4
 use~ it:-9
 use~ the:-6
 use~ them:-4
 use~ up:5
 use~=:2
 use~>:3
 use~F:-7
 use~I:-5
 use~N:-2
 use~l:-2
 using:2
 using~=:-5
 usual:3
 us~ the:-2
 v:-1
 vanish:-4
 varnish:-6
 vegan:-10
 vegetable:-5
 vegetarian:-8
 verdict:-3
 verdict~ ?:-3
 verify:-6
 verify~ the:-7
 version:-5
 version~ ::-1
 version~ with:1
 version~0:4
 very~ end:-1
 very~ first:-7
 very~ nice:-6
 vet:-7
 video:-6
 village:-3
 village~ hall:-1
 virgin:-6
 voice:3
 volcano:-9
 v~0:-1
 wait:-4
 waits:2
 wait~ for:-7
 wait~ i:-7
 wait~ till:-3
 wait~ until:-7
 wait~t:-3
 walk:4
 wall:-3
 want:3
 wants:-4
 wants~ a:-4
 wants~ it:-5
 wants~ me:-3
 wants~ some:-2
 wants~ the:-6
 wants~ to:-4
 want~ a:-4
 want~ the:6
 want~ to:-4
 want~%:-1
 want~0:6
 want~F:-8
 war:-9
 wardrobe:-6
 warm:-7
 warmth:-4
 warm~ in:-5
 warm~ it:-3
 warm~ oils:4
 warm~ the:-9
 warm~ to:-7
 warm~F:-5
 warn:-9
 was:5
 wash:-6
 wash~ house:-4
 wash~ it:3
 wash~ the:2
 wash~ up:-1
 wash~ with:-6
 wasnt:13
 wasnt~ enough:1
 wast:3
 was~ all:2
 was~ already:4
 was~ at:-4
 was~ call:2
 was~ clean:-3
 was~ clear:-5
 was~ cold:2
 was~ empty:9
 was~ fine:-1
 was~ finish:6
 was~ for:-2
 was~ full:-1
 was~ going:-5
 was~ gone:-3
 was~ half:-7
 was~ hard:-6
 was~ hot:-4
 was~ in:3
 was~ it:-5
 was~ left:-1
 was~ like:2
 was~ made:-1
 was~ meant:3
 was~ melt:4
 was~ my:-4
 was~ near:1
 was~ never:-3
 was~ no:-2
 was~ not:10
 was~ off:8
 was~ old:-4
 was~ on:2
 was~ one:5
 was~ only:1
 was~ open:5
 was~ out:4
 was~ over:5
 was~ pour:3
 was~ ready:-2
 was~ real:5
 was~ right:-5
 was~ so:4
 was~ soft:5
 was~ stand:5
 was~ stirr:-3
 was~ that:-6
 was~ the:-4
 was~ there:6
 was~ thick:-4
 was~ told:1
 was~ too:-5
 was~ under:-6
 was~ very:-7
 was~ warm:-6
 was~ weigh:6
 was~ what:-3
 was~ with:1
 was~%:-10
 was~0:-3
 was~<:4
 was~=:-9
 was~>:-9
 was~A:4
 was~F:3
 was~L:6
 was~N:3
 was~X:6
 was~b:3
 was~d:-8
 was~e:6
 was~l:-7
 was~t:-8
 was~v:2
 was~w:4
 watch:-6
 watch~ the:-5
 water:2
 water~ bath:-6
 waxy:-4
 way:1
 way~ about:1
 way~ in:7
 way~ of:-5
 way~ round:-1
 wear:-7
 wear~ goggl:-4
 weather:-7
 wed:-1
 wedd:-2
 wedd~ favour:3
 wednesday:-7
 week:-5
 weekend:-2
 week~ and:-10
 week~ so:3
 week~0:-11
 weigh:-1
 weight:1
 weight~ ::-7
 weight~ and:3
 weight~ g:-3
 weight~ in:2
 weight~ made:-6
 weight~ not:-9
 weight~ of:-2
 weight~ oz:-5
 weight~ so:-6
 weight~A:-7
 weigh~ ?:-6
 weigh~ a:-3
 weigh~ after:-4
 weigh~ again:4
 weigh~ and:1
 weigh~ anyth:-1
 weigh~ as:5
 weigh~ by:7
 weigh~ everyth:-8
 weigh~ i:-5
 weigh~ in:-2
 weigh~ it:1
 weigh~ like:1
 weigh~ my:3
 weigh~ on:1
 weigh~ one:4
 weigh~ out:-7
 weigh~ the:2
 weigh~0:1
 weigh~<:-7
 weigh~=:-7
 weigh~F:-3
 weigh~e:4
 weigh~l:-2
 weigh~w:-9
 welcome:-4
 well:-1
 well~ and:-5
 well~ as:-4
 well~ be:6
 well~ have:7
 went:3
 went~ a:5
 went~ above:-6
 went~ away:-7
 went~ back:-2
 went~ brown:-5
 went~ by:-5
 went~ clear:-7
 went~ cloudy:-8
 went~ dark:-2
 went~ down:5
 went~ for:6
 went~ from:-9
 went~ in:7
 went~ into:4
 went~ off:-1
 went~ on:5
 went~ over:3
 went~ the:-3
 went~ through:1
 went~ to:-5
 went~ with:3
 went~ without:3
 went~ wrong:-5
 went~ yellow:-6
 went~=:-9
 went~S:-4
 were:2
 were~ a:-1
 were~ at:-5
 were~ on:-5
 were~0:2
 were~=:1
 were~F:2
 were~w:-4
 wet:4
 wet~ cloth:-4
 wet~ dog:-3
 weve:-1
 weve~ got:-6
 we~ are:-2
 we~ count:-5
 we~ cut:-7
 we~ did:4
 we~ do:1
 we~ got:-5
 we~ had:1
 we~ have:-5
 we~ keep:-8
 we~ made:-7
 we~ make:3
 we~ pour:-4
 we~ put:-7
 we~ render:-3
 we~ say:3
 we~ split:-5
 we~ still:-8
 we~ took:1
 we~ use:-9
 we~ used:-4
 we~ want:4
 we~ weigh:2
 we~ were:4
 we~ write:-4
 what:4
 whatever:6
 whatever~ the:8
 whatever~ was:11
 whatsoever:2
 whats~ in:5
 whats~ left:-6
 whats~ the:-3
 what~ a:-6
 what~ came:6
 what~ did:-4
 what~ does:-7
 what~ g:-4
 what~ happen:-7
 what~ how:-7
 what~ i'd:4
 what~ i:8
 what~ im:3
 what~ is:-4
 what~ it:4
 what~ ive:-8
 what~ remain:-2
 what~ she:-4
 what~ superfat:-10
 what~ they:5
 what~ to:1
 what~ was:-3
 what~ we:-3
 what~ went:-1
 what~ would:-3
 what~ you:-2
 when:-1
 whenever:-1
 when~ both:-6
 when~ cut:-5
 when~ i:2
 when~ it:1
 when~ the:2
 when~ wash:5
 when~ you:1
 when~F:-10
 where:4
 where~ i:-5
 where~ it:7
 where~ my:3
 where~ she:-8
 where~ the:3
 where~ you:4
 whether:-2
 whether~ it:-4
 whether~ the:2
 whether~F:-8
 whether~b:-3
 which:3
 which~ bring:-1
 which~ i:5
 which~ is:-5
 which~ makes:-5
 which~ of:4
 which~ one:6
 which~ the:2
 which~ was:-5
 which~F:-8
 while:-2
 while~ i:5
 while~ it:-1
 while~ that:-2
 while~ the:-8
 whipp:2
 whisk:-6
 white:-9
 whiteboard:-7
 whiter:-5
 white~ and:3
 white~ as:-6
 white~ powder:-4
 white~ spots:-3
 white~F:-2
 who:-1
 whoever:-1
 whole~ grams:-8
 whole~ thing:3
 whole~ time:-2
 whos:-3
 whose:3
 whos~ right:-3
 who~ asked:-5
 who~ cant:2
 who~ does:1
 who~ has:-3
 who~ is:-5
 who~ knows:5
 who~ taught:-1
 why:-13
 why~ ?:-3
 why~ does:-3
 why~ i:-4
 why~ it:-4
 why~ its:-5
 why~ the:-5
 why~F:-3
 width:-5
 wife:-1
 wifes:-3
 wife~ likes:-6
 wife~ says:2
 will:-7
 will~ ask:1
 will~ be:-7
 will~ climb:-6
 will~ do:-7
 will~ it:-3
 will~ need:-1
 will~ that:-2
 will~ the:-4
 will~ this:-2
 wind:-5
 window:-11
 windowsill:2
 window~ open:-6
 winter:-5
 winter~ and:2
 winter~ bar:-2
 winter~ hands:-8
 winter~ i:-6
 wipe:-6
 wiped:-1
 wire:-5
 wise:-5
 wish:2
 within:-8
 within~t:-6
 without:6
 without~ a:-9
 without~ it:2
 without~ my:-2
 without~F:-2
 with~ a:-2
 with~ all:-5
 with~ an:-5
 with~ another:1
 with~ bak:-4
 with~ both:-5
 with~ coins:2
 with~ everyth:5
 with~ freezer:-4
 with~ glov:-2
 with~ goggl:-3
 with~ it:-1
 with~ its:-2
 with~ more:4
 with~ my:-10
 with~ noth:5
 with~ one:3
 with~ only:-7
 with~ some:1
 with~ that:1
 with~ the:2
 with~ this:2
 with~ us:-4
 with~ wet:-4
 with~ what:3
 with~%:7
 with~0:-3
 with~<:-3
 with~=:-3
 with~>:-6
 with~A:1
 with~B:-1
 with~C:2
 with~F:-7
 with~I:-4
 with~L:-7
 with~S:-9
 with~U:4
 with~W:1
 with~e:-7
 with~l:-8
 with~w:2
 woman:-10
 woman~ at:-2
 women:-5
 wonder:6
 wonky:-7
 wont:-3
 wood:-8
 wooden:-3
 wooden~ box:-2
 wooden~ mould:-7
 wooden~ one:-6
 wooden~ spoon:2
 wood~ stove:-3
 words:-6
 word~ for:-6
 work:-2
 works:-8
 worksheet:-4
 workshop:-4
 worktop:-2
 work~ ?:-2
 work~ in:2
 work~ it:3
 work~ out:-3
 work~ with:2
 worri:1
 worry:-4
 worry~ is:2
 worth:2
 worth~ of:4
 would:-1
 wouldnt:4
 wouldnt~ dissolve:9
 would~ a:-4
 would~ be:-3
 would~ do:-6
 would~ have:-4
 would~ it:-1
 would~ like:3
 would~ love:2
 would~ not:-5
 would~ take:2
 would~ that:-3
 would~ the:-8
 would~ you:4
 would~=:-1
 wrap:-7
 wrapp:-11
 wrapper:-6
 wrapp~ in:-6
 wrapp~ it:-4
 wrap~ in:-1
 wrist:-5
 writ:-6
 write:-5
 write~ down:-6
 write~ the:-6
 write~ up:-6
 written:2
 written~ ?:-2
 written~ on:-5
 wrong~ ?:-5
 wrong~ or:-5
 wrong~ with:-6
 wrote:1
 wrote~ ::-4
 wrote~ down:-1
 wrote~ in:1
 wrote~ it:3
 wrote~ on:-5
 wrote~ that:-5
 wrote~ this:-2
 wrote~F:4
 wrote~e:-2
 wt:-7
 w~ a:-9
 w~ my:-2
 w~ the:1
 w~ w:1
 w~=:-3
 w~L:1
 x:2
 xmas:3
 x~0:4
 x~F:-8
 yall:-5
 yard:-7
 year:-6
 years:-6
 years~ ago:-3
 year~ i:-7
 year~ in:-4
 year~ is:4
 year~0:-3
 yellow:-9
 yes:-3
 yesterday:-3
 yes~ its:-7
 yes~ no:-3
 yes~ or:-2
 yes~ the:-2
 yet:7
 yield:1
 yield~ ::1
 yield~0:2
 you:-3
 youd:-4
 youll:-3
 young:-5
 your:-8
 youre:-9
 yours:-1
 your~ arm:-2
 your~ own:1
 your~ skin:-4
 your~A:-5
 your~F:-3
 youve:-11
 you~ ?:-2
 you~ all:-8
 you~ and:-4
 you~ are:-5
 you~ ask:1
 you~ asked:-3
 you~ call:-7
 you~ can:-3
 you~ cant:-7
 you~ check:-5
 you~ confirm:-4
 you~ could:-11
 you~ cut:-4
 you~ do:3
 you~ dont:-8
 you~ feel:-3
 you~ for:-7
 you~ get:-4
 you~ go:-7
 you~ know:6
 you~ like:-7
 you~ look:-3
 you~ lot:-2
 you~ make:-6
 you~ need:-7
 you~ pour:-7
 you~ put:-6
 you~ read:-1
 you~ say:-2
 you~ see:1
 you~ should:4
 you~ start:3
 you~ tell:3
 you~ think:-4
 you~ to:-3
 you~ use:-3
 you~ wait:-4
 you~ want:-9
 you~ weigh:-7
 you~ will:2
 you~ wont:2
 you~ work:4
 zap:-7
 zapp:6
 zappy:-4
 zaps:1
 zap~ test:-4
 zero:3
 zero~ the:6
 zutat:-4
 ×:-1
 üf:-7
%%:-5
%0:-8
%:7
%<:-5
%=:-1
%>:-7
%A:5
%F:-3
%K:-6
%N:1
%S:-6
%W:1
%X:2
%l:-1
%t:-5
%w:2
%~ ?:-3
%~ and:-4
%~ by:2
%~ extra:7
%~ flak:3
%~ for:9
%~ half:-8
%~ in:-1
%~ is:-1
%~ less:-3
%~ liquid:6
%~ off:1
%~ on:4
%~ or:3
%~ over:5
%~ pure:-5
%~ purity:-4
%~ sf:-4
%~ so:6
%~ solution:-3
%~ superfat:2
%~ the:-1
%~ w:-3
%~ with:4
%~=:-5
%~A:3
%~F:-5
%~K:-6
%~N:-1
%~W:-3
%~X:2
0%:-5
00:-5
0:4
0<:-3
0>:-2
0C:4
0F:-1
0I:2
0K:-8
0M:4
0N:4
0S:-4
0T:1
0W:4
0X:-6
0b:-2
0d:-3
0l:-3
0r:-3
0t:-6
0v:-7
0w:-5
0~ =:-9
0~ ?:1
0~ a:-11
0~ after:2
0~ all:5
0~ and:-1
0~ are:2
0~ as:5
0~ at:-1
0~ b:-8
0~ bar:-5
0~ bars:-5
0~ batch:-3
0~ because:9
0~ before:4
0~ big:-4
0~ block:1
0~ both:-3
0~ bottl:-6
0~ bucket:-5
0~ but:-4
0~ c:-4
0~ cakes:-2
0~ can:-5
0~ caviti:-6
0~ children:-7
0~ comment:-3
0~ cut:3
0~ degre:-4
0~ drops:-7
0~ empty:2
0~ evening:-5
0~ except:6
0~ famili:-5
0~ fat:-3
0~ fats:-9
0~ for:-9
0~ from:3
0~ full:-5
0~ gives:-5
0~ goats:-9
0~ goes:-3
0~ good:-1
0~ group:-4
0~ guest:-4
0~ had:-9
0~ i:6
0~ if:-3
0~ in:-3
0~ into:4
0~ is:2
0~ it:-2
0~ ive:1
0~ jars:-1
0~ kitchen:-4
0~ lather:-4
0~ left:-5
0~ like:-4
0~ little:-8
0~ loaf:-3
0~ loav:-1
0~ lyes:-7
0~ made:-7
0~ more:-6
0~ mould:-1
0~ my:5
0~ n:-3
0~ night:-4
0~ no:5
0~ not:5
0~ now:2
0~ of:3
0~ oil:-7
0~ oils:-4
0~ on:7
0~ once:2
0~ one:-4
0~ or:5
0~ out:2
0~ p:-7
0~ packet:-1
0~ pcs:-5
0~ people:-7
0~ per:-5
0~ percent:6
0~ piec:-6
0~ please:9
0~ plus:1
0~ pots:3
0~ pour:-6
0~ pupil:1
0~ right:-3
0~ round:-1
0~ scal:-6
0~ she:-1
0~ silicone:-2
0~ since:3
0~ slic:-7
0~ small:-7
0~ so:-5
0~ spoon:2
0~ still:-8
0~ superfat:7
0~ that:-3
0~ thats:2
0~ the:4
0~ then:4
0~ there:2
0~ thing:-8
0~ this:1
0~ times:-3
0~ tins:-3
0~ to:2
0~ together:-6
0~ towel:-7
0~ until:-8
0~ w:6
0~ was:-3
0~ weigh:-4
0~ went:4
0~ were:1
0~ when:3
0~ which:-4
0~ winter:-1
0~ with:-10
0~ without:-6
0~ x:2
0~ zap:-7
0~ ×:-6
0~0:-3
0~A:-7
0~F:-5
0~I:1
0~N:-1
0~S:2
0~W:-3
0~X:5
0~b:-11
0~t:-5
0~w:-3
<%:1
<0:-3
<:3
<<:-3
<=:-5
<>:-3
<A:5
<C:2
<F:2
<I:-10
<K:10
<L:4
<N:-2
<S:-2
<W:-6
<X:2
<d:-5
<l:-7
<t:-1
<v:-2
<w:-5
<~ +:-6
<~ and:4
<~ because:2
<~ i:-5
<~ in:-3
<~ less:-4
<~ more:8
<~ of:2
<~ plain:-8
<~ short:4
<~ so:-1
<~ the:5
<~C:2
<~F:3
<~I:-4
<~L:-4
<~S:-3
<~W:-7
<~X:-5
=%:-11
=0:5
=:-4
=<:-4
==:-3
=>:-3
=A:-2
=F:-4
=I:-3
=K:-1
=N:4
=S:-1
=W:-2
=X:-1
=b:-2
=d:-1
=e:-1
=r:-4
=t:-3
=v:-6
=w:-3
=~ +:-5
=~ ::4
=~ =:-7
=~ after:-1
=~ all:-6
=~ and:-7
=~ as:4
=~ at:-3
=~ bag:-8
=~ block:-7
=~ both:-3
=~ check:-2
=~ clean:-3
=~ cold:-1
=~ did:-1
=~ dissolv:-5
=~ does:-2
=~ for:-3
=~ free:-7
=~ from:-2
=~ goes:-3
=~ good:-1
=~ he:-6
=~ i:-6
=~ im:-7
=~ in:-3
=~ into:-6
=~ it:-7
=~ its:1
=~ last:-4
=~ melt:-7
=~ mk:-5
=~ my:2
=~ no:-7
=~ not:-12
=~ of:-2
=~ ok:-2
=~ on:-2
=~ out:-8
=~ plain:-5
=~ please:-3
=~ plus:5
=~ smell:-2
=~ so:-6
=~ soap:-1
=~ superfat:-7
=~ that:-6
=~ the:1
=~ then:-4
=~ too:-3
=~ tub:-6
=~ weigh:-8
=~ what:-3
=~ with:3
=~%:-6
=~0:4
=~<:-4
=~=:-2
=~>:-1
=~A:-3
=~F:-3
=~L:-3
=~W:-3
=~X:-2
=~t:-2
>%:-3
>0:-8
>:-3
><:-3
>=:-2
>>:-6
>A:-1
>F:-2
>K:-5
>L:-1
>W:-4
>e:-11
>l:-7
>t:-2
>w:-6
>~ and:-2
>~ i:-6
>~ in:-2
>~ is:-5
>~ of:-4
>~ oils:-1
>~ so:-6
>~ the:-6
>~ tub:-4
>~ with:-4
>~A:-3
>~F:4
>~L:-5
>~W:-7
A%:5
A0:5
A<:1
A=:-3
A>:-1
AA:2
AB:4
AC:-9
AF:3
AI:-7
AK:-6
AL:2
AN:-8
AS:-3
AW:-2
AX:-1
Ab:1
Ae:2
Al:-8
Ar:-8
At:-3
Av:1
Aw:-5
A~ +:-1
A~ ::5
A~ =:1
A~ ?:-6
A~ a:-5
A~ about:-3
A~ alright:-5
A~ and:-2
A~ as:7
A~ at:-4
A~ bag:3
A~ be:-2
A~ because:-3
A~ before:-6
A~ but:-2
A~ by:-2
A~ came:-3
A~ can:-2
A~ check:-7
A~ comes:4
A~ cool:3
A~ correct:-8
A~ dissolv:-2
A~ do:-1
A~ does:-6
A~ down:3
A~ enough:-4
A~ figure:3
A~ fine:-4
A~ fit:-6
A~ fits:-3
A~ for:1
A~ from:6
A~ g:-8
A~ gets:-5
A~ goes:-8
A~ good:-7
A~ got:7
A~ had:3
A~ half:-5
A~ has:5
A~ heavy:1
A~ here:7
A~ i:4
A~ if:5
A~ in:-1
A~ into:-3
A~ is:4
A~ it:5
A~ its:5
A~ ive:2
A~ jug:-4
A~ left:-3
A~ like:-5
A~ look:1
A~ looks:-2
A~ no:-6
A~ not:4
A~ number:-3
A~ of:1
A~ ok:-6
A~ okay:-4
A~ on:-6
A~ one:-7
A~ only:2
A~ or:-4
A~ over:-9
A~ paste:3
A~ per:2
A~ please:-7
A~ pls:-4
A~ pot:4
A~ ready:-8
A~ real:-7
A~ right:-5
A~ row:-3
A~ says:2
A~ sensible:-4
A~ she:-6
A~ slow:-6
A~ so:3
A~ soap:-3
A~ sprinkl:-2
A~ still:-10
A~ stuck:-1
A~ that:-8
A~ the:-4
A~ then:-2
A~ there:2
A~ to:-1
A~ too:-10
A~ tub:4
A~ up:7
A~ was:-1
A~ weigh:7
A~ went:1
A~ where:4
A~ with:-1
A~ wrong:-5
A~ you:4
A~%:-6
A~<:1
A~=:-2
A~>:-6
A~A:-4
A~F:-7
A~L:3
A~W:2
A~d:-4
A~e:-3
A~r:-6
A~t:5
A~v:-3
B0:-5
B:3
BF:3
B~ and:-10
B~ in:-1
B~ so:-6
C%:-7
C:6
CA:3
Cv:4
C~ at:4
C~ in:5
C~ is:-4
C~%:-7
C~<:-5
F%:1
F:1
F<:4
F=:-3
FA:-2
FB:5
FI:-4
FK:-4
FN:5
FS:-10
FT:-5
FU:3
FX:2
Fd:-3
Fe:1
Fl:-6
Fr:6
Ft:-3
Fv:-8
Fw:1
F~ +:2
F~ ::3
F~ =:1
F~ ?:-6
F~ a:1
F~ about:-2
F~ add:3
F~ after:4
F~ again:1
F~ alone:-4
F~ altogether:-1
F~ and:1
F~ are:1
F~ as:5
F~ at:2
F~ back:5
F~ bar:-4
F~ bars:-12
F~ batch:-7
F~ because:6
F~ beef:-5
F~ before:-3
F~ block:-2
F~ bottle:-6
F~ but:-4
F~ by:-2
F~ came:1
F~ can:-5
F~ clean:-3
F~ cold:-6
F~ comes:-10
F~ cook:-5
F~ could:3
F~ count:-7
F~ does:-6
F~ down:6
F~ extra:6
F~ figure:3
F~ fills:-8
F~ first:-7
F~ for:-4
F~ free:-5
F~ from:-6
F~ g:-6
F~ gent:-7
F~ gives:-8
F~ go:-4
F~ goes:-11
F~ gone:-3
F~ got:8
F~ grams:-6
F~ had:-2
F~ half:-2
F~ has:-7
F~ here:2
F~ i'd:4
F~ i:2
F~ if:-7
F~ im:8
F~ in:1
F~ instead:4
F~ into:-4
F~ it:5
F~ its:1
F~ ive:8
F~ jar:-4
F~ jug:3
F~ keeps:-7
F~ l:-3
F~ last:-9
F~ left:-1
F~ like:1
F~ line:7
F~ look:3
F~ looks:-4
F~ makes:-5
F~ may:-1
F~ melt:-10
F~ melts:-5
F~ my:3
F~ myself:-5
F~ n:3
F~ never:10
F~ next:-5
F~ no:-7
F~ not:3
F~ noth:-6
F~ now:8
F~ of:1
F~ on:-3
F~ once:-4
F~ one:-12
F~ only:1
F~ or:-9
F~ out:3
F~ over:-4
F~ oyl:-4
F~ packet:7
F~ paste:-7
F~ plus:2
F~ ran:2
F~ read:1
F~ real:-6
F~ render:-7
F~ right:-5
F~ rspo:-7
F~ says:-4
F~ second:-1
F~ sets:-3
F~ should:3
F~ since:1
F~ smell:-9
F~ so:5
F~ soap:-6
F~ soaps:-7
F~ stand:-5
F~ stay:8
F~ stays:-1
F~ still:2
F~ stirr:-3
F~ strain:4
F~ stuck:1
F~ takes:-8
F~ than:2
F~ that:-5
F~ thats:3
F~ the:-2
F~ then:-1
F~ there:3
F~ thicken:-8
F~ this:-1
F~ through:-2
F~ tin:-1
F~ to:4
F~ together:3
F~ too:-7
F~ trac:-7
F~ tub:-3
F~ turn:5
F~ twice:4
F~ until:7
F~ up:2
F~ used:-4
F~ w:2
F~ warm:-6
F~ was:-2
F~ weigh:-5
F~ well:1
F~ went:-3
F~ were:-2
F~ when:-1
F~ which:-3
F~ while:3
F~ will:-5
F~ with:1
F~ would:2
F~ wouldnt:-2
F~ you:4
F~%:1
F~0:3
F~<:2
F~=:-2
F~>:-2
F~A:-3
F~F:-3
F~N:5
F~W:-2
F~d:-4
F~e:-1
F~t:-9
I0:2
I:3
I<:1
IA:-2
II:1
IL:4
IW:-1
Ib:-5
Id:5
Iw:-5
I~ +:-3
I~ ::3
I~ and:-2
I~ bath:-2
I~ first:-5
I~ had:9
I~ in:-12
I~ is:-1
I~ it:7
I~ round:-5
I~ so:-6
I~ tray:1
I~ was:7
I~<:2
K%:-7
K0:-9
K:2
K=:-1
K>:-6
KA:-6
KF:-8
KL:-3
KW:-3
Kd:-7
Kr:3
Kt:-3
K~ ::-6
K~ and:-3
K~ at:-2
K~ g:-8
K~ in:-4
K~ into:3
K~ is:4
K~ mixed:4
K~ my:-9
K~ of:-6
K~ on:6
K~ was:-4
K~%:-8
K~>:-6
K~r:-1
L0:-2
L:2
L<:-6
L=:-1
L>:4
LA:-5
LI:4
LL:3
LN:2
LS:4
LU:-4
LW:3
LX:-3
Lb:3
Le:3
Ll:-6
Lt:-2
Lv:-5
Lw:-2
L~ ::2
L~ a:1
L~ after:-2
L~ and:-1
L~ as:5
L~ bar:-6
L~ bars:-5
L~ batch:-7
L~ because:2
L~ boil:2
L~ by:-2
L~ flat:4
L~ for:-1
L~ from:12
L~ frozen:-8
L~ goes:-7
L~ i:-1
L~ in:-1
L~ instead:-9
L~ into:-1
L~ is:1
L~ it:-1
L~ no:-8
L~ of:8
L~ on:4
L~ out:6
L~ over:2
L~ pot:-6
L~ same:7
L~ so:2
L~ soap:-7
L~ stage:-4
L~ straight:-2
L~ thaw:-5
L~ the:5
L~ to:2
L~ towel:3
L~ was:5
L~ went:3
L~ which:7
L~ with:4
L~0:-2
L~=:-1
L~>:-2
L~X:-5
L~b:7
L~l:-10
L~t:-3
L~w:1
M0:2
M:3
MA:3
M~ and:-5
M~ in:4
M~ is:2
M~ soap:-8
N0:3
N:10
N<:-2
NA:-5
NL:2
NN:-2
Nb:4
Nl:1
Nt:-9
Nw:4
N~ after:-1
N~ and:-10
N~ as:2
N~ at:-4
N~ because:1
N~ from:8
N~ i:8
N~ if:2
N~ in:1
N~ instead:-1
N~ is:-1
N~ it:9
N~ or:-7
N~ same:8
N~ since:7
N~ so:1
N~ that:-2
N~ the:7
N~ to:5
N~ was:-7
N~ where:7
N~ would:-6
N~N:-2
S%:-8
S0:-5
S:-5
S<:-3
SA:-4
SF:-9
SL:-6
SN:9
SS:-5
SX:-2
Sd:-1
St:-6
Sv:-5
Sw:-4
S~ ::-5
S~ a:-7
S~ and:-1
S~ as:-2
S~ at:-6
S~ because:3
S~ blend:-4
S~ fades:-4
S~ for:-6
S~ from:-5
S~ goes:-5
S~ i:-6
S~ in:1
S~ is:5
S~ leav:-5
S~ mould:-7
S~ no:-2
S~ once:-2
S~ only:6
S~ pour:-1
S~ powder:-5
S~ smell:-5
S~ spots:-5
S~ the:-5
S~ then:-4
S~ was:1
S~ when:-5
S~ which:-5
S~0:-4
S~<:-3
S~S:-3
S~w:-5
T%:-5
T0:-2
T:-9
T=:-2
TF:-3
T~ of:-5
T~ oils:-3
U:5
UF:3
Ut:-2
U~ and:-1
U~ i:-8
U~ in:2
U~ look:-1
U~ stage:-2
W%:-8
W0:7
W:1
W<:4
W=:-3
W>:-4
WF:-4
WI:-2
WL:6
WS:-3
WW:2
Wb:2
Wd:-4
We:-3
Wl:-1
Wr:-1
Wt:1
Wv:-5
Ww:-2
W~ +:-3
W~ =:-7
W~ ?:-10
W~ a:7
W~ after:-4
W~ all:-2
W~ and:-3
W~ as:3
W~ at:3
W~ because:3
W~ before:2
W~ boil:-3
W~ but:1
W~ by:-2
W~ clear:-5
W~ does:-5
W~ down:5
W~ first:-5
W~ for:-3
W~ from:-6
W~ g:-8
W~ got:-4
W~ here:-4
W~ i:6
W~ in:-1
W~ into:-7
W~ is:1
W~ it:3
W~ let:-3
W~ like:1
W~ looks:-5
W~ makes:-9
W~ never:-4
W~ on:-8
W~ only:-6
W~ or:6
W~ out:-9
W~ outdoor:-1
W~ outside:-1
W~ since:4
W~ so:-2
W~ that:-5
W~ the:3
W~ then:-1
W~ to:-9
W~ too:9
W~ wait:-1
W~ was:7
W~ weigh:-4
W~ went:3
W~ when:4
W~ which:4
W~ would:-4
W~0:2
W~<:2
W~=:-3
W~A:-4
W~e:-1
W~r:-5
W~t:-3
W~v:-5
X%:3
X:-3
X<:1
X=:-6
X>:-2
XA:-3
XC:-7
XF:-2
XL:3
XN:8
XS:-2
XW:2
XX:-1
Xl:3
Xt:-3
Xv:-3
Xw:-1
X~ ::-3
X~ ?:-4
X~ a:-5
X~ and:1
X~ at:-7
X~ bar:2
X~ bars:-7
X~ came:-4
X~ dissolv:-9
X~ fine:-4
X~ for:1
X~ from:-8
X~ goes:-3
X~ ground:-8
X~ i:5
X~ in:-2
X~ is:-5
X~ it:-6
X~ no:-6
X~ of:-8
X~ on:-3
X~ so:-5
X~ the:-3
X~ this:4
X~ to:-9
X~ was:2
X~ went:1
X~0:2
X~<:-7
X~L:2
X~W:-2
X~v:-2
X~w:-5
^ *:-7
^ ::3
^ =:-5
^ a:-1
^ about:11
^ add:2
^ added:9
^ after:1
^ all:2
^ also:-2
^ alway:2
^ am:-5
^ an:6
^ and:-9
^ any:-7
^ anyone:-9
^ anyth:-3
^ are:-3
^ as:4
^ ask:-9
^ at:-1
^ attempt:-5
^ b:-7
^ back:-7
^ bar:-5
^ bars:-7
^ base:-4
^ basic:-4
^ batch:-10
^ be:-6
^ been:-4
^ before:-9
^ between:7
^ big:-8
^ bit:3
^ blend:-7
^ blender:-7
^ blue:-5
^ boil:3
^ bonjour:-4
^ bonsoir:-4
^ book:-9
^ both:-8
^ bottle:9
^ bought:-7
^ box:-5
^ bring:-1
^ bubbl:-7
^ but:-10
^ by:-5
^ c:-5
^ came:2
^ cant:-1
^ castile:-8
^ chang:3
^ check:-10
^ christma:-3
^ ciao:-4
^ clean:-2
^ clear:1
^ cold:-3
^ combine:-3
^ comment:-3
^ confetti:-4
^ cook:-3
^ cool:-3
^ copi:-4
^ correct:1
^ correction:9
^ cost:-8
^ could:-2
^ couldnt:7
^ cousin:-1
^ cover:-7
^ crock:-3
^ crockpot:-5
^ cure:-4
^ cured:-6
^ cut:-3
^ d:-5
^ dad:2
^ dads:-4
^ date:-2
^ day:-9
^ dear:2
^ did:-2
^ didnt:2
^ dissolv:-4
^ dissolve:-1
^ do:-4
^ does:-3
^ dog:2
^ done:-4
^ dont:-12
^ doubl:2
^ dropp:-1
^ e:-4
^ each:1
^ earlier:-8
^ empty:-10
^ ended:3
^ enough:-6
^ entry:2
^ even:-2
^ every:-5
^ everyone:-8
^ everyth:4
^ expect:-7
^ export:-4
^ f:-6
^ fat:-7
^ fats:-10
^ fill:-5
^ fills:-4
^ fine:-3
^ first:-3
^ for:2
^ forgot:-3
^ found:5
^ freeze:-5
^ friend:-3
^ from:-2
^ g:-6
^ gave:-5
^ gel:-7
^ gell:3
^ give:-7
^ glov:-5
^ goat:-6
^ goes:-3
^ goggl:-5
^ going:1
^ gonna:5
^ good:-4
^ got:-7
^ grams:-6
^ gran:3
^ grandma:-6
^ grandmother:-1
^ grandpa:3
^ granny:-4
^ grans:-2
^ grat:-6
^ greeting:-5
^ had:4
^ half:1
^ hallo:-4
^ hand:2
^ handout:-4
^ hard:-5
^ has:-6
^ have:-6
^ he:-10
^ heat:-7
^ hello:-3
^ help:4
^ here:-8
^ heres:-7
^ hers:-7
^ hes:-6
^ hey:-5
^ hi:1
^ his:-4
^ hiya:1
^ hola:-3
^ hope:-2
^ how:-10
^ hows:-6
^ hp:-4
^ hubby:3
^ i'd:4
^ i:-2
^ if:-9
^ im:3
^ in:-6
^ ingredient:-3
^ instead:8
^ into:-4
^ is:-7
^ it:2
^ item:-3
^ itll:5
^ its:-3
^ ive:-6
^ jug:5
^ keep:4
^ kept:1
^ kids:-8
^ kind:-1
^ kitchen:1
^ label:-11
^ last:-8
^ lather:-5
^ laundry:-5
^ leave:-3
^ left:-1
^ leftover:-9
^ lid:2
^ like:-1
^ line:-4
^ liquid:-4
^ list:-8
^ log:-6
^ lol:-6
^ long:-5
^ look:-5
^ looks:-4
^ lost:-8
^ lot:-7
^ love:-4
^ lye's:5
^ m:-5
^ ma:-7
^ made:3
^ make:6
^ makes:-4
^ many:-4
^ market:-5
^ meanwhile:-1
^ melt:-3
^ method:2
^ mind:-4
^ mine:-7
^ mines:3
^ mix:-7
^ mixed:-3
^ mold:-7
^ morn:-6
^ mould:-6
^ mum:-5
^ mums:4
^ must:-5
^ my:-3
^ n:-9
^ namaste:-4
^ name:-3
^ nb:1
^ need:-4
^ never:-3
^ new:-3
^ next:-12
^ nice:-6
^ no:5
^ nobody:-4
^ none:-8
^ not:2
^ note:-3
^ notebook:-5
^ notes:-2
^ noth:-12
^ now:1
^ number:-2
^ o:-5
^ oat:-4
^ of:1
^ oh:1
^ oil:-6
^ oils:-3
^ ok:-3
^ okay:-4
^ old:-4
^ on:-6
^ once:-3
^ one:1
^ only:2
^ open:-1
^ or:-4
^ order:-1
^ other:-5
^ our:-3
^ ours:-5
^ out:2
^ outside:-6
^ oven:-3
^ oz:-7
^ page:-5
^ passt:-3
^ past:-3
^ paste:1
^ people:-7
^ per:1
^ ph:-5
^ phase:-3
^ phone:2
^ photo:-9
^ plain:-6
^ plan:-4
^ plann:-7
^ please:2
^ pls:-6
^ plus:-8
^ post:6
^ pot:6
^ pour:2
^ prep:-3
^ press:-4
^ print:-9
^ proces:-6
^ ps:3
^ pull:4
^ purity:8
^ put:-5
^ q:-7
^ question:-5
^ quick:-6
^ rain:4
^ ran:4
^ re:-4
^ read:3
^ reader:2
^ ready:-3
^ recipe:-7
^ remark:-6
^ render:-3
^ replac:-2
^ rest:-4
^ result:-6
^ right:-5
^ room:-6
^ row:2
^ safe:-4
^ sanity:-5
^ sat:-5
^ scal:3
^ scale:7
^ scoop:-4
^ scrap:5
^ second:1
^ sells:-3
^ set:-5
^ sf:-1
^ shav:-3
^ shave:-3
^ she:-5
^ shes:-3
^ should:-5
^ since:3
^ sis:2
^ sister:-1
^ slow:-4
^ smell:-4
^ snow:2
^ so:-4
^ soap:-7
^ soft:-4
^ sold:-8
^ some:2
^ someone:-2
^ somewhere:2
^ sorry:1
^ sound:-3
^ source:1
^ spill:-1
^ spoon:-3
^ sry:-5
^ stamp:-5
^ start:-7
^ step:1
^ stick:-5
^ still:-2
^ stir:-4
^ stirr:-6
^ straight:-5
^ strain:4
^ student:2
^ subject:-3
^ sum:-5
^ sunday:-10
^ superfat:3
^ swap:3
^ swapp:3
^ swirl:-9
^ switch:-5
^ take:-3
^ teacher:1
^ tell:-7
^ test:-7
^ text:-6
^ thank:-7
^ thats:-2
^ the:-2
^ then:-9
^ ther:-5
^ there:-1
^ these:-1
^ they:-9
^ theyre:-6
^ third:-2
^ this:2
^ those:3
^ thought:-4
^ threw:7
^ thx:-4
^ tip:-6
^ title:-4
^ tonight:-4
^ too:-2
^ took:2
^ total:-3
^ towel:-4
^ trac:-2
^ trace:-4
^ translat:-2
^ tried:-5
^ try:-3
^ tub:-9
^ turn:-2
^ unit:-3
^ unmould:-5
^ update:1
^ use:1
^ used:3
^ using:-6
^ version:-10
^ very:-8
^ wait:4
^ want:3
^ warm:-7
^ was:-4
^ wash:-7
^ we:1
^ wed:1
^ week:-3
^ weekend:-5
^ weigh:-6
^ weight:-8
^ well:-6
^ went:1
^ were:2
^ weve:-7
^ what:-9
^ whats:-6
^ when:-7
^ where:-1
^ which:-7
^ while:-2
^ who:-4
^ whoever:-4
^ whole:4
^ whos:-3
^ why:-7
^ will:-4
^ with:-5
^ work:-3
^ worksheet:-4
^ workshop:-4
^ would:-2
^ wrapp:-7
^ write:2
^ written:3
^ wrote:-3
^ x:-10
^ years:3
^ yes:-11
^ yesterday:-5
^ you:-8
^ youll:2
^ zap:-4
^ zutat:-4
^%:-7
^0:-5
^<:-1
^=:-6
^>:-9
^C:-12
^F:1
^I:-2
^K:-1
^M:1
^N:-2
^S:-9
^T:-5
^U:2
^X:-3
^b:-1
^d:-4
^e:-10
^l:7
^r:3
^w:-3
any:-2
b%:-4
b0:3
b:3
bA:4
bF:-6
bL:7
bN:5
bW:8
bb:-5
bt:-4
bw:-1
b~ ::-1
b~ ?:9
b~ a:-4
b~ after:-7
b~ all:-5
b~ and:-7
b~ as:-7
b~ bars:-6
b~ because:-4
b~ before:3
b~ but:6
b~ by:8
b~ fine:-4
b~ for:6
b~ i:2
b~ if:7
b~ is:7
b~ it:-3
b~ look:-4
b~ my:3
b~ not:-5
b~ of:1
b~ on:-5
b~ or:8
b~ right:-8
b~ still:3
b~ the:5
b~ then:6
b~ too:1
b~ was:5
b~ x:-7
b~0:-9
b~L:2
b~b:-1
d%:-4
d0:-7
d:-6
d=:-3
dA:-5
dF:-9
dI:-8
dK:-5
dL:-5
dS:-1
dX:-2
db:-5
dd:-5
dt:-2
dv:-1
dw:-1
d~ ::-1
d~ ?:-3
d~ and:-5
d~ at:-4
d~ blend:-1
d~ both:-2
d~ by:-5
d~ for:-5
d~ here:-2
d~ in:-4
d~ into:-1
d~ it:-5
d~ no:-5
d~ of:-1
d~ oils:-1
d~ on:-6
d~ or:-2
d~ pour:-3
d~ so:-8
d~ stirr:-1
d~ the:-7
d~ then:-6
d~ trace:-1
d~ when:-8
d~A:-7
d~t:-1
e%:-6
e0:3
e:3
e=:-2
e>:-5
eA:-2
eF:-1
eL:2
eN:8
eW:-2
eX:6
ee:-6
et:5
e~ +:6
e~ all:1
e~ and:-3
e~ as:2
e~ but:11
e~ for:-1
e~ g:-11
e~ grams:-6
e~ in:9
e~ is:5
e~ minus:5
e~ of:2
e~ on:-2
e~ or:8
e~ was:10
e~ with:10
e~A:-5
e~F:-2
e~W:-3
l%:-5
l0:3
l:-3
l=:-7
l>:-5
lA:2
lF:-6
lL:-1
lN:2
lW:-3
lX:-3
ll:-5
long:1
lv:-9
lw:-6
l~ and:-7
l~ as:-7
l~ by:-7
l~ for:3
l~ goes:-5
l~ i:-7
l~ in:-7
l~ is:-2
l~ of:-3
l~ on:1
l~ right:-3
l~ the:-6
l~ was:-6
l~ went:2
l~L:2
l~t:-3
no figure:-5
no name:-6
r%:-7
r0:3
r:3
r=:-6
r>:-4
rF:8
rK:3
rW:-3
rt:-6
r~ as:-10
r~ by:2
r~ the:-1
r~F:3
r~K:3
short:-6
t%:-5
t0:-2
t:-5
t<:7
t=:-3
t>:5
tA:-2
tF:-3
tK:-3
tL:-4
tN:-4
tS:-2
tU:-5
tW:1
tX:-5
tb:-3
td:-1
te:-9
tl:-7
tt:-3
tv:-1
tw:-2
t~ ::2
t~ ?:-6
t~ a:-4
t~ add:-2
t~ added:2
t~ after:-6
t~ ago:-7
t~ all:-6
t~ and:-3
t~ at:-4
t~ because:-8
t~ before:3
t~ blend:-2
t~ both:-2
t~ but:2
t~ by:-6
t~ can:-3
t~ cook:-3
t~ cover:-3
t~ cure:-1
t~ cured:-2
t~ cut:-1
t~ day:-1
t~ did:-3
t~ each:-1
t~ edges:-5
t~ flat:-5
t~ from:-7
t~ gel:-3
t~ i:-4
t~ if:-5
t~ in:-9
t~ into:-2
t~ is:-7
t~ it:-6
t~ its:1
t~ ive:-6
t~ later:-8
t~ lid:-5
t~ lined:-1
t~ loaf:-3
t~ long:-3
t~ makes:-1
t~ mash:-2
t~ melt:4
t~ mine:-6
t~ mix:-5
t~ mould:-2
t~ my:-5
t~ no:-3
t~ now:-7
t~ of:3
t~ off:-3
t~ oils:-2
t~ old:3
t~ on:-7
t~ or:-4
t~ paste:-8
t~ pot:3
t~ pour:-4
t~ ready:-4
t~ rest:-8
t~ since:-6
t~ so:-3
t~ still:-6
t~ stir:-1
t~ stirr:-4
t~ the:-6
t~ then:-4
t~ they:-3
t~ till:-4
t~ to:-7
t~ trace:-5
t~ under:-1
t~ unmould:-4
t~ until:-5
t~ used:-3
t~ wait:-2
t~ was:-7
t~ we:-4
t~ weigh:-2
t~ when:-5
t~ which:-2
t~ with:2
t~ yes:2
t~ zap:-1
t~0:-1
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
v0:-6
v=:3
vA:3
vC:1
vF:-3
vK:7
vL:3
vN:8
vS:-3
vW:6
vX:-3
vb:-4
vd:-1
vl:-5
vt:3
vw:1
v~ a:-4
v~ and:-4
v~ at:-3
v~ bottle:-1
v~ can:-11
v~ for:-5
v~ i:1
v~ in:-3
v~ is:-7
v~ of:2
v~ one:-3
v~ or:-2
v~ pot:-9
v~ so:-2
v~ to:5
v~C:4
v~S:-1
v~W:2
v~X:-2
w%:-5
w0:2
w<:-12
w=:-6
w>:3
wA:-2
wC:6
wI:-4
wL:-2
wN:1
wS:-6
wW:-1
wX:1
wb:1
wd:4
wl:-13
wt:-10
wv:-1
ww:1
w~ a:2
w~ after:-8
w~ and:-1
w~ as:-6
w~ at:-7
w~ before:-8
w~ cubes:-6
w~ dissolv:2
w~ empty:-1
w~ for:-2
w~ fresh:-7
w~ from:-8
w~ frozen:-4
w~ goes:-8
w~ in:-6
w~ instead:-11
w~ it:-1
w~ loaf:-4
w~ more:-3
w~ mould:4
w~ no:-2
w~ of:1
w~ on:-2
w~ one:-1
w~ or:-3
w~ out:-8
w~ per:3
w~ so:-2
w~ steps:-2
w~ the:-6
w~ to:-3
w~ together:-8
w~ too:2
w~ was:5
w~ wet:-6
w~ when:-2
w~0:3
w~C:2
w~I:1
w~L:-9
w~N:-2
w~S:-5
w~X:-5
w~w:-3`;
