/** What each sign of a note weighs for its bearing on the pot and against it, in tenths of a logit: learned, `npm run generate:bearing`. */
export const weights = ` *:-7
 *~A:-6
 *~F:-4
 +:2
 +~ a:-6
 +~0:4
 +~<:-1
 +~=:-4
 +~A:-6
 +~F:-8
 +~W:-7
 .:7
 .~%:7
 .~0:4
 ::1
 :~ a:3
 :~ about:-3
 :~ all:7
 :~ as:-3
 :~ do:-2
 :~ does:-3
 :~ g:-3
 :~ goggl:-4
 :~ good:-6
 :~ half:6
 :~ i'd:3
 :~ i:3
 :~ in:5
 :~ is:-7
 :~ it:2
 :~ its:-3
 :~ ive:1
 :~ kitchen:2
 :~ me:-9
 :~ melt:-11
 :~ no:2
 :~ none:8
 :~ re:-3
 :~ soap:-6
 :~ the:-1
 :~ what:3
 :~ why:-2
 :~ winter:-2
 :~ with:1
 :~ yes:5
 :~%:-5
 :~0:-6
 :~<:-1
 :~=:-5
 :~>:-8
 :~A:-2
 :~L:-1
 :~N:3
 :~S:-5
 :~T:-3
 :~W:-4
 :~b:-6
 :~l:-9
 :~t:-4
 :~v:-6
 :~w:3
 =:-2
 =~ =:-5
 =~0:-4
 =~=:-6
 =~>:-2
 =~F:-1
 =~e:1
 =~l:-7
 ?:-3
 a:-2
 about:-3
 about~ a:6
 about~ an:-6
 about~ it:-2
 about~ right:-2
 about~ superfat:-9
 about~ to:-6
 about~%:-3
 about~0:-3
 about~<:4
 about~>:-6
 about~F:-5
 about~b:4
 about~d:-2
 about~t:-7
 about~v:2
 about~w:3
 above:4
 above~ is:5
 above~d:-8
 abt:-8
 accident:4
 accord:6
 accord~ to:6
 account:7
 acros:5
 acros~ the:7
 actual:8
 actual~N:4
 add:1
 added:8
 added~ a:1
 added~ it:4
 added~ the:2
 added~<:-7
 added~=:-9
 added~v:6
 added~w:4
 adds:-11
 adds~ up:-10
 add~ a:1
 add~ the:-4
 add~ to:2
 add~<:-4
 add~=:-4
 add~F:3
 add~w:-6
 advice:2
 afresh:-7
 after:1
 afternoon:2
 afterward:2
 after~ an:2
 after~ cook:2
 after~ cure:-2
 after~ i:2
 after~ it:7
 after~ last:1
 after~ pour:4
 after~ strain:2
 after~ that:-7
 after~ this:-8
 after~0:-7
 after~t:-5
 again:-1
 against:2
 against~ the:5
 again~ ::3
 again~ ?:2
 again~ after:-3
 again~ and:-9
 again~ for:-6
 again~ so:-1
 again~ with:7
 age:-9
 ages:-2
 ages~ to:-5
 ago:-9
 agre:-5
 agree:-7
 agree~ with:-4
 aim:6
 aim~ for:5
 air:-2
 air~ cupboard:-1
 aisle:4
 aleppo:-6
 alike:6
 alkali:-7
 all:1
 allergen:-4
 allergic:8
 allergic~ to:-8
 allergy:6
 allotment:-4
 allow:-6
 all~ ::-4
 all~ ?:-4
 all~ and:5
 all~ but:9
 all~ by:-6
 all~ day:-6
 all~ down:7
 all~ fats:-7
 all~ first:2
 all~ g:-10
 all~ good:-8
 all~ grams:-9
 all~ i:4
 all~ in:-8
 all~ is:-7
 all~ my:-6
 all~ of:-2
 all~ on:-8
 all~ over:-6
 all~ right:-10
 all~ that:-2
 all~ the:-5
 all~ there:3
 all~ told:-4
 all~ up:-4
 all~ week:3
 all~ weigh:-2
 all~0:1
 all~F:4
 all~L:-1
 all~W:2
 all~b:-3
 all~e:10
 alone:-2
 along:9
 along~ the:-1
 along~ with:6
 already:8
 already~ dissolv:5
 already~ in:3
 already~ put:7
 alright:-5
 alright~ ?:-2
 also:3
 also~w:5
 although:3
 altogether:-8
 aluminium:-2
 alway:-3
 alway~ did:-4
 alway~ said:-6
 alway~ with:5
 am:3
 american:-7
 ammonia:-7
 amount:4
 amount~ ?:-5
 amount~ g:-4
 amount~ of:1
 am~ a:-6
 am~ from:-7
 am~ i:-2
 an:-2
 and~ a:-4
 and~ about:-7
 and~ add:-6
 and~ added:-1
 and~ again:3
 and~ all:5
 and~ an:-6
 and~ another:-8
 and~ at:-6
 and~ blend:-5
 and~ both:-1
 and~ by:1
 and~ call:2
 and~ came:-8
 and~ clear:-3
 and~ cool:3
 and~ did:-1
 and~ do:2
 and~ does:-5
 and~ dont:-5
 and~ even:3
 and~ everyth:-1
 and~ fill:4
 and~ forgot:-4
 and~ found:4
 and~ gave:2
 and~ give:4
 and~ glov:-1
 and~ go:-3
 and~ goes:-2
 and~ goggl:-2
 and~ got:-8
 and~ had:-1
 and~ half:-6
 and~ hard:-7
 and~ has:3
 and~ have:-3
 and~ he:1
 and~ her:-6
 and~ his:-7
 and~ honest:-5
 and~ how:-7
 and~ i'd:-1
 and~ i:5
 and~ if:4
 and~ im:-1
 and~ in:-3
 and~ into:4
 and~ is:1
 and~ it:-4
 and~ itll:-4
 and~ its:-3
 and~ ive:-1
 and~ keep:-4
 and~ last:-4
 and~ left:3
 and~ let:-7
 and~ lost:-8
 and~ me:-3
 and~ melt:-7
 and~ mine:2
 and~ mixed:-1
 and~ neither:4
 and~ never:-2
 and~ nobody:-2
 and~ none:4
 and~ not:-3
 and~ noth:-2
 and~ now:3
 and~ of:5
 and~ off:-4
 and~ once:-1
 and~ one:-1
 and~ only:4
 and~ pour:1
 and~ put:3
 and~ said:-4
 and~ says:1
 and~ see:-7
 and~ she:-2
 and~ since:2
 and~ smell:-1
 and~ so:2
 and~ soap:-6
 and~ some:4
 and~ someth:6
 and~ sprinkle:-3
 and~ start:-6
 and~ stay:-4
 and~ still:-1
 and~ stir:-1
 and~ stirr:-7
 and~ straight:-6
 and~ strain:-4
 and~ stuck:5
 and~ swear:-6
 and~ tell:-5
 and~ that:5
 and~ thats:-2
 and~ the:-3
 and~ then:4
 and~ ther:7
 and~ there:4
 and~ they:-5
 and~ this:6
 and~ those:1
 and~ tipp:8
 and~ to:-6
 and~ together:2
 and~ took:10
 and~ turn:-4
 and~ use:1
 and~ used:3
 and~ wait:-2
 and~ want:-6
 and~ wants:-4
 and~ warm:-1
 and~ was:5
 and~ we:1
 and~ weigh:2
 and~ went:-5
 and~ what:1
 and~ when:-4
 and~ whether:-7
 and~ white:-6
 and~ will:-4
 and~ with:-5
 and~ would:-7
 and~ yes:-2
 and~%:-5
 and~0:2
 and~<:1
 and~=:-4
 and~>:-1
 and~A:-3
 and~B:-1
 and~F:-5
 and~L:-7
 and~N:7
 and~S:-5
 and~X:1
 and~b:-11
 and~e:-2
 and~l:-7
 and~t:-6
 and~v:3
 and~w:-2
 another:3
 another~ day:-5
 another~0:9
 another~<:7
 another~t:-6
 another~v:-1
 another~w:-7
 answer:-4
 answer~ ::-6
 answer~ is:-2
 answer~ the:4
 any:1
 anybody:1
 anyhow:-3
 anyone:-7
 anyone~ know:2
 anyone~ tried:-4
 anyth:-4
 anyth~ in:-2
 anyth~ off:-4
 anyth~ wrong:-4
 anyway:-5
 anywhere:1
 anywhere~ near:-8
 any~ more:-2
 any~A:-3
 any~S:-8
 an~ earlier:-7
 an~ envelope:-5
 an~ extra:4
 an~ eye:-3
 an~ hour:-7
 an~ old:-5
 an~ older:-2
 an~I:-8
 an~L:4
 apart:-9
 app:-1
 approx:1
 april:-2
 apron:-7
 are:-2
 are~ at:-1
 are~ dry:6
 are~ for:2
 are~ from:-7
 are~ full:-2
 are~ in:-6
 are~ no:-5
 are~ not:-8
 are~ now:1
 are~ right:-5
 are~ still:-9
 are~ the:-2
 are~0:1
 are~=:-4
 are~F:-2
 argu:-9
 arithmetic:-7
 arm:-7
 around:-4
 around~%:1
 around~0:-4
 around~d:-3
 around~w:-1
 arriv:-6
 as:3
 ash:-10
 ashes:-6
 ash~ and:-4
 ash~ on:-7
 aside:-4
 ask:-4
 asked:-7
 asked~ about:-7
 asked~ for:-1
 asked~ if:-4
 asked~ whether:-5
 asks:-9
 ask~ ::-2
 ask~ about:-6
 ask~ for:-5
 ask~ her:-1
 ask~ you:-4
 asleep:-8
 assay:9
 as~ a:1
 as~ above:-6
 as~ alway:7
 as~ before:5
 as~ ever:-7
 as~ far:-4
 as~ i:3
 as~ if:2
 as~ in:-1
 as~ is:6
 as~ it:-3
 as~ its:-1
 as~ list:-4
 as~ long:-8
 as~ my:-1
 as~ on:-6
 as~ print:6
 as~ snow:-2
 as~ the:3
 as~ well:3
 as~ written:-4
 as~ you:-7
 as~0:2
 as~A:4
 as~F:-2
 as~I:-8
 as~L:-2
 as~X:-4
 at:-3
 ate:2
 attempt:-5
 attempt~0:-5
 attic:-2
 at~ a:-9
 at~ about:1
 at~ all:-4
 at~ around:-4
 at~ christma:-3
 at~ church:-8
 at~ day:-7
 at~ easter:-6
 at~ first:-5
 at~ half:-8
 at~ home:1
 at~ hour:3
 at~ it:5
 at~ least:-3
 at~ light:1
 at~ me:3
 at~ minute:-2
 at~ my:-5
 at~ once:-4
 at~ our:-7
 at~ room:-4
 at~ rough:-1
 at~ school:-6
 at~ that:1
 at~ the:1
 at~ thin:-8
 at~ this:-6
 at~ trace:4
 at~ week:-7
 at~%:4
 at~0:-3
 at~<:8
 at~=:-9
 at~b:1
 at~d:-4
 at~e:4
 at~t:-10
 at~w:-4
 august:2
 aunt:-5
 aunti:-5
 auntie:4
 aunts:3
 aunt~ in:-6
 autumn:-9
 average:-4
 away:-2
 away~ and:1
 awful:1
 a~ ::-7
 a~ baby:-1
 a~ bad:-8
 a~ bag:1
 a~ bar:-9
 a~ batch:-8
 a~ beginner:-3
 a~ big:-2
 a~ bigger:-1
 a~ bit:-2
 a~ blanket:-4
 a~ blend:7
 a~ bowl:-10
 a~ box:-5
 a~ brick:-1
 a~ bucket:-5
 a~ can:4
 a~ candle:-8
 a~ carton:-1
 a~ castile:1
 a~ cheese:-5
 a~ chip:-6
 a~ class:-5
 a~ clean:2
 a~ cold:-4
 a~ corner:-8
 a~ cow:1
 a~ crisp:-5
 a~ crumb:-6
 a~ crust:8
 a~ customer:-4
 a~ dark:-4
 a~ day:-2
 a~ different:-2
 a~ drawer:-7
 a~ dream:-4
 a~ drop:4
 a~ dry:-8
 a~ face:-7
 a~ fair:5
 a~ fami:-3
 a~ fan:-2
 a~ farm:2
 a~ few:4
 a~ fifth:2
 a~ finger:-5
 a~ fresh:-2
 a~ friend:-2
 a~ full:2
 a~ glass:4
 a~ glug:4
 a~ good:11
 a~ half:3
 a~ handful:-1
 a~ heap:9
 a~ hole:-3
 a~ hurry:-5
 a~ jam:-6
 a~ jug:-1
 a~ knob:5
 a~ ladle:5
 a~ lady:-5
 a~ library:-4
 a~ lid:-4
 a~ lidd:-2
 a~ light:-3
 a~ line:1
 a~ list:2
 a~ little:4
 a~ loaf:-3
 a~ long:-1
 a~ lot:-6
 a~ lump:7
 a~ man:-2
 a~ milk:-2
 a~ minute:-6
 a~ mix:7
 a~ month:-12
 a~ mould:-6
 a~ mug:7
 a~ new:-6
 a~ nice:-2
 a~ night:-3
 a~ number:-1
 a~ page:-6
 a~ paper:-6
 a~ pdf:-3
 a~ photo:-8
 a~ piece:1
 a~ pinch:-2
 a~ plain:-9
 a~ pot:1
 a~ proper:-5
 a~ puddle:3
 a~ quarter:7
 a~ question:-3
 a~ reader:-6
 a~ ready:3
 a~ recipe:-2
 a~ rock:-5
 a~ round:-2
 a~ row:-7
 a~ scale:-7
 a~ second:-3
 a~ shade:-3
 a~ shoe:-3
 a~ shoebox:-3
 a~ silicone:-5
 a~ sink:-4
 a~ skin:-3
 a~ skull:-5
 a~ slip:4
 a~ slow:-6
 a~ small:2
 a~ smaller:-3
 a~ soap:-6
 a~ soft:-5
 a~ softer:-4
 a~ spatula:-6
 a~ spill:-2
 a~ splash:6
 a~ spoon:-3
 a~ spoonful:-3
 a~ steel:-8
 a~ stick:2
 a~ stir:-4
 a~ superfat:2
 a~ tenth:5
 a~ thermometer:-7
 a~ thin:-2
 a~ thing:-4
 a~ third:4
 a~ time:-7
 a~ tin:1
 a~ touch:-3
 a~ towel:-1
 a~ tray:-4
 a~ treat:-5
 a~ tub:-5
 a~ twentieth:4
 a~ typo:2
 a~ very:-6
 a~ video:-2
 a~ volcano:-4
 a~ warm:-5
 a~ water:-2
 a~ week:-9
 a~ wet:3
 a~ white:-1
 a~ whole:-1
 a~ wire:-2
 a~ woman:-6
 a~ year:-8
 a~ zap:-6
 a~%:2
 a~0:4
 a~<:6
 a~=:-7
 a~>:2
 a~A:-4
 a~F:-3
 a~K:-2
 a~L:-2
 a~N:7
 a~X:2
 a~b:3
 a~e:-8
 a~r:2
 a~t:-5
 a~v:-4
 a~w:6
 b:-1
 babcia:-5
 babi:-4
 baby:2
 back:-4
 background:-3
 back~ ::-5
 back~ a:1
 back~ and:4
 back~ for:3
 back~ in:-7
 back~ of:-5
 back~ on:-7
 back~ out:6
 back~ the:-2
 back~ till:8
 back~ to:-7
 back~ up:5
 bacon:-5
 bad:-2
 badly:-1
 bag:4
 bags:-5
 bag~ of:5
 bag~ says:-1
 bak:-9
 bak~ paper:-8
 balanc:-3
 balance:4
 balanc~ ?:-3
 balcony:2
 balls:-7
 balm:-5
 bang:-9
 bang~ it:-3
 bar:-5
 bare:-7
 bare~ got:-2
 bark:1
 barn:-4
 barrel:-6
 bars:-9
 bars~ +:-7
 bars~ ::-5
 bars~ about:-1
 bars~ and:-4
 bars~ are:-5
 bars~ at:-2
 bars~ come:-3
 bars~ each:-5
 bars~ for:-6
 bars~ from:-6
 bars~ i:-2
 bars~ in:-5
 bars~ of:-6
 bars~ on:-4
 bars~ out:-6
 bars~ so:-4
 bars~ to:-5
 bars~ went:-9
 bars~ were:3
 bars~ with:-7
 bars~0:-6
 bars~t:-3
 bars~w:-5
 bar~ ::-2
 bar~ ?:-6
 bar~ all:-3
 bar~ and:-2
 bar~ at:-3
 bar~ for:-7
 bar~ from:-6
 bar~ i:2
 bar~ in:-4
 bar~ is:3
 bar~ no:-2
 bar~ of:-7
 bar~ since:-3
 bar~ so:2
 bar~ with:3
 bar~0:-4
 base:-1
 basic:-4
 bastille:-7
 batch:-5
 batch~ ::-2
 batch~ and:-7
 batch~ but:3
 batch~ ever:4
 batch~ for:1
 batch~ had:-3
 batch~ i:3
 batch~ in:2
 batch~ is:3
 batch~ log:-3
 batch~ no:-3
 batch~ record:-2
 batch~ sheet:-6
 batch~ that:-1
 batch~ the:1
 batch~ was:-6
 batch~ with:-5
 batch~0:-10
 bath:-9
 bathroom:4
 bathroom~ scale:8
 batter:-4
 batteri:-4
 battery:3
 battery~ died:6
 bazaar:-3
 bc:7
 bc~ i:4
 be:2
 beach:-6
 beads:7
 beaker:6
 bear:-7
 beard:-2
 beat:-1
 became:4
 became~0:9
 because~ a:-5
 because~ he:-9
 because~ i:-2
 because~ it:8
 because~ its:-3
 because~ last:2
 because~ my:3
 because~ of:-2
 because~ she:-2
 because~ thats:1
 because~ the:4
 because~F:-8
 become:-1
 bed:-6
 bee:-6
 beech:-3
 beef:-7
 beef~=:-5
 beekeeper:-6
 been:2
 been~ mak:-5
 been~ on:-4
 been~ open:6
 been~ stand:4
 been~ told:-5
 been~t:-1
 bees:-4
 before:-1
 beforehand:-5
 before~ and:3
 before~ anyone:-7
 before~ i:-4
 before~ it:2
 before~ pour:7
 before~ saturday:-5
 before~ so:-8
 before~ that:-7
 before~ the:2
 before~ they:-7
 before~ this:-8
 before~ we:-3
 before~ weigh:-8
 before~ with:-6
 before~ you:-12
 before~t:-5
 began:-7
 begin:-5
 beginn:-2
 beginner':-8
 beginner:-8
 behav:-7
 behind~ the:3
 beige:-8
 being:-2
 believe:-1
 belong:-2
 belong~ to:1
 below:-4
 below~ the:-4
 below~0:2
 below~d:-4
 bench:2
 besid:5
 beside:5
 beside~ it:4
 beside~ the:-1
 best:-10
 best~ before:-5
 bet:-6
 better:-6
 better~ than:1
 between:-2
 between~ the:6
 between~0:8
 be~ ?:-8
 be~ a:6
 be~ about:-5
 be~ bother:3
 be~ clear:-7
 be~ cut:-2
 be~ exact:6
 be~ for:1
 be~ gentle:-3
 be~ honest:-2
 be~ hot:-4
 be~ in:-8
 be~ mild:-6
 be~ ok:-3
 be~ on:4
 be~ patient:-8
 be~ right:2
 be~ sure:-2
 be~ the:-4
 be~ too:-5
 be~%:-12
 be~0:4
 be~N:9
 be~b:6
 be~e:8
 be~w:6
 bicycle:-6
 big:2
 bigger:1
 bigger~ pot:-4
 bigger~ than:4
 big~ batch:-8
 big~ kettle:5
 big~ one:3
 big~ pot:-3
 bin:-3
 binn:3
 bin~ it:-4
 birds:-3
 birthday:-4
 biscuit:-7
 bit:1
 bite:-3
 bites:-3
 bits:1
 bits~ of:1
 bit~ at:-4
 bit~ by:-3
 bit~ greasy:-2
 bit~ like:-3
 bit~ more:4
 bit~ of:3
 bit~ on:-6
 bit~ over:-7
 bit~ so:-2
 bit~ soft:-2
 bit~ the:1
 bit~ under:-1
 black:-4
 blame:-7
 blame~ the:-6
 blanket:-7
 blender:-5
 blender~ and:-5
 blender~ died:-4
 blender~t:-6
 blend~ at:-1
 blend~ for:-2
 blend~ pour:-3
 blend~ to:-3
 blend~ with:8
 blend~t:-5
 blind:3
 blob:-2
 block:1
 blog:2
 blog~ i:-2
 blood:-6
 blue:-1
 board:3
 boat:3
 body:-1
 boiler:-8
 boil~ down:-2
 boil~ flat:4
 boil~ in:6
 boil~ it:-5
 boil~ off:5
 boil~ over:4
 boil~ the:-2
 bonjour:-4
 bonsoir:-4
 book:-3
 book~ ::-1
 book~ i:1
 book~ says:-9
 borrow:-3
 boss:-2
 both:-2
 bother:-6
 bother~ to:4
 bother~ with:4
 both~ are:-7
 both~ at:1
 both~ lyes:-1
 both~ of:2
 both~ times:-6
 both~ units:-4
 both~ were:-6
 bottl:-3
 bottle:4
 bottle~ and:6
 bottle~ before:-5
 bottle~ gave:3
 bottle~ in:-7
 bottle~ is:4
 bottle~ of:-4
 bottle~ on:3
 bottle~ ran:-2
 bottle~ said:6
 bottle~ says:5
 bottle~ so:1
 bottle~ was:12
 bottle~ with:-1
 bottl~ of:-5
 bottom:-1
 bottom~ of:2
 bought:-5
 bought~ a:-6
 bought~ the:-7
 bought~0:-7
 bought~>:-7
 bought~F:1
 bowls:2
 bowl~ and:-2
 bowl~ in:-5
 bowl~ is:-5
 bowl~ of:-4
 bowl~ on:4
 bowl~w:3
 box:-2
 boxes:-5
 box~ and:-2
 box~ lined:-3
 box~t:-1
 boyfriend:-1
 boys:3
 brand:-5
 brave:-3
 bread:-2
 break:-9
 breakfast:-1
 breathe:-3
 brick:-2
 brim:-2
 bring:-11
 bring~ it:-3
 bring~ the:-8
 broke:-1
 broken:4
 brother':1
 brother~ in:-9
 brought:8
 brown:-8
 brown~ paper:-5
 brush:-3
 btw:2
 bubbl:-6
 bubble:-4
 bubbl~ and:1
 bucket:-5
 bucket~ of:-7
 bucket~ so:-5
 bucket~ with:-7
 burn:-8
 burnt:-2
 burst:-3
 burst~ of:-1
 bus:-2
 but:-1
 butcher:-3
 butcher~ gave:-8
 button:-5
 but~ a:1
 but~ he:-6
 but~ here:-6
 but~ i'd:-2
 but~ i:2
 but~ im:-9
 but~ is:-6
 but~ it:-8
 but~ its:1
 but~ ive:-1
 but~ my:-2
 but~ no:3
 but~ not:-5
 but~ now:-4
 but~ only:-8
 but~ she:-4
 but~ that:-7
 but~ thats:-6
 but~ the:7
 but~ then:3
 but~ there:-5
 but~ they:-3
 but~ those:-5
 but~0:1
 but~F:-8
 buy:-2
 by:1
 by~ a:8
 by~ accident:4
 by~ bit:-3
 by~ easter:-5
 by~ eye:8
 by~ feel:-1
 by~ hand:-9
 by~ it:-6
 by~ itself:3
 by~ me:-5
 by~ mistake:6
 by~ my:2
 by~ noon:-4
 by~ spoon:-7
 by~ the:3
 by~ then:-3
 by~ volume:1
 by~ week:-5
 by~ weight:-5
 by~<:7
 by~N:-5
 by~b:-2
 by~t:-7
 by~w:-4
 b~ ::4
 b~A:-5
 b~F:-7
 c:-5
 cakes:-6
 calculat:-2
 calculate:2
 calculator:-5
 call:3
 calls:-11
 calls~ it:-8
 call~ for:1
 call~ it:6
 call~ that:4
 call~ the:-3
 call~F:3
 came~ back:3
 came~ from:-1
 came~ in:-3
 came~ out:-1
 came~ to:9
 came~ up:2
 camp:-1
 can:-2
 candl:-6
 candle:-3
 candle~B:-2
 cannot:-6
 cans:-2
 cant:2
 cant~ be:-1
 cant~ find:3
 cant~ get:-6
 cant~ remember:7
 cant~ say:-1
 cant~ stand:5
 can~ and:2
 can~ be:-3
 can~ bear:-4
 can~ i:-1
 can~ is:5
 can~ of:5
 can~ see:1
 can~ somebody:-6
 can~ stand:-7
 can~ still:-5
 can~ tell:-2
 can~ the:-3
 can~ use:-5
 can~ you:2
 cap:-2
 capping:-7
 caramel:-5
 carbonate:6
 card:-1
 cardboard:1
 card~ is:3
 card~ no:-4
 care:3
 caretaker:-7
 carpet:-4
 carri:5
 carri~ it:4
 carri~ on:4
 carry:-8
 carton:-2
 cast:-6
 castile:-6
 cat:-1
 cat~ got:5
 cat~ has:-6
 cat~ is:-4
 caught:1
 cauldron:-2
 caviti:-7
 ceil:-7
 cell:2
 cellar:-10
 certifi:-8
 certificate:5
 chair:-5
 chang:-4
 change:-3
 change~ the:-5
 chang~ my:8
 chang~ the:-7
 charg:-2
 charge:-5
 chat:-2
 cheap:-9
 cheaper:-6
 cheaper~ than:-5
 check:-4
 check~ ::-1
 check~ before:2
 check~ by:-7
 check~ it:-7
 check~ me:-2
 check~ my:-8
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
 chemistry:-1
 chemistry~ teacher:4
 child:-6
 children:-4
 chill:-6
 chip:2
 chips:4
 chisel:-4
 choir:1
 choose:-3
 chopp:-2
 christma:-6
 christma~0:-6
 chuck:3
 chuck~ in:7
 church:-7
 claim:-4
 clarity:-5
 class:-2
 class~ ::-5
 clean:-2
 clean~ the:-5
 clean~ up:5
 clean~F:-6
 clear:-8
 clearer:1
 clear~ and:-5
 clear~ as:-10
 clear~ at:-8
 clear~ in:-5
 climb:-9
 climb~ out:-3
 climb~ to:-5
 cling:-4
 cling~ film:-5
 cling~ to:3
 clock:-5
 clos:-1
 close:-3
 close~ to:-6
 cloth:-4
 cloud:3
 cloudy:-1
 cloudy~ for:-4
 club:-3
 clubs:-4
 clump:2
 coat:-7
 coins:4
 cold:-7
 cold~ and:-2
 cold~ from:-5
 cold~ press:-7
 cold~ proces:-6
 cold~L:7
 cold~W:-5
 colleague:-6
 colour:-8
 column:-7
 com:4
 combin:3
 combine:-2
 combine~ blend:-2
 come:2
 comes:-1
 comes~ by:2
 comes~ from:-4
 comes~ in:-3
 comes~ out:4
 come~ back:-7
 come~ down:-4
 come~ off:-2
 come~ out:1
 come~ to:5
 comma:2
 comma~ is:-8
 comment:-7
 compar:-3
 compare:-9
 compar~ with:2
 complain:-6
 complaint:-7
 complain~ about:-4
 complete:4
 computer:-3
 confetti:-6
 confirm:-8
 confirm~ the:-7
 confus:1
 contain:6
 convert:-8
 cook:2
 cooker:-1
 cooker~ ::-3
 cooker~ before:2
 cooker~ is:-5
 cooker~ on:-2
 cooks:-2
 cook~ ::-7
 cook~ ?:-7
 cook~ about:2
 cook~ at:-4
 cook~ for:-4
 cook~ i:-3
 cook~ in:-7
 cook~ is:5
 cook~ it:1
 cook~ on:-3
 cook~ once:-3
 cook~ so:6
 cook~ until:-2
 cook~ was:-10
 cook~ when:-7
 cook~ with:2
 cook~=:-1
 cook~F:-7
 cook~t:-5
 cool:-5
 cools:-8
 cool~ down:-1
 cool~ i:-2
 cool~ it:-7
 cool~ the:-6
 cool~ to:-1
 cool~ under:-3
 copi:2
 copi~ from:4
 copi~ it:-1
 copi~ off:2
 copi~ out:-6
 copi~ straight:-7
 copy:2
 cork:-7
 corner:-12
 correct:1
 correction:7
 correct~ ?:-2
 correct~ for:1
 correct~ or:-3
 cos:8
 cost:-6
 costs:-14
 costs~ me:-2
 costs~0:-5
 costs~t:-5
 cost~ ::-7
 cost~ eur:-2
 cost~ me:-6
 cost~ per:-1
 cost~ sheet:-5
 cost~0:-5
 cost~t:-3
 could:-3
 couldnt:5
 couldnt~ be:9
 couldnt~ get:7
 couldnt~ tell:2
 could~ be:10
 could~ have:-7
 could~ not:7
 could~ someone:-5
 could~ the:-5
 could~ you:-1
 council:-6
 count:1
 counter:4
 country:2
 county:-6
 count~ in:-2
 count~ it:6
 count~ the:-1
 count~ with:6
 course:-5
 course~ in:-3
 cousin:-2
 cover:-6
 cover~ cut:-1
 cover~ it:-3
 cover~ with:-7
 cow:3
 cows:-6
 cp:-5
 crack:-2
 crackl:1
 crackling:2
 crack~ on:-6
 craft:-1
 crate:-7
 creamy:-7
 cried:-7
 crisp:-5
 crisp~ tube:-5
 crock:-2
 crockpot:-4
 crock~ pot:3
 cross:-1
 cross~ out:-1
 crumb:-2
 crumbl:-7
 crumble:-5
 crumb~ and:7
 crumb~ at:3
 crush:-5
 crust:8
 crystal:-4
 cubes:-7
 cubes~ and:-5
 cubes~ of:1
 cubes~ the:-6
 cubes~w:-5
 cup:3
 cupboard~ and:4
 cupcake:-7
 cups:-3
 cup~ and:-7
 cup~ of:8
 cup~ weigh:-6
 cup~ with:-6
 cur:-6
 cure:-8
 cured:-6
 cures:1
 cure~ ::-3
 cure~ for:-4
 cure~ till:-3
 cure~ until:-1
 cure~t:-1
 curry:-5
 custard:-6
 customer:-10
 cuts:-6
 cutt:-5
 cutter:-7
 cut~ ::-5
 cut~ after:-3
 cut~ at:-7
 cut~ in:-3
 cut~ into:-6
 cut~ it:2
 cut~ next:-2
 cut~ off:-2
 cut~ on:-3
 cut~ the:8
 cut~ too:-5
 cut~ with:-5
 cut~0:-5
 cut~b:-4
 cut~t:-2
 c~ ::-3
 c~ at:-3
 c~0:-7
 d:-5
 dad:-3
 dads:-2
 dads~t:-2
 dag:-2
 dag~ ::-1
 dairy:7
 damp:5
 dare:2
 dark:-9
 das:-7
 date:-7
 dates:-6
 date~ ::-2
 date~t:-6
 daughter':-9
 daughter:4
 daughter~ who:-7
 day:-3
 days:-5
 day~ and:-3
 day~ at:-4
 day~ before:4
 day~ i:-4
 day~ it:-5
 day~ so:3
 day~ then:-5
 day~0:-6
 day~t:-5
 de:-5
 dead:-4
 deal:7
 dear:3
 dear~ all:3
 dear~ group:-4
 december:-3
 decent:-6
 decid:-1
 decimal:-6
 deep:1
 degre:-7
 demonstration:1
 dent:-8
 deodoris:-10
 diary:-5
 dictat:3
 did:3
 didnt:6
 didnt~ weigh:5
 did~ and:1
 did~ for:-1
 did~ i:-4
 did~ in:-11
 did~ it:-1
 did~ not:1
 did~ that:1
 did~ the:3
 did~ you:-10
 did~=:-3
 died:2
 died~ at:6
 difference:-4
 different:-8
 digital:-8
 dilut:-3
 dilute:-7
 dilution:4
 dinner:3
 disaster:-10
 discount:2
 dish:-1
 dish~ soap:5
 display:6
 dissolv:4
 dissolve:4
 dissolve~ the:6
 dissolve~=:-9
 dissolv~ the:-1
 dissolv~ together:-1
 dissolv~<:2
 dissolv~=:-5
 do:-4
 doctor:-8
 does:-5
 doesnt:-1
 doesnt~ mind:-5
 doesnt~ smell:-3
 does~ anybody:-3
 does~ anyone:3
 does~ her:-5
 does~ it:-3
 does~ my:-6
 does~ not:-3
 does~ that:1
 does~ the:-4
 does~ this:1
 does~%:-6
 does~F:-5
 does~b:-6
 does~w:2
 dogs:-7
 dog~ got:8
 doing:3
 doing~ it:-5
 doing~ the:2
 doing~ this:3
 done:-5
 dont:-4
 dont~ ask:5
 dont~ be:-7
 dont~ get:4
 dont~ know:4
 dont~ panic:-6
 dont~ tell:1
 dont~ trust:-5
 dont~ want:-7
 door:-3
 doorbell:3
 doors:-9
 dos:-2
 dose:8
 dose~ of:9
 dot:-5
 doubl:9
 double:-6
 double~ boiler:-7
 double~ check:-2
 doubl~ the:-1
 doubt:2
 down:2
 down~ and:-4
 down~ by:4
 down~ the:-2
 down~ to:-1
 down~ with:4
 do~ ?:-5
 do~ a:-5
 do~ for:-5
 do~ i:4
 do~ in:-9
 do~ it:-2
 do~ not:-5
 do~ the:-6
 do~ this:-7
 do~ we:-5
 do~ with:2
 do~ you:-5
 do~F:-3
 draft:-7
 drag:-5
 drain:5
 drama:-3
 drank:6
 draw:2
 drawer:-3
 drawn:4
 dream:-3
 drew:-5
 dried:-3
 drink:-4
 drip:-7
 drips:-3
 drop:-1
 dropp:3
 dropp~ below:-3
 dropp~ the:3
 drops:-1
 drops~ of:1
 drop~ of:3
 drop~ the:-6
 drop~ to:-6
 drove:-3
 drown:-6
 drum:6
 dry:2
 dry~ cup:-2
 dry~ hands:5
 dry~ skin:-8
 dry~ so:2
 dry~ until:4
 duck:-6
 dump:-4
 dust:3
 e:-5
 each:-2
 each~ and:-5
 each~ of:-4
 each~ time:-7
 earlier:-4
 early:-10
 easier:-6
 easter:-5
 easy:-8
 eat:-1
 eats:-7
 eczema:3
 edge:-3
 edges:-2
 edit:2
 edition:2
 edit~ ::3
 either:6
 elbow:-6
 else:-1
 else~ no:-2
 empti:3
 empty:-2
 empty~ and:-3
 emulsion:-7
 enamel:-8
 enamel~ pot:-7
 end:3
 ended:7
 ended~ up:-2
 ends:-10
 end~ ?:-7
 end~ after:1
 end~ and:3
 end~ i:-1
 end~ is:-10
 end~ it:8
 end~ of:-2
 end~ piece:-6
 end~ so:4
 english:-4
 english~ i:-5
 english~ is:-5
 enough:-2
 enough~ ?:-5
 enough~ for:-4
 enough~ or:-6
 enough~ to:-4
 enough~A:1
 entire:-4
 entry:-2
 envelope:-5
 equal:1
 equal~ parts:1
 equal~ weight:-6
 error:-3
 eur:-4
 euro:-6
 even:-8
 evening:-6
 even~ class:-4
 even~ in:-5
 ever:-11
 every:-4
 everybody:-10
 everyday:-4
 everyday~ bar:-5
 everyone:-7
 everyone~ who:2
 everyth:4
 everyth~ and:-4
 everyth~ at:2
 everyth~ else:3
 everyth~ in:-5
 everyth~ is:3
 everyth~ on:-1
 everyth~ was:-4
 everywhere:-6
 every~ one:4
 every~ time:2
 every~t:-5
 ex:-5
 exact:-7
 exact~ as:-7
 exact~ like:1
 exact~ one:-2
 exam:-6
 except:8
 except~ that:-1
 except~ the:4
 exces:3
 excuse:-6
 excuse~ my:-3
 excuse~ the:-6
 expect:-4
 expensive:-2
 explain:-2
 export:-4
 export~ from:-4
 extra:6
 extra~ fat:7
 extra~ virgin:-5
 extra~A:-4
 extra~F:-4
 eye:6
 eyebrow:-7
 eyes:-4
 eyes~ on:-1
 eye~ over:-3
 f:-6
 face:-6
 faces:-7
 facial:2
 facial~ bar:-5
 fact:5
 faded:-7
 fades:-5
 fail:5
 faint:-4
 faint~ of:-3
 fair:3
 fair~ ::-4
 fall:-1
 falls:-6
 false:-7
 false~ trace:-7
 fami:-1
 famili:-6
 fan:-4
 fancy:5
 far:-3
 farm~ shop:3
 far~ as:-4
 far~ too:3
 fast:-8
 faster:3
 faster~ than:-5
 fat:5
 father:-1
 father~ in:4
 fats~ ::-4
 fats~ ?:-4
 fats~ and:-1
 fats~ are:-3
 fats~ at:-4
 fats~ in:-8
 fats~ melt:-1
 fats~ or:-5
 fats~ were:-6
 fat~ ::2
 fat~ ?:-8
 fat~ and:2
 fat~ g:-4
 fat~ grams:-5
 fat~ in:-3
 fat~ left:4
 fat~ of:-9
 fat~ so:-1
 fat~ was:-5
 fault:-5
 favour:1
 february:-8
 feed:2
 feed~ store:4
 feels:-6
 feels~ a:-4
 feels~ like:-5
 feel~ the:-1
 feet:3
 fell:-2
 fellow:-1
 felt:-1
 felt~ like:-3
 fence:-6
 fete:3
 few:5
 field:-7
 fifth:2
 fifth~ of:6
 fig:-6
 fight:3
 figure:7
 file:2
 files:-4
 fill:3
 fills:-7
 fills~ my:-7
 fills~0:-3
 fill~ in:-4
 fill~ the:4
 fill~ to:3
 fill~ up:6
 fill~0:2
 film:-7
 film~ on:-4
 filter:-1
 final:-2
 find:8
 finds:-2
 find~ the:3
 find~F:1
 fine:-6
 finer:-5
 fine~ ?:-5
 fine~ and:-2
 fine~ for:-6
 fine~ or:-5
 finger:-1
 finish:2
 finish~ paste:-6
 finish~ with:5
 fire:-8
 firm:6
 firmer:-1
 first:-6
 first~ and:-3
 first~ attempt:-6
 first~ batch:1
 first~ ever:-6
 first~ go:-2
 first~ hour:-3
 first~ it:-3
 first~ lot:4
 first~ one:-2
 first~ so:8
 first~ soap:-1
 first~ the:-2
 first~ then:-10
 first~ time:4
 first~ to:-5
 first~ try:-4
 first~ went:-2
 first~0:3
 first~t:3
 fish:-2
 fit:-3
 fits:-5
 fits~ the:-4
 fit~ ?:1
 fit~ the:2
 fixed:-9
 fizz:-3
 flak:3
 flake:6
 flame:-6
 flat:2
 flatmate:-1
 flat~ and:-6
 flat~ boil:1
 flat~ in:-6
 float:-3
 float~ an:-5
 floor:3
 floor~ and:-2
 fluid:3
 fluid~ ounc:7
 foam:-5
 foam~ over:6
 foil:1
 fold:-3
 folder:-7
 fold~ in:1
 folk:-9
 folks:-8
 follow:-1
 forever:-6
 forget:-1
 forget~ the:-2
 forgiv:-9
 forgive:-4
 forgot:4
 forgotten:3
 forgot~ it:6
 forgot~ the:-3
 forgot~ to:4
 form:-9
 formula:-5
 forum:-10
 for~ a:-3
 for~ about:1
 for~ after:2
 for~ ages:-1
 for~ all:-2
 for~ an:-5
 for~ babi:-8
 for~ both:6
 for~ candl:-6
 for~ christma:-3
 for~ days:-6
 for~ each:5
 for~ floor:-3
 for~ free:4
 for~ fry:-1
 for~ gram:5
 for~ half:5
 for~ hands:1
 for~ hardnes:1
 for~ his:-5
 for~ it:-5
 for~ laundry:3
 for~ luck:5
 for~ me:2
 for~ more:-1
 for~ my:1
 for~ next:-2
 for~ no:5
 for~ noth:-6
 for~ once:7
 for~ one:4
 for~ our:-1
 for~ people:-4
 for~ read:-2
 for~ salad:-10
 for~ saturday:3
 for~ shav:-4
 for~ skin:-8
 for~ soap:-8
 for~ some:-7
 for~ the:2
 for~ these:-3
 for~ this:-4
 for~ those:-3
 for~ today:2
 for~ us:2
 for~ wash:-3
 for~ what:6
 for~ word:-6
 for~ years:-3
 for~ you:-7
 for~ your:2
 for~%:6
 for~0:-6
 for~=:-6
 for~>:1
 for~A:-1
 for~B:-2
 for~F:1
 for~L:-4
 for~N:-5
 for~S:-9
 for~W:-2
 for~b:-2
 for~d:-8
 for~e:-5
 for~t:-7
 for~v:-4
 found:7
 found~ a:4
 found~ it:5
 found~ on:2
 found~ out:1
 found~ the:6
 fractionat:11
 fram:-9
 freeze:-5
 freezer:-2
 freezer~ for:-6
 freezer~ in:-4
 freezer~ paper:-3
 freeze~ the:-6
 fresh:-2
 friday:2
 friday~ and:-4
 fridge:-2
 fridge~ for:-6
 fridge~ overnight:-8
 fried:1
 friend':-4
 friend:-6
 friend~ says:-6
 friend~ who:5
 friend~ with:1
 frighten:-6
 from~ a:1
 from~ an:-5
 from~ another:-1
 from~ before:-2
 from~ christma:1
 from~ graz:-3
 from~ it:-4
 from~ krakow:-2
 from~ last:-7
 from~ me:-3
 from~ my:-3
 from~ sunday:8
 from~ that:1
 from~ the:1
 from~ what:-7
 from~ work:3
 from~0:-4
 from~=:-2
 from~F:-4
 from~L:-7
 from~t:-9
 from~w:-8
 front:-1
 front~ of:-6
 froze:4
 frozen:-1
 frozen~ cubes:-3
 frozen~ in:2
 frozen~ to:-5
 frozen~w:-9
 froze~ it:2
 fruit:-5
 fry:3
 fryer:4
 full:6
 fully:1
 full~ of:-5
 fume:-8
 fumes:-10
 fun:-11
 funnel:2
 funny:-7
 further:5
 fwd:-2
 fwd~ ::-3
 f~0:-7
 g:-4
 garage:-3
 garden:-5
 gas:-5
 gate:-7
 gave:2
 gave~ it:2
 gave~ me:5
 gave~ out:7
 gave~ the:-3
 gave~ up:5
 gave~ us:1
 gave~0:-9
 gel:-2
 gell:-3
 gel~ ::-4
 gel~ at:-1
 gel~ phase:-8
 generou:4
 gent:-6
 gentle:-2
 gentler:5
 german:-4
 get:-4
 gets:-5
 gets~ a:2
 gets~ the:-6
 gets~0:-5
 get~ a:4
 get~ it:4
 get~ the:1
 get~ to:-9
 get~0:-7
 get~F:4
 ghana:-7
 gift:-7
 girl:-2
 giv:-9
 give:-3
 given:-4
 gives:-9
 gives~ me:-4
 gives~ the:-6
 gives~%:5
 gives~0:-7
 give~ it:-6
 give~ or:5
 give~ the:-6
 give~ to:-2
 glad:-1
 glass:-2
 glass~ and:6
 glass~ of:6
 glossy:-3
 glov:-9
 glov~ and:-7
 glov~ on:-5
 glug:5
 glug~ of:3
 go:-1
 goat:5
 goats:-2
 goats~ are:3
 goes:-7
 goes~ away:-3
 goes~ in:-2
 goes~ into:-5
 goes~ off:-5
 goes~ on:-8
 goes~ up:-7
 goggl:-10
 goggl~ and:-5
 goggl~ on:-3
 going:5
 going~ by:-5
 going~ in:4
 going~ to:-1
 gone:4
 gone~ after:-6
 gone~ by:-10
 gone~ in:1
 gone~ to:-1
 gone~ up:-3
 gonna:3
 good:-2
 good~ ?:-3
 good~ bit:9
 good~ enough:-1
 good~ even:-3
 good~ for:-7
 good~ glug:4
 good~ morn:-5
 good~ one:-7
 good~ or:-2
 good~ to:-2
 good~F:-8
 good~t:-7
 goose:1
 got:5
 got~ a:-4
 got~ in:-3
 got~ into:6
 got~ it:-2
 got~ my:-7
 got~ round:4
 got~ the:-4
 got~ thick:-1
 got~ to:4
 got~ too:2
 got~ wet:3
 got~0:-7
 got~=:-4
 got~S:-2
 got~b:5
 go~ ?:-4
 go~ at:5
 go~ by:2
 go~ clear:1
 go~ for:1
 go~ in:-3
 go~ into:-8
 go~ on:-6
 go~ out:5
 go~ over:-6
 go~ rancid:-6
 go~ to:-2
 go~ up:4
 go~ with:9
 go~ wrong:-4
 grabb:6
 grade:5
 grain:-7
 grainy:-5
 gram:-2
 gramm:-9
 grams~ ::-8
 grams~ and:-2
 grams~ cost:-3
 grams~ for:-3
 grams~A:-5
 gram~ for:5
 grand:-5
 grandad:5
 granddad:1
 granddaughter:-3
 grandma:-1
 grandmother:-9
 grandmother~ had:-3
 grandpa:2
 grandson:7
 granny:-2
 grans:-7
 grate:-2
 grateful:-2
 grate~ the:-7
 gravy:-1
 graz:-6
 greas:-3
 grease:-3
 greasy:-1
 great:-2
 great~ aunt:-3
 green:-3
 green~ and:6
 greeting:-5
 greeting~ from:-5
 grey:-1
 grind:-4
 grind~ the:-2
 grocer:-4
 ground:-9
 group:2
 group~ ::-3
 group~ of:-5
 grown:2
 guess:8
 guess~ the:-3
 guest:-9
 guild:-7
 g~ ::-7
 g~ cost:-2
 g~ oz:-3
 g~e:-8
 ha:2
 habit:2
 had:3
 hadnt:6
 had~ a:-7
 had~ already:6
 had~ been:4
 had~ come:4
 had~ cool:-7
 had~ dropp:-3
 had~ gone:7
 had~ in:-4
 had~ it:4
 had~ melt:5
 had~ no:-4
 had~ only:-2
 had~ set:2
 had~ some:-2
 had~ the:-4
 had~ to:-6
 had~0:-5
 had~<:-6
 had~=:1
 had~>:-9
 had~F:1
 had~N:-4
 had~X:4
 had~b:7
 hair:-1
 half:6
 halfway:-5
 halfway~ through:5
 half~ a:3
 half~ and:-5
 half~ as:4
 half~ batch:6
 half~ is:3
 half~ of:2
 half~ the:-2
 half~A:-7
 half~F:-1
 half~I:-4
 half~W:-6
 hall:-7
 hallo:-2
 hallo~ my:-2
 halv:8
 halve:-1
 hammer:3
 hand:-2
 handful:2
 handful~ of:-5
 handle:-4
 handout:1
 handout~0:-5
 hands:-2
 hands~ ?:-3
 hands~ are:1
 handwrit:2
 handy:-7
 hand~ ::1
 hand~ and:-1
 hand~ in:-5
 hand~ on:4
 hand~ out:-7
 hand~ soap:-5
 hand~ warm:-1
 hand~ with:-5
 hang:5
 hangs:-5
 happen:2
 happy:2
 happy~ with:-8
 hard:-4
 harden:-6
 harder:-2
 harder~ bar:-2
 hardnes:-6
 hardware:-1
 hardware~ store:-6
 hard~ after:-1
 hard~ and:-5
 hard~ any:-8
 hard~ as:-7
 hard~ in:-1
 hard~ smell:-6
 hard~ to:5
 hard~W:-8
 harm:-6
 harsh:-8
 has:1
 hasnt:-7
 has~ anyone:-7
 has~ become:-2
 has~ been:-1
 has~ cool:-7
 has~ done:-5
 has~ it:2
 has~ made:-3
 has~ moved:-8
 has~ no:-3
 has~ the:5
 has~ to:-4
 has~0:1
 has~=:-5
 has~F:6
 has~N:-7
 hate:-5
 hates:-1
 hav:-3
 have:-1
 havent:4
 have~ a:-10
 have~ asked:3
 have~ been:-1
 have~ done:-2
 have~ gone:2
 have~ had:3
 have~ i:-6
 have~ it:1
 have~ made:-5
 have~ never:2
 have~ no:-5
 have~ not:-7
 have~ the:2
 have~ to:-11
 have~ used:-5
 have~0:-5
 have~=:-6
 have~>:-4
 have~F:4
 hdpe:-6
 he:-2
 head:-2
 heap:10
 hear:-1
 heard:3
 heart:-2
 heat:-13
 heats:-6
 heats~ up:-5
 heat~ and:-3
 heat~ off:-1
 heat~ the:-3
 heaven:-6
 heavy:2
 heavy~ ?:-5
 heavy~ or:-5
 hed:4
 height:-6
 held:9
 held~ back:1
 held~ the:2
 hell:-4
 hello:-3
 hello~ from:-1
 help:7
 helps:-2
 help~ with:-1
 hence:-4
 hence~ the:-9
 hens:-9
 her:-5
 heres:-7
 heres~ my:-1
 heres~ the:-4
 heres~ what:-8
 here~ ::-3
 here~ and:-5
 here~ goes:-3
 here~ i:5
 here~ in:-6
 here~ is:2
 here~ it:-6
 here~ so:-4
 here~ we:-9
 hers:-11
 herself:-6
 hers~ and:-5
 hers~ with:-8
 her~ hands:-5
 her~ life:-7
 her~ own:-1
 her~ soap:-6
 her~A:-3
 her~F:-10
 hes:4
 hey:-6
 he~ also:-8
 he~ has:-4
 he~ is:-1
 he~ says:5
 he~ was:-7
 hid:-10
 high:-5
 him:-6
 himself:3
 his:-6
 hiss:3
 his~A:-7
 hit:1
 hit~ it:-5
 hive:-7
 hives:-6
 hiya:1
 hi~ everyone:-4
 hmm:4
 hola:-3
 holds:-4
 holds~ a:3
 holds~0:-4
 holds~v:-7
 holds~w:-7
 hold~ ?:-3
 hold~ back:5
 hold~ the:3
 hold~ up:-3
 hole:-4
 holes:-8
 holiday:-10
 home:-1
 home~ and:4
 honest:6
 hood:-9
 hope:2
 hope~ it:-5
 hope~ the:-3
 hot:-8
 hotter:-9
 hotter~ than:-5
 hot~ or:-5
 hour:-3
 hour~ and:-6
 hour~ then:-3
 hour~0:1
 house:3
 house~ smell:-7
 how:1
 how~ do:1
 how~ does:-4
 how~ i:2
 how~ long:-6
 how~ many:-6
 how~ much:8
 how~ my:-7
 how~ the:-9
 how~ to:-10
 how~ we:-7
 hp:-4
 hp~ in:-3
 hubby:2
 huge:3
 humidity:-1
 humidity~%:-4
 hurry:-4
 hurt:-2
 hurts:-4
 husband:2
 husband~ says:-5
 husband~ who:-8
 hydrogenat:1
 i'd:2
 i'd~ already:5
 i'd~ be:-6
 i'd~ been:1
 i'd~ guess:9
 i'd~ have:-8
 i'd~ like:4
 i'd~ love:-3
 i'd~ never:-6
 i'd~ pour:-1
 i'd~ put:3
 i'd~ read:3
 i'd~ say:5
 i'd~ use:-5
 i'd~ weigh:6
 i:4
 idea:-1
 idea~ which:4
 idk:5
 ie:6
 if:-3
 if~ anyone:-3
 if~ im:2
 if~ it:3
 if~ its:-3
 if~ my:3
 if~ somebody:-6
 if~ someone:2
 if~ that:5
 if~ thats:1
 if~ the:-4
 if~ ther:-4
 if~ this:3
 if~ ur:-7
 if~ you:-4
 if~ your:-8
 if~ youre:-7
 if~ yours:-4
 if~ youve:-6
 if~A:-5
 if~F:-7
 ignore:7
 ignore~ the:8
 ill:-2
 ill~ do:-4
 ilse:-1
 im:2
 impatient:-7
 im~ a:-2
 im~ after:8
 im~ ask:-1
 im~ at:-8
 im~ doing:-3
 im~ going:1
 im~ in:-6
 im~ mak:2
 im~ not:1
 im~ on:2
 im~ told:-5
 im~ using:5
 im~0:-4
 in:1
 incl:1
 includ:3
 includ~ the:8
 individual:-7
 individual~ mould:-7
 infus:4
 infus~ with:5
 ingredient:-4
 ingredient~ g:-3
 ingredient~ grams:-4
 ingredient~ oz:-6
 ingredient~ weight:-3
 inside:-4
 insist:7
 instead:4
 instruction:2
 insulate:-7
 internet:-3
 into:-1
 into~ a:-6
 into~ cubes:-7
 into~ it:1
 into~ mould:-4
 into~ oils:-3
 into~ one:-6
 into~ that:3
 into~ the:2
 into~ this:6
 into~0:-5
 into~=:-4
 into~W:-8
 into~b:1
 into~v:-3
 in~ ::2
 in~ ?:5
 in~ a:-2
 in~ about:-1
 in~ after:7
 in~ all:-8
 in~ an:-6
 in~ and:-3
 in~ another:5
 in~ april:-7
 in~ as:3
 in~ at:3
 in~ august:2
 in~ batch:-4
 in~ before:8
 in~ between:-5
 in~ blend:-8
 in~ burst:-2
 in~ by:1
 in~ case:-9
 in~ class:1
 in~ cold:-6
 in~ cubes:-7
 in~ dag:-2
 in~ each:-5
 in~ every:-4
 in~ fact:5
 in~ first:-4
 in~ for:11
 in~ front:-7
 in~ g:2
 in~ grams:-10
 in~ half:1
 in~ her:-11
 in~ hers:-9
 in~ his:-8
 in~ hot:-5
 in~ i:5
 in~ it:2
 in~ its:6
 in~ january:-5
 in~ july:-7
 in~ june:-7
 in~ last:-2
 in~ law:-2
 in~ laws:-3
 in~ march:-8
 in~ may:1
 in~ maybe:2
 in~ my:-1
 in~ no:-4
 in~ october:-5
 in~ ohio:-5
 in~ once:11
 in~ one:3
 in~ or:3
 in~ order:-6
 in~ our:5
 in~ plus:-1
 in~ red:2
 in~ short:-5
 in~ slow:-2
 in~ small:-4
 in~ so:5
 in~ spr:-8
 in~ step:-4
 in~ steps:5
 in~ summer:-7
 in~ that:3
 in~ the:-2
 in~ there:6
 in~ this:1
 in~ tiny:4
 in~ to:-2
 in~ too:1
 in~ total:-6
 in~ truth:3
 in~ under:-4
 in~ week:-3
 in~ went:7
 in~ when:-4
 in~ which:1
 in~ winter:-3
 in~ with:5
 in~ your:-1
 in~0:-7
 in~<:3
 in~=:-4
 in~>:-2
 in~F:-3
 in~I:-7
 in~L:2
 in~N:8
 in~W:-5
 in~b:-9
 in~e:4
 in~l:-2
 in~r:-5
 in~t:-6
 in~v:-8
 in~w:1
 ish:-6
 isnt:7
 isnt~ it:5
 is~ a:2
 is~ about:-5
 is~ actual:6
 is~ all:-2
 is~ already:1
 is~ alway:-1
 is~ an:4
 is~ and:-7
 is~ as:-1
 is~ at:-5
 is~ below:-5
 is~ better:2
 is~ cheap:-5
 is~ clear:-4
 is~ correct:-8
 is~ dear:-1
 is~ done:1
 is~ dry:4
 is~ enough:-5
 is~ exact:-7
 is~ fine:-11
 is~ finish:2
 is~ for:-4
 is~ going:4
 is~ gone:-7
 is~ good:-9
 is~ hard:-1
 is~ her:-3
 is~ hot:-6
 is~ how:-2
 is~ in:4
 is~ it:-5
 is~ just:-7
 is~ left:-1
 is~ like:-4
 is~ love:-4
 is~ meant:-2
 is~ mine:-8
 is~ more:-2
 is~ near:-7
 is~ no:-6
 is~ normal:-6
 is~ not:-4
 is~ noth:-2
 is~ now:4
 is~ off:3
 is~ ok:-5
 is~ on:2
 is~ one:4
 is~ only:-9
 is~ our:-5
 is~ out:1
 is~ over:3
 is~ plenty:1
 is~ real:9
 is~ right:1
 is~ safe:-1
 is~ set:-1
 is~ she:-2
 is~ short:2
 is~ small:-3
 is~ sold:4
 is~ step:-2
 is~ technical:7
 is~ that:-2
 is~ the:-2
 is~ there:-5
 is~ thick:-5
 is~ this:-8
 is~ weigh:-3
 is~ what:3
 is~ where:-9
 is~ whether:-8
 is~ why:-8
 is~ with:11
 is~ worth:-5
 is~ written:-1
 is~%:-1
 is~0:4
 is~<:-4
 is~=:-5
 is~>:-7
 is~A:-2
 is~F:7
 is~L:4
 is~N:10
 is~S:3
 is~T:-7
 is~b:5
 is~d:-1
 is~e:-6
 is~l:1
 is~t:-8
 is~v:-1
 is~w:-2
 it:2
 item:-3
 item~ grams:-3
 itll:-2
 itll~ be:1
 its:1
 itself:-4
 itself~ off:-1
 its~ a:2
 its~ about:-6
 its~ all:-1
 its~ as:-7
 its~ been:-6
 its~ clear:-7
 its~ cook:5
 its~ date:-4
 its~ fine:-5
 its~ for:6
 its~ gone:2
 its~ hot:-6
 its~ in:-3
 its~ just:-7
 its~ like:1
 its~ made:3
 its~ meant:-1
 its~ my:2
 its~ not:-7
 its~ on:-8
 its~ only:-2
 its~ own:-4
 its~ place:5
 its~ ready:-6
 its~ sitt:-5
 its~ the:-2
 its~ time:-5
 its~ weight:-6
 its~ what:4
 its~0:7
 its~=:-6
 its~A:6
 its~N:6
 its~b:-3
 its~d:-6
 its~l:3
 its~t:2
 it~ ::-6
 it~ ?:-3
 it~ a:2
 it~ about:-6
 it~ add:-5
 it~ again:3
 it~ alone:-7
 it~ already:1
 it~ and:-2
 it~ another:4
 it~ anyway:-10
 it~ as:-3
 it~ away:-4
 it~ back:-1
 it~ bad:3
 it~ be:3
 it~ because:6
 it~ before:-6
 it~ behav:-3
 it~ bit:6
 it~ but:-5
 it~ came:1
 it~ can:-2
 it~ check:-8
 it~ clear:-5
 it~ climb:-4
 it~ come:-5
 it~ comes:3
 it~ cooks:-3
 it~ cool:3
 it~ cools:-6
 it~ correct:-4
 it~ cost:-5
 it~ cut:-3
 it~ did:-5
 it~ didnt:2
 it~ do:-5
 it~ down:2
 it~ dried:3
 it~ drop:-6
 it~ enough:-3
 it~ every:-4
 it~ first:3
 it~ fits:-7
 it~ flat:-4
 it~ foam:3
 it~ for:-1
 it~ gets:-4
 it~ gives:1
 it~ go:-4
 it~ goes:1
 it~ got:2
 it~ had:-1
 it~ hard:-5
 it~ has:-1
 it~ heats:-5
 it~ here:-4
 it~ holds:-5
 it~ i:-1
 it~ if:-5
 it~ in:-1
 it~ into:-11
 it~ is:4
 it~ it:2
 it~ its:-5
 it~ last:-2
 it~ lasts:-5
 it~ lather:-7
 it~ like:-4
 it~ look:7
 it~ looks:-5
 it~ makes:1
 it~ matter:1
 it~ may:-5
 it~ melts:-3
 it~ needs:-2
 it~ never:-1
 it~ next:-3
 it~ no:5
 it~ now:-7
 it~ off:5
 it~ ok:-4
 it~ once:-7
 it~ only:1
 it~ or:-6
 it~ outside:-5
 it~ over:-1
 it~ past:-9
 it~ plus:-4
 it~ real:4
 it~ safe:1
 it~ said:6
 it~ sat:1
 it~ says:3
 it~ seiz:3
 it~ set:2
 it~ sets:-3
 it~ should:-3
 it~ since:-4
 it~ sit:1
 it~ smell:-3
 it~ so:-1
 it~ stand:-1
 it~ stay:4
 it~ stays:-1
 it~ still:-7
 it~ stink:-6
 it~ sweat:-7
 it~ takes:-5
 it~ that:-1
 it~ the:-6
 it~ then:-3
 it~ there:-9
 it~ thicken:2
 it~ through:-8
 it~ till:1
 it~ times:-1
 it~ to:3
 it~ too:2
 it~ took:-5
 it~ trac:-2
 it~ turn:-3
 it~ turns:2
 it~ twice:2
 it~ under:-5
 it~ until:-5
 it~ up:2
 it~ wants:-4
 it~ was:2
 it~ when:4
 it~ will:-7
 it~ with:-7
 it~ without:3
 it~ wont:-6
 it~ would:-2
 it~ wouldnt:4
 it~ wrong:-5
 it~ zapp:3
 it~ zaps:-6
 it~0:2
 it~=:-5
 it~A:-1
 it~F:-3
 it~S:-4
 it~b:6
 it~t:-7
 ive:-1
 ive~ a:1
 ive~ been:-7
 ive~ bought:4
 ive~ done:-6
 ive~ gone:7
 ive~ got:-2
 ive~ had:-8
 ive~ just:2
 ive~ made:-5
 ive~ never:-5
 ive~ no:-1
 ive~ not:-5
 ive~ only:2
 ive~ put:1
 ive~ read:-7
 ive~ seen:-7
 ive~ since:6
 ive~ tried:-6
 ive~ used:-2
 ive~ weigh:4
 ivory:-6
 i~ ?:-8
 i~ actual:2
 i~ add:-6
 i~ added:3
 i~ alway:-4
 i~ am:4
 i~ ask:1
 i~ asked:-5
 i~ began:-8
 i~ believe:4
 i~ blame:-6
 i~ bought:-10
 i~ buy:-4
 i~ call:-1
 i~ came:3
 i~ can:-9
 i~ cant:-5
 i~ carri:11
 i~ caught:1
 i~ chang:-5
 i~ check:-10
 i~ chuck:7
 i~ cook:-1
 i~ copi:3
 i~ copy:-7
 i~ could:1
 i~ couldnt:1
 i~ count:-3
 i~ cut:-1
 i~ did:3
 i~ didnt:3
 i~ dilut:-7
 i~ dilute:-5
 i~ dissolv:1
 i~ dissolve:4
 i~ do:-4
 i~ dont:1
 i~ doubl:6
 i~ drain:8
 i~ dropp:1
 i~ empti:10
 i~ ended:-6
 i~ ever:-8
 i~ fill:9
 i~ final:-5
 i~ find:-1
 i~ first:-5
 i~ fish:11
 i~ follow:2
 i~ found:-2
 i~ freeze:1
 i~ froze:-3
 i~ gave:-2
 i~ get:-5
 i~ give:-5
 i~ got:-2
 i~ guess:9
 i~ had:-3
 i~ hadnt:3
 i~ halv:6
 i~ hand:-5
 i~ hate:-5
 i~ have:1
 i~ havent:-1
 i~ held:4
 i~ honest:9
 i~ hope:-2
 i~ just:2
 i~ keep:-3
 i~ kept:2
 i~ knock:5
 i~ know:-4
 i~ learn:-6
 i~ leave:3
 i~ left:10
 i~ let:2
 i~ like:-5
 i~ lost:6
 i~ made:-1
 i~ make:-10
 i~ may:3
 i~ mean:-1
 i~ meant:-1
 i~ measur:-2
 i~ mess:-5
 i~ mix:-6
 i~ mixed:2
 i~ must:4
 i~ near:-6
 i~ never:3
 i~ notic:9
 i~ ok:1
 i~ once:-11
 i~ open:-1
 i~ own:1
 i~ paid:-4
 i~ panick:-2
 i~ plan:-5
 i~ plann:-4
 i~ press:-6
 i~ print:-6
 i~ put:3
 i~ ran:-2
 i~ read:4
 i~ real:-4
 i~ realis:4
 i~ reckon:-1
 i~ remember:-2
 i~ render:-2
 i~ replac:4
 i~ rins:7
 i~ round:6
 i~ run:-9
 i~ said:-8
 i~ saw:8
 i~ say:3
 i~ scrap:9
 i~ see:5
 i~ sell:-4
 i~ set:-1
 i~ shall:-1
 i~ shook:7
 i~ should:2
 i~ siev:-2
 i~ skipp:5
 i~ soap:-2
 i~ split:-2
 i~ sprinkl:-5
 i~ still:-1
 i~ stir:-8
 i~ stirr:5
 i~ stood:-1
 i~ stopp:7
 i~ suppose:1
 i~ swapp:10
 i~ swear:1
 i~ take:-4
 i~ teach:-5
 i~ tell:-7
 i~ test:-2
 i~ think:2
 i~ thought:-3
 i~ threw:3
 i~ tipp:4
 i~ told:-3
 i~ took:2
 i~ topp:-1
 i~ translate:-4
 i~ tried:-3
 i~ trust:-4
 i~ turn:-6
 i~ type:2
 i~ typed:6
 i~ use:-4
 i~ used:1
 i~ usual:3
 i~ wait:-6
 i~ want:3
 i~ warm:-7
 i~ was:-6
 i~ wash:-2
 i~ wasnt:2
 i~ weigh:2
 i~ went:4
 i~ will:-6
 i~ work:-8
 i~ would:1
 i~ write:-11
 i~ wrote:4
 i~K:-8
 jam~ jar:1
 january:-9
 january~ and:-3
 jar:3
 jars:-8
 jars~ of:-4
 jar~ and:7
 jar~ of:7
 jar~ so:-3
 jelly:-6
 job:2
 join:3
 join~ the:5
 jug's:5
 jug:2
 jugs:3
 jug~ ::3
 jug~ and:5
 jug~ from:2
 jug~ in:-6
 jug~ is:-9
 jug~ of:5
 jug~ on:-7
 jug~ so:5
 jug~ to:7
 jug~ was:-4
 july:-3
 jump:5
 jumps:4
 june:-10
 just~ a:-1
 just~ as:-3
 just~ for:-8
 just~ the:4
 just~ want:-8
 just~ what:-5
 just~F:-4
 k:2
 keep:-7
 keeps:-7
 keeps~ it:-6
 keeps~ the:-1
 keep~ a:-3
 keep~ back:-1
 keep~ in:-5
 keep~ it:-10
 keep~ my:-7
 keep~0:-6
 keep~<:1
 keep~t:-4
 kept:2
 kept~ back:1
 kept~ in:-5
 kept~0:2
 kettle:7
 kg:2
 kg~ cost:-2
 kid:7
 kidd:-7
 kids:-2
 kill:-8
 kilo:5
 kilo~ in:-4
 kilo~ of:-6
 kind:-1
 kinda:2
 kind~ check:-8
 kind~ of:-2
 kind~ with:3
 kiss:-4
 kitchen~ and:3
 kitchen~ bar:-5
 kitchen~ is:-4
 kitchen~ scale:6
 kitchen~ was:-5
 knew:-5
 knife:-10
 knob:7
 knob~ of:7
 knock:5
 knock~ a:-3
 knock~ the:4
 know:2
 knows:4
 knows~ how:3
 know~ ::-6
 know~ how:2
 know~ i:-5
 know~ if:2
 know~ is:-8
 know~ it:1
 know~ its:-5
 know~ that:4
 know~ the:-1
 know~ what:-6
 know~ whether:-6
 know~ which:3
 krakow:-2
 k~0:-10
 l:-6
 lab:-5
 label:1
 labell:-2
 label~ ::-8
 label~ says:3
 label~0:-7
 ladi:-4
 ladl:9
 ladle:7
 ladle~ of:5
 lads:-4
 lady:-3
 lady~ at:-4
 lady~ in:-5
 lady~ on:-4
 land:3
 last:-5
 lasts:-7
 last~ autumn:-5
 last~ batch:-8
 last~ bit:6
 last~ minute:7
 last~ month:6
 last~ night:-6
 last~ of:-6
 last~ one:-7
 last~ time:-6
 last~ week:2
 last~ weeks:3
 last~ winter:-6
 last~ year:-4
 last~ years:-3
 last~0:3
 last~F:-9
 late:-2
 later:-2
 later~ on:-7
 lather:-5
 lather~ is:-3
 lather~ like:-6
 laugh:1
 laugh~ at:-4
 laundry:-1
 laundry~ bar:-8
 laundry~ bars:-3
 laundry~ soap:-4
 law:-3
 laws:-3
 law~ who:-5
 layer:3
 lb:2
 lb~ oz:-7
 leaflet:-1
 leak:-3
 learn:-9
 learn~ from:-3
 learn~ that:2
 least:-3
 least~t:-1
 leav:-5
 leave:-2
 leave~ it:-2
 leave~ out:-5
 leave~ the:-4
 leave~t:-2
 leav~ a:-4
 leav~ the:-8
 leeds:3
 leftover~F:-2
 left~ and:2
 left~ for:-9
 left~ from:6
 left~ in:-1
 left~ it:1
 left~ of:-6
 left~ on:2
 left~ out:-2
 left~ over:-6
 left~ so:-1
 left~ the:2
 left~ to:3
 length:-4
 lent:-1
 less:5
 lesson:-6
 less~ of:5
 less~ than:-2
 less~F:-2
 less~W:-3
 let:-1
 letter:4
 let~ cool:-2
 let~ it:-4
 let~ me:-8
 let~ the:-4
 let~ them:1
 let~ us:-6
 let~ your:-7
 library:-6
 library~ book:-5
 lid:-1
 lidd:-2
 lids:-5
 lid~ and:-6
 lid~ of:-7
 lid~ off:3
 lid~ on:-5
 lie:-3
 life:1
 lift:4
 lift~ the:3
 lighter:-6
 light~ on:2
 like:-2
 liked:-5
 likes:-5
 likes~ it:4
 likewise:4
 like~ a:-4
 like~ alway:-9
 like~ an:-7
 like~ candle:-6
 like~ cheese:-6
 like~ custard:-4
 like~ i:-8
 like~ in:-1
 like~ mash:-5
 like~ me:-5
 like~ my:2
 like~ noth:-3
 like~ paper:3
 like~ porridge:3
 like~ sandpaper:-5
 like~ someone:-2
 like~ soup:-6
 like~ stone:-6
 like~ that:-6
 like~ the:-5
 like~ to:-5
 like~ you:-3
 like~%:1
 like~0:8
 like~F:-7
 like~L:-7
 like~N:-4
 like~S:-3
 like~U:-5
 like~X:-3
 like~t:8
 like~w:8
 limit:-8
 line:8
 lined:-6
 lined~ with:-2
 linen:-3
 lines:-1
 line~ ::5
 line~ the:-3
 lino:1
 lip:-6
 lip~ balm:-6
 liquid:1
 liquid~ and:-2
 liquid~ soap:-1
 liquor:7
 list:3
 list~ for:-8
 list~ i:4
 list~ is:-3
 litre:3
 little:2
 little~ ?:-4
 little~ of:-1
 little~A:2
 little~F:-8
 little~W:2
 live:-6
 lived:-7
 lives:-6
 lives~ in:-6
 loaf:-4
 loaf~ ::-4
 loaf~ i:-1
 loaf~ mold:-2
 loaf~ mould:-3
 loaf~ tin:-3
 loav:-3
 local:-5
 lock:-8
 loft:-4
 log~ ::-3
 lol:-2
 long:-2
 longer:2
 longer~ than:-7
 long~ as:-6
 long~ sleev:-6
 long~ story:7
 long~ time:-4
 look:2
 looks:-11
 looks~ like:-5
 looks~ ok:-1
 look~ a:4
 look~ at:-5
 look~ for:2
 look~ it:-6
 look~ of:1
 look~ ok:-3
 look~ over:-4
 look~ right:-3
 loosen:9
 loosen~ it:6
 lose:-4
 lost:3
 lost~ my:-1
 lost~ the:-7
 lot:-1
 lotion:7
 lots:-7
 lots~ of:-4
 lot~ ?:-1
 lot~ of:2
 lot~ to:-2
 lot~0:2
 loud:-9
 love:-6
 loves:3
 love~ a:2
 love~ and:-2
 love~ it:-5
 love~ to:-6
 low:-4
 lower:7
 lowest:-6
 lowest~ flame:-6
 low~ and:-5
 low~ heat:-1
 low~ in:2
 low~t:-5
 luck:3
 lucki:-7
 lucky:-6
 lukewarm:-6
 lump:6
 lumps:-3
 lumpy:6
 lump~ of:-2
 lunch:-8
 lurker:-4
 luxury:-4
 lye's:5
 lye:2
 lyes:-7
 lyes~ together:-6
 lying:4
 l~0:-4
 m:-7
 machine:-7
 made:2
 made~ ::-6
 made~ a:3
 made~ for:-7
 made~ from:-3
 made~ hers:-5
 made~ in:-8
 made~ it:3
 made~ my:-2
 made~ of:-5
 made~ on:-4
 made~ soap:-3
 made~ the:5
 made~ this:-3
 made~ up:5
 made~ with:-7
 made~0:8
 magazine:-4
 mak:9
 maker:-4
 makes:-6
 makes~ a:-7
 makes~ it:-2
 makes~ no:-5
 makes~ sense:-3
 makes~ the:-5
 makes~ up:7
 makes~0:-4
 makes~T:-8
 makes~b:-5
 make~ a:-7
 make~ it:8
 make~ sense:-2
 make~ soap:-4
 make~ the:-9
 make~ this:-4
 make~ up:-1
 mak~ it:7
 mak~ the:-5
 mak~ this:-3
 mama:-8
 man:-6
 many:1
 march:-10
 margin:-3
 marit:-5
 mark:5
 market:-6
 marks:1
 marta:6
 mash:-4
 mash~ potato:-4
 mass:-5
 material:-7
 maths:3
 matter:4
 matter~ to:3
 maybe:8
 maybe~ a:6
 maybe~0:5
 maybe~<:-2
 maybe~t:-7
 maybe~w:4
 may~ be:2
 may~ have:7
 may~ i:-5
 me:-1
 mean:-3
 meant:1
 meant~ to:-2
 meanwhile:4
 mean~ the:4
 measur:4
 measure:2
 measur~ cup:6
 measur~ jug:8
 measur~ the:2
 mechanic:1
 medium:-4
 melt:-3
 melts:-9
 melts~ at:-3
 melt~ and:3
 melt~ at:-3
 melt~ by:-8
 melt~ first:-6
 melt~ i:-8
 melt~ in:7
 melt~ it:2
 melt~ on:-5
 melt~ the:-7
 melt~ together:1
 melt~ with:1
 melt~=:-3
 melt~F:-5
 member:1
 memory:5
 men:-6
 merci:-4
 mess:-7
 mess~ up:-3
 method:-4
 method~ ::-5
 metric:-7
 me~ ::-1
 me~ ?:4
 me~ a:1
 me~ about:-3
 me~ and:1
 me~ as:2
 me~ at:3
 me~ before:-6
 me~ but:-2
 me~ for:-3
 me~ how:-6
 me~ i:-3
 me~ if:-3
 me~ in:-3
 me~ it:-4
 me~ its:-6
 me~ on:-1
 me~ that:-2
 me~ the:2
 me~ to:-6
 me~ what:2
 me~ where:4
 me~ whether:-1
 me~ with:3
 me~0:-10
 me~t:-7
 microwave:1
 middle:-5
 middle~ of:3
 might~ have:5
 mild:3
 milder:-1
 milk:-7
 milk~ carton:-7
 mill:-5
 min:7
 mind:4
 mind~ the:-1
 mine:-4
 mine~ from:1
 mine~ had:-4
 mine~ has:-2
 mine~ in:-6
 mine~ is:6
 mine~ took:-5
 mine~ was:1
 mine~ with:6
 mini:1
 minimum:1
 minus:6
 minus~ the:9
 minus~ whatever:8
 minute:-3
 minute~0:-6
 min~ .:6
 misread:11
 miss:3
 miss~ the:6
 mistak:2
 mistake:3
 mistake~ and:-6
 mix:3
 mixed:4
 mixed~ at:-7
 mixed~ in:5
 mixed~ it:3
 mixed~ the:1
 mixed~ up:-2
 mixer:-5
 mix~ at:-2
 mix~ the:3
 mix~A:-4
 mk:-4
 ml:12
 mm:-8
 mode:3
 modern:-6
 mold:2
 molds:4
 moment:-6
 moms:-2
 mon:3
 monday:-2
 money:3
 month:-2
 month~ i:-4
 month~0:-5
 moon:-6
 mopp:6
 mopp~ up:6
 more:4
 more~ and:-7
 more~ fat:-7
 more~ like:9
 more~ of:1
 more~ or:-5
 more~ than:-3
 more~A:4
 more~F:2
 morn~ and:2
 most:5
 most~ of:10
 mother:-1
 mother~ and:-7
 mother~ did:5
 mould:-2
 mouldy:5
 mould~ ::-6
 mould~ and:-2
 mould~ bang:-5
 mould~ for:-3
 mould~ holds:-3
 mould~ in:-4
 mould~ is:3
 mould~ of:-6
 mould~ on:-6
 mould~ so:-8
 mould~ the:-5
 mould~ was:-6
 mould~ with:-8
 mould~0:-2
 mould~t:-4
 mould~v:-5
 mov:1
 moved:3
 moved~ to:2
 moves:-1
 mrs:3
 much:-1
 much~ ?:-5
 much~ and:7
 much~ as:-6
 much~ fat:-4
 much~ for:-8
 much~ of:-4
 much~ superfat:-5
 much~A:-3
 much~F:-3
 much~W:3
 muffin:-7
 mug:5
 multip:5
 mum~ says:-6
 museum:-6
 mush:-5
 must:-5
 must~ be:-8
 mutton:1
 myself:-4
 my~ arm:-5
 my~ aunt:-3
 my~ aunts:1
 my~ babcia:-5
 my~ bars:-4
 my~ bathroom:7
 my~ book:2
 my~ boss:-1
 my~ boyfriend:-1
 my~ brother':4
 my~ brother:-1
 my~ colleague:-4
 my~ country:4
 my~ cousin:-1
 my~ dad:-8
 my~ dads:3
 my~ daughter':-8
 my~ daughter:4
 my~ earlier:5
 my~ elbow:-4
 my~ english:-1
 my~ ex:-5
 my~ father:-1
 my~ first:-2
 my~ flatmate:-4
 my~ friend:3
 my~ glass:-1
 my~ good:-4
 my~ granddaughter:-3
 my~ grandfather:1
 my~ grandmother:-9
 my~ grandson:5
 my~ great:-1
 my~ hair:-2
 my~ hand:-1
 my~ hands:-7
 my~ handwrit:-6
 my~ head:-1
 my~ husband:-4
 my~ kilo:-2
 my~ kitchen:3
 my~ last:-9
 my~ laundry:-4
 my~ little:3
 my~ mind:8
 my~ mold:-8
 my~ mother:-1
 my~ mum:-2
 my~ mums:-6
 my~ nan:-7
 my~ neighbour:-3
 my~ nephew:-4
 my~ niece:-1
 my~ notebook:7
 my~ notes:-1
 my~ old:-1
 my~ own:1
 my~ partner:-2
 my~ phone:-2
 my~ plan:-3
 my~ previou:-1
 my~ pupil:1
 my~ question:-3
 my~ recipe:-3
 my~ scale:5
 my~ sheet:-2
 my~ sister':-1
 my~ sister:-9
 my~ skin:3
 my~ slow:-3
 my~ soap:-3
 my~ spreadsheet:-4
 my~ sums:1
 my~ table:-8
 my~ teacher:-5
 my~ third:-4
 my~ thumb:-2
 my~ tongue:-1
 my~ usual:-8
 my~ very:-6
 my~ wife:1
 my~ wifes:-3
 my~%:-2
 my~0:-5
 my~A:1
 my~F:-3
 my~K:-7
 my~L:-9
 my~S:-5
 my~W:4
 my~l:-7
 my~t:3
 my~w:3
 n:-1
 name:-10
 name~ ::-4
 nan:-9
 nans:-4
 natural:-6
 nb:1
 near:-5
 nearer:6
 nearer~0:4
 near~ enough:4
 near~ it:-2
 near~ the:-3
 near~%:-10
 near~0:2
 near~d:-1
 near~t:4
 need:-5
 needs:-7
 needs~ a:-5
 need~ ::-2
 need~ a:-3
 need~ it:3
 need~ more:-6
 need~ the:-5
 negative:3
 neighbor:-7
 neighbour:-4
 neither:3
 neither~ of:-1
 nephew:-2
 nerv:-8
 nervou:-2
 net:2
 never:-1
 never~ above:-6
 never~ added:8
 never~ again:-9
 never~ bother:-7
 never~ check:-6
 never~ did:-7
 never~ fail:-3
 never~ go:-9
 never~ got:8
 never~ had:-1
 never~ happen:8
 never~ in:-5
 never~ let:-5
 never~ made:8
 never~ once:-2
 never~ set:5
 never~ the:-9
 never~ weigh:-2
 never~ went:-10
 new:-3
 news:-5
 newsletter:2
 newspaper:-6
 new~ bottle:-4
 new~ here:-3
 new~ one:5
 new~ scale:-5
 new~ to:-3
 next:-9
 next~ door:-3
 next~ month:-8
 next~ morn:2
 next~ one:-7
 next~ time:-8
 next~ to:3
 next~ year:-3
 nice:-1
 nicer:-7
 niece:3
 night:-6
 night~ and:-3
 night~ before:-6
 nil:2
 no:-1
 nobody:-3
 nobody~ answer:-3
 nobody~ had:6
 nobody~ has:3
 nobody~ will:-2
 none:6
 none~ at:-6
 none~ in:-1
 none~ the:-3
 nonna:-8
 noon:-6
 normal:-8
 normal~ ?:-6
 normal~ one:-3
 north:-5
 nose:-9
 note:7
 notebook:-2
 notebook~ ::-6
 notebook~ says:3
 notebook~ the:-4
 notes:-4
 notes~ ::2
 notes~ app:-6
 notes~ from:-6
 noth:-4
 noth~ and:-4
 noth~ at:-5
 noth~ but:-3
 noth~ else:-1
 noth~ in:-4
 notic:7
 notice:1
 notic~ the:2
 notic~ when:9
 not~ ?:-3
 not~ a:-8
 not~ be:-8
 not~ for:-4
 not~ going:1
 not~ in:3
 not~ like:-8
 not~ more:-6
 not~ on:8
 not~ sure:3
 not~ that:-7
 not~ the:-1
 not~ to:-8
 not~ too:-5
 not~ use:-3
 not~0:-4
 not~A:-5
 not~F:10
 not~b:7
 not~e:9
 november:-3
 now:4
 nowhere:-6
 now~ ::-6
 now~ ?:3
 now~ and:-4
 now~ it:2
 now~ its:6
 now~ my:2
 now~ on:2
 now~ so:-7
 now~ the:3
 now~F:3
 no~ ?:-2
 no~ ash:-4
 no~ difference:-7
 no~ gel:-4
 no~ good:-3
 no~ harm:-6
 no~ i:-7
 no~ idea:1
 no~ it:4
 no~ longer:7
 no~ more:-2
 no~ need:-6
 no~ other:-7
 no~ reason:-1
 no~ scale:1
 no~ smell:-2
 no~ sorry:1
 no~ superfat:-6
 no~ time:-3
 no~ wait:6
 no~ white:-3
 no~ zap:-7
 no~0:2
 no~F:9
 no~I:4
 no~S:-9
 no~W:3
 no~X:-6
 number:-6
 number~ ?:-5
 number~ and:3
 number~ are:1
 number~ i:-5
 number~ is:-4
 number~0:-10
 nurse:-5
 nuts:-1
 n~ it:-2
 n~=:-4
 n~F:3
 o'clock:-3
 o:-5
 oat:-9
 obvious:-4
 obvs:-6
 october:-3
 odd:-6
 odds:-8
 of:2
 off:3
 offcut:-5
 offer:-6
 office:-8
 off~ ?:-1
 off~ and:2
 off~ at:-10
 off~ by:-1
 off~ for:6
 off~ i:-6
 off~ in:3
 off~ it:1
 off~ my:-2
 off~ the:3
 off~ what:10
 off~ with:-1
 off~0:-5
 off~l:2
 often:-7
 of~ a:1
 of~ about:-5
 of~ all:-5
 of~ ammonia:-7
 of~ anyth:-9
 of~ batter:-9
 of~ clean:-5
 of~ cold:2
 of~ course:-3
 of~ doors:-8
 of~ dried:-1
 of~ each:7
 of~ everyth:4
 of~ extra:-1
 of~ eyes:-1
 of~ fats:1
 of~ half:1
 of~ her:1
 of~ it:2
 of~ its:-1
 of~ last:4
 of~ melt:2
 of~ mine:-5
 of~ my:-2
 of~ noth:-6
 of~ oil:1
 of~ oils:-3
 of~ old:4
 of~ one:2
 of~ our:-4
 of~ paste:-7
 of~ plain:3
 of~ rough:-3
 of~ soap:3
 of~ some:4
 of~ stirr:-7
 of~ sunday:-5
 of~ that:8
 of~ the:2
 of~ them:1
 of~ these:-7
 of~ this:-1
 of~ us:2
 of~ warm:-3
 of~ wet:-6
 of~ what:-4
 of~ which:-2
 of~ you:-7
 of~ your:-7
 of~%:1
 of~0:-7
 of~=:2
 of~>:-6
 of~A:1
 of~B:3
 of~C:5
 of~F:-4
 of~I:-4
 of~K:1
 of~L:9
 of~M:-6
 of~N:9
 of~S:-1
 of~T:-1
 of~U:4
 of~W:2
 of~X:-4
 of~b:-1
 of~t:-2
 of~v:-7
 of~w:-7
 oh:1
 ohio:-5
 oh~ and:1
 oil:4
 oils:-1
 oils~ and:-5
 oils~ are:-3
 oils~ as:1
 oils~ at:-6
 oils~ because:-6
 oils~ come:-5
 oils~ g:-5
 oils~ in:-3
 oils~ or:-1
 oils~ to:-2
 oils~ were:2
 oils~>:-2
 oily:7
 oil~ ?:-7
 oil~ and:-1
 oil~ at:4
 oil~ from:2
 oil~ g:-4
 oil~ grams:-6
 oil~ in:-4
 oil~ is:1
 oil~ of:4
 oil~ on:-3
 oil~ to:2
 oil~ was:-1
 oil~ weight:-6
 ok:-2
 okay:-4
 okay~ ?:-5
 okay~ for:-4
 okay~ so:-2
 ok~ ?:-1
 ok~ before:-4
 ok~ for:-6
 ok~ or:-2
 ok~ so:2
 ok~ to:-5
 ok~ with:-4
 old:1
 older:3
 oldest:-8
 old~ and:1
 old~ days:-4
 old~ one:-5
 old~ pillowcase:-4
 old~ recipe:-7
 old~ sheet:1
 old~ soap:-3
 old~ tub:4
 old~A:3
 old~F:1
 olej:-3
 olej~F:-3
 oma:-4
 omg:-7
 on:-1
 once:-5
 once~ a:3
 once~ i:1
 once~ it:3
 once~ its:-2
 once~ the:-4
 one:-4
 ones:-8
 ones~ are:-6
 one~ ::-5
 one~ ?:-2
 one~ after:-7
 one~ and:4
 one~ at:7
 one~ bar:-6
 one~ batch:-6
 one~ block:1
 one~ can:-5
 one~ for:-4
 one~ from:-9
 one~ go:3
 one~ had:-6
 one~ has:-4
 one~ is:-1
 one~ jug:-1
 one~ last:-7
 one~ loaf:2
 one~ of:3
 one~ on:-5
 one~ pan:-9
 one~ pot:-6
 one~ since:5
 one~ that:-1
 one~ the:1
 one~ thing:3
 one~ time:-4
 one~ to:-8
 one~ weigh:-8
 one~ went:-3
 one~ who:-8
 one~ with:-6
 one~ without:-5
 one~0:1
 one~F:-1
 one~w:-7
 onion:2
 only:4
 only~ a:2
 only~ about:7
 only~ after:-8
 only~ does:4
 only~ gave:5
 only~ got:-8
 only~ had:10
 only~ have:-3
 only~ if:-2
 only~ notic:6
 only~ put:1
 only~ so:-4
 only~ then:-10
 only~ there:-3
 only~ want:-11
 only~ when:2
 only~ whether:-7
 only~0:11
 only~=:-8
 only~F:-8
 only~l:-1
 onto:-1
 onto~ the:2
 on~ ::-4
 on~ a:-8
 on~ and:-7
 on~ before:-4
 on~ day:2
 on~ friday:1
 on~ glov:-3
 on~ her:-1
 on~ high:-4
 on~ i:7
 on~ it:-5
 on~ its:-2
 on~ low:-5
 on~ me:-4
 on~ monday:-9
 on~ offer:-6
 on~ one:-6
 on~ our:3
 on~ page:-3
 on~ paper:-5
 on~ purpose:-1
 on~ saturday:-2
 on~ slow:-1
 on~ sunday:-2
 on~ that:-2
 on~ the:1
 on~ them:-6
 on~ this:5
 on~ thursday:1
 on~ to:-5
 on~ tue:-2
 on~ tuesday:-6
 on~ we:-8
 on~ with:7
 on~ your:-3
 on~0:-9
 on~>:-8
 on~A:5
 on~F:6
 on~t:-4
 oops:5
 op:-3
 open:2
 opens:4
 open~ a:-10
 open~ all:8
 open~ since:6
 open~ the:-1
 open~ window:-3
 operator:-5
 operator~ ::-4
 opinion:-9
 optional:3
 or:-3
 order:-8
 order~ of:-6
 ordinary:5
 original:-4
 or~ a:2
 or~ am:-8
 or~ did:-8
 or~ do:-5
 or~ does:-6
 or~ is:-8
 or~ it:-7
 or~ just:-5
 or~ less:-5
 or~ more:-6
 or~ no:-6
 or~ not:-1
 or~ should:-4
 or~ so:1
 or~ take:5
 or~ the:-2
 or~ thereabout:3
 or~ too:-3
 or~ will:-4
 or~0:1
 or~N:-6
 other:-2
 otherwise:-8
 otherwise~ it:-6
 other~ half:-1
 other~ way:-5
 other~0:2
 other~W:-7
 ought:-6
 ought~ to:-6
 ounc:5
 ounce:-3
 ounc~ for:5
 our:-1
 ours:-9
 ours~ is:-6
 our~ club:2
 our~ course:-4
 our~ own:-2
 our~ teacher:-6
 our~ town:-1
 our~ village:6
 out:2
 outdoor:-7
 outside:-9
 outside~ and:-1
 outside~ on:-6
 out~ ::-4
 out~ ?:-1
 out~ a:1
 out~ again:4
 out~ and:4
 out~ at:4
 out~ by:3
 out~ for:3
 out~ i:-8
 out~ in:-4
 out~ like:-8
 out~ of:-1
 out~ on:3
 out~ so:4
 out~ the:-1
 out~ to:12
 out~ what:5
 out~ with:3
 out~0:3
 out~=:-3
 out~A:-2
 out~N:1
 out~w:-1
 oval:-5
 oven:-9
 oven~ at:-3
 over:1
 overfat:2
 overheat:-6
 overnight:-1
 overnight~ at:-3
 over~ ?:-7
 over~ and:3
 over~ for:5
 over~ from:3
 over~ half:-7
 over~ in:6
 over~ it:1
 over~ that:3
 over~ the:-3
 over~ to:1
 over~%:-9
 over~d:-2
 over~t:-5
 own:2
 own~ ::-3
 own~ a:-5
 own~0:-4
 own~F:3
 oyl:-4
 oz:1
 oz~ g:-5
 p:-7
 packet:5
 packet~ of:-9
 packs~ of:-5
 paddle:-4
 page:-2
 page~ ::-6
 page~ is:-4
 page~0:-2
 paid~ for:7
 paid~0:-8
 pail:-9
 paint:6
 pair:3
 pairs:-7
 pair~ of:-1
 pale:-11
 pan:2
 panic:-8
 panick:1
 pantry:-5
 pan~ and:3
 paper:-1
 paper~ and:-4
 paper~ cup:6
 paper~0:-6
 paper~t:-5
 parcel:6
 parent:-3
 parish:-9
 part:-1
 participant:3
 partner:-2
 part~ ?:3
 part~ of:2
 part~0:-9
 pass:-11
 passt:-5
 passt~ das:-5
 pass~ the:-4
 past:2
 paste:-9
 paste~ ::3
 paste~ in:-5
 paste~ is:-4
 paste~ to:-6
 paste~ went:-4
 paste~ with:-4
 pastry:2
 past~ from:-5
 past~ its:-6
 past~0:-2
 patch:-6
 patience:-8
 patient:-8
 pay:-1
 pcs:-6
 pct:-7
 pdf:-8
 peak:-7
 pearl:1
 pellet:3
 pencil:-2
 pencill:8
 people:-11
 people~ ask:-5
 people~ in:-3
 people~ who:-9
 people~0:-1
 per:-3
 percent:3
 percentag:-3
 perfect:-7
 perhap:10
 perhap~0:5
 period:-5
 person:-8
 per~ bar:-4
 per~ batch:2
 per~ kilo:-6
 petra:3
 ph:-9
 pharmacist:1
 pharmacy:-7
 phase:-7
 phase~ a:-3
 phase~ b:-3
 phase~ c:-2
 phenolphthalein:6
 phone:2
 phone~ and:7
 phone~ is:-6
 phone~ rang:6
 phone~ read:-8
 photo:-4
 photo~ of:-1
 ph~ strip:-7
 pick:-3
 picture:-6
 piec:-6
 piece~ for:-7
 piece~ of:6
 piec~ of:-2
 piec~0:-3
 pig:-9
 pillowcase:-4
 pinch:-1
 pinch~ of:-4
 pink:2
 pitcher:4
 place:4
 place~ of:4
 plain:-2
 plain~ white:-2
 plain~F:-6
 plain~W:7
 plan:-2
 plann:-1
 plann~ to:1
 plan~ for:2
 plastic:3
 plastic~ cup:5
 plastic~ jug:4
 plate:4
 play:-6
 pleas:-3
 please:6
 please~ ?:3
 please~ be:-6
 please~ check:-1
 please~ dont:-9
 please~ look:-8
 please~ my:6
 please~ tell:1
 please~ verify:-8
 plenty:-7
 plenty~ for:-6
 plenty~ of:-3
 pls:1
 pls~ check:-4
 plumber:-5
 plus:3
 plus~ a:4
 plus~ an:4
 plus~ the:7
 plus~0:-4
 plus~<:-7
 plus~=:-5
 plus~w:-7
 plz:-4
 pocket:2
 point:-3
 poland:-2
 polypropylene:-3
 poor:-8
 popcorn:5
 pops:-2
 porch:-5
 porridge:2
 portion:-1
 possible:-5
 post:-4
 postage:-2
 postal:2
 postal~ scale:2
 postman:1
 post~ this:-7
 post~t:-2
 pot:1
 potato:-8
 potato~ then:-3
 pots:-2
 pot~ ::-5
 pot~ and:2
 pot~ at:-5
 pot~ for:-6
 pot~ holds:2
 pot~ i:-5
 pot~ is:-7
 pot~ of:-2
 pot~ oils:-8
 pot~ on:-1
 pot~ was:3
 pot~ with:1
 pour:6
 pours:-7
 pour~ ::-6
 pour~ and:2
 pour~ at:-9
 pour~ cover:-1
 pour~ in:4
 pour~ into:-5
 pour~ it:1
 pour~ off:4
 pour~ on:1
 pour~ out:7
 pour~ the:-8
 pour~0:5
 pour~=:2
 pour~>:-6
 pour~A:-5
 pour~t:-3
 pour~w:-11
 powder:4
 power:-1
 pp:-7
 ppl:-7
 practical:-7
 prefer:6
 premix:-8
 prep:-4
 present:-2
 press:-4
 press~ in:-6
 press~ into:-5
 press~ it:-2
 press~0:-8
 pretty:-3
 previou:2
 pric:-6
 price:-6
 print:3
 printout:-4
 print~0:-8
 prob:4
 probab:1
 problem:-1
 proces:-2
 proces~ ::-2
 proces~ crock:-3
 proces~ in:-2
 professor:3
 project:-8
 promis:-2
 promis~ my:-1
 proper:-4
 proud:-5
 ps:4
 pub:-5
 puck:-2
 pucks:-3
 puck~ dual:-6
 pudd:-6
 puddle:3
 pull:5
 pump:-1
 pupil:-1
 pure:1
 pure~F:-4
 purity:7
 purpose:-1
 push:-6
 put:3
 puts:-6
 put~ a:2
 put~ in:5
 put~ it:-2
 put~ on:-1
 put~ the:1
 put~ them:-4
 put~ together:-5
 put~0:-1
 put~<:-5
 put~=:-9
 put~>:2
 put~F:2
 put~v:-1
 put~w:-1
 q:-7
 qty:-5
 quantiti:7
 quantity:-4
 quantity~ of:-3
 quarter:9
 quarter~ of:5
 question:-4
 question~ ::-4
 question~ from:-3
 question~ is:-3
 question~ to:-1
 quick:-6
 quicker:-3
 quicker~ than:-4
 quick~ one:-5
 quite:2
 quot:-5
 q~ ::-4
 r:-1
 rack:-6
 rack~ and:-1
 radiator:-4
 radio:-7
 rainy:-6
 rais:-6
 ran:4
 rancid~ so:7
 rang:4
 ran~ dry:5
 ran~ out:2
 ran~ short:4
 ran~ the:-7
 rate:-4
 rather:6
 rather~ have:-1
 rather~ than:4
 raw:2
 re:-3
 reach:-3
 reach~ the:4
 reach~d:-6
 reads:3
 reads~ in:-6
 ready:2
 ready~ for:-5
 ready~ made:2
 ready~ mixed:4
 ready~ to:-6
 read~ it:-3
 read~ that:-7
 read~ the:-3
 read~ this:-5
 read~0:-1
 read~F:4
 read~b:-1
 real:2
 realis:4
 reality:3
 real~ have:-4
 real~A:-3
 real~N:6
 reason:-2
 rebatch:4
 recall:5
 receipt:8
 recheck:1
 recip:-8
 recipe:-3
 recipe~ ::-3
 recipe~ ?:-3
 recipe~ and:-5
 recipe~ for:3
 recipe~ from:-5
 recipe~ i:-4
 recipe~ in:4
 recipe~ is:-3
 recipe~ of:-5
 recipe~ on:-5
 recipe~ was:2
 reckon:4
 reckon~ with:1
 record:-1
 record~0:-8
 red:3
 refill:2
 refin:2
 regard:-7
 remain:-7
 remainder:5
 remain~0:2
 remark:-6
 remark~ ::-2
 remember:3
 remember~ it:-7
 remember~ the:1
 render:-7
 render~ it:3
 render~ the:-4
 render~ twice:-3
 render~=:-5
 render~w:-5
 repeat:-6
 replac:7
 replace:-5
 replace~ it:4
 replac~ by:8
 replac~ the:-1
 reply:-5
 report:-3
 rescue:7
 rest:3
 rest~ is:3
 rest~ of:-1
 rest~ was:-1
 rest~t:-2
 result:-1
 retir:-7
 rev:-7
 rev~0:-7
 re~ ::-3
 ribbon:-4
 rice:-3
 rich:-10
 rid:-2
 rid~ of:-2
 right:-1
 right~ ?:-2
 right~ about:1
 right~ amount:-6
 right~ and:-6
 right~ at:2
 right~ but:6
 right~ for:-7
 right~ on:-5
 right~ or:-3
 right~ so:-4
 right~ the:-1
 right~ to:-4
 right~ with:-8
 rim:-2
 ring:-6
 ring~t:-1
 rins:-1
 rinse:-7
 rinse~ the:-5
 rins~ the:-1
 roast:-2
 rock:-7
 roll:-7
 roof:-1
 room:-3
 room~ for:1
 room~ temp:-3
 room~ temperature:-1
 room~0:-5
 rough:2
 rough~d:-1
 rough~w:1
 round:1
 round~ and:-3
 round~ it:-1
 round~ the:3
 round~ to:3
 row:1
 row~0:5
 rspo:-8
 rubb:-2
 rugby:-3
 rugby~ club:-3
 ruin:-4
 rule:-10
 rules:1
 run:-2
 runn:-9
 runny:6
 runs:-2
 run~ out:-6
 run~ the:-4
 rustic:-7
 s:-4
 sack:-2
 safe:-1
 safety:-4
 safe~ ?:-4
 safe~ side:3
 safe~ to:-2
 said~ a:4
 said~ it:-1
 said~ my:6
 said~ no:-7
 said~ so:-7
 said~ that:-6
 said~ the:-1
 said~ yes:-7
 said~0:-1
 said~b:5
 salad:-6
 sale:-8
 salt:3
 same~ amount:6
 same~ as:-6
 same~ bar:-4
 same~ for:-5
 same~ in:1
 same~ number:-7
 same~ oils:-5
 same~ recipe:6
 same~ thing:-4
 same~ weight:9
 same~F:-1
 same~b:7
 sample:-7
 sandpaper:-5
 sane:-4
 sane~ ?:-3
 sang:-9
 sanity:-5
 sanity~ check:-5
 saponification:2
 saturday:-2
 sat~ in:1
 sat~ on:-8
 sat~t:-4
 saucer:-4
 saves:-5
 saw:8
 saw~ it:4
 saw~ the:8
 say:5
 says:3
 says~ ::-6
 says~ and:1
 says~ but:-6
 says~ i:2
 says~ it:-4
 says~ its:-8
 says~ min:7
 says~ my:-9
 says~ that:2
 says~ the:-1
 says~%:1
 says~0:7
 says~>:1
 says~A:3
 says~F:-1
 says~b:-1
 says~e:5
 says~t:-1
 says~v:3
 says~w:2
 say~ a:6
 say~ it:-9
 say~ its:-5
 say~ that:1
 say~ thats:-5
 say~ the:-11
 say~%:5
 say~0:6
 say~F:-6
 say~b:10
 say~w:7
 scal:-2
 scale:4
 scale~ ::-2
 scale~ and:-9
 scale~ at:5
 scale~ but:-7
 scale~ died:5
 scale~ does:-9
 scale~ for:-8
 scale~ is:-1
 scale~ jumps:3
 scale~ only:5
 scale~ reads:-1
 scale~ says:1
 scale~ shows:1
 scale~ switch:2
 scale~ that:-2
 scale~ was:5
 scale~ with:-1
 scale~w:-5
 scar:-4
 school:-2
 school~ fair:3
 science:-7
 scoop:6
 scorch:-3
 scrap:7
 scrape:-1
 scrap~ the:4
 scratch:-11
 screen:2
 scribbl:-2
 scrubb:-7
 scrubb~ the:-6
 scum:1
 seal:-4
 season:5
 second~ day:-7
 second~ go:1
 second~ half:4
 second~ one:-4
 second~ opinion:-4
 second~ pair:-1
 second~ time:2
 second~ try:-1
 secret:-8
 see:2
 seed:-4
 seem:6
 seems:-5
 seen:-2
 see~ a:-6
 see~ here:2
 see~ how:-6
 see~ if:-7
 see~ it:-10
 see~ me:-5
 see~ that:3
 see~ the:-1
 see~ through:-7
 see~ what:3
 seiz:-1
 sell:-8
 seller:3
 sells:3
 sells~ at:-4
 sell~ at:-1
 sense:1
 sensible:-5
 sensible~ ?:-4
 sensitive:4
 sent:5
 sent~ me:2
 separat:-7
 separate:-7
 september:-6
 serv:3
 set:2
 sets:-8
 sets~ in:-2
 sett:-2
 settl:-2
 set~ aside:-6
 set~ in:-7
 set~ it:6
 set~ on:-5
 set~ the:-4
 set~ to:2
 set~ up:-3
 sf:5
 shade:-6
 shall:1
 shampoo:1
 shampoo~ bar:-5
 share:4
 shav:-4
 shave:-5
 shave~ puck:-4
 shave~ soap:-4
 shav~ puck:-4
 shav~ soap:-1
 she:-5
 shed:-4
 sheep:-7
 sheet:2
 sheet~ ::-2
 sheet~ and:5
 sheet~ for:2
 sheet~ says:6
 sheet~0:-9
 shelf:-3
 shelf~ for:-2
 shes:-7
 shes~0:-3
 she~ also:4
 she~ alway:-2
 she~ asked:-4
 she~ did:-6
 she~ does:-1
 she~ gets:-6
 she~ got:-5
 she~ had:-7
 she~ has:-5
 she~ is:2
 she~ made:-5
 she~ never:1
 she~ right:-2
 she~ said:-2
 she~ says:-5
 she~ stirr:-2
 she~ swear:-4
 she~ told:-2
 she~ used:-6
 she~ wants:4
 she~ weigh:-1
 she~ who:-1
 she~ wrote:-1
 shift:-2
 shine:-7
 shiny:-8
 shoe:-3
 shoebox:-3
 shoebox~ lined:-2
 shoe~ box:-3
 shook:4
 shop:2
 shopp:-8
 shopp~ list:-4
 shops:-2
 shop~ and:5
 shop~ had:4
 shop~ soap:4
 short:4
 shortage:-5
 short~ ::4
 short~ burst:-1
 short~ of:-7
 short~ on:-1
 short~ so:4
 should~ be:-1
 should~ come:-1
 should~ have:1
 should~ i:-8
 should~ read:8
 should~ say:4
 shout:-7
 show:-5
 shower:-7
 shows~ whole:-8
 shows~0:-4
 shows~w:1
 shrink:-7
 shut:1
 shut~ in:3
 shy:1
 side:-1
 sides:-4
 sideway:-7
 side~ of:3
 sieve:-1
 siev~ it:-2
 sign:-4
 silicone:-8
 silicone~ loaf:-4
 silicone~ mould:-3
 sill:-7
 silly:11
 simmer:2
 simp:-2
 simple:-5
 since:4
 since~ about:-5
 since~ i:-3
 since~ it:4
 since~ last:1
 since~ my:7
 since~ spr:2
 since~ the:2
 since~ then:1
 since~0:-7
 since~F:2
 since~t:5
 sink:-3
 sink~ of:-5
 sink~ with:-3
 sis:-3
 sister':2
 sister:-10
 sister~ in:-3
 sister~ says:-3
 sits:1
 sits~ in:-6
 sitt:2
 sitt~ in:-4
 sitt~ on:4
 size:1
 size~ of:-3
 skin:-4
 skin~ and:-3
 skin~ is:5
 skin~ off:-4
 skip:5
 skipp:12
 skipp~ it:5
 skipp~ the:9
 skip~ the:1
 skull:-6
 slab:-8
 sleep:-7
 sleev:-5
 slept:-4
 slic:-7
 slice:-6
 slid:-2
 slight:1
 slimy:-8
 slip:4
 slipp:8
 slipp~ and:8
 sliver:-5
 slosh:-3
 slow:-4
 slow~ cooker:-3
 slow~ into:-6
 slush:-6
 small:-3
 small~ print:5
 smell:-5
 smell~ a:-5
 smell~ faint:-3
 smell~ is:-5
 smell~ it:3
 smell~ like:-1
 smell~ of:-6
 smell~ the:-3
 smelt:3
 smoke:-5
 smooth:-12
 sneeze:-3
 sniff:1
 snow~ white:-4
 so:2
 soak:8
 soap':2
 soap:-8
 soaper:-5
 soaps:-8
 soap~ ::-4
 soap~ ?:-1
 soap~ again:-4
 soap~ and:-4
 soap~ at:-5
 soap~ attempt:-3
 soap~ day:-1
 soap~ diary:-6
 soap~ for:-5
 soap~ from:-6
 soap~ i:-3
 soap~ in:-5
 soap~ is:-9
 soap~ like:-4
 soap~ my:-6
 soap~ of:-4
 soap~ on:-4
 soap~ paste:-1
 soap~ since:-4
 soap~ so:-1
 soap~ to:-1
 soap~ was:-5
 soap~ with:-4
 soap~0:-5
 soft:-6
 softer:2
 soft~ after:-3
 soft~ as:-6
 soft~ at:-2
 soft~ for:-4
 soft~ in:-3
 soft~ soap:-4
 sold:-8
 sold~ at:-3
 sold~ out:-3
 sold~0:-5
 soleseife:-6
 solid:-3
 solution:1
 solution~ and:-2
 solution~ plus:-6
 some:2
 somebody:-2
 somebody~ asked:-5
 somebody~ check:-3
 somebody~ else:-4
 somebody~ look:-6
 somebody~ run:-6
 somebody~ tell:2
 somebody~ with:-3
 someone:-2
 someone~ at:-5
 someone~ in:-6
 someone~ look:-6
 someone~ tell:-5
 someone~ with:-6
 someth~ else:-1
 someth~ like:2
 somewhere:-1
 some~ of:4
 some~ people:-6
 some~0:-5
 some~F:-1
 some~N:9
 some~X:-2
 son:-2
 soon:-4
 sooner:-7
 sooner~ than:-7
 sorry:1
 sorry~ for:-4
 sorry~ it:-6
 sorry~ my:-5
 sorry~ the:4
 sort:3
 sort~ of:-1
 sound:-7
 sound~ like:-8
 sound~ right:2
 soup:-2
 source:4
 source~ ::4
 so~ ::-5
 so~ ?:2
 so~ a:3
 so~ all:2
 so~ another:6
 so~ before:-4
 so~ call:6
 so~ did:-4
 so~ do:-3
 so~ does:-6
 so~ dont:1
 so~ excuse:-6
 so~ far:-3
 so~ fast:-3
 so~ for:-8
 so~ good:4
 so~ half:1
 so~ here:-5
 so~ hot:-4
 so~ i'd:-6
 so~ i:-5
 so~ if:-5
 so~ in:5
 so~ is:2
 so~ it:2
 so~ its:5
 so~ ive:-6
 so~ just:5
 so~ keep:-6
 so~ little:-5
 so~ maybe:2
 so~ much:-5
 so~ my:3
 so~ no:3
 so~ noth:-1
 so~ now:-5
 so~ of:5
 so~ on:-3
 so~ please:2
 so~ sorry:-7
 so~ take:2
 so~ that:-7
 so~ thats:7
 so~ ther:4
 so~ there:-4
 so~ this:-5
 so~ those:1
 so~ um:2
 so~ we:-1
 so~ what:4
 so~ whats:3
 so~ who:4
 so~ you:-1
 so~%:-8
 so~0:7
 so~=:3
 so~F:-1
 so~N:11
 so~b:1
 so~l:-7
 so~t:-3
 so~w:-2
 spa:2
 space:-5
 spain:-5
 spare:-6
 spatula:-7
 speak:-1
 speed:-6
 spell:-10
 spend:-9
 spent:1
 spill:-5
 spill~ on:2
 spilt:1
 splash:4
 splash~ of:2
 split:2
 split~ it:1
 spoonful:5
 spoonful~ in:1
 spoonful~ of:1
 spoon~ and:1
 spoon~ at:-6
 spoon~ by:-7
 spoon~ for:2
 spoon~ in:-3
 spoon~ into:-1
 spoon~ it:-5
 spoon~ of:3
 spoon~ slipp:8
 spot:-9
 spots:-1
 spots~ after:-3
 spot~ on:-6
 spr:-1
 spray:-6
 spreadsheet:-6
 sprinkl:-7
 sprinkle:-3
 sprinkle~ the:-3
 sprinkl~=:-1
 squeez:5
 sry:2
 stable:-4
 stack:-2
 stag:-7
 stage:-2
 stage~ at:-3
 stain:-8
 stainles:-4
 stall:1
 stamp:-13
 stamp~ and:-5
 stand:-5
 stand~ ::-3
 stand~ at:-6
 stand~ for:-4
 stand~ in:-1
 stand~ it:4
 stand~ on:4
 stand~ the:-2
 stand~ there:-3
 stand~ up:1
 stank:-5
 start:-1
 start~ ::-4
 start~ and:-7
 start~ at:-2
 start~ the:-4
 start~ to:-8
 start~ with:4
 start~t:-6
 static:1
 stay:4
 stays:-5
 stays~ as:1
 stays~ in:-5
 stay~ at:2
 stay~ cloudy:-2
 stay~ in:8
 stay~ on:3
 stay~ soft:-6
 steam:-11
 steel:-1
 steel~ jug:-8
 steel~ pot:-5
 step:-6
 steps:2
 steps~ of:5
 stick:-2
 sticker:-4
 sticky:2
 stick~ blend:-2
 stick~ blender:-8
 stiff:4
 still:1
 still~ cloudy:1
 still~ good:5
 still~ got:-7
 still~ had:3
 still~ have:-2
 still~ in:5
 still~ like:-7
 still~ on:4
 still~ sitt:9
 still~ smell:-5
 still~ soft:-2
 still~ stand:3
 sting:-7
 stingy:1
 stink:-9
 stir:-4
 stirr~ and:-6
 stirr~ every:-6
 stirr~ for:-3
 stirr~ in:5
 stirr~ into:5
 stirr~ it:-7
 stirr~ one:-6
 stirr~ the:-2
 stirr~ with:-4
 stirr~t:-2
 stirs:-7
 stir~ by:-5
 stir~ every:-1
 stir~ in:-2
 stir~ it:2
 stir~ the:-9
 stir~ till:-3
 stir~ until:-2
 stir~ with:-4
 stir~0:-5
 stir~=:-5
 stir~t:-4
 stock:1
 stood:1
 stood~ at:4
 stood~ in:2
 stop:-8
 stopp:8
 stopp~ at:8
 stops:-5
 stor:-3
 store~ the:-7
 stove:5
 straight:-4
 straight~ away:-4
 straight~ from:-5
 straight~ into:-5
 straight~ out:3
 straight~ to:1
 strain:5
 strainer:-7
 strain~ it:-6
 strain~ the:-1
 streak:-6
 stream:-4
 street:-4
 strength:3
 stretch:3
 strike:4
 strip:-8
 stripp:-6
 stripp~ the:-5
 strip~ says:-7
 strip~0:-2
 strong:3
 stronger:1
 strong~ ?:-8
 strong~ for:-4
 struck:6
 stuck:4
 stuck~ in:4
 stuck~ to:2
 stuff:-2
 style:-4
 subject:-3
 subject~ ::-3
 such:1
 suds:-6
 suggest:-1
 suits:-3
 sum:-2
 summer~ and:8
 sums:-2
 sun:2
 sunday~ ::-4
 sunday~ roast:2
 superfat:6
 superfat~ ::4
 superfat~ ?:-3
 superfat~ and:-5
 superfat~ at:1
 superfat~ do:-5
 superfat~ for:1
 superfat~ i:-1
 superfat~ in:3
 superfat~ is:-11
 superfat~ of:-9
 superfat~ on:-11
 superfat~ should:-10
 superfat~ with:1
 superfat~%:2
 superfat~0:1
 supermarket:-4
 supplier:1
 suppos:-1
 suppose:-1
 suppos~ to:-1
 sure:5
 sure~ about:-11
 sure~ of:2
 surface:-5
 surviv:-1
 survive:-3
 suspect:4
 swap:-6
 swapp:7
 swapp~ for:3
 swapp~F:6
 swaps:-10
 swap~ the:-2
 swear:3
 swear~ by:-1
 swear~ it:-8
 swear~ to:7
 sweat:-8
 sweat~ in:-1
 sweet:-4
 swirl:-7
 swirl~ with:-3
 switch~ itself:-1
 switch~ off:-1
 switch~ to:-5
 swore:-4
 t:-7
 ta:-5
 tabl:-6
 table:3
 tablespoon:6
 table~ is:-8
 table~0:-9
 tabs:-5
 taffy:-8
 tag:1
 tak:6
 take:3
 taken:3
 takes:-13
 takes~ about:-1
 takes~ its:-5
 takes~ the:-2
 takes~=:-1
 takes~t:-3
 take~ it:-7
 take~ off:-3
 take~ the:-6
 take~ your:3
 take~0:-8
 take~=:-4
 take~w:-9
 talk:-7
 tall:-6
 tan:-8
 tape:-7
 tared:8
 target:1
 tast:-10
 taste:2
 taught:-7
 taught~ me:-4
 teacher:-2
 team:-3
 technical:10
 technical~ grade:8
 telephone:-4
 tell:-4
 tells:-1
 tells~ me:2
 tell~ me:2
 tell~ my:-6
 tell~ them:-6
 tell~ you:-2
 temp:-5
 temper:2
 temperature:-7
 temps:-5
 temp~d:-2
 tenth:4
 tenth~ of:4
 term:-5
 test:-4
 tester:2
 test~ ::-6
 test~ at:-9
 test~ it:4
 test~ on:-1
 test~ with:-4
 text:-2
 than:-1
 thank:-7
 thank~ for:-6
 thank~ to:-2
 thank~ you:-6
 than~ a:-1
 than~ i:2
 than~ it:4
 than~ my:3
 than~ that:-4
 than~ the:-4
 than~0:1
 than~d:-6
 that:5
 thats:-1
 thats~ a:-7
 thats~ all:-4
 thats~ how:5
 thats~ it:-7
 thats~ my:-5
 thats~ the:-5
 thats~ what:6
 thats~ why:-7
 thats~>:-2
 thats~l:-11
 that~ ?:5
 that~ a:-8
 that~ about:-7
 that~ and:4
 that~ be:4
 that~ bit:2
 that~ came:-1
 that~ day:9
 that~ enough:-3
 that~ from:-6
 that~ had:1
 that~ has:-4
 that~ i'd:-3
 that~ i:3
 that~ im:1
 that~ in:1
 that~ into:-3
 that~ is:1
 that~ isnt:2
 that~ it:-8
 that~ its:1
 that~ look:-2
 that~ makes:-6
 that~ matter:5
 that~ mine:4
 that~ my:1
 that~ nobody:2
 that~ noth:-5
 that~ off:7
 that~ okay:-2
 that~ on:3
 that~ one:-5
 that~ out:3
 that~ right:-2
 that~ she:2
 that~ solution:-8
 that~ sound:-2
 that~ still:-6
 that~ the:2
 that~ ther:-7
 that~ too:-7
 that~ was:-8
 that~ way:-1
 that~ we:-8
 that~ went:-3
 that~ with:1
 that~ you:-6
 that~0:9
 that~=:-7
 that~A:-3
 that~L:4
 that~b:5
 the:1
 their:-5
 their~ own:-1
 them:-2
 themselv:-1
 them~ ::-2
 them~ and:-4
 them~ in:-1
 them~ is:-2
 them~ on:-1
 them~ out:-4
 them~ to:-7
 them~ together:4
 them~0:-3
 them~t:-5
 then:-2
 then~ a:-1
 then~ add:-6
 then~ i:2
 then~ in:-5
 then~ into:-3
 then~ it:4
 then~ its:-6
 then~ like:-3
 then~ my:4
 then~ pour:-4
 then~ stir:-4
 then~ stirr:-1
 then~ the:-8
 then~ weigh:-8
 then~0:2
 then~<:4
 then~=:-3
 then~>:-2
 then~A:-8
 then~F:-3
 then~S:-4
 then~W:3
 then~e:-6
 then~t:-5
 then~v:8
 ther:2
 there:4
 thereabout:3
 therefore:3
 there~ ?:-7
 there~ because:2
 there~ enough:-3
 there~ may:5
 there~ so:-6
 there~ too:5
 there~ were:3
 there~ with:-4
 thermometer:-7
 ther~ a:3
 ther~ also:2
 ther~ no:-8
 ther~0:-2
 ther~F:-4
 these:-9
 these~ are:-5
 these~ days:4
 these~ fats:-3
 these~ oils:-3
 they:-6
 theyd:4
 theyll:-3
 they~ are:7
 they~ do:-7
 they~ say:-3
 they~ went:2
 they~ were:-6
 the~ above:5
 the~ air:-1
 the~ amount:-2
 the~ answer:-3
 the~ attic:-2
 the~ autumn:-8
 the~ baby:2
 the~ back:2
 the~ bag:2
 the~ balance:-5
 the~ balcony:2
 the~ bar:1
 the~ bars:-10
 the~ batch:-3
 the~ bath:-7
 the~ bathroom:1
 the~ batter:-8
 the~ battery:-1
 the~ beaker:5
 the~ beginn:-2
 the~ bell:-8
 the~ bench:-5
 the~ best:-5
 the~ big:-1
 the~ bin:-2
 the~ birds:-3
 the~ bit:-2
 the~ blender:2
 the~ block:4
 the~ blog:-4
 the~ blue:1
 the~ board:3
 the~ book:-5
 the~ bottl:-7
 the~ bottle:5
 the~ bottom:-1
 the~ bowl:4
 the~ boys:5
 the~ brim:-2
 the~ bubbl:-5
 the~ bucket:2
 the~ bus:-2
 the~ can:1
 the~ candle:-6
 the~ canister:6
 the~ card:-5
 the~ caretaker:-7
 the~ cat:1
 the~ ceil:-5
 the~ cellar:-8
 the~ certifi:-6
 the~ certificate:3
 the~ cheap:-7
 the~ chemist:-3
 the~ children:2
 the~ choir:-4
 the~ christma:2
 the~ church:-3
 the~ class:-5
 the~ clean:-2
 the~ clock:-4
 the~ club:-1
 the~ clubs:-1
 the~ cold:2
 the~ column:-3
 the~ comma:4
 the~ comment:-6
 the~ cooker:2
 the~ corner:-4
 the~ counter:4
 the~ county:-6
 the~ course:1
 the~ crock:-1
 the~ crockpot:-1
 the~ cubes:-5
 the~ cup:-3
 the~ cupboard:-1
 the~ cure:-8
 the~ dairy:1
 the~ date:-5
 the~ day:-3
 the~ decimal:-4
 the~ difference:1
 the~ discount:-2
 the~ dish:4
 the~ dog:2
 the~ door:-1
 the~ dot:-5
 the~ doubl:-7
 the~ drain:3
 the~ drum:8
 the~ edge:-4
 the~ edges:-2
 the~ empty:-8
 the~ end:3
 the~ ends:-7
 the~ even:-7
 the~ face:-7
 the~ farm:-1
 the~ fat:-5
 the~ fats:1
 the~ feed:4
 the~ fence:-6
 the~ figur:-5
 the~ figure:4
 the~ finish:-3
 the~ first:-2
 the~ flak:5
 the~ floor:6
 the~ foam:-9
 the~ freezer:-11
 the~ fridge:-1
 the~ fryer:1
 the~ full:4
 the~ fumes:-6
 the~ funnel:3
 the~ garage:-3
 the~ garden:-4
 the~ gas:-3
 the~ gel:1
 the~ glass:1
 the~ goat:4
 the~ goats:4
 the~ goggl:-3
 the~ good:-2
 the~ gram:-6
 the~ greasy:-8
 the~ half:5
 the~ hall:-5
 the~ hand:-3
 the~ handout:3
 the~ hands:5
 the~ hard:-5
 the~ heat:-8
 the~ hens:-8
 the~ holiday:-3
 the~ hood:-6
 the~ hot:2
 the~ house:7
 the~ internet:-3
 the~ jar:1
 the~ jars:-7
 the~ jug:-3
 the~ kettle:7
 the~ kids:-4
 the~ kilo:6
 the~ kitchen:-3
 the~ label:4
 the~ lads:-4
 the~ lady:-3
 the~ last:3
 the~ lather:-1
 the~ laundry:-3
 the~ leaflet:2
 the~ leftover:1
 the~ letter:1
 the~ library:-6
 the~ lid:2
 the~ light:-7
 the~ line:5
 the~ liquid:5
 the~ list:11
 the~ litre:7
 the~ loaf:-4
 the~ long:1
 the~ look:-1
 the~ lot:3
 the~ lowest:-6
 the~ lump:-1
 the~ machine:-5
 the~ man:-3
 the~ margin:-2
 the~ mark:5
 the~ market:-5
 the~ mass:-5
 the~ measur:2
 the~ mechanic:3
 the~ melt:-1
 the~ mess:-4
 the~ microwave:1
 the~ middle:-5
 the~ mill:-3
 the~ miss:5
 the~ mix:4
 the~ mold:1
 the~ month:-5
 the~ moon:-5
 the~ morn:-8
 the~ most:-10
 the~ mould:-2
 the~ name:-6
 the~ neighbour:-2
 the~ next:-5
 the~ night:-6
 the~ normal:-5
 the~ number:1
 the~ oil:1
 the~ oils:1
 the~ old:-1
 the~ one:-1
 the~ ones:-2
 the~ only:-9
 the~ open:3
 the~ order:-5
 the~ original:1
 the~ other:3
 the~ oven:-9
 the~ packet:8
 the~ page:-5
 the~ pan:3
 the~ pantry:-8
 the~ paper:9
 the~ parish:-9
 the~ past:1
 the~ paste:-4
 the~ phone:4
 the~ photo:5
 the~ picture:-5
 the~ place:6
 the~ plain:-6
 the~ plastic:3
 the~ plate:5
 the~ point:-3
 the~ porch:-5
 the~ postman:2
 the~ potato:-7
 the~ pour:-5
 the~ powder:4
 the~ power:-3
 the~ present:2
 the~ price:-6
 the~ printout:-4
 the~ question:-6
 the~ rack:-4
 the~ radiator:-4
 the~ radio:-5
 the~ rain:-3
 the~ ready:5
 the~ real:-9
 the~ reason:-6
 the~ record:1
 the~ remain:-3
 the~ render:-3
 the~ rest:1
 the~ right:-7
 the~ roof:2
 the~ room:2
 the~ row:-6
 the~ rugby:-3
 the~ sack:-2
 the~ safe:3
 the~ salad:2
 the~ same:1
 the~ scale:-3
 the~ school:2
 the~ scum:2
 the~ second:3
 the~ shed:-1
 the~ sheet:8
 the~ shelf:-3
 the~ shop:2
 the~ shops:-7
 the~ shower:-7
 the~ side:7
 the~ sink:2
 the~ size:1
 the~ skin:-4
 the~ slip:-1
 the~ slow:-3
 the~ small:3
 the~ soap':3
 the~ soap:-3
 the~ spatula:-2
 the~ spr:-7
 the~ stall:3
 the~ start:1
 the~ steel:4
 the~ step:-1
 the~ stick:-9
 the~ stirr:-7
 the~ stove:5
 the~ sum:-2
 the~ sums:1
 the~ sun:1
 the~ sunday:4
 the~ superfat:-5
 the~ supermarket:-3
 the~ surface:-5
 the~ swirl:-4
 the~ table:3
 the~ tap:-4
 the~ teacher:-2
 the~ temperature:-4
 the~ test:1
 the~ thermometer:-6
 the~ thing:-3
 the~ third:-1
 the~ thread:-5
 the~ thursday:-5
 the~ tiles:7
 the~ time:-1
 the~ tin:4
 the~ top:-2
 the~ trace:-1
 the~ train:-6
 the~ tray:-3
 the~ trimming:1
 the~ tub:1
 the~ unrefin:-5
 the~ usual:5
 the~ varnish:-5
 the~ very:-1
 the~ village:-3
 the~ wall:-6
 the~ war:-7
 the~ wardrobe:-3
 the~ warm:2
 the~ wash:-5
 the~ way:4
 the~ weather:-6
 the~ weekend:-8
 the~ weigh:4
 the~ weight:3
 the~ white:1
 the~ whole:-1
 the~ window:-7
 the~ windowsill:3
 the~ winter:-6
 the~ wood:-2
 the~ wooden:-4
 the~ word:-5
 the~ workshop:-2
 the~ worktop:-1
 the~ wrong:6
 the~ yard:-5
 the~ year:-6
 the~%:1
 the~0:1
 the~<:-7
 the~=:-2
 the~>:-2
 the~A:2
 the~B:-9
 the~C:-13
 the~F:5
 the~I:4
 the~K:3
 the~L:-1
 the~M:4
 the~N:-2
 the~T:-7
 the~W:5
 the~X:-4
 the~b:5
 the~l:-5
 the~t:-1
 the~v:-7
 the~w:-7
 thick:-3
 thicken:-2
 thicker:-7
 thick~ as:1
 thick~ like:-6
 thick~ trace:-2
 thin:-4
 thing:-2
 thing~ ?:-7
 thing~ and:-1
 thing~ i:-7
 thing~ in:-6
 think~ ?:-7
 think~ about:3
 think~ i:8
 think~ it:1
 think~ my:2
 think~ of:-7
 think~ that:-9
 think~ the:4
 thinn:7
 thin~ stream:-4
 thin~ trace:-7
 third:2
 third~ attempt:-5
 third~ go:5
 third~ of:1
 this:3
 this~ ::4
 this~ ?:-7
 this~ a:-4
 this~ and:-6
 this~ batch:-3
 this~ be:-1
 this~ before:-3
 this~ for:6
 this~ from:2
 this~ house:5
 this~ i:-4
 this~ in:-2
 this~ is:-6
 this~ loaf:2
 this~ morn:3
 this~ ok:-2
 this~ on:-8
 this~ one:5
 this~ ones:-6
 this~ or:-7
 this~ pot:2
 this~ recipe:-8
 this~ right:-3
 this~ time:4
 this~ to:-5
 this~ was:-6
 this~ way:-4
 this~ week:-1
 this~ weekend:3
 this~ with:-7
 this~ year:4
 this~0:-7
 this~F:1
 tho:-2
 those:1
 those~ are:1
 those~ days:-5
 those~ fats:-2
 those~ oils:-3
 those~ who:3
 those~0:2
 those~w:2
 though:1
 thought:1
 thought~ ?:-4
 thought~ i'd:-7
 thought~ i:-2
 thought~ it:-4
 thought~ on:-5
 though~ i:1
 thread:-6
 threw:5
 threw~ in:9
 threw~ the:-3
 through:1
 throughout:1
 through~ a:-3
 through~ an:-12
 through~ it:-3
 through~ the:4
 throw:-4
 thrown:7
 thru:1
 thumb:-3
 thursday:-6
 thx:-5
 tick:-1
 til:-2
 tiles:6
 till~ it:4
 till~ its:-1
 till~ the:-2
 till~0:-6
 time:-4
 timer:-9
 times:3
 times~ i:2
 times~ in:-8
 times~ the:1
 times~0:9
 time~ ::-1
 time~ and:-4
 time~ because:1
 time~ in:3
 time~ it:-9
 time~ ive:-1
 time~ lurker:-4
 time~ post:-3
 time~ so:4
 time~ the:1
 time~ to:-3
 time~ with:-8
 time~t:-5
 tins:-6
 tins~ of:-3
 tiny:-1
 tin~ and:-2
 tin~ is:-7
 tin~ of:-3
 tin~ was:-1
 tin~ with:-10
 tip:-4
 tipp:7
 tipp~ in:7
 tipp~ the:-3
 tips:-6
 tip~ ::-5
 title:-3
 title~ ::-4
 to:-1
 toast:4
 today:-4
 today~ ::4
 today~ ?:-5
 toddler:4
 together:-3
 together~ ?:-2
 together~ in:-5
 together~ with:-5
 told:-5
 told~ her:-4
 told~ me:-2
 told~ us:-7
 told~F:-2
 tom:-1
 tomato:7
 tomorrow:-5
 tongue:-2
 tongue~ test:1
 tonight:7
 tonight~ ::-7
 tonight~ ?:-3
 too:2
 took:3
 took~ a:-6
 took~ ages:-4
 took~ it:-1
 took~ me:-9
 took~ off:2
 took~ the:3
 took~0:-2
 took~<:2
 took~=:-10
 took~>:-6
 took~N:3
 took~l:4
 took~t:-10
 took~w:-6
 tools:-7
 too~ ?:-8
 too~ and:1
 too~ cold:-5
 too~ dry:-3
 too~ early:-6
 too~ fast:-3
 too~ hard:-2
 too~ harsh:-3
 too~ high:-6
 too~ hot:-7
 too~ late:-1
 too~ low:2
 too~ many:6
 too~ much:-5
 too~ quick:4
 too~ sharp:-3
 too~ soft:-6
 too~ soon:-4
 too~ strong:-1
 top:1
 topp:9
 topp~ it:3
 topp~ the:4
 topp~ up:5
 top~ is:-4
 top~ of:2
 top~ shelf:-5
 top~ which:-6
 total:2
 total~ of:-9
 touch:-5
 touch~ it:-6
 touch~ the:-5
 towel:-6
 towel~ and:-1
 towel~ over:-5
 towel~ round:-6
 town:1
 to~ a:2
 to~ add:-1
 to~ ask:-5
 to~ be:4
 to~ bed:-2
 to~ buy:-8
 to~ check:-5
 to~ come:3
 to~ cool:-10
 to~ cut:-4
 to~ everyone:3
 to~ find:-4
 to~ finish:8
 to~ get:-4
 to~ go:-2
 to~ grate:-2
 to~ have:4
 to~ hear:2
 to~ help:5
 to~ her:-5
 to~ hold:3
 to~ it:1
 to~ keep:-8
 to~ know:-4
 to~ light:-1
 to~ look:-7
 to~ make:1
 to~ me:-2
 to~ melt:-10
 to~ noth:1
 to~ open:-6
 to~ pour:-1
 to~ put:3
 to~ remember:-8
 to~ rough:-3
 to~ see:1
 to~ sell:-2
 to~ set:2
 to~ slush:-8
 to~ soap:-7
 to~ someth:-5
 to~ spare:-2
 to~ spoon:-6
 to~ take:5
 to~ test:-5
 to~ that:-3
 to~ the:-2
 to~ thicken:-2
 to~ this:-8
 to~ throw:-4
 to~ trace:-9
 to~ try:-3
 to~ unmould:-5
 to~ use:-3
 to~ wait:1
 to~ wash:2
 to~ waste:3
 to~ weigh:-6
 to~ you:-6
 to~%:4
 to~0:-1
 to~<:6
 to~=:-2
 to~>:4
 to~F:-10
 to~T:-4
 to~X:-6
 to~b:-4
 to~d:-4
 to~e:-4
 to~t:3
 to~w:-5
 trac:-9
 trace:1
 trace~ ::-6
 trace~ add:3
 trace~ after:-6
 trace~ and:-8
 trace~ at:-2
 trace~ because:7
 trace~ came:-4
 trace~ i:-6
 trace~ in:-8
 trace~ stir:-5
 trace~ then:-2
 trace~ was:-5
 trace~t:-7
 tractor:-5
 trac~ after:-2
 trac~ in:-4
 trade:-10
 trail:-5
 train:-7
 translat:-4
 translate:-5
 translat~ from:-3
 translucent:-4
 tray:-5
 trays:-3
 treat:-3
 trees:1
 trial:-8
 trick:-9
 trick~ for:-6
 tried:-11
 tried~ it:-3
 trimm:2
 trimming:-1
 tripl:-7
 trouble:-3
 trust:-7
 trust~ it:-6
 trust~ the:-4
 truth:1
 try:-14
 try~ it:-7
 try~ to:-2
 tub:-1
 tube:-5
 tubs:4
 tub~ ::-8
 tub~ and:-9
 tub~ is:-3
 tub~ of:-4
 tub~ says:-6
 tub~ was:1
 tue:-2
 tuesday:-1
 tue~t:-1
 turn:-2
 turns~ out:9
 turns~0:-5
 turn~ it:-2
 turn~ out:6
 turn~ the:-3
 turn~ to:1
 turn~S:-4
 tutor:-3
 twentieth:4
 twice:2
 twice~ a:-4
 twice~ and:3
 twice~ before:-8
 twice~ i:3
 twice~ with:-5
 typ:-6
 type:3
 typed:7
 typed~ the:6
 typo:3
 u:-7
 ugh:-2
 ugly:-5
 um:1
 uncl:-6
 uncle:-2
 under:-5
 underneath:-5
 understand:-5
 under~ a:-3
 under~ the:3
 under~0:-9
 under~d:-3
 under~t:-3
 under~w:-8
 unit:-4
 units:-7
 unit~ ::-3
 unles:1
 unmold:-6
 unmould:-7
 unmould~ after:-6
 unmould~t:-1
 unrefin:-8
 unsaponifi:10
 unscent:-6
 until:-1
 until~ a:-5
 until~ i:-5
 until~ it:-1
 until~ its:-6
 until~ the:3
 until~ you:-3
 until~t:-1
 up:6
 update:3
 update~ ::-1
 upon:2
 up~ ::1
 up~ ?:-6
 up~ again:-9
 up~ by:2
 up~ for:-7
 up~ i:-7
 up~ in:-3
 up~ like:-5
 up~ my:-1
 up~ on:6
 up~ so:1
 up~ the:4
 up~ there:4
 up~ to:3
 up~ with:2
 up~0:9
 ur:-6
 us:-1
 use:-3
 used:2
 used~ a:-1
 used~ that:5
 used~ the:7
 used~ to:-8
 used~ up:2
 used~0:-3
 used~=:-5
 used~>:-3
 used~F:-5
 used~L:4
 used~N:-3
 used~l:-2
 uses:-2
 use~ ?:-2
 use~ a:-1
 use~ for:-1
 use~ in:-4
 use~ it:-7
 use~ the:-5
 use~ up:6
 use~=:1
 use~>:4
 use~F:-8
 use~I:-6
 use~N:-1
 use~l:-3
 using:2
 usual:3
 us~ the:-1
 vanish:-4
 varnish:-5
 vegan:-10
 vegetable:-3
 vegetarian:-8
 verdict:-5
 verify:-7
 verify~ the:-6
 version:-5
 version~ ::-1
 version~0:4
 very:-1
 very~ end:1
 very~ first:-6
 very~ nice:-4
 vet:-5
 video:-6
 village:-3
 village~ hall:-1
 virgin:-7
 voice:2
 volcano:-9
 volume:1
 wait:-3
 waits:3
 wait~ for:-6
 wait~ i:-4
 wait~ till:-3
 wait~ until:-9
 wait~t:-4
 walk:3
 wall:-3
 want:3
 wants:-4
 wants~ a:-4
 wants~ it:-7
 wants~ me:-3
 wants~ some:-2
 wants~ the:-6
 wants~ to:-4
 want~ a:-5
 want~ the:6
 want~ to:-4
 want~0:7
 want~F:-8
 war:-8
 wardrobe:-5
 warm:-7
 warmth:-5
 warm~ in:-5
 warm~ it:-3
 warm~ oils:3
 warm~ the:-9
 warm~ to:-6
 warm~F:-3
 warn:-7
 was:5
 wash:-7
 wash~ it:3
 wash~ the:2
 wash~ with:-5
 wasnt:13
 wast:4
 was~ a:-1
 was~ about:-1
 was~ all:2
 was~ already:5
 was~ at:-5
 was~ call:1
 was~ clean:-3
 was~ clear:-4
 was~ cold:1
 was~ done:1
 was~ empty:10
 was~ fine:-1
 was~ finish:6
 was~ for:-2
 was~ from:-1
 was~ full:-1
 was~ going:-6
 was~ gone:-4
 was~ hard:-7
 was~ hot:-4
 was~ in:3
 was~ it:-4
 was~ like:2
 was~ made:-2
 was~ meant:4
 was~ melt:4
 was~ my:-3
 was~ near:3
 was~ never:-3
 was~ no:-3
 was~ not:9
 was~ off:9
 was~ old:-4
 was~ on:3
 was~ one:5
 was~ only:1
 was~ open:5
 was~ out:4
 was~ over:4
 was~ pour:3
 was~ ready:-2
 was~ real:5
 was~ right:-6
 was~ so:4
 was~ stand:4
 was~ still:1
 was~ stirr:-3
 was~ that:-4
 was~ the:-4
 was~ thick:-4
 was~ told:2
 was~ too:-6
 was~ under:-5
 was~ very:-7
 was~ warm:-6
 was~ weigh:5
 was~ what:-4
 was~ with:1
 was~%:-6
 was~0:-4
 was~<:5
 was~=:-8
 was~>:-9
 was~A:5
 was~F:4
 was~L:5
 was~N:2
 was~X:7
 was~b:3
 was~d:-9
 was~e:6
 was~l:-8
 was~t:-6
 was~v:3
 was~w:8
 watch:-7
 water:2
 water~ bath:-5
 waxy:-4
 way:2
 way~ about:2
 way~ in:6
 way~ of:-6
 way~ round:-1
 way~ to:-1
 we:1
 wear:-7
 wear~ goggl:-4
 weather:-7
 wed:1
 wedd:-2
 wedd~ favour:1
 wednesday:-6
 week:-6
 weekend:-1
 weeks:1
 week~ and:-8
 week~ so:5
 week~0:-10
 weigh:-1
 weight:2
 weight~ ::-7
 weight~ and:1
 weight~ g:-3
 weight~ in:3
 weight~ made:-6
 weight~ of:-3
 weight~ oz:-5
 weight~ so:-5
 weight~A:-5
 weigh~ ?:4
 weigh~ a:-4
 weigh~ after:-4
 weigh~ again:4
 weigh~ and:-2
 weigh~ anyth:-1
 weigh~ as:4
 weigh~ by:6
 weigh~ everyth:-8
 weigh~ i:-5
 weigh~ it:2
 weigh~ like:-1
 weigh~ my:3
 weigh~ on:2
 weigh~ one:3
 weigh~ out:-8
 weigh~ the:2
 weigh~0:2
 weigh~<:-6
 weigh~=:-7
 weigh~F:-5
 weigh~e:7
 weigh~l:-2
 weigh~w:-10
 welcome:-5
 well~ and:-4
 well~ as:-4
 well~ be:5
 well~ have:8
 went:4
 went~ a:5
 went~ above:-7
 went~ away:-8
 went~ back:-3
 went~ brown:-5
 went~ by:-4
 went~ clear:-6
 went~ cloudy:-5
 went~ dark:-3
 went~ down:4
 went~ for:5
 went~ from:-9
 went~ in:8
 went~ into:4
 went~ on:4
 went~ over:2
 went~ the:-6
 went~ to:-5
 went~ up:-1
 went~ with:5
 went~ without:4
 went~ wrong:-3
 went~=:-8
 went~S:-4
 were:2
 were~ a:-1
 were~ at:-8
 were~ doing:-1
 were~ on:-6
 were~0:1
 were~F:-2
 were~w:-3
 wet:5
 wet~ cloth:-4
 wet~ dog:-2
 weve:-2
 we~ are:-1
 we~ count:-4
 we~ cut:-6
 we~ did:4
 we~ do:1
 we~ got:-7
 we~ had:1
 we~ have:-5
 we~ keep:-8
 we~ made:-7
 we~ make:3
 we~ put:-7
 we~ render:-3
 we~ say:3
 we~ use:-9
 we~ used:-2
 we~ want:4
 we~ weigh:1
 we~ went:-2
 we~ were:4
 what:4
 whatever:6
 whatever~ the:9
 whatever~ was:10
 whatsoever:1
 whats~ in:5
 whats~ the:-6
 what~ a:-6
 what~ came:7
 what~ did:-4
 what~ do:4
 what~ does:-6
 what~ g:-5
 what~ happen:-7
 what~ how:-9
 what~ i'd:3
 what~ i:8
 what~ im:3
 what~ is:-6
 what~ it:4
 what~ my:-2
 what~ remain:1
 what~ she:-5
 what~ superfat:-10
 what~ they:6
 what~ was:-4
 what~ we:-3
 what~ went:1
 what~ would:-4
 what~ you:-3
 what~ youd:-1
 when:-1
 whenever:-1
 when~ both:-6
 when~ cut:-6
 when~ i:1
 when~ it:3
 when~ the:2
 when~ wash:5
 when~ you:2
 when~F:-9
 where:4
 where~ i:-1
 where~ it:8
 where~ she:-7
 where~ the:2
 where~ you:2
 whether:-3
 whether~ it:-5
 whether~ the:1
 whether~F:-9
 whether~b:-4
 which:3
 which~ bring:-1
 which~ i:6
 which~ is:-3
 which~ makes:-5
 which~ of:1
 which~ one:6
 which~ the:1
 which~ was:-4
 which~F:-6
 while:-3
 while~ i:5
 while~ it:-1
 while~ the:-8
 whipp:3
 whisk:-6
 white:-9
 whiter:-6
 white~ and:3
 white~ as:-6
 white~ powder:-4
 white~ spots:-3
 white~F:-1
 who:-1
 whoever:-1
 whole~ grams:-8
 whole~ thing:4
 whole~ time:-2
 whos:-3
 whose:4
 whos~ right:-3
 who~ asked:-5
 who~ cant:3
 who~ does:2
 who~ has:-2
 who~ is:-4
 who~ knows:4
 who~ taught:-1
 why:-13
 why~ ?:-3
 why~ does:-4
 why~ i:-5
 why~ it:-5
 why~ its:-5
 why~ the:-7
 why~F:-3
 width:-4
 wife:-2
 wifes:-3
 wife~ likes:-5
 wife~ says:3
 will:-7
 will~ be:-8
 will~ climb:-5
 will~ do:-7
 will~ it:-3
 will~ need:-2
 will~ not:-1
 will~ that:-2
 will~ the:-6
 will~ this:-2
 window:-10
 windowsill:2
 window~ open:-7
 winter:-4
 winter~ and:1
 winter~ bar:-1
 winter~ hands:-8
 winter~ i:-4
 wipe:-4
 wiped:-3
 wire:-5
 wish:3
 within:-8
 within~t:-6
 without:5
 without~ a:-11
 without~ it:1
 without~ my:-2
 without~F:-1
 with~ a:-2
 with~ all:-5
 with~ an:-3
 with~ another:1
 with~ bak:-3
 with~ both:-2
 with~ everyth:5
 with~ freezer:-3
 with~ glov:-2
 with~ goggl:-3
 with~ its:-4
 with~ me:2
 with~ more:5
 with~ my:-9
 with~ no:-2
 with~ noth:5
 with~ one:3
 with~ only:-6
 with~ some:2
 with~ that:4
 with~ the:2
 with~ this:2
 with~ us:-5
 with~ wet:-4
 with~ what:6
 with~%:7
 with~0:-4
 with~<:-3
 with~=:-3
 with~>:-7
 with~A:1
 with~C:1
 with~F:-7
 with~I:-4
 with~L:-7
 with~N:1
 with~S:-10
 with~X:-1
 with~e:-5
 with~l:-9
 with~w:3
 woman:-11
 woman~ at:-2
 women:-4
 wonder:7
 wonky:-7
 wont:-2
 wood:-7
 wooden:-3
 wooden~ box:-3
 wooden~ mould:-8
 wooden~ one:-6
 wooden~ spoon:3
 wood~ stove:-4
 word:-1
 words:-6
 word~ for:-6
 work:-1
 works:-8
 worksheet:-4
 workshop:-2
 worktop:-1
 work~ ?:-2
 work~ in:2
 work~ it:4
 work~ out:-3
 work~ with:1
 worri:2
 worry:-1
 worry~ is:1
 worth:1
 worth~ of:4
 would:-1
 wouldnt:4
 wouldnt~ dissolve:9
 would~ a:-3
 would~ be:-3
 would~ do:-9
 would~ have:-3
 would~ like:5
 would~ love:1
 would~ not:-4
 would~ take:1
 would~ the:-8
 would~ you:3
 wrap:-8
 wrapp:-11
 wrapper:-6
 wrapp~ in:-5
 wrapp~ it:-4
 wrist:-4
 writ:-5
 write:-6
 write~ down:-3
 write~ the:-7
 write~ up:-4
 written:1
 written~ ?:-5
 written~ on:-4
 wrong~ ?:-5
 wrong~ with:-6
 wrote:1
 wrote~ ::-5
 wrote~ it:2
 wrote~ on:-6
 wrote~ that:-6
 wrote~ this:-3
 wrote~F:3
 wrote~e:-1
 wt:-8
 w~ a:-8
 w~ my:-3
 w~ the:1
 w~ w:1
 w~=:-3
 x:1
 xmas:2
 x~0:3
 x~F:-10
 yall:-6
 yard:-8
 year:-6
 years:-7
 years~ ago:-2
 year~ and:2
 year~ i:-7
 year~ in:-5
 year~ is:4
 year~0:-5
 yellow:-8
 yes:-4
 yesterday:-5
 yes~ i:-1
 yes~ its:-9
 yes~ no:-3
 yes~ or:-1
 yes~ the:-1
 yet:5
 yield:2
 yield~0:1
 you:-3
 youd:-4
 youll:-3
 youll~ want:1
 young:-3
 your:-9
 youre:-9
 yours:-2
 your~ arm:-2
 your~ own:2
 your~ skin:-5
 your~A:-3
 your~F:-5
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
 you~ could:-10
 you~ cut:-3
 you~ do:1
 you~ dont:-9
 you~ feel:-2
 you~ for:-6
 you~ get:-3
 you~ go:-6
 you~ know:5
 you~ like:-5
 you~ look:-3
 you~ lot:-2
 you~ make:-6
 you~ need:-7
 you~ pour:-7
 you~ put:-8
 you~ say:-2
 you~ see:1
 you~ should:4
 you~ start:4
 you~ tell:3
 you~ think:-3
 you~ to:-3
 you~ trust:-1
 you~ use:-3
 you~ wait:-4
 you~ want:-7
 you~ weigh:-6
 you~ will:1
 you~ wont:2
 you~ work:3
 zap:-8
 zapp:6
 zappy:-5
 zaps:1
 zap~ test:-4
 zero:4
 zero~ the:6
 ×:-1
 üf:-8
%%:-2
%0:-8
%:7
%<:-6
%=:-1
%>:-8
%A:6
%F:-2
%K:-7
%N:2
%S:-7
%W:1
%X:2
%b:-1
%l:-3
%t:-7
%w:2
%~ ?:-2
%~ and:-4
%~ by:2
%~ extra:7
%~ flak:4
%~ for:9
%~ in:-2
%~ is:-3
%~ less:-1
%~ liquid:7
%~ of:1
%~ on:5
%~ or:3
%~ over:3
%~ pure:-5
%~ purity:-3
%~ sf:-5
%~ so:4
%~ solution:-4
%~ superfat:3
%~=:-5
%~A:4
%~F:-5
%~K:-7
%~W:-4
%~X:3
0%:-5
00:-5
0:5
0<:-2
0=:1
0>:-2
0A:-2
0B:1
0C:3
0F:-2
0I:2
0K:-7
0M:2
0N:4
0S:-4
0T:1
0W:4
0X:-5
0b:-3
0d:-3
0l:-2
0r:-4
0t:-6
0v:-7
0w:-6
0~ ::-1
0~ =:-8
0~ ?:1
0~ a:-11
0~ after:2
0~ all:6
0~ and:-1
0~ are:2
0~ as:6
0~ at:-2
0~ b:-8
0~ bar:-6
0~ bars:-6
0~ batch:-3
0~ because:8
0~ before:3
0~ big:-4
0~ block:2
0~ both:-3
0~ bottl:-6
0~ bucket:-5
0~ but:-3
0~ by:1
0~ c:-4
0~ cakes:-3
0~ caviti:-6
0~ children:-6
0~ comment:-3
0~ cubes:-1
0~ cut:4
0~ degre:-3
0~ drops:-8
0~ empty:1
0~ evening:-6
0~ except:7
0~ fat:-4
0~ fats:-9
0~ for:-8
0~ from:3
0~ full:-7
0~ gives:-6
0~ goats:-8
0~ goes:-2
0~ good:-1
0~ group:-6
0~ guest:-4
0~ had:-9
0~ i:6
0~ if:-2
0~ in:-2
0~ into:4
0~ is:2
0~ jars:-2
0~ kitchen:-5
0~ lather:-6
0~ left:-8
0~ little:-7
0~ loaf:-2
0~ lyes:-9
0~ made:-7
0~ more:-7
0~ mould:-1
0~ my:6
0~ n:-1
0~ night:-3
0~ no:4
0~ not:4
0~ now:-1
0~ of:3
0~ off:-1
0~ oil:-8
0~ oils:-4
0~ on:6
0~ once:3
0~ one:-4
0~ or:3
0~ out:2
0~ p:-8
0~ packet:-7
0~ pcs:-6
0~ people:-7
0~ per:-4
0~ percent:6
0~ piec:-6
0~ please:9
0~ plus:1
0~ pour:-5
0~ right:-3
0~ scal:-8
0~ she:-1
0~ silicone:-2
0~ since:5
0~ slic:-6
0~ small:-4
0~ so:-8
0~ someth:2
0~ spoon:2
0~ still:-7
0~ superfat:8
0~ that:-3
0~ thats:3
0~ the:4
0~ then:3
0~ thing:-7
0~ this:3
0~ times:-4
0~ tins:-4
0~ to:2
0~ towel:-8
0~ until:-8
0~ w:5
0~ was:-3
0~ weigh:-4
0~ went:2
0~ were:1
0~ when:3
0~ which:-5
0~ winter:-1
0~ with:-9
0~ x:1
0~ ×:-6
0~0:-3
0~A:-6
0~F:-4
0~L:-1
0~S:3
0~W:-3
0~X:4
0~b:-11
0~t:-6
0~w:-3
<%:2
<0:-2
<:3
<<:-3
<=:-4
<>:-4
<A:5
<C:3
<F:2
<I:-9
<K:7
<L:5
<N:-4
<S:-1
<W:-6
<X:2
<d:-5
<l:-8
<v:-3
<w:-3
<~ +:-6
<~ and:4
<~ because:2
<~ i:-4
<~ in:-2
<~ less:-4
<~ more:8
<~ of:1
<~ short:3
<~ so:-1
<~ the:5
<~A:-1
<~C:3
<~F:3
<~I:-4
<~L:-5
<~S:-2
<~W:-8
<~X:-6
=%:-12
=0:7
=:-4
=<:-4
==:-3
=>:-2
=A:-2
=F:-3
=I:-3
=K:-1
=L:-1
=N:4
=S:-1
=W:-2
=X:-2
=b:-3
=d:-2
=e:-2
=r:-5
=t:-4
=v:-7
=w:-4
=~ +:-5
=~ ::3
=~ =:-7
=~ and:-7
=~ as:2
=~ at:-5
=~ bag:-8
=~ block:-7
=~ by:-1
=~ check:-2
=~ clean:-4
=~ cold:-1
=~ did:-2
=~ dissolv:-6
=~ does:-2
=~ for:-4
=~ free:-7
=~ from:-2
=~ goes:-3
=~ good:-1
=~ i:-7
=~ im:-7
=~ in:-3
=~ into:-5
=~ it:-6
=~ melt:-4
=~ mk:-5
=~ no:-5
=~ not:-12
=~ of:-3
=~ ok:-2
=~ on:-3
=~ so:-5
=~ superfat:-6
=~ that:-7
=~ then:-5
=~ too:-3
=~ with:3
=~%:-6
=~0:5
=~<:-4
=~=:-2
=~A:-3
=~F:-3
=~L:-4
=~W:-2
=~X:-2
=~t:-1
>%:-2
>0:-5
>:-3
><:-3
>=:-2
>>:-4
>A:-2
>F:-3
>K:-5
>W:-4
>e:-11
>l:-6
>t:-2
>w:-5
>~ i:-7
>~ in:-2
>~ is:-5
>~ of:-6
>~ oils:-1
>~ so:-6
>~ the:-6
>~A:-4
>~F:4
>~L:-2
>~W:-4
A%:5
A0:5
A:1
A<:1
A=:-3
AA:2
AB:5
AC:-7
AF:3
AI:-6
AL:1
AN:-6
AS:-3
AW:-2
Ad:1
Ae:2
Al:-6
Ar:-8
At:-4
Aw:-5
A~ ::5
A~ =:1
A~ ?:-8
A~ a:-7
A~ about:-4
A~ all:2
A~ alright:-6
A~ and:-3
A~ as:7
A~ bag:3
A~ be:-2
A~ because:-3
A~ before:-6
A~ but:-3
A~ by:-1
A~ came:-5
A~ can:-2
A~ check:-7
A~ comes:4
A~ cool:3
A~ correct:-10
A~ dissolv:-1
A~ does:-7
A~ down:3
A~ figure:4
A~ fine:-4
A~ fit:-6
A~ from:6
A~ g:-9
A~ gets:-6
A~ goes:-9
A~ good:-7
A~ got:6
A~ had:3
A~ half:-6
A~ has:5
A~ heavy:1
A~ here:5
A~ i:4
A~ if:5
A~ into:-4
A~ is:4
A~ it:5
A~ its:5
A~ jug:-3
A~ left:-3
A~ like:-5
A~ look:2
A~ looks:-3
A~ no:-7
A~ not:5
A~ of:2
A~ ok:-7
A~ okay:-4
A~ on:-6
A~ one:-7
A~ only:2
A~ or:-4
A~ over:-9
A~ paste:2
A~ please:-8
A~ pls:-4
A~ pot:6
A~ ready:-7
A~ real:-9
A~ right:-6
A~ row:-2
A~ sensible:-5
A~ she:-8
A~ slow:-5
A~ so:3
A~ soap:-2
A~ sprinkl:-3
A~ still:-6
A~ that:-10
A~ the:-5
A~ then:-3
A~ there:1
A~ to:-1
A~ too:-11
A~ tub:4
A~ up:5
A~ was:-1
A~ weigh:8
A~ went:1
A~ when:-1
A~ where:3
A~ which:-2
A~ with:-5
A~ wrong:-5
A~ you:4
A~%:-6
A~<:2
A~=:-3
A~>:-6
A~A:-5
A~F:-2
A~L:2
A~W:1
A~d:-5
A~e:-2
A~r:-6
A~t:5
A~v:-2
B0:-3
B:3
BF:3
B~ and:-8
B~ so:-6
C%:-7
C:6
CA:3
Cv:5
C~ at:5
C~ in:6
C~ is:-4
C~%:-7
C~<:-5
F%:1
F0:-1
F:1
F<:4
F=:-3
FA:-3
FB:5
FI:1
FK:-3
FN:6
FS:-9
FT:-5
FU:3
FX:2
Fb:1
Fd:-3
Fe:1
Fl:-5
Fr:6
Ft:-3
Fv:-8
Fw:1
F~ +:4
F~ ::3
F~ =:3
F~ ?:-7
F~ a:1
F~ about:-1
F~ add:3
F~ after:3
F~ again:1
F~ all:1
F~ alone:-5
F~ altogether:-3
F~ are:3
F~ as:5
F~ at:3
F~ back:6
F~ bar:-4
F~ bars:-12
F~ batch:-8
F~ because:6
F~ beef:-4
F~ before:-5
F~ block:-2
F~ bottle:-8
F~ but:-3
F~ came:1
F~ can:-4
F~ clean:-4
F~ cold:-5
F~ comes:-9
F~ could:3
F~ count:-8
F~ does:-5
F~ down:9
F~ extra:5
F~ figure:2
F~ fills:-9
F~ first:-6
F~ for:-3
F~ free:-2
F~ from:-6
F~ g:-7
F~ gent:-5
F~ gives:-7
F~ go:-9
F~ goes:-9
F~ gone:-2
F~ got:9
F~ grams:-6
F~ had:-2
F~ half:-3
F~ has:-5
F~ here:3
F~ i'd:5
F~ i:1
F~ if:-7
F~ im:8
F~ in:2
F~ instead:5
F~ into:-3
F~ it:6
F~ its:2
F~ ive:8
F~ jar:-3
F~ jug:4
F~ keeps:-6
F~ l:-3
F~ last:-9
F~ left:-1
F~ like:2
F~ line:7
F~ look:3
F~ looks:-2
F~ makes:-4
F~ may:1
F~ melt:-9
F~ melts:-5
F~ my:3
F~ n:3
F~ never:9
F~ next:-7
F~ no:-7
F~ not:3
F~ off:1
F~ on:-5
F~ once:-5
F~ one:-11
F~ only:2
F~ or:-7
F~ out:3
F~ over:-6
F~ oyl:-4
F~ packet:6
F~ paste:-7
F~ plus:1
F~ ran:3
F~ read:1
F~ real:-6
F~ render:-7
F~ right:-4
F~ rspo:-8
F~ says:-4
F~ sets:-4
F~ should:2
F~ since:2
F~ smell:-9
F~ so:5
F~ soap:-4
F~ soaps:-6
F~ stand:-6
F~ stay:9
F~ stays:-1
F~ still:2
F~ stirr:-3
F~ strain:4
F~ stuck:1
F~ takes:-8
F~ than:1
F~ that:-5
F~ thats:3
F~ the:-2
F~ then:-1
F~ there:5
F~ thicken:-8
F~ this:-1
F~ through:-2
F~ tin:-2
F~ to:5
F~ together:3
F~ too:-7
F~ trac:-9
F~ tub:-3
F~ turn:6
F~ twice:3
F~ until:7
F~ up:3
F~ used:-4
F~ w:2
F~ warm:-4
F~ was:-1
F~ weigh:-6
F~ well:2
F~ went:-3
F~ were:-2
F~ when:1
F~ which:-1
F~ while:4
F~ will:-7
F~ would:3
F~ wouldnt:-1
F~ you:4
F~%:1
F~0:4
F~<:2
F~=:-2
F~>:-3
F~A:-3
F~F:-4
F~N:6
F~W:-1
F~d:-3
F~e:-1
F~t:-8
F~v:1
I0:3
I:2
IA:-1
II:1
IL:5
Ib:-5
Id:3
Iw:-6
I~ +:-3
I~ ::2
I~ and:-2
I~ first:-5
I~ had:9
I~ in:-11
I~ is:-2
I~ it:6
I~ round:-5
I~ so:-7
I~ tray:2
I~ was:7
I~<:1
K%:-7
K0:-10
K:2
K=:-1
K>:-7
KA:-6
KF:-6
KL:-4
KW:-3
Kd:-7
Kr:2
Kt:-3
K~ ::-6
K~ and:-4
K~ g:-6
K~ in:-2
K~ into:2
K~ is:4
K~ mixed:3
K~ my:-9
K~ of:-6
K~ on:5
K~ was:-3
K~%:-8
K~>:-6
K~A:-2
K~r:1
L0:-1
L:1
L<:-4
L=:-1
L>:4
LA:-7
LF:1
LI:4
LL:3
LN:2
LS:6
LW:3
LX:-4
Lb:1
Le:2
Ll:-7
Lt:-3
Lv:-5
Lw:-2
L~ ::2
L~ a:1
L~ after:-1
L~ and:-1
L~ bar:-7
L~ bars:-5
L~ batch:-7
L~ because:2
L~ boil:1
L~ by:-1
L~ cold:-1
L~ flat:4
L~ from:11
L~ frozen:-6
L~ goes:-5
L~ i:-1
L~ in:-1
L~ instead:-9
L~ no:-7
L~ of:7
L~ on:3
L~ out:5
L~ over:2
L~ pot:-7
L~ same:8
L~ so:2
L~ soap:-7
L~ stage:-4
L~ thaw:-5
L~ the:5
L~ to:2
L~ towel:2
L~ was:5
L~ went:3
L~ which:5
L~ with:4
L~0:-1
L~=:-1
L~>:-2
L~X:-5
L~b:8
L~l:-9
L~w:1
M0:3
M:2
MA:3
M~ and:-5
M~ in:5
M~ is:2
M~ soap:-7
M~ was:2
N0:3
N:9
N<:-2
NA:-3
NF:1
NL:2
NN:-3
Nb:4
Nl:2
Nt:-10
Nw:4
N~ after:-2
N~ and:-9
N~ as:1
N~ at:-2
N~ because:2
N~ for:-1
N~ from:10
N~ i:5
N~ if:2
N~ in:2
N~ instead:-2
N~ is:-2
N~ it:8
N~ or:-7
N~ same:9
N~ since:4
N~ so:1
N~ that:-2
N~ the:7
N~ then:-5
N~ to:4
N~ was:-7
N~ where:7
N~ would:-7
N~N:-2
S%:-8
S0:-6
S:-5
S<:-3
SF:-10
SL:-4
SN:11
SS:-5
SX:-2
Sd:-1
St:-5
Sv:-4
Sw:-5
S~ ::-2
S~ a:-6
S~ and:-1
S~ as:-1
S~ at:-7
S~ because:2
S~ fades:-4
S~ for:-7
S~ from:-5
S~ goes:-4
S~ i:-7
S~ is:4
S~ leav:-4
S~ no:-3
S~ once:-2
S~ only:6
S~ pour:-1
S~ powder:-4
S~ smell:-5
S~ spots:-5
S~ the:-8
S~ then:-3
S~ when:-6
S~ which:-5
S~0:-4
S~<:-3
S~S:-4
S~w:-6
T0:-3
T:-9
T~ of:-5
T~ oils:-3
U:6
UF:1
U~ in:2
W%:-8
W0:7
W:1
W<:6
W=:-3
W>:-3
WC:-1
WF:-5
WI:-2
WL:6
WS:-3
WW:3
WX:1
Wb:2
Wd:-5
We:-3
Wl:-1
Wr:1
Wt:1
Wv:-7
W~ +:-2
W~ ::1
W~ =:-8
W~ ?:-8
W~ a:7
W~ after:-4
W~ all:-2
W~ and:-3
W~ as:4
W~ at:3
W~ because:4
W~ before:3
W~ boil:-2
W~ but:2
W~ by:-2
W~ does:-6
W~ down:4
W~ first:-4
W~ for:-5
W~ from:-5
W~ g:-8
W~ got:-3
W~ here:-6
W~ i:8
W~ in:-3
W~ into:-9
W~ is:1
W~ it:3
W~ let:-4
W~ like:-1
W~ makes:-8
W~ never:-5
W~ on:-7
W~ or:7
W~ out:-8
W~ outdoor:-1
W~ outside:-1
W~ since:5
W~ so:-3
W~ that:-5
W~ then:-2
W~ to:-9
W~ too:7
W~ wait:-1
W~ was:8
W~ went:3
W~ when:5
W~ which:4
W~ with:1
W~ would:-5
W~0:2
W~<:1
W~=:-3
W~A:-3
W~r:-6
W~v:-3
X%:3
X:-3
X<:2
X=:-7
X>:-2
XA:-3
XC:-6
XF:-3
XL:3
XN:9
XS:-2
XW:2
Xl:3
Xt:-4
Xv:-3
X~ ::-1
X~ ?:-5
X~ a:-6
X~ and:1
X~ at:-5
X~ bar:3
X~ bars:-6
X~ came:-3
X~ dissolv:-9
X~ fine:-3
X~ for:1
X~ from:-7
X~ ground:-9
X~ i:4
X~ is:-5
X~ it:-7
X~ no:-6
X~ of:-8
X~ so:-4
X~ the:-3
X~ to:-8
X~ was:3
X~ went:1
X~<:-7
X~L:1
X~W:-3
X~v:-3
X~w:-6
^ *:-7
^ ::3
^ =:-5
^ a:-1
^ about:12
^ added:7
^ after:2
^ all:3
^ also:-3
^ alway:4
^ am:-5
^ an:5
^ and:-7
^ any:-7
^ anyone:-9
^ anyth:-4
^ are:-4
^ as:4
^ ask:-9
^ attempt:-6
^ b:-8
^ back:-6
^ bar:-5
^ bars:-7
^ basic:-4
^ batch:-10
^ be:-7
^ because:-1
^ been:-5
^ before:-8
^ between:6
^ big:-8
^ bit:2
^ blend:-7
^ blender:-7
^ blue:-5
^ boil:2
^ bonsoir:-4
^ both:-8
^ bottle:10
^ bought:-8
^ box:-3
^ bring:-2
^ bubbl:-7
^ but:-11
^ by:-4
^ c:-5
^ came:2
^ castile:-7
^ chang:3
^ check:-11
^ christma:-3
^ clean:-2
^ clear:2
^ cold:-4
^ combine:-3
^ cook:-2
^ cool:-3
^ copi:-4
^ correction:8
^ cost:-9
^ could:-2
^ couldnt:8
^ cousin:1
^ cover:-6
^ crock:-4
^ crockpot:-5
^ cure:-4
^ cured:-5
^ cut:-3
^ d:-6
^ dad:3
^ dads:-5
^ date:-2
^ day:-8
^ dear:1
^ did:-1
^ didnt:3
^ dissolv:-5
^ dissolve:3
^ do:-4
^ does:-3
^ dog:1
^ done:-5
^ dont:-11
^ doubl:4
^ dropp:-1
^ e:-5
^ each:2
^ earlier:-7
^ edit:1
^ enough:-6
^ entry:2
^ even:-3
^ every:2
^ everyone:-6
^ everyth:2
^ export:-4
^ f:-6
^ fat:-7
^ fats:-10
^ fill:-6
^ fills:-4
^ fine:-3
^ first:-3
^ for:3
^ forgot:-2
^ found:8
^ freeze:-6
^ from:-3
^ g:-7
^ gave:-4
^ gel:-8
^ give:-8
^ glov:-3
^ goat:-6
^ goes:-4
^ goggl:-6
^ going:1
^ gonna:6
^ good:-4
^ got:-7
^ grams:-7
^ gran:2
^ grandad:-1
^ grandma:-4
^ grandmother:-2
^ grandpa:4
^ granny:-6
^ grans:-1
^ grat:-6
^ greeting:-5
^ had:4
^ half:1
^ hallo:-2
^ hand:1
^ handout:-4
^ hard:-5
^ has:-3
^ have:-5
^ he:-10
^ heat:-6
^ hello:-3
^ help:4
^ her:1
^ here:-8
^ heres:-7
^ hes:4
^ hey:-6
^ hi:1
^ hiya:2
^ hola:-3
^ hope:-4
^ hot:1
^ hour:-1
^ how:-11
^ hp:-5
^ hubby:3
^ i'd:2
^ i:-2
^ if:-8
^ ignore:2
^ ill:-2
^ im:3
^ in:-6
^ ingredient:-4
^ instead:9
^ into:-1
^ is:-8
^ it:1
^ item:-3
^ itll:-2
^ its:-4
^ ive:-5
^ jug:6
^ keep:5
^ kids:-7
^ kind:2
^ kitchen:1
^ knock:2
^ label:-9
^ last:-5
^ lather:-4
^ laundry:-4
^ leave:-1
^ left:-2
^ leftover:-7
^ let:-1
^ like:2
^ line:-5
^ liquid:-5
^ list:-8
^ log:-6
^ lol:-6
^ long:-4
^ look:-3
^ looks:-4
^ lost:-5
^ lot:-5
^ love:-3
^ lye's:6
^ m:-5
^ made:3
^ make:5
^ makes:-2
^ many:-4
^ market:-6
^ meanwhile:-1
^ method:1
^ mine:-8
^ mines:2
^ mix:-7
^ mixed:-5
^ mold:-8
^ morn:-6
^ mould:-5
^ mum:-5
^ mums:3
^ must:-3
^ my:-3
^ n:-9
^ name:-3
^ nb:1
^ need:-5
^ neighbour:1
^ nephew:1
^ never:-4
^ new:-1
^ next:-11
^ nice:-5
^ no:5
^ nobody:-3
^ none:-8
^ normal:1
^ not:1
^ notebook:-7
^ notes:-2
^ noth:-12
^ now:1
^ number:-2
^ o:-5
^ oat:-5
^ of:1
^ oil:-6
^ oils:-3
^ ok:-3
^ okay:-4
^ old:-3
^ on:-6
^ once:-2
^ one:1
^ only:2
^ or:-5
^ other:-5
^ our:-2
^ ours:-4
^ out:1
^ outside:-5
^ oven:-3
^ page:-5
^ passt:-3
^ past:-4
^ paste:1
^ people:-7
^ per:1
^ ph:-5
^ phase:-3
^ phone:-3
^ photo:-9
^ plain:-3
^ plan:-5
^ plann:-7
^ please:2
^ pls:-8
^ plus:-9
^ post:5
^ pot:6
^ pour:1
^ prep:-2
^ press:-3
^ pretty:4
^ ps:4
^ pull:4
^ purity:7
^ put:-4
^ q:-4
^ question:-8
^ quick:-5
^ rain:4
^ ran:4
^ re:-2
^ read:4
^ reader:4
^ ready:-3
^ recipe:-5
^ remark:-6
^ render:-3
^ replac:-2
^ rest:-3
^ result:-5
^ right:-6
^ room:-6
^ safe:-5
^ same:1
^ sat:-5
^ scal:3
^ scale:8
^ scoop:-4
^ scrap:2
^ sells:-4
^ set:-3
^ sf:-3
^ shav:-3
^ shave:-3
^ she:-6
^ shes:-3
^ should:-7
^ since:3
^ sis:2
^ slow:-5
^ smell:-6
^ snow:2
^ so:-4
^ soap:-7
^ soft:-3
^ sold:-7
^ some:2
^ somebody:-1
^ someone:-2
^ somewhere:1
^ sorry:-1
^ sound:-3
^ source:4
^ spill:-2
^ split:2
^ spoon:-3
^ sry:-9
^ stamp:-4
^ start:-7
^ stick:-5
^ still:-1
^ stir:-3
^ stirr:-5
^ strain:2
^ student:2
^ subject:-3
^ sum:-4
^ sunday:-10
^ superfat:2
^ swap:4
^ swapp:3
^ swirl:-6
^ switch:-5
^ take:-3
^ tare:1
^ teacher:1
^ tell:-8
^ test:-6
^ text:-6
^ thank:-6
^ that:-1
^ thats:-3
^ the:-2
^ then:-9
^ ther:-2
^ there:-3
^ these:-1
^ they:-9
^ third:-2
^ this:3
^ those:3
^ thought:-3
^ threw:7
^ thx:-5
^ tip:-5
^ title:-4
^ to:-1
^ today:2
^ tonight:-4
^ too:-2
^ took:3
^ total:-5
^ towel:-3
^ trac:-2
^ trace:-4
^ translat:-3
^ tried:-4
^ try:-4
^ tub:-7
^ turn:-3
^ unit:-3
^ unmould:-5
^ update:1
^ use:2
^ used:3
^ using:-6
^ v:1
^ version:-9
^ very:-8
^ wait:5
^ want:4
^ warm:-7
^ was:-5
^ wash:-8
^ wed:2
^ weigh:-7
^ weight:-9
^ well:-7
^ went:2
^ were:2
^ weve:-6
^ what:-6
^ whats:-5
^ when:-9
^ where:-1
^ which:-8
^ while:-1
^ who:-4
^ whoever:-3
^ whole:5
^ whos:-3
^ why:-6
^ will:-5
^ with:-4
^ worksheet:-4
^ workshop:-4
^ would:-2
^ wrapp:-9
^ write:2
^ written:3
^ wrote:-5
^ x:-9
^ years:4
^ yes:-10
^ yesterday:-6
^ you:-6
^ youll:2
^ zap:-3
^%:-6
^0:-6
^=:-7
^>:-11
^C:-11
^F:1
^I:-2
^K:-4
^M:1
^S:-9
^T:-6
^U:2
^X:-3
^d:-4
^e:-9
^l:7
^r:3
^w:-2
any:-2
b%:-4
b0:3
b:3
bA:3
bF:-6
bL:8
bN:6
bW:6
bb:-5
bt:-5
bw:-1
b~ ::-1
b~ ?:10
b~ a:-4
b~ after:-7
b~ and:-7
b~ as:-8
b~ bars:-7
b~ because:-4
b~ before:3
b~ but:5
b~ by:7
b~ for:5
b~ i:2
b~ if:8
b~ in:-2
b~ is:7
b~ it:3
b~ my:4
b~ not:-6
b~ of:-1
b~ on:-4
b~ or:9
b~ right:-7
b~ still:4
b~ the:5
b~ then:6
b~ too:2
b~ was:5
b~ x:-7
b~0:-7
b~L:1
b~b:-1
d%:-5
d0:-8
d:-6
d=:-3
dA:-5
dF:-9
dI:-8
dK:-3
db:-3
dd:-4
dt:-2
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
d~ in:-5
d~ it:-7
d~ no:-3
d~ oils:-2
d~ or:-2
d~ pour:-2
d~ so:-7
d~ stirr:-2
d~ the:-6
d~ then:-7
d~ trace:-1
d~ when:-7
d~A:-7
e%:-6
e0:4
e:3
e=:-1
e>:-4
eA:-2
eF:-1
eL:2
eN:9
eW:-3
eX:5
eb:1
ee:-5
et:4
e~ +:5
e~ all:1
e~ and:-4
e~ as:2
e~ but:10
e~ for:-1
e~ g:-10
e~ grams:-6
e~ in:8
e~ is:5
e~ minus:8
e~ of:2
e~ on:-3
e~ or:10
e~ was:8
e~ with:12
e~A:-5
e~F:-3
e~W:-3
l%:-5
l0:3
l:-3
l=:-5
l>:-5
lA:3
lF:-8
lL:-4
lN:-3
lW:-5
lX:-5
ll:-6
long:1
lt:-1
lv:-7
lw:-5
l~ and:-6
l~ as:-7
l~ for:2
l~ i:-5
l~ in:-7
l~ is:-3
l~ of:-2
l~ right:-1
l~ the:-7
l~ was:-6
l~ went:1
l~ with:2
l~L:-9
l~t:-6
no figure:-6
no name:-6
r%:-6
r0:3
r:4
r>:-5
rA:1
rF:10
rK:2
rW:-4
rt:-8
r~ as:-10
r~ by:1
r~ the:-1
r~K:2
short:-6
t%:-5
t0:-3
t:-5
t<:7
t=:-3
t>:-1
tA:1
tF:-3
tK:-3
tL:-4
tN:-6
tS:-2
tW:-1
tX:-6
tb:-3
td:-1
te:-9
tl:-8
tt:-2
tv:-1
tw:-3
t~ ::2
t~ ?:-7
t~ a:-5
t~ add:4
t~ after:-6
t~ ago:-8
t~ all:-7
t~ and:-3
t~ at:-4
t~ because:-10
t~ before:4
t~ blend:-3
t~ both:-3
t~ but:2
t~ by:-6
t~ cook:-3
t~ cover:-2
t~ cure:-1
t~ cut:-1
t~ day:-1
t~ did:-4
t~ flat:-6
t~ for:1
t~ from:-7
t~ gel:-3
t~ i:-3
t~ if:-6
t~ in:-9
t~ into:-2
t~ is:-7
t~ it:-6
t~ its:3
t~ ive:-7
t~ later:-8
t~ lid:-4
t~ lined:-1
t~ loaf:-3
t~ long:-2
t~ makes:-1
t~ mash:-2
t~ melt:-2
t~ mine:-6
t~ mix:-5
t~ mould:-2
t~ my:-5
t~ no:-4
t~ now:-7
t~ of:3
t~ off:-3
t~ oils:-2
t~ old:1
t~ on:-8
t~ or:-5
t~ paste:-9
t~ pour:-4
t~ ready:-4
t~ rest:-8
t~ since:-6
t~ so:-3
t~ still:-7
t~ stir:-1
t~ stirr:-5
t~ the:-5
t~ then:-6
t~ they:-2
t~ to:-6
t~ trace:-5
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
t~ with:1
t~0:-1
t~=:-2
t~A:-5
t~F:-3
t~K:-1
t~S:-1
t~W:2
t~X:-6
t~b:-6
t~d:-2
t~t:-5
v0:-6
v=:1
vA:3
vC:2
vF:-2
vK:9
vL:4
vN:9
vS:-3
vW:7
vX:-5
vb:-3
vd:-1
vl:-6
vt:3
vv:-2
v~ a:-5
v~ and:-4
v~ at:-3
v~ bottle:-1
v~ can:-11
v~ for:-5
v~ i:2
v~ in:-3
v~ is:-8
v~ of:2
v~ one:-4
v~ or:-2
v~ pot:-8
v~ so:-3
v~ to:5
v~C:3
v~S:-1
v~W:2
v~X:-2
w%:-5
w0:1
w<:-13
w=:-6
w>:3
wA:-3
wC:7
wI:-3
wL:-2
wN:1
wS:-6
wW:-2
wX:2
wb:1
wd:5
wl:-11
wt:-10
wv:-1
ww:1
w~ a:3
w~ after:-7
w~ and:-1
w~ as:-8
w~ at:-5
w~ cubes:-7
w~ dissolv:1
w~ empty:-3
w~ fresh:-7
w~ from:-7
w~ goes:-7
w~ i:1
w~ in:-4
w~ instead:-11
w~ it:-2
w~ loaf:-3
w~ more:-2
w~ mould:3
w~ no:-2
w~ of:2
w~ on:-2
w~ one:-2
w~ or:-3
w~ out:-7
w~ per:4
w~ so:-3
w~ steps:-2
w~ the:-5
w~ to:-4
w~ together:-9
w~ too:1
w~ was:5
w~ wet:-7
w~ when:-7
w~0:2
w~C:4
w~I:2
w~L:-9
w~N:-1
w~S:-3
w~X:-6
w~w:-3`;
