/** What each sign of a note weighs for its bearing on the pot and against it, in tenths of a logit: learned, `npm run generate:bearing`. */
export const weights = ` *:-7
 *~A:-8
 *~F:-3
 +:2
 +~ a:-5
 +~0:4
 +~<:-1
 +~=:-3
 +~A:-5
 +~F:-7
 +~W:-5
 .:7
 .~%:4
 .~0:4
 ::1
 :~ a:2
 :~ about:-4
 :~ all:6
 :~ as:-3
 :~ cook:-1
 :~ cut:-7
 :~ do:-2
 :~ does:-2
 :~ g:-3
 :~ goggl:-5
 :~ good:-7
 :~ half:7
 :~ i'd:6
 :~ i:4
 :~ in:3
 :~ is:-7
 :~ it:2
 :~ ive:2
 :~ kitchen:2
 :~ me:-7
 :~ melt:-10
 :~ my:1
 :~ no:3
 :~ none:7
 :~ one:-6
 :~ please:-2
 :~ re:-2
 :~ soap:-7
 :~ the:-3
 :~ too:2
 :~ was:-4
 :~ weigh:1
 :~ what:4
 :~ why:-2
 :~ winter:-2
 :~ with:2
 :~ yes:5
 :~%:-6
 :~0:-6
 :~<:-2
 :~=:-4
 :~>:-8
 :~L:-2
 :~N:2
 :~S:-5
 :~T:-4
 :~W:-3
 :~X:-3
 :~b:-6
 :~d:-3
 :~e:1
 :~l:-10
 :~r:-7
 :~t:-5
 :~v:-7
 :~w:2
 =:-2
 =~ =:-5
 =~0:-5
 =~=:-5
 =~>:-1
 =~l:-6
 =~w:-4
 ?:-4
 a:-2
 about:-2
 about~ a:5
 about~ an:-6
 about~ it:-2
 about~ my:-4
 about~ right:-2
 about~ superfat:-8
 about~ the:3
 about~ to:-4
 about~%:-3
 about~0:-2
 about~<:6
 about~>:-7
 about~F:-5
 about~b:4
 about~d:-3
 about~t:-6
 about~v:3
 about~w:3
 above:5
 above~ is:2
 above~d:-8
 abt:-8
 accident:3
 accord:6
 accord~ to:6
 account:6
 acros:5
 acros~ the:7
 actual:9
 actual~N:4
 add:-1
 added:6
 added~ a:1
 added~ another:-3
 added~ at:-10
 added~ it:3
 added~ the:3
 added~ to:-8
 added~<:-10
 added~=:-9
 added~v:7
 added~w:2
 adds:-9
 adds~ up:-9
 add~ a:2
 add~ it:-8
 add~ the:-5
 add~ to:3
 add~ up:1
 add~<:-3
 add~=:-4
 add~F:3
 add~w:-6
 advice:2
 afraid:-4
 afresh:-7
 after:1
 afternoon:3
 afterward:1
 after~ a:-1
 after~ an:1
 after~ christma:-6
 after~ cook:2
 after~ cure:-1
 after~ i:3
 after~ it:7
 after~ last:1
 after~ pour:3
 after~ strain:2
 after~ that:-1
 after~ the:-2
 after~ this:-8
 after~0:-7
 after~t:-5
 again:-1
 against:2
 against~ the:6
 again~ ::2
 again~ ?:3
 again~ after:-2
 again~ and:-10
 again~ at:-3
 again~ for:-6
 again~ with:5
 age:-6
 ages:-2
 ages~ to:-4
 ago:-8
 ago~ and:-2
 agre:-4
 agree:-5
 agree~ with:-4
 ahead:-1
 aim:5
 aim~ at:1
 aim~ for:6
 air:-2
 air~ cupboard:-1
 aisle:2
 aleppo:-5
 alike:7
 alkali:-7
 all:1
 allergen:-4
 allergic:8
 allergic~ to:-8
 allergy:6
 allotment:-4
 allow:-7
 all~ ::-4
 all~ ?:-2
 all~ and:5
 all~ at:3
 all~ but:8
 all~ by:-10
 all~ day:-7
 all~ down:8
 all~ fats:-7
 all~ fine:-6
 all~ first:1
 all~ g:-9
 all~ good:-7
 all~ grams:-7
 all~ i:3
 all~ in:-8
 all~ into:1
 all~ is:-8
 all~ its:1
 all~ my:-6
 all~ of:-3
 all~ on:-8
 all~ over:-7
 all~ right:-9
 all~ that:-2
 all~ the:-5
 all~ there:3
 all~ together:-8
 all~ told:-4
 all~ up:-4
 all~ week:2
 all~ weigh:-2
 all~0:2
 all~=:-4
 all~F:4
 all~L:-1
 all~W:-7
 all~b:-1
 all~e:7
 almost:2
 alone:-2
 alone~ is:1
 along:9
 along~ the:-2
 along~ with:4
 already:7
 already~ dissolv:4
 already~ in:4
 already~ pour:-6
 already~ put:7
 already~ so:1
 alright:-4
 alright~ ?:-3
 alright~ for:-5
 also:2
 also~ a:-3
 also~=:-7
 also~w:5
 alter:3
 although:3
 altogether:-8
 alu:-1
 aluminium:-2
 alway:-3
 alway~ a:-6
 alway~ did:-6
 alway~ said:-4
 alway~ with:6
 am:3
 american:-8
 ammonia:-8
 amount:5
 amount~ ?:-4
 amount~ g:-4
 amount~ of:-2
 am~ a:-4
 am~ from:-7
 am~ i:-2
 am~ mak:-7
 am~0:-6
 and~ a:-3
 and~ about:-4
 and~ add:-7
 and~ added:-6
 and~ after:-1
 and~ again:3
 and~ all:6
 and~ an:-5
 and~ another:-8
 and~ asked:-6
 and~ at:-8
 and~ bang:-2
 and~ blend:-6
 and~ both:-4
 and~ by:1
 and~ call:4
 and~ came:-8
 and~ check:2
 and~ clear:-3
 and~ cook:4
 and~ cool:2
 and~ couldnt:-1
 and~ cut:-1
 and~ did:-1
 and~ do:2
 and~ does:-5
 and~ dont:-6
 and~ even:4
 and~ every:-3
 and~ fill:2
 and~ for:1
 and~ forgot:-5
 and~ found:3
 and~ gave:3
 and~ give:5
 and~ glov:-2
 and~ go:-2
 and~ goes:-1
 and~ goggl:-3
 and~ got:-8
 and~ had:-2
 and~ half:-6
 and~ hard:-5
 and~ has:3
 and~ have:-6
 and~ he:3
 and~ her:-5
 and~ his:-7
 and~ honest:-6
 and~ how:-8
 and~ i'd:-2
 and~ i:5
 and~ if:1
 and~ im:-2
 and~ in:-5
 and~ into:3
 and~ is:-2
 and~ it:-4
 and~ itll:-6
 and~ its:-3
 and~ keep:-4
 and~ kept:1
 and~ last:-5
 and~ leave:-1
 and~ left:4
 and~ let:-5
 and~ looks:-1
 and~ lost:-6
 and~ me:-4
 and~ melt:-7
 and~ mine:2
 and~ mixed:-2
 and~ neither:4
 and~ never:-1
 and~ no:2
 and~ nobody:-1
 and~ none:6
 and~ not:-3
 and~ noth:-2
 and~ now:1
 and~ of:2
 and~ off:-4
 and~ once:-2
 and~ only:3
 and~ open:-4
 and~ pour:3
 and~ put:3
 and~ said:-4
 and~ says:2
 and~ see:-3
 and~ she:-5
 and~ since:2
 and~ so:2
 and~ soap:-4
 and~ some:1
 and~ someth:6
 and~ sprinkle:-2
 and~ start:-5
 and~ stay:-4
 and~ still:-2
 and~ stirr:-12
 and~ straight:-5
 and~ strain:-5
 and~ stuck:6
 and~ swear:-7
 and~ swirl:3
 and~ tell:-5
 and~ that:6
 and~ thats:-1
 and~ the:-2
 and~ then:4
 and~ ther:6
 and~ there:5
 and~ they:-5
 and~ this:4
 and~ those:1
 and~ tipp:8
 and~ to:-6
 and~ together:2
 and~ took:11
 and~ turn:-5
 and~ use:2
 and~ used:2
 and~ wait:-2
 and~ want:-5
 and~ wants:-4
 and~ warm:-1
 and~ was:4
 and~ we:1
 and~ went:-6
 and~ when:-3
 and~ whether:-6
 and~ white:-7
 and~ will:-3
 and~ with:-4
 and~ would:-7
 and~ yes:-2
 and~ you:-1
 and~%:-4
 and~0:1
 and~<:2
 and~=:-4
 and~>:-1
 and~A:-4
 and~B:-2
 and~F:-4
 and~L:-5
 and~N:8
 and~S:-5
 and~W:2
 and~X:1
 and~b:-11
 and~e:-2
 and~l:-7
 and~t:-7
 and~v:3
 and~w:-5
 anew:-7
 another:3
 another~ day:-6
 another~0:10
 another~<:4
 another~t:-6
 another~v:-2
 another~w:-8
 answer:-4
 answer~ ::-6
 answer~ is:-3
 answer~ the:3
 any:-2
 anyhow:-4
 anyone:-7
 anyone~ know:1
 anyone~ tried:-5
 anyth:-4
 anyth~ in:-3
 anyth~ off:-4
 anyth~ wrong:-4
 anyway:-5
 anywhere~ near:-6
 any~A:-3
 any~F:-1
 any~S:-9
 an~ earlier:-8
 an~ envelope:-5
 an~ extra:5
 an~ eye:-3
 an~ hour:-7
 an~ old:-5
 an~I:3
 an~L:4
 apart:-10
 app:-1
 approx:2
 app~ puts:-3
 april:-2
 apron:-7
 are:-2
 arent:2
 are~ a:-2
 are~ at:-1
 are~ dry:5
 are~ for:3
 are~ full:-1
 are~ in:-6
 are~ no:-6
 are~ not:-8
 are~ only:-6
 are~ right:-7
 are~ still:-7
 are~ the:-3
 are~ what:1
 are~0:1
 are~=:-3
 are~>:-3
 are~F:-2
 argu:-8
 arithmetic:-7
 arm:-7
 around:-4
 around~ the:-5
 around~%:2
 around~0:-4
 around~d:-4
 around~w:-1
 arriv:-6
 as:3
 ash:-9
 ashes:-8
 ash~ and:-3
 ash~ on:-10
 ash~ or:-2
 aside:-4
 ask:-4
 asked:-7
 asked~ about:-5
 asked~ for:-1
 asked~ if:-6
 asked~ in:-2
 asked~ whether:-6
 asks:-7
 ask~ ::-3
 ask~ about:-6
 ask~ for:-5
 ask~ if:-1
 ask~ me:1
 ask~ you:-6
 asleep:-8
 assay:8
 as~ a:2
 as~ above:-7
 as~ alway:5
 as~ anyth:2
 as~ before:5
 as~ ever:-8
 as~ far:-4
 as~ i:5
 as~ if:2
 as~ in:-1
 as~ is:7
 as~ it:-4
 as~ list:-4
 as~ long:-8
 as~ my:-1
 as~ on:-4
 as~ one:1
 as~ print:6
 as~ promis:-6
 as~ she:-1
 as~ snow:-5
 as~ the:3
 as~ they:-6
 as~ well:4
 as~ written:-6
 as~ you:-7
 as~%:1
 as~0:1
 as~>:1
 as~A:4
 as~F:-1
 as~I:-9
 as~L:-4
 as~X:-4
 at:-2
 ate:7
 attempt:-6
 attempt~0:-4
 attic:-2
 at~ a:-8
 at~ about:1
 at~ all:-3
 at~ around:-3
 at~ christma:-3
 at~ church:-7
 at~ day:-6
 at~ easter:-6
 at~ first:-7
 at~ half:-8
 at~ home:1
 at~ hour:1
 at~ it:3
 at~ least:-3
 at~ light:2
 at~ liquid:-4
 at~ me:3
 at~ minute:-3
 at~ my:-5
 at~ once:-4
 at~ our:-7
 at~ room:-4
 at~ rough:-1
 at~ school:-7
 at~ the:1
 at~ thin:-8
 at~ this:-6
 at~ trace:4
 at~ week:-5
 at~ work:-1
 at~%:3
 at~0:-4
 at~<:7
 at~=:-9
 at~b:2
 at~d:-4
 at~e:2
 at~l:-7
 at~t:-10
 at~w:-3
 august:2
 aunt:-5
 aunti:-5
 auntie:-3
 aunts:4
 aunt~ in:-4
 aunt~ says:-6
 aunt~ sent:1
 autumn:-9
 average:-3
 away:-3
 a~ ::-8
 a~ bad:-8
 a~ bag:3
 a~ bar:-9
 a~ batch:-9
 a~ battery:1
 a~ beginner:-3
 a~ big:1
 a~ bigger:-1
 a~ bit:-2
 a~ blanket:-2
 a~ blend:9
 a~ block:5
 a~ blog:1
 a~ bowl:-9
 a~ box:-6
 a~ brick:-1
 a~ bucket:-6
 a~ can:3
 a~ candle:-5
 a~ carton:-1
 a~ castile:1
 a~ cheese:-7
 a~ chip:-6
 a~ class:-6
 a~ clean:2
 a~ cold:-7
 a~ corner:-8
 a~ cow:1
 a~ crack:-1
 a~ crisp:-4
 a~ crumb:-5
 a~ crust:7
 a~ customer:-5
 a~ dark:-5
 a~ day:-3
 a~ different:-3
 a~ drawer:-8
 a~ dream:-3
 a~ drop:3
 a~ dry:-8
 a~ face:-3
 a~ fair:5
 a~ fami:-3
 a~ fan:-4
 a~ farm:2
 a~ few:5
 a~ fifth:2
 a~ finger:-6
 a~ first:-2
 a~ fresh:-3
 a~ friend:-2
 a~ girl:-6
 a~ glass:3
 a~ glug:4
 a~ good:10
 a~ half:2
 a~ handful:-2
 a~ heap:8
 a~ hole:-4
 a~ hot:-1
 a~ hurry:-8
 a~ jam:-7
 a~ jar:1
 a~ jug:-2
 a~ kitchen:-1
 a~ knob:6
 a~ ladle:3
 a~ lady:-5
 a~ laundry:-7
 a~ library:-4
 a~ lid:-2
 a~ lidd:-1
 a~ light:-2
 a~ line:1
 a~ little:4
 a~ loaf:-4
 a~ long:-1
 a~ look:-8
 a~ lot:-6
 a~ love:-7
 a~ lump:7
 a~ man:-3
 a~ milk:-2
 a~ minute:-6
 a~ mix:7
 a~ month:-11
 a~ mould:-6
 a~ mug:7
 a~ new:-6
 a~ nice:-2
 a~ night:-5
 a~ number:-1
 a~ page:-6
 a~ paper:-4
 a~ paste:-2
 a~ pdf:-3
 a~ pencil:-6
 a~ photo:-7
 a~ pinch:-1
 a~ plain:-7
 a~ pot:1
 a~ proper:-4
 a~ puddle:5
 a~ quarter:6
 a~ question:-3
 a~ reader:-6
 a~ ready:4
 a~ recipe:-1
 a~ rock:-4
 a~ row:-8
 a~ scale:-6
 a~ second:-4
 a~ sensible:-4
 a~ shade:-4
 a~ shoe:-4
 a~ shoebox:-3
 a~ silicone:-4
 a~ sink:-5
 a~ skin:-3
 a~ skull:-6
 a~ slip:3
 a~ slow:-6
 a~ small:2
 a~ smaller:-3
 a~ soap:-7
 a~ soft:-5
 a~ softer:-5
 a~ spatula:-6
 a~ spill:-1
 a~ splash:7
 a~ spoon:-3
 a~ spoonful:-3
 a~ steel:-8
 a~ stick:1
 a~ stir:-4
 a~ superfat:4
 a~ tenth:5
 a~ thermometer:-7
 a~ thin:-3
 a~ thing:-6
 a~ third:4
 a~ time:-6
 a~ tin:1
 a~ tiny:5
 a~ touch:-3
 a~ towel:-2
 a~ tray:-5
 a~ treat:-5
 a~ tub:-7
 a~ twentieth:4
 a~ typo:2
 a~ very:-6
 a~ video:-3
 a~ volcano:-4
 a~ warm:-4
 a~ water:-2
 a~ week:-9
 a~ wet:1
 a~ white:-1
 a~ wire:-2
 a~ woman:-7
 a~ wooden:-1
 a~ year:-7
 a~ yes:-3
 a~ zap:-5
 a~%:2
 a~0:4
 a~<:5
 a~=:-6
 a~>:2
 a~A:-6
 a~F:-2
 a~K:-2
 a~L:-2
 a~N:7
 a~X:3
 a~b:3
 a~e:-7
 a~r:3
 a~t:-6
 a~v:-5
 a~w:4
 b:-1
 babcia:-5
 babi:-8
 baby:2
 baby~ bar:-6
 baby~ shower:-3
 back:-4
 background:-3
 back~ ::-4
 back~ a:1
 back~ and:4
 back~ at:-3
 back~ in:-7
 back~ of:-5
 back~ on:-7
 back~ out:6
 back~ till:10
 back~ to:-6
 back~ up:4
 bacon:-5
 bad:-2
 badly:-2
 bad~ ?:-3
 bag:5
 bags:-5
 bag~ of:6
 bag~ says:-2
 bak:-7
 bakery:-7
 bak~ paper:-8
 balanc:-3
 balance:4
 balanc~ ?:-3
 balcony:2
 balls:-4
 balm:-5
 bang:-7
 bang~ it:-4
 bar:-4
 bare:-6
 bare~ got:-2
 barn:-4
 barrel:-6
 bars:-9
 bars~ +:-7
 bars~ ::-4
 bars~ about:-1
 bars~ and:-5
 bars~ are:-4
 bars~ at:-2
 bars~ came:-1
 bars~ come:-4
 bars~ each:-4
 bars~ for:-6
 bars~ from:-5
 bars~ i:-2
 bars~ in:-4
 bars~ of:-7
 bars~ on:-5
 bars~ out:-6
 bars~ so:-2
 bars~ to:-6
 bars~ went:-9
 bars~ were:-6
 bars~ with:-7
 bars~0:-7
 bars~t:-3
 bars~w:-4
 bar~ ::-2
 bar~ ?:-6
 bar~ all:-3
 bar~ and:-3
 bar~ at:-4
 bar~ costs:-4
 bar~ for:-8
 bar~ from:-6
 bar~ i:1
 bar~ in:-3
 bar~ is:2
 bar~ no:-2
 bar~ of:-7
 bar~ since:-2
 bar~ so:1
 bar~ v:-7
 bar~ with:3
 bar~0:-4
 basic:-5
 bastille:-8
 batch:-5
 batch~ ::-2
 batch~ and:-7
 batch~ before:-7
 batch~ but:3
 batch~ ever:2
 batch~ for:1
 batch~ from:-7
 batch~ had:-2
 batch~ i:2
 batch~ in:6
 batch~ is:2
 batch~ log:-3
 batch~ no:-3
 batch~ of:-4
 batch~ record:-2
 batch~ sheet:-5
 batch~ that:-1
 batch~ the:-1
 batch~ this:5
 batch~ was:-6
 batch~ with:-5
 batch~0:-5
 bath:-7
 bathroom:4
 bathroom~ scale:7
 batter:-5
 batteri:-3
 battery:4
 battery~ died:6
 batter~ in:-4
 bazaar:-4
 bc:7
 bc~ i:3
 be:3
 beach:-6
 beads:6
 beaker:3
 beaker~ and:-7
 bear:-7
 beard:-3
 bear~ with:-8
 beat:-3
 beat~ in:-4
 beautiful:-4
 became:3
 became~0:9
 because~ a:-4
 because~ he:-8
 because~ i:-3
 because~ it:6
 because~ its:-4
 because~ last:3
 because~ my:2
 because~ of:-2
 because~ she:-2
 because~ the:3
 because~F:-9
 become:-1
 bed:-6
 bee:-7
 beech:-5
 beef:-6
 beef~=:-4
 beekeeper:-8
 been:2
 been~ at:4
 been~ in:2
 been~ mak:-5
 been~ on:-5
 been~ open:7
 been~ stand:4
 been~ told:-5
 been~t:-1
 bees:-4
 before:-1
 beforehand:-5
 before~ and:2
 before~ anyone:-6
 before~ i:-4
 before~ it:2
 before~ me:3
 before~ pour:6
 before~ saturday:-5
 before~ she:-1
 before~ so:-9
 before~ that:-8
 before~ the:3
 before~ they:-7
 before~ this:-9
 before~ we:-2
 before~ weigh:-9
 before~ with:-5
 before~ you:-11
 before~t:-5
 began:-5
 begin:-7
 beginn:-1
 beginner':-7
 beginner:-9
 behav:-6
 behind:-1
 behind~ the:4
 beige:-9
 being:-2
 believe:1
 bell:1
 belong:-4
 below:-4
 below~ the:-4
 below~d:-5
 bench:1
 besid:4
 beside:6
 beside~ it:3
 besid~ the:5
 best:-11
 best~ before:-5
 bet:-6
 better:-2
 better~ than:2
 between:-1
 between~ the:4
 between~0:7
 be~ ?:-7
 be~ a:5
 be~ about:-5
 be~ bother:3
 be~ clear:-6
 be~ cut:-3
 be~ exact:5
 be~ for:3
 be~ gentle:-2
 be~ honest:-2
 be~ hot:-4
 be~ in:-8
 be~ mild:-7
 be~ ok:-3
 be~ on:4
 be~ patient:-9
 be~ right:3
 be~ sure:-2
 be~ the:-5
 be~ too:-6
 be~%:-9
 be~0:6
 be~A:-6
 be~N:6
 be~b:4
 be~e:9
 be~w:5
 bicycle:-7
 big:2
 bigger:2
 bigger~ pot:-3
 bigger~ than:4
 big~ batch:-8
 big~ kettle:6
 big~ one:2
 big~ pot:-6
 bin:-3
 binn:1
 bin~ it:-2
 birds:-3
 birthday:-6
 biscuit:-9
 bit:1
 bite:-5
 bites:-3
 bits~ in:1
 bits~ of:1
 bit~ at:-3
 bit~ by:-3
 bit~ greasy:-2
 bit~ less:1
 bit~ like:-4
 bit~ more:3
 bit~ of:3
 bit~ on:-7
 bit~ over:-6
 bit~ slimy:-3
 bit~ so:-4
 bit~ soft:-5
 bit~ the:1
 bit~ zappy:-4
 black:-3
 blame:-8
 blame~ the:-6
 blanket:-5
 blend:-1
 blender:-4
 blender~ and:-5
 blender~ died:-4
 blender~t:-6
 blend~ and:-7
 blend~ at:-1
 blend~ for:-2
 blend~ in:1
 blend~ pour:-3
 blend~ till:-5
 blend~ to:-2
 blend~ with:5
 blend~t:-4
 blind:2
 blink:-1
 blob:-1
 block~ of:-2
 blog:-1
 blog~ i:-1
 blood:-6
 board:4
 boat:3
 boil:-1
 boiler:-7
 boil~ and:-11
 boil~ down:-3
 boil~ flat:5
 boil~ in:8
 boil~ it:-5
 boil~ off:4
 boil~ over:6
 boil~ the:-2
 bonjour:-4
 bonsoir:-4
 book:-4
 book~ ::-1
 book~ says:-7
 born:-5
 borrow:-1
 boss:-1
 both:1
 bother:-5
 bother~ to:3
 bother~ with:5
 both~ alkali:-5
 both~ and:-1
 both~ are:-7
 both~ at:2
 both~ feel:-1
 both~ lyes:-2
 both~ of:2
 both~ times:-8
 both~ units:-4
 both~ were:-6
 bottl:-2
 bottle:4
 bottle~ and:7
 bottle~ before:-5
 bottle~ gave:2
 bottle~ in:-6
 bottle~ is:4
 bottle~ of:-2
 bottle~ on:3
 bottle~ said:6
 bottle~ says:6
 bottle~ so:1
 bottle~ was:10
 bottle~ with:-2
 bottl~ of:-5
 bought:-5
 bought~ a:-5
 bought~ the:-6
 bought~0:-7
 bought~>:-7
 bought~F:2
 bowls:1
 bowl~ and:-2
 bowl~ by:-6
 bowl~ in:-3
 bowl~ is:-5
 bowl~ on:4
 bowl~ with:-4
 bowl~w:2
 box:-2
 boxes:-5
 box~ and:-2
 box~ lined:-2
 box~ with:-5
 box~t:-1
 boyfriend:-2
 boys:3
 brand:-5
 brave:-2
 bread:-3
 break:-11
 breakfast:-1
 breathe:-5
 brewery:-4
 brick:-1
 brim:-3
 bring:-10
 bring~ it:-4
 bring~ the:-10
 broke:1
 broken:3
 brother:3
 brother~ in:-8
 brought:6
 brown:-8
 brown~ paper:-4
 brush:-3
 btw:3
 bubbl:-6
 bubble:-3
 bubbl~ and:1
 bucket:-4
 bucket~ and:1
 bucket~ of:-9
 bucket~ so:-3
 bucket~ with:-7
 burn:-7
 burnt:-2
 burst:-3
 burst~ of:-2
 bus:-2
 but:-1
 butcher:-3
 butcher~ gave:-7
 button:-6
 but~ before:-2
 but~ first:-1
 but~ he:2
 but~ here:-7
 but~ i'd:-2
 but~ im:-8
 but~ is:-7
 but~ it:-3
 but~ ive:-1
 but~ my:-2
 but~ no:3
 but~ not:-4
 but~ now:-4
 but~ only:-8
 but~ she:-5
 but~ that:-8
 but~ thats:-5
 but~ the:6
 but~ then:2
 but~ there:-5
 but~ they:-6
 but~ those:-6
 but~ what:3
 but~ when:-3
 but~ with:-1
 but~F:-7
 buy:-1
 buy~ the:-2
 by:1
 by~ ::-8
 by~ a:7
 by~ accident:3
 by~ bit:-3
 by~ easter:-5
 by~ eye:8
 by~ feel:-1
 by~ hand:-8
 by~ it:-4
 by~ itself:4
 by~ me:-5
 by~ mistake:6
 by~ modern:-4
 by~ my:2
 by~ noon:-3
 by~ spoon:-7
 by~ the:3
 by~ then:-2
 by~ today:-3
 by~ week:-7
 by~ weight:-4
 by~<:7
 by~>:-5
 by~N:-4
 by~b:-3
 by~t:-5
 b~ ::5
 b~A:-4
 b~F:-4
 c:-5
 cake:-1
 cakes:-6
 calculate:2
 calculator:-8
 call:2
 calls:-11
 calls~ it:-7
 call~ it:6
 call~ that:4
 call~ the:-2
 call~F:3
 came:1
 came~ back:3
 came~ from:-1
 came~ in:-3
 came~ out:-2
 came~ to:8
 came~ up:1
 can:-1
 candl:-6
 candle:-2
 candle~B:-2
 candl~ and:-6
 cannot:-6
 cans:-2
 cant:3
 cant~ be:-2
 cant~ find:4
 cant~ get:-7
 cant~ remember:6
 cant~ say:-1
 cant~ stand:5
 can~ and:1
 can~ anyone:-2
 can~ be:-3
 can~ bear:-2
 can~ is:3
 can~ of:4
 can~ see:1
 can~ somebody:-6
 can~ stand:-7
 can~ still:-4
 can~ take:-5
 can~ tell:-2
 can~ the:-3
 can~ u:1
 can~ use:-4
 can~ you:1
 cap:-3
 capping:-8
 car:-8
 caramel:-7
 carbonate:6
 card:1
 cardboard:1
 card~ for:-3
 card~ is:1
 card~ no:-4
 card~ says:3
 care:2
 caretaker:-6
 carpet:-3
 carri:4
 carri~ it:4
 carri~ on:4
 carry:-8
 carry~ on:-4
 carton:-4
 case:-1
 cast:-7
 castile:-7
 castile~=:-1
 cast~ an:-3
 cat:-2
 cat~ got:3
 cat~ had:4
 cat~ has:-5
 cat~ is:-4
 caught:1
 cauldron:-2
 caviti:-6
 ceil:-1
 cellar:-11
 certain:4
 certifi:-8
 certificate:6
 chair:-4
 chang:-4
 change:-3
 change~ the:-4
 chang~ ::3
 chang~ my:6
 chang~ the:-7
 charg:-3
 charge:-4
 chat:-5
 cheap:-9
 cheaper:-6
 cheaper~ than:-7
 check:-4
 check~ ::-1
 check~ ?:-1
 check~ and:-6
 check~ by:-9
 check~ for:-5
 check~ i:-3
 check~ it:-7
 check~ me:-3
 check~ mine:-3
 check~ my:-6
 check~ out:-4
 check~ please:-5
 check~ pls:-4
 check~ that:-9
 check~ the:-5
 check~ this:-4
 check~A:-5
 cheese:-2
 cheese~ wire:-5
 chek:-4
 chemist:-7
 chemistry:-4
 chemistry~ teacher:2
 child:-6
 children:-5
 chill:-7
 chip:1
 chips:5
 chisel:-4
 choir:1
 choose:-5
 chopp:-3
 christma:-5
 christma~0:-7
 chuck:4
 chuck~ in:7
 church:-9
 church~ bazaar:-1
 ciao:-3
 claim:-2
 clarity:-4
 class:-2
 class~ ::-5
 class~ i:-5
 clean:-3
 clean~ the:-7
 clean~ up:6
 clean~F:-5
 clear:-7
 clearer:1
 clear~ after:-2
 clear~ and:-5
 clear~ as:-8
 clear~ at:-6
 clear~ in:-7
 clever:-6
 climb:-9
 climb~ out:-3
 climb~ to:-5
 cling:-4
 cling~ film:-4
 cling~ to:3
 clock:-5
 clos:-1
 close:-3
 close~ to:-3
 cloth:-7
 cloud:3
 cloudy~ for:-4
 club:-2
 clubs:-5
 clump:1
 co:-1
 coat:-7
 code:-5
 coins:1
 cold:-6
 cold~ from:-5
 cold~ press:-7
 cold~ proces:-6
 cold~L:6
 cold~W:-6
 colleague:-7
 colloidal:1
 colour:-9
 column:-6
 com:4
 combin:4
 combine:-2
 combine~ blend:-2
 come:-1
 comes:-1
 comes~ as:1
 comes~ by:1
 comes~ from:-5
 comes~ in:-4
 comes~ out:4
 come~ back:-5
 come~ down:-4
 come~ off:-2
 come~ out:1
 comma:1
 comma~ i:-1
 comma~ is:-6
 comment:-8
 commit:-2
 compar:-3
 compare:-9
 compar~ with:2
 complain:-6
 complaint:-6
 complain~ about:-4
 complete:3
 computer:-3
 confession:-1
 confetti:-2
 confirm:-8
 confirm~ the:-5
 confus:1
 contain:7
 control:-7
 convert:-9
 cook:2
 cooker:-2
 cooker~ ::-3
 cooker~ before:3
 cooker~ for:-2
 cooker~ is:-5
 cooker~ on:-3
 cooker~ soap:-2
 cooker~ with:6
 cooks:-2
 cook~ ::-7
 cook~ ?:-6
 cook~ about:2
 cook~ and:-2
 cook~ at:-4
 cook~ for:-6
 cook~ i:-4
 cook~ in:-7
 cook~ is:4
 cook~ it:1
 cook~ off:-3
 cook~ on:-4
 cook~ once:-2
 cook~ part:-6
 cook~ so:7
 cook~ the:-6
 cook~ this:1
 cook~ until:-1
 cook~ was:-12
 cook~ when:-6
 cook~ with:3
 cook~=:-1
 cook~F:-7
 cook~t:-4
 cool:-3
 cools:-8
 cool~ down:-1
 cool~ i:-2
 cool~ it:-7
 cool~ on:-2
 cool~ the:-7
 cool~ to:-3
 cool~ under:-5
 copi:2
 copi~ from:3
 copi~ it:-2
 copi~ out:-7
 copi~ straight:-7
 copi~ this:1
 copy:2
 cork:-6
 corner:-12
 correction:8
 correct~ ?:-1
 correct~ for:-1
 correct~ or:-2
 cos:8
 cost:-7
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
 couldnt:6
 couldnt~ be:7
 couldnt~ get:7
 couldnt~ tell:1
 could~ be:11
 could~ have:-7
 could~ not:6
 could~ somebody:-2
 could~ someone:-5
 could~ the:-8
 could~ you:1
 council:-4
 counter:3
 countri:-5
 country:2
 country~ the:-2
 county:-5
 count~ in:-2
 count~ it:6
 count~ the:-1
 count~ with:6
 course:-6
 course~ i:-3
 course~ in:-3
 cousin:-2
 cousin~ so:1
 cover:-6
 cover~ it:-5
 cover~ with:-7
 cow:2
 cows:-7
 cp:-5
 crack:-2
 crackl:2
 crackling:1
 crack~ along:-7
 crack~ on:-8
 crate:-6
 crazy:-7
 creamy:-8
 cried:-7
 crisp:-4
 crisp~ tube:-4
 crock:-3
 crockpot:-4
 crock~ pot:2
 cross:-2
 cross~ out:-1
 crumb:-2
 crumbl:-6
 crumble:-5
 crumb~ and:6
 crumb~ at:2
 crush:-5
 crust:8
 crystal:-4
 cubes:-6
 cubes~ and:-5
 cubes~ of:1
 cubes~ the:-5
 cubes~w:-4
 cup:2
 cupboard~ and:4
 cupcake:-7
 cups:-3
 cup~ and:-10
 cup~ is:4
 cup~ weigh:-5
 cup~ with:-6
 cur:-7
 cure:-8
 cured:-4
 cured~t:-2
 cures:1
 cure~ ::-2
 cure~ for:-3
 cure~ till:-3
 cure~ until:-1
 cure~t:-1
 curry:-6
 custard:-6
 customer:-10
 cuts:-6
 cutt:-4
 cutter:-8
 cut~ ::-5
 cut~ after:-3
 cut~ at:-7
 cut~ in:-3
 cut~ into:-6
 cut~ it:2
 cut~ next:-2
 cut~ off:-3
 cut~ on:-4
 cut~ the:6
 cut~ them:-3
 cut~ too:-5
 cut~ with:-5
 cut~0:-5
 cut~b:-5
 cut~t:-2
 c~ ::-3
 c~ at:-3
 c~0:-7
 d:-5
 dad:-3
 dads:-2
 dads~t:-3
 daft:4
 dag:-2
 dag~ ::-1
 dag~ here:-1
 dairy:6
 damp:4
 dare:3
 dark:-12
 das:-8
 date:-7
 dates:-5
 date~ ::-2
 date~t:-4
 daughter':-10
 daughter:2
 daughter~ wants:-1
 daughter~ who:-5
 day:-2
 days:-5
 day~ and:-2
 day~ at:-5
 day~ before:5
 day~ i:-3
 day~ it:-3
 day~ so:2
 day~ the:-1
 day~ then:-5
 day~0:-3
 day~t:-6
 de:-4
 dead:-4
 deal:7
 dear:3
 dear~ all:3
 dear~ group:-7
 december:-5
 decent:-6
 decid:-1
 decimal:-7
 deep:1
 deer:-3
 deer~ camp:-3
 degre:-7
 demineralis:-7
 demonstration:1
 dent:-8
 deodoris:-8
 diary:-4
 dictat:3
 dictat~ this:-5
 did:3
 didnt:5
 didnt~ weigh:6
 did~ a:1
 did~ and:2
 did~ for:-2
 did~ i:-6
 did~ in:-10
 did~ not:2
 did~ that:1
 did~ the:5
 did~ this:-2
 did~ weigh:-5
 did~ you:-7
 did~=:-4
 did~e:-3
 died:2
 died~ at:3
 difference:-5
 different:-9
 digital:-7
 dilut:-5
 dilute:-8
 dilution:4
 dinner:3
 disaster:-10
 discount:1
 dish:1
 dish~ soap:5
 display:4
 display~ said:-7
 dissolv:3
 dissolve:5
 dissolve~ it:-6
 dissolve~ the:6
 dissolve~=:-8
 dissolv~ it:-3
 dissolv~ the:-1
 dissolv~ together:-1
 dissolv~<:2
 dissolv~=:-5
 do:-4
 doctor:-9
 does:-5
 doesnt:-1
 doesnt~ mind:-7
 doesnt~ smell:-5
 does~ anybody:-4
 does~ anyone:2
 does~ her:-4
 does~ it:-5
 does~ my:-7
 does~ not:-2
 does~ the:-3
 does~%:-6
 does~=:2
 does~F:-6
 does~b:-5
 does~w:3
 dog:1
 dogs:-6
 dog~ got:9
 doing:2
 doing~ it:-4
 doing~ the:1
 doing~ this:3
 done:-6
 done~ and:1
 done~ i:-7
 done~ it:1
 dont:-3
 dont~ ask:4
 dont~ be:-5
 dont~ care:3
 dont~ dare:-8
 dont~ get:5
 dont~ have:-2
 dont~ know:5
 dont~ laugh:-1
 dont~ panic:-6
 dont~ trust:-5
 dont~ want:-7
 door:-1
 doorbell:3
 doors:-9
 dos:-2
 dose:8
 dosed:5
 dose~ of:8
 dot:-6
 doubl:8
 double:-6
 double~ boiler:-6
 double~ check:-3
 doubt:-7
 down:2
 down~ and:-3
 down~ by:4
 down~ from:2
 down~ the:-2
 down~ to:1
 down~ with:3
 do~ ?:-6
 do~ a:-5
 do~ for:-6
 do~ i:3
 do~ in:-9
 do~ it:-2
 do~ my:-2
 do~ not:-5
 do~ that:4
 do~ the:-5
 do~ this:-7
 do~ we:-5
 do~ with:-6
 do~ you:-4
 do~0:-6
 do~F:-4
 draft:-6
 drag:-6
 drain:5
 drama:-6
 drank:6
 draw:1
 drawer:-3
 drawer~ lined:-2
 drawn:4
 dream:-5
 dress:-9
 drew:-5
 dried:-2
 drill:-5
 drink:-5
 drip:-7
 drips:-3
 drop:-1
 dropp:4
 dropp~ below:-4
 dropp~ the:2
 drops:-1
 drops~ of:1
 drop~ of:3
 drop~ the:-4
 drop~ to:-3
 drove:-4
 drown:-6
 drum:6
 dry:2
 dry~ cup:-2
 dry~ hands:4
 dry~ skin:-7
 dry~ so:2
 dry~ until:2
 duck:-7
 dump:-4
 dur:5
 dust:5
 e:-5
 each:-3
 each~ and:-5
 each~ of:-3
 each~ other:-7
 each~ time:-7
 earlier:-5
 early:-10
 easi:3
 easier:-9
 easter:-5
 easy:-10
 eat:-1
 eats:-7
 eczema:3
 edge:-3
 edges:-1
 edit:1
 edition:2
 edit~ ::1
 either:3
 elbow:-6
 else~ no:-2
 empti:4
 empty:-3
 empty~ and:-3
 empty~ bowl:-7
 empty~ jug:-5
 empty~w:-1
 emulsion:-6
 enamel:-8
 enamel~ pot:-5
 end:3
 ended:7
 ended~ up:-2
 ends:-9
 end~ ?:-4
 end~ after:1
 end~ and:4
 end~ i:-1
 end~ is:-11
 end~ it:9
 end~ piece:-8
 end~ up:-9
 end~ with:1
 english:-3
 english~ i:-5
 english~ is:-5
 enough:-1
 enough~ ?:-4
 enough~ for:-4
 enough~ or:-6
 enough~ to:-4
 enough~A:1
 enough~F:-5
 entire:-4
 entry:-3
 envelope:-4
 equal:1
 equal~ parts:1
 equal~ weight:-6
 error:-3
 eur:-4
 euro:-5
 even:-7
 evening:-3
 even~ all:-4
 even~ class:-3
 even~ from:-2
 even~ in:-5
 ever:-10
 every:-6
 everybody:-9
 everyday:-4
 everyday~ bar:-3
 everyone:-6
 everyone~ who:2
 everyth:3
 everyth~ ::-3
 everyth~ and:-4
 everyth~ at:1
 everyth~ else:1
 everyth~ in:-5
 everyth~ is:4
 everyth~ on:1
 everyth~ was:-3
 everyth~ weigh:-9
 everywhere:-5
 every~ one:3
 every~ time:1
 every~t:-5
 ever~ batch:-5
 ex:-6
 exact:-7
 exact~ as:-10
 exact~ like:-1
 exact~ one:-1
 exact~ this:-6
 exam:-6
 excel:-5
 except:5
 except~ that:-1
 except~ the:1
 exces:2
 excuse:-7
 excuse~ my:-3
 excuse~ the:-6
 expect:-3
 expensive:-3
 export:-4
 export~ from:-3
 extra:6
 extra~ fat:6
 extra~ virgin:-5
 extra~A:-2
 extra~F:-4
 eye:7
 eyebrow:-7
 eyes:-2
 eye~ over:-3
 f:-6
 face:-5
 faces:-7
 face~ bar:-6
 facial:2
 facial~ bar:-5
 fact:7
 faded:-9
 fades:-5
 fail:3
 fails:-3
 fail~ me:-3
 faint:-7
 faint~ of:-5
 fair:4
 fair~ ::-5
 fall:1
 falls:-6
 false:-7
 false~ trace:-7
 fami:-2
 famili:-6
 fan:-7
 fancy:4
 far:-2
 farm:-1
 farm~ shop:4
 far~ as:-4
 far~ too:3
 fast:-5
 faster:1
 faster~ than:-3
 fat:4
 father:-1
 father~ in:4
 fats:2
 fats~ ::-4
 fats~ ?:-3
 fats~ and:-2
 fats~ are:-3
 fats~ at:-6
 fats~ in:-9
 fats~ is:-7
 fats~ melt:-2
 fats~ or:-5
 fats~ were:-6
 fat~ ::1
 fat~ ?:-6
 fat~ and:3
 fat~ g:-4
 fat~ grams:-5
 fat~ in:-5
 fat~ is:2
 fat~ left:4
 fat~ of:-9
 fat~ was:-6
 fault:2
 favour:1
 feb:-6
 february:-7
 feed:1
 feed~ store:3
 feel:1
 feels:-7
 feels~ a:-4
 feels~ like:-7
 feel~ the:-1
 feet:2
 fell:-2
 fell~ on:1
 felt~ like:-2
 fence:-5
 fete:1
 few:6
 few~ drops:-7
 field:-7
 fifth:2
 fifth~ of:8
 fig:-7
 fight:3
 figur:2
 figure:7
 file:1
 files:-4
 fill:3
 fills:-6
 fills~ my:-8
 fills~0:-2
 fill~ in:-6
 fill~ it:-1
 fill~ the:4
 fill~ to:3
 fill~ up:6
 fill~0:1
 film:-7
 film~ on:-5
 filter:-2
 final:-1
 find:7
 finds:-5
 find~ the:3
 find~F:3
 fine:-5
 finer:-6
 fine~ ?:-4
 fine~ and:-2
 fine~ but:-4
 fine~ for:-6
 fine~ or:-4
 finger:2
 finish:2
 finish~ paste:-6
 finish~ with:6
 fire:-8
 firm:4
 firmer:-1
 first:-4
 first~ and:-4
 first~ attempt:-6
 first~ batch:1
 first~ ever:-5
 first~ go:-3
 first~ hour:-3
 first~ i:-1
 first~ in:-3
 first~ it:-2
 first~ lot:4
 first~ one:-2
 first~ so:6
 first~ soap:-2
 first~ the:-2
 first~ then:-7
 first~ time:3
 first~ timer:-2
 first~ to:-3
 first~ try:-5
 first~ went:-2
 first~0:3
 first~F:-1
 first~t:3
 fish:-2
 fit:-2
 fits:-4
 fits~ ?:-4
 fits~ the:-3
 fit~ ?:-1
 fit~ the:2
 fixed:-10
 fizz:-3
 flak:5
 flake:9
 flame:-5
 flat:2
 flatmate:-1
 flat~ and:-4
 flat~ boil:3
 flat~ for:1
 flat~ in:-8
 float:-3
 float~ an:-5
 floor:2
 floor~ and:-4
 fluid:5
 fluid~ ounc:8
 foam:-5
 foams:-7
 foam~ from:-6
 foam~ over:6
 fold:-2
 folder:-6
 fold~ in:1
 folk:-8
 folks:-8
 follow:-2
 forever:-6
 forever~ to:-6
 forget:-1
 forgett:-1
 forgiv:-8
 forgive:-5
 forgive~ the:-3
 forgot:4
 forgotten:4
 forgot~ it:4
 forgot~ the:-2
 forgot~ to:2
 form:-8
 formula:-5
 forum:-10
 for~ a:-3
 for~ about:2
 for~ after:1
 for~ ages:-1
 for~ all:-1
 for~ an:-6
 for~ any:-5
 for~ babi:-8
 for~ baby:4
 for~ both:5
 for~ candl:-6
 for~ christma:-2
 for~ days:-6
 for~ each:5
 for~ every:-6
 for~ faces:-6
 for~ floor:-4
 for~ free:4
 for~ fry:-1
 for~ gram:4
 for~ half:5
 for~ hands:1
 for~ her:1
 for~ his:-4
 for~ it:-5
 for~ laundry:3
 for~ looks:-6
 for~ luck:4
 for~ me:1
 for~ more:1
 for~ my:1
 for~ next:-3
 for~ no:4
 for~ noth:-6
 for~ once:7
 for~ one:5
 for~ our:-2
 for~ people:-2
 for~ read:-3
 for~ salad:-11
 for~ saturday:3
 for~ shav:-2
 for~ skin:-8
 for~ soap:-8
 for~ some:-7
 for~ test:-7
 for~ that:-2
 for~ the:2
 for~ these:3
 for~ this:-3
 for~ those:-3
 for~ today:3
 for~ us:3
 for~ wash:-2
 for~ what:4
 for~ word:-6
 for~ years:-3
 for~ you:-8
 for~ your:4
 for~%:5
 for~0:-6
 for~=:-3
 for~A:-3
 for~B:-1
 for~L:-5
 for~N:-6
 for~S:-7
 for~T:-5
 for~W:-2
 for~X:2
 for~b:-2
 for~d:-8
 for~e:-7
 for~t:-7
 for~v:-3
 for~w:-1
 found:8
 found~ a:3
 found~ in:-7
 found~ it:5
 found~ on:1
 found~ out:2
 found~ the:7
 found~ this:-9
 fourth:-6
 fractionat:11
 fram:-10
 freeze:-4
 freezer:-1
 freezer~ for:-10
 freezer~ in:-2
 freezer~ paper:-3
 freeze~ the:-6
 free~ lol:-4
 fresh:-1
 fresh~w:-1
 friday:2
 friday~ and:-2
 fridge:-2
 fridge~ for:-4
 fridge~ overnight:-6
 friend':-4
 friend:-6
 friend~ says:-9
 friend~ who:5
 frighten:-5
 from~ ::-6
 from~ a:3
 from~ an:-5
 from~ another:-1
 from~ before:-1
 from~ christma:1
 from~ graz:-3
 from~ it:-4
 from~ krakow:-2
 from~ last:-7
 from~ me:-5
 from~ memory:-1
 from~ my:-3
 from~ one:-6
 from~ poland:-2
 from~ portugal:1
 from~ sunday:7
 from~ that:4
 from~ the:1
 from~ there:7
 from~ this:-1
 from~ what:-7
 from~ work:3
 from~0:-4
 from~=:-3
 from~F:-4
 from~L:-6
 from~t:-9
 from~w:-6
 front:-2
 front~ of:-6
 froze:4
 frozen:-1
 frozen~ cubes:-2
 frozen~ in:1
 frozen~ to:-3
 frozen~w:-8
 froze~ it:3
 fruit:-4
 fry:3
 fryer:4
 full:6
 fully:1
 full~ bottle:-2
 full~ of:-2
 fume:-8
 fumes:-8
 fun:-10
 funnel:1
 funny:-8
 further:4
 further~ up:-9
 fwd:-2
 fwd~ ::-3
 f~0:-6
 g:-4
 garage:-8
 garden:-5
 gas:-6
 gate:-7
 gave:2
 gave~ it:1
 gave~ me:4
 gave~ out:6
 gave~ up:4
 gave~ us:1
 gave~0:-8
 gel:-3
 gell:-2
 gel~ ::-4
 gel~ phase:-4
 generou:5
 gent:-9
 gentle:-2
 gentler:6
 german:-4
 get:-3
 gets:-5
 gets~ a:1
 gets~ the:-5
 gets~0:-4
 gett:-7
 get~ a:2
 get~ it:3
 get~ the:1
 get~ to:-9
 get~0:-7
 get~F:4
 ghana:-7
 gift:-8
 gifts:-5
 girl:-3
 girls:-6
 giv:-10
 give:-3
 given:-4
 gives:-8
 gives~ me:-5
 gives~ the:-6
 gives~%:5
 gives~0:-8
 give~ it:-7
 give~ me:1
 give~ or:4
 give~ the:-6
 give~ to:-3
 glad:-1
 glass:-1
 glass~ and:5
 glass~ of:6
 glossy:-3
 glov:-9
 glov~ and:-4
 glov~ on:-4
 glug:6
 glug~ of:4
 go:-1
 goat:5
 goats:-1
 goats~ are:2
 goes:-6
 goes~ away:-4
 goes~ grainy:-4
 goes~ into:-5
 goes~ off:-5
 goes~ on:-8
 goes~ up:-7
 goggl:-9
 goggl~ and:-3
 goggl~ on:-2
 going:4
 going~ by:-4
 going~ for:2
 going~ in:5
 going~ to:-1
 gone:4
 gone~ after:-6
 gone~ by:-10
 gone~ from:-4
 gone~ up:-2
 gonna:3
 good:-1
 good~ ?:-4
 good~ as:-5
 good~ bit:11
 good~ day:-5
 good~ even:-3
 good~ for:-7
 good~ glug:4
 good~ i:3
 good~ morn:-4
 good~ one:-6
 good~ or:-2
 good~ pot:-3
 good~ quantity:-4
 good~ scale:1
 good~ the:-3
 good~ to:-2
 good~F:-9
 good~t:-5
 goose:-4
 got:6
 got~ a:-4
 got~ in:-4
 got~ into:6
 got~ it:-2
 got~ my:-7
 got~ round:5
 got~ swapp:1
 got~ the:-5
 got~ thick:-1
 got~ to:4
 got~ too:1
 got~0:-6
 got~=:-3
 got~>:1
 got~S:-4
 got~b:4
 got~w:2
 go~ ?:-4
 go~ at:6
 go~ by:1
 go~ clear:1
 go~ for:1
 go~ in:-3
 go~ into:-7
 go~ on:-7
 go~ out:4
 go~ over:-5
 go~ rancid:-7
 go~ to:-3
 go~ up:4
 go~ with:9
 go~ wrong:-4
 grabb:6
 grade:4
 grain:-9
 grainy:-6
 gram:-2
 gramm:-8
 grams:-1
 grams~ ::-7
 grams~ and:-3
 grams~ cost:-2
 grams~ for:-2
 grams~ i:5
 grams~ of:2
 grams~ so:-10
 grams~A:-4
 grams~e:-6
 gram~ for:4
 gran:1
 grand:-5
 grandad:6
 granddad:1
 granddaughter:-6
 grandfather:-1
 grandmother:-7
 grandmother~ had:-3
 grandmother~ in:-6
 grandpa:1
 grandson:6
 granny:-1
 grans:-6
 grate:-2
 grateful:-1
 grate~ the:-6
 gravy:-1
 graz:-5
 greas:-2
 grease:-2
 greasy:1
 great~ aunt:-3
 green:-5
 green~ and:5
 green~ one:-2
 greeting:-5
 greeting~ from:-5
 grind:-5
 grind~ the:-2
 grocer:-2
 ground:-7
 ground~ fine:-5
 group:2
 group~ ::-6
 group~ b:-4
 group~ of:-5
 grown:3
 guess:10
 guess~ the:-2
 guest:-8
 guild:-8
 g~ ::-6
 g~ =:-7
 g~ cost:-2
 g~ oz:-3
 g~e:-8
 ha:2
 habit:1
 had:3
 hadnt:7
 had~ a:-6
 had~ already:7
 had~ been:5
 had~ come:4
 had~ cool:-6
 had~ dropp:-3
 had~ gone:7
 had~ in:-4
 had~ it:5
 had~ melt:3
 had~ no:-4
 had~ only:-2
 had~ set:1
 had~ some:-3
 had~ that:-1
 had~ the:-4
 had~ to:-5
 had~ weigh:-7
 had~0:-4
 had~<:-6
 had~=:2
 had~>:-11
 had~F:2
 had~N:-4
 had~X:4
 had~b:8
 hair:-1
 half:5
 halfway:-6
 halfway~ through:6
 half~ a:3
 half~ and:-5
 half~ as:3
 half~ batch:6
 half~ is:4
 half~ of:2
 half~ size:2
 half~A:-5
 half~F:-3
 half~I:-5
 half~L:2
 half~W:-6
 hall:-9
 hallo:-4
 hallo~ my:-1
 halv:8
 halve:-2
 halv~ it:3
 hammer:4
 hand:-2
 handful:1
 handful~ of:-5
 handle:-3
 handout:2
 handout~0:-5
 hands~ ?:-4
 hands~ after:-2
 hands~ are:2
 handwrit:4
 handy:-7
 hand~ ::1
 hand~ in:-5
 hand~ on:4
 hand~ out:-6
 hand~ soap:-5
 hand~ warm:-1
 hand~ with:-5
 hang:5
 hangs:-6
 happen:2
 happy:3
 happy~ with:-10
 hard:-5
 harden:-8
 harder:-3
 harder~ bar:-2
 hardnes:-5
 hardware:-2
 hardware~ store:-8
 hard~ after:-1
 hard~ and:-5
 hard~ any:-7
 hard~ as:-6
 hard~ smell:-5
 hard~ to:5
 hard~W:-8
 harm:-6
 harsh:-7
 has:2
 hasnt:-6
 has~ anyone:-7
 has~ become:-4
 has~ cool:-7
 has~ done:-6
 has~ dry:1
 has~ it:2
 has~ made:-3
 has~ moved:-7
 has~ no:-3
 has~ the:-1
 has~ to:-4
 has~=:-4
 has~F:7
 hate:-4
 hates:-2
 hav:-3
 have:-1
 havent:4
 have~ a:-8
 have~ already:-5
 have~ asked:4
 have~ done:-2
 have~ enough:3
 have~ for:1
 have~ gone:5
 have~ had:3
 have~ i:-7
 have~ it:3
 have~ made:-5
 have~ my:-6
 have~ never:3
 have~ no:-3
 have~ not:-9
 have~ put:6
 have~ the:4
 have~ to:-10
 have~ used:-4
 have~ weigh:1
 have~0:-4
 have~=:-5
 have~>:-5
 have~F:3
 hdpe:-6
 he:-1
 head:-1
 heap:9
 heap~ spoon:2
 hear:-2
 heard:3
 heart:-2
 heat:-12
 heats:-8
 heats~ up:-5
 heat~ and:-2
 heat~ i:-2
 heat~ off:-3
 heat~ the:-5
 heaven:-7
 heavy:3
 heavy~ ?:-6
 heavy~ or:-6
 hed:2
 height:-6
 held:8
 held~ back:1
 held~ the:1
 hell:-6
 hello:-5
 hello~ everyone:-1
 hello~ from:-1
 hello~ i:-3
 help:6
 helps:-1
 help~ with:1
 hence:-5
 hence~ the:-10
 hens:-8
 her:-4
 heres:-7
 heres~ my:-1
 heres~ the:-4
 heres~ what:-7
 here~ ::-2
 here~ ?:-5
 here~ and:-3
 here~ are:-2
 here~ goes:-3
 here~ i:5
 here~ in:-5
 here~ is:2
 here~ it:-8
 here~ so:-5
 here~ we:-8
 hers:-10
 herself:-6
 hers~ and:-4
 hers~ is:-4
 hers~ with:-8
 her~ hands:-5
 her~ life:-7
 her~ mother:-2
 her~ soap:-6
 her~A:-5
 her~F:-11
 hey:-5
 he~ also:-7
 he~ has:-5
 he~ is:-3
 he~ says:6
 he~ was:-7
 hi:-1
 hid:-10
 hide:-7
 high:-5
 high~ ?:-5
 him:-6
 himself:3
 his:-6
 hiss:2
 his~A:-7
 hit:1
 hit~ it:-4
 hit~ the:2
 hive:-8
 hives:-6
 hiya:1
 hi~ everyone:-3
 hmm:4
 hob:-1
 hola:-3
 holds:-5
 holds~ a:4
 holds~0:-3
 holds~v:-7
 holds~w:-8
 hold~ ?:-2
 hold~ back:5
 hold~ the:3
 hold~ up:-3
 hole:-6
 holes:-1
 holiday:-9
 home:1
 home~ and:4
 honest:5
 hood:-10
 hope:1
 hope~ it:-5
 hope~ the:-4
 hot:-8
 hotter:-9
 hotter~ than:-4
 hot~ ?:-1
 hot~ or:-5
 hour:-2
 hour~ and:-6
 hour~ then:-3
 hour~ until:-1
 hour~0:1
 house:4
 house~ smell:-5
 how:2
 hows:-5
 how~ do:1
 how~ does:-5
 how~ i:4
 how~ it:-1
 how~ long:-7
 how~ many:-6
 how~ much:9
 how~ my:-8
 how~ the:-8
 how~ to:-11
 how~ we:-5
 hp:-4
 hp~ ::-1
 hp~ in:-3
 hubby:2
 huge:5
 humidity:-2
 humidity~%:-4
 hurry:-4
 hurt:-2
 hurts:-4
 husband:2
 husband~ says:-4
 husband~ think:-10
 husband~ who:-7
 i'd:1
 i'd~ already:5
 i'd~ be:-5
 i'd~ been:1
 i'd~ do:-7
 i'd~ guess:7
 i'd~ have:-8
 i'd~ like:5
 i'd~ love:-5
 i'd~ never:-6
 i'd~ pour:-2
 i'd~ put:3
 i'd~ rather:-1
 i'd~ read:4
 i'd~ say:4
 i'd~ use:-7
 i'd~ weigh:1
 i:3
 idea:-1
 idea~ which:4
 idk:5
 ie:6
 ie~=:-7
 if:-2
 if~ anyone:-2
 if~ im:3
 if~ it:1
 if~ its:-1
 if~ ive:-5
 if~ my:2
 if~ somebody:-5
 if~ someone:2
 if~ that:4
 if~ thats:-1
 if~ the:-5
 if~ ther:-7
 if~ this:2
 if~ ur:-8
 if~ you:-4
 if~ your:-6
 if~ youre:-7
 if~ yours:-4
 if~ youve:-7
 if~A:-5
 if~F:-6
 if~b:-5
 ignore:6
 ignore~ the:8
 ill:-2
 ill~ do:-5
 ilse:-2
 im:2
 impatient:-7
 im~ a:-4
 im~ after:7
 im~ aim:2
 im~ ask:-1
 im~ at:-7
 im~ dictat:-3
 im~ doing:-3
 im~ going:2
 im~ in:-8
 im~ mak:1
 im~ nervou:-8
 im~ new:-3
 im~ not:1
 im~ on:3
 im~ told:-4
 im~ using:5
 im~0:-5
 in:1
 inch:1
 incl:1
 includ:4
 includ~ the:9
 individual:-7
 individual~ mould:-7
 infus:5
 infus~ with:5
 ingredient:-4
 ingredient~ amount:-3
 ingredient~ g:-3
 ingredient~ grams:-4
 ingredient~ oz:-6
 ingredient~ weight:-3
 inside:-3
 insist:6
 instant:-4
 instead:3
 instruction:2
 insulate:-6
 internet:-3
 into:-1
 into~ a:-6
 into~ cubes:-5
 into~ it:1
 into~ mould:-3
 into~ oils:-3
 into~ one:-8
 into~ soap:-4
 into~ that:4
 into~ the:2
 into~ this:6
 into~0:-5
 into~=:-6
 into~W:-6
 into~b:3
 into~v:-3
 in~ ::2
 in~ ?:5
 in~ a:-2
 in~ about:-1
 in~ after:6
 in~ all:-7
 in~ an:-7
 in~ and:-2
 in~ another:5
 in~ april:-7
 in~ as:2
 in~ at:2
 in~ august:1
 in~ batch:-6
 in~ before:8
 in~ between:-8
 in~ blend:-8
 in~ burst:-2
 in~ by:1
 in~ case:-7
 in~ class:1
 in~ cold:-7
 in~ cubes:-6
 in~ dag:-1
 in~ each:-5
 in~ every:-1
 in~ fact:5
 in~ first:-5
 in~ for:11
 in~ front:-7
 in~ g:2
 in~ grams:-9
 in~ half:2
 in~ her:-9
 in~ hers:-8
 in~ his:-9
 in~ hot:-6
 in~ i:5
 in~ it:1
 in~ its:7
 in~ january:-6
 in~ july:-8
 in~ june:-7
 in~ last:-1
 in~ later:-4
 in~ law:-2
 in~ laws:-3
 in~ march:-10
 in~ may:5
 in~ maybe:3
 in~ mould:-4
 in~ my:-2
 in~ no:-7
 in~ november:-4
 in~ october:-5
 in~ ohio:-6
 in~ on:-5
 in~ once:10
 in~ one:4
 in~ or:3
 in~ order:-4
 in~ ounc:-1
 in~ our:3
 in~ oz:-2
 in~ parts:-4
 in~ place:1
 in~ plus:-4
 in~ red:1
 in~ short:-3
 in~ slow:-3
 in~ small:-7
 in~ so:4
 in~ spr:-8
 in~ step:-6
 in~ steps:5
 in~ summer:-6
 in~ that:2
 in~ the:-2
 in~ there:6
 in~ this:2
 in~ tiny:8
 in~ to:-3
 in~ too:1
 in~ total:-5
 in~ truth:1
 in~ under:-3
 in~ week:-3
 in~ went:5
 in~ what:-7
 in~ when:-4
 in~ which:1
 in~ winter:-2
 in~ with:6
 in~ your:-1
 in~0:-6
 in~<:3
 in~=:-4
 in~>:-3
 in~F:-4
 in~I:-5
 in~L:3
 in~N:6
 in~W:-4
 in~X:1
 in~b:-8
 in~e:3
 in~l:-1
 in~r:-7
 in~t:-6
 in~v:-10
 in~w:1
 ish:-6
 isnt:6
 isnt~ in:3
 isnt~ it:4
 is~ a:3
 is~ about:-6
 is~ actual:4
 is~ all:-1
 is~ already:2
 is~ alway:-1
 is~ an:3
 is~ and:-7
 is~ as:-1
 is~ at:-5
 is~ below:-4
 is~ cheap:-7
 is~ clear:-4
 is~ com:-1
 is~ correct:-7
 is~ dear:-1
 is~ done:2
 is~ dry:5
 is~ enough:-6
 is~ exact:-7
 is~ fine:-11
 is~ finish:2
 is~ for:-2
 is~ going:4
 is~ gone:-7
 is~ good:-8
 is~ grams:1
 is~ half:1
 is~ hard:-1
 is~ her:-3
 is~ hot:-5
 is~ in:2
 is~ it:-5
 is~ just:-8
 is~ left:-1
 is~ like:-4
 is~ love:-4
 is~ meant:-3
 is~ mine:-8
 is~ more:-1
 is~ near:-8
 is~ no:-6
 is~ normal:-6
 is~ not:-3
 is~ noth:-2
 is~ now:4
 is~ off:3
 is~ oil:3
 is~ ok:-6
 is~ okay:-2
 is~ one:3
 is~ only:-8
 is~ our:-7
 is~ out:1
 is~ over:2
 is~ plenty:1
 is~ real:8
 is~ right:-1
 is~ safe:-2
 is~ set:-1
 is~ she:-2
 is~ short:1
 is~ small:-2
 is~ so:-1
 is~ sold:5
 is~ step:-2
 is~ technical:7
 is~ that:-4
 is~ the:-3
 is~ there:-3
 is~ thick:-5
 is~ this:-8
 is~ to:1
 is~ under:-2
 is~ weigh:-2
 is~ what:3
 is~ where:-8
 is~ whether:-7
 is~ why:-7
 is~ with:9
 is~ worth:-6
 is~ written:-1
 is~ wrong:-7
 is~0:6
 is~<:-4
 is~=:-4
 is~>:-7
 is~A:-4
 is~F:6
 is~L:4
 is~N:8
 is~S:2
 is~T:-6
 is~b:2
 is~d:-2
 is~e:-6
 is~r:3
 is~t:-8
 is~v:-2
 is~w:-1
 it:2
 itch:-2
 item:-3
 item~ grams:-3
 item~ qty:-1
 itll:-2
 itll~ be:2
 its:1
 itself:-4
 itself~ is:-7
 itself~ off:-1
 its~ a:4
 its~ about:-6
 its~ already:3
 its~ as:-7
 its~ been:-5
 its~ bowl:1
 its~ clear:-5
 its~ cook:5
 its~ date:-3
 its~ fine:-7
 its~ for:6
 its~ from:2
 its~ gone:2
 its~ hot:-5
 its~ in:-3
 its~ just:-8
 its~ made:4
 its~ meant:-1
 its~ not:-4
 its~ on:-6
 its~ only:-3
 its~ own:-4
 its~ place:5
 its~ ready:-7
 its~ sitt:-5
 its~ still:1
 its~ the:-1
 its~ time:-5
 its~ weight:-4
 its~ what:3
 its~0:7
 its~=:-6
 its~A:4
 its~F:1
 its~N:6
 its~b:-3
 its~d:-6
 its~l:3
 it~ ::-7
 it~ ?:-3
 it~ a:1
 it~ about:-4
 it~ add:-5
 it~ after:-1
 it~ again:3
 it~ alone:-7
 it~ already:4
 it~ and:-3
 it~ another:3
 it~ anyway:-10
 it~ as:-3
 it~ away:-5
 it~ back:1
 it~ bad:3
 it~ be:2
 it~ because:4
 it~ before:-7
 it~ behav:-2
 it~ bit:6
 it~ but:-6
 it~ by:-1
 it~ can:-3
 it~ check:-7
 it~ clear:-2
 it~ climb:-4
 it~ come:-4
 it~ comes:4
 it~ cook:-5
 it~ cooks:-4
 it~ cool:1
 it~ cools:-5
 it~ correct:-4
 it~ cost:-5
 it~ costs:-5
 it~ crack:-5
 it~ crumbl:-1
 it~ cut:-4
 it~ did:-5
 it~ didnt:1
 it~ do:-5
 it~ doesnt:-1
 it~ dried:5
 it~ drop:-3
 it~ enough:-4
 it~ every:-4
 it~ exact:-9
 it~ feels:-4
 it~ first:2
 it~ fit:-2
 it~ fits:-5
 it~ flat:-4
 it~ foam:3
 it~ for:-2
 it~ from:-1
 it~ gets:-4
 it~ gives:1
 it~ go:-5
 it~ goes:1
 it~ going:-5
 it~ good:-4
 it~ got:2
 it~ hard:-4
 it~ has:-1
 it~ heats:-4
 it~ here:-3
 it~ hold:-1
 it~ holds:-4
 it~ i:-2
 it~ if:-7
 it~ in:-1
 it~ into:-10
 it~ is:3
 it~ it:2
 it~ its:-4
 it~ just:-1
 it~ lasts:-5
 it~ lather:-7
 it~ like:-4
 it~ look:7
 it~ looks:-4
 it~ makes:2
 it~ matter:3
 it~ may:-6
 it~ melts:-3
 it~ mild:-6
 it~ moved:5
 it~ myself:-1
 it~ needs:-3
 it~ never:-2
 it~ next:-1
 it~ no:-2
 it~ now:-8
 it~ off:4
 it~ ok:-4
 it~ once:-7
 it~ or:-6
 it~ out:-1
 it~ outside:-4
 it~ over:-2
 it~ past:-6
 it~ plus:-3
 it~ rain:-3
 it~ real:4
 it~ right:-1
 it~ said:7
 it~ says:2
 it~ seiz:4
 it~ set:2
 it~ sets:-5
 it~ should:-5
 it~ since:-2
 it~ sit:1
 it~ smell:-2
 it~ so:-1
 it~ stand:-2
 it~ stay:5
 it~ stays:-1
 it~ still:-6
 it~ stink:-5
 it~ sweat:-5
 it~ takes:-5
 it~ the:-6
 it~ then:-2
 it~ there:-9
 it~ thicken:4
 it~ this:-2
 it~ through:-6
 it~ times:-2
 it~ to:4
 it~ today:-4
 it~ too:3
 it~ took:-7
 it~ trac:-2
 it~ turn:-4
 it~ turns:1
 it~ twice:2
 it~ under:-6
 it~ until:-4
 it~ wants:-4
 it~ was:2
 it~ weigh:-3
 it~ well:-3
 it~ when:4
 it~ will:-6
 it~ with:-5
 it~ without:4
 it~ wont:-7
 it~ work:-2
 it~ would:-2
 it~ wouldnt:3
 it~ wrong:-5
 it~ zapp:5
 it~ zaps:-6
 it~0:2
 it~=:-4
 it~>:-1
 it~A:-2
 it~F:-3
 it~S:-5
 it~b:6
 it~t:-7
 it~w:-2
 ive:-1
 ive~ a:2
 ive~ been:-6
 ive~ bought:3
 ive~ come:-4
 ive~ done:-6
 ive~ gone:7
 ive~ got:-3
 ive~ had:-7
 ive~ just:1
 ive~ made:-5
 ive~ never:-6
 ive~ no:-1
 ive~ not:-6
 ive~ only:2
 ive~ read:-6
 ive~ seen:-7
 ive~ since:5
 ive~ tried:-5
 ive~ used:-1
 ive~ weigh:-4
 ivory:-7
 i~ ?:-8
 i~ actual:-2
 i~ add:-3
 i~ added:3
 i~ alway:-4
 i~ am:4
 i~ ask:1
 i~ began:-8
 i~ believe:2
 i~ bin:-4
 i~ blame:-6
 i~ bought:-10
 i~ bring:-5
 i~ buy:-4
 i~ call:-1
 i~ came:1
 i~ can:-9
 i~ cant:-3
 i~ carri:11
 i~ caught:2
 i~ chang:-4
 i~ check:-10
 i~ chuck:7
 i~ clean:1
 i~ commit:-2
 i~ copi:3
 i~ copy:-5
 i~ could:1
 i~ couldnt:1
 i~ count:-4
 i~ cut:-1
 i~ did:3
 i~ didnt:1
 i~ dilut:-7
 i~ dilute:-5
 i~ dissolve:3
 i~ do:-8
 i~ dont:1
 i~ doubl:6
 i~ drain:9
 i~ dropp:2
 i~ empti:9
 i~ ended:-4
 i~ ever:-8
 i~ fill:10
 i~ final:-7
 i~ find:-9
 i~ finish:-2
 i~ first:-4
 i~ fish:12
 i~ fold:-3
 i~ follow:2
 i~ forgot:1
 i~ found:-2
 i~ freeze:1
 i~ froze:-3
 i~ gave:-2
 i~ get:-5
 i~ give:-4
 i~ go:1
 i~ good:-3
 i~ got:-2
 i~ guess:11
 i~ had:-3
 i~ hadnt:5
 i~ halv:7
 i~ hand:-4
 i~ hate:-3
 i~ have:1
 i~ havent:-2
 i~ held:3
 i~ hit:-9
 i~ honest:10
 i~ hope:-2
 i~ in:-3
 i~ just:2
 i~ keep:-3
 i~ kept:3
 i~ knock:6
 i~ know:-5
 i~ learn:-5
 i~ leave:2
 i~ left:10
 i~ let:3
 i~ like:-4
 i~ look:-1
 i~ lost:6
 i~ made:-1
 i~ make:-8
 i~ may:1
 i~ mean:-1
 i~ meant:-6
 i~ measur:-4
 i~ melt:1
 i~ mess:-7
 i~ might:-1
 i~ mix:-6
 i~ mixed:3
 i~ must:2
 i~ near:-7
 i~ need:-1
 i~ never:3
 i~ notic:11
 i~ ok:1
 i~ once:-11
 i~ only:1
 i~ open:-3
 i~ overdo:-5
 i~ paid:-5
 i~ panick:-2
 i~ plan:-5
 i~ plann:-4
 i~ pour:1
 i~ press:-6
 i~ print:-6
 i~ promis:2
 i~ put:3
 i~ ran:-1
 i~ read:3
 i~ real:-4
 i~ realis:3
 i~ reckon:-2
 i~ remember:-2
 i~ render:-2
 i~ replac:4
 i~ right:-6
 i~ rins:9
 i~ round:5
 i~ run:-8
 i~ said:-7
 i~ saw:8
 i~ say:-2
 i~ scal:6
 i~ scrap:9
 i~ see:6
 i~ sell:-4
 i~ set:-1
 i~ settl:-5
 i~ shook:4
 i~ short:-7
 i~ should:3
 i~ siev:-1
 i~ skipp:6
 i~ smell:2
 i~ soap:-4
 i~ split:-1
 i~ sprinkl:-5
 i~ still:1
 i~ stir:-7
 i~ stirr:4
 i~ stopp:9
 i~ strain:-1
 i~ suppose:2
 i~ swapp:12
 i~ swear:2
 i~ take:-5
 i~ teach:-4
 i~ tell:-7
 i~ test:-2
 i~ think:2
 i~ thought:-3
 i~ threw:1
 i~ tip:2
 i~ tipp:2
 i~ told:-3
 i~ took:3
 i~ topp:-1
 i~ translate:-4
 i~ trust:-6
 i~ turn:-5
 i~ type:2
 i~ typed:6
 i~ use:-4
 i~ used:2
 i~ usual:3
 i~ wait:-6
 i~ want:2
 i~ warm:-6
 i~ was:-5
 i~ wash:-3
 i~ wasnt:4
 i~ weigh:2
 i~ went:5
 i~ will:-7
 i~ wiped:-8
 i~ work:-5
 i~ worry:-7
 i~ would:1
 i~ wouldnt:-9
 i~ write:-9
 i~ wrote:4
 i~K:-8
 jam~ jar:2
 january:-12
 january~ and:-4
 jar:1
 jars:-8
 jars~ of:-6
 jar~ and:7
 jar~ of:7
 jar~ so:-3
 jar~ was:6
 jelly:-6
 job:4
 join:2
 join~ the:4
 judge:-1
 jug's:5
 jug:2
 jugs:2
 jug~ ::2
 jug~ and:3
 jug~ from:3
 jug~ in:-6
 jug~ is:-9
 jug~ of:4
 jug~ on:-7
 jug~ so:5
 jug~ to:7
 jug~ was:-4
 jug~ weigh:-5
 jug~w:2
 july:-5
 jump:5
 jumps:3
 jumps~ in:8
 june:-12
 just:1
 just~ a:-2
 just~ as:-3
 just~ for:-7
 just~ tell:-4
 just~ the:3
 just~ want:-8
 just~ what:-6
 just~F:-5
 k:1
 keep:-8
 keeps:-8
 keeps~ it:-5
 keeps~ the:-2
 keep~ a:-5
 keep~ back:-1
 keep~ in:-6
 keep~ it:-10
 keep~ my:-8
 keep~0:-6
 keep~<:1
 keep~t:-3
 kept:1
 kept~ a:-1
 kept~ in:-4
 kept~ the:2
 kept~0:2
 kettle:7
 key:-5
 kg:2
 kg~ cost:-2
 kid:7
 kidd:-6
 kids:-2
 kill:-7
 kilo:5
 kilo~ in:-5
 kilo~ of:-6
 kinda:3
 kind~ check:-7
 kind~ of:-2
 kind~ regard:-4
 kind~ with:3
 kiss:-5
 kitchen~ and:2
 kitchen~ bar:-6
 kitchen~ is:-3
 kitchen~ scale:6
 kitchen~ so:-4
 kitchen~ soap:-1
 kitchen~ was:-5
 knew:-6
 knife:-9
 knob:7
 knob~ of:7
 knock:2
 knock~ a:-3
 knock~ the:2
 know:3
 knows:3
 knows~ how:5
 know~ ::-6
 know~ but:-1
 know~ how:3
 know~ i:-6
 know~ if:1
 know~ is:-6
 know~ it:1
 know~ its:-4
 know~ that:3
 know~ the:-2
 know~ what:-6
 know~ whether:-5
 know~ which:3
 krakow:-4
 k~0:-10
 l:-5
 la:-5
 lab:-3
 label:1
 labell:-2
 label~ ::-6
 label~ on:-6
 label~ says:6
 label~0:-7
 ladi:-4
 ladl:9
 ladle:5
 ladle~ of:3
 lads:-3
 lady:-2
 lady~ at:-6
 lady~ in:-6
 lady~ on:-4
 land:1
 last:-5
 lasts:-8
 last~ autumn:-8
 last~ batch:-4
 last~ bit:4
 last~ lot:-9
 last~ minute:7
 last~ month:5
 last~ night:-7
 last~ of:-7
 last~ one:-9
 last~ time:-6
 last~ weeks:4
 last~ winter:-7
 last~ year:-5
 last~ years:-2
 last~F:-7
 late:-2
 later:-3
 later~ on:-4
 late~ husband:3
 late~ mother:-6
 lather:-6
 lather~ is:-2
 lather~ like:-7
 lather~ was:-4
 laugh:2
 laugh~ at:-3
 laundry:1
 laundry~ bar:-7
 laundry~ bars:-2
 laundry~ soap:-5
 law:-2
 laws:-3
 law~ who:-7
 layer:2
 la~A:-4
 lb:1
 lb~ oz:-7
 leaflet~ from:-5
 leak:-3
 learn:-8
 learn~ from:-2
 learn~ that:2
 least:-3
 least~t:-1
 leav:-3
 leave:-4
 leave~ it:-2
 leave~ out:-7
 leave~ the:-3
 leave~ them:-2
 leave~t:-1
 leav~ a:-6
 leav~ the:-7
 leeds:4
 leftover~ soap:-6
 leftover~F:-2
 left~ and:2
 left~ for:-10
 left~ from:7
 left~ in:-2
 left~ it:2
 left~ of:-6
 left~ on:2
 left~ over:-4
 left~ so:-1
 left~ the:1
 left~ to:3
 length:-3
 lent:-1
 less:3
 lesson:-5
 less~ of:6
 less~F:-1
 less~W:-3
 lets:1
 letter:3
 let~ cool:-2
 let~ it:-4
 let~ me:-4
 let~ the:-3
 let~ them:2
 let~ us:-6
 let~ your:-5
 library:-5
 library~ book:-5
 lick:-1
 lid:-1
 lidd:-1
 lids:-5
 lid~ and:-6
 lid~ of:-7
 lid~ off:3
 lid~ on:-5
 lie:-7
 life:2
 lift:3
 lift~ the:2
 light:1
 lighter:-7
 light~ on:2
 light~ trace:-1
 like:-2
 liked:-5
 likes:-4
 likes~ it:5
 likewise:3
 like~ a:-3
 like~ alway:-8
 like~ an:-6
 like~ candle:-5
 like~ cheese:-7
 like~ cold:-5
 like~ custard:-6
 like~ i:-8
 like~ it:-1
 like~ mad:2
 like~ mash:-4
 like~ me:-4
 like~ my:1
 like~ noth:-3
 like~ paper:2
 like~ porridge:4
 like~ sandpaper:-5
 like~ somebody:-1
 like~ someone:-1
 like~ soup:-5
 like~ stone:-5
 like~ that:-6
 like~ the:-6
 like~ thin:-3
 like~ to:-5
 like~ wet:4
 like~ you:-1
 like~%:1
 like~0:5
 like~F:-7
 like~L:-7
 like~S:-3
 like~U:-7
 like~X:-4
 like~t:7
 like~w:8
 limit:-7
 line:7
 lined:-7
 lined~ w:-5
 lined~ with:-2
 linen:-4
 lines:-1
 line~ ::6
 line~ a:-3
 line~ the:-3
 lip:-5
 lip~ balm:-5
 liquid:2
 liquid~ ::-2
 liquid~ and:-1
 liquid~ hand:-3
 liquid~ is:-5
 liquor:8
 list:3
 list~ for:-8
 list~ i:3
 list~ is:-2
 litre:4
 little:2
 little~ ?:-6
 little~ of:1
 little~A:3
 little~F:-5
 little~W:3
 live:-7
 lived:-7
 lives:-6
 lives~ in:-6
 loaf:-4
 loaf~ ::-4
 loaf~ i:1
 loaf~ mold:-2
 loaf~ mould:-1
 loaf~ tin:-2
 loav:-4
 local:-4
 lock:-9
 loft:-4
 log:1
 log~ ::-1
 lol:-3
 long:-3
 longer:-2
 longer~ than:-3
 long~ as:-4
 long~ one:1
 long~ sleev:-5
 long~ story:6
 long~ time:-4
 look:2
 looks:-9
 looks~ like:-4
 looks~ ok:-1
 look~ ?:-3
 look~ a:1
 look~ at:-5
 look~ before:-8
 look~ for:2
 look~ it:-6
 look~ like:1
 look~ of:2
 look~ ok:-3
 look~ over:-6
 look~ right:-5
 loosen:8
 loosen~ it:6
 lose:-4
 loss:-1
 lost:2
 lost~ a:1
 lost~ the:-6
 lotion:7
 lots:-7
 lots~ of:-5
 lot~ ?:-1
 lot~ of:1
 lot~ to:-3
 lot~0:3
 loud:-8
 love:-6
 loves:4
 love~ a:2
 love~ and:-3
 love~ but:-4
 love~ it:-4
 love~ to:-5
 low:-1
 lower:7
 lowest:-5
 lowest~ flame:-6
 low~ and:-4
 low~ for:3
 low~ heat:-1
 low~ in:2
 low~t:-3
 luck:2
 lucki:-7
 lucky:-5
 lukewarm:-7
 lump:6
 lumps:-4
 lumpy:7
 lump~ of:-2
 lunch:-8
 lurker:-4
 luxury:-3
 lye's:5
 lye:2
 lyes:-6
 lyes~ together:-5
 lying:4
 lyon:-5
 l~0:-4
 m:-5
 machine:-5
 made:1
 made~ ::-5
 made~ a:2
 made~ for:-10
 made~ from:-2
 made~ hers:-6
 made~ in:-6
 made~ it:1
 made~ my:-2
 made~ of:-5
 made~ on:-5
 made~ soap:-2
 made~ the:6
 made~ this:-4
 made~ up:5
 made~ with:-8
 made~0:8
 made~K:1
 made~r:-6
 made~t:-1
 magazine:-4
 mak:8
 maker:-3
 maker~ ::-4
 makes:-4
 makes~ a:-8
 makes~ it:-3
 makes~ no:-6
 makes~ sense:-3
 makes~ the:-4
 makes~ up:7
 makes~0:1
 makes~T:-8
 makes~b:-5
 make~ a:-7
 make~ exact:-5
 make~ for:-5
 make~ it:7
 make~ of:-8
 make~ sense:-3
 make~ soap:-3
 make~ the:-8
 make~ this:-5
 make~ up:-1
 mak~ it:8
 mak~ the:-3
 mak~ this:-2
 mama:-7
 man:-8
 march:-11
 margin:-2
 marit:-5
 mark:6
 market:-7
 market~ told:-2
 marks:1
 marta:4
 mash:-5
 mash~ potato:-3
 mass:-6
 match:-1
 material:-7
 maths:3
 matter:4
 matter~ to:3
 may:1
 maybe:8
 maybe~ a:7
 maybe~0:5
 maybe~<:-1
 maybe~t:-6
 maybe~w:6
 may~ be:1
 may~ have:6
 may~ i:3
 me:-1
 mean:-3
 means:1
 meant:-1
 meant~ to:-1
 meanwhile:4
 mean~ the:5
 mean~ to:-5
 measur:4
 measure:1
 measur~ cup:2
 measur~ it:1
 measur~ jug:8
 measur~ the:3
 measur~=:-7
 mechanic:3
 medium:-6
 meets:-1
 meine:-7
 melt:-2
 melts:-9
 melts~ at:-5
 melt~ and:2
 melt~ anyth:-2
 melt~ at:-5
 melt~ by:-8
 melt~ everyth:4
 melt~ first:-5
 melt~ i:-8
 melt~ in:8
 melt~ on:-7
 melt~ the:-5
 melt~ together:-1
 melt~ with:4
 melt~=:-3
 member:1
 memory:4
 men:-7
 merci:-4
 mess:-5
 message:-9
 mess~ up:-3
 method:-5
 method~ ::-5
 metric:-6
 me~ ::-1
 me~ ?:4
 me~ a:1
 me~ about:-3
 me~ as:2
 me~ at:2
 me~ before:-5
 me~ but:-2
 me~ for:-2
 me~ how:-7
 me~ i:-3
 me~ if:-4
 me~ in:-4
 me~ is:7
 me~ it:-6
 me~ its:-7
 me~ please:-6
 me~ that:-2
 me~ the:3
 me~ this:-4
 me~ to:-5
 me~ what:-1
 me~ where:4
 me~ whether:-1
 me~ with:4
 me~0:-10
 me~>:-4
 me~t:-7
 microwave:1
 middle:-5
 middle~ of:4
 might~ have:4
 mild:4
 milder:-1
 mild~ ?:-6
 milk:-7
 milk~ carton:-6
 mill:-6
 min:7
 mind:5
 mind~ the:-1
 mine:-2
 mines:1
 mine~ ::3
 mine~ had:-5
 mine~ has:-4
 mine~ in:-6
 mine~ is:5
 mine~ took:-7
 mine~ was:1
 mine~ with:5
 mini:1
 minimum:2
 minus:5
 minus~ the:10
 minus~ whatever:7
 minute:-4
 minute~0:-7
 min~ .:5
 misread:10
 misread~ my:2
 miss:2
 miss~ the:5
 mistake:4
 mistake~ and:-7
 mix:3
 mixed:3
 mixed~ at:-6
 mixed~ in:7
 mixed~ it:4
 mixed~ the:1
 mixed~ with:1
 mixed~=:-5
 mixer:-5
 mix~ at:-2
 mix~ of:2
 mix~ the:2
 mix~A:-3
 mk:-4
 ml:10
 mm:-8
 mode:4
 modern:-4
 mold:2
 molds:4
 mold~ holds:-5
 mold~ is:1
 moment:-7
 moms:-2
 mon:3
 monday:1
 money:3
 month:-2
 month~ i:-2
 month~0:-5
 moon:-3
 mopp:3
 mopp~ up:3
 more:3
 more~ and:-6
 more~ fat:-6
 more~ like:9
 more~ of:4
 more~ or:-4
 more~ than:-2
 more~A:4
 more~F:3
 morn:-1
 morn~ and:1
 morn~ from:-4
 most:4
 most~ of:10
 mother:-1
 mother~ and:-5
 mother~ did:4
 mould:-1
 mouldy:4
 mould~ ::-6
 mould~ a:-5
 mould~ and:-2
 mould~ bang:-4
 mould~ by:-2
 mould~ for:-3
 mould~ holds:-3
 mould~ in:-5
 mould~ is:3
 mould~ of:-6
 mould~ on:-3
 mould~ so:-7
 mould~ takes:-3
 mould~ the:-5
 mould~ was:-6
 mould~ with:-7
 mould~0:-1
 mould~t:-4
 mould~v:-4
 mov:1
 move:-5
 moved:2
 moved~ to:1
 moves:-4
 mrs:3
 much:-1
 much~ ?:-4
 much~ and:6
 much~ as:-5
 much~ fat:-4
 much~ for:-7
 much~ of:-4
 much~ superfat:-5
 much~A:-3
 much~F:-3
 much~W:4
 muffin:-6
 mug:5
 multip:5
 mums:1
 mum~ says:-5
 museum:-7
 mush:-4
 must:-4
 must~ be:-8
 must~ have:6
 mutton:1
 myself:-4
 my~ arm:-5
 my~ aunt:-3
 my~ aunts:3
 my~ babcia:-4
 my~ bars:-4
 my~ bathroom:5
 my~ book:2
 my~ boyfriend:-2
 my~ brother':4
 my~ brother:-4
 my~ colleague:-5
 my~ country:5
 my~ cousin:-1
 my~ dad:-8
 my~ dads:3
 my~ daughter':-8
 my~ daughter:2
 my~ earlier:4
 my~ elbow:-5
 my~ english:-2
 my~ everyday:-3
 my~ ex:-6
 my~ father:-2
 my~ first:-4
 my~ flatmate:-4
 my~ friend:2
 my~ glass:-3
 my~ good:-6
 my~ granddaughter:-6
 my~ grandmother:-9
 my~ grandson:4
 my~ great:-2
 my~ hair:-1
 my~ hands:-9
 my~ handwrit:-7
 my~ head:-3
 my~ husband:-5
 my~ kilo:-3
 my~ kitchen:2
 my~ last:-10
 my~ late:-1
 my~ laundry:-4
 my~ little:4
 my~ loaf:-4
 my~ mate:-8
 my~ mind:7
 my~ mold:-6
 my~ mother:-1
 my~ mum:1
 my~ mums:-7
 my~ nan:-7
 my~ nans:-4
 my~ neighbor:-5
 my~ neighbour:-1
 my~ nephew:-9
 my~ niece:-1
 my~ notebook:6
 my~ notes:-1
 my~ number:-2
 my~ oils:-2
 my~ old:-2
 my~ own:2
 my~ partner:-1
 my~ paste:-6
 my~ phone:-3
 my~ plan:-3
 my~ previou:1
 my~ question:-3
 my~ recip:-2
 my~ recipe:-2
 my~ scal:-4
 my~ scale:4
 my~ second:-2
 my~ sheet:-3
 my~ sister':-1
 my~ sister:-8
 my~ skin:6
 my~ slow:-5
 my~ soap:-5
 my~ spreadsheet:-4
 my~ superfat:1
 my~ table:-7
 my~ teacher:-6
 my~ third:-3
 my~ thumb:-2
 my~ tongue:-3
 my~ usual:-9
 my~ very:-8
 my~ whole:-4
 my~ wife:1
 my~ wifes:-2
 my~%:-2
 my~0:-7
 my~F:-3
 my~K:-7
 my~L:-10
 my~S:-4
 my~W:4
 my~l:-7
 my~t:4
 my~w:4
 m~A:-8
 m~F:-4
 n:-2
 nah:-3
 namaste:-4
 name:-10
 names:-5
 name~ ::-3
 nan:-10
 nans:-5
 natural:-6
 near:-5
 nearer:6
 nearer~0:5
 near~ enough:4
 near~ it:-1
 near~ the:-3
 near~%:-10
 near~0:2
 near~d:-1
 near~t:4
 need:-4
 needs:-6
 needs~ a:-6
 needs~ the:-6
 need~ ::-2
 need~ a:-5
 need~ it:5
 need~ more:-8
 need~ the:-6
 need~ to:1
 negative:2
 neighbor:-6
 neighbour:-3
 neither:3
 neither~ of:-1
 nerv:-8
 net:1
 never:-1
 never~ above:-6
 never~ added:3
 never~ again:-9
 never~ bother:-7
 never~ check:-6
 never~ did:-8
 never~ fail:-3
 never~ fails:-3
 never~ go:-10
 never~ got:8
 never~ happen:8
 never~ in:-4
 never~ let:-6
 never~ made:9
 never~ measur:-2
 never~ mind:-7
 never~ once:-2
 never~ set:6
 never~ the:-8
 never~ weigh:-1
 never~ went:-10
 new:-2
 news:-5
 newsletter:2
 newspaper:-8
 new~ bottle:-4
 new~ here:-3
 new~ one:5
 new~ scale:-5
 new~ to:-4
 new~ tub:-9
 new~>:-5
 new~w:-10
 next:-7
 next~ day:-1
 next~ door:1
 next~ month:-7
 next~ morn:1
 next~ one:-8
 next~ time:-9
 next~ to:5
 next~ year:-2
 nice:-2
 nicer:-7
 niece:3
 night:-4
 night~ and:-3
 night~ before:-6
 nil:3
 no:-1
 nobody:-2
 nobody~ answer:-2
 nobody~ had:4
 nobody~ has:1
 nobody~ will:-2
 none:5
 none~ at:-7
 none~ in:-1
 none~ the:-3
 nonna:-8
 noon:-7
 nor:-1
 normal:-8
 normal~ ?:-6
 normal~ one:-4
 north:-3
 nose:-10
 note:6
 notebook:-2
 notebook~ ::-5
 notebook~ it:-6
 notebook~ p:-3
 notebook~ says:2
 notebook~ the:-3
 notes:-3
 notes~ ::1
 notes~ app:-5
 notes~ from:-6
 notes~ page:-4
 noth:-5
 noth~ and:-3
 noth~ at:-5
 noth~ but:-4
 noth~ else:-2
 noth~ i:4
 noth~ in:-3
 noth~ only:-6
 notic:6
 notic~ the:2
 notic~ when:8
 not~ ?:-2
 not~ a:-7
 not~ at:-7
 not~ bad:-5
 not~ be:-8
 not~ certain:4
 not~ fluid:-8
 not~ for:-4
 not~ going:2
 not~ in:3
 not~ like:-7
 not~ more:-6
 not~ on:8
 not~ so:-9
 not~ sure:2
 not~ that:-7
 not~ the:-1
 not~ to:-8
 not~ too:-4
 not~ touch:-4
 not~ use:-3
 not~0:-6
 not~A:-3
 not~F:10
 not~b:6
 not~e:9
 nought:-1
 november:-3
 now:5
 nowaday:-7
 nowhere:-6
 now~ ::-4
 now~ ?:2
 now~ and:-5
 now~ im:-6
 now~ in:1
 now~ it:-3
 now~ its:5
 now~ my:3
 now~ on:3
 now~ so:-8
 now~ the:2
 now~F:2
 no~ ?:-2
 no~ ash:-4
 no~ difference:-7
 no~ gel:-5
 no~ good:-4
 no~ harm:-6
 no~ i:-6
 no~ idea:1
 no~ it:5
 no~ longer:4
 no~ more:-1
 no~ need:-5
 no~ one:1
 no~ other:-6
 no~ reason:-5
 no~ scale:1
 no~ smell:-2
 no~ sorry:2
 no~ superfat:-9
 no~ time:-5
 no~ wait:4
 no~ white:-3
 no~ zap:-6
 no~0:2
 no~F:8
 no~I:6
 no~S:-8
 no~W:3
 no~X:-10
 nr:-3
 nr~0:-3
 number:-4
 number~ ?:-4
 number~ and:3
 number~ are:1
 number~ hold:-2
 number~ i:-5
 number~ is:-4
 number~0:-10
 nurse:-4
 nuts:-1
 n~ it:-1
 n~=:-3
 n~F:3
 o'clock:-2
 o:-5
 oat:-8
 oat~X:-2
 obvious:-7
 obvs:-6
 odd:-4
 odds:-7
 of:2
 off:4
 offcut:-5
 offer:-6
 office:-6
 off~ ?:-1
 off~ and:3
 off~ at:-10
 off~ by:-3
 off~ for:5
 off~ i:-6
 off~ in:3
 off~ it:3
 off~ my:-3
 off~ the:3
 off~ what:9
 off~ with:-1
 off~0:-5
 off~l:1
 off~w:-8
 often:-6
 of~ a:1
 of~ about:-5
 of~ all:-6
 of~ ammonia:-7
 of~ an:-1
 of~ anyth:-9
 of~ batter:-8
 of~ clean:-6
 of~ cold:3
 of~ course:-2
 of~ doors:-8
 of~ dried:-1
 of~ each:8
 of~ everyth:4
 of~ eyes:-1
 of~ fat:2
 of~ fats:4
 of~ half:1
 of~ it:2
 of~ its:-1
 of~ last:5
 of~ me:-3
 of~ melt:4
 of~ mine:-6
 of~ my:-1
 of~ noth:-5
 of~ oil:1
 of~ oils:-2
 of~ old:4
 of~ one:2
 of~ our:-4
 of~ paper:-6
 of~ paste:-7
 of~ ready:2
 of~ roast:-1
 of~ rough:-2
 of~ soap:1
 of~ solution:-4
 of~ some:4
 of~ stirr:-8
 of~ sunday:-7
 of~ that:7
 of~ the:2
 of~ them:1
 of~ these:-6
 of~ this:1
 of~ those:-1
 of~ warm:-2
 of~ wet:-8
 of~ what:-3
 of~ which:-2
 of~ you:-5
 of~ your:-7
 of~%:2
 of~0:-7
 of~=:1
 of~>:-7
 of~A:2
 of~B:4
 of~C:6
 of~F:-3
 of~I:-4
 of~K:4
 of~L:8
 of~M:-4
 of~N:9
 of~T:-2
 of~U:1
 of~W:2
 of~X:-3
 of~b:1
 of~t:-1
 of~v:-9
 of~w:-10
 oh:1
 ohio:-6
 oh~ and:1
 oil:4
 oils:-1
 oils~ ::-1
 oils~ ?:-1
 oils~ altogether:-2
 oils~ and:-7
 oils~ are:-3
 oils~ at:-5
 oils~ because:-6
 oils~ but:-3
 oils~ come:-2
 oils~ g:-4
 oils~ i:-6
 oils~ in:-3
 oils~ or:-1
 oils~ to:-1
 oils~ were:2
 oils~ which:-6
 oils~=:-2
 oils~>:-1
 oils~T:-5
 oils~d:-1
 oily:8
 oil~ ?:-7
 oil~ and:-2
 oil~ at:4
 oil~ g:-4
 oil~ grams:-5
 oil~ in:-4
 oil~ on:-4
 oil~ to:1
 oil~ was:-2
 oil~ weight:-5
 oil~l:3
 ok:-1
 okay:-4
 okay~ ?:-4
 okay~ for:-5
 okay~ so:-3
 okay~ to:-4
 ok~ ?:-2
 ok~ at:1
 ok~ before:-3
 ok~ for:-5
 ok~ like:-4
 ok~ or:-2
 ok~ so:2
 ok~ to:-4
 ok~ with:-6
 old:1
 oldest:-7
 old~ and:2
 old~ blanket:-2
 old~ days:-4
 old~ notebook:-8
 old~ one:-6
 old~ pillowcase:-4
 old~ recipe:-6
 old~ scale:-1
 old~ sheet:1
 old~ soap:-6
 old~ tub:2
 old~A:4
 old~F:2
 olej:-3
 olej~F:-3
 oma:-4
 omg:-6
 on:-1
 once:-4
 once~ a:2
 once~ and:1
 once~ i:-1
 once~ it:2
 once~ its:-2
 once~ the:-4
 one:-4
 ones:-9
 ones~ are:-6
 one~ ::-5
 one~ ?:-2
 one~ after:-8
 one~ and:3
 one~ at:5
 one~ bar:-7
 one~ batch:-6
 one~ block:2
 one~ bottle:1
 one~ bowl:-8
 one~ can:-4
 one~ corner:-2
 one~ does:-5
 one~ for:-4
 one~ from:-9
 one~ go:4
 one~ had:-6
 one~ has:-2
 one~ i:1
 one~ in:1
 one~ into:-5
 one~ is:-1
 one~ jug:-2
 one~ last:-6
 one~ loaf:2
 one~ of:4
 one~ on:-7
 one~ pan:-6
 one~ pot:-6
 one~ since:6
 one~ sorry:-6
 one~ spoon:5
 one~ that:-1
 one~ thing:3
 one~ time:-4
 one~ to:-7
 one~ weigh:-7
 one~ went:-3
 one~ who:-6
 one~ with:-6
 one~ without:-5
 one~0:1
 one~F:-1
 one~t:-1
 one~w:-8
 onion:2
 only:3
 only~ a:1
 only~ about:7
 only~ after:-8
 only~ does:2
 only~ for:2
 only~ gave:6
 only~ got:-8
 only~ had:11
 only~ have:-2
 only~ if:-1
 only~ notic:7
 only~ one:-1
 only~ put:2
 only~ so:-3
 only~ the:1
 only~ then:-9
 only~ there:-2
 only~ used:-3
 only~ want:-9
 only~ when:2
 only~ whether:-6
 only~0:12
 only~=:-8
 only~F:-9
 only~l:-8
 only~w:4
 onto:-1
 onto~ the:2
 on~ ::-3
 on~ ?:-3
 on~ a:-8
 on~ and:-7
 on~ before:-4
 on~ day:5
 on~ friday:1
 on~ glov:-2
 on~ her:-1
 on~ here:-8
 on~ high:-5
 on~ i:4
 on~ it:-5
 on~ its:-2
 on~ low:-5
 on~ me:-6
 on~ monday:-9
 on~ offer:-6
 on~ one:-6
 on~ our:2
 on~ page:-3
 on~ paper:-9
 on~ saturday:-2
 on~ slow:-2
 on~ sunday:-1
 on~ that:-3
 on~ the:1
 on~ them:-6
 on~ this:5
 on~ thursday:1
 on~ to:-4
 on~ top:1
 on~ tue:-2
 on~ tuesday:-4
 on~ we:-8
 on~ with:8
 on~ your:-4
 on~0:-8
 on~=:-3
 on~>:-7
 on~A:4
 on~F:6
 on~t:-3
 oops:5
 open:1
 opens:4
 open~ a:-9
 open~ all:5
 open~ it:-3
 open~ since:8
 open~ the:-3
 open~ window:-5
 open~0:1
 operator:-5
 operator~ ::-4
 opinion:-9
 opinion~ on:-5
 optional:3
 or:-3
 order:-7
 order~ of:-5
 ordinary:1
 original:-3
 or~ a:1
 or~ am:-7
 or~ did:-7
 or~ do:-5
 or~ does:-5
 or~ is:-7
 or~ it:-8
 or~ just:-4
 or~ less:-4
 or~ more:-7
 or~ nah:-3
 or~ no:-5
 or~ not:-2
 or~ should:-4
 or~ so:1
 or~ take:4
 or~ the:-3
 or~ thereabout:3
 or~ too:-3
 or~ was:1
 or~ will:-4
 or~0:2
 or~A:-4
 or~N:-6
 other:-3
 otherwise:-9
 otherwise~ it:-6
 other~ and:-1
 other~ half:1
 other~ way:-5
 other~0:3
 other~W:-6
 other~l:-4
 other~w:1
 ought:-7
 ought~ to:-7
 ounc:5
 ounce:-4
 ounc~ are:-6
 ounc~ by:-5
 ounc~ for:5
 ours:-9
 ours~ is:-7
 our~ club:1
 our~ course:-2
 our~ fami:-2
 our~ group:-10
 our~ own:-1
 our~ school:-6
 our~ teacher:-6
 our~ town:-1
 our~ village:4
 out:2
 outdoor:-6
 outside:-8
 outside~ and:-1
 outside~ on:-6
 out~ ::-8
 out~ ?:1
 out~ a:-1
 out~ after:1
 out~ again:5
 out~ and:4
 out~ at:4
 out~ by:4
 out~ for:3
 out~ from:-3
 out~ i:-7
 out~ in:-2
 out~ is:-9
 out~ like:-7
 out~ on:1
 out~ right:-4
 out~ so:1
 out~ the:-3
 out~ to:10
 out~ what:1
 out~ with:3
 out~0:3
 out~=:-2
 out~>:-10
 out~A:-3
 out~N:2
 oval:-5
 oven:-8
 oven~ at:-4
 over:1
 overdo:-5
 overfat:2
 overheat:-6
 overnight~ at:-4
 over~ ?:-6
 over~ a:1
 over~ and:3
 over~ before:-5
 over~ for:5
 over~ from:3
 over~ half:-6
 over~ in:7
 over~ it:4
 over~ that:2
 over~ the:-4
 over~ this:2
 over~%:-9
 over~d:-3
 over~t:-6
 own:2
 own~ ::-4
 own~ a:-4
 own~ hives:-1
 own~ line:-3
 own~ notes:-5
 own~0:-5
 own~F:3
 oyl:-4
 oyl~=:-6
 oz:3
 oz~ g:-3
 p:-6
 pack:1
 packet:5
 packet~ of:-2
 packs~ of:-2
 paddle:-5
 page:-1
 page~ ::-6
 page~ for:-5
 page~ is:-4
 page~ sorry:-4
 page~0:-1
 paid:1
 paid~ for:6
 paid~0:-8
 pail:-9
 paint:7
 pair:2
 pairs:-7
 pair~ of:-1
 pal:-6
 pale:-11
 pan:3
 panic:-9
 panick:2
 pantry:-6
 pan~ and:1
 paper~ and:-5
 paper~ cup:5
 paper~0:-5
 paper~t:-4
 parcel:4
 parent:-3
 parish:-7
 participant:2
 partner:-2
 parts:-2
 parts~t:-3
 part~ ?:2
 part~ of:2
 part~0:-9
 pass:-10
 passt:-5
 passt~ das:-5
 pass~ the:-4
 past:2
 paste:-9
 paste~ ::2
 paste~ for:-1
 paste~ in:-6
 paste~ is:-5
 paste~ to:-5
 paste~ was:-1
 paste~ went:-4
 paste~ with:-3
 pastry:4
 past~ from:-5
 past~ its:-5
 past~ like:-7
 past~0:-2
 patch:-9
 patience:-6
 patient:-8
 pcs:-6
 pct:-6
 pdf:-8
 peak:-6
 pearl:1
 pellet:2
 pencil:-3
 pencill:8
 pencil~ and:4
 people:-11
 people~ ask:-6
 people~ in:-2
 people~ who:-8
 people~0:-1
 per:-3
 percent:4
 percentag:-2
 perfect:-9
 perhap:8
 perhap~0:5
 period:-5
 person:-8
 per~ bar:-4
 per~ batch:1
 per~ kilo:-6
 petra:4
 ph:-8
 pharmacist:1
 pharmacy:-5
 phase:-6
 phase~ a:-3
 phase~ b:-3
 phase~ c:-2
 phenolphthalein:7
 phone:1
 phone~ and:7
 phone~ is:-6
 phone~ rang:8
 phone~ read:-8
 photo~ of:-1
 ph~ strip:-7
 pick:-2
 picture:-7
 piec:-6
 piece~ for:-7
 piece~ of:7
 piec~ of:-2
 piec~0:-4
 pig:-6
 pilar:-1
 pillowcase:-5
 pinch~ of:-5
 pink:3
 pitcher:2
 place:4
 place~ of:4
 plain:-3
 plain~ white:-1
 plain~F:-4
 plain~W:5
 plan:-2
 plann:-1
 plann~ to:1
 plan~ for:2
 plastic:1
 plastic~ cup:3
 plastic~ jug:4
 plate:3
 play:-4
 pleas:-3
 please:5
 please~ ?:1
 please~ be:-6
 please~ check:-3
 please~ confirm:-7
 please~ dont:-9
 please~ excuse:-6
 please~ look:-9
 please~ my:6
 please~ tell:1
 please~ verify:-7
 plenty:-6
 plenty~ for:-5
 plenty~ of:-4
 pls:1
 pls~ check:-3
 plumber:-4
 plus:2
 plus~ a:3
 plus~ an:3
 plus~ another:4
 plus~ the:5
 plus~0:-5
 plus~<:-7
 plus~=:-4
 plus~w:-7
 plz:-4
 pocket:1
 point:-2
 poland:-1
 polish:-1
 polypropylene:-5
 poor:-9
 popcorn:6
 pops:-4
 porch:-4
 porridge:2
 portion:-1
 portugal:1
 possible:-6
 post:-4
 postage:-1
 postal:1
 postal~ scale:1
 postman:2
 posts:-6
 post~ this:-6
 post~t:-2
 pot:1
 potato:-8
 potato~ stage:-1
 potato~ then:-2
 pots:-2
 pot~ ::-5
 pot~ and:1
 pot~ are:-2
 pot~ at:-4
 pot~ for:-8
 pot~ holds:2
 pot~ i:-5
 pot~ is:-4
 pot~ of:-2
 pot~ off:-7
 pot~ oils:-8
 pot~ on:-1
 pot~ the:-5
 pot~ was:3
 pot~ went:-4
 pot~ with:1
 pot~=:-3
 pound:-1
 pour:6
 pours:-7
 pour~ ::-4
 pour~ ?:-3
 pour~ and:1
 pour~ at:-8
 pour~ cover:-1
 pour~ in:4
 pour~ into:-5
 pour~ off:2
 pour~ on:2
 pour~ out:8
 pour~ the:-7
 pour~0:4
 pour~=:3
 pour~>:-9
 pour~A:-4
 pour~F:-1
 pour~t:-3
 pour~w:-11
 powder:5
 powder~0:6
 power:-2
 power~ cut:5
 pp:-6
 ppl:-8
 practical:-7
 prefer:5
 premix:-8
 prep:-4
 press:-4
 press~ in:-7
 press~ into:-2
 press~ it:-3
 press~0:-9
 pretty:-4
 pretty~ but:-5
 previou:1
 pric:-5
 price:-7
 print:4
 printout:-6
 print~0:-8
 prob:3
 probab:2
 problem:-2
 problem~ ?:3
 proces:-1
 proces~ ::-2
 proces~ crock:-3
 proces~ in:-2
 proces~ slow:-2
 professor:3
 project:-6
 promis:-2
 promise:1
 proper:-6
 proper~ ::-4
 proportion:5
 proud:-6
 ps:5
 pub:-5
 puck:-2
 pucks:-3
 puck~ dual:-6
 pudd:-6
 puddle:5
 pull:5
 pump:-1
 pure~ and:-8
 pure~F:-4
 purity:5
 push:-7
 put:2
 puts:-8
 puts~ everyth:-3
 put~ a:3
 put~ in:5
 put~ it:-2
 put~ on:-1
 put~ the:2
 put~ them:-4
 put~ together:-7
 put~0:-1
 put~<:-10
 put~=:-7
 put~>:1
 put~F:3
 put~w:-2
 q:-10
 qty:-4
 qty~ g:-1
 quantiti:6
 quantity:-4
 quantity~ ?:-4
 quantity~ of:-3
 quarter:9
 quarter~ of:7
 question:-4
 question~ ::-5
 question~ about:-3
 question~ from:-4
 question~ is:-5
 quick:-6
 quicker:-3
 quicker~ than:-4
 quick~ one:-5
 quite:1
 quot:-4
 q~ ::-2
 r:-1
 rack:-6
 rack~ and:-1
 radiator:-3
 radio:-8
 rain:-2
 rainy:-6
 rainy~ sunday:-3
 rais:-7
 ran:4
 rancid:1
 rancid~ so:8
 rang:4
 rang~ the:-9
 ran~ dry:5
 ran~ out:1
 ran~ short:3
 ran~ the:-7
 rate:-5
 rather:5
 rather~ have:-1
 rather~ than:5
 raw:4
 re:-4
 reach:-6
 reach~ the:5
 reach~d:-6
 reader:-1
 reads:3
 reads~ in:-6
 ready:1
 ready~ dissolv:3
 ready~ for:-6
 ready~ in:-5
 ready~ mixed:1
 ready~ to:-5
 read~ it:-4
 read~ that:-4
 read~ the:-3
 read~ this:-4
 read~>:4
 read~F:4
 read~b:-1
 real:1
 realis:5
 reality:3
 real~ a:5
 real~ have:-5
 real~ weigh:-8
 real~A:-2
 real~N:5
 reason:-1
 rebatch:5
 recall:6
 receipt:7
 recette:-3
 recheck:2
 recip:-7
 recipe:-3
 recipe~ ::-2
 recipe~ ?:-2
 recipe~ and:-4
 recipe~ card:-4
 recipe~ for:2
 recipe~ from:-6
 recipe~ i:-5
 recipe~ in:3
 recipe~ is:-4
 recipe~ of:-5
 recipe~ on:-5
 recipe~ was:1
 reckon:5
 reckon~ with:2
 record:-1
 record~0:-7
 red:2
 refill:1
 refin:2
 regard:-4
 remain:-7
 remainder:6
 remain~0:2
 remark:-6
 remark~ ::-2
 remember:3
 remember~ it:-6
 remember~ the:1
 render:-9
 render~ and:1
 render~ it:1
 render~ the:-6
 render~ twice:-5
 render~=:-4
 repeat:-5
 replac:6
 replace:-5
 replace~ it:3
 replac~ by:6
 replac~ the:-1
 reply:-5
 reply~ to:-5
 report:-4
 rescu:1
 rescue:6
 rest:2
 rest~ is:-1
 rest~ of:-2
 rest~ was:1
 rest~ went:-1
 rest~F:-3
 rest~t:-2
 result:2
 retir:-7
 rev:-7
 rev~0:-7
 re~ ::-3
 ribbon:-4
 rice:-3
 rich:-10
 rid:-1
 rid~ of:-1
 right:-2
 right~ ?:-2
 right~ amount:-5
 right~ and:-4
 right~ at:2
 right~ but:7
 right~ for:-7
 right~ now:-5
 right~ on:-4
 right~ or:-3
 right~ so:-4
 right~ the:-2
 right~ to:-3
 right~ with:-8
 rim:-2
 ring:-6
 ring~t:-1
 rins:1
 rinse:-5
 rinse~ the:-2
 rises:-4
 roast:-3
 rock:-6
 roll:-6
 roof:1
 room:-3
 room~ for:2
 room~ temp:-4
 room~ temperature:-2
 room~0:-5
 rough:2
 rough~d:-1
 rough~w:2
 round:1
 round~ and:-3
 round~ it:-1
 round~ the:3
 round~ to:3
 row:2
 row~0:6
 rspo:-7
 rubb:-1
 rugby:-3
 rugby~ club:-3
 ruin:-4
 rule:-10
 rules:2
 run:-2
 runn:-8
 runny:7
 runs:-1
 run~ it:-8
 run~ out:-8
 run~ the:-3
 rush:-2
 rustic:-7
 ruth:2
 s0ap:-5
 s:-7
 sack:-3
 safety:-3
 safe~ ?:-5
 safe~ for:-4
 safe~ side:3
 safe~ to:-3
 said~ a:3
 said~ it:-2
 said~ my:6
 said~ no:-5
 said~ so:-8
 said~ that:-7
 said~ the:-2
 said~ yes:-8
 said~0:1
 said~>:-4
 said~b:5
 salad:-6
 sale:-7
 salt:4
 same~ amount:8
 same~ as:-7
 same~ bar:-4
 same~ for:-4
 same~ number:-7
 same~ oils:-4
 same~ pot:3
 same~ recipe:6
 same~ thing:-4
 same~ weight:8
 same~b:7
 sample:-7
 sandpaper:-5
 sane:-4
 sane~ ?:-2
 sang:-9
 sanity:-5
 sanity~ check:-5
 saponification:3
 sat:-1
 saturday:-2
 saturday~ ?:-1
 saturday~ market:-2
 sat~ on:-8
 sat~t:-2
 saucer:-4
 save:1
 saves:-5
 savon:-3
 saw:8
 saw~ it:4
 saw~ the:5
 say:4
 says:4
 says~ ::-7
 says~ and:1
 says~ but:-5
 says~ he:4
 says~ it:-4
 says~ its:-8
 says~ min:9
 says~ my:-9
 says~ no:-5
 says~ that:2
 says~ the:-2
 says~0:5
 says~=:-5
 says~>:3
 says~A:2
 says~F:-3
 says~b:-2
 says~e:6
 says~t:-1
 says~v:3
 says~w:1
 say~ a:7
 say~ how:1
 say~ it:-9
 say~ its:-4
 say~ so:1
 say~ that:2
 say~ thats:-5
 say~ the:-8
 say~%:3
 say~0:8
 say~F:-7
 say~b:8
 say~w:3
 scal:-3
 scale:3
 scale~ ::-3
 scale~ and:-8
 scale~ at:5
 scale~ before:-7
 scale~ but:-6
 scale~ died:4
 scale~ does:-9
 scale~ for:-9
 scale~ goes:3
 scale~ i:-10
 scale~ is:1
 scale~ it:-5
 scale~ jumps:2
 scale~ only:3
 scale~ reads:1
 scale~ said:-4
 scale~ says:2
 scale~ shows:1
 scale~ so:-9
 scale~ that:-1
 scale~ was:5
 scale~ with:-1
 scale~w:-5
 scal~ to:4
 scar:-4
 school:-3
 school~ fair:3
 school~ fete:4
 science:-7
 scoop:8
 scorch:-2
 scrap:7
 scrap~ it:-2
 scrap~ of:-1
 scrap~ the:4
 scratch:-11
 screen:2
 scribbl:-2
 scrubb:-6
 scrubb~ the:-6
 scum:2
 seal:-3
 season:5
 second~ batch:-8
 second~ day:-4
 second~ go:2
 second~ half:4
 second~ one:-5
 second~ opinion:-3
 second~ pair:-1
 second~ time:3
 second~ try:-2
 secret:-6
 see:2
 seed:-5
 seem:6
 seems:-8
 seen:-1
 see~ a:-6
 see~ here:1
 see~ how:-5
 see~ if:-7
 see~ it:-10
 see~ me:-3
 see~ that:5
 see~ the:-2
 see~ through:-6
 see~ what:2
 seiz:-1
 self~ ::1
 sell:-8
 seller:4
 sells:2
 sells~ at:-3
 sell~ at:-1
 send:1
 sensible:-4
 sensible~ ?:-4
 sensitive:3
 sent:4
 sent~ me:2
 separat:-6
 separate:-9
 september:-6
 serv:3
 serv~ ::-3
 set:2
 sets:-11
 sets~ in:-4
 sett:-2
 settl:-1
 settle:4
 settl~ on:-5
 set~ aside:-5
 set~ in:-8
 set~ it:7
 set~ on:-6
 set~ the:-4
 set~ to:3
 set~ up:-4
 sf:5
 shade:-6
 shall:1
 shampoo:1
 shampoo~ bar:-5
 shar:1
 share:4
 sharp:-2
 shav:-4
 shave:-6
 shave~ puck:-3
 shave~ soap:-3
 shav~ puck:-4
 shav~ soap:-1
 she:-5
 shed:-1
 sheep:7
 sheet:2
 sheet~ ::-3
 sheet~ and:4
 sheet~ for:2
 sheet~ says:4
 sheet~ sorry:-4
 sheet~0:-8
 shelf:-2
 shelf~ for:-2
 shes:-7
 shes~0:-4
 she~ also:4
 she~ alway:-2
 she~ asked:-4
 she~ did:-5
 she~ does:-1
 she~ gets:-9
 she~ got:-6
 she~ had:-9
 she~ has:-5
 she~ is:-5
 she~ made:-3
 she~ never:1
 she~ right:-3
 she~ said:-1
 she~ says:-5
 she~ stirr:-2
 she~ swear:-1
 she~ told:-1
 she~ used:-5
 she~ wants:4
 she~ was:1
 she~ who:-1
 she~ would:-2
 shift:-2
 shine:-8
 shiny:-7
 shoe:-4
 shoebox:-3
 shoebox~ lined:-1
 shoe~ box:-4
 shook:2
 shop:2
 shopp:-8
 shopp~ list:-5
 shops:-3
 shop~ and:5
 shop~ had:4
 shop~ soap:3
 short:3
 shortage:-4
 short~ ::3
 short~ ?:-7
 short~ burst:-1
 short~ of:-6
 short~ on:-1
 short~ so:7
 short~ the:2
 shot:2
 should:-1
 should~ be:-1
 should~ come:-1
 should~ have:-1
 should~ i:-6
 should~ read:9
 should~ say:3
 shout:-8
 show:-4
 shower:-7
 shows~ whole:-7
 shows~0:-2
 shows~w:3
 show~b:1
 shrink:-7
 shut:2
 shut~ in:4
 shy:2
 sides:-5
 sideway:-6
 side~ of:4
 siev:-1
 sieve:-1
 siev~ it:1
 sign:-4
 silicone:-7
 silicone~ loaf:-3
 silicone~ mould:-4
 sill:-7
 silly:8
 simmer:2
 simp:-2
 simple:-5
 since:3
 since~ about:-3
 since~ i:-1
 since~ it:5
 since~ last:1
 since~ my:5
 since~ spr:2
 since~ the:3
 since~ then:4
 since~0:-8
 since~F:3
 since~t:1
 single:1
 sink:-1
 sink~ and:1
 sink~ of:-5
 sink~ with:-3
 sir:-1
 sis:-3
 sister':2
 sister:-9
 sister~ in:-5
 sister~ says:-1
 sits~ in:-8
 sitt:2
 sitt~ in:-3
 sitt~ on:3
 size:2
 size~ of:-3
 skin:-3
 skin~ and:-3
 skin~ is:6
 skin~ off:-3
 skin~ so:2
 skip:4
 skipp:10
 skipp~ it:6
 skipp~ the:9
 skip~ the:1
 skull:-7
 slab:-7
 sleep:-6
 sleev:-5
 slept:-4
 slic:-6
 slice:-5
 slid:-3
 slimy:-9
 slip:2
 slipp:9
 slipp~ and:8
 sliver:-8
 slosh:-2
 slow:-4
 slow~ cooker:-3
 slow~ into:-4
 slush:-7
 small:-4
 smallest:-2
 small~ print:5
 smell:-5
 smell~ a:-6
 smell~ faint:-5
 smell~ is:-5
 smell~ it:2
 smell~ like:-2
 smell~ of:-5
 smell~ the:-6
 smelt:4
 smelt~ like:-5
 smoke:-7
 smooth:-11
 sneeze:-2
 sniff:3
 snow~ white:-4
 so:2
 soak:7
 soap':2
 soap:-7
 soaper:-6
 soaps:-10
 soap~ ::-4
 soap~ ?:-1
 soap~ again:-4
 soap~ and:-4
 soap~ at:-5
 soap~ attempt:-2
 soap~ day:-2
 soap~ diary:-5
 soap~ ever:-2
 soap~ for:-4
 soap~ from:-5
 soap~ i:-2
 soap~ in:-5
 soap~ is:-7
 soap~ it:-6
 soap~ like:-4
 soap~ my:-6
 soap~ of:-4
 soap~ on:-6
 soap~ paste:-1
 soap~ pot:-6
 soap~ since:-4
 soap~ smell:-5
 soap~ so:-1
 soap~ the:-3
 soap~ to:-1
 soap~ w:-5
 soap~ was:-7
 soap~ with:-5
 soap~0:-5
 soap~A:-5
 soft:-7
 soften:-7
 softer:3
 soft~ after:-2
 soft~ and:-5
 soft~ as:-6
 soft~ at:-3
 soft~ for:-3
 soft~ in:-5
 soft~ on:-2
 soft~ so:3
 soft~ soap:-4
 sold:-6
 sold~ at:-3
 sold~ out:-4
 sold~0:-7
 soleseife:-5
 solid:-2
 solution~ and:-2
 solution~ in:-4
 solution~ plus:-6
 some:3
 somebody:-2
 somebody~ asked:-6
 somebody~ check:-3
 somebody~ else:-3
 somebody~ look:-6
 somebody~ post:-1
 somebody~ run:-5
 somebody~ tell:2
 somebody~ to:-4
 somebody~ with:-3
 someone:-2
 someone~ at:-8
 someone~ in:-7
 someone~ look:-5
 someone~ tell:-6
 someone~ to:-6
 someone~ with:-5
 someth:1
 someth~ else:-1
 someth~ like:2
 some~ of:4
 some~ people:-9
 some~0:-6
 some~F:-1
 some~N:4
 some~X:-2
 soon:-6
 sooner:-6
 sooner~ than:-6
 sorry~ about:-5
 sorry~ for:-3
 sorry~ i:-10
 sorry~ if:1
 sorry~ it:-6
 sorry~ my:-4
 sorry~ the:4
 sort:3
 sort~ of:-5
 sound:-7
 sound~ ?:-5
 sound~ like:-9
 sound~ right:3
 soup:-3
 sour:-1
 source:-1
 source~ ::1
 south:-2
 so~ ::-5
 so~ ?:3
 so~ a:1
 so~ all:2
 so~ another:8
 so~ bear:-7
 so~ before:-5
 so~ call:6
 so~ did:-4
 so~ do:-2
 so~ does:-6
 so~ dont:2
 so~ excuse:-5
 so~ far:-5
 so~ fast:-3
 so~ for:-7
 so~ forgive:-4
 so~ good:3
 so~ half:2
 so~ here:-8
 so~ hot:-3
 so~ i'd:-9
 so~ i:-5
 so~ if:-5
 so~ in:5
 so~ is:1
 so~ it:2
 so~ its:6
 so~ just:4
 so~ keep:-7
 so~ last:-8
 so~ little:-8
 so~ maybe:2
 so~ much:-4
 so~ my:4
 so~ no:4
 so~ noth:-1
 so~ now:-8
 so~ of:6
 so~ on:-3
 so~ please:3
 so~ sorry:-8
 so~ take:1
 so~ that:-6
 so~ thats:6
 so~ ther:3
 so~ there:-4
 so~ this:-4
 so~ those:2
 so~ um:2
 so~ we:-3
 so~ what:3
 so~ whats:4
 so~ who:3
 so~ you:-1
 so~%:-7
 so~0:8
 so~=:2
 so~>:-1
 so~F:-1
 so~N:11
 so~b:-2
 so~e:-11
 so~l:-7
 so~t:-3
 so~w:-2
 spa:4
 space:-5
 spain:-6
 spare:-5
 spatula:-5
 speed:-7
 spell:-8
 spend:-5
 spent:1
 spill:-5
 spill~ on:1
 spilt:1
 splash:4
 splash~ of:3
 split:2
 split~ it:2
 split~ the:1
 spoon:-1
 spoonful:5
 spoonful~ in:1
 spoonful~ of:1
 spoon~ and:1
 spoon~ at:-6
 spoon~ by:-7
 spoon~ for:2
 spoon~ in:-3
 spoon~ into:-4
 spoon~ it:-3
 spoon~ of:3
 spoon~ slipp:5
 spot:-8
 spots:-2
 spots~ after:-2
 spott:-2
 spot~ on:-5
 spray:-9
 spreadsheet:-5
 sprinkl:-7
 sprinkle:-2
 sprinkle~ the:-4
 sprinkl~ over:-2
 sprinkl~=:-1
 squeez:6
 sry:2
 stable:-6
 stack:-2
 stag:-9
 stage:-2
 stage~ at:-2
 stain:-8
 stainles:-5
 stamp:-12
 stamp~ and:-4
 stand:-5
 standard:-7
 stand~ ::-2
 stand~ at:-5
 stand~ by:-6
 stand~ for:-2
 stand~ in:-1
 stand~ it:4
 stand~ on:2
 stand~ the:-4
 stand~ there:-2
 stand~ up:2
 stank:-5
 start~ ::-5
 start~ ?:-3
 start~ and:-6
 start~ at:-2
 start~ out:-8
 start~ the:-3
 start~ to:-7
 start~ with:4
 start~t:-5
 stat:5
 static:1
 stay:3
 stays:-5
 stays~ as:2
 stays~ in:-6
 stay~ a:-1
 stay~ at:2
 stay~ clear:3
 stay~ cloudy:-2
 stay~ in:8
 stay~ on:-1
 stay~ soft:-5
 steam:-12
 steel:-1
 steel~ bowl:-9
 steel~ jug:-7
 steel~ pot:-5
 step:-6
 steps:1
 steps~ of:4
 stick:1
 stickblend:-8
 sticker:-5
 sticky:1
 stick~ blend:-3
 stick~ blender:-9
 stiff:3
 still:1
 still~ a:-6
 still~ about:1
 still~ cloudy:2
 still~ fine:-5
 still~ good:4
 still~ got:-7
 still~ had:4
 still~ have:-2
 still~ in:3
 still~ like:-8
 still~ ok:-7
 still~ on:5
 still~ right:-5
 still~ sitt:7
 still~ smell:-6
 still~ soap:-7
 still~ soft:-2
 still~ stand:3
 sting:-7
 stink:-8
 stir:-4
 stirr:-1
 stirr~ and:-4
 stirr~ every:-6
 stirr~ for:-3
 stirr~ in:4
 stirr~ into:5
 stirr~ it:-7
 stirr~ one:-6
 stirr~ the:-1
 stirr~ with:-5
 stirr~t:-2
 stirs:-5
 stir~ by:-4
 stir~ every:-1
 stir~ for:-2
 stir~ it:2
 stir~ the:-11
 stir~ till:-2
 stir~ until:-4
 stir~ with:-4
 stir~0:-6
 stir~=:-2
 stir~t:-3
 stock:1
 stone:-1
 stood~ at:2
 stood~ in:2
 stop:-7
 stopp:7
 stopp~ at:8
 stops:-4
 stor:-3
 store~ the:-7
 story:1
 story~ time:-7
 stove:4
 straight:-4
 straight~ away:-4
 straight~ from:-6
 straight~ into:-8
 straight~ out:5
 straight~ to:2
 strain:6
 strainer:-6
 strain~ it:-5
 strain~ the:-1
 strain~ through:-9
 strain~ twice:1
 strange:-5
 streak:-6
 stream:-4
 street:-4
 strength:3
 stretch:4
 strike:3
 strip:-8
 stripp:-4
 stripp~ the:-6
 strip~ says:-6
 strip~0:-3
 strong:3
 stronger:1
 strong~ ?:-8
 strong~ for:-5
 struck:4
 struck~ out:1
 stuck:3
 stuck~ in:5
 stuck~ to:3
 stuff:-2
 stupid:-7
 style:-4
 subject:-3
 subject~ ::-3
 such:1
 suds:-6
 suggest:-1
 suit:-6
 suits:-4
 sum:-1
 summer:2
 summer~ and:5
 sums:-2
 sun:1
 sunday:1
 sunday~ ::-5
 sunday~ in:-6
 sunday~ roast:2
 superfat:5
 superfat~ ::4
 superfat~ ?:-3
 superfat~ and:-6
 superfat~ at:1
 superfat~ because:-2
 superfat~ did:-11
 superfat~ do:-4
 superfat~ does:-5
 superfat~ for:1
 superfat~ i:-1
 superfat~ in:4
 superfat~ is:-12
 superfat~ of:-7
 superfat~ on:-10
 superfat~ should:-10
 superfat~ with:1
 superfat~%:3
 superfat~0:3
 supermarket:-5
 supplier:3
 sure:5
 sure~ about:-10
 sure~ of:2
 surface:-5
 survive:-6
 suspect:5
 swap:-6
 swapp:7
 swapp~ for:4
 swapp~ the:1
 swapp~F:5
 swaps:-10
 swap~ the:-1
 swear:1
 swear~ by:-2
 swear~ it:-7
 swear~ to:7
 sweat:-6
 sweat~ in:-2
 sweet:-4
 swept:4
 swirl:-7
 swirl~ with:-5
 switch:-2
 switch~ itself:-1
 switch~ off:-4
 switch~ to:-6
 swore:-3
 t:-6
 ta:-5
 tabl:-6
 table:2
 tablespoon:7
 table~ is:-8
 table~0:-7
 tabs:-7
 taffy:-10
 tag:-3
 tak:7
 take:3
 taken:3
 takes:-14
 takes~ about:-1
 takes~ its:-5
 takes~ me:-4
 takes~ the:-3
 takes~=:-1
 takes~t:-2
 takes~w:-3
 take~ a:-3
 take~ it:-7
 take~ my:1
 take~ off:-3
 take~ that:4
 take~ the:-5
 take~ your:4
 take~0:-9
 take~=:-4
 take~w:-8
 talk:-7
 tall:-7
 tan:-6
 tape:-8
 tared:6
 target:1
 tast:-8
 taste:4
 taught:-6
 taught~ me:-4
 teach:-1
 teacher:-4
 team:-3
 teaspoon:1
 technical:9
 technical~ grade:7
 telephone:-4
 tell:-4
 tells~ me:2
 tell~ me:-2
 tell~ my:-7
 tell~ them:-7
 tell~ us:-8
 tell~ whether:2
 tell~ you:-2
 temp:-5
 temper:1
 temperature:-9
 temps:-5
 temp~d:-2
 tenth:4
 tenth~ of:3
 term:-5
 test:-4
 test~ ::-4
 test~ a:-4
 test~ at:-9
 test~ batch:-5
 test~ it:3
 test~ ok:-2
 test~ with:-5
 text:-3
 than:-1
 thank:-6
 thank~ for:-6
 thank~ to:-2
 thank~ you:-5
 than~ a:-1
 than~ i:3
 than~ it:4
 than~ my:4
 than~ that:-3
 than~ the:-4
 than~ usual:3
 than~d:-6
 that:4
 thats:-1
 thats~ a:-6
 thats~ all:-5
 thats~ fine:3
 thats~ how:4
 thats~ in:1
 thats~ it:-6
 thats~ my:-5
 thats~ normal:-2
 thats~ the:-6
 thats~ what:6
 thats~ why:-6
 thats~>:-1
 thats~l:-10
 that~ ?:4
 that~ a:-8
 that~ about:-6
 that~ add:-3
 that~ and:4
 that~ away:7
 that~ be:3
 that~ bit:3
 that~ came:-1
 that~ day:8
 that~ enough:-3
 that~ from:-7
 that~ goes:-1
 that~ has:-4
 that~ hold:-3
 that~ i'd:-3
 that~ i:3
 that~ im:1
 that~ in:-3
 that~ into:-5
 that~ is:2
 that~ isnt:2
 that~ it:-9
 that~ its:-4
 that~ leave:-6
 that~ look:-5
 that~ makes:-6
 that~ matter:5
 that~ mine:6
 that~ much:-1
 that~ my:2
 that~ never:8
 that~ nobody:1
 that~ noth:-4
 that~ off:8
 that~ okay:-1
 that~ on:3
 that~ one:-6
 that~ out:5
 that~ real:-9
 that~ right:-2
 that~ she:1
 that~ so:-8
 that~ solution:-9
 that~ sound:-1
 that~ still:-5
 that~ the:2
 that~ ther:-7
 that~ too:-7
 that~ was:-7
 that~ we:-8
 that~ went:-4
 that~ what:-9
 that~ you:-4
 that~0:8
 that~=:-7
 that~A:-4
 that~F:1
 that~L:4
 that~b:5
 thaw:-1
 the:1
 their:-2
 their~ own:-1
 them:-2
 them~ ::-3
 them~ and:-3
 them~ for:-1
 them~ from:-3
 them~ is:-2
 them~ out:-5
 them~ to:-7
 them~ together:3
 them~0:-5
 them~t:-5
 then:-2
 then~ ::-2
 then~ add:-4
 then~ and:-7
 then~ another:4
 then~ at:-4
 then~ i:1
 then~ in:-6
 then~ into:-4
 then~ it:5
 then~ its:-6
 then~ like:-3
 then~ my:3
 then~ off:-1
 then~ pour:-7
 then~ stir:-2
 then~ stirr:-2
 then~ the:-8
 then~ tipp:-6
 then~ weigh:-8
 then~ when:-7
 then~0:3
 then~<:3
 then~=:-3
 then~>:-1
 then~A:-6
 then~F:-4
 then~S:-3
 then~e:-7
 then~t:-5
 then~v:7
 then~w:-2
 ther:2
 there:4
 thereabout:3
 therefore:4
 there~ ?:-7
 there~ are:-1
 there~ enough:-4
 there~ may:3
 there~ or:-5
 there~ so:-6
 there~ too:3
 there~ was:-2
 there~ were:2
 there~ with:-3
 thermometer:-9
 ther~ a:3
 ther~ also:2
 ther~ no:-7
 ther~0:-2
 ther~=:1
 ther~F:2
 ther~w:-11
 these:-6
 these~ are:-5
 these~ days:5
 these~ fats:-3
 these~ oils:-4
 they:-4
 theyd:5
 theyll:-3
 theyre:-10
 they~ are:6
 they~ did:-3
 they~ do:-6
 they~ say:2
 they~ went:2
 they~ were:-7
 the~ above:3
 the~ allotment:-4
 the~ amount:-3
 the~ answer:-3
 the~ app:2
 the~ attic:-3
 the~ autumn:-8
 the~ baby:3
 the~ back:1
 the~ bag:4
 the~ balance:-5
 the~ balcony:2
 the~ bar:2
 the~ bars:-10
 the~ batch:-2
 the~ bath:-5
 the~ bathroom:2
 the~ batter:-8
 the~ battery:-1
 the~ beaker:6
 the~ beginn:-1
 the~ bell:-8
 the~ bench:-6
 the~ best:-5
 the~ bin:-2
 the~ birds:-3
 the~ bit:-2
 the~ blend:-7
 the~ blender:3
 the~ block:3
 the~ blog:-3
 the~ blue:1
 the~ board:3
 the~ book:-3
 the~ bottl:-6
 the~ bottle:5
 the~ bottom:-1
 the~ bowl:4
 the~ box:1
 the~ boys:4
 the~ brim:-3
 the~ bubbl:-4
 the~ bucket:1
 the~ bus:-2
 the~ butcher:-1
 the~ camp:1
 the~ candle:-6
 the~ canister:6
 the~ car:-8
 the~ card:-7
 the~ caretaker:-6
 the~ cellar:-9
 the~ certifi:-7
 the~ certificate:4
 the~ cheap:-8
 the~ chemist:-2
 the~ children:2
 the~ choir:-3
 the~ church:-4
 the~ class:-7
 the~ clean:-3
 the~ clock:-4
 the~ clubs:-2
 the~ code:-4
 the~ cold:2
 the~ column:-2
 the~ comma:3
 the~ comment:-6
 the~ cooker:2
 the~ cool:-2
 the~ corner:-5
 the~ cost:-5
 the~ counter:4
 the~ county:-5
 the~ course:3
 the~ crock:-1
 the~ crockpot:-2
 the~ cubes:-5
 the~ cup:-3
 the~ cupboard:-2
 the~ cure:-9
 the~ date:-8
 the~ day:-1
 the~ decimal:-4
 the~ difference:1
 the~ discount:-3
 the~ dish:4
 the~ display:1
 the~ dog:2
 the~ door:-2
 the~ dot:-5
 the~ doubl:-6
 the~ double:-3
 the~ drain:3
 the~ drawer:1
 the~ drum:7
 the~ dry:3
 the~ edge:-4
 the~ edges:-1
 the~ empty:-7
 the~ end:3
 the~ ends:-7
 the~ even:-9
 the~ extra:-2
 the~ face:-8
 the~ fami:1
 the~ farm:-2
 the~ fat:-5
 the~ fats:1
 the~ feed:3
 the~ fence:-5
 the~ figur:-5
 the~ figure:5
 the~ finish:-4
 the~ first:-2
 the~ flak:5
 the~ flat:-3
 the~ floor:6
 the~ foam:-8
 the~ freezer:-12
 the~ fridge:-1
 the~ front:1
 the~ fryer:1
 the~ full:3
 the~ fumes:-6
 the~ funnel:3
 the~ garage:-9
 the~ garden:-3
 the~ gas:-5
 the~ gel:2
 the~ glass:1
 the~ goat:5
 the~ goats:4
 the~ goggl:-3
 the~ good:-4
 the~ gram:-7
 the~ greasy:-8
 the~ group:-1
 the~ half:5
 the~ hall:-7
 the~ hand:-3
 the~ handout:2
 the~ hands:5
 the~ hard:-6
 the~ hardware:-2
 the~ heat:-8
 the~ hens:-8
 the~ hob:-1
 the~ holiday:-2
 the~ hood:-7
 the~ hot:2
 the~ house:7
 the~ internet:-3
 the~ jar:1
 the~ jars:-5
 the~ jug:-2
 the~ kettle:6
 the~ kids:-3
 the~ kilo:6
 the~ kitchen:-3
 the~ label:3
 the~ lads:-2
 the~ lady:-4
 the~ last:3
 the~ lather:-1
 the~ laundry:-2
 the~ leaflet:1
 the~ letter:2
 the~ library:-6
 the~ lid:1
 the~ light:-5
 the~ line:5
 the~ liquid:6
 the~ list:10
 the~ litre:5
 the~ loaf:-4
 the~ log:-7
 the~ long:1
 the~ look:1
 the~ lot:2
 the~ lowest:-5
 the~ machine:-5
 the~ man:-5
 the~ margin:-1
 the~ mark:5
 the~ market:-5
 the~ mass:-4
 the~ measur:2
 the~ mechanic:3
 the~ melt:2
 the~ mess:-4
 the~ microwave:1
 the~ middle:-5
 the~ mill:-4
 the~ miss:4
 the~ mix:5
 the~ mold:1
 the~ month:-5
 the~ moon:-3
 the~ morn:-6
 the~ most:-9
 the~ mould:-3
 the~ name:-6
 the~ neighbour:-2
 the~ new:1
 the~ next:-4
 the~ night:-6
 the~ normal:-3
 the~ number:1
 the~ oil:3
 the~ oils:1
 the~ old:-1
 the~ one:1
 the~ ones:-3
 the~ only:-8
 the~ open:2
 the~ order:-4
 the~ original:3
 the~ other:2
 the~ oven:-8
 the~ packet:7
 the~ page:-4
 the~ pan:5
 the~ pantry:-8
 the~ paper:8
 the~ parish:-7
 the~ part:-5
 the~ paste:-3
 the~ patience:-4
 the~ phone:4
 the~ photo:4
 the~ picture:-4
 the~ place:8
 the~ plain:-5
 the~ plastic:3
 the~ plate:5
 the~ point:-2
 the~ porch:-4
 the~ post:1
 the~ postman:2
 the~ pot:1
 the~ potato:-7
 the~ pound:1
 the~ pour:-5
 the~ powder:4
 the~ power:-4
 the~ price:-7
 the~ printout:-6
 the~ question:-8
 the~ rack:-4
 the~ radiator:-3
 the~ radio:-6
 the~ rain:-3
 the~ ready:7
 the~ real:-8
 the~ reason:-5
 the~ recipe:2
 the~ record:1
 the~ remain:-3
 the~ render:-4
 the~ right:-7
 the~ rim:-1
 the~ roof:2
 the~ room:1
 the~ row:-6
 the~ rugby:-3
 the~ sack:-3
 the~ safe:3
 the~ salad:3
 the~ same:2
 the~ saturday:-2
 the~ scale:-3
 the~ school:1
 the~ scum:2
 the~ second:4
 the~ sf:-4
 the~ shed:1
 the~ sheet:7
 the~ shelf:-3
 the~ shop:3
 the~ shops:-8
 the~ shower:-7
 the~ side:6
 the~ sides:-4
 the~ sink:2
 the~ skin:-4
 the~ slip:-2
 the~ slow:-3
 the~ small:2
 the~ smell:1
 the~ soap':4
 the~ soap:-3
 the~ solution:-2
 the~ spatula:-1
 the~ spill:-6
 the~ spoon:-1
 the~ spr:-6
 the~ spreadsheet:-5
 the~ stall:2
 the~ start:2
 the~ steel:4
 the~ step:-2
 the~ stick:-9
 the~ stirr:-7
 the~ stove:5
 the~ suds:-4
 the~ sum:-2
 the~ summer:-1
 the~ sun:2
 the~ sunday:6
 the~ superfat:-3
 the~ supermarket:-3
 the~ surface:-5
 the~ swirl:-4
 the~ table:2
 the~ tap:-5
 the~ teacher:-2
 the~ temperature:-5
 the~ test:1
 the~ thermometer:-6
 the~ thing:-3
 the~ third:-2
 the~ thread:-8
 the~ thursday:-4
 the~ tiles:8
 the~ tin:4
 the~ tongue:-1
 the~ top:-3
 the~ total:-6
 the~ towel:-1
 the~ train:-6
 the~ tray:-1
 the~ trimming:1
 the~ truth:-5
 the~ tub:2
 the~ unrefin:-6
 the~ usual:5
 the~ varnish:-5
 the~ very:-2
 the~ village:-3
 the~ wall:-5
 the~ war:-7
 the~ wardrobe:-3
 the~ warm:1
 the~ wash:-4
 the~ way:4
 the~ weather:-7
 the~ weekend:-8
 the~ weigh:8
 the~ weight:4
 the~ white:2
 the~ whole:-1
 the~ window:-5
 the~ windowsill:3
 the~ winter:-5
 the~ wire:-3
 the~ wood:-3
 the~ wooden:-5
 the~ word:-5
 the~ workshop:-2
 the~ worktop:-1
 the~ wrong:5
 the~ yard:-4
 the~ year:-7
 the~<:-5
 the~=:-2
 the~A:2
 the~B:-10
 the~C:-10
 the~F:5
 the~I:2
 the~K:3
 the~L:-1
 the~M:3
 the~N:-1
 the~S:-3
 the~T:-7
 the~W:5
 the~X:-4
 the~b:5
 the~e:-1
 the~l:-3
 the~t:-2
 the~v:-7
 the~w:-7
 thick:-3
 thicken:-2
 thicker:-8
 thick~ as:2
 thick~ like:-6
 thick~ trace:-2
 thin:-4
 thing:-1
 thing~ ?:-7
 thing~ i:-8
 thing~ in:-6
 think~ ?:-7
 think~ about:1
 think~ i:10
 think~ it:2
 think~ my:2
 think~ of:-8
 think~ that:-8
 think~ the:4
 thinn:5
 thin~ stream:-4
 thin~ trace:-8
 third:2
 third~ attempt:-5
 third~ batch:-5
 third~ go:5
 third~ of:2
 third~ one:-3
 third~ time:-6
 this:2
 this~ ::3
 this~ ?:-6
 this~ a:-4
 this~ and:-8
 this~ at:2
 this~ be:-3
 this~ because:-8
 this~ before:-4
 this~ but:-6
 this~ for:6
 this~ from:2
 this~ house:3
 this~ i:-5
 this~ in:-2
 this~ is:-5
 this~ loaf:3
 this~ look:-3
 this~ morn:1
 this~ ok:-2
 this~ on:-6
 this~ one:5
 this~ ones:-6
 this~ or:-5
 this~ pot:2
 this~ real:-6
 this~ recipe:-7
 this~ right:-2
 this~ soap:-7
 this~ time:5
 this~ to:-4
 this~ was:-4
 this~ way:-4
 this~ week:-3
 this~ weekend:2
 this~ with:-7
 this~ year:6
 this~0:-8
 this~F:1
 tho:-7
 those:-1
 those~ are:2
 those~ days:-6
 those~ fats:-2
 those~ oils:-2
 those~ who:5
 those~0:1
 though:2
 thought:1
 thought~ ?:-4
 thought~ i'd:-7
 thought~ i:-2
 thought~ it:-4
 thought~ on:-5
 thought~ the:-2
 though~ ?:-5
 though~ i:3
 thread:-8
 thread~ and:-6
 threw:5
 threw~ in:7
 threw~ the:-4
 through:2
 through~ a:-2
 through~ an:-10
 through~ it:-3
 through~ the:4
 throw:-4
 thrown:5
 throw~ it:-1
 thru:1
 thumb:-3
 thursday:-5
 thx:-4
 tick:-1
 tight:-1
 til:-3
 tiles:7
 till~ it:3
 till~ its:-1
 till~ the:-1
 till~0:-5
 time:-4
 timer:-8
 times:2
 times~ i:4
 times~ in:-7
 times~ the:2
 times~0:9
 time~ ::-1
 time~ and:-3
 time~ because:2
 time~ in:5
 time~ is:-4
 time~ it:-9
 time~ lurker:-4
 time~ post:-3
 time~ so:3
 time~ the:2
 time~ to:-3
 time~ with:-7
 time~t:-4
 tin:1
 tins:-6
 tins~ of:-2
 tiny:-3
 tin~ and:-1
 tin~ is:-9
 tin~ of:-5
 tin~ was:-2
 tin~ with:-8
 tip:-1
 tipp:8
 tipp~ in:5
 tips:-5
 tip~ ::-7
 tired:-1
 title:-2
 title~ ::-4
 to:-1
 toast:3
 today:-4
 today~ ::4
 today~ ?:-5
 today~ and:-1
 toddler:4
 together:-1
 together~ ?:-3
 together~ in:-3
 together~ so:1
 together~ with:-6
 told:-5
 told~ her:-4
 told~ me:-3
 told~ us:-5
 told~F:-1
 tom:-3
 tomato:5
 tomorrow:-5
 tongue:-2
 tonight:6
 tonight~ ::-5
 tonight~ ?:-3
 too:3
 took:2
 took~ a:-4
 took~ ages:-3
 took~ forever:2
 took~ it:-3
 took~ me:-8
 took~ near:-1
 took~ off:2
 took~ the:3
 took~0:-2
 took~=:-11
 took~>:-4
 took~N:5
 took~l:2
 took~t:-9
 took~w:-6
 tools:-7
 too~ ?:-6
 too~ and:4
 too~ cold:-5
 too~ dry:-6
 too~ early:-8
 too~ fast:-1
 too~ hard:-2
 too~ harsh:-4
 too~ high:-5
 too~ hot:-7
 too~ late:-2
 too~ little:-1
 too~ low:5
 too~ many:4
 too~ much:-5
 too~ quick:4
 too~ sharp:-3
 too~ soft:-5
 too~ soon:-5
 too~ strong:-1
 top:1
 topp:9
 topp~ it:3
 topp~ the:6
 topp~ up:5
 top~ for:-4
 top~ is:-4
 top~ it:-1
 top~ of:3
 top~ shelf:-4
 top~ which:-5
 total:3
 total~ of:-7
 touch:-5
 touch~ it:-6
 touch~ the:-7
 towel:-5
 towel~ over:-4
 towel~ round:-6
 towel~t:-1
 town:1
 to~ a:2
 to~ add:-1
 to~ ask:-6
 to~ be:4
 to~ bed:-5
 to~ buy:-8
 to~ check:-6
 to~ come:4
 to~ cool:-8
 to~ cut:-4
 to~ dissolve:-4
 to~ everyone:3
 to~ find:-4
 to~ finish:6
 to~ get:-3
 to~ grate:-1
 to~ hand:1
 to~ have:3
 to~ hear:1
 to~ help:5
 to~ her:-7
 to~ hold:3
 to~ keep:-8
 to~ know:-5
 to~ light:-4
 to~ look:-7
 to~ make:1
 to~ mash:-1
 to~ melt:-10
 to~ mix:-3
 to~ my:-1
 to~ noth:1
 to~ open:-6
 to~ pour:-3
 to~ put:3
 to~ remember:-8
 to~ rough:-3
 to~ say:1
 to~ see:1
 to~ self:1
 to~ sell:-2
 to~ set:3
 to~ slush:-7
 to~ soap:-7
 to~ someth:-6
 to~ spare:-1
 to~ spoon:-3
 to~ start:-6
 to~ stir:1
 to~ take:6
 to~ tare:-6
 to~ tell:-1
 to~ test:-6
 to~ that:-5
 to~ the:-1
 to~ thicken:-2
 to~ this:-8
 to~ throw:-3
 to~ trace:-8
 to~ try:-5
 to~ unmould:-5
 to~ use:-2
 to~ wait:1
 to~ wash:2
 to~ waste:4
 to~ weigh:-7
 to~ work:-1
 to~ write:-1
 to~ you:-5
 to~%:5
 to~<:4
 to~=:-2
 to~>:4
 to~F:-10
 to~T:-3
 to~X:-5
 to~b:-3
 to~d:-3
 to~e:-2
 to~t:4
 to~w:-6
 trac:-9
 trace:1
 trace~ ::-7
 trace~ add:3
 trace~ after:-5
 trace~ and:-11
 trace~ at:-2
 trace~ because:6
 trace~ came:-5
 trace~ for:5
 trace~ i:-6
 trace~ in:-7
 trace~ pour:-4
 trace~ stir:-5
 trace~ then:-1
 trace~ was:-5
 trace~0:-6
 trace~t:-6
 trace~w:-4
 track:5
 tractor:-4
 trac~ after:-2
 trac~ in:-4
 trade:-9
 trail:-4
 train:-6
 translat:-3
 translate:-4
 translat~ from:-2
 translucent:-3
 tray:-5
 trays:-4
 treat:-3
 trial:-8
 trick:-8
 trick~ for:-4
 tried:-9
 tried~ it:1
 trim:-7
 trimming:-1
 tripl:-7
 trouble:-4
 trust:-6
 trust~ it:-5
 trust~ the:-4
 truth:-1
 try:-12
 try~ it:-5
 try~ to:-1
 tub:-1
 tube:-5
 tubs:2
 tub~ ::-7
 tub~ and:-7
 tub~ had:-2
 tub~ is:-3
 tub~ of:-4
 tub~ says:-6
 tub~ was:-1
 tue:-3
 tuesday:-2
 tuesday~ ::-4
 tue~t:-1
 turn:-2
 turns:-1
 turns~ out:7
 turns~0:-3
 turn~ it:-3
 turn~ out:4
 turn~ the:-3
 turn~S:-4
 tutor:-2
 twentieth:4
 twice:3
 twice~ a:-3
 twice~ and:3
 twice~ before:-7
 twice~ i:3
 twice~ with:-5
 typ:-4
 type:5
 typed:8
 typed~ the:8
 type~ ::-8
 typo:3
 u:-8
 ugh:-1
 ugly:-6
 uncl:-5
 uncle:-3
 under:-4
 underneath:-6
 understand:-5
 under~ a:-2
 under~ it:6
 under~ the:2
 under~0:-8
 under~d:-2
 under~t:-3
 under~w:-6
 unit:-3
 units:-7
 unit~ ::-3
 unles:1
 unmold:-5
 unmould:-6
 unmould~ after:-5
 unmould~t:-1
 unrefin:-8
 unsaponifi:9
 unscent:-6
 until:-1
 until~ a:-4
 until~ both:-1
 until~ i:-1
 until~ it:-2
 until~ its:-5
 until~ the:3
 until~ you:-3
 until~0:-6
 until~t:-1
 up:6
 update:4
 upon:4
 upstair:1
 up~ ::2
 up~ ?:-6
 up~ a:-4
 up~ again:-8
 up~ and:-1
 up~ at:-1
 up~ by:3
 up~ for:-6
 up~ i:-9
 up~ in:-4
 up~ like:-6
 up~ my:-2
 up~ on:7
 up~ the:3
 up~ there:4
 up~ to:3
 up~ with:2
 up~0:9
 ur:-6
 us:-1
 use:-3
 used:1
 used~ a:-2
 used~ all:-9
 used~ that:9
 used~ the:7
 used~ to:-9
 used~ up:1
 used~0:-4
 used~<:-3
 used~=:-6
 used~>:-4
 used~F:-5
 used~L:3
 used~N:-5
 used~l:-6
 used~w:-1
 uses:-4
 use~ ?:-2
 use~ a:-1
 use~ for:1
 use~ in:-4
 use~ it:-7
 use~ the:-5
 use~ them:-5
 use~ this:-5
 use~ up:6
 use~=:2
 use~>:4
 use~F:-7
 use~I:-5
 use~N:-2
 use~l:-2
 using:2
 using~=:-5
 usual:3
 us~ is:1
 us~ the:-2
 vanish:-4
 varnish:-5
 vegan:-8
 vegetable:-5
 vegetarian:-8
 verdict:-3
 verdict~ ?:-3
 verify:-6
 verify~ the:-6
 version:-7
 version~ ::1
 version~ with:-7
 version~0:4
 very~ end:-1
 very~ first:-8
 very~ nice:-4
 vet:-4
 video:-8
 village:-2
 virgin:-8
 voice:2
 volcano:-9
 volume:-1
 w:1
 wait:-4
 wait~ for:-6
 wait~ i:-8
 wait~ till:-5
 wait~ until:-7
 wait~t:-4
 walk:4
 wall:-2
 want:3
 wants:-5
 wants~ a:-4
 wants~ it:-6
 wants~ me:-2
 wants~ some:-1
 wants~ the:-6
 wants~ to:-4
 wants~0:4
 want~ a:-4
 want~ it:-1
 want~ the:4
 want~ to:-4
 want~0:6
 want~F:-7
 war:-7
 wardrobe:-4
 warm:-8
 warmth:-5
 warm~ in:-5
 warm~ it:-5
 warm~ oils:3
 warm~ the:-10
 warm~ to:-5
 warm~F:-3
 warn:-6
 was:5
 wash:-6
 wash~ house:-4
 wash~ it:2
 wash~ the:1
 wash~ up:-2
 wash~ with:-7
 wasnt:14
 wasnt~ enough:1
 wast:3
 was~ a:-1
 was~ all:4
 was~ already:4
 was~ at:-5
 was~ call:2
 was~ clean:-2
 was~ clear:-4
 was~ cold:2
 was~ done:1
 was~ empty:11
 was~ fine:-4
 was~ finish:7
 was~ for:-2
 was~ frozen:2
 was~ going:-7
 was~ gone:-4
 was~ half:-5
 was~ hard:-6
 was~ hot:-3
 was~ i:-2
 was~ in:3
 was~ it:-5
 was~ like:3
 was~ made:1
 was~ meant:5
 was~ melt:4
 was~ my:-4
 was~ near:5
 was~ never:-3
 was~ no:-3
 was~ not:9
 was~ off:9
 was~ old:-4
 was~ on:4
 was~ one:5
 was~ only:1
 was~ open:7
 was~ out:5
 was~ over:1
 was~ pour:2
 was~ ready:-3
 was~ real:6
 was~ right:-5
 was~ so:5
 was~ soft:4
 was~ stand:5
 was~ stirr:-2
 was~ that:-5
 was~ the:-4
 was~ there:6
 was~ thick:-4
 was~ too:-5
 was~ under:-6
 was~ very:-7
 was~ warm:-6
 was~ weigh:5
 was~ what:-5
 was~ with:1
 was~ written:2
 was~%:-10
 was~0:-3
 was~<:2
 was~=:-9
 was~>:-9
 was~A:4
 was~F:5
 was~L:5
 was~N:2
 was~X:7
 was~b:3
 was~d:-8
 was~e:6
 was~l:-7
 was~t:-6
 was~v:1
 was~w:4
 watch:-5
 watch~ the:-6
 water:-6
 water~ bath:-5
 waxy:-4
 way:2
 way~ about:1
 way~ and:-1
 way~ for:3
 way~ in:7
 way~ of:-6
 way~ round:-1
 way~ to:-2
 we:1
 wear:-8
 wear~ goggl:-4
 weather:-6
 wedd:2
 wedd~ favour:1
 wednesday:-6
 week:-5
 weekend:-2
 weeks:-1
 week~ and:-8
 week~ i:-7
 week~ so:3
 week~0:-9
 weigh:-2
 weight:1
 weight~ ::-7
 weight~ and:3
 weight~ g:-3
 weight~ in:3
 weight~ made:-6
 weight~ not:-8
 weight~ of:-1
 weight~ on:-7
 weight~ oz:-5
 weight~ so:-4
 weight~A:-6
 weigh~ ?:-6
 weigh~ a:-4
 weigh~ after:-5
 weigh~ again:4
 weigh~ and:2
 weigh~ anyth:-2
 weigh~ as:4
 weigh~ by:6
 weigh~ everyth:-9
 weigh~ i:-5
 weigh~ in:1
 weigh~ like:1
 weigh~ my:2
 weigh~ on:2
 weigh~ one:2
 weigh~ out:-6
 weigh~ proper:-1
 weigh~ the:2
 weigh~0:3
 weigh~<:-7
 weigh~=:-7
 weigh~>:-9
 weigh~F:-3
 weigh~e:3
 weigh~l:-3
 weigh~w:-8
 welcome:-4
 well:-1
 well~ and:-4
 well~ as:-5
 well~ be:6
 well~ have:7
 went:4
 went~ a:5
 went~ above:-7
 went~ away:-5
 went~ back:-2
 went~ brown:-6
 went~ by:-3
 went~ clear:-6
 went~ cloudy:-6
 went~ dark:-2
 went~ down:6
 went~ for:7
 went~ from:-10
 went~ in:7
 went~ into:3
 went~ on:5
 went~ over:3
 went~ the:-4
 went~ through:1
 went~ to:-5
 went~ with:3
 went~ without:3
 went~ wrong:-4
 went~ yellow:-6
 went~=:-8
 went~S:-7
 were:3
 werent:2
 were~ a:-1
 were~ at:-7
 were~ on:-4
 were~ only:-2
 were~0:2
 were~=:-1
 were~F:4
 were~w:-2
 wet:6
 wet~ cloth:-3
 wet~ dog:-4
 weve:-3
 weve~ got:-6
 we~ added:2
 we~ are:-2
 we~ count:-4
 we~ cut:-5
 we~ did:4
 we~ do:1
 we~ got:-7
 we~ have:-4
 we~ keep:-6
 we~ made:-7
 we~ make:2
 we~ pour:-4
 we~ put:-6
 we~ render:-2
 we~ say:3
 we~ split:-6
 we~ still:-9
 we~ use:-9
 we~ used:-3
 we~ want:3
 we~ weigh:1
 we~ went:-1
 we~ were:4
 we~ write:-4
 what:3
 whatever:6
 whatever~ the:9
 whatever~ was:10
 whats:1
 whatsoever:1
 whats~ in:4
 whats~ left:-7
 whats~ my:-7
 whats~ the:-6
 what~ a:-7
 what~ came:6
 what~ did:-3
 what~ do:2
 what~ does:-8
 what~ g:-4
 what~ happen:-6
 what~ how:-8
 what~ i'd:4
 what~ i:7
 what~ im:2
 what~ is:-5
 what~ it:4
 what~ ive:-9
 what~ my:-1
 what~ remain:2
 what~ she:-5
 what~ superfat:-8
 what~ the:1
 what~ they:5
 what~ was:-5
 what~ we:-3
 what~ went:-2
 what~ would:-6
 what~ you:-1
 what~ youd:-1
 when:-1
 whenever:-1
 when~ both:-6
 when~ cut:-7
 when~ i:2
 when~ it:1
 when~ its:-1
 when~ the:2
 when~ wash:5
 when~ you:2
 when~F:-9
 where:4
 where~ does:-9
 where~ i:-5
 where~ it:7
 where~ my:2
 where~ she:-8
 where~ the:4
 where~ you:4
 whether:-3
 whether~ it:-3
 whether~ the:2
 whether~F:-8
 whether~b:-4
 which:3
 which~ bring:-1
 which~ has:-1
 which~ i:6
 which~ is:-5
 which~ makes:-6
 which~ of:3
 which~ one:5
 which~ the:1
 which~ was:-4
 which~ you:-4
 which~F:-7
 while:-3
 while~ i:5
 while~ it:-1
 while~ that:-2
 while~ the:-6
 whipp:2
 whisk:-5
 white:-8
 whiteboard:-8
 whiter:-4
 white~ and:2
 white~ as:-6
 white~ powder:-4
 white~ spots:-2
 white~F:-2
 who:-1
 whoever:-1
 whole:-1
 whole~ grams:-7
 whole~ house:-4
 whole~ thing:2
 whole~ time:-1
 whos:-3
 whose:4
 whos~ right:-3
 who~ asked:-6
 who~ cant:3
 who~ does:2
 who~ has:-4
 who~ is:-4
 who~ knows:5
 who~ taught:-1
 why:-13
 why~ ?:-3
 why~ does:-3
 why~ i:-3
 why~ is:-6
 why~ it:-4
 why~ its:-4
 why~ the:-6
 why~F:-3
 width:-3
 wife:-2
 wifes:-2
 wife~ likes:-6
 wife~ says:3
 will:-7
 will~ be:-9
 will~ climb:-6
 will~ do:-7
 will~ it:-2
 will~ need:-2
 will~ not:-1
 will~ that:-2
 will~ the:-6
 will~ this:-3
 wind:-5
 window:-10
 windowsill:2
 window~ open:-7
 winter:-5
 winter~ and:-1
 winter~ bar:-2
 winter~ hands:-7
 winter~ i:-4
 wipe:-5
 wiped:-2
 wire:-5
 wise:-5
 wish:4
 within:-7
 within~t:-4
 without:7
 without~ a:-9
 without~ it:5
 without~ my:-2
 without~F:-2
 with~ a:-2
 with~ all:-5
 with~ an:-5
 with~ another:1
 with~ bak:-4
 with~ both:-5
 with~ coins:2
 with~ everyth:6
 with~ freezer:-3
 with~ glov:-2
 with~ goggl:-2
 with~ it:-2
 with~ its:-3
 with~ more:4
 with~ my:-8
 with~ no:-3
 with~ noth:5
 with~ one:3
 with~ only:-8
 with~ some:2
 with~ that:2
 with~ the:3
 with~ this:4
 with~ us:-4
 with~ wet:-3
 with~ what:3
 with~%:7
 with~0:-4
 with~<:-4
 with~=:-4
 with~>:-6
 with~A:1
 with~C:2
 with~F:-7
 with~I:-4
 with~L:-7
 with~N:2
 with~S:-8
 with~U:5
 with~W:3
 with~b:1
 with~e:-8
 with~l:-8
 with~v:-1
 with~w:1
 woman:-10
 woman~ at:-1
 women:-5
 wonder:6
 wonky:-8
 wont:-3
 wood:-8
 wooden:-3
 wooden~ box:-2
 wooden~ mould:-6
 wooden~ one:-4
 wooden~ spoon:2
 wood~ stove:-3
 wool:1
 words:-6
 word~ for:-6
 works:-8
 worksheet:-4
 workshop:-3
 worktop:-1
 work~ ?:-2
 work~ in:1
 work~ it:4
 work~ out:-6
 work~ with:1
 worri:3
 worry:-3
 worry~ is:2
 worse:-2
 worth~ of:4
 would:-2
 wouldnt:5
 wouldnt~ dissolve:8
 would~ a:-2
 would~ be:-2
 would~ do:-7
 would~ have:-2
 would~ like:2
 would~ love:3
 would~ not:-5
 would~ someone:-4
 would~ take:2
 would~ that:-3
 would~ the:-7
 would~ you:3
 wrap:-6
 wrapp:-12
 wrapper:-6
 wrapp~ in:-5
 wrapp~ it:-5
 wrap~ in:-1
 wrist:-4
 writ:-5
 write:-5
 write~ down:-6
 write~ it:-1
 write~ the:-6
 write~ up:-5
 written:3
 written~ ?:-4
 written~ on:-7
 wrong~ ?:-5
 wrong~ or:-5
 wrong~ with:-7
 wrote:2
 wrote~ ::-5
 wrote~ in:2
 wrote~ it:3
 wrote~ on:-5
 wrote~ that:-6
 wrote~ this:-1
 wrote~F:4
 wt:-7
 w~ a:-9
 w~ my:-2
 w~ the:1
 w~ w:2
 w~=:-2
 x:2
 x~0:4
 x~F:-8
 yall:-5
 yard:-7
 year:-7
 years:-7
 years~ ago:-3
 year~ i:-7
 year~ in:-4
 year~ is:4
 year~0:-5
 yellow:-9
 yes:-3
 yesterday:-4
 yes~ ?:-5
 yes~ its:-9
 yes~ no:-3
 yes~ or:-2
 yes~ the:-2
 yet:6
 yield:2
 yield~ ::1
 yield~0:2
 you:-3
 youd:-4
 youll:-2
 youll~ want:1
 young:-5
 your:-10
 youre:-8
 yours:-2
 your~ arm:-1
 your~ own:3
 your~ skin:-3
 your~A:-3
 your~F:-3
 youve:-10
 you~ ?:-2
 you~ all:-7
 you~ and:-4
 you~ are:-5
 you~ ask:3
 you~ asked:-3
 you~ be:3
 you~ call:-7
 you~ can:-2
 you~ cant:-5
 you~ check:-4
 you~ confirm:-3
 you~ could:-10
 you~ cut:-3
 you~ do:2
 you~ dont:-9
 you~ feel:-2
 you~ for:-5
 you~ get:-4
 you~ go:-6
 you~ know:6
 you~ like:-7
 you~ look:-3
 you~ lot:-3
 you~ make:-6
 you~ need:-6
 you~ pour:-6
 you~ put:-9
 you~ say:-2
 you~ see:1
 you~ should:4
 you~ start:2
 you~ take:-6
 you~ tell:2
 you~ think:-4
 you~ to:-2
 you~ trust:-1
 you~ use:-3
 you~ wait:-4
 you~ want:-9
 you~ weigh:-7
 you~ will:3
 you~ wont:2
 you~ work:-3
 zap:-8
 zapp:6
 zappy:-4
 zaps:2
 zap~ on:-3
 zap~ test:-4
 zero:3
 zero~ the:6
 zutat:-4
 üf:-7
%%:-5
%0:-9
%:7
%<:-6
%>:-6
%A:5
%F:-2
%K:-6
%N:1
%S:-5
%W:1
%X:1
%b:-1
%l:-2
%t:-5
%w:1
%~ ::-6
%~ ?:-2
%~ and:-5
%~ extra:6
%~ flak:3
%~ for:9
%~ half:-8
%~ is:-3
%~ less:-3
%~ liquid:6
%~ of:1
%~ on:4
%~ or:2
%~ over:5
%~ pure:-6
%~ purity:-4
%~ sf:-5
%~ so:6
%~ solution:-3
%~ superfat:1
%~ w:-3
%~ with:3
%~=:-5
%~A:3
%~F:-6
%~K:-6
%~N:-1
%~W:-4
%~X:1
0%:-5
00:-4
0:4
0<:-3
0>:-3
0A:-1
0B:1
0C:5
0F:-1
0I:3
0K:-8
0M:2
0N:4
0S:-4
0W:3
0X:-5
0b:-2
0d:-3
0l:-3
0r:-1
0t:-5
0v:-8
0w:-6
0~ ::1
0~ =:-9
0~ ?:1
0~ a:-11
0~ after:2
0~ all:5
0~ and:-1
0~ are:1
0~ as:6
0~ at:-2
0~ b:-7
0~ back:-1
0~ bar:-5
0~ bars:-7
0~ batch:-4
0~ because:8
0~ before:4
0~ big:-4
0~ block:2
0~ both:-4
0~ bottl:-7
0~ bucket:-4
0~ but:-1
0~ by:-1
0~ c:-4
0~ cakes:-2
0~ can:-7
0~ caviti:-5
0~ children:-5
0~ comment:-3
0~ cubes:-1
0~ cut:2
0~ degre:-3
0~ drops:-8
0~ empty:2
0~ evening:-3
0~ except:6
0~ famili:-6
0~ fat:-3
0~ fats:-12
0~ for:-8
0~ from:2
0~ full:-7
0~ gives:-6
0~ goats:-6
0~ goes:-2
0~ good:-1
0~ group:-5
0~ guest:-5
0~ had:-8
0~ i:7
0~ if:-1
0~ in:-2
0~ into:4
0~ is:2
0~ it:-2
0~ its:1
0~ ive:2
0~ jars:-1
0~ kitchen:-4
0~ lather:-4
0~ left:-7
0~ like:-4
0~ little:-6
0~ loaf:-3
0~ loav:-1
0~ lyes:-7
0~ made:-4
0~ more:-6
0~ mould:-1
0~ my:4
0~ n:-2
0~ night:-4
0~ no:4
0~ not:5
0~ of:4
0~ off:-1
0~ oil:-6
0~ oils:-4
0~ on:8
0~ once:2
0~ one:-3
0~ or:5
0~ out:3
0~ p:-7
0~ packet:-1
0~ pcs:-5
0~ people:-7
0~ per:-5
0~ percent:6
0~ piec:-6
0~ please:9
0~ plus:3
0~ pots:3
0~ pour:-5
0~ pupil:1
0~ right:-3
0~ scal:-6
0~ she:-1
0~ silicone:-2
0~ since:3
0~ slic:-4
0~ small:-6
0~ so:-4
0~ spoon:2
0~ still:-10
0~ superfat:7
0~ that:-3
0~ thats:2
0~ the:4
0~ then:4
0~ there:1
0~ thing:-9
0~ this:2
0~ times:-3
0~ tins:-3
0~ to:2
0~ together:-7
0~ towel:-8
0~ until:-7
0~ w:5
0~ was:-2
0~ weigh:-3
0~ went:5
0~ were:2
0~ when:4
0~ which:-4
0~ winter:-1
0~ with:-9
0~ without:-7
0~ x:2
0~ zap:-5
0~ ×:-5
0~0:-4
0~=:-6
0~A:-5
0~F:-5
0~S:1
0~W:-4
0~X:5
0~b:-11
0~t:-6
0~w:-3
<%:2
<0:-1
<:3
<<:-4
<=:-5
<>:-3
<A:4
<C:3
<F:2
<I:-8
<K:8
<L:5
<N:-3
<S:-2
<W:-5
<X:2
<d:-4
<l:-7
<t:-4
<v:-3
<w:-7
<~ +:-6
<~ and:4
<~ because:1
<~ for:2
<~ i:-5
<~ in:-4
<~ is:2
<~ less:-2
<~ more:8
<~ of:1
<~ oils:-4
<~ plain:-8
<~ short:3
<~ so:-2
<~ the:5
<~ with:-6
<~C:3
<~F:4
<~I:-4
<~L:-3
<~S:-2
<~W:-6
<~X:-5
=%:-11
=0:5
=:-4
=<:-4
==:-3
=>:-3
=A:-2
=B:-6
=F:-4
=I:-2
=K:-1
=L:-1
=N:4
=S:-1
=W:-2
=X:-3
=b:-3
=d:-1
=l:-5
=r:-5
=t:-3
=v:-6
=w:-4
=~ +:-5
=~ ::4
=~ =:-8
=~ after:-4
=~ all:-5
=~ and:-6
=~ as:2
=~ at:-3
=~ bag:-8
=~ bit:-4
=~ block:-7
=~ both:-4
=~ can:-7
=~ check:-2
=~ clean:-3
=~ cold:-1
=~ did:-2
=~ dissolv:-5
=~ does:-2
=~ fats:-2
=~ for:-5
=~ free:-7
=~ from:-3
=~ goes:-3
=~ good:-1
=~ he:-7
=~ i:-7
=~ im:-7
=~ in:-4
=~ into:-6
=~ it:-7
=~ last:-4
=~ melt:-7
=~ mk:-5
=~ my:2
=~ no:-7
=~ not:-12
=~ of:-3
=~ ok:-2
=~ on:-3
=~ out:-6
=~ plain:-4
=~ please:-3
=~ plus:4
=~ smell:-1
=~ so:-6
=~ soap:-1
=~ still:-1
=~ superfat:-7
=~ that:-7
=~ the:-2
=~ then:-3
=~ too:-3
=~ tub:-6
=~ weigh:-10
=~ went:-7
=~ what:-2
=~ with:3
=~ would:-2
=~ yes:-4
=~%:-6
=~0:4
=~<:-4
=~=:-2
=~>:-1
=~A:-3
=~F:-3
=~L:-2
=~W:-2
=~X:-2
=~t:-1
>%:-5
>0:-7
>:-3
><:-4
>=:-3
>>:-7
>A:-2
>F:-3
>K:-5
>L:-1
>W:-4
>X:-1
>e:-10
>l:-6
>t:-2
>w:-7
>~ ::-1
>~ altogether:-1
>~ and:-1
>~ for:-2
>~ i:-6
>~ in:-6
>~ is:-5
>~ jar:1
>~ of:-3
>~ oils:-1
>~ so:-8
>~ the:-5
>~ tub:-4
>~ with:-5
>~A:-3
>~F:4
>~L:-4
>~W:-5
A%:4
A0:5
A=:-2
A>:-2
AA:2
AB:5
AC:-6
AF:3
AI:-5
AK:-6
AL:3
AN:-7
AS:-3
AW:-1
AX:-1
Ab:1
Ad:1
Ae:2
Al:-8
Ar:-8
At:-4
Aw:-4
A~ +:-1
A~ ::5
A~ =:2
A~ ?:-6
A~ a:-7
A~ about:-3
A~ already:4
A~ alright:-4
A~ and:-3
A~ as:9
A~ at:-4
A~ bag:2
A~ be:-2
A~ because:-2
A~ before:-6
A~ but:-2
A~ came:-6
A~ check:-7
A~ comes:4
A~ cool:2
A~ correct:-7
A~ dissolv:-3
A~ do:-1
A~ does:-8
A~ down:3
A~ enough:-3
A~ figure:3
A~ fine:-4
A~ first:-1
A~ fit:-6
A~ fits:-4
A~ for:1
A~ from:6
A~ g:-9
A~ gets:-5
A~ goes:-9
A~ good:-6
A~ got:7
A~ had:2
A~ half:-5
A~ has:4
A~ heavy:2
A~ here:6
A~ i:5
A~ if:6
A~ into:-4
A~ is:4
A~ it:6
A~ its:6
A~ ive:1
A~ jug:-4
A~ left:-8
A~ like:-5
A~ looks:-4
A~ never:-6
A~ no:-6
A~ not:5
A~ number:-2
A~ of:1
A~ ok:-6
A~ okay:-4
A~ on:-6
A~ one:-7
A~ only:2
A~ or:-4
A~ over:-7
A~ part:-7
A~ paste:3
A~ per:3
A~ please:-7
A~ pls:-4
A~ pot:6
A~ ready:-10
A~ real:-8
A~ right:-5
A~ row:-4
A~ safe:-4
A~ sane:-5
A~ says:2
A~ sensible:-3
A~ she:-8
A~ slow:-6
A~ so:1
A~ soap:-4
A~ sprinkl:-2
A~ still:-8
A~ stirr:-1
A~ stuck:1
A~ that:-8
A~ the:-3
A~ then:-3
A~ there:2
A~ too:-9
A~ tub:5
A~ up:7
A~ was:-1
A~ weigh:9
A~ went:1
A~ when:1
A~ where:4
A~ wrong:-5
A~ you:4
A~%:-6
A~<:3
A~=:-2
A~>:-6
A~A:-3
A~F:-7
A~L:2
A~d:-4
A~e:-3
A~r:-6
A~t:5
A~v:-2
B0:-3
B:3
B=:-7
BF:5
B~ and:-9
B~ in:-3
B~ so:-6
C%:-6
C:5
CA:5
CW:1
Cv:5
C~ at:4
C~ in:6
C~ is:-3
C~%:-6
C~<:-5
F%:1
F:1
F<:4
F=:-3
F>:-1
FA:-2
FB:5
FF:-1
FI:-4
FK:-4
FL:-1
FN:5
FS:-10
FT:-5
FU:3
FX:2
Fd:-4
Fe:1
Fl:-8
Fr:6
Ft:-3
Fv:-7
Fw:2
F~ +:1
F~ ::3
F~ =:2
F~ ?:-11
F~ a:1
F~ about:-2
F~ add:3
F~ after:4
F~ again:2
F~ all:1
F~ alone:-4
F~ altogether:-1
F~ are:3
F~ as:3
F~ at:2
F~ back:5
F~ bar:-5
F~ bars:-11
F~ batch:-7
F~ because:6
F~ beef:-5
F~ before:-3
F~ block:-3
F~ bottle:-7
F~ but:-3
F~ by:-1
F~ came:1
F~ can:-4
F~ clean:-3
F~ cold:-4
F~ comes:-10
F~ cook:-4
F~ could:5
F~ count:-10
F~ does:-6
F~ down:8
F~ extra:4
F~ figure:5
F~ fills:-9
F~ first:-6
F~ fit:-5
F~ for:-3
F~ from:-5
F~ g:-7
F~ gent:-5
F~ gives:-7
F~ go:-8
F~ goes:-8
F~ gone:-2
F~ good:2
F~ got:8
F~ grams:-6
F~ had:-3
F~ half:-3
F~ has:-6
F~ here:2
F~ i'd:5
F~ i:2
F~ if:-7
F~ im:6
F~ in:1
F~ instead:4
F~ into:-4
F~ isnt:-1
F~ it:5
F~ its:2
F~ ive:7
F~ jar:-4
F~ jug:3
F~ keeps:-6
F~ l:-3
F~ last:-9
F~ left:-1
F~ like:2
F~ line:8
F~ look:3
F~ looks:-5
F~ makes:-4
F~ melt:-9
F~ melts:-6
F~ minus:3
F~ my:3
F~ myself:-4
F~ n:2
F~ needs:-7
F~ never:10
F~ next:-8
F~ no:-6
F~ not:3
F~ noth:-6
F~ now:7
F~ off:-1
F~ oil:-1
F~ on:-3
F~ once:-5
F~ one:-12
F~ only:1
F~ or:-8
F~ out:3
F~ over:-5
F~ oyl:-4
F~ packet:6
F~ paste:-6
F~ plus:2
F~ put:-5
F~ ran:1
F~ read:1
F~ real:-6
F~ render:-7
F~ right:-6
F~ rspo:-7
F~ says:-6
F~ second:-1
F~ sets:-3
F~ should:2
F~ since:2
F~ smell:-10
F~ so:5
F~ soap:-6
F~ soaps:-6
F~ stand:-5
F~ stay:8
F~ stays:-2
F~ still:2
F~ stirr:-2
F~ strain:4
F~ stuck:1
F~ takes:-7
F~ than:2
F~ that:-6
F~ thats:3
F~ the:-2
F~ there:4
F~ thicken:-7
F~ this:-2
F~ through:-2
F~ tin:-2
F~ to:4
F~ together:4
F~ too:-5
F~ trac:-9
F~ tub:-3
F~ turn:6
F~ twice:3
F~ until:7
F~ up:3
F~ used:-4
F~ w:2
F~ warm:-4
F~ was:-2
F~ weigh:-6
F~ well:1
F~ went:-2
F~ were:-3
F~ which:-2
F~ while:3
F~ will:-4
F~ with:-1
F~ would:3
F~ wouldnt:-2
F~ you:5
F~0:4
F~<:2
F~=:-2
F~>:-1
F~A:-3
F~F:-4
F~N:7
F~d:-3
F~e:-1
F~t:-9
F~v:-1
I0:2
I:2
IA:-3
II:1
IL:4
Ib:-6
Id:4
Iw:-5
I~ +:-2
I~ ::1
I~ and:-2
I~ bath:-2
I~ first:-4
I~ had:8
I~ in:-10
I~ is:-1
I~ it:7
I~ round:-4
I~ so:-6
I~ was:7
I~<:1
K%:-5
K0:-9
K:2
K=:-1
K>:-7
KA:-6
KF:-7
KL:-4
KW:-3
Kd:-6
Kr:4
Kt:-3
Kw:-8
K~ ::-5
K~ and:-3
K~ at:-2
K~ by:-4
K~ g:-7
K~ half:-2
K~ in:-3
K~ into:3
K~ is:3
K~ mixed:5
K~ my:-8
K~ of:-5
K~ on:5
K~ was:-4
K~%:-9
K~>:-7
K~A:-1
K~r:-2
L:1
L<:-4
L=:-1
L>:2
LA:-5
LF:-1
LI:4
LL:2
LN:3
LS:6
LU:-5
LW:3
LX:-4
Lb:1
Le:3
Ll:-5
Lt:-3
Lv:-5
Lw:-2
L~ ::-8
L~ ?:-5
L~ after:-2
L~ as:4
L~ at:-1
L~ bar:-6
L~ bars:-5
L~ batch:-5
L~ because:1
L~ boil:2
L~ by:-3
L~ flat:2
L~ from:9
L~ frozen:-7
L~ goes:-5
L~ i:-2
L~ in:-2
L~ instead:-9
L~ into:-1
L~ is:1
L~ it:-1
L~ no:-10
L~ of:8
L~ on:5
L~ one:-5
L~ out:6
L~ over:3
L~ pot:-7
L~ same:7
L~ so:1
L~ soap:-6
L~ stage:-3
L~ straight:-2
L~ thaw:-5
L~ the:5
L~ to:2
L~ towel:1
L~ was:5
L~ went:3
L~ which:6
L~ with:4
L~0:-2
L~=:-1
L~>:-1
L~X:-5
L~b:9
L~l:-10
L~t:-3
L~w:2
M0:2
M:4
MA:4
M~ and:-4
M~ in:3
M~ is:3
M~ soap:-9
N0:3
N:10
N<:-2
NA:-3
NL:2
NN:-2
Nb:5
Nl:3
Nt:-9
Nw:5
N~ after:-1
N~ and:-10
N~ as:1
N~ at:-3
N~ because:2
N~ from:6
N~ i:6
N~ if:2
N~ in:1
N~ instead:-2
N~ is:-2
N~ it:11
N~ or:-6
N~ same:9
N~ since:7
N~ that:-2
N~ the:6
N~ to:5
N~ was:-6
N~ where:7
N~ would:-7
N~N:-2
S%:-7
S0:-5
S:-5
S<:-3
SA:-4
SF:-2
SL:-5
SN:8
SS:-5
SX:-3
Sd:-1
St:-5
Sv:-4
Sw:-3
S~ ::-4
S~ a:-4
S~ and:2
S~ as:-2
S~ at:-7
S~ because:3
S~ blend:-4
S~ but:-8
S~ fades:-4
S~ for:-5
S~ from:-6
S~ goes:-5
S~ i:-6
S~ in:1
S~ is:6
S~ it:-7
S~ leav:-6
S~ mould:-6
S~ no:-3
S~ once:-2
S~ only:3
S~ pour:-1
S~ powder:-4
S~ smell:-7
S~ spots:-7
S~ the:-6
S~ then:-4
S~ was:1
S~ when:-5
S~ which:-5
S~0:-5
S~<:-3
S~S:-3
S~w:-3
T%:-5
T0:-3
T:-8
T=:-2
TF:-3
T~ of:-4
T~ oils:-3
U:5
UF:3
Ut:-2
U~ and:-1
U~ i:-7
U~ in:3
U~ stage:-2
W%:-7
W0:7
W:1
W<:5
W=:-3
W>:-2
WA:-1
WC:1
WF:-4
WI:-2
WL:6
WS:-2
WW:3
WX:1
Wb:2
Wd:-5
We:-3
Wl:-4
Wt:-1
Wv:-4
Ww:-1
W~ +:-3
W~ =:-7
W~ ?:-11
W~ a:6
W~ after:-4
W~ all:-2
W~ and:-2
W~ as:3
W~ at:3
W~ because:5
W~ before:3
W~ boil:-3
W~ but:-1
W~ by:-2
W~ can:1
W~ clear:-7
W~ does:-5
W~ down:3
W~ first:-5
W~ for:-5
W~ from:-6
W~ g:-7
W~ got:-4
W~ half:-3
W~ here:-4
W~ i:5
W~ in:-1
W~ into:-7
W~ is:1
W~ it:2
W~ last:-4
W~ let:-3
W~ like:1
W~ looks:-5
W~ makes:-8
W~ mixed:-6
W~ never:-4
W~ no:4
W~ ok:-1
W~ on:-9
W~ only:-7
W~ or:6
W~ out:-9
W~ outdoor:-1
W~ outside:-1
W~ ready:-3
W~ so:-3
W~ that:-4
W~ the:3
W~ then:-1
W~ to:-9
W~ too:6
W~ was:8
W~ weigh:-4
W~ went:3
W~ when:6
W~ which:5
W~ with:1
W~ would:-6
W~0:2
W~<:1
W~=:-3
W~A:-4
W~e:-1
W~r:-5
W~t:-1
W~v:-6
X%:1
X0:-1
X:-2
X<:1
X=:-6
X>:-2
XA:-2
XC:-7
XF:-2
XL:4
XN:8
XS:-2
XW:2
Xl:2
Xt:-3
Xv:-2
X~ ::-2
X~ ?:-4
X~ a:-6
X~ at:-7
X~ bar:2
X~ bars:-7
X~ came:-4
X~ dissolv:-9
X~ fine:-4
X~ for:1
X~ from:-8
X~ goes:-3
X~ ground:-7
X~ i:6
X~ is:-6
X~ it:-4
X~ makes:-1
X~ no:-6
X~ of:-6
X~ on:-2
X~ so:-5
X~ the:-4
X~ this:4
X~ to:-9
X~ was:3
X~ went:1
X~0:1
X~<:-7
X~W:-1
X~v:-3
X~w:-5
^ *:-7
^ ::3
^ =:-5
^ about:12
^ add:1
^ added:9
^ after:1
^ all:3
^ also:-5
^ alway:3
^ am:-5
^ an:6
^ and:-7
^ any:-6
^ anyone:-10
^ anyth:-4
^ are:-3
^ as:4
^ ask:-10
^ attempt:-5
^ b:-7
^ back:-7
^ bar:-5
^ bars:-8
^ base:-4
^ basic:-5
^ batch:-10
^ be:-7
^ because:1
^ been:-4
^ before:-7
^ between:6
^ big:-8
^ bit:3
^ blend:-7
^ blender:-6
^ blue:-6
^ boil:4
^ bonjour:-3
^ bonsoir:-4
^ book:-9
^ both:-9
^ bottle:8
^ bought:-6
^ bowl:-8
^ box:-4
^ bring:-3
^ bubbl:-6
^ but:-3
^ butcher:3
^ by:-4
^ c:-5
^ came:1
^ can:1
^ castile:-5
^ cat:3
^ chang:5
^ check:-9
^ christma:-4
^ ciao:-3
^ clean:-2
^ clear:2
^ cold:-3
^ combine:-3
^ comes:-5
^ comment:-3
^ confetti:-5
^ cook:-3
^ cool:-3
^ copi:-3
^ correction:9
^ cost:-8
^ could:-1
^ couldnt:8
^ cover:-7
^ crock:-3
^ crockpot:-5
^ cup:-6
^ cure:-4
^ cured:-4
^ cut:-2
^ d:-5
^ dad:3
^ dads:-4
^ date:-2
^ day:-10
^ dear:1
^ did:-3
^ didnt:1
^ display:3
^ dissolv:-4
^ dissolve:1
^ do:-3
^ does:-3
^ dog:4
^ done:-4
^ dont:-12
^ doubl:4
^ dropp:-1
^ e:-4
^ each:2
^ earlier:-7
^ edit:1
^ empty:-8
^ ended:4
^ enough:-7
^ entry:2
^ even:-2
^ every:-5
^ everyone:-8
^ everyth:4
^ expect:-7
^ export:-5
^ f:-6
^ fat:-6
^ father:2
^ fats:-11
^ fill:-6
^ fills:-4
^ fine:-3
^ first:-4
^ for:4
^ forgot:-2
^ found:7
^ freeze:-7
^ friend:-2
^ from:-3
^ g:-6
^ gave:-5
^ gel:-6
^ gell:4
^ give:-7
^ glov:-3
^ goat:-6
^ goes:-4
^ goggl:-5
^ going:1
^ gonna:5
^ good:-4
^ got:-8
^ grams:-6
^ gran:3
^ grandad:-1
^ grandma:-4
^ grandpa:3
^ granny:-5
^ grans:-1
^ grat:-5
^ greeting:-5
^ had:4
^ half:1
^ hallo:-4
^ hand:2
^ handout:-5
^ hard:-5
^ has:-6
^ have:-6
^ he:-10
^ heat:-7
^ hello:-3
^ help:4
^ her:1
^ here:-10
^ heres:-6
^ hers:-8
^ hes:-6
^ hey:-5
^ his:-5
^ hiya:1
^ hola:-3
^ hope:-2
^ hot:1
^ hour:-1
^ how:-10
^ hows:-6
^ hp:-4
^ hubby:3
^ i'd:3
^ i:-2
^ if:-10
^ ignore:1
^ ill:-2
^ im:2
^ in:-4
^ ingredient:-3
^ instead:11
^ into:-3
^ is:-7
^ it:2
^ item:-3
^ itll:-2
^ its:-4
^ ive:-7
^ jug:5
^ keep:4
^ kept:1
^ kids:-7
^ kind:-1
^ kitchen:2
^ knock:1
^ label:-9
^ last:-4
^ lather:-5
^ laundry:-5
^ leave:-3
^ left:-1
^ leftover:-8
^ like:4
^ line:-4
^ liquid:-4
^ list:-7
^ log:-6
^ lol:-5
^ long:-3
^ look:-5
^ looks:-3
^ lost:-7
^ lot:-6
^ love:-4
^ lye's:6
^ m:-5
^ ma:-7
^ made:4
^ make:7
^ makes:-4
^ many:-3
^ market:-5
^ me:-2
^ meanwhile:-1
^ melt:-2
^ method:1
^ mind:-3
^ mine:-6
^ mines:2
^ mix:-6
^ mixed:-3
^ mold:-7
^ morn:-5
^ mould:-5
^ mum:-4
^ mums:4
^ must:-4
^ my:-2
^ n:-9
^ namaste:-4
^ name:-3
^ nb:1
^ need:-5
^ nephew:1
^ never:-3
^ new:-2
^ next:-10
^ nice:-6
^ no:5
^ nobody:-2
^ none:-8
^ normal:1
^ not:2
^ note:-6
^ notebook:-5
^ notes:-2
^ noth:-12
^ now:-2
^ number:-2
^ o:-5
^ oat:-5
^ oil:-7
^ oils:-3
^ ok:-3
^ okay:-4
^ old:-3
^ on:-5
^ once:-3
^ one:1
^ only:2
^ open:-1
^ or:-4
^ other:-5
^ ounc:2
^ our:-1
^ ours:-5
^ outside:-5
^ oven:-3
^ oz:-8
^ page:-4
^ passt:-3
^ past:-3
^ people:-6
^ per:2
^ ph:-5
^ phase:-3
^ phone:-2
^ photo:-8
^ plain:-8
^ plan:-4
^ plann:-7
^ please:1
^ pls:-6
^ plus:2
^ post:5
^ pot:6
^ pour:1
^ prep:-2
^ press:-4
^ pretty:4
^ print:-9
^ proces:-5
^ ps:5
^ pull:6
^ pure:-1
^ purity:6
^ put:-3
^ q:-6
^ question:-7
^ quick:-4
^ rain:4
^ ran:5
^ re:-3
^ read:2
^ reader:2
^ ready:-5
^ recipe:-6
^ regard:-5
^ remark:-6
^ render:-2
^ replac:-2
^ reply:-3
^ rest:-4
^ result:-6
^ right:-5
^ room:-5
^ row:2
^ safe:-4
^ sanity:-6
^ sat:-4
^ scal:4
^ scale:8
^ scoop:-4
^ scrap:4
^ second:2
^ sells:-3
^ set:-4
^ sf:-1
^ shav:-3
^ shave:-3
^ she:-5
^ shed:-6
^ shes:-3
^ should:-5
^ since:3
^ sis:2
^ sister:-2
^ slow:-4
^ smell:-8
^ snow:3
^ so:-5
^ soap:-6
^ soft:-4
^ sold:-8
^ some:2
^ somebody:-1
^ someone:-2
^ somewhere:2
^ sound:-3
^ source:1
^ spill:-2
^ split:2
^ spoon:-3
^ sry:-4
^ stamp:-5
^ start:-7
^ stick:-6
^ still:-2
^ stir:-4
^ stirr:-4
^ straight:-6
^ strain:3
^ student:4
^ subject:-3
^ sum:-5
^ sunday:-7
^ superfat:2
^ swap:5
^ swapp:3
^ swirl:-8
^ switch:-4
^ take:-4
^ tare:1
^ tast:-5
^ teacher:2
^ tell:-7
^ test:-5
^ text:-7
^ thank:-6
^ that:1
^ thats:-3
^ the:-2
^ then:-10
^ ther:-4
^ there:-2
^ these:-2
^ they:-10
^ theyre:-6
^ third:-3
^ this:2
^ those:4
^ thought:-2
^ threw:7
^ thx:-4
^ tip:-6
^ title:-4
^ tonight:-4
^ too:-2
^ took:2
^ total:-5
^ towel:-4
^ trac:-2
^ trace:-4
^ translat:-2
^ tried:-5
^ try:-3
^ tub:-8
^ turn:-3
^ unit:-3
^ unmould:-6
^ update:2
^ use:1
^ used:3
^ using:-6
^ version:-10
^ very:-7
^ wait:5
^ warm:-7
^ was:-5
^ wash:-7
^ we:1
^ wed:1
^ week:-4
^ weekend:-4
^ weigh:-5
^ weight:-9
^ well:-7
^ went:2
^ were:6
^ weve:-7
^ what:-9
^ whats:-6
^ when:-5
^ which:-7
^ while:-2
^ who:-5
^ whoever:-5
^ whole:4
^ whos:-3
^ why:-6
^ will:-4
^ winter:-2
^ with:-5
^ without:2
^ work:-4
^ worksheet:-4
^ workshop:-3
^ would:-2
^ wrapp:-9
^ write:1
^ written:4
^ wrote:-3
^ x:-9
^ years:3
^ yes:-9
^ yesterday:-6
^ yield:2
^ you:-7
^ youll:2
^ zap:-3
^ zutat:-4
^%:-5
^0:-5
^=:-6
^>:-10
^C:-11
^I:-1
^K:-1
^L:-1
^M:1
^N:-2
^S:-8
^T:-5
^U:2
^X:-4
^b:-1
^d:-4
^e:-10
^l:6
^r:4
^v:-1
^w:-3
any:-2
b%:-2
b0:3
b:3
bA:4
bF:-3
bL:10
bN:6
bW:6
bb:-6
bt:-5
bw:-1
b~ ?:7
b~ a:-5
b~ after:-6
b~ all:-5
b~ and:-6
b~ as:-6
b~ bars:-6
b~ because:-3
b~ before:4
b~ but:6
b~ by:7
b~ fine:-3
b~ for:7
b~ i:3
b~ if:7
b~ is:7
b~ it:-2
b~ look:-3
b~ my:3
b~ not:-6
b~ of:1
b~ ok:-7
b~ on:-3
b~ or:7
b~ right:-7
b~ still:4
b~ the:7
b~ then:6
b~ too:2
b~ was:5
b~ with:1
b~ x:-7
b~0:-8
b~L:2
d%:-4
d0:-8
d:-6
d=:-3
dA:-5
dF:-7
dI:-6
dK:-4
dL:-6
dW:-1
dX:-2
db:-4
dd:-4
dt:-2
dv:-1
dw:-1
d~ ::-1
d~ ?:-3
d~ and:-4
d~ at:-4
d~ blend:-1
d~ both:-2
d~ by:-6
d~ for:-6
d~ here:-2
d~ in:-4
d~ into:-1
d~ it:-7
d~ no:-5
d~ of:-1
d~ oils:-1
d~ on:-5
d~ or:-2
d~ pour:-3
d~ so:-7
d~ stirr:-1
d~ the:-8
d~ then:-6
d~ trace:-1
d~ when:-7
d~A:-6
d~F:-6
d~t:-1
e%:-7
e0:3
e:3
e=:-2
e>:-4
eA:-1
eF:-2
eL:1
eN:9
eW:-2
eX:6
ee:-6
et:3
e~ +:6
e~ all:1
e~ and:-3
e~ as:4
e~ but:11
e~ for:-1
e~ g:-11
e~ grams:-5
e~ in:8
e~ is:5
e~ minus:9
e~ not:-1
e~ of:2
e~ on:-3
e~ or:9
e~ was:11
e~ with:11
e~A:-4
e~F:-3
e~W:-3
l%:-5
l0:3
l:-3
l=:-6
l>:-4
lA:1
lF:-8
lL:-5
lN:3
lW:-5
lX:-4
ll:-7
long:1
lv:-7
lw:-4
l~ and:-7
l~ as:-7
l~ but:2
l~ by:-6
l~ for:1
l~ from:3
l~ goes:-4
l~ i:-7
l~ in:-9
l~ is:-2
l~ it:-2
l~ left:-6
l~ of:-2
l~ on:1
l~ right:-3
l~ so:-9
l~ the:-7
l~ was:-5
l~ with:2
l~L:-12
l~t:-6
no figure:-5
no name:-6
r%:-8
r0:1
r:3
r=:-8
r>:-4
rA:1
rF:9
rK:2
rW:-2
rt:-6
r~ as:-10
r~ by:2
r~ that:4
r~ the:-2
r~F:4
r~K:2
short:-7
t%:-4
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
tU:-6
tX:-5
tb:-4
td:-1
te:-9
tl:-8
tt:-2
tv:-2
tw:-2
t~ ::1
t~ =:-6
t~ ?:-8
t~ a:-4
t~ add:-2
t~ added:2
t~ after:-6
t~ ago:-8
t~ all:-4
t~ and:-2
t~ at:-4
t~ because:-12
t~ before:4
t~ blend:-2
t~ both:-4
t~ but:1
t~ by:-6
t~ can:-3
t~ cook:-3
t~ cover:-2
t~ cure:-1
t~ cured:-2
t~ cut:-1
t~ day:-2
t~ did:-2
t~ each:-1
t~ edges:-5
t~ flat:-4
t~ for:2
t~ from:-6
t~ gel:-3
t~ i:-4
t~ if:-5
t~ in:-9
t~ into:-7
t~ is:-6
t~ it:-5
t~ ive:-5
t~ later:-8
t~ lid:-5
t~ lined:-1
t~ loaf:-3
t~ long:-2
t~ makes:-1
t~ mash:-2
t~ melt:4
t~ mine:-6
t~ mix:-4
t~ mould:-2
t~ my:-5
t~ no:-4
t~ now:-7
t~ of:3
t~ off:-3
t~ oils:-1
t~ old:2
t~ on:-8
t~ or:-4
t~ paste:-7
t~ pot:4
t~ pour:-4
t~ ready:-4
t~ rest:-8
t~ since:-4
t~ so:-2
t~ still:-6
t~ stir:-1
t~ stirr:-5
t~ the:-5
t~ then:-5
t~ they:-2
t~ till:-3
t~ to:-6
t~ trace:-5
t~ try:-2
t~ under:-1
t~ unmould:-4
t~ until:-4
t~ used:-2
t~ wait:-3
t~ was:-6
t~ we:-5
t~ weigh:-2
t~ went:-6
t~ when:-5
t~ which:-2
t~ with:1
t~ yes:2
t~ zap:-1
t~0:-1
t~=:-2
t~A:-5
t~F:-2
t~K:-1
t~L:-2
t~S:-1
t~U:-4
t~W:1
t~X:-6
t~b:-4
t~d:-2
t~t:-5
v0:-5
v=:2
vA:4
vC:1
vF:-3
vK:6
vL:3
vN:8
vS:-3
vW:5
vX:-4
vb:-2
vd:-1
vl:-5
vt:3
v~ a:-4
v~ and:-5
v~ at:-3
v~ bottle:-1
v~ can:-10
v~ for:-5
v~ i:3
v~ in:-2
v~ is:-7
v~ of:3
v~ one:-3
v~ or:-1
v~ pot:-8
v~ so:-2
v~ to:4
v~C:4
v~S:-1
v~W:2
v~X:-2
w%:-5
w<:-10
w=:-6
w>:2
wA:-3
wC:7
wF:-1
wI:-4
wL:-3
wN:1
wS:-6
wW:-2
wX:2
wb:1
wd:4
wl:-13
wt:-11
wv:-1
ww:-2
w~ ::-7
w~ a:2
w~ after:-8
w~ and:-1
w~ as:-5
w~ at:-6
w~ before:-8
w~ but:-10
w~ cubes:-7
w~ dissolv:1
w~ empty:-1
w~ for:-2
w~ fresh:-7
w~ from:-9
w~ frozen:-3
w~ goes:-8
w~ i:-1
w~ in:-5
w~ instead:-13
w~ into:-8
w~ it:1
w~ left:-8
w~ loaf:-4
w~ more:-2
w~ mould:2
w~ no:-3
w~ now:-8
w~ of:1
w~ on:-3
w~ one:-1
w~ or:-3
w~ out:-8
w~ per:3
w~ so:-2
w~ steps:-1
w~ the:-6
w~ to:-4
w~ together:-7
w~ too:1
w~ was:5
w~ went:2
w~ wet:-6
w~ with:-7
w~0:2
w~C:3
w~I:2
w~L:-9
w~N:-1
w~S:-5
w~X:-5
w~w:-3`;
