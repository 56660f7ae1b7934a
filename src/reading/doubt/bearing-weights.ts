/** What each sign of a note weighs for its bearing on the pot and against it, in tenths of a logit: learned, `npm run generate:bearing`. */
export const weights = ` *:-7
 *~A:-7
 *~F:-3
 +:2
 +~ a:-5
 +~0:5
 +~<:-2
 +~=:-3
 +~A:-6
 +~F:-8
 +~W:-6
 .:5
 .~%:3
 .~0:3
 ::1
 :~ a:4
 :~ about:-5
 :~ all:7
 :~ as:-2
 :~ cook:-1
 :~ do:-1
 :~ does:-2
 :~ g:-2
 :~ goggl:-5
 :~ good:-6
 :~ half:7
 :~ i'd:4
 :~ i:4
 :~ in:4
 :~ is:-8
 :~ it:1
 :~ ive:1
 :~ kitchen:2
 :~ me:-8
 :~ melt:-11
 :~ no:2
 :~ none:5
 :~ one:-5
 :~ re:-2
 :~ soap:-6
 :~ the:-1
 :~ too:2
 :~ was:-4
 :~ weigh:2
 :~ what:4
 :~ why:-3
 :~ winter:-2
 :~ with:1
 :~ yes:4
 :~%:-7
 :~0:-5
 :~<:-2
 :~=:-5
 :~>:-7
 :~A:-1
 :~L:-1
 :~N:2
 :~S:-5
 :~T:-3
 :~X:-1
 :~b:-4
 :~d:-3
 :~l:-11
 :~t:-4
 :~v:-6
 :~w:2
 =:-2
 =~ =:-6
 =~0:-5
 =~=:-5
 =~>:-2
 =~e:2
 =~l:-8
 =~w:-4
 ?:-4
 a:-2
 about:-2
 about~ a:5
 about~ an:-6
 about~ it:-3
 about~ right:-3
 about~ superfat:-8
 about~ the:3
 about~ to:-5
 about~%:-5
 about~0:-3
 about~<:5
 about~>:-5
 about~F:-6
 about~b:2
 about~d:-2
 about~t:-6
 about~v:1
 about~w:3
 above:4
 above~ is:4
 above~d:-7
 abt:-8
 accident:4
 accord:5
 accord~ to:5
 account:7
 acros:2
 acros~ the:8
 actual:10
 actual~N:4
 add:1
 added:7
 added~ a:2
 added~ another:-1
 added~ at:-9
 added~ it:4
 added~ the:1
 added~ to:-8
 added~<:-6
 added~=:-10
 added~v:7
 added~w:3
 adds:-11
 adds~ up:-9
 add~ a:2
 add~ it:-7
 add~ the:-5
 add~ to:2
 add~<:-4
 add~=:-4
 add~F:3
 add~w:-6
 advice:3
 afresh:-7
 after:1
 afternoon:2
 afterward:1
 after~ a:-1
 after~ an:1
 after~ christma:-5
 after~ cook:2
 after~ cure:-2
 after~ i:4
 after~ it:8
 after~ last:2
 after~ pour:3
 after~ strain:2
 after~ that:-2
 after~ the:-1
 after~ this:-7
 after~0:-7
 after~t:-5
 again:-2
 against:4
 against~ the:6
 again~ ::3
 again~ ?:-2
 again~ after:-2
 again~ and:-10
 again~ at:-1
 again~ for:-6
 again~ so:1
 again~ with:6
 age:-9
 ages:-2
 ages~ to:-3
 ago:-10
 ago~ and:-2
 agre:-4
 agree:-5
 agree~ with:-4
 ahead:1
 aim:5
 aim~ at:1
 aim~ for:7
 air:-2
 air~ cupboard:-1
 aisle:2
 aleppo:-6
 alike:8
 alkali:-7
 all:1
 allergen:-7
 allergic:7
 allergic~ to:-9
 allergy:5
 allotment:-4
 allow:-5
 all~ ::-4
 all~ ?:-2
 all~ and:5
 all~ at:3
 all~ but:7
 all~ by:-7
 all~ day:-6
 all~ down:7
 all~ fats:-9
 all~ first:1
 all~ g:-9
 all~ good:-7
 all~ grams:-7
 all~ i:3
 all~ in:-8
 all~ is:-8
 all~ its:1
 all~ my:-5
 all~ of:-2
 all~ on:-8
 all~ over:-5
 all~ right:-9
 all~ that:-3
 all~ the:-3
 all~ there:3
 all~ together:-8
 all~ told:-1
 all~ up:-5
 all~ week:3
 all~ weigh:-2
 all~ went:-1
 all~0:1
 all~=:-6
 all~F:4
 all~L:-1
 all~W:1
 all~b:-2
 all~e:8
 almost:2
 alone:-3
 along:9
 along~ the:-1
 along~ with:7
 already:7
 already~ dissolv:7
 already~ in:3
 already~ mixed:2
 already~ pour:-6
 already~ put:8
 already~ so:3
 alright:-4
 alright~ ?:-2
 alright~ for:-4
 also:2
 also~ a:-3
 also~=:-7
 also~w:5
 alter:2
 although:2
 altogether:-8
 alu:-2
 aluminium:-2
 alway:-2
 alway~ did:-7
 alway~ said:-6
 alway~ with:5
 am:2
 american:-9
 ammonia:-6
 amount:3
 amount~ ?:-3
 amount~ g:-3
 am~ a:-4
 am~ from:-7
 am~ i:-1
 an:-1
 and~ a:-4
 and~ about:-6
 and~ add:-7
 and~ added:-4
 and~ after:-2
 and~ again:1
 and~ all:8
 and~ an:-6
 and~ another:-8
 and~ asked:-6
 and~ at:-8
 and~ bang:-2
 and~ blend:-6
 and~ both:-1
 and~ by:2
 and~ call:3
 and~ came:-8
 and~ clear:-2
 and~ cook:3
 and~ cool:4
 and~ cut:-1
 and~ did:-2
 and~ do:-3
 and~ does:-4
 and~ dont:-6
 and~ even:3
 and~ every:-4
 and~ everyth:-1
 and~ fill:3
 and~ for:2
 and~ forgot:-5
 and~ found:4
 and~ gave:3
 and~ give:5
 and~ glov:-2
 and~ go:-2
 and~ goes:-2
 and~ goggl:-3
 and~ got:-8
 and~ had:1
 and~ half:-7
 and~ hard:-6
 and~ has:1
 and~ have:-4
 and~ he:1
 and~ her:-6
 and~ his:-7
 and~ honest:-7
 and~ how:-7
 and~ i'd:-3
 and~ i:5
 and~ if:4
 and~ im:-2
 and~ in:-4
 and~ into:4
 and~ it:-3
 and~ itll:-5
 and~ its:-3
 and~ ive:-1
 and~ keep:-6
 and~ kept:1
 and~ last:-3
 and~ leave:-1
 and~ left:4
 and~ let:-5
 and~ looks:-1
 and~ lost:-7
 and~ me:-2
 and~ melt:-6
 and~ mine:2
 and~ mixed:-2
 and~ my:1
 and~ neither:4
 and~ never:-2
 and~ no:1
 and~ nobody:-2
 and~ none:6
 and~ not:-1
 and~ noth:-2
 and~ now:3
 and~ of:4
 and~ off:-4
 and~ once:-2
 and~ only:2
 and~ open:-8
 and~ pour:3
 and~ put:4
 and~ said:-6
 and~ says:3
 and~ see:-4
 and~ she:-2
 and~ since:2
 and~ smell:-1
 and~ so:2
 and~ soap:-5
 and~ some:3
 and~ someth:8
 and~ sprinkle:-1
 and~ start:-6
 and~ stay:-4
 and~ still:-1
 and~ stir:1
 and~ stirr:-10
 and~ straight:-8
 and~ strain:-4
 and~ stuck:7
 and~ swear:-7
 and~ swirl:2
 and~ tell:-5
 and~ thank:1
 and~ that:5
 and~ thats:-3
 and~ the:-2
 and~ then:4
 and~ ther:3
 and~ there:5
 and~ they:-6
 and~ this:3
 and~ those:2
 and~ tipp:7
 and~ to:-7
 and~ together:1
 and~ took:9
 and~ turn:-4
 and~ use:3
 and~ used:2
 and~ wait:-2
 and~ want:-6
 and~ wants:-6
 and~ warm:-1
 and~ was:2
 and~ we:2
 and~ weigh:1
 and~ went:-5
 and~ whats:2
 and~ when:-3
 and~ whether:-6
 and~ white:-6
 and~ will:-1
 and~ with:-3
 and~ would:-6
 and~ yes:-2
 and~ you:-1
 and~%:-4
 and~0:1
 and~<:1
 and~=:-4
 and~>:-1
 and~A:-4
 and~B:-1
 and~F:-3
 and~L:-6
 and~N:6
 and~S:-4
 and~X:1
 and~b:-9
 and~e:-2
 and~l:-7
 and~t:-7
 and~v:3
 and~w:-2
 another:3
 another~ day:-7
 another~0:9
 another~<:4
 another~t:-5
 another~v:-3
 another~w:-7
 answer:-6
 answer~ ::-5
 answer~ is:-3
 answer~ the:-5
 any:-2
 anyhow:-4
 anyone:-6
 anyone~ know:2
 anyone~ tried:-4
 anyth:-7
 anyth~ else:-1
 anyth~ in:-2
 anyth~ off:-4
 anyth~ wrong:-3
 anyway:-6
 anywhere:2
 anywhere~ near:-7
 any~ more:-2
 any~A:-3
 any~S:-7
 an~ earlier:-8
 an~ envelope:-5
 an~ extra:4
 an~ eye:-2
 an~ hour:-5
 an~ old:-6
 an~ older:-2
 an~I:3
 an~L:5
 apart:-9
 app:-1
 approx:2
 app~ puts:-3
 april:-2
 apron:-7
 are:-3
 are~ a:-2
 are~ dry:6
 are~ for:4
 are~ from:-7
 are~ full:-1
 are~ in:-7
 are~ no:-5
 are~ not:-8
 are~ now:2
 are~ right:-3
 are~ still:-9
 are~ the:-4
 are~0:3
 are~=:-3
 are~>:-3
 are~F:-2
 argu:-10
 arithmetic:-8
 arm:-7
 around:-3
 around~ the:-5
 around~%:2
 around~0:-2
 around~d:-3
 around~w:-1
 arriv:-8
 as:3
 ash:-10
 ashes:-7
 ash~ and:-5
 ash~ on:-7
 aside:-5
 ask:-4
 asked:-8
 asked~ about:-6
 asked~ for:-1
 asked~ if:-7
 asked~ in:-1
 asked~ me:-1
 asked~ whether:-5
 asks:-9
 ask~ ::-3
 ask~ about:-6
 ask~ for:-5
 ask~ her:-1
 ask~ if:-1
 ask~ me:1
 ask~ you:-6
 asleep:-6
 assay:7
 as~ a:2
 as~ above:-6
 as~ alway:5
 as~ anyth:-2
 as~ before:4
 as~ ever:-7
 as~ far:-4
 as~ i:7
 as~ if:4
 as~ in:-1
 as~ is:6
 as~ it:-4
 as~ list:-4
 as~ long:-9
 as~ much:1
 as~ my:-2
 as~ on:-7
 as~ one:1
 as~ print:6
 as~ promis:-6
 as~ she:-1
 as~ snow:-3
 as~ the:3
 as~ they:-6
 as~ well:3
 as~ written:-4
 as~ you:-7
 as~%:-1
 as~0:1
 as~>:2
 as~A:3
 as~I:-10
 as~L:-4
 as~X:-5
 at:-2
 ate:6
 attempt:-7
 attempt~0:-4
 attic:-3
 at~ a:-7
 at~ all:-1
 at~ around:-4
 at~ christma:-3
 at~ church:-8
 at~ day:-8
 at~ easter:-6
 at~ first:-6
 at~ half:-9
 at~ home:2
 at~ hour:2
 at~ it:4
 at~ least:-3
 at~ liquid:-4
 at~ me:3
 at~ minute:-2
 at~ my:-2
 at~ once:-3
 at~ our:-6
 at~ room:-5
 at~ rough:-2
 at~ school:-6
 at~ the:1
 at~ thin:-7
 at~ this:-6
 at~ trace:6
 at~ week:-5
 at~ work:-1
 at~%:3
 at~0:-4
 at~<:8
 at~=:-3
 at~b:3
 at~d:-4
 at~e:2
 at~l:-7
 at~t:-10
 at~w:-1
 august:3
 aunt:-5
 aunti:-6
 auntie:-3
 aunts:3
 aunt~ in:-6
 aunt~ says:-5
 aunt~ sent:2
 autumn:-9
 average:-4
 away:-1
 away~ and:1
 a~ ::-8
 a~ bad:-7
 a~ bag:5
 a~ bar:-10
 a~ batch:-8
 a~ beginner:-3
 a~ bit:-2
 a~ blanket:-3
 a~ blend:8
 a~ block:6
 a~ bowl:-9
 a~ box:-6
 a~ brick:-1
 a~ bucket:-5
 a~ can:1
 a~ candle:-7
 a~ carton:-1
 a~ castile:1
 a~ cheese:-7
 a~ chip:-5
 a~ class:-5
 a~ clean:3
 a~ cold:-7
 a~ corner:-9
 a~ cow:1
 a~ crack:-4
 a~ crisp:-5
 a~ crumb:-6
 a~ crust:7
 a~ customer:-4
 a~ dark:-5
 a~ day:-3
 a~ different:-4
 a~ drawer:-6
 a~ dream:-3
 a~ drop:3
 a~ dry:-6
 a~ face:-6
 a~ fair:4
 a~ fami:-4
 a~ fan:-2
 a~ farm:2
 a~ few:5
 a~ fifth:3
 a~ finger:-6
 a~ first:-3
 a~ fresh:-1
 a~ friend:-2
 a~ full:-3
 a~ girl:-4
 a~ glass:2
 a~ glug:4
 a~ good:11
 a~ half:4
 a~ handful:-1
 a~ heap:8
 a~ hole:-3
 a~ hurry:-5
 a~ jam:-7
 a~ jar:1
 a~ jug:-1
 a~ knob:7
 a~ ladle:5
 a~ lady:-5
 a~ laundry:-7
 a~ library:-4
 a~ lid:-3
 a~ lidd:-3
 a~ light:-2
 a~ line:2
 a~ list:1
 a~ little:4
 a~ loaf:-6
 a~ look:-7
 a~ lot:-7
 a~ lump:6
 a~ man:-5
 a~ milk:-2
 a~ minute:-5
 a~ mix:7
 a~ month:-10
 a~ mould:-6
 a~ mug:8
 a~ new:-7
 a~ nice:-3
 a~ night:-4
 a~ page:-6
 a~ paper:-5
 a~ paste:-2
 a~ pdf:-3
 a~ pencil:-6
 a~ photo:-8
 a~ piece:1
 a~ pinch:-2
 a~ plain:-8
 a~ proper:-6
 a~ puddle:3
 a~ quarter:7
 a~ question:-3
 a~ reader:-7
 a~ ready:4
 a~ recipe:-2
 a~ rock:-5
 a~ round:-1
 a~ row:-7
 a~ scale:-8
 a~ second:-3
 a~ sensible:-2
 a~ shade:-3
 a~ shoe:-3
 a~ shoebox:-3
 a~ silicone:-7
 a~ sink:-4
 a~ skin:-3
 a~ skull:-5
 a~ slip:3
 a~ slow:-5
 a~ small:1
 a~ smaller:-4
 a~ soap:-7
 a~ soft:-6
 a~ softer:-4
 a~ spatula:-8
 a~ spill:-2
 a~ splash:6
 a~ spoon:-5
 a~ spoonful:-4
 a~ steel:-9
 a~ stick:2
 a~ stir:-3
 a~ superfat:5
 a~ tenth:5
 a~ thermometer:-5
 a~ thin:-3
 a~ thing:-6
 a~ third:3
 a~ time:-8
 a~ tin:2
 a~ tiny:4
 a~ touch:-4
 a~ towel:-1
 a~ tray:-5
 a~ treat:-6
 a~ tub:-8
 a~ twentieth:3
 a~ typo:2
 a~ very:-6
 a~ video:-2
 a~ volcano:-5
 a~ warm:-5
 a~ water:-3
 a~ week:-8
 a~ wet:2
 a~ white:-1
 a~ whole:2
 a~ wire:-2
 a~ woman:-6
 a~ year:-7
 a~ yes:-3
 a~ zap:-4
 a~%:2
 a~0:5
 a~<:6
 a~=:-6
 a~>:2
 a~A:-5
 a~F:-1
 a~K:-3
 a~L:-4
 a~N:7
 a~X:3
 a~b:4
 a~e:-7
 a~r:3
 a~t:-5
 a~v:-1
 a~w:6
 b:-1
 babcia:-5
 babi:-8
 baby:2
 baby~ bar:-6
 baby~ shower:-3
 back:-4
 background:-4
 back~ ::-5
 back~ a:1
 back~ and:4
 back~ at:-3
 back~ for:1
 back~ in:-6
 back~ into:1
 back~ of:-3
 back~ on:-7
 back~ out:4
 back~ till:9
 back~ to:-5
 back~ up:6
 bacon:-4
 badly:-2
 bag:5
 bags:-5
 bag~ of:6
 bag~ says:-2
 bak:-9
 bakery:-8
 bak~ paper:-8
 balanc:-3
 balance:2
 balanc~ ?:-3
 balcony:2
 balls:-6
 balm:-5
 bang:-7
 bang~ it:-4
 bar:-4
 bare:-7
 bare~ got:-2
 bark:1
 barn:-4
 barrel:-6
 bars:-9
 bars~ +:-8
 bars~ ::-5
 bars~ about:-1
 bars~ and:-5
 bars~ are:-4
 bars~ at:-2
 bars~ came:-1
 bars~ come:-4
 bars~ each:-5
 bars~ for:-7
 bars~ from:-6
 bars~ i:-2
 bars~ in:-6
 bars~ of:-6
 bars~ on:-4
 bars~ out:-7
 bars~ so:-3
 bars~ to:-4
 bars~ went:-7
 bars~ were:2
 bars~ with:-7
 bars~0:-8
 bars~t:-3
 bars~w:-5
 bar~ ::-2
 bar~ ?:-8
 bar~ all:-4
 bar~ and:-4
 bar~ at:-4
 bar~ costs:-4
 bar~ for:-7
 bar~ from:-7
 bar~ i:1
 bar~ in:-4
 bar~ is:2
 bar~ no:-1
 bar~ of:-6
 bar~ since:-2
 bar~ so:1
 bar~ v:-7
 bar~ with:3
 bar~0:-3
 basic:-4
 bastille:-5
 batch:-5
 batch~ ::-2
 batch~ and:-9
 batch~ before:-8
 batch~ but:2
 batch~ ever:2
 batch~ for:1
 batch~ from:-7
 batch~ had:-1
 batch~ i:1
 batch~ in:5
 batch~ is:2
 batch~ log:-3
 batch~ no:-4
 batch~ of:-6
 batch~ record:-2
 batch~ sheet:-7
 batch~ the:1
 batch~ this:4
 batch~ was:-7
 batch~ with:-4
 batch~0:-8
 bath:-8
 bathroom:5
 bathroom~ scale:8
 batter:-4
 batteri:-3
 battery:3
 battery~ died:7
 bazaar:-4
 bc:7
 bc~ i:3
 be:3
 beach:-6
 beads:4
 beaker~ and:-7
 bear:-6
 beard:-4
 bear~ with:-5
 beat:-4
 beat~ in:-4
 beautiful:-4
 became:3
 became~0:10
 because:1
 because~ a:-3
 because~ he:-10
 because~ i:-4
 because~ it:7
 because~ its:-4
 because~ last:1
 because~ my:5
 because~ of:-3
 because~ she:-3
 because~ the:2
 because~F:-7
 become:-1
 bed:-8
 bee:-6
 beech:-4
 beef:-6
 beef~=:-5
 beekeeper:-7
 been:4
 been~ at:4
 been~ mak:-7
 been~ on:-5
 been~ open:6
 been~ stand:4
 been~ told:-7
 been~t:-2
 bees:-3
 beforehand:-5
 before~ and:1
 before~ anyone:-8
 before~ i:-5
 before~ it:1
 before~ me:2
 before~ pour:6
 before~ saturday:-5
 before~ she:-1
 before~ so:-9
 before~ that:-8
 before~ the:2
 before~ they:-9
 before~ this:-9
 before~ we:-3
 before~ weigh:-7
 before~ with:-6
 before~ you:-11
 before~t:-5
 began:-6
 begin:-6
 beginn:-1
 beginner':-8
 beginner:-9
 behav:-7
 behind:-1
 behind~ the:3
 beige:-8
 being:-3
 believe:-1
 bell:1
 belong:-4
 below:-4
 below~ the:-6
 below~d:-5
 bench:2
 besid:5
 beside:6
 beside~ it:2
 besid~ the:6
 best:-11
 best~ before:-6
 bet:-6
 better:-5
 better~ than:2
 between:-1
 between~ the:5
 between~0:8
 be~ ?:-7
 be~ a:6
 be~ about:-6
 be~ bother:3
 be~ clear:-5
 be~ cut:-3
 be~ exact:6
 be~ for:2
 be~ gentle:-2
 be~ honest:-2
 be~ hot:-4
 be~ in:-9
 be~ mild:-6
 be~ ok:-3
 be~ on:4
 be~ patient:-9
 be~ right:3
 be~ sure:-1
 be~ the:-5
 be~ too:-5
 be~%:-9
 be~0:4
 be~A:-7
 be~N:8
 be~b:7
 be~e:9
 be~w:5
 bicycle:-6
 big:2
 bigger:2
 bigger~ pot:-3
 bigger~ than:5
 big~ batch:-8
 big~ kettle:5
 big~ one:2
 big~ pot:-6
 bin:-3
 binn:3
 bin~ it:-4
 birds:-3
 birthday:-4
 biscuit:-7
 bit:1
 bite:-5
 bites:-3
 bits~ of:1
 bit~ and:1
 bit~ at:-4
 bit~ by:-3
 bit~ greasy:-2
 bit~ less:1
 bit~ like:-4
 bit~ more:4
 bit~ of:3
 bit~ on:-6
 bit~ over:-6
 bit~ slimy:-2
 bit~ so:-4
 bit~ soft:-5
 bit~ the:2
 bit~ under:1
 black:-3
 blame:-7
 blame~ the:-6
 blanket:-6
 blend:-1
 blender:-3
 blender~ and:-6
 blender~ died:-2
 blender~t:-6
 blend~ and:-6
 blend~ at:-1
 blend~ for:-3
 blend~ pour:-3
 blend~ till:-5
 blend~ to:-3
 blend~ with:7
 blend~t:-5
 blind:4
 blink:-3
 blob:-1
 block:1
 blog:2
 blog~ i:-3
 blood:-6
 blue:-3
 board:3
 boat:3
 boiler:-7
 boil~ and:-10
 boil~ down:-3
 boil~ flat:6
 boil~ in:7
 boil~ it:-6
 boil~ off:6
 boil~ over:5
 boil~ the:-3
 bonjour:-4
 bonsoir:-4
 book:-3
 book~ ::-2
 book~ says:-7
 born:-5
 borrow:-3
 boss:-2
 bother:-5
 bother~ to:2
 bother~ with:4
 both~ alkali:-6
 both~ are:-9
 both~ at:1
 both~ feel:-1
 both~ lyes:-2
 both~ of:2
 both~ times:-8
 both~ units:-4
 both~ were:-6
 bottl:-3
 bottle:3
 bottle~ and:4
 bottle~ before:-4
 bottle~ gave:3
 bottle~ in:-6
 bottle~ is:5
 bottle~ of:-2
 bottle~ on:-3
 bottle~ ran:-1
 bottle~ said:6
 bottle~ says:6
 bottle~ so:1
 bottle~ was:12
 bottle~ with:-1
 bottl~ of:-5
 bottom:-1
 bought:-5
 bought~ a:-6
 bought~ the:-4
 bought~0:-7
 bought~>:-7
 bought~F:2
 bowls:1
 bowl~ and:-2
 bowl~ in:-10
 bowl~ is:-5
 bowl~ on:6
 bowl~ with:-4
 bowl~w:2
 box:-2
 boxes:-5
 box~ and:-2
 box~ lined:-2
 box~ with:-4
 box~t:-1
 boy:-2
 boyfriend:-2
 brand:-5
 brave:-3
 bread:-1
 break:-9
 breakfast:-2
 breathe:-5
 brewery:-4
 brick:-1
 brim:-3
 bring:-11
 bring~ it:-3
 bring~ the:-8
 bro:-1
 broken:3
 brother:2
 brother~ in:-9
 brought:8
 brown:-8
 brown~ paper:-4
 brush:-3
 btw:3
 bubbl:-6
 bubble:-4
 bubbl~ and:1
 bucket:-4
 bucket~ of:-9
 bucket~ so:-4
 bucket~ with:-7
 burn:-7
 burnt:-2
 burst:-2
 burst~ of:-2
 bus:-2
 but:-1
 butcher:-5
 butcher~ gave:-8
 button:-6
 but~ before:-1
 but~ first:-2
 but~ he:-6
 but~ here:-6
 but~ i'd:-3
 but~ i:1
 but~ im:-9
 but~ is:-8
 but~ it:-7
 but~ ive:-1
 but~ no:3
 but~ not:-4
 but~ now:-4
 but~ only:-7
 but~ she:-4
 but~ that:-8
 but~ thats:-5
 but~ the:7
 but~ then:4
 but~ there:-5
 but~ they:-4
 but~ this:-1
 but~ those:-5
 but~ when:-1
 but~0:1
 but~F:-8
 buy~ the:-3
 by:2
 by~ ::-8
 by~ a:8
 by~ accident:4
 by~ bit:-3
 by~ easter:-7
 by~ eye:7
 by~ hand:-8
 by~ it:-5
 by~ itself:3
 by~ me:-6
 by~ mistake:6
 by~ modern:-4
 by~ my:2
 by~ noon:-4
 by~ spoon:-7
 by~ the:3
 by~ then:-3
 by~ today:-3
 by~ volume:1
 by~ week:-6
 by~ weight:-5
 by~0:-3
 by~<:6
 by~>:-4
 by~N:-4
 by~b:-3
 by~t:-7
 by~w:-2
 b~ ::4
 b~A:-4
 b~F:-7
 c:-5
 cake:-2
 cakes:-4
 calculat:-1
 calculate:3
 calculator:-7
 call:3
 calls:-11
 calls~ it:-7
 call~ for:-1
 call~ it:7
 call~ that:3
 call~ the:-2
 call~F:6
 came:1
 came~ back:3
 came~ from:-1
 came~ in:-3
 came~ off:1
 came~ out:-2
 came~ to:7
 came~ up:2
 can:-1
 candl:-6
 candle:-1
 candle~B:-2
 candl~ and:-6
 cannot:-7
 cans:-1
 cant:3
 cant~ be:-3
 cant~ find:4
 cant~ get:-8
 cant~ remember:6
 cant~ say:-3
 cant~ stand:6
 can~ anyone:-1
 can~ be:-3
 can~ bear:-3
 can~ i:-1
 can~ is:3
 can~ of:5
 can~ see:2
 can~ somebody:-5
 can~ someone:5
 can~ stand:-6
 can~ still:-4
 can~ take:-5
 can~ tell:-2
 can~ the:-4
 can~ u:1
 can~ use:-5
 cap:-2
 capping:-6
 car:-8
 caramel:-5
 carbonate:6
 card:-1
 cardboard:1
 card~ for:-3
 card~ is:3
 card~ no:-4
 card~ says:4
 care:2
 caretaker:-6
 carpet:-4
 carri:5
 carri~ it:4
 carri~ on:4
 carry:-10
 carton:-3
 case:-1
 cast:-7
 castile:-7
 cast~ an:-3
 cat:-2
 cat~ got:4
 cat~ had:3
 cat~ has:-7
 cat~ is:-3
 cauldron:-3
 caviti:-6
 ceil:-1
 cell:1
 cellar:-11
 certain:5
 certifi:-8
 certificate:5
 chair:-5
 chang:-3
 change:-2
 change~ the:-5
 chang~ ::3
 chang~ my:5
 chang~ the:-7
 charg:-2
 charge:-5
 chat:-4
 cheap:-9
 cheaper:-5
 cheaper~ than:-6
 check:-3
 check~ ::-1
 check~ ?:-1
 check~ before:1
 check~ by:-8
 check~ it:1
 check~ me:-3
 check~ mine:-3
 check~ my:-8
 check~ out:-4
 check~ please:-5
 check~ pls:-4
 check~ that:-7
 check~ the:-5
 check~ this:-5
 check~A:-5
 cheese:-2
 cheese~ wire:-7
 chemist:-8
 chemistry:-3
 chemistry~ teacher:2
 child:-7
 children:-5
 chill:-7
 chip:2
 chips:4
 chisel:-6
 choir:2
 choose:-3
 chopp:-2
 christma:-7
 christma~0:-6
 chuck:4
 chuck~ in:8
 church:-7
 ciao:-4
 claim:-1
 clarity:-6
 class:-3
 class~ ::-6
 class~ i:-5
 clean:-5
 clean~ the:-6
 clean~ up:2
 clean~F:-4
 clear:-7
 clearer:1
 clear~ after:-2
 clear~ and:-6
 clear~ as:-8
 clear~ at:-8
 clear~ in:-7
 clever:-7
 climb:-9
 climb~ out:-3
 climb~ to:-6
 cling:-3
 cling~ film:-4
 cling~ to:3
 clock:-5
 clos:-1
 close:-4
 close~ to:-4
 cloth:-7
 cloud:2
 cloudy:-1
 cloudy~ for:-5
 club:-3
 clubs:-5
 clump:1
 coat:-7
 code:-4
 cold:-7
 cold~ and:-1
 cold~ from:-6
 cold~ press:-7
 cold~ proces:-6
 cold~L:5
 cold~W:-6
 colleague:-9
 colloidal:2
 colour:-9
 column:-5
 com:3
 combin:2
 combine:-2
 combine~ blend:-3
 come:1
 comes:1
 comes~ as:1
 comes~ from:-7
 comes~ in:2
 comes~ out:3
 comes~ to:1
 come~ back:-5
 come~ down:-4
 come~ off:-2
 come~ out:2
 come~ to:4
 comma:1
 comma~ i:-1
 comma~ is:-7
 comment:-7
 commit:-2
 compar:-4
 compare:-9
 compar~ with:2
 complain:-2
 complaint:-8
 complain~ about:-2
 complete:2
 computer:-3
 confession:-1
 confetti:-4
 confirm:-8
 confirm~ the:-5
 confus:1
 contain:7
 convert:-9
 cook:2
 cooker:-2
 cooker~ ::-3
 cooker~ before:3
 cooker~ for:-2
 cooker~ is:-6
 cooker~ on:-3
 cooks:-2
 cook~ ::-7
 cook~ ?:-7
 cook~ about:1
 cook~ and:-1
 cook~ at:-5
 cook~ for:-4
 cook~ i:-4
 cook~ in:-7
 cook~ is:3
 cook~ it:1
 cook~ on:-4
 cook~ once:-3
 cook~ part:-6
 cook~ so:7
 cook~ the:-5
 cook~ until:-2
 cook~ was:-10
 cook~ when:-5
 cook~ with:2
 cook~=:-1
 cook~F:-6
 cook~t:-5
 cool:-4
 cools:-8
 cool~ down:-1
 cool~ i:-4
 cool~ it:-5
 cool~ on:-2
 cool~ the:-7
 cool~ to:-2
 cool~ under:-4
 copi:3
 copi~ from:2
 copi~ it:-2
 copi~ off:1
 copi~ out:-6
 copi~ straight:-7
 copi~ the:-1
 copy:2
 cork:-6
 corner:-12
 correct:1
 correction:8
 correct~ ?:-1
 correct~ for:1
 correct~ or:-2
 cos:8
 cost:-7
 costs:-14
 costs~ me:-2
 costs~0:-5
 costs~t:-6
 cost~ ::-8
 cost~ eur:-1
 cost~ me:-5
 cost~ per:-1
 cost~ sheet:-5
 cost~0:-5
 cost~t:-3
 couldnt:5
 couldnt~ be:6
 couldnt~ get:7
 could~ be:9
 could~ go:-1
 could~ have:-7
 could~ not:8
 could~ somebody:-1
 could~ someone:-6
 could~ the:-9
 could~ you:-3
 council:-7
 count:1
 counter:3
 countri:-6
 country:2
 country~ the:-2
 county:-4
 count~ in:-2
 count~ it:6
 count~ the:-3
 count~ with:5
 course:-7
 course~ i:-4
 course~ in:-3
 cousin:-2
 cover:-5
 cover~ cut:-1
 cover~ it:-5
 cover~ with:-6
 cow:2
 cows:-7
 cp:-4
 crack:-3
 crackl:3
 crackling:1
 crack~ along:-5
 crack~ on:-7
 crate:-7
 creamy:-6
 cried:-7
 crisp:-5
 crisp~ tube:-5
 crock:-2
 crockpot:-4
 cross:-2
 cross~ out:-1
 crumb:-2
 crumbl:-6
 crumble:-5
 crumb~ and:5
 crumb~ at:2
 crush:-6
 crust:9
 crystal:-4
 cubes:-7
 cubes~ and:-3
 cubes~ of:1
 cubes~ the:-5
 cubes~w:-5
 cup:3
 cupboard:-1
 cupboard~ and:3
 cupcake:-8
 cups:-5
 cup~ and:-8
 cup~ on:1
 cup~ weigh:-7
 cup~ with:-6
 cur:-6
 cure:-8
 cured:-5
 cure~ ::-2
 cure~ for:-4
 cure~ till:-3
 cure~ until:-1
 cure~t:-1
 curry:-6
 custard:-6
 customer:-9
 cuts:-7
 cutt:-4
 cutter:-7
 cut~ ::-5
 cut~ after:-2
 cut~ at:-7
 cut~ in:-2
 cut~ into:-8
 cut~ it:2
 cut~ next:-2
 cut~ off:-2
 cut~ on:-3
 cut~ the:6
 cut~ them:-2
 cut~ too:-5
 cut~ with:-5
 cut~0:-6
 cut~b:-6
 cut~t:-2
 c~ ::-3
 c~ at:-3
 c~0:-7
 d:-5
 dad:-3
 dads:-1
 dads~t:-2
 daft:3
 dag:-2
 dag~ ::-1
 dag~ here:-1
 dairy:6
 damp:6
 dare:2
 dark:-11
 das:-8
 date:-7
 dates:-8
 date~ ::-2
 date~t:-5
 daughter':-9
 daughter:2
 daughter~ wants:-2
 daughter~ who:-7
 day:-3
 days:-4
 day~ and:-4
 day~ at:-5
 day~ before:3
 day~ i:-5
 day~ it:-5
 day~ so:3
 day~ then:-3
 day~0:-6
 day~t:-6
 de:-5
 dead:-3
 deal:7
 dear:2
 dear~ all:3
 dear~ group:-4
 december:-6
 decent:-5
 decid:-1
 decimal:-7
 deep:2
 deer:-3
 deer~ camp:-3
 degre:-7
 demineralis:-8
 demonstration:2
 dent:-8
 deodoris:-9
 diary:-5
 dictat:2
 dictat~ this:-5
 did:2
 didnt:5
 didnt~ weigh:6
 did~ and:1
 did~ for:-2
 did~ i:-5
 did~ in:-8
 did~ it:2
 did~ my:-2
 did~ not:4
 did~ the:4
 did~ this:-1
 did~ weigh:-5
 did~ you:-7
 did~=:-4
 did~e:-3
 died:1
 died~ at:3
 difference:-6
 different:-8
 digit:-1
 digital:-8
 dilut:-3
 dilute:-8
 dilution:3
 dinner:2
 disaster:-10
 discount:3
 dish:-1
 dish~ soap:5
 display:6
 display~ said:-8
 dissolv:4
 dissolve:4
 dissolve~ it:-6
 dissolve~ the:4
 dissolve~=:-7
 dissolv~ in:1
 dissolv~ it:-1
 dissolv~ the:-1
 dissolv~ together:-1
 dissolv~<:4
 dissolv~=:-4
 do:-4
 doctor:-9
 does:-4
 doesnt:-2
 doesnt~ mind:-6
 doesnt~ smell:-5
 does~ anybody:-4
 does~ anyone:2
 does~ her:-4
 does~ it:-4
 does~ my:-5
 does~ not:-3
 does~ that:-1
 does~ the:-4
 does~ this:-1
 does~%:-8
 does~=:3
 does~F:-7
 does~b:-5
 does~w:1
 dogs:-6
 dog~ got:9
 doing:3
 doing~ it:-5
 doing~ the:3
 doing~ this:3
 done:-5
 done~ and:1
 done~ i:-7
 dont:-3
 dont~ ask:5
 dont~ be:-6
 dont~ care:5
 dont~ dare:-7
 dont~ get:4
 dont~ have:-3
 dont~ know:6
 dont~ laugh:-1
 dont~ panic:-6
 dont~ trust:-6
 dont~ want:-8
 door:-5
 doorbell:2
 doors:-8
 dos:-2
 dose:8
 dose~ of:8
 dot:-6
 doubl:8
 double:-8
 double~ boiler:-6
 double~ check:-3
 doubt:1
 down:2
 down~ and:-4
 down~ by:4
 down~ the:-2
 down~ to:1
 down~ with:5
 do~ ?:-7
 do~ a:3
 do~ for:-5
 do~ i:1
 do~ in:-9
 do~ it:-2
 do~ my:-2
 do~ not:-3
 do~ that:2
 do~ the:-5
 do~ this:-7
 do~ we:-4
 do~ with:-6
 do~ you:-5
 do~F:-4
 draft:-7
 drag:-7
 drain:4
 drama:-5
 drank:5
 drawer:-4
 drawer~ lined:-2
 drawn:4
 dream:-5
 dress:-10
 drew:-5
 dried:-1
 drill:-4
 drink:-5
 drip:-6
 drips:-4
 drop:-1
 dropp:4
 dropp~ below:-4
 dropp~ the:2
 drops:-2
 drops~ of:3
 drop~ of:3
 drop~ the:-4
 drop~ to:-3
 drove:-3
 drown:-7
 drum:7
 dry:2
 dry~ cup:-3
 dry~ hands:5
 dry~ skin:-5
 dry~ so:3
 dry~ until:3
 dual:1
 dual~A:1
 duck:-6
 dump:-3
 dur:4
 dust:4
 e:-5
 each:-1
 each~ and:-4
 each~ of:-5
 each~ other:-8
 each~ time:-1
 earlier:-5
 early:-11
 easi:3
 easier:-6
 easter:-5
 easy:-10
 eat:-1
 eats:-6
 eczema:2
 edge:-2
 edges:-2
 edition:3
 edit~ ::2
 either:7
 elbow:-5
 else~ no:-2
 empti:4
 empty:-3
 empty~ and:-2
 empty~ bowl:-6
 emulsion:-6
 enamel:-8
 enamel~ pot:-6
 end:4
 ended:7
 ended~ up:-1
 ends:-10
 end~ ?:-4
 end~ after:1
 end~ and:4
 end~ i:-1
 end~ is:-11
 end~ it:7
 end~ of:-1
 end~ piece:-7
 end~ up:-9
 english:-3
 english~ i:-5
 english~ is:-5
 enough:-1
 enough~ ?:-4
 enough~ for:-4
 enough~ or:-5
 enough~ to:-3
 entire:-5
 entry:-3
 envelope:-4
 equal:1
 equal~ parts:1
 equal~ weight:-6
 error:-2
 eur:-4
 euro:-5
 even:-7
 evening:-3
 even~ all:-4
 even~ class:-4
 even~ in:-5
 ever:-9
 every:-6
 everybody:-9
 everyday:-4
 everyday~ bar:-3
 everyone:-7
 everyone~ who:2
 everyth:3
 everyth~ ::-3
 everyth~ and:-6
 everyth~ at:1
 everyth~ else:2
 everyth~ in:-6
 everyth~ is:3
 everyth~ on:1
 everyth~ was:-2
 everyth~ weigh:-8
 everywhere:-4
 every~ one:5
 every~ time:2
 every~t:-4
 ever~ batch:-5
 ex:-5
 exact:-8
 exact~ as:-10
 exact~ this:-6
 exam:-7
 except:5
 except~ that:-4
 except~ the:4
 exces:2
 excuse:-6
 excuse~ my:-3
 excuse~ the:-5
 expect:-4
 expensive:-4
 export:-4
 export~ from:-3
 extra:6
 extra~ fat:6
 extra~ virgin:-4
 extra~A:-3
 extra~F:-3
 eye:6
 eyebrow:-8
 eyes:-4
 eye~ over:-2
 f:-6
 face:-6
 faces:-8
 face~ bar:-4
 facial:1
 facial~ bar:-4
 fact:7
 faded:-7
 fades:-5
 fail:4
 fails:-3
 fail~ me:-3
 faint:-6
 faint~ of:-5
 fair:3
 fair~ ::-4
 falls:-4
 false:-6
 false~ trace:-6
 fami:-1
 famili:-5
 fan:-4
 fancy:4
 far:-3
 farm:-1
 farm~ shop:3
 far~ as:-4
 far~ too:3
 fast:-5
 faster:2
 faster~ than:-5
 fat:4
 father:-1
 father~ in:3
 fats:1
 fats~ ::-4
 fats~ ?:-3
 fats~ and:-1
 fats~ are:-3
 fats~ at:-4
 fats~ in:-7
 fats~ is:-6
 fats~ melt:-1
 fats~ or:-4
 fats~ were:-7
 fat~ ?:-6
 fat~ and:2
 fat~ g:-4
 fat~ grams:-5
 fat~ in:-4
 fat~ is:1
 fat~ left:4
 fat~ of:-7
 fat~ so:-1
 fat~ was:-6
 fault:3
 favour:1
 feb:-6
 february:-7
 feed:2
 feed~ store:3
 feel:1
 feels:-7
 feels~ a:-5
 feels~ like:-7
 feel~ the:-1
 feet:2
 fell:-3
 fellow:-1
 fell~ in:2
 fell~ on:2
 felt:-1
 felt~ like:-3
 fence:-6
 fete:1
 few:5
 few~ drops:-8
 field:-7
 fifth:2
 fifth~ of:7
 fig:-7
 fight:2
 figur:-1
 figure:7
 file:2
 files:-4
 fill:3
 fills:-7
 fills~ my:-6
 fills~ the:1
 fills~0:-3
 fill~ in:-6
 fill~ it:-2
 fill~ the:3
 fill~ to:2
 fill~ up:6
 fill~0:1
 film:-6
 film~ on:-3
 filter:2
 final:-1
 find:6
 finds:-5
 find~ the:3
 find~F:2
 fine:-6
 finer:-5
 fine~ ?:-4
 fine~ and:-2
 fine~ but:-5
 fine~ for:-6
 fine~ or:-4
 finger:1
 finish:2
 finish~ paste:-5
 finish~ with:5
 fire:-10
 firm:5
 firmer:-2
 first:-5
 first~ ::-1
 first~ and:-3
 first~ attempt:-7
 first~ batch:1
 first~ ever:-5
 first~ go:-2
 first~ hour:-4
 first~ i:-1
 first~ in:-3
 first~ it:-3
 first~ lot:5
 first~ one:-2
 first~ so:7
 first~ soap:-3
 first~ the:-2
 first~ then:-10
 first~ time:3
 first~ timer:-1
 first~ to:-3
 first~ try:-5
 first~ went:-3
 first~0:1
 first~t:2
 fish:2
 fish~ out:-1
 fit:-4
 fits:-5
 fits~ ?:-3
 fits~ the:-5
 fit~ the:2
 fixed:-9
 fizz:-3
 flak:5
 flake:8
 flame:-5
 flat:2
 flatmate:-2
 flat~ and:-2
 flat~ boil:3
 flat~ for:1
 flat~ in:-7
 float:-3
 float~ an:-4
 floor:3
 floor~ and:-3
 fluid:5
 fluid~ ounc:8
 foam:-6
 foams:-7
 foam~ from:-5
 foam~ over:6
 foil:1
 fold:-2
 folder:-8
 fold~ in:1
 folk:-7
 folks:-7
 follow:-2
 forever:-7
 forever~ to:-4
 forgett:-1
 forget~ the:-1
 forgiv:-8
 forgive:-4
 forgot:3
 forgotten:4
 forgot~ it:6
 forgot~ the:-1
 forgot~ to:2
 form:-9
 formula:-4
 forum:-10
 for~ a:-3
 for~ about:1
 for~ after:2
 for~ ages:-1
 for~ all:-4
 for~ an:-5
 for~ another:-1
 for~ any:-6
 for~ babi:-7
 for~ baby:4
 for~ both:6
 for~ bubbl:-1
 for~ candl:-8
 for~ christma:-3
 for~ days:-6
 for~ each:5
 for~ every:-6
 for~ faces:-7
 for~ floor:-2
 for~ free:5
 for~ fry:2
 for~ gram:5
 for~ half:5
 for~ hands:1
 for~ hardnes:2
 for~ his:-5
 for~ it:-4
 for~ laundry:3
 for~ looks:-5
 for~ luck:5
 for~ me:1
 for~ more:1
 for~ my:1
 for~ next:-3
 for~ no:5
 for~ noth:-6
 for~ once:8
 for~ one:3
 for~ our:-4
 for~ people:-4
 for~ read:-3
 for~ salad:-11
 for~ saturday:3
 for~ shav:-4
 for~ skin:-9
 for~ soap:-9
 for~ some:-7
 for~ test:-6
 for~ that:-1
 for~ the:2
 for~ these:-4
 for~ this:-3
 for~ those:-3
 for~ today:3
 for~ us:1
 for~ wash:-3
 for~ what:4
 for~ word:-6
 for~ years:-3
 for~ you:-8
 for~ your:3
 for~%:5
 for~0:-6
 for~=:-4
 for~>:1
 for~A:-1
 for~B:-2
 for~L:-5
 for~N:-6
 for~S:-10
 for~T:-5
 for~W:-2
 for~X:2
 for~b:-1
 for~d:-8
 for~e:-6
 for~t:-7
 for~v:-5
 found:7
 found~ a:2
 found~ in:-5
 found~ it:5
 found~ on:1
 found~ out:4
 found~ the:6
 found~ this:-9
 fourth:-7
 fractionat:11
 fram:-9
 freeze:-5
 freezer:-1
 freezer~ for:-6
 freezer~ in:-2
 freezer~ paper:-4
 freeze~ the:-6
 free~ lol:-4
 fresh:-4
 friday:3
 friday~ and:-3
 fridge:-2
 fridge~ for:-5
 fridge~ overnight:-8
 fried:1
 friend':-3
 friend:-6
 friend~ says:-5
 friend~ who:5
 frighten:-6
 from~ ::-7
 from~ a:2
 from~ an:-4
 from~ another:-1
 from~ before:-1
 from~ christma:-2
 from~ graz:-3
 from~ it:-3
 from~ krakow:-3
 from~ last:-8
 from~ me:-4
 from~ memory:-1
 from~ my:-4
 from~ one:-7
 from~ portugal:1
 from~ sunday:8
 from~ that:1
 from~ the:1
 from~ there:7
 from~ this:-1
 from~ what:-6
 from~ work:2
 from~0:-3
 from~=:-2
 from~F:-5
 from~L:-6
 from~t:-9
 from~w:-9
 front:-1
 front~ of:-7
 froze:4
 frozen:-1
 frozen~ cubes:-2
 frozen~ in:1
 frozen~ to:-6
 frozen~w:-10
 froze~ it:2
 fruit:-4
 fry:4
 fryer:4
 full:6
 full~ bottle:-8
 full~ of:-2
 fume:-6
 fumes:-9
 fun:-10
 funnel:1
 funny:-6
 further:4
 further~ up:-8
 fwd:-2
 fwd~ ::-3
 f~0:-6
 g:-5
 garage:-9
 garden:-5
 gas:-5
 gate:-8
 gave:2
 gave~ me:5
 gave~ out:8
 gave~ the:-3
 gave~ up:4
 gave~ us:1
 gave~0:-8
 gel:-3
 gell:-2
 gel~ ::-3
 gel~ phase:-7
 generou:4
 gent:-7
 gentle:-2
 gentler:5
 german:-4
 get:-4
 gets:-6
 gets~ a:2
 gets~ the:-5
 gets~0:-4
 gett:-6
 get~ a:3
 get~ it:2
 get~ the:1
 get~ to:-9
 get~0:-6
 get~F:4
 ghana:-7
 gift:-9
 gifts:-5
 girl:-3
 girls:-7
 giv:-9
 give:-3
 given:-3
 gives:-9
 gives~ me:-4
 gives~ the:-6
 gives~%:4
 gives~0:-8
 give~ it:-6
 give~ me:1
 give~ or:3
 give~ the:-6
 give~ to:-2
 glad:-2
 glass:-2
 glass~ and:5
 glass~ of:6
 glossy:-3
 glov:-9
 glov~ and:-5
 glov~ on:-5
 glug:6
 glug~ of:4
 go:-2
 goat:5
 goats:-2
 goats~ are:3
 goes:-7
 goes~ away:-3
 goes~ grainy:-5
 goes~ in:-1
 goes~ into:-5
 goes~ off:-4
 goes~ on:-9
 goes~ up:-8
 goggl:-9
 goggl~ and:-3
 goggl~ on:-3
 going:4
 going~ by:-4
 going~ in:3
 gone:4
 gone~ after:-4
 gone~ by:-11
 gone~ from:-3
 gone~ up:-3
 gonna:2
 good:-2
 good~ ?:-3
 good~ bit:9
 good~ day:-4
 good~ enough:-1
 good~ even:-3
 good~ for:-6
 good~ glug:7
 good~ i:4
 good~ morn:-4
 good~ one:-6
 good~ or:-2
 good~ quantity:-3
 good~ to:-2
 good~F:-9
 good~t:-5
 goose:-3
 got:5
 got~ a:-4
 got~ in:-2
 got~ into:5
 got~ it:-3
 got~ my:-7
 got~ round:5
 got~ swapp:1
 got~ the:-5
 got~ to:4
 got~ too:2
 got~0:-6
 got~=:-4
 got~S:-3
 got~b:4
 got~w:2
 go~ ?:-2
 go~ at:4
 go~ by:-4
 go~ clear:1
 go~ down:1
 go~ for:1
 go~ in:-1
 go~ into:-8
 go~ on:-6
 go~ out:4
 go~ over:-5
 go~ rancid:-6
 go~ to:-3
 go~ up:3
 go~ with:7
 go~ wrong:-4
 grabb:6
 grade:4
 grain:-9
 grainy:-5
 gram:-3
 gramm:-8
 grams:-1
 grams~ ::-7
 grams~ and:-1
 grams~ cost:-2
 grams~ for:-2
 grams~ i:5
 grams~ of:2
 grams~ so:-10
 grams~A:-4
 grams~e:-4
 gram~ for:5
 gran:-1
 grand:-6
 grandad:6
 granddad:1
 granddaughter:-6
 grandma:1
 grandmother:-7
 grandmother~ had:-3
 grandmother~ in:-6
 grandpa:1
 grandson:6
 granny:-1
 grans:-4
 grat:1
 grate:-2
 grateful:-2
 grate~ the:-7
 gravy:1
 graz:-5
 greas:-3
 grease:-2
 great:-1
 great~ aunt:-4
 green:-2
 green~ and:5
 green~ one:-2
 greeting:-5
 greeting~ from:-5
 grey:-1
 grind:-4
 grind~ the:-2
 grocer:-5
 ground:-10
 group:2
 group~ ::-6
 group~ b:-6
 group~ of:-5
 grown:2
 guess:10
 guess~ the:-3
 guest:-9
 guild:-7
 g~ ::-6
 g~ cost:-2
 g~ oz:-3
 g~e:-8
 ha:2
 habit:2
 had:2
 hadnt:6
 had~ a:-7
 had~ already:9
 had~ been:4
 had~ come:3
 had~ cool:-6
 had~ dropp:-3
 had~ gone:8
 had~ in:-4
 had~ it:2
 had~ melt:3
 had~ no:-2
 had~ only:-2
 had~ set:2
 had~ some:-2
 had~ that:1
 had~ the:-3
 had~ to:-6
 had~0:-5
 had~<:-7
 had~>:-9
 had~F:2
 had~N:-4
 had~X:4
 had~b:8
 hair:-2
 half:5
 halfway:-5
 halfway~ through:4
 half~ a:4
 half~ and:-5
 half~ as:5
 half~ batch:6
 half~ is:4
 half~ of:2
 half~ size:3
 half~ the:-2
 half~A:-5
 half~F:-1
 half~I:-4
 half~W:-7
 hall:-7
 hallo:-4
 hallo~ my:-2
 halv:6
 halve:-1
 halv~ it:-6
 hammer:4
 hand:-3
 handful:1
 handful~ of:-6
 handle:-3
 handout:2
 handout~0:-6
 hands:-2
 hands~ ?:-3
 hands~ after:-2
 hands~ are:2
 handwrit:3
 handy:-8
 hand~ and:-1
 hand~ in:-4
 hand~ on:5
 hand~ out:-8
 hand~ soap:-4
 hand~ warm:-1
 hand~ with:-4
 hang:6
 hangs:-6
 happen:1
 happy:-4
 happy~ with:-8
 hard:-4
 harden:-7
 harder:-5
 harder~ bar:-3
 hardnes:-6
 hardware:-1
 hardware~ store:-8
 hard~ after:-2
 hard~ and:-4
 hard~ any:-8
 hard~ as:-7
 hard~ in:-2
 hard~ smell:-6
 hard~ to:5
 hard~W:-9
 harm:-7
 harsh:-9
 has:1
 hasnt:-6
 has~ a:-1
 has~ anyone:-7
 has~ become:-2
 has~ cool:-7
 has~ done:-5
 has~ dry:2
 has~ it:2
 has~ made:-3
 has~ moved:-7
 has~ no:-3
 has~ the:-1
 has~ to:-4
 has~=:-5
 has~F:7
 hate:-4
 hates:-2
 hav:-1
 havent:5
 have~ a:-9
 have~ asked:2
 have~ been:-1
 have~ done:-2
 have~ enough:2
 have~ for:1
 have~ gone:3
 have~ had:3
 have~ i:-7
 have~ it:1
 have~ made:-5
 have~ my:-7
 have~ never:2
 have~ no:-3
 have~ not:-9
 have~ put:5
 have~ the:3
 have~ to:-9
 have~ used:-5
 have~0:-5
 have~=:-6
 have~>:-4
 have~F:4
 hdpe:-7
 he:-2
 head:-2
 heap:9
 heap~ spoon:3
 hear:-1
 heard:1
 heart:-2
 heat:-12
 heats:-6
 heats~ up:-5
 heat~ and:-2
 heat~ i:-3
 heat~ off:-3
 heat~ the:-4
 heaven:-7
 heavy:3
 heavy~ ?:-6
 heavy~ or:-5
 hed:-3
 height:-6
 held:11
 held~ back:2
 held~ the:1
 hell:-4
 hello:-5
 hello~ from:-1
 hello~ i:-3
 help:6
 helps:-2
 hence:-4
 hence~ the:-10
 hens:-8
 her:-5
 here:-1
 heres:-7
 heres~ my:-2
 heres~ the:-5
 heres~ what:-7
 here~ ::-2
 here~ and:-4
 here~ are:-1
 here~ goes:-3
 here~ i:4
 here~ in:-5
 here~ is:1
 here~ it:-7
 here~ so:-3
 here~ we:-9
 hers:-10
 herself:-6
 hers~ and:-5
 hers~ is:-6
 hers~ with:-9
 her~ hands:-4
 her~ life:-6
 her~ own:-2
 her~ soap:-7
 her~A:-3
 her~F:-9
 hes:4
 hey:-5
 he~ also:-7
 he~ has:-4
 he~ is:-1
 he~ says:4
 he~ was:-7
 hi:-3
 hid:-9
 hide:-6
 high:-5
 him:-5
 himself:4
 his:-6
 hiss:2
 his~A:-7
 hit:2
 hit~ it:-7
 hit~ the:1
 hive:-8
 hives:-5
 hiya:1
 hi~ all:1
 hi~ everyone:-3
 hmm:4
 hob:-1
 hola:-2
 hold:-1
 holds:-4
 holds~ a:2
 holds~0:-4
 holds~v:-7
 holds~w:-8
 hold~ ?:-2
 hold~ back:5
 hold~ the:3
 hold~ up:-3
 hole:-4
 holes:-8
 holiday:-10
 home:1
 home~ and:4
 honest:6
 hood:-7
 hope:3
 hope~ it:-8
 hope~ the:-4
 hot:-7
 hotter:-8
 hotter~ than:-3
 hot~ ?:-1
 hot~ or:-4
 hour:-2
 hour~ and:-8
 hour~ then:-3
 hour~ until:-1
 hour~0:1
 house:3
 house~ smell:-3
 how:1
 hows:-6
 how~ do:1
 how~ does:-4
 how~ i:2
 how~ it:-1
 how~ long:-6
 how~ many:-6
 how~ much:6
 how~ my:-6
 how~ the:-9
 how~ to:-9
 how~ we:-5
 hp:-4
 hp~ in:-3
 hubby:2
 huge:5
 humidity:-2
 humidity~%:-4
 hurry:-3
 hurt:-2
 hurts:-4
 husband:2
 husband~ says:-5
 husband~ think:-9
 husband~ who:-7
 hydrogenat:1
 i'd:2
 i'd~ already:4
 i'd~ be:-7
 i'd~ been:1
 i'd~ do:-7
 i'd~ guess:7
 i'd~ have:-6
 i'd~ like:7
 i'd~ love:-5
 i'd~ never:-6
 i'd~ pour:-1
 i'd~ put:3
 i'd~ read:2
 i'd~ say:5
 i'd~ use:-6
 i'd~ weigh:2
 i:3
 idea:-2
 idea~ about:2
 idea~ which:6
 idk:5
 ie:5
 ie~=:-6
 if:-3
 if~ anyone:-2
 if~ i:2
 if~ im:3
 if~ it:3
 if~ its:-2
 if~ ive:-5
 if~ my:2
 if~ somebody:-6
 if~ that:5
 if~ thats:1
 if~ the:-4
 if~ ther:-5
 if~ this:2
 if~ ur:-6
 if~ you:-7
 if~ your:-8
 if~ youre:-7
 if~ yours:-4
 if~ youve:-6
 if~A:-5
 if~F:-6
 if~b:-5
 ignore:6
 ignore~ the:8
 ill:-1
 ill~ do:-5
 ilse:-1
 im:1
 impatient:-7
 im~ a:-3
 im~ after:7
 im~ aim:2
 im~ ask:-1
 im~ at:-10
 im~ dictat:-3
 im~ doing:-3
 im~ going:3
 im~ in:-9
 im~ mak:1
 im~ nervou:-7
 im~ new:-2
 im~ on:2
 im~ told:-3
 im~ using:5
 im~0:-5
 in:1
 inch:2
 incl:1
 includ:5
 includ~ the:8
 individual:-7
 individual~ mould:-7
 infus:5
 infus~ with:6
 ingredient:-4
 ingredient~ amount:-3
 ingredient~ g:-3
 ingredient~ grams:-4
 ingredient~ oz:-6
 ingredient~ weight:-3
 inside:-4
 insist:7
 instant:-2
 instead:4
 instead~ of:-1
 instruction:1
 insulate:-7
 internet:-3
 into:-1
 into~ a:-7
 into~ cubes:-5
 into~ it:1
 into~ mould:-2
 into~ oils:-3
 into~ one:-8
 into~ soap:-9
 into~ that:3
 into~ the:2
 into~ this:6
 into~0:-5
 into~=:-6
 into~W:-7
 into~b:1
 into~v:-3
 in~ ::2
 in~ ?:-2
 in~ a:-2
 in~ about:-1
 in~ after:6
 in~ all:-8
 in~ an:-6
 in~ and:-2
 in~ another:5
 in~ april:-7
 in~ as:2
 in~ at:3
 in~ august:2
 in~ batch:-4
 in~ before:8
 in~ between:-7
 in~ blend:-9
 in~ burst:-2
 in~ by:4
 in~ case:-8
 in~ class:2
 in~ cold:-8
 in~ cubes:-5
 in~ dag:-2
 in~ each:-5
 in~ every:-4
 in~ fact:6
 in~ first:-6
 in~ for:10
 in~ front:-8
 in~ g:-6
 in~ grams:-9
 in~ half:1
 in~ her:-10
 in~ hers:-9
 in~ his:-9
 in~ hot:-7
 in~ i:6
 in~ it:2
 in~ its:6
 in~ january:-6
 in~ july:-6
 in~ june:-8
 in~ last:-1
 in~ later:-4
 in~ law:-2
 in~ laws:-4
 in~ march:-8
 in~ may:4
 in~ maybe:5
 in~ mould:-5
 in~ my:-2
 in~ no:-5
 in~ november:-3
 in~ october:-8
 in~ ohio:-6
 in~ on:-5
 in~ once:9
 in~ one:3
 in~ or:3
 in~ order:-5
 in~ our:4
 in~ oz:-2
 in~ parts:-3
 in~ plus:-4
 in~ red:2
 in~ short:-5
 in~ slow:-2
 in~ small:-6
 in~ so:5
 in~ spr:-9
 in~ step:-6
 in~ steps:5
 in~ summer:-7
 in~ that:3
 in~ the:-2
 in~ there:5
 in~ this:2
 in~ time:1
 in~ tiny:7
 in~ to:-2
 in~ too:1
 in~ total:-5
 in~ truth:1
 in~ under:-3
 in~ week:-3
 in~ went:6
 in~ what:-8
 in~ when:-4
 in~ which:1
 in~ winter:-3
 in~ with:6
 in~ your:-1
 in~0:-7
 in~<:2
 in~=:-5
 in~>:-2
 in~F:-5
 in~I:-6
 in~L:2
 in~N:6
 in~W:-5
 in~b:-8
 in~e:4
 in~l:-1
 in~r:-5
 in~t:-6
 in~v:-9
 in~w:1
 ish:-6
 isnt:5
 isnt~ in:5
 isnt~ it:5
 issue:-1
 is~ a:1
 is~ about:-5
 is~ actual:5
 is~ all:-2
 is~ already:2
 is~ alway:-1
 is~ an:4
 is~ and:-6
 is~ as:-1
 is~ at:-7
 is~ below:-4
 is~ better:1
 is~ cheap:-7
 is~ clear:-3
 is~ correct:-7
 is~ dear:-1
 is~ done:1
 is~ dry:4
 is~ enough:-5
 is~ exact:-7
 is~ fine:-10
 is~ finish:2
 is~ for:-3
 is~ going:4
 is~ gone:-6
 is~ good:-7
 is~ grams:1
 is~ half:1
 is~ hard:-2
 is~ her:-3
 is~ hot:-5
 is~ how:-1
 is~ in:2
 is~ it:-3
 is~ just:-7
 is~ left:-2
 is~ like:-3
 is~ love:-3
 is~ meant:-2
 is~ mine:-8
 is~ my:-1
 is~ near:-8
 is~ no:-7
 is~ normal:-7
 is~ not:-4
 is~ noth:-2
 is~ now:3
 is~ off:2
 is~ oil:1
 is~ ok:-6
 is~ one:2
 is~ only:-9
 is~ our:-6
 is~ out:1
 is~ over:1
 is~ plenty:1
 is~ real:7
 is~ right:3
 is~ safe:-3
 is~ set:-1
 is~ she:-2
 is~ small:-3
 is~ sold:3
 is~ step:-3
 is~ still:1
 is~ technical:6
 is~ that:-4
 is~ the:-2
 is~ there:-3
 is~ thick:-4
 is~ this:-9
 is~ to:1
 is~ under:-2
 is~ weigh:-2
 is~ what:2
 is~ where:-9
 is~ whether:-7
 is~ why:-7
 is~ with:10
 is~ worth:-6
 is~ written:-2
 is~ wrong:-6
 is~0:4
 is~<:-3
 is~=:-5
 is~>:-6
 is~A:-2
 is~F:6
 is~L:4
 is~N:8
 is~T:-7
 is~b:3
 is~d:-2
 is~e:-7
 is~l:-1
 is~r:4
 is~t:-8
 is~v:-2
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
 itself~ is:-7
 itself~ off:-1
 its~ a:3
 its~ about:-5
 its~ all:-2
 its~ as:-6
 its~ been:-6
 its~ clear:-5
 its~ cook:6
 its~ date:-4
 its~ fine:-7
 its~ for:6
 its~ from:2
 its~ gone:2
 its~ hot:-4
 its~ in:-4
 its~ just:-7
 its~ made:3
 its~ meant:-1
 its~ my:1
 its~ not:-6
 its~ on:-6
 its~ only:-2
 its~ own:-4
 its~ place:5
 its~ ready:-5
 its~ sitt:-4
 its~ soap:-2
 its~ still:1
 its~ the:-3
 its~ time:-5
 its~ weight:-6
 its~ what:4
 its~0:7
 its~=:-5
 its~A:6
 its~F:2
 its~N:7
 its~b:-3
 its~d:-6
 its~l:3
 its~t:1
 it~ ::-7
 it~ ?:-3
 it~ a:2
 it~ about:-5
 it~ add:-5
 it~ after:-1
 it~ all:1
 it~ alone:-7
 it~ already:2
 it~ and:-2
 it~ another:3
 it~ anyway:-11
 it~ as:-4
 it~ at:-1
 it~ away:-6
 it~ back:1
 it~ bad:7
 it~ be:3
 it~ because:5
 it~ before:-5
 it~ behav:-4
 it~ bit:6
 it~ but:-6
 it~ by:-1
 it~ can:-6
 it~ check:-8
 it~ clear:-4
 it~ climb:-3
 it~ come:-5
 it~ comes:1
 it~ cook:-5
 it~ cooks:-3
 it~ cool:2
 it~ cools:-6
 it~ correct:-5
 it~ cost:-5
 it~ crack:-3
 it~ crumbl:-1
 it~ cut:-5
 it~ did:-4
 it~ didnt:2
 it~ do:-5
 it~ doesnt:1
 it~ down:3
 it~ dried:3
 it~ drop:-3
 it~ enough:-3
 it~ every:-4
 it~ exact:-10
 it~ fits:-6
 it~ flat:-5
 it~ foam:2
 it~ for:1
 it~ from:-1
 it~ gets:-4
 it~ go:-5
 it~ goes:1
 it~ going:-4
 it~ good:-6
 it~ got:1
 it~ had:-2
 it~ hard:-4
 it~ heats:-5
 it~ here:-4
 it~ hold:-1
 it~ holds:-4
 it~ if:-5
 it~ in:-2
 it~ into:-10
 it~ is:3
 it~ it:2
 it~ its:-6
 it~ just:-1
 it~ last:-1
 it~ lasts:-5
 it~ lather:-8
 it~ like:-5
 it~ look:6
 it~ looks:-6
 it~ makes:2
 it~ matter:1
 it~ may:-6
 it~ melts:-3
 it~ mild:-6
 it~ moved:6
 it~ needs:-4
 it~ never:-2
 it~ next:4
 it~ no:4
 it~ now:-8
 it~ off:4
 it~ ok:-5
 it~ on:-1
 it~ once:-7
 it~ or:-6
 it~ out:-1
 it~ outside:-5
 it~ over:-1
 it~ past:-8
 it~ plus:-4
 it~ real:5
 it~ right:-1
 it~ safe:1
 it~ said:8
 it~ sat:1
 it~ says:2
 it~ seiz:3
 it~ set:2
 it~ sets:-5
 it~ should:-4
 it~ since:-2
 it~ sit:1
 it~ smell:-2
 it~ so:-1
 it~ stand:-1
 it~ stay:4
 it~ stays:-1
 it~ still:-6
 it~ stink:-6
 it~ sweat:-7
 it~ takes:-5
 it~ the:-6
 it~ then:-1
 it~ there:-9
 it~ thicken:4
 it~ through:-6
 it~ times:-1
 it~ to:3
 it~ today:-3
 it~ too:2
 it~ took:-7
 it~ trac:-2
 it~ turn:-4
 it~ twice:2
 it~ under:-5
 it~ until:-4
 it~ up:1
 it~ wants:-5
 it~ was:2
 it~ weigh:-3
 it~ when:4
 it~ will:-7
 it~ with:-5
 it~ without:3
 it~ wont:-8
 it~ work:-2
 it~ would:-2
 it~ wouldnt:5
 it~ wrong:-5
 it~ zapp:2
 it~ zaps:-7
 it~0:2
 it~=:-4
 it~>:-1
 it~A:-3
 it~F:-2
 it~S:-4
 it~b:4
 it~t:-8
 it~w:-1
 ive:-1
 ive~ been:-7
 ive~ bought:4
 ive~ come:5
 ive~ done:-4
 ive~ gone:9
 ive~ got:-2
 ive~ had:-7
 ive~ just:2
 ive~ made:-4
 ive~ never:-7
 ive~ no:-1
 ive~ not:-5
 ive~ only:2
 ive~ read:-7
 ive~ seen:-7
 ive~ since:6
 ive~ tried:-5
 ive~ weigh:-4
 ivory:-7
 i~ ?:-7
 i~ actual:-1
 i~ add:-5
 i~ added:4
 i~ alway:-2
 i~ am:4
 i~ ask:1
 i~ began:-9
 i~ believe:2
 i~ blame:-6
 i~ bought:-8
 i~ bring:-5
 i~ buy:-4
 i~ call:-2
 i~ came:2
 i~ can:-10
 i~ cant:-3
 i~ carri:10
 i~ caught:2
 i~ chang:-7
 i~ check:-10
 i~ chuck:7
 i~ clean:1
 i~ commit:-2
 i~ copi:3
 i~ copy:-6
 i~ could:1
 i~ count:-3
 i~ did:4
 i~ didnt:1
 i~ dilut:-7
 i~ dilute:-5
 i~ dissolve:2
 i~ do:-7
 i~ dont:2
 i~ doubl:6
 i~ drain:9
 i~ dropp:1
 i~ empti:9
 i~ ended:-4
 i~ ever:-7
 i~ fill:9
 i~ final:-9
 i~ finish:-1
 i~ first:-5
 i~ fish:12
 i~ fold:-3
 i~ follow:2
 i~ forgot:1
 i~ found:-2
 i~ froze:-3
 i~ gave:-3
 i~ get:-4
 i~ give:-4
 i~ go:2
 i~ got:-1
 i~ guess:11
 i~ had:-2
 i~ hadnt:4
 i~ halv:4
 i~ hand:-4
 i~ hate:-3
 i~ have:1
 i~ havent:1
 i~ held:4
 i~ hit:-9
 i~ honest:9
 i~ hope:-3
 i~ in:-3
 i~ just:3
 i~ keep:-3
 i~ kept:3
 i~ knock:6
 i~ know:-4
 i~ learn:-6
 i~ leave:3
 i~ left:9
 i~ let:4
 i~ like:-5
 i~ look:1
 i~ lost:6
 i~ made:-2
 i~ make:-8
 i~ may:2
 i~ mean:-2
 i~ meant:-2
 i~ measur:-6
 i~ mess:-6
 i~ might:-1
 i~ misread:2
 i~ mix:-7
 i~ mixed:3
 i~ must:1
 i~ near:-5
 i~ need:1
 i~ never:4
 i~ notic:9
 i~ ok:1
 i~ once:-11
 i~ only:2
 i~ open:-2
 i~ overdo:-4
 i~ own:2
 i~ paid:-5
 i~ panick:-2
 i~ plan:-4
 i~ plann:-5
 i~ pour:1
 i~ press:-7
 i~ print:-5
 i~ promis:2
 i~ put:3
 i~ ran:-3
 i~ read:3
 i~ real:-4
 i~ realis:3
 i~ reckon:-2
 i~ remember:-2
 i~ render:-2
 i~ replac:4
 i~ right:-7
 i~ rins:5
 i~ round:7
 i~ run:-7
 i~ said:-9
 i~ saw:5
 i~ say:-1
 i~ scal:4
 i~ scrap:8
 i~ see:6
 i~ sell:-4
 i~ set:-2
 i~ settl:-6
 i~ shook:4
 i~ short:-7
 i~ should:2
 i~ siev:-1
 i~ skipp:5
 i~ soap:-3
 i~ split:-1
 i~ sprinkl:-5
 i~ still:-4
 i~ stir:-6
 i~ stirr:5
 i~ stopp:7
 i~ strain:-1
 i~ suppose:-1
 i~ swapp:7
 i~ swear:3
 i~ take:-6
 i~ teach:-5
 i~ tell:-7
 i~ test:-2
 i~ think:2
 i~ thought:-3
 i~ threw:3
 i~ tip:1
 i~ told:-1
 i~ took:2
 i~ topp:-1
 i~ translate:-4
 i~ trust:-4
 i~ turn:-5
 i~ type:2
 i~ typed:5
 i~ use:-4
 i~ usual:3
 i~ wait:-5
 i~ want:2
 i~ warm:-6
 i~ was:-6
 i~ wash:-3
 i~ wasnt:3
 i~ weigh:2
 i~ went:4
 i~ will:-7
 i~ wiped:-8
 i~ work:-6
 i~ would:1
 i~ wouldnt:-9
 i~ write:-11
 i~ wrote:5
 i~K:-9
 jam:1
 jam~ jar:2
 january:-10
 january~ and:-4
 jar:2
 jars:-7
 jars~ of:-7
 jar~ and:5
 jar~ of:7
 jar~ so:-3
 jelly:-5
 job:3
 join:2
 join~ the:5
 judge:2
 jug's:5
 jug:3
 jugs:2
 jug~ ::1
 jug~ and:3
 jug~ from:3
 jug~ in:-6
 jug~ is:-10
 jug~ of:4
 jug~ on:-7
 jug~ so:6
 jug~ to:7
 jug~ was:-4
 jug~ with:1
 jug~w:1
 july:-4
 jump:5
 jumps:3
 jumps~ in:8
 june:-12
 just~ a:-3
 just~ as:-2
 just~ for:-9
 just~ the:2
 just~ want:-10
 just~ what:-7
 just~F:-4
 k:2
 keep:-8
 keeps:-8
 keeps~ it:-6
 keeps~ the:-2
 keep~ a:-5
 keep~ back:-1
 keep~ in:-6
 keep~ it:-8
 keep~ my:-9
 keep~0:-5
 keep~<:2
 keep~t:-3
 kept:2
 kept~ a:-1
 kept~ back:1
 kept~ in:-3
 kept~0:2
 kettle:6
 key:-5
 kg:3
 kg~ cost:-2
 kid:9
 kidd:-8
 kids:-2
 kill:-6
 kilo:3
 kilo~ in:-5
 kilo~ is:1
 kilo~ of:-5
 kind:-1
 kinda:2
 kind~ check:-7
 kind~ of:-2
 kind~ regard:-4
 kind~ with:4
 kiss:-4
 kitchen~ and:4
 kitchen~ bar:-7
 kitchen~ is:-4
 kitchen~ scale:5
 kitchen~ so:-4
 kitchen~ soap:-1
 kitchen~ was:-5
 knew:-5
 knife:-8
 knob:8
 knob~ of:8
 knock:3
 knock~ a:-2
 knock~ the:3
 know:3
 knows:3
 knows~ how:5
 know~ ::-6
 know~ but:-2
 know~ how:1
 know~ i:-6
 know~ if:2
 know~ is:-7
 know~ it:2
 know~ its:-4
 know~ that:3
 know~ what:-5
 know~ whether:-5
 know~ which:3
 krakow:-2
 k~0:-10
 l:-6
 la:-5
 lab:-4
 label:1
 labell:-3
 label~ ::-6
 label~ on:-7
 label~ says:5
 label~0:-6
 ladi:-3
 ladl:11
 ladle:6
 ladle~ of:4
 lads:-4
 lady:-3
 lady~ at:-5
 lady~ in:-5
 lady~ on:-5
 land:1
 last:-5
 lasts:-7
 last~ autumn:-4
 last~ batch:-8
 last~ bit:6
 last~ lot:-7
 last~ minute:6
 last~ month:3
 last~ night:-6
 last~ of:-6
 last~ one:-10
 last~ time:-7
 last~ week:1
 last~ weeks:3
 last~ winter:-5
 last~ year:-6
 last~ years:-4
 last~0:3
 last~F:-7
 later:-3
 later~ on:-5
 late~ mother:-7
 lather:-6
 lather~ is:-3
 lather~ like:-7
 lather~ was:-4
 laugh:1
 laugh~ at:-4
 laundry:1
 laundry~ bar:-8
 laundry~ bars:-3
 laundry~ soap:-4
 law:-3
 laws:-4
 law~ who:-5
 layer:1
 la~A:-4
 lb:1
 lb~ oz:-6
 leaflet~ from:-6
 leak:-3
 learn:-8
 learn~ from:-2
 learn~ that:2
 least:-3
 least~t:-1
 leav:-5
 leave:-4
 leave~ it:-1
 leave~ out:-7
 leave~ the:-3
 leave~ them:-2
 leave~t:-1
 leav~ a:-5
 leav~ the:-7
 leeds:4
 left:1
 leftover:1
 leftover~ soap:-6
 leftover~F:-2
 left~ and:2
 left~ for:-10
 left~ from:7
 left~ it:1
 left~ of:-7
 left~ on:1
 left~ out:-1
 left~ over:-5
 left~ the:1
 left~ to:4
 length:-3
 lent:-1
 less:5
 lesson:-8
 less~ of:5
 less~ than:-1
 less~F:-2
 less~W:-2
 let:-2
 lets:1
 letter:4
 let~ cool:-1
 let~ it:-2
 let~ me:-10
 let~ the:-2
 let~ them:3
 let~ us:-7
 let~ your:-7
 level:-1
 library:-5
 library~ book:-4
 lick:1
 lid:-2
 lidd:-3
 lids:-4
 lid~ and:-7
 lid~ of:-8
 lid~ off:3
 lid~ on:-4
 lie:-8
 lift:3
 lift~ the:3
 lighter:-5
 light~ on:3
 light~ trace:-1
 like:-3
 liked:-5
 likes:-5
 likes~ it:3
 likewise:2
 like~ a:-3
 like~ alway:-8
 like~ an:-6
 like~ candle:-5
 like~ cheese:-6
 like~ cold:-5
 like~ custard:-5
 like~ i:-6
 like~ in:1
 like~ mad:2
 like~ mash:-4
 like~ me:-4
 like~ my:4
 like~ noth:-2
 like~ paper:3
 like~ porridge:4
 like~ sandpaper:-4
 like~ somebody:-2
 like~ someone:-1
 like~ soup:-7
 like~ stone:-6
 like~ that:-6
 like~ the:-6
 like~ thin:-4
 like~ to:-6
 like~ wet:6
 like~ you:-2
 like~%:2
 like~0:5
 like~F:-6
 like~L:-7
 like~S:-4
 like~U:-7
 like~X:-3
 like~t:6
 like~w:6
 limit:-6
 line:7
 lined:-7
 lined~ w:-4
 lined~ with:-2
 linen:-4
 lines:-1
 line~ ::6
 line~ a:-4
 line~ the:-4
 lino:-5
 lip:-5
 lip~ balm:-5
 liquid:1
 liquid~ ::-1
 liquid~ and:-2
 liquid~ hand:-3
 liquid~ soap:-1
 liquor:5
 list:3
 list~ for:-8
 list~ i:3
 list~ is:-1
 litre:3
 little:2
 little~ ?:-6
 little~ of:-1
 little~A:3
 little~F:-7
 little~W:3
 live:-6
 lived:-8
 lives:-6
 lives~ in:-5
 loaf:-3
 loaf~ ::-4
 loaf~ mold:-2
 loaf~ mould:-3
 loaf~ tin:-3
 loav:-4
 local:-5
 lock:-7
 loft:-4
 log~ ::-2
 lol:-2
 long:-3
 longer:2
 longer~ than:-5
 long~ as:-6
 long~ sleev:-4
 long~ story:7
 long~ time:-4
 look:3
 looks:-10
 looks~ like:-4
 looks~ ok:-1
 look~ ?:-4
 look~ a:1
 look~ at:-3
 look~ before:-9
 look~ for:1
 look~ it:-7
 look~ like:1
 look~ ok:-3
 look~ over:-6
 look~ right:-4
 loosen:8
 loosen~ it:6
 lose:-3
 loss:-2
 lost:2
 lost~ a:2
 lost~ the:-6
 lot:-1
 lotion:8
 lots:-9
 lots~ of:-6
 lot~ ?:-1
 lot~ of:2
 lot~ to:-3
 lot~0:4
 loud:-8
 love:-7
 loves:3
 love~ a:1
 love~ and:-2
 love~ but:-6
 love~ it:-5
 love~ to:-3
 low:-1
 lower:7
 lowest:-4
 lowest~ flame:-5
 low~ and:-4
 low~ for:4
 low~ heat:-1
 low~ in:1
 low~t:-3
 luck:3
 lucki:-6
 lucky:-5
 lukewarm:-7
 lump:5
 lumps:-1
 lumpy:6
 lump~ of:-2
 lunch:-6
 lurker:-4
 luxury:-3
 lye's:5
 lye:2
 lyes:-6
 lyes~ together:-5
 lying:5
 lyon:-3
 l~0:-4
 m:-6
 machine:-6
 made:2
 made~ ::-6
 made~ a:3
 made~ for:-9
 made~ from:-2
 made~ hers:-7
 made~ in:-8
 made~ it:2
 made~ my:-2
 made~ of:-6
 made~ on:-5
 made~ soap:-2
 made~ the:7
 made~ this:-4
 made~ up:3
 made~ with:-7
 made~0:8
 made~t:-1
 magazine:-5
 mak:8
 maker:-5
 maker~ ::-4
 makes:-5
 makes~ a:-8
 makes~ it:-3
 makes~ no:-6
 makes~ sense:-2
 makes~ the:-5
 makes~ up:8
 makes~0:-5
 makes~T:-9
 makes~b:-6
 make~ a:-8
 make~ exact:-5
 make~ for:-6
 make~ it:7
 make~ sense:-2
 make~ soap:-5
 make~ the:-9
 make~ this:-4
 make~ up:-2
 mak~ it:7
 mak~ the:-5
 mak~ this:-2
 mama:-7
 man:-5
 march:-10
 margin:-2
 marit:-5
 mark:5
 market:-6
 market~ told:-4
 marks:4
 marta:5
 mash:-4
 mash~ potato:-3
 mass:-7
 match:-1
 material:-7
 maths:4
 matter:3
 matter~ to:3
 may:1
 maybe:8
 maybe~ a:7
 maybe~0:5
 maybe~<:-1
 maybe~t:-7
 maybe~w:5
 may~ have:6
 may~ i:4
 mean:-3
 meant~ to:-2
 meanwhile:3
 mean~ the:3
 mean~ to:-6
 measur:3
 measure:1
 measur~ cup:3
 measur~ it:1
 measur~ jug:8
 measur~ the:-2
 mechanic:3
 medium:-6
 meets:-2
 meine:-7
 melt:-3
 melts:-8
 melts~ at:-4
 melt~ and:3
 melt~ anyth:-1
 melt~ at:-4
 melt~ by:-8
 melt~ everyth:6
 melt~ first:-7
 melt~ i:-8
 melt~ in:7
 melt~ it:2
 melt~ on:-7
 melt~ the:-6
 melt~ with:3
 melt~=:-2
 melt~F:-1
 member:1
 memory:4
 men:-7
 mention:1
 merci:-4
 mess:-7
 mess~ up:-4
 met:-1
 method:-4
 method~ ::-4
 metric:-6
 me~ ::-1
 me~ ?:3
 me~ about:-5
 me~ as:3
 me~ at:2
 me~ before:-5
 me~ but:-2
 me~ for:-1
 me~ how:-8
 me~ i:-3
 me~ if:-5
 me~ in:-3
 me~ it:-6
 me~ its:-8
 me~ on:-1
 me~ please:-5
 me~ that:-3
 me~ the:1
 me~ this:-4
 me~ to:-7
 me~ what:2
 me~ where:4
 me~ whether:-2
 me~ with:2
 me~0:-11
 me~>:-5
 me~t:-8
 microwave:1
 middle:-5
 middle~ of:3
 might:-2
 might~ have:5
 mild:1
 milder:-1
 mild~ ?:-5
 milk:-7
 milk~ carton:-7
 mill:-6
 min:7
 mind:4
 mind~ the:-1
 mine:-3
 mine~ ::2
 mine~ had:-4
 mine~ has:-3
 mine~ in:-6
 mine~ is:6
 mine~ took:-6
 mine~ was:2
 mine~ with:5
 mini:1
 minimum:1
 minus:6
 minus~ the:7
 minus~ whatever:6
 minute:-3
 minute~0:-7
 min~ .:6
 misread:10
 misread~ my:3
 miss:3
 miss~ the:6
 mistake:4
 mistake~ and:-7
 mix:4
 mixed:3
 mixed~ at:-7
 mixed~ in:6
 mixed~ it:3
 mixed~ the:2
 mixed~ up:1
 mixed~=:-7
 mixer:-4
 mix~ at:-2
 mix~ the:4
 mix~A:-4
 mk:-4
 ml:10
 mm:-8
 mode:4
 modern:-4
 mold:2
 molds:3
 mold~ holds:-4
 mold~ is:1
 moment:-8
 moms:-2
 mon:4
 money:3
 month:-3
 month~ i:-2
 month~0:-6
 moon:-4
 mopp:4
 mopp~ up:4
 more:3
 more~ and:-6
 more~ fat:-7
 more~ like:8
 more~ of:3
 more~ or:-4
 more~ than:-2
 more~A:4
 more~F:3
 morn:-1
 morn~ and:2
 morn~ from:-4
 most:4
 most~ of:10
 mother:-1
 mother~ and:-7
 mother~ did:4
 mould:-1
 mouldy:5
 mould~ ::2
 mould~ a:-5
 mould~ and:-1
 mould~ bang:-4
 mould~ by:-2
 mould~ for:-3
 mould~ holds:-3
 mould~ in:-5
 mould~ is:1
 mould~ of:-8
 mould~ on:-5
 mould~ so:-7
 mould~ the:-5
 mould~ was:-5
 mould~ with:-6
 mould~0:-1
 mould~t:-4
 mould~v:-4
 mov:1
 move:-5
 moved:2
 moved~ to:2
 moves:-2
 mrs:3
 much:-1
 much~ ?:-5
 much~ and:5
 much~ as:-6
 much~ fat:-3
 much~ for:-10
 much~ of:-4
 much~ superfat:-5
 much~A:-3
 much~F:-3
 much~W:4
 muffin:-6
 mug:6
 multip:5
 mum:-1
 mums:-1
 mum~ says:-6
 museum:-7
 mush:-4
 must:-5
 must~ be:-8
 must~ have:4
 mutton:1
 myself:-4
 my~ arm:-5
 my~ aunt:-3
 my~ aunts:2
 my~ babcia:-5
 my~ bars:-4
 my~ bathroom:7
 my~ book:3
 my~ boss:-1
 my~ boyfriend:-2
 my~ brother':4
 my~ brother:-3
 my~ colleague:-6
 my~ country:5
 my~ cousin:-1
 my~ dad:-8
 my~ dads:2
 my~ daughter':-7
 my~ daughter:2
 my~ earlier:4
 my~ elbow:-4
 my~ english:-3
 my~ everyday:-3
 my~ ex:-5
 my~ father:-3
 my~ first:-2
 my~ flatmate:-4
 my~ friend:2
 my~ glass:-1
 my~ good:-6
 my~ granddaughter:-6
 my~ grandmother:-10
 my~ grandson:5
 my~ great:-2
 my~ hands:-10
 my~ handwrit:-8
 my~ husband:-5
 my~ kilo:-2
 my~ kitchen:2
 my~ last:-10
 my~ laundry:-3
 my~ little:3
 my~ loaf:-3
 my~ mate:-8
 my~ mind:6
 my~ mold:-7
 my~ mother:-1
 my~ mould:1
 my~ mums:-4
 my~ nan:-7
 my~ nans:-3
 my~ neighbor:-7
 my~ neighbour:-3
 my~ nephew:-8
 my~ niece:-1
 my~ notebook:7
 my~ notes:-2
 my~ number:-2
 my~ oils:-3
 my~ own:2
 my~ partner:-1
 my~ paste:-5
 my~ phone:-4
 my~ plan:-3
 my~ pot:1
 my~ previou:1
 my~ question:-3
 my~ recipe:-2
 my~ scal:-5
 my~ scale:5
 my~ second:-2
 my~ sheet:-3
 my~ sister':-1
 my~ sister:-8
 my~ skin:1
 my~ slow:-4
 my~ soap:-5
 my~ son:-2
 my~ spreadsheet:-4
 my~ sums:1
 my~ superfat:-2
 my~ table:-7
 my~ teacher:-6
 my~ third:-2
 my~ thumb:-1
 my~ tongue:-2
 my~ uncle:-3
 my~ usual:-9
 my~ very:-7
 my~ whole:-4
 my~ wife:1
 my~ wifes:-3
 my~%:-2
 my~0:-8
 my~A:1
 my~F:-4
 my~K:-7
 my~L:-9
 my~S:-4
 my~W:5
 my~b:1
 my~l:-7
 my~t:3
 my~w:4
 m~A:-8
 m~F:-4
 n:-1
 nah:-3
 namaste:-4
 name:-11
 names:-5
 name~ ::-3
 nan:-9
 nans:-4
 natural:-5
 nb:1
 near:-5
 nearer:6
 nearer~0:4
 near~ enough:4
 near~ it:-1
 near~ the:-2
 near~%:-10
 near~0:1
 near~d:-1
 near~t:4
 need:-5
 needs:-6
 needs~ a:-6
 needs~ the:-4
 need~ ::-2
 need~ a:-4
 need~ it:3
 need~ more:-6
 need~ the:-6
 need~ to:3
 negative:4
 neighbor:-5
 neighbour:-3
 neither:4
 neither~ of:-1
 nephew:-1
 nerv:-8
 nervou:-3
 net:1
 never:-1
 never~ above:-6
 never~ added:7
 never~ again:-8
 never~ bother:-7
 never~ check:-8
 never~ did:-6
 never~ fail:-4
 never~ fails:-3
 never~ go:-10
 never~ got:8
 never~ had:-1
 never~ happen:6
 never~ in:-5
 never~ let:-5
 never~ made:8
 never~ measur:-2
 never~ mind:-6
 never~ once:-2
 never~ set:5
 never~ the:-7
 never~ weigh:-1
 never~ went:-10
 new:-2
 news:-5
 newsletter:2
 newspaper:-8
 new~ bottle:-4
 new~ here:-2
 new~ one:4
 new~ scale:-4
 new~ to:-4
 new~ tub:-8
 new~>:-5
 next:-7
 next~ day:-1
 next~ door:-5
 next~ month:-9
 next~ morn:2
 next~ one:-8
 next~ time:-9
 next~ to:7
 next~ year:-5
 nice:-2
 nicer:-6
 niece:3
 night:-5
 night~ and:-4
 night~ before:-6
 nil:2
 no:-1
 nobody:-2
 nobody~ answer:-2
 nobody~ had:4
 nobody~ has:1
 nobody~ will:-1
 none:5
 none~ at:-7
 none~ in:-10
 none~ the:-3
 nonna:-9
 noon:-5
 normal:-7
 normal~ ?:-5
 normal~ one:-4
 north:-3
 nose:-9
 not:1
 note:6
 notebook:-2
 notebook~ ::-5
 notebook~ p:-3
 notebook~ says:3
 notebook~ the:-4
 notes:-3
 notes~ ::1
 notes~ app:-6
 notes~ from:-6
 note~ ::-2
 noth:-6
 noth~ and:-3
 noth~ at:-6
 noth~ but:-5
 noth~ else:-1
 noth~ in:-4
 noth~ only:-4
 notic:8
 notice:1
 notic~ the:3
 notic~ when:6
 not~ ?:-3
 not~ a:-8
 not~ at:-8
 not~ bad:-5
 not~ be:-9
 not~ certain:5
 not~ fluid:-7
 not~ for:-5
 not~ going:3
 not~ like:-8
 not~ more:-7
 not~ on:7
 not~ so:-9
 not~ sure:4
 not~ that:-6
 not~ the:-3
 not~ to:-8
 not~ too:-5
 not~ touch:-4
 not~ use:-3
 not~ what:-2
 not~0:-7
 not~A:-3
 not~F:8
 not~b:5
 not~e:8
 nought:-2
 november:-3
 now:4
 nowhere:-6
 now~ ::-5
 now~ ?:1
 now~ and:-5
 now~ i:-1
 now~ in:1
 now~ it:1
 now~ its:6
 now~ my:3
 now~ on:4
 now~ so:-11
 now~ the:3
 now~F:1
 no~ ?:-2
 no~ ash:-4
 no~ difference:-9
 no~ gel:-5
 no~ good:-3
 no~ harm:-7
 no~ i:-7
 no~ idea:1
 no~ it:3
 no~ longer:7
 no~ need:-7
 no~ one:1
 no~ other:-7
 no~ reason:-6
 no~ scale:1
 no~ smell:-2
 no~ sorry:1
 no~ superfat:-6
 no~ time:-4
 no~ wait:3
 no~ white:-3
 no~ zap:-5
 no~0:2
 no~F:9
 no~I:6
 no~S:-9
 no~W:2
 no~X:-11
 nr:-2
 nr~0:-2
 number:-5
 number~ ?:-4
 number~ and:2
 number~ are:1
 number~ hold:-1
 number~ i:-5
 number~ is:-5
 number~0:-10
 nurse:-4
 n~ it:-3
 n~=:-4
 n~F:2
 o'clock:-1
 o:-5
 oat:-7
 oat~X:-3
 obvious:-7
 obvs:-6
 october:-1
 odd:-6
 odds:-8
 of:2
 off:4
 offcut:-4
 offer:-5
 office:-8
 off~ ?:-1
 off~ and:2
 off~ at:-9
 off~ by:-1
 off~ for:5
 off~ i:-6
 off~ in:4
 off~ it:1
 off~ my:-3
 off~ the:3
 off~ what:8
 off~ with:1
 off~0:-5
 off~l:2
 off~w:-9
 often:-8
 of~ about:-5
 of~ all:-6
 of~ ammonia:-6
 of~ an:1
 of~ anyth:-8
 of~ batter:-8
 of~ clean:-4
 of~ cold:2
 of~ course:-2
 of~ doors:-7
 of~ each:8
 of~ everyth:4
 of~ extra:-1
 of~ eyes:-1
 of~ fat:3
 of~ fats:1
 of~ her:1
 of~ it:2
 of~ its:-1
 of~ last:4
 of~ me:-4
 of~ melt:4
 of~ mine:-4
 of~ my:-3
 of~ noth:-4
 of~ oil:1
 of~ oils:-3
 of~ old:5
 of~ one:2
 of~ our:-4
 of~ paste:-6
 of~ roast:-1
 of~ rough:-2
 of~ soap:2
 of~ solution:-5
 of~ some:2
 of~ stirr:-6
 of~ sunday:-7
 of~ that:7
 of~ the:3
 of~ them:1
 of~ these:-5
 of~ warm:-3
 of~ wet:-5
 of~ what:-3
 of~ which:-2
 of~ you:-4
 of~ your:-5
 of~%:2
 of~0:-7
 of~=:3
 of~>:-7
 of~A:1
 of~B:3
 of~C:4
 of~F:-4
 of~I:-4
 of~K:4
 of~L:7
 of~M:-6
 of~N:9
 of~S:1
 of~U:2
 of~W:3
 of~X:-4
 of~b:-1
 of~t:-1
 of~v:-8
 of~w:-8
 oh:1
 ohio:-6
 oh~ and:2
 oil:4
 oils:-1
 oils~ ::-1
 oils~ ?:-1
 oils~ and:-4
 oils~ are:-3
 oils~ at:-5
 oils~ because:-5
 oils~ but:-3
 oils~ come:-4
 oils~ g:-4
 oils~ i:-5
 oils~ in:-2
 oils~ to:-2
 oils~ were:1
 oils~ which:-6
 oils~=:-2
 oils~>:-2
 oils~T:-4
 oils~d:-1
 oily:6
 oil~ ?:-8
 oil~ and:-2
 oil~ at:7
 oil~ g:-4
 oil~ grams:-5
 oil~ in:-4
 oil~ is:1
 oil~ on:-3
 oil~ to:3
 oil~ was:-1
 oil~ weight:-6
 oil~l:3
 ok:-2
 okay:-4
 okay~ ?:-4
 okay~ for:-5
 okay~ so:-2
 okay~ to:-3
 ok~ ?:-1
 ok~ at:1
 ok~ before:-3
 ok~ for:-5
 ok~ like:-4
 ok~ or:-2
 ok~ so:2
 ok~ to:-5
 ok~ with:-5
 old:2
 oldest:-6
 old~ and:2
 old~ blanket:-2
 old~ days:-3
 old~ notebook:-8
 old~ one:-4
 old~ pillowcase:-3
 old~ recipe:-6
 old~ sheet:1
 old~ soap:-6
 old~ tub:2
 old~A:3
 old~F:1
 olej:-3
 olej~F:-3
 oma:-5
 omg:-5
 on:-1
 once:-5
 once~ a:1
 once~ and:1
 once~ i:1
 once~ it:3
 once~ its:-3
 once~ the:-1
 one:-3
 ones:-6
 ones~ are:-8
 one~ ::-5
 one~ ?:-3
 one~ after:-7
 one~ and:5
 one~ at:4
 one~ bar:-6
 one~ batch:-6
 one~ bottle:-2
 one~ bowl:-8
 one~ can:-5
 one~ corner:-2
 one~ does:-3
 one~ for:-4
 one~ from:-8
 one~ go:3
 one~ had:-6
 one~ has:-2
 one~ in:1
 one~ into:-5
 one~ is:-1
 one~ jug:-2
 one~ last:-7
 one~ loaf:1
 one~ of:4
 one~ on:-5
 one~ pan:-7
 one~ pot:-5
 one~ since:6
 one~ sorry:-5
 one~ spoon:6
 one~ thing:4
 one~ time:-5
 one~ to:-7
 one~ weigh:-9
 one~ went:-4
 one~ who:-6
 one~ with:-3
 one~ without:-4
 one~0:1
 one~F:-1
 one~t:-1
 one~w:-8
 onion:3
 only:3
 only~ a:1
 only~ about:7
 only~ after:-9
 only~ does:2
 only~ for:3
 only~ gave:6
 only~ got:-8
 only~ had:9
 only~ have:-3
 only~ if:-2
 only~ notic:7
 only~ one:-3
 only~ put:2
 only~ so:-3
 only~ the:1
 only~ then:-9
 only~ there:-3
 only~ want:-13
 only~ when:2
 only~ whether:-6
 only~0:11
 only~<:1
 only~=:-9
 only~F:-9
 only~l:-1
 onto~ the:2
 on~ ::-3
 on~ ?:-3
 on~ a:-7
 on~ and:-8
 on~ before:-5
 on~ day:3
 on~ friday:1
 on~ glov:-3
 on~ her:-2
 on~ here:-8
 on~ high:-5
 on~ i:5
 on~ it:-5
 on~ its:-2
 on~ low:-5
 on~ me:-5
 on~ monday:-8
 on~ offer:-5
 on~ one:-4
 on~ our:2
 on~ page:-3
 on~ paper:4
 on~ purpose:-1
 on~ saturday:-2
 on~ slow:-1
 on~ sunday:-1
 on~ that:-2
 on~ the:1
 on~ them:-6
 on~ this:6
 on~ thursday:1
 on~ to:-5
 on~ tue:-2
 on~ tuesday:-4
 on~ we:-8
 on~ with:7
 on~ your:-4
 on~0:-9
 on~=:-5
 on~>:-7
 on~A:2
 on~F:5
 on~t:-4
 oops:6
 open:2
 opens:4
 open~ a:-10
 open~ all:8
 open~ since:6
 open~ the:-3
 open~ window:-5
 open~0:-1
 operator:-5
 operator~ ::-4
 opinion:-8
 opinion~ on:-5
 optional:4
 or:-3
 order:-8
 order~ of:-3
 ordinary:3
 original:-4
 or~ a:1
 or~ am:-7
 or~ did:-8
 or~ do:-6
 or~ does:-6
 or~ is:-7
 or~ it:-7
 or~ just:-5
 or~ less:-4
 or~ more:-8
 or~ nah:-3
 or~ no:-6
 or~ not:-2
 or~ should:-4
 or~ so:-1
 or~ take:3
 or~ the:-3
 or~ thereabout:2
 or~ too:-3
 or~ was:1
 or~ will:-4
 or~0:1
 or~A:-6
 or~N:-6
 other:-3
 otherwise:-8
 otherwise~ it:-7
 other~ and:-2
 other~ way:-6
 other~0:3
 other~W:-7
 ought:-6
 ought~ to:-6
 ounc:4
 ounce:-3
 ounc~ by:-7
 ounc~ for:6
 our:-1
 ours:-8
 ours~ is:-7
 our~ club:2
 our~ course:-3
 our~ fami:-1
 our~ group:-10
 our~ own:-1
 our~ school:-6
 our~ teacher:-7
 our~ town:-2
 our~ village:5
 out:2
 outdoor:-6
 outside:-8
 outside~ and:-1
 outside~ of:-1
 outside~ on:-7
 out~ ::-9
 out~ a:-1
 out~ after:-1
 out~ again:3
 out~ and:4
 out~ at:3
 out~ by:4
 out~ for:3
 out~ from:-4
 out~ i:-7
 out~ in:-2
 out~ is:-8
 out~ like:-8
 out~ of:-1
 out~ on:1
 out~ right:-4
 out~ the:-3
 out~ to:9
 out~ what:2
 out~ with:3
 out~0:4
 out~=:-2
 out~>:-9
 out~A:-3
 out~N:1
 oval:-4
 oven:-8
 oven~ at:-4
 over:1
 overdo:-4
 overfat:2
 overheat:-6
 overnight~ at:-3
 over~ ?:-6
 over~ a:1
 over~ and:3
 over~ before:-5
 over~ for:6
 over~ from:2
 over~ half:-6
 over~ in:8
 over~ it:4
 over~ that:2
 over~ the:-4
 over~ this:2
 over~ to:1
 over~%:-9
 over~d:-3
 over~t:-6
 own:2
 own~ ::-5
 own~ a:-5
 own~ hives:1
 own~ line:-4
 own~0:-4
 own~F:2
 oyl:-4
 oyl~=:-6
 oz:1
 oz~ g:-3
 p:-6
 pack:1
 packet:6
 packet~ of:-2
 packs:-1
 packs~ of:-3
 paddle:-6
 page:-2
 page~ ::-6
 page~ for:-5
 page~ is:-4
 page~ sorry:-5
 page~0:-2
 paid~ for:7
 paid~0:-8
 pail:-9
 paint:5
 pair:2
 pairs:-6
 pair~ of:-1
 pal:-6
 pale:-11
 pan:2
 panic:-8
 panick:2
 pantry:-6
 paper~ and:-6
 paper~ cup:5
 paper~0:-4
 paper~t:-4
 parcel:6
 parent:-3
 parish:-7
 participant:2
 partner:-1
 parts:-1
 part~ ?:3
 part~ of:2
 part~0:-10
 pass:-9
 passt:-5
 passt~ das:-5
 pass~ the:-3
 past:2
 paste:-8
 paste~ ::2
 paste~ for:-2
 paste~ in:-4
 paste~ is:-5
 paste~ to:-5
 paste~ went:-4
 paste~ with:-3
 pastry:3
 past~ from:-4
 past~ its:-6
 past~0:-3
 patch:-6
 patience:-7
 patient:-8
 pay:-2
 pcs:-6
 pct:-6
 pdf:-8
 peak:-7
 pellet:5
 pencil:-2
 pencill:7
 pencil~ and:4
 people:-11
 people~ ask:-4
 people~ in:-1
 people~ who:-7
 people~0:-1
 per:-3
 percent:4
 percentag:-3
 perfect:-7
 perhap:9
 perhap~0:4
 period:-5
 person:-8
 per~ bar:-4
 per~ batch:1
 per~ kilo:-5
 petra:4
 ph:-9
 pharmacist:1
 pharmacy:-6
 phase:-8
 phase~ a:-3
 phase~ b:-3
 phase~ c:-2
 phenolphthalein:6
 phone:1
 phone~ and:7
 phone~ is:-5
 phone~ rang:6
 phone~ read:-8
 photo:1
 photo~ of:-2
 ph~ strip:-8
 pick:-3
 picture:-8
 piec:-6
 piece~ for:-7
 piece~ of:7
 piec~ of:-2
 piec~0:-3
 pig:-7
 pilar:-1
 pillowcase:-3
 pinch~ of:-3
 pink:2
 pitcher:-6
 place:4
 place~ of:4
 plain:-2
 plain~ white:-2
 plain~F:-6
 plain~W:5
 plan:-3
 plann:-3
 plann~ to:3
 plan~ for:2
 plastic:2
 plastic~ cup:4
 plastic~ jug:4
 plate:2
 play:-6
 pleas:-2
 please:5
 please~ ?:2
 please~ and:1
 please~ be:-5
 please~ check:-4
 please~ confirm:-7
 please~ dont:-5
 please~ excuse:-7
 please~ look:-10
 please~ my:7
 please~ tell:-1
 please~ verify:-8
 plenty:-6
 plenty~ for:-6
 plenty~ of:-3
 pls~ check:-4
 plumber:-4
 plus:2
 plus~ a:3
 plus~ an:4
 plus~ another:1
 plus~ the:5
 plus~0:-4
 plus~<:-6
 plus~=:-4
 plus~w:-6
 plz:-4
 pocket:2
 point:-2
 poland:-2
 polish:-1
 polypropylene:-4
 poor:-9
 popcorn:6
 pops:-4
 porch:-4
 porridge:2
 portion:-2
 portugal:1
 possible:-5
 post:-3
 postage:-2
 postal:2
 postal~ scale:2
 postman:1
 posts:-7
 post~ this:-6
 post~t:-2
 potato:-8
 potato~ stage:-2
 potato~ then:-3
 pots:-2
 pot~ ::-5
 pot~ and:-1
 pot~ are:-1
 pot~ at:-8
 pot~ for:-7
 pot~ holds:2
 pot~ i:-5
 pot~ is:-2
 pot~ of:-3
 pot~ off:-7
 pot~ oils:-8
 pot~ on:-1
 pot~ was:4
 pot~ went:-2
 pot~ with:2
 pot~0:1
 pour:5
 pours:-8
 pour~ ::-4
 pour~ and:1
 pour~ at:-8
 pour~ cover:-1
 pour~ in:4
 pour~ into:-3
 pour~ off:4
 pour~ on:1
 pour~ out:7
 pour~ the:-6
 pour~0:3
 pour~=:2
 pour~>:-7
 pour~A:-3
 pour~F:-1
 pour~t:-3
 pour~w:-10
 powder:5
 powder~0:6
 power:-2
 power~ cut:5
 pp:-6
 ppl:-7
 practical:-7
 prefer:4
 premix:-8
 prep:-4
 present:-1
 press:-4
 press~ in:-8
 press~ into:-2
 press~ it:-3
 press~0:-10
 pretty:-9
 pretty~ but:-5
 previou:2
 pric:-4
 price:-8
 print:3
 printout:-4
 print~0:-8
 prob:4
 probab:2
 problem:-2
 problem~ ?:4
 proces:-2
 proces~ ::-2
 proces~ crock:-2
 proces~ in:-2
 proces~ slow:-2
 professor:3
 project:-5
 promis:-2
 proper:-4
 proportion:4
 proud:-6
 ps:3
 pub:-3
 puck:-2
 pucks:-3
 puck~ dual:-6
 pudd:-6
 puddle:3
 pull:5
 pump:-1
 pupil:-1
 pure:1
 pure~ and:-8
 pure~F:-5
 purity:5
 purpose:-1
 push:-6
 put:2
 puts:-6
 puts~ everyth:-4
 put~ a:2
 put~ in:5
 put~ it:-3
 put~ them:-4
 put~ together:-7
 put~0:-1
 put~<:-8
 put~=:-7
 put~>:2
 put~F:3
 put~v:-1
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
 question:-3
 question~ ::-5
 question~ about:-2
 question~ from:-4
 question~ is:-5
 question~ to:-1
 quick:-7
 quicker:-4
 quicker~ than:-3
 quick~ one:-4
 quite:2
 quot:-4
 q~ ::-2
 r:-2
 rack:-5
 rack~ and:-1
 radiator:-3
 radio:-9
 rain:-2
 rainy:-6
 rainy~ sunday:-4
 rais:-7
 ran:5
 rancid:1
 rancid~ so:7
 rang:5
 rang~ the:-9
 ran~ dry:4
 ran~ out:2
 ran~ short:4
 ran~ the:-7
 rate:-5
 rather:5
 rather~ have:-1
 rather~ than:4
 raw:3
 re:-4
 reach:-4
 reach~ the:6
 reach~d:-6
 reader:-1
 reads:3
 reads~ in:-5
 ready:1
 ready~ dissolv:5
 ready~ for:-6
 ready~ in:-5
 ready~ mixed:1
 ready~ to:-5
 read~ it:-3
 read~ that:-4
 read~ the:-3
 read~ this:-4
 read~0:-1
 read~F:4
 read~b:-1
 realis:5
 reality:3
 real~ a:7
 real~ have:-4
 real~ weigh:-8
 real~A:-2
 real~N:7
 reason:-2
 rebatch:5
 recall:6
 receipt:8
 recette:-4
 recheck:1
 recip:-10
 recipe:-3
 recipe~ ::-2
 recipe~ ?:-3
 recipe~ and:-4
 recipe~ card:-3
 recipe~ for:3
 recipe~ from:-5
 recipe~ i:-3
 recipe~ in:2
 recipe~ is:-3
 recipe~ of:-4
 recipe~ on:-7
 recipe~ was:2
 reckon:5
 reckon~ it:1
 reckon~ with:1
 record:-2
 record~0:-7
 red:2
 refill:2
 refin:2
 regard:-5
 remain:-8
 remainder:5
 remain~0:3
 remark:-7
 remark~ ::-2
 remember:2
 remember~ it:-8
 render:-8
 render~ and:1
 render~ it:2
 render~ the:-5
 render~ twice:-3
 render~=:-4
 repeat:-5
 replac:6
 replace:-5
 replace~ it:3
 replac~ by:6
 replac~ the:-1
 reply:-5
 reply~ to:-5
 report:-3
 rescu:1
 rescue:7
 rest:3
 rest~ is:2
 rest~ of:-3
 rest~ was:-1
 rest~ went:-1
 rest~F:-4
 rest~t:-1
 retir:-6
 rev:-7
 rev~0:-7
 re~ ::-3
 ribbon:-5
 rice:-2
 rich:-10
 rid:-3
 rid~ of:-3
 right:-2
 right~ ?:-2
 right~ about:1
 right~ amount:-5
 right~ and:-4
 right~ at:2
 right~ but:6
 right~ for:-7
 right~ now:-5
 right~ on:4
 right~ or:-3
 right~ so:-5
 right~ the:-2
 right~ to:-4
 right~ with:-7
 rim:-2
 ring:-7
 rins:2
 rinse:-6
 rinse~ the:-3
 rins~ the:-1
 rises:-5
 roast:-2
 rock:-7
 roll:-7
 roof:-1
 room:-3
 room~ for:2
 room~ temp:-3
 room~ temperature:-1
 room~0:-5
 rough:3
 rough~d:-1
 rough~t:-1
 round:2
 round~ and:-4
 round~ it:-2
 round~ the:3
 round~ to:2
 row:2
 row~0:6
 rspo:-7
 rubb:-2
 rugby:-3
 rugby~ club:-3
 ruin:-3
 rule:-9
 rules:1
 run:-1
 runn:-8
 runny:7
 runs:-1
 run~ it:-7
 run~ out:-8
 run~ the:-3
 rush:-2
 rustic:-8
 ruth:1
 s0ap:-5
 s:-7
 sack:-3
 sack~ of:-1
 safe:-1
 safety:-3
 safe~ ?:-5
 safe~ for:-5
 safe~ side:3
 safe~ to:-2
 said~ a:2
 said~ it:-1
 said~ my:5
 said~ no:-8
 said~ so:-7
 said~ that:-5
 said~ the:-1
 said~ yes:-7
 said~0:-2
 said~>:-6
 said~b:5
 salad:-6
 sale:-8
 salt:3
 same~ amount:6
 same~ as:-6
 same~ bar:-3
 same~ for:-3
 same~ in:-1
 same~ number:-6
 same~ oils:-5
 same~ pot:2
 same~ recipe:5
 same~ weight:8
 same~F:-1
 same~b:6
 sample:-7
 sandpaper:-4
 sane:-5
 sane~ ?:-3
 sang:-8
 sanity:-6
 sanity~ check:-6
 saponification:3
 sat:1
 saturday:-3
 saturday~ market:-2
 sat~ on:-6
 sat~t:-4
 saucer:-4
 save:1
 saves:-7
 savon:-2
 saw:7
 saw~ it:-1
 saw~ the:8
 say:4
 says:3
 says~ ::-6
 says~ and:2
 says~ but:-4
 says~ he:7
 says~ i:1
 says~ it:-3
 says~ its:-8
 says~ min:8
 says~ my:-8
 says~ no:-5
 says~ that:2
 says~ the:-1
 says~%:-1
 says~0:6
 says~=:-4
 says~>:1
 says~A:3
 says~F:-2
 says~b:-2
 says~e:5
 says~t:-1
 says~v:3
 says~w:2
 say~ a:7
 say~ how:2
 say~ it:-9
 say~ its:-5
 say~ thats:-5
 say~ the:-9
 say~%:3
 say~0:9
 say~F:-8
 say~b:7
 say~w:4
 scal:-2
 scale:4
 scale~ ::-2
 scale~ and:-10
 scale~ at:4
 scale~ before:-8
 scale~ but:-8
 scale~ died:3
 scale~ does:-9
 scale~ for:-10
 scale~ i:-10
 scale~ it:-5
 scale~ jumps:2
 scale~ only:5
 scale~ said:-5
 scale~ says:1
 scale~ shows:1
 scale~ so:-10
 scale~ that:-2
 scale~ was:5
 scale~ with:-2
 scale~w:-5
 scal~ to:3
 scar:-5
 school:-3
 school~ fair:3
 school~ fete:3
 science:-7
 scoop:7
 scorch:-3
 scrap:7
 scrape:1
 scrap~ it:-1
 scrap~ the:6
 scratch:-13
 scribbl:-2
 scrubb:-6
 scrubb~ the:-5
 scum:1
 seal:-2
 season:4
 second:1
 second~ batch:-8
 second~ day:-7
 second~ go:1
 second~ half:3
 second~ one:-4
 second~ opinion:-4
 second~ time:2
 second~ try:-2
 secret:-7
 see:2
 seed:-5
 seem:7
 seems:-8
 seen:-2
 see~ a:-7
 see~ here:3
 see~ how:-5
 see~ if:-4
 see~ it:-10
 see~ me:-4
 see~ that:4
 see~ through:-7
 see~ what:2
 seiz:-1
 self~ ::1
 sell:-8
 seller:4
 sells:4
 sells~ at:-4
 sell~ at:-1
 sense:1
 sensible:-4
 sensible~ ?:-4
 sensitive:2
 sent:4
 sent~ me:2
 separat:-8
 separate:-9
 september:-6
 serv:4
 serv~ ::-4
 set:3
 sets:-10
 sets~ in:-4
 sett:-3
 settl:-2
 settle:2
 settl~ on:-6
 set~ aside:-5
 set~ in:-6
 set~ it:7
 set~ on:-7
 set~ the:-5
 set~ to:3
 set~ up:-6
 sf:5
 shade:-6
 shall:1
 shampoo:2
 shampoo~ bar:-6
 shar:1
 share:5
 sharp:-1
 shav:-5
 shave:-7
 shave~ puck:-3
 shave~ soap:-3
 shav~ puck:-4
 shav~ soap:-1
 she:-4
 shed:-2
 sheep:-4
 sheet:2
 sheet~ ::-3
 sheet~ and:6
 sheet~ for:2
 sheet~ says:6
 sheet~ sorry:-4
 sheet~0:-8
 shelf:-2
 shelf~ for:-2
 shes:-6
 shes~0:-3
 she~ also:4
 she~ alway:-3
 she~ asked:-5
 she~ did:-6
 she~ does:-1
 she~ gets:-8
 she~ got:-6
 she~ had:-9
 she~ has:-6
 she~ made:-4
 she~ never:1
 she~ right:-3
 she~ said:-2
 she~ says:-5
 she~ stirr:-2
 she~ swear:-2
 she~ told:-2
 she~ used:-6
 she~ wants:5
 she~ weigh:-1
 she~ who:-1
 she~ would:-4
 she~ wrote:-1
 shift:-2
 shine:-8
 shiny:-9
 shoe:-3
 shoebox:-3
 shoebox~ lined:-2
 shoe~ box:-4
 shook:2
 shop:2
 shopp:-8
 shopp~ list:-5
 shops:-2
 shop~ and:5
 shop~ had:4
 shop~ soap:3
 short:2
 shortage:-4
 short~ ::3
 short~ ?:-6
 short~ burst:-1
 short~ of:-5
 short~ on:-1
 short~ so:6
 short~ the:2
 shot:1
 should~ be:-2
 should~ come:-2
 should~ i:-6
 should~ read:9
 should~ say:4
 shout:-8
 show:-5
 shower:-7
 shows~ whole:-8
 shows~0:-3
 shows~w:3
 show~b:1
 shrink:-7
 shut~ in:3
 shy:1
 side:-1
 sides:-5
 sideway:-7
 side~ of:4
 siev:-1
 sieve:-1
 sign:-4
 silicone:-8
 silicone~ loaf:-4
 silicone~ mould:-3
 sill:-6
 silly:9
 simmer:2
 simp:-2
 simple:-5
 since:3
 since~ about:-3
 since~ i:-2
 since~ it:4
 since~ last:2
 since~ my:4
 since~ spr:2
 since~ the:4
 since~ then:3
 since~0:-8
 since~F:2
 sink:-2
 sink~ and:-4
 sink~ of:-5
 sink~ with:-3
 sis:-4
 sister':4
 sister:-10
 sister~ in:-4
 sister~ says:-2
 sits~ in:-7
 sitt:2
 sitt~ in:-2
 sitt~ on:3
 size:1
 size~ of:-3
 skin:-3
 skin~ and:-3
 skin~ is:5
 skin~ off:-6
 skin~ so:3
 skip:4
 skipp:12
 skipp~ it:5
 skipp~ the:9
 skip~ the:1
 skull:-5
 slab:-7
 sleep:-6
 sleev:-4
 slept:-5
 slic:-7
 slice:-6
 slid:-3
 slight:2
 slimy:-8
 slip:3
 slipp:10
 slipp~ and:8
 sliver:-5
 slosh:-1
 slow:-4
 slow~ cooker:-4
 slow~ into:-3
 slush:-6
 small:-2
 small~ print:5
 smell:-6
 smell~ a:-4
 smell~ faint:-5
 smell~ is:-4
 smell~ it:3
 smell~ like:-2
 smell~ of:-6
 smell~ the:-5
 smelt:5
 smelt~ like:-6
 smoke:-6
 smooth:-11
 sneeze:-5
 sniff:2
 snow~ white:-4
 so:2
 soak:7
 soap':1
 soap:-7
 soaper:-6
 soaps:-9
 soap~ ::-4
 soap~ ?:-2
 soap~ again:-6
 soap~ and:-4
 soap~ at:-5
 soap~ attempt:-2
 soap~ day:-2
 soap~ diary:-5
 soap~ ever:-1
 soap~ for:-5
 soap~ from:-7
 soap~ i:-3
 soap~ in:-7
 soap~ is:-7
 soap~ it:-5
 soap~ like:-4
 soap~ my:-6
 soap~ of:-4
 soap~ on:-4
 soap~ paste:-1
 soap~ since:-4
 soap~ the:-3
 soap~ w:-6
 soap~ was:-5
 soap~ with:-4
 soap~0:-6
 soft:-6
 soften:-7
 softer:2
 soft~ after:-3
 soft~ and:-5
 soft~ as:-5
 soft~ at:-2
 soft~ for:-4
 soft~ in:-4
 soft~ on:-2
 soft~ so:3
 soft~ soap:-5
 sold:-6
 sold~ at:-3
 sold~ out:-4
 sold~0:-6
 soleseife:-6
 solid:-3
 solution:1
 solution~ and:-1
 solution~ plus:-5
 some:2
 somebody:-3
 somebody~ asked:-6
 somebody~ check:-4
 somebody~ else:-6
 somebody~ look:-5
 somebody~ run:-6
 somebody~ tell:2
 somebody~ to:-4
 somebody~ with:-3
 someone~ at:-8
 someone~ in:-7
 someone~ look:-7
 someone~ tell:4
 someone~ to:-6
 someone~ with:-6
 someth~ else:-1
 someth~ like:3
 somewhere:-1
 some~ of:3
 some~ people:-7
 some~0:-6
 some~F:-3
 some~N:7
 some~X:-1
 son:-2
 soon:-6
 sooner:-4
 sooner~ than:-6
 sorry~ about:-5
 sorry~ for:-3
 sorry~ if:1
 sorry~ it:-5
 sorry~ my:-3
 sorry~ the:4
 sort:3
 sort~ of:-6
 sound:-7
 sound~ ?:-4
 sound~ like:-7
 sound~ right:2
 soup:-3
 sour:-1
 source:5
 source~ ::6
 south:-2
 so~ ::-4
 so~ ?:3
 so~ a:2
 so~ all:3
 so~ another:8
 so~ bear:-5
 so~ before:-5
 so~ call:5
 so~ did:-1
 so~ do:-2
 so~ does:-6
 so~ dont:1
 so~ excuse:-5
 so~ far:-5
 so~ fast:-4
 so~ for:-7
 so~ forgive:-5
 so~ good:3
 so~ half:3
 so~ here:-7
 so~ hot:-5
 so~ i'd:-10
 so~ i:-5
 so~ if:-4
 so~ im:-2
 so~ in:6
 so~ is:3
 so~ it:2
 so~ its:6
 so~ ive:-6
 so~ just:5
 so~ keep:-6
 so~ last:-8
 so~ little:-6
 so~ maybe:2
 so~ much:-5
 so~ my:3
 so~ no:4
 so~ noth:-1
 so~ now:-6
 so~ of:6
 so~ on:-3
 so~ please:3
 so~ sorry:-8
 so~ that:-8
 so~ thats:5
 so~ the:1
 so~ ther:2
 so~ there:-5
 so~ this:-4
 so~ those:2
 so~ um:4
 so~ we:-2
 so~ what:5
 so~ whats:4
 so~ who:3
 so~ you:-1
 so~%:-7
 so~0:6
 so~=:1
 so~>:-1
 so~F:-1
 so~N:10
 so~b:2
 so~e:-11
 so~l:-6
 so~t:-4
 so~w:-2
 spa:2
 space:-6
 spain:-6
 spare:-2
 spatula:-7
 speak:-1
 speed:-6
 spell:-8
 spend:-8
 spent:2
 spill:-5
 spill~ on:1
 spilt:1
 splash:4
 splash~ of:2
 split:2
 split~ the:2
 spoon:-1
 spoonful:6
 spoonful~ in:1
 spoonful~ of:1
 spoon~ and:-1
 spoon~ at:-6
 spoon~ by:-7
 spoon~ for:2
 spoon~ in:-4
 spoon~ into:-4
 spoon~ it:-5
 spoon~ of:2
 spoon~ slipp:4
 spot:-10
 spots:-1
 spots~ after:-2
 spot~ on:-6
 spray:-7
 spreadsheet:-6
 sprinkl:-8
 sprinkle:-2
 sprinkle~ the:-3
 sprinkl~ over:-3
 sprinkl~=:-1
 spr~ i:1
 squeez:6
 sry:2
 stable:-7
 stack:-2
 stag:-8
 stage:-2
 stage~ at:-3
 stain:-5
 stainles:-5
 stamp:-12
 stamp~ and:-4
 stand:-5
 standard:-6
 stand~ ::-2
 stand~ at:3
 stand~ by:-7
 stand~ for:-3
 stand~ in:-1
 stand~ it:5
 stand~ on:3
 stand~ the:-4
 stand~ there:-6
 stand~ up:3
 stank:-5
 start:-2
 start~ ::-4
 start~ ?:-3
 start~ and:-7
 start~ out:-6
 start~ the:-4
 start~ to:-8
 start~ with:6
 start~t:-5
 stay:4
 stays:-6
 stays~ as:2
 stays~ in:-9
 stay~ a:-1
 stay~ at:3
 stay~ clear:3
 stay~ cloudy:-1
 stay~ in:7
 stay~ soft:-7
 steam:-13
 steel:1
 steel~ jug:-7
 steel~ pot:-5
 step:-5
 steps:1
 steps~ of:5
 sticker:-4
 sticky:2
 stick~ blend:-3
 stick~ blender:-9
 stiff:3
 still:2
 still~ a:-7
 still~ about:1
 still~ cloudy:1
 still~ fine:-4
 still~ good:6
 still~ got:-7
 still~ had:4
 still~ have:-1
 still~ in:4
 still~ like:-8
 still~ ok:-6
 still~ on:6
 still~ sitt:8
 still~ smell:-6
 still~ soap:-8
 still~ soft:-2
 still~ stand:4
 sting:-7
 stingy:1
 stink:-8
 stir:-4
 stirr:-1
 stirr~ and:-5
 stirr~ every:-6
 stirr~ for:-3
 stirr~ in:4
 stirr~ into:5
 stirr~ it:-7
 stirr~ one:-5
 stirr~ the:-1
 stirr~ with:-6
 stirr~t:-2
 stirs:-7
 stir~ by:-4
 stir~ every:-1
 stir~ for:-2
 stir~ in:-2
 stir~ it:2
 stir~ the:-9
 stir~ till:-2
 stir~ until:-3
 stir~ with:-4
 stir~0:-5
 stir~=:-3
 stir~t:-3
 stock:2
 stone:-1
 stood:2
 stood~ at:2
 stood~ in:7
 stop:-7
 stopp:7
 stopp~ at:8
 stops:-4
 stor:-3
 store:1
 store~ the:-7
 story:1
 stove:6
 straight:-2
 straight~ away:-5
 straight~ from:-6
 straight~ into:-7
 straight~ out:3
 straight~ to:2
 strain:6
 strainer:-7
 strain~ it:-5
 strain~ the:-1
 strain~ through:-9
 streak:-5
 stream:-3
 street:-5
 strength:3
 stretch:4
 strike:3
 strip:-7
 stripp:-5
 stripp~ the:-5
 strip~ says:-8
 strip~0:-2
 strong:3
 stronger:1
 strong~ ?:-7
 strong~ for:-5
 struck:5
 struck~ out:2
 stuck:2
 stuck~ in:5
 stuck~ to:2
 stuff:-2
 stupid:-6
 style:-4
 subject:-3
 subject~ ::-3
 such:2
 suds:-6
 suit:-6
 suits:-3
 sum:-3
 summer:3
 summer~ and:7
 sums:-2
 sun:1
 sunday~ ::-4
 sunday~ in:-6
 sunday~ roast:2
 superfat:6
 superfat~ ::4
 superfat~ ?:-3
 superfat~ and:-6
 superfat~ at:1
 superfat~ because:-2
 superfat~ did:-10
 superfat~ do:-4
 superfat~ does:-7
 superfat~ for:1
 superfat~ in:3
 superfat~ is:-13
 superfat~ of:-7
 superfat~ on:-9
 superfat~ should:-11
 superfat~ with:1
 superfat~%:4
 superfat~0:4
 supermarket:-5
 supplier:1
 suppos:1
 suppose:-2
 suppos~ to:1
 sure:4
 sure~ about:-10
 sure~ of:4
 surface:-6
 surviv:-1
 survive:-7
 suspect:5
 swap:-6
 swapp:7
 swapp~ for:3
 swapp~ the:1
 swapp~F:6
 swaps:-9
 swap~ the:-1
 swear:1
 swear~ by:-3
 swear~ it:-8
 swear~ to:6
 sweat:-7
 sweat~ in:-2
 sweet:-4
 swept:4
 swirl:-8
 swirl~ with:-5
 switch:-1
 switch~ itself:-1
 switch~ off:-6
 switch~ to:-2
 swore:-3
 t:-7
 ta:-5
 tabl:-6
 table:4
 tablespoon:5
 table~ is:-7
 table~0:-9
 tabs:-5
 taffy:-9
 tag:1
 tak:6
 take:3
 taken:3
 takes:-13
 takes~ about:-1
 takes~ its:-5
 takes~ me:-4
 takes~ the:-3
 takes~=:-1
 takes~t:-3
 take~ a:-4
 take~ it:-7
 take~ my:2
 take~ off:-3
 take~ that:4
 take~ the:-7
 take~ your:2
 take~0:-8
 take~=:-4
 take~w:-9
 talk:-7
 tall:-7
 tan:-7
 tape:-6
 tare:-2
 tared:6
 target:1
 tast:-9
 taste:3
 taught:-7
 taught~ me:-4
 teach:-1
 teacher:-3
 team:-3
 teaspoon:1
 technical:10
 technical~ grade:6
 telephone:-3
 tell:-3
 tells~ me:2
 tell~ me:3
 tell~ my:-7
 tell~ them:-6
 tell~ us:-8
 tell~ whether:1
 tell~ you:-1
 temp:-4
 temperature:-9
 temps:-6
 temp~d:-2
 tenth:3
 tenth~ of:4
 term:-5
 test:-3
 tester:1
 test~ ::-4
 test~ a:-3
 test~ at:-8
 test~ batch:-5
 test~ it:6
 test~ ok:-3
 test~ on:-1
 test~ with:-5
 text:-4
 than:-1
 thank:-5
 thank~ for:-6
 thank~ to:-2
 thank~ you:-6
 than~ a:-1
 than~ i:3
 than~ it:4
 than~ my:3
 than~ that:-6
 than~ the:-3
 than~ usual:4
 than~0:1
 than~d:-5
 that:5
 thats:-1
 thats~ a:-7
 thats~ all:-6
 thats~ how:4
 thats~ in:1
 thats~ it:-6
 thats~ my:-5
 thats~ normal:-2
 thats~ the:-5
 thats~ what:6
 thats~ why:-7
 thats~>:-1
 thats~l:-10
 that~ ?:4
 that~ a:-7
 that~ about:-7
 that~ and:4
 that~ be:3
 that~ bit:3
 that~ came:-1
 that~ come:-1
 that~ day:7
 that~ enough:-3
 that~ from:-7
 that~ goes:-1
 that~ had:1
 that~ has:-4
 that~ i'd:-3
 that~ i:2
 that~ im:1
 that~ in:-1
 that~ into:-4
 that~ is:2
 that~ isnt:2
 that~ it:-9
 that~ its:-4
 that~ leave:-6
 that~ look:-6
 that~ makes:-4
 that~ matter:5
 that~ mine:5
 that~ much:-1
 that~ my:1
 that~ never:6
 that~ nobody:2
 that~ noth:-4
 that~ off:7
 that~ okay:-1
 that~ on:3
 that~ one:-5
 that~ out:4
 that~ real:-7
 that~ right:-2
 that~ she:1
 that~ so:-7
 that~ solution:-10
 that~ sound:-1
 that~ still:-6
 that~ the:4
 that~ ther:-6
 that~ too:-8
 that~ was:-7
 that~ we:-8
 that~ went:-3
 that~ what:-9
 that~ you:-4
 that~0:10
 that~=:-7
 that~A:-3
 that~F:1
 that~L:3
 that~b:7
 thaw:-1
 the:1
 their:-4
 them:-1
 themselv:-2
 them~ ::-2
 them~ and:-2
 them~ for:-1
 them~ from:-4
 them~ is:-2
 them~ on:-1
 them~ out:-5
 them~ to:-7
 them~ together:2
 them~0:3
 them~t:-5
 then:-2
 then~ ::-3
 then~ a:-1
 then~ add:-5
 then~ another:5
 then~ at:-6
 then~ i:3
 then~ in:-7
 then~ into:-4
 then~ it:4
 then~ its:-6
 then~ like:-3
 then~ my:2
 then~ off:-1
 then~ pour:-6
 then~ stir:-4
 then~ stirr:-2
 then~ the:-9
 then~ tipp:-5
 then~ weigh:-8
 then~0:4
 then~<:4
 then~=:-4
 then~>:-1
 then~A:-7
 then~F:-4
 then~S:-5
 then~W:2
 then~e:-5
 then~t:-5
 then~v:6
 then~w:-2
 ther:3
 there:4
 thereabout:2
 therefore:3
 there~ ?:-6
 there~ and:1
 there~ are:-1
 there~ because:1
 there~ enough:-4
 there~ may:3
 there~ so:-5
 there~ too:4
 there~ was:-1
 there~ were:3
 there~ with:-5
 thermometer:-10
 ther~ a:-3
 ther~ also:2
 ther~ no:-9
 ther~0:3
 ther~=:2
 ther~F:2
 these:-8
 these~ are:-5
 these~ days:5
 these~ fats:-6
 these~ oils:-3
 they:-4
 theyd:3
 theyll:-3
 theyre:-9
 they~ are:4
 they~ did:-3
 they~ do:-7
 they~ say:2
 they~ went:2
 they~ were:-7
 the~ above:4
 the~ allotment:-4
 the~ amount:-4
 the~ answer:-2
 the~ app:3
 the~ attic:-3
 the~ autumn:-8
 the~ baby:1
 the~ back:1
 the~ bag:3
 the~ balance:-5
 the~ balcony:2
 the~ bars:-11
 the~ batch:-3
 the~ bath:-7
 the~ bathroom:1
 the~ batter:-9
 the~ battery:-1
 the~ beaker:6
 the~ beginn:-1
 the~ bell:-8
 the~ bench:-5
 the~ best:-5
 the~ big:-2
 the~ bin:-3
 the~ birds:-3
 the~ bit:-3
 the~ blend:-8
 the~ blender:2
 the~ block:4
 the~ blog:-5
 the~ blue:-2
 the~ board:2
 the~ book:-4
 the~ bottl:-6
 the~ bottle:5
 the~ bottom:-1
 the~ bowl:6
 the~ box:1
 the~ boys:-6
 the~ brim:-3
 the~ bubbl:-5
 the~ bucket:1
 the~ bus:-2
 the~ butcher:-1
 the~ camp:1
 the~ can:1
 the~ candle:-5
 the~ canister:5
 the~ car:-8
 the~ card:-5
 the~ caretaker:-6
 the~ ceil:1
 the~ cellar:-9
 the~ certifi:-6
 the~ certificate:4
 the~ cheap:-7
 the~ chemist:-2
 the~ children:1
 the~ choir:-5
 the~ church:-5
 the~ class:-7
 the~ clean:-2
 the~ clock:-3
 the~ club:-2
 the~ clubs:-1
 the~ code:-4
 the~ cold:1
 the~ column:-3
 the~ comma:3
 the~ comment:-7
 the~ cook:1
 the~ cooker:2
 the~ cool:-6
 the~ corner:-5
 the~ cost:-6
 the~ counter:4
 the~ county:-4
 the~ course:3
 the~ crockpot:-2
 the~ crumb:1
 the~ cubes:-5
 the~ cup:-3
 the~ cupboard:-1
 the~ cure:-9
 the~ date:-7
 the~ day:-3
 the~ decimal:-4
 the~ discount:-2
 the~ dish:4
 the~ dog:2
 the~ door:-2
 the~ dot:-6
 the~ doubl:-7
 the~ double:-2
 the~ drain:3
 the~ drawer:2
 the~ drum:7
 the~ dry:2
 the~ edge:-3
 the~ edges:-1
 the~ empty:-7
 the~ end:3
 the~ ends:-7
 the~ even:-9
 the~ extra:-1
 the~ face:-8
 the~ fair:-1
 the~ fami:1
 the~ farm:-1
 the~ fat:-7
 the~ fats:1
 the~ feed:3
 the~ fence:-6
 the~ figur:-4
 the~ figure:4
 the~ finish:-3
 the~ first:-2
 the~ flak:5
 the~ flat:-3
 the~ floor:5
 the~ foam:-9
 the~ freezer:-9
 the~ fridge:-1
 the~ front:1
 the~ fryer:1
 the~ full:4
 the~ fumes:-7
 the~ funnel:3
 the~ garage:-9
 the~ garden:-3
 the~ gas:-3
 the~ glass:1
 the~ goat:5
 the~ goats:5
 the~ goggl:-2
 the~ good:-3
 the~ gram:-7
 the~ greasy:-8
 the~ group:1
 the~ half:5
 the~ hall:-5
 the~ hand:-3
 the~ handout:1
 the~ hands:-1
 the~ hard:-7
 the~ hardware:-2
 the~ heat:-8
 the~ hens:-8
 the~ hob:-1
 the~ holiday:-2
 the~ hood:-6
 the~ hot:1
 the~ house:4
 the~ internet:-3
 the~ jars:-5
 the~ jug:-3
 the~ kettle:6
 the~ kids:-4
 the~ kilo:6
 the~ kitchen:-3
 the~ label:5
 the~ lads:-5
 the~ lady:-4
 the~ last:3
 the~ lather:-1
 the~ laundry:3
 the~ leaflet:3
 the~ letter:1
 the~ library:-7
 the~ lid:1
 the~ light:-7
 the~ line:4
 the~ liquid:5
 the~ list:9
 the~ litre:6
 the~ little:-1
 the~ loaf:-5
 the~ log:-6
 the~ long:2
 the~ look:-1
 the~ lot:3
 the~ lowest:-4
 the~ lump:-2
 the~ machine:-5
 the~ man:-3
 the~ margin:-2
 the~ mark:4
 the~ market:-4
 the~ mass:-4
 the~ measur:4
 the~ mechanic:3
 the~ melt:-2
 the~ mess:-4
 the~ microwave:1
 the~ middle:-5
 the~ mill:-4
 the~ miss:3
 the~ mix:6
 the~ mold:1
 the~ month:-5
 the~ moon:-2
 the~ morn:-8
 the~ most:-9
 the~ mould:-1
 the~ name:-7
 the~ neighbour:-3
 the~ new:1
 the~ next:-4
 the~ night:-6
 the~ normal:-5
 the~ number:2
 the~ oils:1
 the~ old:-2
 the~ one:1
 the~ ones:-2
 the~ only:-7
 the~ open:2
 the~ order:-7
 the~ original:2
 the~ other:1
 the~ oven:-8
 the~ packet:8
 the~ page:-5
 the~ pan:3
 the~ pantry:-8
 the~ paper:7
 the~ parish:-7
 the~ part:-5
 the~ paste:-4
 the~ patience:-5
 the~ phone:4
 the~ photo:3
 the~ picture:-4
 the~ place:7
 the~ plain:-4
 the~ plan:-1
 the~ plastic:3
 the~ plate:4
 the~ point:-2
 the~ porch:-4
 the~ postman:2
 the~ potato:-7
 the~ pour:-4
 the~ powder:4
 the~ power:-4
 the~ present:1
 the~ price:-7
 the~ printout:-4
 the~ question:-9
 the~ rack:-4
 the~ radiator:-3
 the~ radio:-7
 the~ rain:-3
 the~ ready:6
 the~ real:-8
 the~ reason:-6
 the~ recipe:1
 the~ remain:-2
 the~ render:-5
 the~ rest:1
 the~ right:-9
 the~ rim:-1
 the~ roof:2
 the~ room:1
 the~ row:-5
 the~ rugby:-3
 the~ sack:-3
 the~ safe:3
 the~ salad:1
 the~ same:2
 the~ saturday:-2
 the~ scale:-3
 the~ school:1
 the~ scum:1
 the~ second:3
 the~ sf:-5
 the~ sheet:8
 the~ shelf:-3
 the~ shop:4
 the~ shops:-7
 the~ shower:-7
 the~ side:6
 the~ sides:-4
 the~ sink:1
 the~ skin:-4
 the~ slip:-2
 the~ slow:-4
 the~ small:1
 the~ smell:1
 the~ soap':3
 the~ soap:-5
 the~ solution:-2
 the~ spatula:-2
 the~ spill:-6
 the~ spoon:-1
 the~ spr:-7
 the~ spreadsheet:-5
 the~ stall:3
 the~ steel:5
 the~ step:-2
 the~ stick:-9
 the~ stirr:-8
 the~ stove:6
 the~ suds:-4
 the~ sum:-2
 the~ sun:2
 the~ sunday:5
 the~ superfat:-5
 the~ supermarket:-4
 the~ surface:-6
 the~ swirl:-5
 the~ table:3
 the~ tap:-4
 the~ teacher:-4
 the~ temperature:-5
 the~ test:1
 the~ thermometer:-6
 the~ thing:-3
 the~ third:-1
 the~ thread:-6
 the~ thursday:-5
 the~ tiles:8
 the~ time:1
 the~ tin:5
 the~ tongue:-2
 the~ top:-2
 the~ towel:-1
 the~ train:-6
 the~ tray:-4
 the~ trimming:3
 the~ tub:2
 the~ unrefin:-6
 the~ usual:5
 the~ varnish:-5
 the~ very:-1
 the~ village:-4
 the~ wall:-6
 the~ war:-8
 the~ wardrobe:-4
 the~ warm:2
 the~ wash:-6
 the~ way:4
 the~ weather:-7
 the~ weekend:-8
 the~ weigh:6
 the~ weight:3
 the~ whisk:1
 the~ white:1
 the~ whole:-2
 the~ window:-6
 the~ windowsill:3
 the~ winter:-5
 the~ wire:-2
 the~ wood:-3
 the~ wooden:-4
 the~ word:-4
 the~ workshop:-3
 the~ worktop:-1
 the~ wrong:7
 the~ yard:-5
 the~ year:-7
 the~%:1
 the~<:-4
 the~=:-2
 the~A:2
 the~B:-8
 the~C:-13
 the~F:5
 the~I:4
 the~K:2
 the~L:-2
 the~M:3
 the~N:-3
 the~S:-3
 the~T:-7
 the~W:5
 the~X:-3
 the~b:5
 the~l:-3
 the~t:-2
 the~v:-7
 the~w:-6
 thick:-3
 thicken:-3
 thicker:-9
 thick~ as:1
 thick~ like:-5
 thick~ trace:-2
 thin:-4
 thing~ ?:-8
 thing~ and:-2
 thing~ i:-6
 thing~ in:-6
 think~ ?:-6
 think~ about:2
 think~ i:7
 think~ my:2
 think~ of:-7
 think~ that:-8
 think~ the:5
 thinn:5
 thin~ stream:-3
 thin~ trace:-7
 third:1
 third~ attempt:-6
 third~ go:4
 third~ of:2
 third~ one:-2
 third~ time:-6
 this:3
 this~ ::3
 this~ ?:-6
 this~ a:-5
 this~ and:-8
 this~ batch:-1
 this~ be:-3
 this~ because:-7
 this~ before:-4
 this~ but:-6
 this~ for:6
 this~ house:4
 this~ i:-4
 this~ is:-6
 this~ loaf:3
 this~ look:-3
 this~ morn:2
 this~ ok:-2
 this~ on:-5
 this~ one:5
 this~ ones:2
 this~ or:-5
 this~ pot:3
 this~ recipe:-8
 this~ right:-2
 this~ time:4
 this~ to:-6
 this~ was:-3
 this~ way:-4
 this~ week:-1
 this~ weekend:1
 this~ with:-9
 this~ year:4
 this~0:-9
 this~F:1
 tho:-8
 those:-1
 those~ are:2
 those~ days:-5
 those~ fats:-2
 those~ oils:-2
 those~ who:4
 those~0:4
 though:2
 thought~ ?:-4
 thought~ i'd:-7
 thought~ i:-1
 thought~ it:-3
 thought~ on:-6
 thought~ the:-2
 though~ ?:-5
 though~ i:1
 thread:-8
 threw:6
 threw~ in:6
 threw~ the:-3
 through:2
 through~ a:3
 through~ an:-9
 through~ it:-4
 through~ the:3
 throw:-5
 thrown:6
 thru:2
 thumb:-2
 thursday:-5
 thx:-5
 tick:-1
 tight:-2
 til:-3
 tiles:8
 till:-1
 till~ it:3
 till~ its:-1
 till~ the:-1
 till~0:-6
 time:-3
 timer:-10
 times:3
 times~ i:3
 times~ in:-4
 times~ the:1
 times~0:9
 time~ ::-1
 time~ and:-5
 time~ because:1
 time~ for:1
 time~ i'd:1
 time~ i:1
 time~ in:3
 time~ is:-4
 time~ it:-8
 time~ ive:-1
 time~ lurker:-4
 time~ post:-3
 time~ so:3
 time~ the:2
 time~ to:-3
 time~ with:-7
 time~t:-6
 tins:-8
 tins~ of:-2
 tiny:-2
 tin~ and:-1
 tin~ is:-9
 tin~ of:-4
 tin~ was:-1
 tin~ with:-8
 tip:-3
 tipp:7
 tipp~ in:7
 tipp~ it:-1
 tipp~ the:-1
 tips:-5
 tip~ ::-6
 tired:-1
 title:-2
 title~ ::-4
 to:-1
 toast:3
 today:-5
 today~ ::4
 today~ ?:-5
 today~ and:-1
 toddler:4
 together~ ?:-3
 together~ in:-4
 together~ so:2
 together~ with:-6
 told:-4
 told~ her:-5
 told~ me:-3
 told~ us:-8
 told~F:-2
 tom:-3
 tomato:5
 tomorrow:-5
 tongue:-2
 tongue~ test:2
 tonight:5
 tonight~ ::-5
 tonight~ ?:-3
 too:3
 took:3
 took~ a:-6
 took~ ages:-5
 took~ forever:2
 took~ it:-3
 took~ me:-8
 took~ near:-1
 took~ off:2
 took~ the:2
 took~0:-1
 took~<:2
 took~=:-7
 took~>:-4
 took~N:4
 took~l:3
 took~t:-12
 took~w:-5
 tools:-7
 too~ ?:-4
 too~ and:3
 too~ cold:-5
 too~ dry:-5
 too~ early:-7
 too~ fast:1
 too~ hard:-2
 too~ harsh:-4
 too~ high:-6
 too~ hot:-7
 too~ late:-1
 too~ low:4
 too~ many:6
 too~ much:-5
 too~ quick:2
 too~ sharp:-3
 too~ soft:-6
 too~ soon:-5
 too~ strong:-3
 topp:8
 topp~ it:4
 topp~ the:7
 topp~ up:5
 tops:1
 top~ for:-4
 top~ is:-4
 top~ of:1
 top~ shelf:-5
 top~ which:-4
 total:1
 total~ of:-7
 touch:-5
 touch~ it:-5
 touch~ the:-7
 towel:-5
 towel~ over:-4
 towel~ round:-6
 towel~t:-2
 town:1
 to~ a:1
 to~ about:-2
 to~ add:-3
 to~ ask:-6
 to~ be:2
 to~ bed:-6
 to~ buy:-6
 to~ check:-7
 to~ come:4
 to~ cool:-10
 to~ cut:-3
 to~ do:-1
 to~ everyone:3
 to~ find:-4
 to~ finish:8
 to~ get:-3
 to~ grate:-1
 to~ hand:1
 to~ have:4
 to~ hear:1
 to~ help:6
 to~ her:-7
 to~ hold:3
 to~ it:1
 to~ keep:-7
 to~ know:-3
 to~ light:-2
 to~ look:-9
 to~ make:1
 to~ mash:-2
 to~ me:-1
 to~ melt:-9
 to~ mix:-2
 to~ my:-1
 to~ open:-7
 to~ pour:-4
 to~ put:5
 to~ remember:-9
 to~ rough:-3
 to~ self:1
 to~ sell:-2
 to~ set:3
 to~ slush:-8
 to~ soap:-7
 to~ someth:-5
 to~ spare:-1
 to~ spoon:-5
 to~ start:-7
 to~ stir:1
 to~ take:5
 to~ tare:-8
 to~ tell:2
 to~ test:-7
 to~ that:-6
 to~ thicken:-2
 to~ this:-8
 to~ throw:-7
 to~ trace:-9
 to~ try:-4
 to~ unmould:-5
 to~ use:-3
 to~ wait:2
 to~ wash:3
 to~ waste:5
 to~ weigh:-7
 to~ work:-1
 to~ you:-4
 to~%:4
 to~<:5
 to~=:-2
 to~>:4
 to~F:-9
 to~T:-4
 to~X:-7
 to~b:-3
 to~d:-4
 to~e:-2
 to~t:3
 to~w:-6
 trac:-8
 trace:2
 trace~ ::-7
 trace~ add:1
 trace~ after:-4
 trace~ and:-8
 trace~ at:-2
 trace~ because:4
 trace~ came:-5
 trace~ for:3
 trace~ i:-8
 trace~ in:-7
 trace~ pour:-5
 trace~ stir:-6
 trace~ then:-2
 trace~ was:-4
 trace~0:-7
 trace~t:-5
 trace~w:-5
 track:3
 tractor:-5
 trac~ after:-3
 trac~ in:-4
 trade:-9
 trail:-4
 train:-6
 translat:-3
 translate:-5
 translat~ from:-3
 translucent:-3
 tray:-5
 trays:-3
 treat:-1
 trial:-7
 trick:-8
 trick~ for:-4
 tried:-9
 tried~ it:2
 trim:-6
 trimming:-1
 tripl:-8
 trouble:-2
 trust:-6
 trust~ it:-5
 trust~ the:-6
 truth:1
 try:-12
 try~ it:-8
 try~ to:-1
 tube:-6
 tubs:2
 tub~ ::-7
 tub~ and:-8
 tub~ had:-2
 tub~ is:-4
 tub~ of:-5
 tub~ says:-7
 tue:-3
 tuesday:-1
 tuesday~ ::-5
 tue~t:-1
 turn:-1
 turns~ out:8
 turns~0:-5
 turn~ it:-2
 turn~ out:5
 turn~ the:-3
 turn~S:-4
 tutor:-2
 twentieth:3
 twice:2
 twice~ a:-4
 twice~ and:3
 twice~ before:-7
 twice~ i:4
 twice~ with:-5
 typ:-7
 type:4
 typed:9
 typed~ the:8
 type~ ::-8
 typo:2
 u:-9
 ugh:-1
 ugly:-6
 um:2
 uncl:-5
 uncle:-4
 under:-5
 underneath:-5
 understand:-7
 under~ a:-2
 under~ it:-3
 under~ the:2
 under~0:-8
 under~d:-3
 under~t:-3
 under~w:-7
 unit:-3
 units:-6
 unit~ ::-2
 unles:1
 unmold:-7
 unmould:-6
 unmould~ after:-5
 unmould~t:-1
 unrefin:-7
 unsaponifi:11
 unscent:-6
 until:-1
 until~ a:-5
 until~ both:-1
 until~ i:-5
 until~ it:-1
 until~ its:-2
 until~ the:3
 until~ you:-4
 until~0:-6
 until~t:-1
 up:5
 update:3
 upon:3
 up~ ::2
 up~ ?:-6
 up~ a:-4
 up~ again:-8
 up~ and:-2
 up~ by:3
 up~ for:-6
 up~ i:-7
 up~ in:-2
 up~ like:-7
 up~ my:-1
 up~ on:7
 up~ so:2
 up~ the:4
 up~ there:5
 up~ to:4
 up~ with:2
 up~0:10
 ur:-6
 use:-3
 used:2
 used~ a:-2
 used~ all:-11
 used~ that:6
 used~ the:5
 used~ to:-9
 used~0:-2
 used~<:-3
 used~=:-7
 used~>:-4
 used~F:-5
 used~L:2
 used~N:-3
 used~l:-6
 used~w:-1
 uses:-4
 use~ ?:-2
 use~ a:-1
 use~ for:-6
 use~ in:-3
 use~ it:-7
 use~ the:-5
 use~ them:-4
 use~ up:7
 use~=:2
 use~>:3
 use~F:-7
 use~I:-5
 use~N:-1
 use~l:-2
 using:2
 using~=:-5
 usual:2
 us~ is:1
 us~ the:-3
 vanish:-4
 varnish:-5
 vegan:-9
 vegetable:-5
 vegetarian:-8
 verdict:-3
 verdict~ ?:-3
 verify:-7
 verify~ the:-6
 version:-5
 version~ with:-6
 version~0:4
 very~ first:-7
 very~ nice:-5
 vet:-6
 video:-6
 village:-2
 village~ hall:-1
 virgin:-5
 voice:3
 volcano:-8
 w:1
 wait:-4
 waits:2
 wait~ for:-7
 wait~ i:-7
 wait~ till:-5
 wait~ until:-6
 wait~t:-2
 walk:2
 wall:-1
 want:3
 wants:-4
 wants~ a:-5
 wants~ it:-6
 wants~ me:-3
 wants~ some:-1
 wants~ the:-6
 wants~ to:-4
 want~ a:-5
 want~ it:1
 want~ the:6
 want~ to:-4
 want~0:5
 want~F:-7
 war:-9
 wardrobe:-6
 warm:-7
 warmth:-6
 warm~ in:-5
 warm~ it:-4
 warm~ oils:4
 warm~ the:-9
 warm~ to:-8
 warm~F:-2
 warn:-8
 was:5
 wash:-5
 wash~ house:-4
 wash~ it:2
 wash~ the:1
 wash~ with:-6
 wasnt:10
 wasnt~ enough:1
 wast:2
 waste:1
 was~ all:3
 was~ already:4
 was~ at:-5
 was~ call:1
 was~ clean:-2
 was~ clear:-6
 was~ cold:2
 was~ done:1
 was~ empty:10
 was~ fine:-2
 was~ finish:6
 was~ for:-2
 was~ full:1
 was~ going:-5
 was~ gone:-4
 was~ half:-4
 was~ hard:-6
 was~ hot:-4
 was~ i:-1
 was~ in:4
 was~ it:-5
 was~ left:-1
 was~ like:2
 was~ made:-2
 was~ meant:4
 was~ melt:4
 was~ my:-6
 was~ near:4
 was~ never:-2
 was~ no:-3
 was~ not:7
 was~ off:8
 was~ old:-4
 was~ on:2
 was~ one:6
 was~ only:1
 was~ open:5
 was~ out:6
 was~ over:5
 was~ pour:3
 was~ ready:-2
 was~ real:5
 was~ right:-7
 was~ so:5
 was~ soft:4
 was~ stand:6
 was~ stirr:-3
 was~ that:-4
 was~ the:-4
 was~ there:5
 was~ thick:-4
 was~ too:-6
 was~ under:-6
 was~ very:-7
 was~ warm:-5
 was~ weigh:5
 was~ what:-4
 was~ with:2
 was~%:-10
 was~0:-3
 was~<:1
 was~=:-8
 was~>:-10
 was~A:5
 was~F:3
 was~L:5
 was~N:3
 was~X:6
 was~b:3
 was~d:-7
 was~e:5
 was~l:-9
 was~t:-6
 was~v:1
 was~w:5
 watch:-6
 watch~ the:-7
 water:1
 water~ bath:-5
 waxy:-4
 way:2
 way~ about:1
 way~ for:2
 way~ in:6
 way~ of:-7
 way~ round:-2
 way~ to:-1
 wear:-9
 wear~ goggl:-3
 weather:-6
 wed:-1
 wedd:2
 wedd~ favour:2
 wednesday:-6
 week:-5
 weekend:-3
 week~ and:-10
 week~ so:4
 week~0:-9
 weigh:-2
 weight:2
 weight~ ::-7
 weight~ and:3
 weight~ g:-3
 weight~ in:2
 weight~ made:-5
 weight~ not:-10
 weight~ of:-2
 weight~ oz:-5
 weight~ so:-6
 weight~A:-7
 weigh~ ?:-6
 weigh~ a:-7
 weigh~ after:-4
 weigh~ again:4
 weigh~ and:-2
 weigh~ anyth:-1
 weigh~ as:4
 weigh~ by:5
 weigh~ everyth:-7
 weigh~ i:-4
 weigh~ in:1
 weigh~ like:1
 weigh~ my:3
 weigh~ on:1
 weigh~ one:-3
 weigh~ out:-6
 weigh~ the:2
 weigh~0:3
 weigh~<:-7
 weigh~=:-6
 weigh~>:-5
 weigh~F:-3
 weigh~e:6
 weigh~l:-4
 weigh~w:-8
 welcome:-4
 well:-1
 well~ and:-5
 well~ as:-4
 well~ be:7
 well~ have:6
 went:3
 went~ a:5
 went~ above:-7
 went~ away:-7
 went~ back:-1
 went~ brown:-6
 went~ by:-4
 went~ clear:-6
 went~ cloudy:-6
 went~ dark:-2
 went~ down:6
 went~ for:2
 went~ from:-9
 went~ in:7
 went~ into:4
 went~ off:1
 went~ on:4
 went~ over:4
 went~ the:-5
 went~ through:2
 went~ to:-5
 went~ with:3
 went~ without:4
 went~ wrong:-4
 went~ yellow:-6
 went~=:-8
 went~S:-5
 were:3
 were~ a:-1
 were~ at:-7
 were~ doing:1
 were~ on:-5
 were~0:3
 were~=:1
 were~F:4
 were~w:-1
 wet:6
 wet~ cloth:-3
 wet~ dog:-4
 weve:-2
 weve~ got:-6
 we~ are:-1
 we~ count:-6
 we~ cut:-6
 we~ did:6
 we~ do:1
 we~ got:-7
 we~ had:2
 we~ have:-4
 we~ keep:-8
 we~ made:-6
 we~ make:3
 we~ pour:-4
 we~ put:-6
 we~ render:-2
 we~ say:3
 we~ split:-6
 we~ still:-10
 we~ took:2
 we~ use:-8
 we~ used:-3
 we~ want:4
 we~ weigh:2
 we~ went:-1
 we~ were:4
 we~ write:-4
 what:3
 whatever:6
 whatever~ the:9
 whatever~ was:9
 whatsoever:2
 whats~ in:5
 whats~ left:-4
 whats~ the:-4
 what~ a:-7
 what~ came:7
 what~ did:-4
 what~ do:1
 what~ does:-9
 what~ g:-4
 what~ happen:-6
 what~ how:-7
 what~ i'd:4
 what~ i:8
 what~ im:3
 what~ is:-5
 what~ it:3
 what~ ive:-8
 what~ remain:2
 what~ she:-5
 what~ superfat:-9
 what~ they:6
 what~ was:-4
 what~ we:-2
 what~ went:-1
 what~ would:-7
 what~ you:-3
 what~ youd:-1
 when:-1
 whenever:-2
 when~ both:-5
 when~ cut:-7
 when~ i:1
 when~ it:2
 when~ its:-1
 when~ she:-1
 when~ the:1
 when~ wash:5
 when~ you:2
 when~F:-10
 where:3
 where~ i:-3
 where~ it:7
 where~ my:2
 where~ she:-8
 where~ the:3
 where~ you:3
 whether:-3
 whether~ it:-4
 whether~ the:2
 whether~F:-9
 whether~b:-3
 which:2
 which~ bring:-1
 which~ has:-2
 which~ i:5
 which~ is:-4
 which~ makes:-6
 which~ of:3
 which~ one:5
 which~ the:1
 which~ was:-5
 which~ you:-6
 which~F:-7
 while:-2
 while~ i:5
 while~ it:-1
 while~ that:-2
 while~ the:-8
 whipp:3
 whisk:-6
 white:-8
 whiteboard:-7
 whiter:-5
 white~ and:1
 white~ as:-6
 white~ powder:-4
 white~ spots:-3
 white~F:-2
 who:-1
 whoever:-1
 whole:1
 whole~ grams:-8
 whole~ thing:3
 whole~ time:-2
 whos:-3
 whose:3
 whos~ right:-3
 who~ asked:-6
 who~ cant:3
 who~ does:1
 who~ has:-4
 who~ is:-3
 who~ knows:3
 who~ taught:-2
 why:-8
 why~ ?:-4
 why~ does:-3
 why~ i:-4
 why~ is:-6
 why~ it:-5
 why~ its:-7
 why~ the:-6
 why~F:-4
 width:-4
 wife:-2
 wifes:-3
 wife~ likes:-7
 wife~ says:3
 will:-6
 will~ ask:-1
 will~ be:-9
 will~ climb:-5
 will~ do:-7
 will~ it:-3
 will~ need:-1
 will~ that:-2
 will~ the:-4
 will~ this:-3
 wind:-5
 window:-10
 windowsill:2
 window~ open:-8
 winter:-5
 winter~ and:5
 winter~ bar:-2
 winter~ hands:-6
 winter~ i:-2
 wipe:-5
 wiped:-1
 wire:-6
 wise:-5
 wish:4
 within:-9
 within~t:-7
 without:5
 without~ a:-11
 without~ it:1
 without~ my:-1
 without~F:-2
 with~ a:-2
 with~ all:-8
 with~ an:-5
 with~ another:1
 with~ bak:-3
 with~ both:-5
 with~ coins:2
 with~ everyth:6
 with~ freezer:-4
 with~ glov:-2
 with~ goggl:-3
 with~ it:-1
 with~ its:-1
 with~ me:1
 with~ more:3
 with~ my:-9
 with~ no:-1
 with~ noth:4
 with~ one:3
 with~ only:-7
 with~ some:2
 with~ that:2
 with~ the:2
 with~ this:3
 with~ us:-5
 with~ wet:-3
 with~ what:3
 with~%:7
 with~0:-4
 with~<:-3
 with~=:-4
 with~>:-5
 with~A:1
 with~B:-1
 with~C:1
 with~F:-7
 with~I:-5
 with~L:-7
 with~N:1
 with~S:-9
 with~U:4
 with~W:3
 with~b:-4
 with~e:-9
 with~l:-8
 with~v:-1
 with~w:3
 woman:-9
 woman~ at:-2
 women:-3
 wonder:7
 wonky:-7
 wont:-2
 wood:-7
 wooden:-3
 wooden~ box:-2
 wooden~ mould:-8
 wooden~ one:-5
 wooden~ spoon:1
 wood~ stove:-4
 word:1
 words:-6
 word~ for:-6
 works:-7
 worksheet:-4
 workshop:-4
 worktop:-1
 work~ ?:-2
 work~ in:1
 work~ it:2
 work~ out:-6
 work~ with:2
 worri:3
 worry:-4
 worry~ is:2
 worth:1
 worth~ of:4
 would:-1
 wouldnt:5
 wouldnt~ dissolve:10
 would~ a:-4
 would~ be:-1
 would~ do:-8
 would~ have:-4
 would~ like:3
 would~ love:2
 would~ not:-5
 would~ take:2
 would~ that:-3
 would~ the:-8
 would~ you:2
 wrap:-9
 wrapp:-12
 wrapper:-6
 wrapp~ in:-6
 wrapp~ it:-4
 wrist:-4
 writ:-6
 write:-4
 write~ down:-8
 write~ it:-1
 write~ the:-6
 write~ up:-6
 written:2
 written~ ?:-5
 written~ on:-4
 wrong:1
 wrong~ ?:-4
 wrong~ or:-5
 wrong~ with:-5
 wrote:1
 wrote~ ::-4
 wrote~ it:2
 wrote~ on:-6
 wrote~ that:-5
 wrote~ this:-2
 wrote~F:4
 wt:-7
 w~ a:-7
 w~ my:-3
 w~ the:1
 w~ w:2
 w~=:-3
 x:1
 xmas:3
 x~0:4
 x~F:-9
 yall:-6
 yard:-8
 year:-6
 years:-7
 years~ ago:-3
 year~ i:-7
 year~ in:-3
 year~ is:3
 year~0:-5
 yellow:-9
 yes:-3
 yesterday:-5
 yesterday~ i:1
 yes~ ?:-7
 yes~ its:-7
 yes~ no:-3
 yes~ or:-1
 yes~ the:-1
 yet:6
 yield:1
 yield~ ::1
 yield~0:1
 you:-4
 youd:-3
 youll:-3
 youll~ want:1
 young:-3
 your:-9
 youre:-10
 yours:-1
 your~ arm:-2
 your~ own:2
 your~ skin:-4
 your~A:-5
 your~F:-3
 youve:-10
 you~ ?:-2
 you~ all:-6
 you~ and:-3
 you~ are:-5
 you~ ask:1
 you~ asked:-3
 you~ call:-8
 you~ can:-3
 you~ cant:-6
 you~ check:-4
 you~ confirm:-4
 you~ could:-11
 you~ cut:-4
 you~ do:2
 you~ dont:-8
 you~ feel:-2
 you~ for:-5
 you~ get:-3
 you~ go:-5
 you~ have:1
 you~ know:5
 you~ like:-5
 you~ look:-3
 you~ lot:-3
 you~ make:-6
 you~ need:-8
 you~ pour:-7
 you~ put:-7
 you~ read:1
 you~ say:-2
 you~ see:1
 you~ should:5
 you~ start:-4
 you~ tell:4
 you~ think:-6
 you~ to:-3
 you~ trust:-1
 you~ use:-4
 you~ wait:-3
 you~ want:-9
 you~ weigh:-6
 you~ will:1
 you~ wont:3
 you~ work:-2
 zap:-7
 zapp:5
 zappy:-3
 zaps:2
 zap~ test:-3
 zero:4
 zero~ the:6
 zutat:-4
 ×:-1
 üf:-7
%%:-3
%0:-8
%:7
%<:-6
%>:-7
%A:5
%F:-2
%K:-6
%N:2
%S:-6
%W:1
%X:1
%b:1
%l:-1
%t:-7
%w:2
%~ ::-4
%~ ?:-2
%~ and:-5
%~ by:1
%~ extra:7
%~ flak:3
%~ for:10
%~ half:-8
%~ in:-1
%~ is:-3
%~ less:-4
%~ liquid:7
%~ off:1
%~ on:4
%~ or:2
%~ over:4
%~ pure:-5
%~ purity:-4
%~ sf:-4
%~ so:5
%~ solution:-2
%~ superfat:2
%~ the:-1
%~ w:-3
%~ with:6
%~=:-5
%~A:4
%~F:-5
%~K:-6
%~W:-4
%~X:1
0%:-6
00:-5
0:4
0<:-2
0>:-2
0A:-1
0B:-1
0C:5
0F:-1
0I:2
0K:-8
0L:-1
0M:3
0N:4
0S:-4
0W:4
0X:-5
0b:-3
0d:-3
0l:-2
0r:-2
0t:-6
0v:-7
0w:-5
0~ =:-8
0~ ?:2
0~ a:-11
0~ after:2
0~ all:3
0~ and:-1
0~ are:3
0~ as:6
0~ at:-1
0~ b:-8
0~ bar:-4
0~ bars:-5
0~ batch:-3
0~ because:8
0~ before:3
0~ big:-4
0~ both:-4
0~ bottl:-6
0~ bucket:-4
0~ but:-5
0~ by:1
0~ c:-4
0~ cakes:-2
0~ can:-8
0~ caviti:-5
0~ children:-6
0~ comment:-3
0~ cut:3
0~ degre:-4
0~ drops:-7
0~ empty:1
0~ evening:-3
0~ except:5
0~ famili:-7
0~ fat:-2
0~ fats:-10
0~ for:-9
0~ from:4
0~ full:-6
0~ gives:-6
0~ goats:-9
0~ goes:-2
0~ group:-5
0~ guest:-4
0~ had:-10
0~ i:6
0~ if:-3
0~ in:-3
0~ into:4
0~ is:2
0~ it:-2
0~ its:-1
0~ ive:1
0~ jars:-2
0~ kitchen:-5
0~ lather:-4
0~ left:-7
0~ like:-3
0~ little:-8
0~ loaf:-3
0~ lyes:-7
0~ made:-7
0~ more:-7
0~ mould:1
0~ my:6
0~ n:-2
0~ night:-4
0~ no:4
0~ not:5
0~ now:1
0~ of:2
0~ off:-1
0~ oil:-6
0~ oils:-5
0~ on:7
0~ once:2
0~ one:-4
0~ or:4
0~ out:2
0~ p:-7
0~ pcs:-5
0~ people:-7
0~ per:-5
0~ percent:5
0~ piec:-6
0~ please:8
0~ plus:2
0~ pots:2
0~ pour:-5
0~ pupil:-2
0~ right:-3
0~ scal:-7
0~ she:-1
0~ silicone:-2
0~ since:3
0~ slic:-6
0~ small:-7
0~ so:-7
0~ someth:1
0~ spoon:1
0~ still:-9
0~ superfat:7
0~ that:-2
0~ thats:3
0~ the:4
0~ then:4
0~ there:1
0~ thing:-7
0~ this:2
0~ times:-2
0~ tins:-3
0~ to:1
0~ together:3
0~ towel:-7
0~ until:-7
0~ w:7
0~ was:-3
0~ weigh:-4
0~ went:4
0~ were:1
0~ when:6
0~ which:-2
0~ winter:-2
0~ with:-8
0~ without:-6
0~ x:1
0~ zap:-5
0~ ×:-7
0~0:-2
0~=:-7
0~A:-6
0~F:-4
0~N:-2
0~S:2
0~W:-4
0~X:4
0~b:-11
0~t:-5
0~w:-3
<%:1
<0:-2
<:4
<<:-5
<=:-5
<>:-3
<A:5
<C:4
<F:1
<I:-8
<K:8
<L:4
<N:-2
<S:-2
<W:-5
<X:1
<d:-5
<l:-7
<t:-1
<v:-3
<w:-7
<~ +:-6
<~ and:5
<~ because:2
<~ i:-5
<~ in:-3
<~ is:1
<~ less:-2
<~ more:8
<~ of:1
<~ plain:-7
<~ short:4
<~ so:-1
<~ the:6
<~ with:-7
<~A:-1
<~C:4
<~F:3
<~I:-5
<~L:-3
<~S:-2
<~W:-5
<~X:-5
=%:-11
=0:5
=:-4
=<:-5
==:-3
=>:-3
=A:-2
=F:-4
=I:-2
=K:-1
=L:-1
=N:4
=S:-1
=W:-2
=X:-2
=b:-4
=d:-1
=r:-5
=t:-3
=v:-6
=w:-4
=~ +:-5
=~ ::3
=~ =:-8
=~ after:-1
=~ all:-4
=~ and:-7
=~ as:2
=~ at:-3
=~ bag:-8
=~ block:-7
=~ both:-4
=~ by:-1
=~ can:-7
=~ check:-2
=~ clean:-3
=~ cold:-1
=~ did:-1
=~ dissolv:-5
=~ does:-2
=~ for:-4
=~ free:-7
=~ from:-3
=~ goes:-2
=~ good:-1
=~ he:-6
=~ i:-7
=~ im:-6
=~ in:-3
=~ into:-6
=~ is:-1
=~ it:-7
=~ its:1
=~ last:-4
=~ melt:-5
=~ mk:-5
=~ my:2
=~ no:-7
=~ not:-11
=~ of:-3
=~ ok:-2
=~ on:3
=~ out:-5
=~ plain:-4
=~ please:-3
=~ plus:3
=~ smell:-1
=~ so:-6
=~ soap:-1
=~ superfat:-7
=~ that:-7
=~ then:-4
=~ too:-2
=~ tub:-6
=~ weigh:-8
=~ went:-7
=~ what:-3
=~ with:3
=~ would:-1
=~%:-6
=~0:6
=~<:-5
=~=:-2
=~>:-1
=~A:-3
=~F:-3
=~L:-3
=~W:-3
=~X:-3
=~t:-2
>%:-5
>0:-7
>:-3
><:-3
>=:-3
>>:-6
>A:-2
>F:-3
>K:-5
>L:-1
>W:-5
>e:-10
>l:-5
>t:-2
>w:-7
>~ ::-1
>~ and:-1
>~ i:-6
>~ in:-5
>~ is:-7
>~ of:-6
>~ oils:-1
>~ so:-7
>~ the:-5
>~ tub:-5
>~ with:-3
>~A:-4
>~F:4
>~L:-5
>~W:-6
A%:4
A0:4
A=:-3
A>:-1
AA:1
AB:5
AC:-8
AF:3
AI:-6
AK:-6
AL:1
AN:-7
AS:-2
AW:-2
AX:-1
Ae:1
Al:-8
Ar:-8
At:-4
Av:1
Aw:-3
A~ +:-1
A~ ::5
A~ =:2
A~ ?:-7
A~ a:-6
A~ about:-4
A~ already:3
A~ alright:-5
A~ and:-2
A~ as:7
A~ at:-4
A~ bag:2
A~ be:-2
A~ because:-1
A~ before:-6
A~ but:-2
A~ by:-1
A~ came:-5
A~ can:-1
A~ check:-7
A~ comes:4
A~ cool:2
A~ correct:-8
A~ dissolv:-1
A~ do:-1
A~ does:-7
A~ down:3
A~ enough:-3
A~ figure:3
A~ fine:-4
A~ fit:-5
A~ fits:-4
A~ from:7
A~ g:-8
A~ gets:-6
A~ goes:-9
A~ good:-6
A~ got:8
A~ had:3
A~ half:-5
A~ has:6
A~ heavy:1
A~ here:6
A~ i:4
A~ if:5
A~ in:-1
A~ into:-5
A~ is:5
A~ it:5
A~ its:5
A~ ive:2
A~ jug:-3
A~ left:-7
A~ like:-4
A~ looks:-5
A~ never:-6
A~ no:-8
A~ not:5
A~ number:-2
A~ of:2
A~ ok:-6
A~ okay:-4
A~ on:-7
A~ one:-6
A~ only:2
A~ or:-4
A~ over:-8
A~ paste:3
A~ per:3
A~ please:-7
A~ pls:-4
A~ pot:6
A~ ready:-6
A~ real:-7
A~ right:-5
A~ row:-2
A~ sane:-5
A~ says:1
A~ sensible:-4
A~ she:-7
A~ slow:-7
A~ so:2
A~ soap:-3
A~ sprinkl:-4
A~ still:-10
A~ that:-8
A~ the:-3
A~ then:-4
A~ there:1
A~ to:-1
A~ too:-10
A~ tub:4
A~ up:5
A~ was:-1
A~ weigh:7
A~ went:1
A~ when:1
A~ where:3
A~ with:-1
A~ wrong:-5
A~ you:4
A~%:-6
A~0:1
A~<:2
A~=:-2
A~>:-6
A~A:-5
A~F:-7
A~L:3
A~d:-4
A~e:-3
A~r:-6
A~t:5
A~v:-3
B0:-4
B:3
BF:3
B~ and:-8
B~ in:-2
B~ so:-6
C%:-7
C:6
CA:5
CW:1
Cv:5
Cw:1
C~ at:4
C~ in:3
C~ is:-5
C~%:-7
C~<:-4
F%:2
F:1
F<:4
F=:-3
F>:-1
FA:-2
FB:6
FF:-1
FI:-5
FK:-5
FN:6
FS:-10
FT:-5
FU:3
FX:2
Fb:2
Fd:-3
Fe:1
Fl:-6
Fr:6
Ft:-3
Fv:-7
Fw:2
F~ +:2
F~ ::1
F~ =:3
F~ ?:-12
F~ a:1
F~ about:-1
F~ add:3
F~ after:3
F~ again:2
F~ all:1
F~ alone:-4
F~ altogether:-2
F~ are:3
F~ as:4
F~ at:2
F~ back:7
F~ bar:-5
F~ bars:-11
F~ batch:-7
F~ because:6
F~ beef:-5
F~ before:-4
F~ block:-3
F~ bottle:-7
F~ but:-4
F~ by:-2
F~ came:2
F~ can:-5
F~ clean:-3
F~ cold:-6
F~ comes:-11
F~ cook:-4
F~ could:1
F~ count:-8
F~ does:-6
F~ down:8
F~ extra:5
F~ figure:2
F~ fills:-7
F~ first:-8
F~ for:-4
F~ from:-6
F~ g:-7
F~ gent:-5
F~ gives:-8
F~ go:-2
F~ goes:-10
F~ gone:-3
F~ good:1
F~ got:8
F~ grams:-6
F~ had:-2
F~ half:-2
F~ has:-5
F~ here:4
F~ i'd:3
F~ i:2
F~ if:-8
F~ im:7
F~ in:-1
F~ instead:4
F~ into:-3
F~ it:5
F~ its:2
F~ ive:7
F~ jar:-3
F~ jug:2
F~ keeps:-7
F~ l:-3
F~ last:-9
F~ left:1
F~ like:2
F~ line:8
F~ look:3
F~ looks:-4
F~ makes:-4
F~ melt:-10
F~ melts:-6
F~ my:3
F~ myself:-4
F~ n:3
F~ needs:-5
F~ never:10
F~ next:-6
F~ no:-8
F~ not:3
F~ noth:-7
F~ now:7
F~ on:-5
F~ once:-9
F~ one:-10
F~ only:2
F~ or:-7
F~ out:3
F~ over:-5
F~ oyl:-4
F~ packet:7
F~ paste:-7
F~ plus:1
F~ put:-5
F~ ran:1
F~ read:1
F~ real:-6
F~ render:-6
F~ right:-6
F~ rspo:-7
F~ says:-3
F~ second:-2
F~ sets:-3
F~ should:1
F~ since:2
F~ smell:-10
F~ so:5
F~ soap:-5
F~ soaps:-7
F~ stand:1
F~ stay:9
F~ stays:-2
F~ still:4
F~ stirr:-2
F~ strain:4
F~ stuck:2
F~ takes:-8
F~ than:1
F~ that:-6
F~ the:-3
F~ then:-1
F~ there:5
F~ thicken:-8
F~ this:-1
F~ through:-6
F~ tin:-2
F~ to:4
F~ together:2
F~ too:-4
F~ trac:-9
F~ tub:-4
F~ turn:7
F~ twice:4
F~ until:6
F~ up:1
F~ used:-5
F~ w:2
F~ warm:-5
F~ was:-1
F~ weigh:-4
F~ went:-2
F~ were:-2
F~ when:-1
F~ which:-1
F~ while:3
F~ will:-7
F~ would:3
F~ wouldnt:-2
F~ you:4
F~%:1
F~0:4
F~<:2
F~=:-2
F~>:-1
F~A:-3
F~F:-4
F~N:7
F~W:-1
F~d:-3
F~e:-1
F~t:-9
F~v:-1
I0:3
I:3
IA:-2
II:2
IL:3
Ib:-6
Id:4
Iw:-6
I~ +:-3
I~ ::3
I~ and:-2
I~ bath:-1
I~ first:-8
I~ had:7
I~ in:-11
I~ is:-2
I~ it:5
I~ round:-8
I~ so:-7
I~ tray:2
I~ was:6
I~<:1
K%:-6
K0:-9
K:2
K<:1
K=:-1
K>:-7
KA:-6
KF:-6
KL:-3
KW:-3
Kd:-5
Kr:3
Kt:-3
K~ ::-5
K~ and:-4
K~ at:-2
K~ g:-6
K~ half:-2
K~ in:-2
K~ into:5
K~ is:4
K~ mixed:5
K~ my:-9
K~ of:-5
K~ on:5
K~ was:-2
K~%:-8
K~>:-7
K~r:-1
L:2
L<:-6
L=:-1
L>:4
LA:-5
LF:-1
LI:4
LL:3
LN:3
LS:4
LU:-4
LW:3
LX:-4
Lb:1
Le:2
Ll:-5
Lt:-3
Lv:-5
Lw:-1
L~ ::1
L~ ?:-4
L~ a:1
L~ after:-3
L~ and:-1
L~ as:4
L~ at:-1
L~ bar:-6
L~ bars:-4
L~ batch:-6
L~ because:1
L~ boil:3
L~ by:-2
L~ cold:-1
L~ flat:3
L~ for:-1
L~ from:11
L~ frozen:-7
L~ goes:-6
L~ i:-1
L~ in:-2
L~ instead:-11
L~ into:-1
L~ it:-2
L~ no:-9
L~ of:7
L~ on:5
L~ out:7
L~ over:3
L~ pot:-6
L~ same:8
L~ so:1
L~ soap:-7
L~ stage:-3
L~ straight:-2
L~ thaw:-5
L~ the:3
L~ to:1
L~ towel:1
L~ was:4
L~ went:3
L~ which:5
L~ with:5
L~0:-3
L~=:-1
L~>:-1
L~X:-4
L~b:9
L~l:-9
L~t:-3
L~w:1
M0:3
M:3
MA:4
M~ and:-5
M~ in:4
M~ is:2
M~ soap:-10
M~ was:1
N0:2
N:10
N<:-2
NA:-4
NF:-1
NL:2
NN:-2
Nb:4
Nl:1
Nt:-8
Nw:4
N~ after:-1
N~ and:-9
N~ at:-4
N~ because:2
N~ from:12
N~ i:9
N~ if:2
N~ in:1
N~ instead:-1
N~ is:-2
N~ it:11
N~ or:-7
N~ same:9
N~ since:8
N~ that:-2
N~ the:6
N~ to:4
N~ was:-7
N~ where:7
N~ which:1
N~ would:-6
N~N:-3
S%:-8
S0:-5
S:-5
S<:-3
SA:-5
SF:-2
SL:-4
SN:9
SS:-5
SX:-3
Sd:-1
St:-5
Sv:-5
Sw:-4
S~ ::-4
S~ a:-6
S~ and:2
S~ as:-1
S~ at:-6
S~ because:3
S~ blend:-4
S~ fades:-4
S~ for:-7
S~ from:-7
S~ goes:-5
S~ i:-6
S~ in:1
S~ is:6
S~ leav:-6
S~ mould:-6
S~ no:-2
S~ once:-2
S~ only:3
S~ pour:-2
S~ powder:-5
S~ smell:-5
S~ spots:-7
S~ the:-6
S~ then:-5
S~ was:2
S~ when:-5
S~ which:-5
S~0:-4
S~<:-3
S~S:-3
S~w:-3
T%:-5
T0:-2
T:-8
T=:-2
TF:-3
T~ of:-6
T~ oils:-3
U0:-1
U:6
UF:2
Ut:-2
U~ i:-7
U~ in:2
U~ look:-1
U~ stage:-3
W%:-7
W0:7
W:1
W<:4
W=:-3
W>:-4
WA:-1
WF:-4
WI:-2
WL:5
WS:-2
WW:3
WX:1
Wb:2
Wd:-4
We:-3
Wl:-2
Wt:-1
Wv:-7
Ww:-1
W~ +:-2
W~ =:-6
W~ ?:-9
W~ a:6
W~ after:-5
W~ all:-2
W~ and:-3
W~ as:4
W~ at:2
W~ because:5
W~ before:3
W~ boil:-2
W~ but:1
W~ by:-3
W~ clear:-5
W~ does:-5
W~ down:3
W~ first:-4
W~ for:-4
W~ from:-7
W~ g:-8
W~ got:-2
W~ here:-4
W~ i:6
W~ in:-3
W~ into:-7
W~ is:1
W~ it:3
W~ let:-3
W~ like:1
W~ looks:-5
W~ makes:-8
W~ never:-4
W~ no:3
W~ on:-9
W~ only:-7
W~ or:6
W~ out:-8
W~ outdoor:-1
W~ since:-1
W~ so:-2
W~ that:-4
W~ the:2
W~ then:-1
W~ to:-9
W~ too:8
W~ was:7
W~ weigh:-4
W~ went:3
W~ when:7
W~ which:3
W~ would:-5
W~0:2
W~=:-3
W~A:-4
W~e:-1
W~r:-6
W~t:-2
W~v:-5
X%:2
X:-2
X=:-7
X>:-2
XA:-4
XC:-7
XF:-3
XL:3
XN:8
XS:-2
XW:2
XX:-1
Xb:1
Xl:4
Xt:-3
Xv:-4
Xw:-1
X~ ::-1
X~ ?:-6
X~ a:-6
X~ at:-7
X~ bar:2
X~ bars:-7
X~ came:-5
X~ dissolv:-9
X~ fine:-3
X~ from:-7
X~ goes:-3
X~ ground:-7
X~ i:3
X~ in:-1
X~ is:-6
X~ it:-6
X~ no:-5
X~ of:-10
X~ on:-1
X~ so:-4
X~ the:-5
X~ this:4
X~ to:-10
X~ was:3
X~ went:1
X~0:2
X~<:-6
X~W:-4
X~v:-4
X~w:-5
^ *:-7
^ ::4
^ =:-6
^ about:10
^ add:1
^ added:8
^ after:1
^ all:1
^ also:-4
^ alway:3
^ am:-4
^ an:5
^ and:-7
^ answer:-1
^ any:-6
^ anyone:-9
^ anyth:-4
^ are:-2
^ as:4
^ ask:-9
^ at:-1
^ attempt:-5
^ aunt:1
^ b:-7
^ back:-6
^ bar:-5
^ bars:-8
^ base:-4
^ basic:-4
^ batch:-10
^ be:-7
^ because:-1
^ been:-7
^ before:-8
^ between:8
^ big:-8
^ bit:3
^ blend:-7
^ blender:-7
^ blue:-5
^ boil:3
^ bonjour:-4
^ bonsoir:-4
^ book:-9
^ both:-7
^ bottle:9
^ bought:-6
^ box:-4
^ bring:-2
^ bubbl:-5
^ but:-11
^ butcher:-5
^ by:-4
^ c:-5
^ came:1
^ can:-1
^ castile:-6
^ chang:3
^ check:-10
^ christma:-4
^ ciao:-4
^ clean:-1
^ clear:2
^ cold:-3
^ combine:-3
^ comes:-5
^ comment:-4
^ confetti:-4
^ cook:-3
^ cool:-3
^ copi:-4
^ correct:1
^ correction:9
^ cost:-9
^ could:-3
^ couldnt:8
^ cover:-6
^ crock:-3
^ crockpot:-5
^ cup:-6
^ cure:-4
^ cured:-5
^ cut:-3
^ d:-5
^ dad:2
^ dads:-6
^ date:-2
^ day:-8
^ dear:2
^ did:-4
^ didnt:1
^ dissolv:-4
^ dissolve:-2
^ do:-7
^ does:-3
^ dog:4
^ done:-4
^ dont:-12
^ doubl:3
^ dropp:-1
^ e:-4
^ each:1
^ earlier:-7
^ empty:-9
^ ended:2
^ enough:-6
^ entry:1
^ even:-2
^ every:-6
^ everyone:-7
^ everyth:3
^ expect:-7
^ export:-4
^ f:-6
^ fat:-7
^ fats:-12
^ fill:-6
^ fills:-4
^ final:1
^ fine:-3
^ first:-2
^ for:4
^ forgot:-3
^ found:7
^ freeze:-5
^ friend:-3
^ from:-3
^ g:-6
^ gave:-5
^ gel:-8
^ gell:3
^ give:-7
^ glov:-4
^ goat:-7
^ goes:-4
^ goggl:-5
^ going:-1
^ gonna:5
^ good:-4
^ got:-6
^ grams:-6
^ gran:2
^ grandad:-2
^ grandma:-6
^ grandmother:-1
^ grandpa:3
^ granny:-5
^ grans:-1
^ grat:-7
^ greeting:-6
^ had:2
^ half:2
^ hallo:-4
^ hand:3
^ handout:-6
^ hard:-5
^ has:-5
^ have:-6
^ he:-9
^ heat:-9
^ hello:-3
^ help:4
^ her:2
^ here:-10
^ heres:-7
^ hers:-6
^ hes:4
^ hey:-5
^ hi:-2
^ his:-6
^ hiya:1
^ hola:-2
^ hope:4
^ hot:1
^ how:-9
^ hows:-6
^ hp:-4
^ hubby:4
^ i'd:5
^ i:-1
^ if:-10
^ ignore:1
^ ill:1
^ im:3
^ in:-5
^ ingredient:-3
^ instead:9
^ into:-3
^ is:-6
^ it:3
^ item:-3
^ itll:-2
^ its:-4
^ ive:-5
^ jug:5
^ keep:4
^ kids:-7
^ kind:-1
^ knock:1
^ label:-10
^ last:-6
^ lather:-5
^ laundry:-5
^ leave:-3
^ left:-2
^ leftover:-8
^ let:-1
^ lid:2
^ like:-2
^ line:-4
^ liquid:-4
^ list:-7
^ log:-5
^ lol:-6
^ long:-1
^ look:-5
^ looks:-3
^ lost:-6
^ lot:-5
^ love:-3
^ lye's:6
^ m:-5
^ ma:-8
^ made:3
^ make:6
^ makes:-2
^ many:-2
^ market:-5
^ me:5
^ meanwhile:-1
^ melt:-1
^ method:2
^ mind:-1
^ mine:-5
^ mines:3
^ mix:-9
^ mixed:-2
^ mold:-6
^ morn:-5
^ mould:-6
^ mum:-9
^ mums:4
^ must:-4
^ my:-3
^ n:-8
^ namaste:-4
^ name:-3
^ nb:2
^ need:-5
^ neighbour:2
^ nephew:2
^ never:-4
^ new:-3
^ next:-11
^ nice:-6
^ no:5
^ nobody:-3
^ none:-7
^ not:1
^ note:-2
^ notebook:-6
^ notes:-1
^ noth:-12
^ number:-2
^ o:-5
^ oat:-4
^ oh:1
^ oil:-6
^ oils:-3
^ ok:-3
^ okay:-4
^ old:-3
^ on:-6
^ once:-2
^ only:2
^ open:-1
^ or:-4
^ order:1
^ other:-5
^ our:-3
^ ours:-6
^ out:1
^ outside:-6
^ oven:-3
^ oz:-6
^ page:-4
^ paid:-1
^ passt:-3
^ past:-4
^ paste:1
^ people:-5
^ per:2
^ ph:-5
^ phase:-3
^ phone:-4
^ photo:-10
^ plain:-6
^ plan:-4
^ plann:-5
^ please:2
^ pls:-7
^ plus:-8
^ post:5
^ pot:6
^ pour:-1
^ prep:-2
^ press:-5
^ pretty:-1
^ print:-9
^ proces:-6
^ ps:3
^ pull:5
^ purity:5
^ put:-3
^ q:-6
^ question:-7
^ quick:-4
^ rain:4
^ ran:5
^ re:-4
^ read:3
^ reader:3
^ ready:-4
^ recipe:-6
^ remark:-7
^ render:-3
^ replac:-2
^ reply:-2
^ rest:-4
^ result:-6
^ right:-5
^ room:-5
^ row:2
^ safe:-4
^ sanity:-5
^ sat:-3
^ scal:3
^ scale:8
^ scoop:-5
^ scrap:5
^ second:2
^ sells:-4
^ set:-6
^ sf:-1
^ shav:-3
^ shave:-3
^ she:-6
^ shed:-5
^ shes:-3
^ should:-6
^ since:4
^ sis:2
^ sister:-1
^ slow:-4
^ smell:-8
^ snow:2
^ so:-5
^ soap:-7
^ soft:-3
^ sold:-10
^ some:2
^ someone:-3
^ somewhere:2
^ sorry:-1
^ sound:-4
^ source:6
^ spill:-1
^ split:2
^ spoon:-3
^ sry:-8
^ stamp:-7
^ start:-8
^ step:1
^ stick:-6
^ still:-3
^ stir:-4
^ stirr:-4
^ straight:-6
^ strain:2
^ student:2
^ subject:-3
^ sum:-4
^ sunday:-10
^ superfat:2
^ swap:3
^ swapp:3
^ swirl:-6
^ switch:-4
^ take:-4
^ tare:2
^ teacher:2
^ tell:-8
^ test:-5
^ text:-5
^ thank:-6
^ that:2
^ thats:-2
^ the:-2
^ then:-4
^ ther:-6
^ there:-2
^ these:-2
^ they:-9
^ theyre:-6
^ third:-2
^ this:2
^ those:3
^ thought:-2
^ threw:6
^ thx:-4
^ tip:-5
^ title:-4
^ to:1
^ today:1
^ tonight:-3
^ too:-2
^ took:1
^ total:-4
^ towel:-4
^ trac:2
^ trace:-4
^ translat:-2
^ tried:-4
^ try:-3
^ tub:-8
^ turn:-3
^ unit:-3
^ unmould:-5
^ update:1
^ use:2
^ used:3
^ using:-7
^ version:-11
^ very:-7
^ wait:3
^ want:2
^ warm:-6
^ was:-4
^ wash:-7
^ we:1
^ week:-4
^ weekend:-5
^ weigh:-7
^ weight:-8
^ well:-3
^ went:2
^ were:5
^ weve:-6
^ what:-8
^ whats:-5
^ when:-8
^ where:-1
^ which:-7
^ while:-1
^ who:-6
^ whoever:-5
^ whole:4
^ whos:-3
^ why:-8
^ will:-4
^ with:-5
^ work:-3
^ worksheet:-4
^ workshop:-4
^ would:-2
^ wrapp:-7
^ write:2
^ written:4
^ wrote:-5
^ x:-9
^ years:4
^ yes:-9
^ yesterday:-6
^ yield:-1
^ you:-7
^ youll:2
^ zap:-4
^ zutat:-4
^%:-6
^0:-5
^<:-1
^=:-6
^>:-11
^C:-14
^I:-2
^K:-4
^M:2
^N:2
^S:-9
^T:-5
^U:2
^X:-4
^d:-4
^e:-9
^l:7
^r:4
^t:1
^w:-2
any:-2
b%:-2
b0:3
b:3
bA:2
bF:-5
bL:9
bN:6
bW:8
bb:-4
bt:-5
b~ ::-1
b~ ?:5
b~ a:-6
b~ after:-7
b~ all:-5
b~ and:-7
b~ as:-5
b~ bars:-6
b~ because:-2
b~ before:2
b~ but:6
b~ by:7
b~ fine:-3
b~ for:6
b~ i:3
b~ if:5
b~ in:-1
b~ is:6
b~ it:2
b~ look:-3
b~ my:3
b~ not:-5
b~ of:1
b~ ok:-7
b~ on:-5
b~ or:7
b~ right:-8
b~ still:3
b~ the:6
b~ then:6
b~ was:5
b~ x:-7
b~0:-8
b~L:1
b~b:-1
d%:-4
d0:-8
d:-6
d=:-2
dA:-5
dF:-8
dI:-7
dK:-5
dL:-7
dW:-1
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
d~ for:-5
d~ here:-3
d~ in:-4
d~ it:-7
d~ no:-5
d~ oils:-1
d~ on:-5
d~ or:-2
d~ pour:-2
d~ so:-7
d~ stirr:-2
d~ the:-6
d~ then:-6
d~ trace:-1
d~ when:-7
d~A:-6
d~F:-5
d~t:-1
e%:-5
e0:3
e:4
e=:-1
e>:-4
eA:-1
eF:-2
eL:1
eN:8
eW:-3
eX:4
ee:-6
et:3
e~ +:4
e~ all:2
e~ and:-3
e~ as:4
e~ but:12
e~ for:-3
e~ g:-11
e~ grams:-6
e~ in:9
e~ is:5
e~ minus:8
e~ not:-2
e~ of:2
e~ on:-2
e~ or:8
e~ was:11
e~ with:9
e~A:-2
e~F:-3
e~W:-3
l%:-5
l0:4
l:-3
l=:-7
l>:-4
lA:1
lF:-8
lL:-3
lN:-2
lW:-5
lX:-5
ll:-5
long:1
lv:-7
lw:-4
l~ and:-7
l~ as:-8
l~ but:1
l~ by:-6
l~ for:2
l~ goes:-7
l~ i:-7
l~ in:-7
l~ is:-2
l~ of:-1
l~ right:-3
l~ the:-6
l~ was:-7
l~ went:3
l~L:1
l~t:-6
no figure:-5
no name:-6
r%:-8
r0:1
r:3
r=:-8
r>:-5
rA:2
rF:9
rK:2
rW:-2
rt:-6
r~ as:-11
r~ by:2
r~ the:-1
r~F:3
r~K:2
short:-7
t%:-5
t0:-2
t:-5
t<:8
t=:-3
t>:-1
tA:1
tF:-5
tK:-3
tL:-4
tN:-2
tS:-2
tU:-6
tX:-5
tb:-2
td:-1
te:-9
tl:-8
tt:-2
tv:-2
tw:-3
t~ ::2
t~ =:-6
t~ ?:-7
t~ a:-5
t~ add:4
t~ added:1
t~ after:-7
t~ ago:-7
t~ all:-7
t~ and:-2
t~ at:-4
t~ because:-8
t~ before:3
t~ blend:-3
t~ both:-3
t~ but:1
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
t~ flat:-4
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
t~ later:-9
t~ lid:-7
t~ lined:-1
t~ loaf:-3
t~ long:-2
t~ makes:-1
t~ mash:-2
t~ melt:-2
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
t~ paste:-7
t~ pot:2
t~ pour:-4
t~ ready:-4
t~ rest:-8
t~ since:-5
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
t~ try:-2
t~ under:-1
t~ unmould:-4
t~ until:-4
t~ used:-3
t~ wait:-3
t~ was:-6
t~ we:-6
t~ weigh:-2
t~ when:-5
t~ which:-1
t~ yes:2
t~ zap:-1
t~0:-1
t~=:-2
t~A:-5
t~F:-3
t~K:-2
t~L:-2
t~S:-2
t~U:-4
t~W:1
t~X:-6
t~b:-5
t~d:-2
t~t:-5
v0:-4
v:1
v=:2
vA:4
vC:2
vF:-4
vK:6
vL:3
vN:7
vS:-3
vW:6
vX:-4
vb:-2
vd:-1
vl:-6
vt:3
vv:3
vw:1
v~ a:-4
v~ and:1
v~ at:-3
v~ bottle:-1
v~ can:-11
v~ for:-5
v~ i:1
v~ in:-3
v~ is:-7
v~ of:3
v~ one:-4
v~ or:-2
v~ pot:-10
v~ so:-1
v~ to:6
v~C:4
v~S:-1
v~W:2
v~X:-2
w%:-5
w0:2
w:-1
w<:-13
w=:-6
w>:4
wA:-1
wC:7
wI:-4
wL:-3
wN:1
wS:-5
wW:-3
wX:2
wb:2
wd:6
wl:-13
wt:-10
wv:-1
w~ ::-8
w~ a:2
w~ after:-8
w~ and:-1
w~ as:-6
w~ at:-6
w~ before:-8
w~ cubes:-6
w~ dissolv:3
w~ empty:-1
w~ for:-2
w~ fresh:-7
w~ from:-10
w~ frozen:-3
w~ goes:-10
w~ in:-3
w~ instead:-12
w~ into:-8
w~ is:-2
w~ left:-6
w~ loaf:-3
w~ more:-2
w~ mould:4
w~ no:-1
w~ of:1
w~ on:-3
w~ one:-2
w~ or:-4
w~ out:-8
w~ per:3
w~ so:-2
w~ steps:-1
w~ the:-7
w~ to:-5
w~ together:-9
w~ too:2
w~ was:6
w~ went:1
w~ wet:-7
w~ with:-8
w~0:1
w~C:3
w~I:2
w~L:-9
w~S:-5
w~X:-6
w~w:-3`;
