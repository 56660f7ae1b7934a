/** What each sign of a note weighs for its bearing on the pot and against it, in tenths of a logit: learned, `npm run generate:bearing`. */
export const weights = ` *:-6
 *~A:-7
 *~F:-3
 +:2
 +~ a:-6
 +~0:5
 +~<:-1
 +~=:-4
 +~A:-6
 +~F:-7
 +~W:-7
 .:7
 .~%:5
 .~0:4
 ::1
 :~ a:4
 :~ about:-5
 :~ all:6
 :~ as:-2
 :~ do:-1
 :~ does:-2
 :~ g:-3
 :~ goggl:-7
 :~ good:-5
 :~ half:7
 :~ i'd:5
 :~ i:6
 :~ in:3
 :~ is:-7
 :~ it:2
 :~ its:-1
 :~ ive:2
 :~ kitchen:1
 :~ me:-7
 :~ melt:-9
 :~ no:2
 :~ none:5
 :~ one:-6
 :~ re:-3
 :~ soap:-6
 :~ too:2
 :~ was:-5
 :~ what:3
 :~ why:-3
 :~ winter:-2
 :~ with:1
 :~ yes:4
 :~%:-6
 :~0:-6
 :~<:-2
 :~=:-5
 :~>:-8
 :~A:-1
 :~F:1
 :~L:-2
 :~N:3
 :~S:-4
 :~T:-3
 :~W:-3
 :~X:-2
 :~b:-6
 :~d:-4
 :~l:-8
 :~t:-5
 :~v:-5
 :~w:4
 =:-2
 =~ =:-6
 =~0:-5
 =~=:-5
 =~>:-2
 =~F:-1
 =~l:-7
 ?:-3
 a:-2
 about:-2
 about~ a:5
 about~ an:-5
 about~ it:-2
 about~ right:-3
 about~ superfat:-7
 about~ the:4
 about~ to:-5
 about~%:-4
 about~0:-3
 about~<:5
 about~>:-7
 about~F:-6
 about~b:3
 about~d:-2
 about~t:-6
 about~v:3
 about~w:3
 above:3
 above~ is:3
 above~d:-6
 abt:-9
 accident:4
 accord:6
 accord~ to:6
 account:6
 acros:5
 acros~ the:7
 actual:9
 actual~N:6
 add:1
 added:7
 added~ a:1
 added~ it:3
 added~ the:2
 added~ to:-9
 added~<:-7
 added~=:-9
 added~v:7
 added~w:3
 adds:-11
 adds~ up:-9
 add~ a:1
 add~ it:-7
 add~ the:-6
 add~ to:2
 add~<:-5
 add~=:-4
 add~F:2
 add~w:-6
 advice:2
 afresh:-6
 after:1
 afternoon:2
 afterward:2
 after~ a:-2
 after~ an:2
 after~ christma:-5
 after~ cook:3
 after~ cure:-2
 after~ i:2
 after~ it:8
 after~ last:1
 after~ pour:4
 after~ strain:2
 after~ that:-6
 after~ the:-1
 after~ this:-8
 after~0:-7
 after~t:-5
 again:-1
 against:2
 against~ the:5
 again~ ::3
 again~ ?:4
 again~ after:-3
 again~ and:-9
 again~ at:-3
 again~ for:-6
 again~ with:6
 age:-8
 ages:-2
 ages~ to:-2
 ago:-9
 agre:-5
 agree:-7
 agree~ with:-4
 ahead:1
 aim:5
 aim~ for:7
 air:-4
 air~ cupboard:-1
 aisle:3
 aleppo:-5
 alike:8
 alkali:-7
 all:1
 allergen:-7
 allergic:8
 allergic~ to:-10
 allergy:7
 allotment:-4
 allow:-5
 all~ ::-4
 all~ ?:-3
 all~ and:5
 all~ at:3
 all~ but:8
 all~ by:-7
 all~ day:-7
 all~ down:8
 all~ fats:-9
 all~ first:1
 all~ g:-9
 all~ good:-7
 all~ grams:-7
 all~ i:4
 all~ in:-9
 all~ is:-8
 all~ its:2
 all~ my:-5
 all~ of:-2
 all~ on:-6
 all~ over:-5
 all~ right:-8
 all~ that:-3
 all~ the:-5
 all~ there:4
 all~ together:-9
 all~ told:-3
 all~ up:-6
 all~ week:2
 all~ weigh:-3
 all~F:4
 all~L:-2
 all~W:1
 all~b:-1
 all~e:7
 almost:2
 alone:-2
 along:9
 along~ with:5
 already:7
 already~ dissolv:6
 already~ in:5
 already~ pour:-5
 already~ put:7
 already~ so:2
 alright:-2
 alright~ for:-5
 also:2
 also~ a:-1
 also~w:6
 alter:2
 although:3
 altogether:-8
 alu:-3
 aluminium:-2
 alway:-2
 alway~ did:-6
 alway~ said:-6
 alway~ with:5
 am:2
 american:-9
 ammonia:-5
 amount:3
 amount~ ?:-4
 amount~ g:-4
 amount~ of:-1
 am~ a:-5
 am~ from:-7
 am~ i:-1
 an:-3
 and~ a:-3
 and~ about:-6
 and~ add:-8
 and~ added:-2
 and~ again:3
 and~ all:6
 and~ an:-7
 and~ another:-10
 and~ asked:-5
 and~ at:-8
 and~ bang:-1
 and~ blend:-5
 and~ both:-1
 and~ by:1
 and~ call:2
 and~ came:-8
 and~ clear:-3
 and~ cook:5
 and~ cool:3
 and~ do:2
 and~ does:-5
 and~ dont:-5
 and~ even:2
 and~ every:-3
 and~ everyth:-2
 and~ fill:4
 and~ for:2
 and~ forgot:-4
 and~ found:4
 and~ gave:2
 and~ give:4
 and~ glov:-2
 and~ go:-1
 and~ goes:-1
 and~ goggl:-2
 and~ got:-11
 and~ half:-7
 and~ hard:-5
 and~ has:1
 and~ have:-5
 and~ he:3
 and~ her:-5
 and~ his:-8
 and~ honest:-8
 and~ how:-7
 and~ i'd:-3
 and~ i:6
 and~ if:2
 and~ im:1
 and~ in:-2
 and~ into:3
 and~ is:-2
 and~ it:-4
 and~ itll:-6
 and~ its:-3
 and~ ive:-1
 and~ keep:-5
 and~ last:-3
 and~ leave:-1
 and~ left:4
 and~ let:-5
 and~ looks:-1
 and~ lost:-7
 and~ me:-3
 and~ melt:-5
 and~ mixed:-3
 and~ neither:5
 and~ never:-1
 and~ no:1
 and~ nobody:-3
 and~ none:4
 and~ noth:-2
 and~ now:1
 and~ of:4
 and~ off:-4
 and~ once:-2
 and~ one:-1
 and~ only:3
 and~ pour:3
 and~ put:5
 and~ said:-5
 and~ says:3
 and~ see:-4
 and~ she:-5
 and~ since:2
 and~ smell:-2
 and~ so:3
 and~ soap:-5
 and~ some:2
 and~ someth:7
 and~ sprinkle:-2
 and~ start:-5
 and~ stay:-6
 and~ still:-2
 and~ stir:1
 and~ stirr:-8
 and~ straight:-7
 and~ strain:-4
 and~ stuck:6
 and~ swear:-7
 and~ tell:-4
 and~ that:7
 and~ thats:-1
 and~ the:-3
 and~ then:4
 and~ ther:7
 and~ there:4
 and~ they:-6
 and~ this:4
 and~ those:1
 and~ tipp:9
 and~ to:-4
 and~ together:1
 and~ took:9
 and~ turn:-3
 and~ use:3
 and~ used:3
 and~ wait:-3
 and~ want:-5
 and~ wants:-4
 and~ warm:-1
 and~ was:4
 and~ we:2
 and~ weigh:2
 and~ went:-4
 and~ what:1
 and~ when:-3
 and~ whether:-6
 and~ white:-5
 and~ will:-3
 and~ with:-2
 and~ would:-7
 and~ yes:-2
 and~%:-4
 and~0:2
 and~<:1
 and~=:-4
 and~>:-1
 and~A:-3
 and~F:-4
 and~L:-6
 and~N:6
 and~S:-5
 and~W:1
 and~X:1
 and~b:-10
 and~e:-1
 and~l:-7
 and~t:-6
 and~v:5
 and~w:-2
 another:4
 another~ day:-6
 another~0:10
 another~<:7
 another~t:-6
 another~v:-3
 another~w:-7
 answer:-4
 answer~ ::-6
 answer~ is:-2
 answer~ the:3
 any:-2
 anybody:1
 anyhow:-3
 anyone:-7
 anyone~ know:2
 anyone~ tried:-5
 anyth:-5
 anyth~ else:-1
 anyth~ in:-3
 anyth~ off:-4
 anyth~ wrong:-4
 anyway:-5
 anywhere~ near:-7
 any~ more:1
 any~A:-5
 any~F:-1
 any~S:-7
 an~ earlier:-7
 an~ envelope:-4
 an~ extra:5
 an~ eye:-2
 an~ hour:-7
 an~ old:-5
 an~ older:-1
 an~I:-8
 an~L:4
 apart:-9
 approx:2
 app~ puts:-4
 april:-1
 apron:-6
 are:-2
 arent:1
 are~ a:-2
 are~ dry:4
 are~ for:3
 are~ from:-8
 are~ full:-1
 are~ in:-6
 are~ no:-4
 are~ not:-6
 are~ now:1
 are~ right:-3
 are~ still:-9
 are~ the:-3
 are~ what:-1
 are~0:2
 are~=:-3
 are~F:-3
 argu:-8
 arithmetic:-8
 arm:-7
 around:-4
 around~ the:-5
 around~%:1
 around~0:-4
 around~d:-4
 around~w:-1
 arriv:-6
 as:3
 ash:-9
 ashes:-7
 ash~ and:-5
 ash~ on:-8
 aside:-5
 ask:-4
 asked:-7
 asked~ about:-5
 asked~ for:-1
 asked~ if:-6
 asked~ in:-1
 asked~ whether:-5
 asks:-9
 ask~ ::-2
 ask~ about:-7
 ask~ for:-4
 ask~ you:-4
 asleep:-7
 assay:8
 as~ above:-6
 as~ alway:6
 as~ anyth:2
 as~ before:6
 as~ ever:-8
 as~ far:-4
 as~ i:6
 as~ if:2
 as~ in:-2
 as~ is:6
 as~ it:-4
 as~ list:-4
 as~ long:-7
 as~ much:2
 as~ my:-2
 as~ on:-6
 as~ one:2
 as~ print:6
 as~ promis:-7
 as~ snow:-4
 as~ the:1
 as~ well:3
 as~ written:-5
 as~ you:-7
 as~%:1
 as~0:1
 as~A:4
 as~F:-1
 as~I:-7
 as~L:-3
 as~X:-5
 at:-3
 ate:2
 attempt:-6
 attempt~0:-4
 attic:-3
 at~ a:-8
 at~ all:-4
 at~ around:-3
 at~ christma:-3
 at~ church:-7
 at~ day:-8
 at~ easter:-6
 at~ first:-6
 at~ half:-8
 at~ home:1
 at~ hour:2
 at~ it:4
 at~ least:-3
 at~ light:1
 at~ liquid:-3
 at~ me:3
 at~ minute:-2
 at~ my:-3
 at~ once:-3
 at~ our:-8
 at~ room:-5
 at~ rough:-1
 at~ school:-7
 at~ that:2
 at~ the:1
 at~ thin:-7
 at~ this:-6
 at~ trace:5
 at~ week:-6
 at~%:4
 at~0:-4
 at~<:8
 at~=:-7
 at~b:2
 at~d:-4
 at~e:3
 at~t:-10
 at~w:-3
 august:2
 aunt:-5
 aunti:-4
 auntie:3
 aunts:4
 aunt~ in:-4
 aunt~ says:-6
 autumn:-9
 average:-4
 away:-2
 away~ and:1
 awful:1
 a~ ::-5
 a~ baby:1
 a~ bad:-7
 a~ bag:3
 a~ bar:-11
 a~ batch:-9
 a~ battery:1
 a~ beginner:-3
 a~ big:-2
 a~ bigger:-2
 a~ bit:-2
 a~ blanket:-3
 a~ blend:7
 a~ bowl:-9
 a~ box:-6
 a~ brick:-1
 a~ bucket:-5
 a~ can:3
 a~ candle:-7
 a~ carton:-1
 a~ castile:2
 a~ cheese:-5
 a~ chip:-7
 a~ class:-4
 a~ clean:1
 a~ cold:-6
 a~ corner:-9
 a~ crack:-2
 a~ crisp:-5
 a~ crumb:-5
 a~ crust:7
 a~ customer:-3
 a~ dark:-5
 a~ day:-3
 a~ different:-5
 a~ drawer:-7
 a~ dream:-3
 a~ drop:3
 a~ dry:-7
 a~ face:-7
 a~ fair:5
 a~ fami:-4
 a~ fan:-3
 a~ farm:2
 a~ few:5
 a~ fifth:2
 a~ finger:-6
 a~ fresh:-3
 a~ friend:-2
 a~ full:-1
 a~ glass:3
 a~ glug:4
 a~ good:9
 a~ handful:-2
 a~ heap:8
 a~ hole:-3
 a~ hurry:-7
 a~ jam:-7
 a~ jug:-1
 a~ kitchen:-2
 a~ knob:7
 a~ ladle:4
 a~ lady:-6
 a~ library:-3
 a~ lid:-3
 a~ lidd:-1
 a~ light:-3
 a~ line:2
 a~ list:1
 a~ little:4
 a~ loaf:-5
 a~ lot:-6
 a~ lump:6
 a~ man:-3
 a~ milk:-1
 a~ minute:-5
 a~ mix:7
 a~ month:-11
 a~ mould:-6
 a~ mug:7
 a~ new:-6
 a~ nice:-2
 a~ night:-5
 a~ number:-1
 a~ page:-7
 a~ paper:-6
 a~ paste:-1
 a~ pdf:-3
 a~ pencil:-6
 a~ photo:-7
 a~ pinch:-2
 a~ plain:-9
 a~ pot:2
 a~ proper:-6
 a~ puddle:3
 a~ quarter:7
 a~ question:-3
 a~ reader:-6
 a~ ready:3
 a~ recipe:-2
 a~ rock:-3
 a~ round:-1
 a~ row:-7
 a~ scale:-7
 a~ second:-4
 a~ sensible:-3
 a~ shade:-4
 a~ shoe:-4
 a~ shoebox:-3
 a~ silicone:-6
 a~ sink:-4
 a~ skin:-2
 a~ skull:-6
 a~ slip:2
 a~ slow:-6
 a~ small:1
 a~ smaller:-2
 a~ soap:-8
 a~ soft:-7
 a~ softer:-5
 a~ spatula:-5
 a~ spill:-1
 a~ splash:6
 a~ spoon:-3
 a~ spoonful:-4
 a~ steel:-6
 a~ stick:2
 a~ stir:-3
 a~ superfat:4
 a~ tenth:5
 a~ thermometer:-6
 a~ thin:-3
 a~ thing:-5
 a~ third:4
 a~ time:-7
 a~ tin:1
 a~ tiny:4
 a~ touch:-3
 a~ towel:-1
 a~ tray:-4
 a~ treat:-5
 a~ tub:-7
 a~ twentieth:3
 a~ typo:3
 a~ very:-6
 a~ video:-3
 a~ volcano:-6
 a~ warm:-6
 a~ water:-2
 a~ week:-9
 a~ wet:1
 a~ white:-1
 a~ whole:3
 a~ wire:-2
 a~ woman:-6
 a~ wooden:-1
 a~ year:-7
 a~ yes:-3
 a~ zap:-7
 a~%:2
 a~0:4
 a~<:7
 a~=:-7
 a~>:2
 a~A:-4
 a~F:-2
 a~K:-3
 a~L:-3
 a~N:6
 a~S:1
 a~X:2
 a~b:4
 a~e:-8
 a~r:3
 a~t:-6
 a~v:-1
 a~w:6
 b:-2
 babcia:-5
 babi:-7
 baby:1
 baby~ bar:-6
 baby~ shower:-2
 back:-4
 background:-3
 back~ ::-4
 back~ and:4
 back~ at:-3
 back~ for:2
 back~ in:-6
 back~ of:-5
 back~ on:-6
 back~ out:6
 back~ till:8
 back~ to:-6
 back~ up:5
 bacon:-5
 badly:-2
 bag:5
 bags:-5
 bag~ of:5
 bag~ says:-3
 bak:-9
 bakery:-7
 bak~ paper:-8
 balanc:-3
 balance:3
 balanc~ ?:-3
 balcony:2
 balls:-6
 balm:-5
 bang:-8
 bang~ it:-4
 bar:-5
 bare:-6
 bare~ got:-3
 barn:-4
 barrel:-6
 bars:-8
 bars~ +:-8
 bars~ ::-6
 bars~ about:-1
 bars~ and:-4
 bars~ are:-4
 bars~ at:-2
 bars~ came:-1
 bars~ come:-4
 bars~ each:-5
 bars~ for:-8
 bars~ from:-5
 bars~ i:-2
 bars~ in:-4
 bars~ of:-7
 bars~ on:-5
 bars~ out:-7
 bars~ so:-3
 bars~ to:-6
 bars~ went:-8
 bars~ were:1
 bars~ with:-7
 bars~0:-8
 bars~t:-3
 bars~w:-4
 bar~ ::-3
 bar~ ?:-5
 bar~ all:-4
 bar~ and:-2
 bar~ at:-4
 bar~ costs:-4
 bar~ for:-7
 bar~ from:-6
 bar~ i:2
 bar~ in:-3
 bar~ is:3
 bar~ no:-2
 bar~ of:-7
 bar~ since:-2
 bar~ so:4
 bar~ with:4
 bar~0:-4
 basic:-4
 bastille:-8
 batch:-6
 batch~ ::-3
 batch~ and:-7
 batch~ before:-7
 batch~ but:3
 batch~ ever:2
 batch~ for:1
 batch~ had:-2
 batch~ i:2
 batch~ in:-2
 batch~ is:3
 batch~ log:-3
 batch~ no:-3
 batch~ of:-6
 batch~ record:-2
 batch~ sheet:-5
 batch~ the:1
 batch~ was:-7
 batch~ with:-3
 batch~0:-6
 bath:-8
 bathroom:6
 bathroom~ scale:8
 batter:-3
 batteri:-5
 battery:3
 battery~ died:7
 bazaar:-4
 bc:8
 bc~ i:2
 be:3
 beach:-6
 beads:6
 beaker:4
 bear:-7
 beard:-4
 bear~ with:-6
 beat:-3
 became:3
 became~0:8
 because:1
 because~ a:-4
 because~ he:-8
 because~ i:-3
 because~ it:7
 because~ its:-4
 because~ last:1
 because~ my:3
 because~ of:-2
 because~ she:-3
 because~ thats:-1
 because~ the:3
 because~F:-7
 become:-1
 bed:-7
 bee:-6
 beech:-3
 beef:-7
 beef~=:-4
 beekeeper:-7
 been:3
 been~ at:5
 been~ in:1
 been~ mak:-6
 been~ on:-4
 been~ open:8
 been~ stand:4
 been~ told:-5
 been~t:-1
 bees:-3
 before:-1
 beforehand:-5
 before~ and:1
 before~ anyone:-7
 before~ i:-3
 before~ it:2
 before~ pour:7
 before~ saturday:-4
 before~ she:-1
 before~ so:-6
 before~ that:-6
 before~ the:3
 before~ they:-7
 before~ this:-8
 before~ we:-3
 before~ weigh:-8
 before~ with:-6
 before~ you:-12
 before~t:-5
 began:-6
 begin:-6
 beginner':-7
 beginner:-8
 behav:-7
 behind:-1
 behind~ the:3
 beige:-8
 being:-2
 believe:-2
 belong:-2
 belong~ to:2
 below:-4
 below~ the:-3
 below~d:-4
 bench:3
 besid:5
 beside:6
 beside~ it:3
 beside~ the:-1
 best:-10
 best~ before:-7
 bet:-3
 better:-6
 better~ than:1
 between:-2
 between~ the:5
 between~0:8
 be~ ?:-7
 be~ a:7
 be~ about:-7
 be~ bother:2
 be~ clear:-6
 be~ cut:-3
 be~ exact:6
 be~ for:3
 be~ gentle:-2
 be~ honest:-2
 be~ hot:-4
 be~ in:-8
 be~ mild:-6
 be~ ok:-4
 be~ on:4
 be~ patient:-8
 be~ right:3
 be~ sure:-3
 be~ the:-4
 be~ too:-6
 be~%:-10
 be~0:4
 be~N:8
 be~b:7
 be~e:10
 be~w:4
 bicycle:-6
 big:2
 bigger:1
 bigger~ pot:-2
 bigger~ than:5
 big~ batch:-8
 big~ kettle:6
 big~ one:4
 big~ pot:-6
 bin:-3
 binn:3
 bin~ it:-3
 birds:-3
 birthday:-4
 biscuit:-6
 bit:1
 bite:-5
 bites:-2
 bits:1
 bits~ in:-1
 bits~ of:1
 bit~ and:1
 bit~ at:-4
 bit~ by:-3
 bit~ greasy:-2
 bit~ like:-3
 bit~ more:3
 bit~ of:2
 bit~ on:-7
 bit~ over:-8
 bit~ so:-3
 bit~ soft:-6
 bit~ the:1
 bit~ under:-1
 black:-2
 blame:-7
 blame~ the:-6
 blanket:-7
 blender:-5
 blender~ and:-4
 blender~t:-5
 blend~ and:-6
 blend~ at:-1
 blend~ for:-2
 blend~ in:-1
 blend~ pour:-2
 blend~ till:-4
 blend~ to:-2
 blend~ with:5
 blend~t:-5
 blind:2
 blob:-2
 block:1
 blog:-1
 blog~ i:-2
 blood:-6
 blue:-1
 board:3
 boat:3
 boil:-1
 boiler:-7
 boil~ down:-2
 boil~ flat:5
 boil~ in:8
 boil~ it:-5
 boil~ off:6
 boil~ over:4
 boil~ the:-2
 bonjour:-3
 bonsoir:-4
 book:-4
 book~ ::-2
 book~ says:-9
 born:-5
 borrow:-1
 boss:-2
 both:-2
 bother:-5
 bother~ to:3
 bother~ with:5
 both~ alkali:-5
 both~ are:-7
 both~ at:1
 both~ feel:-1
 both~ lyes:-1
 both~ of:1
 both~ times:-7
 both~ units:-4
 both~ were:-6
 bottl:-2
 bottle:3
 bottle~ and:4
 bottle~ before:-6
 bottle~ gave:3
 bottle~ in:-5
 bottle~ is:5
 bottle~ of:-1
 bottle~ on:-4
 bottle~ ran:-1
 bottle~ said:5
 bottle~ says:6
 bottle~ so:3
 bottle~ was:11
 bottle~ with:-1
 bottl~ of:-3
 bottom:-1
 bought:-4
 bought~ a:-6
 bought~ the:-6
 bought~0:-8
 bought~>:-6
 bought~F:1
 bowl:-1
 bowls:2
 bowl~ and:-3
 bowl~ in:-8
 bowl~ is:-3
 bowl~ of:-5
 bowl~ on:7
 bowl~w:2
 box:-1
 boxes:-4
 box~ and:-2
 box~ lined:-2
 box~ with:-3
 box~t:-1
 boy:-1
 boyfriend:-2
 boys:2
 brand:-5
 brave:-4
 bread:-2
 break:-9
 breakfast:-1
 breathe:-4
 brewery:-5
 brick:-2
 brim:-2
 bring:-11
 bring~ it:-3
 bring~ the:-10
 broke:-2
 broken:2
 brother':1
 brother:-1
 brother~ in:-9
 brought:7
 brown:-6
 brown~ paper:-4
 brush:-4
 btw:3
 bubbl:-5
 bubble:-2
 bubbl~ and:1
 bucket:-4
 bucket~ of:-8
 bucket~ so:-5
 bucket~ with:-7
 burn:-7
 burnt:-1
 burst:-4
 burst~ of:-2
 bus:-2
 but:-2
 butcher:-6
 butcher~ gave:-8
 button:-4
 but~ a:-1
 but~ before:-1
 but~ first:-1
 but~ he:-4
 but~ here:-3
 but~ i'd:-3
 but~ i:2
 but~ im:-8
 but~ is:-6
 but~ it:-8
 but~ its:1
 but~ ive:-1
 but~ my:-2
 but~ no:3
 but~ not:-4
 but~ now:-4
 but~ only:-7
 but~ she:-5
 but~ that:-7
 but~ thats:-4
 but~ the:7
 but~ then:2
 but~ there:-5
 but~ they:-4
 but~ this:-2
 but~ those:-6
 but~ what:4
 but~ with:1
 but~0:1
 but~F:-8
 buy~ the:-1
 by:1
 by~ ::-7
 by~ a:9
 by~ accident:4
 by~ bit:-3
 by~ easter:-5
 by~ eye:8
 by~ hand:-8
 by~ it:-5
 by~ itself:4
 by~ me:-4
 by~ mistake:7
 by~ modern:-4
 by~ my:1
 by~ noon:-4
 by~ spoon:-6
 by~ the:4
 by~ then:-1
 by~ today:-4
 by~ volume:1
 by~ week:-5
 by~ weight:-3
 by~0:1
 by~<:6
 by~N:-5
 by~b:-3
 by~t:-7
 by~w:-1
 b~ ::4
 b~A:-4
 b~F:-7
 c:-5
 cake:-1
 cakes:-6
 calculat:-2
 calculate:2
 calculator:-8
 call:3
 calls:-11
 calls~ it:-8
 call~ it:6
 call~ that:4
 call~ the:-2
 call~F:4
 came:1
 came~ back:3
 came~ from:-1
 came~ in:-2
 came~ out:-2
 came~ to:7
 came~ up:1
 can:-2
 candl:-8
 candle:-1
 candle~B:-2
 candl~ and:-5
 cannot:-6
 cans:-1
 cant:3
 cant~ be:-1
 cant~ find:5
 cant~ get:-6
 cant~ remember:6
 cant~ say:-2
 cant~ stand:5
 can~ and:1
 can~ anyone:-1
 can~ be:-3
 can~ bear:-3
 can~ is:3
 can~ of:3
 can~ see:3
 can~ somebody:-6
 can~ stand:-6
 can~ still:-4
 can~ take:-4
 can~ tell:-2
 can~ the:-3
 can~ u:1
 can~ use:-4
 can~ you:2
 cap:-2
 capping:-6
 car:-8
 caramel:-4
 carbonate:7
 card:1
 cardboard:1
 card~ for:-4
 card~ is:3
 card~ no:-4
 care:1
 caretaker:-6
 carpet:-3
 carri:6
 carri~ it:5
 carri~ on:4
 carry:-9
 carton:-4
 case:-2
 cast:-7
 castile:-7
 cast~ an:-2
 cat:-1
 cat~ got:4
 cat~ had:3
 cat~ has:-6
 cat~ is:-5
 cauldron:-3
 caviti:-7
 ceil:-7
 cell:1
 cellar:-11
 certain:4
 certifi:-9
 certificate:5
 chair:-4
 chang:-2
 change:-3
 change~ the:-4
 chang~ ::4
 chang~ my:6
 chang~ the:-7
 charg:-3
 charge:-5
 chat:-3
 cheap:-9
 cheaper:-5
 cheaper~ than:-7
 check:-3
 check~ ::-1
 check~ before:2
 check~ by:-8
 check~ it:-6
 check~ me:-3
 check~ my:-9
 check~ out:-4
 check~ please:-5
 check~ pls:-4
 check~ that:-6
 check~ the:-6
 check~ this:-3
 check~A:-6
 cheese:-3
 cheese~ wire:-5
 chemist:-7
 chemistry:-3
 chemistry~ teacher:4
 child:-7
 children:-5
 chill:-7
 chip:2
 chips:3
 chisel:-6
 choir:2
 choose:-5
 chopp:-3
 christma:-6
 christma~0:-7
 chuck:3
 chuck~ in:8
 church:-9
 ciao:-3
 claim:-2
 clarity:-4
 class:-2
 class~ ::-4
 class~ i:-5
 clean:-2
 clean~ the:-6
 clean~ up:6
 clean~F:-4
 clear:-8
 clearer:1
 clear~ after:-2
 clear~ and:-4
 clear~ as:-8
 clear~ at:-8
 clear~ in:-6
 climb:-9
 climb~ out:-3
 climb~ to:-5
 cling:-4
 cling~ film:-4
 cling~ to:1
 clock:-4
 clos:-2
 close:-2
 close~ to:-6
 cloth:-6
 cloud:5
 cloudy~ for:-4
 club:-2
 clubs:-5
 clump:1
 coat:-7
 code:-5
 coins:1
 cold:-7
 cold~ from:-6
 cold~ press:-8
 cold~ proces:-6
 cold~L:6
 cold~W:-5
 colleague:-7
 colloidal:2
 colour:-8
 column:-6
 com:3
 combin:3
 combine:-2
 combine~ blend:-2
 come:1
 comes~ by:2
 comes~ from:-5
 comes~ in:1
 comes~ out:1
 come~ back:-7
 come~ down:-4
 come~ off:-1
 come~ out:3
 come~ to:3
 comma:1
 comma~ is:-6
 comment:-8
 compar:-3
 compare:-9
 compar~ with:2
 complain:-5
 complaint:-6
 complain~ about:-5
 complete:3
 computer:-4
 confetti:-4
 confirm:-8
 confirm~ the:-6
 confus:2
 contain:6
 convert:-9
 cook:1
 cooker:-1
 cooker~ ::-3
 cooker~ before:3
 cooker~ is:-3
 cooker~ on:-4
 cooks:-2
 cook~ ::-7
 cook~ ?:-7
 cook~ about:2
 cook~ and:-2
 cook~ at:-4
 cook~ for:-5
 cook~ i:-3
 cook~ in:-8
 cook~ is:4
 cook~ it:2
 cook~ on:-4
 cook~ once:-3
 cook~ part:-5
 cook~ so:6
 cook~ the:-6
 cook~ until:-1
 cook~ was:-10
 cook~ when:-5
 cook~ with:2
 cook~=:-1
 cook~F:-9
 cook~t:-4
 cool:-4
 cools:-8
 cool~ down:-1
 cool~ i:-3
 cool~ it:-5
 cool~ the:-6
 cool~ to:-1
 cool~ under:-2
 copi:2
 copi~ from:3
 copi~ it:-2
 copi~ off:1
 copi~ out:-6
 copi~ straight:-7
 copi~ the:1
 copi~ this:1
 copy:1
 cork:-7
 corner:-11
 correct:2
 correction:7
 correct~ ?:-2
 correct~ for:-3
 correct~ or:-3
 cos:8
 cost:-7
 costs:-16
 costs~ me:-1
 costs~0:-5
 costs~t:-6
 cost~ ::-7
 cost~ eur:-1
 cost~ me:-5
 cost~ per:-1
 cost~ sheet:-5
 cost~0:-5
 cost~t:-3
 could:-2
 couldnt:5
 couldnt~ be:7
 couldnt~ get:6
 couldnt~ tell:1
 could~ be:9
 could~ have:-7
 could~ not:7
 could~ somebody:-2
 could~ someone:-4
 could~ the:-7
 could~ you:-1
 council:-5
 count:2
 counter:3
 country:3
 county:-4
 count~ in:-2
 count~ it:6
 count~ the:-2
 count~ with:6
 course:-6
 course~ i:-5
 course~ in:-3
 cousin:-2
 cousin~ so:2
 cover:-6
 cover~ it:-4
 cover~ with:-6
 cows:-5
 cp:-5
 crack:-2
 crackling:1
 crack~ on:-5
 craft:-1
 crate:-7
 creamy:-6
 cried:-8
 crisp:-5
 crisp~ tube:-5
 crock:-2
 crockpot:-3
 crock~ pot:1
 cross:-1
 cross~ out:-1
 crumb:-1
 crumbl:-5
 crumble:-6
 crumb~ and:6
 crumb~ at:2
 crush:-5
 crust:7
 crystal:-4
 cubes:-6
 cubes~ and:-5
 cubes~ the:-6
 cubes~w:-5
 cup:2
 cupboard:1
 cupboard~ and:3
 cupcake:-7
 cups:-4
 cup~ and:-9
 cup~ on:1
 cup~ weigh:-5
 cup~ with:-4
 cur:-7
 cure:-8
 cured:-6
 cures:1
 cure~ ::-2
 cure~ for:-4
 cure~ till:-3
 cure~ until:-1
 cure~t:-1
 curry:-5
 custard:-6
 customer:-9
 cuts:-6
 cutt:-6
 cutter:-8
 cut~ ::-3
 cut~ after:-3
 cut~ at:-7
 cut~ in:-3
 cut~ into:-7
 cut~ it:1
 cut~ next:-2
 cut~ off:-2
 cut~ on:-5
 cut~ the:7
 cut~ them:-3
 cut~ too:-5
 cut~ with:-5
 cut~0:-6
 cut~b:-5
 cut~t:-2
 c~ ::-3
 c~ at:-3
 c~0:-7
 d:-5
 dad:-2
 dads:-2
 dads~t:-2
 daft:4
 dag:-2
 dag~ ::-1
 dairy:6
 damp:5
 dare:3
 dark:-10
 das:-7
 date:-7
 dates:-7
 date~ ::-2
 date~t:-5
 daughter':-8
 daughter:3
 daughter~ wants:-3
 daughter~ who:-5
 day:-3
 days:-7
 day~ and:-3
 day~ at:-5
 day~ before:4
 day~ i:-3
 day~ it:-5
 day~ so:3
 day~ then:-4
 day~0:-4
 day~t:-4
 de:-4
 dead:-4
 deal:5
 dear:2
 dear~ all:3
 dear~ group:-4
 december:-6
 decent:-6
 decimal:-7
 deep:2
 degre:-6
 demineralis:-8
 demonstration:1
 dent:-8
 deodoris:-9
 diary:-3
 dictat:3
 dictat~ this:-3
 did:3
 didnt:4
 didnt~ weigh:6
 did~ and:2
 did~ i:-4
 did~ in:-11
 did~ not:1
 did~ that:1
 did~ the:5
 did~ this:-2
 did~ you:-9
 did~0:1
 did~=:-3
 died:2
 died~ at:3
 difference:-5
 different:-7
 digit:-1
 digital:-8
 dilut:-5
 dilute:-7
 dilution:2
 dinner:3
 disaster:-8
 discount:2
 dish~ soap:5
 display:6
 display~ said:-8
 dissolv:4
 dissolve:4
 dissolve~ it:-7
 dissolve~ the:4
 dissolve~=:-8
 dissolv~ together:-1
 dissolv~<:2
 dissolv~=:-5
 do:-4
 doctor:-7
 does:-5
 doesnt:-2
 doesnt~ mind:-6
 doesnt~ smell:-5
 does~ anybody:-4
 does~ anyone:1
 does~ her:-3
 does~ it:-5
 does~ my:-6
 does~ not:-4
 does~ that:1
 does~ the:-3
 does~ this:-1
 does~%:-6
 does~F:-7
 does~b:-6
 does~w:3
 dogs:-6
 dog~ got:7
 doing:3
 doing~ it:-4
 doing~ the:1
 doing~ this:4
 done:-5
 done~ and:-1
 dont:-3
 dont~ ask:5
 dont~ be:-4
 dont~ care:3
 dont~ get:4
 dont~ have:-3
 dont~ know:6
 dont~ laugh:-1
 dont~ panic:-7
 dont~ trust:-5
 dont~ want:-8
 door:-4
 doorbell:4
 doors:-8
 dos:-1
 dose:8
 dose~ of:8
 dot:-6
 doubl:9
 double:-7
 double~ boiler:-6
 double~ check:-2
 down:2
 down~ and:-4
 down~ by:5
 down~ from:1
 down~ the:-2
 down~ with:3
 do~ ?:-6
 do~ a:-5
 do~ for:-6
 do~ i:3
 do~ in:-9
 do~ it:-1
 do~ not:-5
 do~ the:-5
 do~ this:-6
 do~ we:-5
 do~ with:-8
 do~ you:-4
 do~F:-3
 draft:-8
 drag:-7
 drain:5
 drama:-5
 drank:5
 draw:1
 drawer:-3
 drawer~ lined:-2
 drawn:3
 dream:-5
 drew:-6
 dried:-3
 drill:-5
 drink:-5
 drip:-6
 drips:-4
 drop:-1
 dropp:6
 dropp~ below:-4
 dropp~ the:1
 drops:-2
 drops~ of:2
 drop~ of:2
 drop~ the:-6
 drop~ to:-3
 drove:-2
 drown:-6
 drum:5
 dry:3
 dry~ cup:-2
 dry~ hands:5
 dry~ skin:-8
 dry~ so:1
 dry~ until:4
 duck:-5
 dump:-3
 dur:5
 dust:5
 e:-5
 each:-2
 each~ and:-5
 each~ of:-3
 each~ time:-1
 earlier:-4
 early:-9
 easier:-6
 easter:-6
 easy:-8
 eat:-2
 eats:-7
 eczema:2
 edge:-3
 edges:-3
 edit:2
 edition:1
 edit~ ::4
 either:3
 elbow:-5
 else~ no:-2
 empti:4
 empty:-3
 empty~ and:-3
 emulsion:-5
 enamel:-9
 enamel~ pot:-6
 end:3
 ended:7
 ended~ up:-1
 ends:-9
 end~ ?:-5
 end~ after:2
 end~ and:3
 end~ i:-1
 end~ is:-10
 end~ it:8
 end~ of:-1
 end~ piece:-7
 english:-3
 english~ i:-6
 english~ is:-4
 enough:-3
 enough~ ?:-4
 enough~ for:-3
 enough~ or:-5
 enough~ to:-3
 enough~A:-3
 entire:-5
 entry:-2
 envelope:-4
 equal:1
 equal~ weight:-6
 error:-4
 eur:-4
 euro:-6
 even:-7
 evening:-4
 even~ all:-4
 even~ class:-4
 even~ in:-4
 ever:-10
 every:-7
 everybody:-10
 everyday:-4
 everyday~ bar:-3
 everyone:-7
 everyone~ who:1
 everyth:4
 everyth~ ::-3
 everyth~ and:-5
 everyth~ at:1
 everyth~ else:2
 everyth~ in:-5
 everyth~ is:3
 everyth~ on:1
 everyth~ was:-3
 everywhere:-4
 every~ one:4
 every~ time:2
 every~t:-5
 ex:-6
 exact:-7
 exact~ as:-9
 exact~ like:1
 exact~ one:-2
 exam:-6
 except:7
 except~ for:-2
 except~ the:3
 exces:4
 excuse:-6
 excuse~ my:-3
 excuse~ the:-7
 expect:-4
 expensive:-4
 explain:-1
 export:-4
 export~ from:-4
 extra:6
 extra~ fat:7
 extra~ virgin:-4
 extra~A:-2
 extra~F:-4
 eye:6
 eyebrow:-6
 eyes:-3
 eye~ over:-2
 f:-6
 face:-6
 faces:-7
 face~ bar:-5
 facial:2
 facial~ bar:-4
 fact:6
 faded:-9
 fades:-6
 fail:4
 fails:-3
 fail~ me:-3
 faint:-6
 faint~ of:-4
 fair:3
 fair~ ::-4
 falls:-4
 false:-5
 false~ trace:-5
 fami:-1
 famili:-6
 fan:-5
 fancy:3
 far:-4
 farm~ shop:4
 far~ as:-4
 far~ too:2
 fast:-7
 faster~ than:-4
 fat:3
 father:-1
 father~ in:4
 fats:2
 fats~ ::-4
 fats~ ?:-4
 fats~ and:-3
 fats~ are:-3
 fats~ at:-6
 fats~ in:-7
 fats~ is:-7
 fats~ melt:-2
 fats~ or:-4
 fats~ were:-5
 fat~ ::1
 fat~ ?:-6
 fat~ and:2
 fat~ g:-4
 fat~ grams:-4
 fat~ in:-3
 fat~ is:2
 fat~ left:4
 fat~ of:-9
 fat~ was:-7
 fault:3
 favour:2
 february:-8
 feed:1
 feed~ store:4
 feel:2
 feels:-5
 feels~ a:-3
 feels~ like:-7
 feet:2
 fell:-3
 fellow:1
 fell~ in:2
 fell~ on:2
 felt:-2
 felt~ like:-2
 fence:-6
 fete:1
 few:6
 field:-7
 fifth:2
 fifth~ of:8
 fig:-6
 fight:2
 figur:-1
 figure:8
 file:1
 files:-3
 fill:3
 fills:-6
 fills~ my:-7
 fills~ the:-1
 fills~0:-3
 fill~ in:-4
 fill~ the:3
 fill~ to:3
 fill~ up:5
 fill~0:1
 film:-8
 film~ on:-5
 filter:-2
 final:-2
 find:8
 finds:-5
 find~ the:2
 find~F:2
 fine:-6
 finer:-5
 fine~ ?:-4
 fine~ and:-2
 fine~ but:-4
 fine~ for:-5
 fine~ or:-4
 finger:-1
 finish:2
 finish~ paste:-6
 finish~ with:5
 fire:-8
 firm:6
 firmer:-1
 first:-4
 first~ and:-3
 first~ attempt:-7
 first~ ever:-6
 first~ go:-2
 first~ hour:-2
 first~ i:-1
 first~ it:-3
 first~ lot:4
 first~ one:-3
 first~ so:8
 first~ soap:-1
 first~ the:-3
 first~ then:-9
 first~ time:4
 first~ to:-4
 first~ try:-4
 first~ went:-3
 first~0:2
 first~t:3
 fish:-2
 fit:-4
 fits:-5
 fits~ the:-5
 fit~ the:1
 fixed:-10
 fizz:-2
 flak:5
 flake:8
 flame:-6
 flat:1
 flat~ and:-6
 flat~ boil:3
 flat~ in:-6
 float:-4
 float~ an:-6
 floor:3
 floor~ and:-3
 fluid:4
 fluid~ ounc:7
 foam:-6
 foams:-8
 foam~ from:-4
 foam~ over:6
 fold:-2
 folder:-7
 fold~ in:1
 folk:-8
 folks:-7
 follow:-2
 forever:-7
 forever~ to:-5
 forgett:-1
 forget~ the:-1
 forgiv:-8
 forgive:-5
 forgot:4
 forgotten:4
 forgot~ it:2
 forgot~ to:3
 form:-7
 formula:-5
 forum:-9
 for~ a:-3
 for~ about:1
 for~ after:3
 for~ ages:-1
 for~ all:-2
 for~ an:-4
 for~ any:-3
 for~ babi:-7
 for~ baby:3
 for~ both:6
 for~ bubbl:-1
 for~ candl:-7
 for~ christma:-3
 for~ days:-4
 for~ each:4
 for~ faces:-7
 for~ floor:-3
 for~ free:3
 for~ fry:-1
 for~ gram:5
 for~ half:5
 for~ hands:2
 for~ her:1
 for~ his:-4
 for~ it:-4
 for~ laundry:4
 for~ looks:-5
 for~ luck:5
 for~ me:1
 for~ my:1
 for~ next:-3
 for~ no:5
 for~ noth:-7
 for~ once:7
 for~ one:2
 for~ our:-2
 for~ people:-3
 for~ read:-4
 for~ salad:-11
 for~ saturday:3
 for~ shav:-3
 for~ skin:-6
 for~ soap:-8
 for~ some:-8
 for~ that:-1
 for~ the:2
 for~ these:-3
 for~ this:-3
 for~ those:-3
 for~ today:3
 for~ us:2
 for~ wash:-2
 for~ what:5
 for~ word:-6
 for~ years:-2
 for~ you:-8
 for~ your:4
 for~%:8
 for~0:-6
 for~=:-5
 for~>:1
 for~A:-2
 for~B:-2
 for~F:1
 for~L:-6
 for~N:-5
 for~S:-7
 for~T:-6
 for~W:-1
 for~b:-1
 for~d:-8
 for~e:-8
 for~t:-7
 for~v:-3
 for~w:-1
 found:7
 found~ a:1
 found~ in:-7
 found~ it:5
 found~ on:1
 found~ out:1
 found~ the:7
 found~ this:-7
 fractionat:11
 fram:-10
 freeze:-5
 freezer:-2
 freezer~ for:-8
 freezer~ in:-3
 freezer~ paper:-4
 freeze~ the:-5
 free~ lol:-4
 fresh:-2
 friday:2
 friday~ and:-4
 fridge:-2
 fridge~ for:-7
 fridge~ overnight:-8
 fried:1
 friend':-4
 friend:-6
 friend~ says:-7
 friend~ who:4
 friend~ with:-1
 frighten:-6
 from~ ::-7
 from~ a:2
 from~ an:-5
 from~ another:-2
 from~ before:-2
 from~ graz:-3
 from~ it:-2
 from~ krakow:-2
 from~ last:-6
 from~ me:-3
 from~ my:-3
 from~ our:1
 from~ portugal:1
 from~ sunday:9
 from~ that:2
 from~ the:1
 from~ what:-6
 from~ work:3
 from~0:-4
 from~=:-1
 from~F:-4
 from~L:-8
 from~t:-9
 from~w:-8
 front:-2
 front~ of:-6
 froze:4
 frozen:-1
 frozen~ cubes:-3
 frozen~ in:1
 frozen~ to:-5
 frozen~w:-8
 froze~ it:2
 fruit:-5
 fry:2
 fryer:3
 full:6
 full~ bottle:-8
 full~ of:-5
 fume:-7
 fumes:-10
 fun:-10
 funny:-7
 further:6
 fwd:-2
 fwd~ ::-2
 f~0:-6
 g:-4
 garage:-8
 garden:-5
 gas:-4
 gate:-7
 gave:2
 gave~ it:1
 gave~ me:6
 gave~ out:7
 gave~ the:-3
 gave~ up:6
 gave~0:-10
 gel:-3
 gell:-2
 gel~ ::-3
 gel~ at:-1
 gel~ phase:-7
 generou:4
 gent:-6
 gentle:-2
 gentler:4
 german:-4
 get:-4
 gets:-4
 gets~ a:2
 gets~ the:-4
 gets~0:-5
 gett:-8
 get~ a:3
 get~ it:2
 get~ the:2
 get~ to:-7
 get~0:-7
 get~F:6
 ghana:-6
 gift:-8
 gifts:-3
 girl:-3
 giv:-8
 give:-3
 given:-4
 gives:-8
 gives~ me:-3
 gives~ the:-7
 gives~%:5
 gives~0:-8
 give~ it:-8
 give~ me:1
 give~ or:4
 give~ the:-4
 give~ to:-3
 glad:-2
 glass:-1
 glass~ and:6
 glass~ of:5
 glossy:-3
 glov:-9
 glov~ and:-6
 glov~ on:-5
 glug:6
 glug~ of:4
 go:-1
 goat:2
 goats:-1
 goats~ are:2
 goes:-6
 goes~ away:-3
 goes~ grainy:-3
 goes~ in:-2
 goes~ into:-5
 goes~ off:-5
 goes~ on:-9
 goes~ up:-7
 goggl:-9
 goggl~ and:-3
 goggl~ on:-4
 going:4
 going~ by:-5
 going~ in:4
 gone:5
 gone~ after:-6
 gone~ by:-10
 gone~ up:-2
 gonna:3
 good:-1
 good~ ?:-4
 good~ bit:8
 good~ day:-5
 good~ enough:-1
 good~ even:-3
 good~ for:-6
 good~ glug:7
 good~ morn:-5
 good~ one:-7
 good~ or:-2
 good~ pot:-1
 good~ to:-2
 good~F:-9
 good~t:-6
 goose:-4
 got:5
 got~ a:-3
 got~ in:-1
 got~ into:6
 got~ it:-1
 got~ my:-7
 got~ round:5
 got~ swapp:1
 got~ the:-3
 got~ to:4
 got~ too:3
 got~ wet:1
 got~0:-2
 got~=:-4
 got~S:-5
 got~b:5
 go~ ?:-3
 go~ at:5
 go~ by:3
 go~ clear:1
 go~ into:-8
 go~ on:-6
 go~ out:4
 go~ over:-6
 go~ rancid:-6
 go~ to:-2
 go~ up:3
 go~ with:8
 go~ wrong:-4
 grabb:7
 grade:3
 grain:-7
 grainy:-4
 gram:-1
 gramm:-8
 grams:-1
 grams~ ::-7
 grams~ and:-2
 grams~ cost:-2
 grams~ for:-1
 grams~ i:5
 grams~ so:-10
 grams~A:-4
 grams~e:-7
 gram~ for:5
 grand:-5
 grandad:5
 granddaughter:-4
 grandmother:-7
 grandmother~ had:-2
 grandpa:2
 grandson:4
 granny:-2
 grans:-6
 grat:1
 grate:-4
 grateful:-2
 grate~ the:-7
 gravy:-1
 graz:-5
 greas:-2
 grease:-3
 greasy:1
 great:-2
 great~ aunt:-3
 green:-2
 green~ and:5
 green~ one:-2
 greeting:-5
 greeting~ from:-5
 grind:-5
 grind~ the:-2
 grocer:-4
 ground:-8
 group:2
 group~ ::-2
 group~ of:-5
 grown:2
 guess:10
 guess~ the:-4
 guest:-9
 guild:-6
 g~ ::-6
 g~ cost:-2
 g~ oz:-3
 g~e:-8
 ha:3
 habit:2
 had:2
 hadnt:7
 had~ a:-6
 had~ already:8
 had~ been:5
 had~ come:4
 had~ cool:-7
 had~ dropp:-3
 had~ gone:7
 had~ in:-2
 had~ it:5
 had~ melt:3
 had~ no:-2
 had~ only:-1
 had~ set:2
 had~ some:-3
 had~ that:-1
 had~ the:-4
 had~ to:-6
 had~0:-5
 had~<:-6
 had~=:2
 had~>:-7
 had~F:2
 had~N:-4
 had~X:4
 had~b:7
 hair:-1
 half:5
 halfway:-5
 halfway~ through:5
 half~ a:4
 half~ and:-5
 half~ as:4
 half~ batch:4
 half~ is:5
 half~ of:2
 half~ size:2
 half~ the:-1
 half~A:-7
 half~F:-1
 half~I:-4
 half~W:-7
 hall:-8
 hallo:-4
 hallo~ my:-2
 halv:8
 halve:-1
 halv~ it:4
 hammer:4
 hand:-2
 handful:1
 handful~ of:-7
 handle:-4
 handout:1
 handout~0:-4
 hands:-1
 hands~ ?:-4
 hands~ are:2
 handwrit:4
 handy:-7
 hand~ ::1
 hand~ and:-1
 hand~ in:-5
 hand~ on:5
 hand~ out:-8
 hand~ soap:-4
 hand~ warm:-1
 hand~ with:-4
 hang:6
 hangs:-6
 happen:1
 happy:3
 happy~ with:-8
 hard:-5
 harden:-6
 harder:-3
 harder~ bar:-2
 hardnes:-5
 hardware:-1
 hardware~ store:-6
 hard~ after:-2
 hard~ and:-4
 hard~ any:-6
 hard~ as:-5
 hard~ smell:-3
 hard~ to:5
 hard~W:-9
 harm:-6
 harsh:-8
 has:2
 hasnt:-6
 has~ anyone:-7
 has~ become:-2
 has~ been:-1
 has~ cool:-7
 has~ done:-7
 has~ dry:1
 has~ gone:-1
 has~ it:3
 has~ made:-3
 has~ moved:-7
 has~ no:-3
 has~ the:5
 has~ to:-3
 has~=:-6
 has~F:7
 has~N:1
 hate:-4
 hates:-1
 hav:-2
 have:-1
 havent:3
 have~ a:-7
 have~ asked:2
 have~ been:-1
 have~ done:-1
 have~ enough:-4
 have~ for:1
 have~ gone:4
 have~ had:3
 have~ i:-8
 have~ in:-1
 have~ it:2
 have~ made:-5
 have~ my:-7
 have~ never:3
 have~ no:-3
 have~ not:-7
 have~ put:6
 have~ the:3
 have~ to:-9
 have~ used:-3
 have~0:-5
 have~=:-6
 have~>:-4
 have~F:3
 hdpe:-6
 he:-2
 head:-3
 heap:9
 heap~ spoon:1
 hear:-1
 heard:2
 heart:-2
 heat:-12
 heats:-6
 heats~ up:-5
 heat~ and:-3
 heat~ i:-3
 heat~ off:-3
 heat~ the:-5
 heaven:-7
 heavy:3
 heavy~ ?:-5
 heavy~ or:-6
 hed:3
 height:-5
 held:11
 held~ back:2
 held~ the:1
 hell:-5
 hello:-4
 hello~ from:-2
 hello~ i:-3
 help:5
 helps:-2
 help~ with:1
 hence:-4
 hence~ the:-10
 hens:-9
 her:-5
 heres:-7
 heres~ my:-1
 heres~ the:-5
 heres~ what:-7
 here~ ::-2
 here~ and:-4
 here~ goes:-3
 here~ i:3
 here~ in:-5
 here~ is:2
 here~ it:-6
 here~ so:-3
 here~ we:-8
 hers:-10
 herself:-5
 hers~ and:-5
 hers~ with:-10
 her~ hands:-4
 her~ life:-7
 her~ own:-2
 her~ soap:-6
 her~A:-4
 her~F:-11
 hey:-5
 he~ also:-7
 he~ has:-4
 he~ is:-9
 he~ says:6
 he~ was:-7
 hid:-10
 hide:-6
 high:-6
 him:-5
 himself:4
 his:-6
 hiss:1
 his~A:-6
 hit:2
 hit~ it:-4
 hive:-7
 hives:-6
 hiya:1
 hi~ everyone:-3
 hmm:4
 hob:-1
 hola:-3
 holds:-3
 holds~ a:3
 holds~0:-4
 holds~v:-5
 holds~w:-8
 hold~ ?:-3
 hold~ back:4
 hold~ the:4
 hold~ up:-3
 hole:-5
 holes:-9
 holiday:-8
 home:1
 home~ and:4
 honest:6
 hood:-7
 hope:2
 hope~ it:-6
 hope~ the:-4
 hot:-9
 hotter:-7
 hotter~ than:-3
 hot~ or:-5
 hour:-3
 hour~ and:-4
 hour~ then:-2
 hour~0:1
 house:3
 house~ smell:-8
 how:2
 hows:-6
 how~ do:1
 how~ does:-4
 how~ i:3
 how~ it:-2
 how~ long:-8
 how~ many:-6
 how~ much:7
 how~ my:-8
 how~ the:-9
 how~ to:-9
 how~ we:-5
 hp:-4
 hp~ in:-3
 hubby:2
 huge:5
 humidity:-2
 humidity~%:-4
 hurry:-5
 hurt:-1
 hurts:-5
 husband:3
 husband~ says:-6
 husband~ think:-9
 husband~ who:-7
 hydrogenat:1
 i'd:1
 i'd~ already:4
 i'd~ be:-7
 i'd~ been:1
 i'd~ do:-8
 i'd~ guess:11
 i'd~ have:-7
 i'd~ like:6
 i'd~ love:-5
 i'd~ never:-5
 i'd~ pour:-2
 i'd~ put:3
 i'd~ rather:-1
 i'd~ read:4
 i'd~ say:5
 i'd~ use:-6
 i'd~ weigh:2
 i:3
 idea:-2
 idea~ which:6
 idk:4
 ie:6
 ie~=:-7
 if:-2
 if~ anyone:-3
 if~ i:1
 if~ im:3
 if~ it:3
 if~ its:-2
 if~ my:3
 if~ somebody:-6
 if~ that:4
 if~ thats:1
 if~ the:-4
 if~ ther:-5
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
 ignore:7
 ignore~ the:7
 ill~ do:-4
 ilse:-2
 im:2
 impatient:-6
 im~ a:-3
 im~ after:8
 im~ aim:2
 im~ ask:-1
 im~ at:-8
 im~ doing:-4
 im~ going:2
 im~ in:-7
 im~ mak:2
 im~ not:1
 im~ on:2
 im~ told:-6
 im~ using:6
 im~0:-3
 in:1
 inch:1
 incl:1
 includ:4
 includ~ the:9
 individual:-7
 individual~ mould:-7
 infus:3
 infus~ with:4
 ingredient:-4
 ingredient~ g:-3
 ingredient~ grams:-4
 ingredient~ oz:-6
 ingredient~ weight:-4
 inside:-5
 insist:8
 instant:-3
 instead:3
 instead~ of:-1
 instruction:1
 insulate:-7
 internet:-4
 into:-1
 into~ a:-7
 into~ cubes:-6
 into~ it:1
 into~ mould:-4
 into~ oils:-3
 into~ one:-8
 into~ that:4
 into~ the:3
 into~ this:7
 into~0:-6
 into~=:-5
 into~W:-6
 into~b:1
 into~v:-3
 in~ ::1
 in~ ?:4
 in~ a:-2
 in~ about:-1
 in~ after:7
 in~ all:-7
 in~ an:-6
 in~ and:-1
 in~ another:6
 in~ april:-7
 in~ as:2
 in~ at:3
 in~ august:2
 in~ batch:-4
 in~ before:7
 in~ between:-7
 in~ blend:-9
 in~ burst:-2
 in~ by:2
 in~ case:-7
 in~ class:1
 in~ cold:-6
 in~ cubes:-6
 in~ dag:-2
 in~ each:-3
 in~ every:-2
 in~ fact:5
 in~ first:-6
 in~ for:8
 in~ front:-7
 in~ g:2
 in~ grams:-10
 in~ half:2
 in~ her:-9
 in~ here:-1
 in~ hers:-9
 in~ his:-10
 in~ hot:-7
 in~ i:6
 in~ it:2
 in~ its:6
 in~ january:-5
 in~ july:-7
 in~ june:-7
 in~ last:-2
 in~ law:-2
 in~ laws:-3
 in~ march:-9
 in~ may:2
 in~ maybe:5
 in~ mould:-5
 in~ my:-2
 in~ no:-6
 in~ october:-1
 in~ ohio:-5
 in~ on:-5
 in~ once:10
 in~ one:4
 in~ or:2
 in~ order:-6
 in~ ounc:1
 in~ our:4
 in~ place:1
 in~ plus:-4
 in~ red:1
 in~ short:-4
 in~ slow:-2
 in~ small:-5
 in~ so:4
 in~ spr:-8
 in~ step:-6
 in~ steps:5
 in~ summer:-5
 in~ that:2
 in~ the:-2
 in~ there:5
 in~ time:1
 in~ tiny:6
 in~ to:-3
 in~ too:1
 in~ total:-5
 in~ truth:2
 in~ under:-3
 in~ week:-3
 in~ went:5
 in~ when:-5
 in~ winter:-3
 in~ with:4
 in~ your:-1
 in~0:-6
 in~<:4
 in~=:-5
 in~>:-1
 in~F:-3
 in~I:-7
 in~L:2
 in~N:7
 in~W:-5
 in~b:-9
 in~e:3
 in~l:-1
 in~r:-4
 in~t:-6
 in~v:-10
 in~w:1
 ish:-6
 isnt:6
 isnt~ in:5
 isnt~ it:5
 issue:-1
 is~ a:2
 is~ about:-6
 is~ actual:5
 is~ all:-2
 is~ already:2
 is~ alway:-1
 is~ an:4
 is~ and:-8
 is~ as:-2
 is~ at:-6
 is~ below:-6
 is~ better:1
 is~ cheap:-4
 is~ clear:-4
 is~ correct:-9
 is~ dear:-1
 is~ dry:5
 is~ enough:-6
 is~ exact:-7
 is~ fine:-11
 is~ finish:2
 is~ for:-3
 is~ going:5
 is~ gone:-6
 is~ good:-9
 is~ grams:1
 is~ half:2
 is~ hard:-1
 is~ her:-4
 is~ hot:-7
 is~ how:-1
 is~ in:3
 is~ it:-3
 is~ just:-6
 is~ like:-4
 is~ love:-4
 is~ meant:-3
 is~ mine:-9
 is~ my:-1
 is~ near:-9
 is~ no:-6
 is~ normal:-8
 is~ not:-3
 is~ noth:-2
 is~ now:6
 is~ off:2
 is~ oil:2
 is~ ok:-7
 is~ on:1
 is~ one:3
 is~ only:-8
 is~ our:-6
 is~ out:1
 is~ over:2
 is~ plenty:2
 is~ real:9
 is~ safe:-2
 is~ set:-2
 is~ she:-2
 is~ small:-3
 is~ sold:3
 is~ step:-2
 is~ still:1
 is~ technical:7
 is~ that:-2
 is~ the:-3
 is~ there:-4
 is~ thick:-5
 is~ this:-9
 is~ too:2
 is~ under:-2
 is~ weigh:-4
 is~ what:3
 is~ where:-8
 is~ whether:-6
 is~ why:-7
 is~ with:10
 is~ worth:-6
 is~ written:-1
 is~%:-1
 is~0:5
 is~<:-6
 is~=:-6
 is~>:-8
 is~A:3
 is~F:5
 is~L:2
 is~N:8
 is~S:2
 is~T:-6
 is~b:3
 is~d:-2
 is~e:-7
 is~l:1
 is~t:-8
 is~v:-2
 is~w:-2
 it:2
 itch:-2
 item:-3
 item~ grams:-3
 itll:-2
 itll~ be:2
 its:1
 itself:-5
 itself~ off:-1
 its~ a:2
 its~ about:-6
 its~ all:-2
 its~ as:-6
 its~ been:-6
 its~ clear:-5
 its~ cook:6
 its~ date:-5
 its~ fine:-5
 its~ for:6
 its~ gone:2
 its~ hot:-5
 its~ in:-3
 its~ just:-6
 its~ like:1
 its~ made:3
 its~ meant:-2
 its~ my:1
 its~ not:-5
 its~ on:-9
 its~ only:-2
 its~ own:-4
 its~ place:4
 its~ ready:-6
 its~ sitt:-5
 its~ the:-2
 its~ time:-5
 its~ weight:-6
 its~ what:5
 its~0:7
 its~=:-6
 its~A:6
 its~N:7
 its~b:-3
 its~d:-6
 its~l:3
 its~t:1
 it~ ::-7
 it~ ?:-3
 it~ a:2
 it~ about:-5
 it~ add:-4
 it~ after:-2
 it~ again:3
 it~ alone:-6
 it~ already:2
 it~ and:-3
 it~ another:3
 it~ anyway:-9
 it~ as:-2
 it~ away:-4
 it~ back:-1
 it~ bad:7
 it~ be:1
 it~ because:4
 it~ before:-5
 it~ behav:-3
 it~ bit:7
 it~ but:-6
 it~ by:-1
 it~ came:1
 it~ can:-6
 it~ check:-7
 it~ clear:-5
 it~ climb:-4
 it~ cold:-2
 it~ come:-5
 it~ comes:2
 it~ cooks:-4
 it~ cool:1
 it~ cools:-5
 it~ correct:-5
 it~ cost:-5
 it~ crack:-4
 it~ crumbl:-1
 it~ cut:-4
 it~ did:-6
 it~ didnt:3
 it~ do:-5
 it~ does:1
 it~ doesnt:-2
 it~ dried:3
 it~ drop:-3
 it~ enough:-3
 it~ every:-5
 it~ first:1
 it~ fits:-5
 it~ flat:-4
 it~ foam:3
 it~ for:-2
 it~ from:1
 it~ gets:-5
 it~ gives:1
 it~ go:-4
 it~ goes:2
 it~ good:-6
 it~ got:2
 it~ had:-2
 it~ hard:-3
 it~ has:-1
 it~ heats:-5
 it~ here:-4
 it~ holds:-4
 it~ if:-4
 it~ in:-1
 it~ into:-10
 it~ is:4
 it~ it:2
 it~ its:-5
 it~ last:-1
 it~ lasts:-5
 it~ lather:-7
 it~ like:-4
 it~ look:7
 it~ looks:-5
 it~ makes:1
 it~ matter:3
 it~ may:-4
 it~ melts:-3
 it~ moved:7
 it~ needs:-4
 it~ never:-2
 it~ next:-1
 it~ no:-2
 it~ now:-7
 it~ off:5
 it~ ok:-5
 it~ on:-1
 it~ once:-8
 it~ only:1
 it~ or:-4
 it~ out:-1
 it~ outside:-4
 it~ over:-1
 it~ past:-8
 it~ plus:-4
 it~ real:5
 it~ right:-1
 it~ safe:1
 it~ said:7
 it~ sat:1
 it~ says:3
 it~ seiz:3
 it~ set:2
 it~ sets:-5
 it~ should:-4
 it~ since:-2
 it~ sit:2
 it~ smell:-1
 it~ so:-1
 it~ stand:-1
 it~ stay:4
 it~ stays:-1
 it~ still:-6
 it~ stink:-5
 it~ sweat:-6
 it~ takes:-6
 it~ the:-6
 it~ then:-2
 it~ there:-9
 it~ thicken:4
 it~ this:-1
 it~ through:-7
 it~ times:-1
 it~ to:3
 it~ took:-6
 it~ trac:-2
 it~ turn:-3
 it~ turns:2
 it~ twice:3
 it~ under:-5
 it~ until:-4
 it~ wants:-4
 it~ was:2
 it~ went:2
 it~ when:5
 it~ will:-6
 it~ with:-5
 it~ without:3
 it~ wont:-8
 it~ would:-2
 it~ wouldnt:5
 it~ wrong:-4
 it~ zapp:6
 it~ zaps:-5
 it~%:2
 it~0:2
 it~=:-4
 it~A:-2
 it~F:-2
 it~S:-4
 it~b:5
 it~t:-6
 ive:-1
 ive~ a:2
 ive~ been:-6
 ive~ bought:4
 ive~ come:3
 ive~ done:-5
 ive~ gone:6
 ive~ got:-1
 ive~ had:-6
 ive~ just:2
 ive~ made:-4
 ive~ never:-7
 ive~ no:-1
 ive~ not:-6
 ive~ only:1
 ive~ read:-7
 ive~ seen:-8
 ive~ since:5
 ive~ tried:-6
 ive~ used:-2
 ive~ weigh:-3
 ivory:-7
 i~ ?:-7
 i~ actual:3
 i~ add:-6
 i~ added:4
 i~ alway:-3
 i~ am:5
 i~ ask:1
 i~ began:-6
 i~ believe:2
 i~ blame:-6
 i~ boil:1
 i~ bought:-10
 i~ bring:-5
 i~ buy:-4
 i~ call:-1
 i~ came:3
 i~ can:-10
 i~ cant:-4
 i~ carri:11
 i~ caught:2
 i~ chang:-6
 i~ check:-9
 i~ chuck:6
 i~ clean:1
 i~ cook:-1
 i~ copi:3
 i~ copy:-5
 i~ couldnt:1
 i~ count:-3
 i~ did:2
 i~ didnt:1
 i~ dilut:-6
 i~ dilute:-4
 i~ dissolv:2
 i~ dissolve:4
 i~ do:-7
 i~ dont:3
 i~ doubl:7
 i~ drain:9
 i~ dropp:1
 i~ empti:11
 i~ ended:-5
 i~ ever:-7
 i~ fill:9
 i~ final:-6
 i~ finish:-2
 i~ first:-2
 i~ fish:10
 i~ fold:-4
 i~ forgot:-3
 i~ found:-2
 i~ freeze:1
 i~ froze:-2
 i~ gave:-3
 i~ get:-5
 i~ give:-4
 i~ go:1
 i~ got:-1
 i~ guess:12
 i~ had:-2
 i~ hadnt:5
 i~ halv:6
 i~ hand:-5
 i~ hate:-3
 i~ have:-1
 i~ held:4
 i~ honest:10
 i~ hope:-4
 i~ just:2
 i~ keep:-3
 i~ kept:3
 i~ knock:5
 i~ know:-4
 i~ learn:-6
 i~ leave:2
 i~ left:10
 i~ let:4
 i~ like:-4
 i~ lost:6
 i~ make:-8
 i~ may:3
 i~ mean:-1
 i~ meant:-7
 i~ measur:-2
 i~ mess:-5
 i~ mix:-6
 i~ mixed:3
 i~ must:4
 i~ near:-5
 i~ never:4
 i~ notic:7
 i~ ok:1
 i~ once:-11
 i~ open:-1
 i~ own:1
 i~ paid:-4
 i~ panick:-2
 i~ plan:-5
 i~ plann:-3
 i~ pour:1
 i~ press:-7
 i~ print:-6
 i~ promis:2
 i~ put:3
 i~ ran:-2
 i~ read:4
 i~ real:-3
 i~ realis:4
 i~ remember:-1
 i~ render:-3
 i~ replac:3
 i~ rins:5
 i~ round:5
 i~ run:-7
 i~ said:-9
 i~ saw:7
 i~ say:1
 i~ scrap:8
 i~ see:7
 i~ sell:-3
 i~ set:-1
 i~ shall:1
 i~ shook:5
 i~ should:3
 i~ siev:-1
 i~ skipp:6
 i~ smell:1
 i~ soap:-3
 i~ split:-1
 i~ sprinkl:-4
 i~ start:1
 i~ stir:-6
 i~ stirr:4
 i~ stood:-1
 i~ stopp:8
 i~ suppose:1
 i~ swapp:11
 i~ swear:1
 i~ take:-7
 i~ teach:-5
 i~ tell:-9
 i~ test:-2
 i~ think:2
 i~ thought:-2
 i~ threw:2
 i~ tipp:1
 i~ told:-1
 i~ took:3
 i~ translate:-3
 i~ trust:-5
 i~ turn:-5
 i~ type:1
 i~ typed:8
 i~ use:-4
 i~ used:2
 i~ usual:3
 i~ wait:-5
 i~ want:3
 i~ warm:-6
 i~ was:-6
 i~ wash:-2
 i~ wasnt:2
 i~ weigh:3
 i~ went:5
 i~ will:-6
 i~ wiped:-8
 i~ work:-7
 i~ would:2
 i~ write:-10
 i~ wrote:6
 i~K:-8
 jam~ jar:2
 january:-9
 january~ and:-5
 jar:3
 jars:-8
 jars~ of:-5
 jar~ and:5
 jar~ of:7
 jar~ so:-4
 jelly:-6
 job:4
 join~ the:4
 jug's:4
 jug:2
 jugs:2
 jug~ ::1
 jug~ and:4
 jug~ from:3
 jug~ in:-6
 jug~ is:-9
 jug~ of:4
 jug~ on:-7
 jug~ so:7
 jug~ to:7
 jug~ was:-3
 july:-3
 jump:5
 jumps:3
 jumps~ in:7
 june:-11
 just~ a:-2
 just~ as:-1
 just~ for:-8
 just~ the:3
 just~ want:-10
 just~ what:-6
 just~F:-5
 k:4
 keep:-7
 keeps:-7
 keeps~ it:-6
 keeps~ the:-2
 keep~ a:-4
 keep~ in:-6
 keep~ it:-9
 keep~ my:-7
 keep~ the:-1
 keep~0:-4
 keep~<:2
 keep~t:-3
 kept:3
 kept~ a:-1
 kept~ back:2
 kept~ in:-4
 kept~ the:1
 kept~0:2
 kettle:7
 key:-5
 kg:3
 kg~ cost:-2
 kid:9
 kidd:-8
 kids:-2
 kill:-6
 kilo:5
 kilo~ in:-5
 kilo~ is:1
 kilo~ of:-4
 kinda:2
 kind~ check:-8
 kind~ of:-2
 kind~ regard:-4
 kind~ with:3
 kiss:-6
 kitchen~ and:3
 kitchen~ bar:-7
 kitchen~ is:-4
 kitchen~ scale:6
 kitchen~ so:-4
 kitchen~ soap:-1
 kitchen~ was:-7
 knew:-5
 knife:-8
 knob:8
 knob~ of:8
 knock:4
 knock~ a:-3
 knock~ the:5
 know:3
 knows:3
 knows~ how:4
 know~ ::-6
 know~ but:-2
 know~ how:2
 know~ i:-5
 know~ is:-8
 know~ it:1
 know~ its:-6
 know~ that:4
 know~ the:-1
 know~ what:-7
 know~ whether:-5
 know~ which:2
 krakow:-2
 k~0:-9
 l:-6
 la:-5
 lab:-5
 labell:-2
 label~ ::-7
 label~ on:-7
 label~ says:5
 label~0:-7
 ladi:-4
 ladl:11
 ladle:6
 ladle~ of:4
 lads:-3
 lady:-3
 lady~ at:-5
 lady~ in:-4
 lady~ on:-6
 land:2
 last:-5
 lasts:-7
 last~ autumn:-5
 last~ batch:-7
 last~ bit:3
 last~ minute:6
 last~ month:5
 last~ night:-6
 last~ of:-7
 last~ one:-9
 last~ time:-5
 last~ week:1
 last~ weeks:3
 last~ winter:-8
 last~ year:-4
 last~ years:-3
 last~0:2
 last~F:-6
 late:-1
 later:-2
 later~ on:-5
 lather:-5
 lather~ is:-3
 lather~ like:-6
 lather~ was:-5
 laugh:1
 laugh~ at:-2
 laundry:-1
 laundry~ bar:-8
 laundry~ bars:-3
 laundry~ soap:-5
 law:-2
 laws:-3
 law~ who:-4
 layer:3
 la~A:-5
 lb:1
 lb~ oz:-7
 leaflet:-1
 leak:-3
 learn:-8
 learn~ from:-2
 learn~ that:1
 least:-3
 least~t:-1
 leav:-5
 leave:-4
 leave~ it:-2
 leave~ out:-7
 leave~ the:-3
 leave~ them:-2
 leave~t:-1
 leav~ a:-5
 leav~ the:-6
 leeds:4
 leftover:1
 leftover~F:-2
 left~ and:1
 left~ for:-9
 left~ from:6
 left~ in:-2
 left~ it:1
 left~ of:-7
 left~ on:2
 left~ out:-2
 left~ over:-4
 left~ so:-1
 left~ the:1
 left~ to:2
 length:-3
 lent:-1
 less:5
 lesson:-7
 less~ of:6
 less~ than:-2
 less~F:-2
 less~W:-2
 let:-1
 lets:1
 letter:4
 let~ cool:-2
 let~ it:-4
 let~ me:-3
 let~ the:-3
 let~ them:2
 let~ us:-7
 let~ your:-7
 level:-1
 library:-5
 library~ book:-4
 lid:-1
 lidd:-1
 lids:-5
 lid~ and:-7
 lid~ of:-7
 lid~ off:3
 lid~ on:-5
 lie:-7
 life:3
 lift:3
 lift~ the:3
 light:2
 lighter:-7
 light~ on:2
 like:-3
 liked:-6
 likes:-5
 likes~ it:4
 likewise:1
 like~ a:-4
 like~ alway:-8
 like~ an:-6
 like~ candle:-7
 like~ cheese:-6
 like~ cold:-5
 like~ custard:-4
 like~ i:-4
 like~ in:1
 like~ it:-2
 like~ mad:1
 like~ mash:-5
 like~ me:-5
 like~ my:3
 like~ noth:-1
 like~ paper:3
 like~ porridge:4
 like~ sandpaper:-5
 like~ someone:-1
 like~ soup:-6
 like~ stone:-5
 like~ that:-6
 like~ the:-6
 like~ thin:-3
 like~ this:1
 like~ to:-5
 like~ wet:6
 like~ you:-2
 like~%:1
 like~0:5
 like~F:-8
 like~L:-6
 like~S:-4
 like~U:-7
 like~X:-3
 like~t:6
 like~w:5
 limit:-7
 line:7
 lined:-7
 lined~ w:-5
 lined~ with:-2
 linen:-5
 line~ ::5
 line~ the:-2
 lino:1
 lip:-5
 lip~ balm:-5
 liquid:2
 liquid~ and:-3
 liquid~ hand:-3
 liquid~ soap:-1
 liquor:7
 list:3
 list~ for:-9
 list~ i:4
 list~ is:-2
 litre:2
 little:2
 little~ ?:-6
 little~ of:1
 little~A:3
 little~F:-8
 little~W:2
 live:-6
 lived:-8
 lives:-7
 lives~ in:-6
 loaf:-4
 loaf~ ::-4
 loaf~ i:2
 loaf~ mold:-2
 loaf~ mould:-4
 loaf~ tin:-3
 loav:-4
 local:-5
 lock:-8
 loft:-3
 log~ ::-1
 lol:-3
 long:-2
 longer:-4
 longer~ than:-4
 long~ as:-6
 long~ one:1
 long~ sleev:-5
 long~ story:7
 long~ time:-4
 look:3
 looks:-9
 looks~ like:-4
 looks~ ok:-1
 look~ a:2
 look~ at:-6
 look~ for:2
 look~ it:-5
 look~ like:1
 look~ ok:-4
 look~ over:-6
 look~ right:-5
 loosen:8
 loosen~ it:7
 lose:-2
 lost:3
 lost~ the:-7
 lot:-1
 lotion:7
 lots:-6
 lots~ of:-5
 lot~ ?:-1
 lot~ of:1
 lot~ to:-2
 lot~0:3
 loud:-8
 love:-7
 loves:3
 love~ a:2
 love~ and:-3
 love~ but:-3
 love~ it:-5
 love~ to:-3
 low:-2
 lower:6
 lowest:-4
 lowest~ flame:-5
 low~ and:-3
 low~ for:3
 low~ heat:-1
 low~ in:1
 low~t:-3
 luck:2
 lucki:-7
 lucky:-6
 lukewarm:-6
 lump:6
 lumps:-4
 lumpy:6
 lump~ of:-2
 lunch:-7
 lurker:-4
 luxury:-4
 lye's:4
 lye:1
 lyes:-7
 lyes~ together:-6
 lying:4
 lyon:-4
 l~0:-4
 m:-6
 machine:-6
 mad:-1
 made:2
 made~ ::-5
 made~ for:-9
 made~ from:-3
 made~ hers:-7
 made~ in:-8
 made~ it:2
 made~ my:-2
 made~ of:-4
 made~ on:-3
 made~ soap:-3
 made~ the:6
 made~ this:-4
 made~ up:5
 made~ with:-8
 made~0:8
 made~t:-1
 magazine:-5
 mak:8
 maker:-4
 makes:-5
 makes~ a:-8
 makes~ it:-3
 makes~ no:-6
 makes~ sense:-3
 makes~ the:-4
 makes~ up:8
 makes~0:-1
 makes~T:-9
 makes~b:-4
 make~ a:-9
 make~ exact:-4
 make~ it:7
 make~ sense:-2
 make~ soap:-5
 make~ the:-8
 make~ this:-5
 make~ up:-2
 mak~ it:6
 mak~ the:-2
 mak~ this:-1
 mama:-7
 man:-6
 march:-10
 margin:-2
 marit:-5
 mark:6
 market:-6
 market~ told:-3
 marks:1
 marta:5
 mash:-4
 mash~ potato:-4
 mass:-6
 match:-1
 mate:1
 material:-6
 maths:3
 matter:4
 matter~ to:2
 maybe:9
 maybe~ a:7
 maybe~0:5
 maybe~<:-1
 maybe~t:-8
 maybe~w:3
 may~ be:1
 may~ have:5
 may~ i:-6
 me:-1
 mean:-3
 meant:-1
 meant~ to:-1
 meanwhile:3
 mean~ the:4
 mean~ to:-5
 measur:4
 measur~ cup:4
 measur~ it:1
 measur~ jug:8
 measur~ the:2
 mechanic:2
 medium:-6
 meets:-1
 meine:-7
 melt:-4
 melts:-9
 melts~ at:-6
 melt~ and:4
 melt~ at:-3
 melt~ by:-8
 melt~ everyth:4
 melt~ first:-8
 melt~ i:-8
 melt~ in:7
 melt~ it:1
 melt~ on:-8
 melt~ the:-5
 melt~ with:3
 melt~=:-3
 member:1
 memory:5
 men:-8
 mention:1
 merci:-4
 mess:-7
 mess~ up:-4
 met:-1
 method:-5
 method~ ::-5
 metric:-6
 me~ ?:4
 me~ about:-3
 me~ and:1
 me~ as:1
 me~ at:3
 me~ before:-5
 me~ but:-2
 me~ for:-2
 me~ how:-8
 me~ i:-3
 me~ if:-3
 me~ in:-3
 me~ it:-5
 me~ its:-8
 me~ on:-2
 me~ that:-2
 me~ the:2
 me~ this:-4
 me~ to:-6
 me~ what:1
 me~ where:2
 me~ whether:-1
 me~ with:2
 me~0:-10
 me~t:-7
 microwave:1
 middle:-5
 middle~ of:4
 might~ have:4
 mild:3
 milder:-1
 milk:-7
 milk~ carton:-7
 mill:-7
 min:8
 mind:4
 mind~ the:-3
 mine:-2
 mine~ had:-4
 mine~ has:-4
 mine~ in:-6
 mine~ is:6
 mine~ took:-6
 mine~ with:4
 minimum:2
 minus:6
 minus~ the:8
 minus~ whatever:7
 minute:-2
 minute~0:-8
 min~ .:6
 misread:11
 miss:3
 miss~ the:5
 mistake:5
 mistake~ and:-7
 mix:3
 mixed:5
 mixed~ at:-7
 mixed~ in:5
 mixed~ it:5
 mixed~ the:2
 mixed~ with:-1
 mixer:-5
 mix~ at:-2
 mix~ the:3
 mix~A:-3
 mk:-4
 ml:11
 mm:-8
 mode:3
 modern:-4
 mold:3
 molds:3
 mold~ holds:-5
 moment:-6
 moms:-3
 mon:3
 monday:-1
 money:4
 month:-1
 month~ i:-4
 month~0:-6
 moon:-5
 mopp:5
 mopp~ up:5
 more:3
 more~ and:-6
 more~ fat:-6
 more~ like:10
 more~ of:2
 more~ or:-3
 more~ than:-4
 more~A:4
 more~F:3
 morn~ and:1
 most:4
 most~ of:10
 mother:-1
 mother~ and:-7
 mother~ did:5
 mother~ in:-1
 mould:-1
 mouldy:4
 mould~ ::-6
 mould~ a:-7
 mould~ and:-2
 mould~ bang:-4
 mould~ by:-2
 mould~ for:-3
 mould~ holds:-4
 mould~ in:-4
 mould~ is:3
 mould~ of:-6
 mould~ on:-6
 mould~ so:-7
 mould~ the:-5
 mould~ was:-6
 mould~ with:-9
 mould~0:-2
 mould~t:-4
 mould~v:-4
 mov:1
 move:-4
 moved:2
 moved~ to:2
 mrs:2
 much:-1
 much~ ?:-5
 much~ and:6
 much~ as:-6
 much~ fat:-3
 much~ for:-10
 much~ of:-5
 much~ superfat:-5
 much~A:-3
 much~F:-2
 much~W:5
 muffin:-5
 mug:5
 multip:5
 mum~ says:-5
 museum:-8
 mush:-6
 must:-4
 must~ be:-8
 mutton:1
 myself:-3
 my~ arm:-4
 my~ aunt:-3
 my~ aunts:2
 my~ babcia:-4
 my~ bars:-5
 my~ bathroom:6
 my~ book:3
 my~ boss:-1
 my~ boyfriend:-2
 my~ brother':4
 my~ brother:-1
 my~ colleague:-5
 my~ country:5
 my~ cousin:-1
 my~ dad:-8
 my~ dads:2
 my~ daughter':-6
 my~ daughter:3
 my~ earlier:4
 my~ elbow:-5
 my~ english:-2
 my~ everyday:-3
 my~ ex:-6
 my~ father:-2
 my~ first:-1
 my~ flatmate:-3
 my~ friend:4
 my~ glass:-2
 my~ good:-6
 my~ gran:-1
 my~ granddaughter:-4
 my~ grandfather:1
 my~ grandmother:-10
 my~ grandson:2
 my~ great:-2
 my~ hair:-1
 my~ hands:-10
 my~ handwrit:-8
 my~ head:-1
 my~ husband:-4
 my~ kilo:-3
 my~ kitchen:4
 my~ last:-9
 my~ late:1
 my~ laundry:-3
 my~ little:3
 my~ mind:8
 my~ mold:-7
 my~ mother:-1
 my~ mould:1
 my~ mums:-6
 my~ nan:-6
 my~ nans:-3
 my~ neighbour:-3
 my~ nephew:-7
 my~ niece:-1
 my~ notebook:7
 my~ notes:-1
 my~ number:-2
 my~ old:-2
 my~ own:3
 my~ partner:-1
 my~ paste:-7
 my~ phone:-4
 my~ plan:-2
 my~ previou:1
 my~ pupil:-1
 my~ question:-3
 my~ recipe:-2
 my~ scale:5
 my~ second:-2
 my~ sheet:-3
 my~ sister:-9
 my~ skin:3
 my~ slow:-5
 my~ soap:-2
 my~ son:1
 my~ spreadsheet:-4
 my~ sums:3
 my~ table:-7
 my~ teacher:-6
 my~ third:-2
 my~ thumb:-1
 my~ tongue:-2
 my~ usual:-8
 my~ very:-6
 my~ wife:2
 my~ wifes:-3
 my~%:-2
 my~0:-7
 my~A:1
 my~F:-2
 my~K:-7
 my~L:-8
 my~S:-4
 my~W:4
 my~l:-6
 my~t:3
 my~w:3
 m~A:-8
 m~F:-4
 n:-1
 name:-9
 name~ ::-4
 nan:-9
 nans:-6
 natural:-5
 near:-5
 nearer:5
 nearer~0:6
 near~ enough:5
 near~ it:-1
 near~ the:-4
 near~%:-10
 near~0:2
 near~d:-1
 near~t:3
 need:-5
 needs:-7
 needs~ a:-6
 needs~ the:-5
 need~ ::-2
 need~ a:-5
 need~ it:4
 need~ more:-7
 need~ the:-5
 need~ to:1
 negative:2
 neighbor:-9
 neighbour:-4
 neither:3
 nephew:-2
 nerv:-8
 nervou:-3
 net:2
 never:-1
 never~ above:-7
 never~ added:5
 never~ again:-9
 never~ bother:-8
 never~ check:-7
 never~ did:-5
 never~ fail:-2
 never~ fails:-3
 never~ go:-10
 never~ got:7
 never~ had:-1
 never~ happen:7
 never~ in:-4
 never~ let:-3
 never~ made:9
 never~ measur:-2
 never~ once:-1
 never~ set:5
 never~ the:-8
 never~ weigh:-1
 never~ went:-9
 new:-4
 news:-5
 newsletter:2
 newspaper:-8
 new~ bottle:-3
 new~ here:-3
 new~ one:5
 new~ scale:-6
 new~ to:-4
 next:-9
 next~ day:-1
 next~ door:-5
 next~ month:-8
 next~ morn:1
 next~ one:-8
 next~ time:-8
 next~ to:6
 next~ year:-2
 nice:4
 nicer:-6
 niece:2
 night:-5
 night~ and:-4
 night~ before:-6
 nil:2
 no:-1
 nobody:-1
 nobody~ answer:-3
 nobody~ had:5
 nobody~ will:-1
 none:5
 none~ at:-7
 none~ in:-11
 none~ of:-1
 none~ the:-3
 nonna:-9
 noon:-6
 nor:-1
 normal:-7
 normal~ ?:-5
 normal~ one:-3
 north:-3
 nose:-8
 note:8
 notebook:-2
 notebook~ ::-5
 notebook~ p:-4
 notebook~ says:1
 notebook~ the:-3
 notes:-3
 notes~ ::2
 notes~ app:-5
 notes~ from:-5
 noth:-5
 noth~ and:-4
 noth~ at:-5
 noth~ but:-6
 noth~ else:-2
 noth~ in:-2
 noth~ only:-4
 notic:8
 notice:1
 notic~ the:3
 notic~ when:7
 not~ ?:-3
 not~ a:-10
 not~ at:-4
 not~ be:-8
 not~ certain:4
 not~ for:-4
 not~ going:1
 not~ in:3
 not~ like:-6
 not~ more:-4
 not~ on:9
 not~ so:-7
 not~ sure:4
 not~ that:-8
 not~ the:-2
 not~ to:-8
 not~ too:-4
 not~ touch:-5
 not~ use:-2
 not~ what:-3
 not~0:-4
 not~A:-4
 not~F:11
 not~b:7
 not~e:10
 not~w:-2
 nought:-1
 november:-4
 now:4
 nowhere:-3
 now~ ::-5
 now~ ?:2
 now~ and:-4
 now~ i:-1
 now~ it:-3
 now~ its:6
 now~ my:4
 now~ on:4
 now~ so:-9
 now~ the:2
 now~F:2
 no~ ?:-2
 no~ ash:-4
 no~ difference:-9
 no~ gel:-5
 no~ good:-3
 no~ harm:-6
 no~ i:-6
 no~ idea:2
 no~ it:3
 no~ longer:5
 no~ more:-1
 no~ need:-6
 no~ one:-1
 no~ other:-7
 no~ reason:-5
 no~ scale:1
 no~ smell:-2
 no~ sorry:1
 no~ superfat:-7
 no~ time:-5
 no~ wait:3
 no~ white:-3
 no~ zap:-6
 no~0:2
 no~F:9
 no~I:4
 no~S:-8
 no~W:4
 no~X:-7
 nr:-3
 nr~0:-3
 number:-5
 number~ ?:-4
 number~ and:3
 number~ are:1
 number~ hold:-2
 number~ i:-4
 number~ is:-4
 number~0:-10
 nurse:-4
 nuts:-1
 n~ it:-2
 n~=:-5
 n~F:2
 o'clock:-3
 o:-5
 oat:-9
 oat~X:-2
 obvious:-4
 obvs:-6
 october:1
 odd:-6
 odds:-7
 of:2
 off:4
 offcut:-5
 offer:-7
 office:-7
 off~ ?:-1
 off~ a:1
 off~ and:3
 off~ at:-7
 off~ by:-2
 off~ for:6
 off~ i:-6
 off~ in:3
 off~ it:1
 off~ my:-3
 off~ the:3
 off~ what:8
 off~ with:-2
 off~0:-5
 off~l:2
 often:-6
 of~ a:1
 of~ about:-5
 of~ all:-8
 of~ ammonia:-5
 of~ an:1
 of~ anyth:-9
 of~ batter:-8
 of~ clean:-4
 of~ cold:2
 of~ course:-1
 of~ doors:-7
 of~ dried:-1
 of~ each:7
 of~ everyth:4
 of~ extra:-1
 of~ eyes:-2
 of~ fat:2
 of~ fats:3
 of~ half:1
 of~ her:1
 of~ it:1
 of~ its:1
 of~ last:4
 of~ melt:1
 of~ mine:-5
 of~ my:-3
 of~ noth:-6
 of~ oil:1
 of~ oils:-3
 of~ old:4
 of~ one:3
 of~ our:-6
 of~ paste:-8
 of~ plain:1
 of~ rough:-2
 of~ soap:1
 of~ some:2
 of~ stirr:-7
 of~ sunday:-6
 of~ that:8
 of~ the:3
 of~ them:1
 of~ these:-5
 of~ this:1
 of~ those:-1
 of~ us:1
 of~ warm:-2
 of~ wet:-6
 of~ what:-3
 of~ which:-3
 of~ you:-5
 of~ your:-6
 of~%:1
 of~0:-7
 of~=:2
 of~>:-8
 of~A:2
 of~B:3
 of~C:5
 of~F:-4
 of~I:-4
 of~K:3
 of~L:8
 of~M:-6
 of~N:9
 of~S:1
 of~U:2
 of~W:2
 of~X:-4
 of~b:-2
 of~v:-10
 of~w:-9
 oh:2
 ohio:-5
 oh~ and:1
 oil:4
 oils:-1
 oils~ and:-4
 oils~ are:-3
 oils~ as:1
 oils~ at:-5
 oils~ because:-6
 oils~ come:-4
 oils~ g:-5
 oils~ in:-3
 oils~ to:-1
 oils~ were:3
 oils~>:-2
 oily:7
 oil~ ?:-7
 oil~ and:-1
 oil~ at:3
 oil~ g:-5
 oil~ grams:-5
 oil~ in:-5
 oil~ is:1
 oil~ on:-5
 oil~ to:3
 oil~ was:-2
 oil~ weight:-6
 okay:-4
 okay~ ?:-4
 okay~ for:-4
 okay~ so:-2
 ok~ ?:-3
 ok~ before:-4
 ok~ for:-7
 ok~ or:-2
 ok~ so:1
 ok~ to:-5
 ok~ with:-6
 old:2
 older:3
 oldest:-7
 old~ and:1
 old~ blanket:-2
 old~ days:-4
 old~ notebook:-7
 old~ one:-5
 old~ pillowcase:-3
 old~ recipe:-6
 old~ sheet:1
 old~ soap:-6
 old~ tub:5
 old~A:3
 old~F:2
 olej:-3
 olej~F:-3
 oma:-4
 omg:-6
 on:-1
 once:-4
 once~ a:3
 once~ and:1
 once~ i:1
 once~ it:3
 once~ its:-3
 once~ the:-3
 one:-3
 ones:-9
 ones~ are:-8
 one~ ::-5
 one~ ?:-2
 one~ after:-7
 one~ and:3
 one~ at:8
 one~ bar:-7
 one~ batch:-4
 one~ block:2
 one~ bottle:-2
 one~ bowl:-7
 one~ can:-4
 one~ corner:-2
 one~ for:-3
 one~ from:-7
 one~ go:3
 one~ had:-7
 one~ has:-4
 one~ in:1
 one~ into:-1
 one~ is:-2
 one~ jug:-2
 one~ last:-5
 one~ loaf:1
 one~ of:3
 one~ on:-7
 one~ pan:-5
 one~ pot:-6
 one~ since:5
 one~ sorry:-6
 one~ the:2
 one~ thing:4
 one~ time:-5
 one~ to:-8
 one~ was:-1
 one~ weigh:-8
 one~ went:-3
 one~ who:-6
 one~ with:-6
 one~ without:-5
 one~0:1
 one~F:-1
 one~t:-1
 one~w:-8
 onion:2
 only:4
 only~ a:2
 only~ about:6
 only~ after:-8
 only~ does:4
 only~ gave:6
 only~ got:-8
 only~ had:10
 only~ have:-1
 only~ if:-1
 only~ notic:7
 only~ put:2
 only~ so:-5
 only~ the:-1
 only~ then:-9
 only~ there:-4
 only~ want:-11
 only~ when:1
 only~ whether:-7
 only~0:11
 only~=:-9
 only~F:-10
 only~l:-1
 onto:-1
 onto~ the:2
 on~ ::-3
 on~ a:-8
 on~ and:-8
 on~ before:-6
 on~ day:5
 on~ friday:1
 on~ glov:-2
 on~ her:-2
 on~ here:-10
 on~ high:-5
 on~ i:5
 on~ it:-5
 on~ its:-3
 on~ low:-5
 on~ me:-4
 on~ monday:-8
 on~ offer:-7
 on~ one:-5
 on~ our:3
 on~ page:-6
 on~ paper:-9
 on~ saturday:-1
 on~ slow:-2
 on~ sunday:-1
 on~ that:-2
 on~ the:1
 on~ them:-6
 on~ this:5
 on~ thursday:2
 on~ to:-4
 on~ top:1
 on~ tue:-1
 on~ tuesday:-5
 on~ we:-8
 on~ with:7
 on~ your:-3
 on~0:-9
 on~>:-8
 on~A:2
 on~F:5
 on~t:-4
 oops:5
 open:1
 opens:5
 open~ a:-8
 open~ all:5
 open~ since:8
 open~ the:-1
 open~ window:-4
 operator:-5
 operator~ ::-4
 opinion:-7
 opinion~ on:-4
 optional:5
 or:-3
 order:-7
 order~ of:-6
 ordinary:3
 original:-3
 or~ a:1
 or~ am:-8
 or~ did:-8
 or~ do:-4
 or~ does:-5
 or~ is:-8
 or~ it:-7
 or~ just:-5
 or~ less:-3
 or~ more:-8
 or~ no:-6
 or~ not:-3
 or~ should:-4
 or~ take:4
 or~ the:-2
 or~ thereabout:3
 or~ too:-2
 or~ will:-3
 or~0:1
 or~A:-6
 or~N:-7
 other:-3
 otherwise:-9
 otherwise~ it:-8
 other~ and:-2
 other~ half:1
 other~ way:-5
 other~0:3
 other~W:-7
 other~w:-1
 ought:-6
 ought~ to:-6
 ounc:5
 ounce:-3
 ounc~ for:5
 our:-1
 ours:-10
 ours~ is:-7
 our~ club:3
 our~ course:-3
 our~ group:-9
 our~ own:-1
 our~ teacher:-6
 our~ town:-2
 our~ village:5
 out:2
 outdoor:-6
 outside:-8
 outside~ and:-2
 outside~ on:-6
 out~ ::-8
 out~ after:1
 out~ again:4
 out~ and:5
 out~ at:4
 out~ by:4
 out~ for:4
 out~ i:-7
 out~ in:-3
 out~ is:-8
 out~ like:-9
 out~ of:-1
 out~ on:2
 out~ right:-5
 out~ so:3
 out~ the:-3
 out~ to:10
 out~ what:2
 out~ with:3
 out~0:4
 out~=:-3
 out~A:-3
 out~N:1
 oval:-4
 oven:-9
 oven~ at:-5
 over:1
 overfat:2
 overheat:-7
 overnight:2
 overnight~ at:-5
 over~ ?:-6
 over~ a:1
 over~ and:3
 over~ before:-5
 over~ for:6
 over~ from:4
 over~ half:-7
 over~ in:5
 over~ it:1
 over~ that:3
 over~ the:-3
 over~ to:1
 over~%:-7
 over~0:-1
 over~d:-3
 over~t:-5
 own:3
 own~ ::-3
 own~ a:-5
 own~ hives:-1
 own~ line:-3
 own~0:-3
 own~F:3
 oyl:-4
 oz:2
 oz~ g:-3
 p:-6
 pack:1
 packet:6
 packet~ of:-2
 packs:-1
 packs~ of:-3
 paddle:-5
 page:-1
 page~ ::-6
 page~ for:-5
 page~ is:-4
 page~ sorry:-5
 page~0:-2
 paid~ for:7
 paid~0:-6
 pail:-9
 paint:6
 pair:3
 pairs:-7
 pale:-12
 pan:2
 panic:-8
 panick:2
 pantry:-5
 pan~ and:2
 paper~ and:-4
 paper~ cup:4
 paper~0:-5
 paper~t:-4
 parcel:5
 parent:-3
 parish:-7
 part:-1
 participant:2
 partner:-2
 parts:-1
 part~ ?:4
 part~ of:2
 part~0:-9
 pass:-9
 passt:-5
 passt~ das:-4
 pass~ the:-4
 past:2
 paste:-9
 paste~ ::2
 paste~ in:-4
 paste~ is:-5
 paste~ to:-6
 paste~ went:-3
 paste~ with:-3
 pastry:4
 past~ from:-5
 past~ its:-6
 past~0:-3
 patch:-5
 patience:-7
 patient:-8
 pay:-1
 pcs:-6
 pct:-7
 pdf:-8
 peak:-5
 pearl:1
 pellet:6
 pencil:-2
 pencill:8
 pencil~ and:5
 people:-11
 people~ ask:-5
 people~ in:-2
 people~ who:-7
 people~0:-1
 per:-3
 percent:4
 percentag:-3
 perfect:-8
 perhap:9
 perhap~0:6
 period:-4
 person:-8
 per~ bar:-4
 per~ batch:2
 per~ kilo:-5
 petra:4
 ph:-9
 pharmacist:1
 pharmacy:-7
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
 photo:-4
 photo~ of:-1
 ph~ strip:-7
 pick:-3
 picture:-8
 piec:-3
 piece~ for:-6
 piece~ of:7
 piec~ of:4
 piec~0:-6
 pig:-8
 pillowcase:-3
 pinch:-1
 pinch~ of:-3
 pink:4
 pitcher:-5
 place:4
 place~ of:4
 plain:-3
 plain~ white:-2
 plain~F:-5
 plain~W:6
 plan:-3
 plann:-2
 plann~ to:2
 plan~ for:2
 plastic:2
 plastic~ cup:2
 plastic~ jug:4
 plate:4
 play:-5
 pleas:-3
 please:6
 please~ ?:3
 please~ be:-7
 please~ check:-2
 please~ dont:-5
 please~ excuse:-3
 please~ look:-8
 please~ my:6
 please~ tell:2
 please~ verify:-8
 plenty:-6
 plenty~ for:-7
 plenty~ of:-4
 pls:1
 pls~ check:-3
 plumber:-3
 plus:3
 plus~ a:3
 plus~ an:3
 plus~ another:5
 plus~ the:6
 plus~0:-4
 plus~<:-7
 plus~=:-5
 plus~w:-7
 plz:-5
 pocket:2
 point:-2
 poland:-2
 polish:-1
 polypropylene:-4
 poor:-8
 popcorn:5
 pops:-3
 porch:-5
 porridge:2
 portion:-2
 portugal:1
 possible:-5
 post:-2
 postal:2
 postal~ scale:2
 postman:2
 posts:-7
 post~ this:-7
 post~t:-2
 pot:1
 potato:-8
 potato~ then:-3
 pots:-3
 pot~ ::-5
 pot~ and:2
 pot~ at:-5
 pot~ for:-8
 pot~ holds:2
 pot~ i:-6
 pot~ is:-4
 pot~ of:-1
 pot~ off:-8
 pot~ oils:-9
 pot~ was:2
 pot~ with:2
 pour:5
 pours:-8
 pour~ ::-5
 pour~ and:2
 pour~ at:-9
 pour~ cover:-1
 pour~ in:5
 pour~ into:-6
 pour~ it:1
 pour~ off:4
 pour~ on:1
 pour~ out:6
 pour~ the:-7
 pour~0:5
 pour~=:2
 pour~>:-6
 pour~A:-3
 pour~F:-1
 pour~t:-3
 pour~w:-10
 powder:5
 powder~0:6
 power:-1
 power~ cut:4
 pp:-6
 ppl:-8
 practical:-6
 prefer:6
 premix:-8
 prep:-4
 present:-1
 press:-4
 press~ in:-3
 press~ into:-2
 press~ it:-2
 press~0:-9
 pretty:-7
 pretty~ but:-6
 previou:3
 pric:-5
 price:-8
 print:4
 printout:-6
 print~0:-4
 prob:3
 probab:1
 problem:-2
 proces:-2
 proces~ ::-2
 proces~ crock:-3
 proces~ in:-2
 professor:3
 project:-6
 promis:-3
 promis~ to:1
 proper:-3
 proud:-6
 ps:4
 pub:-3
 puck:-2
 pucks:-3
 puck~ dual:-6
 pudd:-6
 puddle:3
 pull:3
 pump:-2
 pure:1
 pure~F:-4
 purity:7
 push:-6
 put:3
 puts:-7
 puts~ everyth:-3
 put~ a:4
 put~ in:5
 put~ it:-1
 put~ on:-1
 put~ the:1
 put~ them:-4
 put~ together:-6
 put~0:-2
 put~<:-6
 put~=:-9
 put~>:1
 put~F:3
 put~w:-2
 q:-8
 qty:-5
 quantiti:7
 quantity:-4
 quantity~ of:-4
 quarter:9
 quarter~ of:6
 question:-5
 question~ ::-5
 question~ from:-3
 question~ is:-5
 quick:-7
 quicker:-4
 quicker~ than:-5
 quick~ one:-4
 quite:1
 quot:-6
 q~ ::-3
 r:-1
 rack:-5
 rack~ and:-1
 radiator:-4
 radio:-7
 rain:-2
 rainy:-6
 rais:-6
 ran:5
 rancid:1
 rancid~ so:6
 rang:5
 ran~ dry:3
 ran~ out:2
 ran~ short:3
 ran~ the:-7
 rate:-6
 rather:5
 rather~ have:-1
 rather~ than:5
 raw:3
 re:-4
 reach:-4
 reach~ the:5
 reach~d:-6
 reader:-2
 reads:4
 reads~ in:-5
 ready:2
 ready~ for:-7
 ready~ made:2
 ready~ mixed:4
 ready~ to:-6
 read~ it:-3
 read~ that:-5
 read~ the:-3
 read~ this:-5
 read~0:-1
 read~F:4
 read~b:-1
 real:2
 realis:5
 reality:2
 real~ have:-4
 real~A:-3
 real~N:5
 reason:-3
 rebatch:4
 recall:6
 receipt:9
 recette:-4
 recheck:2
 recip:-8
 recipe:-3
 recipe~ ::-3
 recipe~ ?:-3
 recipe~ and:-5
 recipe~ card:-1
 recipe~ for:2
 recipe~ from:-6
 recipe~ i:-4
 recipe~ in:4
 recipe~ is:-2
 recipe~ of:-5
 recipe~ on:-5
 recipe~ was:2
 reckon:4
 reckon~ with:1
 record~0:-8
 red:2
 refill:2
 regard:-6
 remain:-7
 remainder:4
 remain~0:2
 remark:-6
 remark~ ::-2
 remember:3
 remember~ it:-4
 remember~ the:1
 render:-8
 render~ it:2
 render~ the:-6
 render~ twice:-5
 render~=:-4
 repeat:-7
 replac:6
 replace:-5
 replace~ it:3
 replac~ by:6
 replac~ the:-2
 reply:-6
 report:-3
 rescue:6
 rest:3
 rest~ is:5
 rest~ of:-2
 rest~t:-2
 retir:-6
 rev:-8
 rev~0:-7
 re~ ::-3
 ribbon:-4
 rice:-3
 rich:-11
 rid:-3
 rid~ of:-3
 right:-2
 right~ ?:-2
 right~ about:1
 right~ amount:-6
 right~ and:-5
 right~ at:2
 right~ but:7
 right~ for:-8
 right~ now:-6
 right~ on:-5
 right~ or:-3
 right~ so:-4
 right~ the:-2
 right~ to:-4
 right~ with:-9
 rim:-1
 ring:-7
 ring~t:-1
 rins:1
 rinse:-5
 rinse~ the:-3
 rins~ the:-1
 rises:-5
 roast:-3
 rock:-7
 roll:-6
 room:-3
 room~ for:2
 room~ temp:-4
 room~ temperature:-1
 room~0:-5
 rough:1
 rough~d:-1
 rough~w:1
 round:1
 round~ and:-3
 round~ it:-1
 round~ the:3
 round~ to:3
 row:1
 row~0:6
 rspo:-7
 rubb:-1
 rugby:-3
 rugby~ club:-3
 ruin:-5
 rule:-11
 rules:1
 run:-3
 runn:-9
 runny:6
 runs:-1
 run~ it:-8
 run~ out:-9
 run~ the:-3
 rustic:-7
 ruth:2
 s0ap:-5
 s:-6
 sack:-3
 safe:-1
 safety:-4
 safe~ ?:-6
 safe~ side:4
 safe~ to:-3
 said~ a:4
 said~ it:-2
 said~ my:6
 said~ no:-5
 said~ so:-7
 said~ that:-6
 said~ the:-1
 said~ yes:-7
 said~0:-2
 said~>:-6
 said~b:5
 salad:-7
 sale:-7
 salt:4
 same~ amount:6
 same~ as:-6
 same~ bar:-3
 same~ fats:1
 same~ for:-3
 same~ in:1
 same~ number:-7
 same~ oils:-3
 same~ pot:4
 same~ recipe:5
 same~ thing:-2
 same~ weight:11
 same~F:-1
 same~b:8
 sample:-7
 sandpaper:-5
 sane:-6
 sane~ ?:-3
 sang:-8
 sanity:-5
 sanity~ check:-5
 saponification:2
 sat:1
 saturday:-2
 sat~ in:1
 sat~ on:-9
 sat~t:-3
 saucer:-5
 save:1
 saves:-6
 savon:-3
 saw:9
 saw~ it:3
 saw~ the:8
 say:5
 says:4
 says~ ::-6
 says~ and:2
 says~ but:-5
 says~ he:6
 says~ i:2
 says~ it:-4
 says~ its:-8
 says~ min:7
 says~ my:-8
 says~ that:1
 says~ the:-2
 says~0:6
 says~>:4
 says~A:2
 says~F:-2
 says~b:-2
 says~e:5
 says~t:-1
 says~v:3
 says~w:3
 say~ a:6
 say~ how:2
 say~ it:-8
 say~ its:-4
 say~ so:-1
 say~ that:1
 say~ thats:-6
 say~ the:-9
 say~%:3
 say~0:10
 say~F:-7
 say~b:8
 say~w:7
 scal:-2
 scale:3
 scale~ ::-3
 scale~ and:-8
 scale~ at:6
 scale~ before:-8
 scale~ but:-6
 scale~ died:4
 scale~ does:-8
 scale~ for:-9
 scale~ jumps:2
 scale~ only:4
 scale~ says:2
 scale~ so:-10
 scale~ switch:2
 scale~ that:-2
 scale~ was:6
 scale~ with:-2
 scale~w:-6
 scar:-4
 school:-3
 school~ fair:4
 science:-7
 scoop:6
 scorch:-2
 scrap:7
 scrap~ it:-1
 scrap~ the:4
 scratch:-12
 scribbl:-2
 scrubb:-7
 scrubb~ the:-6
 scum:2
 seal:-3
 season:4
 second~ batch:-7
 second~ day:-7
 second~ go:1
 second~ half:4
 second~ one:-5
 second~ opinion:-4
 second~ pair:-1
 second~ time:4
 second~ try:-2
 secret:-6
 see:2
 seed:-4
 seem:8
 seems:-6
 seen:-1
 see~ a:-7
 see~ here:2
 see~ how:-4
 see~ if:-5
 see~ it:-8
 see~ me:-4
 see~ that:5
 see~ the:-2
 see~ through:-6
 see~ what:3
 seiz:-1
 self:-1
 sell:-8
 seller:4
 sells:5
 sells~ at:-4
 sell~ at:-1
 sensible:-5
 sensible~ ?:-4
 sensitive:4
 sent:4
 sent~ me:2
 separat:-8
 separate:-11
 september:-7
 serv:4
 set:2
 sets:-11
 sets~ in:-2
 sett:-2
 settl:-3
 set~ aside:-6
 set~ in:-9
 set~ it:6
 set~ on:-6
 set~ the:-3
 set~ to:5
 set~ up:-5
 sf:5
 shade:-6
 shall:1
 shampoo:2
 shampoo~ bar:-3
 shar:1
 share:5
 sharp:-2
 shav:-5
 shave:-6
 shave~ puck:-4
 shave~ soap:-3
 shav~ puck:-4
 shav~ soap:-1
 she:-5
 shed:-4
 sheep:-4
 sheet:2
 sheet~ ::-3
 sheet~ and:5
 sheet~ for:2
 sheet~ says:5
 sheet~ sorry:-4
 sheet~0:-8
 shelf:-2
 shelf~ for:-2
 shes:-8
 shes~0:-4
 she~ also:3
 she~ alway:-2
 she~ asked:-6
 she~ did:-5
 she~ does:-1
 she~ gets:-8
 she~ got:-6
 she~ had:-7
 she~ has:-4
 she~ is:-4
 she~ made:-4
 she~ never:2
 she~ right:-2
 she~ said:-2
 she~ says:-3
 she~ stirr:-1
 she~ swear:-2
 she~ told:-2
 she~ used:-4
 she~ wants:4
 she~ was:1
 she~ would:-4
 she~ wrote:1
 shift:-1
 shine:-7
 shiny:-7
 shoe:-3
 shoebox:-3
 shoebox~ lined:-2
 shoe~ box:-4
 shook:4
 shop:3
 shopp:-9
 shopp~ list:-4
 shops:-3
 shop~ and:5
 shop~ had:3
 shop~ soap:2
 short:3
 shortage:-4
 short~ ::4
 short~ ?:-7
 short~ burst:-2
 short~ of:-7
 short~ on:-3
 short~ so:6
 should~ be:-1
 should~ come:-2
 should~ i:-8
 should~ read:10
 should~ say:4
 shout:-8
 show:-4
 shower:-8
 shows~ whole:-8
 shows~0:-3
 shows~w:2
 shrink:-7
 shut:2
 shut~ in:3
 shy:1
 side:-2
 sides:-5
 sideway:-7
 side~ of:5
 sieve:-1
 siev~ it:1
 sign:-4
 silicone:-9
 silicone~ loaf:-5
 silicone~ mould:-4
 sill:-6
 silly:8
 simmer:1
 simp:-1
 simple:-4
 since:3
 since~ about:-4
 since~ i:-2
 since~ it:5
 since~ last:2
 since~ my:5
 since~ spr:2
 since~ the:4
 since~ then:2
 since~0:-9
 since~F:3
 since~t:1
 sink:-1
 sink~ and:-3
 sink~ of:-5
 sink~ with:-1
 sis:-3
 sister':3
 sister:-10
 sister~ in:-4
 sister~ says:-1
 sit:-1
 sits~ in:-6
 sitt:3
 sitt~ in:-4
 sitt~ on:3
 size:1
 size~ of:-3
 skin:-4
 skin~ and:-3
 skin~ is:5
 skin~ off:-4
 skin~ so:3
 skip:4
 skipp:12
 skipp~ it:5
 skipp~ the:8
 skip~ the:1
 skull:-6
 slab:-8
 sleep:-6
 sleev:-5
 slept:-5
 slic:-6
 slice:-6
 slid:-2
 slight:1
 slimy:-8
 slip:2
 slipp:8
 slipp~ and:7
 sliver:-6
 slosh:-3
 slow:-4
 slow~ cooker:-3
 slow~ into:-6
 slush:-7
 small:-3
 smaller:1
 small~ print:4
 smell:-5
 smell~ a:-4
 smell~ faint:-4
 smell~ is:-4
 smell~ it:2
 smell~ like:-1
 smell~ of:-7
 smell~ the:-6
 smelt:4
 smoke:-4
 smooth:-11
 sneeze:-1
 sniff:1
 snow~ white:-4
 so:1
 soak:7
 soap':2
 soap:-8
 soaper:-6
 soaps:-9
 soap~ ::-4
 soap~ ?:-1
 soap~ again:-3
 soap~ and:-5
 soap~ at:-5
 soap~ attempt:-2
 soap~ day:-2
 soap~ diary:-5
 soap~ for:-5
 soap~ from:-6
 soap~ i:-2
 soap~ in:-7
 soap~ is:-9
 soap~ it:-4
 soap~ like:-2
 soap~ my:-6
 soap~ of:-4
 soap~ on:-6
 soap~ paste:-1
 soap~ since:-5
 soap~ the:-3
 soap~ to:-3
 soap~ w:-7
 soap~ was:-5
 soap~ with:-5
 soap~0:-6
 soft:-6
 softer:2
 soft~ after:-2
 soft~ as:-7
 soft~ at:-2
 soft~ for:-5
 soft~ in:-4
 soft~ so:4
 soft~ soap:-5
 sold:-6
 sold~ at:-2
 sold~ out:-3
 sold~0:-5
 soleseife:-6
 solid:-5
 solution~ and:-2
 solution~ plus:-5
 some:2
 somebody:-3
 somebody~ asked:-6
 somebody~ check:-3
 somebody~ else:-6
 somebody~ look:-6
 somebody~ run:-5
 somebody~ tell:1
 somebody~ with:-3
 someone:-2
 someone~ at:-6
 someone~ check:2
 someone~ in:-7
 someone~ look:-8
 someone~ tell:-6
 someone~ to:-7
 someone~ with:-5
 someth:2
 someth~ else:-1
 someth~ like:3
 somewhere:-1
 some~ of:3
 some~ people:-8
 some~0:-5
 some~F:-1
 some~N:6
 some~X:-1
 soon:-5
 sooner:-4
 sooner~ than:-4
 sorry:1
 sorry~ about:-3
 sorry~ for:-4
 sorry~ if:1
 sorry~ it:-5
 sorry~ my:-4
 sorry~ the:3
 sort:4
 sort~ of:-6
 sound:-7
 sound~ like:-7
 sound~ right:2
 soup:-4
 sour:-1
 source:-1
 source~ ::2
 so~ ::-5
 so~ ?:1
 so~ a:3
 so~ all:2
 so~ another:7
 so~ before:-5
 so~ call:6
 so~ did:-3
 so~ do:-1
 so~ does:-5
 so~ dont:2
 so~ excuse:-6
 so~ far:-2
 so~ fast:-4
 so~ for:-7
 so~ forgive:-4
 so~ good:4
 so~ half:1
 so~ here:-6
 so~ hot:-4
 so~ i'd:-5
 so~ i:-5
 so~ if:-5
 so~ im:1
 so~ in:5
 so~ is:1
 so~ it:2
 so~ its:5
 so~ just:5
 so~ keep:-6
 so~ little:-7
 so~ maybe:3
 so~ much:-5
 so~ my:3
 so~ no:4
 so~ noth:-1
 so~ now:-4
 so~ of:6
 so~ on:-4
 so~ please:3
 so~ sorry:-7
 so~ take:2
 so~ that:-8
 so~ thats:5
 so~ the:1
 so~ ther:4
 so~ there:-3
 so~ this:-4
 so~ those:1
 so~ um:3
 so~ we:-2
 so~ what:3
 so~ whats:4
 so~ who:3
 so~%:-7
 so~0:7
 so~=:2
 so~N:11
 so~b:-2
 so~e:-10
 so~l:-7
 so~t:-3
 so~w:-4
 spa:2
 space:-8
 spain:-4
 spare:-4
 spatula:-6
 speak:-1
 speed:-6
 spell:-9
 spend:-8
 spent:1
 spill:-5
 spill~ on:1
 spilt:1
 splash:4
 splash~ of:1
 split:2
 split~ it:1
 split~ the:1
 spoon:-1
 spoonful:5
 spoonful~ in:1
 spoonful~ of:1
 spoon~ and:1
 spoon~ at:-7
 spoon~ by:-6
 spoon~ for:3
 spoon~ in:-3
 spoon~ into:-3
 spoon~ it:-6
 spoon~ of:3
 spoon~ slipp:6
 spot:-8
 spots:-2
 spots~ after:-2
 spot~ on:-5
 spray:-8
 spreadsheet:-5
 sprinkl:-7
 sprinkle:-2
 sprinkle~ the:-4
 sprinkl~=:-1
 spr~ and:1
 squeez:6
 sry:2
 stable:-7
 stack:-2
 stag:-8
 stage:-2
 stage~ at:-3
 stain:-7
 stainles:-5
 stall:1
 stamp:-13
 stamp~ and:-6
 stand:-5
 standard:-5
 stand~ ::-2
 stand~ at:-5
 stand~ by:-5
 stand~ for:-2
 stand~ in:1
 stand~ it:5
 stand~ on:2
 stand~ the:-4
 stand~ there:-4
 stand~ up:2
 stank:-4
 start:-1
 start~ ::-5
 start~ and:-7
 start~ at:-2
 start~ the:-4
 start~ to:-7
 start~ with:5
 start~t:-6
 static:1
 stay:4
 stays:-5
 stays~ as:1
 stays~ in:-6
 stay~ at:2
 stay~ clear:3
 stay~ cloudy:-1
 stay~ in:8
 stay~ on:2
 stay~ soft:-6
 steam:-13
 steel:-3
 steel~ jug:-6
 steel~ pot:-4
 step:-6
 steps:1
 steps~ of:4
 step~0:-1
 stick:1
 sticker:-5
 sticky:4
 stick~ blend:-3
 stick~ blender:-8
 stiff:4
 still:2
 still~ a:-8
 still~ about:1
 still~ cloudy:1
 still~ good:4
 still~ got:3
 still~ had:5
 still~ have:-2
 still~ in:5
 still~ like:-8
 still~ ok:-8
 still~ on:4
 still~ sitt:8
 still~ smell:-5
 still~ soap:-8
 still~ soft:-1
 still~ stand:3
 sting:-7
 stingy:1
 stink:-8
 stir:-4
 stirr~ and:-6
 stirr~ every:-5
 stirr~ for:-3
 stirr~ in:4
 stirr~ into:4
 stirr~ it:-3
 stirr~ one:-6
 stirr~ the:-2
 stirr~ with:-6
 stirr~t:-2
 stirs:-5
 stir~ by:-4
 stir~ every:-1
 stir~ for:-2
 stir~ in:-2
 stir~ it:4
 stir~ the:-8
 stir~ till:-2
 stir~ until:-3
 stir~ with:-4
 stir~0:-5
 stir~=:-2
 stir~t:-3
 stock:2
 stood:2
 stood~ at:2
 stood~ in:6
 stop:-7
 stopp:8
 stopp~ at:7
 stops:-4
 stor:-3
 store:1
 store~ the:-7
 story:1
 stove:5
 straight:-3
 straight~ away:-4
 straight~ from:-6
 straight~ into:-6
 straight~ out:4
 straight~ to:1
 strain:6
 strainer:-8
 strain~ it:-6
 strain~ the:-3
 strain~ through:-9
 strain~ twice:1
 streak:-6
 stream:-4
 street:-6
 strength:3
 stretch:4
 strike:3
 strip:-7
 stripp:-6
 stripp~ the:-6
 strip~ says:-6
 strip~0:-2
 strong:4
 strong~ ?:-8
 strong~ for:-4
 struck:4
 struck~ out:2
 stuck:3
 stuck~ in:2
 stuck~ to:3
 stuff:-3
 stupid:-6
 style:-4
 subject:-2
 subject~ ::-3
 such:2
 suds:-6
 suggest:-1
 suit:-6
 suits:-5
 sum:-2
 summer:-1
 summer~ and:7
 sums:-2
 sun:1
 sunday:1
 sunday~ ::-4
 sunday~ and:-1
 sunday~ in:-7
 sunday~ roast:1
 superfat:6
 superfat~ ::4
 superfat~ ?:-4
 superfat~ and:-7
 superfat~ because:-1
 superfat~ did:-10
 superfat~ do:-5
 superfat~ for:2
 superfat~ i:-1
 superfat~ in:4
 superfat~ is:-10
 superfat~ of:-9
 superfat~ on:-10
 superfat~ should:-11
 superfat~%:4
 superfat~0:3
 supermarket:-5
 supplier:1
 suppose:-1
 sure:3
 sure~ about:-11
 sure~ of:3
 surface:-7
 surviv:-1
 survive:-6
 suspect:4
 swap:-6
 swapp:6
 swapp~ for:4
 swapp~ the:1
 swapp~F:5
 swaps:-11
 swap~ the:-1
 swear:4
 swear~ by:-3
 swear~ it:-7
 swear~ to:7
 sweat:-7
 sweat~ in:-2
 sweet:-5
 swirl:-8
 swirl~ with:-4
 switch:-1
 switch~ itself:-1
 switch~ off:-5
 switch~ to:-7
 swore:-3
 t:-7
 ta:-5
 tabl:-6
 table:4
 tablespoon:5
 table~ is:-7
 table~0:-10
 tabs:-5
 taffy:-8
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
 take~ it:-5
 take~ my:1
 take~ off:-3
 take~ that:4
 take~ the:-5
 take~ your:3
 take~0:-9
 take~=:-4
 take~w:-9
 talk:-8
 tall:-7
 tan:-8
 tap:-1
 tape:-7
 tare:-1
 tared:8
 target:1
 tast:-9
 taste:3
 taught:-6
 taught~ me:-3
 teach:-1
 teacher:-4
 team:-3
 technical:10
 technical~ grade:9
 telephone:-5
 tell:-4
 tells~ me:2
 tell~ me:-1
 tell~ my:-8
 tell~ them:-6
 tell~ us:-8
 temp:-5
 temper:1
 temperature:-7
 temps:-5
 temp~d:-1
 tenth:3
 tenth~ of:4
 term:-5
 test:-3
 tester:2
 test~ ::-5
 test~ at:-9
 test~ it:5
 test~ ok:-4
 test~ with:-6
 text:-3
 than:-1
 thank:-6
 thank~ for:-6
 thank~ to:-2
 thank~ you:-6
 than~ a:-2
 than~ i:4
 than~ it:3
 than~ my:2
 than~ that:-4
 than~ the:-4
 than~ usual:3
 than~0:1
 than~d:-3
 that:4
 thats:-1
 thats~ a:-6
 thats~ all:-6
 thats~ how:4
 thats~ it:-6
 thats~ my:-7
 thats~ normal:-2
 thats~ the:-8
 thats~ what:6
 thats~ why:-5
 thats~>:-2
 thats~l:-11
 that~ ?:3
 that~ a:-7
 that~ about:-5
 that~ and:3
 that~ be:3
 that~ bit:3
 that~ came:-2
 that~ day:9
 that~ enough:-2
 that~ from:-6
 that~ goes:-1
 that~ has:-5
 that~ i'd:-3
 that~ i:3
 that~ im:1
 that~ into:-1
 that~ is:1
 that~ isnt:3
 that~ it:-9
 that~ its:-3
 that~ look:-2
 that~ makes:-6
 that~ matter:4
 that~ mine:3
 that~ much:-1
 that~ my:3
 that~ never:6
 that~ nobody:1
 that~ noth:-5
 that~ off:8
 that~ okay:-2
 that~ on:4
 that~ one:-5
 that~ out:3
 that~ right:-2
 that~ she:1
 that~ solution:-8
 that~ sound:-2
 that~ still:-6
 that~ the:3
 that~ ther:-5
 that~ too:-7
 that~ was:-7
 that~ we:-5
 that~ went:-4
 that~ with:1
 that~ you:-4
 that~0:11
 that~=:-7
 that~A:-3
 that~F:2
 that~L:4
 that~b:5
 the:1
 their:-2
 their~ own:1
 them:-2
 them~ ::-2
 them~ and:-3
 them~ for:-1
 them~ in:-1
 them~ is:-3
 them~ on:-1
 them~ out:-5
 them~ to:-7
 them~ together:2
 them~0:-4
 them~t:-6
 then:-2
 then~ ?:1
 then~ add:-4
 then~ at:-5
 then~ i:1
 then~ in:-5
 then~ into:-4
 then~ it:4
 then~ its:-6
 then~ like:-3
 then~ my:4
 then~ pour:-4
 then~ stir:-3
 then~ stirr:-2
 then~ the:-9
 then~ weigh:-8
 then~0:4
 then~<:3
 then~=:-4
 then~>:-1
 then~A:-6
 then~F:-2
 then~S:-4
 then~W:1
 then~e:-7
 then~t:-4
 then~v:5
 ther:2
 there:4
 thereabout:3
 therefore:2
 there~ ?:-6
 there~ and:-1
 there~ are:-1
 there~ because:1
 there~ enough:-3
 there~ is:1
 there~ may:4
 there~ so:-6
 there~ too:4
 there~ was:-1
 there~ were:3
 there~ with:-3
 thermometer:-9
 ther~ also:2
 ther~ no:-9
 ther~0:-3
 ther~F:-3
 these:-9
 these~ are:-5
 these~ days:5
 these~ fats:-3
 these~ oils:-3
 they:-4
 theyd:3
 theyll:-4
 theyre:-10
 they~ are:5
 they~ did:-5
 they~ do:-7
 they~ had:1
 they~ say:2
 they~ went:1
 they~ were:-6
 the~ above:4
 the~ air:1
 the~ allotment:-4
 the~ amount:-2
 the~ answer:-2
 the~ app:3
 the~ attic:-3
 the~ autumn:-6
 the~ baby:1
 the~ back:2
 the~ bag:1
 the~ balance:-4
 the~ balcony:2
 the~ bar:2
 the~ bars:-11
 the~ batch:-3
 the~ bath:-5
 the~ bathroom:2
 the~ batter:-8
 the~ battery:-2
 the~ beaker:6
 the~ bell:-5
 the~ bench:-5
 the~ best:-4
 the~ big:-1
 the~ bin:-2
 the~ birds:-3
 the~ bit:-3
 the~ blender:1
 the~ block:4
 the~ blog:-4
 the~ blue:1
 the~ board:1
 the~ book:-4
 the~ bottl:-6
 the~ bottle:5
 the~ bottom:-1
 the~ bowl:5
 the~ box:1
 the~ boys:3
 the~ brim:-2
 the~ bubbl:-3
 the~ bucket:2
 the~ bus:-2
 the~ butcher:-2
 the~ camp:1
 the~ can:2
 the~ candle:-6
 the~ canister:6
 the~ car:-8
 the~ card:-6
 the~ caretaker:-6
 the~ ceil:-5
 the~ cellar:-8
 the~ certifi:-7
 the~ certificate:3
 the~ cheap:-7
 the~ chemist:-2
 the~ children:1
 the~ choir:-4
 the~ christma:1
 the~ church:-3
 the~ class:-7
 the~ clean:-3
 the~ clock:-3
 the~ club:-2
 the~ clubs:-1
 the~ cold:2
 the~ column:-3
 the~ comma:4
 the~ comment:-7
 the~ cooker:3
 the~ cool:-3
 the~ corner:-4
 the~ cost:-6
 the~ counter:4
 the~ county:-4
 the~ course:1
 the~ crockpot:-1
 the~ cubes:-5
 the~ cup:-2
 the~ cupboard:-1
 the~ cure:-10
 the~ date:-8
 the~ day:-2
 the~ decimal:-4
 the~ difference:1
 the~ discount:-1
 the~ dish:4
 the~ dog:2
 the~ door:-1
 the~ dot:-6
 the~ doubl:-7
 the~ double:-3
 the~ drain:3
 the~ drawer:1
 the~ drum:7
 the~ dry:1
 the~ edge:-5
 the~ edges:-2
 the~ empty:-7
 the~ end:2
 the~ ends:-7
 the~ even:-7
 the~ face:-7
 the~ fair:1
 the~ fami:1
 the~ farm:-1
 the~ fat:-4
 the~ fats:1
 the~ feed:4
 the~ fence:-6
 the~ figur:-4
 the~ figure:4
 the~ finish:-3
 the~ first:-2
 the~ flak:5
 the~ flat:-2
 the~ floor:6
 the~ foam:-8
 the~ freezer:-11
 the~ front:1
 the~ fryer:1
 the~ full:2
 the~ fumes:-8
 the~ funnel:3
 the~ garage:-9
 the~ garden:-3
 the~ gas:-3
 the~ glass:1
 the~ goat:5
 the~ goats:4
 the~ goggl:-3
 the~ good:-3
 the~ gram:-7
 the~ greasy:-9
 the~ green:-1
 the~ group:-1
 the~ half:5
 the~ hall:-6
 the~ hand:-4
 the~ handout:2
 the~ hands:3
 the~ hard:-7
 the~ hardware:-1
 the~ heat:-9
 the~ hens:-8
 the~ hob:-1
 the~ holiday:-2
 the~ hood:-6
 the~ hot:2
 the~ house:5
 the~ internet:-4
 the~ jars:-6
 the~ jug:-2
 the~ kettle:6
 the~ kids:-4
 the~ kilo:6
 the~ kitchen:-3
 the~ label:5
 the~ lads:-2
 the~ lady:-3
 the~ last:3
 the~ lather:-3
 the~ laundry:-3
 the~ leaflet:2
 the~ letter:1
 the~ library:-6
 the~ lid:2
 the~ light:-7
 the~ line:5
 the~ liquid:6
 the~ list:11
 the~ litre:6
 the~ little:-1
 the~ loaf:-3
 the~ log:-7
 the~ long:1
 the~ lot:3
 the~ lowest:-4
 the~ lump:-1
 the~ machine:-4
 the~ man:-3
 the~ margin:-1
 the~ mark:4
 the~ market:-4
 the~ mash:-1
 the~ mass:-5
 the~ measur:3
 the~ mechanic:3
 the~ melt:3
 the~ mess:-3
 the~ microwave:1
 the~ middle:-5
 the~ mill:-4
 the~ miss:4
 the~ mix:7
 the~ mold:2
 the~ month:-5
 the~ moon:-5
 the~ morn:-7
 the~ most:-9
 the~ mould:-3
 the~ name:-8
 the~ neighbour:-3
 the~ next:-4
 the~ night:-6
 the~ normal:-5
 the~ number:1
 the~ oil:1
 the~ oils:1
 the~ old:-1
 the~ one:1
 the~ ones:-2
 the~ only:-7
 the~ open:3
 the~ order:-7
 the~ original:2
 the~ other:2
 the~ oven:-8
 the~ packet:8
 the~ page:-6
 the~ pan:5
 the~ pantry:-8
 the~ paper:9
 the~ parish:-7
 the~ past:1
 the~ paste:-4
 the~ patience:-4
 the~ phone:5
 the~ photo:5
 the~ picture:-4
 the~ place:7
 the~ plain:-5
 the~ plan:1
 the~ plastic:3
 the~ plate:6
 the~ point:-3
 the~ porch:-5
 the~ postman:2
 the~ potato:-8
 the~ pour:-4
 the~ powder:4
 the~ power:-3
 the~ present:2
 the~ price:-7
 the~ printout:-6
 the~ question:-9
 the~ rack:-5
 the~ radiator:-4
 the~ radio:-5
 the~ rain:-3
 the~ ready:7
 the~ real:-6
 the~ reason:-7
 the~ record:2
 the~ remain:-2
 the~ render:-5
 the~ rest:1
 the~ right:-7
 the~ roof:3
 the~ room:1
 the~ row:-5
 the~ rugby:-3
 the~ sack:-2
 the~ safe:4
 the~ salad:3
 the~ same:1
 the~ scale:-2
 the~ school:3
 the~ scum:2
 the~ second:2
 the~ sf:-4
 the~ shed:-2
 the~ sheet:7
 the~ shelf:-3
 the~ shop:4
 the~ shops:-6
 the~ shower:-7
 the~ side:5
 the~ sink:3
 the~ skin:-4
 the~ slip:-2
 the~ slow:-3
 the~ small:2
 the~ smell:1
 the~ soap':3
 the~ soap:-3
 the~ spatula:-2
 the~ spoon:-1
 the~ spr:-7
 the~ stall:4
 the~ start:1
 the~ steel:4
 the~ stick:-9
 the~ stirr:-5
 the~ stove:5
 the~ suds:-2
 the~ sum:-1
 the~ sums:1
 the~ sun:1
 the~ sunday:5
 the~ superfat:-5
 the~ supermarket:-5
 the~ surface:-7
 the~ swirl:-4
 the~ table:4
 the~ tap:-6
 the~ teacher:-3
 the~ temperature:-4
 the~ test:2
 the~ thermometer:-6
 the~ thing:-2
 the~ third:-1
 the~ thread:-5
 the~ thursday:-6
 the~ tiles:6
 the~ tin:5
 the~ tongue:-1
 the~ top:-2
 the~ towel:-1
 the~ trace:-1
 the~ train:-6
 the~ tray:-4
 the~ trimming:1
 the~ unrefin:-6
 the~ usual:6
 the~ varnish:-6
 the~ very:-1
 the~ village:-2
 the~ wall:-4
 the~ war:-7
 the~ wardrobe:-5
 the~ warm:-1
 the~ wash:-6
 the~ way:4
 the~ weather:-6
 the~ weekend:-8
 the~ weigh:8
 the~ weight:5
 the~ whisk:1
 the~ white:1
 the~ whole:-1
 the~ window:-7
 the~ windowsill:3
 the~ winter:-5
 the~ wire:-2
 the~ wood:-3
 the~ wooden:-4
 the~ word:-5
 the~ workshop:-4
 the~ worktop:-1
 the~ wrong:5
 the~ yard:-4
 the~ year:-7
 the~%:1
 the~<:-8
 the~=:-3
 the~A:1
 the~B:-9
 the~C:-13
 the~F:6
 the~I:5
 the~K:2
 the~L:-2
 the~M:3
 the~N:-2
 the~T:-6
 the~W:5
 the~X:-4
 the~b:5
 the~t:-2
 the~v:-7
 the~w:-6
 thick:-4
 thicken:-3
 thicker:-9
 thick~ as:1
 thick~ like:-6
 thick~ trace:-2
 thin:-5
 thing:-3
 thing~ ?:-6
 thing~ and:-2
 thing~ i:-7
 thing~ in:-5
 think:1
 think~ ?:-7
 think~ about:1
 think~ i:8
 think~ it:2
 think~ its:-1
 think~ my:1
 think~ of:-8
 think~ that:-9
 think~ the:4
 thinn:6
 thin~ stream:-4
 thin~ trace:-7
 third:2
 third~ attempt:-6
 third~ go:5
 third~ of:1
 third~ one:-3
 third~ time:-6
 this:3
 this~ ::2
 this~ ?:-7
 this~ a:-5
 this~ and:-7
 this~ batch:-2
 this~ be:-1
 this~ because:-6
 this~ before:-3
 this~ but:-6
 this~ for:6
 this~ from:1
 this~ house:5
 this~ i:-4
 this~ is:-5
 this~ loaf:2
 this~ look:-3
 this~ morn:2
 this~ ok:-2
 this~ on:-6
 this~ one:5
 this~ ones:-6
 this~ or:-6
 this~ pot:2
 this~ recipe:-10
 this~ right:-3
 this~ time:4
 this~ to:-6
 this~ was:-4
 this~ way:-4
 this~ weekend:2
 this~ with:-7
 this~ year:5
 this~0:-7
 this~F:1
 tho:-3
 those~ are:1
 those~ days:-5
 those~ fats:-1
 those~ oils:-2
 those~ who:3
 those~0:2
 though:1
 thought:1
 thought~ ?:-4
 thought~ i'd:-5
 thought~ i:-2
 thought~ it:-3
 thought~ on:-3
 though~ i:3
 thread:-6
 threw:5
 threw~ in:7
 threw~ the:-3
 through:1
 through~ a:-2
 through~ an:-10
 through~ it:-3
 through~ the:4
 throw:-6
 thrown:6
 throw~ it:-1
 thru:1
 thumb:-2
 thursday:-6
 thx:-5
 tick:-1
 tight:-1
 til:-4
 tiles:6
 till~ it:3
 till~ its:-1
 till~ the:-1
 till~0:-5
 time:-3
 timer:-7
 times:3
 times~ i:4
 times~ in:-3
 times~0:9
 time~ and:-4
 time~ because:2
 time~ i:-1
 time~ in:4
 time~ is:-3
 time~ it:-8
 time~ ive:-1
 time~ lurker:-4
 time~ post:-5
 time~ so:4
 time~ the:2
 time~ to:-4
 time~ with:-6
 time~t:-5
 tin:1
 tins:-7
 tins~ of:-2
 tiny:-2
 tin~ and:-2
 tin~ is:-9
 tin~ of:-4
 tin~ was:-2
 tin~ with:-8
 tip:-2
 tipp:9
 tipp~ in:7
 tips:-5
 tip~ ::-5
 title:-4
 title~ ::-4
 to:-1
 toast:4
 today:-4
 today~ ::4
 today~ ?:-5
 toddler:5
 together~ ?:-3
 together~ in:-5
 together~ so:1
 together~ with:-5
 told:-5
 told~ her:-4
 told~ me:-3
 told~ us:-6
 told~F:-2
 tom:-1
 tomato:6
 tomorrow:-6
 tongue:-2
 tonight:7
 tonight~ ::-7
 tonight~ ?:-3
 too:2
 took:3
 took~ a:-6
 took~ ages:-5
 took~ forever:2
 took~ it:-4
 took~ me:-7
 took~ near:-1
 took~ off:1
 took~ the:2
 took~0:-1
 took~<:2
 took~=:-5
 took~>:-5
 took~N:3
 took~l:3
 took~t:-12
 took~w:-5
 tools:-6
 too~ ?:-7
 too~ and:3
 too~ cold:-4
 too~ dry:-3
 too~ early:-6
 too~ fast:-2
 too~ hard:-3
 too~ harsh:-3
 too~ high:-6
 too~ hot:-7
 too~ late:-1
 too~ low:4
 too~ many:5
 too~ much:-5
 too~ quick:5
 too~ sharp:-3
 too~ soft:-5
 too~ soon:-6
 too~ strong:-2
 top:1
 topp:11
 topp~ it:5
 topp~ the:6
 topp~ up:5
 top~ for:-4
 top~ is:-5
 top~ of:3
 top~ shelf:-5
 top~ which:-5
 total:3
 total~ of:-8
 touch:-5
 touch~ it:-6
 touch~ the:-6
 towel:-5
 towel~ over:-4
 towel~ round:-6
 towel~t:-1
 town:1
 to~ a:2
 to~ about:-1
 to~ add:-3
 to~ ask:-5
 to~ be:2
 to~ bed:-4
 to~ buy:-7
 to~ check:-6
 to~ come:4
 to~ cool:-9
 to~ cut:-4
 to~ do:-1
 to~ everyone:2
 to~ find:-3
 to~ finish:8
 to~ get:-3
 to~ grate:-3
 to~ have:2
 to~ help:7
 to~ her:-8
 to~ hold:2
 to~ keep:-7
 to~ know:-3
 to~ light:-2
 to~ look:-10
 to~ make:2
 to~ me:1
 to~ melt:-9
 to~ open:-7
 to~ pour:-2
 to~ put:4
 to~ remember:-8
 to~ rough:-3
 to~ see:1
 to~ sell:-2
 to~ set:3
 to~ slush:-8
 to~ soap:-8
 to~ someth:-7
 to~ spare:-2
 to~ spoon:-7
 to~ stir:1
 to~ take:5
 to~ tell:-1
 to~ test:-7
 to~ that:-5
 to~ the:-2
 to~ thicken:-3
 to~ this:-8
 to~ throw:-7
 to~ trace:-9
 to~ try:-5
 to~ unmould:-5
 to~ use:-2
 to~ wait:1
 to~ wash:1
 to~ waste:7
 to~ weigh:-7
 to~ write:1
 to~ you:-5
 to~%:4
 to~<:7
 to~=:-3
 to~>:6
 to~F:-10
 to~T:-3
 to~X:-7
 to~b:-2
 to~d:-4
 to~e:-4
 to~t:3
 to~w:-6
 trac:-8
 trace:2
 trace~ ::-7
 trace~ add:3
 trace~ after:-5
 trace~ and:-8
 trace~ at:-2
 trace~ because:5
 trace~ came:-4
 trace~ i:-6
 trace~ in:-8
 trace~ pour:-4
 trace~ stir:-5
 trace~ then:-2
 trace~ was:-4
 trace~0:-4
 trace~t:-6
 trace~w:-4
 track:4
 tractor:-5
 trac~ after:-3
 trac~ in:-5
 trade:-9
 trail:-2
 train:-7
 translat:-4
 translate:-4
 translat~ from:-3
 translucent:-3
 tray:-5
 trays:-3
 treat:-3
 trees:1
 trial:-8
 trick:-8
 trick~ for:-3
 tried:-8
 tried~ it:1
 tries:-1
 trimming:-2
 tripl:-7
 trouble:-3
 trust:-6
 trust~ it:-6
 trust~ the:-4
 truth:1
 try:-12
 try~ it:-5
 try~ to:-2
 tub:-1
 tube:-6
 tubs:3
 tub~ ::-7
 tub~ and:-7
 tub~ is:-3
 tub~ of:-5
 tub~ says:-5
 tub~ was:1
 tue:-2
 tuesday:-1
 tue~t:-1
 turns~ out:7
 turns~0:-5
 turn~ it:-2
 turn~ out:5
 turn~ the:-4
 turn~ to:1
 turn~S:-4
 tutor:-2
 twentieth:3
 twice:2
 twice~ a:-4
 twice~ and:4
 twice~ before:-7
 twice~ i:3
 twice~ with:-4
 typ:-7
 type:4
 typed:7
 typed~ the:6
 typo:2
 u:-8
 ugly:-6
 um:2
 uncl:-6
 uncle:-2
 under:-6
 understand:-7
 under~ a:-2
 under~ it:-3
 under~ the:3
 under~0:-7
 under~d:-2
 under~t:-3
 under~w:-7
 unit:-3
 units:-7
 unit~ ::-3
 unles:2
 unmold:-6
 unmould:-6
 unmould~ after:-4
 unmould~t:-1
 unrefin:-8
 unsaponifi:10
 unscent:-7
 until:-1
 until~ a:-3
 until~ both:-1
 until~ its:-4
 until~ the:3
 until~ you:-4
 until~t:-1
 up:5
 update:3
 upon:3
 up~ ::2
 up~ ?:-6
 up~ again:-7
 up~ and:1
 up~ by:3
 up~ for:-5
 up~ i:-9
 up~ in:-3
 up~ like:-4
 up~ my:-1
 up~ on:6
 up~ so:1
 up~ the:4
 up~ there:5
 up~ to:4
 up~ with:2
 up~0:9
 ur:-5
 use:-3
 used:2
 used~ a:-1
 used~ for:1
 used~ that:7
 used~ the:6
 used~ to:-9
 used~ up:1
 used~0:-4
 used~=:-6
 used~>:-4
 used~F:-6
 used~L:3
 used~N:-4
 used~l:-2
 used~w:-1
 uses:-3
 use~ ?:-2
 use~ a:-2
 use~ in:-4
 use~ it:-7
 use~ the:-6
 use~ them:-2
 use~ up:6
 use~=:2
 use~>:4
 use~F:-7
 use~I:-5
 use~N:-1
 use~l:-3
 using:1
 using~=:-6
 usual:3
 us~ the:-1
 vanish:-3
 varnish:-6
 vegan:-9
 vegetable:-4
 vegetarian:-8
 verdict:-4
 verify:-7
 verify~ the:-6
 version:-5
 version~ with:-1
 version~0:2
 very:-1
 very~ first:-6
 very~ nice:-4
 vet:-6
 video:-7
 village:-3
 village~ hall:-1
 virgin:-6
 voice:3
 volcano:-9
 volume:1
 wait:-4
 waits:3
 wait~ for:-6
 wait~ i:-7
 wait~ till:-4
 wait~ until:-8
 wait~t:-4
 walk:5
 wall:-3
 want:3
 wants:-4
 wants~ a:-4
 wants~ it:-6
 wants~ me:-3
 wants~ some:-1
 wants~ the:-5
 wants~ to:-4
 want~ a:-3
 want~ the:6
 want~ to:-4
 want~%:1
 want~0:7
 want~F:-7
 war:-8
 wardrobe:-6
 warm:-7
 warmth:-6
 warm~ in:-5
 warm~ it:-4
 warm~ oils:3
 warm~ the:-10
 warm~ to:-6
 warm~F:-4
 warn:-8
 was:5
 wash:-5
 wash~ it:2
 wash~ the:1
 wash~ up:-1
 wash~ with:-5
 wasnt:12
 wasnt~ enough:1
 wast:3
 waste:1
 was~ a:1
 was~ all:2
 was~ already:5
 was~ at:-5
 was~ call:1
 was~ clean:-2
 was~ clear:-7
 was~ cold:1
 was~ done:1
 was~ empty:10
 was~ fine:-2
 was~ finish:6
 was~ for:-3
 was~ from:-1
 was~ going:-8
 was~ gone:-4
 was~ hard:-6
 was~ hot:-3
 was~ in:3
 was~ it:-5
 was~ like:1
 was~ made:-2
 was~ meant:5
 was~ melt:4
 was~ my:-4
 was~ near:3
 was~ never:-3
 was~ no:-2
 was~ not:11
 was~ off:9
 was~ old:-4
 was~ on:3
 was~ one:5
 was~ only:1
 was~ open:6
 was~ out:6
 was~ over:3
 was~ pour:4
 was~ ready:-2
 was~ real:5
 was~ right:-6
 was~ so:6
 was~ soft:4
 was~ stand:6
 was~ still:1
 was~ stirr:-3
 was~ that:-6
 was~ the:-4
 was~ there:5
 was~ thick:-3
 was~ told:1
 was~ too:-6
 was~ under:-5
 was~ very:-8
 was~ warm:-5
 was~ weigh:5
 was~ what:-3
 was~ with:1
 was~%:-5
 was~0:-4
 was~<:5
 was~=:-8
 was~>:-8
 was~A:5
 was~F:5
 was~L:6
 was~N:2
 was~X:7
 was~b:3
 was~d:-7
 was~e:7
 was~l:-9
 was~t:-7
 was~v:1
 was~w:6
 watch:-7
 watch~ the:-6
 water:2
 water~ bath:-6
 waxy:-5
 way:2
 way~ and:1
 way~ in:7
 way~ of:-7
 way~ round:-1
 way~ to:-1
 wear:-7
 wear~ goggl:-5
 weather:-7
 wedd:-3
 wedd~ favour:2
 wednesday:-8
 week:-4
 weekend:-2
 weeks:1
 week~ and:-10
 week~ so:4
 week~0:-10
 weigh:-1
 weight:2
 weight~ ::-7
 weight~ and:3
 weight~ g:-3
 weight~ in:3
 weight~ made:-7
 weight~ not:-9
 weight~ of:-3
 weight~ oz:-5
 weight~ so:-6
 weight~A:-5
 weigh~ ?:-7
 weigh~ a:-6
 weigh~ after:-4
 weigh~ again:4
 weigh~ and:2
 weigh~ anyth:-1
 weigh~ as:3
 weigh~ by:4
 weigh~ everyth:-8
 weigh~ i:-6
 weigh~ in:-1
 weigh~ it:1
 weigh~ like:1
 weigh~ my:3
 weigh~ on:1
 weigh~ one:-3
 weigh~ out:-6
 weigh~ the:2
 weigh~0:3
 weigh~<:-7
 weigh~=:-7
 weigh~F:-3
 weigh~e:7
 weigh~l:-2
 weigh~w:-8
 welcome:-5
 well:-1
 well~ and:-5
 well~ as:-3
 well~ be:7
 well~ have:8
 went:4
 went~ a:5
 went~ above:-7
 went~ away:-8
 went~ back:-3
 went~ brown:-5
 went~ by:-4
 went~ clear:-7
 went~ cloudy:-8
 went~ dark:-2
 went~ down:7
 went~ for:6
 went~ from:-8
 went~ in:7
 went~ into:4
 went~ off:-1
 went~ on:5
 went~ over:1
 went~ the:-5
 went~ to:-6
 went~ up:-1
 went~ with:4
 went~ without:3
 went~ wrong:-5
 went~ yellow:-6
 went~=:-7
 went~S:-5
 were:3
 were~ a:-1
 were~ at:-7
 were~ doing:-1
 were~ on:-4
 were~0:2
 were~=:-1
 were~w:-2
 wet:7
 wet~ cloth:-4
 wet~ dog:-4
 weve:-2
 we~ are:-2
 we~ count:-6
 we~ cut:-6
 we~ did:5
 we~ do:1
 we~ got:-8
 we~ had:1
 we~ have:-5
 we~ keep:-7
 we~ made:-6
 we~ make:4
 we~ pour:-4
 we~ put:-6
 we~ render:-2
 we~ say:4
 we~ took:1
 we~ use:-7
 we~ used:-3
 we~ want:5
 we~ weigh:1
 we~ went:-2
 we~ were:5
 what:3
 whatever:6
 whatever~ the:11
 whatever~ was:8
 whatsoever:-1
 whats~ in:4
 whats~ left:-5
 whats~ the:-4
 what~ a:-7
 what~ came:6
 what~ did:-3
 what~ do:1
 what~ does:-7
 what~ g:-4
 what~ happen:-6
 what~ how:-7
 what~ i'd:4
 what~ i:9
 what~ im:3
 what~ is:-4
 what~ it:3
 what~ my:-1
 what~ she:-5
 what~ superfat:-9
 what~ they:5
 what~ to:1
 what~ was:-4
 what~ we:-2
 what~ went:-1
 what~ would:-4
 what~ you:-2
 what~ youd:-1
 when:-1
 whenever:-2
 when~ both:-6
 when~ cut:-7
 when~ i:2
 when~ it:2
 when~ she:-1
 when~ the:2
 when~ wash:5
 when~ you:1
 when~F:-10
 where:3
 where~ i:-4
 where~ it:7
 where~ my:3
 where~ she:-9
 where~ the:3
 where~ you:3
 whether:-2
 whether~ it:-5
 whether~ the:-1
 whether~F:-9
 whether~b:-4
 which:3
 which~ bring:-1
 which~ has:-1
 which~ i:5
 which~ is:-5
 which~ makes:-5
 which~ of:2
 which~ one:6
 which~ the:3
 which~ was:-4
 which~F:-7
 while:-3
 while~ i:6
 while~ that:-4
 while~ the:-9
 whipp:2
 whisk:-6
 white:-7
 whiteboard:-7
 whiter:-5
 white~ and:2
 white~ as:-7
 white~ powder:-5
 white~ spots:-4
 white~F:-2
 who:-1
 whole~ grams:-8
 whole~ thing:4
 whole~ time:-1
 whos:-3
 whose:2
 whos~ right:-3
 who~ asked:-6
 who~ cant:2
 who~ does:1
 who~ has:-2
 who~ is:-5
 who~ knows:3
 why:-13
 why~ ?:-3
 why~ does:-3
 why~ i:-5
 why~ it:-5
 why~ its:-5
 why~ the:-7
 why~F:-3
 width:-4
 wife:-2
 wifes:-3
 wife~ likes:-6
 wife~ says:3
 will:-7
 will~ ask:-1
 will~ be:-8
 will~ climb:-4
 will~ do:-5
 will~ it:-3
 will~ need:-2
 will~ that:-2
 will~ the:-5
 will~ this:-2
 wind:-4
 window:-11
 windowsill:3
 window~ open:-7
 winter:-4
 winter~ and:1
 winter~ bar:-1
 winter~ hands:-7
 winter~ i:-5
 wipe:-6
 wiped:-1
 wire:-5
 wish:4
 within:-8
 within~t:-6
 without:6
 without~ a:-9
 without~ it:2
 without~ my:-3
 without~ the:-1
 without~F:-2
 with~ a:-2
 with~ all:-6
 with~ an:-3
 with~ another:1
 with~ bak:-4
 with~ both:-2
 with~ everyth:6
 with~ freezer:-4
 with~ glov:-2
 with~ goggl:-2
 with~ it:-1
 with~ its:-4
 with~ more:3
 with~ my:-10
 with~ no:-3
 with~ noth:5
 with~ one:2
 with~ only:-8
 with~ some:1
 with~ that:2
 with~ the:2
 with~ this:2
 with~ us:-4
 with~ wet:-4
 with~ what:1
 with~%:8
 with~0:-3
 with~<:-2
 with~=:-4
 with~>:-6
 with~A:1
 with~C:1
 with~F:-7
 with~I:-4
 with~L:-6
 with~N:1
 with~S:-8
 with~U:5
 with~W:1
 with~e:-6
 with~l:-8
 with~v:-1
 with~w:3
 woman:-10
 woman~ at:-1
 women:-3
 wonder:7
 wonky:-8
 wont:-2
 wood:-9
 wooden:-3
 wooden~ box:-3
 wooden~ mould:-6
 wooden~ one:-5
 wooden~ spoon:1
 wood~ stove:-4
 words:-6
 word~ for:-6
 work:-3
 works:-7
 worksheet:-4
 workshop:-4
 worktop:-1
 work~ ?:-2
 work~ in:4
 work~ it:3
 work~ out:-6
 work~ with:4
 worri:3
 worry~ is:1
 worth:1
 worth~ of:6
 would:-1
 wouldnt:4
 wouldnt~ dissolve:8
 would~ a:-4
 would~ be:-3
 would~ do:-7
 would~ have:-3
 would~ it:-1
 would~ like:4
 would~ love:2
 would~ not:-5
 would~ take:1
 would~ the:-8
 would~ you:4
 wrap:-7
 wrapp:-10
 wrapper:-6
 wrapp~ in:-4
 wrapp~ it:-5
 wrap~ in:-1
 wrist:-4
 writ:-5
 write:-5
 write~ down:-5
 write~ it:1
 write~ the:-6
 write~ up:-5
 written:3
 written~ ?:-5
 written~ on:-6
 wrong~ ?:-5
 wrong~ or:-5
 wrong~ with:-7
 wrote~ ::-4
 wrote~ in:1
 wrote~ it:4
 wrote~ on:-5
 wrote~ that:-4
 wrote~ this:-2
 wrote~F:4
 wrote~e:-1
 wt:-7
 w~ a:-9
 w~ my:-1
 w~ the:1
 w~ w:2
 w~=:-3
 w~L:1
 x:2
 xmas:1
 x~0:3
 x~F:-10
 yall:-6
 yard:-5
 year:-7
 years:-6
 years~ ago:-2
 year~ i:-6
 year~ in:-6
 year~ is:5
 year~0:-4
 yellow:-8
 yes:-4
 yesterday:-4
 yes~ i:-1
 yes~ its:-7
 yes~ no:-3
 yes~ or:-1
 yet:6
 yield:2
 yield~ ::-1
 yield~0:2
 you:-3
 youd:-3
 youll:-4
 young:-4
 your:-9
 youre:-9
 yours:-3
 your~ arm:-2
 your~ own:2
 your~ skin:-3
 your~A:-5
 your~F:-3
 youve:-10
 you~ ?:-2
 you~ all:-6
 you~ and:-1
 you~ are:-4
 you~ ask:2
 you~ asked:-3
 you~ call:-8
 you~ can:-3
 you~ cant:-6
 you~ check:-5
 you~ could:-12
 you~ cut:-3
 you~ do:2
 you~ dont:-7
 you~ feel:-2
 you~ for:-8
 you~ get:-5
 you~ go:-7
 you~ have:-1
 you~ know:6
 you~ like:-5
 you~ look:-3
 you~ lot:-2
 you~ make:-5
 you~ need:-8
 you~ pour:-7
 you~ put:-7
 you~ read:1
 you~ say:-2
 you~ see:1
 you~ should:5
 you~ start:2
 you~ tell:4
 you~ think:-3
 you~ to:-3
 you~ trust:-2
 you~ use:-3
 you~ wait:-4
 you~ want:-11
 you~ weigh:-6
 you~ will:3
 you~ wont:3
 you~ work:-2
 zap:-8
 zapp:6
 zappy:-4
 zaps:2
 zap~ test:-4
 zero:4
 zero~ the:6
 üf:-7
%%:-3
%0:-8
%:7
%<:-5
%=:-1
%>:-8
%A:5
%F:-2
%K:-6
%N:2
%S:-6
%W:1
%X:2
%b:-1
%l:-3
%t:-8
%w:2
%~ ?:-3
%~ and:-3
%~ by:3
%~ extra:6
%~ flak:4
%~ for:8
%~ in:-1
%~ is:-2
%~ less:-4
%~ liquid:7
%~ off:1
%~ on:5
%~ or:4
%~ over:4
%~ pure:-5
%~ purity:-2
%~ sf:-5
%~ so:3
%~ solution:-4
%~ superfat:1
%~ with:4
%~=:-5
%~A:4
%~F:-4
%~K:-6
%~N:1
%~W:-4
%~X:2
0%:-7
00:-5
0:4
0<:-4
0=:1
0>:-2
0A:-1
0C:5
0F:-1
0I:5
0K:-8
0M:4
0N:4
0S:-4
0T:1
0W:3
0X:-6
0b:-3
0d:-3
0e:-1
0l:-4
0r:-2
0t:-5
0v:-8
0w:-6
0~ =:-8
0~ ?:1
0~ a:-11
0~ after:4
0~ all:7
0~ are:3
0~ as:6
0~ at:-1
0~ b:-8
0~ bar:-5
0~ bars:-5
0~ batch:-4
0~ because:9
0~ before:3
0~ big:-3
0~ block:2
0~ both:-4
0~ bottl:-6
0~ bucket:-4
0~ but:-3
0~ c:-5
0~ cakes:-2
0~ can:-7
0~ caviti:-6
0~ children:-5
0~ comment:-3
0~ cut:3
0~ degre:-4
0~ drops:-6
0~ empty:2
0~ evening:-4
0~ except:5
0~ famili:-7
0~ fat:-3
0~ fats:-10
0~ for:-8
0~ from:3
0~ full:-7
0~ gives:-6
0~ goats:-8
0~ goes:-3
0~ group:-5
0~ guest:-4
0~ had:-10
0~ i:6
0~ if:-3
0~ in:-2
0~ into:4
0~ is:3
0~ it:-2
0~ jars:-1
0~ kitchen:-5
0~ lather:-4
0~ left:-6
0~ like:-4
0~ little:-7
0~ loaf:-4
0~ lyes:-8
0~ made:-5
0~ more:-7
0~ mould:-1
0~ my:4
0~ n:-1
0~ night:-4
0~ no:5
0~ not:4
0~ of:3
0~ off:-1
0~ oil:-6
0~ oils:-4
0~ on:6
0~ once:1
0~ one:-3
0~ or:4
0~ out:3
0~ p:-7
0~ packet:-1
0~ packs:1
0~ pcs:-5
0~ people:-6
0~ per:-4
0~ percent:5
0~ piec:-2
0~ please:9
0~ plus:1
0~ pour:-5
0~ pupil:-3
0~ right:-3
0~ round:1
0~ scal:-7
0~ she:-2
0~ silicone:-3
0~ since:3
0~ slic:-5
0~ small:-7
0~ so:-3
0~ someth:1
0~ spoon:1
0~ still:-8
0~ superfat:8
0~ that:-3
0~ thats:2
0~ the:4
0~ then:3
0~ there:1
0~ thing:-9
0~ this:2
0~ times:-3
0~ tins:-4
0~ to:2
0~ towel:-8
0~ until:-7
0~ w:6
0~ was:-3
0~ weigh:-4
0~ went:4
0~ were:1
0~ when:4
0~ which:-5
0~ with:-9
0~ without:-7
0~ x:2
0~ zap:-6
0~ ×:-7
0~0:-2
0~A:-7
0~F:-4
0~I:-1
0~L:1
0~N:-1
0~S:2
0~W:-4
0~X:6
0~b:-11
0~t:-6
0~w:-3
<%:2
<0:-1
<:3
<<:-3
<=:-5
<>:-3
<A:5
<C:2
<F:2
<I:-7
<K:9
<L:6
<N:-3
<S:-2
<W:-6
<X:2
<d:-2
<l:-8
<v:-3
<w:-1
<~ +:-6
<~ and:5
<~ because:1
<~ i:-6
<~ in:-2
<~ less:-3
<~ more:8
<~ of:2
<~ short:4
<~ the:5
<~A:-1
<~C:2
<~F:2
<~I:-3
<~L:-5
<~S:-2
<~W:-7
<~X:-5
=%:-11
=0:6
=:-4
=<:-4
==:-3
=>:-2
=A:-2
=F:-3
=I:-2
=K:-1
=L:-1
=N:5
=S:-1
=W:-2
=X:-2
=b:-3
=d:-2
=e:-2
=r:-4
=t:-3
=v:-6
=w:-4
=~ +:-5
=~ ::5
=~ =:-7
=~ after:-1
=~ and:-7
=~ as:3
=~ at:-4
=~ bag:-8
=~ block:-7
=~ by:-1
=~ check:-2
=~ clean:-4
=~ cold:-1
=~ did:-1
=~ dissolv:-5
=~ does:-2
=~ for:-4
=~ free:-7
=~ from:-3
=~ goes:-3
=~ good:-1
=~ he:-7
=~ i:-7
=~ im:-7
=~ in:-3
=~ into:-6
=~ it:-5
=~ last:-5
=~ melt:-6
=~ mk:-5
=~ my:2
=~ no:-4
=~ not:-11
=~ of:-2
=~ ok:-2
=~ on:-2
=~ please:-4
=~ so:-5
=~ superfat:-7
=~ that:-7
=~ the:-1
=~ then:-4
=~ too:-3
=~ with:2
=~%:-6
=~0:5
=~<:-5
=~=:-2
=~A:-3
=~F:-3
=~L:-3
=~W:-3
=~X:-3
=~t:-1
>%:-3
>0:-6
>:-3
><:-3
>=:-2
>>:-7
>A:-2
>F:-3
>K:-5
>W:-5
>e:-11
>l:-5
>t:-2
>w:-6
>~ and:-1
>~ i:-7
>~ in:-2
>~ is:-6
>~ of:-5
>~ oils:-1
>~ so:-6
>~ the:-6
>~A:-5
>~F:3
>~L:-4
>~W:-4
A%:5
A0:4
A:1
A=:-3
A>:-1
AA:1
AB:4
AC:-8
AF:2
AI:-7
AL:2
AN:-8
AS:-3
AW:-2
AX:-1
Ab:1
Ad:2
Ae:2
Al:-9
Ar:-8
At:-4
Av:1
Aw:-3
A~ +:-2
A~ ::6
A~ ?:-5
A~ a:-7
A~ about:-4
A~ alright:-6
A~ and:-2
A~ as:9
A~ at:-4
A~ bag:3
A~ be:-1
A~ because:-3
A~ before:-6
A~ but:-2
A~ by:-1
A~ came:-5
A~ check:-7
A~ comes:4
A~ cool:3
A~ correct:-9
A~ dissolv:-2
A~ does:-7
A~ down:3
A~ figure:4
A~ fine:-3
A~ first:-1
A~ fit:-6
A~ fits:-5
A~ from:7
A~ g:-8
A~ gets:-7
A~ goes:-8
A~ good:-7
A~ got:7
A~ had:4
A~ half:-7
A~ has:6
A~ heavy:2
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
A~ left:-4
A~ like:-5
A~ looks:-2
A~ no:-7
A~ not:5
A~ of:1
A~ ok:-7
A~ okay:-4
A~ on:-8
A~ one:-8
A~ only:2
A~ or:-4
A~ over:-11
A~ paste:3
A~ per:5
A~ please:-7
A~ pls:-4
A~ pot:5
A~ ready:-6
A~ real:-8
A~ right:-5
A~ row:-2
A~ sensible:-4
A~ she:-8
A~ slow:-7
A~ so:3
A~ soap:-3
A~ sprinkl:-2
A~ still:-10
A~ stuck:-1
A~ that:-7
A~ the:-3
A~ then:-3
A~ there:1
A~ too:-9
A~ tub:4
A~ up:5
A~ weigh:8
A~ went:1
A~ when:1
A~ where:4
A~ wrong:-5
A~ you:5
A~%:-6
A~0:1
A~<:1
A~=:-2
A~>:-5
A~A:-4
A~F:-2
A~L:2
A~W:1
A~d:-5
A~e:-2
A~r:-6
A~t:5
A~v:-2
B0:-4
B:4
BF:4
B~ and:-11
B~ so:-6
C%:-6
C:6
CA:5
CW:1
Cv:4
C~ at:5
C~ in:6
C~ is:-4
C~%:-6
C~<:-5
C~w:-1
F%:2
F:1
F<:4
F=:-3
FA:-3
FB:5
FF:-1
FI:-5
FK:-4
FN:5
FS:-10
FT:-5
FU:3
FX:2
Fb:1
Fd:-3
Fe:1
Fl:-6
Fr:6
Ft:-3
Fv:-7
Fw:2
F~ +:3
F~ ::2
F~ =:2
F~ ?:-8
F~ a:1
F~ about:-1
F~ add:2
F~ after:4
F~ again:1
F~ alone:-3
F~ altogether:-1
F~ are:5
F~ as:6
F~ at:2
F~ back:5
F~ bar:-5
F~ bars:-12
F~ batch:-6
F~ because:6
F~ beef:-5
F~ before:-5
F~ block:-3
F~ bottle:-6
F~ but:-4
F~ by:-1
F~ came:1
F~ can:-4
F~ clean:-3
F~ cold:-5
F~ comes:-9
F~ could:4
F~ count:-8
F~ does:-6
F~ down:8
F~ extra:6
F~ figure:4
F~ fills:-8
F~ first:-7
F~ for:-4
F~ free:-6
F~ from:-5
F~ g:-7
F~ gent:-6
F~ gives:-7
F~ go:-3
F~ goes:-10
F~ gone:-3
F~ got:7
F~ grams:-6
F~ had:-2
F~ half:-4
F~ has:-6
F~ here:3
F~ i'd:3
F~ i:2
F~ if:-9
F~ im:6
F~ in:1
F~ instead:6
F~ into:-4
F~ isnt:-1
F~ it:5
F~ its:2
F~ ive:8
F~ jar:-3
F~ jug:3
F~ keeps:-7
F~ l:-3
F~ last:-10
F~ left:-2
F~ line:6
F~ look:3
F~ looks:-5
F~ makes:-4
F~ may:-1
F~ melt:-9
F~ melts:-7
F~ my:3
F~ n:4
F~ never:9
F~ next:-7
F~ no:-7
F~ not:3
F~ now:6
F~ off:-1
F~ on:-4
F~ once:-5
F~ one:-12
F~ only:1
F~ or:-7
F~ out:3
F~ over:-6
F~ oyl:-4
F~ packet:7
F~ paste:-5
F~ plus:1
F~ ran:2
F~ read:1
F~ real:-7
F~ render:-5
F~ right:-6
F~ rspo:-7
F~ says:-4
F~ sets:-4
F~ should:2
F~ since:2
F~ smell:-10
F~ so:6
F~ soap:-6
F~ soaps:-6
F~ stand:-4
F~ stay:7
F~ stays:-1
F~ still:3
F~ stirr:-2
F~ strain:3
F~ stuck:2
F~ takes:-8
F~ than:2
F~ that:-5
F~ thats:2
F~ the:-3
F~ there:4
F~ thicken:-8
F~ this:-1
F~ through:-2
F~ tin:-2
F~ to:4
F~ together:3
F~ too:-6
F~ trac:-6
F~ tub:-4
F~ turn:7
F~ twice:3
F~ until:6
F~ up:2
F~ used:-4
F~ w:2
F~ warm:-6
F~ was:-2
F~ weigh:-6
F~ well:1
F~ went:-3
F~ were:-3
F~ when:-1
F~ which:-1
F~ while:5
F~ will:-5
F~ would:2
F~ wouldnt:-2
F~ you:5
F~%:1
F~0:4
F~<:3
F~=:-2
F~>:-1
F~A:-4
F~F:-3
F~N:5
F~W:-1
F~d:-3
F~e:-1
F~t:-10
F~v:-2
I0:2
I:2
IA:-2
II:1
IL:4
Ib:-7
Id:4
Iw:-7
I~ +:-3
I~ ::3
I~ and:-1
I~ bath:-1
I~ first:-5
I~ had:7
I~ in:-7
I~ is:-3
I~ it:6
I~ round:-4
I~ so:-7
I~ tray:1
I~ was:6
I~<:2
K%:-7
K0:-9
K:2
K<:1
K=:-2
K>:-6
KA:-6
KF:-7
KL:-4
KW:-3
Kd:-7
Kr:3
Kt:-3
K~ ::-6
K~ and:-3
K~ g:-7
K~ in:-2
K~ into:3
K~ is:3
K~ mixed:5
K~ my:-9
K~ of:-6
K~ on:6
K~ was:-2
K~%:-8
K~>:-6
K~A:-1
K~r:-2
L0:-1
L:2
L<:-5
L=:-1
L>:4
LA:-6
LI:3
LL:3
LN:3
LS:6
LU:-4
LW:2
LX:-4
Lb:1
Le:4
Ll:-6
Lt:-3
Lv:-5
Lw:-1
L~ ::-10
L~ after:-2
L~ and:-1
L~ at:2
L~ bar:-5
L~ bars:-5
L~ batch:-7
L~ because:2
L~ boil:3
L~ by:-3
L~ flat:5
L~ from:11
L~ frozen:-6
L~ goes:-7
L~ i:-1
L~ in:-1
L~ instead:-7
L~ it:-2
L~ no:-7
L~ of:9
L~ on:5
L~ out:6
L~ over:2
L~ pot:-6
L~ same:8
L~ so:1
L~ soap:-7
L~ stage:-3
L~ straight:-1
L~ thaw:-4
L~ the:4
L~ to:3
L~ towel:2
L~ was:4
L~ went:3
L~ which:5
L~ with:4
L~0:-1
L~>:-2
L~X:-5
L~b:8
L~l:-9
L~t:-3
L~w:1
M0:3
M:3
MA:4
M~ and:-5
M~ in:5
M~ is:2
M~ soap:-9
M~ was:1
N0:4
N:10
N<:-3
NA:-4
NL:2
NN:-2
Nb:4
Nl:2
Nt:-9
Nw:5
N~ after:-2
N~ and:-10
N~ as:1
N~ at:-4
N~ because:2
N~ for:-1
N~ from:12
N~ i:7
N~ if:1
N~ in:1
N~ instead:-1
N~ is:-1
N~ it:8
N~ or:-7
N~ same:9
N~ since:8
N~ so:1
N~ that:-2
N~ the:6
N~ to:6
N~ was:-7
N~ where:7
N~ would:-8
N~N:-2
S%:-8
S0:-6
S:-5
S<:-3
SF:-9
SL:-5
SN:8
SS:-5
SX:-3
Sd:-1
St:-5
Sv:-5
Sw:-5
S~ ::-4
S~ a:-6
S~ and:-2
S~ as:-1
S~ at:-7
S~ because:3
S~ blend:-4
S~ fades:-6
S~ for:-5
S~ from:-5
S~ goes:-5
S~ i:-7
S~ is:3
S~ leav:-5
S~ mould:-7
S~ no:-3
S~ once:-3
S~ only:7
S~ powder:-5
S~ smell:-5
S~ spots:-6
S~ the:-6
S~ then:-5
S~ was:1
S~ when:-5
S~ which:-6
S~0:-5
S~<:-3
S~S:-4
S~w:-5
T0:-3
T:-9
TF:-5
T~ of:-4
T~ oils:-3
U0:-1
U:5
UF:2
Ut:-3
U~ i:-6
U~ in:3
U~ stage:-3
W%:-8
W0:7
W:1
W<:5
W=:-3
W>:-4
WA:-1
WF:-4
WI:-2
WL:7
WS:-3
WW:2
Wd:-5
We:-2
Wl:-1
Wr:1
Wv:-5
Ww:-1
W~ +:-3
W~ =:-6
W~ ?:-10
W~ a:7
W~ after:-4
W~ all:-1
W~ and:-3
W~ as:4
W~ at:4
W~ because:5
W~ before:3
W~ boil:-2
W~ but:1
W~ by:-1
W~ clear:-5
W~ does:-4
W~ down:4
W~ first:-5
W~ for:-5
W~ from:-5
W~ g:-8
W~ got:-4
W~ here:-5
W~ i:5
W~ in:-1
W~ into:-8
W~ is:1
W~ it:1
W~ let:-3
W~ looks:-7
W~ makes:-7
W~ never:-5
W~ on:-8
W~ or:6
W~ out:-8
W~ outdoor:-1
W~ so:-2
W~ that:-4
W~ the:3
W~ then:-1
W~ to:-9
W~ too:8
W~ wait:-1
W~ was:8
W~ went:3
W~ when:7
W~ which:4
W~ with:1
W~ would:-5
W~0:2
W~<:2
W~=:-3
W~A:-5
W~e:-1
W~r:-5
W~t:-2
W~v:-3
X%:2
X:-3
X<:2
X=:-8
X>:-2
XA:-4
XC:-7
XF:-3
XL:4
XN:8
XS:-2
XW:1
XX:-1
Xl:4
Xt:-4
Xv:-3
X~ ::-3
X~ ?:-6
X~ a:-4
X~ and:1
X~ at:-6
X~ bar:3
X~ bars:-8
X~ came:-4
X~ dissolv:-9
X~ fine:-4
X~ for:1
X~ from:-7
X~ goes:-3
X~ ground:-7
X~ i:4
X~ in:-1
X~ is:-5
X~ it:-7
X~ makes:-1
X~ no:-5
X~ of:-8
X~ so:-4
X~ the:-6
X~ this:5
X~ to:-9
X~ was:3
X~0:2
X~<:-7
X~L:1
X~W:-2
X~v:-3
X~w:-5
^ *:-6
^ ::4
^ =:-5
^ a:-1
^ about:12
^ add:1
^ added:8
^ after:1
^ all:2
^ also:-4
^ alway:3
^ am:-3
^ an:5
^ and:-8
^ answer:-1
^ any:-5
^ anyone:-10
^ anyth:-4
^ are:-3
^ as:4
^ ask:-8
^ at:-1
^ attempt:-5
^ b:-7
^ back:-6
^ bar:-5
^ bars:-8
^ base:-4
^ basic:-4
^ batch:-9
^ be:-6
^ because:-1
^ been:-5
^ before:-8
^ between:6
^ big:-8
^ bit:3
^ blend:-7
^ blender:-1
^ blue:-5
^ boil:1
^ bonjour:-3
^ bonsoir:-4
^ book:-8
^ both:-9
^ bottle:9
^ bought:-8
^ box:-4
^ bring:-2
^ bubbl:-6
^ but:-10
^ by:-4
^ c:-5
^ came:2
^ cant:-1
^ castile:-8
^ chang:3
^ check:-10
^ christma:-4
^ ciao:-3
^ clean:-2
^ clear:1
^ cold:-4
^ combine:-3
^ comment:-3
^ confetti:-4
^ cook:-2
^ cool:-3
^ copi:-4
^ correct:2
^ correction:8
^ cost:-8
^ could:-2
^ couldnt:7
^ cover:-6
^ crock:-3
^ crockpot:-5
^ cure:-4
^ cured:-5
^ cut:-2
^ d:-5
^ dad:1
^ dads:-6
^ date:-2
^ day:-9
^ dear:2
^ did:-2
^ didnt:-1
^ dissolv:-4
^ dissolve:-1
^ do:-3
^ does:-2
^ dog:1
^ done:-4
^ dont:-11
^ doubl:3
^ dropp:-1
^ e:-5
^ each:1
^ earlier:-7
^ edit:1
^ ended:3
^ enough:-6
^ entry:1
^ even:-2
^ every:-5
^ everyone:-6
^ everyth:3
^ expect:-7
^ export:-5
^ f:-6
^ fat:-7
^ fats:-11
^ fill:-5
^ fills:-4
^ final:1
^ fine:-3
^ first:-4
^ for:2
^ forgot:-1
^ found:7
^ freeze:-5
^ friend:-3
^ from:-3
^ g:-7
^ gave:-4
^ gel:-8
^ gell:2
^ give:-6
^ glov:-5
^ goat:-7
^ goes:-4
^ goggl:-5
^ going:1
^ gonna:6
^ good:-4
^ got:-8
^ grams:-6
^ gran:2
^ grandad:-1
^ grandma:-5
^ grandmother:-1
^ grandpa:3
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
^ have:-7
^ he:-6
^ heat:-7
^ hello:-3
^ help:4
^ here:-8
^ heres:-7
^ hers:-6
^ hes:-7
^ hey:-5
^ hi:1
^ his:-6
^ hiya:2
^ hola:-3
^ hope:-2
^ hot:1
^ how:-10
^ hp:-4
^ hubby:3
^ i'd:3
^ i:-2
^ if:-11
^ ignore:1
^ ill:1
^ im:3
^ in:-5
^ ingredient:-3
^ instead:10
^ into:-3
^ is:-7
^ it:3
^ item:-3
^ itll:-2
^ its:-4
^ ive:-6
^ jug:7
^ keep:3
^ kids:-6
^ kind:1
^ kitchen:1
^ knock:2
^ label:-9
^ last:-4
^ lather:-4
^ laundry:-5
^ leave:-3
^ left:-3
^ leftover:-8
^ let:1
^ lid:1
^ like:-2
^ line:-4
^ liquid:-5
^ list:-8
^ log:-5
^ lol:-5
^ long:-2
^ look:-5
^ looks:-4
^ lost:-6
^ lot:-5
^ love:-4
^ lye's:6
^ m:-5
^ ma:-7
^ made:1
^ make:6
^ makes:-4
^ many:-4
^ market:-5
^ meanwhile:-1
^ measur:-1
^ melt:-3
^ method:1
^ mind:-3
^ mine:-9
^ mines:2
^ mix:-7
^ mixed:-3
^ mold:-7
^ morn:-6
^ mould:-6
^ mum:-6
^ mums:3
^ must:-4
^ my:-3
^ n:-8
^ name:-4
^ need:-4
^ neighbour:1
^ nephew:1
^ never:-3
^ new:-2
^ next:-10
^ nice:-6
^ no:5
^ nobody:-2
^ none:-8
^ not:2
^ notebook:-5
^ notes:-2
^ noth:-13
^ number:-2
^ o:-5
^ oat:-5
^ of:1
^ oh:1
^ oil:-6
^ oils:-3
^ ok:1
^ okay:-4
^ old:-3
^ on:-6
^ once:-3
^ one:1
^ only:2
^ open:-1
^ or:-4
^ other:-4
^ our:-3
^ ours:-5
^ out:2
^ outside:-5
^ oven:-3
^ oz:-9
^ page:-5
^ passt:-3
^ past:-4
^ paste:1
^ people:-7
^ per:3
^ ph:-5
^ phase:-3
^ phone:-3
^ photo:-8
^ plain:-6
^ plan:-4
^ plann:-5
^ please:2
^ pls:-7
^ plus:2
^ post:4
^ pot:6
^ pour:3
^ prep:-2
^ press:-5
^ print:-9
^ ps:4
^ pull:3
^ purity:9
^ put:-4
^ q:-6
^ question:-7
^ quick:-5
^ rain:4
^ ran:3
^ re:-4
^ read:3
^ ready:-4
^ recipe:-6
^ remark:-6
^ render:-3
^ replac:-2
^ rest:-3
^ result:-6
^ right:-5
^ room:-5
^ safe:-4
^ same:2
^ sat:-4
^ scal:3
^ scale:8
^ scoop:-3
^ scrap:4
^ second:2
^ sells:-4
^ set:-3
^ sf:-1
^ shav:-3
^ shave:-3
^ she:-6
^ shes:-3
^ should:-7
^ since:4
^ sis:1
^ sister:-1
^ slow:-5
^ smell:-7
^ snow:2
^ so:-4
^ soap:-7
^ soft:-4
^ sold:-8
^ some:2
^ somebody:1
^ someone:-2
^ somewhere:1
^ sound:-4
^ source:2
^ spill:-2
^ split:2
^ spoon:-3
^ sry:-8
^ stamp:-5
^ start:-7
^ stick:-5
^ still:4
^ stir:-4
^ stirr:-6
^ straight:-6
^ strain:2
^ student:3
^ subject:-3
^ sum:-4
^ sunday:-8
^ superfat:2
^ swap:4
^ swapp:3
^ swirl:-8
^ switch:-4
^ take:-4
^ tare:1
^ teacher:1
^ tell:-10
^ test:-7
^ text:-6
^ thank:-6
^ thats:-3
^ the:-2
^ then:-9
^ ther:-2
^ there:-2
^ these:-1
^ they:-9
^ theyre:-5
^ third:-3
^ this:2
^ those:4
^ thought:-3
^ threw:8
^ thx:-4
^ tip:-5
^ title:-4
^ to:1
^ today:2
^ tonight:-4
^ too:-2
^ took:2
^ total:-6
^ towel:-4
^ trac:-2
^ trace:-4
^ translat:-2
^ tried:-4
^ try:-3
^ tub:-9
^ turn:-4
^ unit:-3
^ unmould:-6
^ update:1
^ use:1
^ used:4
^ using:-8
^ version:-9
^ very:-8
^ wait:5
^ want:3
^ warm:-6
^ was:-5
^ wash:-7
^ we:1
^ wed:1
^ week:-4
^ weekend:-4
^ weigh:-8
^ weight:-9
^ well:-6
^ went:2
^ were:2
^ weve:-6
^ what:-10
^ whats:-6
^ when:-5
^ where:-1
^ which:-8
^ while:-1
^ who:-6
^ whoever:-3
^ whole:4
^ whos:-3
^ why:-7
^ will:-4
^ with:-5
^ work:-3
^ worksheet:-4
^ workshop:-4
^ would:-2
^ wrapp:-8
^ write:2
^ written:4
^ wrote:-4
^ x:-9
^ years:4
^ yes:-10
^ yesterday:-7
^ yield:2
^ you:-6
^ youll:2
^ zap:-4
^%:-6
^0:-5
^<:-1
^=:-6
^>:-10
^C:-13
^I:-2
^K:-3
^L:-1
^M:2
^N:2
^S:-9
^T:-6
^U:2
^X:-4
^b:-1
^d:-4
^e:-10
^l:7
^r:2
^v:-1
^w:-3
any:-2
b%:-3
b0:2
b:3
bA:4
bF:-4
bL:9
bN:6
bW:9
bb:-5
bt:-5
b~ ::-1
b~ ?:8
b~ a:-4
b~ after:-8
b~ and:-7
b~ as:-6
b~ bars:-7
b~ because:-3
b~ before:3
b~ but:6
b~ by:6
b~ fine:-4
b~ for:6
b~ i:2
b~ if:7
b~ is:7
b~ it:-3
b~ my:4
b~ not:-6
b~ of:1
b~ on:-4
b~ or:8
b~ right:-8
b~ still:4
b~ the:6
b~ then:6
b~ too:2
b~ was:4
b~ x:-7
b~0:-9
b~L:1
d%:-4
d0:-8
d:-6
d=:-3
dA:-5
dF:-8
dI:-7
dK:-5
dL:-7
dS:-1
dX:-2
db:-4
dd:-5
dt:-2
dw:-1
d~ ::-1
d~ ?:-3
d~ and:-5
d~ at:-3
d~ blend:-1
d~ both:-2
d~ by:-5
d~ for:-6
d~ here:-2
d~ in:-4
d~ it:-7
d~ no:-4
d~ oils:-1
d~ on:-6
d~ or:-3
d~ pour:-3
d~ so:-8
d~ stirr:-2
d~ the:-6
d~ then:-6
d~ trace:-1
d~ when:-6
d~A:-7
d~t:-1
e%:-6
e0:4
e:3
e=:-1
e>:-5
eA:-2
eF:-1
eL:2
eN:9
eW:-3
eX:5
ee:-6
et:3
e~ +:6
e~ all:1
e~ and:-3
e~ as:3
e~ but:12
e~ for:-2
e~ g:-10
e~ grams:-5
e~ in:9
e~ is:5
e~ minus:8
e~ of:2
e~ on:-3
e~ or:9
e~ was:12
e~ with:12
e~A:-4
e~F:-3
e~W:-3
l%:-5
l0:4
l:-2
l=:-5
l>:-4
lA:2
lF:-9
lL:-1
lN:2
lW:-4
lX:-3
ll:-6
long:1
lt:-1
lv:-8
lw:-5
l~ and:-6
l~ as:-7
l~ for:2
l~ i:-7
l~ in:-7
l~ is:-3
l~ of:-2
l~ on:1
l~ right:-3
l~ the:-7
l~ was:-6
l~ went:2
l~ with:1
l~L:4
l~t:-5
no figure:-6
no name:-6
r%:-8
r0:2
r:3
r>:-4
rA:1
rF:9
rK:2
rW:-3
rt:-6
r~ as:-9
r~ by:3
r~ the:-1
r~K:2
short:-6
t%:-5
t0:-2
t:-5
t<:7
t=:-3
t>:-1
tA:2
tF:-5
tK:-4
tL:-3
tN:-4
tS:-1
tU:-5
tW:1
tX:-5
tb:-2
td:-1
te:-10
tl:-7
tt:-2
tv:-2
tw:-2
t~ ::2
t~ ?:-8
t~ a:-5
t~ add:6
t~ added:2
t~ after:-6
t~ ago:-7
t~ all:-7
t~ and:-3
t~ at:-4
t~ because:-10
t~ before:3
t~ blend:-3
t~ both:-3
t~ but:2
t~ by:-6
t~ can:-4
t~ cook:-3
t~ cover:-2
t~ cure:-1
t~ cured:-2
t~ cut:-1
t~ day:-1
t~ did:-4
t~ each:-1
t~ edges:-4
t~ flat:-6
t~ for:1
t~ from:-8
t~ gel:-3
t~ i:-4
t~ if:-5
t~ in:-10
t~ into:-3
t~ is:-7
t~ it:-5
t~ its:2
t~ ive:-6
t~ later:-9
t~ lid:-5
t~ lined:-1
t~ loaf:-2
t~ long:-2
t~ makes:-1
t~ mash:-2
t~ melt:-2
t~ mine:-8
t~ mix:-5
t~ mould:-2
t~ my:-4
t~ no:-3
t~ now:-6
t~ of:3
t~ off:-3
t~ oils:-2
t~ on:-7
t~ or:-5
t~ paste:-8
t~ pot:2
t~ pour:-4
t~ ready:-4
t~ rest:-8
t~ since:-5
t~ so:-3
t~ still:-6
t~ stir:-1
t~ stirr:-5
t~ the:-5
t~ then:-5
t~ they:-3
t~ till:-3
t~ to:-6
t~ trace:-5
t~ under:-1
t~ unmould:-4
t~ until:-3
t~ used:-3
t~ wait:-3
t~ was:-8
t~ we:-7
t~ weigh:-2
t~ when:-5
t~ which:-2
t~ with:2
t~ yes:2
t~ zap:-1
t~0:-1
t~=:-2
t~A:-5
t~F:-2
t~K:-2
t~L:-2
t~S:-2
t~U:-4
t~W:1
t~X:-6
t~b:-5
t~d:-2
t~t:-5
v0:-5
v=:3
vA:4
vC:1
vF:-2
vK:9
vL:4
vN:7
vS:-3
vW:6
vX:-4
vb:-4
vd:-1
vl:-7
vt:3
vv:3
vw:3
v~ a:-5
v~ and:1
v~ at:-4
v~ bottle:-1
v~ can:-9
v~ for:-5
v~ i:2
v~ in:-2
v~ is:-6
v~ of:2
v~ one:-4
v~ or:-3
v~ pot:-8
v~ so:-2
v~ to:5
v~C:3
v~S:-1
v~W:2
v~X:-2
w%:-5
w0:1
w<:-13
w=:-6
w>:2
wA:-1
wC:7
wF:-1
wI:-4
wL:-3
wN:1
wS:-6
wW:-1
wX:2
wb:2
wd:4
wl:-13
wt:-10
wv:-1
w~ a:3
w~ after:-6
w~ and:-1
w~ as:-7
w~ at:-8
w~ before:-8
w~ cubes:-7
w~ dissolv:1
w~ empty:-1
w~ for:-1
w~ fresh:-7
w~ from:-7
w~ goes:-7
w~ in:-6
w~ instead:-12
w~ is:-2
w~ loaf:-3
w~ more:-3
w~ mould:3
w~ no:-3
w~ of:2
w~ on:-1
w~ one:-2
w~ or:-3
w~ out:-8
w~ per:4
w~ so:-2
w~ the:-6
w~ to:-5
w~ together:-8
w~ too:1
w~ was:5
w~ wet:-7
w~ when:-2
w~0:3
w~C:4
w~I:1
w~L:-8
w~N:-1
w~S:-5
w~X:-6
w~w:-3`;
