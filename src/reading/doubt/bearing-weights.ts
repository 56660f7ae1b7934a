/** What each sign of a note weighs for its bearing on the pot and against it, in tenths of a logit: learned, `npm run generate:bearing`. */
export const weights = ` *:-6
 *~A:-7
 *~F:-3
 +:2
 +~ a:-5
 +~0:5
 +~<:-1
 +~=:-4
 +~A:-6
 +~F:-8
 +~W:-8
 .:7
 .~%:6
 .~0:4
 ::1
 :~ a:3
 :~ about:-5
 :~ all:5
 :~ as:-3
 :~ do:-2
 :~ does:-2
 :~ g:-3
 :~ goggl:-4
 :~ good:-6
 :~ half:7
 :~ i'd:4
 :~ i:4
 :~ in:4
 :~ is:-8
 :~ it:1
 :~ its:-1
 :~ ive:2
 :~ kitchen:1
 :~ me:-7
 :~ melt:-11
 :~ my:1
 :~ no:1
 :~ none:7
 :~ one:-7
 :~ re:-2
 :~ soap:-5
 :~ the:-1
 :~ too:3
 :~ what:3
 :~ why:-4
 :~ winter:-1
 :~ with:2
 :~ yes:4
 :~%:-5
 :~0:-6
 :~<:-3
 :~=:-5
 :~>:-6
 :~L:-3
 :~N:2
 :~S:-5
 :~T:-3
 :~W:-2
 :~X:-1
 :~b:-6
 :~d:-3
 :~l:-8
 :~t:-5
 :~v:-7
 :~w:4
 =:-2
 =~ =:-6
 =~0:-5
 =~=:-5
 =~>:-2
 =~F:1
 =~l:-7
 ?:-4
 a:-1
 about:-2
 about~ a:5
 about~ an:-4
 about~ it:-2
 about~ right:-2
 about~ superfat:-8
 about~ the:4
 about~ to:-3
 about~%:-3
 about~0:-2
 about~<:5
 about~>:-4
 about~F:-6
 about~b:3
 about~d:-2
 about~t:-7
 about~v:2
 about~w:3
 above:4
 above~ is:3
 above~d:-6
 abt:-7
 accident:3
 accord:5
 accord~ to:5
 account:6
 acros:4
 acros~ the:7
 actual:7
 actual~N:3
 add:-2
 added:7
 added~ a:1
 added~ it:5
 added~ the:2
 added~<:-8
 added~=:-9
 added~v:6
 added~w:3
 adds:-11
 adds~ up:-9
 add~ a:2
 add~ it:-7
 add~ the:-4
 add~ to:4
 add~<:-3
 add~=:-3
 add~F:2
 add~w:-7
 advice:3
 afresh:-8
 after:1
 afternoon:2
 after~ a:-2
 after~ an:1
 after~ christma:-6
 after~ cook:3
 after~ cure:-2
 after~ i:3
 after~ it:7
 after~ last:1
 after~ pour:5
 after~ strain:2
 after~ that:-1
 after~ the:-1
 after~ this:-8
 after~0:-6
 after~t:-5
 again:-1
 against:3
 against~ the:6
 again~ ::1
 again~ ?:4
 again~ after:-2
 again~ and:-9
 again~ for:-7
 again~ so:-1
 again~ with:5
 age:-9
 ages:-1
 ages~ to:-4
 ago:-9
 ago~ and:-1
 agre:-4
 agree:-7
 agree~ with:-4
 ahead:1
 aim:5
 aim~ at:1
 aim~ for:7
 air:-2
 air~ cupboard:-1
 aisle:4
 aleppo:-5
 alike:6
 alkali:-7
 all:1
 allergen:-6
 allergic:8
 allergic~ to:-7
 allergy:5
 allotment:-4
 allow:-5
 all~ ::-4
 all~ ?:-3
 all~ and:4
 all~ at:4
 all~ but:9
 all~ by:-7
 all~ day:-6
 all~ down:8
 all~ fats:-7
 all~ first:1
 all~ g:-10
 all~ good:-8
 all~ grams:-9
 all~ i:4
 all~ in:-3
 all~ is:-8
 all~ my:-4
 all~ of:-2
 all~ on:-6
 all~ over:-6
 all~ right:-9
 all~ that:-3
 all~ the:-5
 all~ there:4
 all~ together:-8
 all~ told:-3
 all~ up:-4
 all~ week:3
 all~ weigh:-3
 all~ went:-2
 all~0:1
 all~F:4
 all~L:-3
 all~W:1
 all~b:-2
 all~e:7
 almost:1
 alone:-1
 along:9
 along~ the:-1
 along~ with:5
 already:7
 already~ dissolv:4
 already~ in:4
 already~ put:8
 already~ so:2
 alright:-4
 alright~ ?:-1
 alright~ for:-5
 also:3
 also~w:4
 alter:4
 although:3
 altogether:-8
 alu:-3
 aluminium:-2
 alway:-3
 alway~ did:-6
 alway~ said:-3
 alway~ with:5
 am:2
 american:-9
 ammonia:-6
 amount:4
 amount~ ?:-4
 amount~ g:-4
 amount~ of:-1
 am~ a:-5
 am~ from:-7
 am~ i:-1
 an:-2
 and~ a:-4
 and~ about:-5
 and~ add:-7
 and~ added:-1
 and~ again:4
 and~ all:6
 and~ an:-4
 and~ another:-9
 and~ asked:-6
 and~ at:-7
 and~ bang:-1
 and~ blend:-6
 and~ both:-1
 and~ by:1
 and~ call:2
 and~ came:-8
 and~ clear:-2
 and~ cook:3
 and~ cool:2
 and~ couldnt:-1
 and~ did:-1
 and~ do:2
 and~ does:-5
 and~ dont:-7
 and~ even:2
 and~ everyth:-2
 and~ fill:2
 and~ for:-2
 and~ forgot:-4
 and~ found:4
 and~ gave:3
 and~ give:4
 and~ glov:-2
 and~ go:-1
 and~ goes:-2
 and~ goggl:-3
 and~ got:-9
 and~ had:-1
 and~ half:-5
 and~ hard:-5
 and~ has:3
 and~ have:-4
 and~ he:3
 and~ her:-5
 and~ his:-7
 and~ honest:-7
 and~ how:-7
 and~ i'd:-1
 and~ i:6
 and~ if:3
 and~ im:-2
 and~ in:-3
 and~ into:4
 and~ it:-3
 and~ itll:-7
 and~ its:-3
 and~ keep:-8
 and~ kept:1
 and~ last:-5
 and~ leave:-2
 and~ left:4
 and~ let:-5
 and~ lost:-7
 and~ me:-3
 and~ melt:-6
 and~ mine:2
 and~ mixed:-3
 and~ neither:3
 and~ never:-4
 and~ nobody:-2
 and~ none:6
 and~ not:-4
 and~ noth:-2
 and~ now:3
 and~ of:4
 and~ off:-5
 and~ once:-1
 and~ one:-1
 and~ only:3
 and~ pour:4
 and~ put:4
 and~ said:-5
 and~ says:1
 and~ see:-3
 and~ she:-5
 and~ since:2
 and~ so:2
 and~ soap:-6
 and~ some:2
 and~ someth:6
 and~ sprinkle:-2
 and~ start:-6
 and~ stay:-5
 and~ still:-1
 and~ stir:1
 and~ stirr:-7
 and~ straight:-6
 and~ strain:-4
 and~ stuck:8
 and~ swear:-7
 and~ tell:-5
 and~ thank:-1
 and~ that:5
 and~ the:-2
 and~ then:4
 and~ ther:6
 and~ there:6
 and~ they:-7
 and~ this:4
 and~ those:3
 and~ tipp:8
 and~ to:-5
 and~ together:1
 and~ took:11
 and~ turn:-3
 and~ use:4
 and~ used:3
 and~ wait:-2
 and~ want:-6
 and~ wants:-3
 and~ warm:-2
 and~ was:5
 and~ weigh:2
 and~ went:-4
 and~ when:-2
 and~ whether:-6
 and~ white:-5
 and~ will:-3
 and~ with:-3
 and~ would:-6
 and~ yes:-2
 and~ you:-1
 and~%:-4
 and~0:1
 and~<:1
 and~=:-4
 and~>:-2
 and~A:-3
 and~B:-1
 and~F:-5
 and~L:-5
 and~N:7
 and~S:-4
 and~X:1
 and~b:-12
 and~e:-1
 and~l:-7
 and~t:-7
 and~v:4
 and~w:-3
 another:4
 another~ day:-5
 another~0:9
 another~<:7
 another~t:-6
 another~v:-2
 another~w:-7
 answer:-4
 answer~ ::-6
 answer~ is:-3
 answer~ the:4
 any:-1
 anybody:1
 anyhow:-3
 anyone:-7
 anyone~ know:2
 anyone~ tried:-4
 anyth:-4
 anyth~ in:-3
 anyth~ off:-4
 anyth~ wrong:-4
 anyway:-5
 anywhere~ near:-6
 any~ more:-1
 any~A:-4
 any~F:1
 any~S:-7
 an~ earlier:-8
 an~ envelope:-5
 an~ extra:3
 an~ eye:-2
 an~ hour:-7
 an~ old:-5
 an~ older:-1
 an~I:-7
 an~L:5
 apart:-10
 approx:1
 app~ puts:-4
 april:-2
 apron:-5
 are:-1
 are~ dry:5
 are~ for:2
 are~ full:-1
 are~ in:-6
 are~ no:-8
 are~ not:-9
 are~ now:1
 are~ right:-6
 are~ still:-9
 are~ the:-2
 are~0:3
 are~=:-3
 are~F:-3
 argu:-9
 arithmetic:-8
 arm:-7
 around:-5
 around~ the:-5
 around~0:-3
 around~d:-3
 arriv:-5
 as:3
 ash:-10
 ashes:-6
 ash~ and:-4
 ash~ on:-9
 aside:-5
 ask:-4
 asked:-8
 asked~ about:-5
 asked~ for:-2
 asked~ if:-4
 asked~ whether:-5
 asks:-8
 ask~ ::-2
 ask~ about:-5
 ask~ for:-4
 ask~ me:1
 ask~ you:-5
 asleep:-8
 assay:8
 as~ a:1
 as~ above:-6
 as~ alway:6
 as~ anyth:2
 as~ before:5
 as~ ever:-7
 as~ far:-5
 as~ i:6
 as~ if:3
 as~ in:-2
 as~ is:7
 as~ it:-3
 as~ its:-1
 as~ list:-3
 as~ long:-8
 as~ on:-6
 as~ print:5
 as~ promis:-6
 as~ snow:-4
 as~ the:2
 as~ well:3
 as~ written:-5
 as~ you:-7
 as~0:1
 as~A:4
 as~F:-1
 as~I:-7
 as~L:-4
 as~X:-6
 at:-2
 ate:3
 attempt:-7
 attempt~0:-4
 attic:-2
 at~ a:-8
 at~ about:-1
 at~ all:-4
 at~ around:-4
 at~ christma:-2
 at~ church:-7
 at~ day:-7
 at~ easter:-7
 at~ first:-6
 at~ half:-8
 at~ hour:1
 at~ it:5
 at~ least:-4
 at~ light:1
 at~ liquid:-3
 at~ me:4
 at~ minute:-2
 at~ my:-2
 at~ once:-4
 at~ our:-6
 at~ room:-5
 at~ rough:-1
 at~ school:-6
 at~ that:1
 at~ the:1
 at~ thin:-7
 at~ this:-6
 at~ trace:5
 at~ week:-5
 at~%:3
 at~0:-4
 at~<:8
 at~=:-7
 at~b:2
 at~d:-4
 at~e:3
 at~t:-10
 at~w:-3
 august:3
 aunt:-4
 aunti:-5
 auntie:3
 aunts:3
 aunt~ in:-6
 aunt~ says:-6
 aunt~ sent:2
 autumn:-10
 average:-3
 away:-2
 away~ and:1
 a~ ::-8
 a~ bad:-8
 a~ bag:3
 a~ bar:-9
 a~ batch:-7
 a~ battery:1
 a~ beginner:-3
 a~ big:-1
 a~ bigger:-2
 a~ bit:-2
 a~ blanket:-4
 a~ blend:8
 a~ blog:-1
 a~ bottle:-1
 a~ bowl:-9
 a~ box:-6
 a~ brick:-3
 a~ bucket:-7
 a~ can:2
 a~ candle:-8
 a~ carton:-1
 a~ cheese:-5
 a~ chip:-7
 a~ class:-3
 a~ clean:3
 a~ cold:-6
 a~ corner:-8
 a~ cow:1
 a~ crack:1
 a~ crisp:-5
 a~ crumb:-6
 a~ crust:9
 a~ customer:-5
 a~ dark:-5
 a~ day:-3
 a~ different:-4
 a~ double:-1
 a~ drawer:-6
 a~ dream:-3
 a~ drop:3
 a~ dry:-8
 a~ face:-6
 a~ fair:5
 a~ fami:-5
 a~ fan:-2
 a~ farm:3
 a~ few:5
 a~ fifth:3
 a~ finger:-6
 a~ fresh:-2
 a~ friend:-2
 a~ full:-3
 a~ glass:3
 a~ glug:4
 a~ good:10
 a~ half:3
 a~ handful:-2
 a~ heap:9
 a~ hole:-3
 a~ hurry:-6
 a~ jam:-6
 a~ jar:1
 a~ jug:-2
 a~ knob:7
 a~ ladle:5
 a~ lady:-4
 a~ library:-3
 a~ lid:-3
 a~ lidd:-2
 a~ light:-4
 a~ line:1
 a~ list:1
 a~ little:4
 a~ loaf:-3
 a~ long:-1
 a~ lot:-7
 a~ lump:5
 a~ man:-2
 a~ milk:-2
 a~ minute:-6
 a~ mix:6
 a~ month:-10
 a~ mould:-5
 a~ mug:8
 a~ new:-6
 a~ nice:-3
 a~ night:-6
 a~ number:-1
 a~ page:-7
 a~ paper:-5
 a~ paste:-1
 a~ pdf:-3
 a~ pencil:-7
 a~ photo:-7
 a~ piece:1
 a~ pinch:-2
 a~ plain:-9
 a~ pot:1
 a~ proper:-4
 a~ puddle:5
 a~ quarter:6
 a~ question:-3
 a~ reader:-6
 a~ ready:3
 a~ recipe:-2
 a~ rock:-6
 a~ round:-2
 a~ row:-8
 a~ scale:-7
 a~ second:-5
 a~ sensible:-3
 a~ shade:-4
 a~ shoe:-3
 a~ shoebox:-3
 a~ silicone:-5
 a~ sink:-6
 a~ skin:-3
 a~ skull:-6
 a~ slip:3
 a~ slow:-7
 a~ small:1
 a~ smaller:-3
 a~ soap:-7
 a~ soft:-4
 a~ softer:-6
 a~ spatula:-6
 a~ spill:-1
 a~ splash:5
 a~ spoon:-3
 a~ spoonful:-3
 a~ steel:-8
 a~ stick:3
 a~ stir:-3
 a~ superfat:1
 a~ tenth:5
 a~ thermometer:-5
 a~ thin:-2
 a~ thing:-5
 a~ third:3
 a~ time:-7
 a~ tin:1
 a~ tiny:4
 a~ touch:-2
 a~ towel:-1
 a~ tray:-4
 a~ treat:-5
 a~ tub:-5
 a~ twentieth:3
 a~ typo:2
 a~ very:-4
 a~ video:-4
 a~ volcano:-3
 a~ warm:-4
 a~ water:-2
 a~ week:-8
 a~ wet:2
 a~ white:-1
 a~ whole:1
 a~ wire:-2
 a~ woman:-6
 a~ wooden:-1
 a~ year:-9
 a~ yes:-3
 a~ zap:-5
 a~%:2
 a~0:3
 a~<:5
 a~=:-7
 a~>:1
 a~A:-5
 a~F:-2
 a~K:-2
 a~L:-3
 a~N:6
 a~S:1
 a~X:2
 a~b:3
 a~e:-8
 a~r:2
 a~t:-5
 a~v:-3
 a~w:3
 b:-1
 babcia:-5
 babi:-6
 baby:1
 back:-4
 background:-3
 back~ ::-6
 back~ a:2
 back~ and:3
 back~ at:-3
 back~ for:3
 back~ in:-6
 back~ of:-4
 back~ on:-8
 back~ out:7
 back~ till:9
 back~ to:-7
 back~ up:3
 bacon:-5
 badly:-3
 bag:6
 bags:-4
 bag~ of:6
 bag~ says:-3
 bak:-8
 bakery:-9
 bak~ paper:-8
 balanc:-3
 balance:3
 balanc~ ?:-3
 balcony:2
 balls:-5
 balm:-6
 bang:-9
 bang~ it:-4
 bar:-5
 bare:-7
 bare~ got:-2
 bark:1
 barn:-5
 barrel:-6
 bars:-9
 bars~ +:-7
 bars~ ::-6
 bars~ about:-1
 bars~ and:-6
 bars~ are:-5
 bars~ at:-2
 bars~ come:-4
 bars~ each:-4
 bars~ for:-6
 bars~ from:-5
 bars~ i:-2
 bars~ in:-4
 bars~ of:-6
 bars~ on:-5
 bars~ out:-8
 bars~ so:-3
 bars~ to:-5
 bars~ went:-6
 bars~ were:2
 bars~ with:-9
 bars~0:-7
 bars~t:-3
 bars~w:-5
 bar~ ::-2
 bar~ ?:-4
 bar~ all:-4
 bar~ and:-3
 bar~ at:-3
 bar~ for:-7
 bar~ from:-5
 bar~ i:2
 bar~ in:-3
 bar~ is:2
 bar~ no:-2
 bar~ of:-7
 bar~ since:-2
 bar~ so:2
 bar~ with:2
 bar~0:-5
 basic:-4
 bastille:-7
 batch:-6
 batch~ ::-2
 batch~ and:-8
 batch~ before:-8
 batch~ but:4
 batch~ ever:1
 batch~ had:-3
 batch~ i:4
 batch~ in:2
 batch~ is:2
 batch~ log:-3
 batch~ no:-4
 batch~ of:-6
 batch~ record:-2
 batch~ sheet:-5
 batch~ was:-6
 batch~ with:-4
 batch~0:-7
 bath:-9
 bathroom:5
 bathroom~ scale:7
 batter:-3
 batteri:-7
 battery:3
 battery~ died:7
 bazaar:-3
 bc:8
 bc~ i:3
 be:3
 beach:-6
 beads:6
 beaker:4
 bear:-7
 beard:-4
 bear~ with:-7
 beat:-3
 became:4
 became~0:9
 because~ a:-4
 because~ he:-9
 because~ i:-2
 because~ it:6
 because~ its:-4
 because~ last:3
 because~ my:3
 because~ of:-3
 because~ she:-3
 because~ the:2
 because~F:-8
 bed:-6
 bee:-7
 beech:-3
 beef:-7
 beef~=:-5
 beekeeper:-7
 been:2
 been~ at:5
 been~ mak:-6
 been~ on:-5
 been~ open:6
 been~ stand:3
 been~ told:-7
 been~t:-1
 bees:-3
 before:-1
 beforehand:-4
 before~ and:2
 before~ anyone:-6
 before~ i:-4
 before~ it:1
 before~ me:2
 before~ pour:7
 before~ saturday:-6
 before~ she:-1
 before~ so:-8
 before~ that:-8
 before~ the:2
 before~ they:-7
 before~ this:-10
 before~ we:-3
 before~ weigh:-8
 before~ with:-6
 before~ you:-12
 before~t:-6
 began:-6
 begin:-6
 beginn:-1
 beginner':-8
 beginner:-10
 behav:-7
 behind:-1
 behind~ the:3
 beige:-8
 being:-3
 bell:1
 belong:-1
 belong~ to:2
 below:-4
 below~ the:-5
 below~0:1
 below~d:-4
 bench:3
 besid:5
 beside:4
 beside~ it:2
 beside~ the:-1
 best:-11
 best~ before:-6
 bet:-7
 better:-5
 better~ than:3
 between:-1
 between~ the:5
 between~0:5
 be~ ?:-7
 be~ a:5
 be~ about:-6
 be~ bother:3
 be~ clear:-6
 be~ cut:-3
 be~ exact:5
 be~ for:3
 be~ gentle:-3
 be~ honest:-2
 be~ hot:-5
 be~ in:-8
 be~ mild:-5
 be~ ok:-3
 be~ on:5
 be~ patient:-8
 be~ right:4
 be~ sure:-3
 be~ the:-6
 be~ too:-5
 be~%:-10
 be~0:5
 be~N:8
 be~b:7
 be~e:10
 be~w:5
 bicycle:-7
 big:1
 bigger:1
 bigger~ pot:-4
 bigger~ than:5
 big~ batch:-8
 big~ kettle:6
 big~ one:3
 big~ pot:-3
 bin:-4
 binn:4
 bin~ it:-5
 birds:-3
 birthday:-5
 biscuit:-7
 bit:1
 bite:-6
 bites:-2
 bits:1
 bits~ in:-1
 bits~ of:1
 bit~ at:-5
 bit~ by:-3
 bit~ greasy:-1
 bit~ less:-1
 bit~ like:-4
 bit~ more:4
 bit~ of:2
 bit~ on:-8
 bit~ over:-7
 bit~ so:-3
 bit~ soft:-6
 bit~ the:1
 black:-3
 blame:-8
 blame~ the:-6
 blanket:-6
 blender:-4
 blender~ and:-6
 blender~ died:-3
 blender~t:-5
 blend~ and:-6
 blend~ at:-1
 blend~ for:-3
 blend~ pour:-2
 blend~ till:-4
 blend~ to:-2
 blend~ with:7
 blend~t:-5
 blind:3
 blob:-2
 block:1
 block~ of:-1
 blog:3
 blog~ i:-2
 blood:-5
 blue:-2
 board:3
 boat:4
 body:1
 boiler:-8
 boil~ down:-3
 boil~ flat:4
 boil~ in:5
 boil~ it:-6
 boil~ off:5
 boil~ over:6
 boil~ the:-4
 bonjour:-4
 bonsoir:-4
 book:-3
 book~ ::-1
 book~ says:-7
 born:-5
 borrow:-1
 boss:-1
 both:-2
 bother:-6
 bother~ to:5
 bother~ with:6
 both~ alkali:-5
 both~ are:-8
 both~ feel:-1
 both~ lyes:-2
 both~ times:-7
 both~ units:-4
 both~ were:-6
 bottl:-4
 bottle:3
 bottle~ and:7
 bottle~ before:-4
 bottle~ gave:4
 bottle~ in:-6
 bottle~ is:4
 bottle~ of:-2
 bottle~ on:-4
 bottle~ ran:-1
 bottle~ said:6
 bottle~ says:7
 bottle~ so:2
 bottle~ was:14
 bottle~ with:-1
 bottl~ of:-4
 bottom:-1
 bought:-3
 bought~ a:-5
 bought~ the:-6
 bought~0:-6
 bought~>:-9
 bought~F:1
 bowl:1
 bowls:1
 bowl~ and:-3
 bowl~ in:-10
 bowl~ is:-4
 bowl~ of:-1
 bowl~ on:5
 bowl~ with:-1
 bowl~w:2
 box:-2
 boxes:-4
 box~ and:-2
 box~ lined:-2
 box~ with:-2
 box~t:-1
 boyfriend:-3
 boys:2
 brand:-4
 brave:-2
 bread:-2
 break:-8
 breathe:-2
 brewery:-4
 brick:-2
 brim:-2
 bring:-11
 bring~ it:-5
 bring~ the:-9
 broke:-1
 broken:4
 brother~ in:-8
 brought:8
 brown:-7
 brown~ paper:-3
 brush:-2
 btw:3
 bubbl:-6
 bubble:-5
 bubbl~ and:2
 bucket:-3
 bucket~ of:-9
 bucket~ so:-5
 bucket~ with:-7
 burn:-7
 burnt:-3
 burst:-4
 burst~ of:-2
 bus:-2
 but:-1
 butcher:-5
 butcher~ gave:-8
 button:-5
 but~ before:-1
 but~ he:-6
 but~ here:-6
 but~ i'd:-4
 but~ i:1
 but~ im:-9
 but~ is:-6
 but~ it:-4
 but~ ive:1
 but~ my:-2
 but~ no:2
 but~ not:-3
 but~ now:-4
 but~ only:-7
 but~ she:-4
 but~ that:-7
 but~ thats:-6
 but~ the:8
 but~ then:3
 but~ there:-4
 but~ they:-5
 but~ those:-6
 but~ what:3
 but~ with:1
 but~0:1
 but~F:-8
 buy:-3
 buy~ the:-2
 by:1
 by~ ::-7
 by~ a:6
 by~ accident:3
 by~ bit:-3
 by~ easter:-6
 by~ eye:7
 by~ feel:-1
 by~ hand:-7
 by~ it:-5
 by~ itself:3
 by~ me:-5
 by~ mistake:7
 by~ modern:-3
 by~ my:2
 by~ noon:-4
 by~ spoon:-6
 by~ the:3
 by~ then:-2
 by~ today:-3
 by~ volume:1
 by~ week:-6
 by~ weight:-5
 by~<:7
 by~N:-4
 by~b:-2
 by~t:-6
 b~ ::3
 b~A:-4
 b~F:-7
 c:-5
 cakes:-6
 calculat:-1
 calculate:3
 calculator:-8
 call:3
 calls:-11
 calls~ it:-7
 call~ it:6
 call~ that:4
 call~ the:-3
 call~F:7
 came:1
 came~ back:1
 came~ from:-1
 came~ in:-3
 came~ out:-1
 came~ to:9
 came~ up:2
 can:-1
 candl:-7
 candle~B:-2
 candl~ and:-5
 cannot:-7
 cans:-2
 cant:3
 cant~ be:-1
 cant~ find:4
 cant~ get:-7
 cant~ remember:6
 cant~ say:-3
 cant~ stand:5
 can~ anyone:-1
 can~ be:-3
 can~ bear:-3
 can~ is:3
 can~ of:5
 can~ see:2
 can~ somebody:-6
 can~ someone:3
 can~ stand:-6
 can~ still:-5
 can~ tell:-2
 can~ the:-2
 can~ u:2
 can~ use:-6
 can~ you:2
 cap:-2
 capping:-7
 car:-8
 caramel:-6
 carbonate:5
 card:1
 card~ for:-3
 card~ is:3
 card~ no:-4
 care:1
 caretaker:-5
 carpet:-3
 carri:6
 carri~ it:4
 carri~ on:5
 carry:-9
 carton:-3
 case:-1
 cast:-7
 castile:-7
 cat:-1
 cat~ got:5
 cat~ had:2
 cat~ has:-5
 cat~ is:-3
 caught:1
 cauldron:-3
 caviti:-7
 ceil:-1
 cell:1
 cellar:-13
 certain:4
 certifi:-8
 certificate:6
 chair:-4
 change:-3
 change~ the:-4
 chang~ ::4
 chang~ my:6
 chang~ the:-8
 charg:-3
 charge:-5
 chat:-4
 cheap:-8
 cheaper:-4
 cheaper~ than:-5
 check:-5
 check~ ::-1
 check~ before:1
 check~ by:-8
 check~ it:-6
 check~ me:-2
 check~ my:-8
 check~ out:-4
 check~ please:-4
 check~ pls:-4
 check~ that:-7
 check~ the:-5
 check~ this:-5
 check~A:-5
 cheese:-3
 cheese~ wire:-6
 chemist:-8
 chemistry:-3
 chemistry~ teacher:3
 child:-7
 children:-5
 chill:-6
 chip:2
 chips:4
 chisel:-5
 choir:1
 choose:-4
 chopp:-3
 christma:-7
 christma~0:-7
 chuck:4
 chuck~ in:8
 church:-7
 claim:-3
 clarity:-4
 class:-3
 class~ ::-6
 class~ i:-5
 clean:-5
 clean~ the:-6
 clean~F:-4
 clear:-9
 clearer:1
 clear~ after:-2
 clear~ and:-6
 clear~ as:-9
 clear~ at:-7
 clear~ in:-6
 climb:-8
 climb~ out:-3
 climb~ to:-5
 cling:-5
 cling~ film:-3
 cling~ to:2
 clock:-5
 clos:-1
 close:-4
 close~ to:-4
 cloth:-6
 cloud:4
 cloudy:-1
 cloudy~ for:-3
 clubs:-6
 co:-2
 coins:2
 cold:-8
 cold~ from:-6
 cold~ press:-6
 cold~ proces:-6
 cold~L:6
 cold~W:-5
 colleague:-8
 colloidal:2
 colour:-8
 column:-6
 com:5
 combin:2
 combine:-2
 combine~ blend:-2
 comes:-1
 comes~ by:1
 comes~ from:-5
 comes~ in:-4
 comes~ out:2
 comes~ to:1
 come~ back:-8
 come~ down:-4
 come~ off:-2
 come~ out:3
 comma:2
 comma~ is:-7
 comment:-9
 compar:-3
 compare:-8
 compar~ with:2
 complain:-5
 complaint:-8
 complain~ about:-4
 complete:3
 computer:-3
 confetti:-5
 confirm:-8
 confirm~ the:-6
 confus:1
 contain:7
 convert:-9
 cook:1
 cooker:-1
 cooker~ ::-3
 cooker~ before:2
 cooker~ is:-5
 cooker~ on:-3
 cooks:-2
 cook~ ::-6
 cook~ ?:-7
 cook~ about:1
 cook~ and:-2
 cook~ at:-4
 cook~ for:-3
 cook~ i:-3
 cook~ in:-8
 cook~ is:4
 cook~ it:2
 cook~ on:-4
 cook~ once:-3
 cook~ part:-6
 cook~ so:6
 cook~ the:-6
 cook~ until:-1
 cook~ was:-10
 cook~ when:-6
 cook~ with:1
 cook~=:-1
 cook~F:-8
 cook~t:-4
 cool:-5
 cools:-7
 cool~ down:-1
 cool~ i:-2
 cool~ it:-6
 cool~ the:-7
 cool~ to:-3
 cool~ under:-3
 copi:4
 copi~ from:5
 copi~ it:-4
 copi~ off:2
 copi~ out:-7
 copi~ straight:-7
 copy:2
 cork:-7
 corner:-13
 correct:1
 correction:8
 correct~ ?:-2
 correct~ or:-3
 cos:7
 cost:-6
 costs:-14
 costs~ me:-2
 costs~0:-5
 costs~t:-5
 cost~ ::-8
 cost~ eur:-2
 cost~ me:-5
 cost~ per:-1
 cost~ sheet:-5
 cost~0:-4
 cost~t:-3
 could:-2
 couldnt:6
 couldnt~ be:7
 couldnt~ get:7
 couldnt~ tell:3
 could~ be:12
 could~ have:-7
 could~ not:7
 could~ somebody:-1
 could~ someone:-5
 could~ the:-6
 could~ you:-2
 council:-6
 count:1
 counter:4
 country:3
 county:-5
 count~ in:-2
 count~ it:6
 count~ the:-2
 count~ with:5
 course:-6
 course~ i:-3
 course~ in:-3
 cousin:-2
 cover:-6
 cover~ cut:-1
 cover~ it:-5
 cover~ with:-5
 cow:2
 cows:-6
 cp:-5
 crack:-2
 crackling:1
 crack~ on:-6
 craft:-1
 crate:-7
 creamy:-8
 cried:-9
 crisp:-6
 crisp~ tube:-5
 crock:-3
 crockpot:-3
 crock~ pot:1
 cross:-2
 cross~ out:-1
 crumb:-2
 crumbl:-6
 crumble:-5
 crumb~ and:5
 crumb~ at:4
 crush:-5
 crust:7
 crystal:-4
 cubes:-6
 cubes~ and:-4
 cubes~ of:1
 cubes~ the:-6
 cubes~w:-5
 cup:2
 cupboard:-1
 cupboard~ and:4
 cupcake:-7
 cups:-4
 cup~ and:-7
 cup~ on:2
 cup~ weigh:-2
 cup~ with:-6
 cur:-8
 cure:-8
 cured:-5
 cure~ ::-2
 cure~ for:-5
 cure~ till:-2
 cure~ until:-1
 cure~t:-1
 curry:-5
 custard:-6
 customer:-12
 cuts:-6
 cutt:-5
 cutter:-7
 cut~ ::-4
 cut~ after:-3
 cut~ at:-7
 cut~ in:-3
 cut~ into:-7
 cut~ it:3
 cut~ next:-2
 cut~ off:-1
 cut~ on:-4
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
 dad:-4
 dads:-1
 dads~t:-2
 dag:-2
 dag~ ::-1
 dag~ here:-1
 dairy:7
 damp:4
 dare:3
 dark:-10
 das:-7
 date:-7
 dates:-4
 date~ ::-2
 date~t:-6
 daughter':-8
 daughter:3
 daughter~ who:-5
 day:-3
 days:-6
 day~ and:-4
 day~ at:-6
 day~ before:3
 day~ i:-2
 day~ it:-6
 day~ so:3
 day~ then:-4
 day~0:-5
 day~t:-5
 de:-5
 dead:-3
 deal:6
 dear:3
 dear~ all:3
 dear~ group:-4
 december:-6
 decent:-6
 decid:-1
 decimal:-8
 deep:1
 degre:-7
 demineralis:-7
 dent:-8
 deodoris:-8
 diary:-4
 dictat:3
 dictat~ this:-3
 did:3
 didnt:4
 didnt~ weigh:7
 did~ for:-1
 did~ i:-6
 did~ in:-8
 did~ it:-1
 did~ my:-2
 did~ not:2
 did~ that:1
 did~ the:6
 did~ this:-1
 did~ you:-9
 did~=:-2
 died:2
 died~ at:5
 difference:-4
 different:-9
 digital:-8
 dilut:-5
 dilute:-9
 dilution:3
 dinner:3
 disaster:-12
 discount:3
 dish~ soap:5
 display:4
 dissolv:5
 dissolve:5
 dissolve~ it:-7
 dissolve~ the:7
 dissolve~=:-8
 dissolv~ in:1
 dissolv~ together:-1
 dissolv~<:3
 dissolv~=:-5
 do:-4
 doctor:-7
 does:-5
 doesnt:-3
 doesnt~ mind:-5
 doesnt~ smell:-4
 does~ anybody:-4
 does~ anyone:3
 does~ her:-4
 does~ it:-5
 does~ my:-5
 does~ not:-2
 does~ the:-4
 does~ this:-1
 does~%:-5
 does~F:-5
 does~b:-6
 does~w:2
 dog:1
 dogs:-7
 dog~ got:8
 doing:3
 doing~ it:-4
 doing~ the:2
 doing~ this:2
 done:-6
 done~ and:1
 dont:-3
 dont~ ask:5
 dont~ be:-5
 dont~ care:2
 dont~ get:4
 dont~ know:6
 dont~ laugh:-1
 dont~ panic:-5
 dont~ trust:-5
 dont~ want:-8
 door:-2
 doorbell:2
 doors:-8
 dos:-2
 dose:7
 dose~ of:8
 dot:-8
 doubl:9
 double:-7
 double~ boiler:-7
 double~ check:-2
 doubl~ the:-1
 doubt:-7
 down:2
 down~ and:-4
 down~ by:5
 down~ from:1
 down~ the:-1
 down~ with:5
 do~ ?:-7
 do~ a:-6
 do~ for:-6
 do~ i:3
 do~ in:-9
 do~ it:-1
 do~ not:-6
 do~ the:-6
 do~ this:-7
 do~ we:-4
 do~ with:-7
 do~ you:-4
 do~F:-3
 draft:-7
 drag:-7
 drain:5
 drama:-5
 drank:6
 draw:2
 drawer:-3
 drawer~ lined:-2
 drawn:4
 dream:-5
 drew:-6
 dried:-2
 drill:-4
 drink:-4
 drip:-6
 drips:-8
 drop:-2
 dropp:5
 dropp~ below:-4
 drops:-1
 drops~ of:3
 drop~ of:2
 drop~ the:-4
 drop~ to:-4
 drove:-4
 drown:-7
 drum:5
 dry:3
 dry~ cup:-3
 dry~ hands:6
 dry~ skin:-6
 dry~ so:2
 dry~ until:4
 duck:-7
 dump:-4
 dur:4
 dust:4
 e:-5
 each:-1
 each~ and:-4
 each~ of:-3
 each~ time:-7
 earlier:-5
 early:-9
 easier:-8
 easter:-6
 easy:-8
 eat:-2
 eats:-7
 eczema:3
 edge:-3
 edges:-3
 edit:2
 edition:2
 edit~ ::3
 either:3
 elbow:-5
 else:1
 else~ no:-3
 empti:5
 empty:-2
 empty~ and:-4
 emulsion:-5
 enamel:-7
 enamel~ pot:-6
 end:4
 ended:7
 ended~ up:-1
 ends:-10
 end~ ?:-4
 end~ after:2
 end~ and:3
 end~ i:-1
 end~ is:-10
 end~ it:7
 end~ of:-2
 end~ piece:-6
 end~ so:-1
 english:-4
 english~ i:-6
 english~ is:-4
 enough:-1
 enough~ ?:-5
 enough~ for:-3
 enough~ or:-6
 enough~ to:-5
 entire:-4
 entry:-3
 envelope:-5
 equal:1
 equal~ weight:-6
 error:-5
 eur:-4
 euro:-2
 even:-7
 evening:-5
 even~ all:-4
 even~ class:-4
 even~ in:-6
 ever:-11
 every:-3
 everybody:-9
 everyday:-4
 everyday~ bar:-4
 everyone:-7
 everyone~ who:2
 everyth:4
 everyth~ ::-4
 everyth~ and:-6
 everyth~ at:1
 everyth~ else:1
 everyth~ in:-7
 everyth~ is:3
 everyth~ on:1
 everyth~ was:-3
 everywhere:-4
 every~ one:5
 every~ time:2
 every~t:-6
 ex:-7
 exact:-6
 exact~ as:-8
 exact~ one:-2
 exam:-6
 except:8
 except~ for:-2
 except~ that:-4
 except~ the:4
 exces:4
 excuse:-6
 excuse~ my:-2
 excuse~ the:-6
 expect:-4
 expensive:-4
 explain:-1
 export:-4
 export~ from:-4
 extra:7
 extra~ fat:7
 extra~ virgin:-4
 extra~A:-2
 extra~F:-4
 eye:6
 eyebrow:-5
 eyes:-2
 eye~ over:-2
 f:-6
 face:-5
 faces:-8
 face~ bar:-5
 facial:1
 facial~ bar:-4
 fact:6
 faded:-8
 fades:-4
 fail:3
 fails:-4
 fail~ me:-3
 faint:-7
 faint~ of:-5
 fair:2
 fair~ ::-3
 fall:1
 falls:-6
 false:-6
 false~ trace:-6
 famili:-7
 fan:-5
 fancy:5
 far:-3
 farm~ shop:4
 far~ as:-5
 far~ too:2
 fast:-6
 faster:2
 faster~ than:-5
 fat:4
 father:-1
 father~ in:2
 fats~ ::-4
 fats~ ?:-4
 fats~ and:-1
 fats~ are:-4
 fats~ at:-5
 fats~ in:-6
 fats~ is:-6
 fats~ melt:-1
 fats~ or:-5
 fats~ were:-5
 fat~ ::1
 fat~ ?:-6
 fat~ and:1
 fat~ g:-4
 fat~ grams:-5
 fat~ in:-4
 fat~ is:1
 fat~ left:4
 fat~ of:-8
 fat~ so:-2
 fat~ was:-5
 fault:-6
 favour:1
 february:-7
 feed:1
 feed~ store:4
 feel:1
 feels:-6
 feels~ a:-5
 feels~ like:-4
 feel~ the:-1
 feet:2
 fell:-2
 fellow:1
 fell~ in:1
 fell~ on:1
 felt:-2
 felt~ like:-3
 fence:-5
 fete:3
 few:6
 field:-7
 fifth:2
 fifth~ of:6
 fig:-5
 fight:5
 figur:3
 figure:8
 file:4
 files:-4
 fill:2
 fills:-7
 fills~ my:-7
 fills~ the:-1
 fills~0:-3
 fill~ in:-5
 fill~ the:4
 fill~ to:2
 fill~ up:4
 fill~0:3
 film:-6
 film~ on:-5
 filter:-1
 final:-1
 find:7
 finds:-6
 find~ the:3
 find~F:2
 fine:-5
 finer:-5
 fine~ ?:-5
 fine~ and:-2
 fine~ but:-4
 fine~ for:-5
 fine~ or:-4
 finger:-1
 finish:3
 finish~ paste:-6
 finish~ with:5
 fire:-8
 firm:6
 firmer:-1
 first:-4
 first~ ::-1
 first~ and:-4
 first~ attempt:-9
 first~ ever:-6
 first~ go:-3
 first~ hour:-3
 first~ i:-1
 first~ it:-4
 first~ lot:4
 first~ one:-2
 first~ so:6
 first~ soap:-1
 first~ the:-3
 first~ then:-10
 first~ time:2
 first~ to:-3
 first~ try:-5
 first~ went:-3
 first~0:2
 first~t:4
 fish:-1
 fit:-3
 fits:-6
 fits~ the:-4
 fit~ the:2
 fixed:-10
 fizz:-2
 flak:4
 flake:8
 flame:-6
 flat:2
 flatmate:-1
 flat~ and:-6
 flat~ boil:3
 flat~ in:-6
 float:-4
 float~ an:-5
 floor:3
 floor~ and:-4
 fluid:3
 fluid~ ounc:8
 foam:-5
 foams:-7
 foam~ from:-6
 foam~ over:7
 fold:-3
 folder:-8
 folk:-7
 folks:-5
 follow:-1
 for:-1
 forever:-5
 forever~ to:-5
 forget~ the:-1
 forgiv:-9
 forgive:-4
 forgot:4
 forgotten:4
 forgot~ it:4
 forgot~ the:-1
 forgot~ to:3
 form:-7
 formula:-4
 forum:-9
 for~ a:-3
 for~ about:2
 for~ after:3
 for~ an:-4
 for~ babi:-6
 for~ baby:5
 for~ both:6
 for~ candl:-8
 for~ christma:-3
 for~ days:-4
 for~ each:4
 for~ floor:-4
 for~ free:5
 for~ fry:-1
 for~ gram:6
 for~ half:5
 for~ hands:1
 for~ hardnes:1
 for~ her:1
 for~ his:-5
 for~ it:-5
 for~ laundry:3
 for~ looks:-4
 for~ luck:5
 for~ me:2
 for~ more:1
 for~ my:2
 for~ next:-3
 for~ no:5
 for~ noth:-8
 for~ once:6
 for~ one:4
 for~ our:-2
 for~ people:-3
 for~ read:-2
 for~ salad:-9
 for~ saturday:4
 for~ shav:-4
 for~ skin:-7
 for~ soap:-10
 for~ some:-6
 for~ that:-1
 for~ the:2
 for~ these:-2
 for~ this:-2
 for~ those:-3
 for~ today:3
 for~ us:3
 for~ wash:-2
 for~ what:5
 for~ word:-7
 for~ years:-3
 for~ you:-7
 for~ your:3
 for~%:5
 for~0:-6
 for~=:-6
 for~A:-2
 for~B:-3
 for~F:1
 for~L:-5
 for~N:-5
 for~S:-8
 for~T:-6
 for~W:-2
 for~X:2
 for~b:-2
 for~d:-10
 for~e:-6
 for~t:-7
 for~v:-4
 for~w:1
 found:8
 found~ a:1
 found~ it:6
 found~ on:2
 found~ out:2
 found~ the:8
 found~ this:-8
 fractionat:12
 fram:-9
 free:-1
 freeze:-5
 freezer:-2
 freezer~ for:-9
 freezer~ in:-2
 freezer~ paper:-4
 freeze~ the:-7
 fresh:-3
 friday:3
 friday~ and:-5
 fridge:-2
 fridge~ for:-6
 fridge~ overnight:-7
 fried:2
 friend':-4
 friend:-6
 friend~ says:-7
 friend~ who:5
 friend~ with:-1
 frighten:-5
 from~ ::-7
 from~ a:2
 from~ an:-4
 from~ another:-1
 from~ before:-1
 from~ christma:1
 from~ graz:-3
 from~ it:-3
 from~ krakow:-2
 from~ last:-6
 from~ me:-3
 from~ my:-3
 from~ our:1
 from~ portugal:1
 from~ sunday:8
 from~ that:3
 from~ the:1
 from~ what:-7
 from~ work:2
 from~0:-4
 from~=:-2
 from~F:-5
 from~L:-7
 from~t:-9
 from~w:-9
 front:1
 front~ of:-6
 froze:4
 frozen:-1
 frozen~ cubes:-3
 frozen~ in:1
 frozen~ to:-6
 frozen~w:-9
 froze~ it:4
 fruit:-4
 fry:3
 fryer:5
 full:6
 fully:1
 full~ of:-5
 fume:-6
 fumes:-9
 fun:-10
 funny:-6
 further:3
 fwd:-2
 fwd~ ::-2
 f~0:-7
 g:-4
 garage:-4
 garden:-6
 gas:-6
 gate:-8
 gave:2
 gave~ it:1
 gave~ me:7
 gave~ out:7
 gave~ the:-3
 gave~ up:5
 gave~ us:2
 gave~0:-8
 gel:-3
 gell:-3
 gel~ ::-3
 gel~ phase:-6
 generou:5
 gent:-8
 gentle:-2
 gentler:5
 german:-4
 get:-3
 gets:-5
 gets~ a:2
 gets~ the:-5
 gets~0:-4
 gett:-6
 get~ a:2
 get~ it:3
 get~ to:-9
 get~0:-7
 get~F:3
 ghana:-8
 gift:-7
 gifts:-5
 girl:-3
 giv:-9
 give:-2
 given:-3
 gives:-9
 gives~ me:-5
 gives~ the:-6
 gives~%:4
 gives~0:-8
 give~ it:-8
 give~ me:1
 give~ or:3
 give~ the:-5
 give~ to:-3
 glad:-1
 glass:-2
 glass~ and:6
 glass~ of:5
 glossy:-3
 glov:-9
 glov~ and:-5
 glov~ on:-6
 glug:6
 glug~ of:4
 go:-1
 goat:3
 goats:-2
 goats~ are:2
 goes:-6
 goes~ away:-3
 goes~ grainy:-3
 goes~ in:-3
 goes~ into:-5
 goes~ off:-5
 goes~ on:-9
 goes~ up:-6
 goggl:-9
 goggl~ and:-2
 goggl~ on:-4
 going:4
 going~ by:-4
 going~ in:7
 gone:4
 gone~ after:-6
 gone~ by:-10
 gone~ in:1
 gone~ to:-1
 gone~ up:-3
 gonna:3
 good:-2
 good~ ?:-4
 good~ bit:8
 good~ day:-5
 good~ enough:-1
 good~ even:-3
 good~ for:-8
 good~ glug:4
 good~ morn:-5
 good~ one:-7
 good~ or:-2
 good~ pot:-1
 good~ to:-2
 good~F:-9
 good~t:-5
 got:5
 got~ a:-3
 got~ in:-1
 got~ into:6
 got~ it:-3
 got~ my:-8
 got~ round:5
 got~ swapp:2
 got~ the:-4
 got~ to:5
 got~ too:2
 got~ wet:3
 got~0:-7
 got~=:-5
 got~S:-3
 got~b:4
 go~ ?:-3
 go~ at:4
 go~ by:1
 go~ clear:2
 go~ in:-1
 go~ into:-9
 go~ on:-6
 go~ out:4
 go~ over:-5
 go~ rancid:-6
 go~ to:-2
 go~ up:3
 go~ with:10
 go~ wrong:-4
 grabb:7
 grade:4
 grain:-8
 grainy:-6
 gram:-3
 gramm:-8
 grams:-1
 grams~ ::-8
 grams~ and:-2
 grams~ cost:-2
 grams~ for:-2
 grams~ i:5
 grams~ so:-9
 grams~A:-4
 gram~ for:6
 grand:-6
 grandad:6
 granddad:2
 granddaughter:-6
 grandma:-1
 grandmother:-8
 grandmother~ had:-3
 grandpa:1
 grandson:5
 granny:-1
 grans:-4
 grat:1
 grate:-3
 grateful:-2
 grate~ the:-7
 gravy:-1
 graz:-6
 greas:-1
 grease:-3
 greasy:1
 great~ aunt:-2
 green:-1
 green~ and:5
 green~ one:-3
 greeting:-5
 greeting~ from:-5
 grey:-2
 grind:-4
 grind~ the:-2
 grocer:-6
 ground:-9
 group:1
 group~ ::-3
 group~ of:-5
 grown:3
 guess:11
 guess~ the:-3
 guest:-8
 guild:-8
 g~ ::-6
 g~ cost:-2
 g~ oz:-3
 g~e:-8
 ha:2
 habit:2
 had:3
 hadnt:6
 had~ a:-7
 had~ already:9
 had~ been:5
 had~ come:3
 had~ cool:-6
 had~ dropp:-3
 had~ gone:10
 had~ in:-2
 had~ it:3
 had~ melt:2
 had~ no:-4
 had~ only:-2
 had~ set:1
 had~ some:-3
 had~ the:-4
 had~ to:-6
 had~0:-5
 had~<:-6
 had~=:1
 had~>:-7
 had~F:2
 had~N:-5
 had~X:3
 had~b:8
 hair:-1
 half:5
 halfway:-4
 halfway~ through:7
 half~ a:3
 half~ and:-5
 half~ as:4
 half~ batch:6
 half~ is:4
 half~ of:1
 half~ size:2
 half~ the:-1
 half~A:-7
 half~F:-1
 half~I:-5
 half~W:-7
 hall:-8
 hallo:-2
 hallo~ my:-2
 halv:7
 halv~ it:4
 hammer:3
 hand:-2
 handful:2
 handful~ of:-6
 handle:-2
 handout:-1
 handout~0:-4
 hands:-1
 hands~ ?:-4
 hands~ are:1
 handwrit:4
 handy:-8
 hand~ and:-1
 hand~ in:-5
 hand~ on:3
 hand~ out:-8
 hand~ soap:-5
 hand~ warm:-1
 hand~ with:-5
 hang:6
 hangs:-6
 happen:2
 happy:-4
 happy~ with:-6
 hard:-5
 harden:-8
 harder:-3
 harder~ bar:-4
 hardnes:-5
 hardware:-2
 hardware~ store:-6
 hard~ after:-1
 hard~ and:-3
 hard~ any:-7
 hard~ as:-6
 hard~ smell:-5
 hard~ to:5
 hard~W:-7
 harm:-6
 harsh:-8
 has:1
 hasnt:-7
 has~ a:2
 has~ anyone:-6
 has~ become:-3
 has~ been:-1
 has~ cool:-6
 has~ done:-7
 has~ gone:-1
 has~ it:2
 has~ made:-4
 has~ moved:-7
 has~ no:-3
 has~ the:3
 has~ to:-3
 has~0:1
 has~=:-4
 has~F:6
 has~N:-6
 hate:-4
 hates:-1
 hav:-3
 have:-1
 havent:3
 have~ a:-10
 have~ asked:3
 have~ been:-1
 have~ done:-2
 have~ enough:3
 have~ gone:3
 have~ had:1
 have~ i:-7
 have~ it:2
 have~ made:-5
 have~ never:3
 have~ no:-4
 have~ not:-9
 have~ the:2
 have~ to:-10
 have~ used:-3
 have~0:-5
 have~=:-6
 have~>:-4
 have~F:3
 hdpe:-6
 he:-1
 head:-2
 heap:10
 heap~ spoon:2
 hear:-2
 heard:3
 heart:-2
 heat:-12
 heats:-7
 heats~ up:-4
 heat~ and:-3
 heat~ i:-3
 heat~ off:-3
 heat~ the:-4
 heaven:-7
 heavy:4
 heavy~ ?:-6
 heavy~ or:-6
 hed:3
 height:-4
 held:8
 held~ back:1
 held~ the:1
 hell:-5
 hello:-5
 hello~ from:-2
 help:5
 helps:-3
 help~ with:1
 hence:-4
 hence~ the:-9
 hens:-9
 her:-5
 heres:-7
 heres~ my:-1
 heres~ the:-4
 heres~ what:-7
 here~ ::-2
 here~ and:-3
 here~ goes:-3
 here~ i:3
 here~ in:-6
 here~ is:1
 here~ it:-7
 here~ so:-5
 here~ we:-8
 hers:-11
 herself:-8
 hers~ and:-4
 hers~ with:-7
 her~ hands:-3
 her~ life:-7
 her~ own:-1
 her~ soap:-5
 her~A:-4
 her~F:-10
 hes:-1
 hey:-6
 he~ also:-8
 he~ has:-4
 he~ is:-10
 he~ says:5
 he~ was:-8
 hid:-10
 high:-6
 him:-6
 himself:3
 his:-7
 hiss:2
 his~A:-6
 hit:2
 hit~ it:-8
 hive:-8
 hives:-4
 hi~ everyone:-4
 hm:-1
 hmm:4
 hob:-1
 hola:-2
 holds:-4
 holds~ a:2
 holds~0:-2
 holds~v:-8
 holds~w:-8
 hold~ ?:-3
 hold~ back:6
 hold~ the:4
 hold~ up:-3
 hole:-4
 holes:-1
 holiday:-9
 home~ and:3
 honest:5
 hood:-7
 hope:2
 hope~ it:-3
 hope~ the:-4
 hot:-8
 hotter:-11
 hotter~ than:-4
 hot~ or:-5
 hour:-2
 hour~ and:-6
 hour~ then:-3
 hour~0:1
 house:4
 house~ smell:-5
 how:1
 how~ does:-2
 how~ i:3
 how~ it:-1
 how~ long:-5
 how~ many:-6
 how~ much:8
 how~ my:-8
 how~ the:-9
 how~ to:-9
 how~ we:-6
 hp:-4
 hp~ in:-3
 hubby:2
 huge:3
 humidity:-1
 humidity~%:-4
 hurry:-4
 hurt:-2
 hurts:-3
 husband:2
 husband~ says:-5
 husband~ think:-10
 husband~ who:-7
 hydrogenat:1
 i'd:1
 i'd~ already:4
 i'd~ be:-7
 i'd~ been:1
 i'd~ guess:9
 i'd~ have:-8
 i'd~ like:5
 i'd~ love:-5
 i'd~ never:-7
 i'd~ pour:-2
 i'd~ put:2
 i'd~ rather:-1
 i'd~ read:5
 i'd~ say:6
 i'd~ use:-5
 i'd~ weigh:2
 i:3
 idea:-1
 idea~ which:5
 idk:6
 ie:6
 ie~=:-7
 if:-2
 if~ anyone:-2
 if~ i:2
 if~ im:3
 if~ it:4
 if~ its:-1
 if~ my:2
 if~ somebody:-6
 if~ someone:1
 if~ that:4
 if~ the:-6
 if~ ther:-6
 if~ this:3
 if~ ur:-7
 if~ you:-3
 if~ your:-6
 if~ youre:-8
 if~ yours:-4
 if~ youve:-7
 if~A:-5
 if~F:-6
 if~b:-5
 ignore:6
 ignore~ the:9
 ill~ do:-3
 ilse:-2
 im:2
 impatient:-8
 im~ a:-3
 im~ after:8
 im~ ask:-1
 im~ at:-9
 im~ doing:-4
 im~ going:2
 im~ in:-7
 im~ mak:3
 im~ not:2
 im~ on:4
 im~ told:-5
 im~ using:5
 im~0:-4
 in:1
 inch:1
 includ:4
 includ~ the:8
 individual:-7
 individual~ mould:-7
 infus:4
 infus~ with:4
 ingredient:-4
 ingredient~ g:-3
 ingredient~ grams:-3
 ingredient~ oz:-6
 ingredient~ weight:-3
 inside:-3
 insist:6
 instant:-3
 instead:3
 instead~ of:-1
 instruction:-9
 insulate:-7
 internet:-3
 into:-1
 into~ a:-8
 into~ cubes:-6
 into~ it:1
 into~ mould:-4
 into~ oils:-4
 into~ one:-6
 into~ that:3
 into~ the:3
 into~ this:6
 into~0:-5
 into~=:-4
 into~W:-7
 into~v:-3
 in~ ::3
 in~ ?:5
 in~ a:-2
 in~ about:-1
 in~ after:7
 in~ all:-8
 in~ an:-6
 in~ and:-2
 in~ another:6
 in~ april:-7
 in~ as:3
 in~ at:3
 in~ august:2
 in~ batch:-3
 in~ before:8
 in~ between:-5
 in~ blend:-10
 in~ burst:-2
 in~ case:-8
 in~ class:2
 in~ cold:-6
 in~ cubes:-5
 in~ dag:-2
 in~ each:-2
 in~ every:-4
 in~ fact:4
 in~ first:-5
 in~ for:11
 in~ front:-7
 in~ g:1
 in~ grams:-9
 in~ half:1
 in~ her:-10
 in~ hers:-8
 in~ his:-8
 in~ hot:-5
 in~ i:6
 in~ it:3
 in~ its:6
 in~ january:-7
 in~ july:-6
 in~ june:-6
 in~ law:-2
 in~ laws:-3
 in~ march:-10
 in~ maybe:5
 in~ mould:-5
 in~ my:-1
 in~ no:-8
 in~ october:-1
 in~ ohio:-5
 in~ on:-5
 in~ once:11
 in~ one:3
 in~ or:2
 in~ order:-6
 in~ our:5
 in~ place:1
 in~ plus:-4
 in~ red:3
 in~ short:-5
 in~ slow:-2
 in~ small:-6
 in~ so:5
 in~ spr:-7
 in~ step:-6
 in~ steps:6
 in~ summer:-7
 in~ that:2
 in~ the:-2
 in~ there:6
 in~ this:1
 in~ time:2
 in~ tiny:6
 in~ to:-2
 in~ too:1
 in~ total:-6
 in~ truth:2
 in~ under:-4
 in~ week:-3
 in~ went:5
 in~ when:-4
 in~ which:1
 in~ winter:-3
 in~ with:5
 in~ your:-1
 in~0:-6
 in~<:3
 in~=:-4
 in~>:-2
 in~F:-4
 in~I:-7
 in~L:2
 in~N:7
 in~W:-6
 in~b:-9
 in~e:2
 in~l:-2
 in~r:-5
 in~t:-6
 in~v:-11
 in~w:1
 ish:-6
 isnt:6
 isnt~ in:3
 isnt~ it:5
 issue:-1
 is~ a:3
 is~ about:-4
 is~ actual:6
 is~ all:-2
 is~ already:2
 is~ alway:-1
 is~ an:3
 is~ and:-6
 is~ as:-1
 is~ at:-6
 is~ below:-4
 is~ better:2
 is~ cheap:-6
 is~ clear:-4
 is~ correct:-8
 is~ done:1
 is~ dry:5
 is~ enough:-6
 is~ exact:-8
 is~ fine:-10
 is~ finish:1
 is~ for:-3
 is~ from:1
 is~ going:5
 is~ gone:-7
 is~ good:-9
 is~ grams:2
 is~ hard:-1
 is~ her:-3
 is~ hot:-4
 is~ in:1
 is~ it:-3
 is~ just:-8
 is~ left:-3
 is~ like:-1
 is~ love:-3
 is~ meant:-2
 is~ mine:-8
 is~ more:-1
 is~ near:-6
 is~ no:-7
 is~ normal:-6
 is~ not:-3
 is~ noth:-2
 is~ now:5
 is~ off:2
 is~ ok:-5
 is~ on:1
 is~ one:3
 is~ only:-9
 is~ our:-6
 is~ out:1
 is~ over:3
 is~ plenty:1
 is~ real:8
 is~ right:1
 is~ safe:-2
 is~ she:-2
 is~ short:3
 is~ small:-4
 is~ sold:4
 is~ step:-2
 is~ still:1
 is~ technical:6
 is~ that:-3
 is~ the:-2
 is~ there:-4
 is~ thick:-4
 is~ this:-7
 is~ too:2
 is~ weigh:-3
 is~ what:4
 is~ where:-8
 is~ whether:-8
 is~ why:-8
 is~ with:11
 is~ worth:-6
 is~ written:-2
 is~%:1
 is~0:4
 is~<:-3
 is~=:-6
 is~>:-8
 is~A:-2
 is~F:5
 is~L:4
 is~N:10
 is~S:2
 is~T:-6
 is~b:4
 is~d:-2
 is~e:-6
 is~t:-9
 is~v:-2
 is~w:1
 it:2
 itch:-1
 item:-3
 item~ grams:-3
 itll:-2
 itll~ be:2
 its:1
 itself:-5
 its~ a:2
 its~ about:-6
 its~ all:-2
 its~ as:-6
 its~ been:-7
 its~ clear:-5
 its~ cook:5
 its~ date:-4
 its~ fine:-6
 its~ for:7
 its~ gone:1
 its~ hot:-5
 its~ in:-5
 its~ just:-8
 its~ like:1
 its~ made:3
 its~ my:1
 its~ not:-5
 its~ on:-7
 its~ only:-3
 its~ own:-3
 its~ place:4
 its~ ready:-6
 its~ sitt:-4
 its~ the:-2
 its~ time:-5
 its~ weight:-6
 its~ what:4
 its~0:7
 its~=:-6
 its~A:5
 its~N:6
 its~b:-3
 its~d:-6
 its~l:3
 its~t:1
 it~ ::-7
 it~ ?:-2
 it~ about:-7
 it~ add:-3
 it~ after:-3
 it~ again:4
 it~ alone:-8
 it~ already:4
 it~ and:-2
 it~ another:3
 it~ anyway:-10
 it~ away:-4
 it~ back:-1
 it~ bad:6
 it~ be:1
 it~ because:4
 it~ before:-6
 it~ behav:-2
 it~ bit:4
 it~ but:-6
 it~ by:-1
 it~ can:-4
 it~ check:-8
 it~ clear:-4
 it~ climb:-3
 it~ come:-4
 it~ comes:3
 it~ cooks:-3
 it~ cool:2
 it~ cools:-6
 it~ correct:-4
 it~ cost:-6
 it~ crack:-3
 it~ crumbl:-1
 it~ cut:-4
 it~ did:-5
 it~ didnt:-2
 it~ do:-4
 it~ does:1
 it~ down:1
 it~ dried:4
 it~ drop:-4
 it~ enough:-3
 it~ every:-5
 it~ first:1
 it~ fits:-6
 it~ flat:-6
 it~ foam:2
 it~ for:-2
 it~ from:1
 it~ gets:-4
 it~ gives:1
 it~ go:-5
 it~ goes:1
 it~ good:-6
 it~ got:1
 it~ had:1
 it~ hard:-4
 it~ heats:-4
 it~ here:-3
 it~ holds:-4
 it~ i:-2
 it~ if:-5
 it~ in:-2
 it~ into:-10
 it~ is:4
 it~ isnt:3
 it~ it:2
 it~ its:-4
 it~ just:-1
 it~ last:-1
 it~ lasts:-5
 it~ lather:-7
 it~ like:-5
 it~ look:8
 it~ looks:-5
 it~ makes:2
 it~ matter:2
 it~ may:-5
 it~ melts:-3
 it~ needs:-3
 it~ never:-2
 it~ next:-3
 it~ no:-4
 it~ now:-8
 it~ off:5
 it~ ok:-5
 it~ once:-7
 it~ or:-4
 it~ out:2
 it~ outside:-4
 it~ past:-8
 it~ plus:-5
 it~ real:5
 it~ right:-1
 it~ said:7
 it~ says:3
 it~ seiz:3
 it~ set:5
 it~ sets:-5
 it~ should:-2
 it~ since:-3
 it~ sit:1
 it~ smell:-2
 it~ stand:-2
 it~ stay:4
 it~ still:-5
 it~ stink:-6
 it~ sweat:-6
 it~ takes:-6
 it~ the:-6
 it~ then:-3
 it~ there:-8
 it~ thicken:5
 it~ this:-2
 it~ through:-7
 it~ till:1
 it~ times:-1
 it~ to:3
 it~ too:-1
 it~ took:-7
 it~ trac:-2
 it~ turn:-1
 it~ turns:1
 it~ twice:2
 it~ under:-5
 it~ until:-4
 it~ up:1
 it~ wants:-4
 it~ was:2
 it~ went:1
 it~ when:4
 it~ will:-5
 it~ with:-6
 it~ without:3
 it~ wont:-7
 it~ would:-2
 it~ wouldnt:5
 it~ wrong:-5
 it~ zapp:4
 it~ zaps:-5
 it~%:2
 it~0:3
 it~=:-5
 it~A:-2
 it~F:-2
 it~S:-4
 it~b:4
 it~t:-7
 ive:-2
 ive~ a:3
 ive~ been:-6
 ive~ bought:5
 ive~ come:-4
 ive~ done:-5
 ive~ gone:8
 ive~ got:-2
 ive~ had:-7
 ive~ just:2
 ive~ made:-5
 ive~ never:-7
 ive~ no:-1
 ive~ not:-4
 ive~ only:2
 ive~ read:-7
 ive~ seen:-7
 ive~ since:4
 ive~ tried:-5
 ive~ used:-1
 ive~ weigh:-3
 ivory:-6
 i~ ?:-7
 i~ actual:3
 i~ add:-4
 i~ added:4
 i~ alway:-4
 i~ am:5
 i~ ask:1
 i~ began:-8
 i~ believe:3
 i~ blame:-6
 i~ boil:1
 i~ bought:-5
 i~ bring:-6
 i~ buy:-4
 i~ call:-2
 i~ came:1
 i~ can:-10
 i~ cant:-4
 i~ carri:9
 i~ caught:1
 i~ chang:-5
 i~ check:-9
 i~ chuck:6
 i~ cook:-1
 i~ copi:3
 i~ copy:-5
 i~ could:1
 i~ count:-3
 i~ cut:-1
 i~ did:2
 i~ didnt:1
 i~ dilut:-7
 i~ dilute:-5
 i~ dissolv:1
 i~ dissolve:3
 i~ do:-7
 i~ dont:3
 i~ doubl:7
 i~ drain:7
 i~ dropp:2
 i~ empti:11
 i~ ended:-3
 i~ ever:-7
 i~ fill:9
 i~ final:-5
 i~ find:1
 i~ finish:-2
 i~ first:-4
 i~ fish:7
 i~ fold:-5
 i~ follow:2
 i~ forgot:-2
 i~ freeze:1
 i~ froze:-3
 i~ gave:-3
 i~ get:-4
 i~ give:-5
 i~ go:1
 i~ got:-1
 i~ guess:11
 i~ had:-4
 i~ hadnt:4
 i~ halv:6
 i~ hand:-5
 i~ hate:-4
 i~ have:1
 i~ held:4
 i~ honest:11
 i~ hope:-2
 i~ just:2
 i~ keep:-1
 i~ kept:3
 i~ knock:5
 i~ know:-5
 i~ learn:-6
 i~ leave:2
 i~ left:9
 i~ let:3
 i~ like:-4
 i~ lost:5
 i~ make:-8
 i~ may:1
 i~ mean:-1
 i~ meant:-5
 i~ measur:-3
 i~ mess:-6
 i~ mix:-5
 i~ mixed:5
 i~ must:3
 i~ near:-6
 i~ never:2
 i~ notic:8
 i~ ok:1
 i~ once:-11
 i~ open:-1
 i~ own:1
 i~ paid:-4
 i~ panick:-2
 i~ plan:-5
 i~ plann:-4
 i~ pour:1
 i~ press:-7
 i~ print:-6
 i~ promis:2
 i~ put:2
 i~ read:4
 i~ real:-3
 i~ realis:3
 i~ reckon:-1
 i~ remember:-1
 i~ render:-4
 i~ replac:3
 i~ rins:9
 i~ round:6
 i~ run:-8
 i~ said:-9
 i~ saw:8
 i~ say:-1
 i~ scrap:8
 i~ see:6
 i~ sell:-4
 i~ set:-2
 i~ shook:5
 i~ should:2
 i~ skipp:6
 i~ soap:-3
 i~ split:-1
 i~ sprinkl:-4
 i~ stir:-6
 i~ stirr:2
 i~ stopp:8
 i~ strain:-1
 i~ suppose:1
 i~ swapp:10
 i~ swear:1
 i~ take:-4
 i~ teach:-6
 i~ tell:-8
 i~ test:-3
 i~ think:2
 i~ thought:-3
 i~ threw:2
 i~ tipp:2
 i~ told:-3
 i~ took:2
 i~ topp:-1
 i~ translate:-4
 i~ trust:-3
 i~ turn:-5
 i~ type:3
 i~ typed:7
 i~ use:-5
 i~ usual:3
 i~ want:2
 i~ warm:-8
 i~ was:-6
 i~ wash:-3
 i~ wasnt:4
 i~ weigh:3
 i~ went:5
 i~ will:-8
 i~ wiped:-8
 i~ work:-8
 i~ would:2
 i~ write:-11
 i~ wrote:5
 i~K:-7
 jam~ jar:2
 january:-9
 january~ and:-4
 jar:2
 jars:-8
 jars~ of:-4
 jar~ and:7
 jar~ of:7
 jar~ so:-4
 jelly:-5
 job:4
 join:1
 join~ the:4
 jug's:5
 jug:2
 jugs:3
 jug~ ::1
 jug~ and:4
 jug~ from:4
 jug~ in:-7
 jug~ is:-9
 jug~ of:5
 jug~ on:-7
 jug~ so:7
 jug~ to:8
 jug~ was:-4
 jug~ with:-1
 july:-3
 jump:5
 jumps:4
 june:-11
 just:-1
 just~ a:-3
 just~ as:-2
 just~ for:-7
 just~ the:3
 just~ want:-9
 just~ what:-6
 just~F:-4
 k:2
 keep:-8
 keeps:-7
 keeps~ it:-5
 keeps~ the:-2
 keep~ a:-5
 keep~ back:-1
 keep~ in:-5
 keep~ it:-7
 keep~ my:-6
 keep~ the:2
 keep~0:-5
 keep~<:2
 keep~t:-3
 kept:2
 kept~ back:2
 kept~ in:-5
 kept~0:2
 kettle:7
 key:-4
 kg:3
 kg~ cost:-2
 kid:10
 kidd:-7
 kids:-2
 kill:-6
 kilo:5
 kilo~ in:-4
 kilo~ of:-5
 kind:-1
 kinda:2
 kind~ check:-8
 kind~ of:-3
 kind~ regard:-4
 kind~ with:3
 kiss:-5
 kitchen~ and:3
 kitchen~ bar:-7
 kitchen~ is:-4
 kitchen~ scale:6
 kitchen~ so:-5
 kitchen~ soap:-1
 kitchen~ was:-7
 knew:-5
 knife:-8
 knob:8
 knob~ of:8
 knock:3
 knock~ a:-2
 knock~ the:5
 know:2
 knows:4
 knows~ how:4
 know~ ::-5
 know~ how:4
 know~ i:-5
 know~ if:3
 know~ is:-8
 know~ it:2
 know~ its:-5
 know~ that:3
 know~ the:-1
 know~ what:-6
 know~ whether:-4
 know~ which:2
 krakow:-2
 k~0:-10
 l:-5
 la:-5
 lab:-4
 labell:-2
 label~ ::-5
 label~ on:-6
 label~ says:5
 label~0:-7
 ladi:-5
 ladl:8
 ladle:7
 ladle~ of:5
 lads:-4
 lady:-2
 lady~ at:-6
 lady~ in:-5
 lady~ on:-3
 land:2
 last:-5
 lasts:-7
 last~ autumn:-5
 last~ batch:-6
 last~ bit:3
 last~ minute:6
 last~ month:6
 last~ night:-6
 last~ of:-6
 last~ one:-8
 last~ time:-6
 last~ week:2
 last~ weeks:4
 last~ winter:-7
 last~ year:-5
 last~ years:-2
 last~0:3
 last~F:-6
 late:-2
 later:-2
 later~ on:-5
 lather:-6
 lather~ is:-3
 lather~ like:-6
 lather~ was:-4
 laugh:2
 laugh~ at:-3
 laundry~ bar:-7
 laundry~ bars:-2
 laundry~ soap:-3
 law:-2
 laws:-3
 law~ who:-5
 layer:2
 lb:2
 lb~ oz:-7
 leaflet:-1
 leak:-3
 learn:-6
 learn~ from:-3
 learn~ that:1
 least:-4
 least~t:-1
 leav:-5
 leave:-4
 leave~ it:-3
 leave~ out:-8
 leave~ the:-3
 leave~t:-1
 leav~ a:-4
 leav~ the:-6
 leeds:4
 left:1
 leftover:1
 leftover~F:-2
 left~ and:2
 left~ for:-10
 left~ from:5
 left~ in:1
 left~ it:3
 left~ of:-7
 left~ on:1
 left~ out:-2
 left~ over:-5
 left~ so:-1
 left~ the:1
 left~ to:3
 length:-5
 lent:1
 less:5
 lesson:-7
 less~ of:5
 less~F:-2
 less~W:-3
 let:-1
 lets:1
 letter:3
 let~ cool:-2
 let~ it:-3
 let~ me:-4
 let~ the:-3
 let~ them:3
 let~ us:-5
 let~ your:-6
 level:-1
 library:-4
 library~ book:-4
 lid:-1
 lidd:-2
 lids:-5
 lid~ and:-7
 lid~ of:-8
 lid~ off:1
 lid~ on:-6
 lie:-6
 life:3
 lift:4
 lift~ the:2
 lighter:-4
 light~ on:3
 like:-3
 liked:-4
 likes:-5
 likes~ it:5
 likewise:2
 like~ a:-4
 like~ alway:-9
 like~ an:-6
 like~ candle:-7
 like~ cheese:-6
 like~ cold:-5
 like~ custard:-4
 like~ i:-7
 like~ in:1
 like~ it:-1
 like~ mad:1
 like~ mash:-5
 like~ me:-5
 like~ my:2
 like~ noth:-3
 like~ paper:2
 like~ porridge:3
 like~ sandpaper:-4
 like~ someone:-2
 like~ soup:-6
 like~ stone:-5
 like~ that:-8
 like~ the:-6
 like~ thin:-3
 like~ this:1
 like~ to:-6
 like~ wet:-2
 like~ you:-2
 like~%:1
 like~0:8
 like~F:-5
 like~L:-7
 like~S:-4
 like~U:-8
 like~X:-3
 like~t:7
 like~w:7
 limit:-7
 line:7
 lined:-6
 lined~ w:-5
 lined~ with:-2
 linen:-2
 lines:-1
 line~ ::6
 line~ the:-3
 lino:-1
 lip:-5
 lip~ balm:-5
 liquid:2
 liquid~ ::1
 liquid~ and:-3
 liquid~ soap:-2
 liquor:8
 list:3
 list~ for:-7
 list~ i:4
 list~ is:-3
 litre:4
 little:2
 little~ ?:-6
 little~A:2
 little~F:-7
 little~W:3
 live:-5
 lived:-8
 lives:-5
 lives~ in:-5
 loaf:-4
 loaf~ ::-4
 loaf~ i:1
 loaf~ mold:-3
 loaf~ mould:-3
 loaf~ tin:-2
 loav:-4
 local:-5
 lock:-8
 loft:-3
 log~ ::-2
 lol:-2
 long:-2
 longer:-3
 longer~ than:-4
 long~ as:-6
 long~ one:1
 long~ sleev:-4
 long~ story:5
 long~ time:-4
 look:2
 looks:-10
 looks~ like:-4
 looks~ ok:-1
 look~ a:3
 look~ at:-5
 look~ for:1
 look~ it:-6
 look~ like:1
 look~ of:1
 look~ ok:-4
 look~ over:-6
 look~ right:-4
 loosen:8
 loosen~ it:7
 lose:-2
 loss:-1
 lost:2
 lost~ a:1
 lost~ the:-6
 lot:-1
 lotion:7
 lots:-9
 lots~ of:-7
 lot~ ?:-1
 lot~ of:2
 lot~ to:-2
 lot~0:3
 loud:-8
 love:-6
 loves:3
 love~ a:1
 love~ and:-1
 love~ but:-5
 love~ it:-5
 love~ to:-5
 low:-2
 lower:7
 lowest:-5
 lowest~ flame:-5
 low~ and:-3
 low~ for:3
 low~ heat:-1
 low~ in:1
 low~t:-3
 luck:3
 lucki:-7
 lucky:-5
 lukewarm:-6
 lump:6
 lumps:-4
 lumpy:7
 lump~ of:-1
 lunch:-7
 lurker:-4
 luxury:-3
 lye's:4
 lye:1
 lyes:-6
 lyes~ together:-6
 lying:5
 lyon:-5
 l~0:-4
 m:-6
 machine:-4
 made:2
 made~ ::-6
 made~ a:3
 made~ for:-10
 made~ from:-3
 made~ hers:-6
 made~ in:-7
 made~ it:1
 made~ my:-3
 made~ of:-5
 made~ on:-6
 made~ soap:-4
 made~ the:6
 made~ this:-4
 made~ up:5
 made~ with:-7
 made~0:8
 made~t:-1
 magazine:-4
 mak:9
 make:1
 maker:-6
 makes:-5
 makes~ a:-8
 makes~ it:-3
 makes~ no:-5
 makes~ sense:-3
 makes~ the:-5
 makes~ up:7
 makes~0:-7
 makes~T:-8
 makes~b:-5
 make~ a:-8
 make~ exact:-4
 make~ it:8
 make~ sense:-3
 make~ soap:-5
 make~ the:-8
 make~ this:-4
 make~ up:-1
 mak~ it:7
 mak~ the:-4
 mak~ this:-1
 mama:-6
 man:-6
 march:-10
 margin:-2
 marit:-5
 mark:5
 market:-6
 marks:1
 marta:4
 mash:-4
 mash~ potato:-4
 mass:-5
 material:-6
 maths:4
 matter:3
 matter~ to:5
 maybe:7
 maybe~ a:7
 maybe~0:6
 maybe~<:-1
 maybe~t:-6
 maybe~w:3
 may~ have:6
 may~ i:-3
 me:-2
 mean:-2
 means:-1
 meant:-1
 meanwhile:4
 mean~ the:3
 mean~ to:-7
 measur:4
 measur~ cup:5
 measur~ it:1
 measur~ jug:9
 measur~ the:2
 mechanic:3
 medium:-5
 meets:-2
 melt:-1
 melts:-9
 melts~ at:-5
 melt~ and:2
 melt~ at:-4
 melt~ by:-7
 melt~ everyth:4
 melt~ first:-8
 melt~ i:-9
 melt~ in:7
 melt~ on:-8
 melt~ the:-8
 melt~ together:1
 melt~ with:3
 melt~=:-3
 melt~F:1
 member:2
 memory:5
 men:-7
 merci:-4
 mess:-6
 mess~ up:-4
 method:-4
 method~ ::-6
 metric:-6
 me~ ?:4
 me~ a:1
 me~ about:-2
 me~ and:1
 me~ as:1
 me~ at:3
 me~ before:-5
 me~ but:-2
 me~ for:-1
 me~ how:-5
 me~ i:-2
 me~ if:-3
 me~ in:-3
 me~ it:-5
 me~ its:-8
 me~ on:-1
 me~ that:-1
 me~ the:2
 me~ this:-5
 me~ to:-6
 me~ where:4
 me~ with:2
 me~0:-10
 me~t:-6
 microwave:1
 middle:-6
 middle~ of:2
 might:-1
 might~ have:5
 mild:3
 milk:-6
 milk~ carton:-6
 mill:-7
 min:7
 mind:6
 mind~ the:-2
 mine:-3
 mine~ from:1
 mine~ had:-4
 mine~ has:-4
 mine~ in:-6
 mine~ is:6
 mine~ took:-7
 mine~ with:5
 minimum:1
 minus:6
 minus~ the:8
 minus~ whatever:7
 minute:-2
 minute~0:-7
 min~ .:6
 misread:11
 miss:3
 miss~ the:5
 mistake:4
 mistake~ and:-8
 mix:3
 mixed:4
 mixed~ at:-7
 mixed~ in:5
 mixed~ it:3
 mixed~ the:1
 mixed~ up:-2
 mixer:-4
 mix~ at:-2
 mix~ the:3
 mix~A:-3
 mk:-4
 ml:11
 mm:-8
 mode:3
 modern:-4
 mold:2
 molds:4
 mold~ holds:-4
 mold~ is:2
 moment:-8
 moms:-2
 mon:5
 monday:-2
 money:3
 month:-2
 month~ i:-3
 month~0:-6
 moon:-4
 mopp:5
 mopp~ up:5
 more:3
 more~ and:-7
 more~ fat:-6
 more~ like:11
 more~ of:3
 more~ or:-5
 more~ than:-3
 more~A:5
 more~F:3
 morn:-1
 morn~ and:1
 most:3
 most~ of:8
 mother:-1
 mother~ and:-7
 mother~ did:3
 mould:-1
 mouldy:-1
 mould~ ::-6
 mould~ a:-6
 mould~ and:-2
 mould~ bang:-3
 mould~ for:-3
 mould~ holds:-4
 mould~ in:-5
 mould~ is:2
 mould~ of:-8
 mould~ on:-5
 mould~ so:-6
 mould~ the:-5
 mould~ was:-5
 mould~ with:-7
 mould~0:-1
 mould~t:-5
 mould~v:-4
 mov:3
 move:-4
 moved:4
 moved~ to:3
 moves:-3
 mrs:3
 much:-1
 much~ ?:-5
 much~ and:5
 much~ as:-6
 much~ fat:-4
 much~ for:-9
 much~ of:-4
 much~ superfat:-6
 much~A:-2
 much~F:-3
 much~W:5
 muffin:-6
 mug:6
 multip:6
 mum~ says:-4
 museum:-8
 mush:-5
 must:-5
 must~ be:-9
 mutton:2
 my:-1
 myself:-3
 my~ arm:-4
 my~ aunt:-3
 my~ aunts:2
 my~ babcia:-4
 my~ bars:-5
 my~ bathroom:6
 my~ book:4
 my~ boyfriend:-3
 my~ brother':4
 my~ brother:-3
 my~ colleague:-7
 my~ country:5
 my~ cousin:-1
 my~ dad:-8
 my~ dads:2
 my~ daughter':-7
 my~ daughter:3
 my~ earlier:4
 my~ elbow:-5
 my~ english:-2
 my~ everyday:-3
 my~ ex:-7
 my~ father:-2
 my~ first:-2
 my~ flatmate:-5
 my~ friend:4
 my~ glass:-1
 my~ good:-7
 my~ granddaughter:-6
 my~ grandfather:1
 my~ grandmother:-9
 my~ grandson:2
 my~ great:-1
 my~ hair:-2
 my~ hands:-9
 my~ handwrit:-7
 my~ husband:-4
 my~ kilo:-3
 my~ kitchen:3
 my~ last:-11
 my~ laundry:-2
 my~ little:4
 my~ mind:7
 my~ mold:-6
 my~ mother:-1
 my~ mould:1
 my~ mums:-7
 my~ nan:-8
 my~ nans:-4
 my~ neighbour:-4
 my~ nephew:-6
 my~ niece:-1
 my~ notebook:6
 my~ notes:-2
 my~ number:-2
 my~ old:-2
 my~ own:2
 my~ partner:-2
 my~ paste:-5
 my~ phone:-3
 my~ plan:-2
 my~ question:-2
 my~ recipe:-3
 my~ scale:5
 my~ sheet:-2
 my~ sister':-1
 my~ sister:-8
 my~ skin:3
 my~ slow:-4
 my~ soap:-2
 my~ spreadsheet:-4
 my~ sums:1
 my~ table:-8
 my~ teacher:-6
 my~ third:-4
 my~ thumb:-2
 my~ tongue:-3
 my~ uncle:1
 my~ usual:-9
 my~ very:-8
 my~ wife:2
 my~ wifes:-3
 my~%:-2
 my~0:-6
 my~A:1
 my~F:-3
 my~K:-7
 my~L:-9
 my~S:-5
 my~W:2
 my~l:-7
 my~t:3
 my~w:2
 m~A:-7
 m~F:-3
 n:-1
 name:-10
 name~ ::-3
 nan:-10
 nans:-5
 natural:-4
 nb:1
 near:-6
 nearer:5
 nearer~0:5
 near~ enough:5
 near~ it:-1
 near~ the:-2
 near~%:-10
 near~0:2
 near~d:-1
 near~t:5
 need:-5
 needs:-7
 needs~ a:-5
 needs~ the:-8
 need~ ::-2
 need~ a:-5
 need~ for:1
 need~ it:3
 need~ more:-8
 need~ the:-5
 negative:4
 neighbor:-9
 neighbour:-4
 neither:4
 nephew:-1
 nerv:-6
 nervou:-3
 net:2
 never~ above:-7
 never~ added:5
 never~ again:-9
 never~ bother:-6
 never~ check:-7
 never~ did:-6
 never~ fail:-2
 never~ fails:-4
 never~ go:-9
 never~ got:7
 never~ had:-1
 never~ happen:8
 never~ in:-6
 never~ let:-4
 never~ made:10
 never~ once:-2
 never~ set:5
 never~ the:-8
 never~ went:-10
 new:-3
 news:-3
 newsletter:1
 newspaper:-8
 new~ bottle:-3
 new~ here:-3
 new~ one:5
 new~ scale:-5
 new~ to:-4
 next:-8
 next~ day:4
 next~ door:-4
 next~ month:-7
 next~ one:-8
 next~ time:-9
 next~ to:3
 next~ year:-3
 nice:-2
 nicer:-6
 niece:3
 night:-4
 night~ and:-4
 night~ before:-5
 nil:3
 no:-1
 nobody:-3
 nobody~ answer:-3
 nobody~ had:5
 nobody~ has:1
 nobody~ will:-1
 none:4
 none~ at:-7
 none~ in:-1
 none~ of:1
 none~ the:-3
 nonna:-8
 noon:-6
 nor:-1
 normal:-7
 normal~ ?:-5
 normal~ one:-3
 north:-4
 nose:-9
 note:7
 notebook:-2
 notebook~ ::-5
 notebook~ p:-3
 notebook~ says:1
 notebook~ the:-2
 notes:-3
 notes~ ::1
 notes~ app:-6
 notes~ from:-4
 noth:-4
 noth~ and:-4
 noth~ at:-6
 noth~ but:-4
 noth~ else:1
 noth~ in:-2
 noth~ only:-5
 notic:8
 notic~ the:2
 notic~ when:8
 not~ ?:-3
 not~ a:-8
 not~ at:-4
 not~ be:-8
 not~ certain:4
 not~ for:-4
 not~ going:1
 not~ in:3
 not~ like:-7
 not~ more:-4
 not~ on:8
 not~ sure:4
 not~ that:-6
 not~ the:-2
 not~ to:-8
 not~ too:-4
 not~ touch:-4
 not~ use:-3
 not~ what:-2
 not~0:-4
 not~A:-3
 not~F:10
 not~b:7
 not~e:8
 not~w:1
 november:-3
 now:4
 nowhere:-8
 now~ ::-6
 now~ ?:3
 now~ and:-3
 now~ i:-1
 now~ its:6
 now~ my:4
 now~ on:3
 now~ so:-9
 now~ the:1
 now~F:2
 no~ ?:-2
 no~ ash:-4
 no~ difference:-7
 no~ gel:-4
 no~ good:-4
 no~ harm:-6
 no~ i:-5
 no~ idea:3
 no~ it:4
 no~ longer:5
 no~ more:-1
 no~ need:-5
 no~ other:-7
 no~ reason:-6
 no~ scale:1
 no~ smell:-2
 no~ sorry:2
 no~ superfat:-7
 no~ time:-6
 no~ wait:5
 no~ white:-2
 no~ zap:-6
 no~0:3
 no~F:9
 no~I:5
 no~S:-9
 no~W:4
 no~X:-9
 number:-5
 number~ ?:-4
 number~ and:1
 number~ are:1
 number~ hold:-2
 number~ i:-5
 number~ is:-3
 number~0:-11
 nurse:-3
 n~ it:-2
 n~=:-4
 n~F:5
 o'clock:-2
 o:-5
 oat:-8
 oat~X:-2
 obvious:-4
 obvs:-6
 october:1
 odd:-6
 odds:-6
 of:2
 off:3
 offcut:-5
 offer:-6
 office:-8
 off~ ?:-1
 off~ and:4
 off~ at:-7
 off~ by:-1
 off~ for:6
 off~ i:-5
 off~ in:4
 off~ it:2
 off~ my:-1
 off~ the:3
 off~ wait:-1
 off~ what:10
 off~ with:-1
 off~0:-5
 off~l:2
 often:-7
 of~ about:-5
 of~ all:-7
 of~ ammonia:-6
 of~ an:1
 of~ anyth:-9
 of~ batter:-9
 of~ clean:-5
 of~ cold:2
 of~ course:-3
 of~ doors:-7
 of~ dried:-2
 of~ each:7
 of~ everyth:5
 of~ extra:-1
 of~ eyes:-1
 of~ fat:1
 of~ fats:2
 of~ half:1
 of~ her:1
 of~ it:2
 of~ last:4
 of~ melt:4
 of~ mine:-6
 of~ my:-2
 of~ noth:-6
 of~ oil:2
 of~ oils:-2
 of~ old:4
 of~ one:3
 of~ our:-5
 of~ paste:-8
 of~ rough:-2
 of~ soap:2
 of~ some:2
 of~ stirr:-8
 of~ sunday:-8
 of~ that:7
 of~ the:2
 of~ these:-6
 of~ us:1
 of~ warm:-3
 of~ wet:-7
 of~ what:-2
 of~ which:-2
 of~ you:-4
 of~ your:-6
 of~%:2
 of~0:-7
 of~=:2
 of~>:-6
 of~A:2
 of~B:3
 of~C:5
 of~F:-3
 of~I:-3
 of~K:3
 of~L:8
 of~M:-5
 of~N:9
 of~U:3
 of~W:2
 of~X:-3
 of~b:-2
 of~t:-2
 of~v:-8
 of~w:-8
 ohio:-5
 oh~ and:1
 oil:4
 oils:-1
 oils~ ?:-1
 oils~ and:-5
 oils~ are:-3
 oils~ at:-6
 oils~ because:-5
 oils~ come:-3
 oils~ g:-4
 oils~ in:-3
 oils~ or:-1
 oils~ to:-1
 oils~ were:3
 oils~>:-2
 oily:5
 oil~ ?:-7
 oil~ and:-1
 oil~ at:5
 oil~ g:-4
 oil~ grams:-5
 oil~ in:-4
 oil~ is:2
 oil~ on:-4
 oil~ to:1
 oil~ was:-2
 oil~ weight:-6
 ok:-1
 okay:-3
 okay~ ?:-5
 okay~ for:-4
 okay~ so:-2
 ok~ ?:-1
 ok~ before:-4
 ok~ for:-6
 ok~ or:-2
 ok~ so:2
 ok~ to:-5
 ok~ with:-5
 old:1
 older:1
 oldest:-7
 old~ and:2
 old~ blanket:-2
 old~ days:-5
 old~ one:-6
 old~ pillowcase:-5
 old~ recipe:-5
 old~ sheet:2
 old~ soap:-6
 old~ tub:3
 old~A:4
 old~F:3
 olej:-3
 olej~F:-3
 oma:-3
 omg:-5
 on:-1
 once:-4
 once~ a:3
 once~ and:1
 once~ i:1
 once~ in:-1
 once~ it:4
 once~ its:-2
 once~ the:-3
 one:-4
 ones:-10
 ones~ are:-7
 one~ ::-4
 one~ ?:-2
 one~ after:-7
 one~ and:3
 one~ at:6
 one~ bar:-6
 one~ batch:-6
 one~ block:2
 one~ bottle:1
 one~ can:-4
 one~ corner:-2
 one~ for:-2
 one~ from:-8
 one~ go:4
 one~ had:-6
 one~ has:-3
 one~ in:2
 one~ into:-1
 one~ is:-2
 one~ jug:-3
 one~ last:-7
 one~ loaf:1
 one~ of:5
 one~ on:-4
 one~ pan:-4
 one~ pot:-6
 one~ since:5
 one~ sorry:-6
 one~ that:1
 one~ the:1
 one~ thing:4
 one~ time:-5
 one~ to:-6
 one~ was:1
 one~ weigh:-8
 one~ went:-3
 one~ who:-7
 one~ with:-6
 one~ without:-4
 one~0:2
 one~F:-1
 one~t:-1
 one~w:-7
 onion:3
 only:4
 only~ a:1
 only~ about:4
 only~ after:-8
 only~ does:3
 only~ for:1
 only~ gave:5
 only~ got:-9
 only~ had:9
 only~ have:-4
 only~ if:-2
 only~ notic:7
 only~ one:-1
 only~ put:1
 only~ so:-3
 only~ the:1
 only~ then:-9
 only~ there:-5
 only~ want:-12
 only~ when:2
 only~ whether:-6
 only~0:11
 only~=:-9
 only~F:-8
 only~l:-1
 onto~ the:2
 on~ ::-4
 on~ a:-9
 on~ and:-7
 on~ before:-5
 on~ day:3
 on~ friday:1
 on~ glov:-3
 on~ her:-1
 on~ here:-9
 on~ high:-5
 on~ i:6
 on~ it:-5
 on~ its:-1
 on~ low:-5
 on~ me:-5
 on~ monday:-8
 on~ my:-1
 on~ offer:-6
 on~ one:-5
 on~ our:2
 on~ page:-4
 on~ paper:-5
 on~ purpose:-2
 on~ saturday:-2
 on~ slow:-2
 on~ sunday:-1
 on~ that:-2
 on~ the:2
 on~ them:-6
 on~ this:5
 on~ to:-4
 on~ top:1
 on~ tue:-1
 on~ tuesday:-6
 on~ we:-8
 on~ with:6
 on~ your:-5
 on~0:-9
 on~>:-8
 on~A:3
 on~F:5
 on~t:-4
 oops:5
 open:2
 opens:5
 open~ a:-8
 open~ all:8
 open~ since:6
 open~ the:-2
 open~ window:-4
 operator:-5
 operator~ ::-4
 opinion:-9
 opinion~ on:-4
 optional:4
 or:-3
 order:-8
 order~ of:-4
 ordinary:6
 original:-4
 or~ a:1
 or~ am:-8
 or~ did:-8
 or~ do:-5
 or~ does:-5
 or~ is:-8
 or~ it:-7
 or~ just:-5
 or~ less:-5
 or~ more:-7
 or~ no:-7
 or~ not:-3
 or~ should:-4
 or~ take:3
 or~ the:-2
 or~ thereabout:3
 or~ too:-3
 or~ was:1
 or~ will:-3
 or~0:2
 or~A:-5
 or~N:-6
 other:-3
 otherwise:-8
 otherwise~ it:-8
 other~ and:-2
 other~ half:1
 other~ way:-6
 other~0:2
 other~W:-6
 ought:-6
 ought~ to:-6
 ounc:6
 ounce:-1
 ounc~ for:6
 our:-1
 ours:-10
 ours~ is:-7
 our~ club:2
 our~ course:-5
 our~ group:-10
 our~ own:-1
 our~ teacher:-7
 our~ town:-1
 our~ village:5
 out:3
 outdoor:-7
 outside:-8
 outside~ and:-1
 outside~ of:-1
 outside~ on:-6
 out~ ::-7
 out~ ?:1
 out~ again:4
 out~ and:6
 out~ at:3
 out~ by:3
 out~ for:3
 out~ i:-8
 out~ in:-3
 out~ like:-8
 out~ of:-1
 out~ on:1
 out~ right:-5
 out~ so:4
 out~ the:-2
 out~ to:11
 out~ what:2
 out~ with:2
 out~0:3
 out~=:-3
 out~A:-4
 out~N:2
 out~w:-1
 oval:-4
 oven:-8
 oven~ at:-3
 overfat:3
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
 over~ that:3
 over~ the:-4
 over~%:-9
 over~d:-2
 over~t:-7
 own:1
 own~ ::-3
 own~ a:-4
 own~ line:-4
 own~0:-3
 own~F:2
 oyl:-4
 oz:1
 oz~ g:-4
 p:-6
 packet:7
 packet~ of:-3
 packs:-1
 packs~ of:-3
 paddle:-8
 page~ ::-7
 page~ for:-3
 page~ is:-5
 page~ sorry:-5
 page~0:-2
 paid~ for:6
 paid~0:-7
 pail:-8
 paint:6
 pair:3
 pairs:-6
 pale:-13
 pan:2
 panic:-7
 panick:2
 pantry:-5
 pan~ and:2
 paper~ and:-3
 paper~ cup:4
 paper~0:-5
 paper~t:-4
 parcel:5
 parent:-4
 parish:-6
 part:-1
 participant:2
 partner:-3
 part~ ?:4
 part~ of:3
 part~0:-9
 pass:-8
 passt:-5
 passt~ das:-5
 pass~ the:-3
 past:-1
 paste:-8
 paste~ ::2
 paste~ in:-5
 paste~ is:-5
 paste~ to:-6
 paste~ was:-1
 paste~ went:-3
 paste~ with:-3
 pastry:3
 past~ from:-4
 past~ its:-6
 past~0:-2
 patch:-5
 patience:-5
 patient:-8
 pay:-1
 pcs:-6
 pct:-7
 pdf:-8
 peak:-6
 pearl:1
 pellet:4
 pencil:-2
 pencill:8
 pencil~ and:4
 people:-10
 people~ ask:-4
 people~ in:-3
 people~ who:-8
 people~0:-1
 per:-3
 percent:3
 percentag:-2
 perfect:-8
 perhap:9
 perhap~0:4
 period:-5
 person:-10
 per~ bar:-4
 per~ batch:1
 per~ kilo:-6
 petra:4
 ph:-8
 pharmacy:-6
 phase:-7
 phase~ a:-3
 phase~ b:-3
 phase~ c:-2
 phenolphthalein:6
 phone:2
 phone~ and:6
 phone~ is:-6
 phone~ rang:9
 phone~ read:-9
 photo:-3
 photo~ of:-1
 ph~ strip:-6
 pick:-2
 picture:-9
 piec:-2
 piece~ for:-7
 piece~ of:7
 piec~ of:4
 piec~0:-4
 pig:-8
 pilar:1
 pillowcase:-5
 pinch~ of:-4
 pink:3
 pitcher:3
 place:4
 place~ of:4
 plain:-2
 plain~ white:-1
 plain~F:-7
 plain~W:7
 plan:-3
 plann:-1
 plann~ to:2
 plan~ for:2
 plastic:2
 plastic~ cup:2
 plastic~ jug:3
 plate:3
 play:-7
 pleas:-2
 please:5
 please~ ?:2
 please~ and:-1
 please~ be:-6
 please~ check:-1
 please~ dont:-8
 please~ excuse:-3
 please~ look:-8
 please~ my:6
 please~ tell:1
 please~ verify:-8
 plenty:-6
 plenty~ for:-7
 plenty~ of:-4
 pls~ check:-3
 plumber:-4
 plus:2
 plus~ a:3
 plus~ an:4
 plus~ another:6
 plus~ the:6
 plus~0:-3
 plus~<:-7
 plus~=:-5
 plus~w:-8
 plz:-5
 pocket:2
 point:-3
 poland:-2
 polish:-1
 polypropylene:-5
 poor:-9
 popcorn:5
 pops:-2
 porch:-4
 porridge:2
 portion:-2
 portugal:1
 possible:-7
 post:-4
 postage:-3
 postal:1
 postal~ scale:1
 postman:2
 post~ this:-7
 post~t:-2
 pot:1
 potato:-7
 potato~ then:-4
 pots:-2
 pot~ ::-5
 pot~ and:2
 pot~ at:-6
 pot~ for:-8
 pot~ i:-5
 pot~ is:-6
 pot~ of:-1
 pot~ off:-8
 pot~ oils:-9
 pot~ was:4
 pot~ with:2
 pour:5
 pours:-7
 pour~ ::-6
 pour~ at:-9
 pour~ cover:-1
 pour~ in:5
 pour~ into:-6
 pour~ it:1
 pour~ off:3
 pour~ on:1
 pour~ out:6
 pour~ the:-5
 pour~0:5
 pour~=:4
 pour~>:-7
 pour~A:-3
 pour~F:-1
 pour~t:-3
 pour~w:-11
 powder:5
 powder~0:5
 power:-1
 power~ cut:6
 pp:-6
 ppl:-8
 practical:-7
 prefer:5
 premix:-8
 prep:-2
 present:-1
 press:-5
 press~ in:-6
 press~ into:-2
 press~ it:-3
 press~0:-8
 pretty:-3
 pretty~ but:-5
 previou:2
 pric:-6
 price:-7
 print:4
 printout:-6
 print~0:-7
 prob:3
 probab:1
 problem:-1
 proces:-1
 proces~ ::-2
 proces~ crock:-3
 proces~ in:-2
 professor:2
 project:-6
 promis:-2
 promis~ my:-2
 promis~ to:1
 proper:-5
 proud:-6
 ps:4
 pub:-5
 puck:-2
 pucks:-3
 puck~ dual:-5
 pudd:-6
 puddle:5
 pull:6
 pump:-1
 pupil:-2
 pure:1
 pure~F:-5
 purity:5
 purpose:-2
 push:-7
 put:3
 puts:-6
 puts~ everyth:-4
 put~ a:3
 put~ in:6
 put~ it:-1
 put~ on:-1
 put~ the:1
 put~ them:-3
 put~ together:-6
 put~0:-1
 put~<:-9
 put~=:-8
 put~>:3
 put~F:2
 put~v:1
 put~w:-1
 q:-8
 qty:-4
 quantiti:7
 quantity:-3
 quantity~ of:-3
 quarter:8
 quarter~ of:5
 question:-4
 question~ ::-6
 question~ from:-4
 question~ is:-5
 quick:-7
 quicker:-4
 quicker~ than:-4
 quick~ one:-3
 quite:2
 quot:-5
 q~ ::-2
 r:-1
 rack:-5
 rack~ and:-1
 radiator:-4
 radio:-7
 rain:-2
 rainy:-4
 rais:-7
 ran:4
 rancid:1
 rancid~ so:7
 rang:7
 ran~ dry:3
 ran~ out:2
 ran~ short:4
 ran~ the:-8
 rate:-6
 rather:5
 rather~ have:-1
 rather~ than:4
 raw:3
 re:-5
 reach:-5
 reach~ the:7
 reach~d:-7
 read:-1
 reader:-2
 reads:2
 reads~ in:-6
 ready:3
 ready~ for:-7
 ready~ made:2
 ready~ mixed:5
 ready~ to:-7
 read~ it:-3
 read~ that:-5
 read~ the:-2
 read~ this:-2
 read~0:-1
 read~F:3
 real:2
 realis:6
 reality:3
 real~ have:-4
 real~A:-3
 real~N:6
 reason:-1
 rebatch:5
 recall:4
 receipt:6
 recheck:2
 recip:-8
 recipe:-3
 recipe~ ::-3
 recipe~ ?:-2
 recipe~ and:-6
 recipe~ card:-1
 recipe~ for:2
 recipe~ from:-6
 recipe~ i:-5
 recipe~ in:2
 recipe~ is:-2
 recipe~ of:-5
 recipe~ on:-5
 recipe~ was:3
 reckon:4
 reckon~ with:2
 record:-2
 record~0:-7
 red:3
 refill:3
 refin:2
 regard:-5
 remain:-7
 remainder:6
 remain~0:1
 remark:-7
 remark~ ::-2
 remember:2
 remember~ it:-5
 render:-8
 render~ it:3
 render~ the:-6
 render~ twice:-5
 render~=:-5
 repeat:-5
 replac:6
 replace:-5
 replace~ it:3
 replac~ by:7
 reply:-6
 report:-3
 rescue:5
 rest:3
 rest~ is:2
 rest~ was:1
 rest~t:-2
 result:1
 retir:-7
 rev:-8
 rev~0:-7
 re~ ::-3
 ribbon:-5
 rice:-3
 rich:-9
 rid:-2
 rid~ of:-2
 right:-2
 right~ ?:-2
 right~ about:1
 right~ amount:-5
 right~ and:-4
 right~ at:2
 right~ before:1
 right~ but:5
 right~ for:-8
 right~ on:-5
 right~ or:-4
 right~ so:-4
 right~ the:-1
 right~ to:-5
 right~ with:-8
 rim:-1
 ring:-7
 ring~t:-1
 rins:1
 rinse:-5
 rinse~ the:-3
 rins~ the:-2
 rises:-3
 roast:-3
 rock:-7
 roll:-7
 room:-2
 room~ for:2
 room~ temp:-4
 room~ temperature:-2
 room~0:-5
 rough:2
 rough~d:-1
 rough~t:-1
 rough~w:1
 round:1
 round~ and:-4
 round~ it:-1
 round~ the:3
 round~ to:3
 row:2
 row~0:5
 rspo:-7
 rubb:-1
 rugby:-3
 rugby~ club:-3
 ruin:-4
 rule:-11
 run:-3
 runn:-8
 runny:7
 runs:-2
 run~ it:-7
 run~ out:-9
 run~ the:-3
 rustic:-8
 ruth:1
 s0ap:-5
 s:-6
 sack:-4
 safe:-1
 safety:-4
 safe~ ?:-4
 safe~ side:3
 safe~ to:-2
 said~ a:2
 said~ it:-1
 said~ my:4
 said~ no:-7
 said~ so:-9
 said~ that:-5
 said~ the:-1
 said~ yes:-7
 said~0:2
 said~b:5
 salad:-6
 sale:-8
 salt:3
 same~ amount:6
 same~ as:-8
 same~ bar:-3
 same~ fats:1
 same~ for:-2
 same~ number:-8
 same~ oils:-3
 same~ pot:4
 same~ recipe:5
 same~ thing:-4
 same~ weight:10
 same~F:-1
 same~b:5
 sample:-7
 sandpaper:-4
 sane:-4
 sane~ ?:-3
 sang:-8
 sanity:-4
 sanity~ check:-4
 saponification:3
 sat:1
 saturday:-2
 sat~ on:-8
 sat~t:-3
 saucer:-4
 save:1
 saved:1
 saves:-7
 savon:-3
 saw:9
 saw~ it:2
 saw~ the:9
 say:3
 says:4
 says~ ::-6
 says~ and:2
 says~ but:-4
 says~ i:1
 says~ it:-4
 says~ its:-8
 says~ min:8
 says~ my:-8
 says~ that:1
 says~ the:-3
 says~0:5
 says~>:4
 says~A:1
 says~F:-1
 says~b:-2
 says~e:5
 says~t:-1
 says~v:3
 says~w:3
 say~ a:7
 say~ how:2
 say~ it:-9
 say~ its:-5
 say~ that:1
 say~ thats:-5
 say~ the:-6
 say~%:4
 say~0:10
 say~F:-7
 say~b:6
 say~w:5
 scal:-2
 scale:4
 scale~ ::-2
 scale~ and:-7
 scale~ at:5
 scale~ but:-8
 scale~ died:3
 scale~ does:-8
 scale~ for:-9
 scale~ is:1
 scale~ jumps:4
 scale~ only:4
 scale~ says:2
 scale~ shows:1
 scale~ so:-9
 scale~ switch:3
 scale~ that:-1
 scale~ was:6
 scale~ with:-2
 scale~w:-5
 scar:-5
 school:-3
 school~ fair:4
 science:-7
 scoop:7
 scorch:-3
 scrap:8
 scrap~ it:-3
 scrap~ the:4
 scratch:-11
 screen:1
 scribbl:-4
 scrubb:-6
 scrubb~ the:-5
 scum:2
 seal:-4
 season:4
 second~ day:-5
 second~ go:1
 second~ half:4
 second~ one:-4
 second~ opinion:-4
 second~ pair:-1
 second~ time:3
 second~ try:-2
 secret:-7
 see:2
 seed:-5
 seem:9
 seems:-5
 seen:-1
 see~ a:-6
 see~ here:2
 see~ how:-5
 see~ if:-6
 see~ it:-10
 see~ me:-3
 see~ that:4
 see~ the:-1
 see~ through:-7
 see~ what:2
 seiz:-1
 sell:-8
 seller:4
 sells:5
 sells~ at:-4
 sell~ at:-1
 send:1
 sense:1
 sensible:-5
 sensible~ ?:-4
 sensitive:4
 sent:3
 sent~ me:3
 separat:-8
 separate:-8
 september:-6
 serv:2
 set:3
 sets:-10
 sets~ in:-3
 sett:-3
 settl:-1
 set~ aside:-6
 set~ in:-7
 set~ it:6
 set~ on:-4
 set~ the:-6
 set~ to:2
 set~ up:-5
 sf:5
 shade:-7
 shall:1
 shampoo~ bar:-4
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
 shed:-1
 sheep:-6
 sheet:2
 sheet~ ::-2
 sheet~ and:5
 sheet~ for:3
 sheet~ says:5
 sheet~ sorry:-4
 sheet~0:-9
 shelf:-4
 shelf~ for:-2
 shes:-6
 shes~0:-2
 she~ also:4
 she~ alway:-3
 she~ asked:-6
 she~ did:-5
 she~ does:-2
 she~ gets:-8
 she~ got:-7
 she~ had:-9
 she~ has:-5
 she~ is:-4
 she~ made:-5
 she~ never:1
 she~ right:-2
 she~ said:-2
 she~ says:-4
 she~ stirr:-2
 she~ swear:-2
 she~ told:-1
 she~ used:-5
 she~ wants:4
 she~ wrote:1
 shift:-3
 shine:-8
 shiny:-7
 shoe:-3
 shoebox:-3
 shoebox~ lined:-1
 shoe~ box:-4
 shook:4
 shop:2
 shopp:-9
 shopp~ list:-5
 shops:-3
 shop~ and:5
 shop~ had:3
 shop~ soap:3
 short:3
 shortage:-4
 short~ ::4
 short~ ?:-7
 short~ burst:-1
 short~ of:-7
 short~ on:-1
 short~ so:6
 should:-1
 should~ be:-2
 should~ come:1
 should~ have:-1
 should~ i:-8
 should~ read:10
 should~ say:4
 shout:-9
 show:-3
 shower:-7
 shows:1
 shows~ whole:-8
 shows~0:-2
 shows~w:2
 shrink:-7
 shut:1
 shut~ in:2
 side:-2
 sides:-5
 sideway:-7
 side~ of:5
 siev:-1
 sieve:-1
 siev~ it:-1
 sign:-5
 silicone:-8
 silicone~ loaf:-3
 silicone~ mould:-4
 sill:-5
 silly:10
 simmer:1
 simp:-2
 simple:-4
 since:4
 since~ about:-5
 since~ i:-2
 since~ it:5
 since~ last:2
 since~ my:5
 since~ spr:2
 since~ the:3
 since~ then:3
 since~0:-8
 since~F:1
 since~t:4
 single:-1
 sink:-1
 sink~ and:-5
 sink~ of:-6
 sink~ with:-1
 sis:-4
 sister':3
 sister:-9
 sister~ in:-6
 sister~ says:-2
 sit:1
 sits:-1
 sits~ in:-7
 sitt:2
 sitt~ in:-3
 sitt~ on:4
 size:2
 size~ of:-3
 skin:-4
 skin~ and:-2
 skin~ is:4
 skin~ off:-6
 skip:5
 skipp:13
 skipp~ it:5
 skipp~ the:9
 skull:-6
 slab:-7
 sleep:-6
 sleev:-4
 slept:-5
 slic:-6
 slice:-6
 slid:-2
 slight:3
 slimy:-8
 slip:4
 slipp:8
 slipp~ and:6
 sliver:-6
 slosh:-2
 slow:-4
 slow~ cooker:-3
 slow~ into:-5
 slush:-7
 small:-3
 smaller:1
 small~ print:5
 smell:-6
 smell~ a:-6
 smell~ faint:-5
 smell~ is:-5
 smell~ it:2
 smell~ like:-2
 smell~ of:-6
 smell~ the:-4
 smelt:4
 smoke:-6
 smooth:-10
 sneeze:-2
 sniff:2
 snow:-1
 snow~ white:-3
 so:1
 soak:9
 soap':2
 soap:-7
 soaper:-5
 soaps:-8
 soap~ ::-4
 soap~ ?:-1
 soap~ again:-5
 soap~ and:-3
 soap~ at:-6
 soap~ attempt:-2
 soap~ day:-2
 soap~ diary:-5
 soap~ for:-6
 soap~ from:-5
 soap~ i:-3
 soap~ in:-6
 soap~ is:-8
 soap~ like:-4
 soap~ my:-5
 soap~ of:-5
 soap~ on:-5
 soap~ paste:-1
 soap~ since:-5
 soap~ so:-1
 soap~ the:-2
 soap~ w:-6
 soap~ was:-6
 soap~ with:-4
 soap~0:-6
 soft:-6
 softer:2
 soft~ after:-3
 soft~ as:-6
 soft~ at:-3
 soft~ for:-5
 soft~ in:-5
 soft~ so:3
 soft~ soap:-5
 sold:-6
 sold~ at:-3
 sold~ out:-4
 sold~0:-5
 soleseife:-6
 solid:-4
 solution:1
 solution~ and:-2
 solution~ plus:-5
 some:2
 somebody:-3
 somebody~ asked:-7
 somebody~ check:-3
 somebody~ else:-6
 somebody~ here:2
 somebody~ look:-6
 somebody~ run:-5
 somebody~ tell:2
 somebody~ with:-3
 someone:1
 someone~ at:-5
 someone~ in:-6
 someone~ look:-8
 someone~ tell:2
 someone~ to:-6
 someone~ with:-7
 someth~ else:-2
 someth~ like:3
 somewhere:-2
 some~ of:2
 some~ people:-7
 some~0:-6
 some~F:-1
 some~N:8
 some~X:-2
 soon:-5
 sooner:-4
 sooner~ than:-5
 sorry:1
 sorry~ for:-5
 sorry~ if:1
 sorry~ it:-6
 sorry~ my:-4
 sorry~ the:3
 sort:3
 sort~ of:-1
 sound:-6
 sound~ like:-7
 sound~ right:2
 soup:-4
 sour:-1
 source:4
 source~ ::5
 so~ ::-5
 so~ ?:2
 so~ a:3
 so~ all:2
 so~ another:5
 so~ before:-5
 so~ call:5
 so~ did:-4
 so~ do:-3
 so~ does:-6
 so~ excuse:-5
 so~ far:-3
 so~ fast:-3
 so~ for:-6
 so~ good:4
 so~ here:-6
 so~ hot:-6
 so~ i'd:-6
 so~ i:-5
 so~ if:-4
 so~ in:4
 so~ is:2
 so~ it:2
 so~ its:7
 so~ ive:-6
 so~ just:6
 so~ keep:-6
 so~ little:-5
 so~ maybe:2
 so~ much:-5
 so~ my:4
 so~ no:5
 so~ noth:-2
 so~ now:-6
 so~ of:5
 so~ on:-4
 so~ please:3
 so~ sorry:-7
 so~ take:2
 so~ that:-8
 so~ thats:7
 so~ the:1
 so~ ther:3
 so~ there:-3
 so~ this:-3
 so~ those:2
 so~ um:3
 so~ we:-3
 so~ what:4
 so~ whats:4
 so~ who:4
 so~ you:-1
 so~%:-7
 so~0:7
 so~=:3
 so~F:-1
 so~N:11
 so~b:-2
 so~e:-11
 so~l:-8
 so~t:-3
 so~w:-3
 spa:1
 space:-8
 spain:-6
 spare:-5
 spatula:-6
 speak:-1
 speed:-6
 spell:-10
 spend:-7
 spent:2
 spill:-5
 spilt:1
 splash:4
 splash~ of:2
 split:2
 split~ it:2
 split~ the:1
 spoon:-1
 spoonful:4
 spoonful~ in:2
 spoonful~ of:-1
 spoon~ and:1
 spoon~ at:-5
 spoon~ by:-6
 spoon~ for:3
 spoon~ in:-4
 spoon~ into:-3
 spoon~ it:-5
 spoon~ of:3
 spoon~ slipp:9
 spot:-9
 spots:-2
 spots~ after:-2
 spot~ on:-5
 spray:-8
 spreadsheet:-6
 sprinkl:-6
 sprinkle:-2
 sprinkle~ the:-2
 sprinkl~=:-1
 spr~ and:-1
 spr~ i:-1
 squeez:6
 sry:2
 stable:-4
 stack:-2
 stag:-7
 stage:-3
 stage~ at:-3
 stain:-8
 stainles:-6
 stamp:-12
 stamp~ and:-5
 stand:-5
 standard:-7
 stand~ ::-3
 stand~ at:-5
 stand~ for:-4
 stand~ it:5
 stand~ on:5
 stand~ the:-2
 stand~ there:-3
 stand~ up:3
 stank:-6
 start:-1
 start~ ::-4
 start~ and:-9
 start~ at:-1
 start~ the:-5
 start~ to:-8
 start~ with:5
 start~t:-5
 static:1
 stay:3
 stays:-6
 stays~ as:1
 stays~ in:-7
 stay~ a:-1
 stay~ at:3
 stay~ clear:4
 stay~ cloudy:-2
 stay~ in:9
 stay~ on:1
 stay~ soft:-5
 steam:-12
 steel:-2
 steel~ jug:-6
 steel~ pot:-4
 step:-6
 steps:1
 steps~ of:6
 stick:-1
 sticker:-5
 sticky:3
 stick~ blend:-2
 stick~ blender:-8
 stick~ to:2
 stiff:3
 still:1
 still~ a:-8
 still~ cloudy:2
 still~ good:5
 still~ got:-6
 still~ had:4
 still~ have:-1
 still~ in:5
 still~ like:-7
 still~ ok:-7
 still~ on:3
 still~ sitt:10
 still~ smell:-4
 still~ soap:-6
 still~ soft:-1
 still~ stand:4
 sting:-6
 stingy:1
 stink:-7
 stir:-4
 stirr:-1
 stirr~ and:-6
 stirr~ every:-7
 stirr~ for:-2
 stirr~ in:5
 stirr~ into:5
 stirr~ it:-6
 stirr~ one:-5
 stirr~ the:-1
 stirr~ with:-6
 stirr~t:-2
 stirs:-7
 stir~ by:-4
 stir~ every:-1
 stir~ for:-2
 stir~ in:-1
 stir~ it:1
 stir~ the:-9
 stir~ till:-2
 stir~ until:-2
 stir~ with:-3
 stir~0:-6
 stir~=:-3
 stir~t:-4
 stock:1
 stone:-1
 stood:1
 stood~ at:3
 stood~ in:3
 stop:-8
 stopp:8
 stopp~ at:8
 stops:-4
 stor:-3
 store:1
 store~ the:-7
 stove:5
 straight:-3
 straight~ away:-4
 straight~ from:-6
 straight~ into:-5
 straight~ out:3
 straight~ to:1
 strain:6
 strainer:-7
 strain~ it:-5
 strain~ the:-1
 strain~ through:-7
 strain~ twice:2
 streak:-7
 stream:-3
 street:-5
 strength:3
 stretch:3
 strike:3
 strip:-7
 stripp:-7
 stripp~ the:-6
 strip~ says:-7
 strip~0:-3
 strong:3
 stronger:1
 strong~ ?:-7
 strong~ for:-5
 struck:4
 struck~ out:1
 stuck:3
 stuck~ in:4
 stuck~ to:3
 student:-1
 stuff:-1
 stupid:-7
 style:-4
 subject:-3
 subject~ ::-3
 such:2
 suds:-6
 suggest:1
 suits:-5
 sum:-2
 summer:3
 summer~ and:7
 sums:-1
 sun:2
 sunday:1
 sunday~ ::-6
 sunday~ and:1
 sunday~ in:-6
 sunday~ roast:1
 superfat:5
 superfat~ ::4
 superfat~ ?:-2
 superfat~ and:-6
 superfat~ at:1
 superfat~ did:-10
 superfat~ do:-5
 superfat~ for:2
 superfat~ i:-1
 superfat~ in:1
 superfat~ is:-11
 superfat~ of:-7
 superfat~ on:-11
 superfat~ should:-11
 superfat~ with:1
 superfat~%:3
 superfat~0:3
 supermarket:-5
 supplier:1
 suppos:-1
 suppose:-1
 suppos~ to:-1
 sure:5
 sure~ about:-11
 sure~ of:3
 surface:-7
 surviv:-1
 survive:-7
 suspect:5
 swap:-5
 swapp:7
 swapp~ for:3
 swapp~ the:1
 swapp~F:6
 swaps:-10
 swap~ the:-1
 swear:3
 swear~ by:-1
 swear~ it:-8
 swear~ to:8
 sweat:-7
 sweat~ in:-1
 sweet:-2
 swirl:-7
 swirl~ with:-5
 switch:-2
 switch~ off:-6
 switch~ to:-7
 swore:-4
 t:-6
 ta:-5
 tabl:-6
 table:4
 tablespoon:5
 table~ is:-8
 table~0:-11
 tabs:-5
 taffy:-9
 tag:-5
 tak:6
 take:3
 taken:3
 takes:-13
 takes~ about:-1
 takes~ its:-5
 takes~ the:-4
 takes~=:-1
 takes~t:-4
 take~ it:-6
 take~ off:-3
 take~ that:5
 take~ the:-5
 take~ your:3
 take~0:-8
 take~=:-4
 take~w:-9
 talk:-6
 tall:-6
 tan:-7
 tape:-8
 tare:-1
 tared:8
 target:2
 tast:-9
 taste:4
 taught:-7
 taught~ me:-3
 teach:-1
 teacher:-3
 team:-3
 technical:10
 technical~ grade:6
 telephone:-5
 tell:-2
 tells:1
 tells~ me:4
 tell~ me:2
 tell~ my:-7
 tell~ the:-1
 tell~ them:-5
 tell~ us:-8
 tell~ whether:1
 tell~ you:3
 temp:-5
 temperature:-9
 temps:-5
 temp~d:-2
 tenth:3
 tenth~ of:3
 term:-3
 test:-2
 tester:2
 test~ ::-4
 test~ at:-9
 test~ it:5
 test~ ok:-3
 test~ with:-6
 text:-4
 than:-1
 thank:-5
 thank~ for:-6
 thank~ to:-3
 thank~ you:-6
 than~ a:-1
 than~ i:3
 than~ it:2
 than~ my:3
 than~ that:-5
 than~ the:-4
 than~ usual:4
 than~d:-5
 that:5
 thats:-1
 thats~ a:-7
 thats~ all:-5
 thats~ how:5
 thats~ it:-7
 thats~ my:-7
 thats~ the:-5
 thats~ what:6
 thats~ why:-7
 thats~>:-1
 thats~l:-11
 that~ ?:3
 that~ a:-8
 that~ about:-8
 that~ and:4
 that~ be:4
 that~ bit:4
 that~ came:-2
 that~ come:1
 that~ day:8
 that~ enough:-3
 that~ from:-7
 that~ goes:-2
 that~ had:-1
 that~ has:-4
 that~ i'd:-4
 that~ i:2
 that~ in:-2
 that~ into:-3
 that~ is:1
 that~ isnt:2
 that~ it:-9
 that~ its:1
 that~ look:-2
 that~ makes:-7
 that~ matter:3
 that~ mine:5
 that~ my:2
 that~ never:6
 that~ nobody:2
 that~ noth:-5
 that~ off:7
 that~ okay:-2
 that~ on:1
 that~ one:-5
 that~ out:4
 that~ right:-2
 that~ she:1
 that~ solution:-8
 that~ sound:-2
 that~ still:-6
 that~ the:3
 that~ ther:-8
 that~ too:-7
 that~ was:-7
 that~ we:-9
 that~ went:-3
 that~ you:-7
 that~0:9
 that~=:-7
 that~A:-3
 that~F:1
 that~L:4
 that~b:5
 the:1
 their:-5
 their~ own:-1
 them:-2
 themselv:-1
 them~ ::-2
 them~ and:-5
 them~ is:-2
 them~ on:1
 them~ out:-4
 them~ to:-8
 them~ together:3
 them~0:-4
 them~t:-5
 then:-2
 then~ add:-3
 then~ at:-5
 then~ i:2
 then~ in:-6
 then~ into:-4
 then~ it:4
 then~ its:-6
 then~ like:-3
 then~ my:3
 then~ pour:-5
 then~ stir:-3
 then~ stirr:-2
 then~ the:-9
 then~ weigh:-7
 then~0:4
 then~<:3
 then~=:-4
 then~>:-2
 then~A:-6
 then~F:-3
 then~S:-3
 then~W:1
 then~e:-4
 then~t:-5
 then~v:5
 ther:3
 there:4
 thereabout:3
 therefore:3
 there~ ?:-7
 there~ and:1
 there~ are:-1
 there~ because:1
 there~ enough:-4
 there~ may:6
 there~ so:-5
 there~ too:4
 there~ was:-1
 there~ were:2
 there~ with:-3
 thermometer:-9
 ther~ also:1
 ther~ no:-7
 ther~0:3
 ther~F:1
 these:-8
 these~ are:-5
 these~ days:6
 these~ fats:-3
 these~ oils:-2
 they:-4
 theyd:3
 theyll:-2
 they~ are:6
 they~ do:-7
 they~ say:2
 they~ went:1
 they~ were:-7
 the~ above:5
 the~ allotment:-4
 the~ amount:-1
 the~ answer:-2
 the~ app:3
 the~ attic:-2
 the~ autumn:-7
 the~ baby:1
 the~ back:2
 the~ bag:3
 the~ balance:-6
 the~ balcony:2
 the~ bar:1
 the~ bars:-11
 the~ batch:-2
 the~ bath:-6
 the~ bathroom:2
 the~ batter:-7
 the~ battery:-2
 the~ beaker:7
 the~ beginn:-1
 the~ bell:-8
 the~ bench:-6
 the~ best:-4
 the~ bin:-4
 the~ birds:-3
 the~ bit:-3
 the~ blender:2
 the~ block:5
 the~ blog:-4
 the~ blue:1
 the~ board:2
 the~ book:-4
 the~ bottl:-6
 the~ bottle:5
 the~ bottom:-1
 the~ bowl:7
 the~ box:2
 the~ boys:3
 the~ brim:-2
 the~ bubbl:-4
 the~ bucket:2
 the~ bus:-2
 the~ camp:1
 the~ candle:-6
 the~ canister:6
 the~ car:-8
 the~ card:-5
 the~ caretaker:-5
 the~ cellar:-10
 the~ certifi:-6
 the~ certificate:4
 the~ cheap:-7
 the~ chemist:-2
 the~ children:1
 the~ choir:-6
 the~ christma:2
 the~ church:-3
 the~ class:-7
 the~ clean:-1
 the~ clock:-4
 the~ clubs:-1
 the~ co:-1
 the~ cold:3
 the~ column:-3
 the~ comma:4
 the~ comment:-7
 the~ cooker:3
 the~ cool:-6
 the~ corner:-4
 the~ cost:-5
 the~ counter:4
 the~ county:-5
 the~ course:2
 the~ crock:1
 the~ crockpot:-1
 the~ crumb:1
 the~ cubes:-5
 the~ cup:-3
 the~ cupboard:-2
 the~ cure:-9
 the~ date:-6
 the~ day:-3
 the~ decimal:-4
 the~ difference:2
 the~ discount:-3
 the~ dish:5
 the~ display:1
 the~ dog:2
 the~ door:-1
 the~ dot:-6
 the~ doubl:-8
 the~ double:-2
 the~ drain:3
 the~ drawer:1
 the~ drum:8
 the~ edge:-4
 the~ edges:-2
 the~ empty:-8
 the~ end:3
 the~ ends:-7
 the~ even:-10
 the~ extra:-1
 the~ face:-7
 the~ fami:1
 the~ farm:-1
 the~ fat:-4
 the~ fats:2
 the~ feed:4
 the~ fence:-5
 the~ figur:-5
 the~ figure:5
 the~ finish:-3
 the~ first:-2
 the~ flak:5
 the~ flat:-3
 the~ floor:6
 the~ foam:-9
 the~ freezer:-10
 the~ fridge:-1
 the~ fryer:1
 the~ full:1
 the~ fumes:-7
 the~ funnel:2
 the~ garage:-4
 the~ garden:-4
 the~ gas:-5
 the~ goat:5
 the~ goats:5
 the~ goggl:-3
 the~ good:-3
 the~ gram:-6
 the~ greasy:-8
 the~ green:-2
 the~ half:6
 the~ hall:-7
 the~ hand:-4
 the~ handout:1
 the~ hands:4
 the~ hard:-5
 the~ hardware:-1
 the~ heat:-7
 the~ hens:-8
 the~ hob:-1
 the~ holiday:-3
 the~ hood:-7
 the~ hot:2
 the~ house:8
 the~ internet:-3
 the~ jars:-6
 the~ jug:-2
 the~ kettle:5
 the~ kids:-5
 the~ kilo:6
 the~ kitchen:-3
 the~ label:5
 the~ lads:-4
 the~ lady:-5
 the~ last:3
 the~ laundry:-2
 the~ leaflet:2
 the~ letter:2
 the~ library:-7
 the~ lid:2
 the~ light:-4
 the~ line:6
 the~ liquid:5
 the~ list:11
 the~ litre:7
 the~ little:1
 the~ loaf:-4
 the~ log:-7
 the~ long:1
 the~ look:-1
 the~ lot:3
 the~ lowest:-5
 the~ lump:-1
 the~ machine:-5
 the~ man:-3
 the~ margin:-1
 the~ mark:4
 the~ market:-5
 the~ mass:-3
 the~ measur:2
 the~ mechanic:4
 the~ melt:3
 the~ mess:-4
 the~ microwave:1
 the~ middle:-6
 the~ mill:-4
 the~ miss:4
 the~ mix:6
 the~ mold:2
 the~ month:-5
 the~ moon:-4
 the~ morn:-6
 the~ most:-9
 the~ mould:-3
 the~ name:-5
 the~ neighbour:-4
 the~ new:1
 the~ next:-6
 the~ night:-5
 the~ normal:-5
 the~ oil:1
 the~ old:-1
 the~ ones:-2
 the~ only:-7
 the~ open:3
 the~ order:-7
 the~ original:2
 the~ other:2
 the~ outside:-1
 the~ oven:-8
 the~ packet:7
 the~ page:-5
 the~ pan:5
 the~ pantry:-7
 the~ paper:8
 the~ parish:-6
 the~ past:2
 the~ paste:-3
 the~ patience:-5
 the~ phone:5
 the~ photo:4
 the~ picture:-5
 the~ place:9
 the~ plain:-5
 the~ plan:1
 the~ plastic:3
 the~ plate:6
 the~ point:-2
 the~ porch:-4
 the~ post:1
 the~ postman:2
 the~ pot:1
 the~ potato:-7
 the~ pour:-5
 the~ powder:5
 the~ power:-4
 the~ present:1
 the~ price:-7
 the~ printout:-5
 the~ question:-9
 the~ rack:-4
 the~ radiator:-4
 the~ radio:-5
 the~ rain:-3
 the~ ready:6
 the~ real:-6
 the~ reason:-8
 the~ record:1
 the~ remain:-3
 the~ render:-3
 the~ right:-9
 the~ roof:3
 the~ room:1
 the~ row:-6
 the~ rugby:-3
 the~ sack:-3
 the~ safe:3
 the~ salad:1
 the~ same:1
 the~ scale:-3
 the~ school:2
 the~ scum:2
 the~ second:3
 the~ sf:-5
 the~ sheet:8
 the~ shelf:-3
 the~ shop:3
 the~ shops:-5
 the~ shower:-7
 the~ side:6
 the~ sink:2
 the~ skin:-4
 the~ slip:-4
 the~ slow:-3
 the~ small:2
 the~ smell:1
 the~ soap':3
 the~ soap:-3
 the~ spatula:-2
 the~ spoon:-1
 the~ spr:-6
 the~ stall:4
 the~ steel:4
 the~ step:-3
 the~ stick:-10
 the~ stirr:-5
 the~ stove:6
 the~ suds:-3
 the~ sum:-2
 the~ summer:-1
 the~ sums:1
 the~ sun:2
 the~ sunday:5
 the~ superfat:-4
 the~ supermarket:-3
 the~ surface:-7
 the~ swirl:-6
 the~ table:5
 the~ tap:-4
 the~ teacher:-5
 the~ temperature:-4
 the~ test:1
 the~ thermometer:-6
 the~ thing:-3
 the~ third:-2
 the~ thread:-5
 the~ thursday:-5
 the~ tiles:7
 the~ time:1
 the~ tin:4
 the~ tongue:-1
 the~ top:-3
 the~ trace:-1
 the~ train:-5
 the~ tray:-3
 the~ trimming:2
 the~ tub:2
 the~ unrefin:-6
 the~ usual:5
 the~ varnish:-6
 the~ very:-1
 the~ village:-3
 the~ wall:-4
 the~ war:-8
 the~ wardrobe:-5
 the~ warm:1
 the~ wash:-3
 the~ way:3
 the~ weather:-6
 the~ weekend:-9
 the~ weigh:8
 the~ weight:4
 the~ whisk:1
 the~ white:1
 the~ whole:-1
 the~ window:-7
 the~ windowsill:4
 the~ winter:-4
 the~ wire:-3
 the~ wood:-3
 the~ wooden:-4
 the~ word:-3
 the~ workshop:-4
 the~ worktop:-1
 the~ wrong:4
 the~ yard:-5
 the~ year:-6
 the~%:1
 the~<:-8
 the~=:-3
 the~>:-1
 the~A:2
 the~B:-8
 the~C:-13
 the~F:5
 the~I:4
 the~K:3
 the~L:-2
 the~M:3
 the~N:-2
 the~S:-1
 the~T:-8
 the~W:6
 the~X:-4
 the~b:5
 the~l:-2
 the~t:-2
 the~v:-7
 the~w:-6
 thick:-3
 thicken:-3
 thicker:-9
 thick~ as:1
 thick~ like:-5
 thick~ trace:-2
 thin:-6
 thing:-3
 thing~ ?:-6
 thing~ and:-2
 thing~ i:-8
 thing~ in:-6
 think~ ?:-7
 think~ about:2
 think~ i:8
 think~ it:-3
 think~ its:-1
 think~ my:2
 think~ of:-7
 think~ that:-8
 think~ the:5
 thinn:6
 thin~ stream:-3
 thin~ trace:-7
 third:2
 third~ attempt:-6
 third~ go:3
 third~ of:2
 third~ time:-7
 this:3
 this~ ::4
 this~ ?:-7
 this~ a:-5
 this~ and:-8
 this~ at:1
 this~ batch:-1
 this~ be:-1
 this~ because:-5
 this~ before:-4
 this~ but:-5
 this~ for:7
 this~ from:1
 this~ house:4
 this~ i:-4
 this~ in:-1
 this~ is:-7
 this~ loaf:2
 this~ look:-3
 this~ morn:2
 this~ ok:-3
 this~ on:-7
 this~ one:6
 this~ ones:-4
 this~ or:-6
 this~ pot:3
 this~ recipe:-9
 this~ right:-2
 this~ time:4
 this~ to:-5
 this~ was:-5
 this~ way:-3
 this~ week:-1
 this~ weekend:2
 this~ with:-8
 this~ year:4
 this~0:-9
 this~F:1
 tho:-6
 those~ are:2
 those~ days:-5
 those~ fats:-2
 those~ oils:-3
 those~ who:4
 those~0:3
 those~w:1
 though:2
 thought:1
 thought~ ?:-4
 thought~ i'd:-6
 thought~ i:-2
 thought~ it:-4
 thought~ on:-7
 though~ i:2
 thread:-7
 threw:6
 threw~ in:8
 threw~ the:-4
 throughout:-1
 through~ a:-1
 through~ an:-9
 through~ it:-3
 through~ the:5
 throw:-6
 thrown:4
 thru:2
 thumb:-4
 thursday:-6
 thx:-5
 tick:-1
 til:-3
 tiles:7
 till:-1
 till~ it:2
 till~ its:-2
 till~ the:-2
 till~0:-6
 time:-4
 timer:-9
 times:2
 times~ i:3
 times~ in:-8
 times~ the:1
 times~0:9
 time~ and:-4
 time~ because:1
 time~ in:2
 time~ is:-3
 time~ it:-7
 time~ ive:-1
 time~ lurker:-4
 time~ post:-4
 time~ so:4
 time~ the:2
 time~ to:-4
 time~ with:-7
 time~t:-5
 tin:1
 tins:-7
 tins~ of:-2
 tiny:-2
 tin~ and:-1
 tin~ is:-4
 tin~ of:-5
 tin~ was:-1
 tin~ with:-10
 tip:-3
 tipp:9
 tipp~ in:6
 tipp~ the:1
 tips:-5
 tip~ ::-6
 title:-3
 title~ ::-4
 to:-1
 toast:-6
 today:-5
 today~ ::4
 today~ ?:-5
 today~ and:1
 toddler:4
 together:-2
 together~ ?:-3
 together~ in:-5
 together~ with:-6
 told:-5
 told~ her:-3
 told~ me:-3
 told~ us:-5
 told~F:-1
 tom:-1
 tomato:5
 tomorrow:-5
 tongue:-2
 tongue~ test:1
 tonight:7
 tonight~ ::-6
 tonight~ ?:-3
 too:3
 took:3
 took~ a:-6
 took~ ages:-3
 took~ forever:2
 took~ it:-2
 took~ me:-9
 took~ the:3
 took~0:-2
 took~<:2
 took~=:-9
 took~>:-6
 took~N:4
 took~l:2
 took~t:-11
 took~w:-5
 tools:-5
 too~ ?:-7
 too~ and:3
 too~ cold:-4
 too~ dry:-4
 too~ early:-5
 too~ hard:-3
 too~ harsh:-4
 too~ high:-5
 too~ hot:-8
 too~ late:-1
 too~ little:1
 too~ low:4
 too~ many:5
 too~ much:-5
 too~ quick:4
 too~ sharp:-3
 too~ soft:-5
 too~ soon:-5
 too~ strong:-3
 top:1
 topp:10
 topp~ it:4
 topp~ the:6
 topp~ up:6
 top~ for:-4
 top~ is:-4
 top~ of:2
 top~ shelf:-6
 top~ which:-3
 total:2
 total~ of:-7
 touch:-5
 touch~ it:-6
 touch~ the:-6
 towel:-6
 towel~ over:-4
 towel~ round:-5
 towel~t:-2
 town:1
 to~ a:2
 to~ ask:-6
 to~ be:2
 to~ bed:-3
 to~ buy:-7
 to~ check:-7
 to~ come:2
 to~ cool:-10
 to~ cut:-4
 to~ everyone:3
 to~ find:-4
 to~ finish:7
 to~ get:-4
 to~ go:-1
 to~ grate:-2
 to~ hand:1
 to~ have:3
 to~ hear:1
 to~ help:7
 to~ her:-6
 to~ hold:3
 to~ keep:-5
 to~ know:-5
 to~ light:-2
 to~ look:-7
 to~ make:1
 to~ me:-3
 to~ melt:-10
 to~ my:1
 to~ open:-6
 to~ pour:-2
 to~ put:4
 to~ remember:-8
 to~ rough:-3
 to~ say:1
 to~ sell:-2
 to~ set:3
 to~ slush:-7
 to~ soap:-8
 to~ someth:-5
 to~ spare:-1
 to~ spoon:-6
 to~ stir:1
 to~ take:4
 to~ tell:-1
 to~ test:-6
 to~ that:-5
 to~ the:-1
 to~ thicken:-2
 to~ this:-8
 to~ throw:-5
 to~ trace:-9
 to~ try:-5
 to~ unmould:-6
 to~ use:-3
 to~ wait:1
 to~ wash:3
 to~ waste:7
 to~ weigh:-6
 to~ you:-6
 to~%:5
 to~<:4
 to~=:-3
 to~>:4
 to~F:-9
 to~T:-3
 to~X:-4
 to~b:-4
 to~d:-4
 to~e:-2
 to~t:3
 to~w:-6
 trac:-9
 trace:2
 trace~ ::-7
 trace~ add:3
 trace~ after:-5
 trace~ and:-8
 trace~ at:-2
 trace~ because:6
 trace~ came:-6
 trace~ i:-7
 trace~ in:-6
 trace~ stir:-6
 trace~ then:-1
 trace~ was:-5
 trace~0:-5
 trace~t:-5
 track:5
 tractor:-5
 trac~ after:-3
 trac~ in:-4
 trade:-9
 trail:-3
 train:-6
 translat:-4
 translate:-5
 translat~ from:-3
 translucent:-3
 tray:-4
 trays:-2
 treat:-3
 trees:1
 trial:-8
 trick:-8
 trick~ for:-5
 tried:-8
 tried~ it:1
 tries:1
 trimming:-1
 tripl:-7
 trouble:-3
 trust:-6
 trust~ it:-6
 trust~ the:-4
 truth:1
 try:-12
 try~ it:-6
 try~ to:-2
 tub:-1
 tube:-4
 tubs:2
 tub~ ::-8
 tub~ and:-9
 tub~ is:-2
 tub~ of:-3
 tub~ says:-8
 tue:-3
 tuesday:-2
 tue~t:-1
 turn:-2
 turns~ out:6
 turns~0:-7
 turn~ it:-1
 turn~ out:5
 turn~ the:-3
 turn~ to:1
 turn~S:-4
 tutor:-2
 twentieth:3
 twice:2
 twice~ a:-6
 twice~ and:5
 twice~ before:-8
 twice~ i:4
 twice~ with:-6
 typ:-8
 type:3
 typed:7
 typed~ the:6
 typo:2
 u:-8
 ugh:-1
 ugly:-6
 um:2
 uncl:-6
 uncle:-3
 under:-4
 underneath:-6
 understand:-7
 under~ a:-2
 under~ it:5
 under~ the:2
 under~0:-8
 under~d:-3
 under~t:-3
 under~w:-7
 unit:-3
 units:-6
 unit~ ::-3
 unmold:-8
 unmould:-7
 unmould~ after:-5
 unmould~t:-1
 unrefin:-9
 unsaponifi:10
 unscent:-5
 until:-1
 until~ a:-4
 until~ both:-1
 until~ i:-1
 until~ it:-1
 until~ its:-4
 until~ the:3
 until~ you:-4
 until~t:-1
 up:5
 update:2
 upon:4
 up~ ::3
 up~ ?:-6
 up~ again:-7
 up~ and:1
 up~ at:-2
 up~ by:3
 up~ for:-7
 up~ i:-6
 up~ in:-4
 up~ like:-6
 up~ my:-1
 up~ on:7
 up~ so:2
 up~ the:3
 up~ there:5
 up~ to:3
 up~ with:2
 up~0:8
 ur:-6
 us:-1
 use:-3
 used:2
 used~ a:-1
 used~ for:2
 used~ that:5
 used~ the:8
 used~ to:-8
 used~ up:1
 used~0:-3
 used~=:-7
 used~>:-4
 used~F:-6
 used~L:3
 used~N:-4
 used~l:-3
 used~w:-2
 uses:-5
 use~ ?:-2
 use~ a:-3
 use~ in:-4
 use~ it:-7
 use~ the:-6
 use~ up:5
 use~=:2
 use~>:3
 use~F:-9
 use~I:-5
 use~N:-2
 use~l:-3
 using:2
 using~=:-6
 usual:3
 us~ the:-1
 vanish:-4
 varnish:-6
 vegan:-10
 vegetable:-4
 vegetarian:-7
 verdict:-4
 verify:-7
 verify~ the:-6
 version:-6
 version~ ::-1
 version~ with:-1
 version~0:4
 very~ first:-8
 very~ nice:-4
 vet:-7
 video:-6
 village:-2
 village~ hall:-1
 virgin:-6
 voice:3
 volcano:-7
 w:1
 wait:-3
 waits:3
 wait~ for:-8
 wait~ i:-8
 wait~ till:-2
 wait~ until:-7
 wait~t:-3
 walk:5
 wall:-2
 want:3
 wants:-4
 wants~ a:-4
 wants~ it:-6
 wants~ me:-2
 wants~ some:-2
 wants~ the:-7
 wants~ to:-3
 want~ a:-4
 want~ the:6
 want~ to:-3
 want~%:1
 want~0:6
 want~F:-8
 war:-8
 wardrobe:-6
 warm:-7
 warmth:-5
 warm~ in:-5
 warm~ it:-3
 warm~ oils:3
 warm~ the:-9
 warm~ to:-5
 warm~F:-4
 warn:-8
 was:5
 wash:-6
 wash~ it:3
 wash~ the:1
 wash~ up:-1
 wash~ with:-7
 wasnt:14
 wasnt~ enough:-1
 wast:3
 was~ a:-1
 was~ all:3
 was~ already:4
 was~ at:-5
 was~ call:1
 was~ clean:-2
 was~ clear:-4
 was~ cold:1
 was~ done:3
 was~ empty:10
 was~ fine:-1
 was~ finish:6
 was~ for:-1
 was~ from:-1
 was~ full:2
 was~ going:-4
 was~ gone:-4
 was~ hard:-6
 was~ hot:-4
 was~ in:3
 was~ it:-2
 was~ left:-1
 was~ like:3
 was~ made:-2
 was~ meant:5
 was~ melt:3
 was~ my:-5
 was~ near:5
 was~ never:-2
 was~ no:-3
 was~ not:9
 was~ off:9
 was~ old:-5
 was~ on:3
 was~ one:5
 was~ only:1
 was~ open:7
 was~ out:4
 was~ over:3
 was~ pour:3
 was~ ready:-2
 was~ real:6
 was~ right:-4
 was~ so:5
 was~ stand:6
 was~ still:1
 was~ stirr:-2
 was~ that:-5
 was~ the:-4
 was~ there:6
 was~ thick:-5
 was~ told:2
 was~ too:-5
 was~ under:-5
 was~ very:-7
 was~ warm:-5
 was~ weigh:5
 was~ what:-2
 was~ with:1
 was~%:-6
 was~0:-3
 was~<:2
 was~=:-7
 was~>:-7
 was~A:6
 was~F:4
 was~L:6
 was~N:2
 was~X:6
 was~b:3
 was~d:-7
 was~e:7
 was~l:-10
 was~t:-7
 was~v:1
 was~w:7
 watch:-6
 watch~ the:-7
 water:1
 water~ bath:-7
 waxy:-5
 way:1
 way~ in:6
 way~ of:-7
 way~ round:-1
 we:1
 wear:-8
 wear~ goggl:-5
 weather:-6
 wed:1
 wedd:-3
 wedd~ favour:2
 wednesday:-7
 week:-5
 weekend:-1
 weeks:1
 week~ and:-10
 week~ so:4
 week~0:-9
 weigh:-1
 weight:2
 weight~ ::-7
 weight~ and:3
 weight~ g:-3
 weight~ in:3
 weight~ made:-6
 weight~ of:-3
 weight~ oz:-5
 weight~ so:-4
 weight~A:-5
 weigh~ ?:-6
 weigh~ a:-5
 weigh~ after:-5
 weigh~ again:4
 weigh~ and:1
 weigh~ anyth:-2
 weigh~ as:4
 weigh~ by:7
 weigh~ everyth:-10
 weigh~ i:-4
 weigh~ it:1
 weigh~ like:1
 weigh~ my:3
 weigh~ on:3
 weigh~ one:4
 weigh~ out:-8
 weigh~ the:3
 weigh~0:3
 weigh~<:-6
 weigh~=:-7
 weigh~F:-3
 weigh~e:8
 weigh~l:-2
 weigh~w:-9
 welcome:-5
 well:-1
 well~ and:-5
 well~ as:-4
 well~ be:7
 well~ have:7
 went:4
 went~ a:4
 went~ above:-6
 went~ away:-8
 went~ back:-2
 went~ brown:-5
 went~ by:-4
 went~ clear:-8
 went~ cloudy:-6
 went~ dark:-2
 went~ down:5
 went~ for:7
 went~ from:-8
 went~ in:7
 went~ into:5
 went~ off:1
 went~ on:3
 went~ over:2
 went~ the:-6
 went~ through:1
 went~ to:-4
 went~ with:3
 went~ without:3
 went~ wrong:-4
 went~ yellow:-7
 went~=:-7
 went~S:-6
 were:3
 were~ a:-2
 were~ at:-6
 were~ on:-6
 were~0:2
 were~F:3
 were~w:-3
 wet:6
 wet~ cloth:-4
 wet~ dog:-3
 weve:-3
 we~ are:-1
 we~ count:-6
 we~ cut:-6
 we~ did:4
 we~ do:2
 we~ got:-7
 we~ had:-1
 we~ have:-5
 we~ keep:-7
 we~ made:-8
 we~ make:2
 we~ pour:-4
 we~ put:-7
 we~ render:-2
 we~ say:3
 we~ use:-8
 we~ used:-2
 we~ want:4
 we~ weigh:1
 we~ went:-1
 we~ were:4
 what:4
 whatever:6
 whatever~ the:10
 whatever~ was:8
 whats:2
 whatsoever:1
 whats~ in:5
 whats~ the:-5
 what~ a:-7
 what~ came:4
 what~ did:-4
 what~ do:1
 what~ does:-5
 what~ g:-4
 what~ happen:-8
 what~ how:-8
 what~ i'd:4
 what~ i:9
 what~ im:3
 what~ is:-4
 what~ it:3
 what~ my:-2
 what~ remain:1
 what~ she:-5
 what~ superfat:-9
 what~ they:5
 what~ to:-1
 what~ was:-3
 what~ we:-3
 what~ went:-1
 what~ would:-4
 what~ you:-3
 what~ youd:-2
 when:-1
 whenever:-1
 when~ both:-6
 when~ cut:-5
 when~ i:1
 when~ it:2
 when~ its:-1
 when~ she:1
 when~ the:2
 when~ wash:4
 when~ you:1
 when~F:-9
 where:3
 where~ i:-4
 where~ it:7
 where~ she:-8
 where~ the:4
 where~ you:2
 whether:-3
 whether~ it:-4
 whether~F:-7
 whether~b:-4
 which:2
 which~ bring:-1
 which~ has:-2
 which~ i:5
 which~ is:-3
 which~ makes:-5
 which~ of:3
 which~ one:7
 which~ the:1
 which~ was:-2
 which~F:-7
 while:-3
 while~ i:4
 while~ the:-8
 whipp:2
 whisk:-7
 white:-8
 whiteboard:-7
 whiter:-4
 white~ and:2
 white~ as:-7
 white~ powder:-4
 white~ spots:-3
 white~F:-2
 who:-1
 whoever:-1
 whole:1
 whole~ grams:-8
 whole~ thing:4
 whole~ time:-2
 whos:-3
 whose:4
 whos~ right:-3
 who~ asked:-6
 who~ cant:3
 who~ does:1
 who~ has:-5
 who~ is:-6
 who~ knows:5
 why:-8
 why~ ?:-5
 why~ does:-4
 why~ i:-6
 why~ it:-5
 why~ its:-6
 why~ the:-6
 why~F:-3
 width:-4
 wife:-1
 wifes:-3
 wife~ likes:-6
 wife~ says:3
 will:-8
 will~ be:-7
 will~ climb:-4
 will~ do:-6
 will~ it:-2
 will~ need:-1
 will~ that:-3
 will~ the:-4
 will~ this:-2
 wind:-6
 window:-10
 windowsill:2
 window~ open:-7
 winter:-5
 winter~ and:1
 winter~ bar:-1
 winter~ hands:-8
 winter~ i:-6
 wipe:-4
 wiped:-2
 wire:-5
 wish:3
 within:-8
 within~t:-6
 without:5
 without~ a:-11
 without~ it:1
 without~ my:-2
 without~ the:2
 without~F:-1
 with~ a:-2
 with~ all:-8
 with~ an:-5
 with~ bak:-3
 with~ both:-3
 with~ everyth:6
 with~ freezer:-4
 with~ glov:-2
 with~ goggl:-3
 with~ it:-1
 with~ its:-4
 with~ me:1
 with~ more:3
 with~ my:-9
 with~ no:-3
 with~ noth:4
 with~ one:3
 with~ only:-9
 with~ some:2
 with~ that:2
 with~ the:2
 with~ this:3
 with~ us:-4
 with~ wet:-4
 with~ what:1
 with~%:8
 with~0:-3
 with~<:-1
 with~=:-4
 with~>:-6
 with~A:1
 with~C:1
 with~F:-7
 with~I:-6
 with~L:-6
 with~N:1
 with~S:-8
 with~U:5
 with~W:3
 with~X:1
 with~e:-7
 with~l:-8
 with~v:-1
 with~w:2
 woman:-10
 woman~ at:-2
 women:-3
 wonder:7
 wonky:-7
 wont:-3
 wood:-8
 wooden:-3
 wooden~ box:-3
 wooden~ mould:-8
 wooden~ one:-5
 wooden~ spoon:3
 wood~ stove:-4
 word:1
 words:-5
 word~ for:-7
 work:-2
 works:-7
 worksheet:-4
 workshop:-4
 worktop:-1
 work~ ?:-2
 work~ in:3
 work~ it:3
 work~ out:-2
 work~ with:3
 worri:3
 worry~ is:1
 worth:1
 worth~ of:5
 would:-2
 wouldnt:4
 wouldnt~ dissolve:6
 would~ a:-3
 would~ be:-2
 would~ do:-5
 would~ have:-2
 would~ like:4
 would~ love:1
 would~ not:-5
 would~ take:2
 would~ the:-9
 would~ you:3
 wrap:-6
 wrapp:-11
 wrapper:-5
 wrapp~ in:-5
 wrapp~ it:-4
 wrap~ in:-1
 wrist:-4
 writ:-5
 write:-5
 write~ down:-3
 write~ it:-1
 write~ the:-7
 write~ up:-3
 written:3
 written~ ?:-5
 written~ on:-6
 wrong:-1
 wrong~ ?:-5
 wrong~ with:-7
 wrote:1
 wrote~ ::-4
 wrote~ it:2
 wrote~ on:-6
 wrote~ that:-6
 wrote~ this:-2
 wrote~F:3
 wrote~e:-1
 wt:-7
 w~ a:-7
 w~ my:-2
 w~ the:1
 w~ w:1
 w~=:-3
 x:1
 xmas:2
 x~0:4
 x~F:-9
 yall:-6
 yard:-7
 year:-6
 years:-6
 years~ ago:-2
 year~ and:2
 year~ i:-7
 year~ in:-4
 year~ is:5
 year~0:-5
 yellow:-8
 yes:-3
 yesterday:-5
 yesterday~ i:-1
 yes~ its:-8
 yes~ no:-3
 yes~ or:-1
 yes~ the:-2
 yet:7
 yield:2
 yield~0:3
 you:-3
 youd:-4
 youll:-2
 young:-5
 your:-9
 youre:-10
 yours:-1
 your~ arm:-2
 your~ own:2
 your~ skin:-5
 your~A:-5
 your~F:-4
 youve:-10
 you~ ?:-2
 you~ all:-6
 you~ and:-4
 you~ are:-4
 you~ ask:2
 you~ asked:-3
 you~ call:-9
 you~ can:-3
 you~ cant:-6
 you~ check:-4
 you~ could:-10
 you~ cut:-4
 you~ do:3
 you~ dont:-9
 you~ feel:-4
 you~ for:-6
 you~ get:-6
 you~ go:-7
 you~ know:5
 you~ like:-5
 you~ look:-3
 you~ lot:-3
 you~ make:-6
 you~ need:-9
 you~ pour:-7
 you~ put:-8
 you~ read:-1
 you~ say:-1
 you~ see:1
 you~ should:5
 you~ start:3
 you~ tell:2
 you~ think:-3
 you~ to:-4
 you~ trust:-1
 you~ use:-4
 you~ wait:-5
 you~ want:-8
 you~ weigh:-7
 you~ will:3
 you~ wont:3
 you~ work:4
 zap:-8
 zapp:5
 zappy:-4
 zap~ test:-4
 zero:4
 zero~ the:7
 ×:-1
 üf:-8
%%:-5
%0:-9
%:8
%<:-6
%=:-1
%>:-8
%A:5
%F:-2
%K:-7
%N:1
%S:-4
%l:-4
%t:-8
%w:3
%~ ?:-3
%~ and:-2
%~ by:3
%~ extra:7
%~ flak:3
%~ for:9
%~ in:-2
%~ is:-2
%~ less:-4
%~ liquid:7
%~ of:-1
%~ on:4
%~ or:3
%~ over:5
%~ pure:-5
%~ purity:-3
%~ sf:-5
%~ so:6
%~ solution:-3
%~ superfat:3
%~ with:5
%~=:-5
%~A:4
%~F:-5
%~K:-7
%~N:-1
%~W:-4
%~X:1
0%:-7
00:-5
0:4
0<:-3
0=:1
0>:-2
0A:-1
0C:5
0F:-1
0I:4
0K:-8
0M:1
0N:4
0S:-4
0T:1
0W:4
0X:-5
0b:-2
0d:-3
0l:-1
0r:-2
0t:-6
0v:-8
0w:-4
0~ =:-8
0~ ?:2
0~ a:-10
0~ after:1
0~ all:6
0~ are:2
0~ as:6
0~ at:-1
0~ b:-8
0~ bar:-6
0~ bars:-5
0~ batch:-3
0~ because:8
0~ before:4
0~ big:-4
0~ block:2
0~ both:-4
0~ bottl:-5
0~ bucket:-5
0~ but:-2
0~ c:-4
0~ cakes:-2
0~ can:-5
0~ caviti:-6
0~ children:-7
0~ comment:-3
0~ cubes:-1
0~ cut:2
0~ degre:-4
0~ drops:-6
0~ empty:2
0~ evening:-4
0~ except:5
0~ famili:-6
0~ fat:-3
0~ fats:-9
0~ for:-7
0~ from:3
0~ full:-6
0~ gives:-5
0~ goats:-8
0~ goes:-4
0~ good:-1
0~ group:-6
0~ guest:-4
0~ had:-9
0~ i:5
0~ if:-3
0~ in:-2
0~ into:4
0~ is:2
0~ it:-1
0~ jars:-1
0~ kitchen:-5
0~ lather:-3
0~ left:-7
0~ like:-3
0~ little:-7
0~ loaf:-3
0~ loav:-1
0~ lyes:-7
0~ made:-7
0~ more:-6
0~ my:5
0~ n:-1
0~ night:-5
0~ no:4
0~ not:5
0~ of:3
0~ off:-1
0~ oil:-6
0~ oils:-4
0~ on:8
0~ once:3
0~ one:-3
0~ or:4
0~ out:3
0~ p:-7
0~ packet:-1
0~ packs:1
0~ pcs:-5
0~ people:-8
0~ per:-5
0~ percent:7
0~ piec:-2
0~ please:9
0~ plus:1
0~ pour:-6
0~ pupil:-2
0~ right:-3
0~ round:-1
0~ scal:-7
0~ she:-1
0~ silicone:-2
0~ since:3
0~ slic:-5
0~ small:-7
0~ so:-7
0~ someth:1
0~ spoon:1
0~ still:-8
0~ superfat:7
0~ that:-3
0~ thats:2
0~ the:4
0~ then:4
0~ thing:-7
0~ this:3
0~ times:-3
0~ tins:-4
0~ to:2
0~ towel:-6
0~ until:-8
0~ w:5
0~ was:-4
0~ weigh:-3
0~ went:4
0~ were:2
0~ when:5
0~ which:-3
0~ winter:-2
0~ with:-7
0~ x:2
0~ zap:-5
0~ ×:-7
0~0:-2
0~A:-6
0~F:-4
0~N:-2
0~S:2
0~W:-3
0~X:5
0~b:-11
0~t:-5
0~w:-4
<%:3
<0:-2
<:3
<<:-3
<=:-4
<>:-3
<A:5
<C:2
<F:2
<I:-9
<K:9
<L:4
<N:-3
<S:-2
<W:-6
<X:1
<d:-5
<l:-8
<v:-3
<w:-1
<~ +:-7
<~ and:5
<~ because:3
<~ i:-6
<~ in:-2
<~ less:-4
<~ more:8
<~ of:2
<~ short:2
<~ so:-2
<~ the:4
<~A:-1
<~C:2
<~F:3
<~I:-4
<~L:-5
<~S:-2
<~W:-8
<~X:-6
=%:-11
=0:6
=:-4
=<:-4
==:-3
=>:-2
=A:-2
=F:-4
=I:-2
=K:-1
=L:-1
=N:5
=S:-1
=W:-2
=X:-1
=b:-3
=d:-2
=e:-2
=r:-5
=t:-3
=v:-7
=w:-4
=~ +:-5
=~ ::4
=~ =:-7
=~ after:-1
=~ and:-7
=~ as:3
=~ at:-4
=~ bag:-8
=~ block:-7
=~ check:-2
=~ clean:-3
=~ cold:-1
=~ did:-1
=~ dissolv:-6
=~ does:-2
=~ for:-4
=~ free:-7
=~ from:-3
=~ goes:-2
=~ good:-1
=~ i:-6
=~ im:-8
=~ in:-3
=~ into:-4
=~ it:-6
=~ melt:-5
=~ mk:-5
=~ my:1
=~ no:-5
=~ not:-12
=~ of:-3
=~ ok:-2
=~ on:-3
=~ so:-5
=~ superfat:-7
=~ that:-8
=~ then:-4
=~ too:-3
=~ with:3
=~%:-6
=~0:6
=~<:-5
=~=:-2
=~A:-3
=~F:-3
=~L:-3
=~W:-2
=~X:-3
=~t:-1
>%:-2
>0:-7
>:-3
><:-3
>=:-2
>>:-6
>A:-2
>F:-3
>K:-5
>W:-4
>e:-9
>l:-5
>t:-2
>w:-4
>~ i:-7
>~ in:-2
>~ is:-5
>~ of:-4
>~ oils:-1
>~ so:-5
>~ the:-5
>~A:-4
>~F:3
>~L:-2
>~W:-3
A%:4
A0:5
A<:1
A=:-2
A>:-1
AA:1
AB:4
AC:-8
AF:4
AI:-7
AL:1
AN:-8
AS:-3
AW:-2
AX:-1
Ab:1
Ad:1
Ae:2
Al:-8
Ar:-9
At:-3
Aw:-4
A~ +:-2
A~ ::5
A~ =:1
A~ ?:-5
A~ a:-7
A~ about:-4
A~ alright:-5
A~ and:-3
A~ as:7
A~ at:-4
A~ bag:3
A~ be:-2
A~ because:-6
A~ before:-6
A~ but:-2
A~ came:-6
A~ check:-7
A~ comes:4
A~ cool:2
A~ correct:-9
A~ dissolv:-3
A~ does:-7
A~ down:4
A~ figure:3
A~ fine:-3
A~ fit:-7
A~ fits:-4
A~ for:1
A~ from:7
A~ g:-8
A~ gets:-6
A~ goes:-9
A~ good:-7
A~ got:7
A~ had:3
A~ half:-7
A~ has:3
A~ heavy:2
A~ here:6
A~ i:5
A~ if:3
A~ into:-4
A~ is:4
A~ it:5
A~ its:5
A~ jug:-4
A~ left:-4
A~ like:-5
A~ look:2
A~ looks:-2
A~ no:-8
A~ not:5
A~ of:1
A~ ok:-6
A~ okay:-4
A~ on:-6
A~ one:-7
A~ only:2
A~ or:-5
A~ over:-7
A~ paste:3
A~ per:3
A~ please:-7
A~ pls:-4
A~ pot:5
A~ ready:-7
A~ real:-9
A~ right:-5
A~ row:-3
A~ sensible:-5
A~ she:-8
A~ slow:-6
A~ so:1
A~ soap:-3
A~ sprinkl:-3
A~ still:-9
A~ stuck:-1
A~ that:-9
A~ the:-1
A~ then:-1
A~ there:2
A~ to:-1
A~ too:-9
A~ tub:5
A~ up:5
A~ was:-2
A~ weigh:7
A~ went:1
A~ where:3
A~ which:-1
A~ wrong:-4
A~ you:5
A~%:-4
A~<:3
A~=:-2
A~>:-6
A~A:-3
A~F:-3
A~L:4
A~d:-5
A~e:-3
A~r:-5
A~t:5
A~v:-2
B0:-4
B:3
BF:3
B~ and:-10
B~ in:-1
B~ so:-6
C%:-7
C:5
C<:1
CA:5
Cv:4
C~ at:5
C~ in:5
C~ is:-4
C~%:-7
C~<:-4
C~w:-1
F%:1
F:1
F<:4
F=:-3
F>:-1
FA:-3
FB:6
FI:-5
FK:-3
FN:5
FS:-10
FT:-6
FU:2
FX:3
Fb:1
Fd:-3
Fe:1
Fl:-6
Fr:7
Ft:-4
Fv:-7
Fw:2
F~ +:2
F~ ::3
F~ =:2
F~ ?:-10
F~ a:1
F~ about:-1
F~ add:3
F~ after:3
F~ again:1
F~ all:2
F~ alone:-4
F~ altogether:-2
F~ and:1
F~ are:4
F~ as:5
F~ at:2
F~ back:5
F~ bar:-3
F~ bars:-12
F~ batch:-7
F~ because:6
F~ beef:-5
F~ before:-3
F~ block:-2
F~ bottle:-7
F~ but:-2
F~ by:-1
F~ can:-4
F~ clean:-3
F~ cold:-5
F~ comes:-8
F~ could:7
F~ count:-8
F~ does:-5
F~ down:8
F~ extra:5
F~ figure:5
F~ fills:-9
F~ first:-6
F~ for:-3
F~ free:-2
F~ from:-5
F~ g:-7
F~ gent:-6
F~ gives:-7
F~ go:-4
F~ goes:-8
F~ gone:-2
F~ got:8
F~ grams:-6
F~ had:-2
F~ half:-3
F~ has:-6
F~ here:4
F~ i'd:4
F~ i:2
F~ if:-8
F~ im:7
F~ in:2
F~ instead:4
F~ into:-4
F~ isnt:-1
F~ it:6
F~ its:2
F~ ive:8
F~ jar:-3
F~ jug:4
F~ keeps:-5
F~ l:-3
F~ last:-11
F~ left:1
F~ like:1
F~ line:7
F~ look:3
F~ looks:-4
F~ makes:-4
F~ may:-1
F~ melt:-11
F~ melts:-5
F~ my:3
F~ n:3
F~ never:9
F~ next:-6
F~ no:-8
F~ not:2
F~ now:8
F~ on:-3
F~ once:-6
F~ one:-10
F~ only:1
F~ or:-8
F~ out:2
F~ over:-5
F~ oyl:-4
F~ packet:8
F~ paste:-6
F~ plus:1
F~ ran:1
F~ read:1
F~ real:-7
F~ render:-6
F~ right:-5
F~ rspo:-7
F~ says:-3
F~ second:-1
F~ sets:-4
F~ should:2
F~ since:1
F~ smell:-9
F~ so:4
F~ soap:-6
F~ soaps:-6
F~ stand:-5
F~ stay:8
F~ stays:-2
F~ still:1
F~ stirr:-2
F~ strain:3
F~ stuck:2
F~ takes:-7
F~ than:3
F~ that:-6
F~ thats:3
F~ the:-2
F~ there:3
F~ thicken:-8
F~ this:-1
F~ through:-2
F~ tin:-2
F~ to:3
F~ together:3
F~ too:-6
F~ trac:-6
F~ tub:-5
F~ turn:7
F~ twice:4
F~ until:6
F~ up:2
F~ used:-4
F~ w:2
F~ warm:-6
F~ was:-2
F~ weigh:-5
F~ well:1
F~ went:-2
F~ were:-2
F~ when:-1
F~ which:-1
F~ while:4
F~ will:-6
F~ would:2
F~ wouldnt:-1
F~ you:5
F~0:4
F~<:2
F~=:-2
F~>:-1
F~A:-3
F~F:-4
F~N:5
F~W:-2
F~d:-4
F~e:-1
F~t:-10
I0:2
I:2
I<:1
IA:-2
IL:4
Ib:-6
Id:4
Iw:-6
I~ +:-3
I~ ::2
I~ and:-1
I~ first:-5
I~ had:5
I~ in:-6
I~ is:-2
I~ it:6
I~ round:-8
I~ so:-6
I~ tray:1
I~ was:7
I~<:2
K%:-7
K0:-11
K:2
K<:-1
K=:-1
K>:-7
KA:-7
KF:-8
KL:-3
KW:-3
Kd:-7
Kr:2
Kt:-3
K~ ::-6
K~ and:-5
K~ g:-6
K~ in:-3
K~ into:3
K~ is:2
K~ mixed:4
K~ my:-8
K~ of:-5
K~ on:4
K~ was:-4
K~%:-8
K~>:-6
K~A:-2
K~r:-1
L0:-1
L:2
L<:-5
L>:3
LA:-6
LI:4
LL:3
LN:3
LS:6
LU:-4
LW:3
LX:-4
Lb:1
Le:2
Ll:-6
Lt:-2
Lv:-5
L~ ::-11
L~ a:1
L~ after:-1
L~ and:-1
L~ bar:-6
L~ bars:-4
L~ batch:-7
L~ because:2
L~ boil:3
L~ flat:3
L~ from:10
L~ frozen:-8
L~ goes:-5
L~ i:-2
L~ in:-1
L~ instead:-8
L~ it:-1
L~ no:-10
L~ of:8
L~ on:5
L~ out:7
L~ over:2
L~ pot:-6
L~ same:9
L~ so:2
L~ soap:-7
L~ stage:-4
L~ straight:-1
L~ thaw:-5
L~ the:4
L~ to:2
L~ towel:2
L~ was:4
L~ went:2
L~ which:7
L~ with:4
L~0:-2
L~=:-1
L~>:-1
L~X:-4
L~b:8
L~l:-9
L~t:-3
L~w:1
M0:3
M:3
MA:4
M~ and:-4
M~ in:4
M~ is:2
M~ soap:-8
N0:4
N:10
N<:-2
NA:-4
NF:1
NL:2
NN:-2
Nb:4
Nl:1
Nt:-8
Nw:3
N~ after:-1
N~ and:-11
N~ as:2
N~ at:-5
N~ because:1
N~ from:10
N~ i:8
N~ if:2
N~ in:1
N~ instead:-2
N~ is:-1
N~ it:9
N~ or:-7
N~ same:7
N~ since:4
N~ so:1
N~ that:-2
N~ the:7
N~ to:5
N~ was:-5
N~ where:8
N~ which:-1
N~ would:-7
N~N:-2
S%:-7
S0:-4
S:-5
S<:-3
SF:-9
SL:-6
SN:7
SS:-4
SX:-2
Sd:-1
St:-5
Sv:-5
Sw:-4
S~ ::-3
S~ a:-4
S~ and:-1
S~ as:-3
S~ at:-6
S~ because:3
S~ blend:-4
S~ fades:-3
S~ for:-8
S~ from:-5
S~ goes:-5
S~ i:-8
S~ in:1
S~ is:5
S~ leav:-6
S~ mould:-7
S~ no:-2
S~ once:-3
S~ only:6
S~ pour:-2
S~ powder:-5
S~ smell:-6
S~ spots:-5
S~ the:-6
S~ then:-3
S~ was:1
S~ when:-6
S~ which:-4
S~0:-5
S~<:-3
S~S:-4
S~w:-5
T0:-3
T:-10
TF:-2
T~ of:-4
T~ oils:-3
U:5
UF:2
Ut:-3
U~ and:-1
U~ i:-7
U~ in:3
U~ look:1
U~ stage:-3
W%:-7
W0:6
W:1
W<:5
W=:-3
W>:-2
WC:1
WF:-4
WI:-1
WL:6
WS:-2
WW:3
WX:1
Wb:1
Wd:-5
We:-4
Wl:-1
Wt:1
Wv:-5
Ww:-1
W~ +:-3
W~ =:-7
W~ ?:-10
W~ a:6
W~ after:-3
W~ all:-3
W~ and:-3
W~ as:3
W~ at:4
W~ because:4
W~ before:3
W~ boil:-3
W~ but:1
W~ by:-1
W~ clear:-5
W~ does:-6
W~ down:3
W~ first:-6
W~ for:-5
W~ from:-7
W~ g:-8
W~ got:-4
W~ here:-5
W~ i:6
W~ into:-8
W~ is:1
W~ it:3
W~ let:-4
W~ like:1
W~ looks:-6
W~ makes:-8
W~ never:-4
W~ on:-9
W~ or:7
W~ out:-9
W~ outdoor:-1
W~ outside:-1
W~ since:5
W~ so:-2
W~ that:-5
W~ the:2
W~ to:-8
W~ too:7
W~ wait:-1
W~ was:8
W~ went:4
W~ when:4
W~ which:4
W~ would:-5
W~0:2
W~<:1
W~=:-3
W~A:-5
W~r:-5
W~t:-2
W~v:-3
X%:1
X0:-1
X:-3
X<:2
X=:-5
X>:-2
XA:-2
XC:-7
XF:-3
XL:3
XN:8
XS:-2
XW:2
XX:-1
Xl:4
Xt:-3
Xv:-3
X~ ::-2
X~ ?:-5
X~ a:-8
X~ at:-6
X~ bar:2
X~ bars:-7
X~ came:-5
X~ dissolv:-10
X~ fine:-4
X~ for:2
X~ from:-7
X~ goes:-3
X~ ground:-7
X~ i:3
X~ is:-6
X~ it:-8
X~ makes:-1
X~ no:-5
X~ of:-8
X~ on:-1
X~ so:-4
X~ the:-5
X~ this:4
X~ to:-9
X~ was:3
X~ went:1
X~0:3
X~<:-7
X~L:1
X~W:-2
X~v:-3
X~w:-5
^ *:-7
^ ::4
^ =:-6
^ a:-1
^ about:12
^ add:2
^ added:9
^ after:1
^ all:4
^ also:-4
^ alway:4
^ am:-5
^ an:4
^ and:-8
^ any:-7
^ anyone:-9
^ anyth:-4
^ are:-4
^ as:4
^ ask:-11
^ attempt:-5
^ b:-7
^ back:-6
^ bar:-5
^ bars:-7
^ base:-4
^ basic:-4
^ batch:-8
^ be:-7
^ because:-1
^ been:-5
^ before:-9
^ between:5
^ big:-7
^ bit:3
^ blend:-7
^ blender:-7
^ blue:-5
^ boil:4
^ bonsoir:-4
^ book:-9
^ both:-9
^ bottle:9
^ bought:-7
^ box:-4
^ bring:-2
^ bubbl:-7
^ but:-10
^ by:-5
^ c:-5
^ came:1
^ cant:-1
^ castile:-6
^ chang:4
^ check:-10
^ christma:-3
^ clear:1
^ cold:-2
^ combine:-3
^ comment:-2
^ confetti:-4
^ cook:-2
^ cool:-2
^ copi:-4
^ correct:2
^ correction:10
^ cost:-9
^ could:-1
^ couldnt:10
^ cousin:-1
^ cover:-4
^ crock:-3
^ crockpot:-5
^ cure:-4
^ cured:-5
^ cut:-2
^ d:-5
^ dad:2
^ dads:-5
^ date:-2
^ day:-8
^ dear:2
^ did:-3
^ didnt:3
^ dissolv:-5
^ dissolve:2
^ do:-3
^ does:-2
^ dog:3
^ done:-4
^ dont:-12
^ doubl:2
^ dropp:-2
^ e:-4
^ each:1
^ earlier:-7
^ edit:1
^ ended:3
^ enough:-7
^ entry:2
^ even:-2
^ every:1
^ everyone:-6
^ everyth:4
^ expect:-7
^ export:-4
^ f:-6
^ fat:-7
^ fats:-9
^ fill:-7
^ fills:-4
^ fine:-3
^ first:-1
^ for:4
^ forgot:-2
^ found:7
^ freeze:-6
^ friend:-3
^ from:-3
^ g:-6
^ gave:-4
^ gel:-7
^ gell:2
^ give:-7
^ glov:-6
^ goat:-7
^ goes:-4
^ goggl:-5
^ gonna:6
^ good:-4
^ got:-8
^ grams:-6
^ gran:2
^ grandad:-1
^ grandma:-5
^ grandmother:-2
^ grandpa:3
^ granny:-5
^ grans:-1
^ grat:-7
^ greeting:-5
^ had:4
^ half:1
^ hallo:-2
^ hand:1
^ handout:-4
^ hard:-5
^ has:-6
^ have:-8
^ he:-5
^ heat:-5
^ hello:-3
^ help:5
^ her:1
^ here:-8
^ heres:-6
^ hers:-7
^ hes:-6
^ hey:-6
^ hi:1
^ his:-6
^ hiya:1
^ hola:-2
^ hope:-2
^ hot:2
^ how:-9
^ hp:-4
^ hubby:2
^ i'd:3
^ i:-2
^ if:-10
^ ignore:1
^ im:3
^ in:-6
^ ingredient:-3
^ instead:11
^ into:-2
^ is:-7
^ it:1
^ item:-3
^ itll:-3
^ its:-4
^ ive:-7
^ jug:6
^ just:1
^ keep:4
^ kids:-7
^ kind:1
^ kitchen:-2
^ knock:1
^ label:-9
^ last:-4
^ lather:-5
^ laundry:-5
^ leave:-2
^ left:1
^ leftover:-7
^ lid:1
^ like:-2
^ line:-3
^ liquid:-5
^ list:-7
^ log:-5
^ lol:-6
^ long:-3
^ look:-4
^ looks:-4
^ lost:-6
^ lot:-5
^ love:-3
^ lye's:6
^ m:-4
^ made:3
^ make:7
^ makes:-3
^ many:-4
^ market:-6
^ meanwhile:-1
^ measur:-1
^ melt:-1
^ mind:-2
^ mine:-7
^ mines:3
^ mix:-7
^ mixed:-3
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
^ need:-5
^ nephew:1
^ never:-4
^ new:-3
^ next:-11
^ nice:-5
^ no:5
^ nobody:-2
^ none:-8
^ not:2
^ note:1
^ notebook:-6
^ notes:-2
^ noth:-10
^ number:-2
^ o:-5
^ oat:-5
^ of:1
^ oil:-5
^ oils:-3
^ ok:-3
^ okay:-5
^ old:-3
^ on:-7
^ once:-3
^ one:1
^ only:4
^ or:-4
^ order:1
^ other:-5
^ our:-3
^ ours:-5
^ out:1
^ outside:-5
^ oven:-3
^ page:-5
^ passt:-3
^ past:-3
^ paste:1
^ people:-5
^ per:2
^ ph:-5
^ phase:-3
^ phone:-3
^ photo:-9
^ plain:-6
^ plan:-4
^ plann:-8
^ please:2
^ pls:-6
^ plus:3
^ post:4
^ pot:5
^ pour:-1
^ prep:-2
^ press:-4
^ pretty:4
^ print:-9
^ ps:4
^ pull:6
^ purity:5
^ put:-4
^ q:-6
^ question:-7
^ quick:-4
^ rain:4
^ ran:4
^ re:-4
^ read:4
^ reader:1
^ ready:-4
^ recipe:-6
^ remark:-7
^ render:-2
^ replac:-1
^ rest:-3
^ result:-4
^ right:-6
^ room:-6
^ safe:-4
^ same:1
^ sat:-4
^ scal:3
^ scale:7
^ scoop:-4
^ scrap:4
^ second:1
^ sells:-4
^ set:-6
^ sf:-1
^ shav:-3
^ shave:-3
^ she:-6
^ shes:-2
^ should:-7
^ since:4
^ sis:1
^ slow:-5
^ smell:-8
^ snow:2
^ so:-5
^ soap:-7
^ soft:-4
^ sold:-7
^ some:2
^ someone:-3
^ somewhere:1
^ sorry:1
^ sound:-4
^ source:5
^ spill:-2
^ split:2
^ spoon:-3
^ sry:-8
^ stamp:-6
^ start:-6
^ stick:-6
^ still:-2
^ stir:-4
^ stirr:-5
^ strain:2
^ student:3
^ subject:-3
^ sum:-3
^ sunday:-8
^ superfat:2
^ swap:3
^ swapp:3
^ swirl:-9
^ switch:-4
^ take:-4
^ tare:1
^ teacher:1
^ tell:-9
^ test:-5
^ text:-6
^ thank:-7
^ thats:-5
^ the:-2
^ then:-5
^ ther:-6
^ there:-1
^ these:-1
^ they:-9
^ third:-1
^ this:3
^ those:3
^ thought:-3
^ threw:7
^ thx:-4
^ tip:-4
^ title:-4
^ tonight:-4
^ too:-2
^ took:2
^ total:-6
^ towel:-4
^ trac:-2
^ trace:-5
^ translat:-3
^ tried:-4
^ try:-4
^ tub:-6
^ turn:-2
^ unit:-3
^ unmould:-5
^ update:2
^ use:2
^ used:4
^ using:-7
^ v:-1
^ version:-10
^ very:-7
^ wait:4
^ want:2
^ warm:-5
^ was:-4
^ wash:-8
^ we:1
^ wed:1
^ week:-4
^ weigh:-5
^ weight:-8
^ well:-5
^ went:2
^ were:1
^ weve:-6
^ what:-9
^ whats:-7
^ when:-6
^ where:-1
^ which:-8
^ while:-1
^ who:-5
^ whoever:-3
^ whole:3
^ whos:-3
^ why:-8
^ will:-4
^ with:-5
^ work:-4
^ worksheet:-4
^ workshop:-3
^ would:-2
^ wrapp:-8
^ write:3
^ written:4
^ wrote:-4
^ x:-9
^ years:3
^ yes:-10
^ yesterday:-5
^ yield:2
^ you:-8
^ youll:2
^ zap:-3
^%:-6
^0:-5
^=:-6
^>:-10
^C:-12
^I:-2
^K:-3
^L:-1
^M:1
^N:-1
^S:-8
^T:-6
^U:2
^X:-4
^d:-3
^e:-10
^l:8
^r:3
^w:-2
any:-2
b%:-3
b0:3
b:2
bA:4
bF:-3
bL:8
bN:6
bW:9
bb:-5
bt:-5
bw:-1
b~ ::-1
b~ ?:8
b~ a:-5
b~ after:-6
b~ and:-5
b~ as:-6
b~ bars:-6
b~ because:-4
b~ before:3
b~ but:6
b~ by:6
b~ fine:-3
b~ for:6
b~ i:2
b~ if:8
b~ in:-1
b~ is:6
b~ it:-2
b~ my:4
b~ not:-6
b~ of:1
b~ on:-5
b~ or:8
b~ right:-8
b~ still:3
b~ the:5
b~ then:7
b~ too:1
b~ was:5
b~ x:-7
b~0:-10
b~L:2
d%:-5
d0:-8
d:-6
d=:-3
dA:-5
dF:-9
dI:-6
dK:-4
dL:-7
dS:-1
dX:-2
db:-3
dd:-4
dt:-1
dv:-1
dw:-1
d~ ::-1
d~ ?:-3
d~ and:-5
d~ at:-3
d~ blend:-1
d~ both:-2
d~ by:-5
d~ for:-5
d~ here:-2
d~ in:-4
d~ it:-5
d~ no:-4
d~ of:-1
d~ oils:-1
d~ or:-3
d~ pour:-2
d~ so:-8
d~ stirr:-2
d~ the:-6
d~ then:-6
d~ trace:-1
d~ when:-7
d~A:-6
d~t:-1
e%:-6
e0:4
e:3
e=:-1
e>:-4
eA:-2
eL:1
eN:8
eW:-2
eX:5
eb:-1
ee:-5
et:4
e~ +:4
e~ and:-4
e~ as:3
e~ but:10
e~ for:-1
e~ g:-10
e~ grams:-6
e~ in:7
e~ is:6
e~ minus:7
e~ of:3
e~ on:-4
e~ or:7
e~ was:9
e~ with:12
e~A:-4
e~F:-4
e~W:-3
l%:-5
l0:3
l:-3
l=:-5
l>:-3
lA:2
lF:-8
lL:-4
lN:2
lW:-3
lX:-5
ll:-5
long:1
lt:1
lv:-7
lw:-4
l~ and:-6
l~ as:-7
l~ for:3
l~ i:-6
l~ in:-8
l~ is:-3
l~ of:-2
l~ on:1
l~ right:-1
l~ the:-6
l~ was:-6
l~ went:1
l~ with:1
l~L:-9
l~t:-6
no figure:-6
no name:-6
r%:-7
r0:2
r:3
r>:-5
rA:1
rF:8
rK:3
rW:-3
rt:-5
r~ as:-10
r~ by:2
r~K:3
short:-6
t%:-5
t0:-2
t:-5
t<:6
t=:-4
t>:5
tA:-2
tF:-3
tK:-3
tL:-2
tN:-5
tS:-2
tU:-5
tX:-5
tb:-2
td:-1
te:-10
tl:-8
tt:-3
tv:-1
tw:-3
t~ ::1
t~ ?:-7
t~ a:-4
t~ add:-2
t~ added:1
t~ after:-7
t~ ago:-8
t~ all:-6
t~ and:-2
t~ at:-4
t~ because:-9
t~ before:3
t~ blend:-3
t~ both:-2
t~ but:2
t~ by:-6
t~ can:-3
t~ cook:-3
t~ cover:-2
t~ cure:-1
t~ cured:-2
t~ cut:-1
t~ day:-1
t~ did:-4
t~ each:-1
t~ edges:-4
t~ flat:-5
t~ from:-6
t~ gel:-3
t~ i:-3
t~ if:-5
t~ in:-10
t~ into:-3
t~ is:-7
t~ it:-6
t~ its:2
t~ ive:-7
t~ later:-9
t~ lid:-6
t~ lined:-1
t~ loaf:-3
t~ long:-2
t~ makes:-1
t~ mash:-2
t~ melt:4
t~ mine:-7
t~ mix:-5
t~ mould:-2
t~ my:-4
t~ no:-4
t~ now:-7
t~ of:1
t~ off:-3
t~ oils:-2
t~ old:2
t~ on:-7
t~ or:-4
t~ paste:-7
t~ pot:3
t~ pour:-4
t~ ready:-4
t~ rest:-7
t~ since:-6
t~ so:-3
t~ still:-6
t~ stir:-1
t~ stirr:-5
t~ the:-5
t~ then:-5
t~ they:-3
t~ till:-1
t~ to:-6
t~ trace:-5
t~ under:-1
t~ unmould:-3
t~ until:-4
t~ used:-2
t~ wait:-4
t~ was:-8
t~ we:-7
t~ weigh:-2
t~ when:-5
t~ which:-2
t~ with:2
t~ yes:1
t~ zap:-1
t~0:-1
t~=:-1
t~A:-4
t~F:-3
t~K:-2
t~L:-2
t~S:-1
t~U:-4
t~W:1
t~X:-6
t~b:-5
t~d:-2
t~t:-5
v0:-4
v:1
v=:3
vA:3
vF:-3
vK:9
vL:3
vN:7
vS:-3
vW:6
vX:-3
vb:-3
vd:-1
vl:-7
vt:3
vv:-1
vw:1
v~ a:-5
v~ and:-4
v~ at:-3
v~ bottle:-1
v~ can:-11
v~ for:-5
v~ i:2
v~ in:-3
v~ is:-6
v~ of:2
v~ one:-4
v~ or:-1
v~ pot:-9
v~ so:-3
v~ to:6
v~C:3
v~S:-1
v~W:2
v~X:-3
w%:-5
w0:1
w:-1
w<:-11
w=:-6
w>:3
wA:-1
wC:6
wI:-3
wL:-2
wN:1
wS:-6
wW:-2
wX:2
wb:2
wd:4
wl:-12
wt:-9
wv:-1
w~ a:3
w~ after:-7
w~ and:-1
w~ as:-7
w~ at:-7
w~ cubes:-6
w~ dissolv:1
w~ empty:-2
w~ for:-2
w~ fresh:-6
w~ from:-8
w~ goes:-7
w~ i:-1
w~ in:-4
w~ instead:-13
w~ is:1
w~ it:-1
w~ loaf:-4
w~ more:-3
w~ mould:2
w~ no:-2
w~ of:2
w~ on:-3
w~ one:-2
w~ or:-3
w~ out:-8
w~ per:3
w~ so:-2
w~ steps:1
w~ the:-5
w~ to:-4
w~ together:-9
w~ too:1
w~ was:4
w~ wet:-7
w~0:2
w~C:3
w~I:1
w~L:-9
w~N:-1
w~S:-5
w~X:-6
w~w:-3`;
