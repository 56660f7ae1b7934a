/** What each sign of a note weighs for its bearing on the pot and against it, in tenths of a logit: learned, `npm run generate:bearing`. */
export const weights = ` *:-6
 *~A:-6
 *~F:-4
 +:1
 +~ a:-6
 +~0:4
 +~<:-2
 +~=:-4
 +~A:-5
 +~F:-8
 +~W:-6
 .:7
 .~%:4
 .~0:5
 ::1
 :~ a:4
 :~ about:-4
 :~ all:6
 :~ as:-2
 :~ do:-2
 :~ does:-2
 :~ g:-3
 :~ goggl:-4
 :~ good:-7
 :~ half:7
 :~ i'd:6
 :~ i:4
 :~ in:3
 :~ is:-8
 :~ it:2
 :~ ive:2
 :~ kitchen:2
 :~ me:-7
 :~ melt:-10
 :~ no:3
 :~ none:8
 :~ one:-5
 :~ re:-2
 :~ soap:-6
 :~ the:-1
 :~ too:3
 :~ weigh:2
 :~ what:1
 :~ why:-3
 :~ winter:-2
 :~ with:1
 :~ yes:4
 :~%:-6
 :~0:-6
 :~<:-1
 :~=:-5
 :~>:-8
 :~A:-1
 :~L:-1
 :~N:2
 :~S:-5
 :~T:-3
 :~W:-4
 :~X:-1
 :~b:-6
 :~d:-3
 :~e:1
 :~l:-9
 :~t:-4
 :~v:-6
 :~w:3
 =:-2
 =~ =:-6
 =~0:-4
 =~=:-5
 =~>:-2
 =~e:2
 =~l:-8
 ?:-3
 a:-2
 about:-3
 about~ a:6
 about~ an:-7
 about~ it:-1
 about~ right:-2
 about~ superfat:-8
 about~ the:1
 about~ to:-5
 about~%:-3
 about~0:-1
 about~<:4
 about~>:-7
 about~F:-5
 about~b:4
 about~d:-2
 about~t:-7
 about~v:3
 about~w:2
 above:3
 above~ is:3
 above~d:-6
 abt:-7
 accident:3
 accord:6
 accord~ to:6
 account:6
 acros:5
 acros~ the:7
 actual:8
 actual~N:3
 add:1
 added:7
 added~ a:1
 added~ it:4
 added~ the:2
 added~<:-7
 added~=:-9
 added~v:6
 added~w:4
 adds:-10
 adds~ up:-8
 add~ a:2
 add~ it:-8
 add~ the:-5
 add~ to:3
 add~ up:1
 add~<:-4
 add~=:-5
 add~F:3
 add~w:-6
 advice:2
 afresh:-8
 afternoon:1
 after~ a:-3
 after~ an:1
 after~ cook:3
 after~ cure:-1
 after~ i:4
 after~ it:7
 after~ last:1
 after~ pour:5
 after~ strain:2
 after~ that:-6
 after~ the:-1
 after~ this:-8
 after~ weigh:1
 after~0:-7
 after~t:-5
 again:-2
 against:4
 against~ the:5
 again~ ::2
 again~ ?:3
 again~ after:-2
 again~ and:-10
 again~ for:-5
 again~ so:-1
 again~ with:7
 age:-9
 ages:-2
 ages~ to:-4
 ago:-10
 ago~ and:-2
 agre:-4
 agree:-6
 agree~ with:-4
 ahead:2
 aim:6
 aim~ at:2
 aim~ for:6
 air:-3
 air~ cupboard:-1
 aisle:3
 aleppo:-7
 alike:6
 alkali:-6
 all:1
 allergen:-6
 allergic:8
 allergic~ to:-8
 allergy:6
 allotment:-5
 allow:-6
 all~ ::-4
 all~ and:5
 all~ at:3
 all~ but:8
 all~ by:-8
 all~ day:-7
 all~ down:8
 all~ fats:-10
 all~ first:1
 all~ g:-9
 all~ good:-8
 all~ grams:-8
 all~ i:3
 all~ in:-8
 all~ is:-8
 all~ my:-5
 all~ of:-2
 all~ on:-7
 all~ over:-5
 all~ right:-9
 all~ that:-2
 all~ the:-3
 all~ there:6
 all~ together:-8
 all~ told:-4
 all~ up:-3
 all~ week:2
 all~ weigh:-1
 all~0:2
 all~F:5
 all~L:-1
 all~W:-6
 all~b:-3
 all~e:8
 almost:1
 alone:-2
 along:9
 along~ the:-1
 along~ with:7
 already:7
 already~ dissolv:3
 already~ in:4
 already~ put:8
 already~ so:2
 alright:-4
 alright~ ?:-2
 also:3
 also~w:6
 alter:3
 although:2
 altogether:-8
 alu:-3
 aluminium:-3
 alway:-3
 alway~ did:-5
 alway~ said:-6
 alway~ with:5
 am:3
 american:-8
 ammonia:-5
 amount:3
 amount~ ?:-5
 amount~ g:-3
 amount~ of:-1
 am~ a:-6
 am~ from:-7
 am~ i:-2
 an:-1
 and~ a:-3
 and~ about:-5
 and~ add:-7
 and~ added:-2
 and~ again:3
 and~ all:9
 and~ an:-6
 and~ another:-10
 and~ at:-9
 and~ bang:-2
 and~ blend:-5
 and~ both:-2
 and~ by:1
 and~ call:2
 and~ came:-7
 and~ clear:-2
 and~ cool:3
 and~ do:2
 and~ does:-4
 and~ dont:-5
 and~ even:2
 and~ everyth:-1
 and~ fill:3
 and~ for:1
 and~ forgot:-5
 and~ found:3
 and~ gave:2
 and~ give:3
 and~ glov:-1
 and~ go:-3
 and~ goes:-1
 and~ goggl:-2
 and~ got:-9
 and~ half:-7
 and~ hard:-5
 and~ has:4
 and~ have:-4
 and~ he:3
 and~ her:-5
 and~ his:-8
 and~ honest:-6
 and~ how:-5
 and~ i'd:-1
 and~ i:6
 and~ if:5
 and~ in:-3
 and~ into:3
 and~ it:-4
 and~ itll:-5
 and~ its:-4
 and~ keep:-7
 and~ last:-4
 and~ left:4
 and~ let:-4
 and~ lost:-8
 and~ me:-3
 and~ melt:-5
 and~ mine:-1
 and~ mixed:-3
 and~ neither:3
 and~ never:-2
 and~ no:1
 and~ none:4
 and~ noth:-2
 and~ now:2
 and~ of:4
 and~ off:-4
 and~ once:-3
 and~ only:3
 and~ pour:2
 and~ put:4
 and~ said:-4
 and~ says:3
 and~ see:-4
 and~ she:-6
 and~ since:2
 and~ smell:-1
 and~ so:2
 and~ soap:-6
 and~ some:3
 and~ someth:6
 and~ sprinkle:-2
 and~ start:-4
 and~ stay:-3
 and~ stirr:-6
 and~ straight:-7
 and~ strain:-4
 and~ stuck:8
 and~ swear:-6
 and~ tell:-5
 and~ that:5
 and~ thats:-1
 and~ the:-3
 and~ then:4
 and~ ther:7
 and~ there:5
 and~ they:-6
 and~ this:6
 and~ those:1
 and~ tipp:8
 and~ to:-5
 and~ together:1
 and~ took:9
 and~ turn:-3
 and~ use:2
 and~ used:4
 and~ wait:-3
 and~ want:-5
 and~ wants:-5
 and~ warm:-1
 and~ was:4
 and~ we:1
 and~ weigh:2
 and~ went:-6
 and~ what:1
 and~ when:-2
 and~ whether:-6
 and~ white:-7
 and~ will:-3
 and~ with:-4
 and~ would:-5
 and~ yes:-2
 and~ you:-1
 and~%:-3
 and~0:1
 and~<:1
 and~=:-4
 and~A:-3
 and~F:-4
 and~L:-8
 and~N:6
 and~S:-5
 and~X:-1
 and~b:-10
 and~e:-2
 and~l:-7
 and~t:-6
 and~v:3
 and~w:-1
 another:3
 another~ day:-5
 another~0:8
 another~<:7
 another~t:-5
 another~v:-1
 another~w:-6
 answer:-5
 answer~ ::-6
 answer~ is:-2
 answer~ the:3
 any:-2
 anybody:2
 anyhow:-3
 anyone:-7
 anyone~ know:3
 anyone~ tried:-5
 anyth:-5
 anyth~ else:-1
 anyth~ in:-3
 anyth~ off:-4
 anyth~ wrong:-4
 anyway:-6
 anywhere:-1
 anywhere~ near:-6
 any~ more:1
 any~A:-3
 any~S:-7
 an~ earlier:-8
 an~ envelope:-6
 an~ extra:5
 an~ eye:-3
 an~ hour:-6
 an~ old:-5
 an~ older:-1
 an~I:3
 an~L:3
 apart:-10
 app:-2
 approx:2
 app~ puts:-3
 april:-1
 apron:-6
 are:-1
 arent:1
 are~ dry:5
 are~ for:3
 are~ from:-7
 are~ full:-1
 are~ in:-7
 are~ no:-6
 are~ not:-8
 are~ now:1
 are~ right:-5
 are~ still:-8
 are~ the:-4
 are~0:2
 are~=:-4
 are~F:-3
 argu:-8
 arithmetic:-7
 arm:-6
 around:-3
 around~ the:-4
 around~%:1
 around~0:-4
 around~d:-4
 around~w:-2
 arriv:-7
 as:3
 ash:-9
 ashes:-6
 ash~ and:-5
 ash~ on:-7
 aside:-3
 ask:-3
 asked:-7
 asked~ about:-6
 asked~ for:-3
 asked~ if:-7
 asked~ me:-1
 asked~ whether:-5
 asks:-8
 ask~ ::-3
 ask~ about:-8
 ask~ for:-5
 ask~ you:-5
 asleep:-7
 assay:8
 as~ a:1
 as~ above:-5
 as~ alway:7
 as~ anyth:2
 as~ before:6
 as~ ever:-7
 as~ far:-4
 as~ i:8
 as~ if:3
 as~ in:-1
 as~ is:6
 as~ it:-3
 as~ list:-4
 as~ long:-7
 as~ much:1
 as~ my:-2
 as~ on:-4
 as~ print:7
 as~ promis:-6
 as~ snow:-3
 as~ the:2
 as~ well:2
 as~ written:-5
 as~ you:-8
 as~%:-1
 as~0:3
 as~A:4
 as~F:-2
 as~I:-7
 as~L:-4
 as~X:-6
 at:-3
 ate:7
 attempt:-6
 attempt~0:-4
 attic:-3
 at~ a:-9
 at~ all:-3
 at~ around:-4
 at~ christma:-3
 at~ church:-7
 at~ day:-7
 at~ easter:-6
 at~ first:-8
 at~ half:-7
 at~ hour:1
 at~ it:5
 at~ least:-3
 at~ light:2
 at~ liquid:-3
 at~ me:4
 at~ minute:-3
 at~ my:-3
 at~ once:-4
 at~ our:-8
 at~ room:-4
 at~ rough:-1
 at~ school:-6
 at~ that:1
 at~ the:1
 at~ thin:-6
 at~ this:-6
 at~ trace:4
 at~ week:-6
 at~%:4
 at~0:-3
 at~<:7
 at~=:-9
 at~b:2
 at~d:-4
 at~e:4
 at~t:-10
 at~w:-4
 august:2
 aunt:-4
 aunti:-4
 auntie:-4
 aunts:5
 aunt~ in:-4
 aunt~ says:-7
 autumn:-10
 average:-3
 away:-2
 away~ and:2
 awful:-1
 a~ ::-8
 a~ bad:-10
 a~ bag:4
 a~ bar:-11
 a~ batch:-8
 a~ beginner:-3
 a~ big:-1
 a~ bigger:-3
 a~ bit:-2
 a~ blanket:-4
 a~ blend:8
 a~ bowl:-8
 a~ box:-6
 a~ brick:-1
 a~ bucket:-6
 a~ can:4
 a~ candle:-6
 a~ carton:-1
 a~ cheese:-5
 a~ chip:-7
 a~ class:-5
 a~ clean:2
 a~ cold:-4
 a~ corner:-9
 a~ crisp:-5
 a~ crumb:-7
 a~ crust:8
 a~ customer:-6
 a~ dark:-5
 a~ day:-2
 a~ different:-5
 a~ drawer:-6
 a~ dream:-3
 a~ drop:4
 a~ dry:-7
 a~ face:-7
 a~ fair:5
 a~ fami:-4
 a~ fan:-4
 a~ farm:2
 a~ few:4
 a~ fifth:2
 a~ finger:-9
 a~ fresh:-3
 a~ friend:-3
 a~ glass:3
 a~ glug:4
 a~ good:10
 a~ half:1
 a~ handful:-2
 a~ heap:8
 a~ hole:-4
 a~ hurry:-6
 a~ jam:-8
 a~ jug:-1
 a~ knob:6
 a~ ladle:4
 a~ lady:-5
 a~ library:-4
 a~ lid:-3
 a~ lidd:-2
 a~ light:-4
 a~ line:1
 a~ list:2
 a~ little:4
 a~ loaf:-4
 a~ lot:-5
 a~ lump:6
 a~ man:-3
 a~ milk:-2
 a~ minute:-6
 a~ mix:7
 a~ month:-11
 a~ mould:-5
 a~ mug:7
 a~ new:-8
 a~ nice:-2
 a~ night:-4
 a~ number:-1
 a~ page:-6
 a~ paper:-7
 a~ pdf:-3
 a~ photo:-8
 a~ pinch:-2
 a~ plain:-8
 a~ pot:1
 a~ proper:-5
 a~ puddle:5
 a~ quarter:7
 a~ question:-3
 a~ reader:-7
 a~ ready:3
 a~ recipe:-2
 a~ rock:-5
 a~ round:-2
 a~ row:-9
 a~ scale:-8
 a~ second:-3
 a~ sensible:-3
 a~ shade:-4
 a~ shoe:-3
 a~ shoebox:-3
 a~ silicone:-5
 a~ sink:-3
 a~ skin:-3
 a~ skull:-7
 a~ slip:2
 a~ slow:-5
 a~ small:1
 a~ smaller:-2
 a~ soap:-8
 a~ soft:-6
 a~ softer:-5
 a~ spatula:-7
 a~ spill:-1
 a~ splash:6
 a~ spoon:-3
 a~ spoonful:-3
 a~ steel:-8
 a~ stick:1
 a~ stir:-4
 a~ superfat:5
 a~ tenth:5
 a~ thermometer:-7
 a~ thin:-3
 a~ thing:-4
 a~ third:4
 a~ time:-8
 a~ tin:1
 a~ tiny:5
 a~ touch:-2
 a~ towel:-1
 a~ tray:-5
 a~ treat:-5
 a~ tub:-6
 a~ twentieth:3
 a~ typo:2
 a~ very:-7
 a~ video:-2
 a~ volcano:-4
 a~ warm:-5
 a~ water:-2
 a~ week:-7
 a~ wet:2
 a~ white:-2
 a~ whole:2
 a~ wire:-2
 a~ woman:-5
 a~ wooden:-1
 a~ year:-7
 a~ yes:-3
 a~ zap:-5
 a~%:2
 a~0:2
 a~<:6
 a~=:-6
 a~>:2
 a~A:-4
 a~F:-3
 a~K:-3
 a~L:-3
 a~N:7
 a~X:3
 a~b:4
 a~e:-8
 a~r:2
 a~t:-4
 a~v:-1
 a~w:6
 b:-1
 babcia:-5
 babi:-7
 baby:1
 back:-4
 background:-4
 back~ ::-4
 back~ a:2
 back~ and:3
 back~ at:-3
 back~ for:2
 back~ in:-7
 back~ of:-1
 back~ on:-6
 back~ out:4
 back~ till:9
 back~ to:-6
 back~ up:5
 bacon:-6
 badly:-2
 bag:6
 bags:-5
 bag~ of:4
 bag~ says:-2
 bak:-9
 bakery:-8
 bak~ paper:-8
 balanc:-3
 balance:2
 balanc~ ?:-3
 balcony:2
 balls:-5
 balm:-6
 bang:-7
 bang~ it:-4
 bar:-5
 bare:-6
 bare~ got:-2
 barn:-2
 barrel:-6
 bars:-9
 bars~ +:-6
 bars~ ::-5
 bars~ about:-1
 bars~ and:-5
 bars~ are:-4
 bars~ at:-2
 bars~ come:-4
 bars~ each:-6
 bars~ for:-6
 bars~ from:-4
 bars~ i:-2
 bars~ in:-4
 bars~ of:-7
 bars~ on:-5
 bars~ out:-5
 bars~ so:-3
 bars~ to:-4
 bars~ went:-6
 bars~ were:-6
 bars~ with:-8
 bars~0:-7
 bars~t:-3
 bars~w:-4
 bar~ ::-2
 bar~ ?:-6
 bar~ all:-4
 bar~ and:-2
 bar~ at:-3
 bar~ for:-7
 bar~ from:-6
 bar~ i:2
 bar~ in:-3
 bar~ is:3
 bar~ no:-2
 bar~ of:-7
 bar~ since:-3
 bar~ so:4
 bar~ with:4
 bar~0:-4
 base:-1
 basic:-5
 bastille:-7
 batch:-4
 batch~ ::-3
 batch~ and:-7
 batch~ but:3
 batch~ ever:2
 batch~ had:-3
 batch~ i:2
 batch~ in:6
 batch~ is:2
 batch~ log:-3
 batch~ no:-4
 batch~ of:-5
 batch~ record:-2
 batch~ sheet:-7
 batch~ that:-1
 batch~ was:-5
 batch~ with:-5
 batch~0:-9
 bath:-8
 bathroom:5
 bathroom~ scale:8
 batter:-3
 batteri:-5
 battery:4
 battery~ died:7
 bazaar:-3
 bc:7
 bc~ i:1
 be:3
 beach:-4
 beads:5
 beaker:1
 bear:-6
 beard:-4
 beat:-3
 became:4
 became~0:6
 because~ a:-5
 because~ he:-9
 because~ i:-3
 because~ it:6
 because~ its:-5
 because~ last:2
 because~ my:4
 because~ of:-2
 because~ she:-3
 because~ thats:-1
 because~ the:4
 because~F:-8
 become:-1
 bed:-5
 bee:-6
 beech:-4
 beef:-6
 beef~=:-5
 beekeeper:-6
 been:4
 been~ at:5
 been~ in:1
 been~ mak:-6
 been~ on:-6
 been~ open:6
 been~ stand:3
 been~ told:-6
 been~t:-1
 bees:-4
 before:-1
 beforehand:-5
 before~ and:4
 before~ anyone:-6
 before~ i:-3
 before~ it:3
 before~ pour:6
 before~ saturday:-6
 before~ so:-6
 before~ that:-8
 before~ the:2
 before~ they:-7
 before~ this:-8
 before~ we:-3
 before~ weigh:-8
 before~ with:-5
 before~ you:-11
 before~t:-4
 began:-6
 begin:-7
 beginn:-1
 beginner':-6
 beginner:-10
 behav:-6
 behind:-1
 behind~ the:3
 beige:-7
 being:-1
 bell:1
 belong:-3
 belong~ to:1
 below:-4
 below~ the:-3
 below~0:2
 below~d:-5
 bench:3
 besid:5
 beside:6
 beside~ it:2
 beside~ the:-2
 best:-12
 best~ before:-6
 bet:-6
 better:-1
 better~ than:1
 between:-1
 between~ the:5
 between~0:7
 be~ ?:-7
 be~ a:6
 be~ about:-5
 be~ bother:2
 be~ clear:-6
 be~ cut:-3
 be~ exact:6
 be~ for:3
 be~ gentle:-3
 be~ honest:-1
 be~ hot:-5
 be~ in:-9
 be~ mild:-7
 be~ ok:-3
 be~ on:5
 be~ patient:-10
 be~ right:3
 be~ sure:-2
 be~ the:-5
 be~ too:-4
 be~%:-10
 be~0:6
 be~N:6
 be~b:6
 be~e:9
 be~w:6
 bicycle:-7
 big:2
 bigger:2
 bigger~ pot:-4
 bigger~ than:5
 big~ batch:-9
 big~ kettle:6
 big~ one:2
 big~ pot:-3
 bin:-3
 binn:5
 bin~ it:-2
 birds:-4
 birthday:-4
 biscuit:-8
 bit:1
 bite:-5
 bites:-2
 bits~ in:1
 bits~ of:1
 bit~ at:-3
 bit~ by:-2
 bit~ greasy:-1
 bit~ less:1
 bit~ like:-4
 bit~ more:2
 bit~ of:3
 bit~ on:-7
 bit~ over:-6
 bit~ so:-3
 bit~ soft:-6
 bit~ the:2
 bit~ under:-1
 black:-3
 blame:-7
 blame~ the:-6
 blanket:-6
 blend:-1
 blender:-4
 blender~ and:-5
 blender~ died:-4
 blender~t:-6
 blend~ and:-6
 blend~ at:-1
 blend~ for:-2
 blend~ pour:-3
 blend~ till:-5
 blend~ to:-3
 blend~ with:4
 blend~t:-5
 blind:3
 blob:-1
 block:2
 blog:-2
 blog~ i:-2
 blood:-6
 blue:-4
 board:2
 boat:3
 boil:-1
 boiler:-7
 boil~ down:-3
 boil~ flat:5
 boil~ in:7
 boil~ it:-7
 boil~ off:6
 boil~ over:6
 boil~ the:-2
 bonjour:-3
 bonsoir:-4
 book:-4
 book~ ::-2
 book~ says:-5
 borrow:-2
 boss:-2
 both:1
 bother:-6
 bother~ to:2
 bother~ with:3
 both~ and:-1
 both~ are:-8
 both~ feel:-1
 both~ lyes:-2
 both~ times:-5
 both~ units:-5
 both~ were:-7
 bottl:-4
 bottle:3
 bottle~ and:5
 bottle~ before:-5
 bottle~ gave:3
 bottle~ in:-5
 bottle~ is:4
 bottle~ of:-3
 bottle~ on:4
 bottle~ ran:-2
 bottle~ said:6
 bottle~ says:5
 bottle~ was:12
 bottl~ of:-5
 bottom:-1
 bought:-3
 bought~ a:-5
 bought~ the:-7
 bought~0:-6
 bought~>:-8
 bought~F:1
 bowls:2
 bowl~ and:-2
 bowl~ in:-5
 bowl~ is:-3
 bowl~ of:-5
 bowl~ on:4
 bowl~w:4
 box:-2
 boxes:-4
 box~ and:-3
 box~ lined:-2
 box~ with:-2
 box~t:-2
 boy:-2
 boyfriend:-2
 boys:-2
 brand:-6
 brave:-3
 bread:-2
 break:-9
 breakfast:-2
 breathe:-4
 brewery:-4
 brick:-2
 brim:-2
 bring:-11
 bring~ it:-3
 bring~ the:-8
 broke:-1
 broken:4
 brother':1
 brother:2
 brother~ in:-9
 brought:9
 brown:-8
 brown~ paper:-4
 brush:-2
 btw:3
 bubbl:-5
 bubble:-4
 bubbl~ and:2
 bucket:-3
 bucket~ of:-8
 bucket~ so:-5
 bucket~ with:-7
 burn:-5
 burnt:-3
 burst:-3
 burst~ of:-2
 bus:-3
 but:-1
 butcher:-3
 butcher~ gave:-9
 button:-6
 but~ he:-6
 but~ here:-7
 but~ i'd:-2
 but~ i:1
 but~ im:-8
 but~ is:-7
 but~ it:-5
 but~ its:1
 but~ my:-1
 but~ no:4
 but~ not:-4
 but~ now:-4
 but~ only:-8
 but~ she:-5
 but~ that:-6
 but~ thats:-5
 but~ the:8
 but~ then:2
 but~ there:-4
 but~ they:-4
 but~ those:-6
 but~ what:2
 but~F:-7
 buy:-2
 buy~ the:-2
 by:1
 by~ ::-7
 by~ a:8
 by~ accident:3
 by~ bit:-2
 by~ easter:-6
 by~ eye:6
 by~ hand:-8
 by~ it:-5
 by~ itself:3
 by~ me:-4
 by~ mistake:6
 by~ modern:-4
 by~ my:2
 by~ noon:-4
 by~ spoon:-6
 by~ the:3
 by~ then:-3
 by~ today:-4
 by~ volume:1
 by~ week:-6
 by~ weight:-4
 by~<:7
 by~N:-3
 by~b:-4
 by~t:-6
 b~ ::4
 b~A:-4
 b~F:-7
 c:-5
 cakes:-5
 calculat:-2
 calculate:4
 calculator:-5
 call:3
 calls:-11
 calls~ it:-8
 call~ it:6
 call~ that:4
 call~ the:-2
 call~F:6
 came~ back:3
 came~ from:-2
 came~ in:-2
 came~ out:-2
 came~ to:9
 came~ up:1
 can:-2
 candl:-8
 candle:-1
 candle~B:-2
 candl~ and:-5
 cannot:-5
 cans:-2
 cant:3
 cant~ be:-1
 cant~ find:4
 cant~ get:-6
 cant~ remember:7
 cant~ say:-2
 cant~ stand:6
 can~ and:1
 can~ anyone:-1
 can~ be:-2
 can~ bear:-4
 can~ is:3
 can~ of:6
 can~ see:2
 can~ somebody:-6
 can~ stand:-7
 can~ still:-4
 can~ tell:-2
 can~ the:-3
 can~ u:1
 can~ use:-4
 can~ you:2
 cap:-2
 capping:-6
 car:-7
 caramel:-3
 carbonate:6
 card:3
 cardboard:1
 card~ for:-5
 card~ is:3
 card~ no:-5
 care:1
 caretaker:-6
 carpet:-3
 carri:5
 carri~ it:4
 carri~ on:4
 carry:-7
 carton:-4
 case:-1
 cast:-7
 castile:-7
 cat:-1
 cat~ got:4
 cat~ had:2
 cat~ has:-6
 cat~ is:-4
 caught:-1
 cauldron:-4
 caviti:-6
 ceil:-1
 cell:1
 cellar:-11
 certifi:-10
 certificate:6
 chair:-4
 chang:-2
 change:-2
 change~ the:-5
 chang~ my:5
 chang~ the:-7
 charg:-3
 charge:-5
 chat:-3
 cheap:-9
 cheaper:-6
 cheaper~ than:-7
 check:-4
 check~ ?:-1
 check~ before:2
 check~ by:-7
 check~ it:-8
 check~ me:-2
 check~ my:-7
 check~ out:-4
 check~ please:-5
 check~ pls:-4
 check~ that:-8
 check~ the:-5
 check~ this:-4
 check~A:-5
 cheese:-2
 cheese~ wire:-6
 chemist:-8
 chemistry:-3
 chemistry~ teacher:4
 child:-9
 children:-5
 chill:-7
 chip:3
 chips:4
 chisel:-5
 choir:2
 choose:-5
 chopp:-2
 christma:-6
 christma~0:-6
 chuck:3
 chuck~ in:6
 church:-7
 claim:-3
 clarity:-7
 class:-3
 class~ ::-4
 class~ i:-5
 clean:-2
 clean~ the:-5
 clean~ up:5
 clean~F:-6
 clear:-9
 clearer:1
 clear~ after:-2
 clear~ and:-6
 clear~ as:-8
 clear~ at:-6
 clear~ in:-6
 climb:-10
 climb~ out:-2
 climb~ to:-5
 cling:-4
 cling~ film:-3
 cling~ to:4
 clock:-4
 clos:-2
 close:-3
 close~ to:-5
 cloth:-6
 cloud:5
 cloudy~ for:-4
 club:-3
 clubs:-4
 clump:1
 co:-1
 coat:-7
 coins:3
 cold:-7
 cold~ and:-1
 cold~ from:-7
 cold~ press:-6
 cold~ proces:-5
 cold~L:6
 cold~W:-4
 colleague:-6
 colloidal:2
 colour:-10
 column:-7
 com:4
 combin:1
 combine:-2
 combine~ blend:-2
 comes:-2
 comes~ as:1
 comes~ by:2
 comes~ from:-4
 comes~ in:-4
 comes~ out:3
 comes~ to:2
 come~ back:-6
 come~ down:-4
 come~ off:-1
 come~ out:3
 comma:2
 comma~ is:-7
 comment:-8
 compar:-5
 compare:-9
 complain:-6
 complaint:-7
 complain~ about:-4
 complete:3
 computer:-3
 confetti:-4
 confirm:-8
 confirm~ the:-6
 confus:1
 contain:8
 convert:-9
 cook:2
 cooker:-1
 cooker~ ::-3
 cooker~ before:2
 cooker~ is:-5
 cooker~ on:-4
 cooks:-2
 cook~ ::-7
 cook~ ?:-7
 cook~ about:2
 cook~ and:-2
 cook~ at:-4
 cook~ for:-4
 cook~ i:-4
 cook~ in:-7
 cook~ is:4
 cook~ it:2
 cook~ on:-4
 cook~ once:-3
 cook~ part:-6
 cook~ so:7
 cook~ the:-6
 cook~ until:-1
 cook~ was:-11
 cook~ when:-7
 cook~ with:1
 cook~=:-1
 cook~F:-6
 cook~t:-4
 cool:-5
 cools:-9
 cool~ down:-1
 cool~ i:-2
 cool~ it:-6
 cool~ the:-8
 cool~ to:-3
 cool~ under:-3
 copi:4
 copi~ from:3
 copi~ it:-1
 copi~ off:2
 copi~ out:-7
 copi~ straight:-7
 copi~ the:1
 copy:2
 cork:-7
 corner:-12
 correct:2
 correction:8
 correct~ or:-3
 cos:8
 cost:-7
 costs:-14
 costs~ me:-2
 costs~0:-6
 costs~t:-5
 cost~ ::-7
 cost~ eur:-1
 cost~ me:-5
 cost~ per:-1
 cost~ sheet:-6
 cost~0:-4
 cost~t:-4
 could:-2
 couldnt:6
 couldnt~ be:7
 couldnt~ get:7
 couldnt~ tell:2
 could~ be:10
 could~ have:-7
 could~ not:7
 could~ somebody:-1
 could~ someone:-5
 could~ the:-7
 could~ you:-1
 council:-6
 count:1
 counter:4
 country:3
 county:-4
 count~ in:-2
 count~ it:5
 count~ the:-3
 count~ with:5
 course:-6
 course~ in:-3
 cousin:-2
 cover:-6
 cover~ cut:-1
 cover~ it:-4
 cover~ with:-6
 cows:-7
 cp:-5
 crack:-3
 crackl:2
 crackling:1
 crack~ on:-8
 craft:-1
 crate:-6
 creamy:-6
 cried:-7
 crisp:-7
 crisp~ tube:-6
 crock:-2
 crockpot:-3
 crock~ pot:2
 cross:-2
 crumb:-2
 crumbl:-8
 crumble:-4
 crumb~ and:7
 crumb~ at:2
 crush:-6
 crust:9
 crystal:-4
 cubes:-7
 cubes~ and:-3
 cubes~ the:-5
 cubes~w:-5
 cup:3
 cupboard~ and:2
 cupcake:-7
 cups:-3
 cup~ and:-7
 cup~ weigh:-6
 cup~ with:-7
 cur:-8
 cure:-8
 cured:-5
 cure~ ::-2
 cure~ for:-5
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
 cut~ after:-3
 cut~ at:-7
 cut~ in:-3
 cut~ into:-6
 cut~ it:2
 cut~ next:-2
 cut~ off:-1
 cut~ on:-4
 cut~ the:6
 cut~ too:-6
 cut~ with:-5
 cut~0:-6
 cut~b:-4
 cut~t:-2
 c~ ::-3
 c~ at:-3
 c~0:-7
 d:-5
 dad:-2
 dads:-2
 dads~t:-2
 dag:-2
 dairy:6
 damp:5
 dare:3
 dark:-9
 das:-8
 date:-6
 dates:-7
 date~ ::-2
 date~t:-5
 daughter':-10
 daughter:2
 daughter~ who:-6
 day:-3
 days:-7
 day~ and:-3
 day~ at:-5
 day~ before:4
 day~ i:-5
 day~ it:-5
 day~ so:2
 day~ then:-3
 day~0:-3
 day~t:-5
 de:-5
 dead:-3
 deal:6
 dear:4
 dear~ all:4
 dear~ group:-4
 december:-4
 decent:-6
 decid:-1
 decimal:-5
 deep:1
 degre:-7
 demineralis:-7
 demonstration:1
 dent:-8
 deodoris:-7
 diary:-4
 dictat:1
 did:3
 didnt:4
 didnt~ weigh:5
 did~ and:1
 did~ for:-3
 did~ i:-2
 did~ in:-11
 did~ it:-1
 did~ my:-2
 did~ not:1
 did~ that:1
 did~ the:4
 did~ this:1
 did~ you:-7
 did~0:-1
 did~=:-3
 died:2
 died~ at:5
 difference:-4
 different:-8
 digit:-1
 digital:-9
 dilut:-3
 dilute:-7
 dilution:4
 dinner:3
 disaster:-9
 discount:3
 dish~ soap:6
 display:6
 dissolv:5
 dissolve:4
 dissolve~ the:6
 dissolve~=:-8
 dissolv~ the:-2
 dissolv~ together:-1
 dissolv~<:2
 dissolv~=:-5
 do:-5
 doctor:-7
 does:-5
 doesnt:-2
 doesnt~ mind:-7
 doesnt~ smell:-5
 does~ anybody:-5
 does~ anyone:3
 does~ her:-2
 does~ hers:-1
 does~ it:-3
 does~ my:-7
 does~ not:-2
 does~ the:-3
 does~%:-6
 does~F:-7
 does~b:-6
 does~w:1
 dog:1
 dogs:-7
 dog~ got:6
 doing:3
 doing~ it:-4
 doing~ the:2
 doing~ this:3
 done:-5
 dont:-4
 dont~ ask:6
 dont~ be:-6
 dont~ care:4
 dont~ get:4
 dont~ know:5
 dont~ panic:-7
 dont~ trust:-5
 dont~ want:-8
 door:-4
 doorbell:3
 doors:-9
 dos:-2
 dose:8
 dose~ of:8
 dot:-5
 doubl:8
 double:-6
 double~ boiler:-6
 double~ check:-5
 doubl~ the:-1
 doubt:-7
 down:1
 down~ and:-3
 down~ by:5
 down~ from:1
 down~ the:-2
 down~ to:1
 down~ with:3
 do~ ?:-5
 do~ a:-6
 do~ for:-5
 do~ i:2
 do~ in:-9
 do~ it:-1
 do~ not:-4
 do~ the:-5
 do~ this:-6
 do~ we:-4
 do~ with:-7
 do~ you:-3
 do~F:-3
 draft:-6
 drag:-7
 drain:5
 drama:-4
 drank:6
 draw:1
 drawer:-4
 drawer~ lined:-2
 drawn:3
 dream:-5
 drew:-5
 dried:-1
 drill:-4
 drink:-4
 drip:-9
 drips:-3
 drop:-1
 dropp:6
 dropp~ below:-4
 drops:-1
 drops~ of:2
 drop~ of:3
 drop~ the:-6
 drop~ to:-3
 drove:-2
 drown:-7
 drum:5
 dry:3
 dry~ cup:-2
 dry~ hands:6
 dry~ skin:-7
 dry~ so:2
 dry~ until:3
 dual:-1
 dual~A:-1
 duck:-7
 dump:-2
 dust:6
 e:-5
 each:-1
 each~ and:-3
 each~ of:-2
 each~ time:-2
 earlier:-4
 early:-10
 easier:-7
 easter:-6
 easy:-9
 eat:-2
 eats:-7
 eczema:4
 edge:-3
 edges:-2
 edit:1
 edition:1
 edit~ ::3
 either:4
 elbow:-6
 else~ no:-3
 empti:4
 empty:-3
 empty~ and:-3
 emulsion:-8
 enamel:-9
 enamel~ pot:-6
 end:3
 ended:6
 ended~ up:-2
 ends:-8
 end~ ?:-5
 end~ after:2
 end~ and:3
 end~ i:-1
 end~ is:-11
 end~ it:7
 end~ of:-2
 end~ piece:-5
 english:-4
 english~ i:-6
 english~ is:-4
 enough:-2
 enough~ ?:-5
 enough~ for:-3
 enough~ or:-6
 enough~ to:-3
 enough~A:-3
 entire:-4
 entry:-3
 envelope:-5
 equal:1
 equal~ weight:-6
 error:-3
 eur:-4
 euro:-6
 even:-6
 evening:-5
 even~ all:-4
 even~ class:-4
 even~ in:-5
 ever:-10
 every:-4
 everybody:-9
 everyday:-5
 everyday~ bar:-5
 everyone:-7
 everyone~ who:2
 everyth:4
 everyth~ and:-5
 everyth~ at:1
 everyth~ else:1
 everyth~ in:-4
 everyth~ is:3
 everyth~ was:-3
 everywhere:-3
 every~ one:4
 every~ time:2
 every~t:-6
 ex:-6
 exact:-7
 exact~ as:-6
 exact~ one:-2
 exam:-6
 except:8
 except~ for:-1
 except~ that:-3
 except~ the:4
 exces:1
 excuse:-6
 excuse~ my:-3
 excuse~ the:-6
 expect:-4
 expensive:-4
 export:-4
 export~ from:-3
 extra:6
 extra~ fat:8
 extra~ virgin:-5
 extra~A:-3
 extra~F:-6
 eye:6
 eyebrow:-5
 eyes:-3
 eye~ over:-2
 f:-6
 face:-6
 faces:-7
 face~ bar:-6
 facial:2
 facial~ bar:-4
 fact:6
 faded:-7
 fades:-4
 fail:5
 fails:-3
 faint:-6
 faint~ of:-5
 fair:4
 fair~ ::-4
 falls:-5
 false:-5
 false~ trace:-5
 fami:-1
 famili:-7
 fan:-6
 fancy:5
 far:-3
 farm~ shop:3
 far~ as:-4
 far~ too:2
 fast:-5
 faster:1
 faster~ than:-7
 fat:4
 father~ in:3
 fats:2
 fats~ ::-4
 fats~ ?:-4
 fats~ and:-1
 fats~ are:-4
 fats~ at:-5
 fats~ in:-8
 fats~ is:-7
 fats~ melt:-1
 fats~ or:-6
 fats~ were:-6
 fat~ ::1
 fat~ ?:-6
 fat~ and:2
 fat~ g:-4
 fat~ grams:-5
 fat~ in:-4
 fat~ is:1
 fat~ left:4
 fat~ of:-8
 fat~ so:-1
 fat~ was:-5
 fault:-5
 favour:1
 february:-8
 feed:1
 feed~ store:3
 feel:1
 feels:-6
 feels~ a:-3
 feels~ like:-7
 feel~ the:-1
 feet:1
 fell:-2
 fellow:-1
 fell~ on:1
 felt:-1
 felt~ like:-2
 fence:-5
 fete:2
 few:5
 field:-7
 fifth:1
 fifth~ of:8
 fig:-6
 fight:2
 figur:-1
 figure:8
 file:2
 files:-3
 fill:3
 fills:-7
 fills~ my:-7
 fills~0:-3
 fill~ in:-6
 fill~ it:1
 fill~ the:4
 fill~ to:1
 fill~ up:5
 fill~0:1
 film:-6
 film~ on:-5
 filter:2
 find:8
 finds:-6
 find~ the:2
 find~F:2
 fine:-5
 finer:-5
 fine~ ?:-5
 fine~ and:-3
 fine~ but:-5
 fine~ for:-5
 fine~ or:-5
 finger:1
 finish:2
 finish~ paste:-6
 finish~ with:5
 fire:-9
 firm:6
 firmer:-1
 first:-5
 first~ ::-1
 first~ and:-4
 first~ attempt:-7
 first~ batch:1
 first~ ever:-6
 first~ go:-2
 first~ hour:-3
 first~ it:-3
 first~ lot:4
 first~ one:-2
 first~ so:7
 first~ soap:-1
 first~ the:-3
 first~ then:-8
 first~ time:3
 first~ to:-3
 first~ try:-5
 first~ went:-2
 first~0:2
 first~t:3
 fish:2
 fish~ out:-1
 fit:-4
 fits:-5
 fits~ the:-4
 fit~ ?:1
 fit~ the:1
 fixed:-9
 fizz:-2
 flak:4
 flake:9
 flame:-5
 flat:1
 flatmate:-1
 flat~ and:-6
 flat~ boil:2
 flat~ for:2
 flat~ in:-5
 float:-3
 float~ an:-4
 floor:3
 floor~ and:-3
 fluid:4
 fluid~ ounc:8
 foam:-6
 foams:-7
 foam~ over:6
 foil:1
 fold:-3
 folder:-8
 fold~ in:2
 folk:-8
 folks:-7
 follow:-1
 forever:-5
 forgett:-1
 forget~ the:-1
 forgiv:-9
 forgive:-3
 forgot:4
 forgotten:4
 forgot~ it:2
 forgot~ to:4
 form:-9
 formula:-4
 forum:-10
 for~ a:-3
 for~ about:2
 for~ after:1
 for~ ages:-1
 for~ all:-1
 for~ an:-5
 for~ babi:-6
 for~ baby:4
 for~ both:7
 for~ bubbl:-1
 for~ candl:-7
 for~ christma:-4
 for~ days:-6
 for~ each:4
 for~ floor:-3
 for~ free:3
 for~ fry:4
 for~ gram:6
 for~ half:5
 for~ hands:1
 for~ his:-5
 for~ it:-5
 for~ laundry:4
 for~ looks:-3
 for~ luck:5
 for~ me:1
 for~ more:1
 for~ my:1
 for~ next:-4
 for~ no:4
 for~ noth:-5
 for~ once:7
 for~ one:4
 for~ our:-2
 for~ people:-3
 for~ read:-3
 for~ salad:-10
 for~ saturday:3
 for~ shav:-4
 for~ skin:-9
 for~ soap:-8
 for~ some:-7
 for~ that:-1
 for~ the:2
 for~ these:2
 for~ this:-2
 for~ those:-5
 for~ today:2
 for~ us:2
 for~ wash:-2
 for~ what:4
 for~ word:-7
 for~ years:-3
 for~ you:-7
 for~ your:3
 for~%:6
 for~0:-6
 for~=:-5
 for~>:1
 for~A:-4
 for~B:-1
 for~F:1
 for~L:-4
 for~N:-6
 for~S:-7
 for~T:-6
 for~W:-1
 for~b:-2
 for~d:-8
 for~e:-6
 for~t:-7
 for~v:-4
 found:7
 found~ a:2
 found~ it:5
 found~ on:2
 found~ out:4
 found~ the:7
 found~ this:-6
 fractionat:12
 fram:-9
 free:-1
 freeze:-5
 freezer:-1
 freezer~ for:-6
 freezer~ in:-2
 freezer~ paper:-3
 freeze~ the:-5
 fresh:-3
 friday:1
 friday~ and:-4
 fridge:-2
 fridge~ for:-5
 fridge~ overnight:-7
 fried:2
 friend':-3
 friend:-5
 friend~ says:-7
 friend~ who:5
 friend~ with:-2
 frighten:-6
 from~ ::-7
 from~ a:2
 from~ an:-6
 from~ another:-1
 from~ before:-2
 from~ graz:-3
 from~ it:-2
 from~ krakow:-3
 from~ last:-6
 from~ me:-4
 from~ memory:-1
 from~ my:-4
 from~ our:1
 from~ portugal:2
 from~ sunday:9
 from~ that:1
 from~ the:1
 from~ this:-1
 from~ what:-7
 from~ work:2
 from~0:-4
 from~=:-2
 from~F:-4
 from~L:-6
 from~t:-9
 from~w:-7
 front:-1
 front~ of:-6
 froze:4
 frozen:-2
 frozen~ cubes:-3
 frozen~ in:2
 frozen~ to:-5
 frozen~w:-10
 froze~ it:2
 fruit:-4
 fry:5
 fryer:3
 full:8
 full~ of:-6
 fume:-7
 fumes:-8
 fun:-10
 funnel:1
 funny:-4
 further:4
 fwd:-2
 fwd~ ::-2
 f~0:-6
 g:-4
 garage:-4
 garden:-5
 gas:-6
 gate:-8
 gave:2
 gave~ it:2
 gave~ me:6
 gave~ out:7
 gave~ up:5
 gave~ us:2
 gave~0:-8
 gel:-2
 gell:-3
 gel~ ::-4
 gel~ at:-1
 gel~ phase:-6
 generou:5
 gent:-8
 gentle:-2
 gentler:5
 german:-5
 get:-4
 gets:-6
 gets~ a:2
 gets~ the:-4
 gets~0:-3
 get~ a:2
 get~ it:3
 get~ the:1
 get~ to:-8
 get~0:-7
 get~F:4
 ghana:-7
 gift:-7
 gifts:-6
 girl:-2
 giv:-8
 give:-4
 given:-3
 gives:-9
 gives~ me:-3
 gives~ the:-5
 gives~%:4
 gives~0:-8
 give~ it:-7
 give~ or:5
 give~ the:-3
 give~ to:-3
 glad:-2
 glass:-1
 glass~ and:6
 glass~ of:6
 glossy:-3
 glov:-9
 glov~ and:-5
 glov~ on:-5
 glug:6
 glug~ of:3
 go:-2
 goat:3
 goats:-2
 goats~ are:2
 goes:-7
 goes~ away:-2
 goes~ in:-1
 goes~ into:-5
 goes~ off:-7
 goes~ on:-9
 goes~ to:1
 goes~ up:-7
 goggl:-9
 goggl~ and:-4
 goggl~ on:-3
 going:4
 going~ by:-4
 going~ in:6
 gone:4
 gone~ after:-6
 gone~ by:-9
 gone~ in:-1
 gone~ to:1
 gone~ up:-4
 gonna:4
 good:-2
 good~ ?:-3
 good~ bit:10
 good~ day:-4
 good~ enough:-1
 good~ even:-3
 good~ for:-7
 good~ glug:6
 good~ morn:-5
 good~ one:-7
 good~ or:-2
 good~ pot:-2
 good~ to:-2
 good~F:-8
 good~t:-8
 goose:1
 got:5
 got~ a:-4
 got~ in:-2
 got~ into:5
 got~ it:-2
 got~ my:-7
 got~ round:5
 got~ swapp:1
 got~ the:-4
 got~ to:4
 got~ too:3
 got~ wet:1
 got~0:-7
 got~=:-4
 got~S:-4
 got~b:5
 go~ ?:-3
 go~ at:4
 go~ by:3
 go~ down:2
 go~ for:1
 go~ in:-1
 go~ into:-9
 go~ on:-6
 go~ out:4
 go~ over:-6
 go~ rancid:-7
 go~ to:-3
 go~ up:3
 go~ with:8
 go~ wrong:-4
 grabb:7
 grade:3
 grain:-8
 grainy:-4
 gram:-2
 gramm:-8
 grams:-1
 grams~ ::-7
 grams~ and:-2
 grams~ cost:-2
 grams~ for:-1
 grams~A:-5
 gram~ for:6
 grand:-5
 grandad:6
 granddad:1
 granddaughter:-5
 grandma:1
 grandmother:-8
 grandmother~ had:-2
 grandpa:2
 grandson:3
 granny:-2
 grans:-6
 grate:-3
 grateful:-3
 grate~ the:-8
 graz:-5
 greas:-1
 grease:-3
 greasy:-1
 great:-1
 great~ aunt:-2
 green:-1
 green~ and:4
 green~ one:-2
 greeting:-4
 greeting~ from:-4
 grey:-1
 grind:-4
 grind~ the:-2
 grocer:-5
 ground:-10
 group~ ::-2
 group~ of:-5
 grown:4
 guess:10
 guess~ the:-3
 guest:-9
 guild:-8
 g~ ::-6
 g~ cost:-2
 g~ oz:-3
 g~e:-8
 ha:3
 habit:3
 had:3
 hadnt:6
 had~ a:-6
 had~ already:8
 had~ been:4
 had~ come:3
 had~ cool:-6
 had~ dropp:-4
 had~ gone:8
 had~ in:-4
 had~ it:4
 had~ melt:3
 had~ no:-3
 had~ only:-1
 had~ set:2
 had~ some:-2
 had~ that:-1
 had~ the:-2
 had~ to:-7
 had~0:-6
 had~<:-6
 had~=:2
 had~>:-7
 had~F:1
 had~N:-4
 had~X:3
 had~b:6
 hair:-1
 half:6
 halfway:-5
 halfway~ through:4
 half~ a:3
 half~ and:-5
 half~ as:3
 half~ batch:6
 half~ is:4
 half~ of:2
 half~ size:2
 half~ the:-1
 half~A:-7
 half~F:-1
 half~I:-4
 half~W:-7
 hall:-7
 hallo:-2
 hallo~ my:-2
 halv:6
 halve:-2
 halv~ it:-5
 hammer:4
 hand:-1
 handful:1
 handful~ of:-5
 handle:-3
 handout:1
 handout~0:-4
 hands:-1
 hands~ ?:-4
 hands~ are:1
 handwrit:4
 handy:-8
 hand~ and:-1
 hand~ in:-6
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
 hard:-4
 harden:-6
 harder:-4
 harder~ bar:-3
 hardnes:-6
 hardware:-1
 hardware~ store:-6
 hard~ after:-3
 hard~ and:-5
 hard~ any:-6
 hard~ as:-5
 hard~ in:-1
 hard~ smell:-3
 hard~ to:6
 hard~W:-8
 harm:-4
 harsh:-8
 has:1
 hasnt:-8
 has~ anyone:-7
 has~ become:-3
 has~ been:-2
 has~ cool:-6
 has~ done:-6
 has~ it:3
 has~ made:-3
 has~ moved:-7
 has~ no:-3
 has~ the:-1
 has~ to:-3
 has~=:-6
 has~F:7
 has~N:-6
 hate:-4
 hates:-1
 hav:-2
 have:-1
 havent:4
 have~ a:-9
 have~ asked:2
 have~ done:-2
 have~ enough:-5
 have~ gone:2
 have~ had:2
 have~ i:-7
 have~ in:-1
 have~ it:2
 have~ made:-5
 have~ never:3
 have~ no:-3
 have~ not:-8
 have~ the:2
 have~ to:-10
 have~ used:-5
 have~0:-4
 have~=:-6
 have~>:-5
 have~F:4
 hdpe:-6
 he:-2
 head:-2
 heap:9
 heap~ spoon:2
 hear:-1
 heard:3
 heart:-3
 heat:-13
 heats:-5
 heats~ up:-5
 heat~ and:-3
 heat~ i:-3
 heat~ off:-3
 heat~ the:-5
 heaven:-6
 heavy:2
 heavy~ ?:-5
 heavy~ or:-6
 hed:3
 height:-6
 held:11
 held~ back:-1
 held~ the:2
 hell:-5
 hello:-4
 hello~ from:-2
 help:5
 helps:-2
 help~ with:1
 hence:-3
 hence~ the:-9
 hens:-7
 her:-5
 here:-1
 heres:-7
 heres~ my:-1
 heres~ the:-5
 heres~ what:-8
 here~ ::-2
 here~ and:-4
 here~ goes:-3
 here~ i:4
 here~ in:-5
 here~ is:1
 here~ it:-6
 here~ so:-4
 here~ we:-9
 hers:-10
 herself:-7
 hers~ and:-4
 hers~ with:-10
 her~ hands:-4
 her~ life:-5
 her~ own:-1
 her~ soap:-5
 her~A:-3
 her~F:-11
 hes:-1
 hey:-5
 he~ also:-8
 he~ has:-3
 he~ is:-10
 he~ says:6
 he~ was:-7
 hid:-10
 high:-6
 him:-6
 himself:3
 his:-6
 hiss:1
 his~A:-7
 hit:2
 hit~ it:-7
 hive:-7
 hives:-6
 hiya:1
 hi~ all:1
 hi~ everyone:-4
 hmm:6
 hob:-1
 hola:-2
 hold:-1
 holds:-3
 holds~ a:3
 holds~0:-4
 holds~v:-6
 holds~w:-7
 hold~ ?:-2
 hold~ back:6
 hold~ the:4
 hold~ up:-3
 hole:-5
 holes:-1
 holiday:-10
 home:1
 home~ and:4
 honest:6
 hood:-8
 hope:1
 hope~ it:-4
 hope~ the:-4
 hot:-8
 hotter:-7
 hotter~ than:-3
 hot~ or:-5
 hour:-3
 hour~ and:-7
 hour~ then:-3
 hour~0:1
 house:5
 house~ smell:-4
 how:2
 how~ do:2
 how~ does:-3
 how~ i:3
 how~ it:-1
 how~ long:-6
 how~ many:-5
 how~ much:6
 how~ my:-8
 how~ the:-8
 how~ to:-8
 how~ we:-5
 hp:-4
 hp~ in:-3
 hubby:1
 huge:4
 humidity:-2
 humidity~%:-4
 hurry:-5
 hurt:-1
 hurts:-4
 husband:2
 husband~ says:-5
 husband~ who:-7
 hydrogenat:1
 i'd:1
 i'd~ already:3
 i'd~ be:-7
 i'd~ guess:8
 i'd~ have:-6
 i'd~ like:6
 i'd~ love:-4
 i'd~ never:-7
 i'd~ pour:-1
 i'd~ put:3
 i'd~ read:4
 i'd~ say:4
 i'd~ use:-8
 i'd~ weigh:2
 i:3
 idea:-1
 idea~ which:5
 idk:4
 ie:5
 ie~=:-8
 if:-3
 if~ anyone:-2
 if~ i:3
 if~ im:4
 if~ it:4
 if~ its:-1
 if~ my:2
 if~ somebody:-8
 if~ someone:1
 if~ that:5
 if~ the:-5
 if~ ther:-6
 if~ this:3
 if~ ur:-8
 if~ you:-3
 if~ your:-6
 if~ youre:-7
 if~ yours:-4
 if~ youve:-7
 if~A:-5
 if~F:-5
 if~b:-5
 ignore:6
 ignore~ the:9
 ill:-1
 ill~ do:-5
 ilse:-3
 im:1
 impatient:-6
 im~ a:-3
 im~ after:8
 im~ ask:-1
 im~ at:-8
 im~ doing:-5
 im~ going:3
 im~ in:-8
 im~ mak:3
 im~ not:2
 im~ on:3
 im~ told:-5
 im~ using:5
 im~0:-4
 inch:2
 incl:-1
 includ:4
 includ~ the:8
 individual:-8
 individual~ mould:-8
 infus:4
 infus~ with:5
 ingredient:-4
 ingredient~ g:-3
 ingredient~ grams:-3
 ingredient~ oz:-5
 ingredient~ weight:-3
 inside:-4
 insist:6
 instant:-3
 instead:3
 instead~ of:-1
 instruction:1
 insulate:-7
 internet:-4
 into:-1
 into~ a:-6
 into~ cubes:-5
 into~ it:2
 into~ mould:-3
 into~ oils:-4
 into~ one:-7
 into~ that:5
 into~ the:3
 into~ this:7
 into~0:-5
 into~=:-5
 into~W:-7
 into~v:-3
 in~ ::2
 in~ ?:4
 in~ a:-2
 in~ about:-2
 in~ after:7
 in~ all:-8
 in~ an:-6
 in~ and:-1
 in~ another:7
 in~ april:-7
 in~ as:3
 in~ at:2
 in~ august:3
 in~ batch:-4
 in~ before:7
 in~ between:-7
 in~ blend:-6
 in~ burst:-2
 in~ by:2
 in~ case:-7
 in~ class:2
 in~ cold:-6
 in~ cubes:-6
 in~ dag:-2
 in~ each:-2
 in~ every:-4
 in~ fact:5
 in~ first:-5
 in~ for:10
 in~ front:-7
 in~ g:1
 in~ grams:-9
 in~ her:-8
 in~ here:-1
 in~ hers:-8
 in~ his:-9
 in~ hot:-6
 in~ i:5
 in~ it:2
 in~ its:6
 in~ january:-5
 in~ july:-7
 in~ june:-5
 in~ last:-1
 in~ law:-3
 in~ laws:-4
 in~ march:-9
 in~ may:5
 in~ maybe:4
 in~ mould:-5
 in~ my:-3
 in~ no:-5
 in~ october:-1
 in~ ohio:-5
 in~ on:-5
 in~ once:11
 in~ one:4
 in~ or:3
 in~ order:-6
 in~ our:5
 in~ plus:-5
 in~ red:2
 in~ short:-4
 in~ slow:-2
 in~ small:-5
 in~ so:5
 in~ spr:-9
 in~ step:-5
 in~ steps:4
 in~ summer:-6
 in~ that:3
 in~ the:-2
 in~ there:6
 in~ tiny:8
 in~ to:-2
 in~ too:1
 in~ total:-7
 in~ truth:2
 in~ under:-3
 in~ week:-3
 in~ went:5
 in~ when:-5
 in~ which:1
 in~ winter:-4
 in~ with:5
 in~ your:-1
 in~0:-7
 in~<:3
 in~=:-4
 in~>:-2
 in~F:-4
 in~I:-6
 in~L:3
 in~N:7
 in~W:-5
 in~b:-7
 in~e:3
 in~l:-2
 in~r:-5
 in~t:-7
 in~v:-11
 ish:-6
 isnt:6
 isnt~ in:4
 isnt~ it:5
 issue:-1
 is~ a:2
 is~ about:-6
 is~ actual:5
 is~ all:-2
 is~ already:1
 is~ alway:-1
 is~ an:3
 is~ and:-6
 is~ as:-1
 is~ at:-6
 is~ below:-5
 is~ better:1
 is~ cheap:-6
 is~ clear:-4
 is~ correct:-8
 is~ dear:-1
 is~ done:1
 is~ dry:5
 is~ enough:-5
 is~ exact:-8
 is~ fine:-10
 is~ finish:3
 is~ for:-4
 is~ going:3
 is~ gone:-8
 is~ good:-10
 is~ grams:1
 is~ hard:-1
 is~ her:-3
 is~ hot:-6
 is~ how:-1
 is~ in:4
 is~ it:-3
 is~ just:-7
 is~ left:-2
 is~ like:-3
 is~ love:-3
 is~ meant:-2
 is~ mine:-7
 is~ my:-1
 is~ near:-7
 is~ no:-6
 is~ normal:-4
 is~ not:-3
 is~ noth:-1
 is~ now:6
 is~ off:4
 is~ ok:-7
 is~ one:3
 is~ only:-9
 is~ our:-5
 is~ over:3
 is~ real:8
 is~ right:-1
 is~ safe:-2
 is~ set:-1
 is~ she:-2
 is~ short:1
 is~ small:-2
 is~ sold:4
 is~ step:-2
 is~ still:1
 is~ technical:6
 is~ that:-3
 is~ the:-3
 is~ there:-4
 is~ thick:-5
 is~ this:-8
 is~ too:2
 is~ weigh:-2
 is~ what:4
 is~ where:-8
 is~ whether:-8
 is~ why:-6
 is~ with:10
 is~ worth:-6
 is~ written:-1
 is~%:-1
 is~0:5
 is~<:-5
 is~=:-5
 is~>:-8
 is~A:2
 is~F:6
 is~L:4
 is~N:9
 is~S:1
 is~T:-6
 is~b:5
 is~d:-2
 is~e:-7
 is~t:-9
 is~v:-2
 is~w:1
 it:2
 itch:-2
 item:-3
 item~ grams:-3
 itll:-3
 its:2
 itself:-5
 itself~ off:-1
 its~ a:2
 its~ about:-6
 its~ all:-3
 its~ as:-6
 its~ been:-6
 its~ clear:-5
 its~ cook:5
 its~ date:-3
 its~ fine:-4
 its~ for:6
 its~ gone:3
 its~ hot:-5
 its~ in:-3
 its~ just:-7
 its~ like:1
 its~ made:3
 its~ my:1
 its~ not:-5
 its~ on:-7
 its~ only:-4
 its~ own:-4
 its~ place:4
 its~ ready:-7
 its~ sitt:-5
 its~ the:-1
 its~ time:-6
 its~ weight:-6
 its~ what:4
 its~0:8
 its~=:-6
 its~A:4
 its~N:7
 its~b:-3
 its~d:-6
 its~l:4
 its~t:1
 it~ ::-6
 it~ ?:-3
 it~ a:2
 it~ about:-7
 it~ add:-6
 it~ after:-3
 it~ again:4
 it~ all:1
 it~ alone:-7
 it~ already:3
 it~ and:-2
 it~ another:3
 it~ anyway:-11
 it~ as:-2
 it~ away:-5
 it~ back:2
 it~ bad:6
 it~ be:3
 it~ because:4
 it~ before:-5
 it~ behav:-3
 it~ bit:6
 it~ but:-4
 it~ by:-1
 it~ can:-4
 it~ check:-8
 it~ clear:-3
 it~ climb:-3
 it~ come:-5
 it~ comes:4
 it~ cooks:-3
 it~ cool:2
 it~ cools:-6
 it~ correct:-5
 it~ cost:-6
 it~ crack:-4
 it~ cut:-5
 it~ did:-5
 it~ didnt:1
 it~ do:-5
 it~ does:1
 it~ down:1
 it~ dried:4
 it~ drop:-3
 it~ enough:-4
 it~ every:-5
 it~ fits:-4
 it~ flat:-6
 it~ foam:2
 it~ for:-2
 it~ gets:-4
 it~ gives:1
 it~ go:-5
 it~ goes:1
 it~ good:-6
 it~ had:-1
 it~ hard:-5
 it~ heats:-5
 it~ here:-5
 it~ holds:-4
 it~ if:-6
 it~ in:-2
 it~ into:-11
 it~ is:4
 it~ isnt:1
 it~ it:4
 it~ its:-4
 it~ last:-1
 it~ lasts:-6
 it~ lather:-7
 it~ like:-6
 it~ look:7
 it~ looks:-5
 it~ makes:1
 it~ matter:1
 it~ may:-5
 it~ melts:-3
 it~ needs:-4
 it~ never:-2
 it~ next:-2
 it~ no:-2
 it~ now:-6
 it~ off:6
 it~ ok:-4
 it~ once:-8
 it~ only:1
 it~ or:-5
 it~ outside:-5
 it~ over:-1
 it~ past:-8
 it~ plus:-5
 it~ real:4
 it~ right:-1
 it~ safe:1
 it~ said:6
 it~ sat:1
 it~ says:3
 it~ seiz:3
 it~ set:3
 it~ sets:-3
 it~ should:-2
 it~ since:-2
 it~ sit:1
 it~ smell:-3
 it~ stand:-1
 it~ stay:5
 it~ still:-7
 it~ stink:-6
 it~ sweat:-5
 it~ takes:-6
 it~ that:-1
 it~ the:-5
 it~ then:-2
 it~ there:-8
 it~ thicken:3
 it~ through:-7
 it~ till:1
 it~ times:-2
 it~ to:3
 it~ too:-1
 it~ took:-6
 it~ trac:-3
 it~ turn:-3
 it~ turns:1
 it~ twice:2
 it~ under:-5
 it~ until:-3
 it~ up:2
 it~ wants:-4
 it~ was:2
 it~ went:1
 it~ when:3
 it~ will:-5
 it~ with:-5
 it~ without:3
 it~ wont:-8
 it~ would:-2
 it~ wouldnt:5
 it~ wrong:-4
 it~ zapp:7
 it~ zaps:-5
 it~%:1
 it~0:2
 it~=:-5
 it~A:-2
 it~F:-3
 it~S:-4
 it~b:4
 it~t:-6
 ive:-1
 ive~ a:2
 ive~ been:-6
 ive~ bought:5
 ive~ done:-6
 ive~ gone:6
 ive~ had:-8
 ive~ just:2
 ive~ made:-6
 ive~ never:-7
 ive~ not:-5
 ive~ only:3
 ive~ read:-7
 ive~ seen:-8
 ive~ since:6
 ive~ tried:-6
 ive~ used:-1
 ive~ weigh:-3
 ivory:-8
 i~ ?:-9
 i~ actual:2
 i~ add:-4
 i~ added:4
 i~ alway:-3
 i~ am:6
 i~ ask:1
 i~ asked:-6
 i~ began:-8
 i~ believe:4
 i~ blame:-6
 i~ bought:-10
 i~ buy:-3
 i~ call:-2
 i~ came:3
 i~ can:-9
 i~ cant:-4
 i~ carri:10
 i~ chang:-4
 i~ check:-8
 i~ chuck:7
 i~ copi:3
 i~ copy:-7
 i~ couldnt:1
 i~ count:-3
 i~ did:3
 i~ didnt:2
 i~ dilut:-7
 i~ dilute:-5
 i~ dissolve:4
 i~ do:-7
 i~ dont:2
 i~ doubl:7
 i~ drain:8
 i~ dropp:1
 i~ empti:11
 i~ ended:-4
 i~ ever:-8
 i~ fill:9
 i~ final:-5
 i~ first:-4
 i~ fish:12
 i~ fold:-5
 i~ follow:1
 i~ found:-3
 i~ freeze:1
 i~ froze:-3
 i~ gave:-3
 i~ get:-5
 i~ give:-4
 i~ go:1
 i~ guess:7
 i~ had:-3
 i~ hadnt:6
 i~ halv:5
 i~ hand:-4
 i~ hate:-4
 i~ have:1
 i~ held:3
 i~ honest:10
 i~ hope:-3
 i~ just:2
 i~ keep:-3
 i~ kept:3
 i~ knock:4
 i~ know:-5
 i~ learn:-5
 i~ leave:2
 i~ left:10
 i~ let:4
 i~ like:-3
 i~ lost:5
 i~ made:-1
 i~ make:-9
 i~ may:2
 i~ mean:-1
 i~ meant:-6
 i~ measur:-4
 i~ mess:-6
 i~ mix:-6
 i~ mixed:3
 i~ must:4
 i~ near:-4
 i~ never:3
 i~ notic:7
 i~ ok:1
 i~ once:-10
 i~ open:-2
 i~ own:1
 i~ paid:-4
 i~ panick:-2
 i~ plan:-4
 i~ plann:-4
 i~ press:-5
 i~ print:-6
 i~ promis:3
 i~ put:3
 i~ ran:-3
 i~ read:3
 i~ real:-3
 i~ realis:3
 i~ reckon:-2
 i~ remember:-1
 i~ render:-4
 i~ replac:3
 i~ rins:4
 i~ round:6
 i~ run:-8
 i~ said:-7
 i~ saw:6
 i~ say:2
 i~ scrap:8
 i~ see:5
 i~ sell:-3
 i~ set:-2
 i~ shall:-1
 i~ shook:6
 i~ should:2
 i~ skipp:5
 i~ smell:2
 i~ soap:-3
 i~ split:-2
 i~ sprinkl:-5
 i~ still:-2
 i~ stir:-8
 i~ stirr:5
 i~ stood:-1
 i~ stopp:8
 i~ strain:-1
 i~ swapp:10
 i~ swear:1
 i~ take:-8
 i~ teach:-5
 i~ tell:-8
 i~ test:-2
 i~ think:2
 i~ thought:-2
 i~ threw:3
 i~ tipp:2
 i~ told:-2
 i~ took:2
 i~ topp:-1
 i~ translate:-4
 i~ tried:-1
 i~ trust:-4
 i~ turn:-5
 i~ type:2
 i~ typed:6
 i~ use:-4
 i~ usual:3
 i~ wait:-5
 i~ want:2
 i~ warm:-6
 i~ was:-6
 i~ wash:-2
 i~ wasnt:3
 i~ weigh:3
 i~ went:5
 i~ will:-7
 i~ wiped:-7
 i~ work:-8
 i~ would:1
 i~ write:-10
 i~ wrote:5
 i~K:-8
 jam~ jar:1
 january:-9
 january~ and:-3
 jar:3
 jars:-7
 jars~ of:-4
 jar~ and:9
 jar~ of:6
 jar~ so:-3
 jelly:-7
 job:3
 join:1
 join~ the:4
 judge:-1
 jug's:4
 jug:2
 jugs:4
 jug~ ::3
 jug~ and:4
 jug~ from:3
 jug~ in:-6
 jug~ is:-9
 jug~ of:3
 jug~ on:-7
 jug~ so:6
 jug~ to:7
 jug~ was:-4
 jug~ with:1
 july:-3
 jump:5
 jumps:3
 june:-10
 just~ a:-2
 just~ as:-2
 just~ for:-7
 just~ the:4
 just~ want:-10
 just~ what:-5
 just~F:-5
 k:2
 keep:-8
 keeps:-7
 keeps~ it:-6
 keeps~ the:-2
 keep~ a:-4
 keep~ in:-7
 keep~ it:-8
 keep~ my:-7
 keep~0:-4
 keep~<:1
 keep~t:-3
 kept:2
 kept~ a:1
 kept~ in:-5
 kept~ the:2
 kept~0:2
 kettle:6
 key:-4
 kg:4
 kg~ cost:-2
 kid:8
 kidd:-7
 kids:-1
 kill:-6
 kilo:4
 kilo~ in:-4
 kilo~ is:1
 kilo~ of:-6
 kinda:2
 kind~ check:-8
 kind~ of:-2
 kind~ regard:-3
 kind~ with:3
 kiss:-6
 kitchen~ and:3
 kitchen~ bar:-7
 kitchen~ is:-4
 kitchen~ scale:6
 kitchen~ so:-4
 kitchen~ soap:-1
 kitchen~ was:-5
 knew:-6
 knife:-9
 knob:7
 knob~ of:7
 knock:4
 knock~ a:-2
 knock~ the:4
 know:2
 knows:4
 knows~ how:4
 know~ ::-5
 know~ how:2
 know~ i:-6
 know~ if:3
 know~ is:-8
 know~ it:1
 know~ its:-5
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
 label:1
 labell:-2
 label~ ::-7
 label~ on:-7
 label~ says:6
 label~0:-7
 ladi:-5
 ladl:8
 ladle:6
 ladle~ of:3
 lads:-4
 lady:-3
 lady~ at:-4
 lady~ in:-7
 lady~ on:-4
 land:2
 last:-5
 lasts:-8
 last~ autumn:-6
 last~ batch:-6
 last~ bit:4
 last~ minute:6
 last~ month:5
 last~ night:-5
 last~ of:-6
 last~ one:-5
 last~ time:-6
 last~ week:2
 last~ weeks:3
 last~ winter:-8
 last~ year:-5
 last~ years:-3
 last~F:-5
 late:-2
 later:-2
 later~ on:-5
 lather:-6
 lather~ is:-2
 lather~ like:-6
 lather~ was:-5
 laugh:1
 laugh~ at:-2
 laundry:-1
 laundry~ bar:-7
 laundry~ bars:-3
 laundry~ soap:-5
 law:-3
 laws:-4
 law~ who:-6
 layer:3
 lb:2
 lb~ oz:-6
 leaflet:-1
 leak:-2
 learn:-7
 learn~ from:-2
 learn~ that:1
 least:-3
 least~t:-1
 leav:-4
 leave:-4
 leave~ it:-2
 leave~ out:-9
 leave~ the:-3
 leave~t:-1
 leav~ a:-5
 leav~ the:-5
 leeds:4
 leftover:1
 leftover~F:-2
 left~ and:2
 left~ for:-10
 left~ from:6
 left~ in:-1
 left~ it:2
 left~ of:-7
 left~ on:3
 left~ out:-1
 left~ over:-3
 left~ so:1
 left~ the:2
 left~ to:3
 length:-4
 lent:-2
 less:6
 lesson:-7
 less~ of:5
 less~ than:-1
 less~F:-1
 less~W:-4
 let:-2
 lets:1
 letter:2
 let~ cool:-2
 let~ it:-3
 let~ me:-3
 let~ the:-4
 let~ them:3
 let~ us:-7
 let~ your:-5
 library:-6
 library~ book:-5
 lid:-1
 lidd:-3
 lids:-5
 lid~ and:-7
 lid~ of:-8
 lid~ off:3
 lid~ on:-5
 lie:-3
 life:2
 lift:4
 lift~ the:3
 light:3
 lighter:-5
 light~ on:3
 light~ trace:-1
 like:-4
 liked:-5
 likes:-5
 likes~ it:5
 likewise:3
 like~ a:-3
 like~ alway:-8
 like~ an:-6
 like~ candle:-5
 like~ cheese:-7
 like~ cold:-4
 like~ custard:-5
 like~ i:-7
 like~ it:-1
 like~ mad:1
 like~ mash:-4
 like~ me:-6
 like~ my:4
 like~ noth:-2
 like~ paper:3
 like~ porridge:2
 like~ sandpaper:-3
 like~ someone:-2
 like~ soup:-7
 like~ stone:-5
 like~ that:-5
 like~ the:-4
 like~ thin:-4
 like~ this:1
 like~ to:-4
 like~ wet:-2
 like~ you:-2
 like~%:2
 like~0:3
 like~F:-5
 like~L:-6
 like~S:-4
 like~U:-7
 like~X:-3
 like~t:6
 like~w:6
 limit:-7
 line:7
 lined:-6
 lined~ w:-5
 lined~ with:-2
 linen:-3
 line~ ::5
 line~ the:-3
 lino:1
 lip:-6
 lip~ balm:-6
 liquid:3
 liquid~ and:-2
 liquor:7
 list:3
 list~ for:-8
 list~ i:3
 list~ is:-3
 litre:3
 little:1
 little~ ?:-4
 little~A:1
 little~F:-6
 little~W:3
 live:-6
 lived:-6
 lives:-6
 lives~ in:-6
 loaf:-3
 loaf~ ::-5
 loaf~ mold:-3
 loaf~ mould:-4
 loaf~ tin:-3
 loav:-2
 local:-5
 lock:-8
 loft:-4
 log:-1
 log~ ::-3
 lol:-2
 long:-3
 longer:-4
 longer~ than:-4
 long~ as:-6
 long~ one:1
 long~ sleev:-4
 long~ story:7
 long~ time:-4
 look:2
 looks:-10
 looks~ like:-4
 looks~ ok:-1
 look~ a:4
 look~ at:-6
 look~ for:1
 look~ it:-6
 look~ like:2
 look~ of:1
 look~ ok:-3
 look~ over:-5
 look~ right:-5
 loosen:10
 loosen~ it:7
 lose:-3
 loss:-2
 lost:2
 lost~ a:1
 lost~ my:-1
 lost~ the:-6
 lot:-1
 lotion:7
 lots:-8
 lots~ of:-6
 lot~ ?:-1
 lot~ of:2
 lot~ to:-3
 lot~0:5
 loud:-8
 love:-7
 loves:2
 love~ a:2
 love~ and:-1
 love~ but:-4
 love~ it:-5
 love~ to:-3
 low:-1
 lower:7
 lowest:-4
 lowest~ flame:-4
 low~ and:-5
 low~ heat:-1
 low~ in:1
 low~t:-3
 luck:3
 lucki:-7
 lucky:-7
 lukewarm:-6
 lump:5
 lumps:-4
 lumpy:7
 lump~ of:-2
 lunch:-7
 lurker:-4
 luxury:-3
 lye's:5
 lye:2
 lyes:-7
 lyes~ together:-5
 lying:5
 lyon:-5
 l~0:-4
 m:-6
 machine:-4
 made:1
 made~ ::-6
 made~ a:2
 made~ for:-8
 made~ from:-3
 made~ hers:-8
 made~ in:-6
 made~ it:3
 made~ my:-3
 made~ of:-5
 made~ on:-5
 made~ soap:-3
 made~ the:5
 made~ this:-4
 made~ up:6
 made~ with:-8
 made~0:8
 magazine:-2
 mak:9
 maker:-4
 makes:-4
 makes~ a:-7
 makes~ it:-2
 makes~ no:-5
 makes~ sense:-2
 makes~ the:-6
 makes~ up:8
 makes~T:-8
 makes~b:-5
 make~ a:-7
 make~ exact:-4
 make~ it:7
 make~ sense:-2
 make~ soap:-4
 make~ the:-9
 make~ this:-4
 make~ up:-2
 mak~ it:7
 mak~ the:-5
 mak~ this:-1
 mama:-7
 man:-7
 many:-2
 march:-9
 margin:-2
 marit:-5
 mark:6
 market:-7
 marks:5
 marta:3
 mash:-4
 mash~ potato:-3
 mass:-6
 match:-1
 mate:1
 material:-7
 maths:4
 matter:3
 matter~ to:4
 may:1
 maybe:9
 maybe~ a:7
 maybe~0:5
 maybe~<:-2
 maybe~t:-8
 maybe~w:3
 may~ be:1
 may~ have:6
 may~ i:3
 me:-2
 mean:-3
 means:-1
 meant:-2
 meant~ to:-1
 meanwhile:3
 mean~ the:3
 measur:3
 measur~ cup:4
 measur~ it:1
 measur~ jug:8
 mechanic:2
 medium:-6
 meets:-2
 melt:-3
 melts:-7
 melts~ at:-6
 melt~ and:4
 melt~ at:-4
 melt~ by:-8
 melt~ everyth:3
 melt~ first:-5
 melt~ i:-9
 melt~ in:8
 melt~ it:1
 melt~ on:-7
 melt~ the:-6
 melt~ together:1
 melt~ with:2
 melt~=:-2
 melt~F:1
 member:1
 memory:4
 men:-8
 merci:-4
 mess:-6
 mess~ up:-4
 met:-1
 method:-4
 method~ ::-5
 metric:-7
 me~ ::-1
 me~ ?:4
 me~ a:-1
 me~ about:-4
 me~ as:2
 me~ at:2
 me~ before:-5
 me~ but:-2
 me~ for:-2
 me~ how:-8
 me~ i:-1
 me~ if:-4
 me~ in:-3
 me~ it:-6
 me~ its:-9
 me~ on:-2
 me~ that:-1
 me~ the:3
 me~ to:-6
 me~ where:3
 me~ whether:-2
 me~ with:2
 me~0:-11
 me~t:-7
 microwave:1
 middle:-5
 middle~ of:5
 might~ have:4
 mild:4
 milder:-2
 milk:-7
 milk~ carton:-6
 mill:-6
 min:6
 mind:5
 mind~ the:-3
 mine:-3
 mines:1
 mine~ from:1
 mine~ had:-5
 mine~ has:-3
 mine~ in:-6
 mine~ is:6
 mine~ took:-6
 mine~ was:1
 mine~ with:5
 mini:1
 minimum:1
 minus:6
 minus~ the:8
 minus~ whatever:8
 minute:-3
 minute~0:-8
 min~ .:5
 misread:11
 miss:2
 miss~ the:5
 mistak:2
 mistake:4
 mistake~ and:-4
 mix:4
 mixed:5
 mixed~ at:-6
 mixed~ in:6
 mixed~ it:5
 mixed~ the:1
 mixed~ up:-1
 mixed~ with:-2
 mixer:-4
 mix~ at:-2
 mix~ the:2
 mix~A:-4
 mk:-4
 ml:12
 mm:-8
 mode:3
 modern:-5
 mold:2
 molds:3
 mold~ holds:-5
 mold~ is:2
 moment:-7
 moms:-2
 mon:4
 monday:-2
 money:4
 month:-2
 month~ i:-3
 month~0:-4
 moon:-3
 mopp:5
 mopp~ up:5
 more:3
 more~ and:-6
 more~ fat:-6
 more~ like:11
 more~ of:3
 more~ or:-5
 more~ than:-2
 more~A:4
 more~F:2
 morn:-1
 morn~ and:2
 most:5
 most~ of:10
 mother~ and:-7
 mother~ did:4
 mould:-1
 mouldy:4
 mould~ ::-6
 mould~ and:-3
 mould~ bang:-4
 mould~ for:-3
 mould~ holds:-4
 mould~ in:-3
 mould~ is:3
 mould~ of:-8
 mould~ on:-5
 mould~ so:-5
 mould~ the:-6
 mould~ was:-5
 mould~ with:-9
 mould~0:-1
 mould~t:-4
 mould~v:-5
 mov:1
 move:-3
 moved:3
 moved~ to:3
 moves:-3
 mrs:3
 much:-1
 much~ ?:-5
 much~ and:6
 much~ as:-6
 much~ fat:-3
 much~ for:-10
 much~ of:-4
 much~ superfat:-5
 much~A:-3
 much~F:-2
 much~W:5
 muffin:-6
 mug:5
 multip:5
 mum:-1
 mum~ says:-6
 museum:-6
 mush:-3
 must:-4
 must~ be:-7
 myself:-3
 my~ arm:-4
 my~ aunt:-3
 my~ aunts:2
 my~ babcia:-5
 my~ bars:-4
 my~ bathroom:7
 my~ book:2
 my~ boss:-1
 my~ boyfriend:-2
 my~ brother':4
 my~ brother:-2
 my~ colleague:-4
 my~ country:6
 my~ cousin:-1
 my~ dad:-8
 my~ dads:3
 my~ daughter':-8
 my~ daughter:2
 my~ earlier:5
 my~ elbow:-5
 my~ english:-2
 my~ ex:-6
 my~ father:-3
 my~ first:-2
 my~ flatmate:-4
 my~ friend:4
 my~ glass:-1
 my~ good:-6
 my~ granddaughter:-5
 my~ grandfather:2
 my~ grandmother:-10
 my~ grandson:1
 my~ great:-2
 my~ hair:-2
 my~ hands:-8
 my~ handwrit:-7
 my~ husband:-5
 my~ kilo:-1
 my~ kitchen:4
 my~ last:-10
 my~ laundry:-3
 my~ little:3
 my~ mind:7
 my~ mold:-6
 my~ mould:1
 my~ mums:-6
 my~ nan:-7
 my~ nans:-5
 my~ nephew:-6
 my~ niece:-1
 my~ notebook:7
 my~ notes:-1
 my~ number:-2
 my~ old:-2
 my~ own:2
 my~ paste:-8
 my~ phone:-3
 my~ plan:-3
 my~ previou:-1
 my~ pupil:1
 my~ question:-2
 my~ recipe:-3
 my~ scale:5
 my~ sheet:-2
 my~ sister:-9
 my~ skin:5
 my~ slow:-4
 my~ soap:-3
 my~ spreadsheet:-4
 my~ sums:1
 my~ superfat:-1
 my~ table:-6
 my~ teacher:-6
 my~ third:-4
 my~ thumb:-2
 my~ tongue:-2
 my~ uncle:1
 my~ usual:-9
 my~ very:-7
 my~ wife:2
 my~ wifes:-3
 my~%:-3
 my~0:-7
 my~F:-3
 my~K:-7
 my~L:-9
 my~S:-2
 my~W:4
 my~b:-1
 my~l:-5
 my~t:3
 my~w:3
 m~A:-8
 m~F:-3
 n:-1
 name:-10
 name~ ::-4
 nan:-9
 nans:-6
 natural:-4
 nb:1
 near:-5
 nearer:7
 nearer~0:5
 near~ enough:4
 near~ it:-1
 near~ the:-2
 near~%:-9
 near~0:1
 near~d:-1
 near~t:4
 need:-5
 needs:-7
 needs~ a:-6
 needs~ the:-6
 need~ ::-2
 need~ a:-4
 need~ it:4
 need~ more:-5
 need~ the:-7
 need~ to:1
 negative:2
 neighbor:-7
 neighbour:-2
 neither:3
 nephew:-2
 nerv:-7
 nervou:-1
 net:2
 never:-1
 never~ above:-6
 never~ added:6
 never~ again:-9
 never~ bother:-6
 never~ check:-5
 never~ did:-6
 never~ fail:-3
 never~ fails:-3
 never~ go:-10
 never~ got:8
 never~ happen:8
 never~ in:-6
 never~ let:-5
 never~ made:10
 never~ once:-2
 never~ set:5
 never~ the:-8
 never~ weigh:-2
 never~ went:-8
 new:-4
 news:-6
 newsletter:1
 newspaper:-7
 new~ bottle:-5
 new~ here:-3
 new~ one:5
 new~ scale:-5
 new~ to:-4
 next:-9
 next~ door:-5
 next~ month:-7
 next~ morn:1
 next~ one:-9
 next~ time:-9
 next~ to:4
 next~ year:-3
 nice:-1
 nicer:-7
 niece:3
 night:-4
 night~ and:-3
 night~ before:-4
 nil:2
 no:-2
 nobody:-3
 nobody~ answer:-2
 nobody~ had:4
 nobody~ has:3
 nobody~ will:-2
 none:5
 none~ at:-6
 none~ in:-2
 none~ the:-3
 nonna:-7
 noon:-6
 nor:-1
 normal:-7
 normal~ ?:-6
 normal~ one:-4
 north:-4
 nose:-10
 note:7
 notebook:-2
 notebook~ ::-6
 notebook~ p:-3
 notebook~ says:3
 notebook~ the:-5
 notes:-2
 notes~ ::1
 notes~ app:-6
 notes~ from:-5
 noth:-6
 noth~ and:-3
 noth~ at:-4
 noth~ but:-5
 noth~ else:-1
 noth~ in:-3
 noth~ only:-4
 notic:7
 notic~ the:3
 notic~ when:7
 not~ ?:-2
 not~ a:-8
 not~ at:-4
 not~ be:-8
 not~ for:-4
 not~ going:1
 not~ in:3
 not~ like:-6
 not~ more:-6
 not~ on:7
 not~ sure:5
 not~ that:-7
 not~ the:-3
 not~ to:-5
 not~ too:-5
 not~ touch:-5
 not~ use:-2
 not~ what:-2
 not~0:-5
 not~A:-3
 not~F:9
 not~b:7
 not~e:9
 nought:-1
 november:-4
 now:4
 nowhere:-6
 now~ ::-6
 now~ ?:2
 now~ and:-6
 now~ i:-1
 now~ in:-1
 now~ it:-5
 now~ its:6
 now~ my:3
 now~ on:4
 now~ so:-8
 now~ the:2
 now~F:1
 no~ ?:-2
 no~ ash:-5
 no~ difference:-9
 no~ gel:-3
 no~ good:-3
 no~ harm:-4
 no~ i:-6
 no~ idea:1
 no~ it:4
 no~ longer:5
 no~ more:-1
 no~ need:-6
 no~ other:-7
 no~ reason:-1
 no~ scale:1
 no~ smell:-2
 no~ sorry:2
 no~ superfat:-7
 no~ time:-3
 no~ wait:3
 no~ white:-3
 no~ zap:-7
 no~0:2
 no~F:9
 no~I:6
 no~S:-9
 no~W:4
 no~X:-10
 number:-5
 number~ ?:-5
 number~ and:2
 number~ are:1
 number~ hold:-1
 number~ i:-4
 number~ is:-3
 number~0:-9
 nurse:-3
 n~ it:-4
 n~=:-4
 n~F:2
 o'clock:-2
 o:-5
 oat:-9
 oat~X:-2
 obvious:-4
 obvs:-6
 october:1
 odd:-6
 odds:-6
 of:2
 off:4
 offcut:-4
 offer:-7
 office:-9
 off~ ?:-1
 off~ a:1
 off~ and:2
 off~ at:-9
 off~ by:-1
 off~ for:6
 off~ i:-5
 off~ in:5
 off~ it:3
 off~ my:-2
 off~ the:3
 off~ wait:-1
 off~ what:10
 off~0:-6
 off~l:1
 often:-6
 of~ about:-5
 of~ all:-5
 of~ ammonia:-5
 of~ an:1
 of~ anyth:-9
 of~ batter:-10
 of~ clean:-6
 of~ cold:1
 of~ course:-2
 of~ doors:-8
 of~ dried:-3
 of~ each:7
 of~ everyth:4
 of~ extra:-1
 of~ eyes:-1
 of~ fat:2
 of~ fats:4
 of~ half:1
 of~ her:1
 of~ it:2
 of~ last:4
 of~ melt:2
 of~ mine:-5
 of~ my:-1
 of~ noth:-6
 of~ oil:1
 of~ oils:-2
 of~ old:4
 of~ one:3
 of~ our:-5
 of~ paste:-6
 of~ plain:2
 of~ rough:-2
 of~ soap:4
 of~ some:3
 of~ stirr:-7
 of~ sunday:-8
 of~ that:8
 of~ the:2
 of~ them:1
 of~ these:-7
 of~ this:-1
 of~ us:1
 of~ warm:-2
 of~ wet:-8
 of~ what:-2
 of~ which:-3
 of~ you:-2
 of~ your:-5
 of~%:2
 of~0:-7
 of~=:2
 of~>:-8
 of~A:2
 of~B:4
 of~C:5
 of~F:-4
 of~I:-4
 of~K:4
 of~L:8
 of~M:-5
 of~N:10
 of~T:1
 of~U:4
 of~W:3
 of~X:-4
 of~b:-1
 of~v:-9
 of~w:-8
 ohio:-5
 oh~ and:-1
 oil:4
 oils:-1
 oils~ ?:-1
 oils~ and:-4
 oils~ are:-3
 oils~ as:1
 oils~ at:-6
 oils~ because:-6
 oils~ come:-3
 oils~ g:-5
 oils~ in:-4
 oils~ or:-1
 oils~ to:-1
 oils~ were:1
 oils~>:-2
 oily:8
 oil~ ?:-7
 oil~ and:-2
 oil~ at:4
 oil~ from:3
 oil~ g:-4
 oil~ grams:-5
 oil~ in:-3
 oil~ is:1
 oil~ of:4
 oil~ on:-4
 oil~ to:3
 oil~ was:-2
 oil~ weight:-5
 ok:-1
 okay:-4
 okay~ ?:-5
 okay~ for:-5
 okay~ so:-2
 ok~ ?:-1
 ok~ before:-4
 ok~ for:-6
 ok~ or:-2
 ok~ so:2
 ok~ to:-5
 ok~ with:-6
 old:1
 older:1
 oldest:-7
 old~ and:1
 old~ blanket:-2
 old~ days:-3
 old~ one:-6
 old~ pillowcase:-4
 old~ recipe:-4
 old~ sheet:1
 old~ soap:-6
 old~ tub:4
 old~A:4
 old~F:2
 olej:-3
 olej~F:-3
 oma:-3
 omg:-5
 on:-1
 once:-4
 once~ a:3
 once~ and:1
 once~ i:1
 once~ it:2
 once~ its:-2
 once~ the:-4
 one:-4
 ones:-8
 ones~ are:-7
 one~ ::-4
 one~ ?:-2
 one~ after:-6
 one~ and:4
 one~ at:7
 one~ bar:-6
 one~ batch:-6
 one~ bottle:-2
 one~ can:-4
 one~ corner:-2
 one~ for:-4
 one~ from:-7
 one~ go:3
 one~ had:-6
 one~ has:-2
 one~ i:1
 one~ in:2
 one~ into:-1
 one~ is:-1
 one~ jug:-2
 one~ last:-7
 one~ of:5
 one~ on:-6
 one~ pan:-7
 one~ pot:-5
 one~ since:5
 one~ sorry:-6
 one~ that:1
 one~ the:1
 one~ thing:4
 one~ time:-4
 one~ to:-7
 one~ weigh:-8
 one~ went:-4
 one~ who:-7
 one~ with:-3
 one~ without:-4
 one~0:1
 one~F:-1
 one~t:-1
 one~w:-7
 onion:2
 only:3
 only~ a:1
 only~ about:3
 only~ after:-9
 only~ does:4
 only~ for:1
 only~ gave:5
 only~ got:-8
 only~ had:10
 only~ have:-3
 only~ if:-1
 only~ notic:7
 only~ one:-1
 only~ put:1
 only~ so:-3
 only~ then:-9
 only~ there:-4
 only~ want:-12
 only~ when:2
 only~ whether:-6
 only~0:13
 only~=:-9
 only~F:-10
 only~l:-1
 onto:-2
 onto~ the:2
 on~ ::-4
 on~ a:-7
 on~ and:-8
 on~ before:-5
 on~ day:6
 on~ glov:-3
 on~ her:-1
 on~ here:-8
 on~ high:-6
 on~ i:5
 on~ it:-5
 on~ its:-2
 on~ low:-5
 on~ me:-4
 on~ monday:-8
 on~ my:-1
 on~ offer:-7
 on~ one:-3
 on~ our:2
 on~ page:-4
 on~ paper:-5
 on~ purpose:-1
 on~ saturday:-2
 on~ slow:-2
 on~ sunday:-1
 on~ that:-2
 on~ the:1
 on~ them:-5
 on~ this:4
 on~ thursday:1
 on~ to:-4
 on~ top:1
 on~ tue:-2
 on~ tuesday:-5
 on~ we:-8
 on~ with:7
 on~ your:-5
 on~0:-8
 on~>:-8
 on~A:3
 on~F:5
 on~t:-4
 oops:4
 open:2
 opens:4
 open~ a:-8
 open~ all:7
 open~ since:6
 open~ the:-2
 open~ window:-5
 open~0:-1
 operator:-5
 operator~ ::-4
 opinion:-10
 optional:3
 or:-3
 order:-8
 order~ of:-5
 ordinary:5
 original:-3
 or~ a:1
 or~ am:-8
 or~ did:-9
 or~ do:-5
 or~ does:-5
 or~ is:-8
 or~ it:-6
 or~ just:-5
 or~ less:-5
 or~ more:-8
 or~ no:-4
 or~ not:-2
 or~ should:-5
 or~ so:2
 or~ take:5
 or~ the:-3
 or~ thereabout:3
 or~ too:-3
 or~ was:1
 or~ will:-3
 or~A:-6
 or~N:-5
 other:-4
 otherwise:-9
 otherwise~ it:-8
 other~ and:-3
 other~ half:1
 other~ way:-4
 other~0:3
 other~W:-6
 ought:-6
 ought~ to:-6
 ounc:5
 ounce:-4
 ounc~ for:6
 our:-2
 ours:-9
 ours~ is:-7
 our~ club:3
 our~ course:-2
 our~ group:-8
 our~ own:-1
 our~ teacher:-8
 our~ town:-1
 our~ village:4
 out:2
 outdoor:-7
 outside:-8
 outside~ and:-1
 outside~ on:-5
 out~ ::-6
 out~ a:-1
 out~ after:-1
 out~ again:3
 out~ and:4
 out~ at:3
 out~ by:4
 out~ for:2
 out~ i:-9
 out~ in:-2
 out~ like:-6
 out~ of:-1
 out~ on:2
 out~ so:3
 out~ the:-1
 out~ to:11
 out~ what:2
 out~ with:2
 out~0:3
 out~=:-3
 out~A:-2
 out~N:2
 out~w:-1
 oval:-4
 oven:-9
 oven~ at:-5
 overfat:2
 overheat:-4
 overnight:1
 overnight~ at:-4
 over~ ?:-6
 over~ a:1
 over~ and:4
 over~ before:-5
 over~ for:6
 over~ from:3
 over~ half:-6
 over~ in:7
 over~ it:1
 over~ my:-1
 over~ that:2
 over~ the:-4
 over~ to:1
 over~%:-9
 over~0:1
 over~d:-2
 over~t:-5
 own:2
 own~ ::-3
 own~ a:-5
 own~ line:-3
 own~0:-3
 own~F:3
 oyl:-4
 oz:1
 oz~ g:-4
 p:-6
 pack:-2
 packet:6
 packet~ of:-2
 packs~ of:-3
 paddle:-7
 page:-1
 page~ ::-6
 page~ for:-5
 page~ is:-4
 page~0:-1
 paid:-1
 paid~ for:5
 paid~0:-8
 pail:-8
 paint:6
 pair:2
 pairs:-8
 pair~ of:-2
 pale:-13
 pan:3
 panic:-10
 panick:1
 pantry:-6
 pan~ and:2
 paper~ and:-3
 paper~ cup:5
 paper~0:-5
 paper~t:-4
 parcel:6
 parent:-3
 parish:-9
 participant:3
 partner:-1
 parts:-1
 part~ ?:3
 part~ of:2
 part~0:-9
 pass:-10
 passt:-5
 passt~ das:-5
 pass~ the:-3
 past:1
 paste:-9
 paste~ ::3
 paste~ in:-4
 paste~ is:-4
 paste~ to:-5
 paste~ went:-3
 paste~ with:-4
 pastry:4
 past~ from:-4
 past~ its:-3
 past~0:-3
 patch:-5
 patience:-7
 patient:-9
 pay:-1
 pcs:-6
 pct:-6
 pdf:-8
 peak:-6
 pellet:4
 pencil:-1
 pencill:8
 people:-10
 people~ ask:-4
 people~ in:-3
 people~ who:-8
 people~0:-1
 per:-2
 percent:4
 percentag:-3
 perfect:-7
 perhap:10
 perhap~0:6
 period:-5
 person:-10
 per~ bar:-4
 per~ batch:2
 per~ kilo:-6
 petra:4
 ph:-8
 pharmacist:1
 pharmacy:-4
 phase:-7
 phase~ a:-3
 phase~ b:-3
 phase~ c:-2
 phenolphthalein:6
 phone:2
 phone~ and:5
 phone~ is:-6
 phone~ rang:7
 phone~ read:-7
 photo~ of:-2
 ph~ strip:-7
 pick:-2
 pick~ up:-1
 picture:-8
 piec:-2
 piece~ for:-6
 piece~ of:7
 piec~ of:3
 piec~0:-5
 pig:-8
 pillowcase:-4
 pinch~ of:-4
 pink:3
 pitcher:-6
 place:4
 place~ of:5
 plain:-3
 plain~ white:-2
 plain~F:-6
 plain~W:7
 plan:-2
 plann:-1
 plann~ to:1
 plan~ for:2
 plastic:3
 plastic~ cup:2
 plastic~ jug:4
 plate:3
 play:-5
 pleas:-2
 please:6
 please~ ?:1
 please~ be:-6
 please~ check:-2
 please~ dont:-8
 please~ look:-7
 please~ my:6
 please~ tell:3
 please~ verify:-8
 plenty:-6
 plenty~ for:-6
 plenty~ of:-3
 pls:1
 pls~ check:-4
 plumber:-4
 plus:2
 plus~ a:4
 plus~ an:4
 plus~ the:7
 plus~0:-4
 plus~<:-7
 plus~=:-5
 plus~w:-7
 plz:-4
 pocket:1
 point:-4
 poland:-1
 polish:-2
 polypropylene:-4
 poor:-9
 popcorn:6
 pops:-3
 porch:-4
 porridge:2
 portion:-2
 portugal:2
 possible:-4
 post:-4
 postage:-1
 postal:2
 postal~ scale:2
 postman:2
 post~ this:-6
 post~t:-2
 potato:-8
 potato~ then:-3
 pots:-4
 pot~ ::-4
 pot~ at:-6
 pot~ for:-7
 pot~ holds:1
 pot~ i:-6
 pot~ is:-4
 pot~ of:-2
 pot~ off:-7
 pot~ oils:-8
 pot~ on:-1
 pot~ was:3
 pot~ with:3
 pot~0:1
 pour:6
 pours:-7
 pour~ ::-6
 pour~ and:2
 pour~ at:-8
 pour~ cover:-1
 pour~ in:5
 pour~ into:-6
 pour~ off:3
 pour~ on:1
 pour~ out:8
 pour~ the:-7
 pour~0:4
 pour~=:4
 pour~>:-7
 pour~A:-5
 pour~F:-1
 pour~t:-3
 pour~w:-11
 powder:5
 powder~0:5
 power:-1
 power~ cut:5
 pp:-6
 ppl:-8
 practical:-7
 prefer:5
 premix:-8
 prep:-3
 present:-2
 press:-4
 press~ in:-5
 press~ into:-2
 press~ it:-3
 press~0:-7
 pretty:-8
 pretty~ but:-4
 previou:1
 pric:-5
 price:-8
 print:3
 printout:-6
 print~ on:1
 print~0:-8
 prob:3
 probab:1
 problem:-1
 proces:-1
 proces~ ::-2
 proces~ crock:-3
 proces~ in:-2
 professor:3
 project:-6
 promis:-2
 promise:1
 proper:-5
 proud:-8
 ps:3
 pub:-3
 puck:-2
 pucks:-3
 puck~ dual:-5
 pudd:-7
 puddle:5
 pull:6
 pump:-2
 pupil:-1
 pure:2
 pure~F:-5
 purity:8
 purpose:-1
 push:-6
 put:3
 puts:-6
 puts~ everyth:-3
 put~ a:4
 put~ in:6
 put~ it:-3
 put~ them:-3
 put~ together:-5
 put~0:-2
 put~<:-8
 put~=:-8
 put~>:3
 put~F:3
 put~w:-1
 q:-9
 qty:-4
 quantiti:7
 quantity:-4
 quantity~ of:-4
 quarter:10
 quarter~ of:6
 question:-4
 question~ ::-5
 question~ from:-4
 question~ is:-6
 question~ to:-1
 quick:-7
 quicker:-4
 quicker~ than:-4
 quick~ one:-3
 quite:1
 quot:-5
 q~ ::-3
 r:-2
 rack:-6
 rack~ and:-1
 radiator:-4
 radio:-7
 rain:-1
 rainy:-6
 rais:-7
 ran:5
 rancid~ so:8
 rang:5
 ran~ dry:4
 ran~ out:1
 ran~ short:3
 ran~ the:-7
 rate:-5
 rather:4
 rather~ have:-1
 rather~ than:4
 raw:5
 re:-4
 reach:-5
 reach~ the:7
 reach~d:-6
 read:-1
 reader:-1
 reads:3
 reads~ in:-6
 ready:3
 ready~ for:-4
 ready~ made:3
 ready~ mixed:4
 ready~ to:-8
 read~ it:-2
 read~ that:-5
 read~ the:-3
 read~ this:-4
 read~F:3
 read~b:-1
 real:2
 realis:5
 reality:4
 real~ have:-3
 real~A:-4
 real~N:7
 reason:-2
 rebatch:5
 recall:6
 receipt:9
 recheck:3
 recip:-7
 recipe:-3
 recipe~ ::-3
 recipe~ ?:-3
 recipe~ and:-5
 recipe~ card:-2
 recipe~ for:2
 recipe~ from:-7
 recipe~ i:-3
 recipe~ in:3
 recipe~ is:-3
 recipe~ of:-7
 recipe~ on:-5
 recipe~ was:1
 reckon:5
 reckon~ with:2
 record:-1
 record~0:-7
 red:3
 refill:2
 refin:2
 regard:-5
 remain:-8
 remainder:6
 remain~0:3
 remark:-5
 remark~ ::-2
 remember:3
 remember~ it:-5
 remember~ the:1
 render:-7
 render~ and:-1
 render~ it:1
 render~ the:-8
 render~ twice:-5
 render~=:-5
 render~w:-4
 repeat:-6
 replac:6
 replace:-6
 replace~ it:4
 replac~ by:6
 replac~ the:-1
 reply:-5
 report:-3
 rescu:1
 rescue:5
 rest:3
 rest~ is:4
 rest~ of:-1
 rest~ was:1
 rest~t:-2
 result:-1
 retir:-7
 rev:-7
 rev~0:-7
 re~ ::-3
 ribbon:-5
 rice:-4
 rich:-10
 rid:-4
 rid~ of:-4
 right:-2
 right~ ?:-2
 right~ about:2
 right~ amount:-6
 right~ and:-3
 right~ at:3
 right~ before:1
 right~ but:6
 right~ for:-8
 right~ on:-5
 right~ or:-3
 right~ so:-4
 right~ the:-1
 right~ to:-3
 right~ with:-8
 rim:-2
 ring:-7
 ring~t:-1
 rinse:-6
 rinse~ the:-4
 rins~ the:-1
 rises:-4
 roast:-3
 rock:-6
 roll:-7
 roof:-1
 room:-2
 room~ for:2
 room~ temp:-4
 room~ temperature:-2
 room~0:-5
 rough:2
 rough~d:-1
 rough~w:1
 round:1
 round~ and:-3
 round~ it:-1
 round~ the:4
 round~ to:2
 row:1
 row~0:6
 rspo:-7
 rubb:-1
 rugby:-2
 rugby~ club:-2
 ruin:-5
 rule:-9
 rules:1
 run:-2
 runn:-9
 runny:6
 runs:-1
 run~ out:-9
 run~ the:-3
 rush:-1
 rustic:-8
 ruth:3
 s0ap:-5
 s:-6
 sack:-4
 sack~ of:1
 safe:-1
 safety:-2
 safe~ ?:-4
 safe~ side:3
 safe~ to:-2
 said:1
 said~ a:4
 said~ it:-3
 said~ my:6
 said~ no:-6
 said~ so:-7
 said~ that:-7
 said~ the:-2
 said~ yes:-6
 said~0:2
 said~b:6
 salad:-7
 sale:-8
 salt:4
 same~ amount:8
 same~ as:-8
 same~ bar:-2
 same~ for:-5
 same~ number:-4
 same~ oils:-4
 same~ recipe:6
 same~ thing:-5
 same~ weight:9
 same~F:-2
 same~b:6
 sample:-8
 sandpaper:-3
 sane:-4
 sane~ ?:-3
 sang:-8
 sanity:-4
 sanity~ check:-4
 saponification:3
 sat:-1
 saturday:-2
 sat~ on:-9
 sat~t:-2
 saucer:-3
 save:1
 saved:-1
 saves:-6
 savon:-3
 saw:7
 saw~ it:1
 saw~ the:8
 say:4
 says:3
 says~ ::-6
 says~ and:1
 says~ but:-4
 says~ i:1
 says~ it:-4
 says~ its:-7
 says~ min:6
 says~ my:-8
 says~ that:1
 says~ the:-1
 says~%:1
 says~0:6
 says~>:4
 says~A:1
 says~F:-1
 says~b:-2
 says~e:3
 says~t:-1
 says~v:3
 says~w:3
 say~ a:7
 say~ how:2
 say~ it:-8
 say~ its:-5
 say~ thats:-6
 say~ the:-8
 say~%:4
 say~0:9
 say~F:-8
 say~b:8
 say~w:4
 scal:-2
 scale:3
 scale~ ::-2
 scale~ and:-8
 scale~ at:4
 scale~ but:-8
 scale~ died:4
 scale~ does:-8
 scale~ for:-8
 scale~ is:1
 scale~ jumps:4
 scale~ only:5
 scale~ says:2
 scale~ so:-9
 scale~ switch:2
 scale~ that:-1
 scale~ was:5
 scale~ with:-1
 scale~w:-5
 scar:-4
 school:-3
 school~ fair:4
 science:-6
 scoop:8
 scorch:-3
 scrap:7
 scrape:1
 scrap~ it:-1
 scrap~ the:7
 scratch:-11
 screen:2
 scribbl:-2
 scrubb:-6
 scrubb~ the:-6
 scum:1
 seal:-4
 season:4
 second:1
 second~ day:-7
 second~ go:1
 second~ half:4
 second~ one:-4
 second~ opinion:-4
 second~ pair:-1
 second~ time:3
 second~ try:-2
 secret:-6
 see:2
 seed:-4
 seem:6
 seems:-8
 seen:-2
 see~ a:-7
 see~ here:1
 see~ how:-6
 see~ if:-7
 see~ it:-8
 see~ me:-4
 see~ that:4
 see~ the:-1
 see~ through:-6
 see~ what:1
 self:-1
 sell:-9
 seller:4
 sells:4
 sells~ at:-3
 sell~ at:-1
 send:1
 sense:1
 sensible:-5
 sensible~ ?:-4
 sensitive:3
 sent:5
 sent~ me:1
 separat:-7
 separate:-8
 september:-7
 serv:4
 set:2
 sets:-9
 sets~ in:-2
 sett:-2
 settl:-1
 set~ aside:-5
 set~ in:-8
 set~ it:8
 set~ on:-7
 set~ the:-3
 set~ to:3
 set~ up:-5
 sf:4
 shade:-5
 shall:2
 shampoo:2
 shampoo~ bar:-5
 share:4
 shav:-4
 shave:-7
 shave~ puck:-3
 shave~ soap:-3
 shav~ puck:-4
 shav~ soap:-2
 she:-5
 shed:-3
 sheep:2
 sheet:2
 sheet~ ::-2
 sheet~ and:5
 sheet~ for:2
 sheet~ says:5
 sheet~ sorry:-4
 sheet~0:-8
 shelf:-3
 shelf~ for:-2
 shes:-5
 shes~0:-4
 she~ also:5
 she~ alway:-3
 she~ asked:-5
 she~ did:-5
 she~ does:-3
 she~ gets:-9
 she~ got:-7
 she~ had:-7
 she~ has:-5
 she~ is:-3
 she~ made:-4
 she~ never:2
 she~ right:-2
 she~ said:-2
 she~ says:-5
 she~ stirr:-2
 she~ swear:-2
 she~ told:-2
 she~ used:-6
 she~ wants:5
 she~ was:1
 shift:-3
 shine:-8
 shiny:-7
 shoe:-3
 shoebox:-3
 shoebox~ lined:-2
 shoe~ box:-4
 shook:4
 shop:1
 shopp:-9
 shopp~ list:-5
 shops:-2
 shop~ and:3
 shop~ had:4
 shop~ soap:4
 short:3
 shortage:-4
 short~ ::3
 short~ ?:-7
 short~ burst:-1
 short~ of:-5
 short~ on:-1
 short~ so:7
 should:-1
 should~ be:-2
 should~ have:1
 should~ i:-8
 should~ read:9
 should~ say:4
 shout:-8
 show:-4
 shower:-9
 shows:-1
 shows~ whole:-8
 shows~0:-5
 shows~w:3
 shrink:-7
 shut:1
 shut~ in:3
 side:-1
 sides:-6
 sideway:-7
 side~ of:3
 sieve:-1
 sign:-5
 silicone:-7
 silicone~ loaf:-3
 silicone~ mould:-4
 sill:-6
 silly:11
 simp:-2
 simple:-6
 since:4
 since~ about:-5
 since~ it:5
 since~ last:1
 since~ my:6
 since~ spr:2
 since~ the:2
 since~ then:3
 since~0:-8
 since~F:2
 since~t:5
 single:-3
 sink:-1
 sink~ of:-5
 sink~ with:-2
 sis:-3
 sister':3
 sister:-9
 sister~ in:-5
 sister~ says:-2
 sits:-1
 sits~ in:-6
 sitt:2
 sitt~ in:-3
 sitt~ on:4
 size:1
 size~ of:-4
 skin:-2
 skin~ and:-2
 skin~ is:5
 skin~ off:-5
 skip:3
 skipp:10
 skipp~ it:6
 skipp~ the:9
 skip~ the:1
 skull:-7
 slab:-7
 sleep:-6
 sleev:-5
 slept:-5
 slic:-8
 slice:-8
 slid:-1
 slight:3
 slimy:-8
 slip:3
 slipp:10
 slipp~ and:8
 sliver:-5
 slosh:-2
 slow:-4
 slow~ cooker:-5
 slow~ into:-5
 slush:-7
 small:-3
 small~ print:5
 smell:-5
 smell~ a:-5
 smell~ faint:-5
 smell~ is:-5
 smell~ it:3
 smell~ like:-2
 smell~ of:-6
 smell~ the:-4
 smelt:4
 smoke:-4
 smooth:-12
 sneeze:-3
 sniff:1
 snow~ white:-4
 so:2
 soak:8
 soap':2
 soap:-8
 soaper:-6
 soaps:-8
 soap~ ::-4
 soap~ ?:-1
 soap~ again:-3
 soap~ and:-4
 soap~ at:-6
 soap~ attempt:-2
 soap~ day:-1
 soap~ diary:-6
 soap~ for:-6
 soap~ from:-6
 soap~ i:-3
 soap~ in:-6
 soap~ is:-7
 soap~ like:-5
 soap~ my:-6
 soap~ of:-4
 soap~ on:-5
 soap~ paste:-1
 soap~ since:-5
 soap~ so:-2
 soap~ the:-2
 soap~ to:-1
 soap~ w:-8
 soap~ was:-5
 soap~ with:-3
 soap~0:-3
 soft:-6
 softer:2
 soft~ after:-3
 soft~ as:-6
 soft~ at:-3
 soft~ for:-4
 soft~ in:-6
 soft~ so:3
 soft~ soap:-5
 sold:-7
 sold~ at:-3
 sold~ out:-5
 sold~0:-6
 soleseife:-6
 solid:-5
 solution~ and:-2
 solution~ plus:-6
 some:2
 somebody:-2
 somebody~ asked:-6
 somebody~ check:-3
 somebody~ else:-6
 somebody~ look:-5
 somebody~ run:-6
 somebody~ tell:1
 somebody~ with:-3
 someone:-1
 someone~ at:-6
 someone~ check:1
 someone~ in:-8
 someone~ look:-7
 someone~ tell:-5
 someone~ with:-6
 someth~ else:-1
 someth~ like:-8
 somewhere:-2
 some~ of:3
 some~ people:-8
 some~0:-5
 some~F:-4
 some~N:7
 some~X:-2
 soon:-6
 sooner:-5
 sooner~ than:-5
 sorry~ for:-5
 sorry~ it:-6
 sorry~ my:-4
 sorry~ the:4
 sort:4
 sort~ of:-5
 sound:-7
 sound~ like:-8
 sound~ right:1
 soup:-3
 sour:-1
 source:-1
 source~ ::1
 so~ ::-6
 so~ ?:3
 so~ a:2
 so~ all:3
 so~ another:9
 so~ before:-5
 so~ call:6
 so~ did:-4
 so~ do:-2
 so~ does:-5
 so~ excuse:-6
 so~ far:-2
 so~ fast:-2
 so~ for:-7
 so~ good:5
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
 so~ ive:1
 so~ just:6
 so~ keep:-7
 so~ little:-8
 so~ maybe:1
 so~ much:-5
 so~ my:4
 so~ no:4
 so~ noth:-2
 so~ now:-6
 so~ of:6
 so~ on:-3
 so~ please:1
 so~ sorry:-6
 so~ take:2
 so~ that:-8
 so~ thats:5
 so~ the:1
 so~ ther:3
 so~ there:-3
 so~ this:-5
 so~ those:1
 so~ um:3
 so~ we:-3
 so~ what:4
 so~ whats:4
 so~ who:3
 so~ you:-1
 so~%:-7
 so~0:6
 so~=:2
 so~F:-1
 so~N:12
 so~b:1
 so~e:-11
 so~l:-7
 so~t:-3
 so~w:-3
 spa:4
 space:-8
 spain:-8
 spare:-5
 spatula:-7
 speak:-1
 speed:-7
 spell:-10
 spend:-7
 spent:2
 spill:-5
 spilt:2
 splash:4
 splash~ of:2
 split:2
 split~ it:2
 split~ the:1
 spoon:-1
 spoonful:5
 spoonful~ in:1
 spoonful~ of:1
 spoon~ and:1
 spoon~ at:-6
 spoon~ by:-6
 spoon~ for:3
 spoon~ in:-3
 spoon~ into:-4
 spoon~ it:-5
 spoon~ of:3
 spoon~ slipp:7
 spot:-9
 spots:-2
 spots~ after:-2
 spot~ on:-6
 spray:-7
 spreadsheet:-7
 sprinkl:-7
 sprinkle:-3
 sprinkle~ the:-3
 sprinkl~=:-1
 spr~ and:-1
 squeez:6
 sry:1
 stable:-7
 stack:-2
 stag:-6
 stage:-2
 stage~ at:-3
 stain:-9
 stainles:-6
 stall:1
 stamp:-13
 stamp~ and:-5
 stand:-5
 standard:-5
 stand~ ::-3
 stand~ at:-6
 stand~ for:-4
 stand~ in:-1
 stand~ it:4
 stand~ on:4
 stand~ the:-3
 stand~ there:-2
 stand~ up:1
 stank:-5
 start:-1
 start~ ::-4
 start~ and:-9
 start~ at:-3
 start~ the:-3
 start~ to:-9
 start~ with:5
 start~t:-6
 static:1
 stay:4
 stays:-5
 stays~ as:2
 stays~ in:-6
 stay~ a:-1
 stay~ at:2
 stay~ clear:3
 stay~ cloudy:-2
 stay~ in:10
 stay~ on:3
 stay~ soft:-6
 steam:-13
 steel:2
 steel~ jug:-8
 steel~ pot:-5
 step:-6
 steps:1
 steps~ of:4
 stick:-1
 sticker:-4
 sticky:2
 stick~ blend:-3
 stick~ blender:-9
 stick~ to:1
 stiff:4
 still:1
 still~ cloudy:2
 still~ good:5
 still~ got:-7
 still~ had:4
 still~ have:-2
 still~ in:6
 still~ like:-8
 still~ ok:-7
 still~ on:4
 still~ sitt:7
 still~ smell:-5
 still~ soap:-6
 still~ soft:-1
 still~ stand:4
 sting:-6
 stink:-9
 stir:-4
 stirr~ and:-5
 stirr~ every:-6
 stirr~ for:-3
 stirr~ in:4
 stirr~ into:7
 stirr~ it:-6
 stirr~ one:-4
 stirr~ the:-2
 stirr~ with:-5
 stirr~t:-2
 stirs:-5
 stir~ by:-3
 stir~ every:-1
 stir~ for:-3
 stir~ it:2
 stir~ the:-10
 stir~ till:-2
 stir~ until:-3
 stir~ with:-4
 stir~0:-5
 stir~=:-5
 stir~t:-4
 stock:2
 stood:1
 stood~ at:4
 stood~ in:2
 stop:-7
 stopp:8
 stopp~ at:7
 stops:-4
 stor:-3
 store:1
 store~ the:-7
 story:1
 stove:5
 straight:-5
 straight~ away:-5
 straight~ from:-5
 straight~ into:-5
 straight~ out:4
 straight~ to:1
 strain:7
 strainer:-7
 strain~ it:-5
 strain~ the:-2
 strain~ through:-10
 strain~ twice:-1
 streak:-7
 stream:-4
 street:-6
 strength:3
 stretch:5
 strike:3
 strip:-7
 stripp:-4
 stripp~ the:-4
 strip~ says:-8
 strip~0:-3
 strong:4
 stronger:1
 strong~ ?:-8
 strong~ for:-5
 struck:6
 struck~ out:3
 stuck:3
 stuck~ in:4
 stuck~ to:2
 student:-1
 stuff:-3
 style:-4
 subject:-2
 subject~ ::-3
 suds:-4
 suggest:-1
 suits:-5
 sum:-2
 summer:1
 summer~ and:7
 sums:-3
 sun:3
 sunday:1
 sunday~ ::-4
 sunday~ in:-7
 sunday~ roast:2
 superfat:6
 superfat~ ::5
 superfat~ ?:-4
 superfat~ and:-7
 superfat~ at:1
 superfat~ did:-10
 superfat~ do:-5
 superfat~ for:3
 superfat~ i:-1
 superfat~ in:4
 superfat~ is:-11
 superfat~ of:-8
 superfat~ on:-10
 superfat~ should:-11
 superfat~ with:-1
 superfat~%:3
 superfat~0:3
 supermarket:-5
 supplier:2
 suppose:-1
 sure:3
 sure~ about:-10
 sure~ of:2
 surface:-5
 survive:-4
 suspect:4
 swap:-4
 swapp:7
 swapp~ for:3
 swapp~ the:1
 swapp~F:6
 swaps:-10
 swap~ the:-2
 swear:1
 swear~ by:-2
 swear~ it:-5
 swear~ to:8
 sweat:-7
 sweat~ in:-2
 sweet:-5
 swirl:-8
 swirl~ with:-4
 switch:2
 switch~ itself:-1
 switch~ off:-7
 switch~ to:-1
 swore:-5
 t:-6
 ta:-5
 tabl:-6
 table:3
 tablespoon:5
 table~ is:-6
 table~0:-9
 tabs:-5
 taffy:-9
 tag:1
 tak:5
 take:3
 taken:4
 takes:-13
 takes~ about:-1
 takes~ its:-6
 takes~ the:-4
 takes~=:-1
 takes~t:-4
 take~ it:-8
 take~ off:-3
 take~ that:4
 take~ the:-6
 take~ your:3
 take~0:-10
 take~=:-4
 take~w:-9
 talk:-8
 tall:-7
 tan:-7
 tape:-7
 tared:7
 target:2
 tast:-9
 taste:3
 taught:-7
 taught~ me:-4
 teach:-2
 teacher:-2
 team:-3
 technical:10
 technical~ grade:7
 telephone:-6
 tell:-4
 tells:1
 tells~ me:2
 tell~ my:-6
 tell~ the:1
 tell~ them:-7
 tell~ us:-9
 tell~ whether:1
 temp:-5
 temper:1
 temperature:-8
 temps:-5
 temp~d:-2
 tenth:3
 tenth~ of:4
 term:-5
 test:-3
 tester:1
 test~ ::-5
 test~ at:-10
 test~ it:6
 test~ ok:-3
 test~ on:-1
 test~ with:-5
 text:-3
 than:-2
 thank:-5
 thank~ for:-7
 thank~ to:-1
 thank~ you:-6
 than~ a:-1
 than~ i:3
 than~ it:5
 than~ my:2
 than~ that:-5
 than~ the:-3
 than~ usual:4
 than~0:1
 than~d:-4
 that:5
 thats:-1
 thats~ a:-7
 thats~ all:-5
 thats~ how:3
 thats~ it:-6
 thats~ my:-6
 thats~ the:-4
 thats~ what:7
 thats~ why:-6
 thats~>:-1
 thats~l:-10
 that~ ?:2
 that~ a:-7
 that~ about:-5
 that~ and:4
 that~ be:3
 that~ bit:4
 that~ came:-2
 that~ day:9
 that~ enough:-2
 that~ from:-6
 that~ goes:-1
 that~ has:-5
 that~ i'd:-4
 that~ i:1
 that~ im:2
 that~ in:-1
 that~ into:-2
 that~ is:1
 that~ isnt:2
 that~ it:-7
 that~ its:1
 that~ look:-2
 that~ makes:-6
 that~ matter:5
 that~ mine:4
 that~ my:3
 that~ never:7
 that~ nobody:2
 that~ noth:-5
 that~ off:5
 that~ okay:-2
 that~ on:5
 that~ one:-4
 that~ out:3
 that~ right:-2
 that~ she:2
 that~ solution:-8
 that~ sound:-1
 that~ still:-5
 that~ the:3
 that~ ther:-7
 that~ too:-7
 that~ was:-7
 that~ we:-5
 that~ went:-2
 that~ with:1
 that~ you:-5
 that~0:9
 that~=:-5
 that~A:-2
 that~F:1
 that~L:4
 that~b:3
 thaw:-1
 the:1
 their:-2
 their~ own:-1
 them:-1
 themselv:-2
 them~ ::-2
 them~ and:-5
 them~ for:-1
 them~ is:-2
 them~ on:1
 them~ out:-3
 them~ to:-7
 them~ together:3
 them~0:3
 them~t:-5
 then:-2
 then~ ?:1
 then~ a:1
 then~ add:-4
 then~ at:-4
 then~ i:3
 then~ in:-5
 then~ into:-6
 then~ it:3
 then~ its:-6
 then~ like:-3
 then~ my:4
 then~ pour:-5
 then~ stir:-4
 then~ stirr:-2
 then~ the:-8
 then~ weigh:-7
 then~0:3
 then~<:2
 then~=:-4
 then~>:-2
 then~A:-7
 then~F:-3
 then~S:-3
 then~W:1
 then~e:-7
 then~t:-5
 then~v:6
 ther:3
 there:4
 thereabout:3
 therefore:3
 there~ ?:-7
 there~ are:-1
 there~ because:1
 there~ enough:-3
 there~ is:-1
 there~ may:3
 there~ so:-7
 there~ too:5
 there~ was:-2
 there~ were:3
 there~ with:-3
 thermometer:-9
 ther~ a:2
 ther~ no:-9
 ther~0:-2
 these:-6
 these~ are:-6
 these~ days:4
 these~ fats:-4
 these~ oils:-4
 they:-4
 theyd:5
 theyll:-4
 theyre:-10
 they~ are:4
 they~ do:-6
 they~ say:1
 they~ went:3
 they~ were:-7
 the~ above:5
 the~ air:-1
 the~ amount:-3
 the~ answer:-3
 the~ app:2
 the~ attic:-3
 the~ autumn:-7
 the~ baby:1
 the~ back:2
 the~ bag:4
 the~ balance:-5
 the~ balcony:3
 the~ bar:1
 the~ bars:-11
 the~ batch:-3
 the~ bath:-6
 the~ bathroom:1
 the~ batter:-7
 the~ battery:-1
 the~ beaker:5
 the~ beginn:-1
 the~ bell:-8
 the~ bench:-4
 the~ best:-4
 the~ big:-1
 the~ bin:-4
 the~ birds:-4
 the~ bit:-4
 the~ blender:2
 the~ block:3
 the~ blog:-4
 the~ blue:-1
 the~ board:3
 the~ book:-3
 the~ bottl:-6
 the~ bottle:4
 the~ bottom:-1
 the~ bowl:3
 the~ box:1
 the~ boys:-5
 the~ brim:-2
 the~ bubbl:-5
 the~ bucket:2
 the~ bus:-2
 the~ butcher:-1
 the~ camp:1
 the~ can:1
 the~ candle:-6
 the~ canister:5
 the~ car:-7
 the~ card:-7
 the~ caretaker:-6
 the~ ceil:1
 the~ cellar:-9
 the~ certifi:-6
 the~ certificate:4
 the~ cheap:-8
 the~ chemist:-3
 the~ choir:-3
 the~ church:-5
 the~ class:-7
 the~ clean:-3
 the~ clock:-3
 the~ clubs:-1
 the~ cold:2
 the~ column:-3
 the~ comma:4
 the~ comment:-6
 the~ cooker:4
 the~ cool:-7
 the~ corner:-5
 the~ cost:-5
 the~ counter:4
 the~ county:-4
 the~ course:2
 the~ crockpot:-1
 the~ cubes:-4
 the~ cup:-3
 the~ cupboard:-1
 the~ cure:-9
 the~ dairy:1
 the~ date:-7
 the~ day:-2
 the~ decimal:-5
 the~ discount:-2
 the~ dish:4
 the~ display:1
 the~ dog:2
 the~ door:-1
 the~ dot:-5
 the~ doubl:-7
 the~ double:-3
 the~ drain:2
 the~ drawer:-1
 the~ drum:8
 the~ edge:-5
 the~ edges:-2
 the~ empty:-8
 the~ end:3
 the~ ends:-6
 the~ even:-10
 the~ extra:1
 the~ face:-8
 the~ fair:-1
 the~ fami:1
 the~ farm:-1
 the~ fat:-4
 the~ fats:1
 the~ feed:3
 the~ fence:-5
 the~ figur:-4
 the~ figure:5
 the~ finish:-4
 the~ first:-2
 the~ flak:5
 the~ flat:-3
 the~ floor:6
 the~ foam:-8
 the~ freezer:-10
 the~ fridge:-1
 the~ fryer:1
 the~ full:6
 the~ fumes:-6
 the~ funnel:3
 the~ garage:-3
 the~ garden:-3
 the~ gas:-5
 the~ glass:-1
 the~ goat:3
 the~ goats:5
 the~ goggl:-2
 the~ good:-3
 the~ gram:-7
 the~ greasy:-9
 the~ green:-2
 the~ half:5
 the~ hall:-6
 the~ hand:-4
 the~ handout:1
 the~ hands:4
 the~ hard:-5
 the~ hardware:-1
 the~ heat:-8
 the~ hens:-7
 the~ hob:-1
 the~ holiday:-3
 the~ hood:-6
 the~ hot:2
 the~ house:7
 the~ internet:-4
 the~ jars:-6
 the~ jug:-3
 the~ kettle:8
 the~ kids:-4
 the~ kilo:6
 the~ kitchen:-3
 the~ label:4
 the~ lads:-3
 the~ lady:-4
 the~ last:2
 the~ lather:-1
 the~ laundry:-2
 the~ leftover:-1
 the~ letter:2
 the~ library:-6
 the~ lid:1
 the~ light:-5
 the~ line:5
 the~ liquid:9
 the~ list:10
 the~ litre:6
 the~ loaf:-3
 the~ log:-6
 the~ long:2
 the~ lot:3
 the~ lowest:-4
 the~ lump:-2
 the~ machine:-4
 the~ man:-4
 the~ margin:-1
 the~ mark:4
 the~ market:-5
 the~ mass:-4
 the~ measur:1
 the~ mechanic:3
 the~ melt:4
 the~ mess:-4
 the~ microwave:1
 the~ middle:-5
 the~ mill:-4
 the~ miss:4
 the~ mix:6
 the~ mold:1
 the~ month:-5
 the~ moon:-2
 the~ morn:-7
 the~ most:-9
 the~ mould:-3
 the~ name:-6
 the~ neighbour:-2
 the~ next:-5
 the~ night:-4
 the~ normal:-4
 the~ number:1
 the~ oil:2
 the~ oils:1
 the~ old:-2
 the~ one:2
 the~ ones:-1
 the~ only:-7
 the~ open:1
 the~ order:-7
 the~ original:2
 the~ other:2
 the~ outside:1
 the~ oven:-8
 the~ packet:7
 the~ page:-5
 the~ pan:4
 the~ pantry:-10
 the~ paper:9
 the~ parish:-9
 the~ past:1
 the~ paste:-4
 the~ patience:-4
 the~ phone:4
 the~ photo:5
 the~ picture:-5
 the~ place:7
 the~ plain:-4
 the~ plastic:4
 the~ plate:5
 the~ point:-3
 the~ porch:-5
 the~ post:1
 the~ postman:2
 the~ potato:-7
 the~ pour:-5
 the~ powder:5
 the~ power:-4
 the~ present:1
 the~ price:-7
 the~ printout:-5
 the~ question:-9
 the~ rack:-5
 the~ radiator:-4
 the~ radio:-6
 the~ rain:-3
 the~ ready:4
 the~ real:-9
 the~ reason:-7
 the~ record:2
 the~ remain:-1
 the~ render:-3
 the~ rest:2
 the~ right:-8
 the~ roof:2
 the~ room:2
 the~ row:-6
 the~ rugby:-2
 the~ sack:-3
 the~ safe:3
 the~ salad:1
 the~ same:1
 the~ scale:-2
 the~ school:1
 the~ scum:2
 the~ second:3
 the~ sf:-5
 the~ shed:-1
 the~ sheet:7
 the~ shelf:-3
 the~ shop:3
 the~ shops:-6
 the~ shower:-8
 the~ side:7
 the~ sink:2
 the~ size:1
 the~ skin:-4
 the~ slip:-1
 the~ slow:-3
 the~ small:2
 the~ smell:2
 the~ soap':3
 the~ soap:-3
 the~ solution:1
 the~ spatula:-2
 the~ spoon:-1
 the~ spr:-9
 the~ stall:3
 the~ start:1
 the~ steel:6
 the~ stick:-9
 the~ stirr:-7
 the~ stove:6
 the~ suds:-3
 the~ sum:-2
 the~ summer:-1
 the~ sun:2
 the~ sunday:6
 the~ superfat:-5
 the~ supermarket:-5
 the~ surface:-5
 the~ swirl:-5
 the~ table:4
 the~ tap:-5
 the~ teacher:1
 the~ temperature:-5
 the~ thermometer:-7
 the~ thing:-3
 the~ third:-1
 the~ thread:-6
 the~ thursday:-4
 the~ tiles:7
 the~ time:1
 the~ tin:4
 the~ tongue:-1
 the~ top:-2
 the~ train:-5
 the~ tray:-1
 the~ trimming:1
 the~ tub:2
 the~ unrefin:-6
 the~ usual:6
 the~ varnish:-5
 the~ very:-1
 the~ village:-2
 the~ wall:-6
 the~ war:-7
 the~ wardrobe:-4
 the~ warm:3
 the~ wash:-5
 the~ way:4
 the~ weather:-5
 the~ weekend:-10
 the~ weigh:8
 the~ weight:5
 the~ whole:-2
 the~ window:-7
 the~ windowsill:3
 the~ winter:-4
 the~ wire:-2
 the~ wood:-3
 the~ wooden:-4
 the~ word:-4
 the~ workshop:-3
 the~ worktop:-2
 the~ wrong:6
 the~ yard:-6
 the~ year:-7
 the~<:-5
 the~=:-3
 the~>:-1
 the~A:2
 the~B:-8
 the~C:-14
 the~F:5
 the~I:3
 the~K:3
 the~L:-2
 the~M:3
 the~N:-1
 the~S:-3
 the~T:-7
 the~W:5
 the~X:-4
 the~b:5
 the~l:-3
 the~t:-2
 the~v:-7
 the~w:-7
 thick:-3
 thicken:-3
 thicker:-8
 thick~ as:1
 thick~ like:-6
 thick~ trace:-3
 thin:-3
 thing:-1
 thing~ ?:-7
 thing~ and:-3
 thing~ i:-8
 thing~ in:-6
 think:1
 think~ ?:-8
 think~ about:2
 think~ i:9
 think~ it:1
 think~ its:-1
 think~ my:1
 think~ of:-8
 think~ that:-9
 think~ the:3
 thinn:6
 thin~ stream:-4
 thin~ trace:-6
 third:1
 third~ attempt:-4
 third~ go:5
 third~ of:2
 this:2
 this~ ::3
 this~ ?:-6
 this~ a:-5
 this~ and:-8
 this~ at:1
 this~ batch:-2
 this~ be:-1
 this~ before:-3
 this~ but:-6
 this~ for:5
 this~ from:2
 this~ house:5
 this~ i:-3
 this~ in:-1
 this~ is:-5
 this~ loaf:2
 this~ look:-4
 this~ morn:1
 this~ ok:-3
 this~ on:-6
 this~ one:6
 this~ ones:-5
 this~ or:-7
 this~ pot:2
 this~ recipe:-8
 this~ right:-3
 this~ time:5
 this~ to:-3
 this~ was:-5
 this~ way:-4
 this~ week:-1
 this~ weekend:3
 this~ with:-9
 this~ year:6
 this~0:-8
 this~F:1
 tho:-1
 those:-1
 those~ are:2
 those~ days:-7
 those~ fats:-1
 those~ oils:-3
 those~ who:4
 those~0:3
 though:1
 thought:1
 thought~ ?:-4
 thought~ i'd:-6
 thought~ i:-2
 thought~ it:-3
 thought~ on:-6
 though~ i:3
 thread:-6
 threw:6
 threw~ in:6
 threw~ the:-4
 through:2
 throughout:-1
 through~ a:3
 through~ an:-11
 through~ it:-3
 through~ the:3
 throw:-6
 thrown:6
 throw~ it:-1
 thru:1
 thumb:-3
 thursday:-6
 thx:-3
 tick:-2
 tight:-1
 til:-5
 tiles:6
 till:1
 till~ it:3
 till~ its:-2
 till~ the:-2
 till~0:-5
 time:-3
 timer:-9
 times:2
 times~ i:2
 times~ in:-4
 times~0:9
 time~ and:-5
 time~ because:2
 time~ for:1
 time~ i'd:-2
 time~ in:3
 time~ is:-3
 time~ it:-9
 time~ ive:-1
 time~ lurker:-4
 time~ post:-4
 time~ so:5
 time~ the:1
 time~ to:-3
 time~ with:-7
 time~t:-4
 tin:-1
 tins:-7
 tins~ of:-3
 tiny:-2
 tin~ and:-1
 tin~ is:-9
 tin~ of:-3
 tin~ was:-1
 tin~ with:-8
 tip:-2
 tipp:8
 tipp~ in:7
 tips:-6
 tip~ ::-6
 title:-3
 title~ ::-4
 to:-1
 toast:3
 today:-4
 today~ ::4
 today~ ?:-5
 today~ and:1
 toddler:4
 together:-3
 together~ ?:-2
 together~ in:-4
 together~ with:-5
 told:-4
 told~ her:-5
 told~ me:-3
 told~ us:-5
 told~F:-2
 tom:-2
 tomato:6
 tomorrow:-6
 tongue:-3
 tongue~ test:1
 tonight:6
 tonight~ ::-7
 tonight~ ?:-3
 too:2
 took:3
 took~ a:-5
 took~ ages:-3
 took~ forever:4
 took~ it:-2
 took~ me:-9
 took~ near:-1
 took~ off:2
 took~ the:1
 took~0:-2
 took~<:3
 took~=:-10
 took~>:-3
 took~N:4
 took~l:3
 took~t:-10
 took~w:-5
 tools:-7
 too~ ?:-5
 too~ and:2
 too~ cold:-4
 too~ dry:-3
 too~ early:-6
 too~ hard:-2
 too~ harsh:-4
 too~ high:-6
 too~ hot:-7
 too~ late:-1
 too~ low:4
 too~ many:5
 too~ much:-5
 too~ quick:4
 too~ sharp:-4
 too~ soft:-7
 too~ soon:-6
 too~ strong:-1
 topp:10
 topp~ it:3
 topp~ the:5
 topp~ up:6
 tops:2
 top~ for:-4
 top~ is:-6
 top~ of:2
 top~ shelf:-5
 top~ which:-5
 total:4
 total~ of:-9
 touch:-4
 touch~ it:-6
 touch~ the:-8
 towel:-5
 towel~ over:-5
 towel~ round:-5
 towel~t:-1
 town:1
 to~ a:2
 to~ about:-1
 to~ add:-2
 to~ ask:-7
 to~ be:3
 to~ bed:-4
 to~ buy:-7
 to~ check:-5
 to~ come:5
 to~ cool:-9
 to~ cut:-3
 to~ do:1
 to~ everyone:3
 to~ find:-5
 to~ finish:7
 to~ get:-4
 to~ grate:-2
 to~ hand:1
 to~ have:2
 to~ hear:1
 to~ help:7
 to~ her:-6
 to~ hold:2
 to~ it:1
 to~ keep:-6
 to~ know:-3
 to~ light:-2
 to~ look:-8
 to~ make:1
 to~ me:-1
 to~ melt:-8
 to~ my:-1
 to~ noth:1
 to~ open:-8
 to~ pour:-2
 to~ put:4
 to~ remember:-9
 to~ rough:-2
 to~ see:2
 to~ self:-1
 to~ sell:-2
 to~ set:3
 to~ slush:-8
 to~ soap:-8
 to~ someth:-6
 to~ spare:-2
 to~ spoon:-5
 to~ stir:1
 to~ take:4
 to~ tell:-2
 to~ test:-7
 to~ that:-6
 to~ the:-1
 to~ thicken:-2
 to~ this:-7
 to~ throw:-7
 to~ trace:-8
 to~ try:-4
 to~ unmould:-4
 to~ use:-2
 to~ wait:1
 to~ wash:1
 to~ waste:7
 to~ weigh:-6
 to~ write:1
 to~ you:-4
 to~%:5
 to~<:6
 to~=:-2
 to~>:5
 to~F:-9
 to~T:-3
 to~X:-4
 to~b:-4
 to~d:-4
 to~e:-3
 to~t:4
 to~w:-5
 trac:-7
 trace:1
 trace~ ::-7
 trace~ add:2
 trace~ after:-5
 trace~ and:-7
 trace~ at:-2
 trace~ because:6
 trace~ came:-5
 trace~ i:-6
 trace~ in:-6
 trace~ stir:-5
 trace~ then:-1
 trace~ was:-5
 trace~t:-6
 track:4
 tractor:-5
 trac~ after:-2
 trac~ in:-5
 trade:-9
 trail:-4
 train:-7
 translat:-4
 translate:-4
 translat~ from:-3
 translucent:-3
 tray:-3
 trays:-4
 treat:-2
 trees:1
 trial:-8
 trick:-9
 trick~ for:-5
 tried:-9
 tried~ it:2
 trimm:1
 trimming:-1
 tripl:-7
 trouble:-3
 true:-1
 trust:-6
 trust~ it:-6
 trust~ the:-5
 truth:1
 try:-13
 try~ it:-8
 try~ to:-2
 tub:-1
 tube:-6
 tubs:3
 tub~ ::-8
 tub~ and:-8
 tub~ is:-4
 tub~ of:-3
 tub~ says:-9
 tub~ was:2
 tue:-3
 tuesday:-1
 tue~t:-1
 turn:-1
 turns~ out:6
 turns~0:-5
 turn~ it:-2
 turn~ out:5
 turn~ the:-3
 turn~ to:1
 turn~S:-4
 tutor:-2
 twentieth:3
 twice:2
 twice~ a:-5
 twice~ and:3
 twice~ before:-8
 twice~ i:4
 twice~ with:-6
 typ:-7
 type:3
 typed:6
 typed~ the:6
 typo:2
 u:-7
 ugh:-2
 ugly:-6
 um:2
 uncl:-5
 uncle:-3
 under:-3
 underneath:-5
 understand:-5
 under~ a:-3
 under~ it:2
 under~ the:1
 under~0:-9
 under~d:-3
 under~t:-3
 under~w:-8
 unit:-4
 units:-7
 unit~ ::-3
 unles:1
 unmold:-7
 unmould:-6
 unmould~ after:-5
 unmould~t:-1
 unrefin:-8
 unsaponifi:10
 unscent:-6
 until:-1
 until~ a:-6
 until~ both:-1
 until~ i:-1
 until~ it:-1
 until~ its:-5
 until~ the:3
 until~ you:-3
 until~t:-1
 up:6
 update:3
 update~ ::-1
 upon:4
 up~ ::2
 up~ ?:-6
 up~ again:-9
 up~ and:1
 up~ by:2
 up~ for:-8
 up~ i:-9
 up~ in:-4
 up~ like:-6
 up~ my:-2
 up~ on:7
 up~ so:1
 up~ the:4
 up~ there:4
 up~ to:3
 up~ with:1
 up~0:10
 ur:-5
 us:-1
 use:-3
 used:2
 used~ a:-1
 used~ for:1
 used~ it:1
 used~ that:4
 used~ the:7
 used~ to:-10
 used~0:-4
 used~=:-8
 used~>:-4
 used~F:-5
 used~L:3
 used~N:-4
 used~l:-2
 used~w:-2
 uses:-4
 use~ ?:-2
 use~ a:-2
 use~ in:-4
 use~ it:-7
 use~ the:-5
 use~ up:4
 use~>:4
 use~F:-7
 use~I:-4
 use~N:-1
 use~l:-3
 using:2
 using~=:-5
 usual:1
 us~ the:-1
 vanish:-4
 varnish:-5
 vegan:-9
 vegetable:-4
 vegetarian:-10
 verdict:-4
 verify:-7
 verify~ the:-6
 version:-5
 version~ ::-1
 version~0:4
 very:-1
 very~ first:-7
 very~ nice:-5
 vet:-5
 video:-6
 village:-3
 village~ hall:-1
 virgin:-6
 voice:3
 volcano:-10
 w:1
 wait:-4
 waits:3
 wait~ for:-7
 wait~ i:-7
 wait~ till:-3
 wait~ until:-8
 wait~t:-3
 walk:4
 wall:-2
 want:4
 wants:-4
 wants~ a:-4
 wants~ it:-6
 wants~ me:-3
 wants~ some:-2
 wants~ the:-7
 wants~ to:-4
 want~ a:-5
 want~ the:4
 want~ to:-4
 want~%:1
 want~0:7
 want~F:-8
 war:-8
 wardrobe:-6
 warm:-7
 warmth:-7
 warm~ in:-4
 warm~ it:-4
 warm~ oils:3
 warm~ the:-9
 warm~ to:-7
 warm~F:-3
 warn:-8
 was:5
 wash:-6
 wash~ it:2
 wash~ the:2
 wash~ up:-1
 wash~ with:-6
 wasnt:13
 wasnt~ enough:1
 wast:3
 was~ a:1
 was~ all:3
 was~ already:3
 was~ at:-5
 was~ clean:-2
 was~ clear:-5
 was~ cold:2
 was~ done:3
 was~ empty:9
 was~ fine:-3
 was~ finish:4
 was~ for:-2
 was~ from:-1
 was~ going:-6
 was~ gone:-4
 was~ hard:-8
 was~ hot:-5
 was~ in:4
 was~ it:-3
 was~ like:3
 was~ made:-1
 was~ meant:5
 was~ melt:3
 was~ my:-4
 was~ near:5
 was~ never:-2
 was~ no:-2
 was~ not:9
 was~ off:8
 was~ old:-4
 was~ on:3
 was~ one:5
 was~ only:1
 was~ open:7
 was~ out:6
 was~ over:4
 was~ pour:3
 was~ ready:-2
 was~ real:6
 was~ right:-7
 was~ so:5
 was~ stand:7
 was~ stirr:-2
 was~ that:-6
 was~ the:-4
 was~ thick:-3
 was~ told:2
 was~ too:-6
 was~ under:-5
 was~ very:-8
 was~ warm:-6
 was~ weigh:6
 was~ what:-4
 was~ with:2
 was~%:-5
 was~0:-4
 was~<:4
 was~=:-7
 was~>:-10
 was~A:4
 was~F:5
 was~L:6
 was~N:2
 was~X:7
 was~b:4
 was~d:-8
 was~e:7
 was~l:-8
 was~t:-7
 was~v:2
 was~w:6
 watch:-7
 watch~ the:-6
 water:2
 water~ bath:-6
 waxy:-5
 way:2
 way~ about:1
 way~ and:-1
 way~ in:6
 way~ of:-7
 way~ round:-2
 we:1
 wear:-8
 wear~ goggl:-4
 weather:-5
 wedd:2
 wedd~ favour:1
 wednesday:-6
 week:-5
 week~ and:-10
 week~ so:5
 week~0:-9
 weigh:-2
 weight:2
 weight~ ::-7
 weight~ and:3
 weight~ g:-4
 weight~ in:3
 weight~ made:-6
 weight~ of:-3
 weight~ oz:-5
 weight~ so:-6
 weight~A:-5
 weigh~ ?:-7
 weigh~ a:-4
 weigh~ after:-4
 weigh~ again:4
 weigh~ and:1
 weigh~ anyth:-2
 weigh~ as:3
 weigh~ by:5
 weigh~ everyth:-6
 weigh~ i:-5
 weigh~ in:1
 weigh~ it:2
 weigh~ like:2
 weigh~ my:3
 weigh~ on:1
 weigh~ one:-4
 weigh~ out:-6
 weigh~ the:3
 weigh~0:2
 weigh~<:-6
 weigh~=:-7
 weigh~F:-2
 weigh~e:6
 weigh~l:-2
 weigh~w:-8
 welcome:-5
 well~ and:-3
 well~ as:-4
 well~ be:6
 well~ have:7
 went:4
 went~ a:5
 went~ above:-5
 went~ away:-6
 went~ back:-3
 went~ brown:-4
 went~ by:-5
 went~ clear:-8
 went~ cloudy:-7
 went~ dark:-3
 went~ down:6
 went~ for:7
 went~ from:-9
 went~ in:7
 went~ into:4
 went~ on:5
 went~ over:3
 went~ the:-5
 went~ to:-5
 went~ with:5
 went~ without:3
 went~ wrong:-5
 went~ yellow:-7
 went~=:-7
 went~S:-6
 were:2
 were~ a:-2
 were~ at:-6
 were~ on:-4
 were~0:2
 were~=:1
 were~F:-3
 were~w:-3
 wet:5
 wet~ cloth:-4
 wet~ dog:-3
 weve:-3
 we~ are:-2
 we~ count:-5
 we~ cut:-6
 we~ did:4
 we~ do:2
 we~ got:-8
 we~ had:1
 we~ have:-4
 we~ keep:-6
 we~ made:-7
 we~ make:3
 we~ pour:-4
 we~ put:-7
 we~ render:-2
 we~ say:3
 we~ took:1
 we~ use:-9
 we~ used:-3
 we~ want:4
 we~ weigh:2
 we~ went:-1
 we~ were:3
 what:3
 whatever:6
 whatever~ the:8
 whatever~ was:9
 whats:1
 whatsoever:1
 whats~ in:4
 whats~ the:-4
 what~ a:-8
 what~ came:6
 what~ did:-4
 what~ do:1
 what~ does:-6
 what~ g:-4
 what~ happen:-5
 what~ how:-7
 what~ i'd:4
 what~ i:8
 what~ im:3
 what~ is:-4
 what~ it:3
 what~ my:-1
 what~ remain:-2
 what~ she:-5
 what~ superfat:-10
 what~ they:5
 what~ was:-5
 what~ we:-3
 what~ went:1
 what~ would:-6
 what~ you:-2
 what~ youd:-1
 when:-1
 whenever:-1
 when~ both:-7
 when~ cut:-5
 when~ i:2
 when~ it:2
 when~ its:-2
 when~ she:-1
 when~ the:2
 when~ wash:6
 when~ you:2
 when~F:-9
 where:3
 where~ i:-5
 where~ it:8
 where~ she:-7
 where~ the:4
 where~ you:2
 whether:-4
 whether~ it:-4
 whether~F:-8
 whether~b:-4
 which:2
 which~ bring:-1
 which~ i:5
 which~ is:-4
 which~ makes:-5
 which~ of:3
 which~ one:7
 which~ the:1
 which~ was:-3
 which~F:-6
 while:-2
 while~ i:4
 while~ it:-1
 while~ the:-8
 whipp:2
 whisk:-8
 white:-7
 whiteboard:-7
 whiter:-6
 white~ and:1
 white~ as:-7
 white~ powder:-4
 white~ spots:-5
 white~F:-2
 who:-1
 whole:1
 whole~ grams:-8
 whole~ thing:4
 whole~ time:-2
 whos:-3
 whose:4
 whos~ right:-3
 who~ asked:-6
 who~ cant:4
 who~ does:1
 who~ has:-3
 who~ is:-5
 who~ knows:5
 why:-13
 why~ ?:-2
 why~ does:-3
 why~ i:-4
 why~ it:-4
 why~ its:-5
 why~ the:-6
 why~F:-2
 width:-3
 wife:-2
 wifes:-3
 wife~ likes:-7
 wife~ says:3
 will:-7
 will~ be:-7
 will~ climb:-4
 will~ do:-6
 will~ it:-3
 will~ need:-2
 will~ not:1
 will~ that:-2
 will~ the:-4
 will~ this:-2
 wind:-5
 window:-11
 windowsill:2
 window~ open:-8
 winter:-5
 winter~ and:1
 winter~ bar:-1
 winter~ hands:-6
 winter~ i:-6
 wipe:-5
 wiped:-2
 wire:-5
 wish:4
 within:-9
 within~t:-7
 without:7
 without~ a:-8
 without~ it:5
 without~ my:-1
 without~ the:2
 without~F:-2
 with~ a:-2
 with~ all:-5
 with~ an:-4
 with~ another:1
 with~ bak:-3
 with~ both:-3
 with~ everyth:6
 with~ freezer:-3
 with~ glov:-2
 with~ goggl:-3
 with~ its:-4
 with~ me:2
 with~ more:1
 with~ my:-9
 with~ no:-3
 with~ noth:6
 with~ one:2
 with~ only:-8
 with~ some:2
 with~ that:2
 with~ the:3
 with~ this:2
 with~ us:-4
 with~ wet:-4
 with~ what:2
 with~%:7
 with~0:-2
 with~<:-2
 with~=:-3
 with~>:-5
 with~C:2
 with~F:-7
 with~I:-3
 with~L:-5
 with~N:1
 with~S:-9
 with~U:1
 with~b:-3
 with~e:-6
 with~l:-9
 with~v:-1
 with~w:4
 woman:-9
 woman~ at:-2
 women:-4
 wonder:7
 wonky:-7
 wont:-1
 wood:-8
 wooden:-3
 wooden~ box:-2
 wooden~ mould:-7
 wooden~ one:-5
 wooden~ spoon:2
 wood~ stove:-3
 words:-7
 word~ for:-7
 works:-7
 worksheet:-3
 workshop:-3
 worktop:-2
 work~ ?:-2
 work~ in:2
 work~ it:4
 work~ out:-2
 work~ with:3
 worri:4
 worry:1
 worry~ is:1
 worth:2
 worth~ of:5
 would:-2
 wouldnt:4
 wouldnt~ dissolve:8
 would~ a:-3
 would~ be:-1
 would~ do:-8
 would~ have:-3
 would~ it:-2
 would~ like:4
 would~ love:2
 would~ not:-5
 would~ say:1
 would~ take:1
 would~ the:-8
 would~ you:2
 wrap:-8
 wrapp:-12
 wrapper:-6
 wrapp~ in:-5
 wrapp~ it:-4
 wrap~ in:-1
 wrist:-4
 writ:-4
 write:-5
 write~ down:-3
 write~ the:-7
 write~ up:-5
 written:3
 written~ ?:-3
 written~ on:-6
 wrong~ ?:-5
 wrong~ with:-7
 wrote~ ::-4
 wrote~ in:1
 wrote~ it:4
 wrote~ on:-6
 wrote~ that:-7
 wrote~ this:-3
 wrote~F:4
 wrote~e:-1
 wt:-7
 w~ a:-10
 w~ my:-3
 w~ the:1
 w~ w:2
 w~=:-3
 x:2
 xmas:2
 x~0:4
 x~F:-9
 yall:-5
 yard:-7
 year:-7
 years:-6
 years~ ago:-4
 year~ and:1
 year~ i:-6
 year~ in:-5
 year~ is:4
 year~0:-5
 yellow:-11
 yes:-4
 yesterday:-5
 yes~ its:-7
 yes~ no:-3
 yes~ or:-1
 yes~ the:-1
 yet:6
 yield:1
 yield~ ::1
 yield~0:3
 you:-3
 youd:-4
 youll:-4
 youll~ want:1
 young:-4
 your:-9
 youre:-9
 yours:-1
 your~ arm:-2
 your~ own:3
 your~ skin:-5
 your~A:-5
 your~F:-3
 youve:-9
 you~ ?:-2
 you~ all:-7
 you~ and:-4
 you~ are:-5
 you~ ask:2
 you~ asked:-4
 you~ call:-8
 you~ can:-3
 you~ cant:-8
 you~ check:-5
 you~ could:-11
 you~ cut:-2
 you~ do:2
 you~ dont:-8
 you~ feel:-3
 you~ for:-7
 you~ get:-4
 you~ go:-7
 you~ have:-1
 you~ know:5
 you~ like:-6
 you~ look:-3
 you~ lot:-2
 you~ make:-6
 you~ need:-8
 you~ pour:-8
 you~ put:-8
 you~ read:1
 you~ should:5
 you~ start:3
 you~ tell:5
 you~ think:-3
 you~ to:-4
 you~ trust:-1
 you~ use:-4
 you~ wait:-2
 you~ want:-10
 you~ weigh:-6
 you~ will:1
 you~ wont:1
 you~ work:3
 zap:-8
 zapp:7
 zappy:-4
 zaps:2
 zap~ test:-4
 zero:5
 zero~ the:6
 ×:-1
 üf:-8
%%:-3
%0:-8
%:7
%<:-6
%=:-1
%>:-9
%A:6
%F:-2
%K:-7
%N:3
%S:-5
%X:1
%l:-3
%t:-6
%w:3
%~ ?:-2
%~ and:-4
%~ by:2
%~ extra:6
%~ flak:3
%~ for:10
%~ in:-2
%~ is:-2
%~ less:-2
%~ liquid:8
%~ off:-1
%~ on:4
%~ or:3
%~ over:4
%~ pure:-5
%~ purity:-4
%~ sf:-4
%~ so:4
%~ solution:-3
%~ superfat:3
%~=:-5
%~A:4
%~F:-5
%~K:-7
%~W:-4
%~X:2
0%:-7
00:-4
0:4
0<:-4
0>:-2
0A:-1
0C:5
0F:-1
0I:6
0K:-7
0M:4
0N:4
0S:-4
0T:1
0W:2
0X:-5
0b:-4
0d:-3
0l:-3
0r:-2
0t:-5
0v:-7
0w:-6
0~ =:-9
0~ ?:1
0~ a:-12
0~ after:3
0~ all:6
0~ and:-1
0~ are:3
0~ as:7
0~ at:-1
0~ b:-7
0~ bar:-6
0~ bars:-7
0~ batch:-4
0~ because:9
0~ before:4
0~ big:-3
0~ block:1
0~ both:-4
0~ bottl:-6
0~ bucket:-5
0~ but:-1
0~ c:-5
0~ cakes:-2
0~ can:-6
0~ caviti:-4
0~ children:-6
0~ comment:-3
0~ cut:4
0~ degre:-4
0~ drops:-7
0~ empty:2
0~ evening:-5
0~ except:6
0~ fat:-4
0~ fats:-11
0~ for:-7
0~ from:2
0~ full:-7
0~ gives:-6
0~ goats:-9
0~ goes:-2
0~ group:-5
0~ guest:-5
0~ had:-9
0~ i:6
0~ if:-3
0~ in:-3
0~ into:4
0~ is:2
0~ it:-1
0~ its:-1
0~ jars:-1
0~ kitchen:-5
0~ lather:-4
0~ left:-7
0~ like:-4
0~ little:-8
0~ loaf:-4
0~ loav:-1
0~ lyes:-8
0~ made:-8
0~ more:-5
0~ my:5
0~ n:-2
0~ night:-4
0~ no:5
0~ not:4
0~ now:1
0~ of:3
0~ off:-1
0~ oil:-8
0~ oils:-5
0~ on:7
0~ once:3
0~ one:-3
0~ or:4
0~ out:2
0~ p:-7
0~ packet:-1
0~ packs:1
0~ pcs:-6
0~ people:-8
0~ per:-4
0~ percent:7
0~ piec:-1
0~ please:9
0~ plus:2
0~ pour:-6
0~ pupil:-3
0~ right:-3
0~ scal:-7
0~ she:-2
0~ silicone:-3
0~ since:4
0~ slic:-6
0~ small:-5
0~ so:-4
0~ someth:2
0~ spoon:1
0~ still:-8
0~ superfat:7
0~ that:-3
0~ thats:2
0~ the:4
0~ then:3
0~ thing:-9
0~ this:3
0~ times:-1
0~ tins:-3
0~ towel:-7
0~ until:-7
0~ w:6
0~ was:-4
0~ weigh:-4
0~ went:4
0~ were:3
0~ when:4
0~ which:-4
0~ winter:-2
0~ with:-9
0~ x:2
0~ zap:-4
0~ ×:-7
0~0:-3
0~A:-6
0~F:-3
0~L:-1
0~N:-2
0~S:3
0~W:-3
0~X:6
0~b:-10
0~t:-4
0~w:-3
<%:2
<0:-2
<:3
<<:-3
<=:-5
<>:-2
<A:5
<C:2
<F:2
<I:-9
<K:7
<L:4
<N:-3
<S:-2
<W:-4
<X:1
<d:-4
<l:-7
<v:-3
<w:-2
<~ +:-5
<~ and:5
<~ because:2
<~ i:-6
<~ in:-3
<~ less:-3
<~ more:9
<~ of:2
<~ short:5
<~ the:5
<~C:2
<~F:3
<~I:-5
<~L:-4
<~S:-3
<~W:-4
<~X:-6
=%:-12
=0:6
=:-4
=<:-3
==:-3
=>:-3
=A:-3
=F:-4
=I:-3
=K:-1
=L:-1
=N:5
=S:-1
=W:-1
=X:-2
=b:-3
=d:-2
=r:-5
=t:-3
=v:-7
=w:-5
=~ +:-5
=~ ::4
=~ =:-8
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
=~ did:-2
=~ dissolv:-6
=~ does:-2
=~ for:-5
=~ free:-7
=~ from:-3
=~ goes:-2
=~ good:-1
=~ i:-7
=~ im:-7
=~ in:-3
=~ into:-5
=~ it:-6
=~ its:1
=~ melt:-5
=~ mk:-5
=~ my:1
=~ no:-4
=~ not:-12
=~ of:-3
=~ ok:-2
=~ on:-3
=~ so:-5
=~ superfat:-8
=~ that:-7
=~ the:-1
=~ then:-5
=~ too:-3
=~ with:2
=~%:-6
=~0:5
=~<:-4
=~=:-2
=~A:-3
=~F:-3
=~L:-4
=~W:-1
=~X:-3
=~t:-1
>%:-2
>0:-6
>:-2
><:-4
>=:-2
>>:-6
>A:-2
>F:-4
>K:-7
>L:1
>W:-5
>e:-10
>l:-7
>t:-2
>w:-5
>~ and:-1
>~ i:-7
>~ in:-2
>~ is:-6
>~ of:-5
>~ oils:-1
>~ so:-6
>~ the:-6
>~A:-4
>~F:4
>~L:-2
>~W:-5
A%:5
A0:5
A<:-1
A=:-3
AA:1
AB:4
AC:-8
AF:4
AI:-7
AL:1
AN:-7
AS:-3
AW:-2
AX:-1
Ae:1
Al:-8
Ar:-7
At:-4
Aw:-4
A~ +:-1
A~ ::5
A~ =:1
A~ ?:-5
A~ a:-7
A~ about:-4
A~ all:1
A~ alright:-5
A~ and:-2
A~ as:7
A~ bag:2
A~ be:-3
A~ because:-4
A~ before:-6
A~ but:-3
A~ came:-6
A~ can:-1
A~ check:-7
A~ comes:5
A~ cool:2
A~ correct:-9
A~ dissolv:-3
A~ does:-7
A~ down:3
A~ figure:4
A~ fine:-4
A~ first:-1
A~ fit:-6
A~ fits:-4
A~ for:1
A~ from:6
A~ g:-8
A~ gets:-6
A~ goes:-7
A~ good:-7
A~ got:6
A~ had:3
A~ half:-7
A~ has:5
A~ heavy:1
A~ here:7
A~ i:4
A~ if:5
A~ into:-5
A~ is:4
A~ it:4
A~ its:7
A~ jug:-4
A~ left:-3
A~ like:-4
A~ look:1
A~ looks:-3
A~ n:1
A~ no:-7
A~ not:5
A~ of:1
A~ ok:-6
A~ okay:-4
A~ on:-6
A~ one:-5
A~ only:3
A~ or:-4
A~ over:-8
A~ paste:3
A~ per:3
A~ please:-7
A~ pls:-4
A~ pot:5
A~ ready:-5
A~ real:-8
A~ right:-5
A~ row:-3
A~ sensible:-5
A~ she:-7
A~ slow:-2
A~ so:3
A~ soap:-3
A~ sprinkl:-3
A~ still:-7
A~ that:-8
A~ the:-4
A~ then:-3
A~ there:1
A~ to:-2
A~ too:-10
A~ tub:5
A~ up:5
A~ was:-1
A~ weigh:8
A~ went:1
A~ when:1
A~ where:4
A~ which:-1
A~ with:-4
A~ wrong:-5
A~ you:5
A~%:-6
A~0:-1
A~<:2
A~=:-2
A~>:-6
A~A:-5
A~F:-2
A~L:2
A~W:1
A~d:-5
A~e:-1
A~r:-7
A~t:5
A~v:-2
B0:-5
B:3
BF:5
B~ and:-9
B~ so:-5
C%:-7
C:5
CA:4
CW:1
Cv:4
C~ at:3
C~ in:6
C~ is:-3
C~%:-7
C~<:-5
F%:1
F:1
F<:4
F=:-3
F>:-1
FA:-3
FB:5
FI:-6
FK:-4
FL:1
FN:6
FS:-10
FT:-4
FU:2
FW:-1
FX:2
Fd:-3
Fe:2
Fl:-7
Fr:6
Ft:-3
Fv:-8
Fw:2
F~ +:3
F~ ::3
F~ =:2
F~ ?:-6
F~ a:1
F~ about:-1
F~ add:3
F~ after:3
F~ again:2
F~ all:2
F~ alone:-5
F~ altogether:-3
F~ are:3
F~ as:5
F~ at:2
F~ back:5
F~ bar:-4
F~ bars:-11
F~ batch:-7
F~ because:6
F~ beef:-5
F~ before:-5
F~ block:-3
F~ bottle:-7
F~ but:-2
F~ by:-2
F~ came:2
F~ can:-4
F~ clean:-4
F~ cold:-6
F~ comes:-8
F~ could:6
F~ count:-7
F~ does:-4
F~ down:7
F~ extra:5
F~ figure:4
F~ fills:-8
F~ first:-7
F~ for:-4
F~ free:-5
F~ from:-5
F~ g:-7
F~ gent:-6
F~ gives:-7
F~ go:-11
F~ goes:-8
F~ gone:-3
F~ got:9
F~ grams:-6
F~ had:-3
F~ half:-3
F~ has:-6
F~ here:3
F~ i'd:5
F~ i:3
F~ if:-7
F~ im:7
F~ in:2
F~ instead:5
F~ into:-3
F~ isnt:1
F~ it:4
F~ its:2
F~ ive:7
F~ jar:-4
F~ jug:4
F~ keeps:-7
F~ l:-3
F~ last:-10
F~ left:-2
F~ like:2
F~ line:7
F~ look:4
F~ looks:-3
F~ makes:-4
F~ melt:-10
F~ melts:-6
F~ my:3
F~ n:2
F~ never:9
F~ next:-6
F~ no:-8
F~ not:2
F~ of:-1
F~ off:-1
F~ on:-3
F~ once:-6
F~ one:-12
F~ only:2
F~ or:-10
F~ out:4
F~ over:-5
F~ oyl:-4
F~ packet:7
F~ paste:-6
F~ plus:1
F~ ran:2
F~ read:2
F~ real:-8
F~ render:-7
F~ right:-4
F~ rspo:-7
F~ says:-5
F~ sets:-5
F~ should:2
F~ since:1
F~ smell:-9
F~ so:5
F~ soap:-5
F~ soaps:-7
F~ stand:-4
F~ stay:9
F~ still:4
F~ stirr:-3
F~ strain:4
F~ stuck:1
F~ takes:-7
F~ than:2
F~ that:-6
F~ thats:3
F~ the:-2
F~ there:3
F~ thicken:-8
F~ this:-2
F~ through:-7
F~ tin:-1
F~ to:4
F~ together:3
F~ too:-6
F~ trac:-8
F~ tub:-3
F~ turn:8
F~ twice:4
F~ until:7
F~ up:3
F~ used:-5
F~ w:2
F~ warm:-5
F~ was:-2
F~ weigh:-5
F~ well:2
F~ went:-2
F~ were:-3
F~ which:-2
F~ while:3
F~ will:-5
F~ would:2
F~ wouldnt:-1
F~ you:5
F~%:1
F~0:4
F~<:3
F~=:-1
F~>:-1
F~A:-3
F~F:-4
F~N:7
F~W:-1
F~d:-3
F~e:-1
F~t:-10
I0:1
I:2
I<:1
IA:-2
II:1
IL:4
Ib:-7
Id:5
Iw:-7
I~ +:-3
I~ ::3
I~ and:-1
I~ bath:-1
I~ first:-6
I~ had:7
I~ in:-6
I~ is:-1
I~ it:7
I~ round:-4
I~ so:-6
I~ tray:1
I~ was:6
I~<:2
K%:-7
K0:-8
K:3
K=:-2
K>:-6
KA:-6
KF:-7
KL:-4
KW:-4
Kd:-6
Kr:2
Kt:-3
K~ ::-6
K~ and:-4
K~ g:-7
K~ in:-2
K~ into:3
K~ is:2
K~ mixed:3
K~ my:-9
K~ of:-6
K~ on:4
K~ was:-3
K~%:-8
K~>:-5
K~A:-2
K~r:-1
L0:-1
L:1
L<:-5
L=:-1
L>:3
LA:-7
LF:-2
LI:6
LL:3
LN:2
LS:6
LU:-4
LW:3
LX:-2
Lb:3
Le:3
Ll:-4
Lt:-4
Lv:-5
Lw:-1
L~ ::2
L~ a:1
L~ after:-2
L~ and:-1
L~ at:-2
L~ bar:-6
L~ bars:-4
L~ batch:-7
L~ because:2
L~ boil:3
L~ by:-3
L~ flat:5
L~ for:-1
L~ from:11
L~ frozen:-8
L~ goes:-5
L~ i:-2
L~ in:-1
L~ instead:-9
L~ is:1
L~ no:-6
L~ of:7
L~ on:4
L~ out:7
L~ over:4
L~ pot:-6
L~ same:7
L~ so:2
L~ soap:-6
L~ stage:-5
L~ straight:-1
L~ thaw:-4
L~ the:5
L~ to:2
L~ towel:2
L~ was:4
L~ went:2
L~ which:6
L~ with:4
L~0:-2
L~=:-1
L~>:-2
L~X:-4
L~b:7
L~l:-10
L~t:-3
L~w:1
M0:3
M:3
MA:4
M~ and:-5
M~ in:4
M~ is:1
M~ soap:-7
N0:6
N:10
N<:-2
NA:-5
NF:1
NL:2
NN:-1
Nb:5
Nl:2
Nt:-9
Nw:4
N~ after:-1
N~ and:-10
N~ as:2
N~ at:-1
N~ because:1
N~ for:-1
N~ from:10
N~ i:7
N~ if:2
N~ in:1
N~ instead:-2
N~ is:-1
N~ it:9
N~ or:-6
N~ same:10
N~ since:4
N~ that:-2
N~ the:6
N~ to:5
N~ was:-6
N~ where:7
N~ would:-7
N~N:-2
S%:-8
S0:-6
S:-5
S<:-4
SF:-2
SL:-4
SN:8
SS:-6
SX:-3
Sd:-1
St:-5
Sv:-4
Sw:-3
S~ ::-4
S~ a:-6
S~ and:2
S~ as:-2
S~ at:-8
S~ because:2
S~ blend:-4
S~ fades:-3
S~ for:-6
S~ from:-5
S~ goes:-4
S~ i:-7
S~ in:1
S~ is:5
S~ leav:-5
S~ mould:-6
S~ no:-2
S~ once:-2
S~ only:1
S~ pour:-1
S~ powder:-4
S~ smell:-5
S~ spots:-6
S~ the:-6
S~ then:-3
S~ was:1
S~ when:-5
S~ which:-6
S~0:-5
S~<:-4
S~S:-3
S~w:-5
T0:-2
T:-9
TF:-3
T~ of:-6
T~ oils:-3
U:4
UF:2
Ut:-2
U~ and:-1
U~ i:-7
U~ in:3
U~ look:-1
U~ stage:-3
W%:-8
W0:6
W:1
W<:4
W=:-3
W>:-3
WF:-4
WI:-3
WL:6
WS:-3
WW:2
WX:1
Wb:2
Wd:-5
We:-2
Wl:-2
Wt:1
Wv:-5
Ww:-1
W~ +:-2
W~ =:-6
W~ ?:-10
W~ a:8
W~ after:-4
W~ all:-2
W~ and:-2
W~ as:4
W~ at:4
W~ because:4
W~ before:3
W~ boil:-2
W~ but:2
W~ clear:-4
W~ does:-6
W~ down:4
W~ first:-4
W~ for:-5
W~ from:-4
W~ g:-8
W~ got:-3
W~ here:-4
W~ i:8
W~ in:-5
W~ into:-9
W~ is:2
W~ it:3
W~ let:-4
W~ like:1
W~ looks:-6
W~ makes:-7
W~ never:-4
W~ on:-8
W~ or:5
W~ out:-8
W~ outdoor:-1
W~ outside:-1
W~ since:4
W~ so:-1
W~ that:-5
W~ the:2
W~ then:-1
W~ to:-9
W~ too:7
W~ wait:-1
W~ was:8
W~ went:3
W~ when:4
W~ which:4
W~ with:1
W~ would:-5
W~0:3
W~<:1
W~=:-3
W~A:-5
W~r:-6
W~t:-2
W~v:-3
X%:3
X:-4
X<:1
X=:-7
X>:-2
XA:-5
XC:-7
XF:-2
XL:3
XN:8
XS:-2
XW:2
XX:-1
Xl:3
Xt:-3
Xv:-4
Xw:-1
X~ ::-2
X~ ?:-6
X~ a:-7
X~ and:2
X~ at:-7
X~ bar:2
X~ bars:-5
X~ came:-5
X~ dissolv:-10
X~ fine:-4
X~ for:2
X~ from:-7
X~ ground:-8
X~ i:4
X~ is:-5
X~ it:-7
X~ makes:-1
X~ no:-5
X~ of:-8
X~ so:-5
X~ the:-5
X~ this:4
X~ to:-9
X~ was:2
X~0:3
X~<:-7
X~L:1
X~W:-1
X~v:-3
X~w:-5
^ *:-7
^ ::4
^ =:-5
^ about:12
^ add:1
^ added:10
^ after:2
^ all:2
^ also:-3
^ alway:3
^ am:-6
^ an:5
^ and:-9
^ any:-5
^ anyone:-10
^ anyth:-4
^ are:-3
^ as:4
^ ask:-9
^ at:-1
^ attempt:-5
^ b:-7
^ back:-8
^ bar:-5
^ bars:-7
^ base:-4
^ basic:-5
^ batch:-10
^ be:-6
^ because:-1
^ been:-6
^ before:-8
^ between:7
^ big:-8
^ bit:3
^ blend:-7
^ blender:-7
^ blue:-4
^ boil:2
^ bonsoir:-4
^ book:-9
^ both:-8
^ bottle:11
^ bought:-8
^ box:-4
^ bring:-1
^ bubbl:-6
^ but:-10
^ by:-4
^ c:-5
^ came:1
^ castile:-7
^ chang:5
^ check:-10
^ christma:-3
^ clean:-2
^ clear:1
^ cold:-4
^ combine:-3
^ comment:-4
^ confetti:-4
^ cook:-3
^ cool:-3
^ copi:-4
^ correct:2
^ correction:9
^ cost:-8
^ could:-1
^ couldnt:8
^ cousin:-1
^ cover:-5
^ crock:-3
^ crockpot:-5
^ cure:-3
^ cured:-6
^ cut:-3
^ d:-5
^ dad:2
^ dads:-4
^ date:-2
^ day:-9
^ dear:2
^ dissolv:-4
^ dissolve:2
^ do:-5
^ does:-3
^ dog:1
^ done:-5
^ dont:-8
^ doubl:2
^ dropp:-1
^ e:-4
^ each:1
^ earlier:-8
^ edit:1
^ ended:3
^ enough:-6
^ entry:2
^ even:-3
^ every:2
^ everyone:-7
^ everyth:4
^ expect:-6
^ export:-4
^ f:-6
^ fat:-7
^ fats:-11
^ fill:-7
^ fills:-4
^ fine:-3
^ first:-2
^ for:5
^ forgot:-3
^ found:8
^ freeze:-5
^ friend:-2
^ from:-1
^ g:-6
^ gave:-5
^ gel:-6
^ gell:3
^ give:-7
^ glov:-4
^ goat:-7
^ goes:-3
^ goggl:-4
^ going:1
^ gonna:6
^ good:-4
^ got:-9
^ grams:-6
^ gran:3
^ grandad:-1
^ grandma:-5
^ grandmother:-1
^ grandpa:4
^ granny:-5
^ grans:-1
^ grat:-6
^ greeting:-4
^ had:5
^ hallo:-2
^ hand:2
^ handout:-3
^ hard:-5
^ has:-6
^ have:-5
^ he:-6
^ heat:-6
^ hello:-3
^ help:5
^ her:1
^ here:-8
^ heres:-7
^ hes:-5
^ hey:-5
^ hi:1
^ hiya:2
^ hola:-2
^ hope:-1
^ hot:1
^ how:-11
^ hp:-4
^ hubby:2
^ i'd:3
^ i:-2
^ if:-8
^ ignore:1
^ ill:-2
^ im:3
^ in:-5
^ ingredient:-3
^ instead:9
^ into:-3
^ is:-7
^ it:3
^ item:-3
^ itll:-2
^ its:-3
^ ive:-7
^ jug:7
^ just:1
^ keep:4
^ kids:-7
^ kind:-1
^ kitchen:1
^ knock:2
^ label:-9
^ last:-4
^ lather:-5
^ laundry:-5
^ leave:-2
^ left:-2
^ leftover:-8
^ let:1
^ lid:2
^ like:-1
^ line:-4
^ liquid:-5
^ list:-7
^ log:-5
^ lol:-5
^ long:-1
^ look:-4
^ looks:-3
^ lost:-5
^ lot:-6
^ love:-3
^ lye's:5
^ m:-5
^ made:5
^ make:7
^ makes:-3
^ many:-4
^ market:-5
^ meanwhile:-1
^ melt:-2
^ method:2
^ mind:-4
^ mine:-8
^ mines:2
^ mix:-8
^ mixed:-4
^ mold:-7
^ morn:-5
^ mould:-6
^ mum:-4
^ mums:4
^ must:-4
^ my:-3
^ n:-9
^ name:-3
^ nb:1
^ need:-5
^ nephew:1
^ never:-3
^ new:-2
^ next:-11
^ nice:-5
^ no:6
^ nobody:-4
^ none:-6
^ normal:1
^ notebook:-6
^ notes:-1
^ noth:-9
^ number:-2
^ o:-5
^ oat:-4
^ of:2
^ oil:-7
^ oils:-3
^ ok:-3
^ okay:-4
^ old:-3
^ on:-3
^ once:-3
^ one:1
^ only:3
^ or:-4
^ other:-5
^ our:-3
^ ours:-5
^ out:2
^ outside:-6
^ oven:-3
^ page:-5
^ paid:-1
^ passt:-3
^ past:-3
^ paste:1
^ people:-5
^ per:1
^ ph:-5
^ phase:-3
^ phone:-3
^ photo:-10
^ plain:-6
^ plan:-5
^ plann:-7
^ please:2
^ pls:-7
^ plus:-9
^ post:5
^ pot:6
^ pour:2
^ prep:-2
^ press:-5
^ print:-8
^ ps:3
^ pull:6
^ purity:8
^ put:-5
^ q:-6
^ question:-5
^ quick:-4
^ rain:5
^ ran:4
^ re:-3
^ read:4
^ reader:1
^ ready:-4
^ recipe:-5
^ remark:-5
^ render:-2
^ rest:-3
^ result:-4
^ right:-5
^ room:-5
^ safe:-5
^ same:2
^ sat:-4
^ scal:3
^ scale:8
^ scoop:-4
^ scrap:4
^ sells:-3
^ set:-3
^ sf:-2
^ shav:-3
^ shave:-3
^ she:-5
^ shes:-4
^ should:-7
^ since:4
^ sis:3
^ sister:-1
^ slow:-4
^ smell:-7
^ snow:2
^ so:-4
^ soap:-7
^ soft:-4
^ sold:-7
^ some:2
^ someone:-2
^ somewhere:2
^ sound:-3
^ source:1
^ spill:-2
^ split:2
^ spoon:-3
^ sry:-9
^ stamp:-7
^ start:-7
^ stick:-6
^ still:-1
^ stir:-4
^ stirr:-3
^ strain:4
^ student:3
^ subject:-3
^ sum:-4
^ sunday:-10
^ superfat:2
^ swap:3
^ swapp:3
^ swirl:-5
^ switch:-5
^ take:-4
^ tare:1
^ teacher:2
^ tell:-9
^ test:-5
^ text:-6
^ thank:-6
^ that:-1
^ thats:-2
^ the:-2
^ then:-6
^ ther:-3
^ there:-1
^ these:-1
^ they:-10
^ third:-3
^ this:1
^ those:3
^ thought:-2
^ threw:8
^ thx:-3
^ tip:-7
^ title:-4
^ to:1
^ tonight:-4
^ took:3
^ total:-4
^ towel:-3
^ trac:3
^ trace:-4
^ translat:-3
^ tried:-5
^ try:-4
^ tub:-7
^ turn:-3
^ unit:-3
^ unmould:-5
^ update:2
^ use:1
^ used:4
^ using:-7
^ v:1
^ version:-10
^ very:-5
^ wait:4
^ want:3
^ warm:-6
^ was:-5
^ wash:-8
^ we:1
^ wed:1
^ weigh:-7
^ weight:-8
^ well:-5
^ went:3
^ were:5
^ weve:-6
^ what:-8
^ whats:-4
^ when:-6
^ which:-8
^ while:-2
^ who:-4
^ whoever:-5
^ whole:4
^ whos:-3
^ why:-6
^ will:-5
^ with:-5
^ worksheet:-3
^ workshop:-4
^ would:-2
^ wrapp:-8
^ write:1
^ written:3
^ wrote:-3
^ x:-9
^ years:3
^ yes:-10
^ yesterday:-5
^ you:-6
^ youll:2
^ zap:-4
^%:-6
^0:-5
^<:-1
^=:-6
^>:-10
^C:-11
^I:-2
^K:-3
^M:2
^N:-1
^S:-9
^T:-5
^U:3
^X:-3
^b:-1
^d:-4
^e:-9
^l:8
^r:4
^v:-2
^w:-2
any:-2
b%:-3
b0:3
b:3
bA:3
bF:-4
bL:8
bN:7
bW:7
bb:-5
bt:-4
bw:-1
b~ ::-1
b~ ?:8
b~ a:-3
b~ after:-6
b~ and:-6
b~ as:-7
b~ bars:-6
b~ because:-3
b~ before:3
b~ but:6
b~ by:7
b~ fine:-4
b~ for:6
b~ i:3
b~ if:7
b~ in:-1
b~ is:6
b~ it:-2
b~ my:3
b~ not:-7
b~ of:1
b~ on:-5
b~ or:7
b~ right:-9
b~ still:5
b~ the:5
b~ then:6
b~ was:4
b~ with:-1
b~ x:-7
b~0:-8
b~L:2
b~b:-1
d%:-4
d0:-8
d:-6
d=:-3
dA:-5
dF:-9
dI:-5
dK:-5
dL:-6
dX:-2
db:-4
dd:-4
dt:-2
dv:-1
dw:-1
d~ ::-1
d~ ?:-3
d~ and:-5
d~ at:-3
d~ blend:-1
d~ both:-2
d~ by:-4
d~ for:-5
d~ here:-3
d~ in:-5
d~ into:-1
d~ it:-7
d~ no:-5
d~ oils:-2
d~ or:-2
d~ pour:-2
d~ so:-9
d~ stirr:-2
d~ the:-8
d~ then:-6
d~ trace:-1
d~ when:-7
d~A:-7
d~t:-1
e%:-6
e0:4
e:3
e=:-2
e>:-5
eA:-2
eF:-2
eL:2
eN:8
eW:-3
eX:6
eb:1
ee:-5
et:4
e~ +:5
e~ all:1
e~ and:-3
e~ as:2
e~ but:10
e~ for:-2
e~ g:-10
e~ grams:-5
e~ in:9
e~ is:6
e~ minus:6
e~ of:2
e~ on:-4
e~ or:7
e~ was:10
e~ with:12
e~A:-4
e~F:-3
e~W:-3
l%:-5
l0:3
l:-2
l=:-5
l>:-5
lA:3
lF:-8
lL:-4
lN:1
lW:-4
lX:-3
ll:-5
long:1
lt:-1
lv:-7
lw:-4
l~ and:-6
l~ as:-7
l~ for:3
l~ i:-6
l~ in:-6
l~ is:-4
l~ of:-3
l~ on:1
l~ right:-1
l~ the:-7
l~ was:-6
l~ went:3
l~ with:1
l~L:-9
l~t:-6
no figure:-6
no name:-6
r%:-6
r0:2
r:3
r>:-5
rA:1
rF:9
rK:3
rW:-3
rt:-8
r~ as:-9
r~ by:3
r~ the:-2
r~K:3
short:-7
t%:-5
t0:-2
t:-5
t<:6
t=:-3
t>:-1
tA:2
tF:-4
tK:-3
tL:-4
tN:-3
tS:-2
tU:-5
tX:-5
tb:-3
td:-1
te:-8
tl:-8
tt:-2
tv:-2
tw:-2
t~ ::2
t~ ?:-7
t~ a:-5
t~ add:4
t~ added:2
t~ after:-6
t~ ago:-7
t~ all:-6
t~ and:-3
t~ at:-3
t~ because:-10
t~ before:2
t~ blend:-3
t~ both:-3
t~ but:1
t~ by:-5
t~ cook:-2
t~ cover:-2
t~ cure:-1
t~ cured:-2
t~ cut:-1
t~ day:-1
t~ did:-5
t~ each:-1
t~ edges:-4
t~ flat:-3
t~ for:2
t~ from:-8
t~ gel:-3
t~ i:-4
t~ if:-5
t~ in:-10
t~ into:-2
t~ is:-6
t~ it:-6
t~ its:1
t~ ive:-4
t~ later:-9
t~ lid:-5
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
t~ no:-3
t~ now:-7
t~ of:2
t~ off:-3
t~ oils:-2
t~ old:1
t~ on:-7
t~ or:-4
t~ paste:-8
t~ pot:2
t~ pour:-5
t~ ready:-5
t~ rest:-8
t~ since:-6
t~ so:-2
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
t~ until:-5
t~ used:-2
t~ wait:-3
t~ was:-7
t~ we:-7
t~ weigh:-2
t~ when:-5
t~ which:-2
t~ with:1
t~ yes:1
t~ zap:-1
t~0:-3
t~=:-2
t~A:-5
t~F:-3
t~K:-2
t~L:-2
t~S:-1
t~U:-4
t~W:2
t~X:-6
t~b:-4
t~d:-2
t~t:-5
v0:-6
v:1
v=:2
vA:4
vC:2
vF:-3
vK:6
vL:4
vN:7
vS:-3
vW:5
vX:-3
vb:-3
vl:-4
vt:3
vv:2
v~ a:-5
v~ and:2
v~ at:-3
v~ bottle:-1
v~ can:-10
v~ for:-5
v~ i:1
v~ in:-2
v~ is:-8
v~ of:2
v~ one:-3
v~ or:-1
v~ pot:-9
v~ so:-1
v~ to:4
v~C:3
v~S:-1
v~W:1
v~X:-1
w%:-6
w0:3
w:-1
w<:-13
w=:-6
w>:3
wA:-2
wC:6
wF:-1
wI:-5
wL:-2
wN:1
wS:-6
wW:-2
wX:2
wb:3
wd:4
wl:-11
wt:-11
wv:-1
ww:1
w~ a:2
w~ after:-7
w~ as:-8
w~ at:-6
w~ cubes:-6
w~ dissolv:2
w~ empty:-2
w~ for:-1
w~ fresh:-8
w~ from:-9
w~ goes:-7
w~ i:1
w~ in:-5
w~ instead:-11
w~ is:-1
w~ it:-1
w~ loaf:-4
w~ more:-3
w~ mould:3
w~ no:-2
w~ of:1
w~ on:-2
w~ one:-2
w~ or:-3
w~ out:-9
w~ per:2
w~ so:-2
w~ steps:-1
w~ the:-7
w~ to:-5
w~ together:-8
w~ too:1
w~ was:6
w~ wet:-7
w~0:3
w~C:2
w~I:1
w~L:-8
w~N:-2
w~S:-5
w~X:-6
w~w:-4`;
