/** What each sign of a note weighs for its bearing on the pot and against it, in tenths of a logit: learned, `npm run generate:bearing`. */
export const weights = ` *:-7
 *~A:-7
 *~F:-3
 +:2
 +~ a:-6
 +~0:5
 +~<:-2
 +~=:-3
 +~A:-6
 +~F:-8
 +~W:-7
 .:6
 .~%:6
 .~0:3
 ::1
 :~ a:3
 :~ about:-6
 :~ all:5
 :~ as:-3
 :~ cook:-1
 :~ do:-2
 :~ does:-2
 :~ g:-3
 :~ goggl:-5
 :~ good:-5
 :~ half:5
 :~ i'd:3
 :~ i:4
 :~ in:3
 :~ is:-8
 :~ it:3
 :~ its:-1
 :~ ive:2
 :~ kitchen:1
 :~ me:-7
 :~ melt:-9
 :~ no:2
 :~ none:7
 :~ one:-5
 :~ re:-2
 :~ soap:-6
 :~ the:-1
 :~ too:2
 :~ was:-4
 :~ weigh:1
 :~ what:3
 :~ why:-2
 :~ winter:-2
 :~ with:1
 :~ yes:4
 :~%:-3
 :~0:-6
 :~<:-3
 :~=:-5
 :~>:-9
 :~A:-1
 :~L:-2
 :~N:2
 :~S:-6
 :~T:-2
 :~W:-4
 :~X:-1
 :~b:-5
 :~d:-4
 :~l:-9
 :~t:-5
 :~v:-7
 :~w:2
 =:-2
 =~ =:-6
 =~0:-4
 =~=:-4
 =~>:-2
 =~e:1
 =~l:-8
 ?:-4
 a:-2
 about:-2
 about~ a:6
 about~ an:-5
 about~ it:-2
 about~ right:-2
 about~ superfat:-8
 about~ the:3
 about~ to:-5
 about~%:-3
 about~0:-2
 about~<:4
 about~>:-6
 about~F:-6
 about~b:3
 about~d:-2
 about~t:-6
 about~v:2
 about~w:3
 above:7
 above~ is:2
 above~d:-8
 abt:-7
 accident:4
 accord:7
 accord~ to:7
 account:7
 acros:3
 acros~ the:7
 actual:8
 actual~N:5
 add:-1
 added:8
 added~ a:2
 added~ another:-3
 added~ at:-3
 added~ it:4
 added~ the:2
 added~ to:-8
 added~<:-6
 added~=:-10
 added~v:7
 added~w:3
 adds:-9
 adds~ up:-8
 add~ a:3
 add~ it:-6
 add~ the:-5
 add~ to:3
 add~<:-4
 add~=:-4
 add~F:4
 add~w:-6
 advice:2
 afresh:-8
 after:1
 afternoon:3
 afterward:-1
 after~ a:-1
 after~ an:1
 after~ christma:-6
 after~ cook:3
 after~ cure:-1
 after~ i:2
 after~ it:8
 after~ pour:4
 after~ strain:2
 after~ that:-1
 after~ the:-1
 after~ this:-9
 after~ weigh:1
 after~0:-7
 after~t:-5
 again:-1
 against:4
 against~ the:6
 again~ ::4
 again~ ?:2
 again~ after:-2
 again~ and:-10
 again~ at:-3
 again~ for:-7
 again~ with:6
 age:-9
 ages:-2
 ages~ to:-5
 ago:-8
 ago~ and:-2
 agre:-5
 agree:-6
 agree~ with:-4
 ahead:2
 aim:5
 aim~ for:7
 air:-3
 air~ cupboard:-1
 aisle:2
 aleppo:-6
 alike:6
 alkali:-6
 all:1
 allergen:-4
 allergic:7
 allergic~ to:-7
 allergy:7
 allotment:-4
 allow:-6
 all~ ::-4
 all~ ?:-2
 all~ and:5
 all~ at:3
 all~ but:7
 all~ by:-7
 all~ day:-6
 all~ down:8
 all~ fats:-9
 all~ first:2
 all~ g:-9
 all~ good:-7
 all~ grams:-7
 all~ i:3
 all~ in:-8
 all~ is:-8
 all~ its:1
 all~ my:-7
 all~ of:-2
 all~ on:-9
 all~ over:-5
 all~ right:-9
 all~ that:-2
 all~ the:-3
 all~ there:4
 all~ together:-8
 all~ told:-4
 all~ up:-4
 all~ week:3
 all~ weigh:-2
 all~0:1
 all~=:-6
 all~F:4
 all~L:-1
 all~W:-5
 all~b:-2
 all~e:8
 almost:1
 alone:-1
 along:9
 along~ the:-2
 along~ with:6
 already:8
 already~ dissolv:4
 already~ in:2
 already~ pour:-7
 already~ put:9
 already~ so:1
 alright:-3
 alright~ for:-6
 also:4
 also~ a:-3
 also~=:-8
 also~w:5
 alter:3
 although:3
 altogether:-8
 alu:-2
 aluminium:-2
 alway:-3
 alway~ did:-6
 alway~ said:-6
 alway~ with:6
 am:1
 american:-8
 ammonia:-7
 amount:4
 amount~ ?:-4
 amount~ g:-4
 amount~ of:-2
 am~ a:-5
 am~ from:-7
 an:-3
 and~ a:-2
 and~ about:-7
 and~ add:-6
 and~ added:-3
 and~ after:-1
 and~ again:2
 and~ all:6
 and~ an:-6
 and~ another:-9
 and~ asked:-6
 and~ at:-7
 and~ bang:-1
 and~ blend:-5
 and~ both:-2
 and~ by:1
 and~ call:3
 and~ came:-8
 and~ clear:-3
 and~ cook:3
 and~ cool:3
 and~ couldnt:-3
 and~ did:-1
 and~ do:2
 and~ does:-4
 and~ dont:-7
 and~ even:2
 and~ every:-3
 and~ everyth:-2
 and~ fill:4
 and~ for:1
 and~ forgot:-4
 and~ found:5
 and~ gave:1
 and~ give:4
 and~ glov:-2
 and~ go:-3
 and~ goggl:-3
 and~ got:-10
 and~ half:-6
 and~ hard:-5
 and~ has:2
 and~ have:-4
 and~ her:-5
 and~ his:-8
 and~ honest:-5
 and~ how:-7
 and~ i'd:-2
 and~ i:6
 and~ if:4
 and~ im:-1
 and~ in:-2
 and~ into:3
 and~ is:-2
 and~ it:-4
 and~ itll:-5
 and~ its:-3
 and~ keep:-8
 and~ kept:1
 and~ last:-5
 and~ leave:-1
 and~ left:3
 and~ let:-6
 and~ lost:-7
 and~ me:-4
 and~ melt:-6
 and~ mine:1
 and~ mixed:-2
 and~ my:1
 and~ neither:3
 and~ never:-1
 and~ none:5
 and~ not:-1
 and~ noth:-3
 and~ now:4
 and~ of:3
 and~ off:-4
 and~ once:-1
 and~ only:2
 and~ pour:2
 and~ put:3
 and~ said:-6
 and~ says:3
 and~ see:-5
 and~ she:-5
 and~ since:2
 and~ smell:-2
 and~ so:2
 and~ soap:-5
 and~ some:3
 and~ someth:7
 and~ sprinkle:-2
 and~ start:-4
 and~ stay:-4
 and~ still:-1
 and~ stir:-2
 and~ stirr:-9
 and~ straight:-6
 and~ strain:-4
 and~ stuck:8
 and~ swear:-7
 and~ swirl:3
 and~ tell:-4
 and~ that:5
 and~ thats:-1
 and~ the:-2
 and~ then:5
 and~ ther:6
 and~ there:5
 and~ they:-7
 and~ this:4
 and~ those:2
 and~ tipp:10
 and~ to:-5
 and~ together:1
 and~ took:8
 and~ turn:-4
 and~ use:2
 and~ used:3
 and~ wait:-2
 and~ want:-5
 and~ wants:-6
 and~ warm:-1
 and~ we:2
 and~ weigh:1
 and~ went:-4
 and~ whats:1
 and~ when:-2
 and~ whether:-6
 and~ white:-5
 and~ will:-4
 and~ with:-5
 and~ would:-5
 and~ yes:-2
 and~ you:-2
 and~%:-4
 and~0:2
 and~<:1
 and~=:-4
 and~A:-2
 and~B:-1
 and~F:-5
 and~L:-6
 and~N:6
 and~S:-4
 and~W:1
 and~X:1
 and~b:-10
 and~e:-3
 and~l:-8
 and~t:-5
 and~v:3
 and~w:-3
 another:4
 another~ day:-4
 another~0:9
 another~<:7
 another~t:-5
 another~v:-2
 another~w:-7
 answer:-4
 answer~ ::-5
 answer~ is:-3
 answer~ the:2
 any:-2
 anybody:1
 anyhow:-3
 anyone:-8
 anyone~ know:2
 anyone~ tried:-4
 anyth:-6
 anyth~ else:-1
 anyth~ in:-2
 anyth~ off:-4
 anyth~ wrong:-3
 anyway:-5
 anywhere:-1
 anywhere~ near:-5
 any~A:-3
 any~S:-9
 an~ earlier:-7
 an~ envelope:-5
 an~ extra:4
 an~ eye:-2
 an~ hour:-7
 an~ old:-4
 an~ older:-2
 an~I:-7
 an~L:4
 apart:-10
 app:-1
 approx:2
 app~ puts:-3
 april:-1
 apron:-6
 are:-2
 arent:1
 are~ a:-2
 are~ dry:5
 are~ for:3
 are~ from:-1
 are~ full:-1
 are~ in:-6
 are~ no:-7
 are~ not:-8
 are~ right:-5
 are~ still:-9
 are~ the:-2
 are~ what:-1
 are~0:2
 are~=:-3
 are~F:-2
 argu:-8
 arithmetic:-8
 arm:-9
 around:-4
 around~ the:-4
 around~%:2
 around~0:-4
 around~d:-3
 around~w:-1
 arriv:-6
 as:3
 ash:-9
 ashes:-6
 ash~ and:-5
 ash~ on:-7
 aside:-5
 ask:-3
 asked:-8
 asked~ about:-6
 asked~ for:-3
 asked~ if:-5
 asked~ in:-2
 asked~ whether:-5
 asks:-10
 ask~ ::-3
 ask~ about:-7
 ask~ for:-6
 ask~ her:-1
 ask~ you:-6
 asleep:-8
 assay:8
 as~ a:1
 as~ above:-1
 as~ alway:6
 as~ anyth:-4
 as~ before:7
 as~ ever:-8
 as~ far:-4
 as~ i:5
 as~ if:5
 as~ in:1
 as~ is:7
 as~ it:-4
 as~ list:-3
 as~ long:-8
 as~ much:1
 as~ on:-6
 as~ one:1
 as~ print:7
 as~ promis:-6
 as~ she:1
 as~ snow:-3
 as~ the:3
 as~ well:3
 as~ written:-6
 as~ you:-8
 as~%:1
 as~0:1
 as~>:3
 as~A:3
 as~F:-1
 as~I:-10
 as~L:-4
 as~X:-5
 at:-2
 ate:4
 attempt:-6
 attempt~0:-5
 attic:-3
 at~ a:-7
 at~ all:-2
 at~ around:-4
 at~ christma:-1
 at~ church:-7
 at~ day:-8
 at~ easter:-5
 at~ first:-5
 at~ half:-7
 at~ home:2
 at~ hour:2
 at~ it:5
 at~ least:-3
 at~ light:2
 at~ liquid:-3
 at~ me:3
 at~ minute:-2
 at~ my:-3
 at~ once:-4
 at~ our:-5
 at~ room:-4
 at~ rough:-1
 at~ school:-6
 at~ that:1
 at~ the:1
 at~ thin:-7
 at~ this:-6
 at~ trace:5
 at~ week:-6
 at~%:3
 at~0:-4
 at~<:8
 at~=:-3
 at~b:3
 at~d:-4
 at~e:3
 at~l:-3
 at~t:-9
 at~w:-3
 august:3
 aunt:-4
 aunti:-3
 auntie:5
 aunts:4
 aunt~ in:-6
 aunt~ says:-6
 autumn:-9
 average:-3
 away:-3
 away~ and:2
 awful:1
 a~ ::-8
 a~ bad:-8
 a~ bag:5
 a~ bar:-10
 a~ batch:-8
 a~ beginner:-4
 a~ bigger:-1
 a~ bit:-2
 a~ blanket:-2
 a~ blend:8
 a~ block:5
 a~ bottle:-1
 a~ bowl:-8
 a~ box:-3
 a~ brick:-1
 a~ bucket:-6
 a~ can:3
 a~ candle:-7
 a~ carton:-2
 a~ cheese:-6
 a~ chip:-6
 a~ class:-6
 a~ clean:2
 a~ cold:-5
 a~ corner:-8
 a~ cow:1
 a~ crisp:-4
 a~ crumb:-7
 a~ crust:7
 a~ customer:-5
 a~ dark:-4
 a~ day:-3
 a~ different:-5
 a~ drawer:-7
 a~ dream:-4
 a~ drop:3
 a~ dry:-8
 a~ face:-6
 a~ fair:5
 a~ fami:-3
 a~ fan:-2
 a~ farm:2
 a~ few:5
 a~ fifth:3
 a~ finger:-6
 a~ first:-4
 a~ fresh:-3
 a~ friend:-2
 a~ full:-1
 a~ glass:3
 a~ glug:5
 a~ good:11
 a~ half:3
 a~ handful:-2
 a~ heap:8
 a~ hole:-3
 a~ hurry:-7
 a~ jam:-7
 a~ jug:-3
 a~ kitchen:-1
 a~ knob:6
 a~ ladle:4
 a~ lady:-4
 a~ laundry:-8
 a~ library:-3
 a~ lid:-4
 a~ lidd:-2
 a~ light:-2
 a~ line:1
 a~ little:4
 a~ loaf:-5
 a~ lot:-6
 a~ lump:6
 a~ man:-2
 a~ milk:-2
 a~ minute:-6
 a~ mix:6
 a~ month:-10
 a~ mould:-5
 a~ mug:7
 a~ new:-8
 a~ nice:-3
 a~ night:-5
 a~ number:-2
 a~ page:-5
 a~ paper:-6
 a~ paste:-2
 a~ pdf:-3
 a~ pencil:-7
 a~ photo:-8
 a~ pinch:-2
 a~ plain:-8
 a~ pot:1
 a~ proper:-4
 a~ puddle:6
 a~ quarter:6
 a~ question:-3
 a~ reader:-7
 a~ ready:3
 a~ recipe:-3
 a~ rock:-5
 a~ round:-1
 a~ row:-6
 a~ scale:-7
 a~ second:-4
 a~ sensible:-2
 a~ shade:-4
 a~ shoe:-4
 a~ shoebox:-3
 a~ silicone:-6
 a~ sink:-4
 a~ skin:-3
 a~ skull:-4
 a~ slip:2
 a~ slow:-6
 a~ small:1
 a~ smaller:-5
 a~ soap:-7
 a~ soft:-7
 a~ softer:-6
 a~ spatula:-6
 a~ spill:-2
 a~ splash:6
 a~ spoon:-3
 a~ spoonful:-3
 a~ steel:-7
 a~ stick:3
 a~ stir:-4
 a~ superfat:-6
 a~ tenth:5
 a~ thermometer:-5
 a~ thin:-3
 a~ thing:-6
 a~ third:3
 a~ time:-7
 a~ tin:1
 a~ tiny:3
 a~ touch:-3
 a~ towel:-1
 a~ tray:-4
 a~ treat:-5
 a~ tub:-7
 a~ twentieth:3
 a~ typo:2
 a~ very:-7
 a~ video:-3
 a~ volcano:-3
 a~ warm:-4
 a~ water:-3
 a~ week:-8
 a~ wet:2
 a~ white:-1
 a~ whole:2
 a~ wire:-2
 a~ woman:-6
 a~ year:-8
 a~ yes:-1
 a~ zap:-3
 a~%:3
 a~0:5
 a~<:6
 a~=:-7
 a~>:2
 a~A:-5
 a~F:-2
 a~K:-2
 a~L:-4
 a~N:9
 a~S:1
 a~X:2
 a~b:3
 a~e:-7
 a~r:2
 a~t:-5
 a~v:-1
 a~w:4
 babcia:-5
 babi:1
 baby:1
 baby~ bar:-5
 baby~ shower:-2
 back:-4
 background:-3
 back~ ::-5
 back~ and:5
 back~ at:-3
 back~ for:1
 back~ in:-6
 back~ of:-4
 back~ on:-7
 back~ out:5
 back~ the:-3
 back~ till:9
 back~ to:-7
 back~ up:4
 bacon:-5
 badly:-2
 bag:6
 bags:-4
 bag~ of:4
 bag~ says:-2
 bak:-9
 bakery:-8
 bak~ paper:-8
 balanc:-3
 balance:4
 balanc~ ?:-3
 balcony:3
 balls:-6
 balm:-6
 bang:-8
 bang~ it:-4
 bar:-4
 bare:-5
 bare~ got:-2
 barn:-3
 barrel:-6
 bars:-10
 bars~ +:-7
 bars~ ::-6
 bars~ about:-1
 bars~ and:-6
 bars~ are:-6
 bars~ at:-2
 bars~ come:-3
 bars~ each:-5
 bars~ for:-8
 bars~ from:-4
 bars~ i:-2
 bars~ in:-5
 bars~ of:-6
 bars~ on:-6
 bars~ out:-7
 bars~ so:-3
 bars~ to:-5
 bars~ went:-8
 bars~ were:-6
 bars~ with:-8
 bars~0:-6
 bars~t:-3
 bars~w:-5
 bar~ ::-3
 bar~ ?:-6
 bar~ all:-3
 bar~ and:-3
 bar~ at:-3
 bar~ costs:-5
 bar~ for:-7
 bar~ from:-6
 bar~ i:1
 bar~ in:-4
 bar~ is:1
 bar~ no:-2
 bar~ of:-6
 bar~ since:-2
 bar~ so:1
 bar~ v:-7
 bar~ with:3
 bar~0:-5
 base:-2
 basic:-5
 bastille:-8
 batch:-4
 batch~ ::-3
 batch~ and:-7
 batch~ before:-7
 batch~ but:3
 batch~ ever:2
 batch~ from:-7
 batch~ had:-2
 batch~ i:1
 batch~ in:2
 batch~ is:2
 batch~ log:-3
 batch~ no:-4
 batch~ of:-5
 batch~ record:-2
 batch~ sheet:-5
 batch~ that:-2
 batch~ the:-1
 batch~ was:-7
 batch~ with:-3
 batch~0:-6
 bath:-8
 bathroom:5
 bathroom~ scale:7
 batter:-4
 batteri:-4
 battery:4
 battery~ died:6
 bazaar:-4
 bc:9
 bc~ i:3
 be:2
 beach:-5
 beads:7
 beaker:4
 bear:-8
 beard:-4
 bear~ with:-7
 beat:-2
 became:3
 became~0:10
 because:1
 because~ a:-4
 because~ he:-8
 because~ i:-1
 because~ it:8
 because~ its:-4
 because~ last:4
 because~ my:5
 because~ of:-3
 because~ she:-2
 because~ thats:1
 because~ the:3
 because~F:-8
 become:-1
 bed:-7
 bee:-7
 beech:-3
 beef:-7
 beef~=:-4
 beekeeper:-6
 been:3
 been~ at:4
 been~ mak:-6
 been~ on:-6
 been~ open:7
 been~ stand:4
 been~ told:-6
 been~t:-1
 bees:-3
 before:-1
 beforehand:-4
 before~ and:1
 before~ anyone:-6
 before~ i:-5
 before~ it:2
 before~ me:3
 before~ pour:6
 before~ saturday:-5
 before~ she:-1
 before~ so:-6
 before~ that:-7
 before~ the:2
 before~ they:-8
 before~ this:-10
 before~ we:-3
 before~ weigh:-8
 before~ with:-7
 before~ you:-11
 before~t:-5
 began:-6
 begin:-7
 beginn:-2
 beginner':-8
 beginner:-7
 behav:-6
 behind:-1
 behind~ the:4
 beige:-8
 being:-2
 believe:-1
 belong:-2
 belong~ to:2
 below:-4
 below~ the:-5
 below~d:-5
 bench:3
 besid:7
 beside:5
 beside~ it:3
 beside~ the:-1
 best:-11
 best~ before:-6
 bet:-5
 better:-4
 better~ than:3
 between:-1
 between~ the:5
 between~0:7
 be~ ?:-7
 be~ a:6
 be~ about:-6
 be~ bother:3
 be~ clear:-5
 be~ cut:-2
 be~ exact:6
 be~ for:3
 be~ gentle:-2
 be~ honest:-2
 be~ hot:-5
 be~ in:-6
 be~ mild:-5
 be~ ok:-3
 be~ on:4
 be~ patient:-7
 be~ right:2
 be~ sure:-3
 be~ the:-6
 be~ too:-4
 be~%:-11
 be~0:5
 be~A:-7
 be~N:7
 be~b:5
 be~e:9
 be~w:5
 bicycle:-6
 big:2
 bigger:1
 bigger~ pot:-3
 bigger~ than:6
 big~ batch:-8
 big~ kettle:5
 big~ one:2
 big~ pot:-5
 bin:-4
 binn:4
 bin~ it:-3
 birds:-4
 birthday:-4
 biscuit:-7
 bit:1
 bite:-6
 bites:-2
 bits~ of:1
 bit~ at:-3
 bit~ by:-3
 bit~ greasy:-2
 bit~ less:1
 bit~ like:-3
 bit~ more:3
 bit~ of:2
 bit~ on:-7
 bit~ over:-5
 bit~ so:-3
 bit~ soft:-6
 bit~ the:1
 black:-4
 blame:-8
 blame~ the:-7
 blanket:-6
 blend:-1
 blender:-5
 blender~ and:-5
 blender~ died:-4
 blender~t:-5
 blend~ and:-7
 blend~ at:-1
 blend~ for:-2
 blend~ pour:-2
 blend~ till:-4
 blend~ to:-2
 blend~ with:6
 blend~t:-5
 blind:1
 blink:-3
 blob:-1
 block:1
 block~ of:-1
 blog:-1
 blog~ i:-4
 blood:-6
 blue:-2
 board:4
 boat:3
 body:-1
 boiler:-7
 boil~ and:-10
 boil~ down:-2
 boil~ flat:4
 boil~ in:5
 boil~ it:-7
 boil~ off:5
 boil~ over:6
 boil~ the:-2
 bonjour:-4
 bonsoir:-4
 book:-3
 book~ ::-2
 book~ says:-8
 born:-5
 borrow:-3
 boss:-2
 both:-2
 bother:-4
 bother~ to:2
 bother~ with:4
 both~ alkali:-4
 both~ are:-8
 both~ at:1
 both~ feel:-1
 both~ lyes:-1
 both~ of:1
 both~ times:-6
 both~ units:-5
 both~ were:-5
 bottl:-3
 bottle:3
 bottle~ and:6
 bottle~ before:-5
 bottle~ gave:3
 bottle~ in:-6
 bottle~ is:4
 bottle~ of:-2
 bottle~ on:-4
 bottle~ said:5
 bottle~ says:6
 bottle~ was:12
 bottle~ with:-2
 bottl~ of:-4
 bottom~ of:1
 bought:-4
 bought~ a:-4
 bought~ the:-7
 bought~0:-6
 bought~>:-6
 bought~F:1
 bowl:-1
 bowls:3
 bowl~ and:-3
 bowl~ in:-8
 bowl~ is:-4
 bowl~ of:-1
 bowl~ on:6
 bowl~w:1
 box:-2
 boxes:-5
 box~ and:-3
 box~ lined:-2
 box~ with:-4
 box~t:-1
 boyfriend:-2
 boys:3
 brand:-3
 brave:-2
 bread:-1
 break:-8
 breakfast:-3
 breathe:-2
 brewery:-4
 brick:-2
 brim:-2
 bring:-11
 bring~ it:-3
 bring~ the:-9
 broke:-1
 broken:5
 brother:-1
 brother~ in:-8
 brought:6
 brown:-9
 brown~ paper:-5
 brush:-3
 btw:4
 bubbl:-6
 bubble:-4
 bubbl~ and:1
 bucket:-5
 bucket~ and:1
 bucket~ of:-8
 bucket~ so:-4
 bucket~ with:-6
 burn:-7
 burnt:-1
 burst:-4
 burst~ of:-2
 bus:-3
 but:-2
 butcher:-4
 butcher~ gave:-7
 button:-4
 but~ before:-1
 but~ first:-2
 but~ he:-5
 but~ here:-6
 but~ i'd:-3
 but~ i:1
 but~ im:-6
 but~ is:-7
 but~ it:-4
 but~ ive:-1
 but~ my:-2
 but~ no:4
 but~ not:-4
 but~ now:-3
 but~ only:-6
 but~ she:-5
 but~ that:-7
 but~ thats:-5
 but~ the:7
 but~ then:3
 but~ there:-4
 but~ they:-4
 but~ this:-1
 but~ those:-5
 but~ when:-1
 but~F:-9
 buy:-3
 buy~ the:-1
 by:1
 by~ ::-7
 by~ a:8
 by~ accident:4
 by~ bit:-3
 by~ easter:-5
 by~ eye:7
 by~ feel:-1
 by~ hand:-8
 by~ it:-5
 by~ itself:3
 by~ me:-5
 by~ mistake:7
 by~ modern:-4
 by~ my:2
 by~ noon:-3
 by~ spoon:-6
 by~ the:3
 by~ then:-5
 by~ today:-4
 by~ week:-8
 by~ weight:-4
 by~0:-3
 by~<:8
 by~>:-4
 by~N:-3
 by~b:-3
 by~t:-6
 by~w:-1
 b~ ::4
 b~A:-5
 b~F:-6
 c:-5
 cake:-2
 cakes:-6
 calculat:-1
 calculate:3
 calculator:-8
 call:3
 calls:-10
 calls~ it:-7
 call~ it:5
 call~ that:3
 call~ the:-2
 call~F:5
 came:2
 came~ back:3
 came~ from:-2
 came~ in:-4
 came~ out:-3
 came~ to:8
 came~ up:1
 can:-1
 candl:-7
 candle:-1
 candle~B:-1
 candl~ and:-5
 canister:-1
 cannot:-6
 cans:-2
 cant:3
 cant~ be:-2
 cant~ find:4
 cant~ get:-8
 cant~ remember:8
 cant~ say:-2
 cant~ stand:4
 can~ and:1
 can~ anyone:-1
 can~ be:-3
 can~ bear:-4
 can~ i:1
 can~ is:3
 can~ of:5
 can~ see:2
 can~ somebody:-6
 can~ stand:-7
 can~ still:-5
 can~ take:-5
 can~ tell:-2
 can~ the:-3
 can~ u:2
 can~ use:-5
 can~ you:2
 cap:-2
 capping:-6
 car:-7
 caramel:-7
 carbonate:6
 cardboard:2
 card~ for:-3
 card~ is:4
 card~ no:-4
 care:1
 caretaker:-7
 carpet:-4
 carri:5
 carri~ it:4
 carri~ on:5
 carry:-9
 carton:1
 case:-1
 cast:-7
 castile:-8
 cast~ an:-3
 cat:-1
 cat~ got:5
 cat~ had:2
 cat~ has:-6
 cat~ is:-4
 caught:1
 cauldron:-3
 caviti:-6
 ceil:-7
 cellar:-11
 certain:5
 certifi:-9
 certificate:5
 chair:-4
 chang:-3
 change:-2
 change~ the:-4
 chang~ ::4
 chang~ my:5
 chang~ the:-8
 charg:-2
 charge:-5
 chat:-3
 cheap:-9
 cheaper:-5
 cheaper~ than:-5
 check:-5
 check~ ::-1
 check~ before:2
 check~ by:-7
 check~ it:-7
 check~ me:-2
 check~ mine:-3
 check~ my:-7
 check~ out:-4
 check~ please:-5
 check~ pls:-4
 check~ that:-7
 check~ the:-3
 check~ this:-4
 check~A:-5
 cheese:-1
 cheese~ wire:-7
 chemist:-8
 chemistry:-2
 chemistry~ teacher:3
 child:-8
 children:-4
 chill:-7
 chip:2
 chips:4
 chisel:-4
 choir:2
 choose:-4
 chopp:-3
 christma:-5
 christma~0:-7
 chuck:4
 chuck~ in:6
 church:-7
 ciao:-4
 claim:-2
 clarity:-5
 class:-2
 class~ ::-5
 class~ i:-5
 clean:-3
 clean~ the:-7
 clean~ up:5
 clean~F:-5
 clear:-8
 clear~ after:-2
 clear~ and:-6
 clear~ as:-8
 clear~ at:-7
 clear~ in:-6
 clever:-7
 climb:-9
 climb~ out:-3
 climb~ to:-5
 cling:-4
 cling~ film:-4
 cling~ to:4
 clock:-5
 clos:-2
 close:-3
 close~ to:-6
 cloth:-6
 cloud:4
 cloudy~ for:-4
 club:-2
 clubs:-5
 clump:1
 co:-1
 coat:-6
 code:-5
 coins:3
 cold:-6
 cold~ and:-1
 cold~ from:-6
 cold~ press:-7
 cold~ proces:-5
 cold~L:5
 cold~W:-5
 colleague:-6
 colloidal:1
 colour:-9
 column:-5
 com:4
 combin:2
 combine:-2
 combine~ blend:-2
 comes:-1
 comes~ by:1
 comes~ from:-7
 comes~ in:1
 comes~ out:2
 come~ back:-6
 come~ down:-4
 come~ off:-2
 come~ out:3
 comma:2
 comma~ i:-1
 comma~ is:-7
 comment:-8
 commit:-1
 compar:-3
 compare:-9
 compar~ with:1
 complain:-3
 complaint:-11
 complain~ about:-4
 complete:3
 computer:-3
 confession:-1
 confetti:-3
 confirm:-8
 confirm~ the:-5
 confus:1
 contain:5
 convert:-9
 cook:2
 cooker:-3
 cooker~ ::-3
 cooker~ before:2
 cooker~ is:-5
 cooker~ on:-3
 cooks:-3
 cook~ ::-7
 cook~ ?:-6
 cook~ about:2
 cook~ and:-1
 cook~ at:-4
 cook~ for:-5
 cook~ i:-3
 cook~ in:-7
 cook~ is:5
 cook~ it:2
 cook~ on:-2
 cook~ once:-3
 cook~ part:-6
 cook~ so:7
 cook~ the:-6
 cook~ until:-1
 cook~ was:-10
 cook~ when:-6
 cook~ with:1
 cook~=:-1
 cook~F:-7
 cook~t:-4
 cool:-6
 cools:-8
 cool~ down:-1
 cool~ i:-3
 cool~ it:-6
 cool~ the:-7
 cool~ to:-2
 cool~ under:-4
 copi:2
 copi~ from:2
 copi~ it:-2
 copi~ off:2
 copi~ out:-6
 copi~ straight:-7
 copi~ this:1
 copy:1
 cork:-6
 corner:-13
 correct:1
 correction:8
 correct~ for:-2
 correct~ or:-2
 cos:7
 cost:-7
 costs:-13
 costs~ me:-1
 costs~0:-6
 costs~t:-6
 cost~ ::-6
 cost~ eur:-1
 cost~ me:-4
 cost~ per:-2
 cost~ sheet:-5
 cost~0:-6
 cost~t:-3
 could:-1
 couldnt:7
 couldnt~ be:7
 couldnt~ get:6
 couldnt~ tell:2
 could~ be:10
 could~ have:-7
 could~ not:8
 could~ somebody:-1
 could~ someone:-5
 could~ the:-8
 could~ you:-1
 council:-4
 counter:4
 countri:-6
 country:4
 country~ the:-3
 county:-4
 count~ in:-2
 count~ it:6
 count~ the:-2
 count~ with:6
 course:-6
 course~ i:-4
 course~ in:-2
 cousin:-2
 cousin~ so:1
 cover:-5
 cover~ cut:-1
 cover~ it:-5
 cover~ with:-6
 cow:1
 cows:-8
 cp:-4
 crack:-3
 crackling:1
 crack~ along:-6
 crack~ on:-6
 craft:-1
 crate:-9
 creamy:-6
 cried:-10
 crisp:-5
 crisp~ tube:-4
 crock:-2
 crockpot:-3
 cross:-1
 cross~ out:-1
 crumb:-1
 crumbl:-5
 crumble:-6
 crumb~ and:5
 crumb~ at:3
 crush:-6
 crust:8
 crystal:-5
 cubes:-7
 cubes~ and:-4
 cubes~ of:1
 cubes~ the:-6
 cubes~w:-5
 cup:2
 cupboard~ and:3
 cupcake:-8
 cups:-4
 cup~ and:-8
 cup~ weigh:-6
 cup~ with:-5
 cur:-6
 cure:-8
 cured:-6
 cures:1
 cure~ ::-2
 cure~ for:-4
 cure~ till:-3
 cure~ until:-1
 cure~t:-1
 curry:-5
 custard:-7
 customer:-9
 cuts:-7
 cutt:-5
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
 cut~ them:-2
 cut~ too:-5
 cut~ with:-5
 cut~0:-6
 cut~b:-4
 cut~t:-2
 c~ ::-3
 c~ at:-3
 c~0:-7
 d:-5
 dad:-3
 dads:-3
 dads~t:-2
 daft:3
 dag:-2
 dairy:5
 damp:4
 dare:3
 dark:-10
 das:-8
 date:-6
 dates:-6
 date~ ::-2
 date~t:-6
 daughter':-10
 daughter:3
 daughter~ wants:-2
 daughter~ who:-7
 day:-4
 days:-6
 day~ and:-3
 day~ at:-5
 day~ before:4
 day~ i:-4
 day~ it:-4
 day~ so:3
 day~ then:-4
 day~0:-6
 day~t:-5
 de:-5
 dead:-2
 deal:7
 dear:3
 dear~ all:3
 dear~ group:-4
 december:-3
 decent:-5
 decimal:-7
 deep:1
 deer:-3
 deer~ camp:-3
 degre:-7
 demineralis:-8
 demonstration:1
 dent:-8
 deodoris:-9
 diary:-4
 dictat:2
 dictat~ this:-4
 did:3
 didnt:4
 didnt~ weigh:6
 did~ and:1
 did~ for:-2
 did~ i:-6
 did~ in:-9
 did~ not:1
 did~ the:5
 did~ this:-1
 did~ weigh:-5
 did~ you:-8
 did~0:1
 did~=:-3
 died:2
 died~ at:4
 difference:-6
 different:-7
 digital:-7
 dilut:-3
 dilute:-6
 dilution:5
 dinner:4
 disaster:-9
 discount:2
 dish~ soap:6
 display:4
 display~ said:-7
 dissolv:3
 dissolve:3
 dissolve~ it:-7
 dissolve~ the:4
 dissolve~=:-7
 dissolv~ in:1
 dissolv~ together:-1
 dissolv~<:4
 dissolv~=:-4
 do:-4
 doctor:-7
 does:-5
 doesnt:-2
 doesnt~ mind:-6
 doesnt~ smell:-5
 does~ anybody:-4
 does~ anyone:2
 does~ her:-4
 does~ it:-4
 does~ my:-6
 does~ not:-3
 does~ the:-4
 does~ this:-1
 does~%:-8
 does~F:-6
 does~b:-5
 does~w:2
 dog:1
 dogs:-5
 dog~ got:9
 doing:2
 doing~ it:-4
 doing~ the:1
 doing~ this:3
 done:-5
 done~ and:1
 done~ i:-6
 done~ it:1
 dont:-3
 dont~ ask:5
 dont~ be:-4
 dont~ care:2
 dont~ dare:-7
 dont~ get:5
 dont~ have:-5
 dont~ know:6
 dont~ laugh:-1
 dont~ panic:-7
 dont~ trust:-5
 dont~ want:-8
 door:2
 doorbell:3
 doors:-8
 dos:-2
 dose:8
 dose~ of:8
 dot:-7
 doubl:9
 double:-7
 double~ boiler:-6
 double~ check:-4
 doubl~ the:-1
 doubt:-7
 down:2
 down~ and:-4
 down~ by:5
 down~ from:1
 down~ the:-2
 down~ to:1
 down~ with:5
 do~ ?:-5
 do~ a:1
 do~ for:-6
 do~ in:-9
 do~ it:-2
 do~ not:-5
 do~ the:-5
 do~ this:-6
 do~ we:-4
 do~ with:-6
 do~ you:-3
 do~F:-3
 draft:-7
 drag:-7
 drain:4
 drama:-5
 drank:4
 draw:1
 drawer:-3
 drawer~ lined:-2
 drawn:3
 dream:-5
 dress:-10
 drew:-7
 dried:-2
 drill:-4
 drink:-5
 drip:-8
 drips:-3
 drop:-1
 dropp:6
 dropp~ below:-4
 drops:-1
 drops~ of:3
 drop~ of:3
 drop~ the:-6
 drop~ to:-2
 drove:-2
 drown:-6
 drum:6
 dry:2
 dry~ cup:-3
 dry~ hands:5
 dry~ skin:-7
 dry~ so:1
 dry~ until:3
 dual:1
 dual~A:1
 duck:-6
 dump:-5
 dur:5
 dust:4
 e:-5
 each:-2
 each~ and:-5
 each~ of:-3
 each~ time:-7
 earlier:-4
 early:-9
 easier:-7
 easter:-5
 easy:-7
 eat:-1
 eats:-5
 eczema:2
 edge:-3
 edges:-1
 edit:5
 edition:2
 edit~ ::1
 either:7
 elbow:-6
 else:1
 else~ no:-3
 empti:3
 empty:-2
 empty~ and:-1
 emulsion:-5
 enamel:-11
 enamel~ pot:-6
 end:4
 ended:8
 ended~ up:-2
 ends:-10
 end~ ?:-5
 end~ after:1
 end~ and:5
 end~ is:-12
 end~ it:7
 end~ of:-2
 end~ piece:-7
 end~ up:-10
 english:-4
 english~ i:-5
 english~ is:-5
 enough:-2
 enough~ ?:-4
 enough~ for:-4
 enough~ or:-6
 enough~ to:-4
 enough~A:-3
 entire:-4
 entry:-4
 envelope:-5
 equal~ parts:1
 equal~ weight:-5
 error:-4
 eur:-4
 euro:-6
 even:-7
 evening:-4
 even~ all:-4
 even~ class:-5
 even~ in:-4
 ever:-10
 every:-3
 everybody:-9
 everyday:-4
 everyday~ bar:-3
 everyone:-6
 everyone~ who:3
 everyth:4
 everyth~ ::-3
 everyth~ and:-6
 everyth~ at:1
 everyth~ else:2
 everyth~ in:-5
 everyth~ is:2
 everyth~ on:1
 everyth~ was:-3
 everyth~ weigh:-10
 everywhere:-4
 every~ one:4
 every~ time:1
 every~t:-6
 ex:-5
 exact:-7
 exact~ as:-10
 exact~ like:1
 exam:-6
 except:6
 except~ for:-2
 except~ that:-1
 except~ the:2
 exces:3
 excuse:-6
 excuse~ my:-2
 excuse~ the:-5
 expect:-5
 expensive:-3
 explain:-1
 export:-4
 export~ from:-3
 extra:6
 extra~ fat:7
 extra~ virgin:-4
 extra~A:-3
 extra~F:-4
 eye:6
 eyebrow:-5
 eyes:-3
 eye~ over:-2
 f:-6
 face:-7
 faces:-7
 face~ bar:-5
 facial:2
 facial~ bar:-5
 fact:6
 faded:-8
 fades:-5
 fail:2
 fails:-4
 fail~ me:-3
 faint:-6
 faint~ of:-4
 fair:4
 fair~ ::-4
 falls:-5
 false:-7
 false~ trace:-7
 fami:-2
 famili:-6
 fan:-4
 fancy:5
 far:-4
 farm~ shop:4
 far~ as:-4
 far~ too:2
 fast:-8
 faster:2
 faster~ than:-5
 fat:4
 father:-1
 father~ in:3
 fats:1
 fats~ ::-4
 fats~ ?:-4
 fats~ and:-2
 fats~ are:-3
 fats~ at:-5
 fats~ in:-8
 fats~ is:-7
 fats~ melt:-2
 fats~ or:-5
 fats~ were:-6
 fat~ ::1
 fat~ ?:-7
 fat~ and:1
 fat~ g:-4
 fat~ grams:-4
 fat~ in:-5
 fat~ is:2
 fat~ left:4
 fat~ of:-6
 fat~ so:-1
 fat~ was:-7
 fault:-6
 favour:1
 february:-8
 feed:1
 feed~ store:3
 feel:2
 feels:-8
 feels~ a:-5
 feels~ like:-7
 feel~ the:-1
 feet:1
 fell:-3
 fellow:-1
 fell~ in:1
 felt:-2
 felt~ like:-2
 fence:-6
 fete:3
 few:6
 few~ drops:-8
 field:-9
 fifth:2
 fifth~ of:7
 fig:-4
 fight:3
 figur:3
 figure:7
 file:4
 files:-3
 fill:3
 fills:-5
 fills~ my:-7
 fills~ the:-1
 fills~0:-4
 fill~ in:-5
 fill~ it:-2
 fill~ the:3
 fill~ to:3
 fill~ up:5
 fill~0:1
 film:-6
 film~ on:-4
 filter:3
 final:-1
 find:8
 finds:-5
 find~ the:3
 find~F:2
 fine:-5
 finer:-5
 fine~ ?:-4
 fine~ and:-2
 fine~ but:-4
 fine~ for:-6
 fine~ or:-6
 finger:-1
 finish:2
 finish~ paste:-8
 finish~ the:1
 finish~ with:6
 fire:-8
 firm:6
 firmer:-1
 first:-4
 first~ and:-3
 first~ attempt:-8
 first~ batch:1
 first~ ever:-6
 first~ go:-2
 first~ hour:-2
 first~ i:-1
 first~ in:-3
 first~ it:-3
 first~ lot:5
 first~ one:-2
 first~ so:7
 first~ soap:-3
 first~ the:-3
 first~ then:-9
 first~ time:3
 first~ timer:-2
 first~ to:-5
 first~ try:-4
 first~ went:-2
 first~0:2
 first~t:2
 fish:2
 fish~ out:-1
 fit:-3
 fits:-1
 fits~ the:3
 fit~ the:3
 fixed:-9
 fizz:-4
 flak:5
 flake:6
 flame:-4
 flat:1
 flatmate:-1
 flat~ and:-6
 flat~ boil:2
 flat~ for:1
 flat~ in:-7
 float:-4
 float~ an:-7
 floor:3
 floor~ and:-5
 fluid:4
 fluid~ ounc:7
 foam:-5
 foams:-8
 foam~ from:-6
 foam~ over:6
 foil:1
 fold:-2
 folder:-6
 fold~ in:2
 folk:-8
 folks:-5
 follow:-1
 forever:-7
 forever~ to:-4
 forget:-1
 forgett:-1
 forget~ the:-1
 forgiv:-9
 forgive:-5
 forgot:6
 forgotten:4
 forgot~ it:2
 forgot~ to:3
 form:-8
 formula:-3
 forum:-9
 for~ a:-3
 for~ about:2
 for~ after:3
 for~ ages:-1
 for~ all:-1
 for~ an:-4
 for~ any:-6
 for~ babi:-8
 for~ baby:4
 for~ both:5
 for~ candl:-7
 for~ christma:-3
 for~ days:-4
 for~ each:3
 for~ every:-7
 for~ faces:-6
 for~ floor:-2
 for~ free:3
 for~ fry:3
 for~ gram:4
 for~ half:5
 for~ hands:1
 for~ hardnes:1
 for~ her:3
 for~ his:-5
 for~ it:-6
 for~ laundry:3
 for~ looks:-5
 for~ luck:4
 for~ me:2
 for~ my:2
 for~ next:-4
 for~ no:4
 for~ noth:-6
 for~ once:7
 for~ one:3
 for~ our:-2
 for~ people:-4
 for~ read:-4
 for~ salad:-10
 for~ saturday:3
 for~ shav:-5
 for~ skin:-8
 for~ soap:-9
 for~ some:-8
 for~ test:-6
 for~ that:-1
 for~ the:2
 for~ these:2
 for~ this:-3
 for~ those:-4
 for~ today:3
 for~ us:2
 for~ wash:-2
 for~ what:5
 for~ word:-6
 for~ years:-3
 for~ you:-10
 for~ your:2
 for~%:6
 for~0:-6
 for~=:-5
 for~A:-2
 for~B:-2
 for~F:1
 for~L:-5
 for~N:-6
 for~S:-9
 for~T:-5
 for~W:-2
 for~X:2
 for~b:-2
 for~d:-10
 for~e:-7
 for~t:-7
 for~v:-4
 found:7
 found~ a:2
 found~ in:-5
 found~ it:5
 found~ on:2
 found~ out:2
 found~ the:6
 found~ this:-10
 fourth:-7
 fractionat:11
 fram:-9
 free:3
 freeze:-5
 freezer:-2
 freezer~ for:-10
 freezer~ in:-3
 freezer~ paper:-4
 freeze~ the:-6
 free~ lol:-5
 fresh:-2
 friday:2
 friday~ and:-4
 fridge:-2
 fridge~ for:-6
 fridge~ overnight:-7
 fried:1
 friend':-5
 friend:-6
 friend~ says:-8
 friend~ who:5
 frighten:-7
 from:1
 from~ ::-7
 from~ a:2
 from~ an:-4
 from~ another:-1
 from~ before:-2
 from~ christma:-1
 from~ graz:-3
 from~ it:-4
 from~ krakow:-3
 from~ last:-6
 from~ me:-4
 from~ memory:-2
 from~ my:-4
 from~ our:1
 from~ portugal:1
 from~ sunday:9
 from~ that:3
 from~ there:7
 from~ this:-1
 from~ what:-6
 from~ work:2
 from~0:-5
 from~=:-1
 from~F:-4
 from~L:-6
 from~t:-9
 from~w:-8
 front:-1
 front~ of:-6
 froze:4
 frozen:-1
 frozen~ cubes:-3
 frozen~ in:3
 frozen~ to:-5
 frozen~w:-8
 froze~ it:2
 fruit:-5
 fry:5
 fryer:4
 full:7
 fully:1
 full~ bottle:-6
 full~ of:-4
 fume:-7
 fumes:-9
 fun:-10
 funnel:2
 funny:-4
 further:6
 fwd:-2
 fwd~ ::-3
 f~0:-7
 g:-4
 garage:-5
 garden:-6
 gas:-6
 gate:-9
 gave:2
 gave~ me:6
 gave~ out:8
 gave~ the:1
 gave~ up:4
 gave~ us:1
 gave~0:-9
 gel:-2
 gell:-3
 gel~ ::-4
 gel~ at:-1
 gel~ phase:-7
 generou:6
 gent:-9
 gentle:-3
 gentler:6
 german:-4
 get:-3
 gets:-6
 gets~ a:2
 gets~ the:-4
 gets~0:-4
 gett:-8
 get~ a:1
 get~ it:3
 get~ the:1
 get~ to:-7
 get~0:-6
 get~F:4
 ghana:-7
 gift:-6
 gifts:-4
 girl:-2
 girls:-7
 giv:-9
 give:-3
 given:-2
 gives:-9
 gives~ me:-3
 gives~ the:-6
 gives~%:6
 gives~0:-7
 give~ it:-8
 give~ me:1
 give~ or:4
 give~ the:-4
 give~ to:-3
 glad:-2
 glass:-1
 glass~ and:6
 glass~ of:6
 glossy:-3
 glov:-9
 glov~ and:-6
 glov~ on:-5
 glug:7
 glug~ of:4
 go:-2
 goat:6
 goats:-3
 goats~ are:2
 goes:-6
 goes~ away:-3
 goes~ grainy:-3
 goes~ in:-2
 goes~ into:-5
 goes~ off:-6
 goes~ on:-9
 goes~ up:-8
 goggl:-8
 goggl~ and:-5
 goggl~ on:-3
 going:4
 going~ by:-5
 going~ in:4
 going~ to:-1
 gone:4
 gone~ after:-6
 gone~ by:-10
 gone~ from:-2
 gone~ in:1
 gone~ to:1
 gone~ up:-4
 gonna:3
 good:-2
 good~ ?:-3
 good~ bit:9
 good~ day:-4
 good~ even:-3
 good~ for:-7
 good~ glug:6
 good~ i:4
 good~ morn:-4
 good~ one:-7
 good~ or:-2
 good~ pot:-1
 good~ to:-2
 good~F:-9
 good~t:-5
 goose:-3
 got:5
 got~ a:-4
 got~ in:-1
 got~ into:5
 got~ it:-3
 got~ my:-6
 got~ round:5
 got~ swapp:1
 got~ the:-4
 got~ to:6
 got~ too:2
 got~ wet:1
 got~0:-8
 got~=:-5
 got~S:-4
 got~b:4
 go~ ?:-3
 go~ at:4
 go~ by:-3
 go~ clear:3
 go~ for:1
 go~ into:-8
 go~ on:-5
 go~ out:4
 go~ over:-4
 go~ rancid:-5
 go~ to:-4
 go~ up:4
 go~ with:7
 go~ wrong:-4
 grabb:7
 grade:3
 grain:-8
 grainy:-5
 gram:-2
 gramm:-8
 grams:-1
 grams~ ::-7
 grams~ and:-1
 grams~ cost:-2
 grams~ i:4
 grams~ of:2
 grams~ so:-9
 grams~A:-4
 grams~e:-5
 gram~ for:4
 gran:1
 grand:-6
 grandad:5
 granddad:1
 granddaughter:-4
 grandmother:-7
 grandmother~ had:-3
 grandmother~ in:-7
 grandpa:2
 grandson:4
 granny:-2
 grans:-6
 grate:-3
 grateful:-1
 grate~ the:-7
 gravy:-1
 graz:-6
 greas:-2
 grease:-2
 greasy:1
 great:-1
 great~ aunt:-3
 green:-3
 green~ and:5
 green~ one:-2
 greeting:-5
 greeting~ from:-4
 grey:-1
 grind:-5
 grind~ the:-2
 grocer:-5
 ground:-9
 group:3
 group~ ::-4
 group~ of:-5
 grown:3
 guess:10
 guess~ the:-3
 guest:-7
 guild:-9
 g~ ::-6
 g~ cost:-2
 g~ oz:-3
 g~e:-8
 ha:2
 habit:3
 had:3
 hadnt:6
 had~ a:-6
 had~ already:9
 had~ been:4
 had~ come:3
 had~ cool:-4
 had~ dropp:-3
 had~ gone:8
 had~ in:-3
 had~ it:4
 had~ melt:3
 had~ no:-2
 had~ only:-2
 had~ set:1
 had~ some:-2
 had~ that:-1
 had~ the:-3
 had~ to:-6
 had~0:-4
 had~<:-6
 had~=:1
 had~>:-9
 had~F:4
 had~N:-5
 had~X:4
 had~b:6
 hair:-1
 half:5
 halfway:-5
 halfway~ through:4
 half~ a:4
 half~ and:-4
 half~ as:4
 half~ batch:5
 half~ is:4
 half~ of:1
 half~ size:2
 half~ the:-1
 half~A:-5
 half~F:-1
 half~I:-4
 half~W:-8
 hall:-7
 hallo:-4
 hallo~ my:-2
 halv:7
 halve:-1
 halv~ it:-5
 hammer:4
 hand:-3
 handful:1
 handful~ of:-5
 handle:-2
 handout~0:-5
 hands:-1
 hands~ ?:-4
 hands~ after:-3
 hands~ are:3
 handwrit:3
 handy:-7
 hand~ in:-5
 hand~ on:4
 hand~ out:-9
 hand~ soap:-5
 hand~ warm:-1
 hand~ with:-5
 hang:6
 hangs:-6
 happen:1
 happy:3
 happy~ with:-9
 hard:-5
 harden:-7
 harder:-3
 harder~ bar:-2
 hardnes:-6
 hardware:-2
 hardware~ store:-5
 hard~ after:-2
 hard~ and:-3
 hard~ any:-7
 hard~ as:-7
 hard~ smell:-7
 hard~ to:5
 hard~W:-9
 harm:-6
 harsh:-8
 has:2
 hasnt:-7
 has~ a:1
 has~ anyone:-9
 has~ become:-2
 has~ been:-2
 has~ cool:-4
 has~ done:-4
 has~ dry:1
 has~ gone:-1
 has~ it:3
 has~ made:-4
 has~ moved:-7
 has~ no:-3
 has~ the:4
 has~ to:-4
 has~=:-5
 has~F:7
 has~N:-6
 hate:-5
 hates:-1
 hav:-2
 have:-2
 havent:4
 have~ a:-9
 have~ asked:3
 have~ done:-3
 have~ enough:-4
 have~ for:1
 have~ gone:4
 have~ had:2
 have~ i:-6
 have~ it:3
 have~ made:-5
 have~ my:-7
 have~ never:-5
 have~ no:-3
 have~ not:-8
 have~ put:5
 have~ the:3
 have~ to:-10
 have~ used:-3
 have~0:-3
 have~=:-5
 have~>:-4
 have~F:4
 hdpe:-7
 he:-3
 head:-2
 heap:9
 heap~ spoon:1
 hear:-2
 heard:2
 heart:-3
 heat:-12
 heats:-6
 heats~ up:-6
 heat~ and:-2
 heat~ i:-3
 heat~ off:-3
 heat~ the:-4
 heaven:-6
 heavy:2
 heavy~ ?:-6
 heavy~ or:-5
 hed:3
 height:-6
 held:10
 held~ back:2
 held~ the:1
 hell:-5
 hello:-5
 hello~ from:-2
 hello~ i:-3
 help:5
 helps:-1
 help~ with:1
 hence:-4
 hence~ the:-11
 hens:-8
 her:-3
 heres:-7
 heres~ my:-1
 heres~ the:-5
 heres~ what:-7
 here~ ::-2
 here~ and:-3
 here~ are:-1
 here~ goes:-3
 here~ i:4
 here~ in:-6
 here~ is:3
 here~ it:-7
 here~ so:-6
 here~ we:-8
 hers:-11
 herself:-7
 hers~ and:-6
 hers~ is:-3
 hers~ with:-8
 her~ hands:-4
 her~ life:-7
 her~ soap:-5
 her~A:-6
 her~F:-12
 hes:3
 hey:-5
 he~ also:-8
 he~ has:-4
 he~ is:-9
 he~ says:4
 he~ was:-7
 hi:-1
 hid:-10
 hide:-6
 high:-6
 him:-5
 himself:4
 his:-6
 hiss:2
 his~A:-6
 hit:2
 hit~ it:-5
 hive:-6
 hives:-6
 hiya:1
 hi~ all:1
 hi~ everyone:-3
 hmm:4
 hob:-1
 hola:-2
 holds:-5
 holds~ a:2
 holds~0:-3
 holds~v:-6
 holds~w:-9
 hold~ ?:-3
 hold~ back:3
 hold~ the:2
 hold~ up:-4
 hole:-3
 holes:-1
 holiday:-10
 home:1
 home~ and:5
 honest:5
 hood:-8
 hope:1
 hope~ it:-5
 hope~ the:-4
 hot:-8
 hotter:-9
 hotter~ than:-4
 hot~ ?:-1
 hot~ or:-5
 hour:-2
 hour~ and:-5
 hour~ then:-3
 hour~ until:-1
 house:4
 house~ smell:-5
 how:2
 hows:-6
 how~ do:2
 how~ does:-4
 how~ i:3
 how~ it:-2
 how~ long:-7
 how~ many:-6
 how~ much:9
 how~ my:-8
 how~ the:-9
 how~ to:-10
 how~ we:-7
 hp:-4
 hp~ in:-3
 hubby:2
 huge:4
 humidity:-2
 humidity~%:-4
 hurry:-4
 hurt:-2
 hurts:-4
 husband:2
 husband~ says:-5
 husband~ think:-10
 husband~ who:-7
 hydrogenat:1
 i'd:1
 i'd~ already:5
 i'd~ be:-7
 i'd~ been:-1
 i'd~ do:-7
 i'd~ guess:9
 i'd~ have:-8
 i'd~ like:6
 i'd~ love:-4
 i'd~ never:-6
 i'd~ put:3
 i'd~ rather:-1
 i'd~ read:5
 i'd~ say:6
 i'd~ use:-6
 i'd~ weigh:2
 i:3
 idea:-1
 idea~ about:1
 idea~ which:5
 idk:6
 ie:5
 ie~=:-7
 if:-3
 if~ anyone:-2
 if~ i:2
 if~ im:3
 if~ it:4
 if~ its:-2
 if~ my:1
 if~ somebody:-6
 if~ someone:1
 if~ that:4
 if~ the:-4
 if~ ther:-4
 if~ this:4
 if~ ur:-7
 if~ you:-5
 if~ your:-7
 if~ youre:-8
 if~ yours:-4
 if~ youve:-7
 if~A:-4
 if~F:-8
 if~b:-5
 ignore:7
 ignore~ the:8
 ill~ do:-5
 im:2
 impatient:-6
 im~ a:-3
 im~ after:7
 im~ aim:2
 im~ at:-8
 im~ doing:-3
 im~ going:1
 im~ in:-8
 im~ mak:1
 im~ nervou:-8
 im~ not:1
 im~ on:2
 im~ told:-4
 im~ using:5
 im~0:-4
 in:1
 inch:2
 incl:-1
 includ:5
 includ~ the:8
 individual:-7
 individual~ mould:-7
 infus:4
 infus~ with:4
 ingredient:-4
 ingredient~ amount:-3
 ingredient~ g:-3
 ingredient~ grams:-4
 ingredient~ oz:-6
 ingredient~ weight:-3
 inside:-4
 insist:6
 instant:-3
 instead:3
 instruction:1
 insulate:-7
 internet:-3
 into~ a:-7
 into~ cubes:-7
 into~ it:1
 into~ mould:-4
 into~ oils:-3
 into~ one:-9
 into~ that:4
 into~ the:2
 into~ this:6
 into~0:-4
 into~=:-6
 into~W:-6
 into~b:1
 into~v:-3
 in~ ::2
 in~ ?:4
 in~ a:-2
 in~ about:-2
 in~ after:5
 in~ all:-9
 in~ an:-5
 in~ and:-2
 in~ another:6
 in~ april:-6
 in~ as:2
 in~ at:3
 in~ august:3
 in~ batch:-4
 in~ before:7
 in~ between:-7
 in~ blend:-8
 in~ burst:-2
 in~ by:1
 in~ case:-10
 in~ class:1
 in~ cold:-6
 in~ cubes:-7
 in~ dag:-2
 in~ each:-4
 in~ every:-4
 in~ fact:4
 in~ first:-6
 in~ for:9
 in~ front:-7
 in~ g:1
 in~ grams:-9
 in~ half:2
 in~ her:-9
 in~ hers:-8
 in~ his:-10
 in~ hot:-6
 in~ i:5
 in~ it:2
 in~ its:7
 in~ january:-7
 in~ july:-6
 in~ june:-7
 in~ last:-1
 in~ law:-2
 in~ laws:-4
 in~ march:-9
 in~ maybe:3
 in~ mould:-5
 in~ my:-3
 in~ no:-5
 in~ november:-5
 in~ october:-1
 in~ ohio:-4
 in~ on:-5
 in~ once:9
 in~ one:3
 in~ or:4
 in~ order:-5
 in~ our:4
 in~ oz:-1
 in~ parts:-4
 in~ place:2
 in~ plus:-4
 in~ red:1
 in~ short:-5
 in~ slow:-2
 in~ small:-6
 in~ so:3
 in~ spr:-8
 in~ step:-6
 in~ steps:5
 in~ summer:-6
 in~ that:3
 in~ the:-2
 in~ there:5
 in~ this:1
 in~ time:1
 in~ tiny:6
 in~ to:-2
 in~ too:2
 in~ total:-6
 in~ truth:3
 in~ under:-3
 in~ week:-3
 in~ went:6
 in~ what:-9
 in~ when:-5
 in~ winter:-3
 in~ with:5
 in~ your:-1
 in~0:-7
 in~<:2
 in~=:-5
 in~>:-3
 in~F:-3
 in~I:-6
 in~L:2
 in~N:7
 in~W:-5
 in~b:-8
 in~e:3
 in~l:-1
 in~r:-6
 in~t:-6
 in~v:-9
 in~w:1
 ish:-6
 isnt:6
 isnt~ in:3
 isnt~ it:5
 issue:-2
 is~ a:2
 is~ about:-7
 is~ actual:4
 is~ all:-2
 is~ already:3
 is~ alway:-1
 is~ an:4
 is~ and:-6
 is~ as:-1
 is~ at:-5
 is~ below:-4
 is~ better:1
 is~ cheap:-6
 is~ clear:-4
 is~ correct:-8
 is~ dry:5
 is~ enough:-5
 is~ exact:-7
 is~ fine:-11
 is~ finish:2
 is~ for:-3
 is~ going:4
 is~ gone:-5
 is~ good:-9
 is~ grams:2
 is~ half:1
 is~ hard:-2
 is~ her:-3
 is~ hot:-5
 is~ how:-1
 is~ in:2
 is~ it:-3
 is~ just:-9
 is~ left:-2
 is~ like:-3
 is~ love:-3
 is~ meant:-3
 is~ mine:-10
 is~ more:-2
 is~ my:-1
 is~ near:-7
 is~ no:-6
 is~ normal:-7
 is~ not:-4
 is~ noth:-2
 is~ now:8
 is~ off:3
 is~ oil:2
 is~ ok:-7
 is~ on:2
 is~ one:3
 is~ only:-10
 is~ our:-6
 is~ out:1
 is~ over:2
 is~ plenty:1
 is~ real:8
 is~ safe:-3
 is~ she:-2
 is~ small:-4
 is~ so:-1
 is~ sold:3
 is~ step:-2
 is~ still:-1
 is~ technical:7
 is~ that:-3
 is~ the:-3
 is~ there:-3
 is~ thick:-5
 is~ this:-8
 is~ to:1
 is~ under:-3
 is~ weigh:-3
 is~ what:3
 is~ where:-9
 is~ whether:-7
 is~ why:-8
 is~ with:10
 is~ worth:-6
 is~ written:-1
 is~ wrong:-7
 is~0:5
 is~<:-5
 is~=:-5
 is~>:-6
 is~A:2
 is~F:5
 is~L:3
 is~N:8
 is~S:2
 is~T:-6
 is~b:2
 is~d:-2
 is~e:-7
 is~r:4
 is~t:-8
 is~v:-1
 is~w:-1
 it:2
 itch:-2
 item:-3
 item~ grams:-3
 item~ qty:-1
 itll:-3
 itll~ be:1
 its:1
 itself:-5
 itself~ off:-2
 its~ a:2
 its~ about:-6
 its~ all:-3
 its~ as:-8
 its~ been:-6
 its~ clear:-5
 its~ cook:5
 its~ date:-2
 its~ fine:-7
 its~ for:7
 its~ from:6
 its~ gone:1
 its~ hot:-5
 its~ in:-3
 its~ just:-6
 its~ made:4
 its~ meant:-1
 its~ my:2
 its~ not:-3
 its~ on:-8
 its~ only:-3
 its~ own:-3
 its~ place:5
 its~ ready:-4
 its~ sitt:-5
 its~ soap:-1
 its~ still:1
 its~ the:-2
 its~ time:-5
 its~ too:-1
 its~ weight:-6
 its~ what:5
 its~0:7
 its~=:-5
 its~A:5
 its~F:2
 its~N:6
 its~b:-4
 its~d:-5
 its~l:2
 it~ ::-7
 it~ ?:-2
 it~ a:2
 it~ about:-6
 it~ add:-4
 it~ after:-2
 it~ again:3
 it~ alone:-8
 it~ already:3
 it~ and:-2
 it~ another:3
 it~ anyway:-11
 it~ as:-3
 it~ away:-5
 it~ back:-1
 it~ bad:7
 it~ be:3
 it~ because:4
 it~ before:-5
 it~ behav:-2
 it~ bit:6
 it~ but:-5
 it~ can:-3
 it~ check:-8
 it~ clear:-6
 it~ climb:-3
 it~ come:-4
 it~ comes:3
 it~ cooks:-4
 it~ cool:2
 it~ cools:-6
 it~ correct:-4
 it~ cost:-5
 it~ crack:-3
 it~ crumbl:-1
 it~ cut:-4
 it~ did:-5
 it~ didnt:-3
 it~ do:-2
 it~ does:1
 it~ doesnt:1
 it~ down:2
 it~ dried:3
 it~ drop:-2
 it~ enough:-3
 it~ every:-6
 it~ exact:-8
 it~ first:1
 it~ fits:-6
 it~ flat:-7
 it~ foam:3
 it~ for:-1
 it~ from:1
 it~ gets:-4
 it~ gives:2
 it~ go:-5
 it~ goes:2
 it~ good:-5
 it~ got:2
 it~ hard:-4
 it~ has:-1
 it~ heats:-6
 it~ here:-3
 it~ hold:-1
 it~ holds:-4
 it~ i:-1
 it~ if:-8
 it~ in:-1
 it~ into:-11
 it~ is:3
 it~ it:2
 it~ its:-5
 it~ last:-2
 it~ lasts:-5
 it~ lather:-8
 it~ like:-6
 it~ look:7
 it~ looks:-6
 it~ makes:2
 it~ matter:2
 it~ may:-4
 it~ melts:-2
 it~ mild:-5
 it~ moved:7
 it~ needs:-4
 it~ never:-2
 it~ next:-3
 it~ no:4
 it~ now:-8
 it~ off:4
 it~ ok:-5
 it~ on:-1
 it~ once:-7
 it~ or:-6
 it~ outside:-5
 it~ past:-8
 it~ plus:-3
 it~ real:4
 it~ right:-1
 it~ safe:1
 it~ said:7
 it~ sat:1
 it~ says:3
 it~ seiz:3
 it~ set:3
 it~ sets:-4
 it~ should:-3
 it~ since:-2
 it~ smell:-1
 it~ stand:-1
 it~ stay:5
 it~ stays:-1
 it~ still:-7
 it~ stink:-7
 it~ sweat:-5
 it~ takes:-6
 it~ that:-1
 it~ the:-5
 it~ then:-2
 it~ there:-7
 it~ thicken:3
 it~ this:-1
 it~ through:-7
 it~ till:1
 it~ times:-1
 it~ to:3
 it~ today:-3
 it~ too:1
 it~ took:-6
 it~ trac:-2
 it~ turn:-3
 it~ turns:1
 it~ twice:2
 it~ under:-6
 it~ until:-5
 it~ up:1
 it~ wants:-5
 it~ was:3
 it~ weigh:-3
 it~ went:1
 it~ when:5
 it~ will:-5
 it~ with:-4
 it~ without:4
 it~ wont:-8
 it~ work:-2
 it~ would:-3
 it~ wouldnt:4
 it~ wrong:-5
 it~ zapp:2
 it~ zaps:-3
 it~%:1
 it~0:2
 it~=:-5
 it~A:-2
 it~F:-2
 it~S:-4
 it~b:5
 it~t:-7
 ive:-2
 ive~ a:3
 ive~ been:-4
 ive~ bought:4
 ive~ come:-3
 ive~ done:-5
 ive~ gone:7
 ive~ had:-6
 ive~ just:2
 ive~ made:-5
 ive~ never:-6
 ive~ no:-2
 ive~ not:-5
 ive~ only:2
 ive~ put:1
 ive~ read:-6
 ive~ seen:-7
 ive~ since:6
 ive~ tried:-6
 ive~ used:-1
 ive~ weigh:-4
 ivory:-5
 i~ ?:-7
 i~ add:-5
 i~ added:4
 i~ alway:-4
 i~ am:5
 i~ ask:3
 i~ began:-7
 i~ believe:2
 i~ blame:-7
 i~ boil:-1
 i~ bought:-11
 i~ bring:-5
 i~ buy:-2
 i~ call:-1
 i~ can:-9
 i~ cant:-3
 i~ carri:11
 i~ caught:2
 i~ chang:-6
 i~ check:-8
 i~ chuck:8
 i~ commit:-1
 i~ cook:-1
 i~ copi:3
 i~ copy:-6
 i~ couldnt:1
 i~ count:-4
 i~ did:3
 i~ didnt:1
 i~ dilut:-7
 i~ dilute:-5
 i~ dissolv:-1
 i~ dissolve:3
 i~ do:-7
 i~ dont:4
 i~ doubl:7
 i~ drain:10
 i~ dropp:1
 i~ empti:11
 i~ ended:-5
 i~ ever:-7
 i~ fill:11
 i~ final:-8
 i~ find:-8
 i~ finish:-2
 i~ first:-5
 i~ fish:7
 i~ fold:-4
 i~ forgot:-1
 i~ found:-2
 i~ freeze:1
 i~ froze:-3
 i~ gave:-2
 i~ get:-5
 i~ give:-3
 i~ go:1
 i~ got:-2
 i~ guess:10
 i~ had:-3
 i~ hadnt:4
 i~ halv:4
 i~ hand:-3
 i~ hate:-4
 i~ havent:-1
 i~ held:4
 i~ hit:-9
 i~ honest:11
 i~ hope:-2
 i~ just:3
 i~ keep:-2
 i~ kept:3
 i~ knock:4
 i~ know:-5
 i~ learn:-6
 i~ leave:3
 i~ left:9
 i~ let:3
 i~ like:-4
 i~ look:2
 i~ lost:4
 i~ made:-2
 i~ make:-8
 i~ may:1
 i~ mean:-2
 i~ meant:-7
 i~ measur:-3
 i~ mess:-5
 i~ misread:2
 i~ mix:-6
 i~ mixed:4
 i~ must:2
 i~ near:-5
 i~ never:3
 i~ notic:9
 i~ ok:1
 i~ once:-11
 i~ open:-1
 i~ overdo:-4
 i~ paid:-4
 i~ panick:-2
 i~ plan:-5
 i~ plann:-4
 i~ pour:2
 i~ press:-8
 i~ print:-6
 i~ promis:2
 i~ put:3
 i~ ran:-2
 i~ read:4
 i~ real:-3
 i~ realis:2
 i~ reckon:-1
 i~ remember:-2
 i~ render:-2
 i~ replac:5
 i~ rins:5
 i~ round:6
 i~ run:-8
 i~ said:-8
 i~ saw:7
 i~ say:-2
 i~ scrap:8
 i~ see:5
 i~ sell:-3
 i~ set:-1
 i~ settl:-3
 i~ shook:7
 i~ short:-7
 i~ should:1
 i~ siev:-1
 i~ skipp:5
 i~ smell:2
 i~ soap:-3
 i~ split:-1
 i~ sprinkl:-4
 i~ start:1
 i~ still:-4
 i~ stir:-6
 i~ stirr:2
 i~ stood:-2
 i~ stopp:9
 i~ swapp:9
 i~ swear:2
 i~ take:-6
 i~ teach:-5
 i~ tell:-8
 i~ test:-1
 i~ think:3
 i~ thought:-2
 i~ threw:2
 i~ tipp:4
 i~ told:-2
 i~ took:3
 i~ topp:-1
 i~ translate:-4
 i~ trust:-3
 i~ turn:-4
 i~ type:2
 i~ typed:7
 i~ use:-4
 i~ used:1
 i~ usual:2
 i~ wait:-7
 i~ want:2
 i~ warm:-5
 i~ was:-6
 i~ wash:-4
 i~ wasnt:2
 i~ weigh:3
 i~ went:3
 i~ will:-7
 i~ wiped:-9
 i~ work:-7
 i~ would:2
 i~ write:-9
 i~ wrote:6
 i~K:-8
 jam:-1
 jam~ jar:1
 january:-9
 january~ and:-4
 jar:3
 jars:-9
 jars~ of:-3
 jar~ and:5
 jar~ of:7
 jar~ so:-3
 jelly:-6
 job:3
 join:2
 join~ the:4
 judge:3
 jug's:5
 jug:2
 jugs:2
 jug~ ::2
 jug~ and:3
 jug~ from:3
 jug~ in:-7
 jug~ is:-10
 jug~ of:5
 jug~ on:-8
 jug~ so:6
 jug~ to:6
 jug~ was:-4
 jug~w:1
 july:-3
 jump:5
 jumps:3
 jumps~ in:7
 june:-10
 just~ a:-2
 just~ as:-3
 just~ for:-8
 just~ the:2
 just~ want:-10
 just~ what:-6
 just~F:-4
 k:3
 keep:-7
 keeps:-8
 keeps~ it:-4
 keeps~ the:-3
 keep~ a:-5
 keep~ back:-1
 keep~ in:-6
 keep~ it:-8
 keep~ my:-9
 keep~ the:1
 keep~0:-7
 keep~<:1
 keep~t:-3
 kept:2
 kept~ back:1
 kept~ in:-5
 kept~ the:1
 kept~0:3
 kettle:8
 key:-5
 kg:2
 kg~ cost:-2
 kid:9
 kidd:-8
 kids:-3
 kill:-6
 kilo:3
 kilo~ in:-4
 kilo~ is:1
 kilo~ of:-6
 kind:-1
 kinda:2
 kind~ check:-7
 kind~ of:-1
 kind~ regard:-3
 kind~ with:4
 kiss:-4
 kitchen:1
 kitchen~ and:3
 kitchen~ bar:-6
 kitchen~ is:-2
 kitchen~ scale:5
 kitchen~ so:-4
 kitchen~ soap:-1
 kitchen~ was:-5
 knew:-6
 knife:-9
 knob:7
 knob~ of:7
 knock:3
 knock~ a:-2
 knock~ the:3
 know:3
 knows:4
 knows~ how:3
 know~ ::-5
 know~ but:-2
 know~ how:2
 know~ i:-5
 know~ if:2
 know~ is:-7
 know~ it:3
 know~ its:-4
 know~ that:4
 know~ the:-1
 know~ what:-5
 know~ whether:-4
 know~ which:3
 krakow:-2
 k~0:-10
 l:-6
 la:-5
 lab:-4
 labell:-2
 label~ ::-7
 label~ on:-7
 label~ says:6
 label~0:-8
 ladi:-4
 ladl:9
 ladle:7
 ladle~ of:4
 lads:-4
 lady:-2
 lady~ at:-4
 lady~ in:-5
 lady~ on:-4
 land:2
 last:-5
 lasts:-7
 last~ autumn:-5
 last~ batch:-8
 last~ bit:2
 last~ minute:7
 last~ month:4
 last~ night:-7
 last~ of:-7
 last~ one:-8
 last~ time:-5
 last~ week:1
 last~ weeks:4
 last~ winter:-7
 last~ year:-5
 last~ years:-2
 last~F:-7
 late:-1
 later:-3
 later~ on:-6
 late~ mother:-7
 lather:-5
 lather~ is:-2
 lather~ like:-6
 lather~ was:-4
 laugh:2
 laugh~ at:-2
 laundry:2
 laundry~ bar:-8
 laundry~ bars:-3
 laundry~ soap:-4
 law:-2
 laws:-4
 law~ who:-4
 layer:3
 la~A:-4
 lb:1
 lb~ oz:-7
 leaflet:-1
 leaflet~ from:-5
 leak:-2
 learn:-7
 learn~ from:-2
 learn~ that:1
 least:-3
 least~t:-1
 leav:-4
 leave:-4
 leave~ it:-3
 leave~ out:-8
 leave~ the:-2
 leave~ them:-2
 leave~t:-1
 leav~ a:-5
 leav~ the:-6
 leeds:3
 leftover:1
 leftover~F:-1
 left~ and:3
 left~ for:-10
 left~ from:6
 left~ it:3
 left~ of:-5
 left~ on:1
 left~ out:-2
 left~ over:-5
 left~ so:-2
 left~ the:2
 left~ to:4
 length:-4
 less:3
 lesson:-6
 less~ of:6
 less~ than:-1
 less~F:-2
 less~W:-3
 let:-1
 letter:4
 let~ cool:-1
 let~ it:-3
 let~ me:-8
 let~ the:-2
 let~ them:3
 let~ us:-7
 let~ your:-5
 level:-1
 library:-4
 library~ book:-4
 lid:-2
 lidd:-2
 lids:-5
 lid~ and:-7
 lid~ of:-6
 lid~ off:2
 lid~ on:-5
 lie:-7
 life:-3
 lift:3
 lift~ the:4
 light:2
 lighter:-6
 light~ on:2
 like:-2
 liked:-4
 likes:-4
 likes~ it:5
 likewise:1
 like~ a:-3
 like~ alway:-8
 like~ an:-7
 like~ candle:-6
 like~ cheese:-6
 like~ cold:-5
 like~ custard:-5
 like~ i:-10
 like~ in:1
 like~ it:1
 like~ mad:2
 like~ mash:-4
 like~ me:-6
 like~ my:2
 like~ noth:-3
 like~ paper:2
 like~ porridge:4
 like~ sandpaper:-6
 like~ somebody:-2
 like~ someone:-1
 like~ soup:-4
 like~ stone:-6
 like~ that:-7
 like~ the:-5
 like~ thin:-4
 like~ this:1
 like~ to:-4
 like~ wet:-2
 like~ you:-2
 like~%:1
 like~0:9
 like~F:-5
 like~L:-6
 like~S:-4
 like~U:-7
 like~X:-2
 like~t:7
 like~w:5
 limit:-7
 line:7
 lined:-7
 lined~ w:-5
 lined~ with:-2
 linen:-4
 lines:-1
 line~ ::7
 line~ a:-4
 line~ the:-4
 lip:-5
 lip~ balm:-5
 liquid:3
 liquid~ and:-2
 liquid~ hand:-3
 liquid~ soap:-1
 liquor:8
 list:2
 list~ for:-8
 list~ i:3
 list~ is:-2
 litre:3
 little:2
 little~ ?:-6
 little~A:2
 little~F:-7
 little~W:3
 live:-5
 lived:-8
 lives:-7
 lives~ in:-6
 loaf:-4
 loaf~ ::-4
 loaf~ mold:-3
 loaf~ mould:-4
 loaf~ tin:-3
 loav:-3
 local:-5
 lock:-7
 loft:-3
 log:1
 log~ ::-3
 lol:-3
 long:-3
 longer:2
 longer~ than:-5
 long~ as:-5
 long~ one:1
 long~ sleev:-4
 long~ story:7
 long~ time:-4
 look:2
 looks:-10
 looks~ like:-4
 looks~ ok:-1
 look~ a:3
 look~ at:-5
 look~ for:1
 look~ it:-7
 look~ of:1
 look~ ok:-3
 look~ over:-6
 look~ right:-3
 loosen:9
 loosen~ it:6
 lose:-4
 loss:-2
 lost:2
 lost~ the:-8
 lot:-1
 lotion:7
 lots:-6
 lots~ of:-5
 lot~ ?:-1
 lot~ of:1
 lot~ to:-2
 lot~0:5
 loud:-8
 love:-6
 loves:4
 love~ and:-1
 love~ but:-5
 love~ it:-5
 love~ to:-5
 low:-1
 lower:6
 lowest:-5
 lowest~ flame:-5
 low~ and:-4
 low~ for:4
 low~ heat:-1
 low~ in:1
 low~t:-3
 luck:2
 lucki:-6
 lucky:-4
 lukewarm:-5
 lump:5
 lumps:-4
 lumpy:6
 lump~ of:-1
 lunch:-6
 lurker:-4
 luxury:-2
 lye's:4
 lye:1
 lyes:-6
 lyes~ together:-5
 lying:3
 lyon:-5
 l~0:-4
 m:-6
 machine:-6
 mad:1
 made:1
 made~ ::-5
 made~ a:2
 made~ for:-9
 made~ from:-3
 made~ hers:-8
 made~ in:-7
 made~ it:2
 made~ my:-3
 made~ of:-5
 made~ on:-5
 made~ soap:-2
 made~ the:5
 made~ this:-4
 made~ up:5
 made~ with:-7
 made~0:7
 made~t:-1
 magazine:-6
 mak:8
 maker:-5
 maker~ ::-4
 makes:-4
 makes~ a:-7
 makes~ it:-4
 makes~ no:-6
 makes~ sense:-4
 makes~ the:-5
 makes~ up:8
 makes~0:-1
 makes~T:-10
 makes~b:-6
 make~ a:-8
 make~ exact:-6
 make~ for:-6
 make~ it:8
 make~ sense:-3
 make~ soap:-5
 make~ the:-10
 make~ this:-5
 make~ up:-2
 mak~ it:6
 mak~ the:-3
 mak~ this:-2
 mama:-7
 man:-9
 march:-12
 margin:-2
 marit:-5
 mark:5
 market:-6
 market~ told:-3
 marks:1
 marta:3
 mash:-4
 mash~ potato:-3
 mass:-5
 match:-2
 mate:1
 material:-7
 maths:3
 matter:3
 matter~ to:3
 may:1
 maybe:8
 maybe~ a:6
 maybe~0:7
 maybe~<:-1
 maybe~t:-7
 maybe~w:4
 may~ be:1
 may~ have:6
 may~ i:-4
 me:-2
 mean:-3
 means:-1
 meant:-2
 meant~ to:-2
 meanwhile:3
 mean~ the:2
 mean~ to:-8
 measur:4
 measur~ cup:4
 measur~ jug:8
 measur~ the:2
 mechanic:3
 medium:-6
 meets:-1
 meine:-7
 melt:-2
 melts:-8
 melts~ at:-5
 melt~ and:2
 melt~ at:-5
 melt~ by:-8
 melt~ everyth:4
 melt~ first:-8
 melt~ i:-8
 melt~ in:6
 melt~ it:3
 melt~ on:-7
 melt~ the:-7
 melt~ together:1
 melt~ with:3
 melt~=:-3
 melt~F:-2
 member:2
 memory:4
 men:-6
 mention:2
 merci:-4
 mess:-6
 mess~ up:-4
 met:-1
 method:-3
 method~ ::-5
 metric:-6
 me~ ?:3
 me~ about:-4
 me~ and:1
 me~ as:2
 me~ at:2
 me~ before:-5
 me~ but:-1
 me~ for:-1
 me~ how:-8
 me~ i:-1
 me~ if:-4
 me~ in:-2
 me~ it:-5
 me~ its:-8
 me~ on:-1
 me~ that:-1
 me~ the:3
 me~ this:-5
 me~ to:-6
 me~ where:3
 me~ whether:-1
 me~ with:3
 me~0:-10
 me~t:-6
 middle:-5
 middle~ of:3
 might:-1
 might~ have:4
 milder:-1
 mild~ ?:-4
 milk:-8
 milk~ carton:-7
 mill:-7
 min:7
 mind:6
 mind~ the:-2
 mine:-2
 mines:1
 mine~ ::3
 mine~ from:1
 mine~ had:-6
 mine~ has:-4
 mine~ in:-6
 mine~ is:6
 mine~ took:-7
 mine~ was:2
 mine~ with:4
 minimum:2
 minus:5
 minus~ the:8
 minus~ whatever:8
 minute:-2
 minute~0:-8
 min~ .:5
 misread:10
 misread~ my:5
 miss:2
 miss~ the:5
 mistake:5
 mistake~ and:-7
 mix:3
 mixed:4
 mixed~ at:-6
 mixed~ in:5
 mixed~ it:6
 mixer:-5
 mix~ at:-2
 mix~ the:3
 mix~A:-3
 mk:-4
 ml:12
 mm:-8
 mode:3
 modern:-4
 mold:3
 molds:-7
 mold~ holds:-4
 mold~ is:1
 moment:-7
 moms:-3
 mon:5
 monday:-2
 money:3
 month:-3
 month~ i:-1
 month~0:-6
 moon:-5
 mopp:4
 mopp~ up:4
 more:3
 more~ and:-7
 more~ fat:-6
 more~ like:10
 more~ of:3
 more~ or:-4
 more~ than:-3
 more~A:5
 more~F:2
 morn:-1
 morn~ and:1
 morn~ from:-4
 most:4
 most~ of:8
 mother:-1
 mother~ and:-7
 mother~ did:4
 mould:-1
 mouldy:5
 mould~ ::-6
 mould~ a:-7
 mould~ and:-4
 mould~ bang:-4
 mould~ by:-3
 mould~ for:-3
 mould~ holds:-4
 mould~ in:-4
 mould~ is:2
 mould~ of:-6
 mould~ on:-5
 mould~ so:-9
 mould~ the:-5
 mould~ was:-6
 mould~ with:-6
 mould~0:-2
 mould~t:-5
 mould~v:-5
 move:-4
 moved:3
 moved~ to:1
 moves:-1
 mrs:3
 much:-1
 much~ ?:-5
 much~ and:6
 much~ as:-7
 much~ fat:-5
 much~ for:-8
 much~ of:-4
 much~ superfat:-5
 much~A:-3
 much~F:-4
 much~W:5
 muffin:-5
 mug:4
 multip:6
 mum:1
 mum~ says:-5
 museum:-6
 mush:-4
 must:-3
 must~ be:-9
 myself:-3
 my~ arm:-5
 my~ aunt:-3
 my~ aunts:2
 my~ babcia:-5
 my~ bars:-3
 my~ bathroom:7
 my~ book:3
 my~ boss:-1
 my~ boyfriend:-2
 my~ brother':3
 my~ brother:-2
 my~ colleague:-5
 my~ country:6
 my~ cousin:-1
 my~ dad:-7
 my~ dads:3
 my~ daughter':-8
 my~ daughter:3
 my~ earlier:4
 my~ elbow:-6
 my~ english:-3
 my~ everyday:-3
 my~ ex:-5
 my~ father:-3
 my~ first:-3
 my~ flatmate:-4
 my~ friend:4
 my~ glass:-2
 my~ good:-5
 my~ granddaughter:-4
 my~ grandfather:1
 my~ grandmother:-9
 my~ grandson:2
 my~ great:-2
 my~ hair:-2
 my~ hands:-9
 my~ handwrit:-5
 my~ husband:-5
 my~ kilo:-2
 my~ kitchen:3
 my~ last:-10
 my~ late:-1
 my~ laundry:-4
 my~ little:3
 my~ mate:-7
 my~ mind:7
 my~ mold:-8
 my~ mother:-1
 my~ mould:1
 my~ mums:-5
 my~ nan:-7
 my~ nans:-3
 my~ nephew:-7
 my~ niece:-1
 my~ notebook:7
 my~ notes:-2
 my~ number:-2
 my~ old:1
 my~ own:1
 my~ partner:-1
 my~ paste:-6
 my~ phone:-2
 my~ plan:-3
 my~ previou:1
 my~ question:-2
 my~ recipe:-2
 my~ scal:-4
 my~ scale:5
 my~ second:-2
 my~ sheet:-2
 my~ sister':-1
 my~ sister:-8
 my~ skin:2
 my~ slow:-4
 my~ soap:-2
 my~ son:-1
 my~ spreadsheet:-4
 my~ sums:2
 my~ table:-7
 my~ teacher:-6
 my~ third:-3
 my~ thumb:-2
 my~ tongue:-3
 my~ usual:-10
 my~ very:-7
 my~ whole:-5
 my~ wife:2
 my~ wifes:-2
 my~%:-2
 my~0:-6
 my~F:-2
 my~K:-7
 my~L:-10
 my~S:-5
 my~W:4
 my~b:1
 my~l:-7
 my~t:3
 my~w:3
 m~A:-7
 m~F:-4
 n:-1
 namaste:-4
 name:-11
 name~ ::-3
 nan:-10
 nans:-4
 natural:-5
 near:-4
 nearer:6
 nearer~0:5
 near~ enough:4
 near~ it:-1
 near~ the:-2
 near~%:-10
 near~t:4
 need:-4
 needs:-6
 needs~ a:-6
 needs~ the:-4
 need~ ::-2
 need~ a:-5
 need~ it:2
 need~ more:-7
 need~ the:-6
 need~ to:1
 negative:2
 neighbor:-6
 neighbour:-2
 neither:3
 neither~ of:-1
 nephew:-1
 nerv:-8
 nervou:-2
 net:-1
 never:-1
 never~ above:-5
 never~ added:7
 never~ again:-9
 never~ bother:-6
 never~ check:-7
 never~ did:-6
 never~ fail:-3
 never~ fails:-4
 never~ go:-8
 never~ got:8
 never~ happen:8
 never~ in:-5
 never~ let:-6
 never~ made:9
 never~ measur:-2
 never~ mind:-6
 never~ once:-2
 never~ set:2
 never~ the:-7
 never~ went:-9
 new:-4
 news:-6
 newsletter:2
 newspaper:-8
 new~ bottle:-5
 new~ here:-2
 new~ one:4
 new~ scale:-6
 new~ to:-4
 next:-7
 next~ day:-1
 next~ door:5
 next~ month:-8
 next~ morn:1
 next~ one:-7
 next~ time:-8
 next~ to:2
 next~ year:-4
 nicer:-6
 niece:3
 night:-5
 night~ and:-3
 night~ before:-6
 nil:3
 no:-1
 nobody:-3
 nobody~ answer:-3
 nobody~ had:4
 nobody~ will:-2
 none:5
 none~ at:-7
 none~ in:-1
 none~ the:-3
 nonna:-8
 noon:-5
 nor:-1
 normal:-6
 normal~ ?:-6
 normal~ one:-4
 north:-4
 nose:-9
 not:1
 note:5
 notebook:-2
 notebook~ ::-4
 notebook~ p:-3
 notebook~ says:3
 notebook~ the:-3
 notes:-4
 notes~ ::2
 notes~ app:-5
 notes~ from:-6
 note~ ::-1
 noth:-5
 noth~ and:-3
 noth~ at:-5
 noth~ but:-5
 noth~ else:-2
 noth~ in:-3
 noth~ only:-4
 notic:6
 notice:1
 notic~ the:4
 notic~ when:5
 not~ ?:-2
 not~ a:-10
 not~ at:-4
 not~ bad:-6
 not~ be:-9
 not~ certain:5
 not~ fluid:-8
 not~ for:-5
 not~ going:2
 not~ in:2
 not~ like:-7
 not~ more:-5
 not~ on:8
 not~ so:-8
 not~ sure:4
 not~ that:-6
 not~ the:-2
 not~ to:-9
 not~ too:-5
 not~ touch:-6
 not~ use:-4
 not~ what:-3
 not~0:-7
 not~A:-3
 not~F:11
 not~b:7
 not~e:8
 not~w:-1
 nought:-1
 november:-4
 now:3
 nowhere:-7
 now~ ::-5
 now~ ?:2
 now~ and:-3
 now~ in:1
 now~ it:2
 now~ its:4
 now~ my:3
 now~ on:4
 now~ so:-7
 now~ the:3
 now~F:2
 no~ ?:-2
 no~ ash:-4
 no~ difference:-8
 no~ gel:-4
 no~ good:-2
 no~ harm:-6
 no~ i:-4
 no~ idea:2
 no~ it:5
 no~ longer:6
 no~ more:-1
 no~ need:-8
 no~ other:-6
 no~ reason:-5
 no~ scale:3
 no~ smell:-2
 no~ superfat:-6
 no~ time:-4
 no~ wait:3
 no~ white:-3
 no~ zap:-6
 no~0:2
 no~F:9
 no~I:5
 no~S:-9
 no~W:3
 no~X:-9
 nr:-2
 nr~0:-2
 number:-5
 number~ ?:-4
 number~ and:1
 number~ are:1
 number~ hold:-2
 number~ i:-6
 number~ is:-4
 number~0:-9
 nurse:-4
 nuts:-1
 n~ it:-3
 n~=:-4
 n~F:5
 o'clock:-3
 o:-5
 oat:-8
 oat~X:-2
 obvious:-7
 obvs:-6
 odd:-6
 odds:-8
 of:2
 off:4
 offcut:-5
 offer:-6
 office:-10
 off~ ?:-1
 off~ a:1
 off~ and:3
 off~ at:-7
 off~ by:-2
 off~ for:6
 off~ i:-6
 off~ in:4
 off~ my:-3
 off~ the:3
 off~ what:8
 off~ with:-1
 off~0:-6
 off~l:2
 off~w:-10
 often:-6
 of~ a:1
 of~ about:-3
 of~ all:-7
 of~ ammonia:-6
 of~ an:1
 of~ anyth:-8
 of~ batter:-8
 of~ clean:-6
 of~ cold:2
 of~ course:-1
 of~ doors:-7
 of~ dried:-1
 of~ each:6
 of~ everyth:3
 of~ eyes:-1
 of~ fat:2
 of~ fats:4
 of~ half:1
 of~ it:1
 of~ last:4
 of~ me:-4
 of~ melt:5
 of~ mine:-4
 of~ my:-2
 of~ noth:-5
 of~ oil:1
 of~ oils:-3
 of~ old:5
 of~ one:2
 of~ our:-4
 of~ paste:-6
 of~ roast:-1
 of~ rough:-1
 of~ soap:2
 of~ solution:-5
 of~ some:2
 of~ stirr:-7
 of~ sunday:-6
 of~ that:8
 of~ the:2
 of~ them:1
 of~ these:-7
 of~ this:1
 of~ those:1
 of~ us:2
 of~ warm:-2
 of~ wet:-6
 of~ what:-2
 of~ which:-1
 of~ you:-5
 of~ your:-8
 of~%:2
 of~0:-7
 of~=:2
 of~>:-8
 of~A:2
 of~B:4
 of~C:5
 of~F:-4
 of~I:-4
 of~K:3
 of~L:8
 of~M:-7
 of~N:10
 of~T:1
 of~U:1
 of~W:2
 of~X:-3
 of~b:-1
 of~t:-1
 of~v:-9
 of~w:-8
 oh:2
 ohio:-5
 oh~ and:1
 oil:4
 oils:-2
 oils~ ::-1
 oils~ ?:-1
 oils~ and:-4
 oils~ are:-3
 oils~ as:1
 oils~ at:-5
 oils~ because:-6
 oils~ but:-3
 oils~ come:-3
 oils~ g:-4
 oils~ i:-7
 oils~ in:-3
 oils~ or:-1
 oils~ to:-2
 oils~ were:2
 oils~ which:-6
 oils~>:-2
 oily:6
 oil~ ?:-7
 oil~ and:-1
 oil~ at:7
 oil~ g:-4
 oil~ grams:-5
 oil~ in:-3
 oil~ is:1
 oil~ on:-3
 oil~ to:3
 oil~ was:-2
 oil~ weight:-5
 ok:-1
 okay:-4
 okay~ ?:-4
 okay~ for:-5
 okay~ so:-3
 ok~ ?:-1
 ok~ before:-3
 ok~ for:-6
 ok~ like:-4
 ok~ or:-2
 ok~ so:2
 ok~ to:-4
 ok~ with:-6
 old:2
 older:3
 oldest:-6
 old~ and:2
 old~ blanket:-2
 old~ days:-4
 old~ notebook:-7
 old~ one:-6
 old~ pillowcase:-3
 old~ recipe:1
 old~ sheet:1
 old~ soap:-6
 old~ tub:4
 old~A:3
 old~F:2
 olej:-3
 olej~F:-3
 oma:-5
 omg:-7
 on:-1
 once:-4
 once~ a:2
 once~ i:1
 once~ it:2
 once~ its:-3
 once~ the:-4
 one:-4
 ones:-5
 ones~ are:-9
 one~ ::-4
 one~ ?:-2
 one~ after:-8
 one~ and:5
 one~ at:6
 one~ bar:-6
 one~ batch:-7
 one~ block:2
 one~ bottle:-2
 one~ bowl:-7
 one~ can:-5
 one~ corner:-2
 one~ for:-2
 one~ from:-8
 one~ go:-6
 one~ had:-7
 one~ has:-3
 one~ i:1
 one~ in:2
 one~ into:-1
 one~ is:-1
 one~ jug:-2
 one~ last:-8
 one~ of:4
 one~ on:-6
 one~ pan:-7
 one~ pot:-6
 one~ since:6
 one~ sorry:-6
 one~ spoon:6
 one~ that:-1
 one~ the:2
 one~ thing:4
 one~ time:-5
 one~ to:-8
 one~ weigh:-8
 one~ went:-4
 one~ who:-9
 one~ with:-5
 one~ without:-6
 one~0:1
 one~F:-3
 one~t:-1
 one~w:-8
 onion:2
 only:3
 only~ a:1
 only~ about:7
 only~ after:-8
 only~ does:3
 only~ for:2
 only~ gave:7
 only~ got:-9
 only~ had:9
 only~ have:-2
 only~ if:-1
 only~ notic:4
 only~ one:-2
 only~ put:1
 only~ so:-4
 only~ then:-9
 only~ there:-3
 only~ want:-12
 only~ when:1
 only~ whether:-6
 only~0:12
 only~<:2
 only~=:-9
 only~F:-8
 only~l:-2
 onto:-2
 onto~ the:2
 on~ ::-3
 on~ a:-7
 on~ and:-7
 on~ before:-5
 on~ day:3
 on~ friday:2
 on~ glov:-3
 on~ her:-2
 on~ here:-8
 on~ high:-7
 on~ i:6
 on~ it:-5
 on~ its:-2
 on~ low:-5
 on~ me:-5
 on~ monday:-8
 on~ offer:-6
 on~ one:-5
 on~ our:3
 on~ page:-4
 on~ paper:-9
 on~ saturday:-2
 on~ slow:-2
 on~ that:-2
 on~ the:2
 on~ them:-5
 on~ this:7
 on~ to:-3
 on~ tue:-1
 on~ tuesday:-5
 on~ we:-7
 on~ with:6
 on~ your:-4
 on~0:-8
 on~=:-4
 on~>:-7
 on~A:3
 on~F:5
 on~t:-3
 oops:4
 open:2
 opens:4
 open~ a:-8
 open~ all:7
 open~ since:7
 open~ the:-3
 open~ window:-3
 operator:-5
 operator~ ::-4
 opinion:-8
 opinion~ on:-6
 optional:3
 or:-3
 order:-8
 order~ of:-6
 ordinary:6
 original:-5
 or~ a:1
 or~ am:-8
 or~ did:-7
 or~ do:-5
 or~ does:-6
 or~ is:-7
 or~ it:-8
 or~ just:-5
 or~ less:-5
 or~ more:-8
 or~ no:-4
 or~ not:-4
 or~ should:-4
 or~ take:4
 or~ the:-2
 or~ thereabout:3
 or~ too:-2
 or~ was:1
 or~ will:-4
 or~0:1
 or~A:-5
 or~N:-7
 other:-3
 otherwise:-8
 otherwise~ it:-7
 other~ and:-2
 other~ half:1
 other~ way:-6
 other~0:2
 other~W:-5
 other~w:1
 ought:-5
 ought~ to:-5
 ounc:6
 ounce:-3
 ounc~ for:5
 our:-1
 ours:-9
 ours~ is:-7
 our~ club:3
 our~ course:-2
 our~ group:-10
 our~ own:-1
 our~ teacher:-7
 our~ village:4
 out:2
 outdoor:-7
 outside:-9
 outside~ and:-1
 outside~ of:-1
 outside~ on:-7
 out~ ::-7
 out~ ?:1
 out~ a:-1
 out~ again:3
 out~ and:3
 out~ at:3
 out~ by:3
 out~ for:3
 out~ from:-2
 out~ i:-7
 out~ in:-2
 out~ is:-8
 out~ like:-8
 out~ on:1
 out~ right:-4
 out~ so:2
 out~ the:-2
 out~ to:11
 out~ what:4
 out~ with:3
 out~0:4
 out~=:-2
 out~A:-2
 out~N:2
 out~w:-1
 oval:-4
 oven:-8
 oven~ at:-4
 over:1
 overdo:-4
 overfat:1
 overheat:-4
 overnight:-1
 overnight~ at:-4
 over~ ?:-6
 over~ a:1
 over~ and:3
 over~ before:-5
 over~ for:5
 over~ from:3
 over~ half:-6
 over~ in:6
 over~ it:1
 over~ that:2
 over~ the:-3
 over~ this:1
 over~ to:1
 over~%:-9
 over~d:-3
 over~t:-6
 own:1
 own~ ::-5
 own~ a:-4
 own~ line:-3
 own~0:-3
 own~F:4
 oyl:-4
 oyl~=:-6
 oz:2
 oz~ g:-3
 p:-6
 pack:1
 packet:6
 packet~ of:-3
 packs:-2
 packs~ of:-4
 paddle:-7
 page~ ::-6
 page~ for:-6
 page~ is:-4
 page~ sorry:-6
 page~0:-1
 paid~ for:5
 paid~0:-5
 pail:-8
 paint:6
 pair:2
 pairs:-7
 pair~ of:-1
 pale:-11
 pan:2
 panic:-10
 panick:1
 pantry:-6
 pan~ and:2
 paper~ and:-4
 paper~ cup:5
 paper~0:-6
 paper~t:-4
 parcel:5
 parent:-3
 parish:-8
 part:-1
 participant:3
 partner:-2
 parts:-1
 part~ ?:3
 part~ of:3
 part~0:-9
 pass:-10
 passt:-5
 passt~ das:-5
 pass~ the:-3
 past:2
 paste:-9
 paste~ ::2
 paste~ in:-4
 paste~ is:-5
 paste~ to:-4
 paste~ went:-3
 paste~ with:-4
 pastry:4
 past~ from:-5
 past~ its:-3
 past~0:-2
 patch:-5
 patience:-6
 patient:-6
 pcs:-6
 pct:-6
 pdf:-8
 peak:-6
 pearl:1
 pellet:2
 pencil:-1
 pencill:6
 pencil~ and:3
 people:-11
 people~ ask:-5
 people~ in:-3
 people~ who:-9
 people~0:-1
 per:-1
 percent:3
 percentag:-1
 perfect:-7
 perhap:9
 perhap~0:4
 period:-5
 person:-8
 per~ bar:-4
 per~ batch:1
 per~ kilo:-6
 petra:4
 ph:-8
 pharmacist:2
 pharmacy:-5
 phase:-7
 phase~ a:-3
 phase~ b:-3
 phase~ c:-2
 phenolphthalein:6
 phone~ and:7
 phone~ is:-5
 phone~ rang:7
 phone~ read:-8
 photo:-4
 photo~ of:-1
 ph~ strip:-7
 pick:-1
 picture:-8
 piec:-3
 piece:1
 piece~ for:-6
 piece~ of:6
 piec~ of:4
 piec~0:-5
 pig:-8
 pillowcase:-4
 pinch:-1
 pinch~ of:-2
 pink:3
 pitcher:4
 place:4
 place~ of:4
 plain:-2
 plain~ white:-2
 plain~F:-5
 plain~W:5
 plan:-1
 plann:-2
 plann~ to:2
 plan~ for:4
 plastic:2
 plastic~ cup:4
 plastic~ jug:4
 plate:3
 play:-6
 pleas:-3
 please:5
 please~ ?:2
 please~ and:1
 please~ be:-7
 please~ check:-2
 please~ confirm:-7
 please~ dont:-8
 please~ excuse:-4
 please~ look:-8
 please~ my:7
 please~ tell:1
 please~ verify:-8
 plenty:-6
 plenty~ for:-6
 plenty~ of:-4
 pls:1
 pls~ check:-4
 plumber:-4
 plus:2
 plus~ a:3
 plus~ an:4
 plus~ another:1
 plus~ the:7
 plus~0:-5
 plus~<:-7
 plus~=:-4
 plus~w:-6
 plz:-4
 pocket:3
 point:-3
 poland:-1
 polish:-2
 polypropylene:-5
 poor:-9
 popcorn:5
 pops:-3
 porch:-4
 porridge:3
 portion:-1
 portugal:1
 possible:-5
 post:-4
 postage:-1
 postal:2
 postal~ scale:2
 postman:1
 posts:-7
 post~ this:-5
 post~t:-2
 potato:-7
 potato~ then:-3
 pots:-3
 pot~ ::-5
 pot~ and:-1
 pot~ at:-5
 pot~ for:-9
 pot~ holds:2
 pot~ i:-6
 pot~ is:-4
 pot~ of:-3
 pot~ off:-7
 pot~ oils:-8
 pot~ was:4
 pot~ went:-4
 pot~ with:2
 pot~0:1
 pound:-2
 pour:6
 pours:-8
 pour~ ::-4
 pour~ and:1
 pour~ at:-9
 pour~ cover:-1
 pour~ in:3
 pour~ into:-5
 pour~ off:2
 pour~ on:1
 pour~ out:7
 pour~ the:-7
 pour~0:5
 pour~=:1
 pour~>:-7
 pour~A:-5
 pour~F:-1
 pour~t:-4
 pour~w:-10
 powder:5
 powder~0:6
 power:-1
 power~ cut:5
 pp:-6
 ppl:-7
 practical:-7
 prefer:6
 premix:-8
 prep:-3
 present:-2
 press:-4
 press~ in:-7
 press~ into:-2
 press~ it:-3
 press~0:-9
 pretty:-3
 pretty~ but:-4
 previou:2
 pric:-7
 price:-8
 print:3
 printout:-5
 print~ on:-1
 print~0:-8
 prob:3
 probab:1
 problem:-2
 proces:-1
 proces~ ::-2
 proces~ crock:-2
 proces~ in:-2
 proces~ slow:-1
 professor:2
 project:-7
 promis:-1
 promis~ to:1
 proper:-5
 proportion:4
 proud:-7
 ps:3
 pub:-5
 puck:-2
 pucks:-4
 puck~ dual:-6
 pudd:-7
 puddle:6
 pull:2
 pump:-2
 pupil:-1
 pure:1
 pure~ and:-8
 pure~F:-4
 purity:5
 push:-7
 put:3
 puts:-7
 puts~ everyth:-3
 put~ a:3
 put~ in:5
 put~ it:-3
 put~ the:1
 put~ them:-4
 put~ together:-7
 put~0:-2
 put~<:-9
 put~=:-8
 put~>:2
 put~F:4
 put~v:1
 put~w:-1
 q:-6
 qty:-4
 qty~ g:-1
 quantiti:7
 quantity:-4
 quantity~ of:-3
 quarter:9
 quarter~ of:6
 question:-4
 question~ ::-5
 question~ from:-3
 question~ is:-4
 question~ mark:-1
 quick:-8
 quicker:-3
 quicker~ than:-4
 quick~ one:-3
 quite:1
 quot:-6
 q~ ::-2
 r:-2
 rack:-6
 rack~ and:-1
 radiator:-4
 radio:-8
 rainy:-5
 rainy~ sunday:-3
 rais:-7
 ran:4
 rancid:1
 rancid~ so:6
 rang:5
 ran~ dry:5
 ran~ out:2
 ran~ short:4
 ran~ the:-6
 rate:-5
 rather:4
 rather~ than:5
 raw:3
 re:-5
 reach:-6
 reach~ the:6
 reach~d:-7
 read:1
 reader:-1
 reads:4
 reads~ in:-4
 ready:2
 ready~ dissolv:4
 ready~ for:-6
 ready~ in:-4
 ready~ made:2
 ready~ mixed:2
 ready~ to:-7
 read~ it:-4
 read~ that:-6
 read~ the:-2
 read~ this:-4
 read~0:-1
 read~F:4
 read~b:-2
 real:3
 realis:5
 reality:4
 real~ a:6
 real~ have:-4
 real~A:-4
 real~N:5
 reason:-2
 rebatch:5
 recall:5
 receipt:7
 recette:-3
 recheck:2
 recip:-7
 recipe:-2
 recipe~ ::-2
 recipe~ ?:-3
 recipe~ and:-5
 recipe~ card:-2
 recipe~ for:2
 recipe~ from:-5
 recipe~ i:-3
 recipe~ in:2
 recipe~ is:-2
 recipe~ of:-4
 recipe~ on:-5
 recipe~ was:3
 reckon:5
 reckon~ it:1
 reckon~ with:1
 record:-2
 record~0:-7
 red:3
 refill:2
 refin:3
 regard:-5
 remain:-8
 remainder:6
 remain~0:2
 remark:-7
 remark~ ::-2
 remember:4
 remember~ it:-5
 render:-9
 render~ the:-5
 render~ twice:-5
 render~=:-4
 repeat:-8
 replac:4
 replace:-6
 replace~ it:5
 replac~ by:6
 replac~ the:-1
 reply:-6
 report:-5
 rescu:1
 rescue:5
 rest:3
 rest~ is:5
 rest~ of:-1
 rest~t:-2
 result:1
 retir:-7
 rev:-8
 rev~0:-7
 re~ ::-3
 ribbon:-4
 rice:-2
 rich:-9
 rid:-1
 rid~ of:-1
 right:-2
 right~ ?:-2
 right~ about:1
 right~ amount:-5
 right~ and:-4
 right~ at:1
 right~ but:7
 right~ for:-7
 right~ now:-6
 right~ on:-4
 right~ or:-3
 right~ so:-4
 right~ to:-4
 right~ with:-7
 rim:-3
 ring:-6
 ring~t:-1
 rins:1
 rinse:-6
 rinse~ the:-4
 rins~ the:-1
 rises:-5
 roast:-2
 rock:-6
 roll:-7
 room:-2
 room~ for:2
 room~ temp:-4
 room~ temperature:-2
 room~0:-5
 rough:2
 rough~d:-1
 round:1
 round~ and:-4
 round~ it:-2
 round~ the:3
 round~ to:3
 row:3
 row~0:4
 rspo:-7
 rubb:-1
 rugby:-3
 rugby~ club:-3
 ruin:-4
 rule:-9
 rules:1
 run:-2
 runn:-8
 runny:5
 runs:-1
 run~ it:-7
 run~ out:-9
 run~ the:-4
 rush:-2
 rustic:-7
 ruth:1
 s0ap:-5
 s:-6
 sack:-3
 safe:-1
 safety:-4
 safe~ ?:-4
 safe~ side:4
 safe~ to:-2
 said:1
 said~ a:4
 said~ it:-2
 said~ my:5
 said~ no:-6
 said~ so:-8
 said~ that:-6
 said~ the:-2
 said~ yes:-8
 said~0:1
 said~>:-6
 said~b:6
 salad:-6
 sale:-7
 salt:4
 same:-1
 same~ amount:9
 same~ as:-7
 same~ bar:-3
 same~ fats:1
 same~ for:-4
 same~ number:-8
 same~ oils:-4
 same~ pot:2
 same~ recipe:5
 same~ thing:-9
 same~ weight:9
 same~b:7
 sample:-6
 sandpaper:-6
 sane:-6
 sane~ ?:-3
 sang:-7
 sanity:-5
 sanity~ check:-5
 saponification:2
 saturday:-3
 saturday~ market:-2
 sat~ on:-7
 sat~t:-3
 saucer:-5
 save:2
 saves:-7
 savon:-3
 saw:8
 saw~ the:8
 say:5
 says:3
 says~ ::-4
 says~ and:3
 says~ but:-5
 says~ he:5
 says~ i:1
 says~ it:-4
 says~ its:-7
 says~ min:7
 says~ my:-8
 says~ that:2
 says~ the:-3
 says~0:6
 says~=:-4
 says~A:2
 says~F:-1
 says~b:-1
 says~e:6
 says~t:-1
 says~v:2
 says~w:2
 say~ a:7
 say~ how:1
 say~ it:-9
 say~ its:-5
 say~ so:1
 say~ thats:-5
 say~ the:-8
 say~%:3
 say~0:9
 say~F:-7
 say~b:6
 say~w:8
 scal:-1
 scale:4
 scale~ ::-1
 scale~ and:-9
 scale~ at:6
 scale~ before:-9
 scale~ but:-6
 scale~ died:5
 scale~ does:-9
 scale~ for:-11
 scale~ i:-11
 scale~ is:1
 scale~ it:-6
 scale~ jumps:2
 scale~ only:4
 scale~ says:2
 scale~ so:-10
 scale~ switch:1
 scale~ that:-2
 scale~ was:4
 scale~ with:-1
 scale~w:-6
 scal~ to:2
 scar:-4
 school:-3
 school~ fair:3
 science:-8
 scoop:6
 scorch:-3
 scrap:7
 scrap~ it:-1
 scrap~ the:6
 scratch:-10
 screen:1
 scribbl:-4
 scrubb:-6
 scrubb~ the:-6
 scum:2
 seal:-3
 season:4
 second~ batch:-7
 second~ day:-6
 second~ go:2
 second~ half:4
 second~ one:-5
 second~ opinion:-4
 second~ pair:-1
 second~ time:3
 second~ try:-2
 secret:-6
 see:2
 seed:-6
 seem:6
 seems:-6
 see~ a:-6
 see~ here:2
 see~ how:-5
 see~ if:-6
 see~ it:-9
 see~ me:-3
 see~ that:4
 see~ the:-1
 see~ through:-7
 see~ what:2
 seiz:-1
 self:-1
 self~ ::1
 sell:-10
 seller:4
 sells:3
 sells~ at:-3
 sell~ at:-1
 sense:2
 sensible:-4
 sensible~ ?:-3
 sensitive:3
 sent:4
 sent~ me:1
 separat:-6
 separate:-10
 september:-6
 serv:3
 serv~ ::-4
 set:1
 sets:-10
 sets~ in:-5
 sett:-2
 settl:-1
 settl~ on:-3
 set~ aside:-5
 set~ in:-9
 set~ it:7
 set~ on:-6
 set~ the:-5
 set~ to:4
 set~ up:-4
 sf:6
 shade:-6
 shall:2
 shampoo~ bar:-5
 share:5
 sharp:-2
 shav:-5
 shave:-7
 shave~ puck:-3
 shave~ soap:-3
 shav~ puck:-4
 she:-5
 shed:-2
 sheep:6
 sheet:2
 sheet~ ::-3
 sheet~ and:4
 sheet~ for:3
 sheet~ says:6
 sheet~ sorry:-4
 sheet~0:-8
 shelf:-3
 shelf~ for:-2
 shes:-7
 shes~0:-4
 she~ also:3
 she~ alway:-2
 she~ asked:-4
 she~ did:-5
 she~ does:-1
 she~ gets:-7
 she~ got:-7
 she~ had:-8
 she~ has:-5
 she~ is:-5
 she~ made:-4
 she~ never:2
 she~ right:-2
 she~ said:-2
 she~ says:-4
 she~ stirr:-2
 she~ swear:-2
 she~ told:-2
 she~ used:-7
 she~ wants:5
 she~ was:1
 she~ weigh:1
 she~ who:-1
 she~ would:-3
 shift:-2
 shine:-7
 shiny:-8
 shoe:-4
 shoebox:-3
 shoebox~ lined:-2
 shoe~ box:-4
 shook:4
 shop:2
 shopp:-8
 shopp~ list:-4
 shops:-2
 shop~ and:6
 shop~ had:3
 shop~ soap:2
 short:3
 shortage:-3
 short~ ::4
 short~ ?:-6
 short~ burst:-1
 short~ of:-6
 short~ on:-1
 short~ so:4
 short~ the:4
 shot:1
 should:-1
 should~ be:-2
 should~ come:-1
 should~ i:-8
 should~ read:9
 should~ say:4
 shout:-8
 show:-4
 shower:-8
 shows:1
 shows~ whole:-8
 shows~0:-3
 shows~w:3
 show~b:1
 shrink:-8
 shut:-1
 shut~ in:4
 side:-2
 sides:-3
 sideway:-7
 side~ of:5
 siev:-1
 sieve:-1
 siev~ it:-1
 sign:-4
 silicone:-9
 silicone~ loaf:-5
 silicone~ mould:-3
 sill:-6
 silly:10
 simp:-2
 simple:-6
 since:4
 since~ about:-4
 since~ i:-3
 since~ it:6
 since~ last:1
 since~ my:5
 since~ spr:1
 since~ the:3
 since~ then:2
 since~0:-8
 since~F:2
 since~t:4
 single:-2
 sink:-1
 sink~ and:-4
 sink~ of:-5
 sink~ with:-1
 sis:-3
 sister':3
 sister:-10
 sister~ in:-3
 sister~ says:-2
 sit:-1
 sits:1
 sits~ in:-7
 sitt:3
 sitt~ in:-3
 sitt~ on:3
 size:1
 size~ of:-3
 skin:-4
 skin~ and:-3
 skin~ is:7
 skin~ off:-4
 skin~ so:4
 skip:4
 skipp:12
 skipp~ it:5
 skipp~ the:8
 skull:-5
 slab:-8
 sleep:-7
 sleev:-5
 slept:-4
 slic:-7
 slice:-5
 slid:-2
 slight:1
 slimy:-8
 slip:3
 slipp:10
 slipp~ and:6
 sliver:-6
 slosh:-2
 slow:-4
 slow~ cooker:-4
 slow~ into:-5
 slush:-7
 small:-2
 small~ print:5
 smell:-6
 smell~ a:-5
 smell~ faint:-4
 smell~ is:-5
 smell~ it:2
 smell~ like:-3
 smell~ of:-5
 smell~ the:-5
 smelt:4
 smelt~ like:-5
 smoke:-5
 smooth:-10
 sneeze:-1
 sniff:2
 snow~ white:-4
 so:2
 soak:8
 soap':2
 soap:-7
 soaper:-5
 soaps:-8
 soap~ ::-4
 soap~ ?:-1
 soap~ again:-5
 soap~ and:-4
 soap~ at:-5
 soap~ attempt:-2
 soap~ day:-2
 soap~ diary:-5
 soap~ for:-5
 soap~ from:-6
 soap~ i:-2
 soap~ in:-6
 soap~ is:-9
 soap~ it:-5
 soap~ like:-4
 soap~ my:-5
 soap~ of:-4
 soap~ on:-5
 soap~ paste:-1
 soap~ since:-4
 soap~ so:-1
 soap~ the:-4
 soap~ to:-1
 soap~ w:-6
 soap~ was:-6
 soap~ with:-5
 soap~0:-6
 soft:-6
 soften:-8
 softer:2
 soft~ after:-3
 soft~ and:-5
 soft~ as:-6
 soft~ at:-2
 soft~ for:-5
 soft~ in:-3
 soft~ so:2
 soft~ soap:-6
 sold:-6
 sold~ at:-4
 sold~ out:-4
 sold~0:-6
 soleseife:-6
 solid:-5
 solution~ and:-4
 solution~ plus:-6
 some:2
 somebody:-2
 somebody~ asked:-6
 somebody~ check:-3
 somebody~ else:-7
 somebody~ look:-6
 somebody~ run:-5
 somebody~ tell:1
 somebody~ to:-4
 somebody~ with:-3
 someone:-2
 someone~ at:-7
 someone~ check:1
 someone~ in:-6
 someone~ look:-7
 someone~ tell:-5
 someone~ to:-6
 someone~ with:-5
 someth:2
 someth~ else:-4
 someth~ like:3
 some~ of:3
 some~ people:-8
 some~0:-5
 some~F:-3
 some~N:6
 some~X:-1
 son:-3
 soon:-4
 sooner:-6
 sooner~ than:-6
 sorry:1
 sorry~ about:-6
 sorry~ for:-4
 sorry~ if:2
 sorry~ it:-6
 sorry~ my:-4
 sorry~ the:3
 sort:4
 sort~ of:-5
 sound:-6
 sound~ ?:-5
 sound~ like:-7
 sound~ right:2
 soup:-4
 sour:-2
 source:-1
 south:-2
 so~ ::-6
 so~ ?:3
 so~ a:2
 so~ all:4
 so~ another:7
 so~ bear:-6
 so~ before:-6
 so~ call:6
 so~ did:-6
 so~ do:-1
 so~ does:-6
 so~ dont:2
 so~ excuse:-5
 so~ far:-2
 so~ fast:-3
 so~ for:-5
 so~ forgive:-4
 so~ good:4
 so~ half:3
 so~ here:-5
 so~ hot:-5
 so~ i'd:-9
 so~ i:-5
 so~ if:-5
 so~ im:1
 so~ in:5
 so~ is:2
 so~ it:2
 so~ its:5
 so~ just:5
 so~ keep:-7
 so~ last:-8
 so~ little:-6
 so~ maybe:4
 so~ much:-4
 so~ my:2
 so~ no:5
 so~ noth:-1
 so~ now:-5
 so~ of:7
 so~ on:-3
 so~ please:3
 so~ sorry:-8
 so~ take:1
 so~ that:-8
 so~ thats:5
 so~ the:1
 so~ ther:4
 so~ there:-4
 so~ this:-4
 so~ those:1
 so~ um:3
 so~ we:-4
 so~ what:5
 so~ whats:3
 so~ who:1
 so~ you:-2
 so~%:-8
 so~0:9
 so~=:1
 so~>:-1
 so~N:10
 so~e:-10
 so~l:-8
 so~t:-3
 so~w:-2
 spa:2
 space:-8
 spain:-6
 spare:-2
 spatula:-8
 speed:-7
 spell:-9
 spend:-6
 spent:1
 spill:-5
 spill~ on:1
 spilt:1
 splash:4
 splash~ of:2
 split:3
 split~ it:1
 split~ the:1
 spoon:-1
 spoonful:5
 spoonful~ in:1
 spoonful~ of:2
 spoon~ and:1
 spoon~ at:-7
 spoon~ by:-6
 spoon~ for:3
 spoon~ in:-4
 spoon~ into:-3
 spoon~ it:-5
 spoon~ of:3
 spoon~ slipp:6
 spot:-9
 spots:-1
 spots~ after:-2
 spot~ on:-6
 spr:-1
 spray:-8
 spreadsheet:-5
 sprinkl:-7
 sprinkle:-4
 sprinkle~ the:-4
 sprinkl~ over:-3
 sprinkl~=:-1
 squeez:6
 sry:2
 stable:-5
 stack:-2
 stag:-7
 stage:-1
 stage~ at:-2
 stain:-7
 stainles:-5
 stamp:-12
 stamp~ and:-6
 stand:-4
 standard:-6
 stand~ ::-2
 stand~ at:1
 stand~ by:-5
 stand~ for:-3
 stand~ in:-1
 stand~ it:5
 stand~ on:4
 stand~ the:-3
 stand~ there:-3
 stand~ up:2
 stank:-5
 start:-2
 start~ ::-4
 start~ and:-7
 start~ at:-3
 start~ the:-4
 start~ to:-7
 start~ with:5
 start~t:-6
 static:1
 stay:3
 stays:-4
 stays~ as:1
 stays~ in:-7
 stay~ a:-1
 stay~ at:3
 stay~ clear:3
 stay~ cloudy:-2
 stay~ in:9
 stay~ on:2
 stay~ soft:-5
 steam:-12
 steel:1
 steel~ jug:-8
 steel~ pot:-4
 step:-6
 steps:1
 steps~ of:4
 stick:-2
 sticker:-4
 sticky:2
 stick~ blend:-2
 stick~ blender:-8
 stick~ to:1
 stiff:4
 still:1
 still~ a:-8
 still~ about:1
 still~ cloudy:1
 still~ fine:-2
 still~ good:4
 still~ got:-6
 still~ had:4
 still~ have:-2
 still~ in:7
 still~ like:-7
 still~ ok:-8
 still~ on:5
 still~ sitt:9
 still~ smell:-6
 still~ soap:-7
 still~ soft:-1
 still~ stand:3
 sting:-6
 stingy:1
 stink:-8
 stir:-3
 stirr:-1
 stirr~ and:-6
 stirr~ every:-7
 stirr~ for:-3
 stirr~ in:4
 stirr~ into:5
 stirr~ it:-6
 stirr~ one:-4
 stirr~ the:-1
 stirr~ with:-6
 stirr~t:-2
 stirs:-5
 stir~ by:-5
 stir~ every:-1
 stir~ for:-2
 stir~ in:-1
 stir~ it:2
 stir~ the:-10
 stir~ till:-2
 stir~ until:-4
 stir~ with:-4
 stir~0:-5
 stir~=:-3
 stir~t:-5
 stock:2
 stood~ at:3
 stood~ in:3
 stop:-7
 stopp:8
 stopp~ at:8
 stops:-3
 stor:-3
 store:1
 store~ the:-7
 story:2
 stove:5
 straight:-3
 straight~ away:-5
 straight~ from:-5
 straight~ into:-7
 straight~ out:2
 straight~ to:2
 strain:6
 strainer:-7
 strain~ it:-5
 strain~ the:-1
 strain~ through:-9
 streak:-6
 stream:-4
 street:-5
 strength:4
 stretch:4
 strike:4
 strip:-8
 stripp:-5
 stripp~ the:-6
 strip~ says:-8
 strip~0:-2
 strong:2
 stronger:2
 strong~ ?:-7
 strong~ for:-4
 struck:5
 struck~ out:2
 stuck:4
 stuck~ in:5
 stuck~ to:3
 student:-2
 stuff:-3
 stupid:-6
 style:-4
 subject:-3
 subject~ ::-3
 such:1
 suds:-5
 suggest:-1
 suit:-6
 suits:-3
 sum:-1
 summer:3
 summer~ and:6
 sums:-3
 sun:2
 sunday~ ::-6
 sunday~ in:-6
 sunday~ roast:2
 superfat:5
 superfat~ ::5
 superfat~ ?:-3
 superfat~ and:-6
 superfat~ at:1
 superfat~ because:-2
 superfat~ did:-9
 superfat~ do:-3
 superfat~ does:-6
 superfat~ for:3
 superfat~ in:-7
 superfat~ is:-12
 superfat~ of:-8
 superfat~ on:-10
 superfat~ should:-11
 superfat~ with:1
 superfat~%:3
 superfat~0:3
 supermarket:-6
 suppose:-1
 sure:6
 sure~ about:-10
 sure~ of:2
 surface:-8
 surviv:-1
 survive:-3
 suspect:5
 swap:-5
 swapp:6
 swapp~ for:3
 swapp~F:5
 swaps:-10
 swap~ the:-2
 swear:3
 swear~ by:-1
 swear~ it:-7
 swear~ to:7
 sweat:-8
 sweat~ in:-2
 sweet:-5
 swirl:-8
 swirl~ with:-4
 switch:3
 switch~ itself:-2
 switch~ off:-6
 switch~ to:-2
 swore:-5
 t:-6
 ta:-5
 tabl:-6
 table:3
 tablespoon:6
 table~ is:-7
 table~0:-8
 tabs:-5
 taffy:-9
 tag:2
 tak:6
 take:2
 taken:3
 takes:-13
 takes~ about:-1
 takes~ its:-5
 takes~ me:-3
 takes~ the:-4
 takes~=:-1
 takes~t:-4
 take~ a:-4
 take~ it:-8
 take~ my:1
 take~ off:-3
 take~ that:4
 take~ the:-5
 take~ your:3
 take~0:-8
 take~=:-4
 take~w:-8
 talk:-6
 tall:-6
 tan:-5
 tape:-8
 tared:8
 target:2
 tast:-8
 taste:2
 taught:-7
 taught~ me:-3
 teach:-1
 teacher:-3
 team:-3
 teaspoon:2
 technical:9
 technical~ grade:8
 telephone:-4
 tell:-3
 tells:1
 tells~ me:3
 tell~ my:-6
 tell~ them:-6
 tell~ us:-8
 tell~ whether:2
 tell~ you:3
 temp:-5
 temperature:-8
 temps:-5
 temp~d:-2
 tenth:3
 tenth~ of:5
 term:-7
 test:-3
 tester:2
 test~ ::-5
 test~ at:-7
 test~ batch:-6
 test~ it:5
 test~ ok:-4
 test~ with:-4
 text:-3
 than:-1
 thank:-6
 thank~ for:-7
 thank~ to:-3
 thank~ you:-5
 than~ a:-1
 than~ i:3
 than~ it:6
 than~ my:3
 than~ that:-5
 than~ the:-4
 than~ usual:5
 than~0:1
 than~d:-3
 that:5
 thats:-2
 thats~ a:-8
 thats~ all:-4
 thats~ how:4
 thats~ it:-6
 thats~ my:-6
 thats~ normal:-2
 thats~ the:-6
 thats~ what:7
 thats~ why:-5
 thats~>:-2
 thats~l:-10
 that~ ?:3
 that~ a:-8
 that~ about:-7
 that~ and:4
 that~ be:3
 that~ bit:3
 that~ came:-3
 that~ come:-1
 that~ day:8
 that~ enough:-2
 that~ from:-7
 that~ goes:-1
 that~ had:-1
 that~ has:-4
 that~ i'd:-4
 that~ i:3
 that~ im:2
 that~ in:-2
 that~ into:-1
 that~ is:2
 that~ isnt:1
 that~ it:-9
 that~ its:1
 that~ leave:-5
 that~ look:-2
 that~ makes:-6
 that~ matter:4
 that~ mine:4
 that~ much:-1
 that~ my:2
 that~ never:8
 that~ nobody:1
 that~ noth:-4
 that~ off:9
 that~ okay:-2
 that~ on:1
 that~ one:-6
 that~ out:3
 that~ real:-8
 that~ right:-2
 that~ she:2
 that~ so:-7
 that~ solution:-11
 that~ sound:-1
 that~ still:-7
 that~ the:4
 that~ ther:-6
 that~ too:-7
 that~ was:-8
 that~ way:1
 that~ we:-9
 that~ went:-3
 that~ what:-9
 that~ you:-5
 that~0:11
 that~=:-6
 that~A:-3
 that~F:1
 that~L:3
 that~b:6
 thaw:-1
 the:1
 their:-2
 them:-2
 themselv:-3
 them~ ::-2
 them~ and:-6
 them~ is:-2
 them~ out:-5
 them~ to:-6
 them~ together:2
 them~0:-3
 them~t:-5
 then:-2
 then~ a:-1
 then~ add:-4
 then~ another:4
 then~ at:-6
 then~ i:3
 then~ in:-4
 then~ into:-6
 then~ it:4
 then~ its:-7
 then~ like:-4
 then~ my:1
 then~ off:-1
 then~ pour:-7
 then~ stir:-4
 then~ stirr:-2
 then~ the:-8
 then~ weigh:-8
 then~0:3
 then~<:3
 then~=:-4
 then~>:-1
 then~A:-8
 then~F:-5
 then~S:-4
 then~W:1
 then~e:-5
 then~t:-4
 then~v:8
 then~w:-2
 ther:1
 there:3
 thereabout:3
 therefore:4
 there~ ?:-7
 there~ because:1
 there~ enough:-3
 there~ is:-1
 there~ may:4
 there~ so:-6
 there~ too:4
 there~ was:-2
 there~ were:4
 there~ with:-3
 thermometer:-9
 ther~ a:1
 ther~ also:2
 ther~ no:-7
 ther~0:-2
 ther~F:-4
 these:-6
 these~ are:-6
 these~ days:5
 these~ fats:-3
 these~ oils:-4
 they:-4
 theyd:4
 theyll:-3
 theyre:-1
 they~ are:4
 they~ did:-3
 they~ do:-7
 they~ say:2
 they~ went:1
 they~ were:-7
 the~ above:5
 the~ air:1
 the~ allotment:-5
 the~ amount:-3
 the~ answer:-2
 the~ app:3
 the~ attic:-3
 the~ autumn:-7
 the~ back:2
 the~ bag:5
 the~ balance:-4
 the~ balcony:3
 the~ bar:2
 the~ bars:-11
 the~ batch:-2
 the~ bath:-7
 the~ bathroom:1
 the~ batter:-8
 the~ battery:-2
 the~ beaker:5
 the~ beginn:-2
 the~ bell:-8
 the~ bench:-5
 the~ best:-4
 the~ big:-2
 the~ bin:-2
 the~ birds:-4
 the~ bit:-3
 the~ blender:1
 the~ block:4
 the~ blog:-6
 the~ blue:1
 the~ board:2
 the~ book:-5
 the~ bottl:-6
 the~ bottle:5
 the~ bowl:6
 the~ box:1
 the~ boys:4
 the~ brim:-2
 the~ bubbl:-4
 the~ bus:-2
 the~ butcher:-1
 the~ camp:1
 the~ can:1
 the~ candle:-6
 the~ canister:7
 the~ car:-7
 the~ card:-5
 the~ caretaker:-7
 the~ cat:1
 the~ ceil:-4
 the~ cellar:-11
 the~ certifi:-7
 the~ certificate:3
 the~ cheap:-8
 the~ chemist:-2
 the~ children:1
 the~ choir:-4
 the~ christma:1
 the~ church:-5
 the~ class:-7
 the~ clean:-2
 the~ clock:-5
 the~ club:-2
 the~ clubs:-1
 the~ cold:1
 the~ column:-3
 the~ comma:4
 the~ comment:-6
 the~ cooker:1
 the~ cool:-6
 the~ corner:-5
 the~ cost:-5
 the~ counter:4
 the~ county:-4
 the~ course:2
 the~ crockpot:-1
 the~ crumb:1
 the~ cubes:-5
 the~ cup:-2
 the~ cupboard:-3
 the~ cure:-10
 the~ date:-8
 the~ day:-2
 the~ decimal:-4
 the~ difference:-1
 the~ discount:-2
 the~ dish:4
 the~ display:1
 the~ dog:2
 the~ door:-1
 the~ dot:-6
 the~ doubl:-7
 the~ double:-2
 the~ drain:3
 the~ drawer:1
 the~ drum:7
 the~ dry:2
 the~ edge:-4
 the~ edges:-1
 the~ empty:-6
 the~ end:3
 the~ ends:-7
 the~ even:-9
 the~ extra:1
 the~ face:-7
 the~ fami:1
 the~ farm:-1
 the~ fat:-6
 the~ fats:1
 the~ feed:3
 the~ fence:-6
 the~ figur:-6
 the~ figure:5
 the~ finish:-4
 the~ first:-3
 the~ flak:4
 the~ flat:-3
 the~ floor:6
 the~ foam:-9
 the~ freezer:-11
 the~ front:1
 the~ fryer:2
 the~ full:6
 the~ fumes:-7
 the~ funnel:4
 the~ garage:-5
 the~ garden:-3
 the~ gas:-5
 the~ gel:-1
 the~ glass:1
 the~ goat:4
 the~ goats:4
 the~ goggl:-2
 the~ good:-3
 the~ gram:-7
 the~ greasy:-8
 the~ group:-1
 the~ half:4
 the~ hall:-6
 the~ hand:-4
 the~ handout:1
 the~ hands:-1
 the~ hard:-6
 the~ heat:-7
 the~ hens:-8
 the~ hob:-1
 the~ holiday:-3
 the~ hood:-5
 the~ hot:1
 the~ house:7
 the~ internet:-3
 the~ jars:-6
 the~ jug:-3
 the~ kettle:7
 the~ kids:-4
 the~ kilo:6
 the~ kitchen:-5
 the~ label:4
 the~ lads:-3
 the~ lady:-3
 the~ last:2
 the~ lather:-1
 the~ laundry:3
 the~ leaflet:2
 the~ letter:2
 the~ library:-7
 the~ lid:2
 the~ light:-7
 the~ line:5
 the~ liquid:7
 the~ list:10
 the~ litre:7
 the~ little:1
 the~ loaf:-5
 the~ log:-7
 the~ long:1
 the~ look:-1
 the~ lot:2
 the~ lowest:-5
 the~ lump:-1
 the~ machine:-5
 the~ man:-5
 the~ margin:-1
 the~ mark:5
 the~ market:-4
 the~ mass:-6
 the~ measur:2
 the~ mechanic:4
 the~ melt:-2
 the~ mess:-4
 the~ middle:-5
 the~ mill:-4
 the~ miss:5
 the~ mix:6
 the~ mold:1
 the~ month:-5
 the~ moon:-4
 the~ morn:-6
 the~ most:-9
 the~ mould:-3
 the~ name:-7
 the~ neighbour:-3
 the~ new:-1
 the~ next:-5
 the~ night:-6
 the~ normal:-5
 the~ number:1
 the~ oil:2
 the~ oils:1
 the~ one:-1
 the~ ones:-4
 the~ only:-6
 the~ open:3
 the~ order:-5
 the~ original:2
 the~ other:2
 the~ oven:-8
 the~ packet:8
 the~ page:-5
 the~ pan:2
 the~ pantry:-9
 the~ paper:8
 the~ parish:-8
 the~ part:-5
 the~ paste:-4
 the~ patience:-4
 the~ phone:4
 the~ photo:3
 the~ picture:-3
 the~ place:8
 the~ plain:-5
 the~ plan:1
 the~ plastic:3
 the~ plate:4
 the~ point:-2
 the~ porch:-4
 the~ post:2
 the~ postman:2
 the~ pot:1
 the~ potato:-7
 the~ pour:-5
 the~ powder:4
 the~ power:-3
 the~ present:1
 the~ price:-7
 the~ printout:-4
 the~ question:-9
 the~ rack:-5
 the~ radiator:-4
 the~ radio:-7
 the~ rain:-4
 the~ ready:6
 the~ real:-9
 the~ reason:-8
 the~ recipe:-1
 the~ record:1
 the~ remain:-2
 the~ render:-5
 the~ rest:2
 the~ right:-7
 the~ roof:3
 the~ room:2
 the~ row:-7
 the~ rugby:-3
 the~ sack:-3
 the~ safe:4
 the~ salad:3
 the~ same:2
 the~ saturday:-2
 the~ scale:-3
 the~ school:2
 the~ scum:2
 the~ second:2
 the~ sf:-5
 the~ shed:1
 the~ sheet:7
 the~ shelf:-2
 the~ shop:2
 the~ shops:-6
 the~ shower:-7
 the~ side:6
 the~ sides:-3
 the~ sink:2
 the~ size:1
 the~ skin:-3
 the~ slip:-2
 the~ slow:-2
 the~ small:5
 the~ smell:1
 the~ soap':3
 the~ soap:-4
 the~ spatula:-2
 the~ spoon:-3
 the~ spr:-6
 the~ spreadsheet:-5
 the~ stall:2
 the~ start:1
 the~ steel:6
 the~ step:-1
 the~ stick:-8
 the~ stirr:-6
 the~ stove:6
 the~ suds:-3
 the~ sum:-2
 the~ summer:-2
 the~ sums:-1
 the~ sun:2
 the~ sunday:4
 the~ superfat:-5
 the~ supermarket:-4
 the~ surface:-8
 the~ swirl:-5
 the~ table:1
 the~ tap:-5
 the~ teacher:-4
 the~ temperature:-6
 the~ test:1
 the~ thermometer:-6
 the~ thing:-2
 the~ third:-2
 the~ thread:-7
 the~ thursday:-5
 the~ tiles:7
 the~ time:1
 the~ tin:5
 the~ tongue:-1
 the~ top:-3
 the~ towel:-1
 the~ train:-6
 the~ tray:-2
 the~ trimming:2
 the~ tub:2
 the~ unrefin:-6
 the~ usual:6
 the~ varnish:-5
 the~ very:-1
 the~ village:-1
 the~ wall:-5
 the~ war:-8
 the~ wardrobe:-4
 the~ warm:2
 the~ wash:-3
 the~ way:3
 the~ weather:-7
 the~ weekend:-8
 the~ weigh:7
 the~ weight:5
 the~ whisk:1
 the~ white:1
 the~ whole:-2
 the~ window:-7
 the~ windowsill:3
 the~ winter:-6
 the~ wire:-2
 the~ wood:-3
 the~ wooden:-4
 the~ word:-5
 the~ workshop:-3
 the~ worktop:-2
 the~ wrong:5
 the~ yard:-6
 the~ year:-7
 the~<:-4
 the~=:-3
 the~A:2
 the~B:-11
 the~C:-12
 the~F:5
 the~I:3
 the~K:4
 the~L:-2
 the~M:3
 the~N:-2
 the~T:-8
 the~W:5
 the~X:-3
 the~b:5
 the~e:-1
 the~l:-1
 the~t:-2
 the~v:-8
 the~w:-6
 thick:-3
 thicken:-2
 thicker:-7
 thick~ like:-5
 thick~ trace:-2
 thin:-3
 thing:-2
 thing~ ?:-7
 thing~ and:-2
 thing~ i:-8
 thing~ in:-6
 think:1
 think~ ?:-8
 think~ about:2
 think~ i:10
 think~ it:1
 think~ its:-1
 think~ my:1
 think~ of:-8
 think~ that:-8
 think~ the:4
 thinn:6
 thin~ stream:-4
 thin~ trace:-7
 third:2
 third~ attempt:-5
 third~ go:4
 third~ of:1
 third~ one:-3
 third~ time:-8
 this:3
 this~ ::4
 this~ ?:-6
 this~ a:-5
 this~ and:-8
 this~ batch:-4
 this~ be:-3
 this~ because:-7
 this~ before:-3
 this~ but:-7
 this~ for:5
 this~ from:1
 this~ house:3
 this~ i:-4
 this~ in:-2
 this~ is:-6
 this~ loaf:2
 this~ look:-3
 this~ morn:3
 this~ ok:-2
 this~ on:-8
 this~ one:5
 this~ ones:3
 this~ or:-6
 this~ pot:2
 this~ recipe:-10
 this~ right:-2
 this~ time:4
 this~ to:-3
 this~ was:-6
 this~ way:-4
 this~ week:-3
 this~ weekend:3
 this~ with:-8
 this~ year:5
 this~0:-7
 this~F:1
 tho:-9
 those:-1
 those~ are:3
 those~ days:-5
 those~ fats:-1
 those~ oils:-2
 those~ who:2
 those~0:2
 those~w:1
 though:1
 thought:1
 thought~ ?:-4
 thought~ i'd:-6
 thought~ i:-2
 thought~ it:-3
 thought~ on:-6
 though~ ?:-5
 though~ i:3
 thread:-8
 threw:6
 threw~ in:6
 threw~ the:-4
 through:1
 through~ a:3
 through~ an:-11
 through~ it:-3
 through~ the:3
 throw:-5
 thrown:7
 thru:1
 thumb:-3
 thursday:-5
 thx:-5
 tick:-1
 tight:-1
 til:-3
 tiles:6
 till:-1
 till~ it:1
 till~ its:-1
 till~ the:-2
 till~0:-6
 time:-4
 timer:-9
 times:2
 times~ i:3
 times~ in:-3
 times~ the:1
 times~0:9
 time~ and:-4
 time~ for:1
 time~ i'd:-1
 time~ in:4
 time~ is:-4
 time~ it:-9
 time~ ive:1
 time~ lurker:-4
 time~ post:-3
 time~ so:3
 time~ the:1
 time~ to:-3
 time~ with:-7
 time~t:-5
 tins:-7
 tins~ of:-2
 tiny:-3
 tin~ and:-1
 tin~ is:-9
 tin~ of:-4
 tin~ was:-2
 tin~ with:-9
 tip:-2
 tipp:7
 tipp~ in:6
 tipp~ the:-2
 tips:-5
 tip~ ::-6
 title:-3
 title~ ::-4
 to:-1
 toast:3
 today:-4
 today~ ::4
 today~ ?:-5
 toddler:5
 together:-2
 together~ ?:-2
 together~ in:-4
 together~ so:1
 together~ with:-6
 told:-5
 told~ her:-5
 told~ me:-2
 told~ us:-6
 told~F:-2
 tom:-2
 tomato:5
 tomorrow:-5
 tongue:-2
 tongue~ test:1
 tonight:6
 tonight~ ::-5
 tonight~ ?:-3
 too:2
 took:3
 took~ a:-6
 took~ ages:-4
 took~ forever:3
 took~ it:-3
 took~ me:-8
 took~ off:1
 took~ the:2
 took~0:-3
 took~<:1
 took~=:-8
 took~>:-4
 took~N:4
 took~l:1
 took~t:-11
 took~w:-6
 tools:-6
 too~ ?:-7
 too~ and:3
 too~ cold:-4
 too~ dry:-6
 too~ early:-9
 too~ fast:-3
 too~ hard:-1
 too~ harsh:-3
 too~ high:-6
 too~ hot:-7
 too~ late:-1
 too~ little:1
 too~ low:5
 too~ many:5
 too~ much:-4
 too~ quick:5
 too~ sharp:-3
 too~ soft:-5
 too~ soon:-6
 too~ strong:-1
 topp:9
 topp~ it:3
 topp~ the:4
 topp~ up:6
 tops:1
 top~ for:-4
 top~ is:-3
 top~ of:2
 top~ shelf:-6
 top~ which:-5
 total:3
 total~ of:-7
 touch:-4
 touch~ it:-6
 touch~ the:-7
 towel:-5
 towel~ over:-5
 towel~ round:-6
 towel~t:-2
 town:1
 to~ a:2
 to~ add:-1
 to~ ask:-5
 to~ be:3
 to~ bed:-6
 to~ buy:-6
 to~ check:-5
 to~ come:4
 to~ cool:-10
 to~ cut:-3
 to~ do:1
 to~ everyone:4
 to~ find:-4
 to~ finish:6
 to~ get:-3
 to~ grate:-3
 to~ hand:1
 to~ have:3
 to~ help:6
 to~ her:-8
 to~ hold:4
 to~ it:1
 to~ keep:-5
 to~ know:-4
 to~ light:-2
 to~ look:-8
 to~ make:1
 to~ mash:-2
 to~ me:-2
 to~ melt:-8
 to~ noth:1
 to~ open:-7
 to~ pour:-4
 to~ put:5
 to~ remember:-8
 to~ rough:-2
 to~ say:-1
 to~ sell:-2
 to~ set:5
 to~ slush:-8
 to~ soap:-6
 to~ someth:-5
 to~ spare:-2
 to~ spoon:-6
 to~ start:-7
 to~ take:6
 to~ tare:-8
 to~ tell:-1
 to~ test:-4
 to~ that:-7
 to~ the:-1
 to~ thicken:-1
 to~ this:-9
 to~ throw:-7
 to~ trace:-10
 to~ try:-4
 to~ unmould:-6
 to~ use:-3
 to~ wait:2
 to~ wash:3
 to~ waste:5
 to~ weigh:-6
 to~ work:-1
 to~ you:-4
 to~%:5
 to~0:-1
 to~<:6
 to~=:-3
 to~>:5
 to~F:-9
 to~T:-3
 to~X:-6
 to~b:-3
 to~d:-4
 to~e:-2
 to~t:5
 to~w:-5
 trac:-8
 trace:1
 trace~ ::-3
 trace~ add:3
 trace~ after:-5
 trace~ and:-9
 trace~ at:-2
 trace~ because:6
 trace~ came:-6
 trace~ for:4
 trace~ i:-6
 trace~ in:-7
 trace~ pour:-5
 trace~ stir:-6
 trace~ then:-2
 trace~ was:-5
 trace~0:-4
 trace~t:-7
 trace~w:-4
 track:4
 tractor:-5
 trac~ after:-3
 trac~ in:-3
 trade:-10
 trail:-3
 train:-8
 translat:-4
 translate:-5
 translat~ from:-3
 translucent:-3
 tray:-5
 trays:-4
 treat:-3
 trial:-8
 trick:-9
 trick~ for:-5
 tried:-9
 tried~ it:3
 tries:1
 trim:-7
 trimm:1
 trimming:-1
 tripl:-8
 trouble:-4
 true:-1
 trust:-5
 trust~ it:-5
 trust~ the:-5
 try:-12
 try~ it:-7
 try~ to:-2
 tub:-1
 tube:-5
 tubs:3
 tub~ ::-7
 tub~ and:-8
 tub~ is:-5
 tub~ of:-3
 tub~ says:-6
 tue:-3
 tuesday:-2
 tuesday~ ::-5
 tue~t:-1
 turn:-2
 turns~ out:8
 turns~0:-5
 turn~ it:-3
 turn~ out:5
 turn~ the:-3
 turn~ to:1
 turn~S:-4
 tutor:-2
 twentieth:3
 twice:3
 twice~ a:-4
 twice~ and:4
 twice~ before:-9
 twice~ i:4
 twice~ with:-7
 typ:-8
 type:3
 typed:7
 typed~ the:7
 type~ ::-7
 typo:2
 u:-7
 ugh:1
 ugly:-7
 um:1
 uncl:-7
 uncle:-2
 under:-4
 underneath:-6
 understand:-7
 under~ a:-2
 under~ it:3
 under~ the:3
 under~0:-8
 under~d:-3
 under~t:-3
 under~w:-7
 unit:-3
 units:-6
 unit~ ::-3
 unles:1
 unmold:-7
 unmould:-7
 unmould~ after:-5
 unmould~t:-1
 unrefin:-9
 unsaponifi:10
 unscent:-7
 until:-1
 until~ a:-5
 until~ both:-1
 until~ i:-5
 until~ it:-1
 until~ its:-4
 until~ the:3
 until~ you:-3
 until~t:-1
 up:6
 update:3
 upon:3
 up~ ::2
 up~ ?:-6
 up~ a:-5
 up~ again:-9
 up~ and:1
 up~ at:1
 up~ by:3
 up~ for:-5
 up~ i:-6
 up~ in:-3
 up~ like:-5
 up~ my:-1
 up~ on:6
 up~ so:2
 up~ the:3
 up~ there:5
 up~ to:4
 up~ with:1
 up~0:9
 ur:-6
 use:-3
 used:3
 used~ a:-3
 used~ all:-10
 used~ that:8
 used~ the:7
 used~ to:-8
 used~0:-4
 used~=:-7
 used~>:-4
 used~F:-6
 used~L:2
 used~N:-4
 used~l:-4
 used~w:-1
 uses:-4
 use~ ?:-2
 use~ a:-2
 use~ for:-1
 use~ in:-5
 use~ it:-8
 use~ the:-5
 use~ them:-4
 use~ up:5
 use~=:1
 use~>:2
 use~F:-9
 use~I:-5
 use~N:-1
 use~l:-3
 using:3
 using~=:-5
 usual:3
 us~ the:-3
 vanish:-3
 varnish:-5
 vegan:-10
 vegetable:-5
 vegetarian:-7
 verdict:-3
 verdict~ ?:-3
 verify:-7
 verify~ the:-6
 version:-5
 version~0:3
 very~ first:-7
 very~ nice:-6
 vet:-5
 video:-6
 village:-2
 village~ hall:-1
 virgin:-6
 voice:2
 volcano:-9
 volume:-1
 w:1
 wait:-3
 waits:2
 wait~ for:-8
 wait~ i:-7
 wait~ till:-5
 wait~ until:-7
 wait~t:-4
 walk:4
 wall:-3
 want:3
 wants:-2
 wants~ a:-5
 wants~ it:-5
 wants~ me:-2
 wants~ some:-2
 wants~ the:-5
 wants~ to:-5
 want~ a:-4
 want~ the:5
 want~ to:-3
 want~0:6
 want~F:-7
 war:-9
 wardrobe:-5
 warm:-6
 warmth:-6
 warm~ in:-5
 warm~ it:-3
 warm~ oils:3
 warm~ the:-9
 warm~ to:-7
 warm~F:-3
 warn:-9
 was:5
 wash:-7
 wash~ house:-4
 wash~ it:3
 wash~ the:-5
 wash~ with:-6
 wasnt:13
 wast:3
 was~ a:1
 was~ all:2
 was~ already:5
 was~ at:-6
 was~ call:1
 was~ clean:-4
 was~ clear:-7
 was~ cold:4
 was~ done:1
 was~ empty:9
 was~ fine:-2
 was~ finish:7
 was~ for:-3
 was~ from:1
 was~ going:-5
 was~ gone:-4
 was~ half:-6
 was~ hard:-7
 was~ hot:-4
 was~ in:3
 was~ it:-4
 was~ left:-1
 was~ like:2
 was~ meant:4
 was~ melt:3
 was~ my:-4
 was~ near:2
 was~ never:-2
 was~ no:-2
 was~ not:9
 was~ off:8
 was~ old:-4
 was~ on:2
 was~ one:5
 was~ only:1
 was~ open:7
 was~ out:5
 was~ over:4
 was~ pour:2
 was~ ready:-2
 was~ real:5
 was~ right:-5
 was~ so:4
 was~ soft:3
 was~ stand:7
 was~ stirr:-2
 was~ that:-5
 was~ the:-4
 was~ there:3
 was~ thick:-4
 was~ told:1
 was~ too:-5
 was~ under:-5
 was~ very:-8
 was~ warm:-5
 was~ weigh:5
 was~ what:-3
 was~ with:1
 was~%:-10
 was~0:-3
 was~<:3
 was~=:-9
 was~>:-8
 was~A:4
 was~F:4
 was~L:5
 was~N:3
 was~X:6
 was~b:4
 was~d:-7
 was~e:7
 was~l:-8
 was~t:-5
 was~v:3
 was~w:5
 watch:-7
 watch~ the:-7
 water:1
 water~ bath:-5
 waxy:-4
 way:2
 way~ about:2
 way~ and:1
 way~ in:6
 way~ of:-6
 way~ round:-1
 way~ to:-1
 we:1
 wear:-9
 wear~ goggl:-5
 weather:-6
 wed:-1
 wedd:-2
 wedd~ favour:1
 wednesday:-7
 week:-5
 weeks:1
 week~ and:-9
 week~ so:5
 week~0:-10
 weigh:-1
 weight:1
 weight~ ::-7
 weight~ and:3
 weight~ g:-3
 weight~ in:3
 weight~ made:-6
 weight~ not:-9
 weight~ of:-2
 weight~ oz:-5
 weight~ so:-6
 weight~A:-7
 weigh~ ?:-6
 weigh~ a:-6
 weigh~ after:-4
 weigh~ again:5
 weigh~ and:-3
 weigh~ anyth:-1
 weigh~ as:4
 weigh~ by:6
 weigh~ everyth:-8
 weigh~ i:-4
 weigh~ it:1
 weigh~ like:1
 weigh~ my:4
 weigh~ on:2
 weigh~ one:-2
 weigh~ out:-6
 weigh~ the:2
 weigh~0:3
 weigh~<:-7
 weigh~=:-6
 weigh~F:-4
 weigh~e:7
 weigh~l:-3
 weigh~w:-10
 welcome:-5
 well:-1
 well~ and:-5
 well~ as:-4
 well~ be:6
 well~ have:7
 went:3
 went~ a:5
 went~ above:-7
 went~ away:-7
 went~ back:-2
 went~ brown:-5
 went~ by:-4
 went~ clear:-7
 went~ cloudy:-7
 went~ dark:-2
 went~ down:6
 went~ for:4
 went~ from:-8
 went~ in:7
 went~ into:4
 went~ on:4
 went~ over:2
 went~ the:-3
 went~ through:1
 went~ to:-4
 went~ with:3
 went~ without:3
 went~ wrong:-5
 went~ yellow:-6
 went~=:-9
 went~S:-6
 were:1
 were~ at:-5
 were~ on:-4
 were~0:2
 were~F:4
 were~w:-1
 wet:5
 wet~ cloth:-4
 wet~ dog:-3
 weve:-3
 weve~ got:-5
 we~ are:-1
 we~ count:-5
 we~ cut:-6
 we~ did:4
 we~ do:2
 we~ got:-7
 we~ had:1
 we~ have:-4
 we~ keep:-8
 we~ made:-6
 we~ make:2
 we~ pour:-5
 we~ put:-7
 we~ render:-2
 we~ say:4
 we~ split:-6
 we~ still:-9
 we~ took:1
 we~ use:-8
 we~ used:-3
 we~ want:4
 we~ weigh:2
 we~ were:5
 we~ write:-3
 what:4
 whatever:5
 whatever~ the:9
 whatever~ was:11
 whats:1
 whatsoever:1
 whats~ in:1
 whats~ left:-6
 whats~ the:-5
 what~ a:-7
 what~ came:5
 what~ did:-3
 what~ do:1
 what~ does:-8
 what~ g:-4
 what~ happen:-6
 what~ how:-8
 what~ i'd:4
 what~ i:7
 what~ im:3
 what~ is:-6
 what~ it:4
 what~ ive:-8
 what~ my:-2
 what~ she:-5
 what~ superfat:-9
 what~ they:5
 what~ to:1
 what~ was:-5
 what~ we:-2
 what~ went:-1
 what~ would:-6
 what~ you:-3
 when:-1
 whenever:-1
 when~ both:-5
 when~ cut:-6
 when~ i:2
 when~ it:2
 when~ its:-1
 when~ the:2
 when~ wash:1
 when~ you:1
 when~F:-9
 where:4
 where~ i:-5
 where~ it:6
 where~ my:2
 where~ she:-7
 where~ the:4
 where~ you:-6
 whether:-4
 whether~ it:-4
 whether~ the:1
 whether~F:-8
 whether~b:-3
 which:2
 which~ bring:-1
 which~ i:5
 which~ is:-4
 which~ makes:-6
 which~ of:2
 which~ one:7
 which~ the:2
 which~ was:-3
 which~F:-6
 while:-2
 while~ i:6
 while~ it:-1
 while~ that:-3
 while~ the:-7
 whipp:2
 whisk:-6
 white:-8
 whiteboard:-7
 whiter:-4
 white~ and:2
 white~ as:-8
 white~ powder:-4
 white~ spots:-3
 white~F:-2
 who:-1
 whoever:-1
 whole~ grams:-8
 whole~ thing:3
 whole~ time:-3
 whos:-3
 whose:3
 whos~ right:-3
 who~ asked:-5
 who~ cant:2
 who~ does:1
 who~ has:-4
 who~ is:-5
 who~ knows:4
 why:-13
 why~ ?:-4
 why~ does:-2
 why~ i:-4
 why~ it:-5
 why~ its:-5
 why~ the:-6
 why~F:-2
 width:-4
 wife:-2
 wifes:-2
 wife~ likes:-5
 wife~ says:2
 will:-7
 will~ be:-6
 will~ climb:-6
 will~ do:-7
 will~ it:-3
 will~ need:-2
 will~ that:-2
 will~ the:-6
 will~ this:-2
 wind:-6
 window:-10
 windowsill:1
 window~ open:-8
 winter:-4
 winter~ and:5
 winter~ bar:-2
 winter~ hands:-6
 winter~ i:-3
 wipe:-6
 wiped:-1
 wire:-6
 wise:-5
 wish:4
 with:1
 within:-8
 within~t:-6
 without:6
 without~ a:-10
 without~ it:1
 without~ my:-1
 without~F:-2
 with~ a:-2
 with~ all:-6
 with~ an:-5
 with~ bak:-3
 with~ both:-6
 with~ coins:3
 with~ everyth:5
 with~ freezer:-4
 with~ glov:-2
 with~ goggl:-3
 with~ it:-1
 with~ its:-3
 with~ more:3
 with~ my:-9
 with~ no:-1
 with~ noth:4
 with~ one:3
 with~ only:-7
 with~ some:1
 with~ that:2
 with~ the:2
 with~ this:2
 with~ us:-4
 with~ wet:-4
 with~ what:2
 with~%:8
 with~0:-2
 with~<:-3
 with~=:-4
 with~>:-7
 with~A:1
 with~B:-1
 with~C:2
 with~F:-6
 with~I:-5
 with~L:-5
 with~N:1
 with~S:-8
 with~U:4
 with~W:2
 with~X:1
 with~b:-3
 with~e:-7
 with~l:-8
 with~v:-2
 with~w:3
 woman:-10
 woman~ at:-2
 women:-4
 wonder:8
 wonky:-9
 wont:-2
 wood:-8
 wooden:-2
 wooden~ box:-2
 wooden~ mould:-7
 wooden~ one:-5
 wooden~ spoon:1
 wood~ stove:-3
 words:-7
 word~ for:-6
 work:-1
 works:-8
 worksheet:-4
 workshop:-3
 worktop:-2
 work~ ?:-2
 work~ in:1
 work~ it:2
 work~ out:-4
 work~ with:1
 worri:2
 worry:-2
 worry~ is:1
 worth:-2
 worth~ of:4
 would:-1
 wouldnt:5
 wouldnt~ dissolve:7
 would~ a:-4
 would~ be:-2
 would~ do:-7
 would~ have:-3
 would~ it:1
 would~ like:3
 would~ love:1
 would~ not:-5
 would~ say:1
 would~ that:-3
 would~ the:-7
 would~ you:3
 wrap:-7
 wrapp:-10
 wrapper:-7
 wrapp~ in:-5
 wrapp~ it:-3
 wrap~ in:-1
 wrist:-5
 writ:-6
 write:-5
 write~ down:-7
 write~ the:-7
 write~ up:-5
 written:3
 written~ ?:-5
 written~ on:-6
 wrong~ ?:-4
 wrong~ or:-5
 wrong~ with:-5
 wrote~ ::-4
 wrote~ down:1
 wrote~ it:4
 wrote~ on:-5
 wrote~ that:-5
 wrote~ this:-2
 wrote~F:4
 wt:-8
 w~ a:-8
 w~ my:-3
 w~ the:1
 w~ w:1
 w~=:-3
 w~L:1
 x:2
 xmas:1
 x~0:4
 x~F:-10
 yall:-6
 yard:-8
 year:-7
 years:-6
 years~ ago:-2
 year~ i:-8
 year~ in:-5
 year~ is:4
 year~0:-6
 yellow:-9
 yes:-4
 yesterday:-4
 yesterday~ i:1
 yes~ i:-1
 yes~ its:-7
 yes~ no:-4
 yes~ or:-1
 yes~ the:-2
 yet:7
 yield~0:2
 you:-3
 youd:-4
 youll:-3
 young:-2
 your:-9
 youre:-10
 yours:-1
 your~ arm:-1
 your~ own:2
 your~ skin:-4
 your~A:-4
 your~F:-3
 youve:-10
 you~ ?:-2
 you~ all:-7
 you~ and:-4
 you~ are:-4
 you~ ask:2
 you~ asked:-3
 you~ call:-8
 you~ can:-3
 you~ cant:-6
 you~ check:-5
 you~ confirm:-4
 you~ could:-10
 you~ cut:-3
 you~ do:2
 you~ dont:-8
 you~ feel:-2
 you~ for:-8
 you~ get:-3
 you~ go:-6
 you~ know:5
 you~ like:-8
 you~ look:-4
 you~ lot:-3
 you~ make:-6
 you~ need:-9
 you~ pour:-8
 you~ put:-8
 you~ say:-2
 you~ see:-2
 you~ should:5
 you~ start:-5
 you~ tell:3
 you~ think:-3
 you~ to:-4
 you~ trust:-1
 you~ use:-3
 you~ wait:-4
 you~ want:-8
 you~ weigh:-6
 you~ will:4
 you~ wont:2
 you~ work:3
 zap:-7
 zapp:4
 zappy:-5
 zaps:1
 zap~ test:-3
 zero:4
 zero~ the:6
 zutat:-4
 üf:-7
%%:-3
%0:-9
%:7
%<:-6
%=:-1
%>:-7
%A:5
%F:-2
%K:-6
%N:3
%S:-6
%W:1
%X:1
%l:-3
%t:-6
%w:2
%~ ?:-2
%~ and:-4
%~ by:2
%~ extra:6
%~ flak:2
%~ for:10
%~ half:-9
%~ in:-2
%~ is:-1
%~ less:-3
%~ liquid:6
%~ of:1
%~ on:4
%~ or:3
%~ over:5
%~ pure:-6
%~ purity:-5
%~ sf:-5
%~ so:6
%~ solution:-3
%~ superfat:1
%~ w:-4
%~ with:5
%~=:-5
%~A:4
%~F:-5
%~K:-6
%~W:-3
%~X:2
0%:-5
00:-4
0:4
0<:-2
0>:-1
0A:-1
0C:4
0F:-1
0I:5
0K:-7
0M:3
0N:3
0S:-3
0W:2
0X:-6
0b:-3
0d:-3
0l:-2
0r:-3
0t:-5
0v:-7
0w:-5
0~ =:-8
0~ ?:2
0~ a:-11
0~ after:2
0~ all:6
0~ and:-1
0~ are:3
0~ as:7
0~ at:-1
0~ b:-9
0~ bar:-5
0~ bars:-7
0~ batch:-3
0~ because:9
0~ before:4
0~ big:-4
0~ block:1
0~ both:-4
0~ bottl:-6
0~ bucket:-5
0~ but:-2
0~ c:-4
0~ cakes:-2
0~ can:-6
0~ caviti:-5
0~ children:-7
0~ comment:-3
0~ cut:3
0~ degre:-4
0~ drops:-7
0~ empty:2
0~ evening:-4
0~ except:5
0~ famili:-6
0~ fat:-3
0~ fats:-8
0~ for:-6
0~ from:2
0~ full:-7
0~ gives:-5
0~ goats:-7
0~ goes:-2
0~ good:1
0~ group:-6
0~ guest:-5
0~ had:-10
0~ i:6
0~ if:-3
0~ in:-3
0~ into:4
0~ is:2
0~ it:-2
0~ ive:1
0~ jars:-1
0~ kitchen:-5
0~ lather:-3
0~ left:-8
0~ like:-4
0~ little:-6
0~ loaf:-3
0~ lyes:-8
0~ made:-7
0~ more:-6
0~ mould:-1
0~ my:5
0~ n:-2
0~ night:-4
0~ no:4
0~ not:4
0~ now:1
0~ of:3
0~ oil:-5
0~ oils:-4
0~ on:9
0~ once:3
0~ one:-4
0~ or:5
0~ out:2
0~ p:-7
0~ packs:-1
0~ pcs:-6
0~ people:-7
0~ per:-5
0~ percent:5
0~ piec:-2
0~ please:9
0~ plus:2
0~ pots:2
0~ pour:-4
0~ pupil:-3
0~ right:-3
0~ round:-1
0~ scal:-6
0~ she:-1
0~ silicone:-2
0~ since:4
0~ slic:-6
0~ small:-8
0~ so:-5
0~ someth:-1
0~ spoon:2
0~ still:-8
0~ superfat:7
0~ that:-4
0~ thats:2
0~ the:4
0~ then:3
0~ there:1
0~ thing:-8
0~ this:2
0~ times:-2
0~ tins:-3
0~ to:2
0~ together:1
0~ towel:-6
0~ until:-7
0~ w:6
0~ was:-4
0~ weigh:-3
0~ went:3
0~ when:5
0~ which:-3
0~ winter:-1
0~ with:-8
0~ without:-6
0~ x:2
0~ zap:-5
0~ ×:-7
0~0:-3
0~A:-5
0~F:-4
0~L:-1
0~S:3
0~W:-3
0~X:6
0~b:-11
0~t:-5
0~w:-3
<%:2
<0:-3
<:3
<<:-3
<=:-6
<>:-4
<A:5
<C:3
<F:2
<I:-10
<K:9
<L:3
<N:-3
<S:-2
<W:-4
<X:2
<d:-4
<l:-7
<t:-1
<v:-3
<w:-5
<~ +:-7
<~ and:4
<~ because:2
<~ i:-6
<~ in:-1
<~ less:-2
<~ more:8
<~ of:2
<~ plain:-7
<~ short:4
<~ so:-1
<~ the:5
<~C:3
<~F:2
<~I:-4
<~L:-3
<~S:-2
<~W:-6
<~X:-6
=%:-11
=0:5
=:-4
=<:-4
==:-3
=>:-3
=A:-2
=C:1
=F:-4
=I:-3
=K:-1
=N:4
=S:-1
=W:-2
=X:-1
=b:-3
=d:-1
=e:-2
=r:-4
=t:-3
=v:-6
=w:-4
=~ +:-5
=~ ::4
=~ =:-8
=~ after:-1
=~ all:-4
=~ and:-6
=~ as:3
=~ at:-4
=~ bag:-8
=~ block:-7
=~ both:-3
=~ check:-2
=~ clean:-3
=~ cold:-1
=~ did:-1
=~ dissolv:-5
=~ does:-2
=~ for:-4
=~ free:-8
=~ from:-2
=~ goes:-3
=~ good:-1
=~ he:-7
=~ i:-6
=~ im:-7
=~ in:-2
=~ into:-6
=~ it:-7
=~ its:1
=~ last:-5
=~ melt:-7
=~ mk:-5
=~ my:2
=~ no:-7
=~ not:-12
=~ of:-3
=~ ok:-2
=~ on:2
=~ out:-5
=~ plain:-5
=~ please:-3
=~ plus:4
=~ smell:-1
=~ so:-7
=~ soap:-1
=~ superfat:-8
=~ that:-7
=~ then:-4
=~ too:-3
=~ tub:-6
=~ weigh:-8
=~ what:-2
=~ with:3
=~%:-6
=~0:4
=~<:-5
=~=:-2
=~>:-1
=~A:-3
=~F:-3
=~L:-3
=~W:-3
=~X:-3
=~t:-2
>%:-3
>0:-7
>:-3
><:-3
>=:-2
>>:-5
>A:-3
>F:-2
>K:-6
>W:-5
>e:-11
>l:-6
>t:-2
>w:-5
>~ i:-6
>~ in:-2
>~ is:-6
>~ of:-4
>~ oils:-1
>~ so:-6
>~ the:-5
>~ tub:-5
>~ with:-4
>~A:-4
>~F:4
>~L:-5
>~W:-6
A%:4
A0:4
A<:1
A=:-3
A>:-1
AA:2
AB:4
AC:-9
AF:3
AI:-7
AK:-7
AL:2
AN:-8
AS:-3
AW:-2
Ad:1
Ae:2
Al:-8
Ar:-8
At:-5
Av:1
Aw:-4
A~ +:-1
A~ ::5
A~ ?:-7
A~ a:-6
A~ about:-4
A~ all:1
A~ alright:-6
A~ and:-1
A~ as:8
A~ at:-5
A~ bag:2
A~ be:-2
A~ because:-4
A~ before:-6
A~ but:-3
A~ by:-1
A~ came:-6
A~ check:-6
A~ comes:5
A~ cool:2
A~ correct:-9
A~ dissolv:-3
A~ do:-1
A~ does:-6
A~ down:3
A~ enough:-4
A~ figure:3
A~ fine:-4
A~ fit:-6
A~ fits:-5
A~ for:1
A~ from:6
A~ g:-9
A~ gets:-5
A~ goes:-7
A~ good:-7
A~ got:7
A~ had:3
A~ half:-5
A~ has:7
A~ heavy:1
A~ here:7
A~ i:4
A~ if:5
A~ in:-1
A~ into:-5
A~ is:4
A~ it:4
A~ its:6
A~ ive:2
A~ jug:-3
A~ left:-3
A~ like:-4
A~ look:1
A~ looks:-2
A~ no:-6
A~ not:5
A~ number:-2
A~ of:2
A~ ok:-6
A~ okay:-4
A~ on:-6
A~ one:-6
A~ only:2
A~ or:-5
A~ over:-9
A~ paste:2
A~ per:3
A~ please:-7
A~ pls:-4
A~ pot:6
A~ ready:-7
A~ real:-8
A~ right:-5
A~ row:-1
A~ says:2
A~ sensible:-4
A~ she:-7
A~ slow:-6
A~ so:4
A~ soap:-3
A~ sprinkl:-2
A~ still:-7
A~ that:-6
A~ the:-5
A~ then:-3
A~ there:1
A~ too:-10
A~ tub:5
A~ up:6
A~ was:-1
A~ weigh:8
A~ went:1
A~ when:1
A~ where:5
A~ with:1
A~ wrong:-5
A~ you:5
A~%:-4
A~0:-1
A~<:3
A~=:-2
A~>:-6
A~A:-5
A~F:-7
A~L:2
A~W:1
A~d:-3
A~e:-3
A~r:-6
A~t:6
A~v:-3
B0:-4
B:3
BF:3
B~ and:-9
B~ in:-2
B~ so:-6
C%:-6
C:5
C<:1
CA:5
CW:1
Cv:4
Cw:1
C~ at:4
C~ in:5
C~ is:-4
C~%:-6
C~<:-4
F%:1
F0:-1
F:1
F<:4
F=:-3
F>:-1
FA:-2
FB:5
FI:-4
FK:-4
FN:6
FS:-9
FT:-4
FU:3
FX:2
Fd:-2
Fe:1
Fl:-7
Fr:6
Ft:-4
Fv:-9
Fw:2
F~ +:3
F~ ::4
F~ =:3
F~ ?:-12
F~ a:1
F~ about:-2
F~ add:3
F~ after:4
F~ again:1
F~ alone:-4
F~ altogether:-1
F~ and:1
F~ are:3
F~ as:5
F~ at:2
F~ back:7
F~ bar:-6
F~ bars:-10
F~ batch:-9
F~ because:5
F~ beef:-5
F~ before:-3
F~ block:-3
F~ bottle:-7
F~ but:-2
F~ by:-1
F~ came:1
F~ can:-4
F~ clean:-4
F~ cold:-5
F~ comes:-10
F~ cook:-4
F~ could:7
F~ count:-7
F~ does:-6
F~ down:7
F~ extra:5
F~ figure:1
F~ fills:-8
F~ first:-6
F~ for:-4
F~ from:-5
F~ g:-6
F~ gent:-7
F~ gives:-6
F~ go:-3
F~ goes:-8
F~ gone:-3
F~ got:8
F~ grams:-5
F~ had:-3
F~ half:-3
F~ has:-6
F~ here:3
F~ i'd:5
F~ i:2
F~ if:-7
F~ im:8
F~ in:2
F~ instead:4
F~ into:-3
F~ it:5
F~ its:2
F~ ive:8
F~ jar:-4
F~ jug:3
F~ keeps:-5
F~ l:-3
F~ last:-9
F~ left:-2
F~ like:2
F~ line:7
F~ look:3
F~ looks:-4
F~ makes:-4
F~ melt:-11
F~ melts:-6
F~ my:3
F~ myself:-4
F~ n:4
F~ never:11
F~ next:-5
F~ no:-7
F~ not:2
F~ noth:-6
F~ now:8
F~ on:-6
F~ once:-6
F~ one:-11
F~ only:2
F~ or:-8
F~ out:2
F~ over:-4
F~ oyl:-4
F~ packet:7
F~ paste:-6
F~ plus:1
F~ ran:2
F~ read:1
F~ real:-7
F~ render:-7
F~ right:-5
F~ rspo:-7
F~ says:-4
F~ second:-2
F~ sets:-3
F~ should:2
F~ since:2
F~ smell:-9
F~ so:5
F~ soap:-5
F~ soaps:-6
F~ stand:2
F~ stay:9
F~ stays:-1
F~ still:5
F~ stirr:-3
F~ strain:4
F~ stuck:2
F~ takes:-8
F~ than:2
F~ that:-5
F~ thats:3
F~ the:-2
F~ then:-2
F~ there:4
F~ thicken:-7
F~ this:-2
F~ through:-7
F~ tin:-2
F~ to:4
F~ together:3
F~ too:-6
F~ trac:-8
F~ tub:-3
F~ turn:6
F~ twice:4
F~ until:7
F~ up:3
F~ used:-4
F~ w:2
F~ warm:-6
F~ was:-2
F~ weigh:-5
F~ well:1
F~ went:-2
F~ were:-1
F~ when:-1
F~ which:-2
F~ while:3
F~ will:-6
F~ would:2
F~ wouldnt:-2
F~ you:6
F~%:1
F~0:4
F~<:2
F~=:-2
F~>:-3
F~A:-3
F~F:-4
F~N:7
F~W:-1
F~d:-3
F~e:-1
F~t:-10
I0:3
I:1
IA:-2
II:1
IL:4
IW:1
Ib:-6
Id:4
Iw:-7
I~ +:-3
I~ ::3
I~ and:-1
I~ bath:-1
I~ first:-6
I~ had:7
I~ in:-4
I~ is:-1
I~ it:6
I~ round:-8
I~ so:-4
I~ tray:1
I~ was:5
I~<:2
K%:-6
K0:-8
K:2
K=:-1
K>:-8
KA:-6
KF:-6
KL:-3
KW:-3
Kd:-6
Kr:2
Kt:-3
K~ ::-5
K~ and:-4
K~ at:-2
K~ g:-6
K~ in:-3
K~ into:3
K~ is:3
K~ mixed:4
K~ my:-8
K~ of:-6
K~ on:6
K~ was:-4
K~%:-8
K~>:-7
K~A:-1
K~r:-1
L0:-2
L:2
L<:-5
L=:-1
L>:4
LA:-7
LF:2
LI:5
LL:3
LN:3
LS:6
LU:-4
LW:2
LX:-3
Lb:2
Le:2
Ll:-6
Lt:-2
Lv:-5
Lw:-2
L~ ::2
L~ after:-1
L~ and:-1
L~ as:3
L~ at:-1
L~ bar:-6
L~ bars:-4
L~ batch:-7
L~ because:1
L~ boil:2
L~ by:-2
L~ flat:3
L~ for:-1
L~ from:9
L~ frozen:-8
L~ goes:-7
L~ i:-2
L~ in:-1
L~ instead:-8
L~ into:-1
L~ it:-1
L~ no:-10
L~ of:7
L~ on:3
L~ out:7
L~ over:2
L~ pot:-6
L~ same:6
L~ so:3
L~ soap:-6
L~ stage:-4
L~ straight:-1
L~ thaw:-5
L~ the:4
L~ to:3
L~ towel:2
L~ was:5
L~ went:3
L~ which:5
L~ with:4
L~0:-2
L~=:-1
L~>:-2
L~X:-4
L~b:9
L~l:-10
L~t:-2
L~w:1
M0:2
M:3
MA:4
M~ and:-5
M~ in:4
M~ is:2
M~ soap:-7
M~ was:1
N0:3
N:9
N<:-1
NA:-4
NL:3
NN:-2
Nb:5
Nl:1
Nt:-11
Nw:4
N~ after:-1
N~ and:-10
N~ as:1
N~ at:-3
N~ because:2
N~ from:10
N~ i:8
N~ if:2
N~ in:1
N~ is:-2
N~ it:10
N~ or:-8
N~ same:7
N~ since:5
N~ so:2
N~ that:-2
N~ the:8
N~ to:5
N~ was:-6
N~ where:6
N~ would:-7
N~N:-2
S%:-7
S0:-5
S:-5
S<:-3
SA:-4
SF:-8
SL:-5
SN:9
SS:-5
SX:-2
Sd:-1
St:-6
Sv:-5
Sw:-4
S~ ::-4
S~ a:-5
S~ and:-1
S~ as:-3
S~ at:-6
S~ because:3
S~ blend:-4
S~ fades:-4
S~ for:-6
S~ from:-4
S~ goes:-5
S~ i:-6
S~ in:1
S~ is:7
S~ leav:-3
S~ mould:-6
S~ no:-2
S~ once:-2
S~ only:6
S~ pour:-1
S~ powder:-5
S~ smell:-5
S~ spots:-5
S~ the:-4
S~ then:-4
S~ was:1
S~ when:-5
S~ which:-5
S~0:-5
S~<:-3
S~S:-3
S~w:-5
T%:-6
T0:-2
T:-8
T=:-2
TF:-4
T~ of:-6
T~ oils:-3
U0:-1
U:5
UF:2
Ut:-3
U~ and:-2
U~ i:-7
U~ in:3
U~ stage:-3
W%:-7
W0:6
W:1
W<:4
W=:-3
W>:-4
WA:-1
WC:1
WF:-4
WI:-2
WL:5
WS:-3
WW:3
WX:1
Wb:3
Wd:-4
We:-2
Wr:-1
Wt:3
Wv:-7
Ww:-2
W~ +:-2
W~ ::-1
W~ =:-6
W~ ?:-8
W~ a:6
W~ after:-4
W~ all:-2
W~ and:-2
W~ as:4
W~ at:3
W~ because:4
W~ before:3
W~ boil:-3
W~ but:2
W~ by:-1
W~ clear:-5
W~ does:-6
W~ down:3
W~ first:-5
W~ for:-3
W~ from:-5
W~ g:-8
W~ got:-3
W~ here:-7
W~ i:6
W~ into:-7
W~ is:2
W~ it:3
W~ let:-3
W~ like:1
W~ looks:-6
W~ makes:-8
W~ never:-4
W~ on:-8
W~ only:-4
W~ or:5
W~ out:-8
W~ outdoor:-1
W~ since:4
W~ so:-3
W~ that:-5
W~ the:2
W~ then:-1
W~ to:-7
W~ too:8
W~ was:8
W~ weigh:-5
W~ went:3
W~ when:5
W~ which:3
W~ with:2
W~ would:-5
W~0:2
W~<:1
W~=:-3
W~A:-4
W~e:-2
W~r:-5
W~t:-3
W~v:-5
X%:3
X0:1
X:-3
X<:2
X=:-6
X>:-2
XA:-4
XC:-7
XF:-2
XL:3
XN:9
XS:-2
XW:3
Xl:4
Xt:-3
Xv:-3
Xw:-1
X~ ::-1
X~ ?:-4
X~ a:-6
X~ and:1
X~ at:-7
X~ bar:3
X~ bars:-7
X~ came:-5
X~ dissolv:-10
X~ fine:-3
X~ for:1
X~ from:-8
X~ goes:-3
X~ ground:-7
X~ i:5
X~ is:-3
X~ it:-6
X~ makes:-1
X~ no:-6
X~ of:-8
X~ so:-3
X~ the:-5
X~ this:4
X~ to:-10
X~ was:2
X~ went:1
X~0:2
X~<:-7
X~W:-4
X~v:-4
X~w:-5
^ *:-7
^ ::4
^ =:-5
^ a:-1
^ about:13
^ add:1
^ added:9
^ after:2
^ all:4
^ also:-2
^ alway:3
^ am:-5
^ an:5
^ and:-7
^ answer:-1
^ any:-5
^ anyone:-9
^ anyth:-3
^ are:-3
^ as:4
^ ask:-10
^ at:-1
^ attempt:-5
^ b:-8
^ back:-8
^ bar:-5
^ bars:-6
^ base:-4
^ basic:-5
^ batch:-11
^ be:-8
^ been:-7
^ before:-7
^ between:6
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
^ bottle:8
^ bought:-5
^ box:-4
^ bring:-2
^ bubbl:-6
^ but:-9
^ by:-4
^ c:-5
^ came:1
^ castile:-6
^ chang:3
^ check:-9
^ christma:-4
^ ciao:-4
^ clean:-1
^ cold:-4
^ combine:-3
^ comment:-4
^ confetti:-4
^ cook:-3
^ cool:-3
^ copi:-2
^ correct:1
^ correction:9
^ cost:-8
^ couldnt:9
^ cover:-7
^ crock:-3
^ crockpot:-5
^ cure:-4
^ cured:-6
^ cut:-2
^ d:-5
^ dad:3
^ dads:-5
^ date:-2
^ day:-9
^ dear:1
^ did:-3
^ dissolv:-4
^ dissolve:-1
^ do:-5
^ does:-3
^ dog:3
^ done:-5
^ dont:-11
^ doubl:2
^ dropp:-2
^ e:-4
^ each:1
^ earlier:-6
^ empty:-8
^ ended:3
^ enough:-6
^ entry:1
^ even:-2
^ every:2
^ everyone:-8
^ everyth:5
^ expect:-7
^ export:-4
^ f:-6
^ fat:-7
^ fats:-10
^ fill:-6
^ fills:-4
^ fine:-3
^ first:-3
^ for:3
^ forgot:-4
^ found:7
^ freeze:-5
^ friend:-3
^ from:-2
^ g:-6
^ gave:-5
^ gel:-6
^ gell:3
^ give:-6
^ glov:-5
^ goat:-7
^ goes:-4
^ goggl:-5
^ gonna:4
^ good:-4
^ got:-9
^ grams:-6
^ gran:2
^ grandad:1
^ grandma:-5
^ grandmother:-1
^ grandpa:4
^ granny:-6
^ grans:-2
^ grat:-6
^ greeting:-5
^ had:3
^ half:1
^ hallo:-4
^ hand:3
^ handout:-4
^ hard:-5
^ has:-4
^ have:-6
^ he:-6
^ heat:-7
^ hello:-3
^ help:4
^ here:-8
^ heres:-7
^ hers:-8
^ hes:3
^ hey:-5
^ his:-4
^ hiya:1
^ hola:-2
^ hope:-2
^ hot:1
^ how:-11
^ hows:-6
^ hp:-4
^ hubby:3
^ i'd:4
^ i:-2
^ if:-8
^ ignore:1
^ ill:1
^ im:2
^ in:-6
^ ingredient:-3
^ instead:8
^ into:-3
^ is:-6
^ item:-3
^ itll:-2
^ its:-3
^ ive:-7
^ jug:6
^ just:1
^ keep:4
^ kids:-7
^ kind:-1
^ kitchen:1
^ label:-9
^ last:-8
^ lather:-6
^ laundry:-5
^ leave:-3
^ left:-2
^ leftover:-8
^ like:-3
^ line:-5
^ liquid:-4
^ list:-7
^ log:-5
^ lol:-6
^ long:-2
^ look:-4
^ looks:-3
^ lost:-7
^ lot:-7
^ love:-3
^ lye's:6
^ m:-5
^ ma:-8
^ made:3
^ make:6
^ makes:-3
^ many:-3
^ market:-5
^ meanwhile:-1
^ measur:-1
^ melt:-1
^ method:1
^ mind:-6
^ mine:-6
^ mines:2
^ mix:-8
^ mixed:-3
^ mold:-7
^ morn:-5
^ mould:-6
^ mum:-5
^ mums:3
^ must:-5
^ my:-3
^ n:-9
^ namaste:-4
^ name:-3
^ need:-5
^ neighbour:-2
^ nephew:1
^ never:-5
^ new:-3
^ next:-12
^ nice:-6
^ no:5
^ nobody:-5
^ none:-8
^ not:2
^ note:-3
^ notebook:-5
^ notes:-2
^ noth:-11
^ now:1
^ number:-2
^ o:-5
^ oat:-5
^ of:2
^ oh:1
^ oil:-6
^ oils:-3
^ ok:-3
^ okay:-4
^ old:-5
^ on:-6
^ once:-3
^ one:2
^ only:1
^ or:-4
^ order:1
^ other:-5
^ our:-2
^ ours:-4
^ out:2
^ outside:-5
^ oven:-4
^ oz:-7
^ page:-5
^ paid:-1
^ passt:-3
^ past:-3
^ paste:3
^ people:-6
^ per:1
^ ph:-5
^ phase:-3
^ phone:-3
^ photo:-8
^ plain:-6
^ plan:-5
^ plann:-4
^ please:1
^ pls:-6
^ plus:-9
^ post:4
^ pot:7
^ pour:2
^ prep:-2
^ press:-5
^ pretty:3
^ print:-9
^ proces:-6
^ ps:3
^ pull:3
^ purity:5
^ put:-4
^ q:-7
^ question:-7
^ quick:-4
^ rain:5
^ ran:4
^ re:-4
^ read:3
^ reader:1
^ ready:-4
^ recipe:-7
^ remark:-6
^ render:-2
^ replac:-1
^ rest:-4
^ result:-6
^ right:-5
^ room:-5
^ row:1
^ safe:-4
^ same:-3
^ sanity:-6
^ sat:-5
^ scal:2
^ scale:8
^ scoop:-5
^ scrap:4
^ sells:-3
^ set:-5
^ sf:-2
^ shav:-3
^ shave:-3
^ she:-6
^ shes:-3
^ should:-6
^ since:3
^ sis:2
^ sister:-2
^ slow:-4
^ smell:-7
^ snow:1
^ so:-4
^ soap:-7
^ soft:-4
^ sold:-9
^ some:2
^ somebody:-1
^ someone:-3
^ somewhere:2
^ sound:-3
^ spill:-2
^ split:1
^ spoon:-3
^ sry:-7
^ stamp:-4
^ start:-8
^ step:-1
^ stick:-6
^ still:-1
^ stir:-4
^ stirr:-5
^ straight:-5
^ strain:3
^ student:2
^ subject:-3
^ sum:-5
^ sunday:-9
^ superfat:2
^ swap:3
^ swapp:3
^ swirl:-8
^ switch:-5
^ take:-2
^ tare:1
^ teacher:2
^ tell:-7
^ test:-6
^ text:-5
^ thank:-7
^ thats:-2
^ the:-2
^ then:-6
^ ther:-6
^ these:-1
^ they:-11
^ theyre:4
^ third:-2
^ this:3
^ those:4
^ thought:-2
^ threw:8
^ thx:-4
^ tip:-7
^ title:-4
^ tonight:-4
^ too:-1
^ took:2
^ total:-5
^ towel:-4
^ trac:1
^ trace:-4
^ translat:-3
^ tried:-4
^ try:-3
^ tub:-7
^ turn:-4
^ unit:-3
^ unmould:-5
^ update:1
^ use:1
^ used:3
^ using:-7
^ version:-11
^ very:-8
^ wait:3
^ want:4
^ warm:-8
^ was:-4
^ wash:-6
^ we:1
^ week:-4
^ weekend:-5
^ weigh:-8
^ weight:-8
^ well:-7
^ went:3
^ were:2
^ weve:-5
^ what:-9
^ whats:-12
^ when:-8
^ where:-1
^ which:-7
^ while:-1
^ who:-5
^ whoever:-5
^ whole:5
^ whos:-3
^ why:-6
^ will:-4
^ with:-5
^ work:-3
^ worksheet:-4
^ workshop:-3
^ would:-2
^ wrapp:-8
^ write:2
^ written:4
^ wrote:-3
^ x:-10
^ years:2
^ yes:-8
^ yesterday:-6
^ yield:1
^ you:-7
^ youll:3
^ zap:-4
^ zutat:-4
^%:-6
^0:-5
^<:-2
^=:-6
^>:-10
^C:-12
^F:1
^I:-3
^K:-4
^L:1
^M:2
^N:-1
^S:-9
^T:-5
^U:1
^X:-4
^b:-2
^d:-3
^e:-9
^l:6
^r:3
^v:-2
^w:-2
any:-2
b%:-3
b0:3
b:3
bA:1
bF:-4
bL:10
bN:7
bW:9
bb:-4
bt:-5
bw:-2
b~ ?:5
b~ a:-5
b~ after:-7
b~ all:-5
b~ and:-6
b~ as:-8
b~ bars:-6
b~ because:-4
b~ before:3
b~ but:7
b~ by:8
b~ fine:-3
b~ for:7
b~ i:3
b~ if:5
b~ is:7
b~ it:4
b~ look:-3
b~ my:3
b~ not:-5
b~ of:-1
b~ on:-4
b~ or:7
b~ right:-8
b~ still:4
b~ the:6
b~ then:7
b~ too:3
b~ was:5
b~ with:1
b~ x:-7
b~0:-9
b~L:1
d%:-5
d0:-8
d:-6
d=:-3
dA:-5
dF:-9
dI:-7
dK:-4
dL:-6
dS:-1
dX:-2
db:-5
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
d~ by:-5
d~ for:-4
d~ here:-2
d~ in:-4
d~ it:-8
d~ no:-5
d~ oils:-1
d~ on:-5
d~ or:-3
d~ pour:-2
d~ so:-7
d~ stirr:-1
d~ the:-7
d~ then:-6
d~ trace:-1
d~ when:-7
d~A:-5
d~t:-2
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
eX:5
eb:-1
ee:-6
et:3
e~ +:6
e~ all:1
e~ and:-3
e~ as:3
e~ but:11
e~ for:-2
e~ g:-12
e~ grams:-6
e~ in:10
e~ is:5
e~ minus:7
e~ not:-2
e~ of:3
e~ on:-3
e~ or:8
e~ was:12
e~ with:10
e~A:-4
e~F:-3
e~W:-3
l%:-5
l0:5
l:-2
l=:-7
l>:-4
lA:1
lF:-7
lN:2
lW:-3
lX:-6
ll:-6
long:1
lv:-7
lw:-5
l~ and:-4
l~ as:-7
l~ by:-6
l~ for:2
l~ goes:-4
l~ i:-7
l~ in:-6
l~ is:-3
l~ of:-3
l~ on:1
l~ right:-3
l~ the:-6
l~ was:-6
l~ went:2
l~ with:1
l~L:2
l~t:-4
no figure:-6
no name:-6
r%:-7
r0:2
r:4
r=:-6
r>:-4
rA:1
rF:9
rK:3
rW:-3
rt:-6
r~ as:-10
r~ by:3
r~ the:-1
r~F:2
r~K:3
short:-6
t%:-4
t0:-3
t:-5
t<:8
t=:-4
t>:5
tA:-2
tF:-1
tK:-3
tL:-4
tN:-4
tS:-2
tU:-5
tW:1
tX:-5
tb:-4
td:-1
te:-9
tl:-7
tt:-2
tv:-2
tw:-2
t~ ::2
t~ ?:-6
t~ a:-4
t~ add:-2
t~ after:-6
t~ ago:-8
t~ all:-7
t~ and:-2
t~ at:-4
t~ because:-10
t~ before:3
t~ blend:-2
t~ both:-2
t~ but:3
t~ by:-6
t~ can:-4
t~ cook:-3
t~ cover:-2
t~ cure:-1
t~ cured:-2
t~ cut:-1
t~ day:-1
t~ did:-3
t~ each:-1
t~ edges:-5
t~ flat:-6
t~ from:-7
t~ gel:-3
t~ i:-5
t~ if:-5
t~ in:-10
t~ into:-2
t~ is:-7
t~ it:-4
t~ its:1
t~ ive:-5
t~ later:-8
t~ lid:-5
t~ lined:-1
t~ loaf:-2
t~ long:-2
t~ makes:-1
t~ mash:-2
t~ melt:4
t~ mine:-7
t~ mix:-5
t~ mould:-2
t~ my:-5
t~ no:-3
t~ now:-6
t~ of:2
t~ off:-2
t~ oils:-2
t~ old:2
t~ on:-8
t~ or:-4
t~ paste:-9
t~ pot:4
t~ pour:-4
t~ ready:-4
t~ rest:-6
t~ since:-6
t~ so:-2
t~ still:-5
t~ stir:-2
t~ stirr:-5
t~ the:-5
t~ then:-5
t~ they:-3
t~ till:-4
t~ to:-6
t~ trace:-5
t~ under:-1
t~ unmould:-4
t~ until:-5
t~ used:-3
t~ wait:-4
t~ was:-6
t~ we:-7
t~ weigh:-2
t~ when:-5
t~ which:-2
t~ with:3
t~ yes:3
t~ zap:-1
t~0:-1
t~=:-2
t~A:-4
t~F:-3
t~K:-2
t~L:-3
t~S:-1
t~U:-4
t~W:1
t~X:-6
t~b:-4
t~d:-2
t~t:-5
v0:-4
v:1
v=:3
vA:3
vC:1
vF:-4
vK:6
vL:3
vN:6
vS:-3
vW:6
vX:-4
vb:-3
vd:-1
vl:-6
vt:3
vv:3
v~ a:-4
v~ and:2
v~ at:-3
v~ bottle:-1
v~ can:-11
v~ for:-5
v~ i:3
v~ in:-4
v~ is:-7
v~ of:2
v~ one:-3
v~ or:-2
v~ pot:-10
v~ so:-3
v~ to:5
v~C:4
v~S:-1
v~W:2
v~X:-1
w%:-4
w0:1
w<:-13
w=:-6
w>:3
wA:-2
wC:6
wI:-4
wL:-2
wN:2
wS:-5
wW:-1
wX:2
wb:2
wd:3
wl:-14
wt:-10
wv:-1
w~ a:3
w~ after:-9
w~ and:-1
w~ as:-7
w~ at:-5
w~ before:-8
w~ cubes:-6
w~ dissolv:1
w~ empty:-1
w~ for:-2
w~ fresh:-6
w~ from:-7
w~ frozen:-4
w~ goes:-7
w~ in:-5
w~ instead:-10
w~ is:-1
w~ loaf:-4
w~ more:-2
w~ mould:3
w~ no:-1
w~ of:1
w~ on:-3
w~ one:-2
w~ or:-3
w~ out:-8
w~ per:3
w~ so:-3
w~ the:-6
w~ to:-3
w~ together:-8
w~ too:1
w~ was:5
w~ wet:-5
w~0:2
w~C:3
w~I:3
w~L:-8
w~N:-1
w~S:-4
w~X:-6
w~w:-3`;
