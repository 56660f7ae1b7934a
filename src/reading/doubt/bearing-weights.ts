/** What each sign of a note weighs for its bearing on the pot and against it, in tenths of a logit: learned, `npm run generate:bearing`. */
export const weights = ` *:-7
 *~A:-7
 *~F:-3
 +:2
 +~ a:-5
 +~0:5
 +~<:-1
 +~=:-3
 +~A:-5
 +~F:-8
 +~W:-6
 .:6
 .~%:5
 .~0:4
 ::1
 :~ a:2
 :~ about:-5
 :~ all:7
 :~ as:-2
 :~ cook:-1
 :~ cut:-7
 :~ do:-2
 :~ does:-2
 :~ g:-3
 :~ goggl:-5
 :~ good:-5
 :~ half:6
 :~ i'd:4
 :~ i:4
 :~ in:3
 :~ is:-8
 :~ it:1
 :~ ive:1
 :~ kitchen:2
 :~ me:-8
 :~ melt:-9
 :~ no:2
 :~ none:6
 :~ one:-7
 :~ please:-3
 :~ re:-3
 :~ soap:-6
 :~ the:-2
 :~ too:3
 :~ was:-4
 :~ weigh:1
 :~ what:3
 :~ why:-3
 :~ winter:-2
 :~ with:1
 :~ yes:5
 :~%:-7
 :~0:-6
 :~<:-3
 :~=:-5
 :~>:-8
 :~A:-1
 :~L:-1
 :~N:1
 :~S:-4
 :~T:-3
 :~W:-3
 :~X:-1
 :~b:-5
 :~d:-4
 :~e:-1
 :~l:-9
 :~r:-8
 :~t:-5
 :~v:-6
 :~w:2
 =:-2
 =~ =:-6
 =~0:-4
 =~=:-5
 =~>:-1
 =~e:-1
 =~l:-7
 =~w:-6
 ?:-4
 a:-2
 about:-2
 about~ a:5
 about~ an:-5
 about~ it:-2
 about~ my:-4
 about~ right:-2
 about~ superfat:-8
 about~ the:4
 about~ to:-4
 about~%:-4
 about~0:-1
 about~<:5
 about~>:-3
 about~F:-5
 about~b:3
 about~d:-2
 about~t:-6
 about~v:4
 about~w:4
 above:6
 above~ is:4
 above~d:-6
 abt:-7
 accident:4
 accord:6
 accord~ to:6
 account:6
 acros:2
 acros~ the:6
 actual:9
 actual~N:4
 added:7
 added~ a:1
 added~ another:-3
 added~ at:-9
 added~ it:3
 added~ the:3
 added~ to:-8
 added~<:-10
 added~=:-10
 added~v:6
 added~w:2
 adds:-10
 adds~ up:-8
 add~ a:3
 add~ it:-8
 add~ the:-4
 add~ to:3
 add~<:-4
 add~=:-4
 add~F:1
 add~w:-7
 advice:3
 afraid:2
 afresh:-8
 after:1
 afternoon:3
 afterward:-2
 after~ a:-2
 after~ about:-2
 after~ an:1
 after~ christma:-6
 after~ cook:2
 after~ cure:-2
 after~ i:2
 after~ it:7
 after~ pour:3
 after~ strain:3
 after~ that:-2
 after~ the:-1
 after~ this:-9
 after~0:-8
 after~t:-5
 again:-2
 against:4
 against~ the:6
 again~ ::2
 again~ ?:-3
 again~ after:-2
 again~ and:-10
 again~ at:-3
 again~ for:-7
 again~ so:1
 again~ with:6
 age:-9
 ages:-2
 ages~ to:-4
 ago:-9
 ago~ and:-3
 agre:-5
 agree:-6
 agree~ with:-3
 aim:5
 aim~ for:5
 air:-3
 aisle:2
 aleppo:-3
 alike:6
 alkali:-6
 all:1
 allergen:-5
 allergic:8
 allergic~ to:-7
 allergy:6
 allotment:-4
 allow:-6
 all~ ::-4
 all~ ?:1
 all~ and:4
 all~ at:4
 all~ but:7
 all~ by:-9
 all~ day:-8
 all~ down:8
 all~ fats:-9
 all~ fine:-5
 all~ first:2
 all~ g:-9
 all~ good:-7
 all~ grams:-7
 all~ i:3
 all~ in:-3
 all~ into:2
 all~ is:-8
 all~ its:3
 all~ my:-5
 all~ of:-2
 all~ on:-8
 all~ over:-7
 all~ right:-9
 all~ that:-3
 all~ the:-3
 all~ there:4
 all~ this:4
 all~ together:-8
 all~ told:-3
 all~ up:-5
 all~ week:3
 all~ weigh:-2
 all~0:1
 all~=:-5
 all~F:4
 all~L:-2
 all~W:2
 all~b:-2
 all~e:9
 almost:2
 alone:-2
 alone~ is:2
 along:9
 along~ the:1
 along~ with:5
 already:8
 already~ dissolv:6
 already~ in:3
 already~ mixed:-2
 already~ pour:-6
 already~ put:8
 already~ so:2
 alright:-5
 alright~ ?:-2
 alright~ for:-5
 also:2
 also~ a:-2
 also~=:-7
 also~w:5
 alter:4
 although:4
 altogether:-8
 alu:-1
 aluminium:-2
 alway:-2
 alway~ a:-6
 alway~ did:-6
 alway~ said:-5
 alway~ with:6
 am:2
 american:-8
 ammonia:-6
 amount:3
 amount~ ?:-4
 amount~ g:-4
 amount~ of:-2
 am~ a:-5
 am~ from:-7
 am~ i:-2
 am~ mak:-7
 am~0:-7
 an:-3
 and~ a:-4
 and~ about:-6
 and~ add:-7
 and~ added:-6
 and~ after:-2
 and~ again:3
 and~ all:9
 and~ an:-6
 and~ another:-8
 and~ asked:-5
 and~ at:-8
 and~ bang:-1
 and~ blend:-7
 and~ both:-3
 and~ by:1
 and~ call:2
 and~ came:-8
 and~ check:1
 and~ clear:-2
 and~ cook:3
 and~ cool:4
 and~ couldnt:-2
 and~ cut:-1
 and~ did:-1
 and~ do:-2
 and~ does:-3
 and~ dont:-7
 and~ even:2
 and~ every:-5
 and~ everyth:-1
 and~ fill:5
 and~ for:1
 and~ forgot:-5
 and~ found:4
 and~ gave:2
 and~ give:1
 and~ glov:-1
 and~ go:-2
 and~ goggl:-2
 and~ got:-8
 and~ had:-1
 and~ half:-8
 and~ hard:-4
 and~ has:4
 and~ have:-5
 and~ he:1
 and~ her:-4
 and~ his:-7
 and~ honest:-7
 and~ how:-8
 and~ i'd:-1
 and~ i:5
 and~ if:4
 and~ in:-2
 and~ into:4
 and~ is:-1
 and~ it:-3
 and~ itll:-5
 and~ its:-5
 and~ keep:-7
 and~ kept:1
 and~ last:-2
 and~ leave:-1
 and~ left:4
 and~ let:-5
 and~ looks:-1
 and~ lost:-1
 and~ me:-2
 and~ melt:-6
 and~ mine:1
 and~ mixed:-2
 and~ neither:3
 and~ never:-2
 and~ nobody:-1
 and~ none:5
 and~ not:1
 and~ noth:-3
 and~ now:2
 and~ of:3
 and~ off:-4
 and~ once:-2
 and~ one:-1
 and~ only:3
 and~ open:-5
 and~ pour:1
 and~ put:3
 and~ said:-6
 and~ says:2
 and~ see:-4
 and~ she:-2
 and~ since:2
 and~ smell:-1
 and~ so:2
 and~ soap:-5
 and~ some:2
 and~ someth:7
 and~ sprinkle:-2
 and~ start:-4
 and~ stay:-3
 and~ still:-1
 and~ stir:1
 and~ stirr:-9
 and~ straight:-6
 and~ strain:-4
 and~ stuck:7
 and~ swear:-6
 and~ swirl:2
 and~ tell:-5
 and~ that:5
 and~ the:-2
 and~ then:4
 and~ ther:2
 and~ there:5
 and~ they:-6
 and~ this:4
 and~ those:2
 and~ tipp:8
 and~ to:-4
 and~ together:2
 and~ took:9
 and~ turn:-3
 and~ use:4
 and~ used:3
 and~ wait:-3
 and~ want:-5
 and~ wants:-3
 and~ warm:-1
 and~ was:2
 and~ we:1
 and~ went:-5
 and~ whats:1
 and~ when:-2
 and~ whether:-5
 and~ white:-8
 and~ will:-3
 and~ with:-3
 and~ work:3
 and~ would:-6
 and~ yes:-2
 and~ you:-1
 and~%:-3
 and~0:1
 and~<:1
 and~=:-4
 and~>:-1
 and~A:-2
 and~B:-1
 and~F:-4
 and~L:-4
 and~N:8
 and~S:-5
 and~X:1
 and~b:-11
 and~e:-1
 and~l:-6
 and~t:-6
 and~v:3
 and~w:-5
 anew:-6
 another:3
 another~ day:-6
 another~0:10
 another~<:3
 another~t:-7
 another~v:-2
 another~w:-8
 answer:-4
 answer~ ::-5
 answer~ is:-2
 answer~ the:4
 any:-1
 anybody:1
 anyhow:-5
 anyone:-8
 anyone~ know:2
 anyone~ tried:-4
 anyth:-5
 anyth~ else:1
 anyth~ in:-3
 anyth~ off:-4
 anyth~ wrong:-3
 anyway:-4
 anywhere~ near:-6
 any~ more:-1
 any~A:-2
 any~S:-6
 an~ earlier:-7
 an~ envelope:-5
 an~ extra:5
 an~ eye:-2
 an~ hour:-8
 an~ old:-5
 an~ older:-2
 an~I:-7
 an~L:4
 apart:-10
 app:-1
 app~ puts:-3
 april:-1
 apron:-6
 are:-2
 arent:2
 are~ a:-2
 are~ dry:5
 are~ for:3
 are~ from:-1
 are~ full:-1
 are~ in:-5
 are~ no:-7
 are~ not:-7
 are~ now:2
 are~ only:-5
 are~ right:-3
 are~ still:-10
 are~ the:-3
 are~0:3
 are~=:-3
 are~>:-3
 are~F:-2
 argu:-9
 arithmetic:-7
 arm:-7
 around:-4
 around~ the:-4
 around~%:2
 around~0:-4
 around~d:-3
 arriv:-6
 as:3
 ash:-10
 ashes:-7
 ash~ and:-6
 ash~ on:-8
 ash~ or:-2
 aside:-5
 ask:-4
 asked:-7
 asked~ about:-6
 asked~ for:-1
 asked~ if:-5
 asked~ in:-1
 asked~ whether:-4
 asks:-8
 ask~ ::-2
 ask~ about:-7
 ask~ for:-7
 ask~ her:-1
 ask~ if:-1
 ask~ you:-5
 asleep:-7
 assay:8
 as~ a:1
 as~ alway:7
 as~ anyth:-5
 as~ before:6
 as~ ever:-7
 as~ far:-4
 as~ i:4
 as~ if:4
 as~ in:-2
 as~ is:7
 as~ it:-4
 as~ list:-5
 as~ long:-8
 as~ much:1
 as~ my:-2
 as~ on:-6
 as~ one:1
 as~ plann:-8
 as~ print:7
 as~ promis:-6
 as~ she:-1
 as~ snow:-4
 as~ the:3
 as~ they:-6
 as~ well:3
 as~ written:-4
 as~ you:-9
 as~%:1
 as~0:2
 as~A:3
 as~I:-10
 as~L:-4
 as~X:-5
 at:-2
 ate:4
 attempt:-6
 attempt~0:-5
 attic:-3
 at~ a:-7
 at~ about:1
 at~ all:-2
 at~ around:-4
 at~ christma:-2
 at~ church:-7
 at~ day:-8
 at~ easter:-6
 at~ first:-6
 at~ half:-7
 at~ home:2
 at~ hour:1
 at~ it:5
 at~ least:-3
 at~ light:2
 at~ liquid:-3
 at~ me:3
 at~ minute:-2
 at~ my:-2
 at~ once:-3
 at~ our:-6
 at~ room:-5
 at~ rough:-1
 at~ school:-6
 at~ the:1
 at~ thin:-7
 at~ this:-7
 at~ trace:6
 at~ week:-6
 at~ work:-1
 at~%:3
 at~0:-4
 at~<:6
 at~=:-9
 at~b:1
 at~d:-4
 at~e:3
 at~l:-5
 at~t:-10
 at~w:-3
 august:3
 aunt:-4
 aunti:-5
 auntie:-3
 aunts:3
 aunt~ in:-6
 aunt~ says:-6
 autumn:-9
 average:-3
 away:-2
 away~ and:1
 awful:1
 a~ ::-8
 a~ bad:-10
 a~ bag:4
 a~ bar:-9
 a~ batch:-8
 a~ battery:1
 a~ beginner:-3
 a~ big:1
 a~ bigger:-1
 a~ bit:-2
 a~ blanket:-4
 a~ blend:8
 a~ block:6
 a~ bottle:-1
 a~ bowl:-9
 a~ box:-5
 a~ bucket:-5
 a~ can:3
 a~ candle:-7
 a~ carton:-1
 a~ cheese:-7
 a~ chip:-5
 a~ class:-5
 a~ clean:2
 a~ cold:-7
 a~ cool:-1
 a~ corner:-8
 a~ cow:1
 a~ crack:-3
 a~ crisp:-5
 a~ crumb:-6
 a~ crust:8
 a~ customer:-3
 a~ dark:-5
 a~ day:-3
 a~ different:-3
 a~ double:-1
 a~ drawer:-5
 a~ dream:-3
 a~ drop:3
 a~ dry:-7
 a~ face:-7
 a~ fair:6
 a~ fami:-5
 a~ fan:-3
 a~ farm:2
 a~ few:5
 a~ fifth:2
 a~ finger:-7
 a~ first:-3
 a~ fresh:-1
 a~ friend:-2
 a~ full:-2
 a~ girl:-4
 a~ glass:4
 a~ glug:4
 a~ good:11
 a~ half:3
 a~ handful:-2
 a~ heap:9
 a~ hole:-3
 a~ hot:-1
 a~ hurry:-8
 a~ jam:-6
 a~ jar:1
 a~ jug:-2
 a~ knob:7
 a~ ladle:4
 a~ lady:-5
 a~ laundry:-7
 a~ library:-4
 a~ lid:-3
 a~ lidd:-2
 a~ line:1
 a~ list:1
 a~ little:4
 a~ loaf:-4
 a~ look:-7
 a~ lot:-6
 a~ love:-6
 a~ lump:6
 a~ man:-3
 a~ milk:-1
 a~ minute:-6
 a~ mix:7
 a~ month:-8
 a~ mould:-6
 a~ mug:7
 a~ new:-7
 a~ nice:-2
 a~ night:-6
 a~ number:-2
 a~ page:-6
 a~ paper:-3
 a~ paste:-1
 a~ pdf:-3
 a~ pencil:-7
 a~ photo:-8
 a~ piece:1
 a~ pinch:-2
 a~ plain:-9
 a~ pot:1
 a~ problem:-1
 a~ proper:-4
 a~ puddle:3
 a~ quarter:6
 a~ question:-3
 a~ reader:-6
 a~ ready:3
 a~ recipe:-2
 a~ rock:-4
 a~ round:-2
 a~ row:-8
 a~ scale:-7
 a~ second:-2
 a~ sensible:-3
 a~ shade:-4
 a~ shoe:-4
 a~ shoebox:-4
 a~ silicone:-6
 a~ sink:-4
 a~ skin:-3
 a~ skull:-6
 a~ slip:2
 a~ slow:-5
 a~ small:1
 a~ smaller:-4
 a~ soap:-7
 a~ soft:-6
 a~ softer:-4
 a~ spatula:-5
 a~ spill:-1
 a~ splash:6
 a~ spoon:-3
 a~ spoonful:-3
 a~ steel:-6
 a~ stick:3
 a~ stir:-4
 a~ superfat:2
 a~ tenth:5
 a~ thermometer:-5
 a~ thin:-3
 a~ thing:-5
 a~ third:3
 a~ time:-7
 a~ tin:1
 a~ tiny:5
 a~ touch:-3
 a~ towel:-1
 a~ tray:-5
 a~ treat:-6
 a~ tub:-6
 a~ twentieth:4
 a~ typo:2
 a~ very:-7
 a~ video:-3
 a~ volcano:-3
 a~ warm:-5
 a~ water:-2
 a~ week:-9
 a~ wet:1
 a~ white:-1
 a~ whole:2
 a~ wire:-2
 a~ woman:-6
 a~ year:-7
 a~ yes:-3
 a~ zap:-5
 a~%:2
 a~0:4
 a~<:5
 a~=:-6
 a~>:2
 a~A:-5
 a~F:-2
 a~K:-2
 a~L:-4
 a~N:8
 a~X:2
 a~b:3
 a~e:-7
 a~r:3
 a~t:-5
 a~v:-1
 a~w:3
 b:-1
 babcia:-5
 babi:-7
 baby:2
 baby~ bar:-6
 baby~ shower:-3
 back:-4
 background:-4
 back~ ::-6
 back~ a:1
 back~ and:4
 back~ at:-4
 back~ for:1
 back~ in:-7
 back~ into:1
 back~ of:-4
 back~ on:-8
 back~ out:6
 back~ till:10
 back~ to:-7
 back~ up:7
 bacon:-5
 badly:-2
 bad~ ?:-4
 bag:4
 bags:-4
 bag~ of:6
 bag~ says:-3
 bak:-7
 bakery:-7
 bak~ paper:-7
 balanc:-4
 balance:4
 balanc~ ?:-4
 balcony:2
 balls:-6
 balm:-6
 bang:-8
 bang~ it:-4
 bar:-5
 bare:-6
 bare~ got:-2
 bark:1
 barn:-4
 barrel:-5
 bars:-9
 bars~ +:-8
 bars~ ::-3
 bars~ about:-1
 bars~ and:-5
 bars~ are:-4
 bars~ at:-2
 bars~ came:-1
 bars~ come:-4
 bars~ each:-4
 bars~ for:-6
 bars~ from:-6
 bars~ i:-2
 bars~ in:-5
 bars~ of:-5
 bars~ on:-6
 bars~ out:-8
 bars~ so:-3
 bars~ to:-6
 bars~ went:-7
 bars~ were:2
 bars~ with:-8
 bars~0:-7
 bars~t:-4
 bars~w:-4
 bar~ ::-2
 bar~ ?:-7
 bar~ all:-3
 bar~ and:-2
 bar~ at:-4
 bar~ costs:-4
 bar~ for:-8
 bar~ from:-6
 bar~ i:1
 bar~ in:-3
 bar~ is:2
 bar~ no:-2
 bar~ of:-7
 bar~ since:-1
 bar~ v:-7
 bar~ with:3
 bar~0:-3
 base:-2
 basic:-5
 bastille:-8
 batch:-4
 batch~ ::-2
 batch~ and:-7
 batch~ before:-7
 batch~ but:2
 batch~ ever:2
 batch~ from:-6
 batch~ had:-2
 batch~ i:2
 batch~ in:2
 batch~ is:2
 batch~ log:-3
 batch~ no:-3
 batch~ of:-5
 batch~ record:-2
 batch~ sheet:-6
 batch~ that:-1
 batch~ this:4
 batch~ was:-6
 batch~ with:-4
 batch~0:-6
 bath:-9
 bathroom:4
 bathroom~ scale:7
 batter:-4
 batteri:-4
 battery:4
 battery~ died:7
 batter~ in:-4
 bazaar:-4
 bc:8
 bc~ i:4
 be:3
 beach:-6
 beads:5
 beaker:4
 beaker~ and:-7
 bear:-7
 beard:-5
 bear~ with:-7
 beat:-3
 beat~ in:-5
 beautiful:-5
 became:3
 became~0:8
 because:1
 because~ a:-4
 because~ he:-8
 because~ i:-3
 because~ it:5
 because~ its:-4
 because~ last:2
 because~ my:3
 because~ of:-3
 because~ she:-2
 because~ thats:1
 because~ the:3
 because~F:-8
 bed:-7
 bee:-7
 beech:-3
 beef:-7
 beef~=:-5
 beekeeper:-7
 been:2
 been~ at:5
 been~ mak:-7
 been~ on:-6
 been~ open:7
 been~ stand:4
 been~ told:-5
 been~t:-1
 bees:-4
 before:-1
 beforehand:-5
 before~ and:3
 before~ anyone:-6
 before~ i:-4
 before~ me:2
 before~ pour:6
 before~ saturday:-4
 before~ she:-1
 before~ so:-9
 before~ that:-6
 before~ the:3
 before~ they:-7
 before~ this:-10
 before~ we:-2
 before~ weigh:-8
 before~ with:-6
 before~ you:-12
 before~t:-6
 began:-5
 begin:-6
 beginn:-1
 beginner':-5
 beginner:-10
 behav:-6
 behind~ the:4
 beige:-7
 being:-2
 believe:-1
 belong:-2
 belong~ to:3
 below:-4
 below~ the:-4
 below~d:-5
 bench:3
 besid:5
 beside:5
 beside~ it:3
 beside~ the:-1
 besid~ the:6
 best:-10
 best~ before:-6
 bet:-5
 better:-4
 better~ than:3
 between:-2
 between~ the:5
 between~0:8
 be~ ?:-7
 be~ a:6
 be~ about:-7
 be~ bother:3
 be~ clear:-5
 be~ cut:-3
 be~ exact:6
 be~ for:2
 be~ gentle:-2
 be~ honest:-2
 be~ hot:-3
 be~ in:-8
 be~ mild:-5
 be~ ok:-3
 be~ on:4
 be~ patient:-8
 be~ right:2
 be~ so:-8
 be~ sure:-4
 be~ the:-6
 be~ too:-6
 be~%:-12
 be~0:4
 be~A:-6
 be~N:5
 be~b:7
 be~e:10
 be~w:4
 bicycle:-6
 big:2
 bigger:2
 bigger~ pot:-3
 bigger~ than:4
 big~ batch:-8
 big~ kettle:4
 big~ one:3
 big~ pot:-5
 bin:-3
 binn:1
 bin~ it:-3
 birds:-3
 birthday:-5
 biscuit:-8
 bit:1
 bite:-5
 bites:-3
 bits~ of:2
 bit~ and:1
 bit~ at:-5
 bit~ by:-2
 bit~ greasy:-2
 bit~ like:-4
 bit~ more:2
 bit~ of:3
 bit~ on:-7
 bit~ over:-6
 bit~ slimy:-2
 bit~ so:-4
 bit~ soft:-5
 bit~ the:1
 bit~ under:-1
 bit~ zappy:-3
 black:-2
 blame:-8
 blame~ the:-6
 blanket:-7
 blend:-1
 blender:-5
 blender~ and:-5
 blender~ died:-3
 blender~t:-4
 blend~ and:-7
 blend~ at:-1
 blend~ for:-2
 blend~ pour:-3
 blend~ till:-5
 blend~ to:-3
 blend~ with:6
 blend~t:-5
 blind:3
 blink:-2
 blob:-2
 block~ of:-1
 blog:3
 blog~ draft:-4
 blog~ i:-1
 blood:-6
 blue:-1
 board:2
 boat:3
 body:-1
 boiler:-7
 boil~ and:-12
 boil~ down:-3
 boil~ flat:6
 boil~ in:5
 boil~ it:-7
 boil~ off:4
 boil~ over:5
 boil~ the:-2
 bonjour:-4
 bonsoir:-4
 book:-4
 book~ ::-2
 book~ i:1
 book~ says:-6
 born:-5
 borrow:-2
 boss:-2
 bother:-5
 bother~ to:2
 bother~ with:3
 both~ alkali:-5
 both~ are:-10
 both~ at:1
 both~ feel:-1
 both~ lyes:-1
 both~ of:2
 both~ times:-7
 both~ units:-4
 both~ went:-8
 both~ were:-6
 bottl:-5
 bottle:4
 bottle~ and:4
 bottle~ before:-5
 bottle~ gave:4
 bottle~ in:-6
 bottle~ is:6
 bottle~ of:-2
 bottle~ on:-3
 bottle~ ran:-1
 bottle~ said:6
 bottle~ says:7
 bottle~ was:11
 bottle~ with:-2
 bottl~ of:-4
 bottom~ of:2
 bought:-3
 bought~ a:-4
 bought~ the:-8
 bought~0:-9
 bought~>:-9
 bought~F:1
 bowl:-1
 bowls:2
 bowl~ and:-2
 bowl~ by:-5
 bowl~ in:-10
 bowl~ is:-5
 bowl~ of:1
 bowl~ on:1
 bowl~ with:-4
 bowl~w:4
 box:-2
 boxes:-5
 box~ and:-3
 box~ lined:-2
 box~ with:-4
 box~t:-1
 boy:-2
 boyfriend:-1
 boys:4
 brand:-6
 brand~ new:-6
 brave:-4
 bread:-2
 break:-8
 breakfast:-1
 breathe:-4
 brewery:-4
 brick:-2
 brim:-1
 bring:-12
 bring~ it:-4
 bring~ the:-8
 broke:1
 broken:4
 brother':1
 brother:-1
 brother~ in:-7
 brought:6
 brown:-7
 brown~ paper:-5
 brush:-3
 btw:4
 bubbl:-5
 bubble:-3
 bubbl~ and:2
 bucket:-4
 bucket~ of:-8
 bucket~ so:-4
 bucket~ with:-7
 burn:-7
 burnt:-2
 burst:-4
 burst~ of:-2
 bus:-2
 but:-2
 butcher:-4
 butcher~ gave:-7
 button:-6
 but~ a:1
 but~ before:-1
 but~ first:-1
 but~ he:-3
 but~ here:-7
 but~ i'd:-3
 but~ i:1
 but~ im:-8
 but~ is:-8
 but~ it:-7
 but~ its:1
 but~ no:4
 but~ not:-5
 but~ now:-3
 but~ only:-7
 but~ she:-5
 but~ that:-7
 but~ thats:-4
 but~ the:8
 but~ then:3
 but~ there:-5
 but~ they:-5
 but~ those:-6
 but~0:1
 but~F:-8
 buy:-2
 by:2
 by~ ::-7
 by~ a:6
 by~ accident:4
 by~ bit:-2
 by~ easter:-5
 by~ eye:7
 by~ hand:-8
 by~ it:-4
 by~ itself:4
 by~ me:-4
 by~ mistake:6
 by~ modern:-4
 by~ my:1
 by~ noon:-4
 by~ spoon:-6
 by~ the:3
 by~ then:-5
 by~ today:-4
 by~ volume:1
 by~ week:-6
 by~ weight:-4
 by~0:1
 by~<:6
 by~>:-4
 by~N:-3
 by~b:-2
 by~t:-6
 b~ ::4
 b~A:-4
 b~F:-7
 c:-5
 cakes:-4
 calculate:4
 calculator:-8
 call:2
 calls:-10
 calls~ it:-7
 call~ for:-1
 call~ it:6
 call~ that:4
 call~ the:-1
 call~F:4
 came~ back:3
 came~ from:-1
 came~ in:-2
 came~ off:1
 came~ out:-1
 came~ to:9
 came~ up:1
 can:-2
 candl:-8
 candle:-1
 candle~B:-2
 candl~ and:-5
 canister:-1
 cannot:-6
 cans:-2
 cant:4
 cant~ be:-2
 cant~ find:4
 cant~ get:-8
 cant~ remember:7
 cant~ say:-2
 cant~ stand:6
 can~ and:1
 can~ be:-3
 can~ bear:-3
 can~ is:4
 can~ of:5
 can~ see:1
 can~ somebody:-6
 can~ someone:-1
 can~ stand:-6
 can~ still:-3
 can~ take:-5
 can~ tell:-1
 can~ the:-3
 can~ u:1
 can~ use:-5
 cap:-2
 capping:-7
 car:-8
 caramel:-5
 carbonate:8
 card:-1
 cardboard:1
 card~ for:-3
 card~ is:4
 card~ no:-4
 card~ says:3
 care:2
 caretaker:-6
 carpet:-4
 carri:5
 carri~ it:4
 carri~ on:4
 carry:-9
 carry~ on:-2
 carton:-3
 case:-1
 cast:-7
 castile:-5
 castile~ ::-2
 castile~=:-1
 cast~ an:-2
 cat:-2
 cat~ got:4
 cat~ had:4
 cat~ has:-6
 cat~ is:-4
 caught:1
 cauldron:-3
 caviti:-7
 ceil:-6
 cellar:-10
 certain:5
 certifi:-10
 certificate:5
 chair:-5
 chang:-4
 change:-3
 change~ the:-5
 chang~ ::3
 chang~ my:7
 chang~ the:-8
 charg:-2
 charge:-5
 chat:-4
 cheap:-10
 cheaper:-6
 cheaper~ than:-5
 check:-5
 check~ ::-1
 check~ and:-6
 check~ before:2
 check~ by:-7
 check~ for:-5
 check~ i:-3
 check~ it:-6
 check~ me:-2
 check~ mine:-2
 check~ my:-7
 check~ out:-3
 check~ please:-5
 check~ pls:-4
 check~ that:-7
 check~ the:-4
 check~ this:-4
 check~A:-4
 cheese:-2
 cheese~ wire:-6
 chek:-4
 chemist:-7
 chemistry:-2
 chemistry~ teacher:3
 child:-6
 children:-6
 chill:-6
 chip:3
 chips:4
 chisel:-5
 choir:2
 choose:-5
 chopp:-3
 christma:-6
 christma~0:-7
 chuck:5
 chuck~ in:6
 church:-9
 church~ bazaar:-1
 ciao:-4
 claim:-1
 clarity:-6
 class:-3
 class~ ::-6
 class~ i:-5
 clean:-2
 clean~ the:-4
 clean~ up:5
 clean~F:-5
 clear:-8
 clearer:2
 clear~ after:-2
 clear~ and:-5
 clear~ as:-8
 clear~ at:-7
 clear~ in:-6
 clever:-7
 climb:-8
 climb~ out:-3
 climb~ to:-6
 cling:-3
 cling~ film:-3
 cling~ to:3
 clock:-3
 close:-3
 close~ to:-3
 cloth:-7
 cloud:2
 cloudy~ for:-4
 club:-2
 clubs:-6
 clump:2
 coat:-7
 code:-5
 coins:2
 cold:-7
 cold~ from:-8
 cold~ press:-6
 cold~ proces:-6
 cold~L:8
 cold~W:-6
 colleague:-7
 colloidal:2
 colour:-8
 column:-6
 com:4
 combin:2
 combine:-2
 combine~ blend:-3
 come:1
 comes~ from:-5
 comes~ in:1
 comes~ out:3
 comes~ to:1
 come~ back:-7
 come~ down:-4
 come~ off:-2
 come~ out:1
 come~ to:4
 comma:2
 comma~ i:-2
 comma~ is:-7
 comment:-10
 commit:-2
 compar:-4
 compare:-10
 compar~ with:2
 complain:-4
 complaint:-8
 complain~ about:-4
 complete:5
 component:-3
 computer:-3
 confession:-1
 confetti:-5
 confirm:-8
 confirm~ the:-5
 confus:1
 contain:7
 control:-7
 convert:-9
 cook:1
 cooker:-3
 cooker~ ::-3
 cooker~ before:3
 cooker~ for:-2
 cooker~ is:-5
 cooker~ on:-3
 cooker~ soap:-2
 cooker~ with:4
 cooks:-3
 cook~ ::-8
 cook~ ?:-6
 cook~ about:1
 cook~ and:-1
 cook~ at:-4
 cook~ for:-4
 cook~ i:-3
 cook~ in:-7
 cook~ is:5
 cook~ it:2
 cook~ off:-2
 cook~ on:-3
 cook~ once:-3
 cook~ part:-7
 cook~ so:5
 cook~ the:-6
 cook~ this:2
 cook~ until:-2
 cook~ was:-12
 cook~ when:-5
 cook~ with:2
 cook~=:-1
 cook~F:-6
 cook~t:-4
 cool:-5
 cools:-7
 cool~ down:-1
 cool~ i:-2
 cool~ it:-6
 cool~ on:-2
 cool~ the:-8
 cool~ to:-1
 cool~ under:-3
 copi:2
 copi~ from:3
 copi~ it:-1
 copi~ off:1
 copi~ out:-6
 copi~ straight:-7
 copi~ the:-1
 copy:2
 cork:-7
 corner:-11
 correction:7
 correct~ ?:-2
 correct~ for:-2
 correct~ or:-3
 cos:8
 cost:-6
 costs:-13
 costs~ me:-2
 costs~0:-5
 costs~t:-6
 cost~ ::-7
 cost~ eur:-2
 cost~ me:-3
 cost~ per:-1
 cost~ sheet:-5
 cost~0:-5
 cost~t:-3
 could:-1
 couldnt:6
 couldnt~ be:6
 couldnt~ get:6
 couldnt~ tell:3
 could~ be:9
 could~ go:-1
 could~ have:-8
 could~ not:8
 could~ somebody:-1
 could~ someone:-5
 could~ the:-8
 could~ you:-1
 council:-5
 counter:4
 countri:-6
 country:2
 country~ the:-2
 county:-6
 count~ in:-2
 count~ it:6
 count~ the:-2
 count~ with:5
 course:-7
 course~ i:-3
 course~ in:-4
 cousin:-1
 cover:-6
 cover~ cut:-1
 cover~ it:-5
 cover~ with:-6
 cow:2
 cows:-6
 cp:-5
 crack:-3
 crackl:1
 crackling:1
 crack~ along:-4
 crack~ on:-7
 crate:-8
 crazy:-8
 creamy:-7
 cried:-7
 crisp:-5
 crisp~ tube:-5
 crock:-3
 crockpot:-4
 crock~ pot:1
 cross:-2
 cross~ out:-1
 crumb:-2
 crumbl:-7
 crumble:-7
 crumb~ and:6
 crumb~ at:3
 crush:-7
 crust:9
 crystal:-3
 cubes:-6
 cubes~ and:-3
 cubes~ the:-5
 cubes~w:-5
 cup:2
 cupboard:-1
 cupboard~ and:3
 cupcake:-7
 cups:-4
 cup~ and:-8
 cup~ is:2
 cup~ weigh:-6
 cup~ with:-4
 cur:-6
 cure:-8
 cured:-5
 cured~t:-1
 cure~ ::-2
 cure~ for:-3
 cure~ till:-3
 cure~ until:-1
 cure~t:-1
 curry:-3
 custard:-7
 customer:-10
 cut:1
 cuts:-7
 cutt:-4
 cutter:-8
 cut~ ::-5
 cut~ after:-3
 cut~ at:-7
 cut~ in:-3
 cut~ into:-7
 cut~ it:2
 cut~ next:-2
 cut~ off:-2
 cut~ on:-5
 cut~ the:6
 cut~ them:-2
 cut~ too:-5
 cut~ with:-5
 cut~0:-6
 cut~b:-5
 cut~t:-2
 c~ ::-3
 c~ at:-3
 c~0:-8
 d:-5
 dad:-2
 dads:-1
 dads~t:-2
 daft:5
 dag:-2
 dag~ here:-1
 dairy:6
 damp:5
 dare:3
 dark:-11
 das:-8
 date:-7
 dates:-4
 date~ ::-2
 date~t:-5
 daughter':-10
 daughter:3
 daughter~ wants:-1
 daughter~ who:-6
 day:-3
 days:-4
 day~ and:-2
 day~ at:-6
 day~ before:2
 day~ i:-3
 day~ it:-5
 day~ so:1
 day~ the:-1
 day~ then:-3
 day~0:-3
 day~t:-5
 de:-4
 dead:-5
 deal:6
 dear:2
 dear~ all:3
 dear~ group:-5
 december:-5
 decent:-6
 decimal:-7
 deep:2
 deer:-4
 deer~ camp:-4
 degre:-5
 demineralis:-7
 demonstration:1
 dent:-8
 deodoris:-9
 diary:-4
 dictat:2
 dictat~ this:-4
 did:2
 didnt:3
 didnt~ weigh:6
 did~ and:1
 did~ i:-6
 did~ in:-8
 did~ it:-1
 did~ not:3
 did~ that:-2
 did~ the:4
 did~ this:-1
 did~ weigh:-4
 did~ you:-9
 did~=:-4
 did~e:-3
 died:1
 died~ at:4
 difference:-6
 different:-8
 digital:-8
 dilut:-5
 dilute:-8
 dilution:2
 dinner:3
 disaster:-9
 discount:2
 dish:1
 dish~ soap:5
 display:3
 display~ said:-7
 dissolv:4
 dissolve:4
 dissolve~ it:-7
 dissolve~ the:4
 dissolve~=:-7
 dissolv~ it:-2
 dissolv~ the:-1
 dissolv~ together:-1
 dissolv~<:4
 dissolv~=:-4
 do:-4
 doctor:-7
 does:-5
 doesnt:-2
 doesnt~ mind:-4
 doesnt~ smell:-4
 does~ anybody:-4
 does~ anyone:2
 does~ her:-4
 does~ hers:-1
 does~ it:-4
 does~ my:-7
 does~ not:-3
 does~ the:-4
 does~ this:-1
 does~%:-7
 does~=:2
 does~F:-6
 does~b:-5
 does~w:2
 dog:1
 dogs:-6
 dog~ got:8
 doing:2
 doing~ it:-4
 doing~ the:2
 doing~ this:3
 done:-5
 done~ i:-7
 done~ it:-1
 dont:-3
 dont~ ask:5
 dont~ be:-4
 dont~ care:3
 dont~ dare:-8
 dont~ get:5
 dont~ have:-5
 dont~ know:6
 dont~ laugh:-2
 dont~ panic:-7
 dont~ trust:-5
 dont~ want:-8
 door:-3
 doorbell:3
 doors:-8
 dos:-2
 dose:9
 dosed:5
 dose~ of:9
 dot:-6
 doubl:8
 double:-7
 double~ boiler:-6
 double~ check:-3
 doubl~ the:-1
 down:1
 down~ and:-4
 down~ by:5
 down~ from:2
 down~ the:-1
 down~ to:2
 down~ with:3
 do~ ?:-6
 do~ a:-4
 do~ for:-6
 do~ i:2
 do~ in:-9
 do~ it:-1
 do~ my:-2
 do~ not:-7
 do~ that:3
 do~ the:-5
 do~ this:-5
 do~ we:-3
 do~ with:-6
 do~ you:-6
 do~0:-6
 do~F:-4
 draft:-8
 drag:-6
 drain:3
 drama:-5
 drank:6
 draw:1
 drawer:-2
 drawer~ lined:-2
 drawn:3
 dream:-5
 dress:-9
 drew:-7
 dried:-2
 drill:-4
 drink:-5
 drip:-7
 drips:-9
 drop:-1
 dropp:5
 dropp~ below:-4
 dropp~ the:2
 drops:-2
 drops~ of:2
 drop~ of:3
 drop~ the:-6
 drop~ to:-2
 drove:-4
 drown:-5
 drum:5
 dry:2
 dry~ cup:-2
 dry~ hands:4
 dry~ skin:-6
 dry~ so:2
 dry~ until:3
 duck:-6
 dump:-4
 dur:4
 dust:4
 e:-5
 each:-2
 each~ and:-4
 each~ of:-4
 each~ other:-8
 each~ time:-8
 earlier:-5
 early:-10
 easi:3
 easier:-7
 easter:-5
 easy:-8
 eat:-2
 eats:-8
 eczema:2
 edge:-3
 edges:-1
 edit:1
 edition:1
 edit~ ::1
 either:2
 elbow:-5
 else~ in:1
 else~ no:-2
 empti:4
 empty:-2
 empty~ and:-4
 empty~ bowl:-7
 empty~ jug:-4
 empty~ pot:-1
 empty~w:-2
 emulsion:-6
 enamel:-9
 enamel~ pot:-5
 end:3
 ended:5
 ended~ up:-2
 ends:-9
 end~ ?:-3
 end~ after:1
 end~ and:4
 end~ i:-1
 end~ is:-10
 end~ it:10
 end~ of:-2
 end~ piece:-8
 end~ up:-9
 end~ with:-6
 english:-3
 english~ i:-4
 english~ is:-5
 enough:-2
 enough~ ?:-4
 enough~ for:-5
 enough~ or:-6
 enough~ to:-3
 enough~A:-3
 enough~F:-5
 entire:-5
 entry:-4
 envelope:-5
 equal:1
 equal~ parts:2
 equal~ weight:-6
 error:-2
 eur:-3
 euro:-6
 even:-7
 evening:-4
 even~ all:-4
 even~ class:-4
 even~ from:-2
 even~ in:-4
 ever:-11
 every:-3
 everybody:-9
 everyday:-4
 everyday~ bar:-3
 everyone:-6
 everyone~ who:2
 everyth:3
 everyth~ ::-3
 everyth~ and:-5
 everyth~ at:2
 everyth~ else:2
 everyth~ in:-6
 everyth~ is:3
 everyth~ was:-3
 everyth~ weigh:-10
 everywhere:-5
 every~ one:5
 every~ time:1
 every~t:-6
 ever~ batch:-4
 ex:-5
 exact:-7
 exact~ as:-10
 exact~ one:-1
 exact~ this:-5
 exam:-5
 excel:-5
 except:5
 except~ that:-1
 except~ the:2
 exces:2
 excuse:-6
 excuse~ my:-3
 excuse~ the:-6
 expect:-3
 expensive:-3
 explain:-1
 export:-4
 export~ from:-3
 extra:6
 extra~ fat:7
 extra~ virgin:-5
 extra~A:-4
 extra~F:-4
 eye:5
 eyebrow:-7
 eyes:-4
 eyes~ on:-1
 eye~ over:-2
 f:-6
 face:-6
 faces:-6
 face~ bar:-4
 facial:3
 facial~ bar:-5
 fact:6
 faded:-8
 fades:-4
 fail:2
 fails:-3
 fail~ me:-3
 faint:-7
 faint~ of:-5
 fair:3
 fair~ ::-4
 falls:-6
 false:-7
 false~ trace:-7
 fami:-1
 famili:-7
 fan:-6
 fancy:6
 far:-3
 farm~ shop:3
 far~ as:-4
 fast:-9
 faster:3
 faster~ than:-6
 fat:4
 father:-2
 father~ in:3
 fats~ ::-3
 fats~ ?:-3
 fats~ and:-1
 fats~ are:-3
 fats~ at:-4
 fats~ in:-8
 fats~ is:-6
 fats~ melt:-1
 fats~ or:-5
 fats~ were:-6
 fatty:1
 fat~ ::1
 fat~ ?:-7
 fat~ and:2
 fat~ g:-4
 fat~ grams:-5
 fat~ in:-3
 fat~ is:2
 fat~ left:4
 fat~ of:-9
 fat~ so:-2
 fat~ was:-7
 fault:-7
 favour:2
 feb:-5
 february:-7
 feed~ store:3
 feel:1
 feels:-7
 feels~ a:-4
 feels~ like:-5
 feet:1
 fell:-3
 fell~ in:1
 fell~ on:1
 felt:-1
 felt~ like:-3
 fence:-5
 fete:2
 few:6
 few~ drops:-8
 field:-8
 fifth:1
 fifth~ of:9
 fig:-6
 fight:3
 figur:4
 figure:7
 file:2
 files:-5
 fill:3
 fills:-7
 fills~ my:-8
 fills~ the:-1
 fills~0:-3
 fill~ in:-6
 fill~ it:-1
 fill~ the:4
 fill~ to:3
 fill~ up:5
 fill~0:2
 film:-6
 film~ on:-4
 filter:-3
 find:7
 finds:-4
 find~ the:3
 find~F:1
 fine:-5
 finer:-6
 fine~ ?:-4
 fine~ and:-2
 fine~ but:-5
 fine~ for:-6
 fine~ or:-5
 finger:2
 finish:2
 finish~ paste:-6
 finish~ with:6
 fire:-9
 firm:5
 firmer:-1
 first:-4
 first~ ::-1
 first~ and:-3
 first~ attempt:-6
 first~ batch:1
 first~ ever:-4
 first~ go:-2
 first~ hour:-3
 first~ i:-2
 first~ in:-3
 first~ it:-4
 first~ lot:5
 first~ one:-1
 first~ so:7
 first~ soap:-3
 first~ the:-2
 first~ then:-10
 first~ time:3
 first~ timer:-2
 first~ to:-3
 first~ try:-5
 first~ went:-3
 first~0:2
 first~t:3
 fish:-2
 fit:-3
 fits:-4
 fits~ ?:-3
 fits~ the:-5
 fit~ the:2
 fixed:-9
 fizz:-2
 flak:5
 flake:8
 flame:-6
 flat:2
 flatmate:-1
 flat~ and:-4
 flat~ boil:2
 flat~ for:2
 flat~ in:-5
 float:-4
 float~ an:-5
 floor:3
 floor~ and:-3
 fluid:5
 fluid~ ounc:8
 foam:-5
 foams:-7
 foam~ from:-5
 foam~ over:6
 foil:-1
 fold:-3
 folder:-5
 fold~ in:1
 folk:-8
 folks:-7
 follow:-1
 forever:-7
 forever~ to:-5
 forgett:-1
 forget~ the:-1
 forgiv:-9
 forgive:-5
 forgive~ the:-3
 forgot:5
 forgotten:4
 forgot~ it:3
 forgot~ to:2
 form:-8
 formula:-5
 forum:-10
 for~ a:-3
 for~ about:2
 for~ after:3
 for~ all:-2
 for~ an:-5
 for~ another:-2
 for~ any:-5
 for~ babi:-6
 for~ baby:4
 for~ both:5
 for~ candl:-8
 for~ christma:-2
 for~ days:-6
 for~ each:4
 for~ every:-7
 for~ faces:-6
 for~ floor:-3
 for~ free:4
 for~ fry:-2
 for~ gram:4
 for~ half:5
 for~ hands:2
 for~ her:-1
 for~ his:-5
 for~ it:-4
 for~ laundry:3
 for~ look:-3
 for~ looks:-5
 for~ luck:4
 for~ me:1
 for~ more:1
 for~ my:1
 for~ next:-2
 for~ no:5
 for~ noth:-6
 for~ once:5
 for~ one:4
 for~ our:-1
 for~ people:-3
 for~ read:-3
 for~ salad:-10
 for~ saturday:4
 for~ shav:-4
 for~ skin:-9
 for~ soap:-9
 for~ some:-7
 for~ test:-6
 for~ that:-2
 for~ the:2
 for~ these:-2
 for~ this:-3
 for~ those:-3
 for~ today:3
 for~ us:3
 for~ wash:-1
 for~ what:4
 for~ word:-6
 for~ years:-3
 for~ you:-8
 for~ your:3
 for~%:5
 for~0:-5
 for~=:-4
 for~>:1
 for~A:-2
 for~B:-2
 for~F:1
 for~L:-4
 for~N:-6
 for~S:-8
 for~T:-5
 for~W:-2
 for~X:1
 for~b:-1
 for~d:-9
 for~e:-6
 for~t:-7
 for~v:-4
 for~w:-1
 found:7
 found~ a:2
 found~ in:-5
 found~ it:4
 found~ on:1
 found~ out:2
 found~ the:7
 found~ this:-9
 fourth:-5
 fractionat:11
 fram:-8
 freeze:-4
 freezer:-1
 freezer~ for:-8
 freezer~ in:-3
 freezer~ paper:-4
 freeze~ the:-6
 free~ lol:-4
 fresh:-2
 fresh~w:-1
 friday:2
 friday~ and:-4
 fridge:-1
 fridge~ for:-4
 fridge~ overnight:-7
 fried:1
 friend':-5
 friend:-6
 friend~ says:-10
 friend~ who:4
 frighten:-5
 from~ ::-7
 from~ a:2
 from~ an:-3
 from~ another:-1
 from~ before:-2
 from~ christma:1
 from~ gdynia:-3
 from~ graz:-3
 from~ it:-5
 from~ krakow:-2
 from~ last:-6
 from~ me:-5
 from~ memory:-1
 from~ my:-3
 from~ one:-6
 from~ our:1
 from~ poland:-2
 from~ portugal:1
 from~ sunday:7
 from~ that:3
 from~ the:1
 from~ there:7
 from~ what:-6
 from~ work:2
 from~0:-4
 from~=:-3
 from~>:-5
 from~F:-5
 from~L:-6
 from~t:-10
 from~w:-10
 front:-1
 front~ of:-6
 froze:3
 frozen:-2
 frozen~ cubes:-3
 frozen~ to:-6
 frozen~w:-9
 froze~ it:3
 fruit:-5
 fry:2
 fryer:4
 full:5
 fully:-1
 full~ bottle:-8
 full~ of:-2
 fume:-7
 fumes:-10
 fun:-10
 funnel:3
 funny:-4
 further:4
 further~ up:-10
 fwd:-2
 fwd~ ::-3
 f~0:-6
 g:-5
 garage:-4
 garden:-5
 gas:-6
 gate:-8
 gave:1
 gave~ it:1
 gave~ me:5
 gave~ out:7
 gave~ the:-3
 gave~ up:5
 gave~0:-8
 gdynia:-3
 gel:-2
 gell:-3
 gel~ ::-4
 gel~ phase:-7
 generou:5
 gent:-8
 gentle:-1
 gentler:5
 german:-4
 get:-4
 gets:-6
 gets~ a:2
 gets~ the:-4
 gets~0:-5
 gett:-8
 get~ a:3
 get~ it:2
 get~ the:1
 get~ to:-8
 get~0:-7
 get~F:4
 ghana:-7
 gift:-8
 gifts:-5
 girl:-3
 girls:-6
 giv:-9
 give:-3
 given:-3
 gives:-9
 gives~ me:-4
 gives~ the:-5
 gives~%:5
 gives~0:-8
 give~ it:-7
 give~ or:4
 give~ the:-3
 give~ to:-3
 glad:-3
 glass:-2
 glass~ and:6
 glass~ of:6
 glossy:-3
 glov:-9
 glov~ and:-6
 glov~ on:-5
 glug:7
 glug~ of:4
 go:-1
 goat:3
 goats:-2
 goats~ are:2
 goes:-6
 goes~ away:-3
 goes~ grainy:-3
 goes~ in:-2
 goes~ into:-4
 goes~ off:-5
 goes~ on:-8
 goes~ up:-6
 goggl:-9
 goggl~ and:-4
 goggl~ on:-3
 going:5
 going~ by:-3
 going~ for:1
 going~ in:6
 gone:4
 gone~ after:-5
 gone~ by:-8
 gone~ from:-4
 gone~ in:1
 gone~ up:-2
 gonna:3
 good:-2
 good~ ?:-4
 good~ as:-6
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
 good~ quantity:-4
 good~ scale:1
 good~ the:-4
 good~ to:-2
 good~F:-9
 good~t:-5
 goose:3
 got:5
 got~ a:-4
 got~ in:-4
 got~ into:5
 got~ it:-2
 got~ my:-6
 got~ round:5
 got~ swapp:1
 got~ the:-3
 got~ thick:-1
 got~ to:4
 got~ too:3
 got~ wet:1
 got~0:-6
 got~=:-4
 got~>:1
 got~S:-4
 got~b:2
 got~w:3
 go~ ?:-3
 go~ at:5
 go~ by:3
 go~ clear:1
 go~ down:1
 go~ for:1
 go~ in:-1
 go~ into:-8
 go~ on:-6
 go~ out:2
 go~ over:-5
 go~ rancid:-7
 go~ to:-2
 go~ up:4
 go~ with:10
 go~ wrong:-4
 grabb:7
 grade:3
 grain:-8
 grainy:-5
 gram:-2
 gramm:-8
 grams:-2
 grams~ ::-7
 grams~ and:-3
 grams~ cost:-2
 grams~ for:-1
 grams~ i:5
 grams~ of:2
 grams~ so:-9
 grams~A:-5
 grams~e:-4
 gram~ for:4
 gran:1
 grand:-5
 grandad:6
 granddad:1
 granddaughter:-6
 grandmother:-7
 grandmother~ had:-3
 grandmother~ in:-3
 grandpa:2
 grandson:4
 granny:-1
 grans:-5
 grat:1
 grate:-2
 grateful:-1
 grate~ the:-7
 graz:-6
 greas:-1
 grease:-2
 greasy:1
 great:1
 great~ aunt:-5
 green:-3
 green~ and:5
 green~ one:-2
 greeting:-5
 greeting~ from:-5
 grind:-5
 grind~ the:-2
 grocer:-4
 ground:-9
 ground~ fine:-5
 group:2
 group~ ::-5
 group~ b:-6
 group~ of:-5
 grown:3
 guess:10
 guess~ the:-3
 guest:-8
 guild:-9
 g~ ::-6
 g~ =:-7
 g~ cost:-2
 g~ oz:-3
 g~e:-8
 ha:2
 habit:2
 had:3
 hadnt:5
 had~ a:-6
 had~ already:8
 had~ been:4
 had~ come:4
 had~ cool:-5
 had~ dropp:-3
 had~ gone:6
 had~ in:-2
 had~ it:3
 had~ melt:2
 had~ no:-3
 had~ only:-2
 had~ set:2
 had~ some:-2
 had~ the:-4
 had~ to:-6
 had~ weigh:-5
 had~0:-5
 had~<:-5
 had~>:-9
 had~F:4
 had~N:-6
 had~X:4
 had~b:7
 haha:1
 hair:-2
 half:5
 halfway:-5
 halfway~ through:4
 half~ a:4
 half~ and:-4
 half~ as:2
 half~ batch:6
 half~ is:6
 half~ of:2
 half~ size:2
 half~ the:-2
 half~A:-5
 half~F:-1
 half~I:-4
 half~L:2
 half~W:-6
 hall:-7
 hallo:-4
 hallo~ my:-2
 halv:8
 halve:-2
 halv~ it:4
 hammer:4
 hand:-2
 handful~ of:-8
 handle:-2
 handout~0:-4
 hands:-2
 hands~ ?:-3
 hands~ after:-3
 hands~ are:1
 handwrit:4
 handy:-7
 hand~ ::2
 hand~ and:-1
 hand~ in:-5
 hand~ on:4
 hand~ out:-8
 hand~ soap:-5
 hand~ warm:-1
 hand~ with:-5
 hang:5
 hangs:-6
 happen:1
 happy:2
 happy~ with:-9
 hard:-5
 harden:-6
 harder:-2
 harder~ bar:-2
 hardnes:-6
 hardware:-1
 hardware~ store:-5
 hard~ after:-1
 hard~ and:-5
 hard~ any:-6
 hard~ as:-7
 hard~ smell:-5
 hard~ to:5
 hard~W:-8
 harm:-6
 harsh:-7
 has:1
 hasnt:-7
 has~ anyone:-7
 has~ become:-2
 has~ been:1
 has~ cool:-4
 has~ done:-6
 has~ dry:1
 has~ it:2
 has~ made:-3
 has~ moved:-7
 has~ no:-3
 has~ the:5
 has~ to:-4
 has~=:-5
 has~F:8
 has~N:-6
 hate:-3
 hates:-2
 hav:-2
 have:-1
 havent:3
 have~ a:-9
 have~ already:-6
 have~ asked:2
 have~ been:-1
 have~ done:-2
 have~ enough:-4
 have~ for:1
 have~ gone:3
 have~ had:2
 have~ i:-7
 have~ it:3
 have~ made:-5
 have~ my:-6
 have~ never:1
 have~ no:-3
 have~ not:-9
 have~ put:6
 have~ the:4
 have~ to:-10
 have~ used:-3
 have~0:-4
 have~=:-5
 have~>:-4
 have~F:3
 hdpe:-6
 he:-3
 head:-2
 heap:9
 heap~ spoon:2
 hear:-2
 heard:3
 heart:-1
 heat:-13
 heats:-7
 heats~ up:-4
 heat~ and:-2
 heat~ i:-2
 heat~ off:-3
 heat~ the:-6
 heaven:-7
 heavy:2
 heavy~ ?:-6
 heavy~ or:-6
 hed:4
 height:-5
 held:8
 held~ back:1
 held~ the:1
 hell:-6
 hello:-4
 hello~ everyone:-1
 hello~ from:-1
 hello~ i:-3
 help:5
 helps:-2
 help~ with:1
 hence:-4
 hence~ the:-10
 hens:-9
 her:-5
 here:-1
 heres:-7
 heres~ my:-1
 heres~ the:-5
 heres~ what:-7
 here~ ::-1
 here~ ?:-5
 here~ and:-3
 here~ are:-1
 here~ goes:-3
 here~ i:5
 here~ in:-5
 here~ is:1
 here~ it:-6
 here~ so:-3
 here~ we:-8
 hers:-10
 herself:-5
 hers~ and:-5
 hers~ is:-4
 hers~ with:-8
 her~ hands:-4
 her~ life:-8
 her~ mother:-2
 her~ soap:-5
 her~A:-3
 her~F:-10
 hes:3
 hey:-5
 he~ also:-8
 he~ has:-6
 he~ is:-9
 he~ says:2
 he~ was:-7
 hi:-1
 hid:-9
 hide:-7
 high:-6
 high~ ?:-6
 him:-5
 himself:4
 his:-6
 hiss:2
 his~A:-8
 hit:2
 hit~ it:-6
 hit~ the:3
 hive:-7
 hives:-6
 hiya:1
 hi~ all:1
 hi~ everyone:-3
 hm:1
 hmm:7
 hola:-3
 holds:-5
 holds~ a:3
 holds~0:-3
 holds~v:-7
 holds~w:-8
 hold~ ?:-3
 hold~ back:5
 hold~ the:3
 hold~ up:-4
 hole:-5
 holes:-7
 holiday:-9
 home:1
 home~ and:5
 honest:5
 hood:-6
 hope:3
 hope~ it:-4
 hope~ the:-4
 hot:-8
 hotter:-9
 hotter~ than:-3
 hot~ ?:-1
 hot~ or:-5
 hour:-2
 hour~ and:-6
 hour~ then:-3
 hour~ until:-1
 house:4
 house~ smell:-5
 how:2
 hows:-6
 how~ does:-4
 how~ i:3
 how~ it:-1
 how~ long:-7
 how~ many:-6
 how~ much:7
 how~ my:-7
 how~ the:-7
 how~ to:-10
 how~ we:-6
 hp:-4
 hp~ ::-1
 hp~ in:-3
 hubby:2
 huge:5
 humidity:-2
 humidity~%:-4
 hurry:-5
 hurt:-1
 hurts:-5
 husband:2
 husband~ says:-5
 husband~ think:-8
 husband~ who:-8
 hydrogenat:1
 i'd:2
 i'd~ already:7
 i'd~ be:-9
 i'd~ do:-7
 i'd~ guess:6
 i'd~ have:-7
 i'd~ like:4
 i'd~ love:-4
 i'd~ never:-5
 i'd~ pour:-3
 i'd~ put:2
 i'd~ read:5
 i'd~ say:4
 i'd~ use:-6
 i'd~ weigh:2
 i:3
 idea~ about:1
 idea~ which:5
 idk:7
 ie:6
 ie~=:-7
 if:-3
 if~ anyone:-2
 if~ i:1
 if~ im:4
 if~ it:3
 if~ its:-1
 if~ ive:-6
 if~ my:1
 if~ somebody:-6
 if~ someone:1
 if~ that:3
 if~ thats:1
 if~ the:-4
 if~ ther:-6
 if~ this:2
 if~ ur:-9
 if~ you:-3
 if~ your:-6
 if~ youre:-8
 if~ yours:-5
 if~ youve:-6
 if~A:-5
 if~F:-8
 if~b:-5
 ignore:6
 ignore~ the:8
 ill~ do:-5
 ilse:-1
 im:1
 impatient:-7
 im~ a:-3
 im~ after:6
 im~ aim:3
 im~ at:-9
 im~ dictat:-2
 im~ doing:-3
 im~ going:2
 im~ in:-8
 im~ mak:2
 im~ nervou:-8
 im~ new:-2
 im~ not:1
 im~ on:2
 im~ told:-4
 im~ using:5
 im~0:-2
 in:1
 inch:1
 incl:-1
 includ:4
 includ~ the:9
 independent:-8
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
 insist:7
 instant:-3
 instead:3
 instruction:1
 insulate:-7
 internet:-4
 into~ a:-6
 into~ cubes:-6
 into~ it:1
 into~ mould:-3
 into~ oils:-3
 into~ one:-9
 into~ soap:-8
 into~ that:4
 into~ the:2
 into~ this:7
 into~0:-5
 into~=:-6
 into~>:-1
 into~W:-6
 into~b:1
 into~v:-3
 in~ ::2
 in~ ?:4
 in~ a:-2
 in~ about:-1
 in~ after:6
 in~ all:-8
 in~ an:-6
 in~ and:-2
 in~ another:5
 in~ april:-6
 in~ as:4
 in~ at:3
 in~ august:3
 in~ batch:-4
 in~ before:9
 in~ between:-6
 in~ blend:-8
 in~ burst:-2
 in~ by:1
 in~ case:-7
 in~ class:1
 in~ cold:-6
 in~ cubes:-5
 in~ dag:-1
 in~ each:-4
 in~ every:-4
 in~ fact:5
 in~ first:-6
 in~ for:11
 in~ front:-7
 in~ g:2
 in~ grams:-9
 in~ half:2
 in~ her:-8
 in~ here:-1
 in~ hers:-9
 in~ his:-8
 in~ hot:-7
 in~ i:6
 in~ it:2
 in~ its:6
 in~ january:-6
 in~ july:-6
 in~ june:-6
 in~ last:-2
 in~ later:-4
 in~ law:-2
 in~ laws:-3
 in~ march:-8
 in~ may:-1
 in~ maybe:2
 in~ mould:-4
 in~ my:-1
 in~ no:-5
 in~ november:-5
 in~ october:-1
 in~ ohio:-4
 in~ on:-5
 in~ once:10
 in~ one:4
 in~ only:-1
 in~ or:3
 in~ order:-5
 in~ ounc:1
 in~ our:4
 in~ oz:-1
 in~ parts:-4
 in~ place:1
 in~ plus:-4
 in~ red:2
 in~ short:-4
 in~ slow:-3
 in~ small:-5
 in~ so:5
 in~ spr:-7
 in~ step:-6
 in~ steps:5
 in~ summer:-7
 in~ that:3
 in~ the:-2
 in~ there:5
 in~ time:2
 in~ tiny:6
 in~ to:-2
 in~ too:2
 in~ total:-6
 in~ truth:2
 in~ under:-3
 in~ week:-4
 in~ went:7
 in~ what:-8
 in~ when:-4
 in~ which:1
 in~ winter:-4
 in~ with:5
 in~ your:-1
 in~0:-6
 in~<:2
 in~=:-5
 in~>:-2
 in~F:-4
 in~I:-6
 in~L:3
 in~N:6
 in~W:-3
 in~X:2
 in~b:-6
 in~e:3
 in~l:-2
 in~r:-4
 in~t:-6
 in~v:-10
 ish:-6
 isnt:7
 isnt~ in:3
 isnt~ it:4
 issue:-1
 is~ a:2
 is~ about:-5
 is~ actual:5
 is~ all:-2
 is~ already:1
 is~ alway:-1
 is~ an:3
 is~ and:-5
 is~ as:-2
 is~ at:-6
 is~ below:-4
 is~ better:1
 is~ cheap:-7
 is~ clear:-4
 is~ correct:-8
 is~ done:2
 is~ dry:5
 is~ enough:-5
 is~ exact:-8
 is~ fine:-12
 is~ finish:2
 is~ for:-3
 is~ from:1
 is~ going:4
 is~ gone:-7
 is~ good:-8
 is~ grams:2
 is~ half:1
 is~ her:-3
 is~ hot:-6
 is~ in:1
 is~ it:-4
 is~ just:-8
 is~ left:-1
 is~ like:-3
 is~ love:-4
 is~ meant:-1
 is~ mine:-10
 is~ near:-8
 is~ no:-6
 is~ normal:-6
 is~ not:-4
 is~ noth:-2
 is~ now:5
 is~ off:4
 is~ oil:2
 is~ ok:-7
 is~ okay:-1
 is~ on:1
 is~ one:3
 is~ only:-9
 is~ our:-7
 is~ over:1
 is~ plenty:2
 is~ real:9
 is~ right:1
 is~ safe:-1
 is~ she:-2
 is~ small:-3
 is~ sold:4
 is~ step:-2
 is~ technical:7
 is~ that:-4
 is~ the:-3
 is~ there:-4
 is~ thick:-5
 is~ this:-7
 is~ to:2
 is~ too:1
 is~ under:-2
 is~ weigh:-3
 is~ well:-4
 is~ what:3
 is~ where:-8
 is~ whether:-7
 is~ why:-7
 is~ with:10
 is~ worth:-5
 is~ wrong:-6
 is~%:-2
 is~0:4
 is~<:-4
 is~=:-5
 is~>:-5
 is~A:1
 is~F:5
 is~L:4
 is~N:8
 is~S:1
 is~T:-6
 is~b:4
 is~d:-2
 is~e:-7
 is~l:-2
 is~r:4
 is~t:-8
 is~v:-2
 is~w:-2
 it:2
 itch:-2
 item:-3
 item~ grams:-3
 item~ qty:-1
 itll:-3
 its:2
 itself:-5
 itself~ is:-8
 itself~ off:-2
 its~ a:1
 its~ about:-5
 its~ all:-2
 its~ already:2
 its~ as:-7
 its~ been:-6
 its~ bowl:2
 its~ clear:-6
 its~ cook:6
 its~ date:-4
 its~ fine:-7
 its~ for:5
 its~ from:4
 its~ gone:1
 its~ hot:-4
 its~ in:-4
 its~ just:-7
 its~ like:1
 its~ made:3
 its~ meant:-1
 its~ my:1
 its~ not:-1
 its~ on:-6
 its~ only:-3
 its~ own:-2
 its~ place:5
 its~ ready:-6
 its~ sitt:-5
 its~ still:2
 its~ the:-1
 its~ time:-5
 its~ too:-1
 its~ weight:-5
 its~ what:3
 its~0:6
 its~=:-5
 its~A:7
 its~N:6
 its~b:-3
 its~d:-6
 its~l:3
 its~t:1
 it~ ::-6
 it~ ?:-3
 it~ a:1
 it~ about:-7
 it~ add:-4
 it~ after:-1
 it~ again:1
 it~ all:1
 it~ alone:-7
 it~ already:1
 it~ and:-2
 it~ another:3
 it~ anyway:-10
 it~ as:-2
 it~ away:-4
 it~ bad:6
 it~ be:2
 it~ because:4
 it~ before:-7
 it~ behav:-3
 it~ bit:5
 it~ but:-6
 it~ by:-1
 it~ came:1
 it~ can:-4
 it~ check:-7
 it~ clear:-4
 it~ climb:-3
 it~ come:-6
 it~ comes:2
 it~ cook:-5
 it~ cooks:-4
 it~ cool:2
 it~ cools:-5
 it~ correct:-4
 it~ cost:-5
 it~ costs:-3
 it~ crack:-5
 it~ crumbl:-1
 it~ cut:-5
 it~ did:-3
 it~ didnt:-2
 it~ do:-5
 it~ doesnt:-3
 it~ down:1
 it~ dried:4
 it~ drop:-2
 it~ enough:-3
 it~ every:-5
 it~ exact:-8
 it~ feels:-4
 it~ first:1
 it~ fit:-2
 it~ fits:-4
 it~ flat:-6
 it~ foam:3
 it~ for:-1
 it~ from:1
 it~ gets:-4
 it~ gives:1
 it~ go:-5
 it~ going:-6
 it~ good:-4
 it~ got:1
 it~ had:-3
 it~ hard:-3
 it~ has:-1
 it~ heats:-5
 it~ here:-3
 it~ hold:-2
 it~ holds:-4
 it~ i:-1
 it~ if:-5
 it~ in:-2
 it~ instead:-11
 it~ into:-10
 it~ is:3
 it~ isnt:2
 it~ it:2
 it~ its:-4
 it~ last:-1
 it~ lasts:-5
 it~ lather:-9
 it~ like:-4
 it~ look:7
 it~ looks:-5
 it~ makes:1
 it~ matter:2
 it~ may:-6
 it~ melts:-3
 it~ mild:-5
 it~ moved:7
 it~ needs:-4
 it~ never:-1
 it~ next:-2
 it~ no:3
 it~ now:-7
 it~ off:5
 it~ ok:-4
 it~ once:-8
 it~ or:-6
 it~ out:-1
 it~ outside:-5
 it~ past:-7
 it~ plus:-4
 it~ rain:-3
 it~ real:4
 it~ right:-2
 it~ said:5
 it~ sat:1
 it~ says:2
 it~ seiz:3
 it~ set:1
 it~ sets:-5
 it~ should:-5
 it~ since:-3
 it~ sit:2
 it~ smell:-3
 it~ so:-1
 it~ stand:-2
 it~ stay:5
 it~ stays:-1
 it~ still:-5
 it~ stink:-5
 it~ sweat:-5
 it~ takes:-6
 it~ the:-6
 it~ then:-2
 it~ there:-8
 it~ thicken:5
 it~ this:-1
 it~ through:-6
 it~ till:2
 it~ to:4
 it~ today:-3
 it~ too:1
 it~ took:-5
 it~ trac:-2
 it~ turn:-4
 it~ turns:2
 it~ twice:3
 it~ under:-6
 it~ until:-4
 it~ up:1
 it~ wants:-5
 it~ was:2
 it~ weigh:-2
 it~ well:-4
 it~ when:4
 it~ will:-8
 it~ with:-5
 it~ without:3
 it~ wont:-5
 it~ work:-2
 it~ would:-4
 it~ wouldnt:5
 it~ wrong:-4
 it~ zapp:6
 it~ zaps:-5
 it~%:1
 it~0:3
 it~=:-4
 it~>:-2
 it~A:-3
 it~F:-2
 it~S:-3
 it~b:6
 it~t:-9
 ive:-1
 ive~ been:-6
 ive~ bought:4
 ive~ come:5
 ive~ done:-4
 ive~ gone:7
 ive~ got:-2
 ive~ had:-8
 ive~ just:2
 ive~ made:-6
 ive~ never:-6
 ive~ no:-2
 ive~ not:-3
 ive~ only:2
 ive~ put:-1
 ive~ read:-6
 ive~ seen:-7
 ive~ since:5
 ive~ tried:-6
 ive~ used:-2
 ive~ weigh:-3
 ivory:-7
 i~ ?:-7
 i~ actual:-1
 i~ add:-1
 i~ added:3
 i~ aim:4
 i~ alway:-5
 i~ am:4
 i~ ask:2
 i~ began:-8
 i~ believe:3
 i~ bin:-4
 i~ blame:-6
 i~ boil:-1
 i~ bought:-5
 i~ bring:-5
 i~ buy:-4
 i~ call:-1
 i~ came:2
 i~ can:-9
 i~ cant:-4
 i~ carri:9
 i~ caught:1
 i~ chang:-8
 i~ check:-9
 i~ chuck:6
 i~ clean:1
 i~ commit:-2
 i~ cook:-1
 i~ copi:3
 i~ copy:-5
 i~ couldnt:1
 i~ count:-2
 i~ cut:-2
 i~ did:4
 i~ didnt:1
 i~ dilut:-9
 i~ dilute:-5
 i~ dissolve:1
 i~ do:-7
 i~ dont:3
 i~ doubl:6
 i~ drain:10
 i~ dropp:1
 i~ empti:10
 i~ ended:-4
 i~ ever:-7
 i~ fill:9
 i~ final:-7
 i~ finish:-2
 i~ first:-4
 i~ fish:11
 i~ fold:-3
 i~ follow:1
 i~ forgot:-3
 i~ found:-2
 i~ freeze:1
 i~ gave:-3
 i~ get:-5
 i~ give:-5
 i~ good:-3
 i~ got:-1
 i~ guess:10
 i~ had:-2
 i~ hadnt:4
 i~ halv:7
 i~ hand:-3
 i~ hate:-2
 i~ have:1
 i~ havent:-1
 i~ held:4
 i~ hit:-8
 i~ honest:9
 i~ hope:-3
 i~ in:-3
 i~ just:3
 i~ keep:-4
 i~ kept:2
 i~ knock:3
 i~ know:-5
 i~ learn:-6
 i~ leave:4
 i~ left:9
 i~ let:4
 i~ like:-3
 i~ lost:6
 i~ made:-1
 i~ make:-8
 i~ may:2
 i~ mean:-1
 i~ measur:-2
 i~ melt:-1
 i~ mess:-6
 i~ misread:1
 i~ mix:-6
 i~ mixed:4
 i~ must:2
 i~ near:-6
 i~ need:-1
 i~ never:4
 i~ notic:7
 i~ ok:1
 i~ once:-10
 i~ only:1
 i~ overdo:-5
 i~ own:1
 i~ paid:-4
 i~ panick:-3
 i~ plan:-4
 i~ plann:-4
 i~ pour:1
 i~ press:-7
 i~ print:-6
 i~ promis:1
 i~ put:1
 i~ ran:-1
 i~ read:4
 i~ real:-4
 i~ realis:3
 i~ remember:-2
 i~ render:-1
 i~ replac:4
 i~ right:-6
 i~ rins:7
 i~ round:6
 i~ run:-8
 i~ said:-9
 i~ saw:6
 i~ say:-1
 i~ scal:5
 i~ scrap:7
 i~ see:6
 i~ sell:-4
 i~ set:-2
 i~ settl:-5
 i~ shook:6
 i~ short:-7
 i~ should:1
 i~ siev:-1
 i~ skipp:5
 i~ smell:1
 i~ soap:-5
 i~ split:-1
 i~ sprinkl:-6
 i~ start:1
 i~ stir:-7
 i~ stirr:2
 i~ stood:-1
 i~ stopp:9
 i~ swapp:9
 i~ swear:2
 i~ switch:6
 i~ take:-6
 i~ teach:-6
 i~ tell:-9
 i~ test:-1
 i~ think:2
 i~ thought:-2
 i~ threw:1
 i~ tipp:3
 i~ told:-1
 i~ took:3
 i~ topp:-1
 i~ translate:-4
 i~ trust:-3
 i~ turn:-3
 i~ type:1
 i~ typed:5
 i~ use:-4
 i~ used:1
 i~ usual:3
 i~ wait:-7
 i~ want:1
 i~ warm:-6
 i~ was:-6
 i~ wash:-3
 i~ wasnt:2
 i~ weigh:2
 i~ went:5
 i~ will:-8
 i~ wiped:-9
 i~ work:-8
 i~ worry:-7
 i~ would:2
 i~ wouldnt:-9
 i~ write:-9
 i~ wrote:5
 i~K:-8
 jam:1
 jam~ jar:2
 january:-11
 january~ and:-5
 jar:3
 jars:-9
 jars~ of:-6
 jar~ and:9
 jar~ of:5
 jar~ so:-3
 jar~ was:5
 jelly:-6
 job:4
 join:2
 join~ the:5
 judge:1
 jug's:4
 jug:3
 jugs:2
 jug~ ::3
 jug~ and:2
 jug~ from:3
 jug~ in:-7
 jug~ is:-9
 jug~ of:5
 jug~ on:-7
 jug~ so:6
 jug~ to:6
 jug~ was:-4
 jug~ weigh:-5
 jug~ with:1
 jug~w:2
 july:-4
 jump:5
 jumps:3
 jumps~ in:7
 june:-11
 just~ a:-3
 just~ as:-3
 just~ for:-6
 just~ tell:-4
 just~ the:3
 just~ want:-8
 just~ what:-6
 just~F:-4
 k:3
 keep:-8
 keeps:-9
 keeps~ it:-5
 keeps~ the:-2
 keep~ a:-4
 keep~ in:-6
 keep~ it:-8
 keep~ my:-8
 keep~ the:1
 keep~0:-5
 keep~<:2
 keep~t:-3
 kept:2
 kept~ in:-5
 kept~ the:1
 kept~0:2
 kettle:7
 key:-5
 kg:2
 kg~ cost:-2
 kid:9
 kidd:-5
 kids:-1
 kill:-5
 kilo:4
 kilo~ in:-4
 kilo~ is:1
 kilo~ of:-6
 kind:-1
 kinda:2
 kind~ check:-7
 kind~ of:-2
 kind~ regard:-4
 kind~ with:4
 kiss:-6
 kitchen~ and:2
 kitchen~ bar:-5
 kitchen~ is:-3
 kitchen~ scale:4
 kitchen~ so:-4
 kitchen~ was:-7
 knew:-5
 knife:-8
 knob:8
 knob~ of:8
 knock:3
 knock~ a:-2
 knock~ the:3
 know:3
 knows:4
 knows~ how:4
 know~ ::-6
 know~ but:-2
 know~ how:2
 know~ i:-5
 know~ is:-5
 know~ it:1
 know~ its:-4
 know~ that:2
 know~ the:-2
 know~ what:-6
 know~ whether:-4
 know~ which:3
 krakow:-4
 k~0:-10
 l:-5
 la:-5
 lab:-4
 label:1
 labell:-3
 label~ ::-7
 label~ on:-7
 label~ says:5
 label~0:-6
 ladi:-4
 ladl:9
 ladle:6
 ladle~ of:3
 lads:-3
 lady:-3
 lady~ at:-5
 lady~ in:-4
 lady~ on:-4
 land:2
 larder:-1
 last:-5
 lasts:-7
 last~ autumn:-6
 last~ batch:-5
 last~ bit:6
 last~ lot:-8
 last~ minute:7
 last~ month:3
 last~ night:-6
 last~ of:-7
 last~ one:-7
 last~ time:-5
 last~ weeks:3
 last~ winter:-6
 last~ year:-4
 last~ years:-3
 last~0:3
 last~F:-7
 late:-1
 later:-2
 later~ on:-6
 late~ husband:2
 late~ mother:-7
 lather:-6
 lather~ is:-2
 lather~ like:-9
 lather~ was:-4
 laugh:2
 laugh~ at:-3
 laundry:1
 laundry~ bar:-7
 laundry~ bars:-2
 laundry~ soap:-5
 law:-2
 laws:-3
 law~ who:-5
 layer:2
 la~A:-4
 lb:1
 lb~ oz:-7
 leaflet:-2
 leaflet~ from:-5
 leak:-3
 learn:-8
 learn~ from:-3
 learn~ that:2
 least:-3
 least~t:-1
 leav:-4
 leave:-4
 leave~ it:-2
 leave~ out:-10
 leave~ the:-3
 leave~ them:-3
 leave~t:-1
 leav~ a:-4
 leav~ the:-7
 leeds:4
 leftover~ soap:-6
 leftover~F:-1
 left~ and:2
 left~ for:-8
 left~ from:6
 left~ in:-2
 left~ it:1
 left~ of:-6
 left~ on:3
 left~ over:-4
 left~ so:-1
 left~ the:1
 left~ to:3
 length:-3
 less:5
 lesson:-7
 less~ of:6
 less~F:-3
 less~W:-3
 let:-1
 lets:1
 letter:4
 let~ cool:-1
 let~ it:-2
 let~ me:-4
 let~ the:-3
 let~ them:3
 let~ us:-5
 let~ your:-6
 level:-1
 library:-6
 library~ book:-5
 lid:-1
 lidd:-3
 lids:-5
 lid~ and:-7
 lid~ of:-9
 lid~ off:3
 lid~ on:-6
 lie:-7
 life:3
 lift:3
 lift~ the:2
 light:2
 lighter:-6
 light~ on:1
 light~ trace:-1
 like:-2
 liked:-6
 likes:-5
 likes~ it:5
 likewise:1
 like~ a:-4
 like~ alway:-9
 like~ an:-6
 like~ candle:-5
 like~ cheese:-7
 like~ cold:-4
 like~ custard:-5
 like~ i:-5
 like~ in:1
 like~ it:1
 like~ mad:2
 like~ mash:-4
 like~ me:-4
 like~ my:2
 like~ noth:-3
 like~ paper:2
 like~ porridge:4
 like~ sandpaper:-4
 like~ somebody:-6
 like~ someone:-1
 like~ soup:-6
 like~ stone:-5
 like~ that:-7
 like~ the:-5
 like~ thin:-3
 like~ to:-5
 like~ wet:-2
 like~ you:-2
 like~%:1
 like~0:7
 like~F:-3
 like~L:-6
 like~S:-4
 like~U:-5
 like~X:-3
 like~t:7
 like~w:7
 limit:-6
 line:8
 lined:-6
 lined~ w:-5
 lined~ with:-2
 linen:-3
 line~ ::5
 line~ a:-4
 line~ the:-1
 lino:-4
 lip:-5
 lip~ balm:-5
 liquid:2
 liquid~ and:-1
 liquid~ hand:-3
 liquid~ is:-5
 liquid~ soap:-1
 liquor:8
 list:4
 list~ for:-8
 list~ i:2
 list~ is:-3
 litre:3
 little:1
 little~ ?:-6
 little~A:3
 little~F:-7
 little~S:-2
 little~W:2
 live:-6
 lived:-7
 lives:-6
 lives~ in:-5
 loaf:-4
 loaf~ ::-4
 loaf~ mold:-3
 loaf~ mould:-4
 loaf~ tin:-2
 loaf~t:-2
 loav:-4
 local:-5
 lock:-8
 loft:-3
 log~ ::-2
 lol:-3
 long:-2
 longer:1
 longer~ than:-5
 long~ as:-6
 long~ one:1
 long~ sleev:-4
 long~ story:6
 long~ time:-4
 look:2
 looks:-10
 looks~ like:-4
 looks~ ok:-1
 look~ ?:-3
 look~ a:1
 look~ at:-7
 look~ before:-8
 look~ for:2
 look~ it:-5
 look~ like:1
 look~ of:1
 look~ ok:-3
 look~ over:-5
 look~ right:-4
 loosen:10
 loosen~ it:6
 lose:-2
 loss:-1
 lost:3
 lost~ a:1
 lost~ my:-1
 lost~ the:-7
 lot:-1
 lotion:8
 lots:-8
 lots~ of:-5
 lot~ ?:-1
 lot~ of:1
 lot~ to:-2
 lot~0:3
 loud:-8
 love:-5
 loves:3
 love~ a:2
 love~ and:-3
 love~ but:-3
 love~ it:-5
 love~ to:-4
 low:-1
 lower:7
 lowest:-4
 lowest~ flame:-4
 low~ and:-4
 low~ for:3
 low~ heat:-1
 low~ in:1
 low~t:-3
 luck:3
 lucki:-7
 lucky:-6
 lukewarm:-7
 lump:6
 lumps:-4
 lumpy:6
 lump~ of:-2
 lunch:-6
 lurker:-4
 luxury:-3
 lye's:5
 lye:2
 lyes:-6
 lyes~ together:-5
 lying:2
 lyon:-5
 l~0:-4
 m:-6
 machine:-5
 made:2
 made~ ::-6
 made~ a:3
 made~ for:-9
 made~ from:-3
 made~ hers:-6
 made~ in:-7
 made~ it:2
 made~ my:-2
 made~ of:-6
 made~ on:-4
 made~ soap:-2
 made~ the:6
 made~ this:-4
 made~ up:4
 made~ with:-8
 made~0:9
 made~r:-5
 made~t:-1
 magazine:-4
 mak:9
 make:1
 maker:-6
 maker~ ::-4
 makes:-5
 makes~ a:-6
 makes~ it:-3
 makes~ no:-5
 makes~ sense:-2
 makes~ the:-4
 makes~ up:8
 makes~0:-8
 makes~T:-9
 makes~b:-6
 make~ a:-8
 make~ exact:-5
 make~ for:-6
 make~ it:6
 make~ of:-6
 make~ sense:-3
 make~ soap:-6
 make~ the:-8
 make~ this:-5
 make~ up:-1
 mak~ it:6
 mak~ the:-4
 mak~ this:-3
 mama:-7
 man:-9
 march:-12
 margin:-3
 marit:-5
 mark:6
 market:-6
 market~ told:-2
 marks:1
 marta:5
 mash:-4
 mash~ potato:-3
 mass:-5
 mass~ g:-3
 match:-1
 material:-6
 maths:5
 matter:3
 matter~ to:3
 maybe:8
 maybe~ a:6
 maybe~0:6
 maybe~<:-1
 maybe~t:-7
 maybe~w:5
 may~ be:2
 may~ have:7
 may~ i:-6
 me:-1
 mean:-3
 meant:1
 meant~ to:-2
 meanwhile:3
 mean~ the:3
 mean~ to:-6
 measur:3
 measure:1
 measur~ cup:3
 measur~ it:1
 measur~ jug:7
 measur~ the:2
 measur~=:-6
 mechanic:2
 medium:-6
 meets:-3
 meine:-7
 melt:-2
 melts:-9
 melts~ at:-5
 melt~ and:2
 melt~ anyth:-1
 melt~ at:-3
 melt~ by:-8
 melt~ everyth:4
 melt~ first:-7
 melt~ i:-8
 melt~ in:7
 melt~ it:1
 melt~ on:-8
 melt~ the:-6
 melt~ together:1
 melt~ with:5
 melt~=:-3
 melt~F:-2
 memory:4
 men:-7
 merci:-4
 mess:-7
 message:-10
 mess~ up:-4
 met:-1
 method:-4
 method~ ::-5
 metric:-6
 me~ ?:3
 me~ a:1
 me~ about:-5
 me~ and:1
 me~ as:2
 me~ at:3
 me~ before:-5
 me~ but:-1
 me~ for:-2
 me~ how:-8
 me~ i:-3
 me~ if:-4
 me~ in:-3
 me~ is:6
 me~ it:-4
 me~ its:-8
 me~ on:-1
 me~ please:-5
 me~ that:-2
 me~ the:2
 me~ this:-3
 me~ to:-6
 me~ what:2
 me~ where:3
 me~ whether:-2
 me~ with:3
 me~0:-8
 me~>:-4
 me~t:-8
 microwave:1
 middle:-5
 middle~ of:2
 might~ have:4
 mild:-2
 milder:-1
 mild~ ?:-5
 milk:-7
 milk~ carton:-7
 mill:-7
 min:6
 mind:5
 mind~ the:-1
 mine:-3
 mine~ ::3
 mine~ from:1
 mine~ had:-4
 mine~ has:-3
 mine~ in:-7
 mine~ is:6
 mine~ took:-6
 mine~ with:6
 mini:1
 minimum:1
 minus:6
 minus~ the:8
 minus~ whatever:8
 minute:-3
 minute~0:-7
 min~ .:6
 misread:10
 misread~ my:3
 miss:2
 miss~ the:5
 mistake:4
 mistake~ and:-7
 mix:4
 mixed:4
 mixed~ at:-6
 mixed~ in:5
 mixed~ it:3
 mixed~ the:1
 mixed~ up:-1
 mixed~=:-6
 mixer:-5
 mix~ at:-2
 mix~ of:2
 mix~ the:4
 mix~A:-4
 mk:-4
 ml:12
 mm:-8
 mode:4
 modern:-5
 mold:3
 molds:3
 mold~ holds:-5
 mold~ is:1
 moment:-7
 moms:-2
 mon:2
 monday:-2
 money:4
 month:-3
 month~ i:-2
 month~0:-5
 moon:-5
 mopp:3
 mopp~ up:3
 more:3
 more~ and:-7
 more~ fat:-6
 more~ like:8
 more~ of:4
 more~ or:-4
 more~ than:-2
 more~A:4
 more~F:3
 morn:-1
 morn~ and:1
 morn~ from:-4
 most:5
 most~ of:9
 mother:-1
 mother~ and:-7
 mother~ did:4
 mother~ in:1
 mould:-1
 mouldy:4
 mould~ ::-6
 mould~ a:-6
 mould~ and:-3
 mould~ bang:-4
 mould~ by:-2
 mould~ for:-3
 mould~ holds:-3
 mould~ in:-3
 mould~ is:3
 mould~ of:-6
 mould~ on:-6
 mould~ so:-7
 mould~ takes:-3
 mould~ the:-4
 mould~ was:-6
 mould~ with:-7
 mould~0:-2
 mould~t:-4
 mould~v:-4
 mov:1
 move:-4
 moved:2
 moved~ to:1
 moves:-1
 mrs:3
 much:-1
 much~ ?:-5
 much~ and:6
 much~ as:-6
 much~ fat:-3
 much~ for:-9
 much~ of:-5
 much~ superfat:-5
 much~A:-2
 much~F:-3
 much~W:5
 muffin:-5
 mug:5
 multip:6
 mum~ says:-4
 museum:-7
 mush:-4
 must:-5
 must~ be:-8
 must~ have:5
 myself:-5
 my~ arm:-4
 my~ aunt:-3
 my~ aunts:3
 my~ babcia:-4
 my~ bars:-4
 my~ bathroom:7
 my~ book:1
 my~ boss:-1
 my~ boyfriend:-1
 my~ brother':4
 my~ brother:-2
 my~ colleague:-6
 my~ country:5
 my~ cousin:-2
 my~ dad:-7
 my~ dads:2
 my~ daughter':-8
 my~ daughter:3
 my~ earlier:5
 my~ elbow:-4
 my~ english:-2
 my~ everyday:-3
 my~ ex:-5
 my~ father:-3
 my~ first:-1
 my~ flatmate:-4
 my~ friend:2
 my~ glass:-2
 my~ good:-6
 my~ granddaughter:-6
 my~ grandmother:-10
 my~ grandson:2
 my~ great:-3
 my~ hair:-2
 my~ hands:-9
 my~ handwrit:-7
 my~ head:-1
 my~ husband:-4
 my~ kilo:-3
 my~ kitchen:3
 my~ last:-11
 my~ late:-1
 my~ laundry:-4
 my~ list:-8
 my~ little:3
 my~ loaf:-3
 my~ mate:-7
 my~ mind:7
 my~ mold:-6
 my~ mother:-1
 my~ mould:1
 my~ mums:-7
 my~ nan:-7
 my~ nans:-4
 my~ neighbor:-5
 my~ neighbour:-3
 my~ nephew:-5
 my~ niece:-2
 my~ notebook:6
 my~ notes:-1
 my~ number:-2
 my~ oils:-2
 my~ old:-2
 my~ own:2
 my~ paper:1
 my~ paste:-7
 my~ phone:-4
 my~ plan:-3
 my~ pot:1
 my~ previou:1
 my~ pupil:-1
 my~ question:-3
 my~ recip:-1
 my~ recipe:-2
 my~ scal:-5
 my~ scale:5
 my~ second:-1
 my~ sheet:-3
 my~ sister:-8
 my~ skin:3
 my~ slow:-2
 my~ soap:-4
 my~ spreadsheet:-4
 my~ sums:1
 my~ superfat:-1
 my~ table:-8
 my~ teacher:-6
 my~ third:-3
 my~ thumb:-2
 my~ tongue:-3
 my~ usual:-10
 my~ very:-7
 my~ whole:-4
 my~ wife:1
 my~ wifes:-3
 my~%:-1
 my~0:-8
 my~A:1
 my~F:-2
 my~K:-6
 my~L:-9
 my~S:-5
 my~W:5
 my~b:1
 my~l:-7
 my~t:4
 my~w:3
 m~A:-8
 m~F:-4
 n:-2
 na:3
 nah:-3
 namaste:-4
 name:-11
 names:-6
 name~ ::-3
 nan:-9
 nans:-5
 natural:-7
 near:-4
 nearer:6
 nearer~0:4
 near~ enough:5
 near~ it:-1
 near~ the:-3
 near~%:-11
 near~0:1
 near~d:-1
 near~t:3
 need:-5
 needs:-6
 needs~ a:-5
 needs~ the:-6
 need~ ::-2
 need~ a:-5
 need~ it:3
 need~ more:-8
 need~ the:-7
 negative:3
 neighbor:-8
 neighbour:-4
 neither:3
 nephew:-3
 nerv:-8
 nervou:-3
 net:1
 never:-1
 never~ above:-6
 never~ added:4
 never~ again:-9
 never~ bother:-7
 never~ check:-7
 never~ did:-6
 never~ fail:-3
 never~ fails:-3
 never~ go:-8
 never~ got:8
 never~ happen:8
 never~ in:-5
 never~ let:-4
 never~ made:8
 never~ measur:-2
 never~ mind:-7
 never~ once:-2
 never~ set:5
 never~ the:-7
 never~ weigh:-1
 never~ went:-10
 new:-5
 news:-6
 newsletter:1
 newspaper:-6
 new~ bottle:-3
 new~ here:-2
 new~ one:3
 new~ scale:-4
 new~ to:-4
 new~ tub:-7
 new~>:-3
 new~w:-10
 next:-8
 next~ door:-6
 next~ month:-8
 next~ one:-7
 next~ time:-10
 next~ to:3
 next~ year:-3
 nice:-1
 nicer:-7
 niece:3
 night:-4
 night~ and:-3
 night~ before:-6
 nil:2
 no:-1
 nobody:-2
 nobody~ answer:-3
 nobody~ had:5
 nobody~ has:3
 nobody~ will:-1
 none:5
 none~ at:-6
 none~ in:-2
 none~ the:-3
 nonna:-9
 noon:-7
 nor:1
 normal:-7
 normal~ ?:-6
 normal~ one:-3
 north:-2
 nose:-9
 not:1
 note:6
 notebook:-2
 notebook~ ::-6
 notebook~ it:-7
 notebook~ p:-3
 notebook~ says:2
 notebook~ the:-5
 notes:-2
 notes~ ::1
 notes~ app:-5
 notes~ from:-6
 notes~ page:-4
 note~ ::-2
 noth:-4
 noth~ and:-4
 noth~ at:-6
 noth~ but:-5
 noth~ else:-1
 noth~ i:4
 noth~ in:-2
 noth~ only:-6
 notic:6
 notic~ the:3
 notic~ when:5
 not~ ?:-3
 not~ a:-10
 not~ at:-5
 not~ bad:-6
 not~ be:-8
 not~ certain:5
 not~ fluid:-8
 not~ for:-5
 not~ in:3
 not~ like:-6
 not~ more:-5
 not~ on:7
 not~ so:-6
 not~ sure:3
 not~ that:-6
 not~ the:-2
 not~ to:-8
 not~ touch:-4
 not~ use:-3
 not~ what:-4
 not~0:-7
 not~A:-3
 not~F:11
 not~b:6
 not~e:8
 not~w:-2
 nought:-1
 november:-4
 now:3
 nowaday:-7
 nowhere:-6
 now~ ::-4
 now~ and:-2
 now~ im:-6
 now~ in:1
 now~ it:-3
 now~ its:4
 now~ my:3
 now~ on:3
 now~ so:-10
 now~ the:2
 now~F:2
 no~ ?:-3
 no~ ash:-4
 no~ difference:-8
 no~ gel:-4
 no~ good:-4
 no~ harm:-6
 no~ i:-6
 no~ idea:2
 no~ it:5
 no~ longer:6
 no~ more:-1
 no~ need:-6
 no~ one:-1
 no~ other:-6
 no~ reason:-4
 no~ scale:1
 no~ smell:-3
 no~ sorry:2
 no~ superfat:-7
 no~ time:-3
 no~ wait:5
 no~ white:-3
 no~ zap:-6
 no~0:1
 no~F:9
 no~I:6
 no~S:-8
 no~W:2
 no~X:-8
 nr:-2
 nr~0:-2
 number:-5
 number~ ?:-5
 number~ and:3
 number~ are:2
 number~ hold:-2
 number~ i:-6
 number~ is:-2
 number~0:-10
 nurse:-3
 nuts:-1
 n~ it:-2
 n~=:-3
 n~F:5
 o'clock:-1
 o:-5
 oat:-7
 oat~X:-3
 obvious:-7
 obvs:-6
 october:1
 odd:-6
 odds:-7
 of:2
 off:4
 offcut:-5
 offer:-7
 office:-8
 off~ ?:-1
 off~ and:2
 off~ at:-9
 off~ by:-2
 off~ for:6
 off~ i:-6
 off~ in:3
 off~ it:3
 off~ my:-5
 off~ the:3
 off~ what:9
 off~ with:1
 off~0:-5
 off~l:2
 off~w:-8
 often:-6
 of~ about:-4
 of~ all:-7
 of~ ammonia:-6
 of~ anyth:-8
 of~ batter:-7
 of~ clean:-5
 of~ cold:3
 of~ course:-2
 of~ doors:-8
 of~ dried:-1
 of~ each:7
 of~ everyth:4
 of~ eyes:-2
 of~ fat:2
 of~ fats:2
 of~ half:1
 of~ it:1
 of~ last:4
 of~ me:-2
 of~ melt:5
 of~ mine:-5
 of~ my:-3
 of~ noth:-6
 of~ oil:3
 of~ oils:-2
 of~ old:3
 of~ one:3
 of~ our:-4
 of~ paper:-6
 of~ paste:-6
 of~ ready:2
 of~ roast:-1
 of~ rough:-2
 of~ soap:1
 of~ solution:-5
 of~ some:3
 of~ stirr:-6
 of~ sunday:-8
 of~ that:6
 of~ the:2
 of~ these:-5
 of~ this:1
 of~ those:1
 of~ us:3
 of~ warm:-3
 of~ wet:-6
 of~ what:-3
 of~ which:-1
 of~ you:-4
 of~ your:-7
 of~%:2
 of~0:-7
 of~=:2
 of~>:-8
 of~A:2
 of~B:4
 of~C:6
 of~F:-3
 of~I:-4
 of~K:2
 of~L:8
 of~M:-4
 of~N:10
 of~T:-1
 of~U:2
 of~W:2
 of~X:-4
 of~t:-1
 of~v:-10
 of~w:-10
 ohio:-4
 oil:4
 oils:-1
 oils~ ::-1
 oils~ ?:-1
 oils~ altogether:-3
 oils~ and:-6
 oils~ are:-3
 oils~ at:-5
 oils~ because:-5
 oils~ but:-3
 oils~ come:-4
 oils~ g:-4
 oils~ i:-6
 oils~ in:-3
 oils~ or:-1
 oils~ to:-1
 oils~ were:3
 oils~ which:-6
 oils~=:-1
 oils~>:-2
 oils~T:-5
 oils~d:-1
 oily:6
 oil~ ?:-7
 oil~ and:-1
 oil~ at:7
 oil~ g:-4
 oil~ grams:-5
 oil~ in:-3
 oil~ is:1
 oil~ on:-2
 oil~ to:2
 oil~ was:-1
 oil~ weight:-5
 oil~l:2
 ok:-2
 okay:-4
 okay~ ?:-4
 okay~ for:-4
 okay~ so:-3
 okay~ to:-4
 ok~ ?:-2
 ok~ before:-3
 ok~ for:-5
 ok~ like:-4
 ok~ or:-2
 ok~ so:2
 ok~ to:-5
 ok~ with:-6
 old:2
 older:2
 oldest:-8
 old~ and:2
 old~ blanket:-2
 old~ days:-5
 old~ notebook:-8
 old~ one:-6
 old~ pillowcase:-3
 old~ recipe:1
 old~ sheet:1
 old~ soap:-7
 old~ tub:2
 old~A:4
 old~F:3
 olej:-3
 olej~F:-3
 oma:-4
 omg:-5
 on:-1
 once:-4
 once~ a:2
 once~ i:1
 once~ it:2
 once~ its:-3
 once~ the:-4
 one:-4
 ones:-5
 ones~ are:-8
 one~ ::-7
 one~ ?:-3
 one~ after:-8
 one~ and:4
 one~ at:5
 one~ bar:-6
 one~ batch:-6
 one~ block:2
 one~ bottle:-2
 one~ bowl:-7
 one~ can:-5
 one~ corner:-2
 one~ does:-3
 one~ for:-3
 one~ from:-9
 one~ go:3
 one~ had:-6
 one~ has:-3
 one~ i:-1
 one~ in:2
 one~ into:-4
 one~ is:-1
 one~ jug:-2
 one~ last:-6
 one~ loaf:2
 one~ of:3
 one~ on:-6
 one~ pan:-5
 one~ pot:-5
 one~ since:5
 one~ sorry:-6
 one~ spoon:7
 one~ the:1
 one~ thing:4
 one~ time:-4
 one~ to:-8
 one~ weigh:-7
 one~ went:-4
 one~ who:-6
 one~ with:-7
 one~ without:-5
 one~0:2
 one~F:-1
 one~t:-1
 one~w:-7
 onion:2
 only:3
 only~ a:2
 only~ about:5
 only~ after:-8
 only~ does:2
 only~ for:1
 only~ gave:4
 only~ got:-8
 only~ had:10
 only~ have:-3
 only~ i:-7
 only~ if:-2
 only~ notic:2
 only~ one:-2
 only~ so:-4
 only~ the:1
 only~ then:-8
 only~ there:-4
 only~ used:-4
 only~ want:-11
 only~ when:2
 only~ whether:-6
 only~0:12
 only~=:-8
 only~F:-9
 only~l:-8
 only~w:3
 onto:-1
 onto~ the:1
 on~ ::-3
 on~ ?:-4
 on~ a:-8
 on~ and:-7
 on~ before:-6
 on~ day:5
 on~ friday:1
 on~ glov:-3
 on~ her:-1
 on~ here:-9
 on~ high:-5
 on~ i:4
 on~ it:-6
 on~ its:-3
 on~ low:-6
 on~ me:-6
 on~ monday:-8
 on~ my:-1
 on~ offer:-7
 on~ one:-3
 on~ our:2
 on~ page:-5
 on~ paper:-7
 on~ purpose:-1
 on~ saturday:-2
 on~ slow:-2
 on~ sunday:-1
 on~ that:-3
 on~ the:1
 on~ them:-5
 on~ this:6
 on~ thursday:1
 on~ to:-3
 on~ top:-1
 on~ tue:-2
 on~ tuesday:-5
 on~ we:-8
 on~ with:6
 on~ your:-5
 on~0:-8
 on~=:-4
 on~>:-8
 on~A:4
 on~F:5
 on~t:-4
 oops:6
 open:1
 opens:4
 open~ a:-9
 open~ all:5
 open~ it:-4
 open~ since:7
 open~ the:-2
 open~ window:-4
 operator:-5
 operator~ ::-4
 opinion:-10
 opinion~ on:-5
 optional:5
 or:-2
 order:-8
 order~ ?:-3
 order~ of:-4
 ordinary:6
 original:-3
 or~ a:1
 or~ am:-8
 or~ did:-7
 or~ do:-4
 or~ does:-6
 or~ is:-7
 or~ it:-7
 or~ just:-5
 or~ less:-4
 or~ more:-8
 or~ nah:-3
 or~ no:-6
 or~ not:-4
 or~ should:-4
 or~ take:4
 or~ the:-2
 or~ thereabout:3
 or~ too:-2
 or~ will:-3
 or~0:2
 or~A:-6
 or~N:-6
 other:-3
 otherwise:-9
 otherwise~ it:-7
 other~ and:-1
 other~ half:1
 other~ way:-5
 other~0:2
 other~W:-6
 other~l:-5
 other~w:1
 ought:-6
 ought~ to:-6
 ounc:5
 ounce:-4
 ounc~ are:-6
 ounc~ by:-8
 ounc~ for:6
 our:-1
 ours:-9
 ours~ is:-6
 our~ club:3
 our~ course:-2
 our~ fami:-1
 our~ group:-10
 our~ own:-1
 our~ school:-5
 our~ teacher:-7
 our~ town:-2
 our~ village:5
 out:2
 outdoor:-7
 outside:-7
 outside~ and:-1
 outside~ on:-7
 out~ ::-7
 out~ ?:-1
 out~ again:3
 out~ and:4
 out~ at:3
 out~ by:4
 out~ for:3
 out~ from:-4
 out~ i:-7
 out~ in:-3
 out~ is:-8
 out~ like:-8
 out~ on:1
 out~ right:-4
 out~ so:1
 out~ the:-1
 out~ to:9
 out~ what:2
 out~ with:3
 out~0:3
 out~=:-2
 out~>:-9
 out~A:-2
 out~N:1
 out~w:1
 oval:-4
 oven:-10
 oven~ at:-4
 over:1
 overdo:-5
 overfat:3
 overheat:-5
 overnight~ at:-4
 over~ ?:-6
 over~ a:2
 over~ and:4
 over~ before:-5
 over~ for:5
 over~ from:4
 over~ half:-6
 over~ in:6
 over~ it:1
 over~ that:3
 over~ the:-4
 over~ this:1
 over~%:-10
 over~d:-3
 over~t:-5
 own:1
 own~ ::-4
 own~ a:-4
 own~ blog:3
 own~ line:-3
 own~ notes:-4
 own~0:-4
 own~F:3
 oyl:-4
 oyl~=:-6
 oz:2
 oz~ g:-3
 p:-6
 pack:2
 packet:7
 packet~ of:-3
 packs:-1
 packs~ of:-3
 paddle:-7
 page:-2
 page~ ::-5
 page~ for:-5
 page~ is:-4
 page~ sorry:-4
 page~0:-1
 paid~ for:6
 paid~0:-6
 pail:-8
 paint:5
 pair:3
 pairs:-6
 pair~ of:-1
 pal:-5
 pale:-11
 pan:2
 panic:-8
 panick:2
 pantry:-5
 pan~ and:1
 paper~ and:-4
 paper~ cup:5
 paper~0:-6
 paper~t:-5
 parcel:6
 parent:-3
 parish:-7
 participant:2
 partner:-2
 parts:-1
 parts~t:-3
 part~ ?:5
 part~ of:2
 part~0:-9
 pass:-9
 passt:-5
 passt~ das:-5
 pass~ the:-4
 past:2
 paste:-8
 paste~ ::2
 paste~ for:-1
 paste~ in:-4
 paste~ is:-5
 paste~ to:-6
 paste~ went:-2
 paste~ with:-4
 pastry:2
 past~ from:-4
 past~ its:-6
 past~ like:-6
 past~ straight:-3
 past~0:-2
 patch:-7
 patience:-7
 patient:-8
 pay:-1
 pcs:-6
 pct:-6
 pdf:-8
 peak:-8
 pearl:1
 pellet:4
 pencil:-1
 pencill:8
 pencil~ and:4
 people:-11
 people~ ask:-6
 people~ in:-3
 people~ who:-8
 people~0:-1
 per:-2
 percent:3
 percentag:-2
 perfect:-8
 perhap:8
 perhap~0:3
 period:-5
 person:-9
 per~ bar:-4
 per~ batch:2
 per~ kilo:-6
 petra:4
 ph:-9
 pharmacist:1
 pharmacy:-5
 phase:-8
 phase~ a:-3
 phase~ b:-3
 phase~ c:-2
 phenolphthalein:7
 phone:1
 phone~ and:6
 phone~ is:-6
 phone~ rang:8
 phone~ read:-8
 photo~ of:-1
 ph~ strip:-7
 pick:-2
 picture:-7
 piec:-2
 piece~ for:-6
 piece~ of:8
 piec~ of:3
 piec~0:-5
 pig:-6
 pillowcase:-3
 pinch:-1
 pinch~ of:-3
 pink:4
 pitcher:4
 place:5
 place~ of:3
 plain:-2
 plain~ white:-1
 plain~F:-7
 plain~W:4
 plan:-4
 plann:-1
 plann~ to:1
 plan~ for:2
 plastic:3
 plastic~ cup:3
 plastic~ jug:5
 plate:2
 play:-6
 pleas:-1
 please:5
 please~ ?:2
 please~ be:-5
 please~ check:-2
 please~ confirm:-7
 please~ dont:-8
 please~ excuse:-6
 please~ look:-9
 please~ my:7
 please~ say:1
 please~ verify:-8
 plenty:-7
 plenty~ for:-6
 plenty~ of:-3
 pls~ check:-3
 plumber:-4
 plus:2
 plus~ a:4
 plus~ an:4
 plus~ another:5
 plus~ the:6
 plus~0:-5
 plus~<:-6
 plus~=:-4
 plus~w:-7
 plz:-4
 pocket:2
 point:-2
 poland:-1
 polish:-1
 polypropylene:-4
 poor:-9
 popcorn:5
 pops:-4
 porch:-4
 porridge:2
 portion:-2
 portugal:1
 possible:-6
 post:-4
 postage:-1
 postal:1
 postal~ scale:1
 postman:1
 posts:-6
 post~ this:-6
 post~t:-2
 potato:-7
 potato~ and:-6
 potato~ i:-4
 potato~ stage:-2
 potato~ then:-4
 pots:-4
 pot~ ::-5
 pot~ and:-1
 pot~ are:-2
 pot~ at:-6
 pot~ for:-6
 pot~ holds:1
 pot~ i:-5
 pot~ is:-5
 pot~ of:-2
 pot~ off:-7
 pot~ oils:-8
 pot~ the:-6
 pot~ was:3
 pot~ went:-5
 pot~ with:1
 pot~0:1
 pot~=:-3
 pour:6
 pours:-8
 pour~ ::-5
 pour~ ?:-3
 pour~ and:-1
 pour~ at:-9
 pour~ cover:-1
 pour~ in:3
 pour~ into:-6
 pour~ it:-1
 pour~ off:3
 pour~ on:1
 pour~ out:4
 pour~ the:-7
 pour~0:4
 pour~=:1
 pour~>:-8
 pour~A:-5
 pour~F:-2
 pour~t:-4
 pour~w:-11
 powder:5
 powder~0:6
 power:-1
 power~ cut:5
 pp:-5
 ppl:-7
 practical:-7
 prefer:5
 premix:-8
 prep:-4
 present:-2
 press:-6
 press~ in:-6
 press~ into:-1
 press~ it:-3
 press~0:-9
 pretty:-4
 pretty~ but:-6
 previou:1
 pric:-5
 price:-4
 print:4
 printout:-5
 print~ on:1
 print~0:-7
 prob:2
 probab:1
 problem:-2
 problem~ ?:3
 proces:-2
 proces~ ::-2
 proces~ crock:-3
 proces~ in:-2
 proces~ slow:-2
 professor:3
 project:-6
 promis:-2
 promis~ my:-1
 proper:-5
 proper~ ::-4
 proportion:3
 proud:-6
 ps:4
 pub:-6
 puck:-1
 pucks:-4
 puck~ dual:-6
 pudd:-7
 puddle:3
 pull:4
 pump:-2
 pupil:-1
 pure:1
 pure~ and:-8
 pure~F:-4
 purity:5
 purpose:-1
 push:-6
 put:3
 puts:-6
 puts~ everyth:-3
 puts~>:-1
 put~ a:2
 put~ in:5
 put~ it:-2
 put~ the:1
 put~ them:-4
 put~ together:-7
 put~0:-2
 put~<:-9
 put~=:-8
 put~>:1
 put~F:4
 put~w:-2
 q:-9
 qty:-4
 qty~ g:-1
 quantiti:6
 quantity:-3
 quantity~ ?:-4
 quantity~ of:-3
 quarter:9
 quarter~ of:6
 question:-5
 question~ ::-4
 question~ about:-3
 question~ from:-3
 question~ is:-4
 question~ mark:-1
 quick:-7
 quicker:-4
 quicker~ than:-4
 quick~ one:-4
 quite:1
 quot:-4
 q~ ::-2
 r:-2
 rack:-6
 rack~ and:-1
 radiator:-4
 radio:-9
 rain:-1
 rainy:-6
 rainy~ sunday:-3
 rais:-7
 ran:4
 rancid~ so:6
 rang:5
 rang~ the:-9
 ran~ dry:5
 ran~ out:1
 ran~ short:3
 ran~ the:-6
 rate:-5
 rather:5
 rather~ than:4
 raw:1
 re:-3
 reach:-4
 reach~ the:6
 reach~d:-6
 read:-1
 reader:-1
 reads:4
 reads~ in:-5
 ready:2
 ready~ dissolv:3
 ready~ for:-6
 ready~ in:-5
 ready~ made:1
 ready~ to:-7
 read~ it:-3
 read~ that:-4
 read~ the:-3
 read~ this:-2
 read~0:-1
 read~>:4
 read~F:4
 read~b:-1
 real:2
 realis:6
 reality:3
 real~ a:7
 real~ have:-4
 real~ weigh:-8
 real~A:-2
 real~N:5
 reason:-1
 rebatch:4
 recall:6
 receipt:8
 recette:-3
 recheck:1
 recip:-10
 recipe:-2
 recipe~ ::-2
 recipe~ ?:-3
 recipe~ and:-5
 recipe~ card:-1
 recipe~ for:2
 recipe~ from:-6
 recipe~ i:-4
 recipe~ in:3
 recipe~ is:-2
 recipe~ of:-4
 recipe~ on:-5
 recipe~ was:3
 reckon:5
 reckon~ with:1
 record:-2
 record~0:-6
 red:3
 refill:2
 refin:2
 regard:-4
 remain:-8
 remainder:6
 remain~0:3
 remark:-6
 remark~ ::-2
 remember:3
 remember~ it:-7
 render:-8
 render~ and:1
 render~ it:1
 render~ the:-4
 render~ twice:-5
 render~=:-4
 repeat:-5
 replac:5
 replace:-5
 replace~ it:2
 replac~ by:5
 replac~ the:-1
 reply:-6
 reply~ to:-4
 report:-3
 rescue:7
 rest:3
 rest~ is:4
 rest~ of:-3
 rest~F:-4
 rest~t:-2
 result:1
 retir:-9
 rev:-8
 rev~0:-7
 re~ ::-2
 ribbon:-5
 rice:-2
 rich:-9
 rid:-2
 rid~ of:-2
 right:-2
 right~ ?:-2
 right~ about:1
 right~ amount:-4
 right~ and:-4
 right~ at:3
 right~ before:-1
 right~ but:6
 right~ for:-7
 right~ now:-5
 right~ on:-4
 right~ or:-3
 right~ so:-4
 right~ the:-3
 right~ to:-3
 right~ with:-7
 rim:-1
 ring:-6
 ring~t:-1
 rins:1
 rinse:-5
 rinse~ the:-2
 rins~ the:-1
 rises:-4
 roast:-3
 rock:-6
 roll:-7
 roof:1
 room:-2
 room~ for:2
 room~ temp:-4
 room~ temperature:-1
 room~0:-5
 rough:2
 rough~d:-1
 rough~w:2
 round:1
 round~ and:-2
 round~ it:-2
 round~ the:3
 round~ to:2
 row:1
 row~0:5
 rspo:-7
 rugby:-3
 rugby~ club:-3
 ruin:-3
 rule:-10
 rules:1
 run:-3
 runn:-6
 runny:7
 runs:-3
 run~ it:-7
 run~ out:-9
 run~ the:-4
 rush:-1
 rustic:-8
 s0ap:-5
 s:-7
 sack:-3
 safe:-1
 safety:-3
 safe~ ?:-5
 safe~ for:-4
 safe~ side:4
 safe~ to:-2
 said:-1
 said~ a:3
 said~ it:-2
 said~ my:6
 said~ no:-7
 said~ so:-8
 said~ that:-6
 said~ the:-2
 said~ yes:-7
 said~>:-4
 said~b:6
 said~w:-6
 salad:-5
 sale:-7
 salt:3
 same~ amount:6
 same~ as:-7
 same~ bar:-4
 same~ fats:1
 same~ for:-3
 same~ in:1
 same~ number:-8
 same~ oils:-6
 same~ pot:3
 same~ recipe:6
 same~ thing:-4
 same~ weight:7
 same~F:-1
 same~b:9
 sample:-8
 sandpaper:-4
 sane:-5
 sane~ ?:-3
 sang:-8
 sanity:-5
 sanity~ check:-5
 saponification:2
 saturday:-2
 saturday~ ?:-1
 saturday~ market:-2
 sat~ on:-7
 sat~t:-2
 saucer:-4
 saves:-5
 savon:-3
 saw:5
 saw~ the:3
 say:5
 says:3
 says~ ::-7
 says~ and:1
 says~ but:-5
 says~ he:7
 says~ i:1
 says~ it:-3
 says~ its:-9
 says~ min:7
 says~ my:-7
 says~ no:-5
 says~ that:2
 says~ the:-2
 says~0:6
 says~=:-5
 says~>:1
 says~A:3
 says~F:-1
 says~b:-2
 says~e:6
 says~v:2
 says~w:2
 say~ a:6
 say~ how:1
 say~ if:2
 say~ it:-10
 say~ that:2
 say~ thats:-5
 say~ the:-9
 say~%:4
 say~0:8
 say~F:-7
 say~b:7
 say~w:8
 scal:-2
 scale:3
 scale~ ::-2
 scale~ and:-8
 scale~ at:4
 scale~ before:-7
 scale~ but:-7
 scale~ died:3
 scale~ does:-9
 scale~ for:-9
 scale~ goes:1
 scale~ i:-11
 scale~ is:1
 scale~ it:-5
 scale~ jumps:2
 scale~ only:4
 scale~ said:-6
 scale~ says:2
 scale~ shows:1
 scale~ so:-10
 scale~ that:-1
 scale~ was:5
 scale~ with:-3
 scale~w:-5
 scal~ to:4
 scar:-4
 school:-3
 school~ fair:3
 school~ fete:5
 science:-7
 scoop:8
 scorch:-2
 scrap:7
 scrap~ it:-1
 scrap~ the:4
 scratch:-12
 screen:2
 scribbl:-3
 scrubb:-7
 scrubb~ the:-5
 scum:1
 seal:-3
 season:3
 second~ batch:-7
 second~ day:-7
 second~ go:1
 second~ half:4
 second~ one:-4
 second~ opinion:-4
 second~ pair:-2
 second~ time:2
 second~ try:-2
 secret:-6
 see:3
 seed:-5
 seem:9
 seems:-6
 see~ a:-8
 see~ here:2
 see~ how:-6
 see~ if:-6
 see~ it:-10
 see~ me:-5
 see~ that:4
 see~ the:-1
 see~ through:-7
 see~ what:1
 seiz:-1
 self~ ::1
 sell:-7
 seller:4
 sells:4
 sells~ at:-4
 sell~ at:-1
 sense:1
 sensible:-4
 sensible~ ?:-4
 sensitive:2
 sent:3
 sent~ me:2
 separat:-6
 separate:-10
 september:-6
 serv:3
 serv~ ::-4
 set:3
 sets:-11
 sets~ in:-4
 sett:-2
 settl:-2
 settle:3
 settl~ on:-5
 set~ aside:-5
 set~ in:-7
 set~ it:6
 set~ on:-7
 set~ the:-6
 set~ to:3
 set~ up:-4
 sf:4
 shade:-6
 shall:2
 shampoo:2
 shampoo~ bar:-5
 share:5
 sharp:-3
 shav:-4
 shave:-6
 shave~ puck:-4
 shave~ soap:-3
 shav~ puck:-4
 shav~ soap:-1
 she:-5
 shed:-2
 sheep:-5
 sheet:2
 sheet~ ::-3
 sheet~ and:5
 sheet~ for:3
 sheet~ says:4
 sheet~ sorry:-4
 sheet~0:-8
 shelf:-3
 shelf~ for:-2
 shes:-5
 shes~0:-4
 she~ also:5
 she~ alway:-3
 she~ asked:-6
 she~ did:-5
 she~ does:-1
 she~ gets:-7
 she~ got:-5
 she~ had:-7
 she~ has:-6
 she~ is:1
 she~ made:-5
 she~ right:-3
 she~ said:-1
 she~ says:-6
 she~ stirr:-2
 she~ swear:-3
 she~ told:-3
 she~ used:-5
 she~ wants:5
 she~ was:1
 she~ weigh:-1
 she~ who:-1
 she~ would:-6
 shift:-1
 shine:-8
 shiny:-9
 shoe:-3
 shoebox:-4
 shoebox~ lined:-2
 shoe~ box:-4
 shook:4
 shop:1
 shopp:-7
 shopp~ list:-4
 shops:-3
 shop~ and:4
 shop~ had:3
 shop~ soap:3
 short:3
 shortage:-3
 short~ ::3
 short~ ?:-7
 short~ burst:-1
 short~ of:-6
 short~ on:-2
 short~ so:5
 short~ the:3
 shot:1
 should:-1
 should~ be:-2
 should~ i:-7
 should~ read:10
 should~ say:4
 shout:-9
 show:-4
 shower:-6
 shows~ whole:-8
 shows~0:-3
 shows~w:2
 show~b:1
 shrink:-8
 shut~ in:5
 shy:2
 side:-3
 sides:-4
 sideway:-6
 side~ of:4
 siev:-1
 sieve:-1
 sign:-5
 silicone:-8
 silicone~ loaf:-3
 silicone~ mould:-4
 sill:-7
 silly:9
 simp:-2
 simple:-5
 since:3
 since~ about:-3
 since~ i:-2
 since~ it:6
 since~ last:1
 since~ my:5
 since~ spr:2
 since~ the:3
 since~ then:3
 since~0:-7
 since~F:3
 since~t:5
 sink:-1
 sink~ and:-4
 sink~ of:-6
 sink~ with:-4
 sir:-1
 sis:-2
 sister':3
 sister:-8
 sister~ in:-4
 sister~ says:-2
 sits~ in:-6
 sitt:2
 sitt~ in:-2
 sitt~ on:2
 size:2
 size~ of:-4
 skin:-4
 skin~ and:-2
 skin~ is:6
 skin~ of:1
 skin~ off:-5
 skin~ so:3
 skip:4
 skipp:13
 skipp~ it:6
 skipp~ the:9
 skull:-7
 slab:-7
 slab~ mould:-3
 slaughter:-7
 sleep:-7
 sleev:-5
 slept:-5
 slic:-7
 slice:-6
 slid:-4
 slimy:-8
 slip:2
 slipp:10
 slipp~ and:8
 sliver:-7
 slosh:-1
 slow:-4
 slow~ cooker:-4
 slow~ into:-4
 slush:-6
 small:-3
 smallest:-2
 small~ print:5
 smell:-5
 smell~ a:-5
 smell~ faint:-5
 smell~ is:-5
 smell~ it:2
 smell~ like:-3
 smell~ of:-5
 smell~ the:-6
 smelt:4
 smelt~ like:-5
 smoke:-7
 smooth:-8
 sneeze:-6
 sniff:1
 snow~ white:-5
 so:2
 soak:7
 soap':2
 soap:-7
 soaper:-5
 soaps:-8
 soap~ ::-4
 soap~ ?:-1
 soap~ again:-5
 soap~ and:-5
 soap~ at:-6
 soap~ attempt:-2
 soap~ day:-2
 soap~ diary:-5
 soap~ ever:-3
 soap~ for:-5
 soap~ from:-6
 soap~ i:-4
 soap~ in:-8
 soap~ is:-7
 soap~ it:-5
 soap~ like:-4
 soap~ my:-5
 soap~ of:-5
 soap~ on:-5
 soap~ paste:-1
 soap~ pot:-6
 soap~ since:-3
 soap~ smell:-5
 soap~ so:-2
 soap~ the:-4
 soap~ w:-7
 soap~ was:-7
 soap~ with:-3
 soap~0:-4
 soap~A:-5
 soft:-6
 soften:-7
 softer:3
 soft~ after:-2
 soft~ and:-4
 soft~ as:-7
 soft~ at:-2
 soft~ for:-2
 soft~ in:-5
 soft~ on:-2
 soft~ so:3
 soft~ soap:-4
 sold:-7
 sold~ at:-3
 sold~ out:-4
 sold~0:-6
 soleseife:-5
 solid:-3
 solution:1
 solution~ and:-4
 solution~ in:-1
 solution~ plus:-5
 some:3
 somebody:-2
 somebody~ asked:-6
 somebody~ check:-3
 somebody~ else:-3
 somebody~ here:1
 somebody~ look:-6
 somebody~ post:-1
 somebody~ run:-5
 somebody~ tell:2
 somebody~ to:-4
 somebody~ with:-3
 someone:-1
 someone~ at:-7
 someone~ in:-7
 someone~ look:-6
 someone~ tell:-6
 someone~ to:-6
 someone~ with:-5
 someth~ else:-1
 someth~ like:3
 some~ of:3
 some~ people:-8
 some~ went:2
 some~0:-5
 some~F:-4
 some~N:7
 some~X:-2
 soon:-6
 sooner:-7
 sooner~ than:-7
 sorry~ about:-3
 sorry~ for:-4
 sorry~ i:-11
 sorry~ if:3
 sorry~ it:-5
 sorry~ my:-4
 sorry~ the:4
 sort:4
 sort~ of:-6
 sound:-8
 sound~ ?:-5
 sound~ like:-7
 sound~ right:1
 soup:-3
 sour:-1
 source:5
 source~ ::5
 south:-4
 so~ ::-5
 so~ ?:2
 so~ a:3
 so~ all:3
 so~ another:7
 so~ bear:-6
 so~ before:-4
 so~ call:7
 so~ did:-3
 so~ do:-3
 so~ does:-5
 so~ dont:2
 so~ excuse:-6
 so~ far:-5
 so~ fast:-3
 so~ for:-7
 so~ forgive:-4
 so~ good:3
 so~ here:-7
 so~ hot:-6
 so~ i'd:-10
 so~ i:-5
 so~ if:-6
 so~ im:-1
 so~ in:4
 so~ is:2
 so~ it:2
 so~ its:5
 so~ ive:-6
 so~ just:5
 so~ keep:-7
 so~ last:-8
 so~ little:-8
 so~ maybe:2
 so~ much:-5
 so~ my:3
 so~ no:3
 so~ noth:-1
 so~ now:-5
 so~ of:7
 so~ on:-3
 so~ please:1
 so~ sorry:-8
 so~ take:2
 so~ that:-8
 so~ thats:6
 so~ the:1
 so~ ther:5
 so~ there:-2
 so~ this:-4
 so~ those:1
 so~ um:1
 so~ we:-2
 so~ what:5
 so~ whats:3
 so~ who:4
 so~ you:-1
 so~%:-7
 so~0:7
 so~=:1
 so~>:-1
 so~F:-1
 so~N:11
 so~b:-3
 so~e:-10
 so~l:-6
 so~t:-3
 so~w:-3
 spa:3
 space:-5
 spain:-6
 spare:-2
 spatula:-6
 speed:-7
 spell:-9
 spend:-6
 spent:1
 spill:-5
 spilt:1
 splash:5
 splash~ of:2
 split:3
 split~ it:1
 spoon:-1
 spoonful:3
 spoonful~ in:1
 spoonful~ of:-2
 spoon~ at:-6
 spoon~ by:-6
 spoon~ for:3
 spoon~ in:-3
 spoon~ into:-4
 spoon~ it:-4
 spoon~ of:2
 spoon~ slipp:7
 spot:-9
 spots:-2
 spots~ after:-3
 spott:-3
 spot~ on:-5
 spr:1
 spray:-7
 spreadsheet:-5
 sprinkl:-8
 sprinkle:-3
 sprinkle~ the:-3
 sprinkl~ over:-3
 sprinkl~=:-1
 spr~ and:-1
 squeez:6
 sry:2
 stable:-7
 stack:-2
 stag:-8
 stage:-1
 stage~ at:-3
 stain:-8
 stainles:-5
 stall:1
 stamp:-11
 stamp~ and:-4
 stand:-5
 standard:-5
 stand~ ::-2
 stand~ at:-6
 stand~ by:-6
 stand~ for:-3
 stand~ in:-1
 stand~ it:5
 stand~ on:3
 stand~ the:-3
 stand~ there:-5
 stand~ up:2
 stank:-5
 start~ ::-4
 start~ ?:-3
 start~ and:-7
 start~ at:-1
 start~ out:-7
 start~ the:-4
 start~ to:-5
 start~ with:4
 start~t:-5
 stat:4
 static:2
 stay:4
 stays:-6
 stays~ as:2
 stays~ in:-7
 stay~ a:1
 stay~ at:2
 stay~ clear:3
 stay~ cloudy:-2
 stay~ in:9
 stay~ soft:-6
 steam:-13
 steel:1
 steel~ bowl:-9
 steel~ jug:-4
 steel~ pot:-5
 step:-6
 steps:1
 steps~ of:4
 step~0:-1
 stick:-1
 stickblend:-8
 sticker:-3
 sticky:2
 stick~ blend:-4
 stick~ blender:-8
 stiff:3
 still:1
 still~ a:-7
 still~ about:1
 still~ cloudy:3
 still~ fine:-5
 still~ good:5
 still~ got:-6
 still~ had:4
 still~ have:-2
 still~ in:3
 still~ like:-7
 still~ ok:-7
 still~ on:4
 still~ right:-5
 still~ sitt:7
 still~ smell:-6
 still~ soap:-6
 still~ soft:-1
 still~ stand:3
 sting:-7
 stingy:1
 stink:-6
 stir:-4
 stirr:-1
 stirr~ and:-6
 stirr~ every:-6
 stirr~ for:-2
 stirr~ in:4
 stirr~ into:5
 stirr~ it:-8
 stirr~ one:-6
 stirr~ the:-1
 stirr~ with:-6
 stirr~t:-2
 stirs:-6
 stir~ by:-4
 stir~ every:-1
 stir~ for:-2
 stir~ in:-2
 stir~ it:2
 stir~ the:-8
 stir~ till:-2
 stir~ until:-3
 stir~ with:-4
 stir~0:-5
 stir~=:-2
 stir~t:-4
 stock:1
 stone:-1
 stood~ at:3
 stood~ in:3
 stop:-7
 stopp:7
 stopp~ at:7
 stops:-4
 stor:-5
 store:1
 store~ the:-6
 story:1
 story~ time:-7
 stove:5
 straight:-3
 straight~ away:-3
 straight~ from:-4
 straight~ into:-6
 straight~ out:3
 straight~ to:2
 strain:5
 strainer:-7
 strain~ it:-5
 strain~ the:-1
 strain~ through:-9
 strain~ twice:1
 strange:-7
 streak:-5
 stream:-4
 street:-6
 strength:3
 stretch:4
 strike:3
 strip:-6
 stripp:-6
 stripp~ the:-5
 strip~ says:-6
 strip~0:-2
 strong:3
 stronger:2
 strong~ ?:-8
 strong~ for:-4
 struck:5
 struck~ out:2
 stuck:3
 stuck~ in:5
 stuck~ to:2
 student:1
 stuff:-3
 stupid:-6
 style:-4
 subject:-3
 subject~ ::-3
 such:2
 suds:-6
 suit:-6
 suits:-5
 sum:-2
 summer:3
 summer~ and:6
 sums:-2
 sun:1
 sunday~ ::-5
 sunday~ and:1
 sunday~ in:-6
 sunday~ roast:2
 sunday~ soap:-3
 superfat:5
 superfat~ ::4
 superfat~ ?:-2
 superfat~ and:-6
 superfat~ at:2
 superfat~ because:-1
 superfat~ did:-11
 superfat~ do:-4
 superfat~ does:-8
 superfat~ for:1
 superfat~ i:-4
 superfat~ in:2
 superfat~ is:-12
 superfat~ of:-10
 superfat~ on:-11
 superfat~ should:-9
 superfat~ with:1
 superfat~%:3
 superfat~0:3
 supermarket:-5
 supplier:2
 suppose:-1
 sure:6
 sure~ about:-11
 sure~ of:2
 surface:-7
 surviv:-1
 survive:-5
 suspect:5
 swap:-5
 swapp:7
 swapp~ for:3
 swapp~F:5
 swaps:-10
 swear:1
 swear~ by:-3
 swear~ it:-7
 swear~ to:7
 sweat:-6
 sweat~ in:-2
 sweet:-5
 swept:4
 swirl:-7
 swirl~ with:-5
 switch:1
 switch~ itself:-2
 switch~ off:-5
 switch~ to:-3
 swore:-4
 t:-7
 ta:-5
 tabl:-6
 table:3
 tablespoon:5
 table~ is:-8
 table~0:-6
 tabs:-7
 taffy:-10
 tags:-7
 tak:7
 take:3
 taken:2
 takes:-13
 takes~ about:-1
 takes~ its:-5
 takes~ me:-4
 takes~ the:-3
 takes~=:-1
 takes~t:-2
 takes~w:-4
 take~ a:-4
 take~ it:-6
 take~ my:2
 take~ off:-3
 take~ that:5
 take~ the:-6
 take~ your:3
 take~0:-9
 take~=:-4
 take~w:-9
 talk:-8
 tall:-6
 tan:-5
 tape:-7
 tared:6
 tare~ button:-4
 tast:-8
 taste:3
 taught:-6
 taught~ me:-3
 teach:-1
 teacher:-3
 team:-3
 teaspoon:2
 technical:10
 technical~ grade:7
 telephone:-4
 tell:-3
 tells~ me:1
 tell~ me:-1
 tell~ my:-8
 tell~ the:-1
 tell~ them:-6
 tell~ us:-9
 tell~ whether:2
 tell~ you:3
 temp:-5
 temper:1
 temperature:-9
 temps:-5
 temp~d:-2
 tenth:3
 tenth~ of:4
 term:-6
 test:-2
 tester:3
 test~ ::-3
 test~ a:-3
 test~ at:-9
 test~ batch:-5
 test~ it:5
 test~ ok:-2
 test~ with:-5
 text:-3
 than:-1
 thank:-5
 thank~ for:-5
 thank~ to:-2
 thank~ you:-6
 than~ i:3
 than~ it:6
 than~ my:3
 than~ that:-4
 than~ the:-4
 than~ usual:2
 than~0:1
 than~d:-5
 that:5
 thats:-1
 thats~ a:-8
 thats~ all:-5
 thats~ fine:2
 thats~ how:3
 thats~ in:1
 thats~ it:-6
 thats~ my:-6
 thats~ normal:-2
 thats~ the:-6
 thats~ what:5
 thats~ why:-6
 thats~>:-1
 thats~l:-10
 that~ ?:4
 that~ a:-9
 that~ about:-7
 that~ add:-3
 that~ and:3
 that~ away:7
 that~ be:4
 that~ bit:3
 that~ came:-3
 that~ come:-1
 that~ day:9
 that~ enough:-2
 that~ from:-7
 that~ goes:-1
 that~ has:-5
 that~ hold:-3
 that~ i'd:-3
 that~ i:1
 that~ im:1
 that~ in:-3
 that~ into:-4
 that~ isnt:3
 that~ it:-10
 that~ its:1
 that~ leave:-5
 that~ look:-6
 that~ makes:-7
 that~ matter:5
 that~ mine:4
 that~ much:1
 that~ my:1
 that~ never:5
 that~ nobody:2
 that~ noth:-4
 that~ off:7
 that~ okay:-2
 that~ on:2
 that~ one:-6
 that~ out:4
 that~ real:-9
 that~ right:-2
 that~ she:1
 that~ so:-7
 that~ solution:-8
 that~ sound:-1
 that~ still:-6
 that~ the:4
 that~ ther:-6
 that~ too:-6
 that~ was:-8
 that~ way:1
 that~ we:-6
 that~ went:-3
 that~ what:-9
 that~ you:-3
 that~0:9
 that~=:-7
 that~A:-3
 that~F:1
 that~L:3
 that~b:7
 thaw:-1
 the:1
 their:-4
 their~ own:1
 them:-2
 them~ ::-2
 them~ and:-4
 them~ from:-4
 them~ is:-2
 them~ out:-4
 them~ to:-5
 them~ together:3
 them~0:-4
 them~t:-4
 then:-2
 then~ ::-3
 then~ add:-4
 then~ and:-10
 then~ another:4
 then~ at:-5
 then~ i:3
 then~ in:-4
 then~ into:-5
 then~ it:5
 then~ its:-7
 then~ like:-4
 then~ my:3
 then~ off:-1
 then~ pour:-6
 then~ stir:-2
 then~ stirr:-2
 then~ the:-9
 then~ tipp:-4
 then~ weigh:-8
 then~ when:-6
 then~0:3
 then~<:3
 then~=:-4
 then~>:-1
 then~A:-7
 then~F:-3
 then~S:-3
 then~W:2
 then~e:-6
 then~t:-4
 then~v:7
 then~w:-2
 there:3
 thereabout:3
 therefore:3
 there~ ?:-8
 there~ and:1
 there~ are:-1
 there~ because:2
 there~ enough:-3
 there~ is:-1
 there~ may:4
 there~ or:-6
 there~ so:-6
 there~ too:3
 there~ was:-1
 there~ were:2
 there~ with:-5
 thermometer:-8
 ther~ a:-2
 ther~ also:2
 ther~ no:-8
 ther~0:-4
 ther~=:2
 ther~F:-5
 ther~w:-10
 these:-8
 these~ are:-4
 these~ days:4
 these~ fats:-3
 these~ oils:-3
 they:-4
 theyd:3
 theyll:-4
 theyre:-1
 they~ are:5
 they~ did:-2
 they~ do:-6
 they~ had:-1
 they~ say:3
 they~ went:1
 they~ were:-7
 the~ above:3
 the~ allotment:-4
 the~ amount:-2
 the~ answer:-2
 the~ app:2
 the~ attic:-3
 the~ autumn:-8
 the~ baby:1
 the~ back:2
 the~ bag:3
 the~ balance:-4
 the~ balcony:2
 the~ bar:2
 the~ bars:-11
 the~ batch:-3
 the~ bath:-7
 the~ bathroom:1
 the~ batter:-8
 the~ battery:-2
 the~ beaker:5
 the~ beginn:-1
 the~ bell:-8
 the~ bench:-4
 the~ best:-3
 the~ big:-2
 the~ bin:-3
 the~ birds:-3
 the~ bit:-4
 the~ blend:-7
 the~ blender:1
 the~ block:4
 the~ blog:-4
 the~ blue:1
 the~ board:3
 the~ book:-4
 the~ bottl:-7
 the~ bottle:4
 the~ bowl:5
 the~ box:1
 the~ boys:5
 the~ brim:-1
 the~ bubbl:-4
 the~ bucket:2
 the~ bus:-2
 the~ butcher:-1
 the~ camp:1
 the~ can:2
 the~ candle:-5
 the~ canister:6
 the~ car:-8
 the~ card:-7
 the~ caretaker:-6
 the~ ceil:-4
 the~ cellar:-8
 the~ certifi:-6
 the~ certificate:3
 the~ cheap:-8
 the~ chemist:-2
 the~ children:2
 the~ choir:-4
 the~ church:-4
 the~ class:-5
 the~ clean:-2
 the~ clock:-3
 the~ club:-1
 the~ clubs:-2
 the~ co:1
 the~ code:-4
 the~ cold:1
 the~ column:-3
 the~ comma:5
 the~ comment:-7
 the~ cook:1
 the~ cooker:1
 the~ cool:-6
 the~ corner:-4
 the~ cost:-5
 the~ counter:4
 the~ county:-6
 the~ course:1
 the~ crock:1
 the~ crockpot:-1
 the~ crumb:2
 the~ cubes:-4
 the~ cup:-3
 the~ cupboard:-1
 the~ cure:-9
 the~ date:-7
 the~ day:-3
 the~ decimal:-4
 the~ difference:1
 the~ discount:-4
 the~ dish:5
 the~ dog:1
 the~ door:-1
 the~ dot:-6
 the~ doubl:-7
 the~ double:-2
 the~ drain:1
 the~ drawer:1
 the~ drum:7
 the~ dry:3
 the~ edge:-4
 the~ edges:-1
 the~ empty:-8
 the~ end:2
 the~ ends:-6
 the~ even:-7
 the~ face:-6
 the~ fami:1
 the~ farm:-1
 the~ fat:-6
 the~ fats:1
 the~ feed:3
 the~ fence:-5
 the~ figur:-6
 the~ figure:3
 the~ finish:-2
 the~ first:-3
 the~ flak:4
 the~ flat:-2
 the~ floor:6
 the~ foam:-9
 the~ freezer:-11
 the~ fridge:-1
 the~ front:1
 the~ fryer:2
 the~ full:3
 the~ fumes:-8
 the~ funnel:4
 the~ garage:-3
 the~ garden:-3
 the~ gas:-5
 the~ gel:-1
 the~ glass:1
 the~ goat:5
 the~ goats:3
 the~ goggl:-2
 the~ good:-2
 the~ gram:-6
 the~ greasy:-8
 the~ group:1
 the~ half:4
 the~ hall:-6
 the~ hand:-5
 the~ handout:1
 the~ hands:-1
 the~ hard:-6
 the~ heat:-7
 the~ hens:-7
 the~ holiday:-3
 the~ hood:-7
 the~ hot:2
 the~ house:7
 the~ internet:-4
 the~ jars:-6
 the~ jug:-2
 the~ kettle:6
 the~ kids:-4
 the~ kilo:6
 the~ kitchen:-4
 the~ label:4
 the~ lads:-2
 the~ lady:-3
 the~ larder:-1
 the~ last:3
 the~ laundry:3
 the~ leaflet:1
 the~ leftover:2
 the~ letter:2
 the~ library:-6
 the~ lid:2
 the~ light:-5
 the~ line:5
 the~ liquid:6
 the~ list:11
 the~ litre:6
 the~ little:-1
 the~ loaf:-4
 the~ log:-6
 the~ long:3
 the~ look:1
 the~ lot:2
 the~ lowest:-4
 the~ lump:-1
 the~ machine:-4
 the~ man:-5
 the~ margin:-2
 the~ mark:5
 the~ market:-4
 the~ mass:-4
 the~ measur:4
 the~ mechanic:2
 the~ melt:-2
 the~ mess:-3
 the~ microwave:1
 the~ middle:-5
 the~ mill:-4
 the~ miss:4
 the~ mix:5
 the~ mold:1
 the~ month:-5
 the~ moon:-3
 the~ morn:-7
 the~ most:-9
 the~ mould:-3
 the~ name:-6
 the~ neighbour:-2
 the~ new:-2
 the~ next:-3
 the~ night:-6
 the~ normal:-5
 the~ number:1
 the~ oil:2
 the~ ones:-4
 the~ only:-7
 the~ open:3
 the~ order:-7
 the~ original:3
 the~ other:2
 the~ oven:-9
 the~ packet:7
 the~ page:-5
 the~ pan:3
 the~ pantry:-7
 the~ paper:7
 the~ parish:-7
 the~ part:-5
 the~ past:-1
 the~ paste:-3
 the~ patience:-4
 the~ phone:5
 the~ photo:3
 the~ picture:-3
 the~ place:6
 the~ plain:-6
 the~ plastic:3
 the~ plate:4
 the~ point:-2
 the~ porch:-4
 the~ postman:2
 the~ potato:-7
 the~ pound:2
 the~ pour:-4
 the~ powder:5
 the~ power:-3
 the~ present:1
 the~ price:-9
 the~ printout:-4
 the~ quantity:-3
 the~ question:-9
 the~ rack:-5
 the~ radiator:-4
 the~ radio:-7
 the~ rain:-3
 the~ ready:7
 the~ real:-8
 the~ reason:-8
 the~ record:1
 the~ remain:-3
 the~ render:-5
 the~ rest:1
 the~ right:-7
 the~ roof:3
 the~ room:2
 the~ row:-7
 the~ rugby:-3
 the~ sack:-2
 the~ safe:4
 the~ salad:2
 the~ same:1
 the~ saturday:-2
 the~ scale:-2
 the~ school:2
 the~ scum:2
 the~ second:2
 the~ sf:-5
 the~ shed:1
 the~ sheet:8
 the~ shelf:-2
 the~ shop:3
 the~ shops:-5
 the~ shower:-6
 the~ side:3
 the~ sides:-4
 the~ sink:2
 the~ skin:-4
 the~ slip:-2
 the~ slow:-3
 the~ small:3
 the~ smell:1
 the~ soap':3
 the~ soap:-3
 the~ solution:-2
 the~ spatula:-2
 the~ spill:-6
 the~ spoon:-2
 the~ spr:-7
 the~ spreadsheet:-5
 the~ stall:3
 the~ steel:5
 the~ step:-1
 the~ stick:-7
 the~ stirr:-7
 the~ stove:5
 the~ suds:-3
 the~ sum:-2
 the~ sun:2
 the~ sunday:3
 the~ superfat:-4
 the~ supermarket:-3
 the~ surface:-7
 the~ swirl:-4
 the~ table:3
 the~ tags:-7
 the~ tap:-5
 the~ tare:-2
 the~ teacher:-2
 the~ temperature:-4
 the~ test:1
 the~ thermometer:-6
 the~ thing:-3
 the~ third:-1
 the~ thread:-7
 the~ thursday:-6
 the~ tiles:7
 the~ time:2
 the~ tin:5
 the~ tongue:-1
 the~ top:-2
 the~ total:-6
 the~ towel:-1
 the~ trace:-1
 the~ train:-7
 the~ tray:-3
 the~ trimming:2
 the~ truth:-5
 the~ tub:3
 the~ unrefin:-5
 the~ usual:6
 the~ varnish:-4
 the~ very:-2
 the~ village:-2
 the~ wall:-5
 the~ war:-7
 the~ wardrobe:-4
 the~ warm:2
 the~ wash:-4
 the~ way:3
 the~ weather:-4
 the~ weekend:-7
 the~ weigh:6
 the~ weight:3
 the~ whisk:2
 the~ white:1
 the~ whole:-1
 the~ window:-6
 the~ windowsill:4
 the~ winter:-3
 the~ wire:-2
 the~ wood:-4
 the~ wooden:-4
 the~ word:-5
 the~ workshop:-3
 the~ worktop:-1
 the~ wrong:6
 the~ yard:-5
 the~ year:-7
 the~%:1
 the~<:-7
 the~=:-4
 the~>:-1
 the~A:2
 the~B:-9
 the~C:-11
 the~F:5
 the~I:5
 the~K:3
 the~L:-2
 the~M:3
 the~N:-1
 the~T:-7
 the~W:5
 the~X:-4
 the~b:6
 the~l:-2
 the~t:-2
 the~v:-7
 the~w:-6
 thick:-3
 thicken:-1
 thicker:-8
 thick~ like:-5
 thick~ trace:-2
 thin:-3
 thing:-2
 thing~ ?:-6
 thing~ and:-2
 thing~ i:-6
 thing~ in:-6
 think:-1
 think~ ?:-7
 think~ about:2
 think~ i:7
 think~ it:1
 think~ my:2
 think~ of:-9
 think~ that:-7
 think~ the:3
 thinn:6
 thin~ stream:-4
 thin~ trace:-7
 third:1
 third~ attempt:-6
 third~ batch:-5
 third~ go:5
 third~ of:1
 third~ one:-2
 third~ time:-6
 this:3
 this~ ::1
 this~ ?:-6
 this~ a:-5
 this~ and:-9
 this~ at:1
 this~ be:-3
 this~ because:-7
 this~ before:-3
 this~ but:-4
 this~ for:7
 this~ from:1
 this~ house:3
 this~ i:-5
 this~ in:-3
 this~ is:-6
 this~ loaf:3
 this~ look:-3
 this~ morn:1
 this~ ok:-2
 this~ on:-8
 this~ one:5
 this~ ones:5
 this~ or:-6
 this~ pot:2
 this~ real:-6
 this~ recipe:-9
 this~ right:-3
 this~ soap:-7
 this~ time:5
 this~ to:-5
 this~ was:-3
 this~ way:-4
 this~ week:-2
 this~ weekend:2
 this~ with:-8
 this~ year:4
 this~0:-6
 this~F:3
 tho:-8
 those:-1
 those~ are:2
 those~ days:-6
 those~ fats:-1
 those~ oils:-3
 those~ who:3
 those~0:3
 those~w:-1
 though:2
 thought~ ?:-4
 thought~ i'd:-6
 thought~ i:-2
 thought~ it:-4
 thought~ on:-4
 thought~ the:-2
 though~ ?:-5
 though~ i:1
 thread:-7
 thread~ and:-6
 threw:5
 threw~ in:7
 threw~ the:-4
 throughout:-1
 through~ a:-2
 through~ an:-9
 through~ it:-3
 through~ the:3
 throw:-5
 thrown:5
 throw~ it:-1
 thru:1
 thumb:-3
 thursday:-6
 thx:-5
 til:-3
 tiles:6
 till:-1
 till~ it:2
 till~ its:-1
 till~0:-4
 time:-4
 timer:-8
 times:2
 times~ i:4
 times~ in:-6
 times~ the:2
 times~0:9
 time~ ::1
 time~ and:-4
 time~ because:1
 time~ for:-1
 time~ i:1
 time~ in:3
 time~ is:-4
 time~ it:-9
 time~ lurker:-4
 time~ post:-4
 time~ so:4
 time~ the:3
 time~ to:-4
 time~ with:-7
 time~t:-5
 tins:-6
 tins~ of:-2
 tiny:-3
 tin~ and:-1
 tin~ is:-8
 tin~ of:-3
 tin~ was:-2
 tin~ with:-8
 tip:-2
 tipp:8
 tipp~ in:6
 tipp~ it:1
 tipp~ the:-2
 tips:-6
 tip~ ::-6
 tired:-1
 title:-2
 title~ ::-4
 to:-1
 toast:-4
 today:-5
 today~ ::5
 today~ ?:-5
 toddler:5
 together:-3
 together~ ?:-2
 together~ in:-5
 together~ with:-6
 told:-5
 told~ her:-4
 told~ me:-3
 told~ us:-7
 told~F:-2
 tom:-4
 tomato:5
 tomorrow:-6
 tongue:-3
 tongue~ test:1
 tonight:7
 tonight~ ::-5
 tonight~ ?:-4
 too:2
 took:3
 took~ a:-4
 took~ ages:-3
 took~ forever:2
 took~ it:-3
 took~ me:-7
 took~ off:2
 took~ the:3
 took~0:-2
 took~<:1
 took~=:-11
 took~>:-4
 took~N:5
 took~l:3
 took~t:-11
 took~w:-6
 tools:-5
 too~ ?:-7
 too~ and:3
 too~ cold:-4
 too~ dry:-4
 too~ early:-6
 too~ fast:-2
 too~ hard:-4
 too~ harsh:-4
 too~ high:-5
 too~ hot:-6
 too~ low:4
 too~ many:5
 too~ much:-4
 too~ quick:5
 too~ sharp:-3
 too~ soft:-6
 too~ soon:-6
 too~ strong:-1
 top:1
 topp:8
 topp~ it:3
 topp~ the:6
 topp~ up:5
 tops:1
 top~ for:-4
 top~ is:-5
 top~ it:1
 top~ of:3
 top~ shelf:-5
 top~ which:-5
 total:2
 total~ of:-6
 touch:-5
 touch~ it:-4
 touch~ the:-6
 towel:-5
 towel~ over:-4
 towel~ round:-6
 towel~t:-1
 town:2
 to~ a:2
 to~ about:-2
 to~ ask:-5
 to~ be:3
 to~ bed:-6
 to~ buy:-6
 to~ check:-5
 to~ come:5
 to~ cool:-10
 to~ cut:-4
 to~ dissolve:-6
 to~ do:-1
 to~ everyone:3
 to~ find:-4
 to~ finish:7
 to~ get:-3
 to~ grate:-3
 to~ hand:1
 to~ have:3
 to~ help:6
 to~ her:-8
 to~ hold:3
 to~ it:1
 to~ keep:-9
 to~ know:-5
 to~ light:-4
 to~ look:-5
 to~ mash:-2
 to~ me:-3
 to~ melt:-9
 to~ mix:-2
 to~ noth:1
 to~ open:-6
 to~ pour:-4
 to~ put:4
 to~ remember:-9
 to~ rough:-3
 to~ see:1
 to~ sell:-1
 to~ set:1
 to~ slush:-6
 to~ soap:-6
 to~ someth:-6
 to~ spare:-1
 to~ spoon:-4
 to~ start:-5
 to~ stir:1
 to~ take:5
 to~ tare:-8
 to~ tell:1
 to~ test:-5
 to~ that:-6
 to~ the:-1
 to~ thicken:-3
 to~ this:-8
 to~ throw:-4
 to~ trace:-9
 to~ try:-4
 to~ unmould:-6
 to~ use:-3
 to~ wait:3
 to~ wash:1
 to~ waste:5
 to~ weigh:-7
 to~ you:-6
 to~%:5
 to~0:-1
 to~<:4
 to~=:-3
 to~>:5
 to~F:-9
 to~T:-5
 to~X:-7
 to~b:-4
 to~d:-3
 to~e:-3
 to~t:3
 to~w:-4
 trac:-7
 trace:2
 trace~ ::-6
 trace~ add:3
 trace~ after:-5
 trace~ and:-9
 trace~ at:-2
 trace~ because:5
 trace~ came:-6
 trace~ for:4
 trace~ i:-3
 trace~ in:-7
 trace~ pour:-4
 trace~ stir:-5
 trace~ then:-2
 trace~ was:-4
 trace~0:-6
 trace~t:-6
 trace~w:-4
 track:4
 tractor:-4
 trac~ after:-2
 trac~ in:-5
 trade:-9
 trail:-3
 train:-8
 translat:-3
 translate:-4
 translat~ from:-2
 translucent:-3
 tray:-4
 trays:-4
 treat:-3
 trees:1
 trial:-7
 trick:-9
 trick~ for:-5
 tried:-9
 tried~ it:2
 trim:-6
 trimm:1
 trimming:-2
 tripl:-7
 trouble:-4
 true:-1
 trust:-6
 trust~ it:-6
 trust~ the:-4
 try:-13
 try~ it:-7
 try~ to:-1
 tub:-1
 tube:-5
 tubs:3
 tub~ ::-7
 tub~ and:-8
 tub~ had:-2
 tub~ is:-5
 tub~ of:-3
 tub~ says:-7
 tue:-3
 tuesday~ ::-5
 tue~t:-1
 turn:-2
 turns~ out:7
 turns~0:-5
 turn~ it:-2
 turn~ out:5
 turn~ the:-2
 turn~ to:1
 turn~S:-3
 tutor:-2
 twentieth:4
 twice:2
 twice~ a:-4
 twice~ and:4
 twice~ before:-8
 twice~ i:3
 twice~ with:-7
 typ:-6
 type:4
 typed:9
 typed~ the:6
 type~ ::-7
 typo:3
 u:-7
 ugly:-5
 um:2
 uncl:-4
 uncle:-2
 under:-4
 underneath:-6
 understand:-6
 under~ a:-2
 under~ the:3
 under~0:-8
 under~d:-3
 under~t:-3
 under~w:-7
 unit:-4
 units:-8
 unit~ ::-3
 unles:1
 unmold:-6
 unmould:-7
 unmould~ after:-5
 unmould~t:-1
 unrefin:-9
 unsaponifi:9
 unscent:-6
 until:-1
 until~ a:-5
 until~ both:-1
 until~ i:-1
 until~ it:-2
 until~ its:-3
 until~ the:2
 until~ you:-4
 until~0:-7
 until~t:-1
 up:6
 update:4
 upon:2
 upstair:1
 up~ ::1
 up~ ?:-6
 up~ a:-5
 up~ again:-9
 up~ and:-1
 up~ at:1
 up~ by:3
 up~ for:-6
 up~ i:-7
 up~ in:-4
 up~ like:-4
 up~ on:6
 up~ so:2
 up~ the:3
 up~ there:5
 up~ to:4
 up~ with:2
 up~0:9
 ur:-6
 us:-1
 use:-3
 used:2
 used~ a:-1
 used~ all:-11
 used~ it:1
 used~ that:5
 used~ the:6
 used~ to:-9
 used~ up:1
 used~0:-3
 used~<:-4
 used~=:-6
 used~>:-4
 used~F:-6
 used~L:3
 used~N:-4
 used~l:-6
 used~w:-1
 uses:-4
 use~ ?:-2
 use~ a:-2
 use~ both:-1
 use~ for:-1
 use~ in:-4
 use~ it:-7
 use~ the:-5
 use~ them:-4
 use~ this:-4
 use~ up:4
 use~=:1
 use~>:2
 use~F:-8
 use~I:-5
 use~N:-2
 use~l:-2
 using:2
 using~=:-5
 usual:3
 us~ the:-2
 vanish:-4
 varnish:-4
 vegan:-10
 vegetable:-5
 vegetarian:-8
 verdict:-3
 verdict~ ?:-3
 verify:-6
 verify~ the:-6
 verify~A:-5
 version:-5
 version~0:3
 very~ end:-1
 very~ first:-7
 very~ nice:-4
 vet:-6
 video:-6
 village:-1
 village~ hall:-1
 virgin:-7
 voice:1
 volcano:-9
 w:1
 wait:-3
 waits:2
 wait~ for:-8
 wait~ i:3
 wait~ till:-6
 wait~ until:-6
 wait~t:-4
 walk:5
 wall:-2
 want:3
 wants:-5
 wants~ a:-5
 wants~ it:-6
 wants~ me:-2
 wants~ some:-1
 wants~ the:-6
 wants~ to:-3
 wants~0:5
 want~ a:-5
 want~ it:-1
 want~ the:4
 want~ to:-3
 want~0:6
 want~F:-9
 war:-8
 wardrobe:-5
 warm:-7
 warmth:-5
 warm~ in:-5
 warm~ it:-3
 warm~ oils:3
 warm~ the:-9
 warm~ to:-6
 warm~F:-2
 warn:-8
 was:5
 wash:-8
 wash~ house:-4
 wash~ it:3
 wash~ the:-5
 wash~ up:-1
 wash~ with:-7
 wasnt:13
 wasnt~ enough:1
 wast:3
 was~ a:1
 was~ about:1
 was~ all:1
 was~ already:4
 was~ at:-5
 was~ call:2
 was~ clean:-4
 was~ clear:-7
 was~ cold:3
 was~ cook:-3
 was~ done:2
 was~ empty:9
 was~ fine:-3
 was~ finish:6
 was~ for:-2
 was~ frozen:3
 was~ going:-7
 was~ gone:-3
 was~ half:-6
 was~ hard:-6
 was~ hot:-4
 was~ in:3
 was~ it:-4
 was~ like:4
 was~ meant:4
 was~ melt:4
 was~ my:-6
 was~ near:3
 was~ never:-2
 was~ no:-2
 was~ not:9
 was~ off:9
 was~ old:-4
 was~ on:3
 was~ one:6
 was~ open:8
 was~ out:5
 was~ pour:3
 was~ ready:-2
 was~ real:6
 was~ right:-5
 was~ so:6
 was~ soft:4
 was~ stand:6
 was~ still:1
 was~ stirr:-2
 was~ that:-5
 was~ the:-4
 was~ there:6
 was~ thick:-4
 was~ told:1
 was~ too:-4
 was~ under:-5
 was~ very:-8
 was~ warm:-7
 was~ weigh:5
 was~ what:-4
 was~ written:3
 was~%:-8
 was~0:-3
 was~<:2
 was~=:-9
 was~>:-9
 was~A:5
 was~F:2
 was~L:5
 was~N:3
 was~X:6
 was~b:4
 was~d:-7
 was~e:5
 was~l:-9
 was~t:-7
 was~v:2
 was~w:5
 watch:-6
 watch~ the:-6
 water:2
 water~ bath:-5
 waxy:-4
 way:1
 way~ about:2
 way~ for:2
 way~ in:7
 way~ of:-6
 way~ to:-1
 wear:-8
 wear~ goggl:-4
 weather:-5
 wedd:-3
 wedd~ favour:1
 wednesday:-7
 week:-6
 weekend:-2
 week~ and:-9
 week~ i:-8
 week~ so:5
 week~0:-9
 weigh:-2
 weight:1
 weight~ ::-7
 weight~ and:3
 weight~ g:-3
 weight~ in:2
 weight~ made:-6
 weight~ not:-9
 weight~ of:-2
 weight~ on:-7
 weight~ oz:-5
 weight~ so:-5
 weight~A:-7
 weigh~ ?:-6
 weigh~ a:-3
 weigh~ after:-3
 weigh~ again:5
 weigh~ and:-3
 weigh~ anyth:-1
 weigh~ as:3
 weigh~ by:7
 weigh~ everyth:-8
 weigh~ i:-4
 weigh~ in:2
 weigh~ like:1
 weigh~ my:3
 weigh~ on:1
 weigh~ one:-4
 weigh~ out:-6
 weigh~ proper:-2
 weigh~ the:3
 weigh~ what:-9
 weigh~ with:9
 weigh~0:3
 weigh~<:-7
 weigh~=:-7
 weigh~>:-9
 weigh~F:-3
 weigh~e:4
 weigh~l:-4
 weigh~w:-8
 welcome:-4
 well~ and:-4
 well~ as:-4
 well~ be:6
 well~ have:8
 went:3
 went~ a:5
 went~ above:-6
 went~ away:-6
 went~ back:-1
 went~ brown:-7
 went~ by:-4
 went~ clear:-8
 went~ cloudy:-6
 went~ dark:-2
 went~ down:5
 went~ for:3
 went~ from:-9
 went~ in:6
 went~ into:2
 went~ on:2
 went~ over:2
 went~ the:-4
 went~ through:2
 went~ to:-3
 went~ up:1
 went~ with:3
 went~ without:3
 went~ wrong:-3
 went~ yellow:-7
 went~=:-8
 went~S:-6
 were:4
 werent:2
 were~ a:-2
 were~ at:-7
 were~ on:-5
 were~0:2
 were~=:-1
 were~F:3
 were~w:-2
 wet:5
 wet~ cloth:-3
 wet~ dog:-3
 weve:-3
 weve~ got:-5
 we~ added:2
 we~ are:-1
 we~ count:-4
 we~ cut:-6
 we~ did:5
 we~ do:1
 we~ got:-7
 we~ had:1
 we~ have:-5
 we~ keep:-6
 we~ made:-7
 we~ make:3
 we~ pour:-4
 we~ put:-6
 we~ render:-3
 we~ say:3
 we~ split:-6
 we~ still:-9
 we~ took:2
 we~ use:-10
 we~ used:-4
 we~ want:5
 we~ weigh:2
 we~ were:4
 we~ write:-5
 what:3
 whatever:5
 whatever~ the:7
 whatever~ was:10
 whats:-2
 whatsoever:1
 whats~ in:2
 whats~ left:-5
 whats~ my:-6
 whats~ the:-2
 what~ a:-7
 what~ came:5
 what~ did:-3
 what~ do:1
 what~ does:-9
 what~ g:-4
 what~ happen:-7
 what~ how:-7
 what~ i'd:3
 what~ i:8
 what~ im:2
 what~ is:-6
 what~ it:3
 what~ ive:-9
 what~ my:-1
 what~ remain:1
 what~ she:-5
 what~ superfat:-8
 what~ the:1
 what~ they:5
 what~ to:1
 what~ was:-4
 what~ we:-1
 what~ went:-2
 what~ would:-4
 what~ you:-1
 what~ youd:-1
 when:-2
 whenever:-1
 when~ both:-7
 when~ cut:-7
 when~ i:2
 when~ it:2
 when~ she:1
 when~ the:1
 when~ wash:4
 when~F:-9
 where:4
 where~ does:-9
 where~ i:-3
 where~ it:8
 where~ my:3
 where~ she:-8
 where~ the:3
 where~ you:3
 whether:-3
 whether~ it:-4
 whether~ the:1
 whether~F:-10
 whether~b:-4
 which:3
 which~ bring:-1
 which~ has:-1
 which~ i:5
 which~ is:-4
 which~ makes:-6
 which~ of:3
 which~ one:9
 which~ the:2
 which~ was:-4
 which~ you:-6
 which~F:-8
 while:-2
 while~ i:4
 while~ that:-2
 while~ the:-6
 whipp:2
 whisk:-7
 white:-8
 whiteboard:-7
 whiter:-4
 white~ and:1
 white~ as:-6
 white~ powder:-3
 white~ spots:-3
 white~F:-2
 who:-1
 whoever:-1
 whole:1
 whole~ grams:-8
 whole~ house:-4
 whole~ thing:2
 whole~ time:-2
 whos:-3
 whose:3
 whos~ right:-3
 who~ asked:-6
 who~ cant:2
 who~ has:-3
 who~ is:-5
 who~ knows:4
 who~ taught:-1
 why:-12
 why~ ?:-4
 why~ does:-4
 why~ i:-5
 why~ is:-6
 why~ it:-7
 why~ its:-6
 why~ the:-6
 why~F:-2
 width:-6
 wife:-2
 wifes:-3
 wife~ likes:-5
 wife~ says:4
 will:-7
 will~ be:-8
 will~ climb:-5
 will~ do:-5
 will~ it:-3
 will~ need:-2
 will~ not:-1
 will~ that:-2
 will~ the:-4
 will~ this:-2
 wind:-5
 window:-9
 windowsill:2
 window~ open:-6
 winter:-6
 winter~ and:1
 winter~ bar:-2
 winter~ hands:-5
 winter~ i:-4
 wipe:-5
 wiped:-2
 wire:-6
 wise:-5
 wish:3
 within:-8
 within~t:-7
 without:6
 without~ a:-10
 without~ it:1
 without~ my:-4
 without~ the:1
 without~F:-2
 with~ a:-3
 with~ all:-8
 with~ an:-4
 with~ another:1
 with~ bak:-3
 with~ both:-5
 with~ coins:3
 with~ everyth:5
 with~ freezer:-4
 with~ glov:-1
 with~ goggl:-2
 with~ it:-2
 with~ its:-4
 with~ more:2
 with~ my:-9
 with~ noth:6
 with~ one:3
 with~ only:-8
 with~ some:1
 with~ that:1
 with~ the:2
 with~ this:3
 with~ us:-5
 with~ wet:-3
 with~ what:1
 with~%:6
 with~0:-3
 with~<:-3
 with~=:-3
 with~>:-6
 with~A:1
 with~C:2
 with~F:-7
 with~I:-5
 with~L:-5
 with~S:-7
 with~U:5
 with~W:2
 with~e:-9
 with~l:-7
 with~v:-3
 woman:-9
 woman~ at:-1
 women:-4
 wonder:7
 wonky:-8
 wont:-2
 wood:-8
 wooden:-3
 wooden~ box:-3
 wooden~ mould:-6
 wooden~ one:-5
 wooden~ spoon:2
 wood~ stove:-4
 wool:2
 words:-7
 word~ for:-6
 works:-8
 worksheet:-4
 workshop:-3
 worktop:-1
 work~ ?:-2
 work~ in:2
 work~ it:1
 work~ out:-3
 work~ with:2
 worri:3
 worry~ is:1
 worse:-3
 worth~ of:4
 would:-2
 wouldnt:6
 wouldnt~ dissolve:9
 would~ a:-3
 would~ be:-3
 would~ do:-7
 would~ have:-2
 would~ it:-1
 would~ like:4
 would~ love:1
 would~ not:-5
 would~ someone:-3
 would~ take:1
 would~ that:-3
 would~ the:-8
 would~ you:1
 would~=:-1
 wrap:-7
 wrapp:-11
 wrapper:-7
 wrapp~ in:-6
 wrapp~ it:-4
 wrap~ in:-1
 wrist:-5
 writ:-6
 write:-6
 write~ down:-10
 write~ it:-2
 write~ the:-7
 write~ up:-5
 written:2
 written~ ?:-4
 written~ on:-5
 wrong:-1
 wrong~ ?:-4
 wrong~ or:-6
 wrong~ with:-7
 wrote:2
 wrote~ ::-5
 wrote~ down:-1
 wrote~ in:-1
 wrote~ it:3
 wrote~ on:-5
 wrote~ that:-6
 wrote~ this:-3
 wrote~F:4
 wt:-8
 w~ a:-9
 w~ my:-2
 w~ the:1
 w~ w:1
 w~=:-2
 w~L:1
 x:2
 x~0:3
 x~F:-9
 yall:-5
 yard:-7
 year:-6
 years:-7
 years~ ago:-2
 year~ and:1
 year~ i:-8
 year~ in:-6
 year~ is:5
 year~0:-5
 yellow:-8
 yellow~ like:-4
 yes:-3
 yesterday:-5
 yes~ ?:-8
 yes~ its:-8
 yes~ no:-3
 yes~ or:-2
 yes~ the:-1
 yet:6
 yield:1
 yield~ ::1
 yield~0:3
 you:-2
 youd:-3
 youll:-4
 youll~ want:1
 young:-4
 your:-9
 youre:-9
 yours:-1
 your~ arm:-2
 your~ own:3
 your~ skin:-4
 your~A:-5
 your~F:-3
 youve:-9
 you~ ?:-2
 you~ all:-7
 you~ and:-4
 you~ are:-5
 you~ ask:1
 you~ asked:-3
 you~ be:2
 you~ call:-8
 you~ can:-4
 you~ cant:-8
 you~ check:-4
 you~ confirm:-4
 you~ could:-12
 you~ cut:-3
 you~ do:2
 you~ dont:-7
 you~ feel:-3
 you~ for:-7
 you~ get:-4
 you~ go:-7
 you~ have:1
 you~ know:5
 you~ like:-7
 you~ look:-2
 you~ lot:-3
 you~ make:-6
 you~ need:-8
 you~ pour:-7
 you~ put:-9
 you~ say:-3
 you~ see:1
 you~ should:4
 you~ start:2
 you~ take:-4
 you~ tell:3
 you~ think:-7
 you~ to:-5
 you~ trust:-1
 you~ use:-3
 you~ wait:-5
 you~ want:-9
 you~ weigh:-7
 you~ will:2
 you~ wont:1
 you~ work:2
 zap:-7
 zapp:7
 zappy:-3
 zap~ on:-3
 zap~ test:-4
 zero:4
 zero~ the:6
 zutat:-4
 ×:1
 üf:-7
%%:-4
%0:-8
%:7
%<:-5
%=:-1
%>:-6
%A:5
%F:-3
%K:-6
%N:3
%S:-6
%W:1
%X:2
%l:-1
%t:-7
%w:-1
%~ ::-5
%~ ?:-3
%~ and:-4
%~ by:1
%~ extra:7
%~ flak:4
%~ for:10
%~ half:-8
%~ i:-9
%~ in:-2
%~ is:-2
%~ less:-3
%~ liquid:6
%~ of:1
%~ on:5
%~ or:2
%~ over:5
%~ pure:-6
%~ purity:-6
%~ sf:-4
%~ so:6
%~ solution:-3
%~ superfat:1
%~ w:-3
%~ with:3
%~=:-5
%~A:4
%~F:-4
%~K:-6
%~W:-3
%~X:2
0%:-6
00:-4
0:4
0<:-4
0>:-1
0A:-1
0C:5
0F:-2
0I:3
0K:-8
0M:3
0N:4
0S:-4
0W:4
0X:-5
0b:-3
0d:-3
0e:-1
0l:-2
0r:-1
0t:-6
0v:-9
0w:-6
0~ ::1
0~ =:-8
0~ a:-11
0~ after:2
0~ all:5
0~ are:2
0~ as:6
0~ at:-2
0~ b:-7
0~ back:-1
0~ bar:-5
0~ bars:-5
0~ batch:-4
0~ because:8
0~ before:3
0~ big:-4
0~ block:1
0~ both:-4
0~ bottl:-6
0~ bucket:-4
0~ but:-4
0~ c:-4
0~ cakes:-3
0~ can:-6
0~ caviti:-6
0~ children:-6
0~ comment:-2
0~ cubes:-1
0~ cut:3
0~ degre:-5
0~ drops:-7
0~ empty:2
0~ evening:-4
0~ except:5
0~ famili:-6
0~ fat:-3
0~ fats:-9
0~ for:-8
0~ from:3
0~ full:-7
0~ gives:-7
0~ goats:-8
0~ goes:-3
0~ good:1
0~ group:-5
0~ guest:-3
0~ had:-9
0~ i:6
0~ if:-3
0~ in:-2
0~ into:5
0~ is:2
0~ it:-2
0~ its:1
0~ ive:1
0~ jars:-1
0~ kitchen:-5
0~ lather:-5
0~ left:-6
0~ like:-2
0~ little:-6
0~ loaf:-3
0~ loav:-1
0~ lyes:-6
0~ made:-7
0~ more:-7
0~ mould:1
0~ my:5
0~ n:-3
0~ night:-4
0~ no:4
0~ not:5
0~ now:1
0~ of:3
0~ off:-2
0~ oil:-7
0~ oils:-4
0~ on:7
0~ once:2
0~ one:-3
0~ or:5
0~ out:3
0~ p:-7
0~ packet:-2
0~ pcs:-5
0~ people:-7
0~ per:-5
0~ percent:7
0~ piec:-1
0~ please:9
0~ plus:3
0~ pots:2
0~ pour:-5
0~ pupil:-3
0~ right:-3
0~ round:-1
0~ scal:-7
0~ she:-1
0~ silicone:-2
0~ since:4
0~ slic:-5
0~ small:-6
0~ so:-6
0~ someth:1
0~ spoon:2
0~ still:-9
0~ superfat:7
0~ that:-2
0~ thats:2
0~ the:4
0~ then:3
0~ there:2
0~ thing:-8
0~ this:2
0~ times:-3
0~ tins:-3
0~ to:2
0~ together:-6
0~ towel:-7
0~ until:-8
0~ w:7
0~ was:-4
0~ weigh:-3
0~ went:3
0~ were:2
0~ when:6
0~ which:-3
0~ winter:-4
0~ with:-9
0~ without:-6
0~ x:1
0~ zap:-7
0~ ×:-6
0~0:-2
0~=:-6
0~A:-5
0~F:-4
0~I:-1
0~N:-3
0~S:2
0~W:-4
0~X:6
0~b:-11
0~t:-6
0~w:-3
<%:1
<0:-2
<:3
<<:-5
<=:-4
<>:-3
<A:5
<C:4
<F:2
<I:-8
<K:9
<L:5
<N:-3
<S:-2
<W:-5
<X:2
<d:-4
<l:-7
<t:-4
<v:-2
<w:-6
<~ +:-5
<~ and:4
<~ because:1
<~ for:3
<~ i:-6
<~ in:-3
<~ is:1
<~ less:-3
<~ more:7
<~ of:2
<~ oils:-4
<~ plain:-8
<~ short:3
<~ so:-1
<~ the:5
<~ with:-6
<~A:-1
<~C:4
<~F:3
<~I:-4
<~L:-3
<~S:-2
<~W:-7
<~X:-5
=%:-11
=0:5
=:-4
=<:-4
==:-3
=>:-3
=A:-2
=B:-4
=F:-3
=I:-2
=N:4
=S:-1
=W:-2
=X:-2
=b:-3
=d:-1
=e:-2
=l:-6
=r:-5
=t:-3
=v:-6
=w:-4
=~ +:-4
=~ ::5
=~ =:-9
=~ after:-4
=~ all:-4
=~ and:-6
=~ as:3
=~ at:-3
=~ bag:-8
=~ bit:-4
=~ block:-6
=~ both:-4
=~ can:-7
=~ check:-2
=~ clean:-5
=~ cold:-1
=~ did:-2
=~ dissolv:-5
=~ does:-2
=~ fats:-2
=~ for:-5
=~ free:-7
=~ from:-4
=~ goes:-2
=~ good:-1
=~ he:-6
=~ i:-8
=~ im:-6
=~ in:-3
=~ into:-6
=~ is:1
=~ it:-6
=~ its:1
=~ last:-5
=~ melt:-7
=~ mk:-5
=~ my:1
=~ no:-7
=~ not:-12
=~ of:-3
=~ ok:-2
=~ on:-2
=~ out:-6
=~ plain:-4
=~ please:-3
=~ plus:3
=~ smell:-1
=~ so:-5
=~ soap:-1
=~ still:-1
=~ superfat:-8
=~ that:-7
=~ then:-4
=~ too:-2
=~ tub:-7
=~ weigh:-10
=~ went:-7
=~ what:-2
=~ with:2
=~ would:-1
=~ yes:-4
=~%:-6
=~0:6
=~<:-4
=~=:-2
=~>:-1
=~A:-3
=~F:-3
=~L:-2
=~W:-3
=~X:-2
=~t:-1
>%:-5
>0:-6
>:-3
><:-4
>=:-3
>>:-7
>A:-4
>F:-2
>K:-5
>L:-1
>W:-4
>X:-1
>e:-10
>l:-7
>t:-2
>w:-8
>~ ::-2
>~ altogether:-1
>~ and:-2
>~ for:-3
>~ i:-6
>~ in:-6
>~ is:-4
>~ of:-5
>~ oils:-1
>~ so:-6
>~ the:-6
>~ then:-4
>~ tub:-4
>~ with:-4
>~A:-3
>~F:4
>~L:-4
>~W:-6
A%:5
A0:5
A=:-3
A>:-1
AA:2
AB:4
AC:-8
AF:3
AI:-7
AK:-7
AL:2
AN:-7
AS:-3
AW:-2
AX:-1
Ae:2
Al:-9
Ar:-8
At:-5
Aw:-4
A~ +:-2
A~ ::5
A~ =:1
A~ ?:-7
A~ a:-6
A~ about:-3
A~ already:4
A~ alright:-5
A~ and:-2
A~ as:7
A~ at:-3
A~ bag:2
A~ be:-2
A~ because:-3
A~ before:-5
A~ but:-2
A~ by:-1
A~ came:-5
A~ can:-1
A~ check:-6
A~ comes:5
A~ cool:1
A~ correct:-8
A~ dissolv:-3
A~ do:-1
A~ does:-6
A~ down:3
A~ enough:-3
A~ figure:3
A~ fine:-4
A~ fit:-5
A~ fits:-4
A~ for:2
A~ from:7
A~ g:-8
A~ gets:-5
A~ goes:-8
A~ good:-6
A~ got:6
A~ had:2
A~ half:-5
A~ has:3
A~ heavy:1
A~ here:5
A~ i:4
A~ if:4
A~ in:-1
A~ into:-5
A~ is:4
A~ it:5
A~ its:6
A~ ive:1
A~ jug:-4
A~ left:-5
A~ like:-5
A~ looks:-3
A~ never:-7
A~ no:-7
A~ not:5
A~ number:-2
A~ of:1
A~ ok:-6
A~ okay:-4
A~ on:-7
A~ one:-8
A~ only:2
A~ or:-5
A~ over:-10
A~ part:-6
A~ paste:2
A~ per:4
A~ please:-7
A~ pls:-4
A~ pot:5
A~ ready:-10
A~ real:-8
A~ right:-5
A~ row:-2
A~ safe:-4
A~ sane:-5
A~ says:2
A~ sensible:-4
A~ she:-6
A~ slow:-6
A~ so:4
A~ soap:-3
A~ sprinkl:-2
A~ still:-10
A~ stirr:-1
A~ straight:2
A~ that:-6
A~ the:-3
A~ then:-5
A~ there:1
A~ to:-2
A~ too:-7
A~ tub:4
A~ up:6
A~ was:-1
A~ weigh:7
A~ went:2
A~ when:2
A~ where:2
A~ with:2
A~ wrong:-5
A~ you:3
A~%:-6
A~0:-1
A~<:2
A~=:-2
A~>:-5
A~A:-4
A~F:-7
A~L:2
A~W:1
A~d:-4
A~e:-2
A~r:-6
A~t:6
A~v:-2
B0:-4
B:3
B=:-7
BF:4
B~ and:-9
B~ in:-1
B~ so:-5
C%:-7
C:5
C<:1
CA:5
Cv:4
Cw:4
C~ at:4
C~ in:6
C~ is:-5
C~%:-7
C~<:-4
C~w:4
F%:2
F:1
F<:3
F=:-3
F>:-1
FA:-2
FB:4
FF:-1
FI:-4
FK:-4
FN:6
FS:-7
FT:-4
FU:3
FX:2
Fb:1
Fd:-3
Fe:1
Fl:-7
Fr:6
Ft:-4
Fv:-8
Fw:1
F~ +:2
F~ ::3
F~ =:2
F~ ?:-10
F~ about:-1
F~ add:2
F~ after:3
F~ again:2
F~ all:1
F~ alone:-3
F~ altogether:-3
F~ and:1
F~ are:3
F~ as:6
F~ at:2
F~ back:6
F~ bar:-6
F~ bars:-11
F~ batch:-6
F~ because:6
F~ beef:-5
F~ before:-1
F~ block:-2
F~ bottle:-7
F~ but:-4
F~ by:-1
F~ came:1
F~ can:-4
F~ clean:-4
F~ cold:-5
F~ comes:-8
F~ cook:-4
F~ could:3
F~ count:-9
F~ does:-5
F~ down:7
F~ extra:5
F~ figure:4
F~ fills:-8
F~ first:-6
F~ fit:-5
F~ for:-4
F~ from:-5
F~ g:-7
F~ gent:-5
F~ gives:-6
F~ go:-4
F~ goes:-9
F~ gone:-2
F~ good:2
F~ got:7
F~ grams:-6
F~ had:-1
F~ half:-4
F~ has:-6
F~ here:4
F~ i'd:4
F~ i:2
F~ if:-7
F~ im:7
F~ in:1
F~ instead:4
F~ into:-4
F~ isnt:-1
F~ it:6
F~ its:1
F~ ive:8
F~ jar:-3
F~ jug:3
F~ keeps:-7
F~ l:-3
F~ last:-9
F~ left:-1
F~ like:2
F~ line:6
F~ look:1
F~ looks:-4
F~ makes:-4
F~ melt:-10
F~ melts:-7
F~ minus:3
F~ my:3
F~ myself:-4
F~ n:3
F~ needs:-5
F~ never:8
F~ next:-7
F~ no:-7
F~ not:3
F~ noth:-7
F~ now:8
F~ of:2
F~ oil:-1
F~ on:-6
F~ once:-4
F~ one:-12
F~ or:-8
F~ out:3
F~ over:-4
F~ oyl:-4
F~ packet:8
F~ paste:-6
F~ plus:1
F~ put:-5
F~ ran:2
F~ read:1
F~ real:-6
F~ render:-7
F~ right:-6
F~ rspo:-7
F~ says:-5
F~ second:-1
F~ sets:-4
F~ should:2
F~ since:1
F~ smell:-9
F~ so:5
F~ soap:-5
F~ soaps:-6
F~ stand:-4
F~ stay:8
F~ stays:-2
F~ still:2
F~ stirr:-2
F~ strain:3
F~ stuck:2
F~ takes:-8
F~ than:2
F~ that:-6
F~ thats:3
F~ the:-2
F~ then:-2
F~ there:4
F~ thicken:-8
F~ this:-1
F~ through:-6
F~ tin:-1
F~ to:4
F~ together:2
F~ too:-7
F~ trac:-9
F~ tub:-3
F~ turn:6
F~ twice:3
F~ until:6
F~ up:2
F~ used:-4
F~ w:1
F~ warm:-6
F~ was:-1
F~ weigh:-4
F~ well:1
F~ went:-2
F~ were:-2
F~ while:2
F~ will:-5
F~ would:3
F~ wouldnt:-1
F~ you:4
F~%:2
F~0:4
F~<:3
F~=:-2
F~A:-3
F~F:-3
F~N:7
F~W:-2
F~d:-4
F~e:-1
F~t:-11
F~v:-1
I0:2
I:3
I<:1
IA:-3
II:3
IL:5
IW:-1
Ib:-6
Id:5
Iw:-5
I~ +:-3
I~ ::2
I~ and:-3
I~ bath:-1
I~ first:-6
I~ had:6
I~ in:-6
I~ is:-2
I~ it:6
I~ round:-7
I~ so:-7
I~ tray:1
I~ was:7
I~<:1
K%:-6
K0:-10
K:2
K<:1
K=:-1
K>:-7
KA:-6
KF:-7
KL:-2
KW:-2
Kd:-6
Kr:2
Kt:-3
Kw:-9
K~ ::-5
K~ and:-4
K~ at:-2
K~ by:-5
K~ g:-7
K~ half:-2
K~ in:-4
K~ into:3
K~ is:4
K~ mixed:3
K~ my:-8
K~ of:-6
K~ on:5
K~ was:-2
K~%:-8
K~>:-7
K~A:-1
K~r:1
L0:-1
L:2
L<:-5
L>:3
LA:-5
LF:-2
LI:4
LL:4
LN:4
LS:6
LU:-4
LW:3
LX:-2
Lb:1
Le:3
Ll:-5
Lt:-3
Lv:-5
Lw:-2
L~ ::-9
L~ ?:-6
L~ a:1
L~ after:-1
L~ and:-1
L~ as:5
L~ bar:-6
L~ bars:-5
L~ batch:-6
L~ because:2
L~ boil:2
L~ by:-3
L~ flat:3
L~ from:11
L~ frozen:-7
L~ goes:-6
L~ i:-2
L~ in:-2
L~ instead:-10
L~ into:-1
L~ is:1
L~ it:-1
L~ no:-10
L~ of:8
L~ on:4
L~ one:-4
L~ out:5
L~ over:2
L~ pot:-8
L~ same:9
L~ so:2
L~ soap:-6
L~ stage:-3
L~ straight:-1
L~ thaw:-5
L~ the:5
L~ to:3
L~ towel:2
L~ was:5
L~ went:2
L~ which:8
L~ with:5
L~0:-2
L~=:-1
L~>:-1
L~X:-6
L~b:8
L~l:-9
L~t:-2
L~w:2
M0:3
M:2
MA:4
M~ and:-5
M~ in:4
M~ is:2
M~ soap:-9
N0:3
N:9
N<:-2
NA:-4
NL:4
NN:-2
Nb:4
Nl:3
Nt:-9
Nw:5
N~ after:-1
N~ and:-10
N~ as:1
N~ at:-4
N~ because:3
N~ for:-1
N~ from:9
N~ i:10
N~ if:2
N~ in:1
N~ instead:-1
N~ is:-1
N~ it:8
N~ or:-7
N~ same:5
N~ since:7
N~ so:2
N~ that:-2
N~ the:8
N~ to:6
N~ was:-6
N~ where:7
N~ would:-7
N~N:-1
S%:-8
S0:-5
S:-5
S<:-3
SA:-4
SF:-9
SL:-3
SN:9
SS:-5
SX:-3
Sd:-1
St:-6
Sv:-4
Sw:-4
S~ ::-5
S~ a:-4
S~ and:-2
S~ as:-1
S~ at:-7
S~ because:2
S~ blend:-4
S~ but:-9
S~ fades:-5
S~ for:-3
S~ from:-5
S~ goes:-5
S~ i:-7
S~ in:1
S~ is:7
S~ it:-4
S~ leav:-5
S~ mould:-6
S~ no:-2
S~ once:-2
S~ only:6
S~ pour:-2
S~ powder:-5
S~ smell:-6
S~ spots:-6
S~ the:-7
S~ then:-4
S~ when:-4
S~ which:-5
S~0:-4
S~<:-3
S~S:-3
S~w:-3
T%:-5
T0:-2
T:-8
T=:-2
TF:-4
T~ of:-5
T~ oils:-3
U:5
UF:3
Ut:-2
U~ and:-1
U~ i:-6
U~ in:2
U~ stage:-2
W%:-7
W0:7
W:1
W<:5
W=:-3
W>:-3
WC:1
WF:-4
WI:-3
WL:5
WS:-3
WW:3
WX:1
Wb:2
Wd:-4
We:-3
Wl:-3
Wt:2
Wv:-6
Ww:-2
W~ +:-2
W~ =:-6
W~ ?:-9
W~ a:8
W~ after:-4
W~ all:-2
W~ and:-2
W~ as:3
W~ at:4
W~ because:3
W~ before:3
W~ boil:-1
W~ but:1
W~ by:-1
W~ can:2
W~ clear:-4
W~ does:-5
W~ down:4
W~ first:-5
W~ for:-4
W~ from:-5
W~ g:-7
W~ got:-3
W~ half:-3
W~ here:-4
W~ i:5
W~ in:-1
W~ into:-7
W~ is:2
W~ it:2
W~ last:-3
W~ let:-4
W~ looks:-7
W~ makes:-9
W~ mixed:-5
W~ never:-5
W~ no:4
W~ ok:-1
W~ on:-8
W~ only:-8
W~ or:6
W~ out:-8
W~ outdoor:-1
W~ ready:-3
W~ since:3
W~ so:-2
W~ that:-3
W~ the:2
W~ then:-1
W~ to:-10
W~ too:8
W~ was:6
W~ weigh:-4
W~ went:3
W~ when:6
W~ which:3
W~ would:-6
W~0:2
W~<:1
W~=:-3
W~A:-4
W~r:-4
W~t:-2
W~v:-5
X%:3
X:-3
X<:1
X=:-7
X>:-1
XA:-3
XC:-6
XF:-3
XL:4
XN:8
XS:-2
XW:3
XX:-1
Xb:1
Xl:3
Xt:-2
Xv:-3
Xw:-2
X~ ::-2
X~ ?:-4
X~ a:-5
X~ and:1
X~ at:-6
X~ bar:3
X~ bars:-6
X~ came:-5
X~ dissolv:-9
X~ fine:-2
X~ for:1
X~ from:-7
X~ goes:-3
X~ ground:-8
X~ i:4
X~ in:-1
X~ is:-5
X~ it:-6
X~ makes:-1
X~ no:-5
X~ of:-9
X~ on:-1
X~ so:-4
X~ the:-5
X~ this:4
X~ to:-9
X~ was:3
X~ went:2
X~0:1
X~<:-7
X~W:-3
X~v:-4
X~w:-4
^ *:-7
^ ::2
^ =:-5
^ about:11
^ add:1
^ added:7
^ all:2
^ also:-5
^ alway:2
^ am:-5
^ an:6
^ and:-8
^ any:-5
^ anyone:-11
^ anyth:-4
^ are:-2
^ as:4
^ ask:-9
^ at:-1
^ attempt:-5
^ b:-7
^ back:-6
^ bar:-5
^ bars:-7
^ base:-4
^ basic:-5
^ batch:-10
^ be:-6
^ been:-5
^ before:-8
^ between:8
^ big:-7
^ bit:1
^ blend:-7
^ blender:-6
^ blue:-5
^ boil:3
^ bonjour:-4
^ bonsoir:-4
^ book:-9
^ both:-9
^ bottle:8
^ bought:-5
^ bowl:-7
^ box:-4
^ bring:-3
^ bubbl:-6
^ but:-10
^ butcher:-5
^ by:-4
^ c:-5
^ came:2
^ can:1
^ cant:-1
^ castile:-6
^ cat:4
^ chang:5
^ check:-9
^ christma:-3
^ ciao:-4
^ clean:-2
^ clear:1
^ cold:-3
^ combine:-4
^ comes:-5
^ comment:-4
^ component:-3
^ confetti:-4
^ cook:-3
^ cool:-4
^ copi:-3
^ correction:8
^ cost:-9
^ could:-3
^ couldnt:10
^ cousin:-1
^ cover:-7
^ crock:-3
^ crockpot:-5
^ cup:-5
^ cure:-4
^ cured:-5
^ cut:-3
^ d:-5
^ dad:2
^ dads:-6
^ date:-2
^ day:-10
^ did:-3
^ didnt:-1
^ display:2
^ dissolv:-4
^ dissolve:-2
^ do:-3
^ does:-3
^ dog:4
^ done:-4
^ dont:-12
^ doubl:3
^ e:-4
^ each:1
^ earlier:-8
^ empty:-9
^ ended:3
^ enough:-6
^ entry:3
^ even:-3
^ every:3
^ everyday:-3
^ everyone:-7
^ everyth:4
^ expect:-7
^ export:-4
^ f:-6
^ fat:-7
^ father:3
^ fats:-10
^ fill:-8
^ fills:-4
^ final:-1
^ fine:-3
^ first:-3
^ fits:-3
^ for:2
^ found:8
^ freeze:-7
^ friend:-3
^ from:-2
^ g:-6
^ gave:-5
^ gel:-8
^ gell:4
^ give:-7
^ glov:-5
^ goat:-8
^ goes:-4
^ goggl:-5
^ gonna:6
^ good:-4
^ got:-8
^ grams:-6
^ gran:2
^ grandad:-2
^ grandma:-4
^ grandpa:4
^ granny:-5
^ grans:-2
^ grat:-7
^ greeting:-5
^ had:4
^ half:2
^ hallo:-4
^ hand:2
^ handout:-4
^ hard:-5
^ has:-5
^ have:-6
^ he:-5
^ heat:-7
^ hello:-4
^ help:3
^ her:2
^ here:-10
^ heres:-7
^ hers:-7
^ hes:4
^ hey:-5
^ his:-5
^ hiya:1
^ hola:-3
^ hope:-2
^ hot:1
^ how:-10
^ hows:-6
^ hp:-4
^ hubby:3
^ i'd:4
^ i:-2
^ if:-10
^ ignore:1
^ ill:1
^ im:3
^ in:-6
^ ingredient:-3
^ instead:9
^ into:-3
^ is:-6
^ it:1
^ item:-3
^ itll:-2
^ its:-3
^ ive:-6
^ jug:6
^ keep:3
^ kept:-1
^ kids:-7
^ kind:-2
^ knock:1
^ label:-10
^ last:-7
^ lather:-5
^ laundry:-5
^ leave:-3
^ left:-1
^ leftover:-8
^ lid:1
^ like:-2
^ line:-5
^ liquid:-4
^ list:-8
^ log:-5
^ lol:-5
^ long:-3
^ look:-4
^ looks:-3
^ lost:-6
^ lot:-6
^ love:-6
^ lye's:6
^ m:-5
^ ma:-6
^ made:3
^ make:7
^ makes:-2
^ many:-3
^ market:-5
^ me:-2
^ meanwhile:-1
^ melt:-3
^ method:1
^ mind:-3
^ mine:-6
^ mines:3
^ mix:-9
^ mixed:-4
^ mold:-7
^ morn:-5
^ mother:3
^ mould:-6
^ mum:-4
^ mums:5
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
^ not:1
^ note:-7
^ notebook:-6
^ notes:-2
^ noth:-11
^ number:-2
^ o:-5
^ oat:-5
^ oh:-1
^ oil:-7
^ oils:-4
^ ok:-3
^ okay:-4
^ old:-3
^ on:-5
^ once:-3
^ one:1
^ open:-1
^ or:-4
^ order:1
^ other:-6
^ ounc:2
^ our:-3
^ ours:-6
^ out:1
^ outside:-6
^ oven:-3
^ oz:-7
^ page:-5
^ paid:-1
^ passt:-3
^ past:-3
^ paste:2
^ people:-7
^ per:1
^ ph:-6
^ phase:-3
^ phone:-1
^ photo:-8
^ plain:-8
^ plan:-4
^ plann:-6
^ please:1
^ pls:-6
^ plus:1
^ post:4
^ pot:6
^ pour:2
^ prep:-2
^ press:-4
^ pretty:4
^ print:-10
^ proces:-5
^ ps:4
^ pull:5
^ pure:-3
^ purity:5
^ put:-4
^ q:-6
^ question:-6
^ quick:-5
^ rain:5
^ ran:5
^ re:-2
^ read:2
^ reader:4
^ ready:-6
^ recipe:-6
^ regard:-5
^ remark:-5
^ render:-4
^ replac:-1
^ reply:-3
^ rest:-4
^ result:-4
^ right:-5
^ room:-5
^ row:2
^ safe:-4
^ same:-1
^ sanity:-6
^ sat:-4
^ scal:3
^ scale:7
^ scoop:-4
^ scrap:5
^ second:1
^ sells:-4
^ set:-5
^ sf:-2
^ shav:-3
^ shave:-3
^ she:-5
^ shed:-6
^ shes:-4
^ should:-7
^ since:4
^ sis:2
^ slow:-4
^ smell:-7
^ snow:2
^ so:-6
^ soap:-7
^ soft:-3
^ sold:-8
^ some:2
^ somebody:-1
^ someone:-1
^ somewhere:2
^ sorry:-1
^ sound:-3
^ source:5
^ spill:-1
^ split:2
^ spoon:-3
^ sry:-9
^ stamp:-5
^ start:-7
^ stick:-6
^ still:-3
^ stir:-4
^ stirr:-5
^ straight:-5
^ strain:2
^ student:3
^ subject:-3
^ sum:-4
^ sunday:-9
^ superfat:1
^ swap:3
^ swapp:3
^ swirl:-8
^ switch:-5
^ take:-4
^ tare:1
^ tast:-5
^ teacher:1
^ tell:-10
^ test:-6
^ text:-6
^ thank:-6
^ thats:-4
^ the:-2
^ then:-7
^ ther:-5
^ there:-2
^ these:-2
^ they:-11
^ theyre:3
^ third:-3
^ this:3
^ those:4
^ thought:-3
^ threw:8
^ thx:-4
^ tip:-5
^ title:-4
^ today:1
^ tonight:-7
^ too:-2
^ took:2
^ total:-6
^ towel:-4
^ trac:2
^ trace:-4
^ translat:-2
^ tried:-4
^ try:-3
^ tub:-7
^ turn:-5
^ unit:-3
^ unmould:-5
^ update:2
^ use:1
^ used:3
^ using:-7
^ version:-10
^ very:-8
^ wait:4
^ warm:-7
^ was:-5
^ wash:-6
^ we:1
^ wed:2
^ week:-4
^ weekend:-5
^ weigh:-7
^ weight:-10
^ well:-5
^ went:3
^ were:5
^ weve:-7
^ what:-9
^ whats:-9
^ when:-8
^ which:-7
^ while:-1
^ who:-5
^ whoever:-3
^ whole:3
^ whos:-3
^ why:-7
^ will:-4
^ winter:-2
^ with:-5
^ without:2
^ work:-4
^ worksheet:-3
^ workshop:-4
^ would:-2
^ wrapp:-8
^ write:2
^ written:5
^ wrote:-2
^ x:-9
^ years:3
^ yes:-11
^ yesterday:-7
^ yield:1
^ you:-8
^ youll:1
^ zap:-4
^ zutat:-4
^%:-7
^0:-5
^<:-1
^=:-6
^>:-9
^C:-11
^F:1
^I:-2
^K:-3
^L:-1
^N:-1
^S:-8
^T:-5
^U:2
^W:-1
^X:-4
^d:-3
^e:-9
^l:7
^r:4
^v:-1
^w:-3
any:-2
b%:-3
b0:3
b:3
bA:4
bF:-6
bL:8
bN:6
bW:6
bb:-5
bt:-5
bw:-1
b~ ?:6
b~ a:-5
b~ after:-8
b~ all:-6
b~ and:-6
b~ as:-5
b~ bars:-6
b~ because:-4
b~ before:3
b~ but:6
b~ by:8
b~ fine:-4
b~ for:7
b~ i:2
b~ if:7
b~ in:-2
b~ is:6
b~ it:2
b~ look:-3
b~ my:3
b~ not:-5
b~ of:2
b~ ok:-7
b~ on:-5
b~ or:9
b~ right:-8
b~ still:2
b~ the:7
b~ then:7
b~ too:3
b~ was:6
b~ x:-7
b~0:-9
b~L:2
d%:-5
d0:-7
d:-6
d=:-2
dA:-5
dF:-8
dI:-6
dK:-5
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
d~ and:-5
d~ at:-4
d~ blend:-1
d~ both:-2
d~ by:-5
d~ for:-5
d~ here:-3
d~ in:-4
d~ into:-1
d~ it:-6
d~ no:-5
d~ oils:-1
d~ on:-5
d~ or:-2
d~ pour:-2
d~ so:-7
d~ stirr:-1
d~ the:-7
d~ then:-6
d~ trace:-1
d~ when:-8
d~A:-6
d~F:-6
d~t:-1
e%:-6
e0:4
e:3
e=:-2
e>:-4
eA:-1
eF:-1
eL:2
eN:8
eW:-3
eX:5
eb:-1
ee:-6
et:4
e~ +:5
e~ all:1
e~ and:-4
e~ as:3
e~ but:10
e~ for:-1
e~ g:-11
e~ grams:-5
e~ in:7
e~ is:5
e~ minus:8
e~ not:-2
e~ of:2
e~ on:-2
e~ or:6
e~ was:8
e~ with:11
e~A:-4
e~F:-3
e~W:-3
l%:-5
l0:4
l:-3
l=:-6
l>:-4
lA:2
lF:-7
lL:-3
lN:-3
lW:-3
lX:-4
ll:-7
long:1
lv:-7
lw:-5
l~ and:-6
l~ as:-8
l~ but:2
l~ by:-6
l~ for:2
l~ from:2
l~ goes:-5
l~ i:-8
l~ in:-9
l~ is:-2
l~ it:-1
l~ left:-9
l~ of:-2
l~ on:1
l~ right:-3
l~ so:-8
l~ the:-6
l~ was:-6
l~ went:3
l~ with:2
l~L:2
l~t:-6
no figure:-5
no name:-6
r%:-7
r0:2
r:2
r=:-8
r>:-4
rF:8
rK:2
rW:-2
rt:-7
r~ as:-10
r~ by:1
r~ that:4
r~ the:-1
r~F:3
r~K:2
short:-6
t%:-3
t0:-3
t:-5
t<:8
t=:-3
t>:6
tA:-2
tF:-2
tK:-4
tL:-4
tN:-4
tS:-2
tU:-6
tW:1
tX:-5
tb:-5
td:-1
te:-10
tl:-9
tt:-2
tv:-1
tw:-2
t~ ::1
t~ =:-6
t~ ?:-8
t~ a:-5
t~ add:-2
t~ added:2
t~ after:-6
t~ ago:-6
t~ all:-7
t~ and:-2
t~ at:-3
t~ because:-9
t~ before:3
t~ blend:-3
t~ both:-3
t~ but:1
t~ by:-6
t~ can:-4
t~ cook:-2
t~ cover:-2
t~ cure:-1
t~ cured:-2
t~ cut:-1
t~ day:-1
t~ did:-3
t~ each:-1
t~ edges:-4
t~ flat:-6
t~ from:-8
t~ gel:-3
t~ i:-3
t~ if:-6
t~ in:-8
t~ into:-7
t~ is:-6
t~ it:-8
t~ its:1
t~ ive:-6
t~ later:-9
t~ lid:-5
t~ lined:-1
t~ loaf:-3
t~ long:-3
t~ makes:-1
t~ mash:-2
t~ melt:3
t~ mine:-8
t~ mix:-5
t~ mould:-2
t~ my:-5
t~ no:-4
t~ now:-7
t~ of:2
t~ off:-2
t~ oils:-1
t~ old:2
t~ on:-7
t~ or:-5
t~ paste:-8
t~ pot:1
t~ pour:-4
t~ ready:-5
t~ rest:-7
t~ since:-6
t~ so:-2
t~ still:-6
t~ stir:-2
t~ stirr:-5
t~ the:-6
t~ then:-6
t~ they:-3
t~ till:-2
t~ to:-6
t~ trace:-5
t~ try:-2
t~ under:-1
t~ unmould:-4
t~ until:-4
t~ used:-2
t~ wait:-3
t~ was:-7
t~ we:-8
t~ weigh:-2
t~ went:-5
t~ when:-5
t~ which:-2
t~ with:1
t~ yes:2
t~ zap:-1
t~0:-1
t~=:-2
t~A:-5
t~F:-3
t~K:-1
t~L:-2
t~S:-1
t~U:-4
t~W:2
t~X:-6
t~b:-3
t~d:-2
t~t:-5
v0:-3
v:1
v=:2
vA:3
vC:3
vF:-3
vK:9
vL:3
vN:7
vS:-3
vW:6
vX:-3
vb:-3
vd:-1
vl:-6
vt:4
vv:2
vw:1
v~ a:-4
v~ and:2
v~ at:-3
v~ bottle:-1
v~ can:-11
v~ for:-5
v~ i:2
v~ in:-3
v~ is:-8
v~ of:2
v~ on:-3
v~ one:-3
v~ or:-1
v~ pot:-9
v~ so:-2
v~ to:5
v~C:3
v~S:-1
v~X:-3
w%:-5
w0:1
w<:-11
w=:-6
w>:2
wA:-2
wC:6
wI:-3
wL:-3
wN:3
wS:-6
wW:-2
wX:2
wb:1
wd:5
wl:-12
wt:-10
wv:-1
ww:-1
w~ ::-5
w~ a:3
w~ after:-8
w~ and:-1
w~ as:-7
w~ at:-7
w~ before:-7
w~ but:-8
w~ cubes:-5
w~ dissolv:1
w~ for:-1
w~ fresh:-7
w~ from:-11
w~ frozen:-3
w~ goes:-6
w~ i:-1
w~ in:-4
w~ instead:-10
w~ into:-8
w~ is:-1
w~ it:1
w~ left:-8
w~ loaf:-3
w~ more:-3
w~ mould:2
w~ no:-2
w~ now:-8
w~ of:1
w~ on:-3
w~ one:-1
w~ or:-4
w~ out:-8
w~ per:2
w~ so:-2
w~ the:-5
w~ to:-4
w~ together:-8
w~ was:5
w~ went:2
w~ wet:-5
w~ with:-7
w~0:3
w~C:4
w~I:2
w~L:-10
w~N:-1
w~S:-4
w~X:-5
w~w:-3`;
